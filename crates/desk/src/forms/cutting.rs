//! The form of the cutting log: one blade at work on one stem.
//!
//! Fields: `stem`, `off_green`, `off_yellowing`, `off_brown`, `off_stalks`, `started`, `ended` (date and hour on the
//! spot; an empty end is now), `crew`, `despite` (why, if the blade is not clean for this palm), `cut_notes`.

use super::field::{Fields, count_arg};
use super::{Trouble, Typed};
use crate::clock;
use care::clean::Ready;
use model::{Arg, BladeId, CutMade, Finding, Moment, PalmId, Severity, TakenOff};

/// No crew takes more off one stem; as for inspections.
const MOST_OFF: u32 = 1000;
/// A cut on one stem that takes longer than this is likely a slip, ms.
const LONG: i64 = 4 * 3_600_000;

/// What a cut is checked against.
pub struct AtPalm<'a> {
    /// The palm.
    pub palm: PalmId,
    /// Its stems.
    pub stems: u16,
    /// The blade.
    pub blade: BladeId,
    /// Whether that blade may go to that palm at a moment.
    pub ready: &'a dyn Fn(Moment) -> Ready,
    /// Reason code of a hold on the palm, at the time of the cut.
    pub held: &'a dyn Fn(Moment) -> Option<String>,
    /// The cut as it was recorded when this very form was sent before.
    pub sent: Option<&'a CutMade>,
    /// Now.
    pub now: Moment,
}

/// Checks the form of a cut; gives the cut and when it ended.
pub fn cut(typed: &Typed, at: &AtPalm) -> Result<(CutMade, Moment), Vec<Trouble>> {
    let mut fields = Fields::of(typed);
    let stem = stem(&mut fields, at.stems);
    let (started, ended) = times(&mut fields, at.now);
    if (at.held)(ended).is_some() {
        fields.refuse("", "form-cut-held");
    }
    let despite = despite(&mut fields, at, ended);
    let mut off = |name| fields.count(name, MOST_OFF);
    let off = TakenOff {
        green: off("off_green"),
        yellowing: off("off_yellowing"),
        brown: off("off_brown"),
        stalks: off("off_stalks"),
    };
    let cut = CutMade {
        palm: at.palm,
        stem,
        blade: at.blade,
        started,
        off,
        crew: fields.text("crew"),
        despite,
        notes: fields.text("cut_notes"),
        extra: Default::default(),
    };
    fields.or((cut, ended))
}

/// Whether a blade may go to a palm without a word.
pub fn is_clean(ready: &Ready) -> bool {
    matches!(ready, Ready::Clean { .. } | Ready::SamePalm)
}

fn stem(fields: &mut Fields, stems: u16) -> u16 {
    let stem = fields.count("stem", u32::from(u16::MAX)).unwrap_or(1);
    if !(1..=u32::from(stems)).contains(&stem) {
        fields.add(
            "stem",
            Finding::new("form-cut-stem-unknown", Severity::Refuse)
                .with("stems", count_arg(stems.into())),
        );
    }
    u16::try_from(stem).unwrap_or(1)
}

/// When it began and ended: neither in the future, and not the wrong way round.
fn times(fields: &mut Fields, now: Moment) -> (Option<Moment>, Moment) {
    let started = past(fields, "started", now);
    let ended = past(fields, "ended", now).unwrap_or(now);
    if let Some(started) = started {
        if started > ended {
            fields.refuse("ended", "form-cut-ends-before");
        } else if ended.0 - started.0 > LONG {
            let hours = (ended.0 - started.0) as f64 / 3_600_000.0;
            let finding = Finding::new("form-cut-long", Severity::Caution);
            fields.ask("ended", finding.with("hours", Arg::Number(hours)));
        }
    }
    (started, ended)
}

/// A date and hour that is not in the future; a minute's grace, because fields show whole minutes.
pub(super) fn past(fields: &mut Fields, name: &'static str, now: Moment) -> Option<Moment> {
    let text = fields.some(name)?;
    match clock::read(text) {
        Some(moment) if moment.0 > now.0 + 60_000 => {
            fields.refuse(name, "form-moment-in-future");
            None
        }
        Some(moment) if moment.day().ymd().0 < 1800 => {
            fields.refuse(name, "form-date-too-old");
            None
        }
        Some(moment) => Some(moment.min(now)),
        None => {
            let finding = Finding::new("form-moment-not-read", Severity::Refuse);
            fields.add(name, finding.with("found", super::field::text_arg(text)));
            None
        }
    }
}

/// The reason for cutting with a blade that is not clean for this palm. A clean blade needs none, and none is kept. A
/// form sent again is judged as it was: by now its own cut is in the log.
fn despite(fields: &mut Fields, at: &AtPalm, ended: Moment) -> String {
    let despite = fields.text("despite");
    if let Some(sent) = at.sent {
        return if sent.despite.is_empty() {
            String::new()
        } else {
            despite
        };
    }
    let ready = (at.ready)(ended);
    if is_clean(&ready) {
        return String::new();
    }
    if despite.is_empty() {
        let code = match ready {
            Ready::Blocked { .. } => "form-cut-blocked",
            _ => "form-cut-not-clean",
        };
        fields.refuse("despite", code);
    }
    despite
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::codes;
    use uuid::Uuid;

    const NOW: &str = "2026-05-04T14:00";

    fn check(
        ready: &Ready,
        held: bool,
        pairs: &[(&str, &str)],
    ) -> Result<(CutMade, Moment), Vec<Trouble>> {
        let at = AtPalm {
            palm: PalmId(Uuid::from_u128(1)),
            stems: 2,
            blade: BladeId(Uuid::from_u128(2)),
            ready: &|_| ready.clone(),
            sent: None,
            held: &|_| held.then(|| "nest".to_owned()),
            now: clock::read(NOW).unwrap(),
        };
        cut(&Typed::of(pairs.to_vec()), &at)
    }

    fn blocked() -> Ready {
        Ready::Blocked {
            palm: PalmId(Uuid::from_u128(9)),
            at: Moment(0),
            reason: "wilt-suspect".into(),
        }
    }

    #[test]
    fn a_clean_blade_needs_no_reason_and_an_empty_end_is_now() {
        let pairs = [
            ("off_brown", "7"),
            ("started", "2026-05-04T13:50"),
            ("despite", "x"),
        ];
        let (cut, ended) = check(&Ready::SamePalm, false, &pairs).unwrap();
        assert_eq!(Some(ended), clock::read(NOW));
        assert_eq!(cut.started, clock::read("2026-05-04T13:50"));
        assert_eq!((cut.off.brown, cut.off.green, cut.stem), (Some(7), None, 1));
        assert_eq!(cut.despite, "", "no reason is kept where none was needed");
    }

    #[test]
    fn a_blocked_blade_passes_with_a_reason_and_the_reason_is_kept() {
        assert_eq!(
            codes(check(&blocked(), false, &[])),
            [("despite", "form-cut-blocked")]
        );
        let (cut, _) = check(&blocked(), false, &[("despite", "storm over the path")]).unwrap();
        assert_eq!(cut.despite, "storm over the path");
        for ready in [
            Ready::NothingKnown,
            Ready::UnknownCleaning,
            Ready::Short {
                missing_min: Some(3.0),
            },
            Ready::NotCleaned { last: None },
        ] {
            assert_eq!(
                codes(check(&ready, false, &[])),
                [("despite", "form-cut-not-clean")]
            );
        }
    }

    #[test]
    fn a_held_palm_is_not_cut_whatever_the_reason() {
        let said = check(&Ready::SamePalm, true, &[("despite", "the owner wants it")]);
        assert_eq!(codes(said), [("", "form-cut-held")]);
    }

    #[test]
    fn times_are_past_and_in_their_order() {
        let of = |pairs: &[(&str, &str)]| codes(check(&Ready::SamePalm, false, pairs));
        assert_eq!(
            of(&[("ended", "2026-05-04T15:00")]),
            [("ended", "form-moment-in-future")]
        );
        assert_eq!(
            of(&[("ended", "noon")]),
            [("ended", "form-moment-not-read")]
        );
        let back = [
            ("started", "2026-05-04T13:00"),
            ("ended", "2026-05-04T12:00"),
        ];
        assert_eq!(of(&back), [("ended", "form-cut-ends-before")]);
        let long = [
            ("started", "2026-05-04T02:00"),
            ("ended", "2026-05-04T12:00"),
        ];
        assert_eq!(of(&long), [("ended", "form-cut-long")]);
        assert_eq!(of(&[("stem", "3")]), [("stem", "form-cut-stem-unknown")]);
        assert_eq!(of(&[("stem", "0")]), [("stem", "form-cut-stem-unknown")]);
        assert_eq!(
            of(&[("off_green", "many")]),
            [("off_green", "form-count-not-whole")]
        );
    }
}
