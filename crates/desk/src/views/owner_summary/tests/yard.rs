//! Two owners, a site without one, a palm without a site.

use model::{
    BladeId, BladeKind, Body, CutMade, EntryId, Move, PalmId, Site, Spear, TakenOff, Tending,
    Watering,
};
use testkit::{Book, InspectionWith, PalmWith, day, inspection, palm};

pub struct Yard {
    pub book: Book,
    pub n1: PalmId,
    pub n2: PalmId,
    pub s1: PalmId,
    pub o1: PalmId,
    pub cut_s1: EntryId,
    pub saw: BladeId,
}

pub fn cut(palm: PalmId, blade: BladeId, crew: &str, off: TakenOff) -> CutMade {
    CutMade {
        palm,
        stem: 1,
        blade,
        started: None,
        off,
        crew: crew.into(),
        despite: String::new(),
        notes: "the dog bites".into(),
        extra: Default::default(),
    }
}

pub fn brown(n: u32) -> TakenOff {
    TakenOff {
        brown: Some(n),
        ..TakenOff::default()
    }
}

/// Ada owns North (N1, N2) and South (S1, moved); Bea owns Other (O1); Bare has no owner (X1); Z1 has no site.
pub fn yard() -> Yard {
    let mut book = Book::new(1);
    for (name, owner) in [
        ("North", "Ada"),
        ("South", "Ada "),
        ("Other", "Bea"),
        ("Bare", ""),
    ] {
        let site = Site {
            name: name.into(),
            owner: owner.into(),
            line_kv: (name == "North").then_some(69.0),
            notes: "gate code 1234".into(),
            ..Site::default()
        };
        book.write(Body::SiteDescribed(site), None);
    }
    let sabal = |tag: &str, site: &str| {
        palm("Sabal palmetto")
            .tag(tag)
            .site(site)
            .cleaned("2025-06-01")
            .trunk(6.0)
    };
    let n1 = book.register(sabal("N1", "North").wires(4.0));
    let n2 = book.register(sabal("N2", "North"));
    let s1 = book.register(
        palm("Syagrus romanzoffiana")
            .tag("S1")
            .site("South")
            .moved("2026-05-01")
            .cleaned("2026-05-01")
            .trunk(5.0),
    );
    let o1 = book.register(sabal("O1", "Other"));
    book.register(sabal("X1", "Bare"));
    book.register(sabal("Z1", ""));
    for id in [n1, n2, o1] {
        book.on("2026-06-10").inspect(
            id,
            inspection("2026-06-10").counts(30, 1, 0).spear(Spear::Firm),
        );
    }
    let look = inspection("2026-06-10").counts(14, 1, 0).spear(Spear::Firm);
    book.inspect(s1, look);
    let moved = Move {
        fronds_taken: Some(2),
        notes: "he haggled".into(),
        ..Move::on(day("2026-05-01"))
    };
    book.on("2026-05-01").write(
        Body::Tended {
            palm: s1,
            what: Tending::Moved(moved),
        },
        None,
    );
    let water = Tending::Watered(Watering {
        litres: Some(60.0),
        notes: String::new(),
    });
    book.on("2026-06-12").write(
        Body::Tended {
            palm: s1,
            what: water,
        },
        None,
    );
    let saw = book.blade("B-1", BladeKind::HandSaw);
    // nothing is known of the blade before N1; N2 follows without a cleaning; S1 gets a new blade
    book.on("2026-06-01")
        .write(Body::CutMade(cut(n1, saw, "Fenlock", brown(5))), None);
    book.write(Body::CutMade(cut(n2, saw, "Fenlock", brown(3))), None);
    book.on("2026-06-03").clean(saw, "new-blade", None, None);
    let cut_s1 = book.write(Body::CutMade(cut(s1, saw, "", brown(2))), None);
    book.on("2026-06-04").clean(saw, "new-blade", None, None);
    book.write(Body::CutMade(cut(o1, saw, "Boathouse", brown(7))), None);
    // long before the period
    let old = book.on("2025-02-01").blade("B-0", BladeKind::HandSaw);
    book.write(Body::CutMade(cut(n1, old, "Old gang", brown(99))), None);
    Yard {
        book,
        n1,
        n2,
        s1,
        o1,
        cut_s1,
        saw,
    }
}
