//! What a person typed into a form, checked into entries.
//!
//! A form keeps what was typed ([`Typed`]); checking gives model values or [`Trouble`]s, each at its field.
//! A trouble that may be confirmed has the severity `Caution`; ticking its box (see [`confirm_name`]) lets it pass.

mod blade;
mod blade_save;
mod cleaning;
mod crew;
mod cutting;
mod feeding;
mod field;
mod hold;
mod import;
mod inspection;
mod length;
mod moving;
mod offers;
mod owner;
mod palm;
mod prices;
mod rounds;
mod rows;
mod save;
pub mod signs;
mod site;
mod site_save;
mod species;
mod spiral;
mod thread;
mod watering;

pub use blade::{Rack, blade, kind_word, typed_blade};
pub use blade_save::{
    held_at, save_bath, save_blade, save_cleanings, save_cut, save_lent, save_retired,
    save_returned, start_soaking,
};
pub use cleaning::{AtBath, Soaking, bath, blade_box, blade_entry, cleanings, soaking};
pub use crew::{AtCrew, SKILLS, crew, kit_words, typed_crew};
pub use cutting::{AtPalm, cut, is_clean};
pub use feeding::{fed, fed_of, read_grams, save_fed, typed_fed};
pub use hold::{HOLD_REASONS, hold, lift, remove};
pub use import::{FileKind, Preview, SHOWN, Shown, preview, take};
pub use inspection::{About, MOST_FRONDS, inspection, typed_inspection};
pub use length::{read_length, write_length};
pub use moving::{AtMove, SOILS, move_of, moving, save_move, typed_move};
pub use offers::{Offer, baths_in_use, mixes, offers};
pub use owner::{Given, owner_link, save_link, save_revoked};
pub use palm::{Register, palm, seen_mark, typed_palm};
pub use prices::{own_figures, own_prices, prices, save_prices, typed_prices};
pub use rounds::{
    SKIP_REASONS, call_off_round, keep_rounds, round_ask, save_round_step, usual_tasks,
};
pub use rows::{CLOSED, FEEDING, HOURS, rows_shown};
pub(crate) use save::BY;
pub use save::{
    Stop, entry_id, look_of, nearest, new_palm, save_hold, save_inspection, save_lift, save_palm,
    save_removal, withdraw_inspection,
};
pub use signs::{ABSENT, SEEN, SIGN_FIELD};
pub use site::{AtSite, LONGEST_NAME, site, typed_site};
pub use site_save::{save_crew, save_site};
pub use species::species_like;
pub use spiral::{PLACES, new_by_spiral, spiral_numbers};
pub use watering::{
    read_litres, save_watering, typed_watering, watering, watering_of, withdraw_tending,
};

use model::{Finding, Severity};
use std::collections::BTreeMap;

/// Text as it was typed, by field name. A field that is absent and a field that is empty are the same: nothing typed.
#[derive(Clone, Default, PartialEq, Debug)]
pub struct Typed(BTreeMap<String, String>);

impl Typed {
    /// From the pairs of a sent form; a name sent twice keeps its last value.
    pub fn of<N: Into<String>, V: Into<String>>(pairs: impl IntoIterator<Item = (N, V)>) -> Typed {
        Typed(
            pairs
                .into_iter()
                .map(|(name, value)| (name.into(), value.into()))
                .collect(),
        )
    }

    /// What was typed into a field, without the blanks around it; empty if nothing was.
    pub fn get(&self, name: &str) -> &str {
        self.0.get(name).map_or("", |value| value.trim())
    }

    /// Writes a field.
    pub fn set(&mut self, name: &str, value: impl Into<String>) {
        self.0.insert(name.to_owned(), value.into());
    }

    /// Fields whose name begins with this: the rest of the name, and what was typed without the blanks around it.
    pub fn below<'t>(&'t self, prefix: &'t str) -> impl Iterator<Item = (&'t str, &'t str)> {
        let from = self.0.range(prefix.to_owned()..);
        let own =
            from.map_while(move |(name, value)| Some((name.strip_prefix(prefix)?, value.trim())));
        own.filter(|(rest, _)| !rest.is_empty())
    }

    /// Whether anything was typed into any of these fields.
    pub fn any(&self, names: &[&str]) -> bool {
        names.iter().any(|name| !self.get(name).is_empty())
    }

    /// Whether the box that confirms this finding was ticked.
    pub fn confirms(&self, finding: &Finding) -> bool {
        !self.get(&confirm_name(finding.code)).is_empty()
    }
}

/// Name of the box which, ticked, lets a finding of this code pass.
pub fn confirm_name(code: &str) -> String {
    format!("confirm-{code}")
}

/// Something about one field.
#[derive(Clone, PartialEq, Debug)]
pub struct Trouble {
    /// Name of the field; empty when it is about the whole form.
    pub field: &'static str,
    /// What is wrong and what to do.
    pub finding: Finding,
}

impl Trouble {
    /// Whether the person may say "yes, I mean it".
    pub fn may_confirm(&self) -> bool {
        self.finding.severity < Severity::Refuse
    }
}

/// The troubles of one form while it is being checked.
#[derive(Default)]
struct Troubles(Vec<Trouble>);

impl Troubles {
    /// Something that must be put right.
    fn refuse(&mut self, field: &'static str, code: &'static str) {
        self.add(field, Finding::new(code, Severity::Refuse));
    }

    /// A finding at a field.
    fn add(&mut self, field: &'static str, finding: Finding) {
        self.0.push(Trouble { field, finding });
    }

    /// Something that may be meant; passes once it is confirmed.
    fn ask(&mut self, typed: &Typed, field: &'static str, finding: Finding) {
        if !typed.confirms(&finding) {
            self.add(field, finding);
        }
    }

    /// The value, if nothing stands against it.
    fn or<T>(self, value: T) -> Result<T, Vec<Trouble>> {
        if self.0.is_empty() {
            Ok(value)
        } else {
            Err(self.0)
        }
    }
}

#[cfg(test)]
pub(crate) fn codes<T: std::fmt::Debug>(
    result: Result<T, Vec<Trouble>>,
) -> Vec<(&'static str, &'static str)> {
    result
        .expect_err("should be refused")
        .iter()
        .map(|t| (t.field, t.finding.code))
        .collect()
}

#[cfg(test)]
mod tests {
    use crate::words::{Lang, Words};

    /// The sources are read for their codes, so that a new one without words is caught.
    #[test]
    fn every_code_of_the_forms_has_words_in_every_language() {
        let sources = [
            include_str!("forms/blade.rs"),
            include_str!("forms/blade_save.rs"),
            include_str!("forms/cleaning.rs"),
            include_str!("forms/crew.rs"),
            include_str!("forms/cutting.rs"),
            include_str!("forms/feeding.rs"),
            include_str!("forms/field.rs"),
            include_str!("forms/hold.rs"),
            include_str!("forms/import.rs"),
            include_str!("forms/inspection.rs"),
            include_str!("forms/moving.rs"),
            include_str!("forms/owner.rs"),
            include_str!("forms/palm.rs"),
            include_str!("forms/prices.rs"),
            include_str!("forms/rows.rs"),
            include_str!("forms/save.rs"),
            include_str!("forms/signs.rs"),
            include_str!("forms/site.rs"),
            include_str!("forms/spiral.rs"),
            include_str!("forms/watering.rs"),
        ];
        let codes: Vec<&str> = sources
            .iter()
            .flat_map(|text| text.split("\"form").skip(1))
            .filter_map(|rest| rest.split('"').next())
            .filter(|rest| rest.starts_with('-') || rest.starts_with("s-"))
            .collect();
        assert!(codes.len() > 40, "the codes were not found: {codes:?}");
        for lang in Lang::ALL {
            let words = Words::new(lang);
            let bare: Vec<_> = codes
                .iter()
                .filter(|rest| !words.has(&format!("form{rest}")))
                .collect();
            assert!(bare.is_empty(), "no words in {}: {bare:?}", lang.tag());
        }
    }
}
