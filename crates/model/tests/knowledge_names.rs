//! The cases under `cases/names`: the open list of palm names, and names as people write them.

use spearleaf_model as model;

use model::Knowledge;
use model::knowledge::Named;

fn rows(text: &str) -> Vec<Vec<String>> {
    // Spaces around a cell are part of the case.
    let mut csv = csv::ReaderBuilder::new().from_reader(text.as_bytes());
    csv.records()
        .map(|r| r.unwrap().iter().map(str::to_owned).collect())
        .collect()
}

/// PalmTraits 1.0 (doi:10.1038/s41597-019-0189-0): all 2,557 names, each resolving to itself.
#[test]
fn every_name_of_the_open_list_resolves_exactly() {
    let palms = rows(include_str!("../../../cases/names/palms.csv"));
    assert_eq!(palms.len(), 2_557);
    let known = Knowledge::embedded();
    for palm in palms {
        match known.species_named(&palm[1]) {
            Named::Exact(species) => assert_eq!(species.name, palm[1]),
            other => panic!("{}: {other:?}", palm[1]),
        }
    }
}

#[test]
fn names_from_field_notebooks_come_out_as_the_case_says() {
    let known = Knowledge::embedded();
    let mut wrong = Vec::new();
    for row in rows(include_str!("../../../cases/names/written.csv")) {
        let (written, outcome, species) = (&row[0], row[1].as_str(), row[2].as_str());
        let found = known.species_named(written);
        let right = match (&found, outcome) {
            (Named::Exact(s), "exact") | (Named::Synonym(s), "synonym") => s.name == species,
            (Named::Near(names), "near") => names.contains(&species),
            (Named::Unknown, "unknown") => true,
            _ => false,
        };
        if !right {
            wrong.push(format!(
                "{written:?} should be {outcome} {species}, is {}",
                short(&found)
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

fn short(found: &Named) -> String {
    match found {
        Named::Exact(s) => format!("exact {}", s.name),
        Named::Synonym(s) => format!("synonym {}", s.name),
        Named::Near(names) => format!("near {names:?}"),
        Named::Unknown => "unknown".to_owned(),
    }
}

/// One slip of the pen anywhere in a name (a letter left out, doubled, or swapped with the next) never resolves to
/// another species, and the species meant is among those offered. All 64 species worked through by hand.
#[test]
fn a_slip_of_the_pen_offers_the_species_meant() {
    let known = Knowledge::embedded();
    let mut slips = 0;
    for species in known.species.iter().filter(|s| s.detailed) {
        for written in slips_of(&species.name) {
            slips += 1;
            match known.species_named(&written) {
                Named::Exact(s) | Named::Synonym(s) => {
                    assert_eq!(s.name, species.name, "{written}")
                }
                Named::Near(names) => assert!(
                    names.contains(&species.name.as_str()),
                    "{written}: {names:?}"
                ),
                Named::Unknown => panic!("nothing offered for {written}"),
            }
        }
    }
    assert!(slips > 3_000, "{slips}");
}

fn slips_of(name: &str) -> Vec<String> {
    let letters: Vec<char> = name.chars().collect();
    let mut out = Vec::new();
    for i in (0..letters.len()).filter(|i| letters[*i] != ' ') {
        let (before, after) = (&letters[..i], &letters[i + 1..]);
        let word = |middle: &[char], tail: &[char]| {
            [before, middle, tail]
                .concat()
                .into_iter()
                .collect::<String>()
        };
        out.push(word(&[], after));
        out.push(word(&[letters[i], letters[i]], after));
        if let Some((next, rest)) = after
            .split_first()
            .filter(|(next, _)| **next != ' ' && **next != letters[i])
        {
            out.push(word(&[*next, letters[i]], rest));
        }
    }
    out
}
