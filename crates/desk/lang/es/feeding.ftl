### Abonado: qué, cuánto, qué lo impide, si la corona respondió

common-feeding = Abono
feed-list-title = Abono
feed-list-empty = A ninguna palma le falta nada, que se sepa, y ninguna se abonó. Cualquier palma se puede abonar desde su propia página.
feed-summary = { $now ->
    [0] Ninguna palma pide abono hoy
    [one] { $now } palma pide a alguien hoy
   *[other] { $now } palmas piden a alguien hoy
}; { $all ->
    [one] a { $all } palma puede faltarle algo o se abona.
   *[other] a { $all } palmas puede faltarles algo o se abonan.
}
feed-group-worse = Empeoraron después del abono
feed-group-now = Se pueden abonar ahora
feed-group-wait = Ahora no
feed-list-open = plan y registro
feed-list-what = Aquí están las palmas cuyos signos y recuentos hacen probable una carencia con un 30 % o más, y las que se abonaron. La etiqueta y la licencia van antes que toda dosis.
feed-list-rules = No se anotó ninguna norma local de abono para { $site }.
feed-list-all = Todas las palmas
feed-list-rules-enter = Anotarla con el sitio

feed-title = Abonado de { $tag }
feed-link = Abonado
feed-jump-plan = Plan
feed-jump-note = Anotar un abonado
feed-jump-log = Registro
feed-jump-products = Productos
feed-barred-title = Prohibido aquí hoy
feed-free = No llevan nada de lo prohibido:
feed-rules-unknown = No se anotó ninguna regla local de abonado para este sitio. Muchos condados y ciudades prohíben el nitrógeno y el fósforo en ciertos meses: pregunte en la oficina local y anote los meses con el sitio.
feed-plan-title = Qué dar y contra qué
feed-ground = Suelo bajo la corona: { $area }; las dosis por superficie se calculan con él.
feed-ground-unknown = No se conoce el suelo bajo la corona: las dosis por superficie no dan cantidad. Mida el ancho de la corona y anótelo con la palma.
feed-maintenance = Mantenimiento
feed-may = Se puede abonar ahora
feed-not-now = Ahora no
feed-once-free = Cuando se pueda
feed-probable = Por sus señales y conteos es así de probable: { $p }. Haga analizar hoja y suelo antes de una cura cara o que pueda dañar.
feed-no-rate = No se da dosis.
feed-never = Nunca se abonó contra esto, que se sepa.
feed-last = Último abonado contra esto: { $date }.
feed-next-between = Otra vez desde el { $from } hasta el { $until }.
feed-next-from = Otra vez desde el { $from }.
feed-next-now = Ya se puede repetir.
feed-times = { $n ->
    [one] una vez
   *[other] { $n } veces al año
}
feed-every = entre una y otra, días: { $days }
feed-not-before = no repetir antes de { $days } días
feed-amount-unknown = cantidad desconocida
feed-and-or = además, o donde las fuentes difieren:
feed-slow = Su nitrógeno, potasio y magnesio son de liberación lenta.
feed-fast = Su nitrógeno, potasio o magnesio se disuelven enseguida.
feed-slow-unknown = No se dice si su nitrógeno, potasio y magnesio son de liberación lenta; lea la etiqueta.
feed-micro-soluble = Sus oligoelementos se disuelven en agua, como debe ser.
feed-micro-not-soluble = Sus oligoelementos no se disuelven en agua.
feed-causes = De dónde viene
feed-answers = Cuánto tarda en verse
feed-replaced = Esta palma hace tantas hojas como tiene su corona llena en { $low } a { $high }, según el modelo de la corona (5 a 95 %).
feed-ask = Plan para otra falta
feed-ask-show = Mostrar
feed-nobody = Ninguna palma parece tener una falta y ninguna se abonó. Nombre una con --tag.
feed-no-palm = No hay ninguna palma con la etiqueta «{ $tag }». Búsquela con export palms.

feeding-too-soon = Se abonó contra lo mismo el { $last }: no repetir antes del { $from }.
feeding-cause-first = Sin abono antes de corregir la causa: vea de dónde viene.
feeding-barred = { $rule } prohíbe hoy { $nutrients }. Libre otra vez desde el { $free }.
feeding-barred-all = { $rule } prohíbe hoy todo abonado. Libre otra vez desde el { $free }.
feeding-just-moved = Plantada o sacada el { $moved }: sin abono granulado antes del { $from }.
feeding-at-the-edge = Aún no está establecida: abone en una franja al borde del cepellón, donde salen las raíces.
feeding-not-magnesium = El sulfato de manganeso no es sulfato de magnesio: lea el nombre del saco letra por letra.
feeding-boron-once = El boro en exceso envenena a las palmas: una vez, disuelto, y no repetir en unos cinco meses.
feeding-potassium-with-magnesium = Potasio y magnesio van juntos, para que curar uno no provoque la falta del otro.
feeding-lawn-feed = Mucho nitrógeno y poco potasio: sobre raíces de palma provoca o empeora la falta de potasio y magnesio.

## El registro

feed-log-title = Abonados
feed-log-none = Ninguno anotado.
feed-over = sobre { $area }
feed-taken-back = Retirado en la página de abonado
feed-answer-not-looked = Nadie ha mirado desde entonces: inspecciónela.
feed-answer-too-early = Aún es pronto para saberlo.
feed-answer-not-looked-for = Se miró desde entonces, pero no se buscaron sus señales o nadie contó: no buscada no es desaparecida.
feed-answer-answering = La corona responde.
feed-answer-same = Como antes.
feed-answer-worse = Peor que antes: el abono solo no es la cura. Haga analizar hoja y suelo.
feed-answer-live = Hojas vivas según el modelo de la corona: { $then } aquel día, { $now } hoy. Una décima parte más o menos es claro (supuesto).
feed-answer-new = { $n ->
    [one] { $n } hoja nueva contada desde entonces; hacen falta tres para saberlo (supuesto).
   *[other] { $n } hojas nuevas contadas desde entonces; hacen falta tres para saberlo (supuesto).
}
feed-answer-before = Vistas antes: { $signs }
feed-answer-still = Vistas desde entonces: { $signs }
feed-answer-gone = Buscadas y no halladas desde entonces: { $signs }

## Productos y el formulario

feed-products-title = Productos
feed-slow-what = El nitrógeno, el potasio y el magnesio deben ser todos de liberación lenta: lo que se disuelve enseguida se lava y lo que queda está desequilibrado. Los oligoelementos deben disolverse en agua. Vale lo que dice el saco.
feed-product-barred = prohibido hoy
feed-product-none = Otro: escrito abajo
feed-form-title = Anotar un abonado
feed-form-correct = Corregir un abonado
feed-form-what = Se anota lo que se hizo, aunque no se debiera: el registro debe contar lo que pasó.
feed-save = Guardar el abonado
forms-product = Producto
forms-product_own = Otro producto
forms-product_own-hint = Como está en el saco, con sus cifras, por ejemplo 12-4-8: dicen si una regla lo prohíbe.
forms-mass = Cuánto en total
forms-mass-hint = Un número solo va en kg o lb, según sus ajustes; también se leen 700 g y 8 oz.
forms-fed_area = Sobre qué superficie
forms-fed_area-hint = Metros o pies cuadrados, según sus ajustes.
forms-against = Contra
forms-feed_notes = Notas
form-feed-no-product = Diga qué se dio: elija un producto o escríbalo como está en el saco.
form-feed-two-products = Hay dos productos: elija uno arriba o escriba uno aquí.
form-feed-product = Este producto no está en la tabla. Elija otro o escríbalo abajo.
form-feed-mass-not-read = «{ $found }» no es una masa: se esperaba un número, con g, kg, lb u oz detrás si no va en su propia unidad.
form-feed-mass-range = No puede ser: se esperaba más que nada y como máximo 1000 kg.
form-feed-against = No es un trastorno de la tabla. Elija uno de la lista.
