//! In which order to take the palms of one site.
