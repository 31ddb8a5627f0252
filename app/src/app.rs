//! Where is one, and what stands around every page? The route out of the fragment, the header, and the notices.

use crate::components::{Notices, top};
use crate::document::{Document, use_document};
use crate::dom;
use crate::hooks::use_window_event;
use crate::pages::{About, Home, KeptPage, ProvingPage, ShopLink, ShopPage, answer};
use crate::route::Route;
use benchslate_core::record::{Kept, Proving, Shop};
use std::cell::RefCell;
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
        Place {
            route: Route::read(&fragment),
            visit: 0,
        }
    });
    let navigated = {
        let place = place.clone();
        Callback::from(move |_: Event| {
            let fragment = dom::fragment();
            let same = SHOWN.with_borrow_mut(|shown| {
                *shown == fragment || {
                    shown.clone_from(&fragment);
                    false
                }
            });
            if !same {
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
        Route::Answer(link) => answer(link),
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
            <div class="page">
                <a class="skip" href="#main" onclick={Callback::from(|e: MouseEvent| { e.prevent_default(); dom::focus("main"); })}>{ "To the page" }</a>
                { top(&place.route) }
                <Notices />
                <div class="room" key={place.visit}>{ page }</div>
            </div>
        </ContextProvider<Records>>
    }
}
