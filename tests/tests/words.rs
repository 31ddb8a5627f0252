//! Does every text speak the shop's American? Each text literal of the core, the app and the terminal program against the
//! table `tests/cases/words-not-to-use.txt`. Ids, spellings that are read, search words and titles of books are left out.
//! A line that has to name such a word carries `// words:` with the reason.
#![allow(clippy::panic)] // a failed check

use std::path::{Path, PathBuf};
use std::{fs, str};

/// A text and the line that it begins on.
struct Literal {
    line: usize,
    text: String,
}

#[test]
fn every_text_speaks_the_shops_american() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let table = include_str!("../cases/words-not-to-use.txt");
    let banned: Vec<(&str, &str)> = table
        .lines()
        .filter(|line| !line.starts_with('#') && !line.is_empty())
        .map(|line| line.split_once(" | ").unwrap_or_else(|| panic!("{line}")))
        .collect();
    let (mut read, mut found) = (0, Vec::new());
    for room in ["core/src", "app/src", "cli/src"] {
        for file in rust_files(&root.join(room)) {
            let source = fs::read_to_string(&file).unwrap();
            let lines: Vec<&str> = source.lines().collect();
            for literal in literals(&without_tests(&source)) {
                read += 1;
                let line = lines.get(literal.line).copied().unwrap_or_default();
                if line.contains("// words:") || is_id(&literal.text) {
                    continue;
                }
                for (word, instead) in &banned {
                    if holds(&literal.text, word) {
                        let name = file.strip_prefix(&root).unwrap().display();
                        let text: String = literal.text.chars().take(90).collect();
                        found.push(format!(
                            "{name}:{}: {word} -> {instead}: {text:?}",
                            literal.line + 1
                        ));
                    }
                }
            }
        }
    }
    assert!(read > 3000, "only {read} texts were read");
    assert!(found.is_empty(), "{}:\n{}", found.len(), found.join("\n"));
}

fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut all = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            all.extend(rust_files(&path));
        } else if path.extension().is_some_and(|end| end == "rs")
            && !path.ends_with("licences.rs")
            && !path.ends_with("tests.rs")
        {
            all.push(path);
        }
    }
    all.sort();
    all
}

/// The source up to its own tests, its lists of search words and of spellings, and its sources, blanked out.
fn without_tests(source: &str) -> String {
    let end = source.find("#[cfg(test)]").unwrap_or(source.len());
    let mut text = source[..end].to_owned();
    for (open, close) in [
        ("words: &[", "]"),
        ("Source::", ";"),
        ("spellings: &[", "]"),
        ("keys: &[", "]"),
    ] {
        let mut from = 0;
        while let Some(at) = text[from..].find(open).map(|at| at + from) {
            let until = text[at..].find(close).map_or(text.len(), |end| at + end);
            let blank: String = text[at..until]
                .chars()
                .map(|c| if c == '\n' { '\n' } else { ' ' })
                .collect();
            text.replace_range(at..until, &blank);
            from = at + open.len().min(blank.len());
        }
    }
    text
}

/// An id, a spelling or a key: no space, and neither capitals nor a full stop.
fn is_id(text: &str) -> bool {
    !text.contains(' ') && !text.chars().any(char::is_uppercase)
}

/// True where the word stands in the text, not as a part of another.
fn holds(text: &str, word: &str) -> bool {
    let text = text.to_lowercase().replace('\u{2019}', "'");
    let mut from = 0;
    while let Some(at) = text[from..].find(word).map(|at| at + from) {
        let before = text[..at].chars().next_back();
        let after = text[at + word.len()..].chars().next();
        let joins =
            |c: Option<char>| c.is_some_and(|c| c.is_alphanumeric() || c == '=' || c == '`');
        if !joins(before) && !joins(after) {
            return true;
        }
        from = at + word.len();
    }
    false
}

/// The text literals of Rust source; comments and characters are passed over.
fn literals(source: &str) -> Vec<Literal> {
    let b = source.as_bytes();
    let (mut at, mut line, mut all) = (0, 0, Vec::new());
    while at < b.len() {
        match b[at] {
            b'\n' => line += 1,
            b'/' if b.get(at + 1) == Some(&b'/') => {
                while at < b.len() && b[at] != b'\n' {
                    at += 1;
                }
                continue;
            }
            b'\'' => {
                // a character, or a lifetime
                let skip = match (b.get(at + 1), b.get(at + 2)) {
                    (Some(b'\\'), _) => b[at + 2..].iter().position(|c| *c == b'\'').map(|n| n + 2),
                    _ => b[at + 1..]
                        .iter()
                        .take(5)
                        .position(|c| *c == b'\'')
                        .map(|n| n + 1),
                };
                if let Some(skip) = skip {
                    at += skip;
                }
            }
            b'"' => {
                let (begin, first) = (at + 1, line);
                at += 1;
                while at < b.len() && b[at] != b'"' {
                    if b[at] == b'\\' {
                        at += 1;
                    }
                    line += usize::from(b.get(at) == Some(&b'\n'));
                    at += 1;
                }
                let text = str::from_utf8(&b[begin..at.min(b.len())]).unwrap_or_default();
                all.push(Literal {
                    line: first,
                    text: text.replace("\\u{2019}", "\u{2019}"),
                });
            }
            _ => {}
        }
        at += 1;
    }
    all
}
