### Sitios y cuadrillas: dónde se trabaja y quién lo hace

common-sites = Sitios

## La lista y un sitio

sites-title = Sitios
sites-summary = { $n ->
    [0] Aún no se conoce ningún sitio: una palma nombra el suyo, o descríbalo aquí.
    [one] { $n } sitio.
   *[other] { $n } sitios.
} { $bare ->
    [0] { "" }
    [one] { $bare } de ellos aún no está descrito.
   *[other] { $bare } de ellos aún no están descritos.
}
sites-what = Lo que se dice de un sitio vale para todas sus palmas: cuándo y cómo se puede trabajar en ellas y con qué se las juzga.
sites-new = Describir un sitio nuevo
sites-palms = { $n ->
    [0] sin palmas
    [one] { $text } palma
   *[other] { $text } palmas
}
sites-any-hour = a cualquier hora
sites-hours = de { $from } a { $to }
sites-bare = aún sin describir
sites-closed = cerrado hasta el { $last }
sites-soon = cerrado del { $first } al { $last }
sites-closed-day = { $first }
sites-closed-days = del { $first } al { $last }
sites-edit = Cambiar la descripción
sites-describe = Describir este sitio
sites-not-described = Nadie ha descrito aún este sitio. Hasta entonces sus palmas se juzgan con las cifras habituales, y las rondas no conocen ni su entrada ni sus horas.
sites-facts = Lo que se sabe
sites-fact-owner = Dueño
sites-fact-gate = Entrada
sites-fact-hours = Horas de trabajo
sites-fact-soil = Suelo
sites-fact-coastal = Cerca de la costa
sites-fact-weevils = Aquí vuelan picudos de las palmas
sites-fact-line = Línea eléctrica cercana
sites-fact-tidy = Hojas muertas por tallo que merecen una visita
sites-fact-limit = Más hojas muertas que estas no deben colgar
sites-yes = sí
sites-no = no
sites-kv = { $kv } kV a tierra
sites-usual = la cifra habitual
sites-closed-head = Cerrado
sites-closed-none = No hay días cerrados anotados.
sites-closed-now = ahora
sites-closed-past = pasado
sites-rules-head = Normas locales contra el abonado
sites-rule = del { $from } al { $to } de cada año: nada de { $what }
sites-rule-now = en vigor hoy
sites-all-feeding = abono alguno
sites-day-of-year = { $day } { $month }
sites-palms-head = Palmas de aquí
sites-palms-all = Todas las palmas de este sitio
error-not-found-site = No hay ningún sitio «{ $name }»: nadie lo ha descrito y ninguna palma está en uno de ese nombre.

## El formulario de un sitio

site-form-new = Describir un sitio nuevo
site-form-edit = Describir { $name }
site-form-name = Nombre
site-form-name-hint = Tal como lo escriben sus palmas.
site-form-owner = Dueño
site-form-owner-hint = De quién es el sitio, o quién responde de él.
site-form-gate = Entrada
site-form-gate-hint = Por dónde entra una cuadrilla: hasta ahí llegan las rondas. En el primer campo se puede pegar un par de un mapa.
site-form-hours = Horas de trabajo
site-form-hours-hint = Cuándo se puede trabajar; deje todo vacío si es a cualquier hora. Al guardar aparece otra línea.
site-form-from = De
site-form-to = A
site-form-closed = Días cerrados
site-form-closed-hint = Cuándo no puede venir nadie. Un solo día no necesita último día. Al guardar aparece otra línea.
site-form-first = Primer día
site-form-last = Último día
site-form-why = Por qué
site-form-judged = Con qué se juzgan sus palmas
site-form-judged-hint = Lo que aquí quede abierto toma la respuesta habitual.
site-form-soil = Suelo
site-form-coastal = Cerca de la costa
site-form-coastal-hint = Para el sol que se calcula de las temperaturas.
site-form-weevil_area = Aquí vuelan picudos de las palmas
site-form-weevil_area-hint = Entonces las palmas datileras no se cortan en verde fuera de los meses fríos.
site-form-line_kv = Tensión de la línea a tierra, kV
site-form-line_kv-hint = Según la compañía eléctrica. Déjelo vacío si no la sabe; entonces se guardan 3,05 m (10 pies), y nunca menos para quien no sea de despeje de líneas.
site-form-tidy = Hojas muertas por tallo que merecen una visita
site-form-limit = Más hojas muertas por tallo que estas no deben colgar
site-form-feeding = Normas locales contra el abonado
site-form-feeding-hint = Una parte de cada año en que una norma local prohíbe abonar. Si no se marca nada, prohíbe todo. Pregunte al condado o al municipio: esta lista vale lo que se anote en ella.
site-form-month = Mes
site-form-day = Día
site-form-barred = Prohibido
site-form-rule = De quién es la norma
site-form-not-known = No se sabe
site-form-notes = Notas
site-form-notes-hint = Dónde aparcar, a quién llamar, un perro. Las claves de las puertas se guardan mejor en otro lugar: lo escrito queda en el libro.
site-nutrient-N = Nitrógeno (N)
site-nutrient-P = Fósforo (P)
site-nutrient-K = Potasio (K)

form-name-missing = Hace falta un nombre.
form-name-unfit = Esto no es un nombre: se espera una línea de { $most } caracteres como mucho.
form-name-taken = «{ $name }» ya está descrito. Cámbielo en su propia página.
form-yes-or-no = Se espera sí, no o nada.
form-hours-half = Hacen falta las dos: cuándo empieza y cuándo acaba.
form-hours-not-read = «{ $found }» no es una hora del día; se espera 06:30.
form-hours-backwards = Esto acaba antes de empezar. El trabajo que pasa de medianoche son dos tramos: hasta las 00:00 y desde las 00:00.
form-hours-overlap = Esto se cruza con { $found }. Haga un solo tramo de los dos.
form-closed-no-day = Diga desde qué día.
form-closed-backwards = Esto acaba antes del { $first }. Revise los dos días.
form-feeding-half = Una norma necesita su primer y su último día.
form-feeding-no-day = Ningún año tiene ese día: mes y día { $found }.
form-site-tidy-beyond-limit = Una visita solo merecería la pena con { $tidy }, que supera este límite. Haga mayor el límite.
form-described-meanwhile = Esto se describió de otro modo en otro lugar después de abrir el formulario. Al guardar, lo de aquí toma su lugar. ¿Es correcto?
form-crew-nobody = Una cuadrilla tiene al menos una persona. Déjelo vacío si no lo sabe.

## Cuadrillas

crews-title = Cuadrillas
crews-what = Las rondas se planean para cuadrillas: de dónde salen, cuándo trabajan, qué saben hacer y qué llevan.
crews-empty = Aún no hay ninguna cuadrilla descrita.
crews-new = Describir una cuadrilla nueva
crews-people = { $n ->
    [one] { $n } persona
   *[other] { $n } personas
}
crews-people-unknown = no se dice cuántas personas
crews-gone = Ya no trabajan
crews-is-gone = Esta cuadrilla ya no trabaja. No se planean rondas para ella.
crews-edit = Cambiar la descripción
crews-fact-people = Personas
crews-fact-from = Sale de
crews-fact-to = Acaba en
crews-fact-hours = Horas
crews-fact-skills = Formada o con licencia para
crews-fact-kit = Lleva
crews-fact-room = Espacio para restos sueltos
crews-to-where-from = donde sale
crews-at-gate = la entrada de { $site }
crew-skill-lift = elevador
crew-skill-climb = trepa
crew-skill-spray = tratamientos
crew-skill-rigging = izado y grúas
error-not-found-crew = No hay ninguna cuadrilla «{ $name }».

crew-form-new = Describir una cuadrilla nueva
crew-form-edit = Describir { $name }
crew-form-name = Nombre
crew-form-name-hint = Tal como figura en sus rondas.
crew-form-people = Personas
crew-form-start = De dónde sale
crew-form-start-hint = Grados decimales. En el primer campo se puede pegar un par de un mapa.
crew-form-gates = Entradas de los sitios, para copiar
crew-form-end = Dónde acaba
crew-form-end-hint = Déjelo vacío si acaba donde sale.
crew-form-hours = Horas
crew-form-hours-hint = Déjelo vacío para las horas habituales.
crew-form-skills = Formada o con licencia para
crew-form-skills-hint = Lo que la ley local o el seguro exigen con licencia, solo con la licencia en mano.
crew-form-skill-lift = Trabajo desde elevador
crew-form-skill-climb = Trepa con cuerdas, sin espuelas
crew-form-skill-spray = Fumigación y tratamientos, con licencia
crew-form-skill-rigging = Izado y grúas
crew-form-more = Otros, con comas entre ellos
crew-form-kit = Lleva
crew-form-room = Espacio para restos sueltos ({ $unit })
crew-form-room-hint = Lo que cabe en el camión o remolque de hojas tal como caen.
crew-form-gone = Ya no trabaja
crew-form-notes = Notas

## Archivos

sites-import-columns = Sitios: hace falta site, el resto puede faltar. Las horas como 06:30-11:00, los días cerrados como 2026-12-24/2026-12-26 por qué, sin abono como 06-01/09-30 N+P de quién es la norma; varios con ; entre ellos.
sites-import-columns-crews = Cuadrillas: hace falta crew, el resto puede faltar. Capacidades y herramientas con ; entre ellas.
sites-import-is-sites = Una lista de sitios.
sites-import-is-crews = Una lista de cuadrillas.
sites-no-name = Falta el nombre. Cada fila necesita uno.
sites-bad-name = «{ $found }» no es un nombre: se esperaba una línea de { $most } caracteres como mucho.
sites-name-twice = «{ $found }» ya está en la línea { $first }. Deje una de las dos.
sites-bad-hours = «{ $found }» no dice horas; se esperaba un comienzo y un final posterior, como 06:30-11:00, varios con ; entre ellos.
sites-hours-overlap = { $found } se cruza con { $other }. Haga un solo tramo de los dos.
sites-bad-closed = «{ $found }» no dice días cerrados; se esperaba algo como 2026-12-24/2026-12-26 por qué, el último día no antes del primero, varios con ; entre ellos.
sites-bad-feeding = «{ $found }» no dice una norma contra el abonado; se esperaban mes y día y lo que se prohíbe, como 06-01/09-30 N+P de quién es la norma, o «all» en lugar de N+P.
sites-too-many = «{ $found }» tiene más de { $most }. Deje los que valen.
sites-tidy-beyond-limit = El límite es { $found }, pero una visita solo merecería la pena con { $tidy }. Haga mayor el límite.
sites-soil-unknown = Ninguna tabla conoce el suelo «{ $found }». Se guarda, pero no se calcula nada con él; se conocen: { $words }.
sites-crew-nobody = Una cuadrilla tiene al menos una persona. Deje la celda vacía si no se sabe.
sites-described = «{ $found }» ya está descrito de otro modo. Cámbielo en su propia página o quite la fila.
sites-crew-described = La cuadrilla «{ $found }» ya está descrita de otro modo. Cámbiela en su propia página o quite la fila.
