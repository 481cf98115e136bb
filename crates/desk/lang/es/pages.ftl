### Hoy, palmas, una palma, fuentes, precauciones

## Hoy

today-title = Lo que necesita a una persona
today-summary = { $n ->
    [0] Ninguna de { $total } palmas necesita a una persona hoy.
    [one] { $n } de { $total } palmas necesita a una persona, lo peor primero.
   *[other] { $n } de { $total } palmas necesitan a una persona, lo peor primero.
}
today-pending = { $n ->
    [one] { $n } palma aún no se ha leído hoy; sigue en un momento.
   *[other] { $n } palmas aún no se han leído hoy; siguen en un momento.
}
today-empty = El registro está vacío. Registre una palma o traiga una lista.
today-more = { $n ->
    [one] y { $n } más
   *[other] y { $n } más
}
today-noticed = Entradas que no concuerdan
weight-info = saber
weight-caution = mirar
weight-act = actuar
weight-refuse = en espera

need-spear-pulled = La flecha salió: que vean la yema ya.
need-spear-down = La flecha está caída: que la vean ya.
need-spear-leaning = La flecha está inclinada: que la vean en pocos días.
need-spear-set = En espera por la flecha: mírela y anote lo que ve.
need-wilt = Se sospecha marchitez: nadie poda; pregunte a una clínica de plantas.
need-decline = Es probable que decaiga ({ $share }): revise otra vez, pregunte a una clínica de plantas.
need-wires = Cables demasiado cerca: solo gente de despeje de líneas, llame a la compañía eléctrica.
need-nest = Nido en la corona: nadie corta hasta que esté vacío.
need-bats = Murciélagos en la corona: nadie corta, pregunte a la oficina de fauna.
need-bees = Abejas o avispas en la corona: nadie se acerca.
need-hold = En espera: nadie corta hasta que se levante.
need-tripwire = { $n ->
    [one] { $n } hoja perdida: más de lo que da el envejecimiento o un traslado. Vaya a verla.
   *[other] { $n } hojas perdidas: más de lo que da el envejecimiento o un traslado. Vaya a verla.
}
need-hunger = Es probable que tenga hambre ({ $share }): fertilice y deje las hojas amarillentas.
need-overdue = { $n ->
    [0] La visita ya es tarde.
    [one] Cuelga { $n } hoja muerta: la visita ya es tarde.
   *[other] Cuelgan { $n } hojas muertas: la visita ya es tarde.
}
need-look = Sin inspección desde hace { $ago }.
need-look-moved = Trasladada y sin inspección desde hace { $ago }.
need-first-look = Nunca inspeccionada.
need-species = La especie «{ $name }» no se conoce: corrija el nombre.

## Palmas

palms-summary = { $n ->
    [one] { $n } de { $total } palmas
   *[other] { $n } de { $total } palmas
}
palms-search = Buscar
palms-search-hint = Parte de una etiqueta, especie o sitio
palms-site = Sitio
palms-species = Especie
palms-explanation = Explicación
palms-due = Visita
palms-any = cualquiera
palms-due-late = tarde
palms-due-now = ya vale la pena
palms-due-soon = en 4 semanas
palms-due-later = más tarde
palms-show = Mostrar
palms-clear = Borrar
palms-filters = Filtros
palms-choice = { $value } ({ $count })
palms-none = Ninguna palma coincide. Quite un filtro.
palms-no-look = nunca
palms-no-reading = sin contar
palms-explained = { $name } { $p }
palms-last-look = Última revisión
palms-new = Registrar una palma
palms-page = Página { $page } de { $pages }

## Una palma

palm-inspect = Inspeccionar
palm-edit = Editar
palm-holds = Esperas
palm-remove = Quitar del registro
palm-last-look = Contada el { $date }: { $counts }.
palm-stem = Tallo { $n }
palm-stems = Tallos
palm-reading = Qué le pasa
palm-whole = La palma entera (sus tallos comparten raíces)
palm-basis = En qué se apoya
palm-loss = Pérdida y aviso
palm-forecast = Qué esperar
palm-cutting = Plan de corte
palm-asked = ¿Y si me piden quitar …?
palm-cautions = Precauciones antes del trabajo
palm-own = Esta palma
palm-species = Su especie
palm-history = Historia
palm-history-older = Entradas anteriores
palm-history-empty = Todavía no hay nada registrado.
palm-why = Por qué, y quién lo dice
palm-closed = { $title } ({ $n })
palm-sources = Fuentes
palm-otherwise = Otros dicen
palm-hold-banner = Nadie corta esta palma
palm-lift = Levantar esta espera
palm-jump = En esta página

cut-take = Se quita en esta visita
cut-if-asked = Como máximo, si el dueño pide más
cut-stay = Se queda, pidan lo que pidan
cut-how = Cómo
cut-how-stub = Muñón que se deja
cut-how-no-stub = ninguno: la hoja sale a mano
cut-how-tool = Herramienta
cut-how-stand = Desde dónde
cut-held = Nada: la palma está en espera
cut-nothing = nada
cut-brown = { $n ->
    [one] { $n } hoja café
   *[other] { $n } hojas cafés
}
cut-yellowing = { $n ->
    [one] { $n } hoja amarillenta
   *[other] { $n } hojas amarillentas
}
cut-green = { $n ->
    [one] { $n } hoja verde
   *[other] { $n } hojas verdes
}
cut-rules = Reglas que decidieron
cut-method = Reglas sobre el cómo
cut-weight-refuse = No
cut-weight-act = Actuar
cut-weight-caution = Precaución

asked-green = Verdes
asked-yellowing = Amarillentas
asked-brown = Cafés
asked-live = Hojas vivas, las más bajas primero
asked-next-visit = La visita después de esta
asked-ask = Preguntar
asked-was = Pedido
asked-allowed = El corte permitido más cercano
asked-cost = Lo que cuesta el corte pedido
asked-cost-allowed = Lo que cuesta el corte permitido
asked-by-colour = Decirlo por color
asked-circumstances = Tormenta, helada, picudos, línea eléctrica
asked-storm = Se espera una tormenta
asked-weevil = Aquí vuelan picudos de las palmas
asked-site-weevils = Aquí vuelan picudos de las palmas, según la descripción de su sitio.
asked-site-no-weevils = Aquí no hay picudos de las palmas, según la descripción de su sitio.
asked-site-line = La línea cercana lleva { $kv } kV a tierra, según la descripción de su sitio. Otra cifra abajo tiene prioridad.
asked-freeze = Última helada que pudo quemar hojas
asked-kv = Tensión de la línea a tierra en kV, según la compañía eléctrica
asked-visit-note = Sin fecha contamos con otra visita en 26 semanas (supuesto).

species-note-synonym = Otro nombre de { $name }.
species-note-near = No es un nombre conocido. Parecidos: { $names }.
species-note-unknown = No es un nombre conocido. Se usan los supuestos más amplios.

fact-site = Sitio
fact-stems = Tallos
fact-trunk = Tronco, del suelo a la corona
fact-planted = Plantada aquí
fact-moved = Arrancada y trasladada
fact-cleaned = Última limpieza de hojas muertas
fact-over = Qué hay debajo
fact-wires = Cable aéreo más cercano
fact-position = Posición
fact-notes = Notas
fact-common = Nombres comerciales (inglés)
fact-form = Hoja
fact-habit = Crecimiento
fact-crownshaft = Capitel
fact-self-cleaning = Suelta sus hojas muertas
fact-armature = En el pecíolo
fact-live-leaves = Hojas vivas, corona llena
fact-per-year = Hojas al año
fact-leaf-length = Largo de la hoja
fact-max-height = Altura máxima registrada
fact-thick = Grosor del tronco
fact-fusarium = Le da marchitez por Fusarium
fact-bronzing = Le da bronceado letal
fact-cold = Frío más fuerte sobrevivido

form-pinnate = pluma
form-bipinnate = doble pluma (cola de pez)
form-palmate = abanico
form-costapalmate = abanico con nervio en la lámina
habit-solitary = un tallo
habit-clustering = varios tallos
habit-either = uno o varios tallos
cleaning-yes = sí
cleaning-partly = unas caen, otras cuelgan
cleaning-no = no, cuelgan hasta que se cortan
armature-none = nada filoso
armature-armed = algo filoso
armature-teeth = dientes
armature-spines = espinas

spear-state-firm = flecha firme
spear-state-leaning = flecha inclinada
spear-state-down = flecha caída
spear-state-pulled = la flecha salió

history-registered = Registrada
history-changed = Cambió la descripción
history-removed = Fuera del registro
history-inspected = { $n ->
    [1] Inspeccionada
   *[other] Inspeccionada, tallo { $n }
}
history-hold-set = Puesta en espera
history-hold-lifted = Espera levantada
history-noted = Nota
history-withdrawn = Retirada
history-blade-registered = Hoja de corte registrada
history-blade-changed = Cambió la descripción de la hoja de corte
history-blade-retired = Hoja de corte fuera de servicio
history-blade-lent = Hoja de corte prestada
history-blade-returned = Hoja de corte devuelta
history-cut = { $n ->
    [1] Corte
   *[other] Corte, tallo { $n }
}
history-cut-despite = cortada aunque la hoja de corte no estaba limpia: { $why }
history-took-stalks = { $n ->
    [one] quitó 1 tallo floral o de fruto
   *[other] quitó { $n } tallos florales o de fruto
}
history-bath-mixed = Baño preparado
history-cleaned = Hoja de corte limpiada
history-cleaned-strength = { $n } % en el baño
history-cleaned-minutes = { $n } min de contacto
history-cleaned-brushed = cepillada antes
history-cleaned-unbrushed = sin cepillar
history-moved = Trasplantada
history-moved-dug = arrancada el { $date }
history-moved-planted = plantada el { $date }
history-leaves-left = hojas sueltas
history-leaves-tied = hojas atadas
history-leaves-thinned = se quitaron algunas hojas
history-leaves-stripped = se quitaron todas las hojas
history-watered = Regada
history-fed = Abonada
history-link-given = Enlace privado entregado
history-site = Lugar descrito
history-crew = Cuadrilla descrita
history-prices = Lista de precios fijada
history-weather = Tiempo anotado
history-round-planned = Ronda planificada
history-round-started = La cuadrilla salió
history-round-done = Hecha en una ronda
history-round-skipped = Omitida en una ronda
history-round-finished = La cuadrilla volvió
history-unknown = Una entrada de un tipo que esta versión no conoce ({ $kind })
history-until = hasta el { $date }
history-green = { $n ->
    [one] { $n } verde
   *[other] { $n } verdes
}
history-yellowing = { $n ->
    [one] { $n } amarillenta
   *[other] { $n } amarillentas
}
history-brown = { $n ->
    [one] { $n } café
   *[other] { $n } cafés
}
history-new = { $n ->
    [one] { $n } nueva
   *[other] { $n } nuevas
}
history-took-green = { $n ->
    [one] se quitó { $n } verde
   *[other] se quitaron { $n } verdes
}
history-took-yellowing = { $n ->
    [one] se quitó { $n } amarillenta
   *[other] se quitaron { $n } amarillentas
}
history-took-brown = { $n ->
    [one] se quitó { $n } café
   *[other] se quitaron { $n } cafés
}
history-clock = la hoja viva más baja a las { $left } y a las { $right }
history-superseded = corregida después
history-corrects = corrección
history-by = por { $who }
history-correct = Corregir

## Fuentes

sources-title = Fuentes
sources-intro = Cada cifra y cada regla nombra su fuente. «De memoria» quiere decir: recordado, sin consultar. «Supuesto» quiere decir: nadie lo da, lo elegimos nosotros.
sources-count = { $n } fuentes

## Precauciones

about-title = Precauciones
about-intro = Spearleaf lee conteos. No ve la palma. Lo que dice es una creencia con su intervalo, no un diagnóstico ni un permiso.
about-safety = Antes de cualquier trabajo
about-figures = Lo que se supone
about-assumed-prior = Los pesos de las explicaciones antes de contar.
about-assumed-spread = La apertura de una corona sin lecturas de reloj.
about-assumed-due = Con cuántas hojas muertas por tallo vale la pena una visita ({ $tidy }, o { $tidyshare } de una corona llena) y cuántas son demasiadas ({ $limit }, o { $limitshare }).
about-assumed-looks = Una palma establecida pide una revisión cada { $long }; una trasladada hace menos de { $moved }, cada { $short }.
about-assumed-visit = Otra visita en { $visit } donde no se nombra ninguna.
about-kept = Lo registrado se queda. Una corrección es una entrada nueva junto a la vieja.
