//! What was kept: links with names and notes, in the user's order; export, import, undo.

use crate::app::Records;
use crate::components::record_notice;
use crate::document::{Do, read_file, write_file};
use crate::dom;
use benchslate_core::record::{Kept, KeptAction, KeptItem};
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The page.
#[component]
pub fn KeptPage() -> Html {
    let records = use_context::<Records>();
    let said = use_state_eq(String::new);
    use_effect_with((), |()| dom::title("Kept \u{b7} Benchslate"));
    let Some(kept) = records.map(|r| r.kept) else {
        return Html::default();
    };
    let act = {
        let kept = kept.clone();
        Callback::from(move |action: KeptAction| kept.dispatch(Do::Act(action)))
    };
    let undo = {
        let kept = kept.clone();
        Callback::from(move |_| kept.dispatch(Do::Undo))
    };
    let save = {
        let kept = kept.clone();
        Callback::from(move |_| {
            dom::download("benchslate-kept.json", &write_file(&kept.undo.now));
        })
    };
    let open = {
        let (act, said) = (act.clone(), said.clone());
        Callback::from(move |e: Event| {
            let (act, said) = (act.clone(), said.clone());
            if let Some(input) = e
                .target()
                .and_then(|t| t.dyn_into::<HtmlInputElement>().ok())
            {
                wasm_bindgen_futures::spawn_local(async move {
                    if let Some(text) = dom::file_text(input).await {
                        match read_file::<Kept>(&text) {
                            Ok(other) => {
                                said.set(format!("Taken in: {} from the file.", other.items.len()));
                                act.emit(KeptAction::TakeIn(other));
                            }
                            Err(fault) => said.set(super::question::said(&fault.text())),
                        }
                    }
                });
            }
        })
    };
    let items = &kept.undo.now.items;
    html! {
        <main id="main" class="narrow" tabindex="-1">
            <h1>{ "Kept" }</h1>
            { record_notice(&kept) }
            if items.is_empty() {
                <p class="soft">{ "Nothing kept yet. Keep, at the bottom of an answer, puts it here." }</p>
            }
            <ul class="list kept">{ for items.iter().enumerate().map(|(at, item)| row(at, item, &act)) }</ul>
            <p class="row noprint">
                <button type="button" class="act" onclick={undo} disabled={!kept.undo.can_undo()}>{ "Undo" }</button>
                <button type="button" class="act" onclick={save} disabled={items.is_empty()}>{ "Save as a file" }</button>
                <label class="act file">{ "Open a file" }<input class="out" type="file" accept="application/json,.json" onchange={open} /></label>
                <button type="button" class="act" onclick={Callback::from(|_| dom::print())} disabled={items.is_empty()}>{ "Print" }</button>
            </p>
            <p class="soft" role="status">{ (*said).clone() }</p>
        </main>
    }
}

fn row(at: usize, item: &KeptItem, act: &Callback<KeptAction>) -> Html {
    let text_of = |e: &Event| {
        e.target()
            .and_then(|t| t.dyn_into::<HtmlInputElement>().ok())
            .map(|input| input.value())
    };
    let note = {
        let act = act.clone();
        Callback::from(move |e: Event| {
            if let Some(text) = text_of(&e) {
                act.emit(KeptAction::Note(at, text));
            }
        })
    };
    let on = |action: KeptAction| {
        let act = act.clone();
        Callback::from(move |_: MouseEvent| act.emit(action.clone()))
    };
    html! {
        <li key={item.link.clone()}>
            <a class="ask" href={item.link.clone()}><b>{ item.name.clone() }</b>{ " " }<span class="soft">{ item.day.clone() }</span></a>
            <input class="note-text" type="text" value={item.note.clone()} onchange={note} placeholder="Note" aria-label={format!("Note on {}", item.name)} />
            <p class="row noprint">
                <button type="button" class="act plain" onclick={on(KeptAction::Up(at))} disabled={at == 0} aria-label={format!("Move {} up", item.name)}>{ "Up" }</button>
                <button type="button" class="act plain" onclick={on(KeptAction::Remove(at))} aria-label={format!("Take out {}", item.name)}>{ "Take out" }</button>
            </p>
        </li>
    }
}
