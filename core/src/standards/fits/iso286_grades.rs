//! How wide is a tolerance grade IT01 … IT18 at a size?
//!
//! ISO 286-1:2010, Table 1, to 500 mm. Micrometres are authoritative; steps are "over … up to and including", mm.
//! IT01–IT4 have decimals and are kept in tenths; from IT5 up all are whole micrometres.

/// One size step of the table of standard tolerance grades.
pub struct GradeStep {
    /// Upper end of the step, included, mm.
    pub to_mm: u16,
    /// IT01, IT0, IT1, IT2, IT3, IT4 in tenths of a micrometre.
    pub fine: [u8; 6],
    /// IT5 … IT18 in micrometres.
    pub coarse: [u16; 14],
}

const fn tenths(um: f64) -> u8 {
    (um * 10.0 + 0.5) as u8
}

const fn grades(to_mm: u16, f: [f64; 6], coarse: [u16; 14]) -> GradeStep {
    let [a, b, c, d, e, g] = f;
    GradeStep {
        to_mm,
        fine: [
            tenths(a),
            tenths(b),
            tenths(c),
            tenths(d),
            tenths(e),
            tenths(g),
        ],
        coarse,
    }
}

/// The thirteen main steps. Columns: IT01, IT0, IT1 … IT4; IT5 … IT18, micrometres as printed.
#[rustfmt::skip]
pub const GRADES: [GradeStep; 13] = [
    grades(3, [0.3, 0.5, 0.8, 1.2, 2.0, 3.0], [4, 6, 10, 14, 25, 40, 60, 100, 140, 250, 400, 600, 1000, 1400]),
    grades(6, [0.4, 0.6, 1.0, 1.5, 2.5, 4.0], [5, 8, 12, 18, 30, 48, 75, 120, 180, 300, 480, 750, 1200, 1800]),
    grades(10, [0.4, 0.6, 1.0, 1.5, 2.5, 4.0], [6, 9, 15, 22, 36, 58, 90, 150, 220, 360, 580, 900, 1500, 2200]),
    grades(18, [0.5, 0.8, 1.2, 2.0, 3.0, 5.0], [8, 11, 18, 27, 43, 70, 110, 180, 270, 430, 700, 1100, 1800, 2700]),
    grades(30, [0.6, 1.0, 1.5, 2.5, 4.0, 6.0], [9, 13, 21, 33, 52, 84, 130, 210, 330, 520, 840, 1300, 2100, 3300]),
    grades(50, [0.6, 1.0, 1.5, 2.5, 4.0, 7.0], [11, 16, 25, 39, 62, 100, 160, 250, 390, 620, 1000, 1600, 2500, 3900]),
    grades(80, [0.8, 1.2, 2.0, 3.0, 5.0, 8.0], [13, 19, 30, 46, 74, 120, 190, 300, 460, 740, 1200, 1900, 3000, 4600]),
    grades(120, [1.0, 1.5, 2.5, 4.0, 6.0, 10.0], [15, 22, 35, 54, 87, 140, 220, 350, 540, 870, 1400, 2200, 3500, 5400]),
    grades(180, [1.2, 2.0, 3.5, 5.0, 8.0, 12.0], [18, 25, 40, 63, 100, 160, 250, 400, 630, 1000, 1600, 2500, 4000, 6300]),
    grades(250, [2.0, 3.0, 4.5, 7.0, 10.0, 14.0], [20, 29, 46, 72, 115, 185, 290, 460, 720, 1150, 1850, 2900, 4600, 7200]),
    grades(315, [2.5, 4.0, 6.0, 8.0, 12.0, 16.0], [23, 32, 52, 81, 130, 210, 320, 520, 810, 1300, 2100, 3200, 5200, 8100]),
    grades(400, [3.0, 5.0, 7.0, 9.0, 13.0, 18.0], [25, 36, 57, 89, 140, 230, 360, 570, 890, 1400, 2300, 3600, 5700, 8900]),
    grades(500, [4.0, 6.0, 8.0, 10.0, 15.0, 20.0], [27, 40, 63, 97, 155, 250, 400, 630, 970, 1550, 2500, 4000, 6300, 9700]),
];

impl GradeStep {
    /// Width of grade `grade` (-1 is IT01, 0 is IT0, then 1 … 18) in twentieths of a micrometre, so that half of it is whole too.
    pub fn twentieths(&self, grade: i8) -> Option<i32> {
        let at = usize::try_from(grade.checked_add(1)?).ok()?;
        match self.fine.get(at) {
            Some(&fine) => Some(i32::from(fine) * 2),
            None => Some(i32::from(*self.coarse.get(at.checked_sub(6)?)?) * 20),
        }
    }
}
