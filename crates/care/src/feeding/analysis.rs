//! What is in a bag.

use model::Knowledge;
use model::knowledge::ProductRow;

/// Per cent by mass of nitrogen, phosphorus as P2O5, potassium as K2O, magnesium; `None` unknown.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Analysis {
    /// Nitrogen.
    pub n: Option<f64>,
    /// Phosphorus as P2O5.
    pub p2o5: Option<f64>,
    /// Potassium as K2O.
    pub k2o: Option<f64>,
    /// Magnesium.
    pub mg: Option<f64>,
}

impl Analysis {
    /// Of a product of the tables.
    pub fn of_row(row: &ProductRow) -> Analysis {
        let [n, p2o5, k2o, mg] = row.analysis;
        Analysis { n, p2o5, k2o, mg }
    }

    /// From the figures on a bag: `8-2-12+4Mg`, `8-2-12`, `0-0-16-6`, anywhere in a text. Three figures of the grade,
    /// then magnesium.
    pub fn parse(text: &str) -> Option<Analysis> {
        text.split_whitespace().find_map(grade)
    }

    /// Much nitrogen and little potassium: starves palms of potassium (the source says high nitrogen and no potassium; less
    /// than half as much potassium as nitrogen is assumed).
    pub fn starves_palms(&self) -> bool {
        matches!((self.n, self.k2o), (Some(n), Some(k)) if n > 0.0 && k < n / 2.0)
    }
}

fn grade(word: &str) -> Option<Analysis> {
    let word = word.trim_matches(|c: char| !c.is_ascii_digit() && !c.is_ascii_alphabetic());
    let mut figures = word.split(['-', '+', '\u{2013}']).map(figure);
    let (n, p2o5, k2o) = (figures.next()??, figures.next()??, figures.next()??);
    let mg = match figures.next() {
        Some(mg) => Some(mg?),
        None => None,
    };
    let sum = n + p2o5 + k2o + mg.unwrap_or(0.0);
    (figures.next().is_none() && sum <= 100.0).then_some(Analysis {
        n: Some(n),
        p2o5: Some(p2o5),
        k2o: Some(k2o),
        mg,
    })
}

fn figure(text: &str) -> Option<f64> {
    let digits = text.trim_end_matches(|c: char| c.is_ascii_alphabetic());
    let value: f64 = digits.parse().ok()?;
    (0.0..=100.0).contains(&value).then_some(value)
}

/// What is in a product, by its key or by the figures in the keeper's own words; `None`: nobody can tell.
pub fn analysis_of(knowledge: &Knowledge, product: &str) -> Option<Analysis> {
    match knowledge.product(product.trim()) {
        Some(row) => Some(Analysis::of_row(row)),
        None => Analysis::parse(product),
    }
}

#[cfg(test)]
mod tests {
    use super::Analysis;

    #[test]
    fn the_figures_on_a_bag_are_read() {
        let known = |n, p2o5, k2o, mg| {
            Some(Analysis {
                n: Some(n),
                p2o5: Some(p2o5),
                k2o: Some(k2o),
                mg,
            })
        };
        for (text, found) in [
            ("8-2-12+4Mg", known(8.0, 2.0, 12.0, Some(4.0))),
            ("0-0-16-6", known(0.0, 0.0, 16.0, Some(6.0))),
            ("Yard blend 12-4-8, blue bag", known(12.0, 4.0, 8.0, None)),
            ("8-0-12+4Mg", known(8.0, 0.0, 12.0, Some(4.0))),
            ("compost", None),
            ("2026-03-02", None),
            ("80-20-12", None),
            ("8-2", None),
        ] {
            assert_eq!(Analysis::parse(text), found, "{text}");
        }
        assert!(Analysis::parse("16-0-4").unwrap().starves_palms());
        assert!(!Analysis::parse("8-2-12").unwrap().starves_palms());
    }
}
