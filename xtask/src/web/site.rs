//! The finished folder: hashed files, the page that names them, the worker that keeps them, and each file compressed.
use super::{CSP, Page, compile, compress, hash, html};
use crate::{
    fail::{Doing, Fail, Res},
    licences,
    setup::Bindgen,
};
use std::{
    collections::BTreeMap,
    fs,
    path::{Path, PathBuf},
};

/// The files of a site by name, in the order of their names, so that every build lists them alike.
pub type Files = BTreeMap<String, Vec<u8>>;

/// Builds the page and writes its folder.
pub fn build(page: &Page, bindgen: &Bindgen) -> Res<Files> {
    let files = files(page, bindgen)?;
    // Written beside the old one and swapped in whole: a server that runs on never sees half a build.
    let staged = page.site.with_extension("new");
    let _ = fs::remove_dir_all(&staged);
    write(&files, &staged)?;
    let _ = fs::remove_dir_all(&page.site);
    fs::rename(&staged, &page.site)?;
    Ok(files)
}

/// Writes the files into a folder, each that gains by it in its compressed forms too.
pub fn write(files: &Files, dir: &Path) -> Res {
    for (name, bytes) in files {
        let path = dir.join(name);
        fs::create_dir_all(path.parent().unwrap_or(dir))?;
        fs::write(&path, bytes)?;
        if compress::worth_it(name) {
            fs::write(with(&path, ".br"), compress::brotli(bytes)?)?;
            fs::write(with(&path, ".gz"), compress::gzip(bytes)?)?;
        }
    }
    Ok(())
}

/// The files of a site that was built before, without their compressed forms.
pub fn files_of(page: &Page) -> Res<Files> {
    let mut files = Files::new();
    for entry in fs::read_dir(&page.site).doing("reading the built site")? {
        let path = entry?.path();
        if path.is_dir() {
            add_dir(&mut files, &path, &file_name(&path)?)?;
        } else {
            files.insert(file_name(&path)?, fs::read(&path)?);
        }
    }
    files.retain(|name, _| !name.ends_with(".br") && !name.ends_with(".gz"));
    Ok(files)
}

fn with(path: &Path, ending: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(ending);
    PathBuf::from(name)
}

fn files(page: &Page, bindgen: &Bindgen) -> Res<Files> {
    let module = compile::module(page, bindgen, false)?;
    let mut files = Files::new();
    let source = fs::read_to_string(page.root.join("index.html")).doing("reading index.html")?;
    let html = html::replace(&source, |tag| replacement(page, tag, &module, &mut files))?;
    let html = hash_scripts(&mut files, html);
    let html = with_policy(&html)?;
    no_inline(&html)?;
    if page.notices {
        files.insert(licences::FILE.to_owned(), licences::notices()?.into_bytes());
    }

    // The build's name: a digest over every file, the page's own place for it still blank.
    files.insert("index.html".to_owned(), html.into_bytes());
    let mut all = Vec::new();
    for (name, bytes) in &files {
        all.extend_from_slice(name.as_bytes());
        all.push(0);
        all.extend_from_slice(bytes);
    }
    let worker = page
        .worker
        .as_ref()
        .map(|w| fs::read_to_string(w).doing(w.display()))
        .transpose()?;
    all.extend_from_slice(worker.as_deref().unwrap_or_default().as_bytes());
    let version = hash::hex(&all);
    if let Some(html) = files.get_mut("index.html") {
        *html = String::from_utf8_lossy(html)
            .replace("__VERSION__", &version)
            .into_bytes();
    }
    if let Some(template) = worker {
        let list: Vec<String> = files
            .keys()
            .map(|f| {
                if f == "index.html" {
                    "\"./\"".to_owned()
                } else {
                    format!("\"./{f}\"")
                }
            })
            .collect();
        let text = template
            .replace("__VERSION__", &version)
            .replace("__FILES__", &format!("[{}]", list.join(",")));
        files.insert("sw.js".to_owned(), plain_js(&text).into_bytes());
    }
    Ok(files)
}

/// What stands in the page in the place of a build tag; the files it needs are added.
fn replacement(
    page: &Page,
    tag: &html::Tag,
    module: &compile::Module,
    files: &mut Files,
) -> Res<String> {
    let read = |attribute: &str| -> Res<(PathBuf, Vec<u8>)> {
        let name = tag
            .get(attribute)
            .ok_or_else(|| Fail::new(format!("index.html: a tag lacks {attribute}")))?;
        let path = page.root.join(name);
        Ok((path.clone(), fs::read(&path).doing(path.display())?))
    };
    if tag.name == "script" {
        let (path, bytes) = read("src")?;
        let text = plain_js(&String::from_utf8_lossy(&bytes));
        let name = add_hashed(files, &path, text.into_bytes())?;
        return Ok(format!(
            "<script src=\"./{name}\"{}></script>",
            tag.kept(&["src"])
        ));
    }
    match tag.get("rel").unwrap_or_default() {
        "rust" => loader(module, files),
        "css" => {
            let (path, bytes) = read("href")?;
            let name = add_hashed(
                files,
                &path,
                plain_css(&String::from_utf8_lossy(&bytes)).into_bytes(),
            )?;
            Ok(format!(
                "<link rel=\"stylesheet\" href=\"./{name}\"{}>",
                tag.kept(&["rel", "href"])
            ))
        }
        "icon" => {
            let (path, bytes) = read("href")?;
            let name = add_hashed(files, &path, bytes)?;
            Ok(format!(
                "<link rel=\"icon\" href=\"./{name}\"{}>",
                tag.kept(&["rel", "href"])
            ))
        }
        "copy-file" => {
            let (path, bytes) = read("href")?;
            files.insert(file_name(&path)?, bytes);
            Ok(String::new())
        }
        "copy-dir" => {
            let dir = page.root.join(tag.get("href").unwrap_or_default());
            add_dir(files, &dir, &file_name(&dir)?)?;
            // A stylesheet is not a plain copy: its own tag gives it a hashed name.
            files.retain(|name, _| is_hashed(name) || !name.ends_with(".css"));
            Ok(String::new())
        }
        other => Err(Fail::new(format!(
            "index.html: xtask does not know rel=\"{other}\" (xtask/src/web/site.rs)"
        ))),
    }
}

/// The script that starts the app, in a file of its own, so that the page needs no inline script. It tells the same
/// event as trunk's loader, so that the page's watchdog hears either.
fn loader(module: &compile::Module, files: &mut Files) -> Res<String> {
    let wasm = add_hashed(files, Path::new("app.wasm"), module.wasm.clone())?;
    let js = add_hashed(files, Path::new("app.js"), module.js.clone())?;
    // No `await` at the top of a module: browsers learnt that later than they learnt WebAssembly. A failure is an
    // unhandled rejection, which the page's watchdog hears.
    let start = format!(
        "import init, * as bindings from './{js}';\n\
         init({{ module_or_path: new URL('./{wasm}', import.meta.url) }}).then((wasm) => {{\n\
         window.wasmBindings = bindings;\n\
         dispatchEvent(new CustomEvent('TrunkApplicationStarted', {{ detail: {{ wasm }} }}));\n\
         }});\n"
    );
    let start = add_hashed(files, Path::new("start.js"), start.into_bytes())?;
    Ok(format!(
        "<link rel=\"modulepreload\" href=\"./{js}\">\n\
         <link rel=\"preload\" href=\"./{wasm}\" as=\"fetch\" type=\"application/wasm\" crossorigin>\n\
         <script type=\"module\" src=\"./{start}\"></script>"
    ))
}

fn add_hashed(files: &mut Files, path: &Path, bytes: Vec<u8>) -> Res<String> {
    let name = file_name(path)?;
    let (stem, ending) = name
        .rsplit_once('.')
        .ok_or_else(|| Fail::new(format!("{name} has no ending")))?;
    let hashed = format!("{stem}-{}.{ending}", hash::hex(&bytes));
    files.insert(hashed.clone(), bytes);
    Ok(hashed)
}

fn add_dir(files: &mut Files, dir: &Path, under: &str) -> Res {
    for entry in fs::read_dir(dir).doing(dir.display())? {
        let path = entry?.path();
        let name = format!("{under}/{}", file_name(&path)?);
        if path.is_dir() {
            add_dir(files, &path, &name)?;
        } else {
            files.insert(name, fs::read(&path)?);
        }
    }
    Ok(())
}

fn file_name(path: &Path) -> Res<String> {
    let name = path.file_name().and_then(|n| n.to_str());
    name.map(str::to_owned)
        .ok_or_else(|| Fail::new(format!("{} has no plain name", path.display())))
}

/// Gives the plainly copied scripts that the page names a hashed name, as all others have.
fn hash_scripts(files: &mut Files, mut html: String) -> String {
    let plain: Vec<String> = files
        .keys()
        .filter(|n| n.ends_with(".js") && !is_hashed(n))
        .cloned()
        .collect();
    for name in plain {
        let named = format!("\"./{name}\"");
        if let (true, Some(bytes)) = (html.contains(&named), files.remove(&name)) {
            let bytes = plain_js(&String::from_utf8_lossy(&bytes)).into_bytes();
            let hashed = format!("{}-{}.js", name.trim_end_matches(".js"), hash::hex(&bytes));
            html = html.replace(&named, &format!("\"./{hashed}\""));
            files.insert(hashed, bytes);
        }
    }
    html
}

/// The page with the policy as its first `<meta>`. It does not stand in the source: trunk starts the app from an
/// inline script, which the policy forbids.
fn with_policy(html: &str) -> Res<String> {
    if html.contains("Content-Security-Policy") {
        return Ok(html.to_owned());
    }
    let (head, rest) = html
        .split_once("<head>")
        .ok_or_else(|| Fail::new("index.html has no plain <head>"))?;
    Ok(format!(
        "{head}<head>\n<meta http-equiv=\"Content-Security-Policy\" content=\"{CSP}\">{rest}"
    ))
}

/// True where the name holds the file's digest, so that it can be kept for ever.
pub fn is_hashed(name: &str) -> bool {
    let Some((stem, _)) = name.rsplit_once('.') else {
        return false;
    };
    let Some((_, digest)) = stem.rsplit_once('-') else {
        return false;
    };
    digest.len() == 16 && digest.bytes().all(|b| b.is_ascii_hexdigit())
}

/// The policy forbids scripts and styles in the page; one that slipped in would fail only in the browser.
fn no_inline(html: &str) -> Res {
    for (found, why) in [
        ("<script>", "an inline script"),
        ("<style", "an inline style"),
        (" style=", "a style attribute"),
    ] {
        if html.contains(found) {
            return Err(Fail::new(format!(
                "index.html holds {why}; the Content-Security-Policy forbids it"
            )));
        }
    }
    Ok(())
}

/// The stylesheet without comments and indentation. Strings must not hold `/*`.
fn plain_css(text: &str) -> String {
    let mut out = String::new();
    let mut rest = text;
    while let Some((before, comment)) = rest.split_once("/*") {
        out.push_str(before);
        rest = comment.split_once("*/").map_or("", |(_, after)| after);
    }
    out.push_str(rest);
    lines(&out, |_| true)
}

/// Our own scripts without indentation and without lines that are a comment. They hold no template text of several
/// lines.
fn plain_js(text: &str) -> String {
    lines(text, |l| !l.starts_with("//"))
}

fn lines(text: &str, keep: impl Fn(&str) -> bool) -> String {
    let kept: Vec<&str> = text
        .lines()
        .map(str::trim)
        .filter(|l| !l.is_empty() && keep(l))
        .collect();
    kept.join("\n") + "\n"
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn comments_and_indentation_go() {
        assert_eq!(
            plain_css("/* a */ b {\n  c: d; /* e\n f */\n}\n"),
            "b {\nc: d;\n}\n"
        );
        assert_eq!(
            plain_js("// a\n  let b = 'c // d';\n\n"),
            "let b = 'c // d';\n"
        );
    }

    #[test]
    fn inline_styles_are_refused() {
        assert!(no_inline("<p style=\"x\">").is_err());
        assert!(no_inline("<script src=\"x\">").is_ok());
    }
}
