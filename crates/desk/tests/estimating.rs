//! Estimates of a small register of the tests' own: palms, minutes, money, and what logged times change.

use model::{Body, Knowledge, Prices, RoundNote, RoundPlan, RoundStep, RoundStop};
use rust_decimal::Decimal;
use spearleaf_desk as desk;
use std::collections::BTreeMap;
use std::str::FromStr;
use std::sync::Arc;

use desk::estimating::{Ask, Estimate, PriceList, estimate};
use desk::measure::{Measure, Units};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::estimating::{money, to_json, view};
use desk::views::standing::Standings;
use desk::words::{Lang, Words};
use desk::world::World;
use rounds::estimate::Reach;
use testkit::{Book, InspectionWith, PalmWith, day, inspection, palm};

const TODAY: &str = "2026-06-15";

fn dec(text: &str) -> Decimal {
    Decimal::from_str(text).unwrap()
}

fn prices() -> Prices {
    let prices = [
        ("trip", 4_805),
        ("lift_day", 38_500),
        ("crew_hour", 9_600),
        ("haul_m3", 1_450),
        ("tip_m3", 999),
    ];
    Prices {
        currency: "USD".into(),
        digits: 2,
        prices: prices.map(|(key, cents)| (key.to_owned(), cents)).into(),
        figures: BTreeMap::new(),
        tax_pct: Some(8.25),
        notes: String::new(),
    }
}

/// Three short palms, a middling and a tall one with fifteen dead fronds each; `held` is on hold; all at one site.
fn office(write: impl FnOnce(&mut Book, &[model::PalmId])) -> Office {
    let mut book = Book::new(5);
    book.on("2026-01-01");
    let mut ids = Vec::new();
    for (tag, height) in [
        ("low1", 1.0),
        ("low2", 1.0),
        ("mid", 5.0),
        ("tall", 14.0),
        ("held", 1.0),
    ] {
        let own = palm("Sabal palmetto").tag(tag).site("North").trunk(height);
        let id = book.register(own.at(27.1, -82.4));
        book.on("2026-05-20")
            .inspect(id, inspection("2026-05-20").counts(30, 2, 15));
        if tag == "held" {
            book.hold(id, "wilt-suspect", None);
        }
        ids.push(id);
    }
    write(&mut book, &ids);
    let world = World {
        now: testkit::clock(TODAY),
        as_of: Some(day(TODAY)),
        new_id: testkit::ids(9),
        device: "test".into(),
    };
    let office = Office::open(Arc::new(ledger::Memory::new()), world).unwrap();
    office.take_in(book.entries()).unwrap();
    office
}

fn made(office: &Office, ask: &Ask) -> Estimate {
    estimate(office, &Standings::default(), ask).unwrap()
}

#[test]
fn palms_are_reached_as_their_height_says_and_held_ones_are_left_out() {
    let office = office(|_, _| {});
    let got = made(&office, &Ask::default());
    let reach: BTreeMap<&str, Reach> = got
        .palms
        .iter()
        .map(|palm| (palm.tag.as_str(), palm.work.from))
        .collect();
    let want = [
        ("low1", Reach::Hand),
        ("low2", Reach::Hand),
        ("mid", Reach::Pole),
        ("tall", Reach::Lift),
    ];
    assert_eq!(reach, BTreeMap::from(want));
    assert_eq!(got.left.len(), 1);
    assert_eq!(got.left[0].0, "held");
    // what comes off is what the cut plan takes today: no more, and not what was counted weeks ago
    let (state, standings) = (office.state(), Standings::default());
    for palm in &got.palms {
        let record = state.by_tag(&palm.tag).unwrap();
        let take = standings.get(&office, record).unwrap().take;
        assert!(palm.work.dead > 0);
        assert_eq!(palm.work.dead, take.brown);
        assert_eq!(palm.work.green, take.green + take.yellowing);
    }
    assert!(got.assumed().contains(&"set-up"));
}

#[test]
fn money_is_exact_to_the_cent() {
    let office = office(|book, _| {
        book.write(Body::PricesSet(prices()), None);
    });
    let got = made(&office, &Ask::default());
    assert!(got.list.set && got.charges.len() == 5);
    let minutes = Decimal::from(got.minutes.mid.round() as i64);
    let tenths = Decimal::from((got.debris_m3.mid * 10.0).round() as i64);
    // by hand: whole minutes, tenths of a cubic metre, one trip, one lift day; each rounded half away from zero
    let crew = (minutes * dec("96")) / dec("60");
    let away = rust_decimal::RoundingStrategy::MidpointAwayFromZero;
    let cents = |x: Decimal| x.round_dp_with_strategy(2, away);
    let want = [
        ("trip", dec("48.05")),
        ("lift_day", dec("385.00")),
        ("crew_hour", cents(crew)),
        ("haul_m3", cents(tenths * dec("1.45"))),
        ("tip_m3", cents(tenths * dec("0.999"))),
    ];
    for ((key, amount), charge) in want.iter().zip(&got.charges) {
        assert_eq!(charge.key, *key);
        assert_eq!(charge.amount.unwrap()[1], *amount, "{key}");
        assert!(!charge.price.as_ref().unwrap().assumed);
    }
    let net: Decimal = want.iter().map(|(_, amount)| *amount).sum();
    assert_eq!(got.net[1], net);
    let tax = cents(net * dec("8.25") / dec("100"));
    assert_eq!(got.tax.unwrap()[1], tax);
    assert_eq!(got.gross[1], net + tax);
    assert!(got.gross[0] < got.gross[1] && got.gross[1] < got.gross[2]);
    let json = to_json(&got);
    assert_eq!(json["gross"]["mid"], (net + tax).to_string());
}

/// ISO 4217: the yen has no minor unit, the Tunisian dinar three digits.
#[test]
fn each_currency_is_rounded_to_its_own_digits() {
    for (currency, digits, amount, want) in [
        ("USD", 2, "2.005", "2.01"),
        ("USD", 2, "2.004999", "2.00"),
        ("JPY", 0, "1234.5", "1235"),
        ("TND", 3, "0.0005", "0.001"),
    ] {
        let set = Prices {
            currency: currency.into(),
            digits,
            ..prices()
        };
        let list = PriceList::of(Some(&set), Knowledge::embedded());
        assert_eq!(list.round(dec(amount)).to_string(), want);
    }
    let speaker = |lang| Speaker::new(Measure::new(Units::Metric, Words::new(lang)));
    let list = PriceList::of(Some(&prices()), Knowledge::embedded());
    let plain = |text: String| text.replace('\u{a0}', " ");
    let amount = dec("12345.6");
    assert_eq!(
        plain(money(&speaker(Lang::En), &list, amount)),
        "12,345.60 USD"
    );
    assert_eq!(
        plain(money(&speaker(Lang::Es), &list, amount)),
        "12 345,60 USD"
    );
}

#[test]
fn a_price_nobody_set_is_assumed_in_dollars_and_missing_elsewhere() {
    let bare = |currency: &str| Prices {
        currency: currency.into(),
        digits: 2,
        ..Prices::default()
    };
    let known = Knowledge::embedded();
    for list in [
        PriceList::of(None, known),
        PriceList::of(Some(&bare("USD")), known),
    ] {
        assert_eq!(list.prices.len(), 5);
        assert!(list.prices.values().all(|price| price.assumed));
    }
    assert!(PriceList::of(Some(&bare("EUR")), known).prices.is_empty());
    let office = office(|book, _| {
        book.write(Body::PricesSet(bare("EUR")), None);
    });
    let got = made(&office, &Ask::default());
    assert_eq!(
        got.gross,
        [Decimal::ZERO; 3].map(|zero| got.list.round(zero))
    );
    let speaker = Speaker::new(Measure::new(Units::Metric, Words::new(Lang::En)));
    let view = view(&speaker, &got);
    assert!(view.prices.unwrap().contains("not set"));
}

#[test]
fn logged_times_of_a_round_set_the_pace() {
    let plain = office(|_, _| {});
    let before = made(&plain, &Ask::default());
    assert!(before.taught.is_none());
    let slow = office(|book, ids| {
        book.on("2026-06-01");
        let stop = |palm: &model::PalmId| RoundStop {
            palm: *palm,
            start: None,
            minutes: None,
            tasks: vec!["look".into()],
        };
        let plan = RoundPlan {
            crew: "Ants".into(),
            stops: ids[..3].iter().map(stop).collect(),
            ..RoundPlan::on(day("2026-06-01"))
        };
        let round = book.write(Body::RoundPlanned(plan), None);
        for palm in &ids[..3] {
            let step = RoundStep::Done {
                palm: *palm,
                minutes: Some(30.0),
                note: String::new(),
            };
            book.write(Body::RoundNoted(RoundNote { round, step }), None);
        }
        book.write(
            Body::CrewDescribed(model::CrewWords {
                name: "Ants".into(),
                ..model::CrewWords::default()
            }),
            None,
        );
    });
    let ask = Ask {
        crew: "Ants".into(),
        ..Ask::default()
    };
    let after = made(&slow, &ask);
    let taught = after.taught.as_ref().unwrap();
    assert_eq!((taught.times, taught.of("Ants").own), (3, 3));
    assert!(taught.of("Ants").log_mean > 0.3);
    assert!(after.minutes.mid > 1.3 * before.minutes.mid);
}

#[test]
fn what_is_not_there_is_refused_by_name() {
    let office = office(|_, _| {});
    let code = |ask: &Ask| {
        let wrong = estimate(&office, &Standings::default(), ask).unwrap_err();
        wrong[0].code
    };
    let palms = |tag: &str| Ask {
        palms: vec![tag.into()],
        ..Ask::default()
    };
    assert_eq!(code(&palms("nobody")), "estimate-no-such-palm");
    let site = Ask {
        sites: vec!["Nowhere".into()],
        ..Ask::default()
    };
    assert_eq!(code(&site), "estimate-no-such-site");
    let crew = Ask {
        crew: "Wasps".into(),
        ..Ask::default()
    };
    assert_eq!(code(&crew), "estimate-no-such-crew");
    for lang in Lang::ALL {
        let words = Words::new(lang);
        for code in [
            "estimate-no-such-palm",
            "estimate-no-such-site",
            "estimate-no-such-crew",
            "estimate-nothing",
            "estimate-nothing-off",
        ] {
            assert!(words.has(code), "{code}");
        }
        for unit in Knowledge::embedded()
            .effort
            .iter()
            .chain(&Knowledge::embedded().debris)
        {
            let code = format!("estimate-per-{}", unit.unit.replace('/', "-"));
            assert!(words.has(&code), "{code}");
        }
    }
}
