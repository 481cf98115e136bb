//! `/rotation`: how many blade sets a round needs so that nobody waits while they soak. Works without script.

use super::blades::places;
use super::{rotation_drawing, said};
use crate::badge::icon;
use crate::{App, Fault, Here, Reader, address, assets, page};
use axum::extract::{Query, State};
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::rotation::{self, Answer, Question, RotationView, TurnRow};
use maud::{Markup, html};
use serde::Deserialize;

/// So many cuts are shown without a tap.
const FIRST: usize = 30;

/// `/rotation`.
pub fn router() -> Router<App> {
    Router::new().route("/rotation", get(show))
}

/// The question as it stands in an address; every part may be missing.
#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    site: String,
    palms: String,
    minutes: String,
    sets: Option<String>,
    mix: Option<String>,
    soak: String,
    brush: Option<String>,
    holds: String,
}

impl Asked {
    /// What it means: two sets, a minute of brushing and the first mix of the table where nothing is said.
    fn question(self, first_mix: &str) -> Question {
        let asked = self.sets.is_some() || !self.palms.is_empty() || !self.minutes.is_empty();
        Question {
            asked,
            site: self.site,
            palms: self.palms,
            minutes: self.minutes,
            // at least two tools, one soaking while the other cuts [lamborn_disinfect; msu_is1955; psu_disinfest]
            sets: self.sets.unwrap_or_else(|| "2".to_owned()),
            mix: self.mix.unwrap_or_else(|| first_mix.to_owned()),
            soak: self.soak,
            // assumed
            brush: self.brush.unwrap_or_else(|| "1".to_owned()),
            holds: self.holds,
        }
    }
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let first = desk::forms::mixes().into_iter().next();
    let question = asked.question(first.as_ref().map_or("", |mix| &mix.value));
    let (view, question) = app
        .ask(&reader, move |office| {
            (rotation::view(&speaker, office, &question), question)
        })
        .await?;
    let title = reader.say("rotation-title");
    let content = body(&reader, &question, &view);
    Ok(page(&reader, Here::Blades, &title, content))
}

/// The way to this page from others.
pub fn link(reader: &Reader) -> Markup {
    html! { a.button href="/rotation" { (reader.say("rotation-link")) } }
}

fn body(reader: &Reader, question: &Question, view: &RotationView) -> Markup {
    html! {
        // only this page needs it
        link rel="stylesheet" href=(assets::address("rotation.css"));
        (places(reader, ""))
        h1 { (reader.say("rotation-title")) }
        @if view.answer.is_none() { p.lead { (reader.say("rotation-what")) } }
        @if !view.troubles.is_empty() {
            div.trouble #trouble role="alert" data-testid="trouble" {
                p { strong { (reader.say("rotation-trouble")) } }
                ul { @for one in &view.troubles { li { a href={ "#" (one.field) } { (one.text) } } } }
            }
        }
        @if let Some(answer) = &view.answer { (sentence(answer)) }
        (form(reader, question, view))
        @if let Some(answer) = &view.answer { (shown(reader, answer)) }
    }
}

fn sentence(answer: &Answer) -> Markup {
    html! {
        div class={ "rota-answer " (if answer.waits { "waits" } else { "fine" }) } data-testid="answer" {
            p.headline { (answer.sentence) }
            @for one in &answer.short { p.short { (icon("short")) span { (one.text) } } }
        }
    }
}

/// A form as it was typed.
struct Form<'a> {
    reader: &'a Reader,
    view: &'a RotationView,
}

impl Form<'_> {
    fn say(&self, code: &str) -> String {
        self.reader.say(code)
    }

    fn wrong(&self, field: &str) -> Option<&str> {
        let mut own = self.view.troubles.iter().filter(|t| t.field == field);
        own.next().map(|trouble| trouble.text.as_str())
    }

    fn described(&self, field: &str, hint: bool) -> Option<String> {
        let hint = hint.then(|| format!("{field}-hint"));
        let wrong = self.wrong(field).map(|_| format!("{field}-trouble"));
        let ids: Vec<String> = hint.into_iter().chain(wrong).collect();
        (!ids.is_empty()).then(|| ids.join(" "))
    }

    fn trouble(&self, field: &str) -> Markup {
        html! { @if let Some(text) = self.wrong(field) { p.trouble id={ (field) "-trouble" } { (text) } } }
    }

    fn number(&self, field: &str, value: &str, mode: &str, hint: Option<&str>) -> Markup {
        html! {
            div.field {
                label for=(field) { (self.say(&format!("rotation-{field}"))) }
                @if let Some(hint) = hint { p.hint id={ (field) "-hint" } { (self.say(hint)) } }
                input type="text" inputmode=(mode) id=(field) name=(field) value=(value) autocomplete="off"
                    aria-describedby=[self.described(field, hint.is_some())] aria-invalid=[self.wrong(field).map(|_| "true")];
                (self.trouble(field))
            }
        }
    }
}

fn form(reader: &Reader, question: &Question, view: &RotationView) -> Markup {
    let form = Form { reader, view };
    let more = form.wrong("brush").or(form.wrong("holds")).is_some();
    html! {
        form.sheet.ask-rotation method="get" action="/rotation" {
            @if !view.sites.is_empty() { (site(&form, question)) }
            div.two {
                (form.number("palms", &question.palms, "numeric", Some("rotation-palms-hint")))
                (form.number("minutes", &question.minutes, "decimal", None))
            }
            (form.number("sets", &question.sets, "numeric", None))
            (mix(&form, question))
            (form.number("soak", &question.soak, "decimal", Some("rotation-soak-hint")))
            details.why open[more] {
                summary { (reader.say("rotation-more")) }
                (form.number("brush", &question.brush, "decimal", None))
                (form.number("holds", &question.holds, "numeric", Some("rotation-holds-hint")))
            }
            div.actions { button.primary type="submit" { (reader.say("rotation-ask")) } }
        }
    }
}

fn site(form: &Form, question: &Question) -> Markup {
    html! {
        div.field {
            label for="site" { (form.say("rotation-where")) }
            p.hint #site-hint { (form.say("rotation-where-hint")) }
            select #site name="site" aria-describedby=[form.described("site", true)] {
                option value="" { (form.say("rotation-where-any")) }
                @for (value, name) in &form.view.sites { option value=(value) selected[*value == question.site] { (name) } }
            }
            (form.trouble("site"))
        }
    }
}

fn mix(form: &Form, question: &Question) -> Markup {
    let words = |name: &str, mix: &str, minutes: &str| {
        let args = [
            ("name", name.to_owned().into()),
            ("mix", mix.to_owned().into()),
            ("minutes", minutes.to_owned().into()),
        ];
        form.reader.words.text("rotation-mix-choice", &args)
    };
    html! {
        div.field {
            label for="mix" { (form.say("rotation-mix")) }
            select #mix name="mix" aria-describedby=[form.described("mix", false)] {
                @for one in &form.view.mixes {
                    option value=(one.value) selected[one.value == question.mix] { (words(&one.name, &one.mix, &one.minutes)) }
                }
                option value="" selected[question.mix.is_empty()] { (form.say("rotation-mix-own")) }
            }
            (form.trouble("mix"))
        }
    }
}

fn shown(reader: &Reader, answer: &Answer) -> Markup {
    html! {
        article.rotation data-testid="rotation" {
            (choices(reader, answer))
            (rotation_drawing::lanes(reader, &answer.drawing))
            (schedule(reader, &answer.turns))
            section aria-labelledby="notes" {
                h2 #notes { (reader.say("rotation-notes")) }
                ul { @for note in &answer.notes { li { (note) } } }
                (said::closed(reader, "rotation-why", &answer.why))
            }
            @if !answer.cautions.is_empty() {
                section.cautions aria-labelledby="cautions" {
                    h2 #cautions { (reader.say("cleaning-cautions")) }
                    (said::list(reader, &answer.cautions))
                    p { strong { (reader.say("common-closing")) } }
                    (said::reasons(reader, &answer.cautions))
                }
            }
        }
    }
}

fn choices(reader: &Reader, answer: &Answer) -> Markup {
    html! {
        section aria-labelledby="choices" {
            h2 #choices { (reader.say("rotation-choices")) }
            table.choices data-testid="choices" {
                thead { tr {
                    th scope="col" { (reader.say("rotation-col-sets")) }
                    th scope="col" { (reader.say("rotation-col-waits")) }
                    th scope="col" { (reader.say("rotation-col-done")) }
                } }
                tbody {
                    @for row in &answer.choices {
                        tr.asked[row.asked] {
                            th scope="row" {
                                (row.sets)
                                @if row.asked { span.mark-word { (reader.say("rotation-asked")) } }
                                @if row.fewest { span.mark-word { (reader.say("rotation-enough")) } }
                            }
                            td { (row.waits) }
                            td { (row.done) }
                        }
                    }
                }
            }
        }
    }
}

fn schedule(reader: &Reader, turns: &[TurnRow]) -> Markup {
    let (first, rest) = turns.split_at(turns.len().min(FIRST));
    let more = [("n", (rest.len() as i64).into())];
    html! {
        section aria-labelledby="schedule" {
            h2 #schedule { (reader.say("rotation-schedule")) }
            p.hint { (reader.say("rotation-schedule-hint")) }
            (table(reader, first))
            @if !rest.is_empty() {
                details.why {
                    summary { (reader.words.text("rotation-rest", &more)) }
                    (table(reader, rest))
                }
            }
        }
    }
}

fn table(reader: &Reader, turns: &[TurnRow]) -> Markup {
    const COLUMNS: [&str; 6] = ["palm", "set", "starts", "wait", "ends", "bath"];
    html! {
        table.turns {
            thead { tr {
                @for column in COLUMNS { th scope="col" { (reader.say(&format!("rotation-col-{column}"))) } }
            } }
            tbody {
                @for turn in turns {
                    tr {
                        th scope="row" {
                            @if turn.registered { a href=(address::palm(&turn.palm, "")) { (turn.palm) } } @else { (turn.palm) }
                        }
                        td { (turn.set) }
                        td { (turn.start) }
                        td.wait { (turn.wait) }
                        td { (turn.end) }
                        td {
                            @match &turn.bath {
                                Some((into, out)) => { (into) "–" wbr; (out) },
                                None => { (reader.say("rotation-goes-on")) },
                            }
                        }
                    }
                }
            }
        }
    }
}
