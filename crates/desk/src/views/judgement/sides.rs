//! The keeper's central question: is it the move, or is it hungry? Both side by side, and what would change the call.

use super::super::picker;
use super::super::said::Speaker;
use super::ranking::{Chip, chips};
use crate::judging::Told;
use care::judge::{Judge, MoveOrHunger, Side, Swing, level, move_or_hunger};

/// A palm moved so many days ago is asked about: five years, the longest that settling is said to take.
const SETTLING_DAYS: i32 = 5 * 365;
/// From this probability on either of the two is in question (assumed).
const IN_QUESTION: f64 = 0.3;
/// A shortage less probable than this is not named (assumed).
const NAMED: f64 = 0.05;
/// So many shortages are named.
const WHICH: usize = 3;
/// So many signs that would change the call are named.
const SWINGS: usize = 4;

/// The two, side by side.
#[derive(Clone, PartialEq, Debug)]
pub struct SidesView {
    /// The call in a word: `move`, `hunger`, `both`, `neither`.
    pub call: &'static str,
    /// The call in a sentence.
    pub headline: String,
    /// The move.
    pub moved: SideOf,
    /// Hunger.
    pub hungry: SideOf,
    /// Which hunger: key of the disorder, name with its probability.
    pub which: Vec<(&'static str, String)>,
    /// What would change the call.
    pub changes: Vec<SwingView>,
}

/// One of the two.
#[derive(Clone, PartialEq, Debug)]
pub struct SideOf {
    /// Its name.
    pub name: String,
    /// Its probability in words and as a number.
    pub likelihood: String,
    /// The length of its bar, percent.
    pub length: f64,
    /// What speaks for it, strongest first.
    pub for_it: Vec<Chip>,
    /// What speaks against it, strongest first.
    pub against: Vec<Chip>,
}

/// A sign not yet looked for that would move the two against each other.
#[derive(Clone, PartialEq, Debug)]
pub struct SwingView {
    /// Its key.
    pub sign: String,
    /// Its name.
    pub name: String,
    /// What either answer would make of the two.
    pub says: String,
    /// Whether one of the answers would change the call.
    pub changes_call: bool,
}

/// Both sides, where that is the question: the palm was moved within five years, or one of the two is likely enough.
pub fn view(speaker: &Speaker, told: &Told) -> Option<SidesView> {
    let both = move_or_hunger(Judge::embedded(), &told.evidence());
    let moved = told
        .moved_on
        .zip(told.on)
        .is_some_and(|(moved, on)| (0..=SETTLING_DAYS).contains(&on.since(moved)));
    let in_question = both.moved.probability.max(both.hungry.probability) >= IN_QUESTION;
    (moved || in_question).then(|| sides(speaker, &both))
}

fn sides(speaker: &Speaker, both: &MoveOrHunger) -> SidesView {
    let call = both.call.key();
    let which = both
        .which_hunger
        .iter()
        .filter(|(_, p)| *p >= NAMED)
        .take(WHICH);
    SidesView {
        call,
        headline: speaker.say(&format!("sides-call-{call}")),
        moved: side(speaker, "sides-move", &both.moved),
        hungry: side(speaker, "sides-hunger", &both.hungry),
        which: which
            .map(|(key, p)| (*key, named(speaker, key, *p)))
            .collect(),
        changes: both
            .changes
            .iter()
            .take(SWINGS)
            .map(|s| swing(speaker, s))
            .collect(),
    }
}

fn side(speaker: &Speaker, name: &str, side: &Side) -> SideOf {
    let words = speaker.say(&format!("level-{}", level(side.probability)));
    let args = [
        ("words", words.into()),
        ("share", speaker.measure.percent(side.probability).into()),
    ];
    SideOf {
        name: speaker.say(name),
        likelihood: speaker.text("sides-likelihood", &args),
        length: (side.probability * 1000.0).round() / 10.0,
        for_it: chips(speaker, &side.for_it),
        against: chips(speaker, &side.against),
    }
}

fn named(speaker: &Speaker, key: &str, p: f64) -> String {
    let args = [
        ("name", super::disorder_name(speaker, key).into()),
        ("share", speaker.measure.percent(p).into()),
    ];
    speaker.text("sides-which-line", &args)
}

fn swing(speaker: &Speaker, swing: &Swing) -> SwingView {
    let p = |p: f64| speaker.measure.percent(p).into();
    let args = [
        ("move", p(swing.if_there.0)),
        ("hunger", p(swing.if_there.1)),
        ("move2", p(swing.if_not.0)),
        ("hunger2", p(swing.if_not.1)),
    ];
    SwingView {
        sign: swing.sign.to_owned(),
        name: picker::name_of(speaker, swing.sign),
        says: speaker.text("sides-swing", &args),
        changes_call: swing.changes_call,
    }
}
