//! `/palms/new` and `/palm/{tag}/edit`: register a palm, change its description.

use super::inspect::palm;
use super::parts::{self, Kind, Sheet};
use super::sent::{Sent, again, could_not};
use super::species;
use crate::{App, Fault, Here, Reader, address, page};
use axum::Router;
use axum::extract::{Path, State};
use axum::response::Response;
use axum::routing::get;
use desk::forms::{self, Stop, Typed};
use desk::measure::Units;
use desk::office::Office;
use maud::{Markup, html};
use model::{PalmRecord, State as Register};
use std::collections::BTreeSet;

/// The palm form, for new and for known palms.
pub fn router() -> Router<App> {
    Router::new()
        .route("/palms/new", get(blank).post(register))
        .route("/palm/{tag}/edit", get(edit).post(change))
}

async fn blank(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let typed = with_id(
            forms::typed_palm(&forms::new_palm(), whose.measure.units),
            office,
        );
        form(office, &whose, None, &typed, Stop::Troubles(Vec::new()))
    })
    .await
}

async fn edit(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        let mut typed = with_id(forms::typed_palm(&record.palm, whose.measure.units), office);
        typed.set("seen", forms::seen_mark(&record.palm));
        Ok(form(
            office,
            &whose,
            Some(&record),
            &typed,
            Stop::Troubles(Vec::new()),
        ))
    })
    .await?
}

fn with_id(mut typed: Typed, office: &Office) -> Typed {
    typed.set("id", office.new_id().0.to_string());
    typed
}

async fn register(State(app): State<App>, reader: Reader, sent: Sent) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| save(office, &whose, None, &sent))
        .await?
}

async fn change(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let record = palm(office, &whose, &tag)?;
        save(office, &whose, Some(&record), &sent)
    })
    .await?
}

fn save(
    office: &Office,
    reader: &Reader,
    record: Option<&PalmRecord>,
    sent: &Sent,
) -> Result<Response, Fault> {
    // lengths are read in the units the form was drawn in, whatever the setting is by now
    let units = Units::parse(sent.typed.get("units")).unwrap_or(reader.measure.units);
    match forms::save_palm(office, record.map(|r| r.id), &sent.typed, units) {
        Ok(tag) => Ok(sent.saved(&address::palm(&tag, ""))),
        Err(Stop::NoPalm) => Err(Fault::no_palm(reader, sent.typed.get("tag"))),
        Err(stop @ Stop::Troubles(_)) => Ok(again(form(office, reader, record, &sent.typed, stop))),
        Err(stop @ Stop::Ledger(_)) => {
            Ok(could_not(form(office, reader, record, &sent.typed, stop)))
        }
    }
}

fn form(
    office: &Office,
    reader: &Reader,
    record: Option<&PalmRecord>,
    typed: &Typed,
    stop: Stop,
) -> Markup {
    let (troubles, failed) = match stop {
        Stop::Troubles(troubles) => (troubles, false),
        Stop::NoPalm | Stop::Ledger(_) => (Vec::new(), true),
    };
    let sheet = Sheet {
        reader,
        typed,
        troubles: &troubles,
        failed,
    };
    let tag = record.map_or("", |r| r.palm.tag.as_str());
    let title = match record {
        Some(_) => reader
            .words
            .text("forms-edit-title", &[("tag", tag.to_owned().into())]),
        None => reader.say("forms-new-title"),
    };
    let (to, back) = match record {
        Some(_) => (address::palm(tag, "/edit"), address::palm(tag, "")),
        None => ("/palms/new".to_owned(), "/palms".to_owned()),
    };
    let draft = record.map_or("palm new".to_owned(), |r| format!("palm {}", r.id.0));
    let units = Units::parse(typed.get("units")).unwrap_or(reader.measure.units);
    let body = html! {
        h1 { (title) }
        (sheet.summary())
        (parts::messages(reader))
        form.sheet #palm method="post" action=(to) data-draft=(draft) novalidate {
            (sheet.hidden("id"))
            (sheet.hidden("seen"))
            input type="hidden" name="units" value=(units.key());
            (fields(sheet, units, &office.state()))
            (parts::save_bar(sheet, html! {}, &back))
        }
        @if record.is_some() { (elsewhere(reader, tag)) }
    };
    page(reader, Here::Palms, &title, body)
}

fn fields(sheet: Sheet, units: Units, register: &Register) -> Markup {
    let unit_label = |name: &str| {
        let unit = sheet.say(if units == Units::Metric {
            "forms-in-metres"
        } else {
            "forms-in-feet"
        });
        format!("{} ({unit})", sheet.say(&format!("forms-{name}")))
    };
    let length = |name: &str| {
        let hint = sheet.say(&format!("forms-{name}-hint"));
        sheet.line_with(name, Kind::Words, &unit_label(name), Some(&hint), None)
    };
    let listed = |name: &str, list| {
        let hint = format!("forms-{name}-hint");
        let hint = sheet.reader.words.has(&hint).then(|| sheet.say(&hint));
        sheet.line_with(
            name,
            Kind::Words,
            &sheet.say(&format!("forms-{name}")),
            hint.as_deref(),
            Some(list),
        )
    };
    html! {
        fieldset {
            legend { (sheet.say("forms-part-what")) }
            (sheet.line("tag", Kind::Words))
            (listed("species", "known-species"))
            (species::offers(sheet))
            (species::list(register))
            (listed("site", "known-sites"))
            datalist #known-sites { @for site in sites(register) { option value=(site) {} } }
            (sheet.line("stems", Kind::Whole))
        }
        fieldset {
            legend { (sheet.say("forms-part-when")) }
            (sheet.line("planted_on", Kind::Day))
            (sheet.line("moved_on", Kind::Day))
            (sheet.line("last_cleaned_on", Kind::Day))
        }
        fieldset.where {
            legend { (sheet.say("forms-part-where")) }
            (length("trunk_height"))
            (length("crown_across"))
            (length("wires"))
            p.caution { (sheet.say("forms-wires-caution")) }
            (sheet.line("over", Kind::Words))
            div.two { (sheet.line("lat", Kind::Words)) (sheet.line("lon", Kind::Words)) }
            button.by-script type="button" #locate hidden data-say-failed=(sheet.say("forms-locate-failed")) { (sheet.say("forms-locate")) }
            output #locate-says role="status" {}
        }
        fieldset {
            legend { (sheet.say("forms-part-own")) }
            p.hint { (sheet.say("forms-part-own-hint")) }
            div.two { (sheet.line("full_crown", Kind::Decimal)) (sheet.line("fronds_per_year", Kind::Decimal)) }
        }
        (sheet.lines("notes"))
    }
}

fn sites(register: &Register) -> BTreeSet<&str> {
    register
        .standing()
        .map(|record| record.palm.site.as_str())
        .filter(|site| !site.is_empty())
        .collect()
}

/// What else may be done with a known palm.
fn elsewhere(reader: &Reader, tag: &str) -> Markup {
    html! {
        nav.aside aria-label=(reader.say("forms-palm-nav")) {
            a.button href=(address::palm(tag, "/holds")) { (reader.say("forms-holds")) }
            a.button href=(address::palm(tag, "/remove")) { (reader.say("forms-remove")) }
        }
    }
}
