//! A walk over the palms of a site: the question as it was typed, and the answer as a sentence, a map and a list.

pub mod draw;
mod json;
#[cfg(test)]
mod tests;

pub use json::json;

use super::history::hold_reason;
use super::said::Speaker;
use super::standing::Standings;
use crate::health::Because;
use crate::office::Office;
use crate::rotating::{Made, figure, span};
use crate::walk::{Ask, CUT_MIN, Cannot, MOST_PALMS, SiteWalk, Stop, Which, walk};
use draw::Map;
use model::{Arg, Metres};
use rounds::walk::Health;
use std::collections::BTreeMap;

/// The fields of the form as they were typed.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Question {
    /// `site:` and the grounds; empty: nothing was asked.
    pub site: String,
    /// `all`, `due`; anything else is all.
    pub which: String,
    /// Tags, with spaces, commas or line ends between; empty: as `which` says.
    pub tags: String,
    /// Minutes of cutting at a palm.
    pub minutes: String,
    /// Blade sets.
    pub sets: String,
    /// Minutes of soak; empty: what the table asks for.
    pub soak: String,
}

/// A field that is wrong, and what is wrong with it.
#[derive(Clone, PartialEq, Debug)]
pub struct Trouble {
    /// Name of the field.
    pub field: &'static str,
    /// In words.
    pub text: String,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct WalkView {
    /// Grounds with palms that stand: value of the choice, and in words with how many.
    pub sites: Vec<(String, String)>,
    /// What is wrong with the question.
    pub troubles: Vec<Trouble>,
    /// The answer; `None` where nothing was asked, or the question is wrong.
    pub answer: Option<Answer>,
}

/// The answer.
#[derive(Clone, PartialEq, Debug)]
pub struct Answer {
    /// How many palms, how far.
    pub sentence: String,
    /// What the blade sets mean for it.
    pub blades: String,
    /// The map; `None` where fewer than two places are known.
    pub map: Option<Map>,
    /// Palms by class, in order.
    pub classes: Vec<ClassRows>,
    /// What it rests on.
    pub notes: Vec<String>,
}

/// The palms of a class.
#[derive(Clone, PartialEq, Debug)]
pub struct ClassRows {
    /// `healthy`, `unknown`, `suspect`, `confirmed`.
    pub key: &'static str,
    /// In words with how many.
    pub name: String,
    /// Its palms.
    pub rows: Vec<Row>,
}

/// A palm.
#[derive(Clone, PartialEq, Debug)]
pub struct Row {
    /// Its number on the walk, from 1.
    pub n: usize,
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// How far from the stop before; empty where nobody knows.
    pub way: String,
    /// Why it is in its class.
    pub why: String,
    /// What is done about blade, hands and boots before it; empty for nothing.
    pub before: Vec<String>,
    /// What is done there: cut with which set, or only looked at.
    pub task: String,
    /// Whether it is cut.
    pub cut: bool,
}

/// What the page shows for a question.
pub fn view(
    speaker: &Speaker,
    office: &Office,
    standings: &Standings,
    question: &Question,
) -> WalkView {
    let (troubles, answer) = match asked(speaker, question) {
        None => (Vec::new(), None),
        Some(Err(troubles)) => (troubles, None),
        Some(Ok(ask)) => match walk(office, standings, &ask) {
            Ok(walk) => (Vec::new(), Some(answer(speaker, &walk))),
            Err(cannot) => (vec![refused(speaker, &cannot)], None),
        },
    };
    WalkView {
        sites: sites(speaker, office),
        troubles,
        answer,
    }
}

/// Grounds with palms that stand: the value of the choice, and its words.
fn sites(speaker: &Speaker, office: &Office) -> Vec<(String, String)> {
    let state = office.state();
    let mut counts: BTreeMap<&str, i64> = BTreeMap::new();
    for record in state.standing() {
        *counts.entry(&record.palm.site).or_default() += 1;
    }
    let choice = |(site, n): (&str, i64)| {
        let name = match site {
            "" => speaker.say("rotation-no-site"),
            site => site.to_owned(),
        };
        let args = [("site", name.into()), ("n", n.into())];
        (format!("site:{site}"), speaker.text("rotation-site", &args))
    };
    counts.into_iter().map(choice).collect()
}

/// Why no walk can be made, at its field.
fn refused(speaker: &Speaker, cannot: &Cannot) -> Trouble {
    let (field, text) = match cannot {
        Cannot::Nobody => ("site", speaker.say("walk-nobody")),
        Cannot::NoSuch(tags) => (
            "tags",
            speaker.text("walk-no-such", &[("tags", tags.join(", ").into())]),
        ),
        Cannot::TooMany(n) => {
            let count = |n: usize| (n as i64).into();
            let args = [("n", count(*n)), ("most", count(MOST_PALMS))];
            ("site", speaker.text("walk-too-many", &args))
        }
    };
    Trouble { field, text }
}

/// Reads the question. `None`: nothing was asked.
fn asked(speaker: &Speaker, question: &Question) -> Option<Result<Ask, Vec<Trouble>>> {
    let site = question.site.strip_prefix("site:")?.to_owned();
    let mut troubles = Vec::new();
    let mut number = |field: &'static str, typed: &str, low: f64, high: f64, unless: f64| {
        let typed = typed.trim().replace(',', ".");
        let fits = |x: &f64| (low..=high).contains(x) && (field != "sets" || x.fract() == 0.0);
        match typed.parse::<f64>().ok().filter(fits) {
            _ if typed.is_empty() => unless,
            Some(x) => x,
            None => {
                let name = speaker.say(&format!("walk-{field}"));
                let args = [
                    ("field", name.into()),
                    ("low", figure(low).into()),
                    ("high", figure(high).into()),
                ];
                let text = speaker.text("rotation-bad-number", &args);
                troubles.push(Trouble { field, text });
                unless
            }
        }
    };
    let cut_min = number("minutes", &question.minutes, 0.5, 480.0, CUT_MIN);
    let sets = number("sets", &question.sets, 1.0, 50.0, 2.0) as usize;
    let soak = number("soak", &question.soak, 0.0, 480.0, -1.0);
    if !troubles.is_empty() {
        return Some(Err(troubles));
    }
    let split = |c: char| c.is_whitespace() || c == ',' || c == ';';
    let tags = question.tags.split(split).filter(|tag| !tag.is_empty());
    let tags: std::collections::BTreeSet<String> = tags.map(str::to_owned).collect();
    let which = match question.which.as_str() {
        _ if !tags.is_empty() => Which::Tags(tags),
        "due" => Which::Due,
        _ => Which::All,
    };
    Some(Ok(Ask {
        site,
        which,
        cut_min,
        sets,
        soak_min: (soak >= 0.0).then_some(soak),
    }))
}

/// The answer in words.
pub fn answer(speaker: &Speaker, walk: &SiteWalk) -> Answer {
    let class = |health: Health| {
        let rows = walk.stops.iter().enumerate();
        let own = rows.filter(|(_, stop)| stop.because.health() == health);
        let rows: Vec<Row> = own.map(|(i, stop)| row(speaker, walk, i, stop)).collect();
        let args = [("n", (rows.len() as i64).into())];
        let key = health.key();
        (!rows.is_empty()).then(|| ClassRows {
            key,
            name: speaker.text(&format!("walk-class-{key}"), &args),
            rows,
        })
    };
    Answer {
        sentence: sentence(speaker, walk),
        blades: blades(speaker, walk.blades.as_ref()),
        map: draw::map(speaker, walk),
        classes: Health::ALL.into_iter().filter_map(class).collect(),
        notes: notes(speaker, walk),
    }
}

fn sentence(speaker: &Speaker, walk: &SiteWalk) -> String {
    let args = [
        ("n", (walk.stops.len() as i64).into()),
        (
            "way",
            speaker.measure.length(Metres(walk.way.metres)).into(),
        ),
        ("gate", i64::from(walk.gate.is_some()).into()),
    ];
    speaker.text("walk-sentence", &args)
}

fn blades(speaker: &Speaker, made: Option<&Made>) -> String {
    let Some(made) = made else {
        return speaker.say("walk-nothing-cut");
    };
    let clean = made.cuts.iter().filter(|cut| cut.job.needs_clean).count();
    let args = [
        ("n", (made.cuts.len() as i64).into()),
        ("clean", (clean as i64).into()),
        ("sets", (made.kit.sets as i64).into()),
        (
            "waits",
            span(&speaker.measure, made.plan.waiting_min).into(),
        ),
        (
            "done",
            span(&speaker.measure, made.plan.makespan_min).into(),
        ),
        ("fewest", (made.fewest as i64).into()),
    ];
    speaker.text("walk-blades", &args)
}

fn row(speaker: &Speaker, walk: &SiteWalk, i: usize, stop: &Stop) -> Row {
    let blade = walk.blade(stop);
    let mut before = Vec::new();
    if stop.hands {
        before.push(speaker.say("walk-clean-hands"));
    }
    let (cut, task) = match &blade {
        Some((set, clean)) => {
            let set = || [("set", set.clone().into())];
            if *clean {
                before.push(speaker.text("walk-clean-blade", &set()));
            }
            (true, speaker.text("walk-cut", &set()))
        }
        None => (false, speaker.say("walk-look")),
    };
    let palm = &stop.record.palm;
    Row {
        n: i + 1,
        tag: palm.tag.clone(),
        species: palm.species.clone(),
        way: match stop.metres {
            Some(metres) => speaker.measure.length(Metres(metres)),
            None if palm.position.is_none() => speaker.say("walk-no-place"),
            None => String::new(),
        },
        why: why(speaker, stop.because),
        before,
        task,
        cut,
    }
}

/// Why a palm is in its class, in words.
pub fn why(speaker: &Speaker, because: Because) -> String {
    let measure = &speaker.measure;
    let args = match because {
        Because::Laboratory | Because::Spear | Because::NeverSeen => vec![],
        Because::Held(reason) | Because::Advised(reason) => {
            vec![("reason", hold_reason(speaker, reason).into())]
        }
        Because::Sign(sign) => vec![("sign", measure.arg(&Arg::Code(sign)))],
        Because::LongAgo(days) | Because::Seen(days) => {
            vec![("ago", measure.duration(f64::from(days)).into())]
        }
    };
    speaker.text(&format!("walk-because-{}", because.key()), &args)
}

fn notes(speaker: &Speaker, walk: &SiteWalk) -> Vec<String> {
    let mut notes = vec![speaker.say(match walk.way.exact {
        true => "walk-exact",
        false => "walk-searched",
    })];
    notes.push(speaker.say("walk-as-the-crow-flies"));
    if walk.way.unplaced > 0 {
        let args = [("n", (walk.way.unplaced as i64).into())];
        notes.push(speaker.text("walk-unplaced", &args));
    }
    if walk.gate.is_none() {
        notes.push(speaker.say("walk-no-gate"));
    }
    if let Some(made) = &walk.blades {
        let minutes = ("min", speaker.measure.number(made.kit.soak_min, 2).into());
        notes.push(match &walk.needed {
            Some(needed) => {
                let agent = super::blades::log::agent_name(speaker, &needed.agent);
                let strength = needed.strength_pct.map(figure);
                let strength = strength.unwrap_or_else(|| "none".to_owned());
                let args = [
                    minutes,
                    ("agent", agent.into()),
                    ("strength", strength.into()),
                ];
                speaker.text("rotation-soak-from", &args)
            }
            None => speaker.text("rotation-soak-own", &[minutes]),
        });
    }
    notes.push(speaker.say("walk-clean-rule"));
    notes
}
