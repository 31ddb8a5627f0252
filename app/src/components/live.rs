//! One polite live region: says the result once typing has paused.

use crate::hooks::use_later;
use yew::prelude::*;

/// What is to be said.
#[derive(Properties, PartialEq)]
pub struct LiveProps {
    /// The text.
    pub text: AttrValue,
}

/// The region, out of sight.
#[component]
pub fn Live(props: &LiveProps) -> Html {
    let node = use_node_ref();
    let later = use_later();
    {
        let node = node.clone();
        use_effect_with(props.text.clone(), move |text| {
            let text = text.clone();
            later.put(900, move || {
                if let Some(node) = node.get() {
                    node.set_text_content(Some(&text));
                }
            });
        });
    }
    html! { <div class="out" role="status" aria-live="polite" ref={node}></div> }
}
