//! Rows of the rules and of the cautions as a sheet prints them.

use desk::views::Speaker;
use desk::words::Lang;
use model::{Basis, SourceKey};

/// What a row says.
pub(crate) struct RowText {
    /// The words.
    pub text: String,
    /// The figure and when it holds, where the text leaves them out.
    pub figure: Option<String>,
    /// How it is known.
    pub basis: Basis,
    /// Where it comes from.
    pub sources: &'static [SourceKey],
}

/// The row with this key, in the reader's language.
pub(crate) fn row(speaker: &Speaker, key: &str) -> Option<RowText> {
    let es = speaker.words().lang() == Lang::Es;
    if let Some(rule) = speaker.knowledge.rule(key) {
        return Some(RowText {
            text: if es { &rule.text_es } else { &rule.text }.clone(),
            figure: None,
            basis: rule.basis,
            sources: &rule.sources,
        });
    }
    let row = speaker.knowledge.safety(key)?;
    let (text, condition) = if es {
        (&row.text_es, &row.condition_es)
    } else {
        (&row.text, &row.condition)
    };
    Some(RowText {
        text: text.clone(),
        figure: figure(text, &row.value, &row.unit, condition),
        basis: row.basis,
        sources: &row.sources,
    })
}

/// A figure with its unit unless the text has figures itself, and when it holds.
fn figure(text: &str, value: &str, unit: &str, condition: &str) -> Option<String> {
    let digits = |text: &str| text.contains(|c: char| c.is_ascii_digit());
    let value = match digits(value) && !digits(text) {
        true => format!("{value} {unit}").trim().to_owned(),
        false => String::new(),
    };
    let parts: Vec<&str> = [value.as_str(), condition]
        .into_iter()
        .filter(|part| !part.is_empty())
        .collect();
    (!parts.is_empty()).then(|| parts.join("; "))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_figure_is_said_once() {
        let said = |text, value| figure(text, value, "ft", "");
        assert_eq!(said("At least this far.", "10"), Some("10 ft".to_owned()));
        assert_eq!(said("At least 10 ft.", "10"), None);
        assert_eq!(said("Never.", "never"), None);
        assert_eq!(
            figure("This far.", "10", "ft", "up to 50 kV").unwrap(),
            "10 ft; up to 50 kV"
        );
    }
}
