//! Twins of what the model says of moves, waterings, feedings and owners' links.

use super::body::parse_day;
use model::{Body, Feeding, LeavesAtMove, Metres, Move, OwnerLink, PalmId, Tending, Watering};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use uuid::Uuid;

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct MovedV1 {
    palm: Uuid,
    dug_on: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    planted_on: Option<String>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    from: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    ball_radius_m: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    ball_depth_m: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    leaves: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    fronds_taken: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    deeper_m: Option<f64>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    bracing: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    soil: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    extra: BTreeMap<String, String>,
}

impl MovedV1 {
    pub fn of(palm: PalmId, moved: &Move) -> MovedV1 {
        let moved = moved.clone();
        MovedV1 {
            palm: palm.0,
            dug_on: moved.dug_on.to_string(),
            planted_on: moved.planted_on.map(|day| day.to_string()),
            from: moved.from,
            ball_radius_m: moved.ball_radius.map(|m| m.0),
            ball_depth_m: moved.ball_depth.map(|m| m.0),
            leaves: moved.leaves.map(|leaves| leaves.word().to_owned()),
            fronds_taken: moved.fronds_taken,
            deeper_m: moved.deeper.map(|m| m.0),
            bracing: moved.bracing,
            soil: moved.soil,
            notes: moved.notes,
            extra: moved.extra,
        }
    }

    pub fn body(self) -> Option<Body> {
        let leaves = self
            .leaves
            .map_or(Some(None), |word| LeavesAtMove::parse(&word).map(Some))?;
        let moved = Move {
            dug_on: model::Day::parse(&self.dug_on)?,
            planted_on: parse_day(self.planted_on)?,
            from: self.from,
            ball_radius: self.ball_radius_m.map(Metres),
            ball_depth: self.ball_depth_m.map(Metres),
            leaves,
            fronds_taken: self.fronds_taken,
            deeper: self.deeper_m.map(Metres),
            bracing: self.bracing,
            soil: self.soil,
            notes: self.notes,
            extra: self.extra,
        };
        Some(tended(self.palm, Tending::Moved(moved)))
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct WateredV1 {
    palm: Uuid,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    litres: Option<f64>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
}

impl WateredV1 {
    pub fn of(palm: PalmId, watering: &Watering) -> WateredV1 {
        WateredV1 {
            palm: palm.0,
            litres: watering.litres,
            notes: watering.notes.clone(),
        }
    }

    pub fn body(self) -> Body {
        let (litres, notes) = (self.litres, self.notes);
        tended(self.palm, Tending::Watered(Watering { litres, notes }))
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct FedV1 {
    palm: Uuid,
    product: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    grams: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    area_m2: Option<f64>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    against: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
}

impl FedV1 {
    pub fn of(palm: PalmId, fed: &Feeding) -> FedV1 {
        let fed = fed.clone();
        FedV1 {
            palm: palm.0,
            product: fed.product,
            grams: fed.grams,
            area_m2: fed.area_m2,
            against: fed.against,
            notes: fed.notes,
        }
    }

    pub fn body(self) -> Body {
        let fed = Feeding {
            product: self.product,
            grams: self.grams,
            area_m2: self.area_m2,
            against: self.against,
            notes: self.notes,
        };
        tended(self.palm, Tending::Fed(fed))
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct LinkGivenV1 {
    palm: Uuid,
    secret_hash: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    until: Option<String>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    owner: String,
}

impl LinkGivenV1 {
    pub fn of(palm: PalmId, link: &OwnerLink) -> LinkGivenV1 {
        LinkGivenV1 {
            palm: palm.0,
            secret_hash: link.secret_hash.clone(),
            until: link.until.map(|day| day.to_string()),
            owner: link.owner.clone(),
        }
    }

    pub fn body(self) -> Option<Body> {
        let link = OwnerLink {
            secret_hash: self.secret_hash,
            until: parse_day(self.until)?,
            owner: self.owner,
        };
        let palm = PalmId(self.palm);
        Some(Body::LinkGiven { palm, link })
    }
}

fn tended(palm: Uuid, what: Tending) -> Body {
    let palm = PalmId(palm);
    Body::Tended { palm, what }
}
