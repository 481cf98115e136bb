//! What could it be: the judgement of a palm, in words.

mod holds;
mod ranking;
mod sides;

pub use holds::{AdviceView, advice, what_to_do};
pub use ranking::{Chip, RankView};
pub use sides::{SideOf, SidesView, SwingView};

use super::disorders::{DisagreementView, disagreements_about};
use super::picker;
use super::said::{Said, Speaker};
use crate::judging::{self, Judged, Told};
use crate::office::Office;
use care::judge::{Judgement, NextLook, TellApart};
use model::{Arg, Finding, PalmRecord};

/// So many disorders stand open; the others are folded (assumed).
const OPEN: usize = 3;
/// Disorders less probable than this are not listed (assumed).
const LEAST: f64 = 0.005;
/// So many looks are offered.
const LOOKS: usize = 4;
/// A firm spear is noted at nearly every look, and hardly tells anything by itself.
const SPEAR_FIRM: &str = "spear-firm";
/// So many signs are named for each side of a pair.
const PARTING: usize = 4;

/// The section of a palm's page.
#[derive(Clone, PartialEq, Debug)]
pub struct JudgementView {
    /// Whether any sign was seen, or looked for, beyond a firm spear.
    pub told: bool,
    /// What it rests on: the day, signs, counts.
    pub rests_on: String,
    /// The most probable disorders.
    pub open: Vec<RankView>,
    /// The others that are worth a line.
    pub folded: Vec<RankView>,
    /// "Nothing but ordinary ageing: 12%."
    pub nothing: String,
    /// The sets that explain it best: "Potassium deficiency with Magnesium deficiency: 40%".
    pub together: Vec<String>,
    /// Looks worth taking, best first.
    pub next: Vec<LookView>,
    /// "Doubt left: 1.8 bits."
    pub doubt: String,
    /// Nobody cuts while these are suspected.
    pub holds: Vec<AdviceView>,
    /// What the first is most easily taken for.
    pub apart: Vec<ApartView>,
    /// The move beside hunger, where that is the question.
    pub sides: Option<SidesView>,
    /// Unknown and contradictory signs.
    pub findings: Vec<Said>,
    /// Where those who should know do not agree, about the disorders that stand open.
    pub disagree: Vec<DisagreementView>,
}

/// A look worth taking.
#[derive(Clone, PartialEq, Debug)]
pub struct LookView {
    /// Key of the sign.
    pub sign: String,
    /// Its name.
    pub name: String,
    /// How to look.
    pub how: String,
    /// How long it takes.
    pub takes: String,
    /// What it is worth: doubt it is expected to take away.
    pub worth: String,
    /// What it would change if it is there, and if not.
    pub turns: [String; 2],
}

/// Two disorders that look alike, and what parts them.
#[derive(Clone, PartialEq, Debug)]
pub struct ApartView {
    /// The leading one: key and name.
    pub this: (&'static str, String),
    /// The one it is taken for: key and name.
    pub other: (&'static str, String),
    /// Names of signs that would speak for the first.
    pub for_this: Vec<String>,
    /// Names of signs that would speak for the second.
    pub for_other: Vec<String>,
}

/// A judgement in words. `set` are the reasons of the holds in force.
pub fn view(speaker: &Speaker, judged: &Judged, set: &[&str]) -> JudgementView {
    let (told, judgement) = (&judged.told, &judged.judgement);
    let ranked: Vec<RankView> = judgement
        .ranked
        .iter()
        .filter(|rank| rank.disorder != care::judge::AGEING)
        .enumerate()
        .filter(|(at, rank)| *at < OPEN || rank.probability >= LEAST)
        .map(|(_, rank)| ranking::view(speaker, rank))
        .collect();
    let (open, folded) = ranked.split_at(ranked.len().min(OPEN));
    let keys: Vec<&str> = open.iter().map(|rank| rank.key).collect();
    JudgementView {
        told: told
            .seen
            .iter()
            .chain(&told.absent)
            .any(|key| key != SPEAR_FIRM),
        rests_on: rests_on(speaker, told),
        open: open.to_vec(),
        folded: folded.to_vec(),
        nothing: share(speaker, "signs-nothing", judgement.nothing),
        together: together(speaker, judgement),
        next: looks(speaker, judgement),
        doubt: bits(speaker, "signs-doubt", judgement.doubt_bits),
        holds: judgement
            .holds
            .iter()
            .map(|hold| advice(speaker, hold, set))
            .collect(),
        apart: judgement
            .apart
            .iter()
            .map(|pair| apart(speaker, pair))
            .collect(),
        sides: sides::view(speaker, told),
        findings: remarks(speaker, &judgement.findings),
        disagree: disagreements_about(speaker, &keys),
    }
}

/// What is to be said about what was noted. That nothing was noted the section says itself.
fn remarks(speaker: &Speaker, findings: &[Finding]) -> Vec<Said> {
    let told = findings
        .iter()
        .filter(|finding| finding.code != "judge-nothing-told");
    told.map(|finding| {
        let mut finding = finding.clone();
        for (name, arg) in &mut finding.args {
            if let ("sign", Arg::Text(key)) = (*name, &*arg) {
                *arg = Arg::Text(picker::name_of(speaker, key));
            }
        }
        speaker.finding(&finding)
    })
    .collect()
}

/// What an inspection form says beforehand: the looks that are worth most, and the holds that the signs ask for.
pub fn before_a_look(
    speaker: &Speaker,
    office: &Office,
    record: &PalmRecord,
) -> (Vec<LookView>, Vec<AdviceView>) {
    let Some(reading) = office.reading(record.id) else {
        return (Vec::new(), Vec::new());
    };
    let judgement = judging::of_record(office, record, &reading).judgement;
    let set: Vec<&str> = record
        .holds_on(office.today())
        .map(|hold| hold.reason.as_str())
        .collect();
    let advised = judgement
        .holds
        .iter()
        .map(|hold| advice(speaker, hold, &set));
    (looks(speaker, &judgement), advised.collect())
}

/// The looks that are worth most now.
fn looks(speaker: &Speaker, judgement: &Judgement) -> Vec<LookView> {
    judgement
        .next
        .iter()
        .take(LOOKS)
        .map(|next| look(speaker, next))
        .collect()
}

/// The name of a disorder; its key where the table does not have it.
pub fn disorder_name(speaker: &Speaker, key: &str) -> String {
    let row = speaker.knowledge.disorder(key);
    row.map_or_else(|| key.to_owned(), |row| speaker.texts(&row.name).to_owned())
}

fn rests_on(speaker: &Speaker, told: &Told) -> String {
    let number = |n: usize| i64::try_from(n).unwrap_or(0).into();
    let on = told.on.map_or_else(
        || speaker.say("common-unknown"),
        |day| speaker.measure.date(day),
    );
    let counts = if told.counts.is_some() {
        "signs-with-counts"
    } else {
        "signs-without-counts"
    };
    let args = [
        ("on", on.into()),
        ("seen", number(told.seen.len())),
        ("absent", number(told.absent.len())),
        ("counts", speaker.say(counts).into()),
    ];
    speaker.text("signs-rests-on", &args)
}

fn share(speaker: &Speaker, code: &str, p: f64) -> String {
    speaker.text(code, &[("share", speaker.measure.percent(p).into())])
}

fn bits(speaker: &Speaker, code: &str, bits: f64) -> String {
    speaker.text(code, &[("bits", speaker.measure.number(bits, 2).into())])
}

/// Sets of one or two; what stands alone is in the ranking already, so pairs only, and only if one is worth a line.
fn together(speaker: &Speaker, judgement: &Judgement) -> Vec<String> {
    let pairs = judgement
        .together
        .iter()
        .filter(|(set, p)| set.len() > 1 && *p >= 0.02);
    let line = |(set, p): &(Vec<&'static str>, f64)| {
        let names: Vec<String> = set.iter().map(|key| disorder_name(speaker, key)).collect();
        let args = [
            ("names", names.join(" + ").into()),
            ("share", speaker.measure.percent(*p).into()),
        ];
        speaker.text("signs-together-line", &args)
    };
    pairs.map(line).collect()
}

fn look(speaker: &Speaker, next: &NextLook) -> LookView {
    let row = speaker.knowledge.sign(next.sign);
    let worth = [
        ("bits", speaker.measure.number(next.bits, 2).into()),
        (
            "rate",
            speaker.measure.number(next.bits_per_minute, 2).into(),
        ),
        ("chance", speaker.measure.percent(next.chance).into()),
    ];
    let turn = |code: &str, (key, p): (&str, f64)| {
        let args = [
            ("name", disorder_name(speaker, key).into()),
            ("share", speaker.measure.percent(p).into()),
        ];
        speaker.text(code, &args)
    };
    LookView {
        sign: next.sign.to_owned(),
        name: picker::name_of(speaker, next.sign),
        how: row.map_or_else(String::new, |row| speaker.texts(&row.how).to_owned()),
        takes: row.map_or_else(String::new, |row| picker::minutes(speaker, row.minutes)),
        worth: speaker.text("signs-worth", &worth),
        turns: [
            turn("signs-if-there", next.if_there),
            turn("signs-if-not", next.if_not),
        ],
    }
}

fn apart(speaker: &Speaker, pair: &TellApart) -> ApartView {
    let names = |keys: &[&'static str]| {
        let some = keys.iter().take(PARTING);
        some.map(|key| picker::name_of(speaker, key)).collect()
    };
    ApartView {
        this: (pair.this, disorder_name(speaker, pair.this)),
        other: (pair.other, disorder_name(speaker, pair.other)),
        for_this: names(&pair.for_this),
        for_other: names(&pair.for_other),
    }
}

#[cfg(test)]
mod tests;
