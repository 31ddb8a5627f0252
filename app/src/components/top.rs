//! The header: the name that leads home, and the way to one's own things.

use crate::route::Route;
use yew::prelude::*;

/// Where one is.
#[derive(Properties, PartialEq)]
pub struct TopProps {
    /// The page on screen.
    pub route: Route,
}

/// The header.
#[component]
pub fn Top(props: &TopProps) -> Html {
    let link = |route: Route, text: &'static str| {
        let here = (props.route == route).then_some("page");
        html! { <a href={route.fragment()} aria-current={here}>{ text }</a> }
    };
    html! {
        <header class="top">
            <a class="brand" href="#/">{ "Benchslate" }</a>
            <nav aria-label="Your things">
                { link(Route::Shop, "My shop") }
                { link(Route::Kept, "Kept") }
            </nav>
        </header>
    }
}
