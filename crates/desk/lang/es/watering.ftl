### Riego: qué palmas piden agua, el plan de una palma, el tiempo que entra

common-watering = Riego

## La lista

watering-title = Riego
watering-summary = { $today ->
    [0] Ninguna palma pide agua hoy;
    [one] { $today } palma pide agua hoy;
   *[other] { $today } palmas piden agua hoy;
} { $week ->
    [0] ninguna en los seis días siguientes.
   *[other] { $week } más en los seis días siguientes.
}
watering-total = Hoy en total: { $water }
watering-what = Aquí están las palmas trasladadas hace poco que aún no están establecidas y las palmas con algún riego anotado en los últimos { $days } días. De las demás nadie ha dicho que se rieguen; su propia página las planifica de todos modos.
watering-empty = No se sigue ninguna palma: ninguna se trasladó hace poco y no hay riegos anotados. Un riego se anota en la página de la palma.
watering-more = { $n ->
    [one] { $n } más no se muestra aquí; está en su propia página.
   *[other] { $n } más no se muestran aquí; están en sus propias páginas.
}
watering-sites = Sitios
watering-all-sites = Todos los sitios
watering-site-today = { $n } hoy
watering-no-site = palmas sin sitio
watering-no-weather = { $site }: sin datos del tiempo en { $n } de los últimos 14 días; los sustituyen las medias mensuales del lugar conocido más cercano.
watering-no-weather-no-climate = { $site }: sin datos del tiempo en { $n } de los últimos 14 días y sin lugar conocido a menos de 100 km: el plan es amplio.
watering-bring-weather = Traer datos del tiempo
watering-group-today = Hoy
watering-group-week = En los seis días siguientes
watering-group-later = Más tarde
watering-group-unknown = No se puede calcular
watering-open = plan y registro
watering-link = Agua
watering-state-due = Regar hoy
watering-state-nothing-noted = Sin riegos anotados
watering-state-soon = Esta semana
watering-state-later = Más tarde
watering-state-unknown = No se puede calcular

## Una palma

water-title = Riego de { $tag }
water-jump-ahead = Próximos días
water-jump-note = Anotar un riego
water-jump-reckoned = Cómo se calcula
water-jump-given = Registro
water-jump-list = Todas las palmas
water-give-today = Hoy:
water-goes = { $n } veces { $each }
water-nothing-noted = No se anotó ningún riego en los últimos { $days } días, así que nadie sabe cuán seca está. Empape todo lo que alcanzan las raíces; desde entonces cuenta el plan.
water-unknown = No se puede decir cuánto necesita: no se conoce el largo de sus hojas. Mida el ancho de la corona y anótelo con la palma.
water-due-today = Hoy puede empezar a faltarle agua.
water-due-since = Puede faltarle agua desde el { $date }, hace { $ago }.
water-next = Próximo riego el { $date }, dentro de { $in }.
water-next-none = No le toca en los 60 días calculados.
water-rhythm = { $days ->
    [one] Como máximo cada día: { $water }.
   *[other] Como máximo cada { $days } días: { $water }.
}
water-rhythm-goes = Cada día en { $goes } veces: { $water } cada una.
water-rhythm-unknown = No se puede decir cada cuánto.
water-last = Último riego el { $date }, hace { $ago }: { $amount }.
water-last-today = Regada hoy, { $date }: { $amount }.
water-last-none = Nunca se anotó un riego.
water-amount-unknown = cantidad no anotada
water-lasts = Tras empaparla, el agua falta a los { $low } en el peor caso, a los { $high } en el mejor.
water-days = { $n ->
    [one] { $text } día
   *[other] { $text } días
}
water-short = Aun regando tantas veces, el cepellón no retiene lo que una corona llena puede tomar en un día así: a la palma le falta agua una parte del día.
water-tap = Regada: { $water }
water-tap-plain = Regada
water-mind-soil = El plan no ve el suelo. Antes va un dedo, una sonda o una pala en el borde del cepellón; si está encharcado, no quiere agua.
water-mind-rules = Las reglas locales de riego van antes que el plan.
water-mind-tub = Una palma en maceta no se planifica aquí.

water-ahead-title = Hoy y los próximos días
water-ahead-what = Si se sigue el plan. Las necesidades se calculan entre dos cifras; lo que se da sigue a la mayor. No hay pronóstico del tiempo.
water-col-day = Día
water-col-give = Dar
water-col-need = Puede necesitar
water-col-reference = El aire toma
water-col-given = Dado
water-col-rain = Lluvia
water-col-by = Calculado por
water-col-down = Puede haberse agotado
water-day-off = nada
water-taper-title = A medida que crecen las raíces
water-taper-what = El mismo cálculo en la estación de las semanas que vienen, con las raíces creciendo al paso más lento supuesto. Termina cuando la palma se considera establecida.
water-roots-ball = Las raíces siguen en el cepellón.
water-roots-growing = Las raíces están saliendo del cepellón.
water-roots-whole = Las raíces están bajo toda la corona.
water-gaps-title = Lo que no se sabe
water-gaps-what = Cada uno de estos datos ensancha el plan, y el plan se queda en el lado seguro: más agua y antes.
water-gap-soil = No se conoce el suelo: se toman los nueve suelos de la tabla. Anótelo con el sitio.
water-gap-soil-moved = No se conoce el suelo: se toman los nueve suelos de la tabla.
water-gap-soil-of-ball = No se conoce el suelo del cepellón: se toma el del sitio.
water-gap-ball = No se conoce el tamaño del cepellón: se toma lo que las fuentes usan y piden.
water-gap-crown = Nadie sabe cuánto miden sus hojas: no se pueden decir litros. Mida el ancho de la corona.
water-gap-crown-not-read = El ancho de la corona dice «{ $found }»: se esperaba una cifra en metros hasta 40. No se usa.
water-gap-counts = No se contaron sus hojas: la corona puede estar llena o, tras un traslado, de cualquier modo.
water-gap-place = No se sabe dónde está: el aire podría tomar lo que hace cualquier clima.
water-gap-weather = { $n ->
    [one] { $n } de los últimos 14 días no tiene datos del tiempo; lo sustituyen medias mensuales.
   *[other] { $n } de los últimos 14 días no tienen datos del tiempo; los sustituyen medias mensuales.
}
water-gap-weather-no-climate = { $n ->
    [one] { $n } de los últimos 14 días no tiene datos del tiempo y no hay lugar conocido a menos de 100 km.
   *[other] { $n } de los últimos 14 días no tienen datos del tiempo y no hay lugar conocido a menos de 100 km.
}
water-gap-amounts = { $n ->
    [one] { $n } riego no tiene cantidad; cuenta como ninguno.
   *[other] { $n } riegos no tienen cantidad; cuentan como ninguno.
}
water-gap-to-move = Anotarlo con el traslado
water-gap-to-edit = Anotarlo con la palma
water-gap-to-inspect = Contarlas
water-gap-to-import = Traer datos del tiempo
water-gap-to-log = Añadir las cantidades

## Cómo se calcula

water-reckoned-title = Cómo se calcula
water-reckoned-what = Del aire a la palma y de ahí a lo que alcanzan las raíces. Cada cifra es un tramo; el plan toma la mayor necesidad y la menor agua al alcance.
water-step-reference = El aire toma de hierba corta en un día
water-how-full = Penman-Monteith, todo medido.
water-how-part = Penman-Monteith, con lo que el documento pone en lugar de lo no medido:
water-how-temperatures = Hargreaves, solo con las temperaturas de hoy.
water-how-last-days = La media de los últimos días con datos (supuesto).
water-how-climate = Hargreaves, con las medias mensuales de { $place }.
water-how-climate-note = Los datos del tiempo que se traigan ocupan su lugar.
water-how-anywhere = Ni datos del tiempo ni lugar conocido: todo lo que hacen los climas.
water-stood-in-humidity = Humedad: la temperatura mínima como punto de rocío.
water-stood-in-wind = Viento: 2 m/s.
water-stood-in-sun = Sol: por la diferencia de temperaturas.
water-stood-in-elevation = Altura sobre el mar: nivel del mar (supuesto).
water-step-factor = Su parte de eso
water-step-factor-note = Del menor al mayor de los factores usados; todos están abajo.
water-step-crown = Suelo bajo su corona
water-step-crown-measured = Por el ancho medido de la corona.
water-step-crown-by-frond = Por el largo de sus hojas: una hoja se arquea hasta 0,6 a 0,9 de su largo.
water-step-draws = Lo que queda de su corona toma, respecto de una llena
water-step-draws-note = Según el modelo de la corona: hojas contadas, perdidas y nacidas desde entonces.
water-step-need = Puede necesitar hoy
water-step-need-note = El producto de los cuatro: 1 mm en 1 m² es 1 L.
water-step-roots = Suelo sobre sus raíces
water-step-depth = Hasta una profundidad: { $depth }.
water-step-held = Agua que el suelo guarda para las raíces, de su volumen
water-step-held-note = Del suelo del cepellón y, cuando las raíces salen, del sitio.
water-step-total = Al alcance de sus raíces, lleno
water-step-fraction = De eso puede agotarse antes de que falte
water-step-fraction-note = Menos en suelo grueso y en días de gran necesidad.
water-step-ready = Tanto toma sin que le falte
water-factors-title = Quién dice qué de su parte
water-conflict = Las fuentes se contradicen: los factores de cultivo ({ $crop }) son para palmas sin falta de agua, los de jardín ({ $landscape }) para plantas establecidas con aspecto aceptable. El plan riega para el mayor.
water-factors-all = Todos los factores, y lo que cada uno haría de hoy
water-factor-used = Usado
water-factor-container = No usado: para macetas
water-factor-other-air = No usado: para otro aire que el de aquí
water-factor-no-figure = No usado: no se pudo leer ninguna cifra
water-factor-narrower = No usado: lo sustituye una fila de la especie
water-factor-need = con este solo { $water } hoy

## El registro

water-given-title = Riegos
water-given-none = Ninguno anotado.
water-correct = Corregir
water-take-back = Retirar
water-taken-back = Retirado en la página de riego
water-past-title = Los últimos 14 días
water-past-what = La cuenta seca: la mayor necesidad, la menor lluvia. Un riego cuenta con sus litros; uno sin cantidad no cuenta.
water-by-full = todo medido
water-by-part = medido en parte
water-by-temperatures = temperaturas
water-by-last-days = últimos días
water-by-climate = medias mensuales
water-by-anywhere = nada conocido
water-form-title = Anotar un riego
water-form-correct = Corregir un riego
water-save = Guardar el riego
forms-crown_across = Ancho de la corona
forms-crown_across-hint = De punta a punta de hoja: el agua y el abono van por el suelo de debajo.
form-crown-no-size = Un ancho de nada no puede ser. Déjelo vacío si no se midió.
fact-crown-across = Ancho de la corona
forms-litres = Cuánto
forms-litres-hint = Un número solo va en su propia unidad; también se leen 40 L y 10 gal. Vacío: no se midió.
forms-water_notes = Notas
form-water-not-read = «{ $found }» no es una cantidad de agua: se esperaba un número, con L o gal detrás si no va en su propia unidad.
form-water-out-of-range = No puede ser: se esperaba más que nada y como máximo 100 000 L.
form-water-much = { $litres } L para una palma en un día es muchísimo. Revise la unidad.

## El tiempo que entra

weather-no-date = Falta la fecha. Cada fila del tiempo necesita su día.
weather-min-above-max = La temperatura mínima ({ $found }) está por encima de la máxima ({ $max }). Mire si están cambiadas.
weather-nothing = El { $found } no se midió nada: rellene otra columna o quite la fila.
weather-doubled-day = { $found } ya está en la línea { $first } para este sitio. Deje una de las dos filas.
weather-unknown-site = Ninguna palma está en «{ $found }». Escriba el sitio como en las palmas o deje la celda vacía: entonces vale para todos los sitios sin datos propios.
forms-import-is-weather = El tiempo por días.
forms-import-columns-weather = El tiempo: hace falta date y al menos una cifra. Grados Celsius, por ciento, viento a 2 m en m/s, MJ por metro cuadrado, horas, mm. Sin sitio: todos los sitios sin datos propios. Un día que ya está se sustituye.
forms-import-rain = lluvia { $rain }
