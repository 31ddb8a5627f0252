//! Which taper pin is meant: `2/0`, `#3`, `No. 7`, `pin 4` in the inch series, `6x40`, `6 mm`, `2,5` in the metric?

use crate::call::{Call, CallFault, Said};
use crate::notation::{decimal, not_defined, plain, tidy, unknown};
use crate::pin::{StandardPin, TaperSeries};
use crate::quantity::{Length, units, with_unit};
use crate::standards::pins::taper_pins;

/// What a field for an inch pin takes.
pub const EXPECTED_INCH: &str = "a pin number, as 2/0, #3 or No. 7";
/// What a field for a metric pin takes.
pub const EXPECTED_METRIC: &str = "a small end in mm, as 6, or 6x40 with the length";

/// A taper pin as it was called.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct PinCall {
    /// The standard pin.
    pub pin: StandardPin,
    /// The length, where one was written (metric `6x40`).
    pub length: Option<Length>,
}

/// Reads a pin of the given series.
///
/// Inch: the number, with or without `#`, `No.` or `pin` before it. `1/0` is `0`, `00` is `2/0`. Metric: the small end in
/// millimetres, with or without `mm` and a length after `x`.
///
/// # Errors
/// See [`CallFault`].
///
/// ```
/// use benchslate_core::{calls::pin, pin::TaperSeries};
/// assert_eq!(pin::read("No. 2/0", TaperSeries::Inch).unwrap().pin.call(), "2/0");
/// let metric = pin::read("6x40", TaperSeries::Metric).unwrap();
/// assert_eq!((metric.pin.call(), metric.length.unwrap().mm()), ("6", 40.0));
/// ```
pub fn read(text: &str, series: TaperSeries) -> Result<PinCall, CallFault> {
    let expected = match series {
        TaperSeries::Inch => EXPECTED_INCH,
        TaperSeries::Metric => EXPECTED_METRIC,
    };
    let call = tidy(text).ok_or_else(|| unknown(text, expected))?;
    if call.is_empty() {
        return Err(CallFault::Empty);
    }
    match series {
        TaperSeries::Inch => inch(&call).ok_or_else(|| unknown(text, expected))?,
        TaperSeries::Metric => metric(&call).ok_or_else(|| unknown(text, expected))?,
    }
}

/// `None` where it is not written as a pin number at all.
fn inch(call: &str) -> Option<Result<PinCall, CallFault>> {
    let mut rest = call;
    for prefix in ["TAPER PIN", "PIN", "NO.", "NO", "#"] {
        rest = rest.strip_prefix(prefix).map_or(rest, str::trim_start);
    }
    for suffix in ["PIN", "TAPER"] {
        rest = rest.strip_suffix(suffix).map_or(rest, str::trim_end);
    }
    if rest.is_empty()
        || rest
            .strip_suffix('/')
            .is_some_and(|head| matches!(head.as_bytes(), [b'1'..=b'7']))
    {
        return Some(Err(CallFault::Unfinished));
    }
    if rest.ends_with("/O") || rest == "O" {
        return Some(Err(CallFault::Unknown {
            says: "this has the letter O".into(),
            cure: "type a zero, as 2/0".into(),
        }));
    }
    let number = match rest {
        "1/0" => "0",
        "00" => "2/0",
        "000" => "3/0",
        "0000" => "4/0",
        "00000" => "5/0",
        other => other,
    };
    if let Some(row) = taper_pins::inch(number) {
        return Some(Ok(PinCall {
            pin: StandardPin::Inch(row),
            length: None,
        }));
    }
    let like_a_number = number.chars().all(|c| c.is_ascii_digit() || c == '/')
        && number.starts_with(|c: char| c.is_ascii_digit());
    like_a_number.then(|| {
        Err(not_defined(
            &format!("taper pin {number}"),
            "ASME B18.8.2",
            &["7/0 to 2/0".into(), "0 to 14".into()],
        ))
    })
}

/// `None` where it is not written as a metric pin at all.
fn metric(call: &str) -> Option<Result<PinCall, CallFault>> {
    let mut parts = call.split('X');
    let size = parts.next().unwrap_or_default();
    let length = parts.next();
    if parts.next().is_some() {
        return None;
    }
    if size.trim_end().ends_with(['.', ',']) {
        return Some(Err(CallFault::Unfinished));
    }
    let size = millimetres(size)?;
    let length = match length.map(str::trim) {
        None => None,
        Some("") => return Some(Err(CallFault::Unfinished)),
        Some(text) => Some(millimetres(text)?),
    };
    Some(match taper_pins::metric(size) {
        Some(row) => Ok(PinCall {
            pin: StandardPin::Metric(row),
            length,
        }),
        None => Err(not_defined(
            &format!("taper pin of {} mm", plain(size.mm(), 3)),
            "ISO 2339",
            &near(size),
        )),
    })
}

/// The sizes on both sides.
fn near(size: Length) -> Vec<String> {
    let below = taper_pins::METRIC
        .iter()
        .rev()
        .find(|row| row.small_end() < size);
    let above = taper_pins::METRIC.iter().find(|row| row.small_end() > size);
    below
        .into_iter()
        .chain(above)
        .map(|row| format!("{} mm", row.size))
        .collect()
}

/// A plain decimal above zero, point or comma, with or without `mm`.
fn millimetres(text: &str) -> Option<Length> {
    let text = text.trim();
    decimal(text.strip_suffix("MM").unwrap_or(text))
        .filter(|mm| *mm > 0.0)
        .map(Length::from_mm)
}

/// A field that takes an inch pin.
pub static INCH_CALL: Call = Call {
    name: "taper pin",
    read: said_inch,
};
/// A field that takes a metric pin.
pub static METRIC_CALL: Call = Call {
    name: "taper pin",
    read: said_metric,
};

fn said_inch(text: &str) -> Result<Said, CallFault> {
    read(text, TaperSeries::Inch).map(said)
}

fn said_metric(text: &str) -> Result<Said, CallFault> {
    read(text, TaperSeries::Metric).map(said)
}

fn said(call: PinCall) -> Said {
    let end = call.pin.named_end().mm();
    let reading = match (call.pin, call.length) {
        (StandardPin::Inch(_), _) => format!(
            "{}: large end {} \u{b7} {}",
            call.pin.name(),
            with_unit(end, &units::INCH, 4),
            with_unit(end, &units::MM, 3)
        ),
        (StandardPin::Metric(_), None) => format!(
            "small end {} \u{b7} {}",
            with_unit(end, &units::MM, 3),
            with_unit(end, &units::INCH, 4)
        ),
        (StandardPin::Metric(_), Some(length)) => format!(
            "small end {}, length {} mm",
            with_unit(end, &units::MM, 3),
            plain(length.mm(), 3)
        ),
    };
    let plain_call = match call.length {
        None => call.pin.call().to_owned(),
        Some(length) => format!("{}x{}", call.pin.call(), plain(length.mm(), 3)),
    };
    Said {
        call: plain_call,
        reading,
    }
}
