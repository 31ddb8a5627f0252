//! A value that is compared by being the same object: a component that gets the same one is not drawn again.

use std::{ops::Deref, rc::Rc};

/// Compared by address.
#[derive(Debug)]
pub struct Shared<T>(Rc<T>);

impl<T> Shared<T> {
    /// Shares a value.
    pub fn new(value: T) -> Self {
        Self(Rc::new(value))
    }
}

impl<T: PartialEq + Clone> Shared<T> {
    /// The old object where the new value is equal to it.
    pub fn kept(&self, new: &T) -> Self {
        if *self.0 == *new {
            self.clone()
        } else {
            Self::new(new.clone())
        }
    }
}

impl<T> Clone for Shared<T> {
    fn clone(&self) -> Self {
        Self(Rc::clone(&self.0))
    }
}

impl<T> PartialEq for Shared<T> {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl<T> Deref for Shared<T> {
    type Target = T;
    fn deref(&self) -> &T {
        &self.0
    }
}
