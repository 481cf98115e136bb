//! Bodies as JSON: versioned twins of the model's types, converted by hand.
//!
//! A new field needs a new version, because a program that knows only the old one must see that it does not understand.

use super::blade::{
    BathV1, BladeChangedV1, BladeLentV1, BladeRetiredV1, BladeReturnedV1, BladeV1, CleaningV1,
    CutV1,
};
use super::tending::{FedV1, LinkGivenV1, MovedV1, WateredV1};
use super::work::{CrewV1, PricesV1, RoundNotedV1, RoundPlannedV1, SiteV1, WeatherV1};
use model::{
    BladeId, Body, Clock, Day, EntryId, Inspection, Metres, Moment, Palm, PalmId, Position,
    Removed, Spear, Tending,
};
use serde::{Deserialize, Serialize, de::DeserializeOwned};
use std::collections::BTreeMap;
use uuid::Uuid;

/// Version that this program writes, of every kind but those it says otherwise of.
const VERSION: u32 = 1;

/// Version of an inspection that tells which signs were not there. One that does not is written as [`VERSION`], so that
/// older programs still read it.
const INSPECTION_WITH_ABSENT: u32 = 2;

/// Kind, version and JSON text of a body.
pub(super) fn encode(body: &Body) -> (String, u32, String) {
    let known = |kind: &str, text: String| (kind.to_owned(), VERSION, text);
    match body {
        Body::PalmRegistered(palm) => known("palm-registered", json(&PalmV1::of(palm))),
        Body::PalmChanged { palm, to } => known(
            "palm-changed",
            json(&PalmChangedV1 {
                palm: palm.0,
                to: PalmV1::of(to),
            }),
        ),
        Body::PalmRemoved { palm, why } => known(
            "palm-removed",
            json(&PalmRemovedV1 {
                palm: palm.0,
                why: why.clone(),
            }),
        ),
        Body::Inspected { palm, inspection } if !inspection.absent.is_empty() => (
            "inspection".to_owned(),
            INSPECTION_WITH_ABSENT,
            json(&InspectedV2 {
                palm: palm.0,
                look: InspectionV1::of(inspection),
                absent: inspection.absent.clone(),
            }),
        ),
        Body::Inspected { palm, inspection } => known(
            "inspection",
            json(&InspectedV1 {
                palm: palm.0,
                look: InspectionV1::of(inspection),
            }),
        ),
        Body::HoldSet {
            palm,
            reason,
            until,
            note,
        } => {
            let (reason, note) = (reason.clone(), note.clone());
            known(
                "hold-set",
                json(&HoldSetV1 {
                    palm: palm.0,
                    reason,
                    until: until.map(text),
                    note,
                }),
            )
        }
        Body::HoldLifted { hold, note } => known(
            "hold-lifted",
            json(&HoldLiftedV1 {
                hold: hold.0,
                note: note.clone(),
            }),
        ),
        Body::Noted { palm, text } => known(
            "note",
            json(&NotedV1 {
                palm: palm.0,
                text: text.clone(),
            }),
        ),
        Body::BladeRegistered(blade) => known("blade-registered", json(&BladeV1::of(blade))),
        Body::BladeChanged { blade, to } => known(
            "blade-changed",
            json(&BladeChangedV1 {
                blade: blade.0,
                to: BladeV1::of(to),
            }),
        ),
        Body::BladeRetired { blade, why } => known(
            "blade-retired",
            json(&BladeRetiredV1 {
                blade: blade.0,
                why: why.clone(),
            }),
        ),
        Body::BladeLent { blade, to } => known(
            "blade-lent",
            json(&BladeLentV1 {
                blade: blade.0,
                to: to.clone(),
            }),
        ),
        Body::BladeReturned { blade } => {
            known("blade-returned", json(&BladeReturnedV1 { blade: blade.0 }))
        }
        Body::CutMade(cut) => known("cut", json(&CutV1::of(cut))),
        Body::BathMixed(bath) => known("bath-mixed", json(&BathV1::of(bath))),
        Body::Cleaned(cleaning) => known("cleaning", json(&CleaningV1::of(cleaning))),
        Body::Tended { palm, what } => match what {
            Tending::Moved(moved) => known("moved", json(&MovedV1::of(*palm, moved))),
            Tending::Watered(water) => known("watered", json(&WateredV1::of(*palm, water))),
            Tending::Fed(fed) => known("fed", json(&FedV1::of(*palm, fed))),
        },
        Body::LinkGiven { palm, link } => known("link-given", json(&LinkGivenV1::of(*palm, link))),
        Body::SiteDescribed(site) => known("site-described", json(&SiteV1::of(site))),
        Body::CrewDescribed(crew) => known("crew-described", json(&CrewV1::of(crew))),
        Body::PricesSet(prices) => known("prices-set", json(&PricesV1::of(prices))),
        Body::WeatherNoted(day) => known("weather-noted", json(&WeatherV1::of(day))),
        Body::RoundPlanned(plan) => known("round-planned", json(&RoundPlannedV1::of(plan))),
        Body::RoundNoted(note) => known("round-noted", json(&RoundNotedV1::of(note))),
        Body::Withdrawn { why } => known("withdrawn", json(&WithdrawnV1 { why: why.clone() })),
        Body::Unknown {
            kind,
            version,
            json,
        } => (kind.clone(), *version, json.clone()),
    }
}

/// The body of a kind, version and JSON text; unknown if any of it is not understood.
pub(super) fn decode(kind: &str, version: u32, json: &str) -> Body {
    let known = match (kind, version) {
        (_, VERSION) => decode_v1(kind, json),
        ("inspection", INSPECTION_WITH_ABSENT) => inspected_v2(json),
        _ => None,
    };
    known.unwrap_or_else(|| Body::Unknown {
        kind: kind.to_owned(),
        version,
        json: json.to_owned(),
    })
}

fn decode_v1(kind: &str, json: &str) -> Option<Body> {
    Some(match kind {
        "palm-registered" => Body::PalmRegistered(parse::<PalmV1>(json)?.palm()?),
        "palm-changed" => {
            let body: PalmChangedV1 = parse(json)?;
            Body::PalmChanged {
                palm: PalmId(body.palm),
                to: body.to.palm()?,
            }
        }
        "palm-removed" => {
            let body: PalmRemovedV1 = parse(json)?;
            Body::PalmRemoved {
                palm: PalmId(body.palm),
                why: body.why,
            }
        }
        "inspection" => {
            let body: InspectedV1 = parse(json)?;
            Body::Inspected {
                palm: PalmId(body.palm),
                inspection: body.look.inspection()?,
            }
        }
        "hold-set" => {
            let body: HoldSetV1 = parse(json)?;
            let until = body
                .until
                .map(|t| Day::parse(&t).ok_or(()))
                .transpose()
                .ok()?;
            Body::HoldSet {
                palm: PalmId(body.palm),
                reason: body.reason,
                until,
                note: body.note,
            }
        }
        "hold-lifted" => {
            let body: HoldLiftedV1 = parse(json)?;
            Body::HoldLifted {
                hold: EntryId(body.hold),
                note: body.note,
            }
        }
        "note" => {
            let body: NotedV1 = parse(json)?;
            Body::Noted {
                palm: PalmId(body.palm),
                text: body.text,
            }
        }
        "withdrawn" => Body::Withdrawn {
            why: parse::<WithdrawnV1>(json)?.why,
        },
        _ => return blade_v1(kind, json),
    })
}

fn blade_v1(kind: &str, json: &str) -> Option<Body> {
    Some(match kind {
        "blade-registered" => Body::BladeRegistered(parse::<BladeV1>(json)?.blade()?),
        "blade-changed" => {
            let body: BladeChangedV1 = parse(json)?;
            Body::BladeChanged {
                blade: BladeId(body.blade),
                to: body.to.blade()?,
            }
        }
        "blade-retired" => {
            let body: BladeRetiredV1 = parse(json)?;
            Body::BladeRetired {
                blade: BladeId(body.blade),
                why: body.why,
            }
        }
        "blade-lent" => {
            let body: BladeLentV1 = parse(json)?;
            Body::BladeLent {
                blade: BladeId(body.blade),
                to: body.to,
            }
        }
        "blade-returned" => Body::BladeReturned {
            blade: BladeId(parse::<BladeReturnedV1>(json)?.blade),
        },
        "cut" => Body::CutMade(parse::<CutV1>(json)?.cut()?),
        "bath-mixed" => Body::BathMixed(parse::<BathV1>(json)?.bath()),
        "cleaning" => Body::Cleaned(parse::<CleaningV1>(json)?.cleaning()),
        _ => return work_v1(kind, json),
    })
}

fn work_v1(kind: &str, json: &str) -> Option<Body> {
    Some(match kind {
        "moved" => parse::<MovedV1>(json)?.body()?,
        "watered" => parse::<WateredV1>(json)?.body(),
        "fed" => parse::<FedV1>(json)?.body(),
        "link-given" => parse::<LinkGivenV1>(json)?.body()?,
        "site-described" => Body::SiteDescribed(parse::<SiteV1>(json)?.site()?),
        "crew-described" => Body::CrewDescribed(parse::<CrewV1>(json)?.crew()),
        "prices-set" => Body::PricesSet(parse::<PricesV1>(json)?.prices()),
        "weather-noted" => Body::WeatherNoted(parse::<WeatherV1>(json)?.weather()?),
        "round-planned" => Body::RoundPlanned(parse::<RoundPlannedV1>(json)?.plan()?),
        "round-noted" => Body::RoundNoted(parse::<RoundNotedV1>(json)?.note()?),
        _ => return None,
    })
}

fn inspected_v2(json: &str) -> Option<Body> {
    let body: InspectedV2 = parse(json)?;
    let look = body.look.inspection()?;
    Some(Body::Inspected {
        palm: PalmId(body.palm),
        inspection: Inspection {
            absent: body.absent,
            ..look
        },
    })
}

fn json(body: &impl Serialize) -> String {
    // Strings, numbers, lists and maps with text keys always serialise.
    serde_json::to_string(body).unwrap_or_default()
}

fn parse<T: DeserializeOwned>(json: &str) -> Option<T> {
    serde_json::from_str(json).ok()
}

fn text(day: Day) -> String {
    day.to_string()
}

/// `None` stays `None`; text that is no day makes the whole body not understood.
pub(super) fn parse_day(text: Option<String>) -> Option<Option<Day>> {
    text.map_or(Some(None), |t| Day::parse(&t).map(Some))
}

/// As [`parse_day`], of a moment (RFC 3339).
pub(super) fn parse_moment(text: Option<String>) -> Option<Option<Moment>> {
    text.map_or(Some(None), |t| Moment::parse(&t).map(Some))
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct PalmV1 {
    tag: String,
    species: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    site: String,
    stems: u16,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    planted_on: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    moved_on: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    last_cleaned_on: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    trunk_height_m: Option<f64>,
    /// Latitude and longitude, degrees.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    position: Option<(f64, f64)>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    over: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    wires_m: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    full_crown: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    fronds_per_year: Option<f64>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    extra: BTreeMap<String, String>,
}

impl PalmV1 {
    fn of(palm: &Palm) -> PalmV1 {
        let palm = palm.clone();
        PalmV1 {
            tag: palm.tag,
            species: palm.species,
            site: palm.site,
            stems: palm.stems,
            planted_on: palm.planted_on.map(text),
            moved_on: palm.moved_on.map(text),
            last_cleaned_on: palm.last_cleaned_on.map(text),
            trunk_height_m: palm.trunk_height.map(|m| m.0),
            position: palm.position.map(|p| (p.lat, p.lon)),
            over: palm.over,
            wires_m: palm.wires.map(|m| m.0),
            full_crown: palm.full_crown,
            fronds_per_year: palm.fronds_per_year,
            notes: palm.notes,
            extra: palm.extra,
        }
    }

    fn palm(self) -> Option<Palm> {
        Some(Palm {
            tag: self.tag,
            species: self.species,
            site: self.site,
            stems: self.stems,
            planted_on: parse_day(self.planted_on)?,
            moved_on: parse_day(self.moved_on)?,
            last_cleaned_on: parse_day(self.last_cleaned_on)?,
            trunk_height: self.trunk_height_m.map(Metres),
            position: self.position.map(|(lat, lon)| Position { lat, lon }),
            over: self.over,
            wires: self.wires_m.map(Metres),
            full_crown: self.full_crown,
            fronds_per_year: self.fronds_per_year,
            notes: self.notes,
            extra: self.extra,
        })
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct InspectionV1 {
    stem: u16,
    date: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    green: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    yellowing: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    brown: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    new_leaves: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    removed_green: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    removed_yellowing: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    removed_brown: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    spear: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    clock_left: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    clock_right: Option<f64>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    signs: Vec<String>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    extra: BTreeMap<String, String>,
}

impl InspectionV1 {
    fn of(look: &Inspection) -> InspectionV1 {
        InspectionV1 {
            stem: look.stem,
            date: text(look.date),
            green: look.green,
            yellowing: look.yellowing,
            brown: look.brown,
            new_leaves: look.new_leaves,
            removed_green: look.removed.green,
            removed_yellowing: look.removed.yellowing,
            removed_brown: look.removed.brown,
            spear: look.spear.map(|s| s.word().to_owned()),
            clock_left: look.clock_left.map(|c| c.0),
            clock_right: look.clock_right.map(|c| c.0),
            signs: look.signs.clone(),
            notes: look.notes.clone(),
            extra: look.extra.clone(),
        }
    }

    fn inspection(self) -> Option<Inspection> {
        let clock = |hours: Option<f64>| hours.map_or(Some(None), |h| Clock::new(h).map(Some));
        let removed = Removed {
            green: self.removed_green,
            yellowing: self.removed_yellowing,
            brown: self.removed_brown,
        };
        Some(Inspection {
            stem: self.stem,
            date: Day::parse(&self.date)?,
            green: self.green,
            yellowing: self.yellowing,
            brown: self.brown,
            new_leaves: self.new_leaves,
            removed,
            spear: self
                .spear
                .map_or(Some(None), |word| Spear::parse(&word).map(Some))?,
            clock_left: clock(self.clock_left)?,
            clock_right: clock(self.clock_right)?,
            signs: self.signs,
            absent: Vec::new(),
            notes: self.notes,
            extra: self.extra,
        })
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct PalmChangedV1 {
    palm: Uuid,
    to: PalmV1,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct PalmRemovedV1 {
    palm: Uuid,
    #[serde(default)]
    why: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct InspectedV1 {
    palm: Uuid,
    look: InspectionV1,
}

/// [`InspectedV1`] with the signs looked for and not there.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct InspectedV2 {
    palm: Uuid,
    look: InspectionV1,
    absent: Vec<String>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct HoldSetV1 {
    palm: Uuid,
    reason: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    until: Option<String>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    note: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct HoldLiftedV1 {
    hold: Uuid,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    note: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct NotedV1 {
    palm: Uuid,
    text: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct WithdrawnV1 {
    #[serde(default)]
    why: String,
}
