//! Which packages end in the app's module? Its normal dependencies for WebAssembly, without what only runs at build time.
use crate::{
    fail::{Doing, Fail, Res},
    project, run,
};
use serde_json::Value;
use std::{collections::BTreeSet, path::PathBuf};

/// A library that is in the app.
pub struct Package {
    /// Its name in the registry.
    pub name: String,
    /// Its version.
    pub version: String,
    /// The licence as its manifest has it.
    pub licence: String,
    /// Whom its manifest names.
    pub authors: Vec<String>,
    /// Where its files are; none for the standard library, which comes with the compiler.
    pub dir: Option<PathBuf>,
}

/// All of them by name, behind the standard library, which is in the app too.
pub fn in_app() -> Res<Vec<Package>> {
    let mut cargo = run::cargo();
    cargo.args(["metadata", "--format-version", "1", "--locked"]);
    cargo.args(["--filter-platform", "wasm32-unknown-unknown"]);
    let out = cargo.output().doing(run::shown(&cargo))?;
    if !out.status.success() {
        let why = String::from_utf8_lossy(&out.stderr);
        return Err(Fail::new(format!("{}: {why}", run::shown(&cargo))));
    }
    let metadata: Value = serde_json::from_slice(&out.stdout).doing("reading cargo metadata")?;
    let mut all = vec![Package {
        name: "Rust standard library".to_owned(),
        version: project::rust_version()?,
        licence: "MIT OR Apache-2.0".to_owned(),
        authors: vec!["The Rust Project Contributors".to_owned()],
        dir: None,
    }];
    all.extend(linked(&metadata, "benchslate-app")?);
    Ok(all)
}

/// The packages that `root` links, by name and version; our own are left out.
fn linked(metadata: &Value, root: &str) -> Res<Vec<Package>> {
    let packages = list(metadata, "packages");
    let nodes = metadata.get("resolve").map(|r| list(r, "nodes"));
    let nodes = nodes.ok_or_else(|| Fail::new("cargo metadata resolves nothing"))?;
    let of = |id: &str| packages.iter().find(|p| text(p, "id") == id);
    let start = packages.iter().find(|p| text(p, "name") == root);
    let start = start.ok_or_else(|| Fail::new(format!("cargo metadata knows no {root}")))?;
    let mut seen = BTreeSet::new();
    let mut next = vec![text(start, "id")];
    let mut found = Vec::new();
    while let Some(id) = next.pop() {
        let Some(package) = of(id).filter(|p| !only_at_build_time(p)) else {
            continue;
        };
        if !seen.insert(id) {
            continue;
        }
        let node = nodes.iter().find(|n| text(n, "id") == id);
        for dep in node.map(|n| list(n, "deps")).unwrap_or_default() {
            if list(dep, "dep_kinds").iter().any(is_normal) {
                next.push(text(dep, "pkg"));
            }
        }
        if package.get("source").is_some_and(Value::is_string) {
            found.push(read(package));
        }
    }
    found.sort_by(|a, b| (&a.name, &a.version).cmp(&(&b.name, &b.version)));
    Ok(found)
}

fn read(package: &Value) -> Package {
    let manifest = PathBuf::from(text(package, "manifest_path"));
    let authors = list(package, "authors").iter();
    Package {
        name: text(package, "name").to_owned(),
        version: text(package, "version").to_owned(),
        licence: text(package, "license").to_owned(),
        authors: authors
            .filter_map(Value::as_str)
            .map(str::to_owned)
            .collect(),
        dir: manifest.parent().map(PathBuf::from),
    }
}

/// A macro runs in the compiler; nothing of it is in the module.
fn only_at_build_time(package: &Value) -> bool {
    list(package, "targets")
        .iter()
        .any(|target| list(target, "kind").iter().any(|kind| kind == "proc-macro"))
}

/// Neither for tests nor for a build script.
fn is_normal(kind: &Value) -> bool {
    kind.get("kind").is_some_and(Value::is_null)
}

fn list<'a>(value: &'a Value, key: &str) -> &'a [Value] {
    value
        .get(key)
        .and_then(Value::as_array)
        .map(Vec::as_slice)
        .unwrap_or_default()
}

fn text<'a>(value: &'a Value, key: &str) -> &'a str {
    value.get(key).and_then(Value::as_str).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn macros_tests_and_our_own_packages_are_left_out() {
        let package = |name: &str, own: bool, kind: &str| {
            let source = if own { "null" } else { "\"registry\"" };
            format!(
                r#"{{"id":"{name}","name":"{name}","version":"1.0.0","license":"MIT","source":{source},
                "authors":["A. Person"],"manifest_path":"/x/{name}/Cargo.toml","targets":[{{"kind":["{kind}"]}}]}}"#
            )
        };
        let dep =
            |to: &str, kind: &str| format!(r#"{{"pkg":"{to}","dep_kinds":[{{"kind":{kind}}}]}}"#);
        let json = format!(
            r#"{{"packages":[{},{},{},{},{},{}],"resolve":{{"nodes":[
                {{"id":"app","deps":[{},{},{}]}},{{"id":"core","deps":[{}]}},{{"id":"macro","deps":[{}]}}]}}}}"#,
            package("app", true, "bin"),
            package("core", true, "lib"),
            package("lib", false, "lib"),
            package("macro", false, "proc-macro"),
            package("parser", false, "lib"),
            package("checks", false, "lib"),
            dep("core", "null"),
            dep("macro", "null"),
            dep("checks", "\"dev\""),
            dep("lib", "null"),
            dep("parser", "null"),
        );
        let found = linked(&serde_json::from_str(&json).unwrap(), "app");
        let names: Vec<String> = found.ok().unwrap().into_iter().map(|p| p.name).collect();
        assert_eq!(names, ["lib"]);
    }
}
