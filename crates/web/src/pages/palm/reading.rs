//! What is going on: probabilities in words and bars.

use super::said;
use crate::Reader;
use desk::views::palm::PalmView;
use desk::views::{Bar, Learned};
use maud::{Markup, html};

/// The section.
pub fn section(reader: &Reader, view: &PalmView) -> Markup {
    let reading = &view.reading;
    html! {
        section.reading aria-labelledby="reading" {
            h2 #reading { (reader.say("palm-reading")) }
            p.headline data-testid="headline" data-explanation=(reading.key) { (reading.headline) }
            @if let Some(last) = &view.last_look { p { (last) } }
            (bars("explanations", &reading.bars))
            @if !reading.palm_bars.is_empty() {
                h3 { (reader.say("palm-whole")) }
                (bars("explanations-palm", &reading.palm_bars))
            }
            p { (reading.rests_on) }
            details.why {
                summary { (reader.say("palm-basis")) }
                p { (reading.prior) " " (reading.season) }
                @for figure in &reading.learned { (learned(figure)) }
            }
            p.due data-testid="due" { strong { (view.due) } br; span.small { (view.due_note) } }
        }
    }
}

fn bars(id: &str, bars: &[Bar]) -> Markup {
    html! {
        ul.bars id=(id) {
            @for bar in bars {
                li data-explanation=(bar.key) {
                    p { strong { (bar.name) } span.odds { (bar.words) ", " span data-testid={ "p-" (bar.key) } { (bar.percent) } } }
                    svg class={ "chance " (bar.key) } viewBox="0 0 100 5" preserveAspectRatio="none" aria-hidden="true" {
                        rect.whole width="100" height="5" {}
                        rect.part width=(bar.length) height="5" {}
                    }
                    p.small { (bar.means) }
                }
            }
        }
    }
}

fn learned(figure: &Learned) -> Markup {
    html! {
        div.fact {
            p { (figure.name) ": " strong { (figure.value) } }
            p.small { (figure.before) "." @for mark in &figure.marks { " " span.mark { (mark) } } }
            (said::sources(&figure.sources))
        }
    }
}
