//! What the keeper sees on a stem and writes down, slips of counting included.

use super::grow::Sight;
use super::roster::Case;
use super::year::{ROUNDS, Stand};
use model::{Clock, Day, Inspection, Spear};

impl Stand {
    /// What the keeper sees and writes down of one stem.
    pub(super) fn look(&mut self, stem: u16, day: Day) -> Inspection {
        let crown = &mut self.crowns[usize::from(stem)];
        crown.grow_to(day);
        let (sight, degrees) = (crown.sight(), crown.lowest_degrees());
        let mut look = Inspection::blank(stem + 1, day);
        look.green = Some(self.counted(sight.green));
        look.yellowing = Some(self.counted(sight.yellowing));
        look.brown = Some(self.counted(sight.brown));
        look.new_leaves = self.new_fronds(stem, &sight);
        look.spear = Some(Spear::Firm);
        if self.dice.chance(0.6) {
            let [left, right] =
                [0, 1].map(|_| quarter((degrees + 4.0 * self.dice.normal()) / 30.0));
            look.clock_left = Clock::new(12.0 - left);
            look.clock_right = Clock::new(right);
        }
        self.signs(&mut look, day);
        look
    }

    /// A count made from below: the more fronds, the more it slips.
    fn counted(&mut self, n: u32) -> u32 {
        let slip = self.dice.normal() * (0.015 * f64::from(n) + if n > 6 { 0.3 } else { 0.0 });
        (f64::from(n) + slip).round().max(0.0) as u32
    }

    /// On every third palm the spear is marked at each look, and new fronds are counted at the next.
    fn new_fronds(&mut self, stem: u16, sight: &Sight) -> Option<u32> {
        if !self.number.is_multiple_of(3) {
            return None;
        }
        let before = self.marks[usize::from(stem)].replace(sight.made);
        before.map(|made| sight.made - made)
    }

    /// Counts nobody took.
    pub(super) fn miss(&self, look: &mut Inspection, round: usize) {
        if !self.has(Case::MissingCounts) {
            return;
        }
        match round % 4 {
            1 => look.brown = None,
            2 => (look.yellowing, look.spear) = (None, None),
            3 => {
                (look.green, look.new_leaves) = (None, None);
                look.notes = "Sun in the eyes; dead ones only.".to_owned();
            }
            _ => {}
        }
    }

    fn signs(&self, look: &mut Inspection, day: Day) {
        let lately = day >= self.ago(70);
        if lately {
            let (seen, absent) = self.lately_noted(look.stem);
            look.signs.extend(seen.iter().map(|key| (*key).to_owned()));
            look.absent
                .extend(absent.iter().map(|key| (*key).to_owned()));
        }
        if self.has(Case::SkirtOverPath) {
            look.signs.push("skirt".to_owned());
        }
        if self.plot.species == "Cocos nucifera" {
            look.signs.push("fruit".to_owned());
        }
        if self.has(Case::SpearLeaning)
            && look.stem == 1
            && day == self.ago(ROUNDS[self.plot.site].1)
        {
            look.spear = Some(Spear::Leaning);
        }
    }
}

/// Keys of signs seen, and of signs looked for and not there.
type Noted = (&'static [&'static str], &'static [&'static str]);

impl Stand {
    /// What the keeper noted on the rounds of the last ten weeks, by what befell the palm.
    fn lately_noted(&self, stem: u16) -> Noted {
        let first = stem == 1;
        match self.plot.cases.as_slice() {
            cases if cases.contains(&Case::WiltSuspect) => (
                &["one-sided-browning", "stalk-stripe", "starts-oldest"],
                &[
                    "spear-first-old-green",
                    "holes-chewed-fibre",
                    "fungus-dots-on-stalk",
                ],
            ),
            cases if cases.contains(&Case::NestHold) && first => (&["nest"], &[]),
            cases if cases.contains(&Case::Conk) => (&["conk-lower-trunk"], &["trunk-soft-high"]),
            cases if cases.contains(&Case::MovedNineWeeksAgo) => (
                &["recently-moved", "kept-fronds-die-after-move", "spear-firm"],
                &[
                    "translucent-flecks",
                    "green-centre-yellow-edge",
                    "frizzled-new",
                ],
            ),
            cases if cases.contains(&Case::Hungry) && self.plot.tag == "T-08" => (
                &[
                    "starts-oldest",
                    "translucent-flecks",
                    "bands-middle-above-spots",
                    "lemon-yellow-edge",
                ],
                &["one-sided-browning", "starts-youngest"],
            ),
            cases if cases.contains(&Case::Hungry) => (
                &[
                    "starts-oldest",
                    "translucent-flecks",
                    "leaflet-tips-dead",
                    "colour-without-line",
                ],
                &[
                    "green-centre-yellow-edge",
                    "one-sided-browning",
                    "starts-youngest",
                ],
            ),
            cases if cases.contains(&Case::OverTrimmed) => (
                &["green-cut-bases", "only-upright-tuft"],
                &["one-sided-browning"],
            ),
            _ => (&[], &[]),
        }
    }
}

/// Hours to the nearest quarter, kept on its own side of the dial.
fn quarter(hours: f64) -> f64 {
    (hours.clamp(0.25, 6.0) * 4.0).round() / 4.0
}
