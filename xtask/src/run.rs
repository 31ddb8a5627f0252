//! How other programs are run: found, timed, limited, and their output kept.
use crate::fail::{Doing, Fail, Res};
use std::{
    env,
    path::{Path, PathBuf},
    process::{Command, Stdio},
    thread,
    time::{Duration, Instant},
};

/// Where a program is on PATH.
pub fn find(program: &str) -> Option<PathBuf> {
    env::split_paths(&env::var_os("PATH")?)
        .map(|dir| dir.join(program))
        .find(|file| file.is_file())
}

/// The cargo that started this process, without the settings that it added for this process alone.
pub fn cargo() -> Command {
    let mut c = Command::new(env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    for key in [
        "CARGO_MANIFEST_DIR",
        "CARGO_PKG_NAME",
        "CARGO_PKG_VERSION",
        "RUSTFLAGS",
        "NO_COLOR",
    ] {
        c.env_remove(key);
    }
    c.current_dir(crate::project::root());
    c
}

/// The command as one would type it.
pub fn shown(command: &Command) -> String {
    let mut words = vec![
        Path::new(command.get_program())
            .file_name()
            .unwrap_or_default()
            .to_string_lossy()
            .into_owned(),
    ];
    words.extend(command.get_args().map(|a| a.to_string_lossy().into_owned()));
    words.join(" ")
}

/// Runs a command with its output on the terminal; anything but success is a failure.
pub fn ok(command: &mut Command) -> Res {
    let status = command.status().doing(shown(command))?;
    if status.success() {
        Ok(())
    } else {
        Err(Fail::new(format!("failed: {}", shown(command))))
    }
}

/// Runs a command that must not wait for ever. True where it succeeded in time.
pub fn ok_within(command: &mut Command, limit: Duration) -> bool {
    let Ok(mut child) = command.stdin(Stdio::null()).spawn() else {
        return false;
    };
    let start = Instant::now();
    loop {
        match child.try_wait() {
            Ok(Some(status)) => return status.success(),
            Ok(None) if start.elapsed() < limit => thread::sleep(Duration::from_millis(50)),
            _ => {
                let _ = child.kill();
                let _ = child.wait();
                return false;
            }
        }
    }
}

/// What a command prints to standard output, without the space around it; none where it fails.
pub fn output(program: &str, args: &[&str]) -> Option<String> {
    let out = Command::new(program)
        .args(args)
        .stderr(Stdio::null())
        .stdin(Stdio::null())
        .output()
        .ok()?;
    out.status
        .success()
        .then(|| String::from_utf8_lossy(&out.stdout).trim().to_owned())
}
