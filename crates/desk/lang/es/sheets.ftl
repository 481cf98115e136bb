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

## Cláusulas para empresas externas

sheet-sources = Fuentes
clauses-title = Cláusulas para trabajos en palmas
clauses-notice = Esta hoja no es asesoría legal. Primero están la ley local, los permisos y las órdenes de la autoridad fitosanitaria, y también el reglamento local, la compañía eléctrica, el manual de la máquina y las personas con licencia o certificado. Que la lea un abogado antes de firmarla.
clauses-lead = La empresa nombrada abajo trabaja en las palmas del responsable nombrado abajo según estas cláusulas. Los números entre corchetes remiten a las fuentes del final. Donde las fuentes difieren, la cláusula es la más estricta; lo que dicen las otras figura debajo en letra pequeña.
clauses-keeper = Responsable de las palmas (nombre)
clauses-firm = Empresa (nombre)
clauses-site = Terreno y palmas
clauses-period = Desde (fecha) hasta (fecha)
clauses-person = Persona a cargo en el terreno
clauses-licence = Licencia o certificado, número
clauses-cut-title = Qué se corta y qué se queda
clauses-level = La línea a nivel pasa por la base de la copa, de las 9 a las 3 del reloj. No se corta ninguna fronda viva que esté en ella o por encima: el límite es «nada en las 9–3 ni más arriba», sin importar lo que se cortó otros años.
clauses-stub-title = Cómo se corta
clauses-spikes-title = Espuelas
clauses-spikes-breach = Quien suba a una palma con espuelas se retira del terreno, y la palma se anota como herida, con fecha y nombre.
clauses-blades-title = Hojas de corte limpias
clauses-clean-each = Cada hoja de corte se limpia antes de la primera palma del día y de nuevo después de cada palma, antes de tocar la siguiente: sea cual sea la especie y por sanas que se vean las palmas.
clauses-label-first = La etiqueta del producto y su hoja de seguridad están por encima de estas cláusulas. Junto al baño se usan guantes y protección ocular; el baño queda donde nadie beba de él y se desecha como indica la etiqueta.
clauses-baths = Limpiezas aceptadas, con la hoja cepillada antes y todo el filo bajo el líquido
clauses-baths-other = Cualquier otra limpieza se acuerda por escrito antes de empezar. Un paño o un rociado que se seca antes de los minutos de la tabla no es una limpieza.
clauses-bath-agent = Producto y cómo se mezcla
clauses-bath-strength = Producto en el baño
clauses-bath-minutes = Contacto
clauses-bath-caution = Cuidado
clauses-bath-at-least = al menos { $n } min
clauses-holds-title = Palmas en espera
clauses-holds = Una palma que el responsable ha puesto en espera no se corta, no se trepa ni se limpia, nadie y por ningún motivo, hasta que el responsable levante la espera por escrito. El responsable entrega la lista de palmas en espera antes de cada visita.
clauses-report = Una flecha inclinada, caída o que se desprende, un cuerpo fructífero en el tronco, frondas que mueren por un lado, un nido, murciélagos o abejas: parar en esa palma, no cortar nada más, limpiar la hoja y avisar al responsable el mismo día.
clauses-safety-title = Cables y personas
clauses-wires = Más cerca de una línea aérea que la distancia de abajo no trabaja nadie salvo trabajadores calificados de despeje de líneas, y solo tras avisar a la compañía eléctrica. Si no se conoce la tensión, nadie trabaja allí hasta que la compañía responda.
clauses-trained = Quien trepa, usa una plataforma o corta palmas con falda de frondas muertas está formado para ello y tiene la licencia o el certificado que pida la ley; la empresa muestra los papeles si se le piden.
clauses-hand-over-title = Qué se anota y se entrega
clauses-log-each-cut = De cada palma: fecha, palma y tallo, la marca de la hoja de corte, inicio y fin del corte, qué se quitó (frondas verdes, medio muertas, muertas, tallos de flor y fruto), quién cortó.
clauses-log-each-cleaning = De cada limpieza: la marca de la hoja, producto y concentración, cuándo se mezcló el baño, minutos de contacto, cepillada o no, quién limpió.
clauses-log-when = El registro se entrega el mismo día del trabajo, en papel o en archivo. Si algo no se hizo o no se anotó, el registro lo dice: vale más un hueco que una suposición.
clauses-blades-marked = Cada hoja de corte lleva una marca que no cambia. La hoja que también corta palmas en otros sitios se nombra, y se limpia antes de entrar al terreno y antes de salir.
clauses-signature = De acuerdo
clauses-sign-keeper = Responsable: fecha, nombre, firma
clauses-sign-firm = Empresa: fecha, nombre, firma
clauses-log-title = Registro
clauses-log-date = Fecha
clauses-log-palm = Palma, tallo
clauses-log-blade = Hoja
clauses-log-start = Inicio
clauses-log-end = Fin
clauses-log-off = Se quitó
clauses-log-bath = Baño, concentración
clauses-log-minutes = Minutos en él
