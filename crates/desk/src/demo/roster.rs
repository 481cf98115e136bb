//! Who stands where: the palms of the demo and what befalls each.
//!
//! Figures of crowns and yearly fronds are made up near those of the species, to draw counts from; they are shown to
//! nobody and feed no calculation.

/// A case a keeper meets; the demo holds at least one palm of each.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Case {
    /// Moved nine weeks ago, shedding.
    MovedNineWeeksAgo,
    /// Hungry: half a crown, long yellowing.
    Hungry,
    /// Suspected wilt: declining from one side, held.
    WiltSuspect,
    /// One of a row that a contractor cut far too hard.
    OverTrimmed,
    /// A skirt of dead fronds over a path.
    SkirtOverPath,
    /// Wires nearer to the crown than anybody but line-clearance workers may work.
    WiresNear,
    /// A nest in the crown, held until it is empty.
    NestHold,
    /// Several stems, each with a crown of its own.
    MultiStem,
    /// Seen once.
    OneInspection,
    /// Nobody knows what it is.
    UnknownSpecies,
    /// Some counts were not taken.
    MissingCounts,
    /// Drops its own fronds, crownshaft and all.
    SelfCleaning,
    /// The spear leans.
    SpearLeaning,
    /// A conk at the foot of the trunk; nobody has set a hold yet.
    Conk,
}

impl Case {
    /// All of them.
    pub const ALL: [Case; 14] = [
        Case::MovedNineWeeksAgo,
        Case::Hungry,
        Case::WiltSuspect,
        Case::OverTrimmed,
        Case::SkirtOverPath,
        Case::WiresNear,
        Case::NestHold,
        Case::MultiStem,
        Case::OneInspection,
        Case::UnknownSpecies,
        Case::MissingCounts,
        Case::SelfCleaning,
        Case::SpearLeaning,
        Case::Conk,
    ];
}

/// The invented grounds: name, whose, where (dry land, degrees north and east).
pub const SITES: [(&str, &str, [f64; 2]); 3] = [
    (
        "Quillmere Yard",
        "the yard's own stock",
        [25.5620, -80.4820],
    ),
    (
        "Torvane House",
        "the Torvane household",
        [25.5790, -80.4520],
    ),
    (
        "Lantern Walk",
        "the parish of Quillmere",
        [25.5480, -80.5010],
    ),
];
const YARD: usize = 0;
const HOUSE: usize = 1;
const WALK: usize = 2;

/// One palm of the demo.
#[derive(Clone, Debug)]
pub(super) struct Plot {
    pub tag: String,
    pub species: &'static str,
    pub site: usize,
    pub stems: u16,
    /// Ground to crown base, m.
    pub height: f64,
    pub over: &'static str,
    /// Nearest wire, m.
    pub wires: Option<f64>,
    /// Live fronds of a full crown, and fronds a year.
    pub full: f64,
    pub per_year: f64,
    /// Share of a frond's life that hunger takes.
    pub hunger: f64,
    /// Mean days a dead frond stays on.
    pub hangs: Option<f64>,
    /// Days since it was moved.
    pub moved: Option<i32>,
    /// Nobody ever took its dead fronds off.
    pub never_cleaned: bool,
    /// The keeper's own figure for a full crown, where the tables have none.
    pub told_full: Option<f64>,
    pub cases: Vec<Case>,
    pub notes: &'static str,
}

impl Plot {
    fn case(mut self, case: Case) -> Plot {
        self.cases.push(case);
        self
    }

    fn tall(self, height: f64) -> Plot {
        Plot { height, ..self }
    }

    fn over(self, over: &'static str) -> Plot {
        Plot { over, ..self }
    }

    fn stems(self, stems: u16) -> Plot {
        Plot { stems, ..self }.case(Case::MultiStem)
    }

    fn moved(self, days: i32) -> Plot {
        Plot {
            moved: Some(days),
            ..self
        }
    }

    fn hungry(self) -> Plot {
        Plot {
            hunger: 0.45,
            ..self
        }
        .case(Case::Hungry)
    }

    /// The keeper knows what a full crown of it is.
    fn told(self) -> Plot {
        Plot {
            told_full: Some(self.full),
            ..self
        }
    }

    fn notes(self, notes: &'static str) -> Plot {
        Plot { notes, ..self }
    }
}

/// Species with the made-up figures of their crowns: full crown, fronds a year, days a dead frond stays on.
type Kind = (&'static str, f64, f64, Option<f64>);

const SABAL: Kind = ("Sabal palmetto", 26.0, 13.0, Some(240.0));
const QUEEN: Kind = ("Syagrus romanzoffiana", 19.0, 12.0, Some(150.0));
const MEXICAN_FAN: Kind = ("Washingtonia robusta", 33.0, 17.0, Some(400.0));
const DESERT_FAN: Kind = ("Washingtonia filifera", 32.0, 14.0, None);
const CANARY: Kind = ("Phoenix canariensis", 138.0, 50.0, None);
const MEDJOOL: Kind = ("Phoenix dactylifera 'Medjool'", 104.0, 21.0, None);
const WILD_DATE: Kind = ("Phoenix sylvestris", 74.0, 24.0, None);
const PYGMY: Kind = ("Phoenix roebelenii", 32.0, 15.0, None);
const SENEGAL: Kind = ("Phoenix reclinata", 27.0, 13.0, None);
const ROYAL: Kind = ("Roystonea regia", 17.0, 12.0, Some(7.0));
const KING: Kind = ("Archontophoenix cunninghamiana", 11.0, 8.0, Some(7.0));
const FOXTAIL: Kind = ("Wodyetia bifurcata", 9.0, 7.0, Some(7.0));
const CHRISTMAS: Kind = ("Adonidia merrillii", 13.0, 9.0, Some(7.0));
const COCONUT: Kind = ("Cocos nucifera", 26.0, 13.0, Some(60.0));
const CHINESE_FAN: Kind = ("Livistona chinensis", 44.0, 17.0, None);
const BISMARCK: Kind = ("Bismarckia nobilis", 24.0, 10.0, Some(200.0));
const PINDO: Kind = ("Butia odorata", 32.0, 12.0, None);
const WINDMILL: Kind = ("Trachycarpus fortunei", 19.0, 13.0, None);
const EUROPEAN_FAN: Kind = ("Chamaerops humilis", 14.0, 9.0, None);
const ARECA: Kind = ("Dypsis lutescens", 8.0, 6.0, Some(80.0));
const FISHTAIL: Kind = ("Caryota mitis", 9.0, 5.0, None);
const BLUE_FAN: Kind = ("Brahea armata", 27.0, 9.0, None);
const NOBODY_KNOWS: Kind = ("label lost", 22.0, 11.0, None);

fn plot(tag: &str, site: usize, (species, full, per_year, hangs): Kind) -> Plot {
    Plot {
        tag: tag.to_owned(),
        species,
        site,
        stems: 1,
        height: 5.0,
        over: "",
        wires: None,
        full,
        per_year,
        hunger: 0.0,
        hangs,
        moved: None,
        never_cleaned: false,
        told_full: None,
        cases: Vec::new(),
        notes: "",
    }
}

/// So many of a kind in a row, tags counting on from `first`.
fn row(
    letter: &str,
    first: u32,
    count: u32,
    site: usize,
    kind: Kind,
) -> impl Iterator<Item = Plot> {
    let letter = letter.to_owned();
    (first..first + count).map(move |n| plot(&format!("{letter}-{n:02}"), site, kind))
}

/// All palms, in the order of their ids.
pub(super) fn plots() -> Vec<Plot> {
    let mut plots = yard();
    plots.extend(house());
    plots.extend(walk());
    plots
}

/// Stock just dug and shipped, waiting for its place.
fn yard() -> Vec<Plot> {
    let mut plots = vec![
        plot("Q-01", YARD, MEDJOOL)
            .tall(4.5)
            .moved(63)
            .case(Case::MovedNineWeeksAgo)
            .notes("Came nine weeks ago with fronds tied; braced on four sides."),
    ];
    plots.extend(
        row("Q", 2, 3, YARD, MEDJOOL)
            .zip([120, 210, 330])
            .map(|(p, days)| p.tall(4.0).moved(days)),
    );
    plots.extend(
        row("Q", 5, 4, YARD, WILD_DATE)
            .zip([35, 98, 180, 260])
            .map(|(p, days)| p.tall(3.5).moved(days)),
    );
    plots.extend(
        row("Q", 9, 4, YARD, SABAL)
            .zip([150, 150, 290, 290])
            .map(|(p, days)| p.tall(4.2).moved(days)),
    );
    plots.extend(
        row("Q", 13, 3, YARD, BISMARCK)
            .zip([75, 160, 320])
            .map(|(p, days)| p.tall(1.2).moved(days)),
    );
    plots.push(
        plot("Q-16", YARD, QUEEN)
            .tall(3.8)
            .moved(110)
            .case(Case::MissingCounts),
    );
    plots.push(plot("Q-17", YARD, QUEEN).tall(3.9).moved(110));
    let lost = plot("Q-18", YARD, NOBODY_KNOWS)
        .tall(2.0)
        .moved(90)
        .case(Case::UnknownSpecies);
    plots.push(lost.notes("Label lost on the lorry; feather leaf, no spines, no crownshaft."));
    plots.push(
        plot("Q-19", YARD, CHRISTMAS)
            .tall(3.0)
            .stems(2)
            .moved(140)
            .case(Case::SpearLeaning),
    );
    plots
}

/// A private garden.
fn house() -> Vec<Plot> {
    let mut plots: Vec<Plot> = row("T", 1, 6, HOUSE, ROYAL)
        .zip([11.0, 11.5, 10.8, 11.2, 12.0, 11.6])
        .map(|(p, height)| p.tall(height).over("drive").case(Case::SelfCleaning))
        .collect();
    plots.push(
        plot("T-07", HOUSE, QUEEN)
            .tall(8.0)
            .hungry()
            .notes("Yellow-spotted old fronds; lawn feed only."),
    );
    plots.push(plot("T-08", HOUSE, QUEEN).tall(8.5).hungry());
    plots.push(plot("T-09", HOUSE, QUEEN).tall(7.5));
    let conk = plot("T-10", HOUSE, QUEEN).tall(7.5).over("drive");
    plots.push(
        conk.case(Case::Conk)
            .notes("Shelf of a fungus at the foot, found on the last rounds."),
    );
    plots.push(
        plot("T-11", HOUSE, PYGMY)
            .tall(2.1)
            .stems(3)
            .over("terrace")
            .told(),
    );
    plots.push(
        plot("T-12", HOUSE, PYGMY)
            .tall(2.0)
            .stems(3)
            .over("terrace")
            .told()
            .hungry(),
    );
    plots.push(plot("T-13", HOUSE, ARECA).tall(2.5).stems(5));
    plots.push(plot("T-14", HOUSE, EUROPEAN_FAN).tall(1.4).stems(4));
    plots.push(plot("T-15", HOUSE, KING).tall(6.0).case(Case::SelfCleaning));
    plots.push(plot("T-16", HOUSE, KING).tall(6.4).case(Case::SelfCleaning));
    plots.extend(row("T", 17, 2, HOUSE, FOXTAIL).map(|p| p.tall(5.0).case(Case::SelfCleaning)));
    plots.extend(
        row("T", 19, 2, HOUSE, COCONUT)
            .map(|p| p.tall(7.0).over("pool").notes("Nuts over the pool.")),
    );
    let nest = plot("T-21", HOUSE, SENEGAL)
        .tall(5.5)
        .stems(4)
        .case(Case::NestHold);
    plots.push(nest.notes("Clump by the pond; thorns all round."));
    plots.push(
        plot("T-22", HOUSE, CHINESE_FAN)
            .tall(4.0)
            .case(Case::MissingCounts),
    );
    plots.push(plot("T-23", HOUSE, FISHTAIL).tall(3.5).stems(3));
    plots
}

/// A public promenade.
fn walk() -> Vec<Plot> {
    let mut plots: Vec<Plot> = row("L", 1, 7, WALK, SABAL)
        .map(|p| p.tall(6.5).over("promenade").case(Case::OverTrimmed))
        .collect();
    let mut skirt = plot("L-08", WALK, DESERT_FAN)
        .tall(9.5)
        .over("footpath")
        .case(Case::SkirtOverPath);
    skirt.never_cleaned = true;
    plots.push(
        skirt.notes("Dead fronds down to three metres, never taken off as far as anybody knows."),
    );
    plots.push(plot("L-09", WALK, DESERT_FAN).tall(8.0));
    let wires = Plot {
        wires: Some(2.1),
        ..plot("L-10", WALK, MEXICAN_FAN)
    }
    .tall(15.0)
    .over("street");
    plots.push(
        wires
            .case(Case::WiresNear)
            .notes("Grew up into the line along the street."),
    );
    plots.push(
        Plot {
            wires: Some(6.0),
            ..plot("L-11", WALK, MEXICAN_FAN)
        }
        .tall(13.5)
        .over("street"),
    );
    plots.extend(row("L", 12, 3, WALK, MEXICAN_FAN).map(|p| p.tall(14.0).over("parking bays")));
    plots.push(plot("L-15", WALK, CANARY).tall(6.0).over("lawn"));
    let wilt = plot("L-16", WALK, CANARY)
        .tall(6.2)
        .over("lawn")
        .case(Case::WiltSuspect);
    plots.push(
        wilt.notes("Trimmed last year on the same day and with the same saw as L-15 and L-17."),
    );
    plots.extend(row("L", 17, 3, WALK, CANARY).map(|p| p.tall(5.8).over("lawn")));
    plots.extend(row("L", 20, 2, WALK, PINDO).map(|p| p.tall(2.2)));
    plots.extend(row("L", 22, 2, WALK, WINDMILL).map(|p| p.tall(3.0)));
    plots.push(
        plot("L-24", WALK, BLUE_FAN)
            .tall(2.4)
            .case(Case::OneInspection)
            .notes("Found behind the bandstand."),
    );
    plots
}
