//! The clock: a dial to tap, and two lists of quarter hours that do the same without script.
//!
//! The dial stands for the crown seen from the side: 12 is the spear, 9 and 3 the level line. The left half is the
//! left side of the crown, the right half the right side.

use super::parts::Sheet;
use maud::{Markup, html};

/// Quarter hours of one side, from straight up to straight down, as `(value, shown)`.
fn quarters(right: bool) -> Vec<(String, String)> {
    let steps = 0..=24u32;
    steps
        .map(|step| if right { step } else { 48 - step })
        .map(|quarter| (value(quarter), shown(quarter)))
        .collect()
}

/// Quarters since 12 as hours the way files have them: 12, 0.25, ... 11.75.
fn value(quarter: u32) -> String {
    if quarter.is_multiple_of(48) {
        "12".to_owned()
    } else {
        (f64::from(quarter) / 4.0).to_string()
    }
}

/// The same as a clock shows it: 12:00, 12:15, ... 11:45.
fn shown(quarter: u32) -> String {
    let hour = (quarter / 4 + 11) % 12 + 1;
    format!("{hour}:{:02}", quarter % 4 * 15)
}

/// The whole picker.
pub fn picker(sheet: Sheet) -> Markup {
    html! {
        fieldset.clock {
            legend { (sheet.say("forms-clock")) }
            p.hint { (sheet.say("forms-clock-hint")) }
            (dial(sheet))
            div.sides {
                (side(sheet, "clock_left", false))
                (side(sheet, "clock_right", true))
            }
        }
    }
}

fn side(sheet: Sheet, name: &str, right: bool) -> Markup {
    let chosen = sheet.value(name);
    let known = quarters(right);
    let odd = !chosen.is_empty() && !known.iter().any(|(value, _)| value == chosen);
    html! {
        div.field {
            label for=(name) { (sheet.say(&format!("forms-{name}"))) }
            select id=(name) name=(name) aria-describedby=[sheet.described(name, false)] aria-invalid=[sheet.invalid(name)] {
                option value="" { (sheet.say("forms-clock-none")) }
                // what was sent stays in the list even where it is no quarter hour, so that it is not lost
                @if odd { option value=(chosen) selected { (chosen) } }
                @for (value, shown) in &known { option value=(value) selected[value == chosen] { (shown) } }
            }
            div.steps.by-script hidden {
                button type="button" data-clock=(name) data-step="-1" aria-label=(sheet.say("forms-clock-higher")) { "▲" }
                button type="button" data-clock=(name) data-step="1" aria-label=(sheet.say("forms-clock-lower")) { "▼" }
            }
            (sheet.at(name))
        }
    }
}

/// Degrees clockwise from 12 of a chosen value, for drawing the hand.
fn degrees(hours: &str) -> Option<f64> {
    hours
        .parse::<f64>()
        .ok()
        .filter(|h| (0.0..=12.0).contains(h))
        .map(|h| h * 30.0)
}

fn dial(sheet: Sheet) -> Markup {
    html! {
        svg.dial #dial viewBox="-170 -170 340 340" aria-hidden="true" focusable="false" {
            circle.face r="160" {}
            rect.trunk x="-13" y="6" width="26" height="98" rx="6" {}
            line.level x1="-106" y1="0" x2="106" y2="0" {}
            @for quarter in 0..48 { (tick(quarter)) }
            @for hour in 1..=12 { (numeral(hour)) }
            (hand("clock_left", degrees(sheet.value("clock_left"))))
            (hand("clock_right", degrees(sheet.value("clock_right"))))
            circle.hub r="12" {}
        }
    }
}

fn tick(quarter: u32) -> Markup {
    let turn = format!("rotate({})", f64::from(quarter) * 7.5);
    let inner = if quarter.is_multiple_of(4) {
        "-142"
    } else {
        "-151"
    };
    html! { line.tick x1="0" x2="0" y1="-159" y2=(inner) transform=(turn) {} }
}

/// Numerals stand upright: turn out, turn back.
fn numeral(hour: u32) -> Markup {
    let turn = f64::from(hour) * 30.0;
    let place = format!("rotate({turn}) translate(0 -122) rotate({})", -turn);
    html! { text.numeral transform=(place) text-anchor="middle" dominant-baseline="central" { (hour) } }
}

/// A frond as the clock's hand, tip up; the script turns it.
fn hand(name: &str, degrees: Option<f64>) -> Markup {
    let turn = format!("rotate({})", degrees.unwrap_or(0.0));
    let class = if degrees.is_some() {
        "hand"
    } else {
        "hand unset"
    };
    html! {
        g class=(class) data-hand=(name) transform=(turn) {
            path.blade d="M0 -104 C 15 -80 17 -44 4 -22 L 0 -8 L -4 -22 C -17 -44 -15 -80 0 -104 Z" {}
            path.rib d="M0 0 V-98" {}
            path.rib d="M0 -36 l10 -13 M0 -36 l-10 -13 M0 -54 l11 -14 M0 -54 l-11 -14 M0 -72 l8 -11 M0 -72 l-8 -11" {}
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quarters_run_from_up_to_down_on_both_sides() {
        let (left, right) = (quarters(false), quarters(true));
        let ends = |side: &[(String, String)]| {
            (
                side[0].clone(),
                side[1].clone(),
                side[12].clone(),
                side[24].clone(),
            )
        };
        let pair = |value: &str, shown: &str| (value.to_owned(), shown.to_owned());
        let up = pair("12", "12:00");
        assert_eq!(
            ends(&left),
            (
                up.clone(),
                pair("11.75", "11:45"),
                pair("9", "9:00"),
                pair("6", "6:00")
            )
        );
        assert_eq!(
            ends(&right),
            (
                up,
                pair("0.25", "12:15"),
                pair("3", "3:00"),
                pair("6", "6:00")
            )
        );
    }
}
