//! Open formats out of the ledger.
