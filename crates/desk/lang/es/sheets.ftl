### Hojas de papel: etiquetas, informe de rastreo, cláusulas

## Todas las hojas

sheet-printed = impreso el { $date }
sheet-demo = Demostración: nada aquí es real

## Por qué no hay hoja

sheet-empty = No hay nada que imprimir.
sheet-too-many = { $found } etiquetas son más de las que admite un archivo ({ $limit }). Elija menos.
sheet-base-bad = «{ $base }» no es una dirección que un teléfono pueda abrir. Empieza por http:// o https:// y nombra la máquina.
sheet-too-long = La dirección de «{ $tag }» es demasiado larga para un código que un teléfono pueda leer. Use una dirección o una etiqueta más corta.
sheet-broken = No se pudo componer la hoja: { $why }.

## Etiquetas

sheet-labels-title = Etiquetas
sheet-labels-about = Escanee con la cámara del teléfono: la página se abre en { $base }
sheet-kit = Juego: { $kit }
sheet-blade-hand-saw = serrucho
sheet-blade-pole-saw = sierra de pértiga
sheet-blade-loppers = tijera de dos manos
sheet-blade-pole-loppers = tijera de pértiga
sheet-blade-pole-sickle = hoz o cincel de pértiga
sheet-blade-chain-saw = motosierra
sheet-blade-reciprocating-saw = sierra de sable
sheet-blade-knife = cuchillo o machete
