### Sheets of paper: labels, the trace report, the clauses

## Every sheet

sheet-printed = printed { $date }
sheet-demo = Demo: nothing here is real

## Why there is no sheet

sheet-empty = There is nothing to print.
sheet-no-such = Nothing in the register carries the tag “{ $tag }”.
sheet-too-many = { $found } are more than one file takes ({ $limit }). Choose fewer, or take the list as CSV.
sheet-base-bad = “{ $base }” is no address that a phone can open. It begins with http:// or https:// and names the machine.
sheet-too-long = The address of “{ $tag }” is too long for a code that a phone can read. Use a shorter address or tag.
sheet-broken = The sheet could not be set: { $why }.

## Labels

sheet-labels-title = Labels
sheet-labels-about = Scan with the phone’s camera: the page opens at { $base }
sheet-kit = Kit: { $kit }
sheet-blade-hand-saw = hand saw
sheet-blade-pole-saw = pole saw
sheet-blade-loppers = loppers
sheet-blade-pole-loppers = pole loppers
sheet-blade-pole-sickle = sickle or chisel on a pole
sheet-blade-chain-saw = chain saw
sheet-blade-reciprocating-saw = reciprocating saw
sheet-blade-knife = knife or machete

## Clauses for outside firms

sheet-sources = Sources
clauses-title = Clauses for work on palms
clauses-notice = This sheet is no legal advice. Local law, permits and the orders of the plant health authority come first, and so do the local code, the utility, the machine’s manual and licensed or certified people. Have a lawyer read it before it is signed.
clauses-lead = The firm named below works on the palms of the keeper named below under these clauses. Numbers in brackets name the sources at the end. Where sources differ, the stricter one is the clause; what the others say stands below it in small print.
clauses-keeper = Keeper (name)
clauses-firm = Firm (name)
clauses-site = Grounds and palms
clauses-period = From (date) to (date)
clauses-person = Person in charge on the grounds
clauses-licence = Licence or certificate, number
clauses-cut-title = What is cut, and what stays
clauses-level = The level line runs through the base of the crown, from 9 to 3 on the clock. No live frond that stands at or above it is cut: the limit is “nothing at or above 9–3”, whatever was cut in other years.
clauses-stub-title = How it is cut
clauses-spikes-title = Spikes
clauses-spikes-breach = Whoever is found on a palm with spikes leaves the grounds, and the palm is written down as wounded with date and name.
clauses-blades-title = Clean blades
clauses-clean-each = Every blade is cleaned before the first palm of the day and again after each palm, before it touches the next one: whatever the species, and however healthy the palms look.
clauses-label-first = The label of the product and its safety sheet come before these clauses. Gloves and eye protection are worn at the bath; the bath stands where nobody drinks, and is disposed of as the label says.
clauses-baths = Accepted cleanings, brushed clean first, the whole cutting edge under the liquid
clauses-baths-other = Any other way of cleaning is agreed in writing before work begins. A wipe or a spray that dries sooner than the minutes in the table is no cleaning.
clauses-bath-agent = Agent and how it is mixed
clauses-bath-strength = Product in the bath
clauses-bath-minutes = Contact
clauses-bath-caution = Mind
clauses-bath-at-least = at least { $n } min
clauses-bath-of-range = at least { $n } min; the sources say { $low } to { $n }
clauses-holds-title = Holds
clauses-holds = A palm that the keeper has put on hold is not cut, climbed or cleaned out, by nobody and for no reason, until the keeper lifts the hold in writing. The keeper hands over the list of holds before each visit.
clauses-report = A spear that leans, is down or comes out, a fruiting body on the trunk, fronds dying on one side, a nest, bats or bees: stop at this palm, cut nothing more, clean the blade, tell the keeper the same day.
clauses-safety-title = Wires and people
clauses-wires = Nearer to an overhead line than the distance below, nobody but qualified line-clearance workers works, and only after the utility has been told. If the voltage is not known, nobody works there until the utility has answered.
clauses-trained = People who climb, use a lift or cut palms with a skirt of dead fronds are trained for it and licensed or certified where the law asks for it; the firm shows the papers on request.
clauses-hand-over-title = What is logged and handed over
clauses-log-each-cut = For every palm: date, palm and stem, the mark of the blade, start and end of cutting, what came off (green, partly dead, dead fronds, stalks), who cut.
clauses-log-each-cleaning = For every cleaning: the mark of the blade, agent and strength, when the bath was mixed, minutes of contact, brushed or not, who cleaned.
clauses-log-when = The log is handed over on the day of the work, on paper or as a file. If something was not done or not noted, the log says so: a gap is worth more than a guess.
clauses-blades-marked = Every blade carries a mark that does not change. A blade that also cuts palms elsewhere is named, and is cleaned before it comes onto the grounds and before it leaves.
clauses-signature = Agreed
clauses-sign-keeper = Keeper: date, name, signature
clauses-sign-firm = Firm: date, name, signature
clauses-log-title = Log
clauses-log-date = Date
clauses-log-palm = Palm, stem
clauses-log-blade = Blade
clauses-log-start = Start
clauses-log-end = End
clauses-log-off = Came off
clauses-log-bath = Bath, strength
clauses-log-minutes = Minutes in it

## The page of sheets

sheets-title = Sheets
sheets-lead = To print or to send: every sheet is a PDF in your language and units.
sheets-blades = Labels for blades
sheets-palms = Labels for palms
sheets-clauses = Clauses for outside firms
sheets-clauses-about = What a firm agrees to before it cuts: clean blades, no spikes, the level line, holds, wires, what is logged and handed over. With blanks for names and dates.
sheets-kit = Kit
sheets-site = Site
sheets-all = All
sheets-base = Address in the code
sheets-base-hint = Where phones reach this machine, such as http://192.168.1.20:7474.
sheets-base-here = The address below works on this machine only. Put in the one that phones use.
sheets-paper = Paper
sheets-paper-a4 = A4
sheets-paper-letter = Letter
sheets-make = Make the PDF

## The trace report

trace-sheet-title = Trace from palm { $tag }
trace-sheet-not-on-blades = { $disorder } is not known to travel on blades. This report therefore names no palms by the blades that touched them; it lists the hosts near by, nearest first.
trace-sheet-blades-unknown = Nobody who was read says whether { $disorder } travels on blades. The report reckons as if it did.
trace-sheet-no-disorder = No disorder is named. The report reckons as if it travelled on blades; hosts and times stay open until it is named.
trace-sheet-no-log = The log holds no cut. That nothing is listed here says nothing about the palms.
trace-sheet-not-named = not named
trace-sheet-case = Case palm
trace-sheet-disorder = Disorder
trace-sheet-latency = From infection to the first sign
trace-sheet-at-least = at least { $time }
trace-sheet-at-most = at most { $time }
trace-sheet-as-of = As of
trace-sheet-log = The log
trace-sheet-cuts = { $n ->
    [one] { $n } cut
   *[other] { $n } cuts
}
trace-sheet-cleanings = { $n ->
    [one] { $n } cleaning
   *[other] { $n } cleanings
}
trace-sheet-span = from { $from } to { $to }
trace-sheet-meaning = How to read it
trace-sheet-means-certain = Certain: a blade went from palm to palm, all the way from the case, every palm on the way could pass it on by then, and no cleaning in between was enough or might have been. The contact is certain, the infection is not.
trace-sheet-means-possible = Possible: the same, but something on the way is open: a cleaning of which nobody can say whether it was enough, a palm of which nobody knows whether it is a host, a time nobody knows.
trace-sheet-means-generation = Generation 1 was cut after the case palm. Generation 2 was cut after a palm of generation 1 that could pass it on by then: the shortest time from infection to the first sign had gone by. And so on.
trace-sheet-means-host = Host says whether the species is known to take the disorder. A palm that is not known as a host stays in the list because it was touched, but nothing is traced on from it.
trace-sheet-means-watch = Watch until is the last day on which a first sign is to be expected, by the longest time that the sources give. Unknown means that no source gives it: then keep watching.
trace-sheet-means-gaps = The report knows what was logged. A cut or a cleaning that was not logged is not in it; entries that come later change it.
trace-sheet-means-near = The list goes by distance and by what is a host. What carries the disorder does not read lists: palms further off are not safe.
trace-sheet-means-no-diagnosis = This is no diagnosis. A laboratory decides what a palm has; the plant health authority decides what is done.
trace-sheet-exposed = Exposed palms
trace-sheet-exposed-lead = { $certain ->
    [one] { $certain } palm is
   *[other] { $certain } palms are
} in the certain set, { $possible } more in the possible set only.
trace-sheet-head-palm = Palm
trace-sheet-head-sure = Contact
trace-sheet-head-generation = Gen.
trace-sheet-head-host = Host
trace-sheet-head-first = First exposed
trace-sheet-head-until = Watch until
trace-sheet-head-next = Next look
trace-sheet-head-distance = Distance
trace-sheet-certain = certain
trace-sheet-possible = possible
trace-sheet-host-yes = yes
trace-sheet-host-prone = yes, prone
trace-sheet-host-reported = reported
trace-sheet-host-no = not known as one
trace-sheet-chains = Chains
trace-sheet-chains-lead = How each palm was reached: blade by blade, with what lay in between.
trace-sheet-candidates = Where it may have come from
trace-sheet-candidates-lead = Palms whose blades touched the case palm before it showed, without a cleaning in between that was enough. Look at these too; generation counts backwards from the case.
trace-sheet-candidates-none = The log shows no palm from which a blade went to the case palm without a cleaning that was enough. It may have come from a cut that was not logged, with the plant, or by another way.
trace-sheet-generation = Generation { $n }
trace-sheet-first-exposed = First exposed: { $value }
trace-sheet-last-contact = Last contact: { $value }
trace-sheet-host = Host: { $value }
trace-sheet-between = { $n ->
    [one] { $n } cut
   *[other] { $n } cuts
} in between: { $palms }.
trace-sheet-until = Watch until: { $value }
trace-sheet-looks = Look on: { $value }
trace-sheet-step = Blade { $blade }: { $from } ({ $left }) to { $to } ({ $reached })
trace-sheet-not-cleaned = No cleaning logged in between.
trace-sheet-agent-unknown = something not noted
trace-sheet-cleaned-missing = Cleaned { $at } with { $agent }: { $minutes } min of contact missing.
trace-sheet-cleaned-short = Cleaned { $at } with { $agent }: not enough.
trace-sheet-cleaned-unknown = Cleaned { $at } with { $agent }: nobody can say whether that was enough.
trace-sheet-times = Its times
trace-sheet-times-are = seen to be sick { $seen }; passing it on surely from { $surely }, possibly from { $possibly }; caught it between { $low } and { $high }
trace-sheet-log-begin = the beginning of the log
trace-sheet-any-time = any earlier time
trace-sheet-possibly = Possibly already: { $value }
trace-sheet-exposures = Contacts in all: { $n }
trace-sheet-minutes = { $n } min
trace-sheet-cleaned-disputed = Cleaned { $at } with { $agent }: enough for one source, { $minutes } min short for another.
trace-sheet-cleaned-order = Cleaned { $at } with { $agent }: enough, but noted in the same second as a cut, so nobody knows which came first.
trace-sheet-near = Hosts near by
trace-sheet-near-lead = Palms to watch, nearest first. Without a position the distance is unknown.
trace-sheet-near-none = No other palm of the register is a known host, or no position is known.
trace-sheet-do = What to do, and what not
trace-sheet-findings = What must be known of the log
trace-sheet-cautions = Cautions
trace-sheet-hold = Nobody cuts an exposed palm or a candidate source while it is watched; if it must be cut, it is cut last, with a blade that goes to no other palm before it has been cleaned long enough.
trace-sheet-debris = Plant parts of the case palm stay where they are until the authority has said how they are moved and destroyed.
trace-sheet-authority = The plant health authority of the place comes first: tell it where the law asks for it, and do what it orders even where this report says otherwise.
trace-sheet-made-by = Made by: name, date
trace-sheet-received-by = Received by: name, date
