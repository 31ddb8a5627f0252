//! How far in does the compound go for a thread, in how many passes, and which depth convention is meant?

use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{Angle, Count, Length, Number, Pitch, RotationalSpeed, decimal};
use crate::sheet::*;

mod carriage;
mod drawing;
mod fields;
mod gears;

use carriage::{carriage, dial, first_pass};
use drawing::groove;
use fields::{FIELDS, RESULTS};

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
static LEAD: Source = Source::read(
    "TM 1-420 Lathes, War Department, 1940",
    "p. 81, pitch = lead / starts",
);

pub(in crate::sheets) static SHEET: Sheet = Sheet {
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
    pass_table(&mut a, &list);
    let cut = Cut {
        pitch,
        depth,
        angle,
        infeed,
        first,
        passes,
        starts,
        lead,
    };
    working(inp, &mut a, &cut);
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

/// A thread with its infeed.
struct Cut {
    pitch: Pitch,
    depth: ThreadDepth,
    angle: Angle,
    infeed: Length,
    first: Length,
    passes: u16,
    starts: Count,
    lead: Pitch,
}

/// The compound's reading after each pass.
fn pass_table(a: &mut Answer, list: &[Length]) {
    let table = a.table(
        "passes",
        "Compound reading after each pass",
        &["Pass", "Reading", "This pass"],
    );
    let mut last = Length::ZERO;
    for (number, reading) in (1..).zip(list) {
        table.row(vec![
            Value::of(Count::of(f64::from(number))),
            Value::of(*reading),
            Value::of(*reading - last),
        ]);
        last = *reading;
    }
    table.note("Equal areas of chip; spring passes at the last reading are extra.");
}

fn working(inp: &Inputs, a: &mut Answer, cut: &Cut) {
    let Cut {
        pitch,
        depth,
        angle,
        infeed,
        first,
        passes,
        starts,
        lead,
    } = *cut;
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
}
