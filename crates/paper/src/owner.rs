//! The owner's sheet: what `desk::views::owner` tells, on paper.

use crate::leaf::{Frame, Leaf};
use crate::press::{self, Template};
use crate::refs::{Refs, Work};
use crate::{Error, Pdf, qr};
use desk::views::Speaker;
use desk::views::drawing::LEGEND;
use desk::views::owner::{CrownPicture, Done, OwnerView, Part, Point, StemView};
use serde::Serialize;

/// The sheet of one palm. `link` is the address of the owner's page, printed with a code to scan where it is known.
pub fn owner_sheet(leaf: &Leaf, view: &OwnerView, link: Option<&str>) -> Result<Pdf, Error> {
    press::print(TEMPLATE, &sheet(leaf, view, link), leaf.day)
}

const TEMPLATE: Template = Template {
    name: "owner.typ",
    text: include_str!("../sheets/owner.typ"),
};

/// The sheet with all words chosen, as the template reads it.
#[derive(Serialize)]
struct Sheet {
    frame: Frame,
    /// Species, trade name, site.
    about: Vec<String>,
    as_of: String,
    stand: String,
    urgent: Titled,
    crown: Crown,
    expect: Expect,
    next: Plain,
    done: DoneList,
    water: Tabled,
    feed: Tabled,
    never: Titled,
    level: String,
    usual: Titled,
    cautions: Titled,
    link: Option<Link>,
    sources: String,
    works: Vec<Work>,
    closing: String,
}

/// A point with the numbers of its sources.
#[derive(Serialize)]
pub(crate) struct Item {
    text: String,
    numbers: Vec<usize>,
    mark: Option<String>,
}

/// Points as a template reads them.
pub(crate) fn items(refs: &mut Refs, points: &[Point]) -> Vec<Item> {
    let item = |point: &Point| Item {
        text: point.text.clone(),
        numbers: refs.numbers(&point.sources),
        mark: point.mark.clone(),
    };
    points.iter().map(item).collect()
}

/// A title with points below it; none: nothing is printed.
#[derive(Serialize)]
struct Titled {
    title: String,
    items: Vec<Item>,
}

#[derive(Serialize)]
struct Plain {
    title: String,
    lines: Vec<String>,
}

#[derive(Serialize)]
struct Crown {
    title: String,
    note: String,
    legend: Vec<Key>,
    stems: Vec<Stem>,
    more: Option<String>,
}

/// A tone of the pictures and what it means.
#[derive(Serialize)]
pub(crate) struct Key {
    fill: &'static str,
    edge: &'static str,
    says: String,
}

/// What the tones of the pictures mean.
pub(crate) fn legend(leaf: &Leaf) -> Vec<Key> {
    let names = ["owner-key-green", "owner-key-yellowing", "owner-key-brown"];
    let key = |((fill, edge), code): (&(&'static str, &'static str), &str)| Key {
        fill,
        edge,
        says: leaf.say(code),
    };
    LEGEND.iter().zip(names).map(key).collect()
}

#[derive(Serialize)]
struct Stem {
    name: Option<String>,
    pictures: Vec<Picture>,
}

#[derive(Serialize)]
struct Picture {
    when: String,
    counts: String,
    range: String,
    svg: String,
    alt: String,
}

#[derive(Serialize)]
struct Expect {
    title: String,
    stems: Vec<Told>,
    rests_on: String,
    call_title: String,
    at_once: String,
    whom: String,
}

#[derive(Serialize)]
struct Told {
    name: Option<String>,
    expect: String,
    later: String,
    call: String,
}

#[derive(Serialize)]
struct DoneList {
    title: String,
    since: String,
    none: String,
    rows: Vec<DoneRow>,
}

#[derive(Serialize)]
struct DoneRow {
    when: String,
    what: String,
    facts: Vec<(String, String)>,
}

#[derive(Serialize)]
struct Tabled {
    title: String,
    lead: Vec<String>,
    heads: Vec<String>,
    rows: Vec<Vec<String>>,
    items: Vec<Item>,
}

#[derive(Serialize)]
struct Link {
    says: String,
    address: String,
    code: Option<String>,
}

fn sheet(leaf: &Leaf, view: &OwnerView, link: Option<&str>) -> Sheet {
    let mut writer = Writer {
        leaf,
        refs: Refs::default(),
    };
    let about = [&view.species, &view.common, &view.site];
    Sheet {
        frame: leaf.frame(&view.title),
        about: about
            .into_iter()
            .filter(|text| !text.is_empty())
            .cloned()
            .collect(),
        as_of: view.as_of.clone(),
        stand: view.stand.1.clone(),
        urgent: writer.titled("owner-urgent-title", &view.urgent),
        crown: crown(leaf, view),
        expect: expect(leaf, view),
        next: Plain {
            title: leaf.say("owner-next-title"),
            lines: view.next.clone(),
        },
        done: done(leaf, view),
        water: writer.tabled("owner-water-title", &view.water),
        feed: writer.tabled("owner-feed-title", &view.feed),
        never: writer.titled("owner-never-title", &view.never),
        level: view.level.clone(),
        usual: writer.titled("owner-usual-title", &view.usual),
        cautions: writer.titled("owner-cautions-title", &view.cautions),
        link: link.map(|address| Link {
            says: leaf.say("owner-sheet-link"),
            address: address.to_owned(),
            code: qr::svg(address),
        }),
        sources: leaf.say("sheet-sources"),
        works: writer.refs.works(&Speaker::new(leaf.measure)),
        closing: leaf.say("common-closing"),
    }
}

fn crown(leaf: &Leaf, view: &OwnerView) -> Crown {
    let picture = |own: &CrownPicture| Picture {
        when: own.when.clone(),
        counts: own.counts_words.clone(),
        range: own.range.clone(),
        alt: format!("{}: {}", own.when, own.counts_words),
        svg: own.svg.clone(),
    };
    let stem = |own: &StemView| Stem {
        name: own.name.clone(),
        pictures: own.pictures.iter().map(picture).collect(),
    };
    Crown {
        title: leaf.say("owner-crown-title"),
        note: view.picture_note.clone(),
        legend: legend(leaf),
        stems: view.stems.iter().map(stem).collect(),
        more: view.more_stems.clone(),
    }
}

fn expect(leaf: &Leaf, view: &OwnerView) -> Expect {
    let told = |own: &StemView| Told {
        name: own.name.clone(),
        expect: own.expect.clone(),
        later: own.later.clone(),
        call: own.call.clone(),
    };
    Expect {
        title: leaf.say("owner-expect-title"),
        stems: view.stems.iter().map(told).collect(),
        rests_on: view.rests_on.clone(),
        call_title: leaf.say("owner-call-title"),
        at_once: view.call_at_once.clone(),
        whom: leaf.say("owner-call-whom"),
    }
}

fn done(leaf: &Leaf, view: &OwnerView) -> DoneList {
    let row = |own: &Done| DoneRow {
        when: own.when.clone(),
        what: own.what.clone(),
        facts: own.facts.clone(),
    };
    DoneList {
        title: leaf.say("owner-done-title"),
        since: view.done_since.clone(),
        none: leaf.say("owner-done-none"),
        rows: view.done.iter().map(row).collect(),
    }
}

struct Writer<'a> {
    leaf: &'a Leaf,
    refs: Refs,
}

impl Writer<'_> {
    fn titled(&mut self, title: &str, points: &[Point]) -> Titled {
        Titled {
            title: self.leaf.say(title),
            items: items(&mut self.refs, points),
        }
    }

    fn tabled(&mut self, title: &str, part: &Part) -> Tabled {
        Tabled {
            title: self.leaf.say(title),
            lead: part.lead.clone(),
            heads: part.heads.clone(),
            rows: part.rows.clone(),
            items: items(&mut self.refs, &part.points),
        }
    }
}

#[cfg(test)]
mod tests;
