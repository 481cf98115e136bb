//! The fonts, compiled in, so that a sheet is the same on every machine. Licences lie beside them.

use std::sync::LazyLock;
use typst::foundations::Bytes;
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;

/// Letters that cannot be taken for one another (I, l, 1; O, 0) for tags, then one that knows most scripts of names.
const FILES: [&[u8]; 4] = [
    include_bytes!("../fonts/AtkinsonHyperlegibleNext-Regular.ttf"),
    include_bytes!("../fonts/AtkinsonHyperlegibleNext-Bold.ttf"),
    include_bytes!("../fonts/AtkinsonHyperlegibleNext-Italic.ttf"),
    include_bytes!("../fonts/DejaVuSans.ttf"),
];

static FONTS: LazyLock<(LazyHash<FontBook>, Vec<Font>)> = LazyLock::new(|| {
    let fonts: Vec<Font> = FILES
        .iter()
        .flat_map(|file| Font::iter(Bytes::new(*file)))
        .collect();
    (LazyHash::new(FontBook::from_fonts(&fonts)), fonts)
});

/// What is known of the fonts.
pub(crate) fn book() -> &'static LazyHash<FontBook> {
    &FONTS.0
}

/// A font by its place in the book.
pub(crate) fn font(index: usize) -> Option<Font> {
    FONTS.1.get(index).cloned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_font_file_is_read() {
        assert_eq!(FONTS.1.len(), FILES.len());
    }

    #[test]
    fn the_letters_of_our_languages_need_no_second_font() {
        let regular = &FONTS.1[0];
        for letter in "aábcdeéfghiíjklmnñoópqrstuúüvwxyzÁÉÍÑÓÚÜ¿¡«»“”’–—≥≤°×·%½\u{a0}".chars()
        {
            let known = regular.info().coverage.contains(letter.into());
            assert!(known, "{letter:?}");
        }
    }
}
