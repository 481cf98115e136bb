//! A file looked through before it is taken: what will be recorded, what is there already, what is refused.
//!
//! A palm whose tag stands in the register already, or a stem looked at on that day already, is passed over if the
//! register says the same, and refused if it says something else: a file never overwrites.

use super::save::BY;
use crate::intake::{
    About, CrewReader, Fate, Fault, Importing, InspectionReader, MoveReader, PalmReader, Refusal,
    RefusedFile, Row, SiteReader, WEATHER_COLUMNS, WeatherReader, decode,
};
use crate::office::{Note, Office, Refused};
use model::{
    Arg, Body, CrewWords, EntryId, Finding, Inspection, Moment, Move, Palm, Severity, Site,
    WeatherDay,
};
use std::collections::BTreeMap;
use std::io::Read;

/// What a file holds.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum FileKind {
    /// `palms.csv`.
    Palms,
    /// `inspections.csv`.
    Inspections,
    /// `moves.csv`.
    Moves,
    /// `sites.csv`.
    Sites,
    /// `crews.csv`.
    Crews,
    /// `weather.csv`.
    Weather,
}

/// A row that will be recorded, as it is shown.
#[derive(Clone, PartialEq, Debug)]
pub enum Shown {
    /// A palm.
    Palm(Palm),
    /// A look at the palm with this tag.
    Look(String, Inspection),
    /// A move of the palm with this tag.
    Moved(String, Box<Move>),
    /// A site.
    Site(Box<Site>),
    /// A crew.
    Crew(Box<CrewWords>),
    /// Weather of a day.
    Weather(Box<WeatherDay>),
}

/// What was found in a file; nothing is recorded yet.
pub struct Preview {
    /// What it holds; `None` if that cannot be told.
    pub kind: Option<FileKind>,
    /// The first rows that will be recorded, with their lines.
    pub shown: Vec<(u64, Shown)>,
    /// Rows that say what the register says already.
    pub already: usize,
    /// Rows, or a whole file, that are not taken.
    pub refusals: Vec<Refusal>,
    /// Remarks on the file and on rows (with the first line they concern) that do not keep anything out.
    pub remarks: Vec<(u64, Finding)>,
    headers: Vec<String>,
    entries: Vec<(EntryId, Moment, Body)>,
}

/// So many taken rows are shown.
pub const SHOWN: usize = 20;

impl Preview {
    /// Rows that will be recorded.
    pub fn taken(&self) -> usize {
        self.entries.len()
    }

    /// The refused rows as CSV, each with its line, column and reason, to be mended and read again.
    pub fn refused_file(&self, words: impl Fn(&Finding) -> String) -> csv::Result<Vec<u8>> {
        let mut bytes = Vec::new();
        let mut file = RefusedFile::new(&mut bytes, &self.headers)?;
        for refusal in &self.refusals {
            file.write(refusal, &words(&refusal.finding))?;
        }
        file.finish()?;
        Ok(bytes)
    }

    fn empty(kind: Option<FileKind>) -> Preview {
        let (shown, refusals, remarks, headers, entries) = (vec![], vec![], vec![], vec![], vec![]);
        Preview {
            kind,
            shown,
            already: 0,
            refusals,
            remarks,
            headers,
            entries,
        }
    }

    fn refused(kind: Option<FileKind>, refusal: Refusal) -> Preview {
        Preview {
            refusals: vec![refusal],
            ..Preview::empty(kind)
        }
    }
}

/// Looks through a file. `encoding` is a label such as `windows-1252`; empty is UTF-8.
pub fn preview(office: &Office, bytes: &[u8], encoding: &str) -> Preview {
    let mut text = Vec::new();
    let read = match encoding {
        "" => Ok(0),
        label => decode(bytes, label).map_or(Ok(0), |mut decoded| decoded.read_to_end(&mut text)),
    };
    let bytes = if read.is_ok_and(|n| n > 0) {
        text.as_slice()
    } else {
        bytes
    };
    match kind_of(bytes) {
        Some(FileKind::Palms) => palms(office, bytes),
        Some(FileKind::Inspections) => inspections(office, bytes),
        Some(FileKind::Moves) => moves(office, bytes),
        Some(FileKind::Sites) => sites(office, bytes),
        Some(FileKind::Crews) => crews(office, bytes),
        Some(FileKind::Weather) => weather(office, bytes),
        // the palm reader says what is wrong with a file that is none; a good file of another kind is named here
        None => match PalmReader::open(bytes) {
            Err(refusal) if !refusal.finding.code.starts_with("intake-missing-columns") => {
                Preview::refused(None, refusal)
            }
            _ => Preview::refused(
                None,
                Refusal::file(1, Finding::new("forms-import-neither", Severity::Refuse)),
            ),
        },
    }
}

/// Records what a preview would take, all or nothing. Recording it twice records it once.
pub fn take(office: &Office, preview: &Preview) -> Result<usize, Refused> {
    let note = |(id, at, body): &(EntryId, Moment, Body)| {
        let (at, by, body) = (*at, BY.to_owned(), body.clone());
        Note {
            id: Some(*id),
            at,
            by,
            body,
            replaces: None,
        }
    };
    office.record(preview.entries.iter().map(note).collect())?;
    Ok(preview.entries.len())
}

/// Told by the header: palms have a species, inspections have counts, moves a day of digging, crews a column of their
/// own, sites one and neither tags nor days, weather a day and something measured.
fn kind_of(bytes: &[u8]) -> Option<FileKind> {
    let first = bytes
        .split(|b| *b == b'\n')
        .find(|line| !line.trim_ascii().is_empty())?;
    let head = String::from_utf8_lossy(first).to_lowercase();
    let names: Vec<&str> = head
        .split([',', ';', '\t'])
        .map(|n| n.trim_matches(['"', ' ', '\r', '\u{feff}']))
        .collect();
    if names.contains(&"dug_on") {
        return Some(FileKind::Moves);
    }
    if names.contains(&"crew") {
        return Some(FileKind::Crews);
    }
    let others = ["tag", "species", "green", "day", "date", "month"];
    if names.contains(&"site") && !names.iter().any(|name| others.contains(name)) {
        return Some(FileKind::Sites);
    }
    let measured = WEATHER_COLUMNS[2..].iter().any(|name| names.contains(name));
    if names.contains(&"date") && measured {
        return Some(FileKind::Weather);
    }
    match (names.contains(&"species"), names.contains(&"green")) {
        (true, _) => Some(FileKind::Palms),
        (false, true) => Some(FileKind::Inspections),
        _ => None,
    }
}

fn palms(office: &Office, bytes: &[u8]) -> Preview {
    let mut out = Preview::empty(Some(FileKind::Palms));
    let importing = Importing::new(office.state(), office.now(), BY);
    let mut reader = match PalmReader::open(bytes) {
        Ok(reader) => reader.not_after(office.today()),
        Err(refusal) => return Preview::refused(out.kind, refusal),
    };
    let mut names = Names::default();
    while let Some(row) = reader.next() {
        let Some(row) = out.row(row) else { continue };
        names.note(row.line, &row.value.species);
        let fate = importing.palm(row.value.clone());
        out.add(office, row.line, fate, Shown::Palm(row.value), &reader);
    }
    out.finish(&reader);
    out.remarks.extend(names.remarks());
    out
}

fn inspections(office: &Office, bytes: &[u8]) -> Preview {
    let mut out = Preview::empty(Some(FileKind::Inspections));
    let importing = Importing::new(office.state(), office.now(), BY);
    let known = importing.known();
    let mut reader = match InspectionReader::open(bytes, &known) {
        Ok(reader) => reader.not_after(office.today()),
        Err(refusal) => return Preview::refused(out.kind, refusal),
    };
    while let Some(row) = reader.next() {
        let Some(row) = out.row(row) else { continue };
        let shown = Shown::Look(row.value.tag.clone(), row.value.inspection.clone());
        let fate = importing.inspection(row.value);
        out.add(office, row.line, fate, shown, &reader);
    }
    out.finish(&reader);
    out
}

fn moves(office: &Office, bytes: &[u8]) -> Preview {
    let mut out = Preview::empty(Some(FileKind::Moves));
    let importing = Importing::new(office.state(), office.now(), BY);
    let known = importing.known();
    let mut reader = match MoveReader::open(bytes, &known) {
        Ok(reader) => reader.not_after(office.today()),
        Err(refusal) => return Preview::refused(out.kind, refusal),
    };
    while let Some(row) = reader.next() {
        let Some(row) = out.row(row) else { continue };
        let shown = Shown::Moved(row.value.tag.clone(), Box::new(row.value.moved.clone()));
        let fate = importing.moved(row.value);
        out.add(office, row.line, fate, shown, &reader);
    }
    out.finish(&reader);
    out
}

fn sites(office: &Office, bytes: &[u8]) -> Preview {
    let mut out = Preview::empty(Some(FileKind::Sites));
    let importing = Importing::new(office.state(), office.now(), BY);
    let mut reader = match SiteReader::open(bytes) {
        Ok(reader) => reader,
        Err(refusal) => return Preview::refused(out.kind, refusal),
    };
    while let Some(row) = reader.next() {
        let Some(row) = out.row(row) else { continue };
        let shown = Shown::Site(Box::new(row.value.clone()));
        let fate = importing.site(row.value);
        out.add(office, row.line, fate, shown, &reader);
    }
    out.finish(&reader);
    out
}

fn crews(office: &Office, bytes: &[u8]) -> Preview {
    let mut out = Preview::empty(Some(FileKind::Crews));
    let importing = Importing::new(office.state(), office.now(), BY);
    let mut reader = match CrewReader::open(bytes) {
        Ok(reader) => reader,
        Err(refusal) => return Preview::refused(out.kind, refusal),
    };
    while let Some(row) = reader.next() {
        let Some(row) = out.row(row) else { continue };
        let shown = Shown::Crew(Box::new(row.value.clone()));
        let fate = importing.crew(row.value);
        out.add(office, row.line, fate, shown, &reader);
    }
    out.finish(&reader);
    out
}

fn weather(office: &Office, bytes: &[u8]) -> Preview {
    let mut out = Preview::empty(Some(FileKind::Weather));
    let importing = Importing::new(office.state(), office.now(), BY);
    let mut reader = match WeatherReader::open(bytes) {
        Ok(reader) => reader.not_after(office.today()),
        Err(refusal) => return Preview::refused(out.kind, refusal),
    };
    while let Some(row) = reader.next() {
        let Some(row) = out.row(row) else { continue };
        let shown = Shown::Weather(Box::new(row.value.clone()));
        let fate = importing.weather(row.value);
        out.add(office, row.line, fate, shown, &reader);
    }
    out.finish(&reader);
    out
}

impl Preview {
    /// A good row, its remarks noted; a refused one goes to its list.
    fn row<T>(&mut self, row: Result<Row<T>, Refusal>) -> Option<Row<T>> {
        match row {
            Ok(row) => {
                self.remarks.extend(
                    row.remarks
                        .iter()
                        .map(|finding| (row.line, finding.clone())),
                );
                Some(row)
            }
            Err(refusal) => {
                self.refusals.push(refusal);
                None
            }
        }
    }

    /// The row read last, judged against the register.
    fn add(
        &mut self,
        office: &Office,
        line: u64,
        fate: Result<Fate, Fault>,
        shown: Shown,
        reader: &impl About,
    ) {
        match fate {
            Ok(Fate::Already) => self.already += 1,
            Err(fault) => self.refusals.push(reader.refuse(fault)),
            Ok(Fate::New(note)) => {
                if self.shown.len() < SHOWN {
                    self.shown.push((line, shown));
                }
                self.entries.push((office.new_id(), note.at, note.body));
            }
        }
    }

    fn finish(&mut self, reader: &impl About) {
        self.headers = reader.headers().to_vec();
        self.remarks.splice(
            0..0,
            reader.remarks().into_iter().map(|finding| (0, finding)),
        );
    }
}

/// Species names nobody knows, with the first line each stands on and how often.
#[derive(Default)]
struct Names(BTreeMap<String, Option<(u64, i64)>>);

impl Names {
    fn note(&mut self, line: u64, name: &str) {
        if let Some(seen) = self.0.get_mut(name) {
            if let Some((_, times)) = seen {
                *times += 1;
            }
            return;
        }
        let unknown = super::nearest(name).is_some();
        self.0.insert(name.to_owned(), unknown.then_some((line, 1)));
    }

    fn remarks(self) -> Vec<(u64, Finding)> {
        let unknown = self
            .0
            .into_iter()
            .filter_map(|(name, seen)| Some((name, seen?)));
        let mut remarks: Vec<_> = unknown
            .map(|(name, (line, times))| (line, Names::remark(&name, times)))
            .collect();
        remarks.sort_by_key(|(line, _)| *line);
        remarks
    }

    fn remark(name: &str, times: i64) -> Finding {
        let nearest = super::nearest(name).unwrap_or_default();
        let code = if nearest.is_empty() {
            "forms-import-species-unknown"
        } else {
            "forms-import-species-nearest"
        };
        let finding =
            Finding::new(code, Severity::Caution).with("found", Arg::Text(name.to_owned()));
        let finding = finding.with("times", Arg::Count(times));
        if nearest.is_empty() {
            finding
        } else {
            finding.with("nearest", Arg::Text(nearest.join(", ")))
        }
    }
}
