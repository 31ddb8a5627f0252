//! Somebody's shop came as a link: what differs from mine, and it is used only on a tap.

use crate::app::Records;
use crate::document::Do;
use crate::dom;
use benchslate_core::link::{Note, open_shop};
use benchslate_core::record::{Shop, ShopAction, ShopDifference, shop_differences};
use std::rc::Rc;
use yew::prelude::*;

/// The link.
#[derive(Properties, PartialEq)]
pub struct ShopLinkProps {
    /// The fragment.
    pub link: Rc<str>,
}

/// The page.
#[component]
pub fn ShopLink(props: &ShopLinkProps) -> Html {
    let records = use_context::<Records>();
    let taken = use_state_eq(|| false);
    use_effect_with((), |()| dom::title("A shop in a link \u{b7} Benchslate"));
    let Some(records) = records else {
        return Html::default();
    };
    let page =
        |inner: Html| html! { <main id="main" class="narrow" tabindex="-1">{ inner }</main> };
    let (theirs, notes): (Shop, Vec<Note>) = match open_shop(&props.link) {
        Ok(opened) => opened,
        Err(fault) => {
            return page(
                html! { <><h1>{ "A shop in a link" }</h1><p class="fault">{ super::question::said(&fault.text()) }</p><p><a href="#/shop">{ "My shop" }</a></p></> },
            );
        }
    };
    let shop = records.shop.clone();
    let undo = {
        let (shop, taken) = (shop.clone(), taken.clone());
        Callback::from(move |_: MouseEvent| {
            shop.dispatch(Do::Undo);
            taken.set(false);
        })
    };
    let differs = shop_differences(&shop.undo.now, &theirs);
    let take = {
        let taken = taken.clone();
        Callback::from(move |_: MouseEvent| {
            shop.dispatch(Do::Act(ShopAction::Replace(theirs.clone())));
            taken.set(true);
        })
    };
    let notes: Html = notes
        .iter()
        .map(|note| html! { <p class="note">{ super::question::said(&note.text()) }</p> })
        .collect();
    page(html! {
        if *taken {
            <h1>{ "Your shop is replaced" }</h1>
            { notes }
            <p role="status">{ "Your shop is now the one in the link." }</p>
            <p class="row"><button type="button" class="act" onclick={undo}>{ "Undo" }</button><a class="act" href="#/shop">{ "My shop" }</a></p>
        } else if differs.is_empty() {
            <h1>{ "A shop in a link" }</h1>
            { notes }
            <p>{ "It says the same as yours. There is nothing to change." }</p>
            <p><a href="#/shop">{ "My shop" }</a></p>
        } else {
            <h1>{ "Use this shop?" }</h1>
            { notes }
            <p>{ "A link brought another shop. Nothing is changed yet. All of yours would be replaced; these items differ:" }</p>
            <div class="scroll"><table class="ranked">
                <thead><tr><th class="first" scope="col">{ "Item" }</th><th class="text" scope="col">{ "Yours" }</th><th class="text" scope="col">{ "In the link" }</th></tr></thead>
                <tbody>{ for differs.iter().map(row) }</tbody>
            </table></div>
            <p class="row"><button type="button" class="act main" onclick={take}>{ "Use this shop" }</button><a class="act" href="#/shop">{ "Keep mine" }</a></p>
        }
    })
}

fn row(one: &ShopDifference) -> Html {
    html! {
        <tr>
            <th class="first" scope="row">{ one.label.clone() }</th>
            <td class="text">{ one.mine.clone() }</td>
            <td class="text">
                { one.theirs.clone() }
                if !one.fault.is_empty() { <span class="fault">{ super::question::said(&one.fault) }</span> }
            </td>
        </tr>
    }
}
