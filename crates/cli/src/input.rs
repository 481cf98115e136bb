//! Files in: opening, decoding, refusing.

use crate::progress::{Progress, Watched};
use crate::talk::Talk;
use anyhow::Context;
use clap::Args;
use desk::intake::{About, Fault, Refusal, RefusedFile, Row, Scope, decode};
use model::{Finding, Severity};
use serde_json::json;
use std::fs::File;
use std::io::{self, BufWriter, Read};
use std::path::{Path, PathBuf};

/// Options of commands that read CSV files.
#[derive(Args)]
pub struct Reading {
    /// Take the good rows and write the refused ones to a file beside the input (NAME.refused.csv)
    #[arg(long)]
    pub skip_bad: bool,
    /// Encoding of the files, such as windows-1252; UTF-8 unless told
    #[arg(long, value_name = "NAME")]
    pub encoding: Option<String>,
}

/// Refusals shown one by one.
const SHOWN: u64 = 20;
/// Refused rows after which a file that is not taken anyway is given up.
const GIVE_UP: u64 = 1000;

/// What became of a file that was taken.
#[derive(Debug, Default)]
pub struct Taken {
    /// Good rows.
    pub rows: u64,
    /// Refused rows.
    pub refused: u64,
    /// Whether a remark on the file or a row needs a person.
    pub needs_person: bool,
}

/// Name of a file in messages.
pub fn name(path: &Path) -> String {
    if is_stdin(path) {
        "-".to_owned()
    } else {
        path.display().to_string()
    }
}

fn is_stdin(path: &Path) -> bool {
    path == Path::new("-")
}

/// Opens a file, or standard input for `-`.
pub fn open(path: &Path, reading: &Reading) -> anyhow::Result<Box<dyn Read>> {
    let (read, size): (Box<dyn Read>, Option<u64>) = if is_stdin(path) {
        (Box::new(io::stdin().lock()), None)
    } else {
        let file = File::open(path).with_context(|| name(path))?;
        let about = file.metadata().with_context(|| name(path))?;
        anyhow::ensure!(
            !about.is_dir(),
            "{}: this is a folder, a file was expected",
            name(path)
        );
        // pipes and devices say 0
        let size = Some(about.len()).filter(|_| about.is_file());
        (Box::new(file), size)
    };
    let read = Watched {
        read,
        progress: Progress::new(&name(path), size),
    };
    match &reading.encoding {
        None => Ok(Box::new(read)),
        Some(label) => {
            let decoded =
                decode(read, label).with_context(|| format!("{label}: no such encoding"))?;
            Ok(Box::new(decoded))
        }
    }
}

/// Goes through a file's rows and hands the good ones to `keep`, which may still refuse them. `None`: refused, and said so.
pub fn take<T, I>(
    talk: &Talk,
    path: &Path,
    reading: &Reading,
    opened: Result<I, Refusal>,
    mut keep: impl FnMut(T) -> Result<(), Fault>,
) -> anyhow::Result<Option<Taken>>
where
    I: Iterator<Item = Result<Row<T>, Refusal>> + About,
{
    let file = name(path);
    let mut rows = match opened {
        Ok(rows) => rows,
        Err(refusal) => {
            talk.refusal(&file, &refusal)?;
            return Ok(None);
        }
    };
    let mut taken = Taken::default();
    let mut bad = Bad {
        talk,
        file: &file,
        path,
        skip: reading.skip_bad,
        out: None,
    };
    while let Some(item) = rows.next() {
        let kept = item.and_then(|row| {
            let remarks = row.remarks;
            keep(row.value)
                .map(|()| remarks)
                .map_err(|fault| rows.refuse(fault))
        });
        match kept {
            Ok(remarks) => {
                taken.rows += 1;
                taken.needs_person |= remark(talk, &file, &remarks)?;
            }
            Err(refusal) => {
                taken.refused += 1;
                bad.one(&rows, &refusal, taken.refused)?;
                if refusal.scope == Scope::File || (!reading.skip_bad && taken.refused >= GIVE_UP) {
                    bad.end(taken.refused, refusal.scope == Scope::File)?;
                    return Ok(None);
                }
            }
        }
    }
    taken.needs_person |= remark(talk, &file, &rows.remarks())? || taken.refused > 0;
    let whole = bad.end(taken.refused, false)?;
    Ok(whole.then_some(taken))
}

fn remark(talk: &Talk, file: &str, remarks: &[Finding]) -> io::Result<bool> {
    for finding in remarks {
        talk.remark(file, finding)?;
    }
    Ok(remarks.iter().any(|f| f.severity >= Severity::Act))
}

/// The refused rows of a file.
struct Bad<'a> {
    talk: &'a Talk,
    file: &'a str,
    path: &'a Path,
    skip: bool,
    out: Option<(PathBuf, RefusedFile<BufWriter<File>>)>,
}

impl Bad<'_> {
    fn one(&mut self, about: &impl About, refusal: &Refusal, so_far: u64) -> anyhow::Result<()> {
        if so_far <= SHOWN {
            self.talk.refusal(self.file, refusal)?;
        }
        if !self.skip || refusal.scope == Scope::File {
            return Ok(());
        }
        if self.out.is_none() {
            let path = beside(self.path);
            let file = File::create(&path).with_context(|| name(&path))?;
            self.out = Some((
                path,
                RefusedFile::new(BufWriter::new(file), about.headers())?,
            ));
        }
        if let Some((_, out)) = &mut self.out {
            out.write(refusal, &self.talk.measure.finding(&refusal.finding))?;
        }
        Ok(())
    }

    /// Says what became of the refused rows; whether the good ones may be taken.
    fn end(&mut self, refused: u64, broken: bool) -> anyhow::Result<bool> {
        let count = |n: u64| ("count", (n as i64).into());
        let file = ("file", self.file.to_owned().into());
        if refused > SHOWN {
            self.talk
                .note(&self.talk.words("cli-more", &[count(refused - SHOWN)]));
        }
        if let Some((path, out)) = self.out.take() {
            let rows = out.rows;
            out.finish().with_context(|| name(&path))?;
            let to = ("to", name(&path).into());
            self.talk.note(
                &self
                    .talk
                    .words("cli-refused-written", &[file.clone(), count(rows), to]),
            );
        }
        if broken {
            return Ok(false);
        }
        if refused == 0 || self.skip {
            return Ok(true);
        }
        let code = if refused >= GIVE_UP {
            "cli-gave-up"
        } else {
            "cli-nothing-taken"
        };
        self.talk
            .note(&self.talk.words(code, &[file, count(refused)]));
        self.talk.object(
            &json!({"kind": "nothing taken", "file": self.file, "refused_rows": refused}),
        )?;
        Ok(false)
    }
}

/// `palms.csv` → `palms.refused.csv` in the same folder; standard input → `stdin.refused.csv` here.
fn beside(path: &Path) -> PathBuf {
    if is_stdin(path) {
        return PathBuf::from("stdin.refused.csv");
    }
    let stem = path.file_stem().unwrap_or(path.as_os_str());
    let mut file = stem.to_os_string();
    file.push(".refused.csv");
    path.with_file_name(file)
}
