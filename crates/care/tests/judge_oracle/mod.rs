//! The judgement written a second time, as plainly as it can be: every set enumerated, every sign multiplied as a
//! logarithm, nothing remembered. From `docs/signs.md`, without a look at `src/judge`.
#![allow(dead_code)] // every test takes its own part of it
#![allow(clippy::disallowed_methods)] // another logarithm than the one that is checked

use care::judge::{Evidence, Rows, WeightOf, Weights};
use model::Day;
use model::knowledge::{Course, DisorderRow, Family, HostKind, SignLink, Strength};
use std::collections::BTreeMap;

/// What the enumeration says.
pub struct Plain {
    /// Sets as keys, with their probability.
    pub sets: Vec<(Vec<&'static str>, f64)>,
    /// Chance that each sign is there in each of these sets.
    chances: Vec<Vec<f64>>,
    answered: Vec<bool>,
}

/// The judge's numbers and rows.
pub struct Oracle<'a> {
    rows: Rows<'a>,
    numbers: BTreeMap<String, f64>,
    links: BTreeMap<(&'static str, &'static str), Strength>,
}

impl<'a> Oracle<'a> {
    pub fn of(rows: Rows<'a>) -> Oracle<'a> {
        let mut numbers: BTreeMap<String, f64> = Weights::KEYS
            .iter()
            .map(|(key, value)| ((*key).to_owned(), *value))
            .collect();
        for row in rows.weights {
            numbers.insert(row.key.clone(), row.value);
        }
        let link = |l: &'static SignLink| ((l.disorder.as_str(), l.sign.as_str()), l.strength);
        Oracle {
            rows,
            numbers,
            links: rows.links.iter().map(link).collect(),
        }
    }

    fn n(&self, key: &str) -> f64 {
        self.numbers[key]
    }

    fn strength(&self, disorder: &str, sign: &str) -> Option<Strength> {
        self.links.get(&(disorder, sign)).copied()
    }

    fn p(&self, strength: Option<Strength>) -> f64 {
        let key = match strength {
            Some(Strength::Always) => "strength-always",
            Some(Strength::Usual) => "strength-usual",
            Some(Strength::Sometimes) => "strength-sometimes",
            Some(Strength::Rare) => "strength-rare",
            Some(Strength::Excludes) | None => return 0.0,
        };
        self.n(key).min(0.999)
    }

    /// Chance that a sign is there in a set.
    pub fn seen(&self, set: &[&DisorderRow], sign: &str) -> f64 {
        let ageing = self.strength("natural-senescence", sign);
        let behind = if set.is_empty() {
            1.0
        } else {
            self.n("ageing-behind").min(1.0)
        };
        let base = self.numbers.get(&format!("base-{sign}")).copied();
        let base = base.unwrap_or(self.n("leak")).min(0.999);
        let mut miss = (1.0 - base) * (1.0 - behind * self.p(ageing));
        for d in set {
            miss *= 1.0 - self.p(self.strength(&d.key, sign));
        }
        let mut strengths: Vec<_> = set
            .iter()
            .filter_map(|d| self.strength(&d.key, sign))
            .collect();
        if set.is_empty() {
            strengths.extend(ageing);
        }
        let against = strengths
            .iter()
            .filter(|s| **s == Strength::Excludes)
            .count();
        if against < strengths.len() {
            return 1.0 - miss; // another one shows it
        }
        (1.0 - miss) * self.n("strength-excludes").min(1.0).powi(against as i32)
    }

    fn host(&self, d: &DisorderRow, e: &Evidence) -> f64 {
        let name = match e.species {
            Some(row) => row.name.clone(),
            None => e.species_name.trim().to_owned(),
        };
        let genus = name.split(' ').next().unwrap_or("").to_owned();
        for wanted in [name.as_str(), genus.as_str(), "*"] {
            for host in &d.hosts {
                if !wanted.is_empty() && host.name.to_lowercase() == wanted.to_lowercase() {
                    return self.n(match host.kind {
                        HostKind::Prone => "host-prone",
                        HostKind::Known => "host-known",
                        HostKind::Reported => "host-reported",
                    });
                }
            }
        }
        if e.species.is_none() {
            return self.n("host-unknown");
        }
        let near = |h: &model::knowledge::Host| h.name.split(' ').next() == Some(&genus);
        self.n(if d.hosts.iter().any(near) {
            "host-relative"
        } else {
            "host-none"
        })
    }

    fn season(&self, d: &DisorderRow, e: &Evidence) -> f64 {
        let latitude = e.latitude.unwrap_or(45.0);
        let Some(on) = e.on else { return 1.0 };
        if (-15.0..=15.0).contains(&latitude) {
            return 1.0;
        }
        let mut month = on.ymd().1;
        if latitude < 0.0 {
            month = if month > 6 { month - 6 } else { month + 6 };
        }
        let season = match month {
            12 | 1 | 2 => "winter",
            3..=5 => "spring",
            6..=8 => "summer",
            _ => "autumn",
        };
        *self
            .numbers
            .get(&format!("{season}-{}", d.key))
            .unwrap_or(&1.0)
    }

    /// What happened weighs by its date; the sign of a move is a move without a date.
    fn weighs(&self, sign: &str, e: &Evidence) -> bool {
        let both = |s: &String| e.seen.contains(s) && e.absent.contains(s);
        let dated = (sign == "recent-freeze" && e.frost_on.is_some())
            || (sign == "recent-storm" && e.storm_on.is_some());
        sign != "recently-moved" && !dated && !both(&sign.to_owned())
    }

    fn moved_by_word(&self, e: &Evidence) -> bool {
        let word = "recently-moved".to_owned();
        e.seen.contains(&word) && !e.absent.contains(&word)
    }

    /// Days since the later of move and planting.
    fn moved(&self, e: &Evidence) -> Option<f64> {
        let on = e.on?;
        let past = |d: Option<Day>| d.filter(|d| *d <= on);
        past(e.moved_on)
            .into_iter()
            .chain(past(e.planted_on))
            .max()
            .map(|d| f64::from(on.since(d)))
    }

    fn left_of_move(&self, e: &Evidence) -> f64 {
        let told = e.moved_on.is_some() || e.planted_on.is_some();
        let (fresh, set, gone) = (
            self.n("move-fresh-days"),
            self.n("move-established-days"),
            self.n("move-settled-days"),
        );
        let at_set = self.n("move-established");
        match (told, e.on, self.moved(e)) {
            (true, None, _) => self.n("move-undated"),
            (_, _, None) => f64::from(u8::from(self.moved_by_word(e))),
            (_, _, Some(d)) if d <= fresh => 1.0,
            (_, _, Some(d)) if d <= set => 1.0 + (at_set - 1.0) * (d - fresh) / (set - fresh),
            (_, _, Some(d)) if d < gone => at_set - at_set * (d - set) / (gone - set),
            _ => 0.0,
        }
    }

    fn after_move(&self, d: &DisorderRow, e: &Evidence) -> f64 {
        let row = self.numbers.get(&format!("after-move-{}", d.key)).copied();
        let left = self.left_of_move(e);
        if d.key == "transplant-shock" {
            return row.unwrap_or(1.0) * left;
        }
        let mut factor = 1.0 + (row.unwrap_or(1.0) - 1.0) * left;
        if let (Family::Nutrient, Some(days)) = (d.family, self.moved(e)) {
            let from = d
                .latency
                .min
                .map_or(self.n("hunger-latency-days"), f64::from);
            let to = d
                .latency
                .max
                .map_or(from + self.n("hunger-rise-days"), f64::from);
            let to = to.max(from + 1.0);
            let just = self.n("hunger-just-moved");
            let way = ((days - from) / (to - from)).clamp(0.0, 1.0);
            factor *= just + (1.0 - just) * way;
        }
        factor
    }

    fn weather(&self, d: &DisorderRow, e: &Evidence, what: &str, day: Option<Day>) -> f64 {
        let row = self
            .numbers
            .get(&format!("after-{what}-{}", d.key))
            .copied();
        let (Some(row), Some(day), Some(on)) = (row, day, e.on) else {
            return 1.0;
        };
        let days = f64::from(on.since(day));
        if days < 0.0 {
            return 1.0;
        }
        let (fresh, gone) = (
            self.n(&format!("{what}-fresh-days")),
            self.n(&format!("{what}-gone-days")),
        );
        let left = 1.0 - ((days - fresh) / (gone - fresh)).clamp(0.0, 1.0);
        let base = match d.family {
            Family::Surroundings => self.n("weather-long-ago"),
            _ => 1.0,
        };
        left * row + (1.0 - left) * base
    }

    fn odds(&self, d: &DisorderRow, e: &Evidence, skip: Option<WeightOf>) -> f64 {
        let all = [
            (WeightOf::Host, self.host(d, e)),
            (WeightOf::Season, self.season(d, e)),
            (WeightOf::Move, self.after_move(d, e)),
            (WeightOf::Frost, self.weather(d, e, "frost", e.frost_on)),
            (WeightOf::Storm, self.weather(d, e, "storm", e.storm_on)),
        ];
        let kept = all.iter().filter(|(what, _)| Some(*what) != skip);
        kept.fold(d.common * self.n("prior-scale"), |odds, (_, f)| odds * f)
    }

    fn counts(&self, set: &[&DisorderRow], e: &Evidence) -> f64 {
        let Some(told) = e.counts.filter(|c| c.iter().sum::<f64>() > 0.0) else {
            return 1.0;
        };
        let top = told.iter().copied().fold(0.0, f64::max);
        let some: Vec<Option<f64>> = told
            .iter()
            .map(|l| {
                let speaks = (l / top).powf(self.n("counts-temper"));
                (*l > 0.0).then_some(speaks.max(self.n("counts-least")))
            })
            .collect();
        let known: Vec<f64> = some.iter().copied().flatten().collect();
        let mean = known.iter().sum::<f64>() / known.len() as f64;
        let told = e.moved_on.is_some() || e.planted_on.is_some();
        let lately = match self.moved(e) {
            Some(days) => days < self.n("move-established-days"),
            None => self.moved_by_word(e) && !(told && e.on.is_none()),
        };
        let ordinary = some[usize::from(lately && some[1].is_some())].unwrap_or(mean);
        let has = |course| set.iter().any(|d| d.course == course);
        let worst = if has(Course::Decline) {
            3
        } else if has(Course::Move) {
            1
        } else if has(Course::Hunger) {
            2
        } else {
            return ordinary;
        };
        let show = self.n("counts-show");
        show * some[worst].unwrap_or(mean) + (1.0 - show) * ordinary
    }

    /// The enumeration; `skip` is left out of it.
    pub fn judge(&self, e: &Evidence, skip: Option<WeightOf>) -> Plain {
        let troubles: Vec<&'static DisorderRow> = self
            .rows
            .disorders
            .iter()
            .filter(|d| d.key != "natural-senescence")
            .collect();
        let mut sets: Vec<Vec<&'static DisorderRow>> = vec![vec![]];
        for (k, one) in troubles.iter().enumerate() {
            sets.push(vec![one]);
            sets.extend(troubles[k + 1..].iter().map(|other| vec![*one, *other]));
        }
        let chances: Vec<Vec<f64>> = sets
            .iter()
            .map(|set| {
                self.rows
                    .signs
                    .iter()
                    .map(|s| self.seen(set, &s.key))
                    .collect()
            })
            .collect();
        let mut logs = Vec::new();
        for (set, chances) in sets.iter().zip(&chances) {
            let mut log: f64 = set.iter().map(|d| self.odds(d, e, skip).ln()).sum();
            if set.iter().filter(|d| d.course == Course::Decline).count() == 2 {
                log += self.n("pair-lethal").ln();
            }
            for (sign, p) in self.rows.signs.iter().zip(chances) {
                if !self.weighs(&sign.key, e) {
                    continue;
                }
                if e.seen.contains(&sign.key) && skip != Some(WeightOf::Seen(&sign.key)) {
                    log += p.ln();
                }
                if e.absent.contains(&sign.key) && skip != Some(WeightOf::NotThere(&sign.key)) {
                    log += (1.0 - p).ln();
                }
            }
            if skip != Some(WeightOf::Counts) {
                log += self.counts(set, e).ln();
            }
            logs.push(log);
        }
        let top = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let weights: Vec<f64> = logs.iter().map(|l| (l - top).exp()).collect();
        let sum: f64 = weights.iter().sum();
        let keys = sets
            .iter()
            .map(|set| set.iter().map(|d| d.key.as_str()).collect());
        let told =
            |key: &String| e.seen.contains(key) || e.absent.contains(key) || !self.weighs(key, e);
        Plain {
            sets: keys.zip(weights).map(|(set, w)| (set, w / sum)).collect(),
            chances,
            answered: self.rows.signs.iter().map(|s| told(&s.key)).collect(),
        }
    }
}

impl Plain {
    /// Probability that a disorder is at work.
    pub fn probability(&self, key: &str) -> f64 {
        let with = |set: &[&str]| match key {
            "natural-senescence" => set.is_empty(),
            _ => set.contains(&key),
        };
        self.sets
            .iter()
            .filter(|(set, _)| with(set))
            .map(|(_, p)| p)
            .sum()
    }

    /// Odds of a disorder, both sums taken by themselves.
    pub fn odds(&self, key: &str) -> f64 {
        let with = |set: &[&str]| match key {
            "natural-senescence" => set.is_empty(),
            _ => set.contains(&key),
        };
        let of = self
            .sets
            .iter()
            .filter(|(set, _)| with(set))
            .map(|(_, p)| p);
        let rest = self
            .sets
            .iter()
            .filter(|(set, _)| !with(set))
            .map(|(_, p)| p);
        of.sum::<f64>() / rest.sum::<f64>()
    }

    /// Doubt over the sets in bits.
    pub fn doubt(&self) -> f64 {
        entropy(self.sets.iter().map(|(_, p)| *p))
    }

    /// Expected gain of looking for a sign, by the definition: doubt now less expected doubt then.
    pub fn gain(&self, sign: usize) -> (f64, f64) {
        let kept: Vec<(f64, f64)> = self
            .sets
            .iter()
            .zip(&self.chances)
            .filter(|((_, p), _)| *p >= 1e-4)
            .map(|((_, p), chances)| (*p, chances[sign]))
            .collect();
        let mass: f64 = kept.iter().map(|(p, _)| p).sum();
        let there: f64 = kept.iter().map(|(p, c)| p * c / mass).sum();
        let now = entropy(kept.iter().map(|(p, _)| p / mass));
        let if_there = entropy(kept.iter().map(|(p, c)| p * c / mass / there));
        let if_not = entropy(
            kept.iter()
                .map(|(p, c)| p * (1.0 - c) / mass / (1.0 - there)),
        );
        (there, now - there * if_there - (1.0 - there) * if_not)
    }

    /// Signs not told of.
    pub fn open(&self) -> impl Iterator<Item = usize> + '_ {
        (0..self.answered.len()).filter(|k| !self.answered[*k])
    }
}

fn entropy(parts: impl Iterator<Item = f64>) -> f64 {
    parts.filter(|p| *p > 0.0).map(|p| -p * p.log2()).sum()
}
