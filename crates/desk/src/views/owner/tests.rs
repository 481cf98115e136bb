use super::*;
use crate::forms::{Given, Typed, save_link, save_revoked};
use crate::measure::{Measure, Units};
use crate::owner::{fresh_secret, hash, opened};
use crate::views::testing::office_on;
use crate::words::{Lang, Words};
use model::{
    Body, EntryId, Feeding, LeavesAtMove, Metres, Move, OwnerLink, Spear, Tending, Watering,
};
use testkit::{Book, InspectionWith, PalmWith, day, inspection, palm};

const TODAY: &str = "2026-06-15";

fn speaker(lang: Lang) -> Speaker {
    Speaker::new(Measure::new(Units::Metric, Words::new(lang)))
}

fn office(book: &Book) -> Office {
    office_on(book, TODAY)
}

/// A1: moved six weeks ago, watered and counted; B1: settled, cut and fed; C1: held, its spear down; D1: nobody looked.
fn yard() -> Book {
    let mut book = Book::new(1);
    let a1 = book.register(
        palm("Syagrus romanzoffiana")
            .tag("A1")
            .site("Yard")
            .moved("2026-05-01")
            .cleaned("2026-05-01")
            .trunk(5.0),
    );
    let moved = Move {
        planted_on: Some(day("2026-05-02")),
        ball_radius: Some(Metres(0.61)),
        ball_depth: Some(Metres(0.6)),
        leaves: Some(LeavesAtMove::Tied),
        soil: "sand".into(),
        bracing: "four props".into(),
        notes: "the gate code is secret".into(),
        ..Move::on(day("2026-05-01"))
    };
    let tended = |palm, what| Body::Tended { palm, what };
    book.on("2026-05-01")
        .write(tended(a1, Tending::Moved(moved)), None);
    book.on("2026-05-02").inspect(
        a1,
        inspection("2026-05-02").counts(16, 0, 0).spear(Spear::Firm),
    );
    book.on("2026-06-10").inspect(
        a1,
        inspection("2026-06-10").counts(14, 1, 2).spear(Spear::Firm),
    );
    for date in ["2026-06-12", "2026-06-14"] {
        let water = Watering {
            litres: Some(60.0),
            notes: String::new(),
        };
        book.on(date)
            .write(tended(a1, Tending::Watered(water)), None);
    }
    let b1 = book.register(
        palm("Sabal palmetto")
            .tag("B1")
            .cleaned("2025-06-01")
            .trunk(6.0),
    );
    for (date, green, brown) in [("2025-12-01", 30, 6), ("2026-06-01", 30, 5)] {
        let look = inspection(date)
            .counts(green, 1, brown)
            .removed(0, 0, brown);
        book.on(date).inspect(b1, look);
    }
    let fed = Feeding {
        product: "palm-blend".into(),
        grams: Some(2_000.0),
        ..Feeding::default()
    };
    book.on("2026-06-02")
        .write(tended(b1, Tending::Fed(fed)), None);
    let c1 = book.register(palm("Phoenix canariensis").tag("C1").trunk(7.0));
    book.on("2026-06-10").inspect(
        c1,
        inspection("2026-06-10").counts(60, 2, 4).spear(Spear::Down),
    );
    book.hold(c1, "wilt-suspect", None);
    book.register(palm("Phoenix reclinata").tag("D1").stems(5));
    book
}

fn sheet(office: &Office, lang: Lang, tag: &str) -> OwnerView {
    let state = office.state();
    view(&speaker(lang), office, state.by_tag(tag).unwrap()).unwrap()
}

/// All sentences of a sheet.
fn texts(view: &OwnerView) -> Vec<String> {
    let mut all = vec![
        view.title.clone(),
        view.as_of.clone(),
        view.stand.1.clone(),
        view.done_since.clone(),
        view.picture_note.clone(),
        view.rests_on.clone(),
        view.call_at_once.clone(),
        view.level.clone(),
    ];
    all.extend(view.more_stems.clone());
    all.extend(view.next.clone());
    for done in &view.done {
        all.extend([done.what.clone(), done.when.clone()]);
        all.extend(
            done.facts
                .iter()
                .map(|(name, value)| format!("{name}: {value}")),
        );
    }
    for stem in &view.stems {
        all.extend([stem.expect.clone(), stem.later.clone(), stem.call.clone()]);
        for picture in &stem.pictures {
            all.extend([
                picture.when.clone(),
                picture.range.clone(),
                picture.counts_words.clone(),
            ]);
        }
    }
    for part in [&view.water, &view.feed] {
        all.extend(part.lead.clone());
        all.extend(part.heads.clone());
        all.extend(part.rows.iter().flatten().cloned());
        all.extend(part.points.iter().map(|p| p.text.clone()));
    }
    let points = [&view.urgent, &view.usual, &view.never, &view.cautions];
    all.extend(points.into_iter().flatten().map(|p| p.text.clone()));
    all
}

#[test]
fn everything_has_words_in_both_languages_and_nothing_of_the_keeper_leaks() {
    let office = office(&yard());
    for lang in Lang::ALL {
        for tag in ["A1", "B1", "C1", "D1"] {
            for text in texts(&sheet(&office, lang, tag)) {
                let code = !text.contains(' ') && text.contains('-') && !text.contains(':');
                assert!(
                    !code && !text.contains("{$") && !text.is_empty(),
                    "{tag}: “{text}”"
                );
                assert!(
                    !text.contains("secret") && !text.contains("owner-"),
                    "{tag}: “{text}”"
                );
            }
        }
    }
}

#[test]
fn a_moved_palm_is_promised_what_the_move_page_promises() {
    let office = office(&yard());
    let own = sheet(&office, Lang::En, "A1");
    assert_eq!(own.stand.0, "on-its-way");
    assert!(own.urgent.is_empty(), "{:?}", own.urgent);
    let asked = crate::views::moved::Asked::default();
    let page = crate::views::moved::page(&speaker(Lang::En), &office, "A1", &asked).unwrap();
    let promise = page.promise.unwrap();
    assert_eq!(own.stems[0].expect, promise.full);
    assert_eq!(own.stems[0].call, promise.call);
    let moved = own.done.iter().find(|d| d.kind == "moved").unwrap();
    assert!(moved.facts.iter().any(|(_, value)| value == "four props"));
    let colour = own.usual.iter().find(|p| p.text.contains("colour"));
    // common practice: a new trunk colour fades within three to six months
    assert!(
        colour.is_some_and(|p| p.text.contains("in 3 to 6 months")),
        "{:?}",
        own.usual
    );
}

#[test]
fn the_crown_is_drawn_now_in_8_and_in_26_weeks() {
    let office = office(&yard());
    let own = sheet(&office, Lang::En, "A1");
    let pictures = &own.stems[0].pictures;
    assert_eq!(
        pictures.iter().map(|p| p.weeks).collect::<Vec<_>>(),
        [0, 8, 26]
    );
    for picture in pictures {
        let [green, yellowing, brown] = picture.counts;
        let drawn = picture.svg.matches("<use ").count();
        assert_eq!(drawn, green + yellowing + brown, "{}", picture.when);
        assert!(picture.svg.starts_with("<svg ") && picture.svg.ends_with("</svg>"));
        for used in picture.svg.split("href=\"#").skip(1) {
            let id = used.split('"').next().unwrap();
            assert!(picture.svg.contains(&format!("<g id=\"{id}\"")), "{id}");
        }
    }
    // cabbage palms keep their dead fronds: in half a year more hang than today
    let sabal = sheet(&office, Lang::En, "B1");
    let pictures = &sabal.stems[0].pictures;
    assert!(pictures[2].counts[2] > pictures[0].counts[2]);
}

#[test]
fn what_was_done_is_told_once_and_newest_first() {
    let office = office(&yard());
    let a1 = sheet(&office, Lang::En, "A1");
    let kinds: Vec<&str> = a1.done.iter().map(|d| d.kind).collect();
    assert_eq!(kinds, ["watered", "looked", "moved"]);
    assert_eq!(a1.done[0].what, "Watered 2 times, this is the last");
    let b1 = sheet(&office, Lang::En, "B1");
    let cuts: Vec<&str> = b1
        .done
        .iter()
        .filter(|d| d.kind == "cut")
        .map(|d| d.what.as_str())
        .collect();
    assert_eq!(cuts, ["Taken off: 5 brown", "Taken off: 6 brown"]);
    let fed = b1.done.iter().find(|d| d.kind == "fed").unwrap();
    assert!(fed.what.contains("Palm blend 8-2-12+4Mg"), "{}", fed.what);
}

#[test]
fn a_settled_palm_has_a_sheet_without_a_move() {
    let office = office(&yard());
    let own = sheet(&office, Lang::En, "B1");
    assert_eq!(own.stand.0, "settled");
    assert!(own.done.iter().all(|d| d.kind != "moved"));
    assert!(
        texts(&own)
            .iter()
            .all(|t| !t.contains("colour") && !t.contains("the move"))
    );
    assert!(own.stems[0].expect.contains("further frond"));
    // fed two weeks ago: two months between two feedings [mitchell-fert]
    assert!(own.feed.rows.is_empty(), "{:?}", own.feed.rows);
    assert!(
        own.feed
            .points
            .iter()
            .any(|p| p.text.contains("not again before"))
    );
}

#[test]
fn a_hold_and_a_spear_that_is_down_come_first() {
    let office = office(&yard());
    let own = sheet(&office, Lang::En, "C1");
    assert_eq!(own.stand.0, "urgent");
    assert!(
        own.urgent[0]
            .text
            .starts_with("Nobody cuts this palm for now"),
        "{:?}",
        own.urgent
    );
    assert!(own.urgent.iter().any(|p| p.text.contains("was down on")));
    assert_eq!(own.next, ["Nothing is cut until the keeper says so."]);
    let never: Vec<&str> = own.never.iter().map(|p| p.text.as_str()).collect();
    for word in ["level line", "spikes", "nailed", "blade", "chain saw"] {
        assert!(never.iter().any(|t| t.contains(word)), "{word}: {never:?}");
    }
    // spines and tall crowns have their cautions
    assert!(!own.cautions.is_empty());
}

#[test]
fn of_many_stems_some_are_drawn_and_the_rest_are_named() {
    let office = office(&yard());
    let own = sheet(&office, Lang::En, "D1");
    assert_eq!(own.stems.len(), MOST_STEMS);
    assert_eq!(
        own.more_stems.as_deref(),
        Some("2 more stems stand no worse and are not drawn.")
    );
    assert!(own.stems[0].expect.starts_with("Nobody has counted yet."));
}

fn typed(pairs: &[(&str, &str)]) -> Typed {
    Typed::of(pairs.to_vec())
}

#[test]
fn a_link_opens_its_palm_until_it_is_revoked() {
    let office = office(&yard());
    let palm = office.state().by_tag("A1").unwrap().id;
    let form = typed(&[
        ("id", &office.new_id().0.to_string()),
        ("link_owner", "Ana"),
    ]);
    let Given::Now { secret, .. } = save_link(&office, palm, &form).unwrap() else {
        panic!("given before");
    };
    assert_eq!(opened(&office, &secret).unwrap().palm.tag, "A1");
    assert!(opened(&office, &fresh_secret()).is_none());
    // the form sent twice: one link, and the secret is told once
    assert_eq!(save_link(&office, palm, &form).unwrap(), Given::Before);
    let record = office.state().palm(palm).unwrap().clone();
    assert_eq!(record.links.len(), 1);
    let kept = &record.links[0].link.secret_hash;
    assert_eq!(*kept, hash(&secret));
    assert!(!format!("{:?}", office.history(palm).unwrap()).contains(&secret));

    let entry = record.links[0].entry.0.to_string();
    save_revoked(&office, palm, &typed(&[("link", &entry)]), "over".into()).unwrap();
    assert!(opened(&office, &secret).is_none());
    assert!(office.state().palm(palm).unwrap().links.is_empty());
    // revoking twice changes nothing
    save_revoked(&office, palm, &typed(&[("link", &entry)]), "over".into()).unwrap();
}

#[test]
fn a_link_ends_after_its_last_day_and_with_its_palm() {
    let secret = fresh_secret();
    let mut book = yard();
    let a1 = office(&book).state().by_tag("A1").unwrap().id;
    let link = OwnerLink {
        secret_hash: hash(&secret),
        until: Some(day("2026-06-20")),
        owner: "Ana".into(),
    };
    let given: EntryId = book
        .on("2026-06-10")
        .write(Body::LinkGiven { palm: a1, link }, None);
    assert!(opened(&office_on(&book, "2026-06-20"), &secret).is_some());
    assert!(opened(&office_on(&book, "2026-06-21"), &secret).is_none());
    let rows = |today: &str| {
        let office = office_on(&book, today);
        let record = office.state().by_tag("A1").unwrap().clone();
        links(&speaker(Lang::En), &office, &record)
    };
    assert!(rows("2026-06-20")[0].works && !rows("2026-06-21")[0].works);
    assert_eq!(rows("2026-06-20")[0].entry, given.0.to_string());
    book.on("2026-06-12").remove(a1, "felled");
    assert!(opened(&office_on(&book, "2026-06-15"), &secret).is_none());
}
