### Limpieza de las hojas de corte: si bastó, y qué hay que cuidar

## Si bastó

clean-enough = Según la fuente más estricta para este producto bastó: hacían falta { $needs } min.
clean-too-short = No bastó el tiempo: { $has } min de contacto, y hacen falta { $needs } min. Faltan { $missing } min.
clean-too-weak = Demasiado débil: { $has } % en el baño. Las fuentes para palmas piden { $needs } % o más, y ningún tiempo lo suple.
clean-agent-missing = No se anotó con qué se limpió; nadie puede decir si bastó.
clean-agent-not-known = Ninguna fuente a mano habla de «{ $agent }»; nadie puede decir si bastó.
clean-strength-missing = No se anotó la concentración del baño; nadie puede decir si bastó.
clean-time-missing = No se anotó cuánto duró el contacto; hacen falta { $needs } min. Nadie puede decir si bastó.
clean-only-recalled = Lo que se sabe de este producto contra este mal es de memoria, sin leerlo. No se da por bastante.
clean-no-source = Ninguna fuente a mano dice que este producto sirva contra este mal en hojas de corte. No se da por bastante.
clean-sources-differ = Otras fuentes dicen otra cosa. Aquí vale la más estricta.
clean-soil-left = Quedó tierra, savia o fibra en la hoja de corte, y eso impide que el producto actúe. Cepille primero y limpie otra vez.
clean-soil-not-told = La hoja de corte no se cepilló antes, y ninguna fuente dice si este producto actúa a través de tierra y savia. Cepille primero y limpie otra vez.
clean-brush-not-noted = No se anotó si la hoja de corte se cepilló antes. La savia y el aserrín se cepillan antes del remojo.
clean-bath-old = El baño tenía { $has } min. Se cambia a los { $limit } min, así que esta limpieza no se da por bastante.
clean-bath-used = El baño ya había servido { $has } veces. Se cambia a las { $limit } palmas, así que esta limpieza no se da por bastante.
clean-chain-saw-not-told = Una motosierra no se limpia con un trapo: la cadena y la barra se desarman y se remojan. El cuaderno no lo dice, así que no se da por limpia.

## Qué hay que cuidar

clean-bleach-never-mix = La lejía nunca se junta con amoníaco, un ácido (desincrustante, vinagre, ciertos limpiadores), alcohol, agua oxigenada ni limpiahornos: gas venenoso o fuego. Primero, la etiqueta. { common-closing }
clean-alcohol-fire = El alcohol arde y su vapor prende con una chispa: ni llama, ni cigarrillo, ni sierra caliente junto al baño. Deje enfriar antes la sierra. Primero, la etiqueta. { common-closing }
clean-alcohol-not-with-bleach = El alcohol y la lejía nunca se juntan, ni en un baño ni uno tras otro en la hoja mojada. Primero, la etiqueta. { common-closing }
clean-flame-fire = La llama prende las faldas secas de las palmas y arruina el temple de la hoja. Solo en suelo desnudo, lejos de frondas y de alcohol, con agua a mano. { common-closing }
clean-chain-saw-apart = Una motosierra no se limpia con un trapo: apagada y fría, la cadena y la barra se desarman y se remojan. En palmas que toman una marchitez, mejor un serrucho. { common-closing }
clean-bleach-steel = La lejía ataca el acero: después del remojo, enjuague la hoja con agua limpia y séquela. Primero, la etiqueta. { common-closing }
clean-air-gloves-eyes = Mezcle y remoje al aire libre, con guantes y protección ocular, lejos de niños y de cursos de agua. Primero, la etiqueta. { common-closing }
clean-brush-and-rinse = Cepille la savia y el aserrín antes del remojo, y enjuague después con agua limpia.
clean-not-on-the-cut = No se pone desinfectante sobre el corte de la palma.
