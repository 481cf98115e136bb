//! The drawn crown now and as forecast.

use super::super::drawing::{Look, draw, svg};
use super::Scene;
use crate::views::case::StemToday;
use crown::{Cut, Forecast, Picture};
use model::Day;

/// Weeks ahead that are drawn; nought is now.
pub const AHEAD_WEEKS: [i32; 3] = [0, 8, 26];

/// A crown on a day.
#[derive(Clone, PartialEq, Debug)]
pub struct CrownPicture {
    /// Weeks ahead.
    pub weeks: i32,
    /// "Now, 4 May 2026".
    pub when: String,
    /// Fronds drawn, by colour.
    pub counts: [usize; 3],
    /// The same in words.
    pub counts_words: String,
    /// What the counts may be in nine of ten cases, in words.
    pub range: String,
    /// The picture.
    pub svg: String,
}

/// The pictures of a stem if nothing is cut.
pub(super) fn pictures(scene: &Scene, stem: &StemToday) -> Vec<CrownPicture> {
    let (speaker, reading) = (scene.speaker, stem.reading());
    let days: Vec<Day> = AHEAD_WEEKS
        .iter()
        .map(|weeks| reading.as_of.plus(7 * weeks))
        .collect();
    let pictures: Vec<Picture> = reading.pictures(Cut::NONE, &days);
    let forecasts = reading.forecasts(Cut::NONE, &days);
    let spear = stem.looks().iter().rev().find_map(|look| look.spear);
    let look = Look::of(stem.species(), scene.record.palm.trunk_height, spear);
    let drawing = draw(&look, &pictures.iter().collect::<Vec<_>>());
    let one = |at: usize| {
        let crown = &drawing.crowns[at];
        let when = when(scene, AHEAD_WEEKS[at], days[at]);
        let counts_words = counts(scene, crown.counts);
        let name = format!("s{}w{}", stem.case().stem, AHEAD_WEEKS[at]);
        let title = [("tag", scene.record.palm.tag.clone().into())];
        let says = format!(
            "{}. {when}: {counts_words}",
            speaker.text("crown-title", &title)
        );
        CrownPicture {
            weeks: AHEAD_WEEKS[at],
            counts: crown.counts,
            range: range(scene, &forecasts[at]),
            svg: svg(&drawing, crown, &name, &says),
            when,
            counts_words,
        }
    };
    (0..days.len()).map(one).collect()
}

fn when(scene: &Scene, weeks: i32, day: Day) -> String {
    let date = ("date", scene.speaker.measure.date(day).into());
    match weeks {
        0 => scene.speaker.text("crown-now", &[date]),
        n => scene
            .speaker
            .text("crown-later", &[("n", i64::from(n).into()), date]),
    }
}

fn counts(scene: &Scene, [green, yellowing, brown]: [usize; 3]) -> String {
    let args = [
        ("green", (green as i64).into()),
        ("yellowing", (yellowing as i64).into()),
        ("brown", (brown as i64).into()),
    ];
    scene.speaker.text("crown-counts", &args)
}

fn range(scene: &Scene, forecast: &Forecast) -> String {
    let m = &scene.speaker.measure;
    let args = [
        (
            "live",
            m.counts(forecast.live.q05, forecast.live.q95).into(),
        ),
        (
            "brown",
            m.counts(forecast.brown_on.q05, forecast.brown_on.q95)
                .into(),
        ),
    ];
    scene.speaker.text("owner-range", &args)
}
