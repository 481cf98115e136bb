//! A book from the register.

use super::Stand;
use super::book::{Book, BookMaker, Cleaned, second};
use crate::blades;
use model::state::{BladeRecord, BladeTouch, Touch};
use model::{Arg, Cleaning, Finding, Moment, PalmRecord, Severity, State};
use std::collections::BTreeMap;

/// Everything that blades did according to the register, palms and blades that left it included.
pub fn book_of(state: &State) -> Book {
    let mut maker = BookMaker::new();
    // of two palms with one tag the one that stands goes by it; both keep their cuts
    let mut palms = BTreeMap::new();
    let (gone, standing): (Vec<_>, Vec<_>) = state.palms.values().partition(|r| !r.stands());
    for record in gone.into_iter().chain(standing) {
        palms.insert(record.id, maker.palm(stand(record)));
    }
    for record in state.blades.values() {
        let blade = maker.blade(record.id, &record.blade.tag);
        let counted = counted_at(record);
        let (mut strange, mut lent) = (0, 0);
        for (touch, at) in record.touches.iter().zip(counted) {
            match &touch.what {
                Touch::Cut(cut) => match palms.get(&cut.palm) {
                    Some(palm) => maker.cut(at, blade, *palm),
                    None => strange += 1,
                },
                Touch::Cleaned(cleaning) => {
                    maker.clean(at, blade, &cleaned(state, record, touch.at, cleaning));
                }
                Touch::Lent(_) => lent += 1,
                Touch::Returned => {}
            }
        }
        for finding in about(record, strange, lent) {
            maker.finding(finding);
        }
    }
    maker.done()
}

fn stand(record: &PalmRecord) -> Stand {
    Stand {
        id: Some(record.id),
        tag: record.palm.tag.clone(),
        species: record.palm.species.clone(),
        site: record.palm.site.clone(),
        position: record.palm.position,
    }
}

/// When each touch counts: at its end; but a touch that ended after the next cut of this blade had begun counts at the
/// end of that cut, because nobody knows which of the two came first.
fn counted_at(record: &BladeRecord) -> Vec<Moment> {
    let mut at: Vec<Moment> = record.touches.iter().map(|touch| touch.at).collect();
    let mut begun = Moment(i64::MAX);
    for n in (0..at.len()).rev() {
        let touch = &record.touches[n];
        if touch.at > begun {
            at[n] = at[n + 1];
        }
        begun = begun.min(begin(touch));
    }
    at
}

fn begin(touch: &BladeTouch) -> Moment {
    match &touch.what {
        Touch::Cut(cut) => cut.started.unwrap_or(touch.at).min(touch.at),
        _ => touch.at,
    }
}

fn cleaned(state: &State, blade: &BladeRecord, at: Moment, cleaning: &Cleaning) -> Cleaned {
    let told = blades::told(state, cleaning, at);
    Cleaned {
        agent: told.agent.to_owned(),
        strength_pct: told.strength_pct,
        contact_min: told.contact_min,
        brushed: told.brushed,
        bath_age_min: told.bath_age_min,
        bath_uses: told.bath_uses,
        tool: blade.blade.kind,
    }
}

fn about(record: &BladeRecord, strange: i64, lent: i64) -> Vec<Finding> {
    let overlaps = overlaps(record);
    let all = [
        ("tracing-overlap", Severity::Caution, overlaps),
        ("tracing-cut-strange", Severity::Caution, strange),
        ("tracing-lent", Severity::Caution, lent),
    ];
    all.into_iter()
        .filter(|(_, _, count)| *count > 0)
        .map(|(code, severity, count)| {
            Finding::new(code, severity)
                .with("blade", Arg::Text(record.blade.tag.clone()))
                .with("count", Arg::Count(count))
        })
        .collect()
}

/// Cuts that began before the touch in front of them had ended.
fn overlaps(record: &BladeRecord) -> i64 {
    let over = |pair: &&[BladeTouch]| {
        matches!(pair[1].what, Touch::Cut(_)) && second(begin(&pair[1])) < second(pair[0].at)
    };
    record.touches.windows(2).filter(over).count() as i64
}
