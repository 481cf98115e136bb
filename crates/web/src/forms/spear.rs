//! The spear's state: four big choices, each with a small drawing, and "not looked at".

use super::parts::Sheet;
use maud::{Markup, html};
use model::Spear;

/// The choice.
pub fn choice(sheet: Sheet) -> Markup {
    let chosen = sheet.value("spear");
    html! {
        fieldset.spear #spear tabindex="-1" aria-describedby=[sheet.described("spear", true)] {
            legend { (sheet.say("forms-spear")) }
            p.hint #spear-hint { (sheet.say("forms-spear-hint")) }
            div.four {
                @for (spear, word) in Spear::ALL {
                    label.card {
                        input type="radio" name="spear" value=(word) checked[word == chosen];
                        (drawing(spear))
                        span { (sheet.say(&format!("forms-spear-{word}"))) }
                    }
                }
            }
            label.choice {
                input type="radio" name="spear" value="" checked[chosen.is_empty()];
                span { (sheet.say("forms-spear-none")) }
            }
            (sheet.at("spear"))
        }
    }
}

/// A crown from the side, its spear drawn heavily.
fn drawing(spear: Spear) -> Markup {
    let path = match spear {
        Spear::Firm => "M32 42 C 31 30 31 18 32 5",
        Spear::Leaning => "M32 42 C 35 31 41 20 49 11",
        Spear::Down => "M32 42 C 36 22 52 22 57 46",
        Spear::Pulled => "M14 20 C 24 13 38 10 52 11",
    };
    html! {
        svg viewBox="0 0 64 64" width="64" height="64" aria-hidden="true" focusable="false" {
            path.stem d="M28 44 h8 l1 18 h-10 z" {}
            path.frond d="M30 43 C 22 30 12 30 5 40 M34 43 C 42 30 52 30 59 40 M30 44 C 24 40 14 44 10 54 M34 44 C 40 40 50 44 54 54" {}
            path.spear d=(path) {}
            @if spear == Spear::Pulled { path.gap d="M32 40 V22 M28 27 l4 -6 l4 6" {} }
        }
    }
}
