//! Prints the native digests of all sheets, for comparison in a browser.

fn main() {
    println!("{}", benchslate_tests::parity::digests());
}
