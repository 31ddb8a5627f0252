//! Does what was typed stay what was typed? Units in records and files, links in a saved list, labels inside sentences, and
//! which fields a shop may be asked about.

#![allow(clippy::unwrap_used)] // the helpers of these tests stop at what is missing

use benchslate_core::link;
use benchslate_core::quantity::{Kind, System};
use benchslate_core::record::proving::*;
use benchslate_core::record::*;
use benchslate_core::sheet::*;
use benchslate_core::sheets;

fn file<R: Record + serde::de::DeserializeOwned>(text: &str, known: Option<System>) -> R {
    let file: File<R> = serde_json::from_str(text).unwrap();
    file.opened(known).unwrap()
}

fn at(test: &Test, id: &str) -> ProvingLine {
    let shown = view(test);
    let mut lines = shown.sections.into_iter().flat_map(|part| part.lines);
    lines.find(|line| line.id == id).unwrap()
}

/// As an older version wrote it: texts alone.
const OLD: &str = r#"{"record":"proving","version":1,"data":{"tests":[{"machine":"Mill","plate":{"feeds":["1 ipm"],
    "rapid":"60 ipm","speeds":[],"follows":false},"found":[{"id":"a1.slack","measured":"0.012"},
    {"id":"a1.0.f.1 ipm","measured":"1.02"},{"id":"a2.slack","measured":"8 thou","note":"worn"}]}]}}"#;

#[test]
fn a_measured_figure_is_written_down_with_the_unit_that_it_was_read_in() {
    let begun = Proving::default().after(&ProvingAction::Begin(
        "Mill".into(),
        Plate::default(),
        String::new(),
    ));
    for (text, system, kept) in [
        ("0.012", System::Inch, "0.012 in"),
        ("0.012", System::Metric, "0.012 mm"),
        ("0.3 mm", System::Inch, "0.3 mm"),
        ("1/64 +-.001", System::Inch, "1/64 in +-.001"),
        ("0.02 mm / 300 mm", System::Inch, "0.02 mm / 300 mm"),
        ("brisk", System::Inch, "brisk"),
        ("", System::Metric, ""),
    ] {
        let measured = TestAction::Measured("a1.slack".into(), text.into(), system);
        let record = begun.after(&ProvingAction::At("Mill".into(), measured.clone()));
        let test = record.now().unwrap();
        assert_eq!(test.at("a1.slack").measured, kept);
        assert!(!test.has_bare(), "{text}");
        assert!(record.holds(&ProvingAction::On(measured)), "{text}");
    }
}

#[test]
fn an_older_record_is_read_in_the_system_of_its_device_or_asks() {
    // on the device, under its shop: what the plate said in inches stays in inches
    for (known, slack, feed) in [
        (System::Inch, "0.012 in", "+2.0%"),
        (System::Metric, "0.012 mm", "−96.0%"),
    ] {
        let record: Proving = file(OLD, Some(known));
        let test = record.now().unwrap();
        assert!(at(test, "a1.slack").reading.starts_with(slack));
        assert!(at(test, "a1.0.f.1 ipm").difference.contains(feed));
        assert_eq!(
            test.at("a1.slack").measured,
            "0.012",
            "nothing is rewritten"
        );
        let again = serde_json::to_string(&File::of(record.clone())).unwrap();
        assert_eq!(file::<Proving>(&again, None), record);
    }
    // from elsewhere: asked, never guessed
    let record: Proving = file(OLD, None);
    let test = record.now().unwrap();
    assert!(test.has_bare());
    let asked = at(test, "a1.slack");
    assert!(
        asked.reading.is_empty() && asked.fault.contains("no unit"),
        "{}",
        asked.fault
    );
    assert!(at(test, "a2.slack").reading.starts_with("8 thou"));
    let said = record.after(&ProvingAction::On(TestAction::Bare(System::Metric)));
    assert!(
        at(said.now().unwrap(), "a1.slack")
            .reading
            .starts_with("0.012 mm")
    );
    // the same file again is no second test, whatever was said of it
    let both = said.after(&ProvingAction::TakeIn(record));
    assert_eq!(both.tests.len(), 1);
}

#[test]
fn a_shop_of_any_older_version_keeps_its_figures() {
    for (text, wanted) in [
        (
            r#"{"record":"my-shop","version":1,"data":{"system":"Inch","items":[["rapid","50"],["screw-lead","0.2"],["feed-steps","1/2;3/4 ipm;1"],["spindle-steps","70;110"]]}}"#,
            ["50 in/min", "0.2 in", "1/2 in/min;3/4 ipm;1 in/min"],
        ),
        (
            r#"{"record":"my-shop","version":2,"data":{"system":"Metric","items":[],"machines":[{"kind":"Mill","items":[["rapid","1500"],["screw-lead","5"],["feed-steps","16;25 mm/min"],["spindle-steps","70;110"]]}]}}"#,
            ["1500 mm/min", "5 mm", "16 mm/min;25 mm/min"],
        ),
    ] {
        let shop: Shop = file(text, None);
        let before = evaluate(
            &SHOP,
            &serde_json::from_str::<File<Shop>>(text)
                .unwrap()
                .data
                .entry(),
        );
        for (id, wanted) in ["rapid", "screw-lead", "feed-steps"].iter().zip(wanted) {
            let now = shop.entry().get(id).unwrap().to_owned();
            let plain = |text: &str| text.replace("ipm", "in/min");
            assert_eq!(plain(&now), plain(wanted), "{id}");
        }
        assert_eq!(
            shop.entry().get("spindle-steps"),
            Some("70;110"),
            "what has one unit stays as typed"
        );
        // the other system now: nothing is read again
        let other = match shop.system {
            System::Inch => System::Metric,
            System::Metric => System::Inch,
        };
        let turned = evaluate(&SHOP, &shop.after(&ShopAction::System(other)).entry());
        for field in SHOP.fields {
            assert_eq!(
                turned.inputs.number(field.id),
                before.inputs.number(field.id),
                "{}",
                field.id
            );
        }
        assert_eq!(turned.field("feed-steps").unwrap().fault, None);
    }
    let typed = Shop::default()
        .after(&ShopAction::System(System::Metric))
        .after(&ShopAction::Item("arbor".into(), "25".into()))
        .after(&ShopAction::System(System::Inch));
    assert_eq!(typed.entry().get("arbor"), Some("25 mm"));
    // past the range it is a figure all the same
    let typed = Shop::default().after(&ShopAction::Item("arbor".into(), "9999".into()));
    assert_eq!(typed.entry().get("arbor"), Some("9999 in"));
}

#[test]
fn a_feed_over_a_time_without_units_is_asked_about() {
    for text in ["1/80", "5 / 60.2", "10/30", "2.5/2"] {
        let fault = read_measured(text, Kind::FeedRate, System::Inch).unwrap_err();
        assert!(fault.contains("in / ") && fault.contains(" s"), "{fault}");
    }
    for text in ["3/4", "1 1/2", "1-3/8", "1/2 ipm", "10 in / 30 s"] {
        assert!(
            read_measured(text, Kind::FeedRate, System::Inch).is_ok(),
            "{text}"
        );
    }
}

#[test]
fn a_saved_list_leads_only_where_links_of_ours_lead() {
    let leads = |link: &str| {
        let item = KeptItem {
            link: link.into(),
            ..KeptItem::default()
        };
        match item.leads() {
            Leads::Answer(to) | Leads::Proving(to) => Some(to.to_owned()),
            Leads::Nowhere => None,
        }
    };
    for ours in [
        "#/v1/length?length=7/16%20in",
        "#/proving?of=Old%20shaper",
        "#/proving",
    ] {
        assert_eq!(leads(ours).as_deref(), Some(ours));
    }
    for other in [
        "https://evil.example/x?leak=1",
        "https://evil.example/#/v1/length?length=1%20in",
        "//evil.example/",
        "//evil.example/#/v1/length",
        "/\\evil.example/#/v1/length",
        "javascript:alert(1)//#/v1/length",
        "data:text/html,<script>#/v1/length",
        " #/v1/length",
        "\t#/v1/length",
        "#/v1/length\n",
        "#/v1/no-such-sheet",
        "#/v9/length",
        "#/proving/../../x",
        "length",
        "",
    ] {
        assert_eq!(leads(other), None, "{other}");
    }
}

#[test]
fn a_list_knows_what_it_lacks() {
    let item = |name: &str| KeptItem {
        link: format!("#/v1/length?length={name}"),
        ..KeptItem::default()
    };
    let of = |names: &[&str]| Kept {
        items: names.iter().map(|name| item(name)).collect(),
    };
    assert_eq!(of(&["1", "2"]).lacks(&of(&["2", "3", "3"])), 1);
    assert_eq!(of(&["1", "2"]).lacks(&of(&["2", "1"])), 0);
}

#[test]
fn no_name_and_no_symbol_is_lowered() {
    for sheet in sheets::ALL {
        let labels = sheet.fields.iter().map(|field| field.label);
        for label in labels.chain(sheet.results.iter().map(|result| result.label)) {
            let low = lowered(label);
            assert_eq!(low.len(), label.len());
            let mut rest = label.chars();
            rest.next();
            assert!(low.ends_with(rest.as_str()), "{low}");
        }
    }
    for same in [
        "Brinell hardness of the work",
        "Kd of the work",
        "Young's modulus of the hub",
        "Poisson\u{2019}s ratio",
        "Rz of the shaft",
        "K, nut factor",
        "DP",
        "M10",
    ] {
        assert_eq!(lowered(same), same);
    }
    for (label, low) in [
        ("Roughness Rz of the shaft", "roughness Rz of the shaft"),
        ("Nut factor K", "nut factor K"),
        ("A tensile strength", "a tensile strength"),
        ("", ""),
    ] {
        assert_eq!(lowered(label), low);
    }
}

#[test]
fn a_sheet_is_told_what_was_entered_and_what_is_typical() {
    let sheet = sheets::by_id("speed-feed").unwrap();
    let inputs = |entry: &Entry| evaluate(sheet, entry).inputs;
    let typical = Shop::default().start(sheet);
    assert!(!inputs(&typical).is_entered("steps"));
    let mine = Shop::default().after(&ShopAction::Item("spindle-steps".into(), "90;150".into()));
    assert!(inputs(&mine.start(sheet)).is_entered("steps"));
    // typed as the typical shop has it, in any spelling: a link would leave it out
    let mut same = Entry::default();
    for text in [SPINDLE.to_owned(), SPINDLE.replace(';', " rpm;")] {
        same.set("steps", &text);
        let outcome = evaluate(sheet, &same);
        let link = link::of(sheet, &same, &outcome, &link::Asked::default()).unwrap();
        let again = link::open(&link).unwrap().entry;
        assert_eq!(
            inputs(&same).is_entered("steps"),
            inputs(&again).is_entered("steps"),
            "{link}"
        );
    }
}

#[test]
fn what_no_choice_has_brought_up_is_not_compared() {
    let mine = Shop::default().after(&ShopAction::Item(
        "drill-press-steps".into(),
        "80;150;280".into(),
    ));
    let sheet = sheets::by_id("speed-feed").unwrap();
    let entry = Entry::default();
    assert_eq!(
        applying(sheet, &entry),
        evaluate(sheet, &entry)
            .fields
            .iter()
            .map(|f| f.applies)
            .collect::<Vec<_>>()
    );
    assert!(
        !mine.differs(sheet, &entry),
        "a mill's cut says nothing of the drill press"
    );
    let mut drill = entry;
    drill.set("cut", "drill");
    assert!(mine.differs(sheet, &drill));
}
