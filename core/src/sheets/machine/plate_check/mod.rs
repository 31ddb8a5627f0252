//! Does the plate make sense? The series behind a machine's steps, and the step that is worn, misread or missing.

mod draw;

use crate::machine::{OFF, Plate, equal_steps, look_at_plate, two_ranges};
use crate::quantity::{
    FeedPerRev, FeedRate, Kind, Number, Quantity, RotationalSpeed, Share, Unit, plain,
};
use crate::record::{FEED_STEP, FEEDS, FEEDS_TURN, FOLLOWS, SPEED_STEP, SPINDLE, TURN_FEED_STEP};
use crate::sheet::*;
use draw::draw;

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "plate-check",
    revision: 3,
    title: "Read a worn plate",
    question: "Do the speeds or feeds on the plate make one series?",
    aside: "speeds or feeds, ratio",
    words: &[
        "plate",
        "worn plate",
        "ratio of speeds",
        "speed plate",
        "feed plate",
        "geometric series",
        "preferred numbers",
        "r20",
        "r40",
        "ratio of steps",
    ],
    group: Group::Run,
    fields: &[
        Field::choice(
            "of",
            "Plate shows",
            &[choice("spindle", "spindle speeds"), choice("feed", "feeds")],
        ),
        Field::rows("spindle-steps", "Spindle speeds", SPEED_STEP, 3, 48)
            .example("70 rpm;110 rpm;175 rpm")
            .hint("As on the plate, slowest first or fastest first.")
            .from_shop(ShopItem::SpindleSteps, SPINDLE)
            .when(&[when("of", &["spindle"])]),
        Field::choice("feed-follows", "Feed follows the spindle", FOLLOWS)
            .from_shop(ShopItem::FeedFollows, "own")
            .when(&[when("of", &["feed"])]),
        Field::rows("feed-steps", "Feeds", FEED_STEP, 3, 48)
            .example("1 ipm;2 ipm;4 ipm")
            .hint("As on the plate, slowest first.")
            .from_shop(ShopItem::FeedSteps, FEEDS)
            .when(&[when("of", &["feed"]), when("feed-follows", &["own"])]),
        Field::rows("feed-steps-turn", "Feeds, per rev", TURN_FEED_STEP, 3, 48)
            .example("0.002 ipr;0.004 ipr;0.008 ipr")
            .hint("As on the plate, slowest first.")
            .from_shop(ShopItem::FeedStepsTurn, FEEDS_TURN)
            .when(&[when("of", &["feed"]), when("feed-follows", &["spindle"])]),
    ],
    results: &[
        Res::of("ratio", "Ratio from one to the next", Kind::Number),
        Res::of("ratio-ends", "Ratio from the ends", Kind::Number),
        Res::words("series", "What it is"),
        Res::words("suspect", "Look at"),
    ],
    examples: &[
        &[(
            "spindle-steps",
            "180 rpm;236 rpm;315 rpm;425 rpm;650 rpm;750 rpm;1000 rpm;1320 rpm;1800 rpm",
        )],
        &[
            ("of", "feed"),
            ("feed-steps", "1 ipm;1.4 ipm;2 ipm;2.8 ipm;5.6 ipm;8 ipm"),
        ],
        &[
            ("of", "feed"),
            ("feed-follows", "spindle"),
            (
                "feed-steps-turn",
                "0.1 mm/rev;0.14 mm/rev;0.2 mm/rev;0.28 mm/rev;0.56 mm/rev",
            ),
        ],
    ],
    takes: &[],
    finds: None,
    figure,
};

static SERIES: Source = Source::from_memory(
    "ISO 3:1973, preferred numbers",
    "table of basic series, R40",
);
static SPEEDS: Source = Source::read(
    "DIN 804 (1977), on-load speeds for machine tools",
    "table; connected with ISO 229",
);
static BOXES: Source =
    Source::practice("Rounding to whole teeth moves a speed or feed of a gearbox by 2 to 5%");

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    match (inp.choice("of"), inp.choice("feed-follows")) {
        ("feed", "spindle") => tell::<FeedPerRev>(inp, "feed-steps-turn"),
        ("feed", _) => tell::<FeedRate>(inp, "feed-steps"),
        _ => tell::<RotationalSpeed>(inp, "spindle-steps"),
    }
}

/// The unit in which the plate was typed, as it is cut, and the decimals that its values need.
fn typed<Q: Quantity>(inp: &Inputs, field: &'static str) -> (&'static Unit, u8) {
    let own = match inp.input(field) {
        Some(Input::Rows(rows)) => rows.first().and_then(|row| match row.first() {
            Some(Some(Input::Quantity { unit, .. })) => Some(*unit),
            _ => None,
        }),
        _ => None,
    };
    let unit = own.unwrap_or_else(|| inp.unit_of::<Q>());
    let needs = |value: &Q| {
        let text = plain(value.base(), unit);
        let after = text.split_once('.').map_or(0, |(_, after)| after.len());
        u8::try_from(after).unwrap_or(0)
    };
    let most = inp.list::<Q>(field).iter().map(needs).max().unwrap_or(0);
    // a plate in another unit than the first row's has no end of decimals
    (
        unit,
        if most > 5 {
            unit.places
        } else {
            most.max(unit.places)
        },
    )
}

/// Values in the unit in which they were typed: a preferred number belongs to the unit that the plate is cut in.
fn tell<Q: Quantity>(inp: &Inputs, field: &'static str) -> Result<Answer, Stop> {
    let (unit, places) = typed::<Q>(inp, field);
    let steps: Vec<Q> = inp.list(field);
    let mut values: Vec<f64> = steps
        .iter()
        .map(|step| unit.from_base(step.base()))
        .collect();
    // a plate read from the fast end is the same plate
    let falls = values
        .windows(2)
        .all(|pair| matches!(pair, [a, b] if a > b));
    if falls {
        values.reverse();
    }
    let stray = values
        .windows(2)
        .position(|pair| !matches!(pair, [a, b] if a < b));
    if let Some(before) = stray {
        let row = before.saturating_add(1);
        let mut fault = Fault::of(
            field,
            Reason::Conflict,
            "the values do not rise from row to row",
            "look at this row and the one before: list them slowest first, each once, all in one unit",
        );
        fault.at = Some((row.saturating_add(1), 1));
        return Err(fault.into());
    }
    let plate = look_at_plate(&values).ok_or_else(|| {
        Stop::fault(
            field,
            Reason::OutOfRange,
            "three values or more are needed",
            "add values from the plate",
        )
    })?;
    // a feed per rev is small: a place more than it is set by
    let places = match unit.kind {
        Kind::FeedPerRev => places.max(if unit.id == "in/rev" { 5 } else { 4 }),
        _ => places,
    };
    let show = |value: f64| {
        let shown = Value::of(Q::from_base(unit.to_base(value)));
        shown.units(unit, unit).places(places, places)
    };
    let text = |value: f64| show(value).text_with_unit(inp.system());
    let mut a = inp.answer();
    a.line("ratio", Number::of(plate.ratio))
        .says("Median of all pairs of values, so that one bad value does not move it.");
    a.line("ratio-ends", Number::of(plate.plain_ratio))
        .says("(most \u{f7} least) to the power 1/(n \u{2212} 1).");
    let other = other_series(&plate, &values, &text);
    let series = other.clone().unwrap_or_else(|| series_words(&plate));
    a.words("series", series)
        .says("A value counts as off past 6% of the series.");
    if other.is_some() {
        a.words(
            "suspect",
            "no single value: one ratio does not fit this plate",
        )
        .says("The table below holds it against one series all the same.");
    } else {
        a.words("suspect", suspect_words(&plate, &text))
            .says("Against the series of the other values.");
    }
    let table = a.table(
        "steps",
        "Value by value",
        &["plate", "series", "off", "preferred number"],
    );
    for step in &plate.steps {
        let off = step.off.abs() > OFF;
        let cells = vec![
            show(step.value),
            show(step.fitted),
            Value::of(Share::from_fraction(step.off))
                .places(1, 1)
                .signed(),
            show(step.preferred),
        ];
        table.row(cells).chosen(off);
    }
    table.note(
        "Preferred: what ISO 3 would put there, in the unit shown. Marked: off by more than 6%.",
    );
    a.work(|w| {
        let (n, least, most) = (
            values.len(),
            text(*values.first().unwrap_or(&0.0)),
            text(*values.last().unwrap_or(&0.0)),
        );
        let last = n.saturating_sub(1);
        w.step(
            "Ratio from the ends",
            &[
                "\u{3c6} = (most \u{f7} least)^(1/(n \u{2212} 1))".into(),
                format!(
                    "\u{3c6} = ({most} \u{f7} {least})^(1/{last}) = {}",
                    inp.num_to(Number::of(plate.plain_ratio), 4, 4)
                ),
            ],
            &SERIES,
        );
        w.step(
            "Nearest ratio of preferred numbers",
            &[
                "k = 40 \u{d7} log10 \u{3c6}".into(),
                format!(
                    "k = {}: every {} number of R40, ratio {}",
                    plate.r40_steps,
                    ordinal(plate.r40_steps),
                    inp.num_to(Number::of(r40_ratio(&plate)), 4, 4)
                ),
            ],
            &SERIES,
        );
    });
    a.draw(|| draw(&plate, &text));
    a.note(
        "trust-series",
        "Before you trust a series",
        "Old plates were not always laid out on preferred numbers, and a gearbox with a back gear may hold two series. Time it before you call it wrong.",
    );
    a.source(&BOXES);
    if unit.kind == Kind::RotationalSpeed {
        a.source(&SPEEDS);
    }
    Ok(a)
}

fn r40_ratio(plate: &Plate) -> f64 {
    libm::pow(10.0, f64::from(plate.r40_steps) / 40.0)
}

fn ordinal(n: i32) -> String {
    match n {
        1 => "single".into(),
        2 => "second".into(),
        3 => "third".into(),
        4 => "fourth".into(),
        n => format!("{n}th"),
    }
}

fn series_words(plate: &Plate) -> String {
    if plate.is_geometric() {
        return "one geometric series".into();
    }
    let bad = plate
        .steps
        .iter()
        .filter(|step| step.off.abs() > OFF)
        .count();
    if bad.saturating_mul(3) > plate.steps.len() {
        return "not one geometric series: perhaps two ranges, or a cone with its own ratios"
            .into();
    }
    "one geometric series but for what is marked".into()
}

/// What else the plate is, where one geometric series leaves more than a third of it off: equal steps, or two ranges.
fn other_series(plate: &Plate, values: &[f64], text: &impl Fn(f64) -> String) -> Option<String> {
    if plate.is_geometric() {
        return None;
    }
    if let Some(step) = equal_steps(values) {
        return Some(format!(
            "equal differences of {}, not equal ratios",
            text(step)
        ));
    }
    let off = plate
        .steps
        .iter()
        .filter(|step| step.off.abs() > OFF)
        .count();
    let (at, low, high) = two_ranges(values)?;
    if off.saturating_mul(3) <= plate.steps.len() {
        return None;
    }
    let place = |at: usize| {
        values
            .get(at)
            .map_or_else(String::new, |value| text(*value))
    };
    Some(format!(
        "two ranges: {} to {} by {low:.2}, and {} to {} by {high:.2}",
        place(0),
        place(at.saturating_sub(1)),
        place(at),
        place(values.len().saturating_sub(1))
    ))
}

fn suspect_words(plate: &Plate, text: &impl Fn(f64) -> String) -> String {
    let mut words: Vec<String> = plate
        .steps
        .iter()
        .filter(|step| step.off.abs() > OFF)
        .take(3)
        .map(|step| {
            format!(
                "{}, where the series has {}",
                text(step.value),
                text(step.fitted)
            )
        })
        .collect();
    for (after, ratios) in plate.gaps.iter().take(2) {
        if let (Some(low), Some(high)) = (
            plate.steps.get(*after),
            plate.steps.get(after.saturating_add(1)),
        ) {
            let missing = libm::round(*ratios) as i32 - 1;
            let steps = if missing == 1 {
                "a value seems"
            } else {
                "values seem"
            };
            words.push(format!(
                "{steps} missing between {} and {}",
                text(low.value),
                text(high.value)
            ));
        }
    }
    if words.is_empty() {
        "nothing: every value is within 6% of the series".into()
    } else {
        words.join("; ")
    }
}
