### Files that come in: why a file or a row is not taken, and remarks on what is

intake-where-file = { $file }
intake-where-line = { $file }, line { $line }
intake-where-cell = { $file }, line { $line }, column { $column }
intake-refused = { $where }: { $what }

## Whole files

intake-empty-file = The file is empty. A header line with the column names and at least one row were expected.
intake-utf16 = This is UTF-16 text; UTF-8 was expected. Save it as “CSV UTF-8”, or say --encoding utf-16le (or utf-16be).
intake-not-utf8 = Byte { $byte } in line { $line } (after “{ $before }”) is not UTF-8 text. Save the file as “CSV UTF-8”, or name its encoding, for example --encoding windows-1252.
intake-not-text = This is not a text file: it holds control characters. A CSV file was expected.
intake-row-too-long = A row longer than { $limit } bytes was found. Either this is not a CSV file, or a quotation mark in this row is never closed.
intake-too-many-columns = More than { $limit } columns were found. This is not a palm or inspection file.
intake-unreadable = The file could not be read: { $why }
intake-doubled-column = The column “{ $column }” is there twice. Keep one and take the other out or rename it.
intake-missing-columns = Columns are missing: { $columns }. Found: { $found }.
intake-missing-columns-near = Columns are missing: { $columns }. Found: { $found }. Is “{ $near }” a slip of the pen?

## Rows

intake-too-many-cells = The row has { $have } cells, the header has { $want }. A comma inside a cell needs quotation marks around the cell.
intake-too-few-cells = The row has { $have } cells, the header has { $want }. Leave unknown cells empty but keep their commas.
intake-no-tag = The tag is missing. Every row needs the tag of its palm.
intake-bad-tag = “{ $found }” is no tag: one line of at most 64 characters was expected.
intake-doubled-tag = The tag “{ $found }” is already on line { $first }. Every palm needs a tag of its own.
intake-text-too-long = The text is longer than { $limit } characters. Shorten it.
intake-bad-date = “{ $found }” is no date: year-month-day was expected, such as 2026-03-02.
intake-bad-date-offer = “{ $found }” is no date: year-month-day was expected. Was { $offer } meant?
intake-date-too-old = “{ $found }” is before 1800. Check the year.
intake-date-in-future = { $found } is after today ({ $today }). What has not happened yet cannot be recorded.
intake-not-whole = “{ $found }” is no whole number. Leave the cell empty if it was not counted.
intake-negative = “{ $found }” is below zero. A count starts at 0; leave the cell empty if it was not counted.
intake-too-many = “{ $found }” is more than { $limit }. Check the figure.
intake-not-number = “{ $found }” is no number. Write figures with a decimal point and without a unit.
intake-decimal-comma = “{ $found }” has a comma. Write a decimal point and no thousands mark, such as 3.5.
intake-out-of-range = “{ $found }” is outside { $low } to { $high }. Check the figure and its unit.
intake-no-stem = “{ $found }” stems cannot be: a palm has at least one. Leave the cell empty if there is just one.
intake-half-position = Latitude and longitude belong together: give both or neither.
intake-unknown-palm = There is no palm with the tag “{ $found }”.
intake-unknown-palm-near = There is no palm with the tag “{ $found }”. Was “{ $offer }” meant?
intake-which-stem = The palm has { $stems } stems; say which one was counted, from 1 to { $stems }.
intake-no-such-stem = Stem { $found } was found, but the palm is registered with { $stems ->
    [one] { $stems } stem
   *[other] { $stems } stems
}. Mend the number here or the number of stems of the palm.
intake-no-date = The date is missing. Every inspection needs its day.
intake-before-planting = { $found } is before the palm was planted ({ $planted }).
intake-bad-spear = “{ $found }” says nothing about the spear; one of these was expected: { $words }.
intake-bad-clock = “{ $found }” is no clock reading: hours above 0 and up to 12 in quarters were expected, such as 8.5.
intake-clock-side = “{ $found }” is on the other side of the dial: the left side runs from 6 to 12, the right side is 12 or 0.25 to 6.
intake-more-off-than-on = { $found } were taken off, but only { $counted } were counted.
intake-twice-a-day = This stem was already inspected on { $found } in line { $first }. Keep one of the two.
intake-bad-month = “{ $found }” is no month: a number from 1 to 12 was expected.
intake-doubled-month = Month { $found } of this site is already on line { $first }.
intake-tag-registered = The register already has a palm “{ $found }” that is described otherwise. Change it on its own page, or take the row out.
intake-day-registered = The register already has another inspection of this stem on { $found }. Correct that one on its own page, or take the row out.

## Remarks

intake-unknown-column = The column “{ $column }” is not known here; its cells are kept as they are.
intake-blank-rows = { $count ->
    [one] { $count } empty row was passed over.
   *[other] { $count } empty rows were passed over.
}
intake-separator = The cells are separated by a { $separator } instead of a comma; that was taken.
intake-semicolon = semicolon
intake-tab = tab
intake-out-of-order = { $count ->
    [one] { $count } inspection stands after a later one of the same stem; they were sorted by date.
   *[other] { $count } inspections stand after a later one of the same stem; they were sorted by date.
}
intake-moved-long-before-planted = It was moved on { $moved } but planted only on { $planted }, more than a year later. Check both dates.
intake-climate-incomplete = Site “{ $site }” lacks a mean temperature for some month; the standard season is taken for it.
