//! The lanes of a rotation: cutting is solid, soaking hatched with its word, hands' work hollow, waiting dashed.

use crate::Reader;
use desk::views::rotation::draw::{Block, Drawing, LANE, TOP};
use maud::{Markup, html};

/// Room above and below a block on its lane.
const PAD: i32 = 9;

/// The crew and the sets as lanes; the names stay while the lanes slide.
pub fn lanes(reader: &Reader, drawing: &Drawing) -> Markup {
    html! {
        section aria-labelledby="drawing" {
            h2 #drawing { (reader.say("rotation-drawing")) }
            p.hint { (reader.say("rotation-drawing-hint")) }
            div.rota {
                ul.names aria-hidden="true" { @for lane in &drawing.lanes { li { (lane) } } }
                div.slide-rota role="region" tabindex="0" aria-label=(reader.say("rotation-drawing-hint")) { (picture(reader, drawing)) }
            }
            @if let Some(n) = drawing.only {
                p.small { (reader.words.text("rotation-drawn-first", &[("n", (n as i64).into())])) }
            }
            ul.legend {
                @for key in ["cut", "soak", "hands", "wait"] {
                    li {
                        svg.key.rota-key viewBox="0 0 44 22" aria-hidden="true" focusable="false" {
                            (shape(key, 2, 2, 40, 18))
                        }
                        (reader.say(&format!("rotation-key-{key}")))
                    }
                }
            }
        }
    }
}

fn picture(reader: &Reader, drawing: &Drawing) -> Markup {
    let (width, height) = (drawing.width, drawing.height);
    html! {
        svg.rota-drawn width=(width) height=(height) viewBox={ "0 0 " (width) " " (height) } role="img"
            aria-label=(reader.say("rotation-drawing")) {
            defs {
                pattern #soaking width="8" height="8" patternUnits="userSpaceOnUse" {
                    path.hatch d="M-2 2L2 -2M0 8L8 0M6 10L10 6" {}
                }
            }
            @for n in 0..drawing.lanes.len() { path.lane d={ "M0 " (TOP + LANE * n as i32) "H" (width) } {} }
            @for (x, hour) in &drawing.hours {
                path.hour d={ "M" (x) " " (TOP - 8) "V" (height) } {}
                text.hour-words x=(x + 4) y=(TOP - 11) { (hour) }
            }
            @for block in &drawing.blocks { (self::block(block)) }
        }
    }
}

fn block(block: &Block) -> Markup {
    let (middle, base) = (block.x + block.width / 2, block.y + LANE / 2 + 5);
    html! {
        g.block {
            (shape(block.key, block.x, block.y + PAD, block.width, LANE - 2 * PAD))
            @if !block.label.is_empty() { text class={ "on " (block.key) } x=(middle) y=(base) text-anchor="middle" { (block.label) } }
        }
    }
}

fn shape(key: &str, x: i32, y: i32, width: i32, height: i32) -> Markup {
    html! {
        rect class={ "rota-" (key) } x=(x) y=(y) width=(width) height=(height) {}
        @if key == "soak" { rect fill="url(#soaking)" x=(x) y=(y) width=(width) height=(height) {} }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The names of the lanes stand beside the drawing: the style sheet repeats its heights.
    #[test]
    fn the_style_sheet_knows_the_heights_of_the_lanes() {
        let style = include_str!("../../assets/rotation.css");
        assert!(style.contains(&format!(".rota .names {{ padding-top: {TOP}px;")));
        assert!(style.contains(&format!(".rota .names li {{ height: {LANE}px;")));
    }
}
