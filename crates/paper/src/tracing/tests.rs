use super::*;
use crate::leaf::Size;
use crate::testing::{leaf, text_of};
use desk::tracing::{
    Between, CaseTold, Exposure, HostWord, LatencyTold, LogSpan, Nearby, Passed, Stand, Step,
    Travel, Way,
};
use desk::words::Lang;
use model::knowledge::{DayRange, Family, Spread, Texts};
use model::{Basis, Day, Finding, Metres, Moment, Severity, SourceKey};

fn at(text: &str) -> Moment {
    Moment::parse(text).unwrap()
}

fn stand(tag: &str) -> Stand {
    Stand {
        tag: tag.into(),
        species: "Phoenix canariensis".into(),
        site: "Harbour gardens".into(),
        ..Stand::default()
    }
}

fn step(from: &str, to: &str, between: Vec<Between>) -> Step {
    Step {
        blade: "S-7".into(),
        blade_id: None,
        from: from.into(),
        left: at("2026-02-03T09:00:00Z"),
        to: to.into(),
        reached: at("2026-02-03T09:40:00Z"),
        between,
        cut_between: vec!["Z-1".into(), "Z-2".into()],
        cuts_between: 2,
    }
}

fn between(agent: &str, passed: Passed) -> Between {
    Between {
        at: at("2026-02-03T09:20:00Z"),
        agent: agent.into(),
        strength_pct: None,
        contact_min: Some(1.5),
        passed,
    }
}

fn exposure(tag: &str, certain: bool, chain: Vec<Step>) -> Exposure {
    Exposure {
        palm: stand(tag),
        host: HostWord::Yes,
        certain,
        way: Way {
            generation: chain.len() as u32,
            when: at("2026-02-03T09:40:00Z"),
            chain,
        },
        possible: None,
        last: at("2026-02-03T09:40:00Z"),
        times: 1,
        watch_until: Day::from_ymd(2027, 2, 3),
        looks: vec![Day::from_ymd(2026, 3, 16).unwrap()],
    }
}

/// An invented case: one palm reached for certain, one beyond it by a cleaning that nobody can judge.
fn answer() -> TraceAnswer {
    let short = between("bleach", Passed::Short(Some(3.5)));
    let open = between("a spray", Passed::Unknown(None));
    TraceAnswer {
        as_of: at("2026-03-02T12:00:00Z"),
        disorder: Some("invented-wilt".into()),
        travel: Travel::OnBlades,
        latency: LatencyTold {
            range: DayRange {
                min: Some(30),
                max: Some(365),
            },
            by_keeper: false,
            sources: vec![SourceKey::fixed("pp215")],
        },
        cases: vec![CaseTold {
            palm: stand("C-1"),
            seen_sick: Day::from_ymd(2026, 3, 1).unwrap(),
            surely_from: at("2026-03-01T12:00:00Z"),
            possibly_from: Some(at("2026-01-30T12:00:00Z")),
            exposed_from: Some(at("2025-03-01T12:00:00Z")),
            exposed_until: at("2026-01-30T12:00:00Z"),
            cuts: 4,
        }],
        log: LogSpan {
            cuts: 41,
            cleanings: 1,
            blades: 2,
            palms: 9,
            first: Some(at("2026-01-05T08:00:00Z")),
            last: Some(at("2026-03-01T16:00:00Z")),
        },
        exposed: vec![
            exposure("X-1", true, vec![step("C-1", "X-1", vec![short.clone()])]),
            exposure(
                "X-2",
                false,
                vec![
                    step("C-1", "X-1", vec![short]),
                    step("X-1", "X-2", vec![open]),
                ],
            ),
        ],
        sources: vec![exposure("O-9", true, vec![step("O-9", "C-1", Vec::new())])],
        nearby: Vec::new(),
        findings: Vec::new(),
    }
}

fn texts(text: &str) -> Texts {
    Texts {
        en: text.into(),
        es: text.into(),
    }
}

fn wilt() -> DisorderRow {
    DisorderRow {
        key: "invented-wilt".into(),
        name: texts("invented wilt"),
        family: Family::Disease,
        about: Texts::default(),
        organism: "Fungus inventus".into(),
        hosts: Vec::new(),
        spread: vec![Spread::Blade],
        latency: DayRange::default(),
        decline: DayRange::default(),
        common: 1.0,
        course: model::knowledge::Course::Decline,
        hold: None,
        confirm: texts("A laboratory grows it."),
        sample: texts("Send a live piece of the rachis."),
        first: texts("Stop cutting."),
        never: texts("Never chip the fronds."),
        basis: Basis::Memory,
        sources: vec![SourceKey::fixed("pp215")],
    }
}

fn text(lang: Lang, size: Size, answer: &TraceAnswer) -> String {
    let row = wilt();
    let row = answer.disorder.as_ref().map(|_| &row);
    text_of(&trace_report(&leaf(lang, size), answer, row).unwrap())
}

#[test]
fn the_report_says_who_was_exposed_how_and_until_when() {
    let wanted = [
        (
            Lang::En,
            [
                "Trace from palm C-1",
                "invented wilt (Fungus inventus)",
                "1 palm is in the certain set, 1 more in the possible set only",
                "Generation 2",
                "Household bleach, 1.5 min: 3.5 min of contact missing",
                "a spray, 1.5 min: nobody can say",
                "3 Feb 2027",
                "16 Mar 2026",
                "2 cuts in between: Z-1, Z-2",
                "Where it may have come from",
                "O-9",
                "no diagnosis",
                "plant health authority of the place comes first",
                "41 cuts; 1 cleaning",
                "passing it on surely from 1 Mar 2026, possibly from 30 Jan 2026",
                "4 weeks to 12 months [1]",
                "Never chip the fronds",
                "from memory",
            ],
        ),
        (
            Lang::Es,
            [
                "Rastreo desde la palma C-1",
                "invented wilt (Fungus inventus)",
                "1 palma está en el conjunto seguro, 1 más solo en el posible",
                "Generación 2",
                "Lejía doméstica, 1,5 min: faltaron 3,5 min de contacto",
                "a spray, 1,5 min: nadie puede decir",
                "3 feb 2027",
                "16 mar 2026",
                "2 cortes en medio: Z-1, Z-2",
                "De dónde pudo venir",
                "O-9",
                "no es un diagnóstico",
                "la autoridad fitosanitaria del lugar",
                "41 cortes; 1 limpieza",
                "contagia con seguridad desde: 1 mar 2026",
                "de 4 semanas a 12 meses [1]",
                "Never chip the fronds",
                "de memoria",
            ],
        ),
    ];
    for (lang, wanted) in wanted {
        for size in Size::ALL {
            let text = text(lang, size, &answer()).replace('\u{a0}', " ");
            for words in wanted {
                let words = match size {
                    Size::A4 => words.to_owned(),
                    // Letter goes with the units and dates of the United States
                    Size::Letter if words.contains(" 20") || words.contains(',') => continue,
                    Size::Letter => words.to_owned(),
                };
                assert!(text.contains(&words), "{}: {words}\n{text}", lang.tag());
            }
        }
    }
}

#[test]
fn generations_come_in_order_and_the_notice_before_everything() {
    let mut answer = answer();
    let said = text(Lang::En, Size::Letter, &answer);
    let place = |words: &str| {
        said.find(words)
            .unwrap_or_else(|| panic!("{words}: {said}"))
    };
    assert!(place("Generation 1") < place("Generation 2"));
    answer.travel = Travel::NotOnBlades;
    answer.nearby = vec![Nearby {
        palm: stand("N-1"),
        distance: Some(Metres(14.0)),
        host: HostWord::Prone,
        watch_until: None,
        looks: Vec::new(),
    }];
    let said = text(Lang::En, Size::Letter, &answer);
    let place = |words: &str| {
        said.find(words)
            .unwrap_or_else(|| panic!("{words}: {said}"))
    };
    assert!(place("not known to travel on blades") < place("Case palm"));
    assert!(place("46 ft") > place("Hosts near by"));
    assert!(
        !said.contains("X-1"),
        "a palm is named by its blades: {said}"
    );
}

#[test]
fn nothing_known_is_said_and_never_taken_for_safety() {
    let mut answer = answer();
    answer.exposed.clear();
    answer.sources.clear();
    answer.log = LogSpan::default();
    answer.latency = LatencyTold::default();
    (answer.disorder, answer.travel) = (None, Travel::NotNamed);
    answer.cases[0].possibly_from = None;
    answer.findings = vec![Finding::new("sheet-empty", Severity::Caution)];
    let said = text(Lang::En, Size::A4, &answer);
    for words in [
        "No disorder is named",
        "The log holds no cut",
        "0 palms are in the certain set",
        "first sign unknown",
        "possibly from the beginning of the log",
        "There is nothing to print",
    ] {
        assert!(said.contains(words), "{words}: {said}");
    }
}

#[test]
fn every_word_of_the_report_is_known() {
    for lang in Lang::ALL {
        let mut answer = answer();
        for passed in [
            Passed::Short(None),
            Passed::Unknown(Some(1.0)),
            Passed::OrderOpen,
        ] {
            answer.exposed.push(exposure(
                "Y",
                true,
                vec![step("C-1", "Y", vec![between("", passed)])],
            ));
        }
        for host in HostWord::ALL {
            answer.exposed[0].host = host.0;
            for travel in [
                Travel::OnBlades,
                Travel::NotOnBlades,
                Travel::Unknown,
                Travel::NotNamed,
            ] {
                answer.travel = travel;
                let sheet = write::sheet(&leaf(lang, Size::A4), &answer, None);
                let sheet = serde_json::to_string(&sheet).unwrap();
                assert!(
                    !sheet.contains("trace-sheet-") && !sheet.contains("{$"),
                    "{sheet}"
                );
            }
        }
    }
}

#[test]
fn too_long_a_report_is_refused() {
    let mut answer = answer();
    answer.exposed = vec![answer.exposed[0].clone(); MOST];
    assert_eq!(
        trace_report(&leaf(Lang::En, Size::A4), &answer, None),
        Err(Error::TooMany {
            found: MOST + 1,
            limit: MOST
        })
    );
}
