//! Where is one, and what stands around every page? The route out of the fragment, the header, and the notices.

use crate::components::{Notices, top};
use crate::document::{Document, use_document};
use crate::hooks::use_window_event;
use crate::pages::{About, AnswerPage, Home, KeptPage, ProvingPage, ShopLink, ShopPage};
use crate::route::Route;
use crate::{dom, storage};
use benchslate_core::record::{Kept, Proving, Shop};
use std::cell::{Cell, RefCell};
use wasm_bindgen::JsCast;
use yew::prelude::*;

/// The records of this device, for every page.
#[derive(Clone, PartialEq)]
pub struct Records {
    /// My shop.
    pub shop: UseReducerHandle<Document<Shop>>,
    /// Kept links.
    pub kept: UseReducerHandle<Document<Kept>>,
    /// Tests of machines.
    pub proving: UseReducerHandle<Document<Proving>>,
}

thread_local! {
    /// The fragment that the page on screen stands for, so that its own writing is told from a navigation.
    static SHOWN: RefCell<String> = const { RefCell::new(String::new()) };
    /// The fragment of a link that was tapped within the app, and from where.
    static COMING: RefCell<Option<(String, &'static str)>> = const { RefCell::new(None) };
    /// Counts navigations: what a page that was left still had to write is not for the page that came.
    static VISIT: Cell<u32> = const { Cell::new(0) };
    /// A panel stands over the page, as a history entry of its own: Back closes it.
    static PANEL: Cell<bool> = const { Cell::new(false) };
}

/// Says that a link of the app's own is about to be followed: its page is opened from within.
pub fn coming(fragment: &str, from: &'static str) {
    COMING.set(Some((fragment.to_owned(), from)));
}

/// Opens a panel over the page as a history entry of its own.
pub fn open_panel(tag: &str) {
    dom::mark_under();
    dom::push_view(tag);
    PANEL.set(true);
}

/// Closes the panel as Back does.
pub fn close_panel() {
    if PANEL.get() {
        dom::back();
    }
}

/// The page as a whole was changed: Back leads to what stood there before.
pub fn step_address(fragment: &str) {
    SHOWN.with_borrow_mut(|shown| fragment.clone_into(shown));
    dom::push(fragment);
}

/// What the address says of this page at present.
pub fn shown_address() -> String {
    SHOWN.with_borrow(Clone::clone)
}

/// A panel's Back, where what was typed under it has moved the address on: the entry below takes the new address.
fn closes_panel(fragment: &str) -> bool {
    let shown = shown_address();
    let closes = PANEL.get() && dom::view() == "under";
    if closes && fragment != shown {
        dom::replace(&shown);
    }
    closes
}

/// A tap on a link of the app's own.
fn tapped(e: &MouseEvent) {
    if e.button() != 0 || e.ctrl_key() || e.meta_key() || e.shift_key() {
        return;
    }
    let target = e
        .target()
        .and_then(|t| t.dyn_into::<web_sys::Element>().ok());
    let link = target.and_then(|t| t.closest("a[href^='#/']").ok().flatten());
    if let Some((link, href)) = link.and_then(|l| l.get_attribute("href").map(|href| (l, href))) {
        PANEL.set(false);
        let saved = link.closest("[data-from='saved']").ok().flatten();
        coming(&href, if saved.is_some() { "saved" } else { "own" });
    }
}

/// Which navigation the page on screen came by.
pub fn visit() -> u32 {
    VISIT.get()
}

/// Writes the page's own state into the address; no navigation.
pub fn write_address(fragment: &str) {
    SHOWN.with_borrow_mut(|shown| {
        if shown != fragment {
            fragment.clone_into(shown);
            dom::replace(fragment);
        }
    });
}

#[derive(Clone, PartialEq)]
struct Place {
    route: Route,
    /// Counts navigations: each gives its page a fresh start from the address.
    visit: u32,
}

/// The whole app.
#[component]
pub fn App() -> Html {
    let shop = use_document::<Shop>();
    let kept = use_document::<Kept>();
    let proving = use_document::<Proving>();
    let place = use_state_eq(|| {
        let fragment = dom::fragment();
        SHOWN.with_borrow_mut(|shown| shown.clone_from(&fragment));
        PANEL.set(matches!(dom::view().as_str(), "link" | "kept"));
        Place {
            route: Route::read(&fragment),
            visit: 0,
        }
    });
    let navigated = {
        let place = place.clone();
        Callback::from(move |_: Event| {
            let fragment = dom::fragment();
            let came = COMING.take().filter(|(coming, _)| *coming == fragment);
            if let Some((_, from)) = came {
                dom::mark_opened_from(from);
                // what was put aside for a reload is not meant for a link that was tapped
                storage::put_draft("");
            }
            let closes = closes_panel(&fragment);
            PANEL.set(matches!(dom::view().as_str(), "link" | "kept"));
            let same = closes
                || SHOWN.with_borrow_mut(|shown| {
                    *shown == fragment || {
                        shown.clone_from(&fragment);
                        false
                    }
                });
            if !same {
                VISIT.set(VISIT.get().wrapping_add(1));
                place.set(Place {
                    route: Route::read(&fragment),
                    visit: place.visit.wrapping_add(1),
                });
            }
        })
    };
    use_window_event("popstate", navigated.clone());
    use_window_event("hashchange", navigated);
    use_effect_with((), |()| {
        dom::set_mark("app", Some("up"));
    });
    use_effect_with(place.visit, |visit| {
        if *visit > 0 {
            if let Some(w) = dom::window() {
                w.scroll_to_with_x_and_y(0.0, 0.0);
            }
            dom::focus("main");
        }
    });
    let page = match &place.route {
        Route::Home(text) => html! { <Home text={text.clone()} /> },
        Route::Answer(link) => html! { <AnswerPage link={link.clone()} /> },
        Route::Shop => html! { <ShopPage /> },
        Route::ShopLink(link) => html! { <ShopLink link={link.clone()} /> },
        Route::Proving(name) => html! { <ProvingPage name={name.clone()} /> },
        Route::Kept => html! { <KeptPage /> },
        Route::About => html! { <About /> },
    };
    let records = Records {
        shop,
        kept,
        proving,
    };
    html! {
        <ContextProvider<Records> context={records}>
            <div class="page" onclick={Callback::from(|e: MouseEvent| tapped(&e))}>
                <a class="skip" href="#main" onclick={Callback::from(|e: MouseEvent| { e.prevent_default(); dom::focus("main"); })}>{ "To the page" }</a>
                { top(&place.route) }
                <Notices />
                <div class="room" key={place.visit}>{ page }</div>
            </div>
        </ContextProvider<Records>>
    }
}
