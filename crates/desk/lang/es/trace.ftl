### La página de un rastreo

trace-title = Rastreo
trace-what = Una palma resulta infectada. ¿A qué palmas la pueden haber llevado las hojas de corte, y de dónde puede haber venido?
trace-case-field = Palma enferma
trace-case-hint = La etiqueta de la palma que está enferma.
trace-disorder = Trastorno
trace-disorder-none = aún sin nombre
trace-disorder-blades = Se sabe que viajan en hojas de corte
trace-disorder-others = Otros
trace-seen = Se vio enferma el
trace-seen-hint = Vacío: hoy.
trace-shortest = Mínimo, días
trace-longest = Máximo, días
trace-latency-field = De la infección a la primera señal
trace-latency-hint = Vacío: lo que digan las tablas de ese trastorno, hasta donde lo digan.
trace-make = Rastrear
trace-as-of = Al { $when }: { $cuts ->
    [one] un corte
   *[other] { $cuts } cortes
} y { $cleanings ->
    [one] una limpieza
   *[other] { $cleanings } limpiezas
} de { $blades ->
    [one] una hoja de corte
   *[other] { $blades } hojas de corte
}. Una anotación tardía cambia este rastreo.
trace-summary = { $certain ->
    [0] Ninguna palma está expuesta con certeza
    [one] Una palma está expuesta con certeza
   *[other] { $certain } palmas están expuestas con certeza
}, { $possible ->
    [0] ninguna posiblemente
    [one] una posiblemente
   *[other] { $possible } posiblemente
}; { $sources ->
    [0] ningún posible origen.
    [one] un posible origen.
   *[other] { $sources } posibles orígenes.
}
trace-case = { $tag }, se vio enferma el { $seen }: se toma por infecciosa con certeza desde { $surely }, posiblemente desde { $possibly }. { $cuts ->
    [0] No hay ningún corte de ella en el cuaderno.
    [one] Hay un corte de ella en el cuaderno.
   *[other] Hay { $cuts } cortes de ella en el cuaderno.
}
trace-from-the-start = el principio del cuaderno
trace-latency = De la infección a la primera señal: { $range }.
trace-latency-keeper = De la infección a la primera señal, según usted: { $range }.
trace-at-least = { $n } o más
trace-at-most = hasta { $n }
trace-reckoned = Con qué se calculó
trace-lanes = Hojas de corte en el tiempo
trace-lanes-hint = Cada columna es un momento; los días van separados. Deslice hacia los lados.
trace-lanes-left-out = { $n ->
    [one] Un momento posterior no se dibuja; está en la lista.
   *[other] { $n } momentos posteriores no se dibujan; están en la lista.
}
trace-days-between = { $n ->
    [one] 1 día
   *[other] { $n } días
}
trace-key-case = palma enferma
trace-key-certain = expuesta con certeza
trace-key-possible = posiblemente expuesta
trace-key-source = posible origen
trace-key-near = por vigilar cerca
trace-key-solid = cadena cierta
trace-key-dashed = cadena posible
trace-mark-adequate = bastó
trace-mark-short = corta
trace-mark-unknown = dudosa
trace-key-adequate = limpieza que bastó
trace-key-short = limpieza que no bastó
trace-key-unknown = limpieza que nadie puede juzgar
trace-list = Palmas expuestas
trace-list-none = Ninguna cadena de hojas de corte lleva de esta palma a otra.
trace-generation = Generación { $n } ({ $count ->
    [one] una palma
   *[other] { $count } palmas
})
trace-certain = con certeza
trace-possible = posiblemente
trace-exposed-when = Primera exposición: { $when }.
trace-source-when = Último corte antes del caso por esta cadena: { $when }.
trace-step = La hoja { $blade } cortó { $from } ({ $left }) y luego { $to } ({ $reached }). Entretanto: { $between }.
trace-no-cleaning = ninguna limpieza
trace-cut-between = cortó también { $tags }
trace-cleaned-short = limpieza { $when } ({ $agent }), faltaron { $n } min
trace-cleaned-weak = limpieza { $when } ({ $agent }), no bastó, durase lo que durase
trace-cleaned-unknown = limpieza { $when } ({ $agent }), nadie puede decir si bastó
trace-cleaned-order-open = limpieza { $when } ({ $agent }), bastó, pero nadie sabe si fue antes o después del corte
trace-host-yes = Hospedera.
trace-host-prone = Hospedera, más afectada que otras.
trace-host-reported = Citada como hospedera, rara vez.
trace-host-no = No está entre las hospederas conocidas: expuesta, no la pasa a otras.
trace-host-unknown = No se sabe si es hospedera.
trace-watch-until = Vigílela hasta el { $date }.
trace-watch-open = Vigílela sin término: nadie conoce el plazo más largo.
trace-looks = Mírela el: { $dates }.
trace-sources = De dónde puede haber venido
trace-sources-none = Ninguna cadena de hojas de corte lleva a esta palma.
trace-nearby = Hospederas cercanas por vigilar
trace-away = a { $distance }
trace-same-site = mismo sitio, distancia desconocida
trace-plot = Dónde están
trace-plot-hint = El sitio de la palma enferma. Las palmas de otros sitios están en la lista.
trace-plot-north = el norte está arriba
trace-chain = La cadena
trace-pdf = Informe (PDF)
trace-csv = Lista (CSV)
trace-findings = Lo que hay que saber de este cuaderno
trace-north = N
