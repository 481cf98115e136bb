### La temporada: cuándo volver, y el calendario

common-season = Temporada

## La página

season-title = Temporada
season-title-site = Temporada: { $site }
season-summary = { $visits ->
    [0] No toca ninguna visita
    [one] { $visits } visita
   *[other] { $visits } visitas
} en { $sites ->
    [one] { $sites } sitio
   *[other] { $sites } sitios
} en { $weeks } semanas, { $money }; { $late ->
    [0] ninguna palma tarde.
    [one] { $late } plazo no se cumple.
   *[other] { $late } plazos no se cumplen.
}
season-what = Cada palma tiene un plazo: desde un día vale la pena la visita, después de otro se pasa de su límite. Las visitas de abajo cumplen los plazos al menor costo. Ninguna palma se corta antes de que se abra su plazo, por pocas que sean las visitas; después de una visita el plazo siguiente sale del pronóstico.
season-empty = Todavía no hay palmas en el registro.
season-weeks-label = Hasta cuándo
season-weeks = { $n } semanas
season-all-sites = Todos los sitios
season-feed-link = Calendario (iCalendar)
season-feed-hint = Ponga esta dirección en su programa de calendario; vuelve a preguntar por sí solo. Plazos, visitas propuestas y rondas planeadas, como días enteros.
season-prices-assumed = Precios supuestos: { $which }. Sirven para pesar viajes contra horas y no son una oferta.
season-price-trip = viaje
season-price-lift-day = elevador por día
season-price-crew-hour = hora de cuadrilla
season-price-haul-m3 = acarreo
season-price-tip-m3 = vertedero
season-no-site = Sin sitio
season-site-summary = { $visits ->
    [0] No toca ninguna visita
    [one] { $visits } visita
   *[other] { $visits } visitas
} para { $palms ->
    [one] { $palms } palma con plazo en la temporada
   *[other] { $palms } palmas con plazo en la temporada
}{ $late ->
    [0] ; ninguna tarde.
    [one] ; { $late } plazo sin cumplir.
   *[other] ; { $late } plazos sin cumplir.
}
season-open-site = Una visita más o menos, palma por palma
season-visits = Visitas
season-visit-what = { $palms ->
    [one] { $palms } palma
   *[other] { $palms } palmas
}, unas { $fronds } hojas muertas
season-visit-work = { $hours } horas de cuadrilla, { $bulk } sueltos{ $lift ->
    [0] { "" }
   *[other] , elevador
}{ $days ->
    [0] { "" }
    [1] { "" }
   *[other] , { $days } días
}
season-visit-palms = Qué palmas
season-takes = unas { $fronds }
season-takes-stalks = racimos
season-plan-day = Planear este día
season-late = Sin cumplir
season-late-served = Límite { $latest }, atendida { $served }: { $days ->
    [one] { $days } día tarde
   *[other] { $days } días tarde
}, para entonces unas { $fronds } hojas muertas. { $why }
season-late-over-served = Pasada de su límite ya; atendida { $served }, para entonces unas { $fronds } hojas muertas.
season-late-not-served = Límite { $latest }, sin atender en esta temporada: { $days ->
    [one] { $days } día tarde al final
   *[other] { $days } días tarde al final
}, para entonces unas { $fronds } hojas muertas. { $why }
season-late-overdue = El límite ya pasó.
season-late-held = Una espera prohíbe cortar hasta que pase el límite.
season-late-closed = El sitio está cerrado mientras el plazo está abierto.
season-late-narrow = Ningún día laborable cae en el plazo, o ninguno que deje cumplir el siguiente.
season-late-too-few = Muy pocas visitas.
season-left = Fuera del plan
season-left-unseen = Nadie la ha mirado todavía. Mírela primero.
season-left-unread = No se pudo leer; su página dice por qué.
season-left-held = En espera, y nadie ha dicho hasta cuándo. Entra en el plan cuando se levante la espera o tenga último día.
season-left-many = Hay más de { $most } palmas de este sitio por atender; se planean las primeras.
season-note-unsure = { $n ->
    [one] El pronóstico de { $n } palma es tan ancho que puede pasar su límite antes de que valga la pena la visita; su plazo queda abierto cuatro semanas (supuesto). Una mirada lo estrecha.
   *[other] Los pronósticos de { $n } palmas son tan anchos que pueden pasar su límite antes de que valga la pena la visita; sus plazos quedan abiertos cuatro semanas (supuesto). Una mirada los estrecha.
}
season-note-stalks = { $n ->
    [one] Los racimos de { $n } palma se quedan: una visita al final de la floración costaría más de lo que vale.
   *[other] Los racimos de { $n } palmas se quedan: una visita al final de la floración costaría más de lo que vale.
}
season-note-nothing = { $n ->
    [one] { $n } palma no tiene plazo en la temporada.
   *[other] { $n } palmas no tienen plazo en la temporada.
}
season-note-storm = La temporada de tormentas se abre { $date }: las hojas muertas que cuelguen entonces cuentan contra un plan. Por una tormenta no se quita ninguna hoja viva.
season-closed-title = Cerrado
season-closed = { $first } a { $last }{ $words ->
    [0] { "" }
   *[other] : { $why }
}
season-cost = { $total }: viajes { $trips }, elevador { $lift }, cuadrilla { $crew }, restos { $debris }
season-proven = Demostrado: ningún plan deja palmas menos tarde, y ninguno tan bueno cuesta menos.
season-within = Hallado, no demostrado: un plan podría ser mejor en { $gap } como mucho. { $days ->
    [0] { "" }
    [one] Un día de trabajo más allá del primero de una visita se agregó después.
   *[other] { $days } días de trabajo más allá del primero de una visita se agregaron después.
}
season-within-days = Hallado, no demostrado: se podría ahorrar { $days ->
    [one] { $days } día
   *[other] { $days } días
} de retraso como mucho.
season-proven-short = Demostrado.
season-found-short = Hallado, no demostrado que sea el mejor.

## Una visita más o menos

season-otherwise = Una visita más o menos
season-otherwise-what = Menos visitas nunca significan cortar más: lo que no se atiende en su plazo va tarde, y está aquí.
season-fewer = Una visita menos: { $n }
season-more = Una visita más: { $n }
season-fewer-palms = { $missed ->
    [0] { $days ->
        [0] No se pierde ningún plazo más y nadie va más tarde; quizá cuelgue más cuando lleguen las tormentas.
        [one] No se pierde ningún plazo más, pero las palmas van { $days } día más tarde en total.
       *[other] No se pierde ningún plazo más, pero las palmas van { $days } días más tarde en total.
    }
    [one] Se pierde { $missed } plazo más; las palmas van { $days } días más tarde en total.
   *[other] Se pierden { $missed } plazos más; las palmas van { $days } días más tarde en total.
}
season-more-palms = { $missed ->
    [0] { $waiting ->
        [0] No ahorraría espera a ninguna palma.
        [one] Las palmas esperan { $waiting } día menos con el plazo abierto, en total.
       *[other] Las palmas esperan { $waiting } días menos con el plazo abierto, en total.
    }
   *[other] Se pierden { $missed } plazos más; { $days } días más tarde, { $waiting } días menos de espera.
}
season-more-stalks-left = { $n ->
    [one] Se quedan los racimos de { $n } palma más.
   *[other] Se quedan los racimos de { $n } palmas más.
}
season-purse = { $more ->
    [0] Ahorra { $sum }.
   *[other] Cuesta { $sum } más.
}
season-days = En: { $days }

## Semanas

season-grid-sites = Semanas por sitio
season-grid-palms = Semanas por palma
season-grid-hint = Una cifra cuenta palmas. Deslice para ver semanas posteriores.
season-not-drawn = { $n ->
    [one] { $n } palma más no se dibuja.
   *[other] { $n } palmas más no se dibujan.
}
season-col-site = Sitio
season-col-palm = Palma
season-key-open = Plazo abierto
season-key-visit = Visita
season-key-lift = Visita con elevador
season-key-late = Pasado el límite
season-key-closed = Cerrado
season-cell-blank = Semana del { $date }: nada pendiente
season-cell-open = Semana del { $date }: { $n ->
    [0] plazo abierto
    [one] { $n } palma con plazo abierto
   *[other] { $n } palmas con plazo abierto
}
season-cell-late = Semana del { $date }: { $n ->
    [0] pasado el límite
    [one] { $n } palma pasada de su límite
   *[other] { $n } palmas pasadas de su límite
}
season-cell-closed = Semana del { $date }: cerrado
season-cell-visit = { $date }: { $n ->
    [0] visita
    [one] visita, { $n } palma
   *[other] visita, { $n } palmas
}
season-cell-lift = { $date }: { $n ->
    [0] visita con elevador
    [one] visita con elevador, { $n } palma
   *[other] visita con elevador, { $n } palmas
}
season-month-1 = ene
season-month-2 = feb
season-month-3 = mar
season-month-4 = abr
season-month-5 = may
season-month-6 = jun
season-month-7 = jul
season-month-8 = ago
season-month-9 = sep
season-month-10 = oct
season-month-11 = nov
season-month-12 = dic

## El calendario

feed-name = Visitas a palmas
feed-visit = { $site }: { $n ->
    [one] { $n } palma
   *[other] { $n } palmas
}{ $lift ->
    [0] { "" }
   *[other] , elevador
} (propuesta)
feed-visit-about = Propuesta del plan de temporada; unas { $hours } horas de cuadrilla.
feed-window = { $tag } por atender, { $site }
feed-window-until = Pasada de su límite después del { $date }.
feed-window-open = No hay límite a la vista.
feed-round = Ronda { $crew }: { $n ->
    [one] { $n } palma
   *[other] { $n } palmas
}
feed-round-hours = { $leave } a { $back }

## The command line

season-reading = Leyendo las palmas …
season-no-such-site = No hay palmas en un sitio llamado «{ $site }». Los nombres son como los escriben las palmas.
