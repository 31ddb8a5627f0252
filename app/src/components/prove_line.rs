//! One line of a proving record: what is looked at, what was measured, how far it is off, what it was found to be.

use super::{Typing, sentence};
use benchslate_core::quantity::System;
use benchslate_core::record::proving::{Mark, ProvingLine, TestAction};
use benchslate_core::sheet::Caution;
use yew::prelude::*;

/// A line.
#[derive(Properties, PartialEq)]
pub struct ProveLineProps {
    /// The line.
    pub line: ProvingLine,
    /// What a bare number is typed in.
    pub system: System,
    /// Told of each change.
    pub act: Callback<TestAction>,
}

/// A caution in its box.
pub fn caution_box(caution: &Caution) -> Html {
    html! {
        <div class={if caution.stop { "stop" } else { "note" }} role="note">
            <b class="word">{ caution.before.to_string() }</b>
            <p>{ caution.text.to_string() }</p>
        </div>
    }
}

/// The line.
#[component]
pub fn ProveLine(props: &ProveLineProps) -> Html {
    let line = &props.line;
    let read = AttrValue::from(format!("r-{}", line.id.replace([' ', '"'], "_")));
    let put = |make: fn(String, String) -> TestAction| {
        let (act, id) = (props.act.clone(), line.id.clone());
        Callback::from(move |text: String| act.emit(make(id.clone(), text)))
    };
    let figure = |make: fn(String, String, System) -> TestAction| {
        let (act, id, system) = (props.act.clone(), line.id.clone(), props.system);
        Callback::from(move |text: String| act.emit(make(id.clone(), text, system)))
    };
    let mark = |mark: Mark, words: &'static str| {
        let on = line.finding.mark == mark;
        let (act, id) = (props.act.clone(), line.id.clone());
        let next = if on { Mark::Open } else { mark };
        let onclick =
            Callback::from(move |_: MouseEvent| act.emit(TestAction::Mark(id.clone(), next)));
        let sign = match (on, mark) {
            (false, _) => "\u{2610} ",
            (true, Mark::Good) => "\u{2713} ",
            (true, _) => "\u{2717} ",
        };
        html! {
            <button type="button" class={classes!("mark-it", on.then_some("on"))} aria-pressed={on.to_string()} aria-label={format!("{words}: {}", line.label)} {onclick}>{ sign }{ words }</button>
        }
    };
    html! {
        <li class="prove">
            if let Some(caution) = &line.caution { { caution_box(caution) } }
            <div class="prove-cells">
                <div class="what">
                    <b>{ line.label.clone() }</b>
                    if !line.expected.is_empty() { <span class="soft">{ " " }{ line.expected.clone() }</span> }
                    if !line.customary.is_empty() { <span class="soft">{ " " }{ line.customary.clone() }</span> }
                    if !line.hint.is_empty() { <span class="soft hint">{ " " }{ line.hint.clone() }</span> }
                </div>
                if line.is_size {
                    <Typing class="size" value={line.finding.measured.clone()} label={format!("Measured: {}", line.label)} placeholder="Measured" bad={!line.fault.is_empty()} described={Some(read.clone())} onput={figure(TestAction::Measured)} />
                } else {
                    <span class="size none" aria-hidden="true"></span>
                }
                if line.takes_wanted {
                    <Typing class="wanted" value={line.finding.wanted.clone()} label={format!("Should be: {}", line.label)} placeholder="Should be" bad={!line.wanted_fault.is_empty()} onput={figure(TestAction::Wanted)} />
                } else {
                    <span class="wanted none" aria-hidden="true"></span>
                }
                <span class="marks">{ mark(Mark::Good, "in order") }{ mark(Mark::Bad, "not") }</span>
                <Typing class="remark" value={line.finding.note.clone()} label={format!("Note: {}", line.label)} placeholder="Note" onput={put(TestAction::Note)} />
            </div>
            <div id={read}>
                if !line.reading.is_empty() {
                    <p class="read">
                        { "Read as " }{ line.reading.clone() }
                        if !line.difference.is_empty() { { ": " }<b class="fig">{ line.difference.clone() }</b> }
                        if !line.explained.is_empty() { { ", " }{ line.explained.clone() } }
                    </p>
                }
                if !line.fault.is_empty() { <p class="fault">{ sentence(&line.fault, None) }</p> }
                if !line.wanted_fault.is_empty() { <p class="fault">{ sentence(&line.wanted_fault, None) }</p> }
            </div>
        </li>
    }
}
