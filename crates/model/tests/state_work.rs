//! What entries about tending, links, sites, crews and rounds do to the state, case by case.

use spearleaf_model as model;

use model::state::Outcome;
use model::{
    Body, Day, EntryId, Move, OwnerLink, PalmId, RoundNote, RoundPlan, RoundStep, RoundStop, Site,
    State, Tending, Watering, WeatherDay,
};
use testkit::{Book, PalmWith, day, palm};

fn moved(palm: PalmId, dug_on: &str) -> Body {
    let what = Tending::Moved(Move::on(day(dug_on)));
    Body::Tended { palm, what }
}

fn round(on: &str, palms: &[PalmId]) -> Body {
    let stop = |palm: &PalmId| RoundStop {
        palm: *palm,
        start: None,
        minutes: Some(20.0),
        tasks: vec!["cut".into()],
    };
    Body::RoundPlanned(RoundPlan {
        stops: palms.iter().map(stop).collect(),
        ..RoundPlan::on(day(on))
    })
}

fn done(round: EntryId, palm: PalmId) -> Body {
    let (minutes, note) = (Some(12.5), String::new());
    Body::RoundNoted(RoundNote {
        round,
        step: RoundStep::Done {
            palm,
            minutes,
            note,
        },
    })
}

#[test]
fn a_move_counts_as_the_day_of_moving_unless_the_description_knows_a_later_one() {
    for (described, entered, counts) in [
        (None, "2026-02-01", "2026-02-01"),
        (Some("2026-01-01"), "2026-02-01", "2026-02-01"),
        (Some("2026-03-01"), "2026-02-01", "2026-03-01"),
    ] {
        let mut book = Book::new(1);
        let mut described_palm = palm("Sabal palmetto").tag("A1");
        described_palm.moved_on = described.and_then(Day::parse);
        let a = book.register(described_palm);
        let entry = book.write(moved(a, entered), None);
        let state = book.state();
        let record = state.palm(a).unwrap();
        assert_eq!(record.palm.moved_on, Day::parse(counts), "{described:?}");
        assert_eq!(record.tended.len(), 1);
        book.withdraw(entry);
        let state = book.state();
        let record = state.palm(a).unwrap();
        assert_eq!(record.palm.moved_on, described.and_then(Day::parse));
        assert!(record.tended.is_empty(), "a move taken back is none");
    }
}

#[test]
fn the_same_watering_told_twice_counts_once() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto").tag("A1"));
    let litres = |l: f64| Body::Tended {
        palm: a,
        what: Tending::Watered(Watering {
            litres: Some(l),
            notes: String::new(),
        }),
    };
    for water in [60.0, 60.0, 40.0] {
        book.at("2026-03-02T09:00:00Z").write(litres(water), None);
    }
    let amounts = |state: &State| -> Vec<Option<f64>> {
        let record = state.palm(a).unwrap();
        let litres = record.tended.iter().map(|tended| match &tended.what {
            Tending::Watered(water) => water.litres,
            other => panic!("{other:?}"),
        });
        litres.collect()
    };
    assert_eq!(amounts(&book.state()), [Some(60.0), Some(40.0)]);
    book.at("2026-03-03T09:00:00Z").write(litres(60.0), None);
    assert_eq!(amounts(&book.state()).len(), 3, "another day is another");
}

#[test]
fn a_link_is_revoked_by_taking_it_back() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto").tag("A1"));
    let link = |hash: &str| Body::LinkGiven {
        palm: a,
        link: OwnerLink {
            secret_hash: hash.into(),
            ..OwnerLink::default()
        },
    };
    let first = book.write(link("aa"), None);
    book.write(link("bb"), None);
    book.withdraw(first);
    let state = book.state();
    let hashes = state.palm(a).unwrap().links.iter();
    let hashes: Vec<_> = hashes.map(|l| l.link.secret_hash.as_str()).collect();
    assert_eq!(hashes, ["bb"]);
}

#[test]
fn the_latest_word_on_a_site_holds_whole_and_names_are_apart() {
    let mut book = Book::new(1);
    let site = |name: &str, owner: &str, tidy: Option<u32>| {
        Body::SiteDescribed(Site {
            name: name.into(),
            owner: owner.into(),
            tidy,
            ..Site::default()
        })
    };
    book.at("2026-03-02T09:00:00Z")
        .write(site("Yard", "First", Some(3)), None);
    book.write(site("Pier", "Other", None), None);
    let last = book.write(site("Yard", "Second", None), None);
    // told later, of an earlier time
    book.at("2026-03-01T09:00:00Z")
        .write(site("Yard", "Before", Some(9)), None);
    let state = book.state();
    let yard = &state.work.sites["Yard"];
    assert_eq!((yard.owner.as_str(), yard.tidy), ("Second", None));
    assert_eq!(state.work.sites["Pier"].owner, "Other");
    book.withdraw(last);
    assert_eq!(book.state().work.sites["Yard"].owner, "First");
}

#[test]
fn weather_of_a_site_comes_before_that_of_all() {
    let mut book = Book::new(1);
    let rain = |site: &str, on: &str, mm: f64| {
        Body::WeatherNoted(WeatherDay {
            rain: Some(mm),
            ..WeatherDay::blank(site, day(on))
        })
    };
    book.write(rain("", "2026-03-01", 1.0), None);
    book.write(rain("Yard", "2026-03-01", 2.0), None);
    book.write(rain("Yard", "2026-03-01", 3.0), None);
    book.write(rain("", "2026-03-02", 4.0), None);
    let state = book.state();
    let fell = |site: &str, on: &str| state.work.weather(site, day(on)).and_then(|day| day.rain);
    assert_eq!(fell("Yard", "2026-03-01"), Some(3.0));
    assert_eq!(fell("Yard", "2026-03-02"), Some(4.0));
    assert_eq!(fell("Pier", "2026-03-01"), Some(1.0));
    assert_eq!(fell("Pier", "2026-03-03"), None);
}

#[test]
fn a_round_planned_anew_keeps_its_name_and_what_was_done() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto").tag("A1"));
    let b = book.register(palm("Sabal palmetto").tag("B1"));
    let first = book.write(round("2026-03-02", &[a, b]), None);
    book.write(done(first, a), None);
    let second = book.correct(first, round("2026-03-03", &[b]));
    let state = book.state();
    let record = &state.work.rounds[&first];
    assert_eq!((record.id, record.entry), (first, second));
    assert_eq!(record.plan.day, day("2026-03-03"));
    assert_eq!(record.outcomes.keys().copied().collect::<Vec<_>>(), [a]);
    // a crew that still has the old plan notes by either name
    book.write(done(second, b), None);
    let state = book.state();
    assert_eq!(state.work.rounds[&first].outcomes.len(), 2);
    book.withdraw(second);
    assert!(book.state().work.rounds.is_empty(), "called off");
}

#[test]
fn the_last_word_on_a_palm_of_a_round_counts() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto").tag("A1"));
    let round = book.write(round("2026-03-02", &[a]), None);
    let why = "gate locked".to_owned();
    let step = RoundStep::Skipped { palm: a, why };
    book.write(Body::RoundNoted(RoundNote { round, step }), None);
    let skipped = |state: &State| matches!(state.work.rounds[&round].outcomes[&a], Outcome::Skipped { ref why, .. } if why == "gate locked");
    assert!(skipped(&book.state()));
    let last = book.write(done(round, a), None);
    assert!(!skipped(&book.state()));
    book.withdraw(last);
    assert!(skipped(&book.state()));
}

#[test]
fn a_corrected_registration_is_the_same_palm_on_the_round() {
    let mut book = Book::new(1);
    let a = book.register(palm("Sabal palmetto").tag("A1"));
    let corrected = palm("Sabal palmetto").tag("A2");
    let second = book.correct(EntryId(a.0), Body::PalmRegistered(corrected));
    let by_new_name = PalmId(second.0);
    let round = book.write(round("2026-03-02", &[by_new_name]), None);
    book.write(done(round, by_new_name), None);
    let state = book.state();
    let record = &state.work.rounds[&round];
    assert_eq!(record.plan.stops[0].palm, a);
    assert_eq!(record.outcomes.keys().copied().collect::<Vec<_>>(), [a]);
}
