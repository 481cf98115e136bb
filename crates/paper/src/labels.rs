//! Labels with QR codes, for blades and palms: scan one, and the phone opens its page.

mod choose;

pub use choose::{Choice, Groups, blade_labels, groups, palm_labels};

use crate::leaf::{Frame, Leaf};
use crate::press::{self, Template};
use crate::{Error, Pdf, qr};
use percent_encoding::{AsciiSet, NON_ALPHANUMERIC, utf8_percent_encode};
use serde::Serialize;

/// Most labels in one file; a thousand palms at a time is what a printer takes.
const MOST: usize = 1_000;

/// What an address leaves as it is (RFC 3986, unreserved).
const KEPT: &AsciiSet = &NON_ALPHANUMERIC
    .remove(b'-')
    .remove(b'_')
    .remove(b'.')
    .remove(b'~');

/// One label before it is set.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Label {
    /// In large letters.
    pub tag: String,
    /// Below it, in small ones; empty lines are left out.
    pub lines: Vec<String>,
    /// The page it leads to, without the base: begins with `/`.
    pub path: String,
}

impl Label {
    /// The label of a blade.
    pub fn blade(leaf: &Leaf, blade: &model::Blade) -> Label {
        let word = model::BladeKind::ALL
            .iter()
            .find(|(kind, _)| *kind == blade.kind && *kind != model::BladeKind::Unknown)
            .map_or("", |(_, word)| word);
        let kind = match word {
            "" => String::new(),
            word => leaf.say(&format!("sheet-blade-{word}")),
        };
        let kit = match blade.kit.as_str() {
            "" => String::new(),
            kit => leaf.text("sheet-kit", &[("kit", kit.to_owned().into())]),
        };
        Label::to("/blades/", &blade.tag, vec![kind, kit])
    }

    /// The label of a palm.
    pub fn palm(palm: &model::Palm) -> Label {
        Label::to(
            "/palm/",
            &palm.tag,
            vec![palm.species.clone(), palm.site.clone()],
        )
    }

    fn to(folder: &str, tag: &str, lines: Vec<String>) -> Label {
        Label {
            tag: tag.to_owned(),
            lines: lines.into_iter().filter(|l| !l.is_empty()).collect(),
            path: format!("{folder}{}", utf8_percent_encode(tag, KEPT)),
        }
    }
}

/// A sheet of labels, 64 × 34 mm each. `base` is what comes before the path of every page, such as
/// `http://yard.example:7474`.
pub fn labels(leaf: &Leaf, base: &str, labels: &[Label]) -> Result<Pdf, Error> {
    press::print(TEMPLATE, &sheet(leaf, base, labels)?, leaf.day)
}

const TEMPLATE: Template = Template {
    name: "labels.typ",
    text: include_str!("../sheets/labels.typ"),
};

#[derive(Serialize)]
struct Sheet {
    frame: Frame,
    about: String,
    labels: Vec<Set>,
}

#[derive(Serialize)]
struct Set {
    tag: String,
    lines: Vec<String>,
    address: String,
    /// The address as people write it.
    shown: String,
    code: String,
}

fn sheet(leaf: &Leaf, base: &str, labels: &[Label]) -> Result<Sheet, Error> {
    let base = checked(base)?;
    match labels.len() {
        0 => return Err(Error::Empty),
        found if found > MOST => return Err(Error::TooMany { found, limit: MOST }),
        _ => {}
    }
    Ok(Sheet {
        frame: leaf.frame(&leaf.say("sheet-labels-title")),
        about: leaf.text("sheet-labels-about", &[("base", base.to_owned().into())]),
        labels: labels
            .iter()
            .map(|label| set(base, label))
            .collect::<Result<_, _>>()?,
    })
}

fn set(base: &str, label: &Label) -> Result<Set, Error> {
    let address = format!("{base}{}", label.path);
    let code = qr::svg(&address).ok_or_else(|| Error::TooLong(label.tag.clone()))?;
    Ok(Set {
        tag: label.tag.clone(),
        lines: label.lines.clone(),
        shown: address
            .split_once("://")
            .map_or("", |(_, rest)| rest)
            .to_owned(),
        address,
        code,
    })
}

/// A base without its last slash; refused if it is not `http://` or `https://` and a host.
fn checked(base: &str) -> Result<&str, Error> {
    let base = base.trim().trim_end_matches('/');
    let rest = base
        .strip_prefix("http://")
        .or_else(|| base.strip_prefix("https://"));
    let plain = |c: char| c.is_ascii_graphic() && !"\"<>\\^`{|}?#@".contains(c);
    match rest {
        Some(host)
            if !host.is_empty() && !host.starts_with(['/', ':']) && host.chars().all(plain) =>
        {
            Ok(base)
        }
        _ => Err(Error::Base(base.to_owned())),
    }
}

#[cfg(test)]
mod tests;
