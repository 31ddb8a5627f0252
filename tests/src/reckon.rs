//! Does a printed line of working come out? Reads `a = 2 × 3.00 in / 7 = 0.857 in` and reckons each side with the rounding
//! of its figures: where the two sides can't be the same, the line is wrong.
//!
//! Units count as written: a ksi is a thousand psi, 1 ft-lb is 12 in-lb, 75% is 0.75; where a formula carries its own
//! factor (12, 60, 1000) they count as one. A line holds if either way of reading makes its sides meet.

/// What became of a line.
#[derive(Clone, PartialEq, Debug)]
pub enum Reckoned {
    /// No two neighbouring sides could be read as arithmetic.
    Unread,
    /// So many pairs of sides were reckoned, and all meet.
    Holds(usize),
    /// These two sides don't meet.
    Wrong(String),
}

/// Least and most that a figure may stand for.
#[derive(Clone, Copy, PartialEq, Debug)]
struct Span(f64, f64);

/// How units count: lengths and forces, percent, times.
#[derive(Clone, Copy)]
struct Scales {
    size: bool,
    percent: bool,
    time: bool,
}

/// A function that a working may name, and how it is figured.
type Function = (&'static str, fn(f64) -> f64);

#[allow(clippy::indexing_slicing)] // made while compiling: a wrong index stops the build
const ALL_SCALES: [Scales; 8] = {
    let mut all = [Scales {
        size: false,
        percent: false,
        time: false,
    }; 8];
    let mut n = 0;
    while n < 8 {
        all[n] = Scales {
            size: n & 1 > 0,
            percent: n & 2 > 0,
            time: n & 4 > 0,
        };
        n += 1;
    }
    all
};

/// Reckons one printed line.
///
/// ```
/// use benchslate_tests::reckon::{Reckoned, reckon};
/// assert_eq!(reckon("n = 12 × 65.6 / (π × 2.5000) = 100.3 rpm"), Reckoned::Holds(1));
/// assert!(matches!(reckon("t = 7.4750 / 2.00 = 224 s"), Reckoned::Wrong(_)));
/// assert_eq!(reckon("t = 60 × 7.4750 / 2.00 = 224 s"), Reckoned::Holds(1));
/// assert_eq!(reckon("A = √(d (D − d))"), Reckoned::Unread);
/// ```
pub fn reckon(line: &str) -> Reckoned {
    let mut held = 0;
    for clause in clauses(line) {
        let sides: Vec<&str> = clause.split('=').map(str::trim).collect();
        for pair in sides.windows(2) {
            let &[left, right] = pair else { continue };
            if !left.contains(|c: char| "+−-×·÷/^√∛²³(".contains(c)) {
                continue;
            }
            match meets(left, right) {
                None => {}
                Some(true) => held += 1,
                Some(false) => return Reckoned::Wrong(format!("{left} = {right}")),
            }
        }
    }
    if held > 0 {
        Reckoned::Holds(held)
    } else {
        Reckoned::Unread
    }
}

fn clauses(line: &str) -> impl Iterator<Item = &str> {
    line.split(", ")
        .flat_map(|part| part.split(": "))
        .flat_map(|part| part.split("; "))
        .flat_map(|part| part.split(" → "))
}

fn meets(left: &str, right: &str) -> Option<bool> {
    let mut read = false;
    for scales in ALL_SCALES {
        let one = Reader::of(left, scales).whole()?;
        let other = Reader::of(right, scales).leading()?;
        read = true;
        let room = 1e-9 * (one.1.abs() + other.1.abs());
        if one.0 <= other.1 + room && other.0 <= one.1 + room {
            return Some(true);
        }
    }
    read.then_some(false)
}

struct Reader {
    text: Vec<char>,
    at: usize,
    scales: Scales,
    /// A result: a whole number may be a rounded one.
    rounded: bool,
}

/// Symbols of units, the longer first; what each counts, and of which scale it is (s size, p percent, t time, - none).
const UNITS: &[(&str, f64, char)] = &[
    ("hp per in³/min", 1.0, '-'),
    ("µin/(in·°F)", 1.0, '-'),
    ("µm/(m·K)", 1.0, '-'),
    ("thou/rev", 0.001, 's'),
    ("thou/tooth", 0.001, 's'),
    ("in³/min", 1.0, '-'),
    ("cm³/min", 1.0, '-'),
    ("mm³/min", 0.001, 's'),
    ("mm/tooth", 1.0, '-'),
    ("in/tooth", 1.0, '-'),
    ("mm/min", 1.0, '-'),
    ("in/min", 1.0, '-'),
    ("ft/min", 1.0, '-'),
    ("mm/rev", 1.0, '-'),
    ("in/rev", 1.0, '-'),
    ("m/min", 1.0, '-'),
    ("ft-lb", 12.0, 's'),
    ("in-lb", 1.0, 's'),
    ("N/mm²", 1.0, 's'),
    ("thou", 0.001, 's'),
    ("tpi", 1.0, '-'),
    ("rpm", 1.0, '-'),
    ("sfm", 1.0, '-'),
    ("lbf", 1.0, 's'),
    ("N·m", 1000.0, 's'),
    ("psi", 1.0, 's'),
    ("ksi", 1000.0, 's'),
    ("MPa", 1.0, 's'),
    ("GPa", 1000.0, 's'),
    ("min", 60.0, 't'),
    ("in²", 1.0, 's'),
    ("mm²", 1.0, 's'),
    ("in", 1.0, 's'),
    ("mm", 1.0, 's'),
    ("µm", 0.001, 's'),
    ("µin", 0.000001, 's'),
    ("ft", 12.0, 's'),
    ("kN", 1000.0, 's'),
    ("kW", 1.0, '-'),
    ("hp", 1.0, '-'),
    ("°F", 1.0, '-'),
    ("°C", 1.0, '-'),
    ("HB", 1.0, '-'),
    ("K", 1.0, '-'),
    ("N", 1.0, 's'),
    ("W", 1.0, '-'),
    ("m", 1000.0, 's'),
    ("s", 1.0, 't'),
    ("h", 3600.0, 't'),
    ("%", 0.01, 'p'),
];

impl Reader {
    fn of(text: &str, scales: Scales) -> Self {
        Self {
            text: text.chars().collect(),
            at: 0,
            scales,
            rounded: false,
        }
    }
    /// The whole text as an expression.
    fn whole(mut self) -> Option<Span> {
        let span = self.sum()?;
        self.space();
        (self.at == self.text.len()).then_some(span)
    }
    /// What stands first, words behind it passed over.
    fn leading(mut self) -> Option<Span> {
        self.rounded = true;
        let span = self.sum()?;
        self.space();
        let rest = self.text.get(self.at..).unwrap_or_default();
        rest.iter()
            .all(|c| c.is_alphanumeric() || " .,()'’-–/".contains(*c))
            .then_some(span)
    }
    fn space(&mut self) {
        while self.peek() == Some(' ') {
            self.at += 1;
        }
    }
    fn peek(&self) -> Option<char> {
        self.text.get(self.at).copied()
    }
    fn eat(&mut self, any: &str) -> Option<char> {
        self.space();
        let found = self.peek().filter(|c| any.contains(*c))?;
        self.at += 1;
        Some(found)
    }
    fn sum(&mut self) -> Option<Span> {
        let mut all = self.product()?;
        loop {
            let before = self.at;
            match self.eat("+−-") {
                None => return Some(all),
                Some(sign) => {
                    let Some(next) = self.product() else {
                        self.at = before;
                        return Some(all);
                    };
                    all = if sign == '+' {
                        Span(all.0 + next.0, all.1 + next.1)
                    } else {
                        Span(all.0 - next.1, all.1 - next.0)
                    };
                }
            }
        }
    }
    fn product(&mut self) -> Option<Span> {
        let mut all = self.power()?;
        loop {
            let sign = self.eat("×·÷/");
            let before = self.at;
            self.space();
            let starts = self
                .peek()
                .is_some_and(|c| c.is_ascii_digit() || "π√∛([".contains(c));
            if sign.is_none() && !starts {
                self.at = before;
                return Some(all);
            }
            let next = self.power()?;
            all = match sign {
                Some('÷' | '/') => {
                    if next.0 <= 0.0 && next.1 >= 0.0 {
                        return None;
                    }
                    corners(all, Span(1.0 / next.1, 1.0 / next.0))
                }
                _ => corners(all, next),
            };
        }
    }
    fn power(&mut self) -> Option<Span> {
        let mut span = self.primary()?;
        loop {
            let exponent = if self.peek() == Some('²') {
                self.at += 1;
                Span(2.0, 2.0)
            } else if self.peek() == Some('³') {
                self.at += 1;
                Span(3.0, 3.0)
            } else if self.peek() == Some('^') {
                self.at += 1;
                self.primary()?
            } else if let Some(exponent) = self.superscript() {
                exponent
            } else {
                return Some(span);
            };
            span = raised(span, exponent)?;
        }
    }
    /// `⁻⁶`
    fn superscript(&mut self) -> Option<Span> {
        let minus = self.peek() == Some('⁻');
        let start = self.at;
        self.at += usize::from(minus);
        let mut value = None;
        while let Some(digit) = self
            .peek()
            .and_then(|c| "⁰¹²³⁴⁵⁶⁷⁸⁹".chars().position(|d| d == c))
        {
            value = Some(value.unwrap_or(0.0) * 10.0 + digit as f64);
            self.at += 1;
        }
        let Some(value) = value else {
            self.at = start;
            return None;
        };
        let value: f64 = if minus { -value } else { value };
        Some(Span(value, value))
    }
    fn primary(&mut self) -> Option<Span> {
        self.space();
        match self.peek()? {
            '−' | '-' => {
                self.at += 1;
                let span = self.power()?;
                Some(Span(-span.1, -span.0))
            }
            '+' => {
                self.at += 1;
                self.power()
            }
            '(' => self.bracket(')'),
            '[' => self.bracket(']'),
            'π' => {
                self.at += 1;
                Some(Span(core::f64::consts::PI, core::f64::consts::PI))
            }
            root @ ('√' | '∛') => {
                self.at += 1;
                let span = self.primary()?;
                let of = |x: f64| {
                    if root == '√' {
                        libm::sqrt(x.max(0.0))
                    } else {
                        libm::cbrt(x)
                    }
                };
                Some(Span(of(span.0), of(span.1)))
            }
            c if c.is_ascii_digit() => self.number(),
            _ => self.function(),
        }
    }
    fn bracket(&mut self, close: char) -> Option<Span> {
        self.at += 1;
        let span = self.sum()?;
        self.space();
        (self.peek()? == close).then(|| self.at += 1)?;
        Some(span)
    }
    fn function(&mut self) -> Option<Span> {
        let functions: [Function; 5] = [
            ("sin", |x| libm::sin(x.to_radians())),
            ("cos", |x| libm::cos(x.to_radians())),
            ("tan", |x| libm::tan(x.to_radians())),
            ("log10", libm::log10),
            ("ln", libm::log),
        ];
        let rest: String = self.text.get(self.at..)?.iter().collect();
        let (name, of) = functions
            .into_iter()
            .find(|(name, _)| rest.starts_with(name))?;
        self.at += name.len();
        let span = self.primary()?;
        let (a, b) = (of(span.0), of(span.1));
        Some(Span(a.min(b), a.max(b)))
    }
    fn number(&mut self) -> Option<Span> {
        let start = self.at;
        while self.peek().is_some_and(|c| c.is_ascii_digit() || c == '.') {
            self.at += 1;
        }
        // a full stop that ends the sentence
        if self.text.get(self.at.checked_sub(1)?) == Some(&'.') {
            self.at -= 1;
        }
        let digits: String = self.text.get(start..self.at)?.iter().collect();
        let value: f64 = digits.parse().ok()?;
        if self.peek() == Some(':') {
            return self.clock(value);
        }
        let half = half_of_last(&digits, self.rounded);
        // `2(3)` names a stage and `1-1/2` a mixed fraction: no arithmetic
        let stands = self.peek() == Some('(');
        let mixed = self.peek() == Some('-')
            && self.text.get(self.at + 1).is_some_and(char::is_ascii_digit);
        if stands || mixed {
            return None;
        }
        let factor = self.unit();
        Some(Span((value - half) * factor, (value + half) * factor))
    }
    /// `3:44 min`: in seconds where times count, else in minutes.
    fn clock(&mut self, minutes: f64) -> Option<Span> {
        self.at += 1;
        let two: String = self.text.get(self.at..self.at + 2)?.iter().collect();
        let seconds: f64 = two.parse().ok()?;
        self.at += 2;
        self.space();
        for c in "min".chars() {
            if self.peek() == Some(c) {
                self.at += 1;
            }
        }
        let all = minutes * 60.0 + seconds;
        let factor = if self.scales.time { 1.0 } else { 1.0 / 60.0 };
        Some(Span((all - 0.5) * factor, (all + 0.5) * factor))
    }
    fn unit(&mut self) -> f64 {
        let before = self.at;
        self.space();
        if self.peek() == Some('°') && !matches!(self.text.get(self.at + 1), Some('F' | 'C')) {
            self.at += 1;
            return 1.0;
        }
        let rest: String = self
            .text
            .get(self.at..)
            .unwrap_or_default()
            .iter()
            .collect();
        for (symbol, factor, scale) in UNITS {
            let Some(after) = rest.strip_prefix(symbol) else {
                continue;
            };
            if after.starts_with(|c: char| c.is_alphanumeric()) && *symbol != "%" {
                continue;
            }
            self.at += symbol.chars().count();
            let counts = match scale {
                's' => self.scales.size,
                'p' => self.scales.percent,
                't' => self.scales.time,
                _ => false,
            };
            return if counts { *factor } else { 1.0 };
        }
        self.at = before;
        1.0
    }
}

/// Half of the last printed place; a whole number under 100 is exact where it is no result.
fn half_of_last(digits: &str, rounded: bool) -> f64 {
    match digits.split_once('.') {
        Some((_, decimals)) => 0.5 * libm::pow(10.0, -(decimals.len() as f64)),
        None if digits.len() <= 2 && !rounded => 0.0,
        None => {
            let zeros = digits.len() - digits.trim_end_matches('0').len();
            0.5 * libm::pow(10.0, zeros.min(digits.len().saturating_sub(3)) as f64)
        }
    }
}

fn corners(a: Span, b: Span) -> Span {
    let all = [a.0 * b.0, a.0 * b.1, a.1 * b.0, a.1 * b.1];
    Span(
        all.iter().copied().fold(f64::INFINITY, f64::min),
        all.iter().copied().fold(f64::NEG_INFINITY, f64::max),
    )
}

fn raised(base: Span, exponent: Span) -> Option<Span> {
    let whole = exponent.0 == exponent.1 && exponent.0 == libm::floor(exponent.0);
    if base.0 < 0.0 && !whole {
        return None;
    }
    let mut all = vec![
        libm::pow(base.0, exponent.0),
        libm::pow(base.0, exponent.1),
        libm::pow(base.1, exponent.0),
        libm::pow(base.1, exponent.1),
    ];
    if base.0 < 0.0 && base.1 > 0.0 {
        all.push(0.0);
    }
    Some(Span(
        all.iter().copied().fold(f64::INFINITY, f64::min),
        all.iter().copied().fold(f64::NEG_INFINITY, f64::max),
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_that_hold() {
        for line in [
            "n = 1725 rpm × (3.0000 × 4.0000) ÷ (9.0000 × 6.0000) × (1 − 2.0%)^2 = 368.2 rpm",
            "A = π/4 (0.3750 − 0.9743 × 0.06250)² = 0.0775 in²",
            "Fp = 0.0775 × 85.0 ksi = 6587 lbf",
            "F = 75.0% × 6587 = 4940 lbf",
            "T = 0.2000 × 0.3750 in × 4940 lbf = 30.9 ft-lb",
            "R = 1.4235^(2 × 4) = 16.86",
            "M = 0.57735 × 2900 × 1.25 × (9.525 − 7.978)² × (9.525 + 2 × 7.978) / 24000 = 5.32",
            "ΔT = (1.90 thou + 1.00 thou)/(6.50 × 10⁻⁶ × 1.0000 in) = 446 °F",
            "0.2495 − 0.2503 = −0.0008",
            "t = 60 × 7.4750 / 2.00 = 3:44 min",
            "% = 100 × (0.2500 − 0.2010) ÷ (1.299038 × 0.05000) = 75%",
            "n = 1 + (2 − 1) × 1 + (5 − 1) × 2 = 10",
            "p = 1.90 thou / (1.0000 in ((1.6667 + 0.2920)/30023 ksi + (1.0000 − 0.2920)/30023 ksi)) = 21.39 ksi",
        ] {
            assert!(
                matches!(reckon(line), Reckoned::Holds(_)),
                "{line}: {:?}",
                reckon(line)
            );
        }
    }

    #[test]
    fn lines_that_do_not() {
        for line in [
            "t = (7.0000 + 0.4899 + 0.0000 + 0.1250) / 3.00 = 152.3 s",
            "Fp = 0.0775 × 85.0 ksi = 6687 lbf",
            "n = 1 + (2 − 1) × 1 + (5 − 1) × 2 = 11",
            "0.2495 − 0.2503 = 0.0008",
        ] {
            assert!(
                matches!(reckon(line), Reckoned::Wrong(_)),
                "{line}: {:?}",
                reckon(line)
            );
        }
    }
}
