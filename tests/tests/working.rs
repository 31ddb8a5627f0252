//! Does the working that is shown come out? Every printed line of working of all cases, in both systems of units, is
//! reckoned with the rounding of its own figures.

use benchslate_core::quantity::System;
use benchslate_core::sheet::evaluate;
use benchslate_core::sheets;
use benchslate_tests::cases;
use benchslate_tests::reckon::{Reckoned, reckon};
use std::collections::BTreeSet;

#[test]
fn the_working_comes_out() {
    let (mut held, mut unread, mut wrong) = (0, 0, BTreeSet::new());
    for sheet in sheets::ALL {
        for entry in cases::named(sheet) {
            for system in [System::Inch, System::Metric] {
                let outcome = evaluate(sheet, &entry.clone().in_system(system));
                for step in &outcome.answer.steps {
                    for line in &step.lines {
                        match reckon(line) {
                            Reckoned::Holds(sides) => held += sides,
                            Reckoned::Unread => unread += 1,
                            Reckoned::Wrong(sides) => {
                                wrong.insert(format!("{}: {line}\n    {sides}", sheet.id));
                            }
                        }
                    }
                }
            }
        }
    }
    println!("{held} hold, {unread} are no arithmetic");
    // those of these lines that are known to be short of a factor are being mended
    assert!(
        wrong.is_empty(),
        "{} lines:\n{}",
        wrong.len(),
        wrong.into_iter().collect::<Vec<_>>().join("\n")
    );
    assert!(held > 2200, "only {held} lines were reckoned");
}
