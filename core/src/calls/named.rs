//! What does the name of a drill or a screw measure, typed where a length is asked: `#7`, `No. 10`, `F`?

use super::{drill, thread};
use crate::notation::tidy;
use crate::quantity::{units, with_unit};

/// What to type for such a name, and what it is; empty where the text is none.
pub(crate) fn named(text: &str) -> Vec<(String, String)> {
    let Some(call) = tidy(text) else {
        return Vec::new();
    };
    let letter = call.len() == 1 && call.starts_with(|c: char| c.is_ascii_alphabetic());
    let numbered = call.starts_with('#') || call.starts_with("NO");
    if !letter && !numbered && !call.starts_with("LETTER") {
        return Vec::new();
    }
    let inches = |mm: f64| with_unit(mm, &units::INCH, 4);
    let mut found = Vec::new();
    if let Ok(drill) = drill::read(text) {
        let name = drill.name().replace("No. ", "#");
        found.push((inches(drill.diameter.mm()), format!("drill {name}")));
    }
    if numbered && let Ok(size) = thread::size(text) {
        let name = size.name.replace("No. ", "#");
        found.push((
            inches(size.major.mm()),
            format!("screw {name}, its basic diameter"),
        ));
    }
    found
}

#[cfg(test)]
mod tests {
    use super::named;

    #[test]
    fn drills_and_screws_by_name() {
        // ASME B94.11M: #7 is 0.2010, F is 0.2570, #10 is 0.1935; ASME B1.1: No. 10 is 0.190
        let texts =
            |text: &str| -> Vec<String> { named(text).into_iter().map(|way| way.0).collect() };
        assert_eq!(texts("#7"), ["0.2010 in"]);
        assert_eq!(texts("F"), ["0.2570 in"]);
        assert_eq!(texts("No. 10"), ["0.1935 in", "0.1900 in"]);
        for text in ["7", "in", "abc", "#", "1/4", "half"] {
            assert!(named(text).is_empty(), "{text}");
        }
    }
}
