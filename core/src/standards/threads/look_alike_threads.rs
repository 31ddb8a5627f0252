//! Which older and foreign threads are mistaken for Unified and metric ones?
//!
//! | | |
//! | --- | --- |
//! | standard | BSW and BSF: BS 84:1956; BA: BS 93:1951; pipe: ISO 228-1 (G) and ASME B1.20.1 (NPT); numbered screws No. 7 to 30: A.S.M.E. 1907 |
//! | unit | inch and threads per inch for Whitworth and NPT; millimetre for BA and G majors |
//! | authoritative | as stored; for G the pitch is 25.4 mm over the count |
//!
//! Numbered screws: diameter 0.060 in + 0.013 in a number; counts of the standard and the special series of 1907, from memory,
//! and a shop page on American screw gauges (NS counts, read). Limits: see [`LookAlike::screw_limits`].
//!
//! Sizes and counts partly from memory; the rows that a second print gives are checked in the tests.

use crate::quantity::{Angle, Length, Pitch};

/// A series that looks like another.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum LookAlikeSeries {
    /// British Standard Whitworth, 55 degrees.
    Bsw,
    /// British Standard Fine, 55 degrees.
    Bsf,
    /// British Association, 47.5 degrees.
    Ba,
    /// Parallel pipe thread, 55 degrees.
    PipeG,
    /// Taper pipe thread, 60 degrees, 1:16 on the diameter.
    Npt,
    /// Numbered machine screws of 1907 that today's series has not, 60 degrees: obsolete, and met on old machines.
    Asme1907,
}

impl LookAlikeSeries {
    /// Included angle of the thread.
    pub const fn angle(self) -> Angle {
        Angle::from_degrees(match self {
            Self::Bsw | Self::Bsf | Self::PipeG => 55.0,
            Self::Ba => 47.5,
            Self::Npt | Self::Asme1907 => 60.0,
        })
    }
    /// As it is called.
    pub const fn mark(self) -> &'static str {
        match self {
            Self::Bsw => "BSW",
            Self::Bsf => "BSF",
            Self::Ba => "BA",
            Self::PipeG => "G",
            Self::Npt => "NPT",
            Self::Asme1907 => "obsolete A.S.M.E.",
        }
    }
    /// The standard that gives its sizes.
    pub const fn standard(self) -> &'static str {
        match self {
            Self::Bsw | Self::Bsf => "BS 84:1956",
            Self::Ba => "BS 93:1951",
            Self::PipeG => "ISO 228-1",
            Self::Npt => "ASME B1.20.1",
            Self::Asme1907 => "A.S.M.E. 1907, obsolete",
        }
    }
    /// Depth of thread on one side over the pitch.
    pub const fn depth(self) -> f64 {
        match self {
            Self::Bsw | Self::Bsf | Self::PipeG => 0.640327,
            Self::Ba => 0.6,
            Self::Npt => 0.8,
            // as the unified form: the sharp V of 1907 is tapped to about that
            Self::Asme1907 => 0.541266,
        }
    }
}

/// One thread that is mistaken for another.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct LookAlike {
    /// Its series.
    pub series: LookAlikeSeries,
    /// Its size as it is called.
    pub size: &'static str,
    /// Major diameter.
    pub major: Length,
    /// Pitch.
    pub pitch: Pitch,
}

impl LookAlike {
    /// As it is called: `1/4-20 BSW`, `2 BA`, `G 1/4`.
    pub fn name(&self) -> String {
        match self.series {
            LookAlikeSeries::Ba => format!("{} BA", self.size),
            LookAlikeSeries::PipeG => format!("G {}", self.size),
            LookAlikeSeries::Npt => format!("{} NPT", self.size),
            LookAlikeSeries::Bsw | LookAlikeSeries::Bsf | LookAlikeSeries::Asme1907 => {
                format!("{} {}", self.size, self.series.mark())
            }
        }
    }
}

impl LookAlike {
    /// Least and most major diameter of a usual screw, from the tolerance formulas of its standard; `None` where none is to hand.
    ///
    /// BSW, BSF: BS 84, medium class to the basic size: T + 0.01 √P under 0.3 T allowance (none above 3/4 in), with
    /// T = 0.002 ∛D + 0.003 √D + 0.005 √P, inches (from memory). BA: BS 93, normal class: 0.2 P under 0.025 mm, 0.25 P from 11 BA
    /// (Machinery's Handbook, 31st ed., p. 2115). G: ISO 228-1, by the count (from memory). NPT: from the small end of the full
    /// thread, E0 + 0.8 P with E0 = D − (0.05 D + 1.1 in) P, to the pipe's outside (ASME B1.20.1).
    pub fn screw_limits(&self) -> Option<(Length, Length)> {
        let (d, p) = (self.major, self.pitch.length());
        let under = match self.series {
            LookAlikeSeries::Bsw | LookAlikeSeries::Bsf => {
                let (d, p) = (d.inches(), p.inches());
                let t = 0.002 * libm::cbrt(d) + 0.003 * libm::sqrt(d) + 0.005 * libm::sqrt(p);
                let allowance = if d > 0.7501 { 0.0 } else { 0.3 * t };
                Length::from_inches(allowance + t + 0.01 * libm::sqrt(p))
            }
            // 11 BA has a pitch of 0.31 mm, 10 BA of 0.35 mm
            LookAlikeSeries::Ba if p.mm() > 0.33 => Length::from_mm(0.025) + p * 0.2,
            LookAlikeSeries::Ba => p * 0.25,
            LookAlikeSeries::PipeG => Length::from_mm(pipe_room(self.pitch)?.0),
            LookAlikeSeries::Npt => {
                Length::from_inches((0.05 * d.inches() + 1.1) * p.inches() - 0.8 * p.inches())
            }
            LookAlikeSeries::Asme1907 => return None,
        };
        Some((d - under, d))
    }

    /// Least and most minor diameter of a usual tapped hole; `None` where none is to hand. BSW, BSF: 0.2 P + 0.004 in (26 threads
    /// and finer), 0.005 (24 and 22) or 0.007 over the basic one (BS 84, from memory); BA: 0.375 P over it; G by the count.
    pub fn hole_limits(&self) -> Option<(Length, Length)> {
        let p = self.pitch.length();
        let basic = self.major - p * (2.0 * self.series.depth());
        let over = match self.series {
            LookAlikeSeries::Bsw | LookAlikeSeries::Bsf => {
                let fixed = match self.pitch.tpi() {
                    tpi if tpi > 25.9 => 0.004,
                    tpi if tpi > 21.9 => 0.005,
                    _ => 0.007,
                };
                p * 0.2 + Length::from_inches(fixed)
            }
            LookAlikeSeries::Ba => p * 0.375,
            LookAlikeSeries::PipeG => Length::from_mm(pipe_room(self.pitch)?.1),
            LookAlikeSeries::Npt | LookAlikeSeries::Asme1907 => return None,
        };
        Some((basic, basic + over))
    }
}

/// Tolerance of the crest of a screw and of a hole of ISO 228-1, mm, by the count (from memory).
fn pipe_room(pitch: Pitch) -> Option<(f64, f64)> {
    [
        (28.0, 0.214, 0.282),
        (19.0, 0.25, 0.445),
        (14.0, 0.284, 0.541),
        (11.0, 0.36, 0.64),
    ]
    .into_iter()
    .find(|row| (pitch.tpi() - row.0).abs() < 0.01)
    .map(|row| (row.1, row.2))
}

const fn inch(series: LookAlikeSeries, size: &'static str, major_in: f64, tpi: f64) -> LookAlike {
    LookAlike {
        series,
        size,
        major: Length::from_inches(major_in),
        pitch: Pitch::from_tpi(tpi),
    }
}

const fn ba(size: &'static str, major_mm: f64, pitch_mm: f64) -> LookAlike {
    LookAlike {
        series: LookAlikeSeries::Ba,
        size,
        major: Length::from_mm(major_mm),
        pitch: Pitch::from_mm(pitch_mm),
    }
}

const fn pipe(size: &'static str, major_mm: f64, tpi: f64) -> LookAlike {
    LookAlike {
        series: LookAlikeSeries::PipeG,
        size,
        major: Length::from_mm(major_mm),
        pitch: Pitch::from_tpi(tpi),
    }
}

/// All of them, by series and size.
#[rustfmt::skip]
pub const LOOK_ALIKES: [LookAlike; 115] = [
    inch(LookAlikeSeries::Bsw, "1/16", 0.0625, 60.0),
    inch(LookAlikeSeries::Bsw, "3/32", 0.09375, 48.0),
    inch(LookAlikeSeries::Bsw, "1/8", 0.125, 40.0),
    inch(LookAlikeSeries::Bsw, "5/32", 0.15625, 32.0),
    inch(LookAlikeSeries::Bsw, "3/16", 0.1875, 24.0),
    inch(LookAlikeSeries::Bsw, "7/32", 0.21875, 24.0),
    inch(LookAlikeSeries::Bsw, "1/4", 0.25, 20.0),
    inch(LookAlikeSeries::Bsw, "5/16", 0.3125, 18.0),
    inch(LookAlikeSeries::Bsw, "3/8", 0.375, 16.0),
    inch(LookAlikeSeries::Bsw, "7/16", 0.4375, 14.0),
    inch(LookAlikeSeries::Bsw, "1/2", 0.5, 12.0),
    inch(LookAlikeSeries::Bsw, "9/16", 0.5625, 12.0),
    inch(LookAlikeSeries::Bsw, "5/8", 0.625, 11.0),
    inch(LookAlikeSeries::Bsw, "11/16", 0.6875, 11.0),
    inch(LookAlikeSeries::Bsw, "3/4", 0.75, 10.0),
    inch(LookAlikeSeries::Bsw, "7/8", 0.875, 9.0),
    inch(LookAlikeSeries::Bsw, "1", 1.0, 8.0),
    inch(LookAlikeSeries::Bsw, "1-1/8", 1.125, 7.0),
    inch(LookAlikeSeries::Bsw, "1-1/4", 1.25, 7.0),
    inch(LookAlikeSeries::Bsw, "1-1/2", 1.5, 6.0),
    inch(LookAlikeSeries::Bsw, "1-3/4", 1.75, 5.0),
    inch(LookAlikeSeries::Bsw, "2", 2.0, 4.5),
    inch(LookAlikeSeries::Bsf, "3/16", 0.1875, 32.0),
    inch(LookAlikeSeries::Bsf, "7/32", 0.21875, 28.0),
    inch(LookAlikeSeries::Bsf, "1/4", 0.25, 26.0),
    inch(LookAlikeSeries::Bsf, "9/32", 0.28125, 26.0),
    inch(LookAlikeSeries::Bsf, "5/16", 0.3125, 22.0),
    inch(LookAlikeSeries::Bsf, "3/8", 0.375, 20.0),
    inch(LookAlikeSeries::Bsf, "7/16", 0.4375, 18.0),
    inch(LookAlikeSeries::Bsf, "1/2", 0.5, 16.0),
    inch(LookAlikeSeries::Bsf, "9/16", 0.5625, 16.0),
    inch(LookAlikeSeries::Bsf, "5/8", 0.625, 14.0),
    inch(LookAlikeSeries::Bsf, "11/16", 0.6875, 14.0),
    inch(LookAlikeSeries::Bsf, "3/4", 0.75, 12.0),
    inch(LookAlikeSeries::Bsf, "7/8", 0.875, 11.0),
    inch(LookAlikeSeries::Bsf, "1", 1.0, 10.0),
    inch(LookAlikeSeries::Bsf, "1-1/8", 1.125, 9.0),
    inch(LookAlikeSeries::Bsf, "1-1/4", 1.25, 9.0),
    inch(LookAlikeSeries::Bsf, "1-3/8", 1.375, 8.0),
    inch(LookAlikeSeries::Bsf, "1-1/2", 1.5, 8.0),
    ba("0", 6.0, 1.0),
    ba("1", 5.3, 0.9),
    ba("2", 4.7, 0.81),
    ba("3", 4.1, 0.73),
    ba("4", 3.6, 0.66),
    ba("5", 3.2, 0.59),
    ba("6", 2.8, 0.53),
    ba("7", 2.5, 0.48),
    ba("8", 2.2, 0.43),
    ba("9", 1.9, 0.39),
    ba("10", 1.7, 0.35),
    ba("11", 1.5, 0.31),
    ba("12", 1.3, 0.28),
    ba("13", 1.2, 0.25),
    ba("14", 1.0, 0.23),
    ba("15", 0.9, 0.21),
    ba("16", 0.79, 0.19),
    pipe("1/16", 7.723, 28.0),
    pipe("1/8", 9.728, 28.0),
    pipe("1/4", 13.157, 19.0),
    pipe("3/8", 16.662, 19.0),
    pipe("1/2", 20.955, 14.0),
    pipe("5/8", 22.911, 14.0),
    pipe("3/4", 26.441, 14.0),
    pipe("7/8", 30.201, 14.0),
    pipe("1", 33.249, 11.0),
    pipe("1-1/4", 41.91, 11.0),
    pipe("1-1/2", 47.803, 11.0),
    pipe("2", 59.614, 11.0),
    inch(LookAlikeSeries::Npt, "1/16", 0.3125, 27.0),
    inch(LookAlikeSeries::Npt, "1/8", 0.405, 27.0),
    inch(LookAlikeSeries::Npt, "1/4", 0.54, 18.0),
    inch(LookAlikeSeries::Npt, "3/8", 0.675, 18.0),
    inch(LookAlikeSeries::Npt, "1/2", 0.84, 14.0),
    inch(LookAlikeSeries::Npt, "3/4", 1.05, 14.0),
    inch(LookAlikeSeries::Npt, "1", 1.315, 11.5),
    inch(LookAlikeSeries::Npt, "1-1/4", 1.66, 11.5),
    inch(LookAlikeSeries::Npt, "1-1/2", 1.9, 11.5),
    inch(LookAlikeSeries::Npt, "2", 2.375, 11.5),
    inch(LookAlikeSeries::Npt, "2-1/2", 2.875, 8.0),
    inch(LookAlikeSeries::Npt, "3", 3.5, 8.0),
    inch(LookAlikeSeries::Npt, "3-1/2", 4.0, 8.0),
    inch(LookAlikeSeries::Npt, "4", 4.5, 8.0),
    inch(LookAlikeSeries::Npt, "5", 5.563, 8.0),
    inch(LookAlikeSeries::Npt, "6", 6.625, 8.0),
    inch(LookAlikeSeries::Asme1907, "#4-36", 0.112, 36.0),
    inch(LookAlikeSeries::Asme1907, "#5-36", 0.125, 36.0),
    inch(LookAlikeSeries::Asme1907, "#6-36", 0.138, 36.0),
    inch(LookAlikeSeries::Asme1907, "#7-36", 0.151, 36.0),
    inch(LookAlikeSeries::Asme1907, "#7-32", 0.151, 32.0),
    inch(LookAlikeSeries::Asme1907, "#7-30", 0.151, 30.0),
    inch(LookAlikeSeries::Asme1907, "#8-30", 0.164, 30.0),
    inch(LookAlikeSeries::Asme1907, "#9-32", 0.177, 32.0),
    inch(LookAlikeSeries::Asme1907, "#9-30", 0.177, 30.0),
    inch(LookAlikeSeries::Asme1907, "#9-24", 0.177, 24.0),
    inch(LookAlikeSeries::Asme1907, "#10-30", 0.19, 30.0),
    inch(LookAlikeSeries::Asme1907, "#14-24", 0.242, 24.0),
    inch(LookAlikeSeries::Asme1907, "#14-20", 0.242, 20.0),
    inch(LookAlikeSeries::Asme1907, "#16-22", 0.268, 22.0),
    inch(LookAlikeSeries::Asme1907, "#16-20", 0.268, 20.0),
    inch(LookAlikeSeries::Asme1907, "#16-18", 0.268, 18.0),
    inch(LookAlikeSeries::Asme1907, "#18-20", 0.294, 20.0),
    inch(LookAlikeSeries::Asme1907, "#18-18", 0.294, 18.0),
    inch(LookAlikeSeries::Asme1907, "#20-20", 0.32, 20.0),
    inch(LookAlikeSeries::Asme1907, "#20-18", 0.32, 18.0),
    inch(LookAlikeSeries::Asme1907, "#22-18", 0.346, 18.0),
    inch(LookAlikeSeries::Asme1907, "#22-16", 0.346, 16.0),
    inch(LookAlikeSeries::Asme1907, "#24-16", 0.372, 16.0),
    inch(LookAlikeSeries::Asme1907, "#24-18", 0.372, 18.0),
    inch(LookAlikeSeries::Asme1907, "#26-16", 0.398, 16.0),
    inch(LookAlikeSeries::Asme1907, "#26-14", 0.398, 14.0),
    inch(LookAlikeSeries::Asme1907, "#28-14", 0.424, 14.0),
    inch(LookAlikeSeries::Asme1907, "#28-16", 0.424, 16.0),
    inch(LookAlikeSeries::Asme1907, "#30-14", 0.45, 14.0),
    inch(LookAlikeSeries::Asme1907, "#30-16", 0.45, 16.0),
];
