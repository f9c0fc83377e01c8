//! The service worker's list of files: every file of the app with the hash of its content.

use base64::{Engine, engine::general_purpose::STANDARD};
use sha2::{Digest, Sha256};

/// The worker: its template under the two lines that are particular to this build.
///
/// `files` are paths as the page asks for them, and their contents.
pub(crate) fn worker(template: &str, files: &[(String, Vec<u8>)]) -> String {
    let mut list: Vec<[String; 2]> = files
        .iter()
        .map(|(path, content)| [path.clone(), format!("sha256-{}", STANDARD.encode(hash(content)))])
        .collect();
    list.sort();
    let list = serde_json::json!(list).to_string();
    // Twelve digits tell two builds apart, and are still read out over a telephone. The template counts too:
    // a worker that behaves differently must not take over the files of an older one.
    let version: String =
        hash(format!("{list}{template}").as_bytes()).iter().take(6).map(|byte| format!("{byte:02x}")).collect();
    format!("const VERSION = \"{version}\";\nconst FILES = {list};\n{template}")
}

fn hash(content: &[u8]) -> Vec<u8> {
    Sha256::digest(content).to_vec()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn files(pairs: &[(&str, &str)]) -> Vec<(String, Vec<u8>)> {
        pairs.iter().map(|(path, content)| ((*path).to_owned(), content.as_bytes().to_vec())).collect()
    }

    fn version(worker: &str) -> &str {
        worker.lines().next().unwrap()
    }

    #[test]
    fn each_file_is_listed_with_its_hash() {
        // `printf abc | openssl dgst -sha256 -binary | base64`; also the first test vector of FIPS 180-2.
        let worker = worker("rest", &files(&[("b.js", "abc"), ("a.css", "")]));
        let list = worker.lines().nth(1).unwrap();
        assert_eq!(
            list,
            "const FILES = [[\"a.css\",\"sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=\"],\
             [\"b.js\",\"sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0=\"]];"
        );
        assert!(worker.ends_with("\nrest"));
    }

    #[test]
    fn the_version_follows_the_contents_and_not_the_order() {
        let one = worker("rest", &files(&[("a", "1"), ("b", "2")]));
        assert_eq!(one, worker("rest", &files(&[("b", "2"), ("a", "1")])), "order");
        for (template, other) in [
            ("rest", [("a", "1"), ("b", "3")]),
            ("rest", [("a", "1"), ("c", "2")]),
            ("other", [("a", "1"), ("b", "2")]),
        ] {
            assert_ne!(version(&one), version(&worker(template, &files(&other))), "{template} {other:?}");
        }
    }
}
