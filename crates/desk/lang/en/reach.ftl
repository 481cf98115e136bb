### How to get at a crown: tools, places, distances

reach-wires-within = The nearest wire is { $wires } from the crown. Body, tool, pole and fronds stay at least { $keep } away from it: nobody but line-clearance workers works here. Call the utility. { common-closing }
reach-wires-held = A hold is set for wires: nobody but line-clearance workers works here until it is lifted. { common-closing }
reach-wires-voltage = The nearest wire is { $wires } from the crown, and nobody has said its voltage. The distance to keep may be as much as { $most }: ask the utility, note the voltage, and only then work. { common-closing }
reach-wires-not-noted = Nobody has noted whether there are wires. Look up from all sides before a pole goes up: every line is live, and a wet or metal pole carries its current. { common-closing }
reach-wires-falls = The nearest wire is { $wires } from the crown: far enough to work ({ $keep }), but a frond or a pole that falls its way comes up to { $by } nearer. Stand so that neither can. { common-closing }
reach-skirt = A skirt of dead fronds hangs. Nobody stands, climbs or cuts beneath it, however low it is: from a lift, from above, by trained people. { common-closing }
reach-lift-only = Only a lift will do: the crown’s base is at { $base }, and what is at hand reaches { $top } from the ground. { common-closing }
reach-no-lift = This crew has no lift, or nobody trained for one: send another crew, or hire machine and operator. { common-closing }
reach-no-tool = None of the tools at hand does it here: see below which one would.
reach-height-unknown = The height of the crown’s base is not noted: measure it before anybody chooses a tool.
reach-petiole = Measure a petiole where it will be cut: these loppers take up to { $width }. If it is wider, take the next tool.
reach-smoother = Loppers leave a smoother cut than teeth: take them where both reach and the petiole goes in.
reach-aside = Stand to the side of the frond, never under it: at least { $aside } beside the line in which it falls, and the pole never straight above your head. { common-closing }
reach-blocked = { $n ->
    [one] One frond to go hangs behind fronds that stay, whichever way you walk round: take it from a lift, or leave it.
   *[other] { $n } fronds to go hang behind fronds that stay, whichever way you walk round: take them from a lift, or leave them.
}
reach-drawn = The places are those of the drawn crown, which is turned otherwise than the palm itself: walk round until no newer frond is between you and the cut.
reach-keep-out = Keep everybody else out of a circle of { $radius } round the trunk, one cutter at a time in it. { common-closing }
reach-keep-out-unknown = Keep everybody else out from under the crown and one frond’s length beyond it, one cutter at a time. { common-closing }
reach-no-spikes = No climbing spikes on a palm that stays: every hole stays for life. { common-closing }
reach-no-ladder = No cutting from a ladder that leans on a palm: the trunk is round and the frond falls on it. { common-closing }

## In words

reach-title = Reach and kit
reach-of = Reach and kit: { $tag }
reach-more = Tools, pole and reasons
reach-head-refused = Nobody but line-clearance workers, or not before the utility has answered.
reach-head-unknown = From where is unknown: the height of the crown’s base is not noted.
reach-head-ground = From the ground, { $with }.
reach-head-pole = From the ground, { $with }.
reach-head-lift = Only from a lift, { $with }.
reach-head-above = Only from a lift and from above, { $with }.
reach-with-hand = with the hands: ripe fronds come by a pull, nothing is cut
reach-with-nothing = but none of the tools at hand does it
reach-with-one = with { $tool }
reach-with-either = with { $tool } where the petiole is no wider than { $width }, else with { $next }
reach-pole = Pole { $length } long at { $degrees }° above level: the hands are { $hands } up and { $out } out from the cut.
reach-circle = Kept free: { $radius } round the trunk.
reach-circle-unknown = Kept free: the crown and one frond’s length beyond it; no figure, the frond’s length is unknown.
reach-tools = Tools
reach-take = take
reach-not-at-hand = { $says }, but not at hand
reach-fit-reaches = reaches
reach-fit-if-up-to = reaches, for petioles up to { $width }
reach-fit-narrow = opens no wider than { $width }
reach-fit-short = reaches no higher than { $top } from the ground
reach-fit-long = its pole is too long to be held so low
reach-fit-lifts = brings people up to it
reach-fit-idle = not needed here
reach-fit-never = never for this
reach-fit-unknown = the height is not noted
reach-places = Where to stand
reach-place = { $where }, hands { $out } from the trunk: { $fronds ->
    [one] one frond
   *[other] { $fronds } fronds
}; free sector { $wide }° wide.
reach-way-right = To the right
reach-way-front-right = In front, to the right
reach-way-front = In front
reach-way-front-left = In front, to the left
reach-way-left = To the left
reach-way-back-left = Behind, to the left
reach-way-back = Behind
reach-way-back-right = Behind, to the right
reach-above = From above
reach-above-label = The palm from above: trunk, fronds that stay, fronds to go, numbered places to stand, circle to keep free
reach-above-hint = As the crown is drawn above, seen from overhead; you are at the foot of the picture.
reach-key-stays = stays
reach-key-goes = to go
reach-key-place = stand here
reach-key-circle = keep free
reach-petiole-label = Width of a petiole where it is cut
reach-petiole-hint = Measure one across: cm or in.
reach-hand-label = How high your hands work
reach-hand-hint = Empty: 8 ft (2.4 m), common practice.
reach-crew-label = Crew
reach-crew-any = any tool
reach-ask = Show
reach-bad-petiole = A width from { $low } to { $high } was expected.
reach-bad-hand = A height from { $low } to { $high } was expected.
reach-no-crew = No crew is called “{ $crew }”.
