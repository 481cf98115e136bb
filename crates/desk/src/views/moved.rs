//! Moved palms as pages show them: the list, one palm's move, and specimens side by side.

mod before;
mod list;
mod plan;
pub mod selection;
#[cfg(test)]
mod tests;

pub use before::{Asked, BeforeView, Figure, Group, MassRow, Row};
pub use list::{MovedRow, MovedView, json, view};
pub(crate) use plan::facts;
pub(super) use plan::usual;
pub use plan::{LookRow, MovePage, NotedMove, PromiseView, next_look, page, promise_of};
