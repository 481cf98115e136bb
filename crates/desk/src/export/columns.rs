//! Unknown columns of many rows as columns of one file.

use std::collections::{BTreeMap, BTreeSet};

/// Keys of `extra` maps with the header each gets: its own name, or a name like it where that is taken, since headers
/// are compared without regard to case.
pub struct Extra {
    columns: Vec<(String, String)>,
}

impl Extra {
    /// Columns for all keys of these maps, beside the known columns.
    pub fn of<'a>(
        maps: impl Iterator<Item = &'a BTreeMap<String, String>>,
        known: &[&str],
    ) -> Extra {
        let keys: BTreeSet<&String> = maps.flat_map(BTreeMap::keys).collect();
        let mut taken: BTreeSet<String> = known.iter().map(|k| (*k).to_owned()).collect();
        let mut columns = Vec::new();
        for key in keys {
            let mut header = key.clone();
            let mut n = 2;
            while !taken.insert(header.to_lowercase()) {
                header = format!("{key}_{n}");
                n += 1;
            }
            columns.push((key.clone(), header));
        }
        Extra { columns }
    }

    /// The headers.
    pub fn headers(&self) -> impl Iterator<Item = &str> {
        self.columns.iter().map(|(_, header)| header.as_str())
    }

    /// The cells of one row.
    pub fn cells<'a>(
        &'a self,
        extra: &'a BTreeMap<String, String>,
    ) -> impl Iterator<Item = String> + 'a {
        self.columns
            .iter()
            .map(|(key, _)| extra.get(key).cloned().unwrap_or_default())
    }
}
