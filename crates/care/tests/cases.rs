//! Golden cases of `cases/cuts`: data through one door each.

extern crate spearleaf_care as care;

mod scene;

use care::{Decision, Stand, Tool, decide, plan_from};
use crown::Cut;
use model::{Day, Finding, Metres, Spear};
use scene::Scene;
use std::collections::BTreeMap;

type Row = BTreeMap<String, String>;

fn rows(text: &str) -> Vec<Row> {
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let head = reader.headers().unwrap().clone();
    let row = |record: csv::StringRecord| {
        head.iter()
            .zip(record.iter())
            .map(|(h, v)| (h.to_owned(), v.to_owned()))
            .collect()
    };
    let rows: Vec<Row> = reader.records().map(|r| row(r.unwrap())).collect();
    assert!(rows.len() >= 10, "the cases are there");
    rows
}

fn number(row: &Row, column: &str) -> Option<f64> {
    let text = row[column].as_str();
    (!text.is_empty()).then(|| {
        text.parse()
            .unwrap_or_else(|_| panic!("{}: {column} {text}", row["case"]))
    })
}

fn count(row: &Row, column: &str) -> u32 {
    number(row, column).unwrap_or(0.0) as u32
}

fn list<'a>(row: &'a Row, column: &str) -> Vec<&'a str> {
    row[column].split(';').filter(|s| !s.is_empty()).collect()
}

fn scene(row: &Row) -> Scene {
    let mut scene = Scene::full(&row["species"]);
    scene.today = Day::from_ymd(2026, count(row, "month") as i8, 15).unwrap();
    let next = number(row, "next_visit_days");
    scene.next_visit = next.map(|days| scene.today.plus(days as i32));
    let crown = &mut scene.crown;
    (crown.green, crown.yellowing, crown.brown) = (
        count(row, "green"),
        count(row, "yellowing"),
        count(row, "brown"),
    );
    crown.counted_days_ago = number(row, "counted_days_ago").map(|d| d as i32);
    crown.below_level = count(row, "below_level");
    crown.full_crown = number(row, "full_crown").unwrap();
    crown.fronds_per_year = number(row, "fronds_per_year").unwrap();
    crown.regrowth = next.map(|days| (crown.fronds_per_year * days / 365.25).round() as u32);
    let p = ["p_move", "p_hunger", "p_decline"].map(|c| number(row, c).unwrap());
    crown.probabilities = [1.0 - p.iter().sum::<f64>(), p[0], p[1], p[2]];
    if let Some(days) = number(row, "moved_days_ago") {
        scene.moved_days_ago(days as i32);
    }
    surroundings(row, &mut scene);
    scene
}

fn surroundings(row: &Row, scene: &mut Scene) {
    let today = scene.today;
    let look = scene.look();
    look.date = today;
    look.spear = Spear::parse(&row["spear"]);
    look.signs = list(row, "signs").into_iter().map(str::to_owned).collect();
    for reason in list(row, "hold") {
        scene.hold(reason);
    }
    for word in list(row, "grounds") {
        match word {
            "weevil" => scene.grounds.weevil_area = true,
            "storm" => scene.grounds.storm_expected = true,
            "freeze" => scene.grounds.freeze_on = Some(today.plus(-30)),
            _ => panic!("{}: grounds {word}", row["case"]),
        }
    }
    scene.grounds.line_kv = number(row, "line_kv");
    scene.palm.wires = number(row, "wires_m").map(Metres);
    scene.palm.trunk_height = number(row, "trunk_m").map(Metres);
    scene.palm.over = row["over"].clone();
    scene.palm.stems = count(row, "stems") as u16;
}

fn cut(row: &Row, prefix: &str) -> Cut {
    let of = |what: &str| count(row, &format!("{prefix}_{what}"));
    Cut {
        green: of("green"),
        yellowing: of("yellowing"),
        brown: of("brown"),
    }
}

fn said(row: &Row, findings: &[Finding]) {
    let codes: Vec<&str> = findings.iter().map(|f| f.code).collect();
    for code in list(row, "says") {
        assert!(
            codes.contains(&code),
            "{}: {code} is not among {codes:?}",
            row["case"]
        );
    }
    for code in list(row, "silent") {
        assert!(
            !codes.contains(&code),
            "{}: {code} is among {codes:?}",
            row["case"]
        );
    }
    assert!(!row["source"].is_empty(), "{}: no source", row["case"]);
}

#[test]
fn asked_for_cuts_are_answered_as_the_cases_say() {
    for row in rows(include_str!("../../../cases/cuts/asked.csv")) {
        let (scene, asked) = (scene(&row), cut(&row, "ask"));
        let Decision {
            verdict,
            allowed,
            findings,
            years_growth,
        } = decide(&scene.sight(), asked);
        assert_eq!(
            (verdict.key(), allowed),
            (row["verdict"].as_str(), cut(&row, "allow")),
            "{}",
            row["case"]
        );
        let years = f64::from(asked.live()) / number(&row, "fronds_per_year").unwrap();
        assert_eq!(years_growth, Some(years), "{}", row["case"]);
        said(&row, &findings);
    }
}

#[test]
fn plans_come_out_as_the_cases_say() {
    for row in rows(include_str!("../../../cases/cuts/plans.csv")) {
        let scene = scene(&row);
        let plan = plan_from(1, &scene.sight());
        let case = &row["case"];
        let held: Vec<&str> = plan.holds.iter().map(|f| f.code).collect();
        assert_eq!(held, list(&row, "holds"), "{case}");
        assert_eq!(
            plan.may_take,
            Cut {
                brown: count(&row, "take_brown"),
                ..Cut::NONE
            },
            "{case}"
        );
        let most = Cut {
            brown: plan.may_take.brown,
            ..cut(&with_brown(&row), "most")
        };
        assert_eq!(plan.if_asked, most, "{case}");
        let stay = (plan.must_stay.green, plan.must_stay.yellowing);
        assert_eq!(
            stay,
            (count(&row, "stay_green"), count(&row, "stay_yellowing")),
            "{case}"
        );
        method(&row, &plan.method);
        let all = [
            plan.holds,
            plan.findings,
            plan.method.findings,
            plan.cautions,
        ]
        .concat();
        said(&row, &all);
    }
}

/// `most` has no column for dead fronds: they are the same as those taken.
fn with_brown(row: &Row) -> Row {
    let mut row = row.clone();
    row.insert("most_brown".into(), row["take_brown"].clone());
    row
}

fn method(row: &Row, method: &care::Method) {
    let tool = match method.tool {
        Tool::Hand => "hand",
        Tool::Saw => "saw",
    };
    let stand = match method.stand {
        Stand::Ground => "ground",
        Stand::GroundWithPole => "ground-with-pole",
        Stand::Lift => "lift",
        Stand::LiftFromAbove => "lift-from-above",
        Stand::Unknown => "unknown",
    };
    assert_eq!(
        (tool, stand),
        (row["tool"].as_str(), row["stand"].as_str()),
        "{}",
        row["case"]
    );
    let Some(stub) = method.stub else {
        return assert_eq!(row["stub_in"], "", "{}", row["case"]);
    };
    let (low, high) = row["stub_in"].split_once("..").expect("a stub in inches");
    let (low, high): (f64, f64) = (low.parse().unwrap(), high.parse().unwrap());
    assert!(
        stub.low.inches() >= low - 1e-9
            && stub.high.inches() <= high + 1e-9
            && stub.low.0 <= stub.high.0,
        "{}: {stub:?}",
        row["case"]
    );
}
