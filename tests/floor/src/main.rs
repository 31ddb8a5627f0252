//! The floor: what does a page of this kind cost when it does next to nothing?
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Six fields and their sum.
#[component]
fn Floor() -> Html {
    let texts = use_state(|| vec![String::new(); 6]);
    let sum: f64 = texts
        .iter()
        .filter_map(|t| t.trim().parse::<f64>().ok())
        .sum();
    let fields = (0..6).map(|at| {
        let texts = texts.clone();
        let value = texts.get(at).cloned().unwrap_or_default();
        let oninput = Callback::from(move |e: InputEvent| {
            let input: HtmlInputElement = e.target_unchecked_into();
            let mut next = (*texts).clone();
            if let Some(slot) = next.get_mut(at) {
                *slot = input.value();
            }
            texts.set(next);
        });
        html! { <p><label>{ format!("Field {} ", at + 1) }<input type="text" {value} {oninput} /></label></p> }
    });
    html! { <main>{ for fields }<p id="sum">{ format!("{sum:.4}") }</p></main> }
}

fn main() {
    yew::Renderer::<Floor>::new().render();
}
