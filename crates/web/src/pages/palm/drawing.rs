//! The drawn crown with its slider and its switch.

use super::Asked;
use crate::Reader;
use desk::views::drawing::{Crown, PAPER, Placed, Shape, Stem};
use desk::views::palm::PalmView;
use desk::views::{CrownFrames, Mode, WEEKS, class};
use maud::{Markup, PreEscaped, html};

/// Weeks offered as links where there is no script for the slider; all of them are among [`WEEKS`].
const LINKED: [u32; 5] = [0, 4, 8, 24, 52];

/// The figure: picture, what it shows, switch, slider.
pub fn figure(reader: &Reader, asked: &Asked, view: &PalmView) -> Markup {
    let crown = &view.crown;
    let (mode, weeks) = asked.first_frame();
    let (shown, frame) = crown.frame(mode, weeks);
    let words = &shown.frames[frame];
    html! {
        figure.crown #crown data-testid="crown" {
            (picture(reader, view, &crown.drawing.crowns[words.crown], &words.counts))
            figcaption {
                p.when #crown-when aria-live="polite" { (words.when) }
                p.counts #crown-counts aria-live="polite" { (words.counts) }
                (slider(reader, asked, view, shown.mode, frame))
                (switch(reader, asked, view, shown.mode, WEEKS[frame]))
                (legend(reader))
                p.small { (crown.trunk) ". " (crown.spread) " " (reader.say("crown-median")) }
            }
            script #crown-data type="application/json" { (PreEscaped(for_script(crown))) }
        }
    }
}

/// The frames as JSON that may stand inside a script element.
fn for_script(crown: &CrownFrames) -> String {
    crown.for_script().to_string().replace('<', "\\u003c")
}

fn picture(reader: &Reader, view: &PalmView, crown: &Crown, counts: &str) -> Markup {
    let (half, above, below) = PAPER;
    let paper = format!("{} {} {} {}", -half, -above, half * 2.0, above + below);
    let drawing = &view.crown.drawing;
    html! {
        svg.palm viewBox=(paper) role="img" aria-labelledby="crown-title crown-desc" {
            title #crown-title { (view.crown.title) }
            desc #crown-desc { (counts) " " (view.crown.trunk) "." }
            defs { (PreEscaped(PAINTS)) (shapes(&drawing.shapes)) }
            (ground(&drawing.stem))
            g #fronds-far { (fronds(crown, true)) }
            (stem(&drawing.stem))
            g #fronds-near { (fronds(crown, false)) }
            g #cut-marks { @for frond in &crown.fronds { @if let Some(at) = &frond.cut { (mark(at)) } } }
            (level(reader))
        }
    }
}

fn shapes(shapes: &[Shape]) -> Markup {
    html! {
        @for shape in shapes {
            g id=(shape.id) {
                path d=(shape.leaf.blade) {}
                @if !shape.leaf.veins.is_empty() { path.veins d=(shape.leaf.veins) {} }
                path.rib d=(shape.leaf.rib) {}
            }
        }
    }
}

fn fronds(crown: &Crown, behind: bool) -> Markup {
    html! {
        @for frond in crown.fronds.iter().filter(|f| f.behind == behind) { (placed(frond)) }
    }
}

fn placed(frond: &Placed) -> Markup {
    html! { use href={ "#" (frond.shape) } class=(class(frond)) transform=(frond.transform) {} }
}

fn mark(at: &str) -> Markup {
    html! {
        g.cut-mark transform=(at) { path.halo d="M0-18V18" {} path.blade d="M0-18V18" {} }
    }
}

fn ground(stem: &Stem) -> Markup {
    html! {
        @if let Some(y) = stem.ground {
            path.ground d={ "M-3000 " (y + 18) "q3000-44 6000 0V1500H-3000z" } {}
            ellipse.shade cx="0" cy=(y) rx="430" ry="22" {}
        }
    }
}

fn stem(stem: &Stem) -> Markup {
    let spear = if stem.spear.gone {
        "spear gone"
    } else {
        "spear"
    };
    html! {
        path.trunk d=(stem.trunk) {}
        path class=(if stem.boots { "boots" } else { "rings" }) d=(stem.marks) {}
        @if let Some(shaft) = &stem.shaft { path.shaft d=(shaft) {} }
        path class=(spear) transform={ "rotate(" (stem.spear.turn) ")" } d=(stem.spear.path) {}
    }
}

/// The level line with the hours at its ends, as on the clock.
fn level(reader: &Reader) -> Markup {
    html! {
        g.level aria-hidden="true" {
            path d="M-820 0H820" {}
            text x="-890" y="20" { "9" }
            text x="890" y="20" text-anchor="end" { "3" }
            text x="-890" y="-66" { (reader.say("crown-level")) }
        }
    }
}

fn switch(reader: &Reader, asked: &Asked, view: &PalmView, shown: Mode, weeks: u32) -> Markup {
    html! {
        nav.switch #crown-switch aria-label=(reader.say("crown-switch")) {
            @for mode in &view.crown.modes {
                a href={ (asked.address(&view.tag, mode.mode, weeks)) "#crown" } data-mode=(mode.mode.key())
                    aria-current=[(mode.mode == shown).then_some("true")] { (mode.name) }
            }
        }
    }
}

fn slider(reader: &Reader, asked: &Asked, view: &PalmView, shown: Mode, frame: usize) -> Markup {
    html! {
        div.slide.by-script-only {
            label for="weeks" { (reader.say("crown-slider")) }
            input #weeks type="range" min="0" max="52" step="4" value=(WEEKS[frame]) autocomplete="off"
                aria-describedby="crown-when";
            div.scale aria-hidden="true" { span { "0" } span { "13" } span { "26" } span { "39" } span { "52" } }
        }
        noscript {
            nav.weeks aria-label=(reader.say("crown-slider")) {
                @for weeks in LINKED {
                    a href={ (asked.address(&view.tag, shown, weeks)) "#crown" }
                        aria-current=[(WEEKS[frame] == weeks).then_some("true")] { (weeks) }
                }
            }
        }
    }
}

fn legend(reader: &Reader) -> Markup {
    html! {
        ul.legend aria-hidden="true" {
            @for key in ["green", "yellowing", "brown"] {
                li { span class={ "swatch " (key) } {} (reader.say(&format!("crown-key-{key}"))) }
            }
            li { svg.key viewBox="-14 -26 28 52" { (mark("")) } (reader.say("crown-key-cut")) }
        }
    }
}

/// Colours of fronds and trunk: along a frond from its base outward, so that one paint serves every lean.
const PAINTS: &str = r##"<radialGradient id="pg" gradientUnits="userSpaceOnUse" cx="0" cy="0" r="820"><stop offset="0" stop-color="#234f1c"/><stop offset=".5" stop-color="#3f7d2b"/><stop offset="1" stop-color="#75a542"/></radialGradient><radialGradient id="pgf" gradientUnits="userSpaceOnUse" cx="0" cy="0" r="820"><stop offset="0" stop-color="#14331a"/><stop offset=".6" stop-color="#285224"/><stop offset="1" stop-color="#47722f"/></radialGradient><radialGradient id="py" gradientUnits="userSpaceOnUse" cx="0" cy="0" r="820"><stop offset="0" stop-color="#7f8f2a"/><stop offset=".5" stop-color="#e0bd35"/><stop offset="1" stop-color="#b47a24"/></radialGradient><radialGradient id="pyf" gradientUnits="userSpaceOnUse" cx="0" cy="0" r="820"><stop offset="0" stop-color="#5d6a20"/><stop offset=".5" stop-color="#a58a25"/><stop offset="1" stop-color="#85591a"/></radialGradient><radialGradient id="pb" gradientUnits="userSpaceOnUse" cx="0" cy="0" r="820"><stop offset="0" stop-color="#6e4a2a"/><stop offset=".5" stop-color="#9c7346"/><stop offset="1" stop-color="#bd9a6c"/></radialGradient><radialGradient id="pbf" gradientUnits="userSpaceOnUse" cx="0" cy="0" r="820"><stop offset="0" stop-color="#4c321b"/><stop offset=".6" stop-color="#765433"/><stop offset="1" stop-color="#92714a"/></radialGradient><linearGradient id="pt"><stop offset="0" stop-color="#6d5a45"/><stop offset=".35" stop-color="#b09a7c"/><stop offset="1" stop-color="#57452f"/></linearGradient><linearGradient id="ps"><stop offset="0" stop-color="#4d7a35"/><stop offset=".35" stop-color="#a8c97c"/><stop offset="1" stop-color="#3a6128"/></linearGradient>"##;
