//! What is believed of a palm before its counts are seen.

use model::species::SelfCleaning;
use model::{Basis, Palm, SourceKey, Species, math};

/// A log-normal belief about a positive quantity.
#[derive(Clone, PartialEq, Debug)]
pub struct LogSpread {
    /// Median.
    pub median: f64,
    /// Standard deviation of the logarithm.
    pub sd_ln: f64,
    /// How the median is known.
    pub basis: Basis,
    /// Sources of the median.
    pub sources: Vec<SourceKey>,
    /// Set where a description's maximum, a genus or the whole family stands in for the species' own figure:
    /// a stable code such as `n-from-maximum`, `n-from-genus`, `n-from-family`, `r-about-one-a-month`.
    pub note: Option<&'static str>,
}

/// How long dead fronds stay on.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Hang {
    /// Until somebody cuts them.
    UntilCut,
    /// They fall by themselves after about this many days.
    Falls {
        /// Mean days on the palm.
        days: f64,
    },
    /// Some fall, some hang, or nobody knows: mean days on the palm between these (log-uniform).
    Between {
        /// Shortest mean stay, days.
        low: f64,
        /// Longest mean stay, days.
        high: f64,
    },
}

/// The prior of one palm.
#[derive(Clone, PartialEq, Debug)]
pub struct Prior {
    /// Live fronds of a full, fed crown.
    pub full_crown: LogSpread,
    /// Fronds made a year at the reference place, vigour included in the spread.
    pub fronds_per_year: LogSpread,
    /// How long dead fronds stay on.
    pub hang: Hang,
    /// Weights of the explanations for a settled palm: ageing, move, hunger, decline.
    pub settled: [f64; 4],
    /// The same for a palm moved within the last 540 days.
    pub moved: [f64; 4],
}

/// Days a dead frond stays on a self-cleaning palm: about a week after its sheath splits (common practice, no source).
const FALLS_AFTER_DAYS: f64 = 7.0;
/// Spread of a frond count or rate that a source states (assumed).
const SD_STATED: f64 = 0.10;
/// Spread of vigour where the rate is sourced, and where it is not (assumed).
const SD_VIGOUR: [f64; 2] = [0.15, 0.35];
/// Weights of the explanations (assumed, shown, adjustable): settled, and moved within the last 540 days.
const SETTLED: [f64; 4] = [0.62, 0.0, 0.28, 0.10];
const MOVED: [f64; 4] = [0.31, 0.62, 0.28, 0.10];

impl Prior {
    /// The prior of a palm: keeper's own figures first, then the species row, then its genus, then all palms.
    ///
    /// `relatives` are the other species of the genus (used only where the species' own row is silent).
    pub fn of(palm: &Palm, species: Option<&Species>, relatives: &[&Species]) -> Prior {
        Prior {
            full_crown: full_crown(palm, species, relatives),
            fronds_per_year: fronds_per_year(palm, species),
            hang: hang(species),
            settled: normalised(SETTLED),
            moved: normalised(MOVED),
        }
    }
}

/// N of a palm, from the first of: keeper, species range, description's maximum, genus, all palms.
fn full_crown(palm: &Palm, species: Option<&Species>, relatives: &[&Species]) -> LogSpread {
    if let Some(n) = palm.full_crown {
        return LogSpread {
            median: n,
            sd_ln: SD_STATED,
            basis: Basis::Keeper,
            sources: Vec::new(),
            note: None,
        };
    }
    if let Some(spread) = species.and_then(stated_crown) {
        return spread;
    }
    let mut kin: Vec<f64> = relatives
        .iter()
        .filter_map(|s| stated_crown(s))
        .map(|s| s.median)
        .collect();
    kin.sort_by(f64::total_cmp);
    let (median, sd_ln, note) = match kin.get(kin.len() / 2) {
        Some(&median) => (median, combined(0.45, spread_of_logs(&kin)), "n-from-genus"),
        // PalmTraits' median maximum is 11, the median of the palms that keepers grow about 20 (computed from the tables)
        None => (18.0, 0.60, "n-from-family"),
    };
    LogSpread {
        median,
        sd_ln,
        basis: Basis::Assumed,
        sources: Vec::new(),
        note: Some(note),
    }
}

/// Standard deviation of the logarithms: a genus of dwarfs and giants says little about one of its species.
fn spread_of_logs(values: &[f64]) -> f64 {
    let count = values.len() as f64;
    let logs = || values.iter().map(|v| math::ln(*v));
    let mean = logs().sum::<f64>() / count;
    (logs().map(|l| (l - mean) * (l - mean)).sum::<f64>() / count).sqrt()
}

/// N as the species row states it: a range, or a description's maximum, which is no target: a full crown is taken as
/// 0.8 of it (assumed), for *Phoenix* as 2.5 times it, since maxima there are 2 to 3 times too low.
fn stated_crown(species: &Species) -> Option<LogSpread> {
    let row = species.live_leaves.as_ref()?;
    let (median, sd_ln, note) = match row.value.low {
        Some(low) => {
            let width = math::ln(row.value.high / low) / 4.0;
            (
                (low * row.value.high).sqrt(),
                combined(width, SD_STATED),
                None,
            )
        }
        None if species.genus() == "Phoenix" => {
            (2.5 * row.value.high, 0.40, Some("n-from-maximum-phoenix"))
        }
        None => (0.8 * row.value.high, 0.25, Some("n-from-maximum")),
    };
    Some(LogSpread {
        median,
        sd_ln,
        basis: row.basis,
        sources: row.sources.clone(),
        note,
    })
}

/// r of a palm: keeper, species row, else about one a month [jarvis-pasco] with a wide spread.
fn fronds_per_year(palm: &Palm, species: Option<&Species>) -> LogSpread {
    if let Some(r) = palm.fronds_per_year {
        return LogSpread {
            median: r,
            sd_ln: SD_STATED,
            basis: Basis::Keeper,
            sources: Vec::new(),
            note: None,
        };
    }
    match species.and_then(|s| s.leaves_per_year.as_ref()) {
        Some(row) => {
            let low = row.value.low.unwrap_or(row.value.high);
            let width = math::ln(row.value.high / low) / 4.0;
            LogSpread {
                median: (low * row.value.high).sqrt(),
                sd_ln: combined(width, SD_VIGOUR[0]),
                basis: row.basis,
                sources: row.sources.clone(),
                note: None,
            }
        }
        None => LogSpread {
            median: 12.0,
            sd_ln: SD_VIGOUR[1],
            basis: Basis::Assumed,
            sources: vec![SourceKey::new("jarvis-pasco")],
            note: Some("r-about-one-a-month"),
        },
    }
}

/// How long dead fronds stay on; where nobody says, anything from a month to ten years.
fn hang(species: Option<&Species>) -> Hang {
    let clean = species.and_then(|s| Species::known(&s.self_cleaning));
    let crownshaft = species
        .and_then(|s| Species::known(&s.crownshaft))
        .unwrap_or(false);
    match clean {
        Some(SelfCleaning::Yes) => Hang::Falls {
            days: FALLS_AFTER_DAYS,
        },
        Some(SelfCleaning::Partly) => Hang::Between {
            low: 30.0,
            high: 365.0,
        },
        Some(SelfCleaning::No) => Hang::UntilCut,
        None if crownshaft => Hang::Falls {
            days: FALLS_AFTER_DAYS,
        },
        None => Hang::Between {
            low: 30.0,
            high: 3650.0,
        },
    }
}

fn normalised(weights: [f64; 4]) -> [f64; 4] {
    let sum: f64 = weights.iter().sum();
    weights.map(|w| w / sum)
}

/// Spread of a sum of two independent errors; only correctly rounded operations.
fn combined(a: f64, b: f64) -> f64 {
    (a * a + b * b).sqrt()
}
