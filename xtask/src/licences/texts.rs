//! What do the notices say? Each licence's text once, over it the libraries that stand under it with their own
//! copyright lines.
use super::{packages::Package, pick};
use crate::{
    fail::{Doing, Res},
    project,
};
use std::fs;

/// A licence's text, and who asks for it.
struct Group {
    licence: &'static str,
    text: String,
    holders: Vec<String>,
}

/// A licence file taken apart: its copyright lines, and the licence's text.
struct Parts {
    copyright: Vec<String>,
    text: String,
}

/// The whole file.
pub fn notices(packages: &[Package]) -> Res<String> {
    let own = fs::read_to_string(project::root().join("LICENSE-MIT")).doing("LICENSE-MIT")?;
    let own = parts(&own, "MIT");
    let mut groups = vec![Group {
        licence: "MIT",
        text: own.text,
        holders: vec![holder("Benchslate", &own.copyright)],
    }];
    for package in packages {
        for licence in pick::taken(&package.licence, &package.name)? {
            add(&mut groups, package, licence)?;
        }
    }
    let mut out = String::from(
        "Benchslate is under the MIT License or the Apache License 2.0, as you like. These libraries are in it, each under\n\
         the licence that stands below its name. Where a licence names no holder, the authors stand there.\n",
    );
    for group in &groups {
        let line = "=".repeat(78);
        out += &format!("\n{line}\n{}\n{line}\n\n", group.licence);
        out += &group.holders.join("\n");
        out += &format!("\n\n{}\n", group.text);
    }
    Ok(out)
}

/// Puts a library under the text that its own file has; one that ships no file is under the plain text.
fn add(groups: &mut Vec<Group>, package: &Package, licence: &'static str) -> Res {
    let file = pick::files(licence)
        .iter()
        .filter_map(|name| package.dir.as_ref().map(|dir| dir.join(name)))
        .find(|path| path.is_file());
    let mut found = match file {
        Some(path) => parts(&fs::read_to_string(&path).doing(path.display())?, licence),
        None => Parts {
            copyright: Vec::new(),
            text: String::new(),
        },
    };
    if found.copyright.is_empty() && !package.authors.is_empty() {
        let named = package.authors.iter();
        let named: Vec<&str> = named.map(|a| a.split(" <").next().unwrap_or(a)).collect();
        found.copyright = vec![format!("Copyright (c) {}", named.join(", "))];
    }
    let name = format!("{} {}", package.name, package.version);
    let holder = holder(&name, &found.copyright);
    let same = groups.iter_mut().find(|group| {
        group.licence == licence
            && (found.text.is_empty() || plain(&group.text) == plain(&found.text))
    });
    match same {
        Some(group) => group.holders.push(holder),
        None => groups.push(Group {
            licence,
            text: found.text,
            holders: vec![holder],
        }),
    }
    Ok(())
}

fn holder(name: &str, copyright: &[String]) -> String {
    let mut text = name.to_owned();
    for line in copyright {
        text += &format!("\n    {line}");
    }
    text
}

/// In the MIT licence the text proper reaches from the one to the other, the first behind its disclaimer; what stands
/// around it differs from library to library.
const MIT: (&str, &str) = ("Permission is hereby granted, free of charge", "SOFTWARE.");

fn parts(file: &str, licence: &str) -> Parts {
    // Not the form to fill in that the Apache licence ends with, nor a sentence about such lines.
    let copyright = |line: &&str| {
        let mark = ["(c)", "(C)", "\u{a9}"].iter().any(|m| line.contains(m));
        let year = line.contains(|c: char| c.is_ascii_digit());
        line.starts_with("Copyright ") && (mark || year)
    };
    let lines = file.lines().map(|line| line.trim().trim_end_matches(" or"));
    let text = if licence == "MIT" { mit(file) } else { None };
    Parts {
        copyright: lines.filter(copyright).map(str::to_owned).collect(),
        text: text.unwrap_or_else(|| file.trim()).to_owned(),
    }
}

fn mit(file: &str) -> Option<&str> {
    let text = file.get(file.find(MIT.0)?..)?;
    let disclaimer = text.find("WITHOUT WARRANTY")?;
    let end = text.get(disclaimer..)?.find(MIT.1)?;
    text.get(..disclaimer + end + MIT.1.len())
}

/// A text without its line breaks, so that two ways to break the same lines are one.
fn plain(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn copyright_lines_and_the_text_proper_are_found_in_any_wrapping() {
        let text = "Permission is hereby granted, free of charge, to all.\n";
        let file = format!(
            "# The MIT License (MIT)\n\nCopyright (c) 2019 A. Person\n  Copyright (c) B\n\n{text}"
        );
        let found = parts(&file, "MIT");
        assert_eq!(
            found.copyright,
            ["Copyright (c) 2019 A. Person", "Copyright (c) B"]
        );
        let whole = "Permission is hereby granted, free of charge.\nWITHOUT WARRANTY OF\nANY KIND.\nIN THE\nSOFTWARE.";
        let file = format!(
            "MIT License\n---\n{whole}\n---\nApache License\nCopyright [yyyy] [name of copyright owner]\n"
        );
        let found = parts(&file, "MIT");
        assert_eq!(found.text, whole);
        assert!(found.copyright.is_empty());
        assert_eq!(
            parts(&file, "Unicode-3.0").text,
            file.trim(),
            "another licence stands whole"
        );
    }

    #[test]
    fn two_ways_to_break_the_same_lines_are_one() {
        assert_eq!(plain("Permission is\n  granted."), "Permission is granted.");
    }
}
