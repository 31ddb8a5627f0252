//! What is this size? A length read every way: inch, millimetre, thou and tenths, nearest fractions, drill and pin.

mod near;
mod rule;

use crate::quantity::{
    Kind, Length, MM_PER_INCH, Quantity, System, nearest_fraction, plain, spoken, spoken_fraction,
    units::{INCH, MICRON, MM, TENTH, THOU},
    with_unit,
};
use crate::sheet::*;
use near::{Near, drills, pins};

static INCH_DEFINED: Source = Source::from_memory(
    "International yard and pound agreement, 1959",
    "1 in = 25.4 mm exactly",
);
static TENTHS: Source = Source::practice("A thou is 0.001 in, a tenth is 0.0001 in");
static FRACTIONS: Source = Source::computed(
    "International yard and pound agreement, 1959",
    "binary fractions of an inch",
);

/// Denominators of the usual rules and tables.
const DENOMINATORS: [u32; 5] = [8, 16, 32, 64, 128];

/// The sheet.
pub static SHEET: Sheet = Sheet {
    id: "length",
    revision: 1,
    title: "Read a length every way",
    question: "What is this size in inches, millimeters, fractions, thou and tenths, and which drill or pin is nearest?",
    aside: "any size",
    words: &[
        "convert",
        "conversion",
        "inch",
        "millimetre",
        "millimeter",
        "mm",
        "fraction",
        "decimal",
        "decimal equivalent",
        "thou",
        "tenth",
        "mil",
        "micron",
        "size",
        "measure",
        "nearest drill",
        "nearest pin",
        "ten thou",
        "ten thousandths",
        "convert mm to inch",
        "64ths",
        "caliper",
    ],
    group: Group::Identify,
    fields: &[Field::quantity(
        "length",
        "Length",
        Kind::Length,
        &[&INCH, &MM, &THOU, &TENTH, &MICRON],
    )
    .example("7/16 in")
    .hint("As 7/16, 1-21/64, 0.1878, 4.77 mm or 14 thou 5 tenths.")
    .range_mm(0.0, 100_000.0, "lengths to 100 m")
    .measured()
    .monotonic()],
    results: &[
        Res::of("inch", "Inches", Kind::Length),
        Res::of("mm", "Millimeters", Kind::Length),
        Res::of("thou", "Thou and tenths", Kind::Length),
        Res::words("fraction-64", "Nearest 64th"),
        Res::stepped(
            "fraction-64-off",
            "That 64th against this size",
            Kind::Length,
        ),
        Res::words("fraction-128", "Nearest 128th"),
        Res::stepped(
            "fraction-128-off",
            "That 128th against this size",
            Kind::Length,
        ),
        Res::words("drill", "Nearest drill"),
        Res::stepped("drill-off", "That drill against this size", Kind::Length),
        Res::words("pin", "Nearest pin"),
        Res::stepped("pin-off", "That pin against this size", Kind::Length),
        Res::words("spoken", "Say it as"),
    ],
    examples: &[
        &[("length", "7/16 in")],
        &[("length", "4.769 mm")],
        &[("length", "1-21/64 in")],
        &[("length", "14 thou 5 tenths")],
    ],
    takes: &["length"],
    finds: None,
    figure,
};

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let length: Length = inp.get("length")?;
    let mut a = inp.answer();
    sizes(&mut a, length);
    fractions(&mut a, length);
    let drills = drills(length);
    let pins = pins(length);
    nearest(
        &mut a,
        "drill",
        "drill-off",
        drills.first(),
        "Of number, letter, fraction and metric drills. A drill cuts over its size.",
    );
    nearest(
        &mut a,
        "pin",
        "pin-off",
        pins.first(),
        "A taper pin by its named end: inch large, metric small. A dowel by its nominal.",
    );
    a.words("spoken", said(inp, length))
        .says("Thou are 0.001 in, tenths are 0.0001 in.");
    if !inp.quiet() {
        table(&mut a, "drills", "Nearest drills", &drills);
        table(&mut a, "pins", "Nearest pins", &pins);
        for near in drills.iter().chain(&pins) {
            a.source(near.source);
        }
    }
    working(&mut a, inp, length);
    a.draw(|| rule::drawing(inp, length));
    a.note(
        "call-standard",
        "Before you call it a standard size",
        "Nearest is not the same as right: wear, burrs and the measuring tool can move a reading past the next size. Measure at more than one place.",
    );
    a.stop(
        "nearest-size",
        "Before you drill or ream to a nearest size",
        "A hole can't be made smaller. A twist drill cuts over its size, and a nearest size says nothing about the fit.",
    );
    Ok(a)
}

/// Digits after the point of the shortest exact decimal.
fn decimals(length: Length, unit: &'static crate::quantity::Unit) -> u8 {
    plain(length.base(), unit)
        .split_once('.')
        .map_or(0, |(_, part)| part.len()) as u8
}

/// Decimals to print in a unit, and whether that is all of them. Inch decimals past seven and millimetre ones that come
/// from such an inch are of no use to anyone: they are rounded.
fn places(length: Length) -> ((u8, bool), (u8, bool)) {
    let (inch, mm) = (decimals(length, &INCH), decimals(length, &MM));
    let whole_inch = inch <= 7;
    let whole_mm = mm <= 6 || whole_inch;
    (
        if whole_inch {
            (inch.max(4), true)
        } else {
            (5, false)
        },
        if whole_mm {
            (mm.max(3), true)
        } else {
            (4, false)
        },
    )
}

fn sizes(a: &mut Answer, length: Length) {
    let ((inch, inch_exact), (mm, mm_exact)) = places(length);
    let line = a
        .line("inch", length)
        .units(&INCH, &INCH)
        .places(inch, inch)
        .says("1 in is 25.4 mm, by definition.");
    line.exact = inch_exact;
    let line = a
        .line("mm", length)
        .units(&MM, &MM)
        .places(mm, mm)
        .says("1 in is 25.4 mm, by definition.");
    line.exact = mm_exact;
    let line = a
        .line("thou", length)
        .units(&THOU, &THOU)
        .places(1, 1)
        .says("One decimal is a tenth: 0.0001 in.");
    line.exact = decimals(length, &THOU) <= 1;
}

fn fractions(a: &mut Answer, length: Length) {
    for (id, off, denominator) in [
        ("fraction-64", "fraction-64-off", 64),
        ("fraction-128", "fraction-128-off", 128),
    ] {
        let near = nearest_fraction(length, denominator);
        a.words(id, inches(&near.text))
            .says("Half way between two it is the larger.");
        a.line(off, near.difference)
            .signed()
            .places(5, 4)
            .says(against(near.difference));
    }
    let columns = ["inch fraction", "decimal", "too large (+) or small by"];
    let table = a.table("fractions", "Nearest on the rule", &columns);
    for denominator in DENOMINATORS {
        let near = nearest_fraction(length, denominator);
        let chosen = near.difference == Length::ZERO;
        let mut name = inches(&near.text);
        name.push_str(" by ");
        crate::quantity::whole(&mut name, u64::from(denominator));
        name.push_str("ths");
        let name = name.replace("32ths", "32nds");
        let off = Value::of(near.difference).signed().places(5, 4);
        table
            .row(vec![
                Value::words(name),
                Value::of(near.length).places(5, 4),
                off,
            ])
            .chosen(chosen);
        if chosen {
            break; // a finer rule says the same
        }
    }
}

fn inches(fraction: &str) -> String {
    let mut text = fraction.replace(' ', "-");
    text.push_str(" in");
    text
}

fn nearest(
    a: &mut Answer,
    name: &'static str,
    off: &'static str,
    near: Option<&Near>,
    says: &'static str,
) {
    let Some(near) = near else {
        a.words(name, "none near")
            .says("This size lies outside the list.");
        return;
    };
    a.words(name, near.name.clone()).says(says);
    a.line(off, near.off)
        .signed()
        .places(4, 3)
        .says(against(near.off));
}

/// Which of the two is larger, in words.
fn against(off: Length) -> &'static str {
    if off == Length::ZERO {
        "Exactly this size."
    } else if off > Length::ZERO {
        "Too large by that much."
    } else {
        "Too small by that much."
    }
}

fn table(a: &mut Answer, id: &'static str, title: &'static str, near: &[Near]) {
    if near.is_empty() {
        return;
    }
    let table = a.table(
        id,
        title,
        &["size", "measures", "too large (+) or small by"],
    );
    for (i, one) in near.iter().enumerate() {
        let cells = vec![
            Value::words(one.name.clone()),
            Value::of(one.size).places(4, 3),
            Value::of(one.off).signed().places(4, 3),
        ];
        table.row(cells).chosen(i == 0);
    }
    table.note("Nearest first.");
}

/// In words: as a fraction too where it is one.
fn said(inp: &Inputs, length: Length) -> String {
    if inp.system() == System::Metric {
        return spoken(length.base(), &MM, 3);
    }
    let mut text = spoken(length.base(), &INCH, 4);
    let near = nearest_fraction(length, 64);
    if near.difference == Length::ZERO && near.numerator != 0 {
        text.push_str(", or ");
        text.push_str(&spoken_fraction(&near));
        if near.whole == 0 {
            text.push_str(" of an inch");
        } else {
            text.push_str(" inches");
        }
    }
    text
}

/// Inches in the working: all digits where they end, else to five.
fn digits(length: Length) -> String {
    crate::quantity::decimal(length.base(), &INCH, places(length).0.0)
}

fn working(a: &mut Answer, inp: &Inputs, length: Length) {
    a.work(|w| {
        let ((inch, _), (mm, _)) = places(length);
        let (inch_text, metric) = (
            with_unit(length.base(), &INCH, inch),
            with_unit(length.base(), &MM, mm),
        );
        let line = if inp.number("length").is_some() && inp.system() == System::Metric {
            format!("{metric} / {} = {inch_text}", plain(MM_PER_INCH, &MM))
        } else {
            format!("{inch_text} × {} = {metric}", plain(MM_PER_INCH, &MM))
        };
        w.step(
            "Inch and millimeter",
            &["1 in = 25.4 mm".into(), line],
            &INCH_DEFINED,
        );
        w.step(
            "Thou",
            &[
                "thou = inches × 1000".into(),
                format!(
                    "{} × 1000 = {}",
                    digits(length),
                    with_unit(length.base(), &THOU, 1)
                ),
            ],
            &TENTHS,
        );
        for denominator in [64_u32, 128] {
            let near = nearest_fraction(length, denominator);
            let parts = length.inches() * f64::from(denominator);
            let number = &crate::quantity::units::NUMBER;
            w.step(
                if denominator == 64 {
                    "Nearest 64th"
                } else {
                    "Nearest 128th"
                },
                &[
                    "n = inches × parts, to the nearest whole; half way goes to the larger".into(),
                    format!(
                        "n = {} × {denominator} = {}",
                        digits(length),
                        crate::quantity::decimal(parts, number, 2)
                    ),
                    format!(
                        "{} = {}, {} from this size",
                        inches(&near.text),
                        with_unit(
                            near.length.base(),
                            &INCH,
                            7.min(decimals(near.length, &INCH).max(4))
                        ),
                        crate::quantity::join(
                            &crate::quantity::signed(near.difference.base(), &INCH, 5),
                            &INCH
                        )
                    ),
                ],
                &FRACTIONS,
            );
        }
    });
}

#[cfg(test)]
mod tests;
