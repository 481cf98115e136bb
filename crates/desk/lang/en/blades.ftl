### Blades: the rack, the cutting log, cleaning

common-blades = Blades
error-not-found-blade = No blade with the tag “{ $tag }” is in the register.

## The rack

blades-places = Blades
blades-place-rack = Rack
blades-place-cutting = Log a cut
blades-place-cleaning = Clean
blades-place-trace = Trace
blades-new = Register a blade
blades-empty = No blade is registered yet. Give each blade a tag: only then can be said later what it touched.
blades-summary = { $all ->
    [one] One blade in service: { $clean } clean, { $blocked } blocked.
   *[other] { $all } blades in service: { $clean } clean, { $blocked } blocked.
}
blades-labels = Labels to print (PDF)
blades-clauses = Clauses for outside firms (PDF)
blades-retired = Out of service
blades-is-retired = Out of service: { $why }
blades-noticed = What is odd in the log
blades-last-cut = last cut { $tag }, { $when }
blades-last-cleaned = last cleaned { $when }
blades-last-lent = lent to { $to }, { $when }
blades-last-back = came back { $when }
blades-lent-since = In the hands of { $to } since { $when }.
blades-since-clean = Cut since it was last clean:
blades-cut-with = Cut with this blade
blades-clean = Clean this blade
blades-back = It is back
blades-more = More with this blade
blades-edit = Change
blades-lend = Lend
blades-retire = Out of service
blades-log = Log
blades-log-empty = Nothing is in the log yet.
blades-log-cut = Cut { $tag }
blades-log-cleaned-adequate = Cleaned, enough
blades-log-cleaned-short = Cleaned, not enough
blades-log-cleaned-unknown = Cleaned, nobody can say whether enough
blades-log-lent = Lent to { $to }
blades-log-back = Came back
blades-despite = Cut all the same:
blades-stem = stem { $n }
blades-took = { $n } min
blades-off-green = { $n } green off
blades-off-yellowing = { $n } partly dead off
blades-off-brown = { $n } dead off
blades-off-stalks = { $n ->
    [one] one stalk off
   *[other] { $n } stalks off
}
blades-agent-unknown = agent not noted
blades-strength = { $n }% in the bath
blades-contact = { $n } min of contact
blades-contact-unknown = contact not known
blades-brushed = brushed first
blades-not-brushed = not brushed first
blades-brushed-unknown = brushing not noted
blades-before-adequate = Before that cleaned, enough: { $when } ({ $how }).
blades-before-short = Before that cleaned, not enough: { $when } ({ $how }).
blades-before-unknown = Before that cleaned, nobody can say whether enough: { $when } ({ $how }).
blades-before-none = No cleaning before that is in the log.

## What carries a blade

blade-kind-unknown = kind not said
blade-kind-hand-saw = hand saw
blade-kind-pole-saw = pole saw
blade-kind-loppers = loppers
blade-kind-pole-loppers = pole loppers
blade-kind-pole-sickle = sickle or chisel on a pole
blade-kind-chain-saw = chain saw
blade-kind-reciprocating-saw = reciprocating saw
blade-kind-knife = knife or machete

## How a blade stands: short

blade-is-clean = Clean since { $when }
blade-is-same = On this palm only
blade-is-short = { $n } min short
blade-is-weak = Cleaning not enough
blade-is-unknown = Cleaning not known
blade-is-dirty = Not cleaned since { $tag }
blade-is-back = Not cleaned since it was lent
blade-is-nothing = Nothing known
blade-is-spent = Bath of { $when } is spent
blade-is-blocked = Blocked: cut { $tag }
blade-is-lent = Lent to { $to }

## How a blade stands: in a sentence

blade-says-clean = Clean since { $when }: it has cut nothing since.
blade-says-same = Since it was clean it has cut this palm only.
blade-says-short = { $n ->
    [one] Its cleaning was one minute too short. Clean it again, for the full time.
   *[other] Its cleaning was { $n } minutes too short. Clean it again, for the full time.
}
blade-says-weak = Its cleaning was not enough: too weak, a spent bath, or soil left on. More time would not help. Brush it and clean it in a fresh bath.
blade-says-unknown = Nobody can say whether its cleaning was enough. Clean it with something whose strength and time you know.
blade-says-dirty = It has cut { $tag } and was not cleaned since.
blade-says-back = It was in other hands and was not cleaned since.
blade-says-nothing = Nothing is known of this blade before now. Clean it first.
blade-says-spent = It was cleaned in a bath of { $when } that should have been changed by then. Mix a fresh one and clean it again.
blade-says-blocked = It cut { $tag } ({ $when }; { $reason }) and was not cleaned well enough since. It goes to no other palm.

## The cutting log

cutting-title = Log a cut
cutting-saved = Saved: the cut on
cutting-which-blade = Which blade?
cutting-which-palm = Which palm?
cutting-palm-tag = The palm’s tag
cutting-palm-hint = Type it, or scan the palm’s label with the camera.
cutting-go = Next
cutting-blade = Blade
cutting-palm = Palm
cutting-another = Another
cutting-verdict-clean = Clean for this palm
cutting-verdict-same = Clean for this palm
cutting-verdict-short = Not clean: too short
cutting-verdict-unknown = Not known to be clean
cutting-verdict-dirty = Not clean
cutting-verdict-nothing = Not known to be clean
cutting-verdict-spent = Not clean: the bath was spent
cutting-verdict-blocked = Blocked
cutting-held = Nobody cuts this palm
cutting-held-says = It is on hold ({ $reason }). No blade and no reason changes that: only lifting the hold does.
cutting-lent-says = The log says that it is in other hands. If it is here, say that it is back; then clean it.
cutting-clean-first = Clean it first
cutting-other-blade = Take another blade
cutting-override = Cut all the same
cutting-despite = Why with a blade that is not clean?
cutting-despite-blocked = Why with a blade that may carry an infection?
cutting-despite-hint = It stays in the log with this cut, for good.
cutting-why-same-row = Same row, no sickness known
cutting-why-no-cleaner = Nothing here to clean with
cutting-why-danger = Danger to people, could not wait
cutting-stem = Stem
cutting-time = Time
cutting-start = Start the cut
cutting-running = Cutting since
cutting-times = Start and end by hand
cutting-times-hint = Empty end: the moment of saving.
cutting-started = Start
cutting-ended = End
cutting-off = What came off
cutting-off-hint = Leave empty what was not counted.
cutting-crew = Who cut
cutting-save = Save the cut
cutting-save-despite = Save all the same
forms-off_green = Green
forms-off_green-hint = Wholly green fronds.
forms-off_yellowing = Partly dead
forms-off_yellowing-hint = Any yellow or dead tissue, not wholly dead.
forms-off_brown = Dead
forms-off_brown-hint = Wholly dead fronds.
forms-off_stalks = Stalks
forms-off_stalks-hint = Flower and fruit stalks.

## Cleaning

cleaning-title = Clean
cleaning-saved = Saved: cleaning of { $tags }.
cleaning-soaking = In contact now
cleaning-ready-at = In since { $from }, ready at { $until }.
cleaning-is-ready = Ready
cleaning-out = Take it out and save
cleaning-out-early = Take it out early
cleaning-forget = Was not in
cleaning-which = Which blades?
cleaning-first = Brush first
cleaning-brush-hint = Soil, sap and fibre use the bath up and shield what sits under them.
cleaning-brushed = Brushed clean, down to the metal
cleaning-with = With what?
cleaning-new-bath = A fresh bath
cleaning-no-bath = No bath noted: choose the mix
cleaning-other-mixes = Other mixes, or something of your own
cleaning-other-hint = Sources call these partly enough, tried them on other plants, or say nothing of palms.
cleaning-own = Something else
cleaning-own-agent = What
cleaning-strength = Percent in the bath
cleaning-minutes-field = Minutes of contact
cleaning-minutes-hint = For the timer: empty means as long as the strictest source says. If it is done already: how long it was; empty means not known.
cleaning-more = Who, and an earlier time
cleaning-by = Who cleaned
cleaning-done-at = Done at
cleaning-done-hint = Empty: the moment of saving.
cleaning-start = Start the time
cleaning-save = Already done: save
cleaning-bath-age = Mixed { $when }, { $age } old, { $n ->
    [0] nothing cleaned in it yet
    [one] one blade cleaned in it
   *[other] { $n } blades cleaned in it
}
cleaning-minutes = { $min } min
cleaning-hours = { $h } h { $min } min
cleaning-cautions = At the bath
cleaning-agents = What the sources say
cleaning-agents-what = They do not agree. A cleaning counts as enough only if the strictest source that fits would have it so.
cleaning-row-yes = Works: { $mix }; { $contact }
cleaning-row-partly = Works in part: { $mix }; { $contact }
cleaning-row-no = Does not work: { $mix }; { $contact }
cleaning-contact-range = { $low } to { $high } min of contact
cleaning-indirect = Tried on something else than palms, or recalled: not enough by itself
cleaning-bath-title = A fresh bath
cleaning-bath-what = Note the bath when you mix it: its age and what it has served decide when it is spent.
cleaning-mixed-at = Mixed at
cleaning-bath-save = Save the bath

## The palm’s page

palm-blades = Blades
palm-blades-none = No cut of this palm is in the log.
palm-blades-between = Cut in between with the same blade:
palm-blades-log = Log a cut
palm-blades-trace = Trace from this palm
palm-blades-older = Earlier cuts

## Forms of blades

blade-form-new = Register a blade
blade-form-edit = Change { $tag }
blade-form-tag = Tag
blade-form-tag-hint = The mark on the blade itself. One tag, one blade: a new blade in an old handle is a new tag.
blade-form-kind = What carries it?
blade-form-kit = Kit
blade-form-kit-hint = The set it belongs to; may be empty.
blade-form-holder = Who holds it
blade-form-holder-hint = May be empty.
blade-form-to = To whom
blade-form-to-hint = A person or a firm.
blade-lend-title = Lend { $tag }
blade-lend-what = Clean it before it goes out, and again when it is back: what it touches in other hands nobody here writes down.
blade-lend-do = Lend
blade-back-title = { $tag } is back
blade-back-what = From now on it counts as not clean. Clean it before it goes to a palm.
blade-back-do = It is back
blade-retire-title = Take { $tag } out of service
blade-retire-what = Its log stays, and a trace still finds what it touched. The tag becomes free.
blade-retire-do = Out of service
form-blade-tag-missing = A blade needs a tag.
form-blade-tag-long = The tag is longer than { $most } letters.
form-blade-tag-taken = Another blade in service has the tag “{ $tag }”.
form-blade-kind-unknown = Choose what carries the blade.
form-blade-to-missing = Say to whom.
form-blade-lent-not-clean = This blade is not clean. Clean it before it goes out.
form-blade-gone = This blade is not in service any more.
form-cut-held = This palm is on hold: nobody cuts it. Lift the hold first.
form-cut-blocked = This blade may carry an infection. Clean it, take another, or write why it was cut all the same.
form-cut-not-clean = This blade is not clean for this palm. Clean it, take another, or write why it was cut all the same.
form-cut-lent = The log says that this blade is lent. If it is here, say first that it is back.
form-cut-stem-unknown = This palm has { $stems ->
    [one] one stem.
   *[other] stems 1 to { $stems }.
}
form-cut-ends-before = The end is before the start.
form-cut-long = That is { $hours } hours for one stem.
form-moment-in-future = That has not happened yet.
form-moment-not-read = “{ $found }” is no date and hour.
form-clean-no-blade = Tick the blades that are cleaned.
form-clean-no-agent = With what it was cleaned is not said. Such a cleaning counts as unknown.
form-clean-own-agent = No source here speaks of “{ $agent }”. Such a cleaning counts as unknown.
form-clean-bath-gone = This bath or mix is not offered any more. Choose again.
form-clean-how-long = Say how many minutes: no source says it for this.
