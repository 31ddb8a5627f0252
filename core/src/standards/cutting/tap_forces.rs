//! What force does a tap's edge ask for each area of thread? Specific cutting force of tapping by two makers, and the factor of the tap.
//!
//! | | |
//! | --- | --- |
//! | A | a tap maker's catalogue, 2016-2017, p. 781, the same in 2021, p. 639: M = tan θ kc K (D − Do)² (D + 2 Do) / 24000, N·m, with its tables of kc and K |
//! | B | a second tap maker's technical page: M = kc P² D / 8000, N·m, with its table of kc by tensile strength |
//! | unit | kc in N/mm², authoritative; D, Do, P in mm; θ half of the thread angle |
//! | note | B prints D in m; only mm gives torques like those of A, and the German page has the same slip |
//! | pairs | kc of A goes with K of A, kc of B with the formula of B: they are not to be mixed |

use super::cutting_speeds::Material;
use crate::quantity::Stress;

/// Whose figure it is.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum TapAuthor {
    /// By the area of thread that the hole leaves, and the kind of tap.
    ByArea,
    /// By pitch and diameter, for a hole of D − P.
    ByPitch,
}

/// Specific cutting force of tapping in one metal.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct TapForceRow {
    /// Whose figure.
    pub author: TapAuthor,
    /// The metals of ours that it stands for.
    pub materials: &'static [Material],
    /// As the source names the metal.
    pub detail: &'static str,
    /// N/mm², as printed.
    pub kc: f64,
    /// The metal is heat-treated, above [`HARDENED_HB`].
    pub hardened: bool,
}

impl TapForceRow {
    /// The specific cutting force.
    pub const fn stress(&self) -> Stress {
        Stress::from_mpa(self.kc)
    }
}

/// Brinell hardness above which rows for heat-treated alloy steel hold: between A's 193 HB and the 280 HB of 950 N/mm².
pub const HARDENED_HB: u16 = 240;

const fn row(
    author: TapAuthor,
    materials: &'static [Material],
    detail: &'static str,
    kc: f64,
) -> TapForceRow {
    TapForceRow {
        author,
        materials,
        detail,
        kc,
        hardened: false,
    }
}
const fn hard(author: TapAuthor, detail: &'static str, kc: f64) -> TapForceRow {
    TapForceRow {
        hardened: true,
        ..row(author, &[AlloySteel], detail, kc)
    }
}

use Material::*;
use TapAuthor::{ByArea, ByPitch};

/// The rows of both makers that stand for a metal of ours.
#[rustfmt::skip]
pub static TAP_FORCES: [TapForceRow; 27] = [
    row(ByArea, &[MildSteel], "St 44-2 (structural steel), 133 HB", 3700.0),
    row(ByArea, &[MildSteel], "Ck 15 (0.15% carbon), 141 HB", 3600.0),
    row(ByArea, &[CarbonSteel], "Ck 35 (0.35% carbon), 162 HB", 3700.0),
    row(ByArea, &[CarbonSteel], "Ck 45 (0.45% carbon), 188 HB", 3900.0),
    row(ByArea, &[CarbonSteel], "Ck 60 (0.60% carbon), 188 HB", 4000.0),
    row(ByArea, &[AlloySteel], "42CrMo4 (chrome-moly), 193 HB", 3600.0),
    hard(ByArea, "42CrMo4 (chrome-moly), 30 HRC", 4900.0),
    hard(ByArea, "42CrMo4 (chrome-moly), 40 HRC", 5500.0),
    row(ByArea, &[StainlessSteel], "X6CrNi18-10 (18-10 stainless), 209 HB", 4200.0),
    row(ByArea, &[ToolSteel], "C105W2 (carbon tool steel), 175 HB", 5300.0),
    row(ByArea, &[Brass, HardBrass], "CuZn40 (brass)", 2300.0),
    row(ByArea, &[CastAluminium], "G-AlSi8Cu3 (cast aluminum)", 1300.0),
    row(ByArea, &[GrayIron], "GG-25 (gray iron EN-GJL-250), 193 HB", 2900.0),
    row(ByPitch, &[MildSteel], "plain structural steel, to 700 N/mm\u{b2}", 2300.0),
    row(ByPitch, &[FreeMachiningSteel], "free-cutting steel, to 700 N/mm\u{b2}", 2300.0),
    row(ByPitch, &[MildSteel, CarbonSteel], "structural steel, 500 to 950 N/mm\u{b2}", 2500.0),
    row(ByPitch, &[CarbonSteel, AlloySteel], "heat-treatable steel, 500 to 950 N/mm\u{b2}", 2600.0),
    hard(ByPitch, "heat-treated steel, 950 to 1400 N/mm\u{b2}", 3600.0),
    row(ByPitch, &[ToolSteel], "tool steel, 950 to 1400 N/mm\u{b2}", 3600.0),
    row(ByPitch, &[StainlessSteel], "austenitic stainless, 500 to 950 N/mm\u{b2}", 3200.0),
    row(ByPitch, &[Aluminium], "aluminum, long chips, to 550 N/mm\u{b2}", 800.0),
    row(ByPitch, &[CastAluminium], "aluminum, short chips, to 400 N/mm\u{b2}", 680.0),
    row(ByPitch, &[Brass, HardBrass, Bronze], "copper alloys, long chips, 300 to 700 N/mm\u{b2}", 1100.0),
    row(ByPitch, &[Brass, HardBrass, Bronze], "copper alloys, short chips, to 500 N/mm\u{b2}", 720.0),
    row(ByPitch, &[GrayIron], "gray iron, 120 to 260 HB", 1250.0),
    row(ByPitch, &[GrayIron], "alloyed gray iron, 160 to 230 HB", 1600.0),
    row(ByPitch, &[MalleableIron], "malleable iron, 150 to 280 HB", 1100.0),
];

/// How the chips leave the tap.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum TapFlutes {
    /// Straight flutes: the hand tap.
    Straight,
    /// Straight flutes with an angled point: chips go ahead.
    SpiralPoint,
    /// Flutes like a drill's: chips come out.
    Spiral,
}

/// A coarse and a fine thread, for each kind of tap.
type Factors = [(f64, f64); 4];

/// Factor K of A: straight flutes with plug chamfer, straight with bottoming chamfer, spiral flutes, spiral point; each for
/// a coarse and a fine thread, zero where the table has none.
const FACTORS: [(&[Material], Factors); 2] = [
    (
        &[Brass, HardBrass, Bronze, Copper],
        [(1.60, 1.12), (1.68, 0.0), (0.85, 0.0), (0.75, 1.00)],
    ),
    (
        &[
            GrayIron,
            MalleableIron,
            DuctileIron,
            Aluminium,
            CastAluminium,
        ],
        [(1.25, 1.08), (1.30, 1.25), (1.05, 1.10), (0.80, 1.00)],
    ),
];
const STEEL: Factors = [(1.35, 1.15), (1.43, 1.50), (1.15, 1.25), (0.95, 1.00)];

/// Factor K of A for a tap; nothing where its table has none. It has no taper tap: the plug tap's stands for it.
pub fn tap_factor(
    material: Material,
    flutes: TapFlutes,
    bottoming: bool,
    fine: bool,
) -> Option<f64> {
    let [plug, bottom, spiral, point] = FACTORS
        .iter()
        .find(|(materials, _)| materials.contains(&material))
        .map_or(STEEL, |(_, factors)| *factors);
    let (coarse, finer) = match flutes {
        TapFlutes::Straight if bottoming => bottom,
        TapFlutes::Straight => plug,
        TapFlutes::Spiral => spiral,
        TapFlutes::SpiralPoint => point,
    };
    Some(if fine { finer } else { coarse }).filter(|k| *k > 0.0)
}

/// How many times the torque of a new tap a worn one asks: table of practical tap torques, engineering formulary page, 2009
/// (each of its figures stands once for a new tap and doubled for a worn one).
pub const WORN_TAP: f64 = 2.0;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_rows_are_whole() {
        for row in &TAP_FORCES {
            assert!(!row.materials.is_empty() && (500.0..6000.0).contains(&row.kc));
        }
        // harder metal asks more, within each maker's own list
        let of = |detail: &str| {
            TAP_FORCES
                .iter()
                .find(|row| row.detail == detail)
                .map(|row| row.kc)
        };
        assert!(of("42CrMo4 (chrome-moly), 193 HB") < of("42CrMo4 (chrome-moly), 30 HRC"));
        assert!(of("42CrMo4 (chrome-moly), 30 HRC") < of("42CrMo4 (chrome-moly), 40 HRC"));
        assert!(of("Ck 15 (0.15% carbon), 141 HB") < of("Ck 45 (0.45% carbon), 188 HB"));
    }

    #[test]
    fn a_spiral_point_turns_easiest_on_a_coarse_thread() {
        for material in [MildSteel, GrayIron, Brass] {
            let k = |flutes| tap_factor(material, flutes, false, false);
            assert!(k(TapFlutes::SpiralPoint) < k(TapFlutes::Spiral));
            assert!(k(TapFlutes::Spiral) < k(TapFlutes::Straight));
        }
        assert_eq!(tap_factor(Brass, TapFlutes::Spiral, false, true), None);
    }
}
