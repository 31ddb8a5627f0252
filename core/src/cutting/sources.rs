//! Whose formulas and figures do the cutting sheets name? One static a source.

use crate::source::Source;
use crate::standards::cutting::cutting_speeds::SpeedSource;

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
pub(crate) static HANDBOOK_FEEDS: Source = Source::read(
    "Reprint of a handbook table, edition not stated",
    "feed bands for drilling",
);
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
pub(crate) static CARBON_HALF: Source = Source::read(
    "Machinery's Handbook, 28th ed.",
    "cutting tool materials: plain carbon tool steel at about half of the high-speed steel speed",
);
pub(crate) static CARBIDE_TWICE: Source = Source::read(
    "Shop handout on machine tool speeds and feeds, unsigned",
    "carbide tips at twice the speed; a small lathe maker's leaflet says about three times",
);
pub(crate) static CARBIDE_NOT_SLOW: Source = Source::read(
    "Shop handout on machine tool speeds and feeds, unsigned",
    "carbide tips do not work well at low speeds",
);
pub(crate) static REAM_NOT_FASTER: Source =
    Source::practice("A reamer is started no faster than the drill");
pub(crate) static HARDER_NOT_FASTER: Source =
    Source::practice("A start does not rise with the hardness of the work");
pub(crate) static FREE_NOT_SLOWER: Source =
    Source::practice("Free-machining steel is cut no slower than mild steel");
pub(crate) static ARMY_PAIR: Source = Source::read(
    "TM 43-0106",
    "Table 2-8: turning stainless steel with HSS, 20 ft/min with feeds of 0.020 to 0.040 in per rev",
);
pub(crate) static TITANIUM_TURNED: Source =
    Source::practice("Titanium alloy is turned no faster than it is milled");
pub(crate) static HARD_BRASS: Source = Source::computed(
    "Machine Shop Work, before 1910",
    "Table IV, hard brass at 100 where soft brass has 120 ft/min",
);
pub(crate) static WROUGHT_AS_MILD: Source = Source::practice("Wrought iron is cut as mild steel");
pub(crate) static DEEP_HOLE_RULE: Source = Source::read(
    "A public drilling guide",
    "deep holes: 10% less at three diameters to 35 to 40% at six",
);
pub(crate) static PECKING: Source = Source::read(
    "Advice of two drill makers",
    "from three to four diameters on withdraw to clear the chips, lower speed and feed",
);
pub(crate) static SLOT_DEPTH: Source = Source::read(
    "Milling catalogue, 2021-2022",
    "p. 115: in a full slot the whole feed at half a diameter deep, 75% at one, 50% at one and a half",
);
pub(crate) static SIDE_DEPTH: Source = Source::practice(
    "A cut to one side is judged as a slot as deep as its share of three quarters of the diameter",
);
pub(crate) static HSS_END_FEEDS: Source = Source::read(
    "An end mill maker's chart, HSS",
    "Table A, feed per tooth at 1/4 in and at 1 in and over",
);
pub(crate) static END_FEED_BY_DIAMETER: Source = Source::read(
    "End mill maker's catalogue, 2021",
    "p. 23: in every metal the feed per tooth grows with the diameter",
);
pub(crate) static CARRIAGE: Source =
    Source::practice("Threading by half nuts: the carriage at 10 in/min or less toward a shoulder");
pub(crate) static TAP_SLOWEST: Source =
    Source::practice("Tapping by the spindle begins at its slowest speed");
pub(crate) static PILOT: Source = Source::practice(
    "A pilot hole as wide as the web takes away about half of a large drill's push",
);
pub(crate) static THIN_WORK: Source = Source::read(
    "TM 43-0106",
    "Table 2-8, note: for stock under 1 in feeds are reduced in proportion",
);
pub(crate) static COLLARS: Source =
    Source::practice("Arbor collars measure about one and a half times the arbor");
pub(crate) static THINNING_LIMIT: Source = Source::practice(
    "A feed is raised to three times at most for a thin chip: cutters on arbors run out",
);
pub(crate) static UNIT_POWER: Source = Source::read(
    "Machinery's Handbook, 31st ed.",
    "p. 1147, Table 1b, power constants Kp, sharp tools",
);
pub(crate) static POWER_FACTORS: Source = Source::from_memory(
    "Machinery's Handbook, Machining Power",
    "Tables 2 and 3, feed factor C and wear factor W",
);
pub(crate) static COARSE_ENERGY: Source = Source::from_memory(
    "Kalpakjian, Manufacturing Engineering and Technology",
    "approximate specific energy at the motor, 80% efficiency",
);
pub(crate) static DRILL_PUSH: Source = Source::read(
    "Machinery's Handbook, 31st ed.",
    "pp. 1152 and 1153, drilling thrust; Kd 24000 for steel of 200 HB",
);
pub(crate) static TURN_FROM_DRILL: Source = Source::read(
    "Shop table of cutting speeds for HSS, unsigned",
    "from drilling: milling up to half more, turning up to twice",
);
pub(crate) static THREAD_SHARE: Source =
    Source::practice("Threading at a quarter to a half of the turning speed");
pub(crate) static PART_SPEED: Source = Source::read(
    "TM 1-420 Lathes, War Department, 29 November 1940",
    "par. 32 d, parting: about the turning speed, power feed about 0.002 in per rev",
);
pub(crate) static BORE_SHARE: Source = Source::read(
    "A tool maker's user guide",
    "p. 33, counterbores at about 80 to 85% of a drill's speed and feed",
);
pub(crate) static SINK_FEED: Source = Source::read(
    "Speeds and Feeds, a university design laboratory",
    "countersinks at a quarter of the speed and the same feed per turn as the drill",
);
pub(crate) static REAM_GUIDE: Source = Source::read(
    "A reamer maker's guide",
    "stock by diameter; feed 0.002 to 0.003 in per flute and turn",
);
pub(crate) static CARBIDE_END_FEEDS: Source = Source::read(
    "An end mill maker's chart, carbide",
    "feed per tooth by diameter",
);
pub(crate) static CARBIDE_FACE_FEED: Source = Source::read(
    "Carvill, Mechanical Engineer's Data Handbook",
    "section 5.4, p. 187, carbide cutters at 0.2 mm per tooth",
);
pub(crate) static ARMY_FEEDS: Source = Source::read(
    "TM 43-0106",
    "Table 2-8, stainless steel, 1 in stock or larger",
);
pub(crate) static SELECTED_FEEDS: Source = Source::read(
    "Feed selection table for turning, unsigned",
    "HSS, roughing and finishing",
);
pub(crate) static PLASTIC_FEEDS: Source = Source::read(
    "A plastics supplier's guide",
    "turning: roughing 0.015 in a turn, finishing 0.005 or less",
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
pub(crate) static KALPAKJIAN_TURNING: Source = Source::computed(
    "Kalpakjian and Schmid, Manufacturing Engineering and Technology",
    "turning: metal removed at the mean diameter",
);
pub(crate) static NEXT_LOWER: Source =
    Source::practice("Between two speeds take the next lower one: tool life");
pub(crate) static COBALT: Source = Source::from_memory(
    "Shop lore of cobalt high-speed steel",
    "up to a quarter faster than plain high-speed steel",
);
pub(crate) static CAST_ALLOY: Source = Source::read(
    "Online engineering reference, cutting tool materials, unsigned",
    "cast alloys: about 60% faster than high-speed steel",
);
pub(crate) static SHARES_OF_SPEED: Source = Source::practice(
    "Shares of the usual speed and feed for step drills, T-slot and dovetail cutters",
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
    HandbookCastFerrous: read, "Reprint of a handbook table, edition not stated", "drilling and reaming speeds, ferrous cast metals";
    HandbookLightMetals: read, "Reprint of a handbook table, edition not stated", "drilling and reaming speeds, light metals";
    Kalpakjian: read, "Kalpakjian and Schmid, Manufacturing Engineering and Technology", "Table 23.11, p. 649, figured back from the printed rpm at 12.5 mm";
    TapTrade: read, "Trade table of peripheral speeds for taps", "publisher not stated";
    TapMaker: read, "Tap maker's table of HSS tap speeds, 2018", "by work and hardness";
    TapChart: read, "Chart of suggested tapping speeds", "publisher not stated";
    TapPage: read, "A tap maker's page, London", "speeds for machine tapping, HSS";
    HandbookSteels: read, "Reprint of a handbook table, edition not stated", "speeds for steels by hardness, HSS";
    HandbookTurning: read, "Reprint of a handbook table, earlier edition not stated", "turning steels, carbide";
    HandbookNickel: read, "Machinery's Handbook, a guide to it", "p. 180, machining nickel and nickel-copper alloys";
    ArmyStainless: read, "TM 43-0106", "Table 2-8, stainless steel";
    LatheManual: read, "A lathe maker's operator's manual", "Table 7.1, HSS tools";
    BenchLathe: read, "A bench lathe maker's manual", "spindle speed, table for HSS tools; seen in the same maker's mill manual";
    Handout: read, "Shop handout on machine tool speeds and feeds, unsigned", "recommended speeds, last column";
    SmallLathe: read, "A small lathe maker's leaflet", "turning rpm by diameter, M2 tool bits";
    Lineham: read, "Lineham, A Text Book of Mechanical Engineering", "p. 975, deep cuts in a powerful lathe";
    MillManual: read, "A milling machine maker's manual", "cutting speeds, HSS";
    EndMillChart: read, "An end mill maker's chart", "Table A, roughing and finishing";
    CarbideEndMills: read, "Makers' charts of carbide end mills", "speeds and feeds";
    DrillPressManual: read, "A drill press maker's manual", "p. 12, HSS drills";
    FundamentalsDrilling: read, "Fundamentals of Machining Processes", "Table 5.4, drilling";
    TrainingCourse: read, "Technique for Manual Working of Materials, a course", "drilling, figured back from the rpm";
    PlasticsGuide: read, "A plastics supplier's guide", "turning, carbide";
    CarvillPlastics: read, "Carvill, Mechanical Engineer's Data Handbook", "section 5.2.7, p. 176, turning plastics, HSS";
    OldRecipes: read, "Scientific American recipes", "roughing tool for wrought iron, carbon steel";
    ThreadingChart: read, "A threading tool maker's chart", "single point, small uncoated tools";
}
