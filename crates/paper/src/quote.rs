//! The quote: what comes off which palm, what that costs, and what is assumed.

use crate::leaf::{Frame, Leaf};
use crate::press::{self, Template};
use crate::{Error, Pdf};
use desk::estimating::Estimate;
use desk::views::Speaker;
use desk::views::estimating::{self as words, LineRow};
use serde::Serialize;

/// The quote of an estimate, with blanks for names and signatures.
pub fn quote(leaf: &Leaf, estimate: &Estimate) -> Result<Pdf, Error> {
    if estimate.palms.is_empty() {
        return Err(Error::Empty);
    }
    if estimate.palms.len() > MOST {
        return Err(Error::TooMany {
            found: estimate.palms.len(),
            limit: MOST,
        });
    }
    press::print(TEMPLATE, &sheet(leaf, estimate), leaf.day)
}

/// Most palms in one quote: more make nobody wiser.
const MOST: usize = 1_000;

const TEMPLATE: Template = Template {
    name: "quote.typ",
    text: include_str!("../sheets/quote.typ"),
};

#[derive(Serialize)]
struct Sheet {
    frame: Frame,
    blanks: Vec<String>,
    lead: String,
    facts: Vec<[String; 2]>,
    work_title: String,
    work_heads: Vec<String>,
    work: Vec<[String; 4]>,
    left_title: String,
    left: Vec<[String; 2]>,
    money_title: String,
    money_heads: Vec<String>,
    charges: Vec<[String; 4]>,
    sums: Vec<[String; 2]>,
    spread: String,
    warning: Option<String>,
    notes: String,
    rules_title: String,
    rules: Vec<String>,
    signatures: Vec<String>,
    closing: String,
}

fn sheet(leaf: &Leaf, of: &Estimate) -> Sheet {
    let speaker = Speaker::new(leaf.measure);
    let view = words::view(&speaker, of);
    let say = |codes: &[&str]| codes.iter().map(|code| leaf.say(code)).collect();
    let money = |amount| words::money(&speaker, &of.list, amount);
    let spread = [
        ("low", money(of.gross[0]).into()),
        ("high", money(of.gross[2]).into()),
    ];
    let date = [("date", leaf.measure.date(of.day).into())];
    let fact = |code: &str, value: String| [leaf.say(code), value];
    Sheet {
        frame: leaf.frame(&leaf.say("quote-title")),
        blanks: say(&["quote-for", "quote-by"]),
        lead: leaf.text("quote-lead", &date),
        facts: vec![
            fact("quote-time", view.minutes.clone()),
            fact("quote-debris", view.debris.clone()),
        ],
        work_title: leaf.say("quote-work"),
        work_heads: say(&["quote-head-palm", "", "quote-site", "quote-head-work"]),
        work: of
            .palms
            .iter()
            .map(|palm| {
                let off = words::what(&speaker, palm);
                [
                    palm.tag.clone(),
                    palm.species.clone(),
                    palm.site.clone(),
                    off,
                ]
            })
            .collect(),
        left_title: leaf.say("estimate-left-title"),
        left: view
            .left
            .iter()
            .map(|(tag, why)| [tag.clone(), why.text.clone()])
            .collect(),
        money_title: leaf.say("estimate-money-title"),
        money_heads: say(&[
            "quote-head-charge",
            "quote-head-quantity",
            "quote-head-price",
            "quote-head-amount",
        ]),
        charges: of
            .charges
            .iter()
            .map(|charge| {
                let row = words::charge(&speaker, of, charge);
                let mark = row
                    .mark
                    .map(|mark| format!(" ({mark})"))
                    .unwrap_or_default();
                let price = charge.price.as_ref().map(|p| money(p.amount));
                let amount = charge.amount.map(|amount| money(amount[1]));
                [
                    row.label,
                    words::quantity(&speaker, charge),
                    price.map_or_else(|| leaf.say("estimate-no-price"), |p| p + &mark),
                    amount.unwrap_or_default(),
                ]
            })
            .collect(),
        sums: sums(leaf, &speaker, of, view.tax),
        spread: leaf.text("quote-spread", &spread),
        warning: view.prices,
        notes: view.notes,
        rules_title: leaf.say("quote-cut-title"),
        rules: say(&[
            "quote-cut-dead",
            "quote-cut-clean",
            "quote-cut-spikes",
            "quote-cut-wires",
            "quote-cut-permit",
        ]),
        signatures: say(&["quote-sign-date", "quote-sign-owner", "quote-sign-keeper"]),
        closing: leaf.say("common-closing"),
    }
}

/// Net, tax and what is to pay; the last alone where no tax is set.
fn sums(leaf: &Leaf, speaker: &Speaker, of: &Estimate, tax: Option<LineRow>) -> Vec<[String; 2]> {
    let money = |amount| words::money(speaker, &of.list, amount);
    let mut sums = Vec::new();
    if let (Some(row), Some(amounts)) = (tax, of.tax) {
        sums.push([leaf.say("estimate-net"), money(of.net[1])]);
        sums.push([row.label, money(amounts[1])]);
    }
    sums.push([leaf.say("estimate-gross"), money(of.gross[1])]);
    sums
}
