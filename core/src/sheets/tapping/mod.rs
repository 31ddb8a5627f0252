//! How is this hole tapped without breaking the tap? Percent of thread, hole, depth to drill, spindle speed, and when to stop.

use super::thread::{source_of, thread_of};
use crate::cutting::*;
use crate::quantity::{Length, Number, Share};
use crate::sheet::*;
use crate::sheets::speed_feed::work_of;
use crate::sheets::tap_drill::CUT;
use crate::thread::{TapKind, hole_for};

mod care;
mod fields;
mod shares;
mod spindle;
mod torque;

use care::{Care, cautions, stop_table};
use fields::{EXAMPLES, FIELDS, RESULTS};
use shares::{drill_for, share_table};
use spindle::{Turning, seconds, spindle};
pub(super) use torque::{FLUTES, tap_cut, tell_torque};
use torque::{by_hand, by_spindle};

pub(super) static SHEET: Sheet = Sheet {
    id: "tapping",
    revision: 3,
    title: "Tap a hole without breaking the tap",
    question: "How much thread, how deep to drill, how fast, and when do I stop?",
    aside: "thread, metal, depth",
    words: &[
        "tapping",
        "broken tap",
        "tap speed",
        "blind hole",
        "percent of thread",
        "bottoming tap",
        "plug tap",
        "taper tap",
        "tap torque",
        "thread depth",
        "depth to drill",
        "tapping head",
        "drill press",
        "drilling machine",
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: EXAMPLES,
    takes: &["thread"],
    finds: None,
    figure,
};

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let thread = thread_of(inp, "thread")?;
    let material = work_of(inp, "work")?;
    let depth: Length = inp.get("depth")?;
    let pitch = thread.pitch.length();
    if depth < pitch {
        return Err(inp.out_of_range(
            "depth",
            format!("under one pitch, {}", inp.show(pitch)),
            "give the depth of full thread",
        ));
    }
    let own: Option<Share> = inp.opt("share");
    let share = own.unwrap_or_else(|| thread_to_cut(material, thread.major, depth));
    let hole = hole_for(thread, share, TapKind::Cut);
    let blind = inp.choice("hole") == "blind";
    let chamfer = match inp.choice("tap") {
        "bottoming" => TapChamfer::Bottoming,
        "taper" => TapChamfer::Taper,
        _ => TapChamfer::Plug,
    };
    let (fewest, most) = chamfer.threads();
    let mut a = inp.answer();
    let (low, _, high) = THREAD_BAND;
    a.line("share-aim", share)
        .says(if own.is_some() {
            "As you gave it. 100 % is 1.299 P off the diameter."
        } else {
            "Start by metal and depth, common practice; 100 % is 1.299 P off the diameter."
        })
        .band(
            Share::from_percent(low),
            Share::from_percent(high),
            "OD1621: 50 to 53 % small or deep, 75 % average, 83 % most",
        );
    a.line("hole-size", hole)
        .says("D \u{2212} 1.299 P \u{d7} thread.");
    if let Some(pick) = drill_for(thread, share) {
        a.words("drill", pick.drill.name()).says(format!(
            "Leaves {} of thread. \u{201c}Pick a tap drill\u{201d} ranks those you own.",
            inp.show(pick.share)
        ));
    }
    let drilled = blind_depth(depth, pitch, most);
    if blind {
        a.line("drill-depth", drilled)
            .says(format!("Full thread, {fewest} to {most} chamfered threads and one pitch of room; the drill's point goes deeper still."))
            .band(blind_depth(depth, pitch, fewest), drilled, "shortest and longest chamfer of this tap");
    }
    // a through hole needs the chamfer out on the far side: a plug tap's longest
    let turns = depth / pitch + f64::from(most);
    let by_hand_now = inp.choice("how") != "machine";
    a.line("turns", Number::of(turns))
        .places(1, 1)
        .says(match (by_hand_now, inp.choice("flutes")) {
            (true, "spiral-point") => "Full thread and the chamfer, by the pitch. A spiral-point tap is turned on without backing off.",
            (true, _) => "Full thread and the chamfer, by the pitch. Back off every half to one turn.",
            (false, _) => "Full thread and the chamfer, by the pitch.",
        });
    a.line("ratio", Number::of(depth / thread.major))
        .places(2, 2)
        .says("Past 1.5 the start is less thread, past 2 less again.");
    let turning = if by_hand_now {
        Turning::ByHand
    } else {
        spindle(inp, &mut a, thread, material)?
    };
    let hardness = inp.opt::<Number>("hardness").map(|hb| hb.get() as u16);
    let cut_at = |hole| tap_cut(inp, thread, hole, chamfer == TapChamfer::Bottoming);
    let torque_of = |hole| tap_load(material, hardness, &cut_at(hole));
    let load = torque_of(hole);
    if let Turning::Spindle { speed, .. } | Turning::Head { speed } = turning {
        seconds(inp, &mut a, speed, turns, pitch)?;
    }
    if let Some(load) = &load {
        match turning {
            Turning::Spindle { speed, .. } | Turning::Head { speed } => {
                by_spindle(inp, &mut a, load, speed);
            }
            Turning::ByHand => by_hand(inp, &mut a, load),
        }
        tell_torque(&mut a, material, &cut_at(hole), load);
    }
    share_table(&mut a, inp, thread, torque_of);
    stop_table(&mut a, turning);
    a.work(|w| {
        w.step(
            "Hole",
            &[
                "d = D \u{2212} 1.299038 P \u{d7} % \u{f7} 100".into(),
                format!(
                    "d = {} \u{2212} 1.299038 \u{d7} {} \u{d7} {} = {}",
                    inp.num_to(thread.major, 4, 3),
                    inp.num_to(pitch, 5, 4),
                    inp.show(share),
                    inp.show(hole)
                ),
            ],
            &CUT,
        );
        if blind {
            w.step(
                "Depth to drill",
                &[
                    "h = L + (chamfered + 1) P".into(),
                    format!(
                        "h = {} + ({most} + 1) \u{d7} {} = {}",
                        inp.num(depth),
                        inp.num_to(pitch, 5, 4),
                        inp.show(drilled)
                    ),
                ],
                &CHAMFER,
            );
        }
    });
    a.draw(|| {
        let deep = if blind { drilled } else { depth };
        picture::drilled_hole(
            hole,
            Some(deep),
            Length::ZERO,
            [inp.show(hole), inp.show(deep)],
        )
    });
    cautions(
        &mut a,
        inp,
        &Care {
            turning,
            material,
            share,
            blind,
            deep: depth > thread.major * VERY_DEEP,
            torque: load.is_some(),
            pitch,
        },
    );
    a.source(source_of(thread))
        .source(&THREAD_SHARE)
        .source(&SHARE_COST)
        .source(&PRACTICE);
    if blind {
        a.source(&CHAMFER);
    }
    // on screen the declared order holds
    crate::order::sort_by_key(&mut a.lines, |line| {
        RESULTS.iter().position(|res| res.id == line.id)
    });
    Ok(a)
}

static PRACTICE: Source = Source::practice("Tapping in the home shop");
