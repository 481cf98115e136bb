//! Watering as pages show it: who wants water today and this week, and one palm's plan.

mod list;
mod plan;
mod reckoned;
#[cfg(test)]
mod tests;

pub use list::{Group, SiteLink, WaterRow, WateringView, json, view};
pub use plan::{AheadRow, LogRow, PastRow, TaperRow, WaterPage, give_on, page};
pub use reckoned::{FactorLine, Gap, StepLine};
