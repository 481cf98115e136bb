//! From a checked form to the ledger. Every form carries the id of its entry in `id`: sent twice, saved once.

use super::thread::{Resent, resent, thread};
use super::{About, Register, Trouble, Typed};
use crate::measure::Units;
use crate::office::{Note, Office, Refused};
use model::{
    Body, Day, Entry, EntryId, Finding, Inspection, Knowledge, Moment, Palm, PalmId, PalmRecord,
    Severity, State,
};
use std::sync::Arc;
use uuid::Uuid;

/// Who is named as the writer until there are people in the ledger.
pub(crate) const BY: &str = "keeper";

/// Why a form was not saved. What was typed is still the caller's.
#[derive(Debug)]
pub enum Stop {
    /// Something to put right or to confirm.
    Troubles(Vec<Trouble>),
    /// The palm is not in the register, or not any more.
    NoPalm,
    /// The ledger could not read or write.
    Ledger(ledger::Error),
}

impl Stop {
    /// Something wrong with the form as a whole.
    pub fn whole(findings: impl IntoIterator<Item = Finding>) -> Stop {
        let trouble = |finding| Trouble { field: "", finding };
        Stop::Troubles(findings.into_iter().map(trouble).collect())
    }
}

impl From<Vec<Trouble>> for Stop {
    fn from(troubles: Vec<Trouble>) -> Stop {
        Stop::Troubles(troubles)
    }
}

impl From<ledger::Error> for Stop {
    fn from(error: ledger::Error) -> Stop {
        Stop::Ledger(error)
    }
}

impl From<Refused> for Stop {
    fn from(refused: Refused) -> Stop {
        match refused {
            Refused::Findings(findings) => Stop::whole(findings),
            Refused::Ledger(error) => Stop::Ledger(error),
        }
    }
}

/// An entry's id as a form carries it.
pub fn entry_id(text: &str) -> Option<EntryId> {
    Uuid::try_parse(text).ok().map(EntryId)
}

/// The look that a correction form speaks of, as it stands now.
pub fn look_of(
    office: &Office,
    palm: PalmId,
    entry: EntryId,
) -> Result<Option<Inspection>, ledger::Error> {
    Ok(standing_look(&office.history(palm)?, entry).cloned())
}

/// Saves an inspection form. With `corrects` (an entry's id) it takes that look's place.
pub fn save_inspection(office: &Office, palm: PalmId, typed: &Typed) -> Result<Inspection, Stop> {
    let record = standing(&office.state(), palm)?;
    let history = office.history(palm)?;
    let corrects = entry_id(typed.get("corrects"));
    let own = entry_id(typed.get("id")).filter(|id| !thread(&history, *id).is_empty());
    let correcting = own.or(corrects).and_then(|id| standing_look(&history, id));
    if corrects.is_some() && correcting.is_none() {
        return Err(whole("form-corrects-nothing"));
    }
    let about = About {
        record: &record,
        today: office.today(),
        correcting,
    };
    let look = super::inspection(typed, about)?;
    let replaces = corrects
        .and_then(|id| Some(thread(&history, id).last()?.id))
        .or_else(|| same_day(&record, &look));
    let at = moment_of(look.date, office);
    let body = Body::Inspected {
        palm,
        inspection: look.clone(),
    };
    once(
        office,
        &history,
        typed,
        Note {
            id: None,
            at,
            by: BY.to_owned(),
            body,
            replaces,
        },
    )?;
    Ok(look)
}

/// Takes a look back: it was never made, or made at another palm.
pub fn withdraw_inspection(office: &Office, palm: PalmId, typed: &Typed) -> Result<(), Stop> {
    let history = office.history(palm)?;
    let last = entry_id(typed.get("corrects")).and_then(|id| thread(&history, id).last().copied());
    let Some(last) = last else {
        return Err(whole("form-corrects-nothing"));
    };
    if matches!(last.body, Body::Withdrawn { .. }) {
        return Ok(());
    }
    let why = super::hold::why(typed)?;
    record(
        office,
        Body::Withdrawn { why },
        entry_id(typed.get("id")),
        Some(last.id),
    )
}

/// Registers the palm of a form, or changes the one given. Returns its tag.
pub fn save_palm(
    office: &Office,
    changing: Option<PalmId>,
    typed: &Typed,
    units: Units,
) -> Result<String, Stop> {
    let state = office.state();
    let id = entry_id(typed.get("id"));
    // a registration that was sent before is a palm by now
    let sent_before = id
        .map(|id| PalmId(id.0))
        .filter(|palm| state.palm(*palm).is_some());
    let changing = changing.or(sent_before);
    let before = changing.map(|palm| standing(&state, palm)).transpose()?;
    let nearest = |name: &str| nearest(name);
    let register = Register {
        state: &state,
        changing: before.as_deref(),
        today: office.today(),
        units,
        nearest: &nearest,
    };
    let palm = super::palm(typed, &register)?;
    let tag = palm.tag.clone();
    match before {
        Some(before) if before.palm == palm => {}
        Some(before) => change(office, &before, palm, id)?,
        None => record(office, Body::PalmRegistered(palm), id, None)?,
    }
    Ok(tag)
}

/// A form sent again with other values is one more change, under an id of its own.
fn change(office: &Office, before: &PalmRecord, to: Palm, id: Option<EntryId>) -> Result<(), Stop> {
    let palm = before.id;
    let taken = |id: &EntryId| before.entries.contains(id);
    record(
        office,
        Body::PalmChanged { palm, to },
        id.filter(|id| !taken(id)),
        None,
    )
}

/// Sets a hold.
pub fn save_hold(office: &Office, palm: PalmId, typed: &Typed) -> Result<(), Stop> {
    standing(&office.state(), palm)?;
    let body = super::hold(typed, palm, office.today())?;
    let note = Note {
        id: None,
        at: now(office),
        by: BY.to_owned(),
        body,
        replaces: None,
    };
    once(office, &office.history(palm)?, typed, note)
}

/// Lifts the hold named in `hold`; one that is lifted already stays lifted.
pub fn save_lift(office: &Office, palm: PalmId, typed: &Typed) -> Result<(), Stop> {
    let record_now = standing(&office.state(), palm)?;
    let hold = entry_id(typed.get("hold"))
        .and_then(|id| record_now.holds.iter().find(|hold| hold.entry == id));
    let Some(hold) = hold else { return Ok(()) };
    let body = super::lift(typed, hold.entry)?;
    record(office, body, entry_id(typed.get("id")), None)
}

/// Takes a palm off the register; one that is off already stays off.
pub fn save_removal(office: &Office, palm: PalmId, typed: &Typed) -> Result<(), Stop> {
    let Ok(_) = standing(&office.state(), palm) else {
        return Ok(());
    };
    let body = super::remove(typed, palm)?;
    record(office, body, entry_id(typed.get("id")), None)
}

/// The nearest known botanical names to a name nobody knows; `None` if it is known.
pub fn nearest(name: &str) -> Option<Vec<String>> {
    use model::knowledge::Named;
    match Knowledge::embedded().species_named(name) {
        Named::Exact(_) | Named::Synonym(_) => None,
        Named::Near(names) => Some(names.into_iter().map(str::to_owned).collect()),
        Named::Unknown => Some(Vec::new()),
    }
}

pub(super) fn standing(state: &State, palm: PalmId) -> Result<Arc<PalmRecord>, Stop> {
    state
        .palm(palm)
        .filter(|record| record.stands())
        .cloned()
        .ok_or(Stop::NoPalm)
}

fn standing_look(history: &[Entry], id: EntryId) -> Option<&Inspection> {
    match &thread(history, id).last()?.body {
        Body::Inspected { inspection, .. } => Some(inspection),
        _ => None,
    }
}

/// A second look on the same day, once confirmed, takes the first one's place.
fn same_day(record: &PalmRecord, look: &Inspection) -> Option<EntryId> {
    let mut pairs = record.inspections.iter().zip(&record.inspection_entries);
    pairs
        .find(|(other, _)| other.stem == look.stem && other.date == look.date)
        .map(|(_, entry)| *entry)
}

/// Today's look happens now; an earlier day's look happened at noon of that day.
pub(super) fn moment_of(day: Day, office: &Office) -> Moment {
    const NOON: i64 = 12 * 3_600_000;
    if day == office.today() {
        now(office)
    } else {
        Moment(Moment::at_midnight(day).0 + NOON)
    }
}

/// Now, but not after the keeper's day: in the evening west of Greenwich, and where the day is fixed from outside, the
/// clock is a day ahead, and a hold set now would else not hold today.
pub(super) fn now(office: &Office) -> Moment {
    let end = Moment(Moment::at_midnight(office.today().plus(1)).0 - 1);
    office.now().min(end)
}

/// Records a note under the form's id, unless the form was sent before.
pub(super) fn once(
    office: &Office,
    history: &[Entry],
    typed: &Typed,
    mut note: Note,
) -> Result<(), Stop> {
    if let Some(id) = entry_id(typed.get("id")) {
        match resent(history, id, &note.body) {
            Resent::Done => return Ok(()),
            Resent::First => note.id = Some(id),
            Resent::Corrects(last) => note.replaces = Some(last),
        }
    }
    office.record(vec![note])?;
    Ok(())
}

pub(super) fn record(
    office: &Office,
    body: Body,
    id: Option<EntryId>,
    replaces: Option<EntryId>,
) -> Result<(), Stop> {
    office.record(vec![Note {
        id,
        at: now(office),
        by: BY.to_owned(),
        body,
        replaces,
    }])?;
    Ok(())
}

pub(super) fn whole(code: &'static str) -> Stop {
    Stop::whole([Finding::new(code, Severity::Refuse)])
}

/// The palm a form starts from when a new one is registered: one stem, everything else unknown.
pub fn new_palm() -> Palm {
    Palm {
        stems: 1,
        ..Palm::default()
    }
}
