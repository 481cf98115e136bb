//! Hold: something is suspected for which nobody may cut.
//!
//! Says: nobody cuts while a wilt, a phytoplasma, a rot of the bud or of the trunk, or a weevil is suspected. A blade
//! carries a wilt on, fresh cuts draw weevils, a palm with a rotten trunk may break under whoever works on it, and
//! trimming hides what a person who can diagnose has to see. Speaks when the judgement of the last look gives it at
//! least a fifth (`hold-from` in `weights.csv`, assumed), when a sign was seen that alone calls for it (a conk, grubs,
//! fresh frass), or when somebody set the hold. What to do instead, whom to tell and what ends it go by the reason:
//! `care::judge::hold_reasons`.
//! Source: trimming before an inspection hides wilt [inspect_before_trim_purchase]; disinfect when cutting out disease
//! [disease_cut_each]; fresh cuts draw weevils [weevil_attraction]; the rows of the disorders behind the suspicion; the
//! rest is common practice, no source.
//! Would change it: a laboratory result, or a qualified person's judgement of the trunk.

use crate::judge::{ALONE, HoldAdvice, hold_reason};
use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::rules::wilt;
use crate::sight::Sight;
use model::knowledge::HoldKind;
use model::{Arg, Finding, Severity, SourceKey};

const CUTTING: &[&str] = &["inspect_before_trim_purchase", "disease_cut_each"];
const FLYING: &[&str] = &["weevil_attraction"];

const fn say(code: &'static str, rows: &'static [&'static str]) -> Say {
    Say::new(code, Severity::Refuse).on(rows).practice()
}

const WILT: Say = say("hold-wilt", CUTTING);
const PHYTOPLASMA: Say = say("hold-phytoplasma", CUTTING);
const PHYTOPLASMA_SET: Say = say("hold-phytoplasma-suspect", CUTTING);
const BUD_ROT: Say = say("hold-bud-rot", CUTTING);
const BUD_ROT_SET: Say = say("hold-bud-rot-suspect", CUTTING);
const TRUNK_ROT: Say = say("hold-trunk-rot", &[]);
const TRUNK_ROT_SEEN: Say = say("hold-trunk-rot-seen", &[]);
const TRUNK_ROT_SET: Say = say("hold-trunk-rot-suspect", &[]);
const WEEVIL: Say = say("hold-weevil", FLYING);
const WEEVIL_SEEN: Say = say("hold-weevil-seen", FLYING);
const WEEVIL_SET: Say = say("hold-weevil-suspect", FLYING);
const CONK_SET: Say = say("hold-conk", &[]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "suspect",
    part: Part::Hold,
    says: &[
        WILT,
        PHYTOPLASMA,
        PHYTOPLASMA_SET,
        BUD_ROT,
        BUD_ROT_SET,
        TRUNK_ROT,
        TRUNK_ROT_SEEN,
        TRUNK_ROT_SET,
        WEEVIL,
        WEEVIL_SEEN,
        WEEVIL_SET,
        CONK_SET,
    ],
    check,
};

/// Reason of a hold that somebody sets on seeing a conk.
pub const CONK: &str = "conk";

/// What is said of a suspicion: by probability, by a sign that alone calls for it, because somebody set it. Where one of
/// them is missing another rule says it: of a wilt `wilt`, of a spear that came out `spear`.
type Kind = (HoldKind, Say, Option<Say>, Option<Say>);

const KINDS: [Kind; 5] = [
    (HoldKind::Wilt, WILT, None, None),
    (
        HoldKind::Phytoplasma,
        PHYTOPLASMA,
        None,
        Some(PHYTOPLASMA_SET),
    ),
    (HoldKind::BudRot, BUD_ROT, None, Some(BUD_ROT_SET)),
    (
        HoldKind::TrunkRot,
        TRUNK_ROT,
        Some(TRUNK_ROT_SEEN),
        Some(TRUNK_ROT_SET),
    ),
    (
        HoldKind::Weevil,
        WEEVIL,
        Some(WEEVIL_SEEN),
        Some(WEEVIL_SET),
    ),
];

fn check(sight: &Sight) -> Spoken {
    let findings: Vec<Finding> = KINDS
        .iter()
        .filter_map(|kind| finding(sight, kind))
        .collect();
    let limit = if findings.is_empty() {
        Limit::FREE
    } else {
        Limit::NOTHING
    };
    Spoken { findings, limit }
}

/// Whether the judgement gives one of these suspicions enough for a hold.
pub fn judged(sight: &Sight) -> bool {
    KINDS
        .iter()
        .any(|(kind, ..)| likely(sight, *kind).is_some())
}

/// One finding a kind: the sign says more than the probability, and both say more than that somebody set a hold.
fn finding(sight: &Sight, (kind, by_share, by_sign, by_hold): &Kind) -> Option<Finding> {
    if *kind == HoldKind::Wilt && wilt::suspected(sight) {
        return None; // said there
    }
    if let (Some(say), Some(sign)) = (by_sign, sign(sight, *kind)) {
        return Some(sight.say(say).with("sign", Arg::Code(sign)));
    }
    if let Some((disorder, share)) = likely(sight, *kind) {
        let mut finding = sight.say(by_share).with("disorder", Arg::Code(disorder));
        for source in sources(sight, disorder) {
            if !finding.sources.contains(source) {
                finding.sources.push(source.clone());
            }
        }
        return Some(finding.with("share", Arg::Share(share)));
    }
    if *kind == HoldKind::TrunkRot && sight.hold(CONK).is_some() {
        return Some(sight.say(&CONK_SET));
    }
    let set = sight.hold(hold_reason(*kind)).is_some();
    by_hold.filter(|_| set).map(|say| sight.say(&say))
}

fn advice<'a>(sight: &Sight<'a>, kind: HoldKind) -> Option<&'a HoldAdvice> {
    sight.judgement?.holds.iter().find(|hold| hold.kind == kind)
}

/// The most probable disorder behind a hold and the probability of them all, where that is what calls for it.
fn likely(sight: &Sight, kind: HoldKind) -> Option<(&'static str, f64)> {
    let advice = advice(sight, kind)?;
    let first = *advice.because.first()?;
    advice.likely.then_some((first, advice.probability))
}

/// A sign that alone calls for the hold: of the last look, or of those that were judged.
fn sign(sight: &Sight, kind: HoldKind) -> Option<&'static str> {
    let own = ALONE
        .iter()
        .find(|(key, of)| *of == kind && sight.sign(key));
    own.map(|(key, _)| *key)
        .or_else(|| advice(sight, kind)?.sign)
}

/// Sources of a disorder's row.
fn sources<'a>(sight: &Sight<'a>, disorder: &str) -> &'a [SourceKey] {
    let row = sight.knowledge.disorder(disorder);
    row.map_or(&[], |row| row.sources.as_slice())
}

#[cfg(test)]
mod tests {
    use super::RULE;
    use crate::rule::Limit;
    use crate::scene::{Scene, codes, limit};
    use model::Arg;
    use model::knowledge::HoldKind;

    #[test]
    fn a_probable_suspicion_holds_and_names_itself() {
        let mut scene = Scene::full("Phoenix canariensis");
        assert_eq!(limit(&RULE, &scene), Limit::FREE);
        for (kind, disorder, code) in [
            (HoldKind::Wilt, "fusarium-wilt-canariensis", "hold-wilt"),
            (HoldKind::Phytoplasma, "lethal-bronzing", "hold-phytoplasma"),
            (HoldKind::BudRot, "phytophthora-bud-rot", "hold-bud-rot"),
            (HoldKind::TrunkRot, "ganoderma-butt-rot", "hold-trunk-rot"),
            (HoldKind::Weevil, "red-palm-weevil", "hold-weevil"),
        ] {
            scene.judgement = None;
            scene.suspected(kind, disorder, 0.4);
            let spoken = super::check(&scene.sight());
            assert_eq!(spoken.limit, Limit::NOTHING);
            let [finding] = spoken.findings.as_slice() else {
                panic!("one finding of {code}");
            };
            assert_eq!(finding.code, code);
            let args = [
                ("disorder", Arg::Code(disorder)),
                ("share", Arg::Share(0.4)),
            ];
            assert_eq!(finding.args, args);
            assert!(
                finding.sources.len() > 1,
                "{code}: those of the disorder, too"
            );
        }
    }

    #[test]
    fn one_thing_is_said_once() {
        let mut scene = Scene::full("Phoenix canariensis");
        scene.suspected(HoldKind::TrunkRot, "ganoderma-butt-rot", 0.9);
        scene.hold("trunk-rot-suspect");
        scene.hold("conk");
        scene.look().signs.push("conk-lower-trunk".into());
        assert_eq!(codes(&RULE, &scene), ["hold-trunk-rot-seen"]);
        scene.look().signs.clear();
        assert_eq!(codes(&RULE, &scene), ["hold-trunk-rot"]);
        scene.judgement = None;
        assert_eq!(codes(&RULE, &scene), ["hold-conk"]);
        scene.suspected(HoldKind::Wilt, "fusarium-wilt-canariensis", 0.6);
        scene.holds.clear();
        assert_eq!(codes(&RULE, &scene), ["hold-wilt"]);
        scene.hold("wilt-suspect");
        assert_eq!(codes(&RULE, &scene), [""; 0], "said by the rule wilt");
        scene.holds.clear();
        scene.crown.probabilities = [0.3, 0.0, 0.1, 0.6];
        assert_eq!(
            codes(&crate::rules::wilt::RULE, &scene),
            [""; 0],
            "the counts say no more"
        );
        scene.judgement = None;
        assert_eq!(
            codes(&crate::rules::wilt::RULE, &scene),
            ["hold-decline-likely"]
        );
    }

    #[test]
    fn a_person_or_a_sign_is_enough() {
        for (reason, code) in [
            ("phytoplasma-suspect", "hold-phytoplasma-suspect"),
            ("bud-rot-suspect", "hold-bud-rot-suspect"),
            ("trunk-rot-suspect", "hold-trunk-rot-suspect"),
            ("weevil-suspect", "hold-weevil-suspect"),
            ("conk", "hold-conk"),
        ] {
            let mut scene = Scene::full("Cocos nucifera");
            scene.hold(reason);
            assert_eq!(codes(&RULE, &scene), [code]);
            assert_eq!(
                codes(&crate::rules::held::RULE, &scene),
                [""; 0],
                "{reason}"
            );
        }
        for (sign, code) in [
            ("holes-chewed-fibre", "hold-weevil-seen"),
            ("grubs-or-cocoons", "hold-weevil-seen"),
            ("conk-lower-trunk", "hold-trunk-rot-seen"),
        ] {
            let mut scene = Scene::full("Cocos nucifera");
            scene.look().signs.push(sign.into());
            assert_eq!(codes(&RULE, &scene), [code]);
        }
    }
}
