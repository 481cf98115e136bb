//! How long a stub stays, and that a cut is never flush.
//!
//! Says: small armed palms 0.5 to 0.75 in from the trunk and below the lowest spines; larger fan and feather palms,
//! and palms of unknown kind, 4 to 6 in; date palms where palm weevils fly 1.5 m (strict reading). Small means that
//! the species grows no taller than 6 m (assumed).
//! Source: the short stubs are common practice, no source, and no standard read gives a length [stub_length_number];
//! weevils [weevil_cut_distance_b], against [weevil_cut_distance_a]; contract clauses want short even stubs close to
//! the leaf base [stub_close].
//! Would change it: a standard with a figure.

use crate::plan::StubLength;
use crate::rule::{Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::species::Armature;
use model::{Arg, Metres, Severity, Species};

const SMALL_ARMED: Say = Say::new("stub-small-armed", Severity::Info)
    .against(&["stub_close", "stub_length_number"])
    .practice();
const LARGE: Say = Say::new("stub-large", Severity::Info)
    .against(&["stub_close", "stub_length_number"])
    .practice();
const UNKNOWN: Say = Say::new("stub-unknown-kind", Severity::Info)
    .against(&["stub_close", "stub_length_number"])
    .practice();
const WEEVIL: Say = Say::new("stub-weevil", Severity::Act)
    .on(&["weevil_cut_distance_b"])
    .against(&["weevil_cut_distance_a", "stub_close", "stub_length_number"]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "stub",
    part: Part::Method,
    says: &[SMALL_ARMED, LARGE, UNKNOWN, WEEVIL],
    check,
};

/// Species that grow no taller than this are small (assumed).
const SMALL_UP_TO: Metres = Metres(6.0);

fn check(sight: &Sight) -> Spoken {
    let Some((say, stub)) = kind(sight) else {
        return Spoken::silent();
    };
    // a metre and more is read in metres or feet, not in centimetres or inches
    let long = stub.low >= Metres(1.0);
    let written = |m| {
        if long {
            Arg::Length(m)
        } else {
            Arg::ShortLength(m)
        }
    };
    let finding = sight
        .say(&say)
        .with("low", written(stub.low))
        .with("high", written(stub.high));
    Spoken::note(finding)
}

/// The stub to leave, measured from the trunk; `None` where nothing is cut.
pub fn length(sight: &Sight) -> Option<StubLength> {
    kind(sight).map(|(_, stub)| stub)
}

fn kind(sight: &Sight) -> Option<(Say, StubLength)> {
    let inches = |low, high| StubLength {
        low: Metres::from_inches(low),
        high: Metres::from_inches(high),
    };
    if sight.crownshaft() {
        return None;
    }
    if sight.grounds.weevil_area && sight.genus() == "Phoenix" {
        return Some((
            WEEVIL,
            StubLength {
                low: Metres(1.5),
                high: Metres(1.5),
            },
        ));
    }
    if sight.species.is_none() {
        return Some((UNKNOWN, inches(4.0, 6.0)));
    }
    Some(if small_armed(sight) {
        (SMALL_ARMED, inches(0.5, 0.75))
    } else {
        (LARGE, inches(4.0, 6.0))
    })
}

fn small_armed(sight: &Sight) -> bool {
    let armature = sight.species.and_then(|s| Species::known(&s.armature));
    let height = sight.species.and_then(|s| Species::known(&s.max_height));
    armature.is_some_and(|a| a != Armature::Unarmed) && height.is_some_and(|h| h <= SMALL_UP_TO)
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};

    fn stub_inches(scene: &Scene) -> Option<(f64, f64)> {
        super::length(&scene.sight()).map(|s| (s.low.inches(), s.high.inches()))
    }

    /// Lengths of short stubs: common practice, no source.
    #[test]
    fn the_stub_follows_the_kind_of_palm() {
        for (species, said, stub) in [
            ("Phoenix roebelenii", "stub-small-armed", (0.5, 0.75)),
            ("Chamaerops humilis", "stub-small-armed", (0.5, 0.75)),
            ("Washingtonia robusta", "stub-large", (4.0, 6.0)),
            ("Sabal palmetto", "stub-large", (4.0, 6.0)),
            ("Cocos nucifera", "stub-large", (4.0, 6.0)),
        ] {
            let scene = Scene::full(species);
            assert_eq!(codes(&super::RULE, &scene), [said], "{species}");
            let (low, high) = stub_inches(&scene).unwrap();
            assert!(
                (low - stub.0).abs() < 1e-9 && (high - stub.1).abs() < 1e-9,
                "{species}: {low} to {high}"
            );
        }
        assert_eq!(
            codes(&super::RULE, &Scene::full("no such palm")),
            ["stub-unknown-kind"]
        );
        assert_eq!(
            codes(&super::RULE, &Scene::full("Roystonea regia")),
            [""; 0]
        );
    }

    /// At least 1.5 m from the trunk [rpw_blog_pruning]; 1.2 m in another source [rpw_homecare].
    #[test]
    fn date_palms_keep_a_long_stub_where_weevils_fly() {
        let mut scene = Scene::full("Phoenix canariensis");
        scene.grounds.weevil_area = true;
        assert_eq!(codes(&super::RULE, &scene), ["stub-weevil"]);
        assert_eq!(super::length(&scene.sight()).unwrap().low.0, 1.5);
        let mut other = Scene::full("Sabal palmetto");
        other.grounds.weevil_area = true;
        assert_eq!(codes(&super::RULE, &other), ["stub-large"]);
    }
}
