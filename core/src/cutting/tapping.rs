//! How much thread should a tap cut here, how deep must a blind hole be drilled, and what do the manuals say of both?

use super::fault::{CutFault, positive};
use crate::quantity::{Length, RotationalSpeed, Share, Time};
use crate::source::Source;
use crate::standards::cutting::cutting_speeds::Material;

/// Thread depth of a tapped hole: average, least and most.
pub(crate) static THREAD_SHARE: Source = Source::read(
    "OD1621 Use and Care of Handtools, U.S. Army",
    "p. 177: 75% on the average, 50 to 53% for small or deep holes, 83% at most",
);
/// Chamfer of hand taps.
pub(crate) static CHAMFER: Source = Source::read(
    "TM 9-254, U.S. Army",
    "par. 4-27: taper tap 7 to 10 threads, plug tap 3 to 5, bottoming tap 1 to 2",
);
/// What more thread costs.
pub(crate) static SHARE_COST: Source = Source::read(
    "Tap maker's article on tapping difficulties and percent of thread",
    "1020 steel: from 60 to 72% twice the torque for 5% more strength",
);

/// The least, average and greatest thread of a tapped hole (OD1621, p. 177).
pub const THREAD_BAND: (f64, f64, f64) = (50.0, 75.0, 83.0);

/// A hole deeper than this many diameters, or a tap under [`SMALL_TAP_IN`], takes less thread (common practice).
pub const DEEP: f64 = 1.5;
/// A hole deeper than this many diameters takes still less (common practice).
pub const VERY_DEEP: f64 = 2.0;
/// Taps under this diameter, in inches, count as small (common practice).
pub const SMALL_TAP_IN: f64 = 0.138;

/// Thread to start from, percent of 1.299 P: ordinary metal and tough metal, by how many of the three hold: deeper than
/// [`DEEP`], deeper than [`VERY_DEEP`], smaller than [`SMALL_TAP_IN`]. Common practice, within the band of OD1621.
const START: [(f64, f64); 3] = [(75.0, 65.0), (65.0, 60.0), (60.0, 55.0)];

/// The kind of hand tap by its chamfer.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum TapChamfer {
    /// Long chamfer, starts easily.
    Taper,
    /// The usual tap.
    Plug,
    /// Reaches the bottom of a blind hole.
    Bottoming,
}

impl TapChamfer {
    /// Fewest and most chamfered threads (TM 9-254, par. 4-27).
    pub const fn threads(self) -> (u8, u8) {
        match self {
            Self::Taper => (7, 10),
            Self::Plug => (3, 5),
            Self::Bottoming => (1, 2),
        }
    }
}

/// True for metals in which taps break: less thread is cut in them (common practice).
pub const fn is_tough(material: Material) -> bool {
    matches!(
        material,
        Material::StainlessSteel
            | Material::ToolSteel
            | Material::AlloySteel
            | Material::Titanium
            | Material::Monel
    )
}

/// Thread to start from, percent of 1.299 P, by metal, diameter of the tap and depth of full thread.
///
/// Common practice, inside the band 50 to 83 % of OD1621.
///
/// ```
/// use benchslate_core::{cutting::thread_to_cut, quantity::Length, standards::cutting::cutting_speeds::Material};
/// // OD1621, p. 177: 75 % on the average.
/// let share = thread_to_cut(Material::MildSteel, Length::from_inches(0.25), Length::from_inches(0.25));
/// assert!((share.percent() - 75.0).abs() < 1e-9);
/// ```
pub fn thread_to_cut(material: Material, diameter: Length, depth: Length) -> Share {
    let deep = usize::from(depth > diameter * DEEP) + usize::from(depth > diameter * VERY_DEEP);
    let small = usize::from(diameter < Length::from_inches(SMALL_TAP_IN));
    let (ordinary, tough) = START
        .get((deep + small).min(2))
        .copied()
        .unwrap_or((THREAD_BAND.1, THREAD_BAND.1));
    Share::from_percent(if is_tough(material) { tough } else { ordinary })
}

/// Full-diameter depth to drill for a blind thread: full thread, the chamfer and one pitch of room, the drill's point extra.
///
/// `chamfered` is the number of chamfered threads; the room is common practice.
///
/// ```
/// use benchslate_core::{cutting::blind_depth, quantity::Length};
/// // 1/4-20, half an inch of thread, a plug tap of five chamfered threads (TM 9-254): 0.5 + 5/20 + 1/20 in.
/// let depth = blind_depth(Length::from_inches(0.5), Length::from_inches(0.05), 5);
/// assert!((depth.inches() - 0.8).abs() < 1e-9);
/// ```
pub fn blind_depth(full_thread: Length, pitch: Length, chamfered: u8) -> Length {
    full_thread + pitch * (f64::from(chamfered) + 1.0)
}

/// Time in which a tap turns so far: t = turns / n.
///
/// # Errors
/// [`CutFault::NotPositive`] for a spindle that does not turn.
///
/// ```
/// use benchslate_core::{cutting::tap_time, quantity::RotationalSpeed};
/// // 1/4-20 at 610 rpm goes in at 0.51 in/s: ten turns, half an inch of thread, in about a second
/// let time = tap_time(10.0, RotationalSpeed::from_rpm(610.0)).unwrap();
/// assert!((time.seconds() - 0.98).abs() < 0.005);
/// ```
pub fn tap_time(turns: f64, speed: RotationalSpeed) -> Result<Time, CutFault> {
    let n = positive(speed.rpm(), "the spindle speed")?;
    Ok(Time::from_minutes(turns / n))
}
