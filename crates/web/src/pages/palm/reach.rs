//! With what and from where, in short.

use crate::pages::{reach, said};
use crate::{Reader, address};
use desk::views::palm::PalmView;
use maud::{Markup, html};

/// The section.
pub fn section(reader: &Reader, view: &PalmView) -> Markup {
    let brief = &view.reach;
    html! {
        (reach::style())
        section.reach aria-labelledby="reach" {
            h2 #reach { (reader.say("reach-title")) }
            (reach::head(brief))
            (said::list(reader, &brief.urgent))
            (reach::picture(reader, brief))
            p.actions {
                a.button data-testid="reach-more" href=(address::palm(&view.tag, &format!("/reach?stem={}", view.stem))) { (reader.say("reach-more")) }
            }
        }
    }
}
