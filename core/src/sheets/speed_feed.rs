//! How fast should it turn and feed for this cut? A band of cutting speeds, the machine's own steps, and the chip they leave.

use crate::cutting::sources::{CAST_ALLOY, COBALT, REMEDIES};
use crate::quantity::{Length, RotationalSpeed};
use crate::sheet::*;
use crate::standards::cutting_speeds::{CutterMaterial, Material};
use crate::standards::feeds::MillingCutter;

pub(super) mod care;
mod fields;
mod milling;
mod per_turn;
mod spindle;
mod step;

use fields::*;
pub(super) use fields::{RPM_COLUMN, WORK};
pub(super) use step::{Chosen, choose_step, no_speed, tell_speeds, work_of};

pub(super) static SHEET: Sheet = Sheet {
    id: "speed-feed",
    revision: 2,
    title: "Speed and feed for a cut",
    question: "Which spindle and feed steps should I set for this cut?",
    aside: "material, cutter, diameter",
    words: &[
        "rpm",
        "spindle speed",
        "surface speed",
        "cutting speed",
        "sfm",
        "sfpm",
        "chip load",
        "feed per tooth",
        "table feed",
        "milling",
        "slab mill",
        "side mill",
        "slitting saw",
        "face mill",
        "shell mill",
        "end mill",
        "drilling",
        "reaming",
        "countersink",
        "tapping",
        "chatter",
        "squeal",
        "turning",
        "fly cutter",
        "t-slot",
        "dovetail",
        "counterbore",
        "step drill",
        "boring",
        "parting",
        "arbor",
        "collars",
        "cobalt",
        "chip thinning",
        "time for a pass",
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: EXAMPLES,
    takes: &["diameter"],
    finds: Some(finds),
    figure,
};

fn finds() -> Vec<Find> {
    let named = |material: &Material| Find {
        keys: vec![
            material.label().to_ascii_lowercase(),
            format!("{} speed", material.id().replace('-', " ")),
        ],
        title: format!("Cutting speed: {}", material.label()),
        aside: "milling, drilling, turning".into(),
        entry: vec![("work", material.id().to_owned())],
    };
    Material::ALL.iter().map(named).collect()
}

/// The entry as typed values, and what speed it comes to.
struct Cut {
    kind: &'static str,
    material: Material,
    tool: CutterMaterial,
    /// How much faster than HSS the sources' fastest figure may go for a better material, and who says so.
    better: Option<(f64, &'static Source)>,
    diameter: Length,
    step: RotationalSpeed,
}

impl Cut {
    fn is_one_of(&self, list: &[&str]) -> bool {
        list.contains(&self.kind)
    }
    fn milling_cutter(&self) -> Option<MillingCutter> {
        Some(match self.kind {
            "slab" => MillingCutter::Slab,
            "side" => MillingCutter::Side,
            "saw" => MillingCutter::Saw,
            "face" | "fly" => MillingCutter::Face,
            "end" | "tslot" | "dovetail" => MillingCutter::End,
            "form" => MillingCutter::Form,
            _ => return None,
        })
    }
}

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let mut a = inp.answer();
    let material = work_of(inp, "work")?;
    let tool = match inp.choice("tool") {
        "carbide" => CutterMaterial::Carbide,
        "carbon" => CutterMaterial::CarbonSteel,
        _ => CutterMaterial::HighSpeedSteel,
    };
    let mut cut = Cut {
        kind: inp.choice("cut"),
        material,
        tool,
        better: match inp.choice("tool") {
            "cobalt" => Some((1.25, &COBALT)),
            "cast-alloy" => Some((1.6, &CAST_ALLOY)),
            _ => None,
        },
        diameter: inp.get("diameter")?,
        step: RotationalSpeed::ZERO,
    };
    spindle::spindle(inp, &mut a, &mut cut)?;
    if cut.milling_cutter().is_some() {
        milling::milling(inp, &mut a, &cut)?;
    } else {
        per_turn::per_turn(inp, &mut a, &cut);
    }
    cautions(&mut a, &cut);
    // on screen the declared order holds: what to set first
    crate::order::sort_by_key(&mut a.lines, |line| {
        RESULTS.iter().position(|res| res.id == line.id)
    });
    Ok(a)
}

/// What to change first when the cut goes wrong, in order, with the reason.
#[rustfmt::skip]
const REMEDIES_IN_ORDER: &[[&str; 4]] = &[
    ["chatters", "one spindle step slower", "away from the frequency that sings", "more feed per tooth, less overhang, gibs snugged, shallower"],
    ["rubs, dust for chips", "more feed", "the edge must get under the skin", "one spindle step slower, then a sharp edge"],
    ["burns, blue chips with HSS", "one spindle step slower", "heat goes with speed first", "coolant or oil, then a sharp edge"],
    ["squeals", "more feed", "a light chip rubs", "one spindle step slower, a drop of oil, look for wear"],
    ["chips its edge", "less feed", "the tooth is overloaded", "slack and looseness out, tougher cutter"],
    ["leaves a rough face", "less feed", "the marks are nearer", "a sharp edge, oil, one step faster"],
    ["labours, belt slips", "less depth", "power goes with the metal removed", "less feed, back gear"],
];

fn cautions(a: &mut Answer, cut: &Cut) {
    let table = a.table(
        "remedies",
        "If the cut goes wrong",
        &["If it", "Change first", "Because", "Then"],
    );
    for row in REMEDIES_IN_ORDER {
        table.row(row.iter().map(|cell| Value::words(*cell)).collect());
    }
    table.note("Common practice; one change at a time.");
    a.source(&REMEDIES);
    care::care(a, cut.kind);
    a.stop("start-spindle", "Before you start the spindle", "Work clamped against the cut and stops tight, guard on, glasses on, no gloves, key out. Clear chips with a brush, spindle stopped.");
    if cut.is_one_of(MILL) {
        a.note("feed-direction", "Which way to feed", "Feed against the cutter unless the table's slack is taken out: in climb milling the cutter pulls the work in.");
    }
    if cut.kind == "saw" {
        a.note("thin-saw", "Before you saw", "A thin saw grabs. Do not key it to break it, keep the arbor run-out small, and climb only with no slack.");
    }
    if cut.kind == "drill" {
        a.note("breakthrough", "At the breakthrough", "Ease the feed: the drill grabs as the point comes through. Hold the work in a vice or clamps, never by hand.");
    }
    care::metal(a, cut.material);
}
