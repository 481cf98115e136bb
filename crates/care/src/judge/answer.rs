//! What a judgement is told and what it answers: plain values.

use model::knowledge::HoldKind;
use model::{Day, Finding, Species};

/// All that is known of a palm when it is judged. Signs are keys of `signs.csv`; keys the table does not know are
/// answered with a finding and weigh nothing.
#[derive(Clone, Debug, Default)]
pub struct Evidence<'a> {
    /// The species row, if the name resolves.
    pub species: Option<&'a Species>,
    /// The name as the keeper wrote it: its genus counts where the row is missing.
    pub species_name: &'a str,
    /// Signs seen.
    pub seen: &'a [String],
    /// Signs looked for and not there. A sign in both lists is a finding and weighs nothing.
    pub absent: &'a [String],
    /// The day of the judgement; `None`: season and times since unknown.
    pub on: Option<Day>,
    /// South of the equator the seasons are shifted by half a year; `None`: unknown, taken as north.
    pub latitude: Option<f64>,
    /// Day it was dug and moved.
    pub moved_on: Option<Day>,
    /// Day it was planted where it stands.
    pub planted_on: Option<Day>,
    /// Day of the last frost that may have hurt it.
    pub frost_on: Option<Day>,
    /// Day of the last storm that may have hurt it.
    pub storm_on: Option<Day>,
    /// How well each explanation of the crown model (order of `crown::Explanation::ALL`) explains the counts: relative
    /// likelihoods, any scale, 0 where it does not apply; `None`: no counts. `crown` gives them as probability divided by
    /// prior weight.
    pub counts: Option<[f64; 4]>,
}

/// The answer.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Judgement {
    /// Every disorder of the table, most probable first; equal ones in the order of the table.
    pub ranked: Vec<Ranked>,
    /// Probability that nothing but ordinary ageing is at work.
    pub nothing: f64,
    /// The looks that shrink the doubt most per minute, best first.
    pub next: Vec<NextLook>,
    /// Nobody cuts while these are suspected, worst first.
    pub holds: Vec<HoldAdvice>,
    /// The disorders most easily taken for the first, with what tells them apart.
    pub apart: Vec<TellApart>,
    /// The two sets of disorders that explain it best, as keys, with their probability: one, two, or none in each.
    pub together: Vec<(Vec<&'static str>, f64)>,
    /// Unknown or contradictory signs, a species without a row, nothing told.
    pub findings: Vec<Finding>,
    /// Doubt left, in bits, over the sets.
    pub doubt_bits: f64,
}

/// One disorder in the ranking. Keys are keys of `disorders.csv`.
#[derive(Clone, PartialEq, Debug)]
pub struct Ranked {
    /// Which.
    pub disorder: &'static str,
    /// Probability that it is at work (several may be), 0..=1.
    pub probability: f64,
    /// In words: key of the level, see [`crate::judge`]'s `LEVELS`: `nearly-sure`, `likely`, `open`, `unlikely`, `hardly`.
    pub level: &'static str,
    /// What speaks for it, strongest first.
    pub for_it: Vec<Speaks>,
    /// What speaks against it, strongest first.
    pub against: Vec<Speaks>,
}

/// One thing that speaks for or against a disorder.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Speaks {
    /// What.
    pub what: WeightOf,
    /// Factor on the odds of the disorder, above 1 for, below 1 against (everything else held).
    pub factor: f64,
}

/// Where a factor comes from.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum WeightOf {
    /// A sign that was seen.
    Seen(&'static str),
    /// A sign looked for and not there.
    NotThere(&'static str),
    /// The species, as a host.
    Host,
    /// The season.
    Season,
    /// The time since the move or the planting.
    Move,
    /// The time since a frost.
    Frost,
    /// The time since a storm.
    Storm,
    /// The counts.
    Counts,
}

/// A look worth taking.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct NextLook {
    /// The sign to look for; its row says how and how long it takes.
    pub sign: &'static str,
    /// Chance that it will be there, 0..=1.
    pub chance: f64,
    /// Doubt it is expected to take away, in bits.
    pub bits: f64,
    /// The same per minute.
    pub bits_per_minute: f64,
    /// The disorder that gains most if it is there, and the probability it would then have.
    pub if_there: (&'static str, f64),
    /// The disorder that would lead if it is not there, and its probability then.
    pub if_not: (&'static str, f64),
}

/// Two disorders and the signs that part them.
#[derive(Clone, PartialEq, Debug)]
pub struct TellApart {
    /// The leading one.
    pub this: &'static str,
    /// The one it is taken for.
    pub other: &'static str,
    /// Signs that would speak for the first, strongest first.
    pub for_this: Vec<&'static str>,
    /// Signs that would speak for the second.
    pub for_other: Vec<&'static str>,
}

/// Nobody cuts, and why. The words for what to do instead, whom to tell and what ends it go by the reason code.
#[derive(Clone, PartialEq, Debug)]
pub struct HoldAdvice {
    /// Kind, with its reason code.
    pub kind: HoldKind,
    /// Probability that one of the disorders behind it is at work.
    pub probability: f64,
    /// The disorders behind it, most probable first.
    pub because: Vec<&'static str>,
    /// Whether the probability alone calls for it.
    pub likely: bool,
    /// A sign that alone calls for the hold, whatever the probability (a conk, a spear that pulls out).
    pub sign: Option<&'static str>,
}

/// The move and hunger side by side.
#[derive(Clone, PartialEq, Debug)]
pub struct MoveOrHunger {
    /// The move: the shedding and the slow growth after it.
    pub moved: Side,
    /// Hunger: any shortage of a nutrient.
    pub hungry: Side,
    /// In a word.
    pub call: Call,
    /// The shortages with their probabilities, most probable first.
    pub which_hunger: Vec<(&'static str, f64)>,
    /// Signs not yet looked for that would change the call, the largest expected swing first.
    pub changes: Vec<Swing>,
}

/// One of the two explanations.
#[derive(Clone, PartialEq, Debug)]
pub struct Side {
    /// Probability that it is at work (both may be), 0..=1.
    pub probability: f64,
    /// What speaks for it, strongest first.
    pub for_it: Vec<Speaks>,
    /// What speaks against it, strongest first.
    pub against: Vec<Speaks>,
}

/// Which of the two is at least as probable as not.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Call {
    /// The move.
    Move,
    /// Hunger.
    Hunger,
    /// Both at once.
    Both,
    /// Neither.
    Neither,
}

impl Call {
    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            Call::Move => "move",
            Call::Hunger => "hunger",
            Call::Both => "both",
            Call::Neither => "neither",
        }
    }
}

/// What one more sign would do to the two probabilities.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Swing {
    /// The sign.
    pub sign: &'static str,
    /// Chance that it is there, 0..=1.
    pub chance: f64,
    /// By how much the difference between the two is expected to move, 0..=2.
    pub swing: f64,
    /// Probability of the move and of hunger if it is there.
    pub if_there: (f64, f64),
    /// The same if it is not.
    pub if_not: (f64, f64),
    /// Whether one of the answers would change the call.
    pub changes_call: bool,
}
