//! The owner's summary over all palms of an owner or site: what `desk::views::owner_summary` tells, on paper.

use crate::leaf::{Frame, Leaf};
use crate::owner::{Item, Key, items, legend};
use crate::press::{self, Template};
use crate::refs::{Refs, Work};
use crate::{Error, Pdf};
use desk::views::Speaker;
use desk::views::owner_summary::{DoneRow, PalmCard, SummaryView};
use serde::Serialize;

/// The summary on paper, black and white will do.
pub fn owner_summary(leaf: &Leaf, view: &SummaryView) -> Result<Pdf, Error> {
    press::print(TEMPLATE, &sheet(leaf, view), leaf.day)
}

const TEMPLATE: Template = Template {
    name: "summary.typ",
    text: include_str!("../sheets/summary.typ"),
};

/// The sheet with all words chosen, as the template reads it.
#[derive(Serialize)]
struct Sheet {
    frame: Frame,
    sites: String,
    period: String,
    as_of: String,
    counts: Vec<Count>,
    count_notes: Vec<String>,
    palms: Palms,
    call: Call,
    done: Table,
    next: Table,
    mind: Mind,
    sources: String,
    works: Vec<Work>,
    closing: String,
}

#[derive(Serialize)]
struct Count {
    figure: String,
    what: String,
    /// Somebody has to see to it: framed.
    strong: bool,
}

#[derive(Serialize)]
struct Palms {
    title: String,
    none: String,
    note: String,
    legend: Vec<Key>,
    cards: Vec<Card>,
    also: String,
    lines: Vec<Line>,
    more: Option<String>,
    others_title: String,
    others: Vec<String>,
}

#[derive(Serialize)]
struct Card {
    tag: String,
    about: Vec<String>,
    stand: String,
    /// Somebody has to see to it: white on black.
    strong: bool,
    svg: String,
    says: String,
    points: Vec<Item>,
}

#[derive(Serialize)]
struct Line {
    tag: String,
    text: String,
}

#[derive(Serialize)]
struct Call {
    title: String,
    at_once: String,
    whom: String,
}

#[derive(Serialize)]
struct Table {
    title: String,
    none: String,
    heads: Vec<String>,
    rows: Vec<Vec<Cell>>,
    notes: Vec<String>,
}

#[derive(Serialize)]
struct Cell {
    text: String,
    strong: bool,
}

#[derive(Serialize)]
struct Mind {
    title: String,
    items: Vec<Item>,
    level: String,
}

fn sheet(leaf: &Leaf, view: &SummaryView) -> Sheet {
    let mut refs = Refs::default();
    let counts = view.counts.iter().map(|count| Count {
        figure: count.figure.clone(),
        what: count.what.clone(),
        strong: matches!(count.key, "held" | "call") && count.n > 0,
    });
    Sheet {
        frame: leaf.frame(&view.title),
        sites: view.sites.clone(),
        period: view.period.clone(),
        as_of: view.as_of.clone(),
        counts: counts.collect(),
        count_notes: view.count_notes.clone(),
        palms: palms(leaf, view, &mut refs),
        call: Call {
            title: leaf.say("owner-call-title"),
            at_once: view.call_at_once.clone(),
            whom: leaf.say("owner-call-whom"),
        },
        done: done(leaf, view),
        next: next(leaf, view),
        mind: Mind {
            title: leaf.say("summary-mind-title"),
            items: items(&mut refs, &view.mind),
            level: view.level.clone(),
        },
        sources: leaf.say("sheet-sources"),
        works: refs.works(&Speaker::new(leaf.measure)),
        closing: leaf.say("common-closing"),
    }
}

fn palms(leaf: &Leaf, view: &SummaryView, refs: &mut Refs) -> Palms {
    // the site need not be said where there is one only
    let sites = view
        .cards
        .iter()
        .any(|card| card.site != view.cards[0].site);
    let mut card = |own: &PalmCard| Card {
        tag: own.tag.clone(),
        about: [&own.species, &own.site]
            .into_iter()
            .take(if sites { 2 } else { 1 })
            .filter(|text| !text.is_empty())
            .cloned()
            .collect(),
        stand: own.stand.clone(),
        strong: matches!(own.key, "call" | "held"),
        svg: own.svg.clone(),
        says: own.says.clone(),
        points: items(refs, &own.points),
    };
    let line = |line: &desk::views::owner_summary::PalmLine| Line {
        tag: line.tag.clone(),
        text: line.text.clone(),
    };
    Palms {
        title: leaf.say("summary-palms-title"),
        none: leaf.say("summary-palms-none"),
        note: leaf.say("summary-palms-drawn"),
        legend: legend(leaf),
        cards: view.cards.iter().map(&mut card).collect(),
        also: leaf.say("summary-also"),
        lines: view.lines.iter().map(line).collect(),
        more: view.more_palms.clone(),
        others_title: leaf.say("summary-others-title"),
        others: view.others.clone(),
    }
}

fn heads(leaf: &Leaf, codes: &[&str], sites: bool) -> Vec<String> {
    let own = codes.iter().filter(|code| sites || **code != "site");
    own.map(|code| leaf.say(&format!("summary-head-{code}")))
        .collect()
}

fn plain(text: &str) -> Cell {
    Cell {
        text: text.to_owned(),
        strong: false,
    }
}

fn done(leaf: &Leaf, view: &SummaryView) -> Table {
    // a column of sites only where the summary is about several
    let sites = view.sites_differ();
    let row = |own: &DoneRow| {
        let mut cells = vec![plain(&own.date)];
        if sites {
            cells.push(plain(&own.site));
        }
        cells.extend([
            plain(&own.palms),
            plain(&own.what),
            plain(&own.crew),
            Cell {
                text: own.blades.clone(),
                strong: own.dirty,
            },
        ]);
        cells
    };
    Table {
        title: leaf.say("owner-done-title"),
        none: leaf.say("summary-done-none"),
        heads: heads(
            leaf,
            &["day", "site", "palms", "what", "crew", "blades"],
            sites,
        ),
        rows: view.done.iter().map(row).collect(),
        notes: view.done_notes.clone(),
    }
}

fn next(leaf: &Leaf, view: &SummaryView) -> Table {
    let sites = view.sites_differ();
    let rows = view.next.iter().map(|own| {
        let mut cells = vec![plain(&own.date)];
        if sites {
            cells.push(plain(&own.site));
        }
        cells.extend([plain(&own.kind_words), plain(&own.what)]);
        cells
    });
    let mut heads = heads(leaf, &["day", "site", "what"], sites);
    heads.push(leaf.say("summary-head-palms"));
    Table {
        title: leaf.say("owner-next-title"),
        none: leaf.say("summary-next-none"),
        heads,
        rows: rows.collect(),
        notes: view.next_notes.clone(),
    }
}
