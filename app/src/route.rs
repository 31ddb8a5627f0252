//! Which page does a fragment name, and how is each page's fragment written? No screen here, so plain tests can run it.

use std::rc::Rc;

/// Where one is in the app.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Route {
    /// The list of questions, with what stands in the search box.
    Home(Rc<str>),
    /// A question: the whole link from `#/v1/` on.
    Answer(Rc<str>),
    /// What is owned and preferred.
    Shop,
    /// Somebody's shop as a link: the whole of it.
    ShopLink(Rc<str>),
    /// The proving record of a machine, by its name; empty for the one that was open.
    Proving(Rc<str>),
    /// Links that were kept, with notes.
    Kept,
    /// Sources, versions, licences, state of the storage, privacy.
    About,
}

impl Route {
    /// Reads a fragment (`#/kept`). What is not known leads home, with its text in the search box.
    pub fn read(fragment: &str) -> Self {
        let path = fragment.trim_start_matches('#').trim_start_matches('/');
        match path {
            "" => Self::Home("".into()),
            "shop" => Self::Shop,
            "kept" => Self::Kept,
            "about" => Self::About,
            "proving" => Self::Proving("".into()),
            "v1/my-shop" => Self::ShopLink(format!("#/{path}").into()),
            _ if path.starts_with("v1/my-shop?") => Self::ShopLink(format!("#/{path}").into()),
            _ if path.starts_with("v1/") => Self::Answer(format!("#/{path}").into()),
            _ => match (
                path.strip_prefix("?find="),
                path.strip_prefix("proving?of="),
            ) {
                (Some(text), _) => Self::Home(decode(text).into()),
                (_, Some(name)) => Self::Proving(decode(name).into()),
                _ => Self::Home(decode(path).into()),
            },
        }
    }

    /// The fragment that leads here.
    pub fn fragment(&self) -> String {
        match self {
            Self::Home(text) if text.is_empty() => "#/".to_owned(),
            Self::Home(text) => format!("#/?find={}", encode(text)),
            Self::Answer(link) | Self::ShopLink(link) => link.to_string(),
            Self::Proving(name) if name.is_empty() => "#/proving".to_owned(),
            Self::Proving(name) => format!("#/proving?of={}", encode(name)),
            Self::Shop => "#/shop".to_owned(),
            Self::Kept => "#/kept".to_owned(),
            Self::About => "#/about".to_owned(),
        }
    }
}

/// Percent-encodes everything but letters, digits and a few marks that are safe in a fragment.
pub fn encode(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for byte in text.bytes() {
        if byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'/' | b'.' | b'_' | b',') {
            out.push(char::from(byte));
        } else {
            out.push('%');
            for nibble in [byte >> 4, byte & 15] {
                out.push(
                    char::from_digit(u32::from(nibble), 16)
                        .unwrap_or('0')
                        .to_ascii_uppercase(),
                );
            }
        }
    }
    out
}

/// Undoes [`encode`]; a broken escape stays as it stands, and bytes that are not text are marked.
pub fn decode(text: &str) -> String {
    let mut out = Vec::with_capacity(text.len());
    let mut rest = text.as_bytes();
    while let [first, tail @ ..] = rest {
        if let (b'%', [high, low, after @ ..]) = (first, tail)
            && let (Some(high), Some(low)) = (
                char::from(*high).to_digit(16),
                char::from(*low).to_digit(16),
            )
        {
            out.push((high * 16 + low) as u8);
            rest = after;
            continue;
        }
        out.push(*first);
        rest = tail;
    }
    String::from_utf8_lossy(&out).into_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_page_comes_back_from_its_fragment() {
        for route in [
            Route::Home("".into()),
            Route::Home("#7 & 3/8-16 é".into()),
            Route::Shop,
            Route::Kept,
            Route::About,
            Route::Proving("".into()),
            Route::Proving("Mill & shaper é?".into()),
            Route::ShopLink("#/v1/my-shop".into()),
            Route::ShopLink("#/v1/my-shop?rapid=50%20ipm".into()),
            Route::Answer("#/v1/anything?a=1%20in".into()),
        ] {
            assert_eq!(Route::read(&route.fragment()), route);
        }
    }

    #[test]
    fn an_unknown_page_leads_home_with_its_text() {
        assert_eq!(Route::read("#/nowhere"), Route::Home("nowhere".into()));
        assert_eq!(Route::read("junk%2"), Route::Home("junk%2".into()));
        assert_eq!(Route::read(""), Route::Home("".into()));
    }
}
