//! Reach against common practice, the safety rows, and slower ways to the same answer.

use super::place::{apart, cover};
use super::*;
use crate::rules::wires_within::distance;
use crate::scene::Scene;
use crown::Tint;
use model::knowledge::Edge;
use model::math;
use proptest::prelude::*;
use std::collections::BTreeSet;

/// A crown of so many fronds as they are drawn, the oldest `going` dead and to go.
fn crown(live: u32, going: u32) -> Vec<PictureFrond> {
    let frond = |rank: u32| {
        let turns = f64::from(rank) * 137.507_764 / 360.0;
        let dead = rank > live;
        PictureFrond {
            rank,
            lean_degrees: if dead {
                160.0
            } else {
                150.0 * (f64::from(rank) - 0.5) / f64::from(live.max(40))
            },
            azimuth_degrees: 360.0 * turns.fract(),
            tint: if dead { Tint::Brown } else { Tint::Green },
            cut: dead,
        }
    };
    (1..=live + going).map(frond).collect()
}

/// A fan palm of unknown petiole, wires far away, at a height, with six dead fronds under forty live ones.
fn ask(base: f64, fronds: &[PictureFrond]) -> Ask<'_> {
    Ask {
        crown_base: Some(Metres(base)),
        frond: Some(Metres(2.0)),
        fan: Some(true),
        trunk: Some(Metres(0.35)),
        petiole: Some(Metres(0.02)),
        stub: Some(StubLength {
            low: Metres::from_inches(4.0),
            high: Metres::from_inches(6.0),
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

fn codes(reach: &Reach) -> Vec<&'static str> {
    reach.findings.iter().map(|f| f.code).collect()
}

fn first(reach: &Reach) -> &str {
    reach.takes().next().map_or("", |fit| &fit.tool.key)
}

/// Common practice, no source: hands reach 8 ft, and with a pole 21 to 22 ft.
#[test]
fn a_pole_reaches_twenty_one_to_twenty_two_feet() {
    assert_eq!(HAND_REACH.feet(), 8.0);
    let fronds = crown(40, 6);
    let top = reach(&ask(1.0, &fronds)).top.unwrap().feet();
    assert!((21.0..=22.0).contains(&top), "{top} ft");
    for (feet, stand) in [
        (7.9, Stand::Ground),
        (8.1, Stand::GroundWithPole),
        (21.0, Stand::GroundWithPole),
        (22.0, Stand::Lift),
    ] {
        let base = Metres::from_feet(feet);
        assert_eq!(reach(&ask(base.0, &fronds)).stand, stand, "{feet} ft");
    }
}

/// Figures of the table in feet and inches are what the rows say in metres.
#[test]
fn the_table_has_the_trade_s_lengths() {
    let known = Knowledge::embedded();
    for (key, low, high) in [("pole-saw", 6.0, 14.0), ("pole-loppers", 6.0, 12.0)] {
        let pole = known.tool(key).unwrap().pole.unwrap();
        assert!((Metres(pole.low).feet() - low).abs() < 0.1, "{key}");
        assert!((Metres(pole.high).feet() - high).abs() < 0.1, "{key}");
    }
    for (key, inches) in [("loppers", 1.75), ("pole-loppers", 1.25)] {
        let opening = known.tool(key).unwrap().opening.unwrap();
        assert!((opening.inches() - inches).abs() < 0.03, "{key}");
    }
}

/// A tool for every kind of blade that a cut may be written down with.
#[test]
fn every_kind_of_blade_has_its_row() {
    for (kind, word) in model::BladeKind::ALL {
        let there = Knowledge::embedded().tool(word).is_some();
        assert_eq!(there, kind != model::BladeKind::Unknown, "{word}");
    }
}

/// Common practice, no source: loppers cut smoother than teeth, so they come first where both reach and the petiole goes
/// in.
#[test]
fn loppers_come_before_teeth_where_both_reach_and_the_petiole_goes_in() {
    let fronds = crown(40, 6);
    let with = |base: f64, petiole: Option<f64>| {
        let ask = Ask {
            petiole: petiole.map(Metres),
            ..ask(base, &fronds)
        };
        reach(&ask)
    };
    assert_eq!(first(&with(2.0, Some(0.03))), "loppers");
    assert_eq!(first(&with(2.0, Some(0.05))), "hand-saw");
    assert_eq!(first(&with(4.0, Some(0.03))), "pole-loppers");
    assert_eq!(first(&with(4.0, Some(0.04))), "pole-saw");
    // 12 ft of loppers reach 19.6 ft, 14 ft of saw 21.5 ft
    assert_eq!(first(&with(6.2, Some(0.03))), "pole-saw");
    // not measured: loppers if it goes in, said; the saw stands next
    let unknown = with(4.0, None);
    let takes: Vec<&str> = unknown.takes().map(|f| f.tool.key.as_str()).collect();
    assert_eq!(takes, ["pole-loppers", "pole-saw", "pole-sickle"]);
    let codes = codes(&unknown);
    assert!(codes.contains(&"reach-petiole") && codes.contains(&"reach-smoother"));
    assert!(matches!(unknown.fits[0].fits, Fits::IfUpTo(Some(_), width) if width == Metres(0.032)));
}

#[test]
fn only_a_lift_will_do_out_of_reach_and_at_a_skirt() {
    let fronds = crown(40, 6);
    let high = reach(&ask(9.0, &fronds));
    assert_eq!(high.stand, Stand::Lift);
    let takes: Vec<&str> = high.takes().map(|f| f.tool.key.as_str()).collect();
    assert_eq!(takes[..3], ["lift", "loppers", "hand-saw"]);
    assert!(high.places.is_empty() && codes(&high).contains(&"reach-lift-only"));
    // from beneath a skirt nothing is used, however low it hangs
    let skirt = reach(&Ask {
        skirt: true,
        ..ask(2.0, &fronds)
    });
    assert_eq!(skirt.stand, Stand::LiftFromAbove);
    assert!(codes(&skirt).contains(&"reach-skirt"));
    assert!(skirt.takes().all(|fit| fit.tool.grip != Grip::Pole));
}

#[test]
fn what_is_not_at_hand_is_not_taken() {
    let fronds = crown(40, 6);
    let kit = ["pole-saw".to_owned()];
    let with = |base: f64, skills: Option<&'static [String]>| {
        reach(&Ask {
            kit: Some(&kit),
            skills,
            ..ask(base, &fronds)
        })
    };
    assert_eq!(first(&with(4.0, None)), "pole-saw");
    // a pole saw held low still does a low crown, if nothing better is there
    assert_eq!(first(&with(2.4, None)), "");
    assert!(codes(&with(2.4, None)).contains(&"reach-no-tool"));
    let high = with(9.0, None);
    assert!(codes(&high).contains(&"reach-no-lift"));
    let saw = ["hand-saw".to_owned()];
    let with_skills = |skills: &[String]| {
        codes(&reach(&Ask {
            kit: Some(&saw),
            skills: Some(skills),
            ..ask(9.0, &fronds)
        }))
    };
    // who is trained for a lift comes with one
    assert!(!with_skills(&["lift".to_owned()]).contains(&"reach-no-lift"));
    assert!(with_skills(&["climb".to_owned()]).contains(&"reach-no-lift"));
}

/// Every row of the safety table on the distance from a line, in feet and in metres; where a row comes from stands in the
/// table.
#[test]
fn every_row_on_lines_is_kept() {
    let known = Knowledge::embedded();
    let mut seen = 0;
    for row in known.safety.iter().filter(|r| r.key.starts_with("line_")) {
        let value = row.value.parse::<f64>();
        if let Some(vector) = row.key.strip_prefix("line_vector_") {
            let kv: f64 = vector.replace('_', ".").parse().unwrap();
            let feet = value.unwrap();
            assert!((distance(Some(kv)).feet() - feet).abs() < 0.005, "{kv} kV");
            // a hair's breadth inside is refused, at the distance it is not
            let at = |wires: f64| {
                let fronds = crown(40, 6);
                let ask = Ask {
                    wires: Some(Metres(wires)),
                    line_kv: Some(kv),
                    ..ask(4.0, &fronds)
                };
                reach(&ask).refused
            };
            let keep = distance(Some(kv)).0;
            assert!(at(keep - 0.001) && !at(keep), "{kv} kV");
            seen += 1;
            continue;
        }
        let grown = |kv: f64| distance(Some(50.0 + kv)).0 - distance(Some(50.0)).0;
        match row.key.as_str() {
            "line_min_50kv" | "line_1910_333" => {
                for kv in [None, Some(0.12), Some(12.0), Some(50.0)] {
                    assert_eq!(distance(kv).feet(), value.clone().unwrap(), "{kv:?}");
                }
            }
            // the metric figures are rounded to the centimetre, the second to the decimetre
            "line_min_50kv_m" => {
                assert!((distance(None).0 - value.unwrap()).abs() < 0.005);
            }
            "line_add_per_10kv" => {
                assert!((Metres(grown(10.0)).inches() - value.unwrap()).abs() < 1e-9);
            }
            "line_add_per_10kv_m" => {
                assert!((grown(10.0) - value.unwrap()).abs() < 0.005);
            }
            "line_formula" => {
                for kv in [60.0, 333.0] {
                    let feet = 10.0 + (kv - 50.0) / 30.0;
                    assert!((distance(Some(kv)).feet() - feet).abs() < 1e-9);
                }
            }
            // lifting a palm by crane is another matter: `care::moving`
            crane => assert!(crane.starts_with("line_crane_"), "{crane}"),
        }
        seen += 1;
    }
    assert_eq!(seen, 17);
}

#[test]
fn wires_refuse_ask_and_warn() {
    let fronds = crown(40, 6);
    for (wires, kv, held, said, refused) in [
        (Some(3.0), Some(12.0), false, "reach-wires-within", true),
        (Some(3.0), None, false, "reach-wires-within", true),
        // nobody knows the voltage: up to 35 ft nobody works before the utility has answered
        (Some(5.0), None, false, "reach-wires-voltage", true),
        (Some(10.6), None, false, "reach-wires-voltage", true),
        // the crown is far enough, a pole of 14 ft that tips over is not
        (Some(5.0), Some(12.0), false, "reach-wires-falls", false),
        (Some(11.0), None, false, "", false),
        (None, None, false, "reach-wires-not-noted", false),
        (None, None, true, "reach-wires-held", true),
        (Some(60.0), None, true, "reach-wires-held", true),
    ] {
        let reach = reach(&Ask {
            wires: wires.map(Metres),
            line_kv: kv,
            wires_held: held,
            ..ask(4.0, &fronds)
        });
        assert_eq!(reach.refused, refused, "{wires:?} m, {kv:?} kV");
        let all = codes(&reach);
        let own: Vec<_> = all
            .iter()
            .filter(|c| c.starts_with("reach-wires"))
            .collect();
        assert_eq!(
            own.len(),
            usize::from(!said.is_empty()),
            "{wires:?} m, {kv:?} kV"
        );
        assert!(said.is_empty() || all.contains(&said), "{said}: {all:?}");
        assert_eq!(reach.fits.is_empty() && reach.places.is_empty(), refused);
    }
}

#[test]
fn the_circle_kept_free_is_two_fronds_wide_or_unknown() {
    let fronds = crown(40, 6);
    assert_eq!(reach(&ask(4.0, &fronds)).keep_out, Some(Metres(4.0)));
    let unknown = reach(&Ask {
        frond: None,
        ..ask(4.0, &fronds)
    });
    assert_eq!(unknown.keep_out, None);
    assert!(codes(&unknown).contains(&"reach-keep-out-unknown"));
}

#[test]
fn a_pole_is_held_as_flat_as_it_may_be_and_never_too_steep() {
    let span = Knowledge::embedded()
        .tool("pole-saw")
        .unwrap()
        .pole
        .unwrap();
    let held = |feet: f64| pole(span, Metres::from_feet(feet), HAND_REACH);
    let low = held(12.0).unwrap();
    assert!((low.degrees - FLATTEST).abs() < 1e-9);
    let high = held(21.0).unwrap();
    // sin a = 13 ft / 4.27 m
    let sine = Metres::from_feet(13.0).0 / 4.27;
    assert!((math::sin(high.degrees.to_radians()) - sine).abs() < 1e-12);
    assert!((high.length.0 - 4.27).abs() < 1e-9 && (high.hands.feet() - 8.0).abs() < 1e-9);
    assert_eq!(held(22.0), None);
    assert_eq!(held(8.0), None, "even the shortest pole is too long there");
}

#[test]
fn fronds_that_come_by_hand_are_not_cut() {
    let fronds = crown(12, 1);
    let reach = reach(&Ask {
        stub: None,
        ..ask(4.0, &fronds)
    });
    assert!(reach.takes().next().is_none() && reach.places.is_empty());
    assert!(!codes(&reach).contains(&"reach-no-tool"));
}

/// Where a place stands, nothing falls and nothing newer is in the way: measured anew by laying points along pole and
/// midrib.
#[test]
fn places_are_out_of_the_fall_and_serve_every_frond_once() {
    for (live, going, base) in [(40, 6, 4.0), (60, 12, 5.5), (20, 3, 6.4), (30, 1, 3.0)] {
        let fronds = crown(live, going);
        let ask = ask(base, &fronds);
        let reach = reach(&ask);
        let pole = reach.pole().unwrap();
        let mut served: Vec<u32> = reach.places.iter().flat_map(|p| p.ranks.clone()).collect();
        served.extend(&reach.blocked);
        served.sort_unstable();
        let wanted: Vec<u32> = (live + 1..=live + going).collect();
        assert_eq!(served, wanted);
        let aside = aside(ask.frond, ask.fan).0;
        for place in &reach.places {
            assert!(place.out_m < pole.out.0 + 0.5);
            for rank in &place.ranks {
                let frond = fronds.iter().find(|f| f.rank == *rank).unwrap();
                let off = (place.degrees - frond.azimuth_degrees).to_radians();
                // from the trunk at least as far as the pole reaches out less the cut's own distance
                let least = pole.out.0 - 0.31;
                let (ahead, side) = (math::cos(off), place.out_m * math::sin(off));
                assert!(ahead <= 0.0 || side.abs() >= aside - 1e-9);
                assert!(place.out_m >= least, "{} < {least}", place.out_m);
            }
        }
        assert!(reach.places.is_sorted_by(|a, b| a.degrees < b.degrees));
    }
}

/// A curtain of staying fronds that hang all round leaves no place; without it there is one.
#[test]
fn a_newer_frond_in_the_way_is_walked_round_or_said() {
    let mut fronds = crown(0, 1);
    let free = reach(&ask(4.0, &fronds));
    assert_eq!((free.places.len(), free.blocked.len()), (1, 0));
    for k in 0..72 {
        fronds.push(PictureFrond {
            rank: 100 + k,
            lean_degrees: 165.0,
            azimuth_degrees: 5.0 * f64::from(k),
            tint: Tint::Green,
            cut: false,
        });
    }
    let curtain = reach(&ask(4.0, &fronds));
    assert_eq!((curtain.places.len(), curtain.blocked.len()), (0, 1));
    assert!(codes(&curtain).contains(&"reach-blocked"));
    // half of the curtain away: the place lies in the open half
    fronds.retain(|f| !(f.rank >= 100 && f.azimuth_degrees < 180.0));
    let half = reach(&ask(4.0, &fronds));
    assert_eq!(half.blocked.len(), 0);
    assert!(half.places[0].degrees < 185.0, "{}", half.places[0].degrees);
}

/// Nothing said stands on a row that is not there, and every code is heard.
#[test]
fn every_code_is_heard_and_stands_on_rows_that_are_there() {
    let known = Knowledge::embedded();
    for say in SAYS {
        for key in say.cites.iter().chain(say.conflicts) {
            assert!(
                known.rule(key).is_some() || known.safety(key).is_some(),
                "{key}"
            );
        }
    }
    let fronds = crown(40, 6);
    let nothing: &[String] = &[];
    let mut curtain = crown(0, 1);
    curtain.extend((0..72).map(|k| PictureFrond {
        rank: 100 + k,
        lean_degrees: 165.0,
        azimuth_degrees: 5.0 * f64::from(k),
        tint: Tint::Green,
        cut: false,
    }));
    let asks = [
        ask(4.0, &fronds),
        ask(4.0, &curtain),
        Ask {
            petiole: None,
            ..ask(4.0, &fronds)
        },
        Ask {
            wires: Some(Metres(1.0)),
            ..ask(4.0, &fronds)
        },
        Ask {
            wires: Some(Metres(5.0)),
            ..ask(4.0, &fronds)
        },
        Ask {
            wires: Some(Metres(5.0)),
            line_kv: Some(12.0),
            ..ask(4.0, &fronds)
        },
        Ask {
            wires: None,
            ..ask(4.0, &fronds)
        },
        Ask {
            wires_held: true,
            ..ask(4.0, &fronds)
        },
        Ask {
            skirt: true,
            kit: Some(nothing),
            ..ask(4.0, &fronds)
        },
        Ask {
            crown_base: None,
            frond: None,
            ..ask(4.0, &fronds)
        },
        ask(9.0, &fronds),
    ];
    let heard: BTreeSet<&str> = asks.iter().flat_map(|ask| codes(&reach(ask))).collect();
    let declared: BTreeSet<&str> = SAYS.iter().map(|say| say.code).collect();
    assert_eq!(heard, declared);
}

#[test]
fn a_sight_and_a_picture_say_what_is_asked() {
    let mut scene = Scene::full("Washingtonia robusta");
    scene.palm.trunk_height = Some(Metres(4.0));
    scene.hold("wires");
    let picture = crown::Picture {
        day: scene.today,
        fronds: crown(38, 3),
        theta_end_degrees: 150.0,
        theta_from_clock: false,
    };
    let sight = scene.sight();
    let ask = Ask::of(&sight, &picture);
    assert_eq!((ask.crown_base, ask.fan), (Some(Metres(4.0)), Some(true)));
    assert!(ask.wires_held && ask.stub.is_some() && !ask.skirt);
    assert_eq!(ask.fronds.len(), 41);
}

/// Nearest distance by laying points along both.
fn by_points(a: [[f64; 3]; 2], b: [[f64; 3]; 2]) -> f64 {
    let at = |s: [[f64; 3]; 2], k: i32| -> [f64; 3] {
        core::array::from_fn(|i| s[0][i] + f64::from(k) / 200.0 * (s[1][i] - s[0][i]))
    };
    let mut best = f64::INFINITY;
    for k in 0..=200 {
        for l in 0..=200 {
            let (p, q) = (at(a, k), at(b, l));
            let gap: f64 = (0..3).map(|i| (p[i] - q[i]) * (p[i] - q[i])).sum();
            best = best.min(gap.sqrt());
        }
    }
    best
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(48))]

    #[test]
    fn the_gap_between_stretches_is_that_of_their_points(
        p in prop::array::uniform4(prop::array::uniform3(-5.0f64..5.0)),
    ) {
        let gap = apart((p[0], p[1]), (p[2], p[3]));
        let laid = by_points([p[0], p[1]], [p[2], p[3]]);
        // points lie at most half a two-hundredth of either stretch beside the nearest ones
        prop_assert!(gap <= laid + 1e-9 && laid <= gap + 0.1, "{gap} {laid}");
    }

    /// Few places: never more than one above the fewest there are, found by trying all sets.
    #[test]
    fn places_are_few(runs in prop::collection::vec((0usize..72, 4usize..30), 1..7)) {
        let free: Vec<Vec<bool>> = runs
            .iter()
            .map(|&(from, wide)| (0..72).map(|k| (k + 72 - from) % 72 < wide).collect())
            .collect();
        let chosen = cover(&free);
        let served: usize = chosen.iter().map(|(_, rows)| rows.len()).sum();
        prop_assert_eq!(served, free.len());
        let masks: Vec<u32> = (0..72)
            .map(|k| free.iter().enumerate().map(|(i, f)| u32::from(f[k]) << i).sum())
            .collect();
        let all = (1u32 << free.len()) - 1;
        let mut reached = BTreeSet::from([0u32]);
        let mut fewest = 0;
        while !reached.contains(&all) {
            reached = reached.iter().flat_map(|r| masks.iter().map(move |m| r | m)).collect();
            fewest += 1;
        }
        prop_assert!(chosen.len() <= fewest + 1, "{} against {fewest}", chosen.len());
    }

    /// Whatever is asked: near wires nothing is offered, a ladder never is, and nothing narrower than the petiole.
    #[test]
    fn nothing_unsafe_is_ever_offered(
        base in 0.3f64..15.0,
        petiole in prop::option::of(0.005f64..0.12),
        wires in prop::option::of(0.0f64..30.0),
        kv in prop::option::of(0.0f64..800.0),
        skirt: bool,
        going in 0u32..9,
    ) {
        let fronds = crown(36, going);
        let ask = Ask {
            petiole: petiole.map(Metres),
            wires: wires.map(Metres),
            line_kv: kv,
            skirt,
            ..ask(base, &fronds)
        };
        let reach = reach(&ask);
        if wires.is_some_and(|w| Metres(w) < distance(kv)) {
            prop_assert!(reach.refused);
        }
        prop_assert!(!reach.refused || reach.takes().next().is_none());
        for fit in reach.takes() {
            prop_assert!(fit.tool.grip != Grip::Ladder);
            if let (Some(petiole), Some(opening)) = (petiole, fit.tool.opening) {
                prop_assert!(petiole <= opening.0);
            }
            if let Some(pole) = fit.fits.pole() {
                prop_assert!(!skirt && pole.degrees <= STEEPEST + 1e-9 && pole.degrees >= FLATTEST - 1e-9);
                prop_assert!(pole.hands <= ask.hand_reach && pole.hands.0 >= LOWEST_HANDS.0 - 1e-9);
            }
            prop_assert!(fit.tool.edge == Edge::None || ask.stub.is_some());
        }
    }
}
