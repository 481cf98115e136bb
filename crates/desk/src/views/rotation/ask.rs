//! The question as it was typed, and the round that it means.

use crate::blades::{Leg, bath_rules, jobs};
use crate::forms::mixes;
use crate::office::Office;
use crate::rotating::{Needed, RoundCut, alike, figure, needed};
use crate::views::said::Speaker;
use care::rotation::Kit;
use model::state::PalmRecord;
use std::collections::BTreeMap;

/// More palms than this are no round for one crew.
pub const MOST_PALMS: usize = 500;
const MOST_SETS: f64 = 50.0;
const MOST_MINUTES: f64 = 480.0;

/// The fields of the form as they were typed.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Question {
    /// Something was asked; else the page only shows the form.
    pub asked: bool,
    /// `site:` and the grounds; empty: any palms.
    pub site: String,
    /// How many palms.
    pub palms: String,
    /// Minutes of cutting for each.
    pub minutes: String,
    /// Blade sets.
    pub sets: String,
    /// Value of the mix as `forms::mixes` has it; empty: something else.
    pub mix: String,
    /// Minutes of soak; empty: what the mix asks for.
    pub soak: String,
    /// Minutes of brushing.
    pub brush: String,
    /// Sets that the bath holds; empty: all.
    pub holds: String,
}

/// A field that is wrong, and what is wrong with it.
#[derive(Clone, PartialEq, Debug)]
pub struct Trouble {
    /// Name of the field.
    pub field: &'static str,
    /// In words.
    pub text: String,
}

/// A round that can be planned.
pub(super) struct Round {
    pub cuts: Vec<RoundCut>,
    pub kit: Kit,
    /// The palms are of the register.
    pub registered: bool,
    /// Palms on hold that were left out.
    pub left_out: usize,
    /// There were more palms than can be planned.
    pub cut_short: bool,
    /// The mix, if one was chosen.
    pub needed: Option<Needed>,
    /// Minutes of soak, if they were typed.
    pub own_soak: Option<f64>,
}

/// Grounds with palms that stand: the value of the choice, and its words.
pub(super) fn sites(speaker: &Speaker, office: &Office) -> Vec<(String, String)> {
    let state = office.state();
    let mut counts: BTreeMap<&str, i64> = BTreeMap::new();
    for record in state.standing() {
        *counts.entry(&record.palm.site).or_default() += 1;
    }
    let choice = |(site, n): (&str, i64)| {
        let name = match site {
            "" => speaker.say("rotation-no-site"),
            site => site.to_owned(),
        };
        let args = [("site", name.into()), ("n", n.into())];
        (format!("site:{site}"), speaker.text("rotation-site", &args))
    };
    counts.into_iter().map(choice).collect()
}

/// Reads the question. `None`: nothing was asked.
pub(super) fn round(
    speaker: &Speaker,
    office: &Office,
    question: &Question,
) -> Option<Result<Round, Vec<Trouble>>> {
    question.asked.then(|| {
        let mut read = Read {
            speaker,
            troubles: Vec::new(),
        };
        let site = question.site.strip_prefix("site:");
        let most = MOST_PALMS as f64;
        let palms = read.number("palms", &question.palms, 1.0, most, site.is_none());
        let minutes = read.number("minutes", &question.minutes, 0.5, MOST_MINUTES, true);
        let sets = read.number("sets", &question.sets, 1.0, MOST_SETS, true);
        let own_soak = read.number("soak", &question.soak, 0.0, MOST_MINUTES, false);
        let brush = read.number("brush", &question.brush, 0.0, MOST_MINUTES, false);
        let holds = read.number("holds", &question.holds, 1.0, MOST_SETS, false);
        let needed = of_mix(&question.mix);
        let Some(soak) = own_soak.or(needed.as_ref().map(|n| n.minutes)) else {
            if question.soak.trim().is_empty() {
                read.trouble("mix", speaker.say("rotation-bad-mix"));
            }
            return Err(read.troubles);
        };
        if !read.troubles.is_empty() {
            return Err(read.troubles);
        }
        let mut kit = bath_rules(sets.unwrap_or(1.0) as usize, soak);
        kit.brush_min = brush.unwrap_or(kit.brush_min);
        kit.bath_holds = holds.map(|n| n as usize);
        let minutes = minutes.unwrap_or_default();
        let (palms, plain) = (palms.map(|n| n as usize), site.is_none());
        let (cuts, left_out, cut_short) = match site {
            None => (alike(palms.unwrap_or_default(), minutes), 0, false),
            Some(site) => on_site(office, site, palms.unwrap_or(MOST_PALMS), minutes),
        };
        if cuts.is_empty() {
            read.trouble("site", speaker.say("rotation-nobody"));
            return Err(read.troubles);
        }
        Ok(Round {
            cuts,
            kit,
            registered: !plain,
            left_out,
            cut_short: cut_short && palms.is_none(),
            needed,
            own_soak,
        })
    })
}

/// The soak of a mix by its value.
fn of_mix(value: &str) -> Option<Needed> {
    let mix = mixes().into_iter().find(|mix| mix.value == value)?;
    needed(&mix.agent, mix.strength_pct, None).ok()
}

/// The palms of grounds that may be cut today, in the order of their tags; how many are on hold; whether there are more.
fn on_site(office: &Office, site: &str, most: usize, minutes: f64) -> (Vec<RoundCut>, usize, bool) {
    let (state, today) = (office.state(), office.today());
    let here = state.standing().filter(|r| r.palm.site == site);
    let (held, mut free): (Vec<&PalmRecord>, Vec<&PalmRecord>) = here
        .map(|record| &**record)
        .partition(|record| record.holds_on(today).next().is_some());
    free.sort_by(|a, b| a.palm.tag.cmp(&b.palm.tag));
    let more = free.len() > most;
    free.truncate(most);
    let leg = |record: &&PalmRecord| Leg {
        palm: record.id,
        minutes,
    };
    let legs: Vec<Leg> = free.iter().map(leg).collect();
    let cut = |(job, record): (_, &&PalmRecord)| RoundCut {
        tag: record.palm.tag.clone(),
        job,
    };
    let cuts = jobs(office, &legs)
        .into_iter()
        .zip(&free)
        .map(cut)
        .collect();
    (cuts, held.len(), more)
}

/// Reads fields and gathers what is wrong with them.
struct Read<'a> {
    speaker: &'a Speaker,
    troubles: Vec<Trouble>,
}

impl Read<'_> {
    fn trouble(&mut self, field: &'static str, text: String) {
        self.troubles.push(Trouble { field, text });
    }

    /// A number with a decimal point or comma; counts must be whole. `None` with a trouble, or empty where that is allowed.
    fn number(
        &mut self,
        field: &'static str,
        typed: &str,
        low: f64,
        high: f64,
        needed: bool,
    ) -> Option<f64> {
        let typed = typed.trim().replace(',', ".");
        if typed.is_empty() && !needed {
            return None;
        }
        let whole = matches!(field, "palms" | "sets" | "holds");
        let fits = |x: &f64| (low..=high).contains(x) && (!whole || x.fract() == 0.0);
        let found = typed.parse::<f64>().ok().filter(fits);
        if found.is_none() {
            let name = self.speaker.say(&format!("rotation-{field}"));
            let end = |x: f64| figure(x).into();
            let args = [
                ("field", name.into()),
                ("low", end(low)),
                ("high", end(high)),
            ];
            let text = self.speaker.text("rotation-bad-number", &args);
            self.trouble(field, text);
        }
        found
    }
}
