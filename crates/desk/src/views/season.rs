//! `/season`: when to come back to each site, as a list of visits and as weeks by sites (or palms).

use super::said::Speaker;
use crate::season::prices::SeasonPrices;
use crate::season::{PalmSeason, SiteSeason, WEEKS};
use crate::views::estimating::money;
use model::Day;
use rounds::season::{Effort, Plan, Visit, Why};

/// Seasons to choose from, weeks.
pub const CHOICES: [usize; 3] = [26, 39, 52];
/// Work for what-ifs.
const EFFORT: Effort = Effort(120);
/// Palms drawn week by week on a site's page; more are in the list only.
pub const DRAWN: usize = 80;

/// What a week of a row shows.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Mark {
    /// Nothing.
    Blank,
    /// The site is closed.
    Closed,
    /// Windows are open.
    Open,
    /// A limit is passed.
    Late,
    /// A visit.
    Visit,
    /// A visit with a lift.
    Lift,
}

impl Mark {
    /// The word in message keys and classes.
    pub fn key(self) -> &'static str {
        match self {
            Mark::Blank => "blank",
            Mark::Closed => "closed",
            Mark::Open => "open",
            Mark::Late => "late",
            Mark::Visit => "visit",
            Mark::Lift => "lift",
        }
    }
}

/// One week of a row.
#[derive(Clone, PartialEq, Debug)]
pub struct WeekCell {
    /// What it shows.
    pub mark: Mark,
    /// Palms: served on the visit, or with an open window; 0 is not written.
    pub n: usize,
    /// The same in words, with the date.
    pub words: String,
}

/// A row of the grid.
#[derive(Clone, PartialEq, Debug)]
pub struct GridRow {
    /// Site or tag, in words.
    pub name: String,
    /// Site as palms write it, or tag.
    pub key: String,
    /// One cell a week.
    pub cells: Vec<WeekCell>,
}

/// Weeks by sites, or by palms.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Grid {
    /// Months with the number of weeks that begin in each.
    pub months: Vec<(String, usize)>,
    /// Rows.
    pub rows: Vec<GridRow>,
}

/// A visit in the list.
#[derive(Clone, PartialEq, Debug)]
pub struct VisitRow {
    /// The day.
    pub date: String,
    /// The day as `YYYY-MM-DD`, for links.
    pub day: Day,
    /// Palms and fronds.
    pub what: String,
    /// Hours, debris, lift.
    pub work: String,
    /// Whether a lift is wanted.
    pub lift: bool,
    /// Tags with what is taken there.
    pub palms: Vec<(String, String)>,
}

/// A palm with what there is to say of it.
#[derive(Clone, PartialEq, Debug)]
pub struct PalmLine {
    /// Tag.
    pub tag: String,
    /// What.
    pub text: String,
    /// Stable word for why.
    pub why: String,
}

/// A plan with a visit more or fewer.
#[derive(Clone, PartialEq, Debug)]
pub struct Otherwise {
    /// `fewer` or `more`.
    pub key: &'static str,
    /// How many visits it has.
    pub title: String,
    /// What it does to the palms.
    pub palms: String,
    /// What it does to the purse.
    pub purse: String,
    /// On which days it would be.
    pub days: String,
    /// Whether that is proven.
    pub proof: String,
    /// Palms that would be late.
    pub late: Vec<PalmLine>,
}

/// One site.
#[derive(Clone, PartialEq, Debug)]
pub struct SiteView {
    /// Name in words.
    pub name: String,
    /// Name as palms write it.
    pub key: String,
    /// One sentence.
    pub summary: String,
    /// Visits.
    pub visits: Vec<VisitRow>,
    /// Windows that are not covered.
    pub late: Vec<PalmLine>,
    /// Palms that are not planned for.
    pub left: Vec<PalmLine>,
    /// Palms with a doubtful window, stalks left on, palms with nothing due.
    pub notes: Vec<String>,
    /// Closed days.
    pub closed: Vec<String>,
    /// Cost in words.
    pub cost: String,
    /// What is proven.
    pub proof: String,
    /// One visit fewer, one more; empty in the overview.
    pub otherwise: Vec<Otherwise>,
}

/// The page.
#[derive(Clone, PartialEq, Debug)]
pub struct SeasonView {
    /// One sentence.
    pub summary: String,
    /// Weeks shown.
    pub weeks: usize,
    /// The site asked for.
    pub site: Option<String>,
    /// Sites.
    pub sites: Vec<SiteView>,
    /// Weeks by sites or by palms.
    pub grid: Grid,
    /// Palms of the site that are not drawn, in words.
    pub not_drawn: Option<String>,
    /// Which prices are assumed, in words.
    pub prices: Option<String>,
}

/// The page over sites that were planned; `site`: one site with its palms and what-ifs.
pub fn view(
    speaker: &Speaker,
    sites: &[SiteSeason],
    prices: &SeasonPrices,
    weeks: usize,
    site: Option<&str>,
) -> SeasonView {
    let visits: usize = sites.iter().map(|s| s.best.visits.len()).sum();
    let late: usize = sites.iter().map(|s| s.best.late.len()).sum();
    let money: i64 = sites.iter().map(|s| s.best.money.total()).sum();
    let weeks = weeks.clamp(WEEKS.0, WEEKS.1);
    let args = [
        ("visits", (visits as i64).into()),
        ("sites", (sites.len() as i64).into()),
        ("weeks", (weeks as i64).into()),
        ("late", (late as i64).into()),
        ("money", cash(speaker, prices, money).into()),
    ];
    let assumed: Vec<String> = prices
        .assumed
        .iter()
        .map(|key| speaker.say(&price_key(key)))
        .collect();
    let one = site.and_then(|_| sites.first());
    SeasonView {
        summary: speaker.text("season-summary", &args),
        weeks,
        site: site.map(str::to_owned),
        grid: match one {
            Some(site) => by_palms(speaker, site),
            None => by_sites(speaker, sites),
        },
        not_drawn: one
            .and_then(|s| s.palms.len().checked_sub(DRAWN))
            .filter(|n| *n > 0)
            .map(|n| speaker.text("season-not-drawn", &[("n", (n as i64).into())])),
        prices: (!assumed.is_empty()).then(|| {
            speaker.text(
                "season-prices-assumed",
                &[("which", assumed.join(", ").into())],
            )
        }),
        sites: sites
            .iter()
            .map(|s| site_view(speaker, s, prices, one.is_some()))
            .collect(),
    }
}

fn price_key(key: &str) -> String {
    format!("season-price-{}", key.replace('_', "-"))
}

/// The name of a site in words.
pub fn site_name(speaker: &Speaker, site: &str) -> String {
    match site {
        "" => speaker.say("season-no-site"),
        site => site.to_owned(),
    }
}

fn site_view(
    speaker: &Speaker,
    site: &SiteSeason,
    prices: &SeasonPrices,
    what_if: bool,
) -> SiteView {
    let plan = &site.best;
    let args = [
        ("visits", (plan.visits.len() as i64).into()),
        ("palms", (site.palms.len() as i64).into()),
        ("late", (plan.late.len() as i64).into()),
    ];
    SiteView {
        name: site_name(speaker, &site.site),
        key: site.site.clone(),
        summary: speaker.text("season-site-summary", &args),
        visits: plan
            .visits
            .iter()
            .map(|v| visit(speaker, site, v))
            .collect(),
        late: late(speaker, site, plan),
        left: site
            .left
            .iter()
            .map(|left| PalmLine {
                tag: left.record.palm.tag.clone(),
                text: speaker.measure.finding(&left.why),
                why: left.why.code.to_owned(),
            })
            .collect(),
        notes: notes(speaker, site),
        closed: closed(speaker, site),
        cost: cost(speaker, plan, prices),
        proof: proof(speaker, plan, prices),
        otherwise: if what_if {
            otherwise(speaker, site, prices)
        } else {
            Vec::new()
        },
    }
}

fn visit(speaker: &Speaker, site: &SiteSeason, visit: &Visit) -> VisitRow {
    let measure = &speaker.measure;
    let mut palms: Vec<(String, String)> = Vec::new();
    for served in &visit.served {
        let Some(palm) = site.palm_of(served.need) else {
            continue;
        };
        let what = match site.stalks(served.need) {
            true => speaker.say("season-takes-stalks"),
            false => speaker.text(
                "season-takes",
                &[("fronds", measure.about(served.fronds).into())],
            ),
        };
        match palms
            .iter_mut()
            .find(|(tag, _)| *tag == palm.record.palm.tag)
        {
            Some((_, before)) => *before = format!("{before}, {what}"),
            None => palms.push((palm.record.palm.tag.clone(), what)),
        }
    }
    let fronds: f64 = visit.served.iter().map(|s| s.fronds).sum();
    let what = [
        ("palms", (palms.len() as i64).into()),
        ("fronds", measure.about(fronds).into()),
    ];
    let work = [
        ("hours", measure.number(visit.hours, 1).into()),
        ("bulk", measure.bulk(visit.m3).into()),
        ("lift", i64::from(visit.lift).into()),
        ("days", visit.days.max(visit.lift_days).into()),
    ];
    VisitRow {
        date: measure.date(visit.day),
        day: visit.day,
        what: speaker.text("season-visit-what", &what),
        work: speaker.text("season-visit-work", &work),
        lift: visit.lift,
        palms,
    }
}

fn late(speaker: &Speaker, site: &SiteSeason, plan: &Plan) -> Vec<PalmLine> {
    let line = |late: &rounds::season::Late| {
        let palm = site.palm_of(late.need)?;
        let args = [
            ("latest", speaker.measure.date(late.latest).into()),
            (
                "why",
                speaker
                    .say(&format!("season-late-{}", late.why.key()))
                    .into(),
            ),
            ("days", late.days.into()),
            ("fronds", speaker.measure.about(late.fronds).into()),
            (
                "served",
                late.served
                    .map_or(String::new(), |day| speaker.measure.date(day))
                    .into(),
            ),
        ];
        let code = match late.served {
            // how long it has been so is not known: the forecast begins today
            Some(_) if late.why == Why::Overdue => "season-late-over-served",
            Some(_) => "season-late-served",
            None => "season-late-not-served",
        };
        Some(PalmLine {
            tag: palm.record.palm.tag.clone(),
            text: speaker.text(code, &args),
            why: late.why.key().to_owned(),
        })
    };
    plan.late.iter().filter_map(line).collect()
}

fn notes(speaker: &Speaker, site: &SiteSeason) -> Vec<String> {
    let unsure = site.palms.iter().filter(|p| p.unsure).count();
    let counts = [
        ("season-note-unsure", unsure),
        ("season-note-stalks", site.best.stalks_left.len()),
        ("season-note-nothing", site.nothing_due),
    ];
    let some = counts.into_iter().filter(|(_, n)| *n > 0);
    let mut notes: Vec<String> = some
        .map(|(code, n)| speaker.text(code, &[("n", (n as i64).into())]))
        .collect();
    if let Some(storm) = site.season.storm {
        let date = speaker.measure.date(storm);
        notes.push(speaker.text("season-note-storm", &[("date", date.into())]));
    }
    notes
}

fn closed(speaker: &Speaker, site: &SiteSeason) -> Vec<String> {
    let first = site.season.weeks.starts.first().copied();
    let shut = site.described.iter().flat_map(|site| &site.closed);
    let ahead =
        shut.filter(|c| c.last >= first.unwrap_or(c.last) && c.first < site.season.weeks.end);
    ahead
        .map(|c| {
            let args = [
                ("first", speaker.measure.date(c.first).into()),
                ("last", speaker.measure.date(c.last).into()),
                ("why", c.why.clone().into()),
                ("words", i64::from(!c.why.is_empty()).into()),
            ];
            speaker.text("season-closed", &args)
        })
        .collect()
}

/// A sum of the planner in words.
fn cash(speaker: &Speaker, prices: &SeasonPrices, sum: i64) -> String {
    money(speaker, &prices.list, prices.amount(sum))
}

fn cost(speaker: &Speaker, plan: &Plan, prices: &SeasonPrices) -> String {
    let money = plan.money;
    let args = [
        ("total", cash(speaker, prices, money.total()).into()),
        ("trips", cash(speaker, prices, money.trips).into()),
        ("lift", cash(speaker, prices, money.lift).into()),
        ("crew", cash(speaker, prices, money.crew).into()),
        ("debris", cash(speaker, prices, money.debris).into()),
    ];
    speaker.text("season-cost", &args)
}

/// What is proven: that no plan is better, or how much better one could be at most.
fn proof(speaker: &Speaker, plan: &Plan, prices: &SeasonPrices) -> String {
    let (late, weighed) = plan.at_least;
    let days = plan
        .visits
        .iter()
        .map(|v| (v.days - 1) + (v.lift_days - 1).max(0))
        .sum::<i64>();
    if plan.proven {
        return speaker.say("season-proven");
    }
    if plan.days_late > late {
        let args = [("days", (plan.days_late - late).into())];
        return speaker.text("season-within-days", &args);
    }
    let beyond = plan.visits.iter().fold(0, |sum, v| {
        sum + (v.days - 1) * prices.tariff.trip + (v.lift_days - 1).max(0) * prices.tariff.lift_day
    });
    let gap = (plan.weighed - weighed).max(0) + beyond;
    let args = [
        ("gap", cash(speaker, prices, gap).into()),
        ("days", days.into()),
    ];
    speaker.text("season-within", &args)
}

/// One visit fewer and one more.
fn otherwise(speaker: &Speaker, site: &SiteSeason, prices: &SeasonPrices) -> Vec<Otherwise> {
    let answers = site.what_if(EFFORT);
    let best = &site.best;
    let told = |key: &'static str, plan: &Plan| {
        let money = plan.money.total() - best.money.total();
        let missed = plan.late.len() as i64 - best.late.len() as i64;
        let palms = [
            ("missed", missed.max(0).into()),
            ("days", (plan.days_late - best.days_late).max(0).into()),
            (
                "waiting",
                (best.days_waiting - plan.days_waiting).max(0).into(),
            ),
        ];
        let stalks = plan.stalks_left.len() as i64 - best.stalks_left.len() as i64;
        let stalks =
            (stalks > 0).then(|| speaker.text("season-more-stalks-left", &[("n", stalks.into())]));
        let purse = [
            ("sum", cash(speaker, prices, money.abs()).into()),
            ("more", i64::from(money > 0).into()),
        ];
        let days: Vec<String> = plan
            .visits
            .iter()
            .map(|v| speaker.measure.date(v.day))
            .collect();
        let visits = [("n", (plan.visits.len() as i64).into())];
        Otherwise {
            key,
            title: speaker.text(&format!("season-{key}"), &visits),
            palms: [speaker.text(&format!("season-{key}-palms"), &palms)]
                .into_iter()
                .chain(stalks)
                .collect::<Vec<_>>()
                .join(" "),
            purse: speaker.text("season-purse", &purse),
            days: days.join(" · "),
            proof: match plan.proven {
                true => speaker.say("season-proven-short"),
                false => speaker.say("season-found-short"),
            },
            late: late(speaker, site, plan),
        }
    };
    let fewer = answers.fewer.iter().map(|plan| told("fewer", plan));
    let more = answers
        .more
        .iter()
        .filter(|plan| plan.visits.len() > best.visits.len());
    fewer.chain(more.map(|plan| told("more", plan))).collect()
}

fn months(speaker: &Speaker, starts: &[Day]) -> Vec<(String, usize)> {
    let mut out: Vec<(i8, String, usize)> = Vec::new();
    for start in starts {
        let (_, month, _) = start.ymd();
        match out.last_mut() {
            Some((last, _, n)) if *last == month => *n += 1,
            _ => out.push((month, speaker.say(&format!("season-month-{month}")), 1)),
        }
    }
    out.into_iter().map(|(_, name, n)| (name, n)).collect()
}

/// What each week is for one palm, along the plan.
fn palm_marks(site: &SiteSeason, palm: &PalmSeason) -> Vec<Mark> {
    let weeks = &site.season.weeks;
    let mut marks = vec![Mark::Blank; weeks.count()];
    let Some(at) = palm.fronds else { return marks };
    let need = &site.season.needs[at];
    let serves = |v: &&Visit| v.served.iter().any(|s| s.need == at);
    let mut visits = site.best.visits.iter().filter(serves).peekable();
    let mut window = need.now;
    for (week, mark) in marks.iter_mut().enumerate() {
        let end = weeks.starts.get(week + 1).copied().unwrap_or(weeks.end);
        let opens = window
            .earliest
            .map(|day| day.max(need.not_before.unwrap_or(day)));
        if let Some(visit) = visits.next_if(|v| v.week == week) {
            *mark = if visit.lift && need.lift {
                Mark::Lift
            } else {
                Mark::Visit
            };
            window = need.after[week];
        } else if window
            .latest
            .is_some_and(|latest| latest < weeks.starts[week])
        {
            *mark = Mark::Late;
        } else if opens.is_some_and(|opens| opens < end) {
            *mark = Mark::Open;
        }
        if weeks.days[week].is_none() && *mark == Mark::Blank {
            *mark = Mark::Closed;
        }
    }
    marks
}

fn by_palms(speaker: &Speaker, site: &SiteSeason) -> Grid {
    let rows = site.palms.iter().take(DRAWN).map(|palm| {
        let marks = palm_marks(site, palm);
        let cells = marks.iter().enumerate();
        let cells = cells.map(|(week, mark)| cell(speaker, site, week, *mark, 0));
        GridRow {
            name: palm.record.palm.tag.clone(),
            key: palm.record.palm.tag.clone(),
            cells: cells.collect(),
        }
    });
    Grid {
        months: months(speaker, &site.season.weeks.starts),
        rows: rows.collect(),
    }
}

fn by_sites(speaker: &Speaker, sites: &[SiteSeason]) -> Grid {
    let row = |site: &SiteSeason| {
        let palms: Vec<Vec<Mark>> = site.palms.iter().map(|p| palm_marks(site, p)).collect();
        let cells = (0..site.season.weeks.count()).map(|week| {
            let count = |mark: Mark| palms.iter().filter(|marks| marks[week] == mark).count();
            let visit = site.best.visits.iter().find(|v| v.week == week);
            let (mark, n) = match visit {
                Some(visit) => {
                    let palms: std::collections::BTreeSet<&str> = visit
                        .served
                        .iter()
                        .filter_map(|s| Some(site.palm_of(s.need)?.record.palm.tag.as_str()))
                        .collect();
                    (
                        if visit.lift { Mark::Lift } else { Mark::Visit },
                        palms.len(),
                    )
                }
                None if count(Mark::Late) > 0 => (Mark::Late, count(Mark::Late)),
                None if site.season.weeks.days[week].is_none() => (Mark::Closed, 0),
                None if count(Mark::Open) > 0 => (Mark::Open, count(Mark::Open)),
                None => (Mark::Blank, 0),
            };
            cell(speaker, site, week, mark, n)
        });
        GridRow {
            name: site_name(speaker, &site.site),
            key: site.site.clone(),
            cells: cells.collect(),
        }
    };
    Grid {
        months: sites
            .first()
            .map(|site| months(speaker, &site.season.weeks.starts))
            .unwrap_or_default(),
        rows: sites.iter().map(row).collect(),
    }
}

fn cell(speaker: &Speaker, site: &SiteSeason, week: usize, mark: Mark, n: usize) -> WeekCell {
    let weeks = &site.season.weeks;
    let day = match mark {
        Mark::Visit | Mark::Lift => weeks.days[week].unwrap_or(weeks.starts[week]),
        _ => weeks.starts[week],
    };
    let args = [
        ("date", speaker.measure.date(day).into()),
        ("n", (n as i64).into()),
    ];
    WeekCell {
        mark,
        n,
        words: speaker.text(&format!("season-cell-{}", mark.key()), &args),
    }
}
