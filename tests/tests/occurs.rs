//! Does every declared result and every caution that a sheet can give occur in an example, a link that was given out or a
//! case? What occurs nowhere could say anything.

use benchslate_core::sheet::evaluate;
use benchslate_core::sheets;
use benchslate_tests::{cases, cautions};
use std::collections::BTreeSet;

#[test]
fn every_declared_result_occurs() {
    let mut missing = Vec::new();
    for sheet in sheets::ALL {
        let given: BTreeSet<&str> = cases::named(sheet)
            .iter()
            .flat_map(|entry| {
                let outcome = evaluate(sheet, entry);
                outcome
                    .answer
                    .lines
                    .iter()
                    .map(|line| line.id)
                    .collect::<Vec<_>>()
            })
            .collect();
        let absent = sheet.results.iter().filter(|res| !given.contains(res.id));
        missing.extend(absent.map(|res| format!("{} {}", sheet.id, res.id)));
    }
    assert!(
        missing.is_empty(),
        "{} results in no case: {missing:#?}",
        missing.len()
    );
}

/// An id that two sheets give has to occur in both.
#[test]
fn every_caution_occurs() {
    let mut given = BTreeSet::new();
    for sheet in sheets::ALL {
        for entry in cases::named(sheet) {
            let outcome = evaluate(sheet, &entry);
            let ids: Vec<&str> = outcome
                .answer
                .cautions
                .iter()
                .map(|caution| caution.id)
                .collect();
            let unique: BTreeSet<&&str> = ids.iter().collect();
            assert_eq!(
                unique.len(),
                ids.len(),
                "{} gives a caution twice: {ids:?} {entry:?}",
                sheet.id
            );
            given.extend(ids.into_iter().map(|id| (sheet.id, id.to_owned())));
        }
    }
    let written = cautions::written();
    assert!(
        written.len() > 170,
        "only {} cautions were found in the sheets",
        written.len()
    );
    let missing: Vec<_> = written.difference(&given).collect();
    assert!(
        missing.is_empty(),
        "{} of {} cautions in no case: {missing:#?}",
        missing.len(),
        written.len()
    );
}
