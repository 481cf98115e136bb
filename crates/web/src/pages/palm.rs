//! `/palm/{tag}`: one palm. The drawn crown comes first, what it means stands beside it.

mod ask;
mod blades;
mod charts;
mod cutting;
mod drawing;
pub mod facts;
mod history;
mod reach;
mod reading;
mod signs;

pub use cutting::lines;
pub use signs::advised;

use super::said;
use crate::{App, Fault, Here, Reader, address, page};
use axum::extract::{Path, Query, State};
use axum::{Router, routing::get};
use care::Grounds;
use desk::views::palm::{self, PalmView};
use desk::views::{Mode, Question, Speaker};
use maud::{Markup, html};
use model::Day;
use serde::Deserialize;

/// `/palm/{tag}`.
pub fn router() -> Router<App> {
    Router::new().route("/palm/{tag}", get(show))
}

/// What an address asks of a palm's page; every part may be missing.
#[derive(Deserialize, Default, Clone)]
#[serde(default)]
pub struct Asked {
    stem: String,
    live: String,
    green: String,
    yellowing: String,
    brown: String,
    next: String,
    weeks: String,
    cut: String,
    storm: String,
    weevil: String,
    freeze: String,
    kv: String,
}

impl Asked {
    /// The question about a cut; what is no number asks for nothing.
    pub fn question(&self) -> Question {
        let number = |text: &str| text.trim().parse().ok();
        Question {
            live: number(&self.live),
            green: number(&self.green),
            yellowing: number(&self.yellowing),
            brown: number(&self.brown),
            next_visit: Day::parse(self.next.trim()),
            grounds: Grounds {
                weevil_area: !self.weevil.is_empty(),
                storm_expected: !self.storm.is_empty(),
                freeze_on: Day::parse(self.freeze.trim()),
                line_kv: self
                    .kv
                    .trim()
                    .parse()
                    .ok()
                    .filter(|kv: &f64| (0.0..=1500.0).contains(kv)),
            },
        }
    }

    fn stem(&self) -> u16 {
        self.stem.parse().unwrap_or(1)
    }

    /// The cut and the weeks to draw first.
    fn first_frame(&self) -> (Mode, u32) {
        let asked = if self.question().asks() {
            Mode::Asked
        } else {
            Mode::Plan
        };
        (
            Mode::parse(&self.cut).unwrap_or(asked),
            self.weeks.parse().unwrap_or(0),
        )
    }

    /// The address of the same page with other weeks and another cut in the drawing.
    fn address(&self, tag: &str, mode: Mode, weeks: u32) -> String {
        let weeks = weeks.to_string();
        let pairs = [
            ("stem", self.stem.as_str()),
            ("live", &self.live),
            ("green", &self.green),
            ("yellowing", &self.yellowing),
            ("brown", &self.brown),
            ("next", &self.next),
            ("storm", &self.storm),
            ("weevil", &self.weevil),
            ("freeze", &self.freeze),
            ("kv", &self.kv),
            ("cut", mode.key()),
            ("weeks", &weeks),
        ];
        address::with_query(&address::palm(tag, ""), &pairs)
    }
}

async fn show(
    State(app): State<App>,
    reader: Reader,
    Path(tag): Path<String>,
    Query(asked): Query<Asked>,
) -> Result<Markup, Fault> {
    let speaker = Speaker::new(reader.measure);
    let (wanted, stem, question) = (tag.clone(), asked.stem(), asked.question());
    let view = app
        .ask(&reader, move |office| {
            palm::view(&speaker, office, &wanted, stem, question)
        })
        .await?;
    let view = view.ok_or_else(|| Fault::no_palm(&reader, &tag))?;
    Ok(page(
        &reader,
        Here::Palms,
        &view.tag,
        body(&reader, &asked, &view),
    ))
}

fn body(reader: &Reader, asked: &Asked, view: &PalmView) -> Markup {
    html! {
        article.palm {
            (head(reader, view))
            (stems(reader, view))
            div.picture {
                (drawing::figure(reader, asked, view))
                (actions(reader, view))
            }
            div.words {
                (signs::advised(reader, &view.tag, &view.judgement.holds))
                (needs(reader, view))
                (jumps(reader))
                (reading::section(reader, view))
                (signs::section(reader, view))
                (charts::loss(reader, view))
                (charts::forecast(reader, view))
                (cutting::section(reader, view))
                (reach::section(reader, view))
                (ask::section(reader, view))
                (cutting::cautions(reader, view))
                (facts::own(reader, view))
                (facts::species(reader, view))
                (blades::section(reader, view))
                (history::section(reader, view))
            }
        }
    }
}

fn head(reader: &Reader, view: &PalmView) -> Markup {
    html! {
        header.head {
            h1 { (view.tag) }
            p.kind {
                i lang="la" { (view.species) }
                @if !view.common.is_empty() { ", " span lang="en" { (view.common) } }
                @if !view.site.is_empty() { " · " a href=(address::site(&view.site, "")) { (view.site) } }
            }
            @if let Some(note) = &view.species_note { p.note { (note) } }
            @for hold in &view.judgement.holds {
                p.held { a href={ "#hold-" (hold.reason) } { (reader.say("advice-title")) ": " (hold.title) } }
            }
        }
    }
}

fn stems(reader: &Reader, view: &PalmView) -> Markup {
    html! {
        @if !view.stems.is_empty() {
            nav.stems aria-label=(reader.say("palm-stems")) {
                @for (n, here) in &view.stems {
                    a href=(address::palm(&view.tag, &format!("?stem={n}"))) aria-current=[here.then_some("page")] {
                        (reader.words.text("palm-stem", &[("n", i64::from(*n).into())]))
                    }
                }
            }
        }
    }
}

fn actions(reader: &Reader, view: &PalmView) -> Markup {
    let stem = if view.stems.is_empty() {
        String::new()
    } else {
        format!("?stem={}", view.stem)
    };
    html! {
        p.actions {
            a.button.primary data-testid="inspect" href=(address::palm(&view.tag, &format!("/inspect{stem}"))) {
                (reader.say("palm-inspect"))
            }
            a.button href=(address::palm(&view.tag, "/edit")) { (reader.say("palm-edit")) }
            a.button href=(address::palm(&view.tag, "/holds")) { (reader.say("palm-holds")) }
            a.button data-testid="move" href=(address::palm(&view.tag, "/move")) { (reader.say("moved-link")) }
            a.button data-testid="water" href=(address::palm(&view.tag, "/water")) { (reader.say("watering-link")) }
            a.button data-testid="feeding" href=(address::palm(&view.tag, "/feeding")) { (reader.say("feed-link")) }
            a.button data-testid="owner" href=(address::palm(&view.tag, "/owner")) { (reader.say("owner-link")) }
        }
    }
}

/// Links to the sections, for the long page on a phone.
fn jumps(reader: &Reader) -> Markup {
    const TO: [(&str, &str); 10] = [
        ("reading", "palm-reading"),
        ("signs", "signs-title"),
        ("loss", "palm-loss"),
        ("forecast", "palm-forecast"),
        ("cutting", "palm-cutting"),
        ("reach", "reach-title"),
        ("asked", "palm-asked"),
        ("own", "palm-own"),
        ("blades", "palm-blades"),
        ("history", "palm-history"),
    ];
    html! {
        nav.jumps aria-label=(reader.say("palm-jump")) {
            @for (id, words) in TO { a href={ "#" (id) } { (reader.say(words)) } }
        }
    }
}

fn needs(reader: &Reader, view: &PalmView) -> Markup {
    html! {
        @if !view.needs.is_empty() {
            ul.said.needs-here data-testid="needs" {
                @for need in &view.needs {
                    li class=(need.weight) data-code=(need.code) {
                        p.words { span.weight { (reader.say(&format!("weight-{}", need.weight))) } " " (need.text) }
                    }
                }
            }
        }
    }
}
