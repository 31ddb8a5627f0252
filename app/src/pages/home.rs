//! The list of questions in shop words, grouped by what one is doing, with the search box first.

use crate::app::{Records, coming, write_address};
use crate::hooks::use_saving;
use crate::route::Route;
use crate::{dom, links};
use benchslate_core::record::Shop;
use benchslate_core::search::{Found, Hit, Index};
use benchslate_core::sheet::{Group, Sheet};
use benchslate_core::sheets;
use std::{cell::OnceCell, rc::Rc};
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

thread_local! {
    /// Made at the first search, once.
    static INDEX: OnceCell<Index> = const { OnceCell::new() };
}

/// What stands in the search box.
#[derive(Properties, PartialEq)]
pub struct HomeProps {
    /// The text.
    pub text: Rc<str>,
}

/// The page.
#[component]
pub fn Home(props: &HomeProps) -> Html {
    let text = use_state_eq(|| props.text.clone());
    let records = use_context::<Records>();
    let shop = records.map(|r| r.shop.undo.now.clone()).unwrap_or_default();
    let address = use_saving();
    use_effect_with((), |()| dom::title("Benchslate"));
    {
        let address = address.clone();
        use_effect_with((*text).clone(), move |text| {
            let fragment = Route::Home(text.clone()).fragment();
            address.put(200, move || write_address(&fragment));
        });
    }
    let found = if text.trim().is_empty() {
        Found::default()
    } else {
        INDEX.with(|index| index.get_or_init(Index::default).ask(&text, &shop))
    };
    let oninput = {
        let text = text.clone();
        Callback::from(move |e: InputEvent| {
            if let Some(input) = e
                .target()
                .and_then(|t| t.dyn_into::<HtmlInputElement>().ok())
            {
                text.set(input.value().into());
            }
        })
    };
    let first = found.hits.first().map(|hit| hit.link.clone());
    let onkeydown = {
        let address = address.clone();
        Callback::from(move |e: KeyboardEvent| {
            if let ("Enter", Some(first)) = (e.key().as_str(), &first) {
                e.prevent_default();
                address.flush();
                coming(first, "own");
                dom::go(first);
            }
        })
    };
    let searching = !text.trim().is_empty();
    html! {
        <>
            <main id="main" tabindex="-1" class={searching.then_some("narrow")}>
                <h1 class="out">{ "Benchslate" }</h1>
                <input id="find" class="find" type="search" aria-label="Find a question, a drill, a thread, a pin" placeholder="#7, 3/8-16, 2/0 pin, or a question"
                    value={text.to_string()} {oninput} {onkeydown} autocomplete="off" autocapitalize="none" autocorrect="off" spellcheck="false" enterkeyhint="go" />
                if searching {
                    { results(&found, asks_to_prove(&text)) }
                } else {
                    <div class="groups">{ for Group::ALL.iter().map(|group| section(*group, &shop)) }</div>
                }
                <footer class="soft foot"><a href="#/about">{ "Sources, versions, privacy" }</a></footer>
            </main>
        </>
    }
}

fn section(group: Group, shop: &Shop) -> Html {
    let sheets: Vec<&'static Sheet> = sheets::ALL
        .iter()
        .copied()
        .filter(|sheet| sheet.group == group)
        .collect();
    let prove = (group == Group::Run).then(prove_row);
    if sheets.is_empty() {
        return Html::default();
    }
    html! {
        <section key={group.title()}>
            <h2 class="group">{ group.title() }</h2>
            <ul class="list">{ for sheets.into_iter().map(|sheet| row(links::to(sheet, shop, &[]), sheet.title, sheet.aside)) }{ prove }</ul>
        </section>
    }
}

fn row(href: String, title: &str, aside: &str) -> Html {
    html! { <li><a class="ask" {href}><b>{ title.to_owned() }</b>{ " " }<span class="soft">{ aside.to_owned() }</span></a></li> }
}

fn prove_row() -> Html {
    row(
        "#/proving".to_owned(),
        "Prove the machine",
        "test record: feeds, rapid, trips, alignment",
    )
}

/// The proving record is a page, not a question; it is found by the start of its own words.
fn asks_to_prove(text: &str) -> bool {
    let text = text.trim().to_ascii_lowercase();
    let words = [
        "prove",
        "proving",
        "test record",
        "acceptance test",
        "alignment test",
    ];
    text.len() >= 4
        && words
            .iter()
            .any(|word| word.starts_with(text.as_str()) || text.starts_with(word))
}

fn results(found: &Found, prove: bool) -> Html {
    let count = match found.hits.len() + usize::from(prove) {
        0 => "Nothing found. Try a size, a call such as 3/8-16, or a word of the question."
            .to_owned(),
        _ if found.near && !prove => "No question answers this. The nearest ones:".to_owned(),
        1 => "1 found".to_owned(),
        n => format!("{n} found"),
    };
    let missed = (!found.missed.is_empty())
        .then(|| format!(" Not understood: {}.", found.missed.join(", ")));
    html! {
        <>
            <p class="soft" role="status">{ count }{ missed }</p>
            <ul class="list">{ for found.hits.iter().map(hit_row) }if prove { { prove_row() } }</ul>
        </>
    }
}

/// A hit: the question, what was understood, and its figure where it is complete.
fn hit_row(hit: &Hit) -> Html {
    let figure = hit.answer.as_ref().map(|answer| {
        html! { <span class="found">{ answer.clone() }</span> }
    });
    html! {
        <li><a class="ask" href={hit.link.clone()}><b>{ hit.title.clone() }</b>{ " " }<span class="soft">{ hit.aside.clone() }</span>{ figure }</a></li>
    }
}
