### Words that every page uses

product = Spearleaf

## Quantities

measure-range = { $low } to { $high }
measure-up-to = up to { $n }
measure-percent = { $n }%
measure-percent-under = under { $n }%
measure-percent-over = over { $n }%
measure-date = { $day } { $month } { $year }
measure-date-us = { $month } { $day }, { $year }
measure-days = { $n ->
    [one] { $text } day
   *[other] { $text } days
}
measure-weeks = { $n ->
    [one] { $text } week
   *[other] { $text } weeks
}
measure-months = { $n ->
    [one] { $text } month
   *[other] { $text } months
}
measure-years = { $n ->
    [one] { $text } year
   *[other] { $text } years
}
measure-month-1 = Jan
measure-month-2 = Feb
measure-month-3 = Mar
measure-month-4 = Apr
measure-month-5 = May
measure-month-6 = Jun
measure-month-7 = Jul
measure-month-8 = Aug
measure-month-9 = Sep
measure-month-10 = Oct
measure-month-11 = Nov
measure-month-12 = Dec

## Every page

common-demo = Demo: nothing here is real
common-skip = Skip to the content
common-nav = Main
common-more = More
common-today = Today
common-palms = Palms
common-import = Import
common-sources = Sources
common-about = Cautions
common-settings = Language and units
common-language = Language
common-language-en = English
common-language-es = Español
common-units = Units
common-units-metric = Metric (m, cm, °C)
common-units-us = US customary (ft, in, °F)
common-units-metric-short = m
common-units-us-short = ft
common-save = Save
common-unknown = unknown
common-yes = yes
common-no = no
common-previous = Back
common-next = More
common-closing = Local code, the utility, the machine’s manual and licensed or certified people come first.

## Errors

error-not-found = There is nothing at this address.
error-not-found-palm = No palm with the tag “{ $tag }” is in the register.
error-broken = This did not work. What is recorded is safe.
error-foreign = This form came from another site and was not taken.
error-back = Back to Today
