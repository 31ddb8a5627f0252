//! What do the app and the watchdog script, which stands outside it, tell each other? By marks and classes on the root
//! element, and by events.

use super::root;
use gloo::utils::window;

/// A mark that the watchdog script left on the root element.
pub fn mark(name: &str) -> Option<String> {
    root()?.dataset().get(name)
}

/// Leaves a mark on the root element.
pub fn set_mark(name: &str, value: Option<&str>) {
    if let Some(root) = root() {
        match value {
            Some(value) => {
                let _ = root.dataset().set(name, value);
            }
            None => root.dataset().delete(name),
        }
    }
}

/// Puts a class on the root element, or takes it off.
pub fn root_class(class: &str, on: bool) {
    if let Some(root) = root() {
        let _ = root.class_list().toggle_with_force(class, on);
    }
}

/// Tells the watchdog script something.
pub fn tell(name: &str) {
    if let Ok(event) = web_sys::Event::new(name) {
        let _ = window().dispatch_event(&event);
    }
}
