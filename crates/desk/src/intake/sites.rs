//! `sites.csv` and `crews.csv`: where work is done, and who does it.
//!
//! Hours, closed days and rules against feeding stand in one cell each, written as in [`crate::timetable`]; skills and kit
//! have `;` between. A name that stands twice in a file is refused.

use super::cells;
use super::reads::{about, rows};
use super::refusal::{Fault, Refusal};
use super::table::{Layout, Table};
use crate::forms::LONGEST_NAME;
use crate::timetable::{MOST, overlap, read_closed, read_hours, read_rules, write_hours};
use model::{Arg, CrewWords, Finding, Hours, Knowledge, Position, Severity, Site};
use std::collections::HashMap;
use std::io::Read;

/// Columns of `sites.csv`, as they are written and read.
pub const SITE_COLUMNS: [&str; 14] = [
    "site",
    "owner",
    "lat",
    "lon",
    "hours",
    "closed",
    "soil",
    "coastal",
    "weevil_area",
    "line_kv",
    "no_feeding",
    "tidy",
    "limit",
    "notes",
];

/// Columns of `crews.csv`, as they are written and read.
pub const CREW_COLUMNS: [&str; 12] = [
    "crew", "people", "from_lat", "from_lon", "to_lat", "to_lon", "hours", "skills", "kit",
    "room_m3", "gone", "notes",
];

const SITES: Layout = Layout {
    required: &["site"],
    optional: SITE_COLUMNS.split_at(1).1,
};

const CREWS: Layout = Layout {
    required: &["crew"],
    optional: CREW_COLUMNS.split_at(1).1,
};

/// Highest voltage to ground of a line in service, kV; as in the office.
const MOST_KV: f64 = 1200.0;
/// Most people of a crew, and most room for debris, m³; as in the office.
const MOST_PEOPLE: u32 = 1000;
const MOST_ROOM: f64 = 1000.0;

/// What the two files have in common: a table whose rows have names.
struct Named<R> {
    table: Table<R>,
    seen: HashMap<String, u64>,
}

impl<R: Read> Named<R> {
    fn open(read: R, layout: &Layout) -> Result<Named<R>, Refusal> {
        Ok(Named {
            table: Table::open(read, layout)?,
            seen: HashMap::new(),
        })
    }

    fn cell(&self, name: &'static str) -> &str {
        self.table.cell(self.table.column(name))
    }

    /// A name that no row before has.
    fn name(&mut self, column: &'static str) -> Result<String, Fault> {
        let name = self.cell(column).to_owned();
        if name.is_empty() {
            return Err(Fault::cell("sites-no-name", column, ""));
        }
        if name.chars().count() > LONGEST_NAME
            || name.chars().any(char::is_control)
            || [".", ".."].contains(&name.as_str())
        {
            let most = Arg::Count(LONGEST_NAME as i64);
            return Err(Fault::cell("sites-bad-name", column, &name).with("most", most));
        }
        if let Some(first) = self.seen.get(&name) {
            let fault = Fault::cell("sites-name-twice", column, &name);
            return Err(fault.with("first", Arg::Count(*first as i64)));
        }
        self.seen.insert(name.clone(), self.table.line());
        Ok(name)
    }

    fn text(&self, name: &'static str) -> Result<String, Fault> {
        cells::text(self.table.column(name), self.cell(name))
    }

    fn number(&self, name: &'static str, low: f64, high: f64) -> Result<Option<f64>, Fault> {
        cells::number(self.table.column(name), self.cell(name), low, high)
    }

    fn whole(&self, name: &'static str, most: u32) -> Result<Option<u32>, Fault> {
        cells::whole(self.table.column(name), self.cell(name), most)
    }

    fn position(&self, lat: &'static str, lon: &'static str) -> Result<Option<Position>, Fault> {
        let north = self.number(lat, -90.0, 90.0)?;
        let east = self.number(lon, -180.0, 180.0)?;
        match (north, east) {
            (Some(lat), Some(lon)) => Ok(Some(Position { lat, lon })),
            (None, None) => Ok(None),
            (Some(_), None) => Err(Fault::cell("intake-half-position", lon, "")),
            (None, Some(_)) => Err(Fault::cell("intake-half-position", lat, "")),
        }
    }

    fn yes_or_no(&self, name: &'static str) -> Result<Option<bool>, Fault> {
        let cell = self.cell(name);
        match cell.to_lowercase().as_str() {
            "" => Ok(None),
            "yes" => Ok(Some(true)),
            "no" => Ok(Some(false)),
            _ => Err(Fault::cell("log-yes-or-no", name, cell)),
        }
    }

    fn hours(&self, most: usize) -> Result<Vec<Hours>, Fault> {
        let hours = read_hours(self.cell("hours"))
            .map_err(|part| Fault::cell("sites-bad-hours", "hours", &part))?;
        if let Some((first, next)) = overlap(&hours) {
            let fault = Fault::cell("sites-hours-overlap", "hours", &write_hours(&[next]));
            return Err(fault.with("other", Arg::Text(write_hours(&[first]))));
        }
        self.few("hours", hours, most)
    }

    fn few<T>(&self, name: &'static str, all: Vec<T>, most: usize) -> Result<Vec<T>, Fault> {
        if all.len() > most {
            let fault = Fault::cell("sites-too-many", name, self.cell(name));
            return Err(fault.with("most", Arg::Count(most as i64)));
        }
        Ok(all)
    }

    /// Words with `;` between, each once.
    fn words(&self, name: &'static str) -> Result<Vec<String>, Fault> {
        let mut words: Vec<String> = Vec::new();
        for word in self.text(name)?.split(';').map(str::trim) {
            if !word.is_empty() && !words.iter().any(|known| known == word) {
                words.push(word.to_owned());
            }
        }
        Ok(words)
    }
}

/// Reads `sites.csv` row by row.
pub struct SiteReader<R>(Named<R>);

impl<R: Read> SiteReader<R> {
    /// Reads the header.
    pub fn open(read: R) -> Result<SiteReader<R>, Refusal> {
        Ok(SiteReader(Named::open(read, &SITES)?))
    }
}

rows!(SiteReader<R>, Site, <R>, 0.table, |reader| {
    let site = site(&mut reader.0)?;
    let remarks = unknown_soil(&site).into_iter().collect();
    Ok((site, remarks))
});

fn site<R: Read>(row: &mut Named<R>) -> Result<Site, Fault> {
    let name = row.name("site")?;
    let closed = read_closed(row.cell("closed"))
        .map_err(|part| Fault::cell("sites-bad-closed", "closed", &part))?;
    let rules = read_rules(row.cell("no_feeding"))
        .map_err(|part| Fault::cell("sites-bad-feeding", "no_feeding", &part))?;
    let (tidy, limit) = (
        row.whole("tidy", cells::MOST_FRONDS)?,
        row.whole("limit", cells::MOST_FRONDS)?,
    );
    if let (Some(tidy), Some(limit)) = (tidy, limit)
        && tidy > limit
    {
        let fault = Fault::cell("sites-tidy-beyond-limit", "limit", &limit.to_string());
        return Err(fault.with("tidy", Arg::Count(tidy.into())));
    }
    Ok(Site {
        name,
        owner: row.text("owner")?,
        gate: row.position("lat", "lon")?,
        hours: row.hours(MOST)?,
        closed: row.few("closed", closed, MOST)?,
        soil: row.text("soil")?,
        coastal: row.yes_or_no("coastal")?,
        weevil_area: row.yes_or_no("weevil_area")?,
        line_kv: row.number("line_kv", 0.0, MOST_KV)?,
        no_feeding: row.few("no_feeding", rules, MOST)?,
        tidy,
        limit,
        notes: row.text("notes")?,
        extra: row.table.extra(),
    })
}

/// A soil that no table knows is kept; nothing can be reckoned with it.
fn unknown_soil(site: &Site) -> Option<Finding> {
    let unknown = !site.soil.is_empty() && Knowledge::embedded().soil(&site.soil).is_none();
    unknown.then(|| {
        let words = crate::forms::SOILS.join(", ");
        Finding::new("sites-soil-unknown", Severity::Caution)
            .with("found", Arg::Text(site.soil.clone()))
            .with("words", Arg::Text(words))
    })
}

/// Reads `crews.csv` row by row.
pub struct CrewReader<R>(Named<R>);

impl<R: Read> CrewReader<R> {
    /// Reads the header.
    pub fn open(read: R) -> Result<CrewReader<R>, Refusal> {
        Ok(CrewReader(Named::open(read, &CREWS)?))
    }
}

rows!(CrewReader<R>, CrewWords, <R>, 0.table, |reader| {
    Ok((crew(&mut reader.0)?, Vec::new()))
});

fn crew<R: Read>(row: &mut Named<R>) -> Result<CrewWords, Fault> {
    let name = row.name("crew")?;
    let people = row.whole("people", MOST_PEOPLE)?;
    if people == Some(0) {
        return Err(Fault::cell("sites-crew-nobody", "people", "0"));
    }
    Ok(CrewWords {
        name,
        people,
        from: row.position("from_lat", "from_lon")?,
        to: row.position("to_lat", "to_lon")?,
        hours: row.hours(1)?.into_iter().next(),
        skills: row.words("skills")?,
        kit: row.words("kit")?,
        room_m3: row.number("room_m3", 0.0, MOST_ROOM)?,
        gone: row.yes_or_no("gone")?.unwrap_or(false),
        notes: row.text("notes")?,
        extra: row.table.extra(),
    })
}

about!(SiteReader<R>, <R>, 0.table);
about!(CrewReader<R>, <R>, 0.table);

#[cfg(test)]
mod tests {
    use super::*;
    use crate::intake::Row;

    fn refused<T: std::fmt::Debug>(
        rows: impl Iterator<Item = Result<Row<T>, Refusal>>,
    ) -> Vec<(u64, String, &'static str)> {
        rows.filter_map(Result::err)
            .map(|r| (r.line, r.column.clone(), r.finding.code))
            .collect()
    }

    #[test]
    fn a_site_is_read_and_what_is_not_there_stays_unknown() {
        let file = "site,hours,soil,coastal,zone\n\
            North yard,06:00-11:00;14:00-18:00,chalk,Yes,4\n\
            B,,,,\n";
        let rows: Vec<_> = SiteReader::open(file.as_bytes())
            .unwrap()
            .map(Result::unwrap)
            .collect();
        let first = &rows[0].value;
        assert_eq!((first.hours.len(), first.coastal), (2, Some(true)));
        assert_eq!(first.extra["zone"], "4");
        let codes: Vec<_> = rows[0].remarks.iter().map(|f| f.code).collect();
        assert_eq!(codes, ["sites-soil-unknown"]);
        let bare = Site {
            name: "B".into(),
            ..Site::default()
        };
        assert_eq!(rows[1].value, bare);
    }

    #[test]
    fn bad_rows_of_sites_say_where_and_what() {
        let file = "site,lat,lon,hours,closed,coastal,line_kv,no_feeding,tidy,limit\n\
            ,,,,,,,,,\n\
            A,25.5,,,,,,,,\n\
            B,,,6 to 11,,,,,,\n\
            C,,,06:00-11:00;10:00-12:00,,,,,,\n\
            D,,,,2026-12-26/2026-12-24,,,,,\n\
            E,,,,,maybe,,,,\n\
            F,,,,,,5000,,,\n\
            G,,,,,,,06-01/09-31 N,,\n\
            H,,,,,,,,9,4\n\
            I,,,,,,,,,\n\
            I,,,,,,,,,\n\
            ..,,,,,,,,,\n";
        let said = refused(SiteReader::open(file.as_bytes()).unwrap());
        let said: Vec<_> = said.iter().map(|(l, c, k)| (*l, c.as_str(), *k)).collect();
        assert_eq!(
            said,
            [
                (3, "lon", "intake-half-position"),
                (4, "hours", "sites-bad-hours"),
                (5, "hours", "sites-hours-overlap"),
                (6, "closed", "sites-bad-closed"),
                (7, "coastal", "log-yes-or-no"),
                (8, "line_kv", "intake-out-of-range"),
                (9, "no_feeding", "sites-bad-feeding"),
                (10, "limit", "sites-tidy-beyond-limit"),
                (12, "site", "sites-name-twice"),
                (13, "site", "sites-bad-name"),
            ]
        );
    }

    #[test]
    fn bad_rows_of_crews_say_where_and_what() {
        let file = "crew,people,hours,room_m3,gone\n\
            A,0,,,\n\
            B,2,06:00-11:00;13:00-15:00,,\n\
            C,two,,,\n\
            D,,,5000,\n\
            E,,,,left\n\
            ,2,,,\n\
            F,3,06:00-14:00,12,yes\n";
        let said = refused(CrewReader::open(file.as_bytes()).unwrap());
        let said: Vec<_> = said.iter().map(|(l, c, k)| (*l, c.as_str(), *k)).collect();
        assert_eq!(
            said,
            [
                (2, "people", "sites-crew-nobody"),
                (3, "hours", "sites-too-many"),
                (4, "people", "intake-not-whole"),
                (5, "room_m3", "intake-out-of-range"),
                (6, "gone", "log-yes-or-no"),
                (7, "crew", "sites-no-name"),
            ]
        );
    }
}
