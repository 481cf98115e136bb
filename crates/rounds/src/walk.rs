//! In which order to take the palms of one site.
//!
//! Healthy palms come first and confirmed ones last, so that nothing is carried from an ill palm to a sound one; within
//! that the way on foot is as short as it can be, from the gate (if there is one) to the last palm, over all classes at
//! once: the end of one class is chosen with the next one in view. `docs/walk.md` has the method and its limits.

mod exact;
mod field;
mod search;
#[cfg(test)]
mod tests;

use field::Field;
use model::Position;

/// A class of at most so many palms with positions is solved to the proven optimum.
pub const EXACT_UP_TO: usize = 12;

/// What is known of a palm's health, in the order of the walk.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Health {
    /// Looked at, and nothing speaks of a disease that blades or hands carry.
    Healthy,
    /// Not looked at, or not lately.
    Unknown,
    /// Something speaks of such a disease.
    Suspect,
    /// It is settled that the palm has one.
    Confirmed,
}

impl Health {
    /// All, in the order of the walk.
    pub const ALL: [Health; 4] = [
        Health::Healthy,
        Health::Unknown,
        Health::Suspect,
        Health::Confirmed,
    ];

    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            Health::Healthy => "healthy",
            Health::Unknown => "unknown",
            Health::Suspect => "suspect",
            Health::Confirmed => "confirmed",
        }
    }
}

/// A palm to go to.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Spot {
    /// Where it stands; `None` is unknown, and so is a latitude or longitude outside its range.
    pub at: Option<Position>,
    /// Its health.
    pub health: Health,
}

/// An order of palms.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Walk {
    /// Indices into the spots, each once. Palms without a position are the last of their class, in the order given.
    pub order: Vec<usize>,
    /// Metres on foot from the gate (or the first palm, where there is no gate) over the palms with positions, as the
    /// crow flies.
    pub metres: f64,
    /// Whether no order of the palms with positions that keeps the classes is shorter: proven.
    pub exact: bool,
    /// How many palms have no position: `metres` does not count the way to them.
    pub unplaced: usize,
}

/// The order for a site: classes of health first, then the shortest way from `from` (`None`: from the best first palm).
///
/// Proven shortest where no class has more than [`EXACT_UP_TO`] palms with positions, else a search that is the same at
/// every run. Work grows with the square of the number of palms.
pub fn order(from: Option<Position>, spots: &[Spot]) -> Walk {
    let placed = |i: &usize| spots[*i].at.is_some_and(sound);
    let class = |health: Health| (0..spots.len()).filter(move |i| spots[*i].health == health);
    let classes = Health::ALL.map(|health| class(health).filter(placed).collect::<Vec<usize>>());
    let ids: Vec<usize> = classes.iter().flatten().copied().collect();
    let places: Vec<Position> = ids.iter().filter_map(|i| spots[*i].at).collect();
    let field = Field::new(from.filter(|at| sound(*at)), places);
    let sizes: Vec<usize> = classes.iter().map(Vec::len).filter(|n| *n > 0).collect();
    let exact = sizes.iter().all(|n| *n <= EXACT_UP_TO);
    let way = match exact {
        true => exact::shortest(&field, &sizes),
        false => search::short(&field, &sizes),
    };
    let mut walk = Walk {
        order: Vec::with_capacity(spots.len()),
        metres: field.metres(&way),
        exact,
        unplaced: spots.len() - ids.len(),
    };
    let mut way = way.into_iter().map(|node| ids[node]).peekable();
    for health in Health::ALL {
        while let Some(i) = way.next_if(|i| spots[*i].health == health) {
            walk.order.push(i);
        }
        walk.order.extend(class(health).filter(|i| !placed(i)));
    }
    walk
}

fn sound(at: Position) -> bool {
    at.lat.abs() <= 90.0 && at.lon.abs() <= 180.0
}
