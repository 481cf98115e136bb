//! `/rounds/plan`: a day is proposed and kept; `/round/{id}`: what happens on a round.

use super::rounds_page::{self, Builder, Under};
use super::sent::{Sent, refused, refused_of};
use crate::{App, Fault, Reader};
use axum::Router;
use axum::extract::{Path, Query, State};
use axum::http::StatusCode;
use axum::response::Response;
use axum::routing::{get, post};
use desk::day_rounds;
use desk::forms::{self, Stop, Trouble, Typed};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::rounds;
use desk::views::standing::Standings;
use maud::Markup;
use model::EntryId;
use serde::Deserialize;

/// The pages and their forms.
pub fn router() -> Router<App> {
    Router::new()
        .route("/rounds/plan", get(ask).post(keep))
        .route("/round/{id}", get(show).post(step))
        .route("/round/{id}/off", post(call_off))
}

async fn ask(
    State(app): State<App>,
    reader: Reader,
    Query(pairs): Query<Vec<(String, String)>>,
) -> Result<Markup, Fault> {
    let standings = app.standings.clone();
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        builder(office, &standings, &whose, Typed::of(pairs), &[], false)
    })
    .await
}

/// The page; what was asked is answered on it.
fn builder(
    office: &Office,
    standings: &Standings,
    reader: &Reader,
    mut typed: Typed,
    troubles: &[Trouble],
    failed: bool,
) -> Markup {
    let speaker = Speaker::new(reader.measure);
    let asked = !typed.get("go").is_empty();
    if typed.get("day").is_empty() && !asked {
        typed.set("day", office.today().to_string());
    }
    forms::usual_tasks(&mut typed);
    let mut troubles = troubles.to_vec();
    let (mut proposal, mut refused) = (None, Vec::new());
    if asked {
        match forms::round_ask(&typed, office.today()) {
            Err(own) => troubles.extend(own),
            Ok(ask) => match day_rounds::propose(office, standings, &ask, &mut |_, _| true) {
                Ok(found) => proposal = Some(rounds::proposal(&speaker, office, &found)),
                Err(findings) => refused = speaker.findings(&findings),
            },
        }
    }
    rounds_page::builder(&Builder {
        reader,
        may: &rounds::builder(&speaker, office, standings),
        typed: &typed,
        troubles: &troubles,
        failed,
        proposal: proposal.as_ref(),
        refused: &refused,
        new_id: &office.new_id().0.to_string(),
    })
}

async fn keep(State(app): State<App>, reader: Reader, sent: Sent) -> Result<Response, Fault> {
    let standings = app.standings.clone();
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let draw = |troubles: &[Trouble], failed| {
            builder(
                office,
                &standings,
                &whose,
                sent.typed.clone(),
                troubles,
                failed,
            )
        };
        match forms::keep_rounds(office, &sent.typed) {
            Ok(_) => sent.saved("/rounds"),
            Err(stop) => refused(stop, draw),
        }
    })
    .await
}

#[derive(Deserialize, Default)]
#[serde(default)]
struct At {
    /// The palm in hand, if it is not the next.
    at: String,
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Path(id): Path<String>,
    Query(query): Query<At>,
) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let id = name(&whose, &id)?;
        let typed = Typed::of([("at", query.at)]);
        under_way(office, &whose, id, &typed, &[], false)
    })
    .await?
}

fn name(reader: &Reader, id: &str) -> Result<EntryId, Fault> {
    forms::entry_id(id).ok_or_else(|| none(reader))
}

fn none(reader: &Reader) -> Fault {
    Fault::new(reader, StatusCode::NOT_FOUND, "round-form-gone", &[])
}

fn under_way(
    office: &Office,
    reader: &Reader,
    id: EntryId,
    typed: &Typed,
    troubles: &[Trouble],
    failed: bool,
) -> Result<Markup, Fault> {
    let at = [typed.get("at"), typed.get("palm")]
        .into_iter()
        .find(|tag| !tag.is_empty());
    let view =
        rounds::page(&Speaker::new(reader.measure), office, id, at).ok_or_else(|| none(reader))?;
    Ok(rounds_page::under_way(&Under {
        reader,
        view: &view,
        typed,
        troubles,
        failed,
        fresh: &|| office.new_id().0.to_string(),
    }))
}

async fn step(
    State(app): State<App>,
    reader: Reader,
    Path(id): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let id = name(&whose, &id)?;
        let saved = forms::save_round_step(office, id, &sent.typed);
        answer(
            office,
            &whose,
            id,
            &sent,
            saved,
            &format!("/round/{}", id.0),
        )
    })
    .await?
}

async fn call_off(
    State(app): State<App>,
    reader: Reader,
    Path(id): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let id = name(&whose, &id)?;
        let saved = forms::call_off_round(office, id, &sent.typed);
        answer(office, &whose, id, &sent, saved, "/rounds")
    })
    .await?
}

fn answer(
    office: &Office,
    reader: &Reader,
    id: EntryId,
    sent: &Sent,
    saved: Result<(), Stop>,
    to: &str,
) -> Result<Response, Fault> {
    let draw =
        |troubles: &[Trouble], failed| under_way(office, reader, id, &sent.typed, troubles, failed);
    match saved {
        Ok(()) => Ok(sent.saved(to)),
        Err(stop) => refused_of(stop, || none(reader), draw),
    }
}
