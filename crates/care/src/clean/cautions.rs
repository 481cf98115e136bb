//! What to mind when a blade is cleaned. Each caution gives way to the label, local code and the machine's manual.

use super::adequacy::of_rules;
use model::{BladeKind, Finding, Knowledge, Severity, SourceKey};

/// The cautions for what carries a blade and for an agent as written, the most dangerous first.
pub fn cautions(kind: BladeKind, agent: &str, known: &Knowledge) -> Vec<Finding> {
    let agent = known.cleaner_named(agent).unwrap_or_default();
    let caution = |code, severity| Finding::new(code, severity);
    let act = |code, keys: &[&str]| caution(code, Severity::Act).from_sources(&safety(known, keys));
    let mut all = Vec::new();
    let bleach = matches!(agent, "bleach" | "calcium-hypochlorite");
    if bleach {
        all.push(act(
            "clean-bleach-never-mix",
            &[
                "bleach_ammonia",
                "bleach_acid",
                "bleach_other",
                "bleach_alcohol",
            ],
        ));
    }
    if matches!(agent, "isopropyl" | "ethanol") {
        all.push(act("clean-alcohol-fire", &["alcohol_flash", "alcohol_lel"]));
        all.push(act("clean-alcohol-not-with-bleach", &["bleach_alcohol"]));
    }
    if agent == "flame" {
        let rows = rows(known, &["flame-forty-seconds", "flame-ten-seconds"]);
        all.push(caution("clean-flame-fire", Severity::Act).from_sources(&rows));
    }
    if kind == BladeKind::ChainSaw {
        let mut from = of_rules(known, &["chainsaw_apart"]);
        from.push(SourceKey::fixed("pp215"));
        all.push(caution("clean-chain-saw-apart", Severity::Act).from_sources(&from));
    }
    if bleach {
        let rows = rows(known, &["bleach-soak-25", "bleach-fresh-10-one"]);
        all.push(caution("clean-bleach-steel", Severity::Caution).from_sources(&rows));
    }
    if !matches!(agent, "flame" | "heat" | "new-blade") {
        all.push(caution("clean-air-gloves-eyes", Severity::Caution).by_practice());
        let brush = of_rules(known, &["brush_before_soak"]);
        all.push(caution("clean-brush-and-rinse", Severity::Info).from_sources(&brush));
        let never = of_rules(known, &["no_disinfectant_on_cut"]);
        all.push(caution("clean-not-on-the-cut", Severity::Info).from_sources(&never));
    }
    all
}

fn safety(known: &Knowledge, keys: &[&str]) -> Vec<SourceKey> {
    let rows = keys.iter().filter_map(|key| known.safety(key));
    once(rows.flat_map(|row| row.sources.clone()))
}

fn rows(known: &Knowledge, keys: &[&str]) -> Vec<SourceKey> {
    let rows = known.cleaners.iter();
    let named = rows.filter(|row| keys.contains(&row.key.as_str()));
    once(named.flat_map(|row| row.sources.clone()))
}

fn once(keys: impl Iterator<Item = SourceKey>) -> Vec<SourceKey> {
    let mut all: Vec<SourceKey> = Vec::new();
    for key in keys {
        if !all.contains(&key) {
            all.push(key);
        }
    }
    all
}
