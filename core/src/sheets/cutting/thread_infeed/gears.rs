//! Which change gears cut this lead? The best trains of the gears given, with the error over the thread, or the way to the sheet.

use crate::machine::{MOST_WHEELS, find_trains};
use crate::quantity::units::*;
use crate::quantity::{Count, Length, Number, Pitch, Quantity, Unit, join, plain};
use crate::sheet::*;
use crate::sheets::machine::change_gears::{RULE, SEARCH, fits, train_text};

/// Trains shown here; the rest stand on the sheet of change gears.
const SHOWN: usize = 3;

/// The lead against the leadscrew, with the wheels where they are given.
pub(super) fn gears(
    inp: &Inputs,
    a: &mut Answer,
    lead: Pitch,
    leadscrew: Pitch,
) -> Result<(), Stop> {
    let pitch_unit = |id| unit_of(inp, id, &PITCH_MM, &TPI);
    let (unit, screw_unit) = (pitch_unit("pitch"), pitch_unit("leadscrew"));
    let over = inp
        .opt::<Length>("length")
        .unwrap_or(Length::from_inches(1.0));
    let fixed: Number = inp.get("fixed")?;
    let mut entry = vec![
        ("leadscrew", written(leadscrew, screw_unit)),
        ("thread", written(lead, unit)),
        ("fixed", plain(fixed.base(), &NUMBER)),
        ("over", written(over, unit_of(inp, "length", &MM, &INCH))),
    ];
    let wheels: Vec<u32> = inp
        .list::<Count>("wheels")
        .iter()
        .map(|teeth| teeth.get() as u32)
        .collect();
    if wheels.is_empty() {
        let table = a.table("gears", "Change gears for it", &["Lead", "Leadscrew"]);
        table
            .row(vec![
                Value::of(lead).units(unit, unit),
                Value::of(leadscrew).units(screw_unit, screw_unit),
            ])
            .opens("change-gears", entry);
        table.note(
            "The row opens the \u{201c}Choose change gears\u{201d} sheet with both filled in; or give your gears here.",
        );
        return Ok(());
    }
    let listed: Vec<String> = wheels.iter().map(u32::to_string).collect();
    entry.push(("wheels", listed.join(";")));
    let found = find_trains(&wheels, lead / leadscrew / fixed.get()).ok_or_else(|| {
        inp.out_of_range(
            "wheels",
            format!("at most {MOST_WHEELS} gears are searched"),
            "leave out those that can't serve",
        )
    })?;
    let Some(best) = found.first() else {
        return Err(Stop::fault(
            "wheels",
            Reason::Conflict,
            "no two of these gears differ: they only give 1 to 1",
            "add a gear of another size",
        ));
    };
    a.words("train", train_text(best.train))
        .says(if best.is_exact() {
            "Driver/driven, from the spindle to the leadscrew: cuts the lead exactly."
        } else {
            "Driver/driven, from the spindle to the leadscrew: nearest, none is exact."
        });
    a.line("cuts", lead * (1.0 + best.error))
        .units(unit, unit)
        .places(4, 4)
        .says("Lead with that train.");
    a.line("over-length", over * best.error)
        .places(5, 4)
        .signed()
        .says("Over the length of the thread, 1 in where none is given. Plus: longer than it should be.");
    a.words("fits", fits(best.train))
        .says("A rule for the shafts only: try it on the machine.");
    let table = a.table(
        "gears",
        "Change gears, best first",
        &["Driver/driven", "Cuts", "Off over the length"],
    );
    for (index, one) in found.iter().take(SHOWN).enumerate() {
        table
            .row(vec![
                Value::words(train_text(one.train)),
                Value::of(lead * (1.0 + one.error))
                    .units(unit, unit)
                    .places(4, 4),
                Value::of(over * one.error).places(5, 4).signed(),
            ])
            .chosen(index == 0)
            .opens("change-gears", entry.clone());
    }
    table.note(
        "A row opens the \u{201c}Choose change gears\u{201d} sheet with all of this filled in.",
    );
    if !best.is_exact() {
        a.note("none-exact", "None of the trains is exact", "The nearest is good enough where the error over the length in the nut is small against the nut's own play.");
    }
    a.work(|w| {
        w.step(
            "Change gears",
            &[
                "drivers \u{f7} driven = lead \u{f7} lead of the leadscrew \u{f7} rest of the drive".into(),
                format!(
                    "{} wanted, {} gives {}",
                    inp.num_to(Number::of(lead / leadscrew / fixed.get()), 6, 6),
                    train_text(best.train),
                    inp.num_to(Number::of(best.train.ratio()), 6, 6)
                ),
            ],
            &SEARCH,
        );
    });
    a.source(&RULE);
    Ok(())
}

fn written<Q: Quantity>(q: Q, unit: &'static Unit) -> String {
    join(&plain(q.base(), unit), unit)
}

/// The unit in which a field was given, as the sheet of change gears takes it: metric stays, all else is inch.
fn unit_of(inp: &Inputs, id: &str, metric: &'static Unit, inch: &'static Unit) -> &'static Unit {
    match inp.input(id) {
        Some(Input::Quantity { unit, .. }) if core::ptr::eq(*unit, metric) => metric,
        _ => inch,
    }
}
