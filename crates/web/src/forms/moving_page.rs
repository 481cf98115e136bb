//! The look of a palm's move: after it, before one, and the form.

use super::parts::{Kind, Sheet};
use crate::pages::moved::style;
use crate::pages::said;
use crate::{Here, Reader, address, page};
use desk::forms::{SOILS, Trouble, Typed};
use desk::views::moved::{BeforeView, LookRow, MovePage, NotedMove, PromiseView, Row};
use maud::{Markup, html};
use model::LeavesAtMove;

/// All that the page is drawn from.
pub struct View<'a> {
    /// For whom.
    pub reader: &'a Reader,
    /// What it shows.
    pub view: &'a MovePage,
    /// Something was asked about a move to come.
    pub asks: bool,
    /// What was typed into the form of a move.
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

    /// The form is what the page is about.
    fn noting(&self) -> bool {
        self.correcting() || self.failed || !self.troubles.is_empty() || self.view.noted.is_empty()
    }
}

/// The page.
pub fn page_of(view: &View) -> Markup {
    let own = view.view;
    let title = view
        .reader
        .words
        .text("move-title", &[("tag", own.tag.clone().into())]);
    let moved = own.since.is_some();
    let body = html! {
        (style())
        h1 { (title) }
        p.about {
            a href=(address::palm(&own.tag, "")) { (own.tag) }
            " · " i { (own.species) }
            @if !own.site.is_empty() { " · " (own.site) }
        }
        nav.jumps {
            @if moved { a href="#after" { (view.say("move-jump-after")) } }
            a href="#before" { (view.say("move-jump-before")) }
            a href="#note" { (view.say("move-jump-note")) }
            a href=(address::palm(&own.tag, "/owner")) { (view.say("owner-link")) }
            a href=(address::palm(&own.tag, "/water")) { (view.say("watering-link")) }
            a href=(address::palm(&own.tag, "/feeding")) { (view.say("feed-link")) }
        }
        @if view.noting() && (view.correcting() || !view.troubles.is_empty() || view.failed) { (note(view)) (after(view)) (before(view)) }
        @else if moved { (after(view)) (before(view)) (note(view)) }
        @else { (before(view)) (note(view)) }
    };
    page(view.reader, Here::Moved, &title, body)
}

fn after(view: &View) -> Markup {
    let own = view.view;
    html! {
        @if let Some(since) = &own.since {
            section #after {
                h2 { (view.say("move-jump-after")) }
                p {
                    @if let Some((key, words)) = &own.state { span class={ "stand " (key) } data-testid="state" { (words) } " " }
                    (since)
                }
                @if !own.trips.is_empty() { (said::list(view.reader, &own.trips)) }
                @if let Some(promise) = &own.promise { (promised(promise, !own.trips.is_empty())) }
                p.due { (own.next) }
                h3 { (view.say("moved-established-title")) }
                ul.sentences { @for one in &own.established { li { (one) } } }
                (calendar(view, &own.looks))
                (said::closed(view.reader, "moved-usual-title", &own.usual))
                (noted(view, &own.noted))
            }
        }
    }
}

fn promised(promise: &PromiseView, broken: bool) -> Markup {
    html! {
        div.promise-box.broken[broken] data-testid="promise" {
            p.headline { (promise.full) }
            p.call { (promise.call) }
            p.small { (promise.rests_on) }
        }
    }
}

fn calendar(view: &View, looks: &[LookRow]) -> Markup {
    html! {
        details.why open {
            summary { (view.say("moved-calendar-title")) }
            p.small { (view.say("moved-calendar-what")) }
            ol.looks {
                @for look in looks {
                    li class={ "look-" (look.state) } data-state=(look.state) {
                        span.sign aria-hidden="true" {}
                        div {
                            p.day {
                                (look.date) " "
                                span.state { (view.reader.words.text("moved-look-after", &[("after", look.after.clone().into())])) " · " (look.state_words) }
                            }
                            p.what {
                                (look.what)
                                @if let Some(basis) = &look.basis { " " span.mark { (basis) } }
                                @else { @for source in &look.sources { " " a.small href={ "/sources#" (source.key) } { (source.title) } } }
                            }
                        }
                    }
                }
            }
        }
    }
}

fn noted(view: &View, noted: &[NotedMove]) -> Markup {
    html! {
        h3 { (view.say("move-noted-title")) }
        @if noted.is_empty() { p { (view.say("move-noted-none")) } }
        @for one in noted {
            dl.facts { @for (name, value) in &one.facts { dt { (name) } dd { (value) } } }
            p { a.button href=(address::palm(&view.view.tag, &format!("/move?corrects={}", one.entry))) { (view.say("move-correct")) } }
        }
    }
}

fn before(view: &View) -> Markup {
    let own = &view.view.before;
    let open = view.asks || view.view.since.is_none();
    html! {
        section.before #before {
            h2 { (view.say("move-before-title")) }
            p { (view.say("move-before-what")) }
            details.why open[open] {
                summary { (view.say("move-ball-title")) " · " (view.say("move-leaves-title")) " · " (view.say("move-group-lift")) }
                (ask(view, own))
                (ball(view, own))
                (load(view, own))
                h3 { (view.say("move-leaves-title")) }
                p.headline data-testid="leaves" data-say=(own.leaves_key) { (own.leaves) }
                (rows(view, &own.leaves_rows))
                @for group in &own.groups {
                    h3 id={ "group-" (group.key) } { (group.title) }
                    (rows(view, &group.rows))
                }
                @if let Some(defer) = &own.defer { p { strong { (defer) } } }
            }
        }
    }
}

fn rows(view: &View, rows: &[Row]) -> Markup {
    html! {
        ul.table-rows {
            @for row in rows {
                li class=(row.weight) data-row=(row.key) {
                    p { @if let Some(figure) = &row.figure { span.figure { (figure) } " · " } (row.text) }
                    @if let Some(basis) = &row.basis { p.basis { (basis) } }
                    @if !row.sources.is_empty() {
                        details { summary { (view.say("palm-why")) } (said::sources(&row.sources)) }
                    }
                }
            }
        }
    }
}

fn ball(view: &View, own: &BeforeView) -> Markup {
    html! {
        h3 { (view.say("move-ball-title")) }
        div.planned data-testid="ball" {
            @for figure in &own.ball { div { p.name { (figure.name) } p.value { (figure.value) } } }
            @if let Some(volume) = &own.volume { div { p.name { (view.say("move-volume")) } p.value { (volume) } } }
        }
        @for remark in &own.remarks { p { strong { (remark) } } }
        @for figure in &own.ball {
            @if !figure.said.is_empty() {
                details.why { summary { (view.say("move-said")) ": " (figure.name) } (rows(view, &figure.said)) }
            }
        }
    }
}

fn load(view: &View, own: &BeforeView) -> Markup {
    html! {
        h3 { (view.say("move-mass-title")) }
        p { (view.say("move-mass-what")) }
        dl.facts data-testid="masses" { @for mass in &own.masses { dt { (mass.name) } dd { (mass.value) } } }
        @if !own.missing.is_empty() { ul.sentences { @for one in &own.missing { li { (one) } } } }
        details.why {
            summary { (view.say("palm-why")) }
            @for mass in own.masses.iter().filter(|m| !m.rows.is_empty()) { p { strong { (mass.name) } } (rows(view, &mass.rows)) }
        }
    }
}

/// The question about a move to come; its answer stands below it.
fn ask(view: &View, own: &BeforeView) -> Markup {
    let asked = &own.asked;
    let field = |name: &'static str, value: &str, mode: Option<&str>, hint: Option<&str>| {
        let wrong = own.troubles.iter().find(|(field, _)| *field == name);
        let id = format!("ask-{name}");
        html! {
            div.field {
                label for=(id) { (view.say(&format!("move-ask-{name}"))) }
                @if let Some(hint) = hint { p.hint { (view.say(hint)) } }
                input type="text" id=(id) name=(name) value=(value) inputmode=[mode] autocomplete="off" aria-invalid=[wrong.map(|_| "true")];
                @if let Some((_, text)) = wrong { p.trouble { (text) } }
            }
        }
    };
    let number = Some("numeric");
    let choose = |name: &str, now: &str, choices: &[(&str, String)]| {
        let id = format!("ask-{name}");
        html! {
            div.field {
                label for=(id) { (view.say(&format!("move-ask-{name}"))) }
                select id=(id) name=(name) { @for (value, words) in choices { option value=(value) selected[*value == now] { (words) } } }
            }
        }
    };
    let moist = [("", "unknown"), ("yes", "yes"), ("no", "no")]
        .map(|(value, word)| (value, view.say(&format!("move-ask-moist-{word}"))));
    html! {
        form.sheet method="get" action={ (address::palm(&view.view.tag, "/move")) "#before" } {
            input type="hidden" name="ask" value="yes";
            (field("diameter", &asked.diameter, None, Some("move-ask-diameter-hint")))
            div.two {
                (field("radius", &asked.radius, None, None))
                (field("depth", &asked.depth, None, None))
            }
            (field("fronds", &asked.fronds, number, Some("move-ask-fronds-hint")))
            (choose("soil", &asked.soil, &soils(view)))
            (choose("moist", &asked.moist, &moist))
            (field("kv", &asked.kv, Some("decimal"), Some("move-ask-kv-hint")))
            label.choice { input type="checkbox" name="hot" value="yes" checked[!asked.hot.is_empty()]; span { (view.say("move-ask-hot")) } }
            div.actions { button.primary type="submit" { (view.say("move-ask")) } }
        }
    }
}

fn soils(view: &View) -> Vec<(&'static str, String)> {
    let none = ("", view.say("move-soil-none"));
    let all = SOILS.map(|soil| (soil, view.say(&format!("move-soil-{soil}"))));
    std::iter::once(none).chain(all).collect()
}

fn note(view: &View) -> Markup {
    let sheet = Sheet {
        reader: view.reader,
        typed: view.typed,
        troubles: view.troubles,
        failed: view.failed,
    };
    let title = if view.correcting() {
        "move-form-correct"
    } else {
        "move-form-title"
    };
    html! {
        section #note {
            h2 { (view.say(title)) }
            p { (view.say("move-form-what")) }
            (sheet.summary())
            details.why open[view.noting()] {
                summary { (view.say(title)) }
                (form(view, sheet))
            }
        }
    }
}

fn form(view: &View, sheet: Sheet) -> Markup {
    let id = match sheet.value("id") {
        "" => view.new_id,
        sent => sent,
    };
    let radio = |name: &str, choices: &[(&str, String)]| {
        html! {
            fieldset id=(name) tabindex="-1" aria-describedby=[sheet.described(name, false)] {
                legend { (view.say(&format!("forms-{name}"))) }
                @for (value, words) in choices {
                    label.choice {
                        input type="radio" name=(name) value=(value) checked[sheet.value(name) == *value];
                        span { (words) }
                    }
                }
                (sheet.at(name))
            }
        }
    };
    let leaves: Vec<(&str, String)> = LeavesAtMove::ALL
        .iter()
        .map(|(_, word)| (*word, view.say(&format!("move-leaves-{word}"))))
        .chain([("", view.say("move-leaves-none"))])
        .collect();
    let ways = [
        ("same", "same"),
        ("deeper", "deeper"),
        ("higher", "higher"),
        ("", "none"),
    ]
    .map(|(value, word)| (value, view.say(&format!("move-way-{word}"))));
    html! {
        form.sheet method="post" action=(address::palm(&view.view.tag, "/move")) novalidate {
            input type="hidden" name="id" value=(id);
            (sheet.hidden("corrects"))
            div.two { (sheet.line("dug_on", Kind::Day)) (sheet.line("planted_on", Kind::Day)) }
            (sheet.line("from", Kind::Words))
            div.two { (sheet.line("ball_radius", Kind::Words)) (sheet.line("ball_depth", Kind::Words)) }
            div.field {
                label for="soil" { (view.say("forms-soil")) }
                select #soil name="soil" {
                    @for (value, words) in soils(view) { option value=(value) selected[value == sheet.value("soil")] { (words) } }
                    @if !sheet.value("soil").is_empty() && !SOILS.contains(&sheet.value("soil")) {
                        option value=(sheet.value("soil")) selected { (sheet.value("soil")) }
                    }
                }
            }
            (radio("leaves", &leaves))
            (sheet.line("fronds_taken", Kind::Whole))
            (radio("depth_way", &ways))
            (sheet.line("deeper", Kind::Words))
            (sheet.line("bracing", Kind::Words))
            (sheet.lines("move_notes"))
            div.save {
                button.primary type="submit" { (view.say("move-save")) }
                a.button href=(address::palm(&view.view.tag, "")) { (view.say("forms-cancel")) }
            }
        }
    }
}
