### Hojas de corte: el estante, el cuaderno de cortes, la limpieza

common-blades = Hojas de corte
error-not-found-blade = No hay en el registro ninguna hoja de corte con la etiqueta «{ $tag }».

## El estante

blades-places = Hojas de corte
blades-place-rack = Estante
blades-place-cutting = Anotar un corte
blades-place-cleaning = Limpiar
blades-place-trace = Rastreo
blades-new = Registrar una hoja de corte
blades-empty = Aún no hay hojas de corte registradas. Dele a cada una su etiqueta: solo así se puede decir después qué tocó.
blades-summary = { $all ->
    [one] Una hoja de corte en servicio: { $clean } limpia, { $blocked } bloqueada.
   *[other] { $all } hojas de corte en servicio: { $clean } limpias, { $blocked } bloqueadas.
}
blades-labels = Etiquetas para imprimir (PDF)
blades-clauses = Cláusulas para empresas de fuera (PDF)
blades-retired = Fuera de servicio
blades-is-retired = Fuera de servicio: { $why }
blades-noticed = Lo raro en el cuaderno
blades-last-cut = lo último que cortó: { $tag }, { $when }
blades-last-cleaned = última limpieza: { $when }
blades-last-lent = prestada a { $to }, { $when }
blades-last-back = devuelta: { $when }
blades-lent-since = En manos de { $to } desde { $when }.
blades-since-clean = Cortó desde que estuvo limpia:
blades-cut-with = Cortar con esta hoja
blades-clean = Limpiar esta hoja
blades-back = Ya volvió
blades-more = Más sobre esta hoja de corte
blades-edit = Cambiar
blades-lend = Prestar
blades-retire = Fuera de servicio
blades-log = Cuaderno
blades-log-empty = Aún no hay nada en el cuaderno.
blades-log-cut = Cortó { $tag }
blades-log-cleaned-adequate = Limpiada, lo suficiente
blades-log-cleaned-short = Limpiada, no lo suficiente
blades-log-cleaned-unknown = Limpiada, nadie puede decir si lo suficiente
blades-log-lent = Prestada a { $to }
blades-log-back = Devuelta
blades-despite = Se cortó de todos modos:
blades-stem = tallo { $n }
blades-took = { $n } min
blades-off-green = { $n } verdes quitadas
blades-off-yellowing = { $n } en parte muertas quitadas
blades-off-brown = { $n } muertas quitadas
blades-off-stalks = { $n ->
    [one] un racimo quitado
   *[other] { $n } racimos quitados
}
blades-agent-unknown = producto sin anotar
blades-strength = { $n } % en el baño
blades-contact = { $n } min de contacto
blades-contact-unknown = contacto desconocido
blades-brushed = cepillada antes
blades-not-brushed = sin cepillar antes
blades-brushed-unknown = cepillado sin anotar
blades-before-adequate = Antes se limpió, lo suficiente: { $when } ({ $how }).
blades-before-short = Antes se limpió, no lo suficiente: { $when } ({ $how }).
blades-before-unknown = Antes se limpió, nadie puede decir si lo suficiente: { $when } ({ $how }).
blades-before-none = No hay en el cuaderno ninguna limpieza anterior.

## Qué lleva la hoja

blade-kind-unknown = tipo sin decir
blade-kind-hand-saw = serrucho
blade-kind-pole-saw = sierra de pértiga
blade-kind-loppers = tijera de dos manos
blade-kind-pole-loppers = tijera de pértiga
blade-kind-pole-sickle = hoz o cincel de pértiga
blade-kind-chain-saw = motosierra
blade-kind-reciprocating-saw = sierra de sable
blade-kind-knife = cuchillo o machete

## Cómo está una hoja: en corto

blade-is-clean = Limpia desde { $when }
blade-is-same = Solo en esta palma
blade-is-short = Faltan { $n } min
blade-is-weak = Limpieza insuficiente
blade-is-unknown = Limpieza desconocida
blade-is-dirty = Sin limpiar desde { $tag }
blade-is-back = Sin limpiar desde el préstamo
blade-is-nothing = No se sabe nada
blade-is-spent = Baño de { $when } agotado
blade-is-blocked = Bloqueada: cortó { $tag }
blade-is-lent = Prestada a { $to }

## Cómo está una hoja: en una frase

blade-says-clean = Limpia desde { $when }: no ha cortado nada desde entonces.
blade-says-same = Desde que estuvo limpia solo ha cortado esta palma.
blade-says-short = { $n ->
    [one] Le faltó un minuto a su limpieza. Límpiela otra vez, el tiempo completo.
   *[other] Le faltaron { $n } minutos a su limpieza. Límpiela otra vez, el tiempo completo.
}
blade-says-weak = Su limpieza no bastó: mezcla débil, baño agotado o tierra pegada. Más tiempo no ayudaría. Cepíllela y límpiela en un baño fresco.
blade-says-unknown = Nadie puede decir si su limpieza bastó. Límpiela con algo cuya concentración y tiempo conozca.
blade-says-dirty = Cortó { $tag } y no se ha limpiado desde entonces.
blade-says-back = Estuvo en otras manos y no se ha limpiado desde entonces.
blade-says-nothing = No se sabe nada de esta hoja antes de ahora. Límpiela primero.
blade-says-spent = Se limpió en un baño de { $when } que ya debía haberse cambiado. Prepare uno fresco y límpiela otra vez.
blade-says-blocked = Cortó { $tag } ({ $when }; { $reason }) y desde entonces no se limpió lo suficiente. No va a ninguna otra palma.

## El cuaderno de cortes

cutting-title = Anotar un corte
cutting-saved = Guardado: el corte en
cutting-which-blade = ¿Qué hoja de corte?
cutting-which-palm = ¿Qué palma?
cutting-palm-tag = La etiqueta de la palma
cutting-palm-hint = Escríbala, o escanee la etiqueta de la palma con la cámara.
cutting-go = Seguir
cutting-blade = Hoja
cutting-palm = Palma
cutting-another = Otra
cutting-verdict-clean = Limpia para esta palma
cutting-verdict-same = Limpia para esta palma
cutting-verdict-short = No está limpia: faltó tiempo
cutting-verdict-unknown = No se sabe si está limpia
cutting-verdict-dirty = No está limpia
cutting-verdict-nothing = No se sabe si está limpia
cutting-verdict-spent = No está limpia: baño agotado
cutting-verdict-blocked = Bloqueada
cutting-held = Nadie corta esta palma
cutting-held-says = Está en espera ({ $reason }). Ninguna hoja y ninguna razón cambian eso: solo levantar la espera.
cutting-lent-says = Según el cuaderno está en otras manos. Si está aquí, diga que ya volvió; luego límpiela.
cutting-clean-first = Limpiarla primero
cutting-other-blade = Tomar otra hoja
cutting-override = Cortar de todos modos
cutting-despite = ¿Por qué con una hoja que no está limpia?
cutting-despite-blocked = ¿Por qué con una hoja que puede llevar una infección?
cutting-despite-hint = Queda en el cuaderno con este corte, para siempre.
cutting-why-same-row = Misma hilera, sin enfermedad conocida
cutting-why-no-cleaner = No hay aquí con qué limpiar
cutting-why-danger = Peligro para personas, no podía esperar
cutting-stem = Tallo
cutting-time = Hora
cutting-start = Empezar el corte
cutting-running = Cortando desde las
cutting-times = Inicio y final a mano
cutting-times-hint = Final vacío: el momento de guardar.
cutting-started = Inicio
cutting-ended = Final
cutting-off = Lo que se quitó
cutting-off-hint = Deje vacío lo que no se contó.
cutting-crew = Quién cortó
cutting-save = Guardar el corte
cutting-save-despite = Guardar de todos modos
forms-off_green = Verdes
forms-off_green-hint = Hojas del todo verdes.
forms-off_yellowing = En parte muertas
forms-off_yellowing-hint = Con algo de tejido amarillo o muerto, no muertas del todo.
forms-off_brown = Muertas
forms-off_brown-hint = Hojas muertas del todo.
forms-off_stalks = Racimos
forms-off_stalks-hint = Racimos de flores y de frutos.

## Limpieza

cleaning-title = Limpiar
cleaning-saved = Guardado: limpieza de { $tags }.
cleaning-soaking = En contacto ahora
cleaning-ready-at = Dentro desde las { $from }, lista a las { $until }.
cleaning-is-ready = Lista
cleaning-out = Sacarla y guardar
cleaning-out-early = Sacarla antes de tiempo
cleaning-forget = No estaba dentro
cleaning-which = ¿Qué hojas de corte?
cleaning-first = Primero, el cepillo
cleaning-brush-hint = La tierra, la savia y la fibra gastan el baño y protegen lo que tienen debajo.
cleaning-brushed = Cepillada, hasta el metal
cleaning-with = ¿Con qué?
cleaning-new-bath = Un baño fresco
cleaning-no-bath = Ningún baño anotado: elija la mezcla
cleaning-other-mixes = Otras mezclas, o algo propio
cleaning-other-hint = Las fuentes dicen que bastan en parte, las probaron en otras plantas o no dicen nada de palmas.
cleaning-own = Otra cosa
cleaning-own-agent = Qué
cleaning-strength = Por ciento en el baño
cleaning-minutes-field = Minutos de contacto
cleaning-minutes-hint = Para el reloj: vacío significa lo que diga la fuente más estricta. Si ya está hecho: cuánto duró; vacío significa que no se sabe.
cleaning-more = Quién, y una hora anterior
cleaning-by = Quién limpió
cleaning-done-at = Terminó a las
cleaning-done-hint = Vacío: el momento de guardar.
cleaning-start = Empezar el tiempo
cleaning-save = Ya está hecho: guardar
cleaning-bath-age = Preparado: { $when }; tiene { $age }; { $n ->
    [0] aún no se limpió nada en él
    [one] se limpió en él una hoja
   *[other] se limpiaron en él { $n } hojas
}
cleaning-minutes = { $min } min
cleaning-hours = { $h } h { $min } min
cleaning-cautions = Junto al baño
cleaning-agents = Lo que dicen las fuentes
cleaning-agents-what = No están de acuerdo. Una limpieza solo cuenta como suficiente si lo es para la fuente más estricta que viene al caso.
cleaning-row-yes = Sirve: { $mix }; { $contact }
cleaning-row-partly = Sirve en parte: { $mix }; { $contact }
cleaning-row-no = No sirve: { $mix }; { $contact }
cleaning-contact-range = de { $low } a { $high } min de contacto
cleaning-indirect = Probado en algo que no son palmas, o recordado: no basta por sí solo
cleaning-bath-title = Un baño fresco
cleaning-bath-what = Anote el baño al prepararlo: su edad y lo que ha servido deciden cuándo está agotado.
cleaning-mixed-at = Preparado a las
cleaning-bath-save = Guardar el baño

## La página de la palma

palm-blades = Hojas de corte
palm-blades-none = No hay en el cuaderno ningún corte de esta palma.
palm-blades-between = Entretanto cortó con la misma hoja:
palm-blades-log = Anotar un corte
palm-blades-trace = Rastrear desde esta palma
palm-blades-older = Cortes anteriores

## Formularios de hojas de corte

blade-form-new = Registrar una hoja de corte
blade-form-edit = Cambiar { $tag }
blade-form-tag = Etiqueta
blade-form-tag-hint = La marca en la propia hoja. Una etiqueta, una hoja: una hoja nueva en un mango viejo lleva etiqueta nueva.
blade-form-kind = ¿Qué la lleva?
blade-form-kit = Juego
blade-form-kit-hint = El juego al que pertenece; puede quedar vacío.
blade-form-holder = Quién la tiene
blade-form-holder-hint = Puede quedar vacío.
blade-form-to = A quién
blade-form-to-hint = Una persona o una empresa.
blade-lend-title = Prestar { $tag }
blade-lend-what = Límpiela antes de que salga, y otra vez cuando vuelva: lo que toca en otras manos aquí nadie lo anota.
blade-lend-do = Prestar
blade-back-title = { $tag } ya volvió
blade-back-what = Desde ahora cuenta como sin limpiar. Límpiela antes de llevarla a una palma.
blade-back-do = Ya volvió
blade-retire-title = Poner { $tag } fuera de servicio
blade-retire-what = Su cuaderno queda, y un rastreo sigue hallando lo que tocó. La etiqueta queda libre.
blade-retire-do = Fuera de servicio
form-blade-tag-missing = Una hoja de corte necesita una etiqueta.
form-blade-tag-long = La etiqueta tiene más de { $most } letras.
form-blade-tag-taken = Otra hoja de corte en servicio lleva la etiqueta «{ $tag }».
form-blade-kind-unknown = Elija qué lleva la hoja.
form-blade-to-missing = Diga a quién.
form-blade-lent-not-clean = Esta hoja no está limpia. Límpiela antes de que salga.
form-blade-gone = Esta hoja de corte ya no está en servicio.
form-cut-held = Esta palma está en espera: nadie la corta. Levante primero la espera.
form-cut-blocked = Esta hoja puede llevar una infección. Límpiela, tome otra, o escriba por qué se cortó de todos modos.
form-cut-not-clean = Esta hoja no está limpia para esta palma. Límpiela, tome otra, o escriba por qué se cortó de todos modos.
form-cut-lent = Según el cuaderno esta hoja está prestada. Si está aquí, diga primero que ya volvió.
form-cut-stem-unknown = Esta palma tiene { $stems ->
    [one] un tallo.
   *[other] los tallos 1 a { $stems }.
}
form-cut-ends-before = El final es anterior al inicio.
form-cut-long = Son { $hours } horas para un solo tallo.
form-moment-in-future = Eso aún no ha ocurrido.
form-moment-not-read = «{ $found }» no es una fecha con hora.
form-clean-no-blade = Marque las hojas que se limpian.
form-clean-no-agent = No se dice con qué se limpió. Una limpieza así cuenta como desconocida.
form-clean-own-agent = Aquí ninguna fuente habla de «{ $agent }». Una limpieza así cuenta como desconocida.
form-clean-bath-gone = Este baño o mezcla ya no se ofrece. Elija otra vez.
form-clean-how-long = Diga cuántos minutos: para esto no lo dice ninguna fuente.
