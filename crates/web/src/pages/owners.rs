//! `/owners`: owners, and sites without one; `/owners/summary` and `/owners/summary.pdf`: one sheet over all their palms.

mod sheet;

use super::sheets::{Refusal, print};
use super::sites::{no_site, places, style};
use crate::{App, Fault, Here, Reader, address, assets, page};
use axum::extract::{Query, State};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Redirect, Response};
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::owner_summary::{self, OwnerRow, OwnersView, Period, SummaryView, Who};
use maud::{Markup, html};
use model::{Finding, Severity};
use serde::Deserialize;

/// The three addresses.
pub fn router() -> Router<App> {
    Router::new()
        .route("/owners", get(all))
        .route("/owners/summary", get(one))
        .route("/owners/summary.pdf", get(printed))
}

/// What is asked for, as it stands in an address; every part may be missing.
#[derive(Deserialize, Default, Clone)]
#[serde(default)]
struct Asked {
    owner: String,
    site: String,
    from: String,
    until: String,
    paper: String,
}

impl Asked {
    /// Whose summary; `None` if nobody is named.
    fn who(&self) -> Option<Who> {
        match (self.owner.trim(), self.site.as_str()) {
            ("", "") => None,
            ("", site) => Some(Who::Site(address::site_of(site).to_owned())),
            (owner, _) => Some(Who::Owner(owner.to_owned())),
        }
    }
}

/// Nobody knows such an owner, or such a site.
fn nobody(reader: &Reader, who: &Who) -> Fault {
    match who {
        Who::Site(name) => no_site(reader, name),
        Who::Owner(name) => {
            let (code, args) = ("error-not-found-owner", [("name", name.clone().into())]);
            Fault::new(reader, StatusCode::NOT_FOUND, code, &args)
        }
    }
}

/// The address of somebody's summary.
pub fn summary(who: &Who) -> String {
    at("/owners/summary", who, "", "")
}

fn at(path: &str, who: &Who, from: &str, until: &str) -> String {
    let [owner, site] = named(who);
    let query = [
        ("owner", owner),
        ("site", site),
        ("from", from),
        ("until", until),
    ];
    address::with_query(path, &query)
}

/// Owner and site as an address carries them.
fn named(who: &Who) -> [&str; 2] {
    match who {
        Who::Owner(name) => [name, ""],
        Who::Site(name) => ["", address::site_word(name)],
    }
}

/// The style sheets that only these pages need.
fn styles() -> Markup {
    html! {
        (style())
        link rel="stylesheet" href=(assets::address("owner.css"));
        link rel="stylesheet" href=(assets::address("summary.css"));
    }
}

async fn all(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let view = app
        .ask(&reader, move |office| owner_summary::list(&speaker, office))
        .await?;
    let title = reader.say("owners-title");
    Ok(page(&reader, Here::Owners, &title, list(&reader, &view)))
}

fn list(reader: &Reader, view: &OwnersView) -> Markup {
    let nobody = view.owners.is_empty() && view.sites.is_empty();
    html! {
        (styles())
        (places(reader, "/owners"))
        h1 { (reader.say("owners-title")) }
        @if nobody { p.lead { (reader.say("owners-empty")) } } @else {
            p.lead role="status" data-testid="summary" { (view.summary) }
        }
        p { (reader.say("owners-what")) }
        @if !view.owners.is_empty() {
            section aria-labelledby="named" {
                // alone on the page the title above says it already
                h2 #named class=[view.sites.is_empty().then_some("sr")] { (reader.say("owners-named")) }
                (rows(reader, &view.owners))
            }
        }
        @if !view.sites.is_empty() {
            section aria-labelledby="unnamed" {
                h2 #unnamed { (reader.say("owners-sites")) }
                (rows(reader, &view.sites))
            }
        }
    }
}

fn rows(reader: &Reader, rows: &[OwnerRow]) -> Markup {
    html! {
        ul.site-list {
            @for row in rows {
                li.open data-who=(row.name) {
                    a.row href=(summary(&row.who)) {
                        strong.name { (row.name) }
                        span.count { (row.palms) }
                    }
                    @if !row.sites.is_empty() { p.owner { (row.sites) } }
                    @if let Who::Site(name) = &row.who {
                        @if !name.is_empty() { p.owner { a href=(address::site(name, "/edit")) { (reader.say("owners-say-who")) } } }
                    }
                }
            }
        }
    }
}

async fn one(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Response, Fault> {
    let Some(who) = asked.who() else {
        return Ok(Redirect::to("/owners").into_response());
    };
    let (view, wrong) = found(&app, &reader, &asked, &who).await?;
    let status = match wrong.is_empty() {
        true => StatusCode::OK,
        false => StatusCode::BAD_REQUEST,
    };
    let view = view.ok_or_else(|| nobody(&reader, &who))?;
    let body = html! {
        (styles())
        (places(&reader, ""))
        article.owner.summary {
            h1 { (view.title) }
            @if !view.sites.is_empty() { p.kind { (view.sites) } }
            p { (view.as_of) ". " (view.period) "." }
            (actions(&reader, &asked, &who, wrong.is_empty()))
            (days(&reader, &asked, &who, &wrong))
            (sheet::body(&reader, &view))
        }
    };
    let page = page(&reader, Here::Owners, &view.title, body);
    Ok((status, page).into_response())
}

type Wrong = Vec<(&'static str, Finding)>;

/// The summary; where the days make no sense that of the usual ones, with what is wrong.
async fn found(
    app: &App,
    reader: &Reader,
    asked: &Asked,
    who: &Who,
) -> Result<(Option<SummaryView>, Wrong), Fault> {
    let (speaker, standings) = (Speaker::new(reader.measure), app.standings.clone());
    let (seasons, asked, who) = (app.seasons.clone(), asked.clone(), who.clone());
    app.ask(reader, move |office| {
        let today = office.today();
        let (period, wrong) = match Period::read(&asked.from, &asked.until, today) {
            Ok(period) => (period, Vec::new()),
            Err(wrong) => (Period::usual(today), wrong),
        };
        let view = owner_summary::view(&speaker, office, &standings, &seasons, &who, period);
        (view, wrong)
    })
    .await
}

/// The PDF, with the days of this page where they make sense.
fn actions(reader: &Reader, asked: &Asked, who: &Who, sound: bool) -> Markup {
    let (from, until) = match sound {
        true => (asked.from.as_str(), asked.until.as_str()),
        false => ("", ""),
    };
    html! {
        p.actions {
            a.button.primary href=(at("/owners/summary.pdf", who, from, until)) data-testid="pdf" {
                (reader.say("summary-print"))
            }
        }
    }
}

/// The form that chooses other days; what was typed stays, and what is wrong stands beside it.
fn days(reader: &Reader, asked: &Asked, who: &Who, wrong: &Wrong) -> Markup {
    let [owner, site] = named(who);
    let field = |name: &'static str, value: &str| {
        let troubles: Vec<&Finding> = wrong
            .iter()
            .filter(|(field, _)| *field == name)
            .map(|(_, finding)| finding)
            .collect();
        let trouble = (!troubles.is_empty()).then(|| format!("{name}-trouble"));
        html! {
            div.field {
                label for=(name) { (reader.say(&format!("summary-{name}"))) }
                @if let Some(id) = &trouble {
                    div.trouble id=(id) { @for finding in &troubles { p data-code=(finding.code) { (reader.measure.finding(finding)) } } }
                }
                input type="date" id=(name) name=(name) value=(value)
                    aria-describedby=[trouble.as_deref()] aria-invalid=[trouble.as_ref().map(|_| "true")];
            }
        }
    };
    html! {
        details.why.days open[!wrong.is_empty()] {
            summary { (reader.say("summary-other-days")) }
            form.sheet method="get" action="/owners/summary" {
                @if !owner.is_empty() { input type="hidden" name="owner" value=(owner); }
                @if !site.is_empty() { input type="hidden" name="site" value=(site); }
                (field("from", &asked.from))
                (field("until", &asked.until))
                button type="submit" { (reader.say("summary-show")) }
            }
        }
    }
}

async fn printed(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Response, Fault> {
    let (standings, seasons) = (app.standings.clone(), app.seasons.clone());
    let size = asked.paper.clone();
    print(&app, &reader, &size, "summary", move |office, leaf| {
        let first = |wrong: Wrong| {
            let finding = wrong.into_iter().next().map(|(_, finding)| finding);
            finding.unwrap_or(Finding::new("sheet-empty", Severity::Refuse))
        };
        let period = Period::read(&asked.from, &asked.until, office.today()).map_err(first)?;
        let speaker = Speaker::new(leaf.measure);
        let who = asked.who().ok_or(paper::Error::Empty)?;
        let view = owner_summary::view(&speaker, office, &standings, &seasons, &who, period);
        let view = view.ok_or_else(|| Refusal::from(paper::Error::Empty))?;
        Ok(paper::owner_summary(leaf, &view)?)
    })
    .await
}
