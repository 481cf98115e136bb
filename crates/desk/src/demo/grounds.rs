//! The demo's grounds as the keeper described them, and the crews that work on them.

use super::book::Book;
use super::{KEEPER, SITES};
use model::{Body, Closed, CrewWords, Day, Hours, NoFeeding, Position, Site};

/// Days before today on which grounds and crews were written down.
const WRITTEN: i32 = 368;

/// Gates of the grounds, in their order: where a crew comes in, beside the first palms.
const GATES: [Position; 3] = [
    at(25.5617, -80.4823),
    at(25.5804, -80.4515),
    at(25.5515, -80.4994),
];
/// Where the crew that lives on the other side of the river starts.
const BOATHOUSE: Position = at(25.5671, -80.4689);

/// Writes the grounds and the crews.
pub(super) fn write(today: Day, book: &mut Book) {
    let written = today.plus(-WRITTEN);
    let sites = [yard(), house(today), walk(today)].map(Body::SiteDescribed);
    let crews = crews().map(Body::CrewDescribed);
    for body in sites.into_iter().chain(crews) {
        book.write(written, 12, KEEPER, body, None);
    }
}

/// The holding yard: the keeper's own, open all day.
fn yard() -> Site {
    Site {
        hours: vec![hours(6.5, 17.0)],
        soil: "loamy-sand".to_owned(),
        notes: "Crane stands on the gravel by the gate; hose bibs at both ends of the rows."
            .to_owned(),
        ..grounds(0)
    }
}

/// The private garden: quiet at noon and early, neat, closed for a feast.
fn house(today: Day) -> Site {
    Site {
        hours: vec![hours(8.0, 12.0), hours(14.0, 18.0)],
        closed: vec![Closed {
            first: today.plus(9),
            last: today.plus(12),
            why: "Family feast; nobody in the garden".to_owned(),
        }],
        soil: "sand".to_owned(),
        tidy: Some(2),
        limit: Some(6),
        notes: "Ring at the lodge. Two old dogs, friendly.".to_owned(),
        ..grounds(1)
    }
}

/// The promenade: early hours only, a line along the street, no feeding in the rains.
fn walk(today: Day) -> Site {
    Site {
        hours: vec![hours(5.5, 11.0)],
        closed: vec![Closed {
            first: today.plus(20),
            last: today.plus(22),
            why: "Lantern fair".to_owned(),
        }],
        soil: "sandy-loam".to_owned(),
        line_kv: Some(7.6),
        no_feeding: vec![NoFeeding {
            from: (6, 1),
            to: (9, 30),
            nutrients: vec!["N".to_owned(), "P".to_owned()],
            rule: "Parish of Quillmere: no nitrogen, no phosphorus in the rains".to_owned(),
        }],
        notes: "Bollard key hangs in the bandstand. Cones and a spotter along the street."
            .to_owned(),
        ..grounds(2)
    }
}

fn grounds(n: usize) -> Site {
    let (name, owner, _) = SITES[n];
    Site {
        name: name.to_owned(),
        owner: owner.to_owned(),
        gate: Some(GATES[n]),
        coastal: Some(true),
        ..Site::default()
    }
}

fn crews() -> [CrewWords; 3] {
    let yard = Some(GATES[0]);
    [
        CrewWords {
            name: "Fenlock".to_owned(),
            people: Some(3),
            from: yard,
            hours: Some(hours(6.0, 14.5)),
            skills: words(["lift", "rigging"]),
            kit: words(["lift", "hand-saw", "pole-saw", "loppers"]),
            room_m3: Some(14.0),
            notes: "Dario leads. Truck with the lift on Mondays to Thursdays.".to_owned(),
            ..CrewWords::default()
        },
        CrewWords {
            name: "Boathouse".to_owned(),
            people: Some(2),
            from: Some(BOATHOUSE),
            to: yard,
            hours: Some(hours(7.0, 15.5)),
            skills: words(["climb"]),
            kit: words(["hand-saw", "pole-saw", "pole-loppers"]),
            room_m3: Some(6.0),
            notes: "Unloads at the yard before going home.".to_owned(),
            ..CrewWords::default()
        },
        CrewWords {
            name: "Sorrel".to_owned(),
            people: Some(1),
            from: yard,
            hours: Some(hours(5.5, 12.0)),
            skills: words(["spray"]),
            kit: words(["hand-saw", "loppers"]),
            notes: "Wenna alone: looking, feeding, small palms from the ground.".to_owned(),
            ..CrewWords::default()
        },
    ]
}

const fn at(lat: f64, lon: f64) -> Position {
    Position { lat, lon }
}

fn hours(from: f64, to: f64) -> Hours {
    let seconds = |hour: f64| (hour * 3_600.0) as u32;
    Hours {
        from: seconds(from),
        to: seconds(to),
    }
}

fn words<const N: usize>(words: [&str; N]) -> Vec<String> {
    words.map(str::to_owned).to_vec()
}
