//! The look of the forms of sites and crews.

use super::parts::{self, Kind, Sheet};
use crate::pages::sites::style;
use crate::{Here, Reader, address, page};
use desk::forms::{CLOSED, FEEDING, HOURS, SKILLS, SOILS, Trouble, Typed, kit_words, rows_shown};
use desk::measure::Units;
use desk::timetable::NUTRIENTS;
use desk::views::Speaker;
use desk::views::crews::tool_name;
use maud::{Markup, html};
use model::Site;

/// All that a form is drawn from.
pub struct View<'a> {
    /// For whom.
    pub reader: &'a Reader,
    /// The site or crew that is described; `None`: a new one.
    pub name: Option<&'a str>,
    /// What was typed.
    pub typed: &'a Typed,
    /// What is wrong with it.
    pub troubles: &'a [Trouble],
    /// The ledger would not take it.
    pub failed: bool,
    /// Described sites, whose gates a crew may start from.
    pub sites: Vec<Site>,
}

impl<'a> View<'a> {
    fn sheet(&self) -> Sheet<'a> {
        Sheet {
            reader: self.reader,
            typed: self.typed,
            troubles: self.troubles,
            failed: self.failed,
        }
    }

    /// The page around the fields of a form; `what` is `site` or `crew`.
    fn page(&self, what: &str, to: &str, back: &str, fields: &Markup) -> Markup {
        let sheet = self.sheet();
        let title = match self.name {
            Some(name) => {
                let args = [("name", name.to_owned().into())];
                self.reader.words.text(&format!("{what}-form-edit"), &args)
            }
            None => sheet.say(&format!("{what}-form-new")),
        };
        let draft = format!("{what} {}", self.name.unwrap_or("new"));
        let body = html! {
            (style())
            h1 { (title) }
            (sheet.summary())
            (parts::messages(self.reader))
            form.sheet method="post" action=(to) data-draft=(draft) novalidate {
                (sheet.hidden("id"))
                (sheet.hidden("seen"))
                (fields)
                (parts::save_bar(sheet, html! {}, back))
            }
        };
        page(self.reader, Here::Sites, &title, body)
    }
}

/// A line whose label and hint are `{what}-form-{name}`.
fn line(sheet: Sheet, what: &str, name: &str, words: &str, kind: Kind) -> Markup {
    let label = sheet.say(&format!("{what}-form-{words}"));
    let hint = format!("{what}-form-{words}-hint");
    let hint = sheet.reader.words.has(&hint).then(|| sheet.say(&hint));
    sheet.line_with(name, kind, &label, hint.as_deref(), None)
}

fn hint(sheet: Sheet, code: &str) -> Markup {
    html! { p.hint { (sheet.say(code)) } }
}

fn degrees(sheet: Sheet, lat: &str, lon: &str) -> Markup {
    html! {
        div.two {
            (sheet.line_with(lat, Kind::Words, &sheet.say("forms-lat"), None, None))
            (sheet.line_with(lon, Kind::Words, &sheet.say("forms-lon"), None, None))
        }
    }
}

/// Free words of several lines under a key of their own.
fn notes(sheet: Sheet, what: &str) -> Markup {
    let hint = format!("{what}-form-notes-hint");
    let hint = sheet.reader.words.has(&hint).then(|| sheet.say(&hint));
    html! {
        div.field {
            label for="notes" { (sheet.say(&format!("{what}-form-notes"))) }
            @if let Some(hint) = &hint { p.hint #notes-hint { (hint) } }
            textarea #notes name="notes" rows="3" aria-describedby=[sheet.described("notes", hint.is_some())] { (sheet.value("notes")) }
        }
    }
}

/// The windows of a day, one row each.
fn hours(sheet: Sheet, rows: &[&str]) -> Markup {
    html! {
        @for row in rows {
            div.spell id=(row) tabindex="-1" aria-describedby=[sheet.described(row, false)] {
                div.two { (time(sheet, row, "from")) (time(sheet, row, "to")) }
                (sheet.at(row))
            }
        }
    }
}

fn time(sheet: Sheet, row: &str, part: &str) -> Markup {
    let name = format!("{row}-{part}");
    html! {
        div.field {
            label for=(name) { (sheet.say(&format!("site-form-{part}"))) }
            input type="time" id=(name) name=(name) value=(sheet.value(&name)) aria-invalid=[sheet.invalid(row)];
        }
    }
}

/// The form of a site.
pub fn site_form(view: &View) -> Markup {
    let sheet = view.sheet();
    let (to, back) = match view.name {
        Some(name) => (address::site(name, "/edit"), address::site(name, "")),
        None => ("/sites/new".to_owned(), "/sites".to_owned()),
    };
    let fields = html! {
        @if view.name.is_none() { (line(sheet, "site", "site_name", "name", Kind::Words)) }
        (line(sheet, "site", "owner", "owner", Kind::Words))
        fieldset {
            legend { (sheet.say("site-form-gate")) }
            (hint(sheet, "site-form-gate-hint"))
            (degrees(sheet, "lat", "lon"))
            button.by-script type="button" #locate hidden data-say-failed=(sheet.say("forms-locate-failed")) { (sheet.say("forms-locate")) }
            output #locate-says role="status" {}
        }
        fieldset {
            legend { (sheet.say("site-form-hours")) }
            (hint(sheet, "site-form-hours-hint"))
            (hours(sheet, rows_shown(sheet.typed, &HOURS)))
        }
        fieldset {
            legend { (sheet.say("site-form-closed")) }
            (hint(sheet, "site-form-closed-hint"))
            (closed(sheet))
        }
        fieldset {
            legend { (sheet.say("site-form-judged")) }
            (hint(sheet, "site-form-judged-hint"))
            (soil(sheet))
            (answer(sheet, "coastal"))
            (answer(sheet, "weevil_area"))
            (line(sheet, "site", "line_kv", "line_kv", Kind::Decimal))
            (line(sheet, "site", "tidy", "tidy", Kind::Whole))
            (line(sheet, "site", "limit", "limit", Kind::Whole))
        }
        fieldset {
            legend { (sheet.say("site-form-feeding")) }
            (hint(sheet, "site-form-feeding-hint"))
            (feeding(sheet))
        }
        (notes(sheet, "site"))
    };
    view.page("site", &to, &back, &fields)
}

fn closed(sheet: Sheet) -> Markup {
    html! {
        @for row in rows_shown(sheet.typed, &CLOSED) {
            div.spell id=(row) tabindex="-1" aria-describedby=[sheet.described(row, false)] {
                div.two {
                    @for part in ["first", "last"] {
                        @let name = format!("{row}-{part}");
                        div.field {
                            label for=(name) { (sheet.say(&format!("site-form-{part}"))) }
                            input type="date" id=(name) name=(name) value=(sheet.value(&name)) aria-invalid=[sheet.invalid(row)];
                        }
                    }
                }
                (words(sheet, row, "why"))
                (sheet.at(row))
            }
        }
    }
}

/// A part of a row that takes free words.
fn words(sheet: Sheet, row: &str, part: &str) -> Markup {
    let name = format!("{row}-{part}");
    html! {
        div.field {
            label for=(name) { (sheet.say(&format!("site-form-{part}"))) }
            input type="text" id=(name) name=(name) value=(sheet.value(&name)) autocomplete="off";
        }
    }
}

fn soil(sheet: Sheet) -> Markup {
    let chosen = sheet.value("soil");
    html! {
        div.field {
            label for="soil" { (sheet.say("site-form-soil")) }
            select #soil name="soil" {
                option value="" selected[chosen.is_empty()] { (sheet.say("site-form-not-known")) }
                @for key in SOILS { option value=(key) selected[key == chosen] { (sheet.say(&format!("move-soil-{key}"))) } }
                // a soil out of a file that no table knows is kept
                @if !chosen.is_empty() && !SOILS.contains(&chosen) { option value=(chosen) selected { (chosen) } }
            }
        }
    }
}

fn answer(sheet: Sheet, name: &str) -> Markup {
    let hint = sheet.say(&format!("site-form-{name}-hint"));
    let choices = [
        ("yes", "sites-yes"),
        ("no", "sites-no"),
        ("", "site-form-not-known"),
    ];
    html! {
        fieldset.answer id=(name) tabindex="-1" aria-describedby=[sheet.described(name, false)] {
            legend { (sheet.say(&format!("site-form-{name}"))) }
            p.hint { (hint) }
            div.pick {
                @for (value, words) in choices {
                    label.choice {
                        input type="radio" name=(name) value=(value) checked[sheet.value(name) == value];
                        span { (sheet.say(words)) }
                    }
                }
            }
            (sheet.at(name))
        }
    }
}

fn feeding(sheet: Sheet) -> Markup {
    html! {
        @for row in rows_shown(sheet.typed, &FEEDING) {
            div.spell id=(row) tabindex="-1" aria-describedby=[sheet.described(row, false)] {
                div.two { (day_of_year(sheet, row, "from")) (day_of_year(sheet, row, "to")) }
                fieldset.answer {
                    legend { (sheet.say("site-form-barred")) }
                    div.pick {
                        @for nutrient in NUTRIENTS {
                            @let name = format!("{row}-{nutrient}");
                            label.choice {
                                input type="checkbox" name=(name) value="yes" checked[!sheet.value(&name).is_empty()];
                                span { (sheet.say(&format!("site-nutrient-{nutrient}"))) }
                            }
                        }
                    }
                }
                (words(sheet, row, "rule"))
                (sheet.at(row))
            }
        }
    }
}

/// Month and day, where a rule begins or ends.
fn day_of_year(sheet: Sheet, row: &str, end: &str) -> Markup {
    let (month, day) = (format!("{row}-{end}_month"), format!("{row}-{end}_day"));
    html! {
        fieldset.day-of-year {
            legend { (sheet.say(&format!("site-form-{end}"))) }
            div.field {
                label for=(month) { (sheet.say("site-form-month")) }
                select id=(month) name=(month) {
                    option value="" {}
                    @for n in 1..=12 {
                        @let n_text = n.to_string();
                        option value=(n_text) selected[sheet.value(&month) == n_text] { (sheet.say(&format!("measure-month-{n}"))) }
                    }
                }
            }
            div.field {
                label for=(day) { (sheet.say("site-form-day")) }
                input type="text" inputmode="numeric" id=(day) name=(day) value=(sheet.value(&day)) autocomplete="off" aria-invalid=[sheet.invalid(row)];
            }
        }
    }
}

/// The form of a crew.
pub fn crew_form(view: &View) -> Markup {
    let sheet = view.sheet();
    let (to, back) = match view.name {
        Some(name) => (address::crew(name, "/edit"), address::crew(name, "")),
        None => ("/crews/new".to_owned(), "/crews".to_owned()),
    };
    let units = Units::parse(sheet.value("units")).unwrap_or(view.reader.measure.units);
    let unit = match units {
        Units::Metric => "m³",
        Units::UsCustomary => "yd³",
    };
    let room = [("unit", unit.to_owned().into())];
    let room = view.reader.words.text("crew-form-room", &room);
    let skills = SKILLS.map(|word| (word, sheet.say(&format!("crew-form-skill-{word}"))));
    let speaker = Speaker::new(view.reader.measure);
    let kit: Vec<_> = kit_words()
        .map(|word| (word, tool_name(&speaker, word)))
        .collect();
    let fields = html! {
        input type="hidden" name="units" value=(units.key());
        @if view.name.is_none() { (line(sheet, "crew", "crew_name", "name", Kind::Words)) }
        (line(sheet, "crew", "people", "people", Kind::Whole))
        fieldset {
            legend { (sheet.say("crew-form-start")) }
            (hint(sheet, "crew-form-start-hint"))
            (degrees(sheet, "from_lat", "from_lon"))
            (gates(view))
        }
        fieldset {
            legend { (sheet.say("crew-form-end")) }
            (hint(sheet, "crew-form-end-hint"))
            (degrees(sheet, "to_lat", "to_lon"))
        }
        fieldset {
            legend { (sheet.say("crew-form-hours")) }
            (hint(sheet, "crew-form-hours-hint"))
            (hours(sheet, &HOURS[..1]))
        }
        fieldset {
            legend { (sheet.say("crew-form-skills")) }
            (hint(sheet, "crew-form-skills-hint"))
            (ticks(sheet, "skill-", &skills, "skills_more"))
        }
        fieldset {
            legend { (sheet.say("crew-form-kit")) }
            (ticks(sheet, "kit-", &kit, "kit_more"))
        }
        (sheet.line_with("room", Kind::Decimal, &room, Some(&sheet.say("crew-form-room-hint")), None))
        label.choice {
            input type="checkbox" name="gone" value="yes" checked[!sheet.value("gone").is_empty()];
            span { (sheet.say("crew-form-gone")) }
        }
        (notes(sheet, "crew"))
    };
    view.page("crew", &to, &back, &fields)
}

/// The gates that are known, to copy from.
fn gates(view: &View) -> Markup {
    let known = view
        .sites
        .iter()
        .filter_map(|site| Some((site, site.gate?)));
    let known: Vec<_> = known.collect();
    html! {
        @if !known.is_empty() {
            details.why {
                summary { (view.reader.say("crew-form-gates")) }
                dl.facts {
                    @for (site, gate) in known { dt { (site.name) } dd { (gate.lat) ", " (gate.lon) } }
                }
            }
        }
    }
}

fn ticks(sheet: Sheet, prefix: &str, choices: &[(&str, String)], more: &str) -> Markup {
    html! {
        div.pick {
            @for (word, label) in choices {
                @let name = format!("{prefix}{word}");
                label.choice {
                    input type="checkbox" name=(name) value="yes" checked[!sheet.value(&name).is_empty()];
                    span { (label) }
                }
            }
        }
        (sheet.line_with(more, Kind::Words, &sheet.say("crew-form-more"), None, None))
    }
}
