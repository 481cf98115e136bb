//! The quote as text: what it says in both languages, on both papers.

use desk::estimating::{Charge, Estimate, PalmPart, Price, PriceList};
use desk::measure::{Measure, Units};
use desk::words::{Lang, Words};
use model::{Finding, Knowledge, Prices, Severity};
use rounds::estimate::{Figures, Reach, Task, Work, visit};
use spearleaf_paper::{Leaf, Pdf, Size, quote};
use std::collections::BTreeMap;

fn leaf(lang: Lang, size: Size) -> Leaf {
    Leaf {
        size,
        measure: Measure::new(Units::Metric, Words::new(lang)),
        day: model::Day::from_ymd(2026, 3, 2).unwrap(),
        demo: false,
    }
}

/// The text of a PDF as a library from outside reads it, white space made one blank.
fn text_of(pdf: &Pdf) -> String {
    let text = pdf_extract::extract_text_from_mem(&pdf.bytes).unwrap();
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// Two palms, one left, three charges of which the tip's price is assumed, and tax.
fn estimate() -> Estimate {
    let known = Knowledge::embedded();
    let figures = Figures::of(known, &BTreeMap::new());
    let palm = |tag: &str, from| {
        let work = Work {
            tasks: vec![Task::Cut],
            dead: 12,
            from,
            ..Work::default()
        };
        PalmPart {
            tag: tag.to_owned(),
            species: "Sabal palmetto".to_owned(),
            site: "North".to_owned(),
            visit: visit(&figures, &work),
            work,
        }
    };
    let palms = vec![palm("N-1", Reach::Pole), palm("N-2", Reach::Lift)];
    let prices = Prices {
        currency: "USD".to_owned(),
        digits: 2,
        prices: BTreeMap::from([("trip".to_owned(), 4_800)]),
        figures: BTreeMap::new(),
        tax_pct: Some(7.0),
        notes: "Valid for thirty days.".to_owned(),
    };
    let list = PriceList::of(Some(&prices), known);
    let price = |key: &str| list.prices.get(key).cloned();
    let three = |n: i64| [n.into(), n.into(), n.into()];
    let charge = |key, n: i64, amounts| Charge {
        key,
        quantity: three(n),
        price: price(key),
        amount: Some(amounts),
    };
    Estimate {
        day: model::Day::from_ymd(2026, 3, 2).unwrap(),
        crew: String::new(),
        left: vec![(
            "N-3".to_owned(),
            Finding::new("estimate-nothing-off", Severity::Info),
        )],
        minutes: palms[0].visit.minutes.plus(palms[1].visit.minutes),
        debris_m3: palms[0].visit.debris_m3,
        mass_kg: palms[0].visit.mass_kg,
        charges: vec![
            charge("trip", 1, three(48)),
            charge("tip_m3", 2, [12.into(), 24.into(), 1_200.into()]),
        ],
        net: [60.into(), 72.into(), 1_248.into()],
        tax: list.tax_on(&[60.into(), 72.into(), 1_248.into()]),
        gross: [64.into(), 77.into(), 1_335.into()],
        figures,
        taught: None,
        unused_times: 0,
        palms,
        list,
    }
}

#[test]
fn a_quote_says_what_comes_off_what_it_costs_and_what_is_assumed() {
    assert_eq!(
        estimate().list.prices["tip_m3"],
        Price {
            amount: 12.into(),
            assumed: true
        }
    );
    let wanted = [
        (
            Lang::En,
            [
                "Quote",
                "12 fronds (12 dead), with a pole from the ground",
                "12 fronds (12 dead), from a lift",
                "48.00 USD",
                "12.00 USD (assumed)",
                "Tax 7 %",
                "5.04 USD",
                "77.00 USD",
                "Seldom less than 64.00 USD, seldom more than 1,335.00 USD",
                "Nothing on it may come off today",
                "No climbing spikes",
                "Valid for thirty days.",
                "licensed or certified people come first",
            ],
        ),
        (
            Lang::Es,
            [
                "Presupuesto",
                "12 hojas (12 muertas), con pértiga desde el suelo",
                "12 hojas (12 muertas), desde un elevador",
                "48,00 USD",
                "(supuesto)",
                "Impuesto 7 %",
                "5,04 USD",
                "77,00 USD",
                "rara vez más de 1 335,00 USD",
                "Hoy no puede quitarse nada",
                "Sin espuelas",
                "Valid for thirty days.",
                "Palma",
            ],
        ),
    ];
    for (lang, wanted) in wanted {
        let text = text_of(&quote(&leaf(lang, Size::A4), &estimate()).unwrap());
        for words in wanted {
            assert!(text.contains(words), "{}: {words}\n{text}", lang.tag());
        }
    }
}

#[test]
fn a_quote_fits_both_papers_and_is_the_same_every_time() {
    for size in Size::ALL {
        let made = || quote(&leaf(Lang::En, size), &estimate()).unwrap();
        assert_eq!(made(), made());
        assert!(made().pages <= 2);
    }
    let nothing = Estimate {
        palms: Vec::new(),
        ..estimate()
    };
    assert!(quote(&leaf(Lang::En, Size::A4), &nothing).is_err());
}
