//! Charts laid out on paper: positions and labels, ready to draw.
//!
//! Paper units are those of the chart's own view box; y runs down.

use super::said::Speaker;
use crown::Quantiles;
use model::Day;
use std::fmt::Write;

/// Width of a chart.
pub const WIDTH: f64 = 640.0;
/// Room for labels on the left and below, and on the right and above.
const LEFT: f64 = 64.0;
const BELOW: f64 = 40.0;
const RIGHT: f64 = 16.0;
const ABOVE: f64 = 18.0;

/// A mark on an axis.
#[derive(Clone, PartialEq, Debug)]
pub struct Tick {
    /// Where, along the axis.
    pub at: i32,
    /// Its label.
    pub label: String,
}

/// A straight scale from values to paper.
#[derive(Clone, Copy, PartialEq, Debug)]
struct Scale {
    from: f64,
    to: f64,
    start: f64,
    end: f64,
}

impl Scale {
    fn at(&self, value: f64) -> f64 {
        let share = ((value - self.from) / (self.to - self.from)).clamp(0.0, 1.0);
        self.start + share * (self.end - self.start)
    }
}

/// Steps of an axis from 0: at most `most` of them, each 1, 2 or 5 times a power of ten, whole numbers.
fn steps(top: f64, most: usize) -> Vec<f64> {
    let fits = |step: &f64| top / step <= most as f64;
    let step = (0..6)
        .flat_map(|p| [1.0, 2.0, 5.0].map(|k| k * f64::from(10_i32.pow(p))))
        .find(fits);
    let step = step.unwrap_or(1e6);
    (0..=(top / step).floor() as usize)
        .map(|i| i as f64 * step)
        .collect()
}

/// A range on a strip.
#[derive(Clone, PartialEq, Debug)]
pub struct Strip {
    /// What makes this range.
    pub name: String,
    /// Key for its colour.
    pub key: &'static str,
    /// Left end.
    pub from: i32,
    /// Length, at least enough to be seen.
    pub length: i32,
    /// Top of its bar.
    pub y: i32,
    /// The range in words.
    pub range: String,
}

/// What was lost against what each explanation makes.
#[derive(Clone, PartialEq, Debug)]
pub struct Strips {
    /// Height of the chart.
    pub height: i32,
    /// One strip an explanation.
    pub strips: Vec<Strip>,
    /// Where what was seen stands; nothing where the counts cannot tell.
    pub seen: Option<i32>,
    /// What was seen, in words.
    pub seen_words: String,
    /// Which end of those words stands there: `start`, `middle`, `end`, so that they stay on the paper.
    pub seen_anchor: &'static str,
    /// Axis below.
    pub ticks: Vec<Tick>,
    /// Line of the axis.
    pub axis: i32,
}

/// Lays out ranges `(key, name, low, high)` and what was seen.
pub fn strips(
    speaker: &Speaker,
    ranges: &[(&'static str, String, f64, f64)],
    seen: Option<f64>,
) -> Strips {
    const ROW: f64 = 62.0;
    const TOP: f64 = 48.0;
    let top = ranges.iter().map(|r| r.3).chain(seen).fold(4.0, f64::max) * 1.08;
    let x = Scale {
        from: 0.0,
        to: top,
        start: 22.0,
        end: WIDTH - RIGHT,
    };
    let strips = ranges
        .iter()
        .enumerate()
        .map(|(i, (key, name, low, high))| Strip {
            name: name.clone(),
            key,
            from: x.at(*low) as i32,
            length: ((x.at(*high) - x.at(*low)) as i32).max(8),
            y: (TOP + ROW * i as f64 + 28.0) as i32,
            range: speaker.measure.counts(*low, *high),
        });
    let axis = TOP + ROW * ranges.len() as f64 + 8.0;
    Strips {
        height: (axis + BELOW) as i32,
        strips: strips.collect(),
        seen: seen.map(|n| x.at(n) as i32),
        seen_words: seen.map_or_else(String::new, |n| {
            speaker.text("loss-chart-seen", &[("n", speaker.measure.about(n).into())])
        }),
        seen_anchor: match seen.map(|n| n / top) {
            Some(share) if share < 0.15 => "start",
            Some(share) if share > 0.85 => "end",
            _ => "middle",
        },
        ticks: ticks(speaker, &x, &steps(top, 8)),
        axis: axis as i32,
    }
}

fn ticks(speaker: &Speaker, scale: &Scale, values: &[f64]) -> Vec<Tick> {
    values
        .iter()
        .map(|v| Tick {
            at: scale.at(*v) as i32,
            label: speaker.measure.about(*v),
        })
        .collect()
}

/// A chart over time: bands and lines as SVG paths.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Course {
    /// Height of the chart.
    pub height: i32,
    /// Left end of the plot.
    pub left: i32,
    /// Bottom of the plot.
    pub bottom: i32,
    /// Filled bands with their key.
    pub bands: Vec<(&'static str, String)>,
    /// Lines with their key.
    pub lines: Vec<(&'static str, String)>,
    /// Counted points: key, x, y, label.
    pub dots: Vec<(&'static str, i32, i32, String)>,
    /// Where today stands.
    pub today: Option<i32>,
    /// Dates along the bottom.
    pub dates: Vec<Tick>,
    /// Counts along the left.
    pub counts: Vec<Tick>,
}

/// Something that runs over time.
pub enum Trace<'a> {
    /// 5 to 95 % as a band, the median as a line.
    Fan(&'static str, &'a [(Day, Quantiles)]),
    /// A limit that holds from each day to the next.
    Stairs(&'static str, &'a [(Day, f64)]),
    /// Counts.
    Dots(&'static str, &'a [(Day, f64)]),
}

/// Lays traces out over the days from `from` to `to`.
pub fn course(speaker: &Speaker, traces: &[Trace], from: Day, to: Day, today: Day) -> Course {
    const HEIGHT: f64 = 330.0;
    let top = traces.iter().map(top).fold(4.0, f64::max) * 1.06;
    let x = Scale {
        from: from.0.into(),
        to: to.0.into(),
        start: LEFT,
        end: WIDTH - RIGHT,
    };
    let y = Scale {
        from: 0.0,
        to: top,
        start: HEIGHT - BELOW,
        end: ABOVE,
    };
    let at = |day: Day, value: f64| (x.at(day.0.into()), y.at(value));
    let mut course = Course {
        height: HEIGHT as i32,
        left: LEFT as i32,
        bottom: (HEIGHT - BELOW) as i32,
        today: (today >= from && today <= to).then(|| x.at(today.0.into()) as i32),
        dates: dates(speaker, &x, from, to),
        counts: ticks(speaker, &y, &steps(top, 5)),
        ..Course::default()
    };
    traces
        .iter()
        .for_each(|trace| add(speaker, &mut course, trace, &at));
    course
}

fn top(trace: &Trace) -> f64 {
    match trace {
        Trace::Fan(_, days) => days.iter().map(|(_, q)| q.q95).fold(0.0, f64::max),
        Trace::Stairs(_, days) | Trace::Dots(_, days) => {
            days.iter().map(|(_, n)| *n).fold(0.0, f64::max)
        }
    }
}

fn add(speaker: &Speaker, course: &mut Course, trace: &Trace, at: &dyn Fn(Day, f64) -> (f64, f64)) {
    match trace {
        Trace::Fan(key, days) => {
            let upper = days.iter().map(|(d, q)| at(*d, q.q95));
            let lower = days.iter().rev().map(|(d, q)| at(*d, q.q05));
            course
                .bands
                .push((key, format!("{}z", line(upper.chain(lower)))));
            course
                .lines
                .push((key, line(days.iter().map(|(d, q)| at(*d, q.q50)))));
        }
        Trace::Stairs(key, days) => {
            let corners = days
                .windows(2)
                .flat_map(|w| [at(w[0].0, w[0].1), at(w[1].0, w[0].1)]);
            let last = days.last().map(|(d, n)| at(*d, *n));
            course.lines.push((key, line(corners.chain(last))));
        }
        Trace::Dots(key, days) => {
            let dot = |(day, n): &(Day, f64)| {
                let (x, y) = at(*day, *n);
                let words = [
                    ("n", speaker.measure.about(*n).into()),
                    ("date", speaker.measure.date(*day).into()),
                ];
                (*key, x as i32, y as i32, speaker.text("chart-dot", &words))
            };
            course.dots.extend(days.iter().map(dot));
        }
    }
}

fn line(points: impl Iterator<Item = (f64, f64)>) -> String {
    let mut text = String::new();
    for (i, (x, y)) in points.enumerate() {
        let _ = write!(text, "{}{x:.0} {y:.0}", if i == 0 { 'M' } else { 'L' });
    }
    text
}

/// The first days of months, thinned so that labels do not touch.
fn dates(speaker: &Speaker, x: &Scale, from: Day, to: Day) -> Vec<Tick> {
    let mut firsts: Vec<Day> = (from.0..=to.0)
        .map(Day)
        .filter(|d| d.ymd().2 == 1)
        .collect();
    let every = firsts.len().div_ceil(7).max(1);
    firsts = firsts.into_iter().step_by(every).collect();
    firsts
        .into_iter()
        .map(|d| Tick {
            at: x.at(d.0.into()) as i32,
            label: speaker.say(&format!("measure-month-{}", d.ymd().1)),
        })
        .collect()
}
