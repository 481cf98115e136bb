### El orden de las palmas dentro de un terreno

walk-title = Recorrido
walk-link = Planear un recorrido
walk-what = En qué orden tomar a pie las palmas de un terreno: primero las sanas y al final las confirmadas, para que herramientas, guantes y botas no lleven nada a una palma que está mejor, y dentro de eso el camino más corto.
walk-site = Terreno
walk-site-choose = Elija un terreno
walk-which = Qué palmas
walk-which-all = todas las que están allí
walk-which-due = las que toca cortar o mirar ahora
walk-tags = Solo estas etiquetas
walk-tags-hint = Con comas o espacios; vacío vale la elección de arriba.
walk-minutes = Minutos de corte por palma
walk-minutes-hint = Se suponen 6: mida los suyos.
walk-sets = Juegos de herramientas
walk-soak = Minutos de remojo
walk-soak-hint = Vacío vale lo que pide la primera mezcla buena de la tabla.
walk-more = Herramientas
walk-ask = Ordenar el recorrido
walk-trouble = Esto no se puede responder todavía:
walk-nobody = Allí no hay palma que corresponda.
walk-no-such = Ninguna palma de este terreno lleva { $tags }.
walk-too-many = { $n } palmas son demasiadas para un recorrido (máximo { $most }): elija las que tocan, o nombre etiquetas.
walk-sentence = { $n ->
    [one] { $n } palma, { $way } a pie{ $gate ->
        [0] {""}
       *[other] {" "}desde la entrada
    }.
   *[other] { $n } palmas, { $way } a pie{ $gate ->
        [0] {" "}de la primera a la última
       *[other] {" "}desde la entrada hasta la última
    }.
}
walk-blades = { $n ->
    [one] Se corta { $n } palma
   *[other] Se cortan { $n } palmas
}, con herramienta limpia { $clean ->
    [one] una vez
   *[other] { $clean } veces
}. Con { $sets ->
    [one] un juego
   *[other] { $sets } juegos
} espera { $waits } en total y el corte termina a los { $done } (sin contar el camino); { $fewest ->
    [one] basta un juego
   *[other] con { $fewest } juegos nadie espera
}.
walk-nothing-cut = Hoy no se corta nada en este recorrido.
walk-map = Mapa
walk-map-label = Mapa del recorrido según las posiciones de las palmas, el norte arriba
walk-map-hint = El norte está arriba. La línea va de palma a palma en línea recta. Un anillo alrededor: limpiar antes.
walk-gate = Entrada
walk-list = Palmas en orden
walk-class-healthy = Sanas ({ $n })
walk-class-unknown = Desconocidas ({ $n })
walk-class-suspect = Sospechosas ({ $n })
walk-class-confirmed = Confirmadas ({ $n })
walk-key-healthy = sana
walk-key-unknown = desconocida
walk-key-suspect = sospechosa
walk-key-confirmed = confirmada
walk-because-laboratory = Un laboratorio halló una enfermedad
walk-because-held = En espera: { $reason }
walk-because-advised = Se aconseja una espera: { $reason }
walk-because-sign = Se vio: { $sign }
walk-because-spear = La flecha no está firme
walk-because-never-seen = Nadie la ha mirado todavía
walk-because-long-ago = Última mirada hace { $ago }
walk-because-seen = Mirada hace { $ago }
walk-no-place = lugar sin anotar
walk-clean-hands = Limpie guantes, botas y herramientas
walk-clean-blade = Herramienta limpia: juego { $set }
walk-cut = cortar con el juego { $set }
walk-look = solo mirar, sin herramienta
walk-notes = En qué se apoya
walk-exact = Ningún orden que respete las clases es más corto: está probado.
walk-searched = El camino se buscó, no está probado; con 100 palmas queda a menos de 2 % del más corto.
walk-as-the-crow-flies = Las distancias son en línea recta, sin muros, estanques ni cercas.
walk-unplaced = { $n ->
    [one] Una palma no tiene lugar anotado: es la última de su clase, y el camino hasta ella no cuenta.
   *[other] { $n } palmas no tienen lugar anotado: son las últimas de su clase, y el camino hasta ellas no cuenta.
}
walk-no-gate = Este terreno no tiene entrada anotada: el recorrido empieza en su mejor primera palma.
walk-clean-rule = La herramienta está limpia antes de una palma si esa palma o la anterior puede tomar una marchitez que viaja en las herramientas, o es sospechosa; el juego que se deja se cepilla, se remoja y se enjuaga. Primero están las etiquetas y el reglamento local.
