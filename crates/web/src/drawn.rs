//! Small drawings: a palm from the side with one place of it drawn heavily, and signs that are easier shown than said.

use maud::{Markup, PreEscaped, html};
use model::knowledge::Part;

/// The palm of all drawings, piece by piece: class, what it belongs to, path. 64 by 64.
const PALM: [(&str, Part, &str); 6] = [
    (
        "frond",
        Part::Old,
        "M31 30 C 21 27 12 34 9 47 M33 30 C 43 27 52 34 55 47",
    ),
    (
        "frond",
        Part::Middle,
        "M31 29 C 22 19 12 19 4 27 M33 29 C 42 19 52 19 60 27",
    ),
    (
        "frond",
        Part::Young,
        "M31 28 C 27 17 22 11 14 8 M33 28 C 37 17 42 11 50 8",
    ),
    ("trunk", Part::Trunk, "M29 31 L28 56 H36 L35 31 Z"),
    (
        "root",
        Part::Roots,
        "M28 56 C 22 57 17 59 12 62 M30 57 C 28 59 26 61 25 63 M34 57 C 36 59 38 61 39 63 M36 56 C 42 57 47 59 52 62",
    ),
    ("spear", Part::Spear, "M32 28 C 31.4 19 31.4 11 32 2"),
];

/// Where on the palm a place is; without one, a note sheet.
pub fn place(part: Option<Part>) -> Markup {
    html! {
        svg.drawn viewBox="0 0 64 64" width="48" height="48" aria-hidden="true" focusable="false" {
            @match part {
                Some(part) => (palm(part)),
                None => { path.sheet d="M14 6 H42 L52 16 V58 H14 Z" {} path.line d="M22 24 H44 M22 34 H44 M22 44 H36" {} }
            }
        }
    }
}

fn palm(here: Part) -> Markup {
    let is_here = |part| part == here || (here == Part::Crown && is_crown(part));
    html! {
        @for (class, part, path) in PALM {
            path class={ (class) @if is_here(part) { " here" } } d=(path) {}
        }
        @if here == Part::Crown { path.round d="M32 1 C 54 1 63 18 60 34 C 58 46 50 50 32 50 C 14 50 6 46 4 34 C 1 18 10 1 32 1 Z" {} }
        @if here == Part::Fruit {
            path.stalk.here d="M34 30 C 41 31 44 36 44 42" {}
            @for (x, y) in [(41, 42), (47, 42), (44, 46), (40, 47), (48, 47), (44, 51)] { circle.fruit cx=(x) cy=(y) r="2.6" {} }
        }
    }
}

fn is_crown(part: Part) -> bool {
    matches!(part, Part::Spear | Part::Young | Part::Middle | Part::Old)
}

/// A leaflet lying flat, its tip to the right.
const LEAFLET: &str = "M4 24 C 14 12 34 12 46 24 C 34 36 14 36 4 24 Z";
/// A frond seen whole, its tip up.
const FROND: &str = "M24 46 C 8 34 8 14 24 3 C 40 14 40 34 24 46 Z";
/// The left leaflets of a feather frond, and the right ones.
const LEFT: &str = "M24 40 L10 34 M24 32 L8 25 M24 24 L9 16 M24 16 L13 8";
const RIGHT: &str = "M24 40 L38 34 M24 32 L40 25 M24 24 L39 16 M24 16 L35 8";
/// The segments of a fan frond.
const FAN: &str = "M24 44 L5 19 M24 44 L14 10 M24 44 V5 M24 44 L34 10 M24 44 L43 19";
/// Fronds round a spear.
const CROWN: &str = "M24 44 C 16 30 10 28 4 34 M24 44 C 32 30 38 28 44 34 M24 44 C 19 28 14 22 8 20 M24 44 C 29 28 34 22 40 20";
/// A length of trunk.
const TRUNK: &str = "M17 2 L15 46 H33 L31 2 Z";

/// What a sign looks like, for signs that a drawing helps with: pieces as class and path, 48 by 48.
fn pieces(key: &str) -> &'static [(&'static str, &'static str)] {
    match key {
        "translucent-flecks" => &[
            ("leaf", LEAFLET),
            (
                "spot",
                "M14 22 h3 v3 h-3 Z M22 17 h3 v3 h-3 Z M24 27 h4 v3 h-4 Z M32 21 h3 v4 h-3 Z M17 29 h3 v2 h-3 Z M36 26 h2 v2 h-2 Z M29 16 h2 v2 h-2 Z",
            ),
        ],
        "streaks-across-leaflets" => &[
            ("leaf", LEAFLET),
            ("streak", "M14 17 V31 M20 15 V33 M27 15 V33 M34 17 V31"),
        ],
        "green-centre-yellow-edge" | "band-even-base-to-tip" | "lemon-yellow-edge" => &[
            ("yellow", FROND),
            ("leaf", "M24 44 C 19 32 19 18 24 8 C 29 18 29 32 24 44 Z"),
        ],
        "worse-toward-frond-tip" => &[
            ("leaf", FROND),
            (
                "burnt",
                "M24 3 C 15 9 12 15 11.4 21 H36.6 C 36 15 33 9 24 3 Z",
            ),
        ],
        "worse-toward-frond-base" => &[
            ("leaf", FROND),
            (
                "burnt",
                "M24 46 C 15 38 12 32 11.6 27 H36.4 C 36 32 33 38 24 46 Z",
            ),
        ],
        "colour-without-line" => &[
            ("yellow", FROND),
            (
                "fade",
                "M24 46 C 14 37 12 29 16 24 C 20 27 22 20 26 25 C 29 20 33 28 35 30 C 33 37 30 42 24 46 Z",
            ),
        ],
        "one-sided-browning" => &[("rib", "M24 46 V4"), ("green", LEFT), ("dead", RIGHT)],
        "other-side-tip-to-base" => &[
            ("rib", "M24 46 V4"),
            ("green", "M24 40 L10 34 M24 32 L8 25"),
            ("dead", RIGHT),
            ("dead", "M24 24 L9 16 M24 16 L13 8"),
        ],
        "frizzled-new" | "frizzled-old" => &[
            ("rib", "M24 46 V8"),
            (
                "green",
                "M24 42 L12 38 M24 36 L10 31 M24 42 L36 38 M24 36 L38 31",
            ),
            (
                "dead",
                "M24 28 C 18 28 20 22 15 23 C 12 24 14 19 11 18 M24 20 C 19 20 20 14 16 14 C 13 14 15 10 12 9 M24 28 C 30 28 28 22 33 23 C 36 24 34 19 37 18 M24 20 C 29 20 28 14 32 14 C 35 14 33 10 36 9",
            ),
        ],
        "hooked-leaflet-tips" => &[(
            "leaf",
            "M4 38 C 8 22 24 12 38 12 C 46 12 46 22 39 22 C 42 18 38 16 34 18 C 22 22 12 30 4 38 Z",
        )],
        "frond-end-blunt" => &[
            ("rib", "M24 46 V14"),
            (
                "green",
                "M24 42 L10 36 M24 34 L9 27 M24 26 L10 18 M24 42 L38 36 M24 34 L39 27 M24 26 L38 18",
            ),
            ("line", "M8 12 H40"),
        ],
        "conk-lower-trunk" => &[
            ("trunk", TRUNK),
            ("conk", "M31 28 C 44 26 46 34 43 36 C 39 38 33 37 32 36 Z"),
            ("line", "M34 33 C 38 34 41 34 43 33"),
        ],
        "trunk-narrows" => &[
            ("trunk", "M12 46 L15 24 L21.5 8 H26.5 L33 24 L36 46 Z"),
            ("green", "M24 8 C 18 2 12 3 8 8 M24 8 C 30 2 36 3 40 8"),
        ],
        "trunk-kinked" => &[
            ("trunk", "M12 46 L15 26 L30 12 L38 18 L27 28 L27 46 Z"),
            ("line", "M14 27 L28 29"),
        ],
        "trunk-bleeds" => &[
            ("trunk", TRUNK),
            ("burnt", "M22 12 h5 l1 22 c 0 4 -6 4 -6 0 Z"),
        ],
        "holes-chewed-fibre" => &[
            ("trunk", TRUNK),
            (
                "hole",
                "M20 12 m-2.5 0 a2.5 2.5 0 1 0 5 0 a2.5 2.5 0 1 0 -5 0 M27 24 m-2.5 0 a2.5 2.5 0 1 0 5 0 a2.5 2.5 0 1 0 -5 0 M21 36 m-2.5 0 a2.5 2.5 0 1 0 5 0 a2.5 2.5 0 1 0 -5 0",
            ),
        ],
        "trunk-gash-shot-holes" => &[
            ("trunk", TRUNK),
            ("burnt", "M23 4 L27 6 L25 22 L28 44 L23 44 L21 22 Z"),
        ],
        "trunk-buried" => &[
            ("trunk", "M18 2 V38 H30 V2 Z"),
            ("line", "M2 34 H46 M6 40 H42 M10 46 H38"),
        ],
        "leaflet-tips-dead" | "new-tips-dead" => &[
            ("leaf", LEAFLET),
            (
                "burnt",
                "M34 15.4 C 39 17.5 43 20.5 46 24 C 43 27.5 39 30.5 34 32.6 C 37 27 37 21 34 15.4 Z",
            ),
        ],
        "fan-segment-tips-dead" => &[
            ("green", FAN),
            (
                "dead",
                "M8 21 L4 18 M16 12 L13 8 M24 9 V4 M32 12 L35 8 M40 21 L44 18",
            ),
        ],
        "fan-segment-edges-yellow" => &[
            ("gold", FAN),
            ("rib", "M24 44 V14 M24 44 L14 18 M24 44 L34 18"),
        ],
        "spear-pulls-out" => &[
            ("frond", CROWN),
            ("inked", "M24 30 V4"),
            ("line", "M24 42 V35 M20 38 L24 34 L28 38"),
        ],
        "spear-leaning" => &[("frond", CROWN), ("inked", "M24 42 C 27 30 33 18 41 9")],
        "spear-firm" => &[("frond", CROWN), ("inked", "M24 42 V4")],
        "spear-hangs-dead" => &[("green", CROWN), ("dead", "M24 42 C 26 20 40 18 43 44")],
        "spears-unopened-stacked" => {
            &[("frond", CROWN), ("inked", "M18 40 V8 M24 42 V4 M30 40 V8")]
        }
        "spots-with-ring" => &[
            ("leaf", LEAFLET),
            (
                "ring",
                "M17 24 m-5 0 a5 5 0 1 0 10 0 a5 5 0 1 0 -10 0 M32 23 m-5 0 a5 5 0 1 0 10 0 a5 5 0 1 0 -10 0",
            ),
            (
                "burnt",
                "M17 24 m-2.4 0 a2.4 2.4 0 1 0 4.8 0 a2.4 2.4 0 1 0 -4.8 0 M32 23 m-2.4 0 a2.4 2.4 0 1 0 4.8 0 a2.4 2.4 0 1 0 -4.8 0",
            ),
        ],
        "green-dots-on-yellow" => &[
            ("yellow", LEAFLET),
            (
                "dot",
                "M15 22 h3 v3 h-3 Z M23 18 h3 v3 h-3 Z M25 27 h3 v3 h-3 Z M33 22 h3 v3 h-3 Z",
            ),
        ],
        "black-diamonds" => &[
            ("leaf", LEAFLET),
            (
                "hole",
                "M17 19 L20 24 L17 29 L14 24 Z M27 17 L30 22 L27 27 L24 22 Z M35 21 L38 25 L35 29 L32 25 Z",
            ),
        ],
        "dead-streaks-new" => &[
            ("leaf", LEAFLET),
            ("dead thin", "M12 22 H30 M18 27 H40 M24 18.5 H38"),
        ],
        "flag-frond" => &[
            (
                "green",
                "M24 46 C 20 30 12 22 4 20 M24 46 C 28 30 36 22 44 20 M24 46 C 22 26 18 14 12 6 M24 46 C 26 26 30 14 36 6",
            ),
            ("gold", "M24 46 C 25 28 26 14 24 3"),
        ],
        "even-light-green" => &[("rib", "M24 46 V4"), ("pale", LEFT), ("pale", RIGHT)],
        "stalk-stripe" => &[
            ("petiole", "M19 2 H29 L31 46 H17 Z"),
            ("burnt", "M25 4 h3 l1.5 40 h-4 Z"),
        ],
        "stalk-lesion-local" => &[
            ("petiole", "M19 2 H29 L31 46 H17 Z"),
            (
                "burnt",
                "M22 16 C 26 14 28 20 27 26 C 26 31 22 31 21.5 26 Z",
            ),
        ],
        "stalk-brown-inside" => &[
            ("petiole", "M6 24 C 6 14 42 14 42 24 C 42 36 6 36 6 24 Z"),
            ("burnt", "M14 25 C 14 20 34 20 34 25 C 34 31 14 31 14 25 Z"),
        ],
        "crown-one-sided" => &[
            ("trunk", "M22 28 L21 46 H27 L26 28 Z"),
            (
                "green",
                "M24 28 C 18 12 10 10 4 16 M24 28 C 16 20 8 22 4 30 M24 28 C 22 14 20 8 16 4",
            ),
            (
                "dead",
                "M24 28 C 30 14 38 14 42 26 M24 28 C 32 22 38 28 38 38 M24 28 C 27 14 32 8 38 10",
            ),
        ],
        "outer-fronds-collapse-plume" => &[
            ("trunk", "M22 28 L21 46 H27 L26 28 Z"),
            (
                "dead",
                "M23 28 C 14 26 12 34 12 42 M25 28 C 34 26 36 34 36 42 M22 29 C 17 30 17 38 18 44 M26 29 C 31 30 31 38 30 44",
            ),
            (
                "green",
                "M24 28 C 22 16 18 10 14 6 M24 28 V3 M24 28 C 26 16 30 10 34 6",
            ),
        ],
        "only-upright-tuft" => &[
            ("trunk", "M22 28 L21 46 H27 L26 28 Z"),
            (
                "green",
                "M24 28 C 22 16 19 9 15 5 M24 28 V3 M24 28 C 26 16 29 9 33 5",
            ),
        ],
        "crown-flat-top" => &[
            ("trunk", "M22 24 L21 46 H27 L26 24 Z"),
            (
                "green",
                "M23 24 C 16 16 8 18 3 24 M25 24 C 32 16 40 18 45 24 M23 25 C 16 24 10 30 8 38 M25 25 C 32 24 38 30 40 38",
            ),
            ("line", "M6 12 H42"),
        ],
        "dead-fronds-hang-round" | "skirt" => &[
            ("trunk", "M22 18 L21 46 H27 L26 18 Z"),
            ("green", "M24 18 C 20 8 12 6 6 10 M24 18 C 28 8 36 6 42 10"),
            (
                "dead",
                "M22 19 C 15 22 14 32 15 40 M26 19 C 33 22 34 32 33 40 M23 20 C 19 24 19 34 19 42 M25 20 C 29 24 29 34 29 42",
            ),
        ],
        _ => &[],
    }
}

/// What a sign looks like; nothing for one that no drawing helps with.
pub fn sign(key: &str) -> Markup {
    let pieces = pieces(key);
    html! {
        @if !pieces.is_empty() {
            svg.drawn viewBox="0 0 48 48" width="40" height="40" aria-hidden="true" focusable="false" {
                @for (class, path) in pieces { path class=(class) d=(PreEscaped(*path)) {} }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use model::Knowledge;

    #[test]
    fn signs_that_are_easier_shown_than_said_have_drawings() {
        let drawn = Knowledge::embedded()
            .signs
            .iter()
            .filter(|row| !pieces(&row.key).is_empty());
        assert!(drawn.count() >= 30, "the keys of the table changed");
    }

    #[test]
    fn every_place_draws_itself_heavily() {
        for (part, word) in Part::ALL {
            let text = place(Some(part)).into_string();
            assert!(text.contains("here"), "{word} is nowhere on its palm");
        }
    }
}
