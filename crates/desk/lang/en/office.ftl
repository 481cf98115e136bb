### Why the office does not record something, and what is wrong with entries that are recorded

## A palm

tag-taken = The tag “{ $tag }” is on another palm already. Give this palm a tag of its own, or take the other one off the register first.
tag-malformed = “{ $tag }” is no tag: 1 to { $limit } characters without spaces before or after were expected.
palm-unknown = There is no such palm in the register. Register it first.
stems-absurd = { $tag }: { $found } stems cannot be; 1 to { $limit } were expected.
figure-out-of-range = { $tag }: a height, a distance, a position or a number of fronds is out of range. Check the figures and their units.
date-in-future = { $tag }: { $date } is after today ({ $today }). What has not happened yet cannot be recorded.
date-too-early = { $tag }: { $date } is before 1800. Check the year.

## An inspection

stem-out-of-range = { $tag }, { $date }: the palm has no stem { $stem }. Mend the number of the stem, or the palm’s number of stems.
count-absurd = { $tag }, stem { $stem }, { $date }: { $found } fronds were counted; no crown holds more than { $limit }. Check the figure.
more-off-than-on = { $tag }, stem { $stem }, { $date }: more fronds were taken off than were counted. Counts are made before anything is taken off.
clock-impossible = { $tag }, stem { $stem }, { $date }: a clock reading lies between 0.25 and 12 hours.
inspection-twice = { $tag }, stem { $stem }, { $date }: there are two inspections of this day; the one written last counts.

## Holds, corrections, entries

hold-without-reason = A hold needs its reason.
hold-unknown = There is no such hold to lift.
withdrawal-of-nothing = To take an entry back, name the entry.
entry-unknown = The entry to be corrected is not in the ledger.
correction-of-another-kind = The registration of a palm or a blade can only be corrected by one of its own kind, and nothing else by one.
recorded-otherwise = This was recorded before, with other values. What is recorded stays; write a correction of it.
tag-doubled = Two palms carry the tag “{ $tag }”. The one registered first keeps it; give the other a tag of its own.
entry-not-understood = An entry of the kind “{ $kind }” comes from a newer version of Spearleaf. It is kept but has no effect here.
corrections-in-circle = Some entries correct each other in a circle; none of them counts.

## Tending, sites, crews, rounds

planted-before-dug = { $tag }: planted before it was dug on { $date }. Check the two days.
link-malformed = The link’s secret is not a hash. Give a new link.
site-nameless = A site needs a name without blanks around it: “{ $site }”.
site-figure = { $site }: a figure cannot be. Hours lie within a day and end after they begin, closed days end after they begin, a line has at most 1,200 kV, counts are below 1,000.
site-hours-overlap = { $site }: the hours { $first } and { $next } overlap. Make one window of the two.
site-tidy-beyond-limit = { $site }: the count worth a visit is above the limit. Make the limit the larger one.
crew-nameless = A crew needs a name without blanks around it: “{ $crew }”.
crew-figure = { $crew }: a figure cannot be. Hours lie within a day and end after they begin; people are 1 to 1,000; the room for debris is 0 to 1,000 m³.
prices-currency = “{ $currency }”: a currency has three capital letters (ISO 4217), at most four digits after the point, and a tax of 0 to 100 percent.
prices-figure = { $key }: prices and figures are not below zero.
weather-figure = { $date }: a figure of the weather cannot be, or the lowest temperature is above the highest. Check the units: °C, %, m/s, MJ/m², hours, mm.
round-palm-twice = { $tag } stands on the round twice. Take it out once.
round-figure = The round of { $date }: times lie within two days of its midnight, and a palm takes at most a day.
round-unknown = There is no such round. Plan it first.
skipped-without-reason = { $tag }: say why it was left out.

## Blades

blade-tag-taken = The tag “{ $tag }” is on another blade already. Give this blade a tag of its own, or take the other one out of service first.
blade-tag-doubled = Two blades carry the tag “{ $tag }”. The one registered first keeps it; give the other a tag of its own.
blade-unknown = There is no such blade in the register. Register it first.
bath-unknown = { $blade }, { $date }: it was cleaned in a bath that nobody has recorded mixing. Its age is unknown.
cleaning-without-agent = { $blade }, { $date }: a cleaning without an agent. Nobody can say whether it was enough.
cleaning-impossible = { $tag }: a strength lies between 0 and 100 percent, and a contact time between 0 and { $limit } minutes.
cuts-overlap = { $blade }, { $date }: by the log, the blade cut two palms at the same time. Check the times and the tag of the blade.
cut-ends-before-it-starts = { $blade }, { $date }: the cut ends before it starts. Check the clock and the time zone of the device.
cut-too-long = { $blade }, { $date }: the cut took more than twelve hours. Check when it started.
written-before-it-happened = { $blade }, { $date }: this was written down more than an hour before it happened. Check the clock and the time zone of the device.
touch-twice = { $blade }, { $date }: the same thing stands in the log twice; it counts once.
