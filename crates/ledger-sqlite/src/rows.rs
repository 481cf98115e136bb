//! Records as rows.

use ledger::{ChainHash, Error, Head, Kept, Record};
use model::{EntryId, Moment};
use rusqlite::{Connection, OptionalExtension, params};
use uuid::Uuid;

const COLUMNS: &str =
    "seq, hash, id, at, written_at, written_by, device, kind, version, body, replaces";

/// One row of the table `entries`.
pub(crate) struct Row {
    pub seq: u64,
    pub hash: ChainHash,
    pub record: Record,
}

impl Row {
    pub fn into_kept(self) -> Kept {
        Kept {
            seq: self.seq,
            hash: self.hash,
            entry: self.record.to_entry(),
        }
    }

    fn of(row: &rusqlite::Row) -> rusqlite::Result<Row> {
        let record = Record {
            id: EntryId(Uuid::from_bytes(row.get(2)?)),
            at: Moment(row.get(3)?),
            written_at: Moment(row.get(4)?),
            by: row.get(5)?,
            device: row.get(6)?,
            kind: row.get(7)?,
            version: row.get(8)?,
            body: row.get(9)?,
            replaces: row
                .get::<_, Option<[u8; 16]>>(10)?
                .map(|id| EntryId(Uuid::from_bytes(id))),
        };
        Ok(Row {
            seq: seq(row)?,
            hash: ChainHash(row.get(1)?),
            record,
        })
    }
}

/// Up to `limit` rows after a sequence.
pub(crate) fn page(
    connection: &Connection,
    after: u64,
    limit: usize,
) -> rusqlite::Result<Vec<Row>> {
    let (after, limit) = (
        i64::try_from(after).unwrap_or(i64::MAX),
        i64::try_from(limit).unwrap_or(i64::MAX),
    );
    let sql = format!("SELECT {COLUMNS} FROM entries WHERE seq > ?1 ORDER BY seq LIMIT ?2");
    let mut query = connection.prepare_cached(&sql)?;
    query.query_map([after, limit], Row::of)?.collect()
}

/// The row of an entry.
pub(crate) fn by_id(connection: &Connection, id: EntryId) -> rusqlite::Result<Option<Row>> {
    let sql = format!("SELECT {COLUMNS} FROM entries WHERE id = ?1");
    connection
        .prepare_cached(&sql)?
        .query_row([id.0.as_bytes()], Row::of)
        .optional()
}

/// Writes a row.
pub(crate) fn insert(connection: &Connection, row: &Row) -> rusqlite::Result<()> {
    let sql = format!(
        "INSERT INTO entries ({COLUMNS}) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)"
    );
    let Row {
        seq,
        hash,
        record: r,
    } = row;
    let values = params![
        *seq as i64,
        hash.0,
        r.id.0.as_bytes(),
        r.at.0,
        r.written_at.0,
        r.by,
        r.device,
        r.kind,
        r.version,
        r.body,
        r.replaces.as_ref().map(|id| id.0.as_bytes()),
    ];
    connection.prepare_cached(&sql)?.execute(values).map(drop)
}

/// The end of the chain, as the ledger keeps it beside the entries.
pub(crate) fn head(connection: &Connection) -> rusqlite::Result<Head> {
    let mut query = connection.prepare_cached("SELECT seq, hash FROM head")?;
    query.query_row([], |row| {
        Ok(Head {
            seq: seq(row)?,
            hash: ChainHash(row.get(1)?),
        })
    })
}

/// The sequence in the first column; SQLite's integers are signed.
fn seq(row: &rusqlite::Row) -> rusqlite::Result<u64> {
    let seq: i64 = row.get(0)?;
    u64::try_from(seq).map_err(|_| rusqlite::Error::IntegralValueOutOfRange(0, seq))
}

/// The engine's own words for an error, with what to do about the usual ones.
pub(crate) fn words(error: rusqlite::Error) -> Error {
    use rusqlite::ErrorCode::{
        CannotOpen, DatabaseBusy, DatabaseCorrupt, DiskFull, NotADatabase, ReadOnly,
    };
    let what_to_do = match error.sqlite_error_code() {
        Some(DatabaseBusy) => "another program has been writing for a long time; try again",
        Some(DiskFull) => {
            "the disk is full; nothing of this batch was kept; make room and try again"
        }
        Some(ReadOnly | CannotOpen) => "check that the data folder exists and may be written to",
        Some(DatabaseCorrupt | NotADatabase) => {
            return Error::Broken(format!(
                "the ledger is damaged ({error}); restore the last backup into an empty folder"
            ));
        }
        _ => return Error::Engine(error.to_string()),
    };
    Error::Engine(format!("{error}: {what_to_do}"))
}
