//! The look of planning a day, and of a round under way.

use super::parts::{Kind, Sheet};
use crate::pages::rounds::style;
use crate::pages::said;
use crate::{Here, Reader, address, page};
use desk::day_rounds::Task;
use desk::forms::{SKIP_REASONS, Trouble, Typed};
use desk::views::rounds::{
    BuilderView, MapView, NextStop, ProposalView, RoundPage, RoundTable, StopLine,
};
use desk::views::{CuttingView, Said};
use maud::{Markup, html};

/// All that the page of planning is drawn from.
pub struct Builder<'a> {
    /// For whom.
    pub reader: &'a Reader,
    /// What may be asked.
    pub may: &'a BuilderView,
    /// What was asked.
    pub typed: &'a Typed,
    /// What is wrong with it.
    pub troubles: &'a [Trouble],
    /// The ledger would not take it.
    pub failed: bool,
    /// What came of it.
    pub proposal: Option<&'a ProposalView>,
    /// Why nothing came of it.
    pub refused: &'a [Said],
    /// A fresh id for what is kept.
    pub new_id: &'a str,
}

/// `/rounds/plan`.
pub fn builder(own: &Builder) -> Markup {
    let reader = own.reader;
    let sheet = Sheet {
        reader,
        typed: own.typed,
        troubles: own.troubles,
        failed: own.failed,
    };
    let title = reader.say("plan-title");
    let body = html! {
        (style())
        h1 { (title) }
        p.lead { (reader.say("plan-lead")) }
        (sheet.summary())
        @if own.may.crews.is_empty() {
            p.note { (reader.say("plan-no-crews")) " " a href="/crews" { (reader.say("plan-crews-link")) } }
        }
        @if !own.refused.is_empty() { section #refused role="alert" { (said::list(reader, own.refused)) } }
        (asking(own, sheet))
        @if let Some(proposal) = own.proposal { (proposed(own, sheet, proposal)) }
    };
    page(reader, Here::Rounds, &title, body)
}

fn asking(own: &Builder, sheet: Sheet) -> Markup {
    let say = |code: &str| own.reader.say(code);
    let scope = match sheet.value("scope") {
        "" => "due",
        scope => scope,
    };
    let again = own.proposal.is_some() || !own.refused.is_empty();
    let radio = |value: &str| {
        html! {
            label.choice {
                input type="radio" name="scope" value=(value) checked[scope == value];
                span { (say(&format!("plan-scope-{value}"))) }
            }
        }
    };
    let tick = |name: String, words: &str, remark: &str| {
        html! {
            label.choice {
                input type="checkbox" name=(name) value="yes" checked[!sheet.value(&name).is_empty()];
                span { (words) @if !remark.is_empty() { small { " " (remark) } } }
            }
        }
    };
    html! {
        form.sheet.asking method="get" action="/rounds/plan#proposal" novalidate {
            input type="hidden" name="go" value="yes";
            (sheet.line_with("day", Kind::Day, &say("plan-day"), None, None))
            fieldset {
                legend { (say("plan-crews")) }
                p.hint { (say("plan-crews-hint")) }
                @for crew in &own.may.crews { (tick(format!("crew-{}", crew.name), &crew.name, &crew.remark)) }
            }
            fieldset id="tasks" tabindex="-1" {
                legend { (say("plan-tasks")) }
                p.hint { (say("plan-tasks-hint")) }
                input type="hidden" name="tasks" value="asked";
                @for (_, word) in Task::ALL { (tick(format!("task-{word}"), &say(&format!("round-task-{word}")), "")) }
                (sheet.at("tasks"))
            }
            fieldset id="scope" tabindex="-1" {
                legend { (say("plan-scope")) }
                (radio("due"))
                (radio("sites"))
                div.under {
                    @for site in &own.may.sites { (tick(format!("site-{}", site.name), &site.name, &site.due)) }
                }
                (radio("palms"))
                div.under { (sheet.line_with("tags", Kind::Words, &say("plan-tags"), Some(&say("plan-tags-hint")), None)) }
                (sheet.at("scope"))
            }
            div.actions { button.primary type="submit" { (say(if again { "plan-again" } else { "plan-search" })) } }
        }
    }
}

fn proposed(own: &Builder, sheet: Sheet, proposal: &ProposalView) -> Markup {
    let reader = own.reader;
    html! {
        section #proposal {
            h2 { (proposal.title) }
            p.lead role="status" data-testid="proposal" { (proposal.summary) }
            @if let Some(map) = &proposal.map { (drawn(reader, map, &proposal.rounds)) }
            @for (i, round) in proposal.rounds.iter().enumerate() { (table(reader, i, round)) }
            @if !proposal.left.is_empty() {
                h3 { (reader.say("plan-left")) }
                ul.left-out {
                    @for group in &proposal.left {
                        li {
                            p { (group.why.text) }
                            p.tags { @for tag in &group.tags { a href=(address::palm(tag, "")) { (tag) } " " } }
                        }
                    }
                }
            }
            details.why {
                summary { (reader.say("plan-rests-on")) }
                (said::list(reader, &proposal.remarks))
            }
            @if !proposal.rounds.is_empty() {
                form.sheet method="post" action="/rounds/plan" novalidate {
                    input type="hidden" name="id" value=(own.new_id);
                    input type="hidden" name="rounds" value=(proposal.carried);
                    div.field {
                        label for="notes" { (reader.say("plan-notes")) }
                        textarea #notes name="notes" rows="2" { (sheet.value("notes")) }
                    }
                    @if let Some(words) = &proposal.replaces { p.note { (words) } }
                    div.save { button.primary type="submit" data-testid="keep" { (reader.say("plan-keep")) } }
                }
            }
        }
    }
}

fn table(reader: &Reader, i: usize, round: &RoundTable) -> Markup {
    html! {
        section.proposed {
            h3 { span.letter { (letter(i)) } " " (round.title) }
            p { (round.sum) }
            div.slide tabindex="0" role="region" aria-label=(round.title) {
                table.stops {
                    thead { tr {
                        th scope="col" { (reader.say("plan-time")) }
                        th scope="col" { (reader.say("plan-palm")) }
                        th scope="col" { (reader.say("plan-what")) }
                        th scope="col" { (reader.say("plan-minutes")) }
                    } }
                    tbody {
                        @for stop in &round.stops {
                            @if let Some(site) = &stop.site { tr.site { th colspan="4" scope="colgroup" { (site) } } }
                            tr data-tag=(stop.tag) {
                                td { (stop.start) }
                                td { a href=(address::palm(&stop.tag, "")) { (stop.tag) } " " i { (stop.species) } }
                                td {
                                    (stop.tasks)
                                    @if stop.lift { " · " (reader.say("round-lift")) }
                                    @if let Some(health) = &stop.health { br; small { (health) } }
                                }
                                td.number { (stop.minutes) }
                            }
                        }
                    }
                }
            }
        }
    }
}

/// A letter for each round: colour is not needed to tell them apart.
fn letter(i: usize) -> char {
    char::from(b'A' + (i % 26) as u8)
}

fn drawn(reader: &Reader, map: &MapView, rounds: &[RoundTable]) -> Markup {
    html! {
        figure.map {
            svg viewBox={ "0 0 " (map.width) " " (map.height) } role="img" aria-label=(reader.say("plan-map")) {
                rect.ground width=(map.width) height=(map.height) {}
                @for track in &map.tracks { path class={ "track track-" (track.round % 4) } d=(track.path) {} }
                @for dot in &map.dots {
                    @if dot.start {
                        rect.start x=(dot.x - 7.0) y=(dot.y - 7.0) width="14" height="14" {}
                    } @else {
                        circle.site cx=(dot.x) cy=(dot.y) r="7" {}
                    }
                    text.name x=(dot.x) y=(if dot.start { dot.y + 24.0 } else { dot.y - 12.0 }) text-anchor="middle" { (dot.name) }
                }
                g.scale {
                    path d={ "M16 " (map.height - 16.0) "h" (map.scale) } {}
                    text x="16" y=(map.height - 24.0) { (map.scale_words) }
                }
            }
            figcaption {
                (reader.say("plan-map-what"))
                ul.legend {
                    @for (i, round) in rounds.iter().enumerate() {
                        li {
                            svg.key viewBox="0 0 44 10" aria-hidden="true" { path class={ "track track-" (i % 4) } d="M2 5H42" {} }
                            (letter(i)) " " (round.title)
                        }
                    }
                }
            }
        }
    }
}

/// All that the page of a round is drawn from.
pub struct Under<'a> {
    /// For whom.
    pub reader: &'a Reader,
    /// What it shows.
    pub view: &'a RoundPage,
    /// What was typed.
    pub typed: &'a Typed,
    /// What is wrong with it.
    pub troubles: &'a [Trouble],
    /// The ledger would not take it.
    pub failed: bool,
    /// Makes a fresh id for the entry of a form.
    pub fresh: &'a dyn Fn() -> String,
}

/// `/round/{id}`.
pub fn under_way(own: &Under) -> Markup {
    let (reader, view) = (own.reader, own.view);
    let sheet = Sheet {
        reader,
        typed: own.typed,
        troubles: own.troubles,
        failed: own.failed,
    };
    let body = html! {
        (style())
        h1 { (view.title) }
        p.about { a href="/rounds" { (reader.say("common-rounds")) } " · " (view.when) }
        p.lead role="status" data-testid="progress" { (view.progress) }
        @for time in &view.times { p.time { (time) } }
        @if !view.notes.is_empty() { p.note { strong { (reader.say("round-notes")) ": " } (view.notes) } }
        (sheet.summary())
        @if !view.begun { (one_button(own, "start", "round-start")) }
        @match &view.next {
            Some(next) => (in_hand(own, sheet, next)),
            None => p.lead { (reader.say("round-none-left")) },
        }
        @if view.begun && !view.ended { (one_button(own, "finish", "round-finish")) }
        h2 { (reader.say("round-all")) }
        p.actions { a.button href={ "/round/" (view.id) "/sheet.pdf" } { (reader.say("crew-sheet-link")) " (PDF)" } }
        ol.round-stops { @for stop in &view.stops { (line(own, stop)) } }
        @if !view.begun { (calling_off(own)) }
    };
    page(reader, Here::Rounds, &view.title, body)
}

fn one_button(own: &Under, step: &str, words: &str) -> Markup {
    html! {
        form.one method="post" action={ "/round/" (own.view.id) } {
            input type="hidden" name="id" value=((own.fresh)());
            input type="hidden" name="step" value=(step);
            button.wide type="submit" data-testid=(step) { (own.reader.say(words)) }
        }
    }
}

fn in_hand(own: &Under, sheet: Sheet, next: &NextStop) -> Markup {
    let say = |code: &str| own.reader.say(code);
    html! {
        section.in-hand data-testid="next" data-tag=(next.tag) {
            h2 { span.sr { (say("round-next")) ": " } (next.tag) " " i { (next.species) } }
            p.where {
                (next.start) @if !next.site.is_empty() { " · " (next.site) }
                @if let Some(at) = next.at { " · " a href={ "geo:" (at.lat) "," (at.lon) } { (say("round-geo")) } }
            }
            p.tasks { strong { (next.tasks) } }
            @if let Some(water) = &next.water { p { (say("round-task-water")) ": " strong { (water) } } }
            @for hold in &next.holds { p.held { strong { (say("round-hold")) ": " } (hold.text) } }
            @if let Some(clean) = next.clean {
                p class={ "blade-before" @if clean { " must" } } { (say(if clean { "round-clean" } else { "round-same-blade" })) }
            }
            @for plan in &next.plans { (cut(own.reader, plan)) }
            @if !next.cautions.is_empty() {
                details.cautions open {
                    summary { (say("round-cautions")) }
                    ul { @for caution in &next.cautions { li { (caution.text) } } }
                    p { (say("common-closing")) }
                }
            }
            div.actions {
                a.button href=(address::palm(&next.tag, "")) { (say("round-open-palm")) }
                @if next.has("cut") { a.button href=(address::with_query("/cutting", &[("palm", &next.tag)])) { (say("round-log-cut")) } }
                @for (task, end, words) in [("water", "/water", "round-log-water"), ("feed", "/feeding", "round-log-feed")] {
                    @if next.has(task) { a.button href=(address::palm(&next.tag, end)) { (say(words)) } }
                }
                @if next.has("look") { a.button href=(address::palm(&next.tag, "/inspect")) { (say("round-log-look")) } }
            }
            (done(own, sheet, next))
            (skip(own, sheet, next))
        }
    }
}

fn cut(reader: &Reader, plan: &CuttingView) -> Markup {
    html! {
        @if plan.holds.is_empty() {
            dl.how {
                div { dt { (reader.say("cut-take")) } dd { strong { (plan.take) } } }
                @for line in &plan.how { div { dt { (line.name) } dd { (line.value) } } }
            }
        }
    }
}

fn done(own: &Under, sheet: Sheet, next: &NextStop) -> Markup {
    let say = |code: &str| own.reader.say(code);
    html! {
        form.sheet.step method="post" action={ "/round/" (own.view.id) } novalidate {
            input type="hidden" name="id" value=((own.fresh)());
            input type="hidden" name="step" value="done";
            input type="hidden" name="palm" value=(next.tag);
            (sheet.line_with("minutes", Kind::Decimal, &say("round-done-minutes"), Some(&say("round-done-minutes-hint")), None))
            (sheet.line_with("note", Kind::Words, &say("round-done-note"), None, None))
            div.save { button.primary.wide type="submit" data-testid="done" { (say("round-done")) } }
        }
    }
}

fn skip(own: &Under, sheet: Sheet, next: &NextStop) -> Markup {
    let say = |code: &str| own.reader.say(code);
    let wrong = own.troubles.iter().any(|trouble| trouble.field == "why");
    html! {
        details.leave open[wrong] {
            summary { (say("round-skip")) }
            form.sheet.step method="post" action={ "/round/" (own.view.id) } novalidate {
                input type="hidden" name="id" value=((own.fresh)());
                input type="hidden" name="step" value="skip";
                input type="hidden" name="palm" value=(next.tag);
                fieldset id="why" tabindex="-1" {
                    legend { (say("round-skip-why")) }
                    @for why in SKIP_REASONS {
                        label.choice {
                            input type="radio" name="why" value=(why) checked[sheet.value("why") == why];
                            span { (say(&format!("round-why-{why}"))) }
                        }
                    }
                    (sheet.at("why"))
                }
                (sheet.line_with("words", Kind::Words, &say("round-why-words"), None, None))
                div.save { button type="submit" data-testid="skip" { (say("round-skip")) } }
            }
        }
    }
}

fn line(own: &Under, stop: &StopLine) -> Markup {
    html! {
        li class=(stop.state) data-tag=(stop.tag) data-state=(stop.state) {
            @if stop.clean { p.blade-before.must { (own.reader.say("round-clean")) } }
            a href={ (address::with_query(&format!("/round/{}", own.view.id), &[("at", &stop.tag)])) } {
                span.start { (stop.start) }
                strong { (stop.tag) }
                span.site { (stop.site) }
                span.tasks { (stop.tasks) }
                span.state { (stop.state_words) }
            }
        }
    }
}

fn calling_off(own: &Under) -> Markup {
    let say = |code: &str| own.reader.say(code);
    html! {
        details.leave {
            summary { (say("round-call-off")) }
            form.sheet method="post" action={ "/round/" (own.view.id) "/off" } {
                input type="hidden" name="id" value=((own.fresh)());
                div.field { label for="off-why" { (say("round-call-off-why")) } input #off-why type="text" name="why"; }
                div.save { button type="submit" data-testid="off" { (say("round-call-off")) } }
            }
        }
    }
}
