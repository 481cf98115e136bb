//! `/blades/new`, `/blades/{tag}/edit`, `/lend`, `/back`, `/retire`: the register of blades.

use super::parts::{self, Kind, Sheet};
use super::sent::{Sent, refused};
use crate::pages::blades::no_blade;
use crate::{App, Fault, Here, Reader, address, page};
use axum::Router;
use axum::extract::{Path, State};
use axum::response::Response;
use axum::routing::get;
use desk::forms::{self, Trouble, Typed};
use desk::office::Office;
use maud::{Markup, html};
use model::state::BladeRecord;
use model::{BladeKind, State as Register};
use std::collections::BTreeSet;
use std::sync::Arc;

/// The forms of blades.
pub fn router() -> Router<App> {
    Router::new()
        .route("/blades/new", get(blank).post(register))
        .route("/blades/{tag}/edit", get(edit).post(change))
        .route("/blades/{tag}/{act}", get(ask).post(act))
}

async fn blank(State(app): State<App>, reader: Reader) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let typed = Typed::of([("id", office.new_id().0.to_string())]);
        form(office, &whose, None, &typed, &[], false)
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
        let blade = blade(office, &whose, &tag)?;
        let mut typed = forms::typed_blade(&blade.blade);
        typed.set("id", office.new_id().0.to_string());
        Ok(form(office, &whose, Some(&blade), &typed, &[], false))
    })
    .await?
}

async fn register(State(app): State<App>, reader: Reader, sent: Sent) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| save(office, &whose, None, &sent))
        .await
}

async fn change(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let blade = blade(office, &whose, &tag)?;
        Ok(save(office, &whose, Some(&blade), &sent))
    })
    .await?
}

/// The blade in service with a tag.
pub fn blade(office: &Office, reader: &Reader, tag: &str) -> Result<Arc<BladeRecord>, Fault> {
    let found = office.state().blade_by_tag(tag).cloned();
    found.ok_or_else(|| no_blade(reader, tag))
}

fn save(office: &Office, reader: &Reader, of: Option<&BladeRecord>, sent: &Sent) -> Response {
    let draw =
        |troubles: &[Trouble], failed| form(office, reader, of, &sent.typed, troubles, failed);
    match forms::save_blade(office, of.map(|b| b.id), &sent.typed) {
        Ok(tag) => sent.saved(&address::blade(&tag, "")),
        Err(stop) => refused(stop, draw),
    }
}

fn form(
    office: &Office,
    reader: &Reader,
    of: Option<&BladeRecord>,
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
    let tag = of.map_or("", |b| b.blade.tag.as_str());
    let title = match of {
        Some(_) => reader
            .words
            .text("blade-form-edit", &[("tag", tag.to_owned().into())]),
        None => reader.say("blade-form-new"),
    };
    let (to, back) = match of {
        Some(_) => (address::blade(tag, "/edit"), address::blade(tag, "")),
        None => ("/blades/new".to_owned(), "/blades".to_owned()),
    };
    let draft = of.map_or("blade new".to_owned(), |b| format!("blade {}", b.id.0));
    let body = html! {
        h1 { (title) }
        (sheet.summary())
        (parts::messages(reader))
        form.sheet #blade method="post" action=(to) data-draft=(draft) novalidate {
            (sheet.hidden("id"))
            (field(sheet, "tag", None))
            (kinds(sheet))
            (field(sheet, "kit", Some("known-kits")))
            (field(sheet, "holder", Some("known-holders")))
            (known(&office.state()))
            (sheet.lines("notes"))
            (parts::save_bar(sheet, html! {}, &back))
        }
    };
    page(reader, Here::Blades, &title, body)
}

/// A line whose label and hint are a blade's own.
fn field(sheet: Sheet, name: &str, list: Option<&str>) -> Markup {
    let label = sheet.say(&format!("blade-form-{name}"));
    let hint = sheet.say(&format!("blade-form-{name}-hint"));
    sheet.line_with(name, Kind::Words, &label, Some(&hint), list)
}

fn kinds(sheet: Sheet) -> Markup {
    let chosen = match sheet.value("kind") {
        "" => "unknown",
        word => word,
    };
    html! {
        fieldset #kind tabindex="-1" aria-describedby=[sheet.described("kind", false)] {
            legend { (sheet.say("blade-form-kind")) }
            div.pick {
                // "not said" stands last: it is for those who scan past
                @for (_, word) in BladeKind::ALL.iter().skip(1).chain(&BladeKind::ALL[..1]) {
                    label.choice {
                        input type="radio" name="kind" value=(word) checked[*word == chosen];
                        span { (sheet.say(&format!("blade-kind-{word}"))) }
                    }
                }
            }
            (sheet.at("kind"))
        }
    }
}

fn known(register: &Register) -> Markup {
    let each = |of: &dyn Fn(&BladeRecord) -> String| -> BTreeSet<String> {
        register
            .blades
            .values()
            .map(|b| of(b))
            .filter(|s| !s.is_empty())
            .collect()
    };
    html! {
        datalist #known-kits { @for kit in each(&|b| b.blade.kit.clone()) { option value=(kit) {} } }
        datalist #known-holders { @for name in each(&|b| b.blade.holder.clone()) { option value=(name) {} } }
    }
}

// ---- the three small forms: lend, back, retire

const ACTS: [&str; 3] = ["lend", "back", "retire"];

async fn ask(
    State(app): State<App>,
    reader: Reader,
    Path((tag, act)): Path<(String, String)>,
) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let act = known_act(&whose, &act)?;
        let blade = blade(office, &whose, &tag)?;
        let typed = Typed::of([("id", office.new_id().0.to_string())]);
        Ok(small(&whose, &blade, act, &typed, &[], false))
    })
    .await?
}

async fn act(
    State(app): State<App>,
    reader: Reader,
    Path((tag, act)): Path<(String, String)>,
    sent: Sent,
) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let act = known_act(&whose, &act)?;
        let Some(blade) = office.state().blade_by_tag(&tag).cloned() else {
            // retired twice, or elsewhere meanwhile: it is out
            return Ok(sent.saved(&address::blade(&tag, "")));
        };
        let done = match act {
            "lend" => forms::save_lent(office, blade.id, &sent.typed),
            "back" => forms::save_returned(office, blade.id, &sent.typed),
            _ => forms::save_retired(office, blade.id, &sent.typed),
        };
        let draw = |troubles: &[Trouble], failed| {
            small(&whose, &blade, act, &sent.typed, troubles, failed)
        };
        Ok(match done {
            Ok(()) => sent.saved(&address::blade(&tag, "")),
            Err(stop) => refused(stop, draw),
        })
    })
    .await?
}

fn known_act(reader: &Reader, act: &str) -> Result<&'static str, Fault> {
    let found = ACTS.into_iter().find(|known| *known == act);
    found.ok_or_else(|| {
        Fault::new(
            reader,
            axum::http::StatusCode::NOT_FOUND,
            "error-not-found",
            &[],
        )
    })
}

fn small(
    reader: &Reader,
    blade: &BladeRecord,
    act: &str,
    typed: &Typed,
    troubles: &[Trouble],
    failed: bool,
) -> Markup {
    let tag = blade.blade.tag.as_str();
    let sheet = Sheet {
        reader,
        typed,
        troubles,
        failed,
    };
    let words = |part: &str| {
        let args = [("tag", tag.to_owned().into())];
        reader.words.text(&format!("blade-{act}-{part}"), &args)
    };
    let title = words("title");
    let body = html! {
        h1 { (title) }
        p { (words("what")) }
        (sheet.summary())
        form.sheet method="post" action=(address::blade(tag, &format!("/{act}"))) {
            (sheet.hidden("id"))
            @match act {
                "lend" => (field(sheet, "to", None)),
                "retire" => (sheet.line("why", Kind::Words)),
                _ => {},
            }
            div.save {
                button.primary type="submit" { (words("do")) }
                a.button href=(address::blade(tag, "")) { (reader.say("forms-cancel")) }
            }
        }
    };
    page(reader, Here::Blades, &title, body)
}
