//! `/cutting`: the cutting log. Pick the blade, pick the palm, see whether the one may go to the other, log the cut.

use super::cutting_page::{View, page_of};
use super::sent::{Sent, again, refused};
use crate::{App, Fault, Reader, address};
use axum::Router;
use axum::extract::{Query, State};
use axum::response::Response;
use axum::routing::get;
use desk::forms::{self, Trouble, Typed};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::blades::cut;
use maud::Markup;
use serde::Deserialize;

/// `/cutting`.
pub fn router() -> Router<App> {
    Router::new().route("/cutting", get(show).post(save))
}

#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    blade: String,
    palm: String,
    stem: String,
    saved: String,
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let typed = Typed::of([
            ("id", office.new_id().0.to_string()),
            ("blade", asked.blade.trim().to_owned()),
            ("palm", asked.palm.trim().to_owned()),
            ("stem", asked.stem.clone()),
            ("saved", asked.saved.clone()),
        ]);
        draw(office, &whose, &typed, &[], false)
    })
    .await
}

async fn save(State(app): State<App>, reader: Reader, sent: Sent) -> Result<Response, Fault> {
    let whose = reader.clone();
    app.ask(&reader, move |office| {
        let typed = &sent.typed;
        let state = office.state();
        let (tool, palm) = (typed.get("blade"), typed.get("palm"));
        let (Some(blade), Some(record)) = (state.blade_by_tag(tool), state.by_tag(palm)) else {
            return again(draw(office, &whose, typed, &[], false));
        };
        match forms::save_cut(office, blade.id, record.id, typed) {
            Ok(cut) => sent.saved(&after(tool, palm, cut.stem, record.palm.stems)),
            Err(stop) => refused(stop, |troubles, failed| {
                draw(office, &whose, typed, troubles, failed)
            }),
        }
    })
    .await
}

/// After saving: the next stem of the same palm, or the next palm with the same blade.
fn after(blade: &str, palm: &str, stem: u16, stems: u16) -> String {
    if stem < stems {
        let next = (stem + 1).to_string();
        let pairs = [
            ("blade", blade),
            ("palm", palm),
            ("stem", &next),
            ("saved", palm),
        ];
        return address::with_query("/cutting", &pairs);
    }
    address::with_query("/cutting", &[("blade", blade), ("saved", palm)])
}

fn draw(
    office: &Office,
    reader: &Reader,
    typed: &Typed,
    troubles: &[Trouble],
    failed: bool,
) -> Markup {
    let speaker = Speaker::new(reader.measure);
    let view = cut::view(&speaker, office, typed.get("blade"), typed.get("palm"));
    page_of(&View {
        reader,
        view: &view,
        typed,
        troubles,
        failed,
    })
}
