//! `/palm/{tag}/inspect`: a new inspection of one stem, or the correction of one (`?corrects=<entry>`).

use super::inspect_page::{View, page_of};
use super::sent::{Sent, again, could_not};
use crate::{App, Fault, Reader, address};
use axum::Router;
use axum::extract::{Path, Query, State};
use axum::response::{IntoResponse, Response};
use axum::routing::{get, post};
use desk::forms::{self, Stop, Typed};
use desk::office::Office;
use maud::Markup;
use model::PalmRecord;
use serde::Deserialize;
use std::sync::Arc;

/// The inspection form, where it goes, and where a look is taken back.
pub fn router() -> Router<App> {
    Router::new()
        .route("/palm/{tag}/inspect", get(show).post(save))
        .route("/palm/{tag}/inspect/withdraw", post(withdraw))
}

#[derive(Deserialize)]
struct Asked {
    #[serde(default)]
    stem: String,
    #[serde(default)]
    corrects: String,
    #[serde(default)]
    sign: String,
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
        let typed = start(office, &record, &asked).ok_or_else(|| Fault::broken(&whose))?;
        Ok(page_of(&View::new(
            &whose,
            office,
            &record,
            &typed,
            &asked.sign,
        )))
    })
    .await?
}

/// What the form starts from: today and nothing counted, or the look to correct. `None`: the ledger cannot be read.
fn start(office: &Office, record: &PalmRecord, asked: &Asked) -> Option<Typed> {
    let mut typed = Typed::of([
        ("date", office.today().to_string()),
        ("stem", asked.stem.clone()),
    ]);
    if let Some(entry) = forms::entry_id(&asked.corrects)
        && let Some(look) = forms::look_of(office, record.id, entry).ok()?
    {
        typed = forms::typed_inspection(&look);
        typed.set("corrects", asked.corrects.as_str());
    }
    typed.set("id", office.new_id().0.to_string());
    Some(typed)
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
        let mut typed = sent.typed.clone();
        if typed.get("do") == "spiral" {
            return Ok(count_spiral(&whose, office, &record, &mut typed));
        }
        let stop = match forms::save_inspection(office, record.id, &typed) {
            Ok(look) => return Ok(sent.saved(&after(&record, look.stem, &typed))),
            Err(stop) => stop,
        };
        refused(View::new(&whose, office, &record, &typed, ""), stop)
    })
    .await?
}

/// After saving: the palm, or the next stem if that was asked for.
fn after(record: &PalmRecord, stem: u16, typed: &Typed) -> String {
    if typed.get("do") == "next" && stem < record.palm.stems {
        return address::palm(&record.palm.tag, &format!("/inspect?stem={}", stem + 1));
    }
    let shown = if stem > 1 {
        format!("?stem={stem}")
    } else {
        String::new()
    };
    address::palm(&record.palm.tag, &shown)
}

/// The spiral counter without script: the form again, the count filled in.
fn count_spiral(
    reader: &Reader,
    office: &Office,
    record: &PalmRecord,
    typed: &mut Typed,
) -> Response {
    let troubles = match forms::new_by_spiral(typed) {
        Ok(new) => {
            typed.set("new_leaves", new.to_string());
            Vec::new()
        }
        Err(troubles) => troubles,
    };
    let mut view = View::new(reader, office, record, typed, "");
    view.troubles = troubles;
    view.spiral_open = true;
    page_of(&view).into_response()
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
        let stop = match forms::withdraw_inspection(office, record.id, &sent.typed) {
            Ok(()) => return Ok(sent.saved(&address::palm(&tag, ""))),
            Err(stop) => stop,
        };
        let asked = Asked {
            stem: String::new(),
            corrects: sent.typed.get("corrects").to_owned(),
            sign: String::new(),
        };
        let typed = start(office, &record, &asked).ok_or_else(|| Fault::broken(&whose))?;
        refused(View::new(&whose, office, &record, &typed, ""), stop)
    })
    .await?
}

fn refused(mut view: View, stop: Stop) -> Result<Response, Fault> {
    match stop {
        Stop::Troubles(troubles) => {
            view.troubles = troubles;
            Ok(again(page_of(&view)))
        }
        Stop::NoPalm => Err(Fault::no_palm(view.reader, &view.record.palm.tag)),
        Stop::Ledger(_) => {
            view.failed = true;
            Ok(could_not(page_of(&view)))
        }
    }
}

/// The standing palm with a tag.
pub fn palm(office: &Office, reader: &Reader, tag: &str) -> Result<Arc<PalmRecord>, Fault> {
    office
        .state()
        .by_tag(tag)
        .cloned()
        .ok_or_else(|| Fault::no_palm(reader, tag))
}
