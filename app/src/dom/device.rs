//! What does this device offer? Its date, its pointer, its clipboard, its share sheet, and a screen kept awake. Older
//! browsers lack some of these objects, so each is looked for before it is called; gloo has no part for them.

use gloo::utils::window;
use js_sys::{Function, Object, Promise, Reflect};
use std::{
    cell::{Cell, RefCell},
    rc::Rc,
};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::{JsFuture, spawn_local};

/// Whether a media query holds.
pub fn media(query: &str) -> bool {
    let found = window().match_media(query).ok().flatten();
    found.is_some_and(|m| m.matches())
}

/// Today, as the device has it: 2026-11-25.
pub fn today() -> String {
    let now = js_sys::Date::new_0();
    let two = |n: u32| {
        if n < 10 {
            format!("0{n}")
        } else {
            n.to_string()
        }
    };
    format!(
        "{}-{}-{}",
        now.get_full_year(),
        two(now.get_month() + 1),
        two(now.get_date())
    )
}

fn navigator() -> JsValue {
    window().navigator().into()
}

/// A part of the navigator that older browsers may lack.
fn part(name: &str) -> Option<JsValue> {
    Reflect::get(&navigator(), &JsValue::from_str(name))
        .ok()
        .filter(JsValue::is_object)
}

/// A method of an object that older browsers may lack.
fn method(object: &JsValue, name: &str) -> Option<Function> {
    Reflect::get(object, &JsValue::from_str(name))
        .ok()?
        .dyn_into()
        .ok()
}

/// Calls such a method, which promises something.
fn ask(object: &JsValue, name: &str, with: &JsValue) -> Option<Promise> {
    let given = method(object, name)?.call1(object, with).ok()?;
    given.dyn_into().ok()
}

/// Waits for what may well be refused, so that a refusal is no unhandled one.
fn settle(promise: Option<Promise>) {
    if let Some(promise) = promise {
        spawn_local(async move {
            let _ = JsFuture::from(promise).await;
        });
    }
}

/// Copies a text; `false` where the browser refuses.
pub async fn copy(text: String) -> bool {
    let text = JsValue::from_str(&text);
    let promise = part("clipboard").and_then(|board| ask(&board, "writeText", &text));
    match promise {
        Some(promise) => JsFuture::from(promise).await.is_ok(),
        None => false,
    }
}

/// True where the system has a share sheet.
pub fn can_share() -> bool {
    method(&navigator(), "share").is_some()
}

/// Opens the system's share sheet. The user may close it without sharing: nothing to say then.
pub fn share(title: &str, url: &str) {
    let data = Object::new();
    for (key, text) in [("title", title), ("url", url)] {
        let _ = Reflect::set(&data, &JsValue::from_str(key), &JsValue::from_str(text));
    }
    settle(ask(&navigator(), "share", &data));
}

/// A screen kept awake.
#[derive(Default)]
pub struct Awake {
    held: Rc<RefCell<Option<JsValue>>>,
    gone: Rc<Cell<bool>>,
}

/// Keeps the screen awake for as long as this lives, where the browser can do that; one that saves power may refuse.
pub fn keep_awake() -> Awake {
    let awake = Awake::default();
    let screen = JsValue::from_str("screen");
    if let Some(promise) = part("wakeLock").and_then(|wake| ask(&wake, "request", &screen)) {
        let (held, gone) = (awake.held.clone(), awake.gone.clone());
        spawn_local(async move {
            if let Ok(lock) = JsFuture::from(promise).await {
                if gone.get() {
                    release(&lock);
                } else {
                    *held.borrow_mut() = Some(lock);
                }
            }
        });
    }
    awake
}

fn release(lock: &JsValue) {
    settle(ask(lock, "release", &JsValue::UNDEFINED));
}

impl Drop for Awake {
    fn drop(&mut self) {
        self.gone.set(true);
        if let Some(lock) = self.held.borrow_mut().take() {
            release(&lock);
        }
    }
}
