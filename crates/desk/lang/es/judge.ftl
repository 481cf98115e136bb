### Lo que se dice de cómo se informó un juicio

judge-sign-unknown = La tabla de signos no tiene “{ $sign }”; no pesa nada.
judge-sign-both-ways = “{ $sign }” consta como visto y como ausente a la vez; no pesa nada. Mire otra vez.
judge-species-unknown = “{ $species }” no está en la tabla de especies: lo que se sabe de los hospedantes no se puede usar del todo.
judge-species-not-told = No se indica la especie: lo que se sabe de los hospedantes no se puede usar.
judge-nothing-told = Aún no se ha dicho nada, ni signos ni conteos: esto es solo lo que es frecuente. Mire primero la palma.
