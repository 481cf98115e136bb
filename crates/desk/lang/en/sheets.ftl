### Sheets of paper: labels, the trace report, the clauses

## Every sheet

sheet-printed = printed { $date }
sheet-demo = Demo: nothing here is real

## Why there is no sheet

sheet-empty = There is nothing to print.
sheet-too-many = { $found } labels are more than one file takes ({ $limit }). Choose fewer.
sheet-base-bad = “{ $base }” is no address that a phone can open. It begins with http:// or https:// and names the machine.
sheet-too-long = The address of “{ $tag }” is too long for a code that a phone can read. Use a shorter address or tag.
sheet-broken = The sheet could not be set: { $why }.

## Labels

sheet-labels-title = Labels
sheet-labels-about = Scan with the phone’s camera: the page opens at { $base }
sheet-kit = Kit: { $kit }
sheet-blade-hand-saw = hand saw
sheet-blade-pole-saw = pole saw
sheet-blade-loppers = loppers
sheet-blade-pole-loppers = pole loppers
sheet-blade-pole-sickle = sickle or chisel on a pole
sheet-blade-chain-saw = chain saw
sheet-blade-reciprocating-saw = reciprocating saw
sheet-blade-knife = knife or machete
