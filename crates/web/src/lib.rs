//! Pages and JSON API.
