//! What is usual and no fault, what nobody may do, and what to mind while working on the palm.

use super::{Point, Scene};
use crate::views::cutting;
use crate::views::moved;
use crate::views::said::Speaker;
use model::knowledge::MoveTopic;

/// Rules that an owner is told, in the order told; each is a row of `pruning_rules.csv`.
const NEVER: [&str; 5] = [
    "horizontal_line_extension",
    "keep_deficient_leaves",
    "rooster_tail_not_acceptable",
    "no_prestorm_cut",
    "spikes_prohibited",
];

/// What is usual: for a moved palm the figures of practice and the trunk's colour; for any the way old fronds die.
pub(super) fn usual(scene: &Scene) -> Vec<Point> {
    let mut points = Vec::new();
    points.extend(rule(scene.speaker, "senescence_days"));
    if scene.under_way().is_some() {
        let said = moved::usual(scene.speaker);
        let shed = said.iter().filter(|s| s.code != "moved-usual-colour");
        points.extend(shed.map(|said| Point::said(scene.speaker, said)));
    }
    if scene.moved.is_some() {
        points.extend(colour(scene));
    }
    points
}

/// A new colour of the trunk fades; how long it takes, in months, as people say it.
fn colour(scene: &Scene) -> Option<Point> {
    const MONTH_DAYS: f64 = 365.25 / 12.0;
    let speaker = scene.speaker;
    let row = speaker.knowledge.moving(MoveTopic::TrunkColour).next()?;
    let figure = row.figure?;
    let months = |days: f64| (days / MONTH_DAYS).round() as i64;
    let args = [
        ("low", months(figure.low.unwrap_or(figure.high)).into()),
        ("high", months(figure.high).into()),
    ];
    let text = speaker.text("owner-usual-colour", &args);
    Some(Point::of(speaker, &text, row.basis, &row.sources))
}

/// What nobody may do.
pub(super) fn never(scene: &Scene) -> Vec<Point> {
    let mut points: Vec<Point> = NEVER
        .iter()
        .filter_map(|key| rule(scene.speaker, key))
        .collect();
    points.extend(nails(scene));
    let date_palm = scene.record.palm.species.starts_with("Phoenix");
    points.push(dirty(scene.speaker, date_palm));
    if scene.record.palm.species.starts_with("Phoenix canariensis") {
        points.extend(rule(scene.speaker, "cidp_no_chainsaw_leaves"));
    }
    points.extend(lawn_feed(scene));
    points.push(Point::own(scene.say("owner-never-alone")));
    points
}

/// A row of the pruning rules in the reader's language.
pub(in crate::views) fn rule(speaker: &Speaker, key: &str) -> Option<Point> {
    let row = speaker.knowledge.rule(key)?;
    let text = match speaker.words().lang() {
        crate::words::Lang::En => &row.text,
        crate::words::Lang::Es => &row.text_es,
    };
    Some(Point::of(speaker, text, row.basis, &row.sources))
}

/// Nothing is nailed into it; how long props stay on a palm that still has them.
fn nails(scene: &Scene) -> Vec<Point> {
    let speaker = scene.speaker;
    let wanted = |key: &str| match key {
        "brace-no-nails" => true,
        "brace-how-long" => scene.under_way().is_some(),
        _ => false,
    };
    let rows = speaker.knowledge.moving(MoveTopic::Brace);
    rows.filter(|row| wanted(&row.key))
        .map(|row| Point::of(speaker, speaker.texts(&row.text), row.basis, &row.sources))
        .collect()
}

/// No dirty blades: our demand, with the rows it follows from, which are stricter for date palms.
pub(in crate::views) fn dirty(speaker: &Speaker, date_palm: bool) -> Point {
    let key = match date_palm {
        true => "handsaw_sterile_each",
        false => "clean_every_site",
    };
    let sources = speaker.knowledge.rule(key).map(|row| &row.sources);
    Point {
        text: speaker.say("owner-never-dirty"),
        mark: None,
        sources: sources.cloned().unwrap_or_default(),
    }
}

fn lawn_feed(scene: &Scene) -> Option<Point> {
    let speaker = scene.speaker;
    let row = speaker.knowledge.product("lawn-feed")?;
    let text = format!("{}: {}", speaker.texts(&row.name), speaker.texts(&row.text));
    Some(Point::of(speaker, &text, row.basis, &row.sources))
}

/// The cautions of the cut plans of all stems, each once.
pub(super) fn cautions(scene: &Scene) -> Vec<Point> {
    let mut points: Vec<Point> = Vec::new();
    for stem in &scene.stems {
        let plan = cutting::view(scene.speaker, &care::cut_plan(&stem.case()));
        for said in &plan.cautions {
            let point = Point::said(scene.speaker, said);
            if points.iter().all(|own| own.text != point.text) {
                points.push(point);
            }
        }
    }
    points
}
