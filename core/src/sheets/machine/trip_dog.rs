//! Where does the table stop after the trip dog, and how well does it repeat?

use crate::machine::{Trials, delay_of_stops, overrun, trials};
use crate::quantity::units::{INCH, MM, SECOND};
use crate::quantity::{FeedRate, Kind, Length, Time};
use crate::sheet::*;

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "trip-dog",
    revision: 2,
    title: "Set a trip dog",
    question: "Where must the trip dog stand, and how well does the stop repeat?",
    aside: "feed, delay, trial stops",
    words: &[
        "trip",
        "trip dog",
        "trip rod",
        "table stop",
        "overrun",
        "stop",
        "feed trip",
        "feed stop",
        "runs on",
        "repeatability",
    ],
    group: Group::Run,
    fields: &[
        Field::table_feed("feed", "Feed")
            .example("6 ipm")
            .measured()
            .monotonic(),
        Field::choice(
            "by",
            "Delay is",
            &[
                choice("time", "given in seconds"),
                choice("stops", "found from stops at two feeds"),
            ],
        ),
        Field::quantity("delay", "Time from trip to stop", Kind::Time, &[&SECOND])
            .example("0.2 s")
            .preset("0.2 s")
            .range(0.0, 10.0, "the range of delays of a feed clutch")
            .hint("0.2 s to begin with; better from stops at two feeds.")
            .when(&[when("by", &["time"])])
            .measured()
            .monotonic(),
        Field::rows("at-feeds", "Stops at two feeds or more", AT_FEEDS, 2, 20)
            .example("2 ipm~6.240 in;20 ipm~6.300 in")
            .hint("Same dog, same direction, feeding toward larger figures.")
            .when(&[when("by", &["stops"])]),
        Field::quantity("coast", "Coasts on", Kind::Length, &[&INCH, &MM])
            .seldom()
            .example("0.005 in")
            .preset("0 in")
            .range(0.0, 50.0, "the range of coasting")
            .measured()
            .monotonic(),
        Field::quantity("wanted", "Stop wanted at", Kind::Length, &[&INCH, &MM])
            .example("6.250 in")
            .range(-5000.0, 5000.0, "the range of table travels")
            .hint("On the scale that you read; feeding toward larger figures.")
            .optional(),
        Field::rows("trials", "Trial stops", STOPS, 2, 60)
            .example("6.248 in;6.251 in;6.250 in;6.253 in")
            .hint("Same dog, same feed, same direction, two or more.")
            .optional(),
    ],
    results: &[
        Res::of("overrun", "Runs on past the trip", Kind::Length),
        Res::of("trip-at", "Trip must act at", Kind::Length),
        Res::of("mean", "Trial stops, mean", Kind::Length),
        Res::of("spread", "Trial stops, farthest apart", Kind::Length),
        Res::of("deviation", "Standard deviation of a stop", Kind::Length),
        Res::of("next-low", "Next stop, from", Kind::Length),
        Res::of("next-high", "Next stop, to", Kind::Length),
        Res::of("move-dog", "Move the dog by", Kind::Length),
        Res::of("delay-found", "Time from trip to stop", Kind::Time),
        Res::of("trip-found", "The dog trips at", Kind::Length),
    ],
    examples: &[
        &[
            ("feed", "6 ipm"),
            ("wanted", "6.250 in"),
            ("trials", "6.248 in;6.251 in;6.250 in;6.253 in"),
        ],
        &[("feed", "100 ipm"), ("delay", "0.3 s")],
        &[
            ("feed", "6 ipm"),
            ("by", "stops"),
            ("at-feeds", "2 ipm~6.240 in;20 ipm~6.300 in"),
            ("wanted", "6.250 in"),
        ],
    ],
    takes: &[],
    finds: None,
    figure,
};

static STOPS: &[Field] = &[
    Field::quantity("stop", "Stopped at", Kind::Length, &[&INCH, &MM])
        .range(-5000.0, 5000.0, "the range of table travels")
        .example("6.251 in"),
];

static AT_FEEDS: &[Field] = &[
    Field::table_feed("at-feed", "Feed").example("2 ipm"),
    Field::quantity("at-stop", "Stopped at", Kind::Length, &[&INCH, &MM])
        .range(-5000.0, 5000.0, "the range of table travels")
        .example("6.240 in"),
];

static MOTION: Source = Source::computed(
    "Uniform motion, s = v t",
    "straight line through the stops by least squares",
);
static NEXT: Source = Source::from_memory(
    "NIST/SEMATECH e-Handbook of Statistical Methods",
    "1.3.6.7.2, Student's t; prediction interval of one further value",
);
static TRADE: Source = Source::practice("Setting trip dogs");

/// Past this overrun a dog is off its plunger before the table stands: 1 in, common practice.
const LONG: Length = Length::from_inches(1.0);

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let (feed, coast): (FeedRate, Length) = (inp.get("feed")?, inp.get("coast")?);
    let from_stops = if inp.choice("by") == "stops" {
        Some(from_stops(inp)?)
    } else {
        None
    };
    let delay: Time = match from_stops {
        Some((delay, _)) => delay,
        None => inp.get("delay")?,
    };
    let wanted: Option<Length> = inp.opt("wanted");
    let past = overrun(feed, delay, coast);
    let found = trials(&inp.list("trials"));
    let mut a = inp.answer();
    a.line("overrun", past)
        .says("Feed \u{d7} time to let go, and what it coasts. It grows with the feed.");
    if let Some(wanted) = wanted {
        a.line("trip-at", wanted - past)
            .says("The stop wanted minus the overrun, feeding toward larger figures.");
    }
    if let Some(found) = found {
        tell(&mut a, found);
        if let Some(wanted) = wanted {
            let by = wanted - found.mean;
            a.line("move-dog", by)
                .signed()
                .says(if by.abs() < found.deviation {
                    "Less than a stop scatters by itself: leave the dog.".to_owned()
                } else {
                    format!("{} From the mean of the trials.", toward(by))
                });
        }
    }
    if let Some((delay, at)) = from_stops {
        a.line("delay-found", delay)
            .places(3, 3)
            .says("How much further it stops for more feed: one straight line through the stops.");
        a.line("trip-found", at - coast)
            .says("Where that line reaches zero feed, minus what it coasts.");
    }
    if let (Some(wanted), Some((_, at)), None) = (wanted, from_stops, found) {
        let by = wanted - past - (at - coast);
        a.line("move-dog", by).signed().says(format!(
            "{} From where it trips now to where it must.",
            toward(by)
        ));
    }
    a.work(|w| {
        if from_stops.is_some() {
            let formula = "t = how stops change \u{f7} how feeds change, least squares";
            let figures = match stops(inp).as_slice() {
                [(one, near), (other, far)] => format!(
                    "t = 60 \u{d7} ({} \u{2212} {}) \u{f7} ({} \u{2212} {}) = {}",
                    inp.num(*far),
                    inp.num(*near),
                    inp.num(*other),
                    inp.num(*one),
                    inp.show_to(delay, 3, 3)
                ),
                more => format!("{} stops: t = {}", more.len(), inp.show_to(delay, 3, 3)),
            };
            w.step("Delay from the stops", &[formula.into(), figures], &MOTION);
        }
        work(inp, w, (feed, delay, coast), past, found);
    });
    a.draw(|| draw(inp, past, wanted, found));
    a.stop("trust-trip", "Before you trust a trip", "Try it first with the feed at its slowest and by hand, then at each feed, both ways. At rapid it runs on farthest: never take a trip dog for a guard.");
    // a last bit is no step past the limit
    if past > LONG * (1.0 + 1e-9) {
        a.note(
            "long-overrun",
            "So long an overrun",
            format!("It runs on {} past the trip, longer than most dogs stay on their plunger: leave that much travel clear before anything solid, or feed slower.", inp.show(past)),
        );
    }
    a.note("trip-limit", "What limits it", "The spread of the delay, not its mean, limits how well a stop repeats. Work to a dead stop by hand where it matters.");
    a.source(&TRADE);
    Ok(a)
}

/// Which way the dog is to go.
fn toward(by: Length) -> &'static str {
    match by {
        by if by > Length::ZERO => "Toward larger figures.",
        by if by < Length::ZERO => "Toward smaller figures.",
        _ => "It stands right.",
    }
}

fn stops(inp: &Inputs) -> Vec<(FeedRate, Length)> {
    inp.rows("at-feeds")
        .iter()
        .filter_map(|cells| Some((cells.get("at-feed")?, cells.get("at-stop")?)))
        .collect()
}

/// Delay, and where a stop at no feed would be, from stops at several feeds.
fn from_stops(inp: &Inputs) -> Result<(Time, Length), Stop> {
    let refuse = |says: &str, cure: &str| Stop::fault("at-feeds", Reason::Conflict, says, cure);
    let (delay, at) = delay_of_stops(&stops(inp)).ok_or_else(|| {
        refuse(
            "all stops are at one feed",
            "give stops at two feeds, far apart",
        )
    })?;
    if delay < Time::ZERO {
        return Err(refuse(
            "it stops shorter at the faster feed",
            "look at the readings: feeding toward larger figures it stops further on",
        ));
    }
    Ok((delay, at))
}

fn tell(a: &mut Answer, found: Trials) {
    a.line("mean", found.mean).says("Of the trials.");
    a.line("spread", found.spread)
        .says("Largest minus smallest.");
    a.line("deviation", found.deviation)
        .says("With n \u{2212} 1.");
    a.line("next-low", found.mean - found.next)
        .says("95 times in 100, if the trials scatter evenly.");
    a.line("next-high", found.mean + found.next)
        .says("95 times in 100, if the trials scatter evenly.");
}

fn work(
    inp: &Inputs,
    w: &mut Work,
    entry: (FeedRate, Time, Length),
    past: Length,
    found: Option<Trials>,
) {
    let (feed, delay, coast) = entry;
    w.step(
        "Overrun",
        &[
            "s = F \u{d7} t \u{f7} 60 + coast".into(),
            format!(
                "s = {} \u{d7} {} \u{f7} 60 + {} = {}",
                inp.show(feed),
                inp.show_to(delay, 2, 2),
                inp.show(coast),
                inp.show(past)
            ),
        ],
        &MOTION,
    );
    if let Some(found) = found {
        w.step(
            "Range for the next stop",
            &[
                "mean \u{b1} t \u{d7} s \u{d7} \u{221a}(1 + 1/n)".into(),
                format!(
                    "{} \u{b1} {}, n = {}, s = {}",
                    inp.show(found.mean),
                    inp.show(found.next),
                    found.count,
                    inp.show_to(found.deviation, 5, 4)
                ),
            ],
            &NEXT,
        );
    }
}

fn draw(inp: &Inputs, past: Length, wanted: Option<Length>, found: Option<Trials>) -> Drawing {
    let mut d = Drawing::new("Table stop: the dog trips, the table runs on", false);
    d.path(
        Pen::Object,
        true,
        &[pt(0.0, 0.0), pt(120.0, 0.0), pt(120.0, 16.0), pt(0.0, 16.0)],
    );
    d.path(
        Pen::Object,
        true,
        &[pt(40.0, 0.0), pt(50.0, 0.0), pt(45.0, -12.0)],
    );
    d.path(
        Pen::Hidden,
        true,
        &[pt(80.0, 0.0), pt(90.0, 0.0), pt(85.0, -12.0)],
    );
    d.dimension(pt(45.0, -12.0), pt(85.0, -12.0), -2.0, inp.show(past));
    d.text(
        pt(45.0, 26.0),
        wanted.map_or_else(
            || "trips".into(),
            |wanted| format!("trips at {}", inp.num(wanted - past)),
        ),
    );
    let stops = found.map_or_else(
        || "stops".into(),
        |found| {
            format!(
                "stops at {} \u{b1} {}",
                inp.num(found.mean),
                inp.num(found.next)
            )
        },
    );
    d.text(pt(95.0, -48.0), stops);
    d
}
