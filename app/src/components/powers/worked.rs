//! When is a search or a sweep worked out? Once typing pauses, in a task of its own, so that no key waits for it; at once
//! on paper.

use crate::hooks::use_later;
use crate::state::Form;
use std::rc::Rc;
use yew::prelude::*;

/// Milliseconds without a change.
const PAUSE: i32 = 150;

/// What was worked out of a form.
pub(super) enum Worked<T> {
    /// Not yet.
    Waiting,
    /// This.
    Done(Rc<Option<T>>),
}

/// Works something out of a form once it stays as it is.
#[hook]
pub(super) fn use_worked<T: 'static>(
    form: &Form,
    at_once: bool,
    work: fn(&Form) -> Option<T>,
) -> Worked<T> {
    let done = use_state(|| None::<(Form, Rc<Option<T>>)>);
    let later = use_later();
    {
        let done = done.clone();
        use_effect_with(form.clone(), move |form| {
            let form = form.clone();
            later.put(PAUSE, move || {
                let found = Rc::new(work(&form));
                done.set(Some((form, found)));
            });
        });
    }
    match &*done {
        Some((of, found)) if of == form => Worked::Done(found.clone()),
        _ if at_once => Worked::Done(Rc::new(work(form))),
        _ => Worked::Waiting,
    }
}
