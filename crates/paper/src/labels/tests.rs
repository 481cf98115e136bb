use super::*;
use crate::leaf::Size;
use crate::testing::{leaf, pictures, text_of};
use desk::measure::Units;
use desk::words::Lang;
use model::{Blade, BladeKind, Palm};

const BASE: &str = "http://192.0.2.17:7474";

fn blade(tag: &str, kind: BladeKind, kit: &str) -> Blade {
    Blade {
        tag: tag.to_owned(),
        kind,
        kit: kit.to_owned(),
        ..Blade::default()
    }
}

fn many(n: usize) -> Vec<Label> {
    let leaf = leaf(Lang::En, Size::A4);
    (1..=n)
        .map(|i| {
            Label::blade(
                &leaf,
                &blade(&format!("S-{i}"), BladeKind::PoleSaw, "truck 2"),
            )
        })
        .collect()
}

/// What a QR reader from outside the project (`rqrr`) reads off the printed page, held before it label by label.
fn read_off(leaf: &Leaf, labels: &[Label]) -> Vec<String> {
    const SCALE: f64 = 3.0;
    let sheet = sheet(leaf, BASE, labels).unwrap();
    let document = press::set(TEMPLATE, &sheet).unwrap();
    let mm = |mm: f64| (mm * SCALE * 72.0 / 25.4).round() as usize;
    let (page_width, page_height) = leaf.size.mm();
    let rows = ((page_height - 21.0) / 34.0) as usize;
    let (side, above) = (
        (page_width - 192.0) / 2.0,
        (page_height - rows as f64 * 34.0) / 2.0,
    );
    let mut read = Vec::new();
    for picture in pictures(&document, SCALE) {
        for place in 0..rows * 3 {
            let (left, top) = (
                mm(side + 64.0 * (place % 3) as f64),
                mm(above + 34.0 * (place / 3) as f64),
            );
            let at = |x, y| picture.grey(left + x, top + y);
            let mut grey = rqrr::PreparedImage::prepare_from_greyscale(mm(63.0), mm(33.0), at);
            read.extend(
                grey.detect_grids()
                    .iter()
                    .map(|grid| grid.decode().unwrap().1),
            );
        }
    }
    read
}

#[test]
fn every_code_reads_back_as_the_address_of_its_blade() {
    for size in Size::ALL {
        let leaf = leaf(Lang::En, size);
        let mut labels = many(26);
        labels.push(Label::palm(&Palm {
            tag: "Ñ 1/2?".to_owned(),
            ..Palm::default()
        }));
        let expected: Vec<String> = labels.iter().map(|l| format!("{BASE}{}", l.path)).collect();
        assert_eq!(read_off(&leaf, &labels), expected);
        assert!(expected.contains(&format!("{BASE}/palm/%C3%91%201%2F2%3F")));
    }
}

#[test]
fn a_sheet_holds_three_a_row_and_says_what_is_on_the_blade() {
    let (a4, letter) = (leaf(Lang::En, Size::A4), leaf(Lang::En, Size::Letter));
    for (leaf, a_page) in [(&a4, 24), (&letter, 21)] {
        assert_eq!(labels(leaf, BASE, &many(a_page)).unwrap().pages, 1);
        assert_eq!(labels(leaf, BASE, &many(a_page + 1)).unwrap().pages, 2);
    }
    for (lang, kind, kit) in [
        (Lang::En, "pole saw", "Kit: truck 2"),
        (Lang::Es, "sierra de pértiga", "Juego: truck 2"),
    ] {
        let leaf = leaf(lang, Size::A4);
        let one = Label::blade(&leaf, &blade("S-7", BladeKind::PoleSaw, "truck 2"));
        let text = text_of(&labels(&leaf, BASE, &[one]).unwrap());
        for wanted in ["S-7", kind, kit] {
            assert!(text.contains(wanted), "{wanted}: {text}");
        }
    }
}

#[test]
fn the_same_labels_give_the_same_bytes() {
    let leaf = leaf(Lang::Es, Size::A4);
    assert_eq!(labels(&leaf, BASE, &many(3)), labels(&leaf, BASE, &many(3)));
}

#[test]
fn the_demo_says_so_on_paper() {
    let mut leaf = leaf(Lang::En, Size::A4);
    let says = |leaf: &Leaf| {
        text_of(&labels(leaf, BASE, &many(1)).unwrap()).contains("nothing here is real")
    };
    assert!(!says(&leaf));
    leaf.demo = true;
    assert!(says(&leaf));
}

#[test]
fn what_cannot_be_printed_is_refused_with_the_reason() {
    let leaf = leaf(Lang::En, Size::usual(Units::Metric));
    assert_eq!(labels(&leaf, BASE, &[]), Err(Error::Empty));
    for base in [
        "",
        "yard.example",
        "ftp://yard.example",
        "http://",
        "http:///x",
        "http://:80",
        "http://a b",
        "https://a\"b",
        "http://u@h",
    ] {
        assert!(
            matches!(labels(&leaf, base, &many(1)), Err(Error::Base(_))),
            "{base}"
        );
    }
    assert_eq!(
        labels(&leaf, BASE, &many(MOST + 1)),
        Err(Error::TooMany {
            found: MOST + 1,
            limit: MOST
        })
    );
    let endless = format!("http://{}.example", "a".repeat(200));
    assert_eq!(
        labels(&leaf, &endless, &many(1)),
        Err(Error::TooLong("S-1".to_owned()))
    );
    assert_eq!(
        checked("https://yard.example/palms/"),
        Ok("https://yard.example/palms")
    );
}
