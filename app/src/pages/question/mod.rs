//! A question and its answer: fields, key pad, live answer, bottom actions. All of it derived from the sheet.

mod dock;
mod fields;

use super::paper::Paper;
use crate::app::{Records, close_panel, open_panel, shown_address, step_address, write_address};
use crate::components::{
    AnswerView, Bar, CallView, Live, PadMode, Panel, SharePanel, bar, machine_choices, machines_of,
    record_notice,
};
use crate::document::Do;
use crate::hooks::{use_saving, use_window_event};
use crate::state::{Act, Draft, Form};
use crate::{dom, storage};
use benchslate_core::record::KeptAction;
use dock::{dock, settings};
use fields::{Fields, fields};
use std::rc::Rc;
use wasm_bindgen::JsCast;
use yew::prelude::*;

impl Reducible for Form {
    type Action = Act;
    fn reduce(self: Rc<Self>, act: Act) -> Rc<Self> {
        Rc::new(self.after(act))
    }
}

/// A question.
#[derive(Properties, PartialEq)]
pub struct QuestionProps {
    /// The form as the link opened it.
    pub start: Form,
}

/// A clause as a sentence.
pub fn said(text: &str) -> String {
    crate::components::sentence(text, None)
}

/// The page.
#[component]
pub fn Question(props: &QuestionProps) -> Html {
    let form = use_reducer_eq(|| props.start.clone());
    let records = use_context::<Records>();
    let pad = use_state_eq(PadMode::find);
    let focused = use_state_eq(|| None::<usize>);
    let plain_at = use_state_eq(|| None::<usize>);
    let panel = use_state_eq(|| Panel::of(&dom::view()));
    let call = use_state_eq(|| dom::view() == "call");
    let printing = use_state_eq(|| false);
    let address = use_saving();
    let visit = *use_memo((), |()| crate::app::visit());

    let act = use_callback(form.dispatcher(), |act: Act, dispatcher| {
        dispatcher.dispatch(act);
    });
    {
        let (now, address) = (form.clone(), address.clone());
        use_effect_with(form.clone(), move |_| {
            // a page that is being left writes into no other page's address
            if visit != crate::app::visit() {
                return;
            }
            // at once for a reload of this tab; the address, which browsers let change only so often, when the keys rest
            storage::put_draft(&Draft::text(&now, &[&shown_address()]));
            address.put(200, move || {
                if visit != crate::app::visit() {
                    return;
                }
                if let Some(fragment) = now.address() {
                    let before = shown_address();
                    write_address(&fragment);
                    storage::put_draft(&Draft::text(&now, &[&before, &fragment]));
                }
            });
        });
    }
    let print = |on: bool| {
        let printing = printing.clone();
        Callback::from(move |_: Event| printing.set(on))
    };
    use_window_event("beforeprint", print(true));
    use_window_event("afterprint", print(false));
    {
        let (call, panel) = (call.clone(), panel.clone());
        use_window_event(
            "popstate",
            Callback::from(move |_| {
                let view = dom::view();
                call.set(view == "call");
                panel.set(Panel::of(&view));
            }),
        );
    }
    use_effect_with(form.sheet.title, |title| {
        dom::title(&format!("{title} \u{b7} Benchslate"));
    });
    let padded = *pad == PadMode::Own && focused.is_some() && *focused != *plain_at && !*call;
    use_effect_with(padded, |on| {
        dom::root_class("padded", *on);
        if *on {
            dom::show_focused();
        }
        || dom::root_class("padded", false)
    });

    let answer = form.answer();
    if *call && answer.is_complete() {
        let entry = form.entry_words();
        return html! { <CallView lines={answer.lines.clone()} title={form.sheet.title} {entry} system={form.system} /> };
    }

    let onfocusin = {
        let (focused, plain_at) = (focused.clone(), plain_at.clone());
        Callback::from(move |e: FocusEvent| {
            let at = e
                .target()
                .and_then(|t| t.dyn_into::<web_sys::HtmlElement>().ok())
                .and_then(|t| t.get_attribute("data-pad"));
            let at = at.map(|at| at.parse().unwrap_or(usize::MAX));
            focused.set(at);
            if at != *plain_at {
                plain_at.set(None);
            }
            // the pad covers the lower half: the browser alone would leave a cell behind it
            if padded {
                dom::show_focused();
            }
        })
    };
    let onfocusout = {
        let focused = focused.clone();
        Callback::from(move |_: FocusEvent| focused.set(None))
    };
    let onkeydown = Callback::from(|e: KeyboardEvent| match e.key().as_str() {
        "Enter" if dom::focused_input().is_some() => {
            e.prevent_default();
            dom::focus_next_input();
        }
        "Escape" => dom::blur(),
        _ => {}
    });
    // letters for one field alone; the next one has the key pad again
    let letters = {
        let (plain_at, focused) = (plain_at.clone(), focused.clone());
        Callback::from(move |_: MouseEvent| {
            plain_at.set(*focused);
            dom::refocus();
        })
    };
    let set_pad = {
        let pad = pad.clone();
        Callback::from(move |mode: PadMode| {
            mode.remember();
            pad.set(mode);
            dom::refocus();
        })
    };
    let applying: Vec<bool> = form.fields.iter().map(|field| field.applies).collect();
    let shop_differs = use_memo((form.loads, applying), |_| {
        // the owner who changed a figure by hand is no sender
        dom::opened_from() != "own"
            && records
                .as_ref()
                .is_some_and(|r| form.other_shop(&r.shop.undo.now))
    });

    // what this shop typed in opens no fold
    let by_shop = use_memo(form.loads, |_| {
        records
            .as_ref()
            .map_or_else(Vec::new, |r| form.by_shop(&r.shop.undo.now))
    });

    let machines = {
        let shop = records.as_ref().map(|r| r.shop.undo.now.clone());
        use_memo((form.loads, shop), |(_, shop)| {
            shop.as_ref()
                .map_or_else(Vec::new, |shop| machines_of(&form, shop))
        })
    };

    let onlink = {
        let panel = panel.clone();
        Callback::from(move |_| {
            if *panel == Panel::Link {
                close_panel();
                panel.set(Panel::None);
            } else {
                open_panel("link");
                panel.set(Panel::Link);
            }
        })
    };
    let close = {
        let panel = panel.clone();
        Callback::from(move |_| {
            close_panel();
            panel.set(Panel::None);
        })
    };
    let onkeep = {
        let (panel, records, form) = (panel.clone(), records.clone(), form.clone());
        Callback::from(move |_| {
            let item = form.kept(dom::today());
            if let (Some(records), Some(item)) = (&records, item) {
                records.kept.dispatch(Do::Act(KeptAction::Keep(item)));
            }
            if *panel == Panel::None {
                open_panel("kept");
            }
            panel.set(Panel::Kept);
        })
    };
    let oncall = {
        let (call, address) = (call.clone(), address.clone());
        Callback::from(move |_| {
            address.flush();
            dom::push_view("call");
            call.set(true);
        })
    };
    let onprint = {
        let printing = printing.clone();
        Callback::from(move |_| {
            printing.set(true);
            dom::soon(dom::print);
        })
    };
    // a change of the whole is a step of its own, so that Back leads to what stood there before
    let change = {
        let (form, act, address) = (form.clone(), act.clone(), address.clone());
        Callback::from(move |acts: Vec<Act>| {
            address.flush();
            let next = acts
                .iter()
                .cloned()
                .fold((*form).clone(), |form, act| form.after(act));
            if let Some(fragment) = next.address().filter(|to| *to != shown_address()) {
                step_address(&fragment);
            }
            for one in acts {
                act.emit(one);
            }
        })
    };
    let clear = {
        let (change, records) = (change.clone(), records.clone());
        Callback::from(move |_: MouseEvent| {
            let mine = records.as_ref().map(mine);
            change.emit(std::iter::once(Act::Clear).chain(mine).collect());
        })
    };
    let unclear = act.reform(|_: MouseEvent| Act::Unclear);
    let use_mine = {
        let (change, records) = (change.clone(), records.clone());
        Callback::from(move |_: MouseEvent| {
            change.emit(records.as_ref().map(mine).into_iter().collect());
        })
    };
    let own_pad = *pad == PadMode::Own;
    let rows: usize = form.tables.iter().map(|table| table.rows.len()).sum();
    let told = rows + answer.lines.len() + answer.steps.len() + answer.cautions.len();
    let dense = match told {
        0..=16 => "",
        17..=23 => "dense",
        _ => "dense denser",
    };
    let spoken = form.spoken_result();
    html! {
        <>
            <main id="main" tabindex="-1" class={dense} {onkeydown}>
                <h1>{ form.sheet.title }</h1>
                <>{ for form.notes.iter().map(|note| html! { <p class="note">{ said(&note.text()) }</p> }) }</>
                if *shop_differs {
                    <div class="note row"><span>{ shop_words(&form) }</span>
                        <button type="button" class="act" onclick={use_mine}>{ "Use my shop" }</button>
                    </div>
                }
                if form.address().is_none() {
                    <p class="note">{ "This entry is too long for the address and for a link. It stays here through a reload, but not when you leave the page." }</p>
                }
                <div class="sheet">
                    <section class="entries" aria-label="Entry" {onfocusin} {onfocusout}>
                        { fields(&Fields { form: &form, by_shop: &by_shop, own_pad, plain_at: *plain_at, act: &act, machines: records.as_ref().map(|r| machine_choices(&form, &machines, &r.shop, &act)) }) }
                        { settings(&form, *pad, &set_pad, &act, clear, unclear) }
                        if own_pad { { dock(&form, focused.filter(|at| Some(*at) != *plain_at), letters) } }
                    </section>
                    <AnswerView form={(*form).clone()} printing={*printing} act={act.clone()} />
                </div>
                <Live text={spoken} />
                <Paper link={form.link().map(AttrValue::from)} printing={*printing} />
            </main>
            if *panel == Panel::Link {
                <SharePanel link={form.link().map(|link| AttrValue::from(format!("{}{link}", dom::base())))} title={form.sheet.title} text={text_with_link(&form)} kept={form.kept(dom::today())} onclose={close.clone()} />
            }
            if *panel == Panel::Kept {
                { saved_panel(&form, records.as_ref(), close) }
            }
            { bar(&Bar { panel: *panel, onlink, onprint, onkeep, oncall, has_result: answer.is_complete() }) }
        </>
    }
}

/// The answer as text, with its link below.
fn text_with_link(form: &Form) -> String {
    let link = form.link();
    let link = link.map_or_else(String::new, |link| format!("{}{link}\n", dom::base()));
    format!("{}{link}", form.text())
}

/// What was just saved, or why it was not.
fn saved_panel(form: &Form, records: Option<&Records>, close: Callback<MouseEvent>) -> Html {
    let words = if form.whole_link().is_none() {
        "Not saved: this entry is too long. "
    } else if form.answer().is_complete() {
        "Saved. "
    } else {
        "Saved, with no answer yet. "
    };
    html! {
        <section class="panel" role="status">
            <div class="head"><p>{ words }<a href="#/kept">{ "To the saved list" }</a></p><button type="button" class="act plain" onclick={close}>{ "Close" }</button></div>
            if let Some(records) = records { { record_notice(&records.kept) } }
        </section>
    }
}

/// With whose shop an answer was figured, where it is not mine.
fn shop_words(form: &Form) -> &'static str {
    if dom::opened_from() == "saved" {
        "Figured with the shop as it was when this was saved."
    } else if form.carries_shop() {
        "Figured with the shop in the link."
    } else if form.presets_count() {
        "Figured with typical values, not with your shop."
    } else {
        "Your shop can fill in part of this."
    }
}

/// This shop's own texts again.
fn mine(records: &Records) -> Act {
    let shop = records.shop.undo.now.clone();
    Act::Shop(shop.clone(), shop)
}
