//! Rows about blades to notes for the ledger, checked against the register. Nothing is lost: a blade nobody registered
//! is registered with its tag alone.

use super::log::{CleaningRow, CutRow};
use super::refusal::Fault;
use crate::blades::told;
use crate::office::Note;
use model::state::Touch;
use model::{
    Arg, Bath, Blade, BladeId, Body, Cleaning, CutMade, EntryId, Finding, Moment, PalmId, Severity,
    State,
};
use std::collections::BTreeMap;
use std::sync::Arc;

/// Makes notes of rows about blades. Reading the same file twice records once.
pub struct Logging<'a> {
    state: Arc<State>,
    palms: Vec<PalmId>,
    by: String,
    new_id: Box<dyn Fn() -> EntryId + 'a>,
    blades: BTreeMap<String, BladeId>,
    baths: BTreeMap<(Moment, String, Option<u64>), EntryId>,
    notes: Vec<Note>,
    /// Tags of blades that were not in the register.
    unknown: Vec<String>,
    already: i64,
}

impl<'a> Logging<'a> {
    /// A log taken into a register by somebody.
    pub fn new(state: Arc<State>, by: &str, new_id: impl Fn() -> EntryId + 'a) -> Logging<'a> {
        Logging {
            palms: state.tags().values().copied().collect(),
            state,
            by: by.to_owned(),
            new_id: Box::new(new_id),
            blades: BTreeMap::new(),
            baths: BTreeMap::new(),
            notes: Vec::new(),
            unknown: Vec::new(),
            already: 0,
        }
    }

    /// The register's palms, in the order in which [`CutRow::palm`] counts them.
    pub fn known(&self) -> super::Known {
        let palms = self.palms.iter().filter_map(|id| self.state.palm(*id));
        super::Known::of(palms.map(|record| &record.palm))
    }

    /// A blade to be registered.
    pub fn blade(&mut self, blade: Blade, now: Moment) -> Result<(), Fault> {
        match self.state.blade_by_tag(&blade.tag) {
            None => drop(self.note(now, Body::BladeRegistered(blade))),
            Some(record) if record.blade == blade => self.already += 1,
            Some(_) => return Err(Fault::cell("log-blade-registered", "tag", &blade.tag)),
        }
        Ok(())
    }

    /// A cut to be recorded.
    pub fn cut(&mut self, row: CutRow) -> Result<(), Fault> {
        let Some(palm) = self.palms.get(row.palm as usize).copied() else {
            return Err(Fault::cell("intake-unknown-palm", "tag", &row.tag));
        };
        let at = row.at;
        if row.twice {
            self.already += 1;
            return Ok(());
        }
        let blade = self.blade_tagged(&row.blade, at);
        let cut = CutMade {
            palm,
            stem: row.stem,
            blade,
            started: row.started,
            off: row.off,
            crew: row.who,
            despite: row.despite,
            notes: row.notes,
            extra: row.extra,
        };
        let there = self.there(
            blade,
            at,
            |touch| matches!(touch, Touch::Cut(old) if **old == cut),
        );
        match there {
            true => self.already += 1,
            false => drop(self.note(at, Body::CutMade(cut))),
        }
        Ok(())
    }

    /// A cleaning to be recorded.
    pub fn cleaning(&mut self, row: CleaningRow) -> Result<(), Fault> {
        let at = row.at;
        if row.twice {
            self.already += 1;
            return Ok(());
        }
        let blade = self.blade_tagged(&row.blade, at);
        let mixed = |bath: Option<EntryId>| Some(self.state.baths.get(&bath?)?.mixed);
        let same = |old: &Cleaning| {
            let how = told(&self.state, old, at);
            (how.agent, how.strength_pct) == (&row.agent, row.strength_pct)
                && (old.contact_min, old.brushed) == (row.contact_min, row.brushed)
                && (&old.by, &old.extra) == (&row.who, &row.extra)
                && mixed(old.bath) == row.bath_mixed
        };
        if self.there(
            blade,
            at,
            |touch| matches!(touch, Touch::Cleaned(old) if same(old)),
        ) {
            self.already += 1;
            return Ok(());
        }
        let bath = row
            .bath_mixed
            .map(|mixed| self.bath(mixed, &row.agent, row.strength_pct));
        let cleaning = Cleaning {
            blade,
            agent: row.agent,
            strength_pct: row.strength_pct,
            contact_min: row.contact_min,
            brushed: row.brushed,
            bath,
            by: row.who,
            extra: row.extra,
        };
        self.note(at, Body::Cleaned(cleaning));
        Ok(())
    }

    /// What is to be recorded, in an order in which it can be; what is odd about it; how many rows were there already.
    pub fn done(self) -> (Vec<Note>, Vec<Finding>, i64) {
        let odd = self.unknown.into_iter().map(|tag| {
            Finding::new("log-blade-was-unknown", Severity::Act).with("blade", Arg::Text(tag))
        });
        (self.notes, odd.collect(), self.already)
    }

    /// The blade with a tag; one nobody knows is registered, its kind unknown.
    fn blade_tagged(&mut self, tag: &str, at: Moment) -> BladeId {
        let known = self.state.blade_by_tag(tag).map(|record| record.id);
        if let Some(id) = known.or_else(|| self.blades.get(tag).copied()) {
            return id;
        }
        let blade = Blade {
            tag: tag.to_owned(),
            ..Blade::default()
        };
        let id = BladeId(self.note(at, Body::BladeRegistered(blade)).0);
        self.blades.insert(tag.to_owned(), id);
        self.unknown.push(tag.to_owned());
        id
    }

    /// The bath mixed at a moment with an agent; one nobody recorded is recorded.
    fn bath(&mut self, mixed: Moment, agent: &str, strength_pct: Option<f64>) -> EntryId {
        let same = |(_, record): &(&EntryId, &Arc<model::state::BathRecord>)| {
            record.mixed == mixed
                && record.bath.agent == agent
                && record.bath.strength_pct == strength_pct
        };
        if let Some((id, _)) = self.state.baths.iter().find(same) {
            return *id;
        }
        let key = (mixed, agent.to_owned(), strength_pct.map(f64::to_bits));
        if let Some(id) = self.baths.get(&key) {
            return *id;
        }
        let bath = Bath {
            agent: agent.to_owned(),
            strength_pct,
            kit: String::new(),
        };
        let id = self.note(mixed, Body::BathMixed(bath));
        self.baths.insert(key, id);
        id
    }

    /// Whether the register has a touch like this already.
    fn there(&self, blade: BladeId, at: Moment, is: impl Fn(&Touch) -> bool) -> bool {
        let record = self.state.blade(blade);
        record.is_some_and(|record| {
            let touches = record.touches.iter();
            touches.filter(|t| t.at == at).any(|t| is(&t.what))
        })
    }

    fn note(&mut self, at: Moment, body: Body) -> EntryId {
        let id = (self.new_id)();
        self.notes.push(Note {
            id: Some(id),
            at,
            by: self.by.clone(),
            body,
            replaces: None,
        });
        id
    }
}
