//! What was done, by day and site.

use super::Scene;
use super::work::{Blade, Kind, Off, Work};
use crate::views::owner::cut_parts;
use crate::views::season::site_name;
use model::{Day, PalmId};
use std::collections::{BTreeMap, BTreeSet};

/// Rows of the list; what is older is counted.
pub const MOST_DONE: usize = 8;

/// One day's work of one kind at one site.
#[derive(Clone, PartialEq, Debug)]
pub struct DoneRow {
    /// Kind: `cut`, `moved`, `fed`.
    pub kind: &'static str,
    /// The day in words.
    pub date: String,
    /// Site in words.
    pub site: String,
    /// How many palms, in words.
    pub palms: String,
    /// What was done and what came off.
    pub what: String,
    /// Who did it.
    pub crew: String,
    /// Whether the blades were clean; empty where nothing was cut.
    pub blades: String,
    /// Whether a blade is known not to have been clean.
    pub dirty: bool,
}

type Key<'w> = (core::cmp::Reverse<Day>, &'w str, Kind);

/// The list, newest first, and what is beside it.
pub(super) fn of(scene: &Scene, works: &[Work]) -> (Vec<DoneRow>, Vec<String>) {
    let mut days: BTreeMap<Key, Vec<&Work>> = BTreeMap::new();
    for work in works {
        if matches!(work.kind, Kind::Cut | Kind::Moved | Kind::Fed) {
            let key = (core::cmp::Reverse(work.day), work.site.as_str(), work.kind);
            days.entry(key).or_default().push(work);
        }
    }
    let more: Vec<&Work> = days.values().skip(MOST_DONE).flatten().copied().collect();
    let rows = days.iter().take(MOST_DONE);
    let rows = rows.map(|(key, works)| row(scene, key, works)).collect();
    let mut notes: Vec<String> = earlier(scene, &more, days.len()).into_iter().collect();
    notes.extend(often(scene, works, Kind::Looked, "summary-done-looked"));
    notes.extend(often(scene, works, Kind::Watered, "summary-done-watered"));
    notes.push(scene.say("summary-no-money"));
    (rows, notes)
}

fn row(scene: &Scene, (day, site, kind): &Key, works: &[&Work]) -> DoneRow {
    let crews: BTreeSet<&str> = works
        .iter()
        .flat_map(|work| &work.crews)
        .map(String::as_str)
        .collect();
    let silent = *kind == Kind::Cut && works.iter().any(|work| work.crews.is_empty());
    let mut crew: Vec<String> = crews.into_iter().map(str::to_owned).collect();
    if silent || crew.is_empty() {
        crew.push(scene.say("summary-not-noted"));
    }
    DoneRow {
        kind: match kind {
            Kind::Moved => "moved",
            Kind::Fed => "fed",
            _ => "cut",
        },
        date: scene.date(day.0),
        site: site_name(scene.speaker, site),
        palms: scene.n("summary-palms", works.len()),
        what: what(scene, *kind, works),
        crew: crew.join(", "),
        blades: blades(scene, *kind, works),
        dirty: works.iter().any(|work| work.blade == Some(Blade::Dirty)),
    }
}

fn what(scene: &Scene, kind: Kind, works: &[&Work]) -> String {
    let off = Off::of(works.iter().copied());
    match kind {
        Kind::Fed => {
            let products: BTreeSet<&str> = works
                .iter()
                .flat_map(|work| &work.products)
                .map(|key| match scene.speaker.knowledge.product(key) {
                    Some(row) => scene.speaker.texts(&row.name),
                    None => key.as_str(),
                })
                .filter(|name| !name.is_empty())
                .collect();
            let products = Vec::from_iter(products).join(", ");
            match products.is_empty() {
                true => scene.say("summary-did-fed-unnamed"),
                false => scene
                    .speaker
                    .text("owner-done-fed", &[("product", products.into())]),
            }
        }
        Kind::Moved => match off.fronds() {
            0 => scene.say("owner-done-moved"),
            _ => parts(scene, &off, "summary-did-moved-off"),
        },
        _ => {
            let mut said = match off.parts == [0; 4] {
                true if off.uncounted > 0 => return scene.say("owner-cut-uncounted"),
                true => scene.say("summary-did-nothing-off"),
                false => parts(scene, &off, "owner-cut"),
            };
            if off.uncounted > 0 {
                said = format!("{said}; {}", scene.n("summary-uncounted", off.uncounted));
            }
            said
        }
    }
}

/// "Taken off: 2 yellowing, 12 brown, 3 stalks".
fn parts(scene: &Scene, off: &Off, code: &str) -> String {
    let what = [("what", cut_parts(scene.speaker, &off.parts).into())];
    scene.speaker.text(code, &what)
}

/// Whether the blades were clean: one word where it is the same for all palms, else how many of each.
fn blades(scene: &Scene, kind: Kind, works: &[&Work]) -> String {
    if kind != Kind::Cut {
        return String::new();
    }
    let mut counts: BTreeMap<Blade, usize> = BTreeMap::new();
    for work in works {
        *counts
            .entry(work.blade.unwrap_or(Blade::Unknown))
            .or_default() += 1;
    }
    let word = |blade: &Blade| {
        scene.say(match blade {
            Blade::Clean => "summary-blade-clean",
            Blade::Unknown => "summary-blade-unknown",
            Blade::NotNoted => "summary-blade-not-noted",
            Blade::Dirty => "summary-blade-dirty",
        })
    };
    let one = counts.len() == 1;
    let said = counts.iter().rev().map(|(blade, n)| match one {
        true => word(blade),
        false => {
            let args = [("n", (*n as i64).into()), ("what", word(blade).into())];
            scene.speaker.text("summary-blade-at", &args)
        }
    });
    said.collect::<Vec<_>>().join("; ")
}

/// What is older than the rows shown.
fn earlier(scene: &Scene, works: &[&Work], rows: usize) -> Option<String> {
    let more = rows.checked_sub(MOST_DONE).filter(|n| *n > 0)?;
    let off = Off::of(works.iter().copied());
    let args = [
        ("n", (more as i64).into()),
        ("fronds", i64::from(off.fronds()).into()),
    ];
    Some(scene.speaker.text("summary-done-earlier", &args))
}

/// What was done too often to be listed: on how many days, for how many palms, when last.
fn often(scene: &Scene, works: &[Work], kind: Kind, code: &str) -> Option<String> {
    let own = || works.iter().filter(|work| work.kind == kind);
    let last = own().map(|work| work.day).max()?;
    let days: BTreeSet<Day> = own().map(|work| work.day).collect();
    let palms: BTreeSet<PalmId> = own().map(|work| work.palm).collect();
    let args = [
        ("palms", (palms.len() as i64).into()),
        ("days", (days.len() as i64).into()),
        ("last", scene.date(last).into()),
    ];
    Some(scene.speaker.text(code, &args))
}
