### The order of palms within a site

walk-title = Walk
walk-link = Plan a walk
walk-what = In which order to take the palms of one site on foot: healthy ones first and confirmed ones last, so that blades, gloves and boots carry nothing to a palm that is better off, and within that the shortest way.
walk-site = Site
walk-site-choose = Choose a site
walk-which = Which palms
walk-which-all = all that stand there
walk-which-due = those to cut or to look at now
walk-tags = Only these tags
walk-tags-hint = Commas or spaces between; leave empty for the choice above.
walk-minutes = Minutes of cutting at a palm
walk-minutes-hint = 6 is assumed: time your own.
walk-sets = Blade sets
walk-soak = Minutes of soak
walk-soak-hint = Leave empty for what the first good mix of the table asks.
walk-more = Blades
walk-ask = Order the walk
walk-trouble = This cannot be answered yet:
walk-nobody = No palm there that fits the choice.
walk-no-such = No palm of this site carries { $tags }.
walk-too-many = { $n } palms are too many for one walk (at most { $most }): choose those that are due, or name tags.
walk-sentence = { $n ->
    [one] { $n } palm, { $way } on foot{ $gate ->
        [0] {""}
       *[other] {" "}from the gate
    }.
   *[other] { $n } palms, { $way } on foot{ $gate ->
        [0] {" "}from the first to the last
       *[other] {" "}from the gate to the last
    }.
}
walk-blades = { $n ->
    [one] { $n } palm is cut
   *[other] { $n } palms are cut
}, a clean blade { $clean ->
    [one] once
   *[other] { $clean } times
}. With { $sets ->
    [one] one set
   *[other] { $sets } sets
} you wait { $waits } in all, cutting ends after { $done } (walking not counted); { $fewest ->
    [one] one set is enough
   *[other] with { $fewest } sets nobody waits
}.
walk-nothing-cut = Nothing is cut today on this walk.
walk-map = Map
walk-map-label = Map of the walk from the positions of the palms, north up
walk-map-hint = North is up. The line runs from palm to palm as the crow flies. A ring round a mark: clean before it.
walk-gate = Gate
walk-list = Palms in order
walk-class-healthy = Healthy ({ $n })
walk-class-unknown = Unknown ({ $n })
walk-class-suspect = Suspect ({ $n })
walk-class-confirmed = Confirmed ({ $n })
walk-key-healthy = healthy
walk-key-unknown = unknown
walk-key-suspect = suspect
walk-key-confirmed = confirmed
walk-because-laboratory = A laboratory found a disease
walk-because-held = On hold: { $reason }
walk-because-advised = A hold is advised: { $reason }
walk-because-sign = Seen: { $sign }
walk-because-spear = The spear is not firm
walk-because-never-seen = Nobody has looked yet
walk-because-long-ago = Last look { $ago } ago
walk-because-seen = Looked at { $ago } ago
walk-no-place = place not noted
walk-clean-hands = Clean gloves, boots and tools
walk-clean-blade = Clean blade: set { $set }
walk-cut = cut with set { $set }
walk-look = look only, no blade
walk-notes = What this rests on
walk-exact = No order that keeps the classes is shorter: proven.
walk-searched = The way was searched, not proven; on 100 palms it is within 2 % of the shortest.
walk-as-the-crow-flies = Distances are as the crow flies, without walls, ponds and fences.
walk-unplaced = { $n ->
    [one] One palm has no place noted: it is the last of its class, and the way to it is not counted.
   *[other] { $n } palms have no place noted: they are the last of their class, and the way to them is not counted.
}
walk-no-gate = No gate is noted for this site: the walk begins at its best first palm.
walk-clean-rule = A blade is clean before a palm if that palm or the one before may take a wilt that travels on blades, or is suspect; the set laid down is brushed, soaks and is rinsed. Labels and local code come first.
