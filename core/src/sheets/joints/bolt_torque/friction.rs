//! Which nut factor does the entry amount to, and how far do the sources spread?

use super::strength::stop_of;
use crate::fastener::long_form::{self, Friction, Screw};
use crate::notation::plain;
use crate::quantity::{Length, Number, System};
use crate::sheet::{Inputs, Reason, Stop};
use crate::standards::bolts::nut_factors::NutFactor;
use crate::standards::{bolts::heads, bolts::nut_factors, bolts::thread_friction};
use crate::thread::ThreadCall;

/// What friction does: the nut factor, its published spread and how it came about.
pub(in crate::sheets) struct Rub {
    pub(in crate::sheets) k: f64,
    pub(in crate::sheets) low: f64,
    pub(in crate::sheets) high: f64,
    pub(in crate::sheets) says: String,
    pub(in crate::sheets) spread: String,
    /// Friction in the thread, where it is known: for combined tension and torsion.
    pub(super) thread_friction: Option<f64>,
    pub(super) parts: Option<(Screw, Friction)>,
}

fn bearing(inp: &Inputs, thread: ThreadCall) -> Result<Length, Stop> {
    let system = if thread.series.is_metric() {
        System::Metric
    } else {
        System::Inch
    };
    let none = |what: &str| {
        let says = format!("no verified {what} head of {}", thread.size());
        Stop::fault(
            "head",
            Reason::NoSource,
            says,
            "take the face of 1.5 D under \"Bearing face under the head\"",
        )
    };
    let hole = heads::hex(thread.major, system).map(|h| h.hole);
    match inp.choice("head") {
        "hex" => {
            let head = heads::hex(thread.major, system).ok_or_else(|| none("hexagon"))?;
            Ok(long_form::bearing_mean(head.bearing, head.hole))
        }
        "socket" => {
            let head = heads::socket(thread.major, system).ok_or_else(|| none("socket"))?;
            Ok(long_form::bearing_mean(
                head.head_diameter,
                hole.unwrap_or(thread.major),
            ))
        }
        _ => Ok(long_form::bearing_by_rule(thread.major)),
    }
}

/// What friction does in the form chosen.
pub(super) fn rub(inp: &Inputs, thread: ThreadCall) -> Result<Rub, Stop> {
    if inp.choice("form") == "long" {
        return long(inp, thread);
    }
    let state = nut_factors::state(inp.choice("state"));
    Ok(short(match state {
        Some(state) => Finish::State(state),
        None => Finish::Own(inp.get::<Number>("factor")?.get()),
    }))
}

/// The long form: nut factor from the friction of thread and head.
fn long(inp: &Inputs, thread: ThreadCall) -> Result<Rub, Stop> {
    let class =
        nut_factors::state(inp.choice("state")).and_then(|s| thread_friction::class(s.friction));
    let typed = inp.opt::<Number>("thread-friction").map(Number::get);
    let f = typed
        .or(class.map(thread_friction::FrictionClass::nominal))
        .ok_or(Stop::Missing("thread-friction"))?;
    let typed_head = inp.opt::<Number>("head-friction").map(Number::get);
    let head = typed_head.unwrap_or(f);
    let screw = Screw::sixty_degree(thread.major, thread.pitch, bearing(inp, thread)?);
    let k_at = |thread: f64, head: f64| {
        long_form::nut_factor(&screw, Friction { thread, head })
            .map_err(|e| stop_of(e, "thread-friction"))
    };
    let k = k_at(f, head)?;
    let (mut low, mut high, mut spread) = (k, k, String::new());
    if let (None, Some(class)) = (typed, class) {
        let most = class.high.unwrap_or(class.low);
        low = k_at(class.low, typed_head.unwrap_or(class.low))?.min(k);
        high = k_at(most, typed_head.unwrap_or(most))?.max(k);
        spread = format!(
            "friction {} to {}, class {} of VDI 2230",
            inp.num_to(Number::of(class.low), 2, 2),
            inp.num_to(Number::of(most), 2, 2),
            class.class
        );
    }
    Ok(Rub {
        k,
        low,
        high,
        says: format!(
            "Friction {} in the thread, {} under the head.",
            inp.num_to(Number::of(f), 3, 3),
            inp.num_to(Number::of(head), 3, 3)
        ),
        spread,
        thread_friction: Some(f),
        parts: Some((screw, Friction { thread: f, head })),
    })
}

/// What is known of lubrication and finish.
#[derive(Clone, Copy)]
pub(in crate::sheets) enum Finish {
    /// A state of the list.
    State(&'static NutFactor),
    /// A nut factor of one's own.
    Own(f64),
}

/// The short form: nut factor of the state, or the user's own.
pub(in crate::sheets) fn short(finish: Finish) -> Rub {
    let s = match finish {
        Finish::State(state) => state,
        Finish::Own(k) => {
            return Rub {
                k,
                low: k,
                high: k,
                says: "Your own nut factor.".to_owned(),
                spread: String::new(),
                thread_friction: None,
                parts: None,
            };
        }
    };
    let factor = |k: f64| plain(k, 3);
    let (mut low, mut high) = (s.low(), s.high());
    let mut says = format!("For {}: {}.", s.state, s.source);
    let mut spread = format!("published nut factors {} to {}", factor(low), factor(high));
    if let Some((k, source)) = s.other {
        says = format!(
            "For {}: {}. {source} has {}; the lower one is used, it does not overload the screw.",
            s.state,
            s.source,
            factor(k)
        );
    }
    if s.key == "unknown" {
        let all = || nut_factors::ROWS.iter();
        low = all().map(NutFactor::low).fold(s.k, f64::min);
        high = all().map(NutFactor::high).fold(s.k, f64::max);
        says = format!("State not known: {}.", s.source);
        spread = format!(
            "nut factor {} (moly) to {} (black, dry)",
            factor(low),
            factor(high)
        );
    }
    Rub {
        k: s.k,
        low,
        high,
        says,
        spread,
        thread_friction: thread_friction::class(s.friction)
            .map(thread_friction::FrictionClass::nominal),
        parts: None,
    }
}
