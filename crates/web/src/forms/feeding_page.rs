//! The look of a palm's feeding: what is barred, what to feed against what, products, the log, the form.

use super::parts::{Kind, Sheet};
use crate::pages::said;
use crate::pages::watering::style;
use crate::{Here, Reader, address, page};
use desk::forms::{Trouble, Typed};
use desk::views::feeding::{DoseLine, FeedLine, FeedingPage, LogLine, ProductLine, Statement};
use maud::{Markup, html};

/// All that the page is drawn from.
pub struct View<'a> {
    /// For whom.
    pub reader: &'a Reader,
    /// What it shows.
    pub view: &'a FeedingPage,
    /// What was typed into the form.
    pub typed: &'a Typed,
    /// What is wrong with it.
    pub troubles: &'a [Trouble],
    /// The ledger would not take it.
    pub failed: bool,
    /// A fresh id for the entry.
    pub new_id: &'a str,
}

impl View<'_> {
    fn say(&self, code: &str) -> String {
        self.reader.say(code)
    }

    fn correcting(&self) -> bool {
        !self.typed.get("corrects").is_empty()
    }

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
        .text("feed-title", &[("tag", own.tag.clone().into())]);
    let body = html! {
        (style())
        h1 { (title) }
        p.about {
            a href=(address::palm(&own.tag, "")) { (own.tag) }
            " · " i { (own.species) }
            @if !own.site.is_empty() { " · " (own.site) }
        }
        nav.jumps {
            a href="#plan" { (view.say("feed-jump-plan")) }
            a href="#note" { (view.say("feed-jump-note")) }
            a href="#given" { (view.say("feed-jump-log")) }
            a href="#products" { (view.say("feed-jump-products")) }
            a href=(address::palm(&own.tag, "/water")) { (view.say("watering-link")) }
            a href="/feeding" { (view.say("feed-list-all")) }
        }
        @if view.noting() { (note(view)) }
        (rules(view))
        section #plan {
            h2 { (view.say("feed-plan-title")) }
            p { (own.ground) }
            @for line in &own.lines { (one_line(view, line)) }
            (others(view))
        }
        @if !view.noting() { (note(view)) }
        (log(view, &own.log))
        (products(view, &own.products))
    };
    page(view.reader, Here::Feeding, &title, body)
}

fn rules(view: &View) -> Markup {
    let own = view.view;
    html! {
        @if !own.barred.is_empty() {
            section data-testid="barred" {
                h2 { (view.say("feed-barred-title")) }
                (said::list(view.reader, &own.barred))
                @if !own.free.is_empty() { p { (view.say("feed-free")) " " (own.free.join("; ")) } }
            }
        }
        @if let Some(unknown) = &own.rules_unknown {
            p.pending data-testid="rules-unknown" {
                (unknown)
                @if !own.site.is_empty() { " " a href=(address::site(&own.site, "/edit")) { (view.say("feed-list-rules-enter")) } }
            }
        }
        ul.sentences { @for rule in &own.rules { li { (statement(rule)) } } }
    }
}

/// A statement with how it is known and its sources, short.
fn statement(one: &Statement) -> Markup {
    html! {
        (one.text)
        @if let Some(basis) = &one.basis { " " span.mark { (basis) } }
        @for source in &one.sources { " " a.small href={ "/sources#" (source.key) } { (source.title) } }
    }
}

fn one_line(view: &View, line: &FeedLine) -> Markup {
    let state = if line.may { "may" } else { "not-now" };
    html! {
        section.feed class=(state) data-against=(line.key) data-may=(line.may) {
            h3 {
                (line.name) " "
                span class={ "stand " (if line.may { "holds" } else { "tripped" }) } {
                    (view.say(if line.may { "feed-may" } else { "feed-not-now" }))
                }
            }
            @if let Some(probable) = &line.probable { p { (probable) } }
            @if !line.refused.is_empty() { (said::list(view.reader, &line.refused)) (said::reasons(view.reader, &line.refused)) }
            @if let Some(none) = &line.no_rate { p { (none) } }
            p.when { (line.when) }
            @if !line.doses.is_empty() {
                @if line.may { (doses(view, &line.doses)) } @else {
                    details.why { summary { (view.say("feed-once-free")) } (doses(view, &line.doses)) }
                }
            }
            @if !line.minds.is_empty() { (said::list(view.reader, &line.minds)) (said::reasons(view.reader, &line.minds)) }
            @if !line.causes.is_empty() {
                h4 { (view.say("feed-causes")) }
                ul.sentences { @for one in &line.causes { li { (statement(one)) } } }
            }
            @if !line.answers.is_empty() || line.replaced.is_some() {
                h4 { (view.say("feed-answers")) }
                ul.sentences {
                    @for one in &line.answers { li { (statement(one)) } }
                    @if let Some(replaced) = &line.replaced { li data-testid="replaced" { (replaced) } }
                }
            }
        }
    }
}

fn doses(view: &View, doses: &[DoseLine]) -> Markup {
    html! {
        ul.table-rows {
            @for (n, dose) in doses.iter().enumerate() {
                li data-row=(dose.key) {
                    p { @if n > 0 { span.soft { (view.say("feed-and-or")) " " } } (dose.product) ": " span.figure { (dose.amount) } }
                    @if !dose.often.is_empty() { p { (dose.often) } }
                    p.soft { (dose.rate) }
                    @for way in &dose.ways { p.soft { (way) } }
                    @if let Some(basis) = &dose.basis { p.basis { (basis) } }
                    details { summary { (view.say("palm-why")) } p.soft { (dose.note) } (said::sources(&dose.sources)) }
                }
            }
        }
    }
}

/// Plans for a shortage that nobody suspects by the signs.
fn others(view: &View) -> Markup {
    let own = view.view;
    html! {
        @if !own.others.is_empty() {
            form.other method="get" action=(address::palm(&own.tag, "/feeding")) {
                label for="ask-against" { (view.say("feed-ask")) }
                div.two {
                    select #ask-against name="against" { @for (key, name) in &own.others { option value=(key) { (name) } } }
                    button type="submit" { (view.say("feed-ask-show")) }
                }
            }
        }
    }
}

fn log(view: &View, log: &[LogLine]) -> Markup {
    let tag = &view.view.tag;
    html! {
        section #given {
            h2 { (view.say("feed-log-title")) }
            @if log.is_empty() { p { (view.say("feed-log-none")) } }
            ul.given data-testid="log" {
                @for row in log {
                    li {
                        div {
                            p { strong { (row.date) } " · " (row.what) }
                            p.soft { (row.against) @if !row.notes.is_empty() { " · " (row.notes) } }
                            @if let Some(verdict) = row.verdict {
                                div.answer data-verdict=(verdict) {
                                    @for (n, line) in row.answer.iter().enumerate() {
                                        @if n == 0 { p { strong { (line) } } } @else { p.soft { (line) } }
                                    }
                                }
                            }
                        }
                        div.actions {
                            a.button href={ (address::palm(tag, &format!("/feeding?corrects={}", row.entry))) "#note" } { (view.say("water-correct")) }
                            form method="post" action=(address::palm(tag, "/feeding/withdraw")) {
                                input type="hidden" name="corrects" value=(row.entry);
                                input type="hidden" name="why" value=(view.say("feed-taken-back"));
                                button type="submit" { (view.say("water-take-back")) span.sr { ": " (row.date) } }
                            }
                        }
                    }
                }
            }
        }
    }
}

fn products(view: &View, products: &[ProductLine]) -> Markup {
    html! {
        section #products {
            h2 { (view.say("feed-products-title")) }
            p { (view.say("feed-slow-what")) }
            ul.table-rows {
                @for own in products {
                    li data-product=(own.key) class=[own.barred.then_some("caution")] {
                        p { strong { (own.name) } @if own.barred { " · " (view.say("feed-product-barred")) } }
                        @if !own.contents.is_empty() { p.soft { (own.contents) } }
                        @for way in &own.ways { p.soft { (way) } }
                        p { (own.text) }
                        @if let Some(basis) = &own.basis { p.basis { (basis) } }
                        @if !own.sources.is_empty() { details { summary { (view.say("palm-why")) } (said::sources(&own.sources)) } }
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
        "feed-form-correct"
    } else {
        "feed-form-title"
    };
    let id = match sheet.value("id") {
        "" => view.new_id,
        sent => sent,
    };
    let products: Vec<(&str, String)> = view
        .view
        .products
        .iter()
        .map(|own| (own.key.as_str(), own.name.clone()))
        .collect();
    let against: Vec<(&str, String)> = view
        .view
        .all
        .iter()
        .map(|(key, name)| (*key, name.clone()))
        .collect();
    html! {
        section #note {
            h2 { (view.say(title)) }
            p.small { (view.say("feed-form-what")) }
            (sheet.summary())
            form.sheet method="post" action=(address::palm(&view.view.tag, "/feeding")) novalidate {
                input type="hidden" name="id" value=(id);
                (sheet.hidden("corrects"))
                (sheet.line("date", Kind::Day))
                (choose(sheet, "product", &view.say("feed-product-none"), &products))
                (sheet.line("product_own", Kind::Words))
                div.two { (sheet.line("mass", Kind::Words)) (sheet.line("fed_area", Kind::Decimal)) }
                (choose(sheet, "against", &view.say("feed-maintenance"), &against))
                (sheet.line("feed_notes", Kind::Words))
                div.save {
                    button.primary type="submit" { (view.say("feed-save")) }
                    a.button href=(address::palm(&view.view.tag, "")) { (view.say("forms-cancel")) }
                }
            }
        }
    }
}

/// A choice; the first stands for none of them. A value of another time stays to choose.
fn choose(sheet: Sheet, name: &str, none: &str, choices: &[(&str, String)]) -> Markup {
    let now = sheet.value(name);
    html! {
        div.field {
            label for=(name) { (sheet.say(&format!("forms-{name}"))) }
            select id=(name) name=(name) aria-describedby=[sheet.described(name, false)] aria-invalid=[sheet.invalid(name)] {
                option value="" selected[now.is_empty()] { (none) }
                @for (key, words) in choices { option value=(key) selected[*key == now] { (words) } }
                @if !now.is_empty() && choices.iter().all(|(key, _)| *key != now) { option value=(now) selected { (now) } }
            }
            (sheet.at(name))
        }
    }
}
