//! Everything said of cleaning has words in both languages, with every argument filled in, and none are left over.

use care::clean::{Cleaned, adequacy, adequacy_on, cautions};
use model::{BladeKind, Finding, Knowledge, Severity};
use spearleaf_desk::measure::{Measure, Units};
use spearleaf_desk::words::{Lang, Words};
use std::collections::BTreeSet;

/// Every finding that agents, strengths, times, soil and baths of all sorts bring about.
fn findings() -> (Vec<Finding>, Vec<Finding>) {
    let known = Knowledge::embedded();
    let mut agents: Vec<&str> = known
        .cleaner_agents()
        .iter()
        .map(|r| r.agent.as_str())
        .collect();
    agents.extend(["", "vinegar"]);
    let (mut verdicts, mut warned) = (Vec::new(), Vec::new());
    for agent in agents {
        let strengths = [None, Some(1.0), Some(25.0), Some(50.0), Some(100.0)];
        let baths = [(None, None), (Some(150.0), None), (None, Some(12))];
        for (strength_pct, contact_min) in strengths
            .into_iter()
            .flat_map(|s| [(s, None), (s, Some(3.0)), (s, Some(30.0))])
        {
            for (bath_age_min, bath_uses) in baths {
                for brushed in [None, Some(true), Some(false)] {
                    let cleaned = Cleaned {
                        agent,
                        strength_pct,
                        contact_min,
                        brushed,
                        bath_age_min,
                        bath_uses,
                    };
                    for disorder in [None, Some("fusarium-wilt-canariensis")] {
                        verdicts.extend(adequacy(&cleaned, disorder, known).findings);
                        let saw = adequacy_on(BladeKind::ChainSaw, &cleaned, disorder, known);
                        verdicts.extend(saw.findings);
                    }
                }
            }
        }
        for (kind, _) in BladeKind::ALL {
            warned.extend(cautions(kind, agent, known));
        }
    }
    (verdicts, warned)
}

#[test]
fn everything_said_of_cleaning_has_words() {
    let (verdicts, warned) = findings();
    for (lang, units) in [(Lang::En, Units::Metric), (Lang::Es, Units::UsCustomary)] {
        let words = Words::new(lang);
        let measure = Measure::new(units, words);
        let mut said = BTreeSet::new();
        for finding in verdicts.iter().chain(&warned) {
            assert!(words.has(finding.code), "{}: {}", lang.tag(), finding.code);
            if !said.insert(finding.code) {
                continue;
            }
            let text = measure.finding(finding);
            let whole = text.len() > 20 && !text.contains(['{', '}', '$']) && text.ends_with('.');
            assert!(whole, "{} {}: {text}", lang.tag(), finding.code);
        }
        let file = match lang {
            Lang::En => include_str!("../lang/en/clean.ftl"),
            Lang::Es => include_str!("../lang/es/clean.ftl"),
        };
        let keys: BTreeSet<&str> = file
            .lines()
            .filter_map(|line| line.split_once(" = "))
            .map(|(key, _)| key)
            .collect();
        assert_eq!(keys, said, "{}: words left over or missing", lang.tag());
    }
}

/// Cautions that can hurt give way to the label, local code and certified people.
#[test]
fn every_caution_that_can_hurt_gives_way() {
    let closing = Words::new(Lang::En).say("common-closing");
    let measure = Measure::new(Units::Metric, Words::new(Lang::En));
    let mut seen = 0;
    for caution in findings().1 {
        if caution.severity < Severity::Caution {
            continue;
        }
        let text = measure.finding(&caution);
        assert!(text.ends_with(&closing), "{text}");
        assert!(
            !caution.sources.is_empty() || caution.practice,
            "{}",
            caution.code
        );
        seen += 1;
    }
    assert!(seen > 50, "{seen}");
}
