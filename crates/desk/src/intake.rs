//! CSV files in: palms, inspections, climate; every bad row a refusal with file, line, column.
