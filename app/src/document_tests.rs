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
