//! The sheet as a page draws it: for the owner, and for the keeper who previews it.

use crate::{Reader, assets};
use desk::views::Speaker;
use desk::views::drawing::LEGEND;
use desk::views::owner::{Done, OwnerView, Part, Point, StemView};
use maud::{Markup, PreEscaped, html};
use model::SourceKey;

/// The style sheet that only these pages need.
pub fn style() -> Markup {
    html! { link rel="stylesheet" href=(assets::address("owner.css")); }
}

/// The whole sheet.
pub fn body(reader: &Reader, view: &OwnerView) -> Markup {
    html! {
        article.owner {
            (head(view))
            (urgent(reader, view))
            (expect(reader, view))
            (crowns(reader, view))
            section {
                h2 { (reader.say("owner-next-title")) }
                ul { @for line in &view.next { li { (line) } } }
            }
            section #never {
                h2 { (reader.say("owner-never-title")) }
                (points(&view.never))
                p.small { (view.level) }
            }
            (part(reader, "owner-water-title", "water", &view.water))
            (part(reader, "owner-feed-title", "feed", &view.feed))
            (done(reader, view))
            @if !view.usual.is_empty() {
                section { h2 { (reader.say("owner-usual-title")) } (points(&view.usual)) }
            }
            @if !view.cautions.is_empty() {
                section { h2 { (reader.say("owner-cautions-title")) } (points(&view.cautions)) }
            }
            (sources(reader, view))
        }
    }
}

fn head(view: &OwnerView) -> Markup {
    html! {
        header.head {
            h1 { (view.title) }
            p.kind {
                i lang="la" { (view.species) }
                @if !view.common.is_empty() { ", " span lang="en" { (view.common) } }
                @if !view.site.is_empty() { " · " (view.site) }
            }
            p {
                span class={ "stand " (view.stand.0) } data-testid="stand" { (view.stand.1) }
                " " (view.as_of)
            }
        }
    }
}

fn urgent(reader: &Reader, view: &OwnerView) -> Markup {
    html! {
        @if !view.urgent.is_empty() {
            section.urgent data-testid="urgent" {
                h2 { (reader.say("owner-urgent-title")) }
                (points(&view.urgent))
            }
        }
    }
}

fn expect(reader: &Reader, view: &OwnerView) -> Markup {
    html! {
        section #expect data-testid="expect" {
            h2 { (reader.say("owner-expect-title")) }
            @for stem in &view.stems { (promise(stem)) }
            p.small { (view.rests_on) }
            h3 { (reader.say("owner-call-title")) }
            p { (view.call_at_once) }
            p { strong { (reader.say("owner-call-giver")) } }
        }
    }
}

fn promise(stem: &StemView) -> Markup {
    html! {
        div.told {
            @if let Some(name) = &stem.name { h3 { (name) } }
            p { (stem.expect) " " (stem.later) }
            p.call { (stem.call) }
        }
    }
}

/// What the tones of the pictures mean.
pub fn legend(reader: &Reader) -> Markup {
    let keys = ["owner-key-green", "owner-key-yellowing", "owner-key-brown"];
    html! {
        ul.keys aria-hidden="true" {
            @for ((fill, edge), code) in LEGEND.iter().zip(keys) {
                li {
                    svg viewBox="0 0 20 14" { rect x="1" y="1" width="18" height="12" fill=(fill) stroke=(edge) stroke-width="2" {} }
                    (reader.say(code))
                }
            }
        }
    }
}

fn crowns(reader: &Reader, view: &OwnerView) -> Markup {
    html! {
        section #crowns {
            h2 { (reader.say("owner-crown-title")) }
            @for stem in &view.stems {
                @if let Some(name) = &stem.name { h3 { (name) } }
                div.crowns {
                    @for picture in &stem.pictures {
                        figure data-weeks=(picture.weeks) {
                            // made by ourselves from numbers; no text of people but what is escaped
                            (PreEscaped(&picture.svg))
                            figcaption {
                                strong { (picture.when) }
                                p { (picture.counts_words) }
                                p.small { (picture.range) }
                            }
                        }
                    }
                }
            }
            (legend(reader))
            p.small { (view.picture_note) }
            @if let Some(more) = &view.more_stems { p { (more) } }
        }
    }
}

fn part(reader: &Reader, title: &str, id: &str, part: &Part) -> Markup {
    html! {
        section id=(id) {
            h2 { (reader.say(title)) }
            @for line in &part.lead { p { (line) } }
            @if !part.rows.is_empty() {
                div.wide tabindex="0" role="region" aria-label=(reader.say(title)) {
                    table {
                        thead { tr { @for head in &part.heads { th scope="col" { (head) } } } }
                        tbody { @for row in &part.rows { tr { @for cell in row { td { (cell) } } } } }
                    }
                }
            }
            (points(&part.points))
        }
    }
}

fn done(reader: &Reader, view: &OwnerView) -> Markup {
    html! {
        section #done {
            h2 { (reader.say("owner-done-title")) }
            @if view.done.is_empty() { p { (reader.say("owner-done-none")) } } @else {
                p.small { (view.done_since) }
                ul.done { @for one in &view.done { (done_row(one)) } }
            }
        }
    }
}

fn done_row(one: &Done) -> Markup {
    html! {
        li data-kind=(one.kind) {
            p { strong { (one.what) } " · " (one.when) }
            @if !one.facts.is_empty() {
                dl.facts { @for (name, value) in &one.facts { dt { (name) } dd { (value) } } }
            }
        }
    }
}

/// Points, a line each; none: nothing.
pub fn points(points: &[Point]) -> Markup {
    html! {
        @if !points.is_empty() {
            ul.points {
                @for point in points {
                    li { (point.text) @if let Some(mark) = &point.mark { " " span.mark { "(" (mark) ")" } } }
                }
            }
        }
    }
}

/// Titles of what the statements rest on; no addresses.
fn sources(reader: &Reader, view: &OwnerView) -> Markup {
    let lists = [
        &view.urgent,
        &view.never,
        &view.water.points,
        &view.feed.points,
        &view.usual,
        &view.cautions,
    ];
    rests_on(reader, lists.into_iter().flatten())
}

/// Titles of what points rest on, each once; no addresses.
pub fn rests_on<'p>(reader: &Reader, points: impl IntoIterator<Item = &'p Point>) -> Markup {
    let mut keys: Vec<SourceKey> = Vec::new();
    for key in points.into_iter().flat_map(|point| &point.sources) {
        if !keys.contains(key) {
            keys.push(key.clone());
        }
    }
    let cited = Speaker::new(reader.measure).cite(&keys);
    html! {
        @if !cited.is_empty() {
            details.why {
                summary { (reader.say("owner-sources-title")) }
                ul {
                    @for source in &cited {
                        li { (source.title) @if !source.by.is_empty() { ". " (source.by) } @if let Some(mark) = &source.mark { " (" (mark) ")" } }
                    }
                }
            }
        }
    }
}
