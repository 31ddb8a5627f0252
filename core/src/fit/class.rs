//! What is a tolerance class: hole or shaft, which letter, which grade?

use core::fmt;

/// The two members of a fit.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Member {
    /// Internal feature; written with capital letters.
    Hole,
    /// External feature; written with small letters.
    Shaft,
}

/// Position of the tolerance zone. The same letters serve holes (capital) and shafts (small).
#[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Debug)]
#[expect(missing_docs, reason = "the letters of ISO 286-1 are their own names")]
#[rustfmt::skip]
pub enum Letter { A, B, C, Cd, D, E, Ef, F, Fg, G, H, Js, J, K, M, N, P, R, S, T, U, V, X, Y, Z, Za, Zb, Zc }

/// All letters in the order of the standard, with the small-letter spelling.
#[rustfmt::skip]
pub const LETTERS: [(Letter, &str, &str); 28] = {
    use Letter::*;
    [
        (A, "a", "A"), (B, "b", "B"), (C, "c", "C"), (Cd, "cd", "CD"), (D, "d", "D"), (E, "e", "E"), (Ef, "ef", "EF"),
        (F, "f", "F"), (Fg, "fg", "FG"), (G, "g", "G"), (H, "h", "H"), (Js, "js", "JS"), (J, "j", "J"), (K, "k", "K"),
        (M, "m", "M"), (N, "n", "N"), (P, "p", "P"), (R, "r", "R"), (S, "s", "S"), (T, "t", "T"), (U, "u", "U"),
        (V, "v", "V"), (X, "x", "X"), (Y, "y", "Y"), (Z, "z", "Z"), (Za, "za", "ZA"), (Zb, "zb", "ZB"), (Zc, "zc", "ZC"),
    ]
};

impl Letter {
    /// As written for that member: `H` for a hole, `h` for a shaft.
    pub fn text(self, member: Member) -> &'static str {
        let found = LETTERS.iter().find(|row| row.0 == self);
        found.map_or("", |row| if member == Member::Hole { row.2 } else { row.1 })
    }
}

/// A standard tolerance grade, IT01 (finest) to IT18.
#[derive(Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Debug)]
pub struct Grade(i8);

impl Grade {
    /// IT01.
    pub const IT01: Self = Self(-1);

    /// IT0 to IT18 by number; IT01 is [`Grade::IT01`]. `None` outside that.
    pub const fn of(number: u8) -> Option<Self> {
        if number <= 18 {
            Some(Self(number as i8))
        } else {
            None
        }
    }

    /// -1 for IT01, otherwise the number.
    pub const fn number(self) -> i8 {
        self.0
    }
}

impl fmt::Display for Grade {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.0 < 0 {
            f.write_str("01")
        } else {
            write!(f, "{}", self.0)
        }
    }
}

/// A tolerance class of ISO 286, such as H7 (a hole) or m6 (a shaft).
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub struct FitClass {
    /// Hole or shaft.
    pub member: Member,
    /// Position of the zone.
    pub letter: Letter,
    /// Width of the zone.
    pub grade: Grade,
}

impl FitClass {
    /// A hole's class; `None` where the grade is not 0 … 18.
    pub const fn hole(letter: Letter, grade: u8) -> Option<Self> {
        Self::new(Member::Hole, letter, grade)
    }

    /// A shaft's class; `None` where the grade is not 0 … 18.
    pub const fn shaft(letter: Letter, grade: u8) -> Option<Self> {
        Self::new(Member::Shaft, letter, grade)
    }

    const fn new(member: Member, letter: Letter, grade: u8) -> Option<Self> {
        match Grade::of(grade) {
            Some(grade) => Some(Self {
                member,
                letter,
                grade,
            }),
            None => None,
        }
    }
}

impl fmt::Display for FitClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}{}", self.letter.text(self.member), self.grade)
    }
}
