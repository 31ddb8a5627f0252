//! My shop: what is owned and preferred, as the form that the record declares; screen and units; export and import.

use crate::app::Records;
use crate::components::{Choice, FieldView, SheetRef, choice_row, record_notice};
use crate::document::{Do, read_file, write_file};
use crate::dom;
use crate::state::{Act, Form};
use crate::storage::{Browser, Store};
use benchslate_core::link::{Asked, Opened, of_shop, system_id, system_of};
use benchslate_core::record::{SHOP, Shop, ShopAction};
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

fn shop_of(form: &Form) -> Shop {
    let items = form
        .entry()
        .texts()
        .map(|(id, text)| (id.to_owned(), text.to_owned()))
        .collect();
    Shop {
        system: form.system,
        items,
    }
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
    let look = use_state_eq(|| {
        Browser
            .get("benchslate.look")
            .ok()
            .flatten()
            .unwrap_or_default()
    });
    {
        let records = records.clone();
        // the texts of the record stand as they are until something is typed, so that undo and a shop that was taken over stay whole
        let first = use_mut_ref(|| true);
        use_effect_with(form.clone(), move |form| {
            let opened = std::mem::replace(&mut *first.borrow_mut(), false);
            if let Some(records) = records.filter(|_| !opened) {
                records
                    .shop
                    .dispatch(Do::Act(ShopAction::Replace(shop_of(form))));
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
                        "Link copied. Who opens it sees what differs, and takes it over only on a tap.".to_owned()
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
        let (act, said) = (act.clone(), said.clone());
        Callback::from(move |e: Event| {
            let (act, said) = (act.clone(), said.clone());
            if let Some(input) = e
                .target()
                .and_then(|t| t.dyn_into::<HtmlInputElement>().ok())
            {
                wasm_bindgen_futures::spawn_local(async move {
                    if let Some(text) = dom::file_text(input).await {
                        match read_file::<Shop>(&text) {
                            Ok(other) => {
                                act.emit(Act::System(other.system));
                                act.emit(Act::Fill(other.items));
                                said.set("This shop now stands here.".to_owned());
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
    html! {
        <main id="main" class="narrow" tabindex="-1">
            <h1>{ "My shop" }</h1>
            { record_notice(&records.shop) }
            <p class="soft">{ "What stands empty is taken from a general shop. Links carry what differs, so that an answer reads alike everywhere." }</p>
            { choice_row(&Choice { id: "shop-units".into(), label: "Results in".into(), choices: pairs(&[("in", "inch"), ("mm", "millimetre")]), chosen: system_id(form.system).into(), onchoose: units, as_list: false }) }
            { for form.fields.iter().zip(&form.typed).enumerate().filter(|(_, (outcome, _))| outcome.applies).map(|(at, (outcome, typed))| html! {
                <FieldView key={outcome.id} sheet={SheetRef(&SHOP)} {at} typed={typed.clone()} unit={form.unit(at)} system={form.system} outcome={outcome.clone()} own_pad={false} act={act.clone()} />
            }) }
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
