//! `judgements.csv`.

use super::Judged;
use super::names::{minutes_of, name_of};
use crate::words::Lang;
use care::judge::{Judgement, Speaks, WeightOf, hold_reason};

/// Columns of `judgements.csv`.
pub const JUDGEMENT_COLUMNS: [&str; 18] = [
    "tag",
    "date",
    "rank",
    "disorder",
    "name",
    "probability",
    "level",
    "speaks_for",
    "speaks_against",
    "probability_of_nothing",
    "doubt_bits",
    "holds",
    "next_look",
    "next_look_minutes",
    "next_look_chance",
    "next_look_bits",
    "next_look_bits_per_minute",
    "remarks",
];

/// One row for each of the `most` most probable disorders. The columns from `probability_of_nothing` on speak of the palm
/// and are the same in all its rows.
pub fn judgement_rows(tag: &str, judged: &Judged, most: usize, lang: Lang) -> Vec<[String; 18]> {
    let palm = palm_cells(&judged.judgement);
    let date = judged.told.on.map_or_else(String::new, |d| d.to_string());
    let ranked = judged.judgement.ranked.iter().take(most).enumerate();
    ranked
        .map(|(at, ranked)| {
            let [
                nothing,
                doubt,
                holds,
                look,
                minutes,
                chance,
                bits,
                rate,
                remarks,
            ] = palm.clone();
            [
                tag.to_owned(),
                date.clone(),
                (at + 1).to_string(),
                ranked.disorder.to_owned(),
                name_of(ranked.disorder, lang).to_owned(),
                fixed(ranked.probability, 4),
                ranked.level.to_owned(),
                speaks(&ranked.for_it),
                speaks(&ranked.against),
                nothing,
                doubt,
                holds,
                look,
                minutes,
                chance,
                bits,
                rate,
                remarks,
            ]
        })
        .collect()
}

fn palm_cells(judgement: &Judgement) -> [String; 9] {
    let look = judgement.next.first();
    let number = |value: Option<f64>, places| value.map_or_else(String::new, |v| fixed(v, places));
    let holds: Vec<&str> = judgement
        .holds
        .iter()
        .map(|h| hold_reason(h.kind))
        .collect();
    let remarks: Vec<&str> = judgement.findings.iter().map(|f| f.code).collect();
    [
        fixed(judgement.nothing, 4),
        fixed(judgement.doubt_bits, 3),
        holds.join(";"),
        look.map_or("", |l| l.sign).to_owned(),
        number(look.and_then(|l| minutes_of(l.sign)), 1),
        number(look.map(|l| l.chance), 4),
        number(look.map(|l| l.bits), 4),
        number(look.map(|l| l.bits_per_minute), 4),
        remarks.join(";"),
    ]
}

/// `sign=factor`, `!sign=factor` for a sign that is not there, `host=factor` and the like; `;` between.
fn speaks(list: &[Speaks]) -> String {
    let one = |s: &Speaks| format!("{}={}", weight_key(s.what), fixed(s.factor, 3));
    list.iter().map(one).collect::<Vec<_>>().join(";")
}

/// The word for what weighs in files.
pub fn weight_key(what: WeightOf) -> String {
    match what {
        WeightOf::Seen(sign) => sign.to_owned(),
        WeightOf::NotThere(sign) => format!("!{sign}"),
        WeightOf::Host => "host".to_owned(),
        WeightOf::Season => "season".to_owned(),
        WeightOf::Move => "move".to_owned(),
        WeightOf::Frost => "frost".to_owned(),
        WeightOf::Storm => "storm".to_owned(),
        WeightOf::Counts => "counts".to_owned(),
    }
}

fn fixed(x: f64, places: usize) -> String {
    format!("{x:.places$}")
}
