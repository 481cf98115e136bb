### Plan de corte: cuándo no se corta, qué se quita y qué se queda, cómo se corta

## Respuestas

verdict-allowed = Permitido
verdict-partly = En parte
verdict-refused = No se permite

tool-hand = A mano, sin hoja de corte
tool-saw = Serrucho de mano o de pértiga

stand-ground = Desde el suelo
stand-ground-with-pole = Desde el suelo con pértiga, parado a un lado
stand-lift = Desde un elevador
stand-lift-from-above = Desde un elevador, de arriba hacia abajo
stand-unknown = Mida primero el tronco

## Señales que las reglas atienden

sign-nest = Nido
sign-bats = Murciélagos
sign-bees = Abejas o avispas
sign-one-sided-browning = Hojas que mueren de un solo lado
sign-wilt = Marchitez
sign-skirt = Falda de hojas muertas
sign-fruit = Fruta pesada

## No se corta

hold-spear-leaning = La flecha está inclinada. No corte. Que en pocos días la vea alguien que sepa diagnosticar palmas; deje todas las hojas y revise otra vez en dos semanas.
hold-spear-down = La flecha está caída. No corte. La palma puede estar perdiendo su único punto de crecimiento: que la vea ya alguien que sepa diagnosticar palmas.
hold-spear-pulled = La flecha salió al jalarla. No corte. Que vea ya la yema alguien que sepa diagnosticar palmas, y guárdele la flecha.
hold-spear-set = La palma está en espera por la flecha. No corte. Mire la flecha, anote lo que ve y levante la espera cuando esté firme.
hold-nest = Hay un nido en la corona. No corte hasta que esté vacío. Pregunte a la oficina de fauna: muchas aves están protegidas.
hold-bats = Hay murciélagos en la corona. No corte ni los espante. Pregunte a la oficina de fauna: muchos murciélagos están protegidos.
hold-bees = Hay abejas o avispas en la corona. No corte. Aléjese y llame a quien las retire.
hold-wilt-suspect = Se sospecha marchitez. No pode: la herramienta puede llevarla a la palma siguiente, y la poda borra las señales. Tome fotos, pregunte a una clínica de plantas cómo sacar la muestra y no use esa herramienta en otra cosa hasta que esté limpia.
hold-decline-likely = Los conteos apuntan a que la palma decae ({ $share }). No pode: la poda borra las señales. Inspeccione otra vez, tome fotos y pregunte a una clínica de plantas.
hold-wilt = Se sospecha una marchitez: { $disorder } ({ $share }). No se corta: una hoja de corte puede llevarla a la palma siguiente, y la poda oculta los signos. Avise a la autoridad fitosanitaria o a la oficina de extensión, y que una clínica de plantas diga cómo tomar la muestra.
hold-phytoplasma = Se sospecha un fitoplasma: { $disorder } ({ $share }). No se corta: la poda oculta los signos, y la palma puede estar en cuarentena. Avise a la autoridad fitosanitaria, y que un laboratorio diga cómo tomar la muestra.
hold-phytoplasma-suspect = Hay una retención porque se sospecha un fitoplasma. No se corta. Avise a la autoridad fitosanitaria, y que un laboratorio diga cómo tomar la muestra.
hold-bud-rot = Se sospecha una pudrición del cogollo: { $disorder } ({ $share }). No se corta: hace falta cada hoja viva mientras se averigua, y las hojas de corte llevan la pudrición. Que alguien que sepa diagnosticar palmas mire el cogollo ya.
hold-bud-rot-suspect = Hay una retención porque se sospecha una pudrición del cogollo. No se corta. Que alguien que sepa diagnosticar palmas mire el cogollo ya.
hold-trunk-rot = Se sospecha una pudrición del tronco: { $disorder } ({ $share }). No se corta ni se trepa, ni se apoya en ella escalera o elevador: el tronco puede quebrarse. Que nadie pase por donde caería, y que la mire una persona calificada en riesgo de árboles.
hold-trunk-rot-seen = { $sign }: visto en la última revisión. No se corta ni se trepa, ni se apoya en ella escalera o elevador: el tronco puede quebrarse. Que nadie pase por donde caería, y que la mire una persona calificada en riesgo de árboles.
hold-trunk-rot-suspect = Hay una retención porque se sospecha una pudrición del tronco. No se corta ni se trepa. Que nadie pase por donde caería, y que la mire una persona calificada en riesgo de árboles.
hold-weevil = Se sospecha un picudo: { $disorder } ({ $share }). No se corta: los cortes frescos atraen más, y la corona puede quebrarse. Avise a la autoridad fitosanitaria; el tratamiento es de aplicadores con licencia.
hold-weevil-seen = { $sign }: visto en la última revisión. No se corta: los cortes frescos atraen picudos, y la corona puede quebrarse. Avise a la autoridad fitosanitaria; el tratamiento es de aplicadores con licencia.
hold-weevil-suspect = Hay una retención porque se sospecha un picudo. No se corta: los cortes frescos atraen picudos. Avise a la autoridad fitosanitaria; el tratamiento es de aplicadores con licencia.
hold-lab-confirmed = Un laboratorio halló una enfermedad; la palma está en espera desde el { $since }. No corte: la autoridad de sanidad vegetal dice qué se hace con la palma. Lo que la toca no toca a otra.
hold-conk = Hay una retención por un cuerpo fructífero de hongo en el tronco. No se corta ni se trepa: el tronco puede estar podrido por dentro. Que nadie pase por donde caería, y que la mire una persona calificada en riesgo de árboles.
hold-set = La palma está en espera desde el { $since }. No corte hasta que se levante la espera.
hold-set-noted = La palma está en espera desde el { $since }: { $note }. No corte hasta que se levante la espera.
hold-wires-within = Hay un cable a { $wires } de la corona. No se permite: a menos de { $keep } solo puede trabajar gente de despeje de líneas, y con más de 50 kV hace falta más distancia. Llame a la compañía eléctrica. { common-closing }
hold-wires-set = La palma está en espera por cables. No se permite: a menos de { $keep } solo puede trabajar gente de despeje de líneas, y con más de 50 kV hace falta más distancia. Llame a la compañía eléctrica. { common-closing }

## Qué se quita y qué se queda

dead-any-time = { $n ->
    [one] { $n } hoja está muerta del todo y se puede quitar.
   *[other] { $n } hojas están muertas del todo y se pueden quitar.
} Muerta del todo quiere decir café por completo. Una hoja con algo de verde todavía alimenta a la palma.
partly-dead-stay = Las hojas con parte verde o amarilla se quedan (hay { $n }). Todavía alimentan a la palma.
partly-dead-stay-hungry = Las hojas con parte verde o amarilla se quedan (hay { $n }), y aquí más que nunca: es probable que la palma tenga hambre ({ $share }). De ellas se alimenta; si se quitan, gasta las de arriba.
partly-dead-count-as-live = Las hojas con parte verde o amarilla (hay { $n }) cuentan como vivas. El plan las deja.
frost-wait = Las hojas que quemó la helada del { $freeze } esperan, también las cafés. Espere a que no se esperen más heladas y a que salgan tres hojas nuevas (contadas desde entonces: { $out }). Dele unos seis meses a la palma antes de darla por muerta.
moved-dead-only = Se movió el { $moved } y todavía no está establecida. Solo se quitan hojas muertas del todo. Se toma por establecida a más tardar el { $until } (supuesto).
moved-sabal-exception = Esta especie es la excepción el día en que se saca: sin ninguna hoja vivieron 95 de 100; con un tercio, 64 de 100, y las hojas que quedaron murieron antes de dos meses. La corona completa tarda hasta dos años. No es motivo para cortar después.
crownshaft-by-hand = Espere a que la vaina de la hoja muerta se abra. Entonces jálela hacia arriba con la mano. Nunca la fuerce ni corte en la vaina. No se quita nada vivo: una palma de este tipo bien alimentada no necesita poda.
storm-no-thinning = Se espera una tormenta. No se quita ninguna hoja viva. Solo las muertas y las sueltas: el viento daña más a las palmas raleadas.
weevil-season-wait = Aquí vuela el picudo de las palmas y los cortes frescos lo atraen. Corte hojas verdes de esta palma solo en los dos meses más fríos, diciembre y enero en el norte.
weevil-fresh-cuts = Aquí vuela el picudo de las palmas y los cortes frescos lo atraen. Haga los menos que pueda.
live-never-counted = Nunca se contaron las hojas vivas. Cuente primero las verdes y las que amarillean: mientras tanto no se quita ninguna hoja viva.
live-count-old = El último conteo completo fue hace { $ago }. Cuente otra vez: mientras tanto no se quita ninguna hoja viva.
live-not-fed = No se descarta el hambre ({ $share }). No se quita ninguna hoja viva a una palma que puede tener hambre.
live-decline-open = No se descarta que la palma decaiga ({ $share }). Mientras tanto no se quita ninguna hoja viva.
live-not-full = La corona tiene { $live } hojas vivas; completa tendría unas { $full }. No le sobra ninguna.
level-line = No se quita ninguna hoja viva a nivel o por encima (las 9 y las 3 del reloj). { $below ->
    [one] { $below } de { $live } hojas vivas cuelga por debajo.
   *[other] { $below } de { $live } hojas vivas cuelgan por debajo.
}
live-allowance = { $n ->
    [0] El plan no quita ninguna hoja viva. Si el dueño pide más: ninguna cuelga por debajo del nivel y habrá vuelto a crecer para la visita del { $visit }.
   *[other] El plan no quita ninguna hoja viva. Si el dueño pide más, a lo sumo las { $n } más bajas: son las que cuelgan por debajo del nivel y habrán vuelto a crecer para la visita del { $visit }.
}
live-no-next-visit = No hay próxima visita planeada, así que no es seguro que algo haya vuelto a crecer. No se quita ninguna hoja viva. Ponga primero la fecha de la próxima visita.
over-trimming = Quitar { $asked } de { $live } hojas vivas deja { $left }. Eso es podar de más: solo { $below } cuelgan por debajo del nivel, y debe quedar al menos media esfera de hojas.
asked-years-growth = { $asked ->
    [one] { $asked } hoja viva es lo que crece en { $time }; esta palma hace unas { $pace } al año.
   *[other] { $asked } hojas vivas son lo que crece en { $time }; esta palma hace unas { $pace } al año.
}
asked-more-than-there-is = Se piden { $asked } hojas vivas, pero solo hay unas { $live }.
stalks-any-time = Los racimos de flor y de fruta se pueden quitar en cualquier momento.
stalks-after-bloom = Los racimos de flor y de fruta se pueden quitar en cualquier momento. En lugares de desierto cálido, una visita al final de la floración los quita junto con las hojas muertas.
skip-too-few-green = Solo { $green } hojas están verdes; completa tendría unas { $full }. Sáltese esta visita, salvo que una hoja suelta sea un peligro.
skip-nothing-dead = Ninguna hoja está muerta del todo. No hay nada que cortar.

## Cómo se corta

follow-to-own-stem = { $stems } tallos: siga cada hoja hasta su propio tallo antes de cortarla.
stub-small-armed = Deje de { $low } a { $high } desde el tronco, por debajo de las espinas más bajas. Nunca corte al ras.
stub-large = Deje un muñón de { $low } a { $high }. Nunca corte al ras.
stub-unknown-kind = No se sabe qué palma es: deje un muñón de { $low } a { $high } (supuesto). Nunca corte al ras.
stub-weevil = Aquí vuela el picudo de las palmas: corte las hojas verdes a { $low } del tronco por lo menos. Nunca corte al ras.
stroke-upward = Corte de abajo hacia arriba, con el lado de apoyo de la herramienta contra el muñón. Párese a un lado, nunca debajo de la hoja.
bases-by-hand = Quite bases de hoja y fibra solo donde salgan con la mano. No toque la franja de arriba, justo debajo de la corona.
bases-no-ball = La bola recortada debajo de la corona no hace falta y puede dañar. No la haga.
old-stubs-saw = Quite los muñones viejos con sierra sable, sin llegar al tronco. Nada de motosierra en el tronco.
no-chain-saw-at-all = Nada de motosierra en hojas ni racimos de esta palma: lleva la marchitez y es difícil de limpiar.
clean-saw-each-palm = Use un serrucho desinfectado antes y después de esta palma, o uno nuevo. A este tipo le da una marchitez que viaja en las herramientas.
clean-saw-each-site = Limpie las herramientas por lo menos antes de ir al siguiente sitio.
no-spikes = Nada de espuelas para trepar. Los hoyos quedan para toda la vida.
