//! Which chip does a feed leave at each spindle step? It depends on whether the feed follows the spindle.

use crate::machine::around;
use crate::quantity::units::{IN_PER_REV, MM_PER_REV, RPM};
use crate::quantity::{
    Count, FeedPerRev, FeedPerTooth, FeedRate, Kind, Quantity, RotationalSpeed, Share,
};
use crate::record::{FEED_STEP, FEEDS, FEEDS_TURN, SPEED_STEP, SPINDLE, TURN_FEED_STEP};
use crate::sheet::*;

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "feed-per-turn",
    revision: 1,
    title: "Feed per minute and per rev",
    question: "What becomes of the chip when I change the spindle speed?",
    aside: "feed, spindle speeds, teeth",
    words: &[
        "ipm to ipr", "in/min", "in/rev", "ipr", "ipm", "feed per rev", "feed per turn", "feed follows the spindle", "chip load", "spindle step",
        "mm/min", "mm/rev",
    ],
    group: Group::Run,
    fields: &[
        Field::choice("feed", "Feed is driven", &[choice("own", "by its own drive: per minute"), choice("spindle", "from the spindle: per rev")])
            .filled_from_shop(ShopItem::FeedFollows)
            .hint("Feed by its own motor keeps its rate when the spindle speed changes; feed from the spindle does not."),
        Field::table_feed("rate", "Feed set")
            .example("6 ipm")
            .when(&[when("feed", &["own"])])
            .measured()
            .monotonic(),
        Field::quantity("per-rev", "Feed set", Kind::FeedPerRev, &[&IN_PER_REV, &MM_PER_REV])
            .example("0.008 ipr")
            .range(0.00254, 50.0, "the range of feeds per rev")
            .when(&[when("feed", &["spindle"])])
            .measured()
            .monotonic(),
        Field::quantity("speed", "Spindle speed now", Kind::RotationalSpeed, &[&RPM])
            .example("270 rpm")
            .range(1.0, 100_000.0, "the range of spindle speeds")
            .measured()
            .monotonic(),
        Field::count("teeth", "Teeth of the cutter").seldom().example("4").range(1.0, 200.0, "the range of teeth, from a fly cutter to a fine saw").optional(),
        Field::rows("steps", "Spindle speeds", SPEED_STEP, 1, 48)
            .example("70;110;175;270;425;670")
            .hint("As on the plate, one per row.")
            .from_shop(ShopItem::SpindleSteps, SPINDLE),
        Field::rows("feed-steps", "Feeds", FEED_STEP, 1, 48)
            .example("1 ipm;2 ipm;4 ipm")
            .hint("As on the plate, one per row.")
            .from_shop(ShopItem::FeedSteps, FEEDS)
            .when(&[when("feed", &["own"])]),
        Field::rows("feed-steps-turn", "Feeds, per rev", TURN_FEED_STEP, 1, 48)
            .example("0.002 ipr;0.004 ipr;0.008 ipr")
            .hint("As on the plate, one per row.")
            .from_shop(ShopItem::FeedStepsTurn, FEEDS_TURN)
            .when(&[when("feed", &["spindle"])]),
    ],
    results: &[
        Res::of("per-turn", "Feed per rev", Kind::FeedPerRev),
        Res::of("per-minute", "Feed per minute", Kind::FeedRate),
        Res::of("per-tooth", "Feed per tooth", Kind::FeedPerTooth),
        Res::words("on-plate", "Spindle speed against the plate"),
        Res::words("feed-on-plate", "Feed against the plate"),
        Res::stepped("chip-up", "Chip at the next faster speed", Kind::Share),
        Res::stepped("chip-down", "Chip at the next slower speed", Kind::Share),
    ],
    examples: &[
        &[("rate", "6 ipm"), ("speed", "270 rpm"), ("teeth", "4")],
        &[("feed", "spindle"), ("per-rev", "0.008 ipr"), ("speed", "425 rpm"), ("teeth", "6")],
    ],
    takes: &[],
    finds: None,
    figure,
};

static TURNS: Source = Source::computed(
    "Feed per minute is feed per rev \u{d7} revs per minute",
    "F = f \u{d7} n; a tooth takes f \u{f7} z",
);
static KINDS: Source = Source::practice("Two kinds of feed drive");

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let speed: RotationalSpeed = inp.get("speed")?;
    let own = inp.choice("feed") == "own";
    let rate_at = |n: RotationalSpeed| -> Result<FeedRate, Stop> {
        if own {
            inp.get("rate")
        } else {
            Ok(FeedRate::from_mm_per_min(
                inp.get::<FeedPerRev>("per-rev")?.mm_per_rev() * n.rpm(),
            ))
        }
    };
    let rate = rate_at(speed)?;
    let turn = FeedPerRev::from_mm_per_rev(rate.mm_per_min() / speed.rpm());
    let teeth = inp.opt::<Count>("teeth").map(Count::get);
    let tooth = |turn: FeedPerRev, z: f64| FeedPerTooth::from_mm_per_tooth(turn.mm_per_rev() / z);
    let mut steps: Vec<RotationalSpeed> = inp.list("steps");
    crate::order::sort_by(&mut steps, |a, b| a.rpm().total_cmp(&b.rpm()));
    steps.dedup();
    let mut a = inp.answer();
    a.line("per-turn", turn).says(if own {
        "Feed per minute over revs per minute: changes with the spindle speed."
    } else {
        "As set: the same at every spindle speed."
    });
    a.line("per-minute", rate).says(if own {
        "As set: the same at every spindle speed."
    } else {
        "Feed per rev \u{d7} revs per minute: changes with the spindle speed."
    });
    if let Some(z) = teeth {
        a.line("per-tooth", tooth(turn, z))
            .says("With all teeth cutting the same.");
    }
    on_plate(inp, &mut a, &steps, speed, own);
    let chip = |turn: FeedPerRev| {
        teeth.map_or_else(|| Value::words("\u{2014}"), |z| Value::of(tooth(turn, z)))
    };
    if own {
        let at = |rate: FeedRate| {
            let turn = FeedPerRev::from_mm_per_rev(rate.mm_per_min() / speed.rpm());
            vec![Value::of(rate), Value::of(turn), chip(turn)]
        };
        feed_steps(inp, &mut a, "feed-steps", rate, at);
    } else {
        let at = |turn: FeedPerRev| {
            let rate = FeedRate::from_mm_per_min(turn.mm_per_rev() * speed.rpm());
            vec![Value::of(rate), Value::of(turn), chip(turn)]
        };
        feed_steps(inp, &mut a, "feed-steps-turn", turn, at);
    }
    if !inp.quiet() {
        let columns = &[
            "spindle",
            "feed per minute",
            "feed per rev",
            "feed per tooth",
            "chip against now",
        ];
        let table = a.table("steps", "At each spindle speed", columns);
        for step in &steps {
            let rate = rate_at(*step)?;
            let there = FeedPerRev::from_mm_per_rev(rate.mm_per_min() / step.rpm());
            let change = Value::of(Share::from_fraction(there / turn - 1.0))
                .places(0, 0)
                .signed();
            table
                .row(vec![
                    Value::of(*step),
                    Value::of(rate),
                    Value::of(there),
                    chip(there),
                    change,
                ])
                .chosen(*step == speed);
        }
        table.note(if own {
            "Feed on its own: a slower spindle takes a thicker chip."
        } else {
            "Feed from the spindle: the chip stays, the time changes."
        });
    }
    a.work(|w| {
        let lines = if own {
            [
                "f = F \u{f7} n".to_owned(),
                format!(
                    "f = {} \u{f7} {} = {}",
                    inp.show(rate),
                    inp.show(speed),
                    inp.show(turn)
                ),
            ]
        } else {
            [
                "F = f \u{d7} n".to_owned(),
                format!(
                    "F = {} \u{d7} {} = {}",
                    inp.show(turn),
                    inp.show(speed),
                    inp.show(rate)
                ),
            ]
        };
        w.step(
            if own {
                "Feed per rev"
            } else {
                "Feed per minute"
            },
            &lines,
            &TURNS,
        );
        if let Some(z) = teeth {
            let chip = tooth(turn, z);
            w.step(
                "Feed per tooth",
                &[
                    "fz = f \u{f7} z".into(),
                    format!(
                        "fz = {} \u{f7} {} = {}",
                        inp.show(turn),
                        inp.num(Count::of(z)),
                        inp.show(chip)
                    ),
                ],
                &TURNS,
            );
        }
    });
    a.draw(|| draw(&steps, speed, own));
    if own {
        a.stop("slower-spindle", "Before you slow the spindle", "The feed goes on at its own rate: each tooth then takes more. Lower the feed first, then the spindle; raise the spindle first, then the feed.");
    } else {
        a.stop("faster-spindle", "Before you speed the spindle up", "The feed grows with it: the table comes to its stop sooner. Set the trip dogs for the faster rate.");
    }
    a.source(&KINDS);
    Ok(a)
}

fn on_plate(
    inp: &Inputs,
    a: &mut Answer,
    steps: &[RotationalSpeed],
    speed: RotationalSpeed,
    own: bool,
) {
    let entered = inp.is_entered("steps");
    let near = |step: &&RotationalSpeed| (step.rpm() / speed.rpm() - 1.0).abs() < 1e-9;
    let on = steps.iter().any(|step| near(&step));
    let below = steps
        .iter()
        .rev()
        .find(|step| step.rpm() < speed.rpm() * (1.0 - 1e-9));
    let above = steps
        .iter()
        .find(|step| step.rpm() > speed.rpm() * (1.0 + 1e-9));
    let text = match (on, around(steps, speed)) {
        (true, _) => "on the plate".to_owned(),
        (false, Some(found)) => format!("not on the plate; nearest is {}", inp.show(found.nearest)),
        (false, None) => "not on the plate".to_owned(),
    };
    a.words("on-plate", text).says(if entered {
        "Against the spindle speeds of your mill."
    } else {
        "Against the spindle speeds of a typical mill; enter yours."
    });
    if !on {
        a.note("not-on-machine", "This speed is not on the plate", if entered {
            "The figures hold for the speed as given. Choose a speed of the plate, or correct the spindle speeds."
        } else {
            "The figures hold for the speed as given. The plate is that of a typical mill: enter the spindle speeds of yours."
        });
    }
    let change = |step: &RotationalSpeed| {
        Share::from_fraction(if own {
            speed.base() / step.base() - 1.0
        } else {
            0.0
        })
    };
    if let Some(step) = above {
        a.line("chip-up", change(step))
            .places(0, 0)
            .signed()
            .says(format!("At {}.", inp.show(*step)));
    }
    if let Some(step) = below {
        a.line("chip-down", change(step))
            .places(0, 0)
            .signed()
            .says(format!("At {}.", inp.show(*step)));
    }
}

/// Whether the feed is a step of the plate, and what each step of the plate gives at the spindle as it is now.
fn feed_steps<Q: Quantity>(
    inp: &Inputs,
    a: &mut Answer,
    field: &'static str,
    set: Q,
    cells: impl Fn(Q) -> Vec<Value>,
) {
    let mut steps: Vec<Q> = inp.list(field);
    crate::order::sort_by(&mut steps, |a, b| a.base().total_cmp(&b.base()));
    let near = |step: Q| (step.base() / set.base() - 1.0).abs() < 1e-9;
    let text = match around(&steps, set) {
        Some(_) if steps.iter().any(|step| near(*step)) => "on the plate".to_owned(),
        Some(found) => format!("not on the plate; nearest is {}", inp.show(found.nearest)),
        None => "not on the plate".to_owned(),
    };
    a.words("feed-on-plate", text)
        .says(if inp.is_entered(field) {
            "Against the feeds of your mill."
        } else {
            "Against the feeds of a typical mill; enter yours."
        });
    if inp.quiet() {
        return;
    }
    let columns = &["feed per minute", "feed per rev", "feed per tooth"];
    let table = a.table("feeds", "Each feed at this spindle speed", columns);
    for step in steps {
        table.row(cells(step)).chosen(near(step));
    }
}

/// Chip over spindle speed, both on scales of equal ratios, so that the drawing is the same for each system of units.
fn draw(steps: &[RotationalSpeed], speed: RotationalSpeed, own: bool) -> Drawing {
    let title = if own {
        "Chip against spindle speed: it falls as the spindle turns faster"
    } else {
        "Chip against spindle speed: the same at every speed"
    };
    let mut d = Drawing::new(title, false);
    let x = |n: RotationalSpeed| 100.0 * libm::log10(n.rpm());
    let y = |n: RotationalSpeed| {
        if own {
            -60.0 * libm::log10(n.rpm() / speed.rpm())
        } else {
            0.0
        }
    };
    let line: Vec<Point> = steps.iter().map(|step| pt(x(*step), y(*step))).collect();
    d.path(Pen::Thin, false, &line);
    for point in &line {
        d.circle(Pen::Object, *point, 2.0);
    }
    d.circle(Pen::Mark, pt(x(speed), y(speed)), 4.0);
    d.text(pt(x(speed), y(speed) + 16.0), "now");
    if let (Some(low), Some(high)) = (line.first(), line.last()) {
        d.text(pt(low.x, low.y.min(high.y) - 24.0), "slow");
        d.text(pt(high.x, low.y.min(high.y) - 24.0), "fast");
    }
    d
}
