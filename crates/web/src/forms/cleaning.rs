//! `/cleaning`: blades into the bath with the time running, out of it with the cleaning saved; `/cleaning/bath`: a fresh
//! bath.

use super::cleaning_page::{View, bath_page, page_of};
use super::sent::{Sent, refused};
use super::soaks::{Soak, Soaks};
use crate::{App, Fault, Reader};
use axum::extract::{Query, State};
use axum::response::Response;
use axum::routing::{get, post};
use axum::{Extension, Router};
use desk::clock;
use desk::forms::{self, Stop, Trouble, Typed};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::blades::bath;
use maud::Markup;
use model::{BladeId, Moment};
use serde::Deserialize;
use std::sync::Arc;

/// The pages and where their forms go.
pub fn router() -> Router<App> {
    Router::new()
        .route("/cleaning", get(show).post(start_or_save))
        .route("/cleaning/out", post(out))
        .route("/cleaning/bath", get(blank_bath).post(mix))
        .layer(Extension(Arc::new(Soaks::default())))
}

#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    blade: String,
    saved: String,
}

async fn show(
    State(app): State<App>,
    Extension(soaks): Extension<Arc<Soaks>>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let mut typed = Typed::of([("saved", asked.saved.clone())]);
        if let Some(blade) = office.state().blade_by_tag(asked.blade.trim()) {
            typed.set(&forms::blade_box(blade.id), "yes");
        }
        // what this phone would be asked again for each blade: the bath that was mixed last
        if let Some(bath) = forms::baths_in_use(&office.state(), clock::now(office)).first() {
            typed.set("with", format!("bath:{}", bath.id.0));
        }
        draw(office, &soaks, &whose, &typed, &[], false)
    })
    .await
}

fn draw(
    office: &Office,
    soaks: &Soaks,
    reader: &Reader,
    typed: &Typed,
    troubles: &[Trouble],
    failed: bool,
) -> Markup {
    let view = bath::view(&Speaker::new(reader.measure), office);
    let now = clock::now(office);
    page_of(&View {
        reader,
        view: &view,
        soaks: &soaks.list(now),
        now,
        new_id: &|| office.new_id().0.to_string(),
        typed,
        troubles,
        failed,
    })
}

/// The form has two buttons: the time runs from now, or it is done and saved.
async fn start_or_save(
    State(app): State<App>,
    Extension(soaks): Extension<Arc<Soaks>>,
    reader: Reader,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let typed = &sent.typed;
        let done = if typed.get("do") == "done" {
            forms::save_cleanings(office, typed).map(|all| saved(office, &all[..]))
        } else {
            forms::start_soaking(office, typed).map(|soaking| {
                soak(&soaks, typed, &soaking);
                "/cleaning#soaking".to_owned()
            })
        };
        answer(office, &soaks, &whose, &sent, done)
    })
    .await
}

/// Where to go when cleanings were saved: the page says which blades are done.
fn saved(office: &Office, all: &[model::Cleaning]) -> String {
    let state = office.state();
    let tags = all
        .iter()
        .filter_map(|c| Some(state.blade(c.blade)?.blade.tag.clone()));
    let tags: Vec<String> = tags.collect();
    crate::address::with_query("/cleaning", &[("saved", &tags.join(", "))])
}

fn soak(soaks: &Soaks, typed: &Typed, soaking: &forms::Soaking) {
    for blade in &soaking.blades {
        soaks.start(Soak {
            blade: *blade,
            from: soaking.from,
            ready: Moment(soaking.from.0 + (soaking.minutes * 60_000.0) as i64),
            typed: typed.clone(),
        });
    }
}

/// A blade comes out: its cleaning is saved with the minutes it really had.
async fn out(
    State(app): State<App>,
    Extension(soaks): Extension<Arc<Soaks>>,
    reader: Reader,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        if sent.typed.get("do") == "forget" {
            sent_blades(office, &sent.typed).for_each(|blade| soaks.end(blade));
            return sent.saved("/cleaning");
        }
        let done = forms::save_cleanings(office, &sent.typed).map(|all| {
            all.iter().for_each(|cleaning| soaks.end(cleaning.blade));
            saved(office, &all)
        });
        answer(office, &soaks, &whose, &sent, done)
    })
    .await
}

fn sent_blades<'a>(office: &Office, typed: &'a Typed) -> impl Iterator<Item = BladeId> + use<'a> {
    let blades: Vec<BladeId> = office.state().serving().map(|b| b.id).collect();
    blades
        .into_iter()
        .filter(|b| !typed.get(&forms::blade_box(*b)).is_empty())
}

fn answer(
    office: &Office,
    soaks: &Soaks,
    reader: &Reader,
    sent: &Sent,
    done: Result<String, Stop>,
) -> Response {
    let draw =
        |troubles: &[Trouble], failed| draw(office, soaks, reader, &sent.typed, troubles, failed);
    match done {
        Ok(to) => sent.saved(&to),
        Err(stop) => refused(stop, draw),
    }
}

async fn blank_bath(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let typed = Typed::of([("id", office.new_id().0.to_string())]);
        let view = bath::view(&Speaker::new(whose.measure), office);
        bath_page(&whose, &view, &typed, &[], false)
    })
    .await
}

async fn mix(State(app): State<App>, reader: Reader, sent: Sent) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let draw = |troubles: &[Trouble], failed| {
            let view = bath::view(&Speaker::new(whose.measure), office);
            bath_page(&whose, &view, &sent.typed, troubles, failed)
        };
        match forms::save_bath(office, &sent.typed) {
            Ok(()) => sent.saved("/cleaning"),
            Err(stop) => refused(stop, draw),
        }
    })
    .await
}
