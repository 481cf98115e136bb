//! Every code that intake, assessment and command line can utter has words, and no words are left that nothing utters.
#![allow(missing_docs)]

mod common;

use common::repository;
use desk::words::{Lang, Words};
use std::collections::BTreeSet;
use std::path::Path;

const PREFIXES: [&str; 6] = [
    "cli-", "intake-", "assess-", "species-", "touches-", "tracing-",
];

/// Texts of all source files below a folder, tests left out.
fn sources(folder: &Path, out: &mut String) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources(&path, out);
        } else if path.extension().is_some_and(|e| e == "rs") && !path.ends_with("tests.rs") {
            out.push_str(&std::fs::read_to_string(path).unwrap());
        }
    }
}

/// Quoted words of a text that look like a code of ours.
fn codes(text: &str) -> BTreeSet<String> {
    let shape = |word: &&str| {
        word.bytes()
            .all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'-')
    };
    let ours = |word: &&str| {
        PREFIXES
            .iter()
            .any(|p| word.starts_with(p) && word.len() > p.len())
    };
    text.split('"')
        .filter(shape)
        .filter(ours)
        .map(str::to_owned)
        .collect()
}

#[test]
fn codes_have_words_and_words_have_codes() {
    let mut text = String::new();
    for folder in [
        "crates/cli/src",
        "crates/desk/src/intake",
        "crates/desk/src/assess",
        "crates/desk/src/tracing",
    ] {
        sources(&repository(folder), &mut text);
    }
    let uttered = codes(&text);
    assert!(uttered.len() > 80, "{uttered:?}");
    for lang in Lang::ALL {
        let words = Words::new(lang);
        let mute: Vec<&String> = uttered.iter().filter(|code| !words.has(code)).collect();
        assert!(mute.is_empty(), "no words in {}: {mute:?}", lang.tag());
    }
    for file in ["cli.ftl", "intake.ftl", "tracing.ftl"] {
        let ftl = std::fs::read_to_string(repository("crates/desk/lang/en").join(file)).unwrap();
        let keys = ftl
            .lines()
            .filter_map(|l| l.split_once(" = "))
            .map(|(key, _)| key)
            .filter(|k| !k.starts_with(' '));
        let unused: Vec<&str> = keys.filter(|key| !uttered.contains(*key)).collect();
        assert!(unused.is_empty(), "{file}: nothing says {unused:?}");
    }
}
