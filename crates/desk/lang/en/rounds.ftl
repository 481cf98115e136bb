### Day rounds: who goes where, in which order, at what time

common-rounds = Rounds

## The list

rounds-title = Rounds
rounds-lead = { $n ->
    [0] No round is planned.
    [one] { $n } round is planned from today on.
   *[other] { $n } rounds are planned from today on.
}
rounds-plan-link = Plan a day
today-rounds = Rounds today
rounds-past = Earlier rounds
rounds-row = { $crew }: { $palms ->
    [one] { $palms } palm
   *[other] { $palms } palms
}, { $sites }
rounds-state-planned = Planned
rounds-state-under-way = Under way: { $done } of { $of } palms
rounds-state-finished = Back: { $done } done, { $skipped } left out
rounds-state-open = Not closed: { $done } of { $of } palms

## Planning a day

plan-title = Plan a day
plan-lead = Which crew goes to which palms, in which order. Nothing is recorded until you keep it.
plan-day = Day
plan-crews = Crews
plan-crews-hint = None ticked: all that work.
plan-crew-no-start = no place to start from
plan-crew-lift = with lift
plan-no-crews = No crew is described yet. Describe one first: where it starts, its hours, whether it has a lift.
plan-crews-link = Crews
plan-scope = Palms
plan-scope-due = All that are due on that day
plan-scope-sites = Those due at these sites
plan-scope-palms = These palms, due or not
plan-tasks = What is done
plan-tasks-hint = Watering and feeding only where they are due. Feeding wants another load: tick it when it goes along.
plan-tags = Tags
plan-tags-hint = Separated by commas or blanks.
plan-site-due = { $n ->
    [0] nothing due today
    [one] { $n } palm due today
   *[other] { $n } palms due today
}
plan-search = Propose
plan-again = Propose anew
plan-keep = Keep these rounds
plan-notes = Words to the crews
plan-replaces = { $n ->
    [one] Keeping takes the place of { $n } round planned before for the same crew and day.
   *[other] Keeping takes the place of { $n } rounds planned before for the same crews and day.
}
plan-proposal = Proposal for { $date }
plan-summary = { $palms ->
    [one] { $palms } palm
   *[other] { $palms } palms
} in { $rounds ->
    [one] { $rounds } round
   *[other] { $rounds } rounds
}; { $left ->
    [0] none left out.
    [one] { $left } left out.
   *[other] { $left } left out.
}
plan-round = { $crew }: { $leave } to { $back }
plan-round-sum = { $palms ->
    [one] { $palms } palm
   *[other] { $palms } palms
}, { $work } of work, { $driving } on the road, { $km }
plan-time = Start
plan-palm = Palm
plan-what = What
plan-minutes = Minutes
plan-left = Left out
plan-rests-on = What this rests on
plan-map = Map of the proposal
plan-map-what = Sites by their gates, crews by their start; lines as the crow flies, north is up.
plan-form-day = Give the day to plan, as 2026-03-09.
plan-form-past = That day is over. Plan today or a later day.
plan-form-tags = Give at least one tag, or choose another way to pick palms.
plan-form-tasks = Tick at least one thing to do.
plan-form-sites = Tick at least one site, or choose another way to pick palms.
plan-form-carried = The proposal did not come back whole. Propose anew.

## A round

round-title = Round of { $crew }
round-when = { $date }, { $leave } to { $back }
round-when-day = { $date }
round-start = Set out
round-finish = Back in the yard
round-next = Next
round-none-left = All palms of this round are done or left out.
round-began = Set out at { $time }
round-ended = Back at { $time }
round-progress = { $done } done, { $skipped } left out, { $open } to go
round-done = Done
round-done-minutes = Minutes it took
round-done-minutes-hint = They teach the estimate. Leave it empty if you did not look.
round-done-note = Note
round-skip = Leave out
round-skip-why = Why
round-why-no-access = no way in
round-why-occupied = nest or people in the way
round-why-ill = looks ill: wait for the keeper
round-why-weather = wind or rain
round-why-time = no time left
round-why-other = something else
round-why-words = In your words
round-open-palm = Page of this palm
round-log-cut = Log the cut
round-log-look = Note the look
round-log-water = Note the watering
round-log-feed = Note the feeding
round-stop-done = done { $time }
round-stop-done-minutes = done { $time }, { $minutes } min
round-stop-skipped = left out { $time }: { $why }
round-stop-open = to go
round-all = All palms
round-clean = Clean and soak the blade before this palm
round-same-blade = The same blade may go on
round-hold = Held: do not cut
round-call-off = Call this round off
round-called-off = The round was called off.
round-call-off-why = Why
round-form-why = Say why, so that the keeper knows.
round-form-minutes = Minutes as a number, from 0 to 1440.
round-form-gone = This round is not planned any more.
round-form-palm = This palm is not on the round.
round-geo = way there
round-cautions = Cautions
round-notes = Words to the crew

round-task-look = look
round-task-cut = cut
round-task-water = water
round-task-feed = feed
round-task-clean = clean the trunk
round-health-healthy = sound
round-health-unknown = not looked at lately
round-health-suspect = suspect: after the sound ones
round-health-confirmed = confirmed ill: last
round-lift = lift

## Why palms are left out

round-left-skills = { $site }: no crew that goes out has a lift, and the trunk is too high for a pole. Send a crew with a lift, or hire one.
round-left-room = { $site }: no crew has room for what comes off, even empty.
round-left-hours = { $site }: no crew can be there within the hours of the site and be back within its own.
round-left-full = { $site }: no time left beside palms that are more urgent. Take another day or another crew.
round-left-nothing = Nothing of what was asked for is due there, or a hold or a rule stands against it.
round-left-closed = { $site }: closed until { $until } ({ $why }).
round-left-no-place = { $site }: nobody knows where it is. Give the site a gate, or one of its palms a position.

## What stands in the way of a plan

round-no-crew = Nobody can be sent. Describe a crew with a place to start from.
round-no-such-crew = No crew is called { $crew }.
round-crew-no-start = { $crew } has no place to start from, so it is not sent. Give the crew one.
round-begun = { $crew } has begun its round of that day. What has begun is not planned anew.
round-nothing-to-do = Nothing is due on { $date }. Choose a later day, or name palms by their tags.
round-many-palms = { $n } palms are more than one day can hold ({ $most }). Choose some sites.
round-no-such-palm = No palm with the tag { $tag } stands in the register.
round-not-planned = The day cannot be planned: { $why }
round-remark-reckoned = Ways that no table gives are reckoned: 1.3 times the straight line at 35 km/h (assumed).
round-remark-usual-hours = { $crew } has no hours of its own: 7:00 to 15:30 is assumed.
round-remark-minutes = Minutes at a palm are those of the estimate, most of them assumed until times are logged: they follow the fronds to take off, their length, spines and height.
round-remark-minutes-all = Minutes at a palm are those of the estimate at the pace your crews have on the whole, from the times they logged.
round-remark-minutes-crew = Minutes at a palm are those of the estimate at the pace of { $crew }, from logged times.
travel-no-name = Give the name of a crew or a site.
travel-no-number = Give a number: kilometres of road, minutes of driving.
travel-twice = This way stands in line { $first } already. Keep one of the two.

## The crew sheet

crew-sheet-n = No.
crew-sheet-blade = Blade
crew-sheet-done = Done
crew-sheet-clean = CLEAN BLADE FIRST
crew-sheet-cards = Palms to cut
crew-sheet-stem = stem { $stem }
crew-sheet-from = From
crew-sheet-to = To
crew-sheet-off = Fronds off
crew-sheet-note = Note
crew-sheet-scan = This round on the phone
crew-sheet-link = Crew sheet
