//! What is looked at, and in which order? First what is safe without power, then slow, then fast, then warm, then fine.

use super::{Axis, Ladder, Test};
use crate::quantity::Kind;
use crate::standards::threads::acceptance_limits::{ACCEPTANCE_LIMITS, AcceptanceLimit};

/// A caution, before a step.
pub(super) struct Said {
    /// Kebab case.
    pub id: &'static str,
    /// The step can hurt or not be undone.
    pub stop: bool,
    /// "Before the first rapid".
    pub before: &'static str,
    /// What to mind.
    pub text: &'static str,
}

/// What a line asks for.
#[derive(Clone, PartialEq, Debug)]
pub(super) enum Asks {
    /// In order or not.
    Tick,
    /// A size of a kind, with what the plate says and the part of it that holds here.
    Size(Kind, Option<(String, String)>),
    /// A temperature, compared with the room's.
    Warmth,
}

impl Asks {
    /// The kind of what is measured; none where nothing is.
    pub(super) const fn kind(&self) -> Option<Kind> {
        match self {
            Self::Tick => None,
            Self::Size(kind, _) => Some(*kind),
            Self::Warmth => Some(Kind::Temperature),
        }
    }
}

/// The kind of what is measured at a line of a test; none where nothing is, or the line is no longer asked for.
pub(super) fn kind_at(test: &Test, id: &str) -> Option<Kind> {
    let parts = parts(test);
    let mut items = parts.iter().flat_map(|part| &part.items);
    items.find(|item| item.id == id)?.asks.kind()
}

/// One line.
pub(super) struct Item {
    pub id: String,
    pub label: String,
    pub hint: &'static str,
    pub asks: Asks,
    pub limit: Option<&'static AcceptanceLimit>,
    pub caution: Option<&'static Said>,
}

/// Lines that belong together.
pub(super) struct Part {
    pub id: String,
    pub title: String,
    pub cautions: &'static [Said],
    pub items: Vec<Item>,
}

/// The id of the line that holds the room's temperature.
pub(super) const ROOM: &str = "run.room";

const LOCK_OUT: Said = Said {
    id: "lock-out",
    stop: true,
    before: "Before hands go in",
    text: "Lock the machine out at the disconnect (isolator), keep the key, and try the switch before hands go near belts, gears or a gearbox. Wiring is work for a licensed person; your local code and the machine's own plate come first.",
};
const LIFT: Said = Said {
    id: "lift",
    stop: true,
    before: "Before you lift a vise, an overarm or an arbor support",
    text: "Rated gear, the weight known, nobody under it. An overarm that is drawn out past its clamp falls.",
};
const FIRST_FEED: Said = Said {
    id: "first-feed",
    stop: true,
    before: "Before the first feed",
    text: "No cutter in the spindle. Clear the way at both ends, loosen the clamp of this axis, set the trip dogs well inside the stops, \
           take the handles out of gear. Begin with the slowest feed and a hand at the stop.",
};
const FIRST_RAPID: Said = Said {
    id: "first-rapid",
    stop: true,
    before: "Before the first rapid",
    text: "Only after the feeds run and the trips stop them. A handle left in gear spins and breaks wrists: take it out of gear or off. \
           Start from the middle, in short jogs, away from people, with a hand at the stop.",
};
const ONTO_TRIP: Said = Said {
    id: "onto-trip",
    stop: true,
    before: "Before you run onto a trip",
    text: "Assume that it does not work until it has: slowest feed, room behind it, a hand on the lever.",
};
const TURNING: Said = Said {
    id: "turning",
    stop: true,
    before: "Before you switch the spindle on",
    text: "Guards on, arbor nut and drawbar tight, key and wrench out, sleeves and hair back. Change gears only when it stands, unless the plate says otherwise.",
};
const HOT: Said = Said {
    id: "hot",
    stop: true,
    before: "Before you touch what has run",
    text: "Stop and lock out first. Bearings, motor and gearboxes can burn: bring the back of the hand near before a finger, or use a thermometer that needs no touch.",
};
const SHORT: Said = Said {
    id: "short",
    stop: false,
    before: "About the limits",
    text: "Limits marked customary are from memory and were not checked against the standard: they give no pass and no fail. Do not scale a limit down to a length much shorter than its own. Write the length beside the reading: 0.02 mm / 300 mm.",
};
const LOCK_SPINDLE: Said = Said {
    id: "lock-spindle",
    stop: true,
    before: "Before the indicator goes on",
    text: "Lock out. Turn the spindle by hand; an indicator never meets a spindle under power.",
};

static BEFORE: &[(&str, &str, &str)] = &[
    (
        "lock-out",
        "Lock-out holds: the switch is dead when it is locked",
        "",
    ),
    (
        "wiring",
        "Wiring, ground (earth) and fuses seen by a licensed person",
        "The frame is grounded; the motor is fused for its plate.",
    ),
    (
        "turns",
        "Motor turns the right way",
        "One short touch of the switch, belt off where it can be.",
    ),
    ("stop-button", "Stop works from where the hand is", ""),
    ("guards", "Guards on: belts, gears, motor fan", ""),
    (
        "oil",
        "Oil in every gearbox and on every way",
        "Levels at their marks, one-shot or cups filled.",
    ),
    ("belts", "Belts or chain: tight, in line, whole", ""),
    (
        "by-hand",
        "Spindle and every axis turn by hand",
        "A tight spot by hand is a broken tooth under power.",
    ),
];
static SLOW: &[(&str, &str, &str)] = &[
    (
        "hand",
        "Whole travel by hand, no tight spot",
        "Clamps loose.",
    ),
    ("gib", "Gib: no rock, no drag", ""),
    ("clamp", "Clamp holds, and lets go", ""),
];
static LEAKS: &[(&str, &str, &str)] = &[
    (
        "leak-column",
        "Column gearbox dry outside",
        "Wipe all dry before the run, look again after it.",
    ),
    ("leak-feed", "Feed gearbox dry outside", ""),
    ("leak-knee", "Knee and saddle dry outside", ""),
    ("leak-nose", "Spindle nose dry", ""),
    ("leak-coolant", "Coolant stays where it belongs", ""),
];
static WARM: &[(&str, &str, &str)] = &[
    (
        "nose",
        "Spindle nose, after the run",
        "Write speed and minutes of the run in the note.",
    ),
    ("column", "Column gearbox, after the run", ""),
    ("feed", "Feed gearbox, after the run", ""),
    ("motor", "Motor, after the run", ""),
];

/// All lines of a test, in order.
pub(super) fn parts(test: &Test) -> Vec<Part> {
    let mut parts = vec![Part {
        id: "before".into(),
        title: "Before power".into(),
        cautions: &[LOCK_OUT],
        items: ticks("before.", BEFORE),
    }];
    parts.push(Part {
        id: "spindle".into(),
        title: "Spindle".into(),
        cautions: &[TURNING],
        items: ladder(&test.plate.speeds, test.ladder)
            .into_iter()
            .map(|step| Item {
                label: if step.ends_with(|c: char| c.is_ascii_digit()) {
                    format!("At {step} rpm")
                } else {
                    format!("At {step}")
                },
                hint: "",
                asks: Asks::Size(Kind::RotationalSpeed, Some((step.to_owned(), "1".into()))),
                ..tick(format!("spindle.{step}"), "", "")
            })
            .collect(),
    });
    parts.extend(test.axes.iter().map(|axis| axis_part(test, axis)));
    parts.push(run_part());
    parts.push(align_part());
    parts
}

fn axis_part(test: &Test, axis: &Axis) -> Part {
    let start = format!("a{}.", axis.key);
    let mut items = ticks(&start, SLOW);
    items.push(Item {
        asks: Asks::Size(Kind::Length, None),
        ..tick(
            format!("{start}slack"),
            "Backlash of screw and nut",
            "Turn of the dial, one way and back, before the indicator moves.",
        )
    });
    for (way, name) in axis.ways.iter().enumerate() {
        for (at, step) in ladder(&test.plate.feeds, test.ladder)
            .into_iter()
            .enumerate()
        {
            items.push(Item {
                label: format!("Feed {step}, {name}"),
                asks: Asks::Size(Kind::FeedRate, Some((step.to_owned(), axis.share.clone()))),
                caution: (at == 0 && way == 0).then_some(&FIRST_FEED),
                ..tick(format!("{start}{way}.f.{step}"), "", FEED_HINT)
            });
        }
    }
    for (way, name) in axis.ways.iter().enumerate() {
        items.push(Item {
            caution: (way == 0).then_some(&ONTO_TRIP),
            ..tick(
                format!("{start}{way}.trip-feed"),
                &format!("Trip stops a feed, {name}"),
                "",
            )
        });
    }
    items.push(Item {
        asks: Asks::Size(Kind::Length, None),
        ..tick(
            format!("{start}stops"),
            "Five stops on the trip, largest minus smallest",
            "All at the same feed.",
        )
    });
    for (way, name) in axis.ways.iter().enumerate() {
        items.push(Item {
            asks: Asks::Size(
                Kind::FeedRate,
                Some((test.plate.rapid.clone(), axis.share.clone())),
            ),
            caution: (way == 0).then_some(&FIRST_RAPID),
            ..tick(format!("{start}{way}.rapid"), &format!("Rapid, {name}"), "")
        });
        items.push(tick(
            format!("{start}{way}.trip-rapid"),
            &format!("Trip stops the rapid, {name}"),
            "Where the machine has one for it.",
        ));
    }
    Part {
        id: format!("a{}", axis.key),
        title: axis.name.clone(),
        cautions: &[],
        items,
    }
}

const FEED_HINT: &str = "";

fn run_part() -> Part {
    let warm = |id: &str, label: &str, hint: &'static str, asks: Asks| Item {
        asks,
        ..tick(format!("run.{id}"), label, hint)
    };
    let mut items = vec![warm(
        "room",
        "Room",
        "The others are shown against it.",
        Asks::Size(Kind::Temperature, None),
    )];
    items.extend(
        WARM.iter()
            .map(|(id, label, hint)| warm(id, label, hint, Asks::Warmth)),
    );
    items.extend(ticks("run.", LEAKS));
    Part {
        id: "run".into(),
        title: "After a run: warm and dry".into(),
        cautions: &[HOT],
        items,
    }
}

fn align_part() -> Part {
    Part {
        id: "align".into(),
        title: "Alignment".into(),
        cautions: &[LIFT, LOCK_SPINDLE, SHORT],
        items: ACCEPTANCE_LIMITS
            .iter()
            .map(|row| Item {
                asks: Asks::Size(Kind::Length, None),
                limit: Some(row),
                ..tick(format!("align.{}", row.key), row.test, "")
            })
            .collect(),
    }
}

fn ticks(start: &str, rows: &'static [(&'static str, &'static str, &'static str)]) -> Vec<Item> {
    rows.iter()
        .map(|(id, label, hint)| tick(format!("{start}{id}"), label, hint))
        .collect()
}

fn tick(id: String, label: &str, hint: &'static str) -> Item {
    Item {
        id,
        label: label.into(),
        hint,
        asks: Asks::Tick,
        limit: None,
        caution: None,
    }
}

/// The steps that are tried, each once.
fn ladder(steps: &[String], ladder: Ladder) -> Vec<&str> {
    let mut all: Vec<&str> = Vec::new();
    for step in steps {
        if !all.contains(&step.as_str()) {
            all.push(step);
        }
    }
    match (ladder, all.as_slice()) {
        (Ladder::Three, [first, .., last]) if all.len() > 3 => {
            let middle = all.get(all.len() / 2).copied();
            [Some(*first), middle, Some(*last)]
                .into_iter()
                .flatten()
                .collect()
        }
        _ => all,
    }
}

/// What a line that is no longer asked for was about, from its id.
pub(super) fn label_of(test: &Test, id: &str) -> String {
    let known = |start: &str, rest: &str, rows: &[(&str, &str, &str)]| {
        rows.iter()
            .find(|row| row.0 == rest)
            .map(|row| format!("{start}: {}", row.1))
    };
    let (part, rest) = id.split_once('.').unwrap_or(("", id));
    let axis = part
        .strip_prefix('a')
        .and_then(|key| key.parse::<u32>().ok());
    let Some(key) = axis else {
        return match part {
            "spindle" => format!("Spindle at {rest}"),
            _ => id.to_owned(),
        };
    };
    let axis = test.axes.iter().find(|axis| axis.key == key);
    let name = axis.map_or_else(|| format!("Axis {key}, removed"), |axis| axis.name.clone());
    if let Some(label) = known(&name, rest, SLOW) {
        return label;
    }
    let (way, what) = rest.split_once('.').unwrap_or(("", rest));
    let way = match (axis.map(|axis| &axis.ways), way) {
        (Some([one, _]), "0") => one.as_str(),
        (Some([_, other]), "1") => other.as_str(),
        (None, "0") => "one way",
        (None, "1") => "the other way",
        _ => "",
    };
    let what = match what.strip_prefix("f.") {
        Some(step) => format!("feed {step}"),
        None => what.replace('-', " "),
    };
    if way.is_empty() {
        format!("{name}: {what}")
    } else {
        format!("{name}: {what}, {way}")
    }
}
