//! Which of the licences on offer does the app take, and in which file does a library keep its text?
use crate::fail::{Fail, Res};

/// The licences that we know what to do for, the one that asks least first, with the files that hold them. A library
/// under another one needs a look before it may be used.
const KNOWN: &[(&str, &[&str])] = &[
    (
        "MIT",
        &[
            "LICENSE-MIT",
            "LICENSE-MIT.md",
            "LICENSE-MIT.txt",
            "LICENSE",
            "LICENSE.md",
            "LICENSE.txt",
        ],
    ),
    ("BSL-1.0", &["LICENSE-BOOST", "LICENSE"]),
    ("Unicode-3.0", &["LICENSE-UNICODE", "LICENSE"]),
    ("ISC", &["LICENSE-ISC", "LICENSE"]),
    ("Zlib", &["LICENSE-ZLIB", "LICENSE"]),
    ("BSD-2-Clause", &["LICENSE-BSD", "LICENSE"]),
    ("BSD-3-Clause", &["LICENSE-BSD", "LICENSE"]),
    ("Apache-2.0", &["LICENSE-APACHE", "LICENSE"]),
];

/// The licences that are taken up, from an expression such as `(MIT OR Apache-2.0) AND Unicode-3.0`; an older spelling
/// has a slash in place of `OR`.
pub fn taken(expression: &str, library: &str) -> Res<Vec<&'static str>> {
    let mut taken = Vec::new();
    for part in expression.split(" AND ") {
        let part = part.trim_matches(|c: char| c == '(' || c == ')' || c.is_whitespace());
        let part = part.replace(" OR ", "/");
        let offered: Vec<&str> = part.split('/').map(str::trim).collect();
        let first = KNOWN.iter().find(|(name, _)| offered.contains(name));
        let (name, _) = first.ok_or_else(|| {
            Fail::new(format!(
                "{library} is under `{expression}`: look at what that asks for, then name it in xtask/src/licences/pick.rs"
            ))
        })?;
        taken.push(*name);
    }
    Ok(taken)
}

/// The names of the files that may hold a licence's text, the likeliest first.
pub fn files(licence: &str) -> &'static [&'static str] {
    KNOWN
        .iter()
        .find(|(name, _)| *name == licence)
        .map_or(&[], |(_, files)| files)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_licence_that_asks_least_is_taken_and_an_unknown_one_is_refused() {
        for (expression, expected) in [
            ("MIT", vec!["MIT"]),
            ("Apache-2.0 / MIT", vec!["MIT"]),
            ("Apache-2.0/MIT", vec!["MIT"]),
            ("Unlicense OR MIT", vec!["MIT"]),
            ("Apache-2.0 OR BSL-1.0", vec!["BSL-1.0"]),
            (
                "(MIT OR Apache-2.0) AND Unicode-3.0",
                vec!["MIT", "Unicode-3.0"],
            ),
        ] {
            assert_eq!(
                taken(expression, "x").ok().unwrap(),
                expected,
                "{expression}"
            );
        }
        for refused in ["GPL-3.0-only", "MIT AND MPL-2.0", ""] {
            assert!(taken(refused, "x").is_err(), "{refused}");
        }
    }
}
