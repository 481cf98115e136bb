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

/// Rows good enough to be demanded: stated to work, for palms, with a time. One a way of mixing, the longest time.
pub(super) fn accepted(rows: &[CleanerRow]) -> Vec<&CleanerRow> {
    let mut kept: Vec<&CleanerRow> = Vec::new();
    let fit =
        |row: &&CleanerRow| row.works == Works::Yes && !row.indirect && row.contact_min.is_some();
    for row in rows.iter().filter(fit) {
        let same = |k: &&CleanerRow| k.agent == row.agent && k.strength_pct == row.strength_pct;
        match kept.iter().position(|k| same(&k)) {
            Some(at) if kept[at].contact_min < row.contact_min => kept[at] = row,
            Some(_) => {}
            None => kept.push(row),
        }
    }
    kept
}

impl Writer<'_> {
    pub(super) fn baths(&mut self) -> Baths {
        let heads = [
            "clauses-bath-agent",
            "clauses-bath-strength",
            "clauses-bath-minutes",
            "clauses-bath-caution",
        ];
        let rows: &[CleanerRow] = &[];
        Baths {
            title: self.leaf.say("clauses-baths"),
            heads: heads.iter().map(|code| self.leaf.say(code)).collect(),
            rows: accepted(rows)
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
            minutes: row.contact_min.map_or_else(String::new, |minutes| {
                let n = [("n", measure.number(minutes, 1).into())];
                self.leaf.text("clauses-bath-at-least", &n)
            }),
            caution: text(&row.caution),
            numbers: self.refs.numbers(&row.sources),
            mark: self.speaker.basis(row.basis),
        }
    }
}
