//! The import pages: choose a file, see what would be taken, see what was.

use crate::{Here, Reader, page};
use desk::forms::{FileKind, Preview, Shown};
use desk::intake::{CREW_COLUMNS, MOVE_COLUMNS, SITE_COLUMNS, Scope, WEATHER_COLUMNS};
use maud::{Markup, html};
use model::{Inspection, Move, Palm, WeatherDay};

/// Refused rows shown on the page; all of them are in the file.
const REFUSALS_SHOWN: usize = 50;
/// Remarks shown on the page.
const REMARKS_SHOWN: usize = 20;

/// Choose a file; `trouble` is the code of what went wrong before.
pub fn blank(reader: &Reader, trouble: Option<&str>) -> Markup {
    let title = reader.say("common-import");
    let body = html! {
        h1 { (title) }
        @if let Some(code) = trouble { div.trouble.summary role="alert" { p { (reader.say(code)) } } }
        p { (reader.say("forms-import-what")) }
        form.sheet method="post" action="/import" enctype="multipart/form-data" {
            div.field {
                label for="file" { (reader.say("forms-import-file")) }
                p.hint #file-hint { (reader.say("forms-import-file-hint")) }
                input #file type="file" name="file" accept=".csv,text/csv,.txt,.tsv" aria-describedby="file-hint";
            }
            div.field {
                label for="encoding" { (reader.say("forms-import-encoding")) }
                select #encoding name="encoding" {
                    option value="" { (reader.say("forms-import-utf8")) }
                    option value="windows-1252" { "Windows-1252" }
                    option value="utf-16le" { "UTF-16 LE" }
                    option value="utf-16be" { "UTF-16 BE" }
                }
            }
            button.primary type="submit" { (reader.say("forms-import-look")) }
        }
        section.columns {
            h2 { (reader.say("forms-import-columns")) }
            p { (reader.say("forms-import-columns-palms")) }
            p.file-columns { "tag, species, site, stems, planted_on, moved_on, last_cleaned_on, trunk_height_m, lat, lon, over, wires_m, full_crown, fronds_per_year, notes" }
            p { (reader.say("forms-import-columns-inspections")) }
            p.file-columns { "tag, stem, date, green, yellowing, brown, new_leaves, removed_green, removed_yellowing, removed_brown, spear, clock_left, clock_right, signs, absent, notes" }
            p { (reader.say("forms-import-columns-moves")) }
            p.file-columns { (MOVE_COLUMNS.join(", ")) }
            p { (reader.say("sites-import-columns")) }
            p.file-columns { (SITE_COLUMNS.join(", ")) }
            p { (reader.say("sites-import-columns-crews")) }
            p.file-columns { (CREW_COLUMNS.join(", ")) }
            p { (reader.say("forms-import-columns-weather")) }
            p.file-columns { (WEATHER_COLUMNS.join(", ")) }
            p.hint { (reader.say("forms-import-columns-hint")) }
        }
    };
    page(reader, Here::Import, &title, body)
}

/// What would be taken and what not.
pub fn looked_through(
    reader: &Reader,
    id: &str,
    name: &str,
    preview: &Preview,
    failed: bool,
) -> Markup {
    let title = reader.say("forms-import-preview");
    let body = html! {
        h1 { (title) }
        @if failed { div.trouble.summary role="alert" { p { (reader.say("forms-import-failed")) } } }
        p.file-name { (name) }
        (sums(reader, preview))
        @if preview.taken() > 0 {
            form method="post" action={ "/import/" (id) "/take" } {
                button.primary type="submit" { (counted(reader, "forms-import-take", preview.taken())) }
                " " a.button href="/import" { (reader.say("forms-cancel")) }
            }
        } @else { p { (reader.say("forms-import-nothing")) } p { a.button href="/import" { (reader.say("forms-import-other")) } } }
        (refusals(reader, id, preview))
        (remarks(reader, preview))
        (rows(reader, preview))
    };
    page(reader, Here::Import, &title, body)
}

/// What was recorded.
pub fn taken(reader: &Reader, id: &str, name: &str, count: usize, preview: &Preview) -> Markup {
    let title = reader.say("forms-import-done");
    let body = html! {
        h1 { (title) }
        p.file-name { (name) }
        p role="status" { (counted(reader, "forms-import-recorded", count)) }
        p { a.button.primary href="/palms" { (reader.say("common-palms")) } " " a.button href="/import" { (reader.say("forms-import-other")) } }
        (refusals(reader, id, preview))
    };
    page(reader, Here::Import, &title, body)
}

fn counted(reader: &Reader, code: &str, count: usize) -> String {
    reader.words.text(
        code,
        &[
            ("n", (count as i64).into()),
            ("text", reader.measure.count(count as i64).into()),
        ],
    )
}

fn sums(reader: &Reader, preview: &Preview) -> Markup {
    let kind = match preview.kind {
        Some(FileKind::Palms) => "forms-import-is-palms",
        Some(FileKind::Inspections) => "forms-import-is-inspections",
        Some(FileKind::Moves) => "forms-import-is-moves",
        Some(FileKind::Sites) => "sites-import-is-sites",
        Some(FileKind::Crews) => "sites-import-is-crews",
        Some(FileKind::Weather) => "forms-import-is-weather",
        None => "forms-import-is-unknown",
    };
    html! {
        p { (reader.say(kind)) }
        ul.sums {
            li { (counted(reader, "forms-import-will", preview.taken())) }
            @if preview.already > 0 { li { (counted(reader, "forms-import-already", preview.already)) } }
            li { (counted(reader, "forms-import-refused", preview.refusals.len())) }
        }
    }
}

fn refusals(reader: &Reader, id: &str, preview: &Preview) -> Markup {
    let any_rows = preview
        .refusals
        .iter()
        .any(|refusal| refusal.scope == Scope::Row);
    html! {
        @if !preview.refusals.is_empty() {
            section.refused {
                h2 { (reader.say("forms-import-refused-head")) }
                @if any_rows {
                    p { (reader.say("forms-import-refused-what")) }
                    p { a.button href={ "/import/" (id) "/refused.csv" } download="refused.csv" { (reader.say("forms-import-refused-file")) } }
                }
                ul.refusals {
                    @for refusal in preview.refusals.iter().take(REFUSALS_SHOWN) {
                        li {
                            strong { (place(reader, refusal.line, &refusal.column)) }
                            " " (reader.words.finding(&refusal.finding, &reader.measure))
                        }
                    }
                }
                @if preview.refusals.len() > REFUSALS_SHOWN { p { (counted(reader, "forms-import-more", preview.refusals.len() - REFUSALS_SHOWN)) } }
            }
        }
    }
}

fn place(reader: &Reader, line: u64, column: &str) -> String {
    let line = ("line", line.to_string().into());
    match column {
        "" => reader.words.text("forms-import-line", &[line]),
        column => reader.words.text(
            "forms-import-line-column",
            &[line, ("column", column.to_owned().into())],
        ),
    }
}

fn remarks(reader: &Reader, preview: &Preview) -> Markup {
    html! {
        @if !preview.remarks.is_empty() {
            section.remarks {
                h2 { (reader.say("forms-import-remarks")) }
                ul {
                    @for (line, finding) in preview.remarks.iter().take(REMARKS_SHOWN) {
                        li {
                            @if *line > 0 { strong { (place(reader, *line, "")) } " " }
                            (reader.words.finding(finding, &reader.measure))
                        }
                    }
                }
                @if preview.remarks.len() > REMARKS_SHOWN { p { (counted(reader, "forms-import-more", preview.remarks.len() - REMARKS_SHOWN)) } }
            }
        }
    }
}

fn rows(reader: &Reader, preview: &Preview) -> Markup {
    html! {
        @if !preview.shown.is_empty() {
            section.taken {
                h2 { (reader.say("forms-import-first-rows")) }
                ul.rows { @for (line, shown) in &preview.shown { li { (row(reader, *line, shown)) } } }
            }
        }
    }
}

fn row(reader: &Reader, line: u64, shown: &Shown) -> Markup {
    html! {
        span.line { (place(reader, line, "")) } " "
        @match shown {
            Shown::Palm(palm) => (palm_row(reader, palm)),
            Shown::Look(tag, look) => (look_row(reader, tag, look)),
            Shown::Moved(tag, moved) => (move_row(reader, tag, moved)),
            Shown::Site(site) => { strong { (site.name) } @if !site.owner.is_empty() { " · " (site.owner) } },
            Shown::Crew(crew) => { strong { (crew.name) } @if !crew.skills.is_empty() { " · " (crew.skills.join(", ")) } },
            Shown::Weather(day) => (weather_row(reader, day)),
        }
    }
}

fn palm_row(reader: &Reader, palm: &Palm) -> Markup {
    html! {
        strong { (palm.tag) } " " i { (palm.species) }
        @if !palm.site.is_empty() { " · " (palm.site) }
        @if palm.stems > 1 { " · " (reader.words.text("forms-import-stems", &[("n", palm.stems.into())])) }
        @if let Some(height) = palm.trunk_height { " · " (reader.measure.length(height)) }
    }
}

fn move_row(reader: &Reader, tag: &str, moved: &Move) -> Markup {
    let dug = [("date", reader.measure.date(moved.dug_on).into())];
    html! {
        strong { (tag) } " · " (reader.words.text("forms-import-moved", &dug))
        @if !moved.from.is_empty() { " · " (moved.from) }
    }
}

fn weather_row(reader: &Reader, day: &WeatherDay) -> Markup {
    let m = &reader.measure;
    let warmth = |t: Option<f64>| t.map(|t| m.temperature(t));
    html! {
        strong { (m.date(day.day)) }
        @if !day.site.is_empty() { " · " (day.site) }
        @if let (Some(low), Some(high)) = (warmth(day.t_min), warmth(day.t_max)) { " · " (low) " – " (high) }
        @if let Some(mm) = day.rain { " · " (reader.words.text("forms-import-rain", &[("rain", m.water_height(mm, mm).into())])) }
    }
}

fn look_row(reader: &Reader, tag: &str, look: &Inspection) -> Markup {
    let n =
        |count: Option<u32>| count.map_or_else(|| reader.say("common-unknown"), |n| n.to_string());
    let args = [
        ("green", n(look.green).into()),
        ("yellowing", n(look.yellowing).into()),
        ("brown", n(look.brown).into()),
    ];
    html! {
        strong { (tag) }
        @if look.stem > 1 { " · " (reader.words.text("forms-stem-n", &[("n", look.stem.into())])) }
        " · " (reader.measure.date(look.date)) " · " (reader.words.text("forms-import-look-counts", &args))
    }
}
