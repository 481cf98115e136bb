//! What a trace reckons with: latency, windows of the cases, hosts, dates to look.

use super::{Ask, CaseAsk, CaseTold, HostWord, LatencyTold, Stand, Travel};
use model::knowledge::{DayRange, DisorderRow, HostKind, Named, Spread};
use model::{Day, Knowledge, Moment};
use std::collections::BTreeMap;

/// Seconds in a day.
pub(super) const DAY: i64 = 86_400;

/// Whether blades carry it.
pub(super) fn travel(disorder: Option<&DisorderRow>) -> Travel {
    match disorder {
        None => Travel::NotNamed,
        Some(row) if row.spread.contains(&Spread::Blade) => Travel::OnBlades,
        Some(row) if row.spread.is_empty() => Travel::Unknown,
        Some(_) => Travel::NotOnBlades,
    }
}

/// The keeper's latency, its open ends filled from the disorder.
pub(super) fn latency(ask: &Ask) -> LatencyTold {
    let table = ask.disorder.map_or(DayRange::default(), |row| row.latency);
    let own = ask.latency;
    let range = DayRange {
        min: own.min.or(table.min),
        max: own.max.or(table.max),
    };
    let from_table =
        (own.min.is_none() && table.min.is_some()) || (own.max.is_none() && table.max.is_some());
    let row = ask.disorder.filter(|_| from_table);
    LatencyTold {
        range,
        by_keeper: own != DayRange::default(),
        sources: row.map_or_else(Vec::new, |row| row.sources.clone()),
    }
}

/// The times of a case: when it passes the disorder on, and when it was exposed itself.
pub(super) fn case(asked: &CaseAsk, ask: &Ask, range: DayRange, palm: &Stand) -> CaseTold {
    let seen = asked.seen_sick.unwrap_or(ask.as_of.day());
    let back = |day: Day, days: u32| day.plus(-i32::try_from(days).unwrap_or(i32::MAX));
    // sick from this day on for certain: the day it was seen, or the one the keeper gives if that is earlier
    let sick = asked.infectious_from.map_or(seen, |from| from.min(seen));
    let possibly = asked
        .infectious_from
        .or_else(|| range.max.map(|max| back(seen, max)));
    CaseTold {
        palm: palm.clone(),
        seen_sick: seen,
        surely_from: Moment::at_midnight(sick),
        possibly_from: possibly.map(|day| Moment::at_midnight(day.min(sick))),
        exposed_from: range.max.map(|max| Moment::at_midnight(back(seen, max))),
        exposed_until: last_second(back(sick, range.min.unwrap_or(0))),
        cuts: 0,
    }
}

fn last_second(day: Day) -> Moment {
    Moment(Moment::at_midnight(day.plus(1)).0 - 1000)
}

/// How palms stand to the hosts of a disorder. Remembers names, because a register repeats them.
pub(super) struct Hosts<'k> {
    disorder: Option<&'k DisorderRow>,
    knowledge: &'k Knowledge,
    by_name: BTreeMap<String, HostWord>,
}

impl<'k> Hosts<'k> {
    pub fn new(disorder: Option<&'k DisorderRow>, knowledge: &'k Knowledge) -> Hosts<'k> {
        Hosts {
            disorder,
            knowledge,
            by_name: BTreeMap::new(),
        }
    }

    /// Whether a palm of this name is a host.
    pub fn of(&mut self, written: &str) -> HostWord {
        if let Some(word) = self.by_name.get(written) {
            return *word;
        }
        let word = self.find(written);
        self.by_name.insert(written.to_owned(), word);
        word
    }

    /// Species before genus before all palms. A species of a genus with hosts, itself not among them, is unknown; so is
    /// every palm where no host is known.
    fn find(&self, written: &str) -> HostWord {
        let Some(row) = self.disorder.filter(|row| !row.hosts.is_empty()) else {
            return HostWord::Unknown;
        };
        let species = match self.knowledge.species_named(written) {
            Named::Exact(species) | Named::Synonym(species) => Some(species.name.as_str()),
            Named::Near(_) | Named::Unknown => None,
        };
        let name = species.unwrap_or_else(|| written.trim());
        let genus = name.split_whitespace().next().unwrap_or("");
        let listed = |wanted: &str| {
            let same = |host: &&model::knowledge::Host| host.name.eq_ignore_ascii_case(wanted);
            row.hosts.iter().find(same).map(|host| host.kind)
        };
        let own = [name, genus].into_iter().filter(|n| !n.is_empty());
        if let Some(kind) = own.chain(["*"]).find_map(listed) {
            return match kind {
                HostKind::Known => HostWord::Yes,
                HostKind::Prone => HostWord::Prone,
                HostKind::Reported => HostWord::Reported,
            };
        }
        let first = |name: &str| name.split_whitespace().next().unwrap_or("").to_lowercase();
        let related = row
            .hosts
            .iter()
            .any(|host| first(&host.name) == genus.to_lowercase());
        match species {
            Some(_) if !related => HostWord::No,
            _ => HostWord::Unknown,
        }
    }
}

/// Whether an exposed palm passes it on: in the certain set, in the possible set.
pub(super) fn carries(host: HostWord) -> (bool, bool) {
    match host {
        HostWord::Yes | HostWord::Prone => (true, true),
        HostWord::Reported | HostWord::Unknown => (false, true),
        HostWord::No => (false, false),
    }
}

/// The last day of the watch, and the days to look at a palm from the day of the trace on: the first when the first sign
/// may show, then at the interval, then at the end.
pub(super) fn watch(
    first: Day,
    last: Day,
    range: DayRange,
    today: Day,
    every: u32,
    most: usize,
) -> (Option<Day>, Vec<Day>) {
    let after = |day: Day, days: u32| day.plus(i32::try_from(days).unwrap_or(i32::MAX));
    let until = range.max.map(|max| after(last, max));
    let step = i32::try_from(every.max(1)).unwrap_or(i32::MAX);
    let mut day = after(first, range.min.unwrap_or(0)).max(today);
    let mut looks = Vec::new();
    while looks.len() < most && until.is_none_or(|until| day < until) {
        looks.push(day);
        day = day.plus(step);
    }
    if let Some(until) = until.filter(|until| *until >= today && looks.len() < most) {
        looks.push(until);
    }
    (until, looks)
}
