//! The same digits natively and in WebAssembly: the digests that the test command computed natively, against those of
//! this build. Without them (a plain test run) it says so and compares nothing.
#![cfg(target_arch = "wasm32")]
wasm_bindgen_test::wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test::wasm_bindgen_test]
fn digits_are_the_same_as_natively() {
    let Some(native) = option_env!("BENCHSLATE_PARITY") else {
        wasm_bindgen_test::console_log!("BENCHSLATE_PARITY is not set: nothing to compare with");
        return;
    };
    let here = benchslate_tests::parity::digests();
    for (native, here) in native.split(',').zip(here.split(',')) {
        assert_eq!(native, here, "sheet and digest, natively and here");
    }
    assert_eq!(native.len(), here.len());
}
