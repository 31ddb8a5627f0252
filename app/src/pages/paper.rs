//! What only the printed page has: the link to come back by, and blank lines to write in.

use crate::{dom, qr};
use yew::prelude::*;

/// The foot of the printed page, with the link's fragment.
pub fn paper(link: Option<String>) -> Html {
    let link = link.map(|link| format!("{}{link}", dom::base()));
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
