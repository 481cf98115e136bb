use super::*;
use crate::leaf::Size;
use crate::testing::{codes_on, leaf, pictures, text_of};
use desk::views::{Line, Said};
use desk::words::Lang;

fn caution(text: &str) -> Said {
    Said {
        code: "caution-test",
        weight: "caution",
        text: text.to_owned(),
        basis: Some("assumed".to_owned()),
        sources: Vec::new(),
        otherwise: Vec::new(),
    }
}

fn row(n: usize, tag: &str, tasks: &str, clean: bool) -> SheetRow {
    SheetRow {
        n,
        start: format!("0{}:30", 6 + n),
        tag: tag.to_owned(),
        species: "Sabal palmetto".to_owned(),
        site: "Heron Court".to_owned(),
        tasks: tasks.to_owned(),
        clean,
        held: false,
    }
}

fn card(n: usize, tag: &str, holds: Vec<Said>) -> Card {
    Card {
        n,
        tag: tag.to_owned(),
        stem: None,
        species: "Sabal palmetto".to_owned(),
        site: "Heron Court".to_owned(),
        svg: r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"><path d="M0 0h10v10z" fill="#000"/></svg>"##
            .to_owned(),
        says: "a crown".to_owned(),
        take: "four brown fronds".to_owned(),
        stay: "thirty green fronds".to_owned(),
        how: vec![Line {
            name: "Stub to leave".to_owned(),
            value: "5 cm".to_owned(),
        }],
        holds,
        clean: true,
    }
}

fn round() -> CrewSheet {
    CrewSheet {
        title: "Round of the Terns".to_owned(),
        when: "3 Mar 2026, 07:10 to 14:40".to_owned(),
        notes: "The gate code is with the porter.".to_owned(),
        rows: vec![
            row(1, "T-1", "cut", true),
            row(2, "T-2", "look", false),
            row(3, "T-3", "cut", true),
        ],
        cards: vec![
            card(1, "T-1", Vec::new()),
            card(3, "T-3", vec![caution("The spear leans.")]),
        ],
        cautions: vec![
            Warned {
                said: caution("Wires near the crown."),
                tags: vec!["T-3".to_owned()],
            },
            Warned {
                said: caution("Nobody stands under the crown."),
                tags: vec!["T-1".to_owned(), "T-3".to_owned()],
            },
        ],
        path: "/round/0190".to_owned(),
    }
}

#[test]
fn the_sheet_says_order_cuts_blades_cautions_and_where_to_look() {
    let sheet = crew_sheet(
        &leaf(Lang::En, Size::A4),
        &round(),
        Some("http://10.0.0.2:7474/"),
    )
    .unwrap();
    let text = text_of(&sheet);
    let said = [
        "Round of the Terns",
        "07:10 to 14:40",
        "The gate code is with the porter.",
        "T-2",
        "four brown fronds",
        "Stub to leave",
        "The spear leans.",
        "Wires near the crown.",
        "(T-3)",
        "Nobody stands under the crown.",
        "CLEAN BLADE FIRST",
    ];
    for words in said {
        assert!(text.contains(words), "{words}: {text}");
    }
    assert_eq!(
        text.matches("CLEAN BLADE FIRST").count(),
        4,
        "two rows, two cards"
    );
    // what holds for all that are cut is not said palm by palm; a held palm shows no cut
    assert!(!text.contains("(T-1, T-3)"), "{text}");
    assert_eq!(text.matches("four brown fronds").count(), 1);
}

#[test]
fn without_an_address_there_is_no_code_and_an_empty_round_makes_no_sheet() {
    let made = sheet(&leaf(Lang::Es, Size::Letter), &round(), None);
    assert!(made.code.is_none());
    let text = text_of(&crew_sheet(&leaf(Lang::Es, Size::Letter), &round(), None).unwrap());
    assert!(
        text.contains("LIMPIAR ANTES") && text.contains("Precauciones"),
        "{text}"
    );
    let mut none = round();
    none.rows.clear();
    assert_eq!(
        crew_sheet(&leaf(Lang::En, Size::A4), &none, None),
        Err(Error::Empty)
    );
    let mut many = round();
    many.cards = vec![card(1, "T-1", Vec::new()); MOST + 1];
    let refused = crew_sheet(&leaf(Lang::En, Size::A4), &many, None);
    assert!(matches!(refused, Err(Error::TooMany { limit: MOST, .. })));
}

/// The mark for a clean blade is white on black: it must stand out on a copy without colour.
#[test]
fn the_mark_for_a_clean_blade_is_black() {
    let data = sheet(&leaf(Lang::En, Size::A4), &round(), None);
    let document = press::set(TEMPLATE, &data).unwrap();
    let page = &pictures(&document, 1.0)[0];
    let black = (0..800)
        .flat_map(|y| (0..590).map(move |x| (x, y)))
        .filter(|(x, y)| page.grey(*x, *y) < 30)
        .count();
    let mut plain = round();
    for row in &mut plain.rows {
        row.clean = false;
    }
    for card in &mut plain.cards {
        card.clean = false;
    }
    let plain = sheet(&leaf(Lang::En, Size::A4), &plain, None);
    let document = press::set(TEMPLATE, &plain).unwrap();
    let page = &pictures(&document, 1.0)[0];
    let less = (0..800)
        .flat_map(|y| (0..590).map(move |x| (x, y)))
        .filter(|(x, y)| page.grey(*x, *y) < 30)
        .count();
    assert!(black > less + 1_000, "{black} {less}");
}

#[test]
fn the_code_on_the_sheet_reads_back_as_the_page_of_the_round() {
    for (lang, size) in [(Lang::En, Size::A4), (Lang::Es, Size::Letter)] {
        let data = sheet(&leaf(lang, size), &round(), Some("http://192.0.2.17:7474/"));
        let document = press::set(TEMPLATE, &data).unwrap();
        let page = format!("http://192.0.2.17:7474{}", round().path);
        assert_eq!(codes_on(&document), [page]);
    }
}
