### What work takes and costs: estimates, prices, quotes

common-estimate = Estimate
common-prices = Prices

estimate-title = Estimate
estimate-lead = How long the cuts take that may be made today, how much debris they leave, and what they cost. Nothing is recorded.
estimate-site = Site
estimate-palms = Palms by tag
estimate-palms-hint = With commas between; then also palms that are not due. Empty: all that are due.
estimate-crew = Crew
estimate-any = Any
estimate-make = Estimate
estimate-print = Print a quote (PDF)
estimate-prices-link = Prices and figures
estimate-summary = { $palms ->
    [one] { $palms } palm
   *[other] { $palms } palms
}, { $fronds ->
    [one] { $fronds } frond
   *[other] { $fronds } fronds
}{ $stalks ->
    [0] { "" }
   *[other] , { $stalks } stalks
}: { $time }. { $money } with tax, where one is set; seldom less than { $low } or more than { $high }.
estimate-between = { $low } to { $high }, as a rule { $mid }
estimate-minutes = { $min } min
estimate-hours = { $h } h { $min } min
estimate-what = { $fronds ->
    [one] { $fronds } frond
   *[other] { $fronds } fronds
} ({ $dead } dead), { $from }
estimate-from-hand = by hand from the ground
estimate-from-pole = with a pole from the ground
estimate-from-lift = from a lift
estimate-debris = { $low } to { $high } loose, as a rule { $mid }; { $mass_low } to { $mass_high }
estimate-tax = Tax { $pct } %
estimate-times = { $quantity } at { $price }
estimate-no-price = no price is set

estimate-time-title = Time
estimate-time-what = Minutes of the whole crew at the palms. One time in ten it is less than the first figure, one in ten more than the second.
estimate-sum = Together
estimate-debris-title = Debris
estimate-money-title = Money
estimate-net = Without tax
estimate-gross = To pay
estimate-palms-title = Palms
estimate-left-title = Not cut
estimate-assumed-title = What is assumed
estimate-assumed-what = Nobody gave these figures, or not all of them. Set your own, and they take the place of these.
estimate-partly-assumed = partly assumed

estimate-line-walk = On foot
estimate-line-find = Finding the palm
estimate-line-set-up = Cordon and tools
estimate-line-pole = Making the pole ready
estimate-line-lift = Bringing up the lift
estimate-line-clean = Wiping and changing blades
estimate-line-soak = Waiting for the bath
estimate-line-fronds = Cutting fronds
estimate-line-stalks = Cutting stalks
estimate-line-gather = Gathering
estimate-line-load = Loading
estimate-line-beside = Done while another cuts
estimate-line-look = Looking over
estimate-line-water = Watering
estimate-line-feed = Feeding
estimate-line-pace = What logged times teach

estimate-charge-trip = Trips
estimate-charge-lift_day = Lift
estimate-charge-crew_hour = Crew
estimate-charge-haul_m3 = Haulage
estimate-charge-tip_m3 = Tip
estimate-unit-trip = { $n }
estimate-unit-lift_day = { $n } d
estimate-unit-crew_hour = { $n } h
estimate-unit-haul_m3 = { $n } m³
estimate-unit-tip_m3 = { $n } m³

estimate-pace-none = No logged time speaks in this yet: it rests on the tables alone. Note begin and end of a cut, or the minutes of a palm on a round, and your crews set the pace.{ $unused ->
    [0] { "" }
    [one] { " " }One logged time could not be used: nobody noted what came off.
   *[other] { " " }{ $unused } logged times could not be used: nobody noted what came off.
}
estimate-pace-all = { $times ->
    [one] One logged time of your crews speaks
   *[other] { $times } logged times of your crews speak
} in this: they take { $factor } times what the tables say.{ $unused ->
    [0] { "" }
    [one] { " " }One could not be used: nobody noted what came off.
   *[other] { " " }{ $unused } could not be used: nobody noted what came off.
}
estimate-pace-crew = { $crew } takes { $factor } times what the tables say: { $own ->
    [0] none of its own times is logged, those of others speak for it ({ $times }).
    [one] one logged time of its own and { $times } in all speak in this.
   *[other] { $own } logged times of its own and { $times } in all speak in this.
}{ $unused ->
    [0] { "" }
    [one] { " " }One could not be used: nobody noted what came off.
   *[other] { " " }{ $unused } could not be used: nobody noted what came off.
}
estimate-prices-missing = Some prices are not set: the sum is too small by them.
estimate-prices-assumed = Prices marked as assumed are not yours: set your own before this goes to anybody.

estimate-no-such-crew = No crew is called “{ $crew }”. Describe it under Crews, or leave the crew open.
estimate-no-such-palm = No palm with the tag “{ $tag }” stands in the register. Check the tag.
estimate-no-such-site = No palm stands at a site called “{ $site }”. Check the name.
estimate-nothing = No palm is due for a cut there today. Name palms by tag to estimate them all the same.
estimate-nothing-off = Nothing on it may come off today.

estimate-figure = { $low } to { $high }, as a rule { $mid } { $unit }
estimate-figure-one = { $mid } { $unit }
estimate-per-min = min
estimate-per-min-m3 = min a m³
estimate-per-min-100m = min for 100 m
estimate-per-times = times
estimate-per-share-m = share a metre
estimate-per-pieces = pieces
estimate-per-people = people
estimate-per-log = (logarithm)
estimate-per-visits = visits
estimate-per-kg-m = kg a metre
estimate-per-kg = kg
estimate-per-kg-m3 = kg a m³
estimate-per-m = m
estimate-per-money = US dollars

prices-title = Prices and figures
prices-lead = What you charge, and what work takes with your crews. What you leave empty is assumed and says so.
prices-none-set = No price list is set: every price is assumed, in US dollars.
prices-code = Currency
prices-code-hint = Three letters of ISO 4217, such as USD, EUR or MXN. In another currency than USD no price is assumed.
prices-digits = Digits after the point
prices-digits-hint = 2 for most currencies, 0 for some.
prices-prices = Prices
prices-assumed = Assumed: { $value }
prices-tax = Tax, per cent
prices-notes = Words for quotes
prices-figures = Your own figures
prices-figures-what = Your figure takes the place of the middle one; the stretch around it keeps its shares.
prices-table = Table: { $value }
prices-save = Save

form-prices-currency = The currency has three letters, such as USD, EUR or MXN.
form-price-not-read = “{ $found }” is no price. Write digits, with a point or a comma, without currency.
form-price-digits = { $n ->
    [0] This currency has no digits after the point.
    [one] This currency has { $n } digit after the point.
   *[other] This currency has { $n } digits after the point.
} Write no more than that, or change the digits.
form-price-too-large = That is too large for a price. Check the digits.

quote-title = Quote
quote-for = For
quote-by = From
quote-lead = This is an estimate of { $date } from the last looks at the palms, not a fixed price. It covers only what may come off then; what comes down in the meantime changes it.
quote-work = Work
quote-head-palm = Palm
quote-head-work = What comes off
quote-head-charge = For
quote-head-quantity = How much
quote-head-price = Each
quote-head-amount = Amount
quote-site = Site
quote-time = Time of the crew
quote-debris = Debris
quote-spread = Seldom less than { $low }, seldom more than { $high }.
quote-cut-title = What is cut, and what is not
quote-cut-dead = Dead fronds, and of the others only what the palm can spare today. No green crown is thinned to make the next visit later.
quote-cut-clean = Blades are cleaned between palms.
quote-cut-spikes = No climbing spikes on a palm that stays.
quote-cut-wires = Work near wires is not in this quote: only the utility and line-clearance workers do that.
quote-cut-permit = Permits, nests and protected animals, quarantine and local rules come before any date.
quote-sign-date = Date
quote-sign-owner = Owner
quote-sign-keeper = Keeper
