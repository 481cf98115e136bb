//! Sheets of paper: what pages show, as PDF.
