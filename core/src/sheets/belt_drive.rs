//! How fast does the spindle turn with these pulleys? Stages in a row, stepped cones both ways, belt length and wrap.

use crate::machine::{Belt, Pulleys, Run, belt, belt_speed, pair_for, stages_ratio};
use crate::quantity::units::{INCH, MM, RPM};
use crate::quantity::{Angle, Kind, Length, Number, RotationalSpeed, Share, SurfaceSpeed};
use crate::sheet::*;

pub(super) static SHEET: Sheet = Sheet {
    id: "belt-drive",
    revision: 1,
    title: "Speed from pulleys",
    question: "How fast does the spindle turn with these pulleys, and how long is the belt?",
    aside: "motor, pulleys, centres",
    words: &[
        "pulley",
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
    fields: &[
        Field::choice(
            "ask",
            "Drive",
            &[
                choice("stages", "pulleys, one stage or more"),
                choice("cones", "stepped cones"),
            ],
        ),
        Field::quantity(
            "motor",
            "Motor or first shaft",
            Kind::RotationalSpeed,
            &[&RPM],
        )
        .example("1725 rpm")
        .range(1.0, 30_000.0, "what a shop motor turns")
        .measured()
        .monotonic(),
        Field::choice(
            "belt",
            "Belt",
            &[
                choice("v", "V: pitch diameters"),
                choice("flat", "flat: outside diameters"),
            ],
        ),
        Field::quantity("thick", "Belt thickness", Kind::Length, &[&INCH, &MM])
            .example("3/16 in")
            .range_mm(0.1, 25.0, "what a flat belt measures")
            .hint(
                "Half of it on each side counts: a flat belt runs on the middle of its thickness.",
            )
            .when(&[when("belt", &["flat"])])
            .measured(),
        Field::percent("slip", "Slip, each stage")
            .example("2 pct")
            .preset("0 pct")
            .range(0.0, 0.2, "past 20 % a belt burns")
            .hint("0 for the plain ratio; 1 to 2 % is usual under load.")
            .measured()
            .monotonic(),
        Field::rows("cones", "Cone steps: driver and driven", CONES, 2, 8)
            .example("3 in~6 in;4.5 in~4.5 in;6 in~3 in")
            .hint("Step by step, as the belt lies.")
            .when(&[when("ask", &["cones"])]),
        Field::rows("stages", "Stages: driver and driven", PAIR, 1, 6)
            .example("3 in~9 in;4 in~6 in")
            .hint("From the motor to the spindle.")
            .when(&[when("ask", &["stages"])]),
        Field::rows("more", "Fixed stages before or after", PAIR, 1, 5)
            .example("2.5 in~10 in")
            .hint("Beside the cones, where there are any.")
            .when(&[when("ask", &["cones"])])
            .optional(),
        Field::quantity(
            "centres",
            "Between shafts, first pair",
            Kind::Length,
            &[&INCH, &MM],
        )
        .example("20 in")
        .range_mm(10.0, 20_000.0, "shafts in a shop")
        .hint("For the belt length.")
        .optional()
        .measured()
        .monotonic(),
        Field::choice(
            "run",
            "Belt runs",
            &[choice("open", "open"), choice("crossed", "crossed")],
        ),
        Field::quantity(
            "wanted",
            "Spindle speed wanted",
            Kind::RotationalSpeed,
            &[&RPM],
        )
        .example("400 rpm")
        .range(0.1, 100_000.0, "what a spindle turns")
        .hint("To find the pulley for it.")
        .optional(),
    ],
    results: &[
        Res::of("spindle", "Spindle", Kind::RotationalSpeed),
        Res::of("slowest", "Slowest", Kind::RotationalSpeed),
        Res::of("fastest", "Fastest", Kind::RotationalSpeed),
        Res::of("ratio", "Turns out for a turn in", Kind::Number),
        Res::of("belt-speed", "Belt speed, first pair", Kind::SurfaceSpeed),
        Res::of("length", "Belt length, first pair", Kind::Length),
        Res::of("wrap", "Wrap on the smaller pulley", Kind::Angle),
        Res::of(
            "length-spread",
            "Belt lengths of the steps differ by",
            Kind::Length,
        ),
        Res::of(
            "driven-for",
            "Last driven pulley for the speed wanted",
            Kind::Length,
        ),
        Res::of("cone-driver", "New step, driver", Kind::Length),
        Res::of("cone-driven", "New step, driven", Kind::Length),
    ],
    examples: &[
        &[
            ("motor", "1725 rpm"),
            ("stages", "3 in~9 in;4 in~6 in"),
            ("slip", "2 pct"),
            ("centres", "20 in"),
            ("wanted", "400 rpm"),
        ],
        &[
            ("ask", "cones"),
            ("motor", "450 rpm"),
            ("belt", "flat"),
            ("thick", "3/16 in"),
            ("cones", "3 in~6 in;4.5 in~4.6 in;6 in~3 in"),
            ("centres", "30 in"),
            ("wanted", "600 rpm"),
        ],
    ],
    takes: &[],
    finds: None,
    figure,
};

const fn pulley(id: &'static str, label: &'static str) -> Field {
    Field::quantity(id, label, Kind::Length, const { &[&INCH, &MM] })
        .range_mm(5.0, 5000.0, "what a pulley measures")
        .example("6 in")
}
static PAIR: &[Field] = &[pulley("driver", "Driver"), pulley("driven", "Driven")];
static CONES: &[Field] = &[
    pulley("driver", "Driver step"),
    pulley("driven", "Driven step"),
];

static RATIO: Source = Source::from_memory(
    "Machinery's Handbook",
    "speeds of pulleys in compound drives: product of drivers over product of driven",
);
static LENGTH: Source = Source::computed(
    "Two circles and their common tangents",
    "open L = 2C cos \u{3c6} + \u{3c0}(R + r) + 2\u{3c6}(R \u{2212} r), sin \u{3c6} = (R \u{2212} r) / C",
);
static SLIP: Source = Source::practice("Slip and creep of belts, 1 to 2 % a stage");
static WRAP: Source = Source::practice("Wrap of 120\u{b0} or more on the smaller pulley");
static RIM: Source = Source::from_memory(
    "Machinery's Handbook",
    "cast iron pulleys: rim speed to 6500 ft/min",
);

/// Rim speed that a cast iron pulley stands, ft/min.
const RIM_LIMIT: SurfaceSpeed = SurfaceSpeed::from_sfm(6500.0);
/// Wrap below which a belt slips early, degrees.
const LEAST_WRAP: f64 = 120.0;

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let drive = Drive::read(inp)?;
    let mut a = inp.answer();
    if inp.choice("ask") == "cones" {
        cones(inp, &mut a, &drive)?;
    } else {
        stages(inp, &mut a, &drive)?;
    }
    a.stop("Before you touch a belt", "Lock the motor out and let it stop. Guard on before it starts: never shift, dress or push a running belt by hand.");
    a.note("Pulleys as measured", "A V pulley's pitch diameter lies inside its rim by about a third of the belt's depth or more: take it from the maker's list, or prove the ratio by counting turns.");
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
    fn belt(&self, pair: Pulleys) -> Result<Option<Belt>, Stop> {
        let Some(centres) = self.centres else {
            return Ok(None);
        };
        belt(pair, centres, self.run).map(Some).ok_or_else(|| {
            Stop::fault(
                "centres",
                Reason::Conflict,
                "the pulleys would touch at these centres",
                "give centres of more than half the sum of the two diameters",
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
    let found = drive.belt(pair)?;
    a.line("belt-speed", speed)
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
        if found.wrap < Angle::from_degrees(LEAST_WRAP) {
            a.note("Little wrap", "Under 120\u{b0} on the smaller pulley the belt slips early: move the shafts apart, or put an idler on the slack side.");
            a.source(&WRAP);
        }
    }
    if speed > RIM_LIMIT {
        a.stop("Before you run this fast", format!("The belt runs at {}, past {} that cast iron pulleys stand: a rim can burst. Smaller pulleys, or pulleys rated for it.", inp.show(speed), inp.show(RIM_LIMIT)));
        a.source(&RIM);
    }
    Ok(found)
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
        if driven <= Length::ZERO {
            return Err(inp.out_of_range(
                "wanted",
                "no pulley is so small",
                "want a slower spindle, or change another pulley",
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

fn cones(inp: &Inputs, a: &mut Answer, drive: &Drive) -> Result<(), Stop> {
    let speeds: Vec<RotationalSpeed> = drive
        .first
        .iter()
        .map(|pair| drive.spindle(*pair))
        .collect();
    let (slow, fast) = speeds
        .iter()
        .fold((f64::INFINITY, 0.0_f64), |(low, high), n| {
            (low.min(n.rpm()), high.max(n.rpm()))
        });
    let Some(pair) = drive.first.first().copied() else {
        return Err(Stop::Missing("cones"));
    };
    a.line("slowest", RotationalSpeed::from_rpm(slow))
        .places(1, 1)
        .says(slip_says(drive));
    a.line("fastest", RotationalSpeed::from_rpm(fast))
        .places(1, 1)
        .says(slip_says(drive));
    let mut belts = Vec::new();
    for pair in &drive.first {
        belts.extend(drive.belt(*pair)?);
    }
    let found = first_pair(inp, a, drive, pair)?;
    if let Some(first) = belts.first() {
        let (low, high) = belts
            .iter()
            .fold((first.length, first.length), |(low, high), belt| {
                (low.min(belt.length), high.max(belt.length))
            });
        a.line("length-spread", high - low)
            .places(3, 2)
            .says("The same belt fits every step where this is next to nothing.");
        if (high - low) / low > 0.005 {
            a.note("One belt does not fit all steps", "The lengths differ by more than half a percent: the belt is slack on one step or tight on another, unless a take-up allows for it.");
        }
        if let Some(wanted) = inp.opt::<RotationalSpeed>("wanted") {
            new_step(inp, a, drive, wanted, first.length)?;
        }
    } else if inp.opt::<RotationalSpeed>("wanted").is_some() {
        return Err(Stop::Missing("centres"));
    }
    if !inp.quiet() {
        let table = a.table(
            "steps",
            "Step by step",
            &[
                "driver",
                "driven",
                "spindle",
                "spindle, cones changed about",
                "belt length",
            ],
        );
        for (index, (pair, speed)) in drive.first.iter().zip(&speeds).enumerate() {
            let back = drive.spindle(Pulleys {
                driver: pair.driven,
                driven: pair.driver,
            });
            let length = belts.get(index).map_or_else(
                || Value::words("\u{2014}"),
                |belt| Value::of(belt.length).places(3, 1),
            );
            let cells = vec![
                Value::of(pair.driver - drive.thick),
                Value::of(pair.driven - drive.thick),
                Value::of(*speed).places(1, 1),
                Value::of(back).places(1, 1),
                length,
            ];
            table.row(cells);
        }
        table.note(
            "Changed about: with the driving cone on the spindle and the driven one on the motor.",
        );
    }
    a.work(|w| {
        let stages = drive.rest.len().saturating_add(1);
        w.step(
            "First step",
            &[
                "n = N \u{d7} driver \u{f7} driven \u{d7} other stages \u{d7} (1 \u{2212} s) for each stage".into(),
                format!(
                    "n = {} \u{d7} {} \u{f7} {} \u{d7} {} \u{d7} {} = {}",
                    inp.show(drive.motor),
                    inp.num(pair.driver),
                    inp.num(pair.driven),
                    inp.num_to(Number::of(stages_ratio(&drive.rest, 0.0)), 4, 4),
                    left(inp, drive, stages),
                    inp.show_to(drive.spindle(pair), 1, 1)
                ),
            ],
            &RATIO,
        );
        length_step(inp, w, drive, pair, found);
    });
    a.source(&SLIP);
    a.draw(|| draw(inp, drive, pair, drive.spindle(pair)));
    Ok(())
}

/// The step to add for a wanted speed, on the same belt as the first step.
fn new_step(
    inp: &Inputs,
    a: &mut Answer,
    drive: &Drive,
    wanted: RotationalSpeed,
    length: Length,
) -> Result<(), Stop> {
    let others = stages_ratio(&drive.rest, drive.slip) * (1.0 - drive.slip);
    let ratio = wanted / (drive.motor * others);
    let fits = drive
        .centres
        .and_then(|centres| pair_for(ratio, length, centres, drive.run));
    let Some(pair) = fits.filter(|pair| pair.driver > drive.thick && pair.driven > drive.thick)
    else {
        return Err(inp.out_of_range(
            "wanted",
            "no pair of pulleys gives this speed with this belt at these centres",
            "want a speed nearer to those of the cones, or change a fixed stage",
        ));
    };
    a.line("cone-driver", pair.driver - drive.thick)
        .places(3, 2)
        .says("For the speed wanted, on the belt of the first step.");
    a.line("cone-driven", pair.driven - drive.thick)
        .places(3, 2)
        .says("For the speed wanted, on the belt of the first step.");
    Ok(())
}

fn slip_says(drive: &Drive) -> &'static str {
    if drive.slip > 0.0 {
        "Slip taken off at each stage."
    } else {
        "With no slip; under load 1 to 2 % a stage less."
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
