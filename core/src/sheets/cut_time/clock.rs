//! How is a time told in the shop? Seconds up to a minute and a half, minutes and seconds from there.

use crate::quantity::units::*;
use crate::quantity::{Quantity, Time, decimal};
use crate::sheet::{Line, Text};

/// From so many seconds up a time is told in minutes and seconds.
const LONG: f64 = 90.0;

/// A line of time: in seconds, or in minutes with the minutes and seconds said before its convention.
pub(in crate::sheets) fn tell_time(line: &mut Line, time: Time, says: &'static str) {
    if time.seconds() >= LONG {
        line.units(&MINUTE, &MINUTE)
            .says(format!("{}. {says}", clock(time)));
    } else {
        line.units(&SECOND, &SECOND)
            .places(1, 1)
            .says(Text::Borrowed(says));
    }
}

/// A time in seconds, and in minutes and seconds where that is how it is told.
pub(in crate::sheets) fn in_seconds(time: Time) -> String {
    let seconds = decimal(time.base(), &SECOND, 1);
    if time.seconds() >= LONG {
        format!("{seconds} s, {}", clock(time))
    } else {
        format!("{seconds} s")
    }
}

/// A time in minutes and seconds: "3 min 44 s", with hours from one up.
fn clock(time: Time) -> String {
    let whole = libm::round(time.seconds());
    let hours = libm::floor(whole / 3600.0);
    let minutes = libm::floor((whole - hours * 3600.0) / 60.0);
    let seconds = whole - hours * 3600.0 - minutes * 60.0;
    let digits = |n: f64| decimal(n, &NUMBER, 0);
    if hours > 0.0 {
        format!(
            "{} h {} min {} s",
            digits(hours),
            digits(minutes),
            digits(seconds)
        )
    } else {
        format!("{} min {} s", digits(minutes), digits(seconds))
    }
}
