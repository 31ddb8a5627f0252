//! From source to the folder that a static host serves: the same `index.html` that trunk reads, built without trunk.
pub mod archive;
pub mod compile;
pub mod compress;
pub mod hash;
pub mod html;
pub mod site;
pub mod trunk;

use crate::project;
use std::path::PathBuf;

/// The policy that a host should send as a header; the page holds it too. Nothing comes from another origin, and no
/// script or style stands in the page.
pub const CSP: &str = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; \
    img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; \
    base-uri 'none'; form-action 'none'";

/// One page to build: the app, or the floor that its times are set against.
pub struct Page {
    /// The folder of `index.html` and of the workspace.
    pub root: PathBuf,
    /// Package and binary.
    pub package: &'static str,
    /// Where cargo builds.
    pub target: PathBuf,
    /// The finished folder.
    pub site: PathBuf,
    /// The service worker's template, where there is one.
    pub worker: Option<PathBuf>,
    /// Whether the notices of the libraries in it stand beside it.
    pub notices: bool,
}

impl Page {
    /// The app.
    pub fn app() -> Self {
        Self {
            root: project::root(),
            package: "benchslate-app",
            target: project::target(),
            site: project::target().join("site"),
            worker: Some(project::root().join("app/worker/sw.js")),
            notices: true,
        }
    }

    /// The bare page in `tests/floor`.
    pub fn floor() -> Self {
        Self {
            root: project::root().join("tests/floor"),
            package: "benchslate-floor",
            target: project::target().join("floor"),
            site: project::target().join("floor-site"),
            worker: Some(project::root().join("app/worker/sw.js")),
            notices: false,
        }
    }
}
