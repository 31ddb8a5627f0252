//! How is this hole tapped without breaking the tap? Thread to cut, hole, depth to drill, spindle step, and when to stop.

use super::speed_feed::{RPM_COLUMN, WORK};
use super::tap_drill::CUT;
use super::thread::{source_of, thread_of};
use crate::calls;
use crate::cutting::sources::{NEXT_LOWER, SPEED_DEFINITION, speed_source};
use crate::cutting::*;
use crate::machine::around;
use crate::quantity::units::*;
use crate::quantity::{Kind, Length, Number, RotationalSpeed, Share, SurfaceSpeed};
use crate::record::DRILL_PRESS;
use crate::sheet::*;
use crate::standards::cutting_speeds::{CutterMaterial, Material, Operation};
use crate::standards::drills::{self, Drill, DrillSeries};
use crate::thread::{TapKind, ThreadCall, hole_for, rank};

pub(super) static SHEET: Sheet = Sheet {
    id: "tapping",
    revision: 1,
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
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: &[
        &[
            ("thread", "3/8-16"),
            ("work", "gray-iron"),
            ("depth", "1/2 in"),
            ("how", "machine"),
        ],
        &[
            ("thread", "1/4-20"),
            ("work", "mild-steel"),
            ("hole", "blind"),
            ("depth", "1/2 in"),
        ],
    ],
    takes: &["thread"],
    finds: None,
    figure,
};

const MACHINE: &[&str] = &["machine"];

static FIELDS: &[Field] = &[
    Field::call("thread", "Thread", &calls::thread::CALL)
        .example("3/8-16")
        .hint("As 1/4-20, #10-32, M10 or M10x1.25."),
    Field::choice("work", "Work material", &WORK),
    Field::choice(
        "hole",
        "Hole",
        &[choice("through", "through"), choice("blind", "blind")],
    ),
    Field::length("depth", "Depth of full thread")
        .example("1/2 in")
        .hint("In a through hole, the thickness.")
        .range_in(0.02, 20.0, "the reach of a tap")
        .measured(),
    Field::choice(
        "tap",
        "Last tap in the hole",
        &[
            choice("plug", "plug (second) tap"),
            choice("bottoming", "bottoming tap"),
            choice("taper", "taper (starting) tap"),
        ],
    )
    .when(&[when("hole", &["blind"])]),
    Field::percent("share", "Your own thread wanted")
        .example("65 pct")
        .hint(
            "In place of the start by metal and depth; of the full depth, 1.299 P on the diameter.",
        )
        .range(
            0.3,
            1.0,
            "under 30 % strips, over 100 % leaves no room for the tap",
        )
        .optional(),
    Field::choice(
        "how",
        "Turned",
        &[
            choice("hand", "by hand"),
            choice("machine", "by the spindle"),
        ],
    ),
    Field::number("hardness", "Brinell hardness of the work")
        .example("180")
        .hint("If you know it: rows for other hardness then fall out.")
        .range(
            50.0,
            650.0,
            "what a Brinell test gives on metal that can be cut",
        )
        .when(&[when("how", MACHINE)])
        .optional(),
    Field::quantity(
        "speed",
        "Your own cutting speed",
        Kind::SurfaceSpeed,
        &[&SFM, &M_PER_MIN],
    )
    .example("20 sfm")
    .hint("In place of the start of the band.")
    .range(0.3, 3000.0, "what edges bear")
    .when(&[when("how", MACHINE)])
    .optional(),
    Field::rows(
        "press-steps",
        "Drilling machine's spindle steps",
        RPM_COLUMN,
        1,
        48,
    )
    .example("250;610;1100")
    .hint("As on the plate.")
    .from_shop(ShopItem::DrillPressSteps, DRILL_PRESS)
    .when(&[when("how", MACHINE)]),
];

static RESULTS: &[Res] = &[
    Res::of("share-aim", "Thread to cut", Kind::Share),
    Res::of("hole-size", "Hole for that thread", Kind::Length),
    Res::words("drill", "Nearest standard drill"),
    Res::of("drill-depth", "Drill to, at full diameter", Kind::Length),
    Res::stepped("rpm", "Set the spindle to", Kind::RotationalSpeed),
    Res::of("aim", "Cutting speed aimed at", Kind::SurfaceSpeed),
    Res::stepped("surface", "Cutting speed at that step", Kind::SurfaceSpeed),
    Res::of("rpm-exact", "Exact spindle speed", Kind::RotationalSpeed),
    Res::of("turns", "Turns to full depth", Kind::Number),
    Res::of("ratio", "Depth of thread in diameters", Kind::Number),
];

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let thread = thread_of(inp, "thread")?;
    let id = inp.choice("work");
    let material = Material::ALL
        .iter()
        .copied()
        .find(|m| m.id() == id)
        .ok_or(Stop::Missing("work"))?;
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
    if let Some(pick) = rank(thread, share, TapKind::Cut, &drills_of(thread), 1).first() {
        a.words("drill", pick.drill.name()).says(format!(
            "Leaves {} of thread. Pick a tap drill ranks those you own.",
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
    a.line("turns", Number::of(turns))
        .places(1, 1)
        .says("Full thread and the chamfer, by the pitch. Back off every half to one turn.");
    a.line("ratio", Number::of(depth / thread.major))
        .places(2, 2)
        .says("Past 1.5 the start is less thread, past 2 less again.");
    if inp.choice("how") == "machine" {
        spindle(inp, &mut a, thread, material)?;
    }
    share_table(&mut a, inp, thread);
    stop_table(&mut a);
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
        material,
        share,
        depth > thread.major * VERY_DEEP,
    );
    a.source(source_of(thread))
        .source(&THREAD_SHARE)
        .source(&SHARE_COST)
        .source(&PRACTICE);
    if blind {
        a.source(&CHAMFER);
    }
    Ok(a)
}

/// Metric drills for a metric thread, the inch series for the others.
fn drills_of(thread: ThreadCall) -> Vec<Drill> {
    let mut all = drills::all().to_vec();
    all.retain(|one| (one.series == DrillSeries::Metric) == thread.series.is_metric());
    all
}

static PRACTICE: Source = Source::practice("Tapping in the home shop");

/// The spindle step at or below the start of the band, or a note where no source covers the metal.
fn spindle(
    inp: &Inputs,
    a: &mut Answer,
    thread: ThreadCall,
    material: Material,
) -> Result<(), Stop> {
    let hardness = inp.opt::<Number>("hardness").map(|hb| hb.get() as u16);
    let aim = speed_aim(
        material,
        Operation::Tapping,
        CutterMaterial::HighSpeedSteel,
        hardness,
        false,
    );
    let own: Option<SurfaceSpeed> = inp.opt("speed");
    let Some(start) = own.or(aim.as_ref().map(|aim| aim.start)) else {
        return Err(Stop::fault(
            "work",
            Reason::NoSource,
            format!(
                "we have no verified tapping speed for {}{}",
                material.label(),
                if hardness.is_some() {
                    " at that hardness"
                } else {
                    ""
                }
            ),
            "give your own cutting speed below, or tap it by hand",
        ));
    };
    let faulty =
        |fault: CutFault| inp.out_of_range("thread", fault.to_string(), "check the thread");
    let exact = spindle_speed(start, thread.major).map_err(faulty)?;
    let steps: Vec<RotationalSpeed> = inp.list("press-steps");
    let found = around(&steps, exact).ok_or(Stop::Missing("press-steps"))?;
    let step = found.at_or_below.unwrap_or(found.nearest);
    let surface = surface_speed(step, thread.major);
    if found.at_or_below.is_none()
        && aim
            .as_ref()
            .is_some_and(|aim| surface > aim.high.max(start))
    {
        return Err(Stop::withheld(
            "press-steps",
            inp.show(start),
            format!(
                "the slowest step, {}, runs the tap at {}: past the fastest figure of the sources",
                inp.show(step),
                inp.show(surface)
            ),
            "tap it by hand, with the spindle as a guide and the power off",
        ));
    }
    a.line("rpm", step).says(if found.at_or_below.is_some() {
        "The machine's step at or below the exact speed."
    } else {
        "The slowest step, though faster than the start of the band. By hand is safer."
    });
    let line = a.line("aim", start);
    line.says(if own.is_some() {
        "As you gave it, HSS tap."
    } else {
        "Slowest figure read in print, HSS tap, with cutting oil."
    });
    if let Some(aim) = &aim {
        line.band(
            aim.low,
            aim.high,
            "slowest and fastest figure of the sources",
        );
    }
    a.line("surface", surface)
        .says("\u{3c0} \u{d7} major diameter \u{d7} spindle step.");
    a.line("rpm-exact", exact)
        .places(1, 1)
        .says("V / (\u{3c0} D).");
    a.work(|w| {
        w.step(
            "Spindle speed",
            &[
                "n = V / (\u{3c0} D)".into(),
                format!("n = {}", inp.show_to(exact, 1, 1)),
            ],
            &SPEED_DEFINITION,
        );
        w.step(
            "The machine's step",
            &["highest step at or below n".into(), inp.show(step)],
            &NEXT_LOWER,
        );
    });
    if let Some(aim) = &aim {
        let table = a.table(
            "speeds",
            "What the sources say",
            &["Row", "From", "To", "Source"],
        );
        for row in &aim.band.rows {
            table
                .row(vec![
                    Value::words(row.detail),
                    Value::of(row.low_speed()),
                    Value::of(row.high_speed()),
                    Value::words(speed_source(row.source).text()),
                ])
                .chosen(*row == aim.band.default && own.is_none());
        }
        for row in &aim.band.rows {
            a.source(speed_source(row.source));
        }
    }
    Ok(())
}

/// Hole and nearest drill for the usual percents of thread; each row opens the tap drill sheet.
fn share_table(a: &mut Answer, inp: &Inputs, thread: ThreadCall) {
    let all = drills_of(thread);
    let table = a.table(
        "shares",
        "More or less thread",
        &["Thread", "Hole", "Nearest drill"],
    );
    for percent in [50.0, 55.0, 60.0, 65.0, 70.0, 75.0, 80.0] {
        let share = Share::from_percent(percent);
        let drill = rank(thread, share, TapKind::Cut, &all, 1)
            .first()
            .map_or_else(String::new, |pick| pick.drill.name());
        table
            .row(vec![
                Value::of(share),
                Value::of(hole_for(thread, share, TapKind::Cut)),
                Value::words(drill),
            ])
            .opens(
                "tap-drill",
                vec![
                    ("thread", thread.to_string()),
                    ("share", format!("{} pct", inp.num(share))),
                ],
            );
    }
    table.note("A row opens the tap drill sheet with the drills that you own. 1020 steel by one tap maker: from 60 to 72 % the torque doubles for 5 % more strength.");
}

/// What the tap tells, what to do, in the order of doing it.
#[rustfmt::skip]
const STOPS: &[[&str; 3]] = &[
    ["starts crooked", "stop within two turns, back out, square it", "a tap bent in the hole breaks; a guide or the spindle holds it square"],
    ["turns harder, turn by turn", "back off half a turn until the chip snaps", "the flutes are packing"],
    ["still hard after backing off", "take it right out, clear hole and flutes, oil", "chips lie at the bottom or under the land"],
    ["springs: the wrench moves, the tap does not", "stop and back out at once", "it twists before it breaks"],
    ["squeaks or squeals", "oil, back off, look at the edges", "dry or dull"],
    ["stops dead in a blind hole", "measure; do not force", "it is on the bottom or on its chips"],
    ["is hard from the first turn", "measure the hole, take the next larger drill", "the hole is small or its skin is work-hardened"],
];

fn stop_table(a: &mut Answer) {
    let table = a.table(
        "stops",
        "When to stop and think",
        &["If the tap", "Do this", "Because"],
    );
    for row in STOPS {
        table.row(row.iter().map(|cell| Value::words(*cell)).collect());
    }
    table.note("Common practice. In cast iron and brass, chips are short and need less backing off; a spiral-point tap is not backed off.");
}

fn cautions(a: &mut Answer, inp: &Inputs, material: Material, share: Share, deep: bool) {
    if inp.choice("how") == "machine" {
        a.stop("Before you tap by power", "Work clamped, clutch or floating holder, and know that the spindle reverses. Try the first one by hand.");
    } else {
        a.note("Before you tap by hand", "Keep both hands even on the wrench and the tap square. A broken tap is sharp and flies: glasses on.");
    }
    a.note("About the torque", "We have no verified source for the torque of a tap, so none is given. Go by feel and by less thread.");
    if inp.choice("hole") == "blind" {
        a.note("In a blind hole", "Mark the depth on the tap. Start with taper or plug tap, clear the hole, then the bottoming tap if the thread must go near the bottom.");
    }
    if share > Share::from_percent(THREAD_BAND.2) {
        a.note("About so much thread", "The Army manual goes to 83 % at most. More turns hard, breaks small taps and holds hardly better.");
    }
    if deep {
        a.note("At this depth", "More than two diameters of thread adds little strength. Counterbore the top, or cut less.");
    }
    if material == Material::StainlessSteel {
        a.note(
            "In stainless steel",
            "It work-hardens where a tap rubs. Keep it cutting, sulphurised oil, no taper tap.",
        );
    }
    if material == Material::Magnesium {
        a.stop("Before you cut magnesium", "Chips and dust burn and water makes it worse. Keep dry sand or a class D extinguisher at hand.");
    }
}
