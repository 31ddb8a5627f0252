//! Which gears give these ratios between two fixed shafts? Tooth sums ranked by the largest deviation.

use super::{LIMITS, SUM, TRADE};
use crate::machine::teeth::{NearPair, Sense, SumSet, sums_for};
use crate::quantity::{Count, Length, Number, Share};
use crate::sheet::*;

pub fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let ratios: Vec<f64> = inp
        .list::<Number>("ratios")
        .into_iter()
        .map(Number::get)
        .collect();
    let sense = if inp.choice("sense") == "driven" {
        Sense::DrivenOverDriver
    } else {
        Sense::DriverOverDriven
    };
    let count = |id: &'static str| Ok::<u32, Stop>(inp.get::<Count>(id)?.get() as u32);
    let (low, high, least) = (count("sum-low")?, count("sum-high")?, count("least")?);
    if low > high {
        let says = format!("the sums run from {low} to {high}");
        return Err(Stop::fault(
            "sum-high",
            Reason::Conflict,
            says,
            "give the larger sum here",
        ));
    }
    let found = sums_for(&ratios, sense, low, high, least);
    let Some(best) = found.first() else {
        let says = format!("no sum up to {high} leaves {least} teeth on both gears");
        let cure = format!("give a sum of {} or more, or fewer teeth", least * 2);
        return Err(Stop::fault("sum-high", Reason::OutOfRange, says, cure));
    };
    let far = ratios
        .iter()
        .zip(&best.pairs)
        .position(|(_, near)| near.off.abs() > MOST_OFF);
    if let (Some(row), Some(most)) = (far, reach(high, least)) {
        let says = format!(
            "no gears of {least} teeth or more and a sum up to {high} come near this ratio: they give 1/{most:.2} to {most:.2}"
        );
        let cure = "give a larger sum or fewer teeth, or part the ratio over two stages";
        let mut fault = Fault::of("ratios", Reason::OutOfRange, says, cure);
        fault.at = Some((row.saturating_add(1), 1));
        return Err(fault.into());
    }
    let module = module(inp)?;
    let centre = |sum: u32| module.map(|module| module * (f64::from(sum) / 2.0));
    let mut a = inp.answer();
    a.words("gears", names(best))
        .says("Driver/driven, one module, so that every pair has the same tooth sum.");
    a.line("worst", Share::from_fraction(best.worst))
        .places(2, 2)
        .says("Ratio of the gears over the wanted one, minus 1.");
    a.line("sum", Count::of(f64::from(best.sum)))
        .says("Driver and driven together, the same for each pair.");
    if let Some(centre) = centre(best.sum) {
        a.line("centre", centre)
            .says("Module \u{d7} tooth sum \u{f7} 2, without profile shift.");
    }
    if !inp.quiet() {
        pairs(inp, &mut a, &ratios, sense, best);
        sums(&mut a, &found, &centre);
    }
    working(inp, &mut a, &ratios, sense, best, centre(best.sum));
    a.draw(|| draw(best));
    a.note(
        "order-gears",
        "Before you order gears",
        "Measure the center distance of the gearbox first. Where two modules stand on the same shafts it is module \u{d7} sum that must agree, and shifted teeth may move a sum by one.",
    );
    a.source(&SUM).source(&LIMITS).source(&TRADE);
    Ok(a)
}

/// Past this a pair is no answer to the ratio asked: between two whole teeth of the smallest sums it stays under.
const MOST_OFF: f64 = 0.2;

/// The largest ratio of two gears.
fn reach(high: u32, least: u32) -> Option<f64> {
    let rest = high.checked_sub(least)?;
    (least > 0).then(|| f64::from(rest) / f64::from(least))
}

/// The module, or what the diametral pitch makes of it.
fn module(inp: &Inputs) -> Result<Option<Length>, Stop> {
    let (module, pitch): (Option<Length>, Option<Number>) = (inp.opt("module"), inp.opt("dp"));
    if module.is_some() && pitch.is_some() {
        return Err(Stop::fault(
            "dp",
            Reason::Conflict,
            "module and diametral pitch are both given",
            "leave one of them out",
        ));
    }
    Ok(module.or(pitch.map(|pitch| Length::from_inches(1.0 / pitch.get()))))
}

fn names(set: &SumSet) -> String {
    let names: Vec<String> = set.pairs.iter().map(|near| near.pair.to_string()).collect();
    names.join(", ")
}

fn pairs(inp: &Inputs, a: &mut Answer, ratios: &[f64], sense: Sense, best: &SumSet) {
    // as speed factors: 1/5 to 2.8 for feeds, 1/4 to 2 for speeds
    let (slow, fast, says) = if inp.choice("box") == "speeds" {
        (0.25, 2.0, "1/4 to 2")
    } else {
        (0.2, 2.8, "1/5 to 2.8")
    };
    let table = a.table(
        "pairs",
        "Pair by pair",
        &[
            "gears",
            "wanted",
            "gives",
            "off",
            "step off",
            "as a feed or speed gear",
        ],
    );
    let got = |near: &NearPair| sense.of(near.pair).unwrap_or(1.0);
    let mut last: Option<(f64, f64)> = None;
    for (near, &wanted) in best.pairs.iter().zip(ratios) {
        let now = got(near);
        let step = last.map(|(ratio, had)| (now / had) / (wanted / ratio) - 1.0);
        last = Some((wanted, now));
        let factor = near.pair.ratio().unwrap_or(1.0);
        let inside = factor >= slow - 1e-9 && factor <= fast + 1e-9;
        table.row(vec![
            Value::words(near.pair.to_string()),
            Value::of(Number::of(wanted)).places(4, 4),
            Value::of(Number::of(now)).places(4, 4),
            Value::of(Share::from_fraction(near.off))
                .places(2, 2)
                .signed(),
            step.map_or(Value::words("\u{2013}"), |step| {
                Value::of(Share::from_fraction(step)).places(2, 2).signed()
            }),
            Value::words(if inside { "within" } else { "outside" }),
        ]);
    }
    table.note(format!("Step off: this ratio over the one before, against the wanted step. Customary limits, driver over driven: {says}."));
}

fn sums(a: &mut Answer, found: &[SumSet], centre: &dyn Fn(u32) -> Option<Length>) {
    let table = a.table(
        "sums",
        "Tooth sums, nearest first",
        &["sum", "gears", "farthest off", "center distance"],
    );
    for (index, set) in found.iter().enumerate() {
        let cells = vec![
            Value::of(Count::of(f64::from(set.sum))),
            Value::words(names(set)),
            Value::of(Share::from_fraction(set.worst)).places(2, 2),
            centre(set.sum).map_or(Value::words("\u{2013}"), Value::of),
        ];
        table.row(cells).chosen(index == 0);
    }
}

fn working(
    inp: &Inputs,
    a: &mut Answer,
    ratios: &[f64],
    sense: Sense,
    best: &SumSet,
    centre: Option<Length>,
) {
    let Some((near, wanted)) = best.pairs.first().zip(ratios.first()) else {
        return;
    };
    a.work(|w| {
        let (formula, sum) = match sense {
            Sense::DriverOverDriven => ("z1 = s i \u{f7} (1 + i), z2 = s \u{2212} z1", best.sum),
            Sense::DrivenOverDriver => ("z1 = s \u{f7} (1 + i), z2 = s \u{2212} z1", best.sum),
        };
        let i = inp.num_to(Number::of(*wanted), 4, 4);
        let exact = match sense {
            Sense::DriverOverDriven => f64::from(sum) * wanted / (1.0 + wanted),
            Sense::DrivenOverDriver => f64::from(sum) / (1.0 + wanted),
        };
        w.step(
            "Teeth of the first pair",
            &[
                format!("{formula}; whole teeth, nearest by the ratio"),
                format!(
                    "s = {sum}, i = {i}: z1 = {}, taken {}",
                    inp.num_to(Number::of(exact), 2, 2),
                    near.pair
                ),
                format!(
                    "off = {} \u{f7} {i} \u{2212} 1 = {}",
                    inp.num_to(Number::of(sense.of(near.pair).unwrap_or(1.0)), 4, 4),
                    inp.show_to(Share::from_fraction(near.off), 2, 2)
                ),
            ],
            &SUM,
        );
        if let Some(centre) = centre {
            w.step(
                "Center distance",
                &[
                    "a = m s \u{f7} 2".into(),
                    format!(
                        "a = {} \u{d7} {sum} \u{f7} 2 = {}",
                        inp.num(module(inp).ok().flatten().unwrap_or(Length::ZERO)),
                        inp.show(centre)
                    ),
                ],
                &SUM,
            );
        }
    });
}

/// The pairs as pitch circles on two shafts, side by side.
fn draw(best: &SumSet) -> Drawing {
    let mut d = Drawing::new(
        format!(
            "Pitch circles of {} between the same two shafts",
            names(best)
        ),
        true,
    );
    let sum = f64::from(best.sum);
    let widest = best
        .pairs
        .iter()
        .map(|near| near.pair.driver.max(near.pair.driven))
        .max()
        .unwrap_or(0);
    let pitch = f64::from(widest) + sum * 0.15;
    let half = sum / 2.0;
    for (at, near) in best.pairs.iter().take(6).enumerate() {
        let x = at as f64 * pitch;
        d.circle(Pen::Object, pt(x, 0.0), f64::from(near.pair.driver) / 2.0);
        d.circle(Pen::Object, pt(x, half), f64::from(near.pair.driven) / 2.0);
        d.text(pt(x, 0.0), near.pair.driver.to_string());
        d.text(pt(x, half), near.pair.driven.to_string());
    }
    let end = best.pairs.len().min(6).saturating_sub(1) as f64 * pitch;
    for y in [0.0, half] {
        d.path(
            Pen::Centre,
            false,
            &[
                pt(-f64::from(widest) / 2.0 - 4.0, y),
                pt(end + f64::from(widest) / 2.0 + 4.0, y),
            ],
        );
    }
    d
}
