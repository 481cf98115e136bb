//! Pieces that all forms are made of: labelled fields, messages at the field, the summary above the form.

use crate::Reader;
use desk::forms::{Trouble, Typed, confirm_name};
use maud::{Markup, html};

/// A form being drawn: what was typed, and what is wrong with it.
#[derive(Clone, Copy)]
pub struct Sheet<'a> {
    /// For whom.
    pub reader: &'a Reader,
    /// What was typed, or what the form starts from.
    pub typed: &'a Typed,
    /// What is wrong with it.
    pub troubles: &'a [Trouble],
    /// The ledger would not take it.
    pub failed: bool,
}

/// How a one-line field is typed into.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Free words.
    Words,
    /// A whole number, on the number pad.
    Whole,
    /// A number with decimals.
    Decimal,
    /// A day.
    Day,
}

impl<'a> Sheet<'a> {
    /// Words of a code.
    pub fn say(&self, code: &str) -> String {
        self.reader.say(code)
    }

    /// What was typed into a field.
    pub fn value(&self, name: &str) -> &'a str {
        self.typed.get(name)
    }

    /// A hidden field that carries on what it came with.
    pub fn hidden(&self, name: &str) -> Markup {
        html! { @if !self.value(name).is_empty() { input type="hidden" name=(name) value=(self.value(name)); } }
    }

    /// A labelled one-line field; the label's words are `forms-{name}`, a hint's `forms-{name}-hint`.
    pub fn line(&self, name: &str, kind: Kind) -> Markup {
        self.line_with(
            name,
            kind,
            &self.say(&format!("forms-{name}")),
            self.hint_of(name).as_deref(),
            None,
        )
    }

    /// The same with its own label, hint and list of suggestions.
    pub fn line_with(
        &self,
        name: &str,
        kind: Kind,
        label: &str,
        hint: Option<&str>,
        list: Option<&str>,
    ) -> Markup {
        let (type_, mode) = match kind {
            Kind::Words => ("text", None),
            Kind::Whole => ("text", Some("numeric")),
            Kind::Decimal => ("text", Some("decimal")),
            Kind::Day => ("date", None),
        };
        html! {
            div.field {
                label for=(name) { (label) }
                @if let Some(hint) = hint { p.hint id={ (name) "-hint" } { (hint) } }
                input type=(type_) id=(name) name=(name) value=(self.value(name)) inputmode=[mode] list=[list]
                    autocomplete="off" aria-describedby=[self.described(name, hint.is_some())]
                    aria-invalid=[self.invalid(name)];
                (self.at(name))
            }
        }
    }

    /// A labelled field of several lines.
    pub fn lines(&self, name: &str) -> Markup {
        let hint = self.hint_of(name);
        html! {
            div.field {
                label for=(name) { (self.say(&format!("forms-{name}"))) }
                @if let Some(hint) = &hint { p.hint id={ (name) "-hint" } { (hint) } }
                textarea id=(name) name=(name) rows="3" aria-describedby=[self.described(name, hint.is_some())]
                    aria-invalid=[self.invalid(name)] { (self.value(name)) }
                (self.at(name))
            }
        }
    }

    /// What is wrong with a field, at the field; a tick where it may be meant.
    pub fn at(&self, name: &str) -> Markup {
        html! {
            @if self.wrong(name) {
                div.trouble id={ (name) "-trouble" } {
                    @for trouble in self.troubles.iter().filter(|t| t.field == name) { (self.trouble(trouble)) }
                }
            }
        }
    }

    /// The ids that describe a field, for `aria-describedby`.
    pub fn described(&self, name: &str, hint: bool) -> Option<String> {
        let mut ids = Vec::new();
        if hint {
            ids.push(format!("{name}-hint"));
        }
        if self.wrong(name) {
            ids.push(format!("{name}-trouble"));
        }
        (!ids.is_empty()).then(|| ids.join(" "))
    }

    /// `aria-invalid` of a field.
    pub fn invalid(&self, name: &str) -> Option<&'static str> {
        self.wrong(name).then_some("true")
    }

    /// Above the form: that nothing was saved, and what to look at. Nothing where nothing is wrong.
    pub fn summary(&self) -> Markup {
        html! {
            @if self.failed || !self.troubles.is_empty() {
                div.trouble.summary #trouble role="alert" tabindex="-1" {
                    p { strong { (self.say(if self.failed { "forms-could-not-save" } else { "forms-not-saved-yet" })) } }
                    @for trouble in self.troubles.iter().filter(|t| t.field.is_empty()) { (self.trouble(trouble)) }
                    @let rest = self.troubles.iter().filter(|t| !t.field.is_empty());
                    @if rest.clone().next().is_some() {
                        ul { @for trouble in rest { li { a href={ "#" (trouble.field) } { (self.words(trouble)) } } } }
                    }
                }
            }
        }
    }

    fn wrong(&self, name: &str) -> bool {
        self.troubles.iter().any(|t| t.field == name)
    }

    fn words(&self, trouble: &Trouble) -> String {
        self.reader
            .words
            .finding(&trouble.finding, &self.reader.measure)
    }

    fn trouble(&self, trouble: &Trouble) -> Markup {
        html! {
            p { (self.words(trouble)) }
            @if trouble.may_confirm() {
                label.choice {
                    input type="checkbox" name=(confirm_name(trouble.finding.code)) value="yes";
                    span { (self.say("forms-confirm")) }
                }
            }
        }
    }

    fn hint_of(&self, name: &str) -> Option<String> {
        let key = format!("forms-{name}-hint");
        self.reader.words.has(&key).then(|| self.say(&key))
    }
}

/// The bar at the foot of a long form: within reach of the thumb, always in sight.
pub fn save_bar(sheet: Sheet, also: Markup, back: &str) -> Markup {
    html! {
        div.save {
            button.primary type="submit" { (sheet.say("common-save")) }
            (also)
            a.button href=(back) { (sheet.say("forms-cancel")) }
        }
    }
}

/// A palm's tag and species, as the head of a form about it.
pub fn heading(title: &str, palm: &model::Palm) -> Markup {
    html! {
        h1 { (title) }
        p.about { i { (palm.species) } @if !palm.site.is_empty() { " · " (palm.site) } }
    }
}

/// What the script says when a draft is restored or a save does not get through; hidden until then.
pub fn messages(reader: &Reader) -> Markup {
    html! {
        div.note #draft-note hidden role="status" {
            p { (reader.say("forms-draft-restored")) " " span #draft-when {} }
            button type="button" #draft-discard { (reader.say("forms-draft-discard")) }
        }
        div.trouble.summary #send-trouble hidden role="alert" tabindex="-1" {
            p { strong { (reader.say("forms-not-sent")) } }
            p { (reader.say("forms-not-sent-kept")) }
            button type="button" #send-again { (reader.say("forms-send-again")) }
        }
    }
}
