//! The memory engine keeps what every engine promises.

use spearleaf_ledger as ledger;

#[test]
fn the_memory_engine_conforms() {
    ledger::conformance::run(&|| Box::new(ledger::Memory::new()));
}
