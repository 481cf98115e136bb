//! What the pages and sheets show, as plain values: chosen, ordered, written out; nothing is left to compute.

pub mod api;
mod asked;
pub mod blades;
pub(crate) mod case;
pub mod cautions;
pub mod charts;
pub mod crews;
mod crowns;
mod cutting;
pub mod disorders;
pub mod drawing;
pub mod estimating;
mod expect;
mod facts;
pub mod feeding;
mod history;
pub mod judgement;
mod loss;
pub mod moved;
pub mod needs;
mod outlook;
pub mod owner;
pub mod owner_summary;
pub mod paging;
pub mod palm;
pub mod palms;
pub mod picker;
mod plane;
pub mod reach;
pub mod rotation;
pub mod rounds;
mod said;
pub mod season;
pub mod sites;
pub mod source_list;
pub mod standing;
pub mod today;
pub mod tracing;
pub mod walk;
pub mod watering;

pub use asked::{Answer, Question};
pub use case::DEFAULT_VISIT_DAYS;
pub use crowns::{CrownFrames, Mode, WEEKS, class};
pub use cutting::{CuttingView, Line};
pub use expect::{Bar, Learned, ReadingView};
pub use facts::Fact;
pub use history::Event;
pub use loss::LossView;
pub use outlook::{COLUMNS, Cell, OutlookRow};
pub use said::{Cited, Otherwise, Said, Speaker};

#[cfg(test)]
mod testing;
#[cfg(test)]
mod tests;
