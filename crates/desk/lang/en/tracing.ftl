### Traces: rows of touches that cannot be taken, what must be known of a log or a trace, and the talk of `trace`

## Rows of touches.csv

touches-bad-time = “{ $found }” is no time: date, hour and zone were expected, such as 2026-03-02T09:30:00+01:00 or 2026-03-02T08:30:00Z.
touches-no-zone = “{ $found }” has no zone, and nobody can tell which of two cuts came first. Write the offset behind it, such as +01:00, or Z for UTC.
touches-no-blade = The blade is missing. Every row needs the tag of its blade.
touches-bad-what = “{ $found }” is neither cut nor clean.
touches-cut-cleaned = A cut has nothing in “{ $column }”, but “{ $found }” was found. Write a cleaning as a row of its own.

## The log

tracing-doubled-rows = { $count ->
    [one] { $count } row is there twice
   *[other] { $count } rows are there twice
} (same second, blade and deed) and counted once.
tracing-no-agent = { $count ->
    [one] { $count } cleaning names no agent: nobody can say what it was worth.
   *[other] { $count } cleanings name no agent: nobody can say what they were worth.
} Contact passes in the possible set.
tracing-strange-palms = { $count ->
    [one] { $count } palm of the log is not among the palms: its species is not known, and it passes the disorder on in the possible set.
   *[other] { $count } palms of the log are not among the palms: their species is not known, and they pass the disorder on in the possible set.
}
tracing-ties = { $count ->
    [one] One blade has a cut and another entry
   *[other] { $count } times a blade has a cut and another entry
} within the same second. Nobody knows which came first: such contacts are possible, never certain.
tracing-overlap = Blade { $blade }: { $count ->
    [one] one cut began
   *[other] { $count } cuts began
} before the entry in front had ended. Nobody knows which came first: such contacts are possible, never certain. Mend the times if you know better.
tracing-cut-strange = Blade { $blade }: { $count ->
    [one] one cut is of a palm
   *[other] { $count } cuts are of palms
} that nobody registered. It is left out until the palm is registered.
tracing-lent = Blade { $blade } was lent { $count ->
    [one] once
   *[other] { $count } times
}. What it cut in other hands is not in the log.
tracing-later-rows = { $count ->
    [one] { $count } row after the moment of the trace was not counted.
   *[other] { $count } rows after the moment of the trace were not counted.
}

## The trace

tracing-not-on-blades = This disorder is not known to travel on blades. What blades cut says nothing; watch the hosts near by instead.
tracing-spread-unknown = How this disorder spreads is not known. Both lists are given: palms that shared a blade, and hosts near by.
tracing-not-named = No disorder is named: every palm counts as a host that nobody knows, and a cleaning must do against all disorders.
tracing-no-shortest = The shortest time from infection to the first sign is not known. The possible set takes an exposed palm as infectious at once; the certain set ends with the first generation. Give --latency-days if you know better.
tracing-no-longest = The longest time from infection to the first sign is not known. The watch has no end, and a case may have been infectious since the log began. Give --latency-days if you know better.
tracing-case-not-cut = The log has no cut of { $tag }. A blade may have cut it all the same: ask those who worked there.
tracing-no-such-palm = There is no palm with the tag “{ $tag }”, neither in the log nor among the palms.
tracing-no-such-disorder = There is no disorder “{ $found }”. Known are: { $known }.
tracing-too-large = The log is too large for a trace: { $why }.

## Talk

cli-traced = { $exposed ->
    [0] No palm is exposed
    [one] { $exposed } palm is exposed
   *[other] { $exposed } palms are exposed
} ({ $certain } for certain, { $possible } perhaps), { $sources ->
    [0] no candidate source
    [one] { $sources } candidate source
   *[other] { $sources } candidate sources
}, { $nearby } to watch near by, as of { $date }; { $cuts } cuts and { $cleanings } cleanings in the log.
