//! The embedded tables are in order, and the check would say so if they were not.

// a test reads the sources it checks
#![allow(clippy::disallowed_methods)]

use spearleaf_model as model;

use model::knowledge::{Tables, check};
use model::{Basis, Knowledge};

#[test]
fn the_embedded_tables_have_no_flaw() {
    let flaws = check(&Tables::embedded());
    assert!(flaws.is_empty(), "{flaws:#?}");
}

/// Every value is sourced, assumed, memory or practice; nothing published without a source that was read.
#[test]
fn no_value_claims_more_than_its_sources() {
    let known = Knowledge::embedded();
    let read = |key: &str| {
        known
            .source(key)
            .is_some_and(|s| s.how_seen == model::knowledge::HowSeen::Read)
    };
    let rows = known.rules.iter().map(|r| (&r.key, r.basis, &r.sources));
    let rows = rows.chain(known.safety.iter().map(|r| (&r.key, r.basis, &r.sources)));
    let cleaners = known.cleaners.iter();
    let rows = rows.chain(cleaners.map(|r| (&r.key, r.basis, &r.sources)));
    let moves = known.transplant.iter();
    let rows = rows.chain(moves.map(|r| (&r.key, r.basis, &r.sources)));
    for (key, basis, sources) in rows {
        assert!(basis == Basis::Assumed || !sources.is_empty(), "{key}");
        assert!(
            basis != Basis::Published || sources.iter().all(|s| read(&s.0)),
            "{key}"
        );
    }
    for species in &known.species {
        for live in species.live_leaves.iter().chain(&species.leaves_per_year) {
            assert!(
                live.basis != Basis::Published || live.sources.iter().all(|s| read(&s.0)),
                "{}",
                species.name
            );
        }
    }
}

/// A table with one text put in place of another, which must be there.
fn with(text: &str, from: &str, to: &str) -> String {
    assert!(
        text.contains(from),
        "the seed does not fit the table any more: {from}"
    );
    text.replacen(from, to, 1)
}

/// Seeds one fault and expects it to be found under its code, in its table.
fn caught(code: &str, table: &str, seed: impl FnOnce(&Tables<'static>) -> String) {
    let sound = Tables::embedded();
    let text = seed(&sound);
    let mut tables = sound;
    let place: &mut &str = match table {
        "palmtraits.csv" => &mut tables.palmtraits,
        "species.csv" => &mut tables.species,
        "synonyms.csv" => &mut tables.synonyms,
        "genera.csv" => &mut tables.genera,
        "pruning_rules.csv" => &mut tables.rules,
        "safety.csv" => &mut tables.safety,
        "cleaners.csv" => &mut tables.cleaners,
        "transplant.csv" => &mut tables.transplant,
        "soils.csv" => &mut tables.soils,
        "landscape_factors.csv" => &mut tables.factors,
        "products.csv" => &mut tables.products,
        "fertiliser.csv" => &mut tables.feeding,
        "tools.csv" => &mut tables.tools,
        "effort.csv" => &mut tables.effort,
        "debris.csv" => &mut tables.debris,
        "climate_normals.csv" => &mut tables.climate,
        _ => &mut tables.sources,
    };
    *place = &text;
    let flaws = check(&tables);
    assert!(
        flaws.iter().any(|f| f.code == code && f.table == table),
        "{code} in {table} not among {flaws:?}"
    );
}

#[test]
fn faults_of_the_trait_table_are_caught() {
    let table = "palmtraits.csv";
    let with_line = |line: &str| format!("{}{line}\n", Tables::embedded().palmtraits);
    caught("name-twice", table, |_| {
        with_line("Acanthophoenix crinita,0,0,1,1,1,1,10,20,15,2.3,,")
    });
    caught("name-twice", table, |_| {
        with_line("Acanthophoenix Crinita,0,0,1,1,1,1,10,20,15,2.3,,")
    });
    caught("not-a-name", table, |_| {
        with_line("Acanthophoenix,0,0,1,1,1,1,10,20,15,2.3,,")
    });
    caught("not-a-name", table, |_| {
        with_line("Acanthophoenix  alta,0,0,1,1,1,1,10,20,15,2.3,,")
    });
    caught("not-a-code", table, |_| {
        with_line("Acanthophoenix alta,0,0,1,3,1,1,10,20,15,2.3,,")
    });
    caught("not-a-number", table, |_| {
        with_line("Acanthophoenix alta,0,0,1,1,1,1,ten,20,15,2.3,,")
    });
    caught("out-of-limits", table, |_| {
        with_line("Acanthophoenix alta,0,0,1,1,1,1,1000,20,15,2.3,,")
    });
    caught("out-of-limits", table, |_| {
        with_line("Acanthophoenix alta,0,0,1,1,1,1,10,-20,15,2.3,,")
    });
    caught("out-of-limits", table, |_| {
        with_line("Acanthophoenix alta,0,0,1,1,1,1,10,20,0,2.3,,")
    });
    caught("out-of-limits", table, |_| {
        with_line("Acanthophoenix alta,0,0,1,1,1,1,10,20,15,230,,")
    });
    caught("wrong-width", table, |_| {
        with_line("Acanthophoenix alta,0,0,1")
    });
    caught("wrong-header", table, |t| {
        with(t.palmtraits, "solitary", "single")
    });
    caught("genus-missing", "genera.csv", |t| {
        with(t.genera, "\nZombia,palmate,no,memory-general,", "")
    });
}

#[test]
fn faults_of_the_tools_are_caught() {
    let table = "tools.csv";
    caught("no-source", table, |t| {
        with(
            t.tools,
            "mida la suya.\",common-practice",
            "mida la suya.\",",
        )
    });
    caught("not-a-word", table, |t| {
        with(t.tools, "teeth,pole", "teeth,rope")
    });
    caught("not-a-word", table, |t| {
        with(t.tools, "none,machine", "shears,machine")
    });
    caught("no-figure", table, |t| with(t.tools, "1.8,4.27", ",4.27"));
    caught("out-of-order", table, |t| {
        with(t.tools, "1.8,4.27", "4.27,1.8")
    });
    caught("out-of-limits", table, |t| {
        with(t.tools, "1.8,4.27", "1.8,42.7")
    });
    caught("out-of-limits", table, |t| with(t.tools, ",,4.4,", ",,44,"));
    caught("key-twice", table, |t| {
        with(t.tools, "\nknife,", "\nloppers,")
    });
    caught("not-translated", table, |t| {
        with(t.tools, "Ladder,Escalera", "Ladder,Ladder")
    });
}

#[test]
fn faults_of_what_palms_are_given_are_caught() {
    caught("out-of-order", "soils.csv", |t| {
        with(t.soils, "0.05,0.11,5,10", "0.11,0.05,5,10")
    });
    caught("out-of-order", "soils.csv", |t| {
        with(t.soils, "0.05,0.11,5,10", "0.05,0.31,5,10")
    });
    caught("unknown-species", "landscape_factors.csv", |t| {
        with(
            t.factors,
            "Phoenix dactylifera,crop",
            "Phoenix dactilifera,crop",
        )
    });
    caught("out-of-limits", "landscape_factors.csv", |t| {
        with(t.factors, "0.95,1,", "0.95,100,")
    });
    caught("out-of-limits", "products.csv", |t| {
        with(t.products, ",8,2,12,4,", ",8,2,120,4,")
    });
    caught("unknown-product", "fertiliser.csv", |t| {
        with(t.feeding, "maintenance,palm-blend", "maintenance,palm-mix")
    });
    caught("unknown-disorder", "fertiliser.csv", |t| {
        with(t.feeding, "rate,k-deficiency", "rate,potash-deficiency")
    });
    caught("no-source", "fertiliser.csv", |t| {
        with(t.feeding, ",mitchell-fert;ep261", ",")
    });
}

#[test]
fn faults_of_the_facts_are_caught() {
    let table = "species.csv";
    let royal = "Roystonea regia,leaves_per_year,12,enh732,\n";
    let instead = |line: &str| with(Tables::embedded().species, royal, line);
    caught("no-source", table, |_| {
        instead("Roystonea regia,leaves_per_year,12,,\n")
    });
    caught("unknown-source", table, |_| {
        instead("Roystonea regia,leaves_per_year,12,enh9999,\n")
    });
    caught("unknown-source", table, |_| {
        instead("Roystonea regia,leaves_per_year,12,enh732;nobody,\n")
    });
    caught("fact-twice", table, |_| instead(&royal.repeat(2)));
    caught("not-a-range", table, |_| {
        instead("Roystonea regia,leaves_per_year,18..11,enh732,\n")
    });
    caught("not-a-range", table, |_| {
        instead("Roystonea regia,leaves_per_year,a dozen,enh732,\n")
    });
    caught("out-of-limits", table, |_| {
        instead("Roystonea regia,leaves_per_year,0,enh732,\n")
    });
    caught("out-of-limits", table, |_| {
        instead("Roystonea regia,leaves_per_year,12..1200,enh732,\n")
    });
    caught("out-of-limits", table, |_| {
        instead("Roystonea regia,leaf_length_m,460,enh732,\n")
    });
    caught("not-a-word", table, |_| {
        instead("Roystonea regia,fusarium,perhaps,enh732,\n")
    });
    caught("unknown-fact", table, |_| {
        instead("Roystonea regia,colour,green,enh732,\n")
    });
    caught("unknown-with-source", table, |_| {
        instead("Roystonea regia,leaves_per_year,unknown,enh732,why\n")
    });
    caught("unknown-without-reason", table, |_| {
        instead("Roystonea regia,leaves_per_year,unknown,,\n")
    });
    caught("empty", table, |_| {
        instead("Roystonea regia,leaves_per_year,,enh732,\n")
    });
    caught("not-a-name", table, |_| {
        instead("roystonea regia,leaves_per_year,12,enh732,\n")
    });
}

#[test]
fn faults_of_the_names_are_caught() {
    let table = "synonyms.csv";
    let with_line = |line: &str| format!("{}{line}\n", Tables::embedded().synonyms);
    caught("synonym-twice", table, |_| {
        with_line("Cocos plumosa,Cocos nucifera,memory-general")
    });
    caught("synonym-is-accepted", table, |_| {
        with_line("Butia capitata,Butia odorata,memory-general")
    });
    caught("accepted-name-unknown", table, |_| {
        with_line("Cocos alba,Cocos rubra,memory-general")
    });
    caught("no-source", table, |_| {
        with_line("Cocos alba,Cocos nucifera,")
    });
    caught("genus-twice", "genera.csv", |t| {
        format!("{}Zombia,palmate,no,memory-general,\n", t.genera)
    });
    caught("genus-without-species", "genera.csv", |t| {
        format!("{}Quercus,palmate,no,memory-general,\n", t.genera)
    });
    caught("not-a-word", "genera.csv", |t| {
        with(t.genera, "Zombia,palmate", "Zombia,round")
    });
}

#[test]
fn faults_of_rules_cautions_and_sources_are_caught() {
    let (rules, safety) = ("pruning_rules.csv", "safety.csv");
    let rule = |line: &str| format!("{}{line}\n", Tables::embedded().rules);
    caught("key-twice", rules, |_| {
        rule("remove_dead_ok,a,b,,,all,odgers_az")
    });
    caught("empty", rules, |_| rule("new_rule,a,,,,all,odgers_az"));
    caught("no-source", rules, |_| rule("new_rule,a,b,,,all,"));
    caught("unknown-source", rules, |_| {
        rule("new_rule,a,b,,,all,nobody")
    });
    caught("not-a-range", rules, |_| {
        rule("new_rule,a,b,9..3,days,all,odgers_az")
    });
    caught("no-unit", rules, |_| rule("new_rule,a,b,9,,all,odgers_az"));
    caught("not-a-key", rules, |_| rule("New Rule,a,b,,,all,odgers_az"));
    caught("key-twice", safety, |t| {
        format!("{}heat_water,a,b,,,,,title8-3395\n", t.safety)
    });
    caught("stray-space", safety, |t| {
        format!("{}new, a,b,,,,,title8-3395\n", t.safety)
    });
    caught("empty", safety, |t| {
        format!("{}new,a,b,,,only here,,title8-3395\n", t.safety)
    });
    let source = |line: &str| format!("{}{line}\n", Tables::embedded().sources);
    caught("key-twice", "sources.csv", |_| source("enh732,,T,,,,,read"));
    caught("key-twice", "sources.csv", |_| {
        source("new,enh732,T,,,,,read")
    });
    caught("how-seen", "sources.csv", |_| source("new,,T,,,,,heard"));
    caught("empty", "sources.csv", |_| source("new,,,,,,,read"));
    caught("not-a-key", "sources.csv", |_| {
        source("New Key,,T,,,,,read")
    });
}

#[test]
fn faults_of_the_climates_are_caught() {
    let table = "climate_normals.csv";
    let lines = |low: &str, mean: &str| {
        let months = |first: &str| format!("{first}{}", ",20".repeat(11));
        let text = Tables::embedded().climate;
        format!(
            "{text}Nowhere,1,2,3,tmean_c,{},wmo-miami,\nNowhere,1,2,3,tmin_c,{},wmo-miami,\n",
            months(mean),
            months(low)
        )
    };
    caught("temperatures-out-of-order", table, |_| lines("21", "20"));
    caught("out-of-limits", table, |_| lines("20", "68"));
    caught("not-a-number", table, |_| lines("20", "warm"));
    caught("empty", table, |_| lines("20", ""));
    caught("quantity-twice", table, |t| {
        let line = t.climate.lines().nth(1).unwrap();
        with(t.climate, line, &format!("{line}\n{line}"))
    });
    caught("place-twice", table, |t| {
        let line = t.climate.lines().nth(1).unwrap();
        format!("{}{}\n", t.climate, line.replace("tmean_c", "rain_mm"))
    });
    caught("place-moved", table, |t| {
        with(
            t.climate,
            "Miami FL,25.82,-80.3,11,tmin_c",
            "Miami FL,26.82,-80.3,11,tmin_c",
        )
    });
    caught("out-of-limits", table, |t| {
        t.climate.replace("Miami FL,25.82,", "Miami FL,95.82,")
    });
    caught("unknown-quantity", table, |t| {
        with(t.climate, "tmin_c", "tlow_c")
    });
}

/// Keys of sources written in the code of any crate are rows of the list.
#[test]
fn source_keys_in_the_code_resolve() {
    let crates = std::path::Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .unwrap();
    let mut files = vec![crates.to_path_buf()];
    let (mut keys, mut lost) = (0, Vec::new());
    while let Some(path) = files.pop() {
        if path.is_dir() {
            files.extend(
                std::fs::read_dir(&path)
                    .unwrap()
                    .map(|entry| entry.unwrap().path()),
            );
        } else if path.extension().is_some_and(|e| e == "rs")
            && path.components().any(|c| c.as_os_str() == "src")
        {
            for key in keys_in(&std::fs::read_to_string(&path).unwrap()) {
                keys += 1;
                if Knowledge::embedded().source(&key).is_none() {
                    lost.push(format!("{key} in {}", path.display()));
                }
            }
        }
    }
    assert!(lost.is_empty(), "{lost:#?}");
    assert!(keys > 0, "no key found: the test looks for the wrong words");
}

fn keys_in(code: &str) -> Vec<String> {
    let calls = ["SourceKey::new(\"", "SourceKey::fixed(\""];
    let found = calls.iter().flat_map(|call| code.split(call).skip(1));
    found
        .filter_map(|rest| rest.split('"').next().map(str::to_owned))
        .collect()
}

#[test]
fn faults_of_the_cleaners_are_caught() {
    let table = "cleaners.csv";
    for (code, from, to) in [
        ("key-twice", "bleach-dip-10,", "bleach-soak-25,"),
        ("unknown-source", "trade_bleach50", "trade_bleach60"),
        ("not-a-word", ",yes,unknown,no,", ",always,unknown,no,"),
        ("not-yes-or-no", ",yes,unknown,no,", ",yes,unknown,maybe,"),
        (
            "unknown-disorder",
            "thielaviopsis-trunk-rot",
            "thielaviopsis-rot",
        ),
        ("out-of-order", ",25,5,10,", ",25,15,10,"),
        ("out-of-limits", ",25,5,10,", ",250,5,10,"),
        ("not-a-number", ",25,5,10,", ",a quarter,5,10,"),
        ("empty", ",Lejía doméstica,", ",,"),
        (
            "agent-named-otherwise",
            "Lejía doméstica",
            "Cloro doméstico",
        ),
        ("wrong-header", "with_soil", "soil"),
        (
            "not-marked-indirect",
            "fusarium-cubense,yes,yes,yes",
            "fusarium-cubense,yes,yes,no",
        ),
    ] {
        caught(code, table, |t| with(t.cleaners, from, to));
    }
}

/// The figures of the palm bath as the trade sheet has them: 1 part bleach to 3 of water, 5 to 10 minutes.
#[test]
fn agents_are_found_by_key_and_by_name() {
    let known = Knowledge::embedded();
    for written in ["bleach", " Household Bleach", "lejía doméstica"] {
        assert_eq!(known.cleaner_named(written), Some("bleach"), "{written}");
    }
    assert_eq!(known.cleaner_named("vinegar"), None);
    let first = known.cleaners_of("bleach").next().unwrap();
    assert_eq!(
        (first.strength_pct, first.contact_min, first.contact_max),
        (Some(25.0), Some(5.0), Some(10.0))
    );
    assert_eq!(first.disorders().count(), 3);
    let agents: Vec<&str> = known
        .cleaner_agents()
        .iter()
        .map(|r| r.agent.as_str())
        .collect();
    assert_eq!(agents.iter().filter(|a| **a == "bleach").count(), 1);
    assert!(agents.contains(&"new-blade") && agents.contains(&"flame"));
}

#[test]
fn faults_of_the_table_of_moves_are_caught() {
    let table = "transplant.csv";
    caught("unknown-species", table, |t| {
        with(t.transplant, "Cocos nucifera,ball", "Cocos nonesuch,ball")
    });
    caught("no-unit", table, |t| {
        with(
            t.transplant,
            "ball-radius,,,61,61,cm",
            "ball-radius,,,61,61,in",
        )
    });
    caught("out-of-limits", table, |t| {
        with(
            t.transplant,
            "ball-radius,,,61,61,cm",
            "ball-radius,,,61,610,cm",
        )
    });
    caught("out-of-order", table, |t| {
        with(t.transplant, "kept,,,30,60,d", "kept,,,60,30,d")
    });
    caught("unknown-source", table, |t| {
        with(t.transplant, "gm-planting-palms", "gm-planting-plums")
    });
    caught("not-a-word", table, |t| {
        with(t.transplant, "ball-radius", "ball-width")
    });
}

#[test]
fn faults_of_what_work_takes_are_caught() {
    caught("out-of-order", "effort.csv", |t| {
        with(t.effort, "look,2,5,12", "look,2,15,12")
    });
    caught("given-unclear", "effort.csv", |t| {
        with(
            t.effort,
            "walk,1.2,1.7,2.5,min/100m,,",
            "walk,1.2,1.7,2.5,min/100m,mid,",
        )
    });
    caught("not-a-word", "effort.csv", |t| {
        with(t.effort, "min,low;high", "min,low;most")
    });
    caught("key-twice", "debris.csv", |t| {
        with(t.debris, "frond-green,", "frond-dead,")
    });
    caught("unknown-source", "debris.csv", |t| {
        with(t.debris, "oregon-deq", "oregano-deq")
    });
    caught("out-of-limits", "debris.csv", |t| {
        with(t.debris, "loose,148.3", "loose,14830")
    });
}
