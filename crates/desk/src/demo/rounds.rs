//! The demo's rounds: one that was worked off, told from the cuts of its day, and one planned for today.

use super::book::Book;
use super::roster::SITES;
use super::saws::tagged;
use super::{CREW, KEEPER};
use model::{Body, Day, Moment, PalmId, RoundNote, RoundPlan, RoundStep, RoundStop};
use std::collections::BTreeMap;

/// Who goes out: names of the demo's crews.
const CUTTERS: &str = "Fenlock";
const WATERERS: &str = "Sorrel";
/// A round worth showing has so many palms.
const FEWEST: usize = 4;
/// The look-and-water round of today: tag, seconds after midnight, minutes, tasks.
const TODAY: [(&str, u32, f64, &[&str]); 4] = [
    ("Q-02", 21_000, 16.0, &["look", "water"]),
    ("Q-09", 22_200, 16.0, &["look", "water"]),
    ("Q-13", 23_400, 9.5, &["water"]),
    ("Q-16", 24_300, 9.5, &["water"]),
];

/// Writes both; the cuts must be in the book already.
pub(super) fn write(today: Day, book: &mut Book) {
    let days = cuts(book);
    if let Some((day, done)) = days.into_iter().rfind(|(_, done)| done.len() >= FEWEST) {
        worked_off(book, day, &done);
    }
    planned(today, book);
}

/// A palm that was cut, from when to when.
struct Done {
    palm: PalmId,
    from: Moment,
    to: Moment,
}

/// Palms that the demo's crew took dead fronds off, in order, by day.
fn cuts(book: &Book) -> BTreeMap<Day, Vec<Done>> {
    let mut days: BTreeMap<Day, Vec<Done>> = BTreeMap::new();
    for note in book.notes.iter().filter(|note| note.by == CREW) {
        let Body::CutMade(cut) = &note.body else {
            continue;
        };
        let Some(from) = cut.started.filter(|_| cut.off.brown.is_some_and(|n| n > 0)) else {
            continue;
        };
        let (palm, to) = (cut.palm, note.at);
        let done = days.entry(note.at.day()).or_default();
        match done.iter_mut().find(|own| own.palm == palm) {
            Some(own) => (own.from, own.to) = (own.from.min(from), own.to.max(to)),
            None => done.push(Done { palm, from, to }),
        }
    }
    days.values_mut()
        .for_each(|done| done.sort_by_key(|own| own.from));
    days
}

fn worked_off(book: &mut Book, day: Day, done: &[Done]) {
    let minutes = |own: &Done| (own.to.0 - own.from.0) as f64 / 60_000.0;
    let stop = |own: &Done| RoundStop {
        palm: own.palm,
        start: None,
        minutes: Some(9.0),
        tasks: vec!["cut".to_owned()],
    };
    let plan = RoundPlan {
        crew: CUTTERS.to_owned(),
        stops: done.iter().map(stop).collect(),
        notes: "Dead fronds only. Saws soak after each date palm.".to_owned(),
        ..RoundPlan::on(day)
    };
    let round = book.write(day.plus(-1), 17, KEEPER, Body::RoundPlanned(plan), None);
    let (Some(first), Some(last)) = (done.first(), done.last()) else {
        return;
    };
    let mut say = |at: Moment, step| {
        book.at(at, CREW, Body::RoundNoted(RoundNote { round, step }));
    };
    say(Moment(first.from.0 - 600_000), RoundStep::Started);
    for own in done {
        let step = RoundStep::Done {
            palm: own.palm,
            minutes: Some(minutes(own) + 4.0),
            note: String::new(),
        };
        say(Moment(own.to.0 + 60_000), step);
    }
    say(Moment(last.to.0 + 900_000), RoundStep::Finished);
}

fn planned(today: Day, book: &mut Book) {
    let stops = TODAY.iter().map(|(tag, start, minutes, tasks)| RoundStop {
        palm: tagged(tag),
        start: Some(*start),
        minutes: Some(*minutes),
        tasks: tasks.iter().map(|task| (*task).to_owned()).collect(),
    });
    let plan = RoundPlan {
        crew: WATERERS.to_owned(),
        leave: Some(20_700),
        back: Some(25_200),
        metres: Some(0.0),
        stops: stops.collect(),
        notes: format!("{}: the long hose hangs behind the shed.", SITES[0].0),
        ..RoundPlan::on(today)
    };
    book.write(today.plus(-1), 17, KEEPER, Body::RoundPlanned(plan), None);
}
