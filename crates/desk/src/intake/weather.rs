//! `weather.csv`: what was measured on a day, at a site or for all sites.
//!
//! Degrees Celsius, per cent, m/s at 2 m, MJ a square metre and day, hours, millimetres. A day that stands twice for a
//! site is refused; so is a row in which nothing was measured.

use super::cells;
use super::reads::{about, rows};
use super::refusal::{Fault, Refusal};
use super::table::{Layout, Table};
use model::{Arg, Day, WeatherDay};
use std::collections::HashMap;
use std::io::Read;

/// Columns, as they are written and read.
pub const WEATHER_COLUMNS: [&str; 9] = [
    "date",
    "site",
    "tmin_c",
    "tmax_c",
    "humidity_pct",
    "wind_ms",
    "radiation_mj",
    "sunshine_h",
    "rain_mm",
];

const LAYOUT: Layout = Layout {
    required: &["date"],
    optional: &[
        "site",
        "tmin_c",
        "tmax_c",
        "humidity_pct",
        "wind_ms",
        "radiation_mj",
        "sunshine_h",
        "rain_mm",
    ],
};

/// Reads `weather.csv` row by row.
pub struct WeatherReader<R> {
    table: Table<R>,
    seen: HashMap<(String, Day), u64>,
    today: Option<Day>,
}

impl<R: Read> WeatherReader<R> {
    /// Reads the header.
    pub fn open(read: R) -> Result<WeatherReader<R>, Refusal> {
        Ok(WeatherReader {
            table: Table::open(read, &LAYOUT)?,
            seen: HashMap::new(),
            today: None,
        })
    }

    /// From now on dates after `today` are refused: a forecast is no measurement.
    pub fn not_after(mut self, today: Day) -> WeatherReader<R> {
        self.today = Some(today);
        self
    }

    fn row(&mut self) -> Result<WeatherDay, Fault> {
        let day = self.day()?;
        let col = self.table.column("site");
        let site = cells::text(col, self.table.cell(col))?;
        let weather = WeatherDay {
            t_min: self.number("tmin_c", -60.0, 60.0)?,
            t_max: self.number("tmax_c", -60.0, 60.0)?,
            humidity: self.number("humidity_pct", 0.0, 100.0)?,
            wind: self.number("wind_ms", 0.0, 100.0)?,
            radiation: self.number("radiation_mj", 0.0, 50.0)?,
            sunshine: self.number("sunshine_h", 0.0, 24.0)?,
            rain: self.number("rain_mm", 0.0, 2000.0)?,
            ..WeatherDay::blank(&site, day)
        };
        if let (Some(min), Some(max)) = (weather.t_min, weather.t_max)
            && min > max
        {
            let fault = Fault::cell("weather-min-above-max", "tmin_c", &min.to_string());
            return Err(fault.with("max", Arg::Number(max)));
        }
        if weather == WeatherDay::blank(&site, day) {
            return Err(Fault::cell("weather-nothing", "date", &day.to_string()));
        }
        let (line, at) = (self.table.line(), (site, day));
        if let Some(first) = self.seen.get(&at) {
            let fault = Fault::cell("weather-doubled-day", "date", &day.to_string());
            return Err(fault.with("first", Arg::Count(*first as i64)));
        }
        self.seen.insert(at, line);
        Ok(weather)
    }

    fn day(&self) -> Result<Day, Fault> {
        let col = self.table.column("date");
        let cell = self.table.cell(col);
        let day = cells::date(col, cell)?;
        let day = day.ok_or_else(|| Fault::cell("weather-no-date", "date", ""))?;
        match self.today {
            Some(today) if day > today => {
                let fault = Fault::cell("intake-date-in-future", "date", cell);
                Err(fault.with("today", Arg::Date(today)))
            }
            _ => Ok(day),
        }
    }

    fn number(&self, name: &'static str, low: f64, high: f64) -> Result<Option<f64>, Fault> {
        let col = self.table.column(name);
        cells::number(col, self.table.cell(col), low, high)
    }
}

rows!(WeatherReader<R>, WeatherDay, <R>);
about!(WeatherReader<R>, <R>, table);

#[cfg(test)]
mod tests {
    use super::*;

    fn read(file: &str) -> Vec<Result<WeatherDay, (u64, String, &'static str)>> {
        WeatherReader::open(file.as_bytes())
            .unwrap()
            .not_after(Day::parse("2026-06-01").unwrap())
            .map(|row| match row {
                Ok(row) => Ok(row.value),
                Err(refusal) => Err((refusal.line, refusal.column.clone(), refusal.finding.code)),
            })
            .collect()
    }

    #[test]
    fn what_was_not_measured_stays_unknown() {
        let rows = read(
            "date,site,tmin_c,tmax_c,rain_mm\n2026-05-01,,21.5,30,0\n2026-05-02,North yard,,,12.5\n",
        );
        let first = rows[0].as_ref().unwrap();
        assert_eq!((first.t_min, first.t_max), (Some(21.5), Some(30.0)));
        assert_eq!((first.rain, first.wind), (Some(0.0), None));
        let second = rows[1].as_ref().unwrap();
        assert_eq!((second.site.as_str(), second.t_max), ("North yard", None));
    }

    #[test]
    fn bad_rows_say_where_and_what() {
        let rows = read(
            "date,site,tmin_c,tmax_c,humidity_pct,rain_mm\n\
             ,,20,30,,\n\
             2026-07-02,,20,30,,\n\
             2026-05-01,,30,20,,\n\
             2026-05-01,,20,86,,\n\
             2026-05-01,,20,30,0.62.1,\n\
             2026-05-01,,,,,\n\
             2026-05-01,,20,30,,\n\
             2026-05-01,,21,30,,\n\
             2026-05-01,Yard,21,30,,\n",
        );
        let faults: Vec<_> = rows.into_iter().filter_map(Result::err).collect();
        let said: Vec<(u64, &str, &str)> = faults
            .iter()
            .map(|(line, column, code)| (*line, column.as_str(), *code))
            .collect();
        assert_eq!(
            said,
            [
                (2, "date", "weather-no-date"),
                (3, "date", "intake-date-in-future"),
                (4, "tmin_c", "weather-min-above-max"),
                (5, "tmax_c", "intake-out-of-range"),
                (6, "humidity_pct", "intake-not-number"),
                (7, "date", "weather-nothing"),
                (9, "date", "weather-doubled-day"),
            ]
        );
    }
}
