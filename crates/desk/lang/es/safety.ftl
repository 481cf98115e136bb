### Precauciones; cada una termina con la frase de que primero están el reglamento, la compañía eléctrica, el manual y la gente con licencia

caution-wires = Cables a { $wires }. Todo cable tiene corriente. Manténgase usted, las herramientas, las pértigas y las hojas cortadas a { $keep } por lo menos; una pértiga mojada o de metal conduce. { common-closing }
caution-wires-voltage = Cables a { $wires }, voltaje desconocido. Nadie trabaja antes de que la compañía eléctrica diga el voltaje: { $keep } por lo menos hasta 50 kV, y hasta { $most } por encima. Todo cable tiene corriente, y una pértiga mojada o de metal conduce. { common-closing }
caution-wires-not-noted = Nadie ha anotado si hay cables cerca. Mire hacia arriba antes de trabajar y mantenga todo a { $keep } por lo menos de cualquier cable. Todo cable tiene corriente. { common-closing }
caution-skirt = Falda de hojas muertas ({ $n }). Nunca trepe ni se pare debajo para cortar hacia arriba: se desliza como un anillo y asfixia. Solo desde arriba, desde un elevador, de arriba hacia abajo, con gente capacitada y un plan de rescate. { common-closing }
caution-skirt-over = Falda de hojas muertas ({ $n }) sobre: { $over }. Cierre primero el paso debajo. Nunca trepe ni se pare debajo para cortar hacia arriba: se desliza como un anillo y asfixia. Solo desde arriba, desde un elevador, de arriba hacia abajo, con gente capacitada y un plan de rescate. { common-closing }
caution-drop-zone = Caen hojas. Nadie se para debajo del corte; quien corta se para a un lado, uno solo por zona. No se encontró un radio publicado: lo común es dejar libre el radio de la corona más el largo de una hoja. { common-closing }
caution-drop-zone-radius = Caen hojas. Nadie se para debajo del corte; quien corta se para a un lado, uno solo por zona. No se encontró un radio publicado: lo común es dejar libre el radio de la corona más el largo de una hoja, aquí unos { $radius } (supuesto). { common-closing }
caution-drop-zone-over = Debajo de la palma: { $over }. Ciérrelo antes del primer corte. { common-closing }
caution-spines = Las espinas atraviesan guantes y llegan a las articulaciones. Corte primero las espinas, use guantes a prueba de pinchazos y vaya al médico si se pincha cerca de una articulación. { common-closing }
caution-teeth = Los peciolos tienen dientes. Use guantes gruesos y manga larga. { common-closing }
caution-fruit = Cae fruta. Baje primero la fruta pesada, sin nadie debajo. { common-closing }
caution-lift = En el elevador use arnés y línea, sujetos al anclaje del propio brazo, nunca a la palma. La placa de la máquina pone el límite de viento: lo común es 12.5 m/s (28 mph) al aire libre, y nada de viento para máquinas de interior. { common-closing }
caution-ladder = No se usa sierra desde una escalera apoyada en el tronco. Use una pértiga desde el suelo o un elevador. Si hace falta escalera para otra cosa, el pie va separado un cuarto de su largo de trabajo, y nadie se para en los tres peldaños de arriba. { common-closing }
caution-eyes = Use protección para los ojos en cada corte. { common-closing }
