### Cautions; each ends with the sentence that local code, the utility, the manual and licensed people come first

caution-wires = Wires { $wires } away. Every line is live. Keep yourself, tools, poles and cut fronds at least { $keep } from them; a wet or metal pole conducts. { common-closing }
caution-wires-voltage = Wires { $wires } away, voltage unknown. Nobody works before the utility has told the voltage: keep at least { $keep } up to 50 kV, and up to { $most } above. Every line is live, and a wet or metal pole conducts. { common-closing }
caution-wires-not-noted = Nobody has noted whether wires are near. Look up before the work, and keep everything at least { $keep } from any line. Every line is live. { common-closing }
caution-skirt = Skirt of dead fronds ({ $n }). Never climb or stand beneath it and cut upward: it slides down as a ring and suffocates. Only from above, from a lift, top down, by trained people with a rescue plan. { common-closing }
caution-skirt-over = Skirt of dead fronds ({ $n }) over: { $over }. Close the ground beneath first. Never climb or stand beneath it and cut upward: it slides down as a ring and suffocates. Only from above, from a lift, top down, by trained people with a rescue plan. { common-closing }
caution-drop-zone = Fronds fall. Nobody stands under the cut; the cutter stands to the side, one cutter in a zone. No published radius was found: commonly the crown’s radius and one frond’s length more stay free. { common-closing }
caution-drop-zone-radius = Fronds fall. Nobody stands under the cut; the cutter stands to the side, one cutter in a zone. No published radius was found: commonly the crown’s radius and one frond’s length more stay free, here about { $radius } (assumed). { common-closing }
caution-drop-zone-over = Beneath the palm: { $over }. Close it off before the first cut. { common-closing }
caution-spines = Spines go through gloves and into joints. Cut the spines off first, wear stab-proof gloves, and see a doctor for a puncture at a joint. { common-closing }
caution-teeth = The petioles carry teeth. Wear thick gloves and long sleeves. { common-closing }
caution-fruit = Fruit falls. Take heavy fruit down first, with nobody beneath. { common-closing }
caution-lift = In a lift wear harness and lanyard, fixed to the boom’s own anchor, never to the palm. The machine’s plate sets the wind limit: commonly 12.5 m/s (28 mph) outdoors, and none at all for indoor machines. { common-closing }
caution-ladder = No saw work from a ladder leant on the trunk. Use a pole from the ground or a lift. If a ladder is needed for anything else, its foot stands out a quarter of its working length, and nobody stands on the three top rungs. { common-closing }
caution-eyes = Wear eye protection for every cut. { common-closing }
