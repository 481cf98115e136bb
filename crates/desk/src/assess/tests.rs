use super::*;
use crate::intake::{InspectionReader, Known, PalmReader};
use crown::Sampler;
use model::{Clock, Day, Inspection, Knowledge, Palm, Removed, Spear};
use std::convert::Infallible;

fn yard(palms: &str, inspections: &str) -> Yard<'static> {
    let mut gather = Gather::new(Knowledge::embedded());
    let palms: Vec<Palm> = PalmReader::open(palms.as_bytes())
        .unwrap()
        .map(|r| r.unwrap().value)
        .collect();
    let known = Known::of(&palms);
    palms.into_iter().for_each(|p| gather.palm(p));
    for row in InspectionReader::open(inspections.as_bytes(), &known).unwrap() {
        let row = row.unwrap().value;
        gather.inspection(row.palm, row.inspection);
    }
    gather.done()
}

const PALMS: &str =
    "tag,species,stems\nA,Sabal palmetto,1\nB,Phoenix reclinata,3\nC,Syagrus romanzofiana,1\n";
const LOOKS: &str = "tag,stem,date,green,yellowing,brown,removed_brown,spear,signs,absent\n\
    B,2,2026-04-01,20,1,2,2,down,one-sided,\n\
    A,1,2026-04-01,30,1,3,,firm,,\n\
    B,1,2026-04-01,22,0,1,1,leaning,,conk;nest\n\
    A,1,2026-01-05,31,1,0,,down,,\n\
    B,2,2025-12-01,21,,3,3,,,\n\
    A,1,2026-08-01,30,1,3,,,,\n";

#[test]
fn a_look_keeps_every_number() {
    let full = Inspection {
        green: Some(1000),
        yellowing: Some(0),
        brown: None,
        new_leaves: Some(7),
        removed: Removed {
            green: None,
            yellowing: Some(1),
            brown: Some(2),
        },
        spear: Some(Spear::Pulled),
        clock_left: Clock::new(8.75),
        clock_right: Clock::new(12.0),
        ..Inspection::blank(3, Day(20_000))
    };
    assert_eq!(look::Look::pack(5, &full).unpack(), full);
    let blank = Inspection::blank(1, Day(-3));
    assert_eq!(look::Look::pack(0, &blank).unpack(), blank);
    assert!(size_of::<look::Look>() <= 28, "{}", size_of::<look::Look>());
}

#[test]
fn inspections_in_any_order_come_out_by_stem_and_date() {
    let yard = yard(PALMS, LOOKS);
    let seen = |p| {
        yard.inspections(p)
            .iter()
            .map(|i| format!("{} {}", i.stem, i.date))
            .collect::<Vec<_>>()
    };
    assert_eq!(seen(0), ["1 2026-01-05", "1 2026-04-01", "1 2026-08-01"]);
    assert_eq!(seen(1), ["1 2026-04-01", "2 2025-12-01", "2 2026-04-01"]);
    assert_eq!(seen(2), [""; 0]);
    assert_eq!(yard.inspections(1)[2].signs, ["one-sided"]);
    assert_eq!(yard.inspections(1)[0].absent, ["conk", "nest"]);
}

#[test]
fn a_species_name_with_a_slip_is_a_finding_with_the_nearest() {
    let finding = |name| Kind::named(Knowledge::embedded(), name).finding;
    let slip = finding("Syagrus romanzofiana").unwrap();
    assert_eq!(slip.code, "species-unknown-near");
    assert!(
        format!("{:?}", slip.args).contains("Syagrus romanzoffiana"),
        "{slip:?}"
    );
    assert_eq!(finding("Sabal palmetto"), None);
    assert_eq!(finding("Zzyzx quux").unwrap().code, "species-unknown");
    assert_eq!(finding("").unwrap().code, "species-missing");
    let unknown = Kind::named(Knowledge::embedded(), "Sabal zzyzxii");
    assert!(unknown.species.is_none() && !unknown.relatives.is_empty());
}

fn answers(threads: usize) -> Vec<PalmAnswer> {
    let yard = yard(PALMS, LOOKS);
    let ask = Ask::of(Day::parse("2026-05-01").unwrap(), &Ask::WEEKS);
    let mut out = Vec::new();
    let pool = rayon::ThreadPoolBuilder::new()
        .num_threads(threads)
        .build()
        .unwrap();
    pool.install(|| {
        each(
            yard.len(),
            |i, s| answer(&yard, i, &ask, s),
            |a| {
                out.push(a);
                Ok::<(), Infallible>(())
            },
        )
    })
    .unwrap();
    out
}

#[test]
fn answers_do_not_depend_on_the_number_of_threads() {
    let one = answers(1);
    assert_eq!(
        one.iter().map(|a| a.tag.as_str()).collect::<Vec<_>>(),
        ["A", "B", "C"]
    );
    assert_eq!(one, answers(3));
}

#[test]
fn rows_are_as_documented() {
    let answers = answers(2);
    let rows: Vec<_> = answers.iter().flat_map(readings_rows).collect();
    let stems: Vec<_> = rows.iter().map(|r| format!("{} {}", r[0], r[1])).collect();
    assert_eq!(stems, ["A 1", "B 1", "B 2", "B 3", "B ", "C 1"]);
    for row in &rows {
        let shares: f64 = row[4..8].iter().map(|p| p.parse::<f64>().unwrap()).sum();
        assert!((shares - 1.0).abs() < 3e-4, "{row:?}");
    }
    assert_eq!(
        rows[0][8], "3",
        "three more hang than on 5 January: {:?}",
        rows[0]
    );
    let forecast = forecast_rows(&answers[1]);
    assert_eq!(forecast.len(), 3 * 4 * 5);
    assert_eq!(
        forecast[0][..5],
        ["B", "1", "28", "2026-05-29", "live"].map(str::to_owned)
    );
    for row in &forecast {
        let q: Vec<f64> = row[5..].iter().map(|x| x.parse().unwrap()).collect();
        assert!(q.windows(2).all(|w| w[0] <= w[1]), "{row:?}");
    }
}

#[test]
fn what_needs_a_person_is_found() {
    let answers = answers(2);
    let codes = |a: &PalmAnswer| a.findings.iter().map(|f| f.code).collect::<Vec<_>>();
    // A's spear was down in January but is firm since; the look in August is after the day of the reading
    assert!(
        codes(&answers[0]).contains(&"assess-later-looks"),
        "{:?}",
        answers[0].findings
    );
    assert!(
        !codes(&answers[0])
            .iter()
            .any(|c| c.starts_with("assess-spear")),
        "{:?}",
        answers[0].findings
    );
    assert!(
        codes(&answers[1]).contains(&"assess-spear-leaning")
            && codes(&answers[1]).contains(&"assess-spear-down")
    );
    assert!(answers[1].needs_a_person());
    assert_eq!(
        codes(&answers[2]),
        ["species-unknown-near", "assess-never-looked-at"]
    );
}

#[test]
fn a_wilting_palm_is_called_a_decline() {
    // nothing but the counts: a full crown losing half its fronds in six weeks with the spear firm
    let looks = "tag,date,green,yellowing,brown,removed_brown\n\
        A,2026-01-05,30,1,2,2\nA,2026-02-16,24,3,3,3\nA,2026-03-30,14,4,8,8\nA,2026-04-27,5,4,9,9\n";
    let yard = yard(PALMS, looks);
    let ask = Ask::of(Day::parse("2026-05-01").unwrap(), &Ask::WEEKS);
    let answer = answer(&yard, 0, &ask, &mut Sampler::new(1024));
    assert!(
        answer
            .findings
            .iter()
            .any(|f| f.code == "assess-decline-probable"),
        "{:?}",
        answer.probabilities
    );
    assert!(
        answer
            .findings
            .iter()
            .any(|f| f.code == "assess-loss-beyond-ordinary"),
        "{:?}",
        answer.stems[0].loss
    );
}
