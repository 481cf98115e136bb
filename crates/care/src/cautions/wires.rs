//! Caution: overhead wires.
//!
//! Says: every line is live. Outside the distance kept (see `rules/wires_within.rs`) work goes on with tools, poles and
//! cut fronds kept out of it; while the voltage is unknown the utility is asked first, because the distance may be up
//! to 35 ft; while nobody has noted whether there are wires, somebody looks up first.
//! Source: [line_min_50kv], [line_formula], [line_vector_800], poles [pole_nonconductive].
//! Would change it: a stricter local rule.

use crate::rule::{Part, Rule, Say, Spoken};
use crate::rules::wires_within::{distance, written};
use crate::sight::Sight;
use model::{Arg, Severity};

const NEAR: Say = Say::new("caution-wires", Severity::Caution).on(&[
    "line_min_50kv",
    "line_formula",
    "pole_nonconductive",
    "defer_all",
]);
const VOLTAGE: Say = Say::new("caution-wires-voltage", Severity::Act).on(&[
    "line_min_50kv",
    "line_formula",
    "line_vector_800",
    "pole_nonconductive",
    "defer_all",
]);
const NOT_NOTED: Say = Say::new("caution-wires-not-noted", Severity::Caution).on(&[
    "line_min_50kv",
    "pole_nonconductive",
    "defer_all",
]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "wires",
    part: Part::Caution,
    says: &[NEAR, VOLTAGE, NOT_NOTED],
    check,
};

/// Highest voltage of the safety rows, kV: beyond its distance an unknown voltage no longer matters.
const HIGHEST_KV: f64 = 800.0;

fn check(sight: &Sight) -> Spoken {
    let kv = sight.grounds.line_kv;
    let keep = distance(kv);
    let text = |distance| Arg::Text(written(distance));
    let Some(wires) = sight.palm.wires else {
        return Spoken::note(sight.say(&NOT_NOTED).with("keep", text(keep)));
    };
    if wires.0 < keep.0 {
        return Spoken::silent(); // a hold, not a caution
    }
    let most = distance(Some(HIGHEST_KV));
    if kv.is_none() && wires.0 < most.0 {
        let finding = sight.say(&VOLTAGE).with("wires", Arg::Length(wires));
        return Spoken::note(finding.with("keep", text(keep)).with("most", text(most)));
    }
    Spoken::note(
        sight
            .say(&NEAR)
            .with("wires", Arg::Length(wires))
            .with("keep", text(keep)),
    )
}

#[cfg(test)]
mod tests {
    use crate::scene::{Scene, codes};
    use model::Metres;

    #[test]
    fn an_unknown_voltage_is_asked_for() {
        let mut scene = Scene::full("Washingtonia robusta");
        for (wires, kv, said) in [
            (None, None, &["caution-wires-not-noted"][..]),
            (Some(2.0), None, &[]),
            (Some(5.0), None, &["caution-wires-voltage"]),
            (Some(5.0), Some(12.0), &["caution-wires"]),
            (Some(5.0), Some(345.0), &[]),
            (Some(10.7), None, &["caution-wires"]),
        ] {
            scene.palm.wires = wires.map(Metres);
            scene.grounds.line_kv = kv;
            assert_eq!(codes(&super::RULE, &scene), said, "{wires:?} m, {kv:?} kV");
        }
    }
}
