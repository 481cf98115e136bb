//! Blade sets in rotation: the question as it was typed, and the answer as a sentence, tables and a drawing.

mod ask;
pub mod draw;
#[cfg(test)]
mod tests;

pub use ask::{MOST_PALMS, Question, Trouble};

use super::blades::bath::{MixChoice, mix_choices};
use super::said::{Said, Speaker};
use crate::office::Office;
use crate::rotating::{Made, figure, letter, made, sentence, span, too_short};
use ask::Round;
use draw::Drawing;
use model::BladeKind;

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct RotationView {
    /// Grounds with palms that stand: name as registered, and in words with how many.
    pub sites: Vec<(String, String)>,
    /// Mixes that can be enough, for the list.
    pub mixes: Vec<MixChoice>,
    /// What is wrong with the question.
    pub troubles: Vec<Trouble>,
    /// The answer; `None` where nothing was asked, or the question is wrong.
    pub answer: Option<Answer>,
}

/// The answer.
#[derive(Clone, PartialEq, Debug)]
pub struct Answer {
    /// In a sentence.
    pub sentence: String,
    /// Whether the crew waits.
    pub waits: bool,
    /// Why the minutes of soak that were typed are not enough for the mix; empty if they are.
    pub short: Vec<Said>,
    /// Other numbers of sets.
    pub choices: Vec<ChoiceRow>,
    /// Lanes.
    pub drawing: Drawing,
    /// Palm by palm.
    pub turns: Vec<TurnRow>,
    /// What it rests on.
    pub notes: Vec<String>,
    /// Where the minutes of soak come from.
    pub why: Vec<Said>,
    /// Cautions of the agent.
    pub cautions: Vec<Said>,
}

/// A number of sets.
#[derive(Clone, PartialEq, Debug)]
pub struct ChoiceRow {
    /// How many.
    pub sets: usize,
    /// Waiting in all, in words.
    pub waits: String,
    /// The end, in words.
    pub done: String,
    /// It is what was asked.
    pub asked: bool,
    /// It is the fewest without waiting.
    pub fewest: bool,
}

/// A cut in the table.
#[derive(Clone, PartialEq, Debug)]
pub struct TurnRow {
    /// The palm's tag, or its number in the round.
    pub palm: String,
    /// Whether that is a palm of the register.
    pub registered: bool,
    /// The set.
    pub set: String,
    /// Start, as hours and minutes.
    pub start: String,
    /// Minutes waited; empty for none.
    pub wait: String,
    /// End, as hours and minutes.
    pub end: String,
    /// Into the bath and out of it; nothing where the set goes on.
    pub bath: Option<(String, String)>,
}

/// What the page shows for a question.
pub fn view(speaker: &Speaker, office: &Office, question: &Question) -> RotationView {
    let mut mixes = mix_choices(speaker);
    mixes.retain(|mix| mix.sound && mix.in_bath);
    let (troubles, answer) = match ask::round(speaker, office, question) {
        None => (Vec::new(), None),
        Some(Err(troubles)) => (troubles, None),
        Some(Ok(round)) => (Vec::new(), answer(speaker, round)),
    };
    RotationView {
        sites: ask::sites(speaker, office),
        mixes,
        troubles,
        answer,
    }
}

fn answer(speaker: &Speaker, round: Round) -> Option<Answer> {
    let made = made(round.cuts.clone(), round.kit)?;
    let measure = &speaker.measure;
    let short = match (&round.needed, round.own_soak) {
        (Some(needed), Some(minutes)) => too_short(needed, minutes, None),
        _ => Vec::new(),
    };
    let why = match (&round.needed, round.own_soak) {
        (Some(needed), None) => speaker.findings(&needed.findings),
        _ => Vec::new(),
    };
    let cautions = round.needed.as_ref().map_or_else(Vec::new, |needed| {
        care::clean::cautions(BladeKind::HandSaw, &needed.agent, speaker.knowledge)
    });
    Some(Answer {
        sentence: sentence(measure, &made),
        waits: made.plan.waiting_min > 0.0,
        short: speaker.findings(&short),
        choices: choices(speaker, &made),
        drawing: draw::drawing(speaker, &made),
        turns: turns(speaker, &made, round.registered),
        notes: notes(speaker, &made, &round),
        why,
        cautions: speaker.findings(&cautions),
    })
}

fn choices(speaker: &Speaker, made: &Made) -> Vec<ChoiceRow> {
    let measure = &speaker.measure;
    let row = |choice: &crate::rotating::Choice| ChoiceRow {
        sets: choice.sets,
        waits: span(measure, choice.waiting_min),
        done: span(measure, choice.makespan_min),
        asked: choice.sets == made.kit.sets,
        fewest: choice.sets == made.fewest,
    };
    made.choices.iter().map(row).collect()
}

fn turns(speaker: &Speaker, made: &Made, registered: bool) -> Vec<TurnRow> {
    let rows = made.plan.turns.iter().zip(made.soaks());
    rows.map(|(turn, soak)| TurnRow {
        palm: made.cuts[turn.job].tag.clone(),
        registered,
        set: letter(turn.set),
        start: clock(turn.start),
        wait: match turn.waited > 0.0 {
            true => span(&speaker.measure, turn.waited),
            false => String::new(),
        },
        end: clock(turn.end),
        bath: soak.map(|soak| (clock(soak.into_bath), clock(soak.out_of_bath))),
    })
    .collect()
}

fn notes(speaker: &Speaker, made: &Made, round: &Round) -> Vec<String> {
    let (measure, kit) = (&speaker.measure, &made.kit);
    let number = |minutes: f64| measure.number(minutes, 2);
    let min = ("min", number(kit.soak_min).into());
    let soak = match &round.needed {
        Some(needed) if round.own_soak.is_none() => {
            let agent = super::blades::log::agent_name(speaker, &needed.agent);
            let strength = needed.strength_pct.map(figure);
            let strength = strength.unwrap_or_else(|| "none".to_owned());
            let args = [min, ("agent", agent.into()), ("strength", strength.into())];
            speaker.text("rotation-soak-from", &args)
        }
        _ => speaker.text("rotation-soak-own", &[min]),
    };
    let hands = [
        ("brush", number(kit.brush_min).into()),
        ("rinse", number(kit.rinse_min).into()),
    ];
    let clean = [
        ("all", span(measure, made.plan.all_clean_min).into()),
        ("baths", (made.plan.baths as i64).into()),
    ];
    let mut notes = vec![
        soak,
        speaker.text("rotation-assumed", &hands),
        speaker.text("rotation-all-clean", &clean),
        speaker.say("rotation-order"),
    ];
    let count = |n: usize| [("n", (n as i64).into())];
    if round.left_out > 0 {
        notes.push(speaker.text("rotation-left-out", &count(round.left_out)));
    }
    if round.cut_short {
        notes.push(speaker.text("rotation-cut-short", &count(made.cuts.len())));
    }
    notes
}

/// Minutes from the start as hours and minutes: "1:05".
pub fn clock(minutes: f64) -> String {
    let whole = minutes.round() as i64;
    format!("{}:{:02}", whole / 60, whole % 60)
}
