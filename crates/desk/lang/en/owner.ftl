### The owner's sheet and private links

## The sheet

owner-title = Your palm { $tag }
owner-as-of = As of { $date }
owner-stand-urgent = Needs a person now
owner-stand-on-its-way = Moved, on its way
owner-stand-established = Moved, established again
owner-stand-settled = Settled
owner-urgent-title = Now
owner-held = Nobody cuts this palm for now: { $reason }.
owner-spear-leaning = The spear, the youngest frond in the middle, leaned on { $on }. Call today; cut nothing.
owner-spear-down = The spear, the youngest frond in the middle, was down on { $on }. Call now; cut nothing.
owner-spear-pulled = The spear, the youngest frond in the middle, came out on { $on }. Call now; cut nothing.

## What was done

owner-done-title = What was done
owner-done-since = Since { $date }
owner-done-none = Nothing is noted in this time.
owner-done-moved = Dug and moved
owner-done-watered = { $n ->
    [one] Watered { $n } time, this is the last
   *[other] Watered { $n } times, this is the last
}
owner-done-fed = Fed: { $product }
owner-done-fed-amount = Fed: { $product }, { $amount }
owner-done-looked = { $n ->
    [one] Looked at on { $n } day, this is the last
   *[other] Looked at on { $n } days, this is the last
}
owner-done-counted = Counted
owner-cut = Taken off: { $what }
owner-cut-green = { $n } green
owner-cut-yellowing = { $n } yellowing
owner-cut-brown = { $n } brown
owner-cut-stalks = { $n ->
    [one] { $n } stalk
   *[other] { $n } stalks
}
owner-cut-uncounted = Cut; what came off was not counted
owner-cut-earlier = { $n ->
    [one] Cut on { $n } earlier day, this is the last of them
   *[other] Cut on { $n } earlier days, this is the last of them
}

## The crown

owner-crown-title = The crown now and to come
owner-range = Nine of ten: { $live } live, { $brown } brown.
owner-picture-note = Seen from the side, as the counts make it likely if nothing is cut until then. Dashed: the level line.
owner-key-green = green
owner-key-yellowing = yellowing
owner-key-brown = brown, hanging
owner-more-stems = { $n ->
    [one] { $n } more stem stands no worse and is not drawn.
   *[other] { $n } more stems stand no worse and are not drawn.
}

## What to expect

owner-expect-title = What to expect
owner-unseen = { $high ->
    [0] Nobody has counted yet. From { $since } to { $by } no frond should be lost.
    [1] Nobody has counted yet. From { $since } to { $by } it would be { $range } frond.
   *[other] Nobody has counted yet. From { $since } to { $by } it would be { $range } fronds.
}
owner-later = { $high ->
    [0] By { $by }: no frond.
    [1] By { $by }: { $range } frond in all.
   *[other] By { $by }: { $range } fronds in all.
}
owner-rests-on = Four of five such palms stay within this, by ordinary ageing; past the call only one in twenty comes. It reaches { $weeks } weeks ahead.
owner-rests-on-moved = Four of five such palms stay within this, by ageing and the move together; past the call only one in twenty comes. It reaches { $weeks } weeks ahead.
owner-rests-on-urgent = So an ordinary palm would go on, for { $weeks } weeks. This one needs a person first; the pictures go by its own counts.
owner-call-title = When to call
owner-call-at-once = At once, whatever the count: the spear (the youngest frond, upright in the middle) leans, lies down or comes out; the trunk leans or moves; many fronds hang within days.
owner-call-whom = Call (name, telephone)
owner-call-giver = Call whoever gave you this page.
owner-next-title = What comes next
owner-next-cut = Dead fronds:
owner-next-take = { $n ->
    [0] At a visit today nothing would come off.
    [one] At a visit today { $n } dead frond would come off, nothing green.
   *[other] At a visit today { $n } dead fronds would come off, nothing green.
}
owner-next-held = Nothing is cut until the keeper says so.
owner-usual-title = Usual, and no fault
owner-usual-colour = A trunk whose colour has changed, or that was scuffed on the road, looks as before in { $low } to { $high } months; that is no fault.

## Water

owner-water-title = Water
owner-water-moved = Until its roots are back it drinks from the ball it was dug with: little at a time, and often. As roots grow it is watered more seldom.
owner-water-settled = An established palm finds much of its water itself. In dry weather:
owner-water-cannot-tell = How much it needs cannot be told from what is known. Ask the keeper.
owner-water-nothing-noted = No watering is noted yet: feel the soil of the ball today, and water if it is dry.
owner-water-due = Due since { $date }: give { $litres }.
owner-water-next = Next water: { $date }, sooner if the soil of the ball is dry.
owner-water-later = Going by what was given it will not want for water within two months.
owner-water-head-from = From
owner-water-head-often = How often
owner-water-head-each = Each time
owner-water-daily = every day
owner-water-times = { $goes } times a day
owner-water-every = { $n ->
    [one] every day
   *[other] every { $n } days
}
owner-water-feel = First feel the soil a hand deep at the edge of the ball: wet, wait a day; dry, water today.
owner-water-slow = Slowly, over the ball itself, not against the trunk. What runs off beside it is lost.
owner-water-rain = After a soaking rain, begin to count anew.
owner-water-short = Even so the ball cannot hold what a full crown may draw on a hot day; some drooping at noon that is gone by morning is no alarm.
owner-water-unknown = On the safe side, because not known: { $what }.
owner-water-unknown-soil = the soil
owner-water-unknown-ball = the size of the ball
owner-water-unknown-crown = how long its fronds are
owner-water-unknown-counts = how many fronds it has
owner-water-unknown-place = where it stands
owner-water-unknown-weather = the weather of some days
owner-water-rules = Local watering rules come first.

## Feed

owner-feed-title = Feed
owner-feed-lead = Spread over the soil under the crown, not against the trunk, and watered in.
owner-feed-nothing = Nothing now.
owner-feed-head-against = For
owner-feed-head-what = With
owner-feed-head-amount = How much
owner-feed-head-next = When
owner-feed-maintenance = keeping well fed
owner-feed-now = now, or as the keeper says
owner-feed-amount = { $amount } a time, { $times } times a year
owner-feed-just-moved = No feed before { $from }: planted { $moved }, its roots are not ready ({ $against }).
owner-feed-too-soon = Fed { $last } ({ $against }): not again before { $from }.
owner-feed-cause-first = { $against }: no feed mends it. Wet, buried or airless roots are put right first.
owner-feed-barred = A local rule bars this feed now ({ $against }): { $rule }. Free again from { $free }.
owner-feed-rules-unknown = Whether a local rule bars feeding in some months is not known here: ask the local office.

## What nobody may do

owner-never-title = Let nobody do this
owner-level = The level line runs through the base of the crown, from 9 to 3 on the clock; it is dashed in the pictures.
owner-never-dirty = No blade that was not cleaned since the last palm. Ask to see it done: sap carries disease from palm to palm.
owner-never-alone = Nobody begins a cut, a climb or a treatment that is not on this sheet without asking the keeper first.
owner-cautions-title = For whoever works on it

## The keeper's page

owner-page-title = Owner’s sheet of { $tag }
owner-link = Owner’s sheet
owner-page-what = What the owner gets: as PDF, or as a page behind a private link that needs no account and can be revoked. Your notes and reasons stay out of it.
owner-print = Print as PDF
owner-links-title = Private links
owner-links-none = No link is out.
owner-link-given-on = given { $date }
owner-link-until = until { $date }
owner-link-over = ended { $date }
owner-link-open = until revoked
owner-link-nobody = Nobody named
owner-link-works = open
owner-link-closed = closed
owner-revoke = Revoke
owner-revoked = revoked by the keeper
owner-give-title = Give a link
owner-give = Make the link
owner-give-what = Whoever has the link can read this palm’s sheet, nothing else. Only a fingerprint of it is kept: it is shown once.
owner-given-title = The link, shown this once
owner-given-copy = Copy it now. It cannot be shown again; if it is lost, revoke it and give a new one.
owner-given-for = For { $owner }
owner-given-before = This link was made already, and it is shown once only. If it is lost, revoke it below and give a new one.
owner-given-here = This address works on this machine only. To let owners in from outside, put the program behind an address of your own that passes on /o/ and /assets/ and nothing else.
owner-preview = What the owner sees
forms-link_owner = For whom
forms-link_owner-hint = So that you know later whose link it is.
forms-link_until = Works until
forms-link_until-hint = Last day. Empty: until you revoke it.
form-owner-nobody = Say for whom the link is.
form-owner-over = A link that ended before today, { $today }, opens nothing. Choose a later day, or none.

## The owner's page

owner-closed-title = This link is closed
owner-closed = It may have been mistyped, have ended, or have been taken back. Ask whoever gave it to you for a new one.
owner-page-lang = Language and units
owner-as-pdf = As PDF, to print
owner-sources-title = Where this comes from
owner-sheet-link = This sheet, always up to date. Whoever has the address can read it: keep it to yourself.

## The summary of all palms of an owner

common-owners = Owners
owners-title = Owners
owners-summary = { $owners ->
    [one] { $owners } owner
   *[other] { $owners } owners
}, { $sites ->
    [0] every site has one named.
    [one] { $sites } site without an owner named.
   *[other] { $sites } sites without an owner named.
}
owners-what = One sheet for each: what was done, how the palms stand, what comes next. Print it or send the PDF. Who owns a site is said on the site’s own page.
owners-empty = No palm stands in the register yet.
owners-named = Owners
owners-sites = Sites without an owner named
owners-say-who = Say whose it is
owners-link = Owner’s summary
error-not-found-owner = There is no owner “{ $name }” on any site.
summary-no-such-owner = No site names an owner “{ $name }”. Names are as sites write them.
summary-title-owner = Palms of { $owner }
summary-title-site = Palms at { $site }
summary-title-no-site = Palms without a site
summary-period = Told: { $from } to { $until }
summary-no-day = “{ $found }” is no day; 2026-05-04 is expected.
summary-future = Nothing is recorded of days to come. Choose { $today } or earlier.
summary-backwards = This is after the last day, { $until }. Choose an earlier one.
summary-from = First day
summary-until = Last day
summary-show = Show these days
summary-other-days = Other days
summary-print = Print as PDF
summary-not-noted = not noted
summary-palms = { $n ->
    [one] { $text } palm
   *[other] { $text } palms
}

## The counts

summary-glance-title = At a glance
summary-count-palms = { $n ->
    [one] palm
   *[other] palms
}
summary-count-looked = { $n ->
    [one] palm looked at
   *[other] palms looked at
}
summary-count-cut = { $n ->
    [one] palm cut
   *[other] palms cut
}
summary-count-fronds = { $n ->
    [one] frond taken off
   *[other] fronds taken off
}
summary-count-moved = { $n ->
    [one] palm moved
   *[other] palms moved
}
summary-count-held = { $n ->
    [one] palm on hold today
   *[other] palms on hold today
}
summary-count-call = { $n ->
    [one] palm to call about today
   *[other] palms to call about today
}
summary-off = Taken off in all: { $green } green, { $yellowing } yellowing, { $brown } brown fronds and { $stalks ->
    [one] { $stalks } stalk.
   *[other] { $stalks } stalks.
}
summary-off-uncounted = { $n ->
    [one] At { $text } cut not all that came off was counted: the true figures may be higher.
   *[other] At { $text } cuts not all that came off was counted: the true figures may be higher.
}
summary-gone = { $n ->
    [one] Work on { $text } palm that has left the register since is counted, too.
   *[other] Work on { $text } palms that have left the register since is counted, too.
}

## The palms

summary-palms-title = Palms that need your attention
summary-palms-none = No palm needs your attention.
summary-palms-drawn = Crowns as they stand today, seen from the side, as the counts make them likely. Dashed: the level line.
summary-stand-call = Call
summary-stand-held = On hold
summary-stand-care = Needs care
summary-stand-moved = Moved, on its way
summary-more-palms = { $n ->
    [one] { $text } more palm needs attention; its own sheet tells.
   *[other] { $text } more palms need attention; their own sheets tell.
}
summary-also = Also
summary-tripwire = { $stems ->
    [0] { $over ->
        [one] More than { $over } frond lost between { $since } and { $by }, or a spear that leans: call.
       *[other] More than { $over } fronds lost between { $since } and { $by }, or a spear that leans: call.
    }
   *[other] { $over ->
        [one] More than { $over } frond lost on one stem between { $since } and { $by }, or a spear that leans: call.
       *[other] More than { $over } fronds lost on one stem between { $since } and { $by }, or a spear that leans: call.
    }
}
summary-lost = { $n ->
    [one] { $n } frond lost, more than ageing or a move makes: call the keeper.
   *[other] { $n } fronds lost, more than ageing or a move makes: call the keeper.
}
summary-water-unknown = How much water it needs is not known. Ask the keeper.
summary-water-nothing-noted = No watering is noted: feel the soil of the ball today.
summary-water-due = Water due since { $date }: { $litres }.
summary-water-next = Next water { $date }.
summary-others-title = All others
summary-no-palms = No palm stands here yet.
summary-fine = { $n ->
    [0] No other palm is known to be as it should be.
    [one] { $text } palm as it should be.
   *[other] { $text } palms as they should be.
}
summary-late = { $n ->
    [one] { $text } palm waits for a visit: more dead fronds hang than are meant to.
   *[other] { $text } palms wait for a visit: more dead fronds hang than are meant to.
}
summary-unseen = { $n ->
    [one] { $text } palm that nobody has looked at yet: how it stands is not known.
   *[other] { $text } palms that nobody has looked at yet: how they stand is not known.
}
summary-long-ago = { $n ->
    [one] { $text } palm that nobody has looked at for half a year: how it stands today is not known.
   *[other] { $text } palms that nobody has looked at for half a year: how they stand today is not known.
}
summary-unread = { $n ->
    [one] { $text } palm could not be read: how it stands is not known.
   *[other] { $text } palms could not be read: how they stand is not known.
}

## What was done for them

summary-done-none = No cut, move or feeding is noted in this time.
summary-head-day = Day
summary-head-site = Site
summary-head-palms = Palms
summary-head-what = What
summary-head-crew = By
summary-head-blades = Blade before each palm
summary-did-fed-unnamed = Fed; with what is not noted
summary-did-moved-off = Dug and moved; taken off: { $what }
summary-did-nothing-off = Cut; nothing came off
summary-uncounted = { $n ->
    [one] at { $text } palm not all was counted
   *[other] at { $text } palms not all was counted
}
summary-blade-clean = clean
summary-blade-unknown = not known
summary-blade-not-noted = no cleaning noted
summary-blade-dirty = not clean
summary-blade-at = { $what }: { $n ->
    [one] { $n } palm
   *[other] { $n } palms
}
summary-done-earlier = { $n ->
    [one] { $n } earlier line is not shown; it took off { $fronds } fronds.
   *[other] { $n } earlier lines are not shown; they took off { $fronds } fronds.
}
summary-done-looked = Looked at: { $palms ->
    [one] { $palms } palm
   *[other] { $palms } palms
} on { $days ->
    [one] { $days } day
   *[other] { $days } days
}, last { $last }.
summary-done-watered = Watered: { $palms ->
    [one] { $palms } palm
   *[other] { $palms } palms
} on { $days ->
    [one] { $days } day
   *[other] { $days } days
}, last { $last }.
summary-no-money = What it cost is not in these records.

## What comes next for them

summary-next-none = Nothing is planned and nothing falls due.
summary-next-round = planned round
summary-next-visit = proposed visit
summary-next-look = look after a move
summary-next-round-what = { $palms }, crew: { $crew }
summary-next-look-what = { $tags }{ $more ->
    [0] { "" }
   *[other] {" "}and { $more } more
}
summary-next-look-late = { $tags }{ $more ->
    [0] { "" }
   *[other] {" "}and { $more } more
}: was due, nobody has looked
summary-next-more = { $n ->
    [one] { $text } later line is not shown.
   *[other] { $text } later lines are not shown.
}
summary-next-no-visit = { $site }: no visit falls due within { $weeks } weeks.
summary-left-unseen = { $n ->
    [one] { $n } palm is not planned for: nobody has looked at it yet.
   *[other] { $n } palms are not planned for: nobody has looked at them yet.
}
summary-left-unread = { $n ->
    [one] { $n } palm is not planned for: it could not be read.
   *[other] { $n } palms are not planned for: they could not be read.
}
summary-left-held = { $n ->
    [one] { $n } palm is not planned for: it is on hold, nobody has said until when.
   *[other] { $n } palms are not planned for: they are on hold, nobody has said until when.
}
summary-left-many = { $n ->
    [one] { $n } palm is not planned for yet: others of its site are due first.
   *[other] { $n } palms are not planned for yet: others of their site are due first.
}

## What the owner must mind

summary-mind-title = Please mind
summary-wires = Every wire is live. Nobody but line-clearance workers comes nearer to one than { $keep } with body, ladder, pole or frond; above 50 kV the distance is greater, and with the voltage unknown the utility is asked first.
summary-wires-site = { $site }: the utility names { $kv } kV to ground; keep { $keep }.
summary-wires-palms = { $n ->
    [one] Wires are noted at { $n } palm
   *[other] Wires are noted at { $n } palms
}: { $tags }{ $more ->
    [0] .
   *[other] {" "}and { $more } more.
}
summary-wires-unknown = { $n ->
    [one] At { $text } palm nobody has noted whether wires are near: look up first.
   *[other] At { $text } palms nobody has noted whether wires are near: look up first.
}
