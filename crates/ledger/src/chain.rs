//! The chain of hashes over everything that arrived.

use crate::Head;
use crate::wire::Record;
use core::fmt;

/// Hash over an entry and all before it (BLAKE3, 32 bytes), shown as hexadecimal.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub struct ChainHash(pub [u8; 32]);

impl ChainHash {
    /// The hash before the first entry.
    pub const ORIGIN: ChainHash = ChainHash([0; 32]);

    /// The hash of the next entry: over this one, the sequence and every field of the record, each with its length.
    pub fn next(&self, seq: u64, record: &Record) -> ChainHash {
        let mut hasher = blake3::Hasher::new();
        hasher.update(b"spearleaf entry 1\n");
        hasher.update(&self.0);
        hasher.update(&seq.to_be_bytes());
        record.fields(|field| {
            hasher.update(&(field.len() as u64).to_be_bytes());
            hasher.update(field);
        });
        ChainHash(*hasher.finalize().as_bytes())
    }

    /// From 64 hexadecimal digits.
    pub fn parse(text: &str) -> Option<ChainHash> {
        blake3::Hash::from_hex(text)
            .ok()
            .map(|hash| ChainHash(*hash.as_bytes()))
    }
}

impl fmt::Display for ChainHash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&blake3::Hash::from_bytes(self.0).to_hex())
    }
}

impl fmt::Debug for ChainHash {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "ChainHash({self})")
    }
}

/// What verifying found.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Verdict {
    /// Every entry is there and unchanged.
    Whole(Head),
    /// The first place where something is wrong.
    Broken {
        /// Sequence of the first bad entry, or of the first missing one.
        seq: u64,
        /// What is wrong there.
        what: Fault,
    },
}

/// What can be wrong with a chain.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Fault {
    /// No entry has this sequence although later ones exist or the head says so.
    Missing,
    /// The entry's content does not give the hash kept with it (or the hash was changed).
    Altered,
    /// Entries beyond what the head says, or a head with another hash.
    HeadDiffers,
    /// The store could not be read: the engine's words.
    Unreadable(String),
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Fault::Missing => f.write_str("an entry is missing"),
            Fault::Altered => f.write_str("the entry does not match its hash"),
            Fault::HeadDiffers => f.write_str("the end of the chain is not where the ledger says"),
            Fault::Unreadable(why) => write!(f, "cannot be read: {why}"),
        }
    }
}

/// Walks a chain record by record.
pub struct Walk {
    at: Head,
}

impl Default for Walk {
    fn default() -> Walk {
        Walk {
            at: Head {
                seq: 0,
                hash: ChainHash::ORIGIN,
            },
        }
    }
}

impl Walk {
    /// The next record with the sequence and hash it was kept with.
    pub fn step(&mut self, seq: u64, hash: ChainHash, record: &Record) -> Result<(), Verdict> {
        let expected = self.at.seq + 1;
        if seq != expected {
            return Err(Verdict::Broken {
                seq: expected,
                what: Fault::Missing,
            });
        }
        if self.at.hash.next(seq, record) != hash {
            return Err(Verdict::Broken {
                seq,
                what: Fault::Altered,
            });
        }
        self.at = Head { seq, hash };
        Ok(())
    }

    /// The verdict once all records were walked, against the head the ledger keeps.
    pub fn end(self, head: Head) -> Verdict {
        match self.at {
            at if at == head => Verdict::Whole(at),
            at if at.seq < head.seq => Verdict::Broken {
                seq: at.seq + 1,
                what: Fault::Missing,
            },
            at => Verdict::Broken {
                seq: at.seq.max(1),
                what: Fault::HeadDiffers,
            },
        }
    }
}
