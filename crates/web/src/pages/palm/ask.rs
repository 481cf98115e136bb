//! "What if I am asked to take ...": the question and its answer.

use super::cutting::lines;
use super::said;
use crate::{Reader, address};
use care::Grounds;
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
            (circumstances(reader, view))
            p.small { (reader.say("asked-visit-note")) }
            button.primary type="submit" { (reader.say("asked-ask")) }
        }
    }
}

/// What the rules cannot see from the counts; it changes the plan above as well as the answer.
fn circumstances(reader: &Reader, view: &PalmView) -> Markup {
    let grounds = view.question.grounds;
    html! {
        details.why open[grounds != Grounds::default()] {
            summary { (reader.say("asked-circumstances")) }
            (tick(reader, "storm", grounds.storm_expected))
            @if view.on_site.weevil_area != Some(true) { (tick(reader, "weevil", grounds.weevil_area)) }
            @for line in &view.site_says { p.small data-testid="site-says" { (line) } }
            div.fields {
                div.field {
                    label for="ask-freeze" { (reader.say("asked-freeze")) }
                    input #ask-freeze type="date" name="freeze" value=[grounds.freeze_on];
                }
                div.field {
                    label for="ask-kv" { (reader.say("asked-kv")) }
                    input #ask-kv type="number" inputmode="decimal" min="0" max="1500" step="any" name="kv" value=[grounds.line_kv];
                }
            }
        }
    }
}

fn tick(reader: &Reader, name: &str, on: bool) -> Markup {
    html! {
        label.choice {
            input type="checkbox" id={ "ask-" (name) } name=(name) value="1" checked[on];
            span { (reader.say(&format!("asked-{name}"))) }
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
