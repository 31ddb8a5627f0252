//! How does a value come into the text of JSON without a tree of it before? Keys are given in ascending order, as a tree
//! would sort them, so that the text is the same.

use serde_json::to_writer;

/// What `serde_json` writes by itself: texts, numbers, truths, lists of them, and nothing.
pub trait Leaf {
    /// Appends it.
    fn append(&self, text: &mut Vec<u8>);
}

macro_rules! leaves {
    ($($kind:ty),*) => { $(impl Leaf for $kind {
        fn append(&self, text: &mut Vec<u8>) {
            // a vector takes all that is written, and these kinds have no keys that could fail
            let _ = to_writer(text, self);
        }
    })* };
}
leaves!(str, bool, f64, u16, u32, usize);

impl<L: Leaf + ?Sized> Leaf for &L {
    fn append(&self, text: &mut Vec<u8>) {
        (**self).append(text);
    }
}

impl Leaf for String {
    fn append(&self, text: &mut Vec<u8>) {
        self.as_str().append(text);
    }
}

impl Leaf for std::borrow::Cow<'_, str> {
    fn append(&self, text: &mut Vec<u8>) {
        (**self).append(text);
    }
}

impl<L: Leaf> Leaf for Option<L> {
    fn append(&self, text: &mut Vec<u8>) {
        match self {
            Some(leaf) => leaf.append(text),
            None => text.extend_from_slice(b"null"),
        }
    }
}

impl<L: Leaf> Leaf for [L] {
    fn append(&self, text: &mut Vec<u8>) {
        Place { text }.list(self, |place, leaf| leaf.append(place.text));
    }
}

impl<L: Leaf> Leaf for Vec<L> {
    fn append(&self, text: &mut Vec<u8>) {
        self.as_slice().append(text);
    }
}

/// A place that takes one value.
pub struct Place<'a> {
    text: &'a mut Vec<u8>,
}

impl<'a> Place<'a> {
    /// The end of a text.
    pub fn end_of(text: &'a mut Vec<u8>) -> Self {
        Self { text }
    }

    /// Puts a leaf there.
    pub fn leaf(self, leaf: impl Leaf) {
        leaf.append(self.text);
    }

    /// Puts an object there.
    pub fn object(self, fill: impl FnOnce(&mut Object)) {
        let mut object = Object {
            text: self.text,
            last: "",
        };
        object.text.push(b'{');
        fill(&mut object);
        object.text.push(b'}');
    }

    /// Puts a list there, each item by `each`.
    pub fn list<T>(self, items: impl IntoIterator<Item = T>, mut each: impl FnMut(Place, T)) {
        self.text.push(b'[');
        for (at, item) in items.into_iter().enumerate() {
            if at > 0 {
                self.text.push(b',');
            }
            each(Place { text: self.text }, item);
        }
        self.text.push(b']');
    }
}

/// An object that is being written.
pub struct Object<'a> {
    text: &'a mut Vec<u8>,
    last: &'static str,
}

impl Object<'_> {
    /// The place of a key: plain ASCII, behind those before it.
    pub fn at(&mut self, key: &'static str) -> Place<'_> {
        debug_assert!(self.last < key, "{key} stands behind {}", self.last);
        if !self.last.is_empty() {
            self.text.push(b',');
        }
        self.last = key;
        self.text.push(b'"');
        self.text.extend_from_slice(key.as_bytes());
        self.text.extend_from_slice(b"\":");
        Place { text: self.text }
    }

    /// A key with a leaf.
    pub fn put(&mut self, key: &'static str, leaf: impl Leaf) -> &mut Self {
        self.at(key).leaf(leaf);
        self
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn text(fill: impl FnOnce(&mut Object)) -> String {
        let mut text = Vec::new();
        Place::end_of(&mut text).object(fill);
        String::from_utf8(text).unwrap()
    }

    #[test]
    fn stands_as_a_tree_would() {
        let all = text(|object| {
            object.put("a", "say \"1/4\"\n\u{2033}");
            object.put("b", [1.0, 0.1, 1e21, f64::NAN].as_slice());
            object.put("c", None::<bool>).put("d", 3_usize);
            object.at("e").list([true, false], |place, item| {
                place.object(|object| {
                    object.put("it", item);
                });
            });
            object.at("f").object(|_| {});
        });
        let tree = serde_json::json!({
            "a": "say \"1/4\"\n\u{2033}", "b": [1.0, 0.1, 1e21, f64::NAN], "c": null, "d": 3, "e": [{ "it": true }, { "it": false }], "f": {},
        });
        assert_eq!(all, tree.to_string());
    }
}
