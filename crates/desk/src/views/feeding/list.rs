//! `/feeding`: palms that may be short of something or are fed, and what may be done for them now.

use super::super::said::Speaker;
use super::line::{self, FeedLine};
use super::log;
use crate::feeding::{self, Fed};
use crate::office::Office;
use care::feeding::{MAINTENANCE, Plan, Verdict};
use std::collections::BTreeSet;

/// A palm against one thing.
#[derive(Clone, PartialEq, Debug)]
pub struct RowLine {
    /// `maintenance` or a key of the disorders.
    pub key: String,
    /// Against what, and how probable that is.
    pub name: String,
    /// It may be fed against it now, and wants it.
    pub wants: bool,
    /// What and how much, or why not, or when again.
    pub what: String,
}

/// A palm in the list.
#[derive(Clone, PartialEq, Debug)]
pub struct ListRow {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// What it is fed against.
    pub lines: Vec<RowLine>,
    /// What its crown answered to the last feeding that is worth an answer.
    pub answer: Option<String>,
}

/// Palms that stand alike.
#[derive(Clone, PartialEq, Debug)]
pub struct FeedGroup {
    /// `worse`, `now`, `wait`.
    pub key: &'static str,
    /// Heading.
    pub title: String,
    /// The palms, by site and tag.
    pub rows: Vec<ListRow>,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct FeedingList {
    /// How many palms.
    pub summary: String,
    /// Sites of these palms for which nobody entered a local rule.
    pub rules_unknown: Vec<String>,
    /// Palms by how they stand; groups without palms are left out.
    pub groups: Vec<FeedGroup>,
}

/// All palms that may have a shortage or were fed. Reads every palm.
pub fn list(speaker: &Speaker, office: &Office) -> FeedingList {
    let all = feeding::all(office);
    let mut groups: [Vec<ListRow>; 3] = Default::default();
    let mut unknown = BTreeSet::new();
    for fed in &all {
        let plan = fed.plan();
        if plan.rules_unknown && !fed.record.palm.site.is_empty() {
            unknown.insert(fed.record.palm.site.clone());
        }
        let at = match fed {
            fed if became_worse(fed) => 0,
            _ if plan.lines.iter().any(feeding::wants) => 1,
            _ => 2,
        };
        groups[at].push(row(speaker, fed, &plan));
    }
    let counts = [
        ("all", (all.len() as i64).into()),
        ("now", ((groups[0].len() + groups[1].len()) as i64).into()),
    ];
    let keys = ["worse", "now", "wait"];
    let groups = keys.into_iter().zip(groups);
    FeedingList {
        summary: speaker.text("feed-summary", &counts),
        rules_unknown: unknown.into_iter().collect(),
        groups: groups
            .filter(|(_, rows)| !rows.is_empty())
            .map(|(key, rows)| FeedGroup {
                key,
                title: speaker.say(&format!("feed-group-{key}")),
                rows,
            })
            .collect(),
    }
}

/// The crown became worse after the last feeding that is worth an answer.
fn became_worse(fed: &Fed) -> bool {
    let last = fed.noted.iter().find_map(|own| own.answer.as_ref());
    last.is_some_and(|answer| answer.verdict == Verdict::Worse)
}

fn row(speaker: &Speaker, fed: &Fed, plan: &Plan<'static>) -> ListRow {
    let palm = &fed.record.palm;
    let own = plan.lines.iter().filter(|own| {
        // maintenance that nobody began says nothing of this palm
        own.against != MAINTENANCE || own.last.is_some()
    });
    ListRow {
        tag: palm.tag.clone(),
        species: palm.species.clone(),
        site: palm.site.clone(),
        lines: own
            .map(|own| {
                let wants = feeding::wants(own);
                let view = line::view(speaker, fed, own);
                RowLine {
                    wants,
                    what: what(&view, wants),
                    name: view.name,
                    key: view.key,
                }
            })
            .collect(),
        answer: log::view(speaker, fed)
            .into_iter()
            .find(|own| own.verdict.is_some())
            .and_then(|own| own.answer.into_iter().next()),
    }
}

fn what(line: &FeedLine, wants: bool) -> String {
    if let Some(refused) = line.refused.first() {
        return refused.text.clone();
    }
    match (line.doses.first(), &line.no_rate) {
        (Some(dose), _) if wants => format!("{}: {}", dose.product, dose.amount),
        (None, Some(no_rate)) => no_rate.clone(),
        _ => line.when.clone(),
    }
}
