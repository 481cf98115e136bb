//! Words per language for codes and labels, from Fluent files.
