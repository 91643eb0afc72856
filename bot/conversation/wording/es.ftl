# What a person reads. Amount first, then how to measure, why, and what to mind.

# --- the dose ---
product = { $analysis }{ $form ->
    [powder] {" "}en polvo
    [liquid] {" "}líquido
   *[other] {""}
}
dose-amount = { $amount } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} de { $product } para { $volume }
volume-litres = { $litres } l
volume-millilitres = { $millilitres } ml
volume-own = { $amount } { $unit ->
    [us_gallon] gal EE. UU.
    [us_quart] qt EE. UU.
    [us_fluid_ounce] oz EE. UU.
    [imperial_gallon] gal imp.
    [imperial_pint] pt imp.
   *[imperial_fluid_ounce] oz imp.
} ({ $metric })

measure-weigh = Pésalo en una báscula de { $step } g (error de hasta el { $error } %).
measure-syringe = Mídelo con una jeringa de { $step } ml (error de hasta el { $error } %).
measure-stock = Disuelve { $product } g en agua hasta { $bottle } ml, y echa { $use } ml de eso a la regadera: aquí una báscula de { $step } g { $error ->
    [none] no puede pesar tan poco.
   *[other] falla hasta un { $error } %.
} Aguanta { $days } días en sitio fresco y oscuro, con etiqueta. O prepara { $batch } o más.
measure-stock-liquid = Completa { $product } ml con agua hasta { $bottle } ml, y echa { $use } ml de eso a la regadera: aquí una jeringa de { $step } ml { $error ->
    [none] no puede medir tan poco.
   *[other] falla hasta un { $error } %.
} Aguanta { $days } días en sitio fresco y oscuro, con etiqueta. O prepara { $batch } o más.
measure-cross-check = Más o menos { $spoons } { $many ->
    [yes] cucharaditas rasas
   *[no] cucharadita rasa
} de polvo: solo para cazar un error de coma.
measure-batch = Es muy poco para lo que tienes para medir{ $error ->
    [none] .
   *[other] {" "}(falla hasta un { $error } %).
} Prepara al menos { $batch } y guarda lo que sobre para el próximo riego.
measure-spoon-stock = Disuelve { $spoons } de cucharadita rasa en agua hasta { $bottle } ml y echa { $use } ml de eso en la regadera. Dura { $days } días, en fresco, a oscuras y con etiqueta. Mejor: pesa una cucharada y manda la dosis de la etiqueta en gramos.
measure-spoon = Una cucharadita rasa es medir a ojo. Mejor: pesa una y manda la dosis de la etiqueta en gramos.

makes = Da { $elements } mg/l{ $ec ->
    [none] .
   *[other] ; suma EC { $ec } mS/cm a tu agua.
}
chain-target = Por qué: { $steps }.
chain = Por qué: { $steps } = { $strength } de la dosis completa.

# --- the steps ---
why-full-assumed = dosis completa a 200 mg/l de N (no dijiste la de la etiqueta)
why-full-product = dosis completa según el abono de tu estante
why-full-target = la concentración que pediste
why-form-weighed = por peso, porque no dijiste si es polvo o líquido
why-density-assumed = líquido contado a 1,2 kg por litro
why-measure-us = medidas de EE. UU.
why-measure-imperial = medidas imperiales
why-ec-water_unknown = contado como lo que suma el abono, porque no dijiste la EC de tu agua
why-ec-water_known = de los { $wanted } se resta la EC { $own } de tu agua
why-ec-water_hardness = tu agua contada a { $middle } mS/cm (de { $low } a { $high } por su dureza; dime su EC y afino)
why-strength-asked = pediste { $factor ->
    [full] la dosis completa
   *[other] { $factor }
}
why-strength-target = sin rebajar por estación ni sustrato
why-strength-default = { $factor } porque no dijiste dosis ni cada cuánto
why-strength-every_watering = { $factor } en cada riego
why-strength-weekly = { $factor } abonando cada semana
why-strength-fortnightly = { $factor } abonando cada dos semanas
why-strength-monthly = { $factor } abonando una vez al mes
why-season-winter = × { $factor } por invierno
why-medium-sphagnum = × { $factor } porque el esfagno guarda sales
why-medium-clay_pellets = × { $factor } porque la arlita guarda sales
why-seedling = × { $factor } por ser plántula
why-ceiling-label = recortado a la dosis de la etiqueta
why-ceiling-hungry = recortado a 200 mg/l de N, el tope para las que más comen
why-ceiling-moderate = recortado a 125 mg/l de N, el tope para este tipo de planta
why-ceiling-sensitive = recortado a un cuarto de la etiqueta y 50 mg/l de N, el tope para raíces delicadas
why-rest-genus = ahora en reposo: { $plants }
why-rest-growth = una planta en reposo no come

# --- no feed ---
no-feed-genus = Sin abono: agua sola, y poca. { $count ->
    [one] En esta época está
   *[other] En esta época están
} en reposo: { $plants }.
clear-only = Sin abono: { $volume } de agua sola{ $plants ->
    [none] .
   *[other] , para { $plants }.
}
clear-how = Riega hasta que salga por abajo y el sustrato quede mojado entero, y deja escurrir. ¿Con abono al final? Manda «abono» con los litros.
clear-flush = { $enough ->
    [yes] Eso llega también para el lavado mensual (unos { $volume }): pásala despacio, en dos veces.
   *[no] El lavado mensual pide más: unos { $volume }, dos veces las macetas, pasados despacio.
}
no-feed-growth = Sin abono: agua sola, y poca. Una planta en reposo no toma nada, y lo que deja le quema las raíces.
no-feed-until = Vuelve a empezar cuando asomen brotes o raíces nuevas.
no-feed-months = Reposo según el calendario: de { $begin } a { $end }. Vuelve a empezar después, con brotes o raíces nuevas.
no-feed-others = Solo para { $plants }: { $amount } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} en { $volume }.

# --- cautions ---
caution-plant-unknown = No sé qué planta es: empieza con menos y dime cómo se llama.
caution-types-rest = Algunas de este género ahora reposan y no comen: dime la especie, como Dendrobium nobile.
caution-ailing = Una planta enferma no lleva abono, solo agua. Manda solo lo que ves, como «raíces podridas en mi phalaenopsis», y haré un plan.
caution-wet-roots-first = Moja antes las raíces con agua sola.
caution-softened-water = El agua descalcificada va llena de sodio: no la uses con orquídeas. Usa la de antes del descalcificador, o lluvia.
caution-water-over-limit = { $alone ->
    [yes] Con esta agua no: ella sola tiene EC { $own }, más de los { $most } mS/cm que aguantan estas plantas.
   *[no] Con esta agua sola no: con su EC { $own } sube a { $total }, y estas plantas aguantan { $most } mS/cm.
} { $litres ->
    [none] Usa agua de lluvia o de ósmosis.
   *[other] Usa agua de lluvia o de ósmosis, con { $litres } de la tuya como mucho en { $volume }.
}
caution-spoon-is-rough = Una cucharadita puede pesar el doble que otra: rásala, y mejor de menos.
caution-sensitive-roots = Estas raíces se queman enseguida: mejor flojo que fuerte.
caution-winter-half = En invierno se da la mitad de esto, salvo que esté creciendo.
caution-slow-growth = Crece despacio: abona menos, o una vez sí y otra no.
caution-hard-water = Tu agua es dura y ya trae sales: lava más a menudo, o mézclala con lluvia.
caution-salty-water = Tu agua sola ya es más salada de lo que aguantan estas plantas: mézclala con lluvia y lava más a menudo.
caution-no-calcium-in-water = Esta agua no trae calcio ni magnesio y en tu etiqueta no salen: usa un abono que los lleve, o algo de agua del grifo.
caution-clear-water-monthly = Una vez al mes, agua sola, hasta que salga bien por abajo.
caution-too-much-signs = Puntas de raíz marrones, puntas de hoja secas o costra en el sustrato quieren decir exceso: lava con agua sola y haz una pausa.
caution-calcium-apart = Nunca guardes un abono con calcio en el mismo concentrado que fosfato o sulfato.
caution-no-dust = Ponte guantes y no respires el polvo.
caution-no-splash = Ponte guantes y cuidado con los ojos.
caution-children-and-pets = Los concentrados, lejos de niños y mascotas, y nunca en una botella de beber.
caution-never-mix-concentrates = Nunca juntes dos concentrados.
caution-label-first = La etiqueta y las normas de tu zona van primero.
caution-not-for-food = No es para plantas comestibles.
caution-not-down-the-drain = Lo que sobre, a otras plantas; nunca al desagüe ni a un estanque.
caution-ask-a-society = Si te falla toda la colección, enséñala en una asociación de orquídeas o en la extensión agraria de tu zona.
caution-clear-water-only = Agua solo cuando se arrugue o el sustrato esté seco del todo.

# --- what was made of the words ---
read-as = He leído { $pairs }.
meant-strength = dosis
read-as-pair = “{ $text }” como { $meaning }
not-used = No entendido, no cuenta: { $texts }.
not-used-one = “{ $text }”
not-used-maybe = “{ $text }” (¿querías decir { $suggestions }?)

# --- questions ---
ask-volume = ¿Cuántos litros quieres preparar?
ask-product = ¿Qué pone en la etiqueta? Manda los tres números, como 20-20-20.
ask-product-with-rate = ¿Qué tres números trae la etiqueta (como 20-20-20)? Sin ellos no sé si la dosis de la etiqueta es demasiado para la planta.
ask-volume-and-product = ¿Cuántos litros, y qué tres números trae la etiqueta? Como: 5 litros, 20-20-20 en polvo.
ask-label-rate = Casi no lleva nitrógeno, así que necesito la dosis de la etiqueta. Mándala así: la etiqueta dice 1 g por litro.
ask-element-none = En esta etiqueta no sale { $element }, así que no puedo dosificar por él. Dime un abono que lo lleve, o un objetivo de nitrógeno, como: 50 ppm N.
ask-ec-perhaps = Por su dureza, puede que tu agua sola ya tenga esa EC (de { $low } a { $high } mS/cm). Dime la suya, como: mi agua del grifo tiene 0,5 mS. O manda una más alta, o usa lluvia.
ask-ec-reached = Tu agua sola ya tiene esa EC. Manda una más alta, o usa agua de lluvia.
ask-form-unit = La dosis de la etiqueta va en mililitros, pero pusiste polvo. ¿Cuál es? Manda la dosis en gramos, o pon líquido.
ask-several-analysis = { $texts } son dos abonos, y calculo uno cada vez. Manda la línea entera otra vez, con uno solo.
ask-several = Has puesto { $texts }. ¿Cuál vale? Manda la línea entera otra vez, con uno solo.
ask-range = “{ $texts }” me deja la duda. Manda un solo número.
ask-negation = Has puesto “{ $texts }”. Dime lo que es, no lo que no es.
ask-ambiguous_number = ¿{ $texts } lleva decimales o son miles? Mándalo sin punto de miles, como 1500 ml o 1,5 l.
ask-element = ¿{ $texts } de qué? Mándalo como 100 ppm N, si es nitrógeno; o, del agua, su dureza o EC.
ask-ec_unit = “{ $texts }” no parece una conductividad. Mándala con su unidad, como EC 0,8 mS/cm u 800 µS/cm.
ask-hardness_unit = ¿En qué unidad va “{ $texts }”? Mándalo como 12 °dH o 200 mg/l CaCO3.
ask-lone_number = ¿{ $texts } qué? Mándalo con su unidad.
ask-product_of_numbers = “{ $texts }” puede ser dos cosas. Manda el total, como 6 litros.
ask-loose_rate = ¿Cuánto es “{ $texts }”? Mídelo una vez y mándalo así: la etiqueta dice 2 ml por litro. O quítalo.

# --- refusals ---
refuse-negative = “{ $text }” está por debajo de cero. Manda una cantidad mayor, como 5 litros.
refuse-division_by_zero = “{ $text }” divide entre cero. Manda una fracción como 1/4.
refuse-not_a_number = “{ $text }” no es un número que me sirva. Mándalo como 5 litros.
refuse-too_long = Es larguísimo. Manda un riego en una línea corta, como: 5 litros, 20-20-20 en polvo, un cuarto de dosis.
refuse-hidden_characters = En esa línea hay caracteres ocultos que podrían cambiar los números. Escríbela otra vez a mano.
refuse-volume-zero = Eso es casi nada de agua. Manda cuánto quieres preparar, como 5 litros.
refuse-volume-absurd = { $volume } es más de lo que gasta cualquier casa. Manda los litros de un riego, como 5 litros.
refuse-analysis-over = { $analysis } suma más del 100 %. Mira otra vez la etiqueta y manda los tres números, como 20-20-20.
refuse-analysis-zero = 0-0-0 no lleva nada que alimente. Manda los tres números de la etiqueta, como 20-20-20.
refuse-strength-zero = Con esa dosis es agua sola. Manda una como un cuarto, o no pongas ninguna.
refuse-target-zero = Con ese número no hay nada que abonar. Manda uno mayor que cero, como 100 ppm N.
refuse-label-absurd = { $rate } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} por litro no puede ser una dosis de abono. Mira otra vez la etiqueta y mándala así: la etiqueta dice 1 g por litro.
refuse-granules = Los gránulos y el abono de liberación lenta nunca se disuelven para regar: queman las raíces. Pon encima del sustrato lo que diga la etiqueta, si vale para orquídeas, o mándame un polvo soluble o un líquido.

# --- help ---
help = Te digo cuánto abono va en tu agua. Manda una línea, como:
    5 litros, 20-20-20 en polvo, esfagno, invierno, un cuarto de dosis
    Añade lo que sepas: la planta, la dosis de la etiqueta, tu agua. El orden da igual.
    También: mi medidor marca 0,9, 20-20-20 · ¿14 dH es muy dura para phalaenopsis? · mezclar grifo y ósmosis a 6 dH · solución madre 1:100 de 20-20-20 · puntas de raíz marrones y costra blanca
needs-chat = Para eso tendría que recordar tus plantas, abonos y agua, y aquí no recuerdo nada. Mándalo en un chat.
needs-one-line = Aquí no recuerdo nada: manda todo lo que ves en una línea, o pregunta en un chat.
apology = Perdona, es culpa mía: algo ha fallado y lo he anotado. Mándalo otra vez dentro de un momento.
missing-hint = Para afinar necesito { $items }. “más” enseña todos los avisos; “por qué”, los pasos.
hint-plant = la planta
hint-medium = el sustrato
hint-label = la dosis de la etiqueta
hint-water = tu agua

# --- plants on record ---
plant-kind = { $kind } { $traits }
plant-label = { $count ->
    [1] { $kind ->
        [none] una planta sin nombre
       *[other] { $kind }
    }
   *[other] { $count } { $kind ->
        [none] plantas
       *[other] { $kind }
    }
}
plant-named-several = { $name } × { $count }
pot = maceta de { $cm } cm
pot-inch = maceta de { $inches } pulgadas ({ $cm } cm)
medium-bark = corteza
medium-sphagnum = esfagno
medium-clay_pellets = arlita
medium-coconut = coco
medium-rockwool = lana de roca
medium-perlite = perlita
medium-stone = piedra
medium-mounted = montada
medium-mixed = mezcla
growth-growing = creciendo
growth-new_roots = raíces nuevas
growth-new_leaves = hojas nuevas
growth-new_pseudobulbs = pseudobulbos nuevos
growth-flowering = con vara o en flor
growth-slow = crece despacio
growth-resting = en reposo
growth-seedling = plántula
plants-more = { $count } más
plants-added = Apuntado: { $plants }.
plants-unknown = Aún no sé { $items }; mándalo cuando quieras, como: { $name } está en corteza, maceta de 12 cm.
unknown-genus = qué orquídea es
unknown-medium = el sustrato
unknown-pot = el tamaño de la maceta
plants-first-hint = Ahora dime con qué abonas (mi polvo es 20-20-20, etiqueta 1 g por litro) y pregunta: qué toca hoy.
plants-first-plan = Pregunta qué toca hoy, o manda 2 l y te digo la dosis.
plants-corrected = { $plants }.
plants-water = { $plants }: { $volume } en cada riego{ $count ->
    [1] .
   *[other] , por planta.
}
plants-renamed = { $before } ahora se llama { $name }.
plants-moved = { $plants }: sitio nuevo, { $place }.
plants-repotted = Trasplante { $day }: { $plants }{ $facts ->
    [none] .
   *[other] , { $facts }.
}
plants-repotted-note = Sin abono tres semanas, o hasta que saque raíces nuevas.
plants-growth = { $plants }: { $growth }.
plants-growth-rest = Sin abono mientras repose: agua sola, y poca.
plants-fewer = { $gone }{ $kind ->
    [none] {""}
   *[other] {" "}{ $kind }
} menos, quedan { $left }.
plants-lost = Fuera de tu lista: { $plants }. Lo que recibió queda en el diario.
plants-meanwhile = Alguien lo había cambiado un momento antes; había apuntado: { $held }.
who-rests = En reposo { $when ->
    [now] ahora
    [month] en { $month }
    [day] { $month }
    [winter] en invierno
    [spring] en primavera
    [summer] en verano
    [autumn] en otoño
   *[then] entonces
}: { $plants }. Solo agua, y poca.
who-rests-none = Ninguna de las tuyas está en reposo { $when ->
    [now] ahora
    [month] en { $month }
    [day] { $month }
    [winter] en invierno
    [spring] en primavera
    [summer] en verano
    [autumn] en otoño
   *[then] entonces
}.
who-flush = Les toca lavado: { $plants }. «cómo lavo» con un nombre dice con cuánta agua.
who-flush-none = Hoy no le toca lavado a ninguna.
ask-add-listed = ¿Apunto esto: { $plants }? Si quieres una dosis, di cuántos litros.
plants-not-added = No apunté nada.
plants-none = Aún no hay plantas apuntadas. Mándalas así: añade 3 phalaenopsis en corteza, macetas de 12 cm, cocina.
plants-none-group = El grupo no tiene plantas apuntadas. Para las tuyas escríbeme en privado; para las del grupo: { "/dose" } añade 3 phalaenopsis en corteza, macetas de 12 cm, invernadero.
plants-count = { $count } { $count ->
    [one] planta
   *[other] plantas
}
plants-place = { $place ->
    [none] Sin sitio:
   *[other] { $place }:
}
ask-which-plant = ¿Cuál de estas { $count }? Manda su número, o “todas”.
ask-which-some = { $some ->
    [one] ¿Cuál de estas { $count }? Manda su número.
   *[other] ¿Cuáles { $some } de estas { $count }? Manda un número o nombres, o varios números, por ejemplo: 1 y 2.
}
ask-which-plants = ¿Qué plantas? Manda un nombre, un género o un sitio, como: he lavado todas las phalaenopsis.
ask-no-plants-yet = Aún no hay plantas apuntadas. Mándalas así: añade 3 phalaenopsis en corteza, macetas de 12 cm, cocina.
ask-part-of = { $plants } son una sola entrada: no apunté nada. Sin el número vale para todas; o separa antes { $fewer }, por ejemplo: mueve { $fewer } { $kind } al balcón.
ask-gone = { $plants } ya no { $count ->
    [one] está
   *[other] están
} en tu lista ({ $day }): no hice nada. ¿Acabas de quitarla? Manda: deshacer. Si no, vuelve a añadirla, por ejemplo: añade { $kind ->
    [none] planta
   *[other] { $kind }
} llamada { $name }.
ask-had = No apunté nada. Si todavía las tienes, manda: añade { $plants }. Si estaban en la lista, por ejemplo: se murieron 2 vandas.
ask-names-count = { $count } { $count ->
    [one] planta
   *[other] plantas
} y más nombres: { $names }. No apunté nada; manda un número y nombres que cuadren, por ejemplo: añade 2 phals llamadas Ruby y Max.
ask-further-named = Ya apuntado, sin nombre: { $known }. Si { $name } es esa, manda: la { $kind } se llama { $name }. Si es otra más, di sí.
ask-further = Ya apuntado: { $known }. ¿Añado { $plants } como nuevas? Si esas son todas las que tienes, di no.
ask-fewer-than = Apuntado: { $plants }, { $gone } más que { $count }. No cambié nada; manda qué fue de las otras, por ejemplo: se murieron { $gone } { $kind }.
plants-in-all = En total: { $count } { $kind }.
ask-lost-apart = No cambié nada. Manda un género cada vez, por ejemplo: se murieron 2 phals.
ask-more-than = Apuntado: { $plants }, menos de { $count }. No cambié nada; si no queda ninguna, manda: se murieron { $held } { $kind }.
plants-split = { $left ->
    [one] La otra { $kind } sigue como estaba.
   *[other] Las otras { $left } { $kind } siguen como estaban.
}
ask-name-one = Sin nombre en tu lista: { $known }. No cambié nada; ponles nombre de una en una, por ejemplo: llama { $name } a la { $kind } del balcón.
ask-them = La planta de la que hablabas no está apuntada. Manda su nombre o su género, o apúntala primero. Apuntadas: { $known }.
dose-for-nobody = No tengo apuntado ningún nombre “{ $meant }”. Apuntadas: { $known }. { $some ->
    [none] Esto vale para una orquídea cualquiera; si sabes cuál es, añádela antes:
   *[other] Esto vale solo para { $some }:
}
ask-no-such = “{ $meant }” no está en tu estante: no doy cantidad. En el estante: { $feeds }. Manda uno de esos, o su etiqueta: { $meant } es 20-20-20 polvo, 1 g por litro.
ask-not-on-record = No tengo ninguna “{ $meant }” apuntada{ $known ->
    [none] .
   *[other] . Apuntadas: { $known }.
} Manda una de esas, o añádela antes.

# --- products on record ---
n-nitrate = { $percent } % de N nítrico
n-ammonium = { $percent } % de N amoniacal
n-urea = { $percent } % de N ureico
label-rate = etiqueta { $rate } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} por litro
density = { $density } kg/l
price = { $currency ->
    [none] { $price }
   *[other] { $price } { $currency }
}{ $pack ->
    [none] {""}
   *[other] {" "}por { $pack }
}
product-added = En tu estante: { $product }.
product-no-rate = Aún no sé la dosis de la etiqueta: tomo 200 mg/l de N como dosis completa. Mejor mándala, como: etiqueta 1 g por litro.
product-use-it = Para que sea el de siempre, manda: usa { $name } desde ahora.
product-name-it = Para ponerle nombre, manda: llámalo Azul
ask-rate-or-mix = ¿Lo dice la etiqueta o es lo que mezclaste? Manda: { $name }, etiqueta { $rate } { $unit } por litro; o toda la cantidad con: ¿es demasiado?
ask-name-of-what = ¿Qué se llama { $name }? Mándalo así: llama { $name } a la vanda
ask-which-feed = ¿De qué abono es eso? Envía uno cada vez, por ejemplo: { $name } cuesta 12 € los 500 g.
ask-unshelved = { $what } no está en tu estante: no doy cantidad, y no anoto nada. Apúntalo con los datos de su etiqueta, por ejemplo: sulfato de magnesio 9,8 % Mg en polvo, etiqueta 0,3 g por litro, llámalo epsom
ask-ceased = { $name } sigue en tu estante. Para quitarlo, manda: borra { $name }. Para usar otro: “usa NOMBRE desde ahora”.
says-remove = borra { $name }
ask-which-product = { $several ->
    [yes] ¿Cuál? Hay varios así: { $products }. Manda sus números o su nombre.
   *[no] No tienes ninguno así. En tu estante: { $products }.
}
newest-taken = “El nuevo”: { $name }, el último que apuntaste.
can-taken = Para tu regadera llena: { $volume }.
ask-can = ¿Cuánto le cabe? Mándalo así: mi regadera es de 5 l, y me lo apunto.
one-feed = Calculado solo para { $name }, no para { $others }: los dos con su dosis entera son demasiado. ¿Se pueden juntar? Manda: ¿{ $name } y { $others } en una botella?
product-changed = Cambiado: { $product }.
product-removed = Quitado de tu estante: { $name }.
product-default = Desde ahora cuento con { $name }, si no nombras otro.
product-is-default = , lo de siempre
products-none = Tu estante está vacío. Manda algo como: mi polvo es 20-20-20, etiqueta 1 g por litro, llámalo bote azul.
products-head = En tu estante:
ask-product-numbers = ¿Qué tres números trae la etiqueta? Manda la línea entera con ellos, como: mi polvo es 20-20-20, etiqueta 1 g por litro.
lack-line = { $name }: { $macro ->
    [none] todos los macroelementos en la etiqueta
   *[other] sin { $macro } en la etiqueta
}; { $micro ->
    [none] los microelementos también.
   *[other] microelementos que no salen: { $micro }.
}
lack-line-traces = { $name }: { $macro ->
    [none] todos los macroelementos en la etiqueta
   *[other] sin { $macro } en la etiqueta
}; microelementos sin cifras.
trace-elements = microelementos
lack-note = Solo sé lo que me dijiste de la etiqueta. El calcio y el magnesio pueden venir con el agua del grifo; la lluvia y la ósmosis no los traen.
choice-none = Tu estante está vacío, así que no hay dónde elegir. Un abono equilibrado con macro y microelementos va bien para casi todas.
choice-best = Usa { $name }.
choice-only = Es el único de tu estante.
choice-close = Los otros valdrían casi igual.

# --- water, kit, home ---
water-tap = agua del grifo
water-rain = agua de lluvia
water-reverse_osmosis = agua de ósmosis
water-distilled = agua destilada
water-softened = agua descalcificada
water-well = agua de pozo
hardness = { $german } °dH = { $caco3 } mg/l CaCO3
ec = EC { $ec } mS/cm
alkalinity = alcalinidad { $caco3 } mg/l CaCO3
water-recorded = Apuntado: { $water }.
water-used-now = Desde ahora cuento con ella cuando no se dice otra.
water-used-still = Para las dosis cuento con: { $used }. Para cambiarlo, manda: ahora uso { $water }.
water-for = { $plants }: { $water } desde ahora.
kit-scale = una báscula que marca { $step } g
kit-syringe = una jeringa que marca { $step } ml
kit-can = una regadera de { $volume }
kit-units-us = medidas de EE. UU.
kit-units-imperial = medidas imperiales
kit-units-metric = medidas métricas
kit-spoons = solo cucharaditas
kit-recorded = Apuntado: { $kit }.
kit-line = Para medir: { $kit }.
refuse-step = Una báscula de { $step } g aquí no sirve. Mándalo así: mi báscula marca 0,1 g.
ask-syringe-step = ¿Cuál es su marca más pequeña? Mándalo así: mi jeringa marca 0,1 ml.
ask-remains = No llevo la cuenta de lo que queda. Para una dosis envía los litros, como: 5 l; cuando se acabe, el nombre, como: bote azul está vacío.
refuse-can = En una regadera caben de 0,1 a { $most } litros. Mándalo así: mi regadera es de 5 l.
home-recorded = { $place }{ $country ->
    [none] {""}
   *[other] , { $country }
}: { $zone }, { $side ->
    [south] hemisferio sur
   *[north] hemisferio norte
}.
home-others = ¿O era { $others }? Entonces manda también el país.
home-besides = No lo he usado: { $texts }. Mándalo en una línea aparte.
home-south = Hemisferio sur: pongo las estaciones al revés.
home-north = Hemisferio norte.
home-line = Casa: { $place ->
    [none] {""}
   *[other] { $place }, {""}
}{ $zone ->
    [none] {""}
   *[other] { $zone }, {""}
}{ $side ->
    [south] hemisferio sur
   *[north] hemisferio norte
}.
ask-home = No conozco “{ $text }”. Manda una ciudad más grande que esté cerca, con el país, como: vivo en Córdoba, Argentina.
settings-kept = También apuntado: { $plants ->
    [one] 1 planta
   *[other] { $plants } plantas
} (manda: mis plantas), { $feeds ->
    [0] ningún abono
    [one] 1 abono
   *[other] { $feeds } abonos
} (manda: mis abonos); y mira: mis recordatorios.
settings-none = No tengo nada apuntado de tu agua ni de cómo mides. Manda: mi agua del grifo tiene 14 dH; mi báscula marca 0,1 g; mi regadera es de 5 l; vivo en Bilbao.

# --- the log ---
share-full = dosis completa
# Where a figure is from: what is no citation. Citations stay in their own language.
source-practice = práctica común, sin fuente
source-ours = regla nuestra
source-told = tu mensaje
source-direction = la dirección es práctica común, el factor es nuestro
source-shelf = tu estante
source-label = balance de masas de la etiqueta
source-cited = en inglés: { $source }
# How days are written: letters as in CLDR date patterns; the article goes with the day, as 'hoy' has none.
pattern-day = 'el' E d MMM
pattern-date = 'el' d MMM
pattern-date-year = 'el' d MMM y
pattern-date-long = 'el' d 'de' MMMM
day-today = hoy
day-yesterday = ayer
day-tomorrow = mañana
logged-fed = Abono { $day }: { $plants }{ $facts ->
    [none] .
   *[other] {" "}({ $facts }).
}
logged-clear = Agua sola { $day }: { $plants }.
logged-flush = Lavado { $day }: { $plants }.
logged-reading = Drenaje { $day }: { $plants }, EC { $ec } mS/cm.
reading-under = Está por debajo del límite de { $limit } mS/cm.
reading-over = { $plants ->
    [none] Está por encima de su límite de { $limit } mS/cm: lávala ya, y nada de abono hasta que baje.
   *[other] Por encima de su límite (mS/cm): { $plants }. Lava ya, y nada de abono hasta que baje.
}
reading-no-plant = EC { $ec } mS/cm a la salida de una maceta está { $over ->
    [yes] por encima del límite de { $limit } (nuestro): pasa el doble de la maceta en agua sola, y nada de abono hasta que baje.
   *[no] por debajo del límite de { $limit } (nuestro).
} No lo apunto: aún no conozco plantas tuyas. Mándalas así: añade 3 phalaenopsis en corteza, macetas de 12 cm.
logged-resting = En reposo: { $plants }. La próxima vez sin abono, agua sola.
amended = Corregido. { $entry } Antes: { $before }
amended-undone = Como antes. { $entry }
amended-same = Ya está así. { $entry }
ask-amend = ¿Qué estaba mal? { $entry } Envíalo así: era Ruby; o: fue ayer; o: deshacer.
ask-amend-undo = Para corregirlo envía: deshacer; y después la línea de nuevo.
ask-undo-last = Lo último apuntado es otra cosa: { $what }{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}. “deshacer” lo quita, y después lo anterior.
ask-wrong = ¿Qué estaba mal? Manda la línea como debe ser; “deshacer” quita lo último apuntado.
ask-two-days = Son dos días a la vez. Envíalos uno a uno, por ejemplo: aboné a Ruby ayer.
ask-two-things = Son dos cosas a la vez, y no sé qué plantas recibieron cuál. Envíalas una a una, por ejemplo: aboné las phals.
not-changed = Entonces no cambio nada. Lo que se cambió por error se quita con “deshacer”.
not-yours = Parece cosa de otra persona, así que no anoto nada. Si es tuyo, dilo sin nombrar a la otra persona.
not-your-water = Parece el agua de otra persona, o de hace años: no anoto nada. La tuya de ahora, por ejemplo: mi agua del grifo tiene 14 dH
not-used-now = No cambio nada. Para quitar un abono del estante, manda: borra, y su nombre.
not-told-doubt = Mientras no sea seguro, no anoto nada. Si fue así, mándalo { $verb ->
    [clear] así: regué a Ruby
    [flush] así: lavé a Ruby
    [repot] así: trasplanté a Ruby
   *[fed] así: aboné a Ruby
}.
feed-pause = No llevo pausas de abono sueltas. Manda “Ruby está en reposo” y el plan dará solo agua, hasta que mandes “Ruby tiene raíces nuevas” o “Ruby está creciendo”.
not-from-today = Solo por hoy: lo apuntado no cambia. Para una dosis con esa agua dilo en la línea, como: 2 l con agua de lluvia.
not-told = Todavía no anoto nada. Cuando esté hecho, mándalo { $verb ->
    [fed] así: aboné a Ruby
    [clear] así: regué a Ruby
    [flush] así: lavé a Ruby
    [repot] así: trasplanté a Ruby
    [move] así: pasé a Ruby al balcón
    [lose] así: Ruby murió; si solo está enferma, lo que ves
   *[other] en una línea
}.
logged-twice = Ya van dos veces ese día: { $plants }. ¿Fue un solo abono, contado dos veces? Manda: deshacer.
not-given = Entonces no anoto nada: solo anoto lo que se dio. Lo que anoté por error se quita con “deshacer”.
ask-all-or-some = ¿Todas menos { $names }, o solo { $names }? Todavía no hay nada anotado; manda la línea otra vez con una de las dos.
ask-runoff = ¿Qué marcó el medidor? Mándalo así: drenaje de Ruby 1,6 mS.
undone = Deshecho: { $what }{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}{ $whose ->
    [none] .
   *[other] , lo dijo { $whose }.
}
undo-nothing = No queda nada que deshacer.
undo-nothing-own = No queda nada tuyo que deshacer. Lo que apuntaron otros lo deshacen ellos, o alguien que administre.
refuse-undo-others-since = Después alguien ha apuntado más de lo mismo. Quien administra puede deshacer lo último, una cosa cada vez.
diary-you = tú
diary-member = alguien del grupo
all-plants = todas las plantas
event-fed = abono
event-clear = agua sola
event-flush = lavado
event-reading = drenaje medido
event-pause = la pausa sin abono
event-overfed = demasiado abono
event-rescue = planta enferma: { $cause ->
    [root-rot] raíces podridas
    [salt-burn] quemadura por sales
    [thirst] sed
    [cold] frío
    [old-age] vejez
   *[unclear] no está claro de qué
}
event-added = alta
event-repot = trasplante
event-growth = crecimiento
event-moved = cambio de sitio
event-renamed = cambio de nombre
event-water = agua asignada
event-corrected = corrección
event-lost = baja
event-product = cambio en el estante
event-water_source = cambio de agua
event-settings = cambio de ajustes
history-head = { $plants ->
    [none] El diario:
   *[other] { $plants }:
}
history-none = { $plants ->
    [none] No hay nada en el diario de ese tiempo.
   *[other] No hay nada en el diario de { $plants } de ese tiempo.
}
history-more = ({ $count } anteriores están en la exportación.)

# --- the plan of a day ---
due-feed = abono
due-clear = agua sola
due-flush = lavado
due-nothing = nada
plan-head = Plan para { $day }: { $counts }.
plan-count-feed = { $count } con abono
plan-count-clear = { $count } con agua sola
plan-count-flush = { $count } para lavar
plan-count-nothing = { $count } sin nada
plan-left-over = Sobran { $volume }: échalos a otras plantas que puedan llevar abono.
plan-no-plants = No hay plantas apuntadas, así que aún no hay plan. Mándalas así: añade 3 phalaenopsis en corteza, macetas de 12 cm, cocina.
plan-no-product = No hay abono en tu estante, así que no hay cantidades. Mándalo así: mi polvo es 20-20-20, etiqueta 1 g por litro.
plan-can-assumed = Para una regadera de { $volume }; { $who ->
    [member] quien administra puede mandar la del grupo, como: nuestra regadera es de 8 l.
    [administrator] manda la del grupo, como: nuestra regadera es de 8 l.
   *[own] manda la tuya, como: mi regadera es de 8 l.
}
plan-same-plants = las mismas plantas
plan-wet-first = Antes de abonar, moja las raíces con agua sola.
plan-done-hint = Manda “hecho” cuando esté todo regado, o “hecho 1” si es una parte.
plan-flush = Lavado{ $water ->
    [none] {""}
   *[other] {" "}con { $water }
} hasta que pasen { $volume }, en dos o tres veces: { $plants }.
plan-clear = { $water ->
    [none] Agua sola
   *[other] Solo { $water }
}, { $volume }: { $plants }.
plan-feed = Da { $volume } al { $strength }: { $plants }{ $of ->
    [1] .
   *[other] , regadera { $can } de { $of }.
}
plan-too-little = Agua sola, { $volume }: { $plants }. Su abono sería tan poco que no se puede medir.
plan-feed-no-product = Abono, { $volume }{ $water ->
    [none] {""}
   *[other] {" "}con { $water }
}: { $plants }.
plan-mix = { $amount } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} de { $name }, completa hasta { $to }{ $water ->
    [none] {""}
   *[other] {" "}con { $water }
}.
plan-mix-stock = { $amount } ml de esa solución ({ $holds } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} de { $name }), completa hasta { $to }{ $water ->
    [none] {""}
   *[other] {" "}con { $water }
}.
plan-stock = Es muy poco para medirlo de golpe: disuelve antes { $product } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} de { $name } en agua hasta { $bottle } ml.
plan-too-coarse = Para tan poco, tu medida ({ $step } { $unit ->
    [tsp] cdta
   *[other] { $unit }
}) no es bastante fina: las dosis van a ojo.
plan-top-up = Completa con { $water ->
    [none] agua sola
   *[other] { $water }
} hasta { $to }.
plan-pour-off = Echa { $volume } a otras plantas.
plan-again = Lo siguiente, en el próximo riego, con el sustrato casi seco: pregunta entonces, o manda: plan para mañana.
plan-nothing = Nada: { $plants }.
done-logged = En el diario: { $what }.
done-fed = abono para { $plants }
done-feed = abono para { $plants }
done-clear = agua sola para { $plants }
done-flush = lavado de { $plants }
done-left = { $count ->
    [one] Falta { $count } línea
   *[other] Faltan { $count } líneas
} del plan.
done-nothing = Eso ya está en el diario.
ask-no-plan = No hay plan que marcar. Manda: qué toca hoy.
ask-plan-old = El último plan era para { $day }. Manda: qué toca hoy, o di qué diste, como: he abonado todas las phalaenopsis.
ask-plan-ahead = Ese plan es para { $day }. Manda “hecho” ese día, o: qué toca hoy.
ask-plan-step = El plan tiene { $count } partes. Manda “hecho”, o “hecho 1”.

# --- follow-ups and what is on record ---
on-record = { $whose ->
    [group] De lo apuntado en el grupo
   *[own] De lo que tienes apuntado
}: { $items }.
on-record-asleep = En reposo, no cuentan: { $plants }.
on-record-rate = Dijiste { $rate } { $unit } por litro; la etiqueta de tu estante dice menos, y no pasé de ahí. Si la etiqueta es nueva, manda: { $name } etiqueta { $rate } { $unit } por litro.
on-record-volume = A estas macetas les van más o menos { $volume }.
on-record-differ = No piden lo mismo, así que va la dosis más floja; “plan” da a cada una la suya.
on-record-spoons = Dijiste que solo tienes cucharas: son demasiado gruesas para esto. Usa una jeringa pequeña de farmacia o una báscula de décimas de gramo; hasta entonces, mejor menos que más.
on-record-plants = tus { $count } plantas
on-record-deciding = { $plants } (decide la que menos aguanta: { $plant })
follow-up-more = Eso es { $times } veces la dosis de antes. Para la mitad de aquella manda: la mitad de eso.
follow-up-strength-stays = Sigue en { $share }, como pediste. Para otra dosis envíala, por ejemplo: media.
ask-no-last = No hay una dosis de la que partir. Manda una línea, como: 5 litros, 20-20-20 en polvo, un cuarto de dosis.
refuse-overtaken = Después calculé otra dosis, y solo sigo desde la última. Manda una línea entera, como: 5 litros, 20-20-20 en polvo, un cuarto de dosis.
ask-follow-up = ¿Qué cambio? Manda, por ejemplo: que sean 3 litros; o: y para las masdevallias.
question-lapsed = Mi pregunta ya caducó: no se cambió nada. Manda otra vez la línea de la que se trataba.
question-left = De acuerdo, lo dejamos así. No cambié nada.
nothing-asked = No te había preguntado nada. Manda una línea, como: 5 litros, 20-20-20 en polvo, un cuarto de dosis.
help-lost = Eso no lo entendí: no cambié nada.
tell-water = Riega cuando el sustrato esté casi seco: levanta la maceta, si pesa poco está seca. En corteza suele ser una vez por semana en verano y menos en invierno; el musgo tarda más. Yo planeo abono y sales, no la sed (práctica común, sin fuente).
tell-need = Viven mucho tiempo sin abono, pero crecen y florecen mejor con un poco mientras crecen: un cuarto de la etiqueta en cada riego. Demasiado daña más que nada (práctica común, sin fuente).
tell-winter = Lo que sigue creciendo en invierno recibe la mitad de lo habitual, lo que reposa nada: agua sola, y menos. Desde la primavera, con brotes o raíces nuevas, como antes (práctica común, sin fuente).
tell-winter-half = Sí: en invierno la mitad de lo habitual. Mis dosis de invierno ya llevan esa mitad: no la partas otra vez. En reposo, nada (práctica común, sin fuente).
tell-which-water = Agua de lluvia o de ósmosis, o del grifo si no es dura; nunca la de un descalcificador de sal. La de lluvia y la de ósmosis no traen calcio ni magnesio: los pone el abono. Manda la tuya, como: mi agua tiene 14 dH (práctica común, sin fuente).
tell-repot-when = Cuando el sustrato se deshace o las raíces no caben, más o menos cada dos años, mejor al empezar raíces nuevas (práctica común, sin fuente). Luego di: trasplanté Ruby a corteza; yo retengo el abono.
tell-bottle = No en una misma botella de concentrado: su calcio cae con el sulfato y el fosfato del abono, como un lodo blanco. Cada uno con su botella y su jeringa; en la regadera llena pueden juntarse, uno después del otro y removiendo (práctica común, sin fuente).
tell-keiki = Unido a la madre vive de su abono. Sepáralo con tres raíces de unos 5 cm, en maceta pequeña, tres semanas con agua sola, y después la mitad de lo que recibe ella (práctica común, sin fuente).
tell-dry = Nunca abones raíces secas: se queman. Mójalas antes con agua sola, espera un cuarto de hora y abona después (práctica común, sin fuente).
tell-first = Primero agua sola y luego el abono, nunca al revés: en raíces secas quema. Tras un lavado de verdad abona en el riego siguiente, no el mismo día (práctica común, sin fuente).
tell-spray = Abona las raíces, no las hojas: toman poco, y lo que queda en el cogollo o en las axilas hace daño. Si pulverizas, agua sola y por la mañana (práctica común, sin fuente).
tell-heat = Por encima de unos 35 °C apenas crecen: solo agua, con el fresco de la mañana, y abono otra vez cuando refresque (práctica común, sin fuente).
tell-no-bloom = Más abono no trae flores; la luz sí: mucha, sin sol de mediodía, y para una Phalaenopsis unas semanas de noches por debajo de unos 18 °C. Basta un cuarto de la dosis de la etiqueta mientras crece (práctica común, sin fuente).
tell-summer = No más fuerte: la dosis de siempre. En verano beben más a menudo y así ya reciben más; por encima de unos 35 °C, solo agua clara (práctica común, sin fuente).
tell-in-flower = Sí, su dosis de siempre o la mitad, nunca más por las flores. Moja antes las raíces y no mojes las flores con abono (práctica común, sin fuente).
tell-repot-flower = Mejor no: puede tirar las flores. Espera a que acaben y empiecen raíces nuevas; solo no esperan las raíces podridas o un sustrato empapado y deshecho (práctica común, sin fuente).
tell-before-repot = No: agua clara el día antes, que ablanda las raíces. Abona otra vez cuando salgan puntas de raíz nuevas, o pasadas { $weeks } semanas (práctica común, sin fuente).
tell-rest-feed = En reposo nada de abono: no lo toma, y las sales se quedan en las raíces. Poca agua clara, o ninguna si reposa en seco, hasta que brote (práctica común, sin fuente).
tell-rest-which = Depende de la especie. Mándalo con el nombre, como: ¿cuándo descansa el Dendrobium nobile?
tell-rest-none = { $plants } no tiene reposo fijo en mi almanaque: sigue abonando mientras crezca, en invierno la mitad.
tell-rest-span = { $plants } reposa según el calendario de { $begin } a { $end }: sin abono{ $dry ->
    [yes] {" "}y en seco
   *[no] {" "}y con poca agua clara
}. Vuelve a empezar después, con brotes o raíces nuevas.
tell-water-amount = La que haga falta para que salga algo por abajo; luego deja escurrir, nunca en agua estancada. Mándame la maceta, como: la phal está en corteza, maceta de 12 cm; el plan dice cuántos ml (práctica común, sin fuente).
tell-soak = Valen las dos: regar arrastra las sales viejas, diez minutos en remojo mojan mejor la corteza seca. Agua nueva para cada maceta: la compartida lleva podredumbre y plagas (práctica común, sin fuente).
tell-ice = Mejor agua a temperatura ambiente: el hielo enfría las raíces, no lleva abono y no arrastra sales (práctica común, sin fuente).
tell-boiled = Hervir o filtrar quita solo parte de la cal; deja enfriar la hervida. Con agua dura mezcla lluvia u ósmosis; nunca agua de un descalcificador de sal (práctica común, sin fuente).
tell-lime = El agua dura vale mezclada a medias con lluvia u ósmosis; lava con ella las costras blancas. Manda su valor y cuento con él, como: mi agua del grifo tiene 18 dH (práctica común, sin fuente).
tell-normal = Yo no veo nada: cuéntame cómo está, como: mi phal tiene hojas amarillas. Hasta saberlo, agua clara y nada de abono.
tell-often = En cada riego, un cuarto de la dosis de la etiqueta y una vez al mes solo agua; o cada dos semanas la mitad. En invierno la mitad de eso, en reposo nada (práctica común, sin fuente).
tell-often-sensitive = Estas aguantan poco: en cada riego, de un octavo a un cuarto de la dosis de la etiqueta, nunca más, y una vez al mes solo agua. En invierno la mitad de eso, en reposo nada (práctica común, sin fuente).
tell-away = Antes de irte, lava las macetas con agua sola. Dos o tres semanas sin abono no hacen daño: quien riegue, que dé solo agua cuando la maceta pese poco, y que ninguna quede en agua. A la vuelta abona como siempre, nunca más para compensar (práctica común, sin fuente).
tell-sticky = Las gotas claras en varas y hojas jóvenes suelen ser solo savia. Hojas pegajosas con bultos marrones o blancos pueden ser cochinillas: límpialas y aparta la planta (práctica común, sin fuente).
tell-gnats = Las mosquitas de las macetas suelen ser moscas del sustrato: viven en sustrato mojado y viejo y apenas dañan a plantas adultas. Deja secar más entre riegos, vacía los platos, cuelga trampas amarillas; sustrato nuevo si se deshace (práctica común, sin fuente).
tell-dry-roots = Blanca o plateada y firme es una raíz sana y seca: mojada se pone verde. Riega cuando casi todas estén plateadas; no cortes nada ni abones más. Plana, hueca o marrón está muerta (práctica común, sin fuente).
tell-sunburn = Quítala del sol directo. La mancha quemada, clara y luego marrón y seca, no se cura: deja la hoja. Corta solo si se ablanda y avanza. Nada de abono extra; riega como siempre (práctica común, sin fuente).
tell-heat-stress = Agua sola, nada de abono mientras haga calor. Ponla en el sitio más fresco y sombreado, con aire en movimiento; raíces húmedas, pulveriza por la mañana. Las de clima fresco, como Masdevallia, tiran hojas por encima de unos 25 °C. ¿Raíces o tallos blandos? Dímelo (práctica común, sin fuente).
tell-mould = El moho vive del sustrato muerto, no de la planta: hay demasiada agua, poco aire o está viejo. Ráspalo, deja secar más, da más aire; sustrato nuevo si está blando o huele. Sin abono hasta que seque (práctica común, sin fuente).
tell-algae = Lo verde son algas: luz y abono sobre arlita, musgo o macetas mojadas. Apenas dañan las raíces. Tapa la maceta de la luz, enjuaga con agua sola una vez al mes, deja secar arriba (práctica común, sin fuente).
tell-broken = Corta lisas las hojas y raíces rotas con una cuchilla limpia, mantén los cortes secos unos días y ponla derecha y firme a la sombra. Agua sola, nada de abono hasta ver puntas de raíz nuevas (práctica común, sin fuente).
tell-air-roots = Las raíces fuera de la maceta son normales: déjalas. Plateadas o verdes y firmes están sanas; marrones y huecas, muertas (práctica común, sin fuente).
tell-flowers-over = Las flores se marchitan tras semanas o meses: es normal. Sigue abonando igual. Si sufren también hojas o raíces, dímelo, por ejemplo: hojas amarillas en mi phal.
tell-buds = Los capullos suelen caer por un cambio: otro sitio, corriente fría o caliente, aire seco, raíces secas o fruta madura cerca. Deja la planta donde está, con las raíces algo húmedas, y sin abono extra (práctica común, sin fuente). ¿Raíces blandas o manchas en las hojas? Dímelo también.
tell-spike = En una Phalaenopsis corta por la base la vara marrón y seca; la verde puede quedarse, pues puede volver a florecer (práctica común, sin fuente).
tell-missed = Saltarse un abono no hace daño: nunca lo compenses con más. Primero agua sola, luego sigue con la cantidad de siempre (práctica común, sin fuente).
tell-repotted = Tras el trasplante, agua sola hasta que salgan puntas de raíz nuevas, o { $weeks } semanas; después, como siempre. Di “trasplanté Ruby” y el plan lleva la cuenta (práctica común, sin fuente).
tell-keeps = Seco y cerrado, el polvo dura años; el líquido, hasta la fecha de su botella. No lo uses si huele, si tiene grumos que ya no se disuelven o si ha soltado cristales (práctica común, sin fuente).
tell-ph = Lo habitual es pH 5,5 a 6,5 en el abono ya diluido (práctica común, sin fuente). Los ácidos y el “pH down” o “pH up” no los calculo: queman piel y raíces, así que solo según su etiqueta, con guantes y medidor de pH. Mezclar agua de lluvia o de ósmosis baja la dureza y el pH sin ácido.
tell-ppm-scale = La escala está en el medidor o en su manual (500, 640 o 700; también 0,5, 0,64, 0,7). O mide la misma agua en mS/cm: ppm entre mS/cm es la escala.
thanked = De nada. Que crezcan bien.
help-of-plant = Conozco { $name }, pero no sé qué quieres. Envía una de estas líneas:
help-of-plant-say = plan para { $name } | historial de { $name } | 2 l para { $name }
help-group = Calculo el abono. Pregúntame con { "/dose" } y tu línea, o respondiéndome: 5 l 20-20-20 en polvo, phalaenopsis, un cuarto.
    Lo que apuntes aquí es del grupo: lo ven todos, y lo puedes deshacer tú, o quien administra. Tus plantas y abonos los llevo en privado.
help-group-short = Calculo el abono. Pregunta en una línea: { "/dose" } 5 l 20-20-20 en polvo, phalaenopsis, un cuarto. { "/help" } enseña el resto.
help-what = Calculo cuánto abono va en la regadera, según tu etiqueta, plantas, agua y época.
    Te planeo el día de riego: a quién le toca abono, agua sola, lavado o nada.
    Recuerdo lo que hiciste, te aviso, y ayudo si sufren raíces u hojas.
help-group-how = Aquí respondo a { "/dose" } y cuando me respondes. Lo que apuntes aquí es del grupo; lo tuyo lo llevo en privado.
help-next-first = Prueba con una línea, el orden da igual: “{ $example }”
help-next-group = Pregunta en una línea: “{ $example }”
help-have = Apuntado: { $plants ->
    [0] ninguna planta
    [one] una planta
   *[other] { $plants } plantas
}, { $feeds ->
    [0] ningún abono
    [one] un abono
   *[other] { $feeds } abonos
}, { $reminders ->
    [0] ningún recordatorio
    [one] un recordatorio
   *[other] { $reminders } recordatorios
}.
help-next-plants = Ahora dime qué plantas tienes: “{ $example }”
help-next-feeds = Ahora dime con qué abonas: “{ $example }”
help-next-water = Ahora dime cómo es tu agua, que la dureza cuenta: “{ $example }”
help-next-plan = Ahora mira qué le toca a cada una: “{ $example }”
help-next-home = Ahora dime una ciudad cercana, para tus estaciones y tu hora: “{ $example }”
help-next-can = Ahora dime tu regadera, para que quepan las mezclas: “{ $example }”
help-next-reminders = Ahora deja que te avise: “{ $example }”
help-next-today = Ya está todo. Con “{ $example }” te planeo el día.
help-example-first = 5 l 20-20-20 en polvo, phalaenopsis en corteza, un cuarto
help-example-group = 5 l 20-20-20 en polvo, phalaenopsis, un cuarto
help-example-plants = añade 3 phalaenopsis en corteza, macetas de 12 cm, cocina
help-example-feeds = mi polvo es 20-20-20, etiqueta 1 g por litro, llámalo bote azul
help-example-water = mi agua del grifo tiene 14 dH
help-example-plan = qué toca hoy
help-example-home = vivo en Bilbao
help-example-can = mi regadera es de 5 l
help-example-reminders = recuérdame lavar cada primer domingo a las 9
help-example-today = qué toca hoy
help-topics = Para ver ejemplos, manda “ayuda” y una de estas: { $topics }.
help-about = ayuda { $topic }
help-word = ayuda
# What is tapped below an answer, and read as if it had been typed.
tap-undo = deshacer
tap-why = por qué
tap-more = más
tap-done = hecho
tap-yes = sí
tap-no = no
tap-all = todas

# --- topics of help: a line, then examples to send, parted by | ---
topic-name-dose = dosis
topic-name-plants = plantas
topic-name-feeds = abonos
topic-name-water = agua
topic-name-plan = plan
topic-name-log = diario
topic-name-reminders = recordatorios
topic-name-trouble = problemas
topic-name-salts = sales
topic-name-bottles = botellas
topic-name-compare = precios
topic-name-pictures = imágenes
topic-name-settings = ajustes
topic-name-group = grupo
topic-name-data = mis datos
topic-dose = Una dosis en una línea, el orden da igual; luego la cambias con pocas palabras:
topic-dose-say = 5 l 20-20-20 en polvo, phalaenopsis en corteza, un cuarto | 3 l 15-5-15 en polvo, 80 ppm N | la mitad de eso | ¿y en esfagno? | por qué
topic-plants = Apunta tus plantas y cambia lo que sé de ellas:
topic-plants-say = añade 3 phalaenopsis en corteza, macetas de 12 cm, cocina | mis plantas | mueve Ruby al balcón | he trasplantado Ruby a esfagno | Ruby está en reposo
topic-feeds = Tus abonos con su etiqueta, y cuál va mejor:
topic-feeds-say = mi polvo es 20-20-20, etiqueta 1 g por litro, llámalo bote azul | mis abonos | qué le falta a bote azul | qué abono para la floración
topic-water = Tu agua, si es buena y cómo arreglarla:
topic-water-say = mi agua del grifo tiene 14 dH | ¿es buena mi agua para phalaenopsis? | mezclar grifo y lluvia a 6 dH | ¿necesito calcio y magnesio?
topic-plan = El día de riego: abono, agua sola, lavado o nada, con una sola regadera:
topic-plan-say = qué toca hoy | plan para el sábado | hecho | qué abono para las vandas
topic-log = Dime qué hiciste; pregunta qué se hizo; deshaz lo que estaba mal:
topic-log-say = he abonado todo lo de la cocina, un cuarto | ayer lavé todas las phalaenopsis | qué recibió Ruby desde octubre | deshacer
topic-reminders = Te aviso con tus palabras y a tu hora:
topic-reminders-say = recuérdame lavar cada primer domingo a las 9 | abonar las vandas cada 10 días de mayo a septiembre | mis recordatorios | horas de silencio de 22 a 8 | calendario
topic-trouble = Dime qué ves; pregunto lo que importa y hago un plan:
topic-trouble-say = puntas de raíz marrones y costra blanca en Ruby | hojas arrugadas, las raíces están firmes | ¿es demasiado?
topic-salts = Las sales de las macetas, y lo que marca un medidor:
topic-salts-say = cuánta sal tiene Ruby | cómo lavo Ruby | drenaje 1,6 de Ruby | mi medidor marca 0,9
topic-bottles = Soluciones madre, y qué abonos pueden compartir botella:
topic-bottles-say = 500 ml de solución madre de bote azul | solución madre 1:100 de 20-20-20 | ¿pueden ir bote azul y tiza en una botella? | mezcla mis abonos para floración
topic-compare = Qué cuestan y qué dan los abonos:
topic-compare-say = bote azul cuesta 14 euros por 500 g | compara mis abonos | cuál es más barato
topic-pictures = Para mirar y compartir:
topic-pictures-say = mi año | sales de Ruby en una imagen | tarjeta de dosis
topic-settings = Cómo hablo y mido:
topic-settings-say = mi báscula marca 0,1 g | no tengo báscula, solo cucharaditas | medidas americanas | mi idioma es español | mis ajustes
topic-group = Para quien administra un grupo:
topic-group-say = nuestra agua del grifo tiene 18 dH | nuestro idioma es español | lavar el domingo a las 9 | no hables | silencio de 22 a 7 | olvida el grupo
topic-data = Lo apuntado es tuyo:
topic-data-say = exportar mis datos | importar copia.json | olvídame

# --- words of the trade, explained ---
explain-none = ¿De qué? Manda, por ejemplo: qué es la EC. Después de una dosis, “explica más” dice por qué está cada paso.
explain-ec = La EC dice cuánta sal hay disuelta, en mS/cm: la lluvia anda cerca de 0, el grifo suele tener de 0,3 a 0,8, y un abonado suave suma de 0,1 a 0,4. Las raíces notan todo junto.
explain-ppm = ppm son miligramos por litro (mg/l). 100 ppm N son 0,1 g de nitrógeno en cada litro; lo demás que lleve el abono ahí no cuenta.
explain-npk = Los tres números son tanto por ciento en peso: nitrógeno N, fosfato P2O5, potasa K2O. En 100 g de 20-20-20 hay 20 g de nitrógeno. La dosis va por el nitrógeno.
explain-hardness = La dureza es el calcio y el magnesio del agua; 1 °dH son 17,8 mg/l como CaCO3. Una parte alimenta, mucha se queda en la maceta y sube el pH.
explain-strength = La dosis completa es la de la etiqueta, o 200 mg/l de N si no la sé. Las orquídeas crecen despacio: un cuarto en cada riego alimenta al mes lo mismo que una dosis completa de golpe, y quema menos.
explain-flush = Un lavado es agua sola, despacio, hasta que pase más o menos el doble de la maceta: se lleva las sales que dejan el abono y el agua. Una vez al mes, más o menos, mientras abonas.
explain-overfed = El exceso de abono se ve primero en las raíces: puntas marrones, después puntas de hoja secas y costra blanca en el sustrato o la maceta. Entonces pasa agua sola por la maceta hasta que corra libre, varias veces, y no abones hasta ver puntas de raíz nuevas. Manda lo que ves, como: puntas de raíz marrones en Ruby.
explain-salts = Lo que las raíces no toman se queda en la maceta, y al secarse se concentra. Puntas de raíz marrones, puntas de hoja secas y costra blanca son la señal.
explain-rest = Algunas orquídeas paran en invierno y no toman nada. Abonar entonces solo sala la maceta: agua sola, poca o ninguna, hasta que asomen brotes o raíces.
explain-winter = En invierno hay poca luz y crecen despacio; las raíces toman como la mitad, así que va media dosis. Si crece bajo lámpara puede llevar más: di “creciendo”.
explain-medium = El esfagno y la arlita retienen sales, la corteza las deja pasar. Por eso en los dos primeros el mismo abono va más flojo.
explain-stock = Una solución madre es un concentrado hecho de antemano: 2 g en 100 ml, y en 25 ml va medio gramo. Afina las dosis pequeñas con una báscula basta. Fresco, oscuro, con etiqueta, dos semanas.
explain-nitrogen = El nitrato se toma enseguida, el amonio despacio con frío, y la urea solo cuando los microbios la transforman, y eso va lento en corteza y en invierno. Más nitrato es lo más seguro.
explain-calcium = La lluvia y la ósmosis no traen calcio ni magnesio, y muchos abonos tampoco. Usa un abono que traiga los dos, algo de agua del grifo o un suplemento; nunca en el mismo concentrado que fosfato.
explain-pure_water = La ósmosis, la destilada y la lluvia casi no llevan sales: buenas para raíces delicadas, pero sin calcio ni magnesio. Se arregla con algo de agua del grifo o un abono que traiga los dos.
explain-softened = Un descalcificador cambia calcio por sodio. Las orquídeas no aprovechan el sodio y se queda en la maceta: usa el agua de antes del descalcificador, o lluvia.
explain-sensitive = Masdevallia, Pleurothallis y parientes, Dracula, Disa, Miltoniopsis y Phragmipedium se queman antes: como mucho un cuarto de la etiqueta y 50 mg/l de N, y agua más pura.
explain-ceiling = Ninguna respuesta pasa de la etiqueta, ni de lo que aguanta la planta más delicada que nombres; da igual cómo lo pidas. Si un paso se pasa, se recorta, y “por qué” lo enseña.

# --- is it too much, home remedies, pets ---
ask-judge-measure = ¿Cuánto es eso? Mídelo una vez en mililitros o gramos, y manda: 5 ml de 7-5-6 en 2 l, ¿es demasiado?
ask-judge-volume = ¿En cuántos litros? Manda, por ejemplo: 5 ml de 7-5-6 en 2 l, ¿es demasiado?
ask-judge-volume-given = ¿En cuántos litros fue? Mándalo así: puse 10 g en 8 l. Hasta entonces sin abono, agua sola.
ask-judge-product = ¿De qué abono? Mándalo con los tres números de la etiqueta, como: 5 ml de 7-5-6 en 2 l, ¿es demasiado?
judge-unknown-feed = Si fue demasiado, solo lo sé con los tres números de la etiqueta. Mándalo así: 5 ml de 7-5-6 en 2 l, ¿es demasiado?
judge-over = Demasiado: { $times } veces el máximo. Como mucho { $most } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} en { $volume }; yo daría { $usual } { $unit ->
    [tsp] cdta
   *[other] { $unit }
}.
judge-perhaps-over = Quizá demasiado: máximo { $most } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} en { $volume }. Yo daría { $usual } { $unit ->
    [tsp] cdta
   *[other] { $unit }
}; pésalo.
judge-strong = No pasa del máximo ({ $most } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} en { $volume }), pero es más fuerte de lo que yo daría: { $usual } { $unit ->
    [tsp] cdta
   *[other] { $unit }
}.
judge-fine = Bien: no es demasiado. Yo daría { $usual } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} en { $volume }; máximo { $most } { $unit ->
    [tsp] cdta
   *[other] { $unit }
}.
judge-weak = No es demasiado, más bien flojo: yo daría { $usual } { $unit ->
    [tsp] cdta
   *[other] { $unit }
} en { $volume }.
judge-makes = { $about ->
    [yes] Lo tuyo es cerca de { $amount } { $unit ->
        [tsp] cdta
       *[other] { $unit }
    }: el { $percent } % de la dosis completa
   *[no] Lo tuyo es el { $percent } % de la dosis completa
}{ $n ->
    [none] .
   *[other] , N { $n } mg/l.
}
judge-rinse = Si ya se lo has dado: lava ahora con mucha agua sola y deja el abono un tiempo.
judge-spoons = Cuento 6 g por cucharadita rasa; cada polvo pesa distinto, así que pesa una.
judge-taken = He supuesto: { $what }.
last-most = Lo máximo para { $volume } es { $most } { $unit }; yo di { $amount } { $unit }.
last-strong = { $amount } { $unit } es el { $percent } % de la dosis completa{ $at_most ->
    [yes] , lo máximo que doy para { $volume }.
   *[no] . Lo máximo para { $volume } es { $most } { $unit }.
}
last-spoon = { $spoons ->
    [none] No: es menos de lo que se puede medir con una cucharadita.
    [many] No: con tantas cucharaditas se pierde la cuenta. Pésalo o mídelo.
   *[other] { $unit ->
        [ml] Más o menos { $spoons } de cucharadita, si es una cuchara de medir.
       *[other] Más o menos { $spoons } de cucharadita rasa; cada polvo es distinto, así que pésalo.
    }
}
last-drops = Las gotas cambian con cada bote, así que no las cuento. Mide { $amount } { $unit }.
refuse-remedy = Sin dosis para { $what }: ninguna etiqueta dice qué lleva, no hay de dónde calcularla, y { $kind ->
    [calcium] apenas se disuelve. Para el calcio usa un abono que lo lleve o algo de agua del grifo, y mándame
   *[other] lo que queda se pudre en la maceta. Mándame
} un abono con sus números, como: 2 l 20-20-20 en polvo, un cuarto.
pets-keep = El abono, las botellas de solución y la regadera llena, lejos de mascotas y niños, y nunca en una botella de beber; vacía los platos. No puedo decir de ningún abono que se pueda beber sin peligro.
pets-call = { $who ->
    [told_child] Llama ya a toxicología, con la etiqueta en la mano.
    [told_pet] Llama ya al veterinario o, si es un niño, a toxicología, con la etiqueta en la mano.
    [child] Si un niño ha bebido o comido: llama ya a toxicología, con la etiqueta en la mano.
    [anyone] Si alguien ha bebido o comido: llama ya a toxicología o, si es una mascota, al veterinario, con la etiqueta en la mano.
    [fish] Si cayó abono en un estanque o una pecera: cambia ya gran parte del agua y llama al veterinario (práctica común, sin fuente).
   *[other] Si ha bebido o comido: llama ya al veterinario o, si es un niño, a toxicología, con la etiqueta en la mano.
}
argue-stays = Me quedo a propósito por debajo de la dosis completa: demasiado quema las raíces, poco solo frena el crecimiento (práctica común, sin fuente). Quien la quiera más fuerte lo dice en la línea, como: media dosis. De la etiqueta no paso nunca.
refuse-pests = Aparta la planta y quita lo que veas con un paño húmedo o un bastoncillo, también en las axilas y el envés de las hojas; vuelve a mirar cada pocos días (práctica común, sin fuente). Sé de abono y de agua, no de lo que mata plagas u hongos, así que para eso no doy dosis: sigue la etiqueta del producto, aleja a niños y mascotas, y pregunta en una asociación de orquídeas o un servicio agrario de tu zona.
refuse-food = { $how ->
    [eat] No lo comas ni lo bebas, ni el abono ni una orquídea. Si alguien lo hizo: llama ya a toxicología o, si es una mascota, al veterinario, con la etiqueta en la mano.
   *[other] No para plantas que se comen, ni para sus vainas, hojas o flores: solo calculo para orquídeas de mirar. Con verduras y hierbas, sigue la etiqueta de un abono hecho para ellas.
}
hurt-call = { $how ->
    [swallowed] Si se tragó: llama ya al médico o a toxicología, con la etiqueta en la mano. En el ojo o en la piel: enjuaga con mucha agua limpia.
    [breathed] Sal ya al aire libre. Si sigues con tos, te sientes mal o te cuesta respirar: llama al médico o a toxicología, con la etiqueta en la mano. En el ojo o en la piel: enjuaga con mucha agua limpia.
   *[other] En el ojo o en la piel: enjuaga enseguida con mucha agua limpia. Si se tragó o se respiró, o si sigue picando: llama al médico o a toxicología, con la etiqueta en la mano.
}
spill-wipe = Recógelo con papel y mucha agua, y lávate las manos. Niños y mascotas lejos hasta que esté limpio; nada a un estanque, un arroyo ni un desagüe de la calle. Si una planta lo recibió sin diluir, lávala enseguida con agua sola (práctica común, sin fuente).
leftover-goes = Lo que sobre va a otras plantas o a la tierra, nunca al desagüe, al inodoro, a un estanque ni a un arroyo. Guarda el abono ya mezclado solo hasta el próximo riego, tapado, a oscuras y con etiqueta, nunca en una botella de beber; si huele o se enturbia, también a la tierra (práctica común, sin fuente).
alarm-what = ¿Qué pasó? Si se tragó: llama ya al médico o a toxicología, y si es una mascota al veterinario. En el ojo o en la piel: enjuaga con mucha agua limpia. Demasiado en una planta: agua sola por la maceta hasta que corra libre, varias veces, y nada de abono. Luego dímelo en una línea, como: el perro se tomó el agua con abono.

# --- the first meeting, groups and sharing ---
meet-hello = Te digo cuánto abono va en la regadera y me acuerdo de tus plantas. Pregunta ya si quieres: 2 l 20-20-20 en polvo, phalaenopsis en corteza.
meet-home = ¿Dónde vives? Basta la ciudad: así sé tus estaciones y tu hora.
meet-product = ¿Con qué abonas? Manda lo que pone la etiqueta: 20-20-20 en polvo, 1 g por litro.
meet-add = ¿Qué plantas tienes? Basta con una clase: 3 phalaenopsis en corteza, macetas de 12 cm.
meet-skip = Saltar
meet-done = De momento no necesito más. Manda “2 l” y te digo la dosis, o “qué toca hoy”; “ayuda” enseña el resto.
refuse-administrators-only = Eso solo lo cambia quien administra el grupo. Pídeselo, o dímelo en privado para ti.
refuse-administrators-quiet = Solo quien administra el grupo me hace callar o volver a hablar: pídeselo.
refuse-administrators-remove = Solo quien administra quita plantas o abonos del grupo: pídeselo.
refuse-administrators-all = Eso solo lo hace quien administra el grupo, porque toca a todo el grupo: pídeselo, o dímelo en privado para ti.
refuse-own-private = Eso es solo tuyo, y aquí leen todos: mándamelo en privado.
ask-language = ¿Qué idioma? De momento hablo { $known }. Manda: nuestro idioma es español.
refuse-language-unknown = No conozco ningún idioma llamado “{ $text }”. De momento hablo { $known }.
refuse-language-not-yet = Aún no hablo { $language }: de momento solo { $known }. No he cambiado nada.
language-set = Desde ahora respondo en { $language }.
language-line = Idioma: { $language }.
quiet-private = Eso es para grupos. Aquí solo respondo cuando escribes.
kept-group = Guardo lo que se apuntó aquí: plantas, abonos, agua, ajustes, recordatorios y un diario en el que cada miembro es una marca, no un nombre.
    De una pregunta guardo el texto hasta que está respondida, lo último que pidió cada uno para seguir desde ahí, y treinta días lo que enseña “Detalles”. Lo que no va dirigido a mí no lo guardo.
    Quien administra recibe una copia con “exportar”, y lo borra todo con “olvida el grupo”.
kept-own = Guardo lo que apuntaste: plantas, abonos, agua, ajustes, recordatorios y el diario. Además, lo último que pediste para seguir desde ahí, un texto hasta que está respondido, y detalles y más páginas treinta días.
    “exportar” te da una copia, “olvídame” lo borra todo.
kept-no-questions = No llevo lista de quién preguntó qué. Lo apuntado está en el diario: { "/diary" }.
remove-me = Quien administra me quita como a cualquier miembro; entonces ya no mando nada. Lo apuntado se queda hasta que “olvida el grupo” lo borre: mándalo antes.
quiet-on = Me callo: en este grupo solo respondo a un comando como /dose. “/dose vuelve a hablar” lo quita.
quiet-off = Vuelvo a responder cuando me contestes o me menciones.
quiet-night = Solo respondo a quien pregunta, de día y de noche. Para los recordatorios manda: silencio de 22 a 7. Con “no hables” respondo en un grupo solo a comandos.
quiet-line = Callado: en este grupo solo respondo a un comando como { "/dose" }.
post-only-text = Leo texto, ubicaciones y archivos que yo exporté. Escríbelo en una línea, como: 2 l 20-20-20 en polvo, phalaenopsis.
post-added = Calculo el abono de las orquídeas. Pregunta así: { "/dose" } 5 l 20-20-20 en polvo, phalaenopsis, un cuarto. O responde a una respuesta mía{ $mentions ->
    [yes] , o mencióname.
   *[no] .
}
    Por lo demás no hablo, y no guardo nada que no vaya dirigido a mí.{ $known ->
    [yes] { " " }Lo que este grupo apuntó antes sigue aquí.
   *[no] {""}
}
    Para quien administra: { "/help" } grupo enseña cómo poner el agua del grifo, el idioma, los recordatorios y el silencio.
post-too-long = Eso es más largo de lo que leo. Manda la pregunta en una línea.
post-slow-down = De una en una, por favor: te respondo otra vez en { $seconds } segundos.
post-stale-button = Esa pregunta ya pasó. Mándala otra vez si aún la quieres.
post-not-yours = Eso lo elige quien preguntó.
post-for-administrators = Eso solo lo elige quien administra el grupo.
post-done-already = Ya está hecho.
post-on-record = Ese mensaje ya está apuntado; editarlo no cambia nada. Si fue el último, manda { "/undo" } y luego la línea buena.
post-interrupted = Algo se rompió por nuestra parte y no pude responder. No ha cambiado nada; mándalo otra vez.
post-place = ¿Apunto que vives en { $place }, { $country }?
post-place-says = vivo en { $place }, { $country }
post-import-says = importar { $name }
post-no-place = No conozco ninguna ciudad por ahí. Manda la más grande que haya cerca: vivo en Bilbao.
post-details = Detalles
post-save = Guardar estas plantas
post-own-water = Preguntar con mi agua
post-card-season = No se dijo la estación: esta es la respuesta más prudente para los dos hemisferios.
post-card-gone = Esa tarjeta es muy vieja. Manda la pregunta otra vez.
post-card-no-plants = Esa tarjeta no nombra plantas. Dime las tuyas: añade 3 phalaenopsis en corteza.
post-saved-already = Ya están en tu lista: mis plantas.
post-card-ask = Escribe algo: 5 l 20-20-20 en polvo, phalaenopsis, un cuarto
post-next = Más ({ $page }/{ $pages })
menu-dose = Cuánto abono va en tu agua
menu-plan = Qué toca hoy
menu-plan-says = qué toca hoy
menu-plan-for-says = plan para
menu-plants = Plantas apuntadas
menu-plants-says = mis plantas
menu-shelf = Abonos apuntados
menu-shelf-says = mi estante
menu-diary = Lo hecho últimamente
menu-diary-says = enséñame el diario
menu-undo = Deshacer lo último
menu-undo-says = deshacer
menu-help = Qué me puedes decir
menu-help-says = ayuda
menu-dose-says = cuánto abono

# --- reminders ---
reminder-and = y además también
reminder-cue = recuérdame
reminder-own-words = “{ $text }”
reminder-what = { $kind ->
    [flush] lavar
    [feed] abonar
    [water] regar
    [look] { $plants ->
        [none] echar un vistazo
       *[other] revisar
    }
   *[other] recordar
}{ $plants ->
    [none] {""}
   *[other] {" "}{ $plants }
}
task-flush = lavar
task-feed = abonar
task-water = regar
reminder-every = { $unit ->
    [day] { $every ->
        [1] cada día
        [2] un día sí y otro no
       *[other] cada { $every } días
    }
    [week] { $every ->
        [1] cada semana
       *[other] cada { $every } semanas
    }
   *[month] { $every ->
        [1] cada mes
       *[other] cada { $every } meses
    }
}
reminder-weekdays = { $every ->
    [1] cada { $days }
    [2] cada dos semanas, { $days }
   *[other] cada { $every } semanas, { $days }
}
reminder-workdays = { $every ->
    [1] de lunes a viernes
   *[other] cada { $every } semanas, de lunes a viernes
}
reminder-nth = { $days }{ $every ->
    [1] {" "}de cada mes
   *[other] , cada { $every } meses
}
reminder-nth-day = el { $nth ->
    [first] primer
    [second] segundo
    [third] tercer
    [fourth] cuarto
    [fifth] quinto
   *[last] último
} { $day }
reminder-month-days = { $days }{ $every ->
    [1] {" "}de cada mes
   *[other] , cada { $every } meses
}
# $rest is for tongues that say 1st and 2nd
reminder-day-of-month = el día { $day }{ $rest ->
   *[other] {""}
}
reminder-last-day = el último día
reminder-yearly = { $every ->
    [1] cada año
   *[other] cada { $every } años
} { $on }
reminder-nth-yearly = { $days } de { $months }
reminder-on = { $days }
reminder-months = de { $first } a { $last }
reminder-in-months = en { $months }
reminder-not-months = salvo en { $months }
reminder-not-days = salvo en { $days }
reminder-at = a las { $time }
reminder-until = hasta { $day }
reminder-times = ({ $times } veces)
reminder-moment = { $day } a las { $time }
reminder-line = { $what }{ $often ->
    [none] : { $next }
   *[other] {" "}{ $often }; próxima vez, { $next }
}{ $state ->
    [paused] {" "}(parado: no pude dar contigo)
   *[other] {""}
}
reminder-set = Recordatorio puesto: { $line }.
reminder-already = Ese ya está puesto: { $line }.
reminder-next = Próxima vez para { $what }: { $next }.
reminder-half = Entiendo { $half ->
    [afternoon] de la tarde; si era de la mañana, manda: { $hour } am.
   *[morning] de la mañana; si era de la tarde, manda: { $hour } pm.
}
reminder-guess-every-second = Lo tomo como uno sí y otro no; si es el segundo de cada mes, manda: el segundo domingo de cada mes.
reminder-guess-first-of-month = Lo tomo como el primero de cada mes; si no, manda: el último sábado de cada mes.
reminder-utc = No sé dónde vives, así que va en hora UTC, que puede no ser la tuya. Manda algo como: vivo en Bilbao.
reminder-none-yet = Aún no hay { $plants } en tu lista; contará en cuanto haya.
reminder-dropped = De acuerdo, no pongo recordatorio.
reminder-not-now = Bien, ahora no: no cambié nada. Para acabar del todo, manda: no más recordatorios.
reminder-kept = De acuerdo, todo queda como está.
reminder-gone = Ese ya terminó.
reminders-moved-along = { $count ->
    [one] Tu recordatorio va desde ahora con la hora de allí.
   *[other] Tus { $count } recordatorios van desde ahora con la hora de allí.
}
reminders-none = { $whose ->
    [group] Aquí no hay recordatorios. Quien administra pone uno así: recuérdanos lavar cada primer domingo a las 9.
   *[own] No hay recordatorios. Pon uno así: recuérdame lavar cada primer domingo a las 9.
}
reminders-head = { $count ->
    [one] Un recordatorio:
   *[other] { $count } recordatorios:
}
reminders-hint = Para cambiarlos: “mueve 1 al lunes”, “salta 1”, “quita el recordatorio 1” o “pausa los recordatorios hasta junio”.
reminder-stopped = { $count ->
    [one] Quitado: { $what }.
   *[other] Quitados { $count }: { $what }.
}
reminder-moved = Movido: { $what }, { $next }.{ $again ->
    [yes] {" "}Luego, como antes.
   *[no] {""}
}
reminder-changed = Cambiado: { $line }.
reminder-skipped = Saltado: { $what }. { $next ->
    [none] Era la última vez.
   *[other] Próxima vez, { $next }.
}
reminder-not-due = No hay nada que saltar: { $what } toca igualmente { $next }.
reminder-all = todos
reminders-paused = En silencio hasta { $day }. { $count ->
    [0] Antes no tocaba nada.
    [one] Un recordatorio espera hasta entonces.
   *[other] { $count } recordatorios esperan hasta entonces.
}
reminders-resumed = { $count ->
    [one] Un recordatorio vuelve como antes.
   *[other] { $count } recordatorios vuelven como antes.
}
reminders-not-paused = No había nada en pausa.
reminder-quiet-so = Silencio de { $start } a { $end }: a esas horas no llega ningún recordatorio, salvo que tú pidieras esa hora. A quien pregunta le respondo.
reminder-quiet-none = Sin horas de silencio: los recordatorios llegan a cualquier hora.
rhythm-choice-1 = cada semana
rhythm-choice-2 = cada dos semanas
rhythm-choice-3 = el primer domingo de cada mes
ask-remind-when = ¿Cuándo o cada cuánto te lo recuerdo? Manda, por ejemplo: cada primer domingo a las 9, cada 10 días, dentro de 3 semanas.
ask-remind-what = ¿Qué te recuerdo? Manda, por ejemplo: lavar todas las phalaenopsis.
ask-remind-home = ¿Dónde vives? Necesito tu hora para eso; basta la ciudad, como: Bilbao.
ask-remind-home-changed = Cambiado. ¿Y dónde vives? Necesito tu hora; basta la ciudad, como: Bilbao.
ask-remind-wish = ¿Te lo recuerdo? Sí o no; sin recordatorio no guardo ningún ritmo.
ask-remind-home-first = Primero necesito tu hora; después se puede cambiar. Envía una ciudad, como: Bilbao.
ask-rhythm-which-days = ¿Qué días? Mándalos así: lunes y jueves.
ask-rhythm-two-meanings = ¿El doble de veces o la mitad? Manda: cada dos semanas, o: lunes y jueves.
ask-rhythm-too-often = Como mucho aviso una vez al día. Manda: cada día a las 8.
ask-rhythm-range = Así queda en el aire. Manda un solo número, como: cada 2 semanas.
ask-rhythm-exception = Puedo saltarme meses, estaciones y días de la semana, pero no días sueltos. Mándalo así: cada 2 semanas menos en diciembre; y ese día di: esta vez no.
ask-rhythm-vague = ¿Cada cuánto es eso? Manda: cada 2 semanas, o: el primer domingo de cada mes.
ask-rhythm-number = Valen números del 1 al 999. Manda: cada 10 días.
ask-rhythm-clock = Esa hora no existe. Manda: a las 9:30, o: a las 6 pm.
ask-rhythm-two-times = Una hora por recordatorio: ¿cuál? Manda: cada día a las 8.
ask-rhythm-two-days = Son dos días: ¿cuál? Manda: el 3 de marzo.
ask-rhythm-two-rhythms = Son dos ritmos: ¿cuál? Manda: cada 2 semanas.
ask-reminder-number = Hay { $count }. Manda “mis recordatorios” para ver sus números.
ask-reminder-none-such = No tengo ese recordatorio. ¿Cuál de estos?
ask-reminder-which = ¿Cuál? Manda su número.
ask-reminder-not-then = Envía los días en que debe llegar, por ejemplo: cámbialo a cada martes y jueves; o, por una vez: esta vez no.
ask-reminder-move = ¿A cuándo? Manda: muévelo al lunes, o: muévelo a cada 3 semanas.
ask-reminder-until = ¿Hasta cuándo? Manda: hasta el 1 de septiembre, o: durante dos semanas.
refuse-reminder-past = Ese momento ya pasó, o no llega nunca. Manda uno más tarde, como: mañana a las 9.
refuse-rhythm = Ese ritmo no lo puedo llevar. Manda: cada 10 días, cada primer domingo, el 3 de marzo.
refuse-administrators-reminders = Los recordatorios del grupo solo los pone o cambia quien administra. Para los tuyos, dímelo en privado.
event-reminder = recordatorio
ping-done = hecho
ping-later = más tarde
ping-skip = saltar
ping-head = Toca: { $what }.
ping-head-several = Tocan { $count } cosas:
ping-late = {" "}(tocaba { $day }{ $missed ->
    [0] {""}
    [one] , y una vez más desde entonces
   *[other] , y { $missed } veces desde entonces
})
ping-asleep = Ahora no, en reposo: { $plants }.
ping-mounted = Montadas, basta con mojarlas bien: { $plants }.
ping-rest-begins = { $plants } empieza su reposo: { $dry ->
    [yes] en seco, sin abono
   *[no] agua sola, y poca
}, hasta que asomen brotes nuevos.
ping-rest-ends = { $plants } termina su reposo: agua y abono otra vez, flojo al principio, cuando crezca.
ping-hint = Manda “hecho”, “más tarde” o “saltar”.
ping-noted = Apuntado.
ping-again = Te pregunto otra vez { $next }.
ping-answered = Eso ya está respondido.
ping-repeat = (Puede que esto ya te llegara.)
offer = ¿Te lo recuerdo? { $items }{ $more ->
    [0] {""}
   *[other] {" "}y { $more } más
}. Siempre lo puedes mover o quitar.
offer-flush = Agua sola a fondo en todas las macetas el primer domingo de cada mes (entre medias, un cuarto de abono en cada riego)
offer-feed = abono una vez al mes para { $plants }, que aguantan poco
offer-look = cuándo { $plants } empieza y termina su reposo
offer-yes = sí
offer-no = no
offer-declined = De acuerdo, no pregunto más. Más adelante puedes decir: recuérdame lavar cada primer domingo a las 9.
offer-taken = Puesto, cada uno a las { $time }:

# --- taking along and forgetting ---
count-plant = { $count } { $count ->
    [one] entrada de plantas
   *[other] entradas de plantas
}
count-product = { $count } { $count ->
    [one] abono
   *[other] abonos
}
count-water = { $count } { $count ->
    [one] agua
   *[other] aguas
}
count-place = { $count } { $count ->
    [one] sitio
   *[other] sitios
}
count-reminder = { $count } { $count ->
    [one] recordatorio
   *[other] recordatorios
}
count-event = { $count } { $count ->
    [one] nota del diario
   *[other] notas del diario
}
count-nothing = solo tus ajustes
export-done = Todo lo { $whose ->
    [group] de este grupo
   *[own] tuyo
}: { $what }.
export-none = No hay nada tuyo apuntado.
# the .ics file: titles and descriptions of its entries, and what is said beside it
calendar-title = { $kind ->
    [flush] Lavar
    [feed] Abonar
    [water] Regar
    [look] { $plants ->
        [none] Echar un vistazo
       *[other] Revisar
    }
   *[other] Recordar
}{ $plants ->
    [none] {""}
   *[other] {" "}{ $plants }
}
calendar-often = Toca { $often }.
calendar-plants = Plantas: { $plants }.
calendar-amounts = Para las cantidades de ese día, manda “plan” en el chat.
calendar-rest-begins = Empieza el reposo: { $plants }
calendar-rest-ends = Termina el reposo: { $plants }
calendar-reminders = { $count } { $count ->
    [one] recordatorio
   *[other] recordatorios
}
calendar-rests = { $count } { $count ->
    [one] comienzo o fin de reposo
   *[other] comienzos y fines de reposo
}
calendar-done = Calendario hasta { $until }: { $what }. Abre el archivo para añadirlo.
calendar-copy = Es una copia: si cambias algo aquí, manda “calendario” otra vez.
calendar-none = Aún no hay nada para un calendario: { $whose ->
    [group] el grupo no tiene
   *[own] no tienes
} recordatorios ni plantas cuyo reposo yo conozca.
calendar-flush = No hay lavado puesto, así que no sale ninguno. Lo normal es agua sola una vez al mes; el próximo sería { $day }. { $whose ->
    [group] Quien administra lo pone con: recuérdanos lavar cada primer domingo a las 9.
   *[own] Para ponerlo, manda: recuérdame lavar cada primer domingo a las 9.
}
calendar-flush-choice = { $whose ->
    [group] recuérdanos lavar cada primer domingo a las 9
   *[own] recuérdame lavar cada primer domingo a las 9
}
calendar-north = No sé dónde vives, así que los reposos son los del norte. Manda algo como: vivo en Bilbao, y luego “calendario” otra vez.
calendar-held = { $count ->
    [one] Queda fuera un recordatorio, parado
   *[other] Quedan fuera { $count } recordatorios, parados
} porque no pude dar contigo.
ask-calendar-home = ¿Dónde vives? Los reposos del norte y del sur se llevan medio año; basta la ciudad, como: Bilbao.
ask-forget = ¿Borro todo lo { $whose ->
    [group] de este grupo
   *[own] tuyo
}, para siempre: { $what }? Manda “sí” o “no”. Antes, “exportar” te da una copia.
forget-none = No hay nada tuyo apuntado.
forget-cancelled = No he borrado nada.
forgotten = Borrado: { $what }. Aquí ya no queda nada { $whose ->
    [group] de este grupo
   *[own] tuyo
}.
ask-import-file = { $name ->
    [none] ¿Qué archivo? Mándalo así: importar sinkside-2026-03-01.json.
   *[other] No puedo abrir “{ $name }”. Manda el nombre de una exportación, como: importar sinkside-2026-03-01.json.
}
ask-import-late = El archivo no llegó a tiempo. Mándalo otra vez.
ask-import = El archivo trae { $what }. ¿Lo importo? Manda “sí” o “no”.
ask-import-replace = El archivo trae { $what }. Sustituiría lo que tienes: { $had }. Manda “sí” o “no”.
import-cancelled = No he cambiado nada.
imported = Importado: { $what }.
refuse-import-problem = Ese archivo no encaja: { $where } ({ $count } { $count ->
    [one] problema
   *[other] problemas
}). No he cambiado nada. Manda una exportación sin retocar.
refuse-import-newer = Ese archivo es de una versión más nueva. No he cambiado nada. Actualiza antes y mándalo otra vez.
refuse-import-large = Ese archivo es muy grande (más de { $most } MB). No he cambiado nada. Manda una exportación de este bot.
refuse-import-foreign = Eso no es una exportación de este bot. No he cambiado nada. Manda el archivo JSON que dio “exportar”.

# --- refusals of the records ---
name-is-number = un número
name-is-figure = una cifra
name-is-order = algo que hacer o un día
name-is-slot = { $slot ->
    [medium] un sustrato
    [genus] una clase de orquídea
    [month] un mes
    [season] una estación
    [growth] cómo crece
    [water] un tipo de agua
    [form] un tipo de abono
    [regime] cada cuánto
    [count] un número
   *[other] una cifra
}
refuse-name-means = “{ $name }” también significa { $meaning }. Manda otro nombre.
refuse-name-taken = Ya tienes “{ $name }”. Manda otro nombre, como “{ $name } 2”.
refuse-count = Manda cuántas hay, de 1 a { $most }.
refuse-too-many = Serían más de { $most } entradas. Quita alguna antes, o junta las plantas iguales en una, como: añade 40 phalaenopsis.
refuse-bad-value = Ahí hay un valor que no encaja: demasiado largo, demasiado grande o por debajo de cero. No he apuntado nada. Mándalo otra vez con otro.
refuse-records = Eso no cuadra con lo apuntado. No he apuntado nada. Manda “mis plantas” para ver qué hay.
refuse-changed-since = Alguien lo cambió un momento antes. De lo tuyo no apunté nada. Manda “mis plantas” para ver qué hay.
refuse-future = Ese día aún no ha llegado. Manda uno que ya pasó, como: ayer aboné Ruby.
refuse-date-ahead = Ese día aún no ha llegado. Envía un día pasado; o, si fue el año pasado, con el año, por ejemplo: aboné a Ruby el 3 de marzo de 2025.
refuse-which-day = ¿Qué día? Manda uno, como: ayer aboné Ruby; o: el 3 de marzo.
refuse-no-such-day = Ese día no existe. Manda algo como: 3 de marzo.
refuse-nitrogen-over = Las formas de nitrógeno suman { $forms } %, pero la etiqueta dice { $n } % de N. Mira otra vez la etiqueta y manda las dos cosas.
file-saved = Guardado aquí como { $names }.
picture-saved = [{ $alt }: guardado aquí como { $name }]

# --- reasons of the plan ---
reason-given-today = ya lo tiene
reason-rest-dry = reposo en seco
reason-rest-genus = ahora reposa
reason-rest-growth = en reposo
reason-repotted = { $weeks ->
    [0] recién trasplantada
    [one] trasplante hace una semana
   *[other] trasplante hace { $weeks } semanas
}
reason-flush-due = { $weeks ->
    [one] una semana sin agua sola
   *[other] { $weeks } semanas sin agua sola
}
reason-flush-mounted = { $weeks ->
    [one] una semana sin agua sola
   *[other] { $weeks } semanas sin agua sola
}
reason-flush-salts = pasa de su límite de sales según el diario
reason-rescue = { $weeks ->
    [0] se recupera, sin abono unos días más
    [one] se recupera, sin abono una semana más
   *[other] se recupera, sin abono { $weeks } semanas más
}
reason-rescue-resume = se recupera: más flojo, solo si saca puntas nuevas
reason-flush-overfed = demasiado abono: primero lavar
reason-types-rest = algunas de su género ahora reposan: dime la especie
reason-not-yet = aún no le toca
reason-plant-unknown = no sé cuál es: con cuidado
reason-growth-growing = creciendo
reason-growth-new_roots = raíces nuevas
reason-growth-new_leaves = hojas nuevas
reason-growth-new_pseudobulbs = pseudobulbos nuevos
reason-growth-flowering = con vara o en flor
reason-growth-slow = crece despacio
reason-growth-seedling = plántula
reason-season-winter = mitad por invierno
reason-season-spring = primavera
reason-season-summer = verano
reason-season-autumn = otoño
reason-medium-sphagnum = el esfagno guarda sales
reason-medium-clay_pellets = la arlita guarda sales
reason-seedling = mitad por ser plántula
choice-calcium-for-pure-water = trae calcio y magnesio, que a esta agua le faltan
choice-growth-nitrogen = más nitrógeno que fósforo, para crecer
choice-bloom-potassium = bastante potasio, para florecer
choice-balanced-in-doubt = equilibrado, lo suyo si nada pide otra cosa
choice-nitrate = casi todo su nitrógeno es nítrico, que las raíces toman enseguida
choice-bark-nitrogen = la corteza se queda con nitrógeno, y aquí ningún número supera al del nitrógeno
choice-complete = trae todos los macro y microelementos en la etiqueta
choice-micro-elements = trae microelementos en la etiqueta

# --- the salts in pots ---
salts-mounted = { $plants }: montadas apenas guardan sales. Mójalas bien con agua sola una vez al mes.
salts-one = { $plant }: unos { $ec } mS/cm en la maceta mojada ({ $low }–{ $high }), { $state ->
    [over] pasa de su límite de { $limit }.
    [unsure] quizá pasa de su límite de { $limit }: el diario es corto para saberlo.
    [water] pasa de su límite de { $limit }.
    [near] cerca de su límite de { $limit }.
   *[fine] por debajo de su límite de { $limit }.
}
salts-head = Primero las más saladas, en mS/cm de la maceta mojada:
salts-line = - { $plant }: { $ec } ({ $low }–{ $high }), límite { $limit }{ $state ->
    [over] : lávala ya
    [unsure] : quizá se pasa, el diario es corto
    [water] : ya el agua sola es demasiado salada
    [near] : lávala pronto
   *[fine] { "" }
}
salts-more = Y { $count } más, menos saladas.
salts-due-over = { $now ->
    [yes] Lávala ya.
   *[no] A este paso pasa de su límite { $day }: lávala antes.
}
salts-due-month = { $now ->
    [yes] El mes sin agua sola se cumplió { $day }: lávala ya.
   *[no] El lavado del mes toca { $day }.
}
salts-due-none = Lávala una vez al mes, y siempre que lo que sale por abajo pase de ese límite.
salts-due-water = Tu agua de { $water } mS/cm es demasiado salada para lavar: usa lluvia u ósmosis.
salts-flush = Un lavado: pasa { $first } de agua sola, espera { $rest } minutos y luego { $others } más. Quedan unos { $after } mS/cm{ $reaches ->
    [yes] .
   *[no] ; más agua hace poco.
}
salts-flush-least = Es lo mínimo que baja las sales, según el diario. Con raíces dañadas o costra, pasa { $usual }: dos veces la maceta.
salts-from = Calculado con { $entries ->
    [0] el diario vacío: es a ojo.
    [one] una nota del diario y agua de { $water } mS/cm.
   *[other] { $entries } notas del diario y agua de { $water } mS/cm.
}
salts-measure = La corteza y el musgo retienen sales: mide lo que sale por abajo y dímelo, como: drenaje 1,2 de Ruby.
why-salts-pot = el agua de la maceta se mezcla con la que echas, se evapora en parte y pierde sales con la que sale

# --- stock solutions and mixes ---
ask-stock-product = ¿Solución madre de qué abono? Ponlo antes en tu estante, como: mi polvo es 20-20-20, etiqueta 1 g por litro, llámalo bote azul.
refuse-stock-liquid = { $product } ya es líquido y concentrado. Mídelo con una jeringa.
refuse-stock-volume = Una solución madre va de 10 ml a { $most } l. Manda cuánta, como: 500 ml de solución madre de bote azul.
refuse-stock-ratio = Una solución madre se diluye como mucho 1:{ $most }. Manda: solución madre 1:100 de bote azul.
refuse-stock-strong = Tan concentrada se enturbia: usa 1:{ $times }.
refuse-stock-clash = Dos botellas no bastan para { $products }: deja uno fuera y échalo aparte en la regadera.
stock-make = { $grams } g de { $product } en agua hasta { $volume }.
stock-use = Por litro, { $use } ml { $how ->
    [n] para { $value } mg/l de N
    [ec] para EC { $value } mS/cm
    [share] { $value ->
        [full] para la dosis completa
       *[other] para { $value } de la dosis completa
    }
   *[quarter] para un cuarto de la dosis completa
}; nunca más de { $full } ml.
stock-of-last = Como la última dosis.
stock-held = { $n ->
    [none] Dejado en lo que dice la etiqueta: nunca más.
   *[other] Dejado en { $n } mg/l de N: más pasaría de la etiqueta o de lo que aguantan tus plantas.
}
stock-shares = Los { $count } abonos se lo reparten: cada uno al { $percent } % de su dosis completa.
stock-for-the-bottle = Para su etiqueta: { $label }
stock-why = { $g_l } g por litro es como mucho la mitad de lo que sigue disuelto a { $cold } °C.
stock-cautions = Agítala antes de usarla; tírala si se enturbia.
stock-ratio = { $bottles ->
    [one] Una botella, diluida 1:{ $times },
   *[other] Dos botellas que nunca se juntan sin diluir, cada una 1:{ $times },
} { $how ->
    [n] para { $value } mg/l de N:
    [ec] para EC { $value } mS/cm:
    [share] { $value ->
        [full] para la dosis completa:
       *[other] para { $value } de la dosis completa:
    }
   *[quarter] para un cuarto de la dosis completa:
}
stock-bottle = { $name }: { $what } en agua hasta { $volume }; { $use } ml por litro.
stock-ratio-means = 1:{ $times } quiere decir una parte en { $times } de abono ya diluido.
grams-of = { $grams } g de { $name }
stock-label = NO BEBER. { $what } en { $volume }. Hecha { $made }; usar hasta { $use_by }. Fresco, oscuro, lejos de niños y mascotas.
ask-together = ¿Qué dos? Manda los números de las dos etiquetas, como: ¿20-20-20 y 15,5-0-0 + 19Ca pueden ir en una botella?
refuse-together-label = { $product } no puede ser lo que pone. Mira otra vez la etiqueta y manda los números de los dos.
together-yes = Pueden ir en la misma botella: { $products }.
together-no = No pueden ir en la misma botella: { $products }.
together-liquid = No sé qué más lleva un líquido, así que botella y jeringa para cada uno: { $products }. En la regadera llena sí pueden juntarse.
together-can = En el abono ya diluido, a dosis completa o menos, se quedan disueltos: echa uno en la regadera llena, remueve, y luego el otro.
together-can-no = Ni siquiera en el abono ya diluido: dalos en días distintos.
clash-calcium-sulphate = Calcio y sulfato precipitan como yeso{ $sure ->
    [yes] .
   *[no] , si lleva sulfato: la etiqueta no lo dice.
}
clash-calcium-phosphate = Calcio y fosfato precipitan como un barro blanco.
clash-magnesium-phosphate = Magnesio y fosfato precipitan juntos.
clash-silicate = Los silicatos son alcalinos: no van con nada.
why-stock-limit = la mitad de lo que se disuelve en frío, de la sal que antes precipita
why-stock-apart = calcio con sulfato o fosfato, y magnesio con fosfato, precipitan donde van concentrados
ask-mix-products = Para una mezcla hacen falta al menos dos polvos en tu estante. Dime sus etiquetas, como: mi polvo es 15,5-0-0 + 19Ca, llámalo abono de calcio.
mix-amounts = { $what } en { $volume }
mix-goal = Es lo más parecido a lo que piden las plantas { $goal ->
    [bloom] en flor
   *[growth] en crecimiento
}, con N { $n } mg/l.
mix-held = Me quedo en N { $n } de { $wanted } mg/l: tus plantas más delicadas no aguantan más.
mix-meets = Cubre nitrógeno, potasio, calcio y magnesio.
mix-short = Se queda corta en: { $what }.
mix-short-one = { $nutrient ->
    [nitrate] nitrato
   *[other] { $nutrient }
} { $brought } de { $wanted } mg/l
mix-capped = Limitada por { $element }, que es tóxico si sobra.
mix-none = Nada de tu estante da N { $n } mg/l. Manda la etiqueta de un abono con nitrógeno.
mix-cautions = Disuelve uno tras otro en la regadera llena, nunca los polvos juntos. El calcio, el último.
why-blend = { $nutrient ->
    [nitrate] nitrato
   *[other] { $nutrient }
} a { $mg_l } mg/l, lo que se busca

# --- an ailing plant ---
rescue-answer-yes = sí
rescue-answer-no = no
rescue-answer-unknown = no sé
rescue-whom = { $named ->
   *[no] { $plant }
}
ask-rescue-mushy-roots = { $pot ->
    [no] Mira las raíces
   *[other] { $plant ->
        [none] Sácala
       *[other] Saca { $plant }
    } de { $pot ->
        [maybe] la maceta o cesta
       *[yes] { $n ->
            [many] las macetas
           *[one] la maceta
        }
    }
}: ¿hay raíces blandas, marrones y huecas al apretarlas?
ask-rescue-sudden-after-cold = ¿Vino a los pocos días de una noche fría, una corriente o un viaje con frío?
ask-rescue-one-old-leaf = ¿Es solo la hoja de más abajo, la más vieja?
ask-rescue-dry-light-pot = ¿La maceta suele estar seca del todo y muy ligera?
ask-rescue-white-crust = ¿Hay costra blanca en el sustrato o en el borde de la maceta?
ask-rescue-brown-root-tips = Mira las raíces: ¿tienen las puntas marrones o negras?
ask-rescue-medium-stays-wet = ¿El sustrato sigue mojado una semana después de regar?
ask-rescue-new-growth-sound = ¿Se ven sanas la hoja más nueva y las puntas de las raíces?
ask-rescue-many-plants = ¿Les pasa lo mismo a otras plantas tuyas?
cause-root-rot = raíces podridas
cause-tissue-rot = podredumbre de la corona o de la hoja
cause-salt-burn = quemadura por sales
cause-thirst = sed
cause-cold = frío
cause-old-age = vejez
cause-rest = caída de hojas antes del reposo
rescue-likely = { $likely ->
    [none] Nada es seguro. Posible: { $possible }.
   *[other] Probable: { $likely }.{ $possible ->
        [none] {""}
       *[other] {" "}Posible: { $possible }.
    }
}{ $unlikely ->
    [none] {""}
   *[other] {" "}Poco probable: { $unlikely }.
}
rescue-unclear = Con eso no sé decir qué es.
rescue-do-flush = { $lead ->
    [no] Lava otra vez con { $volume } de agua sola en { $passes } veces.
   *[yes] Lava { $plant ->
        [none] { $n ->
            [many] las macetas
           *[one] la maceta
        }
       *[other] { $plant }
    } con { $volume } de agua sola: { $passes } veces { $part }, con { $rest } minutos entre medias.
}
flush-now = Lava { $plants } con { $volume } de agua sola: { $passes } veces { $part }, con { $rest } minutos entre medias. Deja que escurra; ese día no abones.
rescue-do-soak = Riega { $plant ->
    [none] { $n ->
        [many] las plantas
       *[one] la planta
    }
   *[other] { $plant }
} a fondo con { $volume }, hasta que salga por abajo.
rescue-do-rinse = Enjuaga las raíces con { $volume } de agua sola.
rescue-do-unpot = Saca { $plant ->
    [none] { $n ->
        [many] las plantas
       *[one] la planta
    }
   *[other] { $plant }
} de { $pot ->
    [maybe] la maceta o cesta
   *[yes] { $n ->
        [many] las macetas
       *[one] la maceta
    }
} y { $n ->
    [many] quítales
   *[one] quítale
} el sustrato viejo.
rescue-do-cut-dead-roots = Corta lo blando; las raíces firmes se quedan.
rescue-do-fresh-medium = { $n ->
    [many] Ponlas en sustrato nuevo y macetas limpias.
   *[one] Ponla en sustrato nuevo y maceta limpia.
}
rescue-do-keep-apart = { $n ->
    [many] Apártalas
   *[one] Apártala
} de las demás y no salpiques.
rescue-do-humid-shade = Sombra y aire húmedo.
rescue-do-water-when-nearly-dry = Vuelve a regar, y solo cuando el sustrato esté casi seco.
rescue-do-remove-crust = Quita antes la costra, no más de 6 mm.
rescue-do-shade = { $n ->
    [many] Tenlas
   *[one] Tenla
} a la sombra.
rescue-do-clear-water-only = Agua sola.
rescue-do-water-more-often = Riega más a menudo.
rescue-do-move-to-warmth = Pon { $plant ->
    [none] { $n ->
        [many] las plantas
       *[one] la planta
    }
   *[other] { $plant }
} en un sitio cálido, de 10 a 27 °C.
rescue-do-leave-leaf = No hay que hacer nada: deja la hoja{ $plant ->
    [none] {""}
   *[other] {" "}de { $plant }
} hasta que se caiga sola.
rescue-do-dry-crown = Vuelca el agua de la corona y sécala con un papel.
rescue-do-cut-to-sound = Corta lo blando o negro hasta tejido sano con una cuchilla limpia y deja secar el corte.
rescue-do-keep-dry = Nada de agua en las hojas ni en la corona; que corra el aire.
rescue-do-let-shed = Seguramente es la caída normal de hojas antes del reposo: no hagas nada ni { $n ->
    [many] las saques de sus macetas.
   *[one] la saques de la maceta.
} Poca agua sola, nada de abono. Cañas, bulbos o raíces blandas serían podredumbre: entonces dímelo.
rescue-do-look-at-roots = { $pot ->
    [no] Mira las raíces
   *[other] Saca { $plant ->
        [none] { $n ->
            [many] las plantas
           *[one] la planta
        }
       *[other] { $plant }
    } de { $pot ->
        [maybe] la maceta o cesta
       *[yes] { $n ->
            [many] las macetas
           *[one] la maceta
        }
    } y mira las raíces
}: firmes y gordas, sanas; blandas, podridas; puntas marrones, sales.
rescue-do-look-for-spreading = ¿Se extiende?
rescue-do-look-for-new-root-tips = ¿Hay puntas de raíz nuevas?
rescue-do-look-for-firmer-leaves = ¿Están más firmes las hojas?
rescue-do-look-for-more-yellow = ¿Hay más amarillo?
rescue-do-look-again = Mira otra vez y dime qué ves.
rescue-later = - { $days }: { $condition ->
    [more-brown-roots] si hay más raíces marrones: { $what }
   *[other] { $what }
}
rescue-people = Esto ya no se arregla hablando ({ $signs }): enséñala en una asociación de orquídeas o en la extensión agraria de tu zona.
rescue-resume = { $days ->
    [0] Sigue abonando como siempre, al { $strength } de la dosis completa.
   *[other] Sin abono { $days } días, hasta { $day }. Después, { $when ->
        [tips] solo si ves puntas de raíz nuevas,
        [rests] solo cuando acabe el reposo y vuelva a crecer,
       *[day] {""}
    }{ $when ->
        [day] {""}
       *[other] {" "}
    }{ $strength } de la dosis completa{ $share ->
        [full] {", "}lo de siempre.
       *[other] {", "}{ $share } de lo de siempre.
    }
}
rescue-rests = Sin abono hasta que salgan brotes o raíces nuevas.
rescue-no-feed = Nada de abono hasta que saque raíces nuevas; mírala otra vez { $day }.
rescue-no-feed-yet = Sin abono { $days } días, hasta saber qué le pasa.
rescue-assumed = Para el agua he supuesto { $what ->
    [pot_cm] una maceta de { $pot } cm.
    [medium] una maceta con corteza.
   *[both] una maceta de { $pot } cm con corteza.
} Dime la buena y pregunta otra vez.
rescue-their-rate = { $rate } g por litro son unas { $times } veces la dosis entera{ $known ->
    [yes] {""}
   *[no] , contado como un 20-20-20
}: demasiado. Nada de abono hasta aclararlo; después, cada semana, unos { $part } g por litro.
rescue-logged = Apuntado: el plan no { $n ->
    [many] les
   *[one] le
} da abono hasta { $day }.
overfed-logged = En el plan: primero lavado y luego sin abono hasta { $day }: { $plants }.
overfed-still = Demasiado abono: { $plants }. Primero lava con mucha agua sola; sin abono hasta { $day }.
overfed-told = Fue demasiado. Lava ahora: mucha agua sola a través de la maceta, y otra vez media hora después. Luego deja el abono un tiempo y mira si hay puntas marrones.
overfed-undo = ¿Aún no lo has echado, o eran otras plantas? Envía “deshacer” y luego di cuáles.
reading-still = { $plants }: el último drenaje pasó del límite, así que nada de abono hasta que baje. Primero lava con agua sola.
repot-still = { $plants }: trasplante reciente, así que sin abono hasta el { $day }, o hasta que salgan raíces nuevas. Mientras tanto, agua sola.
rescue-still = { $n ->
    [many] Se recuperan
   *[one] Se recupera
}: { $plants }. Sin abono hasta { $day }; mientras, agua sola.
rescue-remind = recuérdame revisar { $plant } el { $day } de { $month ->
    [m1] enero
    [m2] febrero
    [m3] marzo
    [m4] abril
    [m5] mayo
    [m6] junio
    [m7] julio
    [m8] agosto
    [m9] septiembre
    [m10] octubre
    [m11] noviembre
   *[m12] diciembre
}
rescue-say-flushed = he lavado { $plant }
cautions-none = Aquí no hay nada más que vigilar.
caution-never-feed-burnt-roots = Nunca abones raíces dañadas: espera a que salgan puntas nuevas.
caution-keep-apart = La podredumbre se contagia con las salpicaduras: apártala.
caution-clean-blade = Una cuchilla limpia para cada planta.
caution-tepid-water = Agua templada, nunca helada.
caution-not-seen = Juzgo solo por lo que me dices: las causas se parecen y se juntan.
sign-mushy-roots = raíces blandas
sign-sudden-after-cold = de golpe tras el frío
sign-one-old-leaf = solo la hoja más vieja
sign-dry-light-pot = maceta seca y ligera
sign-white-crust = costra blanca
sign-brown-root-tips = puntas de raíz marrones
sign-medium-stays-wet = sustrato que no se seca
sign-new-growth-sound = brotes nuevos sanos
sign-many-plants = muchas plantas a la vez
sign-roots-gone = sin raíces
sign-leaves-gone = hojas que se caen
sign-black-spreading = negro que avanza
sign-rot = podredumbre
sign-crown-rot = corona o tallo podridos
sign-leaf-rot = una mancha mojada o que crece en la hoja
sign-sour-smell = olor agrio
sign-firm-roots = raíces firmes
sign-watered-little = poca agua
sign-watered-well = riego normal
sign-sheds-in-rest = una especie que pierde hojas en el reposo
sign-leaf-tips-brown = puntas de hoja marrones
sign-wilting-wet = lacia con la maceta mojada
sign-wilting-dry = lacia con la maceta seca
sign-pleated-leaves = hojas arrugadas
sign-yellow-old-leaf = hojas de abajo amarillas
sign-sunken-patches = manchas hundidas
sign-fed-strong = abono por encima de la etiqueta
sign-not-fed = sin abono últimamente
sign-flush-due = un mes sin agua sola
sign-flush-overdue = medio año sin agua sola
sign-high-ec = EC alta en la maceta
sign-low-ec = EC baja en la maceta
sign-holds-salts = un sustrato que guarda sales
sign-winter = invierno
sign-old-medium = sustrato viejo
sign-young-plant = una planta joven
why-rescue-sign = { $answer ->
    [no] sin “{ $sign }”
   *[other] { $sign }
}: { $points } { $side ->
    [for] a favor
   *[against] en contra
} de { $cause }
why-rescue-flush = lavar con { $volume }: { $passes } veces el volumen de una maceta de { $pot } cm{ $count ->
    [1] {""}
   *[other] , { $count } plantas
}
why-rescue-pause = { $days } días sin abono{ $share ->
    [none] , y nada antes de que haya raíces nuevas
    [full] , luego lo de siempre
   *[other] , luego { $share } de lo de siempre ({ $usual } de la dosis completa, menos lo que quiten época y sustrato)
}

# --- comparing feeds ---
compare-none = Para comparar hacen falta abonos en tu estante. Ponlos antes, como: mi polvo es 20-20-20, etiqueta 1 g por litro, llámalo bote azul.
compare-one = { $name } es el único abono de tu estante. Añade otro, como: mi líquido es 7-7-7, 4 ml por litro, llámalo botella verde.
refuse-compare-n = Con { $n } mg/l de N no se puede comparar. Manda hasta { $most }, como: compara a 100 ppm N.
refuse-compare-volume = { $volume } l es más de lo que gasta cualquier casa. Manda: cuánto cuestan 100 litros.
compare-cheapest = { $name } es el más barato: { $cost } por { $volume } l.
compare-cost-one = { $cost } por { $volume } l con { $name }.
compare-not-ordered = Los precios van en monedas distintas, así que no sé cuál es más barato.
compare-cannot = { $costs ->
    [0] Aún no sé lo que cuestan.
    [1] Solo uno tiene sus números, así que no sé cuál es más barato.
    [2] Cuestan lo mismo.
   *[other] Los dos más baratos cuestan lo mismo.
}
compare-all = De esos solo conozco { $name }, así que va todo tu estante.
compare-at = En { $volume } l a { $n } mg/l de N, { $strength } de la dosis completa:
compare-line = - { $name }: { $cost ->
    [none] {""}
   *[other] { $cost }, {""}
}{ $amount ->
    [none] sin nitrógeno, no se puede comparar
   *[other] { $amount }
}{ $lacks ->
    [none] {""}
   *[other] ; la etiqueta no trae { $lacks }
}{ $micro ->
    [yes] ; no salen todos los microelementos
   *[no] {""}
}{ $forms ->
    [none] {""}
   *[other] ; { $forms }
}
compare-amount-both = { $ml } ml ({ $g } g)
compare-per-money = Por 1 { $currency }, { $name } da { $elements }.
compare-currency-none = unidad de dinero
compare-form-nitrate = sobre todo nitrato, bueno en corteza
compare-form-much-urea = sobre todo urea, lenta en corteza
compare-salt = Sal para el mismo nitrógeno (índice salino por 1 % de N; el más bajo quema menos): { $feeds }{ $least ->
    [none] { $count ->
        [1] .
       *[other] ; las etiquetas no dicen cuál es más bajo.
    }
   *[other] ; el que menos, { $least }.
}
compare-salt-one = { $name } { $index }
compare-salt-missing = Falta el índice salino de { $names }: con las sales que conozco no sale esa etiqueta.
why-compare-salt = índice salino = los índices de las sales por su parte; si la etiqueta no las nombra, se prueban todas las mezclas que la dan
compare-powder-liquid = Polvo y líquido se comparan por el nitrógeno que dan, no por el tamaño del envase.
compare-missing-price = Falta el precio de { $name }. Manda: { $name } cuesta 12 € por 500 { $unit }
compare-missing-pack-size = Falta el tamaño del envase de { $name }. Manda: { $name } cuesta { $price } por 500 { $unit }
compare-missing-currency = Falta la moneda de { $name }. Manda: { $name } cuesta { $price } €
compare-missing-density = Falta la densidad de { $name }. Manda: la densidad de { $name } es 1,2 kg/l
compare-missing-nitrogen-forms = Para corteza: no sé de qué es el nitrógeno de { $names }. Manda: { $first } tiene 8 % nitrato, 4 % amonio, 0 % urea
why-compare-product = producto = nitrógeno buscado × litros ÷ (10 × % de N de la etiqueta)
why-compare-cost = coste = precio × producto ÷ envase
why-compare-form = { $name }: { $form }

# --- readings of the ready feed ---
choice-meter-us = mi medidor marca { $value } µS
choice-meter-ppm = mi medidor marca { $value } ppm
ask-meter-unit = ¿{ $value } de qué? Los medidores marcan mS/cm, µS/cm o ppm.
ask-meter-feed = Eso es EC { $ec } mS/cm a 25 °C. ¿Qué abono es? Manda sus números, como: 20-20-20.
# What dosing cannot work out; `refuse-` and the code of `Impossible`.
refuse-figures = Con estos números no puedo calcular. Mándalos otra vez, uno a uno.
refuse-solution-strong = Es demasiado fuerte para calcularlo. Manda el abono ya diluido, no la solución madre.
refuse-nutrients-many = { $mg_l } mg/l es más de lo que cabe en el agua. Mira otra vez la etiqueta.
refuse-temperature = Agua a { $temp } °C no puede ser. Manda de 0 a 50 °C, como: mi medidor marca 0,9 mS a 18 °C.
refuse-reading-range = { $ec } mS/cm no puede ser: { $most } ya es más que agua de mar. Si tu medidor marca µS/cm, manda: mi medidor marca 900 µS.
refuse-reading-negative = Ningún medidor marca { $value } de nada. Enjuágalo, mide otra vez y manda: mi medidor marca 0,9 mS.
refuse-meter-temperature = Un medidor que no corrige a 25 °C necesita la temperatura. Manda: mi medidor marca 0,9 mS a 18 °C.
refuse-meter-unit = No conozco la unidad { $unit }. Los medidores marcan mS/cm, µS/cm o ppm. Manda: mi medidor marca 0,9 mS.
refuse-hardly-conducts = Este abono apenas conduce, como pasa con la urea: ningún medidor sabe lo fuerte que está. Pésalo.
refuse-feed-under-water = El abono marca { $reading } mS/cm, menos que su agua, que tiene { $water }. Mide otra vez los dos, antes el agua sola.
refuse-thinning-water = Con agua de { $water } mS/cm no baja a { $wanted }. Usa agua de lluvia o de ósmosis.
refuse-supplement-neither = No trae ni calcio ni magnesio. Nombra uno que los traiga.
refuse-water-ion-amount = { $ion } { $mg_l } mg/l no puede ser. Mira otra vez el análisis.
refuse-sea-water = Sodio { $na } mg/l es más de lo que lleva el mar ({ $most }). ¿Era otra unidad?
refuse-water-imbalance = Un número de este análisis está mal: { $cations } meq/l de cationes frente a { $anions } de aniones, un { $percent } % de diferencia; lo normal es hasta el 10 %. Faltan { $side ->
    [anions] aniones
   *[cations] cationes
}, lo que serían { $mg_l } mg/l de { $ion }. Revísalo, o sigue solo con su dureza: mi agua del grifo tiene { $hardness } dH.
choice-water-nearest = mi agua del grifo tiene { $hardness } dH
refuse-water-too-salty = Esta agua tiene más sal de la que aguanta ninguna planta. Usa lluvia u ósmosis.
refuse-water-ions = No me sirve { $ions }. Manda Ca, Mg, Na, K, HCO3, SO4, Cl y NO3.
refuse-water-nothing-known = Sé muy poco de esta agua. Manda su dureza, su EC o un análisis, como: mi agua del grifo tiene 14 dH.
refuse-water-ec-range = Un agua de { $ec } mS/cm ya no es agua dulce (de 0 a { $most }). ¿Son µS/cm? Manda: mi agua del grifo tiene 400 µS.
refuse-water-hardness-range = { $what ->
    [alkalinity] Una alcalinidad
   *[hardness] Una dureza
} de { $mg_l } mg/l ya no es agua dulce (de 0 a { $most }). Manda: mi agua del grifo tiene 14 dH.
refuse-water-contradiction = EC { $ec } mS/cm y esa { $what ->
    [alkalinity] alcalinidad
   *[hardness] dureza
} no pueden ir juntas: solo con ella ya salen { $least }. Manda la que te parezca de fiar.
refuse-blend-target = No se puede llegar a { $target }. Manda 0 o más, como: mezclar grifo y ósmosis a 6 dH.
refuse-blend-volume = { $volume } l no se pueden mezclar. Manda cuánto quieres, como: 5 l.
report-in-part = Lo uso hasta donde llega: { $lacks ->
    [anions] a sus aniones les falta un { $percent } % frente a los cationes, así que no salen todos.
    [cations] a sus cationes les falta un { $percent } % frente a los aniones, así que no salen todos.
   *[ions] no sale el calcio o el bicarbonato.
}
meter-over = Demasiado fuerte{ $plants ->
    [none] {""}
   *[other] {" "}para { $plants }
}: { $factor } veces el máximo.
meter-unsure = Quizá demasiado fuerte{ $plants ->
    [none] {""}
   *[other] {" "}para { $plants }
}: hasta { $high } veces el máximo.
meter-under = No es demasiado fuerte{ $plants ->
    [none] {""}
   *[other] {" "}para { $plants }
}.
meter-water-alone = Es el agua, no el abono: con EC { $own } ella sola ya pasa de los { $most } mS/cm que aguantan estas plantas.
meter-water-adds = El abono está como querías; con la EC { $own } de tu agua pasa de los { $most } mS/cm que aguantan estas plantas.
up-to = hasta { $high }
meter-anew = { $instead ->
    [yes] Prepáralo
   *[no] O prepáralo
} de nuevo{ $water ->
    [pure] {" "}con agua de lluvia o de ósmosis
   *[own] {""}
}, con { $grams } g de abono por litro como mucho.
meter-add = { $sure ->
    [yes] Añade
   *[no] Por si acaso, añade
} { $litres } de { $water ->
    [pure] agua de lluvia o de ósmosis
   *[own] tu agua
} a { $to ->
    [none] cada litro
   *[other] estos { $to }
}: así baja a EC { $ec } mS/cm.
meter-means = EC { $ec } mS/cm a 25 °C{ $water ->
    [none] {""}
   *[other] , { $water } son de tu agua
}: N { $n } mg/l, de { $grams } g de abono por litro.
meter-meant-less = Es el { $share } % de { $whose ->
    [said] lo que querías disolver
   *[given] la dosis que te di
}: más flojo de la cuenta.
meter-meant-more = Es el { $share } % de { $whose ->
    [said] lo que querías disolver
   *[given] la dosis que te di
}: más fuerte de la cuenta. Revisa báscula y litros.
meter-meant-same = Es el { $share } % de { $whose ->
    [said] lo que querías disolver
   *[given] la dosis que te di
}: puede estar bien.
meter-meant-fine = Es el { $share } % de { $whose ->
    [said] lo que querías disolver
   *[given] la dosis que te di
}: como querías, hasta donde llega un medidor.
meter-scale-unknown = 1 mS/cm son 500, 640 o 700 ppm, según el medidor: di cuál, como “en la escala de 500”.
meter-unit-taken = Lo tomo como mS/cm.
meter-temperature = Casi todos los medidores corrigen a 25 °C; el tuyo quizá no, así que cuento con las dos cosas.
meter-water-unknown = No tengo apuntada tu agua, así que esto es lo máximo que puede ser. Manda: mi agua del grifo tiene 0,4 mS.
meter-water-estimated = La EC de tu agua la calculo por su dureza. Dime la suya y afino, como: mi agua del grifo tiene 0,4 mS.
meter-forms-unknown = Doy un margen: la etiqueta que conozco no dice las formas de nitrógeno (nítrico, amoniacal, ureico).
convert-meter = { $value } { $unit } son { $kind ->
    [ms] {""}
   *[other] { $ec } mS/cm;{" "}
}{ $ppm }{ $kind ->
    [cf] .
   *[other] ; CF { $cf }.
}
convert-on-scale = { $value } { $unit } en la escala de { $scale }
convert-ppm-unit = ppm en la escala de { $scale }
convert-ppm-open = { $value } ppm son { $each }.
convert-oxide = { $value } { $unit } de { $of } son { $result } { $unit } de { $to } ({ $oxide } × { $factor } = { $element }).
convert-oxide-none = { $of } y { $to } no se convierten uno en otro. Paso P2O5 a P, K2O a K, CaO a Ca, MgO a Mg, y al revés.
pour-together = En total { $volume } con EC { $ec } mS/cm.
pour-thinned = Añade { $add } ({ $water }): quedan { $whole } con EC { $ec } mS/cm.
most-ec = Como mucho EC { $most } mS/cm en el abono ya diluido, con tu agua incluida{ $plants ->
    [none] : vale para la mayoría de las orquídeas; dime la planta y te doy el suyo.
   *[other] , para { $plants }. Menos no hace daño.
}
most-ec-source = De dónde sale: { $source }.
brings-over = { $sure ->
    [yes] Es demasiado
   *[no] Quizá es demasiado
}: el máximo son { $most } { $unit } en { $volume }.
nitrogen-over = Demasiado{ $plants ->
    [none] {""}
   *[other] {" "}para { $plants }
}: como mucho { $most } mg/l de N{ $what ->
    [ammonium] {" "}como amonio
   *[all] {""}
}.
nitrogen-perhaps = Demasiado{ $plants ->
    [none] {""}
   *[other] {" "}para { $plants }
} si tu cifra cuenta nitrógeno (N): como mucho { $most } mg/l de N{ $what ->
    [ammonium] {" "}como amonio
   *[all] {""}
}.
nitrogen-under = No es demasiado{ $plants ->
    [none] {""}
   *[other] {" "}para { $plants }
}: el máximo es { $most } mg/l de N{ $what ->
    [ammonium] {" "}como amonio
   *[all] {""}
}.
nitrogen-as-ion = { $value } mg/l de { $ion } son { $n } mg/l de N; contado como nitrógeno son { $value } mg/l de N.
nitrogen-ammonium = Al menos la mitad del nitrógeno como nitrato, mejor tres cuartos (Wang, HortScience).
why-meter-difference = abono = lo que marca el medidor menos lo del agua, entre lo que suma un gramo por litro en esa agua
why-meter-temperature = llevado a 25 °C, cerca de un 2 % por grado
why-meter-scale = ppm entre la escala del medidor son mS/cm
why-meter-dilution = agua que añadir = volumen × (marcado − buscado) / (buscado − lo del agua)
why-meter-ceiling = el máximo de abono ya diluido para estas plantas

# --- reports, suitability, mixing waters, calcium and magnesium ---
choice-water-suits = ¿es buena mi agua para mis plantas?
choice-water-hard = mi agua del grifo tiene 14 dH
choice-water-soft = mi agua del grifo tiene 5 dH
ask-reach-unit = Ese abono se mide en { $unit }: ¿cuántos { $unit } tienes?
ask-how-hard = ¿Cuánto de dura? Mándalo así: mi agua del grifo tiene 18 dH. Está en la página de la compañía, o en una tira de prueba.
ask-report-unit = Leo análisis en mg/l, mmol/l o meq/l. Mándalo así: Ca 80, Mg 12, HCO3 240, Na 20, Cl 35 mg/l.
report-ions = De su análisis: { $ions } mg/l.
report-balance = Sus cargas cuadran con un { $percent } % de diferencia.
why-water-report = dureza por el calcio y el magnesio, alcalinidad por el bicarbonato, EC por todos los iones
ask-water-figures = Sé muy poco de tu agua. Manda su dureza, su EC o un análisis, como: mi agua del grifo tiene 14 dH; mi agua del grifo tiene 0,5 mS; Ca 80, Mg 12, HCO3 240 mg/l.
suits-good = Buena{ $plants ->
    [none] {" "}para orquídeas
   *[other] {" "}para { $plants }
}.
suits-usable = Sirve{ $plants ->
    [none] {" "}para orquídeas
   *[other] {" "}para { $plants }
}, sin ser ideal.
suits-poor = No es buena{ $plants ->
    [none] {" "}para orquídeas
   *[other] {" "}para { $plants }
}.
suits-good-usable = De buena a pasable{ $plants ->
    [none] {" "}para orquídeas
   *[other] {" "}para { $plants }
}.
suits-good-poor = Depende{ $plants ->
    [none] {""}
   *[other] {" "}para { $plants }
}: sé muy poco de esta agua.
suits-usable-poor = Pasable como mucho{ $plants ->
    [none] {" "}para orquídeas
   *[other] {" "}para { $plants }
}, quizá ni eso.
suits-finding = { $quantity ->
    [ec_ms_cm] EC { $value } mS/cm
    [hardness_mg_l_caco3] Dureza { $value } °dH ({ $caco3 } mg/l CaCO3)
    [alkalinity_mg_l_caco3] Alcalinidad { $value } °dH ({ $caco3 } mg/l CaCO3)
    [na_mg_l] Sodio { $value } mg/l
    [cl_mg_l] Cloruro { $value } mg/l
    [sar] Relación de adsorción de sodio { $value }
    [cl_meq_l] Cloruro { $value } meq/l
    [hco3_meq_l] Bicarbonato { $value } meq/l
   *[nitrate_n_mg_l] Nitrógeno nítrico { $value } mg/l
}{ $good ->
    [none] .
   *[other] : bien hasta { $good }, se aguanta hasta { $most }.
}
suits-thin = Mezclada con lluvia u ósmosis va bien: { $percent } % de esta, el resto pura.
suits-pure = No trae calcio ni magnesio: los tiene que poner el abono.
suits-range = Doy un margen, porque solo sé algunos de sus números. Un análisis lo aclararía.
suits-limits = Límites para { $class_ ->
    [sensitive] raíces delicadas
    [hungry] plantas que comen mucho
   *[other] casi todas las orquídeas
}: cifras de cultivadores, no hay ensayos que las den.
blend-taken = Con { $percent } % de { $water } en la regadera queda { $values }; la cantidad de abono no cambia.
blend-unknown = La misma cantidad de abono. Qué hace { $percent } % de { $water } con tu agua no lo sé: manda su dureza, como: mi agua del grifo tiene 14 °dH.
mix-parts = { $first_percent } % de { $first } con { $second_percent } % de { $second }: { $values }.
ask-mix-unit = ¿En qué unidad? Manda: mezclar grifo y ósmosis a 6 dH, o: a 0,3 mS.
ask-mix-figure = ¿Cómo es tu { $water }? Manda { $quantity ->
    [ec_ms_cm] su EC, como: mi agua del grifo tiene 0,5 mS
    [na_mg_l] su análisis, como: Ca 80, Mg 12, HCO3 240, Na 20, Cl 35 mg/l
   *[other] su dureza, como: mi agua del grifo tiene 14 dH
}.
mix-waters = { $first ->
    [none] Solo { $second_water }, { $second }
   *[other] { $second ->
        [none] Solo { $first_water }, { $first }
       *[other] { $first } de { $first_water } y { $second } de { $second_water }
    }
}.
mix-reached = Da { $quantity ->
    [ec_ms_cm] EC { $value } mS/cm
    [hardness_mg_l_caco3] { $value } °dH
    [alkalinity_mg_l_caco3] una alcalinidad de { $value } °dH
   *[na_mg_l] sodio { $value } mg/l
}.
mix-nearest = Con estas dos no se llega a { $quantity ->
    [ec_ms_cm] EC { $target } mS/cm: lo más cerca es { $value }.
    [hardness_mg_l_caco3] { $target } °dH: lo más cerca es { $value }.
    [alkalinity_mg_l_caco3] una alcalinidad de { $target } °dH: lo más cerca es { $value }.
   *[na_mg_l] sodio { $target } mg/l: lo más cerca es { $value }.
}
mix-no-calcium = Apenas trae calcio ni magnesio: los tiene que poner el abono.
mix-check = Compruébala con el medidor antes de echar el abono.
why-water-blend = primera parte = (buscado − segunda) / (primera − segunda)
supplement-enough = No falta nada: agua y abono traen bastante calcio y magnesio para N { $n } mg/l.
supplement-short = { $sure ->
    [yes] Falta
   *[no] Puede que falte
}: { $what } (abono con N { $n } mg/l).
supplement-gap = { $element ->
    [Ca] calcio
   *[Mg] magnesio
} { $mg_l } de { $target } mg/l
supplement-water-unknown = No tengo apuntada tu agua, así que no cuento lo que trae. Manda: mi agua del grifo tiene 14 dH.
supplement-fed = Tu abono ya da { $what } mg/l.
supplement-none = { $fed ->
    [yes] El resto no lo trae nada más de tu estante.
   *[no] Nada de tu estante lo trae.
} Hace falta { $kind ->
    [Ca] nitrato de calcio, o un suplemento con calcio
    [Mg] sulfato de magnesio (sal de Epsom), o un suplemento con magnesio
   *[both] un suplemento con calcio y magnesio, o algo de agua del grifo en la mezcla
}. Mándame su etiqueta y te digo la dosis.
supplement-dose = { $amount } { $unit } de { $product } para { $volume }: da { $brings } mg/l, EC hasta { $ec } mS/cm en total.
supplement-cut-ec-ceiling = Menos de lo que haría falta: con más se pasa la EC que aguantan tus plantas.
supplement-cut-nitrogen-ceiling = Menos de lo que haría falta: su nitrógeno pasaría de lo que aguantan tus plantas.
supplement-no-room-ec-ceiling = No cabe un suplemento: agua y abono solos ya llegan a la EC que aguantan tus plantas. Abona más flojo, o usa agua más pura.
supplement-no-room-nitrogen-ceiling = No cabe un suplemento con nitrógeno: el abono ya da todo el que aguantan tus plantas. Abona más flojo, o usa uno sin nitrógeno.
supplement-left = Sigue faltando { $what }: usa uno que lo traiga también.
supplement-how = Échalo en la regadera llena después del abono, nunca juntos concentrados. Su nitrógeno cuenta como abono.
why-supplement-target = { $element ->
    [Ca] calcio
    [Mg] magnesio
   *[other] { $element }
} a { $mg_l } mg/l, lo que se busca con este nitrógeno

# --- pictures ---
picture-missing = (Aquí no se pueden dibujar imágenes: quien lleva este bot tiene que instalar lo que las dibuja.)
picture-north = No sé dónde vives, así que las estaciones son las del norte. Manda algo como: vivo en Bilbao.
picture-year-head = { $year }, { $count } { $count ->
    [one] planta
   *[other] plantas
}: hasta hoy lo hecho, después lo que viene.
picture-year-line = - { $plants }: { $parts }.
picture-year-part = { $what } { $months }
picture-year-alt = El año { $year } en una tabla: { $count } { $count ->
    [one] fila
   *[other] filas
} de plantas por meses, con lo que recibió y recibirá cada una
picture-cell = { $cell ->
    [fed] abonada
    [watered] regada con agua sola
    [feed] abonar
    [less] abonar menos
    [clear] agua sola
    [rest] reposo
    [flushed] lavada
    [differ] no todas igual
   *[blank] nada apuntado
}
picture-salts-unit = mS/cm en la maceta mojada
picture-salts-between = de { $low } a { $high }
picture-salts-limit = límite { $limit }
picture-salts-lane = { $kind ->
    [fed] abono
    [clear] agua sola
    [flush] lavado
   *[reading] drenaje, mS/cm
}
picture-salts-alt = Sales en la maceta de { $plant }{ $first ->
    [none] {""}
   *[other] {" "}desde { $first }
}: ahora unos { $ec } mS/cm, límite { $limit }
picture-card-amount = { $amount } { $unit ->
    [tsp] cdta
   *[other] { $unit }
}
picture-card-of = de { $product } para { $volume }
picture-card-heading = { $part ->
    [measure] Mide
    [why] De dónde sale
   *[mind] Ojo
}
picture-card-sum = en total, { $strength } de la dosis completa
picture-card-alt = Una tarjeta para compartir: { $amount } { $of }
