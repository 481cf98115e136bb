//! Numbered sources: a number where something is said, the work at the end of the sheet.

use desk::views::{Cited, Speaker};
use model::SourceKey;
use serde::Serialize;

/// The sources of one sheet, numbered as they are first named.
#[derive(Default)]
pub(crate) struct Refs {
    keys: Vec<SourceKey>,
}

/// A source at the end of a sheet.
#[derive(Clone, Serialize)]
pub(crate) struct Work {
    number: usize,
    title: String,
    by: String,
    mark: Option<String>,
}

impl Refs {
    /// The numbers of these sources, from 1, in ascending order.
    pub fn numbers(&mut self, keys: &[SourceKey]) -> Vec<usize> {
        let mut numbers: Vec<usize> = keys.iter().map(|key| self.number(key)).collect();
        numbers.sort_unstable();
        numbers.dedup();
        numbers
    }

    fn number(&mut self, key: &SourceKey) -> usize {
        let at = self.keys.iter().position(|k| k == key);
        1 + at.unwrap_or_else(|| {
            self.keys.push(key.clone());
            self.keys.len() - 1
        })
    }

    /// The works behind the numbers.
    pub fn works(&self, speaker: &Speaker) -> Vec<Work> {
        let cited = speaker.cite(&self.keys).into_iter().enumerate();
        cited.map(|(i, source)| Work::of(i + 1, source)).collect()
    }
}

impl Work {
    fn of(number: usize, source: Cited) -> Work {
        Work {
            number,
            title: source.title,
            by: source.by,
            mark: source.mark,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_work_keeps_the_number_it_got_first() {
        let [a, b, c] = ["enh1017", "pp215", "pp278"].map(SourceKey::fixed);
        let mut refs = Refs::default();
        assert_eq!(refs.numbers(&[b.clone(), a.clone()]), [1, 2]);
        assert_eq!(refs.numbers(&[c, a, b.clone(), b]), [1, 2, 3]);
    }
}
