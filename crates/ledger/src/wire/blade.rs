//! Twins of what the model says of blades, cuts, baths and cleanings.

use super::body::parse_moment;
use model::{Bath, Blade, BladeId, BladeKind, Cleaning, CutMade, EntryId, PalmId, TakenOff};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use uuid::Uuid;

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BladeV1 {
    tag: String,
    kind: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    kit: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    holder: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    extra: BTreeMap<String, String>,
}

impl BladeV1 {
    pub fn of(blade: &Blade) -> BladeV1 {
        let kind = blade.kind.word().to_owned();
        let blade = blade.clone();
        BladeV1 {
            tag: blade.tag,
            kind,
            kit: blade.kit,
            holder: blade.holder,
            notes: blade.notes,
            extra: blade.extra,
        }
    }

    pub fn blade(self) -> Option<Blade> {
        Some(Blade {
            tag: self.tag,
            kind: BladeKind::parse(&self.kind)?,
            kit: self.kit,
            holder: self.holder,
            notes: self.notes,
            extra: self.extra,
        })
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BladeChangedV1 {
    pub blade: Uuid,
    pub to: BladeV1,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BladeRetiredV1 {
    pub blade: Uuid,
    #[serde(default)]
    pub why: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BladeLentV1 {
    pub blade: Uuid,
    #[serde(default)]
    pub to: String,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BladeReturnedV1 {
    pub blade: Uuid,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CutV1 {
    palm: Uuid,
    stem: u16,
    blade: Uuid,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    started: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    off_green: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    off_yellowing: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    off_brown: Option<u32>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    off_stalks: Option<u32>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    crew: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    despite: String,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    notes: String,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    extra: BTreeMap<String, String>,
}

impl CutV1 {
    pub fn of(cut: &CutMade) -> CutV1 {
        CutV1 {
            palm: cut.palm.0,
            stem: cut.stem,
            blade: cut.blade.0,
            started: cut.started.map(|start| start.to_string()),
            off_green: cut.off.green,
            off_yellowing: cut.off.yellowing,
            off_brown: cut.off.brown,
            off_stalks: cut.off.stalks,
            crew: cut.crew.clone(),
            despite: cut.despite.clone(),
            notes: cut.notes.clone(),
            extra: cut.extra.clone(),
        }
    }

    pub fn cut(self) -> Option<CutMade> {
        let off = TakenOff {
            green: self.off_green,
            yellowing: self.off_yellowing,
            brown: self.off_brown,
            stalks: self.off_stalks,
        };
        Some(CutMade {
            palm: PalmId(self.palm),
            stem: self.stem,
            blade: BladeId(self.blade),
            started: parse_moment(self.started)?,
            off,
            crew: self.crew,
            despite: self.despite,
            notes: self.notes,
            extra: self.extra,
        })
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct BathV1 {
    agent: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    strength_pct: Option<f64>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    kit: String,
}

impl BathV1 {
    pub fn of(bath: &Bath) -> BathV1 {
        BathV1 {
            agent: bath.agent.clone(),
            strength_pct: bath.strength_pct,
            kit: bath.kit.clone(),
        }
    }

    pub fn bath(self) -> Bath {
        Bath {
            agent: self.agent,
            strength_pct: self.strength_pct,
            kit: self.kit,
        }
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct CleaningV1 {
    blade: Uuid,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    agent: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    strength_pct: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    contact_min: Option<f64>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    brushed: Option<bool>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    bath: Option<Uuid>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    by: String,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    extra: BTreeMap<String, String>,
}

impl CleaningV1 {
    pub fn of(cleaning: &Cleaning) -> CleaningV1 {
        CleaningV1 {
            blade: cleaning.blade.0,
            agent: cleaning.agent.clone(),
            strength_pct: cleaning.strength_pct,
            contact_min: cleaning.contact_min,
            brushed: cleaning.brushed,
            bath: cleaning.bath.map(|bath| bath.0),
            by: cleaning.by.clone(),
            extra: cleaning.extra.clone(),
        }
    }

    pub fn cleaning(self) -> Cleaning {
        Cleaning {
            blade: BladeId(self.blade),
            agent: self.agent,
            strength_pct: self.strength_pct,
            contact_min: self.contact_min,
            brushed: self.brushed,
            bath: self.bath.map(EntryId),
            by: self.by,
            extra: self.extra,
        }
    }
}
