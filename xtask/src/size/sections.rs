//! Which crates and modules do the module's bytes come from? Read from its code and name sections.
use crate::fail::{Fail, Res};
use std::collections::BTreeMap;

/// A table of code bytes by crate, our own crates by module, and the data beside it.
pub fn report(wasm: &[u8]) -> Res<String> {
    let mut sizes = Vec::new();
    let mut names: BTreeMap<u32, String> = BTreeMap::new();
    let mut imported = 0;
    let mut data = 0;
    let mut reader = Reader {
        bytes: wasm.get(8..).unwrap_or_default(),
    };
    while let Some(id) = reader.byte() {
        let len = reader.number()?;
        let mut body = Reader {
            bytes: reader.take(len)?,
        };
        match id {
            0 if body.text()? == "name" => names = body.function_names()?,
            2 => imported = body.imported_functions()?,
            10 => sizes = body.function_sizes()?,
            11 => data = len,
            _ => {}
        }
    }
    let mut by_part: BTreeMap<String, u32> = BTreeMap::new();
    for (at, size) in sizes.iter().enumerate() {
        let index = imported + u32::try_from(at).unwrap_or(u32::MAX);
        let part = names
            .get(&index)
            .map_or_else(|| "(no name)".to_owned(), |n| part_of(n));
        *by_part.entry(part).or_default() += size;
    }
    let code: u32 = sizes.iter().sum();
    let mut rows: Vec<_> = by_part.into_iter().collect();
    rows.sort_by_key(|(name, size)| (std::cmp::Reverse(*size), name.clone()));
    let mut text = format!(
        "{:<44} {:>9} {:>6}\n",
        "uncompressed bytes of the module", "bytes", "share"
    );
    let all = f64::from(code + data);
    for (name, size) in rows.iter().map(|(n, s)| (n.as_str(), *s)).take(40) {
        text += &format!(
            "{name:<44} {size:>9} {:>5.1}%\n",
            100.0 * f64::from(size) / all
        );
    }
    text += &format!(
        "{:<44} {data:>9} {:>5.1}%\n",
        "data: texts and tables",
        100.0 * f64::from(data) / all
    );
    text += &format!("{:<44} {:>9}\n\n", "code and data", code + data);
    text += &families(&sizes, &names, imported);
    Ok(text)
}

/// The functions, with all copies of a generic one taken together: many copies of the same are the cheapest to save.
fn families(sizes: &[u32], names: &BTreeMap<u32, String>, imported: u32) -> String {
    let mut by_family: BTreeMap<String, (u32, u32)> = BTreeMap::new();
    for (at, size) in sizes.iter().enumerate() {
        let index = imported + u32::try_from(at).unwrap_or(u32::MAX);
        let entry = by_family
            .entry(names.get(&index).map_or_else(String::new, |n| family(n)))
            .or_default();
        entry.0 += size;
        entry.1 += 1;
    }
    let mut rows: Vec<_> = by_family.into_iter().collect();
    rows.sort_by_key(|(name, (size, _))| (std::cmp::Reverse(*size), name.clone()));
    let mut text = format!(
        "{:<84} {:>7} {:>6}\n",
        "functions, copies together", "bytes", "copies"
    );
    for (name, (size, copies)) in rows.iter().take(30) {
        let short: String = name.chars().take(84).collect();
        text += &format!("{short:<84} {size:>7} {copies:>6}\n");
    }
    text
}

/// The name without what stands in angle brackets and without its hash.
fn family(name: &str) -> String {
    let name = name
        .split("::h")
        .next()
        .filter(|n| name.len() == n.len() + 19)
        .unwrap_or(name);
    let inner = if let Some(rest) = name.strip_prefix('<') {
        rest
    } else {
        name
    };
    let mut out = String::new();
    let mut depth = 0_u32;
    for c in inner.chars() {
        match c {
            '<' | '[' => depth += 1,
            '>' | ']' => depth = depth.saturating_sub(1),
            _ if depth == 0 => out.push(c),
            _ => {}
        }
    }
    out
}

/// `benchslate_core::thread::x::y` to `benchslate_core::thread`; `<yew::A as core::B>::c` to `yew`.
fn part_of(name: &str) -> String {
    let plain = name.trim_start_matches(['<', '&', '*', '[', '(']);
    let plain = plain
        .trim_start_matches("mut ")
        .trim_start_matches("dyn ")
        .trim_start_matches("const ");
    let end = plain
        .find(|c: char| !(c.is_alphanumeric() || c == '_' || c == ':'))
        .unwrap_or(plain.len());
    let path = plain.get(..end).unwrap_or_default();
    let words: Vec<&str> = path.split("::").filter(|w| !w.is_empty()).collect();
    let depth = match words.first() {
        Some(&"benchslate_core") if words.get(1) == Some(&"sheets") => 3,
        Some(w) if w.starts_with("benchslate") => 2,
        Some(&("core" | "alloc" | "std")) if words.len() > 2 => 2,
        _ => 1,
    };
    let kept: Vec<&str> = words.into_iter().take(depth).collect();
    if kept.is_empty() {
        "(other)".to_owned()
    } else {
        kept.join("::")
    }
}

struct Reader<'a> {
    bytes: &'a [u8],
}

impl<'a> Reader<'a> {
    fn byte(&mut self) -> Option<u8> {
        let (first, rest) = self.bytes.split_first()?;
        self.bytes = rest;
        Some(*first)
    }

    /// An unsigned LEB128 number.
    fn number(&mut self) -> Res<u32> {
        let mut value = 0;
        for shift in (0..35).step_by(7) {
            let byte = self.byte().ok_or_else(short)?;
            value |= u32::from(byte & 0x7f) << shift;
            if byte & 0x80 == 0 {
                return Ok(value);
            }
        }
        Err(short())
    }

    fn take(&mut self, len: u32) -> Res<&'a [u8]> {
        let (taken, rest) = self
            .bytes
            .split_at_checked(len as usize)
            .ok_or_else(short)?;
        self.bytes = rest;
        Ok(taken)
    }

    fn text(&mut self) -> Res<String> {
        let len = self.number()?;
        Ok(String::from_utf8_lossy(self.take(len)?).into_owned())
    }

    fn function_names(&mut self) -> Res<BTreeMap<u32, String>> {
        let mut names = BTreeMap::new();
        while let Some(kind) = self.byte() {
            let len = self.number()?;
            let mut part = Reader {
                bytes: self.take(len)?,
            };
            if kind == 1 {
                for _ in 0..part.number()? {
                    names.insert(part.number()?, part.text()?);
                }
            }
        }
        Ok(names)
    }

    fn imported_functions(&mut self) -> Res<u32> {
        let mut functions = 0;
        for _ in 0..self.number()? {
            self.text()?;
            self.text()?;
            match self.byte() {
                Some(0) => {
                    self.number()?;
                    functions += 1;
                }
                Some(1) => {
                    self.byte();
                    self.limits()?;
                }
                Some(2) => self.limits()?,
                Some(3) => {
                    self.take(2)?;
                }
                _ => return Err(Fail::new("the module imports something unknown")),
            }
        }
        Ok(functions)
    }

    fn limits(&mut self) -> Res {
        let has_most = self.byte() == Some(1);
        self.number()?;
        if has_most {
            self.number()?;
        }
        Ok(())
    }

    fn function_sizes(&mut self) -> Res<Vec<u32>> {
        let mut sizes = Vec::new();
        for _ in 0..self.number()? {
            let len = self.number()?;
            self.take(len)?;
            sizes.push(len);
        }
        Ok(sizes)
    }
}

fn short() -> Fail {
    Fail::new("the module is cut short")
}

#[cfg(test)]
mod tests {
    use super::part_of;

    #[test]
    fn names_say_their_part() {
        assert_eq!(
            part_of("benchslate_core::thread::limits::pitch"),
            "benchslate_core::thread"
        );
        assert_eq!(
            part_of("benchslate_core::sheets::taper_pin::answer"),
            "benchslate_core::sheets::taper_pin"
        );
        assert_eq!(part_of("<yew::html::Foo as core::fmt::Debug>::fmt"), "yew");
        assert_eq!(part_of("core::fmt::Formatter::pad"), "core::fmt");
        assert_eq!(part_of("dlmalloc"), "dlmalloc");
    }
}
