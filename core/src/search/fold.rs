//! When are two words the same word? Lower case, without the marks of grammar: plural s, -ing, -ed and a last e.

/// Words that say nothing of the matter.
const FILLERS: &str = " a about again an and any are as at be before big by can could do does for from get give given go goes \
    have how i if in into is it its know m me much must my need of on one or our out s set should so some than that the \
    their them then there this to too use want was we what when where which who why will with would you your ";

/// True of a word that says nothing of the matter: "what", "the", "for".
pub(super) fn is_filler(word: &str) -> bool {
    FILLERS.match_indices(word).any(|(at, _)| {
        let end = at.saturating_add(word.len());
        at > 0
            && FILLERS.as_bytes().get(at.saturating_sub(1)) == Some(&b' ')
            && FILLERS.as_bytes().get(end) == Some(&b' ')
    })
}

/// True where a digit stands in it: a size, a call, a mark.
pub(super) fn is_mark(word: &str) -> bool {
    word.bytes().any(|b| b.is_ascii_digit())
}

/// The pieces of a text as they were typed, without quotes, brackets and the marks that end a sentence.
pub(super) fn pieces(text: &str) -> Vec<String> {
    let mut plain = String::with_capacity(text.len());
    for c in text
        .chars()
        .filter(|c| !c.is_control() || c.is_whitespace())
    {
        match c {
            '\u{201d}' | '\u{2033}' => plain.push('"'),
            '\u{2019}' | '\u{2018}' => plain.push('\''),
            '\u{d7}' => plain.push('x'),
            '\u{2212}' | '\u{2010}' | '\u{2011}' => plain.push('-'),
            '(' | ')' | '?' | '!' | ';' | '\u{201c}' => plain.push(' '),
            c => plain.push(c),
        }
    }
    let trim = |piece: &str| {
        let piece = piece
            .trim_end_matches([',', ':', '.'])
            .trim_start_matches([',', ':']);
        piece.to_owned()
    };
    plain
        .split_whitespace()
        .map(trim)
        .filter(|piece| !piece.is_empty())
        .collect()
}

/// The words of one piece: a mark stays whole, the rest is parted at what is no letter.
pub(super) fn words(piece: &str) -> Vec<String> {
    let folded = piece.to_ascii_lowercase();
    if is_mark(&folded) {
        let short = folded.strip_prefix("0.").map(|rest| format!(".{rest}"));
        return vec![short.unwrap_or(folded)];
    }
    folded
        .replace('\'', "")
        .split(|c: char| c.is_ascii() && !c.is_ascii_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(ToOwned::to_owned)
        .collect()
}

/// The stem of a folded word; marks and short words are their own.
pub(super) fn stem(word: &str) -> String {
    let whole = word.len() < 4 || is_mark(word) || !word.is_ascii();
    if whole {
        return word.to_owned();
    }
    let mut stem = singular(word);
    for (end, but) in [("ing", ""), ("ed", "eed")] {
        let cut = stem
            .strip_suffix(end)
            .filter(|_| but.is_empty() || !stem.ends_with(but));
        if let Some(cut) = cut.filter(|cut| cut.len() >= 3 && has_vowel(cut)) {
            stem = single_end(cut);
            break;
        }
    }
    if stem.len() > 3 && stem.ends_with('e') {
        stem.pop();
    }
    stem
}

fn has_vowel(word: &str) -> bool {
    word.contains(['a', 'e', 'i', 'o', 'u', 'y'])
}

fn singular(word: &str) -> String {
    if let Some(head) = word.strip_suffix("ies").filter(|head| head.len() > 1) {
        return format!("{head}y");
    }
    for end in ["ches", "shes", "xes", "sses"] {
        if word.ends_with(end) {
            return word.strip_suffix("es").unwrap_or(word).to_owned();
        }
    }
    let kept = ["ss", "us", "is"].iter().any(|end| word.ends_with(end));
    match word.strip_suffix('s') {
        Some(head) if !kept => head.to_owned(),
        _ => word.to_owned(),
    }
}

/// "tapp" of "tapping" is "tap"; a double l, s or z belongs to the word.
fn single_end(stem: &str) -> String {
    match stem.as_bytes() {
        [.., a, b] if a == b && !matches!(b, b'l' | b's' | b'z' | b'e') => stem
            .get(..stem.len().saturating_sub(1))
            .unwrap_or(stem)
            .to_owned(),
        _ => stem.to_owned(),
    }
}

/// One letter wrong, missing, too many, or two changed about: told of words of five letters and more.
pub(super) fn one_off(typed: &str, known: &str) -> bool {
    let (a, b) = (typed.as_bytes(), known.as_bytes());
    if a.len() < 5 || b.len() < 4 || a.len().abs_diff(b.len()) > 1 {
        return false;
    }
    let same = a.iter().zip(b).take_while(|(x, y)| x == y).count();
    let (a, b) = (a.get(same..).unwrap_or(&[]), b.get(same..).unwrap_or(&[]));
    match (a, b) {
        ([], _) | (_, []) => true,
        ([_, a1 @ ..], [_, b1 @ ..]) => a1 == b1 || a1 == b || a == b1 || changed_about(a, b),
    }
}

fn changed_about(a: &[u8], b: &[u8]) -> bool {
    matches!((a, b), ([p, q, a2 @ ..], [r, s, b2 @ ..]) if p == s && q == r && a2 == b2)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_of_one_kind_have_one_stem() {
        for (one, other) in [
            ("drills", "drill"),
            ("tapping", "tap"),
            ("milling", "mill"),
            ("reaming", "ream"),
            ("bushes", "bush"),
            ("pulleys", "pulley"),
            ("boring", "bore"),
            ("stripped", "strip"),
            ("turning", "turn"),
        ] {
            assert_eq!(stem(one), stem(other), "{one}");
        }
        for word in ["speed", "feed", "brass", "radius", "spring"] {
            assert_eq!(stem(word), word);
        }
    }

    #[test]
    fn one_letter_may_be_wrong() {
        for (typed, known) in [
            ("backlsah", "backlash"),
            ("tourque", "torque"),
            ("clearence", "clearance"),
            ("torqe", "torque"),
        ] {
            assert!(one_off(typed, known), "{typed}");
        }
        for (typed, known) in [("shim", "trim"), ("bolts", "taper"), ("tapers", "papery")] {
            assert!(!one_off(typed, known), "{typed}");
        }
    }
}
