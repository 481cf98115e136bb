//! The loss between the last two looks against what each explanation would make, and the tripwire for the next.

use crate::answer::{Cut, ExpectedLoss, Explanation, LossReading, Tripwire};
use crate::case::StemCase;
use crate::lanes::WIDTH;
use crate::prior::Hang;
use crate::quantile::CountMixture;
use crate::reading::{Reading, posterior};
use crate::refine::{Batch, Evidence};
use crate::track::{Event, Timeline};
use crate::weigh::BROWN;
use model::{Day, Inspection};

/// A loss this improbable in an ordinary palm makes somebody call.
pub const ALARM_PROBABILITY: f64 = 0.05;

/// The loss reading, weighed without the last look (which is what it judges).
pub(crate) fn reading(
    case: &StemCase,
    line: &Timeline,
    batches: &[Batch<'_>],
    prior: [f64; 4],
) -> Option<LossReading> {
    let last = line.looks.checked_sub(1)?;
    let since = start_of_stretch(case, line, last)?;
    let mut expected = [None; 4];
    let mut log_evidence = [f64::NEG_INFINITY; 4];
    let before: Vec<Evidence> = batches.iter().map(Batch::evidence_before).collect();
    for (batch, evidence) in batches.iter().zip(&before) {
        log_evidence[batch.kind.index()] = evidence.log;
        if batch.weighed.iter().all(|row| !row.complete) {
            continue;
        }
        let mix = CountMixture::of(losses(batch, evidence, 1.0), BROWN.size);
        expected[batch.kind.index()] = Some((mix.quantile(0.05), mix.quantile(0.95)));
    }
    let share = posterior(prior, log_evidence);
    let ordinary = CountMixture::of(
        batches
            .iter()
            .zip(&before)
            .filter(|(b, _)| is_ordinary(b.kind))
            .flat_map(|(batch, evidence)| {
                losses(batch, evidence, share[batch.kind.index()] / evidence.sum)
            }),
        BROWN.size,
    );
    let lost = counted_loss(case, line, last);
    Some(LossReading {
        since,
        until: case.inspections[last].date,
        lost,
        expected,
        ordinary: (ordinary.quantile(0.05), ordinary.quantile(0.95)),
        tail_probability: lost.map(|l| ordinary.at_least(l)),
    })
}

fn is_ordinary(kind: Explanation) -> bool {
    matches!(kind, Explanation::Ageing | Explanation::Move)
}

fn losses<'a>(
    batch: &'a Batch<'_>,
    evidence: &'a Evidence,
    scale: f64,
) -> impl Iterator<Item = (f64, f64)> + Clone + 'a {
    let rows = batch
        .weighed
        .iter()
        .zip(&evidence.weights)
        .filter(|(row, _)| row.complete);
    rows.flat_map(move |(row, w)| {
        (0..WIDTH).map(move |i| (row.lost[i].max(0.0) + BROWN.stray, w[i] * scale))
    })
}

/// The day of the look or cleaning before the last look.
fn start_of_stretch(case: &StemCase, line: &Timeline, last: usize) -> Option<Day> {
    let before = last.checked_sub(1).map(|k| case.inspections[k].date);
    let cleaned = cleaned_before_last(case, line, last);
    before.max(cleaned)
}

fn cleaned_before_last(case: &StemCase, line: &Timeline, last: usize) -> Option<Day> {
    let known = line.events.iter().any(|(_, e)| *e == Event::Cleaned);
    case.last_cleaned_on
        .filter(|c| known && *c < case.inspections[last].date)
}

/// Fronds lost as the counts tell: new fronds less the gain in live ones where both were counted, else the dead ones
/// that have come on (which misses those that fell, so only where they hang).
fn counted_loss(case: &StemCase, line: &Timeline, last: usize) -> Option<f64> {
    let look = &case.inspections[last];
    let before = last.checked_sub(1).map(|k| &case.inspections[k]);
    let cleaned =
        cleaned_before_last(case, line, last).filter(|c| before.is_none_or(|b| *c >= b.date));
    if let (Some(before), None) = (before, cleaned)
        && let (Some(new), Some(live), Some(live_before)) =
            (look.new_leaves, look.live(), before.live())
    {
        let gain = f64::from(live) - (f64::from(live_before) - taken_live(before));
        return Some((f64::from(new) - gain).max(0.0));
    }
    if matches!(case.prior.hang, Hang::Falls { .. }) {
        return None;
    }
    let on = f64::from(look.brown?);
    if cleaned.is_some() {
        return Some(on);
    }
    let left = f64::from(before?.brown?) - f64::from(before?.removed.brown.unwrap_or(0));
    Some((on - left.max(0.0)).max(0.0))
}

fn taken_live(look: &Inspection) -> f64 {
    f64::from(look.removed.green.unwrap_or(0) + look.removed.yellowing.unwrap_or(0))
}

impl Reading {
    /// The smallest count of further losses from the last inspection (or today without any) to `by` that ageing and
    /// move together would reach with less than 5 % probability.
    pub fn tripwire(&self, by: Day) -> Tripwire {
        Tripwire {
            count: self.loss_mix(by, is_ordinary).rare_from(ALARM_PROBABILITY),
            by,
        }
    }

    /// What is to be expected from the last inspection (or today without any) to `by`: of a palm moved lately what the
    /// move makes of it, of any other what ageing makes; and the count from which on to call, as in the tripwire.
    pub fn expected_loss(&self, by: Day) -> ExpectedLoss {
        let moved = self.rows.iter().any(|row| row.kind == Explanation::Move);
        let mix = self.loss_mix(by, |kind| {
            is_ordinary(kind) && (!moved || kind == Explanation::Move)
        });
        let call_from = self.tripwire(by).count;
        // where the move has become improbable the call may lie within what it would make
        let count = |level| (mix.quantile(level) as u32).min(call_from.saturating_sub(1));
        ExpectedLoss {
            since: self.last_inspection.unwrap_or(self.as_of),
            by,
            low: count(0.10),
            median: count(0.50),
            high: count(0.90),
            call_from,
        }
    }

    /// What explanations of some kinds make up to `by`.
    fn loss_mix(&self, by: Day, wanted: impl Fn(Explanation) -> bool) -> CountMixture {
        let crowns = self.crowns(Cut::NONE, &[by.max(self.as_of)]).remove(0);
        let lost = self
            .rows
            .iter()
            .zip(&crowns)
            .filter(|(row, _)| wanted(row.kind))
            .flat_map(|(row, crown)| {
                (0..WIDTH).map(move |i| (crown.lost[i].max(0.0) + BROWN.stray, row.weight[i]))
            });
        CountMixture::of(lost, BROWN.size)
    }
}
