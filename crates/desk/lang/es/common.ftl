### Palabras de todas las páginas

product = Spearleaf

## Cantidades

measure-range = de { $low } a { $high }
measure-up-to = hasta { $n }
measure-percent = { $n } %
measure-percent-under = menos del { $n } %
measure-percent-over = más del { $n } %
measure-date = { $day } { $month } { $year }
measure-date-us = { $day } { $month } { $year }
measure-days = { $n ->
    [one] { $text } día
   *[other] { $text } días
}
measure-weeks = { $n ->
    [one] { $text } semana
   *[other] { $text } semanas
}
measure-months = { $n ->
    [one] { $text } mes
   *[other] { $text } meses
}
measure-years = { $n ->
    [one] { $text } año
   *[other] { $text } años
}
measure-month-1 = ene
measure-month-2 = feb
measure-month-3 = mar
measure-month-4 = abr
measure-month-5 = may
measure-month-6 = jun
measure-month-7 = jul
measure-month-8 = ago
measure-month-9 = sept
measure-month-10 = oct
measure-month-11 = nov
measure-month-12 = dic

## Todas las páginas

common-demo = Demostración: nada aquí es real
common-skip = Ir al contenido
common-nav = Principal
common-more = Más páginas
common-today = Hoy
common-palms = Palmas
common-import = Importar
common-sources = Fuentes
common-about = Precauciones
common-settings = Idioma y unidades
common-language = Idioma
common-language-en = English
common-language-es = Español
common-units = Unidades
common-units-metric = Métricas (m, cm, °C)
common-units-us = De EE. UU. (ft, in, °F)
common-units-metric-short = m
common-units-us-short = ft
common-save = Guardar
common-unknown = desconocido
common-yes = sí
common-no = no
common-previous = Anterior
common-next = Más
common-closing = Primero están el reglamento local, la compañía eléctrica, el manual de la máquina y las personas con licencia o certificado.

## Errores

error-not-found = No hay nada en esta dirección.
error-not-found-palm = Ninguna palma con la etiqueta «{ $tag }» está en el registro.
error-broken = Esto no funcionó. Lo registrado está a salvo.
error-foreign = Este formulario vino de otro sitio y no se aceptó.
error-back = Volver a Hoy
