//! "What if I am asked to take ...": the question and its answer in words.

use super::case::StemToday;
use super::cutting::{self, Line};
use super::said::{Said, Speaker};
use care::{AskedAnswer, Grounds, Verdict, asked, oldest_first};
use crown::{Cut, Recovery};
use model::Day;

/// What somebody asks to have taken off one stem.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Question {
    /// Live fronds, the lowest first; stands for green and yellowing together.
    pub live: Option<u32>,
    /// Wholly green fronds.
    pub green: Option<u32>,
    /// Partly dead fronds.
    pub yellowing: Option<u32>,
    /// Wholly dead fronds.
    pub brown: Option<u32>,
    /// Day of the visit after this one.
    pub next_visit: Option<Day>,
    /// What is known of the grounds and the weather, for the plan as for the answer.
    pub grounds: Grounds,
}

impl Question {
    /// Whether anything is asked for.
    pub fn asks(&self) -> bool {
        [self.live, self.green, self.yellowing, self.brown]
            .into_iter()
            .flatten()
            .any(|n| n > 0)
    }

    /// The cut it means on a stem.
    pub fn cut(&self, stem: &StemToday) -> Cut {
        let brown = self.brown.unwrap_or(0);
        match self.live {
            Some(live) => Cut {
                brown,
                ..oldest_first(&stem.case(), live)
            },
            None => Cut {
                green: self.green.unwrap_or(0),
                yellowing: self.yellowing.unwrap_or(0),
                brown,
            },
        }
    }
}

/// The answer.
#[derive(Clone, PartialEq, Debug)]
pub struct Answer {
    /// `allowed`, `partly`, `refused`.
    pub key: &'static str,
    /// The verdict in words.
    pub verdict: String,
    /// What was asked.
    pub asked: String,
    /// The nearest cut that is allowed.
    pub allowed: String,
    /// Reason first, then the rules.
    pub findings: Vec<Said>,
    /// What the asked cut would cost.
    pub cost: Vec<Line>,
    /// What the allowed cut would cost, where it is another one and takes live fronds.
    pub cost_if_allowed: Vec<Line>,
    /// The cut that was asked, for the drawing.
    pub cut: Cut,
}

/// Answers a question about a stem.
pub fn view(speaker: &Speaker, stem: &StemToday, question: &Question) -> Option<Answer> {
    if !question.asks() {
        return None;
    }
    let answer = asked(&stem.case(), question.cut(stem));
    let differs = answer.verdict != Verdict::Allowed;
    Some(Answer {
        key: answer.verdict.key(),
        verdict: speaker.say(&format!("verdict-{}", answer.verdict.key())),
        asked: cutting::cut(speaker, answer.asked),
        allowed: cutting::cut(speaker, answer.allowed),
        findings: speaker.findings(&answer.findings),
        cost: cost(speaker, &answer),
        cost_if_allowed: if differs && answer.allowed.live() > 0 {
            recovery(speaker, &answer.recovery_if_allowed)
        } else {
            Vec::new()
        },
        cut: answer.asked,
    })
}

fn cost(speaker: &Speaker, answer: &AskedAnswer) -> Vec<Line> {
    let left = super::outlook::cell(speaker, &answer.after.live);
    let value = [("n", left.median.into()), ("range", left.range.into())];
    let mut lines = vec![Line {
        name: speaker.say("asked-left"),
        value: speaker.text("reading-value", &value),
    }];
    lines.extend(recovery(speaker, &answer.recovery));
    lines
}

/// How long a crown needs, in lines.
pub fn recovery(speaker: &Speaker, recovery: &Recovery) -> Vec<Line> {
    let leaf = recovery.frond_months_lost.map(|x| speaker.measure.about(x));
    let [low, median, high] = leaf;
    let lost = [
        ("n", median.into()),
        ("low", low.into()),
        ("high", high.into()),
    ];
    vec![
        Line {
            name: speaker.say("recovery-level"),
            value: span(speaker, recovery.to_level),
        },
        Line {
            name: speaker.say("recovery-full"),
            value: span(speaker, recovery.to_full),
        },
        Line {
            name: speaker.say("recovery-frond-months"),
            value: speaker.text("recovery-frond-months-value", &lost),
        },
    ]
}

/// Days with their interval; a missing end lies beyond ten years.
fn span(speaker: &Speaker, [low, median, high]: [Option<f64>; 3]) -> String {
    let time = |days: Option<f64>| match days {
        Some(d) if d < 0.5 => speaker.say("recovery-at-once"),
        Some(d) => speaker.measure.duration(d),
        None => speaker.say("recovery-beyond"),
    };
    let (low, median, high) = (time(low), time(median), time(high));
    if low == high {
        return median;
    }
    speaker.text(
        "recovery-span",
        &[
            ("median", median.into()),
            ("low", low.into()),
            ("high", high.into()),
        ],
    )
}
