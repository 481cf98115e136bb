//! `blades.csv`, `cuts.csv` and `cleanings.csv`: the rack and the log of its blades.
//!
//! A row that stands twice in a file is taken once, with a remark. A palm that is not known is refused with the nearest
//! tag; a blade that is not known is for [`super::Logging`] to register.

use super::cells;
use super::known::Known;
use super::reads::{about, rows};
use super::refusal::{Fault, Refusal};
use super::table::{Col, Layout, Table};
use model::{Arg, Blade, BladeKind, Day, Finding, Moment, Severity, TakenOff};
use std::collections::{BTreeMap, HashMap};
use std::io::Read;

/// Longest contact that is believed, minutes: a week.
const LONGEST_CONTACT: f64 = 10_080.0;
/// The latest place on earth is this far behind Greenwich, ms: so long it may still be today there.
const WEST: i64 = 12 * 3_600_000;
/// More unknown tags than this get no offer of the nearest.
const MOST_OFFERS: u32 = 50;

const BLADES: Layout = Layout {
    required: &["tag"],
    optional: &["kind", "kit", "holder", "notes"],
};

const CUTS: Layout = Layout {
    required: &["time", "blade", "tag"],
    optional: &[
        "stem",
        "started",
        "off_green",
        "off_yellowing",
        "off_brown",
        "off_stalks",
        "who",
        "despite",
        "notes",
    ],
};

const CLEANINGS: Layout = Layout {
    required: &["time", "blade"],
    optional: &[
        "agent",
        "strength_pct",
        "contact_min",
        "brushed",
        "bath_mixed",
        "who",
    ],
};

/// One cut, palm and blade by their tags.
#[derive(Clone, PartialEq, Debug)]
pub struct CutRow {
    /// When it ended.
    pub at: Moment,
    /// Tag of the blade.
    pub blade: String,
    /// The palm's tag.
    pub tag: String,
    /// The palm's index in [`Known`].
    pub palm: u32,
    /// The stem.
    pub stem: u16,
    /// When it began, if noted.
    pub started: Option<Moment>,
    /// What came off.
    pub off: TakenOff,
    /// Who cut.
    pub who: String,
    /// Why, although the blade was not clean.
    pub despite: String,
    /// Free words.
    pub notes: String,
    /// Unknown columns.
    pub extra: BTreeMap<String, String>,
    /// The same row stands further up in the file.
    pub twice: bool,
}

/// One cleaning, the blade by its tag.
#[derive(Clone, PartialEq, Debug)]
pub struct CleaningRow {
    /// When it ended.
    pub at: Moment,
    /// Tag of the blade.
    pub blade: String,
    /// The agent; empty if not noted.
    pub agent: String,
    /// Percent by volume in the bath.
    pub strength_pct: Option<f64>,
    /// Minutes of contact.
    pub contact_min: Option<f64>,
    /// Brushed first.
    pub brushed: Option<bool>,
    /// When the bath was mixed, if there was one.
    pub bath_mixed: Option<Moment>,
    /// Who cleaned.
    pub who: String,
    /// Unknown columns.
    pub extra: BTreeMap<String, String>,
    /// The same row stands further up in the file.
    pub twice: bool,
}

/// A file of the log: its table, and the rows met so far.
struct Log<R> {
    table: Table<R>,
    today: Option<Day>,
    seen: HashMap<Vec<String>, u64>,
}

impl<R: Read> Log<R> {
    fn open(read: R, layout: &Layout) -> Result<Log<R>, Refusal> {
        Ok(Log {
            table: Table::open(read, layout)?,
            today: None,
            seen: HashMap::new(),
        })
    }

    fn cell(&self, name: &'static str) -> (Col, &str) {
        let col = self.table.column(name);
        (col, self.table.cell(col))
    }

    fn text(&self, name: &'static str) -> Result<String, Fault> {
        let (col, cell) = self.cell(name);
        cells::text(col, cell)
    }

    fn number(&self, name: &'static str, high: f64) -> Result<Option<f64>, Fault> {
        let (col, cell) = self.cell(name);
        cells::number(col, cell, 0.0, high)
    }

    fn count(&self, name: &'static str) -> Result<Option<u32>, Fault> {
        let (col, cell) = self.cell(name);
        cells::count(col, cell)
    }

    /// A date and time with offset (RFC 3339), not in the future.
    fn moment(&self, name: &'static str) -> Result<Option<Moment>, Fault> {
        let (col, cell) = self.cell(name);
        if cell.is_empty() {
            return Ok(None);
        }
        let Some(at) = Moment::parse(cell) else {
            // a time that would do with a zone behind it
            let zoned = Moment::parse(&format!("{cell}Z")).is_some();
            let code = if zoned { "log-no-zone" } else { "log-bad-time" };
            return Err(Fault::cell(code, col.name, cell));
        };
        match self.today {
            Some(today) if Moment(at.0.saturating_sub(WEST)).day() > today => {
                let fault = Fault::cell("intake-date-in-future", col.name, cell);
                Err(fault.with("today", Arg::Date(today)))
            }
            _ if at.day().ymd().0 < 1800 => Err(Fault::cell("intake-date-too-old", col.name, cell)),
            _ => Ok(Some(at)),
        }
    }

    fn time(&self) -> Result<Moment, Fault> {
        let time = self.moment("time")?;
        time.ok_or_else(|| Fault::cell("log-no-time", "time", ""))
    }

    fn blade(&self) -> Result<String, Fault> {
        let (col, cell) = self.cell("blade");
        if cell.is_empty() {
            return Err(Fault::cell("log-no-blade", "blade", cell));
        }
        cells::tag(col, cell)
    }

    /// The line on which the same row stands further up, if it does.
    fn twice(&mut self) -> Option<u64> {
        let cells: Vec<String> = (0..self.table.headers().len())
            .map(|at| {
                let col = Col {
                    name: "",
                    at: Some(at),
                };
                self.table.cell(col).to_owned()
            })
            .collect();
        let line = self.table.line();
        match self.seen.get(&cells) {
            Some(first) => Some(*first),
            None => {
                self.seen.insert(cells, line);
                None
            }
        }
    }
}

fn remarks(first: Option<u64>) -> Vec<Finding> {
    let twice = |first: u64| {
        let finding = Finding::new("log-row-twice", Severity::Caution);
        finding.with("first", Arg::Count(first as i64))
    };
    first.map(twice).into_iter().collect()
}

/// Reads `blades.csv` row by row; refuses doubled tags. An empty `kind` is unknown.
pub struct BladeReader<R> {
    log: Log<R>,
    tags: HashMap<String, u64>,
}

impl<R: Read> BladeReader<R> {
    /// Reads the header.
    pub fn open(read: R) -> Result<BladeReader<R>, Refusal> {
        let (log, tags) = (Log::open(read, &BLADES)?, HashMap::new());
        Ok(BladeReader { log, tags })
    }

    fn row(&mut self) -> Result<(Blade, Option<u64>), Fault> {
        let (col, cell) = self.log.cell("tag");
        let tag = cells::tag(col, cell)?;
        let blade = Blade {
            tag: tag.clone(),
            kind: self.kind()?,
            kit: self.log.text("kit")?,
            holder: self.log.text("holder")?,
            notes: self.log.text("notes")?,
            extra: self.log.table.extra(),
        };
        if let Some(first) = self.tags.get(&tag) {
            let fault = Fault::cell("intake-doubled-tag", "tag", &tag);
            return Err(fault.with("first", Arg::Count(*first as i64)));
        }
        self.tags.insert(tag, self.log.table.line());
        Ok((blade, None))
    }

    fn kind(&self) -> Result<BladeKind, Fault> {
        let (col, cell) = self.log.cell("kind");
        if cell.is_empty() {
            return Ok(BladeKind::Unknown);
        }
        BladeKind::parse(&cell.to_lowercase()).ok_or_else(|| {
            let words: Vec<&str> = BladeKind::ALL.iter().map(|(_, word)| *word).collect();
            let fault = Fault::cell("log-bad-kind", col.name, cell);
            fault.with("words", Arg::Text(words.join(", ")))
        })
    }
}

/// Reads `cuts.csv` row by row, in any order of time, against the palms that are known.
pub struct CutReader<'k, R> {
    log: Log<R>,
    known: &'k Known,
    offers: u32,
}

impl<'k, R: Read> CutReader<'k, R> {
    /// Reads the header.
    pub fn open(read: R, known: &'k Known) -> Result<CutReader<'k, R>, Refusal> {
        Ok(CutReader {
            log: Log::open(read, &CUTS)?,
            known,
            offers: 0,
        })
    }

    /// From now on moments after `today` are refused, wherever on earth it is still today.
    pub fn not_after(mut self, today: Day) -> CutReader<'k, R> {
        self.log.today = Some(today);
        self
    }

    fn row(&mut self) -> Result<(CutRow, Option<u64>), Fault> {
        let (at, blade) = (self.log.time()?, self.log.blade()?);
        let (tag, palm, stem) = self.palm()?;
        let off = TakenOff {
            green: self.log.count("off_green")?,
            yellowing: self.log.count("off_yellowing")?,
            brown: self.log.count("off_brown")?,
            stalks: self.log.count("off_stalks")?,
        };
        let mut row = CutRow {
            at,
            blade,
            tag,
            palm,
            stem,
            started: self.log.moment("started")?,
            off,
            who: self.log.text("who")?,
            despite: self.log.text("despite")?,
            notes: self.log.text("notes")?,
            extra: self.log.table.extra(),
            twice: false,
        };
        let first = self.log.twice();
        row.twice = first.is_some();
        Ok((row, first))
    }

    /// Tag, index and stem; the only stem where the cell is empty.
    fn palm(&mut self) -> Result<(String, u32, u16), Fault> {
        let (col, cell) = self.log.cell("tag");
        let tag = cells::tag(col, cell)?;
        let Some(palm) = self.known.get(&tag) else {
            self.offers += 1;
            let near = (self.offers <= MOST_OFFERS).then(|| self.known.nearest(&tag));
            return Err(match near.flatten() {
                None => Fault::cell("intake-unknown-palm", "tag", &tag),
                Some(near) => Fault::cell("intake-unknown-palm-near", "tag", &tag)
                    .with("offer", Arg::Text(near.to_owned())),
            });
        };
        let (col, cell) = self.log.cell("stem");
        let most = |fault: Fault| fault.with("stems", Arg::Count(i64::from(palm.stems)));
        let stem = match cells::whole(col, cell, u32::from(u16::MAX))? {
            None if palm.stems == 1 => 1,
            None => return Err(most(Fault::cell("intake-which-stem", "stem", cell))),
            Some(n) if n >= 1 && n <= u32::from(palm.stems) => n as u16,
            Some(_) => return Err(most(Fault::cell("intake-no-such-stem", "stem", cell))),
        };
        Ok((tag, palm.index, stem))
    }
}

/// Reads `cleanings.csv` row by row, in any order of time.
pub struct CleaningReader<R> {
    log: Log<R>,
}

impl<R: Read> CleaningReader<R> {
    /// Reads the header.
    pub fn open(read: R) -> Result<CleaningReader<R>, Refusal> {
        Ok(CleaningReader {
            log: Log::open(read, &CLEANINGS)?,
        })
    }

    /// From now on moments after `today` are refused, wherever on earth it is still today.
    pub fn not_after(mut self, today: Day) -> CleaningReader<R> {
        self.log.today = Some(today);
        self
    }

    fn row(&mut self) -> Result<(CleaningRow, Option<u64>), Fault> {
        let (col, cell) = self.log.cell("brushed");
        let brushed = match cell.to_lowercase().as_str() {
            "" => None,
            "yes" => Some(true),
            "no" => Some(false),
            _ => return Err(Fault::cell("log-yes-or-no", col.name, cell)),
        };
        let mut row = CleaningRow {
            at: self.log.time()?,
            blade: self.log.blade()?,
            agent: self.log.text("agent")?,
            strength_pct: self.log.number("strength_pct", 100.0)?,
            contact_min: self.log.number("contact_min", LONGEST_CONTACT)?,
            brushed,
            bath_mixed: self.log.moment("bath_mixed")?,
            who: self.log.text("who")?,
            extra: self.log.table.extra(),
            twice: false,
        };
        let first = self.log.twice();
        row.twice = first.is_some();
        Ok((row, first))
    }
}

/// The three readers remark on a row that stood in the file before.
macro_rules! reads {
    ($reader:ty, $row:ty, <$($life:lifetime,)? R>) => {
        rows!($reader, $row, <$($life,)? R>, log.table, |reader| {
            let (value, first) = reader.row()?;
            Ok((value, remarks(first)))
        });
        about!($reader, <$($life,)? R>, log.table);
    };
}

reads!(BladeReader<R>, Blade, <R>);
reads!(CutReader<'k, R>, CutRow, <'k, R>);
reads!(CleaningReader<R>, CleaningRow, <R>);
