//! `/rounds/plan`: what may be asked, and what came of it.

use super::super::said::{Said, Speaker};
use super::super::standing::Standings;
use super::map::{MapView, map};
use super::{hour, minutes, task, way};
use crate::day_rounds::{self, Proposal, Proposed, has_lift, replaced};
use crate::office::Office;
use model::PalmId;
use model::state::State;
use serde_json::{Value, json};
use std::collections::BTreeMap;

/// A crew that may be ticked.
#[derive(Clone, PartialEq, Debug)]
pub struct CrewChoice {
    /// Name.
    pub name: String,
    /// What is worth knowing: a lift, no place to start from.
    pub remark: String,
}

/// A site that may be ticked.
#[derive(Clone, PartialEq, Debug)]
pub struct SiteChoice {
    /// Name.
    pub name: String,
    /// How many palms are due today, in words.
    pub due: String,
}

/// What may be asked.
#[derive(Clone, PartialEq, Debug)]
pub struct BuilderView {
    /// Crews that work.
    pub crews: Vec<CrewChoice>,
    /// Sites with palms.
    pub sites: Vec<SiteChoice>,
}

/// A palm of a proposed round.
#[derive(Clone, PartialEq, Debug)]
pub struct StopRow {
    /// Start.
    pub start: String,
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site, where it is another than that of the row before.
    pub site: Option<String>,
    /// What is to be done.
    pub tasks: String,
    /// Minutes.
    pub minutes: String,
    /// Its class of health, where it is not sound.
    pub health: Option<String>,
    /// Whether a lift is needed.
    pub lift: bool,
}

/// A proposed round.
#[derive(Clone, PartialEq, Debug)]
pub struct RoundTable {
    /// Crew and hours.
    pub title: String,
    /// Palms, work, road.
    pub sum: String,
    /// Palms in order.
    pub stops: Vec<StopRow>,
}

/// Palms left out for one reason.
#[derive(Clone, PartialEq, Debug)]
pub struct LeftGroup {
    /// Why.
    pub why: Said,
    /// Tags.
    pub tags: Vec<String>,
}

/// A proposal.
#[derive(Clone, PartialEq, Debug)]
pub struct ProposalView {
    /// For which day.
    pub title: String,
    /// How much of it is done.
    pub summary: String,
    /// Rounds.
    pub rounds: Vec<RoundTable>,
    /// Where they lead.
    pub map: Option<MapView>,
    /// Palms left out.
    pub left: Vec<LeftGroup>,
    /// What it rests on.
    pub remarks: Vec<Said>,
    /// What a form carries to keep it.
    pub carried: String,
    /// Rounds whose place these would take, in words.
    pub replaces: Option<String>,
}

/// What may be asked; standings that are not known yet are not waited for.
pub fn builder(speaker: &Speaker, office: &Office, standings: &Standings) -> BuilderView {
    let (state, today) = (office.state(), office.today());
    let mut sites: BTreeMap<&str, i64> = BTreeMap::new();
    for record in state.standing().filter(|r| !r.palm.site.is_empty()) {
        let standing = standings.peek(&state, record, today);
        let earliest = standing.and_then(|s| s.due.earliest);
        *sites.entry(&record.palm.site).or_default() +=
            i64::from(earliest.is_some_and(|day| day <= today));
    }
    let crews = state.work.crews.values().filter(|crew| !crew.gone);
    BuilderView {
        crews: crews
            .map(|crew| CrewChoice {
                name: crew.name.clone(),
                remark: match crew.from {
                    None => speaker.say("plan-crew-no-start"),
                    Some(_) if has_lift(crew) => speaker.say("plan-crew-lift"),
                    Some(_) => String::new(),
                },
            })
            .collect(),
        sites: sites
            .into_iter()
            .map(|(name, due)| SiteChoice {
                name: name.to_owned(),
                due: speaker.text("plan-site-due", &[("n", due.into())]),
            })
            .collect(),
    }
}

/// A proposal in words.
pub fn proposal(speaker: &Speaker, office: &Office, proposal: &Proposal) -> ProposalView {
    let state = office.state();
    let palms: usize = proposal.rounds.iter().map(|round| round.stops.len()).sum();
    let counts = [
        ("palms", (palms as i64).into()),
        ("rounds", (proposal.rounds.len() as i64).into()),
        ("left", (proposal.left.len() as i64).into()),
    ];
    let kept = |round: &&Proposed| replaced(office, proposal.day, &round.plan.crew).is_some();
    let replaces = proposal.rounds.iter().filter(kept).count() as i64;
    ProposalView {
        title: speaker.text(
            "plan-proposal",
            &[("date", speaker.measure.date(proposal.day).into())],
        ),
        summary: speaker.text("plan-summary", &counts),
        rounds: proposal
            .rounds
            .iter()
            .map(|round| table(speaker, &state, round))
            .collect(),
        map: map(speaker, office, proposal),
        left: left(speaker, &state, proposal),
        remarks: speaker.findings(&proposal.remarks),
        carried: day_rounds::carried(proposal.rounds.iter().map(|round| &round.plan)),
        replaces: (replaces > 0).then(|| speaker.text("plan-replaces", &[("n", replaces.into())])),
    }
}

fn table(speaker: &Speaker, state: &State, round: &Proposed) -> RoundTable {
    let plan = &round.plan;
    let title = [
        ("crew", plan.crew.clone().into()),
        ("leave", plan.leave.map_or_else(String::new, hour).into()),
        ("back", plan.back.map_or_else(String::new, hour).into()),
    ];
    let work: f64 = plan.stops.iter().filter_map(|stop| stop.minutes).sum();
    let sum = [
        ("palms", (plan.stops.len() as i64).into()),
        ("work", minutes(work).into()),
        ("driving", minutes(round.driving as f64 / 60.0).into()),
        ("km", way(speaker, plan.metres.unwrap_or(0.0)).into()),
    ];
    let mut before: Option<&str> = None;
    let mut stops = Vec::with_capacity(plan.stops.len());
    for (stop, more) in plan.stops.iter().zip(&round.stops) {
        let record = state.palm(stop.palm);
        let key = more.health.key();
        stops.push(StopRow {
            start: stop.start.map_or_else(String::new, hour),
            tag: tag(state, stop.palm),
            species: record.map_or_else(String::new, |r| r.palm.species.clone()),
            site: (before != Some(more.site.as_str())).then(|| more.site.clone()),
            tasks: tasks(speaker, &stop.tasks),
            minutes: stop
                .minutes
                .map_or_else(String::new, |m| speaker.measure.number(m.round(), 0)),
            health: (key != "healthy").then(|| speaker.say(&format!("round-health-{key}"))),
            lift: more.lift,
        });
        before = Some(&more.site);
    }
    RoundTable {
        title: speaker.text("plan-round", &title),
        sum: speaker.text("plan-round-sum", &sum),
        stops,
    }
}

/// Tasks of a stop in words, in their order.
pub(super) fn tasks(speaker: &Speaker, keys: &[String]) -> String {
    Vec::from_iter(keys.iter().map(|key| task(speaker, key))).join(", ")
}

fn left(speaker: &Speaker, state: &State, proposal: &Proposal) -> Vec<LeftGroup> {
    let mut groups: Vec<LeftGroup> = Vec::new();
    for left in &proposal.left {
        let why = speaker.finding(&left.why);
        let tag = tag(state, left.palm);
        match groups.iter_mut().find(|group| group.why.text == why.text) {
            Some(group) => group.tags.push(tag),
            None => groups.push(LeftGroup {
                why,
                tags: vec![tag],
            }),
        }
    }
    groups
}

fn tag(state: &State, palm: PalmId) -> String {
    state
        .palm(palm)
        .map_or_else(String::new, |record| record.palm.tag.clone())
}

/// A proposal for a program: times in seconds after local midnight, ways in metres, palms by tag.
pub fn json(office: &Office, proposal: &Proposal) -> Value {
    let state = office.state();
    let round = |round: &Proposed| {
        let stops: Vec<Value> = round
            .plan
            .stops
            .iter()
            .zip(&round.stops)
            .map(|(stop, more)| {
                json!({
                    "tag": tag(&state, stop.palm), "site": more.site, "start": stop.start,
                    "minutes": stop.minutes, "tasks": stop.tasks, "health": more.health.key(), "lift": more.lift,
                })
            })
            .collect();
        json!({
            "crew": round.plan.crew, "leave": round.plan.leave, "back": round.plan.back,
            "metres": round.plan.metres, "driving_s": round.driving, "stops": stops,
        })
    };
    let rounds: Vec<Value> = proposal.rounds.iter().map(round).collect();
    let left: Vec<Value> = proposal
        .left
        .iter()
        .map(|left| json!({"tag": tag(&state, left.palm), "why": left.why.code}))
        .collect();
    let remarks: Vec<&str> = proposal
        .remarks
        .iter()
        .map(|finding| finding.code)
        .collect();
    json!({"day": proposal.day.to_string(), "rounds": rounds, "left": left, "remarks": remarks})
}
