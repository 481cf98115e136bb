//! The loss against what is ordinary, and when to call.

use super::charts::{Course, Strips, Trace, course, strips};
use super::said::Speaker;
use crown::{Cut, Explanation, LossReading, Quantiles, Reading};
use model::Day;

/// Days ahead of the tripwire's date, where nobody has planned a visit (assumed): four weeks.
const TRIPWIRE_DAYS: i32 = 28;
/// Days ahead that the chart of the tripwire shows.
const AHEAD_DAYS: i32 = 182;
/// The tripwire's own level: what ageing and move together reach with less probability than this is not ordinary.
pub const UNUSUAL: f64 = 0.05;

/// The loss in words and charts.
#[derive(Clone, PartialEq, Debug)]
pub struct LossView {
    /// What was lost, and what each explanation makes.
    pub said: Vec<String>,
    /// Whether that is ordinary.
    pub verdict: String,
    /// `ordinary`, `unusual`, `unknown`.
    pub key: &'static str,
    /// What was seen against the ranges; nothing with fewer than two looks.
    pub strips: Option<Strips>,
    /// "7 or more further fronds before 20 May: call."
    pub tripwire: String,
    /// The limit over the next half year, with what is expected.
    pub course: Course,
}

/// Whether a loss is ordinary.
pub fn key(loss: Option<&LossReading>) -> &'static str {
    match loss.and_then(|l| l.tail_probability) {
        Some(p) if p < UNUSUAL => "unusual",
        Some(_) => "ordinary",
        None => "unknown",
    }
}

/// The loss of a stem.
pub fn view(speaker: &Speaker, reading: &Reading) -> LossView {
    let loss = reading.loss();
    let key = key(loss.as_ref());
    LossView {
        said: loss.as_ref().map_or_else(Vec::new, |l| said(speaker, l)),
        verdict: verdict(speaker, loss.as_ref(), key),
        key,
        strips: loss.as_ref().map(|l| ranges(speaker, l)),
        tripwire: tripwire(speaker, reading),
        course: ahead(speaker, reading),
    }
}

fn said(speaker: &Speaker, loss: &LossReading) -> Vec<String> {
    let m = speaker.measure;
    let dates = [
        ("since", m.date(loss.since).into()),
        ("until", m.date(loss.until).into()),
    ];
    let seen = match loss.lost {
        Some(n) => {
            let lost = [("lost", (n.round() as i64).into())];
            speaker.text("loss-seen", &[&dates[..], &lost[..]].concat())
        }
        None => speaker.text("loss-not-told", &dates),
    };
    let makes = Explanation::ALL.into_iter().filter_map(|e| {
        let (low, high) = loss.expected[e.index()]?;
        let range = [("range", m.counts(low, high).into())];
        Some(speaker.text(&format!("loss-makes-{}", e.key()), &range))
    });
    std::iter::once(seen).chain(makes).collect()
}

fn verdict(speaker: &Speaker, loss: Option<&LossReading>, key: &str) -> String {
    let Some(loss) = loss else {
        return speaker.say("loss-verdict-none");
    };
    let Some(p) = loss.tail_probability else {
        return speaker.say("loss-verdict-unknown");
    };
    let moved = loss.expected[Explanation::Move.index()].is_some();
    let args = [
        (
            "range",
            speaker
                .measure
                .counts(loss.ordinary.0, loss.ordinary.1)
                .into(),
        ),
        ("p", speaker.measure.percent(p).into()),
    ];
    speaker.text(
        &format!("loss-verdict-{key}{}", if moved { "-moved" } else { "" }),
        &args,
    )
}

fn ranges(speaker: &Speaker, loss: &LossReading) -> Strips {
    let ranges: Vec<_> = Explanation::ALL
        .into_iter()
        .filter_map(|e| {
            let (low, high) = loss.expected[e.index()]?;
            Some((
                e.key(),
                speaker.say(&format!("explanation-{}", e.key())),
                low,
                high,
            ))
        })
        .collect();
    strips(speaker, &ranges, loss.lost)
}

/// When to call, in words.
pub fn tripwire(speaker: &Speaker, reading: &Reading) -> String {
    let wire = reading.tripwire(reading.as_of.plus(TRIPWIRE_DAYS));
    let since = reading.last_inspection.unwrap_or(reading.as_of);
    let args = [
        ("n", i64::from(wire.count).into()),
        ("by", speaker.measure.date(wire.by).into()),
        ("since", speaker.measure.date(since).into()),
    ];
    speaker.text("tripwire", &args)
}

/// Losses after the last look: what is expected, and the limit of what is ordinary.
fn ahead(speaker: &Speaker, reading: &Reading) -> Course {
    let from = reading.last_inspection.unwrap_or(reading.as_of);
    let days: Vec<Day> = (0..=AHEAD_DAYS / 14)
        .map(|k| reading.as_of.plus(14 * k))
        .collect();
    let lost = reading
        .forecasts(Cut::NONE, &days)
        .into_iter()
        .map(|f| f.lost);
    // on the day of the look nothing has been lost since
    let start = (from < reading.as_of).then_some((from, Quantiles::default()));
    let expected: Vec<(Day, Quantiles)> = start
        .into_iter()
        .chain(days.iter().copied().zip(lost))
        .collect();
    let limit: Vec<(Day, f64)> = days
        .iter()
        .map(|d| (*d, f64::from(reading.tripwire(*d).count)))
        .collect();
    let traces = [
        Trace::Fan("lost", &expected),
        Trace::Stairs("tripwire", &limit),
    ];
    course(
        speaker,
        &traces,
        from,
        reading.as_of.plus(AHEAD_DAYS),
        reading.as_of,
    )
}
