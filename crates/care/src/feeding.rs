//! Feeding: with what, how much, how often, when not, and whether the crown answered.
//!
//! Pure. The tables are `products.csv` and `fertiliser.csv`. What is barred is refused with the reason; a rate recalled
//! and not read says so. `docs/feeding.md` says how it is meant.

mod analysis;
mod answer;
mod barred;
mod dose;

pub use analysis::{Analysis, analysis_of};
pub use answer::{Answer, Crown, Verdict, verdict};
pub use barred::{barred_on, bars, free_again};
pub use dose::{Dose, doses};

use crate::Settled;
use crown::Quantiles;
use model::knowledge::{FeedKind, FeedRow};
use model::{Arg, Day, Feeding, Finding, Knowledge, NoFeeding, Palm, Severity, Span};

/// The word that stands for feeding without a shortage.
pub const MAINTENANCE: &str = "maintenance";

/// One palm and what it has been fed.
#[derive(Clone, Copy)]
pub struct FeedCase<'a, 'k> {
    /// The palm.
    pub palm: &'a Palm,
    /// Ground under the crown, m²; `None`: not known.
    pub crown_m2: Option<Span>,
    /// Whether it has its roots back.
    pub settled: Settled,
    /// Day it was planted where it stands, if known.
    pub planted_on: Option<Day>,
    /// Feedings, in the order of time.
    pub fed: &'a [(Day, Feeding)],
    /// Local rules of its site.
    pub rules: &'a [NoFeeding],
    /// Shortages it is thought to have: keys of the disorders, most probable first; empty: none.
    pub shortages: &'a [&'a str],
    /// Live fronds of its full crown.
    pub full_crown: Quantiles,
    /// Fronds it makes in a year.
    pub fronds_per_year: Quantiles,
    /// Today.
    pub today: Day,
    /// The tables.
    pub knowledge: &'k Knowledge,
}

/// What a palm is to be fed against one thing.
#[derive(Clone, PartialEq, Debug)]
pub struct Line<'k> {
    /// `maintenance`, or a key of the disorders.
    pub against: String,
    /// What and how much; the same product twice where sources differ.
    pub doses: Vec<Dose<'k>>,
    /// What causes the shortage.
    pub causes: Vec<&'k FeedRow>,
    /// How long until the crown answers, as sources say.
    pub answers: Vec<&'k FeedRow>,
    /// Days in which this palm replaces its whole crown (5 and 95 %), for marks that do not heal; `None`: new fronds tell.
    pub crown_replaced_days: Option<Span>,
    /// Last fed against it.
    pub last: Option<Day>,
    /// When it may be fed again: earliest and latest; `None`: now, or never fed.
    pub next: Option<(Day, Option<Day>)>,
    /// Why it may not be fed with this now. Empty: it may.
    pub refused: Vec<Finding>,
    /// What to mind.
    pub minds: Vec<Finding>,
}

/// The plan.
#[derive(Clone, PartialEq, Debug)]
pub struct Plan<'k> {
    /// Lines: the shortages, then maintenance.
    pub lines: Vec<Line<'k>>,
    /// What comes before every rate.
    pub rules: Vec<&'k FeedRow>,
    /// Local rules in force today.
    pub barred: Vec<NoFeeding>,
    /// The months of the site were never entered: nobody knows whether feeding is barred.
    pub rules_unknown: bool,
}

/// Plans the feeding of a palm.
pub fn plan<'k>(case: &FeedCase<'_, 'k>) -> Plan<'k> {
    let mut wanted: Vec<&str> = case.shortages.to_vec();
    wanted.push(MAINTENANCE);
    Plan {
        lines: wanted.iter().map(|against| line(case, against)).collect(),
        rules: case
            .knowledge
            .feeding
            .iter()
            .filter(|row| row.kind == FeedKind::Rule)
            .collect(),
        barred: barred_on(case.rules, case.today).cloned().collect(),
        rules_unknown: case.rules.is_empty(),
    }
}

fn line<'k>(case: &FeedCase<'_, 'k>, against: &str) -> Line<'k> {
    let knowledge = case.knowledge;
    let rows = |kind| {
        knowledge
            .feeding
            .iter()
            .filter(move |row| row.kind == kind && (row.against == against || row.against == "*"))
    };
    let doses = doses(case, against);
    let last = case
        .fed
        .iter()
        .rev()
        .find(|(day, fed)| *day <= case.today && is_against(fed, against))
        .map(|(day, _)| *day);
    let next = next(&doses, last);
    let mut line = Line {
        against: against.to_owned(),
        causes: rows(FeedKind::Cause)
            .filter(|r| r.against == against)
            .collect(),
        answers: if against == MAINTENANCE {
            Vec::new()
        } else {
            answers(rows(FeedKind::Answer).collect(), against)
        },
        crown_replaced_days: marks_stay(against).then(|| replaced(case)),
        last,
        next,
        refused: Vec::new(),
        minds: Vec::new(),
        doses,
    };
    line.refused = refused(case, &line);
    line.minds = minds(case, &line);
    line
}

/// The statement on the shortage itself comes before the one on shortages in general.
fn answers<'k>(mut rows: Vec<&'k FeedRow>, against: &str) -> Vec<&'k FeedRow> {
    rows.sort_by_key(|row| row.against != against);
    rows
}

fn is_against(fed: &Feeding, against: &str) -> bool {
    fed.against == against || (fed.against.is_empty() && against == MAINTENANCE)
}

/// Whether the marks of a shortage stay on the frond, so that the crown must be replaced: those of the old fronds.
pub fn marks_stay(against: &str) -> bool {
    matches!(against, "k-deficiency" | "mg-deficiency" | "n-deficiency")
}

/// Days in which a palm makes as many fronds as its full crown holds.
fn replaced(case: &FeedCase) -> Span {
    let days = |crown: f64, a_year: f64| 365.25 * crown / a_year.max(0.1);
    Span {
        low: days(case.full_crown.q05, case.fronds_per_year.q95),
        high: days(case.full_crown.q95, case.fronds_per_year.q05),
    }
}

fn next(doses: &[Dose], last: Option<Day>) -> Option<(Day, Option<Day>)> {
    let last = last?;
    let low = doses.iter().filter_map(|dose| dose.row.every_low);
    let high = doses.iter().filter_map(|dose| dose.row.every_high);
    let after = |days: f64| last.plus(days as i32);
    let earliest = low.reduce(f64::min).map(after)?;
    Some((earliest, high.reduce(f64::max).map(after)))
}

/// Why a palm may not be fed against something now.
fn refused(case: &FeedCase, line: &Line) -> Vec<Finding> {
    let mut out = Vec::new();
    out.extend(barred_doses(case, line));
    out.extend(too_soon_after_move(case));
    let again = line.next.filter(|(earliest, _)| *earliest > case.today);
    if let (Some((earliest, _)), Some(last)) = (again, line.last) {
        let sources = line.doses.first().map_or(&[][..], |d| &d.row.sources);
        out.push(
            Finding::new("feeding-too-soon", Severity::Refuse)
                .with("last", Arg::Date(last))
                .with("from", Arg::Date(earliest))
                .from_sources(sources),
        );
    }
    if line.against == "fe-deficiency" {
        let sources = line.causes.first().map_or(&[][..], |r| &r.sources);
        out.push(Finding::new("feeding-cause-first", Severity::Refuse).from_sources(sources));
    }
    out
}

/// Every product of the line is barred by a local rule: the reason, the day it ends, and what is not barred.
fn barred_doses(case: &FeedCase, line: &Line) -> Option<Finding> {
    let own: Vec<Option<Analysis>> = line
        .doses
        .iter()
        .map(|dose| dose.product.map(Analysis::of_row))
        .collect();
    let rule = barred_on(case.rules, case.today)
        .find(|rule| !own.is_empty() && own.iter().all(|analysis| bars(rule, analysis.as_ref())))?;
    Some(barred_finding(rule, case.today))
}

/// Why a rule stands against feeding on a day.
pub fn barred_finding(rule: &NoFeeding, today: Day) -> Finding {
    let nutrients = rule.nutrients.join(", ");
    let code = if nutrients.is_empty() {
        "feeding-barred-all"
    } else {
        "feeding-barred"
    };
    Finding::new(code, Severity::Refuse)
        .with("rule", Arg::Text(rule.rule.clone()))
        .with("nutrients", Arg::Text(nutrients))
        .with("free", Arg::Date(free_again(rule, today)))
}

/// The first granular feed comes so many months after planting.
fn too_soon_after_move(case: &FeedCase) -> Option<Finding> {
    let Settled::NotYet { moved_on, .. } = case.settled else {
        return None;
    };
    let planted = case.planted_on.filter(|day| *day >= moved_on);
    let row = move_row(case.knowledge)?;
    let from = planted.unwrap_or(moved_on).plus(row.figure?.low as i32);
    (case.today < from).then(|| {
        Finding::new("feeding-just-moved", Severity::Refuse)
            .with("moved", Arg::Date(planted.unwrap_or(moved_on)))
            .with("from", Arg::Date(from))
            .from_sources(&row.sources)
    })
}

fn move_row(knowledge: &Knowledge) -> Option<&FeedRow> {
    knowledge.feeding_of(FeedKind::Move, "*").next()
}

/// What to mind, though it is not refused.
fn minds(case: &FeedCase, line: &Line) -> Vec<Finding> {
    let mut out = Vec::new();
    if let (Settled::NotYet { .. }, Some(row)) = (case.settled, move_row(case.knowledge)) {
        out.push(Finding::new("feeding-at-the-edge", Severity::Caution).from_sources(&row.sources));
    }
    let product = |key| line.doses.iter().any(|dose| dose.row.product == key);
    let sources_of = |key| {
        let row = case.knowledge.product(key);
        row.map_or(&[][..], |row| &row.sources[..])
    };
    if product("manganese-sulphate") {
        out.push(
            Finding::new("feeding-not-magnesium", Severity::Caution)
                .from_sources(sources_of("manganese-sulphate")),
        );
    }
    if product("soluble-borate") {
        out.push(
            Finding::new("feeding-boron-once", Severity::Act)
                .from_sources(sources_of("soluble-borate")),
        );
    }
    if product("kieserite") || product("slow-potassium") {
        let with = case.knowledge.feeding.iter().find(|r| r.key == "mend-k-mg");
        out.push(
            Finding::new("feeding-potassium-with-magnesium", Severity::Caution)
                .from_sources(with.map_or(&[][..], |row| &row.sources)),
        );
    }
    out
}

/// What stands against a feeding that somebody is about to note, by what is written on its bag.
pub fn against_product(case: &FeedCase, product: &str, against: &str) -> Vec<Finding> {
    let analysis = analysis_of(case.knowledge, product);
    let mut out: Vec<Finding> = barred_on(case.rules, case.today)
        .filter(|rule| bars(rule, analysis.as_ref()))
        .map(|rule| barred_finding(rule, case.today))
        .collect();
    out.extend(too_soon_after_move(case));
    let against = if against.is_empty() {
        MAINTENANCE
    } else {
        against
    };
    let again = line(case, against)
        .refused
        .into_iter()
        .find(|finding| finding.code == "feeding-too-soon");
    out.extend(again);
    if analysis.is_some_and(|a| a.starves_palms()) {
        let row = case.knowledge.product("lawn-feed");
        out.push(
            Finding::new("feeding-lawn-feed", Severity::Caution)
                .from_sources(row.map_or(&[][..], |row| &row.sources)),
        );
    }
    out
}
