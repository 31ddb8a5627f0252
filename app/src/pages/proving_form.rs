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
    // by its name: another tab may have opened another test
    let act = use_callback(
        (props.proving.dispatcher(), props.test.machine.clone()),
        |action: TestAction, (dispatcher, name)| {
            dispatcher.dispatch(Do::Act(ProvingAction::At(name.clone(), action)));
        },
    );
    let test = &props.test;
    let shown = view(test);
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
                { head("p-spindle", "Feeds run at spindle speed", &test.spindle, TestAction::Spindle) }
                { head("p-remark", "Note", &test.note, TestAction::Remark) }
            </div>
            <div class="noprint">
                { choice_row(&Choice { id: "ladder".into(), label: "Feeds and speeds to try".into(), choices: vec![("all".into(), "every one".into()), ("three".into(), "lowest, middle, highest".into())], chosen: (if test.ladder == Ladder::Three { "three" } else { "all" }).into(), onchoose: ladder, as_list: false }) }
                <Fold title="Axes" content={axes} />
                if test.plate != props.plate {
                    <p class="note row"><span>{ "My shop's plate differs from the one in this test." }</span><button type="button" class="act" onclick={plate}>{ "Use the plate of my shop" }</button></p>
                }
            </div>
            { bare_note(test, &act) }
            <p class="soft">{ shown.plate_note.clone() }{ " Type travel and time for a feed: 10 in / 30.2 s. A \u{b1} behind a figure says how well it was measured." }</p>
            <p role="status"><b>{ shown.summary() }</b></p>
            { for shown.sections.into_iter().enumerate().map(|(at, section)| part(at == 0, *printing, section, props.system, &act)) }
            if !shown.left.is_empty() {
                <section>
                    <h2>{ "No longer asked for" }</h2>
                    <p class="soft">{ "Found at an axis or a feed that was removed since." }</p>
                    { lines(&shown.left, props.system, &act) }
                </section>
            }
            <div class="paper"><div class="paper-lines"><p>{ "Signed" }</p><p>{ "Next test" }</p><p>{ "To do" }</p><p></p></div></div>
        </>
    }
}

/// An older version kept no units: in which system its bare figures are read, and the other at a tap.
fn bare_note(test: &Test, act: &Callback<TestAction>) -> Html {
    if !test.has_bare() {
        return Html::default();
    }
    let words = match test.bare {
        Some(System::Inch) => {
            "This test was begun in an older version, which kept no units. Its figures without a unit are read in inches."
        }
        Some(System::Metric) => {
            "This test was begun in an older version, which kept no units. Its figures without a unit are read in millimeters."
        }
        None => {
            "This test comes from an older version, which kept no units. In which were the figures without a unit measured?"
        }
    };
    let button = |system: System, words: &'static str| {
        let onclick = act.reform(move |_: MouseEvent| TestAction::Bare(system));
        html! { <button type="button" class="act" {onclick}>{ words }</button> }
    };
    html! {
        <div class="note row" role="note"><span>{ words }</span>
            if test.bare != Some(System::Inch) { { button(System::Inch, "In inches") } }
            if test.bare != Some(System::Metric) { { button(System::Metric, "In millimeters") } }
        </div>
    }
}

fn part(
    open: bool,
    printing: bool,
    section: ProvingSection,
    system: System,
    act: &Callback<TestAction>,
) -> Html {
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
                { lines(&section.lines, system, &act) }
            </>
        }
    });
    html! { <Fold {key} {title} {open} prints={true} forced={printing} {content} /> }
}

fn lines(lines: &[ProvingLine], system: System, act: &Callback<TestAction>) -> Html {
    html! {
        <ul class="list">{ for lines.iter().map(|line| html! { <ProveLine key={line.id.clone()} line={line.clone()} {system} act={act.clone()} /> }) }</ul>
    }
}
