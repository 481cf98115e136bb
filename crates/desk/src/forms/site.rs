//! The form of a site: whose it is, where one comes in, when it may be worked, what its palms are judged by.
//!
//! Fields: `site_name` (a new site only), `owner`, `lat`, `lon` (the gate), rows `hours_1`.. and `closed_1`.. and
//! `feeding_1`.. (see [`super::rows`]), `soil`, `coastal`, `weevil_area` (`yes`, `no` or nothing), `line_kv`, `tidy`,
//! `limit`, `notes`. Empty is unknown.

use super::field::{Fields, text_arg};
use super::inspection::MOST_FRONDS;
use super::palm::{position, with_pasted_position};
use super::rows;
use super::{Trouble, Typed};
use model::{Arg, Finding, Severity, Site};
use std::hash::{DefaultHasher, Hash, Hasher};

/// Longest name of a site or a crew, characters.
pub const LONGEST_NAME: usize = 200;
/// Highest voltage to ground of a line in service, kV; as in the office.
const MOST_KV: f64 = 1200.0;

/// What the form is checked against.
pub struct AtSite<'a> {
    /// The name of the site that is described; `None`: a new one, the form names it.
    pub name: Option<&'a str>,
    /// How it is described so far.
    pub before: Option<&'a Site>,
    /// Whether a site of this name is described already.
    pub taken: &'a dyn Fn(&str) -> bool,
}

/// Checks the form. Columns of an imported row that the form does not show are kept.
pub fn site(typed: &Typed, at: &AtSite) -> Result<Site, Vec<Trouble>> {
    let typed = with_pasted_position(typed, "lat", "lon");
    let mut fields = Fields::of(&typed);
    let name = match at.name {
        Some(name) => name.to_owned(),
        None => new_name(&mut fields, "site_name", at.taken),
    };
    let site = Site {
        name,
        owner: fields.text("owner"),
        gate: position(&mut fields, "lat", "lon"),
        hours: rows::hours(&mut fields, &typed, &rows::HOURS),
        closed: rows::closed(&mut fields, &typed),
        soil: fields.text("soil"),
        coastal: yes_or_no(&mut fields, "coastal"),
        weevil_area: yes_or_no(&mut fields, "weevil_area"),
        line_kv: fields.number("line_kv", 0.0..=MOST_KV),
        no_feeding: rows::feeding(&mut fields, &typed),
        tidy: fields.count("tidy", MOST_FRONDS),
        limit: fields.count("limit", MOST_FRONDS),
        notes: fields.text("notes"),
        extra: at.before.map(|b| b.extra.clone()).unwrap_or_default(),
    };
    if let (Some(tidy), Some(limit)) = (site.tidy, site.limit)
        && tidy > limit
    {
        let finding = Finding::new("form-site-tidy-beyond-limit", Severity::Refuse);
        fields.add("limit", finding.with("tidy", Arg::Count(tidy.into())));
    }
    check_meanwhile(&mut fields, at, &site);
    fields.or(site)
}

/// The name of a new site or crew: one line, not too long, not there already.
pub(super) fn new_name(
    fields: &mut Fields,
    field: &'static str,
    taken: &dyn Fn(&str) -> bool,
) -> String {
    let name = fields.text(field);
    if name.is_empty() {
        fields.refuse(field, "form-name-missing");
    } else if name.chars().count() > LONGEST_NAME
        || name.chars().any(char::is_control)
        // "." and ".." would be swallowed by the address line of a browser
        || [".", ".."].contains(&name.as_str())
    {
        let most = Arg::Count(LONGEST_NAME as i64);
        fields.add(
            field,
            Finding::new("form-name-unfit", Severity::Refuse).with("most", most),
        );
    } else if taken(&name) {
        let finding = Finding::new("form-name-taken", Severity::Refuse);
        fields.add(field, finding.with("name", text_arg(&name)));
    }
    name
}

fn yes_or_no(fields: &mut Fields, name: &'static str) -> Option<bool> {
    match fields.some(name)? {
        "yes" => Some(true),
        "no" => Some(false),
        _ => {
            fields.refuse(name, "form-yes-or-no");
            None
        }
    }
}

/// What others wrote since the form was opened is not overwritten without a word.
fn check_meanwhile(fields: &mut Fields, at: &AtSite, site: &Site) {
    let (Some(seen), Some(before)) = (fields.some("seen"), at.before) else {
        return;
    };
    if seen != site_mark(before) && site != before {
        let finding = Finding::new("form-described-meanwhile", Severity::Caution);
        fields.ask("owner", finding);
    }
}

/// A mark of a description, for the hidden field `seen`.
pub fn site_mark(site: &Site) -> String {
    let mut hasher = DefaultHasher::new();
    format!("{site:?}").hash(&mut hasher);
    format!("{:016x}", hasher.finish())
}

/// What the form shows of a site.
pub fn typed_site(site: &Site) -> Typed {
    let number = |number: Option<f64>| number.map_or(String::new(), |n| n.to_string());
    let count = |count: Option<u32>| count.map_or(String::new(), |n| n.to_string());
    let word = |answer: Option<bool>| match answer {
        Some(true) => "yes".to_owned(),
        Some(false) => "no".to_owned(),
        None => String::new(),
    };
    let mut typed = Typed::of([
        ("site_name", site.name.clone()),
        ("owner", site.owner.clone()),
        ("lat", number(site.gate.map(|p| p.lat))),
        ("lon", number(site.gate.map(|p| p.lon))),
        ("soil", site.soil.clone()),
        ("coastal", word(site.coastal)),
        ("weevil_area", word(site.weevil_area)),
        ("line_kv", number(site.line_kv)),
        ("tidy", count(site.tidy)),
        ("limit", count(site.limit)),
        ("notes", site.notes.clone()),
        ("seen", site_mark(site)),
    ]);
    rows::type_hours(&mut typed, &site.hours);
    rows::type_closed(&mut typed, &site.closed);
    rows::type_feeding(&mut typed, &site.no_feeding);
    typed
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::codes;
    use model::{Closed, Day, Hours, NoFeeding, Position};

    fn check(pairs: &[(&str, &str)]) -> Result<Site, Vec<Trouble>> {
        let at = AtSite {
            name: None,
            before: None,
            taken: &|name| name == "North yard",
        };
        site(&Typed::of(pairs.to_vec()), &at)
    }

    fn day(text: &str) -> Day {
        Day::parse(text).unwrap()
    }

    fn described() -> Site {
        Site {
            name: "South yard".into(),
            owner: "the parish".into(),
            gate: Some(Position {
                lat: 25.5,
                lon: -80.25,
            }),
            hours: vec![
                Hours {
                    from: 21_600,
                    to: 39_600,
                },
                Hours {
                    from: 50_400,
                    to: 86_400,
                },
            ],
            closed: vec![Closed {
                first: day("2026-12-24"),
                last: day("2026-12-26"),
                why: "feast".into(),
            }],
            soil: "loam".into(),
            coastal: Some(true),
            weevil_area: Some(false),
            line_kv: Some(7.6),
            no_feeding: vec![NoFeeding {
                from: (12, 1),
                to: (1, 31),
                nutrients: vec!["N".into(), "K".into()],
                rule: "parish".into(),
            }],
            tidy: Some(2),
            limit: Some(6),
            notes: "dog".into(),
            extra: [("zone".to_owned(), "4".to_owned())].into(),
        }
    }

    #[test]
    fn what_the_form_shows_is_read_back() {
        let before = described();
        let at = AtSite {
            name: Some(&before.name),
            before: Some(&before),
            taken: &|_| true,
        };
        assert_eq!(site(&typed_site(&before), &at), Ok(before.clone()));
        let bare = check(&[("site_name", " B ")]).unwrap();
        let expected = Site {
            name: "B".into(),
            ..Site::default()
        };
        assert_eq!(bare, expected);
    }

    #[test]
    fn a_new_site_needs_a_name_of_its_own() {
        let named = |name: &str| codes(check(&[("site_name", name)]));
        assert_eq!(named(""), [("site_name", "form-name-missing")]);
        assert_eq!(named("North yard"), [("site_name", "form-name-taken")]);
        for unfit in ["..", "a\nb", &"x".repeat(201)] {
            assert_eq!(named(unfit), [("site_name", "form-name-unfit")], "{unfit}");
        }
    }

    #[test]
    fn what_cannot_be_is_said_at_its_row() {
        for (pairs, said) in [
            (
                &[("hours_1-from", "6:00")][..],
                ("hours_1", "form-hours-half"),
            ),
            (
                &[("hours_2-from", "six"), ("hours_2-to", "11:00")],
                ("hours_2", "form-hours-not-read"),
            ),
            (
                &[("hours_1-from", "11:00"), ("hours_1-to", "6:00")],
                ("hours_1", "form-hours-backwards"),
            ),
            (
                &[
                    ("hours_1-from", "6:00"),
                    ("hours_1-to", "11:00"),
                    ("hours_3-from", "10:00"),
                    ("hours_3-to", "12:00"),
                ],
                ("hours_3", "form-hours-overlap"),
            ),
            (
                &[("closed_1-why", "feast")],
                ("closed_1", "form-closed-no-day"),
            ),
            (
                &[("closed_1-first", "2026-02-30")],
                ("closed_1", "form-date-not-read"),
            ),
            (
                &[
                    ("closed_1-first", "2026-02-03"),
                    ("closed_1-last", "2026-02-01"),
                ],
                ("closed_1", "form-closed-backwards"),
            ),
            (
                &[("feeding_1-rule", "parish")],
                ("feeding_1", "form-feeding-half"),
            ),
            (
                &[
                    ("feeding_1-from_month", "6"),
                    ("feeding_1-from_day", "31"),
                    ("feeding_1-to_month", "9"),
                    ("feeding_1-to_day", "30"),
                ],
                ("feeding_1", "form-feeding-no-day"),
            ),
            (
                &[("tidy", "9"), ("limit", "4")],
                ("limit", "form-site-tidy-beyond-limit"),
            ),
            (
                &[("line_kv", "5000")],
                ("line_kv", "form-number-out-of-range"),
            ),
            (&[("coastal", "perhaps")], ("coastal", "form-yes-or-no")),
            (&[("lat", "25.5")], ("lon", "form-position-half")),
        ] {
            let named = [("site_name", "B")];
            let all: Vec<_> = named.iter().chain(pairs).copied().collect();
            assert_eq!(codes(check(&all)), [said], "{pairs:?}");
        }
    }

    #[test]
    fn one_closed_day_and_a_window_up_to_midnight() {
        let site = check(&[
            ("site_name", "B"),
            ("closed_2-first", "2026-05-01"),
            ("hours_1-from", "6 pm"),
            ("hours_1-to", "00:00"),
        ]);
        let site = site.unwrap();
        assert_eq!(
            (site.closed[0].first, site.closed[0].last),
            (day("2026-05-01"), day("2026-05-01"))
        );
        assert_eq!(
            site.hours,
            [Hours {
                from: 64_800,
                to: 86_400
            }]
        );
    }

    #[test]
    fn what_others_wrote_meanwhile_is_not_overwritten_without_a_word() {
        let before = described();
        let mut typed = typed_site(&before);
        let other = Site {
            tidy: Some(1),
            ..before.clone()
        };
        let at = AtSite {
            name: Some(&before.name),
            before: Some(&other),
            taken: &|_| true,
        };
        assert_eq!(
            codes(site(&typed, &at)),
            [("owner", "form-described-meanwhile")]
        );
        typed.set("confirm-form-described-meanwhile", "yes");
        assert!(site(&typed, &at).is_ok());
    }
}
