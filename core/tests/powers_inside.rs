//! Is the least of a result found where it lies inside the ± of two entries at once, off every even place? Which of many
//! finds of a search are listed?
#![allow(clippy::unwrap_used, clippy::panic)] // a failed check

use benchslate_core::powers::{spread, turn};
use benchslate_core::quantity::{Kind, Number};
use benchslate_core::sheet::*;

static SOURCE: Source = Source::practice("made up for this test");

const fn entry(id: &'static str, label: &'static str) -> Field {
    Field::number(id, label)
        .range(-10.0, 10.0, "made up")
        .measured()
}

/// A valley across both entries, its bottom 0 at x 0.28 and k 1.09.
static VALLEY: Sheet = Sheet {
    id: "made-up",
    revision: 1,
    title: "Made up",
    question: "What comes out?",
    aside: "",
    words: &[],
    group: Group::Identify,
    fields: &[entry("x", "X"), entry("k", "K")],
    results: &[Res::of("y", "Y", Kind::Number)],
    examples: &[],
    takes: &[],
    finds: None,
    figure: |inp, a| {
        let (x, k): (Number, Number) = (inp.get("x")?, inp.get("k")?);
        let (across, along) = (x.get() + k.get() - 1.37, x.get() - k.get() + 0.81);
        a.line("y", Number::of(across * across + along * along));
        a.source(&SOURCE);
        Ok(())
    },
};

#[test]
fn the_bottom_of_a_valley_is_found() {
    let pairs = [("x", "0.5 \u{b1} 0.51"), ("k", "1 \u{b1} 0.4")];
    let out = evaluate(&VALLEY, &Entry::of(&pairs));
    let found = spread(&out.inputs, &out.answer).unwrap();
    let low = found.lines.first().unwrap().low;
    assert!((0.0..1e-4).contains(&low), "{low}");
}

/// A wave with a root every 9.42 on each side of 0.
static WAVE: Sheet = Sheet {
    fields: &[Field::number("x", "X").range(-100.0, 100.0, "made up")],
    figure: |inp, a| {
        let x: Number = inp.get("x")?;
        a.line("y", Number::of(libm::sin(x.get() / 3.0)));
        a.source(&SOURCE);
        Ok(())
    },
    id: "made-up",
    revision: 1,
    title: "Made up",
    question: "What comes out?",
    aside: "",
    words: &[],
    group: Group::Identify,
    results: &[Res::of("y", "Y", Kind::Number)],
    examples: &[],
    takes: &[],
    finds: None,
};

#[test]
fn of_many_roots_those_nearest_the_entry_are_listed() {
    let out = evaluate(&WAVE, &Entry::of(&[("x", "50")]));
    let found = turn(&out.inputs, "x", "y", 0.0).unwrap();
    assert!(found.roots.len() > 4, "{found:?}");
    // eight roots reach 38 to each side
    for root in &found.roots {
        assert!((root.x - 50.0).abs() < 42.0, "{root:?}");
    }
}
