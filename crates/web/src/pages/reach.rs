//! `/palm/{tag}/reach`: with what and from where to get at a palm. Works without script.

use super::said;
use crate::{App, Fault, Here, Reader, address, assets, page};
use axum::extract::{Path, Query, State};
use axum::{Router, routing::get};
use desk::views::Speaker;
use desk::views::reach::draw::{Above, SIZE, Spot};
use desk::views::reach::{self, Brief, Question, ReachView};
use maud::{Markup, html};
use serde::Deserialize;

/// `/palm/{tag}/reach`.
pub fn router() -> Router<App> {
    Router::new().route("/palm/{tag}/reach", get(show))
}

/// The question as it stands in an address; every part may be missing.
#[derive(Deserialize, Default)]
#[serde(default)]
struct Asked {
    stem: String,
    petiole: String,
    hand: String,
    crew: String,
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let question = Question {
        stem: asked.stem.parse().unwrap_or(1),
        petiole: asked.petiole,
        hand: asked.hand,
        crew: asked.crew,
    };
    let wanted = tag.clone();
    let (view, question) = app
        .ask(&reader, move |office| {
            (reach::view(&speaker, office, &wanted, &question), question)
        })
        .await?;
    let view = view.ok_or_else(|| Fault::no_palm(&reader, &tag))?;
    let named = [("tag", view.tag.clone().into())];
    let title = reader.words.text("reach-of", &named);
    let content = body(&reader, &question, &view, &title);
    Ok(page(&reader, Here::Palms, &title, content))
}

fn body(reader: &Reader, question: &Question, view: &ReachView, title: &str) -> Markup {
    html! {
        (style())
        h1 { (title) }
        p.kind { i lang="la" { (view.species) } " · " a href=(address::palm(&view.tag, &format!("?stem={}", view.stem))) { (view.tag) } }
        @for trouble in &view.troubles { p.trouble role="alert" { a href={ "#" (trouble.field) } { (trouble.text) } } }
        (head(&view.brief))
        @if let Some(pole) = &view.pole { p { (pole) } }
        (said::list(reader, &view.findings))
        p { strong { (reader.say("common-closing")) } }
        (said::reasons(reader, &view.findings))
        @if view.brief.above.is_some() { h2 { (reader.say("reach-above")) } }
        (picture(reader, &view.brief))
        (form(reader, question, view))
        (tools(reader, view))
    }
}

/// The style sheet of this page and of the palm's section.
pub fn style() -> Markup {
    html! { link rel="stylesheet" href=(assets::address("reach.css")); }
}

/// The sentence and the circle.
pub fn head(brief: &Brief) -> Markup {
    html! {
        div class={ "reach-answer " (brief.weight) } data-testid="reach" {
            p.headline { (brief.sentence) }
            p { (brief.keep_out) }
        }
    }
}

/// From above, with the places.
pub fn picture(reader: &Reader, brief: &Brief) -> Markup {
    html! {
        @if let Some(above) = &brief.above {
            figure.reach-above {
                (drawn(reader, above))
                figcaption {
                    ul.legend {
                        @for key in ["stays", "goes", "place", "circle"] {
                            @if key != "place" || !above.places.is_empty() { li { (sample(key)) (reader.say(&format!("reach-key-{key}"))) } }
                        }
                    }
                    p.hint { (reader.say("reach-above-hint")) }
                }
            }
        }
        @if !brief.places.is_empty() {
            h3 { (reader.say("reach-places")) }
            ol.reach-places { @for place in &brief.places { li value=(place.n) { (place.text) } } }
        }
    }
}

fn drawn(reader: &Reader, above: &Above) -> Markup {
    let (size, middle) = (SIZE as i32, SIZE as i32 / 2);
    html! {
        svg.reach-drawn viewBox={ "0 0 " (size) " " (size) } role="img" aria-label=(reader.say("reach-above-label")) {
            defs { pattern #standing width="9" height="9" patternUnits="userSpaceOnUse" { path.hatch d="M-2 2L2 -2M0 9L9 0M7 11L11 7" {} } }
            @if let Some(radius) = above.keep_out { circle.circle cx=(middle) cy=(middle) r=(radius) {} }
            @for spot in &above.places { path.sector d=(spot.sector) {} path fill="url(#standing)" d=(spot.sector) {} }
            @for frond in &above.fronds { path class=(frond.key) d=(frond.line) {} }
            circle.trunk cx=(middle) cy=(middle) r=(above.trunk) {}
            @for (x, y) in above.fronds.iter().filter_map(|frond| frond.cut) {
                path.cut transform={ "translate(" (x) " " (y) ")" } d="M-6 -6L6 6M6 -6L-6 6" {}
            }
            @for spot in &above.places { (number(spot)) }
            g.scale-bar transform={ "translate(14 " (size - 14) ")" } {
                path d={ "M0 -7V0H" (above.bar.0) "V-7" } {}
                text x=(above.bar.0 + 8) y="2" { (above.bar.1) }
            }
        }
    }
}

fn number(spot: &Spot) -> Markup {
    html! {
        g.place transform={ "translate(" (spot.at.0) " " (spot.at.1) ")" } {
            circle r="16" {}
            text y="7" text-anchor="middle" { (spot.n) }
        }
    }
}

fn sample(key: &str) -> Markup {
    html! {
        svg.key.reach-drawn viewBox="0 0 40 24" width="40" height="24" aria-hidden="true" focusable="false" {
            @match key {
                "stays" => path.stays d="M2 12H38" {},
                "goes" => { path.goes d="M2 12H38" {} path.cut transform="translate(10 12)" d="M-6 -6L6 6M6 -6L-6 6" {} },
                "place" => g.place transform="translate(20 12)" { circle r="10" {} text y="6" text-anchor="middle" { "1" } },
                _ => path.circle d="M2 12H38" {},
            }
        }
    }
}

fn form(reader: &Reader, question: &Question, view: &ReachView) -> Markup {
    let wrong = |field: &str| {
        view.troubles
            .iter()
            .any(|t| t.field == field)
            .then_some("true")
    };
    let field = |name: &str, value: &str| {
        html! {
            div.field {
                label for=(name) { (reader.say(&format!("reach-{name}-label"))) }
                p.hint id={ (name) "-hint" } { (reader.say(&format!("reach-{name}-hint"))) }
                input type="text" inputmode="decimal" id=(name) name=(name) value=(value) autocomplete="off"
                    aria-describedby={ (name) "-hint" } aria-invalid=[wrong(name)];
            }
        }
    };
    html! {
        form.sheet method="get" action=(address::palm(&view.tag, "/reach")) {
            input type="hidden" name="stem" value=(view.stem);
            (field("petiole", &question.petiole))
            (field("hand", &question.hand))
            @if !view.crews.is_empty() {
                div.field {
                    label for="crew" { (reader.say("reach-crew-label")) }
                    select #crew name="crew" {
                        option value="" { (reader.say("reach-crew-any")) }
                        @for crew in &view.crews { option value=(crew) selected[*crew == question.crew] { (crew) } }
                    }
                }
            }
            div.actions { button.primary type="submit" { (reader.say("reach-ask")) } }
        }
    }
}

fn tools(reader: &Reader, view: &ReachView) -> Markup {
    html! {
        @if !view.tools.is_empty() {
            section aria-labelledby="tools" {
                h2 #tools { (reader.say("reach-tools")) }
                ul.reach-tools {
                    @for tool in &view.tools {
                        li.taken[tool.taken] data-tool=(tool.key) {
                            p { strong { (tool.name) } " · " @if tool.taken { span.mark-word { (reader.say("reach-take")) } " · " } (tool.says) }
                            p.small { (tool.text) @if let Some(mark) = &tool.mark { " " span.mark { (mark) } } }
                        }
                    }
                }
            }
        }
    }
}
