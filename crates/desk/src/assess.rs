//! Readings and forecasts over many palms, as CSV or JSON.
