//! The axes of a proving record: their names, their two ways, their part of the plate's feeds.

use super::Typing;
use benchslate_core::record::proving::{Axis, AxisPart, MOST_AXES, TestAction};
use yew::prelude::*;

/// The list; `act` is told of each change.
pub fn prove_axes(axes: &[Axis], act: &Callback<TestAction>) -> Html {
    let row = |at: usize, axis: &Axis| {
        let cell = |part: AxisPart, value: &str, label: &str| {
            let act = act.clone();
            let onput =
                Callback::from(move |text: String| act.emit(TestAction::Axis(at, part, text)));
            html! { <td><Typing value={value.to_owned()} label={format!("{label}, axis {}", at + 1)} {onput} /></td> }
        };
        let [one, other] = &axis.ways;
        let out = {
            let act = act.clone();
            Callback::from(move |_: MouseEvent| act.emit(TestAction::RemoveAxis(at)))
        };
        html! {
            <tr key={axis.key}>
                { cell(AxisPart::Name, &axis.name, "Name") }
                { cell(AxisPart::One, one, "One way") }
                { cell(AxisPart::Other, other, "Other way") }
                { cell(AxisPart::Share, &axis.share, "Part of the plate's feeds") }
                <td><button type="button" class="tap" aria-label={format!("Remove {}", axis.name)} onclick={out}>{ "\u{2715}" }</button></td>
            </tr>
        }
    };
    let add = {
        let act = act.clone();
        Callback::from(move |_: MouseEvent| act.emit(TestAction::AddAxis))
    };
    html! {
        <>
            <table class="cells">
                <thead><tr><th scope="col">{ "Axis" }</th><th scope="col">{ "One way" }</th><th scope="col">{ "Other way" }</th><th scope="col">{ "Part of plate" }</th><td></td></tr></thead>
                <tbody>{ for axes.iter().enumerate().map(|(at, axis)| row(at, axis)) }</tbody>
            </table>
            <p class="soft">{ "Part of plate: 1 where this axis feeds what the plate says; 1/2 where it feeds half, as the vertical feed of many knee mills does. It holds for the rapid too; a figure in \u{201c}Should be\u{201d} comes before it." }</p>
            if axes.len() < MOST_AXES { <button type="button" class="act" onclick={add}>{ "Add an axis" }</button> }
        </>
    }
}
