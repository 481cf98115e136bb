//! The sweep: once through the log, in one direction of time.
//!
//! Forward, a palm that passes the disorder on fouls the blade that cuts it, and a foul blade exposes the palms it cuts
//! later. Backward is the same with time turned round: a cut by which the case may have been exposed marks the blade,
//! and the palms that a marked blade cut earlier are candidates. So there is one sweep, over a view of the log that runs
//! either way. `docs/trace.md` has the meaning, ties included.
//!
//! Nearly all touches of a large log are a clean blade on a sound palm. They cost two loads and one test; times are not
//! even read. All else goes by seconds ([`Sweep::second`]).

use crate::blade::{Mark, Marks, NONE};
use crate::log::{Cleaning, Log, Seconds};
use crate::reach::{Case, Contact, Reach, Rules, Set};
use std::collections::VecDeque;
use std::ops::Range;

/// Palms reached from the cases by blades, later in time. Cases themselves are not among them.
pub fn forward(log: &Log, cases: &[Case], rules: &Rules) -> Reach {
    Sweep::<false>::run(log, cases, rules)
}

/// Palms from which blades lead to the cases, earlier in time. Cases themselves are not among them; palms that do not
/// carry the disorder are no candidates.
pub fn backward(log: &Log, cases: &[Case], rules: &Rules) -> Reach {
    let mut reach = Sweep::<true>::run(log, cases, rules);
    let carries = |c: &Contact| rules.carries[c.palm as usize];
    if reach.contacts.iter().all(carries) {
        return reach;
    }
    reach.contacts.retain(carries);
    reach.place.fill(0);
    for (k, contact) in reach.contacts.iter().enumerate() {
        reach.place[contact.palm as usize] = k as u32 + 1;
    }
    reach
}

/// A blade was cleaned within the second in view: adequately, or nobody can say.
const ADEQUATE: u8 = 1;
const UNKNOWN: u8 = 2;

/// A palm begins or ceases to pass the disorder on.
struct Turn {
    at: Seconds,
    palm: u32,
    hot: bool,
}

struct Sweep<'a, const BACK: bool> {
    log: &'a Log,
    rules: &'a Rules<'a>,
    /// Seconds until a reached palm counts: at least one in the certain set, where the order within a second is open.
    wait: Seconds,
    /// By palm and, behind the palms, by kind of cleaning (always 0): not 0 while it passes it on.
    hot: Vec<u8>,
    /// By palm: steps from a case; [`NONE`] for one not reached.
    steps: Vec<u32>,
    /// By palm: the last touch that reached it, and how many did.
    seen: Vec<(u32, u32)>,
    /// By blade: is foul now.
    foul: Vec<u8>,
    /// By blade: what it carries.
    marks: Vec<Marks>,
    /// By blade, within the second in view: what it took up.
    fresh: Vec<Marks>,
    /// By blade, within the second in view: its cleanings.
    cleaned: Vec<u8>,
    /// Turns of cases, the next last.
    of_cases: Vec<Turn>,
    /// Turns of reached palms: in the order of the sweep, because the wait is the same for all.
    of_reached: VecDeque<Turn>,
    reach: Reach,
}

impl<'a, const BACK: bool> Sweep<'a, BACK> {
    fn run(log: &'a Log, cases: &[Case], rules: &'a Rules<'a>) -> Reach {
        let (palms, blades) = (log.palms() as usize, log.blades() as usize);
        assert_eq!(rules.carries.len(), palms, "one entry for each palm");
        assert!(log.len() < NONE as usize, "too many touches");
        let certain = rules.set == Set::Certain;
        let mut sweep = Sweep::<BACK> {
            log,
            rules,
            wait: rules.latency.max(i64::from(certain)),
            hot: vec![0; palms + 3],
            steps: vec![NONE; palms],
            seen: vec![(NONE, 0); palms],
            foul: vec![0; blades],
            marks: vec![Marks::CLEAN; blades],
            fresh: vec![Marks::CLEAN; blades],
            cleaned: vec![0; blades],
            of_cases: Vec::new(),
            of_reached: VecDeque::new(),
            reach: Reach {
                contacts: Vec::new(),
                place: vec![0; palms],
            },
        };
        sweep.begin(cases);
        sweep.through();
        sweep.told()
    }

    /// Time as the sweep runs.
    fn sweep_time(at: Seconds) -> Seconds {
        if BACK { -at } else { at }
    }

    /// Number of the touch at a place of the sweep.
    fn number(&self, place: usize) -> usize {
        if BACK {
            self.log.len() - 1 - place
        } else {
            place
        }
    }

    fn time(&self, place: usize) -> Seconds {
        Self::sweep_time(self.log.at(self.number(place)))
    }

    fn begin(&mut self, cases: &[Case]) {
        for case in cases {
            self.steps[case.palm as usize] = 0;
            let (from, until) = if BACK {
                (case.until, case.from)
            } else {
                (case.from, case.until)
            };
            let first = from.map_or(Seconds::MIN, Self::sweep_time);
            let last = until.map_or(Seconds::MAX, Self::sweep_time);
            if first > last {
                continue;
            }
            let palm = case.palm;
            let turn = |at, hot| Turn { at, palm, hot };
            self.of_cases.push(turn(first, true));
            if last < Seconds::MAX {
                self.of_cases.push(turn(last + 1, false));
            }
        }
        self.of_cases
            .sort_by_key(|turn| std::cmp::Reverse((turn.at, turn.hot)));
    }

    fn through(&mut self) {
        let (mut place, mut turn, mut stop) = (0, None, self.log.len());
        while place < self.log.len() {
            let next = self.next_turn();
            if next != turn {
                turn = next;
                stop = next.map_or(self.log.len(), |at| self.place_from(place, at));
            }
            place = self.skip(place, stop);
            if place < stop {
                let second = self.second_around(place);
                place = second.end;
                self.second(second);
            } else if turn.is_some() {
                self.turn_until(place);
                (turn, stop) = (None, self.log.len());
            }
        }
    }

    /// When the next palm begins or ceases to pass it on, in sweep time.
    fn next_turn(&self) -> Option<Seconds> {
        let case = self.of_cases.last().map(|turn| turn.at);
        let reached = self.of_reached.front().map(|turn| turn.at);
        case.into_iter().chain(reached).min()
    }

    /// The first place of the sweep, not before `place`, whose time is not before `at`.
    fn place_from(&self, place: usize, at: Seconds) -> usize {
        let (mut low, mut high) = (place, self.log.len());
        while low < high {
            let middle = low.midpoint(high);
            if self.time(middle) < at {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        low
    }

    /// All turns due at the time of a place; behind the log, all that are left.
    fn turn_until(&mut self, place: usize) {
        let now = if place < self.log.len() {
            self.time(place)
        } else {
            Seconds::MAX
        };
        while let Some(turn) = self.of_cases.pop_if(|turn| turn.at <= now) {
            let hot = &mut self.hot[turn.palm as usize];
            // counted, because a case may have more than one time, and they may overlap
            *hot = if turn.hot {
                hot.saturating_add(1)
            } else {
                hot.saturating_sub(1)
            };
        }
        while self.of_reached.front().is_some_and(|turn| turn.at <= now) {
            if let Some(turn) = self.of_reached.pop_front() {
                self.hot[turn.palm as usize] = 1;
            }
        }
    }

    /// Over everything that is a clean blade on a sound palm; the place of the first touch that is more, or `stop`.
    fn skip(&self, place: usize, stop: usize) -> usize {
        let len = self.log.len();
        let range = if BACK {
            len - stop..len - place
        } else {
            place..stop
        };
        let (blade, code) = (&self.log.blade[range.clone()], &self.log.code[range]);
        let more = |(blade, code): (&u16, &u32)| {
            self.foul[usize::from(*blade)] | self.hot[*code as usize] != 0
        };
        let found = if BACK {
            blade.iter().rev().zip(code.iter().rev()).position(more)
        } else {
            blade.iter().zip(code).position(more)
        };
        found.map_or(stop, |steps| place + steps)
    }

    /// The places of the second that a place lies in.
    fn second_around(&self, place: usize) -> Range<usize> {
        let at = self.time(place);
        let mut from = place;
        while from > 0 && self.time(from - 1) == at {
            from -= 1;
        }
        let mut to = place + 1;
        while to < self.log.len() && self.time(to) == at {
            to += 1;
        }
        from..to
    }

    /// One second of the log: nobody knows in which order its touches came.
    fn second(&mut self, places: Range<usize>) {
        if places.len() == 1 {
            return self.lone(places.start);
        }
        for place in places.clone() {
            let (blade, code) = self.columns(place);
            self.cleaned[blade] |= match code.checked_sub(self.log.palms()) {
                Some(how) if how == Cleaning::Adequate as u32 => ADEQUATE,
                Some(how) if how == Cleaning::Unknown as u32 => UNKNOWN,
                _ => 0,
            };
        }
        match self.rules.set {
            Set::Certain => self.certain_second(places.clone()),
            Set::Possible => self.possible_second(places.clone()),
        }
        for place in places {
            let (blade, _) = self.columns(place);
            self.foul[blade] = u8::from(self.marks[blade].any());
            self.cleaned[blade] = 0;
            self.fresh[blade] = Marks::CLEAN;
        }
    }

    /// A touch that has its second for itself, as nearly all have: what [`Sweep::second`] does, without its lists.
    fn lone(&mut self, place: usize) {
        let (blade, code) = self.columns(place);
        if let Some(how) = code.checked_sub(self.log.palms()) {
            let doubtful = how == Cleaning::Unknown as u32 && self.rules.set == Set::Certain;
            if doubtful || how == Cleaning::Adequate as u32 {
                self.marks[blade] = Marks::CLEAN;
                self.foul[blade] = 0;
            }
            return;
        }
        if self.foul[blade] != 0 {
            let new = self.meet(place, code, self.marks[blade].by_another(code));
            self.warm(new, code);
        }
        if self.hot[code as usize] != 0 {
            let mark = self.mark(place, code);
            self.marks[blade].add(mark);
            self.foul[blade] = 1;
        }
    }

    /// A blade cleaned in this second, in whatever order, neither passes on nor takes up.
    fn certain_second(&mut self, places: Range<usize>) {
        for (place, blade, palm) in self.cuts(places.clone()) {
            if self.cleaned[blade] == 0 {
                self.meet(place, palm, self.marks[blade].by_another(palm));
            }
        }
        for place in places.clone() {
            let (blade, _) = self.columns(place);
            if self.cleaned[blade] != 0 {
                self.marks[blade] = Marks::CLEAN;
            }
        }
        for (place, blade, palm) in self.cuts(places) {
            if self.cleaned[blade] == 0 && self.hot[palm as usize] != 0 {
                let mark = self.mark(place, palm);
                self.marks[blade].add(mark);
            }
        }
    }

    /// A blade that is foul before this second or takes it up in it may pass it on to all it cuts in it.
    fn possible_second(&mut self, places: Range<usize>) {
        let mut again = true;
        while again {
            for (place, blade, palm) in self.cuts(places.clone()) {
                if self.hot[palm as usize] != 0 {
                    let mark = self.mark(place, palm);
                    self.fresh[blade].add(mark);
                }
            }
            again = false;
            for (place, blade, palm) in self.cuts(places.clone()) {
                let known = self.steps[palm as usize] != NONE;
                let new = !known && self.meet(place, palm, self.may_pass(blade, palm));
                again |= self.warm(new, palm);
            }
        }
        for (place, blade, palm) in self.cuts(places.clone()) {
            let own = self.number(place);
            if self.reach.of(palm).is_none_or(|contact| contact.own != own) {
                self.meet(place, palm, self.may_pass(blade, palm));
            }
        }
        for place in places {
            let (blade, _) = self.columns(place);
            if self.cleaned[blade] & ADEQUATE != 0 {
                self.marks[blade] = Marks::CLEAN;
                // what was taken up in this second may have come after the cleaning
                self.cleaned[blade] = 0;
            }
            self.marks[blade] = self.marks[blade].and(&self.fresh[blade]);
        }
    }

    /// A palm reached just now passes it on at once if nothing has to be waited for; whether that is so.
    fn warm(&mut self, new: bool, palm: u32) -> bool {
        let warm = new && self.wait == 0 && self.rules.carries[palm as usize];
        if warm {
            self.hot[palm as usize] = 1;
        }
        warm
    }

    fn may_pass(&self, blade: usize, palm: u32) -> Option<Mark> {
        self.marks[blade].and(&self.fresh[blade]).by_another(palm)
    }

    fn mark(&self, place: usize, palm: u32) -> Mark {
        Mark {
            touch: self.number(place) as u32,
            palm,
            steps: self.steps[palm as usize],
        }
    }

    /// A palm cut by a blade that another palm fouled; whether it was reached for the first time.
    fn meet(&mut self, place: usize, palm: u32, mark: Option<Mark>) -> bool {
        let Some(mark) = mark else {
            return false;
        };
        let own = self.number(place) as u32;
        let (last, times) = &mut self.seen[palm as usize];
        if self.steps[palm as usize] != NONE {
            (*last, *times) = (own, *times + 1);
            return false;
        }
        (*last, *times) = (own, 1);
        self.steps[palm as usize] = mark.steps + 1;
        self.reach.contacts.push(Contact {
            palm,
            own: own as usize,
            other: mark.touch as usize,
            generation: mark.steps + 1,
            last: own as usize,
            times: 1,
        });
        self.reach.place[palm as usize] = self.reach.contacts.len() as u32;
        if self.rules.carries[palm as usize] {
            let at = self.time(place).saturating_add(self.wait);
            let hot = true;
            self.of_reached.push_back(Turn { at, palm, hot });
        }
        true
    }

    /// What was found, complete.
    fn told(mut self) -> Reach {
        for contact in &mut self.reach.contacts {
            let (last, times) = self.seen[contact.palm as usize];
            (contact.last, contact.times) = (last as usize, times);
        }
        self.reach
    }

    fn columns(&self, place: usize) -> (usize, u32) {
        let number = self.number(place);
        (usize::from(self.log.blade[number]), self.log.code[number])
    }

    /// The cuts among some places: place, blade, palm.
    fn cuts(
        &self,
        places: Range<usize>,
    ) -> impl Iterator<Item = (usize, usize, u32)> + use<'a, BACK> {
        let log = self.log;
        places
            .map(move |place| {
                let number = if BACK { log.len() - 1 - place } else { place };
                (place, usize::from(log.blade[number]), log.code[number])
            })
            .filter(move |(_, _, code)| *code < log.palms())
    }
}
