//! How does a text keep its meaning when the system of units changes round it? A number that was typed without a unit
//! gets the one that it was read in; everything else stays as typed.

use super::{Field, FieldKind};
use crate::quantity::{Kind, System, Unit, link_text, read};

/// A text that means the same in either system: as typed where it reads alike in both, else with the unit that it takes
/// in `system` written in. In a list this is done cell by cell. A text that does not read stays as it is.
///
/// ```
/// use benchslate_core::quantity::System;
/// use benchslate_core::sheet::{Field, pinned};
/// static LENGTH: Field = Field::length("length", "Length");
/// static TEETH: Field = Field::count("teeth", "Teeth");
/// assert_eq!(pinned(&LENGTH, "1-1/4", System::Inch), "1-1/4 in");
/// assert_eq!(pinned(&LENGTH, "10 mm", System::Inch), "10 mm");
/// assert_eq!(pinned(&TEETH, "40", System::Inch), "40");
/// ```
pub fn pinned(field: &'static Field, text: &str, system: System) -> String {
    match &field.kind {
        FieldKind::Quantity { kind, .. } => {
            let offered = |system: System| {
                let mut offered: Vec<&'static Unit> = field.unit(system).into_iter().collect();
                offered.extend(units_of(field));
                offered
            };
            pin(text, *kind, &offered(system), &offered(other(system)))
                .unwrap_or_else(|| text.to_owned())
        }
        FieldKind::Rows { columns, .. } => {
            let row = |row: &str| {
                let cells = row.split('~').enumerate().map(|(at, cell)| {
                    columns
                        .get(at)
                        .map_or_else(|| cell.to_owned(), |column| pinned(column, cell, system))
                });
                cells.collect::<Vec<_>>().join("~")
            };
            let line = |line: &str| line.split(';').map(row).collect::<Vec<_>>().join(";");
            text.split('\n').map(line).collect::<Vec<_>>().join("\n")
        }
        FieldKind::Choice(_) | FieldKind::Call(_) => text.to_owned(),
    }
}

fn units_of(field: &'static Field) -> impl Iterator<Item = &'static Unit> {
    let units: &'static [&'static Unit] = match &field.kind {
        FieldKind::Quantity { units, .. } => units,
        _ => &[],
    };
    units.iter().copied()
}

/// The other system of units.
const fn other(system: System) -> System {
    match system {
        System::Inch => System::Metric,
        System::Metric => System::Inch,
    }
}

/// The text with the unit that it takes among the first units offered; none where it takes the same among the others, or
/// does not read at all.
pub(crate) fn pin(
    text: &str,
    kind: Kind,
    offered: &[&'static Unit],
    others: &[&'static Unit],
) -> Option<String> {
    let reading = read(text, kind, offered).ok()?;
    let said = link_text(text, &reading);
    let same = read(text, kind, others).is_ok_and(|again| link_text(text, &again) == said);
    (!same).then_some(said)
}
