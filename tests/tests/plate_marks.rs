//! Which values of a plate are marked? Those off their series by more than 6 percent, and no other.

use benchslate_core::sheet::{Entry, evaluate};
use benchslate_core::sheets;

/// The rows that are marked in the table of a plate of nine speeds from 180 to 1800 rpm, 562 the fifth of the even series.
fn marked(fifth: &str) -> Vec<usize> {
    let plate = format!("180;236;315;425;{fifth};750;1000;1320;1800");
    let sheet = sheets::by_id("plate-check").unwrap();
    let answer = evaluate(sheet, &Entry::of(&[("spindle-steps", &plate)])).answer;
    let table = answer
        .tables
        .iter()
        .find(|table| table.id == "steps")
        .unwrap();
    let rows = table.rows.iter().enumerate();
    rows.filter(|(_, row)| row.chosen)
        .map(|(at, _)| at)
        .collect()
}

#[test]
fn what_is_off_by_more_than_six_percent_is_marked() {
    // 10^(1/8) a step from 180: 569 by the ends, 562 by all; 6 percent is 596 and 529
    assert!(marked("562").is_empty());
    assert!(marked("585").is_empty());
    assert_eq!(marked("610"), [4]);
    assert_eq!(marked("650"), [4]);
    assert_eq!(marked("510"), [4]);
}
