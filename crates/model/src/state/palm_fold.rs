//! One palm's record out of the threads that speak of it.

use super::blade_fold::named;
use super::fact::{HoldWords, Line, Order, What};
use super::threads::Threads;
use super::{Hold, LinkRecord, Noticed, PalmCut, PalmRecord, Tended};
use crate::day::Day;
use crate::entry::EntryId;
use crate::finding::{Arg, Finding, Severity};
use crate::palm::{Inspection, Palm, PalmId};
use crate::tending::Tending;
use std::collections::BTreeMap;

/// The record of a palm, if it is registered, the moment of its registration, and what is wrong with its entries.
pub(super) fn fold_palm(
    threads: &Threads,
    palm: PalmId,
) -> (Option<(PalmRecord, Order)>, Vec<Noticed>) {
    let lines = threads.lines(threads.about(palm));
    let registration = lines.iter().find_map(|line| match &line.fact.what {
        What::Registered(palm) => Some((palm, line.order())),
        _ => None,
    });
    let Some((described, order)) = registration else {
        return (
            None,
            lines.iter().filter_map(|line| orphan(line, palm)).collect(),
        );
    };
    let mut noticed = Vec::new();
    let mut record = blank(palm, (**described).clone(), order);
    describe(&mut record, &lines);
    look(&mut record, &lines, &mut noticed);
    record.holds = holds(threads, &lines);
    cuts(threads, &mut record, &lines, &mut noticed);
    tended(&mut record, &lines);
    record.links = links(&lines);
    record.entries = history(threads, palm);
    (Some((record, order)), noticed)
}

fn blank(id: PalmId, palm: Palm, order: Order) -> PalmRecord {
    PalmRecord {
        id,
        palm,
        inspections: Vec::new(),
        inspection_entries: Vec::new(),
        holds: Vec::new(),
        cuts: Vec::new(),
        tended: Vec::new(),
        links: Vec::new(),
        notes: Vec::new(),
        removed: None,
        registered: order.0,
        entries: Vec::new(),
    }
}

/// Something said of a palm that nobody registered (or whose registration was taken back).
fn orphan(line: &Line, palm: PalmId) -> Option<Noticed> {
    if matches!(line.fact.what, What::Withdrawn | What::NotUnderstood { .. }) {
        return None;
    }
    let finding =
        Finding::new("palm-unknown", Severity::Act).with("palm", Arg::Text(palm.0.to_string()));
    Some(Noticed {
        entry: line.id,
        palm: Some(palm),
        finding,
    })
}

/// The registration is the ground, whenever it happened; changes follow in their order.
fn describe(record: &mut PalmRecord, lines: &[Line]) {
    for line in lines {
        match &line.fact.what {
            What::Changed(_, to) => record.palm = (**to).clone(),
            What::Removed(_, why) => record.removed = Some((**why).to_owned()),
            What::Noted(_, text) => record.notes.push((line.fact.at, (**text).to_owned())),
            _ => {}
        }
    }
}

fn look(record: &mut PalmRecord, lines: &[Line], noticed: &mut Vec<Noticed>) {
    let mut looks: BTreeMap<(u16, Day), (&Line, &Inspection)> = BTreeMap::new();
    let mut written: Vec<(&Line, &Inspection)> = lines.iter().filter_map(inspection).collect();
    written.sort_unstable_by_key(|(line, _)| (line.fact.written_at, line.id));
    let say = |line: &Line, finding| Noticed {
        entry: line.id,
        palm: Some(record.id),
        finding,
    };
    let on = |look: &Inspection, code, severity| {
        let tag = Arg::Text(record.palm.tag.clone());
        let stem = Arg::Count(i64::from(look.stem));
        Finding::new(code, severity)
            .with("tag", tag)
            .with("stem", stem)
            .with("date", Arg::Date(look.date))
    };
    for (line, look) in written {
        if look.stem == 0 || look.stem > record.palm.stems {
            noticed.push(say(line, on(look, "stem-out-of-range", Severity::Caution)));
        }
        if let Some((earlier, _)) = looks.insert((look.stem, look.date), (line, look)) {
            noticed.push(say(earlier, on(look, "inspection-twice", Severity::Info)));
        }
    }
    (record.inspection_entries, record.inspections) = looks
        .into_values()
        .map(|(line, look)| (line.id, look.clone()))
        .unzip();
    // Records stay for long, and there may be a hundred thousand.
    record.inspections.shrink_to_fit();
    record.inspection_entries.shrink_to_fit();
}

fn inspection<'a>(line: &'a Line<'a>) -> Option<(&'a Line<'a>, &'a Inspection)> {
    match &line.fact.what {
        What::Inspected(_, look) => look.as_deref().map(|look| (line, look)),
        _ => None,
    }
}

fn holds(threads: &Threads, lines: &[Line]) -> Vec<Hold> {
    let hold = |line: &Line| {
        let What::HoldSet(_, words) = &line.fact.what else {
            return None;
        };
        let HoldWords {
            reason,
            until,
            note,
        } = &**words;
        (!threads.is_lifted(line.root)).then(|| Hold {
            entry: line.root,
            reason: reason.clone(),
            since: line.fact.at,
            until: *until,
            note: note.clone(),
        })
    };
    lines.iter().filter_map(hold).collect()
}

/// Cuts in the order of time, a row written twice counted once (the blade's record says so).
fn cuts(threads: &Threads, record: &mut PalmRecord, lines: &[Line], noticed: &mut Vec<Noticed>) {
    for line in lines {
        let What::Cut(cut) = &line.fact.what else {
            continue;
        };
        let at = line.fact.at;
        let cut = named(threads, cut);
        let is_there = |other: &PalmCut| other.at == at && other.cut == cut;
        if record.cuts.iter().rev().any(is_there) {
            continue;
        }
        if cut.stem == 0 || cut.stem > record.palm.stems {
            let finding = Finding::new("stem-out-of-range", Severity::Caution)
                .with("tag", Arg::Text(record.palm.tag.clone()))
                .with("stem", Arg::Count(i64::from(cut.stem)))
                .with("date", Arg::Date(at.day()));
            noticed.push(Noticed {
                entry: line.id,
                palm: Some(record.id),
                finding,
            });
        }
        let entry = line.id;
        record.cuts.push(PalmCut { at, entry, cut });
    }
    record.cuts.shrink_to_fit();
}

/// Moves, waterings and feedings in the order of time. The latest move is the palm's day of moving, unless the
/// description knows of a later one.
fn tended(record: &mut PalmRecord, lines: &[Line]) {
    for line in lines {
        let What::Tended(_, what) = &line.fact.what else {
            continue;
        };
        let (at, entry, what) = (line.fact.at, line.id, (**what).clone());
        let is_there = |other: &Tended| other.at == at && other.what == what;
        if record.tended.iter().rev().any(is_there) {
            continue;
        }
        if let Tending::Moved(moved) = &what {
            let palm = &mut record.palm;
            palm.moved_on = palm.moved_on.max(Some(moved.dug_on));
            palm.planted_on = palm.planted_on.max(moved.planted_on);
        }
        record.tended.push(Tended { at, entry, what });
    }
}

fn links(lines: &[Line]) -> Vec<LinkRecord> {
    let link = |line: &Line| match &line.fact.what {
        What::LinkGiven(_, link) => Some(LinkRecord {
            entry: line.id,
            given: line.fact.at,
            link: (**link).clone(),
        }),
        _ => None,
    };
    lines.iter().filter_map(link).collect()
}

/// Every entry that speaks of a palm: corrected and withdrawn ones, and the liftings of its holds.
fn history(threads: &Threads, palm: PalmId) -> Vec<EntryId> {
    let mut all: Vec<Order> = Vec::new();
    for root in threads.about(palm) {
        all.extend(threads.members(root));
        for lift in threads.lifts(root) {
            all.extend(threads.members(lift));
        }
    }
    all.sort_unstable();
    all.dedup();
    all.into_iter().map(|(_, _, id)| id).collect()
}
