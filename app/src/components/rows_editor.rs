//! A list of rows of typed cells: one input a cell, add and remove.

use super::Select;
use super::field::{SheetRef, input_mode};
use crate::state::{Act, rows};
use benchslate_core::sheet::{Field, FieldKind};
use std::rc::Rc;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// A list field.
pub struct Rows {
    /// The sheet.
    pub sheet: SheetRef,
    /// Which of its fields.
    pub at: usize,
    /// The list's text.
    pub raw: Rc<str>,
    /// Most rows.
    pub most: usize,
    /// Row and column at fault, from 1.
    pub wrong: Option<(usize, usize)>,
    /// The own key pad serves.
    pub own_pad: bool,
    /// Told of each change.
    pub act: Callback<Act>,
}

/// A change of the cells, with the text that was typed.
type Edit = Rc<dyn Fn(&mut Vec<Vec<String>>, String)>;

/// The list.
pub fn rows_editor(props: &Rows) -> Html {
    let Some(FieldKind::Rows { columns, .. }) =
        props.sheet.0.fields.get(props.at).map(|field| &field.kind)
    else {
        return Html::default();
    };
    let columns: &'static [Field] = columns;
    let cells = rows::split(&props.raw, columns.len());
    let change = |edit: Edit| {
        let (act, at, cells) = (props.act.clone(), props.at, cells.clone());
        Callback::from(move |text: String| {
            let mut next = cells.clone();
            edit(&mut next, text);
            act.emit(Act::Type(at, rows::join(&next).into()));
        })
    };
    let cell = |row: usize, column: usize, field: &'static Field, text: &str| {
        let put = change(Rc::new(move |rows, text| {
            if let Some(cell) = rows.get_mut(row).and_then(|cells| cells.get_mut(column)) {
                *cell = text;
            }
        }));
        let label = format!("{}, row {}", field.label, row + 1);
        let wrong = (props.wrong == Some((row + 1, column + 1))).then_some("bad");
        if let FieldKind::Choice(choices) = &field.kind {
            let chosen = if text.is_empty() {
                field.preset.text().unwrap_or_default()
            } else {
                text
            };
            let choices: Vec<_> = choices
                .iter()
                .map(|c| (AttrValue::Static(c.id), AttrValue::Static(c.label)))
                .collect();
            let onchoose = Callback::from(move |id: AttrValue| put.emit(id.to_string()));
            return html! { <Select class={classes!(wrong)} {label} {choices} chosen={chosen.to_owned()} {onchoose} /> };
        }
        let oninput = Callback::from(move |e: InputEvent| {
            if let Some(input) = e
                .target()
                .and_then(|t| t.dyn_into::<HtmlInputElement>().ok())
            {
                put.emit(input.value());
            }
        });
        html! {
            <input class={classes!(wrong)} type="text" value={text.to_owned()} aria-label={label} {oninput} inputmode={input_mode(props.own_pad)}
                data-pad={props.at.to_string()} autocomplete="off" autocapitalize="none" spellcheck="false" enterkeyhint="next"
                placeholder={if row == 0 { field.example } else { "" }} />
        }
    };
    let add = change(Rc::new(move |rows, _| {
        rows.push(vec![String::new(); columns.len()]);
    }));
    let count = cells.len();
    html! {
        <>
            <table class={classes!("cells", (columns.len() > 3).then_some("many"))}>
                <thead><tr><td class="n"></td>{ for columns.iter().map(|c| html! { <th scope="col">{ c.label }</th> }) }<td></td></tr></thead>
                <tbody>
                    { for cells.iter().enumerate().map(|(row, texts)| {
                        let out = change(Rc::new(move |rows, _| if row < rows.len() { rows.remove(row); }));
                        html! {
                            <tr key={row}>
                                <td class="n">{ row + 1 }</td>
                                { for columns.iter().zip(texts).enumerate().map(|(column, (field, text))| html! { <td data-label={field.label}>{ cell(row, column, field, text) }</td> }) }
                                <td>if count > 1 {
                                    <button type="button" class="tap" aria-label={format!("Remove row {}", row + 1)} onclick={Callback::from(move |_| out.emit(String::new()))}>{ "\u{2715}" }</button>
                                }</td>
                            </tr>
                        }
                    }) }
                </tbody>
            </table>
            if count < props.most {
                <button type="button" class="act" onclick={Callback::from(move |_| add.emit(String::new()))}>{ "Add a row" }</button>
            }
        </>
    }
}
