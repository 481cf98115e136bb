### The command line, and findings of the assessment of whole files

## Species names

species-missing = No species is given; the widest prior is used.
species-other-name = “{ $found }” is taken as { $name }.
species-unknown = “{ $found }” is not a known palm name. The widest prior is used; mend the name.
species-unknown-near = “{ $found }” is not a known palm name. Was { $offer } meant? The wide prior is used until it is mended.

## Assessment

assess-decline-probable = A decline is probable ({ $share }). Have it looked at before anything is cut.
assess-loss-beyond-ordinary = Stem { $stem } has lost { $lost } since { $since }; ordinary loss would hardly be more than { $most }. Call somebody who knows palm diseases.
assess-spear-leaning = The spear of stem { $stem } was leaning on { $date }. Look at once; cut nothing.
assess-spear-down = The spear of stem { $stem } was down on { $date }. Look at once; cut nothing.
assess-spear-pulled = The spear of stem { $stem } came out when pulled on { $date }. Look at once; cut nothing.
assess-later-looks = { $count ->
    [one] { $count } inspection after the day of the reading was not looked at.
   *[other] { $count } inspections after the day of the reading were not looked at.
}
assess-never-looked-at = There is no inspection yet; the reading says what is believed of any such palm.
assess-no-climate = Site “{ $site }” is not in the climate file; the nearest known place is taken for it, else the standard season.

## Talk on the terminal

cli-severity-info = note
cli-severity-caution = caution
cli-severity-act = needs a person
cli-severity-refuse = refused
cli-of-palm = { $tag }: { $severity }: { $what }
cli-of-file = { $file }: { $what }
cli-more = … and { $count } more
cli-nothing-taken = { $file }: { $count ->
    [one] { $count } row was refused
   *[other] { $count } rows were refused
}; nothing was taken. Mend the file, or take the good rows with --skip-bad.
cli-gave-up = { $file }: reading stopped after { $count } refused rows; nothing was taken.
cli-refused-written = { $file }: { $count ->
    [one] { $count } refused row was
   *[other] { $count } refused rows were
} written to { $to }.
cli-taken = { $file }: { $taken } taken, { $already } already there, { $refused } refused.
cli-assessed = { $palms ->
    [one] { $palms } palm read
   *[other] { $palms } palms read
} as of { $date }: { $ageing } ordinary ageing, { $move } move, { $hunger } hunger, { $decline } decline, { $unseen } never looked at. { $person ->
    [0] None needs a person.
    [one] { $person } needs a person.
   *[other] { $person } need a person.
}
cli-written = Written: { $file }
cli-planned = { $palms ->
    [one] Cut plans for { $palms } palm
   *[other] Cut plans for { $palms } palms
} on { $date }; { $holds ->
    [0] nothing is on hold.
    [one] { $holds } stem is on hold.
   *[other] { $holds } stems are on hold.
}
cli-judged = { $rows ->
    [one] { $rows } row judged
   *[other] { $rows } rows judged
}; { $holds ->
    [0] nothing is on hold.
    [one] on { $holds } nobody cuts until it is settled.
   *[other] on { $holds } nobody cuts until it is settled.
}
cli-judged-hold = { $tag }: nobody cuts until it is settled: { $because } ({ $share })
cli-no-such-tag = There is no palm with the tag “{ $tag }” in { $file }.
cli-asked-allowed = { $tag }, stem { $stem }: all of it may be taken off ({ $asked }).
cli-asked-partly = { $tag }, stem { $stem }: of { $asked }, only { $allowed } may be taken off.
cli-asked-refused = { $tag }, stem { $stem }: refused ({ $asked }). Allowed: { $allowed }.
cli-cut = { $green } green, { $yellowing } yellowing, { $brown } brown
cli-recovery = Back to the level line in { $level }, to a full crown in { $full }; { $months } frond-months of leaf lost over two years.
cli-span = { $low } to { $high }
cli-beyond = more than ten years
cli-serving = Serving { $folder } on { $address } (stop with Ctrl-C)
cli-demo = This is a demo: places, people and palms are invented.
cli-not-a-demo = { $folder } is not empty and holds no demo. Name a new or empty folder, or serve it with: spearleaf serve { $folder }
cli-open-to-all = Others on the network can reach this address, and there is no password. Use it only in a network you trust.
cli-kept = { $count ->
    [one] { $count } entry
   *[other] { $count } entries
} written to { $file }
cli-restored = { $count ->
    [one] { $count } entry
   *[other] { $count } entries
} restored into { $folder }
cli-whole = The ledger is whole: { $count ->
    [one] { $count } entry
   *[other] { $count } entries
}, every link of the chain holds.
cli-sheet-group = --kit chooses blades and --site chooses palms.
cli-broken = The ledger is broken: { $what }
cli-rounds-kept = { $n ->
    [one] { $n } round recorded.
   *[other] { $n } rounds recorded.
}
cli-no-round = No round is planned for { $date }, or none of that crew. See spearleaf rounds --help.
cli-which-round = Several crews go out on { $date }: { $crews }. Say which with --crew.
