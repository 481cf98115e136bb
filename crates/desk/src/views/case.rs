//! From the register to what the cut plan is told.

use crate::grounds::OnSite;
use crate::office::Office;
use care::judge::Judgement;
use care::{CutCase, Grounds};
use crown::{PalmReading, Reading};
use model::state::Hold;
use model::{Day, Inspection, Knowledge, PalmRecord, Species};

/// The next visit where nobody has named one, days from today (assumed; the page says so and takes another date).
pub const DEFAULT_VISIT_DAYS: i32 = 182;

/// One stem of a palm on a day, with everything the rules ask for.
pub struct StemToday<'a> {
    record: &'a PalmRecord,
    species: Option<&'static Species>,
    stem: u16,
    reading: &'a Reading,
    palm_probabilities: [f64; 4],
    looks: Vec<Inspection>,
    judgement: &'a Judgement,
    holds: Vec<Hold>,
    today: Day,
    next_visit: Day,
    grounds: Grounds,
    on_site: OnSite,
}

impl<'a> StemToday<'a> {
    /// A stem with its reading and the palm's judgement, which is the same for all its stems; `None` if the palm has no
    /// such stem. What its site is described with is added to the `grounds` asked about.
    pub fn of(
        office: &Office,
        record: &'a PalmRecord,
        reading: &'a PalmReading,
        judgement: &'a Judgement,
        stem: u16,
        next_visit: Option<Day>,
        grounds: Grounds,
    ) -> Option<StemToday<'a>> {
        let today = office.today();
        let on_site = OnSite::of(&office.state(), &record.palm);
        let (_, own) = reading.stems.iter().find(|(n, _)| *n == stem)?;
        Some(StemToday {
            record,
            species: office.species(&record.palm),
            stem,
            reading: own,
            palm_probabilities: reading.probabilities,
            looks: record.looks(stem).cloned().collect(),
            judgement,
            holds: record.holds_on(today).cloned().collect(),
            today,
            next_visit: next_visit.unwrap_or(today.plus(DEFAULT_VISIT_DAYS)),
            grounds: on_site.with(grounds),
            on_site,
        })
    }

    /// All stems of a palm in their order, with the next visit and the grounds as usual.
    pub fn each(
        office: &Office,
        record: &'a PalmRecord,
        reading: &'a PalmReading,
        judgement: &'a Judgement,
    ) -> impl Iterator<Item = StemToday<'a>> {
        reading.stems.iter().filter_map(move |(stem, _)| {
            let grounds = Grounds::default();
            StemToday::of(office, record, reading, judgement, *stem, None, grounds)
        })
    }

    /// What the rules are told.
    pub fn case(&self) -> CutCase<'_> {
        CutCase {
            palm: &self.record.palm,
            species: self.species,
            stem: self.stem,
            inspections: &self.looks,
            reading: self.reading,
            palm_probabilities: self.palm_probabilities,
            holds: &self.holds,
            today: self.today,
            next_visit: Some(self.next_visit),
            judgement: Some(self.judgement),
            grounds: self.grounds,
            knowledge: Knowledge::embedded(),
        }
    }

    /// What is said of the palm's site.
    pub fn on_site(&self) -> OnSite {
        self.on_site
    }

    /// The stem's reading.
    pub fn reading(&self) -> &'a Reading {
        self.reading
    }

    /// The day of the next visit that is reckoned with.
    pub fn next_visit(&self) -> Day {
        self.next_visit
    }

    /// The palm's species row, if its name resolves.
    pub fn species(&self) -> Option<&'static Species> {
        self.species
    }

    /// Looks at this stem, oldest first.
    pub fn looks(&self) -> &[Inspection] {
        &self.looks
    }

    /// Today.
    pub fn today(&self) -> Day {
        self.today
    }
}
