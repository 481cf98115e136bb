//! `/palm/{tag}/remove`: take a palm off the register. Its history stays.

use super::inspect::palm;
use super::parts::{self, Kind, Sheet};
use super::sent::{Sent, again, could_not};
use crate::{App, Fault, Here, Reader, address, page};
use axum::Router;
use axum::extract::{Path, State};
use axum::response::Response;
use axum::routing::get;
use desk::forms::{self, Stop, Trouble, Typed};
use maud::{Markup, html};
use model::PalmRecord;

/// The form and where it goes.
pub fn router() -> Router<App> {
    Router::new().route("/palm/{tag}/remove", get(show).post(remove))
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        let typed = Typed::of([("id", office.new_id().0.to_string())]);
        Ok(form(&whose, &record, &typed, &[], false))
    })
    .await?
}

async fn remove(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let Some(record) = office.state().by_tag(&tag).cloned() else {
            // sent twice, or taken off elsewhere meanwhile: it is off
            return Ok(sent.saved("/palms"));
        };
        Ok(match forms::save_removal(office, record.id, &sent.typed) {
            Ok(()) | Err(Stop::NoPalm) => sent.saved("/palms"),
            Err(Stop::Troubles(troubles)) => {
                again(form(&whose, &record, &sent.typed, &troubles, false))
            }
            Err(Stop::Ledger(_)) => could_not(form(&whose, &record, &sent.typed, &[], true)),
        })
    })
    .await?
}

fn form(
    reader: &Reader,
    record: &PalmRecord,
    typed: &Typed,
    troubles: &[Trouble],
    failed: bool,
) -> Markup {
    let tag = record.palm.tag.as_str();
    let title = reader
        .words
        .text("forms-remove-title", &[("tag", tag.to_owned().into())]);
    let sheet = Sheet {
        reader,
        typed,
        troubles,
        failed,
    };
    let body = html! {
        (parts::heading(&title, &record.palm))
        p { (reader.say("forms-remove-what")) }
        (sheet.summary())
        form.sheet method="post" action=(address::palm(tag, "/remove")) {
            (sheet.hidden("id"))
            (sheet.line("why", Kind::Words))
            div.save {
                button.danger type="submit" { (reader.say("forms-remove")) }
                a.button href=(address::palm(tag, "")) { (reader.say("forms-cancel")) }
            }
        }
    };
    page(reader, Here::Palms, &title, body)
}
