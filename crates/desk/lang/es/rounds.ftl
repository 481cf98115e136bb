### Rondas del día: quién va adónde, en qué orden y a qué hora

common-rounds = Rondas

## La lista

rounds-title = Rondas
rounds-lead = { $n ->
    [0] No hay ninguna ronda prevista.
    [one] Hay { $n } ronda prevista desde hoy.
   *[other] Hay { $n } rondas previstas desde hoy.
}
rounds-plan-link = Planificar un día
today-rounds = Rondas de hoy
rounds-past = Rondas anteriores
rounds-row = { $crew }: { $palms ->
    [one] { $palms } palma
   *[other] { $palms } palmas
}, { $sites }
rounds-state-planned = Prevista
rounds-state-under-way = En marcha: { $done } de { $of } palmas
rounds-state-finished = De vuelta: { $done } hechas, { $skipped } sin hacer
rounds-state-open = Sin cerrar: { $done } de { $of } palmas

## Planificar un día

plan-title = Planificar un día
plan-lead = Qué cuadrilla va a qué palmas y en qué orden. Nada se anota hasta que usted lo acepte.
plan-day = Día
plan-crews = Cuadrillas
plan-crews-hint = Sin marcar ninguna: todas las que trabajan.
plan-crew-no-start = sin punto de salida
plan-crew-lift = con elevador
plan-no-crews = Aún no hay ninguna cuadrilla descrita. Describa primero una: de dónde sale, su horario, si lleva elevador.
plan-crews-link = Cuadrillas
plan-scope = Palmas
plan-scope-due = Todas las que toquen ese día
plan-scope-sites = Las que toquen en estos sitios
plan-scope-palms = Estas palmas, toquen o no
plan-tasks = Qué se hace
plan-tasks-hint = Riego y abono solo donde tocan. El abono pide otra carga: márquelo cuando vaya con la cuadrilla.
plan-tags = Etiquetas
plan-tags-hint = Separadas por comas o espacios.
plan-site-due = { $n ->
    [0] hoy no toca nada
    [one] hoy toca { $n } palma
   *[other] hoy tocan { $n } palmas
}
plan-search = Proponer
plan-again = Proponer de nuevo
plan-keep = Aceptar estas rondas
plan-notes = Palabras para las cuadrillas
plan-replaces = { $n ->
    [one] Al aceptar se sustituye { $n } ronda prevista antes para la misma cuadrilla y día.
   *[other] Al aceptar se sustituyen { $n } rondas previstas antes para las mismas cuadrillas y día.
}
plan-proposal = Propuesta para el { $date }
plan-summary = { $palms ->
    [one] { $palms } palma
   *[other] { $palms } palmas
} en { $rounds ->
    [one] { $rounds } ronda
   *[other] { $rounds } rondas
}; { $left ->
    [0] ninguna queda fuera.
    [one] { $left } queda fuera.
   *[other] { $left } quedan fuera.
}
plan-round = { $crew }: { $leave } a { $back }
plan-round-sum = { $palms ->
    [one] { $palms } palma
   *[other] { $palms } palmas
}, { $work } de trabajo, { $driving } de camino, { $km }
plan-time = Inicio
plan-palm = Palma
plan-what = Qué
plan-minutes = Minutos
plan-left = Quedan fuera
plan-rests-on = En qué se basa
plan-map = Mapa de la propuesta
plan-map-what = Lugares por su entrada, cuadrillas por su salida; líneas rectas, el norte arriba.
plan-form-day = Indique el día, por ejemplo 2026-03-09.
plan-form-past = Ese día ya pasó. Planifique hoy o un día posterior.
plan-form-tags = Indique al menos una etiqueta o elija otra manera de escoger palmas.
plan-form-tasks = Marque al menos una cosa que hacer.
plan-form-sites = Marque al menos un sitio o elija otra manera de escoger palmas.
plan-form-carried = La propuesta no volvió entera. Proponga de nuevo.

## Una ronda

round-title = Ronda de { $crew }
round-when = { $date }, { $leave } a { $back }
round-when-day = { $date }
round-start = Salir
round-finish = De vuelta en el patio
round-next = Siguiente
round-none-left = Todas las palmas de esta ronda están hechas o quedaron fuera.
round-began = Salida a las { $time }
round-ended = Vuelta a las { $time }
round-progress = { $done } hechas, { $skipped } sin hacer, { $open } por hacer
round-done = Hecha
round-done-minutes = Minutos que llevó
round-done-minutes-hint = De ellos aprende la estimación. Déjelo vacío si no miró el reloj.
round-done-note = Nota
round-skip = Dejar fuera
round-skip-why = Por qué
round-why-no-access = no se puede entrar
round-why-occupied = nido o gente en medio
round-why-ill = parece enferma: esperar al encargado
round-why-weather = viento o lluvia
round-why-time = no queda tiempo
round-why-other = otra cosa
round-why-words = Con sus palabras
round-open-palm = Página de esta palma
round-log-cut = Anotar el corte
round-log-look = Anotar la inspección
round-log-water = Anotar el riego
round-log-feed = Anotar el abono
round-stop-done = hecha { $time }
round-stop-done-minutes = hecha { $time }, { $minutes } min
round-stop-skipped = fuera { $time }: { $why }
round-stop-open = por hacer
round-all = Todas las palmas
round-clean = Limpie y sumerja la hoja de corte antes de esta palma
round-same-blade = Puede seguir la misma hoja de corte
round-hold = En espera: no cortar
round-call-off = Anular esta ronda
round-called-off = La ronda quedó anulada.
round-call-off-why = Por qué
round-form-why = Diga por qué, para que el encargado lo sepa.
round-form-minutes = Los minutos como número, de 0 a 1440.
round-form-gone = Esta ronda ya no está prevista.
round-form-palm = Esta palma no está en la ronda.
round-geo = cómo llegar
round-cautions = Precauciones
round-notes = Palabras para la cuadrilla

round-task-look = mirar
round-task-cut = cortar
round-task-water = regar
round-task-feed = abonar
round-task-clean = limpiar el tronco
round-health-healthy = sana
round-health-unknown = sin mirar últimamente
round-health-suspect = sospechosa: después de las sanas
round-health-confirmed = enferma confirmada: la última
round-lift = elevador

## Por qué quedan palmas fuera

round-left-skills = { $site }: ninguna cuadrilla que sale lleva elevador y el tronco es demasiado alto para la pértiga. Envíe una que lo lleve o alquile uno.
round-left-room = { $site }: ninguna cuadrilla tiene sitio para los restos, ni vacía.
round-left-hours = { $site }: ninguna cuadrilla puede estar allí en el horario del sitio y volver en el suyo.
round-left-full = { $site }: no queda tiempo junto a palmas más urgentes. Tome otro día u otra cuadrilla.
round-left-nothing = Nada de lo pedido toca allí, o una espera o una norma se oponen.
round-left-closed = { $site }: cerrado hasta el { $until } ({ $why }).
round-left-no-place = { $site }: nadie sabe dónde está. Dé una entrada al sitio o una posición a una de sus palmas.

## Qué impide un plan

round-no-crew = No hay a quién enviar. Describa una cuadrilla con punto de salida.
round-no-such-crew = Ninguna cuadrilla se llama { $crew }.
round-crew-no-start = { $crew } no tiene punto de salida, así que no se envía. Déle uno.
round-begun = { $crew } ya empezó su ronda de ese día. Lo empezado no se planifica de nuevo.
round-nothing-to-do = El { $date } no toca nada. Elija un día posterior o nombre palmas por su etiqueta.
round-many-palms = { $n } palmas son más de las que caben en un día ({ $most }). Elija algunos sitios.
round-no-such-palm = Ninguna palma con la etiqueta { $tag } está en el registro.
round-not-planned = No se puede planificar el día: { $why }
round-remark-reckoned = Los caminos que ninguna tabla da se calculan: 1,3 veces la línea recta a 35 km/h (supuesto).
round-remark-usual-hours = { $crew } no tiene horario propio: se suponen las 7:00 a 15:30.
round-remark-minutes = Los minutos por palma son los de la estimación, casi todos supuestos mientras no se anoten tiempos: siguen las hojas que se quitan, su largo, las espinas y la altura.
round-remark-minutes-all = Los minutos por palma son los de la estimación al ritmo que llevan sus cuadrillas en conjunto, según los tiempos anotados.
round-remark-minutes-crew = Los minutos por palma son los de la estimación al ritmo de { $crew }, según los tiempos anotados.
travel-no-name = Dé el nombre de una cuadrilla o de un sitio.
travel-no-number = Dé un número: kilómetros de camino, minutos de viaje.
travel-twice = Este camino ya está en la línea { $first }. Deje uno de los dos.

## La hoja de la cuadrilla

crew-sheet-n = N.º
crew-sheet-blade = Hoja de corte
crew-sheet-done = Hecha
crew-sheet-clean = LIMPIAR ANTES
crew-sheet-cards = Palmas que se cortan
crew-sheet-stem = tronco { $stem }
crew-sheet-from = De
crew-sheet-to = A
crew-sheet-off = Hojas quitadas
crew-sheet-note = Nota
crew-sheet-scan = Esta ronda en el teléfono
crew-sheet-link = Hoja de la cuadrilla
