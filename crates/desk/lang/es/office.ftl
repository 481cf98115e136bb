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
correction-of-another-kind = El alta de una palma solo se corrige con otra alta, y con un alta no se corrige nada más.
recorded-otherwise = Esto ya se registró con otros valores. Lo registrado se queda; escriba una corrección.
tag-doubled = Dos palmas llevan la etiqueta «{ $tag }». La conserva la que se registró primero; dele a la otra una etiqueta propia.
entry-not-understood = Un asiento del tipo «{ $kind }» viene de una versión más nueva de Spearleaf. Se conserva, pero aquí no tiene efecto.
corrections-in-circle = Algunos asientos se corrigen unos a otros en círculo; ninguno vale.
