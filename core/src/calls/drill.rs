//! Which drill is meant: `#7`, `No. 7`, `F`, `letter F`, `13/64`, `5.1`, `.201`?
//!
//! A call is matched among real drills, inch and metric. One match is taken; where two drills of different size
//! match, both are named and the reader chooses.

use crate::call::{Call, CallFault, Said};
use crate::notation::{decimal, digits_meant, mixed, tidy, unknown as unknown_call, whole};
use crate::quantity::{Length, units, with_unit};
use crate::standards::holes::drills::{self, Drill, DrillSeries};

/// What a field for a drill takes.
pub const EXPECTED: &str = "a drill, as #7, F, 13/64, 5.1 mm or 0.201";

/// The drill that is meant.
///
/// # Errors
/// [`CallFault`]: empty, unfinished, no drill at all, several drills, or a size that no series has.
///
/// ```
/// use benchslate_core::calls::drill;
/// assert_eq!(drill::read("No. 7").unwrap().name(), "No. 7");
/// assert_eq!(drill::read(".201").unwrap().name(), "No. 7");
/// assert_eq!(drill::read("5.1").unwrap().name(), "5.1 mm");
/// assert!(drill::read("7").is_err()); // No. 7 or 7 mm
/// ```
pub fn read(text: &str) -> Result<Drill, CallFault> {
    let unknown = || unknown_call(text, EXPECTED);
    let call = tidy(text).ok_or_else(unknown)?;
    read_tidy(&call, text).map_err(|fault| match (&fault, digits_meant(&call)) {
        (CallFault::Unknown { .. }, Some(digits)) => match read_tidy(&digits, text) {
            Ok(drill) => CallFault::Near {
                says: "a letter stands where a digit belongs".into(),
                cure: format!("write {}", typed(drill)),
                ways: vec![(typed(drill), drill.name())],
            },
            Err(_) => fault,
        },
        _ => fault,
    })
}

fn read_tidy(call: &str, text: &str) -> Result<Drill, CallFault> {
    let unknown = || unknown_call(text, EXPECTED);
    if call.is_empty() {
        return Err(CallFault::Empty);
    }
    if matches!(call, "#" | "NO" | "NO." | "LETTER" | "DRILL" | ".") || call.ends_with('/') {
        return Err(CallFault::Unfinished);
    }
    if let Some(rest) = after(call, &["#", "NO.", "NUMBER ", "NO "]) {
        let wanted = whole(rest).ok_or_else(unknown)?;
        return drills::number(wanted).ok_or_else(|| CallFault::NotDefined {
            says: format!("there is no number {wanted} drill"),
            cure: "numbers run from No. 1 to No. 80 (ASME B94.11M)".to_owned(),
        });
    }
    let letter = after(call, &["LETTER "]).unwrap_or(call);
    if let (1, Some(first)) = (letter.len(), letter.chars().next())
        && first.is_ascii_alphabetic()
    {
        return drills::letter(first).ok_or_else(unknown);
    }
    if let Some(front) = before(call, &["MM"]) {
        let size = Length::from_mm(decimal(front).ok_or_else(unknown)?);
        return one_of(call, by_mm(size).as_slice(), size);
    }
    let inch = before(call, &["INCH", "IN.", "IN"]);
    let front = inch.unwrap_or(call).trim();
    if front.contains('/') {
        let (over, under) = mixed(front).ok_or_else(unknown)?;
        let size = Length::from_inches(f64::from(over) / f64::from(under));
        return one_of(call, by_inch(size).as_slice(), size);
    }
    let number = decimal(front).ok_or_else(unknown)?;
    let inches = Length::from_inches(number);
    if inch.is_some() {
        return one_of(call, by_inch(inches).as_slice(), inches);
    }
    let of_inches = by_inch(inches);
    let of_mm = by_mm(Length::from_mm(number));
    if let (None, Some(metric), true) = (of_inches, of_mm, number < LARGEST_BARE_INCH) {
        return Err(inch_or_mm(number, metric));
    }
    let mut found = of_inches.into_iter().chain(of_mm).collect::<Vec<_>>();
    if let Some(numbered) = whole(front).and_then(drills::number) {
        found.push(numbered);
    }
    // No drill: a small bare number was most likely meant as inches.
    one_of(
        call,
        &found,
        if number < 0.6 {
            inches
        } else {
            Length::from_mm(number)
        },
    )
}

/// Up to here a bare decimal may be meant in inches though no inch drill has it; above, as in 5.1, it is millimetres.
const LARGEST_BARE_INCH: f64 = 1.5;

/// `.3`: a drill of 0.3 mm, or one near 0.3 in?
fn inch_or_mm(number: f64, metric: Drill) -> CallFault {
    let mut ways = vec![(typed(metric), metric.name())];
    let near = drills::nearest(Length::from_inches(number), 12).into_iter();
    let inch = near
        .filter(|drill| drill.series != DrillSeries::Metric)
        .take(2);
    ways.extend(inch.map(|drill| {
        let size = with_unit(drill.diameter.mm(), &units::INCH, 4);
        (
            typed(drill),
            format!("{size}, the nearest if inches are meant"),
        )
    }));
    CallFault::Ambiguous(ways)
}

/// A field that takes a drill.
pub static CALL: Call = Call {
    name: "drill",
    read: said,
};

fn said(text: &str) -> Result<Said, CallFault> {
    let drill = read(text)?;
    let size = drill.diameter.mm();
    let reading = format!(
        "{} = {}, {}",
        drill.name(),
        with_unit(size, &units::INCH, 4),
        with_unit(size, &units::MM, 3)
    );
    Ok(Said {
        call: typed(drill),
        reading,
    })
}

fn after<'a>(call: &'a str, marks: &[&str]) -> Option<&'a str> {
    marks
        .iter()
        .find_map(|mark| call.strip_prefix(mark))
        .map(str::trim)
}

fn before<'a>(call: &'a str, marks: &[&str]) -> Option<&'a str> {
    marks
        .iter()
        .find_map(|mark| call.strip_suffix(mark))
        .map(str::trim)
}

/// The drill of a size; of several names for one size (letter E and 1/4 in) the series preferred first stands for all.
fn match_of(size: Length, preferred: [DrillSeries; 4]) -> Option<Drill> {
    let same = drills::exactly(size);
    let off = |drill: &&Drill| (drill.diameter - size).abs().mm() < 1e-9;
    let of_series = |exact: bool| {
        preferred.iter().find_map(|series| {
            same.iter()
                .filter(|drill| !exact || off(drill))
                .find(|drill| drill.series == *series)
                .copied()
        })
    };
    of_series(true).or_else(|| of_series(false))
}

fn by_inch(size: Length) -> Option<Drill> {
    use DrillSeries::*;
    match_of(size, [Fraction, Number, Letter, Metric])
}

fn by_mm(size: Length) -> Option<Drill> {
    use DrillSeries::*;
    match_of(size, [Metric, Fraction, Number, Letter])
}

fn one_of(call: &str, found: &[Drill], size: Length) -> Result<Drill, CallFault> {
    match found {
        [] => Err(CallFault::NotDefined {
            says: format!("no drill series has {}", call.to_ascii_lowercase()),
            cure: format!(
                "nearest: {}",
                drills::nearest(size, 3)
                    .into_iter()
                    .map(Drill::call)
                    .collect::<Vec<_>>()
                    .join(", ")
            ),
        }),
        [one] => Ok(*one),
        several => Err(CallFault::Ambiguous(
            several
                .iter()
                .map(|one| (typed(*one), one.name()))
                .collect(),
        )),
    }
}

/// A text that reads back to this drill and to no other.
fn typed(drill: Drill) -> String {
    let call = drill.call();
    if call.chars().all(|c| c.is_ascii_digit()) {
        format!("{call} in")
    } else {
        call
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_drill_reads_back_to_itself() {
        for &drill in drills::all() {
            let again = read(&typed(drill)).unwrap();
            assert_eq!(again.diameter, drill.diameter, "{}", drill.name());
            let again = read(&drill.name()).unwrap();
            assert_eq!(again.diameter, drill.diameter, "{}", drill.name());
        }
    }

    #[test]
    fn two_are_asked() {
        for (text, readings) in [
            ("7", vec!["7 mm", "#7"]),
            ("1", vec!["1 in", "1 mm", "#1"]),
            ("2.5", vec!["2-1/2", "2.5 mm"]),
            (".5", vec!["1/2", "0.5 mm"]),
        ] {
            let Err(CallFault::Ambiguous(found)) = read(text) else {
                panic!("{text}")
            };
            let texts: Vec<&str> = found.iter().map(|(text, _)| text.as_str()).collect();
            assert_eq!(texts, readings, "{text}");
        }
    }

    #[test]
    fn right_or_refused() {
        assert_eq!(read("0.25").unwrap().name(), "1/4 in");
        assert_eq!(read("e").unwrap().name(), "letter E");
        assert_eq!(read("26/64").unwrap().name(), "13/32 in");
        assert_eq!(read("5,1").unwrap().name(), "5.1 mm");
        assert_eq!(read("13/64\"").unwrap().name(), "13/64 in");
        assert_eq!(read(".4219").unwrap().name(), "27/64 in");
        assert_eq!(read(" "), Err(CallFault::Empty));
        assert_eq!(read("13/"), Err(CallFault::Unfinished));
        assert_eq!(read("#"), Err(CallFault::Unfinished));
        for refused in [
            "#0", "#81", "1/0", "1,250", "1e3", "NaN", "FF", "10'6\"", "-7", "1/4-20", "#7 1/2",
        ] {
            assert!(
                matches!(
                    read(refused),
                    Err(CallFault::Unknown { .. } | CallFault::NotDefined { .. })
                ),
                "{refused}: {:?}",
                read(refused)
            );
        }
    }
}
