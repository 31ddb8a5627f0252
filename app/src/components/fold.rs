//! A part that is built only while it is open, so that what is folded costs nothing at each key stroke.

use yew::prelude::*;

/// A heading and what it hides.
#[derive(Properties, PartialEq)]
pub struct FoldProps {
    /// The heading.
    pub title: AttrValue,
    /// Open at the start.
    #[prop_or_default]
    pub open: bool,
    /// Open whatever the user did: on paper.
    #[prop_or_default]
    pub forced: bool,
    /// Makes the content.
    pub content: Callback<(), Html>,
    /// Told of each change.
    #[prop_or_default]
    pub ontoggle: Callback<bool>,
}

/// The part.
#[component]
pub fn Fold(props: &FoldProps) -> Html {
    let open = use_state_eq(|| props.open);
    let toggle = {
        let (open, told) = (open.clone(), props.ontoggle.clone());
        Callback::from(move |e: MouseEvent| {
            e.prevent_default();
            open.set(!*open);
            told.emit(!*open);
        })
    };
    let shown = *open || props.forced;
    html! {
        <details class="more" open={shown}>
            <summary onclick={toggle}>{ props.title.clone() }</summary>
            if shown { { props.content.emit(()) } }
        </details>
    }
}
