//! What the office refuses to record of tending, sites, crews, prices, weather and rounds, and that each sound one passes.

use super::*;
use model::{
    Closed, CrewWords, Feeding, Hours, Move, NoFeeding, OwnerLink, Position, Prices, RoundNote,
    RoundPlan, RoundStep, RoundStop, Site, Tending, Watering, WeatherDay,
};

fn takes(office: &Office, body: Body) {
    let kind = format!("{body:?}");
    if let Err(refused) = office.record(vec![note(body)]) {
        panic!("{kind} is sound, but: {refused:?}");
    }
}

fn refuses(office: &Office, body: Body, code: &str) {
    let kind = format!("{body:?}");
    assert_eq!(refused(office, vec![note(body)]), [code], "{kind}");
}

fn with_palm() -> (Office, PalmId) {
    let office = office();
    let palm = register(&office, palm("Sabal palmetto").tag("A1"));
    (office, palm)
}

fn nobody() -> PalmId {
    PalmId(ids(99)())
}

#[test]
fn tending_that_cannot_be_is_refused() {
    let (office, palm) = with_palm();
    let tended = |what| Body::Tended { palm, what };
    let moved = |change: fn(&mut Move)| {
        let mut moved = Move::on(day("2026-05-01"));
        change(&mut moved);
        tended(Tending::Moved(moved))
    };
    let watered = |litres| {
        let watering = Watering {
            litres: Some(litres),
            ..Watering::default()
        };
        tended(Tending::Watered(watering))
    };
    let fed = |grams, area_m2| {
        let feeding = Feeding {
            product: "palm-8-0-12".into(),
            grams: Some(grams),
            area_m2: Some(area_m2),
            ..Feeding::default()
        };
        tended(Tending::Fed(feeding))
    };
    takes(&office, moved(|m| m.planted_on = Some(day("2026-05-02"))));
    takes(&office, watered(60.0));
    takes(&office, fed(1500.0, 12.0));
    let strange = Body::Tended {
        palm: nobody(),
        what: Tending::Watered(Watering::default()),
    };
    for (body, code) in [
        (
            moved(|m| m.planted_on = Some(day("2026-04-30"))),
            "planted-before-dug",
        ),
        (moved(|m| m.dug_on = day("2026-09-01")), "date-in-future"),
        (
            moved(|m| m.ball_radius = Some(Metres(0.0))),
            "figure-out-of-range",
        ),
        (
            moved(|m| m.deeper = Some(Metres(-11.0))),
            "figure-out-of-range",
        ),
        (
            moved(|m| m.fronds_taken = Some(1001)),
            "figure-out-of-range",
        ),
        (watered(-1.0), "figure-out-of-range"),
        (watered(f64::NAN), "figure-out-of-range"),
        (fed(-1.0, 12.0), "figure-out-of-range"),
        (fed(10.0, 0.0), "figure-out-of-range"),
        (strange, "palm-unknown"),
    ] {
        refuses(&office, body, code);
    }
}

#[test]
fn a_link_needs_a_palm_and_a_hash() {
    let (office, palm) = with_palm();
    let link = |palm, hash: &str| Body::LinkGiven {
        palm,
        link: OwnerLink {
            secret_hash: hash.into(),
            ..OwnerLink::default()
        },
    };
    takes(&office, link(palm, "0af3"));
    refuses(&office, link(palm, ""), "link-malformed");
    refuses(&office, link(palm, "open sesame"), "link-malformed");
    refuses(&office, link(nobody(), "0af3"), "palm-unknown");
}

fn site(change: impl FnOnce(&mut Site)) -> Body {
    let mut site = Site {
        name: "North yard".into(),
        ..Site::default()
    };
    change(&mut site);
    Body::SiteDescribed(site)
}

fn hours(from: u32, to: u32) -> Hours {
    Hours {
        from: from * 3_600,
        to: to * 3_600,
    }
}

fn closed(first: &str, last: &str) -> Closed {
    Closed {
        first: day(first),
        last: day(last),
        why: "feast".into(),
    }
}

fn barred(from: (u8, u8), to: (u8, u8)) -> NoFeeding {
    NoFeeding {
        from,
        to,
        nutrients: vec!["N".into()],
        rule: "parish".into(),
    }
}

#[test]
fn sites_that_cannot_be_are_refused() {
    let office = office();
    takes(
        &office,
        site(|s| {
            s.hours = vec![hours(12, 18), hours(6, 12), hours(20, 24)];
            s.closed = vec![closed("2027-12-24", "2027-12-26")];
            s.no_feeding = vec![barred((12, 1), (2, 29))];
            s.line_kv = Some(69.0);
            (s.tidy, s.limit) = (Some(3), Some(3));
        }),
    );
    for (body, code) in [
        (site(|s| s.name.clear()), "site-nameless"),
        (site(|s| s.name = " B".into()), "site-nameless"),
        (
            site(|s| s.hours = vec![hours(6, 12), hours(11, 14)]),
            "site-hours-overlap",
        ),
        (site(|s| s.hours = vec![hours(14, 6)]), "site-figure"),
        (site(|s| s.hours = vec![hours(6, 25)]), "site-figure"),
        (
            site(|s| s.closed = vec![closed("2026-12-26", "2026-12-24")]),
            "site-figure",
        ),
        (
            site(|s| s.no_feeding = vec![barred((6, 31), (9, 30))]),
            "site-figure",
        ),
        (
            site(|s| s.no_feeding = vec![barred((0, 1), (9, 30))]),
            "site-figure",
        ),
        (site(|s| s.line_kv = Some(1201.0)), "site-figure"),
        (site(|s| s.line_kv = Some(f64::NAN)), "site-figure"),
        (site(|s| s.tidy = Some(1001)), "site-figure"),
        (
            site(|s| {
                s.gate = Some(Position {
                    lat: 91.0,
                    lon: 0.0,
                })
            }),
            "site-figure",
        ),
        (
            site(|s| (s.tidy, s.limit) = (Some(9), Some(4))),
            "site-tidy-beyond-limit",
        ),
    ] {
        refuses(&office, body, code);
    }
}

#[test]
fn crews_that_cannot_be_are_refused() {
    let office = office();
    let crew = |change: fn(&mut CrewWords)| {
        let mut crew = CrewWords {
            name: "A".into(),
            ..CrewWords::default()
        };
        change(&mut crew);
        Body::CrewDescribed(crew)
    };
    takes(
        &office,
        crew(|c| {
            c.hours = Some(Hours {
                from: 0,
                to: 86_400,
            })
        }),
    );
    for (body, code) in [
        (crew(|c| c.name.clear()), "crew-nameless"),
        (crew(|c| c.people = Some(0)), "crew-figure"),
        (crew(|c| c.room_m3 = Some(-1.0)), "crew-figure"),
        (
            crew(|c| c.hours = Some(Hours { from: 9, to: 8 })),
            "crew-figure",
        ),
        (
            crew(|c| {
                c.to = Some(Position {
                    lat: 0.0,
                    lon: 181.0,
                })
            }),
            "crew-figure",
        ),
    ] {
        refuses(&office, body, code);
    }
}

#[test]
fn prices_and_weather_that_cannot_be_are_refused() {
    let office = office();
    let prices = |change: fn(&mut Prices)| {
        let mut prices = Prices {
            currency: "USD".into(),
            digits: 2,
            ..Prices::default()
        };
        change(&mut prices);
        Body::PricesSet(prices)
    };
    takes(
        &office,
        prices(|p| p.prices = [("hour".to_owned(), 6500)].into()),
    );
    for (body, code) in [
        (prices(|p| p.currency = "usd".into()), "prices-currency"),
        (prices(|p| p.digits = 5), "prices-currency"),
        (prices(|p| p.tax_pct = Some(101.0)), "prices-currency"),
        (
            prices(|p| p.prices = [("hour".to_owned(), -1)].into()),
            "prices-figure",
        ),
        (
            prices(|p| p.figures = [("setup".to_owned(), f64::NAN)].into()),
            "prices-figure",
        ),
    ] {
        refuses(&office, body, code);
    }
    let weather = |change: fn(&mut WeatherDay)| {
        let mut weather = WeatherDay::blank("", day("2026-06-01"));
        change(&mut weather);
        Body::WeatherNoted(weather)
    };
    takes(
        &office,
        weather(|w| (w.t_min, w.t_max) = (Some(20.0), Some(31.0))),
    );
    for (body, code) in [
        (weather(|w| w.day = day("2026-09-01")), "date-in-future"),
        (
            weather(|w| (w.t_min, w.t_max) = (Some(31.0), Some(20.0))),
            "weather-figure",
        ),
        (weather(|w| w.t_max = Some(88.0)), "weather-figure"),
        (weather(|w| w.humidity = Some(101.0)), "weather-figure"),
        (weather(|w| w.wind = Some(-1.0)), "weather-figure"),
        (weather(|w| w.radiation = Some(60.0)), "weather-figure"),
        (weather(|w| w.sunshine = Some(25.0)), "weather-figure"),
        (weather(|w| w.rain = Some(f64::NAN)), "weather-figure"),
    ] {
        refuses(&office, body, code);
    }
}

#[test]
fn rounds_that_cannot_be_are_refused() {
    let (office, palm) = with_palm();
    let stop = |palm| RoundStop {
        palm,
        start: Some(25_200),
        minutes: Some(20.0),
        tasks: vec!["cut".into()],
    };
    let plan = |stops: Vec<RoundStop>, change: fn(&mut RoundPlan)| {
        let mut plan = RoundPlan::on(day("2026-07-01"));
        plan.stops = stops;
        change(&mut plan);
        Body::RoundPlanned(plan)
    };
    let planned = office
        .record(vec![note(plan(vec![stop(palm)], |_| {}))])
        .expect("a round ahead is sound");
    let round = planned[0].id;
    for (body, code) in [
        (
            plan(vec![stop(palm), stop(palm)], |_| {}),
            "round-palm-twice",
        ),
        (plan(vec![stop(nobody())], |_| {}), "palm-unknown"),
        (
            plan(vec![stop(palm)], |p| p.leave = Some(200_000)),
            "round-figure",
        ),
        (
            plan(vec![stop(palm)], |p| p.metres = Some(-1.0)),
            "round-figure",
        ),
        (
            plan(vec![stop(palm)], |p| p.stops[0].minutes = Some(1441.0)),
            "round-figure",
        ),
    ] {
        refuses(&office, body, code);
    }
    let noted = |round, step| Body::RoundNoted(RoundNote { round, step });
    let done = |palm, minutes| RoundStep::Done {
        palm,
        minutes: Some(minutes),
        note: String::new(),
    };
    let skipped = |why: &str| RoundStep::Skipped {
        palm,
        why: why.into(),
    };
    takes(&office, noted(round, RoundStep::Started));
    takes(&office, noted(round, done(palm, 19.5)));
    takes(&office, noted(round, skipped("nest")));
    for (body, code) in [
        (
            noted(EntryId(ids(98)()), RoundStep::Started),
            "round-unknown",
        ),
        (noted(round, done(nobody(), 5.0)), "palm-unknown"),
        (noted(round, done(palm, -5.0)), "figure-out-of-range"),
        (noted(round, skipped("  ")), "skipped-without-reason"),
    ] {
        refuses(&office, body, code);
    }
}
