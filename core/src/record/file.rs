//! In what form does a record leave the program? `{"record": name, "version": n, "data": …}`; the head is read first,
//! so that a newer version's file is refused by name and never overwritten.

use super::Record;
use crate::quantity::System;

/// A record as a file.
#[derive(Clone, PartialEq, Eq, Debug)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct File<T> {
    /// The record's name.
    pub record: String,
    /// The version that wrote it.
    pub version: u32,
    /// The record.
    pub data: T,
}

impl<R: Record> File<R> {
    /// Wraps a record.
    pub fn of(data: R) -> Self {
        Self {
            record: R::NAME.to_owned(),
            version: R::VERSION,
            data,
        }
    }
    /// The record of a file that was read whole, brought to this version. `known` is the system of units that bare figures
    /// were read in when it was written, where that is known; a file from elsewhere that does not say is asked about.
    ///
    /// # Errors
    /// [`RecordFault`] where it is another record or from a newer version.
    pub fn opened(self, known: Option<System>) -> Result<R, RecordFault> {
        let Self {
            record,
            version,
            data,
        } = self;
        check::<R>(&Head { record, version })?;
        Ok(if version < R::VERSION {
            data.of_older(version, known)
        } else {
            data
        })
    }
}

/// The head of a file, read before the data.
#[derive(Clone, PartialEq, Eq, Debug)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Head {
    /// The record's name.
    pub record: String,
    /// The version that wrote it.
    pub version: u32,
}

/// Why a file is not taken.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum RecordFault {
    /// It is another record.
    OtherRecord(String),
    /// It was written by a newer version.
    Newer(u32),
    /// It can't be read at all.
    Damaged,
}

impl RecordFault {
    /// One line for people.
    pub fn text(&self) -> String {
        match self {
            Self::OtherRecord(name) => {
                format!("this file holds \u{201c}{name}\u{201d}, not what is asked for here")
            }
            Self::Newer(version) => {
                format!(
                    "this was written by a newer version (form {version}); it is left as it is; load the newest version to read it"
                )
            }
            Self::Damaged => "this can't be read; it is left as it is".into(),
        }
    }
}

/// Whether a file of this head can be read as a record.
///
/// # Errors
/// [`RecordFault`] where it is another record or from a newer version.
pub fn check<R: Record>(head: &Head) -> Result<(), RecordFault> {
    if head.record != R::NAME {
        return Err(RecordFault::OtherRecord(
            head.record.chars().take(40).collect(),
        ));
    }
    if head.version > R::VERSION {
        return Err(RecordFault::Newer(head.version));
    }
    Ok(())
}
