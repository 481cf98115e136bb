//! Water for the owner: when next, how much, how often, and how that thins out as roots grow.

use super::{Part, Point, Scene};
use crate::watering;
use care::watering::{Due, Missing, Plan, Rhythm, Step};
use model::Day;

/// The part of the sheet.
pub(super) fn part(scene: &Scene) -> Part {
    let watered = watering::of(scene.office, scene.record);
    watered
        .map(|own| told(scene, &own.plan))
        .unwrap_or_default()
}

fn told(scene: &Scene, plan: &Plan) -> Part {
    let speaker = scene.speaker;
    let mut lead = vec![match scene.under_way() {
        Some(_) => speaker.say("owner-water-moved"),
        None => speaker.say("owner-water-settled"),
    }];
    lead.extend(due(scene, plan));
    let rows: Vec<Vec<String>> = plan.taper.iter().map(|step| row(scene, step)).collect();
    let heads = ["from", "often", "each"].map(|c| speaker.say(&format!("owner-water-head-{c}")));
    let mut points = Vec::new();
    if plan.taper.iter().any(|step| step.rhythm.short) {
        points.push(Point::own(speaker.say("owner-water-short")));
    }
    points.extend(
        ["owner-water-feel", "owner-water-slow", "owner-water-rain"]
            .map(|code| Point::own(speaker.say(code))),
    );
    let unknown: Vec<String> = plan
        .missing
        .iter()
        .filter_map(|m| missing(scene, m))
        .collect();
    if !unknown.is_empty() && !rows.is_empty() {
        let what = [("what", unknown.join(", ").into())];
        points.push(Point::own(speaker.text("owner-water-unknown", &what)));
    }
    points.push(Point::own(speaker.say("owner-water-rules")));
    Part {
        lead,
        heads: heads.to_vec(),
        rows,
        points,
    }
}

/// When water is due. Of a settled palm that nobody waters nothing is said: it may live on rain.
fn due(scene: &Scene, plan: &Plan) -> Option<String> {
    let speaker = scene.speaker;
    let date = |day: Day| ("date", speaker.measure.date(day).into());
    match plan.due {
        Due::Unknown => Some(speaker.say("owner-water-cannot-tell")),
        Due::NothingNoted if scene.under_way().is_none() => None,
        Due::NothingNoted => Some(speaker.say("owner-water-nothing-noted")),
        Due::Since { day, litres } => {
            let litres = ("litres", speaker.measure.litres(litres).into());
            Some(speaker.text("owner-water-due", &[date(day), litres]))
        }
        Due::Next(Some(day)) => Some(speaker.text("owner-water-next", &[date(day)])),
        Due::Next(None) => Some(speaker.say("owner-water-later")),
    }
}

fn row(scene: &Scene, step: &Step) -> Vec<String> {
    let m = &scene.speaker.measure;
    vec![
        m.date(step.day),
        often(scene, &step.rhythm),
        m.litres(step.rhythm.litres_each),
    ]
}

fn often(scene: &Scene, rhythm: &Rhythm) -> String {
    let args = [
        ("n", i64::from(rhythm.every_days).into()),
        ("goes", i64::from(rhythm.goes).into()),
    ];
    let code = match (rhythm.every_days, rhythm.goes) {
        (1, 1) => "owner-water-daily",
        (1, _) => "owner-water-times",
        _ => "owner-water-every",
    };
    scene.speaker.text(code, &args)
}

fn missing(scene: &Scene, missing: &Missing) -> Option<String> {
    let code = match missing {
        Missing::Soil | Missing::SoilOfBall => "soil",
        Missing::Ball => "ball",
        Missing::Crown => "crown",
        Missing::Counts => "counts",
        Missing::Place => "place",
        Missing::Weather(_) => "weather",
        Missing::Amounts(_) => return None,
    };
    Some(scene.say(&format!("owner-water-unknown-{code}")))
}
