//! The length sheet on its own examples; outside figures stand in the checks.

use super::*;

fn answer(text: &str, system: System) -> Answer {
    let mut entry = Entry::of(&[("length", text)]);
    entry.system = system;
    evaluate(&SHEET, &entry).answer
}

fn text(a: &Answer, id: &str) -> String {
    a.get(id)
        .map(|line| line.value.text_with_unit(System::Inch))
        .unwrap_or_default()
}

#[test]
fn seven_sixteenths_every_way() {
    let a = answer("7/16", System::Inch);
    assert!(a.is_complete());
    for (id, want) in [
        ("inch", "0.4375 in"),
        ("mm", "11.1125 mm"),
        ("thou", "437.5 thou"),
        ("fraction-64", "7/16 in"),
        ("fraction-64-off", "0.00000 in"),
        ("drill", "7/16 in"),
        ("drill-off", "0.0000 in"),
        ("pin", "dowel 7/16 in"),
        (
            "spoken",
            "four hundred thirty-seven thou and five tenths, or seven sixteenths of an inch",
        ),
    ] {
        assert_eq!(text(&a, id), want, "{id}");
    }
}

#[test]
fn sizes_are_exact_where_they_can_be() {
    for (typed, inch, mm, exact) in [
        ("1/128", "0.0078125 in", "0.1984375 mm", (true, true)),
        ("25 mm", "0.98425 in", "25.000 mm", (false, true)),
        ("1/3", "0.33333 in", "8.4667 mm", (false, false)),
        ("0", "0.0000 in", "0.000 mm", (true, true)),
        ("100 m", "3937.00787 in", "100000.000 mm", (false, true)),
    ] {
        let a = answer(typed, System::Inch);
        assert_eq!(
            (text(&a, "inch").as_str(), text(&a, "mm").as_str()),
            (inch, mm)
        );
        assert_eq!(
            (a.get("inch").unwrap().exact, a.get("mm").unwrap().exact),
            exact,
            "{typed}"
        );
    }
}

#[test]
fn far_from_any_drill_or_pin_none_is_named() {
    for typed in ["0", "1 tenth", "12 in", "100 m"] {
        let a = answer(typed, System::Metric);
        if typed == "1 tenth" {
            assert!(!a.is_complete()); // asked: in a metric shop it may be 0.1 mm
            continue;
        }
        assert_eq!(text(&a, "drill"), "none near", "{typed}");
        assert_eq!(text(&a, "pin"), "none near", "{typed}");
        assert!(a.get("drill-off").is_none());
    }
}
