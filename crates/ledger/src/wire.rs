//! Records: entries as they are stored and as they travel.
//!
//! A record is `id`, `at`, `written_at`, `by`, `device`, `kind`, `version`, `body` (JSON text) and `replaces`. The body's
//! text is kept as it was first written: hashes are over text, so a later version of this program, which writes a body
//! differently, still verifies old rows. A kind, version or field that this version does not know stays verbatim as
//! [`model::Body::Unknown`] and goes out again as it came.

mod blade;
mod body;
mod line;
mod tending;
mod work;

pub use line::BadLine;

use crate::Error;
use model::{Entry, EntryId, Moment};

/// An entry as stored.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Record {
    /// Identity.
    pub id: EntryId,
    /// When it happened.
    pub at: Moment,
    /// When it was written down.
    pub written_at: Moment,
    /// Who wrote it.
    pub by: String,
    /// On which device.
    pub device: String,
    /// Kind, kebab case.
    pub kind: String,
    /// Version of the body's shape, from 1.
    pub version: u32,
    /// The body, JSON text.
    pub body: String,
    /// The entry it corrects.
    pub replaces: Option<EntryId>,
}

impl Record {
    /// The record of an entry; refused ([`Error::Content`]) if it would not read back as the same entry.
    pub fn from_entry(entry: &Entry) -> Result<Record, Error> {
        let (kind, version, body) = body::encode(&entry.body);
        let record = Record {
            id: entry.id,
            at: entry.at,
            written_at: entry.written_at,
            by: entry.by.clone(),
            device: entry.device.clone(),
            kind,
            version,
            body,
            replaces: entry.replaces,
        };
        let refuse = |why: &str| {
            Err(Error::Content {
                id: entry.id,
                why: why.to_owned(),
            })
        };
        if serde_json::from_str::<serde::de::IgnoredAny>(&record.body).is_err() {
            return refuse("its body is not JSON");
        }
        if record.to_entry() != *entry {
            return refuse("a number or date in it is out of range");
        }
        Ok(record)
    }

    /// The entry of a record. What cannot be understood becomes [`model::Body::Unknown`].
    pub fn to_entry(&self) -> Entry {
        Entry {
            id: self.id,
            at: self.at,
            written_at: self.written_at,
            by: self.by.clone(),
            device: self.device.clone(),
            body: body::decode(&self.kind, self.version, &self.body),
            replaces: self.replaces,
        }
    }

    /// Whether two records say the same: equal, or equal in meaning (spacing, order of fields, an older version's spelling).
    pub fn says_the_same(&self, other: &Record) -> bool {
        let body_means_the_same = || {
            let value =
                |record: &Record| serde_json::from_str::<serde_json::Value>(&record.body).ok();
            let same_text = Record {
                body: self.body.clone(),
                ..other.clone()
            } == *self;
            same_text && value(self).is_some() && value(self) == value(other)
        };
        self == other || self.to_entry() == other.to_entry() || body_means_the_same()
    }

    /// Every field as bytes in a fixed order: what the chain hash covers.
    pub(crate) fn fields(&self, mut take: impl FnMut(&[u8])) {
        take(self.id.0.as_bytes());
        take(&self.at.0.to_be_bytes());
        take(&self.written_at.0.to_be_bytes());
        take(self.by.as_bytes());
        take(self.device.as_bytes());
        take(self.kind.as_bytes());
        take(&self.version.to_be_bytes());
        take(self.body.as_bytes());
        take(self.replaces.as_ref().map_or(&[], |id| id.0.as_bytes()));
    }
}

#[cfg(test)]
mod tests;
