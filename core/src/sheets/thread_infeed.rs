//! How far in does the compound go for a thread, in how many passes, and which depth convention is meant?

use crate::cutting::*;
use crate::machine::MOST_WHEELS;
use crate::quantity::units::*;
use crate::quantity::{Angle, Count, Kind, Length, Pitch, RotationalSpeed, Time, decimal};
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
static LEAD: Source = Source::read(
    "TM 1-420 Lathes, War Department, 1940",
    "p. 81, pitch = lead / starts",
);

pub(super) static SHEET: Sheet = Sheet {
    id: "thread-infeed",
    revision: 1,
    title: "Infeed for cutting a thread",
    question: "How far do I feed the compound, and in which passes?",
    aside: "pitch, compound angle, passes",
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
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: &[&[
        ("pitch", "16 tpi"),
        ("angle", "29 deg"),
        ("passes", "8"),
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
        "Compound set over from square",
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
        .preset("8")
        .example("8")
        .range(1.0, 60.0, "what patience bears"),
    Field::count("starts", "Starts")
        .seldom()
        .preset("1")
        .example("2")
        .range(1.0, 12.0, "what thread dials divide"),
    Field::quantity("rpm", "Spindle speed", Kind::RotationalSpeed, &[&RPM])
        .seldom()
        .example("80")
        .hint("For the time that is left before the shoulder.")
        .range(1.0, 10_000.0, "what a lathe turns")
        .optional(),
    Field::length("length", "Length of the thread")
        .seldom()
        .example("1 in")
        .range_in(0.01, 100.0, "what a bed bears")
        .optional(),
    Field::quantity(
        "leadscrew",
        "Leadscrew",
        Kind::Pitch,
        &[&TPI, &PITCH_MM, &PITCH_INCH],
    )
    .seldom()
    .example("8 tpi")
    .hint("For the thread dial and the change wheels.")
    .range(0.5, 26.0, "leadscrews of lathes")
    .filled_from_shop(ShopItem::Leadscrew)
    .optional(),
    Field::rows(
        "wheels",
        "Change wheels of the lathe",
        WHEEL,
        2,
        MOST_WHEELS,
    )
    .seldom()
    .example("20;24;28;32;36;40;44;48;56;64;72;80;100;127")
    .hint("Teeth, one a row; with the leadscrew, for the train that cuts the lead.")
    .filled_from_shop(ShopItem::ChangeWheels)
    .optional(),
    Field::number("fixed", "Leadscrew turns with 1:1 wheels")
        .seldom()
        .example("1/2")
        .preset("1")
        .range(0.001, 1000.0, "what a gear box or stud gear gives")
        .hint("For one spindle turn: 1 with no gear box and equal stud gears."),
    Field::count("wheel", "Teeth of the dial's wheel")
        .seldom()
        .preset("32")
        .example("32")
        .range(4.0, 120.0, "wheels of thread dials")
        .filled_from_shop(ShopItem::ThreadDialWheel),
    Field::count("lines", "Lines on the dial")
        .seldom()
        .preset("8")
        .example("8")
        .hint("Numbered and plain ones together.")
        .range(1.0, 60.0, "lines on a dial")
        .filled_from_shop(ShopItem::ThreadDialLines),
];

static RESULTS: &[Res] = &[
    Res::of("infeed", "Feed the compound in by", Kind::Length),
    Res::of("depth", "Depth of the thread", Kind::Length),
    Res::of("first", "First pass", Kind::Length),
    Res::of("last", "Last pass", Kind::Length),
    Res::of("lead", "Lead: gear the lathe for", Kind::Pitch),
    Res::of("time", "Time for one pass", Kind::Time),
    Res::words("dial", "Close the half nuts at"),
    Res::words("train", "Change wheels"),
    Res::stepped("cuts", "They cut the lead", Kind::Pitch),
    Res::stepped("over-length", "Off over the length", Kind::Length),
    Res::words("fits", "On the quadrant"),
];

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let pitch: Pitch = inp.get("pitch")?;
    let angle: Angle = inp.get("angle")?;
    let passes: Count = inp.get("passes")?;
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
                "set the compound to 29 or 29 1/2",
            )
        })
    };
    let infeed = infeed_by(depth)?;
    let (least, most) = (
        infeed_by(ThreadDepth::Unr2003)?,
        infeed_by(ThreadDepth::AmericanNational)?,
    );
    let list = equal_area_passes(infeed, passes.get() as u16);
    let mut a = inp.answer();
    a.line("infeed", infeed)
        .says("Depth / cos(angle), from the first touch.")
        .band(least, most, "the depth conventions in print");
    a.line("depth", pitch.length() * depth.pitches())
        .says("On the radius, square to the work, by the convention chosen.")
        .band(
            pitch.length() * ThreadDepth::Unr2003.pitches(),
            pitch.length() * ThreadDepth::AmericanNational.pitches(),
            "the depth conventions in print",
        );
    let first = list.first().copied().unwrap_or(infeed);
    let before = list.iter().rev().nth(1).copied().unwrap_or(Length::ZERO);
    a.line("first", first).says("Total / \u{221a}passes.");
    a.line("last", infeed - before)
        .says("What is left for the last of passes with equal area.");
    let lead = Pitch::from_mm(pitch.mm() * starts.get());
    a.line("lead", lead)
        .says("Pitch \u{d7} starts; the depth follows the pitch, the gearing the lead.");
    if let (Some(rpm), Some(length)) = (
        inp.opt::<RotationalSpeed>("rpm"),
        inp.opt::<Length>("length"),
    ) {
        let time = Time::from_minutes(length / lead.length() / rpm.rpm());
        a.line("time", time)
            .says("Length / (lead \u{d7} spindle speed): time to open the half nuts.");
    }
    if let Some(leadscrew) = inp.opt::<Pitch>("leadscrew") {
        let (wheel, lines): (Count, Count) = (inp.get("wheel")?, inp.get("lines")?);
        let text = match dial_lines(lead, leadscrew, wheel.get() as u32, lines.get() as u32) {
            Some(1) => "Any line of the dial.".to_owned(),
            Some(every) if f64::from(every) >= lines.get() => "The same line each time.".to_owned(),
            Some(every) => format!(
                "Every {every}{} line, counted from the first one used.",
                ordinal(every)
            ),
            None => "No line: keep the half nuts closed and reverse the spindle.".to_owned(),
        };
        a.words("dial", text)
            .says("The carriage has to move a whole number of leads between lines.");
        a.source(&DIAL);
        gears::gears(inp, &mut a, lead, leadscrew)?;
    }
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
        let p = inp.show_to(pitch.length(), 5, 4);
        w.step(
            "Depth",
            &[
                format!("h = {} P", decimal(depth.pitches(), &NUMBER, 4)),
                format!(
                    "P = {p}, h = {}",
                    inp.show(pitch.length() * depth.pitches())
                ),
            ],
            &DEPTHS,
        );
        w.step(
            "Along the compound",
            &[
                "x = h / cos(angle)".into(),
                format!("x = {}", inp.show(infeed)),
            ],
            &INFEED_TABLE,
        );
        w.step(
            "Passes",
            &[
                "x after pass i = x \u{221a}(i / passes)".into(),
                format!("first {}", inp.show(first)),
            ],
            &AREAS,
        );
        if starts.get() > 1.0 {
            w.step(
                "Lead",
                &[
                    "lead = pitch \u{d7} starts".into(),
                    format!("lead = {}", inp.show_to(lead.length(), 5, 4)),
                ],
                &LEAD,
            );
        }
    });
    a.source(&DEPTHS);
    a.note("depth-basis", "About the depth", "The depth is a start. Finish by the pitch diameter: ring gauge, thread micrometer or three wires.");
    a.stop("half-nuts", "Before you engage the half nuts", "Know where you will let go: no shoulder, chuck or tailstock in the way, and a speed that leaves time to act.");
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
