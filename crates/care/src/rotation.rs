//! Blade sets in rotation: one cuts while the others soak. `docs/blades.md` has the model with an example.
//!
//! One crew cuts palms one after the other in the order given. A set that has cut is dirty; a cut that needs a clean
//! blade takes the clean set that has been ready longest and waits if there is none, and the dirty one is brushed, soaks
//! and is rinsed beside the cutting, by somebody else. A cut that needs no clean blade goes on with the set in hand.
//! All sets are clean at the start. With the order given no schedule ends sooner: sets are alike, so the one that is
//! ready first is never the wrong one, and going on with a dirty set leaves every other one where it was.

#[cfg(test)]
mod tests;

/// One cut of a round.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Job {
    /// How long it takes, minutes.
    pub minutes: f64,
    /// Whether the blade must be clean before it.
    pub needs_clean: bool,
}

/// What the crew has, and how a set is cleaned.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Kit {
    /// Blade sets.
    pub sets: usize,
    /// Brushing before the soak, minutes.
    pub brush_min: f64,
    /// In the bath, minutes.
    pub soak_min: f64,
    /// Rinsing and drying after it, minutes.
    pub rinse_min: f64,
    /// Sets that the bath holds at a time; `None`: all.
    pub bath_holds: Option<usize>,
    /// A bath serves so many soaks; `None`: any number.
    pub bath_serves: Option<usize>,
    /// A bath is changed after so many minutes; `None`: never.
    pub bath_lasts_min: Option<f64>,
}

/// One cut in the schedule. Minutes count from the start of the round.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Turn {
    /// The job, by its place in the list.
    pub job: usize,
    /// The set that cuts, from 0.
    pub set: usize,
    /// Minutes waited for a clean set before it.
    pub waited: f64,
    /// It starts.
    pub start: f64,
    /// It ends.
    pub end: f64,
}

/// One cleaning in the schedule.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Soak {
    /// The set, from 0.
    pub set: usize,
    /// It was laid down dirty.
    pub from: f64,
    /// It goes into the bath.
    pub into_bath: f64,
    /// It comes out.
    pub out_of_bath: f64,
    /// It is clean and in reach.
    pub ready: f64,
    /// The bath it lies in, from 0: a new one is mixed when the old one is spent.
    pub bath: usize,
}

/// The schedule of a round.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Rotation {
    /// Cuts in their order.
    pub turns: Vec<Turn>,
    /// Cleanings in the order in which sets were laid down, those after the last cut, too.
    pub soaks: Vec<Soak>,
    /// Minutes the crew waits for clean sets.
    pub waiting_min: f64,
    /// Minutes from the start to the end of the last cut.
    pub makespan_min: f64,
    /// Minutes until every set is clean again.
    pub all_clean_min: f64,
    /// Baths mixed.
    pub baths: usize,
}

/// The schedule that ends soonest. `None` without a set, with a bath that holds or serves none, or with minutes that
/// are no minutes.
pub fn rotation(jobs: &[Job], kit: &Kit) -> Option<Rotation> {
    let minutes = [kit.brush_min, kit.soak_min, kit.rinse_min];
    let times = jobs.iter().map(|job| job.minutes).chain(minutes);
    let sound = times.into_iter().all(|min| min.is_finite() && min >= 0.0);
    let lasts = kit.bath_lasts_min.is_none_or(|min| min > 0.0);
    if !sound || !lasts || kit.sets == 0 || kit.bath_holds == Some(0) || kit.bath_serves == Some(0)
    {
        return None;
    }
    let mut yard = Yard::new(kit);
    for (job, cut) in jobs.iter().enumerate() {
        yard.cut(job, cut);
    }
    yard.lay_down();
    Some(yard.done())
}

/// The fewest sets with which nobody waits. `None` as [`rotation`] says; `kit.sets` does not matter.
pub fn fewest_sets(jobs: &[Job], kit: &Kit) -> Option<usize> {
    let idle = |sets: usize| Some(rotation(jobs, &Kit { sets, ..*kit })?.waiting_min);
    // with a set for every cut nobody waits, and one more set never makes anybody wait longer
    let (mut low, mut high) = (1, jobs.len().max(1));
    while low < high {
        let middle = low.midpoint(high);
        if idle(middle)? > 0.0 {
            low = middle + 1;
        } else {
            high = middle;
        }
    }
    idle(low).map(|_| low)
}

/// The round as it goes.
struct Yard<'a> {
    kit: &'a Kit,
    now: f64,
    /// When each set is clean; `None` for the one in hand.
    ready: Vec<Option<f64>>,
    /// The set in hand and whether it has cut.
    hand: Option<(usize, bool)>,
    /// When each place of the bath is free.
    places: Vec<f64>,
    bath: Bath,
    out: Rotation,
}

/// The bath in use.
#[derive(Default)]
struct Bath {
    number: usize,
    mixed: Option<f64>,
    served: usize,
}

impl<'a> Yard<'a> {
    fn new(kit: &'a Kit) -> Yard<'a> {
        Yard {
            kit,
            now: 0.0,
            ready: vec![Some(0.0); kit.sets],
            hand: None,
            places: vec![0.0; kit.bath_holds.unwrap_or(kit.sets).min(kit.sets)],
            bath: Bath::default(),
            out: Rotation::default(),
        }
    }

    fn cut(&mut self, job: usize, cut: &Job) {
        let goes_on = matches!(self.hand, Some((_, dirty)) if !(dirty && cut.needs_clean));
        if !goes_on {
            self.lay_down();
        }
        let before = self.now;
        let set = match self.hand {
            Some((set, _)) => set,
            None => self.take_up(),
        };
        let (start, end) = (self.now, self.now + cut.minutes);
        let waited = start - before;
        self.out.waiting_min += waited;
        self.out.turns.push(Turn {
            job,
            set,
            waited,
            start,
            end,
        });
        self.now = end;
        self.out.makespan_min = end;
        self.hand = Some((set, true));
    }

    /// Takes the set that is ready first, waiting for it if need be.
    fn take_up(&mut self) -> usize {
        let sets = self.ready.iter().enumerate();
        let clean = sets.filter_map(|(set, ready)| Some((set, (*ready)?)));
        // one set at the least is not in hand: the hand is empty
        let first = clean.min_by(|a, b| a.1.total_cmp(&b.1).then(a.0.cmp(&b.0)));
        let (set, ready) = first.unwrap_or((0, self.now));
        self.now = self.now.max(ready);
        self.ready[set] = None;
        self.hand = Some((set, false));
        set
    }

    /// Lays the set in hand down: brushed, into the bath as soon as there is a place, rinsed.
    fn lay_down(&mut self) {
        let Some((set, _)) = self.hand.take() else {
            return;
        };
        let from = self.now;
        let free = self.places.iter_mut().min_by(|a, b| a.total_cmp(b));
        let mut into_bath = from + self.kit.brush_min;
        if let Some(place) = free {
            into_bath = into_bath.max(*place);
            *place = into_bath + self.kit.soak_min;
        }
        let out_of_bath = into_bath + self.kit.soak_min;
        let ready = out_of_bath + self.kit.rinse_min;
        let bath = self.bath.take_in(into_bath, out_of_bath, self.kit);
        self.ready[set] = Some(ready);
        self.out.all_clean_min = self.out.all_clean_min.max(ready);
        self.out.soaks.push(Soak {
            set,
            from,
            into_bath,
            out_of_bath,
            ready,
            bath,
        });
    }

    fn done(self) -> Rotation {
        let mut out = self.out;
        out.baths = out.soaks.last().map_or(0, |soak| soak.bath + 1);
        out
    }
}

impl Bath {
    /// The number of the bath for a soak; a new one if the old one would be spent before the soak ends.
    fn take_in(&mut self, from: f64, to: f64, kit: &Kit) -> usize {
        let mixed = *self.mixed.get_or_insert(from);
        let old = kit.bath_lasts_min.is_some_and(|lasts| to - mixed > lasts) && self.served > 0;
        let used = kit.bath_serves.is_some_and(|serves| self.served >= serves);
        if old || used {
            *self = Bath {
                number: self.number + 1,
                mixed: Some(from),
                served: 0,
            };
        }
        self.served += 1;
        self.number
    }
}
