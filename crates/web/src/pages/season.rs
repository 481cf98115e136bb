//! `/season`: when to come back; `/season.ics`: the same for calendars.

use crate::{App, Fault, Here, Reader, address, assets, page};
use axum::extract::{Query, State};
use axum::http::header::{CACHE_CONTROL, CONTENT_TYPE};
use axum::response::{IntoResponse, Response};
use axum::{Router, routing::get};
use desk::season::feed::{self, Parts};
use desk::season::prices::SeasonPrices;
use desk::season::{Ask, WEEKS};
use desk::views::Speaker;
use desk::views::season::{
    self, CHOICES, Grid, Mark, Otherwise, PalmLine, SeasonView, SiteView, VisitRow,
};
use maud::{Markup, html};
use serde::Deserialize;

/// `/season`, `/season.ics`.
pub fn router() -> Router<App> {
    Router::new()
        .route("/season", get(show))
        .route("/season.ics", get(calendar))
}

/// Lists of more palms than this are folded.
const SHORT: usize = 3;

/// What is asked for, as it stands in an address; every part may be missing.
#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    site: Option<String>,
    weeks: String,
    only: String,
}

impl Asked {
    fn ask(&self) -> Ask {
        let weeks = self
            .weeks
            .parse()
            .unwrap_or(WEEKS.1)
            .clamp(WEEKS.0, WEEKS.1);
        let named = |site: &String| address::site_of(site).to_owned();
        Ask {
            site: self.site.as_ref().map(named),
            ..Ask::all(weeks)
        }
    }
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let (standings, seasons, ask) = (app.standings.clone(), app.seasons.clone(), asked.ask());
    let speaker = Speaker::new(reader.measure);
    let view = app
        .ask(&reader, move |office| {
            let sites = seasons.get(office, &standings, &ask);
            let prices = SeasonPrices::of(&office.state());
            season::view(&speaker, &sites, &prices, ask.weeks, ask.site.as_deref())
        })
        .await?;
    let title = match view.sites.first().filter(|_| view.site.is_some()) {
        Some(site) => reader
            .words
            .text("season-title-site", &[("site", site.name.clone().into())]),
        None => reader.say("season-title"),
    };
    Ok(page(
        &reader,
        Here::Season,
        &title,
        body(&reader, &title, &view),
    ))
}

async fn calendar(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Response, Fault> {
    let (standings, seasons, ask) = (app.standings.clone(), app.seasons.clone(), asked.ask());
    let (speaker, parts) = (Speaker::new(reader.measure), Parts::parse(&asked.only));
    let text = app
        .ask(&reader, move |office| {
            let sites = seasons.get(office, &standings, &ask);
            feed::feed(&speaker, office, &sites, parts)
        })
        .await?;
    let headers = [
        (CONTENT_TYPE, "text/calendar; charset=utf-8"),
        (CACHE_CONTROL, "no-cache"),
    ];
    Ok((headers, text).into_response())
}

fn at(path: &str, site: Option<&str>, weeks: usize) -> String {
    let weeks = weeks.to_string();
    let mut query = vec![("weeks", weeks.as_str())];
    query.extend(site.map(|site| ("site", address::site_word(site))));
    address::with_query(path, &query)
}

fn body(reader: &Reader, title: &str, view: &SeasonView) -> Markup {
    let site = view.site.as_deref();
    html! {
        link rel="stylesheet" href=(assets::address("season.css"));
        h1 { (title) }
        @if view.sites.is_empty() { p.lead { (reader.say("season-empty")) } } @else {
            p.lead role="status" data-testid="summary" { (view.summary) }
        }
        @if site.is_some() { p.up { a href=(at("/season", None, view.weeks)) { (reader.say("season-all-sites")) } } }
        nav.season-weeks aria-label=(reader.say("season-weeks-label")) {
            @for weeks in CHOICES {
                a href=(at("/season", site, weeks)) aria-current=[(weeks == view.weeks).then_some("true")] {
                    (reader.words.text("season-weeks", &[("n", (weeks as i64).into())]))
                }
            }
        }
        div.season-body {
            div.season-list { @for site in &view.sites { (one_site(reader, view, site)) } }
            @if !view.grid.rows.is_empty() { (grid(reader, view, &view.grid)) }
        }
        section aria-labelledby="about" {
            h2 #about { (reader.say("season-title")) }
            p { (reader.say("season-what")) }
            @if let Some(prices) = &view.prices { p.assumed { (prices) } }
            p.actions { a.button href=(at("/season.ics", site, view.weeks)) data-testid="feed" { (reader.say("season-feed-link")) } }
            p.hint { (reader.say("season-feed-hint")) }
        }
    }
}

fn one_site(reader: &Reader, view: &SeasonView, site: &SiteView) -> Markup {
    let alone = view.site.is_some();
    html! {
        section.site data-site=(site.key) {
            @if !alone { h2 { a href=(at("/season", Some(&site.key), view.weeks)) { (site.name) } } }
            @if alone { h2 { (reader.say("season-visits")) } }
            p { (site.summary) }
            @if !site.visits.is_empty() {
                @if !alone { h3 { (reader.say("season-visits")) } }
                ol.visits { @for visit in &site.visits { (one_visit(reader, &site.key, visit)) } }
                p.cost { (site.cost) }
            }
            p.proof { (site.proof) }
            @if !site.late.is_empty() {
                @let title = format!("{} ({})", reader.say("season-late"), site.late.len());
                @if site.late.len() > SHORT {
                    details.why { summary { (title) } (palms(&site.late, "late")) }
                } @else {
                    h3 { (title) }
                    (palms(&site.late, "late"))
                }
            }
            @if !site.otherwise.is_empty() { (otherwise(reader, &site.otherwise)) }
            @if !site.left.is_empty() {
                details.why {
                    summary { (reader.say("season-left")) " (" (site.left.len()) ")" }
                    (palms(&site.left, "left"))
                }
            }
            @if !site.closed.is_empty() {
                h3 { (reader.say("season-closed-title")) }
                ul.closed { @for line in &site.closed { li { (line) } } }
            }
            @for note in &site.notes { p.small { (note) } }
            @if !alone { p.actions { a.button href=(at("/season", Some(&site.key), view.weeks)) { (reader.say("season-open-site")) } } }
        }
    }
}

fn one_visit(reader: &Reader, site: &str, visit: &VisitRow) -> Markup {
    html! {
        li.lift[visit.lift] data-day=(visit.day.to_string()) {
            p.day { strong { (visit.date) } }
            p { (visit.what) }
            p.soft { (visit.work) }
            @if !site.is_empty() { p.actions { a.button href=(plan_day(site, visit)) { (reader.say("season-plan-day")) } } }
            details.why {
                summary { (reader.say("season-visit-palms")) }
                ul.served {
                    @for (tag, what) in &visit.palms {
                        li { a href=(address::palm(tag, "")) { (tag) } " " span.soft { (what) } }
                    }
                }
            }
        }
    }
}

/// The page that plans the rounds of a day, with the day and the site filled in.
fn plan_day(site: &str, visit: &VisitRow) -> String {
    let (day, tick) = (visit.day.to_string(), format!("site-{site}"));
    let filled = [("day", day.as_str()), ("scope", "sites"), (&tick, "yes")];
    address::with_query("/rounds/plan", &filled)
}

fn palms(lines: &[PalmLine], class: &str) -> Markup {
    html! {
        ul class={ "palm-lines " (class) } {
            @for line in lines {
                li data-why=(line.why) { a href=(address::palm(&line.tag, "")) { (line.tag) } " " (line.text) }
            }
        }
    }
}

fn otherwise(reader: &Reader, plans: &[Otherwise]) -> Markup {
    html! {
        h3 { (reader.say("season-otherwise")) }
        p.small { (reader.say("season-otherwise-what")) }
        div.otherwise {
            @for plan in plans {
                article data-plan=(plan.key) {
                    h4 { (plan.title) }
                    p { strong { (plan.palms) } }
                    p { strong { (plan.purse) } " " span.soft { (plan.proof) } }
                    @if !plan.days.is_empty() {
                        p.soft { (reader.words.text("season-days", &[("days", plan.days.clone().into())])) }
                    }
                    @if !plan.late.is_empty() {
                        details.why {
                            summary { (reader.say("season-late")) " (" (plan.late.len()) ")" }
                            (palms(&plan.late, "late"))
                        }
                    }
                }
            }
        }
    }
}

fn grid(reader: &Reader, view: &SeasonView, grid: &Grid) -> Markup {
    let by_palms = view.site.is_some();
    let title = reader.say(if by_palms {
        "season-grid-palms"
    } else {
        "season-grid-sites"
    });
    let column = reader.say(if by_palms {
        "season-col-palm"
    } else {
        "season-col-site"
    });
    let link = |key: &str| match by_palms {
        true => address::palm(key, ""),
        false => at("/season", Some(key), view.weeks),
    };
    html! {
        section.weeks-grid aria-labelledby="grid" {
            h2 #grid { (title) }
            p.hint { (reader.say("season-grid-hint")) }
            ul.legend {
                @for mark in [Mark::Open, Mark::Visit, Mark::Lift, Mark::Late, Mark::Closed] {
                    li { span class={ "week " (mark.key()) } aria-hidden="true" { (sign(mark, 0)) } " " (reader.say(&format!("season-key-{}", mark.key()))) }
                }
            }
            div.slide role="region" tabindex="0" aria-label=(reader.say("season-grid-hint")) {
                table data-testid="grid" {
                    thead { tr {
                        th scope="col" { (column) }
                        @for (month, weeks) in &grid.months { th.month scope="colgroup" colspan=(weeks) { (month) } }
                    } }
                    tbody {
                        @for row in &grid.rows {
                            tr {
                                th scope="row" { a href=(link(&row.key)) { (row.name) } }
                                @for cell in &row.cells {
                                    td class={ "week " (cell.mark.key()) } title=(cell.words) {
                                        span aria-hidden="true" { (sign(cell.mark, cell.n)) }
                                        @if cell.mark != Mark::Blank { span.sr { (cell.words) } }
                                    }
                                }
                            }
                        }
                    }
                }
            }
            @if let Some(more) = &view.not_drawn { p.small { (more) } }
        }
    }
}

/// What stands in a week: told apart without colour.
fn sign(mark: Mark, n: usize) -> String {
    let n = if n > 0 { n.to_string() } else { String::new() };
    match mark {
        Mark::Blank => String::new(),
        Mark::Open => n,
        Mark::Visit if n.is_empty() => "●".to_owned(),
        Mark::Visit => n,
        Mark::Lift if n.is_empty() => "▲".to_owned(),
        Mark::Lift => format!("{n}▲"),
        Mark::Late => format!("!{n}"),
        Mark::Closed => "×".to_owned(),
    }
}
