//! How each palm stands: those that need the owner's attention, drawn; the others, counted.

use super::Scene;
use crate::judging;
use crate::moved::{self, Moved, RECENT_DAYS};
use crate::views::case::StemToday;
use crate::views::drawing::{Look, draw, svg};
use crate::views::needs;
use crate::views::owner::{Point, held};
use crate::views::standing::{Standing, Standings};
use crate::watering;
use care::moving::promise;
use care::watering::Due;
use crown::{Cut, PalmReading};
use model::{Finding, PalmRecord};
use rayon::prelude::*;
use std::sync::Arc;

/// Palms that are drawn.
pub const MOST_DRAWN: usize = 6;
/// More palms that are named with a line each.
pub const MOST_NAMED: usize = 8;

/// What about a palm is worth a call, beside a hold.
const CALL: [&str; 5] = [
    "need-spear-pulled",
    "need-spear-down",
    "need-spear-leaning",
    "need-tripwire",
    "need-decline",
];
/// Needs of which the keeper takes care without the owner.
const KEEPERS: [&str; 3] = ["need-overdue", "need-look", "need-species"];
/// Rank of a moved palm that needs nothing else, behind all needs of the owner.
const MOVED_RANK: u8 = 60;

/// A palm that needs the owner's attention, drawn.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmCard {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// `call`, `held`, `care`, `moved`.
    pub key: &'static str,
    /// The same in words.
    pub stand: String,
    /// Its crown today: an SVG picture.
    pub svg: String,
    /// The same for who cannot see it.
    pub says: String,
    /// What there is to know and to do, the most pressing first.
    pub points: Vec<Point>,
}

/// A palm that needs attention and is not drawn.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmLine {
    /// Tag.
    pub tag: String,
    /// `call`, `held`, `care`, `moved`.
    pub key: &'static str,
    /// What comes first about it.
    pub text: String,
}

/// What is shown of the palms that need attention.
pub(super) struct Drawn {
    pub cards: Vec<PalmCard>,
    pub lines: Vec<PalmLine>,
    pub more: Option<String>,
}

/// Where a palm belongs in the summary.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
enum Bin {
    Attention,
    Late,
    Unseen,
    LongAgo,
    Unread,
    Fine,
}

/// A palm with what is known of it.
pub(super) struct Seen<'s> {
    pub record: &'s Arc<PalmRecord>,
    standing: Option<Arc<Standing>>,
    needs: Vec<Finding>,
    /// Its move, while it is on its way.
    pub moved: Option<Moved>,
    bin: Bin,
    rank: u8,
}

/// The palms, those that need attention first, the worst of them first.
pub(super) struct Sorted<'s> {
    pub all: Vec<Seen<'s>>,
}

impl Sorted<'_> {
    /// Palms that nobody may cut today.
    pub fn held(&self) -> usize {
        self.all.iter().filter(|seen| seen.held()).count()
    }

    /// Palms that somebody has to be called for.
    pub fn to_call(&self) -> usize {
        self.all.iter().filter(|seen| seen.call()).count()
    }

    fn attention(&self) -> impl Iterator<Item = &Seen<'_>> {
        self.all.iter().filter(|seen| seen.bin == Bin::Attention)
    }

    fn of(&self, bin: Bin) -> usize {
        self.all.iter().filter(|seen| seen.bin == bin).count()
    }
}

impl Seen<'_> {
    fn held(&self) -> bool {
        self.standing.as_ref().is_some_and(|s| !s.holds.is_empty())
    }

    fn call(&self) -> bool {
        let broken = self.moved.as_ref().is_some_and(|moved| {
            let mut stems = moved.stems.iter();
            stems.any(|stem| !stem.trips.is_empty())
        });
        broken || self.needs.iter().any(|need| CALL.contains(&need.code))
    }

    fn key(&self) -> &'static str {
        match (self.call(), self.held()) {
            (true, _) => "call",
            (_, true) => "held",
            _ if self.needs.is_empty() => "moved",
            _ => "care",
        }
    }

    /// The smaller, the sooner an owner has to do something.
    fn pressing(&self) -> u8 {
        match self.key() {
            "call" => 0,
            "held" => 1,
            "care" => 2,
            _ => 3,
        }
    }
}

/// Reads all palms that stand. Takes a while where they were not read today.
pub(super) fn sorted<'s>(
    scene: &Scene<'s>,
    standings: &Standings,
    standing: &[&'s Arc<PalmRecord>],
) -> Sorted<'s> {
    let mut all: Vec<Seen> = standing
        .par_iter()
        .map(|record| see(scene, standings, record))
        .collect();
    all.sort_by(|a, b| {
        let own = |seen: &Seen| (seen.bin != Bin::Attention, seen.pressing(), seen.rank);
        (own(a), &a.record.palm.tag).cmp(&(own(b), &b.record.palm.tag))
    });
    Sorted { all }
}

fn see<'s>(scene: &Scene<'s>, standings: &Standings, record: &'s Arc<PalmRecord>) -> Seen<'s> {
    let standing = standings.get(scene.office, record);
    let moved = on_its_way(scene, record);
    let found = needs::of(scene.office, record, standing.as_deref());
    let has = |code: &str| found.iter().any(|need| need.finding.code == code);
    let own = found.iter().filter(|need| {
        let code = need.finding.code;
        // a palm on its way is looked at by its calendar, a settled one nobody has seen is counted
        !KEEPERS.contains(&code) && (moved.is_none() || code != "need-look-moved")
    });
    let own: Vec<&needs::Need> = own
        .filter(|need| need.finding.code != "need-first-look")
        .collect();
    let bin = match () {
        () if !own.is_empty() || moved.is_some() => Bin::Attention,
        () if standing.is_none() => Bin::Unread,
        () if has("need-first-look") => Bin::Unseen,
        () if has("need-overdue") => Bin::Late,
        () if has("need-look") => Bin::LongAgo,
        () => Bin::Fine,
    };
    Seen {
        rank: own.first().map_or(MOVED_RANK, |need| need.rank),
        needs: own.iter().map(|need| need.finding.clone()).collect(),
        record,
        standing,
        moved,
        bin,
    }
}

fn on_its_way(scene: &Scene, record: &Arc<PalmRecord>) -> Option<Moved> {
    let days = scene.today.since(record.palm.moved_on?);
    let moved = (0..=RECENT_DAYS)
        .contains(&days)
        .then(|| moved::of(scene.office, record))??;
    (!moved.established()).then_some(moved)
}

/// The first of those that need attention as pictures, the next as lines, the rest counted.
pub(super) fn drawn(scene: &Scene, palms: &Sorted) -> Drawn {
    let cards: Vec<PalmCard> = palms
        .attention()
        .take(MOST_DRAWN)
        .filter_map(|seen| card(scene, seen))
        .collect();
    let lines: Vec<PalmLine> = palms
        .attention()
        .skip(MOST_DRAWN)
        .take(MOST_NAMED)
        .map(|seen| PalmLine {
            tag: seen.record.palm.tag.clone(),
            key: seen.key(),
            text: points(scene, seen)
                .into_iter()
                .next()
                .map(|point| point.text)
                .unwrap_or_default(),
        })
        .collect();
    let more = palms.attention().count();
    let more = more.saturating_sub(MOST_DRAWN + MOST_NAMED);
    Drawn {
        cards,
        lines,
        more: (more > 0).then(|| scene.n("summary-more-palms", more)),
    }
}

fn card(scene: &Scene, seen: &Seen) -> Option<PalmCard> {
    let record = seen.record;
    let reading = scene.office.reading(record.id)?;
    let (svg, says) = picture(scene, record, &reading)?;
    Some(PalmCard {
        tag: record.palm.tag.clone(),
        species: record.palm.species.clone(),
        site: record.palm.site.clone(),
        key: seen.key(),
        stand: scene.say(&format!("summary-stand-{}", seen.key())),
        svg,
        says,
        points: points(scene, seen),
    })
}

/// The crown today, of several stems the one that stands worst.
fn picture(scene: &Scene, record: &PalmRecord, reading: &PalmReading) -> Option<(String, String)> {
    let judged = judging::in_brief(scene.office, record, reading);
    let odd = |stem: &StemToday| {
        let loss = stem.reading().loss();
        loss.and_then(|l| l.tail_probability).unwrap_or(1.0)
    };
    let stem = StemToday::each(scene.office, record, reading, &judged)
        .min_by(|a, b| odd(a).total_cmp(&odd(b)))?;
    let spear = stem.looks().iter().rev().find_map(|look| look.spear);
    let look = Look::of(stem.species(), record.palm.trunk_height, spear);
    let drawing = draw(&look, &[&stem.reading().picture(Cut::NONE, stem.today())]);
    let crown = drawing.crowns.first()?;
    let [green, yellowing, brown] = crown.counts.map(|n| n as i64);
    let counts = [
        ("green", green.into()),
        ("yellowing", yellowing.into()),
        ("brown", brown.into()),
    ];
    let tag = [("tag", record.palm.tag.clone().into())];
    let says = format!(
        "{}. {}",
        scene.speaker.text("crown-title", &tag),
        scene.speaker.text("crown-counts", &counts)
    );
    // ids of the pictures of one page must differ, whatever stands in a tag
    let name = format!("p{}", record.id.0.simple());
    Some((svg(&drawing, crown, &name, &says), says))
}

/// What there is to know of a palm, the most pressing first.
fn points(scene: &Scene, seen: &Seen) -> Vec<Point> {
    let speaker = scene.speaker;
    let mut points = Vec::new();
    // what keeps everybody from cutting says itself; the keeper's list names it once more in short
    let is_hold = |code: &str| !matches!(code, "need-decline" | "need-hunger" | "need-look-moved");
    if let Some(standing) = &seen.standing {
        points.extend(held(speaker, seen.record, &standing.holds, scene.today));
    }
    // the words that end every sheet are not said with each palm
    let closing = scene.say("common-closing");
    for point in &mut points {
        if let Some(words) = point.text.strip_suffix(closing.as_str()) {
            point.text = words.trim_end().to_owned();
        }
    }
    let held = !points.is_empty();
    for need in &seen.needs {
        if need.code == "need-tripwire" {
            let args: Vec<_> = need
                .args
                .iter()
                .map(|(name, arg)| (*name, speaker.measure.arg(arg)))
                .collect();
            points.push(Point::own(speaker.text("summary-lost", &args)));
        } else if !(held && is_hold(need.code)) {
            points.push(Point::own(speaker.measure.finding(need)));
        }
    }
    if let Some(moved) = &seen.moved {
        // who calls is told when to look again
        if !seen.call() {
            let next = crate::views::moved::next_look(speaker, moved);
            points.push(Point::own(format!("{next}.")));
        }
        points.extend(water(scene, seen.record));
    }
    // where somebody is to be called already there is nothing to wait for
    let reading = scene.office.reading(seen.record.id);
    if let Some(reading) = reading.as_ref().filter(|_| !seen.call()) {
        points.extend(tripwire(scene, reading));
    }
    points
}

/// How many more until somebody must be called, at the stem where that is the fewest.
fn tripwire(scene: &Scene, reading: &PalmReading) -> Option<Point> {
    let own = reading
        .stems
        .iter()
        .map(|(_, reading)| promise(reading))
        .min_by_key(|own| own.call_from)?;
    let several = reading.stems.len() > 1;
    let args = [
        ("over", i64::from(own.call_from.saturating_sub(1)).into()),
        ("since", scene.date(own.since).into()),
        ("by", scene.date(own.by).into()),
        ("stems", i64::from(several).into()),
    ];
    Some(Point::own(scene.speaker.text("summary-tripwire", &args)))
}

/// When a moved palm wants water.
fn water(scene: &Scene, record: &Arc<PalmRecord>) -> Option<Point> {
    let watered = watering::of(scene.office, record)?;
    let date = |day| ("date", scene.date(day).into());
    let said = match watered.plan.due {
        Due::Unknown => scene.say("summary-water-unknown"),
        Due::NothingNoted => scene.say("summary-water-nothing-noted"),
        Due::Since { day, litres } => {
            let litres = ("litres", scene.speaker.measure.litres(litres).into());
            scene
                .speaker
                .text("summary-water-due", &[date(day), litres])
        }
        Due::Next(Some(day)) => scene.speaker.text("summary-water-next", &[date(day)]),
        Due::Next(None) => return None,
    };
    Some(Point::own(said))
}

/// All other palms, counted: as they should be, waiting, not seen.
pub(super) fn others(scene: &Scene, palms: &Sorted) -> Vec<String> {
    if palms.all.is_empty() {
        return vec![scene.say("summary-no-palms")];
    }
    let mut said = vec![scene.n("summary-fine", palms.of(Bin::Fine))];
    let rest = [
        (Bin::Late, "summary-late"),
        (Bin::Unseen, "summary-unseen"),
        (Bin::LongAgo, "summary-long-ago"),
        (Bin::Unread, "summary-unread"),
    ];
    for (bin, code) in rest {
        let n = palms.of(bin);
        if n > 0 {
            said.push(scene.n(code, n));
        }
    }
    said
}
