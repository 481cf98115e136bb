//! The sign picker: place by place on the palm, each sign seen, not there, or not looked for.
//!
//! Plain radio buttons in folded parts: works without script. `assets/signs.js` adds the search and keeps the tally.

use super::parts::Sheet;
use crate::{assets, drawn};
use desk::forms::{ABSENT, SEEN, SIGN_FIELD};
use desk::views::judgement::LookView;
use desk::views::picker::{Offered, Place};
use maud::{Markup, html};

/// The picker; `next` are the looks that are worth most, linked to their rows.
pub fn picker(sheet: Sheet, places: &[Place], next: &[LookView]) -> Markup {
    html! {
        fieldset.signs #signs tabindex="-1" aria-describedby=[sheet.described("signs", true)] {
            legend { (sheet.say("forms-signs")) }
            p.hint #signs-hint { (sheet.say("forms-signs-hint")) }
            (sheet.at("signs"))
            (worth(sheet, next))
            div.field.find.by-script hidden {
                label for="signs-find" { (sheet.say("forms-signs-find")) }
                input #signs-find type="search" autocomplete="off" data-say-none=(sheet.say("forms-signs-find-none"));
                p.hint #signs-found role="status" {}
            }
            @for place in places { (part(sheet, place)) }
            script src=(assets::address("signs.js")) defer {}
        }
    }
}

fn worth(sheet: Sheet, next: &[LookView]) -> Markup {
    html! {
        @if !next.is_empty() {
            div.worth {
                p { strong { (sheet.say("forms-signs-worth")) } }
                ul { @for look in next { li { a href={ "#sign-" (look.sign) } data-sign=(look.sign) { (look.name) } } } }
            }
        }
    }
}

fn part(sheet: Sheet, place: &Place) -> Markup {
    html! {
        details.place open[place.open] data-place=(place.key) {
            summary {
                (drawn::place(place.part))
                span.name { (place.name) }
                span.tally { span.sr { (sheet.say("forms-signs-noted")) " " } b { (place.answered) } " / " (place.signs.len()) }
            }
            @for sign in &place.signs { (row(sheet, sign)) }
        }
    }
}

fn row(sheet: Sheet, sign: &Offered) -> Markup {
    let id = format!("sign-{}", sign.key);
    let label = format!("{id}-name");
    html! {
        div.sign id=(id) role="radiogroup" aria-labelledby=(label) data-noted=(sign.noted) {
            @if sign.how.is_empty() { p.what { (drawn::sign(&sign.key)) span.name id=(label) { (sign.name) } } } @else {
                details.what {
                    summary { (drawn::sign(&sign.key)) span.name id=(label) { (sign.name) } }
                    p { (sign.how) }
                    p.hint { (sign.takes) }
                }
            }
            div.states {
                @for (value, words) in [(SEEN, "seen"), (ABSENT, "absent"), ("", "open")] {
                    label class=(words) {
                        input type="radio" name={ (SIGN_FIELD) (sign.key) } value=(value) checked[sign.noted == value];
                        span { (sheet.say(&format!("forms-signs-{words}"))) }
                    }
                }
            }
        }
    }
}
