//! Which blades cut the palm, and how each was cleaned before.

use crate::badge::icon;
use crate::{Reader, address};
use desk::views::blades::log::PalmCutLine;
use desk::views::palm::PalmView;
use maud::{Markup, html};

/// So many cuts are shown without a tap.
const NEWEST: usize = 4;

/// The section.
pub fn section(reader: &Reader, view: &PalmView) -> Markup {
    let (newest, older) = view.cuts.split_at(view.cuts.len().min(NEWEST));
    let disorder = view.suspected.unwrap_or("");
    let trace = address::with_query("/trace", &[("case", &view.tag), ("disorder", disorder)]);
    html! {
        section aria-labelledby="blades" {
            h2 #blades { (reader.say("palm-blades")) }
            @if view.cuts.is_empty() { p { (reader.say("palm-blades-none")) } }
            (cuts(reader, newest))
            @if !older.is_empty() {
                details.why { summary { (reader.say("palm-blades-older")) } (cuts(reader, older)) }
            }
            p.actions {
                a.button href=(address::with_query("/cutting", &[("palm", &view.tag)])) { (reader.say("palm-blades-log")) }
                a.button href=(trace) { (reader.say("palm-blades-trace")) }
            }
        }
    }
}

fn cuts(reader: &Reader, lines: &[PalmCutLine]) -> Markup {
    html! {
        @if !lines.is_empty() {
            ol.cuts { @for line in lines { li class=(line.key) { (cut(reader, line)) } } }
        }
    }
}

fn cut(reader: &Reader, line: &PalmCutLine) -> Markup {
    html! {
        p { span.date { (line.when) } " " a.tag href=(address::blade(&line.blade, "")) { (line.blade) } }
        p.detail { (line.detail) }
        p.before { (icon(if line.key == "none" { "unknown" } else { line.key })) span { (line.before) } }
        @if !line.between.is_empty() {
            p.small {
                (reader.say("palm-blades-between")) " "
                @for (n, tag) in line.between.iter().enumerate() {
                    @if n > 0 { ", " }
                    a href=(address::palm(tag, "")) { (tag) }
                }
            }
        }
        @if !line.despite.is_empty() { p.despite { strong { (reader.say("blades-despite")) } " " (line.despite) } }
    }
}
