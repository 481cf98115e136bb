//! Signs, disorders, what links them, weights and disagreements are in order, and the check would say so if not.

use spearleaf_model as model;

use model::knowledge::{Course, Family, HoldKind, HostKind, Spread, Strength, Tables, check};
use model::{Basis, Knowledge};

/// Seeds one fault into a table, in place of a text that must be there, and expects it under its code.
fn caught(code: &str, table: &str, from: &str, to: &str) {
    caught_in(table, code, table, from, to);
}

/// The same, where the fault of one table shows in another.
fn caught_in(shown: &str, code: &str, table: &str, from: &str, to: &str) {
    let mut tables = Tables::embedded();
    let place: &mut &str = match table {
        "signs.csv" => &mut tables.signs,
        "disorders.csv" => &mut tables.disorders,
        "disorder_signs.csv" => &mut tables.disorder_signs,
        "weights.csv" => &mut tables.weights,
        _ => &mut tables.disagreements,
    };
    assert!(place.contains(from), "the seed does not fit: {from}");
    let seeded = place.replacen(from, to, 1);
    *place = &seeded;
    let flaws = check(&tables);
    let found = flaws.iter().any(|f| f.code == code && f.table == shown);
    assert!(found, "{code} in {shown} not among {flaws:?}");
}

#[test]
fn faults_of_the_signs_are_caught() {
    let t = "signs.csv";
    caught("key-twice", t, "\nspear-leaning,", "\nspear-firm,");
    caught("not-a-key", t, "\nspear-leaning,", "\nspear_leaning,");
    caught("not-a-word", t, "nest,crown,", "nest,top,");
    caught("empty", t, "nest,crown,Nest,Nido,", "nest,crown,Nest,,");
    caught("not-translated", t, "Nest,Nido,", "Nest,Nest,");
    caught("name-twice", t, "Nest,Nido,", "Bats,Nido,");
    caught(
        "too-long",
        t,
        "Nest,Nido,",
        "Nest or hole or anything else in which birds might breed or roost,Nido,",
    );
    caught("sign-without-disorder", t, "\nnest,", "\nnest-of-birds,");
    caught(
        "not-a-number",
        t,
        ",1,common-practice",
        ",one,common-practice",
    );
    caught("unknown-source", t, "common-practice", "no-such-source");
    caught("wrong-header", t, "key,part", "key,place");
}

#[test]
fn faults_of_the_disorders_are_caught() {
    let t = "disorders.csv";
    caught("not-a-word", t, ",nutrient,", ",hunger,");
    caught("not-a-word", t, "Phoenix:prone", "Phoenix:likely");
    caught("not-a-word", t, "wilt-suspect", "wilt");
    caught("unknown-host", t, "Phoenix:prone", "Phenix:prone");
    caught("host-twice", t, "Phoenix:prone", "*:prone");
    caught("out-of-order", t, ",180,540,", ",540,180,");
    caught("out-of-limits", t, ",180,540,", ",180,54000,");
    caught("not-a-day-count", t, ",180,540,", ",180,1.5 years,");
    caught("not-a-number", t, ",0.15,decline", ",often,decline");
    caught("out-of-limits", t, ",0.15,decline", ",15,decline");
    caught("key-twice", t, "\nmg-deficiency,", "\nk-deficiency,");
    caught("too-few-signs", t, "\nmg-deficiency,", "\nmagnesium,");
    caught("not-translated", t, "Lightning,Rayo", "Lightning,Lightning");
    caught("empty", t, "Lightning,Rayo", "Lightning,");
}

#[test]
fn faults_of_links_weights_and_disagreements_are_caught() {
    let t = "disorder_signs.csv";
    caught(
        "link-twice",
        t,
        "k-deficiency,frizzled-old,",
        "k-deficiency,starts-oldest,",
    );
    caught(
        "unknown-sign",
        t,
        "k-deficiency,frizzled-old,",
        "k-deficiency,frizzled,",
    );
    caught(
        "unknown-disorder",
        t,
        "k-deficiency,frizzled-old,",
        "potassium,frizzled-old,",
    );
    caught(
        "not-a-word",
        t,
        "starts-oldest,always",
        "starts-oldest,certain",
    );
    let rule = "k-deficiency,starts-oldest,always";
    let nest = "k-deficiency,nest,always";
    caught_in("signs.csv", "rule-sign-linked", t, rule, nest);
    caught(
        "sign-without-disorder",
        "signs.csv",
        "\nspear-leaning,",
        "\nspear-leans,",
    );
    caught(
        "unknown-sign",
        t,
        rule,
        "k-deficiency,starts-at-the-oldest,always",
    );
    let t = "weights.csv";
    caught("key-twice", t, "\nleak,", "\nhold-from,");
    caught(
        "strengths-out-of-order",
        t,
        "strength-usual,0.7",
        "strength-usual,0.2",
    );
    caught(
        "strengths-out-of-order",
        t,
        "strength-usual,",
        "strength-mostly,",
    );
    caught("out-of-limits", t, "strength-rare,0.07", "strength-rare,7");
    caught("out-of-limits", t, "\nleak,0.02", "\nleak,-0.02");
    caught("not-a-number", t, "\nleak,0.02", "\nleak,2%");
    caught("no-source", t, "assumed", "");
    let t = "disagreements.csv";
    caught("unknown-disorder", t, "lethal-bronzing;", "bronzing;");
    caught("unknown-source", t, "common-practice", "hearsay");
    caught("key-twice", t, "\nstub-length,", "\nsealing-cuts,");
    caught("empty", t, "¿Qué pudre la yema?", "");
}

/// The counts of the facts that the tables were made from, and what the tool's rules need of them.
#[test]
fn the_tables_hold_what_the_rules_need() {
    let known = Knowledge::embedded();
    assert_eq!(known.disorders.len(), 36);
    for key in [
        "nest",
        "bats",
        "bees",
        "one-sided-browning",
        "wilt",
        "skirt",
        "fruit",
    ] {
        assert!(known.sign(key).is_some(), "{key}");
    }
    for key in [
        "spear-pulls-out",
        "spear-wilted",
        "spear-leaning",
        "conk-lower-trunk",
    ] {
        assert!(known.sign(key).is_some(), "{key}");
    }
    assert!(known.sign("no-such-sign").is_none() && known.disorder("").is_none());
    assert_eq!(known.weight("no-such-weight"), None);
    assert!(known.weight("strength-always") > known.weight("strength-usual"));
    let ageing = known.disorder("natural-senescence").expect("ageing");
    assert_eq!(
        (ageing.family, ageing.course),
        (Family::Normal, Course::Ageing)
    );
    for disorder in known.disorders.iter().filter(|d| d.hold.is_some()) {
        assert_eq!(disorder.course, Course::Decline, "{}", disorder.key);
    }
    let held = |kind| {
        known
            .disorders
            .iter()
            .filter(|d| d.hold == Some(kind))
            .count()
    };
    assert_eq!(HoldKind::ALL.map(|(kind, _)| held(kind)), [2, 2, 2, 2, 3]);
}

/// PP215 (UF/IFAS) of the wilt of the Canary palm: carried by tools, one-sided fronds as a rule, no sudden fruit drop.
/// PP243 of lethal bronzing: an insect carries it, tools do not.
#[test]
fn spread_and_signs_follow_the_bulletins() {
    let known = Knowledge::embedded();
    let wilt = known.disorder("fusarium-wilt-canariensis").expect("wilt");
    assert!(wilt.spread.contains(&Spread::Blade));
    assert_eq!((wilt.latency.min, wilt.latency.max), (Some(180), Some(540)));
    let canary = wilt.hosts.iter().find(|h| h.name == "Phoenix canariensis");
    assert_eq!(canary.map(|h| h.kind), Some(HostKind::Prone));
    let strength = |disorder: &str, sign: &str| {
        let mut links = known.links_of(disorder);
        links
            .find(|link| link.sign == sign)
            .map(|link| link.strength)
    };
    let one_sided = "one-sided-browning";
    assert_eq!(strength(&wilt.key, one_sided), Some(Strength::Usual));
    assert_eq!(
        strength(&wilt.key, "fruit-drops-all"),
        Some(Strength::Excludes)
    );
    let bronzing = known.disorder("lethal-bronzing").expect("bronzing");
    assert_eq!(bronzing.spread, [Spread::Vector]);
    assert_eq!(bronzing.latency.min, None);
    assert_eq!(strength(&bronzing.key, one_sided), Some(Strength::Excludes));
    let disputed: Vec<_> = known
        .disagreements_on("lethal-bronzing")
        .map(|d| &d.key)
        .collect();
    assert_eq!(disputed, ["tools-and-phytoplasmas"]);
}

/// Nothing is published without sources that were read; every weight is marked as assumed.
#[test]
fn no_row_claims_more_than_its_sources() {
    let known = Knowledge::embedded();
    let signs = known.signs.iter().map(|r| (&r.key, r.basis, &r.sources));
    let rows = signs.chain(
        known
            .disorders
            .iter()
            .map(|r| (&r.key, r.basis, &r.sources)),
    );
    let rows = rows.chain(
        known
            .sign_links
            .iter()
            .map(|r| (&r.disorder, r.basis, &r.sources)),
    );
    for (key, basis, sources) in rows {
        assert!(!sources.is_empty() && basis != Basis::Assumed, "{key}");
        let read = |key: &str| {
            let source = known.source(key);
            source.is_some_and(|s| s.how_seen == model::knowledge::HowSeen::Read)
        };
        assert!(
            basis != Basis::Published || sources.iter().all(|s| read(&s.0)),
            "{key}"
        );
    }
    assert!(known.weights.iter().all(|w| w.basis == Basis::Assumed));
}
