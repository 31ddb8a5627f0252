//! Which number do plain digits with a point mean? The nearest `f64`, as the standard library reads it, without the
//! tables for exponents that it would bring into the browser.

/// Reads digits with at most one point, as `12`, `0.75`, `.5` or `5.`: the nearest `f64`, ties to even. Nothing for
/// any other sign, for no digit, and past 38 digits.
pub(crate) fn number(text: &str) -> Option<f64> {
    let (mut digits, mut places, mut count, mut pointed) = (0_u128, 0_u32, 0_u32, false);
    for c in text.chars() {
        if c == '.' && !pointed {
            pointed = true;
            continue;
        }
        digits = digits
            .checked_mul(10)?
            .checked_add(u128::from(c.to_digit(10)?))?;
        places += u32::from(pointed);
        count += 1;
    }
    let under = 10_u128.checked_pow(places).filter(|_| count > 0)?;
    if digits < 1 << 53 && places <= 22 {
        // both are exact, so that one division rounds once
        return Some(digits as f64 / under as f64);
    }
    // The quotient to more than 64 binary digits, the last of them set where anything is left over.
    let (mut quotient, mut rest, mut shift) = (digits / under, digits % under, 0);
    while quotient < 1 << 64 && shift < 256 {
        rest *= 2;
        quotient = quotient * 2 + u128::from(rest >= under);
        rest -= if rest >= under { under } else { 0 };
        shift += 1;
    }
    Some(libm::scalbn(
        (quotient | u128::from(rest > 0)) as f64,
        -shift,
    ))
}

#[cfg(test)]
mod tests {
    use super::number;

    #[test]
    fn agrees_with_std_to_the_last_bit() {
        let mut random = fastrand::Rng::with_seed(3);
        for _ in 0..200_000 {
            let count = random.usize(1..=38);
            let mut text: String = (0..count).map(|_| random.digit(10)).collect();
            if random.bool() {
                text.insert(random.usize(0..=count), '.');
            }
            assert_eq!(number(&text), text.parse().ok(), "{text}");
        }
        // halfway between two neighbours of 2^53, and a little above
        for text in [
            "9007199254740993",
            "9007199254740993.00000000000000000001",
            "0.1",
            "000",
            "5.",
            ".5",
            "0.00000",
        ] {
            assert_eq!(number(text), text.parse().ok(), "{text}");
        }
        for text in ["", ".", "1e3", "-1", "+1", "1.2.3", "1,5", "inf", "\u{661}"] {
            assert_eq!(number(text), None, "{text}");
        }
    }
}
