//! Listens to a window event for as long as the component lives.

use crate::dom;
use wasm_bindgen::{JsCast, closure::Closure};
use yew::prelude::*;

/// Calls back on each such event; always the newest callback.
#[hook]
pub fn use_window_event(name: &'static str, call: Callback<Event>) {
    let newest = use_mut_ref(|| call.clone());
    *newest.borrow_mut() = call;
    use_effect_with(name, move |name| {
        let name = *name;
        let closure = Closure::<dyn Fn(Event)>::new(move |event| {
            let call = newest.borrow().clone();
            call.emit(event);
        });
        if let Some(w) = dom::window() {
            let _ = w.add_event_listener_with_callback(name, closure.as_ref().unchecked_ref());
        }
        move || {
            if let Some(w) = dom::window() {
                let _ =
                    w.remove_event_listener_with_callback(name, closure.as_ref().unchecked_ref());
            }
        }
    });
}
