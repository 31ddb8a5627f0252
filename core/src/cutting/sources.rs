//! Whose formulas and figures do the cutting sheets name? One static a source.

use crate::sheet::Source;
use crate::standards::cutting_speeds::SpeedSource;

pub(crate) static SPEED_DEFINITION: Source = Source::read(
    "TM 1-420 Lathes, War Department, C1 of 10 March 1942",
    "par. 8, rpm = fpm / (0.2618 D); 12/\u{3c0} exact",
);
pub(crate) static RULES_OF_THUMB: Source = Source::read(
    "School shop formula list",
    "4 \u{d7} CS / D and 320 \u{d7} CS / D",
);
pub(crate) static TOOTH_FEED: Source = Source::read(
    "New Concepts in Milling Handbook, 1973",
    "chip load per tooth, F = fz z n",
);
pub(crate) static KRAR_FEEDS: Source = Source::from_memory(
    "Krar et al., Technology of Machine Tools",
    "recommended feed per tooth, HSS cutters",
);
pub(crate) static CUT_FEEDS: Source = Source::read(
    "Trade table of milling feeds by kind of cut",
    "publisher not stated",
);
pub(crate) static NAVY_FEEDS: Source = Source::read(
    "U.S. Navy training manual 14345",
    "drilling, feed by drill diameter",
);
pub(crate) static HANDBOOK_FEEDS: Source =
    Source::read("Machinery's Handbook", "feed bands for drilling");
pub(crate) static LATHE_FEEDS: Source = Source::read(
    "Shop handout on machine tool speeds and feeds, unsigned",
    "lathe feeds, HSS tools",
);
pub(crate) static HANDOUT_FEEDS: Source = Source::read(
    "Shop handout on machine tool speeds and feeds, unsigned",
    "milling feeds, face and side mills",
);
pub(crate) static HOLE_FACTORS: Source = Source::read(
    "School shop formula list",
    "countersinking and counterboring at a quarter, reaming at half of the drilling speed",
);
pub(crate) static REAM_HALF: Source = Source::read(
    "TM 1-420 Lathes, War Department, 29 November 1940",
    "par. 37, reaming at half the drilling speed",
);
pub(crate) static REAM_STOCK: Source = Source::read(
    "TM 1-420 Lathes, War Department, 29 November 1940",
    "par. 37, 0.005 to 0.010 in left for the reamer",
);
pub(crate) static REMEDIES: Source = Source::practice("What to change first when a cut goes wrong");
pub(crate) static CHIP_MEAN: Source = Source::read(
    "Indexable milling catalogue, 2026 ed.",
    "p. 802, mean chip fz \u{221a}(ae/D)",
);
pub(crate) static CHIP_MAXIMUM: Source = Source::computed(
    "Geometry of the circular tooth path",
    "maximum chip 2 fz \u{221a}(r \u{2212} r\u{b2})",
);
pub(crate) static RUBBING: Source =
    Source::practice("Rubbing below half a thou of chip for a ground edge, one thou for carbide");
pub(crate) static GROOVER: Source = Source::computed(
    "Groover, Fundamentals of Modern Manufacturing",
    "machining operations: approach, time and removal rate",
);
pub(crate) static NEXT_LOWER: Source =
    Source::practice("Between two steps take the next lower speed: tool life");
pub(crate) static COBALT: Source = Source::from_memory(
    "Shop lore of cobalt high-speed steel",
    "up to a quarter faster than plain high-speed steel",
);
pub(crate) static CAST_ALLOY: Source = Source::read(
    "Online engineering reference, cutting tool materials, unsigned",
    "cast alloys: about 60 % faster than high-speed steel",
);
pub(crate) static SHARES_OF_SPEED: Source = Source::practice(
    "Shares of the usual speed and feed for parting, step drills, T-slot and dovetail cutters",
);
pub(crate) static ARBOR_WORK: Source = Source::practice("Setting up cutters on an arbor");
pub(crate) static THROAT_FIRST: Source = Source::read(
    "OD1644 Milling Machine Operations, U.S. Army",
    "p. 63: mill the throat first, then the T-slot",
);
macro_rules! speed_sources {
    ($($variant:ident: $how:ident, $title:literal, $place:literal;)+) => {
        /// The source of a cutting speed.
        pub(crate) fn speed_source(source: SpeedSource) -> &'static Source {
            match source {
                $(SpeedSource::$variant => {
                    static SOURCE: Source = Source::$how($title, $place);
                    &SOURCE
                })+
            }
        }
    };
}

speed_sources! {
    CarvillHss: read, "Carvill, Mechanical Engineer's Data Handbook", "section 5.4, p. 187, milling speeds, HSS cutters";
    CarvillCarbide: read, "Carvill, Mechanical Engineer's Data Handbook", "section 5.4, p. 187, milling speeds, carbide at 0.2 mm per tooth";
    Tabellenbuch: read, "Tabellenbuch Zerspantechnik, 5th ed. 2022", "pp. 272 and 274, uncoated, contour milling, roughing, ae under 0.5 D";
    KrarMilling: from_memory, "Krar et al., Technology of Machine Tools", "milling cutting speeds";
    KrarLathe: from_memory, "Krar et al., Technology of Machine Tools", "lathe cutting speeds, HSS tool bits";
    MachineShopWork: read, "Machine Shop Work, before 1910", "Table IV, carbon-steel milling cutters";
    NavyDrills: read, "U.S. Navy training manual 14345", "drilling speeds, HSS twist drills";
    NavyDrillFactor: read, "U.S. Navy training manual 14345", "carbon-steel drills half, carbide drills two to three times the HSS speed";
    HandbookCastFerrous: read, "Machinery's Handbook, older editions", "drilling and reaming speeds, ferrous cast metals";
    HandbookLightMetals: read, "Machinery's Handbook, older editions", "drilling and reaming speeds, light metals";
    Kalpakjian: read, "Kalpakjian and Schmid, Manufacturing Engineering and Technology", "Table 23.11, p. 649, figured back from the printed rpm at 12.5 mm";
    TapTrade: read, "Trade table of peripheral speeds for taps", "publisher not stated";
    TapMaker: read, "Tap maker's table of HSS tap speeds, 2018", "by work and hardness";
    TapChart: read, "Chart of suggested tapping speeds", "publisher not stated";
}
