//! `/palm/{tag}/holds`: what holds a palm, setting a hold, lifting one.

use super::inspect::palm;
use super::parts::{self, Kind, Sheet};
use super::sent::{Sent, refused_of};
use crate::pages::lines;
use crate::{App, Fault, Here, Reader, address, page};
use axum::Router;
use axum::extract::{Path, Query, State};
use axum::response::Response;
use axum::routing::{get, post};
use desk::forms::{self, HOLD_REASONS, Stop, Trouble, Typed};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::judgement::what_to_do;
use maud::{Markup, html};
use model::PalmRecord;
use model::state::Hold;
use serde::Deserialize;

/// The page of holds and its two forms.
pub fn router() -> Router<App> {
    Router::new()
        .route("/palm/{tag}/holds", get(show).post(set))
        .route("/palm/{tag}/holds/lift", post(lift))
}

/// What a link to the form fills in.
#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    reason: String,
    note: String,
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        Ok(holds(
            office,
            &whose,
            &record,
            &Typed::of([("reason", asked.reason), ("note", asked.note)]),
            Vec::new(),
            false,
        ))
    })
    .await?
}

async fn set(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        let done = forms::save_hold(office, record.id, &sent.typed);
        answer(office, &whose, &record, &sent, done)
    })
    .await?
}

async fn lift(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        let done = forms::save_lift(office, record.id, &sent.typed);
        answer(office, &whose, &record, &sent, done)
    })
    .await?
}

fn answer(
    office: &Office,
    reader: &Reader,
    record: &PalmRecord,
    sent: &Sent,
    done: Result<(), Stop>,
) -> Result<Response, Fault> {
    let draw = |troubles: &[Trouble], failed| {
        let troubles = troubles.to_vec();
        Ok(holds(office, reader, record, &sent.typed, troubles, failed))
    };
    match done {
        Ok(()) => Ok(sent.saved(&address::palm(&record.palm.tag, ""))),
        Err(stop) => refused_of(stop, || Fault::no_palm(reader, &record.palm.tag), draw),
    }
}

fn holds(
    office: &Office,
    reader: &Reader,
    record: &PalmRecord,
    typed: &Typed,
    troubles: Vec<Trouble>,
    failed: bool,
) -> Markup {
    let title = reader.words.text(
        "forms-holds-title",
        &[("tag", record.palm.tag.clone().into())],
    );
    let lifting = typed.get("hold");
    let setting = Sheet {
        reader,
        typed,
        troubles: if lifting.is_empty() { &troubles } else { &[] },
        failed,
    };
    let body = html! {
        (parts::heading(&title, &record.palm))
        p { (reader.say("forms-holds-what")) }
        @for hold in &record.holds {
            @let own = hold.entry.0.to_string() == lifting;
            (in_force(office, reader, record, hold, if own { &troubles } else { &[] }, failed && own))
        }
        @if lifting.is_empty() { (setting.summary()) }
        (set_form(office, setting, record))
    };
    page(reader, Here::Palms, &title, body)
}

fn in_force(
    office: &Office,
    reader: &Reader,
    record: &PalmRecord,
    hold: &Hold,
    troubles: &[Trouble],
    failed: bool,
) -> Markup {
    let date = |day| reader.measure.date(day).into();
    let since = reader
        .words
        .text("forms-hold-since", &[("date", date(hold.since.day()))]);
    let typed = Typed::of([
        ("hold", hold.entry.0.to_string()),
        ("id", office.new_id().0.to_string()),
    ]);
    let sheet = Sheet {
        reader,
        typed: &typed,
        troubles,
        failed,
    };
    html! {
        section.hold {
            h2 { (reason(reader, &hold.reason)) }
            p {
                (since)
                @if let Some(until) = hold.until { " " (reader.words.text("forms-hold-until", &[("date", date(until))])) }
                @if !hold.in_force(office.today()) { " " (reader.say("forms-hold-over")) }
            }
            @if !hold.note.is_empty() { p.own-words { (hold.note) } }
            @if reader.words.has(&format!("hold-instead-{}", hold.reason)) {
                (lines(&what_to_do(&Speaker::new(reader.measure), &hold.reason)))
            }
            (sheet.summary())
            form.sheet method="post" action=(address::palm(&record.palm.tag, "/holds/lift")) {
                (sheet.hidden("hold"))
                (sheet.hidden("id"))
                div.field {
                    label for={ "note-" (hold.entry.0) } { (reader.say("forms-lift-note")) }
                    input type="text" id={ "note-" (hold.entry.0) } name="note" autocomplete="off"
                        aria-invalid=[sheet.invalid("note")] aria-describedby=[sheet.described("note", false)];
                    (sheet.at("note"))
                }
                button type="submit" { (reader.say("forms-lift")) }
            }
        }
    }
}

fn set_form(office: &Office, sheet: Sheet, record: &PalmRecord) -> Markup {
    let sent_before = sheet.value("id");
    let id = if sent_before.is_empty() {
        office.new_id().0.to_string()
    } else {
        sent_before.to_owned()
    };
    html! {
        form.sheet method="post" action=(address::palm(&record.palm.tag, "/holds")) {
            h2 { (sheet.say("forms-hold-set")) }
            input type="hidden" name="id" value=(id);
            fieldset #reason tabindex="-1" aria-describedby=[sheet.described("reason", false)] {
                legend { (sheet.say("forms-hold-reason")) }
                @for code in HOLD_REASONS {
                    label.choice {
                        input type="radio" name="reason" value=(code) checked[sheet.value("reason") == code];
                        span { (reason(sheet.reader, code)) }
                    }
                }
                (sheet.at("reason"))
            }
            (sheet.line("until", Kind::Day))
            (sheet.line("note", Kind::Words))
            div.actions {
                button.primary type="submit" { (sheet.say("forms-hold-set")) }
                a.button href=(address::palm(&record.palm.tag, "")) { (sheet.say("forms-cancel")) }
            }
        }
    }
}

/// A reason in words; one from elsewhere that has no words shows itself.
fn reason(reader: &Reader, code: &str) -> String {
    let key = format!("forms-hold-reason-{code}");
    if reader.words.has(&key) {
        reader.say(&key)
    } else {
        code.to_owned()
    }
}
