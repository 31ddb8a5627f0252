//! Does a record come back from the device, and do two tabs lose nothing of each other? Without a browser.

use super::*;
use crate::storage::Memory;
use benchslate_core::record::{Kept, KeptAction, KeptItem};

fn item(link: &str) -> KeptAction {
    KeptAction::Keep(KeptItem {
        name: "Feed box lever".into(),
        link: link.into(),
        ..KeptItem::default()
    })
}

#[test]
fn what_is_kept_comes_back_and_can_be_taken_back() {
    let store = Memory::default();
    let document = Document::<Kept>::load(&store).after(Do::Act(item("#/v1/a?b=1")), &store);
    document.save(&store).unwrap();
    let again = Document::<Kept>::load(&store);
    assert_eq!(again.found, Found::Read);
    assert_eq!(again.undo.now, document.undo.now);
    assert!(document.after(Do::Undo, &store).undo.now.items.is_empty());
}

#[test]
fn a_newer_file_is_left_alone_until_the_user_says_so() {
    let store = Memory::default();
    let newer = r#"{"record":"kept","version":99,"data":{"other":1}}"#;
    store.set("benchslate.kept", newer).unwrap();
    let document = Document::<Kept>::load(&store).after(Do::Act(item("#/v1/a")), &store);
    assert_eq!(document.save(&store), Err(WriteFault::Guarded));
    assert_eq!(
        store.get("benchslate.kept").unwrap().as_deref(),
        Some(newer)
    );
    let afresh = document.after(Do::Afresh, &store);
    afresh.save(&store).unwrap();
    assert_eq!(
        store.get("benchslate.kept.unread").unwrap().as_deref(),
        Some(newer)
    );
}

/// Both tabs hear of what stands in storage and write what they have, until neither has anything to add.
fn settle<R: Record + Serialize + DeserializeOwned + std::fmt::Debug>(
    store: &Memory,
    tabs: [Document<R>; 2],
) -> [Document<R>; 2] {
    let mut tabs = tabs;
    for _ in 0..6 {
        for tab in &mut tabs {
            *tab = tab.after(Do::Reload, store);
            let saved = tab.save(store);
            *tab = tab.after(Do::Kept(saved), store);
        }
    }
    let text = store.get(&key::<R>()).unwrap();
    for tab in &tabs {
        assert_eq!(tab.after(Do::Reload, store).undo.now, tab.undo.now);
        assert_eq!(
            Some(write_file(&tab.undo.now)),
            text,
            "they agree at the end"
        );
    }
    tabs
}

/// Two tabs that act in the same instant: neither sees the other's before both have written.
fn at_once<R: Record + Serialize + DeserializeOwned + std::fmt::Debug>(
    store: &Memory,
    start: &Document<R>,
    actions: [R::Action; 2],
) -> [Document<R>; 2] {
    let tabs = actions.map(|action| start.after(Do::Act(action), store));
    let tabs = tabs.map(|tab| {
        let saved = tab.save(store);
        tab.after(Do::Kept(saved), store)
    });
    settle(store, tabs)
}

#[test]
fn two_tabs_in_the_same_instant_keep_both() {
    let store = Memory::default();
    let start = Document::<Kept>::load(&store);
    let [one, _] = at_once(&store, &start, [item("#/v1/a"), item("#/v1/b")]);
    assert_eq!(one.undo.now.items.len(), 2);
    // two notes on one line: one of them stands, in both tabs, and nothing goes round for ever
    let note = |text: &str| KeptAction::Note("#/v1/a".into(), text.into());
    let [one, other] = at_once(&store, &one, [note("one"), note("other")]);
    assert_eq!(one.undo.now, other.undo.now);
    // what is taken away later is meant
    store.clock.set(5000.0);
    let other = other.after(Do::Act(KeptAction::Remove("#/v1/a".into())), &store);
    let saved = other.save(&store);
    let other = other.after(Do::Kept(saved), &store);
    let [one, _] = settle(&store, [one, other]);
    assert_eq!(one.undo.now.items.len(), 1);
}

#[test]
fn a_tab_that_heard_nothing_yet_reads_before_it_writes() {
    let store = Memory::default();
    let [one, other] = [(); 2].map(|()| Document::<Kept>::load(&store));
    let one = one.after(Do::Act(item("#/v1/a")), &store);
    one.save(&store).unwrap();
    store.clock.set(60_000.0);
    let other = other.after(Do::Act(item("#/v1/b")), &store);
    assert_eq!(other.undo.now.items.len(), 2);
}

#[test]
fn two_tabs_with_two_tests_each_keep_their_own() {
    use benchslate_core::record::proving::{Plate, TestAction};
    use benchslate_core::record::{Proving, ProvingAction};
    let store = Memory::default();
    let begin = |name: &str| ProvingAction::Begin(name.into(), Plate::default(), String::new());
    let start = Document::<Proving>::load(&store)
        .after(Do::Act(begin("Mill")), &store)
        .after(Do::Act(begin("Shaper")), &store);
    start.save(&store).unwrap();
    store.clock.set(10_000.0);
    let start = Document::<Proving>::load(&store);
    let measured = |name: &str, text: &str| {
        let action = TestAction::Measured("a1.slack".into(), text.into(), System::Inch);
        ProvingAction::At(name.into(), action)
    };
    let [one, _] = at_once(
        &store,
        &start,
        [measured("Mill", "0.012"), measured("Shaper", "0.3 mm")],
    );
    let found = |at: usize| one.undo.now.tests[at].at("a1.slack").measured;
    assert_eq!([found(0), found(1)], ["0.012 in", "0.3 mm"]);
    // a note of one and a mark of the other at the same line
    let on = |action| ProvingAction::At("Mill".into(), action);
    let note = on(TestAction::Note("a1.slack".into(), "worn".into()));
    let mark = on(TestAction::Mark(
        "a1.slack".into(),
        benchslate_core::record::proving::Mark::Bad,
    ));
    let [one, _] = at_once(&store, &one, [note, mark]);
    let line = one.undo.now.tests[0].at("a1.slack");
    assert_eq!(
        (line.note.as_str(), line.measured.as_str()),
        ("worn", "0.012 in")
    );
    assert_eq!(line.mark, benchslate_core::record::proving::Mark::Bad);
    // the other tab opens another test: this one stays where it is
    let away = one.after(Do::Act(ProvingAction::Open(1)), &store);
    away.save(&store).unwrap();
    assert_eq!(
        one.after(Do::Reload, &store).undo.now.open,
        one.undo.now.open
    );
}

#[test]
fn a_record_of_an_older_version_is_read_in_the_units_of_its_device() {
    use benchslate_core::record::Proving;
    let store = Memory::default();
    let shop = r#"{"record":"my-shop","version":2,"data":{"system":"Metric","items":[],"machines":[{"kind":"Mill","items":[["rapid","1500"]]}]}}"#;
    store.set("benchslate.my-shop", shop).unwrap();
    let old = r#"{"record":"proving","version":1,"data":{"tests":[{"machine":"Mill","found":[{"id":"a1.slack","measured":"0.3"}]}]}}"#;
    store.set("benchslate.proving", old).unwrap();
    assert_eq!(
        Document::<Proving>::load(&store).undo.now.tests[0].bare,
        Some(System::Metric)
    );
    let shop = Document::<Shop>::load(&store).undo.now;
    assert_eq!(shop.entry().get("rapid"), Some("1500 mm/min"));
    // the same from a file: nobody knows
    let read = read_file::<Proving>(&format!("\u{feff}{old}"), None).unwrap();
    assert_eq!(read.tests[0].bare, None);
    assert!(read.tests[0].has_bare());
}
