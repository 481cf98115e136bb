### Lo que lleva y cuesta el trabajo: presupuestos y precios

common-estimate = Estimación
common-prices = Precios

estimate-title = Estimación
estimate-lead = Cuánto llevan los cortes que hoy pueden hacerse, cuántos restos dejan y qué cuestan. No se registra nada.
estimate-site = Sitio
estimate-palms = Palmas por etiqueta
estimate-palms-hint = Con comas entre ellas; también las que aún no tocan. Vacío: todas las que tocan.
estimate-crew = Cuadrilla
estimate-any = Cualquiera
estimate-make = Estimar
estimate-print = Imprimir un presupuesto (PDF)
estimate-prices-link = Precios y cifras
estimate-summary = { $palms ->
    [one] { $palms } palma
   *[other] { $palms } palmas
}, { $fronds ->
    [one] { $fronds } hoja
   *[other] { $fronds } hojas
}{ $stalks ->
    [0] { "" }
   *[other] , { $stalks } tallos
}: { $time }. { $money } con impuesto, si se fijó; rara vez menos de { $low } o más de { $high }.
estimate-between = de { $low } a { $high }, por lo común { $mid }
estimate-minutes = { $min } min
estimate-hours = { $h } h { $min } min
estimate-what = { $fronds ->
    [one] { $fronds } hoja
   *[other] { $fronds } hojas
} ({ $dead } muertas), { $from }
estimate-from-hand = a mano desde el suelo
estimate-from-pole = con pértiga desde el suelo
estimate-from-lift = desde un elevador
estimate-debris = de { $low } a { $high } sueltos, por lo común { $mid }; de { $mass_low } a { $mass_high }
estimate-tax = Impuesto { $pct } %
estimate-times = { $quantity } a { $price }
estimate-no-price = sin precio fijado

estimate-time-title = Tiempo
estimate-time-what = Minutos de toda la cuadrilla junto a las palmas. Una vez de cada diez es menos que la primera cifra; una de cada diez, más que la segunda.
estimate-sum = En total
estimate-debris-title = Restos
estimate-money-title = Dinero
estimate-net = Sin impuesto
estimate-gross = A pagar
estimate-palms-title = Palmas
estimate-left-title = No se cortan
estimate-assumed-title = Lo que se supone
estimate-assumed-what = Nadie dio estas cifras, o no todas. Ponga las suyas y ocuparán su lugar.
estimate-partly-assumed = en parte supuesto

estimate-line-walk = A pie
estimate-line-find = Encontrar la palma
estimate-line-set-up = Acordonar y herramienta
estimate-line-pole = Preparar la pértiga
estimate-line-lift = Acercar el elevador
estimate-line-clean = Limpiar y cambiar la hoja de corte
estimate-line-soak = Esperar el baño
estimate-line-fronds = Cortar hojas
estimate-line-stalks = Cortar tallos
estimate-line-gather = Recoger
estimate-line-load = Cargar
estimate-line-beside = Hecho mientras otra persona corta
estimate-line-look = Revisar
estimate-line-water = Regar
estimate-line-feed = Abonar
estimate-line-pace = Lo que enseñan los tiempos anotados

estimate-charge-trip = Viajes
estimate-charge-lift_day = Elevador
estimate-charge-crew_hour = Cuadrilla
estimate-charge-haul_m3 = Acarreo
estimate-charge-tip_m3 = Vertedero
estimate-unit-trip = { $n }
estimate-unit-lift_day = { $n } d
estimate-unit-crew_hour = { $n } h
estimate-unit-haul_m3 = { $n } m³
estimate-unit-tip_m3 = { $n } m³

estimate-pace-none = Aún no habla ningún tiempo anotado: descansa solo en las tablas. Anote el inicio y el fin de un corte, o los minutos de una palma en una ronda, y sus cuadrillas marcarán el ritmo.{ $unused ->
    [0] { "" }
    [one] { " " }Un tiempo anotado no sirvió: nadie anotó qué se quitó.
   *[other] { " " }{ $unused } tiempos anotados no sirvieron: nadie anotó qué se quitó.
}
estimate-pace-all = { $times ->
    [one] Un tiempo anotado de sus cuadrillas habla
   *[other] { $times } tiempos anotados de sus cuadrillas hablan
} aquí: tardan { $factor } veces lo que dicen las tablas.{ $unused ->
    [0] { "" }
    [one] { " " }Uno no sirvió: nadie anotó qué se quitó.
   *[other] { " " }{ $unused } no sirvieron: nadie anotó qué se quitó.
}
estimate-pace-crew = { $crew } tarda { $factor } veces lo que dicen las tablas: { $own ->
    [0] no hay tiempos suyos anotados, hablan los de otras ({ $times }).
    [one] hablan un tiempo suyo anotado y { $times } en total.
   *[other] hablan { $own } tiempos suyos anotados y { $times } en total.
}{ $unused ->
    [0] { "" }
    [one] { " " }Uno no sirvió: nadie anotó qué se quitó.
   *[other] { " " }{ $unused } no sirvieron: nadie anotó qué se quitó.
}
estimate-prices-missing = Faltan precios por fijar: la suma es demasiado pequeña en esa parte.
estimate-prices-assumed = Los precios marcados como supuestos no son suyos: ponga los suyos antes de dar esto a nadie.

estimate-no-such-crew = Ninguna cuadrilla se llama «{ $crew }». Descríbala en Cuadrillas o deje la cuadrilla abierta.
estimate-no-such-palm = Ninguna palma con la etiqueta «{ $tag }» está en el registro. Revise la etiqueta.
estimate-no-such-site = Ninguna palma está en un sitio llamado «{ $site }». Revise el nombre.
estimate-nothing = Hoy no toca cortar ninguna palma allí. Nombre palmas por etiqueta para estimarlas de todos modos.
estimate-nothing-off = Hoy no puede quitarse nada de ella.

estimate-figure = de { $low } a { $high }, por lo común { $mid } { $unit }
estimate-figure-one = { $mid } { $unit }
estimate-per-min = min
estimate-per-min-m3 = min por m³
estimate-per-min-100m = min por 100 m
estimate-per-times = veces
estimate-per-share-m = parte por metro
estimate-per-pieces = piezas
estimate-per-people = personas
estimate-per-log = (logaritmo)
estimate-per-visits = visitas
estimate-per-kg-m = kg por metro
estimate-per-kg = kg
estimate-per-kg-m3 = kg por m³
estimate-per-m = m
estimate-per-money = dólares de EE. UU.

prices-title = Precios y cifras
prices-lead = Lo que cobra y lo que lleva el trabajo con sus cuadrillas. Lo que deje vacío se supone, y se dice.
prices-none-set = No hay lista de precios: todos los precios se suponen, en dólares de EE. UU.
prices-code = Moneda
prices-code-hint = Tres letras de ISO 4217, como USD, EUR o MXN. En otra moneda que USD no se supone ningún precio.
prices-digits = Cifras decimales
prices-digits-hint = 2 en la mayoría de las monedas, 0 en algunas.
prices-prices = Precios
prices-assumed = Supuesto: { $value }
prices-tax = Impuesto, por ciento
prices-notes = Palabras para presupuestos
prices-figures = Sus propias cifras
prices-figures-what = Su cifra ocupa el lugar de la del medio; el margen alrededor guarda sus proporciones.
prices-table = Tabla: { $value }
prices-save = Guardar

form-prices-currency = La moneda tiene tres letras, como USD, EUR o MXN.
form-price-not-read = «{ $found }» no es un precio. Escriba cifras, con punto o coma, sin moneda.
form-price-digits = { $n ->
    [0] Esta moneda no tiene decimales.
    [one] Esta moneda tiene { $n } decimal.
   *[other] Esta moneda tiene { $n } decimales.
} No escriba más, o cambie las cifras decimales.
form-price-too-large = Es demasiado para un precio. Revise las cifras.

quote-title = Presupuesto
quote-for = Para
quote-by = De
quote-lead = Es una estimación del { $date } según las últimas revisiones de las palmas, no un precio fijo. Cubre solo lo que entonces puede quitarse; lo que cambie hasta la visita la cambia.
quote-work = Trabajo
quote-head-palm = Palma
quote-head-work = Qué se quita
quote-head-charge = Por
quote-head-quantity = Cuánto
quote-head-price = Cada uno
quote-head-amount = Importe
quote-site = Sitio
quote-time = Tiempo de la cuadrilla
quote-debris = Restos
quote-spread = Rara vez menos de { $low }, rara vez más de { $high }.
quote-cut-title = Qué se corta y qué no
quote-cut-dead = Hojas muertas y, de las demás, solo lo que la palma puede perder hoy. No se aclara una corona verde para alargar la espera hasta la próxima visita.
quote-cut-clean = Las hojas de corte se limpian entre palmas.
quote-cut-spikes = Sin espuelas de trepar en una palma que se queda.
quote-cut-wires = El trabajo cerca de cables no está en este presupuesto: solo lo hacen la compañía eléctrica y quienes despejan líneas.
quote-cut-permit = Permisos, nidos y animales protegidos, cuarentena y reglas locales van antes que cualquier fecha.
quote-sign-date = Fecha
quote-sign-owner = Propietario
quote-sign-keeper = Encargado
