//! QR codes (ISO/IEC 18004) as vector pictures.

use fast_qr::{ECL, QRBuilder};
use std::fmt::Write;

/// White modules on each side: the standard asks for four.
const QUIET: usize = 4;

/// The longest content, bytes: beyond it the modules of a label get too fine for a phone.
pub(crate) const LONGEST: usize = 180;

/// An SVG picture of a code, quiet zone included; `None` if the content is too long. A quarter of it may be scratched
/// or under mud and it still reads.
pub(crate) fn svg(content: &str) -> Option<String> {
    if content.len() > LONGEST {
        return None;
    }
    let code = QRBuilder::new(content).ecl(ECL::Q).build().ok()?;
    let (size, whole) = (code.size, code.size + 2 * QUIET);
    // one path: parts that touch then leave no hairline between them
    let mut path = String::new();
    for row in 0..size {
        let mut column = 0;
        while column < size {
            let run = (column..size).take_while(|c| code[row][*c].value()).count();
            if run > 0 {
                let (x, y) = (column + QUIET, row + QUIET);
                write!(path, "M{x} {y}h{run}v1h-{run}z").ok()?;
            }
            column += run.max(1);
        }
    }
    Some(format!(
        r##"<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {whole} {whole}"><path d="M0 0h{whole}v{whole}h-{whole}z" fill="#fff"/><path d="{path}" fill="#000"/></svg>"##
    ))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn too_much_for_a_label_is_refused() {
        assert!(svg(&"a".repeat(LONGEST)).is_some());
        assert!(svg(&"a".repeat(LONGEST + 1)).is_none());
    }
}
