//! Does every text speak the shop's American, and does it write figures one way? Each text literal of the core, the app and
//! the terminal program against the table `tests/cases/words-not-to-use.txt` and against the rules for figures below. Ids,
//! spellings that are read, search words and titles of books are left out. A line that has to name such a word carries
//! `// words:` with the reason.
#![allow(clippy::panic, clippy::unwrap_used, clippy::indexing_slicing)] // test code: a failure is a failed check

use std::path::{Path, PathBuf};
use std::{fs, str};

/// A text, the line that it begins on, and whether it belongs to a source: titles of books stay as printed.
struct Literal {
    line: usize,
    text: String,
    source: bool,
}

/// A file's name, and its texts with their own lines.
type File = (String, Vec<(Literal, String)>);

/// Every text of the three rooms, one list a file.
fn texts() -> Vec<File> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let mut all = Vec::new();
    for room in ["core/src", "app/src", "cli/src"] {
        for file in rust_files(&root.join(room)) {
            let source = fs::read_to_string(&file).unwrap();
            let lines: Vec<&str> = source.lines().collect();
            let own = &source[..source.find("#[cfg(test)]").unwrap_or(source.len())];
            let found: Vec<(Literal, String)> = literals(own)
                .into_iter()
                .map(|one| {
                    let line = lines.get(one.line).copied().unwrap_or_default().to_owned();
                    (one, line)
                })
                .filter(|(_, line)| !line.contains("// words:"))
                .collect();
            all.push((
                file.strip_prefix(&root).unwrap().display().to_string(),
                found,
            ));
        }
    }
    let read: usize = all.iter().map(|(_, texts)| texts.len()).sum();
    assert!(read > 3000, "only {read} texts were read");
    all
}

/// Those that a check holds something against, a line each.
fn tell(against: impl Fn(&Literal) -> Option<String>) {
    let mut found = Vec::new();
    for (name, texts) in texts() {
        for (literal, _) in &texts {
            if let Some(why) = against(literal) {
                let text: String = literal.text.chars().take(90).collect();
                found.push(format!("{name}:{}: {why}: {text:?}", literal.line + 1));
            }
        }
    }
    assert!(found.is_empty(), "{}:\n{}", found.len(), found.join("\n"));
}

#[test]
fn every_text_speaks_the_shops_american() {
    let table = include_str!("../cases/words-not-to-use.txt");
    let banned: Vec<(&str, &str)> = table
        .lines()
        .filter(|line| !line.starts_with('#') && !line.is_empty())
        .map(|line| line.split_once(" | ").unwrap_or_else(|| panic!("{line}")))
        .collect();
    tell(|literal| {
        if literal.source || is_id(&literal.text) {
            return None;
        }
        let hits: Vec<String> = banned
            .iter()
            .filter(|(word, _)| holds(&literal.text, word))
            .map(|(word, instead)| format!("{word} -> {instead}"))
            .collect();
        (!hits.is_empty()).then(|| hits.join(", "))
    });
}

#[test]
fn figures_are_written_one_way() {
    tell(|literal| figure_fault(&literal.text).map(str::to_owned));
    for (text, good) in [
        ("75% of thread", true),
        ("75 % of thread", false),
        ("{percent} %", false),
        ("d \u{d7} % \u{f7} 100", true),
        ("8000 psi", true),
        ("8,000 psi", false),
        ("1-21/64 in", true),
        ("1 21/64 in", false),
        ("18/36 27/27", true),
        ("x = \u{2212}0.5", true),
        ("x = -0.5", false),
        ("a \u{2212} {}", true),
        ("{} - {}", false),
        ("0.5 in", true),
        (".5 in", false),
        ("{low:.2} in", true),
        ("letter F or No. 7", true),
        ("drill #7", false),
    ] {
        assert_eq!(figure_fault(text).is_none(), good, "{text}");
    }
}

/// A label inside a sentence goes through `lowered`: else Brinell, Young and Kd lose their capitals.
#[test]
fn names_keep_their_capitals_inside_a_sentence() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    for room in ["core/src", "app/src", "cli/src"] {
        for file in rust_files(&root.join(room)) {
            let source = fs::read_to_string(&file).unwrap();
            for lower in ["label.to_ascii_lowercase", "label.to_lowercase"] {
                assert!(!source.contains(lower), "{}: {lower}", file.display());
            }
        }
    }
}

/// What is wrong with the figures of a text, the first of it.
fn figure_fault(text: &str) -> Option<&'static str> {
    let b = text.as_bytes();
    let at = |i: usize| b.get(i).copied().unwrap_or(0);
    let before = |i: usize, n: usize| i.checked_sub(n).map_or(0, at);
    let digit = |c: u8| c.is_ascii_digit();
    let number = |c: u8| digit(c) || c == b'{';
    for i in 0..b.len() {
        let ended = digit(before(i, 1)) || before(i, 1) == b'}';
        if at(i) == b' ' && at(i + 1) == b'%' && ended {
            return Some("percent without a space");
        }
        if at(i) == b','
            && ended
            && (1..4).all(|n| digit(at(i + n)))
            && !digit(at(i + 4))
            && before(i, 1) != b'}'
        {
            return Some("no thousands separator");
        }
        if at(i) == b' ' && digit(before(i, 1)) && mixed(text, i) {
            return Some("a mixed fraction with a hyphen");
        }
        let opens = i == 0 || matches!(before(i, 1), b' ' | b'(' | b'=');
        if at(i) == b'-' && opens && number(at(i + 1)) && b.len() > 3 {
            return Some("a true minus");
        }
        if at(i) == b'-' && at(i + 1) == b' ' && before(i, 1) == b' ' && number(at(i + 2)) {
            return Some("a true minus");
        }
        let alone =
            i == 0 || !(before(i, 1).is_ascii_alphanumeric() || b":.{}".contains(&before(i, 1)));
        if at(i) == b'.' && digit(at(i + 1)) && alone {
            return Some("a zero before the point");
        }
        if text
            .get(i..)
            .is_some_and(|rest| rest.starts_with("drill #"))
        {
            return Some("a drill's name: No. 7, letter F");
        }
    }
    None
}

/// True where a whole number ends before the space and a fraction follows it.
fn mixed(text: &str, space: usize) -> bool {
    let whole = text[..space].rsplit(' ').next().unwrap_or_default();
    let next = text[space + 1..].split([' ', ',', ';', ':']).next();
    let parts = next.unwrap_or_default().split_once('/');
    let digits = |part: &str| !part.is_empty() && part.bytes().all(|c| c.is_ascii_digit());
    digits(whole) && parts.is_some_and(|(over, under)| digits(over) && digits(under))
}

fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut all = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            all.extend(rust_files(&path));
        } else if path.extension().is_some_and(|end| end == "rs")
            && !path.ends_with("licences.rs")
            // both spellings of each word stand there
            && !path.ends_with("trade.rs")
            && !path.to_string_lossy().ends_with("tests.rs")
        {
            all.push(path);
        }
    }
    all.sort();
    all
}

/// An id, a spelling or a key: no space, and neither capitals nor a full stop.
fn is_id(text: &str) -> bool {
    !text.contains(' ') && !text.chars().any(char::is_uppercase)
}

/// True where the word stands in the text, not as a part of another; `=word` only where it is the whole text.
fn holds(text: &str, word: &str) -> bool {
    let text = text.to_lowercase().replace('\u{2019}', "'");
    if let Some(whole) = word.strip_prefix('=') {
        return text == whole;
    }
    let joins = |c: Option<char>| c.is_some_and(|c| c.is_alphanumeric() || c == '=' || c == '`');
    text.match_indices(word).any(|(at, _)| {
        let before = text[..at].chars().next_back();
        let after = text[at + word.len()..].chars().next();
        // the other country's word in brackets behind ours
        let beside = before == Some('(') && after == Some(')');
        !beside && !joins(before) && !joins(after)
    })
}

/// Lists of search words and of spellings, which no one sees: how each opens and ends.
const LEFT_OUT: [(&str, char); 3] = [
    ("words: &[", ']'),
    ("spellings: &[", ']'),
    ("keys: &[", ']'),
];

/// The text literals of Rust source; comments, characters, search words and spellings are passed over.
fn literals(source: &str) -> Vec<Literal> {
    let b = source.as_bytes();
    let (mut at, mut line, mut all) = (0, 0, Vec::new());
    // by what a list of search words ends, while one stands open; whether a source does
    let (mut out, mut cited) = (None, false);
    while at < b.len() {
        let rest = &source[at..];
        match b[at] {
            b'\n' => line += 1,
            b'/' if b.get(at + 1) == Some(&b'/') => {
                at += rest.find('\n').unwrap_or(rest.len());
                continue;
            }
            b'\'' => at += character(rest),
            b'"' => {
                let (begin, first) = (at + 1, line);
                at += 1;
                while at < b.len() && b[at] != b'"' {
                    if b[at] == b'\\' {
                        line += usize::from(b.get(at + 1) == Some(&b'\n'));
                        at += 1;
                    } else {
                        line += usize::from(b[at] == b'\n');
                    }
                    at += 1;
                }
                if out.is_none() {
                    all.push(Literal {
                        line: first,
                        text: joined(&source[begin..at.min(b.len())]),
                        source: cited,
                    });
                }
            }
            c if out.is_some_and(|close| char::from(c) == close) => out = None,
            b';' => cited = false,
            _ if rest.starts_with("Source::") => cited = !rest.starts_with("Source::practice"),
            _ => {
                let opened = LEFT_OUT.iter().find(|(open, _)| rest.starts_with(open));
                out = out.or(opened.map(|(_, close)| *close));
            }
        }
        at += 1;
        while !source.is_char_boundary(at) {
            at += 1;
        }
    }
    all
}

/// How many bytes past its opening a character literal ends; none for a lifetime.
fn character(rest: &str) -> usize {
    let inner = &rest[1..];
    if let Some(escaped) = inner.strip_prefix('\\') {
        let after = escaped.chars().next().map_or(0, char::len_utf8);
        return escaped[after..].find('\'').map_or(0, |n| n + after + 2);
    }
    let long = inner.chars().next().map_or(0, char::len_utf8);
    if inner[long..].starts_with('\'') {
        long + 1
    } else {
        0
    }
}

/// A literal as it reads: carried-on lines put together, marks and signs as they show.
fn joined(text: &str) -> String {
    let mut whole = String::new();
    for (n, part) in text.split("\\\n").enumerate() {
        whole.push_str(if n == 0 { part } else { part.trim_start() });
    }
    let mut shown = String::new();
    let mut rest = whole.as_str();
    while let Some((before, after)) = rest.split_once("\\u{") {
        shown.push_str(before);
        let (code, after) = after.split_once('}').unwrap_or((after, ""));
        let sign = u32::from_str_radix(code, 16).ok().and_then(char::from_u32);
        shown.push(sign.unwrap_or(' '));
        rest = after;
    }
    shown + rest
}
