//! `readings.csv` and `forecast.csv`.

use super::answer::{PalmAnswer, StemAnswer};
use crown::{Explanation, Forecast, Quantiles};

/// Columns of `readings.csv`.
pub const READINGS_COLUMNS: [&str; 15] = [
    "tag",
    "stem",
    "as_of",
    "explanation",
    "p_ageing",
    "p_move",
    "p_hunger",
    "p_decline",
    "lost_since_last",
    "ordinary_q05",
    "ordinary_q95",
    "tail_probability",
    "tripwire_count",
    "tripwire_date",
    "effective_draws",
];

/// Columns of `forecast.csv`.
pub const FORECAST_COLUMNS: [&str; 10] = [
    "tag",
    "stem",
    "days_ahead",
    "date",
    "quantity",
    "q05",
    "q25",
    "q50",
    "q75",
    "q95",
];

/// One row a stem; a palm with several stems gets one more, its stem empty, which says what holds for the whole palm.
pub fn readings_rows(answer: &PalmAnswer) -> Vec<[String; 15]> {
    let mut rows: Vec<_> = answer.stems.iter().map(|s| stem_row(answer, s)).collect();
    if answer.stems.len() > 1 {
        rows.push(palm_row(answer));
    }
    rows
}

fn stem_row(answer: &PalmAnswer, s: &StemAnswer) -> [String; 15] {
    let [ageing, moved, hunger, decline] = s.probabilities.map(share);
    let loss = s.loss.as_ref();
    let text = |x: Option<f64>, places: usize| x.map_or_else(String::new, |x| fixed(x, places));
    [
        answer.tag.clone(),
        s.stem.to_string(),
        answer.as_of.to_string(),
        s.explanation.key().to_owned(),
        ageing,
        moved,
        hunger,
        decline,
        text(loss.and_then(|l| l.lost), 0),
        text(loss.map(|l| l.ordinary.0), 2),
        text(loss.map(|l| l.ordinary.1), 2),
        text(loss.and_then(|l| l.tail_probability), 6),
        s.tripwire.count.to_string(),
        s.tripwire.by.to_string(),
        fixed(s.effective_draws, 0),
    ]
}

/// Losses and tripwires belong to stems; a palm's own row leaves them empty.
fn palm_row(answer: &PalmAnswer) -> [String; 15] {
    let [ageing, moved, hunger, decline] = answer.probabilities.map(share);
    let least = answer
        .stems
        .iter()
        .map(|s| s.effective_draws)
        .fold(f64::INFINITY, f64::min);
    let none = String::new;
    [
        answer.tag.clone(),
        none(),
        answer.as_of.to_string(),
        answer.explanation.key().to_owned(),
        ageing,
        moved,
        hunger,
        decline,
        none(),
        none(),
        none(),
        none(),
        none(),
        none(),
        fixed(least, 0),
    ]
}

/// Five rows a stem and day.
pub fn forecast_rows(answer: &PalmAnswer) -> Vec<[String; 10]> {
    let mut rows = Vec::new();
    for stem in &answer.stems {
        for (day, forecast) in &stem.forecasts {
            for (quantity, q) in quantities(forecast) {
                let [q05, q25, q50, q75, q95] =
                    [q.q05, q.q25, q.q50, q.q75, q.q95].map(|x| fixed(x, 2));
                rows.push([
                    answer.tag.clone(),
                    stem.stem.to_string(),
                    day.since(answer.as_of).to_string(),
                    day.to_string(),
                    quantity.to_owned(),
                    q05,
                    q25,
                    q50,
                    q75,
                    q95,
                ]);
            }
        }
    }
    rows
}

/// The quantities of a forecast with their names in files.
pub fn quantities(f: &Forecast) -> [(&'static str, Quantiles); 5] {
    [
        ("live", f.live),
        ("green", f.green),
        ("yellowing", f.yellowing),
        ("brown_on", f.brown_on),
        ("lost", f.lost),
    ]
}

fn share(p: f64) -> String {
    fixed(p, 4)
}

/// A number with fixed places; never "-0.00".
fn fixed(x: f64, places: usize) -> String {
    let text = format!("{x:.places$}");
    match text.strip_prefix('-') {
        Some(rest) if rest.bytes().all(|b| b == b'0' || b == b'.') => rest.to_owned(),
        _ => text,
    }
}

/// The order of the probability columns is the order of [`Explanation::ALL`].
const _: () = assert!(Explanation::ALL.len() == 4);
