//! What happened to the palm, newest first.

use crate::{Reader, address};
use desk::views::Event;
use desk::views::palm::PalmView;
use maud::{Markup, html};

/// So many are shown without a tap.
const NEWEST: usize = 5;

/// The section.
pub fn section(reader: &Reader, view: &PalmView) -> Markup {
    let (newest, older) = view.history.split_at(view.history.len().min(NEWEST));
    html! {
        section.history aria-labelledby="history" {
            h2 #history { (reader.say("palm-history")) }
            @if view.history.is_empty() { p { (reader.say("palm-history-empty")) } }
            (events(reader, view, newest))
            @if !older.is_empty() {
                details.why { summary { (reader.say("palm-history-older")) } (events(reader, view, older)) }
            }
            p { a.button href=(address::palm(&view.tag, "/remove")) { (reader.say("palm-remove")) } }
        }
    }
}

fn events(reader: &Reader, view: &PalmView, events: &[Event]) -> Markup {
    html! {
        ol {
            @for event in events {
                li class=[event.superseded.then_some("superseded")] { (line(reader, view, event)) }
            }
        }
    }
}

fn line(reader: &Reader, view: &PalmView, event: &Event) -> Markup {
    html! {
        p {
            span.date { (event.date) } " " strong { (event.what) }
            @if event.corrects { " " span.mark { (reader.say("history-corrects")) } }
            @if event.superseded { " " span.mark { (reader.say("history-superseded")) } }
        }
        @if !event.detail.is_empty() { p.detail { (event.detail) } }
        p.small {
            (reader.words.text("history-by", &[("who", event.by.clone().into())]))
            @if event.may_correct {
                " · " a href=(address::palm(&view.tag, &format!("/inspect?corrects={}", event.id))) { (reader.say("history-correct")) }
            }
        }
    }
}
