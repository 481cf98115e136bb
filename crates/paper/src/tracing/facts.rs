//! The head of the report: what must be known first, and what was asked.

use super::Fact;
use super::write::Writer;
use desk::clock;
use desk::tracing::{CaseTold, Stand, Travel};
use model::Moment;
use model::knowledge::DayRange;

/// What must be known before anything else.
pub(super) fn notices(writer: &Writer) -> Vec<String> {
    let named = [("disorder", name(writer).into())];
    let leaf = writer.leaf;
    let travel = match writer.answer.travel {
        Travel::OnBlades => None,
        Travel::NotOnBlades => Some(leaf.text("trace-sheet-not-on-blades", &named)),
        Travel::Unknown => Some(leaf.text("trace-sheet-blades-unknown", &named)),
        Travel::NotNamed => Some(leaf.say("trace-sheet-no-disorder")),
    };
    let mut notices: Vec<String> = travel.into_iter().collect();
    if writer.answer.log.cuts == 0 && writer.answer.travel != Travel::NotOnBlades {
        notices.push(leaf.say("trace-sheet-no-log"));
    }
    notices
}

/// The disorder as people call it.
pub(super) fn name(writer: &Writer) -> String {
    match (writer.disorder, &writer.answer.disorder) {
        (Some(row), _) => writer.pick(&row.name).to_owned(),
        (None, Some(key)) => key.clone(),
        (None, None) => writer.leaf.say("trace-sheet-not-named"),
    }
}

/// Species and grounds, those that are known.
pub(super) fn what(stand: &Stand) -> String {
    let known = [stand.species.as_str(), &stand.site];
    let known: Vec<&str> = known.into_iter().filter(|s| !s.is_empty()).collect();
    known.join(" · ")
}

/// What was asked, of which log.
pub(super) fn facts(writer: &Writer, latency: String) -> Vec<Fact> {
    let leaf = writer.leaf;
    let fact = |code: &str, value: String| Fact {
        label: leaf.say(code),
        value,
    };
    let organism = writer.disorder.map_or("", |row| row.organism.as_str());
    let disorder = match organism {
        "" => name(writer),
        organism => format!("{} ({organism})", name(writer)),
    };
    let mut facts = Vec::new();
    for case in &writer.answer.cases {
        facts.push(fact("trace-sheet-case", the_case(writer, case)));
        facts.push(fact("trace-sheet-times", times(writer, case)));
    }
    facts.push(fact("trace-sheet-disorder", disorder));
    facts.push(fact("trace-sheet-latency", latency));
    facts.push(fact("trace-sheet-as-of", says(writer, writer.answer.as_of)));
    facts.push(fact("trace-sheet-log", log(writer)));
    facts
}

fn the_case(writer: &Writer, case: &CaseTold) -> String {
    let cuts = writer
        .leaf
        .text("trace-sheet-cuts", &[("n", (case.cuts as i64).into())]);
    let parts = [case.palm.tag.clone(), what(&case.palm), cuts];
    let parts: Vec<String> = parts.into_iter().filter(|s| !s.is_empty()).collect();
    parts.join(" · ")
}

/// Since when it could pass it on, and when it may have caught it.
fn times(writer: &Writer, case: &CaseTold) -> String {
    let date = |moment: Moment| writer.leaf.measure.date(clock::local_day(moment));
    let open =
        |code: &str, moment: Option<Moment>| moment.map_or_else(|| writer.leaf.say(code), date);
    let args = [
        ("seen", writer.leaf.measure.date(case.seen_sick).into()),
        ("surely", date(case.surely_from).into()),
        (
            "possibly",
            open("trace-sheet-log-begin", case.possibly_from).into(),
        ),
        (
            "low",
            open("trace-sheet-any-time", case.exposed_from).into(),
        ),
        ("high", date(case.exposed_until).into()),
    ];
    writer.leaf.text("trace-sheet-times-are", &args)
}

/// A moment in words, on the clock of this machine.
pub(super) fn says(writer: &Writer, moment: Moment) -> String {
    clock::says(&writer.leaf.measure, moment)
}

/// The latency reckoned with, and where it comes from.
pub(super) fn latency(writer: &mut Writer) -> String {
    let told = &writer.answer.latency;
    let range = range(writer, told.range);
    let numbers = writer.numbers(&told.sources);
    let numbers: Vec<String> = numbers.iter().map(usize::to_string).collect();
    let mut parts = vec![range];
    if told.by_keeper {
        parts.push(format!("({})", writer.leaf.say("basis-keeper")));
    }
    if !numbers.is_empty() {
        parts.push(format!("[{}]", numbers.join(", ")));
    }
    parts.join(" ")
}

fn range(writer: &Writer, range: DayRange) -> String {
    let days = |days: u32| writer.leaf.measure.duration(f64::from(days));
    let leaf = writer.leaf;
    match (range.min, range.max) {
        (None, None) => leaf.say("common-unknown"),
        (Some(min), Some(max)) if min == max => days(min),
        (Some(min), Some(max)) => {
            let ends = [("low", days(min).into()), ("high", days(max).into())];
            leaf.text("measure-range", &ends)
        }
        (Some(min), None) => leaf.text("trace-sheet-at-least", &[("time", days(min).into())]),
        (None, Some(max)) => leaf.text("trace-sheet-at-most", &[("time", days(max).into())]),
    }
}

fn log(writer: &Writer) -> String {
    let (leaf, log) = (writer.leaf, &writer.answer.log);
    let mut parts = vec![
        leaf.text("trace-sheet-cuts", &[("n", (log.cuts as i64).into())]),
        leaf.text(
            "trace-sheet-cleanings",
            &[("n", (log.cleanings as i64).into())],
        ),
    ];
    if let (Some(first), Some(last)) = (log.first, log.last) {
        let ends = [
            ("from", says(writer, first).into()),
            ("to", says(writer, last).into()),
        ];
        parts.push(leaf.text("trace-sheet-span", &ends));
    }
    parts.join("; ")
}
