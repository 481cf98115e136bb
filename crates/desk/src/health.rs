//! How a palm's health stands, for the order in which palms are taken: what clings to blades, gloves and boots goes only
//! to palms that are no better off.

use crate::blades::{ADVISED, INFECTIOUS};
use crate::views::needs::{LONG_DAYS, LONG_MOVED_DAYS, MOVED_DAYS};
use crate::views::standing::Standing;
use care::rules::held::LAB;
use model::knowledge::HoldKind;
use model::{Day, Inspection, PalmRecord, Spear};
use rounds::walk::Health;

/// Signs at the last look that make a palm suspect although nothing was reckoned yet, besides those that alone call for
/// a hold ([`care::judge::ALONE`]).
const WILTING: [&str; 2] = ["one-sided-browning", "wilt"];

/// Why a palm is taken for what it is.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Because {
    /// A hold is in force on a laboratory's result.
    Laboratory,
    /// A hold in force is set for something that blades or hands may carry; its reason.
    Held(&'static str),
    /// The rules advise a hold for something that blades or hands may carry; the reason it stands for.
    Advised(&'static str),
    /// A sign of the last look, by its key.
    Sign(&'static str),
    /// The spear was not firm at the last look of a stem.
    Spear,
    /// Nobody has looked.
    NeverSeen,
    /// The last look is this many days old.
    LongAgo(i32),
    /// It was looked at lately and nothing speaks of such a disease; days since.
    Seen(i32),
}

impl Because {
    /// The word in files and message keys.
    pub fn key(self) -> &'static str {
        match self {
            Because::Laboratory => "laboratory",
            Because::Held(_) => "held",
            Because::Advised(_) => "advised",
            Because::Sign(_) => "sign",
            Because::Spear => "spear",
            Because::NeverSeen => "never-seen",
            Because::LongAgo(_) => "long-ago",
            Because::Seen(_) => "seen",
        }
    }

    /// The class it puts a palm in.
    pub fn health(self) -> Health {
        match self {
            Because::Laboratory => Health::Confirmed,
            Because::Held(_) | Because::Advised(_) | Because::Sign(_) | Because::Spear => {
                Health::Suspect
            }
            Because::NeverSeen | Because::LongAgo(_) => Health::Unknown,
            Because::Seen(_) => Health::Healthy,
        }
    }
}

/// The class of a palm on a day. `standing`: `None` where nothing was reckoned; then only holds, signs and dates speak.
pub fn health_of(record: &PalmRecord, standing: Option<&Standing>, today: Day) -> Health {
    because(record, standing, today).health()
}

/// The same with its reason: the worst one counts. A look is too old where the keeper is told to look again: after 182
/// days, for a palm moved within 540 days after 35 (assumed).
pub fn because(record: &PalmRecord, standing: Option<&Standing>, today: Day) -> Because {
    let held = |reason: &str| record.holds_on(today).any(|hold| hold.reason == reason);
    if held(LAB) {
        return Because::Laboratory;
    }
    // a conk is the sign of a rot that saws carry
    let mut reasons = INFECTIOUS.into_iter().chain(["conk"]);
    if let Some(reason) = reasons.find(|reason| held(reason)) {
        return Because::Held(reason);
    }
    if let Some(reason) = standing.and_then(advised) {
        return Because::Advised(reason);
    }
    let looks = || last_looks(record, today);
    if let Some(sign) = looks().find_map(sign) {
        return Because::Sign(sign);
    }
    if looks().any(|look| look.spear.is_some_and(|spear| spear != Spear::Firm)) {
        return Because::Spear;
    }
    let moved = record.palm.moved_on;
    let lately = moved.is_some_and(|day| (0..MOVED_DAYS).contains(&today.since(day)));
    let long = if lately { LONG_MOVED_DAYS } else { LONG_DAYS };
    match looks().map(|look| today.since(look.date)).min() {
        None => Because::NeverSeen,
        Some(days) if days > long => Because::LongAgo(days),
        Some(days) => Because::Seen(days),
    }
}

/// What the rules advise a hold for, if blades or hands may carry it.
fn advised(standing: &Standing) -> Option<&'static str> {
    standing.holds.iter().find_map(|hold| {
        let mut own = ADVISED
            .iter()
            .filter(|(code, _)| hold.code.starts_with(code));
        own.next().map(|(_, reason)| *reason)
    })
}

/// The last look at each stem up to a day.
fn last_looks(record: &PalmRecord, today: Day) -> impl Iterator<Item = &Inspection> {
    let looks = record.inspections.iter().enumerate();
    looks.filter_map(move |(i, look)| {
        // inspections stand by stem, then by date
        let next = record.inspections.get(i + 1);
        let last = next.is_none_or(|next| next.stem != look.stem || next.date > today);
        (look.date <= today && last).then_some(look)
    })
}

/// A sign of a disease that blades or hands may carry. A weevil is none.
fn sign(look: &Inspection) -> Option<&'static str> {
    let alone = care::judge::ALONE.iter();
    let carried = alone
        .filter(|(_, kind)| *kind != HoldKind::Weevil)
        .map(|(key, _)| *key);
    WILTING
        .into_iter()
        .chain(carried)
        .find(|key| look.signs.iter().any(|seen| seen == key))
}

#[cfg(test)]
mod tests {
    use super::*;
    use model::PalmId;
    use std::sync::Arc;
    use testkit::{Book, InspectionWith, PalmWith, day, inspection, palm};

    const TODAY: &str = "2026-06-01";

    fn record(write: impl FnOnce(&mut Book, PalmId)) -> Arc<PalmRecord> {
        let mut book = Book::new(1);
        let id = book.register(palm("Sabal palmetto"));
        write(&mut book, id);
        book.state().palm(id).unwrap().clone()
    }

    fn why(write: impl FnOnce(&mut Book, PalmId)) -> Because {
        because(&record(write), None, day(TODAY))
    }

    #[test]
    fn a_look_makes_a_palm_healthy_until_it_is_too_old() {
        assert_eq!(why(|_, _| {}), Because::NeverSeen);
        let seen = |date: &'static str| {
            why(move |b, p| {
                b.inspect(p, inspection(date));
            })
        };
        assert_eq!(seen("2026-05-30"), Because::Seen(2));
        // 182 days, assumed: the keeper is told to look again then
        assert_eq!(seen("2025-12-01"), Because::Seen(182));
        assert_eq!(seen("2025-11-30"), Because::LongAgo(183));
        // a look still to come is none
        assert_eq!(seen("2026-06-02"), Because::NeverSeen);
    }

    #[test]
    fn a_palm_moved_lately_is_unknown_sooner() {
        let seen = |date: &'static str| {
            let mut book = Book::new(1);
            let id = book.register(palm("Sabal palmetto").moved("2026-01-10"));
            book.inspect(id, inspection(date));
            because(book.state().palm(id).unwrap(), None, day(TODAY))
        };
        assert_eq!(seen("2026-04-27"), Because::Seen(35));
        assert_eq!(seen("2026-04-26"), Because::LongAgo(36));
    }

    #[test]
    fn a_laboratory_outweighs_a_suspicion_and_both_outweigh_a_look() {
        let held = |reason: &'static str| {
            why(move |b, p| {
                b.inspect(p, inspection("2026-05-30"));
                b.hold(p, "wilt-suspect", None);
                b.hold(p, reason, None);
            })
        };
        assert_eq!(held("lab-confirmed").health(), Health::Confirmed);
        assert_eq!(held("nest"), Because::Held("wilt-suspect"));
        // a hold on a palm that nobody looked at speaks all the same
        let unseen = why(|b, p| {
            b.hold(p, "conk", None);
        });
        assert_eq!(unseen, Because::Held("conk"));
        // one that has run out does not, nor does one for what no blade carries
        let over = why(|b, p| {
            b.hold(p, "lab-confirmed", Some(day("2026-05-31")));
        });
        assert_eq!(over, Because::NeverSeen);
        for reason in ["nest", "wires", "keeper", "weevil-suspect"] {
            let why = why(|b, p| {
                b.inspect(p, inspection("2026-05-30"));
                b.hold(p, reason, None);
            });
            assert_eq!(why.health(), Health::Healthy, "{reason}");
        }
    }

    #[test]
    fn signs_and_spear_of_the_last_look_speak() {
        let look = || inspection("2026-05-30");
        let seen = |look: Inspection| {
            why(|b, p| {
                b.inspect(p, look);
            })
        };
        for sign in ["one-sided-browning", "conk-lower-trunk", "spear-pulls-out"] {
            assert_eq!(seen(look().sign(sign)), Because::Sign(sign));
        }
        assert_eq!(
            seen(look().sign("grubs-or-cocoons")).health(),
            Health::Healthy
        );
        assert_eq!(seen(look().spear(Spear::Leaning)), Because::Spear);
        assert_eq!(seen(look().spear(Spear::Firm)).health(), Health::Healthy);
        // an older look at the same stem no longer speaks, one at another stem does
        let two = |stem: u16| {
            why(move |b, p| {
                b.inspect(p, inspection("2026-04-01").spear(Spear::Down));
                b.inspect(p, look().stem(stem).spear(Spear::Firm));
            })
        };
        assert_eq!(two(1), Because::Seen(2));
        assert_eq!(two(2), Because::Spear);
    }

    #[test]
    fn what_the_rules_advise_makes_suspect() {
        use model::{Finding, Severity};
        let record = record(|b, p| {
            b.inspect(p, inspection("2026-05-30"));
        });
        let with = |code: &'static str| {
            let standing = Standing {
                probabilities: [0.25; 4],
                explanation: None,
                tail_probability: None,
                lost: None,
                due: crown::DueWindow {
                    earliest: None,
                    latest: None,
                },
                holds: vec![Finding::new(code, Severity::Refuse)],
                take: crown::Cut::NONE,
                lift: false,
                high: false,
                rhythm: None,
            };
            because(&record, Some(&standing), day(TODAY))
        };
        assert_eq!(
            with("hold-decline-likely"),
            Because::Advised("wilt-suspect")
        );
        assert_eq!(with("hold-conk"), Because::Advised("trunk-rot-suspect"));
        assert_eq!(with("hold-nest"), Because::Seen(2));
        assert_eq!(with("hold-weevil"), Because::Seen(2));
    }
}
