//! `spearleaf feeding`: what palms are to be fed, what bars it, and whether the crown answered.

use crate::Outcome;
use crate::folder;
use crate::talk::Talk;
use clap::Args;
use desk::feeding::{self, Fed};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::feeding::{json, page};
use model::{Arg, Finding, Severity};
use serde_json::json;
use std::path::PathBuf;

const AFTER: &str = "\
Without --tag: every palm that may have a shortage (30 % or more) or that was ever fed; all palms are read for it. With
--tag: one palm, whatever ails it. For each: what, how much, how often, what bars it now, and whether the crown answered.
Local rules come from the described site. The label and the licence come before every rate.
Exit status 1 where a shortage is likely and may be fed against now, or a fed palm became worse.

Examples:
  spearleaf feeding spearleaf-data
  spearleaf feeding spearleaf-data --tag A-17
  spearleaf feeding spearleaf-data --json | jq '.palms[] | select(.barred) | .tag'";

/// Options of `feeding`.
#[derive(Args)]
#[command(after_help = AFTER)]
pub struct Options {
    /// The data folder
    #[arg(value_name = "FOLDER", default_value = folder::DEFAULT)]
    data: PathBuf,
    /// Only this palm
    #[arg(long, value_name = "TAG")]
    tag: Option<String>,
    /// Only the palms of this site
    #[arg(long, value_name = "NAME", default_value = "")]
    site: String,
}

/// Runs the command.
pub fn run(options: Options, talk: &Talk) -> anyhow::Result<Outcome> {
    let office = folder::office(&options.data, false, talk)?;
    let Some(mut palms) = palms(&office, options.tag.as_deref()) else {
        let tag = Arg::Text(options.tag.unwrap_or_default());
        let finding = Finding::new("feed-no-palm", Severity::Refuse).with("tag", tag);
        talk.note(&talk.measure.finding(&finding));
        talk.object(&json!({"kind": "error", "message": talk.measure.finding(&finding)}))?;
        return Ok(Outcome::Refused);
    };
    palms.retain(|own| options.site.is_empty() || own.record.palm.site == options.site);
    let list: Vec<_> = palms.iter().map(json).collect();
    talk.object(&json!({"kind": "feeding", "palms": list}))?;
    let speaker = Speaker::new(talk.measure);
    if palms.is_empty() {
        talk.say(true, &speaker.say("feed-nobody"))?;
    }
    for own in &palms {
        if let Some(page) = page(&speaker, &office, &own.record.palm.tag, "") {
            tell(&page, talk)?;
        }
    }
    Ok(if palms.iter().any(needs_person) {
        Outcome::NeedsPerson
    } else {
        Outcome::Done
    })
}

fn palms(office: &Office, tag: Option<&str>) -> Option<Vec<Fed>> {
    let Some(tag) = tag else {
        return Some(feeding::all(office));
    };
    let register = office.state();
    let record = register.by_tag(tag)?;
    Some(vec![feeding::of(office, record, &[])?])
}

/// A shortage that is likely and may be fed against now, or a crown that became worse.
fn needs_person(own: &Fed) -> bool {
    let likely = |key: &str| {
        let mut all = own.shortages.iter();
        all.any(|one| one.key == key && one.probability.is_some_and(|p| p >= 0.7))
    };
    let plan = own.plan();
    let worse = |one: &feeding::Noted| {
        let verdict = one.answer.as_ref().map(|answer| answer.verdict);
        verdict == Some(care::feeding::Verdict::Worse)
    };
    plan.lines
        .iter()
        .any(|line| likely(&line.against) && line.refused.is_empty())
        || own.noted.iter().any(worse)
}

fn tell(page: &desk::views::feeding::FeedingPage, talk: &Talk) -> anyhow::Result<()> {
    talk.say(
        true,
        &format!("{}  {}  {}", page.tag, page.species, page.site),
    )?;
    let barred = page.barred.iter().map(|own| &own.text);
    for line in barred.chain(&page.rules_unknown) {
        talk.say(true, &format!("  {line}"))?;
    }
    for line in &page.lines {
        talk.say(true, &format!("  {}", line.name))?;
        for said in line.refused.iter().chain(&line.minds) {
            talk.say(true, &format!("    {}", said.text))?;
        }
        for dose in line.doses.iter().filter(|_| line.may) {
            talk.say(
                true,
                &format!("    {}: {}. {}", dose.product, dose.amount, dose.often),
            )?;
        }
        talk.say(true, &format!("    {}", line.when))?;
    }
    for row in &page.log {
        let answer = row.answer.first().map_or("", String::as_str);
        talk.say(true, &format!("  {}  {}  {answer}", row.date, row.what))?;
    }
    talk.say(true, "")?;
    Ok(())
}
