//! How does a step of the working show its formula and its numbers? From one statement: the numbers are the formula with
//! each symbol's value put in, so that the two can't differ.

use super::{Inputs, Source, Text, Work};
use crate::quantity::{Kind, Quantity, System, Unit, decimal, paper, usual, with_unit};

/// A number as the working shows it, in the system in use.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Num {
    base: f64,
    kind: Kind,
    places: Option<(u8, u8)>,
}

/// A number with its kind's usual decimals.
pub fn num<Q: Quantity>(q: Q) -> Num {
    Num {
        base: q.base(),
        kind: Q::KIND,
        places: None,
    }
}

/// A bare number with so many decimals.
pub const fn plain(number: f64, places: u8) -> Num {
    Num {
        base: number,
        kind: Kind::Number,
        places: Some((places, places)),
    }
}

impl Num {
    /// With these decimals (inch, metric).
    pub const fn to(mut self, inch: u8, metric: u8) -> Self {
        self.places = Some((inch, metric));
        self
    }
    fn unit(self, system: System) -> (&'static Unit, u8) {
        let unit = usual(self.kind, system);
        match (self.places, system) {
            (Some((inch, _)), System::Inch) => (unit, inch),
            (Some((_, metric)), System::Metric) => (unit, metric),
            (None, _) => (unit, unit.places),
        }
    }
    fn text(self, system: System) -> String {
        let (unit, places) = self.unit(system);
        let digits = paper(decimal(self.base, unit, places));
        if self.base < 0.0 {
            format!("({digits})")
        } else {
            digits
        }
    }
    fn result(self, system: System) -> String {
        let (unit, places) = self.unit(system);
        with_unit(self.base, unit, places)
    }
}

impl Work {
    /// Adds a step by its formula, the values of its symbols and what it gives: `d = D − L / 48` with `D` and `L` shows
    /// `d = 0.2190 − 1.5000 / 48 = 0.1878 in`. What stands side by side is a product. A symbol is a run of letters,
    /// digits and subscripts that begins with a letter; one without a value stays as it is.
    ///
    /// ```
    /// use benchslate_core::quantity::Length;
    /// use benchslate_core::sheet::{Source, Work, num};
    /// static RULE: Source = Source::practice("A rule of this example");
    /// let mut work = Work::default();
    /// let (d, l) = (Length::from_inches(0.219), Length::from_inches(1.5));
    /// work.put(Default::default(), "Small end", "d = D − L / 48", &[("D", num(d)), ("L", num(l))], num(d - l / 48.0), &RULE);
    /// assert_eq!(work.lines(0), ["d = D − L / 48", "d = 0.2190 − 1.5000 / 48 = 0.1878 in"]);
    /// ```
    pub fn put(
        &mut self,
        system: System,
        title: impl Into<Text>,
        formula: &'static str,
        values: &[(&str, Num)],
        gives: Num,
        source: &'static Source,
    ) {
        let numbers = put_in(formula, values, system);
        let lines = [
            formula.into(),
            format!("{numbers} = {}", gives.result(system)),
        ];
        self.step(title, &lines, source);
    }
}

impl Inputs {
    /// The numbers line of a formula by itself, for a step of several lines.
    pub fn put_in(&self, formula: &str, values: &[(&str, Num)], gives: Num) -> String {
        format!(
            "{} = {}",
            put_in(formula, values, self.system()),
            gives.result(self.system())
        )
    }
}

/// The formula with the values in place of the symbols right of the first equals sign.
fn put_in(formula: &str, values: &[(&str, Num)], system: System) -> String {
    let (result, rest) = formula.split_once(" = ").unwrap_or(("", formula));
    let mut line = if result.is_empty() {
        String::new()
    } else {
        format!("{result} = ")
    };
    let mut chars = rest.chars().peekable();
    // an operand stands before, so that the next one is its factor
    let mut after_operand = false;
    while let Some(c) = chars.next() {
        if starts_word(c) {
            let mut word = String::from(c);
            while let Some(next) = chars.next_if(|next| in_word(*next)) {
                word.push(next);
            }
            let value = values.iter().find(|(symbol, _)| *symbol == word);
            times(&mut line, after_operand);
            match value {
                Some((_, value)) => line.push_str(&value.text(system)),
                None => line.push_str(&word),
            }
            after_operand = value.is_some() || !is_function(&word);
            continue;
        }
        if matches!(c, '(' | '\u{221a}') {
            times(&mut line, after_operand);
            after_operand = false;
        } else if !matches!(c, ' ' | ')' | '\u{b2}' | '\u{b3}' | '\u{b0}') {
            after_operand = false;
        } else if c == ')' {
            after_operand = true;
        }
        line.push(c);
    }
    line.trim_end().to_owned()
}

/// Writes the cross between two factors that stand side by side.
fn times(line: &mut String, after_operand: bool) {
    if after_operand {
        let cross = if line.ends_with(' ') {
            "\u{d7} "
        } else {
            " \u{d7} "
        };
        line.push_str(cross);
    }
}

fn starts_word(c: char) -> bool {
    c.is_alphanumeric() && !matches!(c, '\u{b2}' | '\u{b3}')
}

fn in_word(c: char) -> bool {
    starts_word(c) || matches!(c, '.' | '\u{2032}' | '\u{2080}'..='\u{2089}')
}

fn is_function(word: &str) -> bool {
    matches!(
        word,
        "sin" | "cos" | "tan" | "asin" | "acos" | "atan" | "ln" | "log"
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_stands_side_by_side_is_a_product() {
        let values = [
            ("fz", plain(0.0034, 4)),
            ("r", plain(0.04, 4)),
            ("z", plain(8.0, 0)),
            ("n", plain(110.0, 0)),
            ("v", plain(-2.0, 1)),
        ];
        let told = |formula| put_in(formula, &values, System::Inch);
        assert_eq!(told("F = fz z n"), "F = 0.0034 \u{d7} 8 \u{d7} 110");
        assert_eq!(told("F = fz \u{d7} z"), "F = 0.0034 \u{d7} 8");
        assert_eq!(
            told("h = 2 fz \u{221a}(r \u{2212} r\u{b2})"),
            "h = 2 \u{d7} 0.0034 \u{d7} \u{221a}(0.0400 \u{2212} 0.0400\u{b2})"
        );
        assert_eq!(
            told("n = 12 v / (\u{3c0} z)"),
            "n = 12 \u{d7} (\u{2212}2.0) / (\u{3c0} \u{d7} 8)"
        );
        assert_eq!(told("x = z tan r / 2"), "x = 8 \u{d7} tan 0.0400 / 2");
    }
}
