//! The summary as a page draws it.

use crate::pages::owner::{legend, points, rests_on};
use crate::{Reader, address};
use desk::views::owner_summary::{DoneRow, NextRow, PalmCard, SummaryView};
use maud::{Markup, PreEscaped, html};

/// All of it below the head.
pub fn body(reader: &Reader, view: &SummaryView) -> Markup {
    html! {
        (glance(reader, view))
        (palms(reader, view))
        section.call-box {
            h2 { (reader.say("owner-call-title")) }
            p { (view.call_at_once) }
        }
        (next(reader, view))
        (done(reader, view))
        section #mind {
            h2 { (reader.say("summary-mind-title")) }
            (points(&view.mind))
            p.small { (view.level) }
        }
        (rests_on(reader, view.cards.iter().flat_map(|card| &card.points).chain(&view.mind)))
    }
}

fn glance(reader: &Reader, view: &SummaryView) -> Markup {
    html! {
        section #glance {
            h2 { (reader.say("summary-glance-title")) }
            ul.counts {
                @for count in &view.counts {
                    li.strong[matches!(count.key, "held" | "call") && count.n > 0] data-count=(count.key) {
                        strong { (count.figure) } " " span { (count.what) }
                    }
                }
            }
            @for note in &view.count_notes { p.small { (note) } }
        }
    }
}

fn palms(reader: &Reader, view: &SummaryView) -> Markup {
    html! {
        section #palms {
            h2 { (reader.say("summary-palms-title")) }
            @if view.cards.is_empty() { p { (reader.say("summary-palms-none")) } } @else {
                ul.cards { @for one in &view.cards { (card(view, one)) } }
                (legend(reader))
                p.small { (reader.say("summary-palms-drawn")) }
            }
            @if !view.lines.is_empty() {
                h3 { (reader.say("summary-also")) }
                ul.also {
                    @for line in &view.lines {
                        li data-tag=(line.tag) data-key=(line.key) { a href=(address::palm(&line.tag, "/owner")) { (line.tag) } " " (line.text) }
                    }
                }
            }
            @if let Some(more) = &view.more_palms { p { (more) } }
            h3 { (reader.say("summary-others-title")) }
            ul.others { @for line in &view.others { li { (line) } } }
        }
    }
}

fn card(view: &SummaryView, card: &PalmCard) -> Markup {
    html! {
        li data-tag=(card.tag) data-key=(card.key) {
            div.crown { (PreEscaped(&card.svg)) }
            div.name {
                p.tag { a href=(address::palm(&card.tag, "/owner")) { (card.tag) } }
                p { span.stand.urgent[matches!(card.key, "call" | "held")] { (card.stand) } }
                p.kind { i lang="la" { (card.species) } @if view.sites_differ() && !card.site.is_empty() { " · " (card.site) } }
            }
            (points(&card.points))
        }
    }
}

fn next(reader: &Reader, view: &SummaryView) -> Markup {
    html! {
        section #next {
            h2 { (reader.say("owner-next-title")) }
            @if view.next.is_empty() { p { (reader.say("summary-next-none")) } } @else {
                ul.told-list { @for row in &view.next { (next_row(view, row)) } }
            }
            @for note in &view.next_notes { p.small { (note) } }
        }
    }
}

fn next_row(view: &SummaryView, row: &NextRow) -> Markup {
    html! {
        li data-kind=(row.kind) data-day=(row.day.to_string()) {
            p { strong { (row.date) } @if view.sites_differ() { " · " (row.site) } " · " (row.kind_words) }
            p { (row.what) }
        }
    }
}

fn done(reader: &Reader, view: &SummaryView) -> Markup {
    html! {
        section #done {
            h2 { (reader.say("owner-done-title")) }
            @if view.done.is_empty() { p { (reader.say("summary-done-none")) } } @else {
                ul.told-list { @for row in &view.done { (done_row(reader, view, row)) } }
            }
            @for note in &view.done_notes { p.small { (note) } }
        }
    }
}

fn done_row(reader: &Reader, view: &SummaryView, row: &DoneRow) -> Markup {
    html! {
        li data-kind=(row.kind) {
            p { strong { (row.date) } @if view.sites_differ() { " · " (row.site) } " · " (row.palms) }
            p { (row.what) }
            p.soft {
                (reader.say("summary-head-crew")) ": " (row.crew)
                @if !row.blades.is_empty() {
                    " · " (reader.say("summary-head-blades")) ": "
                    @if row.dirty { strong { (row.blades) } } @else { (row.blades) }
                }
            }
        }
    }
}
