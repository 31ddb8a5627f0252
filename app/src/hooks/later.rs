//! Puts work off until nothing new has come for a while (the address while one types, the spoken result), or until the
//! next frame has been painted (what stands behind the figures).

use super::use_window_event;
use gloo::{
    render::{AnimationFrame, request_animation_frame},
    timers::callback::Timeout,
};
use std::{cell::RefCell, rc::Rc};
use yew::prelude::*;

type Work = Box<dyn FnOnce()>;

/// A single slot of work put off.
#[derive(Clone, Default)]
pub struct Later {
    slot: Rc<RefCell<Slot>>,
}

/// A frame or a timer that is dropped does not come any more.
#[derive(Default)]
struct Slot {
    timer: Option<Timeout>,
    frame: Option<AnimationFrame>,
    work: Option<Work>,
}

impl Later {
    /// Does this after so many milliseconds, in place of what was put off before.
    pub fn put(&self, milliseconds: i32, work: impl FnOnce() + 'static) {
        self.slot.borrow_mut().work = Some(Box::new(work));
        self.arm(milliseconds);
    }

    /// Does this once the next frame is on screen, in place of what was put off before.
    pub fn put_behind_frame(&self, work: impl FnOnce() + 'static) {
        let mut slot = self.slot.borrow_mut();
        slot.timer = None;
        slot.work = Some(Box::new(work));
        if slot.frame.is_none() {
            let weak = Rc::downgrade(&self.slot);
            slot.frame = Some(request_animation_frame(move |_| {
                if let Some(slot) = weak.upgrade() {
                    slot.borrow_mut().frame = None;
                    Later { slot }.arm(0);
                }
            }));
        }
    }

    /// Does what was put off after so many milliseconds.
    fn arm(&self, milliseconds: i32) {
        let weak = Rc::downgrade(&self.slot);
        let timer = Timeout::new(milliseconds.max(0).unsigned_abs(), move || {
            if let Some(slot) = weak.upgrade() {
                Later { slot }.flush();
            }
        });
        self.slot.borrow_mut().timer = Some(timer);
    }

    /// Does at once what was put off.
    pub fn flush(&self) {
        let work = self.take();
        if let Some(work) = work {
            work();
        }
    }

    /// Forgets what was put off.
    pub fn forget(&self) {
        self.take();
    }

    /// The slot is free again before the work is done, which may put off something itself.
    fn take(&self) -> Option<Work> {
        let mut slot = self.slot.borrow_mut();
        slot.timer = None;
        slot.work.take()
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
