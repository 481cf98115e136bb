### Cómo llegar a una corona: herramientas, puestos, distancias

reach-wires-within = El cable más cercano está a { $wires } de la corona. Cuerpo, herramienta, pértiga y hojas quedan al menos a { $keep }: aquí solo trabajan especialistas en despeje de líneas. Llame a la compañía eléctrica. { common-closing }
reach-wires-held = La palma está en espera por cables: aquí solo trabajan especialistas en despeje de líneas hasta que se levante. { common-closing }
reach-wires-voltage = El cable más cercano está a { $wires } de la corona y nadie ha dicho su voltaje. La distancia puede llegar a { $most }: pregunte a la compañía eléctrica, anote la tensión y solo entonces trabaje. { common-closing }
reach-wires-not-noted = Nadie ha anotado si hay cables. Mire hacia arriba desde todos los lados antes de levantar una pértiga: todo cable tiene corriente, y una pértiga mojada o de metal conduce. { common-closing }
reach-wires-falls = El cable más cercano está a { $wires } de la corona: basta para trabajar ({ $keep }), pero una hoja o una pértiga que caiga hacia él se acerca hasta { $by } más. Póngase de modo que ninguna pueda. { common-closing }
reach-skirt = Cuelga una falda de hojas muertas. Nadie se para, trepa ni corta debajo, por baja que esté: desde un elevador, desde arriba, con gente capacitada. { common-closing }
reach-lift-only = Solo sirve un elevador: la base de la corona está a { $base }, y lo que hay a mano llega a { $top } desde el suelo. { common-closing }
reach-no-lift = Esta cuadrilla no tiene elevador, o nadie capacitado para uno: mande otra cuadrilla, o alquile máquina y operador. { common-closing }
reach-no-tool = Ninguna herramienta a mano sirve aquí: vea abajo cuál serviría.
reach-height-unknown = No está anotada la altura de la base de la corona: mídala antes de que alguien elija herramienta.
reach-petiole = Mida un pecíolo donde se va a cortar: esta tijera toma hasta { $width }. Si es más ancho, use la siguiente herramienta.
reach-smoother = La tijera deja un corte más liso que los dientes: úsela donde las dos llegan y cabe el pecíolo.
reach-aside = Póngase al lado de la hoja, nunca debajo: al menos a { $aside } de la línea en que cae, y la pértiga nunca derecha encima de su cabeza. { common-closing }
reach-blocked = { $n ->
    [one] Una hoja por quitar cuelga detrás de hojas que se quedan, por donde se la mire: quítela desde un elevador, o déjela.
   *[other] { $n } hojas por quitar cuelgan detrás de hojas que se quedan, por donde se las mire: quítelas desde un elevador, o déjelas.
}
reach-drawn = Los puestos son los de la corona dibujada, que está girada de otro modo que la palma: camine alrededor hasta que ninguna hoja más nueva quede entre usted y el corte.
reach-keep-out = Que nadie más entre en un círculo de { $radius } alrededor del tronco; dentro, un solo cortador a la vez. { common-closing }
reach-keep-out-unknown = Que nadie más esté bajo la corona ni a un largo de hoja más allá; un solo cortador a la vez. { common-closing }
reach-no-spikes = Sin espuelas en una palma que se queda: cada agujero queda de por vida. { common-closing }
reach-no-ladder = No se corta desde una escalera apoyada en una palma: el tronco es redondo y la hoja le cae encima. { common-closing }

## En palabras

reach-title = Alcance y herramientas
reach-of = Alcance y herramientas: { $tag }
reach-more = Herramientas, pértiga y razones
reach-head-refused = Solo especialistas en despeje de líneas, o no antes de que responda la compañía eléctrica.
reach-head-unknown = No se sabe desde dónde: falta anotar la altura de la base de la corona.
reach-head-ground = Desde el suelo, { $with }.
reach-head-pole = Desde el suelo, { $with }.
reach-head-lift = Solo desde un elevador, { $with }.
reach-head-above = Solo desde un elevador y desde arriba, { $with }.
reach-with-hand = con las manos: la hoja madura sale de un jalón, no se corta nada
reach-with-nothing = pero ninguna herramienta a mano sirve
reach-with-one = con { $tool }
reach-with-either = con { $tool } si el pecíolo no es más ancho que { $width }, si no con { $next }
reach-pole = Pértiga de { $length } a { $degrees }° sobre la horizontal: las manos quedan a { $hands } de alto y a { $out } del corte.
reach-circle = Se deja libre: { $radius } alrededor del tronco.
reach-circle-unknown = Se deja libre: la corona y un largo de hoja más; sin cifra, no se sabe el largo de la hoja.
reach-tools = Herramientas
reach-take = usar
reach-not-at-hand = { $says }, pero no está a mano
reach-fit-reaches = alcanza
reach-fit-if-up-to = alcanza, para pecíolos de hasta { $width }
reach-fit-narrow = no abre más de { $width }
reach-fit-short = desde el suelo no pasa de { $top }
reach-fit-long = su pértiga es demasiado larga para tenerla tan baja
reach-fit-lifts = sube a la gente hasta ella
reach-fit-idle = aquí no hace falta
reach-fit-never = nunca para esto
reach-fit-unknown = falta la altura
reach-places = Dónde pararse
reach-place = { $where }, con las manos a { $out } del tronco: { $fronds ->
    [one] una hoja
   *[other] { $fronds } hojas
}; sector libre de { $wide }°.
reach-way-right = A la derecha
reach-way-front-right = Delante, a la derecha
reach-way-front = Delante
reach-way-front-left = Delante, a la izquierda
reach-way-left = A la izquierda
reach-way-back-left = Detrás, a la izquierda
reach-way-back = Detrás
reach-way-back-right = Detrás, a la derecha
reach-above = Desde arriba
reach-above-label = La palma vista desde arriba: tronco, hojas que se quedan, hojas por quitar, puestos numerados, círculo libre
reach-above-hint = Como se dibuja la corona más arriba, vista desde lo alto; usted está al pie del dibujo.
reach-key-stays = se queda
reach-key-goes = por quitar
reach-key-place = párese aquí
reach-key-circle = dejar libre
reach-petiole-label = Ancho del pecíolo donde se corta
reach-petiole-hint = Mida uno de lado a lado: cm o in.
reach-hand-label = A qué altura trabajan sus manos
reach-hand-hint = Vacío: 8 ft (2,4 m), práctica común.
reach-crew-label = Cuadrilla
reach-crew-any = cualquier herramienta
reach-ask = Mostrar
reach-bad-petiole = Se esperaba un ancho de { $low } a { $high }.
reach-bad-hand = Se esperaba una altura de { $low } a { $high }.
reach-no-crew = Ninguna cuadrilla se llama «{ $crew }».
