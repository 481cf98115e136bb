//! Loss and forecast, drawn and in tables.

use crate::Reader;
use desk::views::charts::{Course, Strips, WIDTH};
use desk::views::palm::PalmView;
use desk::views::{COLUMNS, LossView, OutlookRow};
use maud::{Markup, html};

/// Loss against what is ordinary, and the tripwire.
pub fn loss(reader: &Reader, view: &PalmView) -> Markup {
    let loss = &view.loss;
    html! {
        section.loss aria-labelledby="loss" {
            h2 #loss { (reader.say("palm-loss")) }
            p class={ "headline " (loss.key) } data-testid="loss-verdict" { (loss.verdict) }
            @if let Some(strips) = &loss.strips {
                figure {
                    figcaption { (reader.say("loss-chart-title")) }
                    (ranges(loss, strips))
                }
            }
            p.tripwire data-testid="tripwire" { strong { (loss.tripwire) } " " (reader.say("tripwire-spear")) }
            p.small { (reader.say("tripwire-why")) }
            figure {
                figcaption { (reader.say("loss-ahead-title")) }
                (course(reader, "loss-ahead-title", &loss.course))
                (keys(reader, &[("lost", "loss-ahead-expected"), ("tripwire", "loss-ahead-tripwire")]))
            }
        }
    }
}

fn ranges(loss: &LossView, chart: &Strips) -> Markup {
    html! {
        svg.chart viewBox={ "0 0 " (WIDTH) " " (chart.height) } role="img" aria-label=(loss.said.join(" ")) {
            @for tick in &chart.ticks {
                path.grid d={ "M" (tick.at) " 36V" (chart.axis) } {}
                text.tick x=(tick.at) y=(chart.axis + 28) text-anchor="middle" { (tick.label) }
            }
            @if let Some(x) = chart.seen {
                path.seen d={ "M" (x) " 34V" (chart.axis) } {}
                path.seen-head d={ "M" (x - 12) " 30h24l-12 18z" } {}
                text.name x=(x) y="24" text-anchor=(chart.seen_anchor) { (chart.seen_words) }
            }
            @for strip in &chart.strips {
                text.name x="22" y=(strip.y - 8) { (strip.name) " " (strip.range) }
                rect class={ "strip " (strip.key) } x=(strip.from) y=(strip.y) width=(strip.length) height="20" rx="4" {}
            }
        }
        ul.sentences { @for line in &loss.said { li { (line) } } }
    }
}

/// Counts so far and to come, and the table.
pub fn forecast(reader: &Reader, view: &PalmView) -> Markup {
    html! {
        section.forecast aria-labelledby="forecast" {
            h2 #forecast { (reader.say("palm-forecast")) }
            figure {
                figcaption { (reader.say("counts-title")) }
                (course(reader, "counts-title", &view.counts))
                (keys(reader, &[("live", "counts-live"), ("brown", "counts-brown")]))
            }
            @if view.outlook_uncut.is_empty() { (table(reader, "outlook-uncut", &view.outlook)) } @else {
                (table(reader, "outlook-planned", &view.outlook))
                details.why {
                    summary { (reader.say("outlook-uncut")) }
                    (table(reader, "outlook-uncut", &view.outlook_uncut))
                }
            }
            p.small { (reader.say("outlook-note")) }
        }
    }
}

fn table(reader: &Reader, caption: &str, rows: &[OutlookRow]) -> Markup {
    html! {
        table.outlook data-testid=(caption) {
            caption { (reader.say(caption)) }
            thead {
                tr {
                    @for column in COLUMNS { th scope="col" { (reader.say(&format!("outlook-{column}"))) } }
                }
            }
            tbody {
                @for row in rows {
                    tr.at { th colspan="5" scope="rowgroup" { (row.ahead) ", " (row.date) } }
                    tr {
                        @for cell in &row.cells { td { strong { (cell.median) } br; span.small { (cell.band) } } }
                    }
                }
            }
        }
    }
}

/// A chart over time.
fn course(reader: &Reader, title: &str, chart: &Course) -> Markup {
    html! {
        svg.chart viewBox={ "0 0 " (WIDTH) " " (chart.height) } role="img" aria-label=(reader.say(title)) {
            @for tick in &chart.counts {
                path.grid d={ "M" (chart.left) " " (tick.at) "H" "624" } {}
                text.tick x=(chart.left - 8) y=(tick.at + 8) text-anchor="end" { (tick.label) }
            }
            @for tick in &chart.dates {
                path.grid d={ "M" (tick.at) " " (chart.bottom) "v8" } {}
                text.tick x=(tick.at) y=(chart.bottom + 32) text-anchor="middle" { (tick.label) }
            }
            @for (key, path) in &chart.bands { path class={ "band " (key) } d=(path) {} }
            @if let Some(x) = chart.today { path.today d={ "M" (x) " 10V" (chart.bottom) } {} }
            @for (key, path) in &chart.lines { path class={ "line " (key) } d=(path) {} }
            @for (key, x, y, label) in &chart.dots {
                circle class={ "dot " (key) } cx=(x) cy=(y) r="8" { title { (label) } }
            }
        }
    }
}

fn keys(reader: &Reader, keys: &[(&str, &str)]) -> Markup {
    html! {
        ul.legend {
            @for (key, words) in keys {
                li { svg.key viewBox="0 0 40 20" aria-hidden="true" { path class={ "line " (key) } d="M2 10H38" {} } (reader.say(words)) }
            }
            li { svg.key viewBox="0 0 40 20" aria-hidden="true" { path.today d="M20 1V19" {} } (reader.say("chart-today")) }
        }
    }
}
