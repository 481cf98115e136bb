//! From a log and a question to the answer.

use super::book::{Book, Cleaned, Mark, Row, moment, second};
use super::lanes::Lanes;
use super::reckon::{self, DAY, Hosts};
use super::verdict::Verdict;
use super::ways::Ways;
use super::{
    Ask, CaseTold, Direction, Exposure, HostWord, LatencyTold, TraceAnswer, Travel, nearby,
};
use model::{Arg, Finding, Knowledge, Moment, Severity};
use trace::{Case, Contact, Log, Reach, Rules, Set, What};

/// What a cleaning is worth against the disorder asked about.
pub type Judge<'a> = dyn Fn(&Cleaned) -> Verdict + 'a;

/// Makes a trace. Refused where a case palm is not in the log's list of palms, and where the log is too large for its
/// columns; the finding says which.
pub fn answer(
    book: &Book,
    ask: &Ask,
    judge: &Judge,
    knowledge: &Knowledge,
) -> Result<TraceAnswer, Finding> {
    let rows = &book.rows[..book.rows.partition_point(|row| row.at <= second(ask.as_of))];
    let verdicts: Vec<Verdict> = book.kinds.iter().map(judge).collect();
    let latency = reckon::latency(ask);
    let mut hosts = Hosts::new(ask.disorder, knowledge);
    let words: Vec<HostWord> = book.palms.iter().map(|p| hosts.of(&p.species)).collect();
    let (numbers, cases) = cases(book, rows, ask, &latency)?;
    let travel = reckon::travel(ask.disorder);
    let mut answer = TraceAnswer {
        as_of: ask.as_of,
        disorder: ask.disorder.map(|row| row.key.clone()),
        travel,
        log: book.span(rows),
        cases,
        exposed: Vec::new(),
        sources: Vec::new(),
        nearby: Vec::new(),
        findings: book.findings.clone(),
        latency,
    };
    if travel != Travel::NotOnBlades {
        let sweep = Sweep {
            log: log(book, rows, &verdicts)?,
            numbers: &numbers,
            words: &words,
            ask,
            verdicts: &verdicts,
        };
        sweep.run(book, rows, &mut answer);
    }
    if matches!(travel, Travel::NotOnBlades | Travel::Unknown) {
        let range = answer.latency.range;
        answer.nearby = nearby::nearby(&book.palms, &numbers, &mut hosts, ask, range);
    }
    let later = book.rows.len() - rows.len();
    say(&mut answer, later);
    Ok(answer)
}

/// Numbers and times of the case palms.
fn cases(
    book: &Book,
    rows: &[Row],
    ask: &Ask,
    latency: &LatencyTold,
) -> Result<(Vec<u32>, Vec<CaseTold>), Finding> {
    let (mut numbers, mut told) = (Vec::new(), Vec::new());
    for asked in &ask.cases {
        let number = book.palm(&asked.tag).ok_or_else(|| {
            Finding::new("tracing-no-such-palm", Severity::Refuse)
                .with("tag", Arg::Text(asked.tag.clone()))
        })?;
        let palm = &book.palms[number as usize];
        let mut case = reckon::case(asked, ask, latency.range, palm);
        case.cuts = rows
            .iter()
            .filter(|row| row.mark() == Mark::Palm(number))
            .count();
        numbers.push(number);
        told.push(case);
    }
    Ok((numbers, told))
}

/// The columns for the sweep. Row and touch have the same number.
fn log(book: &Book, rows: &[Row], verdicts: &[Verdict]) -> Result<Log, Finding> {
    let refused = |why: trace::Refused| {
        Finding::new("tracing-too-large", Severity::Refuse).with("why", Arg::Text(why.to_string()))
    };
    let (blades, palms) = (book.blades.len() as u32, book.palms.len() as u32);
    let start = rows.first().map_or(0, |row| row.at);
    let mut log = Log::starting(start, blades, palms).map_err(refused)?;
    log.reserve(rows.len());
    for row in rows {
        let what = match row.mark() {
            Mark::Palm(palm) => What::Cut { palm },
            Mark::Kind(kind) => What::Clean(verdicts[kind as usize].worth),
        };
        let (at, blade) = (row.at, row.blade);
        log.push(trace::Touch { at, blade, what })
            .map_err(refused)?;
    }
    Ok(log)
}

struct Sweep<'a> {
    log: Log,
    numbers: &'a [u32],
    words: &'a [HostWord],
    ask: &'a Ask<'a>,
    verdicts: &'a [Verdict],
}

/// Nobody knows when an exposed palm passes it on: in the certain set it never does.
const NEVER: i64 = i64::MAX / 4;

impl Sweep<'_> {
    fn run(&self, book: &Book, rows: &[Row], answer: &mut TraceAnswer) {
        let lanes = Lanes::of(rows, book.blades.len());
        let ways = Ways {
            book,
            rows,
            lanes: &lanes,
            verdicts: self.verdicts,
        };
        let both = |found: fn(&Log, &[Case], &Rules) -> Reach, back: bool| {
            [Set::Certain, Set::Possible].map(|set| {
                let cases = self.windows(&answer.cases, set, back);
                let carries: Vec<bool> = self.words.iter().map(|w| self.carries(*w, set)).collect();
                let rules = Rules {
                    latency: self.latency(answer.latency.range.min, set),
                    carries: &carries,
                    set,
                };
                found(&self.log, &cases, &rules)
            })
        };
        if self.ask.direction != Direction::Backward {
            let [certain, possible] = both(trace::forward, false);
            answer.exposed = self.exposed(&ways, &certain, &possible, &answer.latency);
        }
        if self.ask.direction != Direction::Forward {
            let [certain, possible] = both(trace::backward, true);
            answer.sources = self.sources(&ways, &certain, &possible);
        }
    }

    fn carries(&self, word: HostWord, set: Set) -> bool {
        let (certain, possible) = reckon::carries(word);
        match set {
            Set::Certain => certain,
            Set::Possible => possible,
        }
    }

    fn latency(&self, min: Option<u32>, set: Set) -> i64 {
        match (min, set) {
            (Some(days), _) => i64::from(days) * DAY,
            (None, Set::Possible) => 0,
            (None, Set::Certain) => NEVER,
        }
    }

    fn windows(&self, cases: &[CaseTold], set: Set, back: bool) -> Vec<Case> {
        let window = |(palm, case): (&u32, &CaseTold)| {
            let (from, until) = match (back, set) {
                (true, _) => (case.exposed_from, Some(case.exposed_until)),
                (false, Set::Certain) => (Some(case.surely_from), None),
                (false, Set::Possible) => (case.possibly_from, None),
            };
            let seconds = |moment: Option<Moment>| moment.map(second);
            Case {
                palm: *palm,
                from: seconds(from),
                until: seconds(until),
            }
        };
        self.numbers.iter().zip(cases).map(window).collect()
    }

    fn exposed(
        &self,
        ways: &Ways,
        certain: &Reach,
        possible: &Reach,
        latency: &LatencyTold,
    ) -> Vec<Exposure> {
        let today = self.ask.as_of.day();
        let mut out: Vec<Exposure> = Vec::with_capacity(possible.contacts.len());
        for contact in &possible.contacts {
            let mut one = self.one(ways, certain, possible, contact, false);
            let (first, last) = (moment(self.log.at(contact.own)), one.last);
            (one.watch_until, one.looks) = reckon::watch(
                first.day(),
                last.day(),
                latency.range,
                today,
                self.ask.look_every,
                Exposure::MOST_LOOKS,
            );
            out.push(one);
        }
        out.sort_by(|a, b| {
            let key = |e: &Exposure| (e.way.generation, e.way.when);
            key(a)
                .cmp(&key(b))
                .then_with(|| a.palm.tag.cmp(&b.palm.tag))
        });
        out
    }

    fn sources(&self, ways: &Ways, certain: &Reach, possible: &Reach) -> Vec<Exposure> {
        let each = possible.contacts.iter();
        let mut out: Vec<Exposure> = each
            .map(|contact| self.one(ways, certain, possible, contact, true))
            .collect();
        out.sort_by(|a, b| {
            let key = |e: &Exposure| (std::cmp::Reverse(e.certain), std::cmp::Reverse(e.way.when));
            key(a)
                .cmp(&key(b))
                .then_with(|| a.palm.tag.cmp(&b.palm.tag))
        });
        out
    }

    fn one(
        &self,
        ways: &Ways,
        certain: &Reach,
        possible: &Reach,
        contact: &Contact,
        back: bool,
    ) -> Exposure {
        let open = ways.way(&self.log, possible, contact.palm, back);
        let sure = certain.of(contact.palm).is_some();
        let sure = sure.then(|| ways.way(&self.log, certain, contact.palm, back));
        let certain = sure.is_some();
        let (way, possible) = match sure {
            Some(sure) if sure == open => (sure, None),
            Some(sure) => (sure, Some(open)),
            None => (open, None),
        };
        Exposure {
            palm: ways.book.palms[contact.palm as usize].clone(),
            host: self.words[contact.palm as usize],
            certain,
            way,
            possible,
            last: moment(self.log.at(contact.last)),
            times: contact.times,
            watch_until: None,
            looks: Vec::new(),
        }
    }
}

/// What must be known of the trace, the weightiest first.
fn say(answer: &mut TraceAnswer, later: usize) {
    let mut said = Vec::new();
    let mut add = |code, severity, args: Vec<(&'static str, Arg)>| {
        let mut finding = Finding::new(code, severity);
        finding.args = args;
        said.push(finding);
    };
    match answer.travel {
        Travel::NotOnBlades => add("tracing-not-on-blades", Severity::Act, vec![]),
        Travel::Unknown => add("tracing-spread-unknown", Severity::Caution, vec![]),
        Travel::NotNamed => add("tracing-not-named", Severity::Caution, vec![]),
        Travel::OnBlades => {}
    }
    if answer.latency.range.min.is_none() {
        add("tracing-no-shortest", Severity::Caution, vec![]);
    }
    if answer.latency.range.max.is_none() {
        add("tracing-no-longest", Severity::Caution, vec![]);
    }
    for case in answer.cases.iter().filter(|case| case.cuts == 0) {
        let tag = Arg::Text(case.palm.tag.clone());
        add(
            "tracing-case-not-cut",
            Severity::Caution,
            vec![("tag", tag)],
        );
    }
    if later > 0 {
        let count = Arg::Count(later as i64);
        add("tracing-later-rows", Severity::Info, vec![("count", count)]);
    }
    said.append(&mut answer.findings);
    said.sort_by_key(|finding| std::cmp::Reverse(finding.severity));
    answer.findings = said;
}
