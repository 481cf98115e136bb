//! An inspection in 28 bytes. The marks for "missing" never leave this file.

use model::{Clock, Day, Inspection, Removed, Spear};

/// The parts of an inspection that are numbers, packed.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Look {
    /// Index of the palm.
    pub palm: u32,
    /// Stem number.
    pub stem: u16,
    /// Day.
    pub date: Day,
    counts: [u16; 7],
    clocks: [u8; 2],
    spear: u8,
}

const MISSING: u16 = u16::MAX;

impl Look {
    /// Packs an inspection whose counts are at most 1,000 and whose clock readings are quarters, as intake has checked.
    pub fn pack(palm: u32, i: &Inspection) -> Look {
        let count = |n: Option<u32>| {
            n.map_or(MISSING, |n| {
                u16::try_from(n).unwrap_or(MISSING - 1).min(MISSING - 1)
            })
        };
        let clock = |c: Option<Clock>| c.map_or(0, |c| (c.0 * 4.0) as u8);
        let counted = [
            i.green,
            i.yellowing,
            i.brown,
            i.new_leaves,
            i.removed.green,
            i.removed.yellowing,
            i.removed.brown,
        ];
        let spear = |s: Spear| {
            Spear::ALL
                .iter()
                .position(|(known, _)| *known == s)
                .map_or(0, |p| p as u8 + 1)
        };
        Look {
            palm,
            stem: i.stem,
            date: i.date,
            counts: counted.map(count),
            clocks: [clock(i.clock_left), clock(i.clock_right)],
            spear: i.spear.map_or(0, spear),
        }
    }

    /// The inspection again, without signs, notes and unknown columns.
    pub fn unpack(&self) -> Inspection {
        let count = |n: u16| (n != MISSING).then_some(u32::from(n));
        let [
            green,
            yellowing,
            brown,
            new_leaves,
            off_green,
            off_yellowing,
            off_brown,
        ] = self.counts.map(count);
        let [clock_left, clock_right] = self.clocks.map(|q| Clock::new(f64::from(q) / 4.0));
        let spear = usize::from(self.spear)
            .checked_sub(1)
            .and_then(|p| Spear::ALL.get(p))
            .map(|(s, _)| *s);
        Inspection {
            green,
            yellowing,
            brown,
            new_leaves,
            removed: Removed {
                green: off_green,
                yellowing: off_yellowing,
                brown: off_brown,
            },
            spear,
            clock_left,
            clock_right,
            ..Inspection::blank(self.stem, self.date)
        }
    }
}
