### Archivos de hojas de corte, cortes y limpiezas

log-no-time = Falta la hora: se esperaban fecha y hora con su diferencia horaria, como 2026-03-02T09:30:00-05:00.
log-bad-time = «{ $found }» no es una hora: se esperaban fecha y hora con su diferencia horaria, como 2026-03-02T09:30:00-05:00.
log-no-zone = «{ $found }» no dice en qué huso horario. Añada la diferencia, como { $found }-05:00, o Z para UTC.
log-no-blade = Falta la etiqueta de la hoja de corte.
log-bad-kind = «{ $found }» no es una clase de hoja de corte; se esperaba una de estas: { $words }.
log-yes-or-no = Se encontró «{ $found }»; se esperaba yes o no, o nada si no se sabe.
log-row-twice = La misma fila está ya en la línea { $first }; cuenta una vez.
log-blade-registered = Hay una hoja de corte registrada con la etiqueta «{ $found }» y otra descripción. Cámbiela en su formulario, o póngala antes fuera de servicio.
log-blade-was-unknown = La hoja de corte «{ $blade }» no estaba en el registro. Queda registrada, sin clase conocida. Revise la etiqueta y diga de qué clase es.
