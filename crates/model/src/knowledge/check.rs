//! What must hold of the tables.
use super::Knowledge;
use super::load::Flaw;
use super::tables::Tables;

/// All that is wrong with the tables, in the order of tables and lines.
pub fn check(tables: &Tables) -> Vec<Flaw> {
    let (_, mut flaws) = Knowledge::from_tables(tables);
    flaws.sort();
    flaws
}
