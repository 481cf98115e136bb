//! Lengths, dates and counts written in the reader's units and language.

use crate::words::{Lang, Value, Words};
use model::{Arg, Day, Finding, Knowledge, Metres};

/// Which units a reader thinks in.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Default)]
pub enum Units {
    /// Metres, centimetres, degrees Celsius.
    #[default]
    Metric,
    /// Feet, inches, degrees Fahrenheit.
    UsCustomary,
}

impl Units {
    /// Both, in the order shown in the settings.
    pub const ALL: [Units; 2] = [Units::Metric, Units::UsCustomary];

    /// The word in settings and addresses: `metric`, `us`.
    pub fn key(self) -> &'static str {
        match self {
            Units::Metric => "metric",
            Units::UsCustomary => "us",
        }
    }

    /// From that word.
    pub fn parse(key: &str) -> Option<Units> {
        Units::ALL.into_iter().find(|u| u.key() == key)
    }
}

/// How one reader wants quantities written. Cheap to copy.
#[derive(Clone, Copy, Debug)]
pub struct Measure {
    /// Units.
    pub units: Units,
    /// Words, and with them the language.
    pub words: Words,
}

/// Thin enough to belong together, never a line's end between number and unit.
const NBSP: char = '\u{a0}';

/// US liquid gallon, cubic yard, square foot and avoirdupois pound (NIST Handbook 44, appendix C; from memory).
pub(crate) const LITRES_PER_GALLON: f64 = 3.785_411_784;
pub(crate) const CUBIC_METRES_PER_YARD: f64 = 0.764_554_857_984;
pub(crate) const SQUARE_METRES_PER_FOOT: f64 = 0.092_903_04;
pub(crate) const KILOGRAMS_PER_POUND: f64 = 0.453_592_37;

/// One decimal below ten, none above.
fn few(value: f64) -> usize {
    usize::from(value.abs() < 10.0)
}

impl Measure {
    /// A reader's measure.
    pub fn new(units: Units, words: Words) -> Measure {
        Measure { units, words }
    }

    /// A plain number with up to `decimals` places, trailing zeros dropped.
    pub fn number(&self, value: f64, decimals: usize) -> String {
        let mut text = format!("{value:.decimals$}");
        if text.contains('.') {
            text.truncate(text.trim_end_matches('0').trim_end_matches('.').len());
        }
        if text == "-0" {
            text.remove(0);
        }
        // Spanish writes a decimal comma, but not where people buy timber by the foot
        if self.words.lang() == Lang::Es && self.units == Units::Metric {
            text.replace('.', ",")
        } else {
            text
        }
    }

    /// A whole number with its thousands set apart.
    pub fn count(&self, value: i64) -> String {
        let mark = if self.words.lang() == Lang::Es {
            NBSP
        } else {
            ','
        };
        let digits = value.unsigned_abs().to_string();
        let mut out = String::from(if value < 0 { "-" } else { "" });
        for (i, digit) in digits.chars().enumerate() {
            if i > 0 && (digits.len() - i).is_multiple_of(3) {
                out.push(mark);
            }
            out.push(digit);
        }
        out
    }

    /// An expected number of things, such as a median of counts: to the nearest whole one.
    pub fn about(&self, value: f64) -> String {
        self.count(value.round() as i64)
    }

    /// "1 to 4", to the nearest whole ones; a single number where both are the same.
    pub fn counts(&self, low: f64, high: f64) -> String {
        let (low, high) = (self.about(low), self.about(high));
        if low == high {
            return low;
        }
        self.words.text(
            "measure-range",
            &[("low", low.into()), ("high", high.into())],
        )
    }

    /// "1–4" for tables, to the nearest whole ones; a single number where both are the same.
    pub fn band(&self, low: f64, high: f64) -> String {
        let (low, high) = (self.about(low), self.about(high));
        if low == high {
            low
        } else {
            format!("{low}–{high}")
        }
    }

    /// A share or a probability, 0..=1, in whole percent. Near the ends it says "under 1%" and "over 99%": nothing that
    /// was worked out from counts is certain. Exactly 0 does not occur at all and says so.
    pub fn percent(&self, share: f64) -> String {
        let whole = (share * 100.0).round();
        let (key, n) = match share {
            s if s > 0.0 && whole < 1.0 => ("measure-percent-under", 1.0),
            _ if whole > 99.0 => ("measure-percent-over", 99.0),
            _ => ("measure-percent", whole),
        };
        self.words.text(key, &[("n", self.number(n, 0).into())])
    }

    /// A length: metres or feet.
    pub fn length(&self, length: Metres) -> String {
        match self.units {
            Units::Metric => {
                self.with_unit(length.0, if length.0.abs() < 10.0 { 1 } else { 0 }, "m")
            }
            Units::UsCustomary => {
                let feet = length.feet();
                self.with_unit(feet, if feet.abs() < 10.0 { 1 } else { 0 }, "ft")
            }
        }
    }

    /// A short length such as a stub or a spine: centimetres, or inches to the nearest quarter.
    pub fn short_length(&self, length: Metres) -> String {
        match self.units {
            Units::Metric => self.with_unit(length.0 * 100.0, 1, "cm"),
            Units::UsCustomary => self.with_unit((length.inches() * 4.0).round() / 4.0, 2, "in"),
        }
    }

    /// A temperature given in degrees Celsius.
    pub fn temperature(&self, celsius: f64) -> String {
        match self.units {
            Units::Metric => self.with_unit(celsius, 0, "°C"),
            Units::UsCustomary => self.with_unit(celsius * 1.8 + 32.0, 0, "°F"),
        }
    }

    /// An amount of water given in litres: litres or US gallons.
    pub fn litres(&self, litres: f64) -> String {
        match self.units {
            Units::Metric => self.with_unit(litres, few(litres), "L"),
            Units::UsCustomary => {
                let gallons = litres / LITRES_PER_GALLON;
                self.with_unit(gallons, few(gallons), "gal")
            }
        }
    }

    /// Water in both units, the reader's first: people carry cans and read meters of either kind.
    pub fn water(&self, litres: f64) -> String {
        self.water_range(litres, litres)
    }

    /// A stretch of water in both units, the reader's first.
    pub fn water_range(&self, low: f64, high: f64) -> String {
        let in_litres = self.span_with_unit(low, high, "L");
        let gallons = |litres: f64| litres / LITRES_PER_GALLON;
        let in_gallons = self.span_with_unit(gallons(low), gallons(high), "gal");
        match self.units {
            Units::Metric => format!("{in_litres} ({in_gallons})"),
            Units::UsCustomary => format!("{in_gallons} ({in_litres})"),
        }
    }

    /// A height of water given in millimetres, such as rain: millimetres or inches.
    pub fn water_height(&self, low_mm: f64, high_mm: f64) -> String {
        match self.units {
            Units::Metric => self.span_with_unit(low_mm, high_mm, "mm"),
            Units::UsCustomary => {
                let inches = |mm: f64| self.number(mm / 25.4, 2);
                self.joined_with_unit(inches(low_mm), inches(high_mm), "in")
            }
        }
    }

    /// A stretch of areas given in square metres: square metres or square feet.
    pub fn area_range(&self, low: f64, high: f64) -> String {
        match self.units {
            Units::Metric => self.span_with_unit(low, high, "m²"),
            Units::UsCustomary => {
                let feet = |m2: f64| m2 / SQUARE_METRES_PER_FOOT;
                self.span_with_unit(feet(low), feet(high), "ft²")
            }
        }
    }

    /// A stretch of lengths given in metres: metres or feet.
    pub fn length_range(&self, low_m: f64, high_m: f64) -> String {
        match self.units {
            Units::Metric => self.span_with_unit(low_m, high_m, "m"),
            Units::UsCustomary => {
                let feet = |m: f64| Metres(m).feet();
                self.span_with_unit(feet(low_m), feet(high_m), "ft")
            }
        }
    }

    /// A stretch of shares in whole percent.
    pub fn percent_range(&self, low: f64, high: f64) -> String {
        let n = self.range(100.0 * low, 100.0 * high, 0);
        self.words.text("measure-percent", &[("n", n.into())])
    }

    /// Between two plain figures; a single one where both read the same.
    pub fn range(&self, low: f64, high: f64, decimals: usize) -> String {
        self.joined(self.number(low, decimals), self.number(high, decimals))
    }

    fn span_with_unit(&self, low: f64, high: f64, unit: &str) -> String {
        let text = |x: f64| self.number(x, few(x));
        self.joined_with_unit(text(low), text(high), unit)
    }

    fn joined_with_unit(&self, low: String, high: String, unit: &str) -> String {
        format!("{}{NBSP}{unit}", self.joined(low, high))
    }

    fn joined(&self, low: String, high: String) -> String {
        if low == high {
            return low;
        }
        self.words.text(
            "measure-range",
            &[("low", low.into()), ("high", high.into())],
        )
    }

    /// A mass given in kilograms: kilograms (grams below one) or pounds (ounces below one).
    pub fn mass(&self, kilograms: f64) -> String {
        let (value, unit) = match self.units {
            Units::Metric if kilograms.abs() < 1.0 => {
                return self.with_unit(kilograms * 1000.0, 0, "g");
            }
            Units::Metric => (kilograms, "kg"),
            Units::UsCustomary => match kilograms / KILOGRAMS_PER_POUND {
                pounds if pounds.abs() < 1.0 => (pounds * 16.0, "oz"),
                pounds => (pounds, "lb"),
            },
        };
        self.with_unit(value, few(value), unit)
    }

    /// A stretch of masses given in kilograms; a single one where both read the same.
    pub fn mass_range(&self, low: f64, high: f64) -> String {
        self.joined(self.mass(low), self.mass(high))
    }

    /// A volume given in cubic metres: cubic metres or cubic yards.
    pub fn bulk(&self, cubic_metres: f64) -> String {
        match self.units {
            Units::Metric => self.with_unit(cubic_metres, few(cubic_metres), "m³"),
            Units::UsCustomary => {
                let yards = cubic_metres / CUBIC_METRES_PER_YARD;
                self.with_unit(yards, few(yards), "yd³")
            }
        }
    }

    /// An area given in square metres: square metres or square feet.
    pub fn area(&self, square_metres: f64) -> String {
        match self.units {
            Units::Metric => self.with_unit(square_metres, few(square_metres), "m²"),
            Units::UsCustomary => {
                let feet = square_metres / SQUARE_METRES_PER_FOOT;
                self.with_unit(feet, few(feet), "ft²")
            }
        }
    }

    fn with_unit(&self, value: f64, decimals: usize, unit: &str) -> String {
        format!("{}{NBSP}{unit}", self.number(value, decimals))
    }

    /// A calendar day, the month in letters so that nobody takes it for the day.
    pub fn date(&self, day: Day) -> String {
        let (year, month, of_month) = day.ymd();
        let us = self.words.lang() == Lang::En && self.units == Units::UsCustomary;
        self.words.text(
            if us {
                "measure-date-us"
            } else {
                "measure-date"
            },
            &[
                ("day", of_month.to_string().into()),
                (
                    "month",
                    self.words.say(&format!("measure-month-{month}")).into(),
                ),
                ("year", year.to_string().into()),
            ],
        )
    }

    /// A stretch of days in the unit people use at that length: days, weeks, months, years.
    pub fn duration(&self, days: f64) -> String {
        const MONTH: f64 = 365.25 / 12.0;
        let (key, n) = match days.abs() {
            d if d < 13.5 => ("measure-days", days.round()),
            d if d < 100.0 => ("measure-weeks", (days / 7.0).round()),
            d if d < 35.5 * MONTH => ("measure-months", (days / MONTH).round()),
            _ => ("measure-years", (days / 36.525).round() / 10.0),
        };
        self.words
            .text(key, &[("n", n.into()), ("text", self.number(n, 1).into())])
    }

    /// One argument of a finding as its words want it: counts stay numbers, because plurals hang on them.
    pub fn arg(&self, arg: &Arg) -> Value {
        match arg {
            Arg::Count(n) => (*n).into(),
            Arg::Number(x) => self.number(*x, 2).into(),
            Arg::Share(s) => self.percent(*s).into(),
            Arg::Length(m) => self.length(*m).into(),
            Arg::ShortLength(m) => self.short_length(*m).into(),
            Arg::Days(d) => self.duration(*d).into(),
            Arg::Date(d) => self.date(*d).into(),
            Arg::Text(t) => t.clone().into(),
            Arg::Code(code) => self.named(code).into(),
        }
    }

    /// The words of a code; a disorder or a sign is called by the name in its row.
    fn named(&self, code: &str) -> String {
        let tables = Knowledge::embedded();
        let row = tables.disorder(code).map(|row| &row.name);
        match row.or_else(|| tables.sign(code).map(|row| &row.name)) {
            Some(name) if !self.words.has(code) => match self.words.lang() {
                Lang::En => name.en.clone(),
                Lang::Es => name.es.clone(),
            },
            _ => self.words.say(code),
        }
    }

    /// A finding in words.
    pub fn finding(&self, finding: &Finding) -> String {
        let args: Vec<_> = finding
            .args
            .iter()
            .map(|(name, arg)| (*name, self.arg(arg)))
            .collect();
        self.words.text(finding.code, &args)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn measure(lang: Lang, units: Units) -> Measure {
        Measure::new(units, Words::new(lang))
    }

    fn plain(text: String) -> String {
        text.replace(NBSP, " ")
    }

    #[test]
    fn lengths_follow_the_setting() {
        let (si, us) = (
            measure(Lang::En, Units::Metric),
            measure(Lang::En, Units::UsCustomary),
        );
        let es = measure(Lang::Es, Units::Metric);
        // one foot is 0.3048 m, one inch 0.0254 m exactly: NIST SP 811, appendix B
        for (metres, in_si, in_us, in_es) in [
            (3.048, "3 m", "10 ft", "3 m"),
            (6.1, "6.1 m", "20 ft", "6,1 m"),
            (12.4, "12 m", "41 ft", "12 m"),
        ] {
            assert_eq!(plain(si.length(Metres(metres))), in_si);
            assert_eq!(plain(us.length(Metres(metres))), in_us);
            assert_eq!(plain(es.length(Metres(metres))), in_es);
        }
        assert_eq!(plain(si.short_length(Metres::from_inches(0.75))), "1.9 cm");
        assert_eq!(plain(us.short_length(Metres(0.019))), "0.75 in");
        assert_eq!(plain(us.temperature(-40.0)), "-40 °F");
    }

    #[test]
    fn dates_numbers_and_shares() {
        let (si, us) = (
            measure(Lang::En, Units::Metric),
            measure(Lang::En, Units::UsCustomary),
        );
        let es = measure(Lang::Es, Units::Metric);
        let day = Day::from_ymd(2026, 3, 2).unwrap();
        assert_eq!(plain(si.date(day)), "2 Mar 2026");
        assert_eq!(plain(us.date(day)), "Mar 2, 2026");
        assert_eq!(plain(es.date(day)), "2 mar 2026");
        assert_eq!(si.count(1_234_567), "1,234,567");
        assert_eq!(si.count(999), "999");
        assert_eq!(plain(es.count(-12_345)), "-12 345");
        assert_eq!(si.counts(0.6, 4.4), "1 to 4");
        assert_eq!(si.counts(2.9, 3.1), "3");
        assert_eq!(plain(si.percent(0.004)), "under 1%");
        assert_eq!(plain(si.percent(0.997)), "over 99%");
        assert_eq!(plain(si.percent(0.0)), "0%");
        assert_eq!(plain(si.percent(1.0)), "over 99%");
        assert_eq!(plain(es.percent(0.62)), "62 %");
    }

    #[test]
    fn durations_use_the_unit_of_their_length() {
        let m = measure(Lang::En, Units::Metric);
        let said: Vec<_> = [1.0, 9.0, 63.0, 426.0, 1280.0]
            .map(|d| plain(m.duration(d)))
            .into();
        assert_eq!(
            said,
            ["1 day", "9 days", "9 weeks", "14 months", "3.5 years"]
        );
    }
}
