### Blade sets in rotation: which set cuts when, and how long the crew waits

rotation-min = { $n } min
rotation-h = { $n } h
rotation-h-min = { $n } h { $min } min

## The answer

rotation-says-waits = { $sets ->
    [one] { $sets } set: you wait { $wait } in all and are done in { $end }
   *[other] { $sets } sets: you wait { $wait } in all and are done in { $end }
}; with { $other } sets nobody waits, done in { $best }.
rotation-says-fewest = { $sets } sets: no waiting, done in { $end }; with { $other ->
    [one] { $other } set
   *[other] { $other } sets
} you would wait { $wait }.
rotation-says-more = { $sets } sets: no waiting, done in { $end }; { $other ->
    [one] { $other } set
   *[other] { $other } sets
} would do.
rotation-says-one = { $sets } set: no waiting, done in { $end }.
rotation-all-clean = Every set is clean again after { $all }. { $baths ->
    [one] One bath is mixed; it is changed after ten palms or two hours.
   *[other] { $baths } baths are mixed: each is changed after ten palms or two hours.
}
rotation-soak-from = Soak of { $min } min: { $agent }{ $strength ->
    [none] {""}
   *[other] , { $strength }% in the bath
}, as long as the strictest source that fits.
rotation-soak-own = Soak of { $min } min, as you say.
rotation-assumed = Brushing { $brush } min and rinsing { $rinse } min, by somebody else beside the cutting. A minute each is assumed, not read: time your own.
rotation-order = The order of the palms stays as it is. All sets are clean at the start.

## Files

rotation-no-minutes = The minutes of this cut are missing.
rotation-not-yes-or-no = “{ $found }” is neither yes nor no. Leave the cell empty if the cut before decides.
rotation-too-many = More than { $limit } cuts. Divide the round.
rotation-no-cuts = There is no cut in the file.

## The page

rotation-title = Blade sets in rotation
rotation-link = Plan the blade sets
rotation-what = How many blade sets does a round need so that nobody stands waiting while they soak?
rotation-where = Which palms
rotation-where-any = any, all alike
rotation-where-hint = Of grounds, palms in the order of their tags; those on hold are left out. Only where a wilt may travel must the blade be clean.
rotation-site = { $site } ({ $n })
rotation-no-site = without grounds
rotation-palms = How many palms
rotation-palms-hint = For grounds, empty means all of them.
rotation-minutes = Minutes of cutting for each
rotation-sets = Blade sets
rotation-mix = They soak in
rotation-mix-choice = { $name }, { $minutes } ({ $mix })
rotation-mix-own = something else: say the minutes
rotation-soak = Minutes of soak
rotation-soak-hint = Empty means as long as the strictest source says.
rotation-brush = Minutes of brushing before
rotation-holds = Sets the bath holds at a time
rotation-holds-hint = Empty means all.
rotation-more = Brushing, and the size of the bath
rotation-ask = Plan the round
rotation-trouble = This cannot be planned yet:
rotation-bad-number = { $field }: a number from { $low } to { $high } is needed.
rotation-bad-mix = Choose what they soak in, or say the minutes of soak.
rotation-nobody = On these grounds no palm can be cut today: none stands there, or all are on hold.
rotation-left-out = { $n ->
    [one] One palm of these grounds is on hold and left out.
   *[other] { $n } palms of these grounds are on hold and left out.
}
rotation-cut-short = Only the first { $n } palms are planned.
rotation-choices = With more or fewer sets
rotation-col-sets = Sets
rotation-col-waits = You wait
rotation-col-done = Done in
rotation-asked = asked
rotation-enough = fewest without waiting
rotation-drawing = Who cuts, who soaks
rotation-drawing-hint = Slide it sideways. Times in hours and minutes from the start.
rotation-drawn-first = The drawing shows the first { $n } cuts.
rotation-crew = Crew
rotation-set = Set { $set }
rotation-key-cut = cuts the palm with this number
rotation-key-soak = soaks
rotation-key-hands = is brushed or rinsed, or waits for the bath
rotation-key-wait = the crew waits (minutes)
rotation-soaks = soaks
rotation-schedule = Palm by palm
rotation-schedule-hint = Hours and minutes from the start, to the minute.
rotation-col-palm = Palm
rotation-col-set = Set
rotation-col-starts = Starts
rotation-col-wait = Waits
rotation-col-ends = Ends
rotation-col-bath = In the bath
rotation-goes-on = goes on
rotation-rest = { $n ->
    [one] One more cut
   *[other] { $n } more cuts
}
rotation-notes = How it was reckoned
rotation-why = The minutes of soak
