//! What blades did and what was done to them, in words: the log of a blade, and the cuts of a palm.

use super::palm_tag;
use crate::clock;
use crate::office::Office;
use crate::views::said::Speaker;
use care::clean::Adequacy;
use model::state::{BladeRecord, PalmRecord, Touch};
use model::{BladeId, Cleaning, CutMade, Moment, TakenOff};

/// One line of a blade's log.
#[derive(Clone, PartialEq, Debug)]
pub struct LogLine {
    /// When.
    pub when: String,
    /// `cut`, `adequate`, `short`, `unknown`, `lent`, `back`.
    pub key: &'static str,
    /// What happened.
    pub what: String,
    /// Its particulars; may be empty.
    pub detail: String,
    /// Tag of the palm it cut, for a link.
    pub palm: Option<String>,
    /// Why it cut although it was not clean for that palm; may be empty.
    pub despite: String,
}

/// One cut of a palm.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmCutLine {
    /// When.
    pub when: String,
    /// Tag of the blade, for a link.
    pub blade: String,
    /// The stem, if the palm has several, and what came off.
    pub detail: String,
    /// The last cleaning of the blade before: `adequate`, `short`, `unknown`, or `none`.
    pub key: &'static str,
    /// That cleaning in words.
    pub before: String,
    /// Palms the blade cut between that cleaning and this cut, first to last.
    pub between: Vec<String>,
    /// Why it was cut although the blade was not clean; may be empty.
    pub despite: String,
}

/// A blade's log, newest first.
pub fn of_blade(speaker: &Speaker, office: &Office, blade: &BladeRecord) -> Vec<LogLine> {
    let lines = blade.touches.iter().rev();
    lines
        .map(|touch| line(speaker, office, touch.at, &touch.what))
        .collect()
}

fn line(speaker: &Speaker, office: &Office, at: Moment, what: &Touch) -> LogLine {
    let plain = |key, what: String, detail: String| LogLine {
        when: clock::says(&speaker.measure, at),
        key,
        what,
        detail,
        palm: None,
        despite: String::new(),
    };
    match what {
        Touch::Cut(cut) => {
            let tag = palm_tag(&office.state(), cut.palm);
            let words = speaker.text("blades-log-cut", &[("tag", tag.clone().into())]);
            LogLine {
                palm: Some(tag),
                despite: cut.despite.clone(),
                ..plain("cut", words, cut_detail(speaker, cut, at))
            }
        }
        Touch::Cleaned(cleaning) => {
            let key = adequacy_key(super::adequacy(office, cleaning, at));
            let words = speaker.say(&format!("blades-log-cleaned-{key}"));
            plain(key, words, cleaning_words(speaker, cleaning))
        }
        Touch::Lent(to) => {
            let words = speaker.text("blades-log-lent", &[("to", to.clone().into())]);
            plain("lent", words, String::new())
        }
        Touch::Returned => plain("back", speaker.say("blades-log-back"), String::new()),
    }
}

/// `adequate`, `short` or `unknown`.
pub fn adequacy_key(adequacy: Adequacy) -> &'static str {
    match adequacy {
        Adequacy::Adequate => "adequate",
        Adequacy::Short { .. } => "short",
        Adequacy::Unknown => "unknown",
    }
}

/// How a blade was cleaned: agent, strength, contact, brush; what was not noted is said to be unknown.
pub fn cleaning_words(speaker: &Speaker, cleaning: &Cleaning) -> String {
    let measure = &speaker.measure;
    let agent = match cleaning.agent.as_str() {
        "" => speaker.say("blades-agent-unknown"),
        agent => agent_name(speaker, agent),
    };
    let strength = cleaning.strength_pct.map(|pct| {
        let args = [("n", measure.number(pct, 1).into())];
        speaker.text("blades-strength", &args)
    });
    let contact = match cleaning.contact_min {
        Some(minutes) => {
            let args = [("n", measure.number(minutes, 1).into())];
            speaker.text("blades-contact", &args)
        }
        None => speaker.say("blades-contact-unknown"),
    };
    let brushed = match cleaning.brushed {
        Some(true) => "blades-brushed",
        Some(false) => "blades-not-brushed",
        None => "blades-brushed-unknown",
    };
    let by = (!cleaning.by.is_empty()).then(|| cleaning.by.clone());
    [
        Some(agent),
        strength,
        Some(contact),
        Some(speaker.say(brushed)),
        by,
    ]
    .into_iter()
    .flatten()
    .collect::<Vec<_>>()
    .join(", ")
}

/// The name of an agent of the cleaner table; another word stands for itself.
pub fn agent_name(speaker: &Speaker, agent: &str) -> String {
    let rows = &speaker.knowledge.cleaners;
    rows.iter().find(|row| row.agent == agent).map_or_else(
        || agent.to_owned(),
        |row| super::said_in(speaker, &row.name).to_owned(),
    )
}

/// Stem, what came off, how long it took, who.
fn cut_detail(speaker: &Speaker, cut: &CutMade, at: Moment) -> String {
    let stem = [("n", i64::from(cut.stem).into())];
    let mut parts = vec![speaker.text("blades-stem", &stem)];
    parts.extend(off_words(speaker, &cut.off));
    if let Some(started) = cut.started.filter(|s| *s < at) {
        let minutes = ((at.0 - started.0) as f64 / 60_000.0).ceil();
        parts.push(speaker.text("blades-took", &[("n", minutes.into())]));
    }
    for words in [&cut.crew, &cut.notes] {
        if !words.is_empty() {
            parts.push(words.clone());
        }
    }
    parts.join(", ")
}

fn off_words(speaker: &Speaker, off: &TakenOff) -> Vec<String> {
    let parts = [
        ("blades-off-green", off.green),
        ("blades-off-yellowing", off.yellowing),
        ("blades-off-brown", off.brown),
        ("blades-off-stalks", off.stalks),
    ];
    parts
        .into_iter()
        .filter_map(|(code, n)| {
            let n = n.filter(|n| *n > 0)?;
            Some(speaker.text(code, &[("n", i64::from(n).into())]))
        })
        .collect()
}

/// The cuts of a palm, newest first.
pub fn of_palm(speaker: &Speaker, office: &Office, palm: &PalmRecord) -> Vec<PalmCutLine> {
    let state = office.state();
    let line = |at: Moment, cut: &CutMade| {
        let blade = state.blade(cut.blade);
        let (key, before, between) = match blade {
            Some(blade) => before(speaker, office, blade, at),
            None => ("none", speaker.say("blades-before-none"), Vec::new()),
        };
        PalmCutLine {
            when: clock::says(&speaker.measure, at),
            blade: blade.map_or_else(|| unknown(cut.blade), |b| b.blade.tag.clone()),
            detail: cut_detail(speaker, cut, at),
            key,
            before,
            between,
            despite: cut.despite.clone(),
        }
    };
    let cuts = palm.cuts.iter().rev();
    cuts.map(|cut| line(cut.at, &cut.cut)).collect()
}

/// The start of the id of a blade that nobody registered: enough to find it.
fn unknown(blade: BladeId) -> String {
    blade.0.to_string().chars().take(8).collect()
}

/// The last cleaning of a blade before a moment, and the palms it cut in between.
fn before(
    speaker: &Speaker,
    office: &Office,
    blade: &BladeRecord,
    at: Moment,
) -> (&'static str, String, Vec<String>) {
    let state = office.state();
    let mut between = Vec::new();
    for touch in blade.touches.iter().rev().filter(|touch| touch.at < at) {
        match &touch.what {
            Touch::Cleaned(cleaning) => {
                let key = adequacy_key(super::adequacy(office, cleaning, touch.at));
                let args = [
                    ("when", clock::says(&speaker.measure, touch.at).into()),
                    ("how", cleaning_words(speaker, cleaning).into()),
                ];
                between.reverse();
                let words = speaker.text(&format!("blades-before-{key}"), &args);
                return (key, words, between);
            }
            Touch::Cut(cut) => {
                let tag = palm_tag(&state, cut.palm);
                if !between.contains(&tag) {
                    between.push(tag);
                }
            }
            Touch::Lent(_) | Touch::Returned => {}
        }
    }
    between.reverse();
    ("none", speaker.say("blades-before-none"), between)
}
