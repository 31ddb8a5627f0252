//! How much power does a cubic inch a minute of this metal take? Unit power, the factors it needs, and specific cutting force.
//!
//! Sources, table by table: Machinery's Handbook 31st ed., p. 1147, Table 1b (Kp, hp per in³/min authoritative, sharp tools);
//! Machining Power, Tables 2, 3 and 4 (C, W, E; from memory); p. 1152, Table 7 (chisel edge); Tabellenbuch Zerspantechnik, 5th
//! ed. 2022, pp. 215-216, and Kienzle/Victor values as in Tschaetsch, Praxis der Zerspantechnik (kc1.1 and mc, a pair of one
//! author, N/mm²); Kalpakjian, specific energy at the motor (from memory). A bare constant is never a power: C for the chip, W
//! for wear and E for the drive belong to it.

use crate::quantity::{FeedPerRev, Power, RemovalRate, Stress};

/// One row of unit power: a group of materials in a step of hardness, sharp tool, chip of 0.012 in.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct UnitPowerRow {
    /// The group of materials.
    pub group: PowerGroup,
    /// Brinell hardness from and to.
    pub hardness: (u16, u16),
    /// Horsepower per cubic inch a minute, as printed.
    pub hp_per_in3_min: f64,
}

/// The groups of Table 1b.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum PowerGroup {
    /// Plain carbon steels.
    PlainCarbon,
    /// Free-machining steels, AISI 1108 to 1132 group.
    Free1108,
    /// Free-machining steels, AISI 1137 to 1151 group.
    Free1137,
    /// Alloy steels, AISI 4023 to 8740 group (4140, 4340, 5140, 8640).
    Alloy4140,
    /// Alloy steels, AISI 4130, 4320, 4615, 8620 group.
    Alloy4130,
    /// Alloy steels, AISI 1330, 1335, 1340, E52100.
    Alloy1340,
}

impl PowerGroup {
    /// All groups, in the order of the table.
    pub const ALL: [Self; 6] = [
        Self::PlainCarbon,
        Self::Free1108,
        Self::Free1137,
        Self::Alloy4140,
        Self::Alloy4130,
        Self::Alloy1340,
    ];

    /// The label on screen.
    pub const fn label(self) -> &'static str {
        match self {
            Self::PlainCarbon => "plain carbon steels",
            Self::Free1108 => "free-machining steels, AISI 1108 to 1132",
            Self::Free1137 => "free-machining steels, AISI 1137 to 1151",
            Self::Alloy4140 => "alloy steels, 4140, 4340, 5140, 8640 group",
            Self::Alloy4130 => "alloy steels, 4130, 4320, 4615, 8620 group",
            Self::Alloy1340 => "alloy steels, 1330, 1335, 1340, E52100",
        }
    }

    /// The word that stands in links.
    pub const fn id(self) -> &'static str {
        match self {
            Self::PlainCarbon => "plain-carbon",
            Self::Free1108 => "free-1108",
            Self::Free1137 => "free-1137",
            Self::Alloy4140 => "alloy-4140",
            Self::Alloy4130 => "alloy-4130",
            Self::Alloy1340 => "alloy-1340",
        }
    }
}

const fn kp(group: PowerGroup, from: u16, to: u16, hp_per_in3_min: f64) -> UnitPowerRow {
    UnitPowerRow {
        group,
        hardness: (from, to),
        hp_per_in3_min,
    }
}

/// Unit power Kp, hp per in³/min (Machinery's Handbook 31st ed., p. 1147, Table 1b, plain carbon, free-machining and alloy steels, every step).
#[rustfmt::skip]
pub const KP: &[UnitPowerRow] = &[
    kp(PowerGroup::PlainCarbon, 80, 100, 0.63),
    kp(PowerGroup::PlainCarbon, 100, 120, 0.66),
    kp(PowerGroup::PlainCarbon, 120, 140, 0.69),
    kp(PowerGroup::PlainCarbon, 140, 160, 0.74),
    kp(PowerGroup::PlainCarbon, 160, 180, 0.78),
    kp(PowerGroup::PlainCarbon, 180, 200, 0.82),
    kp(PowerGroup::PlainCarbon, 200, 220, 0.85),
    kp(PowerGroup::PlainCarbon, 220, 240, 0.89),
    kp(PowerGroup::PlainCarbon, 240, 260, 0.92),
    kp(PowerGroup::PlainCarbon, 260, 280, 0.95),
    kp(PowerGroup::PlainCarbon, 280, 300, 1.0),
    kp(PowerGroup::PlainCarbon, 300, 320, 1.03),
    kp(PowerGroup::PlainCarbon, 320, 340, 1.06),
    kp(PowerGroup::PlainCarbon, 340, 360, 1.14),
    kp(PowerGroup::Free1108, 100, 120, 0.41),
    kp(PowerGroup::Free1108, 120, 140, 0.42),
    kp(PowerGroup::Free1108, 140, 160, 0.44),
    kp(PowerGroup::Free1108, 160, 180, 0.48),
    kp(PowerGroup::Free1108, 180, 200, 0.5),
    kp(PowerGroup::Free1137, 180, 200, 0.51),
    kp(PowerGroup::Free1137, 200, 220, 0.55),
    kp(PowerGroup::Free1137, 220, 240, 0.57),
    kp(PowerGroup::Free1137, 240, 260, 0.62),
    kp(PowerGroup::Alloy4140, 140, 160, 0.62),
    kp(PowerGroup::Alloy4140, 160, 180, 0.65),
    kp(PowerGroup::Alloy4140, 180, 200, 0.69),
    kp(PowerGroup::Alloy4140, 200, 220, 0.72),
    kp(PowerGroup::Alloy4140, 220, 240, 0.76),
    kp(PowerGroup::Alloy4140, 240, 260, 0.8),
    kp(PowerGroup::Alloy4140, 260, 280, 0.84),
    kp(PowerGroup::Alloy4140, 280, 300, 0.87),
    kp(PowerGroup::Alloy4140, 300, 320, 0.91),
    kp(PowerGroup::Alloy4140, 320, 340, 0.96),
    kp(PowerGroup::Alloy4140, 340, 360, 1.0),
    kp(PowerGroup::Alloy4130, 140, 160, 0.56),
    kp(PowerGroup::Alloy4130, 160, 180, 0.59),
    kp(PowerGroup::Alloy4130, 180, 200, 0.62),
    kp(PowerGroup::Alloy4130, 200, 220, 0.65),
    kp(PowerGroup::Alloy4130, 220, 240, 0.7),
    kp(PowerGroup::Alloy4130, 240, 260, 0.74),
    kp(PowerGroup::Alloy4130, 260, 280, 0.77),
    kp(PowerGroup::Alloy4130, 280, 300, 0.8),
    kp(PowerGroup::Alloy4130, 300, 320, 0.83),
    kp(PowerGroup::Alloy4130, 320, 340, 0.89),
    kp(PowerGroup::Alloy1340, 160, 180, 0.79),
    kp(PowerGroup::Alloy1340, 180, 200, 0.83),
    kp(PowerGroup::Alloy1340, 200, 220, 0.87),
];

/// Where a hardness falls in the table of unit power.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum UnitPowerLookup {
    /// The step that holds the hardness; a hardness on a limit belongs to the lower step.
    Row(UnitPowerRow),
    /// The group's table runs from and to these hardnesses, and this one is outside.
    Outside(u16, u16),
}

/// The row of unit power for a group at a hardness. Nothing is put between rows in silence.
pub fn unit_power(group: PowerGroup, hardness_hb: u16) -> UnitPowerLookup {
    let rows = || KP.iter().copied().filter(|row| row.group == group);
    rows()
        .find(|row| row.hardness.0 <= hardness_hb && hardness_hb <= row.hardness.1)
        .map_or_else(
            || {
                UnitPowerLookup::Outside(
                    rows().next().map_or(0, |row| row.hardness.0),
                    rows().next_back().map_or(0, |row| row.hardness.1),
                )
            },
            UnitPowerLookup::Row,
        )
}

/// One row of the feed factor: feed in in/rev (per tooth for milling) and C.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct FeedFactorRow {
    /// Feed, inches.
    pub feed_in: f64,
    /// The factor.
    pub c: f64,
}

const fn c(feed_in: f64, c: f64) -> FeedFactorRow {
    FeedFactorRow { feed_in, c }
}

/// Feed factor C (Machinery's Handbook, Machining Power, Table 2; from memory). One at 0.012 in.
#[rustfmt::skip]
pub const FEED_FACTOR: &[FeedFactorRow] = &[
    c(0.001, 1.6),
    c(0.002, 1.4),
    c(0.003, 1.3),
    c(0.004, 1.25),
    c(0.006, 1.15),
    c(0.007, 1.11),
    c(0.009, 1.06),
    c(0.01, 1.04),
    c(0.011, 1.02),
    c(0.012, 1.0),
    c(0.013, 0.98),
    c(0.014, 0.97),
    c(0.016, 0.94),
    c(0.018, 0.92),
    c(0.02, 0.9),
    c(0.022, 0.88),
    c(0.025, 0.86),
    c(0.028, 0.84),
    c(0.03, 0.83),
    c(0.035, 0.8),
    c(0.04, 0.78),
    c(0.06, 0.72),
];

/// C at a feed, straight between the printed rows; nothing outside 0.001 to 0.060 in.
///
/// ```
/// use benchslate_core::{quantity::FeedPerRev, standards::cutting::unit_power::feed_factor};
/// assert_eq!(feed_factor(FeedPerRev::from_in_per_rev(0.016)), Some(0.94)); // Table 2
/// assert_eq!(feed_factor(FeedPerRev::from_in_per_rev(0.1)), None);
/// ```
pub fn feed_factor(feed: FeedPerRev) -> Option<f64> {
    // Rounded so that a printed feed meets its own row whatever the last bit of its conversion.
    let inches = libm::round(feed.in_per_rev() * 1e9) / 1e9;
    if let Some(row) = FEED_FACTOR.iter().find(|row| row.feed_in == inches) {
        return Some(row.c);
    }
    FEED_FACTOR.windows(2).find_map(|pair| match pair {
        [a, b] if a.feed_in < inches && inches < b.feed_in => {
            Some(a.c + (b.c - a.c) * (inches - a.feed_in) / (b.feed_in - a.feed_in))
        }
        _ => None,
    })
}

/// One row of the wear factor W or of the efficiency E: a range where the table gives one.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct FactorRow {
    /// The word that stands in links.
    pub id: &'static str,
    /// The row's own words.
    pub label: &'static str,
    /// Low end.
    pub low: f64,
    /// High end; equal to `low` where one figure is given.
    pub high: f64,
}

const fn factor(id: &'static str, label: &'static str, low: f64, high: f64) -> FactorRow {
    FactorRow {
        id,
        label,
        low,
        high,
    }
}

/// Tool wear factor W (Machinery's Handbook, Machining Power, Table 3; from memory).
#[rustfmt::skip]
pub const WEAR: &[FactorRow] = &[
    factor("sharp", "sharp tool, any operation", 1.0, 1.0),
    factor("turn-finish", "turning, finishing (light cuts)", 1.1, 1.1),
    factor("turn-normal", "turning, normal rough and semi-finishing", 1.3, 1.3),
    factor("turn-heavy", "turning, extra heavy roughing", 1.6, 2.0),
    factor("slab", "slab milling", 1.1, 1.1),
    factor("end", "end milling", 1.1, 1.1),
    factor("face-light", "face milling, light and medium", 1.1, 1.25),
    factor("face-heavy", "face milling, extra heavy", 1.3, 1.6),
    factor("drill", "drilling, normal", 1.3, 1.3),
    factor("drill-hard", "drilling hard metal with a dull drill", 1.5, 1.5),
];

/// Machine efficiency E (Machinery's Handbook, Machining Power, Table 4; from memory).
#[rustfmt::skip]
pub const EFFICIENCY: &[FactorRow] = &[
    factor("belt", "direct belt drive", 0.90, 0.90),
    factor("back-gear", "back gear drive", 0.75, 0.75),
    factor("geared-head", "geared head drive", 0.70, 0.80),
    factor("hydraulic", "oil hydraulic drive", 0.60, 0.90),
];

/// One pair of kc1.1 and mc. The two belong together: never mix authors.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SpecificForceRow {
    /// The row's own words.
    pub material: &'static str,
    /// kc1.1 in N/mm²: force on a chip of 1 × 1 mm.
    pub kc11: f64,
    /// The exponent mc.
    pub mc: f64,
    /// Reference rake of the figure, degrees, where the source gives one.
    pub rake_degrees: Option<f64>,
    /// The source.
    pub source: SpecificForceSource,
}

/// Who measured the pair.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum SpecificForceSource {
    /// Tabellenbuch Zerspantechnik.
    Tabellenbuch,
    /// Kienzle and Victor.
    KienzleVictor,
}

impl SpecificForceSource {
    /// Title and place.
    pub const fn title(self) -> &'static str {
        match self {
            Self::Tabellenbuch => "Tabellenbuch Zerspantechnik, 5th ed. 2022, pp. 215-216",
            Self::KienzleVictor => {
                "Kienzle and Victor, as in Tschaetsch, Praxis der Zerspantechnik (from memory)"
            }
        }
    }
}

const fn tab(material: &'static str, rake: f64, kc11: f64, mc: f64) -> SpecificForceRow {
    SpecificForceRow {
        material,
        kc11,
        mc,
        rake_degrees: Some(rake),
        source: SpecificForceSource::Tabellenbuch,
    }
}

const fn kv(material: &'static str, kc11: f64, mc: f64) -> SpecificForceRow {
    SpecificForceRow {
        material,
        kc11,
        mc,
        rake_degrees: None,
        source: SpecificForceSource::KienzleVictor,
    }
}

/// Specific cutting force.
#[rustfmt::skip]
pub const SPECIFIC_FORCE: &[SpecificForceRow] = &[
    tab("soft unalloyed steel", 6.0, 1800.0, 0.2),
    tab("low alloy steel", 6.0, 2200.0, 0.24),
    tab("austenitic stainless steel", 6.0, 2000.0, 0.2),
    tab("gray cast iron", 2.0, 1050.0, 0.23),
    tab("aluminum, wrought", 12.0, 470.0, 0.27),
    tab("aluminum, cast", 12.0, 680.0, 0.27),
    kv("E295 (St 50)", 1990.0, 0.26),
    kv("E335 (St 60)", 2110.0, 0.17),
    kv("E360 (St 70)", 2260.0, 0.3),
    kv("42CrMo4", 2500.0, 0.26),
    kv("16MnCr5", 2100.0, 0.26),
    kv("C45", 2220.0, 0.14),
];

/// Milling compresses the chip more than turning does: kc1.1 is raised by this (Tabellenbuch Zerspantechnik).
pub const MILLING_FACTOR: f64 = 1.2;

impl SpecificForceRow {
    /// kc1.1 as a stress.
    pub const fn stress(&self) -> Stress {
        Stress::from_mpa(self.kc11)
    }

    /// kc1.1 for milling with zero rake: 1.2 for the compression of the chip, and 1 % a degree of the reference rake.
    /// Nothing where the source gives no reference rake.
    pub fn milling_zero_rake(&self) -> Option<Stress> {
        self.rake_degrees
            .map(|rake| Stress::from_mpa(self.kc11 * MILLING_FACTOR / (1.0 - 0.01 * rake)))
    }

    /// kc1.1 for milling: [`Self::milling_zero_rake`] where a reference rake is given, else [`MILLING_FACTOR`] times the figure.
    ///
    /// ```
    /// use benchslate_core::standards::cutting::unit_power::SPECIFIC_FORCE;
    /// let of = |name| SPECIFIC_FORCE.iter().find(|row| row.material == name).unwrap().milling().mpa();
    /// assert!((of("soft unalloyed steel") - 2298.0).abs() < 1.0); // Tabellenbuch Zerspantechnik, as worked out there
    /// assert!((of("C45") - 2664.0).abs() < 1e-9); // 2220 × 1.2, no reference rake
    /// ```
    pub fn milling(&self) -> Stress {
        self.milling_zero_rake()
            .unwrap_or(self.stress() * MILLING_FACTOR)
    }
}

/// Efficiency of the drive that is already in [`SPECIFIC_ENERGY_AT_MOTOR`], as the table's header says.
pub const ENERGY_EFFICIENCY: f64 = 0.8;

/// One range of specific energy, hp per in³/min at the motor: [`ENERGY_EFFICIENCY`] is already in it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SpecificEnergyRow {
    /// The row's own words.
    pub material: &'static str,
    /// W·s/mm³, low and high.
    pub w_s_per_mm3: (f64, f64),
    /// hp·min/in³, low and high.
    pub hp_min_per_in3: (f64, f64),
}

const fn energy(
    material: &'static str,
    low: f64,
    high: f64,
    hp_low: f64,
    hp_high: f64,
) -> SpecificEnergyRow {
    SpecificEnergyRow {
        material,
        w_s_per_mm3: (low, high),
        hp_min_per_in3: (hp_low, hp_high),
    }
}

/// Specific energy at the motor (Kalpakjian, Manufacturing Engineering and Technology; from memory): for the order of magnitude.
#[rustfmt::skip]
pub const SPECIFIC_ENERGY_AT_MOTOR: &[SpecificEnergyRow] = &[
    energy("aluminum alloys", 0.4, 1.1, 0.15, 0.4),
    energy("cast irons", 1.6, 5.5, 0.6, 2.0),
    energy("high-temperature alloys", 3.3, 8.5, 1.2, 3.1),
    energy("magnesium alloys", 0.4, 0.6, 0.15, 0.2),
    energy("nickel alloys", 4.9, 6.8, 1.8, 2.5),
    energy("stainless steels", 3.0, 5.2, 1.1, 1.9),
    energy("steels", 2.7, 9.3, 1.0, 3.4),
    energy("titanium alloys", 3.0, 4.1, 1.1, 1.5),
];

/// One row of the chisel edge factors of a drill: c is the chisel edge, d the drill diameter.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct ChiselEdgeRow {
    /// Chisel edge over diameter.
    pub c_over_d: f64,
    /// Web over diameter, as printed.
    pub w_over_d: f64,
    /// Torque factor A.
    pub a: f64,
    /// Thrust factor B.
    pub b: f64,
    /// Thrust factor J.
    pub j: f64,
}

const fn chisel(c_over_d: f64, w_over_d: f64, a: f64, b: f64, j: f64) -> ChiselEdgeRow {
    ChiselEdgeRow {
        c_over_d,
        w_over_d,
        a,
        b,
        j,
    }
}

/// Chisel edge factors (Machinery's Handbook 31st ed., p. 1152, Table 7). A standard drill has 0.18, a split point 0.03.
#[rustfmt::skip]
pub const CHISEL_EDGE: &[ChiselEdgeRow] = &[
    chisel(0.03, 0.025, 1.0, 1.1, 0.001),
    chisel(0.05, 0.045, 1.005, 1.14, 0.003),
    chisel(0.08, 0.07, 1.015, 1.2, 0.006),
    chisel(0.1, 0.085, 1.02, 1.235, 0.01),
    chisel(0.13, 0.11, 1.04, 1.27, 0.017),
    chisel(0.15, 0.13, 1.08, 1.31, 0.022),
    chisel(0.18, 0.155, 1.085, 1.355, 0.03),
    chisel(0.2, 0.175, 1.105, 1.38, 0.04),
    chisel(0.25, 0.22, 1.155, 1.445, 0.065),
    chisel(0.3, 0.26, 1.235, 1.5, 0.09),
    chisel(0.35, 0.3, 1.31, 1.575, 0.12),
    chisel(0.4, 0.35, 1.395, 1.62, 0.16),
];

/// The row of an ordinary twist drill, c/d = 0.18.
pub const STANDARD_DRILL: ChiselEdgeRow = chisel(0.18, 0.155, 1.085, 1.355, 0.03);
/// The row of a split point, c/d = 0.03.
pub const SPLIT_POINT: ChiselEdgeRow = chisel(0.03, 0.025, 1.0, 1.1, 0.001);

/// Power at the cutter of a sharp tool with a chip of 0.012 in: unit power times removal rate.
pub fn base_power(hp_per_in3_min: f64, removal: RemovalRate) -> Power {
    Power::from_horsepower(hp_per_in3_min * removal.in3_per_min())
}
