### Por qué la oficina no registra algo, y qué está mal en lo ya registrado

## Una palma

tag-taken = La etiqueta «{ $tag }» ya la lleva otra palma. Dele a esta palma una etiqueta propia, o quite primero la otra del registro.
tag-malformed = «{ $tag }» no es una etiqueta: se esperaban de 1 a { $limit } caracteres sin espacios antes ni después.
palm-unknown = No hay tal palma en el registro. Regístrela primero.
stems-absurd = { $tag }: no puede tener { $found } tallos; se esperaban de 1 a { $limit }.
figure-out-of-range = { $tag }: una altura, una distancia, una posición o un número de hojas está fuera de lo posible. Revise las cifras y sus unidades.
date-in-future = { $tag }: el { $date } es posterior a hoy ({ $today }). Lo que aún no ha pasado no se puede registrar.
date-too-early = { $tag }: el { $date } es anterior a 1800. Revise el año.

## Una inspección

stem-out-of-range = { $tag }, { $date }: la palma no tiene tallo { $stem }. Corrija el número del tallo o el número de tallos de la palma.
count-absurd = { $tag }, tallo { $stem }, { $date }: se contaron { $found } hojas; ninguna corona lleva más de { $limit }. Revise la cifra.
more-off-than-on = { $tag }, tallo { $stem }, { $date }: se quitaron más hojas de las que se contaron. Se cuenta antes de quitar nada.
clock-impossible = { $tag }, tallo { $stem }, { $date }: una lectura de reloj está entre 0,25 y 12 horas.
inspection-twice = { $tag }, tallo { $stem }, { $date }: hay dos inspecciones de este día; vale la que se escribió la última.

## Esperas, correcciones, asientos

hold-without-reason = Una espera necesita su motivo.
hold-unknown = No hay tal espera que levantar.
withdrawal-of-nothing = Para retirar un asiento hay que nombrarlo.
entry-unknown = El asiento que se quiere corregir no está en el libro.
correction-of-another-kind = El alta de una palma o de una hoja de corte solo se corrige con otra de su clase, y con un alta no se corrige nada más.
recorded-otherwise = Esto ya se registró con otros valores. Lo registrado se queda; escriba una corrección.
tag-doubled = Dos palmas llevan la etiqueta «{ $tag }». La conserva la que se registró primero; dele a la otra una etiqueta propia.
entry-not-understood = Un asiento del tipo «{ $kind }» viene de una versión más nueva de Spearleaf. Se conserva, pero aquí no tiene efecto.
corrections-in-circle = Algunos asientos se corrigen unos a otros en círculo; ninguno vale.

## Cuidados, lugares, cuadrillas, rondas

planted-before-dug = { $tag }: plantada antes de arrancarla el { $date }. Revise las dos fechas.
link-malformed = El secreto del enlace no es un resumen válido. Entregue un enlace nuevo.
site-nameless = Un lugar necesita un nombre sin espacios alrededor: «{ $site }».
site-figure = { $site }: hay un dato imposible. Las horas caben en un día y acaban después de empezar, los días cerrados también, una línea tiene como mucho 1200 kV y los recuentos son menores de 1000.
site-hours-overlap = { $site }: las horas { $first } y { $next } se cruzan. Haga un solo tramo de las dos.
site-tidy-beyond-limit = { $site }: el número que merece una visita supera el límite. Haga mayor el límite.
crew-nameless = Una cuadrilla necesita un nombre sin espacios alrededor: «{ $crew }».
crew-figure = { $crew }: hay un dato imposible. Las horas caben en un día y acaban después de empezar; las personas son de 1 a 1000; el espacio para restos, de 0 a 1000 m³.
prices-currency = «{ $currency }»: una moneda tiene tres mayúsculas (ISO 4217), como mucho cuatro cifras decimales y un impuesto del 0 al 100 por ciento.
prices-figure = { $key }: los precios y los datos no son menores que cero.
weather-figure = { $date }: hay un dato del tiempo imposible, o la temperatura mínima supera la máxima. Revise las unidades: °C, %, m/s, MJ/m², horas, mm.
round-palm-twice = { $tag } está dos veces en la ronda. Quítela una vez.
round-figure = La ronda del { $date }: las horas caen dentro de dos días desde su medianoche, y una palma lleva como mucho un día.
round-unknown = No hay tal ronda. Planifíquela antes.
skipped-without-reason = { $tag }: diga por qué se omitió.

## Hojas de corte

blade-tag-taken = La etiqueta «{ $tag }» ya la lleva otra hoja de corte. Dele a esta una etiqueta propia, o ponga primero la otra fuera de servicio.
blade-tag-doubled = Dos hojas de corte llevan la etiqueta «{ $tag }». La conserva la que se registró primero; dele a la otra una etiqueta propia.
blade-unknown = No hay tal hoja de corte en el registro. Regístrela primero.
bath-unknown = { $blade }, { $date }: se limpió en un baño que nadie anotó haber preparado. No se sabe su edad.
cleaning-without-agent = { $blade }, { $date }: una limpieza sin producto. Nadie puede decir si bastó.
cleaning-impossible = { $tag }: una concentración está entre 0 y 100 por ciento, y un tiempo de contacto entre 0 y { $limit } minutos.
cuts-overlap = { $blade }, { $date }: según el cuaderno, la hoja de corte cortó dos palmas al mismo tiempo. Revise las horas y la etiqueta de la hoja de corte.
cut-ends-before-it-starts = { $blade }, { $date }: el corte acaba antes de empezar. Revise el reloj y el huso horario del aparato.
cut-too-long = { $blade }, { $date }: el corte duró más de doce horas. Revise cuándo empezó.
written-before-it-happened = { $blade }, { $date }: se anotó más de una hora antes de que ocurriera. Revise el reloj y el huso horario del aparato.
touch-twice = { $blade }, { $date }: lo mismo está dos veces en el cuaderno; cuenta una vez.
