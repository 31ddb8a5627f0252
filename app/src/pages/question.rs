//! A question and its answer: fields, key pad, live answer, bottom actions. All of it derived from the sheet.

use super::paper::paper;
use crate::app::{Records, write_address};
use crate::components::{
    AnswerView, Bar, CallView, FieldView, Fold, Live, Pad, PadMode, Panel, SharePanel, SheetRef,
    bar, keys_for, machine_choices, machines_of, record_notice,
};
use crate::document::Do;
use crate::dom;
use crate::hooks::{use_saving, use_window_event};
use crate::state::{Act, Form};
use benchslate_core::quantity::System;
use benchslate_core::record::KeptAction;
use benchslate_core::sheet::{FieldKind, Preset};
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

    let field = |at: usize| {
        let (typed, outcome) = (form.typed.get(at)?.clone(), form.fields.get(at)?.clone());
        outcome.applies.then(|| {
            let key = outcome.id;
            html! {
                <FieldView {key} sheet={SheetRef(form.sheet)} {at} {typed} unit={form.unit(at)} system={form.system} {outcome}
                    own_pad={*pad == PadMode::Own} act={act.clone()} />
            }
        })
    };
    let from_shop = |at: &usize| {
        form.sheet
            .fields
            .get(*at)
            .is_some_and(|f| matches!(f.preset, Preset::Shop(..)))
    };
    let (shop, own): (Vec<usize>, Vec<usize>) = (0..form.sheet.fields.len()).partition(from_shop);
    let is_seldom = |at: &usize| form.sheet.fields.get(*at).is_some_and(|f| f.is_seldom);
    let (seldom, own): (Vec<usize>, Vec<usize>) = own.into_iter().partition(is_seldom);
    let applies = |at: &usize| form.fields.get(*at).is_some_and(|f| f.applies);
    let seldom_here = seldom.iter().any(applies);
    let seldom_used = seldom.iter().any(|&at| {
        form.typed
            .get(at)
            .is_some_and(|typed| !typed.raw.trim().is_empty() && !by_shop.contains(&at))
            || form.fields.get(at).is_some_and(|f| f.fault.is_some())
    });
    let shop_here = shop
        .iter()
        .any(|&at| form.fields.get(at).is_some_and(|f| f.applies));
    let shop_fault = shop
        .iter()
        .any(|&at| form.fields.get(at).is_some_and(|f| f.fault.is_some()));

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
    let rows: usize = form.tables.iter().map(|table| table.rows.len()).sum();
    let dense = rows + answer.lines.len() + answer.steps.len() > 14;
    let spoken = form.spoken_result();
    let keys = focused.and_then(|at| form.sheet.fields.get(at));
    let system = |system: System, words: &'static str| {
        let act = act.clone();
        let on = form.system == system;
        let onchange = Callback::from(move |_: Event| act.emit(Act::System(system)));
        html! { <label class={on.then_some("on")}><input type="radio" name="system" checked={on} {onchange} />{ words }</label> }
    };
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
                        <>{ for own.iter().filter_map(|&at| field(at)) }</>
                        if seldom_here {
                            <Fold key={form.loads} title={more_words(&form, &seldom)} open={seldom_used} content={{
                                let fields: Vec<Html> = seldom.iter().filter_map(|&at| field(at)).collect();
                                Callback::from(move |()| html! { <>{ for fields.clone() }</> })
                            }} />
                        }
                        if let Some(r) = &records { { machine_choices(&form, &machines, &r.shop, &act) } }
                        if shop_here {
                            <Fold title="From the shop" open={shop_fault} content={{
                                let fields: Vec<Html> = shop.iter().filter_map(|&at| field(at)).collect();
                                Callback::from(move |()| html! { <>{ for fields.clone() }</> })
                            }} />
                        }
                        <div class="padtoggle row noprint">
                            <div class="choices small" role="group" aria-label="Results in">{ system(System::Inch, "inch") }{ system(System::Metric, "mm") }</div>
                            if !form.is_empty() {
                                <button type="button" class="act plain" onclick={{ let (act, records) = (act.clone(), records.clone()); Callback::from(move |_| {
                                    act.emit(Act::Clear);
                                    if let Some(r) = &records { act.emit(mine(r)); }
                                }) }}>{ "Clear" }</button>
                            }
                            { match *pad {
                                PadMode::System => html! { <button type="button" class="act plain" onclick={set_pad.reform(|_| PadMode::Own)}>{ "Key pad" }</button> },
                                PadMode::Own => html! { <button type="button" class="act plain" onclick={set_pad.reform(|_| PadMode::System)}>{ "System keyboard" }</button> },
                            } }
                        </div>
                        if *pad == PadMode::Own {
                            <div class={classes!("dock", focused.is_none().then_some("resting"))} onmousedown={Callback::from(|e: MouseEvent| e.prevent_default())}>
                                <div class="strip">
                                    <p>{ strip(&form) }</p>
                                    <button type="button" tabindex="-1" onclick={set_pad.reform(|_| PadMode::System)} aria-label="System keyboard">{ "abc" }</button>
                                    <button type="button" tabindex="-1" onclick={Callback::from(|_| dom::focus_next_input())}>{ "Next" }</button>
                                    <button type="button" tabindex="-1" onclick={Callback::from(|_| dom::blur())}>{ "Done" }</button>
                                </div>
                                <div class="pad"><Pad words={keys.map(keys_for).unwrap_or_default()} tolerance={keys.is_none_or(|f| f.is_measured)}
                                    colon={keys.is_some_and(|f| matches!(f.kind, FieldKind::Quantity { kind: benchslate_core::quantity::Kind::Taper, .. }))} /></div>
                            </div>
                        }
                    </section>
                    <AnswerView form={(*form).clone()} printing={*printing} act={act.clone()} />
                </div>
                <Live text={spoken} />
                if *printing { { paper(form.link()) } }
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

/// What the fold of seldom entries holds: the names of the first few.
fn more_words(form: &Form, seldom: &[usize]) -> AttrValue {
    let here = seldom
        .iter()
        .filter(|&&at| form.fields.get(at).is_some_and(|f| f.applies));
    let mut names: Vec<String> = here
        .filter_map(|&at| Some(form.sheet.fields.get(at)?.label.to_ascii_lowercase()))
        .collect();
    if names.len() > 3 {
        names.truncate(3);
        names.push("\u{2026}".into());
    }
    format!("More: {}", names.join(", ")).into()
}

/// The first result for the strip above the pad.
fn strip(form: &Form) -> Html {
    let answer = form.answer();
    match answer.lines.first().filter(|_| answer.is_complete()) {
        Some(line) => {
            let unit = line.value.unit(form.system).map_or("", |unit| unit.symbol);
            html! { <><span class="name">{ line.label.to_string() }</span><span class="fig">{ line.value.text(form.system) }</span><span class="soft">{ unit }</span></> }
        }
        None => html! { <span class="name">{ form.short_state() }</span> },
    }
}
