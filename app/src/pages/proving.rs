//! The proving record of a machine: begin one, fill it in, print it with blank lines, save it, put it on the saved list.

use super::proving_form::ProvingForm;
use crate::app::Records;
use crate::components::{Choice, choice_row, record_notice};
use crate::document::{Do, read_file, write_file};
use crate::dom;
use crate::route::Route;
use benchslate_core::record::proving::{Plate, view};
use benchslate_core::record::{KeptAction, KeptItem, Proving, ProvingAction};
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Which test.
#[derive(Properties, PartialEq)]
pub struct ProvingProps {
    /// The name of the test to open; empty for the one that was open.
    pub name: Rc<str>,
}

/// The page.
#[component]
pub fn ProvingPage(props: &ProvingProps) -> Html {
    let records = use_context::<Records>();
    let said = use_state_eq(String::new);
    let name = use_node_ref();
    use_effect_with((), |()| dom::title("Prove the machine \u{b7} Benchslate"));
    {
        let (records, said) = (records.clone(), said.clone());
        use_effect_with(props.name.clone(), move |name| {
            if let Some(records) = records.filter(|_| !name.is_empty()) {
                match records.proving.undo.now.called(name) {
                    Some(at) => records.proving.dispatch(Do::Act(ProvingAction::Open(at))),
                    None => said.set(format!("No test called \u{201c}{name}\u{201d} is on this device. Open its file if you saved one.")),
                }
            }
        });
    }
    let Some(Records {
        shop,
        kept,
        proving,
    }) = records
    else {
        return Html::default();
    };
    let now = proving.undo.now.now().cloned();
    let act = {
        let proving = proving.clone();
        move |action: ProvingAction| proving.dispatch(Do::Act(action))
    };
    let begin = {
        let (act, shop, name) = (act.clone(), shop.clone(), name.clone());
        Callback::from(move |_: MouseEvent| {
            if let Some(input) = name.cast::<HtmlInputElement>() {
                let plate = Plate::of(&shop.undo.now);
                act(ProvingAction::Begin(input.value(), plate, dom::today()));
                input.set_value("");
            }
        })
    };
    let undo = {
        let proving = proving.clone();
        Callback::from(move |_: MouseEvent| proving.dispatch(Do::Undo))
    };
    let save = {
        let now = now.clone();
        Callback::from(move |_: MouseEvent| {
            if let Some(test) = &now {
                let one = Proving {
                    tests: vec![test.clone()],
                    open: 0,
                };
                dom::download("benchslate-proving.json", &write_file(&one));
            }
        })
    };
    let keep = {
        let (now, kept, said) = (now.clone(), kept.clone(), said.clone());
        Callback::from(move |_: MouseEvent| {
            let Some(test) = &now else { return };
            let link = Route::Proving(test.machine.as_str().into()).fragment();
            // the user's own note stays; else how far it is
            let noted = kept.undo.now.items.iter().any(|item| {
                item.link == link && !item.note.is_empty() && !item.note.contains(" lines: ")
            });
            let note = if noted {
                String::new()
            } else {
                view(test).summary()
            };
            kept.dispatch(Do::Act(KeptAction::Keep(KeptItem {
                name: format!("Proving: {}", test.machine),
                link,
                note,
                day: dom::today(),
                answer: String::new(),
            })));
            said.set("It is on the saved list now.".to_owned());
        })
    };
    let remove = {
        let (act, at) = (act.clone(), proving.undo.now.open);
        Callback::from(move |_: MouseEvent| act(ProvingAction::Remove(at)))
    };
    let open = {
        let (act, said) = (act.clone(), said.clone());
        Callback::from(move |e: Event| {
            let (act, said) = (act.clone(), said.clone());
            let input = e
                .target()
                .and_then(|t| t.dyn_into::<HtmlInputElement>().ok());
            if let Some(input) = input {
                wasm_bindgen_futures::spawn_local(async move {
                    if let Some(text) = dom::file_text(input).await {
                        match read_file::<Proving>(&text, None) {
                            Ok(other) => {
                                said.set(format!(
                                    "Imported: {} from the file, beside what was here.",
                                    other.tests.len()
                                ));
                                act(ProvingAction::TakeIn(other));
                            }
                            Err(fault) => said.set(super::question::said(&fault.text())),
                        }
                    }
                });
            }
        })
    };
    let choose = {
        let act = act.clone();
        Callback::from(move |at: AttrValue| {
            if let Ok(at) = at.parse() {
                act(ProvingAction::Open(at));
            }
        })
    };
    let tests = &proving.undo.now.tests;
    let names: Vec<(AttrValue, AttrValue)> = tests
        .iter()
        .enumerate()
        .map(|(at, test)| (at.to_string().into(), test.machine.clone().into()))
        .collect();
    let has = now.is_some();
    html! {
        <main id="main" class="proving" tabindex="-1">
            <h1>{ "Prove the machine" }</h1>
            { record_notice(&proving) }
            <p class="soft noprint">{ "Both ways on every axis: by hand, slow, fast, warm, then fine. It is a record: it compares with the plate, and passes and fails nothing." }</p>
            if names.len() > 1 {
                <div class="noprint">{ choice_row(&Choice { id: "test".into(), label: "Test".into(), choices: names, chosen: proving.undo.now.open.to_string().into(), onchoose: choose, as_list: true }) }</div>
            }
            if let Some(test) = now {
                <ProvingForm key={format!("{}-{}", tests.len(), proving.undo.now.open)} test={test} system={shop.undo.now.system} proving={proving.clone()} plate={Plate::of(&shop.undo.now)} />
            }
            <p class="row noprint">
                if has {
                    <button type="button" class="act main" onclick={keep}>{ "Put on the saved list" }</button>
                    <button type="button" class="act" onclick={Callback::from(|_| dom::print())}>{ "Print" }</button>
                    <button type="button" class="act" onclick={save}>{ "Save as a file" }</button>
                }
                <label class="act file">{ "Open a file" }<input class="out" type="file" accept="application/json,.json" onchange={open} /></label>
                <button type="button" class="act" onclick={undo} disabled={!proving.undo.can_undo()}>{ "Undo" }</button>
                if has { <button type="button" class="act plain" onclick={remove}>{ "Remove this test" }</button> }
            </p>
            <p class="soft" role="status">{ (*said).clone() }</p>
            <div class="field noprint">
                <label for="new-test">{ if has { "Test another machine" } else { "Machine" } }</label>
                <div class="row">
                    <input ref={name} id="new-test" class="plain-text" type="text" placeholder="Knee mill by the window" autocomplete="off" />
                    <button type="button" class={classes!("act", (!has).then_some("main"))} onclick={begin}>{ "Begin a test" }</button>
                </div>
                <p class="read">{ "Feeds, rapid and spindle speeds come from " }<a href="#/shop">{ "my shop" }</a>{ ": enter the plate there first." }</p>
            </div>
        </main>
    }
}
