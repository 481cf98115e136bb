//! A judgement with what it was told.

use super::Told;
use crate::office::Office;
use care::judge::{Judge, Judgement};
use crown::PalmReading;
use model::PalmRecord;

/// What was told, and what is judged.
#[derive(Clone, PartialEq, Debug)]
pub struct Judged {
    /// What the judge was told.
    pub told: Told,
    /// The answer.
    pub judgement: Judgement,
}

impl Judged {
    /// Judges by the tables compiled into this program.
    pub fn of(told: Told) -> Judged {
        let judgement = Judge::embedded().judge(&told.evidence());
        Judged { told, judgement }
    }
}

/// The judgement of a registered palm without the next looks, which only pages of one palm show: for lists and plans.
pub fn in_brief(office: &Office, record: &PalmRecord, reading: &PalmReading) -> Judgement {
    let told = Told::of_record(office, record, reading);
    Judge::embedded().judge_only(&told.evidence())
}

/// The judgement of a registered palm with its reading: see [`Told::of_record`] for what counts.
pub fn of_record(office: &Office, record: &PalmRecord, reading: &PalmReading) -> Judged {
    Judged::of(Told::of_record(office, record, reading))
}
