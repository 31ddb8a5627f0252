//! How far in does the compound go for a thread, in how many passes, and which depth convention is meant?

use crate::cutting::*;
use crate::machine::MOST_WHEELS;
use crate::quantity::units::*;
use crate::quantity::{Angle, Count, Kind, Length, Number, Pitch, RotationalSpeed, Time, decimal};
use crate::record::WHEEL;
use crate::sheet::*;

mod gears;

static INFEED_TABLE: Source = Source::read(
    "Table of compound infeed at 29 degrees, American (National) 60-degree external thread",
    "infeed = depth / cos(angle)",
);
static DEPTHS: Source = Source::computed(
    "ASME B1.1 and older American National charts",
    "depth 3/4, 17/24 or 11/16 of the sharp height 0.8660 P",
);
static AREAS: Source = Source::computed(
    "Geometry of a V",
    "the area grows with the square of the infeed",
);
static DIAL: Source = Source::computed(
    "Geometry of leadscrew and thread dial",
    "k W p / L a whole number of leads",
);
static CARRIAGE: Source =
    Source::practice("Single-point threading toward a shoulder: 8 to 10 in/min of carriage");
static FIRST_PASS: Source =
    Source::practice("A first threading pass of at most 0.025 in along the compound");
static LEAD: Source = Source::read(
    "TM 1-420 Lathes, War Department, 1940",
    "p. 81, pitch = lead / starts",
);

pub(super) static SHEET: Sheet = Sheet {
    id: "thread-infeed",
    revision: 2,
    title: "Infeed for cutting a thread",
    question: "How far do I feed the compound (top slide), and in how many passes?",
    aside: "pitch, compound angle",
    words: &[
        "threading",
        "single point",
        "compound angle",
        "29 degrees",
        "29 1/2",
        "thread depth",
        "passes",
        "lathe",
        "multiple start",
        "lead",
        "half nut",
        "thread dial",
        "chasing dial",
        "leadscrew",
        "change gears",
        "change wheels",
        "top slide",
        "compound",
        "half nuts",
        "first pass",
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: &[&[
        ("pitch", "16 tpi"),
        ("angle", "29 deg"),
        ("rpm", "80"),
        ("length", "1 in"),
        ("leadscrew", "8 tpi"),
    ]],
    takes: &["pitch"],
    finds: None,
    figure,
};

static FIELDS: &[Field] = &[
    Field::quantity(
        "pitch",
        "Pitch or threads per inch",
        Kind::Pitch,
        &[&TPI, &PITCH_MM, &PITCH_INCH],
    )
    .example("16 tpi")
    .hint("Of the thread; with several starts the lead is the pitch times the starts.")
    .range(0.2, 26.0, "threads that a lathe cuts"),
    Field::choice(
        "depth",
        "Depth by",
        &[
            choice("unr", "Unified, rounded root, 2003 and later: 0.5954 P"),
            choice("unified", "Unified to 1989: 0.6134 P"),
            choice("national", "American National, older charts: 0.6495 P"),
        ],
    ),
    Field::quantity(
        "angle",
        "Compound (top slide) set over from square",
        Kind::Angle,
        &[&DEGREE],
    )
    .preset("29.5 deg")
    .example("29 deg")
    .hint("29, 29 1/2 or 30; 0 for straight in.")
    .range(
        0.0,
        30.0,
        "beyond half of the thread's 60 degrees the tool scrapes the trailing flank",
    ),
    Field::count("passes", "Passes")
        .example("8")
        .hint("Empty: by the pitch, 8 or as many as keep the first one to 0.025 in.")
        .range(1.0, 60.0, "at most 60 passes are listed")
        .optional(),
    Field::count("starts", "Starts")
        .seldom()
        .preset("1")
        .example("2")
        .range(1.0, 12.0, "starts of threads"),
    Field::quantity("rpm", "Spindle speed", Kind::RotationalSpeed, &[&RPM])
        .seldom()
        .example("80")
        .hint("For the time that is left before the shoulder.")
        .range(1.0, 10_000.0, "spindle speeds of lathes")
        .optional(),
    Field::length("length", "Length of the thread")
        .seldom()
        .example("1 in")
        .range_in(0.01, 100.0, "lengths of lathe beds")
        .optional(),
    Field::quantity(
        "leadscrew",
        "Leadscrew",
        Kind::Pitch,
        &[&TPI, &PITCH_MM, &PITCH_INCH],
    )
    .seldom()
    .example("8 tpi")
    .hint("For the thread dial and the change gears.")
    .range(0.5, 26.0, "leadscrews of lathes")
    .filled_from_shop(ShopItem::Leadscrew)
    .optional(),
    Field::rows(
        "wheels",
        "Change gears (change wheels) of the lathe",
        WHEEL,
        2,
        MOST_WHEELS,
    )
    .seldom()
    .example("20;24;28;32;36;40;44;48;56;64;72;80;100;127")
    .hint("Teeth, one a row; with the leadscrew, for the train that cuts the lead.")
    .filled_from_shop(ShopItem::ChangeWheels)
    .optional(),
    Field::number("fixed", "Leadscrew turns with 1:1 gears")
        .seldom()
        .example("1/2")
        .preset("1")
        .range(0.001, 1000.0, "ratios of gearboxes and stud gears")
        .hint("For one spindle turn: 1 with no gearbox and equal stud gears."),
    Field::count("wheel", "Teeth of the thread dial's wheel")
        .seldom()
        .preset("32")
        .example("32")
        .range(4.0, 120.0, "wheels of thread dials")
        .filled_from_shop(ShopItem::ThreadDialWheel),
    Field::count("lines", "Lines on the thread dial")
        .seldom()
        .preset("8")
        .example("8")
        .hint("Numbered and plain ones together.")
        .range(1.0, 60.0, "lines on a dial")
        .filled_from_shop(ShopItem::ThreadDialLines),
];

static RESULTS: &[Res] = &[
    Res::of(
        "infeed",
        "Feed the compound (top slide) in by",
        Kind::Length,
    ),
    Res::of("depth", "Depth of the thread", Kind::Length),
    Res::stepped("pass-count", "Passes", Kind::Number),
    Res::of("first", "First pass", Kind::Length),
    Res::of("last", "Last pass", Kind::Length),
    Res::of("lead", "Lead: gear the lathe for", Kind::Pitch),
    Res::of("carriage", "Carriage runs at", Kind::FeedRate),
    Res::of("time", "Time for one pass", Kind::Time),
    Res::words("dial", "Close the half nuts at"),
    Res::words("train", "Change gears (change wheels)"),
    Res::stepped("cuts", "They cut the lead", Kind::Pitch),
    Res::stepped("over-length", "Off over the length", Kind::Length),
    Res::words("fits", "On the quadrant"),
];

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let pitch: Pitch = inp.get("pitch")?;
    let angle: Angle = inp.get("angle")?;
    let own: Option<Count> = inp.opt("passes");
    let starts: Count = inp.get("starts")?;
    let depth = match inp.choice("depth") {
        "unified" => ThreadDepth::UnifiedTo1989,
        "national" => ThreadDepth::AmericanNational,
        _ => ThreadDepth::Unr2003,
    };
    let infeed_by = |depth| {
        compound_infeed(pitch, depth, angle).map_err(|fault| {
            inp.out_of_range(
                "angle",
                fault.to_string(),
                "set the compound to 29 or 29-1/2",
            )
        })
    };
    let infeed = infeed_by(depth)?;
    let (least, most) = (
        infeed_by(ThreadDepth::Unr2003)?,
        infeed_by(ThreadDepth::AmericanNational)?,
    );
    let passes = own.map_or_else(|| passes_for(infeed), |own| own.get() as u16);
    let list = equal_area_passes(infeed, passes);
    let mut a = inp.answer();
    a.line("infeed", infeed)
        .says("Depth / cos(angle), from the first touch.")
        .band(least, most, "the published depth conventions");
    a.line("depth", pitch.length() * depth.pitches())
        .says("On the radius, square to the work, by the convention chosen.")
        .band(
            pitch.length() * ThreadDepth::Unr2003.pitches(),
            pitch.length() * ThreadDepth::AmericanNational.pitches(),
            "the published depth conventions",
        );
    let first = list.first().copied().unwrap_or(infeed);
    let before = list.iter().rev().nth(1).copied().unwrap_or(Length::ZERO);
    a.line("pass-count", Number::of(f64::from(passes)))
        .places(0, 0)
        .says(if own.is_some() {
            "As you gave them."
        } else {
            "By the pitch: 8, or as many as keep the first one to 0.025 in along the compound; on a light lathe take more."
        });
    a.line("first", first).says("Total / \u{221a}passes.");
    a.line("last", infeed - before)
        .says("What is left for the last of passes with equal area.");
    let lead = Pitch::from_mm(pitch.mm() * starts.get());
    a.line("lead", lead)
        .says("Pitch \u{d7} starts; the depth follows the pitch, the gearing the lead.");
    let half_nuts = match inp.opt::<Pitch>("leadscrew") {
        Some(leadscrew) => dial(inp, &mut a, lead, leadscrew)?,
        None => true,
    };
    let rpm: Option<RotationalSpeed> = inp.opt("rpm");
    if let Some(rpm) = rpm {
        carriage(inp, &mut a, lead, rpm, half_nuts)?;
    }
    first_pass(inp, &mut a, infeed, first);
    let table = a.table(
        "passes",
        "Compound reading after each pass",
        &["Pass", "Reading", "This pass"],
    );
    let mut last = Length::ZERO;
    for (number, reading) in (1..).zip(&list) {
        table.row(vec![
            Value::of(Count::of(f64::from(number))),
            Value::of(*reading),
            Value::of(*reading - last),
        ]);
        last = *reading;
    }
    table.note("Equal areas of chip; spring passes at the last reading are extra.");
    a.work(|w| {
        let p = inp.num_to(pitch.length(), 5, 4);
        w.step(
            "Depth",
            &[
                format!("h = {} P", decimal(depth.pitches(), &NUMBER, 4)),
                format!(
                    "h = {} \u{d7} {p} = {}",
                    decimal(depth.pitches(), &NUMBER, 4),
                    inp.show(pitch.length() * depth.pitches())
                ),
            ],
            &DEPTHS,
        );
        w.step(
            "Along the compound",
            &[
                "x = h / cos(angle)".into(),
                format!(
                    "x = {} / cos({}) = {}",
                    inp.num_to(pitch.length() * depth.pitches(), 5, 4),
                    inp.show_to(angle, 1, 1),
                    inp.show(infeed)
                ),
            ],
            &INFEED_TABLE,
        );
        w.step(
            "Passes",
            &[
                "x after pass i = x \u{221a}(i / passes)".into(),
                format!(
                    "x1 = {} \u{d7} \u{221a}(1 / {passes}) = {}",
                    inp.num(infeed),
                    inp.show(first)
                ),
            ],
            &AREAS,
        );
        if starts.get() > 1.0 {
            w.step(
                "Lead",
                &[
                    "lead = pitch \u{d7} starts".into(),
                    format!(
                        "lead = {p} \u{d7} {} = {}",
                        inp.num(starts),
                        inp.show_to(lead.length(), 5, 4)
                    ),
                ],
                &LEAD,
            );
        }
    });
    a.source(&DEPTHS);
    a.note("depth-basis", "About the depth", "The depth is a start. Finish by the pitch diameter: ring gauge, thread micrometer or three wires.");
    if half_nuts {
        a.stop("half-nuts", "Before you engage the half nuts", "Know where you will let go: no shoulder, chuck or tailstock in the way, and a speed that leaves time to act.");
    } else {
        a.stop("half-nuts-stay", "Before you start the spindle", "The half nuts stay closed from the first pass to the last. Know where you will stop the spindle and draw the tool out; then reverse, with the tool clear. No shoulder, chuck or tailstock in the way, lowest speed.");
    }
    a.draw(|| {
        groove(
            pitch,
            depth,
            angle,
            [
                inp.show_to(pitch.length(), 5, 4),
                inp.show(pitch.length() * depth.pitches()),
                inp.show_to(angle, 1, 1),
            ],
        )
    });
    Ok(a)
}

/// Where the half nuts may be closed; false where they have to stay closed.
fn dial(inp: &Inputs, a: &mut Answer, lead: Pitch, leadscrew: Pitch) -> Result<bool, Stop> {
    let (wheel, lines): (Count, Count) = (inp.get("wheel")?, inp.get("lines")?);
    let found = dial_lines(lead, leadscrew, wheel.get() as u32, lines.get() as u32);
    let text = match found {
        Some(1) => "any line of the dial".to_owned(),
        Some(every) if f64::from(every) >= lines.get() => "the same line each time".to_owned(),
        Some(every) => format!(
            "every {every}{} line, counted from the first one used",
            ordinal(every)
        ),
        None => "no line: keep them closed and reverse the spindle".to_owned(),
    };
    a.words("dial", text)
        .says("The carriage has to move a whole number of leads between lines.");
    a.source(&DIAL);
    gears::gears(inp, a, lead, leadscrew)?;
    Ok(found.is_some())
}

/// How fast the carriage runs, and how long a pass lasts.
fn carriage(
    inp: &Inputs,
    a: &mut Answer,
    lead: Pitch,
    rpm: RotationalSpeed,
    half_nuts: bool,
) -> Result<(), Stop> {
    let fault = |fault: CutFault| inp.out_of_range("pitch", fault.to_string(), "give the pitch");
    let speed = carriage_speed(lead, rpm).map_err(fault)?;
    a.line("carriage", speed)
        .says("Lead \u{d7} spindle speed. Toward a shoulder 8 to 10 in/min is brisk.");
    if let Some(length) = inp.opt::<Length>("length") {
        let time: Time = travel_time(length, speed).map_err(fault)?;
        a.line("time", time).places(1, 1).says(if half_nuts {
            "Length / (lead \u{d7} spindle speed): time to open the half nuts."
        } else {
            "Length / (lead \u{d7} spindle speed): time to stop the spindle."
        });
        a.work(|w| {
            w.step(
                "Time for one pass in seconds",
                &[
                    "t = 60 \u{d7} L / (lead \u{d7} n)".into(),
                    format!(
                        "t = 60 \u{d7} {} / ({} \u{d7} {}) = {}",
                        inp.num(length),
                        inp.num_to(lead.length(), 5, 4),
                        inp.num(rpm),
                        inp.show_to(time, 1, 1)
                    ),
                ],
                &CARRIAGE,
            );
        });
    }
    a.source(&CARRIAGE);
    // a last bit is no step past the limit
    if speed.in_per_min() > CARRIAGE_MOST_IN_PER_MIN * (1.0 + 1e-9) {
        a.stop("fast-carriage", "Before you thread toward a shoulder", format!("The carriage runs at {}: a hand is late on it. Take a slower spindle, 8 to 10 in/min at most, or a relief groove wide enough to stop in.", inp.show_to(speed, 1, 0)));
    }
    Ok(())
}

/// A first pass that is too much for a light lathe.
fn first_pass(inp: &Inputs, a: &mut Answer, infeed: Length, first: Length) {
    a.source(&FIRST_PASS);
    let most = Length::from_inches(FIRST_PASS_MOST_IN);
    if first <= most * (1.0 + 1e-9) {
        return;
    }
    let passes = passes_for(infeed);
    let kept = infeed * (1.0 / libm::sqrt(f64::from(passes)));
    let cure = if kept <= most * (1.0 + 1e-9) {
        format!("Take {passes} passes or more.")
    } else {
        "Rough the groove out with a narrow square tool first, or feed lighter by hand and take more passes than the 60 listed.".to_owned()
    };
    a.stop("heavy-first-pass", "Before the first pass", format!("{} along the compound is heavy: more than {} tears the thread or stalls a light lathe. {cure}", inp.show(first), inp.show_to(most, 3, 2)));
}

const fn ordinal(n: u32) -> &'static str {
    match (n % 10, n % 100) {
        (_, 11..=13) => "th",
        (1, _) => "st",
        (2, _) => "nd",
        (3, _) => "rd",
        _ => "th",
    }
}

/// Three grooves of a 60-degree thread, with pitch, depth and the compound's direction.
fn groove(pitch: Pitch, depth: ThreadDepth, angle: Angle, texts: [String; 3]) -> Drawing {
    let [p_text, h_text, angle_text] = texts;
    let (p, h) = (pitch.mm(), pitch.mm() * depth.pitches());
    let half = h * 0.577_350_269_189_625_8;
    let crest = p / 2.0 - half;
    let mut draw = Drawing::new(
        format!("Thread of pitch {p_text}, {h_text} deep, compound at {angle_text}"),
        true,
    );
    let mut profile = Vec::new();
    for turn in 0..3 {
        let x = f64::from(turn) * p;
        profile.push(pt(x - crest, 0.0));
        profile.push(pt(x + crest, 0.0));
        profile.push(pt(x + p / 2.0, -h));
    }
    profile.push(pt(3.0 * p - crest, 0.0));
    draw.path(Pen::Object, false, &profile);
    profile.push(pt(3.0 * p - crest, -2.0 * h));
    profile.push(pt(-crest, -2.0 * h));
    draw.hatch(&profile);
    draw.dimension(pt(p / 2.0, -h), pt(1.5 * p, -h), -2.0, p_text);
    draw.dimension(
        pt(3.0 * p - crest, -h),
        pt(3.0 * p - crest, 0.0),
        -2.0,
        h_text,
    );
    let (sin, cos) = (libm::sin(angle.radians()), libm::cos(angle.radians()));
    draw.path(
        Pen::Mark,
        false,
        &[
            pt(p / 2.0, -h),
            pt(p / 2.0 + 2.2 * h * sin, -h + 2.2 * h * cos),
        ],
    );
    draw.text(pt(p / 2.0 + 2.6 * h * sin, -h + 2.7 * h * cos), angle_text);
    draw
}
