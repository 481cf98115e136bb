//! The state does not depend on the order of arrival, and agrees with a slow, plain telling of its rules.

use spearleaf_model as model;

use model::state::{Fold, Outcome, RoundRecord, Touch, Work};
use model::{
    Bath, Blade, BladeId, Body, Cleaning, CrewWords, CutMade, Entry, EntryId, Feeding, Inspection,
    Moment, Move, OwnerLink, Palm, PalmId, Prices, RoundNote, RoundPlan, RoundStep, RoundStop,
    Site, State, TakenOff, Tending, Watering, WeatherDay,
};
use proptest::collection::vec;
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;
use testkit::{day, id};

/// Entries that speak of each other at random: corrections of corrections, of things that never arrive, in circles.
#[derive(Clone, Debug)]
struct Sketch {
    kind: u8,
    at: i64,
    written_at: i64,
    target: u64,
    other: u64,
    replaces: Option<u64>,
    detail: u8,
}

fn sketch(count: u64) -> impl Strategy<Value = Sketch> {
    let replaces = prop_oneof![2 => Just(None), 1 => (0..count + 2).prop_map(Some)];
    let targets = (0..count + 1, 0..count + 1);
    (0u8..32, 0i64..6, 0i64..6, targets, replaces, 0u8..4).prop_map(
        |(kind, at, written_at, (target, other), replaces, detail)| Sketch {
            kind,
            at,
            written_at,
            target,
            other,
            replaces,
            detail,
        },
    )
}

fn entry(n: u64, sketch: &Sketch) -> Entry {
    let target = id(1, sketch.target);
    let palm = PalmId(target);
    let described = || Palm {
        tag: format!("T{}", sketch.detail),
        stems: 2,
        ..Palm::default()
    };
    let look = || Inspection {
        green: Some(n as u32),
        ..Inspection::blank(
            1 + u16::from(sketch.detail % 2),
            day("2026-03-02").plus(i32::from(sketch.detail / 2)),
        )
    };
    let blade = BladeId(target);
    let saw = || Blade {
        tag: format!("S{}", sketch.detail),
        ..Blade::default()
    };
    let body = match sketch.kind {
        0..=2 => Body::PalmRegistered(described()),
        3 => Body::PalmChanged {
            palm,
            to: described(),
        },
        4 => Body::PalmRemoved {
            palm,
            why: n.to_string(),
        },
        5..=6 => Body::Inspected {
            palm,
            inspection: look(),
        },
        7 => Body::HoldSet {
            palm,
            reason: n.to_string(),
            until: None,
            note: String::new(),
        },
        8 => Body::HoldLifted {
            hold: EntryId(target),
            note: String::new(),
        },
        9 => Body::Noted {
            palm,
            text: n.to_string(),
        },
        10 => Body::Unknown {
            kind: "later".into(),
            version: 1,
            json: "{}".into(),
        },
        11 => Body::Withdrawn { why: String::new() },
        12..=13 => Body::BladeRegistered(saw()),
        14 => Body::BladeChanged { blade, to: saw() },
        15 => Body::BladeRetired {
            blade,
            why: n.to_string(),
        },
        16 => Body::BladeLent {
            blade,
            to: n.to_string(),
        },
        17 => Body::BladeReturned { blade },
        18..=19 => Body::CutMade(CutMade {
            palm: PalmId(id(1, sketch.other)),
            stem: 1 + u16::from(sketch.detail % 3),
            blade,
            started: (sketch.detail > 1).then_some(Moment(sketch.written_at)),
            off: TakenOff::default(),
            crew: String::new(),
            despite: String::new(),
            notes: String::new(),
            extra: Default::default(),
        }),
        20 => Body::BathMixed(Bath {
            agent: n.to_string(),
            strength_pct: None,
            kit: String::new(),
        }),
        21 => Body::Cleaned(Cleaning {
            blade,
            agent: String::new(),
            strength_pct: None,
            contact_min: None,
            brushed: None,
            bath: (sketch.detail > 0).then_some(EntryId(id(1, sketch.other))),
            by: String::new(),
            extra: Default::default(),
        }),
        _ => work(n, sketch),
    };
    Entry {
        id: EntryId(id(1, n)),
        at: Moment(sketch.at),
        written_at: Moment(sketch.written_at),
        by: "Tester".into(),
        device: "test".into(),
        body,
        replaces: sketch.replaces.map(|n| EntryId(id(1, n))),
    }
}

/// What is written of tending, sites, crews, prices, weather and rounds.
fn work(n: u64, sketch: &Sketch) -> Body {
    let palm = PalmId(id(1, sketch.other));
    let on = day("2026-02-01").plus(i32::from(sketch.detail));
    let name = format!("N{}", sketch.detail % 2);
    match sketch.kind {
        22..=23 => Body::Tended {
            palm,
            what: match sketch.detail {
                0 => Tending::Watered(Watering::default()),
                1 => Tending::Fed(Feeding::default()),
                _ => Tending::Moved(Move::on(on)),
            },
        },
        24 => Body::LinkGiven {
            palm,
            link: OwnerLink {
                owner: n.to_string(),
                ..OwnerLink::default()
            },
        },
        25 => Body::SiteDescribed(Site {
            name,
            notes: n.to_string(),
            ..Site::default()
        }),
        26 => Body::CrewDescribed(CrewWords {
            name,
            notes: n.to_string(),
            ..CrewWords::default()
        }),
        27 => Body::PricesSet(Prices {
            notes: n.to_string(),
            ..Prices::default()
        }),
        28 => Body::WeatherNoted(WeatherDay {
            rain: Some(n as f64),
            ..WeatherDay::blank(
                if sketch.other.is_multiple_of(2) {
                    ""
                } else {
                    "N0"
                },
                on,
            )
        }),
        29 => Body::RoundPlanned(RoundPlan {
            stops: vec![RoundStop {
                palm,
                start: None,
                minutes: None,
                tasks: Vec::new(),
            }],
            notes: n.to_string(),
            ..RoundPlan::on(on)
        }),
        _ => Body::RoundNoted(RoundNote {
            round: EntryId(id(1, sketch.target)),
            step: match sketch.detail {
                0 => RoundStep::Started,
                1 => RoundStep::Finished,
                2 => RoundStep::Done {
                    palm,
                    minutes: None,
                    note: n.to_string(),
                },
                _ => RoundStep::Skipped {
                    palm,
                    why: n.to_string(),
                },
            },
        }),
    }
}

fn entries() -> impl Strategy<Value = Vec<Entry>> {
    (1u64..32)
        .prop_flat_map(|count| vec(sketch(count), count as usize))
        .prop_map(|sketches| {
            (0..)
                .zip(&sketches)
                .map(|(n, sketch)| entry(n, sketch))
                .collect()
        })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 3000, ..ProptestConfig::default() })]

    #[test]
    fn any_order_and_any_batches_give_the_same_state(
        (first, second) in entries().prop_flat_map(|list| (Just(list.clone()), Just(list).prop_shuffle())),
        batch in 1usize..8,
    ) {
        let mut fold = Fold::default();
        for part in second.chunks(batch) {
            fold.apply(part.iter().cloned());
        }
        prop_assert_eq!(&*fold.state(), &State::fold(first));
        // Handing everything in again changes nothing.
        let before = fold.state();
        fold.apply(second);
        prop_assert_eq!(fold.state(), before);
    }

    #[test]
    fn the_state_is_what_its_rules_say(list in entries()) {
        let state = State::fold(list.clone());
        let plain = Plain::of(&list);
        prop_assert_eq!(state.palms.keys().copied().collect::<Vec<_>>(), plain.palms());
        for (palm, record) in &state.palms {
            let told = plain.tell(*palm);
            prop_assert_eq!(&record.palm, &told.palm);
            prop_assert_eq!(&record.inspections, &told.looks);
            prop_assert_eq!(record.holds.iter().map(|h| h.reason.clone()).collect::<Vec<_>>(), told.holds);
            prop_assert_eq!(record.notes.iter().map(|n| n.1.clone()).collect::<Vec<_>>(), told.notes);
            prop_assert_eq!(&record.removed, &told.removed);
            prop_assert_eq!(&record.tended.iter().map(|t| (t.at, t.what.clone())).collect::<Vec<_>>(), &told.tended);
            let links: Vec<_> = record.links.iter().map(|l| l.link.owner.clone()).collect();
            prop_assert_eq!(links, told.links);
        }
        prop_assert_eq!(&*state.work, &plain.work());
        let blades: Vec<BladeId> = state.blades.keys().copied().collect();
        prop_assert_eq!(blades, plain.named(|body| matches!(body, Body::BladeRegistered(_))).map(|id| BladeId(id.0)).collect::<Vec<_>>());
        for (blade, record) in &state.blades {
            let told = plain.tell_blade(*blade);
            prop_assert_eq!(&record.blade, &told.blade);
            prop_assert_eq!(&record.touches.iter().map(|t| (t.at, t.entry, t.what.clone())).collect::<Vec<_>>(), &told.touches);
            prop_assert_eq!(&record.retired, &told.retired);
            let lent = told.touches.iter().rev().find(|t| matches!(t.2, Touch::Lent(_) | Touch::Returned));
            let to = lent.and_then(|t| if let Touch::Lent(to) = &t.2 { Some(to.clone()) } else { None });
            prop_assert_eq!(record.lent.as_ref().map(|lent| lent.to.clone()), to);
        }
        // What a palm's record tells of blades is what the blades' records tell of it, where the blade is registered.
        let mut of_blades: Vec<(PalmId, EntryId)> = Vec::new();
        for touch in state.blades.values().flat_map(|record| &record.touches) {
            if let Touch::Cut(cut) = &touch.what && state.palms.contains_key(&cut.palm) {
                of_blades.push((cut.palm, touch.entry));
            }
        }
        let of_palms = state.palms.values().flat_map(|record| record.cuts.iter().map(|cut| (record.id, cut)));
        let mut of_palms: Vec<(PalmId, EntryId)> = of_palms
            .filter(|(_, cut)| state.blades.contains_key(&cut.cut.blade))
            .map(|(palm, cut)| (palm, cut.entry))
            .collect();
        of_blades.sort_unstable();
        of_palms.sort_unstable();
        prop_assert_eq!(of_blades, of_palms);
        let baths: Vec<EntryId> = state.baths.keys().copied().collect();
        prop_assert_eq!(baths, plain.named(|body| matches!(body, Body::BathMixed(_))).collect::<Vec<_>>());
        for (bath, record) in &state.baths {
            prop_assert_eq!(&record.served, &plain.served(*bath));
        }
        for (tag, palm) in state.tags() {
            let carriers = state.standing().filter(|record| record.palm.tag == *tag);
            let first = carriers.min_by_key(|record| plain.standing(EntryId(record.id.0)).map(|e| e.order()));
            prop_assert_eq!(first.map(|record| record.id), Some(*palm));
        }
        let tags: BTreeSet<&String> = state.standing().map(|record| &record.palm.tag).collect();
        prop_assert_eq!(state.tags().keys().collect::<BTreeSet<_>>(), tags);
    }
}

/// The rules of `model::state` told without any economy.
struct Plain {
    entries: BTreeMap<EntryId, Entry>,
}

#[derive(Default)]
struct Told {
    palm: Palm,
    looks: Vec<Inspection>,
    holds: Vec<String>,
    notes: Vec<String>,
    tended: Vec<(Moment, Tending)>,
    links: Vec<String>,
    removed: Option<String>,
}

#[derive(Default)]
struct ToldBlade {
    blade: Blade,
    touches: Vec<(Moment, EntryId, Touch)>,
    retired: Option<String>,
}

impl Plain {
    fn of(list: &[Entry]) -> Plain {
        Plain {
            entries: list.iter().map(|e| (e.id, e.clone())).collect(),
        }
    }

    /// First entry of the thread; in a circle its smallest.
    fn root(&self, id: EntryId) -> EntryId {
        let mut walked = vec![id];
        while let Some(up) = self
            .entries
            .get(&walked[walked.len() - 1])
            .and_then(|e| e.replaces)
        {
            if let Some(start) = walked.iter().position(|id| *id == up) {
                return *walked[start..].iter().min().unwrap();
            }
            walked.push(up);
        }
        walked[walked.len() - 1]
    }

    /// The entry that stands at the end of the thread that starts with `root`.
    fn standing(&self, root: EntryId) -> Option<&Entry> {
        if self
            .entries
            .get(&root)
            .is_some_and(|e| e.replaces.is_some())
        {
            return None;
        }
        let mut at = root;
        loop {
            let by = self.entries.values().filter(|e| e.replaces == Some(at));
            match by.max_by_key(|e| (e.written_at, e.id)) {
                Some(e) => at = e.id,
                None => return self.entries.get(&at),
            }
        }
    }

    fn all_standing(&self) -> Vec<(EntryId, &Entry)> {
        let roots: BTreeSet<EntryId> = self.entries.keys().map(|id| self.root(*id)).collect();
        let mut all: Vec<_> = roots
            .into_iter()
            .filter_map(|root| Some((root, self.standing(root)?)))
            .collect();
        all.sort_by_key(|(_, e)| e.order());
        all
    }

    fn palms(&self) -> Vec<PalmId> {
        let registered = self.named(|body| matches!(body, Body::PalmRegistered(_)));
        registered.map(|root| PalmId(root.0)).collect()
    }

    /// Threads that stand for something of a kind, in the order of their names.
    fn named(&self, is: impl Fn(&Body) -> bool) -> impl Iterator<Item = EntryId> {
        let all = self.all_standing().into_iter();
        let roots = all.filter(|(_, e)| is(&e.body)).map(|(root, _)| root);
        roots.collect::<BTreeSet<_>>().into_iter()
    }

    fn blade(&self, blade: BladeId) -> BladeId {
        BladeId(self.root(EntryId(blade.0)).0)
    }

    fn tell_blade(&self, blade: BladeId) -> ToldBlade {
        let mut told = ToldBlade::default();
        if let Some(Entry {
            body: Body::BladeRegistered(first),
            ..
        }) = self.standing(EntryId(blade.0))
        {
            told.blade = first.clone();
        }
        for (_, e) in self.all_standing() {
            let touch = match &e.body {
                Body::BladeChanged { blade: of, to } if self.blade(*of) == blade => {
                    told.blade = to.clone();
                    continue;
                }
                Body::BladeRetired { blade: of, why } if self.blade(*of) == blade => {
                    told.retired = Some(why.clone());
                    continue;
                }
                Body::BladeLent { blade: of, to } if self.blade(*of) == blade => {
                    Touch::Lent(to.clone())
                }
                Body::BladeReturned { blade: of } if self.blade(*of) == blade => Touch::Returned,
                Body::CutMade(cut) if self.blade(cut.blade) == blade => {
                    let palm = PalmId(self.root(EntryId(cut.palm.0)).0);
                    let cut = cut.clone();
                    Touch::Cut(Arc::new(CutMade { palm, blade, ..cut }))
                }
                Body::Cleaned(cleaning) if self.blade(cleaning.blade) == blade => {
                    let bath = cleaning.bath.map(|bath| self.root(bath));
                    let cleaning = cleaning.clone();
                    Touch::Cleaned(Arc::new(Cleaning {
                        blade,
                        bath,
                        ..cleaning
                    }))
                }
                _ => continue,
            };
            if !told
                .touches
                .iter()
                .any(|(at, _, what)| (at, what) == (&e.at, &touch))
            {
                told.touches.push((e.at, e.id, touch));
            }
        }
        told
    }

    /// Blades cleaned in a bath.
    fn served(&self, bath: EntryId) -> Vec<(Moment, BladeId)> {
        let mut served = BTreeSet::new();
        for (_, e) in self.all_standing() {
            if let Body::Cleaned(cleaning) = &e.body
                && cleaning.bath.is_some_and(|own| self.root(own) == bath)
            {
                served.insert((e.at, self.blade(cleaning.blade)));
            }
        }
        served.into_iter().collect()
    }

    fn tell(&self, palm: PalmId) -> Told {
        let all = self.all_standing();
        let mine = |e: &Entry| {
            e.body
                .palm()
                .is_some_and(|p| self.root(EntryId(p.0)).0 == palm.0)
        };
        let lifted: BTreeSet<EntryId> = all
            .iter()
            .filter_map(|(_, e)| {
                if let Body::HoldLifted { hold, .. } = &e.body {
                    Some(self.root(*hold))
                } else {
                    None
                }
            })
            .collect();
        let mut told = Told::default();
        if let Some(Entry {
            body: Body::PalmRegistered(first),
            ..
        }) = self.standing(EntryId(palm.0))
        {
            told.palm = first.clone();
        }
        let mut looks: BTreeMap<_, (_, Inspection)> = BTreeMap::new();
        let mut moved_on = None;
        for (root, e) in all.into_iter().filter(|(_, e)| mine(e)) {
            match &e.body {
                Body::PalmChanged { to, .. } => told.palm = to.clone(),
                Body::PalmRemoved { why, .. } => told.removed = Some(why.clone()),
                Body::Noted { text, .. } => told.notes.push(text.clone()),
                Body::Tended { what, .. } => {
                    if !told.tended.contains(&(e.at, what.clone())) {
                        told.tended.push((e.at, what.clone()));
                    }
                    if let Tending::Moved(moved) = what {
                        moved_on = moved_on.max(Some(moved.dug_on));
                    }
                }
                Body::LinkGiven { link, .. } => told.links.push(link.owner.clone()),
                Body::HoldSet { reason, .. } if !lifted.contains(&root) => {
                    told.holds.push(reason.clone())
                }
                Body::Inspected { inspection, .. } => {
                    let (key, written) = ((inspection.stem, inspection.date), (e.written_at, e.id));
                    if looks.get(&key).is_none_or(|(other, _)| *other < written) {
                        looks.insert(key, (written, inspection.clone()));
                    }
                }
                _ => {}
            }
        }
        told.looks = looks.into_values().map(|(_, look)| look).collect();
        told.palm.moved_on = told.palm.moved_on.max(moved_on);
        told
    }

    fn palm(&self, palm: PalmId) -> PalmId {
        PalmId(self.root(EntryId(palm.0)).0)
    }

    /// The latest word on each site, crew, price list, day of weather and round.
    fn work(&self) -> Work {
        let mut work = Work::default();
        let all = self.all_standing();
        for (root, e) in &all {
            match &e.body {
                Body::SiteDescribed(site) => {
                    work.sites.insert(site.name.clone(), site.clone());
                }
                Body::CrewDescribed(crew) => {
                    work.crews.insert(crew.name.clone(), crew.clone());
                }
                Body::PricesSet(prices) => work.prices = Some(prices.clone()),
                Body::WeatherNoted(day) => {
                    let days = work.weather.entry(day.site.clone()).or_default();
                    days.insert(day.day, day.clone());
                }
                Body::RoundPlanned(plan) => {
                    let round = self.told_round(*root, e, plan, &all);
                    work.rounds.insert(*root, round);
                }
                _ => {}
            }
        }
        work
    }

    fn told_round(
        &self,
        id: EntryId,
        planned: &Entry,
        plan: &RoundPlan,
        all: &[(EntryId, &Entry)],
    ) -> RoundRecord {
        let mut plan = plan.clone();
        for stop in &mut plan.stops {
            stop.palm = self.palm(stop.palm);
        }
        let mut round = RoundRecord {
            id,
            entry: planned.id,
            planned: planned.at,
            plan,
            started: None,
            finished: None,
            outcomes: BTreeMap::new(),
        };
        for (_, e) in all {
            let Body::RoundNoted(note) = &e.body else {
                continue;
            };
            if self.root(note.round) != id {
                continue;
            }
            let at = e.at;
            match note.step.clone() {
                RoundStep::Started => round.started = round.started.or(Some(at)),
                RoundStep::Finished => round.finished = Some(at),
                RoundStep::Done {
                    palm,
                    minutes,
                    note,
                } => {
                    let done = Outcome::Done { at, minutes, note };
                    round.outcomes.insert(self.palm(palm), done);
                }
                RoundStep::Skipped { palm, why } => {
                    let skipped = Outcome::Skipped { at, why };
                    round.outcomes.insert(self.palm(palm), skipped);
                }
            }
        }
        round
    }
}
