//! A ranked table: best first, what is owned and what is taken marked by a bar and by words.

use crate::app::Records;
use crate::links;
use crate::shared::Shared;
use crate::state::Act;
use benchslate_core::quantity::System;
use benchslate_core::record::Shop;
use benchslate_core::sheet::{Entry, Row, Table, Value};
use benchslate_core::sheets;
use yew::prelude::*;

/// A table.
#[derive(Properties, PartialEq)]
pub struct TableProps {
    /// The table.
    pub table: Shared<Table>,
    /// The system in use.
    pub system: System,
    /// The sheet that it stands on.
    pub sheet: &'static str,
    /// Told when a row of this sheet is tapped.
    pub act: Callback<Act>,
}

/// The table.
#[component]
pub fn TableView(props: &TableProps) -> Html {
    let table = &props.table;
    let shop = use_context::<Records>()
        .map(|records| records.shop.undo.now.clone())
        .unwrap_or_default();
    if table.rows.is_empty() {
        return html! { if !table.note.is_empty() { <p class="soft">{ table.note.to_string() }</p> } };
    }
    // where all are owned, as the steps of the shop's own machine are, the mark would tell nothing
    let marks_owned = table.rows.iter().any(|row| !row.owned);
    let narrow = table.columns.len() > 4;
    html! {
        <div class="scroll" tabindex="0" role="region" aria-label={table.title.to_string()}>
            <table class={classes!("ranked", narrow.then_some("narrow"))}>
                <caption>{ table.title.to_string() }</caption>
                <thead><tr>{ for table.columns.iter().enumerate().map(|(at, column)| html! {
                    <th scope="col" class={head_class(props, at)}>{ head(props, at, column) }</th>
                }) }</tr></thead>
                <tbody>{ for table.rows.iter().map(|row| line(props, &shop, row, marks_owned)) }</tbody>
            </table>
            if !table.note.is_empty() { <p class="soft">{ table.note.to_string() }</p> }
        </div>
    }
}

fn head_class(props: &TableProps, at: usize) -> Option<&'static str> {
    let words = props
        .table
        .rows
        .iter()
        .filter_map(|row| row.cells.get(at))
        .all(|cell| matches!(cell, Value::Words(_)));
    match (at, words) {
        (0, _) => Some("first"),
        (_, true) => Some("text"),
        _ => None,
    }
}

/// A column's head with its unit, where all its cells have the same.
fn head(props: &TableProps, at: usize, column: &str) -> String {
    match unit_of(props, at) {
        Some(unit) if !unit.is_empty() && unit != "1:" => format!("{column}, {unit}"),
        _ => column.to_owned(),
    }
}

fn unit_of(props: &TableProps, at: usize) -> Option<&'static str> {
    let mut units = props
        .table
        .rows
        .iter()
        .filter_map(|row| row.cells.get(at)?.unit(props.system))
        .map(|unit| unit.symbol);
    let first = units.next()?;
    units.all(|unit| unit == first).then_some(first)
}

fn line(props: &TableProps, shop: &Shop, row: &Row, marks_owned: bool) -> Html {
    html! {
        <tr class={row.chosen.then_some("pick")}>
            { for row.cells.iter().enumerate().map(|(at, cell)| {
                let text = match unit_of(props, at) {
                    Some(unit) if unit != "1:" => cell.text(props.system),
                    _ => cell.text_with_unit(props.system),
                };
                if at == 0 {
                    html! {
                        <th scope="row" class="first">
                            { opener(props, shop, row, &text) }
                            if row.owned && marks_owned { <span class="owned">{ "in your set" }</span> }
                            if row.chosen { <span class="out">{ " taken" }</span> }
                        </th>
                    }
                } else {
                    html! { <td class={matches!(cell, Value::Words(_)).then_some("text")}>{ tapped(props, row, at, text) }</td> }
                }
            }) }
        </tr>
    }
}

/// A cell that changes the entry when tapped: a button whose name says row, column and state.
fn tapped(props: &TableProps, row: &Row, at: usize, text: String) -> Html {
    let Some(tap) = row.taps.get(at).and_then(Option::as_ref) else {
        return html! { { text } };
    };
    let (act, pairs) = (props.act.clone(), tap.clone());
    let onclick = Callback::from(move |_| {
        act.emit(Act::Set(
            pairs
                .iter()
                .map(|(id, text)| ((*id).to_owned(), text.clone()))
                .collect(),
        ));
    });
    let place = |name: Option<String>| name.unwrap_or_default();
    let label = format!(
        "{}, {}: {text}. Tap to change.",
        place(
            row.cells
                .first()
                .map(|cell| cell.text_with_unit(props.system))
        ),
        place(props.table.columns.get(at).map(ToString::to_string)),
    );
    html! { <button type="button" class="tap" aria-label={label} {onclick}>{ text }</button> }
}

/// The first cell: a way to what the row opens, where it opens something.
fn opener(props: &TableProps, shop: &Shop, row: &Row, text: &str) -> Html {
    let Some((id, pairs)) = &row.opens else {
        return html! { { text } };
    };
    if *id == props.sheet {
        let (act, pairs) = (props.act.clone(), pairs.clone());
        let onclick = Callback::from(move |_| {
            act.emit(Act::Set(
                pairs
                    .iter()
                    .map(|(id, text)| ((*id).to_owned(), text.clone()))
                    .collect(),
            ));
        });
        return html! { <button type="button" class="tap" {onclick}>{ text }</button> };
    }
    let link = sheets::by_id(id).map(|sheet| {
        let mut entry = Entry::default().in_system(props.system);
        for (id, text) in pairs {
            entry.set(id, text);
        }
        links::found(sheet, shop, &entry)
    });
    match link {
        Some(href) => html! { <a {href}>{ text }</a> },
        None => html! { { text } },
    }
}
