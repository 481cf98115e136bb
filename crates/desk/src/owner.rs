//! Private links for owners: a long secret in the address instead of an account.
//!
//! The ledger keeps a hash of the secret only, so that nobody who reads the ledger, an export or a backup can open a
//! link. Whoever asks with a secret that is unknown, revoked or past its day learns nothing: all three are one answer.

use crate::office::Office;
use model::{Day, OwnerLink, PalmRecord, State};
use std::sync::Arc;
use uuid::Uuid;

/// Letters of a secret: no 0, 1, l or o, which people confuse when they copy from paper. 32 letters: 5 bits each.
const LETTERS: &[u8; 32] = b"abcdefghijkmnpqrstuvwxyz23456789";
/// Letters in a secret: 160 bits.
pub const SECRET_LENGTH: usize = 32;
/// What the hash is for: the same secret hashed for something else gives something else.
const PURPOSE: &str = "spearleaf owner link v1";

/// A fresh secret, from the machine's source of randomness.
pub fn fresh_secret() -> String {
    // two random UUIDs hold 244 random bits; the hash spreads them over all of its bits
    let mut seed = [0; 32];
    seed[..16].copy_from_slice(Uuid::new_v4().as_bytes());
    seed[16..].copy_from_slice(Uuid::new_v4().as_bytes());
    let mixed = blake3::hash(&seed);
    spell(&mixed.as_bytes()[..SECRET_LENGTH * 5 / 8])
}

/// Bytes as letters, 5 bits a letter.
fn spell(bytes: &[u8]) -> String {
    let (mut held, mut bits) = (0u32, 0);
    let mut out = String::with_capacity(bytes.len() * 8 / 5);
    for byte in bytes {
        held = (held << 8) | u32::from(*byte);
        bits += 8;
        while bits >= 5 {
            bits -= 5;
            out.push(char::from(LETTERS[(held >> bits) as usize & 31]));
        }
    }
    out
}

/// Whether a text can be a secret at all.
fn well_formed(secret: &str) -> bool {
    secret.len() == SECRET_LENGTH && secret.bytes().all(|b| LETTERS.contains(&b))
}

/// What the ledger keeps of a secret: 64 hexadecimal digits.
pub fn hash(secret: &str) -> String {
    let key = blake3::derive_key(PURPOSE, secret.as_bytes());
    key.iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Whether a link still works on a day; a revoked one is not in the state any more.
pub fn works(link: &OwnerLink, today: Day) -> bool {
    link.until.is_none_or(|until| today <= until)
}

/// The palm that a secret opens today; `None`: unknown, revoked, past its day, or the palm has left the register.
pub fn opened(office: &Office, secret: &str) -> Option<Arc<PalmRecord>> {
    if !well_formed(secret) {
        return None;
    }
    by_hash(&office.state(), &hash(secret), office.today())
}

fn by_hash(state: &State, hash: &str, today: Day) -> Option<Arc<PalmRecord>> {
    let fits = |record: &&Arc<PalmRecord>| {
        let mut links = record.links.iter().map(|own| &own.link);
        links.any(|link| link.secret_hash == hash && works(link, today))
    };
    state.standing().find(fits).cloned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::collections::BTreeSet;

    #[test]
    fn a_secret_is_long_plain_and_never_the_same() {
        let many: BTreeSet<String> = (0..200).map(|_| fresh_secret()).collect();
        assert_eq!(many.len(), 200);
        assert!(many.iter().all(|secret| well_formed(secret)));
        // every place takes many letters: no fixed bits of the ids are left
        for at in 0..SECRET_LENGTH {
            let met: BTreeSet<u8> = many.iter().map(|s| s.as_bytes()[at]).collect();
            assert!(met.len() > 20, "place {at}: {}", met.len());
        }
    }

    #[test]
    fn bits_are_spelt_in_order() {
        // 00000 00001 00010 ... as five bits each
        assert_eq!(
            spell(&[0b0000_0000, 0b0100_0100, 0b0011_0010, 0, 0]).len(),
            8
        );
        assert!(spell(&[0b0000_0000, 0b0100_0100, 0b0011_0000, 0, 0]).starts_with("abcd"));
        assert_eq!(spell(&[255; 5]), "99999999");
    }

    #[test]
    fn the_hash_is_the_derivation_of_the_library_and_tells_nothing() {
        let secret = fresh_secret();
        let own = hash(&secret);
        assert_eq!(own.len(), 64);
        assert!(own.bytes().all(|b| b.is_ascii_hexdigit()));
        assert!(!own.contains(&secret[..8]));
        assert_ne!(own, hash(&fresh_secret()));
        assert_eq!(own, hash(&secret));
        assert_ne!(own, blake3::hash(secret.as_bytes()).to_hex().to_string());
    }

    #[test]
    fn what_cannot_be_a_secret_is_none() {
        assert!(!well_formed("") && !well_formed(&"a".repeat(31)) && !well_formed(&"0".repeat(32)));
        assert!(!well_formed(&"ä".repeat(16)));
    }
}
