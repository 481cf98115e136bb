//! Today: what needs a person, worst first.

use super::needs::{self, Need};
use super::paging::Paging;
use super::rounds::{RoundRow, of_today};
use super::said::{Speaker, weight};
use super::standing::Standings;
use crate::office::Office;
use model::PalmRecord;
use std::sync::Arc;

/// Palms on one page.
const PER_PAGE: usize = 40;
/// So many palms are read at once while a page is waited for; more are read in the background.
pub const AT_ONCE: usize = 300;

/// A palm that needs a person.
#[derive(Clone, PartialEq, Debug)]
pub struct NeedRow {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// The worst need, in one line.
    pub text: String,
    /// Its stable code.
    pub code: &'static str,
    /// Its weight.
    pub weight: &'static str,
    /// The other needs, in short.
    pub more: Vec<String>,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct TodayView {
    /// Today's date.
    pub date: String,
    /// One sentence: how many of how many.
    pub summary: String,
    /// The rounds of today.
    pub rounds: Vec<RoundRow>,
    /// Palms on this page.
    pub rows: Vec<NeedRow>,
    /// Pages.
    pub paging: Paging,
    /// Palms not read yet, in words; nothing when all are.
    pub pending: Option<String>,
    /// Entries that make no sense, in words.
    pub noticed: Vec<String>,
    /// Whether the register is empty.
    pub empty: bool,
}

/// The page with this number, from 1.
pub fn view(speaker: &Speaker, office: &Office, standings: &Standings, page: usize) -> TodayView {
    let (state, today) = (office.state(), office.today());
    let mut needing: Vec<(Need, usize, &Arc<PalmRecord>)> = Vec::new();
    let mut total = 0;
    for record in state.standing() {
        total += 1;
        let standing = standings.peek(&state, record, today);
        let mut needs = needs::of(office, record, standing.as_deref()).into_iter();
        if let Some(worst) = needs.next() {
            needing.push((worst, needs.len(), record));
        }
    }
    // among equals the palm with more needs first, then by tag
    needing.sort_by(|a, b| (a.0.rank, b.1, &a.2.palm.tag).cmp(&(b.0.rank, a.1, &b.2.palm.tag)));
    let paging = Paging::of(needing.len(), PER_PAGE, page);
    let rows = needing[paging.range()].iter().map(|(_, _, record)| {
        let standing = standings.peek(&state, record, today);
        row(
            speaker,
            record,
            needs::of(office, record, standing.as_deref()),
        )
    });
    let counts = [
        ("n", (needing.len() as i64).into()),
        ("total", speaker.measure.count(total).into()),
    ];
    TodayView {
        date: speaker.measure.date(today),
        summary: speaker.text("today-summary", &counts),
        rounds: of_today(speaker, office),
        rows: rows.collect(),
        pending: pending(speaker, standings.missing(office)),
        noticed: state
            .noticed()
            .iter()
            .take(20)
            .map(|n| speaker.measure.finding(&n.finding))
            .collect(),
        empty: total == 0,
        paging,
    }
}

/// Palms not read yet, in words.
pub fn pending(speaker: &Speaker, missing: usize) -> Option<String> {
    (missing > 0).then(|| speaker.text("today-pending", &[("n", (missing as i64).into())]))
}

fn row(speaker: &Speaker, record: &PalmRecord, needs: Vec<Need>) -> NeedRow {
    let say = |need: &Need| speaker.measure.finding(&need.finding);
    NeedRow {
        tag: record.palm.tag.clone(),
        species: record.palm.species.clone(),
        site: record.palm.site.clone(),
        text: needs.first().map(say).unwrap_or_default(),
        code: needs.first().map_or("", |n| n.finding.code),
        weight: needs.first().map_or("info", |n| weight(n.finding.severity)),
        more: needs.iter().skip(1).map(say).collect(),
    }
}
