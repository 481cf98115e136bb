//! The sweep against a search over all time-respecting paths, on small logs full of ties, doubtful cleanings and palms
//! that do not carry. The search knows nothing of sweeps: it follows the words of `docs/trace.md` one contact at a time.

use proptest::prelude::*;
use spearleaf_trace::{
    Case, Cleaning, Contact, Log, Reach, Rules, Set, Touch, What, backward, forward,
};
use std::collections::BTreeMap;

const PALMS: u32 = 6;
const BLADES: u32 = 3;

/// A small world.
#[derive(Clone, Debug)]
struct World {
    touches: Vec<Touch>,
    carries: Vec<bool>,
    latency: i64,
    case: Case,
    set: Set,
}

fn touch() -> impl Strategy<Value = Touch> {
    let cleaning = prop_oneof![
        Just(Cleaning::Adequate),
        Just(Cleaning::Short),
        Just(Cleaning::Unknown)
    ];
    let what = prop_oneof![
        4 => (0..PALMS).prop_map(|palm| What::Cut { palm }),
        1 => cleaning.prop_map(What::Clean),
    ];
    (0..12_i64, 0..BLADES, what).prop_map(|(at, blade, what)| Touch { at, blade, what })
}

fn world() -> impl Strategy<Value = World> {
    let end = || proptest::option::of(-1..13_i64);
    let set = prop_oneof![Just(Set::Certain), Just(Set::Possible)];
    (
        proptest::collection::vec(touch(), 0..12),
        proptest::collection::vec(proptest::bool::weighted(0.8), PALMS as usize),
        0..4_i64,
        (end(), end()),
        set,
    )
        .prop_map(|(touches, carries, latency, (from, until), set)| World {
            touches,
            carries,
            latency,
            case: Case {
                palm: 0,
                from,
                until,
            },
            set,
        })
}

impl World {
    fn log(&self) -> Log {
        Log::of(self.touches.clone(), BLADES, PALMS).expect("small numbers")
    }

    fn rules(&self) -> Rules<'_> {
        Rules {
            latency: self.latency,
            carries: &self.carries,
            set: self.set,
        }
    }

    fn cuts(&self) -> Vec<(i64, u32, u32)> {
        let mut cuts: Vec<_> = self
            .touches
            .iter()
            .filter_map(|t| match t.what {
                What::Cut { palm } => Some((t.at, t.blade, palm)),
                What::Clean(_) => None,
            })
            .collect();
        cuts.sort_unstable();
        cuts
    }

    /// Whether contact passes from a cut at `t` to a cut at `u` by the same blade.
    fn passes(&self, blade: u32, t: i64, u: i64) -> bool {
        let in_order = match self.set {
            Set::Certain => t < u,
            Set::Possible => t <= u,
        };
        let stops = |touch: &Touch| {
            let c = touch.at;
            touch.blade == blade
                && match (self.set, touch.what) {
                    (Set::Certain, What::Clean(Cleaning::Adequate | Cleaning::Unknown)) => {
                        t <= c && c <= u
                    }
                    (Set::Possible, What::Clean(Cleaning::Adequate)) => t < c && c < u,
                    _ => false,
                }
        };
        in_order && !self.touches.iter().any(stops)
    }

    /// Whether a palm exposed at `e` passes it on at `t`.
    fn ready(&self, e: i64, t: i64) -> bool {
        e + self.latency <= t && (self.set == Set::Possible || e < t)
    }

    fn within(&self, at: i64) -> bool {
        self.case.from.is_none_or(|from| from <= at)
            && self.case.until.is_none_or(|until| at <= until)
    }

    /// Earliest exposure of every palm, over all paths forward.
    fn all_forward(&self) -> BTreeMap<u32, i64> {
        let mut found = BTreeMap::new();
        for (t, blade, palm) in self.cuts() {
            if palm == self.case.palm && self.within(t) {
                self.walk_forward(t, blade, &mut vec![palm], &mut found);
            }
        }
        found
    }

    /// Number and last of the cuts that reach each palm, given when each is first reached.
    fn all_meetings(&self, first: &BTreeMap<u32, i64>) -> BTreeMap<u32, (u32, i64)> {
        let passes_on = |(t, blade, from): &(i64, u32, u32), (u, other, palm): &(i64, u32, u32)| {
            let sick = if *from == self.case.palm {
                self.within(*t)
            } else {
                let exposed = first.get(from);
                self.carries[*from as usize] && exposed.is_some_and(|e| self.ready(*e, *t))
            };
            sick && from != palm && blade == other && self.passes(*blade, *t, *u)
        };
        let cuts = self.cuts();
        let mut out = BTreeMap::new();
        for cut in cuts.iter().filter(|cut| cut.2 != self.case.palm) {
            if cuts.iter().any(|from| passes_on(from, cut)) {
                let (times, last) = out.entry(cut.2).or_insert((0, cut.0));
                (*times, *last) = (*times + 1, cut.0.max(*last));
            }
        }
        out
    }

    fn walk_forward(
        &self,
        t: i64,
        blade: u32,
        path: &mut Vec<u32>,
        found: &mut BTreeMap<u32, i64>,
    ) {
        for (u, other, palm) in self.cuts() {
            if other != blade || path.contains(&palm) || !self.passes(blade, t, u) {
                continue;
            }
            let earliest = found.entry(palm).or_insert(u);
            *earliest = u.min(*earliest);
            if !self.carries[palm as usize] {
                continue;
            }
            path.push(palm);
            for (v, next, again) in self.cuts() {
                if again == palm && self.ready(u, v) {
                    self.walk_forward(v, next, path, found);
                }
            }
            path.pop();
        }
    }

    /// Latest cut by which every palm would have passed it on, over all paths that end in the case.
    fn all_backward(&self) -> BTreeMap<u32, i64> {
        let mut found = BTreeMap::new();
        for palm in (0..PALMS).filter(|p| *p != self.case.palm && self.carries[*p as usize]) {
            let leads = |(t, blade, p): &(i64, u32, u32)| {
                *p == palm && self.leads(*t, *blade, &mut vec![palm])
            };
            if let Some((t, ..)) = self.cuts().iter().rev().find(|cut| leads(cut)) {
                found.insert(palm, *t);
            }
        }
        found
    }

    /// Whether a blade fouled by a cut at `t` leads to the case.
    fn leads(&self, t: i64, blade: u32, path: &mut Vec<u32>) -> bool {
        for (u, other, palm) in self.cuts() {
            if other != blade || path.contains(&palm) || !self.passes(blade, t, u) {
                continue;
            }
            if palm == self.case.palm {
                if self.within(u) {
                    return true;
                }
                continue;
            }
            if !self.carries[palm as usize] {
                continue;
            }
            path.push(palm);
            let found = self
                .cuts()
                .iter()
                .any(|(v, next, p)| *p == palm && self.ready(u, *v) && self.leads(*v, *next, path));
            path.pop();
            if found {
                return true;
            }
        }
        false
    }

    /// Every link of every chain holds by itself.
    fn check_chains(&self, log: &Log, reach: &Reach, back: bool) -> Result<(), TestCaseError> {
        for contact in &reach.contacts {
            let chain = reach.chain(log, contact.palm);
            prop_assert_eq!(chain.len(), contact.generation as usize);
            for (k, link) in chain.iter().enumerate() {
                self.check_link(log, link, chain.get(k + 1), back)?;
            }
        }
        Ok(())
    }

    fn check_link(
        &self,
        log: &Log,
        link: &Contact,
        next: Option<&Contact>,
        back: bool,
    ) -> Result<(), TestCaseError> {
        let (own, other) = (log.touch(link.own), log.touch(link.other));
        prop_assert_eq!(own.what, What::Cut { palm: link.palm });
        prop_assert_eq!(own.blade, other.blade);
        let (first, second) = if back { (own, other) } else { (other, own) };
        prop_assert!(self.passes(own.blade, first.at, second.at));
        match next {
            None => {
                prop_assert_eq!(
                    other.what,
                    What::Cut {
                        palm: self.case.palm
                    }
                );
                prop_assert!(self.within(other.at));
            }
            Some(next) => {
                prop_assert_eq!(other.what, What::Cut { palm: next.palm });
                prop_assert!(self.carries[next.palm as usize]);
                let met = log.touch(next.own).at;
                let (exposed, passed) = if back {
                    (other.at, met)
                } else {
                    (met, other.at)
                };
                prop_assert!(self.ready(exposed, passed));
            }
        }
        Ok(())
    }
}

fn times(log: &Log, reach: &Reach) -> BTreeMap<u32, i64> {
    reach
        .contacts
        .iter()
        .map(|c| (c.palm, log.at(c.own)))
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(6000))]

    #[test]
    fn forward_finds_what_all_paths_find(world in world()) {
        let log = world.log();
        let reach = forward(&log, &[world.case], &world.rules());
        let first = world.all_forward();
        prop_assert_eq!(times(&log, &reach), first.clone());
        let meetings = reach.contacts.iter().map(|c| (c.palm, (c.times, log.at(c.last)))).collect();
        prop_assert_eq!(world.all_meetings(&first), meetings);
        world.check_chains(&log, &reach, false)?;
    }

    #[test]
    fn backward_finds_what_all_paths_find(world in world()) {
        let log = world.log();
        let reach = backward(&log, &[world.case], &world.rules());
        prop_assert_eq!(times(&log, &reach), world.all_backward());
        world.check_chains(&log, &reach, true)?;
    }

    /// Without a limit of time, a palm is a candidate exactly if the case would be exposed were that palm the case.
    #[test]
    fn backward_is_forward_seen_from_the_other_end(world in world()) {
        let log = world.log();
        let always = |palm| Case { palm, from: None, until: None };
        let back = backward(&log, &[always(0)], &world.rules());
        for palm in (1..PALMS).filter(|p| world.carries[*p as usize]) {
            let ahead = forward(&log, &[always(palm)], &world.rules());
            prop_assert_eq!(back.of(palm).is_some(), ahead.of(0).is_some(), "palm {}", palm);
        }
    }

    /// What is certain is possible, and not later.
    #[test]
    fn the_certain_set_lies_in_the_possible_one(world in world()) {
        let log = world.log();
        let certain = Rules { set: Set::Certain, ..world.rules() };
        let possible = Rules { set: Set::Possible, ..world.rules() };
        let inner = forward(&log, &[world.case], &certain);
        let outer = forward(&log, &[world.case], &possible);
        for contact in &inner.contacts {
            let wide = outer.of(contact.palm);
            prop_assert!(wide.is_some_and(|w| log.at(w.own) <= log.at(contact.own)));
        }
    }

    /// The order in which rows arrive does not matter.
    #[test]
    fn rows_may_come_in_any_order(world in world()) {
        let mut turned = world.clone();
        turned.touches.reverse();
        prop_assert_eq!(
            forward(&world.log(), &[world.case], &world.rules()),
            forward(&turned.log(), &[world.case], &world.rules())
        );
    }
}
