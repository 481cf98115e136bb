//! One palm's answer: reading, loss, tripwire, forecast, and what of it needs a person.

use super::yard::{Yard, stem_cases};
use crown::{
    Cut, Explanation, Forecast, LossReading, PalmReading, Reading, Sampler, Tripwire, read_palm,
};
use model::{Arg, Day, Finding, Inspection, Severity, Spear};

/// From this probability on a decline needs a person, whatever else is more probable (assumed).
pub const DECLINE_PROBABLE: f64 = 0.5;

/// A loss less probable than this in an ordinary palm has passed the tripwire (1 in 20).
pub const ALARM_PROBABILITY: f64 = 0.05;

/// Findings from this weight on need a person.
pub const NEEDS_A_PERSON: Severity = Severity::Act;

/// What is asked of every palm.
#[derive(Clone, PartialEq, Debug)]
pub struct Ask {
    /// The day the readings speak for.
    pub as_of: Day,
    /// Days of the forecast, ascending, none before `as_of`.
    pub days: Vec<Day>,
    /// Day of the tripwire.
    pub tripwire_by: Day,
}

impl Ask {
    /// Horizons in weeks unless told otherwise.
    pub const WEEKS: [u32; 4] = [4, 8, 26, 52];
    /// The tripwire looks four weeks ahead, as the pages do (assumed: a usual time to the next look).
    pub const TRIPWIRE_DAYS: i32 = 28;

    /// The usual question on a day, with horizons in weeks.
    pub fn of(as_of: Day, weeks: &[u32]) -> Ask {
        let mut days: Vec<Day> = weeks.iter().map(|w| as_of.plus(*w as i32 * 7)).collect();
        days.sort_unstable();
        days.dedup();
        Ask {
            as_of,
            days,
            tripwire_by: as_of.plus(Ask::TRIPWIRE_DAYS),
        }
    }
}

/// The answer for one stem.
#[derive(Clone, PartialEq, Debug)]
pub struct StemAnswer {
    /// Stem number.
    pub stem: u16,
    /// Most probable explanation.
    pub explanation: Explanation,
    /// Probabilities, ordered as [`Explanation::ALL`].
    pub probabilities: [f64; 4],
    /// Loss between the last two looks, where the counts tell.
    pub loss: Option<LossReading>,
    /// When to call.
    pub tripwire: Tripwire,
    /// Effective number of draws.
    pub effective_draws: f64,
    /// Day and crown expected, one per day asked for.
    pub forecasts: Vec<(Day, Forecast)>,
}

/// The answer for one palm.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmAnswer {
    /// Its tag.
    pub tag: String,
    /// The day it speaks for.
    pub as_of: Day,
    /// Whether anybody looked at it by then; else the answer is only what is believed of such palms.
    pub looked_at: bool,
    /// Its stems.
    pub stems: Vec<StemAnswer>,
    /// Most probable explanation of the palm as a whole, all stems together.
    pub explanation: Explanation,
    /// Probabilities for the palm as a whole.
    pub probabilities: [f64; 4],
    /// What is to say, worst first.
    pub findings: Vec<Finding>,
}

impl PalmAnswer {
    /// Whether a finding needs a person.
    pub fn needs_a_person(&self) -> bool {
        self.findings.iter().any(|f| f.severity >= NEEDS_A_PERSON)
    }
}

/// Reads one palm of a yard.
pub fn answer(yard: &Yard, index: usize, ask: &Ask, sampler: &mut Sampler) -> PalmAnswer {
    let palm = yard.palm(index);
    let inspections = yard.inspections(index);
    let cases = stem_cases(palm, yard.kind(index), &inspections, yard.climate(index));
    let reading = read_palm(&cases, ask.as_of, sampler);
    let stems: Vec<StemAnswer> = reading
        .stems
        .iter()
        .map(|(stem, reading)| stem_answer(*stem, reading, ask))
        .collect();
    let mut findings: Vec<Finding> = yard.kind(index).finding.iter().cloned().collect();
    findings.extend(of_reading(&reading, &stems));
    findings.extend(of_inspections(&inspections, ask.as_of));
    findings.sort_by_key(|f| core::cmp::Reverse(f.severity));
    PalmAnswer {
        tag: palm.tag.clone(),
        as_of: ask.as_of,
        looked_at: inspections.iter().any(|i| i.date <= ask.as_of),
        stems,
        explanation: most_probable(reading.probabilities),
        probabilities: reading.probabilities,
        findings,
    }
}

fn stem_answer(stem: u16, reading: &Reading, ask: &Ask) -> StemAnswer {
    let forecasts = reading.forecasts(Cut::NONE, &ask.days);
    StemAnswer {
        stem,
        explanation: reading.most_probable(),
        probabilities: reading.probabilities,
        loss: reading.loss(),
        tripwire: reading.tripwire(ask.tripwire_by),
        effective_draws: reading.effective_draws,
        forecasts: ask.days.iter().copied().zip(forecasts).collect(),
    }
}

fn most_probable(probabilities: [f64; 4]) -> Explanation {
    let better = |a: Explanation, b: Explanation| {
        if probabilities[b.index()] > probabilities[a.index()] {
            b
        } else {
            a
        }
    };
    Explanation::ALL
        .into_iter()
        .fold(Explanation::Ageing, better)
}

/// Decline probable, and losses beyond what an ordinary palm makes.
fn of_reading(reading: &PalmReading, stems: &[StemAnswer]) -> Vec<Finding> {
    let mut out = Vec::new();
    let decline = reading.probabilities[Explanation::Decline.index()];
    if decline >= DECLINE_PROBABLE {
        out.push(
            Finding::new("assess-decline-probable", Severity::Act)
                .with("share", Arg::Share(decline)),
        );
    }
    for answer in stems {
        let Some(loss) = &answer.loss else { continue };
        let (Some(lost), Some(tail)) = (loss.lost, loss.tail_probability) else {
            continue;
        };
        if tail < ALARM_PROBABILITY {
            out.push(
                Finding::new("assess-loss-beyond-ordinary", Severity::Act)
                    .with("stem", Arg::Count(i64::from(answer.stem)))
                    .with("lost", Arg::Count(lost.round() as i64))
                    .with("since", Arg::Date(loss.since))
                    .with("most", Arg::Number(loss.ordinary.1.round())),
            );
        }
    }
    out
}

/// What the last looks say by themselves, and looks that were passed over.
fn of_inspections(inspections: &[Inspection], as_of: Day) -> Vec<Finding> {
    let mut out = Vec::new();
    let stem = |i: &Inspection| Arg::Count(i64::from(i.stem));
    let later = inspections.iter().filter(|i| i.date > as_of).count();
    if later > 0 {
        out.push(
            Finding::new("assess-later-looks", Severity::Info)
                .with("count", Arg::Count(later as i64)),
        );
    }
    let seen: Vec<&Inspection> = inspections.iter().filter(|i| i.date <= as_of).collect();
    if seen.is_empty() {
        out.push(Finding::new("assess-never-looked-at", Severity::Info));
    }
    for (at, look) in seen.iter().enumerate() {
        let last = seen.get(at + 1).is_none_or(|next| next.stem != look.stem);
        let Some(spear) = look.spear.filter(|s| last && *s != Spear::Firm) else {
            continue;
        };
        let code = match spear {
            Spear::Leaning => "assess-spear-leaning",
            Spear::Down => "assess-spear-down",
            Spear::Firm | Spear::Pulled => "assess-spear-pulled",
        };
        out.push(
            Finding::new(code, Severity::Act)
                .with("stem", stem(look))
                .with("date", Arg::Date(look.date)),
        );
    }
    out
}
