### What is said of how a judgement was told

judge-sign-unknown = The table of signs has no “{ $sign }”; it weighs nothing.
judge-sign-both-ways = “{ $sign }” is told both as seen and as not there; it weighs nothing. Look again.
judge-species-unknown = “{ $species }” is not in the table of species: what is known of hosts cannot be used to the full.
judge-species-not-told = No species is told: what is known of hosts cannot be used.
judge-nothing-told = Nothing is told yet, neither signs nor counts: this is only what is common. Look at the palm first.
