//! `/palm/{tag}/water`: a palm's plan of watering, the form that notes one, and what takes one back.

use super::inspect::palm;
use super::sent::{Sent, refused_of};
use super::watering_page::{View, page_of};
use crate::pages::watering::list_address;
use crate::{App, Fault, Reader, address};
use axum::Router;
use axum::extract::{Path, Query, State};
use axum::response::Response;
use axum::routing::{get, post};
use desk::forms::{self, Stop, Trouble, Typed};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::watering;
use maud::Markup;
use model::PalmRecord;
use serde::Deserialize;

/// The page, its form, and where a watering is taken back.
pub fn router() -> Router<App> {
    Router::new()
        .route("/palm/{tag}/water", get(show).post(save))
        .route("/palm/{tag}/water/withdraw", post(withdraw))
}

#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    corrects: String,
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
        let typed = begin(office, &whose, &record, &asked.corrects)?;
        draw(office, &whose, &record, &typed, &[], false)
    })
    .await?
}

/// The form as it begins: today, or the watering that is to be corrected.
fn begin(
    office: &Office,
    reader: &Reader,
    record: &PalmRecord,
    corrects: &str,
) -> Result<Typed, Fault> {
    let today = Typed::of([("date", office.today().to_string())]);
    if corrects.is_empty() {
        return Ok(today);
    }
    let history = office
        .history(record.id)
        .map_err(|_| Fault::broken(reader))?;
    let Some((day, water)) = forms::watering_of(&history, corrects) else {
        return Ok(today);
    };
    let mut typed = forms::typed_watering(day, water, reader.measure.units);
    typed.set("corrects", corrects);
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
        let done = forms::save_watering(office, record.id, &sent.typed, whose.measure.units);
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
    let draw =
        |troubles: &[Trouble], failed| draw(office, reader, record, &sent.typed, troubles, failed);
    match done {
        Ok(()) if sent.typed.get("back") == "watering" => {
            Ok(sent.saved(&list_address(sent.typed.get("back_site"))))
        }
        Ok(()) => Ok(sent.saved(&address::palm(&record.palm.tag, "/water"))),
        Err(stop) => refused_of(stop, || Fault::no_palm(reader, &record.palm.tag), draw),
    }
}

fn draw(
    office: &Office,
    reader: &Reader,
    record: &PalmRecord,
    typed: &Typed,
    troubles: &[Trouble],
    failed: bool,
) -> Result<Markup, Fault> {
    let tag = &record.palm.tag;
    let view = watering::page(&Speaker::new(reader.measure), office, tag)
        .ok_or_else(|| Fault::no_palm(reader, tag))?;
    let ids = [office.new_id(), office.new_id()].map(|id| id.0.to_string());
    Ok(page_of(&View {
        reader,
        view: &view,
        typed,
        troubles,
        failed,
        ids: &ids,
    }))
}
