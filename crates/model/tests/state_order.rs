//! The state does not depend on the order of arrival, and agrees with a slow, plain telling of its rules.

use spearleaf_model as model;

use model::state::Fold;
use model::{Body, Entry, EntryId, Inspection, Moment, Palm, PalmId, State};
use proptest::collection::vec;
use proptest::prelude::*;
use std::collections::{BTreeMap, BTreeSet};
use testkit::{day, id};

/// Entries that speak of each other at random: corrections of corrections, of things that never arrive, in circles.
#[derive(Clone, Debug)]
struct Sketch {
    kind: u8,
    at: i64,
    written_at: i64,
    target: u64,
    replaces: Option<u64>,
    detail: u8,
}

fn sketch(count: u64) -> impl Strategy<Value = Sketch> {
    let replaces = prop_oneof![2 => Just(None), 1 => (0..count + 2).prop_map(Some)];
    (0u8..12, 0i64..6, 0i64..6, 0..count + 1, replaces, 0u8..4).prop_map(
        |(kind, at, written_at, target, replaces, detail)| Sketch {
            kind,
            at,
            written_at,
            target,
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
        _ => Body::Withdrawn { why: String::new() },
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

fn entries() -> impl Strategy<Value = Vec<Entry>> {
    (1u64..24)
        .prop_flat_map(|count| vec(sketch(count), count as usize))
        .prop_map(|sketches| {
            (0..)
                .zip(&sketches)
                .map(|(n, sketch)| entry(n, sketch))
                .collect()
        })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1500, ..ProptestConfig::default() })]

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
    removed: Option<String>,
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
        let all = self.all_standing().into_iter();
        let registered = all.filter(|(_, e)| matches!(e.body, Body::PalmRegistered(_)));
        registered
            .map(|(root, _)| PalmId(root.0))
            .collect::<BTreeSet<_>>()
            .into_iter()
            .collect()
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
        for (root, e) in all.into_iter().filter(|(_, e)| mine(e)) {
            match &e.body {
                Body::PalmChanged { to, .. } => told.palm = to.clone(),
                Body::PalmRemoved { why, .. } => told.removed = Some(why.clone()),
                Body::Noted { text, .. } => told.notes.push(text.clone()),
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
        told
    }
}
