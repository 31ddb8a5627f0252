//! Says how a record was found and kept: refused, full, unreadable, newer; and offers what can be done about it.

use crate::document::{Do, Document};
use crate::dom;
use crate::storage::Found;
use benchslate_core::record::Record;
use serde::{Serialize, de::DeserializeOwned};
use yew::prelude::*;

/// The notice; empty as a rule.
pub fn record_notice<R: Record + Serialize + DeserializeOwned + 'static>(
    document: &UseReducerHandle<Document<R>>,
) -> Html {
    let words = document
        .found
        .words()
        .or(document.fault.map(crate::storage::WriteFault::words));
    let Some(words) = words else {
        return Html::default();
    };
    let unread = match &document.found {
        Found::Corrupt(text) | Found::Newer(text) => Some(text.clone()),
        _ => None,
    };
    let afresh = {
        let document = document.clone();
        Callback::from(move |_| document.dispatch(Do::Afresh))
    };
    html! {
        <div class="notice" role="status">
            <p>{ words }</p>
            if let Some(text) = unread {
                <button type="button" class="act" onclick={Callback::from(move |_| { dom::download("benchslate-unread.json", &text); })}>{ "Save it as a file" }</button>
                <button type="button" class="act" onclick={afresh}>{ "Start over" }</button>
            }
        </div>
    }
}
