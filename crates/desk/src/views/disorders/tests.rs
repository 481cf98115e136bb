use super::*;
use crate::measure::{Measure, Units};
use crate::words::{Lang, Words};
use model::Knowledge;
use model::knowledge::{Course, HoldKind, Part, Spread, Strength};

fn speaker(lang: Lang) -> Speaker {
    Speaker::new(Measure::new(Units::Metric, Words::new(lang)))
}

fn host(name: &str, kind: HostKind) -> Host {
    Host {
        name: name.to_owned(),
        kind,
    }
}

#[test]
fn a_host_is_found_by_species_before_genus_before_all_palms() {
    let hosts = [
        host("*", HostKind::Reported),
        host("Phoenix", HostKind::Known),
        host("Phoenix canariensis", HostKind::Prone),
    ];
    for (name, kind) in [
        ("Phoenix canariensis", HostKind::Prone),
        ("Phoenix dactylifera", HostKind::Known),
        ("Phoenix", HostKind::Known),
        ("Cocos nucifera", HostKind::Reported),
    ] {
        assert_eq!(host_kind(&hosts, name), Some(kind), "{name}");
    }
    assert_eq!(host_kind(&hosts[1..], "Cocos nucifera"), None);
    assert_eq!(
        host_kind(&hosts[2..], "Phoenix"),
        Some(HostKind::Prone),
        "a species of the genus"
    );
    assert_eq!(host_kind(&hosts[2..], "Phoenix dactylifera"), None);
}

#[test]
fn every_disorder_has_its_page_in_every_language() {
    for lang in Lang::ALL {
        let speaker = speaker(lang);
        let all = view(&speaker, "");
        assert_eq!(all.shown, Knowledge::embedded().disorders.len());
        for row in &Knowledge::embedded().disorders {
            let page = disorder(&speaker, &row.key).unwrap();
            assert!(
                !page.signs.is_empty() || row.key == care::judge::AGEING,
                "{}: no sign",
                row.key
            );
            assert!(
                !page.hosts.is_empty() && !page.sources.is_empty(),
                "{}",
                row.key
            );
            assert_eq!(page.hold.is_some(), row.hold.is_some(), "{}", row.key);
            for sign in &page.signs {
                assert!(
                    !sign.place.is_empty(),
                    "{}: {} is nowhere",
                    row.key,
                    sign.key
                );
                assert!(
                    !sign.sources.is_empty() || sign.mark.is_some(),
                    "{}: who says {}?",
                    row.key,
                    sign.key
                );
            }
        }
    }
    assert_eq!(disorder(&speaker(Lang::En), "no-such"), None);
}

#[test]
fn the_list_can_be_cut_down_to_one_palm() {
    let speaker = speaker(Lang::En);
    let all = view(&speaker, "").shown;
    let canary = view(&speaker, "canary island date palm");
    assert_eq!(canary.host.as_deref(), Some("Phoenix canariensis"));
    assert!(
        canary.shown < all && canary.shown > 5,
        "{} of {all}",
        canary.shown
    );
    let keys: Vec<&str> = canary
        .families
        .iter()
        .flat_map(|f| &f.rows)
        .map(|r| r.key.as_str())
        .collect();
    assert!(keys.iter().any(|key| key.contains("fusarium")), "{keys:?}");
    let nobody = view(&speaker, "qwertz");
    assert!(nobody.unknown && nobody.shown == all);
}

#[test]
fn codes_put_together_have_words() {
    let mut codes: Vec<String> = Vec::new();
    codes.extend(Family::ALL.map(|(_, key)| format!("family-{key}")));
    codes.extend(Spread::ALL.map(|(_, key)| format!("spread-{key}")));
    codes.extend(Strength::ALL.map(|(_, key)| format!("strength-{key}")));
    codes.extend(Course::ALL.map(|(_, key)| format!("course-{key}")));
    codes.extend(HostKind::ALL.map(|(_, key)| format!("host-{key}")));
    codes.extend(Part::ALL.map(|(_, key)| format!("place-{key}")));
    codes.extend(HoldKind::ALL.map(|(_, key)| format!("forms-hold-reason-{key}")));
    codes.extend(care::judge::LEVELS.map(|(key, _)| format!("level-{key}")));
    codes.extend(["move", "hunger", "both", "neither"].map(|call| format!("sides-call-{call}")));
    for reason in care::judge::hold_reasons() {
        codes.extend(["instead", "tell", "ends"].map(|what| format!("hold-{what}-{reason}")));
    }
    for lang in Lang::ALL {
        let silent: Vec<_> = codes.iter().filter(|c| !Words::new(lang).has(c)).collect();
        assert!(silent.is_empty(), "no words in {}: {silent:?}", lang.tag());
    }
}

/// The sources are read for their codes, so that a new one without words is caught.
#[test]
fn every_code_of_the_views_of_signs_has_words() {
    let sources = [
        include_str!("../judgement.rs"),
        include_str!("../judgement/holds.rs"),
        include_str!("../judgement/ranking.rs"),
        include_str!("../judgement/sides.rs"),
        include_str!("../picker.rs"),
        include_str!("../disorders.rs"),
        include_str!("one.rs"),
    ];
    let quoted = sources
        .iter()
        .flat_map(|text| text.split('"').skip(1).step_by(2));
    const BEGIN: [&str; 9] = [
        "signs-", "sides-", "speaks-", "advice-", "need-", "host-", "days-", "place-", "disorder",
    ];
    let codes: Vec<&str> = quoted
        .filter(|code| BEGIN.iter().any(|begin| code.starts_with(begin)))
        .filter(|code| {
            code.bytes().all(|b| b.is_ascii_lowercase() || b == b'-') && code.contains('-')
        })
        .collect();
    assert!(codes.len() > 30, "the codes were not found: {codes:?}");
    for lang in Lang::ALL {
        let silent: Vec<_> = codes.iter().filter(|c| !Words::new(lang).has(c)).collect();
        assert!(silent.is_empty(), "no words in {}: {silent:?}", lang.tag());
    }
}
