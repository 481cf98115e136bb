//! The crew sheet of a round: the order of the day, a card for each palm that is cut, cautions, lines to fill in.

use crate::leaf::{Frame, Leaf};
use crate::press::{self, Template};
use crate::refs::{Refs, Work};
use crate::{Error, Pdf, qr};
use desk::views::Speaker;
use desk::views::rounds::{Card, CrewSheet, SheetRow, Warned};
use model::SourceKey;
use serde::Serialize;

/// Most cards in one file: a crew has no day for more, and no hand to hold them.
const MOST: usize = 150;

/// The sheet of a round. `base` is the address under which phones reach the program; without one there is no code to
/// scan. [`Error::Empty`] for a round without palms, [`Error::TooMany`] for one no crew does in a day.
pub fn crew_sheet(leaf: &Leaf, round: &CrewSheet, base: Option<&str>) -> Result<Pdf, Error> {
    if round.rows.is_empty() {
        return Err(Error::Empty);
    }
    if round.cards.len() > MOST {
        let found = round.cards.len();
        return Err(Error::TooMany { found, limit: MOST });
    }
    press::print(TEMPLATE, &sheet(leaf, round, base), leaf.day)
}

const TEMPLATE: Template = Template {
    name: "round.typ",
    text: include_str!("../sheets/round.typ"),
};

#[derive(Serialize)]
struct Sheet {
    frame: Frame,
    when: String,
    notes: Option<String>,
    code: Option<Code>,
    heads: Vec<String>,
    rows: Vec<Row>,
    clean: String,
    held: String,
    cards_title: String,
    cards: Vec<Drawn>,
    blanks: Vec<String>,
    cautions: Cautions,
    sources: String,
    works: Vec<Work>,
    closing: String,
}

#[derive(Serialize)]
struct Code {
    svg: String,
    address: String,
    words: String,
}

#[derive(Serialize)]
struct Row {
    n: usize,
    start: String,
    tag: String,
    species: String,
    /// The site, where it is another than that of the row before.
    site: Option<String>,
    tasks: String,
    clean: bool,
    held: bool,
}

#[derive(Serialize)]
struct Drawn {
    title: String,
    species: String,
    site: String,
    svg: String,
    says: String,
    take: Option<Named>,
    lines: Vec<Named>,
    holds: Vec<String>,
    clean: bool,
}

#[derive(Serialize)]
struct Named {
    name: String,
    value: String,
}

#[derive(Serialize)]
struct Cautions {
    title: String,
    items: Vec<Item>,
}

#[derive(Serialize)]
struct Item {
    text: String,
    /// The palms it is about; nothing where it is about all that are cut.
    tags: Option<String>,
    numbers: Vec<usize>,
    mark: Option<String>,
}

fn sheet(leaf: &Leaf, round: &CrewSheet, base: Option<&str>) -> Sheet {
    let speaker = Speaker::new(leaf.measure);
    let mut refs = Refs::default();
    let say = |codes: &[&str]| codes.iter().map(|code| leaf.say(code)).collect();
    let palms = round
        .rows
        .iter()
        .filter(|row| round.cards.iter().any(|card| card.tag == row.tag))
        .count();
    let items = round
        .cautions
        .iter()
        .map(|warned| item(&mut refs, warned, palms))
        .collect();
    Sheet {
        frame: leaf.frame(&round.title),
        when: round.when.clone(),
        notes: Some(round.notes.clone()).filter(|notes| !notes.is_empty()),
        code: base.and_then(|base| code(leaf, base, &round.path)),
        heads: say(&[
            "crew-sheet-n",
            "plan-time",
            "plan-palm",
            "plan-what",
            "crew-sheet-blade",
            "crew-sheet-done",
        ]),
        rows: rows(&round.rows),
        clean: leaf.say("crew-sheet-clean"),
        held: leaf.say("round-hold"),
        cards_title: leaf.say("crew-sheet-cards"),
        cards: round.cards.iter().map(|card| drawn(leaf, card)).collect(),
        blanks: say(&[
            "crew-sheet-from",
            "crew-sheet-to",
            "crew-sheet-blade",
            "crew-sheet-off",
            "crew-sheet-note",
        ]),
        cautions: Cautions {
            title: leaf.say("round-cautions"),
            items,
        },
        sources: leaf.say("sheet-sources"),
        works: refs.works(&speaker),
        closing: leaf.say("common-closing"),
    }
}

fn code(leaf: &Leaf, base: &str, path: &str) -> Option<Code> {
    let address = format!("{}{path}", base.trim_end_matches('/'));
    Some(Code {
        svg: qr::svg(&address)?,
        words: leaf.say("crew-sheet-scan"),
        address,
    })
}

fn rows(rows: &[SheetRow]) -> Vec<Row> {
    let mut before: Option<&str> = None;
    let mut all = Vec::with_capacity(rows.len());
    for row in rows {
        all.push(Row {
            n: row.n,
            start: row.start.clone(),
            tag: row.tag.clone(),
            species: row.species.clone(),
            site: (before != Some(row.site.as_str())).then(|| row.site.clone()),
            tasks: row.tasks.clone(),
            clean: row.clean,
            held: row.held,
        });
        before = Some(&row.site);
    }
    all
}

fn drawn(leaf: &Leaf, card: &Card) -> Drawn {
    let named = |name: &str, value: &str| Named {
        name: leaf.say(name),
        value: value.to_owned(),
    };
    let stem = card
        .stem
        .map(|stem| leaf.text("crew-sheet-stem", &[("stem", i64::from(stem).into())]));
    let free = card.holds.is_empty();
    let how = card.how.iter().map(|line| Named {
        name: line.name.clone(),
        value: line.value.clone(),
    });
    let stay = named("cut-stay", &card.stay);
    Drawn {
        title: [Some(format!("{}. {}", card.n, card.tag)), stem]
            .into_iter()
            .flatten()
            .collect::<Vec<_>>()
            .join(", "),
        species: card.species.clone(),
        site: card.site.clone(),
        svg: card.svg.clone(),
        says: card.says.clone(),
        take: free.then(|| named("cut-take", &card.take)),
        lines: if free {
            std::iter::once(stay).chain(how).collect()
        } else {
            Vec::new()
        },
        holds: card.holds.iter().map(|hold| hold.text.clone()).collect(),
        clean: card.clean,
    }
}

fn item(refs: &mut Refs, warned: &Warned, palms: usize) -> Item {
    let said = &warned.said;
    Item {
        text: said.text.clone(),
        tags: (warned.tags.len() < palms).then(|| warned.tags.join(", ")),
        numbers: refs.numbers(
            &said
                .sources
                .iter()
                .map(|cited| SourceKey::new(&cited.key))
                .collect::<Vec<_>>(),
        ),
        mark: said.basis.clone(),
    }
}

#[cfg(test)]
mod tests;
