### La hoja del dueño y los enlaces privados

## La hoja

owner-title = Su palma { $tag }
owner-as-of = Al { $date }
owner-stand-urgent = Necesita a alguien ya
owner-stand-on-its-way = Trasladada, en camino
owner-stand-established = Trasladada, otra vez establecida
owner-stand-settled = Asentada
owner-urgent-title = Ahora
owner-held = Por ahora nadie corta esta palma: { $reason }.
owner-spear-leaning = La flecha, la hoja más joven del centro, estaba inclinada el { $on }. Llame hoy; no corte nada.
owner-spear-down = La flecha, la hoja más joven del centro, estaba caída el { $on }. Llame ya; no corte nada.
owner-spear-pulled = La flecha, la hoja más joven del centro, salió el { $on }. Llame ya; no corte nada.

## Lo que se hizo

owner-done-title = Lo que se hizo
owner-done-since = Desde el { $date }
owner-done-none = En este tiempo no hay nada anotado.
owner-done-moved = Sacada y trasladada
owner-done-watered = { $n ->
    [one] Regada { $n } vez, esta es la última
   *[other] Regada { $n } veces, esta es la última
}
owner-done-fed = Abonada: { $product }
owner-done-fed-amount = Abonada: { $product }, { $amount }
owner-done-looked = { $n ->
    [one] Revisada { $n } día, este es el último
   *[other] Revisada { $n } días, este es el último
}
owner-done-counted = Contadas
owner-cut = Se quitó: { $what }
owner-cut-green = { $n } verdes
owner-cut-yellowing = { $n } amarillentas
owner-cut-brown = { $n } cafés
owner-cut-stalks = { $n ->
    [one] { $n } tallo
   *[other] { $n } tallos
}
owner-cut-uncounted = Se cortó; no se contó lo quitado
owner-cut-earlier = { $n ->
    [one] Se cortó { $n } día anterior, este es el último de ellos
   *[other] Se cortó { $n } días anteriores, este es el último de ellos
}

## La corona

owner-crown-title = La corona ahora y la que viene
owner-range = Nueve de cada diez: { $live } vivas, { $brown } cafés.
owner-picture-note = Vista de lado, como la hacen probable los conteos si no se corta nada hasta entonces. Con trazos: la línea de nivel.
owner-key-green = verde
owner-key-yellowing = amarillenta
owner-key-brown = café, colgando
owner-more-stems = { $n ->
    [one] { $n } tallo más no está peor y no se dibuja.
   *[other] { $n } tallos más no están peor y no se dibujan.
}

## Qué esperar

owner-expect-title = Qué esperar
owner-unseen = { $high ->
    [0] Nadie ha contado todavía. Del { $since } al { $by } no debería perder ninguna hoja.
    [1] Nadie ha contado todavía. Del { $since } al { $by } sería { $range } hoja.
   *[other] Nadie ha contado todavía. Del { $since } al { $by } serían { $range } hojas.
}
owner-later = { $high ->
    [0] Hasta el { $by }: ninguna hoja.
    [1] Hasta el { $by }: { $range } hoja en total.
   *[other] Hasta el { $by }: { $range } hojas en total.
}
owner-rests-on = Cuatro de cada cinco palmas así quedan dentro, por envejecimiento normal; solo una de cada veinte pasa del aviso. Alcanza { $weeks } semanas.
owner-rests-on-moved = Cuatro de cada cinco palmas así quedan dentro, por envejecimiento y traslado juntos; solo una de cada veinte pasa del aviso. Alcanza { $weeks } semanas.
owner-rests-on-urgent = Así seguiría una palma normal, durante { $weeks } semanas. Esta necesita antes a alguien; los dibujos van por sus propios conteos.
owner-call-title = Cuándo llamar
owner-call-at-once = De inmediato, sea cual sea la cuenta: la flecha (la hoja más joven, recta en el centro) se inclina, cae o se sale; el tronco se inclina o se mueve; muchas hojas cuelgan en pocos días.
owner-call-whom = Llame a (nombre, teléfono)
owner-call-giver = Llame a quien le dio esta página.
owner-next-title = Lo que sigue
owner-next-cut = Hojas muertas:
owner-next-take = { $n ->
    [0] En una visita hoy no se quitaría nada.
    [one] En una visita hoy se quitaría { $n } hoja muerta, nada verde.
   *[other] En una visita hoy se quitarían { $n } hojas muertas, nada verde.
}
owner-next-held = No se corta nada hasta que el responsable lo diga.
owner-usual-title = Normal, y ningún defecto
owner-usual-colour = Un tronco que cambió de color, o que se rozó en el viaje, se ve como antes en { $low } a { $high } meses; no es un defecto.

## Agua

owner-water-title = Agua
owner-water-moved = Hasta recuperar sus raíces bebe del cepellón con que se sacó: poco cada vez, y seguido. Al crecer las raíces se riega más de tarde en tarde.
owner-water-settled = Una palma establecida encuentra sola buena parte de su agua. En tiempo seco:
owner-water-cannot-tell = Con lo que se sabe no se puede decir cuánta necesita. Pregunte al responsable.
owner-water-nothing-noted = Aún no hay riegos anotados: toque hoy la tierra del cepellón, y riegue si está seca.
owner-water-due = Toca desde el { $date }: dé { $litres }.
owner-water-next = Próximo riego: { $date }, antes si la tierra del cepellón está seca.
owner-water-later = Según lo que se le dio, no le faltará agua en dos meses.
owner-water-head-from = Desde
owner-water-head-often = Cada cuánto
owner-water-head-each = Cada vez
owner-water-daily = cada día
owner-water-times = { $goes } veces al día
owner-water-every = { $n ->
    [one] cada día
   *[other] cada { $n } días
}
owner-water-feel = Antes toque la tierra a un palmo de hondo en el borde del cepellón: mojada, espere un día; seca, riegue hoy.
owner-water-slow = Despacio, sobre el cepellón mismo, no contra el tronco. Lo que escurre al lado se pierde.
owner-water-rain = Tras una lluvia que empape, vuelva a contar desde cero.
owner-water-short = Aun así el cepellón no retiene lo que una corona llena puede beber en un día caluroso; que decaiga algo a mediodía y amanezca bien no es alarma.
owner-water-unknown = Por el lado seguro, porque no se sabe: { $what }.
owner-water-unknown-soil = el suelo
owner-water-unknown-ball = el tamaño del cepellón
owner-water-unknown-crown = el largo de sus hojas
owner-water-unknown-counts = cuántas hojas tiene
owner-water-unknown-place = dónde está
owner-water-unknown-weather = el tiempo de algunos días
owner-water-rules = Las normas locales de riego van primero.

## Abono

owner-feed-title = Abono
owner-feed-lead = Repartido sobre el suelo bajo la corona, no contra el tronco, y regado después.
owner-feed-nothing = Nada por ahora.
owner-feed-head-against = Para
owner-feed-head-what = Con
owner-feed-head-amount = Cuánto
owner-feed-head-next = Cuándo
owner-feed-maintenance = mantenerla bien nutrida
owner-feed-now = ahora, o cuando diga el responsable
owner-feed-amount = { $amount } cada vez, { $times } veces al año
owner-feed-just-moved = Sin abono antes del { $from }: plantada el { $moved }, sus raíces no están listas ({ $against }).
owner-feed-too-soon = Abonada el { $last } ({ $against }): no antes del { $from }.
owner-feed-cause-first = { $against }: ningún abono lo arregla. Primero se remedian las raíces encharcadas, enterradas o sin aire.
owner-feed-barred = Una norma local prohíbe ahora este abono ({ $against }): { $rule }. Libre otra vez desde el { $free }.
owner-feed-rules-unknown = Aquí no se sabe si una norma local prohíbe abonar en algunos meses: pregunte en la oficina local.

## Lo que nadie debe hacer

owner-never-title = Que nadie haga esto
owner-level = La línea de nivel pasa por la base de la corona, de las 9 a las 3 del reloj; en los dibujos va con trazos.
owner-never-dirty = Ninguna hoja de corte sin limpiar desde la última palma. Pida verlo: la savia lleva enfermedades de palma a palma.
owner-never-alone = Nadie empieza un corte, una subida o un tratamiento que no esté en esta hoja sin preguntar antes al responsable.
owner-cautions-title = Para quien trabaje en ella

## La página del responsable

owner-page-title = Hoja del dueño de { $tag }
owner-link = Hoja del dueño
owner-page-what = Lo que recibe el dueño: en PDF, o como página tras un enlace privado que no pide cuenta y se puede retirar. Sus notas y razones quedan fuera.
owner-print = Imprimir en PDF
owner-links-title = Enlaces privados
owner-links-none = No hay enlaces dados.
owner-link-given-on = dado el { $date }
owner-link-until = hasta el { $date }
owner-link-over = terminó el { $date }
owner-link-open = hasta que se retire
owner-link-nobody = Sin nombre
owner-link-works = abierto
owner-link-closed = cerrado
owner-revoke = Retirar
owner-revoked = retirado por el responsable
owner-give-title = Dar un enlace
owner-give = Crear el enlace
owner-give-what = Quien tenga el enlace puede leer la hoja de esta palma y nada más. Solo se guarda una huella: se muestra una vez.
owner-given-title = El enlace, que se muestra solo esta vez
owner-given-copy = Cópielo ahora. No se puede volver a mostrar; si se pierde, retírelo y dé uno nuevo.
owner-given-for = Para { $owner }
owner-given-before = Este enlace ya se creó, y se muestra una sola vez. Si se perdió, retírelo abajo y dé uno nuevo.
owner-given-here = Esta dirección sirve solo en esta máquina. Para que entren dueños desde fuera, ponga el programa tras una dirección suya que deje pasar /o/ y /assets/ y nada más.
owner-preview = Lo que ve el dueño
forms-link_owner = Para quién
forms-link_owner-hint = Para saber después de quién es el enlace.
forms-link_until = Sirve hasta
forms-link_until-hint = Último día. Vacío: hasta que lo retire.
form-owner-nobody = Diga para quién es el enlace.
form-owner-over = Un enlace que terminó antes de hoy, { $today }, no abre nada. Elija un día posterior, o ninguno.

## La página del dueño

owner-closed-title = Este enlace está cerrado
owner-closed = Puede estar mal escrito, haber terminado o haberse retirado. Pida uno nuevo a quien se lo dio.
owner-page-lang = Idioma y unidades
owner-as-pdf = En PDF, para imprimir
owner-sources-title = De dónde sale esto
owner-sheet-link = Esta hoja, siempre al día. Quien tenga la dirección puede leerla: guárdela para usted.

## El resumen de todas las palmas de un dueño

common-owners = Dueños
owners-title = Dueños
owners-summary = { $owners ->
    [one] { $owners } dueño
   *[other] { $owners } dueños
}, { $sites ->
    [0] todos los sitios tienen uno.
    [one] { $sites } sitio sin dueño nombrado.
   *[other] { $sites } sitios sin dueño nombrado.
}
owners-what = Una hoja para cada uno: qué se hizo, cómo están las palmas, qué sigue. Imprímala o envíe el PDF. De quién es un sitio se dice en la página del sitio.
owners-empty = Aún no hay palmas en el registro.
owners-named = Dueños
owners-sites = Sitios sin dueño nombrado
owners-say-who = Decir de quién es
owners-link = Resumen para el dueño
error-not-found-owner = Ningún sitio tiene un dueño «{ $name }».
summary-no-such-owner = Ningún sitio nombra a un dueño «{ $name }». Los nombres son como los escriben los sitios.
summary-title-owner = Palmas de { $owner }
summary-title-site = Palmas en { $site }
summary-title-no-site = Palmas sin sitio
summary-period = Se cuenta: del { $from } al { $until }
summary-no-day = «{ $found }» no es un día; se esperaba 2026-05-04.
summary-future = De los días por venir no hay nada anotado. Elija { $today } o antes.
summary-backwards = Es posterior al último día, { $until }. Elija uno anterior.
summary-from = Primer día
summary-until = Último día
summary-show = Mostrar estos días
summary-other-days = Otros días
summary-print = Imprimir en PDF
summary-not-noted = sin anotar
summary-palms = { $n ->
    [one] { $text } palma
   *[other] { $text } palmas
}

## Las cuentas

summary-glance-title = De un vistazo
summary-count-palms = { $n ->
    [one] palma
   *[other] palmas
}
summary-count-looked = { $n ->
    [one] palma revisada
   *[other] palmas revisadas
}
summary-count-cut = { $n ->
    [one] palma cortada
   *[other] palmas cortadas
}
summary-count-fronds = { $n ->
    [one] hoja quitada
   *[other] hojas quitadas
}
summary-count-moved = { $n ->
    [one] palma trasladada
   *[other] palmas trasladadas
}
summary-count-held = { $n ->
    [one] palma en espera hoy
   *[other] palmas en espera hoy
}
summary-count-call = { $n ->
    [one] palma por la que llamar hoy
   *[other] palmas por las que llamar hoy
}
summary-off = En total se quitaron: { $green } hojas verdes, { $yellowing } amarillentas, { $brown } cafés y { $stalks ->
    [one] { $stalks } tallo.
   *[other] { $stalks } tallos.
}
summary-off-uncounted = { $n ->
    [one] En { $text } corte no se contó todo lo quitado: las cifras reales pueden ser mayores.
   *[other] En { $text } cortes no se contó todo lo quitado: las cifras reales pueden ser mayores.
}
summary-gone = { $n ->
    [one] También cuenta el trabajo en { $text } palma que ya salió del registro.
   *[other] También cuenta el trabajo en { $text } palmas que ya salieron del registro.
}

## Las palmas

summary-palms-title = Palmas que necesitan su atención
summary-palms-none = Ninguna palma necesita su atención.
summary-palms-drawn = Las coronas como están hoy, vistas de lado, según las hacen probables los conteos. Con trazos: la línea de nivel.
summary-stand-call = Llamar
summary-stand-held = En espera
summary-stand-care = Necesita cuidado
summary-stand-moved = Trasladada, en camino
summary-more-palms = { $n ->
    [one] { $text } palma más necesita atención; lo dice su propia hoja.
   *[other] { $text } palmas más necesitan atención; lo dicen sus propias hojas.
}
summary-also = También
summary-tripwire = { $stems ->
    [0] { $over ->
        [one] Si entre el { $since } y el { $by } pierde más de { $over } hoja, o la flecha se inclina: llame.
       *[other] Si entre el { $since } y el { $by } pierde más de { $over } hojas, o la flecha se inclina: llame.
    }
   *[other] { $over ->
        [one] Si entre el { $since } y el { $by } un tallo pierde más de { $over } hoja, o la flecha se inclina: llame.
       *[other] Si entre el { $since } y el { $by } un tallo pierde más de { $over } hojas, o la flecha se inclina: llame.
    }
}
summary-lost = { $n ->
    [one] { $n } hoja perdida, más de lo que hacen la edad o un traslado: llame al responsable.
   *[other] { $n } hojas perdidas, más de lo que hacen la edad o un traslado: llame al responsable.
}
summary-water-unknown = No se sabe cuánta agua necesita. Pregunte al responsable.
summary-water-nothing-noted = No hay riegos anotados: toque hoy la tierra del cepellón.
summary-water-due = Toca regar desde el { $date }: { $litres }.
summary-water-next = Próximo riego: { $date }.
summary-others-title = Todas las demás
summary-no-palms = Aún no hay ninguna palma aquí.
summary-fine = { $n ->
    [0] De ninguna otra palma se sabe que esté como debe.
    [one] { $text } palma está como debe.
   *[other] { $text } palmas están como deben.
}
summary-late = { $n ->
    [one] { $text } palma espera una visita: cuelgan más hojas muertas de las previstas.
   *[other] { $text } palmas esperan una visita: cuelgan más hojas muertas de las previstas.
}
summary-unseen = { $n ->
    [one] { $text } palma que nadie ha revisado aún: no se sabe cómo está.
   *[other] { $text } palmas que nadie ha revisado aún: no se sabe cómo están.
}
summary-long-ago = { $n ->
    [one] { $text } palma que nadie ha revisado en medio año: no se sabe cómo está hoy.
   *[other] { $text } palmas que nadie ha revisado en medio año: no se sabe cómo están hoy.
}
summary-unread = { $n ->
    [one] { $text } palma no se pudo leer: no se sabe cómo está.
   *[other] { $text } palmas no se pudieron leer: no se sabe cómo están.
}

## Lo que se hizo por ellas

summary-done-none = En este tiempo no hay cortes, traslados ni abonos anotados.
summary-head-day = Día
summary-head-site = Sitio
summary-head-palms = Palmas
summary-head-what = Qué
summary-head-crew = Quién
summary-head-blades = Filo antes de cada palma
summary-did-fed-unnamed = Abonada; sin anotar con qué
summary-did-moved-off = Sacada y trasladada; se quitó: { $what }
summary-did-nothing-off = Cortada; no se quitó nada
summary-uncounted = { $n ->
    [one] en { $text } palma no se contó todo
   *[other] en { $text } palmas no se contó todo
}
summary-blade-clean = limpio
summary-blade-unknown = no se sabe
summary-blade-not-noted = sin limpieza anotada
summary-blade-dirty = no limpio
summary-blade-at = { $what }: { $n ->
    [one] { $n } palma
   *[other] { $n } palmas
}
summary-done-earlier = { $n ->
    [one] No se muestra { $n } renglón anterior; ahí se quitaron { $fronds } hojas.
   *[other] No se muestran { $n } renglones anteriores; ahí se quitaron { $fronds } hojas.
}
summary-done-looked = Revisadas: { $palms ->
    [one] { $palms } palma
   *[other] { $palms } palmas
} en { $days ->
    [one] { $days } día
   *[other] { $days } días
}, la última vez el { $last }.
summary-done-watered = Regadas: { $palms ->
    [one] { $palms } palma
   *[other] { $palms } palmas
} en { $days ->
    [one] { $days } día
   *[other] { $days } días
}, la última vez el { $last }.
summary-no-money = Lo que costó no está en estos registros.

## Lo que sigue para ellas

summary-next-none = No hay nada previsto y no toca nada.
summary-next-round = ronda prevista
summary-next-visit = visita propuesta
summary-next-look = revisión tras el traslado
summary-next-round-what = { $palms }, cuadrilla: { $crew }
summary-next-look-what = { $tags }{ $more ->
    [0] { "" }
   *[other] {" "}y { $more } más
}
summary-next-look-late = { $tags }{ $more ->
    [0] { "" }
   *[other] {" "}y { $more } más
}: ya tocaba, nadie ha revisado
summary-next-more = { $n ->
    [one] No se muestra { $text } renglón posterior.
   *[other] No se muestran { $text } renglones posteriores.
}
summary-next-no-visit = { $site }: en { $weeks } semanas no toca ninguna visita.
summary-left-unseen = { $n ->
    [one] { $n } palma sin planificar: nadie la ha revisado aún.
   *[other] { $n } palmas sin planificar: nadie las ha revisado aún.
}
summary-left-unread = { $n ->
    [one] { $n } palma sin planificar: no se pudo leer.
   *[other] { $n } palmas sin planificar: no se pudieron leer.
}
summary-left-held = { $n ->
    [one] { $n } palma sin planificar: está en espera y nadie ha dicho hasta cuándo.
   *[other] { $n } palmas sin planificar: están en espera y nadie ha dicho hasta cuándo.
}
summary-left-many = { $n ->
    [one] { $n } palma aún sin planificar: a otras de su sitio les toca antes.
   *[other] { $n } palmas aún sin planificar: a otras de su sitio les toca antes.
}

## Lo que el dueño debe cuidar

summary-mind-title = Por favor, cuide
summary-wires = Todo cable tiene corriente. Nadie que no trabaje en despeje de líneas se acerca a uno a menos de { $keep } con el cuerpo, la escalera, la pértiga o una hoja; por encima de 50 kV la distancia es mayor, y si no se sabe la tensión se pregunta antes a la compañía eléctrica.
summary-wires-site = { $site }: la compañía eléctrica dice { $kv } kV a tierra; guarde { $keep }.
summary-wires-palms = { $n ->
    [one] Hay cables anotados en { $n } palma
   *[other] Hay cables anotados en { $n } palmas
}: { $tags }{ $more ->
    [0] .
   *[other] {" "}y { $more } más.
}
summary-wires-unknown = { $n ->
    [one] En { $text } palma nadie anotó si hay cables cerca: primero mire arriba.
   *[other] En { $text } palmas nadie anotó si hay cables cerca: primero mire arriba.
}
