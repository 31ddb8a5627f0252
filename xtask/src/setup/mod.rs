//! What does this machine still lack, and how is it put there? Says what and why before it does anything, is quick and
//! needs no network where nothing is missing, and stops with the one command to run where it can't.
mod bindgen;
mod browser;
mod node;
mod rust;

use crate::{args::Args, fail::Res, run};
pub use bindgen::Bindgen;
pub use browser::Browser;

/// `cargo xtask setup`
pub fn command(args: &Args) -> Res {
    args.allow(&["--serve"], &[])?;
    let bindgen = for_build()?;
    println!("wasm-bindgen  {}", bindgen.tool.display());
    if !args.has("--serve") {
        let browser = for_browser()?;
        println!(
            "browser       {}\ndriver        {}",
            browser.chromium.display(),
            browser.driver.display()
        );
    }
    println!("ready");
    Ok(())
}

/// What building the app needs: no browser, no Node.
pub fn for_build() -> Res<Bindgen> {
    rust::version()?;
    rust::wasm_std()?;
    bindgen::installed()
}

/// What the browser tests need besides.
pub fn for_browser() -> Res<Browser> {
    let missing = [browser::missing_packages(), node::missing_packages()?].concat();
    if !missing.is_empty() {
        apt_install(&missing)?;
    }
    node::packages()?;
    browser::found()
}

/// Says on one line what is about to be done, and why.
fn say(what: &str, why: &str) {
    println!("set-up: {what}\n        {why}");
}

/// Installs Debian or Ubuntu packages where the user may, else stops with the command.
fn apt_install(packages: &[&str]) -> Res {
    use crate::fail::Fail;
    let list = packages.join(" ");
    let by_hand = format!("sudo apt-get update && sudo apt-get install -y {list}");
    let why = "the browser tests need a real browser with its driver, and Node to steer it";
    if run::find("apt-get").is_none() {
        let text = format!("Missing: {list} ({why}), and this machine has no apt-get.");
        return Err(Fail::cure(
            &text,
            "install those packages with the machine's own package manager",
        ));
    }
    let root = run::output("id", &["-u"]).as_deref() == Some("0");
    let sudo =
        !root && run::find("sudo").is_some() && run::output("sudo", &["-n", "true"]).is_some();
    if !root && !sudo {
        return Err(Fail::cure(
            &format!("Missing: {list} ({why}), and installing needs root."),
            &by_hand,
        ));
    }
    say(&format!("installing {list} with apt-get"), why);
    let apt = |words: &[&str]| {
        let mut c = if root {
            std::process::Command::new("apt-get")
        } else {
            std::process::Command::new("sudo")
        };
        if sudo {
            c.args(["-n", "apt-get"]);
        }
        c.env("DEBIAN_FRONTEND", "noninteractive").args(words);
        run::ok(&mut c)
    };
    apt(&["-q", "update"])
        .and_then(|()| {
            apt(&[
                &["-q", "install", "-y", "--no-install-recommends"],
                packages,
            ]
            .concat())
        })
        .map_err(|_| Fail::cure(&format!("apt-get could not install {list}."), &by_hand))
}
