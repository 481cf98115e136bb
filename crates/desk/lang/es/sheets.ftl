### Hojas de papel: etiquetas, informe de rastreo, cláusulas

## Todas las hojas

sheet-printed = impreso el { $date }
sheet-demo = Demostración: nada aquí es real

## Por qué no hay hoja

sheet-empty = No hay nada que imprimir.
sheet-no-such = Nada en el registro lleva la etiqueta «{ $tag }».
sheet-too-many = { $found } son más de los que admite un archivo ({ $limit }). Elija menos, o tome la lista en CSV.
sheet-base-bad = «{ $base }» no es una dirección que un teléfono pueda abrir. Empieza por http:// o https:// y nombra la máquina.
sheet-too-long = La dirección de «{ $tag }» es demasiado larga para un código que un teléfono pueda leer. Use una dirección o una etiqueta más corta.
sheet-broken = No se pudo componer la hoja: { $why }.

## Etiquetas

sheet-labels-title = Etiquetas
sheet-labels-about = Escanee con la cámara del teléfono: la página se abre en { $base }
sheet-kit = Juego: { $kit }
sheet-blade-hand-saw = serrucho
sheet-blade-pole-saw = sierra de pértiga
sheet-blade-loppers = tijera de dos manos
sheet-blade-pole-loppers = tijera de pértiga
sheet-blade-pole-sickle = hoz o cincel de pértiga
sheet-blade-chain-saw = motosierra
sheet-blade-reciprocating-saw = sierra de sable
sheet-blade-knife = cuchillo o machete

## Cláusulas para empresas externas

sheet-sources = Fuentes
clauses-title = Cláusulas para trabajos en palmas
clauses-notice = Esta hoja no es asesoría legal. Primero están la ley local, los permisos y las órdenes de la autoridad fitosanitaria, y también el reglamento local, la compañía eléctrica, el manual de la máquina y las personas con licencia o certificado. Que la lea un abogado antes de firmarla.
clauses-lead = La empresa nombrada abajo trabaja en las palmas del responsable nombrado abajo según estas cláusulas. Los números entre corchetes remiten a las fuentes del final. Donde las fuentes difieren, la cláusula es la más estricta; lo que dicen las otras figura debajo en letra pequeña.
clauses-keeper = Responsable de las palmas (nombre)
clauses-firm = Empresa (nombre)
clauses-site = Terreno y palmas
clauses-period = Desde (fecha) hasta (fecha)
clauses-person = Persona a cargo en el terreno
clauses-licence = Licencia o certificado, número
clauses-cut-title = Qué se corta y qué se queda
clauses-level = La línea a nivel pasa por la base de la corona, de las 9 a las 3 del reloj. No se corta ninguna hoja viva que esté en ella o por encima: el límite es «nada en las 9–3 ni más arriba», sin importar lo que se cortó otros años.
clauses-stub-title = Cómo se corta
clauses-spikes-title = Espuelas
clauses-spikes-breach = Quien suba a una palma con espuelas se retira del terreno, y la palma se anota como herida, con fecha y nombre.
clauses-blades-title = Hojas de corte limpias
clauses-clean-each = Cada hoja de corte se limpia antes de la primera palma del día y de nuevo después de cada palma, antes de tocar la siguiente: sea cual sea la especie y por sanas que se vean las palmas.
clauses-label-first = La etiqueta del producto y su hoja de seguridad están por encima de estas cláusulas. Junto al baño se usan guantes y protección ocular; el baño queda donde nadie beba de él y se desecha como indica la etiqueta.
clauses-baths = Limpiezas aceptadas, con la hoja cepillada antes y todo el filo bajo el líquido
clauses-baths-other = Cualquier otra limpieza se acuerda por escrito antes de empezar. Un paño o un rociado que se seca antes de los minutos de la tabla no es una limpieza.
clauses-bath-agent = Producto y cómo se mezcla
clauses-bath-strength = Producto en el baño
clauses-bath-minutes = Contacto
clauses-bath-caution = Cuidado
clauses-bath-at-least = al menos { $n } min
clauses-bath-of-range = al menos { $n } min; las fuentes dicen de { $low } a { $n }
clauses-holds-title = Palmas en espera
clauses-holds = Una palma que el responsable ha puesto en espera no se corta, no se trepa ni se limpia, nadie y por ningún motivo, hasta que el responsable levante la espera por escrito. El responsable entrega la lista de palmas en espera antes de cada visita.
clauses-report = Una flecha inclinada, caída o que se desprende, un cuerpo fructífero en el tronco, frondas que mueren por un lado, un nido, murciélagos o abejas: parar en esa palma, no cortar nada más, limpiar la hoja y avisar al responsable el mismo día.
clauses-safety-title = Cables y personas
clauses-wires = Más cerca de una línea aérea que la distancia de abajo no trabaja nadie salvo trabajadores calificados de despeje de líneas, y solo tras avisar a la compañía eléctrica. Si no se conoce la tensión, nadie trabaja allí hasta que la compañía responda.
clauses-trained = Quien trepa, usa un elevador o corta palmas con falda de frondas muertas está formado para ello y tiene la licencia o el certificado que pida la ley; la empresa muestra los papeles si se le piden.
clauses-hand-over-title = Qué se anota y se entrega
clauses-log-each-cut = De cada palma: fecha, palma y tallo, la marca de la hoja de corte, inicio y fin del corte, qué se quitó (frondas verdes, medio muertas, muertas, tallos de flor y fruto), quién cortó.
clauses-log-each-cleaning = De cada limpieza: la marca de la hoja, producto y concentración, cuándo se mezcló el baño, minutos de contacto, cepillada o no, quién limpió.
clauses-log-when = El registro se entrega el mismo día del trabajo, en papel o en archivo. Si algo no se hizo o no se anotó, el registro lo dice: vale más un hueco que una suposición.
clauses-blades-marked = Cada hoja de corte lleva una marca que no cambia. La hoja que también corta palmas en otros sitios se nombra, y se limpia antes de entrar al terreno y antes de salir.
clauses-signature = De acuerdo
clauses-sign-keeper = Responsable: fecha, nombre, firma
clauses-sign-firm = Empresa: fecha, nombre, firma
clauses-log-title = Registro
clauses-log-date = Fecha
clauses-log-palm = Palma, tallo
clauses-log-blade = Hoja
clauses-log-start = Inicio
clauses-log-end = Fin
clauses-log-off = Se quitó
clauses-log-bath = Baño, concentración
clauses-log-minutes = Minutos en él

## La página de hojas

sheets-title = Hojas para imprimir
sheets-lead = Para imprimir o enviar: cada hoja es un PDF en su idioma y sus unidades.
sheets-blades = Etiquetas de hojas de corte
sheets-palms = Etiquetas de palmas
sheets-clauses = Cláusulas para empresas externas
sheets-clauses-about = Lo que una empresa acepta antes de cortar: hojas de corte limpias, sin espuelas, la línea a nivel, palmas en espera, cables, qué se anota y se entrega. Con espacios para nombres y fechas.
sheets-kit = Juego
sheets-site = Sitio
sheets-all = Todo
sheets-base = Dirección en el código
sheets-base-hint = Por donde los teléfonos llegan a esta máquina, por ejemplo http://192.168.1.20:7474.
sheets-base-here = La dirección de abajo solo sirve en esta máquina. Ponga la que usan los teléfonos.
sheets-paper = Papel
sheets-paper-a4 = A4
sheets-paper-letter = Carta
sheets-make = Hacer el PDF

## El informe de rastreo

trace-sheet-title = Rastreo desde la palma { $tag }
trace-sheet-not-on-blades = No se sabe que { $disorder } viaje en hojas de corte. Por eso este informe no nombra palmas según las hojas que las tocaron: enumera los hospederos cercanos, primero el más próximo.
trace-sheet-blades-unknown = Nadie de lo leído dice si { $disorder } viaja en hojas de corte. El informe calcula como si viajara.
trace-sheet-no-disorder = No se ha nombrado ningún mal. El informe calcula como si viajara en hojas de corte; hospederos y plazos quedan abiertos hasta que se nombre.
trace-sheet-no-log = El registro no contiene ningún corte. Que aquí no aparezca nada no dice nada de las palmas.
trace-sheet-not-named = sin nombrar
trace-sheet-case = Palma del caso
trace-sheet-disorder = Mal
trace-sheet-latency = De la infección a la primera señal
trace-sheet-at-least = al menos { $time }
trace-sheet-at-most = como mucho { $time }
trace-sheet-as-of = Estado al
trace-sheet-log = El registro
trace-sheet-cuts = { $n ->
    [one] { $n } corte
   *[other] { $n } cortes
}
trace-sheet-cleanings = { $n ->
    [one] { $n } limpieza
   *[other] { $n } limpiezas
}
trace-sheet-span = desde el { $from } hasta el { $to }
trace-sheet-meaning = Cómo se lee
trace-sheet-means-certain = Seguro: una hoja de corte pasó de palma en palma, desde el caso hasta aquí; cada palma del camino ya podía contagiar, y ninguna limpieza intermedia bastó ni pudo haber bastado. Seguro es el contacto, no la infección.
trace-sheet-means-possible = Posible: lo mismo, pero algo del camino queda abierto: una limpieza de la que nadie puede decir si bastó, una palma de la que no se sabe si es hospedero, un plazo que nadie conoce.
trace-sheet-means-generation = La generación 1 se cortó después de la palma del caso. La generación 2, después de una palma de la generación 1 que ya podía contagiar: había pasado el plazo más corto de la infección a la primera señal. Y así sucesivamente.
trace-sheet-means-host = Hospedero dice si se sabe que la especie toma el mal. Una palma que no se conoce como hospedero sigue en la lista porque la hoja la tocó, pero desde ella no se sigue rastreando.
trace-sheet-means-watch = Vigilar hasta es el último día en que cabe esperar una primera señal, según el plazo más largo que dan las fuentes. Desconocido significa que ninguna fuente lo da: entonces se sigue vigilando.
trace-sheet-means-gaps = El informe sabe lo que se anotó. Un corte o una limpieza sin anotar no está en él; lo que se anote después lo cambia.
trace-sheet-means-near = La lista va por distancia y por lo que es hospedero. Lo que lleva el mal no lee listas: las palmas más lejanas no están a salvo.
trace-sheet-means-no-diagnosis = Esto no es un diagnóstico. Un laboratorio decide qué tiene una palma; la autoridad fitosanitaria decide qué se hace.
trace-sheet-exposed = Palmas expuestas
trace-sheet-exposed-lead = { $certain ->
    [one] { $certain } palma está
   *[other] { $certain } palmas están
} en el conjunto seguro, { $possible } más solo en el posible.
trace-sheet-head-palm = Palma
trace-sheet-head-sure = Contacto
trace-sheet-head-generation = Gen.
trace-sheet-head-host = Hospedero
trace-sheet-head-first = Primera exposición
trace-sheet-head-until = Vigilar hasta
trace-sheet-head-next = Próxima mirada
trace-sheet-head-distance = Distancia
trace-sheet-certain = seguro
trace-sheet-possible = posible
trace-sheet-host-yes = sí
trace-sheet-host-prone = sí, propensa
trace-sheet-host-reported = citada
trace-sheet-host-no = no conocida
trace-sheet-chains = Cadenas
trace-sheet-chains-lead = Cómo se llegó a cada palma: hoja por hoja, con lo que hubo en medio.
trace-sheet-candidates = De dónde pudo venir
trace-sheet-candidates-lead = Palmas cuyas hojas de corte tocaron la palma del caso antes de que mostrara el mal, sin una limpieza intermedia que bastara. Mírelas también; la generación cuenta hacia atrás desde el caso.
trace-sheet-candidates-none = El registro no muestra ninguna palma desde la que una hoja de corte pasara a la palma del caso sin una limpieza que bastara. Pudo venir de un corte sin anotar, con la planta misma o por otra vía.
trace-sheet-generation = Generación { $n }
trace-sheet-first-exposed = Primera exposición: { $value }
trace-sheet-last-contact = Último contacto: { $value }
trace-sheet-host = Hospedero: { $value }
trace-sheet-between = { $n ->
    [one] { $n } corte
   *[other] { $n } cortes
} en medio: { $palms }.
trace-sheet-until = Vigilar hasta: { $value }
trace-sheet-looks = Mirar el: { $value }
trace-sheet-step = Hoja { $blade }: de { $from } ({ $left }) a { $to } ({ $reached })
trace-sheet-not-cleaned = Sin limpieza anotada en medio.
trace-sheet-agent-unknown = algo no anotado
trace-sheet-cleaned-missing = Limpiada el { $at } con { $agent }: faltaron { $minutes } min de contacto.
trace-sheet-cleaned-short = Limpiada el { $at } con { $agent }: no bastó.
trace-sheet-cleaned-unknown = Limpiada el { $at } con { $agent }: nadie puede decir si bastó.
trace-sheet-times = Sus tiempos
trace-sheet-times-are = vista enferma el { $seen }; contagia con seguridad desde: { $surely }; posiblemente desde: { $possibly }; se contagió entre: { $low } y { $high }
trace-sheet-log-begin = el comienzo del registro
trace-sheet-any-time = cualquier momento anterior
trace-sheet-possibly = Posible ya antes: { $value }
trace-sheet-exposures = Contactos en total: { $n }
trace-sheet-minutes = { $n } min
trace-sheet-cleaned-disputed = Limpiada el { $at } con { $agent }: para una fuente bastó, para otra faltaron { $minutes } min.
trace-sheet-cleaned-order = Limpiada el { $at } con { $agent }: bastó, pero anotada en el mismo segundo que un corte, y nadie sabe qué fue primero.
trace-sheet-near = Hospederos cercanos
trace-sheet-near-lead = Palmas por vigilar, primero la más próxima. Sin posición, la distancia es desconocida.
trace-sheet-near-none = Ninguna otra palma del registro es hospedero conocido, o no se conoce ninguna posición.
trace-sheet-do = Qué hacer y qué no
trace-sheet-findings = Qué hay que saber del registro
trace-sheet-cautions = Precauciones
trace-sheet-hold = Nadie corta una palma expuesta ni un posible origen mientras se vigila; si hay que cortarla, se corta al final y con una hoja que no va a ninguna otra palma antes de limpiarse el tiempo suficiente.
trace-sheet-debris = Las partes de la palma del caso quedan donde están hasta que la autoridad diga cómo se mueven y se destruyen.
trace-sheet-authority = Primero está la autoridad fitosanitaria del lugar: avísele donde la ley lo pida y haga lo que ordene, aunque este informe diga otra cosa.
trace-sheet-made-by = Hecho por: nombre, fecha
trace-sheet-received-by = Recibido por: nombre, fecha
