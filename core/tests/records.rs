//! Do records keep what they hold? Reducers, undo, the file form, and files from elsewhere.

mod common;

use benchslate_core::quantity::System;
use benchslate_core::record::*;
use benchslate_core::sheet::{Outcome, Preset, ShopItem, evaluate};
use benchslate_core::sheets;

fn item(name: &str) -> KeptItem {
    KeptItem {
        name: name.into(),
        link: format!("#/v1/length?length={name}"),
        ..KeptItem::default()
    }
}

#[test]
fn kept_list_keeps_moves_and_forgets() {
    let mut kept = Undo::new(Kept::default());
    for name in ["a", "b", "c"] {
        kept.act(&KeptAction::Keep(item(name)));
    }
    kept.act(&KeptAction::Note(
        item("a").link,
        "behind the feed box".into(),
    ));
    kept.act(&KeptAction::Keep(item("a")));
    let names: Vec<&str> = kept
        .now
        .items
        .iter()
        .map(|item| item.name.as_str())
        .collect();
    assert_eq!(names, ["a", "c", "b"]);
    assert_eq!(
        kept.now.items[0].note, "behind the feed box",
        "the same link keeps its note"
    );
    kept.act(&KeptAction::Remove(item("a").link));
    kept.act(&KeptAction::Remove("#/v1/nowhere".into()));
    assert_eq!(kept.now.items.len(), 2);
    assert!(kept.undo());
    assert_eq!(kept.now.items.len(), 3, "what changed nothing left no step");
}

#[test]
fn undo_goes_back_to_the_start_and_no_further() {
    let mut shop = Undo::new(Shop::default());
    shop.act(&ShopAction::System(System::Metric));
    shop.act(&ShopAction::Item("motor".into(), "0.75 kW".into()));
    assert!(shop.undo() && shop.undo() && !shop.undo());
    assert_eq!(shop.now, Shop::default());
}

#[test]
fn file_form_reads_back_and_refuses_what_is_not_ours() {
    let shop = Shop::default().after(&ShopAction::Item(
        "spindle-steps".into(),
        "90;150;260".into(),
    ));
    let text = serde_json::to_string(&File::of(shop.clone())).unwrap();
    let head: Head = serde_json::from_str(&text).unwrap();
    assert_eq!(check::<Shop>(&head), Ok(()));
    assert_eq!(
        serde_json::from_str::<File<Shop>>(&text).unwrap().data,
        shop
    );
    assert_eq!(
        check::<Kept>(&head),
        Err(RecordFault::OtherRecord("my-shop".into()))
    );
    let newer = Head { version: 4, ..head };
    assert_eq!(check::<Shop>(&newer), Err(RecordFault::Newer(4)));
}

#[test]
fn random_files_are_refused_or_read_back() {
    let mut rng = fastrand::Rng::with_seed(5);
    let good = serde_json::to_string(&File::of(Kept {
        items: vec![item("x"), item("y")],
    }))
    .unwrap();
    for _ in 0..common::rounds() / 50 {
        let mut bytes = good.clone().into_bytes();
        for _ in 0..rng.usize(1..4) {
            let at = rng.usize(..bytes.len());
            bytes[at] = rng.u8(32..127);
        }
        let text = String::from_utf8(bytes).unwrap();
        if let Ok(file) = serde_json::from_str::<File<Kept>>(&text) {
            let again = serde_json::to_string(&file).unwrap();
            assert_eq!(serde_json::from_str::<File<Kept>>(&again).unwrap(), file);
        }
    }
}

#[test]
fn a_shop_is_written_into_what_it_starts_and_only_where_it_differs() {
    for sheet in sheets::ALL {
        assert!(
            Shop::default().start(sheet).is_empty(),
            "{}: the general shop writes nothing",
            sheet.id
        );
        assert!(!Shop::default().differs(sheet, &Shop::default().start(sheet)));
        let mut shop = Shop::default();
        for field in SHOP.fields {
            shop = shop.after(&ShopAction::Item(field.id.into(), field.example.into()));
        }
        let entry = shop.start(sheet);
        assert!(!shop.differs(sheet, &entry), "{}", sheet.id);
        let outcome = evaluate(sheet, &entry);
        let of_shop = |id: &str| {
            let preset = sheet.field(id).map(|field| field.preset);
            let applies = outcome.field(id).is_some_and(|now| now.applies);
            applies && matches!(preset, Some(Preset::Shop(..)))
        };
        assert_eq!(
            Shop::default().differs(sheet, &entry),
            entry.texts().any(|(id, _)| of_shop(id)),
            "{}",
            sheet.id
        );
    }
}

#[test]
fn a_shop_goes_into_a_link_and_comes_back() {
    use benchslate_core::link;
    let shop = Shop::default()
        .after(&ShopAction::System(System::Metric))
        .after(&ShopAction::Item(
            "spindle-steps".into(),
            "90 rpm;150 rpm;260 rpm".into(),
        ))
        .after(&ShopAction::Item("rapid".into(), "1500 mm/min".into()));
    let link = link::of_shop(&shop).unwrap();
    assert_eq!(link::open_shop(&link), Ok((shop, Vec::new())));
    assert!(link::open_shop("#/v1/length?length=7/16%20in").is_err());
}

#[test]
fn feeds_per_turn_come_from_the_shop() {
    let shop = Shop::default()
        .after(&ShopAction::Item("feed-follows".into(), "spindle".into()))
        .after(&ShopAction::Item(
            "feed-steps-turn".into(),
            "0.004;0.006 ipr;0.009".into(),
        ))
        .after(&ShopAction::Item(
            "lathe-feeds".into(),
            "0.003 ipr;0.010 ipr".into(),
        ));
    let sheet = sheets::by_id("speed-feed").unwrap();
    let mut entry = shop.start(sheet);
    for (id, text) in [
        ("cut", "slab"),
        ("work", "gray-iron"),
        ("diameter", "2 1/2 in"),
        ("teeth", "8"),
        ("depth", "3/32 in"),
        ("steps", "100"),
        ("chip", "0.001 ipt"),
    ] {
        entry.set(id, text);
    }
    let outcome = evaluate(sheet, &entry);
    let shown = |outcome: &Outcome, id: &str| {
        let line = outcome.answer.lines.iter().find(|line| line.id == id);
        line.map(|line| line.value.text(System::Inch))
    };
    // 8 teeth at 0.001 in are 0.008 in a turn: the step below is 0.006, and 100 turns of it 0.6 in a minute
    assert_eq!(shown(&outcome, "turn-feed").as_deref(), Some("0.0060"));
    assert_eq!(shown(&outcome, "feed").as_deref(), Some("0.60"));
    entry.set("cut", "turn");
    entry.set("work", "mild-steel");
    entry.set("turn-feed", "0.009 ipr");
    let outcome = evaluate(sheet, &entry);
    assert_eq!(shown(&outcome, "turn-feed").as_deref(), Some("0.0030"));
    // nothing entered for the lathe: by hand, at the feed wanted
    entry.set("lathe-feeds", "");
    let outcome = evaluate(sheet, &entry);
    assert_eq!(shown(&outcome, "turn-feed").as_deref(), Some("0.0090"));
}

#[test]
fn what_a_shop_link_says_beyond_us_is_named() {
    use benchslate_core::link::{self, Note};
    let (shop, notes) =
        link::open_shop("#/v1/my-shop?motor=2%20hp&hoist=2%20t&motor=3%20hp&rev=3").unwrap();
    assert_eq!(shop.entry().get("motor"), Some("2 hp"));
    assert_eq!(
        notes,
        [
            Note::UnknownKey("hoist".into(), "2 t".into()),
            Note::Twice("motor".into())
        ]
    );
    // the general shop once had a table screw: a link from then says so
    let (_, notes) = link::open_shop("#/v1/my-shop?motor=2%20hp").unwrap();
    assert_eq!(notes, [Note::NoRevision]);
}

fn shop(items: &[(&str, &str)]) -> Shop {
    let mut shop = Shop::default();
    for (id, text) in items {
        shop = shop.after(&ShopAction::Item((*id).into(), (*text).into()));
    }
    shop
}

#[test]
fn what_is_asked_for_is_typed_in_by_the_shop_that_says_so() {
    let mine = shop(&[
        ("screw-lead", "0.2"),
        ("dial-turn", "0.200 in"),
        ("dial-divisions", "200"),
        ("leadscrew", "8 tpi"),
        ("change-wheels", "20;40;80"),
        ("thread-dial-wheel", "24"),
        ("rapid", "60 ipm"),
        ("feed-follows", "spindle"),
    ]);
    for (sheet, wanted) in [
        (
            "dial-units",
            &[("dial", "0.200 in"), ("lines", "200"), ("lead", "0.2 in")][..],
        ),
        ("dial-slack", &[("dial-turn", "0.200 in")]),
        ("thread-infeed", &[("leadscrew", "8 tpi"), ("wheel", "24")]),
        (
            "change-gears",
            &[("leadscrew", "8 tpi"), ("wheels", "20;40;80")],
        ),
        // as the general shop has it, and yet it is said: the way back is counted only where it was entered
        ("cut-time", &[("back", "60 ipm")]),
    ] {
        let sheet = sheets::by_id(sheet).unwrap();
        let entry = mine.start(sheet);
        for (id, text) in wanted {
            assert_eq!(entry.get(id), Some(*text), "{} {id}", sheet.id);
        }
        assert!(!mine.differs(sheet, &entry), "{}", sheet.id);
        // a shop that says nothing of it neither differs nor takes it away
        assert!(!Shop::default().differs(sheet, &entry), "{}", sheet.id);
        let mut kept = entry.clone();
        Shop::default().write_into(sheet, &mut kept);
        assert_eq!(kept, entry, "{}", sheet.id);
    }
}

#[test]
fn a_shop_of_the_first_form_is_read_without_loss() {
    // as version 0.1.0 wrote it; an item that nobody knows stays too
    let text = r#"{"record":"my-shop","version":1,"data":{"system":"Metric","items":
        [["spindle-steps","90 rpm;150 rpm"],["lathe-steps","60 rpm"],["drills","metric"],["hoist","2 t"]]}}"#;
    let head: Head = serde_json::from_str(text).unwrap();
    assert_eq!(check::<Shop>(&head), Ok(()));
    let read = serde_json::from_str::<File<Shop>>(text).unwrap().data;
    assert_eq!(read.system, System::Metric);
    let entry = read.entry();
    for (id, text) in [
        ("spindle-steps", "90 rpm;150 rpm"),
        ("lathe-steps", "60 rpm"),
        ("drills", "metric"),
        ("hoist", "2 t"),
    ] {
        assert_eq!(entry.get(id), Some(text), "{id}");
    }
    assert_eq!(read.count(MachineKind::Mill), 1);
    assert_eq!(read.count(MachineKind::DrillPress), 1);
    // the same entries made now are the same shop
    let now = shop(&[
        ("spindle-steps", "90 rpm;150 rpm"),
        ("lathe-steps", "60 rpm"),
        ("drills", "metric"),
    ])
    .after(&ShopAction::System(System::Metric));
    let mut known = read.clone();
    known.items.retain(|(id, _)| id != "hoist");
    assert_eq!(known, now);
    let again = serde_json::to_string(&File::of(read.clone())).unwrap();
    assert!(again.contains("\"version\":3"));
    assert_eq!(
        serde_json::from_str::<File<Shop>>(&again).unwrap().data,
        read
    );
}

/// Two mills: one unnamed with a motor of 2 hp and a table screw, one named "Small mill" with its own steps.
fn two_mills() -> Shop {
    shop(&[
        ("motor", "2 hp"),
        ("screw-lead", "0.25 in"),
        ("drills", "metric"),
    ])
    .after(&ShopAction::Add(MachineKind::Mill))
    .after(&ShopAction::Name(MachineKind::Mill, "Small mill".into()))
    .after(&ShopAction::Item(
        "spindle-steps".into(),
        "200;400;800".into(),
    ))
}

#[test]
fn of_several_machines_one_is_in_use() {
    let mill = MachineKind::Mill;
    let shop = two_mills();
    assert_eq!((shop.count(mill), shop.in_use(mill)), (2, 1));
    assert_eq!(shop.name(mill, 0), "Mill 1");
    assert_eq!(shop.name(mill, 1), "Small mill");
    assert_eq!(shop.text(ShopItem::Motor), None);
    assert_eq!(
        shop.text(ShopItem::SpindleSteps).as_deref(),
        Some("200 rpm;400 rpm;800 rpm")
    );
    // the bench belongs to all
    assert_eq!(shop.text(ShopItem::DrillSets).as_deref(), Some("metric"));
    let first = shop.using(mill, 0);
    assert_eq!(first.text(ShopItem::Motor).as_deref(), Some("2 hp"));
    assert_eq!(first.text(ShopItem::SpindleSteps), None);
    // a place that is not there changes nothing
    assert_eq!(shop.using(mill, 7), shop);
    let copied = shop.after(&ShopAction::Copy(mill));
    assert_eq!(copied.name(mill, 2), "Small mill, copy");
    assert_eq!(copied.in_use(mill), 2);
    let less = copied
        .after(&ShopAction::Remove(mill))
        .after(&ShopAction::Remove(mill));
    assert_eq!((less.count(mill), less.in_use(mill)), (1, 0));
    assert_eq!(less.text(ShopItem::Motor).as_deref(), Some("2 hp"));
    assert_eq!(less.after(&ShopAction::Remove(mill)).count(mill), 1);
    let mut many = Shop::default();
    for _ in 0..30 {
        many = many.after(&ShopAction::Add(MachineKind::Lathe));
    }
    assert_eq!(many.count(MachineKind::Lathe), MOST_MACHINES);
    // every step is taken back
    let mut undo = Undo::new(first.clone());
    for action in [
        ShopAction::Use(mill, 1),
        ShopAction::Copy(mill),
        ShopAction::Name(mill, "Third".into()),
        ShopAction::Remove(mill),
        ShopAction::Add(MachineKind::Lathe),
    ] {
        undo.act(&action);
    }
    while undo.undo() {}
    assert_eq!(undo.now, first);
}

#[test]
fn an_entry_stands_with_the_machine_that_it_was_figured_with() {
    let mill = MachineKind::Mill;
    let shop = two_mills();
    let first = shop.using(mill, 0);
    let sheet = sheets::by_id("speed-feed").unwrap();
    let (with_first, with_second) = (first.start(sheet), shop.start(sheet));
    assert_ne!(with_first, with_second);
    for used in [&first, &shop] {
        assert_eq!(used.stands(sheet, &with_first, mill), Some(0));
        assert_eq!(used.stands(sheet, &with_second, mill), Some(1));
        assert!(!used.differs(sheet, &with_first) && !used.differs(sheet, &with_second));
        assert_eq!(used.standing(sheet, &with_second), shop);
    }
    // a form shows a number without the unit that it takes anyway: it means the same
    let power = sheets::by_id("cutting-power").unwrap();
    let mut bare = first.start(power);
    assert_eq!(bare.get("motor"), Some("2 hp"));
    bare.set("motor", "2");
    assert_eq!(shop.stands(power, &bare, mill), Some(0));
    assert!(!shop.differs(power, &bare));
    assert_eq!(first.typed_in(power, &bare).len(), 1);
    let mut other = with_first.clone();
    other.set("steps", "100 rpm;300 rpm");
    assert_eq!(shop.stands(sheet, &other, mill), None);
    assert!(shop.differs(sheet, &other));
    // a screw that the second mill does not say goes with the first one
    let sheet = sheets::by_id("dial-units").unwrap();
    let mut entry = first.start(sheet);
    assert_eq!(entry.get("lead"), Some("0.25 in"));
    first.give_way(&shop, sheet, &mut entry);
    assert_eq!(entry.get("lead"), None);
    entry.set("lead", "5 mm");
    shop.give_way(&shop, sheet, &mut entry);
    assert_eq!(
        entry.get("lead"),
        Some("5 mm"),
        "what was typed by hand stays"
    );
}

#[test]
fn several_machines_go_into_a_link_and_come_back() {
    use benchslate_core::link;
    let shop = two_mills()
        .after(&ShopAction::Add(MachineKind::Lathe))
        .after(&ShopAction::Item("leadscrew".into(), "8 tpi".into()))
        .using(MachineKind::Lathe, 0);
    let wanted = "#/v1/my-shop?screw-lead=0.25%20in&motor=2%20hp&drills=metric&mill2.name=Small%20mill\
                  &mill2.spindle-steps=200%20rpm;400%20rpm;800%20rpm&lathe2.name=&lathe2.leadscrew=8%20tpi&rev=3";
    let link = link::of_shop(&shop).unwrap();
    assert_eq!(link, wanted);
    let (back, notes) = link::open_shop(&link).unwrap();
    assert!(notes.is_empty());
    assert_eq!(link::of_shop(&back).unwrap(), wanted);
    assert_eq!(back.name(MachineKind::Mill, 1), "Small mill");
    assert!(shop_differences(&back, &shop).is_empty());
    let found = shop_differences(&Shop::default(), &shop);
    let labels: Vec<&str> = found.iter().map(|one| one.label.as_str()).collect();
    assert_eq!(
        labels,
        [
            "Mill 1: Table screw, travel per turn",
            "Mill 1: Mill motor",
            "Mill 2",
            "Mill 2: Mill spindle speeds",
            "Lathe 2",
            "Lathe 2: Lathe leadscrew",
            "Drills owned",
        ],
        "{found:?}"
    );
    // what is no machine of ours is named, not lost
    let (_, notes) = link::open_shop("#/v1/my-shop?mill99.motor=2%20hp&mill1.motor=3%20hp&shaper.motor=1%20hp&mill2.hoist=1&rev=3").unwrap();
    assert_eq!(notes.len(), 4);
}

#[test]
fn random_shops_keep_their_order_and_come_back() {
    use benchslate_core::link;
    let mut rng = fastrand::Rng::with_seed(41);
    let texts = [
        "", "2 hp", "8 tpi", "70;110", "own", "spindle", "x~;", "200",
    ];
    for _ in 0..common::rounds() / 200 {
        let start = Shop::default();
        let mut undo = Undo::new(start.clone());
        for _ in 0..rng.usize(1..30) {
            let kind = MachineKind::ALL[rng.usize(..3)];
            let field = SHOP.fields[rng.usize(..SHOP.fields.len())].id;
            let text = texts[rng.usize(..texts.len())].to_owned();
            undo.act(&match rng.usize(..8) {
                0 => ShopAction::Add(kind),
                1 => ShopAction::Copy(kind),
                2 => ShopAction::Remove(kind),
                3 => ShopAction::Name(kind, text),
                4 => ShopAction::Use(kind, rng.usize(..4)),
                _ => ShopAction::Item(field.into(), text),
            });
            let now = &undo.now;
            for kind in MachineKind::ALL {
                assert!(now.in_use(kind) < now.count(kind) && now.count(kind) <= MOST_MACHINES);
            }
            let file = serde_json::to_string(&File::of(now.clone())).unwrap();
            assert_eq!(
                serde_json::from_str::<File<Shop>>(&file).unwrap().data,
                *now
            );
            if let Some(link) = link::of_shop(now) {
                let (back, notes) = link::open_shop(&link).unwrap();
                assert!(notes.is_empty(), "{link} {notes:?}");
                assert_eq!(link::of_shop(&back).as_deref(), Some(link.as_str()));
            }
        }
        while undo.undo() {}
        assert_eq!(undo.now, start);
    }
}
