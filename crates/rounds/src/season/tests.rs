use super::*;
use model::Day;

fn day(n: i32) -> Day {
    // a Monday
    Day::parse("2026-03-02").unwrap().plus(n)
}

/// A season of so many weeks without closed days, cheap crew, no lift needed.
fn season(count: usize, needs: Vec<Need>) -> Season {
    Season {
        weeks: weeks(day(0), count, |_| false),
        needs,
        tariff: Tariff {
            trip: 1_000,
            lift_day: 5_000,
            crew_hour: 600,
            debris_m3: 100,
            storm_frond: 50,
            day_hours: 7.0,
        },
        storm: None,
    }
}

/// Worth a visit after `tidy` weeks and late after `limit`, again after every visit; a frond a week.
fn need(weeks: usize, now: (i32, i32), again: (i32, i32)) -> Need {
    let window = |from: i32, (tidy, limit): (i32, i32)| DueWindow {
        earliest: Some(day(7 * (from + tidy))),
        latest: Some(day(7 * (from + limit))),
    };
    let hanging = (0..=weeks)
        .flat_map(|from| (0..=weeks).map(move |to| (to as f64 + 1.0 - from as f64).max(0.0)));
    Need {
        kind: Kind::Fronds,
        lift: false,
        now: window(0, now),
        after: (0..weeks as i32).map(|w| window(w, again)).collect(),
        not_before: None,
        minutes: 10.0,
        minutes_each: 1.0,
        m3_each: 0.1,
        hanging: hanging.collect(),
        missed: 0,
    }
}

fn visited(plan: &Plan) -> Vec<usize> {
    plan.visits.iter().map(|v| v.week).collect()
}

#[test]
fn one_visit_serves_all_whose_windows_are_open() {
    let needs = vec![
        need(20, (2, 8), (30, 40)),
        need(20, (6, 12), (30, 40)),
        need(20, (0, 7), (30, 40)),
    ];
    let plan = best(&season(20, needs), USUAL_EFFORT);
    assert!(plan.proven && plan.days_late == 0 && plan.late.is_empty());
    assert_eq!(plan.visits.len(), 1);
    assert!(
        (6..=7).contains(&plan.visits[0].week),
        "{:?}",
        visited(&plan)
    );
    assert_eq!(plan.visits[0].served.len(), 3);
    assert_eq!(plan.money.trips, 1_000);
}

#[test]
fn a_visit_fewer_makes_late_and_never_early() {
    let needs = vec![need(20, (0, 3), (30, 40)), need(20, (9, 12), (30, 40))];
    let season = season(20, needs);
    let answers = plan(&season, USUAL_EFFORT);
    assert_eq!(answers.best.visits.len(), 2);
    let fewer = answers.fewer.expect("one visit");
    // the second palm is worth a visit in week 9 only: the first waits for it, six weeks past its limit
    assert_eq!(visited(&fewer), [9]);
    assert_eq!((fewer.days_late, fewer.late.len()), (42, 1));
    assert_eq!(fewer.late[0].why, Why::TooFew);
    assert_eq!(fewer.late[0].served, Some(day(63)));
    assert!(fewer.money.total() < answers.best.money.total());
    let more = answers.more.expect("three visits");
    assert!(more.days_waiting <= answers.best.days_waiting);
}

#[test]
fn the_next_window_follows_from_the_visit() {
    // every visit opens the next window four weeks on, and shuts it eight weeks on
    let plan = best(&season(26, vec![need(26, (4, 8), (4, 8))]), USUAL_EFFORT);
    assert_eq!(plan.days_late, 0);
    let weeks = visited(&plan);
    assert!(weeks[0] >= 4 && weeks[0] <= 8);
    assert!(
        weeks.windows(2).all(|w| (4..=8).contains(&(w[1] - w[0]))),
        "{weeks:?}"
    );
    assert!(26 - weeks[weeks.len() - 1] <= 8);
    assert_eq!(weeks.len(), 3);
}

#[test]
fn late_is_told_with_its_reason() {
    let mut held = need(12, (0, 3), (30, 40));
    held.not_before = Some(day(35));
    let overdue = need(12, (-4, -1), (30, 40));
    let mut shut = season(12, vec![held, overdue, need(12, (8, 9), (30, 40))]);
    for week in [8, 9] {
        shut.weeks.days[week] = None;
    }
    let plan = best(&shut, USUAL_EFFORT);
    let told: Vec<(usize, Why, i64)> = plan.late.iter().map(|l| (l.need, l.why, l.days)).collect();
    assert_eq!(
        told,
        [
            (0, Why::Held, 14),
            (1, Why::Overdue, 7),
            (2, Why::Closed, 7)
        ]
    );
    assert!(plan.proven);
}

#[test]
fn what_stands_high_waits_for_the_lift_and_shares_it() {
    let high = |now| Need {
        lift: true,
        ..need(20, now, (30, 40))
    };
    let needs = vec![high((0, 9)), high((8, 15)), need(20, (0, 2), (30, 40))];
    let plan = best(&season(20, needs), USUAL_EFFORT);
    assert_eq!(plan.visits.len(), 2);
    assert!(!plan.visits[0].lift && plan.visits[1].lift);
    assert_eq!(plan.money.lift, 5_000);
    assert!((8..=9).contains(&plan.visits[1].week));
}

#[test]
fn stalks_are_taken_in_their_season_or_not_at_all() {
    let stalks = |missed| Need {
        kind: Kind::Stalks,
        now: DueWindow {
            earliest: Some(day(7 * 6)),
            latest: Some(day(7 * 8)),
        },
        after: Vec::new(),
        hanging: Vec::new(),
        missed,
        ..need(20, (0, 0), (0, 0))
    };
    let with = |missed| {
        let needs = vec![need(20, (2, 10), (30, 40)), stalks(missed)];
        best(&season(20, needs), USUAL_EFFORT)
    };
    // ten minutes of the crew cost 100: worth it when leaving them costs more
    assert!((6..=8).contains(&with(500).visits[0].week));
    assert_eq!(with(500).visits[0].served.len(), 2);
    assert_eq!(with(50).stalks_left, [1]);
    assert_eq!(with(50).visits[0].served.len(), 1);
}

#[test]
fn before_the_storms_what_hangs_comes_off_if_it_may() {
    let mut season = season(20, vec![need(20, (2, 15), (30, 40))]);
    season.storm = Some(day(7 * 12));
    season.tariff.storm_frond = 500;
    let plan = best(&season, USUAL_EFFORT);
    assert!(visited(&plan)[0] < 12, "{:?}", visited(&plan));
    // but never before it is worth a visit
    season.storm = Some(day(7));
    assert!(visited(&best(&season, USUAL_EFFORT))[0] >= 2);
}

#[test]
fn nothing_due_is_no_visit() {
    let nothing = best(&season(26, Vec::new()), USUAL_EFFORT);
    assert!(nothing.visits.is_empty() && nothing.proven);
    let later = best(
        &season(26, vec![need(26, (30, 40), (30, 40))]),
        USUAL_EFFORT,
    );
    assert!(later.visits.is_empty() && later.proven && later.days_late == 0);
    let answers = plan(&season(26, Vec::new()), USUAL_EFFORT);
    assert!(answers.fewer.is_none());
}

#[test]
fn a_large_site_is_planned_with_a_proven_gap() {
    // every palm with a rhythm of its own
    let needs: Vec<Need> = (0..150)
        .map(|k| {
            let (a, b) = (4 + k % 17, 10 + k % 13);
            Need {
                lift: k % 5 == 0,
                ..need(52, (k % 9, k % 9 + b), (a, a + b))
            }
        })
        .collect();
    let season = season(52, needs);
    let plan = best(&season, Effort(200));
    assert_eq!(plan.days_late, 0);
    let (late, least) = plan.at_least;
    assert_eq!(late, 0);
    let gap = (plan.weighed - least) as f64 / plan.weighed as f64;
    assert!((0.0..0.05).contains(&gap), "gap {gap}");
}
