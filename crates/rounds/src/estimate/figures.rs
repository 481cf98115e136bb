//! The figures an estimate rests on: the tables', the keeper's in their place, and the pace that logged times teach.

use super::{Pace, Spread};
use model::knowledge::EffortRow;
use model::{Basis, Knowledge, SourceKey};
use std::collections::BTreeMap;

/// One figure.
#[derive(Clone, PartialEq, Debug)]
pub struct Figure {
    /// The figure.
    pub spread: Spread,
    /// Its unit.
    pub unit: String,
    /// How it is known; what the sources do not give of it is assumed (`given`).
    pub basis: Basis,
    /// Which of low, mid, high the sources give.
    pub given: Vec<String>,
    /// Where it comes from.
    pub sources: Vec<SourceKey>,
}

/// All figures by key: those of `effort.csv` as they are, those of `debris.csv` under `debris.`.
#[derive(Clone, PartialEq, Debug)]
pub struct Figures {
    all: BTreeMap<String, Figure>,
    pace: Option<Pace>,
}

impl Figures {
    /// The tables' figures, with the keeper's own in their place: a keeper's figure is the new middle, and the ends keep
    /// their distance from it as shares. Keys that no row has and figures that are not above zero are left alone.
    pub fn of(knowledge: &Knowledge, own: &BTreeMap<String, f64>) -> Figures {
        let plain = knowledge.effort.iter().map(|row| (row.key.clone(), row));
        let debris = knowledge.debris.iter();
        let all = plain
            .chain(debris.map(|row| (format!("debris.{}", row.key), row)))
            .map(|(key, row)| {
                let told = own.get(&key).copied();
                let figure = figure(row, told.filter(|x| x.is_finite() && *x > 0.0));
                (key, figure)
            })
            .collect();
        Figures { all, pace: None }
    }

    /// The same with what logged times teach of a crew.
    pub fn at_pace(mut self, pace: Pace) -> Figures {
        self.pace = Some(pace);
        self
    }

    /// The pace, if times were logged.
    pub fn pace(&self) -> Option<&Pace> {
        self.pace.as_ref()
    }

    /// A figure with where it comes from.
    pub fn get(&self, key: &str) -> Option<&Figure> {
        self.all.get(key)
    }

    /// All by key.
    pub fn all(&self) -> impl Iterator<Item = (&str, &Figure)> {
        self.all.iter().map(|(key, figure)| (key.as_str(), figure))
    }

    /// A figure that the tables are checked to hold; a key that is not there counts for nothing.
    pub(super) fn spread(&self, key: &str) -> Spread {
        self.get(key).map_or(Spread::default(), |f| f.spread)
    }

    /// The middle of a figure.
    pub fn mid(&self, key: &str) -> f64 {
        self.spread(key).mid
    }

    /// Which share of the variance of a visit's minutes is common to all visits of the crew.
    pub(super) fn common_share(&self) -> f64 {
        let (common, own) = match &self.pace {
            Some(pace) => (pace.sd * pace.sd, pace.visit_sd * pace.visit_sd),
            None => {
                let square = |key| self.mid(key) * self.mid(key);
                (square("pace-sd") + square("crew-sd"), square("visit-sd"))
            }
        };
        if common + own > 0.0 {
            common / (common + own)
        } else {
            1.0
        }
    }
}

fn figure(row: &EffortRow, told: Option<f64>) -> Figure {
    let table = Spread {
        low: row.low,
        mid: row.mid,
        high: row.high,
    };
    let Some(own) = told else {
        return Figure {
            spread: table,
            unit: row.unit.clone(),
            basis: row.basis,
            given: row.given.clone(),
            sources: row.sources.clone(),
        };
    };
    let spread = match row.mid > 0.0 {
        true => table.scaled(own / row.mid),
        false => Spread::of(own),
    };
    Figure {
        // the middle as it was told, to the digit
        spread: Spread { mid: own, ..spread },
        unit: row.unit.clone(),
        basis: Basis::Keeper,
        given: Vec::new(),
        sources: Vec::new(),
    }
}
