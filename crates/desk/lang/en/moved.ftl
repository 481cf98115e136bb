### Moved palms: before, after, and choosing among dug ones

common-moved = Moved

## The list

moved-title = Moved palms
moved-summary = { $n ->
    [0] No palm is on its way to being established.
    [one] { $n } palm is on its way to being established; { $tripped } past the promise, { $due } due for a look.
   *[other] { $n } palms are on their way to being established; { $tripped } past the promise, { $due } due for a look.
}
moved-what = A moved palm sheds fronds: that is promised to the owner in figures for { $weeks } weeks, and whoever sees more calls. Palms moved within { $recent } (assumed) stand here.
moved-more = { $n ->
    [one] { $n } more, moved earlier, is not shown here; its own page has it.
   *[other] { $n } more, moved earlier, are not shown here; their own pages have them.
}
moved-empty = No palm was moved lately. A move is noted on the palm’s page.
moved-arrived = Established again
moved-select-link = Choose among dug specimens
moved-open = Move and calendar
moved-link = The move
moved-state-tripped = Call: past the promise
moved-state-not-seen = Not looked at since the move
moved-state-due = Look due
moved-state-holds = Promise holds
moved-state-established = Established
moved-since = Dug { $date }, { $ago } ago
moved-next = Next look { $date }, in { $days }
moved-next-today = Next look today, { $date }
moved-next-late = Look was due { $date }, { $days } ago
moved-next-none = No more looks because of the move

## The promise

moved-promise-title = What to expect
moved-promise-short = { $range } fronds by { $by }; more than { $over }: call
moved-promise = { $high ->
    [0] From the last look on { $since } to { $by } no further frond should be lost.
    [1] From the last look on { $since } to { $by } expect { $range } further frond to be lost.
   *[other] From the last look on { $since } to { $by } expect { $range } further fronds to be lost.
}
moved-promise-stem = { $high ->
    [0] Stem { $stem }: from the last look on { $since } to { $by } no further frond should be lost.
    [1] Stem { $stem }: from the last look on { $since } to { $by } expect { $range } further frond to be lost.
   *[other] Stem { $stem }: from the last look on { $since } to { $by } expect { $range } further fronds to be lost.
}
moved-promise-unseen = Nobody has counted since the move. From today, { $since }, to { $by } it would be { $range } fronds; count first.
moved-promise-unseen-stem = Stem { $stem }: nobody has counted since the move. From today, { $since }, to { $by } it would be { $range } fronds; count first.
moved-call = { $over ->
    [one] More than { $over } frond, or a spear that leans: call.
   *[other] More than { $over } fronds, or a spear that leans: call.
}
moved-promise-rests-on = Four of five such palms stay within this, by ageing and the move together; past the call only one in twenty comes. It reaches { $weeks } weeks ahead and is counted from { $since }.
moved-tripped-spear-pulled = The spear came out on { $on }. Cut nothing; have the bud looked at now by somebody who can diagnose palms.
moved-tripped-spear-down = The spear was down on { $on }. Cut nothing; have the bud looked at now.
moved-tripped-spear-leaning = The spear leaned on { $on }. Look at bud, straps and moisture of the ball today.
moved-tripped-loss = { $n ->
    [one] { $n } frond was lost from { $since } to { $until }; at most { $most } would be ordinary after a move. Somebody should look.
   *[other] { $n } fronds were lost from { $since } to { $until }; at most { $most } would be ordinary after a move. Somebody should look.
}

## Established or not

moved-established-title = Is it established?
moved-pace-back = It makes new fronds at { $pace } of its coming pace: production is back.
moved-pace-slow = It makes new fronds at { $pace } of its coming pace: production is not back yet.
moved-loss-ordinary = What was lost between the last looks is ordinary for a settled palm.
moved-loss-more = What was lost between the last looks is more than a settled palm loses.
moved-loss-unknown = The counts do not tell yet whether the loss is ordinary: count green, yellowing and brown at the next look.
moved-too-early = Less than half a year after digging nobody calls it established (assumed).
moved-not-established = Not established yet.
moved-established = Established: production is back and the loss is ordinary.
moved-established-by-date = Taken as established because 540 days have passed (assumed); the counts do not show it.

## The calendar

moved-calendar-title = When to look
moved-calendar-what = Often at first, then more rarely. A look in the last quarter of the time before its day counts for it (assumed).
moved-look-done = looked at { $date }
moved-look-missed = missed
moved-look-due = due
moved-look-ahead = ahead
moved-look-after = after { $after }
moved-usual-title = What is usual
moved-usual-share = Of the crown of a large moved palm { $low } to { $high } turns brown.
moved-usual-month = In the month after delivery a large palm loses { $low } to { $high } fronds.
moved-usual-colour = A new colour of the trunk fades within { $low } to { $high }; that is no fault.

## Noted moves and the form

move-title = The move of { $tag }
move-jump-after = After the move
move-jump-before = Before a move
move-jump-note = Note a move
move-noted-title = Noted of the move
move-noted-none = Only the day is known. Note what else you know: it is asked for when something goes wrong.
move-correct = Correct
move-form-title = Note a move
move-form-correct = Correct a move
move-form-what = Only the day is needed. What was not noted stays unknown.
move-save = Save the move
move-leaves-left = All left, hanging free
move-leaves-tied = All left, tied up
move-leaves-thinned = Some taken off
move-leaves-stripped = All taken off
move-leaves-none = Not noted
move-deeper-by = { $by } deeper than it stood
move-higher-by = { $by } higher than it stood
move-as-it-stood = As deep as it stood
move-way-deeper = Deeper than it stood
move-way-higher = Higher than it stood
move-way-same = As it stood
move-way-none = Not noted
move-soil-sand = Sand
move-soil-loamy-sand = Loamy sand
move-soil-sandy-loam = Sandy loam
move-soil-loam = Loam
move-soil-silt-loam = Silt loam
move-soil-silt = Silt
move-soil-silt-clay-loam = Silty clay loam
move-soil-silty-clay = Silty clay
move-soil-clay = Clay
move-soil-none = Not known
forms-dug_on = Dug on
forms-from = Came from
forms-ball_radius = Root ball, out from the trunk
forms-ball_radius-hint = From the trunk’s surface outward: 45 cm, 18 in
forms-ball_depth = Root ball, depth
forms-ball_depth-hint = 60 cm, 2 ft
forms-leaves = Fronds at digging
forms-fronds_taken = Live fronds taken off
forms-deeper = By how much
forms-deeper-hint = 10 cm, 4 in
forms-depth_way = Planted
forms-bracing = Props
forms-bracing-hint = How it is held up; nothing is nailed into a palm.
forms-soil = Soil of the ball
forms-move_notes = Notes
form-move-no-day = Say on which day it was dug.
form-move-planted-before = It cannot have been planted before it was dug, { $dug }. Check both days.
form-move-leaves = Choose what was done with the fronds, or nothing.
form-move-no-size = A root ball has a size. Leave the field empty if it is not known.
form-move-which-way = Say whether it stands deeper or higher than before.
form-move-older = It is known to have been moved on { $before }, later than this. Is this an earlier move?

## Before a move

move-before-title = Before a move
move-before-what = What the tables say for this palm. Type what you know; what is not known is said to be unknown.
move-ask = Show
move-ask-diameter = Across the trunk at the ground
move-ask-diameter-hint = Of a clump across all of it: 40 cm, 16 in
move-ask-radius = Your own ball, out from the trunk
move-ask-depth = Your own ball, depth
move-ask-fronds = Live fronds that go with it
move-ask-fronds-hint = Empty: those of the last count.
move-ask-soil = Soil
move-ask-moist = Can ball and backfill be kept moist?
move-ask-moist-yes = Yes
move-ask-moist-no = No
move-ask-moist-unknown = Not sure
move-ask-hot = Great heat on these days
move-ask-kv = Voltage of the line nearby, kV
move-ask-kv-hint = Only what the utility told you.
move-ask-length = This is no length: write 45 cm, 0.45 m, 18 in or 1 ft 6 in.
move-ask-number = This is no number that can be right here.
move-ball-title = Root ball
move-radius = Out from the trunk
move-depth = Depth
move-volume = Volume, trunk included
move-ball-differ = Sources differ: all are shown, the larger is planned with. Nothing is averaged.
move-ball-below = Your own size is smaller than what every source asks for.
move-said = What is said
move-mass-title = Weight on the hook
move-mass-what = For choosing a machine, not for lifting: the machine’s own scale tells the load.
move-mass-ball = Root ball
move-mass-trunk = Trunk
move-mass-crown = Fronds
move-mass-sum = Together
move-mass-known = What is known together; the whole is heavier
move-mass-range = { $low } to { $high }
move-range = { $low } to { $high }
move-at-most = at most { $high }
move-per-m3 = { $kg } kg/m³
move-per-m = { $kg } kg/m
load-no-diameter = The trunk’s width is not known: without it neither ball nor trunk can be weighed.
load-no-height = The trunk’s height is not known: the trunk is not in the sum.
load-several-trunks = With several trunks nobody can say what they weigh together: they are not in the sum.
load-no-fronds = The fronds are not counted: they are not in the sum.
load-no-frond-length = How long its fronds are is not known: they are not in the sum.
load-ground-unknown = The soil is not known: the range is from dry earth to wet sand.
move-leaves-title = Fronds at digging
move-leaves-take = Take them off at digging.
move-leaves-leave = Leave them on.
move-leaves-depends = It depends on water: keep the ball moist and leave them on.
move-leaves-unknown = Nobody knows for this palm.
move-group-lift = Lifting and digging
move-group-roots = Roots
move-group-season = Time of the year
move-group-depth = How deep to plant
move-group-brace = Props, without nails
move-group-water = Water around the move

## Choosing among dug specimens

select-title = Choosing among dug palms
select-what = A shipped palm with some brown fronds beside a spotless one: what is each likely to shed from now on? Count, look at the spear, ask when it was dug.
select-specimen = Specimen { $letter }
select-name = Name or lot
select-species = Species
select-green = Green
select-yellowing = Yellowing
select-brown = Brown, still on
select-spear = Spear
select-dug = Days since digging
select-cleaned = Dead fronds taken off
select-cleaned-digging = At digging, not since
select-cleaned-again = Since then, too
select-cleaned-not-told = Not known
select-more = One more specimen
select-compare = Compare
select-trouble = Please look at this:
select-count-wrong = A whole number from 0 to { $most }, or empty.
select-further = Will likely shed in
select-weeks = { $n } weeks
select-live = Live fronds after
select-browned = Brown by now
select-note = Four of five such palms shed within the range; live fronds are given with their 90% range.
select-side-by-side = Side by side
select-refused = leave it
select-spear-not-seen = Look at the spear before you choose: upright and firm, or not.
select-spear-leaning = The spear leans: leave it where it is.
select-spear-lost = The spear is down or comes out: the bud may be dead. Leave it where it is.
select-decline = By the counts a decline is likely ({ $share }). Have it looked at before you pay.
select-hunger = By the counts it is hungry ({ $share }): many fronds yellow, few live. It can be fed, but it takes long.
select-not-counted = The green fronds were not counted: what it will shed is a guess from its species.
select-cleaned-since = Dead fronds were taken off since digging: how many have died cannot be told from the palm. Ask for the count.
select-cleaned-unknown = Whether dead fronds were taken off since digging is not known: ask. A spotless palm may be a tidied one.
select-thin = { $live ->
    [one] { $live } live frond where a full crown has about { $full }: cut short, or not recovered.
   *[other] { $live } live fronds where a full crown has about { $full }: cut short, or not recovered.
}
select-dug-unknown = When it was dug is not known: taken as today (assumed), so all of the shedding is still to come.
select-fresh = Dug { $days } ago: most of the shedding is still to come.
select-behind-it = Dug { $days } ago: a good part of the shedding is behind it.
select-browned-more = { $share } of the crown is brown; { $low } to { $high } is usual after a move. Ask why.
select-browned-usual = { $share } of the crown is brown: { $low } to { $high } is usual after a move.
select-browned-not-yet = { $share } of the crown is brown; { $low } to { $high } is usual after a move and comes in the weeks ahead.
select-browned-less = { $share } of the crown is brown, less than the { $low } to { $high } usual after a move.
select-brown-behind-it = The brown fronds of { $brown } are behind it: in eight weeks it will likely shed { $a } more, { $spotless } with fewer brown ones { $b }.
select-fullest = { $n ->
    [one] After half a year { $name } is likely to keep the most: { $n } live frond.
   *[other] After half a year { $name } is likely to keep the most: { $n } live fronds.
}
select-leave-it = Leave { $name } where it is.

## moves.csv

moves-planted-before = Planted on { $found }, before it was dug on { $dug }: one of the two is wrong.
moves-bad-leaves = “{ $found }” says nothing about the fronds; one of these was expected: { $words }.
moves-twice-a-day = This palm was dug on { $found } in line { $first } already. Keep one of the two.
moves-registered = The register already has another move of this palm on { $found }. Correct that one on the palm’s page, or take the row out.
forms-import-is-moves = A list of moves.
forms-import-columns-moves = Moves: tag and dug_on are needed, the rest may be left out. Fronds at digging: left, tied, thinned or stripped.
forms-import-moved = dug { $date }
