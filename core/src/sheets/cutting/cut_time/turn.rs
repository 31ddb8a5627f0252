//! How long does a pass in the lathe take?

use super::times;
use crate::cutting::sources::{GROOVER, KALPAKJIAN_TURNING};
use crate::cutting::*;
use crate::quantity::{Count, FeedPerRev, Length, RotationalSpeed, System};
use crate::sheet::*;

pub(super) fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let d: Length = inp.get("diameter")?;
    let length: Length = inp.get("length")?;
    let n: RotationalSpeed = inp.get("rpm")?;
    let per_turn: FeedPerRev = inp.get("turn-feed")?;
    let passes: Count = inp.get("passes")?;
    let extra: Length = inp.get("overrun")?;
    let radial: Option<Length> = inp.opt("radial");
    if radial.is_some_and(|depth| depth * 2.0 >= d) {
        return Err(inp.out_of_range(
            "radial",
            format!("half of {} or more: nothing would be left", inp.show(d)),
            "give the depth on the radius, less than half the diameter",
        ));
    }
    let travel = length + extra;
    let faulty = |fault: CutFault| inp.out_of_range("rpm", fault.to_string(), "check the sizes");
    let one = travel_time(travel, feed_rate(per_turn, n)).map_err(faulty)?;
    let mut a = inp.answer();
    times(
        &mut a,
        one * passes.get(),
        one,
        "At feed only; setting and the way back are extra.",
    );
    a.line("travel", travel)
        .places(3, 2)
        .says("Length and extra travel: a few revs' room before the tool touches.");
    if let Some(depth) = radial {
        a.line("removal", turning_removal_mean(d, d - depth * 2.0, per_turn, n))
            .says("At the mean diameter: the metal that goes. From the surface speed of the full diameter it comes out larger.");
    }
    a.work(|w| {
        w.step(
            "Time in seconds",
            &[
                "t = 60 \u{d7} (L + extra) / (f n)".into(),
                format!(
                    "t = 60 \u{d7} ({} + {}) / ({} \u{d7} {}) = {}",
                    inp.num(length),
                    inp.num(extra),
                    inp.num_to(per_turn, 5, 4),
                    inp.num(n),
                    inp.show_to(one, 1, 1)
                ),
            ],
            &GROOVER,
        );
        if let Some(depth) = radial {
            w.step(
                "Metal removed",
                &[
                    "Q = \u{3c0} (D \u{2212} d) d f n".into(),
                    format!(
                        "Q = \u{3c0} \u{d7} ({} \u{2212} {}) \u{d7} {} \u{d7} {} \u{d7} {}{} = {}",
                        inp.num(d),
                        inp.num(depth),
                        inp.num(depth),
                        inp.num_to(per_turn, 5, 4),
                        inp.num(n),
                        // the metric unit is 1,000 mm³ large
                        match inp.system() {
                            System::Inch => "",
                            System::Metric => " / 1000",
                        },
                        inp.show_to(turning_removal_mean(d, d - depth * 2.0, per_turn, n), 3, 1)
                    ),
                ],
                &KALPAKJIAN_TURNING,
            );
        }
    });
    a.stop(
        "engage-feed",
        "Before you engage the feed",
        "Turn the chuck by hand with the tool at the end of its cut: jaws, rest and carriage must clear. Know where you will let go.",
    );
    a.draw(|| picture::turned_bar(d, inp.show(d)));
    Ok(a)
}
