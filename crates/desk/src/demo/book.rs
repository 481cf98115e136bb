//! The demo's entries as they are written.

use super::later_id;
use crate::office::Note;
use model::{Body, Day, EntryId, Moment};

/// What is written so far.
pub(super) struct Book {
    pub notes: Vec<Note>,
    pub ids: u64,
}

impl Book {
    /// Writes a thing that happened at this hour (UTC) of a day. Minutes tell notes of one hour apart.
    pub fn write(
        &mut self,
        day: Day,
        hour: i64,
        by: &str,
        body: Body,
        replaces: Option<EntryId>,
    ) -> EntryId {
        self.ids += 1;
        let id = later_id(self.ids);
        self.push(id, day, hour, by, body, replaces);
        id
    }

    /// Writes a thing that happened at a moment.
    pub fn at(&mut self, at: Moment, by: &str, body: Body) -> EntryId {
        self.ids += 1;
        let id = later_id(self.ids);
        self.notes.push(Note {
            id: Some(id),
            at,
            by: by.to_owned(),
            body,
            replaces: None,
        });
        id
    }

    pub fn push(
        &mut self,
        id: EntryId,
        day: Day,
        hour: i64,
        by: &str,
        body: Body,
        replaces: Option<EntryId>,
    ) {
        let second = self.ids as i64 % 3_600;
        let at = Moment(Moment::at_midnight(day).0 + hour * 3_600_000 + second * 1_000);
        self.notes.push(Note {
            id: Some(id),
            at,
            by: by.to_owned(),
            body,
            replaces,
        });
    }
}
