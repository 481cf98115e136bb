//! The forms of cleaning: one cleaning of one or more blades, a timer for it, and a bath that is mixed.
//!
//! Fields of a cleaning: one box `blade-<id>` a blade, `with` (a bath or a mix, see [`Offer`], or `own` with `own_agent`
//! and `strength_pct`), `contact_min`, `brushed` (`yes`, `no` or nothing), `done` (date and hour; empty is now), `by`;
//! from the timer `soaked_from` (milliseconds since 1970), which gives the minutes of contact.
//! Fields of a bath: `with`, `own_agent`, `strength_pct`, `kit`, `mixed`.

use super::cutting::past;
use super::field::Fields;
use super::offers::Offer;
use super::{Trouble, Typed};
use model::{Arg, Bath, BladeId, Cleaning, Finding, Moment, Severity};

/// A contact longer than this is likely a slip, minutes: a day.
const LONGEST: f64 = 1440.0;

/// What a cleaning is checked against.
pub struct AtBath<'a> {
    /// The blades on the rack, in the order of the page.
    pub blades: &'a [BladeId],
    /// What may be cleaned with.
    pub offers: &'a [Offer],
    /// Now.
    pub now: Moment,
}

/// Blades in contact, with the time running.
#[derive(Clone, PartialEq, Debug)]
pub struct Soaking {
    /// The blades.
    pub blades: Vec<BladeId>,
    /// Since when.
    pub from: Moment,
    /// How long they are to stay, minutes.
    pub minutes: f64,
}

/// Name of the box of a blade.
pub fn blade_box(blade: BladeId) -> String {
    format!("blade-{}", blade.0)
}

/// Name of the field with the id of the entry that the cleaning of a blade will become.
pub fn blade_entry(blade: BladeId) -> String {
    format!("entry-{}", blade.0)
}

/// Checks the form of a cleaning; gives one cleaning a blade, and when they ended.
pub fn cleanings(typed: &Typed, at: &AtBath) -> Result<(Vec<Cleaning>, Moment), Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let blades = ticked(&mut fields, typed, at.blades);
    let with = with(&mut fields, at.offers);
    let typed_min = fields.number("contact_min", 0.0..=LONGEST);
    let done = past(&mut fields, "done", at.now).unwrap_or(at.now);
    let contact_min = soaked(typed, done).or(typed_min);
    let one = |blade| Cleaning {
        blade,
        agent: with.agent.clone(),
        strength_pct: with.strength_pct,
        contact_min,
        brushed: yes_or_no(typed.get("brushed")),
        bath: with.bath,
        by: typed.get("by").to_owned(),
        extra: Default::default(),
    };
    let all = blades.into_iter().map(one).collect();
    fields.or((all, done))
}

/// Checks the form when the time is to run: as for a cleaning, and it must be known for how long. Minutes left empty
/// are those of the table for that mix.
pub fn soaking(typed: &Typed, at: &AtBath) -> Result<Soaking, Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let blades = ticked(&mut fields, typed, at.blades);
    let with = with(&mut fields, at.offers);
    let minutes = fields.number("contact_min", 0.0..=LONGEST).or(with.minutes);
    if minutes.is_none() && fields.some("contact_min").is_none() {
        fields.refuse("contact_min", "form-clean-how-long");
    }
    fields.or(Soaking {
        blades,
        from: at.now,
        minutes: minutes.unwrap_or(0.0),
    })
}

/// Checks the form of a bath; gives it and when it was mixed.
pub fn bath(typed: &Typed, at: &AtBath) -> Result<(Bath, Moment), Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let with = with(&mut fields, at.offers);
    let mixed = past(&mut fields, "mixed", at.now).unwrap_or(at.now);
    let bath = Bath {
        agent: with.agent,
        strength_pct: with.strength_pct,
        kit: fields.text("kit"),
    };
    fields.or((bath, mixed))
}

fn ticked(fields: &mut Fields, typed: &Typed, blades: &[BladeId]) -> Vec<BladeId> {
    let ticked = |blade: &&BladeId| !typed.get(&blade_box(**blade)).is_empty();
    let blades: Vec<BladeId> = blades.iter().filter(ticked).copied().collect();
    if blades.is_empty() {
        fields.refuse("blades", "form-clean-no-blade");
    }
    blades
}

/// What it is cleaned with: one of the offers, or the keeper's own word after a word, for nobody can judge that one.
/// Nothing said stays nothing said, after a word.
fn with(fields: &mut Fields, offers: &[Offer]) -> Offer {
    let chosen = fields.text("with");
    if let Some(offer) = offers.iter().find(|offer| offer.value == chosen) {
        return offer.clone();
    }
    if !matches!(chosen.as_str(), "" | "own") {
        fields.refuse("with", "form-clean-bath-gone");
        return Offer::default();
    }
    let own = Offer {
        agent: fields.text("own_agent"),
        strength_pct: fields.number("strength_pct", 0.0..=100.0),
        ..Offer::default()
    };
    if own.agent.is_empty() {
        let finding = Finding::new("form-clean-no-agent", Severity::Caution);
        fields.ask("with", finding);
    } else if !offers.iter().any(|offer| offer.agent == own.agent) {
        let finding = Finding::new("form-clean-own-agent", Severity::Caution);
        fields.ask(
            "own_agent",
            finding.with("agent", Arg::Text(own.agent.clone())),
        );
    }
    own
}

/// Minutes from the start of a timer to the end, whole tenths, rounded down: what is not sure does not count.
fn soaked(typed: &Typed, done: Moment) -> Option<f64> {
    let from: i64 = typed.get("soaked_from").parse().ok()?;
    let minutes = (done.0 - from) as f64 / 60_000.0;
    (0.0..=LONGEST)
        .contains(&minutes)
        .then(|| (minutes * 10.0).floor() / 10.0)
}

/// A box that was ticked, one that was not, and a question that was not asked.
fn yes_or_no(text: &str) -> Option<bool> {
    match text {
        "yes" => Some(true),
        "no" => Some(false),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::clock;
    use crate::forms::codes;
    use model::EntryId;
    use uuid::Uuid;

    fn blade(n: u128) -> BladeId {
        BladeId(Uuid::from_u128(n))
    }

    fn now() -> Moment {
        clock::read("2026-05-04T14:00").unwrap()
    }

    fn under<T>(check: impl Fn(&AtBath) -> T) -> T {
        let offer = |value: &str, bath| Offer {
            value: value.into(),
            agent: "bleach".into(),
            strength_pct: Some(25.0),
            bath,
            minutes: Some(10.0),
            ..Offer::default()
        };
        check(&AtBath {
            blades: &[blade(1), blade(2)],
            offers: &[
                offer("mix:b25", None),
                offer("bath:7", Some(EntryId(Uuid::from_u128(7)))),
            ],
            now: now(),
        })
    }

    fn check(pairs: &[(&str, &str)]) -> Result<(Vec<Cleaning>, Moment), Vec<Trouble>> {
        under(|at| cleanings(&Typed::of(pairs.to_vec()), at))
    }

    #[test]
    fn one_cleaning_a_ticked_blade_with_what_the_bath_holds() {
        let second = blade_box(blade(2));
        let pairs = [
            (second.as_str(), "yes"),
            ("with", "bath:7"),
            ("contact_min", "7,5"),
            ("brushed", "no"),
        ];
        let (all, done) = check(&pairs).unwrap();
        assert_eq!((all.len(), done), (1, now()));
        assert_eq!((all[0].blade, all[0].agent.as_str()), (blade(2), "bleach"));
        assert_eq!(
            (all[0].contact_min, all[0].brushed),
            (Some(7.5), Some(false))
        );
        assert_eq!(all[0].strength_pct, Some(25.0));
        assert_eq!(all[0].bath, Some(EntryId(Uuid::from_u128(7))));
    }

    #[test]
    fn what_was_not_said_stays_unsaid_and_what_makes_no_sense_is_refused() {
        let first = blade_box(blade(1));
        let with = |more: &[(&str, &str)]| {
            let mut pairs = vec![(first.as_str(), "yes")];
            pairs.extend_from_slice(more);
            check(&pairs)
        };
        assert_eq!(
            codes(check(&[("with", "mix:b25")])),
            [("blades", "form-clean-no-blade")]
        );
        assert_eq!(codes(with(&[])), [("with", "form-clean-no-agent")]);
        assert_eq!(
            codes(with(&[("with", "bath:9")])),
            [("with", "form-clean-bath-gone")]
        );
        let own = [("with", "own"), ("own_agent", "vinegar")];
        assert_eq!(codes(with(&own)), [("own_agent", "form-clean-own-agent")]);
        let (all, _) = with(&[("confirm-form-clean-no-agent", "yes")]).unwrap();
        let unsaid = (all[0].agent.as_str(), all[0].brushed, all[0].contact_min);
        assert_eq!(
            unsaid,
            ("", None, None),
            "the table's minutes are not what was done"
        );
        let odd = with(&[
            ("with", "own"),
            ("own_agent", "bleach"),
            ("strength_pct", "120"),
        ]);
        assert_eq!(codes(odd), [("strength_pct", "form-number-out-of-range")]);
        let odd = with(&[("with", "mix:b25"), ("contact_min", "-1")]);
        assert_eq!(codes(odd), [("contact_min", "form-number-out-of-range")]);
    }

    #[test]
    fn a_timer_runs_as_long_as_the_table_or_the_keeper_says() {
        let first = blade_box(blade(1));
        let with = |more: &[(&str, &str)]| {
            let mut pairs = vec![(first.as_str(), "yes")];
            pairs.extend_from_slice(more);
            under(|at| soaking(&Typed::of(pairs.clone()), at))
        };
        assert_eq!(with(&[("with", "mix:b25")]).unwrap().minutes, 10.0);
        assert_eq!(
            with(&[("with", "mix:b25"), ("contact_min", "12")])
                .unwrap()
                .minutes,
            12.0
        );
        let own = [("with", "own"), ("own_agent", "bleach")];
        assert_eq!(codes(with(&own)), [("contact_min", "form-clean-how-long")]);
    }

    #[test]
    fn a_timer_gives_the_minutes_rounded_down() {
        let first = blade_box(blade(1));
        let with = |from: i64| {
            let from = from.to_string();
            let pairs = [
                (first.as_str(), "yes"),
                ("with", "mix:b25"),
                ("soaked_from", &from),
            ];
            check(&pairs).unwrap().0[0].contact_min
        };
        assert_eq!(with(now().0 - 599_999), Some(9.9));
        assert_eq!(with(now().0 - 600_000), Some(10.0));
        assert_eq!(
            with(now().0 + 1000),
            None,
            "a start after the end says nothing"
        );
    }

    #[test]
    fn a_bath_knows_when_it_was_mixed() {
        let mix = |pairs: &[(&str, &str)]| under(|at| bath(&Typed::of(pairs.to_vec()), at));
        let pairs = [("with", "mix:b25"), ("mixed", "2026-05-04T12:30")];
        let (bath, mixed) = mix(&pairs).unwrap();
        assert_eq!(
            (bath.agent.as_str(), bath.strength_pct),
            ("bleach", Some(25.0))
        );
        assert_eq!(Some(mixed), clock::read("2026-05-04T12:30"));
        assert_eq!(mix(&[("with", "mix:b25")]).unwrap().1, now());
        let ahead = [("with", "mix:b25"), ("mixed", "2026-05-05T12:30")];
        assert_eq!(codes(mix(&ahead)), [("mixed", "form-moment-in-future")]);
    }
}
