//! My shop: what is owned and preferred, as the form that the record declares; screen and units; export and import.

use crate::app::Records;
use crate::components::{
    Choice, FieldView, MachinePart, SheetRef, choice_row, machine_part, record_notice,
};
use crate::document::{Do, read_file, write_file};
use crate::dom;
use crate::state::{Act, Form};
use crate::storage::{Browser, Store};
use benchslate_core::link::{Asked, Opened, of_shop, system_id, system_of};
use benchslate_core::record::{MachineKind, Record, SHOP, Shop, ShopAction};
use benchslate_core::sheet::pinned;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

fn form_of(shop: &Shop) -> Form {
    Form::open(Opened {
        sheet: &SHOP,
        entry: shop.entry(),
        asked: Asked::default(),
        notes: Vec::new(),
    })
}

/// What the form says otherwise than the record, item by item: what another tab wrote of the others stays. A figure goes in
/// with the unit that it is read in, before the results are turned to another system.
fn changes(shop: &Shop, form: &Form) -> Vec<ShopAction> {
    let (kept, entry) = (shop.entry(), form.entry());
    let mut actions = Vec::new();
    if shop.system != form.system {
        actions.push(ShopAction::System(form.system));
    }
    for field in SHOP.fields {
        let text = entry.get(field.id).unwrap_or_default();
        let text = pinned(field, text, form.system);
        if kept.get(field.id).unwrap_or_default() != text {
            actions.push(ShopAction::Item(field.id.to_owned(), text));
        }
    }
    actions
}

/// The page: one form for as long as nothing comes from elsewhere.
#[component]
pub fn ShopPage() -> Html {
    use_effect_with((), |()| dom::title("My shop \u{b7} Benchslate"));
    match use_context::<Records>() {
        Some(records) => html! { <ShopForm key={records.shop.loads} /> },
        None => Html::default(),
    }
}

#[component]
fn ShopForm() -> Html {
    let records = use_context::<Records>();
    let shop = records
        .as_ref()
        .map(|r| r.shop.undo.now.clone())
        .unwrap_or_default();
    let form = use_reducer_eq(|| form_of(&shop));
    let said = use_state_eq(String::new);
    let gone = use_state_eq(|| None::<(MachineKind, String)>);
    let look = use_state_eq(|| {
        Browser
            .get("benchslate.look")
            .ok()
            .flatten()
            .unwrap_or_default()
    });
    // the texts of the record stand as they are until something is typed, so that undo and a shop that was taken over stay whole
    let shown = use_mut_ref(|| true);
    {
        let records = records.clone();
        let shown = shown.clone();
        use_effect_with(form.clone(), move |form| {
            let shown = std::mem::replace(&mut *shown.borrow_mut(), false);
            if let Some(records) = records.filter(|_| !shown) {
                for action in changes(&records.shop.undo.now, form) {
                    records.shop.dispatch(Do::Act(action));
                }
            }
        });
    }
    let act = use_callback(form.dispatcher(), |act: Act, dispatcher| {
        dispatcher.dispatch(act);
    });
    let Some(records) = records else {
        return Html::default();
    };
    let units = {
        let act = act.clone();
        Callback::from(move |id: AttrValue| {
            if let Some(system) = system_of(&id) {
                act.emit(Act::System(system));
            }
        })
    };
    let set_look = {
        let look = look.clone();
        Callback::from(move |id: AttrValue| {
            let _ = Browser.set("benchslate.look", &id);
            dom::set_mark("theme", (!id.is_empty()).then_some(id.as_str()));
            look.set(id.to_string());
        })
    };
    // acts on the record first, then shows what stands there: no text goes back
    let onact = {
        let (shop, act, shown, gone) = (records.shop.clone(), act.clone(), shown, gone.clone());
        Callback::from(move |action: ShopAction| {
            let (now, next) = (&shop.undo.now, shop.undo.now.after(&action));
            gone.set(match action {
                ShopAction::Remove(kind) => Some((kind, now.name(kind, now.in_use(kind)))),
                _ => None,
            });
            shop.dispatch(Do::Act(action));
            *shown.borrow_mut() = true;
            act.emit(Act::Show(next.entry()));
        })
    };
    let undo = {
        let shop = records.shop.clone();
        Callback::from(move |_| shop.dispatch(Do::Undo))
    };
    let save = {
        let shop = records.shop.clone();
        Callback::from(move |_| {
            dom::download("benchslate-shop.json", &write_file(&shop.undo.now));
        })
    };
    let link = {
        let (shop, said) = (records.shop.clone(), said.clone());
        Callback::from(move |_| {
            let said = said.clone();
            match of_shop(&shop.undo.now) {
                Some(link) => wasm_bindgen_futures::spawn_local(async move {
                    let link = format!("{}{link}", dom::base());
                    said.set(if dom::copy(link.clone()).await {
                        "Link copied. Whoever opens it sees what differs, and uses it only on a tap.".to_owned()
                    } else {
                        format!("The browser did not allow copying. The link: {link}")
                    });
                }),
                None => said
                    .set("This shop is too long for a link. Save it as a file instead.".to_owned()),
            }
        })
    };
    let open = {
        let (onact, said) = (onact.clone(), said.clone());
        Callback::from(move |e: Event| {
            let (onact, said) = (onact.clone(), said.clone());
            if let Some(input) = e
                .target()
                .and_then(|t| t.dyn_into::<HtmlInputElement>().ok())
            {
                wasm_bindgen_futures::spawn_local(async move {
                    if let Some(text) = dom::file_text(input).await {
                        match read_file::<Shop>(&text, None) {
                            Ok(other) => {
                                onact.emit(ShopAction::Replace(other));
                                said.set("This shop is now in use.".to_owned());
                            }
                            Err(fault) => said.set(super::question::said(&fault.text())),
                        }
                    }
                });
            }
        })
    };
    let pairs = |list: &[(&'static str, &'static str)]| {
        list.iter()
            .map(|&(id, words)| (AttrValue::Static(id), AttrValue::Static(words)))
            .collect::<Vec<_>>()
    };
    let fields = |kind: Option<MachineKind>| -> Html {
        let of = |at: usize| SHOP.fields.get(at)?.preset.item().and_then(MachineKind::of);
        let all = form.fields.iter().zip(&form.typed).enumerate();
        all.filter(|(at, (outcome, _))| outcome.applies && of(*at) == kind)
            .map(|(at, (outcome, typed))| html! {
                <FieldView key={outcome.id} sheet={SheetRef(&SHOP)} {at} typed={typed.clone()} unit={form.unit(at)} system={form.system} outcome={outcome.clone()} own_pad={false} act={act.clone()} />
            })
            .collect()
    };
    let onname = |kind: MachineKind| {
        let shop = records.shop.clone();
        Callback::from(move |name: String| shop.dispatch(Do::Act(ShopAction::Name(kind, name))))
    };
    html! {
        <main id="main" class="narrow" tabindex="-1">
            <h1>{ "My shop" }</h1>
            { record_notice(&records.shop) }
            <p class="soft">{ "Anything left empty uses typical values. Links carry what differs, so that an answer reads the same everywhere." }</p>
            { choice_row(&Choice { id: "shop-units".into(), label: "Results in".into(), choices: pairs(&[("in", "inch"), ("mm", "millimeter")]), chosen: system_id(form.system).into(), onchoose: units, as_list: false }) }
            { for MachineKind::ALL.into_iter().map(|kind| html! {
                <section aria-labelledby={format!("of-{}", kind.id())}>
                    <h2 id={format!("of-{}", kind.id())}>{ kind.label() }</h2>
                    if let Some((_, name)) = gone.as_ref().filter(|(of, _)| *of == kind) {
                        <div class="note row" role="status"><span>{ format!("{name} is removed.") }</span><button type="button" class="act" onclick={undo.clone()}>{ "Undo" }</button></div>
                    }
                    { machine_part(&MachinePart { shop: &records.shop.undo.now, kind, fields: fields(Some(kind)), onact: onact.clone(), onname: onname(kind) }) }
                </section>
            }) }
            <h2>{ "Bench" }</h2>
            { fields(None) }
            <h2>{ "Screen" }</h2>
            { choice_row(&Choice { id: "look".into(), label: "Light or dark".into(), choices: pairs(&[("", "as the device"), ("light", "light"), ("dark", "dark")]), chosen: (*look).clone().into(), onchoose: set_look, as_list: false }) }
            <p class="row noprint">
                <button type="button" class="act" onclick={undo} disabled={!records.shop.undo.can_undo()}>{ "Undo" }</button>
                <button type="button" class="act" onclick={link}>{ "Link" }</button>
                <button type="button" class="act" onclick={save}>{ "Save as a file" }</button>
                <label class="act file">{ "Open a file" }<input class="out" type="file" accept="application/json,.json" onchange={open} /></label>
            </p>
            <p class="soft" role="status">{ (*said).clone() }</p>
            <p class="noprint"><a href="#/proving">{ "Prove the machine against this plate" }</a></p>
        </main>
    }
}
