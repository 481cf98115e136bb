//! The inspection form's look: for one thumb, from the spear down.

use super::counter::counter;
use super::parts::{self, Kind, Sheet};
use super::{dial, signs, spear};
use crate::pages::advised;
use crate::{Here, Reader, address, page};
use desk::forms::{PLACES, Trouble, Typed, spiral_numbers};
use desk::office::Office;
use desk::views::Speaker;
use desk::views::judgement::{self, AdviceView, LookView};
use desk::views::picker::{self, Place};
use maud::{Markup, html};
use model::{Day, Inspection, PalmRecord};

/// All that the page shows.
pub struct View<'a> {
    /// For whom.
    pub reader: &'a Reader,
    /// The palm.
    pub record: &'a PalmRecord,
    /// What was typed, or what the form starts from.
    pub typed: &'a Typed,
    /// What is wrong with it.
    pub troubles: Vec<Trouble>,
    /// The ledger would not take it.
    pub failed: bool,
    /// Whether the spiral counter is in use.
    pub spiral_open: bool,
    /// Today.
    pub today: Day,
    /// The signs that the form offers.
    pub places: Vec<Place>,
    /// Looks that are worth most now.
    pub next: Vec<LookView>,
    /// Holds that the signs noted so far ask for.
    pub advised: Vec<AdviceView>,
}

impl<'a> View<'a> {
    /// A form without complaints. `sign` is the key of a sign that somebody came to look for, or empty.
    pub fn new(
        reader: &'a Reader,
        office: &Office,
        record: &'a PalmRecord,
        typed: &'a Typed,
        sign: &str,
    ) -> View<'a> {
        let speaker = Speaker::new(reader.measure);
        let (next, advised) = judgement::before_a_look(&speaker, office, record);
        View {
            reader,
            record,
            typed,
            troubles: Vec::new(),
            failed: false,
            spiral_open: false,
            today: office.today(),
            places: picker::view(&speaker, typed, sign),
            next,
            advised,
        }
    }

    fn sheet(&self) -> Sheet<'_> {
        Sheet {
            reader: self.reader,
            typed: self.typed,
            troubles: &self.troubles,
            failed: self.failed,
        }
    }

    fn stem(&self) -> u16 {
        self.typed.get("stem").parse().unwrap_or(1)
    }

    fn correcting(&self) -> bool {
        !self.typed.get("corrects").is_empty()
    }

    /// The look before the one being written.
    fn last(&self) -> Option<&Inspection> {
        let date = Day::parse(self.typed.get("date")).unwrap_or(self.today);
        self.record
            .looks(self.stem())
            .rev()
            .find(|look| look.date < date)
    }
}

/// The whole page.
pub fn page_of(view: &View) -> Markup {
    let sheet = view.sheet();
    let tag = view.record.palm.tag.as_str();
    let title = if view.correcting() {
        "forms-correct-title"
    } else {
        "forms-inspect-title"
    };
    let title = view
        .reader
        .words
        .text(title, &[("tag", tag.to_owned().into())]);
    let draft = format!(
        "inspect {} {} {}",
        view.record.id.0,
        view.stem(),
        view.typed.get("corrects")
    );
    let body = html! {
        (parts::heading(&title, &view.record.palm))
        (stems(view))
        @if let Some(last) = view.last() { (last_look(view, last)) }
        (advised(view.reader, tag, &view.advised))
        (sheet.summary())
        (parts::messages(view.reader))
        form.sheet #inspect method="post" action=(address::palm(tag, "/inspect")) data-draft=(draft) novalidate {
            // the first button is the one that the Enter key presses: saving, not counting spirals
            button.sr type="submit" tabindex="-1" aria-hidden="true" { (sheet.say("common-save")) }
            (sheet.hidden("id"))
            (sheet.hidden("corrects"))
            input type="hidden" name="stem" value=(view.stem());
            (sheet.at("stem"))
            (sheet.line("date", Kind::Day))
            (spear::choice(sheet))
            (counts(view, sheet))
            (dial::picker(sheet))
            (taken(sheet))
            (signs::picker(sheet, &view.places, &view.next))
            (sheet.lines("notes"))
            (parts::save_bar(sheet, next_stem(view), &address::palm(tag, "")))
        }
        @if view.correcting() { (withdraw(view, sheet)) }
    };
    page(view.reader, Here::Palms, &title, body)
}

/// One link a stem; those looked at today are ticked.
fn stems(view: &View) -> Markup {
    let palm = &view.record.palm;
    let looked = |stem| view.record.looks(stem).any(|look| look.date == view.today);
    html! {
        @if palm.stems > 1 {
            nav.stems aria-label=(view.reader.say("forms-stems-nav")) {
                @for stem in 1..=palm.stems {
                    a href=(address::palm(&palm.tag, &format!("/inspect?stem={stem}")))
                        aria-current=[(stem == view.stem()).then_some("page")] {
                        (view.reader.words.text("forms-stem-n", &[("n", stem.into())]))
                        @if looked(stem) { " ✓" span.sr { (view.reader.say("forms-stem-done")) } }
                    }
                }
            }
        }
    }
}

fn last_look(view: &View, last: &Inspection) -> Markup {
    let n = |count: Option<u32>| {
        count.map_or_else(|| view.reader.say("common-unknown"), |n| n.to_string())
    };
    let args = [
        ("date", view.reader.measure.date(last.date).into()),
        ("green", n(last.green).into()),
        ("yellowing", n(last.yellowing).into()),
        ("brown", n(last.brown).into()),
    ];
    html! { p.last { (view.reader.words.text("forms-last-look", &args)) } }
}

fn counts(view: &View, sheet: Sheet) -> Markup {
    let last = view.last();
    html! {
        fieldset.counts {
            legend { (sheet.say("forms-counts")) }
            p.hint { (sheet.say("forms-counts-hint")) }
            (counter(sheet, "green", "green", last.and_then(|l| l.green)))
            (counter(sheet, "yellowing", "yellowing", last.and_then(|l| l.yellowing)))
            (counter(sheet, "brown", "brown", last.and_then(|l| l.brown)))
            (counter(sheet, "new_leaves", "new", None))
            (spirals(view, sheet))
        }
    }
}

/// A marked frond found again: the numbers come with the page, so that it counts without the network.
fn spirals(view: &View, sheet: Sheet) -> Markup {
    let open = view.spiral_open
        || ["spiral", "place", "marked"]
            .iter()
            .any(|f| view.troubles.iter().any(|t| t.field == *f));
    let numbers = serde_json::to_string(&spiral_numbers()).unwrap_or_default();
    html! {
        details.spirals open[open] data-numbers=(numbers) {
            summary { (sheet.say("forms-spirals")) }
            p { (sheet.say("forms-spirals-how")) }
            p.hint { (sheet.say("forms-spirals-source")) }
            div.three {
                (sheet.line("spiral", Kind::Whole))
                (sheet.line("place", Kind::Whole))
                (sheet.line("marked", Kind::Whole))
            }
            button type="submit" name="do" value="spiral" formnovalidate { (sheet.say("forms-spirals-fill")) }
            output.spiral-says role="status" data-most-place=(PLACES) data-say-missing=(sheet.say("form-spiral-missing"))
                data-say-up=(sheet.say("forms-spirals-up")) data-say-done=(sheet.say("forms-spirals-done")) {}
        }
    }
}

fn taken(sheet: Sheet) -> Markup {
    let names = ["removed_green", "removed_yellowing", "removed_brown"];
    let open = sheet.typed.any(&names) || names.iter().any(|n| sheet.invalid(n).is_some());
    html! {
        details.taken open[open] {
            summary { (sheet.say("forms-taken")) }
            p.hint { (sheet.say("forms-taken-hint")) }
            (counter(sheet, "removed_green", "green", None))
            (counter(sheet, "removed_yellowing", "yellowing", None))
            (counter(sheet, "removed_brown", "brown", None))
        }
    }
}

fn next_stem(view: &View) -> Markup {
    html! {
        @if !view.correcting() && view.stem() < view.record.palm.stems {
            button type="submit" name="do" value="next" { (view.reader.say("forms-save-next-stem")) }
        }
    }
}

/// A look made by mistake is taken back, with a reason.
fn withdraw(view: &View, sheet: Sheet) -> Markup {
    html! {
        form.sheet.aside method="post" action=(address::palm(&view.record.palm.tag, "/inspect/withdraw")) {
            h2 { (sheet.say("forms-withdraw")) }
            p.hint { (sheet.say("forms-withdraw-hint")) }
            (sheet.hidden("corrects"))
            (sheet.line("why", Kind::Words))
            button type="submit" { (sheet.say("forms-withdraw")) }
        }
    }
}
