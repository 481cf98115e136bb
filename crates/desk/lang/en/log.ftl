### Files of blades, cuts and cleanings

log-no-time = A time is missing: date and time with offset were expected, such as 2026-03-02T09:30:00-05:00.
log-bad-time = “{ $found }” is no time: date and time with offset were expected, such as 2026-03-02T09:30:00-05:00.
log-no-zone = “{ $found }” does not say in which time zone. Add the offset, such as { $found }-05:00, or Z for UTC.
log-no-blade = The tag of the blade is missing.
log-bad-kind = “{ $found }” is no kind of blade; one of these was expected: { $words }.
log-yes-or-no = “{ $found }” was found; yes or no was expected, or nothing where it is not known.
log-row-twice = The same row stands on line { $first } already; it counts once.
log-blade-registered = A blade with the tag “{ $found }” is registered with another description. Change it in its form, or take it out of service first.
log-blade-was-unknown = The blade “{ $blade }” was not in the register. It is registered now, its kind unknown. Check the tag, and say what kind it is.
