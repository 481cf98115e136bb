//! Moves noted in the demo's yard: what was written down when a palm was dug. Of some only the day is known, as in life.

use super::book::Book;
use super::roster::plots;
use super::{KEEPER, id};
use model::{Body, Day, LeavesAtMove, Metres, Move, PalmId, Tending};

/// What is noted of the move of a tag: from, ball out and down (cm), fronds, fronds taken, props, soil.
type Told = (
    &'static str,
    &'static str,
    Option<(f64, f64)>,
    LeavesAtMove,
    Option<u32>,
    &'static str,
    &'static str,
);

const MOVES: [Told; 7] = [
    (
        "Q-01",
        "a grove south of Quillmere",
        Some((75.0, 90.0)),
        LeavesAtMove::Tied,
        Some(12),
        "four props on boards over burlap, strapped",
        "sand",
    ),
    (
        "Q-02",
        "a grove south of Quillmere",
        Some((75.0, 90.0)),
        LeavesAtMove::Tied,
        None,
        "four props on boards",
        "sand",
    ),
    (
        "Q-05",
        "a field near Torvane",
        Some((61.0, 60.0)),
        LeavesAtMove::Left,
        None,
        "three props on boards",
        "loamy-sand",
    ),
    (
        "Q-09",
        "a pasture by the river",
        Some((30.0, 60.0)),
        LeavesAtMove::Left,
        None,
        "",
        "loam",
    ),
    (
        "Q-10",
        "a pasture by the river",
        Some((30.0, 60.0)),
        LeavesAtMove::Tied,
        None,
        "",
        "loam",
    ),
    (
        "Q-13",
        "a nursery row at Quillmere",
        Some((61.0, 60.0)),
        LeavesAtMove::Tied,
        None,
        "three props on boards",
        "sand",
    ),
    (
        "Q-16",
        "a garden that was built over",
        Some((45.0, 60.0)),
        LeavesAtMove::Left,
        None,
        "",
        "sandy-loam",
    ),
];

/// Writes the moves.
pub(super) fn write(today: Day, book: &mut Book) {
    for (n, plot) in plots().iter().enumerate() {
        let Some(told) = MOVES.iter().find(|told| told.0 == plot.tag) else {
            continue;
        };
        let Some(days) = plot.moved else { continue };
        let dug_on = today.plus(-days);
        let body = Body::Tended {
            palm: PalmId(id(n as u64).0),
            what: Tending::Moved(noted(told, dug_on)),
        };
        book.write(dug_on, 14, KEEPER, body, None);
    }
}

fn noted((_, from, ball, leaves, taken, props, soil): &Told, dug_on: Day) -> Move {
    let metres = |cm: f64| Metres(cm / 100.0);
    Move {
        // the day they came is the day they were set up in the yard
        planted_on: Some(dug_on),
        from: (*from).to_owned(),
        ball_radius: ball.map(|(out, _)| metres(out)),
        ball_depth: ball.map(|(_, down)| metres(down)),
        leaves: Some(*leaves),
        fronds_taken: *taken,
        deeper: Some(Metres(0.0)),
        bracing: (*props).to_owned(),
        soil: (*soil).to_owned(),
        ..Move::on(dug_on)
    }
}
