//! The world as the core is told it: a clock and a maker of ids.

use model::{Day, Moment};
use uuid::Uuid;

/// Clock, ids and the name of this device. Tests pass a fixed one.
pub struct World {
    /// Now.
    pub now: Box<dyn Fn() -> Moment + Send + Sync>,
    /// "Today" when it is fixed from outside (`--as-of`); else the day of `now` in the local zone.
    pub as_of: Option<Day>,
    /// A fresh UUID v7.
    pub new_id: Box<dyn Fn() -> Uuid + Send + Sync>,
    /// Name of this device, written into entries.
    pub device: String,
}
