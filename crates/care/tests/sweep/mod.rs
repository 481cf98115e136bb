//! A sweep of scenes wide enough that every rule says all it can say; used by tests here and by the desk's test of
//! words.

use crate::scene::Scene;
use crown::Cut;
use model::knowledge::HoldKind;
use model::{Day, Finding, Metres, Spear};

/// Everything said in the sweep, plans and answers.
pub fn findings() -> Vec<Finding> {
    let mut all = Vec::new();
    for scene in scenes() {
        let plan = care::plan_from(1, &scene.sight());
        all.extend(
            [
                plan.holds,
                plan.findings,
                plan.method.findings,
                plan.cautions,
            ]
            .concat(),
        );
        for cut in [(1, 0, 0), (25, 2, 3), (90, 0, 0)] {
            let cut = Cut {
                green: cut.0,
                yellowing: cut.1,
                brown: cut.2,
            };
            all.extend(care::decide(&scene.sight(), cut).findings);
        }
    }
    all
}

/// Scenes of many kinds.
pub fn scenes() -> Vec<Scene> {
    let mut all = Vec::new();
    for species in [
        "Phoenix canariensis",
        "Phoenix roebelenii",
        "Sabal palmetto",
        "Washingtonia filifera",
        "Cocos nucifera",
        "Roystonea regia",
        "no such palm",
    ] {
        all.push(Scene::full(species));
        for change in CHANGES {
            let mut scene = Scene::full(species);
            change(&mut scene);
            all.push(scene);
        }
    }
    all
}

const CHANGES: &[fn(&mut Scene)] = &[
    |s| s.look().spear = Some(Spear::Leaning),
    |s| s.look().spear = Some(Spear::Down),
    |s| s.look().spear = Some(Spear::Pulled),
    |s| {
        s.look().signs = ["nest", "bats", "bees", "skirt", "fruit"]
            .map(str::to_owned)
            .to_vec()
    },
    |s| s.look().signs = vec!["one-sided-browning".into()],
    |s| {
        ["spear", "wires", "keeper", "something-else"]
            .into_iter()
            .for_each(|reason| s.hold(reason))
    },
    |s| {
        let suspicions = [
            (HoldKind::Wilt, "fusarium-wilt-canariensis"),
            (HoldKind::Phytoplasma, "lethal-bronzing"),
            (HoldKind::BudRot, "phytophthora-bud-rot"),
            (HoldKind::TrunkRot, "ganoderma-butt-rot"),
            (HoldKind::Weevil, "red-palm-weevil"),
        ];
        for (kind, disorder) in suspicions {
            s.suspected(kind, disorder, 0.35);
        }
    },
    |s| s.look().signs = vec!["conk-lower-trunk".into(), "holes-chewed-fibre".into()],
    |s| {
        ["phytoplasma", "bud-rot", "trunk-rot", "weevil"]
            .into_iter()
            .for_each(|kind| s.hold(&format!("{kind}-suspect")))
    },
    |s| s.hold("conk"),
    |s| s.hold("lab-confirmed"),
    |s| s.crown.probabilities = [0.2, 0.0, 0.1, 0.7],
    |s| s.crown.probabilities = [0.3, 0.0, 0.4, 0.3],
    |s| s.crown.probabilities = [0.75, 0.0, 0.25, 0.0],
    |s| s.palm.wires = Some(Metres(2.0)),
    |s| s.palm.wires = Some(Metres(5.0)),
    |s| s.palm.wires = None,
    |s| (s.crown.green, s.crown.yellowing, s.crown.brown) = (1, 1, 1),
    |s| (s.crown.green, s.crown.yellowing, s.crown.brown) = (0, 0, 0),
    |s| s.moved_days_ago(63),
    |s| s.grounds.storm_expected = true,
    |s| s.grounds.freeze_on = Some(s.today.plus(-20)),
    |s| s.grounds.weevil_area = true,
    |s| (s.grounds.weevil_area, s.today) = (true, Day::from_ymd(2026, 12, 20).unwrap()),
    |s| s.crown.counted_days_ago = None,
    |s| s.crown.counted_days_ago = Some(400),
    |s| (s.next_visit, s.crown.regrowth) = (None, None),
    |s| (s.palm.stems, s.palm.over) = (5, "path".into()),
    |s| (s.crown.brown, s.palm.over) = (80, "car park".into()),
    |s| s.crown.brown = 30,
    |s| s.palm.trunk_height = Some(Metres(15.0)),
    |s| s.palm.trunk_height = None,
    |s| s.crown.fronds_per_year = 0.0,
];
