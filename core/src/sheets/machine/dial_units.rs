//! What does an inch dial say on a metric screw, and the reverse? The growing error, and a table of handwheel readings.

use crate::machine::{dial_factor, handwheel};
use crate::quantity::units::{INCH, MM};
use crate::quantity::{Count, Kind, Length, Number, Share, Unit};
use crate::sheet::*;

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "dial-units",
    revision: 1,
    title: "Metric screw, inch dial",
    question: "Where must I set the handwheel when dial and screw use different units?",
    aside: "dial, screw lead, positions",
    words: &[
        "metric screw",
        "metric dial",
        "inch screw",
        "wrong screw",
        "dial on the wrong screw",
        "inch dial",
        "handwheel",
        "graduations",
        "dial conversion",
        "leadscrew pitch",
        "positions",
        "hole positions",
        "jig bore table",
    ],
    group: Group::Run,
    fields: &[
        Field::quantity("dial", "Dial reading per turn", Kind::Length, &[&INCH, &MM])
            .example("0.200 in")
            .range_mm(0.1, 100.0, "the range of dial readings per turn")
            .hint("As engraved: 200 lines of 0.001 in are 0.200 in.")
            .filled_from_shop(ShopItem::DialTurn),
        Field::count("lines", "Lines around the dial")
            .example("200")
            .range(2.0, 2000.0, "the range of lines on a dial")
            .hint("A dial of 0.200 in by 0.001 in has 200.")
            .filled_from_shop(ShopItem::DialDivisions),
        Field::quantity("lead", "Screw, true lead", Kind::Length, &[&MM, &INCH])
            .example("5 mm")
            .range_mm(0.1, 100.0, "the range of table screw leads")
            .hint("Travel for one turn: 5 threads per inch is 0.200 in. By indicator over many turns.")
            .filled_from_shop(ShopItem::ScrewLead)
            .measured()
            .monotonic(),
        Field::quantity("start", "Dial at the start", Kind::Length, &[&INCH, &MM]).seldom()
            .example("0 in")
            .preset("0 in")
            .range_mm(-100.0, 100.0, "a reading at the start lies within one turn of zero")
            .hint("What the dial shows where the positions are counted from."),
        Field::rows("positions", "True positions wanted", POSITIONS, 1, 40)
            .example("0.5 in;1 in;2 in;5 in")
            .hint("From the start, all from one side so that backlash does not count."),
    ],
    results: &[
        Res::words("reading", "Handwheel at the farthest position"),
        Res::of(
            "furthest",
            "Error at the farthest position if the dial is believed",
            Kind::Length,
        ),
        Res::of("share", "Dial is off by", Kind::Share),
        Res::of("line-after", "Off by one line after", Kind::Length).wraps(),
        Res::of("factor", "True travel for dial travel", Kind::Number),
    ],
    examples: &[
        &[
            ("dial", "0.200 in"),
            ("lines", "200"),
            ("lead", "5 mm"),
            ("positions", "0.5 in;1 in;2 in;5 in"),
        ],
        &[
            ("dial", "5 mm"),
            ("lines", "250"),
            ("lead", "0.2 in"),
            ("start", "1 mm"),
            ("positions", "10 mm;25 mm;60 mm"),
        ],
    ],
    takes: &[],
    finds: None,
    figure,
};

static POSITIONS: &[Field] =
    &[
        Field::quantity("position", "Position", Kind::Length, &[&INCH, &MM])
            .range(-5000.0, 5000.0, "the range of table travels")
            .example("2 in"),
    ];

static INCH_IS: Source = Source::read(
    "NIST SP 811 (2008), Guide for the Use of the SI",
    "B.8: 1 in = 25.4 mm exactly",
);
static TURN: Source = Source::computed(
    "A screw moves its lead in a turn",
    "true travel = dial travel \u{d7} lead \u{f7} dial per turn",
);
static TRADE: Source = Source::practice("Handwheel readings from one side");

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let (dial, lead, start): (Length, Length, Length) =
        (inp.get("dial")?, inp.get("lead")?, inp.get("start")?);
    let line = dial / inp.get::<Count>("lines")?.get();
    let positions: Vec<Length> = inp.list("positions");
    let furthest = positions.iter().copied().fold(Length::ZERO, |far, here| {
        if here.abs() > far.abs() { here } else { far }
    });
    let factor = dial_factor(dial, lead);
    let off = Share::from_fraction(factor - 1.0);
    let mut a = inp.answer();
    let table = rows(inp, &positions, (dial, line, lead, start))?;
    if let Some((_, text)) = &table.last {
        a.words("reading", text.clone())
            .says("Whole turns past zero of the first turn, then the dial, at the nearest line.");
    }
    a.line("furthest", furthest * (factor - 1.0))
        .signed()
        .says(if (factor - 1.0).abs() > 1e-9 {
            "It grows evenly with the travel, and never comes back."
        } else {
            "Dial and screw agree."
        });
    let further = match factor - 1.0 {
        same if same.abs() <= 1e-9 => "The table goes what the dial says.",
        more if more > 0.0 => "The table goes further than the dial says.",
        _ => "The table goes less far than the dial says.",
    };
    a.line("share", off).places(3, 3).signed().says(further);
    if (factor - 1.0).abs() > 1e-9 {
        a.line("line-after", line / (factor - 1.0).abs())
            .places(3, 2)
            .says("Travel after which the plain dial is wrong by a whole line.");
    }
    a.line("factor", Number::of(factor))
        .places(6, 6)
        .says("Lead of the screw over the dial reading per turn.");
    readings(&mut a, table);
    a.work(|w| {
        w.step(
            "True travel for dial travel",
            &["k = lead \u{f7} dial per turn".into(), format!("k = {} \u{f7} {} = {}", inp.show(lead), inp.show(dial), inp.num_to(Number::of(factor), 6, 6))],
            &TURN,
        );
        let turns = Number::of(furthest / lead);
        w.step(
            "Handwheel at the farthest position",
            &["turns = position \u{f7} lead, the dial stands at start + turns \u{d7} dial per turn".into(), format!("turns = {} \u{f7} {} = {}", inp.show(furthest), inp.show(lead), inp.num_to(turns, 4, 4))],
            &TURN,
        );
    });
    a.draw(|| draw(inp, dial, lead, factor));
    a.note("count-turns", "Before you count turns", "Take the backlash up first and come to every position from the same side. Mark the handwheel, and count turns aloud.");
    a.note("lead-error", "About the lead", "Prove it with an indicator and a gauge block over an inch or more: a worn or odd screw is not what its number says.");
    a.source(&INCH_IS).source(&TRADE);
    Ok(a)
}

/// The dial's own unit, as it was typed.
fn dial_unit(inp: &Inputs) -> &'static Unit {
    match inp.input("dial") {
        Some(Input::Quantity { unit, .. }) => unit,
        _ => &INCH,
    }
}

/// The unit in which each position was typed.
fn position_units(inp: &Inputs) -> Vec<&'static Unit> {
    let unit = |row: &Vec<Option<Input>>| match row.first() {
        Some(Some(Input::Quantity { unit, .. })) => Some(*unit),
        _ => None,
    };
    match inp.input("positions") {
        Some(Input::Rows(rows)) => rows.iter().filter_map(unit).collect(),
        _ => Vec::new(),
    }
}

/// The readings, and that of the farthest position in words.
struct Readings {
    cells: Vec<Vec<Value>>,
    last: Option<(Length, String)>,
}

fn rows(
    inp: &Inputs,
    positions: &[Length],
    set: (Length, Length, Length, Length),
) -> Result<Readings, Stop> {
    let (dial, line, lead, start) = set;
    let unit = dial_unit(inp);
    let shown = |length: Length| Value::of(length).units(unit, unit);
    let mut found = Readings {
        cells: Vec::new(),
        last: None,
    };
    for (position, own) in positions.iter().zip(position_units(inp)) {
        let Some(at) = handwheel(*position, start, dial, line, lead) else {
            return Err(inp.out_of_range(
                "positions",
                "that is more turns than can be counted",
                "give positions within the table's travel",
            ));
        };
        let straight = *position * (dial_factor(dial, lead) - 1.0);
        let farther = |(far, _): &(Length, String)| position.abs() > far.abs();
        if found.last.as_ref().is_none_or(farther) {
            let text = format!(
                "{} turns and {}",
                at.turns,
                shown(at.dial).text_with_unit(inp.system())
            );
            found.last = Some((*position, text));
        }
        found.cells.push(vec![
            Value::of(*position).units(own, own),
            Value::words(at.turns.to_string()),
            shown(at.dial),
            Value::of(at.off).places(5, 4).signed(),
            Value::of(straight).signed(),
        ]);
    }
    Ok(found)
}

fn readings(a: &mut Answer, found: Readings) {
    let table = a.table(
        "readings",
        "Handwheel readings",
        &[
            "position",
            "whole turns",
            "dial",
            "off, at a line",
            "error if the dial is believed",
        ],
    );
    for cells in found.cells {
        table.row(cells);
    }
    table.note("Off, at a line: what going to a whole line leaves. Minus turns: back past zero, then forward to the reading.");
}

fn draw(inp: &Inputs, dial: Length, lead: Length, factor: f64) -> Drawing {
    let mut d = Drawing::new("Dial against table: one turn of the handwheel", true);
    let full = 120.0;
    let (by_dial, by_table) = if factor > 1.0 {
        (full / factor, full)
    } else {
        (full, full * factor)
    };
    d.path(
        Pen::Object,
        true,
        &[
            pt(0.0, 30.0),
            pt(by_dial, 30.0),
            pt(by_dial, 42.0),
            pt(0.0, 42.0),
        ],
    );
    d.path(
        Pen::Mark,
        true,
        &[
            pt(0.0, 0.0),
            pt(by_table, 0.0),
            pt(by_table, 12.0),
            pt(0.0, 12.0),
        ],
    );
    d.path(Pen::Thin, false, &[pt(by_dial, 50.0), pt(by_dial, -8.0)]);
    d.dimension(
        pt(0.0, 42.0),
        pt(by_dial, 42.0),
        1.5,
        format!("dial says {}", inp.show(dial)),
    );
    d.dimension(
        pt(0.0, 0.0),
        pt(by_table, 0.0),
        -1.5,
        format!("table goes {}", inp.show(lead)),
    );
    d
}
