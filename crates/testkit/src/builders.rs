//! Palms and inspections in one line.

use crate::day;
use model::{Clock, Inspection, Metres, Palm, Position, Removed, Spear};

/// A palm of a species with one stem and the tag `T1`; everything else unknown.
pub fn palm(species: &str) -> Palm {
    Palm {
        tag: "T1".into(),
        species: species.into(),
        stems: 1,
        ..Palm::default()
    }
}

/// A look at stem 1 on a day (ISO text); everything else missing.
pub fn inspection(date: &str) -> Inspection {
    Inspection::blank(1, day(date))
}

/// What can be said of a palm while building it.
pub trait PalmWith: Sized {
    /// The same palm, changed.
    fn with(self, change: impl FnOnce(&mut Palm)) -> Palm;

    /// With this tag.
    fn tag(self, tag: &str) -> Palm {
        self.with(|p| p.tag = tag.into())
    }
    /// On these grounds.
    fn site(self, site: &str) -> Palm {
        self.with(|p| p.site = site.into())
    }
    /// With this many stems.
    fn stems(self, stems: u16) -> Palm {
        self.with(|p| p.stems = stems)
    }
    /// Planted on a day (ISO text).
    fn planted(self, text: &str) -> Palm {
        self.with(|p| p.planted_on = Some(day(text)))
    }
    /// Moved on a day (ISO text).
    fn moved(self, text: &str) -> Palm {
        self.with(|p| p.moved_on = Some(day(text)))
    }
    /// Last cleaned on a day (ISO text).
    fn cleaned(self, text: &str) -> Palm {
        self.with(|p| p.last_cleaned_on = Some(day(text)))
    }
    /// Ground to crown base, m.
    fn trunk(self, metres: f64) -> Palm {
        self.with(|p| p.trunk_height = Some(Metres(metres)))
    }
    /// At a latitude and longitude, degrees.
    fn at(self, lat: f64, lon: f64) -> Palm {
        self.with(|p| p.position = Some(Position { lat, lon }))
    }
    /// Over something.
    fn over(self, what: &str) -> Palm {
        self.with(|p| p.over = what.into())
    }
    /// Nearest conductor, m.
    fn wires(self, metres: f64) -> Palm {
        self.with(|p| p.wires = Some(Metres(metres)))
    }
}

impl PalmWith for Palm {
    fn with(mut self, change: impl FnOnce(&mut Palm)) -> Palm {
        change(&mut self);
        self
    }
}

/// What can be said of an inspection while building it.
pub trait InspectionWith: Sized {
    /// The same look, changed.
    fn with(self, change: impl FnOnce(&mut Inspection)) -> Inspection;

    /// At this stem.
    fn stem(self, stem: u16) -> Inspection {
        self.with(|i| i.stem = stem)
    }
    /// Green, yellowing and brown fronds counted.
    fn counts(self, green: u32, yellowing: u32, brown: u32) -> Inspection {
        self.with(|i| (i.green, i.yellowing, i.brown) = (Some(green), Some(yellowing), Some(brown)))
    }
    /// New fronds since the marked spear.
    fn new_leaves(self, new: u32) -> Inspection {
        self.with(|i| i.new_leaves = Some(new))
    }
    /// Taken off after the count: green, yellowing, brown.
    fn removed(self, green: u32, yellowing: u32, brown: u32) -> Inspection {
        let removed = Removed {
            green: Some(green),
            yellowing: Some(yellowing),
            brown: Some(brown),
        };
        self.with(|i| i.removed = removed)
    }
    /// State of the spear.
    fn spear(self, spear: Spear) -> Inspection {
        self.with(|i| i.spear = Some(spear))
    }
    /// Clock readings of the lowest live fronds, left and right, hours.
    fn clock(self, left: f64, right: f64) -> Inspection {
        self.with(|i| (i.clock_left, i.clock_right) = (Some(Clock(left)), Some(Clock(right))))
    }
    /// One more sign.
    fn sign(self, key: &str) -> Inspection {
        self.with(|i| i.signs.push(key.into()))
    }
    /// One more sign that was looked for and is not there.
    fn absent(self, key: &str) -> Inspection {
        self.with(|i| i.absent.push(key.into()))
    }
}

impl InspectionWith for Inspection {
    fn with(mut self, change: impl FnOnce(&mut Inspection)) -> Inspection {
        change(&mut self);
        self
    }
}
