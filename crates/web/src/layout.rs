//! The frame around every page.

use crate::{Reader, address, assets};
use maud::{DOCTYPE, Markup, html};

/// Which of the main places a page belongs to.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Here {
    /// What needs a person.
    Today,
    /// The register.
    Palms,
    /// Rounds: planned, under way, done.
    Rounds,
    /// Blades, the cutting log, the bath, the trace.
    Blades,
    /// Palms moved lately, and choosing among dug ones.
    Moved,
    /// Palms that want water.
    Watering,
    /// Palms that want feed.
    Feeding,
    /// Sites and crews.
    Sites,
    /// A summary for each owner.
    Owners,
    /// When to come back.
    Season,
    /// What ails palms.
    Disorders,
    /// What work takes and costs.
    Estimate,
    /// The price list and the keeper's own figures.
    Prices,
    /// Files in.
    Import,
    /// Where figures come from.
    Sources,
    /// Cautions.
    About,
    /// Language and units.
    Settings,
    /// None of them.
    Elsewhere,
}

const PLACES: [(Here, &str, &str); 17] = [
    (Here::Today, "/", "common-today"),
    (Here::Palms, "/palms", "common-palms"),
    (Here::Rounds, "/rounds", "common-rounds"),
    (Here::Blades, "/blades", "common-blades"),
    (Here::Disorders, "/disorders", "common-disorders"),
    (Here::Season, "/season", "common-season"),
    (Here::Moved, "/moved", "common-moved"),
    (Here::Watering, "/watering", "common-watering"),
    (Here::Feeding, "/feeding", "common-feeding"),
    (Here::Sites, "/sites", "common-sites"),
    (Here::Owners, "/owners", "common-owners"),
    (Here::Estimate, "/estimate", "common-estimate"),
    (Here::Prices, "/prices", "common-prices"),
    (Here::Import, "/import", "common-import"),
    (Here::Sources, "/sources", "common-sources"),
    (Here::About, "/about", "common-about"),
    (Here::Settings, "/settings", "common-settings"),
];

/// A whole page: head, bar, content, foot. `title` is plain text; it is set before the product's name.
pub fn page(reader: &Reader, here: Here, title: &str, content: Markup) -> Markup {
    html! {
        (DOCTYPE)
        html lang=(reader.words.lang().tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="theme-color" content="#183d24";
                title { (title) " · " (reader.say("product")) }
                link rel="stylesheet" href=(assets::address("spearleaf.css"));
                link rel="stylesheet" href=(assets::address("forms.css"));
                link rel="stylesheet" href=(assets::address("signs.css"));
                link rel="stylesheet" href=(assets::address("blades.css"));
                link rel="icon" type="image/svg+xml" href=(assets::address("leaf.svg"));
                script src=(assets::address("crown.js")) defer {}
                script src=(assets::address("forms.js")) defer {}
                script src=(assets::address("blades.js")) defer {}
            }
            body {
                a.skip href="#content" { (reader.say("common-skip")) }
                (bar(reader, here))
                main #content tabindex="-1" { (content) }
                (foot(reader, here))
            }
        }
    }
}

fn bar(reader: &Reader, here: Here) -> Markup {
    html! {
        header.bar {
            a.mark href="/" { (reader.say("product")) }
            nav aria-label=(reader.say("common-nav")) { (places(reader, here, &PLACES[..4])) }
            (speaking(reader))
        }
        @if reader.demo { aside.demo data-testid="demo" { (reader.say("common-demo")) } }
    }
}

/// How the page speaks now, and the way to change it and come back.
fn speaking(reader: &Reader) -> Markup {
    // the settings themselves are nowhere to come back to
    let from = if reader.at.starts_with("/settings") {
        ""
    } else {
        reader.at.as_str()
    };
    let back = address::with_query("/settings", &[("back", from)]);
    let units = format!("common-units-{}-short", reader.measure.units.key());
    html! {
        a.speaking href=(back) data-testid="settings" {
            span.sr { (reader.say("common-settings")) ": " }
            (reader.words.lang().tag().to_uppercase()) " · " (reader.say(&units))
        }
    }
}

fn foot(reader: &Reader, here: Here) -> Markup {
    html! {
        footer {
            p { (reader.say("common-closing")) }
            nav aria-label=(reader.say("common-more")) { (places(reader, here, &PLACES[4..])) }
        }
    }
}

fn places(reader: &Reader, here: Here, places: &[(Here, &str, &str)]) -> Markup {
    html! {
        @for (place, href, label) in places {
            a href=(href) aria-current=[(*place == here).then_some("page")] { (reader.say(label)) }
        }
    }
}
