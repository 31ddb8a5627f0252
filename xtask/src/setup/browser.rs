//! Which browser do the tests steer, and with which driver?
use crate::{
    fail::{Fail, Res},
    run,
};
use std::{fs, path::PathBuf};

const CHROMIUM: &[&str] = &["chromium", "chromium-browser", "google-chrome"];
const DRIVER: &[&str] = &["chromedriver", "chromium.chromedriver"];

/// The browser and its driver.
pub struct Browser {
    /// Chromium itself.
    pub chromium: PathBuf,
    /// The driver of the same version.
    pub driver: PathBuf,
}

fn first(names: &[&str]) -> Option<PathBuf> {
    names.iter().find_map(|n| run::find(n))
}

/// The packages to install, empty where both are there. Ubuntu names them otherwise than Debian.
pub fn missing_packages() -> Vec<&'static str> {
    let ubuntu =
        fs::read_to_string("/etc/os-release").is_ok_and(|t| t.lines().any(|l| l == "ID=ubuntu"));
    let mut missing = Vec::new();
    if first(CHROMIUM).is_none() {
        missing.push(if ubuntu {
            "chromium-browser"
        } else {
            "chromium"
        });
    }
    if first(DRIVER).is_none() {
        missing.push(if ubuntu {
            "chromium-chromedriver"
        } else {
            "chromium-driver"
        });
    }
    missing
}

/// Both programs, of one version.
pub fn found() -> Res<Browser> {
    let (Some(chromium), Some(driver)) = (first(CHROMIUM), first(DRIVER)) else {
        return Err(Fail::cure(
            "Chromium or its driver is missing.",
            "sudo apt-get install -y chromium chromium-driver",
        ));
    };
    let major = |p: &PathBuf| {
        let text = run::output(&p.to_string_lossy(), &["--version"])?;
        text.split(' ')
            .find_map(|w| w.split('.').next()?.parse::<u32>().ok())
    };
    match (major(&chromium), major(&driver)) {
        (Some(a), Some(b)) if a == b => Ok(Browser { chromium, driver }),
        (a, b) => Err(Fail::cure(
            &format!("Chromium ({a:?}) and its driver ({b:?}) must start and be of one version."),
            "sudo apt-get install -y --reinstall chromium chromium-driver",
        )),
    }
}
