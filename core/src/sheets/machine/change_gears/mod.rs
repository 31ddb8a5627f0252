//! Which change wheels cut this thread, or give this ratio? Trains of two and four wheels from the set, exact and nearest.

mod draw;

use crate::machine::{CLEAR, Found, MOST_WHEELS, Train, find_trains};
use crate::quantity::units::{INCH, MM, PITCH_MM, TPI};
use crate::quantity::{Count, Kind, Length, Number, Pitch, Share, System, Unit};
use crate::record::WHEEL;
use crate::sheet::*;
use draw::draw;

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "change-gears",
    revision: 1,
    title: "Choose change gears (change wheels)",
    question: "Which change gears cut this thread or give this ratio?",
    aside: "leadscrew, thread, gears",
    words: &[
        "change gears",
        "change wheels",
        "quick change",
        "gear train",
        "compound train",
        "thread cutting",
        "screw cutting",
        "leadscrew",
        "127",
        "transposing gears",
        "metric thread on inch lathe",
        "ratio",
        "banjo",
        "quadrant",
    ],
    group: Group::Run,
    fields: &[
        Field::choice(
            "for",
            "Wanted",
            &[
                choice("thread", "a thread"),
                choice("ratio", "a plain ratio"),
            ],
        ),
        Field::quantity("leadscrew", "Leadscrew", Kind::Pitch, &[&TPI, &PITCH_MM])
            .example("8 tpi")
            .range(0.2, 50.0, "the range of lathe leadscrews")
            .filled_from_shop(ShopItem::Leadscrew)
            .hint("Lead, where it has more than one start.")
            .when(THREAD),
        Field::quantity("thread", "Thread wanted", Kind::Pitch, &[&TPI, &PITCH_MM])
            .example("1.5 mm")
            .range(0.05, 100.0, "the range of threads cut in a lathe")
            .hint("Lead, where it has more than one start.")
            .when(THREAD)
            .monotonic(),
        Field::number("fixed", "Leadscrew turns with 1:1 gears")
            .example("1/2")
            .preset("1")
            .range(0.001, 1000.0, "the range of gearbox and stud gear ratios")
            .hint("For one spindle turn: 1 with no gearbox and equal stud gears.")
            .when(THREAD),
        Field::quantity("over", "Length of thread", Kind::Length, &[&INCH, &MM])
            .example("1 in")
            .preset("1 in")
            .range_mm(0.1, 5000.0, "the range of threads cut in a lathe")
            .hint("For the error over the length.")
            .when(THREAD),
        Field::number("ratio", "Ratio wanted")
            .example("2.5")
            .range(0.0001, 10_000.0, "the range of ratios that four gears give")
            .when(RATIO),
        Field::choice(
            "sense",
            "Counted as",
            &[
                choice("out", "driver over driven: output turns per input turn"),
                choice("in", "driven over driver: input turns per output turn"),
            ],
        )
        .when(RATIO),
        Field::rows("wheels", "Gears of the set", WHEEL, 2, MOST_WHEELS)
            .example("20;24;28;32;36;40;44;48;56;64;72;80;100;127")
            .hint("Teeth, one per row; a gear that you have twice is given twice.")
            .filled_from_shop(ShopItem::ChangeWheels),
    ],
    results: &[
        Res::words("train", "Best train"),
        Res::of("wanted", "Ratio wanted, drivers over driven", Kind::Number),
        Res::stepped("ratio-found", "Ratio it gives", Kind::Number),
        Res::stepped("cuts", "It cuts", Kind::Pitch),
        Res::stepped("error", "Off by", Kind::Share),
        Res::stepped("over-length", "Off over the length", Kind::Length),
        Res::words("fits", "On the quadrant"),
    ],
    examples: &[
        &[
            ("leadscrew", "8 tpi"),
            ("thread", "1.5 mm"),
            ("wheels", "20;24;28;32;36;40;44;48;56;64;72;80;100;127"),
        ],
        &[
            ("leadscrew", "6 mm"),
            ("thread", "11 tpi"),
            ("wheels", "20;25;30;35;40;45;50;55;60;65;70;75;80;100"),
        ],
        &[
            ("for", "ratio"),
            ("ratio", "2.5"),
            ("sense", "in"),
            ("wheels", "20;30;40;50;60;80;100"),
        ],
    ],
    takes: &[],
    finds: None,
    figure,
};

const THREAD: &[When] = &[when("for", &["thread"])];
const RATIO: &[When] = &[when("for", &["ratio"])];

pub(in crate::sheets) static RULE: Source = Source::read(
    "Rose, Modern Machine-Shop Practice, vol. 1 (1888)",
    "change gears for screw cutting, figs. 1236 to 1240",
);
pub(in crate::sheets) static SEARCH: Source = Source::computed(
    "All trains of two and four gears tried",
    "drivers \u{f7} driven against the ratio wanted",
);
static QUADRANT: Source = Source::practice(
    "First pair past the third gear by 15 teeth, and the second pair past the second gear",
);

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let wheels: Vec<u32> = inp
        .list::<Count>("wheels")
        .iter()
        .map(|teeth| teeth.get() as u32)
        .collect();
    let wanted = wanted(inp)?;
    let found = find_trains(&wheels, wanted).ok_or_else(|| {
        inp.out_of_range(
            "wheels",
            format!("at most {MOST_WHEELS} gears are searched"),
            "leave out those that can't serve",
        )
    })?;
    let Some(best) = found.first().copied() else {
        return Err(Stop::fault(
            "wheels",
            Reason::Conflict,
            "no two of these gears differ: they only give 1 to 1",
            "add a gear of another size",
        ));
    };
    let is_thread = inp.choice("for") == "thread";
    let mut a = inp.answer();
    let exact = if best.is_exact() {
        "exact"
    } else {
        "nearest; none is exact"
    };
    a.words("train", train_text(best.train)).says(format!(
        "Driver/driven, from the first shaft to the last: {exact}."
    ));
    a.line("wanted", Number::of(wanted))
        .places(6, 6)
        .says(if is_thread {
            "Leadscrew turns for a spindle turn, the rest of the drive taken out."
        } else {
            "Output turns per input turn."
        });
    a.line("ratio-found", Number::of(best.train.ratio()))
        .places(6, 6)
        .says("Drivers over driven: output turns per input turn.");
    if is_thread {
        let (thread, over): (Pitch, Length) = (inp.get("thread")?, inp.get("over")?);
        let unit = thread_unit(inp);
        a.line("cuts", thread * (1.0 + best.error))
            .units(unit, unit)
            .places(4, 4)
            .says("In the unit in which the thread is asked.");
        a.line("over-length", over * best.error)
            .places(5, 4)
            .signed()
            .says(match best.error {
                _ if best.is_exact() => "As long as it should be.",
                more if more > 0.0 => "The cut thread is longer than it should be.",
                _ => "The cut thread is shorter than it should be.",
            });
    }
    a.line("error", Share::from_fraction(best.error))
        .places(4, 4)
        .signed()
        .says(if is_thread {
            match best.error {
                _ if best.is_exact() => "Of the lead wanted: none.",
                more if more > 0.0 => "Of the lead wanted: the thread cut is a little too coarse.",
                _ => "Of the lead wanted: the thread cut is a little too fine.",
            }
        } else {
            "Of the ratio wanted."
        });
    a.words("fits", fits(best.train))
        .says("A rule for the shafts only: try it on the machine.");
    table(inp, &mut a, &found)?;
    a.work(|w| work(inp, w, wanted, best));
    a.draw(|| draw(best.train));
    a.stop("spindle-locked", "Before you change gears", "Motor locked out. Leave a little play in each mesh, a slip of paper's worth, tighten the quadrant, guard on; then turn it through once by hand.");
    if is_thread && !best.is_exact() {
        a.note("none-exact", "None is exact", "The nearest is good enough where the error over the length in the nut is small against the nut's own play.");
    }
    if is_thread && mixed(inp) {
        a.note("inch-and-metric", "Inch and metric together", "The thread dial does not serve: keep the half nut closed until the thread is done, and run back under power.");
    }
    a.source(&RULE).source(&SEARCH).source(&QUADRANT);
    Ok(a)
}

fn wanted(inp: &Inputs) -> Result<f64, Stop> {
    if inp.choice("for") == "thread" {
        let (thread, screw, fixed): (Pitch, Pitch, Number) =
            (inp.get("thread")?, inp.get("leadscrew")?, inp.get("fixed")?);
        return Ok(thread / screw / fixed.get());
    }
    let ratio = inp.get::<Number>("ratio")?.get();
    Ok(if inp.choice("sense") == "in" {
        1.0 / ratio
    } else {
        ratio
    })
}

/// The thread in one system of units and the leadscrew in the other.
fn mixed(inp: &Inputs) -> bool {
    let system = |id: &str| match inp.input(id) {
        Some(Input::Quantity { unit, .. }) => unit.system,
        _ => None,
    };
    system("thread") != system("leadscrew")
}

pub(in crate::sheets) fn train_text(train: Train) -> String {
    match train.second {
        Some((c, d)) => format!("{}/{} \u{d7} {c}/{d}", train.driver, train.driven),
        None => format!("{}/{}", train.driver, train.driven),
    }
}

pub(in crate::sheets) fn fits(train: Train) -> String {
    match (train.second, train.meshes()) {
        (None, _) => "two gears: any gear between as an idler, the ratio stays".to_owned(),
        (Some(_), true) => format!("clears its shafts by {} teeth", train.clearance()),
        (Some(_), false) => format!(
            "may foul a shaft: {} teeth of {CLEAR} wanted",
            train.clearance()
        ),
    }
}

/// The unit in which the thread is asked.
fn thread_unit(inp: &Inputs) -> &'static Unit {
    match inp.input("thread") {
        Some(Input::Quantity { unit, .. }) => unit,
        _ if inp.system() == System::Metric => &PITCH_MM,
        _ => &TPI,
    }
}

fn table(inp: &Inputs, a: &mut Answer, found: &[Found]) -> Result<(), Stop> {
    if inp.quiet() {
        return Ok(());
    }
    let thread = if inp.choice("for") == "thread" {
        Some((inp.get::<Pitch>("thread")?, inp.get::<Length>("over")?))
    } else {
        None
    };
    let unit = thread_unit(inp);
    let columns: &[&'static str] = if thread.is_some() {
        &[
            "driver/driven",
            "cuts",
            "off",
            "off over the length",
            "on the quadrant",
        ]
    } else {
        &["driver/driven", "ratio", "off", "on the quadrant"]
    };
    let table = a.table("trains", "Trains, best first", columns);
    for (index, one) in found.iter().enumerate() {
        let off = if one.is_exact() {
            Value::words("exact")
        } else {
            Value::of(Share::from_fraction(one.error))
                .places(4, 4)
                .signed()
        };
        let quadrant = match one.train.second {
            None => "idler between".to_owned(),
            Some(_) if one.train.meshes() => "clears".to_owned(),
            Some(_) => "may foul".to_owned(),
        };
        let train = Value::words(train_text(one.train));
        let cells = match thread {
            Some((pitch, over)) => vec![
                train,
                Value::of(pitch * (1.0 + one.error))
                    .units(unit, unit)
                    .places(4, 4),
                off,
                Value::of(over * one.error).places(5, 4).signed(),
                Value::words(quadrant),
            ],
            None => vec![
                train,
                Value::of(Number::of(one.train.ratio())).places(6, 6),
                off,
                Value::words(quadrant),
            ],
        };
        table.row(cells).chosen(index == 0);
    }
    table.note("Ratio is drivers over driven. Of equal ones: fewer gears first, then those that clear, then larger gears. No more than six of one ratio.");
    Ok(())
}

fn work(inp: &Inputs, w: &mut Work, wanted: f64, best: Found) {
    let ratio = inp.num_to(Number::of(wanted), 6, 6);
    if inp.choice("for") == "thread" {
        let show = |id: &str| match inp.input(id) {
            Some(Input::Quantity { nominal, unit, .. }) => {
                crate::quantity::join(&crate::quantity::plain(*nominal, unit), unit)
            }
            _ => String::new(),
        };
        let fixed = inp.opt("fixed").unwrap_or(Number::of(1.0));
        w.step(
            "Ratio wanted",
            &[
                "drivers \u{f7} driven = lead wanted \u{f7} lead of the leadscrew \u{f7} rest of the drive".into(),
                "in threads per inch: leadscrew \u{f7} thread wanted".into(),
                format!("thread {}, leadscrew {}, rest {}: {ratio}", show("thread"), show("leadscrew"), inp.num_to(fixed, 4, 4)),
            ],
            &RULE,
        );
    } else {
        let says = if inp.choice("sense") == "in" {
            "driven \u{f7} driver as given, turned over"
        } else {
            "driver \u{f7} driven as given"
        };
        w.step(
            "Ratio wanted",
            &["drivers \u{f7} driven".into(), format!("{says}: {ratio}")],
            &RULE,
        );
    }
    let got = inp.num_to(Number::of(best.train.ratio()), 6, 6);
    w.step(
        "Best train",
        &[
            "ratio = drivers \u{f7} driven, error = ratio \u{f7} wanted \u{2212} 1".into(),
            format!("{} = {got}", train_text(best.train)),
        ],
        &SEARCH,
    );
    if let Some((c, d)) = best.train.second {
        let (a, b) = (best.train.driver, best.train.driven);
        w.step(
            "On the quadrant",
            &[
                "a + b \u{2212} c and c + d \u{2212} b, each at least 15".into(),
                format!(
                    "{a} + {b} \u{2212} {c} and {c} + {d} \u{2212} {b}: least {}",
                    best.train.clearance()
                ),
            ],
            &QUADRANT,
        );
    }
}
