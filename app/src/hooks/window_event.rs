//! Listens to a window event for as long as the component lives.

use gloo::events::{EventListener, EventListenerOptions};
use yew::prelude::*;

/// Calls back on each such event; always the newest callback.
#[hook]
pub fn use_window_event(name: &'static str, call: Callback<Event>) {
    let newest = use_mut_ref(|| call.clone());
    *newest.borrow_mut() = call;
    use_effect_with(name, move |name| {
        let options = EventListenerOptions::enable_prevent_default();
        let window = gloo::utils::window();
        let listener = EventListener::new_with_options(&window, *name, options, move |event| {
            let call = newest.borrow().clone();
            call.emit(event.clone());
        });
        move || drop(listener)
    });
}
