//! Does the screen follow the keys? Pages mounted in a real browser, without server or worker.
#![cfg(target_arch = "wasm32")]
#![allow(missing_docs, clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test says what failed by panicking

use benchslate_app::App;
use benchslate_core::{link, sheets};
use wasm_bindgen::JsCast;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};
use web_sys::{Element, EventInit, HtmlInputElement};

wasm_bindgen_test_configure!(run_in_browser);

/// Yew draws later, on the microtask queue; the address and the live region later still.
async fn wait(milliseconds: i32) {
    let promise = js_sys::Promise::new(&mut |ok, _| {
        let window = web_sys::window().unwrap();
        window
            .set_timeout_with_callback_and_timeout_and_arguments_0(&ok, milliseconds)
            .unwrap();
    });
    wasm_bindgen_futures::JsFuture::from(promise).await.unwrap();
}

fn document() -> web_sys::Document {
    web_sys::window().unwrap().document().unwrap()
}

struct Mounted {
    root: Element,
    app: Option<yew::AppHandle<App>>,
}

impl Mounted {
    async fn at(fragment: &str) -> Self {
        web_sys::window()
            .unwrap()
            .location()
            .set_hash(fragment)
            .unwrap();
        wait(20).await;
        let root = document().create_element("div").unwrap();
        document().body().unwrap().append_child(&root).unwrap();
        let app = yew::Renderer::<App>::with_root(root.clone()).render();
        wait(30).await;
        let page = Self {
            root,
            app: Some(app),
        };
        page.until("h1, a.ask").await;
        page
    }
    /// Waits until something is there: at once on a quiet machine, some seconds on a busy one.
    async fn until(&self, selector: &str) {
        for _ in 0..200 {
            if self.root.query_selector(selector).unwrap().is_some() {
                return;
            }
            wait(20).await;
        }
    }
    fn text(&self, selector: &str) -> String {
        self.root
            .query_selector(selector)
            .unwrap()
            .and_then(|e| e.text_content())
            .unwrap_or_default()
    }
    async fn type_in(&self, selector: &str, text: &str) {
        let input: HtmlInputElement = self
            .root
            .query_selector(selector)
            .unwrap()
            .unwrap()
            .dyn_into()
            .unwrap();
        input.set_value(text);
        let init = EventInit::new();
        init.set_bubbles(true);
        input
            .dispatch_event(&web_sys::Event::new_with_event_init_dict("input", &init).unwrap())
            .unwrap();
        wait(20).await;
    }
}

impl Drop for Mounted {
    fn drop(&mut self) {
        if let Some(app) = self.app.take() {
            app.destroy();
        }
        self.root.remove();
    }
}

#[wasm_bindgen_test]
async fn home_lists_every_question() {
    let page = Mounted::at("#/").await;
    let rows = page.root.query_selector_all("a.ask").unwrap().length();
    // every question, and the proving record
    assert_eq!(rows as usize, sheets::ALL.len() + 1);
}

#[wasm_bindgen_test]
async fn typing_changes_the_answer_and_the_address() {
    let page = Mounted::at("#/v1/length").await;
    page.type_in("#f-length", "7/16").await;
    assert_eq!(page.text(".result .big"), "0.4375");
    page.type_in("#f-length", "7/").await;
    assert!(page.text(".answer").contains("Still needed"));
    page.type_in("#f-length", "3/8").await;
    wait(400).await;
    assert!(
        web_sys::window()
            .unwrap()
            .location()
            .hash()
            .unwrap()
            .contains("length=3/8")
    );
}

#[wasm_bindgen_test]
async fn every_example_of_every_sheet_gives_a_result_on_screen() {
    for sheet in sheets::ALL {
        for example in sheet.examples {
            let entry = benchslate_core::sheet::Entry::of(example);
            let outcome = benchslate_core::sheet::evaluate(sheet, &entry);
            let fragment = link::of(sheet, &entry, &outcome, &link::Asked::default()).unwrap();
            let page = Mounted::at(&fragment).await;
            assert!(!page.text(".result .big").is_empty(), "{fragment}");
        }
    }
}

#[wasm_bindgen_test]
async fn a_fault_stands_beside_its_field_and_an_unknown_link_says_so() {
    let page = Mounted::at("#/v1/length?length=abc").await;
    page.until(".fault").await;
    assert!(!page.text(".fault").is_empty(), "{}", page.text("main"));
    drop(page);
    let page = Mounted::at("#/v1/no-such-thing").await;
    assert!(page.text("h1").contains("does not open"));
}
