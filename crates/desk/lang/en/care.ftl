### Cut plan: holds, what comes off and what stays, how to cut

## Verdicts

verdict-allowed = Allowed
verdict-partly = Partly
verdict-refused = Refused

tool-hand = By hand, no blade
tool-saw = Hand saw or pole saw

stand-ground = From the ground
stand-ground-with-pole = From the ground with a pole, standing to the side
stand-lift = From a lift
stand-lift-from-above = From a lift, from above, working down
stand-unknown = Measure the trunk first

## Signs that rules listen to

sign-nest = Nest
sign-bats = Bats
sign-bees = Bees or wasps
sign-one-sided-browning = Fronds dying on one side
sign-wilt = Wilting
sign-skirt = Skirt of dead fronds
sign-fruit = Heavy fruit

## Holds

hold-spear-leaning = The spear leans. Do not cut. Have somebody who can diagnose palms look at it within days, keep every frond, and look again in two weeks.
hold-spear-down = The spear has fallen over. Do not cut. The palm may be losing its only growing point: have somebody who can diagnose palms look at it now.
hold-spear-pulled = The spear came out when pulled. Do not cut. Have somebody who can diagnose palms look at the bud now, and keep the spear for them.
hold-spear-set = A hold is set for the spear. Do not cut. Look at the spear, record what you see, and lift the hold when it is firm.
hold-nest = There is a nest in the crown. Do not cut until it is empty. Ask the wildlife office: many birds are protected.
hold-bats = Bats roost in the crown. Do not cut and do not drive them out. Ask the wildlife office: many bats are protected.
hold-bees = Bees or wasps live in the crown. Do not cut. Stay away and call somebody who removes them.
hold-wilt-suspect = Wilt is suspected. Do not trim: a blade can carry it to the next palm, and trimming hides the signs. Take photographs, ask a plant clinic how to sample, and keep the blade of the sample for nothing else until it is clean.
hold-decline-likely = The counts point to a decline ({ $share }). Do not trim: trimming hides the signs. Inspect again, take photographs, and ask a plant clinic.
hold-wilt = A wilt is suspected: { $disorder } ({ $share }). Do not cut: a blade can carry it to the next palm, and trimming hides the signs. Tell the plant health authority or the extension office, and have a plant clinic say how to sample.
hold-phytoplasma = A phytoplasma is suspected: { $disorder } ({ $share }). Do not cut: trimming hides the signs, and the palm may be under quarantine. Tell the plant health authority, and have a laboratory say how to sample.
hold-phytoplasma-suspect = A hold is set because a phytoplasma is suspected. Do not cut. Tell the plant health authority, and have a laboratory say how to sample.
hold-bud-rot = A rot of the bud is suspected: { $disorder } ({ $share }). Do not cut: every live frond is needed while that is found out, and blades carry rot. Have somebody who can diagnose palms look at the bud now.
hold-bud-rot-suspect = A hold is set because a rot of the bud is suspected. Do not cut. Have somebody who can diagnose palms look at the bud now.
hold-trunk-rot = A rot of the trunk is suspected: { $disorder } ({ $share }). Do not cut or climb, and lean no ladder or lift on it: the trunk may break. Keep people out of its fall, and have a qualified tree risk assessor look at it.
hold-trunk-rot-seen = { $sign }: seen at the last look. Do not cut or climb, and lean no ladder or lift on it: the trunk may break. Keep people out of its fall, and have a qualified tree risk assessor look at it.
hold-trunk-rot-suspect = A hold is set because a rot of the trunk is suspected. Do not cut or climb. Keep people out of its fall, and have a qualified tree risk assessor look at it.
hold-weevil = A weevil is suspected: { $disorder } ({ $share }). Do not cut: fresh cuts draw more of them, and the crown may break. Tell the plant health authority; treatment is for licensed applicators.
hold-weevil-seen = { $sign }: seen at the last look. Do not cut: fresh cuts draw weevils, and the crown may break. Tell the plant health authority; treatment is for licensed applicators.
hold-weevil-suspect = A hold is set because a weevil is suspected. Do not cut: fresh cuts draw weevils. Tell the plant health authority; treatment is for licensed applicators.
hold-lab-confirmed = A laboratory found a disease; the hold stands since { $since }. Do not cut: the plant health authority says what happens to the palm. What touches it touches no other palm.
hold-conk = A hold is set for a conk. Do not cut or climb: the trunk may be rotten inside. Keep people out of its fall, and have a qualified tree risk assessor look at it.
hold-set = Somebody set a hold on { $since }. Do not cut until it is lifted.
hold-set-noted = Somebody set a hold on { $since }: { $note }. Do not cut until it is lifted.
hold-wires-within = A wire is { $wires } from the crown. Refused: inside { $keep } only line-clearance workers may work, and more distance is needed above 50 kV. Call the utility. { common-closing }
hold-wires-set = A hold is set for wires. Refused: inside { $keep } only line-clearance workers may work, and more distance is needed above 50 kV. Call the utility. { common-closing }

## What comes off and what stays

dead-any-time = { $n ->
    [one] { $n } frond is wholly dead and may come off.
   *[other] { $n } fronds are wholly dead and may come off.
} Wholly dead means brown throughout. A frond with any green left still feeds the palm.
partly-dead-stay = Fronds that are partly green or yellow stay ({ $n } now). They still feed the palm.
partly-dead-stay-hungry = Fronds that are partly green or yellow stay ({ $n } now), above all here: hunger is likely ({ $share }). The palm draws on them, and if they go it draws on the next ones up.
partly-dead-count-as-live = Fronds that are partly green or yellow ({ $n } now) count as live. The plan leaves them on.
frost-wait = Fronds hit by the freeze of { $freeze } wait, the brown ones too. Wait until no more frost is expected and three new fronds are out ({ $out } counted since). Give the palm about six months before you call it dead.
moved-dead-only = Moved on { $moved } and not yet established. Only wholly dead fronds come off. Taken as established on { $until } at the latest (assumed).
moved-sabal-exception = This kind is the exception on the day of digging: with all fronds off 95 of 100 lived, with a third kept 64 of 100, and the kept fronds died within two months. A full crown takes up to two years. It is no reason to cut later.
crownshaft-by-hand = Wait until the sheath of the dead frond has split. Then pull it upward by hand. Never force it and never cut at the sheath. Nothing live comes off: a fed palm of this kind needs no pruning.
storm-no-thinning = A storm is expected. No live frond comes off. Only dead and loose fronds may go: thinned palms are hurt more by wind.
weevil-season-wait = Palm weevils fly here and fresh cuts draw them. Cut green fronds of this palm only in the two coldest months, December and January in the north.
weevil-fresh-cuts = Palm weevils fly here and fresh cuts draw them. Make as few as you can.
live-never-counted = The live fronds were never counted. Count green and yellowing first: until then no live frond comes off.
live-count-old = The last full count was { $ago } ago. Count again: until then no live frond comes off.
live-not-fed = Hunger is not ruled out ({ $share }). No live frond comes off a palm that may be hungry.
live-decline-open = A decline is not ruled out ({ $share }). No live frond comes off until it is.
live-not-full = The crown has { $live } live fronds; full would be about { $full }. It has none to spare.
level-line = No live frond at or above level (9 and 3 on the clock) comes off. { $below ->
    [one] { $below } of { $live } live fronds hangs below it.
   *[other] { $below } of { $live } live fronds hang below it.
}
live-allowance = { $n ->
    [0] The plan takes no live frond. If the owner asks for more: none hangs below level and will have grown back by the visit on { $visit }.
   *[other] The plan takes no live frond. If the owner asks for more, the lowest { $n } at most: so many hang below level and will have grown back by the visit on { $visit }.
}
live-no-next-visit = No next visit is planned, so nothing is sure to have grown back. No live frond comes off. Set the date of the next visit first.
over-trimming = Taking { $asked } of { $live } live fronds leaves { $left }. That is over-trimming: only { $below } hang below level, and at least a half sphere of fronds must remain.
asked-years-growth = { $asked ->
    [one] { $asked } live frond is { $time } of growth; this palm makes about { $pace } a year.
   *[other] { $asked } live fronds are { $time } of growth; this palm makes about { $pace } a year.
}
asked-more-than-there-is = { $asked } live fronds are asked for, but there are only about { $live }.
stalks-any-time = Flower and fruit stalks may come off at any time.
stalks-after-bloom = Flower and fruit stalks may come off at any time. In hot desert places one visit at the end of bloom takes them with the dead fronds.
skip-too-few-green = Only { $green } fronds are green; full would be about { $full }. Skip this visit unless a loose frond is a danger.
skip-nothing-dead = No frond is wholly dead. There is nothing to cut.

## How to cut

follow-to-own-stem = { $stems } stems: follow each frond down to its own stem before you cut it.
stub-small-armed = Leave { $low } to { $high } from the trunk, below the lowest spines. Never cut flush.
stub-large = Leave a stub of { $low } to { $high }. Never cut flush.
stub-unknown-kind = The kind of palm is not known: leave a stub of { $low } to { $high } (assumed). Never cut flush.
stub-weevil = Palm weevils fly here: cut green fronds at least { $low } from the trunk. Never cut flush.
stroke-upward = Cut from below upward, with the support side of the tool against the stub. Stand to the side, never under the frond.
bases-by-hand = Take off leaf bases and fibre only where they come by hand. Leave the upper band, just below the crown, alone.
bases-no-ball = The cut ball below the crown is not needed and may do harm. Leave it out.
old-stubs-saw = Take old base stubs off with a reciprocating saw, short of the trunk. No chain saw on the trunk.
no-chain-saw-at-all = No chain saw on fronds, fruit or flower stalks of this palm: it carries wilt and is hard to clean.
clean-saw-each-palm = Use a saw disinfected before and after this palm, or a new one. This kind can take a wilt that travels on blades.
clean-saw-each-site = Clean the tools at least before you go to the next site.
no-spikes = No climbing spikes. The holes stay for life.
