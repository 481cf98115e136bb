//! The look of a palm's watering: today, the coming days, how it is reckoned, what was given, the form.

use super::parts::{Kind, Sheet};
use crate::pages::said;
use crate::pages::watering::{style, tap};
use crate::{Here, Reader, address, page};
use desk::forms::{Trouble, Typed};
use desk::views::watering::{FactorLine, Gap, LogRow, PastRow, StepLine, WaterPage};
use maud::{Markup, html};

/// All that the page is drawn from.
pub struct View<'a> {
    /// For whom.
    pub reader: &'a Reader,
    /// What it shows.
    pub view: &'a WaterPage,
    /// What was typed into the form.
    pub typed: &'a Typed,
    /// What is wrong with it.
    pub troubles: &'a [Trouble],
    /// The ledger would not take it.
    pub failed: bool,
    /// Fresh ids: for the tap and for the form.
    pub ids: &'a [String; 2],
}

impl View<'_> {
    fn say(&self, code: &str) -> String {
        self.reader.say(code)
    }

    fn correcting(&self) -> bool {
        !self.typed.get("corrects").is_empty()
    }

    /// The form is what the page is about.
    fn noting(&self) -> bool {
        self.correcting() || self.failed || !self.troubles.is_empty()
    }
}

/// The page.
pub fn page_of(view: &View) -> Markup {
    let own = view.view;
    let title = view
        .reader
        .words
        .text("water-title", &[("tag", own.tag.clone().into())]);
    let body = html! {
        (style())
        h1 { (title) }
        p.about {
            a href=(address::palm(&own.tag, "")) { (own.tag) }
            " · " i { (own.species) }
            @if !own.site.is_empty() { " · " (own.site) }
        }
        nav.jumps {
            a href="#ahead" { (view.say("water-jump-ahead")) }
            a href="#note" { (view.say("water-jump-note")) }
            a href="#reckoned" { (view.say("water-jump-reckoned")) }
            a href="#given" { (view.say("water-jump-given")) }
            a href=(address::palm(&own.tag, "/feeding")) { (view.say("feed-link")) }
            a href="/watering" { (view.say("water-jump-list")) }
        }
        @if view.noting() { (note(view)) }
        (now(view))
        (ahead(view))
        @if !view.noting() { (note(view)) }
        (gaps(view, &own.gaps))
        (reckoned(view))
        (given(view, &own.log))
        (past(view, &own.past))
    };
    page(view.reader, Here::Watering, &title, body)
}

fn now(view: &View) -> Markup {
    let own = view.view;
    let (key, words) = &own.state;
    html! {
        section.water-now #now data-state=(key) {
            p { span class={ "stand " (key) } data-testid="state" { (words) } }
            @if let Some(give) = &own.give { p.headline data-testid="give" { (view.say("water-give-today")) " " strong { (give) } } }
            p.when { (own.next) }
            p data-testid="rhythm" { (own.rhythm) }
            @if let Some(lasts) = &own.lasts { p { (lasts) } }
            @if let Some(short) = &own.short { p.pending { (short) } }
            p.soft { (own.last) }
            (tap(&own.tag, &view.ids[0], own.tap.0.as_deref(), &own.tap.1, None))
            ul.sentences { @for one in &own.minds { li { (one) } } }
        }
    }
}

fn ahead(view: &View) -> Markup {
    let own = view.view;
    html! {
        section #ahead {
            h2 { (view.say("water-ahead-title")) }
            p.small { (view.say("water-ahead-what")) }
            div.scroll tabindex="0" role="region" aria-label=(view.say("water-ahead-title")) {
                table.water-days {
                    thead { tr {
                        th scope="col" { (view.say("water-col-day")) }
                        th scope="col" { (view.say("water-col-give")) }
                        th scope="col" { (view.say("water-col-need")) }
                        th scope="col" { (view.say("water-col-reference")) }
                    } }
                    tbody {
                        @for day in &own.ahead {
                            tr.gives[day.give.is_some()] {
                                th scope="row" { (day.date) }
                                td { @if let Some(give) = &day.give { strong { (give) } } @else { "–" span.sr { (view.say("water-day-off")) } } }
                                td { (day.need) }
                                td { (day.reference) }
                            }
                        }
                    }
                }
            }
            @if own.taper.len() > 1 {
                h3 { (view.say("water-taper-title")) }
                p.small { (view.say("water-taper-what")) }
                ol.taper data-testid="taper" {
                    @for step in &own.taper {
                        li { p.day { (step.from) } p { (step.rhythm) } p.soft { (step.roots) } }
                    }
                }
            }
        }
    }
}

fn gaps(view: &View, gaps: &[Gap]) -> Markup {
    let own = view.view;
    let link = |place: &str| match place {
        "move" => Some(address::palm(&own.tag, "/move#note")),
        "edit" => Some(address::palm(&own.tag, "/edit")),
        "inspect" => Some(address::palm(&own.tag, "/inspect")),
        "import" => Some("/import".to_owned()),
        "log" => Some("#given".to_owned()),
        _ => None,
    };
    html! {
        @if !gaps.is_empty() {
            section #gaps {
                h2 { (view.say("water-gaps-title")) }
                p.small { (view.say("water-gaps-what")) }
                ul.sentences {
                    @for gap in gaps {
                        li data-gap=(gap.key) {
                            (gap.text)
                            @if let Some(to) = link(gap.place) { " " a href=(to) { (view.say(&format!("water-gap-to-{}", gap.place))) } }
                        }
                    }
                }
            }
        }
    }
}

fn reckoned(view: &View) -> Markup {
    let own = view.view;
    html! {
        section #reckoned {
            h2 { (view.say("water-reckoned-title")) }
            p { (view.say("water-reckoned-what")) }
            ol.table-rows.steps { @for step in &own.steps { (one_step(view, step)) } }
            h3 { (view.say("water-factors-title")) }
            @if let Some(conflict) = &own.conflict { p data-testid="conflict" { strong { (conflict) } } }
            details.why {
                summary { (view.say("water-factors-all")) }
                ul.table-rows { @for factor in &own.factors { (one_factor(view, factor)) } }
            }
        }
    }
}

fn one_step(view: &View, step: &StepLine) -> Markup {
    html! {
        li data-step=(step.key) {
            p { (step.name) ": " span.figure { (step.value) } }
            @for note in &step.notes { p.soft { (note) } }
            @if let Some(basis) = &step.basis { p.basis { (basis) } }
            @if !step.sources.is_empty() {
                details { summary { (view.say("palm-why")) } (said::sources(&step.sources)) }
            }
        }
    }
}

fn one_factor(view: &View, factor: &FactorLine) -> Markup {
    html! {
        li data-row=(factor.key) data-used=(factor.used) {
            p { span.figure { (factor.figure) } " · " (factor.text) }
            p.soft {
                (factor.used_words)
                @if !factor.need.is_empty() { " · " (view.reader.words.text("water-factor-need", &[("water", factor.need.clone().into())])) }
            }
            @if let Some(basis) = &factor.basis { p.basis { (basis) } }
            @if !factor.sources.is_empty() {
                details { summary { (view.say("palm-why")) } (said::sources(&factor.sources)) }
            }
        }
    }
}

fn given(view: &View, log: &[LogRow]) -> Markup {
    let tag = &view.view.tag;
    html! {
        section #given {
            h2 { (view.say("water-given-title")) }
            @if log.is_empty() { p { (view.say("water-given-none")) } }
            ul.given data-testid="log" {
                @for row in log {
                    li {
                        p { strong { (row.date) } " · " (row.amount) @if !row.notes.is_empty() { " · " (row.notes) } }
                        div.actions {
                            a.button href={ (address::palm(tag, &format!("/water?corrects={}", row.entry))) "#note" } { (view.say("water-correct")) }
                            form method="post" action=(address::palm(tag, "/water/withdraw")) {
                                input type="hidden" name="corrects" value=(row.entry);
                                input type="hidden" name="why" value=(view.say("water-taken-back"));
                                button type="submit" { (view.say("water-take-back")) span.sr { ": " (row.date) } }
                            }
                        }
                    }
                }
            }
        }
    }
}

fn past(view: &View, past: &[PastRow]) -> Markup {
    html! {
        details.why {
            summary { (view.say("water-past-title")) }
            p.small { (view.say("water-past-what")) }
            div.scroll tabindex="0" role="region" aria-label=(view.say("water-past-title")) {
                table.water-days {
                    thead { tr {
                        th scope="col" { (view.say("water-col-day")) }
                        th scope="col" { (view.say("water-col-given")) }
                        th scope="col" { (view.say("water-col-rain")) }
                        th scope="col" { (view.say("water-col-reference")) }
                        th scope="col" { (view.say("water-col-by")) }
                        th scope="col" { (view.say("water-col-down")) }
                    } }
                    tbody {
                        @for day in past {
                            tr {
                                th scope="row" { (day.date) }
                                td { (day.given) } td { (day.rain) } td { (day.reference) }
                                td { (view.say(&format!("water-by-{}", day.how))) } td { (day.run_down) }
                            }
                        }
                    }
                }
            }
        }
    }
}

fn note(view: &View) -> Markup {
    let sheet = Sheet {
        reader: view.reader,
        typed: view.typed,
        troubles: view.troubles,
        failed: view.failed,
    };
    let title = if view.correcting() {
        "water-form-correct"
    } else {
        "water-form-title"
    };
    let id = match sheet.value("id") {
        "" => view.ids[1].as_str(),
        sent => sent,
    };
    html! {
        section #note {
            h2 { (view.say(title)) }
            (sheet.summary())
            form.sheet method="post" action=(address::palm(&view.view.tag, "/water")) novalidate {
                input type="hidden" name="id" value=(id);
                (sheet.hidden("corrects"))
                div.two { (sheet.line("date", Kind::Day)) (sheet.line("litres", Kind::Words)) }
                (sheet.line("water_notes", Kind::Words))
                div.save {
                    button.primary type="submit" { (view.say("water-save")) }
                    a.button href=(address::palm(&view.view.tag, "")) { (view.say("forms-cancel")) }
                }
            }
        }
    }
}
