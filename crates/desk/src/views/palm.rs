//! One palm: everything its page shows.

use super::asked::{self, Answer, Question};
use super::blades::log::{self, PalmCutLine};
use super::case::StemToday;
use super::charts::{Course, Trace, course};
use super::crowns::{self, CrownFrames, Mode};
use super::cutting::{self, CuttingView, Line};
use super::drawing::Look;
use super::expect::{self, ReadingView};
use super::facts::{self, Fact};
use super::history::{self, Event};
use super::judgement::{self, JudgementView};
use super::loss::{self, LossView};
use super::needs;
use super::outlook::{self, OutlookRow};
use super::palms;
use super::reach;
use super::said::{Said, Speaker};
use super::standing::{Standing, tidy_and_limit};
use super::tracing;
use crate::grounds::OnSite;
use crate::judging::{self, Judged};
use crate::office::Office;
use crate::reaching::{Told, reached};
use care::CutPlan;
use crown::{Cut, PalmReading, Quantiles, Reading};
use model::{Day, Inspection, PalmRecord};

/// Days ahead that the chart of counts shows.
const AHEAD_DAYS: i32 = 364;

/// The page of a palm, one of its stems in view.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmView {
    /// Tag.
    pub tag: String,
    /// Species as written.
    pub species: String,
    /// What that name stands for, where it is not the accepted one.
    pub species_note: Option<String>,
    /// English trade names.
    pub common: String,
    /// Site.
    pub site: String,
    /// What needs a person, worst first.
    pub needs: Vec<Said>,
    /// Stems with whether each is the one in view; empty for a palm with one stem.
    pub stems: Vec<(u16, bool)>,
    /// The stem in view.
    pub stem: u16,
    /// The drawn crown.
    pub crown: CrownFrames,
    /// The reading.
    pub reading: ReadingView,
    /// What could it be.
    pub judgement: JudgementView,
    /// Loss and tripwire.
    pub loss: LossView,
    /// Counts so far and to come.
    pub counts: Course,
    /// The forecast if the cut plan is carried out.
    pub outlook: Vec<OutlookRow>,
    /// The forecast if nothing is cut.
    pub outlook_uncut: Vec<OutlookRow>,
    /// The cut plan.
    pub cutting: CuttingView,
    /// How to get at it.
    pub reach: reach::Brief,
    /// How long the crown needs after the most that may be asked for; empty if that is nothing live.
    pub recovery: Vec<Line>,
    /// When a visit is worth it.
    pub due: String,
    /// What that rests on.
    pub due_note: String,
    /// What was asked.
    pub question: Question,
    /// What its site is described with, which the plan takes into account.
    pub on_site: OnSite,
    /// The same in words.
    pub site_says: Vec<String>,
    /// The day of the next visit that is reckoned with, as a form wants it.
    pub next_visit: String,
    /// The answer, if something was asked.
    pub answer: Option<Answer>,
    /// The palm's own description.
    pub own: Vec<Fact>,
    /// Its species.
    pub about_species: Vec<Fact>,
    /// Cuts with the blades that made them, newest first.
    pub cuts: Vec<PalmCutLine>,
    /// The disorder that a hold speaks of, for a trace.
    pub suspected: Option<&'static str>,
    /// What happened, newest first.
    pub history: Vec<Event>,
    /// Holds in force: the entry to lift, and its words.
    pub holds: Vec<(String, String)>,
    /// The last look in words; nothing without one.
    pub last_look: Option<String>,
}

/// The page of a palm; `None` if there is no such palm or stem.
pub fn view(
    speaker: &Speaker,
    office: &Office,
    tag: &str,
    stem: u16,
    question: Question,
) -> Option<PalmView> {
    let state = office.state();
    let record = state.by_tag(tag)?;
    let reading = office.reading(record.id)?;
    let judged = judging::of_record(office, record, &reading);
    let entries = office.history(record.id).unwrap_or_default();
    let at = StemToday::of(
        office,
        record,
        &reading,
        &judged.judgement,
        stem,
        question.next_visit,
        question.grounds,
    )?;
    let history = history::view(speaker, &entries);
    Some(
        Page {
            speaker,
            office,
            record,
            reading: &reading,
            judged: &judged,
            at: &at,
            question,
        }
        .view(history),
    )
}

struct Page<'a> {
    speaker: &'a Speaker,
    office: &'a Office,
    record: &'a PalmRecord,
    reading: &'a PalmReading,
    judged: &'a Judged,
    at: &'a StemToday<'a>,
    question: Question,
}

impl Page<'_> {
    fn view(&self, history: Vec<Event>) -> PalmView {
        let (speaker, palm, stem) = (self.speaker, &self.record.palm, self.at.reading());
        let plan = care::cut_plan(&self.at.case());
        let answer = asked::view(speaker, self.at, &self.question);
        let standing = Standing::of(
            self.office,
            self.record,
            self.reading,
            &self.judged.judgement,
        );
        let species = self.at.species();
        PalmView {
            tag: palm.tag.clone(),
            species: palm.species.clone(),
            species_note: facts::named(speaker, &palm.species),
            common: species.map(|s| s.common.join(", ")).unwrap_or_default(),
            site: palm.site.clone(),
            needs: self.needs(&standing),
            stems: self.stems(),
            stem: self.at.case().stem,
            crown: self.crown(&plan, answer.as_ref()),
            reading: expect::view(speaker, self.office, self.record, self.reading, self.at),
            judgement: self.judgement(),
            loss: loss::view(speaker, stem),
            counts: counts(speaker, stem, self.at.looks(), plan.may_take),
            outlook: outlook::view(speaker, stem, plan.may_take),
            outlook_uncut: if plan.may_take == Cut::NONE {
                Vec::new()
            } else {
                outlook::view(speaker, stem, Cut::NONE)
            },
            recovery: if plan.if_asked.live() > 0 {
                asked::recovery(speaker, &stem.recovery(plan.if_asked))
            } else {
                Vec::new()
            },
            cutting: cutting::view(speaker, &plan),
            reach: reach::brief(speaker, &reached(self.at, &Told::default())),
            due: palms::due(speaker, &standing, self.at.today()),
            due_note: due_note(speaker, self.at),
            question: self.question,
            on_site: self.at.on_site(),
            site_says: site_says(speaker, self.at.on_site()),
            next_visit: self.at.next_visit().to_string(),
            answer,
            own: facts::of_palm(speaker, palm),
            about_species: species
                .map(|s| facts::of_species(speaker, s))
                .unwrap_or_default(),
            cuts: log::of_palm(speaker, self.office, self.record),
            suspected: tracing::suspected(self.record, self.office.today()),
            history,
            holds: self.holds(),
            last_look: self.last_look(),
        }
    }

    fn needs(&self, standing: &Standing) -> Vec<Said> {
        let needs = needs::of(self.office, self.record, Some(standing));
        needs
            .iter()
            .map(|need| self.speaker.finding(&need.finding))
            .collect()
    }

    fn judgement(&self) -> JudgementView {
        let set: Vec<&str> = self
            .record
            .holds_on(self.at.today())
            .map(|hold| hold.reason.as_str())
            .collect();
        judgement::view(self.speaker, self.judged, &set)
    }

    fn stems(&self) -> Vec<(u16, bool)> {
        let own = self.at.case().stem;
        let all = self
            .reading
            .stems
            .iter()
            .map(|(n, _)| (*n, *n == own))
            .collect::<Vec<_>>();
        if all.len() > 1 { all } else { Vec::new() }
    }

    fn crown(&self, plan: &CutPlan, answer: Option<&Answer>) -> CrownFrames {
        let spear = self.at.looks().iter().rev().find_map(|look| look.spear);
        let look = Look::of(self.at.species(), self.record.palm.trunk_height, spear);
        let asked = answer.map(|a| (Mode::Asked, a.cut));
        let cuts: Vec<(Mode, Cut)> = [
            Some((Mode::Plan, plan.may_take)),
            asked,
            Some((Mode::Uncut, Cut::NONE)),
        ]
        .into_iter()
        .flatten()
        .collect();
        crowns::view(
            self.speaker,
            &self.record.palm.tag,
            self.at.reading(),
            &look,
            &cuts,
        )
    }

    fn holds(&self) -> Vec<(String, String)> {
        let words = |hold: &model::state::Hold| {
            let reason = history::hold_reason(self.speaker, &hold.reason);
            if hold.note.is_empty() {
                reason
            } else {
                format!("{reason}: {}", hold.note)
            }
        };
        self.record
            .holds_on(self.at.today())
            .map(|h| (h.entry.0.to_string(), words(h)))
            .collect()
    }

    fn last_look(&self) -> Option<String> {
        let look = self
            .at
            .looks()
            .iter()
            .rev()
            .find(|look| look.date <= self.at.today())?;
        let args = [
            ("date", self.speaker.measure.date(look.date).into()),
            ("counts", history::counted(self.speaker, look).into()),
        ];
        Some(self.speaker.text("palm-last-look", &args))
    }
}

fn due_note(speaker: &Speaker, stem: &StemToday) -> String {
    let (tidy, limit) = tidy_and_limit(stem.reading(), stem.on_site());
    let words = if stem.on_site().has_figures() {
        "due-note-site"
    } else {
        "due-note"
    };
    speaker.text(
        words,
        &[
            ("tidy", i64::from(tidy).into()),
            ("limit", i64::from(limit).into()),
        ],
    )
}

/// What the plan is told of the site without being asked.
fn site_says(speaker: &Speaker, on_site: OnSite) -> Vec<String> {
    let weevils = match on_site.weevil_area {
        Some(true) => Some(speaker.say("asked-site-weevils")),
        Some(false) => Some(speaker.say("asked-site-no-weevils")),
        None => None,
    };
    let line = on_site.line_kv.map(|kv| {
        let kv = speaker.measure.number(kv, 1);
        speaker.text("asked-site-line", &[("kv", kv.into())])
    });
    weevils.into_iter().chain(line).collect()
}

/// Counts of the past as dots, counts to come as bands.
fn counts(speaker: &Speaker, reading: &Reading, looks: &[Inspection], cut: Cut) -> Course {
    let (today, to) = (reading.as_of, reading.as_of.plus(AHEAD_DAYS));
    let days: Vec<Day> = (0..=AHEAD_DAYS / 28).map(|k| today.plus(28 * k)).collect();
    let ahead = reading.forecasts(cut, &days);
    let fan = |of: fn(&crown::Forecast) -> Quantiles| -> Vec<(Day, Quantiles)> {
        days.iter().copied().zip(ahead.iter().map(of)).collect()
    };
    let dots = |of: fn(&Inspection) -> Option<u32>| -> Vec<(Day, f64)> {
        looks
            .iter()
            .filter_map(|look| Some((look.date, f64::from(of(look)?))))
            .collect()
    };
    let (live, brown) = (dots(Inspection::live), dots(|look| look.brown));
    let from = looks
        .first()
        .map_or(today, |look| look.date)
        .max(today.plus(-AHEAD_DAYS));
    let (live_ahead, brown_ahead) = (fan(|f| f.live), fan(|f| f.brown_on));
    let recent = |dots: Vec<(Day, f64)>| {
        dots.into_iter()
            .filter(|(d, _)| *d >= from)
            .collect::<Vec<_>>()
    };
    let (live, brown) = (recent(live), recent(brown));
    let traces = [
        Trace::Fan("live", &live_ahead),
        Trace::Fan("brown", &brown_ahead),
        Trace::Dots("live", &live),
        Trace::Dots("brown", &brown),
    ];
    course(speaker, &traces, from, to, today)
}
