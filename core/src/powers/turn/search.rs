//! How is a sheet searched along one field? Askings that are counted, places halved down, and what counts as the wanted value.

use super::super::probe::Probe;
use crate::quantity::{Exact, Kind, Unit};
use crate::sheet::Inputs;

/// A place of the field and what the result is there.
pub(super) type At = (f64, f64);

/// Halvings of one interval: past the last bit of a double.
const HALVINGS: usize = 64;
/// A gap in the result up to this share of it is no jump: sheets set lengths to 0.1 nm on the way.
const GRAIN: f64 = 1e-5;

/// A search along one field.
pub(super) struct Search<'a> {
    probe: Probe,
    inputs: &'a Inputs,
    field: &'static str,
    result: &'a str,
    /// Only whole numbers may stand in the field.
    pub(super) counts: bool,
    is_length: bool,
    /// What is wanted, base unit.
    pub(super) wanted: f64,
    /// A thousandth of the last digit in which the field is printed, base unit.
    pub(super) fine: f64,
    /// The printed unit, and the last digit of the wanted value in it.
    print: Option<(&'static Unit, f64)>,
}

impl<'a> Search<'a> {
    /// A search that may ask the sheet so many times.
    pub(super) fn new(
        inputs: &'a Inputs,
        field: &'static str,
        result: &'a str,
        wanted: f64,
        most: usize,
    ) -> Self {
        let is = |kind| {
            inputs
                .sheet()
                .field(field)
                .is_some_and(|field| field.kind_is(kind))
        };
        Self {
            probe: Probe::new(inputs, most),
            inputs,
            field,
            result,
            counts: is(Kind::Count),
            is_length: is(Kind::Length),
            wanted,
            fine: fine_of(inputs, field),
            print: None,
        }
    }

    /// The result with the field set; none where there is none.
    pub(super) fn at(&mut self, x: f64) -> Option<f64> {
        if self.print.is_some() {
            return self.probe.at(self.field, x, self.result);
        }
        self.probe.set(self.field, x);
        let answer = self.probe.answer()?.ok()?;
        let line = answer.get(self.result)?;
        let wanted = line.value.with_base(self.wanted);
        self.print = wanted.last_digit(self.inputs.system());
        line.value.base().filter(|base| base.is_finite())
    }

    /// How often the sheet was asked.
    pub(super) const fn asked(&self) -> usize {
        self.probe.asked()
    }

    /// A result in the unit in which it is printed.
    fn shown(&self, base: f64) -> f64 {
        self.print.map_or(base, |(unit, _)| unit.from_base(base))
    }

    /// Half of the last printed digit, in the printed unit.
    pub(super) fn half_digit(&self) -> f64 {
        self.print.map_or(1e-12, |(_, digit)| 0.5 * digit)
    }

    /// How far a result is from the wanted one, in the printed unit.
    pub(super) fn off(&self, gives: f64) -> f64 {
        self.shown(gives) - self.shown(self.wanted)
    }

    /// How far two results are apart, in the printed unit.
    fn apart(&self, a: f64, b: f64) -> f64 {
        (self.shown(a) - self.shown(b)).abs()
    }

    /// The wanted value to its printed digits.
    pub(super) fn meets(&self, gives: f64) -> bool {
        self.off(gives).abs() <= self.half_digit() * (1.0 + 1e-9)
    }

    /// The wanted value but for what arithmetic leaves.
    pub(super) fn is_on(&self, gives: f64) -> bool {
        let size = self.shown(self.wanted).abs().max(self.half_digit());
        self.off(gives).abs() <= 1e-11 * size
    }

    /// True where these results are one and the same but for what arithmetic leaves.
    pub(super) fn is_flat(&self, low: f64, high: f64) -> bool {
        let size = self.shown(low).abs().max(self.shown(high).abs());
        self.apart(low, high) <= (1e-9 * size).max(1e-3 * self.half_digit())
    }

    /// True where the result leaps between two places that lie side by side.
    pub(super) fn leaps(&self, a: f64, b: f64) -> bool {
        let size = self.shown(a).abs().max(self.shown(b).abs());
        self.apart(a, b) > (GRAIN * size).max(self.half_digit())
    }

    /// A place between two; none where they lie side by side.
    pub(super) fn between(&self, a: f64, b: f64) -> Option<f64> {
        let middle = f64::midpoint(a, b);
        let x = if self.counts {
            libm::floor(middle)
        } else {
            middle
        };
        let side_by_side = !self.counts && (b - a).abs() <= 1e-13 * a.abs().max(b.abs());
        (x > a.min(b) && x < a.max(b) && !side_by_side).then_some(x)
    }

    /// The farthest place from `inside` toward `outside` at which the result still holds to a rule, to a thousandth of the
    /// field's last digit.
    pub(super) fn edge(&mut self, inside: At, outside: f64, holds: fn(&Self, f64) -> bool) -> At {
        self.edge_to(inside, outside, self.fine, holds)
    }

    /// The farthest place from `inside` toward `outside` that still has an answer, to the last bits.
    pub(super) fn window(&mut self, inside: At, outside: f64) -> At {
        let fine = 1e-11 * outside.abs().max(inside.0.abs());
        self.edge_to(inside, outside, fine, |_, _| true)
    }

    fn edge_to(
        &mut self,
        inside: At,
        outside: f64,
        fine: f64,
        holds: fn(&Self, f64) -> bool,
    ) -> At {
        let (mut inside, mut outside) = (inside, outside);
        for _ in 0..HALVINGS {
            if (outside - inside.0).abs() <= fine {
                break;
            }
            let Some(x) = self.between(inside.0, outside) else {
                break;
            };
            match self.at(x) {
                Some(gives) if holds(self, gives) => inside = (x, gives),
                _ => outside = x,
            }
        }
        inside
    }

    /// Closes in on the place between two at which the result passes the wanted value, by halving and by the chord in
    /// turn. Ends with the two nearest places, or with the place that has no answer.
    pub(super) fn close_in(&mut self, a: At, b: At) -> Result<(At, At), f64> {
        let (mut a, mut b) = (a, b);
        for turn in 0..2 * HALVINGS {
            let Some(half) = self.between(a.0, b.0) else {
                break;
            };
            let (da, db) = (self.off(a.1), self.off(b.1));
            let chord = a.0 + (b.0 - a.0) * da / (da - db);
            let inside = chord > a.0.min(b.0) && chord < a.0.max(b.0);
            let x = if turn % 2 == 0 && inside && !self.counts {
                chord
            } else {
                half
            };
            let Some(gives) = self.at(x) else {
                return Err(x);
            };
            if self.is_on(gives) {
                return Ok(((x, gives), (x, gives)));
            }
            if (self.off(gives) < 0.0) == (da < 0.0) {
                a = (x, gives);
            } else {
                b = (x, gives);
            }
        }
        Ok((a, b))
    }

    /// The nearer of two places to the wanted value.
    pub(super) fn nearer(&self, a: At, b: At) -> At {
        if self.off(a.1).abs() <= self.off(b.1).abs() {
            a
        } else {
            b
        }
    }

    /// The place as it can be typed: a length to 0.1 nm, the rest to 12 figures; or the next such place that gives the
    /// wanted value, where this one misses it.
    pub(super) fn typed(&mut self, at: At) -> At {
        if self.counts {
            return at;
        }
        let (middle, step) = self.grid(at.0);
        let mut first = None;
        for x in [middle, middle - step, middle + step] {
            if x == at.0 && self.meets(at.1) {
                return at;
            }
            if let Some(gives) = self.at(x) {
                if self.meets(gives) {
                    return (x, gives);
                }
                first.get_or_insert((x, gives));
            }
        }
        first.unwrap_or(at)
    }

    /// The nearest number that a text can hold, and how far the next one is, base unit.
    fn grid(&self, x: f64) -> (f64, f64) {
        let exact = self.is_length.then(|| Exact::from_mm(x)).flatten();
        if let Some(exact) = exact {
            return (exact.mm(), 1e-7);
        }
        let Some(unit) = unit_of(self.inputs, self.field) else {
            return (x, 0.0);
        };
        let number = unit.from_base(x);
        if number == 0.0 || !number.is_finite() {
            return (x, 0.0);
        }
        let power = libm::pow(10.0, 11.0 - libm::floor(libm::log10(number.abs())));
        let near = libm::round(number * power);
        let middle = unit.to_base(near / power);
        (middle, (unit.to_base((near + 1.0) / power) - middle).abs())
    }

    /// The roundest place in an interval at which the result holds, in the unit that the field is typed in.
    pub(super) fn roundest(&mut self, from: At, to: f64) -> At {
        if self.counts {
            let x = libm::floor(f64::midpoint(from.0, to));
            return match self.at(x) {
                Some(gives) if self.meets(gives) => (x, gives),
                _ => from,
            };
        }
        let Some(unit) = unit_of(self.inputs, self.field) else {
            return from;
        };
        let middle = unit.from_base(f64::midpoint(from.0, to));
        let mut power = 1.0;
        for _ in 0..8 {
            let x = unit.to_base(libm::round(middle * power) / power);
            if x > from.0
                && x < to
                && let Some(gives) = self.at(x)
                && self.meets(gives)
            {
                return (x, gives);
            }
            power *= 10.0;
        }
        from
    }
}

/// The unit that a field is typed in.
fn unit_of(inputs: &Inputs, field: &str) -> Option<&'static Unit> {
    let declared = inputs.sheet().field(field)?;
    inputs
        .unit(field)
        .or_else(|| declared.unit(inputs.system()))
}

fn fine_of(inputs: &Inputs, field: &str) -> f64 {
    let Some(unit) = unit_of(inputs, field) else {
        return 0.0;
    };
    let own = inputs.number(field).unwrap_or_else(|| unit.to_base(1.0));
    let step = libm::pow(10.0, -3.0 - f64::from(unit.places));
    let fine = (unit.to_base(unit.from_base(own) + step) - own).abs();
    if fine.is_finite() { fine } else { 0.0 }
}
