//! Is there an answer without each caution as well as one with it? A caution that always stands is one that says so here,
//! with the reason; every other one has its condition.

use benchslate_core::sheet::evaluate;
use benchslate_core::sheets;
use benchslate_tests::{cases, cautions};
use std::collections::{BTreeMap, BTreeSet};

/// Cautions that stand in every answer of their sheet, and why.
const ALWAYS: &[(&str, &str, &str)] = &[
    (
        "belt-drive",
        "touch-belt",
        "every answer sends hands to a belt",
    ),
    (
        "bolt-torque",
        "makers-figure",
        "no figure from here stands before the maker's",
    ),
    (
        "bolt-torque",
        "oil-in-blind-hole",
        "the sheet does not ask what the hole is like",
    ),
    (
        "bolt-torque",
        "soft-parent",
        "the sheet does not ask what metal the thread is cut in",
    ),
    (
        "change-gears",
        "spindle-locked",
        "every answer sends hands to the gears",
    ),
    ("chip-load", "run-out", "the sheet does not ask for run-out"),
    (
        "clearance-hole",
        "before-drilling",
        "every answer ends in a drilled hole",
    ),
    (
        "dial-units",
        "count-turns",
        "the dial alone never counts turns",
    ),
    ("dial-units", "lead-error", "every screw has some error"),
    (
        "dowel",
        "drive-hardened",
        "every answer ends with a pin pressed or driven",
    ),
    (
        "dowel",
        "ream-together",
        "every answer ends with two holes in line",
    ),
    ("drill", "before-drilling", "every answer ends at a drill"),
    ("feed-check", "engage-feed", "every timing engages a feed"),
    (
        "fit-limits",
        "limits",
        "limits hold at one temperature only",
    ),
    (
        "length",
        "call-standard",
        "every reading may be off by wear, burrs or the tool",
    ),
    (
        "length",
        "nearest-size",
        "a hole drilled to the wrong size stays, whichever it is",
    ),
    (
        "name-thread",
        "trust-name",
        "no name is proved before a part is screwed in",
    ),
    (
        "plate-check",
        "trust-series",
        "a series never proves a plate",
    ),
    (
        "press-fit",
        "heat-guard",
        "the sheet does not ask whether it is pressed or heated",
    ),
    (
        "press-fit",
        "press-guard",
        "the sheet does not ask whether it is pressed or heated",
    ),
    (
        "press-fit",
        "shrink-or-press",
        "the sheet does not ask whether it is pressed or heated",
    ),
    (
        "press-fit",
        "thick-ring",
        "the formula holds for round rings only, whatever is entered",
    ),
    (
        "speed-feed",
        "start-spindle",
        "every answer starts a spindle",
    ),
    (
        "surface-finish",
        "real-surface",
        "the geometry is the least roughness, never the real one",
    ),
    (
        "tap-drill",
        "trial-hole",
        "a hole too large can't be undone, whichever the drill",
    ),
    (
        "taper-pin",
        "drive-out",
        "a pin that goes in comes out one day",
    ),
    (
        "taper-pin",
        "drive-pin",
        "every answer ends with a pin driven",
    ),
    (
        "taper-pin",
        "ream-taper",
        "every answer ends with a reamed hole",
    ),
    (
        "thread",
        "reject-part",
        "no answer may reject a part by itself",
    ),
    (
        "thread-infeed",
        "depth-basis",
        "the depth is a start, whichever convention",
    ),
    (
        "thread-strip",
        "oil-in-blind-hole",
        "the sheet does not ask whether the hole is blind",
    ),
    (
        "thread-strip",
        "stripped-for-good",
        "a stripped thread can't be undone",
    ),
    ("trip-dog", "trip-limit", "every stop scatters"),
    ("trip-dog", "trust-trip", "no trip is a guard"),
    (
        "which-pair",
        "reach-in",
        "every answer sends hands to a gearbox",
    ),
    (
        "which-pair",
        "trust-mark",
        "every answer rests on what was heard",
    ),
];

#[test]
fn every_caution_has_both_sides() {
    let (mut with, mut answers) = (BTreeMap::new(), BTreeMap::new());
    for sheet in sheets::ALL {
        for entry in cases::all(sheet) {
            let answer = evaluate(sheet, &entry).answer;
            if answer.is_complete() {
                *answers.entry(sheet.id).or_insert(0) += 1;
                let ids: BTreeSet<&str> = answer.cautions.iter().map(|one| one.id).collect();
                for id in ids {
                    *with.entry((sheet.id, id.to_owned())).or_insert(0) += 1;
                }
            }
        }
    }
    let known = cautions::written()
        .into_iter()
        .chain(with.keys().cloned())
        .collect::<BTreeSet<_>>();
    let mut wrong = Vec::new();
    for (sheet, id) in known {
        let given = with.get(&(sheet, id.clone())).copied().unwrap_or(0);
        let all = answers.get(sheet).copied().unwrap_or(0);
        let always = ALWAYS.iter().any(|one| (one.0, one.1) == (sheet, &id));
        if given == 0 {
            wrong.push(format!("{sheet} {id}: in no answer of {all}"));
        } else if (given == all) != always {
            wrong.push(format!("{sheet} {id}: in {given} of {all} answers"));
        }
    }
    assert!(
        wrong.is_empty(),
        "{} cautions have one side only, or are listed and have both:\n{}",
        wrong.len(),
        wrong.join("\n")
    );
}

#[test]
fn what_always_stands_has_a_reason_and_a_sheet() {
    for (sheet, id, reason) in ALWAYS {
        let found = sheets::by_id(sheet).expect(sheet);
        let written = cautions::written();
        assert!(
            written.contains(&(found.id, (*id).to_owned())),
            "{sheet} no longer gives {id}"
        );
        assert!(!reason.is_empty(), "{sheet} {id}");
    }
}
