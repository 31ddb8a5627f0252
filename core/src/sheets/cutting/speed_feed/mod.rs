//! How fast should it turn and feed for this cut? A band of cutting speeds, the machine's own speeds and feeds, the chip and the power.

use crate::cutting::sources::{CAST_ALLOY, COBALT, DRILL_PUSH};
use crate::quantity::{FeedPerRev, Length, RemovalRate, RotationalSpeed};
use crate::sheet::*;
use crate::standards::cutting::cutting_speeds::{CutterMaterial, Material};
use crate::standards::cutting::feeds::MillingCutter;

pub(in crate::sheets) mod cautions;
mod cuts;
mod drawing;
mod fields;
mod milled;
mod milling;
mod per_turn;
mod power;
mod spindle;
mod step;
mod tables;
mod turn_feed;
mod working;

use fields::*;
pub(in crate::sheets) use fields::{RPM_COLUMN, WORK};
pub(in crate::sheets) use step::{Chosen, choose_step, no_speed, tell_speeds, work_of};

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "speed-feed",
    revision: 3,
    title: "Speed and feed for a cut",
    question: "Which spindle speed and feed should I set for this cut?",
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
        "arbor key",
        "collar run-out",
        "vibration",
        "feeds and speeds",
        "speeds and feeds",
        "drill press",
        "drilling machine",
        "drill speed",
        "cutoff",
        "stepover",
        "depth of cut",
        "horsepower",
        "pilot hole",
        "peck drilling",
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
        keys: [
            material.label().to_ascii_lowercase(),
            format!("{} speed", material.id().replace('-', " ")),
        ]
        .into_iter()
        .chain(other_spelling(material.label()))
        .collect(),
        title: format!("Cutting speed: {}", material.label()),
        aside: "milling, drilling, turning".into(),
        entry: vec![("work", material.id().to_owned())],
    };
    Material::ALL.iter().map(named).collect()
}

/// The British way to write a label, where it differs.
fn other_spelling(label: &str) -> Option<String> {
    let british = label
        .replace("aluminum", "aluminium")
        .replace("gray", "grey");
    (british != label).then(|| british.to_ascii_lowercase())
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
    let spindle = spindle::spindle(inp, &cut)?;
    cut.step = spindle.step;
    spindle::tell(inp, &mut a, &cut, &spindle);
    tables::spindle(&mut a, &cut, &spindle);
    working::spindle(inp, &mut a, &cut, &spindle);
    cautions::spindle(inp, &mut a, &cut, &spindle);
    if cut.milling_cutter().is_some() {
        mill(inp, &mut a, &cut)?;
    } else {
        feed_per_turn(inp, &mut a, &cut, &spindle);
    }
    tables::remedies(&mut a, &cut);
    tables::arbor(&mut a, &cut);
    cautions::care(&mut a, &cut);
    cautions::material(&mut a, &cut);
    // on screen the declared order holds: what to set first
    crate::order::sort_by_key(&mut a.lines, |line| {
        RESULTS.iter().position(|res| res.id == line.id)
    });
    Ok(a)
}

fn mill(inp: &Inputs, a: &mut Answer, cut: &Cut) -> Result<(), Stop> {
    let Some(m) = milling::figures(inp, cut)? else {
        a.note(
            "feed-open",
            "About the feed",
            "Give teeth and radial depth of the cut to get the table feed and the chip.",
        );
        drawing::hole_or_bar(inp, a, cut);
        return Ok(());
    };
    milled::tell(inp, a, cut, &m);
    tables::milled(a, cut, &m);
    working::milled(inp, a, cut, &m);
    cautions::milled(inp, a, cut, &m);
    let tooth = FeedPerRev::from_mm_per_rev(m.chip.mm_per_tooth());
    load(inp, a, cut, m.removal, tooth);
    drawing::milled(inp, a, cut, &m);
    Ok(())
}

fn feed_per_turn(inp: &Inputs, a: &mut Answer, cut: &Cut, spindle: &spindle::Spindle) {
    match per_turn::figures(inp, cut, spindle.deep) {
        Ok(fed) => {
            per_turn::tell(a, cut, &fed);
            tables::drill_feeds(a, &fed.band);
            working::fed(inp, a, cut, &fed);
            fed.band.sources(a, cut);
            if cut.kind == "drill"
                && let Some(push) = power::push(inp, cut, fed.turn)
            {
                a.line("thrust", push)
                    .says("By the drilling formula for steel of 200 HB, without a pilot hole.");
                a.source(&DRILL_PUSH);
            }
            load(inp, a, cut, fed.removal, fed.turn);
            if cut.kind == "ream" {
                per_turn::reamer(a, cut, true);
            }
            cautions::fed(inp, a, cut, spindle, Some(&fed));
        }
        Err(band) => {
            tables::drill_feeds(a, &band);
            band.sources(a, cut);
            if cut.kind == "ream" {
                per_turn::reamer(a, cut, false);
            }
            cautions::no_feed(a, cut);
            cautions::fed(inp, a, cut, spindle, None);
        }
    }
    drawing::hole_or_bar(inp, a, cut);
}

/// What it asks of the motor, where the metal removed is known.
fn load(inp: &Inputs, a: &mut Answer, cut: &Cut, removal: Option<RemovalRate>, feed: FeedPerRev) {
    let Some(removal) = removal else { return };
    match power::load(inp, cut, removal, feed) {
        Some(load) => {
            power::tell(a, &load);
            power::caution(inp, a, cut, &load);
        }
        None => {
            a.note(
                "power-unknown",
                "About the power",
                format!(
                    "No figure is known for the power that {} takes.",
                    cut.material.label()
                ),
            );
        }
    }
}
