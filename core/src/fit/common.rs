//! Which fits are usual in a shop, and for what?
//!
//! ISO: preferred hole-basis fits of ANSI B4.2-1978, Table 1, from memory, with H7/m6 as common practice for dowels.
//! Inch: what ANSI B4.1-1967 says of its classes, from memory.

/// A fit as it is called, and what it is for; the loosest of each system first.
pub const FITS: &[(&str, &str)] = &[
    ("H11/c11", "loose running"),
    ("H9/d9", "free running"),
    ("H8/f7", "close running"),
    ("H7/g6", "sliding"),
    ("H7/h6", "locating, by hand"),
    ("H7/k6", "locating, light tap"),
    ("H7/m6", "dowels"),
    ("H7/n6", "locating, tight"),
    ("H7/p6", "locating, pressed"),
    ("H7/s6", "medium drive"),
    ("H7/u6", "force or shrink"),
    ("RC9", "loose running"),
    ("RC7", "free running"),
    ("RC5", "medium running"),
    ("RC4", "close running"),
    ("RC3", "precision running"),
    ("RC2", "sliding"),
    ("LC2", "locating, by hand"),
    ("LT3", "locating, light tap"),
    ("LN2", "locating, pressed"),
    ("FN1", "light drive"),
    ("FN2", "medium drive"),
    ("FN4", "force or shrink"),
];
