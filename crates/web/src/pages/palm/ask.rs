//! "What if I am asked to take ...": the question and its answer.

use super::cutting::lines;
use super::said;
use crate::{Reader, address};
use desk::views::Answer;
use desk::views::palm::PalmView;
use maud::{Markup, html};

/// The section.
pub fn section(reader: &Reader, view: &PalmView) -> Markup {
    html! {
        section.asked aria-labelledby="asked" {
            h2 #asked { (reader.say("palm-asked")) }
            @if let Some(answer) = &view.answer { (says(reader, answer)) }
            (form(reader, view))
        }
    }
}

fn form(reader: &Reader, view: &PalmView) -> Markup {
    let asked = &view.question;
    let by_colour = asked.green.or(asked.yellowing).is_some();
    html! {
        form.ask-cut method="get" action={ (address::palm(&view.tag, "")) "#asked" } {
            @if !view.stems.is_empty() { input type="hidden" name="stem" value=(view.stem); }
            div.fields {
                (number(reader, "live", "asked-live", asked.live))
                (number(reader, "brown", "asked-brown", asked.brown))
                div.field {
                    label for="ask-next" { (reader.say("asked-next-visit")) }
                    input #ask-next type="date" name="next" value=(view.next_visit);
                }
            }
            details.why open[by_colour] {
                summary { (reader.say("asked-by-colour")) }
                div.fields {
                    (number(reader, "green", "asked-green", asked.green))
                    (number(reader, "yellowing", "asked-yellowing", asked.yellowing))
                }
            }
            p.small { (reader.say("asked-visit-note")) }
            button.primary type="submit" { (reader.say("asked-ask")) }
        }
    }
}

fn number(reader: &Reader, name: &str, label: &str, value: Option<u32>) -> Markup {
    html! {
        div.field {
            label for={ "ask-" (name) } { (reader.say(label)) }
            input id={ "ask-" (name) } type="number" inputmode="numeric" min="0" max="999" name=(name) value=[value];
        }
    }
}

fn says(reader: &Reader, answer: &Answer) -> Markup {
    html! {
        div class={ "answer " (answer.key) } role="status" data-testid="answer" data-verdict=(answer.key) {
            p.verdict { (answer.verdict) }
            dl.lines {
                dt { (reader.say("asked-was")) } dd { (answer.asked) }
                dt { (reader.say("asked-allowed")) } dd data-testid="allowed" { (answer.allowed) }
            }
            (said::list(reader, &answer.findings))
            (said::reasons(reader, &answer.findings))
            h3 { (reader.say("asked-cost")) }
            (lines(&answer.cost))
            @if !answer.cost_if_allowed.is_empty() {
                h3 { (reader.say("asked-cost-allowed")) }
                (lines(&answer.cost_if_allowed))
            }
        }
    }
}
