//! Who can be sent.

use super::{Ask, refuse};
use crate::office::Office;
use model::{Arg, CrewWords, Finding, Hours, Position, Severity};
use rounds::route::{LONGEST, Window};

/// Hours of a crew that has none of its own: seven to half past three (assumed).
const USUAL: Hours = Hours {
    from: 7 * 3600,
    to: 15 * 3600 + 1800,
};

/// A crew that can be sent.
pub struct Crew {
    pub name: String,
    pub from: Position,
    pub to: Position,
    pub hours: Window,
    pub lift: bool,
    /// Litres of loose debris it has room for; one that nobody has said is not counted.
    pub room: i64,
}

/// The crews of an ask that work, have a place to start from, and have not set out on that day.
pub fn available(
    office: &Office,
    ask: &Ask,
    remarks: &mut Vec<Finding>,
) -> Result<Vec<Crew>, Vec<Finding>> {
    let state = office.state();
    let crews = &state.work.crews;
    let unknown: Vec<Finding> = ask
        .crews
        .iter()
        .filter(|name| !crews.contains_key(*name))
        .map(|name| named("round-no-such-crew", Severity::Refuse, name))
        .collect();
    if !unknown.is_empty() {
        return Err(unknown);
    }
    let asked =
        |crew: &&CrewWords| !crew.gone && (ask.crews.is_empty() || ask.crews.contains(&crew.name));
    let begun = |crew: &CrewWords| {
        let mut rounds = state.work.rounds.values();
        rounds.any(|r| r.plan.day == ask.day && r.plan.crew == crew.name && has_begun(r))
    };
    let mut able = Vec::new();
    for crew in crews.values().filter(asked) {
        if begun(crew) {
            remarks.push(named("round-begun", Severity::Caution, &crew.name));
        } else if let Some(from) = crew.from {
            if crew.hours.is_none() {
                remarks.push(named(
                    "round-remark-usual-hours",
                    Severity::Info,
                    &crew.name,
                ));
            }
            able.push(of(crew, from));
        } else {
            remarks.push(named("round-crew-no-start", Severity::Act, &crew.name));
        }
    }
    if able.is_empty() {
        let mut why = vec![refuse("round-no-crew")];
        why.append(remarks);
        return Err(why);
    }
    Ok(able)
}

/// Whether a crew has set out on a round or done anything of it.
pub fn has_begun(round: &model::state::RoundRecord) -> bool {
    round.started.is_some() || round.finished.is_some() || !round.outcomes.is_empty()
}

/// Whether a crew comes with a lift: it is trained for one, or carries one.
pub fn has_lift(crew: &CrewWords) -> bool {
    crew.skills
        .iter()
        .chain(&crew.kit)
        .any(|word| word == "lift")
}

fn of(crew: &CrewWords, from: Position) -> Crew {
    let hours = crew.hours.unwrap_or(USUAL);
    Crew {
        name: crew.name.clone(),
        from,
        to: crew.to.unwrap_or(from),
        hours: Window {
            open: i64::from(hours.from),
            close: i64::from(hours.to),
        },
        lift: has_lift(crew),
        room: crew
            .room_m3
            .map_or(LONGEST, |m3| (m3 * 1000.0).round() as i64),
    }
}

fn named(code: &'static str, severity: Severity, crew: &str) -> Finding {
    Finding::new(code, severity).with("crew", Arg::Text(crew.to_owned()))
}
