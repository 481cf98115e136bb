//! What is known of the palm and of its species.

use super::said;
use crate::Reader;
use desk::views::Fact;
use desk::views::palm::PalmView;
use maud::{Markup, html};

/// The palm's own description.
pub fn own(reader: &Reader, view: &PalmView) -> Markup {
    html! {
        section.facts aria-labelledby="own" {
            h2 #own { (reader.say("palm-own")) }
            (list(reader, &view.own))
        }
    }
}

/// Its species.
pub fn species(reader: &Reader, view: &PalmView) -> Markup {
    html! {
        @if !view.about_species.is_empty() {
            section.facts aria-labelledby="species" {
                h2 #species { (reader.say("palm-species")) }
                (list(reader, &view.about_species))
            }
        }
    }
}

/// Facts, name by name, with their sources.
pub fn list(reader: &Reader, facts: &[Fact]) -> Markup {
    html! {
        dl.facts {
            @for fact in facts {
                dt { (fact.name) }
                dd class=[(!fact.known).then_some("unknown")] { (value(fact)) }
            }
        }
        @if facts.iter().any(|f| !f.sources.is_empty()) {
            details.why {
                summary { (reader.say("palm-sources")) }
                dl.facts {
                    @for fact in facts.iter().filter(|f| !f.sources.is_empty()) {
                        dt { (fact.name) }
                        dd { (said::sources(&fact.sources)) }
                    }
                }
            }
        }
    }
}

fn value(fact: &Fact) -> Markup {
    html! {
        span { (fact.value) }
        @if let Some(mark) = &fact.mark { " " span.mark { (mark) } }
        @if let Some(note) = &fact.note { " " span.small lang="en" { (note) } }
    }
}
