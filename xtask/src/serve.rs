//! The web app on this machine's own address, as a plain web server would give it.

use crate::halt::{AtFile, Halt};
use crate::tree;
use std::io::{BufRead, BufReader, Write};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::{Component, Path, PathBuf};
use std::thread;
use std::time::Duration;

/// Taken when nothing is said; the next free one if another program has it.
const PORT: u16 = 8137;

/// Serves `dist/web` until stopped.
pub(crate) fn serve(port: Option<u16>) -> Result<(), Halt> {
    let web = tree::web();
    if !web.join("index.html").is_file() {
        return Err(Halt::NotBuilt(web));
    }
    let listener = listen(port)?;
    let address = listener.local_addr().at("served", &web)?;
    println!("Scantling is at http://{address}/ (Ctrl+C ends it).");
    for stream in listener.incoming().flatten() {
        let web = web.clone();
        // A browser that goes away in the middle concerns nobody.
        thread::spawn(move || answer(&stream, &web));
    }
    Ok(())
}

fn listen(port: Option<u16>) -> Result<TcpListener, Halt> {
    let open = |port: u16| TcpListener::bind((Ipv4Addr::LOCALHOST, port)).map_err(|source| Halt::Port { port, source });
    match port {
        Some(port) => open(port),
        None => open(PORT).or_else(|_| open(0)),
    }
}

fn answer(stream: &TcpStream, web: &Path) -> std::io::Result<()> {
    stream.set_read_timeout(Some(Duration::from_secs(10)))?;
    let mut lines = BufReader::new(stream).lines();
    let request = lines.next().transpose()?.unwrap_or_default();
    // The headers say nothing that matters here, but unread ones would reset the connection when it closes.
    while lines.next().transpose()?.is_some_and(|line| !line.is_empty()) {}
    respond(&request, web, stream)
}

/// Answers one request, of which `request` is the first line.
fn respond(request: &str, web: &Path, mut out: impl Write) -> std::io::Result<()> {
    let mut words = request.split(' ');
    let (method, target) = (words.next().unwrap_or_default(), words.next().unwrap_or_default());
    let (status, mime, body) = match (method, file(web, target)) {
        ("GET" | "HEAD", Some(path)) => match std::fs::read(&path) {
            Ok(body) => ("200 OK", mime(&path), body),
            Err(_) => ("404 Not Found", "text/plain; charset=utf-8", b"There is no such file.\n".to_vec()),
        },
        ("GET" | "HEAD", None) => ("404 Not Found", "text/plain; charset=utf-8", b"There is no such file.\n".to_vec()),
        _ => ("405 Method Not Allowed", "text/plain; charset=utf-8", b"Only GET and HEAD.\n".to_vec()),
    };
    write!(
        out,
        "HTTP/1.1 {status}\r\nContent-Type: {mime}\r\nContent-Length: {}\r\nCache-Control: no-cache\r\n\
         X-Content-Type-Options: nosniff\r\nConnection: close\r\n\r\n",
        body.len()
    )?;
    if method == "GET" { out.write_all(&body) } else { Ok(()) }
}

/// The file that a request's target names, if it stays inside the folder.
fn file(web: &Path, target: &str) -> Option<PathBuf> {
    let path = target.split(['?', '#']).next()?.strip_prefix('/')?;
    // No file of the app has a name that needs an escape, so none is undone: `%2e%2e` is a name like any other.
    let path = if path.is_empty() { "index.html" } else { path };
    let inside = Path::new(path).components().all(|part| matches!(part, Component::Normal(_)));
    (inside && !path.contains('\\')).then(|| web.join(path))
}

fn mime(path: &Path) -> &'static str {
    match path.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("webmanifest") => "application/manifest+json",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_files_inside_the_folder_are_named() {
        let web = Path::new("web");
        for (target, want) in [
            ("/", Some("web/index.html")),
            ("/?from=icon", Some("web/index.html")),
            ("/boot.js", Some("web/boot.js")),
            ("/a/b.js?x=/..", Some("web/a/b.js")),
            ("/../Cargo.toml", None),
            ("/a/../../Cargo.toml", None),
            ("//etc/passwd", None),
            ("/..\\Cargo.toml", None),
            ("/%2e%2e/Cargo.toml", Some("web/%2e%2e/Cargo.toml")),
            ("http://elsewhere/", None),
            ("", None),
        ] {
            assert_eq!(file(web, target).as_deref(), want.map(Path::new), "{target}");
        }
    }

    #[test]
    fn answers_say_what_they_carry() {
        let web = tree::root().join("src-ui/static");
        let head = |request: &str| {
            let mut out = Vec::new();
            respond(request, &web, &mut out).unwrap();
            let text = String::from_utf8(out).unwrap();
            let (head, body) = text.split_once("\r\n\r\n").unwrap();
            (head.to_owned(), body.len())
        };
        let length = std::fs::read(web.join("boot.js")).unwrap().len();
        let (got, body) = head("GET /boot.js HTTP/1.1");
        assert!(got.starts_with("HTTP/1.1 200 OK\r\nContent-Type: text/javascript"), "{got}");
        assert!(got.contains(&format!("Content-Length: {length}\r\nCache-Control: no-cache")), "{got}");
        assert_eq!(body, length);
        assert_eq!(head("HEAD /boot.js HTTP/1.1"), (got, 0));
        assert!(head("GET /none.js HTTP/1.1").0.starts_with("HTTP/1.1 404"));
        assert!(head("GET /../Cargo.toml HTTP/1.1").0.starts_with("HTTP/1.1 404"));
        assert!(head("POST / HTTP/1.1").0.starts_with("HTTP/1.1 405"));
        assert!(head("").0.starts_with("HTTP/1.1 405"));
    }

    #[test]
    fn programs_have_the_type_that_browsers_insist_on() {
        assert_eq!(mime(Path::new("a/scantling_bg.wasm")), "application/wasm");
        assert_eq!(mime(Path::new("manifest.webmanifest")), "application/manifest+json");
        assert_eq!(mime(Path::new("unknown")), "application/octet-stream");
    }
}
