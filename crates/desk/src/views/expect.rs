//! The reading: what is going on, how sure, and what it rests on.

use super::case::StemToday;
use super::said::{Cited, Speaker};
use crate::office::Office;
use crown::{Explanation, LogSpread, PalmReading, Prior, Quantiles, Reading};
use model::{Basis, Knowledge, PalmRecord};

/// One explanation with its probability.
#[derive(Clone, PartialEq, Debug)]
pub struct Bar {
    /// Key of the explanation.
    pub key: &'static str,
    /// Its name.
    pub name: String,
    /// Length of the bar, whole percent.
    pub length: u32,
    /// The probability as text.
    pub percent: String,
    /// The probability in words.
    pub words: String,
    /// What it would mean.
    pub means: String,
}

/// A figure the reading rests on, learned from the counts.
#[derive(Clone, PartialEq, Debug)]
pub struct Learned {
    /// What it is.
    pub name: String,
    /// Median with its 90 % interval and unit.
    pub value: String,
    /// What was believed before the counts.
    pub before: String,
    /// Remarks: how that belief is known, what stands in for what.
    pub marks: Vec<String>,
    /// Its sources.
    pub sources: Vec<Cited>,
}

/// The reading of one stem.
#[derive(Clone, PartialEq, Debug)]
pub struct ReadingView {
    /// What is most probable, in one sentence.
    pub headline: String,
    /// Key of the most probable explanation.
    pub key: &'static str,
    /// All explanations that apply, most probable first.
    pub bars: Vec<Bar>,
    /// The whole palm's probabilities, where it has several stems.
    pub palm_bars: Vec<Bar>,
    /// What the reading rests on, in one sentence.
    pub rests_on: String,
    /// Where its season comes from.
    pub season: String,
    /// Figures learned.
    pub learned: Vec<Learned>,
    /// The weights before the counts, in words.
    pub prior: String,
}

/// The reading of a stem in words.
pub fn view(
    speaker: &Speaker,
    office: &Office,
    record: &PalmRecord,
    palm: &PalmReading,
    at: &StemToday,
) -> ReadingView {
    let (prior, stem) = (prior_of(office, record), at.reading());
    let bars = bars(speaker, &stem.probabilities, &stem.prior_weights);
    let several = palm.stems.len() > 1;
    ReadingView {
        headline: headline(speaker, stem),
        key: stem.most_probable().key(),
        palm_bars: if several {
            self::bars(speaker, &palm.probabilities, &stem.prior_weights)
        } else {
            Vec::new()
        },
        rests_on: rests_on(speaker, at),
        season: season(speaker, office, record),
        learned: vec![
            learned(
                speaker,
                "reading-full-crown",
                &stem.full_crown,
                &prior.full_crown,
            ),
            learned(
                speaker,
                "reading-per-year",
                &stem.fronds_per_year,
                &prior.fronds_per_year,
            ),
        ],
        prior: prior_words(speaker, &stem.prior_weights),
        bars,
    }
}

/// The beliefs about a palm before its counts.
fn prior_of(office: &Office, record: &PalmRecord) -> Prior {
    let species = office.species(&record.palm);
    let genus = record.palm.species.split_whitespace().next().unwrap_or("");
    let relatives = Knowledge::embedded().relatives(species.map_or(genus, |s| s.genus()));
    Prior::of(&record.palm, species, &relatives)
}

fn season(speaker: &Speaker, office: &Office, record: &PalmRecord) -> String {
    let known = office.climate(&record.palm).and(record.palm.position);
    match known.and_then(|p| speaker.knowledge.climate_near(p.lat, p.lon)) {
        Some((place, _)) => speaker.text(
            "reading-season-from",
            &[("place", place.name.clone().into())],
        ),
        None => speaker.say("reading-season-assumed"),
    }
}

fn bars(speaker: &Speaker, probabilities: &[f64; 4], prior: &[f64; 4]) -> Vec<Bar> {
    let mut applying: Vec<Explanation> = Explanation::ALL
        .into_iter()
        .filter(|e| prior[e.index()] > 0.0)
        .collect();
    applying.sort_by(|a, b| probabilities[b.index()].total_cmp(&probabilities[a.index()]));
    applying
        .into_iter()
        .map(|e| bar(speaker, e, probabilities[e.index()]))
        .collect()
}

fn bar(speaker: &Speaker, explanation: Explanation, p: f64) -> Bar {
    let key = explanation.key();
    Bar {
        key,
        name: speaker.say(&format!("explanation-{key}")),
        length: (p * 100.0).round() as u32,
        percent: speaker.measure.percent(p),
        words: speaker.say(likelihood(p)),
        means: speaker.say(&format!("explanation-{key}-means")),
    }
}

/// The words of a probability.
pub fn likelihood(p: f64) -> &'static str {
    match p {
        p if p >= 0.97 => "likelihood-almost-certain",
        p if p >= 0.85 => "likelihood-very-likely",
        p if p >= 0.65 => "likelihood-likely",
        p if p >= 0.35 => "likelihood-open",
        p if p >= 0.10 => "likelihood-unlikely",
        p if p >= 0.02 => "likelihood-very-unlikely",
        _ => "likelihood-almost-ruled-out",
    }
}

fn headline(speaker: &Speaker, stem: &Reading) -> String {
    if stem.last_inspection.is_none() {
        return speaker.say("reading-headline-none");
    }
    let best = stem.most_probable();
    let p = stem.probabilities[best.index()];
    let sure = match p {
        p if p >= 0.85 => "sure",
        p if p >= 0.60 => "likely",
        _ => "open",
    };
    speaker.say(&format!("reading-headline-{}-{sure}", best.key()))
}

fn rests_on(speaker: &Speaker, at: &StemToday) -> String {
    let looks: Vec<_> = at
        .looks()
        .iter()
        .filter(|look| look.date <= at.today())
        .collect();
    let Some(last) = looks.last() else {
        return speaker.say("reading-rests-on-none");
    };
    let ago = f64::from(at.today().since(last.date));
    let args = [
        ("n", (looks.len() as i64).into()),
        ("ago", speaker.measure.duration(ago).into()),
    ];
    speaker.text(
        if looks.len() == 1 {
            "reading-rests-on-one"
        } else {
            "reading-rests-on"
        },
        &args,
    )
}

fn learned(speaker: &Speaker, name: &str, now: &Quantiles, before: &LogSpread) -> Learned {
    let m = &speaker.measure;
    let value = [
        ("n", m.about(now.q50).into()),
        ("range", m.counts(now.q05, now.q95).into()),
    ];
    let mut marks: Vec<String> = speaker.basis(before.basis).into_iter().collect();
    marks.extend(before.note.map(|note| speaker.say(note)));
    Learned {
        name: speaker.say(name),
        value: speaker.text("reading-value", &value),
        before: speaker.text("reading-before", &[("n", m.about(before.median).into())]),
        marks,
        sources: if before.basis == Basis::Keeper {
            Vec::new()
        } else {
            speaker.cite(&before.sources)
        },
    }
}

fn prior_words(speaker: &Speaker, weights: &[f64; 4]) -> String {
    let listed: Vec<String> = Explanation::ALL
        .into_iter()
        .filter(|e| weights[e.index()] > 0.0)
        .map(|e| {
            let name = speaker.say(&format!("explanation-{}", e.key()));
            format!("{name} {}", speaker.measure.percent(weights[e.index()]))
        })
        .collect();
    speaker.text("reading-prior", &[("list", listed.join(", ").into())])
}
