### La lectura: explicaciones, pérdida, aviso, pronóstico, corona

## Cómo se sabe una cifra

basis-memory = de memoria, sin consultar
basis-assumed = supuesto
basis-practice = práctica común, sin fuente
basis-keeper = su propia cifra
basis-own = calculado con los conteos y el registro de esta palma

## Explicaciones

explanation-ageing = Envejecimiento normal
explanation-ageing-means = Nutrida y establecida: por cada hoja nueva muere una vieja.
explanation-move = El traslado
explanation-move-means = Arrancada y transportada: pierde hojas y crece despacio hasta recuperar las raíces.
explanation-hunger = Hambre
explanation-hunger-means = La falta de nutrientes acorta la vida de cada hoja; la corona queda rala.
explanation-decline = Decaimiento
explanation-decline-means = La palma se muere: una enfermedad, una plaga o la yema perdida.

likelihood-almost-certain = casi seguro
likelihood-very-likely = muy probable
likelihood-likely = probable
likelihood-open = abierto
likelihood-unlikely = poco probable
likelihood-very-unlikely = muy poco probable
likelihood-almost-ruled-out = casi descartado

reading-headline-none = Nadie ha contado todavía esta palma. Solo se puede decir lo usual en su especie.
reading-headline-ageing-sure = Envejecimiento normal: esta palma está como debe.
reading-headline-ageing-likely = Lo más probable es el envejecimiento normal.
reading-headline-ageing-open = Quizá envejecimiento normal; los conteos dejan abiertas otras explicaciones.
reading-headline-move-sure = El traslado explica la pérdida.
reading-headline-move-likely = Lo más probable es el traslado.
reading-headline-move-open = Quizá el traslado; los conteos dejan abiertas otras explicaciones.
reading-headline-hunger-sure = Esta palma tiene hambre.
reading-headline-hunger-likely = Lo más probable es el hambre.
reading-headline-hunger-open = Quizá hambre; los conteos dejan abiertas otras explicaciones.
reading-headline-decline-sure = Esta palma decae.
reading-headline-decline-likely = Lo más probable es un decaimiento.
reading-headline-decline-open = Quizá un decaimiento; los conteos dejan abiertas otras explicaciones.
reading-rests-on = Se apoya en { $n } revisiones, la última hace { $ago }.
reading-rests-on-one = Se apoya en una sola revisión, de hace { $ago }. La respuesta es amplia; una segunda revisión la afinará.
reading-rests-on-none = No se apoya en ninguna revisión.
reading-season-from = La estación sale de los promedios mensuales de { $place }.
reading-season-assumed = No se conoce el clima de su lugar: se supone una estación usual de su hemisferio.
reading-full-crown = Hojas vivas de su corona llena y nutrida
reading-per-year = Hojas nuevas al año en el lugar de referencia
reading-value = { $n } (90 %: { $range })
reading-before = Lo que se creía antes de los conteos: { $n }
reading-prior = Pesos antes de los conteos (supuestos): { $list }.

n-from-maximum = Se usa el máximo de una descripción: como corona llena se toma 0,8 de él (supuesto).
n-from-maximum-phoenix = Se usa el máximo de una descripción; en las datileras es de 2 a 3 veces demasiado bajo, así que se toma 2,5 veces (supuesto).
n-from-genus = No se conoce la cifra de la especie; se usa la del género.
n-from-family = No se conoce la cifra de la especie; se usa la de todas las palmas. La respuesta es amplia.
r-about-one-a-month = No se conoce la cifra de la especie; se toma cerca de una hoja al mes.

## Pérdida

loss-seen = { $lost ->
    [0] No se perdió ninguna hoja entre el { $since } y el { $until }.
    [one] Se perdió { $lost } hoja entre el { $since } y el { $until }.
   *[other] Se perdieron { $lost } hojas entre el { $since } y el { $until }.
}
loss-not-told = Entre el { $since } y el { $until } los conteos no dicen cuántas hojas se perdieron.
loss-makes-ageing = El envejecimiento normal da { $range } en ese tiempo.
loss-makes-move = El traslado da { $range }.
loss-makes-hunger = El hambre da { $range }.
loss-makes-decline = Un decaimiento da { $range }.
loss-verdict-none = Para leer una pérdida hacen falta dos revisiones, o una revisión y la fecha de la última limpieza.
loss-verdict-unknown = La próxima vez cuente hojas verdes, amarillentas y cafés: así se podrá leer la pérdida.
loss-verdict-ordinary = Dentro del envejecimiento normal ({ $range }): tantas o más se dan en { $p } de los casos.
loss-verdict-ordinary-moved = Dentro del envejecimiento y el traslado ({ $range }): tantas o más se dan en { $p } de los casos.
loss-verdict-unusual = Más de lo normal: el envejecimiento da tantas solo en { $p } de los casos (lo usual es { $range }). Alguien debe revisarla.
loss-verdict-unusual-moved = Más de lo normal: el envejecimiento y el traslado dan tantas solo en { $p } de los casos (lo usual es { $range }). Alguien debe revisarla.
tripwire = { $n ->
    [one] { $n } hoja más o varias perdidas del { $since } al { $by }: llame.
   *[other] { $n } hojas más perdidas del { $since } al { $by }: llame.
}
tripwire-spear = Flecha inclinada o caída: llame de inmediato.
tripwire-why = Tantas se perderían en menos de 1 de cada 20 casos por envejecimiento y traslado juntos.
loss-chart-title = Lo perdido frente a lo que da cada explicación (90 % de los casos)
loss-chart-seen = visto: { $n }
loss-ahead-title = Hojas perdidas desde la última revisión: lo esperado (banda del 90 %) y el aviso
loss-ahead-expected = esperado
loss-ahead-tripwire = aviso
chart-dot = { $n } el { $date }
chart-today = hoy
counts-title = Hojas vivas y cafés: contadas, y las que vendrán si se cumple el plan (bandas del 90 %)
counts-live = vivas
counts-brown = cafés

## Pronóstico

outlook-weeks = En { $n } semanas
outlook-live = Vivas
outlook-green = Verdes
outlook-yellowing = Amarillentas
outlook-brown = Cafés
outlook-lost = Perdidas
outlook-note = Hojas que se contarían: la cifra más probable y dónde cae el 90 % de los casos. Las perdidas cuentan desde la última revisión.
outlook-planned = Si se cumple el plan de corte
outlook-uncut = Si no se corta nada

## Recuperación

recovery-level = Otra vez hasta la línea horizontal
recovery-full = Otra vez corona llena
recovery-frond-months = Follaje perdido
recovery-frond-months-value = { $n } hojas-mes (90 %: de { $low } a { $high })
recovery-at-once = de inmediato
recovery-beyond = más de 10 años
recovery-span = { $median } (90 %: de { $low } a { $high })
recovery-title = Si se quitara lo máximo que se puede pedir
asked-left = Hojas vivas que quedan

## Próxima visita

due-late = { $n ->
    [0] La visita ya es tarde.
    [one] La visita ya es tarde: cuelga { $n } hoja muerta.
   *[other] La visita ya es tarde: cuelgan { $n } hojas muertas.
}
due-now = Ya vale la pena una visita, a más tardar el { $latest }.
due-now-open = Ya vale la pena una visita.
due-soon = Vale la pena una visita desde el { $earliest }.
due-later = No antes del { $earliest }.
due-none = Nada que cortar en dos años.
due-note = En un tallo de este tamaño vale la pena desde { $tidy } hojas muertas; es tarde con más de { $limit } (ambos supuestos).
due-note-site = Vale la pena desde { $tidy } hojas muertas por tallo; es tarde con más de { $limit }: así se describió su sitio.

## La corona dibujada

crown-title = La corona de { $tag }, vista de lado
crown-mode-plan = Según el plan
crown-mode-asked = Según lo pedido
crown-mode-uncut = Sin cortar
crown-switch = Corte
crown-slider = Semanas por delante
crown-now = Ahora, { $date }
crown-later = En { $n } semanas, { $date }
crown-counts = { $green ->
    [one] { $green } verde
   *[other] { $green } verdes
}, { $yellowing ->
    [one] { $yellowing } amarillenta
   *[other] { $yellowing } amarillentas
}, { $brown ->
    [one] { $brown } café
   *[other] { $brown } cafés
}.
crown-counts-cut = { $n ->
    [one] { $n } marcada para quitar.
   *[other] { $n } marcadas para quitar.
}
crown-level = horizontal
crown-spread-clock = Apertura ajustada a sus lecturas de reloj.
crown-spread-assumed = Apertura supuesta: corona llena y redonda. Las lecturas de reloj de las hojas vivas más bajas la ajustarían.
crown-trunk = Tronco { $height }
crown-trunk-unknown = Altura del tronco desconocida
crown-median = El dibujo muestra la corona más probable; la tabla de abajo tiene los intervalos.
crown-key-green = verde
crown-key-yellowing = amarillenta
crown-key-brown = café
crown-key-cut = se quita
