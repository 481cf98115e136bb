### Sheets of paper: labels, the trace report, the clauses

## Every sheet

sheet-printed = printed { $date }
sheet-demo = Demo: nothing here is real

## Why there is no sheet

sheet-empty = There is nothing to print.
sheet-too-many = { $found } labels are more than one file takes ({ $limit }). Choose fewer.
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
