### Today, palms, a palm, sources, cautions

## Today

today-title = What needs a person
today-summary = { $n ->
    [0] None of { $total } palms needs a person today.
    [one] { $n } of { $total } palms needs a person, worst first.
   *[other] { $n } of { $total } palms need a person, worst first.
}
today-pending = { $n ->
    [one] { $n } palm has not been read yet today; it follows in a moment.
   *[other] { $n } palms have not been read yet today; they follow in a moment.
}
today-empty = The register is empty. Register a palm, or bring a list.
today-more = { $n ->
    [one] and { $n } more
   *[other] and { $n } more
}
today-noticed = Entries that do not fit together
weight-info = to know
weight-caution = look
weight-act = act
weight-refuse = hold

need-spear-pulled = The spear came out: have the bud looked at now.
need-spear-down = The spear has fallen over: have it looked at now.
need-spear-leaning = The spear leans: have it looked at within days.
need-spear-set = On hold for its spear: look at it and record what you see.
need-wilt = Wilt suspected: nobody trims; ask a plant clinic.
need-decline = A decline is likely ({ $share }): inspect again, ask a plant clinic.
need-wires = Wires too near: line-clearance workers only, call the utility.
need-nest = Nest in the crown: nobody cuts until it is empty.
need-bats = Bats in the crown: nobody cuts, ask the wildlife office.
need-bees = Bees or wasps in the crown: nobody goes near.
need-hold = On hold: nobody cuts until it is lifted.
need-tripwire = { $n ->
    [one] { $n } frond lost: more than ageing or a move would make. Go and look.
   *[other] { $n } fronds lost: more than ageing or a move would make. Go and look.
}
need-hunger = Hunger is likely ({ $share }): feed, and leave the yellowing fronds on.
need-overdue = { $n ->
    [0] A visit is late.
    [one] { $n } dead frond hangs: a visit is late.
   *[other] { $n } dead fronds hang: a visit is late.
}
need-look = Not inspected for { $ago }.
need-look-moved = Moved, and not inspected for { $ago }.
need-first-look = Never inspected.
need-species = The species “{ $name }” is not known: correct the name.

## Palms

palms-summary = { $n ->
    [one] { $n } of { $total } palms
   *[other] { $n } of { $total } palms
}
palms-search = Search
palms-search-hint = Part of a tag, species or site
palms-site = Site
palms-species = Species
palms-explanation = Explanation
palms-due = Visit
palms-any = any
palms-due-late = late
palms-due-now = worth it now
palms-due-soon = within 4 weeks
palms-due-later = later
palms-show = Show
palms-clear = Clear
palms-filters = Filters
palms-choice = { $value } ({ $count })
palms-none = No palm fits. Take a filter away.
palms-no-look = never
palms-no-reading = not counted yet
palms-explained = { $name } { $p }
palms-last-look = Last look
palms-new = Register a palm
palms-page = Page { $page } of { $pages }

## A palm

palm-inspect = Inspect
palm-edit = Edit
palm-holds = Holds
palm-remove = Take out of the register
palm-last-look = Counted on { $date }: { $counts }.
palm-stem = Stem { $n }
palm-stems = Stems
palm-reading = What is going on
palm-whole = The palm as a whole (its stems share roots)
palm-basis = What this rests on
palm-loss = Loss and tripwire
palm-forecast = What to expect
palm-cutting = Cut plan
palm-asked = What if I am asked to take …
palm-cautions = Cautions before the work
palm-own = This palm
palm-species = Its species
palm-history = History
palm-history-older = Older entries
palm-history-empty = Nothing has been recorded yet.
palm-why = Why, and who says so
palm-closed = { $title } ({ $n })
palm-sources = Sources
palm-otherwise = Others say
palm-hold-banner = Nobody cuts this palm
palm-lift = Lift this hold
palm-jump = On this page

cut-take = Comes off on this visit
cut-if-asked = At most, if the owner asks for more
cut-stay = Stays whatever is asked
cut-how = How
cut-how-stub = Stub to leave
cut-how-no-stub = none: the frond comes by hand
cut-how-tool = Tool
cut-how-stand = From where
cut-held = Nothing: a hold is in force
cut-nothing = nothing
cut-brown = { $n ->
    [one] { $n } brown frond
   *[other] { $n } brown fronds
}
cut-yellowing = { $n ->
    [one] { $n } yellowing frond
   *[other] { $n } yellowing fronds
}
cut-green = { $n ->
    [one] { $n } green frond
   *[other] { $n } green fronds
}
cut-rules = Rules that decided
cut-method = Rules on how
cut-weight-refuse = No
cut-weight-act = Act
cut-weight-caution = Caution

asked-green = Green
asked-yellowing = Yellowing
asked-brown = Brown
asked-live = Live fronds, lowest first
asked-next-visit = Next visit after this one
asked-ask = Ask
asked-was = Asked for
asked-allowed = Nearest cut that is allowed
asked-cost = What the asked cut costs
asked-cost-allowed = What the allowed cut costs
asked-by-colour = Say it by colour instead
asked-circumstances = Storm, frost, weevils, power line
asked-storm = A storm is expected
asked-weevil = Palm weevils fly here
asked-site-weevils = Palm weevils fly here, as its site is described.
asked-site-no-weevils = No palm weevils here, as its site is described.
asked-site-line = The line nearby carries { $kv } kV to ground, as its site is described. Another figure below goes before it.
asked-freeze = Last freeze that may have burnt fronds
asked-kv = Line voltage to ground in kV, as the utility says
asked-visit-note = Without a date we reckon with a next visit in 26 weeks (assumed).

species-note-synonym = Another name of { $name }.
species-note-near = Not a known name. Near to it: { $names }.
species-note-unknown = Not a known name. The widest beliefs are used.

fact-site = Site
fact-stems = Stems
fact-trunk = Trunk, ground to crown
fact-planted = Planted here
fact-moved = Dug and moved
fact-cleaned = Last cleaned of dead fronds
fact-over = What lies beneath
fact-wires = Nearest overhead wire
fact-position = Position
fact-notes = Notes
fact-common = Trade names
fact-form = Leaf
fact-habit = Growth
fact-crownshaft = Crownshaft
fact-self-cleaning = Drops its dead fronds
fact-armature = On the petiole
fact-live-leaves = Live fronds, full crown
fact-per-year = Fronds a year
fact-leaf-length = Frond length
fact-max-height = Tallest recorded
fact-thick = Trunk thickness
fact-fusarium = Takes Fusarium wilt
fact-bronzing = Takes lethal bronzing
fact-cold = Coldest survived

form-pinnate = feather
form-bipinnate = twice feathered (fishtail)
form-palmate = fan
form-costapalmate = fan with a midrib in the blade
habit-solitary = one stem
habit-clustering = several stems
habit-either = one or several stems
cleaning-yes = yes
cleaning-partly = some drop, some hang
cleaning-no = no, they hang until cut
armature-none = nothing sharp
armature-armed = something sharp
armature-teeth = teeth
armature-spines = spines

spear-state-firm = spear firm
spear-state-leaning = spear leaning
spear-state-down = spear down
spear-state-pulled = spear came out

history-registered = Registered
history-changed = Description changed
history-removed = Taken out of the register
history-inspected = { $n ->
    [1] Inspected
   *[other] Inspected, stem { $n }
}
history-hold-set = Hold set
history-hold-lifted = Hold lifted
history-noted = Note
history-withdrawn = Taken back
history-blade-registered = Blade registered
history-blade-changed = Description of the blade changed
history-blade-retired = Blade out of service
history-blade-lent = Blade lent
history-blade-returned = Blade back
history-cut = { $n ->
    [1] Cut
   *[other] Cut, stem { $n }
}
history-cut-despite = cut although the blade was not clean: { $why }
history-took-stalks = took { $n } { $n ->
    [one] stalk
   *[other] stalks
}
history-bath-mixed = Bath mixed
history-cleaned = Blade cleaned
history-cleaned-strength = { $n } % in the bath
history-cleaned-minutes = { $n } min of contact
history-cleaned-brushed = brushed first
history-cleaned-unbrushed = not brushed
history-moved = Moved
history-moved-dug = dug { $date }
history-moved-planted = planted { $date }
history-leaves-left = leaves left free
history-leaves-tied = leaves tied up
history-leaves-thinned = some leaves taken off
history-leaves-stripped = all leaves taken off
history-watered = Watered
history-fed = Fed
history-link-given = Private link given
history-site = Site described
history-crew = Crew described
history-prices = Price list set
history-weather = Weather noted
history-round-planned = Round planned
history-round-started = The crew set out
history-round-done = Done on a round
history-round-skipped = Left out on a round
history-round-finished = The crew is back
history-unknown = An entry of a kind this version does not know ({ $kind })
history-until = until { $date }
history-green = { $n } green
history-yellowing = { $n } yellowing
history-brown = { $n } brown
history-new = { $n } new
history-took-green = took { $n } green
history-took-yellowing = took { $n } yellowing
history-took-brown = took { $n } brown
history-clock = lowest live frond at { $left } and { $right }
history-superseded = corrected since
history-corrects = correction
history-by = by { $who }
history-correct = Correct

## Sources

sources-title = Sources
sources-intro = Every figure and rule names its source. “From memory” means: recalled, not looked up. “Assumed” means: nobody gives it, we chose it.
sources-count = { $n } sources

## Cautions

about-title = Cautions
about-intro = Spearleaf reads counts. It does not see the palm. What it says is a belief with an interval, not a diagnosis and not a permission.
about-safety = Before any work
about-figures = What is assumed
about-assumed-prior = Weights of the explanations before any count.
about-assumed-spread = The spread of a crown without clock readings.
about-assumed-due = Dead fronds on a stem that are worth a visit ({ $tidy }, or { $tidyshare } of a full crown) and too many ({ $limit }, or { $limitshare }).
about-assumed-looks = A settled palm wants a look every { $long }, a palm moved within { $moved } every { $short }.
about-assumed-visit = A next visit in { $visit } where none is named.
about-kept = Entries stay. A correction is a new entry beside the old one.
