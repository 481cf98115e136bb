//! Exposed palms, candidate sources, palms near by.

use super::facts::{says, what};
use super::write::Writer;
use super::{Group, Link, Palm, Row, Section, Table};
use crate::order;
use desk::clock;
use desk::tracing::{Between, Exposure, HostWord, Nearby, Passed, Step, Travel};
use model::{Day, Moment};
use std::collections::BTreeMap;

/// All exposed palms at a glance.
pub(super) fn summary(writer: &Writer) -> Table {
    let leaf = writer.leaf;
    let exposed = &writer.answer.exposed;
    let certain = exposed.iter().filter(|c| c.certain).count();
    let counts = [
        ("certain", (certain as i64).into()),
        ("possible", ((exposed.len() - certain) as i64).into()),
    ];
    Table {
        title: leaf.say("trace-sheet-exposed"),
        lead: leaf.text("trace-sheet-exposed-lead", &counts),
        heads: heads(
            writer,
            &[
                "palm",
                "sure",
                "generation",
                "host",
                "first",
                "until",
                "next",
            ],
        ),
        rows: ordered(exposed).map(|c| row(writer, c)).collect(),
    }
}

fn heads(writer: &Writer, which: &[&str]) -> Vec<String> {
    let head = |which: &&str| writer.leaf.say(&format!("trace-sheet-head-{which}"));
    which.iter().map(head).collect()
}

/// By generation, then by time.
fn ordered(contacts: &[Exposure]) -> impl Iterator<Item = &Exposure> {
    let mut sorted: Vec<&Exposure> = contacts.iter().collect();
    sorted.sort_by_cached_key(|c| (c.way.generation, c.way.when, order::counted(&c.palm.tag)));
    sorted.into_iter()
}

fn row(writer: &Writer, contact: &Exposure) -> Row {
    Row {
        tag: contact.palm.tag.clone(),
        what: what(&contact.palm),
        sure: Some(sure(writer, contact.certain)),
        certain: contact.certain,
        cells: vec![
            contact.way.generation.to_string(),
            host(writer, contact.host),
            writer
                .leaf
                .measure
                .date(clock::local_day(contact.first().when)),
            until(writer, contact.watch_until),
            looks(writer, &contact.looks, 1),
        ],
    }
}

fn sure(writer: &Writer, certain: bool) -> String {
    writer.leaf.say(if certain {
        "trace-sheet-certain"
    } else {
        "trace-sheet-possible"
    })
}

fn host(writer: &Writer, host: HostWord) -> String {
    writer.leaf.say(match host {
        HostWord::Yes => "trace-sheet-host-yes",
        HostWord::Prone => "trace-sheet-host-prone",
        HostWord::Reported => "trace-sheet-host-reported",
        HostWord::No => "trace-sheet-host-no",
        HostWord::Unknown => "common-unknown",
    })
}

fn until(writer: &Writer, day: Option<Day>) -> String {
    day.map_or_else(
        || writer.leaf.say("common-unknown"),
        |day| writer.leaf.measure.date(day),
    )
}

/// The first dates; an ellipsis says that there are more.
fn looks(writer: &Writer, days: &[Day], most: usize) -> String {
    if days.is_empty() {
        return "–".to_owned();
    }
    let shown: Vec<String> = days
        .iter()
        .take(most)
        // a date is not torn apart at the end of a line
        .map(|day| writer.leaf.measure.date(*day).replace(' ', "\u{a0}"))
        .collect();
    let more = if days.len() > most && most > 1 {
        " …"
    } else {
        ""
    };
    format!("{}{more}", shown.join("; "))
}

/// The chains: exposed palms generation by generation, then candidate sources.
pub(super) fn sections(writer: &Writer) -> Vec<Section> {
    let (leaf, told) = (writer.leaf, writer.answer);
    let mut sections = Vec::new();
    if !told.exposed.is_empty() {
        sections.push(Section {
            title: leaf.say("trace-sheet-chains"),
            lead: leaf.say("trace-sheet-chains-lead"),
            groups: groups(writer, &told.exposed, "trace-sheet-first-exposed"),
        });
    }
    sections.push(Section {
        title: leaf.say("trace-sheet-candidates"),
        lead: leaf.say(if told.sources.is_empty() {
            "trace-sheet-candidates-none"
        } else {
            "trace-sheet-candidates-lead"
        }),
        groups: groups(writer, &told.sources, "trace-sheet-last-contact"),
    });
    sections
}

fn groups(writer: &Writer, contacts: &[Exposure], when: &str) -> Vec<Group> {
    let mut generations: BTreeMap<u32, Vec<Palm>> = BTreeMap::new();
    for contact in ordered(contacts) {
        let palms = generations.entry(contact.way.generation).or_default();
        palms.push(palm(writer, contact, when));
    }
    let title = |n: u32| {
        writer
            .leaf
            .text("trace-sheet-generation", &[("n", i64::from(n).into())])
    };
    generations
        .into_iter()
        .map(|(n, palms)| Group {
            title: Some(title(n)),
            palms,
        })
        .collect()
}

fn palm(writer: &Writer, contact: &Exposure, when: &str) -> Palm {
    let leaf = writer.leaf;
    let line = |code: &str, value: String| leaf.text(code, &[("value", value.into())]);
    let mut lines = vec![line(when, says(writer, contact.way.when))];
    if let Some(possible) = &contact.possible {
        lines.push(line("trace-sheet-possibly", says(writer, possible.when)));
    }
    if contact.times > 1 {
        lines.push(leaf.text(
            "trace-sheet-exposures",
            &[("n", i64::from(contact.times).into())],
        ));
    }
    lines.push(line("trace-sheet-host", host(writer, contact.host)));
    if contact.watch_until.is_some() || !contact.looks.is_empty() {
        lines.push(line(
            "trace-sheet-until",
            until(writer, contact.watch_until),
        ));
        lines.push(line(
            "trace-sheet-looks",
            looks(writer, &contact.looks, Exposure::MOST_LOOKS),
        ));
    }
    Palm {
        tag: contact.palm.tag.clone(),
        what: what(&contact.palm),
        sure: sure(writer, contact.certain),
        certain: contact.certain,
        lines,
        steps: contact
            .way
            .chain
            .iter()
            .map(|step| link(writer, step))
            .collect(),
    }
}

fn link(writer: &Writer, step: &Step) -> Link {
    let args = [
        ("blade", step.blade.clone().into()),
        ("from", step.from.clone().into()),
        ("left", says(writer, step.left).into()),
        ("to", step.to.clone().into()),
        (
            "reached",
            when_after(writer, step.left, step.reached).into(),
        ),
    ];
    let mut between: Vec<String> = step.between.iter().map(|b| cleaned(writer, b)).collect();
    if between.is_empty() {
        between.push(writer.leaf.say("trace-sheet-not-cleaned"));
    }
    between.extend(cut(writer, step));
    Link {
        text: writer.leaf.text("trace-sheet-step", &args),
        between: between.join(" "),
    }
}

/// Palms that the blade cut on its way; the first ten by name.
fn cut(writer: &Writer, step: &Step) -> Option<String> {
    if step.cuts_between == 0 {
        return None;
    }
    let shown: Vec<&str> = step
        .cut_between
        .iter()
        .take(10)
        .map(String::as_str)
        .collect();
    let more = if step.cut_between.len() > shown.len() {
        " …"
    } else {
        ""
    };
    let args = [
        ("n", (step.cuts_between as i64).into()),
        ("palms", format!("{}{more}", shown.join(", ")).into()),
    ];
    Some(writer.leaf.text("trace-sheet-between", &args))
}

/// The hour alone where it is the same day.
fn when_after(writer: &Writer, left: Moment, reached: Moment) -> String {
    clock::says_on(&writer.leaf.measure, reached, clock::local_day(left))
}

fn cleaned(writer: &Writer, between: &Between) -> String {
    let leaf = writer.leaf;
    let agent = agent(writer, between);
    let mut args = vec![
        ("at", says(writer, between.at).into()),
        ("agent", agent.into()),
    ];
    let code = match between.passed {
        Passed::Short(Some(minutes)) => {
            args.push(("minutes", leaf.measure.number(minutes, 1).into()));
            "trace-sheet-cleaned-missing"
        }
        Passed::Short(None) => "trace-sheet-cleaned-short",
        Passed::Unknown(Some(minutes)) => {
            args.push(("minutes", leaf.measure.number(minutes, 1).into()));
            "trace-sheet-cleaned-disputed"
        }
        Passed::Unknown(None) => "trace-sheet-cleaned-unknown",
        Passed::OrderOpen => "trace-sheet-cleaned-order",
    };
    leaf.text(code, &args)
}

/// The agent by its name, with strength and minutes as far as they were noted.
fn agent(writer: &Writer, between: &Between) -> String {
    let (leaf, knowledge) = (writer.leaf, writer.speaker.knowledge);
    if between.agent.is_empty() {
        return leaf.say("trace-sheet-agent-unknown");
    }
    let key = knowledge.cleaner_named(&between.agent);
    let row = key.and_then(|key| knowledge.cleaners_of(key).next());
    let mut parts = vec![row.map_or(between.agent.clone(), |row| {
        writer.pick(&row.name).to_owned()
    })];
    if let Some(pct) = between.strength_pct {
        let n = [("n", leaf.measure.number(pct, 1).into())];
        parts.push(leaf.text("measure-percent", &n));
    }
    if let Some(minutes) = between.contact_min {
        let n = [("n", leaf.measure.number(minutes, 1).into())];
        parts.push(leaf.text("trace-sheet-minutes", &n));
    }
    parts.join(", ")
}

/// Palms to watch by distance and host; nothing where blades carry it and nobody asked for them.
pub(super) fn nearby(writer: &Writer) -> Option<Table> {
    let (leaf, told) = (writer.leaf, writer.answer);
    if told.nearby.is_empty() && told.travel == Travel::OnBlades {
        return None;
    }
    let lead = match told.nearby.is_empty() {
        true => "trace-sheet-near-none",
        false => "trace-sheet-near-lead",
    };
    Some(Table {
        title: leaf.say("trace-sheet-near"),
        lead: leaf.say(lead),
        heads: heads(writer, &["palm", "distance", "host", "until", "next"]),
        rows: told
            .nearby
            .iter()
            .map(|near| near_row(writer, near))
            .collect(),
    })
}

fn near_row(writer: &Writer, near: &Nearby) -> Row {
    let distance = near.distance.map_or_else(
        || writer.leaf.say("common-unknown"),
        |metres| writer.leaf.measure.length(metres),
    );
    Row {
        tag: near.palm.tag.clone(),
        what: what(&near.palm),
        sure: None,
        certain: false,
        cells: vec![
            distance,
            host(writer, near.host),
            until(writer, near.watch_until),
            looks(writer, &near.looks, 1),
        ],
    }
}
