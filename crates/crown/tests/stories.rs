//! Invented palms whose story is plain: the reading must tell it, whatever is missing, and tell it the same every time.

use crown::{Cut, Explanation, PalmReading, Prior, Reading, Sampler, StemCase, read, read_palm};
use model::knowledge::Named;
use model::{Clock, Day, Inspection, Knowledge, Palm};

const TODAY: &str = "2026-06-01";

fn today() -> Day {
    Day::parse(TODAY).unwrap()
}

/// Looks a quarter apart, the last one 27 days ago: green, yellowing, brown, brown taken off.
fn looks(stem: u16, counts: &[[u32; 4]]) -> Vec<Inspection> {
    let first = today().plus(-27 - 91 * (counts.len() as i32 - 1));
    counts
        .iter()
        .enumerate()
        .map(|(i, [green, yellowing, brown, off])| {
            let mut look = Inspection::blank(stem, first.plus(91 * i as i32));
            (look.green, look.yellowing, look.brown) =
                (Some(*green), Some(*yellowing), Some(*brown));
            look.removed.brown = Some(*off);
            look
        })
        .collect()
}

fn case(species: &str, inspections: &[Inspection]) -> StemCase {
    let palm = Palm {
        species: species.into(),
        stems: 1,
        ..Palm::default()
    };
    let knowledge = Knowledge::embedded();
    let row = match knowledge.species_named(species) {
        Named::Exact(s) | Named::Synonym(s) => Some(s),
        _ => None,
    };
    let genus = species.split(' ').next().unwrap_or("");
    StemCase::of(
        &palm,
        1,
        inspections,
        Prior::of(&palm, row, &knowledge.relatives(genus)),
        None,
    )
}

fn told(case: &StemCase) -> Reading {
    read(case, today(), &mut Sampler::new(1024))
}

fn check(name: &str, case: &StemCase, kind: Explanation, at_least: f64) -> Reading {
    let reading = told(case);
    let p = reading.probabilities;
    assert!((p.iter().sum::<f64>() - 1.0).abs() < 1e-9, "{name}: {p:?}");
    assert_eq!(reading.most_probable(), kind, "{name}: {p:?}");
    assert!(p[kind.index()] >= at_least, "{name}: {p:?}");
    assert!(
        reading.effective_draws >= 100.0,
        "{name}: rests on {}",
        reading.effective_draws
    );
    reading
}

const HEALTHY: [[u32; 4]; 4] = [[22, 0, 2, 2], [22, 0, 2, 2], [23, 1, 3, 3], [22, 0, 3, 3]];
const HUNGRY: [[u32; 4]; 4] = [[9, 3, 4, 4], [8, 3, 2, 2], [9, 4, 3, 3], [8, 3, 3, 3]];
const DYING: [[u32; 4]; 4] = [[22, 0, 2, 2], [21, 1, 3, 3], [14, 3, 5, 5], [6, 3, 9, 0]];

#[test]
fn plain_stories_are_told() {
    check(
        "healthy",
        &case("Sabal palmetto", &looks(1, &HEALTHY)),
        Explanation::Ageing,
        0.9,
    );
    let hungry = check(
        "hungry",
        &case("Sabal palmetto", &looks(1, &HUNGRY)),
        Explanation::Hunger,
        0.9,
    );
    assert!(
        (0.25..0.65).contains(&hungry.shortfall.q50),
        "{:?}",
        hungry.shortfall
    );
    let dying = check(
        "dying",
        &case("Sabal palmetto", &looks(1, &DYING)),
        Explanation::Decline,
        0.9,
    );
    let loss = dying.loss().expect("two looks make a loss");
    assert_eq!(loss.lost, Some(9.0));
    assert!(
        loss.tail_probability.unwrap() < 0.10 && loss.ordinary.1 <= 9.0,
        "{loss:?}"
    );
    assert!(dying.forecast(Cut::NONE, today().plus(182)).live.q50 < 2.0);
}

#[test]
fn a_palm_moved_nine_weeks_ago_sheds_and_is_not_called_hungry() {
    let moved_on = today().plus(-63);
    let mut before = Inspection::blank(1, moved_on);
    (before.green, before.yellowing, before.brown) = (Some(30), Some(0), Some(0));
    let mut after = Inspection::blank(1, today());
    (after.green, after.yellowing, after.brown) = (Some(24), Some(2), Some(5));
    let mut case = case("Syagrus romanzoffiana", &[before, after]);
    case.moved_on = Some(moved_on);
    let reading = check("moved", &case, Explanation::Move, 0.7);
    let loss = reading.loss().unwrap();
    assert_eq!(loss.lost, Some(5.0));
    let [ageing, moved, ..] = loss.expected;
    assert!(
        moved.unwrap().1 > ageing.unwrap().1,
        "the move explains more: {loss:?}"
    );
    assert!(
        loss.tail_probability.unwrap() > 0.05,
        "in line with the move: {loss:?}"
    );
    // without the move the same counts are something else
    case.moved_on = None;
    assert_eq!(told(&case).probabilities[Explanation::Move.index()], 0.0);
}

#[test]
fn the_tripwire_is_rarely_touched_and_grows_with_time() {
    let reading = told(&case("Sabal palmetto", &looks(1, &HEALTHY)));
    let counts: Vec<u32> = [0, 28, 56, 182]
        .iter()
        .map(|d| reading.tripwire(today().plus(*d)).count)
        .collect();
    assert!(counts.windows(2).all(|w| w[0] <= w[1]), "{counts:?}");
    assert!((2..=12).contains(&counts[1]), "{counts:?}");
    let hungry = told(&case("Sabal palmetto", &looks(1, &HUNGRY)));
    assert!(hungry.tripwire(today().plus(56)).count > 0);
}

#[test]
fn one_look_gives_a_wide_answer_and_none_gives_the_prior() {
    let one = told(&case("Sabal palmetto", &looks(1, &HEALTHY[..1])));
    let four = told(&case("Sabal palmetto", &looks(1, &HEALTHY)));
    let width = |r: &Reading| r.full_crown.q95 / r.full_crown.q05;
    assert!(
        width(&one) > width(&four),
        "{:?} {:?}",
        one.full_crown,
        four.full_crown
    );
    assert!(one.loss().is_none());
    let none = told(&case("Sabal palmetto", &[]));
    assert!((none.probabilities[0] - 0.62).abs() < 1e-9 && none.last_inspection.is_none());
    assert!(
        none.forecast(Cut::NONE, today()).live.q95
            > none.forecast(Cut::NONE, today()).live.q05 + 5.0
    );
}

#[test]
fn an_unknown_species_gets_the_wide_prior_and_says_so() {
    let unknown = case("Palma incognita", &looks(1, &HEALTHY[..1]));
    assert_eq!(unknown.prior.full_crown.note, Some("n-from-family"));
    assert_eq!(
        unknown.prior.fronds_per_year.note,
        Some("r-about-one-a-month")
    );
    let known = case("Sabal palmetto", &looks(1, &HEALTHY[..1]));
    assert!(unknown.prior.full_crown.sd_ln > 2.0 * known.prior.full_crown.sd_ln);
    told(&unknown);
}

#[test]
fn the_keepers_own_figures_override_and_are_marked() {
    let palm = Palm {
        species: "Sabal palmetto".into(),
        full_crown: Some(44.0),
        fronds_per_year: Some(20.0),
        ..Palm::default()
    };
    let row = Knowledge::embedded().species_named(&palm.species).species();
    let prior = Prior::of(&palm, row, &[]);
    assert_eq!(
        (prior.full_crown.median, prior.full_crown.basis),
        (44.0, model::Basis::Keeper)
    );
    assert_eq!(
        (prior.fronds_per_year.median, prior.fronds_per_year.basis),
        (20.0, model::Basis::Keeper)
    );
}

#[test]
fn missing_counts_stay_missing() {
    let full = looks(1, &HEALTHY);
    let mut gaps = full.clone();
    gaps[1].yellowing = None;
    gaps[2].brown = None;
    gaps[3].green = None;
    for (name, c) in [
        ("full", case("Sabal palmetto", &full)),
        ("gaps", case("Sabal palmetto", &gaps)),
    ] {
        check(name, &c, Explanation::Ageing, 0.7);
    }
    // a look without any count changes nothing but the dates
    let mut empty = full.clone();
    empty.insert(2, Inspection::blank(1, full[1].date.plus(40)));
    let (a, b) = (
        told(&case("Sabal palmetto", &full)),
        told(&case("Sabal palmetto", &empty)),
    );
    for k in 0..4 {
        assert!(
            (a.probabilities[k] - b.probabilities[k]).abs() < 0.02,
            "{:?} {:?}",
            a.probabilities,
            b.probabilities
        );
    }
}

#[test]
fn looks_after_the_day_of_the_reading_are_not_seen() {
    let all = looks(1, &DYING);
    let early = read(
        &case("Sabal palmetto", &all),
        all[1].date,
        &mut Sampler::new(1024),
    );
    let only = read(
        &case("Sabal palmetto", &all[..2]),
        all[1].date,
        &mut Sampler::new(1024),
    );
    assert_eq!(
        early.probabilities.map(f64::to_bits),
        only.probabilities.map(f64::to_bits)
    );
    assert_eq!(early.last_inspection, Some(all[1].date));
}

/// Same input, same bits; and what a sampler read before leaves no trace.
#[test]
fn the_same_palm_gives_the_same_bits() {
    let stories = [&HEALTHY, &HUNGRY, &DYING].map(|c| case("Sabal palmetto", &looks(1, c)));
    let bits = |r: &Reading| {
        let f = r.forecast(Cut::NONE, today().plus(100));
        let mut all = r.probabilities.to_vec();
        all.extend([
            r.vigour.q05,
            r.effective_draws,
            f.live.q25,
            f.green.q95,
            f.lost.q95,
            r.full_crown.q75,
        ]);
        all.into_iter().map(f64::to_bits).collect::<Vec<_>>()
    };
    let fresh: Vec<_> = stories.iter().map(|c| bits(&told(c))).collect();
    let mut reused = Sampler::new(1024);
    for round in 0..2 {
        for (c, want) in stories.iter().zip(&fresh).rev() {
            assert_eq!(&bits(&read(c, today(), &mut reused)), want, "round {round}");
        }
    }
}

#[test]
fn a_palm_of_several_stems_gets_a_reading_each_and_its_own() {
    let stems: Vec<(u16, StemCase)> = (1..=3)
        .map(|s| {
            (
                s,
                case(
                    "Phoenix reclinata",
                    &looks(1, &[[14, 4, 3, 3], [13, 5, 3, 3]]),
                ),
            )
        })
        .collect();
    let PalmReading {
        stems: readings,
        probabilities,
    } = read_palm(&stems, today(), &mut Sampler::new(1024));
    assert_eq!(readings.len(), 3);
    let hunger = Explanation::Hunger.index();
    assert!(
        probabilities[hunger] > readings[0].1.probabilities[hunger],
        "three stems say it louder than one"
    );
    assert!((probabilities.iter().sum::<f64>() - 1.0).abs() < 1e-9);
}

#[test]
fn clock_readings_fit_the_spread() {
    let mut seen = looks(1, &HEALTHY);
    for look in &mut seen {
        (look.clock_left, look.clock_right) = (Clock::new(8.0), Clock::new(4.0));
    }
    let reading = told(&case("Sabal palmetto", &seen));
    let picture = reading.picture(Cut::NONE, today());
    assert!(
        picture.theta_from_clock && (picture.theta_end_degrees - 120.0).abs() < 8.0,
        "{}",
        picture.theta_end_degrees
    );
    assert!(
        reading.below_level() > 3.0,
        "fronds at 8 and 4 hang below 9 and 3: {}",
        reading.below_level()
    );
    let assumed = told(&case("Sabal palmetto", &looks(1, &HEALTHY))).picture(Cut::NONE, today());
    assert!(!assumed.theta_from_clock && assumed.theta_end_degrees == 150.0);
}

#[test]
fn the_picture_shows_what_is_there_and_what_is_cut() {
    let reading = told(&case("Sabal palmetto", &looks(1, &HUNGRY)));
    let cut = Cut {
        green: 2,
        yellowing: 1,
        brown: 99,
    };
    let now = reading.picture(cut, today());
    let marked = now.fronds.iter().filter(|f| f.cut).count();
    let brown = now
        .fronds
        .iter()
        .filter(|f| f.tint == crown::Tint::Brown)
        .count();
    assert_eq!(marked, 3 + brown);
    assert!(
        now.fronds
            .windows(2)
            .all(|w| w[0].lean_degrees <= w[1].lean_degrees && w[0].rank < w[1].rank)
    );
    let later = reading.picture(cut, today().plus(28));
    assert!(later.fronds.iter().all(|f| !f.cut));
}

#[test]
fn a_due_window_opens_before_it_closes() {
    let reading = told(&case(
        "Phoenix sylvestris",
        &looks(1, &[[60, 0, 5, 5], [61, 1, 6, 6]]),
    ));
    let due = reading.due(4, 12);
    let (from, to) = (
        due.earliest.expect("fronds keep dying"),
        due.latest.expect("and hang"),
    );
    assert!(today() <= from && from < to, "{due:?}");
    assert!(reading.due(4, 40).latest.is_none_or(|d| d > to));
}

/// Odd crowns must give numbers, not nonsense.
#[test]
fn odd_crowns_are_read() {
    let dead = looks(1, &[[20, 0, 0, 0], [0, 0, 20, 0]]);
    let bare = looks(1, &[[0, 0, 0, 0]]);
    let huge = looks(1, &[[900, 40, 300, 0], [100, 400, 900, 900]]);
    let mut shaved = looks(1, &HEALTHY);
    shaved[1].removed.green = Some(500);
    let mut daily: Vec<Inspection> = (0..60)
        .map(|d| Inspection::blank(1, today().plus(-d)))
        .collect();
    daily.reverse();
    for look in &mut daily {
        (look.green, look.yellowing, look.brown, look.new_leaves) =
            (Some(20), Some(0), Some(1), Some(0));
    }
    for (name, seen) in [
        ("dead", dead),
        ("bare", bare),
        ("huge", huge),
        ("shaved", shaved),
        ("daily", daily),
    ] {
        for species in ["Sabal palmetto", "Roystonea regia", "Nobody knows"] {
            let mut c = case(species, &seen);
            c.moved_on = Some(today().plus(-100));
            let r = told(&c);
            let f = r.forecast(
                Cut {
                    green: 3,
                    yellowing: 0,
                    brown: 5,
                },
                today().plus(364),
            );
            let numbers = [
                f.live.q05,
                f.live.q95,
                f.lost.q95,
                f.brown_on.q50,
                r.vigour.q50,
                r.effective_draws,
            ];
            assert!(
                numbers.iter().all(|x| x.is_finite() && *x >= 0.0),
                "{name} {species}: {numbers:?}"
            );
            assert!(
                (r.probabilities.iter().sum::<f64>() - 1.0).abs() < 1e-9,
                "{name} {species}"
            );
            let recovery = r.recovery(Cut {
                green: 3,
                ..Cut::NONE
            });
            assert!(
                recovery.frond_months_lost.iter().all(|x| x.is_finite()),
                "{name} {species}"
            );
        }
    }
}

/// A few spotted fronds on a crown that keeps its size are no cause for alarm.
#[test]
fn a_few_yellowing_fronds_on_a_steady_crown_raise_no_alarm() {
    let steady = |live: u32, yellowing: u32| {
        let mut seen = looks(
            1,
            &[
                [live - yellowing, yellowing, 1, 1],
                [live - yellowing, yellowing, 2, 2],
            ],
        );
        seen[0].date = seen[1].date.plus(-106);
        seen
    };
    for (species, live, yellowing) in [
        ("Sabal palmetto", 36, 1),
        ("Sabal palmetto", 36, 2),
        ("Sabal palmetto", 36, 3),
        ("Livistona chinensis", 45, 2),
    ] {
        let p = told(&case(species, &steady(live, yellowing))).probabilities;
        assert!(
            p[Explanation::Decline.index()] < 0.25,
            "{species} {yellowing} of {live}: {p:?}"
        );
    }
}

/// A palm headed at the move, met bare, is not called hungry for it.
#[test]
fn a_palm_headed_at_the_move_is_not_called_hungry() {
    let mut bare = case("Sabal palmetto", &looks(1, &[[0, 0, 0, 0]]));
    bare.moved_on = Some(today().plus(-40));
    let p = told(&bare).probabilities;
    assert!(p[Explanation::Hunger.index()] < 0.5, "{p:?}");
}
