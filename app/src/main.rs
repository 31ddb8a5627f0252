//! The app, thin start.
fn main() {
    benchslate_app::start();
}
