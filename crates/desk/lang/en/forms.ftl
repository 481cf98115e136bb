### Forms: inspections, palms, holds, files in

forms-cancel = Cancel
forms-confirm = Yes, this is right
forms-not-saved-yet = Not saved yet. Please look at this:
forms-could-not-save = It could not be saved just now. What you typed is still here: try again.
forms-draft-restored = This was typed before and has not been saved yet.
forms-draft-discard = Discard it and start afresh
forms-not-sent = Not saved: there is no connection to Spearleaf.
forms-not-sent-kept = What you typed is kept on this device. Try again when you are in range; it is saved once, however often you try.
forms-send-again = Try again

## Inspection

forms-inspect-title = Inspect { $tag }
forms-correct-title = Correct an inspection of { $tag }
forms-stems-nav = Stems
forms-stem-n = Stem { $n }
forms-stem-done = inspected today
forms-save-next-stem = Save, next stem
forms-last-look = Last time, { $date }: { $green } green, { $yellowing } yellowing, { $brown } brown.
forms-last-count = Last time { $n }.
forms-date = Date
forms-spear = Spear
forms-spear-hint = The youngest leaf, still closed, at the top of the crown.
forms-spear-firm = Firm
forms-spear-leaning = Leaning
forms-spear-down = Down
forms-spear-pulled = Pulls out
forms-spear-none = Not looked at
forms-counts = Fronds on the palm
forms-counts-hint = Count before anything is taken off. Leave a count empty if it was not counted: that is not the same as none.
forms-green = Green
forms-green-hint = Wholly green; the spear is not counted.
forms-yellowing = Yellowing
forms-yellowing-hint = Any yellow or dead tissue, not wholly dead.
forms-brown = Brown
forms-brown-hint = Wholly dead, still on the palm.
forms-new_leaves = New since the marked spear
forms-new_leaves-hint = Only if a spear was marked last time.
forms-removed_green = Green taken off
forms-removed_green-hint = After the count, same day.
forms-removed_yellowing = Yellowing taken off
forms-removed_yellowing-hint = After the count, same day.
forms-removed_brown = Brown taken off
forms-removed_brown-hint = After the count, same day.
forms-not-counted = not counted
forms-none = None
forms-clear = Clear
forms-one-less = One less
forms-one-more = One more
forms-taken = Taken off after counting
forms-taken-hint = What the crew took off on this day, after the fronds were counted.
forms-spirals = Find the marked frond by its spiral
forms-spirals-how = Fronds stand in eight spirals. Give the spiral on which the marked frond is now, and its place on it from the top: the new fronds are counted from that.
forms-spirals-source = The count by eight spirals is the oil palm’s (field handbook); check once on your palm that it has eight.
forms-spirals-fill = Fill in the count
forms-spirals-up = The marked frond cannot be higher than when it was marked.
forms-spirals-done = Filled in: new since the marked spear.
forms-spiral = Spiral (1 to 8)
forms-place = Place from the top
forms-marked = Its number when marked
forms-marked-hint = 1 is the youngest open frond, 0 the spear.
forms-clock = Lowest live frond, by the clock
forms-clock-hint = Tap the dial where the lowest live frond points: 12 is straight up, 3 and 9 are level.
forms-clock_left = Left
forms-clock_right = Right
forms-clock-none = not read
forms-clock-higher = A quarter higher
forms-clock-lower = A quarter lower
forms-notes = Notes
forms-withdraw = Take this inspection back
forms-withdraw-hint = For one that was never made, or was made at another palm. It stays in the history, but no longer counts.
forms-why = Why

## Palm

forms-new-title = Register a palm
forms-edit-title = Edit { $tag }
forms-palm-nav = More about this palm
forms-part-what = What it is
forms-part-when = When
forms-part-where = Where it stands
forms-part-own = Your own figures for its crown
forms-part-own-hint = If you know them for this palm, they take the place of the species’ figures everywhere, and are marked as yours.
forms-tag = Tag
forms-tag-hint = Your own mark on the palm; no other palm may carry it.
forms-species = Species
forms-species-hint = Botanical name, or an English one that belongs to one species.
forms-site = Site
forms-stems = Stems
forms-planted_on = Planted on
forms-moved_on = Dug and moved on
forms-last_cleaned_on = All dead fronds last taken off on
forms-trunk_height = Trunk height
forms-trunk_height-hint = From the ground to the base of the crown. Another unit may be written behind the figure: 12 ft 6 in, 3.8 m.
forms-wires = Nearest wire to the crown
forms-wires-hint = Overhead conductor of any kind. Leave empty if there is none, or if you do not know.
forms-wires-caution = Estimate it from the ground. Never measure towards a wire with a pole or a tape.
forms-in-metres = m
forms-in-feet = ft
forms-over = Stands over
forms-over-hint = What lies beneath: path, car park, pool.
forms-lat = Latitude
forms-lat-hint = Decimal degrees, north positive.
forms-lon = Longitude
forms-lon-hint = Decimal degrees, east positive.
forms-locate = Use this device’s position
forms-locate-failed = The device did not give its position.
forms-full_crown = Live fronds in a full crown
forms-fronds_per_year = Fronds it makes a year

## Holds and removal

forms-holds = Holds
forms-holds-title = Holds on { $tag }
forms-holds-what = While a palm is held, nobody cuts it.
forms-hold-set = Set a hold
forms-hold-reason = Reason
forms-hold-reason-keeper = My own reason (say it in the note)
forms-hold-reason-nest = Nest or bats in the crown
forms-hold-reason-wilt-suspect = Wilt suspected
forms-hold-reason-spear = Spear leaning, down or pulled
forms-hold-reason-wires = Too near to wires
forms-hold-since = Since { $date }.
forms-hold-until = Until { $date }.
forms-hold-over = This date has passed: nothing is held any more.
forms-until = Ends by itself after
forms-until-hint = Leave empty if it holds until somebody lifts it.
forms-note = Note
forms-lift = Lift this hold
forms-lift-note = Why it may be lifted
forms-remove = Take out of the register
forms-remove-title = Take { $tag } out of the register
forms-remove-what = For a palm that was felled, sold or entered by mistake. Its history stays in the ledger; its tag becomes free.

## Files in

forms-import-what = Bring in a list of palms, sites or crews, inspections or moves of palms in the register, or weather. First you see what would be taken; nothing is recorded before you say so.
forms-import-file = CSV file
forms-import-file-hint = Palms, inspections, moves, weather, sites or crews; which one is told by its columns. Up to 64 MB.
forms-import-encoding = Encoding
forms-import-utf8 = UTF-8 (usual)
forms-import-look = Look through it
forms-import-columns = Columns
forms-import-columns-palms = Palms: tag and species are needed, the rest may be left out.
forms-import-columns-inspections = Inspections: tag, date, green, yellowing and brown are needed, the rest may be left out.
forms-import-columns-hint = Dates as 2026-03-02, lengths in metres. An empty cell means unknown. Columns with other names are kept with the row.
forms-import-no-file = Choose a file first.
forms-import-too-large = The file could not be taken: it is larger than 64 MB, or it did not arrive whole. Larger files go in by the command line: spearleaf import.
forms-import-gone = This preview is no longer kept; nothing of it was recorded unless you were told so. Choose the file again.
forms-import-neither = This is no list of palms, inspections or moves, nor of weather, sites or crews: palms have a column “species”, inspections a column “green”, moves a column “dug_on”, weather a column “date” and one such as “tmax_c” or “rain_mm”, sites “site” and no “tag”, crews “crew”.
forms-import-preview = What would be taken
forms-import-is-palms = A list of palms.
forms-import-is-inspections = A list of inspections.
forms-import-is-unknown = What this file holds could not be told.
forms-import-will = { $n ->
    [0] No row would be recorded
    [one] { $text } row would be recorded
   *[other] { $text } rows would be recorded
}
forms-import-already = { $n ->
    [one] { $text } row says what the register says already
   *[other] { $text } rows say what the register says already
}
forms-import-refused = { $n ->
    [0] Nothing is refused
    [one] { $text } is refused
   *[other] { $text } are refused
}
forms-import-take = { $n ->
    [one] Record { $text } row
   *[other] Record { $text } rows
}
forms-import-recorded = { $n ->
    [one] { $text } row is recorded.
   *[other] { $text } rows are recorded.
}
forms-import-more = { $n ->
    [one] … and { $text } more.
   *[other] … and { $text } more.
}
forms-import-nothing = There is nothing to record.
forms-import-other = Another file
forms-import-failed = Nothing was recorded: the ledger could not be written, or the register changed meanwhile. Try again, or look the file through anew.
forms-import-refused-head = Not taken
forms-import-refused-what = Mend these rows in the file of refused rows and bring that file in: nothing is lost, and nothing is taken twice.
forms-import-refused-file = Refused rows as a file
forms-import-remarks = Remarks
forms-import-first-rows = The first rows that would be recorded
forms-import-done = Recorded
forms-import-line = Line { $line }:
forms-import-line-column = Line { $line }, { $column }:
forms-import-stems = { $n } stems
forms-import-look-counts = { $green } green, { $yellowing } yellowing, { $brown } brown
forms-import-species-nearest = { $times ->
    [one] “{ $found }” is not a species name that is known here. Nearest: { $nearest }. It is kept as written.
   *[other] “{ $found }” ({ $times } rows) is not a species name that is known here. Nearest: { $nearest }. It is kept as written.
}
forms-import-species-unknown = { $times ->
    [one] “{ $found }” is not a species name that is known here. It is kept as written, and read with a wide guess.
   *[other] “{ $found }” ({ $times } rows) is not a species name that is known here. It is kept as written, and read with a wide guess.
}

## What is wrong with a field

form-count-not-whole = “{ $found }” is no whole number. Leave it empty if it was not counted.
form-count-too-large = At most { $most } can be entered here.
form-number-not-read = “{ $found }” is no number.
form-number-out-of-range = A figure from { $least } to { $most } is expected.
form-length-not-read = “{ $found }” is no length. Write for example 3.8 m or 12 ft 6 in.
form-length-out-of-range = A length from 0 to { $most } is expected.
form-date-missing = The date is missing.
form-date-not-read = “{ $found }” is no date: year-month-day is expected, such as 2026-03-02.
form-date-too-old = This is before 1800. Check the year.
form-date-in-future = This is after today ({ $today }). What has not happened yet cannot be recorded.
form-before-planting = This is before the palm was planted ({ $planted }). Correct the date here or on the palm.
form-clock-left = “{ $found }” is no reading on the left side: it runs from 6 to 12 in quarter hours.
form-clock-right = “{ $found }” is no reading on the right side: it runs from 12 through 3 to 6 in quarter hours.
form-stem-unknown = Stem { $found } was given, but the palm is registered with { $stems ->
    [one] { $stems } stem
   *[other] { $stems } stems
}.
form-spear-unknown = “{ $found }” says nothing about the spear.
form-more-taken-than-counted = { $taken } were taken off, but only { $counted } were counted.
form-nothing-noted = Nothing has been noted yet: count something, look at the spear or write a note.
form-same-day = This stem was already inspected on { $date }. Does this inspection take that one’s place?
form-count-jump = { $live } live fronds now, { $before } on { $date }. Is that right?
form-green-unusual = { $count } green fronds is more than any crown we know of. Is that right?
form-corrects-nothing = The inspection to be corrected is no longer there.
form-spiral-missing = Give the spiral and the place.
form-spiral-moved-up = This place is above frond { $marked }, and a frond never moves up. Look again at the spiral and the place.
form-changed-meanwhile = This palm was changed elsewhere after this form was opened. Saving puts what stands here in its place. Is that right?
form-tag-missing = The tag is missing.
form-tag-unfit = A tag is one line of at most 64 characters.
form-tag-taken = Another palm carries the tag “{ $tag }”.
form-species-missing = The species is missing. If you do not know it, write what you do know: “Phoenix”, “fan palm”.
form-species-nearest = “{ $found }” is not a name we know. Is it one of these: { $nearest }? Or keep it as you wrote it:
form-species-unknown = “{ $found }” is not a name we know. Keep it as you wrote it? The palm is then read with a wide guess.
form-stems-none = A palm has at least one stem.
form-stems-fewer = Stem { $stem } has inspections. Does the palm have fewer stems all the same?
form-position-half = Latitude and longitude belong together: give both or neither.
form-hold-reason-missing = Choose a reason.
form-hold-note-missing = Say what the reason is.
form-hold-already-over = This is before today ({ $today }): the hold would be over already.
form-lift-note-missing = Say why it may be lifted.
form-why-missing = Say why.
