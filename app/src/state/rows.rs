//! Rows of cells from a list's text, and back.

/// Cells by row; an empty text is one empty row.
pub fn split(text: &str, columns: usize) -> Vec<Vec<String>> {
    let row = |line: &str| {
        let mut cells: Vec<String> = line.split('~').map(str::to_owned).collect();
        cells.resize(columns, String::new());
        cells
    };
    text.split([';', '\n']).map(row).collect()
}

/// The text of rows of cells. Marks that part cells are taken out of them.
pub fn join(rows: &[Vec<String>]) -> String {
    let row = |cells: &Vec<String>| {
        let mut cells: Vec<String> = cells
            .iter()
            .map(|cell| cell.replace([';', '~', '\n'], " "))
            .collect();
        while cells.len() > 1 && cells.last().is_some_and(String::is_empty) {
            cells.pop();
        }
        cells.join("~")
    };
    rows.iter().map(row).collect::<Vec<_>>().join(";")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rows_split_and_join() {
        let cells = split("1~2;3", 2);
        assert_eq!(cells, vec![vec!["1", "2"], vec!["3", ""]]);
        assert_eq!(join(&cells), "1~2;3");
        assert_eq!(join(&[vec!["a;b~c".to_owned()]]), "a b c");
    }
}
