//! Agent x strength x contact x soil left on x pathogen.
//!
//! Says: a cleaning is enough when it keeps the strictest recipe that a source gives for this agent and this disorder.
//! Rows that are recalled may make it stricter, never laxer; trials on other plants' germs and hearsay are only shown.
//! A bath stronger than a recipe needs no longer than the recipe. Soil left on, a bath older than two hours or one that
//! has served ten palms: not enough, whatever the minutes.
//! Source: `cleaners.csv`; [bath_change], [brush_before_soak], [chainsaw_apart].
//! Would change it: a trial on blades with the palm's own germs.

use super::{Adequacy, Cleaned, CleaningVerdict};
use model::knowledge::{CleanerRow, Works};
use model::{Arg, Basis, BladeKind, Finding, Knowledge, Severity, SourceKey};
use std::collections::BTreeSet;

/// A bath is changed after so many minutes [bath_change].
pub(super) const BATH_MINUTES: f64 = 120.0;
/// A bath is changed after so many palms [bath_change].
pub(super) const BATH_PALMS: u32 = 10;
/// Half a second and a twentieth of a percent: written figures are rounded.
const MINUTES_ROUND: f64 = 0.01;
const PERCENT_ROUND: f64 = 0.05;
/// An unused blade carries nothing, whatever the disorder; the source says it of one wilt.
const NEW_BLADE: &str = "new-blade";

/// Whether a cleaning was enough for a disorder (its key), or, without one, for every disorder the agent's sources name.
pub fn adequacy<'k>(
    cleaned: &Cleaned,
    disorder: Option<&str>,
    known: &'k Knowledge,
) -> CleaningVerdict<'k> {
    let agent = match agent_of(cleaned, known) {
        Ok(agent) => agent,
        Err(finding) => return unknown(finding),
    };
    let rows: Vec<&CleanerRow> = known.cleaners_of(agent).collect();
    let mut parts: Vec<Part> = match disorder {
        Some(key) => vec![recipe(cleaned, &rows, Some(key))],
        None => every(cleaned, &rows),
    };
    let by_recipe = parts
        .iter()
        .any(|part| matches!(part.adequacy, Adequacy::Short { .. }));
    let soil = soil(cleaned, &rows, known);
    let by_soil = matches!(soil.adequacy, Adequacy::Short { .. });
    parts.extend([soil, bath(cleaned, known)]);
    let adequacy = together(parts.iter().map(|part| part.adequacy));
    let short = matches!(adequacy, Adequacy::Short { .. });
    let said: Vec<(&CleanerRow, bool)> = rows
        .iter()
        .filter(|row| speaks_of(row, disorder))
        .filter_map(|row| Some((*row, opinion(row, cleaned)?)))
        .collect();
    let enough = said.iter().any(|(_, yes)| *yes);
    let agreed = short && (by_soil || by_recipe && !enough);
    let otherwise = said
        .into_iter()
        .filter(|(_, yes)| match adequacy {
            Adequacy::Adequate => !yes,
            Adequacy::Short { .. } => *yes,
            Adequacy::Unknown => true,
        })
        .map(|(row, _)| row);
    verdict(adequacy, parts, otherwise.collect(), agreed)
}

/// The same for what carries the blade: a chain saw is never known to be clean, because its chain and bar have to be
/// taken apart and soaked, and a log does not tell that.
pub fn adequacy_on<'k>(
    kind: BladeKind,
    cleaned: &Cleaned,
    disorder: Option<&str>,
    known: &'k Knowledge,
) -> CleaningVerdict<'k> {
    let mut verdict = adequacy(cleaned, disorder, known);
    if kind == BladeKind::ChainSaw && verdict.adequacy == Adequacy::Adequate {
        verdict.adequacy = Adequacy::Unknown;
        let finding = Finding::new("clean-chain-saw-not-told", Severity::Caution);
        let finding = finding.from_sources(&of_rules(known, &["chainsaw_apart"]));
        verdict.findings.insert(0, finding);
    }
    verdict
}

/// Minutes of contact that would make a cleaning enough; `None`: no time would do, or nobody can say.
pub fn needed_min(cleaned: &Cleaned, disorder: Option<&str>, known: &Knowledge) -> Option<f64> {
    let begun = Cleaned {
        contact_min: Some(0.0),
        ..*cleaned
    };
    match adequacy(&begun, disorder, known).adequacy {
        Adequacy::Adequate => Some(0.0),
        Adequacy::Short { missing_min } => missing_min,
        Adequacy::Unknown => None,
    }
}

/// What one look at a cleaning gives.
struct Part<'k> {
    adequacy: Adequacy,
    rows: Vec<&'k CleanerRow>,
    finding: Option<Finding>,
}

impl Part<'_> {
    fn fine() -> Part<'static> {
        Part {
            adequacy: Adequacy::Adequate,
            rows: Vec::new(),
            finding: None,
        }
    }
}

const TOO_WEAK: Adequacy = Adequacy::Short { missing_min: None };

fn agent_of<'k>(cleaned: &Cleaned, known: &'k Knowledge) -> Result<&'k str, Finding> {
    if cleaned.agent.trim().is_empty() {
        return Err(Finding::new("clean-agent-missing", Severity::Caution));
    }
    known.cleaner_named(cleaned.agent).ok_or_else(|| {
        let written = Arg::Text(cleaned.agent.trim().to_owned());
        Finding::new("clean-agent-not-known", Severity::Caution).with("agent", written)
    })
}

fn unknown<'k>(finding: Finding) -> CleaningVerdict<'k> {
    CleaningVerdict {
        adequacy: Adequacy::Unknown,
        rows: Vec::new(),
        otherwise: Vec::new(),
        findings: vec![finding],
        agreed: false,
    }
}

/// One thing that is not enough makes the whole not enough; a doubt comes after that.
fn together(parts: impl Iterator<Item = Adequacy>) -> Adequacy {
    parts.fold(Adequacy::Adequate, |worst, part| match (worst, part) {
        (Adequacy::Short { missing_min: a }, Adequacy::Short { missing_min: b }) => {
            Adequacy::Short {
                missing_min: a.zip(b).map(|(a, b)| a.max(b)),
            }
        }
        (short @ Adequacy::Short { .. }, _) | (_, short @ Adequacy::Short { .. }) => short,
        (Adequacy::Unknown, _) | (_, Adequacy::Unknown) => Adequacy::Unknown,
        (Adequacy::Adequate, Adequacy::Adequate) => Adequacy::Adequate,
    })
}

/// Puts the parts together, the deciding one first.
fn verdict<'k>(
    adequacy: Adequacy,
    mut parts: Vec<Part<'k>>,
    otherwise: Vec<&'k CleanerRow>,
    agreed: bool,
) -> CleaningVerdict<'k> {
    let missing = |adequacy: &Adequacy| match adequacy {
        Adequacy::Short { missing_min } => missing_min.unwrap_or(f64::INFINITY),
        Adequacy::Unknown => -1.0,
        Adequacy::Adequate => -2.0,
    };
    parts.sort_by(|a, b| missing(&b.adequacy).total_cmp(&missing(&a.adequacy)));
    let mut rows: Vec<&CleanerRow> = Vec::new();
    let mut findings: Vec<Finding> = Vec::new();
    for part in parts {
        for row in part.rows {
            if !rows.iter().any(|other| other.key == row.key) {
                rows.push(row);
            }
        }
        if let Some(finding) = part.finding
            && !findings.iter().any(|other| other.code == finding.code)
        {
            findings.push(finding);
        }
    }
    let otherwise: Vec<&CleanerRow> = otherwise
        .into_iter()
        .filter(|row| rows.first().is_none_or(|first| first.key != row.key))
        .collect();
    if !otherwise.is_empty() && adequacy != Adequacy::Unknown {
        let sources: Vec<SourceKey> = otherwise.iter().flat_map(|r| r.sources.clone()).collect();
        let differ = Finding::new("clean-sources-differ", Severity::Info);
        findings.push(differ.from_sources(&sources));
    }
    CleaningVerdict {
        adequacy,
        rows,
        otherwise,
        findings,
        agreed,
    }
}

/// Every disorder that firm or recalled rows of the agent name; if they name none, germs in general.
fn every<'k>(cleaned: &Cleaned, rows: &[&'k CleanerRow]) -> Vec<Part<'k>> {
    let named: BTreeSet<&str> = rows
        .iter()
        .filter(|row| may_decide(row))
        .flat_map(|row| row.disorders())
        .collect();
    if named.is_empty() {
        return vec![recipe(cleaned, rows, None)];
    }
    let parts = named.into_iter();
    parts.map(|key| recipe(cleaned, rows, Some(key))).collect()
}

/// Stated to work, and more than hearsay or a trial on another plant's germ: read, or recalled of palms.
fn may_decide(row: &CleanerRow) -> bool {
    row.works == Works::Yes && (!row.indirect || row.basis == Basis::Memory)
}

/// The cleaning against the recipes for one disorder, or for germs in general.
fn recipe<'k>(cleaned: &Cleaned, rows: &[&'k CleanerRow], disorder: Option<&str>) -> Part<'k> {
    let names = |row: &CleanerRow| match disorder {
        Some(key) => row.disorders().any(|own| own == key),
        None => false,
    };
    let by = |is: &dyn Fn(&CleanerRow) -> bool| -> Vec<&'k CleanerRow> {
        let all = rows.iter().filter(|row| may_decide(row) && is(row));
        all.copied().collect()
    };
    let mut deciding = by(&names);
    if deciding.is_empty() {
        deciding = by(&|row| row.is_general() || row.agent == NEW_BLADE);
    }
    let part = |adequacy, rows: Vec<&'k CleanerRow>, finding: Finding| Part {
        adequacy,
        finding: Some(finding.from_sources(&sources(&rows))),
        rows,
    };
    if deciding.iter().all(|row| row.indirect) {
        let (code, shown) = match deciding.is_empty() {
            true => ("clean-no-source", rows.to_vec()),
            false => ("clean-only-recalled", deciding),
        };
        return part(Adequacy::Unknown, shown, caution(code));
    }
    let with_strength = deciding.iter().any(|row| row.strength_pct.is_some());
    let strength = match cleaned.strength_pct {
        None if with_strength => {
            return part(
                Adequacy::Unknown,
                deciding,
                caution("clean-strength-missing"),
            );
        }
        strength => strength.unwrap_or(0.0),
    };
    let Some((needs, at)) = lightest(&deciding, strength) else {
        let least = deciding.iter().filter_map(|row| row.strength_pct);
        let needs = Arg::Number(least.fold(100.0, f64::min));
        let finding = caution("clean-too-weak").with("needs", needs);
        return part(
            TOO_WEAK,
            deciding,
            finding.with("has", Arg::Number(strength)),
        );
    };
    let finding = |code| caution(code).with("needs", Arg::Number(needs));
    let Some(has) = cleaned.contact_min.or((needs == 0.0).then_some(0.0)) else {
        return part(Adequacy::Unknown, at, finding("clean-time-missing"));
    };
    if has + MINUTES_ROUND >= needs {
        let enough = Finding::new("clean-enough", Severity::Info).with("needs", Arg::Number(needs));
        return part(Adequacy::Adequate, at, enough);
    }
    let missing = needs - has;
    let short = finding("clean-too-short")
        .with("has", Arg::Number(has))
        .with("missing", Arg::Number(missing));
    let missing_min = Some(missing);
    part(Adequacy::Short { missing_min }, at, short)
}

fn caution(code: &'static str) -> Finding {
    Finding::new(code, Severity::Caution)
}

/// Of the recipes no stronger than the bath, the strength at which the strictest row asks the fewest minutes: those
/// minutes, and its rows, the strictest first. A strength without a firm row, or without minutes, decides nothing.
fn lightest<'k>(rows: &[&'k CleanerRow], strength: f64) -> Option<(f64, Vec<&'k CleanerRow>)> {
    let level = |row: &CleanerRow| row.strength_pct.unwrap_or(0.0);
    let fits = |row: &&&CleanerRow| level(row) <= strength + PERCENT_ROUND;
    let mut best: Option<(f64, Vec<&CleanerRow>)> = None;
    for at in rows.iter().filter(fits).map(|row| level(row)) {
        let mut same: Vec<&CleanerRow> = rows.iter().copied().filter(|r| level(r) == at).collect();
        let minutes = |row: &CleanerRow| row.contact_min.unwrap_or(-1.0);
        // of equal minutes the row that was read first
        same.sort_by(|a, b| {
            let by_minutes = minutes(b).total_cmp(&minutes(a));
            by_minutes.then(a.indirect.cmp(&b.indirect))
        });
        let firm = same.iter().any(|row| !row.indirect);
        let Some(needs) = same
            .first()
            .and_then(|row| row.contact_min)
            .filter(|_| firm)
        else {
            continue;
        };
        if best.as_ref().is_none_or(|(other, _)| needs < *other) {
            best = Some((needs, same));
        }
    }
    best
}

fn sources(rows: &[&CleanerRow]) -> Vec<SourceKey> {
    let mut sources: Vec<SourceKey> = Vec::new();
    for key in rows.iter().flat_map(|row| &row.sources) {
        if !sources.contains(key) {
            sources.push(key.clone());
        }
    }
    sources
}

pub(super) fn of_rules(known: &Knowledge, keys: &[&str]) -> Vec<SourceKey> {
    let rules = keys.iter().filter_map(|key| known.rule(key));
    rules.flat_map(|rule| rule.sources.clone()).collect()
}

/// Soil, sap and fibre left on the blade.
fn soil<'k>(cleaned: &Cleaned, rows: &[&'k CleanerRow], known: &Knowledge) -> Part<'k> {
    if rows.iter().any(|row| row.agent == NEW_BLADE) {
        return Part::fine();
    }
    let rule = of_rules(known, &["brush_before_soak"]);
    let stops: Vec<&CleanerRow> = rows
        .iter()
        .copied()
        .filter(|row| row.with_soil == Some(false))
        .collect();
    let (adequacy, code, severity) = match cleaned.brushed {
        Some(true) => return Part::fine(),
        None => (Adequacy::Adequate, "clean-brush-not-noted", Severity::Info),
        Some(false) if stops.is_empty() => {
            (Adequacy::Unknown, "clean-soil-not-told", Severity::Caution)
        }
        Some(false) => (TOO_WEAK, "clean-soil-left", Severity::Caution),
    };
    let rows = if adequacy == TOO_WEAK {
        stops
    } else {
        Vec::new()
    };
    let mut from = sources(&rows);
    from.extend(rule);
    Part {
        adequacy,
        rows,
        finding: Some(Finding::new(code, severity).from_sources(&from)),
    }
}

/// A bath that should have been changed before.
fn bath<'k>(cleaned: &Cleaned, known: &Knowledge) -> Part<'k> {
    let rule = of_rules(known, &["bath_change"]);
    let (finding, limit) = match (cleaned.bath_age_min, cleaned.bath_uses) {
        (Some(age), _) if age > BATH_MINUTES => (
            caution("clean-bath-old").with("has", Arg::Number(age)),
            BATH_MINUTES,
        ),
        (_, Some(uses)) if uses >= BATH_PALMS => (
            caution("clean-bath-used").with("has", Arg::Count(i64::from(uses))),
            f64::from(BATH_PALMS),
        ),
        _ => return Part::fine(),
    };
    let finding = finding.with("limit", Arg::Number(limit));
    Part {
        adequacy: TOO_WEAK,
        rows: Vec::new(),
        finding: Some(finding.from_sources(&rule)),
    }
}

/// Whether a row has anything to say of a disorder: it names it, is of germs in general, or a trial on other germs.
fn speaks_of(row: &CleanerRow, disorder: Option<&str>) -> bool {
    disorder.is_none_or(|key| {
        let elsewhere = row.indirect && row.disorders().next().is_none();
        row.disorders().any(|own| own == key) || row.is_general() || elsewhere
    })
}

/// What a row by itself would say: enough, not enough, or nothing. A row for a weaker bath says nothing of a short
/// time in a stronger one; a row that found partial effect never says enough.
fn opinion(row: &CleanerRow, cleaned: &Cleaned) -> Option<bool> {
    let level = row.strength_pct.unwrap_or(0.0);
    let strength = match (row.strength_pct, cleaned.strength_pct) {
        (Some(_), None) => return None,
        (_, strength) => strength.unwrap_or(0.0),
    };
    if row.works == Works::No {
        return (strength <= level + PERCENT_ROUND).then_some(false);
    }
    if row.works == Works::Partly {
        return None;
    }
    if strength + PERCENT_ROUND < level {
        return Some(false);
    }
    let needs = row.contact_min?;
    let has = cleaned.contact_min.or((needs == 0.0).then_some(0.0))?;
    if has + MINUTES_ROUND >= needs {
        return Some(true);
    }
    (strength <= level + PERCENT_ROUND).then_some(false)
}
