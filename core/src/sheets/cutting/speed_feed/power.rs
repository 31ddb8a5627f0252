//! Does the motor bear what is set? Power from the same entries as speed and feed, and the push of a drill.

use super::Cut;
use super::fields::{ARBOR, HOLE};
use crate::cutting::sources::*;
use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{FeedPerRev, Force, Number, Power, RemovalRate, Share, System, decimal};
use crate::sheet::*;
use crate::standards::cutting::cutting_speeds::Material;
use crate::standards::cutting::unit_power::{
    STANDARD_DRILL, SpecificEnergyRow, UnitPowerRow, WEAR, base_power,
};

const SHARP_TO_WORN: &str = "sharp tool to the high end of the wear factor";

/// What the cut asks of the motor.
pub(super) struct Load {
    pub low: Power,
    pub nominal: Power,
    pub high: Power,
    pub motor: Power,
    /// The motor was entered, here or in my shop.
    entered: bool,
    says: String,
    range: &'static str,
    lines: Vec<String>,
    source: &'static Source,
}

impl Load {
    pub(super) fn share(&self) -> f64 {
        self.nominal / self.motor
    }
    pub(super) fn share_at_most(&self) -> f64 {
        self.high / self.motor
    }
}

/// The wear factor's row, and its worst.
fn wear(cut: &Cut) -> (&'static str, &'static str) {
    match cut.kind {
        "drill" => ("drill", "drill-hard"),
        "turn" | "bore" => ("turn-normal", "turn-normal"),
        "turn-finish" => ("turn-finish", "turn-finish"),
        "face" | "fly" => ("face-light", "face-light"),
        kind if ARBOR.contains(&kind) => ("slab", "slab"),
        _ => ("end", "end"),
    }
}

/// The load, from metal removed and the feed that the feed factor takes (per tooth in milling); nothing where no figure is known.
pub(super) fn load(
    inp: &Inputs,
    cut: &Cut,
    removal: RemovalRate,
    feed: FeedPerRev,
) -> Option<Load> {
    let hardness = inp.opt::<Number>("hardness").map(|hb| hb.get() as u16);
    let motor: Power = inp.opt("lathe-motor").or(inp.opt("motor"))?;
    let table = work_power(cut.material, hardness)?;
    let mut load = match table {
        WorkPower::Unit(row) => unit(inp, cut, &row, removal, feed)?,
        WorkPower::Coarse(row) => coarse(inp, &row, removal),
    };
    load.motor = motor;
    load.entered = inp.is_entered("motor") || inp.is_entered("lathe-motor");
    load.source = table.source();
    Some(load)
}

/// By unit power with its factors.
fn unit(
    inp: &Inputs,
    cut: &Cut,
    row: &UnitPowerRow,
    removal: RemovalRate,
    feed: FeedPerRev,
) -> Option<Load> {
    let efficiency: Share = inp.opt("efficiency")?;
    let (usual, worst) = wear(cut);
    let of = |id: &str| WEAR.iter().find(|row| row.id == id);
    let w = of(usual).map(|row| f64::midpoint(row.low, row.high))?;
    let most = of(worst)?.high.max(w);
    let c = thin_feed_factor(feed)?;
    let sharp = base_power(row.hp_per_in3_min, removal) * c / efficiency.fraction();
    let nominal = sharp * w;
    let (kp, q) = (row.hp_per_in3_min, removal.in3_per_min());
    let given = inp.opt::<Number>("hardness").is_some();
    Some(Load {
        low: sharp,
        nominal,
        high: sharp * most,
        motor: Power::ZERO,
        entered: false,
        says: format!(
            "By the unit power of {} at {} to {} HB{}, with the usual wear and the drive.",
            row.group.label(),
            row.hardness.0,
            row.hardness.1,
            if given { "" } else { " (no hardness given)" }
        ),
        range: SHARP_TO_WORN,
        lines: vec![
            "Pm = Kp C Q W / E".into(),
            format!(
                "Pm = {} hp per in\u{b3}/min \u{d7} {} \u{d7} {} in\u{b3}/min \u{d7} {} / {} = {}",
                decimal(kp, &NUMBER, 2),
                decimal(c, &NUMBER, 3),
                decimal(q, &NUMBER, 4),
                decimal(w, &NUMBER, 3),
                decimal(efficiency.fraction(), &NUMBER, 3),
                horsepower(inp, nominal)
            ),
        ],
        source: &UNIT_POWER,
    })
}

/// By the energy of its kind of metal.
fn coarse(inp: &Inputs, row: &SpecificEnergyRow, removal: RemovalRate) -> Load {
    let of = |u: f64| Power::from_watts(u * removal.mm3_per_min() / 60.0);
    let (low, high) = (of(row.w_s_per_mm3.0), of(row.w_s_per_mm3.1));
    Load {
        low,
        nominal: (low + high) / 2.0,
        high,
        motor: Power::ZERO,
        entered: false,
        says: format!(
            "Middle of a wide range for all {}, for the order of magnitude only; the drive is in it.",
            row.material.replace("aluminium", "aluminum")
        ),
        range: "the range of the table for all metals of the kind",
        lines: vec![
            "Pm = u Q / 60".into(),
            format!(
                "Pm = {} to {} W\u{b7}s/mm\u{b3} \u{d7} {} mm\u{b3}/min / 60 = {} to {}",
                decimal(row.w_s_per_mm3.0, &NUMBER, 1),
                decimal(row.w_s_per_mm3.1, &NUMBER, 1),
                decimal(removal.mm3_per_min(), &NUMBER, 0),
                inp.show_to(low, 3, 3),
                inp.show_to(high, 3, 3)
            ),
        ],
        source: &COARSE_ENERGY,
    }
}

/// In the unit of the constant, and in that of the answer.
fn horsepower(inp: &Inputs, power: Power) -> String {
    let hp = format!("{} hp", decimal(power.horsepower(), &NUMBER, 3));
    match inp.system() {
        System::Inch => hp,
        System::Metric => format!("{hp} = {}", inp.show_to(power, 3, 3)),
    }
}

pub(super) fn tell(a: &mut Answer, load: &Load) {
    a.line("motor-need", load.nominal)
        .says(load.says.clone())
        .band(load.low, load.high, load.range);
    let of = |power: Power| Share::from_fraction(power / load.motor);
    a.line("share", of(load.nominal))
        .says(if load.entered {
            "Of your motor."
        } else {
            "Of a typical motor; enter yours."
        })
        .band(of(load.low), of(load.high), load.range);
    a.work(|w| w.step("Power from the motor", &load.lines, load.source));
    if load.range == SHARP_TO_WORN {
        a.source(&POWER_FACTORS);
    }
}

/// What to mind before the cut, by the share of the motor that it asks.
pub(super) fn caution(inp: &Inputs, a: &mut Answer, cut: &Cut, load: &Load) {
    let less = if cut.is_one_of(HOLE) {
        "Drill a pilot hole and open it in steps, take a lower spindle speed or less feed, or a bigger machine."
    } else {
        "Take less depth or less feed."
    };
    let share = Share::from_fraction(load.share());
    if load.share() > 1.0 {
        a.stop(
            "over-motor",
            "Before you take this cut",
            format!(
                "It needs {} of the motor's power: the belt slips or the spindle stalls in the cut, and the work may be thrown. {less}",
                inp.show_to(share, 0, 0)
            ),
        );
    } else if load.share_at_most() > 1.0 {
        a.note(
            "over-motor-at-high-end",
            "Before you take this cut",
            format!("At the high end of the range it needs more than the motor gives. {less}"),
        );
    }
}

/// Kd of steel of 200 HB, inch constant (Machinery's Handbook, 31st ed., p. 1152).
const STEEL_KD: f64 = 24_000.0;

/// The push of a drill in ordinary steel; nothing for other metals, for which no constant is filed.
pub(super) fn push(inp: &Inputs, cut: &Cut, feed: FeedPerRev) -> Option<Force> {
    let ordinary = inp
        .opt::<Number>("hardness")
        .is_none_or(|hb| hb.get() <= 220.0);
    let steel = matches!(
        cut.material,
        Material::MildSteel | Material::CarbonSteel | Material::AlloySteel | Material::CastSteel
    );
    if !(steel && ordinary) {
        return None;
    }
    let wear = WEAR.iter().find(|row| row.id == "drill")?.high;
    drill_load(STEEL_KD, cut.diameter, feed, &STANDARD_DRILL, wear)
        .ok()
        .map(|load| load.thrust)
}
