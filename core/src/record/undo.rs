//! How is a step taken back? A record with its past, bounded.

use super::Record;

/// How many steps can be taken back.
const MOST: usize = 50;

/// A record and its past.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Undo<R> {
    past: Vec<R>,
    /// The record as it stands.
    pub now: R,
}

impl<R: Record> Undo<R> {
    /// Starts from a record with no past.
    pub const fn new(now: R) -> Self {
        Self {
            past: Vec::new(),
            now,
        }
    }
    /// Acts; what changes nothing leaves no step to take back.
    pub fn act(&mut self, action: &R::Action) {
        let next = self.now.after(action);
        if next == self.now {
            return;
        }
        if self.past.len() >= MOST {
            self.past.remove(0);
        }
        self.past.push(std::mem::replace(&mut self.now, next));
    }
    /// Takes the last step back; true where there was one.
    pub fn undo(&mut self) -> bool {
        match self.past.pop() {
            Some(before) => {
                self.now = before;
                true
            }
            None => false,
        }
    }
    /// True where a step can be taken back.
    pub fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }
}
