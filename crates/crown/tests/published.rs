//! The crown against published figures. The source stands beside each check; its row is in `knowledge/sources.csv`.

use crown::{Cut, Explanation, Prior, Quantiles, Reading, Sampler, StemCase, read};
use model::knowledge::Named;
use model::{Day, Inspection, Knowledge, Palm};

/// A palm of a species without any counts, where the season is flat (10° north) and the clock runs at its stated rate.
fn unseen(species: &str, change: impl Fn(&mut Palm)) -> StemCase {
    let mut palm = Palm {
        species: species.into(),
        stems: 1,
        ..Palm::default()
    };
    change(&mut palm);
    let row = match Knowledge::embedded().species_named(species) {
        Named::Exact(s) | Named::Synonym(s) => Some(s),
        _ => None,
    };
    let mut case = StemCase::of(&palm, 1, &[], Prior::of(&palm, row, &[]), None);
    case.latitude = Some(10.0);
    case
}

fn today() -> Day {
    Day::from_ymd(2026, 3, 2).unwrap()
}

/// A reading with one explanation taken for certain.
fn only(kind: Explanation, mut case: StemCase) -> Reading {
    let mut weights = [0.0; 4];
    weights[kind.index()] = 1.0;
    (case.prior.settled, case.prior.moved) = (weights, weights);
    read(&case, today(), &mut Sampler::new(1024))
}

fn median_between(what: &str, q: Quantiles, low: f64, high: f64) {
    assert!(
        (low..=high).contains(&q.q50),
        "{what}: {} is not in {low}..{high}",
        q.q50
    );
}

#[test]
fn frond_lives_are_those_of_the_sources() {
    let life = |species| only(Explanation::Ageing, unseen(species, |_| {})).frond_life_years();
    // 130-150 fronds, 50 a year [st439-quoted]
    median_between("Phoenix canariensis", life("Phoenix canariensis"), 2.6, 3.0);
    // about one frond falls a month [enh732], at most 20 live [palmtraits-1.0]
    median_between("Roystonea regia", life("Roystonea regia"), 1.0, 1.7);
    // 11-18 a year, 23-27 live on the plateau [jsta-1994-coconut]; the row's upper 40 is from another source
    let coconut = only(
        Explanation::Ageing,
        unseen("Cocos nucifera", |p| p.full_crown = Some(25.0)),
    );
    median_between("Cocos nucifera", coconut.frond_life_years(), 1.3, 2.5);
    // 20-25 a year, 32-35 kept [iasri-oilpalm]
    let oil = only(
        Explanation::Ageing,
        unseen("Elaeis guineensis", |p| p.full_crown = Some(33.5)),
    );
    median_between("Elaeis guineensis", oil.frond_life_years(), 1.3, 1.75);
    // 6 a year [iasri-oilpalm], 10 live [palmtraits-1.0]
    let areca = only(
        Explanation::Ageing,
        unseen("Areca catechu", |p| p.full_crown = Some(10.0)),
    );
    median_between("Areca catechu", areca.frond_life_years(), 1.6, 1.75);
}

/// About one frond falls a month from a royal palm [enh732].
#[test]
fn a_royal_palm_drops_a_frond_a_month() {
    let reading = only(
        Explanation::Ageing,
        unseen("Roystonea regia", |p| p.full_crown = Some(16.0)),
    );
    let year = reading.forecast(Cut::NONE, today().plus(365));
    // three of four crowns are undisturbed; one in four is still filling up
    median_between("lost in a year", year.lost, 9.0, 13.0);
    assert!(
        year.brown_on.q95 <= 2.0,
        "and they do not stay on: {:?}",
        year.brown_on
    );
}

/// Coconuts make 6 to 8 fronds a year in the first two years [jsta-1994-coconut]: three quarterly counts from a marked
/// spear teach the reading as much, against a species row of 11 to 18.
#[test]
fn a_slow_young_coconut_is_learned_from_marked_spears() {
    let mut case = unseen("Cocos nucifera", |p| p.full_crown = Some(12.0));
    for (quarter, new) in [
        None,
        Some(2),
        Some(2),
        Some(1),
        Some(2),
        Some(2),
        Some(1),
        Some(2),
        Some(2),
    ]
    .into_iter()
    .enumerate()
    {
        let mut look = Inspection::blank(1, today().plus(91 * quarter as i32 - 8 * 91));
        look.new_leaves = new;
        case.inspections.push(look);
    }
    let reading = read(&case, today(), &mut Sampler::new(1024));
    median_between("fronds a year", reading.fronds_per_year, 6.0, 8.5);
    assert!(
        reading.vigour.q95 < 0.75,
        "slower than its kind: {:?}",
        reading.vigour
    );
}

/// A fed frond takes 3 to 4 days from green to wholly dead [enh1182, broschat-gilman-2013], a hungry one 30 to 90 days
/// [broschat-gilman-2013]: a fed crown shows next to no yellowing frond, a hungry one some.
#[test]
fn yellowing_fronds_tell_fed_from_hungry() {
    let yellow = |kind| {
        only(kind, unseen("Sabal palmetto", |_| {}))
            .forecast(Cut::NONE, today())
            .yellowing
    };
    assert_eq!(yellow(Explanation::Ageing).q50, 0.0);
    assert!(yellow(Explanation::Hunger).q50 >= 1.0 && yellow(Explanation::Hunger).q95 >= 4.0);
}

/// About half the normal number of fronds is the common Florida state [ufifas-pinellas-2014].
#[test]
fn a_hungry_crown_is_about_half_a_crown() {
    let reading = only(Explanation::Hunger, unseen("Sabal palmetto", |_| {}));
    median_between(
        "kept share",
        Quantiles {
            q50: 1.0 - reading.shortfall.q50,
            ..Quantiles::default()
        },
        0.45,
        0.62,
    );
}

/// A dozen fronds is a year's growth [jarvis-pasco], also where the species is unknown.
#[test]
fn a_dozen_fronds_is_a_years_growth() {
    let reading = only(Explanation::Ageing, unseen("Nobody knows", |_| {}));
    let year = reading.regrowth(today().plus(365));
    median_between("regrowth", year, 11.5, 12.5);
    assert!(
        year.q95 / year.q05 > 2.5,
        "and the answer is wide: {year:?}"
    );
}

/// A Sabal cropped to nothing takes up to two years to a full crown [ep543].
#[test]
fn a_cropped_sabal_needs_up_to_two_years() {
    let reading = only(
        Explanation::Ageing,
        unseen("Sabal palmetto", |p| p.full_crown = Some(21.0)),
    );
    let recovery = reading.recovery(Cut {
        green: 60,
        ..Cut::NONE
    });
    let full = recovery.to_full[1].expect("it recovers") / 365.25;
    assert!((1.2..=2.1).contains(&full), "{full} years");
    let level = recovery.to_level[1].expect("it recovers");
    assert!(level < recovery.to_full[1].unwrap());
}

/// Fed Sabals carried about 50 % more fronds than unfed ones after three years [broschat-2012-ashs].
#[test]
fn feeding_pays_within_three_years() {
    let hungry = only(Explanation::Hunger, unseen("Sabal palmetto", |_| {}));
    let more = |k: f64| 1.0 / (1.0 - k);
    let (low, high) = (more(hungry.shortfall.q05), more(hungry.shortfall.q95));
    assert!(low < 1.5 && 1.5 < high, "{low}..{high}");
    let fed = only(Explanation::Ageing, unseen("Sabal palmetto", |_| {}));
    assert!(
        fed.frond_life_years().q50 < 3.0,
        "three years renew the whole crown"
    );
}

/// 15 to 20 % of a moved palm's crown browns; 1 to 10 fronds of a large palm in the month after delivery (common
/// practice, no source).
#[test]
fn a_moved_palm_sheds_as_the_trade_expects() {
    let mut case = unseen("Phoenix sylvestris", |p| p.full_crown = Some(60.0));
    case.moved_on = Some(today());
    let reading = only(Explanation::Move, case);
    let month = reading.forecast(Cut::NONE, today().plus(30)).lost;
    assert!(
        (1.0..=10.0).contains(&month.q50) && month.q95 <= 14.0,
        "{month:?}"
    );
    let live = |day| reading.forecast(Cut::NONE, today().plus(day)).live.q50;
    let kept = live(120) / live(0);
    assert!(
        (0.78..=0.92).contains(&kept),
        "kept share after four months {kept}"
    );
}

/// A crown cut short loses nothing until it has filled up again.
#[test]
fn a_crown_cut_short_loses_nothing_at_first() {
    let reading = only(
        Explanation::Ageing,
        unseen("Sabal palmetto", |p| p.full_crown = Some(40.0)),
    );
    let after = reading.forecast(
        Cut {
            green: 25,
            ..Cut::NONE
        },
        today().plus(180),
    );
    assert!(after.lost.q50 <= 0.0 && after.live.q50 < 28.0, "{after:?}");
}
