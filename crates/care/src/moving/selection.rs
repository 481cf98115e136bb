//! Choosing among dug specimens: what each will likely still shed, from counts, spear and days since digging.

use crown::{Cut, ExpectedLoss, Explanation, Prior, Quantiles, Sampler, StemCase, read};
use model::knowledge::MoveTopic;
use model::{Arg, Day, Finding, Inspection, Knowledge, Palm, Severity, SourceKey, Spear, Species};

/// Weeks ahead that are told.
pub const WEEKS: [i32; 3] = [4, 8, 26];
/// From this probability on decline and hunger are worth a line (assumed, as on every other page).
const LIKELY: f64 = 0.5;
/// So many yellowing fronds speak of hunger (assumed).
const HUNGRY_YELLOWING: u32 = 3;
/// A crown with fewer live fronds than this share of a full one counts as cut short (assumed).
const THIN: f64 = 0.6;
/// Up to so many days after digging most of the shedding is still to come: the middle of the time constants of the
/// move, plus its lag (assumed, `docs/crown.md`).
const FRESH_DAYS: i32 = 30;

/// When somebody took dead fronds off.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Cleaned {
    /// Not told.
    #[default]
    Unknown,
    /// At digging, and not since: what is brown has died since.
    AtDigging,
    /// Since digging, too: how many have died cannot be counted.
    Since,
}

/// A specimen as it stands at the seller's.
#[derive(Clone, Debug, Default)]
pub struct Specimen<'a> {
    /// What the keeper calls it.
    pub name: String,
    /// Species as written.
    pub species_name: String,
    /// Its row, if the name resolves.
    pub species: Option<&'a Species>,
    /// Other species of its genus.
    pub relatives: Vec<&'a Species>,
    /// Wholly green fronds.
    pub green: Option<u32>,
    /// Partly dead fronds.
    pub yellowing: Option<u32>,
    /// Wholly dead fronds still on.
    pub brown: Option<u32>,
    /// Spear.
    pub spear: Option<Spear>,
    /// Days since it was dug; `None`: not told, taken as dug today.
    pub dug_days: Option<u32>,
    /// When dead fronds were taken off.
    pub cleaned: Cleaned,
}

/// What a specimen will likely do.
#[derive(Clone, PartialEq, Debug)]
pub struct Outlook {
    /// What the keeper calls it.
    pub name: String,
    /// Further losses under ageing and move, after [`WEEKS`].
    pub further: [ExpectedLoss; 3],
    /// Live fronds after [`WEEKS`].
    pub live: [Quantiles; 3],
    /// Probability of each explanation, ordered as [`Explanation::ALL`].
    pub probabilities: [f64; 4],
    /// Share of the counted crown that is brown by now; `None`: not counted, or somebody took dead ones off.
    pub browned: Option<f64>,
    /// What to say of it, worst first.
    pub findings: Vec<Finding>,
    brown: Option<u32>,
    green: Option<u32>,
}

impl Outlook {
    /// Whether it is to be left where it is.
    pub fn refused(&self) -> bool {
        self.findings.iter().any(|f| f.severity == Severity::Refuse)
    }
}

/// What a specimen will likely shed from `today` on.
pub fn outlook(
    specimen: &Specimen,
    today: Day,
    knowledge: &Knowledge,
    sampler: &mut Sampler,
) -> Outlook {
    let reading = read(&case(specimen, today), today, sampler);
    let days = WEEKS.map(|weeks| today.plus(7 * weeks));
    let live = reading.forecasts(Cut::NONE, &days);
    let browned = browned(specimen);
    let mut findings = vec![];
    findings.extend(spear(specimen.spear));
    findings.extend(read_as(specimen, reading.probabilities));
    findings.extend(counted(specimen));
    findings.extend(thin(specimen, reading.full_crown.q50));
    findings.extend(dug(specimen));
    findings.extend(browned.map(|share| against_usual(share, specimen, knowledge)));
    findings.sort_by_key(|f| core::cmp::Reverse(f.severity));
    Outlook {
        name: specimen.name.clone(),
        further: days.map(|day| reading.expected_loss(day)),
        live: core::array::from_fn(|k| live[k].live),
        probabilities: reading.probabilities,
        browned,
        findings,
        brown: specimen.brown,
        green: specimen.green,
    }
}

fn case(specimen: &Specimen, today: Day) -> StemCase {
    let dug_on = today.plus(-(specimen.dug_days.unwrap_or(0) as i32));
    let palm = Palm {
        species: specimen.species_name.clone(),
        stems: 1,
        moved_on: Some(dug_on),
        last_cleaned_on: (specimen.cleaned == Cleaned::AtDigging).then_some(dug_on),
        ..Palm::default()
    };
    let look = Inspection {
        green: specimen.green,
        yellowing: specimen.yellowing,
        brown: specimen.brown,
        spear: specimen.spear,
        ..Inspection::blank(1, today)
    };
    let prior = Prior::of(&palm, specimen.species, &specimen.relatives);
    StemCase::of(&palm, 1, &[look], prior, None)
}

fn browned(specimen: &Specimen) -> Option<f64> {
    if specimen.cleaned == Cleaned::Since {
        return None;
    }
    let (green, brown) = (specimen.green?, specimen.brown?);
    let all = green + specimen.yellowing.unwrap_or(0) + brown;
    (all > 0).then(|| f64::from(brown) / f64::from(all))
}

fn spear(spear: Option<Spear>) -> Option<Finding> {
    match spear {
        Some(Spear::Firm) => None,
        None => Some(Finding::new("select-spear-not-seen", Severity::Act)),
        Some(Spear::Leaning) => Some(Finding::new("select-spear-leaning", Severity::Refuse)),
        Some(Spear::Down | Spear::Pulled) => {
            Some(Finding::new("select-spear-lost", Severity::Refuse))
        }
    }
    .map(Finding::by_practice)
}

/// Decline, or hunger: that needs yellowing fronds besides, for a crown cut for shipping is small, too.
fn read_as(specimen: &Specimen, probabilities: [f64; 4]) -> Option<Finding> {
    let of = |kind: Explanation| probabilities[kind.index()];
    if of(Explanation::Decline) >= LIKELY {
        let share = Arg::Share(of(Explanation::Decline));
        return Some(Finding::new("select-decline", Severity::Act).with("share", share));
    }
    let share = Arg::Share(of(Explanation::Hunger));
    let yellowing = specimen.yellowing.is_some_and(|n| n >= HUNGRY_YELLOWING);
    (of(Explanation::Hunger) >= LIKELY && yellowing)
        .then(|| Finding::new("select-hunger", Severity::Caution).with("share", share))
}

fn counted(specimen: &Specimen) -> Option<Finding> {
    let code = match specimen.cleaned {
        _ if specimen.green.is_none() => "select-not-counted",
        Cleaned::Since => "select-cleaned-since",
        Cleaned::Unknown => "select-cleaned-unknown",
        Cleaned::AtDigging => return None,
    };
    Some(Finding::new(code, Severity::Caution))
}

fn thin(specimen: &Specimen, full: f64) -> Option<Finding> {
    let live = f64::from(specimen.green? + specimen.yellowing.unwrap_or(0));
    (live < THIN * full).then(|| {
        Finding::new("select-thin", Severity::Info)
            .with("live", Arg::Count(live as i64))
            .with("full", Arg::Count(full.round() as i64))
    })
}

fn dug(specimen: &Specimen) -> Option<Finding> {
    let Some(days) = specimen.dug_days else {
        return Some(Finding::new("select-dug-unknown", Severity::Caution));
    };
    let code = if (days as i32) < FRESH_DAYS {
        "select-fresh"
    } else {
        "select-behind-it"
    };
    Some(Finding::new(code, Severity::Info).with("days", Arg::Days(f64::from(days))))
}

/// The share of brown fronds against what is usual after a move.
fn against_usual(share: f64, specimen: &Specimen, knowledge: &Knowledge) -> Finding {
    let usual = knowledge
        .moving(MoveTopic::ShedShare)
        .find_map(|row| row.figure);
    let (low, high) = usual.map_or((0.0, 1.0), |range| {
        (range.low.unwrap_or(0.0) / 100.0, range.high / 100.0)
    });
    let fresh = specimen.dug_days.is_none_or(|d| (d as i32) < FRESH_DAYS);
    let (code, severity) = match share {
        s if s > high => ("select-browned-more", Severity::Caution),
        s if s >= low => ("select-browned-usual", Severity::Info),
        _ if fresh => ("select-browned-not-yet", Severity::Info),
        _ => ("select-browned-less", Severity::Info),
    };
    Finding::new(code, severity)
        .with("share", Arg::Share(share))
        .with("low", Arg::Share(low))
        .with("high", Arg::Share(high))
        .from_sources(&[SourceKey::fixed("common-practice")])
        .by_practice()
}

/// What setting them side by side says: for every pair in which the one with more brown fronds will shed no more than
/// the one with fewer; and which keeps most green after the last of [`WEEKS`].
pub fn compare(outlooks: &[Outlook]) -> Vec<Finding> {
    let mut findings = Vec::new();
    for browner in outlooks {
        for greener in outlooks {
            let (Some(more), Some(less)) = (browner.brown, greener.brown) else {
                continue;
            };
            let calmer = browner.further[1].median < greener.further[1].median;
            if more > less && calmer && !browner.refused() && !greener.refused() {
                findings.push(
                    Finding::new("select-brown-behind-it", Severity::Info)
                        .with("brown", Arg::Text(browner.name.clone()))
                        .with("spotless", Arg::Text(greener.name.clone()))
                        .with("a", Arg::Count(i64::from(browner.further[1].median)))
                        .with("b", Arg::Count(i64::from(greener.further[1].median))),
                );
            }
        }
    }
    let sound = || {
        outlooks
            .iter()
            .filter(|o| !o.refused() && o.green.is_some())
    };
    let fullest = sound().max_by(|a, b| a.live[2].q50.total_cmp(&b.live[2].q50));
    if let Some(best) = fullest.filter(|_| sound().count() > 1) {
        findings.push(
            Finding::new("select-fullest", Severity::Info)
                .with("name", Arg::Text(best.name.clone()))
                .with("n", Arg::Count(best.live[2].q50.round() as i64)),
        );
    }
    for refused in outlooks.iter().filter(|o| o.refused()) {
        findings.push(
            Finding::new("select-leave-it", Severity::Refuse)
                .with("name", Arg::Text(refused.name.clone())),
        );
    }
    findings.sort_by_key(|f| core::cmp::Reverse(f.severity));
    findings
}
