### Juegos de hojas en rotación: qué juego corta y cuándo, y cuánto espera la cuadrilla

rotation-min = { $n } min
rotation-h = { $n } h
rotation-h-min = { $n } h { $min } min

## La respuesta

rotation-says-waits = { $sets ->
    [one] { $sets } juego: esperan { $wait } en total y terminan en { $end }
   *[other] { $sets } juegos: esperan { $wait } en total y terminan en { $end }
}; con { $other } juegos nadie espera y terminan en { $best }.
rotation-says-fewest = { $sets } juegos: sin esperas, terminan en { $end }; con { $other ->
    [one] { $other } juego
   *[other] { $other } juegos
} esperarían { $wait }.
rotation-says-more = { $sets } juegos: sin esperas, terminan en { $end }; { $other ->
    [one] bastaría { $other } juego
   *[other] bastarían { $other } juegos
}.
rotation-says-one = { $sets } juego: sin esperas, terminan en { $end }.
rotation-all-clean = Todos los juegos están limpios otra vez a los { $all }. { $baths ->
    [one] Se prepara un baño; se cambia tras diez palmas o dos horas.
   *[other] Se preparan { $baths } baños: cada uno se cambia tras diez palmas o dos horas.
}
rotation-soak-from = Remojo de { $min } min: { $agent }{ $strength ->
    [none] {""}
   *[other] , { $strength } % en el baño
}, lo que pide la fuente más estricta que viene al caso.
rotation-soak-own = Remojo de { $min } min, como usted dice.
rotation-assumed = Cepillar { $brush } min y enjuagar { $rinse } min, otra persona, mientras se corta. Un minuto para cada cosa es un supuesto, no se leyó: mida el suyo.
rotation-order = El orden de las palmas no se cambia. Todos los juegos están limpios al empezar.

## Archivos

rotation-no-minutes = Faltan los minutos de este corte.
rotation-not-yes-or-no = «{ $found }» no es ni yes ni no. Deje la celda vacía si decide el corte anterior.
rotation-too-many = Más de { $limit } cortes. Divida la ronda.
rotation-no-cuts = No hay ningún corte en el archivo.

## La página

rotation-title = Juegos de hojas en rotación
rotation-link = Planear los juegos de hojas
rotation-what = ¿Cuántos juegos de hojas necesita una ronda para que nadie espere mientras se remojan?
rotation-where = Qué palmas
rotation-where-any = cualesquiera, todas iguales
rotation-where-hint = De un terreno, las palmas en el orden de sus marcas; las retenidas quedan fuera. La hoja solo tiene que estar limpia donde puede viajar un marchitamiento.
rotation-site = { $site } ({ $n })
rotation-no-site = sin terreno
rotation-palms = Cuántas palmas
rotation-palms-hint = De un terreno, vacío quiere decir todas.
rotation-minutes = Minutos de corte de cada una
rotation-sets = Juegos de hojas
rotation-mix = Se remojan en
rotation-mix-choice = { $name }, { $minutes } ({ $mix })
rotation-mix-own = otra cosa: diga los minutos
rotation-soak = Minutos de remojo
rotation-soak-hint = Vacío quiere decir lo que pide la fuente más estricta.
rotation-brush = Minutos de cepillado antes
rotation-holds = Juegos que caben a la vez en el baño
rotation-holds-hint = Vacío quiere decir todos.
rotation-more = El cepillado y el tamaño del baño
rotation-ask = Planear la ronda
rotation-trouble = Todavía no se puede planear:
rotation-bad-number = { $field }: hace falta un número de { $low } a { $high }.
rotation-bad-mix = Elija en qué se remojan o diga los minutos de remojo.
rotation-nobody = En este terreno hoy no se puede cortar ninguna palma: no hay ninguna en pie, o todas están retenidas.
rotation-left-out = { $n ->
    [one] Una palma de este terreno está retenida y queda fuera.
   *[other] { $n } palmas de este terreno están retenidas y quedan fuera.
}
rotation-cut-short = Solo se planean las primeras { $n } palmas.
rotation-choices = Con más o menos juegos
rotation-col-sets = Juegos
rotation-col-waits = Esperan
rotation-col-done = Terminan en
rotation-asked = lo pedido
rotation-enough = lo mínimo sin esperas
rotation-drawing = Cuál corta, cuál se remoja
rotation-drawing-hint = Deslícelo hacia un lado. Horas y minutos desde el comienzo.
rotation-drawn-first = El dibujo muestra los primeros { $n } cortes.
rotation-crew = Cuadrilla
rotation-set = Juego { $set }
rotation-key-cut = corta la palma de este número
rotation-key-soak = se remoja
rotation-key-hands = se cepilla o enjuaga, o espera el baño
rotation-key-wait = la cuadrilla espera (minutos)
rotation-soaks = en remojo
rotation-schedule = Palma por palma
rotation-schedule-hint = Horas y minutos desde el comienzo, al minuto.
rotation-col-palm = Palma
rotation-col-set = Juego
rotation-col-starts = Desde
rotation-col-wait = Espera
rotation-col-ends = Hasta
rotation-col-bath = En el baño
rotation-goes-on = sigue
rotation-rest = { $n ->
    [one] Un corte más
   *[other] { $n } cortes más
}
rotation-notes = Cómo se calculó
rotation-why = Los minutos de remojo
