//! `cargo xtask trunk`, called by trunk at the end of its own build: puts the whole site in the place of what trunk made.
//! So `trunk build` and `trunk serve` give what `cargo xtask serve` gives: policy, service worker, notices and all.
use super::{Page, site};
use crate::{
    args::Args,
    fail::{Doing, Fail, Res},
    setup,
};
use std::{
    env, fs,
    path::{Path, PathBuf},
};

/// The folder that trunk is about to move into its `dist`; it tells its hooks of it by this name.
const STAGING: &str = "TRUNK_STAGING_DIR";

/// Builds the site into trunk's folder.
pub fn command(args: &Args) -> Res {
    args.allow(&[], &[])?;
    let dir = env::var_os(STAGING).map(PathBuf::from).ok_or_else(|| {
        Fail::cure(
            &format!("{STAGING} is not set: trunk calls this command when it builds."),
            "cargo xtask serve",
        )
    })?;
    made_by_trunk(&dir)?;
    let page = Page::app();
    let files = site::build(&page, &setup::for_build()?)?;
    empty(&dir)?;
    site::write(&files, &dir)
}

/// The folder will be emptied, so it must be what it is taken for.
fn made_by_trunk(dir: &Path) -> Res {
    if dir.join("index.html").is_file() {
        return Ok(());
    }
    let dir = dir.display();
    Err(Fail::new(format!(
        "{STAGING} is {dir}, which holds no index.html: nothing is touched"
    )))
}

/// What trunk itself compiled only told whether the app compiles.
fn empty(dir: &Path) -> Res {
    for entry in fs::read_dir(dir).doing(dir.display())? {
        let path = entry?.path();
        if path.is_dir() {
            fs::remove_dir_all(&path)?;
        } else {
            fs::remove_file(&path)?;
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::project;

    #[test]
    fn a_folder_that_trunk_did_not_make_is_left_alone() {
        assert!(made_by_trunk(&project::root().join("core")).is_err());
        assert!(made_by_trunk(Path::new("/nowhere")).is_err());
    }

    #[test]
    fn trunk_calls_this_command_when_all_else_is_done() {
        let config = fs::read_to_string(project::root().join("Trunk.toml")).unwrap();
        let (_, hook) = config.split_once("[[hooks]]").unwrap();
        for line in [
            "stage = \"post_build\"",
            "command = \"cargo\"",
            "command_arguments = [\"xtask\", \"trunk\"]",
        ] {
            assert!(
                hook.lines().any(|l| l == line),
                "Trunk.toml lacks {line} in its hook"
            );
        }
    }
}
