//! On whose word do the figures of the fastener sheets rest?

use crate::sheet::Source;

pub(in crate::sheets) static J429: Source = Source::read(
    "SAE J429, as in Shigley, Mechanical Engineering Design",
    "Table 8-9",
);
pub(in crate::sheets) static ASTM: Source = Source::read(
    "ASTM bolt specifications, as in Shigley & Mischke, 5th ed., and makers' charts",
    "p. 341 ff.; A354 over 2-1/2 in from memory",
);
pub(in crate::sheets) static A574: Source = Source::read(
    "ASTM A574, as in screw makers' charts",
    "proof, yield and tensile strength",
);
pub(in crate::sheets) static F593: Source = Source::read(
    "ASTM F593, as in bolt makers' charts",
    "yield and tensile strength of groups 1 and 2",
);
pub(in crate::sheets) static F3125: Source = Source::read(
    "ASTM F3125, as in bolt makers' charts; AISC 360-05, Table J3.1",
    "tensile strength and least pretension; proof from memory",
);
pub(in crate::sheets) static ISO_898: Source =
    Source::from_memory("ISO 898-1:2013", "Table 3, minimum values");
pub(in crate::sheets) static ISO_3506: Source =
    Source::from_memory("ISO 3506-1", "A1 to A5, 0.2% stress");
pub(in crate::sheets) static AREA: Source = Source::read(
    "ASME B1.1-2003, appendix B; ISO 898-1:2013, 9.1.6",
    "stress area",
);
pub(in crate::sheets) static SHORT: Source = Source::read(
    "Shigley, Mechanical Engineering Design",
    "eq. 8-27, Table 8-15",
);
pub(in crate::sheets) static LONG: Source =
    Source::read("Shigley, Mechanical Engineering Design", "eq. 8-26");
pub(in crate::sheets) static TARGET: Source = Source::read(
    "Shigley, Mechanical Engineering Design",
    "eq. 8-31: 75% reusable, 90% permanent",
);
pub(in crate::sheets) static VDI: Source = Source::read(
    "VDI 2230 Part 1:2003",
    "friction classes; combined tension and torsion",
);
pub(in crate::sheets) static K_OTHER: Source = Source::read(
    "Handbook of Bolts and Bolted Joints (1998), as quoted",
    "ch. 2, Table 1",
);
pub(in crate::sheets) static NASA: Source =
    Source::read("NASA NSTS 08307 / TM-106943", "preload accuracy");
pub(in crate::sheets) static SCATTER_BOOK: Source =
    Source::read("Machinery's Handbook", "accuracy of bolt preload methods");
pub(in crate::sheets) static WRENCH: Source =
    Source::practice("Torque wrench accuracy is promised from 20% of its top (ISO 6789)");
pub(in crate::sheets) static STRETCH: Source = Source::computed(
    "Hooke's law, stress area over the whole grip",
    "E 207 GPa (30 million psi)",
);
pub(in crate::sheets) static ADAPTER: Source = Source::read(
    "TM 9-254; NAVEDTRA 14008, ch. 2",
    "p. 91-92, torque adapters",
);
pub(in crate::sheets) static PASSES: Source =
    Source::practice("Flange bolting: 30, 60, 100%, crosswise, last pass repeated");
pub(in crate::sheets) static ARMY: Source =
    Source::read("TM 9-2320-362-14&P", "app. F, Table F-1, clean and dry");
pub(in crate::sheets) static OLDER: Source = Source::read(
    "A machine's operating manual, appendix",
    "largest torques at friction 0.14, basis of 1986",
);
