use super::*;
use crate::intake::{InspectionReader, Known, PalmReader};
use model::{Body, Entry, EntryId, Inspection, Moment, Palm, PalmId, State};

const PALMS: &str = "\
tag,species,site,stems,planted_on,moved_on,last_cleaned_on,trunk_height_m,lat,lon,over,wires_m,notes,Plaque,full_crown
A-2,Phoenix reclinata,\"Yard, north\",3,2019-04-01,,2026-01-05,3.048,-26.714,80.05,path,4.5,\"two
lines and a \"\"quote\"\"\",17,40
A-1,Sabal palmetto,,1,,2026-02-20,,,,,,,,,
";

const LOOKS: &str = "\
tag,stem,date,green,yellowing,brown,new_leaves,removed_green,removed_yellowing,removed_brown,spear,clock_left,clock_right,signs,absent,notes,Wind
A-2,3,2026-03-01,20,,0,2,,,0,leaning,8.75,12,tip-burn;one-sided,conk;nest,gusts,4
A-1,1,2026-03-02,,,,,,,,,,,,,,
";

fn register() -> State {
    let palms: Vec<Palm> = PalmReader::open(PALMS.as_bytes())
        .unwrap()
        .map(|r| r.unwrap().value)
        .collect();
    let known = Known::of(&palms);
    let looks = InspectionReader::open(LOOKS.as_bytes(), &known)
        .unwrap()
        .map(|r| r.unwrap().value);
    let mut entries: Vec<Entry> = Vec::new();
    for palm in &palms {
        entries.push(entry(entries.len(), Body::PalmRegistered(palm.clone())));
    }
    for row in looks.collect::<Vec<_>>() {
        let palm = PalmId(entries[row.palm as usize].id.0);
        entries.push(entry(
            entries.len(),
            Body::Inspected {
                palm,
                inspection: row.inspection,
            },
        ));
    }
    State::fold(entries)
}

fn entry(n: usize, body: Body) -> Entry {
    let at = Moment(1_770_000_000_000 + n as i64);
    let id = EntryId(testkit::id(1, n as u64));
    Entry {
        id,
        at,
        written_at: at,
        by: "k".into(),
        device: "d".into(),
        body,
        replaces: None,
    }
}

#[test]
fn what_goes_out_comes_in_the_same() {
    let state = register();
    let mut file = Vec::new();
    assert_eq!(palms(&state, &mut file).unwrap(), 2);
    let back: Vec<Palm> = PalmReader::open(&file[..])
        .unwrap()
        .map(|r| r.unwrap().value)
        .collect();
    let before: Vec<Palm> = tables::standing(&state).map(|r| r.palm.clone()).collect();
    assert_eq!(back, before, "{}", String::from_utf8_lossy(&file));
    assert_eq!(back[1].extra["Plaque"], "17");

    let mut file = Vec::new();
    assert_eq!(inspections(&state, &mut file).unwrap(), 2);
    let known = Known::of(&back);
    let rows = InspectionReader::open(&file[..], &known).unwrap();
    let looks: Vec<Inspection> = rows.map(|r| r.unwrap().value.inspection).collect();
    let before: Vec<Inspection> = tables::standing(&state)
        .flat_map(|r| r.inspections.clone())
        .collect();
    assert_eq!(looks, before, "{}", String::from_utf8_lossy(&file));
}

#[test]
fn columns_that_are_the_same_but_for_case_get_names_of_their_own() {
    let map = |key: &str| [(key.to_owned(), "x".to_owned())].into();
    let maps = [map("Row"), map("row"), map("TAG"), map("row_2")];
    let extra = columns::Extra::of(maps.iter(), &["tag"]);
    let headers: Vec<String> = extra.headers().map(str::to_lowercase).collect();
    let mut unique = headers.clone();
    unique.sort();
    unique.dedup();
    assert_eq!(unique.len(), 4, "{headers:?}");
    assert!(!headers.contains(&"tag".to_owned()));
}

#[test]
fn geojson_is_as_the_standard_has_it() {
    // RFC 7946: 3.1.1 longitude comes first; 3.2 a feature without a place has a null geometry; 4 no "crs" member
    let mut file = Vec::new();
    assert_eq!(geojson(&register(), &mut file).unwrap(), 2);
    let collection: serde_json::Value = serde_json::from_slice(&file).unwrap();
    assert_eq!(collection["type"], "FeatureCollection");
    assert!(collection.get("crs").is_none());
    let [first, second] = collection["features"].as_array().unwrap().as_slice() else {
        panic!("{collection}")
    };
    assert_eq!(first["properties"]["tag"], "A-1");
    assert!(first["geometry"].is_null());
    assert_eq!(second["type"], "Feature");
    assert_eq!(
        second["geometry"],
        serde_json::json!({"type": "Point", "coordinates": [80.05, -26.714]})
    );
    assert_eq!(second["properties"]["trunk_height_m"], 3.048);
    let none = geojson(&State::default(), &mut Vec::new()).unwrap();
    assert_eq!(none, 0);
}
