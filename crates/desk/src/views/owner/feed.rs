//! Feed for the owner: with what, how much, when next, and when not.

use super::{Part, Point, Scene};
use crate::feeding;
use care::feeding::{Dose, Line, MAINTENANCE, Plan};
use model::Finding;

/// The part of the sheet.
pub(super) fn part(scene: &Scene) -> Part {
    let fed = feeding::of(scene.office, scene.record, &[]);
    fed.map(|own| told(scene, &own.plan())).unwrap_or_default()
}

fn told(scene: &Scene, plan: &Plan) -> Part {
    let speaker = scene.speaker;
    let mut part = Part {
        heads: ["against", "what", "amount", "next"]
            .map(|c| speaker.say(&format!("owner-feed-head-{c}")))
            .to_vec(),
        ..Part::default()
    };
    for line in &plan.lines {
        match line.refused.first() {
            Some(refusal) => part.points.push(refused(scene, line, refusal)),
            None => part.rows.extend(rows(scene, line)),
        }
        part.points.extend(answers(scene, line));
    }
    part.lead.push(match part.rows.is_empty() {
        true => speaker.say("owner-feed-nothing"),
        false => speaker.say("owner-feed-lead"),
    });
    if plan.rules_unknown {
        part.points
            .push(Point::own(speaker.say("owner-feed-rules-unknown")));
    }
    // what a keeper is to enter is no business of an owner
    for rule in plan.rules.iter().filter(|rule| rule.key != "rules-first") {
        part.points.push(Point::of(
            speaker,
            speaker.texts(&rule.text),
            rule.basis,
            &rule.sources,
        ));
    }
    part
}

fn against(scene: &Scene, line: &Line) -> String {
    if line.against == MAINTENANCE {
        return scene.say("owner-feed-maintenance");
    }
    let row = scene.speaker.knowledge.disorder(&line.against);
    row.map_or_else(
        || line.against.clone(),
        |row| scene.speaker.texts(&row.name).to_owned(),
    )
}

fn rows(scene: &Scene, line: &Line) -> Vec<Vec<String>> {
    let next = match line.next {
        Some((from, _)) if from > scene.office.today() => scene.speaker.measure.date(from),
        _ => scene.say("owner-feed-now"),
    };
    // the first of several rates for the same in the year is told: an owner wants one plan
    let mut met: Vec<&str> = Vec::new();
    let doses = line.doses.iter().filter(|dose| {
        let product = dose.row.product.as_str();
        let new = !met.contains(&product);
        met.push(product);
        new
    });
    doses
        .map(|dose| {
            vec![
                against(scene, line),
                product(scene, dose),
                amount(scene, dose),
                next.clone(),
            ]
        })
        .collect()
}

fn product(scene: &Scene, dose: &Dose) -> String {
    dose.product.map_or_else(
        || dose.row.product.clone(),
        |row| scene.speaker.texts(&row.name).to_owned(),
    )
}

/// How much at a time, and how often in the year.
fn amount(scene: &Scene, dose: &Dose) -> String {
    let (speaker, m) = (scene.speaker, &scene.speaker.measure);
    let how_much = match dose.grams {
        Some(grams) => {
            let (low, high) = (m.mass(grams.low / 1000.0), m.mass(grams.high / 1000.0));
            match low == high {
                true => low,
                false => speaker.text(
                    "measure-range",
                    &[("low", low.into()), ("high", high.into())],
                ),
            }
        }
        None => speaker.texts(&dose.row.text).to_owned(),
    };
    match dose.row.times {
        Some(times) if times > 1.0 => {
            let args = [
                ("amount", how_much.into()),
                ("times", (times as i64).into()),
            ];
            speaker.text("owner-feed-amount", &args)
        }
        _ => how_much,
    }
}

/// Why not now, in words for the owner.
fn refused(scene: &Scene, line: &Line, refusal: &Finding) -> Point {
    let code = match refusal.code {
        "feeding-just-moved" => "owner-feed-just-moved",
        "feeding-too-soon" => "owner-feed-too-soon",
        "feeding-cause-first" => "owner-feed-cause-first",
        _ => "owner-feed-barred",
    };
    let mut args = vec![("against", against(scene, line).into())];
    for (name, arg) in &refusal.args {
        args.push((*name, scene.speaker.measure.arg(arg)));
    }
    Point {
        text: scene.speaker.text(code, &args),
        mark: None,
        sources: refusal.sources.clone(),
    }
}

/// How long until the crown answers, as the source on the shortage says.
fn answers(scene: &Scene, line: &Line) -> Option<Point> {
    let row = line.answers.first()?;
    let speaker = scene.speaker;
    Some(Point::of(
        speaker,
        speaker.texts(&row.text),
        row.basis,
        &row.sources,
    ))
}
