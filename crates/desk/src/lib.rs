//! Use cases and views: the only place where the core meets the world (clock, ids, files come in here).

pub mod assess;
pub mod blades;
pub mod clock;
pub mod day_rounds;
pub mod demo;
pub mod export;
pub mod feeding;
pub mod forms;
pub mod grounds;
pub mod health;
pub mod intake;
pub mod judging;
pub mod measure;
pub mod moved;
pub mod office;
pub mod owner;
pub mod reaching;
pub mod rotating;
pub mod season;
pub mod timetable;
pub mod tracing;
pub mod views;
pub mod walk;
pub mod watering;
pub mod words;
pub mod world;
