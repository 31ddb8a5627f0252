//! `cargo xtask serve`: the release app on 127.0.0.1, with the headers that a host should send.
use crate::{
    args::Args,
    fail::{Doing, Fail, Res},
    run, setup,
    web::{CSP, Page, site},
};
use std::{
    fs,
    io::{BufRead, BufReader, Read, Write},
    net::{TcpListener, TcpStream},
    path::{Path, PathBuf},
    process::Command,
    sync::Arc,
    thread,
    time::Duration,
};

/// The most bytes of a request's head.
const MOST_HEAD: u64 = 32 * 1024;

/// What is served, and below which path.
struct Host {
    dir: PathBuf,
    under: String,
}

/// Builds unless a folder is given, then serves until it is stopped.
pub fn command(args: &Args) -> Res {
    args.allow(&["--open"], &["--port", "--dir", "--under"])?;
    let port: u16 = match args.value("--port") {
        Some(text) => text
            .parse()
            .map_err(|_| Fail::new(format!("--port takes a number to 65535, not `{text}`")))?,
        None => 8017,
    };
    let dir = if let Some(dir) = args.value("--dir") {
        PathBuf::from(dir)
    } else {
        let page = Page::app();
        site::build(&page, &setup::for_build()?)?;
        page.site
    };
    let under = match args.value("--under").unwrap_or("/").trim_matches('/') {
        "" => "/".to_owned(),
        path => format!("/{path}/"),
    };
    let listener = TcpListener::bind(("127.0.0.1", port)).map_err(|e| {
        Fail::cure(
            &format!("Port {port} cannot be used ({e})."),
            "cargo xtask serve --port 8018",
        )
    })?;
    let address = format!("http://{}{under}", listener.local_addr()?);
    println!("{address}\nready");
    std::io::stdout().flush()?;
    if args.has("--open")
        && run::find("xdg-open").is_some_and(|x| Command::new(x).arg(&address).spawn().is_err())
    {
        eprintln!("no browser could be opened; the address is {address}");
    }
    let host = Arc::new(Host { dir, under });
    for stream in listener.incoming() {
        let host = Arc::clone(&host);
        // A visitor that goes away in the middle is no failure of the server.
        thread::spawn(move || stream.map(|s| host.talk(s)));
    }
    Ok(())
}

/// An answer: status, headers, body.
struct Answer {
    status: &'static str,
    headers: Vec<(&'static str, String)>,
    body: Vec<u8>,
}

impl Host {
    /// Answers one connection's requests, one after the other.
    fn talk(&self, stream: TcpStream) -> Res {
        stream.set_read_timeout(Some(Duration::from_secs(30)))?;
        stream.set_nodelay(true)?;
        let mut reader = BufReader::new(stream.try_clone()?);
        let mut out = stream;
        loop {
            // A request's head has an end; what is longer is no request of a browser.
            let mut head = reader.by_ref().take(MOST_HEAD);
            let mut first = String::new();
            if head.read_line(&mut first).doing("reading a request")? == 0 {
                return Ok(());
            }
            let (mut accepts, mut close) = (String::new(), false);
            loop {
                let mut line = String::new();
                if head.read_line(&mut line)? == 0 {
                    return Ok(());
                }
                let Some((name, value)) = line.trim_end().split_once(':') else {
                    break;
                };
                match name.to_ascii_lowercase().as_str() {
                    "accept-encoding" => value.trim().clone_into(&mut accepts),
                    "connection" => close = value.trim().eq_ignore_ascii_case("close"),
                    _ => {}
                }
            }
            let mut words = first.split_whitespace();
            let (method, path) = (
                words.next().unwrap_or_default(),
                words.next().unwrap_or_default(),
            );
            let answer = match method {
                "GET" | "HEAD" => self.answer(path, &accepts),
                _ => plain("405 Method Not Allowed", "only GET and HEAD"),
            };
            let mut head = format!(
                "HTTP/1.1 {}\r\nContent-Length: {}\r\n",
                answer.status,
                answer.body.len()
            );
            for (name, value) in &answer.headers {
                head.push_str(&format!("{name}: {value}\r\n"));
            }
            head.push_str("\r\n");
            out.write_all(head.as_bytes())?;
            if method == "GET" {
                out.write_all(&answer.body)?;
            }
            if close {
                return Ok(());
            }
        }
    }

    fn answer(&self, path: &str, accepts: &str) -> Answer {
        let path = path.split(['?', '#']).next().unwrap_or_default();
        let Some(name) = path.strip_prefix(self.under.as_str()) else {
            return plain("404 Not Found", "not here");
        };
        let name = if name.is_empty() { "index.html" } else { name };
        let tame = name.split('/').all(|part| {
            !part.is_empty()
                && !part.starts_with('.')
                && part
                    .bytes()
                    .all(|b| b.is_ascii_alphanumeric() || b"-_.".contains(&b))
        });
        let file = self.dir.join(name);
        if !tame || !file.is_file() {
            return plain("404 Not Found", "no such file");
        }
        let mut headers = headers(name);
        for (ending, coding) in [(".br", "br"), (".gz", "gzip")] {
            let asked = accepts
                .split(',')
                .any(|a| a.split(';').next().unwrap_or_default().trim() == coding);
            let packed = PathBuf::from(format!("{}{ending}", file.display()));
            if let (true, Ok(body)) = (asked, fs::read(packed)) {
                headers.push(("Content-Encoding", coding.to_owned()));
                return Answer {
                    status: "200 OK",
                    headers,
                    body,
                };
            }
        }
        match fs::read(&file) {
            Ok(body) => Answer {
                status: "200 OK",
                headers,
                body,
            },
            Err(_) => plain("404 Not Found", "no such file"),
        }
    }
}

fn plain(status: &'static str, text: &str) -> Answer {
    let headers = vec![
        ("Content-Type", "text/plain; charset=utf-8".to_owned()),
        ("Cache-Control", "no-store".to_owned()),
    ];
    Answer {
        status,
        headers,
        body: text.as_bytes().to_vec(),
    }
}

/// The headers of a file, by its name alone.
fn headers(name: &str) -> Vec<(&'static str, String)> {
    let kind = match Path::new(name)
        .extension()
        .and_then(|e| e.to_str())
        .unwrap_or_default()
    {
        "html" => "text/html; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "wasm" => "application/wasm",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "webmanifest" => "application/manifest+json",
        "json" => "application/json",
        "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    };
    let keep = if site::is_hashed(name) {
        "public, max-age=31536000, immutable"
    } else {
        "no-cache"
    };
    vec![
        ("Content-Type", kind.to_owned()),
        ("Cache-Control", keep.to_owned()),
        (
            "Content-Security-Policy",
            format!("{CSP}; frame-ancestors 'none'"),
        ),
        ("X-Frame-Options", "DENY".to_owned()),
        ("X-Content-Type-Options", "nosniff".to_owned()),
        ("Referrer-Policy", "no-referrer".to_owned()),
        ("Vary", "Accept-Encoding".to_owned()),
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_hashed_files_are_kept_for_ever() {
        assert!(site::is_hashed("app-0123456789abcdef.wasm"));
        assert!(
            !site::is_hashed("index.html")
                && !site::is_hashed("sw.js")
                && !site::is_hashed("icon-192.png")
        );
    }

    #[test]
    fn nothing_outside_the_folder_is_served() {
        let host = Host {
            dir: PathBuf::from(env!("CARGO_MANIFEST_DIR")),
            under: "/".to_owned(),
        };
        assert_eq!(host.answer("/Cargo.toml", "").status, "200 OK");
        for path in [
            "/../Cargo.toml",
            "/src/../Cargo.toml",
            "//etc/passwd",
            "/%2e%2e/Cargo.toml",
            "x",
            "/.git/config",
        ] {
            assert_eq!(host.answer(path, "br").status, "404 Not Found", "{path}");
        }
    }
}
