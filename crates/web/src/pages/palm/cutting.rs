//! The cut plan and the cautions before it.

use super::said;
use crate::{Reader, address};
use desk::views::Line;
use desk::views::palm::PalmView;
use maud::{Markup, html};

/// The plan.
pub fn section(reader: &Reader, view: &PalmView) -> Markup {
    let plan = &view.cutting;
    html! {
        section.cutting aria-labelledby="cutting" {
            h2 #cutting { (reader.say("palm-cutting")) }
            @if !plan.holds.is_empty() {
                div.hold-banner role="note" {
                    p.headline { (reader.say("palm-hold-banner")) }
                    (said::list(reader, &plan.holds))
                    (said::reasons(reader, &plan.holds))
                    @for (_, words) in &view.holds { p { (words) } }
                    @if !view.holds.is_empty() {
                        a.button href=(address::palm(&view.tag, "/holds")) { (reader.say("palm-lift")) }
                    }
                }
            }
            dl.lines {
                dt { (reader.say("cut-take")) } dd.take data-testid="may-take" { (plan.take) }
                dt { (reader.say("cut-if-asked")) } dd { (plan.if_asked) }
                dt { (reader.say("cut-stay")) } dd { (plan.stay) }
            }
            @if plan.any { h3 { (reader.say("cut-how")) } (lines(&plan.how)) }
            (said::closed(reader, "cut-rules", &plan.rules))
            (said::closed(reader, "cut-method", &plan.method))
            @if !view.recovery.is_empty() { h3 { (reader.say("recovery-title")) } (lines(&view.recovery)) }
        }
    }
}

/// Labelled lines.
pub fn lines(lines: &[Line]) -> Markup {
    html! { dl.lines { @for line in lines { dt { (line.name) } dd { (line.value) } } } }
}

/// Cautions to read before the work.
pub fn cautions(reader: &Reader, view: &PalmView) -> Markup {
    html! {
        @if !view.cutting.cautions.is_empty() {
            section.cautions aria-labelledby="cautions" {
                h2 #cautions { (reader.say("palm-cautions")) }
                (said::list(reader, &view.cutting.cautions))
                p { strong { (reader.say("common-closing")) } }
                (said::reasons(reader, &view.cutting.cautions))
            }
        }
    }
}
