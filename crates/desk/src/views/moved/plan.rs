//! `/palm/{tag}/move`: what was promised, the calendar, whether it is established, and what was noted.

use super::super::said::{Cited, Said, Speaker};
use super::before::{self, Asked, BeforeView};
use super::list::trips;
use crate::moved::{self, Moved, State};
use crate::office::Office;
use care::moving::LookState;
use model::knowledge::MoveTopic;
use model::{Arg, LeavesAtMove, Move, PalmRecord, Tending};

/// The promise to the owner.
#[derive(Clone, PartialEq, Debug)]
pub struct PromiseView {
    /// In one sentence for a list.
    pub short: String,
    /// In full, with the dates it is counted between.
    pub full: String,
    /// When to call.
    pub call: String,
    /// What it rests on, in words.
    pub rests_on: String,
}

/// A day of the calendar.
#[derive(Clone, PartialEq, Debug)]
pub struct LookRow {
    /// The day.
    pub date: String,
    /// Days after digging, in words.
    pub after: String,
    /// `done`, `missed`, `due`, `ahead`.
    pub state: &'static str,
    /// The same in words.
    pub state_words: String,
    /// What to look at.
    pub what: String,
    /// How it is known.
    pub basis: Option<String>,
    /// Sources.
    pub sources: Vec<Cited>,
}

/// A move as it was noted.
#[derive(Clone, PartialEq, Debug)]
pub struct NotedMove {
    /// Its entry, to correct.
    pub entry: String,
    /// What was noted.
    pub facts: Vec<(String, String)>,
}

/// The page of a palm's move.
#[derive(Clone, PartialEq, Debug)]
pub struct MovePage {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// "Dug 63 days ago"; nothing if it was never moved.
    pub since: Option<String>,
    /// How it stands, and in words.
    pub state: Option<(&'static str, String)>,
    /// What has broken the promise.
    pub trips: Vec<Said>,
    /// The promise, while it is not established.
    pub promise: Option<PromiseView>,
    /// Whether it is established, in words.
    pub established: Vec<String>,
    /// When the next look is due, in words.
    pub next: String,
    /// The calendar.
    pub looks: Vec<LookRow>,
    /// Usual figures of practice to hold it against.
    pub usual: Vec<Said>,
    /// Moves as they were noted, newest first.
    pub noted: Vec<NotedMove>,
    /// Before a move.
    pub before: BeforeView,
}

/// The page; `None` if no palm with this tag stands.
pub fn page(speaker: &Speaker, office: &Office, tag: &str, asked: &Asked) -> Option<MovePage> {
    let state = office.state();
    let record = state.by_tag(tag)?;
    let moved = moved::of(office, record);
    let own = moved.as_ref();
    let palm = &record.palm;
    Some(MovePage {
        tag: palm.tag.clone(),
        species: palm.species.clone(),
        site: palm.site.clone(),
        since: own.map(|m| since(speaker, m)),
        state: own.map(|m| {
            let key = m.state().key();
            (key, speaker.say(&format!("moved-state-{key}")))
        }),
        trips: own.map(|m| trips(speaker, m)).unwrap_or_default(),
        promise: own
            .filter(|m| m.state() != State::Established)
            .map(|m| promise_of(speaker, m)),
        established: own.map(|m| progress(speaker, m)).unwrap_or_default(),
        next: own.map(|m| next_look(speaker, m)).unwrap_or_default(),
        looks: own.map(|m| looks(speaker, m)).unwrap_or_default(),
        usual: usual(speaker),
        noted: noted(speaker, record),
        before: before::view(speaker, office, record, asked),
    })
}

fn since(speaker: &Speaker, moved: &Moved) -> String {
    let args = [
        (
            "ago",
            speaker.measure.duration(f64::from(moved.days)).into(),
        ),
        ("date", speaker.measure.date(moved.moved_on).into()),
    ];
    speaker.text("moved-since", &args)
}

/// The promise of the stem that needs a person most.
pub fn promise_of(speaker: &Speaker, moved: &Moved) -> PromiseView {
    let m = &speaker.measure;
    let stem = moved.worst();
    let promise = stem.promise;
    let args = [
        (
            "range",
            m.counts(f64::from(promise.low), f64::from(promise.high))
                .into(),
        ),
        ("high", i64::from(promise.high).into()),
        (
            "over",
            i64::from(promise.call_from.saturating_sub(1)).into(),
        ),
        ("since", m.date(promise.since).into()),
        ("by", m.date(promise.by).into()),
        ("weeks", moved::promise_weeks().into()),
        ("stem", i64::from(stem.stem).into()),
    ];
    let several = if moved.stems.len() > 1 { "-stem" } else { "" };
    let looked = moved.last_look.is_some();
    PromiseView {
        short: speaker.text("moved-promise-short", &args),
        full: speaker.text(
            &format!(
                "moved-promise{}{several}",
                if looked { "" } else { "-unseen" }
            ),
            &args,
        ),
        call: speaker.text("moved-call", &args),
        rests_on: speaker.text("moved-promise-rests-on", &args),
    }
}

/// When the next look is due.
pub fn next_look(speaker: &Speaker, moved: &Moved) -> String {
    let Some(next) = moved.calendar.next else {
        return speaker.say("moved-next-none");
    };
    let days = next.since(moved.today);
    let args = [
        ("date", speaker.measure.date(next).into()),
        (
            "days",
            speaker.measure.duration(f64::from(days.abs())).into(),
        ),
    ];
    let code = match days {
        0 => "moved-next-today",
        d if d < 0 => "moved-next-late",
        _ => "moved-next",
    };
    speaker.text(code, &args)
}

/// That it is established, and whether the counts or the days say so.
pub fn established(speaker: &Speaker, moved: &Moved) -> String {
    let by_date = moved.stems.iter().any(|s| s.progress.by_date_alone);
    speaker.say(if by_date {
        "moved-established-by-date"
    } else {
        "moved-established"
    })
}

/// How far it has come: pace, loss, and what that makes.
fn progress(speaker: &Speaker, moved: &Moved) -> Vec<String> {
    let own = moved.worst().progress;
    let pace = [("pace", speaker.measure.percent(own.pace).into())];
    let mut said = vec![speaker.text(
        if own.pace_back {
            "moved-pace-back"
        } else {
            "moved-pace-slow"
        },
        &pace,
    )];
    said.push(speaker.say(match own.loss_ordinary {
        Some(true) => "moved-loss-ordinary",
        Some(false) => "moved-loss-more",
        None => "moved-loss-unknown",
    }));
    if own.too_early {
        said.push(speaker.say("moved-too-early"));
    }
    said.push(if moved.established() {
        established(speaker, moved)
    } else {
        speaker.say("moved-not-established")
    });
    said
}

fn looks(speaker: &Speaker, moved: &Moved) -> Vec<LookRow> {
    let row = |day: &care::moving::LookDay| {
        let (state, args) = match day.state {
            LookState::Done(on) => ("done", vec![("date", speaker.measure.date(on).into())]),
            LookState::Missed => ("missed", vec![]),
            LookState::Due => ("due", vec![]),
            LookState::Ahead => ("ahead", vec![]),
        };
        let after = f64::from(day.on.since(moved.moved_on));
        LookRow {
            date: speaker.measure.date(day.on),
            after: speaker.measure.duration(after),
            state,
            state_words: speaker.text(&format!("moved-look-{state}"), &args),
            what: speaker.texts(&day.row.text).to_owned(),
            basis: speaker.basis(day.row.basis),
            sources: speaker.cite(&day.row.sources),
        }
    };
    moved.calendar.days.iter().map(row).collect()
}

/// What practice calls usual after a move, and what is no fault.
pub(in crate::views) fn usual(speaker: &Speaker) -> Vec<Said> {
    [
        (MoveTopic::ShedShare, "moved-usual-share"),
        (MoveTopic::ShedMonth, "moved-usual-month"),
        (MoveTopic::TrunkColour, "moved-usual-colour"),
    ]
    .into_iter()
    .flat_map(|(topic, code)| {
        speaker.knowledge.moving(topic).filter_map(move |row| {
            let figure = row.figure?;
            let (low, high) = (figure.low.unwrap_or(figure.high), figure.high);
            let arg = |x: f64| match topic {
                MoveTopic::ShedShare => Arg::Share(x / 100.0),
                MoveTopic::TrunkColour => Arg::Days(x),
                _ => Arg::Count(x as i64),
            };
            let finding = model::Finding::new(code, model::Severity::Info)
                .with("low", arg(low))
                .with("high", arg(high))
                .from_sources(&row.sources)
                .by_practice();
            Some(speaker.finding(&finding))
        })
    })
    .collect()
}

fn noted(speaker: &Speaker, record: &PalmRecord) -> Vec<NotedMove> {
    let moves = record.tended.iter().rev();
    moves
        .filter_map(|tended| match &tended.what {
            Tending::Moved(moved) => Some(NotedMove {
                entry: tended.entry.0.to_string(),
                facts: facts(speaker, moved),
            }),
            _ => None,
        })
        .collect()
}

/// What was noted of a move; what was not noted is left out.
pub(crate) fn facts(speaker: &Speaker, moved: &Move) -> Vec<(String, String)> {
    let m = &speaker.measure;
    let words = |text: &str| (!text.is_empty()).then(|| text.to_owned());
    let leaves = |l: LeavesAtMove| speaker.say(&format!("move-leaves-{}", l.word()));
    let deeper = moved.deeper.map(|d| {
        let args = [("by", m.short_length(model::Metres(d.0.abs())).into())];
        let code = match d.0 {
            x if x > 0.0 => "move-deeper-by",
            x if x < 0.0 => "move-higher-by",
            _ => "move-as-it-stood",
        };
        speaker.text(code, &args)
    });
    let taken = moved.fronds_taken.map(|n| m.count(i64::from(n)));
    let all = [
        ("dug_on", Some(m.date(moved.dug_on))),
        ("planted_on", moved.planted_on.map(|day| m.date(day))),
        ("from", words(&moved.from)),
        ("ball_radius", moved.ball_radius.map(|l| m.short_length(l))),
        ("ball_depth", moved.ball_depth.map(|l| m.short_length(l))),
        ("leaves", moved.leaves.map(leaves)),
        ("fronds_taken", taken),
        ("depth_way", deeper),
        ("bracing", words(&moved.bracing)),
        ("soil", words(&soil(speaker, &moved.soil))),
        ("move_notes", words(&moved.notes)),
    ];
    all.into_iter()
        .filter_map(|(name, value)| Some((speaker.say(&format!("forms-{name}")), value?)))
        .collect()
}

/// A soil by its key in words; a word of the keeper's own as it is.
pub(crate) fn soil(speaker: &Speaker, key: &str) -> String {
    let code = format!("move-soil-{key}");
    if !key.is_empty() && speaker.words().has(&code) {
        speaker.say(&code)
    } else {
        key.to_owned()
    }
}
