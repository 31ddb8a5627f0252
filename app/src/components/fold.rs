//! A part that is built only while it is open, so that what is folded costs nothing at each key stroke; and once nothing
//! has changed for a while, so that it is there when the browser prints: Firefox prints what stands at that moment.

use crate::hooks::use_later;
use yew::prelude::*;

/// How long nothing must change before folded content is built, in milliseconds.
const IDLE: i32 = 700;

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
    /// Built ahead for the printed page.
    #[prop_or_default]
    pub prints: bool,
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
    let built = use_ahead(props.prints, props.content.clone());
    let shown = *open || props.forced;
    html! {
        <details class="more" open={shown}>
            <summary onclick={toggle}>{ props.title.clone() }</summary>
            if shown || built { { props.content.emit(()) } }
        </details>
    }
}

/// Whether to build what is not seen yet: once the same thing has stood for a while.
#[hook]
pub fn use_ahead<T: PartialEq + Clone + 'static>(wanted: bool, of: T) -> bool {
    let stands = use_state(|| None::<T>);
    let later = use_later();
    {
        let stands = stands.setter();
        use_effect_with((wanted, of.clone()), move |(wanted, of)| {
            if *wanted {
                let of = of.clone();
                later.put(IDLE, move || stands.set(Some(of)));
            }
        });
    }
    wanted && stands.as_ref() == Some(&of)
}
