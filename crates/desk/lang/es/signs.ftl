### Señales: qué podría ser, qué mirar después, cuándo nadie puede cortar

## Lugares de la palma

place-spear = Flecha
place-young = Hojas más nuevas
place-middle = Mitad de la corona
place-old = Hojas más viejas y bajas
place-crown = La corona entera y su curso
place-fruit = Tallos de flor y fruta
place-trunk = Tronco
place-roots = Raíces y suelo
place-other = Otras notas

## El selector en el formulario de inspección

forms-signs = Señales
forms-signs-hint = Abra un lugar y diga lo que ve. «No está» quiere decir que la buscó; deje lo demás en «sin mirar». También cuenta lo que se buscó y no está.
forms-signs-seen = Se ve
forms-signs-absent = No está
forms-signs-open = Sin mirar
forms-signs-noted = anotadas, del total:
forms-signs-find = Buscar una señal
forms-signs-find-none = Ninguna señal tiene esas palabras.
forms-signs-worth = Lo que más vale ahora:
form-sign-unknown = «{ $found }» no es una señal que se conozca aquí, o no se puede leer lo que se dijo de ella.
signs-takes = Lleva unos { $n } min (supuesto).
signs-takes-under = Lleva menos de un minuto (supuesto).
history-not-there = no está: { $signs }

## Qué podría ser

signs-title = Qué podría ser
signs-rests-on = Al { $on }: { $seen ->
    [0] ninguna señal vista
    [one] { $seen } señal vista
   *[other] { $seen } señales vistas
}, { $absent ->
    [0] ninguna buscada en vano
    [one] { $absent } buscada que no está
   *[other] { $absent } buscadas que no están
}, { $counts }. Lo que nadie buscó no pesa.
signs-with-counts = con los conteos
signs-without-counts = sin conteos
signs-untold = Todavía no hay señales anotadas, así que esto es poco más que lo usual en una palma así. Mire primero:
signs-untold-ranking = Lo usual antes de mirar nada
signs-others = Menos probable
signs-likelihood = { $words }, { $share }
signs-nothing = Nada más que envejecimiento normal: { $share }
signs-doubt = Duda que queda: { $bits } bits.
signs-several = Puede haber varios males a la vez; los porcentajes no tienen que sumar 100 %.
signs-for = A favor
signs-against = En contra
signs-no-for = Nada de lo anotado habla a favor.
signs-factor = ×6 quiere decir seis veces más probable por eso, ÷6 seis veces menos; ×999+ es eso o más.
signs-settles = Qué lo aclararía
signs-sample = Muestra
signs-first = Primero
signs-more = Todo sobre esto
signs-together = Más de uno a la vez
signs-together-line = { $names }: { $share }
signs-next = Lo mejor que mirar ahora
signs-next-others = Otras miradas que valen la pena
signs-next-how = En orden de cuánta duda se espera que quite una mirada por minuto. Un bit es la duda entre dos posibilidades iguales.
signs-next-none = Ninguna otra mirada cambiaría mucho.
signs-look-now = Buscarla ahora
signs-worth = { $rate } bits por minuto ({ $bits } bits en total; está con una probabilidad de { $chance }).
signs-if-there = Si está: { $name }, { $share }.
signs-if-not = Si no está: primero va { $name }, { $share }.
signs-apart = Fáciles de confundir
signs-apart-pair = ¿{ $this } o { $other }?
signs-apart-for = Habla a favor de { $name }
signs-apart-none = Ninguna señal los separa: un laboratorio sí.
signs-disagree = Donde quienes deberían saber no están de acuerdo
signs-caution = Una lista de probables no es un diagnóstico. La autoridad de sanidad vegetal, una clínica de plantas y la gente con licencia van primero.
signs-remarks = Sobre lo anotado

level-nearly-sure = casi seguro
level-likely = probable
level-open = abierto
level-unlikely = poco probable
level-hardly = casi descartado

speaks-seen = se ve: { $sign }
speaks-absent = no está: { $sign }
speaks-host = la clase de palma
speaks-season = la estación
speaks-move = si se trasladó, y cuándo
speaks-frost = el tiempo desde la helada
speaks-storm = el tiempo desde la tormenta
speaks-counts = los conteos

## El traslado o el hambre

sides-title = ¿El traslado o el hambre?
sides-move = El traslado
sides-hunger = El hambre
sides-turn = Qué cambiaría la respuesta
sides-call-move = El traslado lo explica; nada pide más abono que tras cualquier traslado.
sides-call-hunger = Tiene hambre; el traslado no lo explica.
sides-call-both = Actúan los dos.
sides-call-neither = No se señala ninguno: las señales no dicen bastante, o es otra cosa.
sides-likelihood = { $words }, { $share }
sides-which = Qué le falta
sides-which-line = { $name }: { $share }
sides-swing = Si está: el traslado { $move }, el hambre { $hunger }. Si no está: el traslado { $move2 }, el hambre { $hunger2 }.
sides-swing-turns = cambiaría la respuesta
sides-none = Ninguna mirada que quede lo cambiaría mucho.

## Esperas

need-suspect-wilt = No se puede descartar una marchitez ({ $share }): nadie corta.
need-suspect-phytoplasma = No se puede descartar un fitoplasma ({ $share }): nadie corta.
need-suspect-bud-rot = No se puede descartar la pudrición de la yema ({ $share }): nadie corta.
need-suspect-trunk-rot = No se puede descartar la pudrición del tronco ({ $share }): nadie corta ni trepa.
need-suspect-weevil = No se puede descartar un picudo ({ $share }): nadie corta.
need-seen-trunk-rot = { $sign }: nadie corta ni trepa, mantenga lejos a la gente y haga evaluar el tronco.
need-seen-weevil = { $sign }: nadie corta; pregunte a la autoridad de sanidad vegetal.
need-held-conk = Un hongo en repisa en el tronco: nadie corta ni trepa, mantenga lejos a la gente.
need-held-lab = Un laboratorio halló una enfermedad: nadie corta; herramientas, guantes y botas no van a otras palmas.
need-held-phytoplasma = Sospecha de fitoplasma: nadie corta; pregunte a la autoridad de sanidad vegetal.
need-held-bud-rot = Sospecha de pudrición de la yema: nadie corta; que vean la yema.
need-held-trunk-rot = Sospecha de pudrición del tronco: nadie corta, trepa ni apoya nada; mantenga lejos a la gente.
need-held-weevil = Sospecha de picudo: nadie corta; pregunte a la autoridad de sanidad vegetal.

forms-hold-reason-phytoplasma-suspect = Sospecha de fitoplasma
forms-hold-reason-bud-rot-suspect = Sospecha de pudrición de la yema
forms-hold-reason-trunk-rot-suspect = Sospecha de pudrición del tronco, o un hongo en repisa
forms-hold-reason-conk = Hongo en repisa en el tronco
forms-hold-reason-lab-confirmed = Enfermedad hallada por un laboratorio
forms-hold-reason-bats = Murciélagos en la corona
forms-hold-reason-bees = Abejas o avispas en la corona
forms-hold-reason-weevil-suspect = Sospecha de picudo

advice-title = Nadie corta: se aconseja una espera
advice-set = Poner esta espera
advice-is-set = Esta espera está puesta.
advice-why-share = Probabilidad: { $share }.
advice-why-sign = Basta una señal: { $sign }. Probabilidad: { $share }.
advice-instead = En su lugar
advice-tell = Avise a
advice-ends = Termina cuando
advice-note = Por las señales: { $names }

hold-instead-wilt-suspect = Deje todas las hojas. Fotografíe la palma por dos lados y de cerca la hoja que lo muestra. Saque una sola muestra con una herramienta que no corte nada más, embólsela y mantenga esa herramienta lejos de otras palmas. Revise las palmas cortadas con las mismas herramientas.
hold-tell-wilt-suspect = La autoridad local de sanidad vegetal o la oficina de extensión, una clínica de plantas para la muestra, el dueño y todos los que cortan en estos terrenos.
hold-ends-wilt-suspect = Un laboratorio halló otra causa, o la palma se retiró como lo indica la autoridad. Que parezca mejor no la termina.

hold-instead-phytoplasma-suspect = Deje las hojas. Fotografíe corona, tallos de flor y flecha, anote el día en que cambió cada hoja y haga muestrear el tronco como lo pida el laboratorio.
hold-tell-phytoplasma-suspect = La autoridad local de sanidad vegetal, pues puede estar en cuarentena; el dueño; solo aplicadores con licencia inyectan algo.
hold-ends-phytoplasma-suspect = Un laboratorio no halló ninguno en una muestra sacada como lo pide, o la autoridad decidió qué se hace con la palma.

hold-instead-bud-rot-suspect = No jale ni corte más. No moje la corona, guarde la flecha para la muestra, fotografíela y mire hoy las flechas de las palmas vecinas.
hold-tell-bud-rot-suspect = Una clínica de plantas o la oficina de extensión; un aplicador con licencia para cualquier tratamiento; el dueño, porque una palma sin yema muere.
hold-ends-bud-rot-suspect = Una flecha nueva está firme y ya abrió, o alguien que sabe diagnosticar palmas halló otra causa.

hold-instead-trunk-rot-suspect = Mantenga gente, carros y escaleras fuera de donde puede caer. Nadie la trepa y ningún elevador se apoya en ella. Fotografíe el tronco alrededor hasta la altura de una persona, y cualquier hongo con una mano al lado.
hold-tell-trunk-rot-suspect = El dueño de inmediato, porque puede caer sin aviso; un evaluador calificado de riesgo de árboles; una clínica de plantas para el hongo.
hold-ends-trunk-rot-suspect = Una persona calificada juzgó sano el tronco, o gente que sabe hacerlo retiró la palma.

hold-instead-weevil-suspect = No haga heridas: los cortes frescos atraen picudos. Fotografíe agujeros, fibra masticada y capullos, guarde lo que halle en un frasco cerrado y revise todas las palmas de alrededor.
hold-tell-weevil-suspect = La autoridad local de sanidad vegetal: en muchos lugares hay que informarlo; aplicadores con licencia para cualquier tratamiento; el dueño.
hold-ends-weevil-suspect = Alguien calificado no halló ninguno, o la palma se trató o se retiró como lo indica la autoridad.

hold-instead-conk = Mantenga gente, carros y escaleras fuera de donde puede caer; nadie la trepa. Deje el hongo, fotografíelo con una mano al lado y anote su altura sobre el suelo.
hold-tell-conk = El dueño de inmediato, porque el tronco puede estar podrido por dentro; un evaluador calificado de riesgo de árboles; una clínica de plantas para nombrar el hongo.
hold-ends-conk = Una persona calificada juzgó el tronco, o gente que sabe hacerlo retiró la palma.

hold-instead-lab-confirmed = Deje la palma como está y trabájela al final, con herramientas, guantes y botas que se limpian antes de ir a otro lado. Revise las palmas que cortaron las mismas herramientas.
hold-tell-lab-confirmed = La autoridad de sanidad vegetal, donde la enfermedad debe informarse; el dueño; todos los que cortan en estos terrenos.
hold-ends-lab-confirmed = La palma se retiró como lo indica la autoridad, o un laboratorio mostró que el resultado era erróneo. Que parezca mejor no la termina.

hold-instead-spear = Deje todas las hojas, no jale, no moje la corona y fotografíe la flecha junto a una vara recta.
hold-tell-spear = Alguien que sepa diagnosticar palmas, en pocos días; de inmediato si cayó o salió.
hold-ends-spear = La flecha está otra vez firme y se abrió una hoja nueva.

hold-instead-nest = Trabaje en otras palmas, marque esta desde el suelo y no se acerque.
hold-tell-nest = La oficina de fauna antes de mover nada: muchas aves están protegidas.
hold-ends-nest = El nido está vacío y la oficina de fauna o el código local permite el trabajo.

hold-instead-bats = No los espante; trabaje en otras palmas.
hold-tell-bats = La oficina de fauna: muchos murciélagos están protegidos.
hold-ends-bats = Se fueron y la oficina de fauna o el código local permite el trabajo.

hold-instead-bees = Aléjese, aleje a los demás y marque la palma desde el suelo.
hold-tell-bees = Alguien con licencia para trasladarlas o retirarlas; el dueño.
hold-ends-bees = Las retiraron y nada entra ni sale volando.

hold-instead-wires = Mantenga gente, pértigas y elevadores lejos de la línea.
hold-tell-wires = La compañía eléctrica: allí solo trabaja gente de despeje de líneas.
hold-ends-wires = La compañía la despejó, o su dueño movió o desconectó la línea.

hold-instead-keeper = Lo que dice la nota de la espera.
hold-tell-keeper = A quien nombra la nota de la espera.
hold-ends-keeper = El motivo de la nota ya no existe.

## Males

common-disorders = Males
disorders-title = De qué sufren las palmas
disorders-intro = Males de las palmas y lo que se les parece, con las señales que pesa la herramienta y quién lo dice. Los números tras las palabras son supuestos.
disorders-for = Solo los de esta palma
disorders-for-hint = Un nombre botánico, o uno en inglés que pertenezca a una sola especie
disorders-show = Mostrar
disorders-all = Mostrar todos
disorders-shown = { $n ->
    [one] { $n } en { $host }
   *[other] { $n } en { $host }
}
disorders-shown-all = { $n ->
    [one] { $n } mal
   *[other] { $n } males
}
disorders-host-unknown = «{ $name }» no es un nombre que conozcamos; se muestran todos.
disorders-hold = nadie corta mientras se sospecha
disorders-blade = en herramientas
disorder-organism = Organismo
disorder-hosts = Palmas que lo sufren
disorder-spread = Se propaga
disorder-latency = De la infección a la primera señal
disorder-decline = De la primera señal a la muerte, o a un curso claro
disorder-course = En los conteos se parece a
disorder-signs = Señales
disorder-signs-intro = Las más fuertes primero. Una señal en contra sirve tanto como una a favor.
disorder-no-signs = No hay señales anotadas.
disorder-confirm = Qué lo aclara
disorder-sample = Muestra
disorder-no-sample = Ninguna muestra de laboratorio lo aclara.
disorder-first = Primero
disorder-never = Nunca
disorder-hold = Nadie corta mientras se sospecha
disorder-sources = Fuentes de esta página
disorder-sign-sources = Quién lo dice
disorder-no-such = No hay ningún mal con ese nombre.
disorder-all = Todos los males

family-normal = Ningún mal
family-nutrient = Hambre: lo que el suelo no da
family-disease = Enfermedades
family-pest = Insectos y ácaros
family-surroundings = Clima, agua, suelo, gente

host-all = todas las palmas
host-known = Palmas conocidas
host-prone = Más atacadas que otras
host-reported = Rara vez informado, o solo en ensayo

spread-none = no se propaga
spread-blade = en herramientas de corte y otras
spread-vector = por un insecto, o es uno
spread-soil = con suelo, raíces o agua
spread-wind = esporas en el aire
spread-seed = con semilla o plantas jóvenes

course-ageing = envejecimiento normal, o nada
course-move = la caída de hojas tras un traslado
course-hunger = hambre
course-decline = decaimiento

strength-always = casi siempre
strength-usual = por regla
strength-sometimes = a veces
strength-rare = rara vez
strength-excludes = habla en contra

days-from = { $low } o más
days-up-to = hasta { $high }

disagreements-title = Donde quienes deberían saber no están de acuerdo
disagreements-intro = Aquí están los dos lados con sus fuentes. Mientras no se aclare, la herramienta sigue el más estricto.
disagreements-we = Qué hace la herramienta
disagreements-one = Un lado
disagreements-other = El otro lado
disagreements-about = Sobre
