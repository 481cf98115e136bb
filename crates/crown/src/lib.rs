//! The living crown: leaf clock, frond life, fit to counts, forecast.
