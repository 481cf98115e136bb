### Archivos que entran: por qué un archivo o una fila no se toma, y observaciones

intake-where-file = { $file }
intake-where-line = { $file }, línea { $line }
intake-where-cell = { $file }, línea { $line }, columna { $column }
intake-refused = { $where }: { $what }

## Archivos enteros

intake-empty-file = El archivo está vacío. Se esperaba una línea con los nombres de las columnas y al menos una fila.
intake-utf16 = Es texto UTF-16; se esperaba UTF-8. Guárdelo como «CSV UTF-8» o indique --encoding utf-16le (o utf-16be).
intake-not-utf8 = El byte { $byte } de la línea { $line } (después de «{ $before }») no es texto UTF-8. Guarde el archivo como «CSV UTF-8» o indique su codificación, por ejemplo --encoding windows-1252.
intake-not-text = No es un archivo de texto: contiene caracteres de control. Se esperaba un archivo CSV.
intake-row-too-long = Hay una fila de más de { $limit } bytes. O bien no es un archivo CSV, o unas comillas de esta fila nunca se cierran.
intake-too-many-columns = Hay más de { $limit } columnas. No es un archivo de palmas ni de inspecciones.
intake-unreadable = No se pudo leer el archivo: { $why }
intake-doubled-column = La columna «{ $column }» está dos veces. Deje una y quite o cambie el nombre de la otra.
intake-missing-columns = Faltan columnas: { $columns }. Se encontró: { $found }.
intake-missing-columns-near = Faltan columnas: { $columns }. Se encontró: { $found }. ¿Es «{ $near }» una errata?

## Filas

intake-too-many-cells = La fila tiene { $have } celdas y el encabezado { $want }. Una celda con coma necesita comillas.
intake-too-few-cells = La fila tiene { $have } celdas y el encabezado { $want }. Deje vacías las celdas desconocidas, pero conserve sus comas.
intake-no-tag = Falta la etiqueta. Cada fila necesita la etiqueta de su palma.
intake-bad-tag = «{ $found }» no es una etiqueta: se esperaba una sola línea de 64 caracteres como máximo.
intake-doubled-tag = La etiqueta «{ $found }» ya está en la línea { $first }. Cada palma necesita su propia etiqueta.
intake-text-too-long = El texto tiene más de { $limit } caracteres. Acórtelo.
intake-bad-date = «{ $found }» no es una fecha: se esperaba año-mes-día, como 2026-03-02.
intake-bad-date-offer = «{ $found }» no es una fecha: se esperaba año-mes-día. ¿Quiso decir { $offer }?
intake-date-too-old = «{ $found }» es anterior a 1800. Revise el año.
intake-date-in-future = { $found } es posterior a hoy ({ $today }). No se puede anotar lo que aún no ha ocurrido.
intake-not-whole = «{ $found }» no es un número entero. Deje la celda vacía si no se contó.
intake-negative = «{ $found }» es menor que cero. Una cuenta empieza en 0; deje la celda vacía si no se contó.
intake-too-many = «{ $found }» es más de { $limit }. Revise la cifra.
intake-not-number = «{ $found }» no es un número. Escriba cifras con punto decimal y sin unidad.
intake-decimal-comma = «{ $found }» lleva coma. Escriba punto decimal y ninguna marca de millares, como 3.5.
intake-out-of-range = «{ $found }» está fuera del intervalo de { $low } a { $high }. Revise la cifra y su unidad.
intake-no-stem = No puede haber «{ $found }» tallos: una palma tiene al menos uno. Deje la celda vacía si solo hay uno.
intake-half-position = La latitud y la longitud van juntas: escriba las dos o ninguna.
intake-unknown-palm = No hay ninguna palma con la etiqueta «{ $found }».
intake-unknown-palm-near = No hay ninguna palma con la etiqueta «{ $found }». ¿Quiso decir «{ $offer }»?
intake-which-stem = La palma tiene { $stems } tallos; indique cuál se contó, de 1 a { $stems }.
intake-no-such-stem = Se encontró el tallo { $found }, pero la palma está registrada con { $stems ->
    [one] { $stems } tallo
   *[other] { $stems } tallos
}. Corrija el número aquí o el número de tallos de la palma.
intake-no-date = Falta la fecha. Cada inspección necesita su día.
intake-before-planting = { $found } es anterior a la plantación de la palma ({ $planted }).
intake-bad-spear = «{ $found }» no dice nada de la flecha; se esperaba una de estas palabras: { $words }.
intake-bad-clock = «{ $found }» no es una lectura de reloj: se esperaban horas mayores que 0 y hasta 12, en cuartos, como 8.5.
intake-clock-side = «{ $found }» está en el otro lado de la esfera: el lado izquierdo va de 6 a 12; el derecho es 12 o de 0.25 a 6.
intake-more-off-than-on = Se quitaron { $found }, pero solo se contaron { $counted }.
intake-twice-a-day = Este tallo ya se inspeccionó el { $found } en la línea { $first }. Deje una de las dos filas.
intake-bad-month = «{ $found }» no es un mes: se esperaba un número de 1 a 12.
intake-doubled-month = El mes { $found } de este lugar ya está en la línea { $first }.
intake-tag-registered = El registro ya tiene una palma «{ $found }» descrita de otro modo. Cámbiela en su propia página o quite la fila.
intake-day-registered = El registro ya tiene otra inspección de este tallo el { $found }. Corríjala en su propia página o quite la fila.

## Observaciones

intake-unknown-column = La columna «{ $column }» no se conoce aquí; sus celdas se conservan tal como están.
intake-blank-rows = { $count ->
    [one] Se pasó por alto { $count } fila vacía.
   *[other] Se pasaron por alto { $count } filas vacías.
}
intake-separator = Las celdas están separadas por { $separator } en vez de coma; se aceptó.
intake-semicolon = punto y coma
intake-tab = tabulador
intake-out-of-order = { $count ->
    [one] { $count } inspección aparece después de otra posterior del mismo tallo; se ordenaron por fecha.
   *[other] { $count } inspecciones aparecen después de otra posterior del mismo tallo; se ordenaron por fecha.
}
intake-moved-long-before-planted = Se movió el { $moved }, pero se plantó el { $planted }, más de un año después. Revise las dos fechas.
intake-climate-incomplete = Al lugar «{ $site }» le falta la temperatura media de algún mes; se toma para él la estación estándar.
