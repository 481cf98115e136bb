//! Findings and sources on a page.

use crate::Reader;
use desk::views::{Cited, Otherwise, Said};
use maud::{Markup, html};

/// A numbered list of findings; [`reasons`] below it says where they come from.
pub fn list(reader: &Reader, said: &[Said]) -> Markup {
    html! {
        ol.said { @for one in said { li class=(one.weight) data-code=(one.code) { (words(reader, one)) } } }
    }
}

/// One tap away: where each finding of a list comes from, under the same numbers.
pub fn reasons(reader: &Reader, said: &[Said]) -> Markup {
    html! {
        @if !said.is_empty() {
            details.why {
                summary { (reader.say("palm-why")) }
                ol.reasons { @for one in said { li { (source_of(reader, one)) } } }
            }
        }
    }
}

/// A closed list: one tap shows the findings with where they come from.
pub fn closed(reader: &Reader, title: &str, said: &[Said]) -> Markup {
    let count = [
        ("title", reader.say(title).into()),
        ("n", (said.len() as i64).into()),
    ];
    html! {
        @if !said.is_empty() {
            details.why {
                summary { (reader.words.text("palm-closed", &count)) }
                ul.said {
                    @for one in said {
                        li class=(one.weight) data-code=(one.code) { (words(reader, one)) (source_of(reader, one)) }
                    }
                }
            }
        }
    }
}

/// The words of a finding, with its weight where that is more than worth knowing.
fn words(reader: &Reader, said: &Said) -> Markup {
    html! {
        p.words {
            @if said.weight != "info" { span.weight { (reader.say(&format!("cut-weight-{}", said.weight))) } " " }
            (said.text)
        }
    }
}

fn source_of(reader: &Reader, said: &Said) -> Markup {
    html! {
        @if let Some(basis) = &said.basis { p.basis { (basis) } }
        (sources(&said.sources))
        @for other in &said.otherwise { (otherwise(reader, other)) }
    }
}

fn otherwise(reader: &Reader, other: &Otherwise) -> Markup {
    html! {
        p.otherwise { strong { (reader.say("palm-otherwise")) ": " } (other.text) }
        (sources(&other.sources))
    }
}

/// Sources with links into the page of sources.
pub fn sources(cited: &[Cited]) -> Markup {
    html! {
        @if !cited.is_empty() {
            ul.sources { @for source in cited { li { (cite(source)) } } }
        }
    }
}

/// One source.
pub fn cite(source: &Cited) -> Markup {
    html! {
        a href={ "/sources#" (source.key) } { (source.title) }
        @if !source.by.is_empty() { span.by { (source.by) } }
        @if let Some(mark) = &source.mark { " " span.mark { (mark) } }
    }
}
