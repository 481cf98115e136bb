//! Words and drawing of getting at a palm.

use super::*;
use crate::measure::Measure;
use crate::words::{Lang, Words};
use care::StubLength;
use care::reach::{Ask, SAYS, reach};
use crown::{PictureFrond, Tint};
use model::Knowledge;
use std::collections::BTreeSet;

fn speaker(lang: Lang, units: Units) -> Speaker {
    Speaker::new(Measure::new(units, Words::new(lang)))
}

/// Live fronds as they are drawn, and the oldest to go; `curtain`: staying fronds that hang all round.
fn crown(live: u32, going: u32, curtain: bool) -> Vec<PictureFrond> {
    let frond = |rank: u32, lean: f64, azimuth: f64, cut: bool| PictureFrond {
        rank,
        lean_degrees: lean,
        azimuth_degrees: azimuth.rem_euclid(360.0),
        tint: if cut { Tint::Brown } else { Tint::Green },
        cut,
    };
    let own = (1..=live + going).map(|rank| {
        let gone = rank > live;
        let lean = if gone { 160.0 } else { 3.75 * f64::from(rank) };
        frond(rank, lean, 137.507_764 * f64::from(rank), gone)
    });
    let hung = (0..72).filter(|_| curtain);
    own.chain(hung.map(|k| frond(100 + k, 165.0, 5.0 * f64::from(k), false)))
        .collect()
}

fn ask(base: f64, fronds: &[PictureFrond]) -> Ask<'_> {
    Ask {
        crown_base: Some(Metres(base)),
        frond: Some(Metres(2.0)),
        fan: Some(true),
        trunk: Some(Metres(0.35)),
        petiole: None,
        stub: Some(StubLength {
            low: Metres(0.1),
            high: Metres(0.15),
        }),
        fronds,
        skirt: false,
        wires: Some(Metres(60.0)),
        line_kv: None,
        wires_held: false,
        hand_reach: HAND_REACH,
        kit: None,
        skills: None,
        knowledge: Knowledge::embedded(),
    }
}

fn made(ask: &Ask) -> Reached {
    Reached {
        reach: reach(ask),
        frond: ask.frond,
        trunk: ask.trunk,
        crown_base: ask.crown_base,
        by_hand: ask.stub.is_none(),
        takes: true,
        fronds: ask.fronds.to_vec(),
    }
}

/// Asks that bring about everything there is to say.
fn asks<'a>(plain: &'a [PictureFrond], curtain: &'a [PictureFrond]) -> Vec<Ask<'a>> {
    let wires = |metres: Option<f64>, line_kv: Option<f64>, wires_held: bool| Ask {
        wires: metres.map(Metres),
        line_kv,
        wires_held,
        ..ask(4.0, plain)
    };
    vec![
        ask(4.0, plain),
        ask(4.0, curtain),
        ask(2.0, plain),
        ask(9.0, plain),
        wires(Some(1.0), None, false),
        wires(Some(5.0), None, false),
        wires(Some(5.0), Some(12.0), false),
        wires(None, None, false),
        wires(None, None, true),
        Ask {
            skirt: true,
            kit: Some(&[]),
            ..ask(4.0, plain)
        },
        Ask {
            crown_base: None,
            frond: None,
            ..ask(4.0, plain)
        },
        Ask {
            stub: None,
            ..ask(4.0, plain)
        },
    ]
}

#[test]
fn everything_said_has_words_in_both_languages() {
    let (plain, curtain) = (crown(40, 6, false), crown(0, 1, true));
    for (lang, units) in [(Lang::En, Units::Metric), (Lang::Es, Units::UsCustomary)] {
        let speaker = speaker(lang, units);
        let closing = speaker.say("common-closing");
        let mut heard = BTreeSet::new();
        let whole = |text: &str| text.len() > 5 && !text.contains(['{', '}', '$']);
        for ask in asks(&plain, &curtain) {
            let reached = made(&ask);
            for finding in &reached.reach.findings {
                let text = speaker.measure.finding(finding);
                assert!(whole(&text) && text != finding.code, "{text}");
                // what can hurt gives way to local code and certified people
                let cites = finding.sources.is_empty() && !finding.practice;
                let safe = matches!(
                    finding.code,
                    "reach-petiole" | "reach-no-tool" | "reach-smoother"
                );
                assert!(text.ends_with(&closing) || cites || safe, "{text}");
                heard.insert(finding.code);
            }
            let brief = brief(&speaker, &reached);
            assert!(
                whole(&brief.sentence) && !brief.sentence.starts_with("reach-"),
                "{}",
                brief.sentence
            );
            assert!(whole(&brief.keep_out));
            for line in tools(&speaker, &reached) {
                assert!(
                    whole(&line.says) && !line.says.starts_with("reach-"),
                    "{}",
                    line.says
                );
            }
            for place in &brief.places {
                assert!(
                    whole(&place.text) && !place.text.contains("reach-"),
                    "{}",
                    place.text
                );
            }
            assert!(pole(&speaker, &reached).is_none_or(|text| whole(&text)));
        }
        assert_eq!(heard, SAYS.iter().map(|say| say.code).collect());
    }
}

#[test]
fn the_sentence_names_the_tool_and_what_it_hangs_on() {
    let plain = crown(40, 6, false);
    let said = |ask: &Ask| {
        let speaker = speaker(Lang::En, Units::UsCustomary);
        sentence(&speaker, &made(ask)).replace('\u{a0}', " ")
    };
    assert_eq!(
        said(&ask(4.0, &plain)),
        "From the ground, with pole loppers where the petiole is no wider than 1.25 in, else with pole saw."
    );
    let wide = Ask {
        petiole: Some(Metres(0.06)),
        ..ask(9.0, &plain)
    };
    assert_eq!(said(&wide), "Only from a lift, with hand saw.");
}

/// What is drawn lies on the paper; a frond to go is drawn last, with its cut; places stand outside the trunk.
#[test]
fn the_drawing_holds_what_was_reckoned() {
    let plain = crown(40, 6, false);
    let reached = made(&ask(4.0, &plain));
    let above = draw::above(&speaker(Lang::En, Units::Metric), &reached).unwrap();
    let going = above.fronds.iter().filter(|f| f.key == "goes");
    assert_eq!(going.clone().count(), 6);
    assert!(going.into_iter().all(|f| f.cut.is_some()));
    assert!(above.fronds[..40].iter().all(|f| f.key == "stays"));
    assert_eq!(above.places.len(), reached.reach.places.len());
    let middle = draw::SIZE / 2.0;
    for spot in &above.places {
        let (x, y) = (f64::from(spot.at.0) - middle, f64::from(spot.at.1) - middle);
        let out = (x * x + y * y).sqrt();
        assert!(out > f64::from(above.trunk) && out < middle, "{spot:?}");
    }
    // the circle of two fronds is the widest thing on the paper
    assert_eq!(above.keep_out, Some((middle - 26.0) as i32));
}

#[test]
fn typed_lengths_are_in_the_reader_s_units() {
    let read = |units: Units, petiole: &str, hand: &str| {
        let asked = Question {
            petiole: petiole.into(),
            hand: hand.into(),
            ..Question::default()
        };
        let (told, troubles) = told(&speaker(Lang::En, units), &[], &asked);
        let fields: Vec<&str> = troubles.iter().map(|t| t.field).collect();
        (told.petiole, told.hand_reach, fields)
    };
    let (petiole, hand, _) = read(Units::Metric, "3,2", "");
    assert!((petiole.unwrap().0 - 0.032).abs() < 1e-12);
    assert_eq!(hand, HAND_REACH);
    let (petiole, hand, _) = read(Units::UsCustomary, "1.5", "7");
    assert_eq!(petiole, Some(Metres::from_inches(1.5)));
    assert_eq!(hand, Metres::from_feet(7.0));
    let (_, _, fields) = read(Units::Metric, "wide", "20");
    assert_eq!(fields, ["petiole", "hand"]);
}
