//! Does the drill that is in hand serve before this tap?

use super::say;
use crate::calls;
use crate::quantity::Share;
use crate::sheet::*;
use crate::thread::{Bore, TapKind, ThreadCall, minor_limits, percent_of_thread};

/// Its percent of thread, with one verdict: the minor diameter's limits first, then how the tap turns and the thread holds.
pub(super) fn tell(
    inp: &Inputs,
    a: &mut Answer,
    thread: ThreadCall,
    tap: TapKind,
) -> Result<(), Stop> {
    let Some(text) = inp.opt_call("hand") else {
        return Ok(());
    };
    let drill = calls::drill::read(text).map_err(|_| {
        Stop::fault(
            "hand",
            Reason::Unreadable,
            "this is no drill",
            calls::drill::EXPECTED,
        )
    })?;
    let share = percent_of_thread(thread, drill.diameter, tap);
    let bore = minor_limits(thread)
        .filter(|_| tap == TapKind::Cut)
        .map(|(minor, _)| Bore::of(drill.diameter, minor));
    a.line("hand-share", share).says(super::basis(tap));
    let verdict = verdict(share, tap);
    let limits = match (say::against(inp, thread, bore), bore) {
        (Some(outside), _) => format!("{}: {outside}. ", drill.name()),
        (None, Some(_)) => format!(
            "{}: within the minor diameter\u{2019}s limits. ",
            drill.name()
        ),
        (None, None) => format!("{}. ", drill.name()),
    };
    let outside = bore.is_some_and(|bore| bore != Bore::Within) && !verdict.2;
    let short = if outside {
        format!("{}, outside the limits of its class", verdict.0)
    } else {
        verdict.0.to_owned()
    };
    a.words("hand-says", short)
        .says(format!("{limits}{}", verdict.1));
    if verdict.2 {
        a.stop(
            "hand-drill",
            "Before you drill with the one in hand",
            format!("{}: {}. {}", drill.name(), verdict.0, verdict.1),
        );
    }
    Ok(())
}

/// In short, why, and whether it is to be left alone. The ends are common practice: 30 % strips, 55 to 80 % is usual for cut
/// threads, over 100 % leaves the tap no room.
fn verdict(share: Share, tap: TapKind) -> (&'static str, &'static str, bool) {
    let percent = share.percent();
    match tap {
        _ if percent > 100.0 + 1e-9 => (
            "too small",
            "Nothing is left for the crest of the tap: it binds and breaks.",
            true,
        ),
        _ if percent <= 0.0 => ("too large", "No thread is left at all.", true),
        _ if percent < 30.0 => ("too large", "Under 30% the thread strips.", true),
        TapKind::Cut if percent > 80.0 => (
            "small",
            "Over about 80% the tap turns hard; small taps break.",
            false,
        ),
        TapKind::Cut if percent < 55.0 => (
            "large",
            "Under about 55% the thread is shallow: for tough metal and deep holes only.",
            false,
        ),
        TapKind::Cut => ("serves", "55 to 80% is usual for a cut thread.", false),
        TapKind::Form if percent > 75.0 => (
            "small",
            "Over about 75% a form tap turns hard and the crests close over.",
            false,
        ),
        TapKind::Form => ("serves", "Form threads are usual to about 75%.", false),
    }
}
