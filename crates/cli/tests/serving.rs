//! `serve` and `demo`: the real program on a free port.
#![allow(missing_docs)]

mod common;

use common::{run, spearleaf, yard};
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use tempfile::tempdir;

/// The program serving; stopped when it goes out of scope.
struct Serving {
    child: Child,
    address: String,
    said: String,
}

impl Serving {
    fn start(args: &[&str], folder: &Path) -> Serving {
        let mut child = Command::new(assert_cmd::cargo::cargo_bin!("spearleaf"))
            .args(args)
            .arg(folder)
            .args(["--listen", "127.0.0.1:0"])
            .env("LC_ALL", "C")
            .stdout(Stdio::piped())
            .spawn()
            .unwrap();
        let mut out = BufReader::new(child.stdout.take().unwrap());
        let mut said = String::new();
        let address = loop {
            let mut line = String::new();
            assert_ne!(
                out.read_line(&mut line).unwrap(),
                0,
                "ended before serving: {said}"
            );
            said.push_str(&line);
            if let Some((_, rest)) = line.split_once("http://") {
                break rest.split('/').next().unwrap().to_owned();
            }
        };
        Serving {
            child,
            address,
            said,
        }
    }

    fn get(&self, path: &str) -> String {
        let mut stream = TcpStream::connect(&self.address).unwrap();
        write!(
            stream,
            "GET {path} HTTP/1.1\r\nHost: {}\r\nConnection: close\r\n\r\n",
            self.address
        )
        .unwrap();
        let mut answer = Vec::new();
        stream.read_to_end(&mut answer).unwrap();
        String::from_utf8_lossy(&answer).into_owned()
    }
}

impl Drop for Serving {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

#[test]
fn serve_shows_what_was_imported() {
    let folder = tempdir().unwrap();
    let data = folder.path().join("data");
    let (palms, _) = yard(folder.path());
    assert_eq!(
        run(spearleaf()
            .args(["import", "palms"])
            .arg(palms)
            .arg("--data")
            .arg(&data))
        .0,
        0
    );
    let serving = Serving::start(&["serve"], &data);
    let answer = serving.get("/palms");
    assert!(
        answer.starts_with("HTTP/1.1 200") && answer.contains("A-1"),
        "{answer}"
    );
}

#[test]
fn demo_fills_an_empty_folder_and_serves_it_again() {
    let folder = tempdir().unwrap();
    let place = folder.path().join("demo");
    let first = Serving::start(&["demo"], &place);
    assert!(first.said.contains("This is a demo"), "{}", first.said);
    let answer = first.get("/");
    assert!(
        answer.starts_with("HTTP/1.1 200") && answer.contains("Demo"),
        "{answer}"
    );
    drop(first);
    let count = || run(spearleaf().args(["verify", "--json"]).arg(&place)).1;
    let before = count();
    let second = Serving::start(&["demo"], &place);
    assert!(second.get("/palms").starts_with("HTTP/1.1 200"));
    drop(second);
    assert_eq!(count(), before, "an existing demo is served as it is");
}

#[test]
fn a_demo_cut_short_before_anything_was_written_is_filled() {
    let folder = tempdir().unwrap();
    let serving = Serving::start(&["serve"], folder.path());
    drop(serving);
    let demo = Serving::start(&["demo"], folder.path());
    assert!(demo.get("/").contains("Demo"));
    drop(demo);
    let said = run(spearleaf().args(["verify", "--json"]).arg(folder.path())).1;
    let verdict: serde_json::Value = serde_json::from_str(&said).unwrap();
    assert!(verdict["entries"].as_u64().unwrap() > 60, "{verdict}");
}

#[test]
fn demo_leaves_other_folders_alone() {
    let folder = tempdir().unwrap();
    yard(folder.path());
    let (status, _, err) = run(spearleaf().arg("demo").arg(folder.path()));
    assert_eq!(status, 2);
    assert!(err.contains("is not empty and holds no demo"), "{err}");
    let data = folder.path().join("data");
    let palms = folder.path().join("palms.csv");
    assert_eq!(
        run(spearleaf()
            .args(["import", "palms"])
            .arg(palms)
            .arg("--data")
            .arg(&data))
        .0,
        0
    );
    assert_eq!(
        run(spearleaf().arg("demo").arg(&data)).0,
        2,
        "a ledger that is no demo is not taken for one"
    );
}

#[test]
fn a_port_in_use_is_said() {
    let folder = tempdir().unwrap();
    let taken = std::net::TcpListener::bind("127.0.0.1:0").unwrap();
    let at = taken.local_addr().unwrap().to_string();
    let (status, _, err) = run(spearleaf()
        .arg("serve")
        .arg(folder.path().join("d"))
        .args(["--listen", &at]));
    assert_eq!(status, 2);
    assert!(err.contains("another program may use this port"), "{err}");
}
