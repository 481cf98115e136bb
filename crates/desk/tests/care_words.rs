//! Everything the care rules say has words in both languages, with every argument filled in.

#[path = "../../care/tests/scene/mod.rs"]
mod scene;
#[path = "../../care/tests/sweep/mod.rs"]
mod sweep;

use care::Verdict;
use crown::Cut;
use model::Finding;
use scene::Scene;
use spearleaf_desk::measure::{Measure, Units};
use spearleaf_desk::words::{Lang, Words};
use std::collections::BTreeSet;

const FILES: [(Lang, &str, &str); 2] = [
    (
        Lang::En,
        include_str!("../lang/en/care.ftl"),
        include_str!("../lang/en/safety.ftl"),
    ),
    (
        Lang::Es,
        include_str!("../lang/es/care.ftl"),
        include_str!("../lang/es/safety.ftl"),
    ),
];

/// Words of choices and signs, which are no findings.
fn labels() -> Vec<String> {
    let verdicts = [Verdict::Allowed, Verdict::Partly, Verdict::Refused]
        .map(|v| format!("verdict-{}", v.key()));
    let signs = care::SIGNS.map(|s| format!("sign-{s}"));
    let choices = [
        "tool-hand",
        "tool-saw",
        "stand-ground",
        "stand-ground-with-pole",
        "stand-lift",
        "stand-lift-from-above",
        "stand-unknown",
    ];
    verdicts
        .into_iter()
        .chain(signs)
        .chain(choices.map(str::to_owned))
        .collect()
}

fn text(finding: &Finding, lang: Lang, units: Units) -> String {
    Measure::new(units, Words::new(lang))
        .finding(finding)
        .replace('\u{a0}', " ")
}

#[test]
fn every_finding_has_words_with_every_argument() {
    for finding in sweep::findings() {
        for lang in Lang::ALL {
            assert!(
                Words::new(lang).has(finding.code),
                "{}: {}",
                lang.tag(),
                finding.code
            );
            for units in Units::ALL {
                let text = text(&finding, lang, units);
                assert!(
                    text.len() > 20 && !text.contains(['{', '}', '$']),
                    "{} {}: {text}",
                    lang.tag(),
                    finding.code
                );
                assert!(
                    text.ends_with('.'),
                    "{} {}: {text}",
                    lang.tag(),
                    finding.code
                );
            }
        }
    }
}

#[test]
fn every_caution_ends_by_giving_way() {
    let mut seen = 0;
    for scene in sweep::scenes() {
        for caution in care::plan_from(1, &scene.sight()).cautions {
            for lang in Lang::ALL {
                let last = Words::new(lang).say("common-closing");
                assert!(
                    last.len() > 20 && text(&caution, lang, Units::Metric).ends_with(&last),
                    "{}",
                    caution.code
                );
                seen += 1;
            }
        }
    }
    assert!(seen > 500, "{seen}");
}

#[test]
fn no_words_are_left_over() {
    let rules = care::rules::ALL
        .iter()
        .flat_map(|rule| rule.says)
        .map(|say| say.code.to_owned());
    let wanted: BTreeSet<String> = rules.chain(labels()).collect();
    for (lang, care, safety) in FILES {
        let keys = care
            .lines()
            .chain(safety.lines())
            .filter_map(|line| line.split_once(" = "));
        let keys: BTreeSet<String> = keys
            .map(|(key, _)| key)
            .filter(|key| !key.starts_with([' ', '#', '[']))
            .map(str::to_owned)
            .collect();
        assert_eq!(keys, wanted, "{}", lang.tag());
    }
}

/// 40 fronds cut to 15 is over-trimming (common practice, no source); a dozen is a year's growth [jarvis-pasco].
#[test]
fn the_two_sentences_people_argue_about() {
    let mut scene = Scene::full("Sabal palmetto");
    (scene.crown.green, scene.crown.yellowing) = (40, 0);
    let said = |live: u32, code: &str, lang: Lang| {
        let decision = care::decide(
            &scene.sight(),
            Cut {
                green: live,
                ..Cut::NONE
            },
        );
        let finding = decision
            .findings
            .into_iter()
            .find(|f| f.code == code)
            .expect(code);
        text(&finding, lang, Units::UsCustomary)
    };
    assert_eq!(
        said(25, "over-trimming", Lang::En),
        "Taking 25 of 40 live fronds leaves 15. That is over-trimming: only 16 hang below level, and at least a half \
         sphere of fronds must remain."
    );
    assert_eq!(
        said(25, "over-trimming", Lang::Es),
        "Quitar 25 de 40 hojas vivas deja 15. Eso es podar de más: solo 16 cuelgan por debajo del nivel, y debe \
         quedar al menos media esfera de hojas."
    );
    assert_eq!(
        said(12, "asked-years-growth", Lang::En),
        "12 live fronds are 12 months of growth; this palm makes about 12 a year."
    );
    assert_eq!(
        said(12, "asked-years-growth", Lang::Es),
        "12 hojas vivas son lo que crece en 12 meses; esta palma hace unas 12 al año."
    );
}

/// One foot is 0.3048 m exactly; the distance is never written shorter than it is.
#[test]
fn the_distance_from_wires_is_written_in_full_in_both_units() {
    let mut scene = Scene::full("Sabal palmetto");
    scene.palm.wires = Some(model::Metres(2.0));
    let hold = care::plan_from(1, &scene.sight()).holds.remove(0);
    for (lang, units) in [
        (Lang::En, Units::Metric),
        (Lang::En, Units::UsCustomary),
        (Lang::Es, Units::Metric),
    ] {
        assert!(
            text(&hold, lang, units).contains("10 ft (3.05 m)"),
            "{}",
            text(&hold, lang, units)
        );
    }
}
