//! What about a palm needs a person, worst first. One need, one line.

use super::standing::Standing;
use crate::office::Office;
use crown::Explanation;
use model::{Arg, Day, Finding, PalmRecord, Severity};

/// A settled palm is looked at again after so many days at the latest (assumed).
pub const LONG_DAYS: i32 = 182;
/// A palm moved within [`MOVED_DAYS`] is looked at again after so many days at the latest (assumed).
pub const LONG_MOVED_DAYS: i32 = 35;
/// A palm counts as recently moved for so long (assumed, as in the reading).
pub const MOVED_DAYS: i32 = 540;
/// From this probability on hunger and decline are worth a line (assumed).
const LIKELY: f64 = 0.5;

/// The holds of the cut plan that come before everything else, with their rank.
const WORST_HOLDS: [(&str, u8); 18] = [
    ("hold-spear-pulled", 0),
    ("hold-spear-down", 1),
    ("hold-trunk-rot-seen", 1),
    ("hold-trunk-rot", 2),
    ("hold-trunk-rot-suspect", 2),
    ("hold-conk", 2),
    ("hold-lab-confirmed", 1),
    ("hold-wilt", 2),
    ("hold-wilt-suspect", 2),
    ("hold-phytoplasma", 2),
    ("hold-phytoplasma-suspect", 2),
    ("hold-bud-rot", 2),
    ("hold-bud-rot-suspect", 2),
    ("hold-weevil", 3),
    ("hold-weevil-seen", 3),
    ("hold-weevil-suspect", 3),
    ("hold-decline-likely", 3),
    ("hold-wires-within", 4),
];

/// Every code a need can have; each has words in every language.
pub const CODES: [&str; 31] = [
    "need-spear-pulled",
    "need-spear-down",
    "need-spear-leaning",
    "need-spear-set",
    "need-wilt",
    "need-decline",
    "need-wires",
    "need-nest",
    "need-bats",
    "need-bees",
    "need-hold",
    "need-tripwire",
    "need-hunger",
    "need-overdue",
    "need-look",
    "need-look-moved",
    "need-first-look",
    "need-species",
    "need-suspect-wilt",
    "need-suspect-phytoplasma",
    "need-suspect-bud-rot",
    "need-suspect-trunk-rot",
    "need-suspect-weevil",
    "need-seen-trunk-rot",
    "need-seen-weevil",
    "need-held-phytoplasma",
    "need-held-bud-rot",
    "need-held-trunk-rot",
    "need-held-conk",
    "need-held-lab",
    "need-held-weevil",
];

/// A need with its rank: the smaller, the worse.
#[derive(Clone, PartialEq, Debug)]
pub struct Need {
    /// Order among needs.
    pub rank: u8,
    /// What to say.
    pub finding: Finding,
}

/// What a palm needs, worst first. Without a standing only what the register itself shows.
pub fn of(office: &Office, record: &PalmRecord, standing: Option<&Standing>) -> Vec<Need> {
    let today = office.today();
    let mut needs: Vec<Need> = Vec::new();
    if let Some(standing) = standing {
        held(&mut needs, standing);
        read(&mut needs, standing, today);
    } else {
        held_by_people(&mut needs, record, today);
    }
    looked_at(&mut needs, record, today);
    described(&mut needs, office, record);
    needs.sort_by_key(|need| need.rank);
    needs
}

fn add(needs: &mut Vec<Need>, rank: u8, finding: Finding) {
    needs.push(Need { rank, finding });
}

fn held(needs: &mut Vec<Need>, standing: &Standing) {
    for hold in &standing.holds {
        let rank = WORST_HOLDS
            .iter()
            .find(|(code, _)| *code == hold.code)
            .map_or(12, |(_, rank)| *rank);
        let mut finding = Finding::new(need_of_hold(hold.code), hold.severity);
        finding.args.clone_from(&hold.args);
        add(needs, rank, finding);
    }
}

/// The one-line form of a hold of the cut plan.
fn need_of_hold(code: &str) -> &'static str {
    match code {
        "hold-spear-pulled" => "need-spear-pulled",
        "hold-spear-down" => "need-spear-down",
        "hold-spear-leaning" => "need-spear-leaning",
        "hold-spear-set" => "need-spear-set",
        "hold-wilt-suspect" => "need-wilt",
        "hold-decline-likely" => "need-decline",
        "hold-wires-within" | "hold-wires-set" => "need-wires",
        "hold-nest" => "need-nest",
        "hold-bats" => "need-bats",
        "hold-bees" => "need-bees",
        "hold-wilt" => "need-suspect-wilt",
        "hold-phytoplasma" => "need-suspect-phytoplasma",
        "hold-phytoplasma-suspect" => "need-held-phytoplasma",
        "hold-bud-rot" => "need-suspect-bud-rot",
        "hold-bud-rot-suspect" => "need-held-bud-rot",
        "hold-trunk-rot" => "need-suspect-trunk-rot",
        "hold-trunk-rot-seen" => "need-seen-trunk-rot",
        "hold-trunk-rot-suspect" => "need-held-trunk-rot",
        "hold-conk" => "need-held-conk",
        "hold-lab-confirmed" => "need-held-lab",
        "hold-weevil" => "need-suspect-weevil",
        "hold-weevil-seen" => "need-seen-weevil",
        "hold-weevil-suspect" => "need-held-weevil",
        _ => "need-hold",
    }
}

fn held_by_people(needs: &mut Vec<Need>, record: &PalmRecord, today: Day) {
    if record.holds_on(today).next().is_some() {
        add(needs, 12, Finding::new("need-hold", Severity::Act));
    }
}

fn read(needs: &mut Vec<Need>, standing: &Standing, today: Day) {
    let likely = |e| {
        Some(standing.probability(e)).filter(|p| *p >= LIKELY && standing.explanation.is_some())
    };
    if standing.unusual() {
        let lost = Arg::Count(standing.lost.unwrap_or(0.0).round() as i64);
        add(
            needs,
            8,
            Finding::new("need-tripwire", Severity::Act).with("n", lost),
        );
    }
    let has_decline = standing
        .holds
        .iter()
        .any(|h| h.code == "hold-decline-likely");
    if let Some(p) = likely(Explanation::Decline).filter(|_| !has_decline) {
        add(
            needs,
            7,
            Finding::new("need-decline", Severity::Act).with("share", Arg::Share(p)),
        );
    }
    if let Some(p) = likely(Explanation::Hunger) {
        add(
            needs,
            20,
            Finding::new("need-hunger", Severity::Act).with("share", Arg::Share(p)),
        );
    }
    if standing.due.latest.is_some_and(|d| d <= today) {
        let n = Arg::Count(i64::from(standing.take.brown));
        add(
            needs,
            24,
            Finding::new("need-overdue", Severity::Caution).with("n", n),
        );
    }
}

fn looked_at(needs: &mut Vec<Need>, record: &PalmRecord, today: Day) {
    let Some(last) = record.last_look().map(|look| look.date) else {
        return add(
            needs,
            30,
            Finding::new("need-first-look", Severity::Caution),
        );
    };
    let moved = record
        .palm
        .moved_on
        .is_some_and(|d| (0..MOVED_DAYS).contains(&today.since(d)));
    let (long, code) = if moved {
        (LONG_MOVED_DAYS, "need-look-moved")
    } else {
        (LONG_DAYS, "need-look")
    };
    let days = today.since(last);
    if days > long {
        let ago = Arg::Days(f64::from(days));
        add(
            needs,
            if moved { 26 } else { 32 },
            Finding::new(code, Severity::Caution).with("ago", ago),
        );
    }
}

fn described(needs: &mut Vec<Need>, office: &Office, record: &PalmRecord) {
    if office.species(&record.palm).is_none() {
        let name = Arg::Text(record.palm.species.clone());
        add(
            needs,
            40,
            Finding::new("need-species", Severity::Info).with("name", name),
        );
    }
}
