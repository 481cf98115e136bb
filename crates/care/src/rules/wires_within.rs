//! Hold: an overhead conductor within the distance that only line-clearance workers may work in.
//!
//! Says: refused; call the utility. The distance is 10 ft (3.05 m) up to 50 kV to ground and grows by 4 in for every
//! 10 kV above; an unknown voltage is never less than 10 ft, and the caution on wires asks for it beyond that.
//! Source: 29 CFR 1910.269 as in the safety rows [line_min_50kv, line_add_per_10kv, line_formula].
//! Would change it: a stricter local rule.

use crate::rule::{Limit, Part, Rule, Say, Spoken};
use crate::sight::Sight;
use model::{Arg, Metres, Severity};

const WITHIN: Say = Say::new("hold-wires-within", Severity::Refuse).on(&[
    "line_min_50kv",
    "line_min_50kv_m",
    "line_add_per_10kv",
    "line_formula",
    "line_1910_333",
    "defer_all",
]);

const SET: Say = Say::new("hold-wires-set", Severity::Refuse).on(&[
    "line_min_50kv",
    "line_formula",
    "defer_all",
]);

/// The rule.
pub const RULE: Rule = Rule {
    key: "wires_within",
    part: Part::Hold,
    says: &[WITHIN, SET],
    check,
};

/// Distance kept up to 50 kV, ft.
pub const LEAST_FT: f64 = 10.0;

/// Distance that anybody but a line-clearance worker keeps, by voltage to ground in kV; the least where unknown.
pub fn distance(kv: Option<f64>) -> Metres {
    let above = kv.map_or(0.0, |kv| (kv - 50.0).max(0.0));
    Metres::from_feet(LEAST_FT + above / 10.0 * 4.0 / 12.0)
}

/// A distance to keep, in both units and rounded up: rounding a safe distance down is never safe.
pub fn written(distance: Metres) -> String {
    let up = |x: f64, step: f64| ((x / step) - 1e-6).ceil() * step;
    let feet = format!("{:.2}", up(distance.feet(), 0.01));
    let feet = feet.trim_end_matches('0').trim_end_matches('.');
    format!("{feet} ft ({:.2} m)", up(distance.0, 0.01))
}

fn check(sight: &Sight) -> Spoken {
    let keep = distance(sight.grounds.line_kv);
    let written = Arg::Text(written(keep));
    let finding = match sight.palm.wires.filter(|wires| wires.0 < keep.0) {
        Some(wires) => sight
            .say(&WITHIN)
            .with("wires", Arg::Length(wires))
            .with("keep", written),
        None if sight.hold("wires").is_some() => sight.say(&SET).with("keep", written),
        None => return Spoken::silent(),
    };
    Spoken::limit(finding, Limit::NOTHING)
}

#[cfg(test)]
mod tests {
    use super::{distance, written};
    use crate::scene::{Scene, codes};
    use model::Metres;

    /// Test vectors of the safety rows line_vector_*: formula of 29 CFR 1910.269, ANSI Z133 table from memory.
    #[test]
    fn distance_grows_with_voltage() {
        for (kv, feet) in [
            (12.0, 10.0),
            (50.0, 10.0),
            (72.5, 10.75),
            (121.0, 12.37),
            (145.0, 13.17),
            (242.0, 16.40),
            (362.0, 20.40),
            (550.0, 26.67),
            (800.0, 35.0),
        ] {
            assert!((distance(Some(kv)).feet() - feet).abs() < 0.005, "{kv} kV");
        }
        assert_eq!(distance(None), Metres::from_feet(10.0));
    }

    #[test]
    fn a_safe_distance_is_never_written_shorter() {
        assert_eq!(written(distance(None)), "10 ft (3.05 m)");
        assert_eq!(written(distance(Some(121.0))), "12.37 ft (3.77 m)");
        assert_eq!(written(distance(Some(550.0))), "26.67 ft (8.13 m)");
    }

    #[test]
    fn inside_is_refused_at_it_is_not() {
        let mut scene = Scene::full("Washingtonia robusta");
        for (wires, kv, held) in [
            (3.0, None, true),
            (3.05, None, false),
            (3.2, Some(72.5), true),
            (4.0, Some(72.5), false),
        ] {
            scene.palm.wires = Some(Metres(wires));
            scene.grounds.line_kv = kv;
            assert_eq!(
                !codes(&super::RULE, &scene).is_empty(),
                held,
                "{wires} m, {kv:?} kV"
            );
        }
        scene.palm.wires = None;
        assert_eq!(codes(&super::RULE, &scene), [""; 0]);
        scene.hold("wires");
        assert_eq!(codes(&super::RULE, &scene), ["hold-wires-set"]);
    }
}
