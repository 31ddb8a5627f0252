//! What only the printed page has: the link to come back by, and blank lines to write in. Built ahead once the page has
//! stood still, or at once when the app itself prints.

use crate::components::use_ahead;
use crate::{dom, qr};
use yew::prelude::*;

/// The foot of a printed page.
#[derive(Properties, PartialEq)]
pub struct PaperProps {
    /// The link's fragment.
    pub link: Option<AttrValue>,
    /// The page prints now.
    pub printing: bool,
}

/// The foot of the printed page.
#[component]
pub fn Paper(props: &PaperProps) -> Html {
    if !use_ahead(true, props.link.clone()) && !props.printing {
        return Html::default();
    }
    let link = props
        .link
        .as_ref()
        .map(|link| format!("{}{link}", dom::base()));
    html! {
        <div class="paper">
            <div class="paper-lines">
                <p>{ "Machine" }</p><p>{ "Date, by" }</p><p>{ "Measured" }</p>
            </div>
            if let Some(link) = link {
                <div class="paper-link">
                    if let Some(svg) = qr::svg(&link) { <div class="qr">{ Html::from_html_unchecked(svg.into()) }</div> }
                    <small class="mono">{ link }</small>
                </div>
            }
        </div>
    }
}
