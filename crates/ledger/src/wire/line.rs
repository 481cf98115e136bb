//! A record as one line of JSON: how entries leave and come back in open form.

use super::Record;
use crate::ChainHash;
use model::{EntryId, Moment};
use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;
use uuid::Uuid;

/// Why a line is no record.
#[derive(Debug, thiserror::Error)]
pub enum BadLine {
    /// Not JSON, or a field is missing, doubled or of the wrong type; the words name line and column.
    #[error("not an entry: {0}")]
    Json(#[from] serde_json::Error),
    /// A moment that is none.
    #[error("{field} is not a date and time with offset (RFC 3339), found {found:?}")]
    Moment {
        /// Which field.
        field: &'static str,
        /// What stood there.
        found: String,
    },
}

/// `seq` and `hash` only inform; a ledger that takes the line in gives its own.
#[derive(Serialize, Deserialize)]
struct Line<'a> {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    seq: Option<u64>,
    id: Uuid,
    at: String,
    written_at: String,
    by: String,
    device: String,
    kind: String,
    version: u32,
    #[serde(borrow)]
    body: &'a RawValue,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    replaces: Option<Uuid>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    hash: Option<String>,
}

impl Record {
    /// One line of JSON, without the line's end.
    pub fn to_line(&self, seq: u64, hash: ChainHash) -> Result<String, BadLine> {
        // White space between the tokens of JSON is all the raw line ends there can be.
        let body = self.body.replace(['\n', '\r'], " ");
        let line = Line {
            seq: Some(seq),
            id: self.id.0,
            at: self.at.to_string(),
            written_at: self.written_at.to_string(),
            by: self.by.clone(),
            device: self.device.clone(),
            kind: self.kind.clone(),
            version: self.version,
            body: serde_json::from_str(&body)?,
            replaces: self.replaces.map(|id| id.0),
            hash: Some(hash.to_string()),
        };
        Ok(serde_json::to_string(&line)?)
    }

    /// Reads a line written by [`Record::to_line`], by this or a later version.
    pub fn from_line(text: &str) -> Result<Record, BadLine> {
        let line: Line = serde_json::from_str(text)?;
        Ok(Record {
            id: EntryId(line.id),
            at: moment("at", line.at)?,
            written_at: moment("written_at", line.written_at)?,
            by: line.by,
            device: line.device,
            kind: line.kind,
            version: line.version,
            body: line.body.get().to_owned(),
            replaces: line.replaces.map(EntryId),
        })
    }
}

fn moment(field: &'static str, text: String) -> Result<Moment, BadLine> {
    Moment::parse(&text).ok_or(BadLine::Moment { field, found: text })
}
