//! Objects for machines. Field names are the column names of the files where there are any.

use care::judge::{HoldAdvice, NextLook, Ranked, Speaks, TellApart, hold_reason};
use care::{AskedAnswer, CutPlan, Stand, Tool};
use crown::{Cut, Explanation, Forecast, Quantiles, Recovery};
use desk::assess::{PalmAnswer, StemAnswer, quantities};
use desk::intake::Refusal;
use desk::judging::{Judged, minutes_of, name_of, weight_key};
use desk::measure::Measure;
use model::{Arg, Finding, Severity};
use serde_json::{Map, Value, json};

/// A finding: code, weight, arguments as data, and its words.
pub fn finding(f: &Finding, measure: &Measure) -> Value {
    let args: Map<String, Value> = f
        .args
        .iter()
        .map(|(name, arg)| ((*name).to_owned(), argument(arg)))
        .collect();
    let sources: Vec<String> = f.sources.iter().map(ToString::to_string).collect();
    json!({
        "code": f.code,
        "severity": severity(f.severity),
        "args": args,
        "text": measure.finding(f),
        "sources": sources,
        "practice": f.practice,
        "conflicts": f.conflicts,
    })
}

fn findings(list: &[Finding], measure: &Measure) -> Value {
    list.iter().map(|f| finding(f, measure)).collect()
}

/// Lengths in metres, dates in ISO 8601, shares from 0 to 1.
fn argument(arg: &Arg) -> Value {
    match arg {
        Arg::Count(n) => json!(n),
        Arg::Number(x) | Arg::Share(x) | Arg::Days(x) => json!(x),
        Arg::Length(m) | Arg::ShortLength(m) => json!(m.0),
        Arg::Date(day) => json!(day.to_string()),
        Arg::Text(text) => json!(text),
        Arg::Code(code) => json!(code),
    }
}

fn severity(s: Severity) -> &'static str {
    match s {
        Severity::Info => "info",
        Severity::Caution => "caution",
        Severity::Act => "act",
        Severity::Refuse => "refuse",
    }
}

/// A refused row or file.
pub fn refusal(file: &str, r: &Refusal, measure: &Measure) -> Value {
    let mut out = finding(&r.finding, measure);
    out["kind"] = json!("refused");
    out["file"] = json!(file);
    out["line"] = json!(r.line);
    out["column"] = json!(r.column);
    out["found"] = json!(r.found);
    out
}

/// A palm's answer.
pub fn answer(a: &PalmAnswer, measure: &Measure) -> Value {
    let stems: Vec<Value> = a.stems.iter().map(|s| stem(a, s)).collect();
    json!({
        "kind": "reading",
        "tag": a.tag,
        "as_of": a.as_of.to_string(),
        "looked_at": a.looked_at,
        "explanation": a.explanation.key(),
        "probabilities": probabilities(a.probabilities),
        "stems": stems,
        "findings": findings(&a.findings, measure),
        "needs_a_person": a.needs_a_person(),
    })
}

fn probabilities(p: [f64; 4]) -> Value {
    Explanation::ALL
        .iter()
        .map(|e| (e.key().to_owned(), json!(p[e.index()])))
        .collect::<Map<_, _>>()
        .into()
}

fn stem(a: &PalmAnswer, s: &StemAnswer) -> Value {
    let loss = s.loss.as_ref().map(|l| {
        json!({
            "since": l.since.to_string(),
            "until": l.until.to_string(),
            "lost_since_last": l.lost,
            "ordinary_q05": l.ordinary.0,
            "ordinary_q95": l.ordinary.1,
            "tail_probability": l.tail_probability,
        })
    });
    let forecast: Vec<Value> = s
        .forecasts
        .iter()
        .map(|(day, f)| {
            let mut out = crown(f);
            out["days_ahead"] = json!(day.since(a.as_of));
            out["date"] = json!(day.to_string());
            out
        })
        .collect();
    json!({
        "stem": s.stem,
        "explanation": s.explanation.key(),
        "probabilities": probabilities(s.probabilities),
        "loss": loss,
        "tripwire_count": s.tripwire.count,
        "tripwire_date": s.tripwire.by.to_string(),
        "effective_draws": s.effective_draws,
        "forecast": forecast,
    })
}

fn crown(f: &Forecast) -> Value {
    quantities(f)
        .into_iter()
        .map(|(name, q)| (name.to_owned(), spread(q)))
        .collect::<Map<_, _>>()
        .into()
}

fn spread(q: Quantiles) -> Value {
    json!({"q05": q.q05, "q25": q.q25, "q50": q.q50, "q75": q.q75, "q95": q.q95})
}

/// A cut plan.
pub fn plan(tag: &str, as_of: &str, p: &CutPlan, measure: &Measure) -> Value {
    let stub = p
        .method
        .stub
        .map(|s| json!({"low_m": s.low.0, "high_m": s.high.0}));
    json!({
        "kind": "cut plan",
        "tag": tag,
        "stem": p.stem,
        "as_of": as_of,
        "holds": findings(&p.holds, measure),
        "may_take": cut(p.may_take),
        "if_asked": cut(p.if_asked),
        "must_stay": {"green": p.must_stay.green, "yellowing": p.must_stay.yellowing},
        "method": {
            "stub": stub,
            "tool": tool(p.method.tool),
            "stand": stand(p.method.stand),
            "findings": findings(&p.method.findings, measure),
        },
        "findings": findings(&p.findings, measure),
        "cautions": findings(&p.cautions, measure),
    })
}

/// The answer to an asked-for cut.
pub fn asked(tag: &str, stem: u16, a: &AskedAnswer, measure: &Measure) -> Value {
    json!({
        "kind": "asked",
        "tag": tag,
        "stem": stem,
        "verdict": a.verdict.key(),
        "asked": cut(a.asked),
        "allowed": cut(a.allowed),
        "findings": findings(&a.findings, measure),
        "years_growth": a.years_growth,
        "after": crown(&a.after),
        "recovery": recovery(&a.recovery),
        "recovery_if_allowed": recovery(&a.recovery_if_allowed),
    })
}

fn recovery(r: &Recovery) -> Value {
    json!({
        "to_level_days": r.to_level,
        "to_full_days": r.to_full,
        "frond_months_lost": r.frond_months_lost,
    })
}

fn cut(c: Cut) -> Value {
    json!({"green": c.green, "yellowing": c.yellowing, "brown": c.brown})
}

/// The word for a tool in files.
pub fn tool(t: Tool) -> &'static str {
    match t {
        Tool::Hand => "hand",
        Tool::Saw => "saw",
    }
}

/// The word for a standing place in files.
pub fn stand(s: Stand) -> &'static str {
    match s {
        Stand::Ground => "ground",
        Stand::GroundWithPole => "ground-with-pole",
        Stand::Lift => "lift",
        Stand::LiftFromAbove => "lift-from-above",
        Stand::Unknown => "unknown",
    }
}

/// The whole judgement of one row.
pub fn judgement(tag: &str, judged: &Judged, said: &[&Finding], measure: &Measure) -> Value {
    let (told, j) = (&judged.told, &judged.judgement);
    json!({
        "kind": "judgement",
        "tag": tag,
        "date": told.on.map(|d| d.to_string()),
        "species": told.species.map(|s| s.name.as_str()),
        "signs": told.seen,
        "absent": told.absent,
        "ranked": j.ranked.iter().map(|r| ranked(r, measure)).collect::<Vec<_>>(),
        "probability_of_nothing": j.nothing,
        "doubt_bits": j.doubt_bits,
        "together": j.together.iter().map(|(set, p)| json!({"disorders": set, "probability": p})).collect::<Vec<_>>(),
        "next": j.next.iter().map(next_look).collect::<Vec<_>>(),
        "holds": j.holds.iter().map(hold).collect::<Vec<_>>(),
        "apart": j.apart.iter().map(apart).collect::<Vec<_>>(),
        "findings": said.iter().map(|f| finding(f, measure)).collect::<Vec<_>>(),
    })
}

fn ranked(r: &Ranked, measure: &Measure) -> Value {
    json!({
        "disorder": r.disorder,
        "name": name_of(r.disorder, measure.words.lang()),
        "probability": r.probability,
        "level": r.level,
        "speaks_for": speaks(&r.for_it),
        "speaks_against": speaks(&r.against),
    })
}

fn speaks(list: &[Speaks]) -> Value {
    list.iter()
        .map(|s| json!({"what": weight_key(s.what), "factor": s.factor}))
        .collect()
}

fn next_look(l: &NextLook) -> Value {
    json!({
        "sign": l.sign,
        "minutes": minutes_of(l.sign),
        "chance": l.chance,
        "bits": l.bits,
        "bits_per_minute": l.bits_per_minute,
        "if_there": {"disorder": l.if_there.0, "probability": l.if_there.1},
        "if_not": {"disorder": l.if_not.0, "probability": l.if_not.1},
    })
}

fn hold(h: &HoldAdvice) -> Value {
    json!({
        "reason": hold_reason(h.kind),
        "probability": h.probability,
        "because": h.because,
        "sign": h.sign,
    })
}

fn apart(t: &TellApart) -> Value {
    json!({
        "this": t.this,
        "other": t.other,
        "for_this": t.for_this,
        "for_other": t.for_other,
    })
}
