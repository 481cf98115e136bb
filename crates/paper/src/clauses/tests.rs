use super::*;
use crate::leaf::Size;
use crate::testing::{leaf, text_of};
use desk::words::Lang;
use model::Knowledge;
use model::knowledge::{CleanerRow, Works};

#[test]
fn every_demand_is_there_in_both_languages_and_sizes() {
    let wanted = [
        (
            Lang::En,
            [
                "no legal advice",
                "nothing at or above 9–3",
                "No climbing spikes",
                "Every blade is cleaned before the first palm",
                "line-clearance",
                "10 ft",
                "3.05 m",
                "put on hold",
                "start and end of cutting",
                "Bleach never meets ammonia",
                "at least 10 min; the sources say 5 to 10",
                "Firm: date, name, signature",
            ],
        ),
        (
            Lang::Es,
            [
                "no es asesoría legal",
                "nada en las 9–3 ni más arriba",
                "Nada de espuelas",
                "Cada hoja de corte se limpia antes de la primera palma",
                "despeje de líneas",
                "10 ft",
                "3.05 m",
                "puesto en espera",
                "inicio y fin del corte",
                "La lejía nunca se junta con amoníaco",
                "al menos 10 min; las fuentes dicen de 5 a 10",
                "Empresa: fecha, nombre, firma",
            ],
        ),
    ];
    for (lang, wanted) in wanted {
        for size in Size::ALL {
            let text = text_of(&clauses(&leaf(lang, size)).unwrap());
            for words in wanted {
                assert!(text.contains(words), "{}: {words}", lang.tag());
            }
        }
    }
}

#[test]
fn every_row_named_in_the_outline_is_in_the_tables_and_has_a_source_or_a_mark() {
    let knowledge = Knowledge::embedded();
    let keys = outline::PARTS
        .iter()
        .flat_map(|p| p.items)
        .flat_map(|item| match item {
            Item::Own(_) => Vec::new(),
            Item::Row(key) => vec![*key],
            Item::Stricter(key, others) => [&[*key], *others].concat(),
        });
    let mut rows = 0;
    for key in keys {
        assert!(
            knowledge.rule(key).is_some() || knowledge.safety(key).is_some(),
            "{key}"
        );
        rows += 1;
    }
    assert!(rows > 30, "{rows}");
    let sheet = sheet(&leaf(Lang::En, Size::A4));
    assert!(sheet.works.len() > 20);
}

#[test]
fn every_word_of_the_sheet_is_known() {
    for lang in Lang::ALL {
        let sheet = serde_json::to_string(&sheet(&leaf(lang, Size::A4))).unwrap();
        for code in ["\"clauses-", "\"sheet-", "\"common-", "{$"] {
            assert!(!sheet.contains(code), "{}: {code}", lang.tag());
        }
    }
}

#[test]
fn the_longest_contact_that_a_source_asks_is_demanded() {
    let row = |key: &str, pct: f64, min: Option<f64>, works, indirect| CleanerRow {
        key: key.into(),
        agent: "bleach".into(),
        name: Default::default(),
        mix: Default::default(),
        strength_pct: Some(pct),
        contact_min: min,
        contact_max: None,
        against: vec!["fusarium-wilt-canariensis".into()],
        works,
        with_soil: None,
        indirect,
        caution: Default::default(),
        basis: Basis::Published,
        sources: Vec::new(),
    };
    let rows = [
        row("five", 25.0, Some(5.0), Works::Yes, false),
        row("ten", 25.0, Some(10.0), Works::Yes, false),
        row("weak", 10.0, Some(10.0), Works::Yes, false),
        row("other palm", 25.0, Some(60.0), Works::Yes, true),
        row("fails", 25.0, Some(60.0), Works::No, false),
        row("no time", 50.0, None, Works::Yes, false),
        CleanerRow {
            contact_max: Some(20.0),
            ..row("range", 50.0, Some(5.0), Works::Yes, false)
        },
        CleanerRow {
            against: vec!["general".into()],
            ..row("no palm", 75.0, Some(1.0), Works::Yes, false)
        },
    ];
    let kept: Vec<&str> = baths::accepted(&rows)
        .iter()
        .map(|r| r.key.as_str())
        .collect();
    assert_eq!(kept, ["ten", "weak", "range"]);
    assert_eq!(baths::longest(&rows[6]), Some(20.0));
    // the table itself: the four soaks that extension publications name, and a new blade
    let table = baths::accepted(&Knowledge::embedded().cleaners);
    let agents: Vec<&str> = table.iter().map(|r| r.agent.as_str()).collect();
    assert_eq!(
        agents,
        ["bleach", "pine-oil", "isopropyl", "ethanol", "new-blade"]
    );
}
