//! `/palm/{tag}/move`: what was promised after a move and when to look; what to know before one; the form of a move.

use super::inspect::palm;
use super::moving_page::{View, page_of};
use super::sent::{Sent, refused_of};
use crate::{App, Fault, Reader, address};
use axum::Router;
use axum::extract::{Path, Query, State};
use axum::response::Response;
use axum::routing::get;
use desk::forms::{self, Trouble, Typed};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::moved::{self, Asked};
use maud::Markup;
use model::PalmRecord;
use serde::Deserialize;

/// The page and its form.
pub fn router() -> Router<App> {
    Router::new().route("/palm/{tag}/move", get(show).post(save))
}

/// What an address asks; every part may be missing.
#[derive(Deserialize, Default)]
#[serde(default)]
struct Wanted {
    corrects: String,
    diameter: String,
    radius: String,
    depth: String,
    soil: String,
    moist: String,
    hot: String,
    kv: String,
    fronds: String,
    ask: String,
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    Query(query): Query<Wanted>,
) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        let typed = begin(office, &whose, &record, &query.corrects)?;
        let asked = Asked {
            diameter: query.diameter,
            radius: query.radius,
            depth: query.depth,
            soil: query.soil,
            moist: query.moist,
            hot: query.hot,
            kv: query.kv,
            fronds: query.fronds,
        };
        let asks = !query.ask.is_empty();
        draw(office, &whose, &record, &asked, asks, &typed, &[], false)
    })
    .await?
}

/// The form as it begins: empty, or with the move that is to be corrected.
fn begin(
    office: &Office,
    reader: &Reader,
    record: &PalmRecord,
    corrects: &str,
) -> Result<Typed, Fault> {
    if corrects.is_empty() {
        return Ok(Typed::default());
    }
    let history = office
        .history(record.id)
        .map_err(|_| Fault::broken(reader))?;
    let Some(moved) = forms::move_of(&history, corrects) else {
        return Ok(Typed::default());
    };
    let mut typed = forms::typed_move(moved, reader.measure.units);
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
        let draw = |troubles: &[Trouble], failed| {
            let asked = Asked::default();
            draw(
                office,
                &whose,
                &record,
                &asked,
                false,
                &sent.typed,
                troubles,
                failed,
            )
        };
        match forms::save_move(office, record.id, &sent.typed, whose.measure.units) {
            Ok(()) => Ok(sent.saved(&address::palm(&record.palm.tag, "/move"))),
            Err(stop) => refused_of(stop, || Fault::no_palm(&whose, &record.palm.tag), draw),
        }
    })
    .await?
}

#[allow(clippy::too_many_arguments)]
fn draw(
    office: &Office,
    reader: &Reader,
    record: &PalmRecord,
    asked: &Asked,
    asks: bool,
    typed: &Typed,
    troubles: &[Trouble],
    failed: bool,
) -> Result<Markup, Fault> {
    let tag = &record.palm.tag;
    let view = moved::page(&Speaker::new(reader.measure), office, tag, asked)
        .ok_or_else(|| Fault::no_palm(reader, tag))?;
    let new_id = office.new_id().0.to_string();
    Ok(page_of(&View {
        reader,
        view: &view,
        asks,
        typed,
        troubles,
        failed,
        new_id: &new_id,
    }))
}
