//! `ways.csv`: how far and how long it is between places, as the keeper knows it.
//!
//! A place is a crew (where it starts and ends) or a site, by name. A pair that stands in one direction only holds in
//! both. The reader knows no names: whoever uses the table finds what it has.

use super::cells;
use super::reads::{about, rows};
use super::refusal::{Fault, Refusal};
use super::table::{Layout, Table};
use model::Arg;
use std::collections::BTreeMap;
use std::io::Read;

/// Columns, as they are read.
pub const TRAVEL_COLUMNS: [&str; 4] = ["from", "to", "km", "minutes"];

const LAYOUT: Layout = Layout {
    required: &TRAVEL_COLUMNS,
    optional: &[],
};

/// No way of a day is longer, km.
const MOST_KM: f64 = 2_000.0;
/// No way of a day takes longer, minutes.
const MOST_MINUTES: f64 = 1_440.0;

/// One way.
#[derive(Clone, PartialEq, Debug)]
pub struct TravelRow {
    /// From.
    pub from: String,
    /// To.
    pub to: String,
    /// Kilometres of road.
    pub km: f64,
    /// Minutes of driving.
    pub minutes: f64,
}

/// Reads `ways.csv` row by row.
pub struct TravelReader<R> {
    table: Table<R>,
    seen: BTreeMap<(String, String), u64>,
}

impl<R: Read> TravelReader<R> {
    /// Reads the header.
    pub fn open(read: R) -> Result<TravelReader<R>, Refusal> {
        Ok(TravelReader {
            table: Table::open(read, &LAYOUT)?,
            seen: BTreeMap::new(),
        })
    }

    fn row(&mut self) -> Result<TravelRow, Fault> {
        let (from, to) = (self.name("from")?, self.name("to")?);
        let row = TravelRow {
            km: self.number("km", MOST_KM)?,
            minutes: self.number("minutes", MOST_MINUTES)?,
            from,
            to,
        };
        let key = (plain(&row.from), plain(&row.to));
        let line = self.table.line();
        match self.seen.get(&key) {
            Some(first) => {
                Err(Fault::cell("travel-twice", "to", &row.to)
                    .with("first", Arg::Count(*first as i64)))
            }
            None => {
                self.seen.insert(key, line);
                Ok(row)
            }
        }
    }

    fn name(&self, name: &'static str) -> Result<String, Fault> {
        let col = self.table.column(name);
        let text = cells::text(col, self.table.cell(col))?;
        match text.trim() {
            "" => Err(Fault::cell("travel-no-name", name, "")),
            some => Ok(some.to_owned()),
        }
    }

    fn number(&self, name: &'static str, high: f64) -> Result<f64, Fault> {
        let col = self.table.column(name);
        let number = cells::number(col, self.table.cell(col), 0.0, high)?;
        number.ok_or_else(|| Fault::cell("travel-no-number", name, ""))
    }
}

rows!(TravelReader<R>, TravelRow, <R>);
about!(TravelReader<R>, <R>, table);

/// Ways between places by name, upper and lower case alike.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct TravelTable(BTreeMap<(String, String), (i64, i64)>);

impl TravelTable {
    /// Of rows.
    pub fn of(rows: impl IntoIterator<Item = TravelRow>) -> TravelTable {
        let way = |row: &TravelRow| {
            let metres = (row.km * 1000.0).round() as i64;
            (metres, (row.minutes * 60.0).round() as i64)
        };
        TravelTable(
            rows.into_iter()
                .map(|row| ((plain(&row.from), plain(&row.to)), way(&row)))
                .collect(),
        )
    }

    /// Metres and seconds from a place to another; as back, where only the way back is there.
    pub fn way(&self, from: &str, to: &str) -> Option<(i64, i64)> {
        let (from, to) = (plain(from), plain(to));
        let there = self.0.get(&(from.clone(), to.clone()));
        there.or_else(|| self.0.get(&(to, from))).copied()
    }
}

fn plain(name: &str) -> String {
    name.trim().to_lowercase()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ways_are_read_and_bad_rows_say_where_and_what() {
        let file = "from,to,km,minutes\nYard,North,12.5,20\nNorth,Yard,13,25\n,North,1,1\nYard,Quay,x,1\nYard,Quay,1,\nyard,NORTH,3,4\n";
        let (mut rows, mut faults) = (Vec::new(), Vec::new());
        for row in TravelReader::open(file.as_bytes()).unwrap() {
            match row {
                Ok(row) => rows.push(row.value),
                Err(r) => faults.push((r.line, r.column.clone(), r.finding.code)),
            }
        }
        let table = TravelTable::of(rows);
        assert_eq!(table.way("Yard", "north"), Some((12_500, 1_200)));
        assert_eq!(table.way("North", "Yard"), Some((13_000, 1_500)));
        assert_eq!(table.way("Quay", "Yard"), None);
        let said: Vec<(u64, &str, &str)> = faults
            .iter()
            .map(|(line, col, code)| (*line, col.as_str(), *code))
            .collect();
        assert_eq!(
            said,
            [
                (4, "from", "travel-no-name"),
                (5, "km", "intake-not-number"),
                (6, "minutes", "travel-no-number"),
                (7, "to", "travel-twice"),
            ]
        );
    }

    #[test]
    fn one_direction_holds_for_both() {
        let row = TravelRow {
            from: "A".into(),
            to: "B".into(),
            km: 2.0,
            minutes: 3.0,
        };
        assert_eq!(TravelTable::of([row]).way("b", "a"), Some((2_000, 180)));
    }
}
