//! How is this hole tapped without breaking the tap? Percent of thread, hole, depth to drill, spindle speed, and when to stop.

use crate::cutting::*;
use crate::quantity::{Length, Number, Share};
use crate::sheet::*;
use crate::sheets::cutting::speed_feed::work_of;
use crate::sheets::sizes::tap_drill::CUT;
use crate::sheets::sizes::thread::{source_of, thread_of};
use crate::standards::cutting::cutting_speeds::Material;
use crate::thread::{TapKind, ThreadCall, hole_for};

mod care;
mod fields;
mod shares;
mod spindle;
mod torque;

use care::{Care, cautions, stop_table};
use fields::{EXAMPLES, FIELDS, RESULTS};
use shares::{drill_for, share_table};
use spindle::{Turning, seconds, spindle};
pub(in crate::sheets) use torque::{FLUTES, tap_cut, tell_torque};
use torque::{by_hand, by_spindle};

pub(in crate::sheets) static SHEET: Sheet = Sheet {
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

/// The hole to be tapped.
struct Job {
    thread: ThreadCall,
    material: Material,
    depth: Length,
    pitch: Length,
    /// Percent of thread, and whether it was given.
    share: Share,
    own: bool,
    hole: Length,
    blind: bool,
    chamfer: TapChamfer,
    drilled: Length,
    /// From the first touch to full depth.
    turns: f64,
}

fn job(inp: &Inputs) -> Result<Job, Stop> {
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
    let chamfer = match inp.choice("tap") {
        "bottoming" => TapChamfer::Bottoming,
        "taper" => TapChamfer::Taper,
        _ => TapChamfer::Plug,
    };
    let (_, most) = chamfer.threads();
    Ok(Job {
        thread,
        material,
        depth,
        pitch,
        share,
        own: own.is_some(),
        hole: hole_for(thread, share, TapKind::Cut),
        blind: inp.choice("hole") == "blind",
        chamfer,
        drilled: blind_depth(depth, pitch, most),
        // a through hole needs the chamfer out on the far side: a plug tap's longest
        turns: depth / pitch + f64::from(most),
    })
}

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let job = job(inp)?;
    let mut a = inp.answer();
    hole_lines(inp, &mut a, &job);
    let by_hand_now = inp.choice("how") != "machine";
    turn_lines(inp, &mut a, &job, by_hand_now);
    let turning = if by_hand_now {
        Turning::ByHand
    } else {
        spindle(inp, &mut a, job.thread, job.material)?
    };
    let hardness = inp.opt::<Number>("hardness").map(|hb| hb.get() as u16);
    let cut_at = |hole| tap_cut(inp, job.thread, hole, job.chamfer == TapChamfer::Bottoming);
    let torque_of = |hole| tap_load(job.material, hardness, &cut_at(hole));
    let load = torque_of(job.hole);
    if let Turning::Spindle { speed, .. } | Turning::Head { speed } = turning {
        seconds(inp, &mut a, speed, job.turns, job.pitch)?;
    }
    if let Some(load) = &load {
        match turning {
            Turning::Spindle { speed, .. } | Turning::Head { speed } => {
                by_spindle(inp, &mut a, load, speed);
            }
            Turning::ByHand => by_hand(inp, &mut a, load),
        }
        tell_torque(&mut a, job.material, &cut_at(job.hole), load);
    }
    share_table(&mut a, inp, job.thread, torque_of);
    stop_table(&mut a, turning);
    working(inp, &mut a, &job);
    a.draw(|| {
        let deep = if job.blind { job.drilled } else { job.depth };
        picture::drilled_hole(
            job.hole,
            Some(deep),
            Length::ZERO,
            [inp.show(job.hole), inp.show(deep)],
        )
    });
    let care = Care {
        turning,
        material: job.material,
        share: job.share,
        blind: job.blind,
        deep: job.depth > job.thread.major * VERY_DEEP,
        torque: load.is_some(),
        pitch: job.pitch,
    };
    cautions(&mut a, inp, &care);
    a.source(source_of(job.thread))
        .source(&THREAD_SHARE)
        .source(&SHARE_COST)
        .source(&PRACTICE);
    if job.blind {
        a.source(&CHAMFER);
    }
    // on screen the declared order holds
    crate::order::sort_by_key(&mut a.lines, |line| {
        RESULTS.iter().position(|res| res.id == line.id)
    });
    Ok(a)
}

/// Percent of thread, hole, drill, and how deep to drill.
fn hole_lines(inp: &Inputs, a: &mut Answer, job: &Job) {
    let (low, _, high) = THREAD_BAND;
    a.line("share-aim", job.share)
        .says(if job.own {
            "As you gave it. 100% is 1.299 P off the diameter."
        } else {
            "By metal and depth, common practice; 100% is 1.299 P off the diameter."
        })
        .band(
            Share::from_percent(low),
            Share::from_percent(high),
            "Army manual OD 1621: 50 to 53% small or deep, 75% average, 83% most",
        );
    a.line("hole-size", job.hole)
        .says("D \u{2212} 1.299 P \u{d7} thread.");
    if let Some(pick) = drill_for(job.thread, job.share) {
        a.words("drill", pick.drill.name()).says(format!(
            "Leaves {} of thread. \u{201c}Pick a tap drill\u{201d} ranks the others.",
            inp.show(pick.share)
        ));
    }
    if job.blind {
        let (fewest, most) = job.chamfer.threads();
        a.line("drill-depth", job.drilled)
            .says(format!("Full thread, {fewest} to {most} chamfered threads and one pitch of room; the drill's point goes deeper still."))
            .band(blind_depth(job.depth, job.pitch, fewest), job.drilled, "shortest and longest chamfer of this tap");
    }
}

/// How many turns, and how deep in diameters.
fn turn_lines(inp: &Inputs, a: &mut Answer, job: &Job, by_hand: bool) {
    a.line("turns", Number::of(job.turns))
        .places(1, 1)
        .says(match (by_hand, inp.choice("flutes")) {
            (true, "spiral-point") => "Full thread and the chamfer, by the pitch. A spiral-point tap is turned on without backing off.",
            (true, _) => "Full thread and the chamfer, by the pitch. Back off every half to one turn.",
            (false, _) => "Full thread and the chamfer, by the pitch.",
        });
    a.line("ratio", Number::of(job.depth / job.thread.major))
        .places(2, 2)
        .says("Past 1.5 the start is less thread, past 2 less again.");
}

fn working(inp: &Inputs, a: &mut Answer, job: &Job) {
    a.work(|w| {
        w.step(
            "Hole",
            &[
                "d = D \u{2212} 1.299038 P \u{d7} % \u{f7} 100".into(),
                format!(
                    "d = {} \u{2212} 1.299038 \u{d7} {} \u{d7} {} = {}",
                    inp.num_to(job.thread.major, 4, 3),
                    inp.num_to(job.pitch, 5, 4),
                    inp.show(job.share),
                    inp.show(job.hole)
                ),
            ],
            &CUT,
        );
        if job.blind {
            let (_, most) = job.chamfer.threads();
            w.step(
                "Depth to drill",
                &[
                    "h = L + (chamfered + 1) P".into(),
                    format!(
                        "h = {} + ({most} + 1) \u{d7} {} = {}",
                        inp.num(job.depth),
                        inp.num_to(job.pitch, 5, 4),
                        inp.show(job.drilled)
                    ),
                ],
                &CHAMFER,
            );
        }
    });
}

static PRACTICE: Source = Source::practice("Tapping in the home shop");
