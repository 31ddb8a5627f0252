//! What does the table really do behind a worn screw? True move, slack from two readings, and climb or conventional.

use crate::machine::{TrueMove, slack_of_readings, true_move};
use crate::quantity::{FeedPerTooth, Length, Quantity};
use crate::sheet::*;

mod fields;

use fields::*;

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "dial-slack",
    revision: 1,
    title: "What backlash does to a move",
    question: "What does the table really move, and may I climb mill with this backlash?",
    aside: "dial readings, backlash",
    words: &[
        "backlash",
        "slack",
        "slack screw",
        "play",
        "conventional or climb",
        "backlash eliminator",
        "lost motion",
        "climb milling",
        "conventional milling",
        "down milling",
        "up milling",
        "dial",
        "handwheel",
        "worn nut",
        "leadscrew",
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: EXAMPLES,
    takes: &[],
    finds: None,
    figure,
};

/// Past this backlash two readings are hardly of one turn, or the nut is done: 1/8 in.
const MUCH: Length = Length::from_inches(0.125);
/// Past this backlash no climb cut on a plain nut: 0.003 in.
const CLIMB_LIMIT: Length = Length::from_inches(0.003);

static LOST: Source = Source::computed(
    "Lost motion of a screw and nut",
    "table = dial \u{2212} backlash, once at each reversal",
);
static PLACE: Source = Source::practice("Backlash by two readings at one place");
static COLLEGE: Source = Source::read(
    "Fox Valley Technical College, basic milling",
    "Backlash: climb milling to be avoided without backlash compensation",
);
static LIMIT: Source = Source::practice(
    "Climb milling on a plain nut: mill makers set the screw to 0.003 to 0.005 in; the smaller is taken for the limit",
);

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    match inp.choice("ask") {
        "slack" => slack(inp),
        "cut" => cut(inp),
        _ => moved(inp),
    }
}

fn moved(inp: &Inputs) -> Result<Answer, Stop> {
    let (from, to, slack): (Length, Length, Length) =
        (inp.get("from")?, inp.get("to")?, inp.get("slack")?);
    let dial = to - from;
    let up = inp.choice("last") == "up";
    let reversed = dial != Length::ZERO && (dial > Length::ZERO) != up;
    let found = true_move(dial, slack, reversed);
    let set_to = if dial < Length::ZERO {
        to - found.lost - found.still
    } else {
        to + found.lost + found.still
    };
    let mut a = inp.answer();
    let says = if reversed {
        "Dial minus the backlash: this move goes the other way from the last."
    } else {
        "As the dial: same way as the last move, the backlash is taken up."
    };
    a.line("true-move", found.table).signed().says(says);
    a.line("lost", found.lost).says("Once at each reversal.");
    // a last bit is no backlash left
    let short = found.still > Length::from_um(0.001);
    if short {
        a.line("still", found.still)
            .says("The dial move is shorter than the backlash: the table has not moved.");
    }
    a.line("set-to", set_to)
        .says("So that the table moves what the dial was meant to say.");
    a.work(|w| {
        let formula = if reversed {
            "s = dial \u{2212} backlash"
        } else {
            "s = dial"
        };
        let figures = if short {
            format!(
                "{} is less than {}: the table stays",
                inp.num(dial.abs()),
                inp.num(slack)
            )
        } else if reversed {
            format!(
                "s = {} \u{2212} {} = {}",
                inp.num(dial.abs()),
                inp.num(slack),
                inp.show(found.table.abs())
            )
        } else {
            format!("s = {}", inp.show(dial.abs()))
        };
        w.step("Table's move", &[formula.into(), figures], &LOST);
    });
    a.draw(|| draw(inp, dial, found));
    if short {
        a.note("move-shorter", "The move is shorter than the backlash", "Turn on past the backlash, or come to the place from the other side. Until then the table stays where it is, and nothing but the gibs holds it there.");
    }
    a.note("one-side", "At each setting", "Go back past the place by half a turn and come up to it from the same side every time; then the backlash does not count.");
    Ok(a)
}

fn slack(inp: &Inputs) -> Result<Answer, Stop> {
    let mut a = inp.answer();
    let (one, other, found, formula) = if inp.choice("how") == "indicator" {
        let (turned, moved): (Length, Length) = (inp.get("turned")?, inp.get("moved")?);
        let (turned, moved) = (turned.abs(), moved.abs());
        if moved > turned {
            return Err(Stop::fault(
                "moved",
                Reason::Conflict,
                "the indicator moved more than the dial",
                "check the indicator's angle, and whether the dial has the units of this screw",
            ));
        }
        (
            turned,
            moved,
            turned - moved,
            "backlash = dial \u{2212} indicator",
        )
    } else {
        let (one, other): (Length, Length) = (inp.get("one")?, inp.get("other")?);
        let turn: Option<Length> = inp.opt("dial-turn");
        let formula = if turn.is_some() {
            "backlash = shorter way around from one reading to the other"
        } else {
            "backlash = difference of the readings"
        };
        (one, other, slack_of_readings(one, other, turn), formula)
    };
    a.line("slack-found", found).says(
        "On the dial, screw and nut and thrust bearing together, at this place of the table.",
    );
    a.work(|w| {
        w.step(
            "Backlash",
            &[
                formula.into(),
                format!(
                    "{} and {}: {}",
                    inp.num(one),
                    inp.num(other),
                    inp.show(found)
                ),
            ],
            &PLACE,
        );
    });
    a.draw(|| {
        draw(
            inp,
            found,
            TrueMove {
                table: Length::ZERO,
                lost: found,
                still: Length::ZERO,
            },
        )
    });
    if found == Length::ZERO {
        a.note("none-found", "No backlash at all", "A used screw has some. Look whether the gibs let the table follow freely, and read again.");
    }
    if inp.choice("how") == "dial" {
        let turn: Option<Length> = inp.opt("dial-turn");
        if found.mm() > MUCH.mm() + 1e-6 && turn.is_none() {
            a.note("much-backlash", "That is a lot of backlash", "Where zero lies between the two readings, give the dial reading per turn. Otherwise the nut needs replacing.");
        } else if swapped(other, one, turn) {
            a.note("swapped-readings", "Perhaps the readings are swapped", "Reached from below, the dial should read more than from above. The backlash is the same; look which way you turned.");
        }
    }
    a.note("where-to-read", "Where to read", "In the middle of the travel, where the screw is worn most, and again at an end: set the nut by the tight end or it binds there.");
    a.source(&PLACE);
    Ok(a)
}

/// True where the reading from above lies ahead of the one from below, by the shorter way round.
fn swapped(other: Length, one: Length, turn: Option<Length>) -> bool {
    let ahead = other - one;
    match turn {
        Some(turn) if turn > Length::ZERO => {
            let rest = ahead - turn * libm::floor(ahead / turn);
            rest > Length::ZERO && rest < turn * 0.5
        }
        _ => ahead > Length::ZERO,
    }
}

fn cut(inp: &Inputs) -> Result<Answer, Stop> {
    let (slack, chip): (Length, FeedPerTooth) = (inp.get("slack")?, inp.get("chip")?);
    let climb = inp.choice("cut") == "climb";
    let plain = inp.choice("nut") != "taken-up";
    // a last bit is no step past the limit
    if climb && slack > CLIMB_LIMIT * (1.0 + 1e-9) {
        let (reason, cure) = if plain {
            (
                "on a climb cut the cutter pulls the table ahead through the backlash, and one tooth takes it all: work torn out, arbor bent, teeth broken",
                "cut conventional, or take the backlash out first and measure again",
            )
        } else {
            (
                "with this backlash left the screw is not taken up, whatever is fitted: the cutter would pull the table through it",
                "set the double nut or eliminator, and measure again",
            )
        };
        return Err(Stop::withheld("slack", inp.show(CLIMB_LIMIT), reason, cure));
    }
    let pulled = if climb { slack } else { Length::ZERO };
    let bite = FeedPerTooth::from_base(chip.base() + pulled.mm());
    let mut a = inp.answer();
    let verdict = if climb {
        "climb is possible, with light cuts"
    } else {
        "conventional: the cut holds the backlash taken up"
    };
    let says = if climb {
        format!("Backlash is not more than {}.", inp.show(CLIMB_LIMIT))
    } else {
        "The cutter pushes against the feed; backlash does no harm within the cut.".to_owned()
    };
    a.words("verdict", verdict).says(says);
    let bite_says = if climb {
        "Feed per tooth and all of the backlash on one tooth."
    } else {
        "Feed per tooth: a conventional cut does not pull."
    };
    a.line("bite", bite).says(bite_says);
    a.work(|w| {
        w.step(
            "Largest bite",
            &[
                "f + backlash on a climb cut, f on a conventional one".into(),
                format!(
                    "{} + {} = {}",
                    inp.num(chip),
                    inp.num(pulled),
                    inp.show(bite)
                ),
            ],
            &LIMIT,
        );
    });
    a.draw(|| draw_cut(climb));
    a.source(&LIMIT).source(&COLLEGE);
    if climb {
        a.stop("climb-cut", "Before a climb cut", "Gibs snug, work held against a stop, light cut, key the cutter. Stand clear of the line of the work: if it grabs, it throws.");
    } else {
        a.note("conventional-cut", "On a conventional cut", "It lifts thin work: clamp down well. Run back only with the cutter stopped or the work dropped clear.");
    }
    a.note("climb-limit", "About the limit", "No standard that we have read gives a limit. This one is common practice; one college text allows no climb cut at all on a screw without a backlash eliminator. A heavy cutter or loose gibs call for less.");
    Ok(a)
}

fn draw(inp: &Inputs, dial: Length, found: TrueMove) -> Drawing {
    let mut d = Drawing::new(
        "Screw in its nut: the backlash lies on one side of the thread until the screw turns through it",
        false,
    );
    for i in 0..5 {
        let x = f64::from(i) * 24.0;
        d.path(
            Pen::Object,
            false,
            &[
                pt(x, 0.0),
                pt(x + 6.0, 14.0),
                pt(x + 12.0, 14.0),
                pt(x + 18.0, 0.0),
                pt(x + 24.0, 0.0),
            ],
        );
        d.path(
            Pen::Mark,
            false,
            &[
                pt(x - 6.0, 24.0),
                pt(x + 2.0, 24.0),
                pt(x + 8.0, 6.0),
                pt(x + 9.0, 6.0),
            ],
        );
    }
    d.text(pt(60.0, -10.0), "screw");
    d.text(pt(60.0, 34.0), "nut on the table");
    d.dimension(
        pt(0.0, -18.0),
        pt(120.0, -18.0),
        -1.0,
        format!("dial {}", inp.show(dial.abs())),
    );
    d.dimension(
        pt(96.0, 24.0),
        pt(120.0, 24.0),
        3.0,
        format!("lost {}", inp.show(found.lost)),
    );
    d
}

fn draw_cut(climb: bool) -> Drawing {
    let title = if climb {
        "Climb cut: the tooth comes down with the feed and can pull the work in"
    } else {
        "Conventional cut: the tooth comes up against the feed and pushes the work back"
    };
    let mut d = Drawing::new(title, false);
    d.circle(Pen::Object, pt(0.0, 40.0), 30.0);
    let side = if climb { 1.0 } else { -1.0 };
    let work = [
        (-70.0, -20.0),
        (70.0, -20.0),
        (70.0, 22.0),
        (24.0, 22.0),
        (0.0, 10.0),
        (-70.0, 10.0),
    ];
    d.path(Pen::Object, true, &work.map(|(x, y)| pt(x * side, y)));
    // the cutter turns clockwise: at the bottom its teeth go to the left
    d.text(pt(0.0, 40.0), "turns clockwise");
    let (tail, head) = if climb { (60.0, -60.0) } else { (-60.0, 60.0) };
    d.path(
        Pen::Mark,
        false,
        &[pt(tail, -32.0), pt(head, -32.0), pt(head * 0.85, -28.0)],
    );
    d.path(Pen::Mark, false, &[pt(head, -32.0), pt(head * 0.85, -36.0)]);
    d.text(pt(0.0, -44.0), "work feeds this way");
    d
}
