//! Would an experienced person accept the answer? Reads cases of usual jobs (a JSON object a line) and holds the answers
//! against what each demands.
//!
//! A case names a sheet, an entry (or `entries`, for an order) and what it `must` hold: `band` (a result within two
//! figures), `says` and `says_not` (words; `where` is `stop`, `caution` or `any`), `not_both`, `refuses`, `answers`,
//! `first` (that result leads), `any` (one of several), `order` (a result over the entries), `stop` and `no-stop`,
//! `note` and `no-note` (a caution by its id).

use benchslate_core::quantity::{System, units_of};
use benchslate_core::sheet::{Answer, Entry, Outcome, State, evaluate};
use benchslate_core::sheets;
use serde_json::Value as Json;

/// What a case says against an answer; empty where all holds.
///
/// # Errors
/// The case itself is at fault: an unknown sheet, field, check or unit.
pub fn objections(case: &Json) -> Result<Vec<String>, String> {
    let outcomes = outcomes(case)?;
    let mut found = Vec::new();
    for check in list(case, "must")? {
        if let Some(objection) = objection(check, &outcomes)? {
            found.push(objection);
        }
    }
    Ok(found)
}

fn outcomes(case: &Json) -> Result<Vec<Outcome>, String> {
    let id = case["sheet"].as_str().unwrap_or_default();
    let sheet = sheets::by_id(id).ok_or_else(|| format!("no sheet {id}"))?;
    let entries = match &case["entries"] {
        Json::Array(entries) => entries.clone(),
        _ => vec![case["entry"].clone()],
    };
    entries
        .iter()
        .map(|fields| {
            let mut entry = Entry::default();
            for (id, text) in fields.as_object().ok_or("an entry is no object")? {
                let text = text.as_str().ok_or("a field's text is no text")?;
                if id == "u" {
                    entry = entry.in_system(match text {
                        "mm" => System::Metric,
                        _ => System::Inch,
                    });
                    continue;
                }
                sheet
                    .field(id)
                    .ok_or_else(|| format!("{} has no field {id}", sheet.id))?;
                entry.set(id, text);
            }
            Ok(evaluate(sheet, &entry))
        })
        .collect()
}

fn list<'a>(of: &'a Json, name: &str) -> Result<&'a Vec<Json>, String> {
    of[name]
        .as_array()
        .ok_or_else(|| format!("{name} is no list"))
}

fn objection(check: &Json, outcomes: &[Outcome]) -> Result<Option<String>, String> {
    let kinds = check.as_object().ok_or("a check is no object")?;
    let (kind, what) = kinds
        .iter()
        .find(|(kind, _)| *kind != "where" && *kind != "result" && *kind != "gaps")
        .ok_or("a check that says nothing")?;
    let outcome = outcomes.first().ok_or("no entry")?;
    let answer = &outcome.answer;
    Ok(match kind.as_str() {
        "band" => band(what, answer)?,
        "says" => {
            let text = told(outcome, check["where"].as_str().unwrap_or("any"));
            let held = words(what)?.iter().any(|word| text.contains(word));
            (!held).then(|| format!("says none of {what} in {}", check["where"]))
        }
        "says_not" => {
            let text = told(outcome, check["where"].as_str().unwrap_or("any"));
            words(what)?
                .into_iter()
                .find(|word| text.contains(word))
                .map(|word| format!("says {word:?}"))
        }
        "not_both" => {
            let text = told(outcome, "any");
            let sides = what.as_array().ok_or("not_both takes two lists")?;
            let mut all = true;
            for side in sides {
                all &= words(side)?.iter().any(|word| text.contains(word));
            }
            all.then(|| format!("says both of {what}"))
        }
        "refuses" => {
            let reason = !told(outcome, "refusal").is_empty();
            (!answer.lines.is_empty() || !reason).then(|| "does not refuse".to_owned())
        }
        "answers" => (!answer.is_complete()).then(|| {
            format!(
                "does not answer: {:?} {}",
                answer.state,
                told(outcome, "refusal")
            )
        }),
        "first" => {
            let leads = answer.lines.first().map(|line| line.id);
            (leads != what.as_str()).then(|| format!("{leads:?} leads, not {what}"))
        }
        "stop" | "note" => {
            let found = answer.caution(what.as_str().unwrap_or_default());
            let is = found.is_some_and(|caution| caution.stop == (kind == "stop"));
            (!is).then(|| format!("has no {kind} {what}"))
        }
        "no-stop" | "no-note" => answer
            .caution(what.as_str().unwrap_or_default())
            .map(|caution| format!("has {what}: {}", caution.text)),
        "any" => {
            let mut objections = Vec::new();
            for one in what.as_array().ok_or("any takes a list")? {
                match objection(one, outcomes)? {
                    Some(text) => objections.push(text),
                    None => return Ok(None),
                }
            }
            Some(objections.join(" and "))
        }
        "order" => order(check, what, outcomes)?,
        other => return Err(format!("no check {other}")),
    })
}

fn words(list: &Json) -> Result<Vec<String>, String> {
    list.as_array()
        .ok_or("words are no list")?
        .iter()
        .map(|word| {
            word.as_str()
                .map(str::to_lowercase)
                .ok_or_else(|| "a word is no text".to_owned())
        })
        .collect()
}

/// The first of the results that stands, in base units.
fn base(names: &Json, answer: &Answer) -> Option<f64> {
    let names: Vec<&str> = match names {
        Json::Array(list) => list.iter().filter_map(Json::as_str).collect(),
        one => one.as_str().into_iter().collect(),
    };
    names.iter().find_map(|name| answer.get(name)?.value.base())
}

fn band(what: &Json, answer: &Answer) -> Result<Option<String>, String> {
    let Some(got) = base(&what["result"], answer) else {
        return Ok(Some(format!(
            "has no {}: {:?}",
            what["result"], answer.state
        )));
    };
    let name = what["unit"].as_str().unwrap_or_default();
    let kind = answer
        .lines
        .iter()
        .find(|line| line.value.base() == Some(got))
        .and_then(|line| match line.value {
            benchslate_core::sheet::Value::Quantity { kind, .. } => Some(kind),
            benchslate_core::sheet::Value::Words(_) => None,
        });
    let unit = kind
        .map(units_of)
        .unwrap_or_default()
        .iter()
        .find(|unit| unit.symbol == name || unit.id == name || unit.spellings.contains(&name))
        .ok_or_else(|| format!("no unit {name}"))?;
    let (low, high) = (
        what["low"].as_f64().ok_or("no low")?,
        what["high"].as_f64().ok_or("no high")?,
    );
    let got = unit.from_base(got);
    Ok((!(low..=high).contains(&got))
        .then(|| format!("{} is {got:.5} {name}, not {low} to {high}", what["result"])))
}

fn order(check: &Json, what: &Json, outcomes: &[Outcome]) -> Result<Option<String>, String> {
    let gaps = check["gaps"].as_bool().unwrap_or(false);
    let all: Vec<Option<f64>> = outcomes
        .iter()
        .map(|outcome| base(&check["result"], &outcome.answer))
        .collect();
    if !gaps && all.contains(&None) {
        return Ok(Some(format!("a figure is missing: {all:?}")));
    }
    let figures: Vec<f64> = all.iter().flatten().copied().collect();
    let pairs = || {
        figures
            .windows(2)
            .filter_map(|two| Some((*two.first()?, *two.get(1)?)))
    };
    let (first, last) = (figures.first(), figures.last());
    let small = 1e-9;
    let held = match what.as_str().unwrap_or_default() {
        "rising" => pairs().all(|(a, b)| b > a),
        "falling" => pairs().all(|(a, b)| b < a),
        "not rising" => pairs().all(|(a, b)| b <= a + small),
        "not falling" => pairs().all(|(a, b)| b + small >= a),
        "falling ends" => pairs().all(|(a, b)| b <= a + small) && last < first,
        other => return Err(format!("no order {other}")),
    };
    Ok((!held).then(|| format!("{} is not {what}: {all:?}", check["result"])))
}

/// The answer's words, in lower case: of refusals alone, of stops and these, of all cautions and these, or all.
pub fn told(outcome: &Outcome, place: &str) -> String {
    let answer = &outcome.answer;
    let mut all: Vec<String> = outcome
        .faults()
        .map(benchslate_core::sheet::Fault::text)
        .collect();
    if let State::Withheld(withheld) = &answer.state {
        all.push(format!(
            "{} {} {}",
            withheld.limit, withheld.reason, withheld.cure
        ));
    }
    if place != "refusal" {
        let cautions = answer
            .cautions
            .iter()
            .filter(|caution| place != "stop" || caution.stop);
        all.extend(cautions.map(|caution| format!("{}: {}", caution.before, caution.text)));
    }
    if place == "any" {
        all.extend(figures(answer));
    }
    all.join("\n").to_lowercase()
}

fn figures(answer: &Answer) -> Vec<String> {
    let system = System::Inch;
    let mut all = Vec::new();
    for line in &answer.lines {
        let value = line.value.text_with_unit(system);
        all.push(format!(
            "{}: {value} {} {}",
            line.label, line.says, line.band_says
        ));
    }
    for table in &answer.tables {
        all.push(format!("{} {}", table.title, table.columns.join(" ")));
        for row in &table.rows {
            let cells: Vec<String> = row
                .cells
                .iter()
                .map(|cell| cell.text_with_unit(system))
                .collect();
            all.push(cells.join(" | "));
        }
        all.push(table.note.to_string());
    }
    for step in &answer.steps {
        all.push(format!("{} {}", step.title, step.lines.join("\n")));
    }
    all
}
