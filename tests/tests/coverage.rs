//! Does the coverage page name every sheet, and no sheet that is gone?

use benchslate_core::sheets;

#[test]
fn every_sheet_has_a_row() {
    let page = include_str!("../../docs/coverage.md");
    let rows: Vec<&str> = page
        .lines()
        .filter_map(|line| line.strip_prefix("| ")?.split(" | ").next())
        .collect();
    for sheet in sheets::ALL {
        let named = |row: &&str| {
            row.split(|c: char| !c.is_ascii_alphanumeric() && c != '-')
                .any(|word| word == sheet.id)
        };
        assert!(
            rows.iter().any(named),
            "{} has no row in docs/coverage.md",
            sheet.id
        );
    }
}
