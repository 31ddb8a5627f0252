//! Is Node there, new enough, with the packages of the lock file?
use super::say;
use crate::{
    fail::{Fail, Res},
    project, run,
    web::hash,
};
use std::{fs, process::Command};

/// The oldest Node that the browser tests' packages run on.
const OLDEST: u32 = 18; // and playwright-core is kept at the last version that runs on it: Debian 12 has 18

/// The packages to install, empty where Node and npm are there; stops where Node is too old.
pub fn missing_packages() -> Res<Vec<&'static str>> {
    if let Some(version) = run::output("node", &["--version"]) {
        let major = version
            .trim_start_matches('v')
            .split('.')
            .next()
            .and_then(|n| n.parse::<u32>().ok());
        if major.unwrap_or(0) < OLDEST {
            return Err(Fail::cure(
                &format!(
                    "Node {OLDEST} or newer is needed for the browser tests; found {version}."
                ),
                "sudo npm install -g n && sudo n lts",
            ));
        }
    }
    Ok(["node", "npm"]
        .into_iter()
        .filter(|p| run::find(p).is_none())
        .map(|p| if p == "node" { "nodejs" } else { p })
        .collect())
}

/// `npm ci`, where the lock file has changed since the last time.
pub fn packages() -> Res {
    let root = project::root();
    let lock = hash::hex(&fs::read(root.join("package-lock.json"))?);
    let stamp = root.join("node_modules/.benchslate-lock");
    if fs::read_to_string(&stamp).is_ok_and(|s| s == lock) {
        return Ok(());
    }
    say(
        "npm ci",
        "the browser tests steer the browser with playwright-core; no browser is downloaded",
    );
    run::ok(
        Command::new("npm")
            .args(["ci", "--no-audit", "--no-fund"])
            .current_dir(&root),
    )
    .map_err(|_| {
        Fail::cure(
            "npm ci did not succeed; it needs the package registry once.",
            "npm ci",
        )
    })?;
    Ok(fs::write(stamp, lock)?)
}
