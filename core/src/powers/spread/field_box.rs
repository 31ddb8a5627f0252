//! What does the sheet say at a point of the box that the tolerances span?

use crate::powers::probe::Probe;
use crate::quantity::System;
use crate::sheet::{Answer, Field, Inputs, Line, Stop};

/// Results and cautions that come up inside, at most.
const MOST_ALSO: usize = 6;

/// A field with its tolerance, base units.
pub(super) struct Span {
    pub(super) field: &'static Field,
    pub(super) nominal: f64,
    pub(super) low: f64,
    pub(super) high: f64,
}

/// What the sheet says at a point: the numbers and the picks of the nominal answer; none where one is not there.
#[derive(Clone, PartialEq, Debug)]
pub(super) struct Snap {
    pub(super) numbers: Vec<Option<f64>>,
    pub(super) picks: Vec<Option<String>>,
}

/// That, or why there is no answer.
pub(super) type Told = Result<Snap, String>;

/// A pick: a result in words, or the chosen row of a table.
pub(super) struct Pick {
    pub(super) id: &'static str,
    pub(super) what: String,
    is_table: bool,
}

/// The box, and the sheet that is asked about it.
pub(super) struct FieldBox<'a> {
    probe: Probe,
    pub(super) system: System,
    nominal: &'a Answer,
    pub(super) spans: Vec<Span>,
    pub(super) numbers: Vec<&'a Line>,
    pub(super) picks: Vec<Pick>,
    /// What the sheet says at the nominal.
    pub(super) own: Snap,
    /// What it said at corners.
    pub(super) pool: Vec<Told>,
    /// What comes up inside and not at the nominal.
    pub(super) also: Vec<String>,
    inputs: &'a Inputs,
}

impl<'a> FieldBox<'a> {
    /// The box of an entry; none where no field carries a tolerance.
    pub(super) fn new(inputs: &'a Inputs, nominal: &'a Answer, most: usize) -> Option<Self> {
        let spans: Vec<Span> = inputs
            .tolerances()
            .into_iter()
            .map(|(field, nominal, low, high)| Span {
                field,
                nominal,
                low,
                high,
            })
            .collect();
        if spans.is_empty() {
            return None;
        }
        let words = nominal
            .lines
            .iter()
            .filter(|line| line.value.base().is_none())
            .map(|line| Pick {
                id: line.id,
                what: line.label.to_string(),
                is_table: false,
            });
        let tables = nominal.tables.iter().map(|table| Pick {
            id: table.id,
            what: table.title.to_string(),
            is_table: true,
        });
        let mut made = Self {
            probe: Probe::new(inputs, most),
            system: inputs.system(),
            nominal,
            spans,
            numbers: nominal
                .lines
                .iter()
                .filter(|line| line.value.base().is_some())
                .collect(),
            picks: words.chain(tables).collect(),
            own: Snap {
                numbers: Vec::new(),
                picks: Vec::new(),
            },
            pool: Vec::new(),
            also: Vec::new(),
            inputs,
        };
        made.own = made.snap(nominal);
        Some(made)
    }

    /// How often the sheet was asked.
    pub(super) const fn asked(&self) -> usize {
        self.probe.asked()
    }

    /// How often it may still be asked.
    pub(super) const fn left(&self) -> usize {
        self.probe.left()
    }

    /// True where a result is declared as one that wraps round.
    pub(super) fn wraps(&self, line: &Line) -> bool {
        self.inputs
            .sheet()
            .result(line.id)
            .is_some_and(|res| res.wraps)
    }

    /// The nominal of every span.
    pub(super) fn center(&self) -> Vec<f64> {
        self.spans.iter().map(|span| span.nominal).collect()
    }

    /// What the sheet says at a point; none where it was asked as often as it may be.
    pub(super) fn ask(&mut self, point: &[f64]) -> Option<Told> {
        for (span, x) in self.spans.iter().zip(point) {
            self.probe.set(span.field.id, *x);
        }
        Some(match self.probe.answer()? {
            Ok(answer) => {
                self.look_for_more(&answer);
                Ok(self.snap(&answer))
            }
            Err(stop) => Err(stop_text(&stop)),
        })
    }

    fn snap(&self, answer: &Answer) -> Snap {
        let numbers = self.numbers.iter().map(|line| {
            answer
                .get(line.id)?
                .value
                .base()
                .filter(|base| base.is_finite())
        });
        let picks = self.picks.iter().map(|pick| {
            if pick.is_table {
                let mut rows = answer.table_by_id(pick.id)?.rows.iter();
                let row = rows.find(|row| row.chosen)?;
                Some(row.cells.first()?.text_with_unit(self.system))
            } else {
                Some(answer.get(pick.id)?.value.text(self.system))
            }
        });
        Snap {
            numbers: numbers.collect(),
            picks: picks.collect(),
        }
    }

    /// Results and stop cautions that the nominal answer has not.
    fn look_for_more(&mut self, answer: &Answer) {
        let mut add = |text: String| {
            if self.also.len() < MOST_ALSO && !self.also.contains(&text) {
                self.also.push(text);
            }
        };
        for line in &answer.lines {
            if self.nominal.get(line.id).is_none() {
                add(line.label.to_string());
            }
        }
        for caution in answer.cautions.iter().filter(|caution| caution.stop) {
            let known =
                |other: &&crate::sheet::Caution| other.stop && other.before == caution.before;
            if !self.nominal.cautions.iter().any(|other| known(&other)) {
                add(format!("STOP, {}", caution.before));
            }
        }
    }

    /// All corners, with points between where a field is not monotonic and the number of evaluations bears it.
    pub(super) fn corners(&mut self) -> Vec<(Vec<f64>, Told)> {
        let steps_of = |inner: usize| -> Vec<usize> {
            let of = |span: &Span| if span.field.is_monotonic { 2 } else { inner };
            self.spans.iter().map(of).collect()
        };
        let total = |steps: &[usize]| steps.iter().fold(1_usize, |all, n| all.saturating_mul(*n));
        let mut steps = steps_of(5);
        for fewer in [3, 2] {
            if total(&steps) > self.left().saturating_sub(64) {
                steps = steps_of(fewer);
            }
        }
        let mut found = Vec::new();
        for number in 0..total(&steps) {
            let mut rest = number;
            let mut point = Vec::with_capacity(steps.len());
            for (span, &steps) in self.spans.iter().zip(&steps) {
                point.push(span.point(rest % steps.max(1), steps));
                rest /= steps.max(1);
            }
            let Some(told) = self.ask(&point) else { break };
            found.push((point, told));
        }
        found
    }
}

impl Span {
    /// One of so many even places, the ends exactly.
    fn point(&self, step: usize, steps: usize) -> f64 {
        if step == 0 {
            self.low
        } else if step.saturating_add(1) >= steps {
            self.high
        } else {
            self.low + (self.high - self.low) * step as f64 / (steps.saturating_sub(1)) as f64
        }
    }
}

/// Why there is no answer, with its limit and its cure.
fn stop_text(stop: &Stop) -> String {
    match stop {
        Stop::Missing(field) => format!("{field} is needed there"),
        Stop::Fault(fault) => fault.text(),
        Stop::Withheld(withheld) => format!("limit {}: {}", withheld.limit, withheld.reason),
    }
}
