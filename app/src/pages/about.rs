//! What stands behind the answers: sources, versions, licenses, the state of the offline copy and storage, privacy.

use crate::app::Records;
use crate::components::{Fold, record_notice};
use crate::hooks::use_window_event;
use crate::licences::LICENCES;
use crate::{dom, storage};
use benchslate_core::sheet::{Entry, evaluate};
use benchslate_core::sheets;
use yew::prelude::*;

fn offline_words(mark: Option<&str>) -> &'static str {
    match mark {
        Some("ready") => "On this device. It opens with no network.",
        Some("getting") => "Being stored now.",
        Some("holes") => {
            "Not complete: the browser dropped files, and they could not be fetched again. Open this page once with a network."
        }
        Some("insecure") => {
            "Not stored: browsers store pages only from https or from the same machine. It works while the server runs."
        }
        Some("failed") => "Could not be stored. It works while the server runs.",
        _ => "This browser does not store pages. It works while the server runs.",
    }
}

/// Every source that the sheets' own examples name.
fn sources() -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    for &sheet in sheets::ALL {
        for example in sheet.examples {
            for source in &evaluate(sheet, &Entry::of(example)).answer.sources {
                let text = source.text();
                if !all.contains(&text) {
                    all.push(text);
                }
            }
        }
    }
    benchslate_core::order::sort(&mut all);
    all
}

/// The page.
#[component]
pub fn About() -> Html {
    let offline = use_state_eq(|| dom::mark("offline"));
    let records = use_context::<Records>();
    use_effect_with((), |()| dom::title("About \u{b7} Benchslate"));
    {
        let offline = offline.clone();
        use_window_event(
            "benchslate:offline",
            Callback::from(move |_| offline.set(dom::mark("offline"))),
        );
    }
    let lasting = use_state_eq(|| dom::mark("lasting"));
    {
        let lasting = lasting.clone();
        use_window_event(
            "benchslate:lasting",
            Callback::from(move |_| lasting.set(dom::mark("lasting"))),
        );
    }
    let install = use_state_eq(|| dom::mark("install").is_some());
    {
        let install = install.clone();
        use_window_event(
            "benchslate:install",
            Callback::from(move |_| install.set(dom::mark("install").is_some())),
        );
    }
    let kept = match storage::Store::get(&storage::Browser, "benchslate.look") {
        Ok(_) => match lasting.as_deref() {
            Some("yes") => {
                "Works: my shop, the saved list and the proving records stay on this device. The browser has promised not to clear them by itself."
            }
            Some("no") => {
                "Works: my shop, the saved list and the proving records stay on this device, in a private window until it closes. The browser may clear them when space runs short: save what matters as a file."
            }
            _ => {
                "Works: my shop, the saved list and the proving records stay on this device, in a private window until it closes."
            }
        },
        Err(fault) => fault.words(),
    };
    let build = dom::meta("build")
        .filter(|build| !build.starts_with("__"))
        .unwrap_or_else(|| "development".to_owned());
    html! {
        <main id="main" class="narrow" tabindex="-1">
            <h1>{ "About Benchslate" }</h1>
            <p>{ "Results are a starting point for a skilled person. Local codes, the machine\u{2019}s plate, rated gear and licensed practice come first." }</p>
            if let Some(records) = records {
                { record_notice(&records.shop) }
                { record_notice(&records.kept) }
                { record_notice(&records.proving) }
            }
            <dl class="facts">
                <dt>{ "Version" }</dt><dd class="mono">{ format!("{}, build {build}", env!("CARGO_PKG_VERSION")) }</dd>
                <dt>{ "Questions" }</dt><dd>{ sheets::ALL.len() }</dd>
                <dt>{ "Offline copy" }</dt><dd>{ offline_words(offline.as_deref()) }</dd>
                <dt>{ "Home screen" }</dt>
                if *install {
                    <dd><button type="button" class="act" onclick={Callback::from(|_| dom::tell("benchslate:install-now"))}>{ "Put it on the home screen" }</button></dd>
                } else {
                    <dd>{ "On an iPad or iPhone: Share, then Add to Home Screen. Safari clears what a page has stored after 7 days without a visit, but not that of an app on the home screen." }</dd>
                }
                <dt>{ "Storage" }</dt><dd>{ kept }</dd>
                <dt>{ "Privacy" }</dt><dd>{ "Nothing leaves this device. The page asks no other host for anything, ever." }</dd>
                <dt>{ "License" }</dt><dd>{ "MIT or Apache-2.0, as you like." }</dd>
            </dl>
            <Fold title="Sources" content={Callback::from(|()| html! { <ul class="sources">{ for sources().into_iter().map(|text| html! { <li>{ text }</li> }) }</ul> })} />
            <Fold title="Libraries and their licenses" content={Callback::from(|()| html! {
                <>
                    <p><a href="./licences.txt">{ "Their notices in full" }</a></p>
                    <ul class="sources">{ for LICENCES.iter().map(|(name, license)| html! { <li>{ format!("{name}: {license}") }</li> }) }</ul>
                </>
            })} />
        </main>
    }
}
