//! The port to storage: append entries, read entries, memory engine, wire records, conformance.
