//! What does the page show, and what stands on the paper? Every line as finished texts, so that a screen only sets them.

use super::compare::{compare, difference_text};
use super::items::{self, Asks, Item, Said};
use super::measured::{is_bare, short};
use super::{Finding, Mark, Measured, Test, read_measured};
use crate::quantity::{Kind, Reading, System, join, plain, read, units, usual, with_unit};
use crate::sheet::Caution;
use crate::standards::threads::acceptance_limits::{AcceptanceLimit, CERTAINTY};

/// A test as it is shown.
#[derive(Clone, PartialEq, Debug)]
pub struct ProvingView {
    /// The parts, in order.
    pub sections: Vec<ProvingSection>,
    /// What was found at lines that are no longer asked for: an axis or a step that was taken out.
    pub left: Vec<ProvingLine>,
    /// How many lines there are, and how many are in order, not in order, off the plate by more than measuring explains.
    pub count: usize,
    /// Lines marked in order.
    pub good: usize,
    /// Lines marked not in order.
    pub bad: usize,
    /// What to know of the plate that these lines stand against.
    pub plate_note: String,
}

/// Lines that belong together.
#[derive(Clone, PartialEq, Debug)]
pub struct ProvingSection {
    /// Stable within the test.
    pub id: String,
    /// The heading.
    pub title: String,
    /// What to mind before the part is begun.
    pub cautions: Vec<Caution>,
    /// The lines.
    pub lines: Vec<ProvingLine>,
    /// Lines with a mark, of all.
    pub done: usize,
}

/// One line.
#[derive(Clone, PartialEq, Debug)]
pub struct ProvingLine {
    /// Stable within the test.
    pub id: String,
    /// What is looked at.
    pub label: String,
    /// How, where that needs saying.
    pub hint: String,
    /// What to mind before it.
    pub caution: Option<Caution>,
    /// It takes a measured size.
    pub is_size: bool,
    /// A figure of one's own may stand in place of the plate's.
    pub takes_wanted: bool,
    /// What the plate gives, or the figure typed in its place, with where it is from.
    pub expected: String,
    /// A limit that is customary and unverified; it judges nothing.
    pub customary: String,
    /// What was found, as typed.
    pub finding: Finding,
    /// What was understood of the measured text.
    pub reading: String,
    /// What is wrong with the measured text.
    pub fault: String,
    /// What is wrong with the figure typed in place of the plate's.
    pub wanted_fault: String,
    /// Measured less expected, signed.
    pub difference: String,
    /// Whether measuring explains the difference, where a ± was typed.
    pub explained: String,
}

/// The test as it is shown. A bare figure of an older test is read in the system that the test says; where it says none,
/// the line asks.
///
/// ```
/// use benchslate_core::record::{Shop, proving::{Plate, Test, view}};
/// let test = Test { plate: Plate::of(&Shop::default()), ..Test::default() };
/// let shown = view(&test);
/// assert_eq!(shown.sections.first().unwrap().title, "Before power");
/// assert_eq!((shown.good, shown.bad), (0, 0));
/// ```
pub fn view(test: &Test) -> ProvingView {
    let room = said(test, &test.at(items::ROOM).measured, Kind::Temperature).ok();
    let mut asked: Vec<String> = Vec::new();
    let mut sections = Vec::new();
    for part in items::parts(test) {
        let lines: Vec<ProvingLine> = part
            .items
            .into_iter()
            .map(|item| {
                asked.push(item.id.clone());
                line(test, item, room.as_ref())
            })
            .collect();
        sections.push(ProvingSection {
            id: part.id,
            title: part.title,
            cautions: part.cautions.iter().map(caution).collect(),
            done: marked(&lines, |mark| mark != Mark::Open),
            lines,
        });
    }
    let all = || sections.iter().map(|section| section.lines.as_slice());
    let sum = |wanted: Mark| {
        all()
            .map(|lines| marked(lines, |mark| mark == wanted))
            .sum()
    };
    ProvingView {
        left: left(test, &asked),
        count: all().map(<[ProvingLine]>::len).sum(),
        good: sum(Mark::Good),
        bad: sum(Mark::Bad),
        plate_note: plate_note(test),
        sections,
    }
}

impl ProvingView {
    /// How far the test is, in one line: for the kept list.
    pub fn summary(&self) -> String {
        let open = self
            .count
            .saturating_sub(self.good)
            .saturating_sub(self.bad);
        format!(
            "{} lines: {} in order, {} not in order, {open} open",
            self.count, self.good, self.bad
        )
    }
}

fn marked(lines: &[ProvingLine], is: impl Fn(Mark) -> bool) -> usize {
    lines.iter().filter(|line| is(line.finding.mark)).count()
}

fn caution(said: &Said) -> Caution {
    Caution {
        id: said.id,
        stop: said.stop,
        before: said.before.into(),
        text: said.text.into(),
    }
}

fn plate_note(test: &Test) -> String {
    if test.plate.feeds.iter().any(|step| per_turn(step).is_some()) {
        "On this machine the feed follows the spindle. Write above at which spindle speed the feeds are run: what the plate gives per rev is worked out at it.".into()
    } else if test.plate.follows {
        "On this machine the feed follows the spindle: the plate's feeds hold at one spindle speed only. Run them at that speed and write it above.".into()
    } else {
        "The plate's figures were copied from My shop when this test was begun.".into()
    }
}

fn left(test: &Test, asked: &[String]) -> Vec<ProvingLine> {
    let gone = |finding: &&Finding| !asked.contains(&finding.id);
    test.found
        .iter()
        .filter(gone)
        .map(|finding| ProvingLine {
            label: items::label_of(test, &finding.id),
            is_size: !finding.measured.is_empty(),
            ..empty(finding.clone())
        })
        .collect()
}

fn empty(finding: Finding) -> ProvingLine {
    ProvingLine {
        id: finding.id.clone(),
        label: String::new(),
        hint: String::new(),
        caution: None,
        is_size: false,
        takes_wanted: false,
        expected: String::new(),
        customary: String::new(),
        finding,
        reading: String::new(),
        fault: String::new(),
        wanted_fault: String::new(),
        difference: String::new(),
        explained: String::new(),
    }
}

fn line(test: &Test, item: Item, room: Option<&Measured>) -> ProvingLine {
    let finding = test.at(&item.id);
    let mut line = ProvingLine {
        label: item.label,
        hint: item.hint.to_owned(),
        caution: item.caution.map(caution),
        customary: item.limit.map_or_else(String::new, limit_text),
        ..empty(finding)
    };
    let kind = match &item.asks {
        // what was typed before the line asked for a tick alone is still shown
        Asks::Tick => {
            line.is_size = !line.finding.measured.is_empty();
            return line;
        }
        Asks::Size(kind, _) => *kind,
        Asks::Warmth => Kind::Temperature,
    };
    line.is_size = true;
    line.takes_wanted = kind != Kind::Temperature;
    let wanted = match &item.asks {
        Asks::Size(_, plate) => wanted(&mut line, kind, plate.as_ref(), test),
        _ => None,
    };
    if line.finding.measured.trim().is_empty() {
        return line;
    }
    let measured = match said(test, &line.finding.measured, kind) {
        Ok(measured) => measured,
        Err(fault) => {
            line.fault = fault;
            return line;
        }
    };
    line.reading = measured.reading(kind);
    let against = wanted
        .as_ref()
        .or(room.filter(|_| item.asks == Asks::Warmth));
    if let Some(against) = against.filter(|_| kind != Kind::Length || measured.over_mm.is_none()) {
        let compared = compare(&measured, against, kind);
        line.difference = difference_text(&compared, &measured, kind);
        line.difference.push_str(match item.asks {
            Asks::Warmth => " over the room",
            _ if line.finding.wanted.trim().is_empty() => " against the plate",
            _ => " against the wanted figure",
        });
        line.explained = match compared.explained {
            _ if item.asks == Asks::Warmth => "",
            Some(true) => "within what measuring explains",
            Some(false) => "more than measuring explains",
            None => "",
        }
        .into();
    }
    line
}

/// A figure of a test, read.
fn said(test: &Test, text: &str, kind: Kind) -> Result<Measured, String> {
    match test.bare {
        None if is_bare(text, kind) => Err(
            "no unit stands behind this figure, and its record does not say which it was: choose inch or millimeter above, or type the unit".into(),
        ),
        bare => read_measured(text, kind, bare.unwrap_or_default()),
    }
}

/// The figure that a line stands against: the one typed, else the plate's part for this axis.
fn wanted(
    line: &mut ProvingLine,
    kind: Kind,
    plate: Option<&(String, String)>,
    test: &Test,
) -> Option<Measured> {
    let own = line.finding.wanted.trim();
    if !own.is_empty() {
        match said(test, own, kind) {
            Ok(own) => {
                line.expected = format!("{}, as typed here", own.reading(kind));
                return Some(own);
            }
            Err(fault) => {
                line.wanted_fault = fault;
                return None;
            }
        }
    }
    let (text, share) = plate?;
    let mut from = String::from("on the plate");
    let mut of = text.clone();
    let read_plate = if let Some(turn) = per_turn(text).filter(|_| kind == Kind::FeedRate) {
        match at_spindle(&turn, &test.spindle) {
            Ok((rate, speed)) => {
                from = format!("{text} at {speed}");
                of = format!("{text}, at {speed}");
                rate
            }
            Err(fault) if fault.is_empty() => {
                line.expected = format!("{text} on the plate: write the spindle speed above");
                return None;
            }
            Err(fault) => {
                line.wanted_fault = format!("the spindle speed above: {fault}");
                return None;
            }
        }
    } else if let Ok(read_plate) = read_measured(text, kind, test.bare.unwrap_or_default()) {
        read_plate
    } else {
        if !text.trim().is_empty() {
            line.wanted_fault = "the plate's figure can't be read; type it here".into();
        }
        return None;
    };
    let part = match read(share, Kind::Number, &[]) {
        Ok(part) if part.nominal > 0.0 && part.nominal <= 1000.0 => part.nominal,
        Ok(_) => {
            line.wanted_fault =
                "this axis's part of the plate's feeds must be above 0 and at most 1000".into();
            return None;
        }
        Err(fault) => {
            line.wanted_fault = format!("this axis's part of the plate's feeds: {}", fault.text());
            return None;
        }
    };
    let scaled = Measured {
        value: read_plate.value * part,
        minus: read_plate.minus * part,
        plus: read_plate.plus * part,
        ..read_plate
    };
    if part != 1.0 {
        from = format!("{} of the plate's {of}", plain(part, &units::NUMBER));
    }
    line.expected = format!("{}, {from}", short(scaled.value, scaled.unit));
    Some(scaled)
}

/// A step of a plate that is cut per turn, with its unit.
fn per_turn(text: &str) -> Option<Reading> {
    read(text, Kind::FeedPerRev, &[])
        .ok()
        .filter(|reading| !reading.bare)
}

/// What a feed per turn comes to in a minute at a spindle speed, and the step in words; an empty fault where no step is written.
fn at_spindle(turn: &Reading, spindle: &str) -> Result<(Measured, String), String> {
    if spindle.trim().is_empty() {
        return Err(String::new());
    }
    let speed = read_measured(spindle, Kind::RotationalSpeed, System::Inch)?;
    let (least, most) = (turn.nominal - turn.minus, turn.nominal + turn.plus);
    let value = turn.nominal * speed.value;
    let rate = Measured {
        value,
        minus: value - least * (speed.value - speed.minus),
        plus: most * (speed.value + speed.plus) - value,
        unit: usual(Kind::FeedRate, turn.unit.system.unwrap_or(System::Inch)),
        over_mm: None,
    };
    Ok((rate, short(speed.value, speed.unit)))
}

/// "0.025 mm in 300 mm, 0.0010 in in 1 ft: customary, unverified".
fn limit_text(row: &AcceptanceLimit) -> String {
    let (mm, inch) = (
        usual(Kind::Length, System::Metric),
        usual(Kind::Length, System::Inch),
    );
    let metric = join(&plain(row.limit_mm, mm), mm);
    match row.over_mm {
        Some(over) if over < 1000.0 => {
            let foot = row.limit_mm * 304.8 / over;
            format!(
                "{metric} in {} ({} a foot): {CERTAINTY}",
                join(&plain(over, mm), mm),
                with_unit(foot, inch, 4)
            )
        }
        _ => format!(
            "{metric} ({}): {CERTAINTY}",
            with_unit(row.limit_mm, inch, 4)
        ),
    }
}
