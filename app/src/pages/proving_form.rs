//! One test as it is filled in: its head, its axes, its parts with their lines, and what is left of lines taken out.

use crate::components::{Choice, Fold, ProveLine, Typing, caution_box, choice_row, prove_axes};
use crate::document::{Do, Document};
use crate::hooks::use_window_event;
use benchslate_core::quantity::System;
use benchslate_core::record::proving::{
    Ladder, Plate, ProvingLine, ProvingSection, Test, TestAction, view,
};
use benchslate_core::record::{Proving, ProvingAction};
use yew::prelude::*;

/// The test.
#[derive(Properties, PartialEq)]
pub struct ProvingFormProps {
    /// The test.
    pub test: Test,
    /// What a bare number is in.
    pub system: System,
    /// Where it is kept.
    pub proving: UseReducerHandle<Document<Proving>>,
    /// The plate of my shop.
    pub plate: Plate,
}

/// The form.
#[component]
pub fn ProvingForm(props: &ProvingFormProps) -> Html {
    let printing = use_state_eq(|| false);
    let print = |on: bool| {
        let printing = printing.clone();
        Callback::from(move |_: Event| printing.set(on))
    };
    use_window_event("beforeprint", print(true));
    use_window_event("afterprint", print(false));
    let act = use_callback(
        props.proving.dispatcher(),
        |action: TestAction, dispatcher| {
            dispatcher.dispatch(Do::Act(ProvingAction::On(action)));
        },
    );
    let test = &props.test;
    let shown = view(test, props.system);
    let ladder = {
        let act = act.clone();
        Callback::from(move |id: AttrValue| {
            let ladder = if id == "three" {
                Ladder::Three
            } else {
                Ladder::All
            };
            act.emit(TestAction::Ladder(ladder));
        })
    };
    let plate = {
        let (act, plate) = (act.clone(), props.plate.clone());
        Callback::from(move |_: MouseEvent| act.emit(TestAction::Plate(plate.clone())))
    };
    let head =
        |id: &'static str, label: &'static str, value: &str, make: fn(String) -> TestAction| {
            let act = act.clone();
            let onput = Callback::from(move |text: String| act.emit(make(text)));
            html! {
                <div class="field">
                    <label for={id}>{ label }</label>
                    <Typing {id} class="plain-text" {label} value={value.to_owned()} {onput} />
                </div>
            }
        };
    let axes = {
        let (axes, act) = (test.axes.clone(), act.clone());
        Callback::from(move |()| prove_axes(&axes, &act))
    };
    html! {
        <>
            <div class="prove-head">
                { head("p-machine", "Machine", &test.machine, TestAction::Machine) }
                { head("p-day", "Day", &test.day, TestAction::Day) }
                { head("p-by", "By", &test.by, TestAction::By) }
                { head("p-spindle", "Feeds run at spindle step", &test.spindle, TestAction::Spindle) }
                { head("p-remark", "Note", &test.note, TestAction::Remark) }
            </div>
            <div class="noprint">
                { choice_row(&Choice { id: "ladder".into(), label: "Steps to try".into(), choices: vec![("all".into(), "every step".into()), ("three".into(), "lowest, middle, highest".into())], chosen: (if test.ladder == Ladder::Three { "three" } else { "all" }).into(), onchoose: ladder, as_list: false }) }
                <Fold title="Axes" content={axes} />
                if test.plate != props.plate {
                    <p class="note row"><span>{ "My shop has another plate than this test." }</span><button type="button" class="act" onclick={plate}>{ "Take it from my shop" }</button></p>
                }
            </div>
            <p class="soft">{ shown.plate_note.clone() }{ " Type travel and time for a feed: 10 in / 30.2 s. A \u{b1} behind a figure says how well it was measured." }</p>
            <p role="status"><b>{ shown.summary() }</b></p>
            { for shown.sections.into_iter().enumerate().map(|(at, section)| part(at == 0, *printing, section, &act)) }
            if !shown.left.is_empty() {
                <section>
                    <h2>{ "No longer asked for" }</h2>
                    <p class="soft">{ "Found at an axis or a step that was taken out since." }</p>
                    { lines(&shown.left, &act) }
                </section>
            }
            <div class="paper"><div class="paper-lines"><p>{ "Signed" }</p><p>{ "Next test" }</p><p>{ "To do" }</p><p></p></div></div>
        </>
    }
}

fn part(open: bool, printing: bool, section: ProvingSection, act: &Callback<TestAction>) -> Html {
    let title = format!(
        "{}: {} of {}",
        section.title,
        section.done,
        section.lines.len()
    );
    let key = section.id.clone();
    let act = act.clone();
    let content = Callback::from(move |()| {
        html! {
            <>
                { for section.cautions.iter().map(caution_box) }
                { lines(&section.lines, &act) }
            </>
        }
    });
    html! { <Fold {key} {title} {open} prints={true} forced={printing} {content} /> }
}

fn lines(lines: &[ProvingLine], act: &Callback<TestAction>) -> Html {
    html! {
        <ul class="list">{ for lines.iter().map(|line| html! { <ProveLine key={line.id.clone()} line={line.clone()} act={act.clone()} /> }) }</ul>
    }
}
