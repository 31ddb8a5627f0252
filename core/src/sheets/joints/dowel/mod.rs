//! What hole does a dowel need in the plate that holds it and in the plate that slips on, and how will it sit?

mod draw;
mod holes;
mod lines;
mod worn;

use crate::pin::Limits;
use crate::quantity::units::{KSI, MPA, PSI};
use crate::quantity::{Kind, Length, decimal, units};
use crate::sheet::*;
use crate::standards::pins::dowel_pins::{self as table, InchDowel, InchSeries, MetricDowel};

/// The sheet.
pub static SHEET: Sheet = Sheet {
    id: "dowel",
    // 2: a hole that is far off is refused, with the size that serves
    revision: 2,
    title: "Hole for a dowel",
    question: "What hole does a dowel pin need, to press in one plate and to slip in the other?",
    aside: "pin size, plates",
    words: &[
        "dowel",
        "dowel pin",
        "dowel hole",
        "press fit pin",
        "slip fit pin",
        "parallel pin",
        "locating pin",
        "oversize dowel",
        "worn dowel hole",
        "step dowel",
        "loose dowel",
        "ISO 8734",
        "ISO 2338",
    ],
    group: Group::Fit,
    fields: FIELDS,
    results: RESULTS,
    examples: &[
        &[("pin", "1/4 in")],
        &[
            ("pin", "3/8 in"),
            ("kind", "oversize"),
            ("hole", "0.3756 in"),
        ],
        &[("pin", "1/4 in"), ("hole", "0.2515 in")],
        &[("pin", "1/8 in"), ("metal", "aluminium")],
        &[("kind", "m6"), ("pin", "6 mm"), ("stress", "300 MPa")],
        &[
            ("kind", "h8"),
            ("pin", "10 mm"),
            ("press", "p7"),
            ("slip", "h7"),
        ],
    ],
    takes: &[],
    finds: Some(finds),
    figure,
};

static KINDS: &[Choice] = &[
    choice("standard", "inch, ground"),
    choice("oversize", "inch, oversize for a worn hole"),
    choice("m6", "metric m6"),
    choice("h8", "metric h8, unhardened"),
];
static METALS: &[Choice] = &[
    choice("iron", "steel or cast iron"),
    choice("aluminium", "aluminum plate, stainless pin"),
];
static PRESS: &[Choice] = &[
    choice("h7", "H7, the usual"),
    choice("k7", "K7"),
    choice("m7", "M7"),
    choice("n7", "N7"),
    choice("p7", "P7"),
];
static SLIP: &[Choice] = &[
    choice("f7", "F7"),
    choice("g7", "G7"),
    choice("h7", "H7"),
    choice("e8", "E8"),
];
const INCH: &[When] = &[when("kind", &["standard"])];
const METRIC: &[When] = &[when("kind", &["m6", "h8"])];

static FIELDS: &[Field] = &[
    Field::choice("kind", "Pin", KINDS),
    Field::length("pin", "Nominal diameter")
        .example("1/4 in")
        .hint("As it is called, not as it measures: a ground 1/4 in pin is 0.2502 in.")
        .range_mm(0.5, 60.0, "dowels run from 0.6 to 50 mm"),
    Field::choice("metal", "Press-fit plate", METALS).when(INCH),
    Field::choice("press", "Class of the press-fit hole", PRESS).when(METRIC),
    Field::choice("slip", "Class of the slip-fit hole", SLIP).when(METRIC),
    Field::length("hole", "Hole measured")
        .seldom()
        .example("0.2496 in")
        .hint("To see how this pin will sit in a hole that is there.")
        .range_mm(0.4, 61.0, "dowels run from 0.6 to 50 mm")
        .measured()
        .optional(),
    Field::quantity(
        "stress",
        "Shear stress allowed",
        Kind::Stress,
        &[&PSI, &KSI, &MPA],
    )
    .seldom()
    .example("300 MPa")
    .hint("For metric pins: the standards list no load.")
    .range(1.0, 1500.0, "pins of any steel shear below 1500 MPa")
    .when(METRIC)
    .optional(),
];

static RESULTS: &[Res] = &[
    Res::stepped("press-hole", "Press-fit hole for the pin", Kind::Length),
    Res::stepped("press-tightest", "Press-fit hole, tightest", Kind::Length),
    Res::stepped("press-loosest", "Press-fit hole, loosest", Kind::Length),
    Res::words("press-fit", "Press-fit hole"),
    Res::stepped("slip-hole", "Slip-fit hole for the pin", Kind::Length),
    Res::stepped("slip-tightest", "Slip-fit hole, tightest", Kind::Length),
    Res::stepped("slip-loosest", "Slip-fit hole, loosest", Kind::Length),
    Res::words("slip-fit", "Slip-fit hole"),
    Res::stepped("pin-size", "Pin", Kind::Length),
    Res::of(
        "measured-tightest",
        "In the measured hole, tightest",
        Kind::Length,
    ),
    Res::of(
        "measured-loosest",
        "In the measured hole, loosest",
        Kind::Length,
    ),
    Res::words("in-hole", "In the measured hole"),
    Res::stepped("single-shear", "Shear, one plane", Kind::Force),
    Res::stepped("double-shear", "Shear, two planes", Kind::Force),
];

static ASME: Source = Source::read(
    "ASME B18.8.2-2000",
    "Table 2, hardened ground machine dowel pins",
);
static OVERSIZE: Source = Source::read("ASME B18.8.2-2000", "Table 2, oversize series");
static ISO_PIN: Source = Source::computed(
    "ISO 8734 and ISO 2338",
    "parallel pins, limits by ISO 286-2",
);

/// The row of the standard that was asked for.
#[derive(Clone, Copy)]
enum Pin {
    Inch(&'static InchDowel, InchSeries),
    M6(&'static MetricDowel),
    H8(&'static MetricDowel),
}

impl Pin {
    fn limits(self) -> Limits {
        match self {
            Self::Inch(row, series) => row.limits(series),
            Self::M6(row) => row.m6(),
            Self::H8(row) => row.h8(),
        }
    }
    fn nominal(self) -> Length {
        match self {
            Self::Inch(row, _) => row.nominal(),
            Self::M6(row) | Self::H8(row) => row.nominal(),
        }
    }
    fn source(self) -> &'static Source {
        match self {
            Self::Inch(_, InchSeries::Standard) => &ASME,
            Self::Inch(_, InchSeries::Oversize) => &OVERSIZE,
            Self::M6(_) | Self::H8(_) => &ISO_PIN,
        }
    }
}

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let pin = which(inp)?;
    let press = holes::press(inp, pin)?;
    let slip = holes::slip(inp, pin)?;
    let mut a = inp.answer();
    lines::hole_lines(
        inp,
        &mut a,
        pin,
        &press,
        ["press-hole", "press-tightest", "press-loosest", "press-fit"],
    );
    lines::hole_lines(
        inp,
        &mut a,
        pin,
        &slip,
        ["slip-hole", "slip-tightest", "slip-loosest", "slip-fit"],
    );
    lines::pin_line(&mut a, pin);
    worn::measured(inp, &mut a, pin, &press, &slip)?;
    lines::shear(inp, &mut a, pin);
    holes::tables(inp, &mut a, pin, [&press, &slip]);
    lines::working(inp, &mut a, pin, &press);
    a.source(press.source)
        .source(slip.source)
        .source(pin.source());
    a.draw(|| draw::plates(inp, pin.limits(), press.limits, slip.limits));
    a.stop("ream-together", "Before you ream", "Clamp both parts in place, then drill and ream the pair in one setting. A hole that is off can\u{2019}t be moved, and one that is large takes an oversize pin or a bushing.");
    a.stop("drive-hardened", "Before you drive it", "A hardened pin can throw chips under a hammer: press it, or use a soft drift and eye protection. A blind hole needs a way out for air and a way to get the pin back.");
    if inp.choice("metal") != "aluminium" {
        a.note("brittle-boss", "Before you press into cast iron", "Cast iron is brittle: a thin boss cracks without warning. Leave about a pin\u{2019}s diameter of wall around the hole, start the pin square, and go by the looser end of the hole.");
    }
    Ok(a)
}

/// The next size of this series, as it is called.
fn larger(pin: Pin) -> Option<&'static str> {
    let next = |sizes: &mut dyn Iterator<Item = (&'static str, Length)>| {
        sizes
            .filter(|size| size.1 > pin.nominal())
            .min_by(|a, b| a.1.mm().total_cmp(&b.1.mm()))
            .map(|size| size.0)
    };
    match pin {
        Pin::Inch(..) => next(&mut table::INCH.iter().map(|row| (row.size, row.nominal()))),
        Pin::M6(_) | Pin::H8(_) => {
            next(&mut table::METRIC.iter().map(|row| (row.size, row.nominal())))
        }
    }
}

fn which(inp: &Inputs) -> Result<Pin, Stop> {
    let nominal: Length = inp.get("pin")?;
    let kind = inp.choice("kind");
    let found = match kind {
        "m6" => table::metric(nominal).map(Pin::M6),
        "h8" => table::metric(nominal).map(Pin::H8),
        "oversize" => table::inch(nominal).map(|row| Pin::Inch(row, InchSeries::Oversize)),
        _ => table::inch(nominal).map(|row| Pin::Inch(row, InchSeries::Standard)),
    };
    found.ok_or_else(|| {
        let (standard, mut sizes): (_, Vec<(&str, Length)>) = if kind == "m6" || kind == "h8" {
            (
                "ISO 8734 and ISO 2338 have no dowel",
                table::METRIC
                    .iter()
                    .map(|row| (row.size, row.nominal()))
                    .collect(),
            )
        } else {
            (
                "ASME B18.8.2 has no ground dowel",
                table::INCH
                    .iter()
                    .map(|row| (row.size, row.nominal()))
                    .collect(),
            )
        };
        crate::order::sort_by(&mut sizes, |a, b| {
            (a.1 - nominal)
                .abs()
                .mm()
                .total_cmp(&(b.1 - nominal).abs().mm())
        });
        let unit = if kind == "m6" || kind == "h8" {
            "mm"
        } else {
            "in"
        };
        let near: Vec<&str> = sizes.iter().take(2).map(|size| size.0).collect();
        Stop::fault(
            "pin",
            Reason::NotDefined,
            format!("{standard} of {}", inp.show(nominal)),
            format!("nearest: {} {unit}", near.join(", ")),
        )
    })
}

/// Each size as a row of the search box.
fn finds() -> Vec<Find> {
    let mut rows: Vec<Find> = table::INCH
        .iter()
        .map(|row| Find {
            keys: vec![
                format!("{} dowel", row.size),
                format!("{} in dowel", row.size),
                format!("dowel {}", row.size),
            ],
            title: format!("Dowel {} in", row.size),
            aside: format!(
                "press hole {} to {} in",
                decimal(row.suggested_hole().0.mm(), &units::INCH, 4),
                decimal(row.suggested_hole().1.mm(), &units::INCH, 4)
            ),
            entry: vec![("pin", format!("{} in", row.size))],
        })
        .collect();
    rows.extend(table::METRIC.iter().map(|row| Find {
        keys: vec![
            format!("{} mm dowel", row.size),
            format!("{}mm dowel", row.size),
            format!("dowel {} mm", row.size),
            format!("{} m6", row.size),
        ],
        title: format!("Dowel {} mm", row.size),
        aside: "m6, hole H7".to_owned(),
        entry: vec![
            ("kind", "m6".to_owned()),
            ("pin", format!("{} mm", row.size)),
        ],
    }));
    rows
}
