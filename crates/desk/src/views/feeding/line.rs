//! One line of a plan: against what, with what, how much, how often, how long until it shows.

use super::super::said::{Cited, Said, Speaker};
use crate::feeding::Fed;
use crate::judging::name_of;
use care::feeding::{Dose, Line, MAINTENANCE};
use model::knowledge::{FeedRow, ProductRow};
use model::{Finding, Span};
use serde_json::{Value, json};

/// A statement of the tables.
#[derive(Clone, PartialEq, Debug)]
pub struct Statement {
    /// What it says.
    pub text: String,
    /// How it is known, where that must be said.
    pub basis: Option<String>,
    /// Sources.
    pub sources: Vec<Cited>,
}

/// A rate at work on the palm.
#[derive(Clone, PartialEq, Debug)]
pub struct DoseLine {
    /// Key of its row.
    pub key: String,
    /// The product.
    pub product: String,
    /// How much at one application, in words.
    pub amount: String,
    /// How often, in words.
    pub often: String,
    /// What the source says of the rate.
    pub rate: String,
    /// Whether it gives off slowly or dissolves.
    pub ways: Vec<String>,
    /// What to know of the product.
    pub note: String,
    /// How it is known, where that must be said.
    pub basis: Option<String>,
    /// Sources.
    pub sources: Vec<Cited>,
}

/// What a palm is fed against one thing.
#[derive(Clone, PartialEq, Debug)]
pub struct FeedLine {
    /// `maintenance` or a key of the disorders.
    pub key: String,
    /// What it is called.
    pub name: String,
    /// How probable the shortage is, in words.
    pub probable: Option<String>,
    /// It may be fed now.
    pub may: bool,
    /// Why it may not.
    pub refused: Vec<Said>,
    /// What to mind.
    pub minds: Vec<Said>,
    /// What and how much.
    pub doses: Vec<DoseLine>,
    /// That no source gives a rate.
    pub no_rate: Option<String>,
    /// Where the shortage comes from.
    pub causes: Vec<Statement>,
    /// How long until the crown answers, as sources say.
    pub answers: Vec<Statement>,
    /// How long this palm takes to replace its crown, in words.
    pub replaced: Option<String>,
    /// Last fed, and when again, in words.
    pub when: String,
}

/// The name of `maintenance` or of a disorder.
pub(super) fn name(speaker: &Speaker, key: &str) -> String {
    match speaker.knowledge.disorder(key) {
        Some(row) => name_of(&row.key, speaker.words().lang()).to_owned(),
        None if key == MAINTENANCE || key.is_empty() => speaker.say("feed-maintenance"),
        None => key.to_owned(),
    }
}

pub(super) fn view(speaker: &Speaker, fed: &Fed, line: &Line<'static>) -> FeedLine {
    let statements = |rows: &[&'static FeedRow]| -> Vec<Statement> {
        rows.iter().map(|row| Statement::of(speaker, row)).collect()
    };
    let shortage = fed.shortages.iter().find(|own| own.key == line.against);
    let probable = shortage.and_then(|own| own.probability).map(|p| {
        let args = [("p", speaker.measure.percent(p).into())];
        speaker.text("feed-probable", &args)
    });
    FeedLine {
        key: line.against.clone(),
        name: name(speaker, &line.against),
        probable,
        may: line.refused.is_empty() && !line.doses.is_empty(),
        refused: speaker.findings(&line.refused),
        minds: speaker.findings(&line.minds),
        doses: line
            .doses
            .iter()
            .map(|dose| of_dose(speaker, dose))
            .collect(),
        no_rate: line.doses.is_empty().then(|| speaker.say("feed-no-rate")),
        causes: statements(&line.causes),
        answers: statements(&line.answers),
        replaced: line.crown_replaced_days.map(|days| replaced(speaker, days)),
        when: when(speaker, fed, line),
    }
}

fn replaced(speaker: &Speaker, days: Span) -> String {
    let args = [
        ("low", speaker.measure.duration(days.low).into()),
        ("high", speaker.measure.duration(days.high).into()),
    ];
    speaker.text("feed-replaced", &args)
}

fn when(speaker: &Speaker, fed: &Fed, line: &Line) -> String {
    let m = &speaker.measure;
    let Some(last) = line.last else {
        return speaker.say("feed-never");
    };
    let mut said = speaker.text("feed-last", &[("date", m.date(last).into())]);
    if let Some((from, until)) = line.next {
        let args = [
            ("from", m.date(from).into()),
            ("until", m.date(until.unwrap_or(from)).into()),
        ];
        let code = match until {
            Some(until) if until > from && from > fed.today => "feed-next-between",
            _ if from > fed.today => "feed-next-from",
            _ => "feed-next-now",
        };
        said.push(' ');
        said.push_str(&speaker.text(code, &args));
    }
    said
}

fn of_dose(speaker: &Speaker, dose: &Dose<'static>) -> DoseLine {
    let row = dose.row;
    let product = dose.product;
    DoseLine {
        key: row.key.clone(),
        product: product.map_or_else(
            || row.product.clone(),
            |own| speaker.texts(&own.name).to_owned(),
        ),
        amount: amount(speaker, dose.grams),
        often: often(speaker, row),
        rate: speaker.texts(&row.text).to_owned(),
        ways: product.map(|own| ways(speaker, own)).unwrap_or_default(),
        note: product.map_or_else(String::new, |own| speaker.texts(&own.text).to_owned()),
        basis: speaker.basis(row.basis),
        sources: speaker.cite(&row.sources),
    }
}

fn amount(speaker: &Speaker, grams: Option<Span>) -> String {
    grams.map_or_else(
        || speaker.say("feed-amount-unknown"),
        |own| {
            speaker
                .measure
                .mass_range(own.low / 1000.0, own.high / 1000.0)
        },
    )
}

fn often(speaker: &Speaker, row: &FeedRow) -> String {
    let times = row
        .times
        .map(|n| speaker.text("feed-times", &[("n", (n.round() as i64).into())]));
    let between = row.every_low.map(|low| {
        let high = row.every_high.unwrap_or(low);
        let days = speaker.measure.counts(low, high);
        let code = if row.every_high.is_some() {
            "feed-every"
        } else {
            "feed-not-before"
        };
        speaker.text(code, &[("days", days.into())])
    });
    let parts: Vec<String> = times.into_iter().chain(between).collect();
    parts.join("; ")
}

/// Whether a product gives off slowly or dissolves; what nobody says is said to be unknown.
pub(super) fn ways(speaker: &Speaker, row: &ProductRow) -> Vec<String> {
    let [n, _, k, mg] = row.analysis;
    let feeds = [n, k, mg].iter().any(|share| *share != Some(0.0));
    let slow = match (row.slow, feeds) {
        (Some(true), _) => Some("feed-slow"),
        (Some(false), _) => Some("feed-fast"),
        (None, true) => Some("feed-slow-unknown"),
        (None, false) => None,
    };
    let micro = match row.soluble_micro {
        Some(true) => Some("feed-micro-soluble"),
        Some(false) => Some("feed-micro-not-soluble"),
        None => None,
    };
    slow.into_iter()
        .chain(micro)
        .map(|code| speaker.say(code))
        .collect()
}

/// "N 8 %, P₂O₅ 2 %, K₂O 12 %, Mg 4 %"; what is unknown says so, what is not in it is left out.
pub(super) fn contents(speaker: &Speaker, row: &ProductRow) -> String {
    let names = ["N", "P₂O₅", "K₂O", "Mg"];
    let parts: Vec<String> = names
        .iter()
        .zip(row.analysis)
        .filter_map(|(name, share)| match share {
            Some(0.0) => None,
            Some(share) => {
                let n = speaker.measure.number(share, 2);
                let percent = speaker.text("measure-percent", &[("n", n.into())]);
                Some(format!("{name} {percent}"))
            }
            None => Some(format!("{name} {}", speaker.say("common-unknown"))),
        })
        .collect();
    parts.join(", ")
}

/// A palm's plan of feeding for a program: grams, dates as ISO 8601, codes of what is refused.
pub fn json(fed: &Fed) -> Value {
    let palm = &fed.record.palm;
    let plan = fed.plan();
    let codes = |findings: &[Finding]| -> Vec<&'static str> {
        findings.iter().map(|own| own.code).collect()
    };
    let span = |span: Span| json!([span.low, span.high]);
    let lines: Vec<Value> = plan
        .lines
        .iter()
        .map(|line| {
            let shortage = fed.shortages.iter().find(|own| own.key == line.against);
            let doses: Vec<Value> = line
                .doses
                .iter()
                .map(|dose| {
                    json!({
                        "product": dose.row.product, "grams": dose.grams.map(span),
                        "times_a_year": dose.row.times,
                        "every_days": [dose.row.every_low, dose.row.every_high],
                    })
                })
                .collect();
            json!({
                "against": line.against, "probability": shortage.and_then(|own| own.probability),
                "doses": doses,
                "last": line.last.map(|day| day.to_string()),
                "next": line.next.map(|(day, _)| day.to_string()),
                "refused": codes(&line.refused), "mind": codes(&line.minds),
                "crown_replaced_days": line.crown_replaced_days.map(span),
            })
        })
        .collect();
    let checked: Vec<Value> = fed
        .noted
        .iter()
        .map(|own| {
            json!({
                "date": own.day.to_string(), "product": own.what.product, "grams": own.what.grams,
                "against": own.what.against, "answer": own.answer.as_ref().map(|a| a.verdict.key()),
            })
        })
        .collect();
    json!({
        "tag": palm.tag, "species": palm.species, "site": palm.site,
        "crown_m2": fed.crown_m2.map(span),
        "rules_known": !plan.rules_unknown, "barred": !plan.barred.is_empty(),
        "lines": lines, "fed": checked,
    })
}
