//! `moves.csv`: which palm was dug when, and what else is known of it.
//!
//! Lengths are metres. `deeper_m` is above zero where the palm stands deeper than before, below zero where it stands
//! higher. A row that stands twice in a file is refused: a palm is dug once a day.

use super::cells;
use super::known::Known;
use super::reads::{about, rows};
use super::refusal::{Fault, Refusal};
use super::table::{Layout, Table};
use model::{Arg, Day, LeavesAtMove, Metres, Move};
use std::collections::HashMap;
use std::io::Read;

/// Columns, as they are written and read.
pub const MOVE_COLUMNS: [&str; 12] = [
    "tag",
    "dug_on",
    "planted_on",
    "from",
    "ball_radius_m",
    "ball_depth_m",
    "leaves",
    "fronds_taken",
    "deeper_m",
    "bracing",
    "soil",
    "notes",
];

const LAYOUT: Layout = Layout {
    required: &["tag", "dug_on"],
    optional: &[
        "planted_on",
        "from",
        "ball_radius_m",
        "ball_depth_m",
        "leaves",
        "fronds_taken",
        "deeper_m",
        "bracing",
        "soil",
        "notes",
    ],
};

/// No ball, no planting depth is larger, m.
const LARGEST: f64 = 10.0;
/// More unknown tags than this get no offer of the nearest.
const MOST_OFFERS: u32 = 50;

/// One move, the palm by its tag.
#[derive(Clone, PartialEq, Debug)]
pub struct MoveRow {
    /// The palm's tag.
    pub tag: String,
    /// The palm's index in [`Known`].
    pub palm: u32,
    /// The move.
    pub moved: Move,
}

/// Reads `moves.csv` row by row against the palms that are known.
pub struct MoveReader<'k, R> {
    table: Table<R>,
    known: &'k Known,
    seen: HashMap<(u32, Day), u64>,
    offers: u32,
    today: Option<Day>,
}

impl<'k, R: Read> MoveReader<'k, R> {
    /// Reads the header.
    pub fn open(read: R, known: &'k Known) -> Result<MoveReader<'k, R>, Refusal> {
        Ok(MoveReader {
            table: Table::open(read, &LAYOUT)?,
            known,
            seen: HashMap::new(),
            offers: 0,
            today: None,
        })
    }

    /// From now on dates after `today` are refused.
    pub fn not_after(mut self, today: Day) -> MoveReader<'k, R> {
        self.today = Some(today);
        self
    }

    fn row(&mut self) -> Result<MoveRow, Fault> {
        let col = self.table.column("tag");
        let tag = cells::tag(col, self.table.cell(col))?;
        let palm = self.palm(&tag)?;
        let dug_on = self.day("dug_on")?;
        let dug_on = dug_on.ok_or_else(|| Fault::cell("intake-no-date", "dug_on", ""))?;
        let planted_on = self.day("planted_on")?;
        if let Some(planted) = planted_on.filter(|day| *day < dug_on) {
            let fault = Fault::cell("moves-planted-before", "planted_on", &planted.to_string());
            return Err(fault.with("dug", Arg::Date(dug_on)));
        }
        let moved = Move {
            planted_on,
            from: self.text("from")?,
            ball_radius: self.size("ball_radius_m")?,
            ball_depth: self.size("ball_depth_m")?,
            leaves: self.leaves()?,
            fronds_taken: self.whole("fronds_taken")?,
            deeper: self.number("deeper_m", -LARGEST)?.map(Metres),
            bracing: self.text("bracing")?,
            soil: self.text("soil")?,
            notes: self.text("notes")?,
            extra: self.table.extra(),
            ..Move::on(dug_on)
        };
        let line = self.table.line();
        if let Some(first) = self.seen.insert((palm, dug_on), line) {
            self.seen.insert((palm, dug_on), first);
            let fault = Fault::cell("moves-twice-a-day", "dug_on", &dug_on.to_string());
            return Err(fault.with("first", Arg::Count(first as i64)));
        }
        Ok(MoveRow { tag, palm, moved })
    }

    fn palm(&mut self, tag: &str) -> Result<u32, Fault> {
        if let Some(palm) = self.known.get(tag) {
            return Ok(palm.index);
        }
        self.offers += 1;
        let near = (self.offers <= MOST_OFFERS).then(|| self.known.nearest(tag));
        Err(match near.flatten() {
            None => Fault::cell("intake-unknown-palm", "tag", tag),
            Some(near) => Fault::cell("intake-unknown-palm-near", "tag", tag)
                .with("offer", Arg::Text(near.to_owned())),
        })
    }

    fn day(&self, name: &'static str) -> Result<Option<Day>, Fault> {
        let col = self.table.column(name);
        let cell = self.table.cell(col);
        let day = cells::date(col, cell)?;
        match (day, self.today) {
            (Some(day), Some(today)) if day > today => {
                let fault = Fault::cell("intake-date-in-future", name, cell);
                Err(fault.with("today", Arg::Date(today)))
            }
            _ => Ok(day),
        }
    }

    fn text(&self, name: &'static str) -> Result<String, Fault> {
        let col = self.table.column(name);
        cells::text(col, self.table.cell(col))
    }

    fn number(&self, name: &'static str, low: f64) -> Result<Option<f64>, Fault> {
        let col = self.table.column(name);
        cells::number(col, self.table.cell(col), low, LARGEST)
    }

    fn whole(&self, name: &'static str) -> Result<Option<u32>, Fault> {
        let col = self.table.column(name);
        cells::count(col, self.table.cell(col))
    }

    /// A size that is not nothing, from a centimetre on.
    fn size(&self, name: &'static str) -> Result<Option<Metres>, Fault> {
        Ok(self.number(name, 0.01)?.map(Metres))
    }

    fn leaves(&self) -> Result<Option<LeavesAtMove>, Fault> {
        let col = self.table.column("leaves");
        let cell = self.table.cell(col);
        if cell.is_empty() {
            return Ok(None);
        }
        LeavesAtMove::parse(&cell.to_lowercase())
            .map(Some)
            .ok_or_else(|| {
                let words: Vec<&str> = LeavesAtMove::ALL.iter().map(|(_, word)| *word).collect();
                let fault = Fault::cell("moves-bad-leaves", col.name, cell);
                fault.with("words", Arg::Text(words.join(", ")))
            })
    }
}

rows!(MoveReader<'k, R>, MoveRow, <'k, R>);
about!(MoveReader<'k, R>, <'k, R>, table);

#[cfg(test)]
mod tests {
    use super::*;
    use model::Palm;

    fn read(file: &str) -> Vec<Result<MoveRow, (u64, String, &'static str)>> {
        let palm = Palm {
            tag: "Q-01".into(),
            stems: 1,
            ..Palm::default()
        };
        let known = Known::of([&palm]);
        MoveReader::open(file.as_bytes(), &known)
            .unwrap()
            .not_after(Day::parse("2026-06-01").unwrap())
            .map(|row| match row {
                Ok(row) => Ok(row.value),
                Err(refusal) => Err((refusal.line, refusal.column.clone(), refusal.finding.code)),
            })
            .collect()
    }

    #[test]
    fn a_row_of_moves_is_read_and_what_is_not_there_stays_unknown() {
        let rows = read(
            "tag,dug_on,ball_radius_m,leaves,deeper_m,crane\nQ-01,2026-03-02,0.61,Tied,-0.1,hired\nQ-01,2026-04-02,,,,\n",
        );
        let first = &rows[0].as_ref().unwrap().moved;
        assert_eq!(first.ball_radius, Some(Metres(0.61)));
        assert_eq!(first.leaves, Some(LeavesAtMove::Tied));
        assert_eq!(first.deeper, Some(Metres(-0.1)));
        assert_eq!(first.extra["crane"], "hired");
        let second = &rows[1].as_ref().unwrap().moved;
        assert_eq!((second.ball_radius, second.leaves), (None, None));
    }

    #[test]
    fn bad_rows_say_where_and_what() {
        let rows = read(
            "tag,dug_on,planted_on,leaves,ball_depth_m\n\
             Q-02,2026-03-02,,,\n\
             Q-01,,,,\n\
             Q-01,2026-07-02,,,\n\
             Q-01,2026-03-02,2026-03-01,,\n\
             Q-01,2026-03-02,,plaited,\n\
             Q-01,2026-03-02,,,0\n\
             Q-01,2026-03-02,,,\n\
             Q-01,2026-03-02,,,\n",
        );
        let faults: Vec<_> = rows.into_iter().filter_map(Result::err).collect();
        let said: Vec<(u64, &str, &str)> = faults
            .iter()
            .map(|(line, column, code)| (*line, column.as_str(), *code))
            .collect();
        assert_eq!(
            said,
            [
                (2, "tag", "intake-unknown-palm-near"),
                (3, "dug_on", "intake-no-date"),
                (4, "dug_on", "intake-date-in-future"),
                (5, "planted_on", "moves-planted-before"),
                (6, "leaves", "moves-bad-leaves"),
                (7, "ball_depth_m", "intake-out-of-range"),
                (9, "dug_on", "moves-twice-a-day"),
            ]
        );
    }
}
