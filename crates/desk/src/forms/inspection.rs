//! The inspection form: one look at one stem.
//!
//! Fields: `stem`, `date`, `green`, `yellowing`, `brown`, `new_leaves`, `removed_green`, `removed_yellowing`,
//! `removed_brown`, `spear`, `clock_left`, `clock_right`, `notes`, and the signs (see [`super::signs`]). An empty count
//! was not counted; `0` is none.

use super::field::{Fields, count_arg, text_arg};
use super::{Trouble, Typed, signs};
use model::{Arg, Day, Finding, Inspection, PalmRecord, Removed, Severity, Spear};

/// No crown carries more fronds than this, dead skirt included; a larger count is a slip of the keypad (assumed;
/// the same limit as for imported files).
pub const MOST_FRONDS: u32 = 1000;

/// More green fronds than this are asked about once: the fullest crown in the species table, a large
/// *Phoenix canariensis*, carries about 150 (assumed limit).
const UNUSUAL_GREEN: u32 = 250;

/// What the form is checked against.
#[derive(Clone, Copy)]
pub struct About<'a> {
    /// The palm looked at.
    pub record: &'a PalmRecord,
    /// No look is later than this.
    pub today: Day,
    /// The inspection this form corrects, if it does.
    pub correcting: Option<&'a Inspection>,
}

/// Checks an inspection form. Columns of an imported row that the form does not show are kept on correction.
pub fn inspection(typed: &Typed, about: About) -> Result<Inspection, Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let stem = stem(&mut fields, about.record.palm.stems);
    let date = fields.past_day("date", about.today);
    if typed.get("date").is_empty() {
        fields.refuse("date", "form-date-missing");
    }
    let mut look = Inspection::blank(stem, date.unwrap_or(about.today));
    counts(&mut fields, &mut look);
    look.spear = spear(&mut fields);
    look.clock_left = fields.clock("clock_left", false);
    look.clock_right = fields.clock("clock_right", true);
    look.notes = fields.text("notes");
    (look.signs, look.absent) = signs::noted(&mut fields, typed, about.correcting);
    if let Some(before) = about.correcting {
        look.extra = before.extra.clone();
    }
    more_taken_than_counted(&mut fields, &look);
    nothing_noted(&mut fields, &look, typed);
    before_planting(&mut fields, &look, about);
    against_earlier(&mut fields, &look, about);
    fields.or(look)
}

/// The form filled with an inspection, for correcting it.
pub fn typed_inspection(look: &Inspection) -> Typed {
    let count = |count: Option<u32>| count.map_or(String::new(), |c| c.to_string());
    let hours = |clock: Option<model::Clock>| clock.map_or(String::new(), |c| c.0.to_string());
    let mut typed = Typed::of([
        ("stem", look.stem.to_string()),
        ("date", look.date.to_string()),
        ("green", count(look.green)),
        ("yellowing", count(look.yellowing)),
        ("brown", count(look.brown)),
        ("new_leaves", count(look.new_leaves)),
        ("removed_green", count(look.removed.green)),
        ("removed_yellowing", count(look.removed.yellowing)),
        ("removed_brown", count(look.removed.brown)),
        ("spear", look.spear.map_or("", Spear::word).to_owned()),
        ("clock_left", hours(look.clock_left)),
        ("clock_right", hours(look.clock_right)),
        ("notes", look.notes.clone()),
    ]);
    signs::typed_signs(look, &mut typed);
    typed
}

fn stem(fields: &mut Fields, stems: u16) -> u16 {
    let Some(text) = fields.some("stem") else {
        return 1;
    };
    match text.parse::<u16>() {
        Ok(stem) if (1..=stems.max(1)).contains(&stem) => stem,
        _ => {
            let finding = Finding::new("form-stem-unknown", Severity::Refuse);
            fields.add(
                "stem",
                finding
                    .with("stems", Arg::Count(i64::from(stems)))
                    .with("found", text_arg(text)),
            );
            1
        }
    }
}

fn counts(fields: &mut Fields, look: &mut Inspection) {
    look.green = fields.count("green", MOST_FRONDS);
    look.yellowing = fields.count("yellowing", MOST_FRONDS);
    look.brown = fields.count("brown", MOST_FRONDS);
    look.new_leaves = fields.count("new_leaves", MOST_FRONDS);
    look.removed = Removed {
        green: fields.count("removed_green", MOST_FRONDS),
        yellowing: fields.count("removed_yellowing", MOST_FRONDS),
        brown: fields.count("removed_brown", MOST_FRONDS),
    };
    if let Some(green) = look.green.filter(|green| *green > UNUSUAL_GREEN) {
        fields.ask(
            "green",
            Finding::new("form-green-unusual", Severity::Caution).with("count", count_arg(green)),
        );
    }
}

fn spear(fields: &mut Fields) -> Option<Spear> {
    let text = fields.some("spear")?;
    let spear = Spear::parse(text);
    if spear.is_none() {
        fields.add(
            "spear",
            Finding::new("form-spear-unknown", Severity::Refuse).with("found", text_arg(text)),
        );
    }
    spear
}

/// What is taken off after the count cannot be more than was counted.
fn more_taken_than_counted(fields: &mut Fields, look: &Inspection) {
    let pairs = [
        ("removed_green", look.removed.green, look.green),
        ("removed_yellowing", look.removed.yellowing, look.yellowing),
        ("removed_brown", look.removed.brown, look.brown),
    ];
    for (name, taken, counted) in pairs {
        if let (Some(taken), Some(counted)) = (taken, counted)
            && taken > counted
        {
            let finding = Finding::new("form-more-taken-than-counted", Severity::Refuse);
            fields.add(
                name,
                finding
                    .with("taken", count_arg(taken))
                    .with("counted", count_arg(counted)),
            );
        }
    }
}

fn nothing_noted(fields: &mut Fields, look: &Inspection, typed: &Typed) {
    let counted = typed.any(&[
        "green",
        "yellowing",
        "brown",
        "new_leaves",
        "removed_green",
        "removed_yellowing",
        "removed_brown",
    ]);
    let seen = typed.any(&["spear", "clock_left", "clock_right", "notes"]) || signs::any(typed);
    if !counted && !seen && look.signs.is_empty() && look.absent.is_empty() {
        fields.refuse("", "form-nothing-noted");
    }
}

/// A palm that was never moved cannot have been counted before it was planted.
fn before_planting(fields: &mut Fields, look: &Inspection, about: About) {
    let palm = &about.record.palm;
    if let Some(planted) = palm
        .planted_on
        .filter(|planted| look.date < *planted && palm.moved_on.is_none())
    {
        let finding = Finding::new("form-before-planting", Severity::Refuse);
        fields.add("date", finding.with("planted", Arg::Date(planted)));
    }
}

/// A second look at the same stem and day takes the first one's place; three times the live fronds is likely a slip.
fn against_earlier(fields: &mut Fields, look: &Inspection, about: About) {
    let mut others = about
        .record
        .looks(look.stem)
        .filter(|i| !corrected(i, about));
    if about
        .record
        .looks(look.stem)
        .any(|i| i.date == look.date && !corrected(i, about))
    {
        fields.ask(
            "date",
            Finding::new("form-same-day", Severity::Caution).with("date", Arg::Date(look.date)),
        );
    }
    let before = others.rfind(|i| i.date < look.date && i.live().is_some());
    let (Some(before), Some(live)) = (before, look.live()) else {
        return;
    };
    let earlier = before.live().unwrap_or(0);
    if live > 3 * earlier + 10 {
        let finding = Finding::new("form-count-jump", Severity::Caution);
        let finding = finding
            .with("live", count_arg(live))
            .with("before", count_arg(earlier));
        fields.ask("green", finding.with("date", Arg::Date(before.date)));
    }
}

fn corrected(other: &Inspection, about: About) -> bool {
    about
        .correcting
        .is_some_and(|c| c.stem == other.stem && c.date == other.date)
}

#[cfg(test)]
mod tests;
