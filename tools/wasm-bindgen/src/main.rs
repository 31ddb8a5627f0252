//! One binary for both of wasm-bindgen's programs: the name it is called by says which.
use std::{env, path::Path};

fn main() -> anyhow::Result<()> {
    let called = env::args_os().next().unwrap_or_default();
    let stem = Path::new(&called).file_stem().and_then(|s| s.to_str());
    if stem == Some("wasm-bindgen-test-runner") {
        wasm_bindgen_cli::wasm_bindgen_test_runner::run_cli_with_args(env::args_os())
    } else {
        wasm_bindgen_cli::wasm_bindgen::run_cli_with_args(env::args_os())
    }
}
