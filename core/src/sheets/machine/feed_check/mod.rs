//! Does it feed what the plate says? Timed travel against the plate, with what the measuring itself can explain.

mod tables;
mod verdict;

use crate::machine::{FeedCheck, Fineness, Setting, Timing, check_feeds, travel_for};
use crate::quantity::units::{INCH, MINUTE, MM, SECOND};
use crate::quantity::{
    Count, FeedRate, Kind, Length, Number, Quantity, Share, Time, Unit, decimal, join, plain,
};
use crate::record::FEED_STEP;
use crate::sheet::*;

/// The sheet.
pub static SHEET: Sheet = Sheet {
    id: "feed-check",
    revision: 3,
    title: "Time the feeds",
    question: "Does the machine feed what its plate says?",
    aside: "plate, travel, seconds",
    words: &[
        "feed test", "true feed", "timed feed", "stopwatch", "stop watch", "watch", "seconds", "belt slip", "feed rate check",
        "feed plate", "feed slow", "slow feed", "fast feed", "does my feed match the plate", "backlash", "slack", "60 hz on 50 hz",
    ],
    group: Group::Run,
    fields: &[
        Field::rows(
            "timings",
            "Timings",
            TIMING,
            1,
            60,
        )
        .example("1 ipm~1 in~60.6 s;2 ipm~1 in~30.4 s")
        .hint("Plate setting, travel, seconds, and turns of the dial where the travel is one turn's."),
        Field::choice("read-on", "Travel read on", &[choice("table", "the table: rule or indicator"), choice("dial", "the dial")]),
        Field::quantity("slack", "Backlash of the screw", Kind::Length, &[&INCH, &MM])
            .example("0.012 in")
            .preset("0 in")
            .range(0.0, 25.0, "more backlash than that calls for a new nut")
            .hint("0 where it was taken up before the watch was started.")
            .when(&[when("read-on", &["dial"])]),
        Field::quantity("fine", "Smallest reading", Kind::Length, &[&INCH, &MM]).seldom()
            .example("0.002 in")
            .preset("0.002 in")
            .range(0.0001, 2.0, "the range of graduations on dials and rules"),
        Field::quantity("watch", "Stopwatch error", Kind::Time, &[&SECOND]).seldom()
            .example("0.1 s")
            .preset("0.1 s")
            .range(0.001, 2.0, "0.1 s is usual for start and stop by one hand"),
        Field::rows("feed-steps", "All feeds of the plate", FEED_STEP, 2, 48).seldom()
            .example("0.5 ipm;1 ipm;2 ipm;4 ipm;8 ipm")
            .hint("To catch a setting that the plate does not have, and to name the feed that a wrong one gives.")
            .filled_from_shop(ShopItem::FeedSteps)
            .optional(),
    ],
    results: &[
        Res::words("verdict", "What it says"),
        Res::of("factor-off", "Common difference from the plate", Kind::Share),
        Res::of("factor", "Measured feed over plate feed, all settings", Kind::Number),
        Res::of("worst", "Largest difference of one setting from that", Kind::Share),
        Res::of("travel-wanted", "Travel needed to time within 1%, fastest setting", Kind::Length),
    ],
    examples: &[
        &[("timings", "0.5 ipm~0.5 in~61.5 s;1 ipm~1 in~61.3 s;2 ipm~2 in~61.8 s;4 ipm~2 in~30.9 s;8 ipm~4 in~31 s")],
        &[("timings", "2 ipm~0.2 in~30.4 s~5"), ("read-on", "dial"), ("slack", "0.012 in")],
    ],
    takes: &[],
    finds: None,
    figure,
};

static TIMING: &[Field] = &[
    Field::table_feed("plate", "Plate").example("2 ipm"),
    Field::quantity(
        "travel",
        "Travel, per turn or run",
        Kind::Length,
        &[&INCH, &MM],
    )
    .range(0.1, 5000.0, "the range of travel read on a dial or rule")
    .example("1 in"),
    Field::quantity("time", "Seconds", Kind::Time, &[&SECOND, &MINUTE])
        .range(
            1.0,
            36_000.0,
            "the range of times that are measured by hand",
        )
        .example("30 s"),
    Field::count("turns", "Turns")
        .range(1.0, 1000.0, "the range of whole turns counted at one line")
        .example("1")
        .preset("1"),
];

static GUM: Source = Source::computed(
    "JCGM 100:2008, Guide to the expression of uncertainty in measurement",
    "5.1.6 and 6.2",
);
static WATCH: Source = Source::read(
    "Faux and Godolphin, Manual timing in physics experiments, Am. J. Phys. 87 (2019) 110",
    "abstract",
);
static TEETH: Source =
    Source::practice("Rounding to whole teeth moves a feed of a gearbox by 2 to 5%");

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let slack: Length = inp.opt("slack").unwrap_or(Length::ZERO);
    let fine = Fineness {
        travel: inp.get("fine")?,
        time: inp.get("watch")?,
    };
    let timings = timings(inp, slack)?;
    let steps: Vec<FeedRate> = inp.list("feed-steps");
    on_plate(inp, &timings, &steps)?;
    let check = check_feeds(&timings, fine).ok_or(Stop::Missing("timings"))?;
    let mut a = inp.answer();
    lines(&mut a, inp, &check, fine);
    tables::settings(&mut a, inp, &check, &steps);
    tables::causes(&mut a, &check);
    a.work(|w| work(inp, w, &timings, &check, fine));
    a.draw(|| draw(inp, &check));
    cautions(&mut a, inp, &check);
    a.source(&GUM).source(&WATCH).source(&TEETH);
    Ok(a)
}

fn lines(a: &mut Answer, inp: &Inputs, check: &FeedCheck, fine: Fineness) {
    let (verdict, says) = verdict::verdict(inp, check);
    a.words("verdict", verdict).says(says);
    a.line("factor-off", Share::from_fraction(check.common - 1.0))
        .places(1, 1)
        .signed()
        .says(verdict::way(check));
    a.line("factor", Number::of(check.common)).says(format!(
        "{}, sure to \u{b1}{} (about 95%).",
        if check.settings.len() > 1 {
            "Median of the settings"
        } else {
            "Of one setting"
        },
        share(Share::from_fraction(check.common_expanded))
    ));
    if check.settings.len() > 1 {
        worst(a, check);
    }
    let fastest = check
        .settings
        .iter()
        .map(|one| one.feed)
        .fold(FeedRate::ZERO, FeedRate::max);
    a.line("travel-wanted", travel_for(fastest, fine, 0.01))
        .says("So that the stopwatch alone is worth 1%.")
        .places(2, 0);
}

fn worst(a: &mut Answer, check: &FeedCheck) {
    let worst = check
        .settings
        .iter()
        .map(|one| one.off_common)
        .fold(
            0.0,
            |worst: f64, off| if off.abs() > worst.abs() { off } else { worst },
        );
    a.line("worst", Share::from_fraction(worst))
        .places(1, 1)
        .signed()
        .says("After the common factor is taken out. 2 to 5% comes from whole teeth alone.");
}

fn cautions(a: &mut Answer, inp: &Inputs, check: &FeedCheck) {
    let once: Vec<&Setting> = check.settings.iter().filter(|one| one.count == 1).collect();
    match once.as_slice() {
        [] => {}
        [one] if check.settings.len() > 1 => {
            let says = format!(
                "{} was timed once, which tells nothing of its own scatter. Time it three times where it matters.",
                plate_name(inp, one.plate)
            );
            a.note("single-timing", "A single timing", says);
        }
        _ => {
            a.note("one-timing-each", "One timing a setting", "A single timing tells nothing of its own scatter. Time each setting three times where it matters.");
        }
    }
    a.stop("engage-feed", "Before you engage a feed", "Clear the table's path at both ends, set the trip dogs well inside the stops, take the handles out of gear, and keep a hand at the stop.");
}

fn timings(inp: &Inputs, slack: Length) -> Result<Vec<Timing>, Stop> {
    let mut timings = Vec::new();
    for (row, cells) in inp.rows("timings").iter().enumerate() {
        let needed = Stop::Missing("timings");
        let (Some(plate), Some(travel), Some(time)) = (
            cells.get("plate"),
            cells.get::<Length>("travel"),
            cells.get("time"),
        ) else {
            return Err(needed);
        };
        let turns = cells.get::<Count>("turns").map_or(1.0, Count::get);
        let true_travel = travel * turns - slack;
        if true_travel <= Length::ZERO {
            let mut fault = Fault::of(
                "timings",
                Reason::Conflict,
                "the travel is shorter than the backlash",
                "time a longer run, or take the backlash up first",
            );
            fault.at = Some((row.saturating_add(1), 2));
            return Err(fault.into());
        }
        timings.push(Timing {
            plate,
            travel: true_travel,
            time,
        });
    }
    Ok(timings)
}

/// Each timed setting must be a feed of the plate, where the plate is given.
fn on_plate(inp: &Inputs, timings: &[Timing], steps: &[FeedRate]) -> Result<(), Stop> {
    let stray = timings
        .iter()
        .enumerate()
        .find_map(|(row, one)| match nearest(one.plate, steps) {
            Some(near) if (one.plate / near - 1.0).abs() > 0.005 => Some((row, one.plate, near)),
            _ => None,
        });
    let Some((row, plate, near)) = stray else {
        return Ok(());
    };
    let mut fault = Fault::of(
        "timings",
        Reason::Conflict,
        format!("{} is not a feed of the plate", plate_name(inp, plate)),
        format!(
            "give {}, the nearest feed, or correct the feeds of the plate",
            plate_name(inp, near)
        ),
    );
    fault.at = Some((row.saturating_add(1), 1));
    Err(fault.into())
}

/// The feed of the plate nearest to this one, by ratio.
fn nearest(feed: FeedRate, steps: &[FeedRate]) -> Option<FeedRate> {
    let far = |step: &FeedRate| libm::log(*step / feed).abs();
    steps
        .iter()
        .copied()
        .min_by(|a, b| far(a).total_cmp(&far(b)))
}

/// The unit in which the plate's settings were typed.
fn plate_unit(inp: &Inputs) -> &'static Unit {
    let first = match inp.input("timings") {
        Some(Input::Rows(rows)) => rows.first().and_then(|row| row.first()),
        _ => None,
    };
    match first {
        Some(Some(Input::Quantity { unit, .. })) => unit,
        _ => inp.unit_of::<FeedRate>(),
    }
}

/// A setting of the plate as it stands there, without its unit.
fn plate_text(inp: &Inputs, feed: FeedRate) -> String {
    let unit = plate_unit(inp);
    let text = plain(feed.base(), unit);
    if text.len() > 6 {
        decimal(feed.base(), unit, 2)
    } else {
        text
    }
}

/// A setting of the plate as it stands there: "37.5 mm/min".
fn plate_name(inp: &Inputs, feed: FeedRate) -> String {
    join(&plate_text(inp, feed), plate_unit(inp))
}

fn plural(count: usize) -> &'static str {
    if count == 1 { "" } else { "s" }
}

fn share(share: Share) -> String {
    Value::of(share)
        .places(1, 1)
        .text_with_unit(crate::quantity::System::Inch)
}

fn work(inp: &Inputs, w: &mut Work, timings: &[Timing], check: &FeedCheck, fine: Fineness) {
    let (Some(first), Some(setting)) = (timings.first(), check.settings.first()) else {
        return;
    };
    let feed = crate::machine::timed_feed(first.travel, first.time);
    let u = crate::machine::timing_uncertainty(first.travel, first.time, fine);
    w.step(
        "True feed, first timing",
        &[
            "F = 60 \u{d7} s \u{f7} t".into(),
            format!(
                "F = 60 \u{d7} {} \u{f7} {} = {}",
                inp.show(first.travel),
                inp.show(first.time),
                inp.show_to(feed, 3, 1)
            ),
        ],
        &GUM,
    );
    w.step(
        "What measuring explains",
        &[
            "u = \u{221a}((u_s \u{f7} s)\u{b2} + (u_t \u{f7} t)\u{b2}), shown doubled".into(),
            format!(
                "u = \u{221a}(({} \u{f7} {})\u{b2} + ({} \u{f7} {})\u{b2}) = {}",
                inp.num(fine.travel),
                inp.num(first.travel),
                inp.num_to::<Time>(fine.time, 2, 2),
                inp.num(first.time),
                share(Share::from_fraction(u))
            ),
        ],
        &GUM,
    );
    w.step(
        "Common factor",
        &[
            "median of measured \u{f7} plate".into(),
            format!(
                "{} setting{} from {}: {}",
                check.settings.len(),
                plural(check.settings.len()),
                inp.show(setting.plate),
                inp.num_to(Number::of(check.common), 4, 4)
            ),
        ],
        &GUM,
    );
}

/// Plate against measured on scales of equal ratios.
fn draw(inp: &Inputs, check: &FeedCheck) -> Drawing {
    let mut d = Drawing::new(
        "True feed against the plate: on the line where both are equal, above it where the feed is fast",
        true,
    );
    let place = |feed: FeedRate| 100.0 * libm::log10(feed.in_per_min());
    let low = check
        .settings
        .iter()
        .map(|one| place(one.plate).min(place(one.feed)))
        .fold(f64::INFINITY, f64::min)
        - 15.0;
    let high = check
        .settings
        .iter()
        .map(|one| place(one.plate).max(place(one.feed)))
        .fold(f64::NEG_INFINITY, f64::max)
        + 15.0;
    d.path(
        Pen::Thin,
        true,
        &[pt(low, low), pt(high, low), pt(high, high), pt(low, high)],
    );
    d.path(Pen::Centre, false, &[pt(low, low), pt(high, high)]);
    let size = (high - low) / 60.0;
    for one in &check.settings {
        let pen = if verdict::is_single(one, check) {
            Pen::Mark
        } else {
            Pen::Object
        };
        d.circle(pen, pt(place(one.plate), place(one.feed)), size);
    }
    if let (Some(first), Some(last)) = (check.settings.first(), check.settings.last()) {
        d.text(pt(place(first.plate), low - 8.0), inp.show(first.plate));
        d.text(pt(place(last.plate), low - 8.0), inp.show(last.plate));
    }
    d
}
