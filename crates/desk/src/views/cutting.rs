//! The cut plan in words.

use super::said::{Said, Speaker};
use care::{CutPlan, Method, Stand, StubLength, Tool};
use crown::Cut;

/// A labelled line.
#[derive(Clone, PartialEq, Debug)]
pub struct Line {
    /// What it is.
    pub name: String,
    /// What it says.
    pub value: String,
}

/// The plan of one stem.
#[derive(Clone, PartialEq, Debug)]
pub struct CuttingView {
    /// Why nobody cuts; empty when nothing holds.
    pub holds: Vec<Said>,
    /// What comes off on the visit.
    pub take: String,
    /// The most that may come off if more is asked.
    pub if_asked: String,
    /// What stays whatever is asked.
    pub stay: String,
    /// Stub, tool, stand.
    pub how: Vec<Line>,
    /// Rules behind what comes off and what stays.
    pub rules: Vec<Said>,
    /// Rules behind how to cut.
    pub method: Vec<Said>,
    /// Cautions to read before the work.
    pub cautions: Vec<Said>,
    /// Whether anything at all comes off on the visit.
    pub any: bool,
}

/// A plan in words.
pub fn view(speaker: &Speaker, plan: &CutPlan) -> CuttingView {
    CuttingView {
        holds: speaker.findings(&plan.holds),
        take: if plan.holds.is_empty() {
            cut(speaker, plan.may_take)
        } else {
            speaker.say("cut-held")
        },
        if_asked: cut(speaker, plan.if_asked),
        stay: stay(speaker, plan),
        how: how(speaker, &plan.method),
        rules: speaker.findings(&plan.findings),
        method: speaker.findings(&plan.method.findings),
        cautions: cautions(speaker, plan),
        any: plan.may_take != Cut::NONE,
    }
}

/// The cautions without the sentence that ends each of them: the page says it once, after the last.
fn cautions(speaker: &Speaker, plan: &CutPlan) -> Vec<Said> {
    let closing = speaker.say("common-closing");
    let mut cautions = speaker.findings(&plan.cautions);
    for caution in &mut cautions {
        if let Some(words) = caution.text.strip_suffix(closing.as_str()) {
            caution.text = words.trim_end().to_owned();
        }
    }
    cautions
}

/// A cut in words: "3 brown and 2 green fronds", "nothing".
pub fn cut(speaker: &Speaker, cut: Cut) -> String {
    let parts: Vec<String> = [
        ("cut-brown", cut.brown),
        ("cut-yellowing", cut.yellowing),
        ("cut-green", cut.green),
    ]
    .into_iter()
    .filter(|(_, n)| *n > 0)
    .map(|(code, n)| speaker.text(code, &[("n", i64::from(n).into())]))
    .collect();
    if parts.is_empty() {
        speaker.say("cut-nothing")
    } else {
        parts.join(", ")
    }
}

fn stay(speaker: &Speaker, plan: &CutPlan) -> String {
    let stays = plan.must_stay;
    cut(
        speaker,
        Cut {
            green: stays.green,
            yellowing: stays.yellowing,
            brown: 0,
        },
    )
}

fn how(speaker: &Speaker, method: &Method) -> Vec<Line> {
    let tool = match method.tool {
        Tool::Hand => "tool-hand",
        Tool::Saw => "tool-saw",
    };
    let stand = match method.stand {
        Stand::Ground => "stand-ground",
        Stand::GroundWithPole => "stand-ground-with-pole",
        Stand::Lift => "stand-lift",
        Stand::LiftFromAbove => "stand-lift-from-above",
        Stand::Unknown => "stand-unknown",
    };
    let line = |name: &str, value: String| Line {
        name: speaker.say(name),
        value,
    };
    vec![
        line("cut-how-stub", stub(speaker, method.stub)),
        line("cut-how-tool", speaker.say(tool)),
        line("cut-how-stand", speaker.say(stand)),
    ]
}

fn stub(speaker: &Speaker, stub: Option<StubLength>) -> String {
    let Some(StubLength { low, high }) = stub else {
        return speaker.say("cut-how-no-stub");
    };
    let (low, high) = (
        speaker.measure.short_length(low),
        speaker.measure.short_length(high),
    );
    if low == high {
        return low;
    }
    speaker.text(
        "measure-range",
        &[("low", low.into()), ("high", high.into())],
    )
}
