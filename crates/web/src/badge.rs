//! How a blade stands, as a badge: word, shape and colour say the same.

use desk::views::blades::badge::Badge;
use maud::{Markup, html};

/// The badge.
pub fn badge(badge: &Badge) -> Markup {
    html! { span class={ "badge " (badge.key) } data-state=(badge.key) { (icon(badge.key)) span { (badge.text) } } }
}

/// The shape of a state: told apart without colour.
pub fn icon(key: &str) -> Markup {
    let (outline, mark) = match key {
        "clean" | "adequate" => (
            "M12 2a10 10 0 1 1 0 20a10 10 0 1 1 0-20z",
            "M7 12.5l3.5 3.5l6.5-8",
        ),
        "same" => ("M12 2a10 10 0 1 1 0 20a10 10 0 1 1 0-20z", "M8 9h8M8 14h8"),
        "short" => ("M5 2h14l-5.5 10l5.5 10h-14l5.5-10z", "M9 19h6"),
        "unknown" | "nothing" => (
            "M12 1l11 11l-11 11l-11-11z",
            "M9.5 9.5a2.5 2.5 0 1 1 3.6 2.2q-1.1 .7-1.1 2.1M12 16.8v.4",
        ),
        "dirty" => ("M3 3h18v18h-18z", "M8 8l8 8M16 8l-8 8"),
        "spent" => (
            "M12 2c5 7 7 9.5 7 13a7 7 0 1 1-14 0c0-3.500 2-6 7-13z",
            "M8.500 15h7",
        ),
        "lent" | "back" => (
            "M2 12a10 10 0 1 1 20 0a10 10 0 1 1-20 0z",
            "M7 12h10M13 8l4 4l-4 4",
        ),
        "cut" => ("M3 12a9 9 0 1 1 18 0a9 9 0 1 1-18 0z", "M7 17L17 7"),
        _ => ("M8 2h8l6 6v8l-6 6h-8l-6-6v-8z", "M6.500 12h11"),
    };
    html! {
        svg.state viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" focusable="false" {
            path.outline d=(outline) {}
            path.mark d=(mark) {}
        }
    }
}
