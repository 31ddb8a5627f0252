//! Which cuts are there, and which of them ask for the same things?

use crate::sheet::{Choice, choice};

pub(super) const ARBOR: &[&str] = &["slab", "side", "saw", "form"];
pub(super) const FACE: &[&str] = &["face", "end", "tslot", "dovetail", "fly"];
pub(super) const MILL: &[&str] = &[
    "slab", "side", "saw", "form", "face", "end", "tslot", "dovetail", "fly",
];
/// Cutters with a thin neck under the work.
pub(super) const UNDERCUT: &[&str] = &["tslot", "dovetail"];
pub(super) const HOLE: &[&str] = &["drill", "ream", "sink", "tap", "step", "counterbore"];
pub(super) const LATHE_CUTS: &[&str] = &["turn", "turn-finish", "thread", "bore", "part"];
/// Lathe cuts that the power feed drives; a thread is driven by the leadscrew.
pub(super) const LATHE_FED: &[&str] = &["turn", "turn-finish", "bore", "part"];
/// Lathe cuts whose depth is entered.
pub(super) const TURNED: &[&str] = &["turn", "turn-finish", "bore"];
/// Cuts whose power is figured.
pub(super) const POWERED: &[&str] = &[
    "slab",
    "side",
    "saw",
    "form",
    "face",
    "end",
    "tslot",
    "dovetail",
    "fly",
    "drill",
    "turn",
    "turn-finish",
    "bore",
];
pub(super) const PER_TURN: &[&str] = &[
    "drill",
    "ream",
    "sink",
    "turn",
    "turn-finish",
    "step",
    "counterbore",
    "bore",
    "part",
];

pub(super) static CUTS: &[Choice] = &[
    choice("slab", "slab mill"),
    choice("side", "side mill"),
    choice("saw", "slitting saw"),
    choice("face", "face or shell mill"),
    choice("end", "end mill"),
    choice("form", "form cutter"),
    choice("drill", "drill"),
    choice("ream", "machine reamer"),
    choice("sink", "countersink"),
    choice("tap", "machine tap"),
    choice("turn", "turn, roughing"),
    choice("turn-finish", "turn, finishing"),
    choice("thread", "thread with a single point"),
    choice("bore", "bore (lathe or boring head)"),
    choice("part", "part off"),
    choice("step", "step drill in thin sheet"),
    choice("counterbore", "counterbore (piloted)"),
    choice("tslot", "T-slot cutter"),
    choice("dovetail", "dovetail cutter"),
    choice("fly", "fly cutter"),
];
