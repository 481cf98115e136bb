//! What was done: the move, cuts, water, feed, looks. Only what an owner is told: no names, no free words of the keeper.

use super::Scene;
use crate::clock::local_day;
use crate::moved::last_move;
use crate::views::Speaker;
use crate::views::history::counted_fronds;
use crate::views::moved::facts;
use model::{Day, Tending};
use std::collections::BTreeMap;

/// Days back that are told; a move is told whatever its day while the palm is on its way.
const BACK_DAYS: i32 = 365;
/// Days of cutting that are told one by one; the rest are counted.
const MOST_CUTS: usize = 8;

/// One thing that was done.
#[derive(Clone, PartialEq, Debug)]
pub struct Done {
    /// Kind: `moved`, `cut`, `watered`, `fed`, `looked`.
    pub kind: &'static str,
    /// The day in words.
    pub when: String,
    /// What it was.
    pub what: String,
    /// Particulars, name and value.
    pub facts: Vec<(String, String)>,
}

/// Since when the list runs.
pub(super) fn since(scene: &Scene) -> String {
    let from = scene.office.today().plus(-BACK_DAYS);
    let args = [("date", scene.speaker.measure.date(from).into())];
    scene.speaker.text("owner-done-since", &args)
}

/// The list, the newest first.
pub(super) fn of(scene: &Scene) -> Vec<Done> {
    let mut all: Vec<(Day, Done)> = moved(scene).into_iter().collect();
    all.extend(cuts(scene));
    all.extend(fed(scene));
    all.extend(watered(scene));
    all.extend(looked(scene));
    all.sort_by_key(|(day, _)| core::cmp::Reverse(*day));
    all.into_iter().map(|(_, done)| done).collect()
}

fn is_lately(scene: &Scene, day: Day) -> bool {
    (0..=BACK_DAYS).contains(&scene.office.today().since(day))
}

fn one(scene: &Scene, kind: &'static str, day: Day, what: String) -> (Day, Done) {
    let done = Done {
        kind,
        when: scene.speaker.measure.date(day),
        what,
        facts: Vec::new(),
    };
    (day, done)
}

/// The move with what was noted of it, the keeper's notes left out.
fn moved(scene: &Scene) -> Option<(Day, Done)> {
    let day = scene.moved.as_ref()?.moved_on;
    if scene.under_way().is_none() && !is_lately(scene, day) {
        return None;
    }
    let (day, mut done) = one(scene, "moved", day, scene.say("owner-done-moved"));
    if let Some(noted) = last_move(scene.record) {
        let mut told = noted.clone();
        told.notes.clear();
        done.facts = facts(scene.speaker, &told);
        // the day stands above
        let dug = scene.say("forms-dug_on");
        done.facts.retain(|(name, _)| *name != dug);
    }
    Some((day, done))
}

/// Fronds taken off by day, all stems: green, yellowing, brown, stalks. The log of cuts comes before what a look says.
fn taken(scene: &Scene) -> BTreeMap<Day, [u32; 4]> {
    let mut days: BTreeMap<Day, [u32; 4]> = BTreeMap::new();
    for cut in &scene.record.cuts {
        let off = &cut.cut.off;
        let own = days.entry(local_day(cut.at)).or_default();
        let parts = [off.green, off.yellowing, off.brown, off.stalks];
        for (sum, part) in own.iter_mut().zip(parts) {
            *sum += part.unwrap_or(0);
        }
    }
    let logged: Vec<Day> = days.keys().copied().collect();
    for look in &scene.record.inspections {
        if logged.contains(&look.date) {
            continue;
        }
        let off = &look.removed;
        let parts = [off.green, off.yellowing, off.brown].map(|part| part.unwrap_or(0));
        if parts.iter().sum::<u32>() > 0 {
            let own = days.entry(look.date).or_default();
            for (sum, part) in own.iter_mut().zip(parts) {
                *sum += part;
            }
        }
    }
    days.retain(|day, _| is_lately(scene, *day));
    days
}

/// "2 yellowing, 12 brown, 3 stalks": of green, yellowing and brown fronds and stalks those that came off.
pub fn cut_parts(speaker: &Speaker, off: &[u32; 4]) -> String {
    let codes = [
        "owner-cut-green",
        "owner-cut-yellowing",
        "owner-cut-brown",
        "owner-cut-stalks",
    ];
    let parts: Vec<String> = codes
        .iter()
        .zip(off)
        .filter(|(_, n)| **n > 0)
        .map(|(code, n)| speaker.text(code, &[("n", i64::from(*n).into())]))
        .collect();
    parts.join(", ")
}

fn cuts(scene: &Scene) -> Vec<(Day, Done)> {
    let speaker = scene.speaker;
    let taken = taken(scene);
    let earlier = taken.len().saturating_sub(MOST_CUTS);
    let words = |off: &[u32; 4]| match cut_parts(speaker, off) {
        parts if parts.is_empty() => speaker.say("owner-cut-uncounted"),
        parts => speaker.text("owner-cut", &[("what", parts.into())]),
    };
    let mut list: Vec<(Day, Done)> = taken
        .iter()
        .skip(earlier)
        .map(|(day, off)| one(scene, "cut", *day, words(off)))
        .collect();
    if let Some((day, _)) = taken.iter().nth(earlier.wrapping_sub(1)) {
        let n = [("n", (earlier as i64).into())];
        list.push(one(
            scene,
            "cut",
            *day,
            speaker.text("owner-cut-earlier", &n),
        ));
    }
    list
}

fn watered(scene: &Scene) -> Option<(Day, Done)> {
    let days: Vec<Day> = scene
        .record
        .tended
        .iter()
        .filter(|tended| matches!(tended.what, Tending::Watered(_)))
        .map(|tended| local_day(tended.at))
        .filter(|day| is_lately(scene, *day))
        .collect();
    let last = *days.iter().max()?;
    let n = [("n", (days.len() as i64).into())];
    let what = scene.speaker.text("owner-done-watered", &n);
    Some(one(scene, "watered", last, what))
}

fn fed(scene: &Scene) -> Vec<(Day, Done)> {
    let speaker = scene.speaker;
    let feedings = scene.record.tended.iter();
    feedings
        .filter_map(|tended| match &tended.what {
            Tending::Fed(fed) => Some((local_day(tended.at), fed)),
            _ => None,
        })
        .filter(|(day, _)| is_lately(scene, *day))
        .map(|(day, fed)| {
            let row = speaker.knowledge.product(&fed.product);
            let product = row.map_or(fed.product.as_str(), |row| speaker.texts(&row.name));
            let what = match fed.grams {
                Some(grams) => {
                    let args = [
                        ("product", product.to_owned().into()),
                        ("amount", speaker.measure.mass(grams / 1000.0).into()),
                    ];
                    speaker.text("owner-done-fed-amount", &args)
                }
                None => speaker.text("owner-done-fed", &[("product", product.to_owned().into())]),
            };
            one(scene, "fed", day, what)
        })
        .collect()
}

/// How often somebody looked, and the last count of every stem.
fn looked(scene: &Scene) -> Option<(Day, Done)> {
    let looks = &scene.record.inspections;
    let mut days: Vec<Day> = looks
        .iter()
        .map(|look| look.date)
        .filter(|day| is_lately(scene, *day))
        .collect();
    days.sort();
    days.dedup();
    let last = *days.last()?;
    let n = [("n", (days.len() as i64).into())];
    let (day, mut done) = one(
        scene,
        "looked",
        last,
        scene.speaker.text("owner-done-looked", &n),
    );
    let several = scene.stems.len() > 1;
    for look in looks.iter().filter(|look| look.date == last) {
        let name = match several {
            true => {
                let n = [("n", i64::from(look.stem).into())];
                scene.speaker.text("palm-stem", &n)
            }
            false => scene.say("owner-done-counted"),
        };
        let counts = counted_fronds(scene.speaker, look);
        if !counts.is_empty() {
            done.facts.push((name, counts));
        }
    }
    Some((day, done))
}
