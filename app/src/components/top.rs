//! The header: the name that leads home, and the way to one's own things.

use crate::route::Route;
use yew::prelude::*;

/// The header of the page on screen.
pub fn top(page: &Route) -> Html {
    let link = |route: Route, text: &'static str| {
        let here = (*page == route).then_some("page");
        html! { <a href={route.fragment()} aria-current={here}>{ text }</a> }
    };
    html! {
        <header class="top">
            <a class="brand" href="#/">{ "Benchslate" }</a>
            <nav aria-label="Your pages">
                { link(Route::Shop, "My shop") }
                { link(Route::Kept, "Saved") }
            </nav>
        </header>
    }
}
