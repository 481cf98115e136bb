//! What could it be: ranking, the next look, look-alikes, the move beside hunger, holds advised.

use super::super::disorders::{disagreement, name_link};
use super::cutting::lines;
use super::said;
use crate::{Reader, address, drawn};
use desk::views::judgement::{
    AdviceView, ApartView, Chip, JudgementView, LookView, RankView, SideOf, SwingView,
};
use desk::views::palm::PalmView;
use maud::{Markup, html};

/// The section.
pub fn section(reader: &Reader, view: &PalmView) -> Markup {
    let judged = &view.judgement;
    html! {
        section.judged aria-labelledby="signs" {
            h2 #signs { (reader.say("signs-title")) }
            @if judged.told {
                p.small data-testid="rests-on" { (judged.rests_on) }
                (ranking(reader, &judged.open))
                (folded(reader, judged))
                (next(reader, view))
            } @else {
                p.lead data-testid="untold" { (reader.say("signs-untold")) }
                (first_looks(reader, view))
                details.why {
                    summary { (reader.say("signs-untold-ranking")) }
                    p.small { (judged.rests_on) }
                    (ranking(reader, &judged.open))
                    (folded(reader, judged))
                }
            }
            (sides(reader, view))
            (apart(reader, &judged.apart))
            @if !judged.findings.is_empty() {
                h3 { (reader.say("signs-remarks")) }
                (said::list(reader, &judged.findings))
            }
            @if !judged.disagree.is_empty() {
                details.why {
                    summary { (reader.words.text("palm-closed", &[("title", reader.say("signs-disagree").into()), ("n", (judged.disagree.len() as i64).into())])) }
                    @for one in &judged.disagree { (disagreement(reader, one, false)) }
                }
            }
            p.small { (reader.say("signs-caution")) }
        }
    }
}

fn ranking(reader: &Reader, ranks: &[RankView]) -> Markup {
    html! { ol.ranking data-testid="ranking" { @for rank in ranks { (one(reader, rank)) } } }
}

fn one(reader: &Reader, rank: &RankView) -> Markup {
    let words = [
        ("words", rank.words.clone().into()),
        ("share", rank.percent.clone().into()),
    ];
    html! {
        li data-disorder=(rank.key) data-level=(rank.level) {
            p.top {
                a.name href={ "/disorders/" (rank.key) } { (rank.name) }
                span.odds { (reader.words.text("signs-likelihood", &words)) }
            }
            svg class={ "chance " (rank.family) } viewBox="0 0 100 5" preserveAspectRatio="none" aria-hidden="true" {
                rect.whole width="100" height="5" {}
                rect.part width=(rank.length) height="5" {}
            }
            (chips(reader, "signs-for", "for", &rank.for_it))
            (chips(reader, "signs-against", "against", &rank.against))
            @if rank.for_it.is_empty() { p.small { (reader.say("signs-no-for")) } }
            details.why {
                summary { (reader.say("signs-settles")) }
                p { (rank.confirm) }
                @if !rank.sample.is_empty() { p { strong { (reader.say("signs-sample")) ": " } (rank.sample) } }
                @if !rank.first.is_empty() { p { strong { (reader.say("signs-first")) ": " } (rank.first) } }
                p.small { (reader.say("signs-factor")) }
                @if let Some(mark) = &rank.mark { p.basis { (mark) } }
                (said::sources(&rank.sources))
            }
        }
    }
}

fn chips(reader: &Reader, title: &str, class: &str, chips: &[Chip]) -> Markup {
    html! {
        @if !chips.is_empty() {
            div.speaks.(class) {
                span.title { (reader.say(title)) }
                ul { @for chip in chips { li { (chip.text) " " b { (chip.factor) } } } }
            }
        }
    }
}

fn folded(reader: &Reader, judged: &JudgementView) -> Markup {
    let title = [
        ("title", reader.say("signs-others").into()),
        ("n", (judged.folded.len() as i64).into()),
    ];
    html! {
        p { (judged.nothing) ". " (reader.say("signs-several")) }
        @if !judged.together.is_empty() {
            details.why {
                summary { (reader.say("signs-together")) }
                ul { @for line in &judged.together { li { (line) } } }
            }
        }
        @if !judged.folded.is_empty() {
            details.why {
                summary { (reader.words.text("palm-closed", &title)) }
                (ranking(reader, &judged.folded))
            }
        }
    }
}

/// The best look, open; the others under it.
fn next(reader: &Reader, view: &PalmView) -> Markup {
    let looks = &view.judgement.next;
    html! {
        div.next data-testid="next-look" {
            h3 { (reader.say("signs-next")) }
            @if let Some(best) = looks.first() {
                (look(reader, view, best, "button primary"))
                p.small { (view.judgement.doubt) " " (reader.say("signs-next-how")) }
                @if looks.len() > 1 {
                    details.why {
                        summary { (reader.say("signs-next-others")) }
                        @for other in &looks[1..] { (look(reader, view, other, "button")) }
                    }
                }
            } @else { p { (reader.say("signs-next-none")) } }
        }
    }
}

/// Nothing is noted: what to look at first.
fn first_looks(reader: &Reader, view: &PalmView) -> Markup {
    html! {
        div.next data-testid="next-look" {
            @for (at, one) in view.judgement.next.iter().enumerate() {
                (look(reader, view, one, if at == 0 { "button primary" } else { "button" }))
            }
        }
    }
}

fn look(reader: &Reader, view: &PalmView, look: &LookView, class: &str) -> Markup {
    html! {
        div.look data-sign=(look.sign) {
            p.name { (drawn::sign(&look.sign)) strong { (look.name) } }
            p { (look.how) " " span.small { (look.takes) } }
            p.small { (look.worth) " " (look.turns[0]) " " (look.turns[1]) }
            a class=(class) href=(look_at(view, &look.sign)) {
                (reader.say("signs-look-now")) span.sr { ": " (look.name) }
            }
        }
    }
}

fn apart(reader: &Reader, pairs: &[ApartView]) -> Markup {
    html! {
        @if !pairs.is_empty() {
            details.why.apart {
                summary { (reader.say("signs-apart")) }
                @for pair in pairs {
                    @let names = [("this", pair.this.1.clone().into()), ("other", pair.other.1.clone().into())];
                    h3 { (reader.words.text("signs-apart-pair", &names)) }
                    @if pair.for_this.is_empty() && pair.for_other.is_empty() { p { (reader.say("signs-apart-none")) } }
                    @for (name, signs) in [(&pair.this, &pair.for_this), (&pair.other, &pair.for_other)] {
                        @if !signs.is_empty() {
                            p { (reader.words.text("signs-apart-for", &[("name", name.1.clone().into())])) ":" }
                            ul { @for sign in signs { li { (sign) } } }
                        }
                    }
                }
            }
        }
    }
}

/// The move and hunger side by side.
fn sides(reader: &Reader, view: &PalmView) -> Markup {
    html! {
        @if let Some(sides) = &view.judgement.sides {
            section.sides aria-labelledby="sides" data-testid="sides" data-call=(sides.call) {
                h3 #sides { (reader.say("sides-title")) }
                p.headline { (sides.headline) }
                div.two-sides { (side(reader, "move", &sides.moved)) (side(reader, "hunger", &sides.hungry)) }
                @if !sides.which.is_empty() {
                    p { strong { (reader.say("sides-which")) ": " }
                        @for (at, (key, line)) in sides.which.iter().enumerate() { @if at > 0 { "; " } (name_link(key, line)) }
                    }
                }
                h4 { (reader.say("sides-turn")) }
                @if sides.changes.is_empty() { p { (reader.say("sides-none")) } }
                ul.swings { @for swing in &sides.changes { (one_swing(reader, view, swing)) } }
            }
        }
    }
}

fn side(reader: &Reader, class: &str, side: &SideOf) -> Markup {
    html! {
        div.side.(class) {
            p.top { strong { (side.name) } span.odds { (side.likelihood) } }
            svg class={ "chance " (class) } viewBox="0 0 100 5" preserveAspectRatio="none" aria-hidden="true" {
                rect.whole width="100" height="5" {}
                rect.part width=(side.length) height="5" {}
            }
            (chips(reader, "signs-for", "for", &side.for_it))
            (chips(reader, "signs-against", "against", &side.against))
            @if side.for_it.is_empty() { p.small { (reader.say("signs-no-for")) } }
        }
    }
}

fn one_swing(reader: &Reader, view: &PalmView, swing: &SwingView) -> Markup {
    html! {
        li {
            a.name href={ (look_at(view, &swing.sign)) } { (swing.name) }
            @if swing.changes_call { " " span.flag { (reader.say("sides-swing-turns")) } }
            p.small { (swing.says) }
        }
    }
}

/// The inspection form, open at a sign.
fn look_at(view: &PalmView, sign: &str) -> String {
    let stem = if view.stems.is_empty() {
        String::new()
    } else {
        view.stem.to_string()
    };
    let asked = [("stem", stem.as_str()), ("sign", sign)];
    format!(
        "{}#sign-{sign}",
        address::with_query(&address::palm(&view.tag, "/inspect"), &asked)
    )
}

/// Holds that the signs ask for, above everything else; `tag` is the palm's.
pub fn advised(reader: &Reader, tag: &str, holds: &[AdviceView]) -> Markup {
    html! {
        @for hold in holds {
            div.hold-banner role="note" id={ "hold-" (hold.reason) } data-testid="advised" data-reason=(hold.reason) {
                p.small { strong { (reader.say("advice-title")) } }
                p.headline { (hold.title) }
                p { (hold.why) " " @for (at, (key, name)) in hold.because.iter().enumerate() { @if at > 0 { ", " } (name_link(key, name)) } }
                (lines(&hold.what))
                @if hold.set { p { (reader.say("advice-is-set")) } } @else {
                    @let to = address::with_query(&address::palm(tag, "/holds"), &[("reason", hold.reason), ("note", &note(reader, hold))]);
                    a.button.danger href=(to) { (reader.say("advice-set")) }
                }
            }
        }
    }
}

fn note(reader: &Reader, hold: &AdviceView) -> String {
    let names: Vec<&str> = hold.because.iter().map(|(_, name)| name.as_str()).collect();
    reader
        .words
        .text("advice-note", &[("names", names.join(", ").into())])
}
