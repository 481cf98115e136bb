//! One blade's record, and one bath's, out of the threads that speak of it.

use super::Noticed;
use super::blade_record::{BathRecord, BladeRecord, BladeTouch, Lent, Touch};
use super::fact::{Line, Order, What};
use super::threads::Threads;
use crate::blade::{Blade, BladeId, Cleaning, CutMade};
use crate::day::Moment;
use crate::entry::EntryId;
use crate::finding::{Arg, Finding, Severity};
use std::sync::Arc;

/// Written down this much before it happened: a clock was wrong, ms. Assumed.
const CLOCKS_DIFFER: i64 = 3_600_000;
/// No single cut takes longer, ms. Assumed.
const LONGEST_CUT: i64 = 12 * 3_600_000;

/// The record of a blade, if it is registered, the moment of its registration, and what is wrong with its entries.
pub(super) fn fold_blade(
    threads: &Threads,
    blade: BladeId,
) -> (Option<(BladeRecord, Order)>, Vec<Noticed>) {
    let lines = threads.lines(threads.with_blade(blade));
    let registration = lines.iter().find_map(|line| match &line.fact.what {
        What::BladeRegistered(blade) => Some((blade, line.order())),
        _ => None,
    });
    let Some((described, order)) = registration else {
        let orphans = lines.iter().filter_map(|line| orphan(line, blade));
        return (None, orphans.collect());
    };
    let mut record = blank(blade, (**described).clone(), order);
    describe(&mut record, &lines);
    let mut noticed = Vec::new();
    touches(threads, &mut record, &lines, &mut noticed);
    overlaps(&record, &mut noticed);
    record.entries = history(threads, blade);
    (Some((record, order)), noticed)
}

/// The record of a bath, if one was mixed.
pub(super) fn fold_bath(threads: &Threads, id: EntryId) -> Option<BathRecord> {
    let lines = threads.lines(threads.in_bath(id));
    let mixing = lines.iter().find_map(|line| match &line.fact.what {
        What::BathMixed(bath) => Some((line, bath)),
        _ => None,
    });
    let (line, bath) = mixing?;
    let served = lines.iter().filter_map(|line| match &line.fact.what {
        What::Cleaned(cleaning) => Some((line.fact.at, threads.blade_named(cleaning.blade))),
        _ => None,
    });
    let mut served: Vec<(Moment, BladeId)> = served.collect();
    served.sort_unstable();
    // A row written twice: one blade is not cleaned twice at one moment.
    served.dedup();
    Some(BathRecord {
        id,
        entry: line.id,
        mixed: line.fact.at,
        bath: (**bath).clone(),
        served,
    })
}

/// A cut with palm and blade by the names they have in the state.
pub(super) fn named(threads: &Threads, cut: &Arc<CutMade>) -> Arc<CutMade> {
    let (palm, blade) = (threads.palm_named(cut.palm), threads.blade_named(cut.blade));
    if (palm, blade) == (cut.palm, cut.blade) {
        return cut.clone();
    }
    Arc::new(CutMade {
        palm,
        blade,
        ..(**cut).clone()
    })
}

fn named_cleaning(threads: &Threads, cleaning: &Arc<Cleaning>) -> Arc<Cleaning> {
    let blade = threads.blade_named(cleaning.blade);
    let bath = cleaning.bath.map(|bath| threads.root(bath));
    if (blade, bath) == (cleaning.blade, cleaning.bath) {
        return cleaning.clone();
    }
    Arc::new(Cleaning {
        blade,
        bath,
        ..(**cleaning).clone()
    })
}

fn blank(id: BladeId, blade: Blade, order: Order) -> BladeRecord {
    BladeRecord {
        id,
        blade,
        touches: Vec::new(),
        lent: None,
        retired: None,
        registered: order.0,
        entries: Vec::new(),
    }
}

/// Something said of a blade that nobody registered (or whose registration was taken back).
fn orphan(line: &Line, blade: BladeId) -> Option<Noticed> {
    if matches!(line.fact.what, What::Withdrawn | What::NotUnderstood { .. }) {
        return None;
    }
    let finding =
        Finding::new("blade-unknown", Severity::Act).with("blade", Arg::Text(blade.0.to_string()));
    Some(Noticed {
        entry: line.id,
        palm: None,
        finding,
    })
}

/// The registration is the ground, whenever it happened; changes follow in their order.
fn describe(record: &mut BladeRecord, lines: &[Line]) {
    for line in lines {
        match &line.fact.what {
            What::BladeChanged(_, to) => record.blade = (**to).clone(),
            What::BladeRetired(_, why) => record.retired = Some((**why).to_owned()),
            _ => {}
        }
    }
}

fn touches(
    threads: &Threads,
    record: &mut BladeRecord,
    lines: &[Line],
    noticed: &mut Vec<Noticed>,
) {
    for line in lines {
        let at = line.fact.at;
        let what = match &line.fact.what {
            What::Cut(cut) => Touch::Cut(named(threads, cut)),
            What::Cleaned(cleaning) => Touch::Cleaned(named_cleaning(threads, cleaning)),
            What::BladeLent(_, to) => Touch::Lent((**to).to_owned()),
            What::BladeReturned(_) => Touch::Returned,
            _ => continue,
        };
        let mut say = |code, severity| noticed.push(on(record, line.id, at, code, severity));
        let twice = (record.touches.iter().rev())
            .take_while(|touch| touch.at == at)
            .any(|touch| touch.what == what);
        if twice {
            say("touch-twice", Severity::Info);
            continue;
        }
        if at.0.saturating_sub(line.fact.written_at.0) > CLOCKS_DIFFER {
            say("written-before-it-happened", Severity::Caution);
        }
        for (code, severity) in doubts(threads, &what, at) {
            say(code, severity);
        }
        match &what {
            Touch::Lent(to) => {
                let (to, since) = (to.clone(), at);
                record.lent = Some(Lent { to, since });
            }
            Touch::Returned => record.lent = None,
            Touch::Cut(_) | Touch::Cleaned(_) => {}
        }
        let entry = line.id;
        record.touches.push(BladeTouch { at, entry, what });
    }
    record.touches.shrink_to_fit();
}

/// What is doubtful about a touch by itself.
fn doubts(threads: &Threads, what: &Touch, at: Moment) -> Vec<(&'static str, Severity)> {
    let mut doubts = Vec::new();
    match what {
        Touch::Cut(cut) => {
            let took = cut.started.map(|start| at.0.saturating_sub(start.0));
            if took.is_some_and(|took| took < 0) {
                doubts.push(("cut-ends-before-it-starts", Severity::Caution));
            }
            if took.is_some_and(|took| took > LONGEST_CUT) {
                doubts.push(("cut-too-long", Severity::Caution));
            }
        }
        Touch::Cleaned(cleaning) => {
            if cleaning.agent.trim().is_empty() && cleaning.bath.is_none() {
                doubts.push(("cleaning-without-agent", Severity::Caution));
            }
            if cleaning.bath.is_some_and(|bath| !is_bath(threads, bath)) {
                doubts.push(("bath-unknown", Severity::Info));
            }
        }
        Touch::Lent(_) | Touch::Returned => {}
    }
    doubts
}

fn is_bath(threads: &Threads, bath: EntryId) -> bool {
    let standing = threads.standing(bath);
    standing.is_some_and(|(_, fact)| matches!(fact.what, What::BathMixed(_)))
}

/// Cuts of one blade that overlap: it cannot be at two palms at once. A cut whose start is not noted is a moment.
fn overlaps(record: &BladeRecord, noticed: &mut Vec<Noticed>) {
    let mut cuts: Vec<(Moment, Moment, &BladeTouch, &CutMade)> = Vec::new();
    for touch in &record.touches {
        if let Touch::Cut(cut) = &touch.what {
            let start = cut.started.unwrap_or(Moment(touch.at.0.saturating_sub(1)));
            cuts.push((start.min(touch.at), touch.at, touch, cut));
        }
    }
    cuts.sort_by_key(|(start, end, touch, _)| (*start, *end, touch.entry));
    let mut latest: Option<(Moment, &CutMade)> = None;
    for (start, end, touch, cut) in cuts {
        if latest.is_some_and(|(until, other)| start < until && other.palm != cut.palm) {
            let overlap = ("cuts-overlap", Severity::Caution);
            noticed.push(on(record, touch.entry, touch.at, overlap.0, overlap.1));
        }
        if latest.is_none_or(|(until, _)| until < end) {
            latest = Some((end, cut));
        }
    }
}

fn on(
    record: &BladeRecord,
    entry: EntryId,
    at: Moment,
    code: &'static str,
    severity: Severity,
) -> Noticed {
    let finding = Finding::new(code, severity)
        .with("blade", Arg::Text(record.blade.tag.clone()))
        .with("date", Arg::Date(at.day()));
    Noticed {
        entry,
        palm: None,
        finding,
    }
}

/// Every entry that speaks of a blade: corrected and withdrawn ones, too.
fn history(threads: &Threads, blade: BladeId) -> Vec<EntryId> {
    let mut all: Vec<Order> = threads
        .with_blade(blade)
        .flat_map(|root| threads.members(root))
        .collect();
    all.sort_unstable();
    all.dedup();
    all.into_iter().map(|(_, _, id)| id).collect()
}
