//! One stem's crown, frond by frond and day by day: a rough imitation to draw the demo's counts from.
//!
//! It follows the same picture as the crown model (fronds are born at the top, age, yellow, die, fall or hang) but is
//! written on its own and simpler: nothing is fitted here.

use super::dice::Dice;
use model::{Day, math};

/// What a stem is like and what befalls it. All figures are made up for the demo, near those of the species.
#[derive(Clone, Copy, Debug)]
pub(super) struct Nature {
    /// Live fronds of the full, fed crown.
    pub full: f64,
    /// Fronds made in a year.
    pub per_year: f64,
    /// Share of a frond's life that hunger takes.
    pub hunger: f64,
    /// Days a dead frond stays on; `None` until it is cut.
    pub hangs: Option<f64>,
    /// Day it was moved.
    pub moved: Option<Day>,
    /// First day of a decline to death, and its length in days.
    pub decline: Option<(Day, f64)>,
}

/// A frond: the clock at its birth, how long it lives by the clock, and how far gone it is.
#[derive(Clone, Copy, Debug)]
struct Frond {
    born: f64,
    life: f64,
    yellow_since: Option<Day>,
    dead_since: Option<Day>,
    stays: f64,
}

/// What can be counted from below.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) struct Sight {
    pub green: u32,
    pub yellowing: u32,
    pub brown: u32,
    /// Fronds made since the crown began, to count new ones by.
    pub made: u32,
}

/// The crown of one stem.
pub(super) struct Crown {
    nature: Nature,
    today: Day,
    clock: f64,
    /// Oldest first.
    fronds: Vec<Frond>,
    at_move: usize,
    at_onset: usize,
    /// Fronds the move or the decline has taken.
    taken: usize,
    dice: Dice,
}

impl Crown {
    /// A crown in balance on a day, with the dead fronds of `uncleaned` days on it.
    pub fn new(nature: Nature, start: Day, uncleaned: i32, seed: u64) -> Crown {
        let mut crown = Crown {
            nature,
            today: start.plus(-uncleaned.max(1)),
            clock: 0.0,
            fronds: Vec::new(),
            at_move: 0,
            at_onset: 0,
            taken: 0,
            dice: Dice::new(seed),
        };
        let oldest = (nature.full * 1.4) as i32;
        for age in (1..oldest).rev() {
            let frond = crown.born(-f64::from(age));
            if frond.life > f64::from(age) {
                crown.fronds.push(frond);
            }
        }
        crown.grow_to(start);
        crown
    }

    /// Lives on until a day.
    pub fn grow_to(&mut self, day: Day) {
        while self.today < day {
            self.today = self.today.plus(1);
            self.one_day();
        }
    }

    /// What hangs there now.
    pub fn sight(&self) -> Sight {
        let count =
            |f: fn(&Frond) -> bool| self.fronds.iter().filter(|frond| f(frond)).count() as u32;
        Sight {
            green: count(|f| f.dead_since.is_none() && f.yellow_since.is_none()),
            yellowing: count(|f| f.dead_since.is_none() && f.yellow_since.is_some()),
            brown: count(|f| f.dead_since.is_some()),
            made: self.clock as u32,
        }
    }

    /// Takes all dead fronds off.
    pub fn clean(&mut self) {
        self.fronds.retain(|f| f.dead_since.is_none());
    }

    /// Takes live fronds off, the oldest first, until so many are left. Gives the green and yellowing ones taken.
    pub fn cut_to(&mut self, left: usize) -> (u32, u32) {
        let (mut green, mut yellowing) = (0, 0);
        let mut spare = self.live().saturating_sub(left);
        self.fronds.retain(|f| {
            let taken = spare > 0 && f.dead_since.is_none();
            if taken {
                spare -= 1;
                *(if f.yellow_since.is_some() {
                    &mut yellowing
                } else {
                    &mut green
                }) += 1;
            }
            !taken
        });
        (green, yellowing)
    }

    /// How far the lowest live frond leans from the vertical, degrees: a full crown reaches 150.
    pub fn lowest_degrees(&self) -> f64 {
        let oldest = self.fronds.iter().find(|f| f.dead_since.is_none());
        oldest.map_or(0.0, |f| {
            150.0 * ((self.clock - f.born) / self.nature.full).min(1.0)
        })
    }

    fn live(&self) -> usize {
        self.fronds
            .iter()
            .filter(|f| f.dead_since.is_none())
            .count()
    }

    fn born(&mut self, at: f64) -> Frond {
        let full_life = self.nature.full * (1.0 - self.nature.hunger);
        let life = full_life * (1.0 + 0.1 * self.dice.normal());
        let stays = self
            .nature
            .hangs
            .map_or(f64::INFINITY, |mean| mean * self.dice.between(0.5, 1.5));
        Frond {
            born: at,
            life,
            yellow_since: None,
            dead_since: None,
            stays,
        }
    }

    fn one_day(&mut self) {
        let step = self.nature.per_year / 365.25 * season(self.today) * self.pace();
        let before = self.clock.floor();
        self.clock += step;
        if self.clock.floor() > before {
            let frond = self.born(self.clock);
            self.fronds.push(frond);
        }
        self.yellow(step);
        let yellowing_takes = self.days_to_die();
        for frond in &mut self.fronds {
            let gone = frond
                .yellow_since
                .is_some_and(|since| f64::from(self.today.since(since)) >= yellowing_takes);
            if gone && frond.dead_since.is_none() {
                frond.dead_since = Some(self.today);
            }
        }
        let today = self.today;
        self.fronds.retain(|f| {
            f.dead_since
                .is_none_or(|since| f64::from(today.since(since)) < f.stays)
        });
    }

    /// Days from the first dead tissue to a frond wholly dead: fed 3 to 4 (UF/IFAS ENH1182), hungry 30 to 90.
    fn days_to_die(&self) -> f64 {
        if self.nature.hunger > 0.0 { 55.0 } else { 4.0 }
    }

    /// Begins the end of fronds: those whose life ends within their dying days, and those the move or the decline takes.
    fn yellow(&mut self, step: f64) {
        let (clock, today) = (self.clock, self.today);
        let ahead = step * self.days_to_die();
        for frond in &mut self.fronds {
            if frond.yellow_since.is_none() && clock - frond.born >= frond.life - ahead {
                frond.yellow_since = Some(today);
            }
        }
        let due = self.due();
        for frond in &mut self.fronds {
            if self.taken < due && frond.yellow_since.is_none() {
                frond.yellow_since = Some(today);
                self.taken += 1;
            }
        }
    }

    /// Fronds that the move or the decline has to have taken by now.
    fn due(&mut self) -> usize {
        let live = self.live();
        if let Some(moved) = self.nature.moved.filter(|day| *day <= self.today) {
            if self.today == moved {
                self.at_move = live;
            }
            let days = (f64::from(self.today.since(moved)) - 6.0).max(0.0);
            return (self.at_move as f64 * 0.2 * (1.0 - math::exp(-days / 40.0))) as usize;
        }
        if let Some((onset, length)) = self.nature.decline.filter(|(day, _)| *day <= self.today) {
            if self.today == onset {
                self.at_onset = live;
            }
            let share = (f64::from(self.today.since(onset)) / length).min(1.0);
            return (self.at_onset as f64 * math::pow(share, 1.4)) as usize;
        }
        0
    }

    /// Growth slows after a move and dies away in a decline.
    fn pace(&self) -> f64 {
        let after = |day: Day| f64::from(self.today.since(day));
        let moved = self.nature.moved.filter(|day| *day <= self.today);
        let moved = moved.map_or(1.0, |day| 0.4 + 0.6 * (after(day) / 300.0).min(1.0));
        let decline = self.nature.decline.filter(|(day, _)| *day <= self.today);
        moved * decline.map_or(1.0, |(day, length)| (1.0 - after(day) / length).max(0.0))
    }
}

/// Growth by the season in the north: most in late July.
fn season(day: Day) -> f64 {
    1.0 + 0.25 * math::cos((f64::from(day.of_year()) - 205.0) / 365.25 * core::f64::consts::TAU)
}

#[cfg(test)]
mod tests {
    use super::*;

    const ROYAL: Nature = Nature {
        full: 18.0,
        per_year: 12.0,
        hunger: 0.0,
        hangs: Some(7.0),
        moved: None,
        decline: None,
    };

    fn day(text: &str) -> Day {
        Day::parse(text).unwrap()
    }

    #[test]
    fn a_settled_crown_stays_full_and_makes_its_year() {
        let mut crown = Crown::new(ROYAL, day("2025-01-01"), 30, 3);
        let before = crown.sight();
        crown.grow_to(day("2026-01-01"));
        let after = crown.sight();
        assert!(
            (11..=13).contains(&(after.made - before.made)),
            "{before:?} {after:?}"
        );
        assert!(
            (16..=20).contains(&(after.green + after.yellowing)),
            "{after:?}"
        );
        assert!(
            after.brown <= 2,
            "dead fronds of a royal palm fall: {after:?}"
        );
    }

    #[test]
    fn hunger_halves_a_crown_and_a_decline_empties_it() {
        let hungry = Crown::new(
            Nature {
                hunger: 0.5,
                ..ROYAL
            },
            day("2025-01-01"),
            30,
            3,
        )
        .sight();
        assert!(
            (8..=11).contains(&(hungry.green + hungry.yellowing)),
            "{hungry:?}"
        );
        let decline = Some((day("2025-02-01"), 90.0));
        let mut dying = Crown::new(Nature { decline, ..ROYAL }, day("2025-01-01"), 30, 3);
        dying.grow_to(day("2025-05-20"));
        assert!(dying.sight().green <= 1, "{:?}", dying.sight());
    }

    #[test]
    fn a_move_takes_about_a_fifth_and_cuts_take_what_they_say() {
        let date = Nature {
            full: 60.0,
            hangs: None,
            moved: Some(day("2025-03-01")),
            ..ROYAL
        };
        let mut crown = Crown::new(date, day("2025-03-01"), 1, 3);
        let before = crown.sight();
        crown.clean();
        crown.grow_to(day("2025-06-01"));
        let after = crown.sight();
        assert!(
            (8..=14).contains(&(after.brown + after.yellowing)),
            "{before:?} {after:?}"
        );
        let (green, yellowing) = crown.cut_to(20);
        let left = crown.sight();
        assert_eq!(left.green + left.yellowing, 20);
        assert_eq!(green + yellowing, after.green + after.yellowing - 20);
        crown.clean();
        assert_eq!(crown.sight().brown, 0);
    }
}
