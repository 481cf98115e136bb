//! Findings and sources on a page.

use crate::Reader;
use desk::views::{Cited, Otherwise, Said};
use maud::{Markup, html};

/// A list of findings, each with its reasons and sources one tap away.
pub fn list(reader: &Reader, said: &[Said]) -> Markup {
    html! { ul.said { @for one in said { li class=(one.weight) data-code=(one.code) { (finding(reader, one)) } } } }
}

/// One finding.
pub fn finding(reader: &Reader, said: &Said) -> Markup {
    html! {
        p.words { span.weight { (reader.say(&format!("cut-weight-{}", said.weight))) } " " (said.text) }
        @if said.sources.is_empty() && said.otherwise.is_empty() {
            @if let Some(basis) = &said.basis { p.basis { (basis) } }
        } @else {
            details.why {
                summary { (reader.say("palm-why")) }
                @if let Some(basis) = &said.basis { p.basis { (basis) } }
                (sources(&said.sources))
                @for other in &said.otherwise { (otherwise(reader, other)) }
            }
        }
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
        @if !source.by.is_empty() { br; span.by { (source.by) } }
        @if let Some(mark) = &source.mark { " " span.mark { (mark) } }
    }
}
