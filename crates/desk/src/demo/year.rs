//! The demo's year: rounds of the keeper, cuts of the crew, what was written down.

use super::book::Book;
use super::dice::Dice;
use super::grow::{Crown, Nature};
use super::roster::{Case, Plot, SITES, plots};
use super::{CREW, KEEPER, id};
use crate::office::Note;
use model::{Body, Day, EntryId, Inspection, Metres, Palm, PalmId, Position, Removed, Spear};

/// Days before today on which the keeper's rounds of a site begin and end, and the days between two.
pub(super) const ROUNDS: [(i32, i32, i32); 3] = [(361, 4, 21), (366, 16, 50), (345, 9, 56)];
/// Every so many rounds the crew takes the dead fronds off, beginning with this one.
const CLEANINGS: [(usize, usize); 3] = [(6, 2), (4, 1), (9, 1)];
/// Days before today on which a contractor cut the row.
pub(super) const OVER_TRIMMED: i32 = 152;
/// Days before today on which the wilt began, and its days to the end.
const WILT: (i32, f64) = (78, 170.0);

/// All notes, oldest first.
pub(super) fn notes(today: Day) -> Vec<Note> {
    let mut book = Book {
        notes: Vec::new(),
        ids: 0,
    };
    for (n, plot) in plots().into_iter().enumerate() {
        Stand::new(today, n, plot).write(&mut book);
    }
    felled(today, &mut book);
    super::saws::write(today, &mut book);
    super::moves::write(today, &mut book);
    super::grounds::write(today, &mut book);
    super::tended::write(today, &mut book);
    super::links::write(today, &mut book);
    super::prices::write(today, &mut book);
    super::rounds::write(today, &mut book);
    let mut notes = book.notes;
    notes.sort_by_key(|note| note.at);
    notes
}

/// One palm through the year.
pub(super) struct Stand {
    pub(super) today: Day,
    pub(super) plot: Plot,
    id: PalmId,
    pub(super) number: usize,
    pub(super) dice: Dice,
    pub(super) crowns: Vec<Crown>,
    /// Fronds made when the spear of a stem was last marked.
    pub(super) marks: Vec<Option<u32>>,
}

impl Stand {
    fn new(today: Day, number: usize, plot: Plot) -> Stand {
        let id = PalmId(id(number as u64).0);
        let dice = Dice::new(0x5eed_0000 + number as u64);
        let marks = vec![None; usize::from(plot.stems)];
        let mut stand = Stand {
            today,
            plot,
            id,
            number,
            dice,
            crowns: Vec::new(),
            marks,
        };
        let start = stand.start();
        let nature = stand.nature();
        let uncleaned = if stand.plot.never_cleaned {
            1_100
        } else {
            stand.cleaned_before()
        };
        for stem in 0..stand.plot.stems {
            let one = Nature {
                full: nature.full * stand.dice.between(0.92, 1.06),
                per_year: nature.per_year * stand.dice.between(0.92, 1.08),
                ..nature
            };
            stand.crowns.push(Crown::new(
                one,
                start,
                uncleaned,
                stand.number as u64 * 64 + u64::from(stem),
            ));
        }
        stand
    }

    pub(super) fn has(&self, case: Case) -> bool {
        self.plot.cases.contains(&case)
    }

    pub(super) fn ago(&self, days: i32) -> Day {
        self.today.plus(-days)
    }

    /// Days before registration on which its dead fronds were last taken off.
    fn cleaned_before(&self) -> i32 {
        if self.plot.moved.is_some() {
            2
        } else {
            60 + (self.number as i32 * 37) % 90
        }
    }

    /// The day it enters the register: on arrival, or at the first round, or yesterday's find.
    fn start(&self) -> Day {
        if self.has(Case::OneInspection) {
            return self.ago(ROUNDS[self.plot.site].1);
        }
        self.ago(self.plot.moved.unwrap_or(ROUNDS[self.plot.site].0))
    }

    fn nature(&self) -> Nature {
        Nature {
            full: self.plot.full,
            per_year: self.plot.per_year,
            hunger: self.plot.hunger,
            hangs: self.plot.hangs,
            moved: self.plot.moved.map(|days| self.ago(days)),
            decline: self
                .has(Case::WiltSuspect)
                .then(|| (self.ago(WILT.0), WILT.1)),
        }
    }

    fn write(mut self, book: &mut Book) {
        let start = self.start();
        let palm = self.palm();
        book.push(
            EntryId(self.id.0),
            start,
            13,
            KEEPER,
            Body::PalmRegistered(palm),
            None,
        );
        for (round, day) in self.days().into_iter().enumerate() {
            self.round(book, round, day);
        }
        self.last_words(book);
    }

    /// Days on which it is looked at: on arrival and on the rounds of its site, and when it was cut too hard.
    fn days(&self) -> Vec<Day> {
        let (first, last, every) = ROUNDS[self.plot.site];
        let start = self.start();
        let mut days = vec![start];
        let mut ago = first;
        while ago >= last {
            days.push(self.ago(ago));
            ago -= every;
        }
        days.push(self.ago(last));
        if self.has(Case::OverTrimmed) {
            days.push(self.ago(OVER_TRIMMED));
        }
        days.retain(|day| *day >= start);
        days.sort();
        days.dedup();
        days
    }

    fn round(&mut self, book: &mut Book, round: usize, day: Day) {
        let cut_hard = self.has(Case::OverTrimmed) && day == self.ago(OVER_TRIMMED);
        let (every, first) = CLEANINGS[self.plot.site];
        let held = self.has(Case::WiltSuspect) && day >= self.ago(WILT.0);
        let cleaned = round % every == first && !self.plot.never_cleaned && !held;
        for stem in 0..self.plot.stems {
            let mut look = self.look(stem, day);
            self.miss(&mut look, round);
            let brown = look.brown;
            let crown = &mut self.crowns[usize::from(stem)];
            if cut_hard {
                let (green, yellowing) = crown.cut_to(8);
                look.removed = Removed {
                    green: Some(green),
                    yellowing: Some(yellowing),
                    brown,
                };
                look.notes = "Counted from the heap after the contractor had left.".to_owned();
            } else if cleaned && brown.is_some_and(|n| n > 0) {
                look.removed.brown = brown;
            }
            if cut_hard || look.removed.brown.is_some() {
                crown.clean();
            }
            let by = if look.removed.brown.is_some() && !cut_hard {
                CREW
            } else {
                KEEPER
            };
            self.inspected(book, day, by, look);
        }
    }

    /// Writes a look down; one of them was first keyed in wrongly.
    fn inspected(&self, book: &mut Book, day: Day, by: &str, look: Inspection) {
        let palm = self.id;
        let slip = self.plot.tag == "T-09"
            && look.green.is_some()
            && day == self.ago(ROUNDS[self.plot.site].1);
        let first = slip.then(|| {
            let wrong = Inspection {
                green: look.green.map(|n| n * 10),
                ..look.clone()
            };
            book.write(
                day,
                14,
                by,
                Body::Inspected {
                    palm,
                    inspection: wrong,
                },
                None,
            )
        });
        book.write(
            day,
            15,
            by,
            Body::Inspected {
                palm,
                inspection: look,
            },
            first,
        );
    }

    /// Holds and remarks at the end of the year.
    fn last_words(&self, book: &mut Book) {
        let palm = self.id;
        let last = self.ago(ROUNDS[self.plot.site].1);
        let mut hold = |reason: &str, until: Option<Day>, note: &str| {
            let body = Body::HoldSet {
                palm,
                reason: reason.to_owned(),
                until,
                note: note.to_owned(),
            };
            book.write(last, 16, KEEPER, body, None);
        };
        if self.has(Case::WiltSuspect) {
            hold(
                "wilt-suspect",
                None,
                "Sample goes to the plant clinic; nobody touches it before the answer.",
            );
        }
        if self.has(Case::NestHold) {
            hold(
                "nest",
                Some(self.today.plus(42)),
                "Young birds heard in the middle stem.",
            );
        }
        let mut noted = |day: Day, text: &str| {
            let body = Body::Noted {
                palm,
                text: text.to_owned(),
            };
            book.write(day, 16, KEEPER, body, None);
        };
        if self.has(Case::OverTrimmed) {
            noted(
                self.ago(OVER_TRIMMED),
                "Cut to a tuft by a contractor the parish had hired for the lamps. Told the parish.",
            );
        }
        if self.has(Case::Hungry) {
            noted(
                last,
                "Old fronds spotted yellow, tips dead; nothing one-sided. Ask the owner about feeding.",
            );
        }
    }

    fn palm(&self) -> Palm {
        let (site, owner, [lat, lon]) = SITES[self.plot.site];
        let step = 0.000_09 * self.number as f64;
        let notes = format!("Owner: {owner}. {}", self.plot.notes);
        let cleaned = (!self.plot.never_cleaned).then(|| self.start().plus(-self.cleaned_before()));
        Palm {
            tag: self.plot.tag.clone(),
            species: self.plot.species.to_owned(),
            site: site.to_owned(),
            stems: self.plot.stems,
            moved_on: self.plot.moved.map(|days| self.ago(days)),
            last_cleaned_on: cleaned,
            trunk_height: Some(Metres(self.plot.height)),
            position: Some(Position {
                lat: lat + step,
                lon: lon + step / 2.0,
            }),
            over: self.plot.over.to_owned(),
            wires: self.plot.wires.map(Metres),
            full_crown: self.plot.told_full,
            notes: notes.trim_end().to_owned(),
            ..Palm::default()
        }
    }
}

/// A palm that is no more: its history stays.
fn felled(today: Day, book: &mut Book) {
    let (site, _, [lat, lon]) = SITES[2];
    let palm = Palm {
        tag: "L-99".to_owned(),
        species: "Syagrus romanzoffiana".to_owned(),
        site: site.to_owned(),
        stems: 1,
        position: Some(Position { lat, lon }),
        ..Palm::default()
    };
    let entered = book.write(
        today.plus(-345),
        13,
        KEEPER,
        Body::PalmRegistered(palm),
        None,
    );
    let palm = PalmId(entered.0);
    let mut look = Inspection::blank(1, today.plus(-345));
    (look.green, look.yellowing, look.brown) = (Some(4), Some(3), Some(9));
    look.spear = Some(Spear::Down);
    book.write(
        today.plus(-345),
        15,
        KEEPER,
        Body::Inspected {
            palm,
            inspection: look,
        },
        None,
    );
    let why = "Spear down and bud soft; felled and taken away.".to_owned();
    book.write(
        today.plus(-338),
        15,
        KEEPER,
        Body::PalmRemoved { palm, why },
        None,
    );
}
