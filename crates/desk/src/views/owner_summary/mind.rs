//! What the owner must mind: nobody else cuts, the level line, spikes, dirty blades, wires.

use super::Scene;
use crate::views::owner::{Point, dirty, rule};
use care::rules::wires_within::{distance, written};
use model::{PalmRecord, SourceKey};
use std::sync::Arc;

/// Rows of `pruning_rules.csv` that every owner is told, in the order told.
const RULES: [&str; 2] = ["horizontal_line_extension", "spikes_prohibited"];
/// Rows of `safety.csv` behind the words on wires.
const WIRES: [&str; 3] = ["line_min_50kv", "line_formula", "defer_all"];
/// Palms with wires near that are named.
const MOST_TAGS: usize = 8;

/// What to mind, in the order told.
pub(super) fn points(scene: &Scene, standing: &[&Arc<PalmRecord>]) -> Vec<Point> {
    let speaker = scene.speaker;
    let date_palm = standing
        .iter()
        .any(|record| record.palm.species.starts_with("Phoenix"));
    let mut points = vec![Point::own(speaker.say("owner-never-alone"))];
    points.extend(RULES.iter().filter_map(|key| rule(speaker, key)));
    points.push(dirty(speaker, date_palm));
    points.push(wires(scene));
    points.extend(lines_near(scene).map(Point::own));
    points.extend(wires_of_palms(scene, standing).into_iter().map(Point::own));
    points
}

fn wires(scene: &Scene) -> Point {
    let rows = WIRES
        .iter()
        .filter_map(|key| scene.speaker.knowledge.safety(key));
    let mut sources: Vec<SourceKey> = Vec::new();
    for key in rows.flat_map(|row| &row.sources) {
        if !sources.contains(key) {
            sources.push(key.clone());
        }
    }
    let keep = [("keep", written(distance(None)).into())];
    Point {
        text: scene.speaker.text("summary-wires", &keep),
        mark: None,
        sources,
    }
}

/// The line near a site, where the utility has told its voltage.
fn lines_near<'s>(scene: &'s Scene) -> impl Iterator<Item = String> + use<'s> {
    scene.sites.iter().filter_map(|name| {
        let kv = scene.state.work.sites.get(name)?.line_kv?;
        let args = [
            ("site", name.clone().into()),
            ("kv", scene.speaker.measure.number(kv, 1).into()),
            ("keep", written(distance(Some(kv))).into()),
        ];
        Some(scene.speaker.text("summary-wires-site", &args))
    })
}

/// Palms with wires noted, and how many nobody has noted it of.
fn wires_of_palms(scene: &Scene, standing: &[&Arc<PalmRecord>]) -> Vec<String> {
    let near: Vec<&str> = standing
        .iter()
        .filter(|record| record.palm.wires.is_some())
        .map(|record| record.palm.tag.as_str())
        .collect();
    let unknown = standing.len() - near.len();
    let mut said = Vec::new();
    if !near.is_empty() {
        let more = near.len().saturating_sub(MOST_TAGS);
        let args = [
            ("n", (near.len() as i64).into()),
            ("tags", near[..near.len() - more].join(", ").into()),
            ("more", (more as i64).into()),
        ];
        said.push(scene.speaker.text("summary-wires-palms", &args));
    }
    if unknown > 0 {
        said.push(scene.n("summary-wires-unknown", unknown));
    }
    said
}
