//! What is asked and what is answered about a press or shrink fit?

use crate::calls::fit::FIT_CALL;
use crate::quantity::Kind;
use crate::quantity::units::*;
use crate::sheet::*;
use crate::standards::fits::fit_materials::FIT_MATERIALS;

const KINDS: usize = FIT_MATERIALS.len() + 1;

#[allow(
    clippy::indexing_slicing,
    reason = "a const loop within both arrays' own length"
)]
const MATERIALS: [Choice; KINDS] = {
    let mut list = [choice("other", "another, by its figures"); KINDS];
    let mut i = 0;
    while i < FIT_MATERIALS.len() {
        list[i] = choice(FIT_MATERIALS[i].id, FIT_MATERIALS[i].label);
        i += 1;
    }
    list
};

const FIT: &[When] = &[when("from", &["fit"])];
const SIZES: &[When] = &[when("from", &["sizes"])];
const HUB: &[When] = &[when("hub", &["other"])];
const SHAFT: &[When] = &[when("shaft-material", &["other"])];
const HUB_GROWS: &[When] = &[when("hub", &["other", "stainless"])];
const SHAFT_GROWS: &[When] = &[when("shaft-material", &["other", "stainless"])];
const ROUGH: &[When] = &[when("smoothing", &["din-7190"])];

const fn modulus(id: &'static str, label: &'static str, when: &'static [When]) -> Field {
    Field::quantity(id, label, Kind::Stress, const { &[&KSI, &GPA, &MPA] })
        .example("29000 ksi")
        .range(
            1000.0,
            1_000_000.0,
            "the range of moduli, from plastics to carbide",
        )
        .when(when)
}
const fn poisson(id: &'static str, label: &'static str, when: &'static [When]) -> Field {
    Field::number(id, label)
        .example("0.3")
        .range(0.0, 0.5, "Poisson's ratio lies between 0 and 0.5")
        .when(when)
}
const fn grows(id: &'static str, label: &'static str, when: &'static [When]) -> Field {
    Field::quantity(id, label, Kind::Expansion, const { &[&PER_F, &PER_K] })
        .example("17.3 um/m-K")
        .hint("For heating and cooling. Left empty: the list's figure, where it has one.")
        .range(
            0.1,
            200.0,
            "the range of expansion, from low-expansion alloys to plastics",
        )
        .when(when)
        .optional()
}
const fn strength(id: &'static str, label: &'static str) -> Field {
    Field::quantity(id, label, Kind::Stress, const { &[&KSI, &MPA, &PSI] })
        .example("36 ksi")
        .hint("For cast iron, its tensile strength. Left empty: the least usual strength of the material.")
        .range(1.0, 5000.0, "the range of strengths, from lead to hard steel")
        .optional()
}
const fn rz(id: &'static str, label: &'static str) -> Field {
    Field::quantity(id, label, Kind::Length, const { &[&MICROINCH, &MICRON] })
        .example("6.3 um")
        .hint("Rz, the mean height of the profile, not Ra.")
        .range_mm(
            0.0,
            0.2,
            "the range of roughness, from lapped to rough turned",
        )
        .when(ROUGH)
}

pub(super) static FIELDS: &[Field] = &[
    Field::choice(
        "from",
        "Interference from",
        &[
            choice("fit", "a class of fit"),
            choice("sizes", "measured parts"),
        ],
    ),
    Field::length("size", "Nominal size")
        .example("1 in")
        .range_mm(0.1, 500.126, "the tables end at 500 mm and at 19.69 in")
        .when(FIT),
    Field::call("fit", "Fit", &FIT_CALL)
        .is(Thing::Fit)
        .example("FN2")
        .hint("A hole and a shaft as H7/s6, or an inch class as FN2.")
        .when(FIT),
    Field::length("hole", "Hole as measured")
        .example("0.9990 in")
        .range_mm(0.1, 2000.0, "joints up to 2 m (79 in)")
        .when(SIZES)
        .measured()
        .monotonic(),
    Field::length("shaft", "Shaft as measured")
        .example("1.0004 in")
        .range_mm(0.1, 2000.0, "joints up to 2 m (79 in)")
        .when(SIZES)
        .measured()
        .monotonic(),
    Field::length("outside", "Outside diameter of the hub")
        .example("2 in")
        .hint("Where it is not round: the largest circle that fits inside it.")
        .range_mm(
            0.2,
            10_000.0,
            "hubs up to 10 m (394 in), larger than the joint",
        )
        .measured()
        .monotonic(),
    Field::length("bore", "Bore of the shaft")
        .preset("0 in")
        .example("1/4 in")
        .hint("0 for a solid shaft.")
        .range_mm(
            0.0,
            2000.0,
            "bores up to 2 m (79 in), smaller than the joint",
        )
        .measured()
        .monotonic(),
    Field::length("length", "Length of the joint")
        .example("1-1/4 in")
        .range_mm(0.1, 5000.0, "joints up to 5 m (197 in) long")
        .measured()
        .monotonic(),
    Field::choice("hub", "Hub", &MATERIALS),
    modulus("hub-modulus", "Young's modulus of the hub", HUB),
    poisson("hub-poisson", "Poisson's ratio of the hub", HUB),
    grows("hub-growth", "Expansion of the hub", HUB_GROWS),
    Field::choice("shaft-material", "Shaft", &MATERIALS),
    modulus("shaft-modulus", "Young's modulus of the shaft", SHAFT),
    poisson("shaft-poisson", "Poisson's ratio of the shaft", SHAFT),
    grows("shaft-growth", "Expansion of the shaft", SHAFT_GROWS),
    Field::choice(
        "friction",
        "Surfaces",
        &[
            choice("oiled", "oiled"),
            choice("dry", "dry"),
            choice("own", "your own friction"),
        ],
    ),
    Field::number("coefficient", "Coefficient of friction")
        .example("0.12")
        .range(
            0.01,
            1.0,
            "the range of friction, from greased to rough and dry",
        )
        .when(&[when("friction", &["own"])]),
    Field::choice(
        "smoothing",
        "Interference lost to roughness",
        &[
            choice("none", "leave it out"),
            choice("din-7190", "by DIN 7190"),
        ],
    )
    .seldom(),
    rz("rz-hole", "Roughness Rz of the hole"),
    rz("rz-shaft", "Roughness Rz of the shaft"),
    strength("hub-strength", "Yield strength of the hub"),
    strength("shaft-strength", "Yield strength of the shaft"),
    Field::length("room", "Assembly clearance when hot")
        .seldom()
        .preset("0.001 in")
        .example("0.001 in")
        .hint("On the diameter. With none the parts seize halfway.")
        .range_mm(0.0, 1.0, "clearances up to 1 mm (0.039 in)"),
];

pub(super) static RESULTS: &[Res] = &[
    Res::of("force", "Press force at most interference", Kind::Force),
    Res::of("force-tons", "The same in US tons", Kind::Force),
    Res::of("torque", "Torque it holds", Kind::Torque),
    Res::of("hold", "Axial load it holds", Kind::Force),
    Res::of("heat", "Heat the hub by", Kind::TemperatureDifference),
    Res::of("heat-to", "Heat the hub to about", Kind::Temperature),
    Res::of("chill", "Or cool the shaft by", Kind::TemperatureDifference),
    Res::of("interference", "Interference", Kind::Length),
    Res::of("rule", "Interference by the shop rule", Kind::Length),
    Res::of("pressure", "Pressure in the joint", Kind::Stress),
    Res::of(
        "hub-stress",
        "Hoop stress in the hub at its bore",
        Kind::Stress,
    ),
    Res::of("shaft-stress", "Hoop stress in the shaft", Kind::Stress),
    Res::of("hub-compare", "Hub stress against yield", Kind::Stress),
    Res::of("shaft-compare", "Shaft stress against yield", Kind::Stress),
];
