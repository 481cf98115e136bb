//! A short way through classes of many palms: nearest palm first, made better by turning stretches round (2-opt) and moving
//! stretches of up to three palms (Or-opt) among near neighbours, then again and again shaken and mended: in one spot,
//! or by turning whole classes round, as classes side by side may have to turn together. A way that is a little longer is
//! kept, too, ever less of it towards the end; the best one is the answer. Every class stays a stretch of its own, and the
//! steps between classes count as the others do. The same at every run: the shakes come from a fixed sequence.

use super::field::Field;

/// Neighbours looked at.
const NEAR: usize = 8;
/// Longest stretch that is moved.
const STRETCH: usize = 3;
/// Shakes for each palm.
const SHAKES_A_PALM: usize = 200;
/// Shakes times palms, at most.
const MOST_WORK: usize = 8_000_000;
/// A stretch of so many palms is shaken at a time.
const WINDOW: usize = 30;
/// A way that is longer by so many mean steps is kept at first.
const SLACK_STEPS: f64 = 3.0;
/// One shake of so many turns whole classes round.
const TURNS: usize = 8;
/// A gain below this is none, metres: sums of lengths are only so fine.
const LEAST_GAIN: f64 = 1e-7;

/// Nodes in a good order. Nodes are numbered class by class; `sizes` says how many each class has, none of them none.
pub fn short(field: &Field, sizes: &[usize]) -> Vec<usize> {
    let mut path = Path::new(field, sizes);
    let mut touched: Vec<usize> = (0..field.len()).collect();
    path.mend(&mut touched);
    path.shake_and_mend();
    path.way()
}

/// A class: the places of the path that it fills, both included.
#[derive(Clone, Copy)]
struct Class {
    low: usize,
    high: usize,
}

struct Path<'a> {
    field: &'a Field,
    /// The gate, all palms, the end.
    order: Vec<usize>,
    /// Place of each palm in `order`.
    at: Vec<usize>,
    classes: Vec<Class>,
    class_of: Vec<usize>,
    /// Nearest palms of the same class, the nearest first.
    near: Vec<Vec<usize>>,
    /// Palms in whose neighbourhood something changed.
    touched: Vec<usize>,
}

/// A fixed sequence of numbers that look drawn by lot (splitmix64).
struct Lots(u64);

impl Lots {
    fn below(&mut self, n: usize) -> usize {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) % n as u64) as usize
    }
}

impl<'a> Path<'a> {
    fn new(field: &'a Field, sizes: &[usize]) -> Path<'a> {
        let mut classes = Vec::new();
        let mut class_of = Vec::new();
        for (class, size) in sizes.iter().enumerate() {
            let low = class_of.len() + 1;
            let high = class_of.len() + size;
            classes.push(Class { low, high });
            class_of.resize(high, class);
        }
        let order = nearest_first(field, &classes);
        let mut path = Path {
            near: neighbours(field, &classes),
            at: vec![0; field.len()],
            order,
            field,
            classes,
            class_of,
            touched: Vec::new(),
        };
        path.number(1, field.len());
        path
    }

    fn way(self) -> Vec<usize> {
        let palms = self.field.len();
        self.order[1..=palms].to_vec()
    }

    fn metres(&self) -> f64 {
        self.order.windows(2).map(|w| self.d(w[0], w[1])).sum()
    }

    #[inline]
    fn d(&self, a: usize, b: usize) -> f64 {
        self.field.length(a, b)
    }

    /// Length of the step from place `i` to the next.
    #[inline]
    fn step(&self, i: usize) -> f64 {
        self.d(self.order[i], self.order[i + 1])
    }

    /// Writes down where the palms of a stretch of the path are.
    fn number(&mut self, low: usize, high: usize) {
        for i in low..=high {
            self.at[self.order[i]] = i;
        }
    }

    fn class_at(&self, place: usize) -> Class {
        self.classes[self.class_of[self.order[place]]]
    }

    /// Makes the path better around palms until nothing more is found.
    fn mend(&mut self, palms: &mut Vec<usize>) {
        loop {
            while let Some(palm) = palms.pop() {
                while self.better_around(palm) {
                    palms.append(&mut self.touched);
                }
            }
            if !(0..self.classes.len()).any(|class| self.better_ends(self.classes[class])) {
                return;
            }
            palms.append(&mut self.touched);
        }
    }

    fn better_around(&mut self, palm: usize) -> bool {
        self.turn_around(palm) || self.move_around(palm)
    }

    /// 2-opt: a stretch turned round so that the palm comes to stand beside a near one.
    fn turn_around(&mut self, palm: usize) -> bool {
        let i = self.at[palm];
        for forward in [true, false] {
            let old = if forward {
                self.step(i)
            } else {
                self.step(i - 1)
            };
            for k in 0..self.near[palm].len() {
                let other = self.near[palm][k];
                if self.d(palm, other) >= old {
                    break;
                }
                let j = self.at[other];
                let (low, high) = (i.min(j), i.max(j));
                let (low, high) = match forward {
                    true => (low + 1, high),
                    false => (low, high - 1),
                };
                if self.turn_if_better(low, high) {
                    return true;
                }
            }
        }
        false
    }

    /// Turns the stretch round if that is shorter.
    fn turn_if_better(&mut self, low: usize, high: usize) -> bool {
        let (before, after) = (self.order[low - 1], self.order[high + 1]);
        let (first, last) = (self.order[low], self.order[high]);
        let old = self.d(before, first) + self.d(last, after);
        let new = self.d(before, last) + self.d(first, after);
        if new >= old - LEAST_GAIN {
            return false;
        }
        self.touch(&[low - 1, low, high, high + 1]);
        self.order[low..=high].reverse();
        self.number(low, high);
        true
    }

    /// Or-opt: a stretch that begins or ends with the palm moved beside a near one.
    fn move_around(&mut self, palm: usize) -> bool {
        let i = self.at[palm];
        let class = self.class_at(i);
        for length in 1..=STRETCH {
            for (low, high) in [(i, i + length - 1), ((i + 1).saturating_sub(length), i)] {
                if low < class.low || high > class.high || (length == 1 && low != i) {
                    continue;
                }
                if self.move_beside(palm, low, high) {
                    return true;
                }
            }
        }
        false
    }

    fn move_beside(&mut self, palm: usize, low: usize, high: usize) -> bool {
        let (before, after) = (self.order[low - 1], self.order[high + 1]);
        let saved = self.step(low - 1) + self.step(high) - self.d(before, after);
        for k in 0..self.near[palm].len() {
            let other = self.near[palm][k];
            if self.d(palm, other) >= saved {
                break;
            }
            let j = self.at[other];
            // between the palm before the near one and it, or between it and the next
            for gap in [j - 1, j] {
                if self.move_if_better(low, high, gap) {
                    return true;
                }
            }
        }
        false
    }

    /// Moves the stretch between the places `gap` and `gap + 1`, either way round, if that is shorter.
    fn move_if_better(&mut self, low: usize, high: usize, gap: usize) -> bool {
        if (low - 1..=high).contains(&gap) {
            return false;
        }
        let (before, after) = (self.order[low - 1], self.order[high + 1]);
        let (first, last) = (self.order[low], self.order[high]);
        let (left, right) = (self.order[gap], self.order[gap + 1]);
        let saved = self.d(before, first) + self.d(last, after) - self.d(before, after);
        let room = saved + self.d(left, right) - LEAST_GAIN;
        let kept = self.d(left, first) + self.d(last, right);
        let turned = self.d(left, last) + self.d(first, right);
        if kept.min(turned) >= room {
            return false;
        }
        self.touch(&[low - 1, low, high, high + 1, gap, gap + 1]);
        if turned < kept {
            self.order[low..=high].reverse();
        }
        let (from, to) = (low.min(gap + 1), high.max(gap));
        if gap < low {
            self.order[from..=to].rotate_right(high - low + 1);
        } else {
            self.order[from..=to].rotate_left(high - low + 1);
        }
        self.number(from, to);
        true
    }

    /// The same at the ends of a class, where a near neighbour may be of another class, or the gate, or nobody.
    fn better_ends(&mut self, class: Class) -> bool {
        let Class { low, high } = class;
        let turned = (low + 1..=high).any(|j| self.turn_if_better(low, j))
            || (low..high).any(|i| self.turn_if_better(i, high));
        turned
            || (low..=high).any(|i| {
                (i..=high.min(i + STRETCH - 1))
                    .any(|j| self.move_if_better(i, j, low - 1) || self.move_if_better(i, j, high))
            })
    }

    fn touch(&mut self, places: &[usize]) {
        let palms = self.field.len();
        let there = places.iter().map(|i| self.order[*i]);
        self.touched.extend(there.filter(|node| *node < palms));
    }

    /// Shakes one spot at a time and mends it; goes back where the way has become much longer than the best.
    fn shake_and_mend(&mut self) {
        let palms = self.field.len();
        let rounds = (SHAKES_A_PALM * palms).min(MOST_WORK / palms.max(1));
        let mut lots = Lots(palms as u64);
        let mut here = (self.metres(), self.order.clone());
        let mut best = here.clone();
        let mut touched = Vec::new();
        // what may be lost at first, in mean steps; less where there is little time to win it back
        let slack = SLACK_STEPS * here.0 * rounds as f64 / (SHAKES_A_PALM * palms * palms) as f64;
        for round in 0..rounds {
            // now and then whole classes side by side, which may have to turn together
            let shaken = match lots.below(TURNS) {
                0 => self.turn_classes(&mut lots),
                _ => self.shake(&mut lots),
            };
            if !shaken {
                continue;
            }
            touched.append(&mut self.touched);
            self.mend(&mut touched);
            let metres = self.metres();
            let left = 1.0 - round as f64 / rounds as f64;
            if metres <= here.0 + slack * left * left {
                here.0 = metres;
                here.1.copy_from_slice(&self.order);
                if metres < best.0 - LEAST_GAIN {
                    best.0 = metres;
                    best.1.copy_from_slice(&self.order);
                }
            } else {
                self.order.copy_from_slice(&here.1);
                self.number(1, palms);
            }
        }
        self.order = best.1;
        self.number(1, palms);
    }

    /// Turns each class of a run of classes round in its place, and shakes one spot of the run.
    fn turn_classes(&mut self, lots: &mut Lots) -> bool {
        let count = self.classes.len();
        if count == 1 {
            return self.shake(lots);
        }
        let (one, other) = (lots.below(count), lots.below(count));
        for class in one.min(other)..=one.max(other) {
            let Class { low, high } = self.classes[class];
            self.touch(&[low - 1, low, high, high + 1]);
            self.order[low..=high].reverse();
            self.number(low, high);
        }
        self.shake(lots);
        true
    }

    /// Swaps two stretches that lie side by side within a class: a change that neither turning nor moving makes in one go.
    fn shake(&mut self, lots: &mut Lots) -> bool {
        let place = 1 + lots.below(self.field.len());
        let Class { low, high } = self.class_at(place);
        if high == low {
            return false;
        }
        let low = low.max(place.saturating_sub(WINDOW / 2));
        let high = high.min(low + WINDOW);
        let mut cuts = [0; 3].map(|_| low + lots.below(high - low + 2));
        cuts.sort_unstable();
        let [a, b, c] = cuts;
        if a == b || b == c {
            return false;
        }
        self.touch(&[a - 1, a, b - 1, b, c - 1, c]);
        self.order[a..c].rotate_left(b - a);
        self.number(a, c - 1);
        true
    }
}

/// From the gate always to the nearest palm left of the class.
fn nearest_first(field: &Field, classes: &[Class]) -> Vec<usize> {
    let mut order = vec![field.gate()];
    let mut here = field.gate();
    for class in classes {
        let mut left: Vec<usize> = (class.low - 1..class.high).collect();
        while !left.is_empty() {
            let lengths = left.iter().map(|node| field.length(here, *node));
            let nearest = lengths.enumerate().min_by(|a, b| a.1.total_cmp(&b.1));
            here = left.swap_remove(nearest.map_or(0, |(k, _)| k));
            order.push(here);
        }
    }
    order.push(field.end());
    order
}

fn neighbours(field: &Field, classes: &[Class]) -> Vec<Vec<usize>> {
    let mut near = Vec::with_capacity(field.len());
    for class in classes {
        for palm in class.low - 1..class.high {
            let others = (class.low - 1..class.high).filter(|other| *other != palm);
            let mut others: Vec<(f64, usize)> =
                others.map(|o| (field.length(palm, o), o)).collect();
            let order =
                |a: &(f64, usize), b: &(f64, usize)| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1));
            if others.len() > NEAR {
                others.select_nth_unstable_by(NEAR, order);
                others.truncate(NEAR);
            }
            others.sort_unstable_by(order);
            near.push(others.into_iter().map(|(_, other)| other).collect());
        }
    }
    near
}
