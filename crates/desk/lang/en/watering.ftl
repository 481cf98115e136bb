### Watering: who wants water, one palm's plan, weather that comes in

common-watering = Watering

## The list

watering-title = Watering
watering-summary = { $today ->
    [0] No palm wants water today;
    [one] { $today } palm wants water today;
   *[other] { $today } palms want water today;
} { $week ->
    [0] none in the six days after.
   *[other] { $week } more in the six days after.
}
watering-total = Today in all: { $water }
watering-what = Here stand palms moved lately that are not established yet, and palms for which a watering was noted in the last { $days } days. Of any other palm nobody has said that it is watered; its own page plans it all the same.
watering-empty = No palm is followed: none was moved lately, and no watering was noted. A watering is noted on the palm’s page.
watering-more = { $n ->
    [one] { $n } more is not shown here; its own page has it.
   *[other] { $n } more are not shown here; their own pages have them.
}
watering-sites = Sites
watering-all-sites = All sites
watering-site-today = { $n } today
watering-no-site = palms without a site
watering-no-weather = { $site }: no weather for { $n } of the last 14 days; the monthly means of the nearest known place stand in.
watering-no-weather-no-climate = { $site }: no weather for { $n } of the last 14 days, and no known place within 100 km: the plan is wide.
watering-bring-weather = Bring weather in
watering-group-today = Today
watering-group-week = In the six days after
watering-group-later = Later
watering-group-unknown = Cannot be reckoned
watering-open = plan and log
watering-link = Water
watering-state-due = Water today
watering-state-nothing-noted = No watering noted
watering-state-soon = This week
watering-state-later = Later
watering-state-unknown = Cannot be reckoned

## One palm

water-title = Watering of { $tag }
water-jump-ahead = Coming days
water-jump-note = Note a watering
water-jump-reckoned = How it is reckoned
water-jump-given = Log
water-jump-list = All palms
water-give-today = Today:
water-goes = { $n } times { $each }
water-nothing-noted = No watering was noted in the last { $days } days, so nobody knows how dry it is. Soak all that roots can reach; from then on the plan counts.
water-unknown = How much it needs cannot be told: the length of its fronds is not known. Measure across the crown and enter it with the palm.
water-due-today = Want may set in today.
water-due-since = Want may have set in since { $date }, { $ago } ago.
water-next = Next due { $date }, in { $in }.
water-next-none = Not due within the 60 days reckoned ahead.
water-rhythm = { $days ->
    [one] At the longest every day: { $water }.
   *[other] At the longest every { $days } days: { $water }.
}
water-rhythm-goes = Every day in { $goes } goes: { $water } each.
water-rhythm-unknown = How often cannot be told.
water-last = Last watered { $date }, { $ago } ago: { $amount }.
water-last-today = Watered today, { $date }: { $amount }.
water-last-none = No watering was ever noted.
water-amount-unknown = amount not noted
water-lasts = After a soaking want sets in after { $low } at worst, { $high } at best.
water-days = { $n ->
    [one] { $text } day
   *[other] { $text } days
}
water-short = Even watered so often the ball cannot hold what a full crown may draw on such a day: the palm runs short for a part of the day.
water-tap = Watered: { $water }
water-tap-plain = Watered
water-mind-soil = The plan does not see the soil. A finger, a probe or a spade at the edge of the ball comes before it; a ball that stands in water wants none.
water-mind-rules = Local rules on watering come before the plan.
water-mind-tub = A palm in a tub is not planned here.

water-ahead-title = Today and the coming days
water-ahead-what = If the plan is kept. Needs are reckoned between two figures; what is given follows the greater. There is no forecast of weather in it.
water-col-day = Day
water-col-give = Give
water-col-need = It may need
water-col-reference = Air takes
water-col-given = Given
water-col-rain = Rain
water-col-by = Reckoned by
water-col-down = May have run down
water-day-off = nothing
water-taper-title = As roots grow
water-taper-what = The same reckoning in the season of the weeks to come, roots growing at the pace that is assumed at its slowest. It ends when the palm counts as established.
water-roots-ball = Roots are still in the ball.
water-roots-growing = Roots are on their way out of the ball.
water-roots-whole = Roots are under the whole crown.
water-gaps-title = What is not known
water-gaps-what = Each of these makes the plan wider, and it keeps to the safe end: more water, sooner.
water-gap-soil = The soil is not known: all nine soils of the table are taken. Enter it with the site.
water-gap-soil-moved = The soil is not known: all nine soils of the table are taken.
water-gap-soil-of-ball = The soil of the ball is not known: that of the site is taken.
water-gap-ball = The size of the ball is not known: what the sources do and ask for is taken.
water-gap-crown = Nobody knows how long its fronds are: litres cannot be told. Measure across the crown.
water-gap-crown-not-read = Across the crown “{ $found }” is written: a figure in metres up to 40 was expected. It is not used.
water-gap-counts = Its fronds were not counted: the crown may be full, or after a move anything.
water-gap-place = Where it stands is not known: the air could take anything that climates do.
water-gap-weather = { $n ->
    [one] { $n } of the last 14 days has no weather; monthly means stand in for it.
   *[other] { $n } of the last 14 days have no weather; monthly means stand in for them.
}
water-gap-weather-no-climate = { $n ->
    [one] { $n } of the last 14 days has no weather, and no known place is within 100 km.
   *[other] { $n } of the last 14 days have no weather, and no known place is within 100 km.
}
water-gap-amounts = { $n ->
    [one] { $n } watering has no amount; it counts as none.
   *[other] { $n } waterings have no amount; they count as none.
}
water-gap-to-move = Enter it with the move
water-gap-to-edit = Enter it with the palm
water-gap-to-inspect = Count them
water-gap-to-import = Bring weather in
water-gap-to-log = Add the amounts

## How it is reckoned

water-reckoned-title = How it is reckoned
water-reckoned-what = From the air to the palm, then to what roots can reach. Every figure is a stretch; the plan takes the greatest need and the least water in reach.
water-step-reference = The air takes from short grass in a day
water-how-full = Penman-Monteith, everything measured.
water-how-part = Penman-Monteith, with what the paper puts in the place of what was not measured:
water-how-temperatures = Hargreaves, from today’s temperatures alone.
water-how-last-days = The mean of the last days with weather (assumed).
water-how-climate = Hargreaves, from the monthly means of { $place }.
water-how-climate-note = Weather brought in takes their place.
water-how-anywhere = Neither weather nor a known place: all that climates do.
water-stood-in-humidity = Humidity: the lowest temperature as dew point.
water-stood-in-wind = Wind: 2 m/s.
water-stood-in-sun = Sun: from the range of temperature.
water-stood-in-elevation = Height above the sea: sea level (assumed).
water-step-factor = Its share of that
water-step-factor-note = From the lowest to the highest of the factors used; all of them stand below.
water-step-crown = Ground under its crown
water-step-crown-measured = From across the crown as measured.
water-step-crown-by-frond = From the length of its fronds: a frond arches out 0.6 to 0.9 of its length.
water-step-draws = What is there of its crown draws, of a full one
water-step-draws-note = By the crown’s model: fronds counted, lost and grown since.
water-step-need = It may need today
water-step-need-note = The product of the four: 1 mm on 1 m² is 1 L.
water-step-roots = Ground above its roots
water-step-depth = Down to { $depth }.
water-step-held = Water the soil holds for roots, of its volume
water-step-held-note = Of the soil of the ball and, once roots leave it, of the site.
water-step-total = In reach of its roots when full
water-step-fraction = Of that may run down before want sets in
water-step-fraction-note = Less for coarse soil and on days of great need.
water-step-ready = So much it takes without want
water-factors-title = Who says what of its share
water-conflict = The sources contradict each other: crop factors ({ $crop }) are for palms without want, landscape factors ({ $landscape }) for established plants in acceptable looks. The plan waters for the greater.
water-factors-all = All factors, and what each would make of today
water-factor-used = Used
water-factor-container = Not used: for tubs
water-factor-other-air = Not used: for another air than here
water-factor-no-figure = Not used: no figure could be read
water-factor-narrower = Not used: a row for the species stands in its place
water-factor-need = by it alone { $water } today

## The log

water-given-title = Waterings
water-given-none = None noted.
water-correct = Correct
water-take-back = Take back
water-taken-back = Taken back on the page of watering
water-past-title = The last 14 days
water-past-what = The dry account: the greatest need, the least rain. A watering counts with its litres; one without an amount counts as none.
water-by-full = all measured
water-by-part = partly measured
water-by-temperatures = temperatures
water-by-last-days = last days
water-by-climate = monthly means
water-by-anywhere = nothing known
water-form-title = Note a watering
water-form-correct = Correct a watering
water-save = Save the watering
forms-crown_across = Across the crown
forms-crown_across-hint = From frond tip to frond tip: water and feed go by the ground under it.
form-crown-no-size = Nothing across cannot be. Leave it empty if it was not measured.
fact-crown-across = Across the crown
forms-litres = How much
forms-litres-hint = A bare number is in your own unit; 40 L and 10 gal are read, too. Empty: not measured.
forms-water_notes = Notes
form-water-not-read = “{ $found }” is no amount of water: a number was expected, with L or gal behind it if it is not in your own unit.
form-water-out-of-range = This cannot be: more than nothing and at most 100,000 L was expected.
form-water-much = { $litres } L for one palm in a day is a great deal. Check the unit.

## Weather in

weather-no-date = The date is missing. Every row of weather needs its day.
weather-min-above-max = The lowest temperature ({ $found }) is above the highest ({ $max }). Check whether the two were swapped.
weather-nothing = Nothing was measured on { $found }: fill in one of the other columns or take the row out.
weather-doubled-day = { $found } is already on line { $first } for this site. Keep one of the two.
weather-unknown-site = No palm stands at “{ $found }”. Write the site as palms write it, or leave the cell empty: then the weather holds for all sites without their own.
forms-import-is-weather = Weather by days.
forms-import-columns-weather = Weather: date is needed and at least one figure. Degrees Celsius, per cent, wind at 2 m in m/s, MJ a square metre, hours, mm. No site: all sites without their own. A day that is there already is replaced.
forms-import-rain = rain { $rain }
