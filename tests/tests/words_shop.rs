//! Does an answer say "your" only of what was entered? Where no machine, motor, wrench or set was named, it speaks of a
//! typical one. And does every range say plainly what it covers?

use benchslate_core::sheet::{Field, FieldKind, Outcome, Preset, Sheet, Value, evaluate};
use benchslate_core::sheets;
use benchslate_tests::cases;

/// How an answer would speak of what belongs to a shop.
const YOURS: [&str; 16] = [
    "your mill",
    "your drill press",
    "your lathe",
    "your motor",
    "your machine",
    "your wrench",
    "your set",
    "your arbor",
    "your gears",
    "your screw",
    "your dial",
    "your plate",
    "your shop",
    "my shop",
    "my mill",
    "my set",
];

/// Every text of an answer, in lower case.
fn said(outcome: &Outcome) -> String {
    let a = &outcome.answer;
    let mut all = Vec::new();
    for line in &a.lines {
        all.extend([line.label.to_string(), line.says.to_string()]);
        if let Value::Words(words) = &line.value {
            all.push(words.to_string());
        }
    }
    for table in &a.tables {
        all.extend([table.title.to_string(), table.note.to_string()]);
        let cells = table.rows.iter().flat_map(|row| &row.cells);
        all.extend(cells.filter_map(|cell| match cell {
            Value::Words(words) => Some(words.to_string()),
            Value::Quantity { .. } => None,
        }));
    }
    let cautions = a.cautions.iter();
    all.extend(cautions.map(|one| format!("{} {}", one.before, one.text)));
    let faults = outcome.fault.iter();
    all.extend(faults.map(|one| format!("{} {}", one.says, one.cure)));
    all.join("\n").to_lowercase()
}

fn of_the_shop(sheet: &'static Sheet) -> Vec<&'static Field> {
    let shop = |field: &&Field| matches!(field.preset, Preset::Shop(..) | Preset::Filled(..));
    sheet.fields.iter().filter(shop).collect()
}

#[test]
fn nothing_is_yours_that_was_not_entered() {
    let (mut asked, mut wrong) = (0, Vec::new());
    for sheet in sheets::ALL {
        let fields = of_the_shop(sheet);
        if fields.is_empty() {
            continue;
        }
        for mut entry in cases::named(sheet) {
            for field in &fields {
                entry.set(field.id, "");
            }
            asked += 1;
            let text = said(&evaluate(sheet, &entry));
            let found = YOURS.iter().filter(|yours| text.contains(*yours));
            wrong.extend(found.map(|yours| format!("{}: {yours}: {entry:?}", sheet.id)));
        }
    }
    assert!(asked > 200, "only {asked} entries");
    assert!(wrong.is_empty(), "{wrong:#?}");
}

#[test]
fn what_was_entered_is_yours() {
    let motor = [("motor", "2 hp")];
    let steps = [("press-steps", "100 rpm;300 rpm;900 rpm")];
    for (id, shop, yours, typical) in [
        (
            "speed-feed",
            &[("steps", "60 rpm;200 rpm;600 rpm")][..],
            "your mill",
            "a typical mill",
        ),
        ("speed-feed", &motor, "your motor", "a typical motor"),
        ("cutting-power", &motor, "your motor", "a typical motor"),
        (
            "tapping",
            &steps,
            "your drill press",
            "a typical drill press",
        ),
        (
            "feed-per-turn",
            &[("steps", "60 rpm;200 rpm;600 rpm")],
            "your mill",
            "a typical mill",
        ),
        (
            "bolt-torque",
            &[("wrench-high", "90 ft-lb")],
            "your wrench",
            "a typical wrench",
        ),
        (
            "tap-drill",
            &[("drills", "fraction")],
            "your set",
            "full inch set",
        ),
    ] {
        let Some(sheet) = sheets::by_id(id) else {
            unreachable!("{id}");
        };
        let texts = |shop: &[(&str, &str)]| -> Vec<String> {
            cases::named(sheet)
                .into_iter()
                .map(|mut entry| {
                    for field in of_the_shop(sheet) {
                        entry.set(field.id, "");
                    }
                    for (field, text) in shop {
                        entry.set(field, text);
                    }
                    said(&evaluate(sheet, &entry))
                })
                .collect()
        };
        let any = |texts: &[String], words: &str| texts.iter().any(|text| text.contains(words));
        assert!(any(&texts(shop), yours), "{id}: {yours}");
        assert!(any(&texts(&[]), typical), "{id}: {typical}");
    }
}

/// The reason stands after "outside 1 to 60: ", so it is no riddle and no fragment of "what ...".
#[test]
fn a_range_says_plainly_what_it_covers() {
    let mut read = 0;
    for sheet in sheets::ALL {
        for field in sheet.fields {
            let columns = match field.kind {
                FieldKind::Rows { columns, .. } => columns,
                _ => &[],
            };
            for one in columns.iter().chain([field]) {
                let Some(range) = one.range else { continue };
                read += 1;
                let at = format!("{} {}: {}", sheet.id, one.id, range.why);
                assert!(range.why.split(' ').count() > 3, "{at}");
                for riddle in ["what ", "from ", "less ", "past ", "over "] {
                    assert!(!range.why.starts_with(riddle), "{at}");
                }
            }
        }
    }
    assert!(read > 150, "only {read} ranges");
}
