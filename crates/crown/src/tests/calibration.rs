//! Simulation-based calibration of the whole reading (Talts et al. 2018, arXiv 1804.06788).
//!
//! Palms are drawn from the prior (explanation, parameters), their looks from the observation model, with missing
//! counts and cuts as keepers leave them. If the reading is right, the true value's rank in the reading is uniform.
//! Ranks of v, K, q and of four forecasts over [`PALMS`] palms must pass a chi-square test at p > 0.01.

use crate::answer::{Cut, Explanation};
use crate::case::StemCase;
use crate::draws::{DIMS, Points, Sampler};
use crate::explain::Params;
use crate::lanes::WIDTH;
use crate::prior::{Hang, Prior};
use crate::reading::{Reading, read};
use crate::season::Season;
use crate::track::{Crown, Timeline, Watch, advance, run, yellowing};
use crate::weigh::{BROWN, CountNoise, SD_NEW, YELLOWING, sd_live};
use model::{Day, Inspection, Palm};
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use rand_distr::{Distribution, Gamma, Normal, Poisson, StandardNormal};
use statrs::distribution::{ChiSquared, ContinuousCDF};

const PALMS: u64 = 1500;
const TENTHS: usize = 10;
const AHEAD: i32 = 120;

/// A palm of the prior with the looks it would give.
struct Simulated {
    case: StemCase,
    today: Day,
    kind: Explanation,
    p: Params,
    crown: Crown,
    line: Timeline,
}

fn simulate(seed: u64, sampler: &Sampler) -> (Simulated, ChaCha8Rng) {
    let mut rng = ChaCha8Rng::seed_from_u64(seed);
    let today = Day(20_500);
    let mut case = outline(&mut rng, today);
    let moved = case.moved_on.is_some();
    let weights = if moved {
        case.prior.moved
    } else {
        case.prior.settled
    };
    let kind = pick(&mut rng, weights);
    let z: [f64; DIMS] = std::array::from_fn(|_| StandardNormal.sample(&mut rng));
    let points: Points = z.map(|x| [x; WIDTH]);
    let season = Season::from_latitude(case.latitude);
    let looks = case.inspections.len();
    for k in 0..looks {
        let line = Timeline::of(&case, today, season.clone());
        let p = Params::of(kind, &points, &case.prior, sampler.normal(), line.window);
        let mut look = At { k, seen: None };
        run(kind, &line, &case, &p, &mut look);
        let (crown, t) = look.seen.expect("the look is on the line");
        let yellow = yellowing(kind, &line, &p, &crown, t)[0];
        count(&mut case.inspections[k], &crown, yellow, &mut rng);
    }
    let line = Timeline::of(&case, today, season);
    let p = Params::of(kind, &points, &case.prior, sampler.normal(), line.window);
    let crown = run(
        kind,
        &line,
        &case,
        &p,
        &mut At {
            k: usize::MAX,
            seen: None,
        },
    );
    (
        Simulated {
            case,
            today,
            kind,
            p,
            crown,
            line,
        },
        rng,
    )
}

struct At {
    k: usize,
    seen: Option<(Crown, f64)>,
}

impl Watch for At {
    fn look(&mut self, k: usize, t: f64, crown: &Crown, _: bool) -> bool {
        if k == self.k {
            self.seen = Some((crown.clone(), t));
        }
        true
    }
}

/// Dates, gaps and circumstances of a palm; the counts come later.
fn outline(rng: &mut ChaCha8Rng, today: Day) -> StemCase {
    let palm = Palm {
        full_crown: rng.random_bool(0.3).then(|| rng.random_range(8.0..120.0)),
        fronds_per_year: rng.random_bool(0.3).then(|| rng.random_range(6.0..40.0)),
        ..Palm::default()
    };
    let mut prior = Prior::of(&palm, None, &[]);
    prior.hang = match rng.random_range(0..3) {
        0 => Hang::UntilCut,
        1 => Hang::Falls { days: 7.0 },
        _ => Hang::Between {
            low: 30.0,
            high: 3650.0,
        },
    };
    let looks = rng.random_range(1..=5);
    let mut day = today.plus(-rng.random_range(0..20));
    let mut inspections = Vec::new();
    for _ in 0..looks {
        inspections.push(Inspection::blank(1, day));
        day = day.plus(-rng.random_range(20..120));
    }
    inspections.reverse();
    StemCase {
        prior,
        climate: None,
        latitude: Some(rng.random_range(-40.0..40.0)),
        moved_on: rng
            .random_bool(0.5)
            .then(|| today.plus(-rng.random_range(1..500))),
        last_cleaned_on: rng
            .random_bool(0.5)
            .then(|| inspections[0].date.plus(-rng.random_range(10..200))),
        inspections,
    }
}

fn pick(rng: &mut ChaCha8Rng, weights: [f64; 4]) -> Explanation {
    let mut left: f64 = rng.random();
    for kind in Explanation::ALL {
        left -= weights[kind.index()];
        if left < 0.0 {
            return kind;
        }
    }
    Explanation::Ageing
}

/// Fills a look with counts of the crown, leaves gaps, and sometimes cuts.
fn count(look: &mut Inspection, crown: &Crown, yellow: f64, rng: &mut ChaCha8Rng) {
    let live = noisy_live(crown.live[0], rng).round() as u32;
    let yellowing = negative_binomial(yellow, YELLOWING, rng);
    if rng.random_bool(0.9) {
        // a live count is green and yellowing together; where noise puts yellowing above it, it is all yellowing
        look.green = Some(live.saturating_sub(yellowing));
        look.yellowing = Some(yellowing);
    }
    look.brown = rng
        .random_bool(0.85)
        .then(|| negative_binomial(crown.brown[0], BROWN, rng));
    let new = crown.born[0] + SD_NEW * rng.sample::<f64, _>(StandardNormal);
    look.new_leaves = (rng.random_bool(0.3) && new > -0.5).then(|| new.round() as u32);
    if rng.random_bool(0.5) {
        look.removed.brown = look.brown;
    }
    if rng.random_bool(0.15) {
        look.removed.green = Some(rng.random_range(1..8));
    }
}

fn noisy_live(live: f64, rng: &mut ChaCha8Rng) -> f64 {
    Normal::new(live, sd_live(live))
        .unwrap()
        .sample(rng)
        .max(0.0)
}

fn negative_binomial(mean: f64, noise: CountNoise, rng: &mut ChaCha8Rng) -> u32 {
    let mean = mean.max(0.0) + noise.stray;
    let rate: f64 = Gamma::new(f64::from(noise.size), mean / f64::from(noise.size))
        .unwrap()
        .sample(rng);
    if rate <= 0.0 {
        0
    } else {
        Poisson::new(rate).unwrap().sample(rng) as u32
    }
}

/// Ranks in tenths.
#[derive(Default)]
struct Ranks {
    tenths: [u32; TENTHS],
}

impl Ranks {
    fn add(&mut self, rank: f64) {
        self.tenths[((rank * TENTHS as f64) as usize).min(TENTHS - 1)] += 1;
    }

    fn p_value(&self) -> f64 {
        let total: u32 = self.tenths.iter().sum();
        let want = f64::from(total) / TENTHS as f64;
        let chi: f64 = self
            .tenths
            .iter()
            .map(|n| (f64::from(*n) - want).powi(2) / want)
            .sum();
        ChiSquared::new(TENTHS as f64 - 1.0).unwrap().sf(chi)
    }
}

/// Weighted share of a reading's draws of one explanation (or all) whose value lies below the truth.
fn rank(
    reading: &Reading,
    kind: Option<Explanation>,
    value: impl Fn(&Params, usize) -> f64,
    truth: f64,
) -> f64 {
    let (mut below, mut all) = (0.0, 0.0);
    for row in reading
        .rows
        .iter()
        .filter(|row| kind.is_none_or(|k| k == row.kind))
    {
        for i in 0..WIDTH {
            all += row.weight[i];
            if value(&row.p, i) < truth {
                below += row.weight[i];
            }
        }
    }
    below / all
}

#[test]
fn the_reading_is_calibrated() {
    let mut sampler = Sampler::new(1024);
    let mut ranks: [Ranks; 7] = Default::default();
    let names = [
        "vigour",
        "shortfall K",
        "kept share q",
        "live",
        "yellowing",
        "brown on",
        "lost",
    ];
    let (mut said, mut was) = ([0.0; 4], [0.0; 4]);
    let mut doubt = [0.0; 4];
    for seed in 0..PALMS {
        let (palm, mut rng) = simulate(seed, &sampler);
        let reading = read(&palm.case, palm.today, &mut sampler);
        for k in 0..4 {
            let p = reading.probabilities[k];
            said[k] += p;
            doubt[k] += p * (1.0 - p);
        }
        was[palm.kind.index()] += 1.0;
        ranks[0].add(rank(&reading, None, |p, i| p.rate[i], palm.p.rate[0]));
        match palm.kind {
            Explanation::Hunger => ranks[1].add(rank(
                &reading,
                Some(palm.kind),
                |p, i| p.shortfall[i],
                palm.p.shortfall[0],
            )),
            Explanation::Move => ranks[2].add(rank(
                &reading,
                Some(palm.kind),
                |p, i| p.own[0][i],
                palm.p.own[0][0],
            )),
            _ => {}
        }
        for (slot, r) in ranks[3..]
            .iter_mut()
            .zip(forecast_ranks(&palm, &reading, &mut rng))
        {
            slot.add(r);
        }
    }
    for (name, ranks) in names.iter().zip(&ranks) {
        let p = ranks.p_value();
        println!("{name}: {:?} p = {p:.3}", ranks.tenths);
        assert!(
            p > 0.01,
            "{name}: ranks {:?} are not uniform, p = {p:.5}",
            ranks.tenths
        );
    }
    for k in 0..4 {
        let off = (said[k] - was[k]) / f64::max(doubt[k], 1.0).sqrt();
        println!(
            "{:?}: said {:.1}, was {}, {off:.2} standard deviations",
            Explanation::ALL[k],
            said[k],
            was[k]
        );
        assert!(
            off.abs() < 3.0,
            "{:?}: said {:.1}, was {}",
            Explanation::ALL[k],
            said[k],
            was[k]
        );
    }
}

/// Ranks of what is really counted on a later day in the distributions that the forecast is read from.
fn forecast_ranks(palm: &Simulated, reading: &Reading, rng: &mut ChaCha8Rng) -> [f64; 4] {
    let day = palm.today.plus(AHEAD);
    let mut crown = palm.crown.clone();
    advance(
        palm.kind,
        &palm.line,
        &palm.p,
        &mut crown,
        0.0,
        f64::from(AHEAD),
    );
    let yellow = yellowing(palm.kind, &palm.line, &palm.p, &crown, f64::from(AHEAD))[0];
    let crowns = reading.crowns(Cut::NONE, &[day]).remove(0);
    let yellows: Vec<_> = reading
        .rows
        .iter()
        .zip(&crowns)
        .map(|(row, c)| reading.yellow(row, c, day))
        .collect();
    let live = noisy_live(crown.live[0], rng);
    let lives = reading.noisy_live(&crowns);
    let (mut below, mut at) = (0.0, 0.0);
    for (value, weight) in reading.weigh(|r, i| lives[r][i]) {
        below += if value < live { weight } else { 0.0 };
        at += if value == live { weight } else { 0.0 };
    }
    // a count's rank is drawn within its own step (a live count has one only at none at all)
    let within: f64 = rng.random();
    let mut counted = |mean: f64, noise: CountNoise, mix: crate::quantile::CountMixture| {
        let n = f64::from(negative_binomial(mean, noise, rng));
        let (above, from) = (mix.at_least(n + 1.0), mix.at_least(n));
        1.0 - (above + rng.random::<f64>() * (from - above))
    };
    let all: f64 = reading.weigh(|_, _| 1.0).map(|d| d.1).sum();
    [
        (below + within * at) / all,
        counted(
            yellow,
            YELLOWING,
            reading.count(YELLOWING, |r, i| yellows[r][i]),
        ),
        counted(
            crown.brown[0],
            BROWN,
            reading.count(BROWN, |r, i| crowns[r].brown[i]),
        ),
        counted(
            crown.lost[0],
            BROWN,
            reading.count(BROWN, |r, i| crowns[r].lost[i]),
        ),
    ]
}
