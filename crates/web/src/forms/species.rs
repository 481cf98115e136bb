//! Species names to choose from: in the form for what is at hand, over `/api/species?like=` for all the rest.

use super::parts::Sheet;
use crate::App;
use axum::extract::Query;
use axum::{Json, Router, routing::get};
use desk::forms;
use maud::{Markup, html};
use model::{Knowledge, State};
use serde::Deserialize;
use std::collections::BTreeSet;

/// The look-up behind the species field.
pub fn router() -> Router<App> {
    Router::new().route("/api/species", get(like))
}

#[derive(Deserialize)]
struct Like {
    #[serde(default)]
    like: String,
}

async fn like(Query(asked): Query<Like>) -> Json<Vec<String>> {
    Json(forms::species_like(&asked.like))
}

/// Names to start with: what the register holds and the species that are worked through.
pub fn list(register: &State) -> Markup {
    let mut names: BTreeSet<&str> = register
        .standing()
        .map(|record| record.palm.species.as_str())
        .collect();
    names.extend(
        Knowledge::embedded()
            .species
            .iter()
            .filter(|s| s.detailed)
            .map(|s| s.name.as_str()),
    );
    html! { datalist #known-species { @for name in names { option value=(name) {} } } }
}

/// The nearest names to one nobody knows, each a tap away (with script; without, they stand in the message).
pub fn offers(sheet: Sheet) -> Markup {
    let asked = sheet
        .troubles
        .iter()
        .any(|t| t.finding.code == "form-species-nearest");
    let names = if asked {
        forms::nearest(sheet.value("species")).unwrap_or_default()
    } else {
        Vec::new()
    };
    html! {
        @if !names.is_empty() {
            div.offers.by-script hidden {
                @for name in &names { button type="button" data-fill="species" data-value=(name) { i { (name) } } }
            }
        }
    }
}
