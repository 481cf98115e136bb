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
