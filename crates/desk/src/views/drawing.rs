//! The drawn crown: a side view made from the model's picture of a day.
//!
//! The view looks straight at the palm, along the level line, so that a frond's angle on paper is its angle on the
//! clock. Lengths are in paper units: 1 is a thousandth of a frond. Shapes of fronds are drawn once for each lean and
//! turn that occurs and placed many times: a year of crowns stays small enough for a phone.

mod fan;
mod feather;
mod frond;
mod marks;
mod path;
mod place;
mod space;
mod stem;
mod svg;

pub use marks::svg_with_cuts;
pub use place::{Crown, Placed, Shape};
pub use stem::{Spine, Stem};
pub use svg::{LEGEND, svg};

use crown::Picture;
use model::species::LeafForm;
use model::{Metres, Spear, Species};

/// What a palm looks like besides its crown's numbers. `None` means unknown; the drawing then takes the commonest.
#[derive(Clone, Copy, PartialEq, Debug, Default)]
pub struct Look {
    /// Blade shape; unknown is drawn as a feather.
    pub form: Option<LeafForm>,
    /// A smooth shaft of leaf sheaths below the crown.
    pub crownshaft: bool,
    /// Old leaf bases stay on the trunk.
    pub boots: bool,
    /// Ground to the base of the crown.
    pub trunk: Option<Metres>,
    /// Length of a frond.
    pub frond: Option<Metres>,
    /// Thickness of the trunk.
    pub thick: Option<Metres>,
    /// State of the spear at the last look.
    pub spear: Option<Spear>,
}

/// Genera drawn with old leaf bases on the trunk, the others with rings (from memory; nothing but the drawing uses it).
const BOOTED: [&str; 9] = [
    "Attalea",
    "Brahea",
    "Butia",
    "Chamaerops",
    "Elaeis",
    "Phoenix",
    "Sabal",
    "Trachycarpus",
    "Washingtonia",
];

impl Look {
    /// The look of a species on a trunk of this height.
    pub fn of(species: Option<&Species>, trunk: Option<Metres>, spear: Option<Spear>) -> Look {
        let Some(s) = species else {
            return Look {
                trunk,
                spear,
                ..Look::default()
            };
        };
        let crownshaft = Species::known(&s.crownshaft).unwrap_or(false);
        Look {
            form: Species::known(&s.leaf_form),
            crownshaft,
            boots: BOOTED.contains(&s.genus()),
            trunk,
            frond: Species::known(&s.leaf_length),
            thick: Species::known(&s.trunk_diameter),
            spear,
        }
    }
}

/// Half the width of the paper, and how far it reaches above and below the crown's heart, in paper units.
pub const PAPER: (f64, f64, f64) = (900.0, 840.0, 760.0);

/// Everything needed to draw a stem through time.
#[derive(Clone, PartialEq, Debug)]
pub struct Drawing {
    /// Shapes of fronds, each used by one or more placed fronds.
    pub shapes: Vec<Shape>,
    /// Trunk, ground and spear.
    pub stem: Stem,
    /// Crowns in the order of the pictures given.
    pub crowns: Vec<Crown>,
}

/// Draws crowns of one stem; the pictures may be of different days and cuts.
pub fn draw(look: &Look, pictures: &[&Picture]) -> Drawing {
    let mut shelf = place::Shelf::new(look.form.unwrap_or(LeafForm::Pinnate));
    let crowns = pictures
        .iter()
        .map(|picture| shelf.place(picture))
        .collect();
    Drawing {
        shapes: shelf.shapes(),
        stem: stem::draw(look),
        crowns,
    }
}

#[cfg(test)]
mod tests;
