//! Blades: the rack, one blade with its log, and how each stands.

pub mod api;
pub mod badge;
pub mod bath;
pub mod cut;
pub mod log;
mod told;

pub use told::{adequacy, because, change_now, is_adequate, ready_for};

use super::said::{Said, Speaker};
use crate::clock;
use crate::office::Office;
use crate::words::Lang;
use badge::Badge;
use log::LogLine;
use model::knowledge::Texts;
use model::state::{BladeRecord, Noticed, Touch};
use model::{BladeId, Moment, PalmId, State};

/// One blade in a list.
#[derive(Clone, PartialEq, Debug)]
pub struct BladeRow {
    /// Its id.
    pub id: BladeId,
    /// Tag.
    pub tag: String,
    /// What carries it, in trade words.
    pub kind: String,
    /// Kit; may be empty.
    pub kit: String,
    /// Who holds it; may be empty.
    pub holder: String,
    /// How it stands now.
    pub badge: Badge,
    /// What it did last; may be empty.
    pub last: String,
}

/// The rack.
#[derive(Clone, PartialEq, Debug)]
pub struct BladesView {
    /// Blades in service: by kit, then tag.
    pub rows: Vec<BladeRow>,
    /// Blades out of service: tag and why.
    pub retired: Vec<(String, String)>,
    /// How many stand how.
    pub summary: String,
    /// What is odd about the log.
    pub noticed: Vec<Said>,
}

/// One blade.
#[derive(Clone, PartialEq, Debug)]
pub struct BladeView {
    /// As in the list.
    pub row: BladeRow,
    /// How it stands, in a sentence.
    pub stands: String,
    /// Free words.
    pub notes: String,
    /// In whose hands and since when, if it is lent.
    pub lent: Option<String>,
    /// Why it went out of service, if it did.
    pub retired: Option<String>,
    /// Tags of the palms it cut since it was last clean, first to last.
    pub since_clean: Vec<String>,
    /// What happened, newest first.
    pub log: Vec<LogLine>,
    /// What is odd about its log.
    pub noticed: Vec<Said>,
}

/// All blades.
pub fn view(speaker: &Speaker, office: &Office) -> BladesView {
    let (state, now) = (office.state(), clock::now(office));
    let mut serving: Vec<&BladeRecord> = state.serving().map(|b| &**b).collect();
    serving.sort_by(|a, b| (&a.blade.kit, &a.blade.tag).cmp(&(&b.blade.kit, &b.blade.tag)));
    let rows: Vec<BladeRow> = serving
        .iter()
        .map(|blade| row(speaker, office, blade, None, now))
        .collect();
    let retired = state.blades.values().filter_map(|blade| {
        let why = blade.retired.clone()?;
        Some((blade.blade.tag.clone(), why))
    });
    BladesView {
        summary: summary(speaker, &rows),
        rows,
        retired: retired.collect(),
        noticed: noticed(speaker, &state, |_| true),
    }
}

/// One blade by its tag; of several that carried it, the one in service, else the one retired last.
pub fn one(speaker: &Speaker, office: &Office, tag: &str) -> Option<BladeView> {
    let state = office.state();
    let now = clock::now(office);
    let blade = named(&state, tag)?;
    let ready = ready_for(office, blade, None, now);
    Some(BladeView {
        row: row(speaker, office, blade, None, now),
        stands: badge::sentence(speaker, office, &ready, now),
        notes: blade.blade.notes.clone(),
        lent: blade.lent.as_ref().map(|lent| {
            let args = [
                ("to", lent.to.clone().into()),
                ("when", clock::says(&speaker.measure, lent.since).into()),
            ];
            speaker.text("blades-lent-since", &args)
        }),
        retired: blade.retired.clone(),
        since_clean: since_clean(&state, office, blade),
        log: log::of_blade(speaker, office, blade),
        noticed: noticed(speaker, &state, |n| blade.entries.contains(&n.entry)),
    })
}

/// A blade by its tag, out of service or not.
pub fn named<'s>(state: &'s State, tag: &str) -> Option<&'s BladeRecord> {
    let serving = state.blade_by_tag(tag).map(|blade| &**blade);
    serving.or_else(|| {
        let retired = state.blades.values().filter(|b| b.blade.tag == tag);
        retired.max_by_key(|b| b.registered).map(|b| &**b)
    })
}

/// A blade in a list, as it stands for a palm (or for any).
pub fn row(
    speaker: &Speaker,
    office: &Office,
    blade: &BladeRecord,
    palm: Option<PalmId>,
    now: Moment,
) -> BladeRow {
    let ready = ready_for(office, blade, palm, now);
    BladeRow {
        id: blade.id,
        tag: blade.blade.tag.clone(),
        kind: kind(speaker, blade),
        kit: blade.blade.kit.clone(),
        holder: blade.blade.holder.clone(),
        badge: match &blade.lent {
            Some(lent) => Badge::lent(speaker, &lent.to),
            None => Badge::of(speaker, office, &ready, now),
        },
        last: last(speaker, office, blade),
    }
}

/// What carries a blade, in trade words.
pub fn kind(speaker: &Speaker, blade: &BladeRecord) -> String {
    speaker.say(&format!("blade-kind-{}", blade.blade.kind.word()))
}

fn summary(speaker: &Speaker, rows: &[BladeRow]) -> String {
    let count = |keys: &[&str]| rows.iter().filter(|r| keys.contains(&r.badge.key)).count() as i64;
    let args = [
        ("all", (rows.len() as i64).into()),
        ("clean", count(&["clean"]).into()),
        ("blocked", count(&["blocked"]).into()),
    ];
    speaker.text("blades-summary", &args)
}

/// The last thing it did.
fn last(speaker: &Speaker, office: &Office, blade: &BladeRecord) -> String {
    let Some(touch) = blade.touches.last() else {
        return String::new();
    };
    let when = clock::says_on(&speaker.measure, touch.at, office.today());
    let state = office.state();
    match &touch.what {
        Touch::Cut(cut) => {
            let args = [
                ("tag", palm_tag(&state, cut.palm).into()),
                ("when", when.into()),
            ];
            speaker.text("blades-last-cut", &args)
        }
        Touch::Cleaned(_) => speaker.text("blades-last-cleaned", &[("when", when.into())]),
        Touch::Lent(to) => {
            let args = [("to", to.clone().into()), ("when", when.into())];
            speaker.text("blades-last-lent", &args)
        }
        Touch::Returned => speaker.text("blades-last-back", &[("when", when.into())]),
    }
}

/// A palm's tag, whether it still stands or not.
pub fn palm_tag(state: &State, palm: PalmId) -> String {
    state
        .palm(palm)
        .map_or_else(|| "?".to_owned(), |record| record.palm.tag.clone())
}

/// Palms cut since the last cleaning that was enough, each once, first to last.
fn since_clean(state: &State, office: &Office, blade: &BladeRecord) -> Vec<String> {
    let enough = |touch: &model::state::BladeTouch| match &touch.what {
        Touch::Cleaned(cleaning) => is_adequate(office, cleaning, touch.at),
        _ => false,
    };
    let from = blade.touches.iter().rposition(enough).map_or(0, |n| n + 1);
    let mut tags: Vec<String> = Vec::new();
    for touch in &blade.touches[from..] {
        if let Touch::Cut(cut) = &touch.what {
            let tag = palm_tag(state, cut.palm);
            if !tags.contains(&tag) {
                tags.push(tag);
            }
        }
    }
    tags
}

/// What is odd about blades, cuts and cleanings.
fn noticed(speaker: &Speaker, state: &State, about: impl Fn(&Noticed) -> bool) -> Vec<Said> {
    const OURS: [&str; 9] = [
        "blade-unknown",
        "blade-tag-doubled",
        "touch-twice",
        "written-before-it-happened",
        "cut-ends-before-it-starts",
        "cut-too-long",
        "cuts-overlap",
        "cleaning-without-agent",
        "bath-unknown",
    ];
    let ours = state
        .noticed()
        .iter()
        .filter(|n| OURS.contains(&n.finding.code));
    ours.filter(|n| about(n))
        .map(|n| speaker.finding(&n.finding))
        .collect()
}

/// A text of the tables in the reader's language.
pub fn said_in<'t>(speaker: &Speaker, texts: &'t Texts) -> &'t str {
    match speaker.words().lang() {
        Lang::En => &texts.en,
        Lang::Es => &texts.es,
    }
}
