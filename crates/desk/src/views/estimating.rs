//! `/estimate` and `/prices`: minutes, debris and money as a person reads them; and for a program.

use super::said::{Cited, Said, Speaker};
use crate::estimating::{Charge, Estimate, PalmPart, PriceList};
use crate::forms::{own_figures, own_prices};
use crate::words::Value;
use model::knowledge::EffortRow;
use model::{Basis, Knowledge};
use rounds::estimate::{Reach, Spread};
use rust_decimal::Decimal;
use serde_json::json;
use std::collections::BTreeMap;

/// A label with what stands beside it.
#[derive(Clone, PartialEq, Debug)]
pub struct LineRow {
    /// Stable key.
    pub key: String,
    /// What it is.
    pub label: String,
    /// How much of it; empty where nothing is counted.
    pub count: String,
    /// Minutes or money.
    pub value: String,
    /// How it is known, where that must be said.
    pub mark: Option<String>,
}

/// A palm of an estimate.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmRow {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// Site.
    pub site: String,
    /// "12 fronds, with a pole".
    pub what: String,
    /// "14 to 40 min, as a rule 25".
    pub minutes: String,
}

/// A figure that nobody gave.
#[derive(Clone, PartialEq, Debug)]
pub struct FigureRow {
    /// Key under which it is set.
    pub key: String,
    /// Name of its field in the form of prices.
    pub field: &'static str,
    /// What it is.
    pub label: String,
    /// "0.3 to 1.5, as a rule 0.7 min".
    pub value: String,
    /// How it is known.
    pub mark: String,
    /// Where it comes from.
    pub sources: Vec<Cited>,
}

/// The page of an estimate.
#[derive(Clone, PartialEq, Debug)]
pub struct EstimateView {
    /// What, how long and for how much, in one sentence.
    pub summary: String,
    /// Whether the pace is learned, and of whom.
    pub pace: String,
    /// Minutes by what is done, all palms together.
    pub lines: Vec<LineRow>,
    /// Minutes in all.
    pub minutes: String,
    /// Debris in all.
    pub debris: String,
    /// What is charged for.
    pub charges: Vec<LineRow>,
    /// Sum without tax.
    pub net: String,
    /// Tax; `None`: none is set.
    pub tax: Option<LineRow>,
    /// Sum with tax.
    pub gross: String,
    /// Prices that are assumed, missing or set, in words.
    pub prices: Option<String>,
    /// Palms that are cut.
    pub palms: Vec<PalmRow>,
    /// Palms that are not, with the reason.
    pub left: Vec<(String, Said)>,
    /// Figures that nobody gave.
    pub assumed: Vec<FigureRow>,
    /// The keeper's words for quotes.
    pub notes: String,
}

/// An estimate in words.
pub fn view(speaker: &Speaker, of: &Estimate) -> EstimateView {
    let (fronds, stalks) = of.pieces();
    let summary = [
        ("palms", (of.palms.len() as i64).into()),
        ("fronds", i64::from(fronds).into()),
        ("stalks", i64::from(stalks).into()),
        ("time", between(speaker, of.minutes).into()),
        ("money", money(speaker, &of.list, of.gross[1]).into()),
        ("low", money(speaker, &of.list, of.gross[0]).into()),
        ("high", money(speaker, &of.list, of.gross[2]).into()),
    ];
    EstimateView {
        summary: speaker.text("estimate-summary", &summary),
        pace: pace(speaker, of),
        lines: lines(speaker, &of.palms),
        minutes: between(speaker, of.minutes),
        debris: debris(speaker, of),
        charges: of.charges.iter().map(|c| charge(speaker, of, c)).collect(),
        net: range(speaker, &of.list, &of.net),
        tax: of.tax.map(|tax| LineRow {
            key: "tax".to_owned(),
            label: tax_label(speaker, &of.list),
            count: String::new(),
            value: range(speaker, &of.list, &tax),
            mark: None,
        }),
        gross: range(speaker, &of.list, &of.gross),
        prices: about_prices(speaker, of),
        palms: of.palms.iter().map(|palm| row(speaker, palm)).collect(),
        left: of
            .left
            .iter()
            .map(|(tag, why)| (tag.clone(), speaker.finding(why)))
            .collect(),
        assumed: of
            .assumed()
            .into_iter()
            .filter_map(|key| assumed(speaker, key))
            .collect(),
        notes: of.list.notes.clone(),
    }
}

/// An amount of money with its currency; decimals and thousands as the reader writes them.
pub fn money(speaker: &Speaker, list: &PriceList, amount: Decimal) -> String {
    let text = list.round(amount).to_string();
    let (whole, part) = text.split_once('.').unwrap_or((&text, ""));
    let whole = match whole.parse() {
        Ok(number) => speaker.measure.count(number),
        Err(_) => whole.to_owned(),
    };
    let point = match speaker.measure.number(0.5, 1).contains(',') {
        true => ',',
        false => '.',
    };
    let amount = match part {
        "" => whole,
        part => format!("{whole}{point}{part}"),
    };
    format!("{amount}\u{a0}{}", list.currency)
}

/// "240 to 410, as a rule 310".
pub fn range(speaker: &Speaker, list: &PriceList, amounts: &[Decimal; 3]) -> String {
    let [low, mid, high] = amounts.map(|amount| money(speaker, list, amount));
    if low == high {
        return mid;
    }
    let args = [
        ("low", low.into()),
        ("mid", mid.into()),
        ("high", high.into()),
    ];
    speaker.text("estimate-between", &args)
}

/// "4 h 10 min".
pub fn time(speaker: &Speaker, minutes: f64) -> String {
    let whole = minutes.round() as i64;
    let args = [("h", (whole / 60).into()), ("min", (whole % 60).into())];
    match whole / 60 {
        0 => speaker.text("estimate-minutes", &args[1..]),
        _ => speaker.text("estimate-hours", &args),
    }
}

/// "3 h 20 min to 6 h, as a rule 4 h 10 min".
pub fn between(speaker: &Speaker, minutes: Spread) -> String {
    let [low, mid, high] = [minutes.low, minutes.mid, minutes.high].map(|m| time(speaker, m));
    if low == high {
        return mid;
    }
    let args = [
        ("low", low.into()),
        ("mid", mid.into()),
        ("high", high.into()),
    ];
    speaker.text("estimate-between", &args)
}

/// Debris in all: volume and mass.
pub fn debris(speaker: &Speaker, of: &Estimate) -> String {
    let bulk = |m3| speaker.measure.bulk(m3).into();
    let mass = |kg| speaker.measure.mass(kg).into();
    let args = [
        ("low", bulk(of.debris_m3.low)),
        ("mid", bulk(of.debris_m3.mid)),
        ("high", bulk(of.debris_m3.high)),
        ("mass_low", mass(of.mass_kg.low)),
        ("mass_high", mass(of.mass_kg.high)),
    ];
    speaker.text("estimate-debris", &args)
}

/// "Tax 8.25 %".
pub fn tax_label(speaker: &Speaker, list: &PriceList) -> String {
    let pct = list.tax_pct.unwrap_or_default().normalize().to_string();
    speaker.text("estimate-tax", &[("pct", pct.into())])
}

/// What comes off a palm and from where.
pub fn what(speaker: &Speaker, palm: &PalmPart) -> String {
    let reach = Reach::ALL.iter().find(|(r, _)| *r == palm.work.from);
    let code = format!("estimate-from-{}", reach.map_or("hand", |(_, word)| word));
    let args = [
        ("fronds", i64::from(palm.work.dead + palm.work.green).into()),
        ("dead", i64::from(palm.work.dead).into()),
        ("from", speaker.say(&code).into()),
    ];
    speaker.text("estimate-what", &args)
}

fn row(speaker: &Speaker, palm: &PalmPart) -> PalmRow {
    PalmRow {
        tag: palm.tag.clone(),
        species: palm.species.clone(),
        site: palm.site.clone(),
        what: what(speaker, palm),
        minutes: between(speaker, palm.visit.minutes),
    }
}

fn lines(speaker: &Speaker, palms: &[PalmPart]) -> Vec<LineRow> {
    let mut order: Vec<&'static str> = Vec::new();
    let mut sums: BTreeMap<&'static str, (f64, f64)> = BTreeMap::new();
    for line in palms.iter().flat_map(|palm| &palm.visit.lines) {
        if !order.contains(&line.key) {
            order.push(line.key);
        }
        let sum = sums.entry(line.key).or_default();
        *sum = (sum.0 + line.count, sum.1 + line.minutes.mid);
    }
    let row = |key: &'static str| {
        let (count, minutes) = sums[key];
        let sign = if minutes < 0.0 { "−" } else { "" };
        LineRow {
            key: key.to_owned(),
            label: speaker.say(&format!("estimate-line-{key}")),
            count: counted(speaker, key, count),
            value: format!("{sign}{}", time(speaker, minutes.abs())),
            mark: None,
        }
    };
    // at the end what is taken off and what is learned
    let last = |key: &&str| u8::from(matches!(*key, "beside")) + 2 * u8::from(*key == "pace");
    order.sort_by_key(last);
    order.into_iter().map(row).collect()
}

fn counted(speaker: &Speaker, key: &str, count: f64) -> String {
    match key {
        "walk" => speaker.measure.length(model::Metres(count)),
        "load" => speaker.measure.bulk(count),
        "beside" | "pace" => String::new(),
        _ => speaker.measure.count(count.round() as i64),
    }
}

/// The words of a charge: key, quantity, price, amount.
pub fn charge(speaker: &Speaker, of: &Estimate, charge: &Charge) -> LineRow {
    let quantity = quantity(speaker, charge);
    let count = match &charge.price {
        Some(price) => speaker.text(
            "estimate-times",
            &[
                ("quantity", quantity.into()),
                ("price", money(speaker, &of.list, price.amount).into()),
            ],
        ),
        None => quantity,
    };
    LineRow {
        key: charge.key.to_owned(),
        label: speaker.say(&format!("estimate-charge-{}", charge.key)),
        count,
        value: match &charge.amount {
            Some(amounts) => range(speaker, &of.list, amounts),
            None => speaker.say("estimate-no-price"),
        },
        mark: charge
            .price
            .as_ref()
            .filter(|price| price.assumed)
            .map(|_| speaker.say("basis-assumed")),
    }
}

/// How much is charged for, as a rule.
pub fn quantity(speaker: &Speaker, charge: &Charge) -> String {
    let number = charge.quantity[1].round_dp(2).normalize().to_string();
    let number = number.parse().unwrap_or(0.0);
    let args = [("n", speaker.measure.number(number, 2).into())];
    speaker.text(&format!("estimate-unit-{}", charge.key), &args)
}

fn pace(speaker: &Speaker, of: &Estimate) -> String {
    let unused: Value = (of.unused_times as i64).into();
    let Some(taught) = &of.taught else {
        return speaker.text("estimate-pace-none", &[("unused", unused)]);
    };
    let pace = taught.of(&of.crew);
    let factor = model::math::exp(pace.log_mean);
    let args = [
        ("times", (taught.times as i64).into()),
        ("own", (pace.own as i64).into()),
        ("crew", of.crew.clone().into()),
        ("factor", speaker.measure.number(factor, 2).into()),
        ("unused", unused),
    ];
    match of.crew.is_empty() {
        true => speaker.text("estimate-pace-all", &args),
        false => speaker.text("estimate-pace-crew", &args),
    }
}

fn about_prices(speaker: &Speaker, of: &Estimate) -> Option<String> {
    if of.charges.iter().any(|charge| charge.price.is_none()) {
        return Some(speaker.say("estimate-prices-missing"));
    }
    let prices = of.charges.iter().filter_map(|charge| charge.price.as_ref());
    let guessed = prices.filter(|price| price.assumed).count();
    (guessed > 0).then(|| speaker.say("estimate-prices-assumed"))
}

fn assumed(speaker: &Speaker, key: &str) -> Option<FigureRow> {
    let row = Knowledge::embedded().effort_row(key)?;
    Some(figure(speaker, key.to_owned(), row))
}

fn figure(speaker: &Speaker, key: String, row: &'static EffortRow) -> FigureRow {
    let number = |x| speaker.measure.number(x, 2);
    let unit = speaker.say(&format!("estimate-per-{}", row.unit.replace('/', "-")));
    let args = [
        ("low", number(row.low).into()),
        ("mid", number(row.mid).into()),
        ("high", number(row.high).into()),
        ("unit", unit.into()),
    ];
    let code = if row.low == row.high {
        "estimate-figure-one"
    } else {
        "estimate-figure"
    };
    FigureRow {
        key,
        field: &row.key,
        label: speaker.texts(&row.text).to_owned(),
        value: speaker.text(code, &args),
        mark: match row.basis {
            Basis::Assumed => speaker.say("basis-assumed"),
            _ if row.given.len() < 3 => speaker.say("estimate-partly-assumed"),
            _ => String::new(),
        },
        sources: speaker.cite(&row.sources),
    }
}

/// All figures that a keeper may set, as the tables have them.
pub fn figures(speaker: &Speaker) -> Vec<FigureRow> {
    own_figures()
        .map(|(key, row)| figure(speaker, key, row))
        .collect()
}

/// All prices that a keeper may set, as the tables have them.
pub fn price_rows(speaker: &Speaker) -> Vec<FigureRow> {
    own_prices()
        .map(|(key, row)| {
            let mut shown = figure(speaker, key.to_owned(), row);
            shown.value = speaker.measure.number(row.mid, 2);
            shown
        })
        .collect()
}

/// An estimate for a program: plain figures; money as text, so that no digit is lost.
pub fn to_json(of: &Estimate) -> serde_json::Value {
    let spread = |s: Spread| json!({"low": s.low, "mid": s.mid, "high": s.high});
    let sums = |m: &[Decimal; 3]| json!({"low": m[0].to_string(), "mid": m[1].to_string(), "high": m[2].to_string()});
    let palms: Vec<_> = of
        .palms
        .iter()
        .map(|palm| {
            let lines: Vec<_> = palm
                .visit
                .lines
                .iter()
                .map(|line| {
                    json!({"key": line.key, "count": line.count, "minutes": spread(line.minutes),
                        "figures": line.figures})
                })
                .collect();
            json!({
                "tag": palm.tag, "site": palm.site, "dead": palm.work.dead, "green": palm.work.green,
                "minutes": spread(palm.visit.minutes), "lines": lines,
                "debris_m3": spread(palm.visit.debris_m3), "mass_kg": spread(palm.visit.mass_kg),
            })
        })
        .collect();
    let charges: Vec<_> = of
        .charges
        .iter()
        .map(|charge| {
            json!({
                "key": charge.key, "quantity": sums(&charge.quantity),
                "price": charge.price.as_ref().map(|p| p.amount.to_string()),
                "price_assumed": charge.price.as_ref().map(|p| p.assumed),
                "amount": charge.amount.as_ref().map(sums),
            })
        })
        .collect();
    let left: Vec<_> = of
        .left
        .iter()
        .map(|(tag, why)| json!({"tag": tag, "why": why.code}))
        .collect();
    json!({
        "kind": "estimate", "day": of.day.to_string(), "crew": of.crew,
        "minutes": spread(of.minutes), "debris_m3": spread(of.debris_m3), "mass_kg": spread(of.mass_kg),
        "currency": of.list.currency, "charges": charges,
        "net": sums(&of.net), "tax": of.tax.as_ref().map(sums), "gross": sums(&of.gross),
        "logged_times": of.taught.as_ref().map_or(0, |t| t.times),
        "pace": of.figures.pace().map(|p| json!({"log_mean": p.log_mean, "sd": p.sd, "visit_sd": p.visit_sd, "own": p.own})),
        "assumed": of.assumed(), "palms": palms, "left": left,
    })
}
