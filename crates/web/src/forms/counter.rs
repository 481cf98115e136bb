//! A count: minus, the number pad, plus. Empty means not counted, which is not none.

use super::parts::Sheet;
use maud::{Markup, html};

/// One counter; `last` is the count of the look before, shown so that a slip is seen.
pub fn counter(sheet: Sheet, name: &str, tint: &str, last: Option<u32>) -> Markup {
    let label = sheet.say(&format!("forms-{name}"));
    let value = sheet.value(name);
    let hint_id = format!("{name}-hint");
    html! {
        div.counter data-counter=(name) {
            label for=(name) { span.swatch.(tint) aria-hidden="true" {} (label) }
            div.row {
                button.by-script.step type="button" hidden data-add="-1" aria-label={ (sheet.say("forms-one-less")) ": " (label) } { "−" }
                input type="text" inputmode="numeric" id=(name) name=(name) value=(value) autocomplete="off"
                    maxlength="6" placeholder=(sheet.say("forms-not-counted"))
                    aria-describedby=[sheet.described(name, true)] aria-invalid=[sheet.invalid(name)];
                button.by-script.step type="button" hidden data-add="1" aria-label={ (sheet.say("forms-one-more")) ": " (label) } { "+" }
                button.by-script.none type="button" hidden data-none data-say-none=(sheet.say("forms-none")) data-say-clear=(sheet.say("forms-clear"))
                    data-label=(label) { (sheet.say("forms-none")) }
            }
            p.hint id=(hint_id) { (hint(sheet, name, last)) }
            (sheet.at(name))
        }
    }
}

fn hint(sheet: Sheet, name: &str, last: Option<u32>) -> String {
    let own = sheet.say(&format!("forms-{name}-hint"));
    let Some(last) = last else { return own };
    let last = sheet
        .reader
        .words
        .text("forms-last-count", &[("n", last.into())]);
    format!("{own} {last}")
}
