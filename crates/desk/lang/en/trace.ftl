### The page of a trace

trace-title = Trace
trace-what = A palm turns out infected. Which palms may blades have carried it to, and where may it have come from?
trace-case-field = Case palm
trace-case-hint = The tag of the palm that is sick.
trace-disorder = Disorder
trace-disorder-none = not named yet
trace-disorder-blades = Known to travel on blades
trace-disorder-others = Others
trace-seen = Seen sick on
trace-seen-hint = Empty: today.
trace-shortest = Shortest, days
trace-longest = Longest, days
trace-latency-field = From infection to the first sign
trace-latency-hint = Empty: as the tables say for the disorder, as far as they say it.
trace-make = Trace
trace-as-of = As of { $when }: { $cuts ->
    [one] one cut
   *[other] { $cuts } cuts
} and { $cleanings ->
    [one] one cleaning
   *[other] { $cleanings } cleanings
} of { $blades ->
    [one] one blade
   *[other] { $blades } blades
}. A late entry changes this trace.
trace-summary = { $certain ->
    [0] No palm is exposed for certain
    [one] One palm is exposed for certain
   *[other] { $certain } palms are exposed for certain
}, { $possible ->
    [0] none possibly
    [one] one possibly
   *[other] { $possible } possibly
}; { $sources ->
    [0] no candidate source.
    [one] one candidate source.
   *[other] { $sources } candidate sources.
}
trace-case = { $tag }, seen sick on { $seen }: taken as infectious for certain from { $surely }, possibly from { $possibly }. { $cuts ->
    [0] No cut of it is in the log.
    [one] One cut of it is in the log.
   *[other] { $cuts } cuts of it are in the log.
}
trace-from-the-start = the beginning of the log
trace-latency = From infection to the first sign: { $range }.
trace-latency-keeper = From infection to the first sign, as you say: { $range }.
trace-at-least = { $n } or more
trace-at-most = up to { $n }
trace-reckoned = What was reckoned with
trace-lanes = Blades over time
trace-lanes-hint = Each column is a moment; days stand apart. Slide sideways.
trace-lanes-left-out = { $n ->
    [one] One later moment is not drawn; the list has it.
   *[other] { $n } later moments are not drawn; the list has them.
}
trace-days-between = { $n ->
    [one] 1 day
   *[other] { $n } days
}
trace-key-case = case palm
trace-key-certain = exposed for certain
trace-key-possible = possibly exposed
trace-key-source = candidate source
trace-key-near = to watch near by
trace-key-solid = certain chain
trace-key-dashed = possible chain
trace-mark-adequate = enough
trace-mark-short = short
trace-mark-unknown = unknown
trace-key-adequate = cleaning that was enough
trace-key-short = cleaning that was not enough
trace-key-unknown = cleaning nobody can judge
trace-list = Exposed palms
trace-list-none = No chain of blades leads from this palm to another.
trace-generation = Generation { $n } ({ $count ->
    [one] one palm
   *[other] { $count } palms
})
trace-certain = for certain
trace-possible = possibly
trace-exposed-when = First exposed { $when }.
trace-source-when = Last cut before the case by this chain: { $when }.
trace-step = Blade { $blade } cut { $from } ({ $left }), then { $to } ({ $reached }). In between: { $between }.
trace-no-cleaning = no cleaning
trace-cut-between = it also cut { $tags }
trace-cleaned-short = cleaned { $when } ({ $agent }), { $n } min too short
trace-cleaned-weak = cleaned { $when } ({ $agent }), not enough whatever the time
trace-cleaned-unknown = cleaned { $when } ({ $agent }), nobody can say whether enough
trace-cleaned-order-open = cleaned { $when } ({ $agent }), enough, but nobody knows whether before or after the cut
trace-host-yes = Host.
trace-host-prone = Host, hit more than others.
trace-host-reported = Reported as a host, seldom.
trace-host-no = Not among the known hosts: exposed, passes nothing on.
trace-host-unknown = Whether it is a host is not known.
trace-watch-until = Watch until { $date }.
trace-watch-open = Watch without an end: nobody knows the longest time.
trace-looks = Look at it on: { $dates }.
trace-sources = Where it may have come from
trace-sources-none = No chain of blades leads to this palm.
trace-nearby = Hosts near by to watch
trace-away = { $distance } away
trace-same-site = same grounds, distance not known
trace-plot = Where they stand
trace-plot-hint = The grounds of the case palm. Palms on other grounds are in the list.
trace-plot-north = north is up
trace-chain = The chain
trace-pdf = Report (PDF)
trace-csv = List (CSV)
trace-findings = What must be known of this log
trace-north = N
