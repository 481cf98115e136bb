### The season: when to come back, and the calendar feed

common-season = Season

## The page

season-title = Season
season-title-site = Season: { $site }
season-summary = { $visits ->
    [0] No visit is due
    [one] { $visits } visit
   *[other] { $visits } visits
} at { $sites ->
    [one] { $sites } site
   *[other] { $sites } sites
} in { $weeks } weeks, { $money }; { $late ->
    [0] no palm late.
    [one] { $late } window is not met.
   *[other] { $late } windows are not met.
}
season-what = Every palm has a window: worth a visit from one day on, past your limit after another. The visits below meet the windows at the least cost. No palm is cut before its window opens, however few the visits; after a visit the next window follows from the forecast.
season-empty = No palm stands in the register yet.
season-weeks-label = How far ahead
season-weeks = { $n } weeks
season-all-sites = All sites
season-feed-link = Calendar feed (iCalendar)
season-feed-hint = Put this address into your calendar program; it asks again by itself. Windows, proposed visits and planned rounds, as whole days.
season-prices-assumed = Assumed prices: { $which }. They weigh trips against hours and are no offer.
season-price-trip = trip
season-price-lift-day = lift for a day
season-price-crew-hour = crew hour
season-price-haul-m3 = haulage
season-price-tip-m3 = tipping
season-no-site = Without a site
season-site-summary = { $visits ->
    [0] No visit is due
    [one] { $visits } visit
   *[other] { $visits } visits
} for { $palms ->
    [one] { $palms } palm with a window in the season
   *[other] { $palms } palms with a window in the season
}{ $late ->
    [0] ; none late.
    [one] ; { $late } window not met.
   *[other] ; { $late } windows not met.
}
season-open-site = One visit more or fewer, palm by palm
season-visits = Visits
season-visit-what = { $palms ->
    [one] { $palms } palm
   *[other] { $palms } palms
}, about { $fronds } dead fronds
season-visit-work = { $hours } crew hours, { $bulk } loose{ $lift ->
    [0] { "" }
   *[other] , lift
}{ $days ->
    [0] { "" }
    [1] { "" }
   *[other] , { $days } days
}
season-visit-palms = Which palms
season-takes = about { $fronds }
season-takes-stalks = stalks
season-plan-day = Plan this day
season-late = Not met
season-late-served = Limit { $latest }, served { $served }: { $days ->
    [one] { $days } day late
   *[other] { $days } days late
}, about { $fronds } dead fronds by then. { $why }
season-late-over-served = Past its limit already; served { $served }, about { $fronds } dead fronds by then.
season-late-not-served = Limit { $latest }, not served in this season: { $days ->
    [one] { $days } day late at its end
   *[other] { $days } days late at its end
}, about { $fronds } dead fronds by then. { $why }
season-late-overdue = The limit is passed already.
season-late-held = A hold forbids cutting until the limit is passed.
season-late-closed = The site is closed while the window is open.
season-late-narrow = No working day falls into the window, or none that leaves the next one to be met.
season-late-too-few = Too few visits.
season-left = Not planned for
season-left-unseen = Nobody has looked at it yet. Look first.
season-left-unread = It could not be read; its own page says why.
season-left-held = Held, and nobody has said until when. It is planned for once the hold is lifted or has a last day.
season-left-many = More than { $most } palms of this site are due; those due first are planned.
season-note-unsure = { $n ->
    [one] { $n } palm’s forecast is so wide that its limit may be passed before a visit is worth it; its window is left open for four weeks (assumed). A look narrows it.
   *[other] { $n } palms’ forecasts are so wide that their limits may be passed before a visit is worth it; their windows are left open for four weeks (assumed). A look narrows them.
}
season-note-stalks = { $n ->
    [one] Stalks of { $n } palm stay on: a visit at the end of bloom would cost more than it is worth.
   *[other] Stalks of { $n } palms stay on: a visit at the end of bloom would cost more than it is worth.
}
season-note-nothing = { $n ->
    [one] { $n } palm has no window within the season.
   *[other] { $n } palms have no window within the season.
}
season-note-storm = The storm season opens { $date }: dead fronds still hanging then count against a plan. No live frond comes off for a storm.
season-closed-title = Closed
season-closed = { $first } to { $last }{ $words ->
    [0] { "" }
   *[other] : { $why }
}
season-cost = { $total }: trips { $trips }, lift { $lift }, crew { $crew }, debris { $debris }
season-proven = Proven: no plan leaves palms less late, and none that does as well costs less.
season-within = Found, not proven: a plan could be better by at most { $gap }. { $days ->
    [0] { "" }
    [one] One day of work beyond the first of a visit was added afterwards.
   *[other] { $days } days of work beyond the first of a visit were added afterwards.
}
season-within-days = Found, not proven: at most { $days ->
    [one] { $days } day
   *[other] { $days } days
} of lateness could be spared.
season-proven-short = Proven.
season-found-short = Found, not proven to be the best.

## One visit more or fewer

season-otherwise = One visit more or fewer
season-otherwise-what = Fewer visits never mean cutting more: what is not served in its window is late, and stands here.
season-fewer = One visit fewer: { $n }
season-more = One visit more: { $n }
season-fewer-palms = { $missed ->
    [0] { $days ->
        [0] No window more is missed and nobody is later; more may hang when the storms come.
        [one] No window more is missed, but palms are { $days } day later in all.
       *[other] No window more is missed, but palms are { $days } days later in all.
    }
    [one] { $missed } window more is missed; palms are { $days } days later in all.
   *[other] { $missed } windows more are missed; palms are { $days } days later in all.
}
season-more-palms = { $missed ->
    [0] { $waiting ->
        [0] It would spare palms no waiting.
        [one] Palms wait { $waiting } day less in open windows, all together.
       *[other] Palms wait { $waiting } days less in open windows, all together.
    }
   *[other] { $missed } windows more are missed; { $days } days later, { $waiting } days less waiting.
}
season-more-stalks-left = { $n ->
    [one] Stalks of { $n } palm more stay on.
   *[other] Stalks of { $n } palms more stay on.
}
season-purse = { $more ->
    [0] Saves { $sum }.
   *[other] Costs { $sum } more.
}
season-days = On: { $days }

## Weeks

season-grid-sites = Weeks by sites
season-grid-palms = Weeks by palms
season-grid-hint = A figure counts palms. Slide to see later weeks.
season-not-drawn = { $n ->
    [one] { $n } more palm is not drawn.
   *[other] { $n } more palms are not drawn.
}
season-col-site = Site
season-col-palm = Palm
season-key-open = Window open
season-key-visit = Visit
season-key-lift = Visit with lift
season-key-late = Past the limit
season-key-closed = Closed
season-cell-blank = Week of { $date }: nothing due
season-cell-open = Week of { $date }: { $n ->
    [0] window open
    [one] { $n } palm with an open window
   *[other] { $n } palms with an open window
}
season-cell-late = Week of { $date }: { $n ->
    [0] past the limit
    [one] { $n } palm past its limit
   *[other] { $n } palms past their limits
}
season-cell-closed = Week of { $date }: closed
season-cell-visit = { $date }: { $n ->
    [0] visit
    [one] visit, { $n } palm
   *[other] visit, { $n } palms
}
season-cell-lift = { $date }: { $n ->
    [0] visit with lift
    [one] visit with lift, { $n } palm
   *[other] visit with lift, { $n } palms
}
season-month-1 = Jan
season-month-2 = Feb
season-month-3 = Mar
season-month-4 = Apr
season-month-5 = May
season-month-6 = Jun
season-month-7 = Jul
season-month-8 = Aug
season-month-9 = Sep
season-month-10 = Oct
season-month-11 = Nov
season-month-12 = Dec

## The calendar feed

feed-name = Palm visits
feed-visit = { $site }: { $n ->
    [one] { $n } palm
   *[other] { $n } palms
}{ $lift ->
    [0] { "" }
   *[other] , lift
} (proposed)
feed-visit-about = Proposed by the season plan; about { $hours } crew hours.
feed-window = { $tag } due, { $site }
feed-window-until = Past the limit after { $date }.
feed-window-open = No limit is in sight.
feed-round = Round { $crew }: { $n ->
    [one] { $n } palm
   *[other] { $n } palms
}
feed-round-hours = { $leave } to { $back }

## The command line

season-reading = Reading the palms …
season-no-such-site = No palm stands on a site named “{ $site }”. Names are as palms write them.
