//! How fast does the spindle turn with these pulleys? Stages in a row, stepped cones both ways, belt length and wrap.

use crate::machine::{Belt, Pulleys, Run, belt, belt_speed, stages_ratio};
use crate::quantity::units::{M_PER_MIN, SFM};
use crate::quantity::{Angle, Length, Number, RotationalSpeed, Share, SurfaceSpeed, Unit};
use crate::sheet::*;

mod cones;
mod fields;

use fields::*;

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "belt-drive",
    revision: 1,
    title: "Speed from pulleys",
    question: "How fast does the spindle turn with these pulleys, and how long is the belt?",
    aside: "motor, pulleys, centers",
    words: &[
        "pulley",
        "center distance",
        "centre distance",
        "sheave",
        "v belt",
        "flat belt",
        "cone pulley",
        "step pulley",
        "countershaft",
        "line shaft",
        "belt length",
        "spindle speed",
        "ratio",
        "lineshaft",
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: EXAMPLES,
    takes: &[],
    finds: None,
    figure,
};

static RATIO: Source = Source::from_memory(
    "Machinery's Handbook",
    "speeds of pulleys in compound drives: product of drivers over product of driven",
);
static LENGTH: Source = Source::computed(
    "Two circles and their common tangents",
    "open L = 2C cos \u{3c6} + \u{3c0}(R + r) + 2\u{3c6}(R \u{2212} r), sin \u{3c6} = (R \u{2212} r) / C",
);
static SLIP: Source = Source::practice("Slip and creep of belts, 1 to 2% a stage");
static WRAP: Source = Source::practice("Wrap of 120\u{b0} or more on the smaller pulley");
static RIM: Source = Source::from_memory(
    "Machinery's Handbook",
    "cast iron pulleys: rim speed to 6500 ft/min",
);

/// Rim speed that a cast iron pulley stands, ft/min.
const RIM_LIMIT: SurfaceSpeed = SurfaceSpeed::from_sfm(6500.0);
/// Belts and rims are told in plain feet per minute; surface feet are for cuts.
static FT_PER_MIN: Unit = Unit {
    symbol: "ft/min",
    spoken: "feet per minute",
    ..SFM
};
/// Wrap below which a belt slips early, degrees.
const LEAST_WRAP: f64 = 120.0;

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let drive = Drive::read(inp)?;
    let mut a = inp.answer();
    if inp.choice("ask") == "cones" {
        cones::cones(inp, &mut a, &drive)?;
    } else {
        stages(inp, &mut a, &drive)?;
    }
    a.stop("touch-belt", "Before you touch a belt", "Lock the motor out and let it stop. Guard on before it starts: never shift, dress or push a running belt by hand.");
    if inp.choice("belt") == "v" {
        a.note("pulleys-as-measured", "Pulleys as measured", "A V pulley's pitch diameter lies inside its rim by about a third of the belt's depth or more: take it from the maker's list, or prove the ratio by counting turns.");
    }
    a.source(&RATIO);
    Ok(a)
}

struct Drive {
    motor: RotationalSpeed,
    slip: f64,
    thick: Length,
    run: Run,
    centres: Option<Length>,
    /// The first pair, or the cones' steps.
    first: Vec<Pulleys>,
    /// The other stages.
    rest: Vec<Pulleys>,
}

impl Drive {
    fn read(inp: &Inputs) -> Result<Self, Stop> {
        let thick = inp.opt("thick").unwrap_or(Length::ZERO);
        let crossed = inp.choice("run") == "crossed";
        if crossed && inp.choice("belt") == "v" {
            return Err(Stop::fault(
                "run",
                Reason::Conflict,
                "a V belt does not run crossed",
                "choose open, or a flat belt",
            ));
        }
        let list = |id: &str| -> Vec<Pulleys> {
            inp.rows(id)
                .iter()
                .filter_map(|cells| {
                    Some(Pulleys {
                        driver: cells.get::<Length>("driver")? + thick,
                        driven: cells.get::<Length>("driven")? + thick,
                    })
                })
                .collect()
        };
        let is_cones = inp.choice("ask") == "cones";
        let (first, rest) = if is_cones {
            (list("cones"), list("more"))
        } else {
            let all = list("stages");
            (
                all.iter().take(1).copied().collect(),
                all.iter().skip(1).copied().collect(),
            )
        };
        if first.is_empty() {
            return Err(Stop::Missing(if is_cones { "cones" } else { "stages" }));
        }
        Ok(Self {
            motor: inp.get("motor")?,
            slip: inp.get::<Share>("slip")?.fraction(),
            thick,
            run: if crossed { Run::Crossed } else { Run::Open },
            centres: inp.opt("centres"),
            first,
            rest,
        })
    }
    fn spindle(&self, pair: Pulleys) -> RotationalSpeed {
        self.motor * (stages_ratio(&[pair], self.slip) * stages_ratio(&self.rest, self.slip))
    }
    fn belt(&self, inp: &Inputs, pair: Pulleys) -> Result<Option<Belt>, Stop> {
        let Some(centres) = self.centres else {
            return Ok(None);
        };
        belt(pair, centres, self.run).map(Some).ok_or_else(|| {
            Stop::fault(
                "centres",
                Reason::Conflict,
                "the pulleys would touch at these centers",
                format!(
                    "give more than {}, half the sum of the two diameters",
                    inp.show((pair.driver + pair.driven) * 0.5)
                ),
            )
        })
    }
}

fn first_pair(
    inp: &Inputs,
    a: &mut Answer,
    drive: &Drive,
    pair: Pulleys,
) -> Result<Option<Belt>, Stop> {
    let speed = belt_speed(pair.driver, drive.motor);
    let found = drive.belt(inp, pair)?;
    a.line("belt-speed", speed)
        .units(&FT_PER_MIN, &M_PER_MIN)
        .says("At the driver's pitch line, where the first pair is on the motor.");
    if let Some(found) = found {
        a.line("length", found.length)
            .places(2, 0)
            .says(if inp.choice("belt") == "flat" {
                "At the middle of the belt's thickness."
            } else {
                "Pitch length: inside and outside length differ from it by the belt's section."
            });
        a.line("wrap", found.wrap)
            .places(0, 0)
            .says("Of 360\u{b0}.");
        // a last bit is no step past the limit
        if found.wrap < Angle::from_degrees(LEAST_WRAP * (1.0 - 1e-9)) {
            a.note("little-wrap", "Little wrap", "Under 120\u{b0} on the smaller pulley the belt slips early: move the shafts apart, or put an idler on the slack side.");
            a.source(&WRAP);
        }
    }
    if speed > RIM_LIMIT * (1.0 + 1e-9) {
        a.stop("fast-rim", "Before you run this fast", format!("The belt runs at {}, past {} that cast iron pulleys stand: a rim can burst. Smaller pulleys, or pulleys rated for it.", belt_speed_text(inp, speed), belt_speed_text(inp, RIM_LIMIT)));
        a.source(&RIM);
    }
    Ok(found)
}

fn belt_speed_text(inp: &Inputs, speed: SurfaceSpeed) -> String {
    Value::of(speed)
        .units(&FT_PER_MIN, &M_PER_MIN)
        .text_with_unit(inp.system())
}

fn stages(inp: &Inputs, a: &mut Answer, drive: &Drive) -> Result<(), Stop> {
    let Some(pair) = drive.first.first().copied() else {
        return Err(Stop::Missing("stages"));
    };
    let spindle = drive.spindle(pair);
    a.line("spindle", spindle)
        .places(1, 1)
        .says(slip_says(drive));
    a.line("ratio", Number::of(spindle / drive.motor))
        .places(4, 4)
        .says("Drivers over driven, slip taken off: under 1 the spindle is slower.");
    let found = first_pair(inp, a, drive, pair)?;
    let all: Vec<Pulleys> = drive.first.iter().chain(&drive.rest).copied().collect();
    if let (Some(wanted), Some(last)) = (inp.opt::<RotationalSpeed>("wanted"), all.last()) {
        let driven = last.driven * (spindle / wanted) - drive.thick;
        if !made(driven) {
            return Err(inp.out_of_range(
                "wanted",
                "the pulley for this speed is outside 5 to 5000 mm (0.2 to 197 in)",
                "choose another speed, or change another pulley",
            ));
        }
        a.line("driven-for", driven)
            .places(3, 2)
            .says("The other pulleys as they are.");
    }
    if !inp.quiet() {
        let table = a.table(
            "stages",
            "Stage by stage",
            &["stage", "driver", "driven", "shaft turns"],
        );
        let mut speed = drive.motor;
        for (number, pair) in (1_u32..).zip(&all) {
            speed = speed * stages_ratio(&[*pair], drive.slip);
            let cells = vec![
                Value::words(number.to_string()),
                Value::of(pair.driver - drive.thick),
                Value::of(pair.driven - drive.thick),
                Value::of(speed).places(1, 1),
            ];
            table.row(cells);
        }
    }
    a.work(|w| {
        let over: Vec<String> = all.iter().map(|pair| inp.num(pair.driver)).collect();
        let under: Vec<String> = all.iter().map(|pair| inp.num(pair.driven)).collect();
        w.step(
            "Spindle speed",
            &[
                "n = N \u{d7} drivers \u{f7} driven \u{d7} (1 \u{2212} s) for each stage".into(),
                format!(
                    "n = {} \u{d7} ({}) \u{f7} ({}) \u{d7} {} = {}",
                    inp.show(drive.motor),
                    over.join(" \u{d7} "),
                    under.join(" \u{d7} "),
                    left(inp, drive, all.len()),
                    inp.show_to(spindle, 1, 1)
                ),
            ],
            &RATIO,
        );
        length_step(inp, w, drive, pair, found);
    });
    a.source(&SLIP);
    a.draw(|| draw(inp, drive, pair, spindle));
    Ok(())
}

/// A size in which pulleys are made, as the fields take them.
fn made(pulley: Length) -> bool {
    (5.0..=5000.0).contains(&pulley.mm())
}

fn slip_says(drive: &Drive) -> &'static str {
    if drive.slip > 0.0 {
        "Slip taken off at each stage."
    } else {
        "With no slip; under load 1 to 2% less per stage."
    }
}

fn left(inp: &Inputs, drive: &Drive, stages: usize) -> String {
    let share = Value::of(Share::from_fraction(drive.slip))
        .places(1, 1)
        .text_with_unit(inp.system());
    format!("(1 \u{2212} {share})^{stages}")
}

fn length_step(inp: &Inputs, w: &mut Work, drive: &Drive, pair: Pulleys, found: Option<Belt>) {
    let (Some(found), Some(centres)) = (found, drive.centres) else {
        return;
    };
    let (formula, sine) = match drive.run {
        Run::Open => (
            "L = 2C cos \u{3c6} + \u{3c0}(R + r) + 2\u{3c6}(R \u{2212} r), sin \u{3c6} = (R \u{2212} r) \u{f7} C",
            (pair.driver - pair.driven).abs() / centres / 2.0,
        ),
        Run::Crossed => (
            "L = 2C cos \u{3c6} + (\u{3c0} + 2\u{3c6})(R + r), sin \u{3c6} = (R + r) \u{f7} C",
            (pair.driver + pair.driven) / centres / 2.0,
        ),
    };
    let phi = Angle::from_radians(libm::asin(sine));
    w.step(
        "Belt length",
        &[
            formula.into(),
            format!(
                "C = {}, \u{3c6} = {}, R and r half of {} and {}: L = {}",
                inp.show(centres),
                inp.show_to(phi, 2, 2),
                inp.num(pair.driver),
                inp.num(pair.driven),
                inp.show_to(found.length, 3, 1)
            ),
        ],
        &LENGTH,
    );
}

fn draw(inp: &Inputs, drive: &Drive, pair: Pulleys, spindle: RotationalSpeed) -> Drawing {
    let known = drive.centres.is_some();
    let mut d = Drawing::new(
        "First pair of pulleys with its belt: driver left, driven right",
        known,
    );
    let c = drive
        .centres
        .unwrap_or((pair.driver + pair.driven) * 1.2)
        .mm();
    let scale = 160.0 / c;
    let (r, s, c) = (
        pair.driver.mm() / 2.0 * scale,
        pair.driven.mm() / 2.0 * scale,
        160.0,
    );
    d.circle(Pen::Object, pt(0.0, 0.0), r);
    d.circle(Pen::Object, pt(c, 0.0), s);
    d.path(
        Pen::Centre,
        false,
        &[pt(-r - 6.0, 0.0), pt(c + s + 6.0, 0.0)],
    );
    let sign = if drive.run == Run::Crossed { -1.0 } else { 1.0 };
    let sine = ((r - sign * s) / c).clamp(-1.0, 1.0);
    let cosine = libm::sqrt(1.0 - sine * sine);
    for side in [1.0, -1.0] {
        d.path(
            Pen::Mark,
            false,
            &[
                pt(r * sine, side * r * cosine),
                pt(c + sign * s * sine, side * sign * s * cosine),
            ],
        );
    }
    let low = -r.max(s);
    if let Some(centres) = drive.centres {
        d.dimension(pt(0.0, low), pt(c, low), -2.0, inp.show(centres));
    }
    d.text(pt(0.0, r + 14.0), inp.show(drive.motor));
    let words = if drive.rest.is_empty() {
        inp.show(spindle)
    } else {
        format!("to spindle {}", inp.show(spindle))
    };
    d.text(pt(c, s + 14.0), words);
    d
}
