//! The look of cleaning: what is in the bath and which blade is ready first; then the blades, the brush, the bath.

use super::parts::{self, Kind, Sheet};
use super::soaks::Soak;
use crate::badge::{badge, icon};
use crate::pages::blades::places;
use crate::pages::{rotation, said};
use crate::{Here, Reader, page};
use desk::clock;
use desk::forms::{Trouble, Typed, blade_box, blade_entry};
use desk::views::blades::BladeRow;
use desk::views::blades::bath::{Agent, BathRow, CleaningView, MixChoice};
use maud::{Markup, html};
use model::{BladeId, Moment};

/// All that the page shows.
pub struct View<'a> {
    /// For whom.
    pub reader: &'a Reader,
    /// Blades, mixes, baths, cautions.
    pub view: &'a CleaningView,
    /// What is in contact now.
    pub soaks: &'a [Soak],
    /// Now.
    pub now: Moment,
    /// Makes the id of an entry to come.
    pub new_id: &'a dyn Fn() -> String,
    /// What was typed, or what the form starts from.
    pub typed: &'a Typed,
    /// What is wrong with it.
    pub troubles: &'a [Trouble],
    /// The ledger would not take it.
    pub failed: bool,
}

impl View<'_> {
    fn sheet(&self) -> Sheet<'_> {
        Sheet {
            reader: self.reader,
            typed: self.typed,
            troubles: self.troubles,
            failed: self.failed,
        }
    }

    fn say(&self, code: &str) -> String {
        self.reader.say(code)
    }

    fn row(&self, blade: BladeId) -> Option<&BladeRow> {
        self.view.blades.iter().find(|row| row.id == blade)
    }
}

/// The whole page.
pub fn page_of(view: &View) -> Markup {
    let title = view.say("cleaning-title");
    let body = html! {
        (places(view.reader, "/cleaning"))
        h1 { (title) }
        (saved(view))
        (soaking(view))
        (view.sheet().summary())
        @if view.view.blades.is_empty() {
            p.lead { (view.say("blades-empty")) }
            p.actions { a.button.primary href="/blades/new" { (view.say("blades-new")) } }
        } @else { (form(view)) }
        p.actions { (rotation::link(view.reader)) }
        (cautions(view))
        (agents(view))
    };
    page(view.reader, Here::Blades, &title, body)
}

fn saved(view: &View) -> Markup {
    let tags = view.typed.get("saved");
    html! {
        @if !tags.is_empty() && view.troubles.is_empty() && !view.failed {
            p.done role="status" data-testid="saved" {
                (icon("clean"))
                span { (view.reader.words.text("cleaning-saved", &[("tags", tags.to_owned().into())])) }
            }
        }
    }
}

/// Blades in contact: the next to be ready first. The script counts down; without it the hour is there.
fn soaking(view: &View) -> Markup {
    html! {
        @if !view.soaks.is_empty() {
            section.soaking aria-labelledby="soaking" data-now=(view.now.0) {
                h2 #soaking { (view.say("cleaning-soaking")) }
                ol.soaks {
                    @for soak in view.soaks {
                        @if let Some(row) = view.row(soak.blade) { (one_soak(view, soak, row)) }
                    }
                }
            }
        }
    }
}

fn one_soak(view: &View, soak: &Soak, row: &BladeRow) -> Markup {
    let ready = soak.ready <= view.now;
    let args = [
        ("from", clock::hour(soak.from).into()),
        ("until", clock::hour(soak.ready).into()),
    ];
    let state = if ready { "ready" } else { "soaking" };
    html! {
        li class=(state) data-tag=(row.tag) data-ready=(soak.ready.0) data-from=(soak.from.0) {
            div.who { strong.tag { (row.tag) } " " (row.kind) }
            p.left role="timer" {
                span.by-script.count data-count hidden {}
                span.plain { (view.reader.words.text("cleaning-ready-at", &args)) }
            }
            p.is-ready hidden[!ready] data-is-ready { (icon("clean")) span { (view.say("cleaning-is-ready")) } }
            form method="post" action="/cleaning/out" {
                input type="hidden" name=(blade_box(soak.blade)) value="yes";
                input type="hidden" name=(blade_entry(soak.blade)) value=(soak.typed.get(&blade_entry(soak.blade)));
                input type="hidden" name="soaked_from" value=(soak.from.0);
                @for name in ["with", "own_agent", "strength_pct", "brushed", "by", "confirm-form-clean-no-agent", "confirm-form-clean-own-agent"] {
                    @if !soak.typed.get(name).is_empty() { input type="hidden" name=(name) value=(soak.typed.get(name)); }
                }
                button.primary type="submit" data-out data-say-ready=(view.say("cleaning-out")) data-say-early=(view.say("cleaning-out-early")) {
                    (view.say(if ready { "cleaning-out" } else { "cleaning-out-early" }))
                }
                button type="submit" name="do" value="forget" { (view.say("cleaning-forget")) }
            }
        }
    }
}

fn form(view: &View) -> Markup {
    let sheet = view.sheet();
    html! {
        (parts::messages(view.reader))
        form.sheet #cleaning method="post" action="/cleaning" data-draft="cleaning" novalidate {
            (blades(view, sheet))
            (brush(sheet))
            (with(view, sheet))
            (sheet.line_with("contact_min", Kind::Decimal, &sheet.say("cleaning-minutes-field"), Some(&sheet.say("cleaning-minutes-hint")), None))
            details.why {
                summary { (sheet.say("cleaning-more")) }
                (sheet.line_with("by", Kind::Words, &sheet.say("cleaning-by"), None, None))
                div.field {
                    label for="done" { (sheet.say("cleaning-done-at")) }
                    p.hint #done-hint { (sheet.say("cleaning-done-hint")) }
                    input type="datetime-local" id="done" name="done" value=(sheet.value("done"))
                        aria-describedby=[sheet.described("done", true)] aria-invalid=[sheet.invalid("done")];
                    (sheet.at("done"))
                }
            }
            div.save {
                button.primary type="submit" name="do" value="soak" { (sheet.say("cleaning-start")) }
                button type="submit" name="do" value="done" { (sheet.say("cleaning-save")) }
            }
        }
    }
}

fn blades(view: &View, sheet: Sheet) -> Markup {
    html! {
        fieldset #blades tabindex="-1" aria-describedby=[sheet.described("blades", false)] {
            legend { (sheet.say("cleaning-which")) }
            (sheet.at("blades"))
            div.tick-blades {
                @for row in &view.view.blades {
                    @let (name, entry) = (blade_box(row.id), blade_entry(row.id));
                    @let sent_before = sheet.value(&entry);
                    input type="hidden" name=(entry) value={ @if sent_before.is_empty() { ((view.new_id)()) } @else { (sent_before) } };
                    label.choice-card.(row.badge.key) {
                        input type="checkbox" name=(name) value="yes" checked[!sheet.value(&name).is_empty()];
                        strong.tag { (row.tag) }
                        span.kind { (row.kind) @if !row.kit.is_empty() { " · " (row.kit) } }
                        (badge(&row.badge))
                    }
                }
            }
        }
    }
}

/// Brush first: soil and sap eat up every agent. Not ticked means not brushed.
fn brush(sheet: Sheet) -> Markup {
    html! {
        fieldset {
            legend { (sheet.say("cleaning-first")) }
            p.hint { (sheet.say("cleaning-brush-hint")) }
            input type="hidden" name="brushed" value="no";
            label.choice {
                input type="checkbox" name="brushed" value="yes" checked[sheet.value("brushed") == "yes"];
                span { (sheet.say("cleaning-brushed")) }
            }
        }
    }
}

/// The bath in use, or a mix of the table, or the keeper's own.
fn with(view: &View, sheet: Sheet) -> Markup {
    let (sound, rest): (Vec<_>, Vec<_>) = view.view.mixes.iter().partition(|mix| mix.sound);
    let chosen = sheet.value("with");
    let rest_open = rest.iter().any(|mix| mix.value == chosen)
        || chosen == "own"
        || sheet.invalid("own_agent").is_some();
    html! {
        fieldset #with tabindex="-1" aria-describedby=[sheet.described("with", false)] {
            legend { (sheet.say("cleaning-with")) }
            (sheet.at("with"))
            @for bath in &view.view.baths { (bath_choice(view, sheet, bath)) }
            p.actions { a.button href="/cleaning/bath" { (sheet.say("cleaning-new-bath")) } }
            details.why open[view.view.baths.is_empty() || sound.iter().any(|mix| mix.value == chosen)] {
                summary { (sheet.say("cleaning-no-bath")) }
                @for mix in sound { (mix_choice(sheet, mix)) }
            }
            details.why open[rest_open] {
                summary { (sheet.say("cleaning-other-mixes")) }
                p.hint { (sheet.say("cleaning-other-hint")) }
                @for mix in rest { (mix_choice(sheet, mix)) }
                (own(view, sheet))
            }
        }
    }
}

fn bath_choice(view: &View, sheet: Sheet, bath: &BathRow) -> Markup {
    html! {
        div.bath.(if bath.change.is_some() { "spent" } else { "fresh" }) data-testid="bath" {
            label.choice {
                input type="radio" name="with" value=(bath.value) checked[sheet.value("with") == bath.value];
                span { strong { (bath.name) } br; (bath.age) }
            }
            @if let Some(change) = &bath.change {
                p.change { (icon("spent")) span { (change.text) } }
                (said::reasons(view.reader, std::slice::from_ref(change)))
            }
        }
    }
}

fn mix_choice(sheet: Sheet, mix: &MixChoice) -> Markup {
    html! {
        label.choice {
            input type="radio" name="with" value=(mix.value) checked[sheet.value("with") == mix.value];
            span { strong { (mix.name) } br; (mix.mix) br; (mix.minutes) }
        }
    }
}

/// Something that is not in the table.
fn own(view: &View, sheet: Sheet) -> Markup {
    html! {
        label.choice {
            input type="radio" name="with" value="own" checked[sheet.value("with") == "own"];
            span { (sheet.say("cleaning-own")) }
        }
        div.two {
            (sheet.line_with("own_agent", Kind::Words, &sheet.say("cleaning-own-agent"), None, Some("known-agents")))
            (sheet.line_with("strength_pct", Kind::Decimal, &sheet.say("cleaning-strength"), None, None))
        }
        datalist #known-agents { @for agent in &view.view.agents { option value=(agent.key) { (agent.name) } } }
    }
}

fn cautions(view: &View) -> Markup {
    html! {
        section.cautions aria-labelledby="cautions" {
            h2 #cautions { (view.say("cleaning-cautions")) }
            (said::list(view.reader, &view.view.cautions))
            p { strong { (view.say("common-closing")) } }
            (said::reasons(view.reader, &view.view.cautions))
        }
    }
}

/// What the table says, source by source: they do not agree, and that is shown.
fn agents(view: &View) -> Markup {
    html! {
        section.agents aria-labelledby="agents" {
            h2 #agents { (view.say("cleaning-agents")) }
            p { (view.say("cleaning-agents-what")) }
            @for agent in &view.view.agents { (one_agent(agent)) }
        }
    }
}

fn one_agent(agent: &Agent) -> Markup {
    html! {
        details.why {
            summary { (agent.name) }
            @if !agent.cautions.is_empty() { ul.cautions { @for caution in &agent.cautions { li { (caution) } } } }
            ul.said {
                @for row in &agent.rows {
                    li class={ "works-" (row.works) } {
                        p.words { (row.text) }
                        @if let Some(basis) = &row.basis { p.basis { (basis) } }
                        (said::sources(&row.sources))
                    }
                }
            }
        }
    }
}

/// `/cleaning/bath`: a fresh bath.
pub fn bath_page(
    reader: &Reader,
    view: &CleaningView,
    typed: &Typed,
    troubles: &[Trouble],
    failed: bool,
) -> Markup {
    let sheet = Sheet {
        reader,
        typed,
        troubles,
        failed,
    };
    let title = reader.say("cleaning-bath-title");
    let now = if sheet.value("mixed").is_empty() && troubles.is_empty() {
        view.now_typed.as_str()
    } else {
        sheet.value("mixed")
    };
    let body = html! {
        (places(reader, "/cleaning"))
        h1 { (title) }
        p { (reader.say("cleaning-bath-what")) }
        (sheet.summary())
        form.sheet #bath method="post" action="/cleaning/bath" novalidate {
            (sheet.hidden("id"))
            fieldset #with tabindex="-1" {
                legend { (reader.say("cleaning-with")) }
                (sheet.at("with"))
                @for mix in view.mixes.iter().filter(|mix| mix.in_bath) { (mix_choice(sheet, mix)) }
                label.choice {
                    input type="radio" name="with" value="own" checked[sheet.value("with") == "own"];
                    span { (reader.say("cleaning-own")) }
                }
                div.two {
                    (sheet.line_with("own_agent", Kind::Words, &reader.say("cleaning-own-agent"), None, Some("known-agents")))
                    (sheet.line_with("strength_pct", Kind::Decimal, &reader.say("cleaning-strength"), None, None))
                }
                datalist #known-agents { @for agent in &view.agents { option value=(agent.key) { (agent.name) } } }
            }
            (sheet.line_with("kit", Kind::Words, &reader.say("blade-form-kit"), None, Some("known-kits")))
            datalist #known-kits { @for kit in &view.kits { option value=(kit) {} } }
            div.field {
                label for="mixed" { (reader.say("cleaning-mixed-at")) }
                input type="datetime-local" id="mixed" name="mixed" value=(now)
                    aria-describedby=[sheet.described("mixed", false)] aria-invalid=[sheet.invalid("mixed")];
                (sheet.at("mixed"))
            }
            div.save {
                button.primary type="submit" { (reader.say("cleaning-bath-save")) }
                a.button href="/cleaning" { (reader.say("forms-cancel")) }
            }
        }
        section.cautions aria-labelledby="cautions" {
            h2 #cautions { (reader.say("cleaning-cautions")) }
            (said::list(reader, &view.cautions))
            p { strong { (reader.say("common-closing")) } }
            (said::reasons(reader, &view.cautions))
        }
    };
    page(reader, Here::Blades, &title, body)
}
