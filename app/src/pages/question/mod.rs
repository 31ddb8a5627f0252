//! A question and its answer: fields, key pad, live answer, bottom actions. All of it derived from the sheet.

mod dock;
mod fields;

use super::paper::Paper;
use crate::app::{Records, write_address};
use crate::components::{
    AnswerView, Bar, CallView, Live, PadMode, Panel, SharePanel, bar, machine_choices, machines_of,
    record_notice,
};
use crate::document::Do;
use crate::dom;
use crate::hooks::{use_saving, use_window_event};
use crate::state::{Act, Form};
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
    let panel = use_state_eq(|| Panel::None);
    let call = use_state_eq(|| dom::view().as_deref() == Some("call"));
    let printing = use_state_eq(|| false);
    let address = use_saving();

    let act = use_callback(form.dispatcher(), |act: Act, dispatcher| {
        dispatcher.dispatch(act);
    });
    {
        let (now, address) = (form.clone(), address.clone());
        use_effect_with(form.clone(), move |_| {
            address.put(200, move || {
                if let Some(fragment) = now.address() {
                    write_address(&fragment);
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
        let call = call.clone();
        use_window_event(
            "popstate",
            Callback::from(move |_| call.set(dom::view().as_deref() == Some("call"))),
        );
    }
    use_effect_with(form.sheet.title, |title| {
        dom::title(&format!("{title} \u{b7} Benchslate"));
    });
    let padded = *pad == PadMode::Own && focused.is_some() && !*call;
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
        let focused = focused.clone();
        Callback::from(move |e: FocusEvent| {
            let at = e
                .target()
                .and_then(|t| t.dyn_into::<web_sys::HtmlElement>().ok())
                .and_then(|t| t.get_attribute("data-pad"));
            focused.set(at.map(|at| at.parse().unwrap_or(usize::MAX)));
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
    let set_pad = {
        let pad = pad.clone();
        Callback::from(move |mode: PadMode| {
            mode.remember();
            pad.set(mode);
            dom::refocus();
        })
    };
    let shop_differs = use_memo(form.loads, |_| {
        records
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
            panel.set(if *panel == Panel::Link {
                Panel::None
            } else {
                Panel::Link
            });
        })
    };
    let close = {
        let panel = panel.clone();
        Callback::from(move |_| panel.set(Panel::None))
    };
    let onkeep = {
        let (panel, records, form) = (panel.clone(), records.clone(), form.clone());
        Callback::from(move |_| {
            if let (Some(records), Some(item)) = (&records, form.kept(dom::today())) {
                records.kept.dispatch(Do::Act(KeptAction::Keep(item)));
                panel.set(Panel::Kept);
            }
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
    let clear = {
        let (act, records) = (act.clone(), records.clone());
        Callback::from(move |_| {
            act.emit(Act::Clear);
            if let Some(r) = &records {
                act.emit(mine(r));
            }
        })
    };
    let own_pad = *pad == PadMode::Own;
    let rows: usize = form.tables.iter().map(|table| table.rows.len()).sum();
    let dense = rows + answer.lines.len() + answer.steps.len() > 14;
    let spoken = form.spoken_result();
    html! {
        <>
            <main id="main" tabindex="-1" class={dense.then_some("dense")} {onkeydown}>
                <h1>{ form.sheet.title }</h1>
                <>{ for form.notes.iter().map(|note| html! { <p class="note">{ said(&note.text()) }</p> }) }</>
                if *shop_differs {
                    <div class="note row"><span>{ "Figured with the sender\u{2019}s shop." }</span>
                        <button type="button" class="act" onclick={{
                            let (act, records) = (act.clone(), records.clone());
                            Callback::from(move |_| if let Some(r) = &records { act.emit(mine(r)); })
                        }}>{ "Use my shop" }</button>
                    </div>
                }
                <div class="sheet">
                    <section class="entries" aria-label="Entry" {onfocusin} {onfocusout}>
                        { fields(&Fields { form: &form, by_shop: &by_shop, own_pad, act: &act, machines: records.as_ref().map(|r| machine_choices(&form, &machines, &r.shop, &act)) }) }
                        { settings(&form, *pad, &set_pad, &act, clear) }
                        if own_pad { { dock(&form, *focused, &set_pad) } }
                    </section>
                    <AnswerView form={(*form).clone()} printing={*printing} act={act.clone()} />
                </div>
                <Live text={spoken} />
                <Paper link={form.link().map(AttrValue::from)} printing={*printing} />
            </main>
            if *panel == Panel::Link {
                <SharePanel link={form.link().map(|link| AttrValue::from(format!("{}{link}", dom::base())))} title={form.sheet.title} text={form.text()} kept={form.kept(dom::today())} onclose={close.clone()} />
            }
            if *panel == Panel::Kept {
                <section class="panel" role="status">
                    <div class="head"><p>{ "Kept. " }<a href="#/kept">{ "To the kept list" }</a></p><button type="button" class="act plain" onclick={close}>{ "Close" }</button></div>
                    if let Some(records) = &records { { record_notice(&records.kept) } }
                </section>
            }
            { bar(&Bar { panel: *panel, onlink, onprint, onkeep, oncall, has_result: answer.is_complete() }) }
        </>
    }
}

/// This shop's own texts again.
fn mine(records: &Records) -> Act {
    let shop = records.shop.undo.now.clone();
    Act::Shop(shop.clone(), shop)
}
