//! What to expect of each stem, when to call, and what is urgent already.

use super::drawn::{self, CrownPicture};
use super::{Point, Scene};
use crate::moved::promise_weeks;
use crate::views::case::StemToday;
use crate::views::history::hold_reason;
use crate::views::loss;
use crate::views::said::Speaker;
use care::moving::{promise, tripped};
use crown::ExpectedLoss;
use model::{Day, Finding, Inspection, PalmRecord, Spear};

/// Days ahead of the longer outlook: 26 weeks.
const LONGER_DAYS: i32 = 182;

/// A stem, drawn and told.
#[derive(Clone, PartialEq, Debug)]
pub struct StemView {
    /// Its name; nothing for a palm with one stem.
    pub name: Option<String>,
    /// Its crown now and as forecast.
    pub pictures: Vec<CrownPicture>,
    /// What to expect in eight weeks.
    pub expect: String,
    /// What to expect in half a year.
    pub later: String,
    /// From which count on to call.
    pub call: String,
}

/// A stem's part of the sheet.
pub(super) fn stem(scene: &Scene, stem: &StemToday) -> StemView {
    let own = promise(stem.reading());
    let far = stem
        .reading()
        .expected_loss(stem.reading().as_of.plus(LONGER_DAYS));
    let seen = counts_for(scene, stem).next().is_some();
    let several = scene.stems.len() > 1;
    let n = [("n", i64::from(stem.case().stem).into())];
    StemView {
        name: several.then(|| scene.speaker.text("palm-stem", &n)),
        pictures: drawn::pictures(scene, stem),
        expect: told(
            scene,
            if seen {
                "moved-promise"
            } else {
                "owner-unseen"
            },
            &own,
        ),
        later: told(scene, "owner-later", &far),
        call: told(scene, "moved-call", &own),
    }
}

/// Looks that speak of how it is now: for a palm on its way those since its move.
fn counts_for<'s>(
    scene: &'s Scene,
    stem: &'s StemToday,
) -> impl Iterator<Item = &'s Inspection> + use<'s> {
    let from = scene.under_way().map(|m| m.moved_on);
    let looks = stem.looks().iter();
    looks.filter(move |look| {
        look.date <= stem.today() && from.is_none_or(|moved_on| look.date >= moved_on)
    })
}

fn told(scene: &Scene, code: &str, own: &ExpectedLoss) -> String {
    let m = &scene.speaker.measure;
    let args = [
        (
            "range",
            m.counts(f64::from(own.low), f64::from(own.high)).into(),
        ),
        ("high", i64::from(own.high).into()),
        ("over", i64::from(own.call_from.saturating_sub(1)).into()),
        ("since", m.date(own.since).into()),
        ("by", m.date(own.by).into()),
    ];
    scene.speaker.text(code, &args)
}

/// What the promise rests on.
pub(super) fn rests_on(scene: &Scene, urgent: &[Point]) -> String {
    let code = match scene.under_way() {
        // the promise is an ordinary palm's; the pictures go by what was counted on this one
        _ if !urgent.is_empty() => "owner-rests-on-urgent",
        Some(_) => "owner-rests-on-moved",
        None => "owner-rests-on",
    };
    scene
        .speaker
        .text(code, &[("weeks", promise_weeks().into())])
}

/// How it stands in a word or two.
pub(super) fn stand(scene: &Scene, urgent: &[Point]) -> (&'static str, String) {
    let key = match (urgent.is_empty(), scene.under_way()) {
        (false, _) => "urgent",
        (true, Some(_)) => "on-its-way",
        (true, None) if scene.moved.is_some() => "established",
        (true, None) => "settled",
    };
    (key, scene.say(&format!("owner-stand-{key}")))
}

/// What needs a person now: holds, a spear that is not firm, more lost than ordinary.
pub(super) fn urgent(scene: &Scene) -> Vec<Point> {
    let mut points: Vec<Point> = holds(scene);
    for stem in &scene.stems {
        let name = match scene.stems.len() {
            1 => String::new(),
            _ => {
                let n = [("n", i64::from(stem.case().stem).into())];
                format!("{}: ", scene.speaker.text("palm-stem", &n))
            }
        };
        let looks: Vec<Inspection> = counts_for(scene, stem).cloned().collect();
        if let Some(words) = spear(scene, &looks) {
            points.push(Point::own(format!("{name}{words}")));
        }
        let lost = tripped(stem.reading(), &looks);
        if lost.iter().any(|f| f.code == "moved-tripped-loss") {
            let words = loss::view(scene.speaker, stem.reading()).verdict;
            points.push(Point::own(format!("{name}{words}")));
        }
    }
    points
}

fn holds(scene: &Scene) -> Vec<Point> {
    let today = scene.office.today();
    held(scene.speaker, scene.record, &scene.standing.holds, today)
}

/// Why nobody cuts a palm. A hold that a person set says its reason and not the keeper's own words; what the signs ask
/// for says itself.
pub(in crate::views) fn held(
    speaker: &Speaker,
    record: &PalmRecord,
    computed: &[Finding],
    today: Day,
) -> Vec<Point> {
    let set: Vec<Point> = record
        .holds_on(today)
        .map(|hold| {
            let reason = [("reason", hold_reason(speaker, &hold.reason).into())];
            Point::own(speaker.text("owner-held", &reason))
        })
        .collect();
    if !set.is_empty() {
        return set;
    }
    let computed = speaker.findings(computed);
    computed
        .iter()
        .map(|said| Point::said(speaker, said))
        .collect()
}

fn spear(scene: &Scene, looks: &[Inspection]) -> Option<String> {
    let (spear, on) = looks
        .iter()
        .rev()
        .find_map(|look| Some((look.spear?, look.date)))?;
    let code = match spear {
        Spear::Firm => return None,
        Spear::Leaning => "owner-spear-leaning",
        Spear::Down => "owner-spear-down",
        Spear::Pulled => "owner-spear-pulled",
    };
    let on = [("on", scene.speaker.measure.date(on).into())];
    Some(scene.speaker.text(code, &on))
}
