### Formularios: inspecciones, palmas, esperas, archivos de entrada

forms-cancel = Cancelar
forms-confirm = Sí, es correcto
forms-not-saved-yet = Aún no se ha guardado. Revise esto:
forms-could-not-save = No se pudo guardar en este momento. Lo que escribió sigue aquí: inténtelo otra vez.
forms-draft-restored = Esto se escribió antes y aún no se ha guardado.
forms-draft-discard = Descartarlo y empezar de nuevo
forms-not-sent = No se guardó: no hay conexión con Spearleaf.
forms-not-sent-kept = Lo que escribió queda en este aparato. Inténtelo otra vez cuando tenga señal; se guarda una sola vez, por más que lo intente.
forms-send-again = Intentar otra vez

## Inspección

forms-inspect-title = Inspeccionar { $tag }
forms-correct-title = Corregir una inspección de { $tag }
forms-stems-nav = Tallos
forms-stem-n = Tallo { $n }
forms-stem-done = inspeccionado hoy
forms-save-next-stem = Guardar, tallo siguiente
forms-last-look = La última vez, { $date }: { $green } verdes, { $yellowing } amarillentas, { $brown } cafés.
forms-last-count = La última vez { $n }.
forms-date = Fecha
forms-spear = Flecha
forms-spear-hint = La hoja más joven, aún cerrada, en lo alto de la corona.
forms-spear-firm = Firme
forms-spear-leaning = Inclinada
forms-spear-down = Caída
forms-spear-pulled = Sale al tirar
forms-spear-none = No se miró
forms-counts = Hojas en la palma
forms-counts-hint = Cuente antes de quitar nada. Deje vacío lo que no se contó: no es lo mismo que ninguna.
forms-green = Verdes
forms-green-hint = Del todo verdes; la flecha no se cuenta.
forms-yellowing = Amarillentas
forms-yellowing-hint = Con algo de tejido amarillo o muerto, no muertas del todo.
forms-brown = Cafés
forms-brown-hint = Muertas del todo, aún en la palma.
forms-new_leaves = Nuevas desde la flecha marcada
forms-new_leaves-hint = Solo si la última vez se marcó una flecha.
forms-removed_green = Verdes quitadas
forms-removed_green-hint = Después del conteo, el mismo día.
forms-removed_yellowing = Amarillentas quitadas
forms-removed_yellowing-hint = Después del conteo, el mismo día.
forms-removed_brown = Cafés quitadas
forms-removed_brown-hint = Después del conteo, el mismo día.
forms-not-counted = sin contar
forms-none = Cero
forms-clear = Borrar
forms-one-less = Una menos
forms-one-more = Una más
forms-taken = Quitadas después de contar
forms-taken-hint = Lo que la cuadrilla quitó ese día, después de contar las hojas.
forms-spirals = Hallar la hoja marcada por su espiral
forms-spirals-how = Las hojas están en ocho espirales. Indique en qué espiral está ahora la hoja marcada y qué lugar ocupa en ella desde arriba: con eso se cuentan las hojas nuevas.
forms-spirals-source = La cuenta por ocho espirales es la de la palma aceitera (manual de campo); compruebe una vez que su palma tiene ocho.
forms-spirals-fill = Anotar la cuenta
forms-spirals-up = La hoja marcada no puede estar más arriba que cuando se marcó.
forms-spirals-done = Anotado en «Nuevas desde la flecha marcada».
forms-spiral = Espiral (1 a 8)
forms-place = Lugar desde arriba
forms-marked = Su número al marcarla
forms-marked-hint = 1 es la hoja abierta más joven, 0 la flecha.
forms-clock = Hoja viva más baja, según el reloj
forms-clock-hint = Toque la esfera donde apunta la hoja viva más baja: las 12 es hacia arriba, las 3 y las 9 a nivel.
forms-clock_left = Izquierda
forms-clock_right = Derecha
forms-clock-none = sin leer
forms-clock-higher = Un cuarto más arriba
forms-clock-lower = Un cuarto más abajo
forms-notes = Notas
forms-withdraw = Retirar esta inspección
forms-withdraw-hint = Para una que no se hizo o que se hizo en otra palma. Queda en el historial, pero ya no cuenta.
forms-why = Por qué

## Palma

forms-new-title = Registrar una palma
forms-edit-title = Editar { $tag }
forms-palm-nav = Más sobre esta palma
forms-part-what = Qué es
forms-part-when = Cuándo
forms-part-where = Dónde está
forms-part-own = Sus propias cifras de la corona
forms-part-own-hint = Si las conoce para esta palma, reemplazan en todas partes las cifras de la especie y se marcan como suyas.
forms-tag = Etiqueta
forms-tag-hint = Su propia marca en la palma; ninguna otra puede llevarla.
forms-species = Especie
forms-species-hint = Nombre botánico, o uno en inglés que sea de una sola especie.
forms-site = Sitio
forms-stems = Tallos
forms-planted_on = Plantada el
forms-moved_on = Sacada y trasladada el
forms-last_cleaned_on = Última vez que se quitaron todas las hojas muertas
forms-trunk_height = Altura del tronco
forms-trunk_height-hint = Del suelo a la base de la corona. Se puede escribir otra unidad tras la cifra: 12 ft 6 in, 3,8 m.
forms-wires = Cable más cercano a la corona
forms-wires-hint = Conductor aéreo de cualquier clase. Déjelo vacío si no hay o si no lo sabe.
forms-wires-caution = Calcúlelo desde el suelo. Nunca mida hacia un cable con una pértiga o una cinta.
forms-in-metres = m
forms-in-feet = ft
forms-over = Está sobre
forms-over-hint = Lo que hay debajo: camino, estacionamiento, piscina.
forms-lat = Latitud
forms-lat-hint = Grados decimales, norte positivo.
forms-lon = Longitud
forms-lon-hint = Grados decimales, este positivo.
forms-locate = Usar la posición de este aparato
forms-locate-failed = El aparato no dio su posición.
forms-full_crown = Hojas vivas de una corona llena
forms-fronds_per_year = Hojas que hace al año

## Esperas y baja

forms-holds = Esperas
forms-holds-title = Esperas de { $tag }
forms-holds-what = Mientras una palma está en espera, nadie la corta.
forms-hold-set = Poner en espera
forms-hold-reason = Motivo
forms-hold-reason-keeper = Motivo propio (dígalo en la nota)
forms-hold-reason-nest = Nido o murciélagos en la corona
forms-hold-reason-wilt-suspect = Sospecha de marchitez
forms-hold-reason-spear = Flecha inclinada, caída o suelta
forms-hold-reason-wires = Demasiado cerca de cables
forms-hold-since = Desde el { $date }.
forms-hold-until = Hasta el { $date }.
forms-hold-over = Esa fecha ya pasó: ya no vale.
forms-until = Termina por sí sola después del
forms-until-hint = Déjelo vacío si vale hasta que alguien la levante.
forms-note = Nota
forms-lift = Levantar esta espera
forms-lift-note = Por qué se puede levantar
forms-remove = Quitar del registro
forms-remove-title = Quitar { $tag } del registro
forms-remove-what = Para una palma talada, vendida o registrada por error. Su historial queda en el libro; su etiqueta queda libre.

## Archivos de entrada

forms-import-what = Traiga una lista de palmas, sitios o cuadrillas, inspecciones o traslados de palmas ya registradas, o el tiempo. Primero verá lo que se tomaría; nada se anota hasta que usted lo diga.
forms-import-file = Archivo CSV
forms-import-file-hint = Palmas, inspecciones, traslados, tiempo, sitios o cuadrillas; se sabe por sus columnas. Hasta 64 MB.
forms-import-encoding = Codificación
forms-import-utf8 = UTF-8 (lo habitual)
forms-import-look = Revisarlo
forms-import-columns = Columnas
forms-import-columns-palms = Palmas: hacen falta tag y species; lo demás se puede omitir.
forms-import-columns-inspections = Inspecciones: hacen falta tag, date, green, yellowing y brown; lo demás se puede omitir.
forms-import-columns-hint = Fechas como 2026-03-02, longitudes en metros. Una celda vacía significa desconocido. Las columnas con otros nombres se conservan con la fila.
forms-import-no-file = Elija primero un archivo.
forms-import-too-large = No se pudo tomar el archivo: pesa más de 64 MB o no llegó entero. Los más grandes entran por la línea de comandos: spearleaf import.
forms-import-gone = Esta vista previa ya no se conserva; nada de ella se anotó salvo que se le dijera. Elija el archivo otra vez.
forms-import-neither = No es una lista de palmas, de inspecciones ni de traslados, ni del tiempo, de sitios o de cuadrillas: las palmas tienen una columna «species», las inspecciones una columna «green», los traslados una columna «dug_on», el tiempo una columna «date» y otra como «tmax_c» o «rain_mm», los sitios «site» y no «tag», las cuadrillas «crew».
forms-import-preview = Lo que se tomaría
forms-import-is-palms = Una lista de palmas.
forms-import-is-inspections = Una lista de inspecciones.
forms-import-is-unknown = No se pudo saber qué contiene este archivo.
forms-import-will = { $n ->
    [0] No se anotaría ninguna fila
    [one] Se anotaría { $text } fila
   *[other] Se anotarían { $text } filas
}
forms-import-already = { $n ->
    [one] { $text } fila dice lo que ya dice el registro
   *[other] { $text } filas dicen lo que ya dice el registro
}
forms-import-refused = { $n ->
    [0] No se rechaza nada
    [one] Se rechaza { $text }
   *[other] Se rechazan { $text }
}
forms-import-take = { $n ->
    [one] Anotar { $text } fila
   *[other] Anotar { $text } filas
}
forms-import-recorded = { $n ->
    [one] Se anotó { $text } fila.
   *[other] Se anotaron { $text } filas.
}
forms-import-more = { $n ->
    [one] … y { $text } más.
   *[other] … y { $text } más.
}
forms-import-nothing = No hay nada que anotar.
forms-import-other = Otro archivo
forms-import-failed = No se anotó nada: no se pudo escribir en el libro, o el registro cambió entretanto. Inténtelo otra vez o revise el archivo de nuevo.
forms-import-refused-head = No se toma
forms-import-refused-what = Corrija estas filas en el archivo de filas rechazadas y tráigalo: nada se pierde y nada se toma dos veces.
forms-import-refused-file = Filas rechazadas en un archivo
forms-import-remarks = Observaciones
forms-import-first-rows = Las primeras filas que se anotarían
forms-import-done = Anotado
forms-import-line = Línea { $line }:
forms-import-line-column = Línea { $line }, { $column }:
forms-import-stems = { $n } tallos
forms-import-look-counts = { $green } verdes, { $yellowing } amarillentas, { $brown } cafés
forms-import-species-nearest = { $times ->
    [one] «{ $found }» no es un nombre de especie conocido aquí. Los más parecidos: { $nearest }. Se conserva como está escrito.
   *[other] «{ $found }» ({ $times } filas) no es un nombre de especie conocido aquí. Los más parecidos: { $nearest }. Se conserva como está escrito.
}
forms-import-species-unknown = { $times ->
    [one] «{ $found }» no es un nombre de especie conocido aquí. Se conserva como está escrito y se lee con una suposición amplia.
   *[other] «{ $found }» ({ $times } filas) no es un nombre de especie conocido aquí. Se conserva como está escrito y se lee con una suposición amplia.
}

## Lo que falla en un campo

form-count-not-whole = «{ $found }» no es un número entero. Déjelo vacío si no se contó.
form-count-too-large = Aquí caben como mucho { $most }.
form-number-not-read = «{ $found }» no es un número.
form-number-out-of-range = Se espera una cifra de { $least } a { $most }.
form-length-not-read = «{ $found }» no es una longitud. Escriba por ejemplo 3,8 m o 12 ft 6 in.
form-length-out-of-range = Se espera una longitud de 0 a { $most }.
form-date-missing = Falta la fecha.
form-date-not-read = «{ $found }» no es una fecha: se espera año-mes-día, como 2026-03-02.
form-date-too-old = Es anterior a 1800. Revise el año.
form-date-in-future = Es posterior a hoy ({ $today }). Lo que aún no ha ocurrido no se puede anotar.
form-before-planting = Es anterior a la plantación de la palma ({ $planted }). Corrija la fecha aquí o en la palma.
form-clock-left = «{ $found }» no es una lectura del lado izquierdo: va de 6 a 12 en cuartos de hora.
form-clock-right = «{ $found }» no es una lectura del lado derecho: va de 12 por 3 hasta 6 en cuartos de hora.
form-stem-unknown = Se dio el tallo { $found }, pero la palma está registrada con { $stems ->
    [one] { $stems } tallo
   *[other] { $stems } tallos
}.
form-spear-unknown = «{ $found }» no dice nada de la flecha.
form-more-taken-than-counted = Se quitaron { $taken }, pero solo se contaron { $counted }.
form-nothing-noted = Aún no se ha anotado nada: cuente algo, mire la flecha o escriba una nota.
form-same-day = Este tallo ya se inspeccionó el { $date }. ¿Esta inspección la reemplaza?
form-count-jump = Ahora { $live } hojas vivas, { $before } el { $date }. ¿Es correcto?
form-green-unusual = { $count } hojas verdes son más que las de cualquier corona conocida. ¿Es correcto?
form-corrects-nothing = La inspección que se quería corregir ya no está.
form-spiral-missing = Indique la espiral y el lugar.
form-spiral-moved-up = Ese lugar está por encima de la hoja { $marked }, y una hoja nunca sube. Mire otra vez la espiral y el lugar.
form-changed-meanwhile = Esta palma se cambió en otro lugar después de abrir este formulario. Al guardar, lo que dice aquí toma su lugar. ¿Es correcto?
form-tag-missing = Falta la etiqueta.
form-tag-unfit = Una etiqueta es una línea de 64 caracteres como mucho.
form-tag-taken = Otra palma lleva la etiqueta «{ $tag }».
form-species-missing = Falta la especie. Si no la conoce, escriba lo que sepa: «Phoenix», «palma de abanico».
form-species-nearest = «{ $found }» no es un nombre conocido. ¿Es uno de estos: { $nearest }? O consérvelo como lo escribió:
form-species-unknown = «{ $found }» no es un nombre conocido. ¿Conservarlo como lo escribió? La palma se lee entonces con una suposición amplia.
form-stems-none = Una palma tiene al menos un tallo.
form-stems-fewer = El tallo { $stem } tiene inspecciones. ¿Tiene la palma menos tallos de todos modos?
form-position-half = La latitud y la longitud van juntas: dé las dos o ninguna.
form-hold-reason-missing = Elija un motivo.
form-hold-note-missing = Diga cuál es el motivo.
form-hold-already-over = Es anterior a hoy ({ $today }): la espera ya habría terminado.
form-lift-note-missing = Diga por qué se puede levantar.
form-why-missing = Diga por qué.
