//! What a plain `cargo test` leaves out, told in its own output.

#[test]
#[ignore = "left out here: format, clippy, docs, WebAssembly and browser tests, size gates; run cargo xtask test"]
fn everything_else_runs_under_cargo_xtask_test() {}
