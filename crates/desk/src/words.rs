//! Words per language for codes and labels, from Fluent files.
//!
//! Every file `lang/<language>/*.ftl` is embedded at compile time; one key lives in one file, and both languages
//! hold the same keys with the same arguments (tests hold this). Nothing else in the workspace holds sentences.

use crate::measure::Measure;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use model::Finding;
use rust_embed::RustEmbed;
use std::sync::OnceLock;
use unic_langid::LanguageIdentifier;

/// A value of an argument: `"name".into()`, `3.into()` (numbers select plurals), `String` as well.
pub type Value = fluent_bundle::FluentValue<'static>;

/// The languages the tool speaks.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Default)]
pub enum Lang {
    /// English.
    #[default]
    En,
    /// Spanish.
    Es,
}

impl Lang {
    /// All, in the order shown in the settings.
    pub const ALL: [Lang; 2] = [Lang::En, Lang::Es];

    /// The BCP 47 tag, also the folder name: `en`, `es`.
    pub fn tag(self) -> &'static str {
        match self {
            Lang::En => "en",
            Lang::Es => "es",
        }
    }

    /// From a tag such as `es` or `es-MX`; `None` for a language we do not speak.
    pub fn parse(tag: &str) -> Option<Lang> {
        let primary = tag.split(['-', '_']).next().unwrap_or("").trim();
        Lang::ALL
            .into_iter()
            .find(|l| l.tag().eq_ignore_ascii_case(primary))
    }
}

#[derive(RustEmbed)]
#[folder = "lang/"]
struct Files;

type Bundle = FluentBundle<FluentResource>;

/// The words of one language. Cheap to make and copy; the files are parsed once.
#[derive(Clone, Copy)]
pub struct Words {
    lang: Lang,
    bundle: &'static Bundle,
}

impl std::fmt::Debug for Words {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "Words({})", self.lang.tag())
    }
}

impl Words {
    /// The words of a language.
    pub fn new(lang: Lang) -> Words {
        static BUNDLES: [OnceLock<Bundle>; 2] = [const { OnceLock::new() }; 2];
        Words {
            lang,
            bundle: BUNDLES[lang as usize].get_or_init(|| load(lang)),
        }
    }

    /// Which language these are.
    pub fn lang(self) -> Lang {
        self.lang
    }

    /// Whether there are words for this code.
    pub fn has(self, code: &str) -> bool {
        self.bundle.has_message(code)
    }

    /// The words of a code with its arguments. A code without words comes back as itself: visible, never a panic.
    pub fn text(self, code: &str, args: &[(&'static str, Value)]) -> String {
        let Some(pattern) = self.bundle.get_message(code).and_then(|m| m.value()) else {
            return code.to_owned();
        };
        let args: FluentArgs = args.iter().map(|(k, v)| (*k, v.clone())).collect();
        // an argument that was not given shows as {$name}: the errors hold nothing more
        self.bundle
            .format_pattern(pattern, Some(&args), &mut Vec::new())
            .into_owned()
    }

    /// A finding in words, its quantities written the reader's way.
    pub fn finding(self, finding: &Finding, measure: &Measure) -> String {
        measure.finding(finding)
    }

    /// The words of a code that takes no arguments.
    pub fn say(self, code: &str) -> String {
        self.text(code, &[])
    }
}

fn load(lang: Lang) -> Bundle {
    let id: LanguageIdentifier = lang.tag().parse().expect("our own language tags parse");
    let mut bundle = Bundle::new_concurrent(vec![id]);
    // the invisible isolation marks trip up searching and copying, and both languages run left to right
    bundle.set_use_isolating(false);
    for text in sources(lang).into_iter().map(|(_, text)| text) {
        // a broken line loses that message only; the test below refuses broken lines
        let resource = FluentResource::try_new(text).unwrap_or_else(|(partial, _)| partial);
        bundle.add_resource_overriding(resource);
    }
    bundle
}

/// File names with their text, in name order.
fn sources(lang: Lang) -> Vec<(String, String)> {
    let folder = format!("{}/", lang.tag());
    let mut found: Vec<_> = Files::iter()
        .filter(|name| name.starts_with(&folder) && name.ends_with(".ftl"))
        .filter_map(|name| {
            let text = String::from_utf8(Files::get(&name)?.data.into_owned()).ok()?;
            Some((name.into_owned(), text))
        })
        .collect();
    found.sort();
    found
}

#[cfg(test)]
mod tests;
