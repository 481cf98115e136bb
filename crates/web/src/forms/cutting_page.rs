//! The cutting log's look: one question at a time, big buttons, the answer before the form.

use super::counter::counter;
use super::parts::{self, Kind, Sheet};
use crate::badge::{badge, icon};
use crate::pages::blades::places;
use crate::pages::said;
use crate::{Here, Reader, address, page};
use desk::forms::{Trouble, Typed};
use desk::views::blades::BladeRow;
use desk::views::blades::cut::{CutView, PalmBrief, Verdict};
use maud::{Markup, html};

/// All that the page shows.
pub struct View<'a> {
    /// For whom.
    pub reader: &'a Reader,
    /// Blade, palm and verdict.
    pub view: &'a CutView,
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

    /// The same page with one of the two picked anew.
    fn to(&self, blade: &str, palm: &str) -> String {
        address::with_query("/cutting", &[("blade", blade), ("palm", palm)])
    }

    fn palm_tag(&self) -> &str {
        self.view.palm.as_ref().map_or("", |p| p.tag.as_str())
    }

    fn blade_tag(&self) -> &str {
        self.view.blade.as_ref().map_or("", |b| b.tag.as_str())
    }
}

/// The whole page.
pub fn page_of(view: &View) -> Markup {
    let title = view.say("cutting-title");
    let held = view.view.verdict.as_ref().is_some_and(|v| v.key == "held");
    let body = html! {
        (places(view.reader, "/cutting"))
        h1 { (title) }
        (saved(view))
        (view.sheet().summary())
        @if let Some(blade) = &view.view.blade { (picked_blade(view, blade)) }
        @if let Some(palm) = &view.view.palm { (picked_palm(view, palm)) }
        // one question at a time: the blade first, unless a palm was scanned
        @if view.view.blade.is_none() && !held { (pick_blade(view)) }
        @if view.view.palm.is_none() && (view.view.blade.is_some() || view.view.no_palm.is_some()) { (pick_palm(view)) }
        @if let Some(verdict) = &view.view.verdict { (answer(view, verdict)) }
        @if let (Some(_), Some(palm), Some(verdict)) = (&view.view.blade, &view.view.palm, &view.view.verdict) {
            @if !matches!(verdict.key, "held" | "lent") { (form(view, palm, verdict)) }
        }
    };
    page(view.reader, Here::Blades, &title, body)
}

/// The cut before this one is saved.
fn saved(view: &View) -> Markup {
    let tag = view.typed.get("saved");
    html! {
        @if !tag.is_empty() && view.troubles.is_empty() && !view.failed {
            p.done role="status" data-testid="saved" {
                (icon("clean"))
                span {
                    (view.reader.words.text("cutting-saved", &[("tag", tag.to_owned().into())])) " "
                    a href=(address::palm(tag, "#blades")) { (tag) }
                }
            }
        }
    }
}

fn pick_blade(view: &View) -> Markup {
    html! {
        section aria-labelledby="pick-blade" {
            h2 #pick-blade { (view.say("cutting-which-blade")) }
            @if let Some(tag) = &view.view.no_blade {
                p.trouble { (view.reader.words.text("error-not-found-blade", &[("tag", tag.clone().into())])) }
            }
            @if view.view.choices.is_empty() {
                p { (view.say("blades-empty")) }
                p.actions { a.button.primary href="/blades/new" { (view.say("blades-new")) } }
            }
            ul.pick-blade {
                @for row in &view.view.choices {
                    li data-tag=(row.tag) {
                        @if row.badge.key == "lent" { div.choice-card.off { (card(row)) } } @else {
                            a.choice-card.(row.badge.key) href=(view.to(&row.tag, view.palm_tag())) { (card(row)) }
                        }
                    }
                }
            }
        }
    }
}

fn card(row: &BladeRow) -> Markup {
    html! {
        strong.tag { (row.tag) }
        span.kind { (row.kind) @if !row.kit.is_empty() { " · " (row.kit) } @if !row.holder.is_empty() { " · " (row.holder) } }
        (badge(&row.badge))
    }
}

fn picked_blade(view: &View, row: &BladeRow) -> Markup {
    html! {
        div.picked {
            p { span.what { (view.say("cutting-blade")) } " " a href=(address::blade(&row.tag, "")) { strong { (row.tag) } } " " (row.kind) }
            a.button href=(view.to("", view.palm_tag())) { (view.say("cutting-another")) span.sr { " " (view.say("cutting-blade")) } }
        }
    }
}

fn picked_palm(view: &View, palm: &PalmBrief) -> Markup {
    html! {
        div.picked {
            p {
                span.what { (view.say("cutting-palm")) } " " a href=(address::palm(&palm.tag, "")) { strong { (palm.tag) } } " "
                i { (palm.species) } @if !palm.site.is_empty() { " · " (palm.site) }
            }
            a.button href=(view.to(view.blade_tag(), "")) { (view.say("cutting-another")) span.sr { " " (view.say("cutting-palm")) } }
        }
    }
}

/// The palm: its tag typed with suggestions, or its label scanned.
fn pick_palm(view: &View) -> Markup {
    html! {
        section aria-labelledby="pick-palm" {
            h2 #pick-palm { (view.say("cutting-which-palm")) }
            @if let Some(tag) = &view.view.no_palm {
                p.trouble #palm-trouble { (view.reader.words.text("error-not-found-palm", &[("tag", tag.clone().into())])) }
            }
            form.sheet.ask-palm method="get" action="/cutting" {
                input type="hidden" name="blade" value=(view.blade_tag());
                label for="palm" { (view.say("cutting-palm-tag")) }
                p.hint #palm-hint { (view.say("cutting-palm-hint")) }
                div.ask {
                    input type="text" #palm name="palm" list="known-palms" autocomplete="off" autocapitalize="characters" enterkeyhint="go"
                        value=(view.view.no_palm.as_deref().unwrap_or(""))
                        aria-describedby={ "palm-hint" @if view.view.no_palm.is_some() { " palm-trouble" } }
                        aria-invalid=[view.view.no_palm.is_some().then_some("true")];
                    button.primary type="submit" { (view.say("cutting-go")) }
                }
                datalist #known-palms { @for (tag, species) in &view.view.palms { option value=(tag) { (species) } } }
            }
        }
    }
}

/// Whether this blade may go to this palm: said before anything can be saved.
fn answer(view: &View, verdict: &Verdict) -> Markup {
    let blade = view.blade_tag();
    html! {
        section class={ "stands " (verdict.key) } role="status" data-testid="verdict" data-state=(verdict.key) {
            (icon(verdict.key))
            div {
                p.headline { (verdict.headline) }
                p { (verdict.says) }
                @match verdict.key {
                    "held" => p.actions { a.button href=(address::palm(view.palm_tag(), "/holds")) { (view.say("palm-holds")) } },
                    "clean" | "same" => {},
                    "lent" => p.actions { a.button href=(address::blade(blade, "/back")) { (view.say("blades-back")) } },
                    _ => p.actions {
                        a.button.primary href=(address::with_query("/cleaning", &[("blade", blade)])) { (view.say("cutting-clean-first")) }
                        a.button href=(view.to("", view.palm_tag())) { (view.say("cutting-other-blade")) }
                    },
                }
                (said::reasons(view.reader, &verdict.because))
            }
        }
    }
}

fn form(view: &View, palm: &PalmBrief, verdict: &Verdict) -> Markup {
    let sheet = view.sheet();
    let draft = format!(
        "cut {} {} {}",
        view.blade_tag(),
        palm.tag,
        sheet.value("stem")
    );
    html! {
        (parts::messages(view.reader))
        form.sheet #cut method="post" action="/cutting" data-draft=(draft) data-now=(view.view.now_ms) data-now-typed=(view.view.now_typed) novalidate {
            button.sr type="submit" tabindex="-1" aria-hidden="true" { (sheet.say("common-save")) }
            (sheet.hidden("id"))
            input type="hidden" name="blade" value=(view.blade_tag());
            input type="hidden" name="palm" value=(palm.tag);
            @if !verdict.clean { (despite(sheet, verdict)) }
            (stem(sheet, palm))
            (clock(view, sheet))
            fieldset.counts {
                legend { (sheet.say("cutting-off")) }
                p.hint { (sheet.say("cutting-off-hint")) }
                (counter(sheet, "off_brown", "brown", None))
                (counter(sheet, "off_yellowing", "yellowing", None))
                (counter(sheet, "off_green", "green", None))
                (counter(sheet, "off_stalks", "stalk", None))
            }
            (sheet.line_with("crew", Kind::Words, &sheet.say("cutting-crew"), None, Some("known-crews")))
            datalist #known-crews { @for name in &view.view.crews { option value=(name) {} } }
            (sheet.line_with("cut_notes", Kind::Words, &sheet.say("forms-notes"), None, None))
            div.save {
                button.primary type="submit" { (sheet.say(if verdict.clean { "cutting-save" } else { "cutting-save-despite" })) }
                a.button href=(view.to(view.blade_tag(), "")) { (sheet.say("forms-cancel")) }
            }
        }
    }
}

/// The override: a reason, which stays in the log. Common reasons are offered, except where the blade met a sick palm.
fn despite(sheet: Sheet, verdict: &Verdict) -> Markup {
    let blocked = verdict.key == "blocked";
    let label = sheet.say(if blocked {
        "cutting-despite-blocked"
    } else {
        "cutting-despite"
    });
    html! {
        fieldset.override {
            legend { (sheet.say("cutting-override")) }
            (sheet.line_with("despite", Kind::Words, &label, Some(&sheet.say("cutting-despite-hint")), None))
            @if !blocked {
                div.offers.by-script hidden {
                    @for code in ["cutting-why-same-row", "cutting-why-no-cleaner", "cutting-why-danger"] {
                        button type="button" data-fill="despite" data-value=(sheet.say(code)) { (sheet.say(code)) }
                    }
                }
            }
        }
    }
}

fn stem(sheet: Sheet, palm: &PalmBrief) -> Markup {
    let chosen = sheet.value("stem").parse::<u16>().unwrap_or(1);
    html! {
        @if palm.stems > 1 {
            fieldset #stem tabindex="-1" {
                legend { (sheet.say("cutting-stem")) }
                div.pick {
                    @for n in 1..=palm.stems {
                        label.choice {
                            input type="radio" name="stem" value=(n) checked[n == chosen];
                            span { (sheet.reader.words.text("forms-stem-n", &[("n", n.into())])) }
                        }
                    }
                }
                (sheet.at("stem"))
            }
        }
    }
}

/// Start and end. With script a button notes the start and the end is the moment of saving; without, both are fields.
fn clock(view: &View, sheet: Sheet) -> Markup {
    let fresh = view.troubles.is_empty() && !view.failed && sheet.value("started").is_empty();
    let started = if fresh {
        view.view.now_typed.as_str()
    } else {
        sheet.value("started")
    };
    html! {
        fieldset.clock {
            legend { (sheet.say("cutting-time")) }
            div.by-script.start hidden {
                button.primary type="button" #start { (sheet.say("cutting-start")) }
                p role="status" { output #running data-say=(sheet.say("cutting-running")) {} }
            }
            details.times open {
                summary { (sheet.say("cutting-times")) }
                p.hint { (sheet.say("cutting-times-hint")) }
                div.two {
                    (moment(sheet, "started", started, fresh))
                    (moment(sheet, "ended", sheet.value("ended"), false))
                }
            }
        }
    }
}

/// A field of date and hour. One that the server filled in is emptied by the script, which has a button for it.
fn moment(sheet: Sheet, name: &str, value: &str, filled_in: bool) -> Markup {
    html! {
        div.field {
            label for=(name) { (sheet.say(&format!("cutting-{name}"))) }
            input type="datetime-local" id=(name) name=(name) value=(value) data-filled-in[filled_in]
                aria-describedby=[sheet.described(name, false)] aria-invalid=[sheet.invalid(name)];
            (sheet.at(name))
        }
    }
}
