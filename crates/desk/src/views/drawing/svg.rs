//! A crown as a picture of its own: for sheets of paper and for pages that show several crowns side by side.
//!
//! Its tones stay apart in black and white: green is dark, brown is middling, yellowing is light with a dark edge.

use super::{Crown, Drawing, PAPER, Placed, Stem};
use crown::Tint;
use std::fmt::Write;

/// Fill and edge of near fronds by tint; those behind the stem are a little darker or paler.
fn tone(placed: &Placed) -> (&'static str, &'static str) {
    match (placed.tint, placed.behind) {
        (Tint::Green, false) => ("#2c6a27", "#16380f"),
        (Tint::Green, true) => ("#1f4b22", "#0f2a10"),
        (Tint::Yellowing, false) => ("#f7dd6b", "#6b5410"),
        (Tint::Yellowing, true) => ("#e3c75a", "#6b5410"),
        (Tint::Brown, false) => ("#b07d48", "#5a3717"),
        (Tint::Brown, true) => ("#97693b", "#4a2c12"),
    }
}

/// Fill of the three tones for a legend: green, yellowing, brown, each with its edge.
pub const LEGEND: [(&str, &str); 3] = [
    ("#2c6a27", "#16380f"),
    ("#f7dd6b", "#6b5410"),
    ("#b07d48", "#5a3717"),
];

/// The picture as SVG. `name` sets its ids apart from those of other pictures on a page; `says` is read to who cannot
/// see it.
pub fn svg(drawing: &Drawing, crown: &Crown, name: &str, says: &str) -> String {
    let (half, above, below) = PAPER;
    let mut out = String::new();
    let _ = write!(
        out,
        r#"<svg xmlns="http://www.w3.org/2000/svg" viewBox="{} {} {} {}" role="img" aria-label="{}"><defs>"#,
        -half,
        -above,
        half * 2.0,
        above + below,
        escaped(says)
    );
    for shape in &drawing.shapes {
        if !crown.fronds.iter().any(|f| f.shape == shape.id) {
            continue;
        }
        let _ = write!(
            out,
            r##"<g id="{name}{}"><path d="{}"/>"##,
            shape.id, shape.leaf.blade
        );
        if !shape.leaf.veins.is_empty() {
            let _ = write!(
                out,
                r##"<path d="{}" fill="none" stroke="#1b1a14" stroke-width="2" opacity="0.45"/>"##,
                shape.leaf.veins
            );
        }
        let _ = write!(
            out,
            r##"<path d="{}" fill="none" stroke="#23301a" stroke-width="6" stroke-linecap="round"/></g>"##,
            shape.leaf.rib
        );
    }
    out.push_str("</defs>");
    ground(&mut out, &drawing.stem);
    fronds(&mut out, crown, name, true);
    stem(&mut out, &drawing.stem);
    fronds(&mut out, crown, name, false);
    out.push_str(r##"<path d="M-860 0H860" fill="none" stroke="#000" stroke-width="5" stroke-dasharray="22 16"/></svg>"##);
    out
}

fn fronds(out: &mut String, crown: &Crown, name: &str, behind: bool) {
    for frond in crown.fronds.iter().filter(|f| f.behind == behind) {
        let (fill, edge) = tone(frond);
        let _ = write!(
            out,
            r##"<use href="#{name}{}" transform="{}" fill="{fill}" stroke="{edge}" stroke-width="2"/>"##,
            frond.shape, frond.transform
        );
    }
}

fn ground(out: &mut String, stem: &Stem) {
    if let Some(y) = stem.ground {
        let _ = write!(
            out,
            r##"<path d="M-900 {y}H900" fill="none" stroke="#6a5c3c" stroke-width="8"/>"##
        );
    }
}

fn stem(out: &mut String, stem: &Stem) {
    let _ = write!(
        out,
        r##"<path d="{}" fill="#c2ad8e" stroke="#4a3b28" stroke-width="5"/><path d="{}" fill="none" stroke="#5d4d3c" stroke-width="4"/>"##,
        stem.trunk, stem.marks
    );
    if let Some(shaft) = &stem.shaft {
        let _ = write!(
            out,
            r##"<path d="{shaft}" fill="#9dbd76" stroke="#3a6128" stroke-width="5"/>"##
        );
    }
    let (fill, dashes) = match stem.spear.gone {
        true => ("none", r#" stroke-dasharray="22 16""#),
        false => ("#d5e29a", ""),
    };
    let _ = write!(
        out,
        r##"<path d="{}" transform="rotate({})" fill="{fill}" stroke="#44591f" stroke-width="6"{dashes}/>"##,
        stem.spear.path, stem.spear.turn
    );
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;")
        .replace('<', "&lt;")
        .replace('"', "&quot;")
}
