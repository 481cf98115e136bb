### The reading: explanations, loss, tripwire, forecast, crown

## How a figure is known

basis-memory = from memory, not looked up
basis-assumed = assumed
basis-practice = common practice, no source
basis-keeper = your own figure
basis-own = worked out from this palm’s own counts and record

## Explanations

explanation-ageing = Ordinary ageing
explanation-ageing-means = Fed and settled: for each new frond an old one dies.
explanation-move = The move
explanation-move-means = Dug and shipped: fronds shed and slow growth until the roots are back.
explanation-hunger = Hunger
explanation-hunger-means = A nutrient shortage cuts each frond’s life short; the crown stays thin.
explanation-decline = Decline
explanation-decline-means = The palm is dying back: a disease, a pest, or a lost bud.

likelihood-almost-certain = almost certain
likelihood-very-likely = very likely
likelihood-likely = likely
likelihood-open = open
likelihood-unlikely = unlikely
likelihood-very-unlikely = very unlikely
likelihood-almost-ruled-out = almost ruled out

reading-headline-none = Nobody has counted this palm yet. All that can be said is what is usual for its kind.
reading-headline-ageing-sure = Ordinary ageing: this palm is as it should be.
reading-headline-ageing-likely = Most likely ordinary ageing.
reading-headline-ageing-open = Perhaps ordinary ageing; the counts leave other explanations open.
reading-headline-move-sure = The move explains the loss.
reading-headline-move-likely = Most likely the move.
reading-headline-move-open = Perhaps the move; the counts leave other explanations open.
reading-headline-hunger-sure = This palm is hungry.
reading-headline-hunger-likely = Most likely hunger.
reading-headline-hunger-open = Perhaps hunger; the counts leave other explanations open.
reading-headline-decline-sure = This palm is in decline.
reading-headline-decline-likely = Most likely a decline.
reading-headline-decline-open = Perhaps a decline; the counts leave other explanations open.
reading-rests-on = Rests on { $n } looks, the last { $ago } ago.
reading-rests-on-one = Rests on a single look, { $ago } ago. The answer is wide; a second look will narrow it.
reading-rests-on-none = Rests on no look at all.
reading-season-from = Season from the monthly means of { $place }.
reading-season-assumed = No climate is known for its place: a usual season of its hemisphere is assumed.
reading-full-crown = Live fronds of its full, fed crown
reading-per-year = Fronds made a year at the reference place
reading-value = { $n } (90%: { $range })
reading-before = Believed before the counts: { $n }
reading-prior = Weights before the counts (assumed): { $list }.

n-from-maximum = A description’s maximum stands in: a full crown is taken as 0.8 of it (assumed).
n-from-maximum-phoenix = A description’s maximum stands in; for date palms it is 2 to 3 times too low, so 2.5 times is taken (assumed).
n-from-genus = The species’ own figure is unknown; its genus stands in.
n-from-family = The species’ own figure is unknown; all palms stand in. The answer is wide.
r-about-one-a-month = The species’ own figure is unknown; about one frond a month stands in.

## Loss

loss-seen = { $lost ->
    [0] No frond was lost between { $since } and { $until }.
    [one] { $lost } frond was lost between { $since } and { $until }.
   *[other] { $lost } fronds were lost between { $since } and { $until }.
}
loss-not-told = Between { $since } and { $until } the counts do not tell how many fronds were lost.
loss-makes-ageing = Ordinary ageing makes { $range } in that time.
loss-makes-move = The move makes { $range }.
loss-makes-hunger = Hunger makes { $range }.
loss-makes-decline = A decline makes { $range }.
loss-verdict-none = Two looks, or a look and the date of the last cleaning, are needed to read a loss.
loss-verdict-unknown = Count green, yellowing and brown fronds next time: then the loss can be read.
loss-verdict-ordinary = In line with ordinary ageing ({ $range }): as many or more come in { $p } of cases.
loss-verdict-ordinary-moved = In line with ageing and the move ({ $range }): as many or more come in { $p } of cases.
loss-verdict-unusual = More than ordinary: ageing makes as many in only { $p } of cases ({ $range } is usual). Somebody should look.
loss-verdict-unusual-moved = More than ordinary: ageing and the move make as many in only { $p } of cases ({ $range } is usual). Somebody should look.
tripwire = { $n ->
    [one] { $n } or more further fronds lost from { $since } to { $by }: call.
   *[other] { $n } or more further fronds lost from { $since } to { $by }: call.
}
tripwire-spear = Spear leaning or down: call at once.
tripwire-why = So many would be lost in fewer than 1 of 20 cases by ageing and a move together.
loss-chart-title = What was lost against what each explanation makes (90% of cases)
loss-chart-seen = seen: { $n }
loss-ahead-title = Fronds lost after the last look: expected (90% band) and the tripwire
loss-ahead-expected = expected
loss-ahead-tripwire = tripwire
chart-dot = { $n } on { $date }
chart-today = today
counts-title = Live and brown fronds: counted, and to come if the plan is carried out (90% bands)
counts-live = live
counts-brown = brown

## Forecast

outlook-weeks = In { $n } weeks
outlook-live = Live
outlook-green = Green
outlook-yellowing = Yellowing
outlook-brown = Brown
outlook-lost = Lost
outlook-note = Fronds that would be counted: most likely figure, and where 90% of cases lie. Lost counts from the last look.
outlook-planned = If the cut plan is carried out
outlook-uncut = If nothing is cut

## Recovery

recovery-level = Hanging down to level again
recovery-full = Full crown again
recovery-frond-months = Leaf lost
recovery-frond-months-value = { $n } frond-months (90%: { $low } to { $high })
recovery-at-once = at once
recovery-beyond = more than 10 years
recovery-span = { $median } (90%: { $low } to { $high })
recovery-title = If the most that may be asked for came off
asked-left = Live fronds left

## Due

due-late = { $n ->
    [0] A visit is late.
    [one] A visit is late: { $n } dead frond hangs.
   *[other] A visit is late: { $n } dead fronds hang.
}
due-now = Worth a visit now, at the latest on { $latest }.
due-now-open = Worth a visit now.
due-soon = Worth a visit from { $earliest }.
due-later = Not before { $earliest }.
due-none = Nothing to cut within two years.
due-note = Worth a visit from { $tidy } dead fronds on a stem of this size, late from more than { $limit } (both assumed).
due-note-site = Worth a visit from { $tidy } dead fronds on a stem, late from more than { $limit }: as described for its site.

## The drawn crown

crown-title = The crown of { $tag }, from the side
crown-mode-plan = As planned
crown-mode-asked = As asked
crown-mode-uncut = Uncut
crown-switch = Cut
crown-slider = Weeks ahead
crown-now = Now, { $date }
crown-later = In { $n } weeks, { $date }
crown-counts = { $green } green, { $yellowing } yellowing, { $brown } brown.
crown-counts-cut = { $n ->
    [one] { $n } is marked to come off.
   *[other] { $n } are marked to come off.
}
crown-level = level
crown-spread-clock = Spread fitted to your clock readings.
crown-spread-assumed = Spread assumed: a full round crown. Clock readings of the lowest live fronds would fit it.
crown-trunk = Trunk { $height }
crown-trunk-unknown = Trunk height unknown
crown-median = The drawing shows the most likely crown; the table below has the intervals.
crown-key-green = green
crown-key-yellowing = yellowing
crown-key-brown = brown
crown-key-cut = comes off
