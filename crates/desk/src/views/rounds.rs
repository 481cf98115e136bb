//! Day rounds as pages show them: the list, planning a day, one round under way.

mod builder;
mod list;
mod map;
mod round;
mod sheet;
#[cfg(test)]
mod tests;

pub use builder::{
    BuilderView, CrewChoice, LeftGroup, ProposalView, RoundTable, SiteChoice, StopRow, builder,
    json, proposal,
};
pub use list::{RoundRow, RoundsView, list, of_today};
pub use map::{Dot, MapView, Track};
pub use round::{NextStop, RoundPage, StopLine, page};
pub use sheet::{Card, CrewSheet, SheetRow, Warned, sheet};

use super::said::Speaker;
use model::Day;

/// Seconds after midnight as an hour: "07:05"; after midnight of the next day "25:10" is said as "01:10".
pub fn hour(seconds: u32) -> String {
    format!("{:02}:{:02}", seconds / 3600 % 24, seconds / 60 % 60)
}

/// Minutes as "45 min" or "3 h 20".
pub fn minutes(minutes: f64) -> String {
    let whole = minutes.round().max(0.0) as u64;
    match whole / 60 {
        0 => format!("{whole}\u{a0}min"),
        hours => format!("{hours}\u{a0}h\u{a0}{:02}", whole % 60),
    }
}

/// A way in kilometres or miles, to a tenth.
pub fn way(speaker: &Speaker, metres: f64) -> String {
    use crate::measure::Units;
    let (value, unit) = match speaker.measure.units {
        Units::Metric => (metres / 1000.0, "km"),
        Units::UsCustomary => (metres / 1609.344, "mi"),
    };
    format!("{}\u{a0}{unit}", speaker.measure.number(value, 1))
}

/// A task of a stop in words; one nobody knows stands as it was written.
fn task(speaker: &Speaker, key: &str) -> String {
    let code = format!("round-task-{key}");
    if speaker.words().has(&code) {
        speaker.say(&code)
    } else {
        key.to_owned()
    }
}

/// "16 Jun 2026, 07:05 to 14:50".
fn when(speaker: &Speaker, day: Day, leave: Option<u32>, back: Option<u32>) -> String {
    let date = ("date", speaker.measure.date(day).into());
    match (leave, back) {
        (Some(leave), Some(back)) => {
            let times = [
                date,
                ("leave", hour(leave).into()),
                ("back", hour(back).into()),
            ];
            speaker.text("round-when", &times)
        }
        _ => speaker.text("round-when-day", &[date]),
    }
}
