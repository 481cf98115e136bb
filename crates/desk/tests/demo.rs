//! The demo holds what it promises, the same on every run.

use spearleaf_desk as desk;

use desk::demo::{self, Case};
use desk::office::Note;
use model::knowledge::Named;
use model::state::PalmRecord;
use model::{Day, Entry, Knowledge, PalmId, Spear, State};
use std::collections::{BTreeMap, BTreeSet};

fn today() -> Day {
    Day::parse("2026-03-02").unwrap()
}

fn entry(note: Note) -> Entry {
    let (id, at, by) = (
        note.id.expect("a demo note carries its id"),
        note.at,
        note.by,
    );
    Entry {
        id,
        at,
        written_at: at,
        by,
        device: "demo".to_owned(),
        body: note.body,
        replaces: note.replaces,
    }
}

fn state(today: Day) -> State {
    State::fold(demo::notes(today).into_iter().map(entry))
}

fn shown(state: &State, case: Case) -> Vec<&PalmRecord> {
    let palms = demo::palms_with(case);
    assert!(!palms.is_empty(), "{case:?} is not in the demo");
    palms
        .iter()
        .map(|id| &**state.palm(*id).expect("a palm of the demo"))
        .collect()
}

#[test]
fn it_has_sixty_palms_of_fifteen_species_on_three_sites() {
    let state = state(today());
    let known = Knowledge::embedded();
    let mut species = BTreeSet::new();
    let mut sites = BTreeMap::new();
    for record in state.standing() {
        *sites.entry(record.palm.site.clone()).or_insert(0) += 1;
        species.extend(
            known
                .species_named(&record.palm.species)
                .species()
                .map(|s| s.name.clone()),
        );
    }
    assert!(
        state.standing().count() >= 60,
        "{}",
        state.standing().count()
    );
    assert!(species.len() >= 15, "{species:?}");
    assert_eq!(sites.len(), 3, "{sites:?}");
    assert!(sites.values().all(|n| *n >= 15), "{sites:?}");
    assert!(state.noticed().is_empty(), "{:?}", state.noticed());
    assert_eq!(
        state.palms.len(),
        state.standing().count() + 1,
        "one palm was felled"
    );
}

#[test]
fn the_same_day_gives_the_same_demo_and_another_day_another_one() {
    let text = |day| {
        demo::notes(day)
            .into_iter()
            .map(|n| format!("{:?}", entry(n)))
            .collect::<Vec<_>>()
    };
    assert_eq!(text(today()), text(today()));
    let later = text(today().plus(40));
    assert_ne!(text(today()), later);
    let ids = |day| {
        demo::notes(day)
            .into_iter()
            .map(|n| n.id.unwrap())
            .collect::<BTreeSet<_>>()
    };
    assert_eq!(
        ids(today()).len(),
        demo::notes(today()).len(),
        "ids are not unique"
    );
    assert!(demo::is_demo(&state(today())));
    assert!(!demo::is_demo(&State::default()));
}

/// A year up to a few days before today, in order, on whichever day it is opened.
#[test]
fn it_never_grows_stale() {
    for today in ["2026-03-02", "2026-08-31", "2028-02-29"].map(|text| Day::parse(text).unwrap()) {
        let notes = demo::notes(today);
        assert!(notes.windows(2).all(|w| w[0].at <= w[1].at));
        assert!(notes.first().unwrap().at.day() >= today.plus(-370));
        let last = notes.last().unwrap().at.day();
        assert!(last < today && last >= today.plus(-7), "{last}");
        let state = state(today);
        for record in state.standing() {
            let looks = record
                .inspections
                .iter()
                .map(|look| look.date)
                .collect::<Vec<_>>();
            assert!(looks.iter().all(|day| *day < today), "{}", record.palm.tag);
            assert!(
                today.since(*looks.iter().max().unwrap()) <= 30,
                "{} was not seen lately",
                record.palm.tag
            );
        }
        let months = state
            .standing()
            .flat_map(|r| r.inspections.iter().map(|l| l.date.ymd().1))
            .collect::<BTreeSet<_>>();
        assert_eq!(months.len(), 12, "a month of {today}'s year without a look");
    }
}

#[test]
fn every_case_of_the_list_is_there() {
    let state = state(today());
    let last = |record: &PalmRecord| record.last_look().unwrap().clone();
    for case in Case::ALL {
        shown(&state, case);
    }
    let moved = shown(&state, Case::MovedNineWeeksAgo)[0];
    assert_eq!(today().since(moved.palm.moved_on.unwrap()), 63);
    let shed: u32 = moved
        .looks(1)
        .filter_map(|look| look.removed.brown)
        .sum::<u32>()
        + last(moved).brown.unwrap();
    assert!(
        (8..=30).contains(&shed),
        "a palm of a hundred fronds sheds 15 to 20 of them (common practice): {shed}"
    );
    for hungry in shown(&state, Case::Hungry) {
        let look = last(hungry);
        assert!(
            look.yellowing.unwrap() >= 1,
            "{} is not yellowing: {look:?}",
            hungry.palm.tag
        );
    }
    let wilt = shown(&state, Case::WiltSuspect)[0];
    assert_eq!(
        wilt.holds_on(today())
            .map(|h| h.reason.as_str())
            .collect::<Vec<_>>(),
        ["wilt-suspect"]
    );
    let (first, now) = (wilt.looks(1).next().unwrap().live().unwrap(), last(wilt));
    assert!(
        f64::from(now.live().unwrap()) < 0.8 * f64::from(first),
        "{first} then {now:?}"
    );
    assert!(now.signs.contains(&"one-sided-browning".to_owned()));
    let conk = shown(&state, Case::Conk)[0];
    assert!(last(conk).signs.contains(&"conk-lower-trunk".to_owned()));
    assert_eq!(
        conk.holds_on(today()).count(),
        0,
        "the hold is advised, not set"
    );
    for record in state.standing() {
        let keys = record
            .inspections
            .iter()
            .flat_map(|look| look.signs.iter().chain(&look.absent));
        for key in keys {
            assert!(desk::forms::signs::known(key), "{}: {key}", record.palm.tag);
        }
    }
    for row in shown(&state, Case::OverTrimmed) {
        let cut = row
            .looks(1)
            .find(|look| look.removed.green.is_some())
            .expect("the cut was recorded");
        assert!(
            cut.live().unwrap() - cut.removed.green.unwrap() <= 12,
            "{cut:?}"
        );
    }
    assert!(shown(&state, Case::OverTrimmed).len() >= 5, "a row");
    let skirt = shown(&state, Case::SkirtOverPath)[0];
    assert!(
        last(skirt).brown.unwrap() >= 30 && skirt.palm.over == "footpath",
        "{:?}",
        last(skirt)
    );
    assert_eq!(skirt.palm.last_cleaned_on, None);
    // 29 CFR 1910.269(x): 10 ft, 3.05 m, for anybody but line-clearance workers.
    assert!(shown(&state, Case::WiresNear)[0].palm.wires.unwrap().0 < 3.05);
    let nest = shown(&state, Case::NestHold)[0];
    assert!(
        nest.holds_on(today())
            .any(|h| h.reason == "nest" && h.until.is_some())
    );
}

#[test]
fn the_odd_ones_are_there_too() {
    let state = state(today());
    for clump in shown(&state, Case::MultiStem) {
        assert!(clump.palm.stems >= 2);
        for stem in 1..=clump.palm.stems {
            assert!(
                clump.looks(stem).count() >= 3,
                "{} stem {stem}",
                clump.palm.tag
            );
        }
    }
    assert_eq!(shown(&state, Case::OneInspection)[0].inspections.len(), 1);
    let unknown = &shown(&state, Case::UnknownSpecies)[0].palm.species;
    assert_eq!(Knowledge::embedded().species_named(unknown), Named::Unknown);
    for partly in shown(&state, Case::MissingCounts) {
        let all =
            |f: fn(&model::Inspection) -> bool| partly.inspections.iter().filter(|l| f(l)).count();
        assert!(
            all(|l| l.green.is_none()) > 0 && all(|l| l.brown.is_none()) > 0,
            "{}",
            partly.palm.tag
        );
        assert!(all(|l| l.live().is_some()) > 0, "{}", partly.palm.tag);
    }
    for cleaning in shown(&state, Case::SelfCleaning) {
        assert!(
            cleaning.inspections.iter().all(|l| l.brown.unwrap() <= 3),
            "{}",
            cleaning.palm.tag
        );
    }
    let leaning = shown(&state, Case::SpearLeaning)[0];
    assert_eq!(
        leaning.looks(1).next_back().unwrap().spear,
        Some(Spear::Leaning)
    );
    let corrected = demo::notes(today())
        .iter()
        .filter(|n| n.replaces.is_some())
        .count();
    assert_eq!(corrected, 1, "one slip of the pen was corrected");
    let gone: Vec<&PalmId> = state
        .palms
        .iter()
        .filter(|(_, r)| !r.stands())
        .map(|(id, _)| id)
        .collect();
    assert_eq!(gone.len(), 1);
}

/// Counts stay near the crowns they were drawn from: a full crown is full, nothing is absurd.
#[test]
fn counts_are_those_of_living_crowns() {
    let state = state(today());
    for record in state.standing() {
        for look in &record.inspections {
            let counts = [look.green, look.yellowing, look.brown].map(|n| n.unwrap_or(0));
            assert!(
                counts.iter().all(|n| *n <= 200),
                "{} {look:?}",
                record.palm.tag
            );
            for clock in look.clock_left.iter().chain(&look.clock_right) {
                assert!(
                    (clock.0 * 4.0).fract() == 0.0 && clock.0 > 0.0 && clock.0 <= 12.0,
                    "{look:?}"
                );
            }
            assert!(
                look.clock_left.is_none_or(|c| c.0 >= 6.0)
                    && look.clock_right.is_none_or(|c| c.0 <= 6.0)
            );
        }
    }
    // UF/IFAS ENH-732: about one frond a month; PalmTraits: at most 20 live.
    for royal in shown(&state, Case::SelfCleaning)
        .iter()
        .filter(|r| r.palm.species == "Roystonea regia")
    {
        let live = royal.last_look().unwrap().live().unwrap();
        assert!((12..=21).contains(&live), "{} has {live}", royal.palm.tag);
    }
}

fn office() -> desk::office::Office {
    let world = desk::world::World {
        now: testkit::clock("2026-03-02"),
        as_of: Some(today()),
        new_id: testkit::ids(1),
        device: "demo".to_owned(),
    };
    let office =
        desk::office::Office::open(std::sync::Arc::new(ledger::Memory::default()), world).unwrap();
    assert!(!office.is_demo());
    office
}

#[test]
fn the_office_takes_every_note_and_knows_that_it_is_the_demo() {
    let office = office();
    let notes = demo::notes(today());
    let entries = office
        .record(notes.clone())
        .expect("the office refuses nothing of the demo");
    assert_eq!(entries.len(), notes.len());
    assert_eq!(*office.state(), state(today()));
    assert!(office.is_demo());
    // Filling it again changes nothing.
    office.record(notes).expect("the same notes twice");
    assert_eq!(*office.state(), state(today()));
}

/// The readings tell each story: what was made to happen is what the counts are read as.
#[test]
fn the_readings_tell_the_stories() {
    use crown::Explanation::{self, Ageing, Decline, Hunger, Move};
    let office = office();
    office
        .record(demo::notes(today()))
        .expect("the office refuses nothing of the demo");
    let share = |id: PalmId, of: Explanation| {
        let reading = office.reading(id).expect("a palm of the demo");
        reading.probabilities[of.index()]
    };
    for (case, of, least) in [
        (Case::MovedNineWeeksAgo, Move, 0.5),
        (Case::Hungry, Hunger, 0.8),
        (Case::WiltSuspect, Decline, 0.8),
        (Case::OverTrimmed, Ageing, 0.8),
        (Case::SelfCleaning, Ageing, 0.8),
        (Case::SkirtOverPath, Ageing, 0.5),
        (Case::WiresNear, Ageing, 0.5),
    ] {
        for id in demo::palms_with(case) {
            let p = share(id, of);
            assert!(
                p > least,
                "{case:?}: {of:?} has only {p}, of {:?}",
                office.reading(id).unwrap().probabilities
            );
        }
    }
}

/// The grounds lie near a place with a climate, or the season would be a guess.
#[test]
fn every_palm_has_a_climate() {
    let office = office();
    for record in state(today()).standing() {
        assert!(
            office.climate(&record.palm).is_some(),
            "{}",
            record.palm.tag
        );
    }
}

/// The keeper described every site that palms name, and has a crew for each kind of work.
#[test]
fn its_sites_are_described_and_its_crews_can_work_on_them() {
    let state = state(today());
    let named: BTreeSet<_> = state.standing().map(|r| r.palm.site.clone()).collect();
    let described: BTreeSet<_> = state.work.sites.keys().cloned().collect();
    assert_eq!(named, described);
    for site in state.work.sites.values() {
        assert!(
            Knowledge::embedded().soil(&site.soil).is_some(),
            "{}",
            site.soil
        );
        let gate = site.gate.expect("a gate");
        // a crew walks from its gate to every palm: none is further than a kilometre (0.01 degrees are 1.1 km or less)
        for record in state.standing().filter(|r| r.palm.site == site.name) {
            let palm = record.palm.position.unwrap();
            let (north, east) = (palm.lat - gate.lat, palm.lon - gate.lon);
            assert!(
                north.abs() < 0.01 && east.abs() < 0.01,
                "{}",
                record.palm.tag
            );
        }
    }
    let sites = || state.work.sites.values();
    assert!(sites().any(|s| s.closed.iter().any(|c| c.first > today())));
    assert!(sites().any(|s| s.line_kv.is_some()));
    assert!(sites().any(|s| !s.no_feeding.is_empty()));
    let skills: BTreeSet<_> = state
        .work
        .crews
        .values()
        .flat_map(|c| c.skills.iter())
        .collect();
    assert_eq!(skills.len(), 4, "{skills:?}");
    assert!(
        state
            .work
            .crews
            .values()
            .all(|c| c.from.is_some() && c.hours.is_some())
    );
}

/// Blades of every state a keeper meets, and the day behind the trace of the suspect.
#[test]
fn the_blades_stand_as_a_keeper_meets_them() {
    use care::clean::{Adequacy, Ready};
    use model::state::Touch;
    let office = office();
    office
        .record(demo::notes(today()))
        .expect("the office refuses nothing of the demo");
    let state = office.state();
    let stands = |tag: &str| {
        let blade = state.blade_by_tag(tag).expect(tag);
        desk::blades::ready(&office, blade, None, office.now())
    };
    for tag in ["S-1", "S-2"] {
        assert!(matches!(stands(tag), Ready::Clean { .. }), "{tag}");
    }
    let missing_min = Some(4.0);
    assert_eq!(stands("S-3"), Ready::Short { missing_min });
    assert_eq!(stands("N-1"), Ready::UnknownCleaning);
    assert_eq!(stands("S-4"), Ready::NotCleaned { last: None });
    assert!(matches!(stands("P-1"), Ready::NotCleaned { last: Some(_) }));
    assert!(state.blade_by_tag("S-4").unwrap().lent.is_some());
    // The hired gang's chain saw cut the suspect and was only wiped.
    let Ready::Blocked { palm, reason, .. } = stands("G-1") else {
        panic!("{:?}", stands("G-1"))
    };
    let suspect = demo::palms_with(Case::WiltSuspect)[0];
    assert_eq!((palm, reason.as_str()), (suspect, "wilt-suspect"));

    let saw = state.blade_by_tag("S-1").unwrap();
    let month = |days: i32| today().plus(-days);
    let day: Vec<_> = saw
        .touches
        .iter()
        .filter(|t| t.at.day() >= month(250) && t.at.day() <= month(235))
        .collect();
    let wilt = Some("fusarium-wilt-canariensis");
    let story: Vec<String> = day
        .iter()
        .filter_map(|touch| match &touch.what {
            Touch::Cut(cut) => Some(state.palm(cut.palm)?.palm.tag.clone()),
            Touch::Cleaned(cleaning) => {
                let kind = saw.blade.kind;
                let verdict = desk::blades::verdict(&state, kind, cleaning, touch.at, wilt);
                let word = match verdict.adequacy {
                    Adequacy::Adequate => "enough",
                    Adequacy::Short { .. } if verdict.agreed => "short",
                    Adequacy::Short { .. } => "doubtful",
                    Adequacy::Unknown => "unknown",
                };
                Some(word.to_owned())
            }
            _ => None,
        })
        .collect();
    let told = "L-15 L-16 short L-17 unknown L-18 enough L-19 L-20 enough";
    assert_eq!(story.join(" "), told);
}

/// What the inspections say was taken off, the log says, too, with blade and crew; and no blade is in two places.
#[test]
fn the_log_says_what_the_inspections_say() {
    let state = state(today());
    let mut off = 0;
    for record in state.standing() {
        for look in &record.inspections {
            let Some(brown) = look.removed.brown.filter(|n| *n > 0) else {
                continue;
            };
            let made = record.cuts.iter().any(|cut| {
                cut.at.day() == look.date
                    && cut.cut.stem == look.stem
                    && cut.cut.off.brown == Some(brown)
            });
            assert!(made, "{} {}", record.palm.tag, look.date);
            off += 1;
        }
    }
    assert!(off > 50, "{off}");
    let (cuts, cleanings) = state.blades.values().flat_map(|blade| &blade.touches).fold(
        (0, 0),
        |(cuts, cleanings), touch| match touch.what {
            model::state::Touch::Cut(_) => (cuts + 1, cleanings),
            model::state::Touch::Cleaned(_) => (cuts, cleanings + 1),
            _ => (cuts, cleanings),
        },
    );
    assert!(
        cuts > 100 && cleanings > 40,
        "{cuts} cuts, {cleanings} cleanings"
    );
}
