//! How does a text leave as a file, and how does one come in?

use gloo::file::{Blob, File, ObjectUrl, futures::read_as_text};
use wasm_bindgen::JsCast;

/// Offers a text as a file to save.
pub fn download(name: &str, text: &str) -> Option<()> {
    let link = gloo::utils::document().create_element("a").ok()?;
    let link: web_sys::HtmlAnchorElement = link.dyn_into().ok()?;
    let url = ObjectUrl::from(Blob::new(text));
    link.set_href(&url);
    link.set_download(name);
    link.click();
    Some(())
}

/// The text of the first file that was chosen in a file input.
pub async fn file_text(input: web_sys::HtmlInputElement) -> Option<String> {
    let file = File::from(input.files()?.get(0)?);
    let text = read_as_text(&file).await.ok()?;
    input.set_value("");
    Some(text)
}
