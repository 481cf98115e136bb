//! `/selection`: two to four specimens side by side, from typed counts.

use super::super::said::{Said, Speaker};
use crate::assess::Kind;
use crate::office::Office;
use care::moving::{Cleaned, Outlook, Specimen, compare, outlook};
use crown::Sampler;
use model::{Knowledge, Spear};
use serde_json::{Value, json};

/// So many specimens at most.
pub const MOST: usize = 4;
/// Crowns computed for each specimen; as many as a reading takes.
const DRAWS: usize = 4096;
/// Highest count that is believed.
const MOST_FRONDS: u32 = 1000;
/// Longest time since digging that is taken; after it a palm counts as settled.
const MOST_DAYS: u32 = 540;

/// One specimen as it was typed.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Typed {
    /// What the keeper calls it.
    pub name: String,
    /// Species.
    pub species: String,
    /// Counts.
    pub green: String,
    /// Partly dead.
    pub yellowing: String,
    /// Wholly dead, still on.
    pub brown: String,
    /// State of the spear by its file word.
    pub spear: String,
    /// Days since digging.
    pub dug: String,
    /// `digging`, `since`, or nothing.
    pub cleaned: String,
}

impl Typed {
    /// Whether nothing was typed that could be judged.
    pub fn is_blank(&self) -> bool {
        [&self.green, &self.yellowing, &self.brown, &self.dug]
            .iter()
            .all(|text| text.trim().is_empty())
    }
}

/// Something wrong with a field.
#[derive(Clone, PartialEq, Debug)]
pub struct Trouble {
    /// Number of the specimen, from 0.
    pub specimen: usize,
    /// Its field.
    pub field: &'static str,
    /// What is wrong.
    pub text: String,
}

/// A specimen in the answer.
#[derive(Clone, PartialEq, Debug)]
pub struct Column {
    /// Its name.
    pub name: String,
    /// Further losses in 4, 8, 26 weeks: "1 to 4".
    pub further: [String; 3],
    /// Live fronds after 4, 8, 26 weeks.
    pub live: [String; 3],
    /// Brown share by now.
    pub browned: String,
    /// What to say of it.
    pub said: Vec<Said>,
    /// To be left where it is.
    pub refused: bool,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct SelectionView {
    /// What is wrong.
    pub troubles: Vec<Trouble>,
    /// Specimens.
    pub columns: Vec<Column>,
    /// What setting them side by side says.
    pub said: Vec<Said>,
    /// Usual figures of practice.
    pub usual: Vec<Said>,
    /// The answer for a program.
    pub json: Value,
}

/// Sets specimens side by side; blank ones are left out.
pub fn view(speaker: &Speaker, office: &Office, typed: &[Typed]) -> SelectionView {
    let mut troubles = Vec::new();
    let specimens: Vec<Specimen> = typed
        .iter()
        .take(MOST)
        .enumerate()
        .filter(|(_, typed)| !typed.is_blank())
        .map(|(n, typed)| specimen(speaker, n, typed, &mut troubles))
        .collect();
    let mut sampler = Sampler::new(DRAWS);
    let outlooks: Vec<Outlook> = if troubles.is_empty() {
        let today = office.today();
        specimens
            .iter()
            .map(|s| outlook(s, today, Knowledge::embedded(), &mut sampler))
            .collect()
    } else {
        Vec::new()
    };
    SelectionView {
        troubles,
        columns: outlooks.iter().map(|o| column(speaker, o)).collect(),
        said: speaker.findings(&compare(&outlooks)),
        usual: super::plan::usual(speaker),
        json: outlooks.iter().map(as_json).collect(),
    }
}

fn specimen(
    speaker: &Speaker,
    n: usize,
    typed: &Typed,
    troubles: &mut Vec<Trouble>,
) -> Specimen<'static> {
    let mut wrong = |field, code: &str, most: u32| {
        let args = [("most", i64::from(most).into())];
        troubles.push(Trouble {
            specimen: n,
            field,
            text: speaker.text(code, &args),
        });
    };
    let mut count = |field, text: &str, most: u32| {
        let text = text.trim();
        let read = text.parse::<u32>().ok().filter(|n| *n <= most);
        if read.is_none() && !text.is_empty() {
            wrong(field, "select-count-wrong", most);
        }
        read
    };
    let green = count("green", &typed.green, MOST_FRONDS);
    let yellowing = count("yellowing", &typed.yellowing, MOST_FRONDS);
    let brown = count("brown", &typed.brown, MOST_FRONDS);
    let dug_days = count("dug", &typed.dug, MOST_DAYS);
    let kind = Kind::named(Knowledge::embedded(), typed.species.trim());
    if let Some(finding) = kind.finding.filter(|f| f.severity >= model::Severity::Act) {
        troubles.push(Trouble {
            specimen: n,
            field: "species",
            text: speaker.measure.finding(&finding),
        });
    }
    let letter = char::from(b'A' + n as u8);
    Specimen {
        name: match typed.name.trim() {
            "" => letter.to_string(),
            name => name.to_owned(),
        },
        species_name: typed.species.trim().to_owned(),
        species: kind.species,
        relatives: kind.relatives,
        green,
        yellowing,
        brown,
        spear: Spear::parse(&typed.spear),
        dug_days,
        cleaned: match typed.cleaned.as_str() {
            "digging" => Cleaned::AtDigging,
            "since" => Cleaned::Since,
            _ => Cleaned::Unknown,
        },
    }
}

fn column(speaker: &Speaker, outlook: &Outlook) -> Column {
    let m = &speaker.measure;
    Column {
        name: outlook.name.clone(),
        further: outlook
            .further
            .map(|loss| m.counts(f64::from(loss.low), f64::from(loss.high))),
        live: outlook.live.map(|q| m.counts(q.q05, q.q95)),
        browned: outlook
            .browned
            .map_or_else(|| speaker.say("common-unknown"), |share| m.percent(share)),
        said: speaker.findings(&outlook.findings),
        refused: outlook.refused(),
    }
}

fn as_json(outlook: &Outlook) -> Value {
    let weeks = care::moving::selection::WEEKS;
    let ahead: Vec<Value> = (0..weeks.len())
        .map(|k| {
            let (loss, live) = (outlook.further[k], outlook.live[k]);
            json!({
                "weeks": weeks[k], "low": loss.low, "median": loss.median, "high": loss.high,
                "call_from": loss.call_from, "live": [live.q05, live.q50, live.q95],
            })
        })
        .collect();
    let codes: Vec<&str> = outlook.findings.iter().map(|f| f.code).collect();
    json!({ "name": outlook.name, "browned": outlook.browned, "ahead": ahead, "findings": codes, "refused": outlook.refused() })
}
