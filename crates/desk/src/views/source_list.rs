//! All sources, as the page of sources shows them.

use super::said::{Cited, Speaker};
use model::SourceKey;

/// Every source of the tables, in the order of the file.
pub fn view(speaker: &Speaker) -> Vec<Cited> {
    let keys: Vec<SourceKey> = speaker
        .knowledge
        .sources
        .iter()
        .map(|s| SourceKey::new(&s.key))
        .collect();
    speaker.cite(&keys)
}
