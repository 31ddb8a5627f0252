//! Writes the reference pages, one Markdown page a sheet, from the contract; with `--check` it says which are stale.
use benchslate_core::{
    link,
    quantity::{join, plain},
    sheet::{Entry, Field, FieldKind, Group, Outcome, Sheet, State, evaluate},
    sheets,
};
use benchslate_tests::cases;
use std::{
    collections::BTreeMap, error::Error, fmt::Write as _, fs, path::PathBuf, process::ExitCode,
};

fn main() -> Result<ExitCode, Box<dyn Error>> {
    let check = std::env::args().any(|a| a == "--check");
    // Where cargo was called, not where this was built: two work trees may share one target folder.
    let here = std::env::var_os("CARGO_MANIFEST_DIR")
        .map_or_else(|| PathBuf::from(env!("CARGO_MANIFEST_DIR")), PathBuf::from);
    let dir = here.join("../../docs/reference");
    let pages = pages()?;
    let mut stale = Vec::new();
    for (name, text) in &pages {
        if fs::read_to_string(dir.join(name)).ok().as_ref() != Some(text) {
            stale.push(name.clone());
        }
    }
    // A page of a sheet that is gone would mislead.
    if let Ok(there) = fs::read_dir(&dir) {
        let names = there
            .flatten()
            .map(|e| e.file_name().to_string_lossy().into_owned());
        stale.extend(names.filter(|n| !pages.contains_key(n)));
    }
    let readme = here.join("../../README.md");
    let old = fs::read_to_string(&readme)?;
    let new = with_table(&old)?;
    if check {
        if new != old {
            println!("stale: the table in README.md; `cargo xtask generate` writes it");
            return Ok(ExitCode::FAILURE);
        }
        for name in &stale {
            println!("stale: docs/reference/{name}; `cargo xtask generate` writes it");
        }
        return Ok(if stale.is_empty() {
            ExitCode::SUCCESS
        } else {
            ExitCode::FAILURE
        });
    }
    if new != old {
        fs::write(&readme, new)?;
        println!("README.md");
    }
    fs::create_dir_all(&dir)?;
    for name in &stale {
        match pages.get(name) {
            Some(text) => fs::write(dir.join(name), text)?,
            None => fs::remove_file(dir.join(name))?,
        }
        println!("docs/reference/{name}");
    }
    Ok(ExitCode::SUCCESS)
}

/// README with its table of what the suite answers, between its two marks, written from the contract.
fn with_table(readme: &str) -> Result<String, Box<dyn Error>> {
    let (open, close) = (
        "<!-- table of sheets: written by `cargo xtask generate` -->\n",
        "<!-- end of table -->",
    );
    let (before, rest) = readme
        .split_once(open)
        .ok_or("README.md has lost the mark before its table")?;
    let (_, after) = rest
        .split_once(close)
        .ok_or("README.md has lost the mark after its table")?;
    let mut table = String::from("\n| when one is asking | it answers |\n| --- | --- |\n");
    for group in Group::ALL {
        for sheet in sheets::ALL.iter().filter(|sheet| sheet.group == group) {
            let (question, title) = (cell(sheet.question), cell(sheet.title));
            writeln!(
                table,
                "| {question} | [{title}](docs/reference/{}.md) |",
                sheet.id
            )?;
        }
    }
    Ok(format!("{before}{open}{table}\n{close}{after}"))
}

/// All pages by file name.
fn pages() -> Result<BTreeMap<String, String>, std::fmt::Error> {
    let mut index = String::from(
        "# Reference\n\nWritten by `cargo xtask generate` from the declarations in `core/src/sheets`; do not edit by hand.\n\n\
         | answer | question | id in links |\n| --- | --- | --- |\n",
    );
    let mut pages = BTreeMap::new();
    for sheet in sheets::ALL {
        writeln!(
            index,
            "| [{}]({}.md) | {} | `{}` |",
            cell(sheet.title),
            sheet.id,
            cell(sheet.question),
            sheet.id
        )?;
        pages.insert(format!("{}.md", sheet.id), page(sheet)?);
    }
    pages.insert("README.md".to_owned(), index);
    Ok(pages)
}

fn page(sheet: &'static Sheet) -> Result<String, std::fmt::Error> {
    let mut out = String::new();
    writeln!(out, "# {}\n\n{}\n", sheet.title, sheet.question)?;
    writeln!(
        out,
        "Id `{}`, revision {}. Written by `cargo xtask generate`; do not edit.\n",
        sheet.id, sheet.revision
    )?;
    writeln!(
        out,
        "## Fields\n\n| field | id | takes | allowed | default | example |\n| --- | --- | --- | --- | --- | --- |"
    )?;
    for field in sheet.fields {
        let mut label = field.label.to_owned();
        for when in field.when {
            write!(label, " (with `{}` at {})", when.field, when.is.join(", "))?;
        }
        let allowed = allowed(field);
        let default = field.preset.text().map_or_else(String::new, code);
        let example = if field.example.is_empty() {
            String::new()
        } else {
            code(field.example)
        };
        writeln!(
            out,
            "| {} | `{}` | {} | {} | {default} | {example} |",
            cell(&label),
            field.id,
            takes(field),
            cell(&allowed)
        )?;
    }
    writeln!(
        out,
        "\n## Results\n\n| result | id | kind |\n| --- | --- | --- |"
    )?;
    for result in sheet.results {
        let kind = result
            .kind
            .map_or_else(|| "words".to_owned(), |k| words(&format!("{k:?}")));
        let stepped = if result.stepped && result.kind.is_some() {
            ", in steps"
        } else {
            ""
        };
        writeln!(
            out,
            "| {} | `{}` | {kind}{stepped} |",
            cell(result.label),
            result.id
        )?;
    }
    for (at, example) in sheet.examples.iter().enumerate() {
        writeln!(out, "\n## Example {}\n", at + 1)?;
        let outcome = write_answer(&mut out, sheet, &Entry::of(example))?;
        write_behind(&mut out, &outcome)?;
    }
    write_cases(&mut out, sheet)?;
    Ok(out)
}

/// The cases of judgement of this sheet: what is asked, why, and what is answered.
fn write_cases(out: &mut String, sheet: &'static Sheet) -> std::fmt::Result {
    let cases = cases::judged();
    let mut cases = cases
        .iter()
        .filter(|case| case["sheet"] == sheet.id)
        .peekable();
    if cases.peek().is_some() {
        writeln!(
            out,
            "\n## Cases\n\nUsual jobs and wrong entries, each with what an experienced person demands of the answer."
        )?;
    }
    for case in cases {
        let text = |key: &str| case[key].as_str().unwrap_or_default();
        writeln!(out, "\n### {}\n\n{}.\n", text("id"), text("reason"))?;
        for entry in cases::entries_of(case) {
            let outcome = write_answer(out, sheet, &entry)?;
            write_cautions(out, &outcome)?;
        }
    }
    Ok(())
}

/// What a field allows: the ends of its range, and why.
fn allowed(field: &Field) -> String {
    let (Some(range), FieldKind::Quantity { units, .. }) = (field.range, &field.kind) else {
        return String::new();
    };
    let Some(unit) = units.first() else {
        return String::new();
    };
    let end = |base| join(&plain(base, unit), unit);
    let (a, b) = (end(range.low), end(range.high));
    // threads per inch fall as the pitch grows
    let (a, b) = if unit.from_base(range.low) > unit.from_base(range.high) {
        (b, a)
    } else {
        (a, b)
    };
    format!("{a} to {b}: {}", range.why)
}

/// An answer: the link that opens it, its lines, or why there are none.
fn write_answer(
    out: &mut String,
    sheet: &'static Sheet,
    entry: &Entry,
) -> Result<Outcome, std::fmt::Error> {
    let outcome = evaluate(sheet, entry);
    if let Some(link) = link::state_of(sheet, entry, &outcome, &link::Asked::default()) {
        writeln!(out, "`{link}`\n")?;
    }
    for line in &outcome.answer.lines {
        let value = line.value.text_with_unit(entry.system);
        let value = value.trim_end_matches('.');
        writeln!(out, "- {}: **{value}**. {}", line.label, line.says)?;
    }
    for fault in outcome.faults() {
        writeln!(out, "- No answer: {}.", fault.text())?;
    }
    if let State::Withheld(withheld) = &outcome.answer.state {
        writeln!(
            out,
            "- No figure: {} Limit: {} {}",
            withheld.reason, withheld.limit, withheld.cure
        )?;
    }
    Ok(outcome)
}

/// How it was computed, the cautions and the sources.
fn write_behind(out: &mut String, outcome: &Outcome) -> std::fmt::Result {
    writeln!(out, "\n### How it was figured")?;
    for step in &outcome.answer.steps {
        writeln!(
            out,
            "\n{} ({}):\n\n```text\n{}\n```",
            step.title,
            step.source.text(),
            step.lines.join("\n")
        )?;
    }
    if !outcome.answer.cautions.is_empty() {
        writeln!(out, "\n### Cautions")?;
    }
    write_cautions(out, outcome)?;
    writeln!(out, "\n### Sources\n")?;
    for source in &outcome.answer.sources {
        writeln!(out, "- {}", source.text())?;
    }
    Ok(())
}

fn write_cautions(out: &mut String, outcome: &Outcome) -> std::fmt::Result {
    if !outcome.answer.cautions.is_empty() {
        writeln!(out)?;
    }
    for caution in &outcome.answer.cautions {
        writeln!(
            out,
            "- {}{} (`{}`): {}",
            if caution.stop { "**Stop.** " } else { "" },
            caution.before,
            caution.id,
            caution.text
        )?;
    }
    Ok(())
}

/// What a field takes, in a few words.
fn takes(field: &Field) -> String {
    match &field.kind {
        FieldKind::Quantity { kind, units } => {
            let units: Vec<&str> = units
                .iter()
                .map(|u| u.id)
                .filter(|u| !u.is_empty())
                .collect();
            let measured = if field.is_measured {
                ", may carry ±"
            } else {
                ""
            };
            let optional = if field.is_optional {
                ", may stay empty"
            } else {
                ""
            };
            cell(&format!(
                "{} {}{measured}{optional}",
                words(&format!("{kind:?}")),
                units.join(", ")
            ))
        }
        FieldKind::Choice(choices) => choices
            .iter()
            .map(|c| code(c.id))
            .collect::<Vec<_>>()
            .join(", "),
        FieldKind::Call(call) => format!("a {}", call.name),
        FieldKind::Rows {
            columns,
            least,
            most,
        } => {
            let columns: Vec<&str> = columns.iter().map(|c| c.label).collect();
            cell(&format!("{least} to {most} rows of {}", columns.join(", ")))
        }
    }
}

/// `FeedPerTooth` to `feed per tooth`.
fn words(name: &str) -> String {
    let mut out = String::new();
    for c in name.chars() {
        if c.is_uppercase() && !out.is_empty() {
            out.push(' ');
        }
        out.extend(c.to_lowercase());
    }
    out
}

fn code(text: &str) -> String {
    format!("`{}`", cell(text))
}

/// Text that does not end the cell of a table.
fn cell(text: &str) -> String {
    text.replace('|', "\\|").replace('\n', " ")
}
