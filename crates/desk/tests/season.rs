//! Seasons gathered from a register, the page they make, and the calendar feed read back by an independent reader.

use spearleaf_desk as desk;

use desk::measure::{Measure, Units};
use desk::office::{Note, Office};
use desk::season::feed::{Parts, feed};
use desk::season::prices::SeasonPrices;
use desk::season::{Ask, Effort, Seasons, SiteSeason, sites};
use desk::views::Speaker;
use desk::views::season::{Mark, view};
use desk::views::standing::Standings;
use desk::words::{Lang, Words};
use desk::world::World;
use model::{Body, Closed, EntryId, RoundPlan, RoundStop, Site};
use rounds::season::Plan;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;
use testkit::{Book, InspectionWith, PalmWith, day, inspection, noon, palm};

const TODAY: &str = "2026-06-15";

struct Grounds {
    office: Office,
    standings: Standings,
}

impl Grounds {
    /// Six date palms of the north, one of them held for good and one until July; two nobody has looked at; the north is
    /// closed for a fortnight. One palm stands on no site.
    fn new() -> Grounds {
        let mut book = Book::new(5);
        book.on("2026-01-01");
        let closed = Closed {
            first: day("2026-06-29"),
            last: day("2026-07-12"),
            why: "Fair, with rides; nobody gets in".into(),
        };
        let north = Site {
            name: "North".into(),
            closed: vec![closed],
            tidy: Some(2),
            limit: Some(6),
            ..Site::default()
        };
        book.write(Body::SiteDescribed(north), None);
        for n in 1..=9_u32 {
            let site = if n == 9 { "" } else { "North" };
            let own = palm("Phoenix sylvestris")
                .tag(&format!("N{n}"))
                .site(site)
                .trunk(if n == 2 { 12.0 } else { 4.0 })
                .at(27.1, -82.4);
            let id = book.register(own);
            if n != 7 && n != 8 {
                let look = inspection("2026-06-10").counts(60, 2, n % 3);
                book.on("2026-06-10").inspect(id, look);
            }
            match n {
                3 => drop(book.hold(id, "wilt-suspect", None)),
                4 => drop(book.hold(id, "nest", Some(day("2026-07-20")))),
                _ => {}
            }
        }
        let world = World {
            now: testkit::clock(TODAY),
            as_of: Some(day(TODAY)),
            new_id: testkit::ids(9),
            device: "test".into(),
        };
        let office = Office::open(Arc::new(ledger::Memory::new()), world).unwrap();
        office.take_in(book.entries()).unwrap();
        Grounds {
            office,
            standings: Standings::default(),
        }
    }

    fn sites(&self) -> Vec<SiteSeason> {
        sites(&self.office, &self.standings, &Ask::all(52))
    }

    fn plan_round(&self, notes: &str) -> EntryId {
        let state = self.office.state();
        let plan = RoundPlan {
            crew: "Ants; and Bees, too".into(),
            leave: Some(7 * 3600),
            back: Some(15 * 3600 + 1800),
            stops: state
                .standing()
                .map(|record| RoundStop {
                    palm: record.id,
                    start: None,
                    minutes: None,
                    tasks: vec!["cut".into()],
                })
                .collect(),
            notes: notes.into(),
            ..RoundPlan::on(day("2026-06-17"))
        };
        let note = Note {
            id: None,
            at: noon(TODAY),
            by: "Tester".into(),
            body: Body::RoundPlanned(plan),
            replaces: None,
        };
        self.office.record(vec![note]).unwrap()[0].id
    }
}

fn speaker(lang: Lang) -> Speaker {
    Speaker::new(Measure::new(Units::Metric, Words::new(lang)))
}

#[test]
fn held_and_unseen_palms_are_told_and_nobody_is_early() {
    let grounds = Grounds::new();
    let sites = grounds.sites();
    let names: Vec<&str> = sites.iter().map(|s| s.site.as_str()).collect();
    assert_eq!(names, ["North", ""]);
    let north = &sites[0];
    let left: BTreeMap<&str, &str> = north
        .left
        .iter()
        .map(|left| (left.record.palm.tag.as_str(), left.why.code))
        .collect();
    let told = [
        ("N3", "season-left-held"),
        ("N7", "season-left-unseen"),
        ("N8", "season-left-unseen"),
    ];
    assert_eq!(left, told.into());
    assert!(!north.best.visits.is_empty() && north.best.proven);
    let mut served = BTreeSet::new();
    for visit in &north.best.visits {
        let shut = day("2026-06-29")..=day("2026-07-12");
        assert!(!shut.contains(&visit.day), "{} is closed", visit.day);
        for s in visit.served.iter().filter(|s| !north.stalks(s.need)) {
            let palm = north.palm_of(s.need).unwrap();
            let tag = palm.record.palm.tag.clone();
            assert!(tag != "N4" || visit.day > day("2026-07-20"), "N4 is held");
            if served.insert(tag.clone()) {
                // the first time: never before the palm's own window opens
                let standing = grounds
                    .standings
                    .get(&grounds.office, &palm.record)
                    .unwrap();
                assert!(
                    standing.due.earliest.unwrap() <= visit.day,
                    "{tag} is early"
                );
            }
            assert!(tag != "N2" || visit.lift, "N2 is high up");
        }
    }
    assert!(served.len() == 5, "{served:?}");
}

#[test]
fn the_page_shows_what_a_visit_more_or_fewer_does() {
    let grounds = Grounds::new();
    for lang in Lang::ALL {
        let sites = grounds.sites();
        let prices = SeasonPrices::of(&grounds.office.state());
        let all = view(&speaker(lang), &sites, &prices, 52, None);
        assert_eq!(all.grid.rows.len(), 2);
        assert!(all.grid.rows.iter().all(|row| row.cells.len() == 52));
        let weeks: usize = all.grid.months.iter().map(|(_, n)| n).sum();
        assert_eq!(weeks, 52);
        let closed = |c: &&desk::views::season::WeekCell| c.mark == Mark::Closed;
        let north = &all.grid.rows[0];
        assert!(north.cells.iter().filter(closed).count() + sites[0].best.late.len() >= 1);
        assert!(all.prices.is_some() && all.sites[0].closed.len() == 1);
        let one = view(&speaker(lang), &sites[..1], &prices, 52, Some("North"));
        let fewer = one.sites[0]
            .otherwise
            .iter()
            .find(|o| o.key == "fewer")
            .unwrap();
        // the best plan is proven, so that a visit fewer costs palms days, or the purse
        let plan = sites[0].what_if(Effort(120)).fewer.unwrap();
        let cost = |plan: &Plan| (plan.days_late, plan.weighed);
        assert!(cost(&plan) > cost(&sites[0].best), "{plan:?}");
        assert_eq!(fewer.late.len(), plan.late.len());
        let stalks = plan.stalks_left.len() > sites[0].best.stalks_left.len();
        let said = ["Stalks of", "Se quedan los racimos"];
        assert_eq!(said.iter().any(|words| fewer.palms.contains(words)), stalks);
        assert_eq!(one.grid.rows.len(), sites[0].palms.len());
    }
}

#[test]
fn a_season_is_remembered_until_something_changes() {
    let grounds = Grounds::new();
    let seasons = Seasons::default();
    let ask = Ask::all(26);
    let get = || seasons.get(&grounds.office, &grounds.standings, &ask);
    let first = get();
    assert!(Arc::ptr_eq(&first, &get()));
    grounds.plan_round("");
    assert!(!Arc::ptr_eq(&first, &get()));
}

/// What an independent reader of RFC 5545 (the crate `ical`) makes of a feed: properties of each event, text unescaped.
fn events(text: &str) -> Vec<BTreeMap<String, String>> {
    let mut calendars: Vec<_> = ical::IcalParser::new(text.as_bytes()).collect();
    assert_eq!(calendars.len(), 1);
    let calendar = calendars.remove(0).expect("it is iCalendar");
    let of = |name: &str| {
        let found = calendar.properties.iter().find(|p| p.name == name);
        found.and_then(|p| p.value.clone())
    };
    assert_eq!(of("VERSION").as_deref(), Some("2.0"));
    assert!(of("PRODID").is_some());
    assert_eq!(unescaped(&of("NAME").unwrap()), of("NAME").unwrap());
    let event = |event: &ical::parser::ical::component::IcalEvent| {
        let mut out = BTreeMap::new();
        for p in &event.properties {
            let value = p.value.clone().unwrap_or_default();
            if ["DTSTART", "DTEND"].contains(&p.name.as_str()) {
                let date = Some(vec![("VALUE".to_owned(), vec!["DATE".to_owned()])]);
                assert_eq!(p.params, date, "{}", p.name);
                assert!(value.len() == 8 && value.bytes().all(|b| b.is_ascii_digit()));
            }
            assert!(
                out.insert(p.name.clone(), unescaped(&value)).is_none(),
                "{} twice",
                p.name
            );
        }
        out
    };
    calendar.events.iter().map(event).collect()
}

/// RFC 5545, 3.3.11: `\\`, `\;`, `\,`, `\n`; nothing else may follow a backslash, and no bare `,` or `;` may stand.
fn unescaped(value: &str) -> String {
    let mut out = String::new();
    let mut chars = value.chars();
    while let Some(c) = chars.next() {
        match (c, if c == '\\' { chars.next() } else { None }) {
            ('\\', Some('n' | 'N')) => out.push('\n'),
            ('\\', Some(e @ ('\\' | ';' | ','))) => out.push(e),
            ('\\', other) => panic!("\\{other:?} in {value}"),
            (';' | ',', _) => panic!("bare {c} in {value}"),
            (c, _) => out.push(c),
        }
    }
    out
}

#[test]
fn an_independent_reader_takes_the_feed_as_it_was_meant() {
    let grounds = Grounds::new();
    let notes = "Gate code 12;\r\nring, then wait \\ the dog is friendly. Fronds, hojas, yemas: ñandú çà et là, éàü → 🌴🌴🌴🌴🌴🌴🌴🌴🌴🌴🌴🌴🌴🌴\u{7}";
    let round = grounds.plan_round(notes);
    let sites = grounds.sites();
    let text = feed(&speaker(Lang::Es), &grounds.office, &sites, Parts::ALL);
    // lines end with CR LF, hold at most 75 octets and are folded between characters
    assert!(
        text.ends_with("END:VCALENDAR\r\n") && !text.replace("\r\n", "").contains(['\r', '\n'])
    );
    let long = text.split("\r\n").find(|line| line.len() > 75);
    assert_eq!(long, None);
    let found = events(&text);
    let uids: BTreeSet<&str> = found.iter().map(|e| e["UID"].as_str()).collect();
    assert_eq!(uids.len(), found.len(), "a UID is there twice");
    let stamps: BTreeSet<&str> = found.iter().map(|e| e["DTSTAMP"].as_str()).collect();
    assert_eq!(
        stamps,
        ["20260615T120000Z"].into(),
        "the clock that was given"
    );
    let planned = &found
        .iter()
        .find(|e| e["UID"] == format!("round-{}@spearleaf.invalid", round.0))
        .unwrap();
    assert_eq!(planned["SUMMARY"], "Ronda Ants; and Bees, too: 9 palmas");
    assert_eq!(
        (planned["DTSTART"].as_str(), planned["DTEND"].as_str()),
        ("20260617", "20260618")
    );
    let meant = "Gate code 12;\nring, then wait \\ the dog is friendly. Fronds, hojas, yemas: ñandú çà et là, éàü → 🌴🌴🌴🌴🌴🌴🌴🌴🌴🌴🌴🌴🌴🌴";
    assert!(
        planned["DESCRIPTION"].ends_with(meant),
        "{}",
        planned["DESCRIPTION"]
    );
    // every palm with a window and every visit is there
    let of = |part: &str| found.iter().filter(|e| e["UID"].starts_with(part)).count();
    assert_eq!(
        of("window-"),
        sites.iter().map(|s| s.palms.len()).sum::<usize>()
    );
    assert_eq!(
        of("visit-"),
        sites.iter().map(|s| s.best.visits.len()).sum::<usize>()
    );
    for event in &found {
        assert!(event["DTSTART"] < event["DTEND"], "{event:?}");
    }
    // a second fetch names the same things
    let again = events(&feed(
        &speaker(Lang::En),
        &grounds.office,
        &grounds.sites(),
        Parts::ALL,
    ));
    assert_eq!(
        again
            .iter()
            .map(|e| e["UID"].as_str())
            .collect::<BTreeSet<_>>(),
        uids
    );
    let only = events(&feed(
        &speaker(Lang::En),
        &grounds.office,
        &sites,
        Parts::parse("rounds"),
    ));
    assert_eq!(only.len(), 1);
}
