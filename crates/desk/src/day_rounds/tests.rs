use super::*;
use crate::forms::Stop;
use crate::intake::TravelRow;
use crate::measure::{Measure, Units};
use crate::office::Note;
use crate::words::{Lang, Words};
use crate::world::World;
use model::{
    Body, Closed, CrewWords, EntryId, Feeding, Hours, Metres, Move, NoFeeding, RoundNote,
    RoundStep, Site, Tending, Watering,
};
use rounds::travel::metres;
use std::sync::Arc;
use testkit::{Book, InspectionWith, PalmWith, day, inspection, noon, palm};

const TODAY: &str = "2026-06-15";
const NORTH: Position = Position {
    lat: 27.10,
    lon: -82.40,
};
const SOUTH: Position = Position {
    lat: 27.02,
    lon: -82.40,
};
const YARD: Position = Position {
    lat: 27.06,
    lon: -82.45,
};

struct Grounds {
    office: Office,
    standings: Standings,
}

fn crew(name: &str, lift: bool) -> CrewWords {
    CrewWords {
        name: name.into(),
        from: Some(YARD),
        hours: Some(Hours {
            from: 7 * 3600,
            to: 15 * 3600,
        }),
        skills: if lift {
            vec!["lift".into()]
        } else {
            Vec::new()
        },
        ..CrewWords::default()
    }
}

fn site(name: &str, gate: Position) -> Site {
    Site {
        name: name.into(),
        gate: Some(gate),
        hours: vec![
            Hours {
                from: 8 * 3600,
                to: 12 * 3600,
            },
            Hours {
                from: 13 * 3600,
                to: 17 * 3600,
            },
        ],
        ..Site::default()
    }
}

impl Grounds {
    /// Ten short palms and two tall ones in the north, four in the south; all with fifteen dead fronds. N03 is held.
    fn new(change: impl FnOnce(&mut Vec<Body>)) -> Grounds {
        let mut bodies = vec![
            Body::SiteDescribed(site("North", NORTH)),
            Body::SiteDescribed(site("South", SOUTH)),
            Body::CrewDescribed(crew("Ants", false)),
            Body::CrewDescribed(crew("Bees", true)),
        ];
        change(&mut bodies);
        let mut book = Book::new(5);
        book.on("2026-01-01");
        for body in bodies {
            book.write(body, None);
        }
        let spread = |gate: Position, n: u32| {
            (
                gate.lat + 0.0002 * f64::from(n % 4),
                gate.lon + 0.0002 * f64::from(n / 4),
            )
        };
        for n in 1..=16_u32 {
            let (letter, site, gate) = if n <= 12 {
                ('N', "North", NORTH)
            } else {
                ('S', "South", SOUTH)
            };
            let (lat, lon) = spread(gate, n);
            let tall = n == 11 || n == 12;
            let own = palm("Sabal palmetto")
                .tag(&format!("{letter}{n:02}"))
                .site(site)
                .trunk(if tall { 14.0 } else { 4.0 })
                .at(lat, lon);
            let id = book.register(own);
            book.on("2026-05-20")
                .inspect(id, inspection("2026-05-20").counts(30, 2, 15));
            if n == 3 {
                book.hold(id, "wilt-suspect", None);
            }
        }
        let ledger = Arc::new(ledger::Memory::new());
        let world = World {
            now: testkit::clock(TODAY),
            as_of: Some(day(TODAY)),
            new_id: testkit::ids(9),
            device: "test".into(),
        };
        let office = Office::open(ledger, world).unwrap();
        office.take_in(book.entries()).unwrap();
        Grounds {
            office,
            standings: Standings::default(),
        }
    }

    fn propose(&self, ask: &Ask) -> Result<Proposal, Vec<Finding>> {
        propose(&self.office, &self.standings, ask, &mut |_, _| true)
    }

    fn tag(&self, palm: PalmId) -> String {
        self.office.state().palm(palm).unwrap().palm.tag.clone()
    }

    fn write(&self, body: Body) -> EntryId {
        let note = Note {
            id: None,
            at: noon(TODAY),
            by: "Tester".into(),
            body,
            replaces: None,
        };
        self.office.record(vec![note]).unwrap()[0].id
    }
}

fn ask() -> Ask {
    Ask {
        day: day("2026-06-16"),
        crews: Vec::new(),
        scope: Scope::Due,
        tasks: USUAL_TASKS.to_vec(),
        travel: None,
        seed: 1,
        iterations: 400,
    }
}

fn codes(findings: &[Finding]) -> Vec<&'static str> {
    findings.iter().map(|f| f.code).collect()
}

/// All that a plan of a day must keep, whoever searched it: each palm once, hours of sites and crews, lifts, health.
#[test]
fn a_proposal_keeps_hours_lifts_and_the_order_of_health() {
    let grounds = Grounds::new(|_| {});
    let proposal = grounds.propose(&ask()).unwrap();
    let mut seen: Vec<String> = Vec::new();
    for round in &proposal.rounds {
        assert_eq!(round.plan.stops.len(), round.stops.len());
        let (leave, back) = (round.plan.leave.unwrap(), round.plan.back.unwrap());
        assert!(leave >= 7 * 3600 && back <= 15 * 3600, "{leave} {back}");
        let mut free = f64::from(leave);
        let mut before: Option<&ProposedStop> = None;
        for (stop, more) in round.plan.stops.iter().zip(&round.stops) {
            let tag = grounds.tag(stop.palm);
            let start = f64::from(stop.start.unwrap());
            let end = start + stop.minutes.unwrap() * 60.0;
            assert!(
                start >= free - 4.0,
                "{tag} starts before the palm before is done"
            );
            let open = [(8.0, 12.0), (13.0, 17.0)];
            let inside =
                |(from, to): (f64, f64)| start >= from * 3600.0 && end <= to * 3600.0 + 4.0;
            assert!(open.into_iter().any(inside), "{tag} {start} {end}");
            assert!(
                !more.lift || round.plan.crew == "Bees",
                "{tag} needs a lift"
            );
            assert_eq!(more.lift, ["N11", "N12"].contains(&tag.as_str()), "{tag}");
            if let Some(before) = before.filter(|b| b.site == more.site && b.lift == more.lift) {
                assert!(before.health <= more.health, "{tag}");
            }
            (free, before) = (end, Some(more));
            seen.push(tag);
        }
    }
    seen.extend(proposal.left.iter().map(|left| grounds.tag(left.palm)));
    seen.sort();
    let all: Vec<String> = (1..=16)
        .map(|n| format!("{}{n:02}", if n <= 12 { 'N' } else { 'S' }))
        .collect();
    assert_eq!(seen, all, "each palm once, in a round or left out");
    assert_eq!(
        codes(&proposal.remarks),
        ["round-remark-minutes", "round-remark-reckoned"]
    );
}

#[test]
fn a_palm_that_is_held_is_looked_at_and_not_cut() {
    let grounds = Grounds::new(|_| {});
    let proposal = grounds.propose(&ask()).unwrap();
    let mut stops = proposal
        .rounds
        .iter()
        .flat_map(|r| r.plan.stops.iter().zip(&r.stops));
    let (held, more) = stops
        .find(|(stop, _)| grounds.tag(stop.palm) == "N03")
        .unwrap();
    assert_eq!(
        (held.tasks.as_slice(), more.health),
        (&["look".to_owned()][..], Health::Suspect)
    );
}

#[test]
fn what_is_left_out_says_why() {
    let closed = Closed {
        first: day("2026-06-10"),
        last: day("2026-06-20"),
        why: "a wedding".into(),
    };
    let grounds = Grounds::new(|bodies| {
        bodies[1] = Body::SiteDescribed(Site {
            closed: vec![closed],
            ..site("South", SOUTH)
        });
        bodies[3] = Body::CrewDescribed(CrewWords {
            gone: true,
            ..crew("Bees", true)
        });
    });
    let proposal = grounds.propose(&ask()).unwrap();
    let left: Vec<(String, &str)> = proposal
        .left
        .iter()
        .map(|l| (grounds.tag(l.palm), l.why.code))
        .collect();
    let expected = [
        ("N11", "round-left-skills"),
        ("N12", "round-left-skills"),
        ("S13", "round-left-closed"),
        ("S14", "round-left-closed"),
        ("S15", "round-left-closed"),
        ("S16", "round-left-closed"),
    ];
    assert_eq!(left, expected.map(|(tag, code)| (tag.to_owned(), code)));
}

#[test]
fn hours_that_nobody_can_keep_and_a_day_that_is_full_are_told_apart() {
    let short = Hours {
        from: 8 * 3600,
        to: 9 * 3600 + 1800,
    };
    let grounds = Grounds::new(|bodies| {
        bodies[0] = Body::SiteDescribed(Site {
            hours: vec![short],
            ..site("North", NORTH)
        });
        let night = Hours {
            from: 20 * 3600,
            to: 22 * 3600,
        };
        bodies[1] = Body::SiteDescribed(Site {
            hours: vec![night],
            ..site("South", SOUTH)
        });
    });
    let proposal = grounds.propose(&ask()).unwrap();
    let why = |letter: char| -> Vec<&'static str> {
        let own = proposal
            .left
            .iter()
            .filter(|l| grounds.tag(l.palm).starts_with(letter));
        let mut codes: Vec<_> = own.map(|l| l.why.code).collect();
        codes.dedup();
        codes
    };
    assert_eq!(why('S'), ["round-left-hours"]);
    assert_eq!(why('N'), ["round-left-full"]);
}

fn tended(grounds: &Grounds, tag: &str, on: &str, what: Tending) {
    let palm = grounds.office.state().by_tag(tag).unwrap().id;
    let note = Note {
        id: None,
        at: noon(on),
        by: "Tester".into(),
        body: Body::Tended { palm, what },
        replaces: None,
    };
    grounds.office.record(vec![note]).unwrap();
}

/// Tag and tasks of all stops.
fn stops(grounds: &Grounds, proposal: &Proposal) -> Vec<(String, String)> {
    let stops = proposal.rounds.iter().flat_map(|r| &r.plan.stops);
    let mut all: Vec<(String, String)> = stops
        .map(|stop| (grounds.tag(stop.palm), stop.tasks.join(" ")))
        .collect();
    all.sort();
    all
}

fn only(task: Task) -> Ask {
    Ask {
        tasks: vec![task],
        ..ask()
    }
}

fn pair(tag: &str, tasks: &str) -> (String, String) {
    (tag.to_owned(), tasks.to_owned())
}

#[test]
fn a_moved_palm_is_watered_until_a_watering_is_noted() {
    let grounds = Grounds::new(|_| {});
    let nothing = |ask: &Ask| codes(&grounds.propose(ask).unwrap_err());
    assert_eq!(nothing(&only(Task::Water)), ["round-nothing-to-do"]);
    let moved = Move {
        ball_radius: Some(Metres(0.6)),
        ball_depth: Some(Metres(0.6)),
        soil: "sandy-loam".to_owned(),
        ..Move::on(day("2026-06-01"))
    };
    tended(&grounds, "S13", "2026-06-01", Tending::Moved(moved));
    let proposal = grounds.propose(&only(Task::Water)).unwrap();
    assert_eq!(stops(&grounds, &proposal), [pair("S13", "water")]);
    // with the other tasks it is one stop, and no other palm is watered
    let all = stops(&grounds, &grounds.propose(&ask()).unwrap());
    let wet: Vec<_> = all.iter().filter(|s| s.1.contains("water")).collect();
    assert!(
        wet.len() == 1 && wet[0].0 == "S13" && wet[0].1 != "water",
        "{all:?}"
    );
    // named palms that want nothing of what was asked for are left out, and said
    let named = Ask {
        scope: Scope::Palms(vec!["S13".into(), "S15".into()]),
        ..only(Task::Water)
    };
    let proposal = grounds.propose(&named).unwrap();
    assert_eq!(stops(&grounds, &proposal), [pair("S13", "water")]);
    let left: Vec<_> = proposal
        .left
        .iter()
        .map(|l| (grounds.tag(l.palm), l.why.code))
        .collect();
    assert_eq!(left, [("S15".to_owned(), "round-left-nothing")]);
    // a ball a fortnight old wants water every day: watered today, it is free of it today alone
    let today = Ask {
        day: day(TODAY),
        ..only(Task::Water)
    };
    assert!(grounds.propose(&today).is_ok());
    let watered = Watering {
        litres: Some(2_000.0),
        ..Watering::default()
    };
    tended(&grounds, "S13", TODAY, Tending::Watered(watered));
    assert_eq!(nothing(&today), ["round-nothing-to-do"]);
}

/// The palm blend is given every 60 to 91 days [mitchell-fert; ep261]: 100 days later it is due again, 30 days later not.
#[test]
fn feeding_goes_along_when_asked_for_and_due_and_not_barred() {
    let fed = || {
        Tending::Fed(Feeding {
            product: "palm-blend".into(),
            ..Feeding::default()
        })
    };
    let with = |barred: Vec<NoFeeding>| {
        let grounds = Grounds::new(|bodies| {
            bodies[1] = Body::SiteDescribed(Site {
                no_feeding: barred,
                ..site("South", SOUTH)
            });
        });
        tended(&grounds, "S14", "2026-03-07", fed());
        tended(&grounds, "S16", "2026-05-16", fed());
        grounds
    };
    let free = with(Vec::new());
    let proposal = free.propose(&only(Task::Feed)).unwrap();
    assert_eq!(stops(&free, &proposal), [pair("S14", "feed")]);
    let usual = stops(&free, &free.propose(&ask()).unwrap());
    assert!(usual.iter().all(|(_, tasks)| !tasks.contains("feed")));
    let summer = NoFeeding {
        from: (6, 1),
        to: (9, 30),
        nutrients: Vec::new(),
        rule: "county".into(),
    };
    let barred = with(vec![summer]);
    let none = codes(&barred.propose(&only(Task::Feed)).unwrap_err());
    assert_eq!(none, ["round-nothing-to-do"]);
}

/// A day and an estimate reckon with one measure: of one palm for one crew the minutes are the same.
#[test]
fn minutes_are_those_of_the_estimate() {
    let grounds = Grounds::new(|bodies| {
        let Body::CrewDescribed(ants) = &mut bodies[2] else {
            panic!("no crew")
        };
        ants.people = Some(3);
    });
    for tag in ["N02", "S15"] {
        let own = Ask {
            crews: vec!["Ants".into()],
            scope: Scope::Palms(vec![tag.into()]),
            ..only(Task::Cut)
        };
        let planned = grounds.propose(&own).unwrap().rounds[0].plan.stops[0].minutes;
        let asked = crate::estimating::Ask {
            palms: vec![tag.into()],
            crew: "Ants".into(),
            ..crate::estimating::Ask::default()
        };
        let estimate = crate::estimating::estimate(&grounds.office, &grounds.standings, &asked);
        let minutes = estimate.unwrap().palms[0].visit.minutes.mid;
        assert!(
            (planned.unwrap() - minutes).abs() <= 0.051,
            "{tag}: {planned:?} {minutes}"
        );
    }
}

#[test]
fn the_same_ask_gives_the_same_proposal() {
    let grounds = Grounds::new(|_| {});
    assert_eq!(grounds.propose(&ask()), grounds.propose(&ask()));
}

#[test]
fn the_keepers_own_ways_hold_and_the_others_are_reckoned() {
    let grounds = Grounds::new(|_| {});
    let way = |from: &str, to: &str, km| TravelRow {
        from: from.into(),
        to: to.into(),
        km,
        minutes: 30.0,
    };
    let table = TravelTable::of([way("Ants", "South", 17.0)]);
    let own = Ask {
        crews: vec!["Ants".into()],
        scope: Scope::Sites(vec!["South".into()]),
        travel: Some(table),
        ..ask()
    };
    let proposal = grounds.propose(&own).unwrap();
    assert_eq!(proposal.rounds[0].plan.metres, Some(34_000.0));
    assert_eq!(proposal.rounds[0].driving, 3_600);
    assert_eq!(codes(&proposal.remarks), ["round-remark-minutes"]);
    let reckoned = Ask {
        travel: None,
        ..own
    };
    let there = metres(YARD, SOUTH) * ROAD_FACTOR;
    let driven = grounds.propose(&reckoned).unwrap().rounds[0]
        .plan
        .metres
        .unwrap();
    assert!((driven - 2.0 * there).abs() < 2.0, "{driven} {there}");
}

#[test]
fn bad_asks_say_what_is_wrong() {
    let grounds = Grounds::new(|_| {});
    let wrong = |change: &dyn Fn(&mut Ask)| {
        let mut ask = ask();
        change(&mut ask);
        codes(&grounds.propose(&ask).unwrap_err())
    };
    assert_eq!(
        wrong(&|a| a.crews = vec!["Wasps".into()]),
        ["round-no-such-crew"]
    );
    assert_eq!(
        wrong(&|a| a.scope = Scope::Palms(vec!["X1".into()])),
        ["round-no-such-palm"]
    );
    assert_eq!(
        wrong(&|a| a.scope = Scope::Sites(vec!["East".into()])),
        ["round-nothing-to-do"]
    );
    let nobody = Grounds::new(|bodies| {
        bodies[2] = Body::CrewDescribed(CrewWords {
            from: None,
            ..crew("Ants", false)
        });
        bodies.pop();
    });
    assert_eq!(
        codes(&nobody.propose(&ask()).unwrap_err()),
        ["round-no-crew", "round-crew-no-start"]
    );
}

fn plans(proposal: &Proposal) -> Vec<RoundPlan> {
    proposal
        .rounds
        .iter()
        .map(|round| round.plan.clone())
        .collect()
}

#[test]
fn a_proposal_is_kept_as_it_was_seen_and_once() {
    let grounds = Grounds::new(|_| {});
    let seen = plans(&grounds.propose(&ask()).unwrap());
    let text = carried(&seen);
    let back = read(&text, "").unwrap();
    assert_eq!(back, seen, "what a form carries is what was seen");
    assert_eq!(read("[{}]", ""), None);
    let sent = grounds.office.new_id();
    let names = keep(&grounds.office, back.clone(), Some(sent)).unwrap();
    assert_eq!(
        keep(&grounds.office, back, Some(sent)).unwrap(),
        names,
        "sent twice"
    );
    let state = grounds.office.state();
    assert_eq!(state.work.rounds.len(), seen.len());
    assert_eq!(state.work.rounds[&names[0]].plan, seen[0]);
}

#[test]
fn planning_anew_takes_the_place_of_what_has_not_begun() {
    let grounds = Grounds::new(|_| {});
    let ants = Ask {
        crews: vec!["Ants".into()],
        ..ask()
    };
    let first = keep(
        &grounds.office,
        plans(&grounds.propose(&ants).unwrap()),
        None,
    )
    .unwrap();
    // the others get what the ants do not have
    let bees = Ask {
        crews: vec!["Bees".into()],
        ..ask()
    };
    let rest = grounds.propose(&bees).unwrap();
    let ants_palms: Vec<PalmId> = grounds.office.state().work.rounds[&first[0]]
        .plan
        .stops
        .iter()
        .map(|s| s.palm)
        .collect();
    assert!(
        rest.rounds
            .iter()
            .flat_map(|r| &r.stops)
            .all(|s| !ants_palms.contains(&s.palm))
    );
    let second = keep(
        &grounds.office,
        plans(&grounds.propose(&ants).unwrap()),
        None,
    )
    .unwrap();
    assert_eq!(first, second, "the round keeps its name");
    let round = first[0];
    grounds.write(Body::RoundNoted(RoundNote {
        round,
        step: RoundStep::Started,
    }));
    let refused = grounds.propose(&ants).unwrap_err();
    assert_eq!(codes(&refused), ["round-no-crew", "round-begun"]);
    let again = keep(&grounds.office, plans_of(&grounds, round), None);
    assert!(matches!(again, Err(Stop::Troubles(t)) if t[0].finding.code == "round-begun"));
}

fn plans_of(grounds: &Grounds, round: EntryId) -> Vec<RoundPlan> {
    vec![grounds.office.state().work.rounds[&round].plan.clone()]
}

#[test]
fn every_code_has_words_in_every_language() {
    let sources = [
        include_str!("crews.rs"),
        include_str!("gather.rs"),
        include_str!("keep.rs"),
        include_str!("lay_out.rs"),
        include_str!("wanted.rs"),
        include_str!("ways.rs"),
        include_str!("../day_rounds.rs"),
        include_str!("../intake/travel.rs"),
    ];
    let quoted = sources
        .iter()
        .flat_map(|text| text.split('"').skip(1).step_by(2));
    let codes: Vec<&str> = quoted
        .filter(|word| word.starts_with("round-") || word.starts_with("travel-"))
        .collect();
    assert!(codes.len() > 12, "{codes:?}");
    for lang in Lang::ALL {
        let words = Words::new(lang);
        let bare: Vec<_> = codes.iter().filter(|code| !words.has(code)).collect();
        assert!(bare.is_empty(), "no words in {}: {bare:?}", lang.tag());
        let measure = Measure::new(Units::Metric, words);
        let said = measure.finding(&Finding::new("round-no-crew", Severity::Refuse));
        assert!(!said.contains("round-no-crew"));
    }
}
