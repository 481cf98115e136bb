### Rastreos: filas de contactos que no se pueden tomar, qué hay que saber de un registro o de un rastreo, y lo que dice `trace`

## Filas de touches.csv

touches-bad-time = «{ $found }» no es una hora: se esperaba fecha, hora y zona, como 2026-03-02T09:30:00+01:00 o 2026-03-02T08:30:00Z.
touches-no-zone = «{ $found }» no tiene zona, y nadie puede decir cuál de dos cortes fue primero. Escriba detrás la diferencia horaria, como +01:00, o Z para UTC.
touches-no-blade = Falta la hoja. Cada fila necesita la etiqueta de su hoja.
touches-bad-what = «{ $found }» no es ni cut ni clean.
touches-cut-cleaned = Un corte no lleva nada en «{ $column }», pero se encontró «{ $found }». Escriba la limpieza en una fila propia.

## El registro

tracing-doubled-rows = { $count ->
    [one] { $count } fila está dos veces
   *[other] { $count } filas están dos veces
} (mismo segundo, hoja y acción); se cuenta una vez.
tracing-no-agent = { $count ->
    [one] { $count } limpieza no nombra el producto: nadie puede decir qué valió.
   *[other] { $count } limpiezas no nombran el producto: nadie puede decir qué valieron.
} El contacto pasa en el conjunto posible.
tracing-strange-palms = { $count ->
    [one] { $count } palma del registro no está entre las palmas: no se conoce su especie, y transmite la enfermedad en el conjunto posible.
   *[other] { $count } palmas del registro no están entre las palmas: no se conoce su especie, y transmiten la enfermedad en el conjunto posible.
}
tracing-ties = { $count ->
    [one] Una hoja tiene un corte y otra anotación
   *[other] { $count } veces una hoja tiene un corte y otra anotación
} en el mismo segundo. Nadie sabe cuál fue primero: tales contactos son posibles, nunca seguros.
tracing-overlap = Hoja { $blade }: { $count ->
    [one] un corte empezó
   *[other] { $count } cortes empezaron
} antes de que terminara la anotación anterior. Nadie sabe cuál fue primero: tales contactos son posibles, nunca seguros. Corrija las horas si las conoce mejor.
tracing-cut-strange = Hoja { $blade }: { $count ->
    [one] un corte es de una palma
   *[other] { $count } cortes son de palmas
} que nadie registró. Queda fuera hasta que se registre la palma.
tracing-lent = La hoja { $blade } se prestó { $count ->
    [one] una vez
   *[other] { $count } veces
}. Lo que cortó en otras manos no está en el registro.
tracing-later-rows = { $count ->
    [one] { $count } fila posterior al momento del rastreo no se contó.
   *[other] { $count } filas posteriores al momento del rastreo no se contaron.
}

## El rastreo

tracing-not-on-blades = No se sabe que esta enfermedad viaje en las hojas de corte. Lo que cortaron no dice nada; vigile en su lugar los hospedantes cercanos.
tracing-spread-unknown = No se sabe cómo se propaga esta enfermedad. Se dan las dos listas: las palmas que compartieron hoja y los hospedantes cercanos.
tracing-not-named = No se nombra ninguna enfermedad: cada palma cuenta como hospedante que nadie conoce, y una limpieza debe servir contra todas.
tracing-no-shortest = No se conoce el plazo más corto de la infección al primer síntoma. El conjunto posible toma la palma expuesta por infecciosa enseguida; el conjunto seguro termina en la primera generación. Indique --latency-days si lo sabe mejor.
tracing-no-longest = No se conoce el plazo más largo de la infección al primer síntoma. La vigilancia no tiene fin, y un caso puede haber sido infeccioso desde que empieza el registro. Indique --latency-days si lo sabe mejor.
tracing-case-not-cut = El registro no tiene ningún corte de { $tag }. Puede que una hoja la cortara de todos modos: pregunte a quienes trabajaron allí.
tracing-no-such-palm = No hay ninguna palma con la etiqueta «{ $tag }», ni en el registro ni entre las palmas.
tracing-no-such-disorder = No hay ninguna enfermedad «{ $found }». Se conocen: { $known }.
tracing-too-large = El registro es demasiado grande para un rastreo: { $why }.

## Lo que se dice

cli-traced = { $exposed ->
    [0] Ninguna palma está expuesta
    [one] { $exposed } palma está expuesta
   *[other] { $exposed } palmas están expuestas
} ({ $certain } con seguridad, { $possible } tal vez), { $sources ->
    [0] ningún origen posible
    [one] { $sources } origen posible
   *[other] { $sources } orígenes posibles
}, { $nearby } por vigilar cerca, a { $date }; { $cuts } cortes y { $cleanings } limpiezas en el registro.
