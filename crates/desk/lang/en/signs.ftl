### Signs: what could it be, what to look at next, when nobody may cut

## Places on the palm

place-spear = Spear
place-young = Newest fronds
place-middle = Middle of the crown
place-old = Oldest, lowest fronds
place-crown = Crown as a whole, and its course
place-fruit = Flower and fruit stalks
place-trunk = Trunk
place-roots = Roots and soil
place-other = Other notes

## The picker on the inspection form

forms-signs = Signs
forms-signs-hint = Open a place and say what you see. “Not there” means that you looked for it; leave the rest at “not looked”. What was looked for and is not there counts as well.
forms-signs-seen = Seen
forms-signs-absent = Not there
forms-signs-open = Not looked
forms-signs-noted = noted, of all:
forms-signs-find = Find a sign
forms-signs-find-none = No sign has these words.
forms-signs-worth = Worth most now:
form-sign-unknown = “{ $found }” is no sign that is known here, or what was said of it cannot be read.
signs-takes = Takes about { $n } min (assumed).
signs-takes-under = Takes less than a minute (assumed).
history-not-there = not there: { $signs }

## What could it be

signs-title = What could it be
signs-rests-on = As of { $on }: { $seen ->
    [0] no sign seen
    [one] { $seen } sign seen
   *[other] { $seen } signs seen
}, { $absent ->
    [0] none looked for in vain
   *[other] { $absent } looked for and not there
}, { $counts }. Signs nobody looked for do not weigh.
signs-with-counts = with the counts
signs-without-counts = without counts
signs-untold = No signs have been noted yet, so this is hardly more than what is usual on such a palm. Look at these first:
signs-untold-ranking = What is usual before anything is looked at
signs-others = Less likely
signs-likelihood = { $words }, { $share }
signs-nothing = Nothing but ordinary ageing: { $share }
signs-doubt = Doubt left: { $bits } bits.
signs-several = Several troubles may be at work at once; the shares need not add up to 100%.
signs-for = For it
signs-against = Against it
signs-no-for = Nothing noted speaks for it.
signs-factor = ×6 means six times more likely because of it, ÷6 six times less; ×999+ is that or more.
signs-settles = What would settle it
signs-sample = Sample
signs-first = First
signs-more = All about it
signs-together = More than one at once
signs-together-line = { $names }: { $share }
signs-next = Best look next
signs-next-others = Other looks that are worth it
signs-next-how = Ordered by how much doubt a look is expected to take away for each minute. One bit is the doubt between two equal possibilities.
signs-next-none = No further look would change much.
signs-look-now = Look for it now
signs-worth = { $rate } bits a minute ({ $bits } bits in all; it is there with a chance of { $chance }).
signs-if-there = If it is there: { $name }, { $share }.
signs-if-not = If it is not: { $name } leads, { $share }.
signs-apart = Easily taken for each other
signs-apart-pair = { $this } or { $other }?
signs-apart-for = Speaks for { $name }
signs-apart-none = No sign parts them: a laboratory can.
signs-disagree = Where those who should know do not agree
signs-caution = A ranking is no diagnosis. The plant health authority, a plant clinic and licensed people come first.
signs-remarks = Remarks on what was noted

level-nearly-sure = nearly sure
level-likely = likely
level-open = open
level-unlikely = unlikely
level-hardly = hardly

speaks-seen = seen: { $sign }
speaks-absent = not there: { $sign }
speaks-host = the kind of palm
speaks-season = the season
speaks-move = moved or not, and when
speaks-frost = time since the frost
speaks-storm = time since the storm
speaks-counts = the counts

## The move or hunger

sides-title = The move or hunger?
sides-move = The move
sides-hunger = Hunger
sides-turn = What would change the call
sides-call-move = The move explains it; nothing calls for more feed than after any move.
sides-call-hunger = It is hungry; the move does not explain it.
sides-call-both = Both are at work.
sides-call-neither = Neither is called: the signs do not say enough, or it is something else.
sides-likelihood = { $words }, { $share }
sides-which = Which hunger
sides-which-line = { $name }: { $share }
sides-swing = If it is there: the move { $move }, hunger { $hunger }. If it is not: the move { $move2 }, hunger { $hunger2 }.
sides-swing-turns = would change the call
sides-none = No look left would change it much.

## Holds

need-suspect-wilt = Wilt cannot be ruled out ({ $share }): nobody cuts.
need-suspect-phytoplasma = A phytoplasma cannot be ruled out ({ $share }): nobody cuts.
need-suspect-bud-rot = Bud rot cannot be ruled out ({ $share }): nobody cuts.
need-suspect-trunk-rot = Trunk rot cannot be ruled out ({ $share }): nobody cuts or climbs.
need-suspect-weevil = A weevil cannot be ruled out ({ $share }): nobody cuts.
need-seen-trunk-rot = { $sign }: nobody cuts or climbs, keep people away, and have the trunk judged.
need-seen-weevil = { $sign }: nobody cuts; ask the plant health authority.
need-held-conk = A conk on the trunk: nobody cuts or climbs, keep people away.
need-held-lab = A laboratory found a disease: nobody cuts; keep blades, gloves and boots off the other palms.
need-held-phytoplasma = Phytoplasma suspected: nobody cuts; ask the plant health authority.
need-held-bud-rot = Bud rot suspected: nobody cuts; have the bud looked at.
need-held-trunk-rot = Trunk rot suspected: nobody cuts, climbs or leans anything on it; keep people away.
need-held-weevil = Weevil suspected: nobody cuts; ask the plant health authority.

forms-hold-reason-phytoplasma-suspect = Phytoplasma suspected
forms-hold-reason-bud-rot-suspect = Bud rot suspected
forms-hold-reason-trunk-rot-suspect = Trunk rot suspected, or a conk
forms-hold-reason-conk = Conk, a fungus on the trunk
forms-hold-reason-lab-confirmed = Disease found by a laboratory
forms-hold-reason-bats = Bats in the crown
forms-hold-reason-bees = Bees or wasps in the crown
forms-hold-reason-weevil-suspect = Weevil suspected

advice-title = Nobody cuts: hold advised
advice-set = Set this hold
advice-is-set = This hold is set.
advice-why-share = Probability: { $share }.
advice-why-sign = One sign is enough: { $sign }. Probability: { $share }.
advice-instead = Instead
advice-tell = Tell
advice-ends = Ends when
advice-note = From the signs: { $names }

hold-instead-wilt-suspect = Leave every frond on. Photograph the palm from two sides and the frond that shows it close up. Take one sample with a blade that cuts nothing else, bag it, and keep that blade away from other palms. Look at the palms cut with the same blades.
hold-tell-wilt-suspect = The local plant health authority or the extension office, a plant clinic for the sample, the owner, and everybody who cuts on these grounds.
hold-ends-wilt-suspect = A laboratory has found another cause, or the palm has been taken away as the authority says. A look that seems better does not end it.

hold-instead-phytoplasma-suspect = Leave the fronds on. Photograph crown, flower stalks and spear, note the day each frond turned, and have the trunk sampled as the laboratory says.
hold-tell-phytoplasma-suspect = The local plant health authority, for it may be under quarantine; the owner; only licensed applicators inject anything.
hold-ends-phytoplasma-suspect = A laboratory has found none in a sample taken as it asks, or the authority has decided what happens to the palm.

hold-instead-bud-rot-suspect = Do not pull or cut further. Keep water off the crown, keep the spear for the sample, photograph it, and look at the neighbours' spears today.
hold-tell-bud-rot-suspect = A plant clinic or the extension office; a licensed applicator for any treatment; the owner, because a palm without a bud dies.
hold-ends-bud-rot-suspect = A new spear stands firm and has opened, or somebody who can diagnose palms has found another cause.

hold-instead-trunk-rot-suspect = Keep people, cars and ladders out of its fall. Nobody climbs it and no lift leans on it. Photograph the trunk all round to above head height, and any conk with a hand beside it.
hold-tell-trunk-rot-suspect = The owner at once, because it can fall without warning; a qualified tree risk assessor; a plant clinic for the conk.
hold-ends-trunk-rot-suspect = A qualified person has judged the trunk sound, or the palm has been taken down by people who know how to do it.

hold-instead-weevil-suspect = Make no wounds: fresh cuts draw weevils. Photograph holes, chewed fibre and cocoons, keep what you find in a closed jar, and look at all palms around.
hold-tell-weevil-suspect = The local plant health authority: in many places it must be reported; licensed applicators for any treatment; the owner.
hold-ends-weevil-suspect = Somebody qualified has found none, or the palm has been treated or taken away as the authority says.

hold-instead-conk = Keep people, cars and ladders out of its fall; nobody climbs it. Leave the conk on, photograph it with a hand beside it, and note its height above the ground.
hold-tell-conk = The owner at once, because the trunk may be rotten inside; a qualified tree risk assessor; a plant clinic to name the fungus.
hold-ends-conk = A qualified person has judged the trunk, or the palm has been taken down by people who know how to do it.

hold-instead-lab-confirmed = Leave the palm as it is and work it last, with blades, gloves and boots that are cleaned before they go anywhere else. Look at the palms that the same blades cut.
hold-tell-lab-confirmed = The plant health authority, where the disease must be reported; the owner; everybody who cuts on these grounds.
hold-ends-lab-confirmed = The palm has been taken away as the authority says, or a laboratory has shown that the result was wrong. A look that seems better does not end it.

hold-instead-spear = Leave every frond on, do not pull, keep water off the crown, and photograph the spear beside a straight pole.
hold-tell-spear = Somebody who can diagnose palms, within days; at once if it has fallen or come out.
hold-ends-spear = The spear stands firm again and a new frond has opened.

hold-instead-nest = Work on other palms, mark this one from the ground, and keep away from it.
hold-tell-nest = The wildlife office before anything is moved: many birds are protected.
hold-ends-nest = The nest is empty and the wildlife office or local code allows the work.

hold-instead-bats = Do not drive them out; work on other palms.
hold-tell-bats = The wildlife office: many bats are protected.
hold-ends-bats = They have left and the wildlife office or local code allows the work.

hold-instead-bees = Stay away, keep others away, and mark the palm from the ground.
hold-tell-bees = Somebody licensed to move or remove them; the owner.
hold-ends-bees = They have been taken away and nothing flies in or out.

hold-instead-wires = Keep people, poles and lifts away from the line.
hold-tell-wires = The utility: only line-clearance workers may work there.
hold-ends-wires = The utility has cleared it, or the line has been moved or switched off by its owner.

hold-instead-keeper = As the note of the hold says.
hold-tell-keeper = Whom the note of the hold names.
hold-ends-keeper = The reason in the note is gone.

## Disorders

common-disorders = Disorders
disorders-title = What ails palms
disorders-intro = Troubles of palms and what looks like them, with the signs the tool weighs and who says so. The numbers behind the words are assumed.
disorders-for = Only those of this palm
disorders-for-hint = A botanical name, or an English one that belongs to one species
disorders-show = Show
disorders-all = Show all
disorders-shown = { $n ->
    [one] { $n } on { $host }
   *[other] { $n } on { $host }
}
disorders-shown-all = { $n ->
    [one] { $n } disorder
   *[other] { $n } disorders
}
disorders-host-unknown = “{ $name }” is not a name we know; all are shown.
disorders-hold = nobody cuts while suspected
disorders-blade = on blades
disorder-organism = Organism
disorder-hosts = Hosts
disorder-spread = Spreads
disorder-latency = From infection to the first sign
disorder-decline = From the first sign to death, or to a clear course
disorder-course = In the counts it looks like
disorder-signs = Signs
disorder-signs-intro = Strongest first. A sign that speaks against it is as useful as one that speaks for it.
disorder-no-signs = No signs are on record.
disorder-confirm = What settles it
disorder-sample = Sample
disorder-no-sample = No laboratory sample settles this.
disorder-first = First
disorder-never = Never
disorder-hold = Nobody cuts while it is suspected
disorder-sources = Sources of this page
disorder-sign-sources = Who says so
disorder-no-such = There is no disorder of that name.
disorder-all = All disorders

family-normal = No disorder
family-nutrient = Hunger: what the soil does not give
family-disease = Diseases
family-pest = Insects and mites
family-surroundings = Weather, water, soil, people

host-all = all palms
host-known = Known hosts
host-prone = Hit more than others
host-reported = Seldom reported, or by trial only

spread-none = it does not
spread-blade = on blades and other tools
spread-vector = by an insect, or it is one
spread-soil = with soil, roots or water
spread-wind = spores in the air
spread-seed = with seed or young plants

course-ageing = ordinary ageing, or nothing
course-move = the shedding after a move
course-hunger = hunger
course-decline = a decline

strength-always = nearly always
strength-usual = as a rule
strength-sometimes = now and then
strength-rare = seldom
strength-excludes = speaks against it

days-from = { $low } or more
days-up-to = up to { $high }

disagreements-title = Where those who should know do not agree
disagreements-intro = Both sides stand here with their sources. Until it is settled the tool goes by the stricter one.
disagreements-we = What the tool does
disagreements-one = One side
disagreements-other = The other side
disagreements-about = About
