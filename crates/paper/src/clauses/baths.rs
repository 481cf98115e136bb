//! The table of accepted cleanings: what a source states to work, with the longest contact that any source asks.

use super::{Baths, Writer};
use desk::words::Lang;
use model::knowledge::{CleanerRow, Texts, Works};
use serde::Serialize;

/// One accepted way to clean a blade.
#[derive(Serialize)]
pub(super) struct Bath {
    name: String,
    mix: String,
    strength: String,
    minutes: String,
    caution: String,
    numbers: Vec<usize>,
    mark: Option<String>,
}

/// Rows good enough to be demanded: stated to work against a disorder of palms, and for how long. One a way of mixing,
/// the longest time.
pub(super) fn accepted(rows: &[CleanerRow]) -> Vec<&CleanerRow> {
    let mut kept: Vec<&CleanerRow> = Vec::new();
    let fit = |row: &&CleanerRow| {
        let stated = row.works == Works::Yes && row.disorders().next().is_some();
        stated && !row.indirect && row.contact_min.is_some()
    };
    for row in rows.iter().filter(fit) {
        let same = |k: &&CleanerRow| k.agent == row.agent && k.strength_pct == row.strength_pct;
        match kept.iter().position(same) {
            Some(at) if longest(kept[at]) < longest(row) => kept[at] = row,
            Some(_) => {}
            None => kept.push(row),
        }
    }
    kept
}

/// The contact to demand: the longest that the source names, because the shortest is the least it hopes for.
pub(super) fn longest(row: &CleanerRow) -> Option<f64> {
    let max = row.contact_max.or(row.contact_min);
    if row.contact_min > max {
        row.contact_min
    } else {
        max
    }
}

impl Writer<'_> {
    pub(super) fn baths(&mut self) -> Baths {
        let heads = [
            "clauses-bath-agent",
            "clauses-bath-strength",
            "clauses-bath-minutes",
            "clauses-bath-caution",
        ];
        Baths {
            title: self.leaf.say("clauses-baths"),
            heads: heads.iter().map(|code| self.leaf.say(code)).collect(),
            rows: accepted(&self.speaker.knowledge.cleaners)
                .into_iter()
                .map(|row| self.bath(row))
                .collect(),
            otherwise: self.leaf.say("clauses-baths-other"),
        }
    }

    fn bath(&mut self, row: &CleanerRow) -> Bath {
        let measure = self.leaf.measure;
        let text = |texts: &Texts| match measure.words.lang() {
            Lang::En => texts.en.clone(),
            Lang::Es => texts.es.clone(),
        };
        let share = |pct: f64| {
            let n = [("n", measure.number(pct, 1).into())];
            measure.words.text("measure-percent", &n)
        };
        Bath {
            name: text(&row.name),
            mix: text(&row.mix),
            strength: row.strength_pct.map_or_else(|| "–".to_owned(), share),
            minutes: self.minutes(row),
            caution: text(&row.caution),
            numbers: self.refs.numbers(&row.sources),
            mark: self.speaker.basis(row.basis),
        }
    }

    fn minutes(&self, row: &CleanerRow) -> String {
        let number = |minutes: f64| self.leaf.measure.number(minutes, 1);
        let (Some(low), Some(high)) = (row.contact_min, longest(row)) else {
            return String::new();
        };
        if high == 0.0 {
            return "–".to_owned();
        }
        let args = [("n", number(high).into()), ("low", number(low).into())];
        let code = if low < high {
            "clauses-bath-of-range"
        } else {
            "clauses-bath-at-least"
        };
        self.leaf.text(code, &args)
    }
}
