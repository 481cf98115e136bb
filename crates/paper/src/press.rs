//! The press: a template and its data in, a PDF out. Everything it may read is in memory.

use crate::fonts;
use crate::{Error, Pdf};
use model::Day;
use serde::Serialize;
use typst::diag::{FileError, FileResult, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Duration, Smart};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World, comemo};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, Timestamp};

/// A template with its name in the world of the press.
#[derive(Clone, Copy)]
pub(crate) struct Template {
    /// Its file name.
    pub name: &'static str,
    /// Its text.
    pub text: &'static str,
}

/// What all templates import.
const COMMON: Template = Template {
    name: "common.typ",
    text: include_str!("../sheets/common.typ"),
};

/// Where a template finds its data.
const DATA: &str = "data.json";

/// Releases of memory: what the compiler remembered and did not need in this many sheets is forgotten.
const REMEMBERED: usize = 4;

/// Sets a sheet and writes it as PDF, dated `day`. The same data give the same bytes.
pub(crate) fn print(template: Template, data: &impl Serialize, day: Day) -> Result<Pdf, Error> {
    let document = set(template, data)?;
    let options = PdfOptions {
        ident: Smart::Custom(format!("spearleaf {}", template.name)),
        creator: Smart::Custom(Some("Spearleaf".to_owned())),
        timestamp: date(day).map(Timestamp::new_utc),
        ..PdfOptions::default()
    };
    let bytes = typst_pdf::pdf(&document, &options).map_err(broken)?;
    let pages = document.pages().len();
    Ok(Pdf { bytes, pages })
}

/// Sets a sheet: pages that are not yet written in any format.
pub(crate) fn set(template: Template, data: &impl Serialize) -> Result<PagedDocument, Error> {
    let data = serde_json::to_vec(data).map_err(|e| Error::Template(e.to_string()))?;
    let shelf = Shelf {
        library: LazyHash::new(Library::default()),
        template,
        data: Bytes::new(data),
    };
    let made = typst::compile::<PagedDocument>(&shelf);
    comemo::evict(REMEMBERED);
    made.output.map_err(broken)
}

fn date(day: Day) -> Option<Datetime> {
    let (year, month, of_month) = day.ymd();
    let (month, of_month) = (u8::try_from(month).ok()?, u8::try_from(of_month).ok()?);
    Datetime::from_ymd_hms(i32::from(year), month, of_month, 0, 0, 0)
}

fn broken(errors: impl IntoIterator<Item = SourceDiagnostic>) -> Error {
    let said: Vec<String> = errors.into_iter().map(|e| e.message.to_string()).collect();
    Error::Template(said.join("; "))
}

/// All that a template can see: itself, what all share, its data, our fonts. No file, no network, no clock.
struct Shelf {
    library: LazyHash<Library>,
    template: Template,
    data: Bytes,
}

fn id(name: &str) -> FileId {
    let path = VirtualPath::new(name).expect("our own file names are plain");
    RootedPath::new(VirtualRoot::Project, path).intern()
}

impl Shelf {
    fn text(&self, wanted: FileId) -> Option<&'static str> {
        [self.template, COMMON]
            .into_iter()
            .find(|t| id(t.name) == wanted)
            .map(|t| t.text)
    }
}

fn nowhere(wanted: FileId) -> FileError {
    FileError::NotFound(wanted.get().vpath().get_without_slash().into())
}

impl World for Shelf {
    fn library(&self) -> &LazyHash<Library> {
        &self.library
    }

    fn book(&self) -> &LazyHash<FontBook> {
        fonts::book()
    }

    fn main(&self) -> FileId {
        id(self.template.name)
    }

    fn source(&self, wanted: FileId) -> FileResult<Source> {
        let text = self.text(wanted).ok_or_else(|| nowhere(wanted))?;
        Ok(Source::new(wanted, text.to_owned()))
    }

    fn file(&self, wanted: FileId) -> FileResult<Bytes> {
        if wanted == id(DATA) {
            return Ok(self.data.clone());
        }
        let text = self.text(wanted).ok_or_else(|| nowhere(wanted))?;
        Ok(Bytes::from_string(text))
    }

    fn font(&self, index: usize) -> Option<Font> {
        fonts::font(index)
    }

    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}
