//! What was saved: links with names, answers and notes, in the user's order; export, import, undo.

use crate::app::Records;
use crate::components::{Typing, record_notice};
use crate::document::{Do, read_file, write_file};
use crate::dom;
use benchslate_core::record::{Kept, KeptAction, KeptItem, Leads};
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The page.
#[component]
pub fn KeptPage() -> Html {
    let records = use_context::<Records>();
    let said = use_state_eq(String::new);
    use_effect_with((), |()| dom::title("Saved \u{b7} Benchslate"));
    let Some(kept) = records.map(|r| r.kept) else {
        return Html::default();
    };
    let act = acting_on(&kept);
    let undo = {
        let kept = kept.clone();
        Callback::from(move |_| kept.dispatch(Do::Undo))
    };
    let save = {
        let kept = kept.clone();
        Callback::from(move |_| {
            dom::download("benchslate-saved.json", &write_file(&kept.undo.now));
        })
    };
    let open = {
        let (act, said, now) = (act.clone(), said.clone(), kept.undo.now.clone());
        Callback::from(move |e: Event| {
            let (act, said, now) = (act.clone(), said.clone(), now.clone());
            if let Some(input) = e
                .target()
                .and_then(|t| t.dyn_into::<HtmlInputElement>().ok())
            {
                wasm_bindgen_futures::spawn_local(async move {
                    if let Some(text) = dom::file_text(input).await {
                        match read_file::<Kept>(&text, None) {
                            Ok(other) => {
                                said.set(imported(now.lacks(&other), other.items.len()));
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
            <h1>{ "Saved" }</h1>
            { record_notice(&kept) }
            if items.is_empty() {
                <p class="soft">{ "Nothing saved yet. Save, at the bottom of an answer, puts it here." }</p>
            }
            <ul class="list kept" data-from="saved">{ for items.iter().enumerate().map(|(at, item)| row(at, item, &act)) }</ul>
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

fn acting_on(kept: &UseReducerHandle<crate::document::Document<Kept>>) -> Callback<KeptAction> {
    let kept = kept.dispatcher();
    Callback::from(move |action: KeptAction| kept.dispatch(Do::Act(action)))
}

/// What an opened file brought.
fn imported(new: usize, all: usize) -> String {
    match (new, all) {
        (_, 0) => "The file holds no saved answer.".to_owned(),
        (0, _) => "Nothing imported: all of the file was here already.".to_owned(),
        (new, all) if new == all => format!("Imported: {new} from the file."),
        (new, all) => format!(
            "Imported: {new} from the file; the other {} were here already.",
            all.saturating_sub(new)
        ),
    }
}

fn row(at: usize, item: &KeptItem, act: &Callback<KeptAction>) -> Html {
    let note = {
        let (act, link) = (act.clone(), item.link.clone());
        Callback::from(move |text: String| act.emit(KeptAction::Note(link.clone(), text)))
    };
    let on = |action: KeptAction| act.reform(move |_: MouseEvent| action.clone());
    let words = html! {
        <>
            <b>{ item.name.clone() }</b>{ " " }
            if !item.answer.is_empty() { <span class="fig">{ item.answer.clone() }</span>{ " " } }
            <span class="soft">{ item.day.clone() }</span>
        </>
    };
    html! {
        <li key={item.link.clone()}>
            { match item.leads() {
                Leads::Answer(link) | Leads::Proving(link) => html! { <a class="ask" href={link.to_owned()}>{ words }</a> },
                Leads::Nowhere => html! {
                    <div class="ask unread">{ words }<p class="fault">{ "This saved line holds no link to a calculation, so it can\u{2019}t be opened:" }</p>
                        <p class="soft mono">{ item.link.chars().take(120).collect::<String>() }</p></div>
                },
            } }
            <Typing class="note-text" value={item.note.clone()} onput={note} placeholder="Note" label={format!("Note on {}", item.name)} />
            <p class="row noprint">
                <button type="button" class="act plain" onclick={on(KeptAction::Up(item.link.clone()))} disabled={at == 0} aria-label={format!("Move {} up", item.name)}>{ "Up" }</button>
                <button type="button" class="act plain" onclick={on(KeptAction::Remove(item.link.clone()))} aria-label={format!("Remove {}", item.name)}>{ "Remove" }</button>
            </p>
        </li>
    }
}

#[cfg(test)]
mod tests {
    use super::imported;

    #[test]
    fn what_was_there_already_is_not_counted_as_imported() {
        assert_eq!(imported(4, 4), "Imported: 4 from the file.");
        assert_eq!(
            imported(0, 4),
            "Nothing imported: all of the file was here already."
        );
        assert!(imported(1, 4).contains("the other 3 were here already"));
    }
}
