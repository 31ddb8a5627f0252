//! Which values stand in one line of a list of one column, as a plate or a table gives them: `25 32 43`, `1/2, 3/4, 1`,
//! `1/2 3/4 1 1 3/8 2`? Where a comma may part thousands or be a decimal point, it is asked.

use super::Reason;

/// What a line holds.
pub(super) enum Parted {
    /// One value, or what can't be parted: its own reader says more.
    One,
    /// Several values.
    Many(Vec<String>),
    /// More than one way to part it: the values of each, and what they take the commas or spaces for.
    Asked(Vec<(Vec<String>, &'static str)>),
}

/// What stands between two values.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Gap {
    Space,
    /// A comma with a space beside it.
    Loose,
    /// A comma alone.
    Tight,
}

const EACH: &str = "each a value of its own";
const THOUSANDS: &str = "the comma separates thousands";
const POINT: &str = "the comma is the decimal point";

/// Parts a line. `reads` gives why a text is no single value; `alone` says that there is no other line.
pub(super) fn part(line: &str, alone: bool, reads: &dyn Fn(&str) -> Option<Reason>) -> Parted {
    if !line.contains([',', ' ', '\t']) {
        return Parted::One;
    }
    let single = reads(line);
    let Some((values, gaps)) = plain_values(line) else {
        return if single.is_some() {
            with_units(line, reads)
        } else {
            Parted::One
        };
    };
    if values.len() < 2 {
        return Parted::One;
    }
    match single {
        None | Some(Reason::Ambiguous) => one_comma(&values, &gaps, alone, reads),
        _ if gaps.contains(&Gap::Tight) => commas(&values, &gaps),
        _ => spaces(&values, &gaps),
    }
}

/// Values and what stands between them, where all are plain numbers, fractions or hyphened mixed numbers.
fn plain_values(line: &str) -> Option<(Vec<&str>, Vec<Gap>)> {
    let (mut values, mut gaps) = (Vec::new(), Vec::new());
    let mut rest = line.trim_matches([',', ' ', '\t']);
    while !rest.is_empty() {
        let end = rest.find([',', ' ', '\t']).unwrap_or(rest.len());
        let (value, after) = rest.split_at(end);
        if !is_plain(value) {
            return None;
        }
        values.push(value);
        rest = after.trim_start_matches([',', ' ', '\t']);
        let between = after.get(..after.len() - rest.len()).unwrap_or_default();
        match (between, between.matches(',').count()) {
            ("", _) => {}
            (",", _) => gaps.push(Gap::Tight),
            (_, 0) => gaps.push(Gap::Space),
            (_, 1) => gaps.push(Gap::Loose),
            _ => return None,
        }
    }
    Some((values, gaps))
}

fn is_digits(text: &str) -> bool {
    !text.is_empty() && text.len() <= 15 && text.bytes().all(|b| b.is_ascii_digit())
}

fn is_plain(value: &str) -> bool {
    if let Some((over, under)) = value.split_once('/') {
        let over = over
            .split_once('-')
            .map_or(Some(over), |(whole, over)| is_digits(whole).then_some(over));
        return over.is_some_and(is_digits) && is_digits(under) && under.bytes().any(|b| b != b'0');
    }
    match value.split_once('.') {
        Some((whole, part)) => {
            (whole.is_empty() || is_digits(whole))
                && (is_digits(part) || part.is_empty() && !whole.is_empty())
        }
        None => is_digits(value),
    }
}

fn number(value: &str) -> f64 {
    let plain = |text: &str| crate::quantity::number(text).unwrap_or(0.0);
    match value.split_once('/') {
        Some((over, under)) => {
            let (whole, over) = over.split_once('-').unwrap_or(("0", over));
            plain(whole) + plain(over) / plain(under)
        }
        None => plain(value),
    }
}

/// Whether the values rise or fall all the way, as those of a plate do.
fn in_order(values: &[String]) -> bool {
    let rises = |pair: &[String]| match pair {
        [a, b] => number(a) < number(b),
        _ => true,
    };
    let falls = |pair: &[String]| match pair {
        [a, b] => number(a) > number(b),
        _ => true,
    };
    values.windows(2).all(rises) || values.windows(2).all(falls)
}

fn owned(values: &[&str]) -> Vec<String> {
    values.iter().map(|value| (*value).to_owned()).collect()
}

/// Each value, but those that `joins` puts together with the one behind.
fn joined(
    values: &[&str],
    gaps: &[Gap],
    joins: impl Fn(&str, Gap, &str) -> Option<&'static str>,
) -> Vec<String> {
    let mut out: Vec<String> = Vec::with_capacity(values.len());
    let mut free = false;
    for (at, value) in values.iter().enumerate() {
        let gap = at.checked_sub(1).and_then(|at| gaps.get(at));
        let mark = match (gap, out.last()) {
            (Some(gap), Some(last)) if free => joins(last, *gap, value),
            _ => None,
        };
        if let (Some(mark), Some(last)) = (mark, out.last_mut()) {
            last.push_str(mark);
            last.push_str(value);
            free = false;
        } else {
            out.push((*value).to_owned());
            free = true;
        }
    }
    out
}

fn is_thousands(head: &str, tail: &str) -> bool {
    is_digits(head)
        && head.len() <= 3
        && !head.starts_with('0')
        && tail.len() == 3
        && is_digits(tail)
}

/// A line that reads as one value: a mixed number stays one, a comma alone may also part two values.
fn one_comma(
    values: &[&str],
    gaps: &[Gap],
    alone: bool,
    reads: &dyn Fn(&str) -> Option<Reason>,
) -> Parted {
    let ([head, tail], [Gap::Tight], true) = (values, gaps, alone) else {
        return Parted::One;
    };
    if *head == "0" {
        return Parted::One;
    }
    let mut ways = vec![(owned(values), EACH)];
    for (mark, label) in [(".", POINT), ("", THOUSANDS)] {
        let one = format!("{head}{mark}{tail}");
        if (mark == "." || is_thousands(head, tail)) && reads(&one).is_none() {
            ways.push((vec![one], label));
        }
    }
    if ways.len() > 1 {
        Parted::Asked(ways)
    } else {
        Parted::One
    }
}

/// A line with commas that have no space beside them.
fn commas(values: &[&str], gaps: &[Gap]) -> Parted {
    let each = owned(values);
    let thousands = |head: &str, gap: Gap, tail: &str| {
        (gap == Gap::Tight && is_thousands(head, tail)).then_some("")
    };
    let by_thousands = joined(values, gaps, thousands);
    if gaps.iter().all(|gap| *gap == Gap::Tight) {
        // 100,125,160 rises; 1,161,1500 might too, but is likelier two values
        let short = |head: &str, gap: Gap, tail: &str| {
            thousands(head, gap, tail).filter(|_| head.len() == 1)
        };
        let by_short = joined(values, gaps, short);
        let plain =
            by_thousands == each || (in_order(&each) && (by_short == each || !in_order(&by_short)));
        return if plain {
            Parted::Many(each)
        } else {
            Parted::Asked(vec![(by_thousands, THOUSANDS), (each, EACH)])
        };
    }
    let whole = |text: &str| is_digits(text);
    let by_point = joined(values, gaps, |head, gap, tail| {
        if thousands(head, gap, tail).is_some() {
            return Some("");
        }
        (gap == Gap::Tight && whole(head) && whole(tail)).then_some(".")
    });
    if by_point == each {
        return Parted::Many(each);
    }
    let label = if by_point == by_thousands {
        THOUSANDS
    } else {
        POINT
    };
    Parted::Asked(vec![(by_point, label), (each, EACH)])
}

/// A line with spaces, or commas and spaces: a whole number and a fraction may be one mixed number.
fn spaces(values: &[&str], gaps: &[Gap]) -> Parted {
    let each = owned(values);
    let mixed = joined(values, gaps, |head, gap, tail| {
        let fraction = tail.contains('/') && !tail.contains('-') && number(tail) < 1.0;
        (gap == Gap::Space && is_digits(head) && fraction).then_some("-")
    });
    if mixed == each {
        return Parted::Many(each);
    }
    // with commas between the values a space can only be inside one
    let parted_by_commas = gaps.iter().filter(|gap| **gap == Gap::Loose).count();
    if parted_by_commas > 0 && parted_by_commas.saturating_add(1) == mixed.len() {
        return Parted::Many(mixed);
    }
    match (in_order(&mixed), in_order(&each)) {
        (true, false) => Parted::Many(mixed),
        (false, true) => Parted::Many(each),
        _ => Parted::Asked(vec![
            (mixed, "a whole number and a fraction are one value"),
            (each, EACH),
        ]),
    }
}

/// Values that each carry a unit: `1 ipm, 2 ipm` or `1 ipm 2 ipm`.
fn with_units(line: &str, reads: &dyn Fn(&str) -> Option<Reason>) -> Parted {
    let mut parts = vec![String::new()];
    let mut before = ' ';
    let mut letters = line.chars().peekable();
    while let Some(c) = letters.next() {
        let next = letters.peek().copied().unwrap_or(' ');
        let unit_ends = c == ' '
            && (before.is_ascii_alphabetic() || matches!(before, '%' | '"'))
            && (next.is_ascii_digit() || next == '.');
        let comma = c == ',' && !(before.is_ascii_digit() && next.is_ascii_digit());
        if comma || c == '\t' || unit_ends {
            parts.push(String::new());
        } else if let Some(last) = parts.last_mut() {
            last.push(c);
        }
        before = c;
    }
    let parts: Vec<String> = parts
        .iter()
        .map(|part| part.trim().to_owned())
        .filter(|part| !part.is_empty())
        .collect();
    let told =
        |part: &String| part.contains(|c: char| c.is_ascii_alphabetic() || c == '%' || c == '"');
    if parts.len() > 1 && parts.iter().all(|part| told(part) && reads(part).is_none()) {
        Parted::Many(parts)
    } else {
        Parted::One
    }
}
