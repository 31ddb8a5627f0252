//! The tags of `index.html` that a build tool replaces: `<link data-trunk …>` and `<script data-trunk …>`.
use crate::fail::{Fail, Res};

/// One such tag.
pub struct Tag {
    /// `link` or `script`.
    pub name: String,
    /// Attributes in their order; a bare one has an empty value.
    pub attributes: Vec<(String, String)>,
}

impl Tag {
    /// The value of an attribute.
    pub fn get(&self, name: &str) -> Option<&str> {
        self.attributes
            .iter()
            .find(|(n, _)| n == name)
            .map(|(_, v)| v.as_str())
    }

    /// The attributes that stay in the page, each with a space before it.
    pub fn kept(&self, dropped: &[&str]) -> String {
        let keep = |n: &str| !n.starts_with("data-") && !dropped.contains(&n);
        let mut text = String::new();
        for (name, value) in self.attributes.iter().filter(|(n, _)| keep(n)) {
            text.push(' ');
            text.push_str(name);
            if !value.is_empty() {
                text.push_str("=\"");
                text.push_str(value);
                text.push('"');
            }
        }
        text
    }
}

/// The page without comments, with each build tag replaced by what `with` returns for it.
pub fn replace(page: &str, mut with: impl FnMut(&Tag) -> Res<String>) -> Res<String> {
    let mut out = String::new();
    let mut rest = page;
    while let Some(start) = rest.find('<') {
        let (before, tag) = rest.split_at(start);
        out.push_str(before);
        if let Some(comment) = tag.strip_prefix("<!--") {
            let (_, after) = comment
                .split_once("-->")
                .ok_or_else(|| Fail::new("index.html: a comment has no end"))?;
            rest = after;
            continue;
        }
        let end = tag
            .find('>')
            .ok_or_else(|| Fail::new("index.html: a tag has no end"))?;
        let (inside, after) = tag.split_at(end + 1);
        rest = after;
        if !inside.contains("data-trunk") {
            out.push_str(inside);
            continue;
        }
        let parsed = parse(
            inside
                .trim_start_matches('<')
                .trim_end_matches('>')
                .trim_end_matches('/'),
        );
        out.push_str(&with(&parsed)?);
        if parsed.name == "script" {
            rest = rest.strip_prefix("</script>").unwrap_or(rest);
        }
    }
    out.push_str(rest);
    let lines: Vec<&str> = out
        .lines()
        .map(str::trim)
        .filter(|l| !l.is_empty())
        .collect();
    Ok(lines.join("\n") + "\n")
}

fn parse(inside: &str) -> Tag {
    let (name, mut rest) = inside
        .split_once(char::is_whitespace)
        .unwrap_or((inside, ""));
    let mut attributes = Vec::new();
    loop {
        rest = rest.trim_start();
        if rest.is_empty() {
            return Tag {
                name: name.to_owned(),
                attributes,
            };
        }
        let end = rest
            .find(|c: char| c == '=' || c.is_whitespace())
            .unwrap_or(rest.len());
        let (key, after) = rest.split_at(end);
        let (value, next) = match after.strip_prefix("=\"") {
            Some(quoted) => quoted.split_once('"').unwrap_or((quoted, "")),
            None => match after.strip_prefix('=') {
                Some(plain) => {
                    plain.split_at(plain.find(char::is_whitespace).unwrap_or(plain.len()))
                }
                None => ("", after),
            },
        };
        attributes.push((key.to_owned(), value.to_owned()));
        rest = next;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn replaces_build_tags_and_keeps_the_rest() {
        let page = "<head><!-- note\n > --><link data-trunk rel=\"css\" href=\"a b.css\" media=print />\n\
            <link rel=\"manifest\" href=\"m\"><script data-trunk defer src=\"x.js\"></script></head>";
        let mut seen = Vec::new();
        let out = replace(page, |t| {
            seen.push((
                t.get("href").or(t.get("src")).unwrap().to_owned(),
                t.kept(&["href", "src"]),
            ));
            Ok("[]".to_owned())
        });
        assert_eq!(
            out.ok().unwrap(),
            "<head>[]\n<link rel=\"manifest\" href=\"m\">[]</head>\n"
        );
        assert_eq!(
            seen[0],
            (
                "a b.css".to_owned(),
                " rel=\"css\" media=\"print\"".to_owned()
            )
        );
        assert_eq!(seen[1], ("x.js".to_owned(), " defer".to_owned()));
    }
}
