//! How does a label stand inside a sentence? Its first letter goes down, unless its first word is a name or a symbol.

/// People and makers whose names begin labels; "Young's" counts as "Young".
const NAMES: &[&str] = &[
    "Acme",
    "American",
    "Barth",
    "Belleville",
    "Brinell",
    "British",
    "Brown",
    "Celsius",
    "Fahrenheit",
    "Jacobs",
    "Jarno",
    "Kienzle",
    "Lloyd",
    "Morse",
    "Poisson",
    "Rockwell",
    "Taylor",
    "Unified",
    "Vickers",
    "Whitworth",
    "Woodruff",
    "Young",
];
/// Symbols that look like words.
const SYMBOLS: &[&str] = &["Kd", "Ra", "Re", "Rt", "Rz"];

/// A label as it stands inside a sentence: only the first letter is lowered, and a name or a symbol stays as it is.
///
/// ```
/// use benchslate_core::sheet::lowered;
/// assert_eq!(lowered("Length in the hub"), "length in the hub");
/// assert_eq!(lowered("Brinell hardness of the work"), "Brinell hardness of the work");
/// assert_eq!(lowered("Poisson's ratio, Kd"), "Poisson's ratio, Kd");
/// assert_eq!(lowered("K of the bolt"), "K of the bolt");
/// assert_eq!(lowered("A gap under the head"), "a gap under the head");
/// ```
pub fn lowered(label: &str) -> String {
    let word = label
        .split(|c: char| !c.is_ascii_alphanumeric())
        .next()
        .unwrap_or_default();
    let mut letters = word.chars();
    let first = letters.next();
    let rest = letters.as_str();
    let is_symbol = SYMBOLS.contains(&word)
        || rest.contains(|c: char| c.is_ascii_uppercase() || c.is_ascii_digit())
        || (rest.is_empty() && word != "A");
    match first {
        Some(first) if !is_symbol && !NAMES.contains(&word) => {
            let mut text = String::from(first.to_ascii_lowercase());
            text.push_str(label.get(first.len_utf8()..).unwrap_or_default());
            text
        }
        _ => label.to_owned(),
    }
}
