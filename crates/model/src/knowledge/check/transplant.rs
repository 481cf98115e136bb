//! Moving palms: unique keys, words in both languages, names that resolve, units that fit, figures in limits and order.

use super::{Seen, is_key, said, within};
use crate::knowledge::Knowledge;
use crate::knowledge::reader::{Flaw, each_row};
use crate::knowledge::rows::number;
use crate::knowledge::transplant::{HEADER, MoveTopic, TABLE};

/// All that is wrong with the table.
pub(super) fn transplant(text: &str, known: &Knowledge, flaws: &mut Vec<Flaw>) {
    let mut keys = Seen::default();
    each_row(text, TABLE, HEADER, flaws, |r, cells: [&str; 11]| {
        let [key, palm, what, _, _, low, high, unit, en, es, _] = cells;
        if !is_key(key) {
            r.flaw("not-a-key", key);
        }
        keys.once(r, "key-twice", key);
        said(r, "text", en);
        said(r, "text_es", es);
        if en == es {
            r.flaw("not-translated", en);
        }
        let named = palm.starts_with('*')
            || known
                .species
                .iter()
                .any(|s| s.name == palm || s.genus() == palm);
        if !named {
            r.flaw("unknown-species", palm);
        }
        let topic = MoveTopic::ALL.iter().find(|(_, word)| *word == what);
        let Some((topic, _)) = topic else {
            return;
        };
        let (own, most) = limits(*topic);
        if !high.is_empty() && unit != own {
            r.flaw("no-unit", unit);
        }
        within(r, low, 0.0, most);
        within(r, high, 0.0, most);
        if let (Some(low), Some(high)) = (number(low), number(high))
            && low > high
        {
            r.flaw("out-of-order", &format!("{low}..{high}"));
        }
        if low == "unknown" && high != "unknown" {
            r.flaw("not-a-range", low);
        }
    });
}

/// Unit of a topic's figure and the largest that can be right.
fn limits(topic: MoveTopic) -> (&'static str, f64) {
    match topic {
        MoveTopic::BallRadius | MoveTopic::BallDepth => ("cm", 200.0),
        MoveTopic::Roots
        | MoveTopic::TopRoots
        | MoveTopic::Survival
        | MoveTopic::Depth
        | MoveTopic::ShedShare => ("%", 100.0),
        MoveTopic::Kept | MoveTopic::FullAgain | MoveTopic::TrunkColour | MoveTopic::Look => {
            ("d", 1500.0)
        }
        MoveTopic::SoilDensity | MoveTopic::TrunkDensity => ("kg/m3", 2500.0),
        MoveTopic::FrondMass => ("kg/m", 20.0),
        MoveTopic::ShedMonth => ("fronds", 100.0),
        MoveTopic::Young
        | MoveTopic::Leaves
        | MoveTopic::Untie
        | MoveTopic::Season
        | MoveTopic::Brace
        | MoveTopic::Lift
        | MoveTopic::Water => ("", 0.0),
    }
}
