//! `/prices`: the price list and the keeper's own figures, to see and to set.

use super::parts::{Kind, Sheet};
use super::sent::{Sent, refused};
use crate::{App, Fault, Here, Reader, page};
use axum::Router;
use axum::extract::State;
use axum::response::Response;
use axum::routing::get;
use desk::forms::{self, Trouble, Typed};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::estimating::{FigureRow, figures, price_rows};
use maud::{Markup, html};

/// The page and its form.
pub fn router() -> Router<App> {
    Router::new().route("/prices", get(show).post(save))
}

async fn show(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let state = office.state();
        let typed = match &state.work.prices {
            Some(list) => forms::typed_prices(list),
            None => Typed::of([("currency", "USD"), ("digits", "2")]),
        };
        draw(office, &whose, &typed, &[], false)
    })
    .await
}

async fn save(State(app): State<App>, reader: Reader, sent: Sent) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let draw =
            |troubles: &[Trouble], failed| draw(office, &whose, &sent.typed, troubles, failed);
        match forms::save_prices(office, &sent.typed) {
            Ok(()) => sent.saved("/prices"),
            Err(stop) => refused(stop, draw),
        }
    })
    .await
}

fn draw(
    office: &Office,
    reader: &Reader,
    typed: &Typed,
    troubles: &[Trouble],
    failed: bool,
) -> Markup {
    let sheet = Sheet {
        reader,
        typed,
        troubles,
        failed,
    };
    let speaker = Speaker::new(reader.measure);
    let id = match sheet.value("id") {
        "" => office.new_id().0.to_string(),
        before => before.to_owned(),
    };
    let title = reader.say("prices-title");
    let line = |name: &str, kind, key: &str| {
        let hint = Some(format!("{key}-hint")).filter(|hint| reader.words.has(hint));
        let hint = hint.map(|hint| reader.say(&hint));
        sheet.line_with(name, kind, &reader.say(key), hint.as_deref(), None)
    };
    let body = html! {
        h1 { (title) }
        p.lead { (reader.say("prices-lead")) }
        @if office.state().work.prices.is_none() { p.pending { (reader.say("prices-none-set")) } }
        (sheet.summary())
        form.sheet method="post" action="/prices" {
            input type="hidden" name="id" value=(id);
            h2 { (reader.say("prices-prices")) }
            (line("currency", Kind::Words, "prices-code"))
            (line("digits", Kind::Whole, "prices-digits"))
            @for row in price_rows(&speaker) { (field(sheet, &row, "prices-assumed")) }
            (line("tax", Kind::Decimal, "prices-tax"))
            (line("notes", Kind::Words, "prices-notes"))
            h2 { (reader.say("prices-figures")) }
            p { (reader.say("prices-figures-what")) }
            @for row in figures(&speaker) { (field(sheet, &row, "prices-table")) }
            div.save {
                button.primary type="submit" { (reader.say("prices-save")) }
                a.button href="/estimate" { (reader.say("forms-cancel")) }
            }
        }
    };
    page(reader, Here::Prices, &title, body)
}

/// A price or a figure; its hint says what holds while it is empty, and how that is known.
fn field(sheet: Sheet, row: &FigureRow, words: &'static str) -> Markup {
    let said = sheet
        .reader
        .words
        .text(words, &[("value", row.value.clone().into())]);
    let hint = match (words, row.mark.as_str()) {
        ("prices-assumed", _) | (_, "") => said,
        (_, mark) => format!("{said} ({mark})"),
    };
    sheet.line_with(row.field, Kind::Decimal, &row.label, Some(&hint), None)
}
