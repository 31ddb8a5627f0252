//! The fields of a question: what is always asked, what is seldom asked, and what comes from the shop, the last two folded.

use crate::components::{FieldView, Fold, SheetRef};
use crate::state::{Act, Form};
use benchslate_core::sheet::{Preset, lowered};
use yew::prelude::*;

/// What the fields are made of.
pub struct Fields<'a> {
    /// The form.
    pub form: &'a Form,
    /// Fields that this shop typed in.
    pub by_shop: &'a [usize],
    /// The own key pad serves.
    pub own_pad: bool,
    /// The field that has the phone's keyboard all the same.
    pub plain_at: Option<usize>,
    /// Told of each change.
    pub act: &'a Callback<Act>,
    /// Which machine of the shop is meant, where there is a choice.
    pub machines: Option<Html>,
}

/// The fields.
pub fn fields(props: &Fields<'_>) -> Html {
    let form = props.form;
    let from_shop = |at: &usize| {
        let field = form.sheet.fields.get(*at);
        field.is_some_and(|f| matches!(f.preset, Preset::Shop(..)))
    };
    let is_seldom = |at: &usize| form.sheet.fields.get(*at).is_some_and(|f| f.is_seldom);
    let here =
        (0..form.sheet.fields.len()).filter(|&at| form.fields.get(at).is_some_and(|f| f.applies));
    let (shop, own): (Vec<usize>, Vec<usize>) = here.partition(from_shop);
    let (seldom, own): (Vec<usize>, Vec<usize>) = own.into_iter().partition(is_seldom);
    let faulty = |at: &usize| form.fields.get(*at).is_some_and(|f| f.fault.is_some());
    let typed = |at: &usize| {
        let text = form
            .typed
            .get(*at)
            .is_some_and(|t| !t.raw.trim().is_empty());
        // what this shop typed in opens no fold
        text && !props.by_shop.contains(at)
    };
    let used = seldom.iter().any(|at| typed(at) || faulty(at));
    html! {
        <>
            <>{ for own.iter().filter_map(|&at| one(props, at)) }</>
            if !seldom.is_empty() {
                <Fold key={form.loads} title={more_words(form, &seldom)} open={used} content={folded(props, &seldom)} />
            }
            if let Some(machines) = &props.machines { { machines.clone() } }
            if !shop.is_empty() {
                <Fold title="From the shop" open={shop.iter().any(faulty)} content={folded(props, &shop)} />
            }
        </>
    }
}

fn one(props: &Fields<'_>, at: usize) -> Option<Html> {
    let form = props.form;
    let (typed, outcome) = (form.typed.get(at)?.clone(), form.fields.get(at)?.clone());
    let key = outcome.id;
    Some(html! {
        <FieldView {key} sheet={SheetRef(form.sheet)} {at} {typed} unit={form.unit(at)} system={form.system} {outcome}
            own_pad={props.own_pad && props.plain_at != Some(at)} act={props.act.clone()} />
    })
}

fn folded(props: &Fields<'_>, list: &[usize]) -> Callback<(), Html> {
    let fields: Vec<Html> = list.iter().filter_map(|&at| one(props, at)).collect();
    Callback::from(move |()| html! { <>{ for fields.clone() }</> })
}

/// What the fold of seldom entries holds: the names of the first few.
fn more_words(form: &Form, seldom: &[usize]) -> AttrValue {
    let label = |&at: &usize| Some(lowered(form.sheet.fields.get(at)?.label));
    let mut names: Vec<String> = seldom.iter().filter_map(label).collect();
    if names.len() > 3 {
        names.truncate(3);
        names.push("\u{2026}".into());
    }
    format!("More: {}", names.join(", ")).into()
}
