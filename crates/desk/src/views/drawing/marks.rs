//! Marks where cuts go, for paper: black in a white edge, so that they show on a copy without colour.

use super::svg::svg;
use super::{Crown, Drawing};
use std::fmt::Write;

/// The picture of [`svg()`] with a bar across the stalk of every frond that is to go (of many, of some).
pub fn svg_with_cuts(drawing: &Drawing, crown: &Crown, name: &str, says: &str) -> String {
    const END: &str = "</svg>";
    let mut out = svg(drawing, crown, name, says);
    if out.ends_with(END) {
        out.truncate(out.len() - END.len());
    }
    for at in crown.fronds.iter().filter_map(|frond| frond.cut.as_ref()) {
        let _ = write!(
            out,
            r##"<g transform="{at}" fill="none" stroke-linecap="round"><path d="M0-30V30" stroke="#fff" stroke-width="34"/><path d="M0-30V30" stroke="#000" stroke-width="16"/></g>"##
        );
    }
    out.push_str(END);
    out
}

#[cfg(test)]
mod tests {
    use super::super::{Look, draw, place};
    use super::*;
    use crown::{Picture, PictureFrond, Tint};

    #[test]
    fn every_marked_frond_has_its_bar_and_the_picture_is_closed_once() {
        let frond = |rank: u32, cut: bool| PictureFrond {
            rank,
            azimuth_degrees: f64::from(rank) * 137.5,
            lean_degrees: 40.0 + 9.0 * f64::from(rank),
            tint: if cut { Tint::Brown } else { Tint::Green },
            cut,
        };
        let picture = Picture {
            day: model::Day(0),
            fronds: (0..9).map(|n| frond(n, n > 6)).collect(),
            theta_end_degrees: 150.0,
            theta_from_clock: false,
        };
        let drawing = draw(&Look::default(), &[&picture]);
        let crown: &place::Crown = &drawing.crowns[0];
        let marked = crown.fronds.iter().filter(|f| f.cut.is_some()).count();
        assert_eq!(marked, 2);
        let out = svg_with_cuts(&drawing, crown, "x", "a crown");
        assert_eq!(
            out.matches(r##"stroke="#000" stroke-width="16""##).count(),
            marked
        );
        assert_eq!(out.matches("</svg>").count(), 1);
        let plain = svg(&drawing, crown, "x", "a crown");
        assert!(out.starts_with(plain.trim_end_matches("</svg>")));
    }
}
