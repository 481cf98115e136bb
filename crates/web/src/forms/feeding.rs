//! `/palm/{tag}/feeding`: a palm's plan of feeding, the form that notes one, and what takes one back.

use super::feeding_page::{View, page_of};
use super::inspect::palm;
use super::sent::{Sent, refused_of};
use crate::{App, Fault, Reader, address};
use axum::Router;
use axum::extract::{Path, Query, State};
use axum::response::Response;
use axum::routing::{get, post};
use desk::forms::{self, Stop, Trouble, Typed};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::feeding;
use maud::Markup;
use model::PalmRecord;
use serde::Deserialize;

/// The page, its form, and where a feeding is taken back.
pub fn router() -> Router<App> {
    Router::new()
        .route("/palm/{tag}/feeding", get(show).post(save))
        .route("/palm/{tag}/feeding/withdraw", post(withdraw))
}

#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    corrects: String,
    against: String,
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
        let typed = begin(office, &whose, &record, &asked)?;
        draw(office, &whose, &record, &typed, &asked.against, &[], false)
    })
    .await?
}

/// The form as it begins: today and what was asked for, or the feeding that is to be corrected.
fn begin(
    office: &Office,
    reader: &Reader,
    record: &PalmRecord,
    asked: &Asked,
) -> Result<Typed, Fault> {
    let today = Typed::of([
        ("date", office.today().to_string()),
        ("against", asked.against.clone()),
    ]);
    if asked.corrects.is_empty() {
        return Ok(today);
    }
    let history = office
        .history(record.id)
        .map_err(|_| Fault::broken(reader))?;
    let Some((day, fed)) = forms::fed_of(&history, &asked.corrects) else {
        return Ok(today);
    };
    let mut typed = forms::typed_fed(day, fed, reader.measure.units);
    typed.set("corrects", asked.corrects.clone());
    Ok(typed)
}

async fn save(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        let done = forms::save_fed(office, record.id, &sent.typed, whose.measure.units);
        answer(office, &whose, &record, &sent, done)
    })
    .await?
}

async fn withdraw(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        let done = forms::withdraw_tending(office, record.id, &sent.typed);
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
    let against = sent.typed.get("against");
    let draw = |troubles: &[Trouble], failed| {
        draw(
            office,
            reader,
            record,
            &sent.typed,
            against,
            troubles,
            failed,
        )
    };
    match done {
        Ok(()) => Ok(sent.saved(&address::palm(&record.palm.tag, "/feeding"))),
        Err(stop) => refused_of(stop, || Fault::no_palm(reader, &record.palm.tag), draw),
    }
}

fn draw(
    office: &Office,
    reader: &Reader,
    record: &PalmRecord,
    typed: &Typed,
    against: &str,
    troubles: &[Trouble],
    failed: bool,
) -> Result<Markup, Fault> {
    let tag = &record.palm.tag;
    let view = feeding::page(&Speaker::new(reader.measure), office, tag, against)
        .ok_or_else(|| Fault::no_palm(reader, tag))?;
    let new_id = office.new_id().0.to_string();
    Ok(page_of(&View {
        reader,
        view: &view,
        typed,
        troubles,
        failed,
        new_id: &new_id,
    }))
}
