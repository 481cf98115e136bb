//! Eyes for tests: what a sheet says and how it looks, through libraries from outside the project.

use crate::Pdf;
use crate::leaf::{Leaf, Size};
use desk::measure::{Measure, Units};
use desk::words::{Lang, Words};
use model::Day;
use typst_layout::PagedDocument;
use typst_render::RenderOptions;

/// A leaf of a size for a reader; US customary units go with Letter.
pub(crate) fn leaf(lang: Lang, size: Size) -> Leaf {
    let units = match size {
        Size::A4 => Units::Metric,
        Size::Letter => Units::UsCustomary,
    };
    Leaf {
        size,
        measure: Measure::new(units, Words::new(lang)),
        day: Day::from_ymd(2026, 3, 2).unwrap(),
        demo: false,
    }
}

/// The text of a PDF as `pdf-extract` reads it, white space made one blank.
pub(crate) fn text_of(pdf: &Pdf) -> String {
    let text = pdf_extract::extract_text_from_mem(&pdf.bytes).unwrap();
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A page as pixels.
pub(crate) struct Picture {
    width: usize,
    grey: Vec<u8>,
}

impl Picture {
    /// Brightness of one.
    pub fn grey(&self, x: usize, y: usize) -> u8 {
        self.grey[y * self.width + x]
    }
}

/// The pages at so many pixels a point.
pub(crate) fn pictures(document: &PagedDocument, scale: f64) -> Vec<Picture> {
    let options = RenderOptions {
        pixel_per_pt: scale.into(),
        ..RenderOptions::default()
    };
    let draw = |page| {
        let map = typst_render::render(page, &options);
        Picture {
            width: map.width() as usize,
            grey: map
                .pixels()
                .iter()
                .map(|p| {
                    ((u32::from(p.red()) + u32::from(p.green()) + u32::from(p.blue())) / 3) as u8
                })
                .collect(),
        }
    };
    document.pages().iter().map(draw).collect()
}

/// What a QR reader (`rqrr`) reads off all pages, page by page.
pub(crate) fn codes_on(document: &PagedDocument) -> Vec<String> {
    let mut read = Vec::new();
    for page in pictures(document, 2.0) {
        let (width, height) = (page.width, page.grey.len() / page.width);
        let at = |x, y| page.grey(x, y);
        let mut grey = rqrr::PreparedImage::prepare_from_greyscale(width, height, at);
        let grids = grey.detect_grids();
        read.extend(grids.iter().filter_map(|grid| Some(grid.decode().ok()?.1)));
    }
    read
}
