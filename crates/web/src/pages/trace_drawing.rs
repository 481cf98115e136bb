//! The drawings of a trace: lanes and plan. Shape and word say what colour says.

use crate::Reader;
use desk::views::tracing::lanes::{Lanes, Mark};
use desk::views::tracing::plot::{Plot, Spot, WIDTH};
use maud::{Markup, html};

/// Blades as lanes; the names stay while the lanes slide.
pub fn lanes(reader: &Reader, drawing: &Lanes) -> Markup {
    html! {
        section aria-labelledby="lanes" {
            h2 #lanes { (reader.say("trace-lanes")) }
            p.hint { (reader.say("trace-lanes-hint")) }
            div.lanes {
                ul.names aria-hidden="true" {
                    @for lane in &drawing.lanes { li { strong { (lane.tag) } br; span { (lane.kind) } } }
                }
                div.slide-lanes role="region" tabindex="0" aria-label=(reader.say("trace-lanes-hint")) { (picture(reader, drawing)) }
            }
            @if drawing.left_out > 0 {
                p.small { (reader.words.text("trace-lanes-left-out", &[("n", (drawing.left_out as i64).into())])) }
            }
            (keys(reader, &["case", "certain", "possible", "source"]))
            ul.legend {
                @for key in ["adequate", "short", "unknown"] { li { (clean_key(key)) (reader.say(&format!("trace-key-{key}"))) } }
                @for (key, class) in [("solid", "chain"), ("dashed", "chain possible")] {
                    li { svg.key viewBox="0 0 44 22" aria-hidden="true" focusable="false" { path class=(class) d="M2 11H42" {} } (reader.say(&format!("trace-key-{key}"))) }
                }
            }
        }
    }
}

fn picture(reader: &Reader, drawing: &Lanes) -> Markup {
    html! {
        svg.lanes-drawn width=(drawing.width) height=(drawing.height) viewBox={ "0 0 " (drawing.width) " " (drawing.height) }
            role="img" aria-label=(reader.say("trace-lanes")) {
            @for day in &drawing.days {
                rect.day x=(day.x) y="0" width=(day.width) height=(drawing.height) {}
                text.date x=(day.x + 6) y="20" { (day.label) }
                @if let Some(gap) = &day.gap { text.gap x=(day.x - 23) y="40" text-anchor="middle" { (gap) } }
            }
            @for lane in &drawing.lanes { path.lane d={ "M0 " (lane.y) "H" (drawing.width) } {} }
            @for link in drawing.links.iter().filter(|l| !l.certain) { path.chain.possible d=(link.d) {} }
            @for link in drawing.links.iter().filter(|l| l.certain) { path.chain d=(link.d) {} }
            @for mark in &drawing.marks { (self::mark(mark)) }
        }
    }
}

fn mark(mark: &Mark) -> Markup {
    let (x, y) = (mark.x, mark.y);
    html! {
        g class={ (if mark.cut { "cut " } else { "clean " }) (mark.key) } transform={ "translate(" (x) " " (y) ")" } {
            @if mark.cut { (point(mark.key)) } @else { (tick(mark.key)) }
            text.label y="-16" text-anchor="middle" { (mark.label) }
            text.hour y="28" text-anchor="middle" { (mark.hour) }
        }
    }
}

/// The shape of a palm: a star for the case, full for certain, hollow for possible, a square for a source.
fn point(key: &str) -> Markup {
    let d = match key {
        "case" => {
            "M0 -12l3.500 7.500l8.500 1l-6 6l1.500 8.500l-7.500 -4l-7.500 4l1.500 -8.500l-6 -6l8.500 -1z"
        }
        "source" => "M-8 -8h16v16h-16z",
        "near" => "M0 -9l9 16h-18z",
        "passed" => "M-3 0a3 3 0 1 1 6 0a3 3 0 1 1 -6 0z",
        _ => "M-9 0a9 9 0 1 1 18 0a9 9 0 1 1 -18 0z",
    };
    html! { path class={ "point " (key) } d=(d) {} }
}

/// The shape of a cleaning: a full bar for enough, a half one for short, a broken one for unknown.
fn tick(key: &str) -> Markup {
    let d = match key {
        "adequate" => "M0 -14V14",
        "short" => "M0 0V14",
        _ => "M0 -14V-7M0 -3V3M0 7V14",
    };
    html! { path class={ "tick-clean " (key) } d=(d) {} }
}

/// The shape of a key, for lists.
pub fn key_mark(key: &str) -> Markup {
    html! { svg.key viewBox="-14 -14 28 28" width="22" height="22" aria-hidden="true" focusable="false" { (point(key)) } }
}

fn clean_key(key: &str) -> Markup {
    html! { svg.key viewBox="-14 -16 28 32" aria-hidden="true" focusable="false" { (tick(key)) } }
}

fn keys(reader: &Reader, keys: &[&str]) -> Markup {
    html! {
        ul.legend { @for key in keys { li { (key_mark(key)) (reader.say(&format!("trace-key-{key}"))) } } }
    }
}

/// Where the palms stand.
pub fn plot(reader: &Reader, plot: &Plot) -> Markup {
    let bottom = plot.height - 18;
    html! {
        section aria-labelledby="plot" {
            h2 #plot { (reader.say("trace-plot")) }
            p.hint { (reader.say("trace-plot-hint")) }
            figure {
                svg.plot viewBox={ "0 0 " (WIDTH) " " (plot.height) } role="img" aria-label={ (reader.say("trace-plot")) ", " (reader.say("trace-plot-north")) } {
                    @for spot in &plot.spots { (self::spot(spot)) }
                    path.bar d={ "M24 " (bottom - 8) "v8h" (plot.bar) "v-8" } {}
                    text.scale-words x=(30 + plot.bar) y=(bottom) { (plot.bar_words) }
                    path.north d="M610 46v-30l-8 12M610 16l8 12" {}
                    text.scale-words x="610" y="70" text-anchor="middle" { (reader.say("trace-north")) }
                }
            }
            (keys(reader, &["case", "certain", "possible", "source", "near"]))
        }
    }
}

fn spot(spot: &Spot) -> Markup {
    html! {
        g transform={ "translate(" (spot.x) " " (spot.y) ") scale(1.5)" } { (point(spot.key)) }
        @if spot.labelled { text.label x=(spot.x) y=(spot.y - 22) text-anchor="middle" { (spot.tag) } }
    }
}

#[cfg(test)]
mod tests {
    use desk::views::tracing::lanes::{LANE, TOP};

    /// The names of the lanes stand beside the drawing: the style sheet repeats its heights.
    #[test]
    fn the_style_sheet_knows_the_heights_of_the_lanes() {
        let style = include_str!("../../assets/blades.css");
        assert!(style.contains(&format!(".lanes .names {{ padding-top: {TOP}px;")));
        assert!(style.contains(&format!(".lanes .names li {{ height: {LANE}px;")));
    }
}
