### La línea de órdenes y los hallazgos de la valoración de archivos enteros

## Nombres de especies

species-missing = No se indica la especie; se usa la creencia previa más amplia.
species-other-name = «{ $found }» se toma como { $name }.
species-unknown = «{ $found }» no es un nombre de palma conocido. Se usa la creencia previa más amplia; corrija el nombre.
species-unknown-near = «{ $found }» no es un nombre de palma conocido. ¿Quiso decir { $offer }? Hasta que se corrija se usa la creencia previa amplia.

## Valoración

assess-decline-probable = Es probable un decaimiento ({ $share }). Hágala revisar antes de cortar nada.
assess-loss-beyond-ordinary = El tallo { $stem } ha perdido { $lost } desde el { $since }; una pérdida ordinaria apenas pasaría de { $most }. Llame a quien conozca las enfermedades de las palmas.
assess-spear-leaning = La flecha del tallo { $stem } estaba inclinada el { $date }. Mírela de inmediato; no corte nada.
assess-spear-down = La flecha del tallo { $stem } estaba caída el { $date }. Mírela de inmediato; no corte nada.
assess-spear-pulled = La flecha del tallo { $stem } salió al tirar de ella el { $date }. Mírela de inmediato; no corte nada.
assess-later-looks = { $count ->
    [one] No se tuvo en cuenta { $count } inspección posterior al día de la lectura.
   *[other] No se tuvieron en cuenta { $count } inspecciones posteriores al día de la lectura.
}
assess-never-looked-at = Todavía no hay ninguna inspección; la lectura dice lo que se cree de cualquier palma así.
assess-no-climate = El lugar «{ $site }» no está en el archivo de clima; se toma para él el lugar conocido más cercano o, si no hay, la estación estándar.

## Habla de la terminal

cli-severity-info = nota
cli-severity-caution = precaución
cli-severity-act = necesita a una persona
cli-severity-refuse = rechazado
cli-of-palm = { $tag }: { $severity }: { $what }
cli-of-file = { $file }: { $what }
cli-more = … y { $count } más
cli-nothing-taken = { $file }: { $count ->
    [one] se rechazó { $count } fila
   *[other] se rechazaron { $count } filas
}; no se tomó nada. Corrija el archivo o tome las filas buenas con --skip-bad.
cli-gave-up = { $file }: la lectura paró después de { $count } filas rechazadas; no se tomó nada.
cli-refused-written = { $file }: { $count ->
    [one] { $count } fila rechazada escrita
   *[other] { $count } filas rechazadas escritas
} en { $to }.
cli-taken = { $file }: { $taken } tomadas, { $already } ya estaban, { $refused } rechazadas.
cli-assessed = { $palms ->
    [one] { $palms } palma leída
   *[other] { $palms } palmas leídas
} a { $date }: { $ageing } envejecimiento ordinario, { $move } por la mudanza, { $hunger } hambre, { $decline } decaimiento, { $unseen } sin ninguna inspección. { $person ->
    [0] Ninguna necesita a una persona.
    [one] { $person } necesita a una persona.
   *[other] { $person } necesitan a una persona.
}
cli-written = Escrito: { $file }
cli-planned = { $palms ->
    [one] Planes de corte para { $palms } palma
   *[other] Planes de corte para { $palms } palmas
} el { $date }; { $holds ->
    [0] nada está en espera.
    [one] { $holds } tallo está en espera.
   *[other] { $holds } tallos están en espera.
}
cli-judged = { $rows ->
    [one] { $rows } fila juzgada
   *[other] { $rows } filas juzgadas
}; { $holds ->
    [0] nada está en espera.
    [one] en { $holds } nadie corta hasta que se aclare.
   *[other] en { $holds } nadie corta hasta que se aclare.
}
cli-judged-hold = { $tag }: nadie corta hasta que se aclare: { $because } ({ $share })
cli-no-such-tag = No hay ninguna palma con la etiqueta «{ $tag }» en { $file }.
cli-asked-allowed = { $tag }, tallo { $stem }: se puede quitar todo ({ $asked }).
cli-asked-partly = { $tag }, tallo { $stem }: de { $asked }, solo se puede quitar { $allowed }.
cli-asked-refused = { $tag }, tallo { $stem }: rechazado ({ $asked }). Permitido: { $allowed }.
cli-cut = { $green } verdes, { $yellowing } amarillentas, { $brown } secas
cli-recovery = De vuelta a la línea de nivel en { $level }, a la corona completa en { $full }; { $months } meses-hoja de hoja perdidos en dos años.
cli-span = de { $low } a { $high }
cli-beyond = más de diez años
cli-serving = Sirviendo { $folder } en { $address } (pare con Ctrl-C)
cli-demo = Es una demostración: lugares, personas y palmas son inventados.
cli-not-a-demo = { $folder } no está vacía y no contiene la demostración. Indique una carpeta nueva o vacía, o sírvala con: spearleaf serve { $folder }
cli-open-to-all = Otros de la red pueden llegar a esta dirección y no hay contraseña. Úsela solo en una red de confianza.
cli-kept = { $count ->
    [one] { $count } asiento
   *[other] { $count } asientos
} en { $file }
cli-restored = { $count ->
    [one] { $count } asiento restaurado
   *[other] { $count } asientos restaurados
} en { $folder }
cli-whole = El libro está íntegro: { $count ->
    [one] { $count } asiento
   *[other] { $count } asientos
}; cada eslabón de la cadena se mantiene.
cli-sheet-group = --kit elige hojas de corte y --site elige palmas.
cli-broken = El libro está roto: { $what }
cli-rounds-kept = { $n ->
    [one] { $n } ronda anotada.
   *[other] { $n } rondas anotadas.
}
cli-no-round = No hay ronda prevista para el { $date }, o ninguna de esa cuadrilla. Vea spearleaf rounds --help.
cli-which-round = El { $date } salen varias cuadrillas: { $crews }. Diga cuál con --crew.
