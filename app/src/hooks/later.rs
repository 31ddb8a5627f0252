//! Puts work off until nothing new has come for a while (the address while one types, the spoken result), or until the
//! next frame has been painted (what stands behind the figures).

use super::use_window_event;
use crate::dom;
use std::{cell::RefCell, rc::Rc};
use wasm_bindgen::{JsCast, closure::Closure};
use yew::prelude::*;

type Work = Box<dyn FnOnce()>;

/// A single slot of work put off.
#[derive(Clone, Default)]
pub struct Later {
    slot: Rc<RefCell<Slot>>,
}

#[derive(Default)]
struct Slot {
    timer: Option<i32>,
    work: Option<Work>,
    closure: Option<Closure<dyn FnMut()>>,
    in_frame: Option<Closure<dyn FnMut()>>,
    frame: Option<i32>,
}

/// A frame or a timer that comes after this would find its closure gone.
impl Drop for Slot {
    fn drop(&mut self) {
        if let Some(w) = dom::window() {
            if let Some(frame) = self.frame {
                let _ = w.cancel_animation_frame(frame);
            }
            if let Some(timer) = self.timer {
                w.clear_timeout_with_handle(timer);
            }
        }
    }
}

impl Later {
    /// Does this after so many milliseconds, in place of what was put off before.
    pub fn put(&self, milliseconds: i32, work: impl FnOnce() + 'static) {
        self.slot.borrow_mut().work = Some(Box::new(work));
        self.arm(milliseconds);
    }

    /// Does this once the next frame is on screen, in place of what was put off before.
    pub fn put_behind_frame(&self, work: impl FnOnce() + 'static) {
        self.drop_timer();
        let mut slot = self.slot.borrow_mut();
        slot.work = Some(Box::new(work));
        if slot.frame.is_some() {
            return;
        }
        if slot.in_frame.is_none() {
            let weak = Rc::downgrade(&self.slot);
            slot.in_frame = Some(Closure::new(move || {
                if let Some(slot) = weak.upgrade() {
                    slot.borrow_mut().frame = None;
                    Later { slot }.arm(0);
                }
            }));
        }
        if let (Some(w), Some(closure)) = (dom::window(), slot.in_frame.as_ref()) {
            slot.frame = w
                .request_animation_frame(closure.as_ref().unchecked_ref())
                .ok();
        }
    }

    /// Does what was put off after so many milliseconds.
    fn arm(&self, milliseconds: i32) {
        self.drop_timer();
        let mut slot = self.slot.borrow_mut();
        if slot.closure.is_none() {
            let weak = Rc::downgrade(&self.slot);
            slot.closure = Some(Closure::new(move || {
                if let Some(slot) = weak.upgrade() {
                    Later { slot }.flush();
                }
            }));
        }
        if let (Some(w), Some(closure)) = (dom::window(), slot.closure.as_ref()) {
            slot.timer = w
                .set_timeout_with_callback_and_timeout_and_arguments_0(
                    closure.as_ref().unchecked_ref(),
                    milliseconds,
                )
                .ok();
        }
    }

    /// Does at once what was put off.
    pub fn flush(&self) {
        self.drop_timer();
        let work = self.slot.borrow_mut().work.take();
        if let Some(work) = work {
            work();
        }
    }

    /// Forgets what was put off.
    pub fn forget(&self) {
        self.drop_timer();
        self.slot.borrow_mut().work = None;
    }

    fn drop_timer(&self) {
        if let (Some(timer), Some(w)) = (self.slot.borrow_mut().timer.take(), dom::window()) {
            w.clear_timeout_with_handle(timer);
        }
    }
}

/// A slot that lives as long as the component; what is still put off then is forgotten: it belonged to that page.
#[hook]
pub fn use_later() -> Later {
    let later = use_memo((), |()| Later::default());
    {
        let later = (*later).clone();
        use_effect_with((), move |()| move || later.forget());
    }
    (*later).clone()
}

/// A slot for what must not be lost: it is done at once where the page or the field is left.
#[hook]
pub fn use_saving() -> Later {
    let later = use_later();
    let flush = {
        let later = later.clone();
        Callback::from(move |_: Event| later.flush())
    };
    use_window_event("pagehide", flush.clone());
    use_window_event("focusout", flush);
    later
}
