//! The owner's sheet and the owner's summary on paper, read back by a PDF library from outside the project.

use desk::measure::{Measure, Units};
use desk::office::Office;
use desk::season::Seasons;
use desk::views::Speaker;
use desk::views::drawing::LEGEND;
use desk::views::owner::{self, OwnerView};
use desk::views::owner_summary::{self, Period, SummaryView, Who};
use desk::views::standing::Standings;
use desk::words::{Lang, Words};
use desk::world::World;
use spearleaf_paper::{Leaf, Pdf, Size, owner_sheet, owner_summary as print_summary};
use std::sync::Arc;
use testkit::{clock, day, ids};

const TODAY: &str = "2026-05-04";
const LINK: &str = "https://palms.example/o/abcdefghijkmnpqrstuvwxyz23456789";

fn demo() -> Office {
    let world = World {
        now: clock(TODAY),
        as_of: Some(day(TODAY)),
        new_id: ids(5),
        device: "test".into(),
    };
    let office = Office::open(Arc::new(ledger::Memory::new()), world).unwrap();
    office.record(desk::demo::notes(day(TODAY))).unwrap();
    office
}

fn told(office: &Office, leaf: &Leaf, tag: &str) -> OwnerView {
    let state = office.state();
    let record = state.by_tag(tag).unwrap();
    owner::view(&Speaker::new(leaf.measure), office, record).unwrap()
}

/// A leaf of a size for a reader; US customary units go with Letter.
fn leaf(lang: Lang, size: Size) -> Leaf {
    let units = match size {
        Size::A4 => Units::Metric,
        Size::Letter => Units::UsCustomary,
    };
    Leaf {
        size,
        measure: Measure::new(units, Words::new(lang)),
        day: day(TODAY),
        demo: true,
    }
}

fn text_of(pdf: &Pdf) -> String {
    plain(&pdf_extract::extract_text_from_mem(&pdf.bytes).unwrap())
}

fn plain(text: &str) -> String {
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// What stands on the sheet must be what the view says, word by word.
fn holds(text: &str, wanted: &str) {
    assert!(
        text.contains(&plain(wanted)),
        "“{wanted}” is not in: {text}"
    );
}

#[test]
fn the_facts_stand_on_the_paper_in_both_languages_and_sizes() {
    let office = demo();
    // one moved lately, one of an established row
    let cases = [
        (Lang::En, Size::A4, "Q-01"),
        (Lang::Es, Size::Letter, "L-16"),
    ];
    for (lang, size, tag) in cases {
        let leaf = leaf(lang, size);
        {
            let view = told(&office, &leaf, tag);
            let pdf = owner_sheet(&leaf, &view, Some(LINK)).unwrap();
            let text = text_of(&pdf);
            for words in [&view.title, &view.as_of, &view.stand.1, &view.call_at_once] {
                holds(&text, words);
            }
            for stem in &view.stems {
                holds(&text, &stem.expect);
                holds(&text, &stem.later);
                holds(&text, &stem.call);
                assert_eq!(stem.pictures.len(), 3);
                for picture in &stem.pictures {
                    holds(&text, &picture.when);
                    holds(&text, &picture.range);
                }
            }
            let points = [&view.never, &view.usual, &view.urgent, &view.water.points];
            for point in points.into_iter().flatten() {
                holds(&text, &point.text);
            }
            for row in view.water.rows.iter().chain(&view.feed.rows) {
                for cell in row {
                    holds(&text, cell);
                }
            }
            for done in &view.done {
                holds(&text, &done.what);
            }
            holds(&text, LINK);
            holds(&text, &leaf.measure.words.say("common-closing"));
            assert!(pdf.pages <= 4, "{tag}: {} pages", pdf.pages);
        }
    }
}

#[test]
fn the_same_sheet_gives_the_same_bytes() {
    let office = demo();
    let leaf = leaf(Lang::En, Size::A4);
    let view = told(&office, &leaf, "Q-01");
    let one = owner_sheet(&leaf, &view, None).unwrap();
    assert_eq!(one, owner_sheet(&leaf, &view, None).unwrap());
}

fn summed(office: &Office, leaf: &Leaf, owner: &str) -> SummaryView {
    let (standings, seasons) = (Standings::default(), Seasons::default());
    let (speaker, who) = (Speaker::new(leaf.measure), Who::Owner(owner.to_owned()));
    let period = Period::usual(day(TODAY));
    owner_summary::view(&speaker, office, &standings, &seasons, &who, period).unwrap()
}

#[test]
fn the_summary_stands_on_about_two_pages_in_both_languages_and_sizes() {
    let office = demo();
    // a street with wires, and a yard of moved palms
    let cases = [
        (Lang::En, Size::A4, "the parish of Quillmere"),
        (Lang::Es, Size::Letter, "the yard's own stock"),
    ];
    for (lang, size, owner) in cases {
        let leaf = leaf(lang, size);
        let view = summed(&office, &leaf, owner);
        assert!(!view.cards.is_empty() && !view.done.is_empty() && !view.next.is_empty());
        let pdf = print_summary(&leaf, &view).unwrap();
        let text = text_of(&pdf);
        for words in [
            &view.title,
            &view.as_of,
            &view.period,
            &view.call_at_once,
            &view.level,
        ] {
            holds(&text, words);
        }
        for count in &view.counts {
            holds(&text, &count.figure);
        }
        for card in &view.cards {
            holds(&text, &card.tag);
            holds(&text, &card.stand);
        }
        for line in &view.lines {
            holds(&text, &line.tag);
        }
        for row in &view.done {
            holds(&text, &row.date);
        }
        for row in &view.next {
            holds(&text, &row.date);
            holds(&text, &row.kind_words);
        }
        for line in view
            .others
            .iter()
            .chain(&view.mind.iter().map(|p| p.text.clone()).collect::<Vec<_>>())
        {
            holds(&text, line);
        }
        holds(&text, &leaf.measure.words.say("common-closing"));
        assert!(pdf.pages <= 2, "{owner}: {} pages", pdf.pages);
        assert_eq!(pdf, print_summary(&leaf, &view).unwrap());
    }
}

/// Relative luminance by WCAG 2.2 (W3C), from sRGB.
fn luminance(hex: &str) -> f64 {
    let part = |at: usize| {
        let value = f64::from(u8::from_str_radix(&hex[at..at + 2], 16).unwrap()) / 255.0;
        if value <= 0.04045 {
            value / 12.92
        } else {
            model::math::pow((value + 0.055) / 1.055, 2.4)
        }
    };
    0.2126 * part(1) + 0.7152 * part(3) + 0.0722 * part(5)
}

#[test]
fn the_tones_stay_apart_without_colour() {
    let mut light: Vec<f64> = LEGEND.iter().map(|(fill, _)| luminance(fill)).collect();
    light.sort_by(f64::total_cmp);
    for pair in light.windows(2) {
        let contrast = (pair[1] + 0.05) / (pair[0] + 0.05);
        // more than the 3:1 that WCAG 2.2 asks of graphics would leave no room for three tones; 1.8 is seen in print
        assert!(contrast > 1.8, "{contrast}: {light:?}");
    }
}
