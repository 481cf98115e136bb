### Feeding: what, how much, what bars it, whether the crown answered

common-feeding = Feeding
feed-list-title = Feeding
feed-list-empty = No palm may be short of anything, as far as is known, and none was fed. Any palm can be fed from its own page.
feed-summary = { $now ->
    [0] No palm wants feed today
    [one] { $now } palm wants somebody today
   *[other] { $now } palms want somebody today
}; { $all ->
    [one] { $all } palm may be short of something or is fed.
   *[other] { $all } palms may be short of something or are fed.
}
feed-group-worse = Became worse after feeding
feed-group-now = May be fed now
feed-group-wait = Not now
feed-list-open = plan and log
feed-list-what = Palms stand here whose signs and counts make a shortage at least 30 % probable, and palms that were fed. The label and the licence come before every rate.
feed-list-rules = No local rule on feeding was entered for { $site }.
feed-list-all = All palms
feed-list-rules-enter = Enter it with the site

feed-title = Feeding of { $tag }
feed-link = Feeding
feed-jump-plan = Plan
feed-jump-note = Note a feeding
feed-jump-log = Log
feed-jump-products = Products
feed-barred-title = Barred here today
feed-free = Nothing of what is barred is in:
feed-rules-unknown = No local rule on feeding was entered for this site. Many counties and cities bar nitrogen and phosphorus in some months: ask the local office, and enter the months with the site.
feed-plan-title = What to feed, and against what
feed-ground = Ground under the crown: { $area }; rates by the ground are reckoned for it.
feed-ground-unknown = The ground under the crown is not known: rates by the ground give no amount. Measure across the crown and enter it with the palm.
feed-maintenance = Maintenance
feed-may = May be fed now
feed-not-now = Not now
feed-once-free = Once it is free
feed-probable = By its signs and counts this probable: { $p }. Have leaf and soil tested before a cure that costs much or can do harm.
feed-no-rate = No rate is given.
feed-never = Never fed against it, as far as was noted.
feed-last = Last fed against it { $date }.
feed-next-between = Again from { $from } to { $until }.
feed-next-from = Again from { $from }.
feed-next-now = It may be repeated now.
feed-times = { $n ->
    [one] once
   *[other] { $n } times a year
}
feed-every = every { $days } days
feed-not-before = not again within { $days } days
feed-amount-unknown = amount not known
feed-and-or = also, or where sources differ:
feed-slow = Nitrogen, potassium and magnesium in it give off slowly.
feed-fast = Nitrogen, potassium or magnesium in it dissolve at once.
feed-slow-unknown = Whether its nitrogen, potassium and magnesium give off slowly is not said; read the label.
feed-micro-soluble = Its trace elements dissolve in water, as they must.
feed-micro-not-soluble = Its trace elements do not dissolve in water.
feed-causes = Where it comes from
feed-answers = How long until it shows
feed-replaced = This palm makes as many fronds as its full crown holds in { $low } to { $high }, by the crown’s model (5 to 95 %).
feed-ask = Plan for another shortage
feed-ask-show = Show
feed-nobody = No palm may have a shortage, and none was fed. Name one with --tag.
feed-no-palm = There is no palm with the tag “{ $tag }”. Look it up with export palms.

feeding-too-soon = Fed against the same on { $last }: not again before { $from }.
feeding-cause-first = No feed before the cause is put right: see where it comes from.
feeding-barred = { $rule } bars { $nutrients } today. Free again from { $free }.
feeding-barred-all = { $rule } bars all feeding today. Free again from { $free }.
feeding-just-moved = Planted or dug on { $moved }: no granular feed before { $from }.
feeding-at-the-edge = Not established yet: feed in a band at the edge of the ball, where roots come out.
feeding-not-magnesium = Manganese sulphate is not magnesium sulphate: read the name on the bag letter by letter.
feeding-boron-once = Boron in excess poisons palms: once, dissolved, and not again for about five months.
feeding-potassium-with-magnesium = Potassium and magnesium go together, so that curing the one brings on no shortage of the other.
feeding-lawn-feed = Much nitrogen and little potassium: over palm roots this brings on or worsens shortage of potassium and magnesium.

## The log

feed-log-title = Feedings
feed-log-none = None noted.
feed-over = over { $area }
feed-taken-back = Taken back on the page of feeding
feed-answer-not-looked = Nobody has looked since: inspect it.
feed-answer-too-early = Too early to tell.
feed-answer-not-looked-for = Looked at since, but its signs were not looked for, or nobody counted: not looked for is not gone.
feed-answer-answering = The crown answers.
feed-answer-same = As before.
feed-answer-worse = Worse than before: feeding alone is not the cure. Have leaf and soil tested.
feed-answer-live = Live fronds by the crown’s model: { $then } on the day, { $now } today. A tenth more or less is clear (assumed).
feed-answer-new = { $n ->
    [one] { $n } new frond counted since; three must come before they can tell (assumed).
   *[other] { $n } new fronds counted since; three must come before they can tell (assumed).
}
feed-answer-before = Seen before: { $signs }
feed-answer-still = Seen since: { $signs }
feed-answer-gone = Looked for and not found since: { $signs }

## Products and the form

feed-products-title = Products
feed-slow-what = Nitrogen, potassium and magnesium are to give off slowly, all of them: what dissolves at once washes out, and what is left is out of balance. Trace elements are to dissolve in water. What is written on the bag counts.
feed-product-barred = barred today
feed-product-none = Another: written below
feed-form-title = Note a feeding
feed-form-correct = Correct a feeding
feed-form-what = What was done is noted, even where it should not have been: the record must tell what happened.
feed-save = Save the feeding
forms-product = Product
forms-product_own = Another product
forms-product_own-hint = As it stands on the bag, with its figures, such as 12-4-8: they tell whether a rule bars it.
forms-mass = How much in all
forms-mass-hint = A bare number is in kg or lb, as you have set; 700 g and 8 oz are read, too.
forms-fed_area = Over what ground
forms-fed_area-hint = Square metres or square feet, as you have set.
forms-against = Against
forms-feed_notes = Notes
form-feed-no-product = Say what was given: choose a product, or write it as it stands on the bag.
form-feed-two-products = Two products are named: choose one above or write one here.
form-feed-product = This product is not in the table. Choose another, or write it below.
form-feed-mass-not-read = “{ $found }” is no mass: a number was expected, with g, kg, lb or oz behind it if it is not in your own unit.
form-feed-mass-range = This cannot be: more than nothing and at most 1,000 kg was expected.
form-feed-against = This is no disorder of the table. Choose one from the list.
