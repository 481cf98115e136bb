//! The form of a move.
//!
//! Fields: `dug_on`, `planted_on`, `from`, `ball_radius`, `ball_depth`, `leaves`, `fronds_taken`, `deeper` with `depth_way`
//! (`deeper`, `higher`, `same` or nothing), `bracing`, `soil`, `move_notes`; `corrects` names the entry it stands in for.

use super::field::Fields;
use super::inspection::MOST_FRONDS;
use super::length::write_length;
use super::save::{BY, entry_id, once, standing, whole};
use super::thread::thread;
use super::{Stop, Trouble, Typed};
use crate::measure::Units;
use crate::office::{Note, Office};
use model::{
    Arg, Body, Day, Entry, Finding, LeavesAtMove, Metres, Moment, Move, Palm, PalmId, Severity,
    Tending,
};

/// No ball, no planting depth is larger.
const LARGEST: Metres = Metres(10.0);
/// Noon UTC: the day of a move stays the same day in nearly every time zone.
const NOON: i64 = 12 * 3_600_000;

/// Soils a keeper may choose from: the words of the FAO-56 soil table [fao56].
pub const SOILS: [&str; 9] = [
    "sand",
    "loamy-sand",
    "sandy-loam",
    "loam",
    "silt-loam",
    "silt",
    "silt-clay-loam",
    "silty-clay",
    "clay",
];

/// What a move is checked against.
#[derive(Clone, Copy)]
pub struct AtMove<'a> {
    /// The palm.
    pub palm: &'a Palm,
    /// Today.
    pub today: Day,
    /// The reader's units.
    pub units: Units,
    /// The move that is being corrected.
    pub before: Option<&'a Move>,
}

/// Checks the form.
pub fn moving(typed: &Typed, at: AtMove) -> Result<Move, Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let dug_on = fields.past_day("dug_on", at.today);
    if fields.some("dug_on").is_none() {
        fields.refuse("dug_on", "form-move-no-day");
    }
    let planted_on = fields.past_day("planted_on", at.today);
    if let (Some(dug), Some(planted)) = (dug_on, planted_on)
        && planted < dug
    {
        let finding = Finding::new("form-move-planted-before", Severity::Refuse);
        fields.add("planted_on", finding.with("dug", Arg::Date(dug)));
    }
    let leaves = match fields.some("leaves") {
        None => None,
        Some(word) => {
            let known = LeavesAtMove::parse(word);
            if known.is_none() {
                fields.refuse("leaves", "form-move-leaves");
            }
            known
        }
    };
    let ball_radius = size(&mut fields, "ball_radius", at.units);
    let ball_depth = size(&mut fields, "ball_depth", at.units);
    let moved = Move {
        planted_on,
        from: fields.text("from"),
        ball_radius,
        ball_depth,
        leaves,
        fronds_taken: fields.count("fronds_taken", MOST_FRONDS),
        deeper: deeper(&mut fields, at.units),
        bracing: fields.text("bracing"),
        soil: fields.text("soil"),
        notes: fields.text("move_notes"),
        extra: at.before.map(|m| m.extra.clone()).unwrap_or_default(),
        ..Move::on(dug_on.unwrap_or(at.today))
    };
    // the day in the description and that of the move are one
    let noted = at.palm.moved_on.filter(|_| at.before.is_none());
    if let (Some(before), Some(dug)) = (noted, dug_on)
        && dug < before
    {
        let finding = Finding::new("form-move-older", Severity::Caution);
        fields.ask("dug_on", finding.with("before", Arg::Date(before)));
    }
    fields.or(moved)
}

/// A size that is not nothing.
fn size(fields: &mut Fields, name: &'static str, units: Units) -> Option<Metres> {
    let length = fields.length(name, units, LARGEST)?;
    if length.0 <= 0.0 {
        fields.refuse(name, "form-move-no-size");
        return None;
    }
    Some(length)
}

/// Planted deeper or higher by so much; the same as it stood is nought.
fn deeper(fields: &mut Fields, units: Units) -> Option<Metres> {
    let by = fields.length("deeper", units, LARGEST);
    match fields.some("depth_way") {
        Some("same") => Some(Metres(0.0)),
        Some("higher") => by.map(|by| Metres(-by.0)),
        Some("deeper") => by,
        _ => {
            if by.is_some_and(|by| by.0 > 0.0) {
                fields.refuse("depth_way", "form-move-which-way");
            }
            by
        }
    }
}

/// The form as it begins when a move is corrected.
pub fn typed_move(moved: &Move, units: Units) -> Typed {
    let day = |day: Option<Day>| day.map_or_else(String::new, |d| d.to_string());
    let length = |l: Option<Metres>| l.map_or_else(String::new, |l| write_length(l, units));
    let way = moved.deeper.map_or("", |d| match d.0 {
        x if x > 0.0 => "deeper",
        x if x < 0.0 => "higher",
        _ => "same",
    });
    let by = moved.deeper.filter(|d| d.0 != 0.0);
    Typed::of([
        ("dug_on", moved.dug_on.to_string()),
        ("planted_on", day(moved.planted_on)),
        ("from", moved.from.clone()),
        ("ball_radius", length(moved.ball_radius)),
        ("ball_depth", length(moved.ball_depth)),
        ("leaves", moved.leaves.map_or("", |l| l.word()).to_owned()),
        (
            "fronds_taken",
            moved
                .fronds_taken
                .map_or_else(String::new, |n| n.to_string()),
        ),
        ("deeper", length(by.map(|d| Metres(d.0.abs())))),
        ("depth_way", way.to_owned()),
        ("bracing", moved.bracing.clone()),
        ("soil", moved.soil.clone()),
        ("move_notes", moved.notes.clone()),
    ])
}

/// The move that a correction form speaks of, as it stands now.
pub fn move_of<'e>(history: &'e [Entry], corrects: &str) -> Option<&'e Move> {
    let thread = thread(history, entry_id(corrects)?);
    match &thread.last()?.body {
        Body::Tended {
            what: Tending::Moved(moved),
            ..
        } => Some(moved),
        _ => None,
    }
}

/// Saves the form of a move; with `corrects` it takes that move's place.
pub fn save_move(office: &Office, palm: PalmId, typed: &Typed, units: Units) -> Result<(), Stop> {
    let record = standing(&office.state(), palm)?;
    let history = office.history(palm)?;
    let corrects = typed.get("corrects");
    let before = move_of(&history, corrects);
    if !corrects.is_empty() && before.is_none() {
        return Err(whole("form-corrects-nothing"));
    }
    let at = AtMove {
        palm: &record.palm,
        today: office.today(),
        units,
        before,
    };
    let moved = moving(typed, at)?;
    let replaces = entry_id(corrects).and_then(|id| Some(thread(&history, id).last()?.id));
    let note = Note {
        id: None,
        at: Moment(Moment::at_midnight(moved.dug_on).0 + NOON),
        by: BY.to_owned(),
        body: Body::Tended {
            palm,
            what: Tending::Moved(moved),
        },
        replaces,
    };
    once(office, &history, typed, note)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::codes;

    fn day(text: &str) -> Day {
        Day::parse(text).unwrap()
    }

    fn check(pairs: &[(&str, &str)], units: Units) -> Result<Move, Vec<Trouble>> {
        let palm = Palm {
            moved_on: Some(day("2026-03-01")),
            ..Palm::default()
        };
        let at = AtMove {
            palm: &palm,
            today: day("2026-05-01"),
            units,
            before: None,
        };
        moving(&Typed::of(pairs.to_vec()), at)
    }

    #[test]
    fn a_move_is_read_in_the_readers_units() {
        let moved = check(
            &[
                ("dug_on", "2026-04-01"),
                ("planted_on", "2026-04-03"),
                ("ball_radius", "2"),
                ("ball_depth", "60 cm"),
                ("leaves", "tied"),
                ("fronds_taken", "6"),
                ("deeper", "4 in"),
                ("depth_way", "higher"),
                ("soil", "sand"),
                ("bracing", "four props"),
            ],
            Units::UsCustomary,
        )
        .unwrap();
        // one foot is 0.3048 m, one inch 0.0254 m exactly
        assert!((moved.ball_radius.unwrap().0 - 0.6096).abs() < 1e-12);
        assert!((moved.ball_depth.unwrap().0 - 0.6).abs() < 1e-12);
        assert!((moved.deeper.unwrap().0 + 0.1016).abs() < 1e-12);
        assert_eq!(moved.leaves, Some(LeavesAtMove::Tied));
        assert_eq!(moved.fronds_taken, Some(6));
        let again = typed_move(&moved, Units::UsCustomary);
        assert_eq!(
            (again.get("depth_way"), again.get("ball_radius")),
            ("higher", "2")
        );
    }

    #[test]
    fn what_cannot_be_is_refused_at_its_field() {
        let wrong = |pairs: &[(&str, &str)]| codes(check(pairs, Units::Metric));
        assert_eq!(wrong(&[]), [("dug_on", "form-move-no-day")]);
        assert_eq!(
            wrong(&[("dug_on", "2026-06-01")]),
            [("dug_on", "form-date-in-future")]
        );
        assert_eq!(
            wrong(&[("dug_on", "2026-04-01"), ("planted_on", "2026-03-30")]),
            [("planted_on", "form-move-planted-before")]
        );
        assert_eq!(
            wrong(&[("dug_on", "2026-04-01"), ("ball_radius", "0")]),
            [("ball_radius", "form-move-no-size")]
        );
        assert_eq!(
            wrong(&[("dug_on", "2026-04-01"), ("deeper", "0.3")]),
            [("depth_way", "form-move-which-way")]
        );
        // a move before the one that is known may be meant
        assert_eq!(
            wrong(&[("dug_on", "2025-04-01")]),
            [("dug_on", "form-move-older")]
        );
        let confirmed = [("dug_on", "2025-04-01"), ("confirm-form-move-older", "yes")];
        assert!(check(&confirmed, Units::Metric).is_ok());
    }
}
