### Cleaning of blades: whether it was enough, and what to mind

## Whether it was enough

clean-enough = By the strictest source for this agent it was enough: { $needs } min were needed.
clean-too-short = Not long enough: { $has } min of contact, where { $needs } min are needed. { $missing } min are missing.
clean-too-weak = Too weak: { $has } % in the bath. The sources for palms ask for { $needs } % or more, and no time makes up for it.
clean-agent-missing = With what it was cleaned is not noted, so nobody can say whether it was enough.
clean-agent-not-known = No source at hand speaks of “{ $agent }”, so nobody can say whether it was enough.
clean-strength-missing = How strong the bath was is not noted, so nobody can say whether it was enough.
clean-time-missing = How long the blade was in contact is not noted; { $needs } min are needed. Nobody can say whether it was enough.
clean-only-recalled = What is known of this agent against this disorder is recalled, not read. It is not taken as enough.
clean-no-source = No source at hand says that this agent does against this disorder on blades. It is not taken as enough.
clean-sources-differ = Other sources say otherwise. The strictest counts here.
clean-soil-left = Soil, sap or fibre was left on the blade, and that stops the agent from working. Brush first, then clean again.
clean-soil-not-told = The blade was not brushed first, and no source says whether this agent works through soil and sap. Brush first, then clean again.
clean-brush-not-noted = Whether the blade was brushed first is not noted. Sap and sawdust are brushed off before a soak.
clean-bath-old = The bath was { $has } min old. It is changed after { $limit } min, so this cleaning is not taken as enough.
clean-bath-used = The bath had served { $has } times. It is changed after { $limit } palms, so this cleaning is not taken as enough.
clean-chain-saw-not-told = A chain saw cannot be cleaned by a wipe: chain and bar are taken apart and soaked. The log does not tell that, so it is not taken as clean.

## What to mind

clean-bleach-never-mix = Bleach never meets ammonia, an acid (descaler, vinegar, some cleaners), alcohol, hydrogen peroxide or oven cleaner: poisonous gas, or fire. The label comes first. { common-closing }
clean-alcohol-fire = Alcohol burns, and its vapour lights from a spark: no flame, no smoking and no hot saw near the bath. Let a hot saw cool down first. The label comes first. { common-closing }
clean-alcohol-not-with-bleach = Alcohol and bleach never meet, neither in one bath nor one after the other on a wet blade. The label comes first. { common-closing }
clean-flame-fire = A flame sets dry skirts of palms on fire and spoils the temper of a blade. Only on bare ground, away from fronds and from alcohol, with water at hand. { common-closing }
clean-chain-saw-apart = A chain saw cannot be cleaned by a wipe: switched off and cooled down, chain and bar are taken apart and soaked. On palms that take a wilt, better a hand saw. { common-closing }
clean-bleach-steel = Bleach eats steel: rinse the blade in clean water after the soak and dry it. The label comes first. { common-closing }
clean-air-gloves-eyes = Mix and soak in the open air, with gloves and eye protection, away from children and water courses. The label comes first. { common-closing }
clean-brush-and-rinse = Brush off sap and sawdust before the soak, and rinse in clean water after it.
clean-not-on-the-cut = No disinfectant goes onto the cut of the palm.
