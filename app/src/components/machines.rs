//! Several machines of one kind: which one a question is figured with, and on the page of the shop their names, copies and
//! going. While there is one of a kind nothing of this is seen but the button for another.

use super::{Choice, Typing, choice_row};
use crate::document::{Do, Document};
use crate::state::{Act, Form};
use benchslate_core::record::{MOST_MACHINES, MachineKind, Shop, ShopAction};
use benchslate_core::sheet::lowered;
use yew::prelude::*;

/// The kinds of which there are several, among those that a form's sheet reads, each with the machine that the entry
/// agrees with.
pub fn machines_of(form: &Form, shop: &Shop) -> Vec<(MachineKind, Option<usize>)> {
    let several = Shop::kinds(form.sheet).filter(|kind| shop.count(*kind) > 1);
    let stands = |kind| (kind, shop.stands(form.sheet, &form.entry(), kind));
    several.map(stands).collect()
}

/// A choice for each kind of machine of which there are several and whose figures count here.
pub fn machine_choices(
    form: &Form,
    machines: &[(MachineKind, Option<usize>)],
    shop: &UseReducerHandle<Document<Shop>>,
    act: &Callback<Act>,
) -> Html {
    let counts = |kind: MachineKind| {
        let of = |at: usize| form.sheet.fields.get(at)?.preset.item();
        let mut fields = form.fields.iter().enumerate();
        fields.any(|(at, now)| now.applies && of(at).and_then(MachineKind::of) == Some(kind))
    };
    let one = |&(kind, stands): &(MachineKind, Option<usize>)| {
        let (handle, act, sheet, entry) = (shop.clone(), act.clone(), form.sheet, form.entry());
        let onuse = Callback::from(move |at: usize| {
            let from = handle.undo.now.standing(sheet, &entry);
            let to = from.using(kind, at);
            handle.dispatch(Do::Act(ShopAction::Use(kind, at)));
            act.emit(Act::Shop(from, to));
        });
        pick(&shop.undo.now, kind, kind.label().into(), stands, onuse)
    };
    machines
        .iter()
        .filter(|(kind, _)| counts(*kind))
        .map(one)
        .collect()
}

fn pick(
    shop: &Shop,
    kind: MachineKind,
    label: AttrValue,
    chosen: Option<usize>,
    onuse: Callback<usize>,
) -> Html {
    let id = |at: usize| AttrValue::from(at.to_string());
    choice_row(&Choice {
        id: format!("use-{}", kind.id()).into(),
        label,
        choices: (0..shop.count(kind))
            .map(|at| (id(at), shop.name(kind, at).into()))
            .collect(),
        chosen: chosen.map(id).unwrap_or_default(),
        onchoose: Callback::from(move |id: AttrValue| {
            if let Ok(at) = id.parse() {
                onuse.emit(at);
            }
        }),
        as_list: false,
    })
}

/// The machines of a kind on the page of the shop.
pub struct MachinePart<'a> {
    /// The shop.
    pub shop: &'a Shop,
    /// Which kind.
    pub kind: MachineKind,
    /// The fields of the machine in use.
    pub fields: Html,
    /// What is done to the shop, after which the form shows the machine in use.
    pub onact: Callback<ShopAction>,
    /// The name of the machine, as it is typed; it changes no field.
    pub onname: Callback<String>,
}

/// Which of them is shown and in use, its name, and what may be done with it.
pub fn machine_part(part: &MachinePart) -> Html {
    let fields = part.fields.clone();
    let (shop, kind) = (part.shop, part.kind);
    let (count, now) = (shop.count(kind), shop.in_use(kind));
    let word = lowered(kind.label());
    let button = |action: ShopAction, words: String| {
        let onclick = part.onact.reform(move |_: MouseEvent| action.clone());
        html! { <button type="button" class="act plain" {onclick}>{ words }</button> }
    };
    let name = shop
        .of_kind(kind)
        .nth(now)
        .map_or("", |machine| machine.name.as_str());
    let more = count < MOST_MACHINES;
    let buttons = html! {
        <p class="row noprint">
            if more { { button(ShopAction::Add(kind), format!("Another {word}")) } }
            if more && count > 1 { { button(ShopAction::Copy(kind), format!("Copy this {word}")) } }
            if count > 1 { { button(ShopAction::Remove(kind), format!("Remove this {word}")) } }
        </p>
    };
    if count == 1 {
        return html! { <>{ fields }{ buttons }</> };
    }
    html! {
        <>
                { pick(shop, kind, "In use".into(), Some(now), part.onact.reform(move |at| ShopAction::Use(kind, at))) }
                <div class="field">
                    <label for={format!("name-{}", kind.id())}>{ format!("Name of this {word}") }</label>
                    <div class="entry">
                        <Typing key={now} id={AttrValue::from(format!("name-{}", kind.id()))} value={name.to_owned()} label={format!("Name of this {word}")}
                            placeholder={shop.name(kind, now)} onput={part.onname.clone()} />
                    </div>
                </div>
            { buttons }
            { fields }
        </>
    }
}
