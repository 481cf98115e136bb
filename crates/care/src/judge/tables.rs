//! Tables made once from the rows: the chance of every sign in every set.

use super::sets::Sets;
use super::weights::{ABOUT_ONE, BASE, Weights, about, possible};
use model::knowledge::{Course, DisorderRow, HoldKind, SignLink, SignRow, Strength, WeightRow};
use model::{Knowledge, math};

/// Key of the disorder that is none: it is always at work.
pub const AGEING: &str = "natural-senescence";
/// Signs that tell of what happened, not of what is seen: where the date is told they say nothing more.
pub const MOVED: &str = "recently-moved";
/// The same of a frost.
pub const FROST: &str = "recent-freeze";
/// The same of a storm.
pub const STORM: &str = "recent-storm";
/// Key of the disorder that only a move makes.
pub const THE_MOVE: &str = "transplant-shock";

/// The rows that a judge goes by.
#[derive(Clone, Copy, Debug)]
pub struct Rows<'a> {
    /// Signs.
    pub signs: &'static [SignRow],
    /// Disorders; [`AGEING`] among them or not.
    pub disorders: &'static [DisorderRow],
    /// What shows what.
    pub links: &'static [SignLink],
    /// The assumed numbers.
    pub weights: &'a [WeightRow],
}

impl Rows<'static> {
    /// The rows of the knowledge tables.
    pub fn of(knowledge: &'static Knowledge) -> Rows<'static> {
        Rows {
            signs: &knowledge.signs,
            disorders: &knowledge.disorders,
            links: &knowledge.sign_links,
            weights: &knowledge.weights,
        }
    }
}

/// Factors on one disorder by circumstance; 1 where nothing is said.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) struct ByCircumstance {
    /// Winter, spring, summer, autumn.
    pub season: [f64; 4],
    /// After a move, a frost, a storm; `None`: nothing is said.
    pub after: [Option<f64>; 3],
}

/// Everything that does not depend on the palm.
pub(super) struct Tables {
    pub signs: &'static [SignRow],
    pub disorders: &'static [DisorderRow],
    /// Disorders other than ageing.
    pub troubles: Vec<&'static DisorderRow>,
    /// Index among the troubles by row of `disorders`; `None`: ageing.
    pub trouble_of: Vec<Option<usize>>,
    pub weights: Weights,
    pub circumstances: Vec<ByCircumstance>,
    pub sets: Sets,
    /// Chance that a sign is there, `[sign * sets + set]`.
    pub seen_by_sign: Vec<f64>,
    /// The same, `[set * signs + sign]`.
    pub seen_by_set: Vec<f64>,
    /// Doubt in bits about a sign in a set, `[set * signs + sign]`.
    pub doubt_by_set: Vec<f64>,
    /// Factor on sets before all else: two declines at once.
    pub pair: Vec<f64>,
    /// Index into [`Course::ALL`] of the worst course in a set.
    pub course: Vec<usize>,
    /// Sets with a reason for each kind of hold, in the order of [`HoldKind::ALL`].
    pub held: Vec<Vec<usize>>,
}

impl Tables {
    pub fn of(rows: Rows) -> Tables {
        let troubles: Vec<_> = rows.disorders.iter().filter(|d| d.key != AGEING).collect();
        let at = |key: &str| troubles.iter().position(|t| t.key == key);
        let weights = Weights::of(rows.weights);
        let sets = Sets::over(troubles.len());
        let links = Links::of(&rows, &troubles, &weights);
        let chances = links.chances(&weights, &sets);
        let (signs, count) = (rows.signs.len(), sets.len());
        let turned: Vec<f64> = (0..count)
            .flat_map(|set| (0..signs).map(move |sign| (sign, set)))
            .map(|(sign, set)| chances[sign * count + set])
            .collect();
        let holds = |kind: HoldKind| {
            let wanted: Vec<bool> = troubles.iter().map(|t| t.hold == Some(kind)).collect();
            sets.with_any(&wanted)
        };
        Tables {
            signs: rows.signs,
            disorders: rows.disorders,
            trouble_of: rows.disorders.iter().map(|d| at(&d.key)).collect(),
            weights,
            circumstances: circumstances(&troubles, rows.weights),
            doubt_by_set: turned.iter().map(|p| bits(*p)).collect(),
            seen_by_sign: chances,
            seen_by_set: turned,
            pair: pairs(&troubles, &sets, &weights),
            course: (0..count)
                .map(|set| course(&troubles, &sets, set))
                .collect(),
            held: HoldKind::ALL.iter().map(|(kind, _)| holds(*kind)).collect(),
            troubles,
            sets,
        }
    }

    /// Index of a sign by its key.
    pub fn sign(&self, key: &str) -> Option<usize> {
        self.signs.iter().position(|row| row.key == key)
    }
}

/// Doubt about something with this chance, bits.
pub(super) fn bits(p: f64) -> f64 {
    let part = |p: f64| if p > 0.0 { -p * math::ln(p) } else { 0.0 };
    (part(p) + part(1.0 - p)) / std::f64::consts::LN_2
}

/// Strength of every link by disorder and sign; disorders in the order of the troubles, ageing last.
struct Links {
    troubles: usize,
    signs: usize,
    strength: Vec<Option<Strength>>,
    /// Chance of every sign without a cause that the tables know.
    base: Vec<f64>,
}

impl Links {
    fn of(rows: &Rows, troubles: &[&DisorderRow], weights: &Weights) -> Links {
        let (n, signs) = (troubles.len(), rows.signs.len());
        let mut strength = vec![None; (n + 1) * signs];
        for link in rows.links {
            let who = troubles
                .iter()
                .position(|t| t.key == link.disorder)
                .or_else(|| (link.disorder == AGEING).then_some(n));
            let what = rows.signs.iter().position(|s| s.key == link.sign);
            if let (Some(who), Some(what)) = (who, what) {
                strength[who * signs + what] = Some(link.strength);
            }
        }
        let base =
            |sign: &SignRow| possible(about(rows.weights, BASE, &sign.key).unwrap_or(weights.leak));
        Links {
            base: rows.signs.iter().map(base).collect(),
            troubles: n,
            signs,
            strength,
        }
    }

    /// `[sign * sets + set]`
    fn chances(&self, weights: &Weights, sets: &Sets) -> Vec<f64> {
        (0..self.signs)
            .flat_map(|sign| (0..sets.len()).map(move |set| (sign, set)))
            .map(|(sign, set)| self.chance(weights, sets, sign, set))
            .collect()
    }

    /// Noisy-or of the members, ageing behind them and a chance of its own. A member that speaks against the sign makes
    /// it less likely, unless another member shows it.
    fn chance(&self, weights: &Weights, sets: &Sets, sign: usize, set: usize) -> f64 {
        let strength = |who: usize| self.strength[who * self.signs + sign];
        let chance = |who: usize| strength(who).map_or(0.0, |s| weights.chance(s));
        let ageing = self.troubles;
        let behind = if set == 0 {
            1.0
        } else {
            weights.ageing_behind.min(1.0)
        };
        let mut missed = (1.0 - self.base[sign]) * (1.0 - behind * chance(ageing));
        let (mut shown, mut against) = (false, 0);
        let members = sets.of(set).chain((set == 0).then_some(ageing));
        for who in members {
            let p = chance(who);
            if who != ageing {
                missed *= 1.0 - p;
            }
            shown |= p > 0.0;
            against += u32::from(strength(who) == Some(Strength::Excludes));
        }
        let factor = weights.excludes.min(1.0);
        let less = if shown { 0 } else { against };
        (0..less).fold(1.0 - missed, |p, _| p * factor)
    }
}

fn circumstances(troubles: &[&DisorderRow], rows: &[WeightRow]) -> Vec<ByCircumstance> {
    let of = |trouble: &&DisorderRow| {
        let at = |k: usize| about(rows, ABOUT_ONE[k], &trouble.key);
        ByCircumstance {
            season: [0, 1, 2, 3].map(|k| at(k).unwrap_or(1.0)),
            after: [4, 5, 6].map(at),
        }
    };
    troubles.iter().map(of).collect()
}

fn pairs(troubles: &[&DisorderRow], sets: &Sets, weights: &Weights) -> Vec<f64> {
    let lethal = |set: usize| {
        sets.of(set)
            .filter(|m| troubles[*m].course == Course::Decline)
    };
    (0..sets.len())
        .map(|set| {
            if lethal(set).count() == 2 {
                weights.pair_lethal
            } else {
                1.0
            }
        })
        .collect()
}

/// Index of the worst course: decline before move before hunger before ageing.
fn course(troubles: &[&DisorderRow], sets: &Sets, set: usize) -> usize {
    let rank = |course: Course| match course {
        Course::Ageing => (0, 0),
        Course::Hunger => (1, 2),
        Course::Move => (2, 1),
        Course::Decline => (3, 3),
    };
    sets.of(set)
        .map(|m| rank(troubles[m].course))
        .max()
        .map_or(0, |(_, index)| index)
}
