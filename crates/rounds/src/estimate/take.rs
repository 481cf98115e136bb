//! From the work at a palm to minutes and debris.

use super::{Figures, Line, Reach, Spread, TENTH, Task, Visit, Work};
use model::math;

/// Height up to which height does not slow a pole down, m.
const LOW: f64 = 3.0;

/// What a visit takes: a crew of one does one thing after the other; of more people one cuts and the others gather and
/// load meanwhile, so that only what they need longer counts.
pub fn visit(figures: &Figures, work: &Work) -> Visit {
    let (mass_kg, debris_m3) = debris(figures, work);
    let mut lines = Lines {
        figures,
        lines: Vec::new(),
    };
    lines.coming(work);
    if work.tasks.contains(&Task::Cut) {
        lines.cutting(work, debris_m3);
    }
    if work.tasks.contains(&Task::Look) {
        lines.add("look", 1.0, figures.spread("look"), &["look"]);
    }
    if work.tasks.contains(&Task::Water) {
        lines.add("water", 1.0, figures.spread("water"), &["water"]);
    }
    if work.tasks.contains(&Task::Feed) {
        lines.add("feed", 1.0, figures.spread("feed"), &["feed"]);
    }
    let plain = lines.sum();
    let minutes = paced(figures, plain);
    if figures.pace().is_some() {
        let less = |a: f64, b: f64| a - b;
        let by = Spread {
            low: less(minutes.low, plain.low),
            mid: less(minutes.mid, plain.mid),
            high: less(minutes.high, plain.high),
        };
        lines.add("pace", 1.0, by, &[]);
    }
    Visit {
        minutes,
        lines: lines.lines,
        debris_m3,
        mass_kg,
    }
}

/// Minutes as logged times have them: the middle by the crew's pace, the ends by how sure that is and how visits differ.
fn paced(figures: &Figures, plain: Spread) -> Spread {
    let Some(pace) = figures.pace() else {
        return plain;
    };
    let mid = plain.mid * math::exp(pace.log_mean);
    let width = TENTH * (pace.sd * pace.sd + pace.visit_sd * pace.visit_sd).sqrt();
    Spread {
        low: mid * math::exp(-width),
        mid,
        high: mid * math::exp(width),
    }
}

/// Mass and loose volume of what comes off.
fn debris(figures: &Figures, work: &Work) -> (Spread, Spread) {
    if !work.tasks.contains(&Task::Cut) {
        return (Spread::default(), Spread::default());
    }
    let of = |key| figures.spread(key);
    let length = work
        .frond_m
        .map_or_else(|| of("debris.frond-length"), Spread::of);
    let fronds = of("debris.frond-dead")
        .scaled(f64::from(work.dead))
        .plus(of("debris.frond-green").scaled(f64::from(work.green)))
        .times(length);
    let mass = fronds.plus(of("debris.stalk").scaled(f64::from(work.stalks)));
    (mass, mass.over(of("debris.loose")))
}

struct Lines<'f> {
    figures: &'f Figures,
    lines: Vec<Line>,
}

impl Lines<'_> {
    fn add(&mut self, key: &'static str, count: f64, minutes: Spread, from: &[&'static str]) {
        self.lines.push(Line {
            key,
            count,
            minutes,
            figures: from.to_vec(),
        });
    }

    fn one(&mut self, key: &'static str) {
        let minutes = self.figures.spread(key);
        self.add(key, 1.0, minutes, &[key]);
    }

    fn sum(&self) -> Spread {
        let parts = self.lines.iter().map(|line| line.minutes);
        parts.fold(Spread::default(), Spread::plus)
    }

    /// The way to the palm.
    fn coming(&mut self, work: &Work) {
        if let Some(metres) = work.walk_m {
            let minutes = self.figures.spread("walk").scaled(metres / 100.0);
            self.add("walk", metres, minutes, &["walk"]);
        }
        if !work.tasks.is_empty() {
            self.one("find");
        }
    }

    fn cutting(&mut self, work: &Work, debris_m3: Spread) {
        self.one("set-up");
        match work.from {
            Reach::Hand => {}
            Reach::Pole => self.one("pole"),
            Reach::Lift => self.one("lift"),
        }
        if work.clean {
            self.one("clean");
            if !work.spare_blade {
                let bath = work.contact_min.map(Spread::of);
                let minutes = bath.unwrap_or_else(|| self.figures.spread("soak"));
                let from: &[&'static str] = if bath.is_some() { &[] } else { &["soak"] };
                self.add("soak", 1.0, minutes, from);
            }
        }
        let cut = self.cuts(work);
        self.clearing(work, debris_m3, cut);
    }

    /// The cuts themselves; returns their minutes.
    fn cuts(&mut self, work: &Work) -> Spread {
        let of = |key| self.figures.spread(key);
        let (mut frond, mut from) = match work.from {
            Reach::Hand => (of("frond-hand"), vec!["frond-hand"]),
            Reach::Pole => (of("frond-pole"), vec!["frond-pole"]),
            Reach::Lift => (
                of("frond-lift").plus(of("basket")),
                vec!["frond-lift", "basket"],
            ),
        };
        if let (Reach::Pole, Some(height)) = (work.from, work.height_m) {
            let more = of("height-more").scaled((height - LOW).max(0.0));
            frond = frond.times(Spread::of(1.0).plus(more));
            from.push("height-more");
        }
        if work.armed {
            frond = frond.times(of("armed-times"));
            from.push("armed-times");
        }
        let stalk = frond.times(of("stalk-times"));
        let green = frond.times(of("green-times"));
        let dead = frond.scaled(f64::from(work.dead));
        let fronds = dead.plus(green.scaled(f64::from(work.green)));
        let stalks = stalk.scaled(f64::from(work.stalks));
        if work.dead + work.green > 0 {
            let mut all = from.clone();
            if work.green > 0 {
                all.push("green-times");
            }
            self.add("fronds", f64::from(work.dead + work.green), fronds, &all);
        }
        if work.stalks > 0 {
            from.push("stalk-times");
            self.add("stalks", f64::from(work.stalks), stalks, &from);
        }
        fronds.plus(stalks)
    }

    /// Gathering and loading, and what of it is done while another cuts.
    fn clearing(&mut self, work: &Work, debris_m3: Spread, cut: Spread) {
        let pieces = f64::from(work.dead + work.green + work.stalks);
        let gather = self.figures.spread("gather").scaled(pieces);
        let load = match work.haul {
            true => self.figures.spread("load").times(debris_m3),
            false => Spread::default(),
        };
        if pieces > 0.0 {
            self.add("gather", pieces, gather, &["gather"]);
        }
        if work.haul && debris_m3.mid > 0.0 {
            let from = &["load", "debris.loose", "debris.frond-dead"];
            self.add("load", debris_m3.mid, load, from);
        }
        let table = self.figures.mid("people").max(1.0);
        let helpers = work.people.map_or(table, f64::from) - 1.0;
        if helpers < 1.0 {
            return;
        }
        let saved = |cut: f64, rest: f64| -(rest - (rest / helpers - cut).max(0.0));
        let rest = gather.plus(load);
        let beside = Spread {
            low: saved(cut.low, rest.low),
            mid: saved(cut.mid, rest.mid),
            high: saved(cut.high, rest.high),
        };
        if beside.mid < 0.0 {
            let from: &[&'static str] = match work.people {
                Some(_) => &[],
                None => &["people"],
            };
            self.add("beside", helpers, beside, from);
        }
    }
}
