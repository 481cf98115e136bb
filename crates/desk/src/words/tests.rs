use super::*;
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use std::collections::{BTreeMap, BTreeSet};

/// Key → names of the variables its words use, over all files of a language; panics on doubled keys and bad syntax.
fn catalogue(lang: Lang) -> BTreeMap<String, BTreeSet<String>> {
    let mut all = BTreeMap::new();
    for (file, text) in sources(lang) {
        let resource = fluent_syntax::parser::parse(text.as_str())
            .unwrap_or_else(|(_, e)| panic!("{file}: {e:?}"));
        for entry in resource.body {
            let Entry::Message(message) = entry else {
                continue;
            };
            let mut used = BTreeSet::new();
            let value = message
                .value
                .unwrap_or_else(|| panic!("{file}: {} says nothing", message.id.name));
            variables(&value, &mut used);
            let before = all.insert(message.id.name.to_owned(), used);
            assert!(
                before.is_none(),
                "{file}: {} is there twice",
                message.id.name
            );
        }
    }
    all
}

fn variables(pattern: &Pattern<&str>, out: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        let PatternElement::Placeable { expression } = element else {
            continue;
        };
        match expression {
            Expression::Inline(inline) => variable(inline, out),
            Expression::Select { selector, variants } => {
                variable(selector, out);
                variants.iter().for_each(|v| variables(&v.value, out));
            }
        }
    }
}

fn variable(inline: &InlineExpression<&str>, out: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            out.insert(id.name.to_owned());
        }
        InlineExpression::Placeable { expression } => match expression.as_ref() {
            Expression::Inline(inner) => variable(inner, out),
            Expression::Select { selector, variants } => {
                variable(selector, out);
                variants.iter().for_each(|v| variables(&v.value, out));
            }
        },
        InlineExpression::FunctionReference { arguments, .. } => {
            arguments.positional.iter().for_each(|a| variable(a, out));
        }
        _ => {}
    }
}

#[test]
fn both_languages_hold_the_same_keys_with_the_same_arguments() {
    let (en, es) = (catalogue(Lang::En), catalogue(Lang::Es));
    assert!(en.len() > 50, "the files are not embedded: {}", en.len());
    let missing: Vec<_> = en.keys().filter(|k| !es.contains_key(*k)).collect();
    let extra: Vec<_> = es.keys().filter(|k| !en.contains_key(*k)).collect();
    assert!(
        missing.is_empty() && extra.is_empty(),
        "not in es: {missing:?}; not in en: {extra:?}"
    );
    for (key, used) in &en {
        assert_eq!(used, &es[key], "{key} takes different arguments");
    }
}

#[test]
fn every_message_formats_with_its_arguments() {
    for lang in Lang::ALL {
        let words = Words::new(lang);
        for (key, used) in catalogue(lang) {
            for number in [0, 1, 2, 21] {
                let pattern = words
                    .bundle
                    .get_message(&key)
                    .and_then(|m| m.value())
                    .unwrap();
                let args: FluentArgs = used
                    .iter()
                    .map(|name| (name.as_str(), Value::from(number)))
                    .collect();
                let mut errors = Vec::new();
                let text = words
                    .bundle
                    .format_pattern(pattern, Some(&args), &mut errors);
                assert!(errors.is_empty(), "{} {key}: {errors:?}", lang.tag());
                assert!(
                    !text.trim().is_empty() && !text.contains("{$"),
                    "{} {key}: {text}",
                    lang.tag()
                );
            }
        }
    }
}

#[test]
fn a_code_without_words_shows_itself() {
    assert_eq!(Words::new(Lang::Es).say("no-such-code"), "no-such-code");
    assert_eq!(Lang::parse("es-MX"), Some(Lang::Es));
    assert_eq!(Lang::parse("de"), None);
}
