//! The demo's blades through the year: what the crew cut on its rounds, how it cleaned, and the day behind the trace.

use super::book::Book;
use super::roster::{Case, Plot, plots};
use super::year::OVER_TRIMMED;
use super::{CREW, KEEPER, id};
use model::{
    Bath, Blade, BladeId, BladeKind, Body, Cleaning, CutMade, Day, EntryId, Inspection, Moment,
    PalmId, Removed, TakenOff,
};
use std::collections::BTreeMap;

/// Days before today on which the palm that is a suspect now was cut with the saw of the trace.
pub(super) const SUSPECT_CUT: i32 = 243;
/// Days before today on which a palm of that day was cut again, and its saw went on without a soak.
const CUT_ON: i32 = 58;
/// Days before today on which the blades were registered, and on which one was lent.
const REGISTERED: i32 = 366;
const LENT: i32 = 12;
/// From so many days before today on the crew soaks ten minutes; before that it soaked five.
const LEARNED: i32 = 200;
/// Who came with the chain saw.
const GANG: &str = "the parish's hired gang";

/// The blades: tag, kind, kit, holder, notes.
const RACK: [(&str, BladeKind, &str, &str, &str); 9] = [
    ("S-1", BladeKind::HandSaw, "Crate A", CREW, ""),
    ("S-2", BladeKind::HandSaw, "Crate A", CREW, ""),
    ("P-1", BladeKind::PoleSaw, "Crate A", CREW, ""),
    ("N-1", BladeKind::Loppers, "Crate A", CREW, ""),
    ("S-3", BladeKind::HandSaw, "Crate B", KEEPER, ""),
    ("P-2", BladeKind::PoleSaw, "Crate B", KEEPER, ""),
    ("N-2", BladeKind::Loppers, "Crate B", KEEPER, ""),
    ("S-4", BladeKind::HandSaw, "", "", "Spare."),
    (
        "G-1",
        BladeKind::ChainSaw,
        "",
        GANG,
        "Not ours; its log is what the gang told.",
    ),
];

/// Writes all of it; the inspections must be in the book already.
pub(super) fn write(today: Day, book: &mut Book) {
    let mut saws = Saws::register(today, book);
    let cut = looks_with_cuts(today, book);
    for ((day, site), cuts) in cut {
        saws.round(book, day, site, &cuts);
    }
    saws.gang(book, &over_trimmed(today, book));
    saws.suspect(book);
    saws.cut_on(book);
    saws.as_they_stand(book);
}

/// One look after which the crew took the dead fronds off.
struct Cut {
    palm: PalmId,
    stem: u16,
    number: usize,
    off: TakenOff,
}

/// Cuts that inspections tell of, by day and site, in the order of the roster.
fn looks_with_cuts(today: Day, book: &Book) -> BTreeMap<(Day, usize), Vec<Cut>> {
    let mut cuts: BTreeMap<(Day, usize), Vec<Cut>> = BTreeMap::new();
    for (number, plot, palm, look) in looks(book) {
        let own = look.removed.brown.is_some_and(|n| n > 0);
        if own && look.date != today.plus(-OVER_TRIMMED) {
            cuts.entry((look.date, plot.site)).or_default().push(Cut {
                palm,
                stem: look.stem,
                number,
                off: off(&look.removed),
            });
        }
    }
    cuts
}

/// What the hired gang took off.
fn over_trimmed(today: Day, book: &Book) -> Vec<Cut> {
    let all = looks(book).into_iter();
    let gang = all.filter(|(_, plot, _, look)| {
        plot.cases.contains(&Case::OverTrimmed) && look.date == today.plus(-OVER_TRIMMED)
    });
    gang.map(|(number, _, palm, look)| Cut {
        palm,
        stem: look.stem,
        number,
        off: off(&look.removed),
    })
    .collect()
}

/// Looks of the roster's palms, palm by palm.
fn looks(book: &Book) -> Vec<(usize, Plot, PalmId, Inspection)> {
    let mut all = Vec::new();
    for (number, plot) in plots().into_iter().enumerate() {
        let palm = PalmId(id(number as u64).0);
        for note in &book.notes {
            if let Body::Inspected {
                palm: of,
                inspection,
            } = &note.body
                && *of == palm
                && note.replaces.is_none()
            {
                all.push((number, plot.clone(), palm, inspection.clone()));
            }
        }
    }
    all
}

fn off(removed: &Removed) -> TakenOff {
    TakenOff {
        green: removed.green,
        yellowing: removed.yellowing,
        brown: removed.brown,
        stalks: None,
    }
}

fn stalks(count: u32) -> TakenOff {
    TakenOff {
        stalks: Some(count),
        ..TakenOff::default()
    }
}

/// A palm of the roster by its tag.
pub(super) fn tagged(tag: &str) -> PalmId {
    let at = plots().iter().position(|plot| plot.tag == tag);
    PalmId(id(at.unwrap_or_default() as u64).0)
}

/// The blades and what was last done with them.
struct Saws {
    today: Day,
    ids: BTreeMap<&'static str, BladeId>,
}

impl Saws {
    fn register(today: Day, book: &mut Book) -> Saws {
        let mut ids = BTreeMap::new();
        for (tag, kind, kit, holder, notes) in RACK {
            let blade = Blade {
                tag: tag.to_owned(),
                kind,
                kit: kit.to_owned(),
                holder: holder.to_owned(),
                notes: notes.to_owned(),
                ..Blade::default()
            };
            let body = Body::BladeRegistered(blade);
            let entry = book.write(today.plus(-REGISTERED), 12, KEEPER, body, None);
            ids.insert(tag, BladeId(entry.0));
        }
        Saws { today, ids }
    }

    fn at(&self, days_ago: i32, hour: i64, minute: i64) -> Moment {
        let day = Moment::at_midnight(self.today.plus(-days_ago));
        Moment(day.0 + (hour * 60 + minute) * 60_000)
    }

    fn cut(&self, book: &mut Book, saw: &str, palm: PalmId, made: Made) {
        let cut = CutMade {
            palm,
            stem: made.stem,
            blade: self.ids[saw],
            started: Some(made.start),
            off: made.off,
            crew: made.crew.to_owned(),
            despite: String::new(),
            notes: String::new(),
            extra: Default::default(),
        };
        book.at(made.end, made.crew, Body::CutMade(cut));
    }

    fn clean(&self, book: &mut Book, saw: &str, at: Moment, how: How) {
        let cleaning = Cleaning {
            blade: self.ids[saw],
            agent: how.agent.to_owned(),
            strength_pct: how.strength_pct,
            contact_min: how.minutes,
            brushed: how.brushed,
            bath: how.bath,
            by: how.by.to_owned(),
            extra: Default::default(),
        };
        book.at(at, how.by, Body::Cleaned(cleaning));
    }

    /// A day's cuts at a site: date palms with hand saws that soak after each, everything else with pole saw and
    /// loppers, and all of it soaked at the end.
    fn round(&mut self, book: &mut Book, day: Day, site: usize, cuts: &[Cut]) {
        let yard = site == 0;
        let (kit, hands): (&'static str, &[&str]) = match yard {
            true => ("Crate B", &["S-3"]),
            false => ("Crate A", &["S-1", "S-2"]),
        };
        let ago = self.today.since(day);
        let minutes = if ago > LEARNED { 5.0 } else { 10.0 };
        let start = self.at(ago, 15, 40);
        let mut bath = Soaks::mixed(book, start, kit);
        let mut now = self.at(ago, 16, 0);
        let mut ready: BTreeMap<&str, Moment> = BTreeMap::new();
        let mut used: Vec<&str> = Vec::new();
        let plots = plots();
        for (n, cut) in cuts.iter().enumerate() {
            let plot = &plots[cut.number];
            let date_palm = plot.species.starts_with("Phoenix");
            let saw = match (date_palm, plot.height > 4.0) {
                (true, _) => hands[n % hands.len()],
                (false, true) => {
                    if yard {
                        "P-2"
                    } else {
                        "P-1"
                    }
                }
                (false, false) => {
                    if yard {
                        "N-2"
                    } else {
                        "N-1"
                    }
                }
            };
            let start = ready.get(saw).map_or(now, |at| now.max(*at));
            let took = 3 + i64::from(cut.off.brown.unwrap_or(0)) / 2;
            let end = after(start, took as f64);
            self.cut(
                book,
                saw,
                cut.palm,
                Made::by(CREW, cut.stem, start, end, cut.off),
            );
            now = after(end, 2.0);
            if date_palm {
                let out = bath.soak(self, book, saw, after(end, 1.0), minutes);
                ready.insert(saw, after(out, 1.0));
                used.retain(|other| *other != saw);
            } else if !used.contains(&saw) {
                used.push(saw);
            }
        }
        for saw in used {
            bath.soak(self, book, saw, after(now, 5.0), 10.0);
        }
    }

    /// The hired gang: one chain saw, stalks off the palm that is a suspect now, a wipe, then the row.
    fn gang(&mut self, book: &mut Book, row: &[Cut]) {
        let mut start = self.at(OVER_TRIMMED, 13, 0);
        let made = |start, end, off| Made::by(GANG, 1, start, end, off);
        self.cut(
            book,
            "G-1",
            tagged("L-16"),
            made(start, after(start, 9.0), stalks(3)),
        );
        let wipe = How {
            agent: "bleach",
            strength_pct: Some(10.0),
            minutes: Some(0.5),
            brushed: Some(false),
            ..How::by(GANG)
        };
        self.clean(book, "G-1", after(start, 12.0), wipe);
        for cut in row {
            start = after(start, 15.0);
            self.cut(
                book,
                "G-1",
                cut.palm,
                made(start, after(start, 11.0), cut.off),
            );
        }
    }

    /// The day behind the trace: one hand saw at five date palms, cleaned well, too short, nobody knows how, not at all.
    fn suspect(&mut self, book: &mut Book) {
        let at = |minute| self.at(SUSPECT_CUT, 13, minute);
        let cut = |book: &mut Book, tag: &str, minute: i64, count: u32| {
            let made = Made::by(CREW, 1, at(minute), at(minute + 12), stalks(count));
            self.cut(book, "S-1", tagged(tag), made);
        };
        let soak = |book: &mut Book, minute, agent, strength_pct, minutes| {
            let how = How {
                agent,
                strength_pct,
                minutes,
                brushed: Some(true),
                ..How::by(CREW)
            };
            self.clean(book, "S-1", at(minute), how);
        };
        cut(book, "L-15", 0, 4);
        cut(book, "L-16", 15, 5);
        // a dip where five minutes are needed
        soak(book, 31, "isopropyl", Some(50.0), Some(1.0));
        cut(book, "L-17", 33, 4);
        // a word that no source knows
        soak(book, 48, "citrus wipes", None, Some(2.0));
        cut(book, "L-18", 50, 3);
        // long enough, and strong enough
        soak(book, 75, "bleach", Some(25.0), Some(10.0));
        cut(book, "L-19", 77, 4);
        cut(book, "L-20", 92, 1);
        soak(book, 118, "bleach", Some(25.0), Some(10.0));
    }

    /// Half a year on: a palm of that day again, and two others after it with the same saw.
    fn cut_on(&mut self, book: &mut Book) {
        let at = |minute| self.at(CUT_ON, 13, minute);
        for (tag, minute, count) in [("L-17", 0, 2), ("L-14", 14, 3), ("L-21", 30, 1)] {
            let made = Made::by(CREW, 1, at(minute), at(minute + 10), stalks(count));
            self.cut(book, "S-1", tagged(tag), made);
        }
        let how = How {
            agent: "bleach",
            strength_pct: Some(25.0),
            minutes: Some(10.0),
            brushed: Some(true),
            ..How::by(CREW)
        };
        self.clean(book, "S-1", at(52), how);
    }

    /// The last days: one blade of each state a keeper meets, and one in other hands.
    fn as_they_stand(&mut self, book: &mut Book) {
        let at = |minute| self.at(3, 13, minute);
        let cut = |book: &mut Book, saw, tag: &str, minute: i64| {
            let made = Made::by(CREW, 1, at(minute), at(minute + 8), stalks(1));
            self.cut(book, saw, tagged(tag), made);
        };
        let clean = |book: &mut Book, saw, minute, agent, strength_pct, minutes| {
            let how = How {
                agent,
                strength_pct,
                minutes,
                brushed: Some(true),
                ..How::by(CREW)
            };
            self.clean(book, saw, at(minute), how);
        };
        let lent = Body::BladeLent {
            blade: self.ids["S-4"],
            to: "the gardener at Torvane House".to_owned(),
        };
        clean(book, "S-2", 0, "bleach", Some(25.0), Some(10.0));
        cut(book, "P-1", "T-07", 5);
        cut(book, "N-1", "T-13", 15);
        clean(book, "N-1", 30, "citrus wipes", None, None);
        cut(book, "S-3", "Q-05", 35);
        clean(book, "S-3", 50, "bleach", Some(25.0), Some(6.0));
        book.at(self.at(LENT, 14, 0), KEEPER, lent);
    }
}

/// A moment some minutes later.
fn after(moment: Moment, minutes: f64) -> Moment {
    Moment(moment.0 + (minutes * 60_000.0) as i64)
}

/// How a cut was made.
struct Made {
    crew: &'static str,
    stem: u16,
    start: Moment,
    end: Moment,
    off: TakenOff,
}

impl Made {
    fn by(crew: &'static str, stem: u16, start: Moment, end: Moment, off: TakenOff) -> Made {
        Made {
            crew,
            stem,
            start,
            end,
            off,
        }
    }
}

/// How a blade was cleaned.
struct How {
    agent: &'static str,
    strength_pct: Option<f64>,
    minutes: Option<f64>,
    brushed: Option<bool>,
    bath: Option<EntryId>,
    by: &'static str,
}

impl How {
    fn by(by: &'static str) -> How {
        How {
            agent: "",
            strength_pct: None,
            minutes: None,
            brushed: None,
            bath: None,
            by,
        }
    }
}

/// The baths of a round: changed in time.
struct Soaks {
    kit: &'static str,
    bath: EntryId,
    mixed: Moment,
    served: u32,
}

impl Soaks {
    fn mixed(book: &mut Book, at: Moment, kit: &'static str) -> Soaks {
        let body = Body::BathMixed(Bath {
            agent: "bleach".to_owned(),
            strength_pct: Some(25.0),
            kit: kit.to_owned(),
        });
        Soaks {
            kit,
            bath: book.at(at, CREW, body),
            mixed: at,
            served: 0,
        }
    }

    /// Soaks a saw from a moment on; when it comes out.
    fn soak(
        &mut self,
        saws: &Saws,
        book: &mut Book,
        saw: &str,
        from: Moment,
        minutes: f64,
    ) -> Moment {
        let out = after(from, minutes);
        if self.served >= 10 || out > after(self.mixed, 115.0) {
            *self = Soaks::mixed(book, from, self.kit);
        }
        self.served += 1;
        let how = How {
            minutes: Some(minutes),
            brushed: Some(true),
            bath: Some(self.bath),
            ..How::by(CREW)
        };
        saws.clean(book, saw, out, how);
        out
    }
}
