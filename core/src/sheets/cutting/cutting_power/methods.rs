//! What power does the cut ask, by each method? Unit power with its factors, kc1.1 of one author, rough energy, and the drilling formula.

use super::fields::*;
use super::{Chip, Need};
use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{FeedPerRev, Force, Length, Number, Power, Share, Stress, System, decimal};
use crate::sheet::*;
use crate::standards::cutting::unit_power::*;

static KP_SOURCE: Source = Source::read(
    "Machinery's Handbook, 31st ed.",
    "p. 1147, Table 1b, power constants Kp, sharp tools",
);
pub(super) static FACTORS: Source = Source::from_memory(
    "Machinery's Handbook, Machining Power",
    "Tables 2 and 3, feed factor C and wear factor W",
);
static KIENZLE: Source = Source::computed("Kienzle's formula", "Fc = kc1.1 b h^(1\u{2212}mc)");
static TABELLENBUCH: Source = Source::read(
    "Tabellenbuch Zerspantechnik, 5th ed. 2022",
    "pp. 215 and 216, kc1.1 and mc",
);
static KIENZLE_VICTOR: Source = Source::from_memory(
    "Kienzle and Victor, as in Tschaetsch, Praxis der Zerspantechnik",
    "kc1.1 and mc",
);
pub(super) static ENERGY: Source = Source::from_memory(
    "Kalpakjian, Manufacturing Engineering and Technology",
    "approximate specific energy at the motor, 80% efficiency",
);
static KIENZLE_RANGE: Source = Source::from_memory(
    "Textbooks of metal cutting",
    "Kienzle's formula for chips of 0.05 to 2.5 mm",
);
static SPREAD: Source = Source::practice("kc1.1 tables of different authors differ by 10 to 30%");

static DRILLING: Source = Source::read(
    "Machinery's Handbook, 31st ed.",
    "pp. 1152 and 1153, drilling thrust and torque",
);

pub(super) fn by_unit_power(inp: &Inputs, a: &mut Answer, chip: &Chip) -> Result<Need, Stop> {
    let group = PowerGroup::ALL
        .iter()
        .copied()
        .find(|group| group.id() == inp.choice("group"))
        .ok_or(Stop::Missing("group"))?;
    let hardness: Number = inp.get("hardness")?;
    let row = match unit_power(group, hardness.get() as u16) {
        UnitPowerLookup::Row(row) => row,
        UnitPowerLookup::Outside(low, high) => {
            return Err(inp.out_of_range(
                "hardness",
                format!("the table for these steels runs from {low} to {high} HB"),
                "give a hardness in that range, or choose another method",
            ));
        }
    };
    let FeedFactor { c, carried } = factor(inp, chip)?;
    let wear = WEAR
        .iter()
        .find(|row| row.id == inp.choice("wear"))
        .ok_or(Stop::Missing("wear"))?;
    let efficiency: Share = inp.get("efficiency")?;
    let at_wear = |wear: f64| {
        let factors = PowerFactors {
            feed: c,
            wear,
            efficiency: efficiency.fraction(),
        };
        unit_power_cut(row.hp_per_in3_min, chip.removal, factors)
            .map(|power| power.cutter)
            .map_err(|fault| {
                inp.out_of_range("efficiency", fault.to_string(), "give a share over 0")
            })
    };
    let middle = f64::midpoint(wear.low, wear.high);
    let (base, nominal, high) = (
        at_wear(1.0)?,
        at_wear(middle)?,
        at_wear(wear.high.max(middle))?,
    );
    if carried {
        a.note("thin-feed", "About so fine a feed", format!("The printed table of feed factors ends at 0.001 in. At {} the factor is carried down by (f/0.012 in)^\u{2212}0.2, an estimate; an edge that rubs needs more.", chip.feed_text(inp)));
    }
    a.work(|w| {
        let kp = decimal(row.hp_per_in3_min, &NUMBER, 2);
        w.step(
            "Unit power",
            &[format!(
                "Kp = {kp} hp per in\u{b3}/min at {} to {} HB, sharp tool",
                row.hardness.0, row.hardness.1
            )],
            &KP_SOURCE,
        );
        w.step(
            "At the cutter",
            &[
                "Pc = Kp C Q W".into(),
                format!(
                    "C = {} at {}{}, W = {}",
                    decimal(c, &NUMBER, 3),
                    chip.feed_text(inp),
                    if carried {
                        " (carried below the table)"
                    } else {
                        ""
                    },
                    decimal(middle, &NUMBER, 2)
                ),
                format!(
                    "Pc = {kp} \u{d7} {} \u{d7} {} in\u{b3}/min \u{d7} {} = {} hp{}",
                    decimal(c, &NUMBER, 3),
                    decimal(chip.removal.in3_per_min(), &NUMBER, 3),
                    decimal(middle, &NUMBER, 2),
                    decimal(nominal.horsepower(), &NUMBER, 3),
                    match inp.system() {
                        System::Inch => String::new(),
                        System::Metric => format!(", {}", inp.show_to(nominal, 3, 3)),
                    }
                ),
            ],
            &FACTORS,
        );
    });
    Ok(Need {
        low: base,
        nominal,
        high,
        says: "Unit power \u{d7} feed factor \u{d7} removal rate \u{d7} wear factor.".into(),
        range: "sharp tool to the high end of the wear factor",
        at_motor: false,
    })
}

/// The feed factor of the chip, or a fault that names the feed in its own unit.
fn factor(inp: &Inputs, chip: &Chip) -> Result<FeedFactor, Stop> {
    let milling = chip.per_tooth.is_some();
    chip_feed_factor(chip.feed).map_err(|_| {
        inp.out_of_range(
            if milling { "feed" } else { "turn-feed" },
            format!(
                "{} is outside the feed factors, 0.0001 to 0.060 in {}",
                chip.feed_text(inp),
                if milling { "per tooth" } else { "per rev" }
            ),
            "give a feed inside it, or choose another method",
        )
    })
}

/// The power of a specific cutting force: in turning force times speed, else force per area times removal.
fn force_or_volume(
    inp: &Inputs,
    chip: &Chip,
    kc11: Stress,
    mc: f64,
) -> Result<(Stress, Power), Stop> {
    let fault =
        |fault: CutFault| inp.out_of_range("metal", fault.to_string(), "check feed and sizes");
    let kc = specific_force(kc11, mc, chip.thickness).map_err(fault)?;
    let power = match chip.turned {
        Some((depth, entering, speed)) => {
            let force = turning_force(kc11, mc, depth, chip.feed, entering).map_err(fault)?;
            force_power(force, speed)
        }
        None => specific_power(kc, chip.removal),
    };
    Ok((kc, power))
}

pub(super) fn by_specific_force(inp: &Inputs, a: &mut Answer, chip: &Chip) -> Result<Need, Stop> {
    let row = SPECIFIC_FORCE
        .iter()
        .zip(FORCE_MATERIALS)
        .find(|(_, c)| c.id == inp.choice("metal"))
        .map(|(row, _)| row)
        .ok_or(Stop::Missing("metal"))?;
    let milling = inp.choice("cut") == "mill";
    let kc11 = if milling { row.milling() } else { row.stress() };
    if chip.thickness > MOST_KIENZLE_CHIP {
        return Err(inp.out_of_range(
            if milling { "feed" } else { "turn-feed" },
            format!(
                "a chip of {}; kc1.1 holds to {}",
                inp.show_to(chip.thickness, 3, 2),
                inp.show_to(MOST_KIENZLE_CHIP, 3, 2)
            ),
            "take a smaller feed",
        ));
    }
    let (kc, power) = force_or_volume(inp, chip, kc11, row.mc)?;
    if chip.thickness < LEAST_KIENZLE_CHIP {
        a.note("thin-chip", "About so thin a chip", format!("kc1.1 holds for chips of about {} and more. Thinner ones, as here, need more than this figure: the edge is no longer sharp against them.", inp.show_to(LEAST_KIENZLE_CHIP, 3, 2)));
    }
    let source = match row.source {
        SpecificForceSource::Tabellenbuch => &TABELLENBUCH,
        SpecificForceSource::KienzleVictor => &KIENZLE_VICTOR,
    };
    a.work(|w| {
        let how = match (milling, row.rake_degrees) {
            (true, Some(rake)) => format!(
                "for milling at zero rake: {} \u{d7} 1.2 / (1 \u{2212} 0.01 \u{d7} {}) = {}",
                decimal(row.kc11, &NUMBER, 0),
                decimal(rake, &NUMBER, 0),
                decimal(kc11.mpa(), &NUMBER, 0)
            ),
            (true, None) => format!(
                "for milling: {} \u{d7} 1.2 = {}; no reference rake is given",
                decimal(row.kc11, &NUMBER, 0),
                decimal(kc11.mpa(), &NUMBER, 0)
            ),
            _ => "as printed, no correction for rake".into(),
        };
        w.step(
            "Specific force",
            &[
                format!(
                    "kc1.1 = {} N/mm\u{b2}, mc = {}",
                    decimal(row.kc11, &NUMBER, 0),
                    decimal(row.mc, &NUMBER, 2)
                ),
                how,
            ],
            source,
        );
        w.step(
            "At the chip",
            &[
                format!(
                    "h = {} ({})",
                    inp.show_to(chip.thickness, 5, 4),
                    chip.thickness_says
                ),
                "kc = kc1.1 / h^mc, h in mm; Pc = kc Q / 60000, Q in mm\u{b3}/min".into(),
                format!(
                    "kc = {} / {}^{} = {} N/mm\u{b2}",
                    decimal(kc11.mpa(), &NUMBER, 0),
                    decimal(chip.thickness.mm(), &NUMBER, 4),
                    decimal(row.mc, &NUMBER, 2),
                    decimal(kc.mpa(), &NUMBER, 0)
                ),
                format!(
                    "Pc = {} \u{d7} {} / 60000 = {} W, {}",
                    decimal(kc.mpa(), &NUMBER, 0),
                    decimal(chip.removal.mm3_per_min(), &NUMBER, 0),
                    decimal(power.watts(), &NUMBER, 0),
                    inp.show_to(power, 3, 3)
                ),
            ],
            &KIENZLE,
        );
    });
    a.source(&KIENZLE_RANGE).source(&SPREAD);
    Ok(Need {
        low: power * 0.7,
        nominal: power,
        high: power * 1.3,
        says: format!(
            "kc1.1 and mc of one author: {}; no correction for wear.",
            source.title
        ),
        range: "30% either way, as authors differ",
        at_motor: false,
    })
}

pub(super) fn by_energy(inp: &Inputs, a: &mut Answer, chip: &Chip) -> Result<Need, Stop> {
    let row = SPECIFIC_ENERGY_AT_MOTOR
        .iter()
        .zip(ENERGY_MATERIALS)
        .find(|(_, c)| c.id == inp.choice("kind"))
        .map(|(row, _)| row)
        .ok_or(Stop::Missing("kind"))?;
    let of = |u: f64| energy_power(u, chip.removal);
    let (low, high) = (of(row.w_s_per_mm3.0), of(row.w_s_per_mm3.1));
    let nominal = (low + high) / 2.0;
    a.work(|w| {
        let (u, v) = (
            decimal(row.w_s_per_mm3.0, &NUMBER, 1),
            decimal(row.w_s_per_mm3.1, &NUMBER, 1),
        );
        w.step(
            "Energy per volume",
            &[
                format!("{u} to {v} W\u{b7}s/mm\u{b3} at the motor"),
                format!(
                    "Pm = u Q = {} to {}",
                    inp.show_to(low, 3, 3),
                    inp.show_to(high, 3, 3)
                ),
            ],
            &ENERGY,
        );
    });
    Ok(Need {
        low,
        nominal,
        high,
        says: "Middle of a wide range, for the order of magnitude only; at the cutter: 80% of it."
            .into(),
        range: "the range of the table for all metals of the kind",
        at_motor: true,
    })
}

/// Thrust and torque of a drill by the drilling formula, where Kd is known.
pub(super) fn drilled(
    inp: &Inputs,
    diameter: Length,
) -> Result<Option<(DrillLoad, ChiselEdgeRow, f64)>, Stop> {
    let Some(kd) = inp.opt::<Number>("kd") else {
        return Ok(None);
    };
    let feed: FeedPerRev = inp.get("turn-feed")?;
    let chisel = if inp.choice("web") == "split" {
        SPLIT_POINT
    } else {
        STANDARD_DRILL
    };
    let wear = WEAR
        .iter()
        .find(|row| row.id == inp.choice("wear"))
        .map_or(1.3, |row| row.high);
    let load = drill_load(kd.get(), diameter, feed, &chisel, wear).map_err(|fault| {
        inp.out_of_range(
            "diameter",
            fault.to_string(),
            "check the drill and its feed",
        )
    })?;
    Ok(Some((load, chisel, wear)))
}

pub(super) fn tell_drilled(
    inp: &Inputs,
    a: &mut Answer,
    load: DrillLoad,
    chisel: &ChiselEdgeRow,
    wear: f64,
) {
    a.line("thrust", load.thrust)
        .says("T = 2 Kd Ff FT B W + Kd D\u{b2} J W, inch constants.");
    a.line("drill-torque", load.torque)
        .says("M = Kd Ff FM A W, inch constants.");
    a.work(|w| {
        w.step(
            "Thrust and torque of the drill",
            &[
                "Ff = f^0.8, FT = D^0.8, FM = D^1.8".into(),
                format!(
                    "A = {}, B = {}, J = {}, W = {}",
                    decimal(chisel.a, &NUMBER, 3),
                    decimal(chisel.b, &NUMBER, 3),
                    decimal(chisel.j, &NUMBER, 3),
                    decimal(wear, &NUMBER, 2)
                ),
                format!(
                    "T = {}, M = {}",
                    inp.show::<Force>(load.thrust),
                    inp.show(load.torque)
                ),
            ],
            &DRILLING,
        );
    });
    a.note("two-figures", "About the two figures", "Unit power and the drilling formula disagree, often nearly two to one. The motor load here is by the drilling formula.");
}
