//! What torque does a tap ask? By the area of thread that the hole leaves, by pitch and diameter, and the range of both makers.

use super::fault::{CutFault, positive};
use crate::quantity::{Length, Stress, Torque};
use crate::source::Source;
use crate::standards::cutting::cutting_speeds::Material;
use crate::standards::cutting::tap_forces::{
    HARDENED_HB, TAP_FORCES, TapAuthor, TapFlutes, TapForceRow, tap_factor,
};

/// Torque by the area of thread.
pub(crate) static TAP_BY_AREA: Source = Source::read(
    "Tap maker's catalogue, 2016-2017",
    "p. 781, tapping torque of cutting taps, kc and K",
);
/// Torque by pitch and diameter.
pub(crate) static TAP_BY_PITCH: Source = Source::read(
    "Second tap maker's technical page, calculations",
    "Md = kc P\u{b2} D / 8000, table of kc",
);
/// A worn tap.
pub(crate) static TAP_WORN: Source = Source::read(
    "Engineering formulary page, 2009",
    "tapping torque, table of practical torques: a worn tap asks twice a new one's",
);

/// tan 30°: half of the thread angle of 60 degrees.
const TAN_HALF: f64 = 0.577_350_269_189_625_8;

/// What the area formula makes of diameter and hole, mm³: the groove's section by its lever, times 24 / tan θ.
fn thread_moment(major: Length, hole: Length) -> f64 {
    let (d, h) = (major.mm(), hole.mm());
    (d - h) * (d - h) * (d + 2.0 * h)
}

/// Torque by the area of thread: M = tan θ kc K (D − Do)² (D + 2 Do) / 24000, N·m.
///
/// - kc: specific cutting force of tapping, N/mm²; K: factor of the tap; D: major diameter, Do: hole, mm; θ = 30°.
/// - The groove's section is tan θ (D − Do)² / 4 and its centroid lies (D + 2 Do) / 6 from the axis.
/// - Range: a 60-degree thread, hole under the major diameter. Source: tap maker's catalogue, 2016-2017, p. 781.
///
/// # Errors
/// [`CutFault::NotPositive`] for a hole of nothing or as large as the thread.
///
/// ```
/// use benchslate_core::{cutting::tap_torque_by_area, quantity::*};
/// // Table of practical tap torques, formulary page, 2009: Ck 45, M12, new tap, 12.5 N·m
/// let mm = Length::from_mm;
/// let torque = tap_torque_by_area(Stress::from_mpa(3900.0), 1.35, mm(12.0), mm(10.25)).unwrap();
/// assert!((torque.newton_metres() - 12.5).abs() < 0.5);
/// ```
pub fn tap_torque_by_area(
    kc: Stress,
    factor: f64,
    major: Length,
    hole: Length,
) -> Result<Torque, CutFault> {
    positive(hole.mm(), "the hole")?;
    positive((major - hole).mm(), "the depth of the thread")?;
    Ok(Torque::from_newton_metres(
        TAN_HALF * kc.mpa() * factor * thread_moment(major, hole) / 24_000.0,
    ))
}

/// Torque by pitch and diameter: M = kc P² D / 8000, N·m, kc in N/mm², P and D in mm, for a hole of D − P.
///
/// Source: a second tap maker's technical page; kc is its own.
///
/// # Errors
/// [`CutFault::NotPositive`] for a pitch or diameter of nothing.
///
/// ```
/// use benchslate_core::{cutting::tap_torque_by_pitch, quantity::*};
/// // Table of practical tap torques, formulary page, 2009: free-cutting 9SMnPb36, M12, new tap, 10 N·m
/// let torque = tap_torque_by_pitch(Stress::from_mpa(2300.0), Length::from_mm(1.75), Length::from_mm(12.0)).unwrap();
/// assert!((torque.newton_metres() - 10.0).abs() < 1.0);
/// ```
pub fn tap_torque_by_pitch(kc: Stress, pitch: Length, major: Length) -> Result<Torque, CutFault> {
    let p = positive(pitch.mm(), "the pitch")?;
    let d = positive(major.mm(), "the diameter")?;
    Ok(Torque::from_newton_metres(kc.mpa() * p * p * d / 8000.0))
}

/// A tap in its hole.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct TapCut {
    /// Major diameter of the thread.
    pub major: Length,
    /// Its pitch.
    pub pitch: Length,
    /// The hole.
    pub hole: Length,
    /// A finer thread than the coarse one of its diameter.
    pub fine: bool,
    /// How the chips leave.
    pub flutes: TapFlutes,
    /// The short chamfer of a bottoming tap; the long one of a taper tap has no factor in print.
    pub bottoming: bool,
}

/// The torque that the makers' rows give for a sharp tap, with oil.
#[derive(Clone, PartialEq, Debug)]
pub struct TapLoad {
    /// Least of the rows.
    pub low: Torque,
    /// Middle of least and most: the two makers' figures have no better claim one over the other.
    pub nominal: Torque,
    /// Most of the rows.
    pub high: Torque,
    /// The rows with what each gives.
    pub rows: Vec<(&'static TapForceRow, Torque)>,
}

/// The torque of a tap by both makers; nothing where neither has the metal.
///
/// The formula by pitch holds for a hole of D − P; for another hole its figure is brought over in proportion to the
/// formula by area. Rows for heat-treated steel hold above 240 HB.
///
/// ```
/// use benchslate_core::{cutting::*, quantity::Length, standards::{cutting::cutting_speeds::Material, cutting::tap_forces::TapFlutes}};
/// // Table of practical tap torques, formulary page, 2009: Ck 45, M6, new tap, 2.2 N·m
/// let mm = Length::from_mm;
/// let cut = TapCut { major: mm(6.0), pitch: mm(1.0), hole: mm(5.0), fine: false, flutes: TapFlutes::Straight, bottoming: false };
/// let load = tap_load(Material::CarbonSteel, None, &cut).unwrap();
/// assert!((load.nominal.newton_metres() / 2.2 - 1.0).abs() < 0.15);
/// ```
pub fn tap_load(material: Material, hardness: Option<u16>, cut: &TapCut) -> Option<TapLoad> {
    let hardened = material == Material::AlloySteel && hardness.is_some_and(|hb| hb > HARDENED_HB);
    let factor = tap_factor(material, cut.flutes, cut.bottoming, cut.fine);
    let usual = cut.major - cut.pitch;
    let rows: Vec<(&'static TapForceRow, Torque)> = TAP_FORCES
        .iter()
        .filter(|row| row.materials.contains(&material) && row.hardened == hardened)
        .filter_map(|row| {
            let torque = match row.author {
                TapAuthor::ByArea => {
                    tap_torque_by_area(row.stress(), factor?, cut.major, cut.hole).ok()?
                }
                TapAuthor::ByPitch => {
                    positive((cut.major - cut.hole).mm(), "the depth of the thread").ok()?;
                    tap_torque_by_pitch(row.stress(), cut.pitch, cut.major).ok()?
                        * (thread_moment(cut.major, cut.hole) / thread_moment(cut.major, usual))
                }
            };
            Some((row, torque))
        })
        .collect();
    let (_, first) = rows.first()?;
    let (low, high) = rows
        .iter()
        .fold((*first, *first), |(low, high), (_, torque)| {
            (low.min(*torque), high.max(*torque))
        });
    Some(TapLoad {
        low,
        nominal: (low + high) / 2.0,
        high,
        rows,
    })
}
