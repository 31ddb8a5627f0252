//! One result: its name, the figure, the unit, the same in the other system, the convention, and what range there is.

use benchslate_core::powers::range_text;
use benchslate_core::quantity::System;
use benchslate_core::sheet::Line;
use yew::prelude::*;

/// A result.
pub struct ResultRow<'a> {
    /// The result.
    pub line: &'a Line,
    /// The system in use.
    pub system: System,
    /// The main one.
    pub main: bool,
    /// What ± does to it, in words.
    pub spread: Option<String>,
}

/// The other system.
pub const fn other(system: System) -> System {
    match system {
        System::Inch => System::Metric,
        System::Metric => System::Inch,
    }
}

/// The same in the other system, where that says something else.
pub fn in_other(line: &Line, system: System) -> Option<String> {
    let (here, there) = (line.value.unit(system)?, line.value.unit(other(system))?);
    (here != there).then(|| line.value.text_with_unit(other(system)))
}

/// The figure with what is written close to it, and the unit that stands apart.
pub fn figure(line: &Line, system: System) -> (String, &'static str) {
    let digits = line.value.text(system);
    match line.value.unit(system).map_or("", |unit| unit.symbol) {
        unit if unit.ends_with(':') => (format!("{unit}{digits}"), ""),
        unit @ ("%" | "°" | "′" | "″") => (digits + unit, ""),
        unit => (digits, unit),
    }
}

/// The result.
pub fn result_line(props: &ResultRow<'_>) -> Html {
    let line = props.line;
    let (figure, behind) = figure(line, props.system);
    let words = line.value.base().is_none() && figure.chars().count() > 12;
    let alt = match (behind, in_other(line, props.system)) {
        ("", None) => String::new(),
        ("", Some(alt)) => format!("\u{b7} {alt}"),
        (unit, None) => unit.to_owned(),
        (unit, Some(alt)) => format!("{unit} \u{b7} {alt}"),
    };
    let band = line.band.map(|(low, high)| {
        let says = if line.band_says.is_empty() {
            ", by the sources"
        } else {
            ": "
        };
        let range = range_text(&line.value, low, high, props.system);
        format!("{range}{says}{}", line.band_says)
    });
    html! {
        <div key={line.id} class={classes!("result", (!props.main).then_some("small"))}>
            <span class="name">{ line.label.to_string() }if line.exact { <span class="soft">{ " exact" }</span> }</span>
            <span class={classes!("big", words.then_some("words"))}>{ figure }</span>
            if !alt.is_empty() { <span class="alt">{ alt }</span> }
            if let Some(band) = band { <p class="span fig">{ band }</p> }
            if let Some(spread) = &props.spread { <p class="span fig">{ spread }</p> }
            if !line.says.is_empty() { <p class="how">{ line.says.to_string() }</p> }
        </div>
    }
}
