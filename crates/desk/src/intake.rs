//! CSV files in: palms, inspections, climate; every bad row a refusal with line, column, what was found and what was
//! expected.
//!
//! Each reader takes any [`std::io::Read`], opens by reading the header, and is an iterator over
//! `Result<Row<T>, Refusal>`. A refusal of scope [`Scope::File`] is always the last item. Memory is bounded by one
//! row (64 KiB) and, for doubled tags and doubled days, by one small key per row.
//!
//! ```
//! use spearleaf_desk::intake::PalmReader;
//! let file = "tag,species,stems\nA-1,Sabal palmetto,1\nA-2,Sabal palmetto,-3\n";
//! let rows: Vec<_> = PalmReader::open(file.as_bytes()).unwrap().collect();
//! assert_eq!(rows[0].as_ref().unwrap().value.tag, "A-1");
//! let refusal = rows[1].as_ref().unwrap_err();
//! assert_eq!((refusal.line, refusal.column.as_str(), refusal.finding.code), (3, "stems", "intake-negative"));
//! ```

mod cells;
mod climate;
mod encoding;
mod inspections;
mod known;
mod log;
mod logging;
mod moves;
mod palms;
mod reads;
mod record;
mod records;
mod refusal;
mod refused_file;
mod round;
mod signs;
mod sites;
mod table;
mod touches;
mod travel;
mod weather;

pub use climate::{ClimateReader, ClimateRow, climates};
pub use encoding::decode;
pub use inspections::{InspectionReader, InspectionRow};
pub use known::Known;
pub use log::{BladeReader, CleaningReader, CleaningRow, CutReader, CutRow};
pub use logging::Logging;
pub use moves::{MOVE_COLUMNS, MoveReader, MoveRow};
pub use palms::PalmReader;
pub use record::{Fate, Importing};
pub use records::{MAX_COLUMNS, MAX_RECORD};
pub use refusal::{Fault, Refusal, Row, Scope};
pub use refused_file::RefusedFile;
pub use round::{RoundReader, RoundRow};
pub use signs::{SignsReader, SignsRow};
pub use sites::{CREW_COLUMNS, CrewReader, SITE_COLUMNS, SiteReader};
pub use touches::{TouchReader, TouchRow, TouchWhat};
pub use travel::{TRAVEL_COLUMNS, TravelReader, TravelRow, TravelTable};
pub use weather::{WEATHER_COLUMNS, WeatherReader};

use model::Finding;

#[cfg(test)]
mod tests;

/// What a reader can say about its file besides the rows.
pub trait About {
    /// Header cells as they came.
    fn headers(&self) -> &[String];
    /// Refuses the row read last, for a reason found outside the file.
    fn refuse(&self, fault: Fault) -> Refusal;
    /// Columns this version does not know, kept in `extra`.
    fn unknown_columns(&self) -> Vec<&str>;
    /// Remarks on the file as a whole, complete once the rows have been read.
    fn remarks(&self) -> Vec<Finding>;
}
