//! From a checked form about blades to the ledger. As elsewhere: sent twice, saved once.

use super::cleaning::{AtBath, Soaking, blade_entry};
use super::cutting::{AtPalm, is_clean};
use super::offers::offers;
use super::save::{BY, Stop, once, record, standing, whole};
use super::thread::{Resent, resent, thread};
use super::{Rack, Typed, entry_id};
use crate::clock;
use crate::office::{Note, Office};
use crate::views::blades::ready_for;
use model::state::BladeRecord;
use model::{BladeId, Body, Cleaning, CutMade, Entry, EntryId, Moment, PalmId, PalmRecord, State};
use std::sync::Arc;

/// Registers the blade of a form, or changes the one given. Returns its tag.
pub fn save_blade(
    office: &Office,
    changing: Option<BladeId>,
    typed: &Typed,
) -> Result<String, Stop> {
    let state = office.state();
    let id = entry_id(typed.get("id"));
    // a registration that was sent before is a blade by now
    let sent_before = id
        .map(|id| BladeId(id.0))
        .filter(|b| state.blade(*b).is_some());
    let changing = changing.or(sent_before);
    let before = changing.map(|blade| serving(&state, blade)).transpose()?;
    let other = |tag: &str| {
        state
            .blade_by_tag(tag)
            .is_some_and(|b| Some(b.id) != changing)
    };
    let rack = Rack {
        changing: before.as_ref().map(|b| &b.blade),
        taken: &other,
    };
    let blade = super::blade(typed, &rack)?;
    let tag = blade.tag.clone();
    match before {
        Some(before) if before.blade == blade => {}
        Some(before) => {
            let id = id.filter(|id| !before.entries.contains(id));
            let (blade, to) = (before.id, blade);
            record(office, Body::BladeChanged { blade, to }, id, None)?;
        }
        None => record(office, Body::BladeRegistered(blade), id, None)?,
    }
    Ok(tag)
}

/// Takes a blade out of service; one that is out already stays out.
pub fn save_retired(office: &Office, blade: BladeId, typed: &Typed) -> Result<(), Stop> {
    let Ok(_) = serving(&office.state(), blade) else {
        return Ok(());
    };
    let why = super::hold::why(typed)?;
    let body = Body::BladeRetired { blade, why };
    record(office, body, entry_id(typed.get("id")), None)
}

/// Lends a blade; one that is lent to the same hands already stays lent.
pub fn save_lent(office: &Office, blade: BladeId, typed: &Typed) -> Result<(), Stop> {
    let state = office.state();
    let standing = serving(&state, blade)?;
    let clean = is_clean(&ready_for(office, &standing, None, clock::now(office)));
    let to = super::blade::lent_to(typed, clean)?;
    if standing.lent.as_ref().is_some_and(|lent| lent.to == to) {
        return Ok(());
    }
    at_now(office, Body::BladeLent { blade, to }, typed)
}

/// Takes a lent blade back; one that is back already stays back.
pub fn save_returned(office: &Office, blade: BladeId, typed: &Typed) -> Result<(), Stop> {
    let state = office.state();
    if serving(&state, blade)?.lent.is_none() {
        return Ok(());
    }
    at_now(office, Body::BladeReturned { blade }, typed)
}

/// Logs a cut.
pub fn save_cut(
    office: &Office,
    blade: BladeId,
    palm: PalmId,
    typed: &Typed,
) -> Result<CutMade, Stop> {
    let state = office.state();
    let (tool, at_palm) = (serving(&state, blade)?, standing(&state, palm)?);
    let history = office.history(palm)?;
    let sent = entry_id(typed.get("id")).and_then(|id| standing_cut(&history, id));
    if tool.lent.is_some() && sent.is_none() {
        return Err(whole("form-cut-lent"));
    }
    let at = AtPalm {
        palm,
        stems: at_palm.palm.stems,
        blade,
        ready: &|at| ready_for(office, &tool, Some(palm), at),
        held: &|at| held_at(&at_palm, at),
        sent,
        now: clock::now(office),
    };
    let (cut, ended) = super::cut(typed, &at)?;
    let note = note(ended, Body::CutMade(cut.clone()));
    once(office, &history, typed, note)?;
    Ok(cut)
}

/// Reason code of a hold that was in force on a palm at a moment.
pub fn held_at(palm: &PalmRecord, at: Moment) -> Option<String> {
    let day = clock::local_day(at);
    let mut holds = palm.holds_on(day).filter(|hold| hold.since <= at);
    holds.next().map(|hold| hold.reason.clone())
}

/// Logs one cleaning a blade that was ticked.
pub fn save_cleanings(office: &Office, typed: &Typed) -> Result<Vec<Cleaning>, Stop> {
    let state = office.state();
    let (cleanings, done) = at_bath(office, |at| super::cleanings(typed, at))?;
    let mut notes = Vec::new();
    for cleaning in &cleanings {
        notes.extend(cleaning_note(office, &state, typed, cleaning, done)?);
    }
    office.record(notes)?;
    Ok(cleanings)
}

/// Checks blades that are to soak from now on; nothing is recorded before they are taken out.
pub fn start_soaking(office: &Office, typed: &Typed) -> Result<Soaking, Stop> {
    Ok(at_bath(office, |at| super::soaking(typed, at))?)
}

fn at_bath<T>(office: &Office, check: impl Fn(&AtBath) -> T) -> T {
    let (state, now) = (office.state(), clock::now(office));
    let blades: Vec<BladeId> = state.serving().map(|b| b.id).collect();
    check(&AtBath {
        blades: &blades,
        offers: &offers(&state, now),
        now,
    })
}

/// The note of a cleaning; nothing if it was recorded before. A timer that is stopped twice was stopped the first time.
fn cleaning_note(
    office: &Office,
    state: &State,
    typed: &Typed,
    cleaning: &Cleaning,
    done: Moment,
) -> Result<Option<Note>, Stop> {
    let mut note = note(done, Body::Cleaned(cleaning.clone()));
    let Some(id) = entry_id(typed.get(&blade_entry(cleaning.blade))) else {
        return Ok(Some(note));
    };
    let history = history(office, serving(state, cleaning.blade)?.as_ref())?;
    let timed = !typed.get("soaked_from").is_empty();
    match resent(&history, id, &note.body) {
        Resent::First => note.id = Some(id),
        Resent::Done => return Ok(None),
        Resent::Corrects(_) if timed => return Ok(None),
        Resent::Corrects(last) => note.replaces = Some(last),
    }
    Ok(Some(note))
}

/// Records a bath.
pub fn save_bath(office: &Office, typed: &Typed) -> Result<(), Stop> {
    let (bath, mixed) = at_bath(office, |at| super::bath(typed, at))?;
    let before: Vec<EntryId> = entry_id(typed.get("id")).into_iter().collect();
    let history: Vec<Entry> = entries(office, &before)?;
    once(office, &history, typed, note(mixed, Body::BathMixed(bath)))
}

fn serving(state: &State, blade: BladeId) -> Result<Arc<BladeRecord>, Stop> {
    let found = state.blade(blade).filter(|record| record.serves());
    found.cloned().ok_or_else(|| whole("form-blade-gone"))
}

fn standing_cut(history: &[Entry], id: EntryId) -> Option<&CutMade> {
    match &thread(history, id).last()?.body {
        Body::CutMade(cut) => Some(cut),
        _ => None,
    }
}

fn history(office: &Office, blade: &BladeRecord) -> Result<Vec<Entry>, Stop> {
    entries(office, &blade.entries)
}

fn entries(office: &Office, ids: &[EntryId]) -> Result<Vec<Entry>, Stop> {
    let kept = office.ledger().find(ids)?;
    Ok(kept.into_iter().map(|kept| kept.entry).collect())
}

fn note(at: Moment, body: Body) -> Note {
    Note {
        id: None,
        at,
        by: BY.to_owned(),
        body,
        replaces: None,
    }
}

fn at_now(office: &Office, body: Body, typed: &Typed) -> Result<(), Stop> {
    let mut note = note(clock::now(office), body);
    note.id = entry_id(typed.get("id"));
    office.record(vec![note])?;
    Ok(())
}
