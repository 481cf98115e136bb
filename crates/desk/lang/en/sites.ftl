### Sites and crews: where work is done, and who does it

common-sites = Sites

## The list and a site

sites-title = Sites
sites-summary = { $n ->
    [0] No site is known yet: a palm names its site, or describe one here.
    [one] { $n } site.
   *[other] { $n } sites.
} { $bare ->
    [0] { "" }
    [one] { $bare } of them is not described yet.
   *[other] { $bare } of them are not described yet.
}
sites-what = What is said of a site holds for all its palms: when and how they may be worked on, and what they are judged by.
sites-new = Describe a new site
sites-palms = { $n ->
    [0] no palms
    [one] { $text } palm
   *[other] { $text } palms
}
sites-any-hour = at any hour
sites-hours = { $from } to { $to }
sites-bare = not described yet
sites-closed = closed until { $last }
sites-soon = closed { $first } to { $last }
sites-closed-day = { $first }
sites-closed-days = { $first } to { $last }
sites-edit = Edit the description
sites-describe = Describe this site
sites-not-described = Nobody has described this site yet. Until then its palms are judged by the usual figures, and rounds know neither its gate nor its hours.
sites-facts = What is known
sites-fact-owner = Owner
sites-fact-gate = Gate
sites-fact-hours = Hours of work
sites-fact-soil = Soil
sites-fact-coastal = Near the coast
sites-fact-weevils = Palm weevils fly here
sites-fact-line = Power line nearby
sites-fact-tidy = Dead fronds on a stem worth a visit
sites-fact-limit = More dead fronds than this shall not hang
sites-yes = yes
sites-no = no
sites-kv = { $kv } kV to ground
sites-usual = the usual figure
sites-closed-head = Closed
sites-closed-none = No closed days are noted.
sites-closed-now = now
sites-closed-past = over
sites-rules-head = Local rules against feeding
sites-rule = { $from } to { $to } of every year: no { $what }
sites-rule-now = in force today
sites-all-feeding = feeding at all
sites-day-of-year = { $month } { $day }
sites-palms-head = Palms here
sites-palms-all = All palms of this site
error-not-found-site = There is no site “{ $name }”: nobody described one, and no palm stands on one of this name.

## The form of a site

site-form-new = Describe a new site
site-form-edit = Describe { $name }
site-form-name = Name
site-form-name-hint = Exactly as its palms write it.
site-form-owner = Owner
site-form-owner-hint = Whose the site is, or who answers for it.
site-form-gate = Gate
site-form-gate-hint = Where a crew comes in: rounds drive there. A pair from a map may be pasted into the first field.
site-form-hours = Hours of work
site-form-hours-hint = When work may be done; leave all empty if at any hour. Saving gives another line.
site-form-from = From
site-form-to = To
site-form-closed = Closed days
site-form-closed-hint = When nobody may come. One day alone needs no last day. Saving gives another line.
site-form-first = First day
site-form-last = Last day
site-form-why = Why
site-form-judged = How its palms are judged
site-form-judged-hint = What is left open here falls back on the usual answer.
site-form-soil = Soil
site-form-coastal = Near the coast
site-form-coastal-hint = For the sun that is reckoned from temperatures.
site-form-weevil_area = Palm weevils fly here
site-form-weevil_area-hint = Then date palms are not cut green outside the cold months.
site-form-line_kv = Line voltage to ground, kV
site-form-line_kv-hint = As the utility says. Leave it empty if you do not know; 10 ft are kept then, and by anybody but line-clearance workers never less.
site-form-tidy = Dead fronds on a stem worth a visit
site-form-limit = More dead fronds on a stem than this shall not hang
site-form-feeding = Local rules against feeding
site-form-feeding-hint = A part of every year in which a local rule bars feeding. Nothing ticked bars all of it. Ask the county or the town: this list is only as good as what is entered.
site-form-month = Month
site-form-day = Day
site-form-barred = Barred
site-form-rule = Whose rule it is
site-form-not-known = Not known
site-form-notes = Notes
site-form-notes-hint = Where to park, whom to ring, a dog. Codes of gates are better kept elsewhere: what is written stays in the ledger.
site-nutrient-N = Nitrogen (N)
site-nutrient-P = Phosphorus (P)
site-nutrient-K = Potassium (K)

form-name-missing = A name is needed.
form-name-unfit = This is no name: one line of at most { $most } characters is expected.
form-name-taken = “{ $name }” is described already. Change it on its own page.
form-yes-or-no = Yes, no or nothing is expected.
form-hours-half = Both are needed, when it begins and when it ends.
form-hours-not-read = “{ $found }” is no time of day; 06:30 is expected.
form-hours-backwards = This ends before it begins. Work over midnight is two windows: up to 00:00, and from 00:00.
form-hours-overlap = This overlaps { $found }. Make one window of the two.
form-closed-no-day = Say from which day on.
form-closed-backwards = This ends before { $first }. Check the two days.
form-feeding-half = A rule needs its first and its last day.
form-feeding-no-day = No year has such a day: month and day { $found }.
form-site-tidy-beyond-limit = A visit would be worth it only at { $tidy }, which is above this limit. Make the limit the larger one.
form-described-meanwhile = This was described otherwise elsewhere after the form was opened. Saving puts what stands here in its place. Is that right?
form-crew-nobody = A crew has at least one person. Leave it empty if you do not know.

## Crews

crews-title = Crews
crews-what = Rounds are planned for crews: where they start, when they work, what they can do and carry.
crews-empty = No crew is described yet.
crews-new = Describe a new crew
crews-people = { $n ->
    [one] { $n } person
   *[other] { $n } people
}
crews-people-unknown = people not said
crews-gone = No longer working
crews-is-gone = This crew no longer works. Rounds are not planned for it.
crews-edit = Edit the description
crews-fact-people = People
crews-fact-from = Starts from
crews-fact-to = Ends at
crews-fact-hours = Hours
crews-fact-skills = Trained or licensed for
crews-fact-kit = Carries
crews-fact-room = Room for debris, loose
crews-to-where-from = where it starts
crews-at-gate = the gate of { $site }
crew-skill-lift = lift
crew-skill-climb = climbing
crew-skill-spray = spraying
crew-skill-rigging = rigging and cranes
error-not-found-crew = There is no crew “{ $name }”.

crew-form-new = Describe a new crew
crew-form-edit = Describe { $name }
crew-form-name = Name
crew-form-name-hint = As it stands on its rounds.
crew-form-people = People
crew-form-start = Where it starts
crew-form-start-hint = Decimal degrees. A pair from a map may be pasted into the first field.
crew-form-gates = Gates of the sites, to copy from
crew-form-end = Where it ends
crew-form-end-hint = Leave empty if it ends where it starts.
crew-form-hours = Hours
crew-form-hours-hint = Leave empty for the usual hours.
crew-form-skills = Trained or licensed for
crew-form-skills-hint = What local law or the insurer asks a licence for, only with the licence in hand.
crew-form-skill-lift = Working from a lift
crew-form-skill-climb = Climbing with ropes, without spikes
crew-form-skill-spray = Spraying and treating, licensed
crew-form-skill-rigging = Rigging and cranes
crew-form-more = Others, with commas between
crew-form-kit = Carries
crew-form-room = Room for debris, loose ({ $unit })
crew-form-room-hint = What the truck or trailer holds of fronds as they fall.
crew-form-gone = It no longer works
crew-form-notes = Notes

## Files

sites-import-columns = Sites: site is needed, the rest may be left out. Hours as 06:30-11:00, closed days as 2026-12-24/2026-12-26 why, no feeding as 06-01/09-30 N+P whose rule; several with ; between.
sites-import-columns-crews = Crews: crew is needed, the rest may be left out. Skills and kit with ; between.
sites-import-is-sites = A list of sites.
sites-import-is-crews = A list of crews.
sites-no-name = The name is missing. Every row needs one.
sites-bad-name = “{ $found }” is no name: one line of at most { $most } characters was expected.
sites-name-twice = “{ $found }” is already on line { $first }. Keep one of the two.
sites-bad-hours = “{ $found }” says no hours; a beginning and a later end were expected, such as 06:30-11:00, several with ; between.
sites-hours-overlap = { $found } overlaps { $other }. Make one window of the two.
sites-bad-closed = “{ $found }” says no closed days; such as 2026-12-24/2026-12-26 why was expected, the last day not before the first, several with ; between.
sites-bad-feeding = “{ $found }” says no rule against feeding; month and day and what is barred were expected, such as 06-01/09-30 N+P whose rule, or “all” for N+P.
sites-too-many = “{ $found }” has more than { $most }. Keep the ones that hold.
sites-tidy-beyond-limit = The limit is { $found }, but a visit would be worth it only at { $tidy }. Make the limit the larger one.
sites-soil-unknown = No table knows the soil “{ $found }”. It is kept, but nothing is reckoned with it; one of these is known: { $words }.
sites-crew-nobody = A crew has at least one person. Leave the cell empty if it is not known.
sites-described = “{ $found }” is described otherwise already. Change it on its own page, or take the row out.
sites-crew-described = The crew “{ $found }” is described otherwise already. Change it on its own page, or take the row out.
