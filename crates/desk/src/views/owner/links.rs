//! Links that were given for a palm and not revoked, as the keeper sees them.

use crate::clock::local_day;
use crate::office::Office;
use crate::owner::works;
use crate::views::Speaker;
use model::PalmRecord;

/// A link.
#[derive(Clone, PartialEq, Debug)]
pub struct LinkRow {
    /// The entry that gave it: what a form to revoke it names.
    pub entry: String,
    /// For whom.
    pub owner: String,
    /// Since when, in words.
    pub given: String,
    /// Until when, in words.
    pub until: String,
    /// Whether it still works.
    pub works: bool,
}

/// The links of a palm, the newest first.
pub fn links(speaker: &Speaker, office: &Office, record: &PalmRecord) -> Vec<LinkRow> {
    let date = |day| [("date", speaker.measure.date(day).into())];
    let row = |own: &model::state::LinkRecord| {
        let works = works(&own.link, office.today());
        LinkRow {
            entry: own.entry.0.to_string(),
            owner: own.link.owner.clone(),
            given: speaker.text("owner-link-given-on", &date(local_day(own.given))),
            until: match own.link.until {
                Some(day) if works => speaker.text("owner-link-until", &date(day)),
                Some(day) => speaker.text("owner-link-over", &date(day)),
                None => speaker.say("owner-link-open"),
            },
            works,
        }
    };
    record.links.iter().rev().map(row).collect()
}
