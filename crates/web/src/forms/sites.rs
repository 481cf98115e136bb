//! `/sites/new`, `/site/{name}/edit`, `/crews/new`, `/crew/{name}/edit`: sites and crews described.

use super::sent::{Sent, refused};
use super::sites_page::{View, crew_form, site_form};
use crate::pages::sites::{no_crew, no_site};
use crate::{App, Fault, Reader, address};
use axum::Router;
use axum::extract::{Path, State};
use axum::response::Response;
use axum::routing::get;
use desk::forms::{self, Stop, Trouble, Typed};
use desk::measure::Units;
use desk::office::Office;
use maud::Markup;
use model::{CrewWords, Site};

/// The forms.
pub fn router() -> Router<App> {
    Router::new()
        .route("/sites/new", get(new_site).post(add_site))
        .route("/site/{name}/edit", get(edit_site).post(change_site))
        .route("/crews/new", get(new_crew).post(add_crew))
        .route("/crew/{name}/edit", get(edit_crew).post(change_crew))
}

// ---- sites

async fn new_site(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let typed = with_id(office, Typed::default());
        site_form(&view(office, &whose, None, &typed, &[], false))
    })
    .await
}

async fn edit_site(
    State(app): State<App>,
    reader: Reader,
    Path(name): Path<String>,
) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let site = known_site(office, &whose, &name)?;
        let typed = with_id(office, forms::typed_site(&site));
        let name = Some(name.as_str());
        Ok(site_form(&view(office, &whose, name, &typed, &[], false)))
    })
    .await?
}

/// The site as it is described, or one of which only the name is known because palms stand on it.
fn known_site(office: &Office, reader: &Reader, name: &str) -> Result<Site, Fault> {
    let state = office.state();
    if let Some(site) = state.work.sites.get(name) {
        return Ok(site.clone());
    }
    let named = !name.is_empty() && state.standing().any(|r| r.palm.site == name);
    named
        .then(|| Site {
            name: name.to_owned(),
            ..Site::default()
        })
        .ok_or_else(|| no_site(reader, name))
}

async fn add_site(State(app): State<App>, reader: Reader, sent: Sent) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        save_site(office, &whose, None, &sent)
    })
    .await
}

async fn change_site(
    State(app): State<App>,
    reader: Reader,
    Path(name): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        known_site(office, &whose, &name)?;
        Ok(save_site(office, &whose, Some(&name), &sent))
    })
    .await?
}

fn save_site(office: &Office, reader: &Reader, name: Option<&str>, sent: &Sent) -> Response {
    let draw = |troubles: &[Trouble], failed| {
        site_form(&view(office, reader, name, &sent.typed, troubles, failed))
    };
    let saved = forms::save_site(office, name, &sent.typed);
    answer(saved, sent, draw, |name| address::site(name, ""))
}

// ---- crews

async fn new_crew(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let typed = with_id(office, Typed::default());
        crew_form(&view(office, &whose, None, &typed, &[], false))
    })
    .await
}

async fn edit_crew(
    State(app): State<App>,
    reader: Reader,
    Path(name): Path<String>,
) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let crew = known_crew(office, &whose, &name)?;
        let typed = with_id(office, forms::typed_crew(&crew, whose.measure.units));
        let name = Some(name.as_str());
        Ok(crew_form(&view(office, &whose, name, &typed, &[], false)))
    })
    .await?
}

fn known_crew(office: &Office, reader: &Reader, name: &str) -> Result<CrewWords, Fault> {
    let found = office.state().work.crews.get(name).cloned();
    found.ok_or_else(|| no_crew(reader, name))
}

async fn add_crew(State(app): State<App>, reader: Reader, sent: Sent) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        save_crew(office, &whose, None, &sent)
    })
    .await
}

async fn change_crew(
    State(app): State<App>,
    reader: Reader,
    Path(name): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        known_crew(office, &whose, &name)?;
        Ok(save_crew(office, &whose, Some(&name), &sent))
    })
    .await?
}

fn save_crew(office: &Office, reader: &Reader, name: Option<&str>, sent: &Sent) -> Response {
    let draw = |troubles: &[Trouble], failed| {
        crew_form(&view(office, reader, name, &sent.typed, troubles, failed))
    };
    // the room is read in the units the form was drawn in, whatever the setting is by now
    let units = Units::parse(sent.typed.get("units")).unwrap_or(reader.measure.units);
    let saved = forms::save_crew(office, name, &sent.typed, units);
    answer(saved, sent, draw, |name| address::crew(name, ""))
}

// ---- both

fn answer(
    saved: Result<String, Stop>,
    sent: &Sent,
    draw: impl Fn(&[Trouble], bool) -> Markup,
    to: impl Fn(&str) -> String,
) -> Response {
    match saved {
        Ok(name) => sent.saved(&to(&name)),
        Err(stop) => refused(stop, draw),
    }
}

fn with_id(office: &Office, mut typed: Typed) -> Typed {
    typed.set("id", office.new_id().0.to_string());
    typed
}

fn view<'a>(
    office: &Office,
    reader: &'a Reader,
    name: Option<&'a str>,
    typed: &'a Typed,
    troubles: &'a [Trouble],
    failed: bool,
) -> View<'a> {
    View {
        reader,
        name,
        typed,
        troubles,
        failed,
        sites: office.state().work.sites.values().cloned().collect(),
    }
}
