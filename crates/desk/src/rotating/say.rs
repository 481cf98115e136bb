//! The answer in words.

use super::Made;
use crate::measure::Measure;

/// The name of a set: A, B, … Z, AA, AB, …
pub fn letter(set: usize) -> String {
    let mut name = String::new();
    let mut rest = set + 1;
    while rest > 0 {
        rest -= 1;
        name.insert(0, char::from(b'A' + (rest % 26) as u8));
        rest /= 26;
    }
    name
}

/// A stretch of minutes: "24 min", "2 h 10 min", "2 h". From an hour on to the minute.
pub fn span(measure: &Measure, minutes: f64) -> String {
    let whole = minutes.round() as i64;
    let (code, n) = match (whole / 60, whole % 60) {
        (0, _) => ("rotation-min", measure.number(minutes, 1)),
        (hours, 0) => ("rotation-h", hours.to_string()),
        (hours, _) => ("rotation-h-min", hours.to_string()),
    };
    let args = [("n", n.into()), ("min", (whole % 60).to_string().into())];
    measure.words.text(code, &args)
}

/// "3 sets: no waiting, done in 2 h 10 min; with 2 sets you wait 24 min."
pub fn sentence(measure: &Measure, made: &Made) -> String {
    let plan = &made.plan;
    let (asked, fewest) = (made.kit.sets, made.fewest);
    let waits = |sets: usize| made.choice(sets).map_or(0.0, |c| c.waiting_min);
    let best = made.choice(fewest).map_or(0.0, |c| c.makespan_min);
    let code = if plan.waiting_min > 0.0 {
        "rotation-says-waits"
    } else if asked > fewest {
        "rotation-says-more"
    } else if fewest > 1 {
        "rotation-says-fewest"
    } else {
        "rotation-says-one"
    };
    // what the other number of sets beside the asked one is: one fewer, or the fewest
    let other = if plan.waiting_min > 0.0 || asked > fewest {
        fewest
    } else {
        fewest.saturating_sub(1)
    };
    let wait = if plan.waiting_min > 0.0 {
        plan.waiting_min
    } else {
        waits(other)
    };
    let args = [
        ("sets", (asked as i64).into()),
        ("other", (other as i64).into()),
        ("wait", span(measure, wait).into()),
        ("end", span(measure, plan.makespan_min).into()),
        ("best", span(measure, best).into()),
    ];
    measure.words.text(code, &args)
}
