//! The same views for machines: numbers, dates and stable codes, no sentences.

use super::asked::Question;
use super::case::StemToday;
use super::outlook::HORIZONS;
use super::palms::{Due, Search};
use super::standing::{Standing, Standings};
use super::{needs, palms};
use crate::judging::{self, Judged};
use crate::office::Office;
use care::judge::{Judge, Judgement, Ranked, Speaks, WeightOf, hold_reason, move_or_hunger};
use care::{AskedAnswer, CutPlan};
use crown::{Cut, Explanation, Forecast, PalmReading, Quantiles, Reading};
use model::{Arg, Day, Finding, PalmRecord};
use serde_json::{Map, Value, json};

/// `/api/palms`: one page of the register.
pub fn palms(office: &Office, standings: &Standings, search: &Search) -> Value {
    let (state, today) = (office.state(), office.today());
    let (found, paging) = palms::find(&state, standings, search, today);
    let rows: Vec<Value> = found
        .iter()
        .map(|r| row(office, r, standings.get(office, r).as_deref()))
        .collect();
    json!({ "as_of": date(today), "total": paging.total, "page": paging.page, "pages": paging.pages, "palms": rows })
}

fn row(office: &Office, record: &PalmRecord, standing: Option<&Standing>) -> Value {
    let (palm, today) = (&record.palm, office.today());
    let needs: Vec<&str> = needs::of(office, record, standing)
        .iter()
        .map(|n| n.finding.code)
        .collect();
    json!({
        "tag": palm.tag, "species": palm.species, "site": palm.site, "stems": palm.stems,
        "last_inspection": record.last_look().map(|l| date(l.date)),
        "explanation": standing.and_then(|s| s.explanation).map(Explanation::key),
        "probabilities": standing.map(|s| probabilities(&s.probabilities)),
        "due": standing.map(|s| json!({
            "when": Due::of(s, today).key(), "earliest": s.due.earliest.map(date), "latest": s.due.latest.map(date)
        })),
        "needs": needs,
    })
}

/// `/api/palm/{tag}`: readings, forecasts and cut plans of all stems; `None` if there is no such palm.
pub fn palm(office: &Office, tag: &str, question: &Question) -> Option<Value> {
    let (state, today) = (office.state(), office.today());
    let record = state.by_tag(tag)?;
    let reading = office.reading(record.id)?;
    let judged = judging::of_record(office, record, &reading);
    let standing = Standing::of(office, record, &reading, &judged.judgement);
    let stems: Vec<Value> = reading
        .stems
        .iter()
        .filter_map(|(n, _)| stem(office, record, &reading, &judged.judgement, *n, question))
        .collect();
    let mut out = row(office, record, Some(&standing));
    out["as_of"] = date(today).into();
    out["stem_readings"] = stems.into();
    out["judgement"] = judgement(&judged);
    Some(out)
}

fn stem(
    office: &Office,
    record: &PalmRecord,
    palm: &PalmReading,
    judgement: &Judgement,
    n: u16,
    question: &Question,
) -> Option<Value> {
    let at = StemToday::of(
        office,
        record,
        palm,
        judgement,
        n,
        question.next_visit,
        question.grounds,
    )?;
    let today = office.today();
    let reading = at.reading();
    let plan = care::cut_plan(&at.case());
    let answer = question
        .asks()
        .then(|| care::asked(&at.case(), question.cut(&at)));
    Some(json!({
        "stem": n,
        "probabilities": probabilities(&reading.probabilities),
        "effective_draws": reading.effective_draws,
        "full_crown": quantiles(&reading.full_crown),
        "fronds_per_year": quantiles(&reading.fronds_per_year),
        "loss": loss(reading),
        "tripwire": { "count": reading.tripwire(today.plus(28)).count, "date": date(today.plus(28)) },
        "forecast": forecasts(reading, plan.may_take),
        "forecast_uncut": forecasts(reading, Cut::NONE),
        "cut_plan": plan_value(&plan),
        "asked": answer.as_ref().map(answer_value),
    }))
}

/// What could it be: keys and numbers.
fn judgement(judged: &Judged) -> Value {
    let (told, answer) = (&judged.told, &judged.judgement);
    let holds = answer.holds.iter().map(|hold| {
        json!({
            "reason": hold_reason(hold.kind), "probability": hold.probability, "because": hold.because, "sign": hold.sign,
        })
    });
    let next = answer.next.iter().map(|look| {
        json!({
            "sign": look.sign, "chance": look.chance, "bits": look.bits, "bits_per_minute": look.bits_per_minute,
            "if_there": [look.if_there.0, look.if_there.1], "if_not": [look.if_not.0, look.if_not.1],
        })
    });
    let both = move_or_hunger(Judge::embedded(), &told.evidence());
    json!({
        "as_of": told.on.map(date), "seen": told.seen, "absent": told.absent,
        "ranked": answer.ranked.iter().map(ranked).collect::<Vec<_>>(), "nothing": answer.nothing,
        "together": answer.together.iter().map(|(set, p)| json!({ "disorders": set, "probability": p })).collect::<Vec<_>>(),
        "next": next.collect::<Vec<_>>(), "holds": holds.collect::<Vec<_>>(), "doubt_bits": answer.doubt_bits,
        "move_or_hunger": { "call": both.call.key(), "move": both.moved.probability, "hunger": both.hungry.probability },
        "findings": findings(&answer.findings),
    })
}

fn ranked(rank: &Ranked) -> Value {
    let speaks = |all: &[Speaks]| all.iter().map(speaks_value).collect::<Vec<_>>();
    json!({
        "disorder": rank.disorder, "probability": rank.probability, "level": rank.level,
        "for": speaks(&rank.for_it), "against": speaks(&rank.against),
    })
}

fn speaks_value(speaks: &Speaks) -> Value {
    let (what, sign) = match speaks.what {
        WeightOf::Seen(key) => ("seen", Some(key)),
        WeightOf::NotThere(key) => ("absent", Some(key)),
        WeightOf::Host => ("host", None),
        WeightOf::Season => ("season", None),
        WeightOf::Move => ("move", None),
        WeightOf::Frost => ("frost", None),
        WeightOf::Storm => ("storm", None),
        WeightOf::Counts => ("counts", None),
    };
    json!({ "what": what, "sign": sign, "factor": speaks.factor })
}

fn loss(reading: &Reading) -> Value {
    let Some(loss) = reading.loss() else {
        return Value::Null;
    };
    let ranges = Explanation::ALL.into_iter().filter_map(|e| {
        let (low, high) = loss.expected[e.index()]?;
        Some((e.key().to_owned(), json!([low, high])))
    });
    json!({
        "since": date(loss.since), "until": date(loss.until), "lost": loss.lost,
        "expected": ranges.collect::<Map<_, _>>(), "ordinary": [loss.ordinary.0, loss.ordinary.1],
        "tail_probability": loss.tail_probability,
    })
}

fn forecasts(reading: &Reading, cut: Cut) -> Value {
    let days: Vec<Day> = HORIZONS.iter().map(|d| reading.as_of.plus(*d)).collect();
    let at = |(day, f): (&Day, Forecast)| {
        json!({
            "date": date(*day), "live": quantiles(&f.live), "green": quantiles(&f.green),
            "yellowing": quantiles(&f.yellowing), "brown_on": quantiles(&f.brown_on), "lost": quantiles(&f.lost),
        })
    };
    days.iter()
        .zip(reading.forecasts(cut, &days))
        .map(at)
        .collect()
}

fn plan_value(plan: &CutPlan) -> Value {
    json!({
        "may_take": cut(plan.may_take), "if_asked": cut(plan.if_asked),
        "must_stay": { "green": plan.must_stay.green, "yellowing": plan.must_stay.yellowing },
        "stub_m": plan.method.stub.map(|s| json!([s.low.0, s.high.0])),
        "holds": findings(&plan.holds), "findings": findings(&plan.findings),
        "method": findings(&plan.method.findings), "cautions": findings(&plan.cautions),
    })
}

fn answer_value(answer: &AskedAnswer) -> Value {
    let span = |days: [Option<f64>; 3]| json!(days);
    json!({
        "verdict": answer.verdict.key(), "asked": cut(answer.asked), "allowed": cut(answer.allowed),
        "years_growth": answer.years_growth, "days_to_level": span(answer.recovery.to_level),
        "days_to_full": span(answer.recovery.to_full),
        "frond_months_lost": answer.recovery.frond_months_lost, "findings": findings(&answer.findings),
    })
}

pub(super) fn findings(findings: &[Finding]) -> Value {
    let one = |f: &Finding| {
        let args = f
            .args
            .iter()
            .map(|(name, arg)| ((*name).to_owned(), argument(arg)));
        let sources: Vec<&str> = f.sources.iter().map(|s| &*s.0).collect();
        json!({
            "code": f.code, "weight": super::said::weight(f.severity), "args": args.collect::<Map<_, _>>(),
            "sources": sources, "common_practice": f.practice, "conflicts": f.conflicts,
        })
    };
    findings.iter().map(one).collect()
}

fn argument(arg: &Arg) -> Value {
    match arg {
        Arg::Count(n) => (*n).into(),
        Arg::Number(x) | Arg::Share(x) | Arg::Days(x) => (*x).into(),
        Arg::Length(m) | Arg::ShortLength(m) => m.0.into(),
        Arg::Date(d) => date(*d).into(),
        Arg::Text(t) => t.as_str().into(),
        Arg::Code(c) => (*c).into(),
    }
}

fn probabilities(p: &[f64; 4]) -> Value {
    Explanation::ALL
        .iter()
        .map(|e| (e.key().to_owned(), Value::from(p[e.index()])))
        .collect::<Map<_, _>>()
        .into()
}

fn quantiles(q: &Quantiles) -> Value {
    json!({ "q05": q.q05, "q25": q.q25, "q50": q.q50, "q75": q.q75, "q95": q.q95 })
}

fn cut(cut: Cut) -> Value {
    json!({ "green": cut.green, "yellowing": cut.yellowing, "brown": cut.brown })
}

fn date(day: Day) -> String {
    day.to_string()
}
