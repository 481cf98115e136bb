//! Against brute force over every assignment of sets to cuts and every choice of when to clean; and worked examples.

use super::*;
use proptest::collection::vec;
use proptest::prelude::*;

fn kit(sets: usize, soak_min: f64) -> Kit {
    Kit {
        sets,
        brush_min: 0.0,
        soak_min,
        rinse_min: 0.0,
        bath_holds: None,
        bath_serves: None,
        bath_lasts_min: None,
    }
}

fn palms(minutes: &[f64]) -> Vec<Job> {
    let job = |minutes: &f64| Job {
        minutes: *minutes,
        needs_clean: true,
    };
    minutes.iter().map(job).collect()
}

/// A soak of five to ten minutes with two or three saws in turn (common practice, no source; at least two tools:
/// [lamborn_disinfect]): with k sets a set comes up again after k - 1 cuts, which must last as long as its cleaning.
#[test]
fn two_saws_do_where_a_palm_takes_as_long_as_the_soak_and_three_where_half() {
    let six = palms(&[6.0; 12]);
    for (minutes, fewest) in [
        (5.0, 2),
        (6.0, 2),
        (6.1, 3),
        (10.0, 3),
        (12.0, 3),
        (13.0, 4),
    ] {
        assert_eq!(
            fewest_sets(&six, &kit(1, minutes)),
            Some(fewest),
            "{minutes}"
        );
    }
    let two = rotation(&six, &kit(2, 10.0)).unwrap();
    // the first two cut at once; from then on every pair of cuts of 12 minutes turns in 16
    assert_eq!((two.waiting_min, two.makespan_min), (20.0, 92.0));
    let one = rotation(&six, &kit(1, 10.0)).unwrap();
    assert_eq!((one.waiting_min, one.makespan_min), (110.0, 182.0));
    let three = rotation(&six, &kit(3, 10.0)).unwrap();
    assert_eq!((three.waiting_min, three.makespan_min), (0.0, 72.0));
    assert_eq!(three.all_clean_min, 82.0);
}

/// The example of `docs/blades.md`, line by line.
#[test]
fn the_example_of_the_manual() {
    let jobs = [
        (8.0, true),
        (4.0, true),
        (4.0, false),
        (6.0, true),
        (5.0, true),
    ];
    let jobs = jobs.map(|(minutes, needs_clean)| Job {
        minutes,
        needs_clean,
    });
    let two = Kit {
        brush_min: 1.0,
        rinse_min: 1.0,
        ..kit(2, 10.0)
    };
    let plan = rotation(&jobs, &two).unwrap();
    let turns: Vec<(usize, f64, f64)> =
        plan.turns.iter().map(|t| (t.set, t.start, t.end)).collect();
    assert_eq!(
        turns,
        [
            (0, 0.0, 8.0),
            (1, 8.0, 12.0),
            (1, 12.0, 16.0),
            (0, 20.0, 26.0),
            (1, 28.0, 33.0)
        ]
    );
    assert_eq!((plan.waiting_min, plan.makespan_min), (6.0, 33.0));
    let first = plan.soaks[0];
    assert_eq!(
        (first.from, first.into_bath, first.out_of_bath, first.ready),
        (8.0, 9.0, 19.0, 20.0)
    );
    assert_eq!(fewest_sets(&jobs, &two), Some(3));
}

/// A bath is changed after two hours or ten palms [lamborn_disinfect; laker_col_2020].
#[test]
fn baths_are_changed_by_count_and_by_age() {
    let by_count = Kit {
        bath_serves: Some(10),
        ..kit(3, 5.0)
    };
    assert_eq!(rotation(&palms(&[5.0; 10]), &by_count).unwrap().baths, 1);
    assert_eq!(rotation(&palms(&[5.0; 11]), &by_count).unwrap().baths, 2);
    let by_age = Kit {
        bath_lasts_min: Some(120.0),
        ..kit(3, 10.0)
    };
    // soaks end 10 minutes after cuts that end at 30, 60, 90, ...: 120 minutes after 30 is 150
    assert_eq!(rotation(&palms(&[30.0; 4]), &by_age).unwrap().baths, 1);
    assert_eq!(rotation(&palms(&[30.0; 5]), &by_age).unwrap().baths, 2);
}

#[test]
fn nonsense_is_no_schedule() {
    let jobs = palms(&[5.0]);
    let good = kit(1, 5.0);
    assert!(rotation(&jobs, &good).is_some() && rotation(&[], &good).unwrap().turns.is_empty());
    for bad in [
        kit(0, 5.0),
        kit(1, -1.0),
        kit(1, f64::NAN),
        Kit {
            bath_holds: Some(0),
            ..good
        },
        Kit {
            bath_serves: Some(0),
            ..good
        },
        Kit {
            bath_lasts_min: Some(0.0),
            ..good
        },
    ] {
        assert_eq!(rotation(&jobs, &bad), None, "{bad:?}");
    }
    assert_eq!(rotation(&palms(&[f64::INFINITY]), &good), None);
    assert_eq!(fewest_sets(&palms(&[-1.0]), &good), None);
}

/// Where a set is, for brute force.
#[derive(Clone, Copy, PartialEq)]
enum Set {
    Clean,
    Dirty,
    Soaking { ready: f64 },
}

/// The soonest end over every choice: which dirty sets go to the bath after each cut, and which set
/// makes each cut, waiting for it if it soaks.
fn soonest(jobs: &[Job], kit: &Kit, now: f64, sets: &[Set], places: &[f64]) -> f64 {
    let Some((job, rest)) = jobs.split_first() else {
        return now;
    };
    let mut best = f64::INFINITY;
    for (sets, places) in sent(kit, now, sets, places, 0) {
        for chosen in 0..sets.len() {
            let start = match sets[chosen] {
                Set::Clean => now,
                Set::Dirty if job.needs_clean => continue,
                Set::Dirty => now,
                Set::Soaking { ready } => now.max(ready),
            };
            let mut after = sets.clone();
            after[chosen] = Set::Dirty;
            best = best.min(soonest(rest, kit, start + job.minutes, &after, &places));
        }
    }
    best
}

/// Every way to send some of the dirty sets to the bath now; they are alike, so their order is all one.
fn sent(
    kit: &Kit,
    now: f64,
    sets: &[Set],
    places: &[f64],
    from: usize,
) -> Vec<(Vec<Set>, Vec<f64>)> {
    let mut all = vec![(sets.to_vec(), places.to_vec())];
    for set in from..sets.len() {
        if sets[set] != Set::Dirty {
            continue;
        }
        let (mut sets, mut places) = (sets.to_vec(), places.to_vec());
        let place = (0..places.len())
            .min_by(|a, b| places[*a].total_cmp(&places[*b]))
            .unwrap();
        let into = places[place].max(now + kit.brush_min);
        places[place] = into + kit.soak_min;
        let ready = into + kit.soak_min + kit.rinse_min;
        sets[set] = Set::Soaking { ready };
        all.extend(sent(kit, now, &sets, &places, set + 1));
    }
    all
}

fn brute(jobs: &[Job], kit: &Kit) -> f64 {
    let places = vec![0.0; kit.bath_holds.unwrap_or(kit.sets).min(kit.sets)];
    soonest(jobs, kit, 0.0, &vec![Set::Clean; kit.sets], &places)
}

fn a_job() -> impl Strategy<Value = Job> {
    (0u8..12, prop::bool::weighted(0.75)).prop_map(|(minutes, needs_clean)| Job {
        minutes: f64::from(minutes),
        needs_clean,
    })
}

fn a_kit() -> impl Strategy<Value = Kit> {
    let holds = prop_oneof![Just(None), (1usize..3).prop_map(Some)];
    (1usize..4, 0u8..3, 0u8..15, 0u8..3, holds).prop_map(|(sets, brush, soak, rinse, holds)| Kit {
        brush_min: f64::from(brush),
        rinse_min: f64::from(rinse),
        bath_holds: holds,
        ..kit(sets, f64::from(soak))
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 800, ..ProptestConfig::default() })]

    #[test]
    fn no_schedule_ends_sooner(jobs in vec(a_job(), 0..6), kit in a_kit()) {
        let plan = rotation(&jobs, &kit).unwrap();
        prop_assert_eq!(plan.makespan_min, brute(&jobs, &kit));
        let work: f64 = jobs.iter().map(|job| job.minutes).sum();
        prop_assert_eq!(plan.makespan_min, work + plan.waiting_min);
    }

    #[test]
    fn the_schedule_keeps_the_rules(jobs in vec(a_job(), 0..20), kit in a_kit()) {
        let plan = rotation(&jobs, &kit).unwrap();
        prop_assert_eq!(plan.turns.len(), jobs.len());
        let mut end = 0.0;
        for (turn, job) in plan.turns.iter().zip(&jobs) {
            prop_assert!(turn.start >= end && turn.end == turn.start + job.minutes);
            prop_assert_eq!(turn.waited, turn.start - end);
            end = turn.end;
            if job.needs_clean {
                // since its last cut it has been through the bath, and is out of it
                let before = plan.turns[..turn.job].iter().rev().find(|t| t.set == turn.set);
                let clean = before.is_none_or(|last| plan.soaks.iter().any(|soak| {
                    soak.set == turn.set && soak.from >= last.end && soak.ready <= turn.start
                }));
                prop_assert!(clean, "{turn:?}");
            }
        }
        for soak in &plan.soaks {
            prop_assert!(soak.into_bath >= soak.from + kit.brush_min);
            prop_assert_eq!(soak.out_of_bath, soak.into_bath + kit.soak_min);
            prop_assert_eq!(soak.ready, soak.out_of_bath + kit.rinse_min);
            let beside = plan.soaks.iter().filter(|other| {
                other.into_bath <= soak.into_bath && soak.into_bath < other.out_of_bath
            });
            prop_assert!(kit.bath_holds.is_none_or(|holds| beside.count() <= holds));
        }
    }

    #[test]
    fn the_fewest_sets_are_the_fewest(jobs in vec(a_job(), 1..12), kit in a_kit()) {
        let fewest = fewest_sets(&jobs, &kit).unwrap();
        let waits = |sets| rotation(&jobs, &Kit { sets, ..kit }).unwrap().waiting_min;
        prop_assert_eq!(waits(fewest), 0.0);
        for sets in 1..fewest {
            prop_assert!(waits(sets) > 0.0, "{sets}");
        }
    }
}
