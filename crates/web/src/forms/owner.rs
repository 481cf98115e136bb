//! `/palm/{tag}/owner`: the keeper previews the owner's sheet, prints it, gives a private link, revokes one.

use super::inspect::palm;
use super::parts::{Kind, Sheet};
use super::sent::{Sent, refused_of};
use crate::pages::owner::{body, private, style};
use crate::pages::sheets::{own_address, stays_here};
use crate::{App, Fault, Here, Reader, address, page};
use axum::Router;
use axum::extract::{Path, State};
use axum::http::HeaderMap;
use axum::response::{IntoResponse, Response};
use axum::routing::{get, post};
use desk::forms::{self, Given, Trouble, Typed};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::owner::{self, LinkRow};
use maud::{Markup, html};
use model::PalmRecord;
use paper::Size;
use std::sync::Arc;

/// The page and its two forms.
pub fn router() -> Router<App> {
    Router::new()
        .route("/palm/{tag}/owner", get(show).post(give))
        .route("/palm/{tag}/owner/revoke", post(revoke))
}

/// A link to be shown this once.
enum Shown {
    /// Nothing was given just now.
    Nothing,
    /// Its address, and for whom.
    Link(String, String),
    /// It was shown before.
    Before,
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        draw(
            office,
            &whose,
            &record,
            &Shown::Nothing,
            &Typed::default(),
            &[],
            false,
        )
    })
    .await?
}

async fn give(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    headers: HeaderMap,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    let base = own_address(&headers);
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        let draw = |shown: &Shown, typed: &Typed, troubles: &[Trouble], failed| {
            let record = palm(office, &whose, &tag)?;
            draw(office, &whose, &record, shown, typed, troubles, failed)
        };
        let blank = Typed::default();
        match forms::save_link(office, record.id, &sent.typed) {
            Ok(Given::Now { secret, owner }) => {
                let shown = Shown::Link(format!("{base}/o/{secret}"), owner);
                Ok(private(draw(&shown, &blank, &[], false)?.into_response()))
            }
            Ok(Given::Before) => Ok(draw(&Shown::Before, &blank, &[], false)?.into_response()),
            Err(stop) => refused_of(
                stop,
                || Fault::no_palm(&whose, &tag),
                |troubles, failed| draw(&Shown::Nothing, &sent.typed, troubles, failed),
            ),
        }
    })
    .await?
}

async fn revoke(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        let why = whose.say("owner-revoked");
        let draw = |troubles: &[Trouble], failed| {
            let typed = Typed::default();
            draw(
                office,
                &whose,
                &record,
                &Shown::Nothing,
                &typed,
                troubles,
                failed,
            )
        };
        match forms::save_revoked(office, record.id, &sent.typed, why) {
            Ok(()) => Ok(sent.saved(&format!("{}#links", address::palm(&tag, "/owner")))),
            Err(stop) => refused_of(stop, || Fault::no_palm(&whose, &tag), draw),
        }
    })
    .await?
}

fn draw(
    office: &Office,
    reader: &Reader,
    record: &Arc<PalmRecord>,
    shown: &Shown,
    typed: &Typed,
    troubles: &[Trouble],
    failed: bool,
) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let view = owner::view(&speaker, office, record).ok_or_else(|| Fault::broken(reader))?;
    let links = owner::links(&speaker, office, record);
    let sheet = Sheet {
        reader,
        typed,
        troubles,
        failed,
    };
    let tag = record.palm.tag.as_str();
    let title = reader
        .words
        .text("owner-page-title", &[("tag", tag.to_owned().into())]);
    let content = html! {
        (style())
        h1 { (title) }
        p.about {
            a href=(address::palm(tag, "")) { (tag) }
            " · " i { (record.palm.species) }
            @if !record.palm.site.is_empty() { " · " (record.palm.site) }
        }
        p { (reader.say("owner-page-what")) }
        (given(reader, shown))
        p.actions {
            @for size in Size::ALL {
                a.button href=(address::palm(tag, &format!("/owner.pdf?paper={}", size.key()))) data-testid={ "pdf-" (size.key()) } {
                    (reader.say("owner-print")) ": " (reader.say(&format!("sheets-paper-{}", size.key())))
                }
            }
        }
        (given_links(office, reader, record, &links))
        (form(office, sheet, record))
        h2 { (reader.say("owner-preview")) }
        div.preview { (body(reader, &view)) }
    };
    Ok(page(reader, Here::Palms, &title, content))
}

/// The link, shown this once.
fn given(reader: &Reader, shown: &Shown) -> Markup {
    html! {
        @match shown {
            Shown::Nothing => {}
            Shown::Before => { div.note role="status" data-testid="given-before" { p { (reader.say("owner-given-before")) } } }
            Shown::Link(link, owner) => {
                section.given role="status" data-testid="given" {
                    h2 { (reader.say("owner-given-title")) }
                    p { (reader.words.text("owner-given-for", &[("owner", owner.clone().into())])) }
                    p.link { a href=(link) rel="noreferrer" data-testid="secret-link" { (link) } }
                    p { strong { (reader.say("owner-given-copy")) } }
                    @if stays_here(link) { p.hint { (reader.say("owner-given-here")) } }
                }
            }
        }
    }
}

fn given_links(office: &Office, reader: &Reader, record: &PalmRecord, links: &[LinkRow]) -> Markup {
    let tag = record.palm.tag.as_str();
    html! {
        section #links {
            h2 { (reader.say("owner-links-title")) }
            @if links.is_empty() { p { (reader.say("owner-links-none")) } }
            ul.links {
                @for link in links {
                    li data-works=(link.works) {
                        p {
                            strong { @if link.owner.is_empty() { (reader.say("owner-link-nobody")) } @else { (link.owner) } }
                            " · " (reader.say(if link.works { "owner-link-works" } else { "owner-link-closed" }))
                        }
                        p.small { (link.given) ", " (link.until) }
                        form method="post" action=(address::palm(tag, "/owner/revoke")) {
                            input type="hidden" name="id" value=(office.new_id().0);
                            input type="hidden" name="link" value=(link.entry);
                            button.danger type="submit" { (reader.say("owner-revoke")) }
                        }
                    }
                }
            }
        }
    }
}

fn form(office: &Office, sheet: Sheet, record: &PalmRecord) -> Markup {
    let sent_before = sheet.value("id");
    let id = match sent_before.is_empty() {
        true => office.new_id().0.to_string(),
        false => sent_before.to_owned(),
    };
    html! {
        form.sheet #give method="post" action=(address::palm(&record.palm.tag, "/owner")) {
            h2 { (sheet.say("owner-give-title")) }
            p { (sheet.say("owner-give-what")) }
            (sheet.summary())
            input type="hidden" name="id" value=(id);
            (sheet.line("link_owner", Kind::Words))
            (sheet.line("link_until", Kind::Day))
            button.primary type="submit" { (sheet.say("owner-give")) }
        }
    }
}
