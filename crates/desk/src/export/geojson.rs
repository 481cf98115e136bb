//! Palms as a GeoJSON feature collection.

use super::Error;
use super::tables::standing;
use model::state::PalmRecord;
use model::{Day, State};
use serde_json::{Value, json};
use std::io::Write;

/// Standing palms by tag, one feature each: a point (WGS 84, longitude first) or no geometry where the position is not
/// known, as RFC 7946 has it. Unknown properties are `null`. Returns the number of features.
pub fn geojson(state: &State, mut out: impl Write) -> Result<u64, Error> {
    write!(out, "{{\"type\":\"FeatureCollection\",\"features\":[")?;
    let mut rows = 0;
    for record in standing(state) {
        out.write_all(if rows == 0 { b"\n" } else { b",\n" })?;
        serde_json::to_writer(&mut out, &feature(record))?;
        rows += 1;
    }
    writeln!(out, "\n]}}")?;
    Ok(rows)
}

fn feature(record: &PalmRecord) -> Value {
    let palm = &record.palm;
    let day = |d: Option<Day>| d.map(|d| d.to_string());
    let last = record.inspections.iter().map(|i| i.date).max();
    json!({
        "type": "Feature",
        "id": record.id.0.to_string(),
        "geometry": palm.position.map(|p| json!({"type": "Point", "coordinates": [p.lon, p.lat]})),
        "properties": {
            "tag": palm.tag,
            "species": palm.species,
            "site": palm.site,
            "stems": palm.stems,
            "planted_on": day(palm.planted_on),
            "moved_on": day(palm.moved_on),
            "last_cleaned_on": day(palm.last_cleaned_on),
            "trunk_height_m": palm.trunk_height.map(|m| m.0),
            "over": palm.over,
            "wires_m": palm.wires.map(|m| m.0),
            "last_inspected_on": day(last),
            "notes": palm.notes,
        },
    })
}
