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
