//! The links from page to page of a list.

use crate::Reader;
use desk::views::paging::Paging;
use maud::{Markup, html};

/// Links to the pages before and after; nothing for a single page. `to` makes the address of a page.
pub fn links(reader: &Reader, paging: &Paging, to: impl Fn(usize) -> String) -> Markup {
    let measure = &reader.measure;
    let place = [
        ("page", measure.count(paging.page as i64).into()),
        ("pages", measure.count(paging.pages as i64).into()),
    ];
    html! {
        @if paging.pages > 1 {
            nav.paging aria-label=(reader.words.text("palms-page", &place)) {
                @if let Some(page) = paging.previous() {
                    a.button href=(to(page)) rel="prev" { (reader.say("common-previous")) }
                }
                span { (reader.words.text("palms-page", &place)) }
                @if let Some(page) = paging.next() {
                    a.button href=(to(page)) rel="next" { (reader.say("common-next")) }
                }
            }
        }
    }
}
