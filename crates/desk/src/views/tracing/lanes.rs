//! Blades as lanes over time, laid out ready to draw.
//!
//! A true scale would show nothing: a log spans months and its cuts lie minutes apart. So every moment at which something
//! happened gets a column of its own, in the order of time; days stand apart, and the days between them are said in
//! words. Units are CSS px; y runs down.

use crate::clock;
use crate::views::said::Speaker;
use model::{Day, Moment};
use std::collections::{BTreeMap, BTreeSet};

/// Width of a column: room for a tag.
const COLUMN: i32 = 66;
/// Room between days, for the days that lie between.
const BETWEEN: i32 = 46;
/// Height of a lane.
pub const LANE: i32 = 84;
/// Height of the row of dates.
pub const TOP: i32 = 52;
/// From the top of a lane to its line.
const LINE: i32 = 46;
/// More columns than this are not drawn: nobody follows them with a finger.
pub const MOST_COLUMNS: usize = 160;

/// What a blade did, in numbers of the caller's lists.
#[derive(Clone, PartialEq, Debug)]
pub struct Event {
    /// The lane.
    pub lane: usize,
    /// When.
    pub at: Moment,
    /// What.
    pub what: What,
}

/// A cut or a cleaning.
#[derive(Clone, PartialEq, Debug)]
pub enum What {
    /// A cut.
    Cut {
        /// Tag of the palm.
        tag: String,
        /// `case`, `certain`, `possible`, `source` or `passed`.
        key: &'static str,
    },
    /// A cleaning: `adequate`, `short` or `unknown`, with its word.
    Clean {
        /// Key.
        key: &'static str,
        /// Word for it.
        word: String,
    },
}

/// From one cut to another: along a lane, or from lane to lane at one palm.
#[derive(Clone, PartialEq, Debug)]
pub struct Leap {
    /// Lane and moment where it begins.
    pub from: (usize, Moment),
    /// Lane and moment where it ends.
    pub to: (usize, Moment),
    /// Whether it is in the certain set.
    pub certain: bool,
}

/// A lane.
#[derive(Clone, PartialEq, Debug)]
pub struct Lane {
    /// Tag of the blade.
    pub tag: String,
    /// What it is.
    pub kind: String,
    /// Its line.
    pub y: i32,
}

/// A day's columns.
#[derive(Clone, PartialEq, Debug)]
pub struct DayBand {
    /// Left edge.
    pub x: i32,
    /// Width.
    pub width: i32,
    /// The date.
    pub label: String,
    /// What lies between it and the day before: "12 days"; nothing before the first.
    pub gap: Option<String>,
}

/// A thing on a lane.
#[derive(Clone, PartialEq, Debug)]
pub struct Mark {
    /// Middle.
    pub x: i32,
    /// Middle.
    pub y: i32,
    /// What it is: a key of [`What`].
    pub key: &'static str,
    /// Whether it is a cut.
    pub cut: bool,
    /// Tag of the palm, or the word for the cleaning.
    pub label: String,
    /// The hour.
    pub hour: String,
}

/// A line of a chain.
#[derive(Clone, PartialEq, Debug)]
pub struct Link {
    /// Path.
    pub d: String,
    /// Solid, or dashed.
    pub certain: bool,
}

/// The drawing.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Lanes {
    /// Width.
    pub width: i32,
    /// Height.
    pub height: i32,
    /// Days.
    pub days: Vec<DayBand>,
    /// Lanes from top to bottom.
    pub lanes: Vec<Lane>,
    /// Cuts and cleanings.
    pub marks: Vec<Mark>,
    /// Chains.
    pub links: Vec<Link>,
    /// Moments that are not drawn, because there are too many.
    pub left_out: usize,
}

/// Lays events out. `names` are tag and kind of each lane; events beyond [`MOST_COLUMNS`] moments are left out, the
/// latest first.
pub fn lay(
    speaker: &Speaker,
    names: &[(String, String)],
    events: &[Event],
    leaps: &[Leap],
) -> Lanes {
    let moments: BTreeSet<Moment> = events.iter().map(|e| e.at).collect();
    let left_out = moments.len().saturating_sub(MOST_COLUMNS);
    let shown: Vec<Moment> = moments.into_iter().take(MOST_COLUMNS).collect();
    let (x, days, width) = columns(speaker, &shown);
    let place = |lane: usize, at: Moment| Some((*x.get(&at)?, y_of(lane)));
    Lanes {
        width,
        height: TOP + LANE * names.len() as i32,
        days,
        lanes: names
            .iter()
            .enumerate()
            .map(|(n, (tag, kind))| Lane {
                tag: tag.clone(),
                kind: kind.clone(),
                y: y_of(n),
            })
            .collect(),
        marks: events
            .iter()
            .filter_map(|e| mark(e, place(e.lane, e.at)?))
            .collect(),
        links: leaps
            .iter()
            .filter_map(|leap| {
                Some(Link {
                    d: path(
                        place(leap.from.0, leap.from.1)?,
                        place(leap.to.0, leap.to.1)?,
                    ),
                    certain: leap.certain,
                })
            })
            .collect(),
        left_out,
    }
}

fn y_of(lane: usize) -> i32 {
    TOP + LANE * lane as i32 + LINE
}

fn mark(event: &Event, (x, y): (i32, i32)) -> Option<Mark> {
    let (key, cut, label) = match &event.what {
        What::Cut { tag, key } => (*key, true, tag.clone()),
        What::Clean { key, word } => (*key, false, word.clone()),
    };
    Some(Mark {
        x,
        y,
        key,
        cut,
        label,
        hour: clock::hour(event.at),
    })
}

/// Along a lane below the points, so that it does not hide them; from lane to lane in a curve that leaves and arrives
/// level.
fn path((x1, y1): (i32, i32), (x2, y2): (i32, i32)) -> String {
    if y1 == y2 {
        return format!("M{x1} {y1}H{x2}");
    }
    let middle = (x1 + x2) / 2;
    format!("M{x1} {y1}C{middle} {y1} {middle} {y2} {x2} {y2}")
}

/// The middle of each moment's column, the days, and the width of it all.
fn columns(speaker: &Speaker, moments: &[Moment]) -> (BTreeMap<Moment, i32>, Vec<DayBand>, i32) {
    let mut middle = BTreeMap::new();
    let mut days: Vec<(Day, DayBand)> = Vec::new();
    let mut right = 0;
    for moment in moments {
        let day = clock::local_day(*moment);
        if days.last().is_none_or(|(last, _)| *last != day) {
            let gap = days
                .last()
                .map(|(last, _)| between(speaker, day.since(*last)));
            right += if days.is_empty() { 0 } else { BETWEEN };
            let band = DayBand {
                x: right,
                width: 0,
                label: speaker.measure.date(day),
                gap,
            };
            days.push((day, band));
        }
        middle.insert(*moment, right + COLUMN / 2);
        right += COLUMN;
        if let Some((_, band)) = days.last_mut() {
            band.width = right - band.x;
        }
    }
    for (_, band) in &mut days {
        // a date needs more room than one tag
        band.width = band.width.max(COLUMN);
    }
    (
        middle,
        days.into_iter().map(|(_, band)| band).collect(),
        right.max(COLUMN),
    )
}

fn between(speaker: &Speaker, days: i32) -> String {
    speaker.text("trace-days-between", &[("n", i64::from(days).into())])
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::{Measure, Units};
    use crate::words::{Lang, Words};

    fn at(day: i64, minute: i64) -> Moment {
        Moment((day * 1440 + minute + 600) * 60_000)
    }

    fn cut(lane: usize, at: Moment) -> Event {
        Event {
            lane,
            at,
            what: What::Cut {
                tag: "A".into(),
                key: "certain",
            },
        }
    }

    #[test]
    fn later_stands_to_the_right_and_days_stand_apart() {
        let speaker = Speaker::new(Measure::new(Units::Metric, Words::new(Lang::En)));
        let names = [
            ("H-1".to_owned(), String::new()),
            ("H-2".to_owned(), String::new()),
        ];
        let events = [
            cut(0, at(9, 0)),
            cut(1, at(9, 5)),
            cut(0, at(9, 5)),
            cut(1, at(30, 0)),
        ];
        let leap = Leap {
            from: (0, at(9, 0)),
            to: (1, at(30, 0)),
            certain: true,
        };
        let drawn = lay(&speaker, &names, &events, &[leap]);
        let x: Vec<i32> = drawn.marks.iter().map(|m| m.x).collect();
        assert!(x[0] < x[1] && x[1] == x[2] && x[2] < x[3], "{x:?}");
        assert_eq!(drawn.days.len(), 2);
        assert_eq!(drawn.days[0].gap, None);
        assert_eq!(drawn.days[1].x, drawn.days[0].width + BETWEEN);
        assert!(drawn.days[1].gap.as_ref().unwrap().contains("21"));
        assert!(x.iter().all(|x| *x > 0 && *x < drawn.width));
        assert!(
            drawn.links[0]
                .d
                .starts_with(&format!("M{} {}C", x[0], drawn.lanes[0].y))
        );
    }

    #[test]
    fn too_many_columns_are_left_out_and_counted() {
        let speaker = Speaker::new(Measure::new(Units::Metric, Words::new(Lang::En)));
        let events: Vec<Event> = (0..300).map(|n| cut(0, at(1, n))).collect();
        let drawn = lay(&speaker, &[("H-1".to_owned(), String::new())], &events, &[]);
        assert_eq!(
            (drawn.marks.len(), drawn.left_out),
            (MOST_COLUMNS, 300 - MOST_COLUMNS)
        );
    }
}
