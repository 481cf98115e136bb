//! What is said of a site judges its palms, and nobody else's.

extern crate spearleaf_desk as desk;

use desk::office::{Note, Office};
use desk::views::standing::Standings;
use desk::views::{Question, api};
use desk::world::World;
use ledger::{Ledger, Memory};
use model::{Body, Site};
use serde_json::Value;
use std::sync::Arc;
use testkit::{Book, InspectionWith, PalmWith, day, ids, inspection, noon, palm};

const TODAY: &str = "2026-06-15";

/// The same three palms on the North and on the South yard.
fn office() -> Office {
    let mut book = Book::new(4);
    for site in ["North", "South"] {
        let named = |n: u32| format!("{site}-{n}");
        let fan = book.register(
            palm("Washingtonia robusta")
                .tag(&named(1))
                .site(site)
                .trunk(12.0)
                .wires(3.5),
        );
        let date = book.register(
            palm("Phoenix canariensis")
                .tag(&named(2))
                .site(site)
                .at(36.7, -4.4),
        );
        let sabal = book.register(palm("Sabal palmetto").tag(&named(3)).site(site));
        book.on("2026-06-14");
        for (palm, green, yellowing, brown) in
            [(fan, 30, 1, 4), (date, 110, 6, 5), (sabal, 30, 1, 2)]
        {
            book.inspect(
                palm,
                inspection("2026-06-14").counts(green, yellowing, brown),
            );
        }
    }
    let world = World {
        now: testkit::clock(TODAY),
        as_of: Some(day(TODAY)),
        new_id: ids(7),
        device: "test".into(),
    };
    let ledger = Memory::new();
    ledger.append(book.entries()).unwrap();
    Office::open(Arc::new(ledger), world).unwrap()
}

fn describe(office: &Office, site: Site) {
    let note = Note {
        id: None,
        at: noon(TODAY),
        by: "keeper".into(),
        body: Body::SiteDescribed(site),
        replaces: None,
    };
    office.record(vec![note]).unwrap();
}

fn north() -> Site {
    Site {
        name: "North".into(),
        weevil_area: Some(true),
        line_kv: Some(121.0),
        tidy: Some(1),
        limit: Some(1),
        ..Site::default()
    }
}

/// Codes of holds and findings of a palm's cut plan.
fn codes(office: &Office, tag: &str, question: &Question) -> Vec<String> {
    let palm = api::palm(office, tag, question).unwrap();
    let plan = &palm["stem_readings"][0]["cut_plan"];
    let list = |of: &Value| of.as_array().unwrap().clone();
    let all = list(&plan["holds"])
        .into_iter()
        .chain(list(&plan["findings"]));
    all.map(|f| f["code"].as_str().unwrap().to_owned())
        .collect()
}

/// 29 CFR 1910.269 as in the safety row for 121 kV: 12.37 ft (3.77 m) are kept, so 3.5 m are too near; of an unknown line
/// 10 ft (3.05 m). Where palm weevils fly, date palms wait for December and January (weevil_cut_months).
#[test]
fn the_line_and_the_weevils_of_a_site_reach_the_plan_of_its_palms_alone() {
    let office = office();
    let none = Question::default();
    let says = |tag: &str, code: &str| codes(&office, tag, &none).iter().any(|c| c == code);
    assert!(!says("North-1", "hold-wires-within") && !says("North-2", "weevil-season-wait"));
    describe(&office, north());
    assert!(says("North-1", "hold-wires-within"));
    assert!(says("North-2", "weevil-season-wait"));
    assert!(!says("South-1", "hold-wires-within"));
    assert!(!says("South-2", "weevil-season-wait"));
    // a voltage that is asked about goes before the site's
    let mut asked = Question::default();
    asked.grounds.line_kv = Some(12.0);
    let asked = codes(&office, "North-1", &asked);
    assert!(!asked.iter().any(|c| c == "hold-wires-within"), "{asked:?}");
}

#[test]
fn the_figures_of_a_site_say_when_its_palms_are_due() {
    let office = office();
    let standings = Standings::default();
    let due = |tag: &str| {
        let state = office.state();
        standings
            .get(&office, state.by_tag(tag).unwrap())
            .unwrap()
            .due
    };
    let before = due("North-3");
    assert_eq!(before, due("South-3"));
    assert!(
        before.earliest.unwrap() > day(TODAY),
        "two are fewer than the usual three"
    );
    describe(&office, north());
    let after = due("North-3");
    assert_eq!(after.earliest, Some(day(TODAY)));
    assert_eq!(
        after.latest,
        Some(day(TODAY)),
        "two hang, and one is the limit"
    );
    assert_eq!(due("South-3"), before);
}

/// Lists keep what they have read; a description makes only its own site's palms be read anew.
#[test]
fn what_is_kept_is_read_anew_when_its_site_is_described() {
    let office = office();
    let standings = Standings::default();
    standings.fill(&office);
    assert_eq!((standings.made(), standings.missing(&office)), (6, 0));
    describe(&office, north());
    assert_eq!(standings.missing(&office), 3);
    standings.fill(&office);
    assert_eq!(standings.made(), 9);
    let notes = Site {
        notes: "a dog".into(),
        ..north()
    };
    describe(&office, notes);
    assert_eq!(standings.missing(&office), 0, "a dog judges no palm");
}
