//! A web server on the machine's own address that can be switched off and on, and remembers what was asked of it.

use std::io::{BufRead, BufReader, Write};
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::{Component, Path, PathBuf};
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::thread::JoinHandle;
use std::time::Duration;

/// Serves a folder until dropped.
pub struct Server {
    address: SocketAddr,
    shared: Arc<Shared>,
    thread: Option<JoinHandle<()>>,
}

struct Shared {
    folder: Mutex<PathBuf>,
    requests: Mutex<Vec<String>>,
    on: AtomicBool,
    ending: AtomicBool,
}

fn held<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    // A thread that panicked while answering has left a list of strings, which cannot be half-made.
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

impl Server {
    /// Serves this folder on a free port.
    ///
    /// # Errors
    /// When the system gives no port.
    pub fn start(folder: &Path) -> std::io::Result<Self> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?;
        let address = listener.local_addr()?;
        let shared = Arc::new(Shared {
            folder: Mutex::new(folder.to_owned()),
            requests: Mutex::default(),
            on: AtomicBool::new(true),
            ending: AtomicBool::new(false),
        });
        let thread = {
            let shared = shared.clone();
            std::thread::spawn(move || serve(&listener, &shared))
        };
        Ok(Self { address, shared, thread: Some(thread) })
    }

    /// Where it serves: `http://127.0.0.1:…`, without a slash at the end.
    pub fn origin(&self) -> String {
        format!("http://{}", self.address)
    }

    /// Every path asked for so far, in order; also while switched off.
    pub fn requests(&self) -> Vec<String> {
        held(&self.shared.requests).clone()
    }

    /// From now on every connection is closed without a word.
    pub fn switch_off(&self) {
        self.shared.on.store(false, Ordering::SeqCst);
    }

    /// From now on this folder is served: a new version of the app.
    pub fn serve_instead(&self, folder: &Path) {
        *held(&self.shared.folder) = folder.to_owned();
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.shared.ending.store(true, Ordering::SeqCst);
        // A last connection, so that the thread wakes up and sees that it is over.
        drop(TcpStream::connect(self.address));
        if let Some(thread) = self.thread.take() {
            // A panic in there has been printed already.
            let _ = thread.join();
        }
    }
}

fn serve(listener: &TcpListener, shared: &Arc<Shared>) {
    for stream in listener.incoming().flatten() {
        if shared.ending.load(Ordering::SeqCst) {
            return;
        }
        let shared = shared.clone();
        // A browser that goes away in the middle concerns nobody.
        std::thread::spawn(move || answer(&stream, &shared));
    }
}

fn answer(stream: &TcpStream, shared: &Shared) -> std::io::Result<()> {
    stream.set_read_timeout(Some(Duration::from_secs(10)))?;
    let mut lines = BufReader::new(stream).lines();
    let request = lines.next().transpose()?.unwrap_or_default();
    while lines.next().transpose()?.is_some_and(|line| !line.is_empty()) {}
    let target = request.split(' ').nth(1).unwrap_or_default().to_owned();
    held(&shared.requests).push(target.clone());
    if !shared.on.load(Ordering::SeqCst) {
        return Ok(());
    }
    let body = file(&held(&shared.folder), &target).and_then(|path| Some((mime(&path), std::fs::read(path).ok()?)));
    let (status, mime, body) = match body {
        Some((mime, body)) => ("200 OK", mime, body),
        None => ("404 Not Found", "text/plain", b"There is no such file.\n".to_vec()),
    };
    let mut out = stream;
    // An hour in the cache, as many servers send it: a new version must get through all the same.
    write!(
        out,
        "HTTP/1.1 {status}\r\nContent-Type: {mime}\r\nContent-Length: {}\r\nCache-Control: max-age=3600\r\n\
         Connection: close\r\n\r\n",
        body.len()
    )?;
    out.write_all(&body)
}

fn file(folder: &Path, target: &str) -> Option<PathBuf> {
    let path = target.split(['?', '#']).next()?.strip_prefix('/')?;
    let path = if path.is_empty() { "index.html" } else { path };
    let inside = Path::new(path).components().all(|part| matches!(part, Component::Normal(_)));
    inside.then(|| folder.join(path))
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
