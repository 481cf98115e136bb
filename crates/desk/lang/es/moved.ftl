### Palmas trasladadas: antes, después, y cómo elegir entre las ya sacadas

common-moved = Traslados

## La lista

moved-title = Palmas trasladadas
moved-summary = { $n ->
    [0] Ninguna palma está en camino de establecerse.
    [one] { $n } palma está en camino de establecerse; { $tripped } fuera de lo prometido, { $due } por revisar.
   *[other] { $n } palmas están en camino de establecerse; { $tripped } fuera de lo prometido, { $due } por revisar.
}
moved-what = Una palma trasladada suelta hojas: eso se promete al dueño en cifras para { $weeks } semanas, y quien vea más, llama. Aquí están las trasladadas en los últimos { $recent } (supuesto).
moved-more = { $n ->
    [one] { $n } más, trasladada antes, no se muestra aquí; está en su propia página.
   *[other] { $n } más, trasladadas antes, no se muestran aquí; están en su propia página.
}
moved-empty = Ninguna palma se trasladó hace poco. Un traslado se anota en la página de la palma.
moved-arrived = Otra vez establecidas
moved-select-link = Elegir entre palmas ya sacadas
moved-open = Traslado y calendario
moved-link = El traslado
moved-state-tripped = Llame: fuera de lo prometido
moved-state-not-seen = Sin revisar desde el traslado
moved-state-due = Toca revisar
moved-state-holds = Dentro de lo prometido
moved-state-established = Establecida
moved-since = Sacada el { $date }, hace { $ago }
moved-next = Próxima revisión el { $date }, en { $days }
moved-next-today = Revisión hoy, { $date }
moved-next-late = Tocaba revisar el { $date }, hace { $days }
moved-next-none = Sin más revisiones por el traslado

## La promesa

moved-promise-title = Qué esperar
moved-promise-short = { $range } hojas hasta el { $by }; más de { $over }: llame
moved-promise = { $high ->
    [0] Desde la última revisión del { $since } hasta el { $by } no debería perder ninguna hoja más.
    [1] Desde la última revisión del { $since } hasta el { $by } espere que pierda { $range } hoja más.
   *[other] Desde la última revisión del { $since } hasta el { $by } espere que pierda { $range } hojas más.
}
moved-promise-stem = { $high ->
    [0] Tallo { $stem }: desde la última revisión del { $since } hasta el { $by } no debería perder ninguna hoja más.
    [1] Tallo { $stem }: desde la última revisión del { $since } hasta el { $by } espere que pierda { $range } hoja más.
   *[other] Tallo { $stem }: desde la última revisión del { $since } hasta el { $by } espere que pierda { $range } hojas más.
}
moved-promise-unseen = Nadie ha contado desde el traslado. Desde hoy, { $since }, hasta el { $by } serían { $range } hojas; cuente primero.
moved-promise-unseen-stem = Tallo { $stem }: nadie ha contado desde el traslado. Desde hoy, { $since }, hasta el { $by } serían { $range } hojas; cuente primero.
moved-call = { $over ->
    [one] Más de { $over } hoja, o una flecha inclinada: llame.
   *[other] Más de { $over } hojas, o una flecha inclinada: llame.
}
moved-promise-rests-on = Cuatro de cada cinco palmas así quedan dentro, por envejecimiento y traslado juntos; solo una de cada veinte pasa del aviso. Alcanza { $weeks } semanas y se cuenta desde el { $since }.
moved-tripped-spear-pulled = La flecha salió el { $on }. No corte nada; que vea ya la yema alguien que sepa diagnosticar palmas.
moved-tripped-spear-down = La flecha estaba caída el { $on }. No corte nada; haga ver ya la yema.
moved-tripped-spear-leaning = La flecha estaba inclinada el { $on }. Revise hoy la yema, los flejes y la humedad del cepellón.
moved-tripped-loss = { $n ->
    [one] Se perdió { $n } hoja del { $since } al { $until }; tras un traslado lo normal sería como mucho { $most }. Alguien debe revisarla.
   *[other] Se perdieron { $n } hojas del { $since } al { $until }; tras un traslado lo normal sería como mucho { $most }. Alguien debe revisarla.
}

## Establecida o no

moved-established-title = ¿Está establecida?
moved-pace-back = Hace hojas nuevas al { $pace } de su ritmo venidero: la producción volvió.
moved-pace-slow = Hace hojas nuevas al { $pace } de su ritmo venidero: la producción aún no vuelve.
moved-loss-ordinary = Lo perdido entre las últimas revisiones es normal en una palma asentada.
moved-loss-more = Lo perdido entre las últimas revisiones es más de lo que pierde una palma asentada.
moved-loss-unknown = Los conteos aún no dicen si la pérdida es normal: cuente verdes, amarillentas y cafés en la próxima revisión.
moved-too-early = Antes de medio año desde que se sacó, nadie la da por establecida (supuesto).
moved-not-established = Todavía no está establecida.
moved-established = Establecida: la producción volvió y la pérdida es normal.
moved-established-by-date = Se toma por establecida porque pasaron 540 días (supuesto); los conteos no lo muestran.

## El calendario

moved-calendar-title = Cuándo revisar
moved-calendar-what = Seguido al principio, luego cada vez menos. Una revisión en el último cuarto del plazo antes de su día cuenta para él (supuesto).
moved-look-done = revisada el { $date }
moved-look-missed = no se hizo
moved-look-due = toca
moved-look-ahead = por venir
moved-look-after = a los { $after }
moved-usual-title = Lo usual
moved-usual-share = De la corona de una palma grande trasladada se pone café del { $low } al { $high }.
moved-usual-month = En el mes tras la entrega una palma grande pierde de { $low } a { $high } hojas.
moved-usual-colour = Un color nuevo del tronco se apaga en { $low } a { $high }; no es un defecto.

## Traslados anotados y el formulario

move-title = El traslado de { $tag }
move-jump-after = Después del traslado
move-jump-before = Antes de un traslado
move-jump-note = Anotar un traslado
move-noted-title = Anotado del traslado
move-noted-none = Solo se sabe el día. Anote lo demás que sepa: se pregunta cuando algo va mal.
move-correct = Corregir
move-form-title = Anotar un traslado
move-form-correct = Corregir un traslado
move-form-what = Solo hace falta el día. Lo que no se anota queda como desconocido.
move-save = Guardar el traslado
move-leaves-left = Todas dejadas, sueltas
move-leaves-tied = Todas dejadas, atadas
move-leaves-thinned = Algunas quitadas
move-leaves-stripped = Todas quitadas
move-leaves-none = Sin anotar
move-deeper-by = { $by } más honda que antes
move-higher-by = { $by } más alta que antes
move-as-it-stood = Igual de honda que antes
move-way-deeper = Más honda que antes
move-way-higher = Más alta que antes
move-way-same = Igual que antes
move-way-none = Sin anotar
move-soil-sand = Arena
move-soil-loamy-sand = Arena franca
move-soil-sandy-loam = Franco arenoso
move-soil-loam = Franco
move-soil-silt-loam = Franco limoso
move-soil-silt = Limo
move-soil-silt-clay-loam = Franco arcillo limoso
move-soil-silty-clay = Arcillo limoso
move-soil-clay = Arcilla
move-soil-none = No se sabe
forms-dug_on = Sacada el
forms-from = Vino de
forms-ball_radius = Cepellón, desde el tronco hacia fuera
forms-ball_radius-hint = Desde la superficie del tronco: 45 cm, 18 in
forms-ball_depth = Cepellón, hondura
forms-ball_depth-hint = 60 cm, 2 ft
forms-leaves = Hojas al sacarla
forms-fronds_taken = Hojas vivas quitadas
forms-deeper = Cuánto
forms-deeper-hint = 10 cm, 4 in
forms-depth_way = Plantada
forms-bracing = Puntales
forms-bracing-hint = Cómo se sostiene; en una palma no se clava nada.
forms-soil = Suelo del cepellón
forms-move_notes = Notas
form-move-no-day = Diga qué día se sacó.
form-move-planted-before = No pudo plantarse antes de sacarla, { $dug }. Revise ambos días.
form-move-leaves = Elija qué se hizo con las hojas, o nada.
form-move-no-size = Un cepellón tiene tamaño. Deje el campo vacío si no se sabe.
form-move-which-way = Diga si está más honda o más alta que antes.
form-move-older = Se sabe de un traslado el { $before }, posterior a este. ¿Es este uno anterior?

## Antes de un traslado

move-before-title = Antes de un traslado
move-before-what = Lo que dicen las tablas para esta palma. Escriba lo que sepa; lo que no se sabe se dice.
move-ask = Mostrar
move-ask-diameter = Ancho del tronco en el suelo
move-ask-diameter-hint = De una mata, el ancho de todo: 40 cm, 16 in
move-ask-radius = Su propio cepellón, hacia fuera
move-ask-depth = Su propio cepellón, hondura
move-ask-fronds = Hojas vivas que van con ella
move-ask-fronds-hint = Vacío: las del último conteo.
move-ask-soil = Suelo
move-ask-moist = ¿Pueden mantenerse húmedos cepellón y relleno?
move-ask-moist-yes = Sí
move-ask-moist-no = No
move-ask-moist-unknown = No es seguro
move-ask-hot = Mucho calor en estos días
move-ask-kv = Tensión de la línea cercana, kV
move-ask-kv-hint = Solo lo que le dijo la compañía eléctrica.
move-ask-length = Esto no es una medida: escriba 45 cm, 0,45 m, 18 in o 1 ft 6 in.
move-ask-number = Esto no es un número que pueda valer aquí.
move-ball-title = Cepellón
move-radius = Desde el tronco hacia fuera
move-depth = Hondura
move-volume = Volumen, con el tronco
move-ball-differ = Las fuentes no coinciden: se muestran todas y se planea con la mayor. Nada se promedia.
move-ball-below = Su medida es menor que la que pide cualquiera de las fuentes.
move-said = Lo que se dice
move-mass-title = Peso en el gancho
move-mass-what = Para elegir la máquina, no para izar: la carga la dice la báscula de la máquina.
move-mass-ball = Cepellón
move-mass-trunk = Tronco
move-mass-crown = Hojas
move-mass-sum = En total
move-mass-known = Lo que se sabe, sumado; el total pesa más
move-mass-range = de { $low } a { $high }
move-range = de { $low } a { $high }
move-at-most = como mucho { $high }
move-per-m3 = { $kg } kg/m³
move-per-m = { $kg } kg/m
load-no-diameter = No se sabe el ancho del tronco: sin él no se puede pesar ni cepellón ni tronco.
load-no-height = No se sabe la altura del tronco: no está en la suma.
load-several-trunks = Con varios troncos nadie puede decir cuánto pesan juntos: no están en la suma.
load-no-fronds = Las hojas no están contadas: no están en la suma.
load-no-frond-length = No se sabe cuánto miden sus hojas: no están en la suma.
load-ground-unknown = No se sabe el suelo: la cifra va de tierra seca a arena mojada.
move-leaves-title = Hojas al sacarla
move-leaves-take = Quítelas al sacarla.
move-leaves-leave = Déjelas.
move-leaves-depends = Depende del agua: mantenga húmedo el cepellón y déjelas.
move-leaves-unknown = Nadie lo sabe para esta palma.
move-group-lift = Izar y cavar
move-group-roots = Raíces
move-group-season = Época del año
move-group-depth = A qué hondura plantar
move-group-brace = Puntales, sin clavos
move-group-water = Agua alrededor del traslado

## Elegir entre palmas ya sacadas

select-title = Elegir entre palmas ya sacadas
select-what = Una palma enviada con algunas hojas cafés junto a una impecable: ¿qué soltará cada una desde ahora? Cuente, mire la flecha, pregunte cuándo se sacó.
select-specimen = Ejemplar { $letter }
select-name = Nombre o lote
select-species = Especie
select-green = Verdes
select-yellowing = Amarillentas
select-brown = Cafés, aún puestas
select-spear = Flecha
select-dug = Días desde que se sacó
select-cleaned = Hojas muertas quitadas
select-cleaned-digging = Al sacarla, no después
select-cleaned-again = También después
select-cleaned-not-told = No se sabe
select-more = Un ejemplar más
select-compare = Comparar
select-trouble = Revise esto, por favor:
select-count-wrong = Un número entero de 0 a { $most }, o vacío.
select-further = Soltará probablemente en
select-weeks = { $n } semanas
select-live = Hojas vivas después de
select-browned = Café hasta ahora
select-note = Cuatro de cada cinco palmas así sueltan dentro del margen; las hojas vivas van con su margen del 90 %.
select-side-by-side = Lado a lado
select-refused = déjela
select-spear-not-seen = Mire la flecha antes de elegir: derecha y firme, o no.
select-spear-leaning = La flecha está inclinada: déjela donde está.
select-spear-lost = La flecha está caída o sale: la yema puede estar muerta. Déjela donde está.
select-decline = Por los conteos es probable un decaimiento ({ $share }). Hágala ver antes de pagar.
select-hunger = Por los conteos pasa hambre ({ $share }): muchas hojas amarillentas, pocas vivas. Se puede abonar, pero tarda mucho.
select-not-counted = No se contaron las verdes: lo que soltará es una conjetura por su especie.
select-cleaned-since = Se quitaron hojas muertas después de sacarla: en la palma ya no se ve cuántas murieron. Pida la cuenta.
select-cleaned-unknown = No se sabe si se quitaron hojas muertas después de sacarla: pregunte. Una palma impecable puede estar recién arreglada.
select-thin = { $live ->
    [one] { $live } hoja viva donde una corona llena tiene unas { $full }: podada corta, o sin recuperar.
   *[other] { $live } hojas vivas donde una corona llena tiene unas { $full }: podada corta, o sin recuperar.
}
select-dug-unknown = No se sabe cuándo se sacó: se toma hoy (supuesto), así que toda la caída está por venir.
select-fresh = Sacada hace { $days }: la mayor parte de la caída está por venir.
select-behind-it = Sacada hace { $days }: buena parte de la caída ya pasó.
select-browned-more = El { $share } de la corona está café; tras un traslado es usual del { $low } al { $high }. Pregunte por qué.
select-browned-usual = El { $share } de la corona está café: tras un traslado es usual del { $low } al { $high }.
select-browned-not-yet = El { $share } de la corona está café; tras un traslado es usual del { $low } al { $high }, y llega en las próximas semanas.
select-browned-less = El { $share } de la corona está café, menos de lo usual tras un traslado ({ $low } a { $high }).
select-brown-behind-it = Las hojas cafés de { $brown } ya quedaron atrás: en ocho semanas soltará probablemente { $a } más; { $spotless }, con menos cafés, { $b }.
select-fullest = { $n ->
    [one] A medio año { $name } conservará probablemente más que las otras: { $n } hoja viva.
   *[other] A medio año { $name } conservará probablemente más que las otras: { $n } hojas vivas.
}
select-leave-it = Deje { $name } donde está.

## moves.csv

moves-planted-before = Plantada el { $found }, antes de sacarla el { $dug }: una de las dos fechas está mal.
moves-bad-leaves = «{ $found }» no dice nada de las hojas; se esperaba una de estas palabras: { $words }.
moves-twice-a-day = Esta palma ya se sacó el { $found } en la línea { $first }. Deje una de las dos filas.
moves-registered = El registro ya tiene otro traslado de esta palma el { $found }. Corríjalo en la página de la palma o quite la fila.
forms-import-is-moves = Una lista de traslados.
forms-import-columns-moves = Traslados: hacen falta tag y dug_on, lo demás puede faltar. Hojas al sacarla: left, tied, thinned o stripped.
forms-import-moved = sacada el { $date }
