//! What the page has to say about itself: a newer version is ready.

use crate::dom;
use crate::hooks::use_window_event;
use yew::prelude::*;

/// The line under the header; empty as a rule.
#[component]
pub fn Notices() -> Html {
    let ready = use_state_eq(|| dom::mark("update").is_some());
    let away = use_state_eq(|| false);
    {
        let ready = ready.clone();
        use_window_event(
            "benchslate:update",
            Callback::from(move |_| ready.set(true)),
        );
    }
    if !*ready || *away {
        return Html::default();
    }
    let later = {
        let away = away.clone();
        Callback::from(move |_| away.set(true))
    };
    html! {
        <div class="notice" role="status">
            <p>{ "A newer version is ready. What you typed stays." }</p>
            <button type="button" class="act main" onclick={Callback::from(|_| dom::tell("benchslate:use-new-version"))}>{ "Use it now" }</button>
            <button type="button" class="act plain" onclick={later}>{ "Later" }</button>
        </div>
    }
}
