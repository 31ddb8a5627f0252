//! Benchslate in a terminal.
fn main() {}
