# What a person reads. Amount first, then how to measure, why, and what to mind.
# German: du; names, places and products are never inflected, so they stand where any form fits.

# --- the dose ---
product = { $analysis }{ $form ->
    [powder] {" "}Pulver
    [liquid] {" "}flüssig
   *[other] {""}
}
dose-amount = { $amount } { $unit ->
    [tsp] TL
   *[other] { $unit }
} { $product } auf { $volume }
volume-litres = { $litres } l
volume-millilitres = { $millilitres } ml
volume-own = { $amount } { $unit ->
    [us_gallon] US gal
    [us_quart] US qt
    [us_fluid_ounce] US fl oz
    [imperial_gallon] imp. gal
    [imperial_pint] imp. pt
   *[imperial_fluid_ounce] imp. fl oz
} ({ $metric })

measure-weigh = Abwiegen mit einer { $step }-g-Waage (auf { $error } % genau).
measure-syringe = Mit einer Spritze mit { $step }-ml-Strichen aufziehen (auf { $error } % genau).
measure-stock = { $product } g in Wasser auflösen, auf { $bottle } ml auffüllen, davon { $use } ml in die Kanne: eine { $step }-g-Waage { $error ->
    [none] kann so wenig nicht wiegen.
   *[other] liegt hier bis { $error } % daneben.
} Hält { $days } Tage, kühl, dunkel, beschriftet. Oder gleich { $batch } oder mehr ansetzen.
measure-stock-liquid = { $product } ml mit Wasser auf { $bottle } ml auffüllen, davon { $use } ml in die Kanne: eine Spritze mit { $step }-ml-Strichen { $error ->
    [none] kann so wenig nicht messen.
   *[other] liegt hier bis { $error } % daneben.
} Hält { $days } Tage, kühl, dunkel, beschriftet. Oder gleich { $batch } oder mehr ansetzen.
measure-cross-check = Grob { $spoons } { $many ->
    [yes] gestrichene
   *[no] gestrichener
} TL Pulver: nur damit dir ein Kommafehler auffällt.
measure-batch = Zu wenig für deine Waage oder Spritze{ $error ->
    [none] .
   *[other] {" "}(bis { $error } % daneben).
} Misch mindestens { $batch } und heb den Rest fürs nächste Gießen auf.
measure-spoon-stock = { $spoons } gestrichenen Teelöffel in Wasser auflösen, auf { $bottle } ml auffüllen, davon { $use } ml in die Kanne. Hält { $days } Tage, kühl, dunkel, beschriftet. Besser: einen Löffel voll wiegen und die Aufwandmenge in Gramm schicken.
measure-spoon = Ein gestrichener Löffel ist grob. Besser: einen Löffel voll abwiegen und mir die Aufwandmenge in Gramm schicken.

makes = Ergibt { $elements } mg/l{ $ec ->
    [none] .
   *[other] ; hebt den EC deines Wassers um { $ec } mS/cm.
}
chain-target = Warum: { $steps }.
chain = Warum: { $steps } = { $strength } der vollen Stärke.

# --- the steps ---
why-full-assumed = als volle Stärke 200 mg/l N genommen (keine Aufwandmenge genannt)
why-full-product = volle Stärke laut Etikett in deinem Regal
why-full-target = die Konzentration, die du wolltest
why-form-weighed = gewogen (weder Pulver noch flüssig genannt)
why-density-assumed = 1,2 kg je Liter für den Flüssigdünger angenommen
why-measure-us = US-Maße angenommen
why-measure-imperial = britische Maße angenommen
why-ec-water_unknown = als EC vom Dünger allein gerechnet, weil der EC deines Wassers fehlt
why-ec-water_known = von EC { $wanted } der EC { $own } deines Wassers abgezogen
why-ec-water_hardness = dein Wasser mit { $middle } mS/cm angesetzt ({ $low } bis { $high } nach der Härte; mit seinem EC wird es genauer)
why-strength-asked = { $factor ->
    [full] volle Stärke
   *[other] { $factor }
} gewünscht
why-strength-target = nichts für Jahreszeit oder Substrat abgezogen
why-strength-default = { $factor } (weder Stärke noch Rhythmus genannt)
why-strength-every_watering = { $factor } bei jedem Gießen
why-strength-weekly = { $factor } bei wöchentlichem Düngen
why-strength-fortnightly = { $factor } beim Düngen alle zwei Wochen
why-strength-monthly = { $factor } bei monatlichem Düngen
why-season-winter = × { $factor } Winter
why-medium-sphagnum = × { $factor } Sphagnum hält Salze fest
why-medium-clay_pellets = × { $factor } Blähton hält Salze fest
why-seedling = × { $factor } Sämlinge
why-ceiling-label = auf die Aufwandmenge gekürzt
why-ceiling-hungry = auf 200 mg/l N gekürzt (Grenze für Starkzehrer)
why-ceiling-moderate = auf 125 mg/l N gekürzt (Grenze für solche Pflanzen)
why-ceiling-sensitive = auf ein Viertel vom Etikett und 50 mg/l N gekürzt (Grenze für empfindliche Wurzeln)
why-rest-genus = { $plants } ruht gerade
why-rest-growth = eine ruhende Pflanze nimmt keinen Dünger

# --- no feed ---
no-feed-genus = Kein Dünger: nur klares Wasser, und wenig. { $plants } { $count ->
    [one] ruht
   *[other] ruhen
} in dieser Jahreszeit.
clear-only = Kein Dünger: { $volume } klares Wasser{ $plants ->
    [none] .
   *[other] , für { $plants }.
}
clear-how = Gieß, bis es unten herausläuft, der Topf ganz durch nass ist, und lass abtropfen. Doch Dünger hinein? Schick „Dünger“ mit den Litern.
clear-flush = { $enough ->
    [yes] Das reicht auch für das monatliche Spülen (etwa { $volume }): langsam durchgießen, in zwei Runden.
   *[no] Das monatliche Spülen braucht mehr: etwa { $volume }, zweimal die Töpfe, langsam durchgegossen.
}
no-feed-growth = Kein Dünger: nur klares Wasser, und wenig. Eine ruhende Pflanze nimmt nichts auf, und was liegen bleibt, verbrennt die Wurzeln.
no-feed-until = Fang wieder an, wenn ein Neutrieb oder neue Wurzeln kommen.
no-feed-months = Ruhezeit nach dem Kalender: { $begin } bis { $end }. Fang danach wieder an, mit Neutrieb oder neuen Wurzeln.
no-feed-others = Nur für { $plants }: { $amount } { $unit ->
    [tsp] TL
   *[other] { $unit }
} auf { $volume }.

# --- cautions ---
caution-plant-unknown = Ich kenne die Pflanze nicht: fang schwächer an und sag mir, was es ist.
caution-types-rest = Manche Arten dieser Gattung ruhen jetzt und bekommen keinen Dünger: schick die Art, z. B. Dendrobium nobile.
caution-ailing = Eine kranke Pflanze bekommt keinen Dünger, nur klares Wasser. Schick allein, was du siehst, etwa „Wurzelfäule an meiner Phal“: dann gibt es einen Plan.
caution-wet-roots-first = Erst die Wurzeln mit klarem Wasser anfeuchten.
caution-softened-water = Enthärtetes Wasser ist voll Natrium: nicht für Orchideen. Nimm das Wasser vor dem Enthärter oder Regenwasser.
caution-water-over-limit = { $alone ->
    [yes] Nicht mit diesem Wasser: schon sein EC { $own } liegt über den { $most } mS/cm, die diese Pflanzen vertragen.
   *[no] Nicht mit diesem Wasser allein: mit seinem EC { $own } werden es { $total }, und diese Pflanzen vertragen { $most } mS/cm.
} { $litres ->
    [none] Nimm Regen- oder Osmosewasser.
   *[other] Nimm Regen- oder Osmosewasser, mit höchstens { $litres } von deinem auf { $volume }.
}
caution-spoon-is-rough = Ein Löffel kann doppelt so viel wiegen wie der andere: abstreichen, und lieber weniger.
caution-sensitive-roots = Diese Wurzeln verbrennen leicht: lieber schwächer als stärker.
caution-winter-half = Im Winter ist die Hälfte davon üblich, außer sie wächst.
caution-slow-growth = Sie wächst langsam: weniger düngen, oder nur jedes zweite Mal.
caution-hard-water = Dein Wasser ist hart und bringt selbst Salze mit: öfter durchspülen oder mit Regenwasser verschneiden.
caution-salty-water = Dein Wasser allein ist salziger, als diese Pflanzen vertragen: mit Regen verschneiden und öfter durchspülen.
caution-no-calcium-in-water = Dieses Wasser bringt weder Calcium noch Magnesium, und auf deinem Etikett steht keins: nimm einen Dünger mit beidem oder etwas Leitungswasser dazu.
caution-clear-water-monthly = Einmal im Monat nur klares Wasser, bis es frei durchläuft.
caution-too-much-signs = Braune Wurzelspitzen, absterbende Blattspitzen oder eine Kruste auf dem Substrat heißen: zu viel. Mit klarem Wasser durchspülen, Dünger aussetzen.
caution-calcium-apart = Calciumdünger nie in ein Konzentrat mit Phosphat oder Sulfat.
caution-no-dust = Handschuhe an, und den Staub nicht einatmen.
caution-no-splash = Handschuhe an, und nichts in die Augen bringen.
caution-children-and-pets = Konzentrate weg von Kindern und Haustieren, nie in eine Getränkeflasche.
caution-never-mix-concentrates = Nie zwei Konzentrate zusammenschütten.
caution-label-first = Das Etikett und die Vorschriften bei dir gehen vor.
caution-not-for-food = Nicht für Pflanzen, die du isst.
caution-not-down-the-drain = Düngerreste bekommen andere Pflanzen, nicht der Abfluss und nicht der Teich.
caution-ask-a-society = Wenn die ganze Sammlung kränkelt, zeig sie im Orchideenverein oder bei der Gartenberatung.
caution-clear-water-only = Nur gießen, wenn sie schrumpelt oder das Substrat durchgetrocknet ist.

# --- what was made of the words ---
read-as = Gelesen: { $pairs }.
meant-strength = Stärke
read-as-pair = „{ $text }“ als { $meaning }
not-used = Nicht verstanden, nicht benutzt: { $texts }.
not-used-one = „{ $text }“
not-used-maybe = „{ $text }“ (meinst du { $suggestions }?)

# --- questions ---
ask-volume = Wie viele Liter willst du ansetzen?
ask-product = Was steht auf dem Etikett? Schick die drei Zahlen, z. B. 20-20-20.
ask-product-with-rate = Welche drei Zahlen stehen auf dem Etikett (z. B. 20-20-20)? Ohne sie kann ich nicht sagen, ob die Aufwandmenge der Pflanze zu viel ist.
ask-volume-and-product = Wie viele Liter, und welche drei Zahlen stehen auf dem Etikett? Z. B.: 5 Liter, 20-20-20 Pulver.
ask-label-rate = Da ist kaum Stickstoff drin, also brauche ich die Aufwandmenge vom Etikett. Schick sie so: laut Etikett 1 g pro Liter.
ask-element-none = Auf diesem Etikett steht kein { $element }, danach kann ich nicht dosieren. Nenn einen Dünger, der es hat, oder ein Ziel für Stickstoff, z. B. 50 ppm N.
ask-ec-perhaps = Nach der Härte hat dein Wasser allein vielleicht schon diesen EC ({ $low } bis { $high } mS/cm). Schick mir seinen EC, z. B.: mein Leitungswasser hat 0,5 mS. Oder einen höheren EC, oder nimm Regenwasser.
ask-ec-reached = Diesen EC hat dein Wasser allein schon. Schick einen höheren oder nimm Regenwasser.
ask-form-unit = Die Aufwandmenge ist in Milliliter, du schreibst aber Pulver. Was stimmt? Schick sie in Gramm, oder schreib flüssig.
ask-several-analysis = { $texts } sind zwei Dünger, und ich rechne einen nach dem anderen. Schick die ganze Zeile noch mal mit nur einem davon.
ask-several = Du schreibst { $texts }. Was stimmt? Schick die ganze Zeile noch mal mit nur einem davon.
ask-range = „{ $texts }“ lässt es offen. Schick eine Zahl.
ask-negation = Du schreibst „{ $texts }“. Sag mir, was es ist, nicht, was es nicht ist.
ask-ambiguous_number = Ist { $texts } eine Kommazahl oder sind es Tausend? Schick es eindeutig, z. B. 1500 ml oder 1,5 l.
ask-element = { $texts } wovon? Schick es z. B. so: 100 ppm N für Stickstoff; oder vom Wasser Härte oder EC.
ask-ec_unit = „{ $texts }“ ist als Leitwert kaum möglich. Schick ihn mit Einheit, z. B. EC 0,8 mS/cm oder 800 µS/cm.
ask-hardness_unit = In welcher Einheit ist „{ $texts }“? Schick es z. B. so: 12 °dH oder 200 mg/l CaCO3.
ask-lone_number = { $texts } was? Schick es mit Einheit.
ask-product_of_numbers = „{ $texts }“ kann zweierlei heißen. Schick die Gesamtmenge, z. B. 6 Liter.
ask-loose_rate = Wie viel ist „{ $texts }“? Miss es einmal ab und schick es so: laut Etikett 2 ml pro Liter. Oder lass es weg.

# --- refusals ---
refuse-negative = „{ $text }“ ist weniger als nichts. Schick eine Menge über null, z. B. 5 Liter.
refuse-division_by_zero = „{ $text }“ teilt durch null. Schick einen Bruch wie 1/4.
refuse-not_a_number = Mit „{ $text }“ kann ich nicht rechnen. Schick eine Zahl, z. B. 5 Liter.
refuse-too_long = Das ist sehr lang. Schick einmal Gießen in einer kurzen Zeile, z. B.: 5 Liter, 20-20-20 Pulver, viertel Stärke.
refuse-hidden_characters = In der Zeile stecken unsichtbare Zeichen, die Zahlen verdrehen können. Tipp sie noch mal von Hand.
refuse-volume-zero = Das ist so gut wie kein Wasser. Schick, wie viel du ansetzen willst, z. B. 5 Liter.
refuse-volume-absurd = { $volume } braucht man in keiner Wohnung. Schick die Liter für einmal Gießen, z. B. 5 Liter.
refuse-analysis-over = { $analysis } gibt zusammen mehr als 100 %. Schau noch mal aufs Etikett und schick die drei Zahlen, z. B. 20-20-20.
refuse-analysis-zero = In 0-0-0 ist nichts zum Düngen. Schick die drei Zahlen vom Etikett, z. B. 20-20-20.
refuse-strength-zero = So schwach ist es klares Wasser. Schick eine Stärke wie viertel, oder lass sie weg.
refuse-target-zero = Damit gibt es nichts zu düngen. Schick einen Wert über null, z. B. 100 ppm N.
refuse-label-absurd = { $rate } { $unit ->
    [tsp] TL
   *[other] { $unit }
} je Liter kann keine Aufwandmenge sein. Schau noch mal aufs Etikett und schick es so: laut Etikett 1 g pro Liter.
refuse-granules = Granulat und Langzeitdünger löst man nie im Gießwasser auf: sie würden die Wurzeln verbrennen. Streu die Menge vom Etikett aufs Substrat, wenn es Orchideen erlaubt, oder schick mir ein lösliches Pulver oder einen Flüssigdünger.

# --- help ---
help = Ich rechne aus, wie viel Dünger in dein Wasser kommt. Schick eine Zeile, z. B.:
    5 Liter, 20-20-20 Pulver, Sphagnum, Winter, viertel Stärke
    Schreib dazu, was du weißt: Pflanze, Aufwandmenge, Wasser. Die Reihenfolge ist egal.
    Auch: mein Messgerät zeigt 0,9, 20-20-20 · sind 14 dH zu hart für Phals? · Leitungswasser und Osmose auf 6 dH mischen · Stammlösung 1:100 von 20-20-20 · braune Wurzelspitzen und weiße Kruste
needs-chat = Dafür müsste ich mir deine Pflanzen, Dünger und dein Wasser merken, und hier merke ich mir nichts. Schick es im Chat.
needs-one-line = Hier merke ich mir nichts: schick alles, was du siehst, in einer Zeile, oder frag im Chat.
apology = Entschuldige, mein Fehler: da ist etwas schiefgegangen, ich habe es notiert. Schick es bitte gleich noch mal.
missing-hint = Genauer wird es mit { $items }. „mehr“ zeigt alle Hinweise, „warum“ die Schritte.
hint-plant = Pflanze
hint-medium = Substrat
hint-label = Aufwandmenge
hint-water = deinem Wasser

# --- plants on record ---
plant-kind = { $traits } { $kind }
plant-label = { $count ->
    [1] { $kind ->
        [none] 1 Pflanze ohne Namen
       *[other] { $kind }
    }
   *[other] { $count } { $kind ->
        [none] Pflanzen
       *[other] { $kind }
    }
}
plant-named-several = { $name } × { $count }
pot = { $cm }-cm-Topf
pot-inch = { $inches }-Zoll-Topf ({ $cm } cm)
medium-bark = Rinde
medium-sphagnum = Sphagnum
medium-clay_pellets = Blähton
medium-coconut = Kokos
medium-rockwool = Steinwolle
medium-perlite = Perlit
medium-stone = Steine
medium-mounted = aufgebunden
medium-mixed = Mischung
growth-growing = im Wachstum
growth-new_roots = neue Wurzeln
growth-new_leaves = neue Blätter
growth-new_pseudobulbs = neue Bulben
growth-flowering = Blütentrieb oder Blüte
growth-slow = wächst langsam
growth-resting = in Ruhe
growth-seedling = Sämling
plants-more = { $count } weitere
plants-added = Notiert: { $plants }.
plants-unknown = Noch nicht bekannt: { $items }. Schick es irgendwann, z. B.: { $name } steht in Rinde, 12 cm Topf.
unknown-genus = welche Orchidee
unknown-medium = welches Substrat
unknown-pot = wie groß der Topf
plants-first-hint = Jetzt noch, womit du düngst (mein Pulver ist 20-20-20, Etikett 1 g pro Liter), dann frag: was steht heute an.
plants-first-plan = Frag: was steht heute an, oder schick 2 l für eine Dosis.
plants-corrected = { $plants }.
plants-water = { $plants }: { $volume } pro Gießen{ $count ->
    [1] .
   *[other] , für jede.
}
plants-renamed = { $before } heißt jetzt { $name }.
plants-moved = { $plants }: neuer Platz { $place }.
plants-repotted = Notiert: { $day } { $plants } umgetopft{ $facts ->
    [none] .
   *[other] {" "}({ $facts }).
}
plants-repotted-note = Drei Wochen kein Dünger, oder bis neue Wurzeln kommen.
plants-growth = { $plants }: { $growth }.
plants-growth-rest = Kein Dünger in der Ruhezeit: klares Wasser, und wenig.
plants-fewer = { $gone } { $kind ->
    [none] {""}
   *[other] { $kind }
} weg, { $left } noch da.
plants-lost = Von deiner Liste gestrichen: { $plants }. Was bisher war, bleibt im Tagebuch.
plants-meanwhile = Das hatte gerade schon jemand geändert, notiert waren da: { $held }.
who-rests = Ruhe { $when ->
    [now] jetzt
    [month] im { $month }
    [day] { $month }
    [winter] im Winter
    [spring] im Frühling
    [summer] im Sommer
    [autumn] im Herbst
   *[then] dann
}: { $plants }. Nur klares Wasser, und wenig davon.
who-rests-none = Keine von deinen ruht { $when ->
    [now] jetzt
    [month] im { $month }
    [day] { $month }
    [winter] im Winter
    [spring] im Frühling
    [summer] im Sommer
    [autumn] im Herbst
   *[then] dann
}.
who-flush = Zum Durchspülen dran: { $plants }. „Wie spüle ich“ mit einem Namen sagt, mit wie viel Wasser.
who-flush-none = Heute muss keine durchgespült werden.
ask-add-listed = Soll ich das eintragen: { $plants }? Willst du eine Dosis dafür, sag, wie viele Liter.
plants-not-added = Nichts wurde eingetragen.
plants-none = Noch keine Pflanzen notiert. Schick sie z. B. so: ich habe 3 Phals in Rinde, 12 cm Töpfe, Küche.
plants-none-group = Die Gruppe hat keine Pflanzen notiert. Für deine eigenen schreib mir privat; für die der Gruppe: { "/dose" } wir haben 3 Phals in Rinde, 12 cm Töpfe, Gewächshaus.
plants-count = { $count } { $count ->
    [one] Pflanze
   *[other] Pflanzen
}
plants-place = { $place ->
    [none] Ohne Platz:
   *[other] { $place }:
}
ask-which-plant = Welche von diesen { $count }? Schick die Nummer oder „alle“.
ask-which-some = Welche { $some ->
    [one] von diesen { $count }
   *[other] { $some } von diesen { $count }
}? Schick { $some ->
    [one] die Nummer.
   *[other] eine Nummer oder Namen, oder mehrere Nummern, etwa: 1 und 2.
}
ask-which-plants = Welche Pflanzen? Schick einen Namen, eine Gattung oder einen Platz, z. B.: alle Phals durchgespült.
ask-no-plants-yet = Noch sind keine Pflanzen notiert. Schick sie z. B. so: ich habe 3 Phals in Rinde, 12 cm Töpfe, Küche.
ask-part-of = { $plants } sind ein Eintrag: Nichts wurde notiert. Ohne Zahl gilt es für alle; oder trenn { $fewer } davon erst ab, etwa: stell { $fewer } { $kind } auf den Balkon.
ask-gone = { $plants } { $count ->
    [one] steht
   *[other] stehen
} nicht mehr auf deiner Liste ({ $day }): Nichts wurde getan. Eben erst gestrichen? Schick: rückgängig. Sonst nimm sie wieder auf, etwa: neue { $kind ->
    [none] Pflanze
   *[other] { $kind }
} namens { $name }.
ask-had = Nichts wurde notiert. Wenn du sie noch hast, schick: füge hinzu { $plants }. Standen sie auf der Liste, dann etwa: 2 Vandas eingegangen.
ask-names-count = { $count } { $count ->
    [one] Pflanze
   *[other] Pflanzen
} und mehr Namen: { $names }. Nichts wurde notiert; schick Zahl und Namen passend, etwa: neu 2 Phals namens Ruby und Max.
ask-further-named = Schon notiert, ohne Namen: { $known }. Ist { $name } diese, schick: die { $kind } heißt { $name }. Ist es eine weitere, sag ja.
ask-further = Schon notiert: { $known }. Soll ich { $plants } als weitere dazunehmen? Sind das alle, die du hast, sag nein.
ask-fewer-than = Notiert: { $plants }, das sind { $gone } mehr als { $count }. Nichts wurde geändert; schick, was mit den anderen ist, etwa: { $gone } { $kind } eingegangen.
plants-in-all = Insgesamt { $count } { $kind }.
ask-lost-apart = Nichts wurde geändert. Schick eine Gattung nach der anderen, etwa: 2 Phals eingegangen.
ask-more-than = Notiert: { $plants }, weniger als { $count }. Nichts wurde geändert; sind alle weg, schick: { $held } { $kind } eingegangen.
plants-split = { $left ->
    [one] Die andere { $kind } bleibt, wie sie war.
   *[other] Die anderen { $left } { $kind } bleiben, wie sie waren.
}
ask-name-one = Noch ohne Namen: { $known }. Nichts wurde geändert; nenn sie einzeln, etwa: nenn die { $kind } auf dem Balkon { $name }.
ask-them = Die Pflanze, um die es ging, ist nicht notiert. Schick Namen oder Art, oder trag sie erst ein. Notiert: { $known }.
dose-for-nobody = „{ $meant }“ habe ich nicht notiert. Notiert: { $known }. { $some ->
    [none] Das hier gilt für irgendeine Orchidee; kennst du die Art, trag sie erst ein:
   *[other] Das hier gilt nur für { $some }:
}
ask-no-such = „{ $meant }“ steht nicht in deinem Regal: keine Menge davon. Im Regal: { $feeds }. Schick eins davon, oder das Etikett: { $meant } ist 20-20-20 Pulver, 1 g pro Liter.
ask-not-on-record = „{ $meant }“ habe ich nicht notiert{ $known ->
    [none] .
   *[other] . Notiert: { $known }.
} Schick eine davon, oder trag sie erst ein.

# --- products on record ---
n-nitrate = { $percent } % Nitrat-N
n-ammonium = { $percent } % Ammonium-N
n-urea = { $percent } % Harnstoff-N
label-rate = Etikett { $rate } { $unit ->
    [tsp] TL
   *[other] { $unit }
} pro Liter
density = { $density } kg/l
price = { $currency ->
    [none] { $price }
   *[other] { $price } { $currency }
}{ $pack ->
    [none] {""}
   *[other] {" "}für { $pack }
}
product-added = In deinem Regal: { $product }.
product-no-rate = Noch keine Aufwandmenge: als volle Stärke nehme ich 200 mg/l N. Besser schickst du sie, z. B.: Etikett 1 g pro Liter.
product-use-it = Soll das dein Standard sein? Schick: ab jetzt { $name } nehmen.
product-name-it = Um ihm einen Namen zu geben, schick: nenn ihn Blau
ask-rate-or-mix = Steht das auf dem Etikett, oder hast du es so gemischt? Schick: { $name }, Etikett { $rate } { $unit } pro Liter; oder die ganze Menge mit: zu viel?
ask-name-of-what = Was soll { $name } heißen? Schick es so: nenn die Vanda { $name }
ask-which-feed = Von welchem Dünger ist das? Schick einen nach dem anderen, etwa: { $name } kostet 12 € für 500 g.
ask-unshelved = { $what } steht nicht in deinem Regal: keine Menge davon, und nichts notiert. Trag es mit den Zahlen vom Etikett ein, etwa: Magnesiumsulfat 9,8 % Mg Pulver, Etikett 0,3 g pro Liter, nenn es bitter
ask-ceased = { $name } bleibt im Regal. Soll es weg, schick: lösche { $name }. Für einen anderen: „ab jetzt NAME nehmen“.
says-remove = lösche { $name }
ask-which-product = { $several ->
    [yes] Welcher? Es passen mehrere: { $products }. Schick die Zahlen oder den Namen.
   *[no] So einer steht nicht in deinem Regal. Da sind: { $products }.
}
newest-taken = „Der neue“: { $name }, zuletzt notiert.
can-taken = Für die volle Kanne: { $volume }.
ask-can = Wie viel passt hinein? Schick es z. B. so: meine Kanne fasst 5 l, dann merke ich es mir.
one-feed = Gerechnet nur für { $name }, nicht für { $others }: beide in voller Menge sind zusammen zu viel. Vertragen sie sich? Schick: { $name } und { $others } in eine Flasche?
product-changed = Geändert: { $product }.
product-removed = Aus dem Regal genommen: { $name }.
product-default = Ab jetzt nehme ich { $name }, wenn du keinen anderen Dünger nennst.
product-is-default = , dein Standard
products-none = Noch nichts in deinem Regal. Schick es z. B. so: mein Pulver ist 20-20-20, Etikett 1 g pro Liter, nenn es blaue Dose.
products-head = In deinem Regal:
ask-product-numbers = Welche drei Zahlen stehen auf dem Etikett? Schick die ganze Zeile damit, z. B.: mein Pulver ist 20-20-20, Etikett 1 g pro Liter.
lack-line = { $name }: { $macro ->
    [none] alle Hauptnährstoffe auf dem Etikett
   *[other] nicht auf dem Etikett: { $macro }
}; { $micro ->
    [none] alle Spurenelemente auch.
   *[other] Spurenelemente nicht angegeben: { $micro }.
}
lack-line-traces = { $name }: { $macro ->
    [none] alle Hauptnährstoffe auf dem Etikett
   *[other] nicht auf dem Etikett: { $macro }
}; Spurenelemente ohne Zahlen.
trace-elements = Spurenelemente
lack-note = Ich weiß nur, was du mir vom Etikett gesagt hast. Calcium und Magnesium können mit dem Leitungswasser kommen; Regen und Osmose bringen keins.
choice-none = Noch nichts in deinem Regal, also gibt es nichts auszusuchen. Für die meisten reicht ein ausgewogener Dünger mit Haupt- und Spurennährstoffen.
choice-best = Nimm { $name }.
choice-only = Etwas anderes steht nicht in deinem Regal.
choice-close = Die anderen gingen fast genauso gut.

# --- water, kit, home ---
water-tap = Leitungswasser
water-rain = Regenwasser
water-reverse_osmosis = Osmosewasser
water-distilled = destilliertes Wasser
water-softened = enthärtetes Wasser
water-well = Brunnenwasser
hardness = { $german } °dH = { $caco3 } mg/l CaCO3
ec = EC { $ec } mS/cm
alkalinity = Alkalinität { $caco3 } mg/l CaCO3
water-recorded = Notiert: { $water }.
water-used-now = Ab jetzt rechne ich damit, wenn kein anderes Wasser genannt ist.
water-used-still = Gerechnet wird mit: { $used }. Zum Ändern schick: ich nehme jetzt { $water }.
water-for = { $plants }: ab jetzt { $water }.
kit-scale = Waage auf { $step } g genau
kit-syringe = Spritze mit { $step }-ml-Strichen
kit-can = Kanne mit { $volume }
kit-units-us = US-Maße
kit-units-imperial = britische Maße
kit-units-metric = metrische Maße
kit-spoons = nur Löffel
kit-recorded = Notiert: { $kit }.
kit-line = Ausrüstung: { $kit }.
refuse-step = Eine Waage in Schritten von { $step } g hilft hier nicht. Schick es z. B. so: meine Waage zeigt 0,1 g.
ask-syringe-step = Was ist ihr kleinster Strich? Schick es z. B. so: meine Spritze zeigt 0,1 ml.
ask-remains = Was noch übrig ist, halte ich nicht fest. Für eine Dosis schick die Liter, etwa: 5 l; ist es aufgebraucht, den Namen, etwa: blaue Dose ist leer.
refuse-can = Eine Kanne fasst zwischen 0,1 und { $most } Liter. Schick es z. B. so: meine Kanne fasst 5 l.
home-recorded = { $place }{ $country ->
    [none] {""}
   *[other] , { $country }
}: { $zone }, { $side ->
    [south] Südhalbkugel
   *[north] Nordhalbkugel
}.
home-others = Oder meinst du { $others }? Dann schick das Land dazu.
home-besides = Nicht benutzt: { $texts }. Schick es als eigene Zeile.
home-south = Südhalbkugel: ich drehe die Jahreszeiten um.
home-north = Nordhalbkugel.
home-line = Zuhause: { $place ->
    [none] {""}
   *[other] { $place }, {""}
}{ $zone ->
    [none] {""}
   *[other] { $zone }, {""}
}{ $side ->
    [south] Südhalbkugel
   *[north] Nordhalbkugel
}.
ask-home = „{ $text }“ kenne ich nicht. Schick eine größere Stadt in der Nähe, mit Land, z. B.: ich wohne in Porto, Portugal.
settings-kept = Außerdem notiert: { $plants ->
    [one] 1 Pflanze
   *[other] { $plants } Pflanzen
} (schick: meine Pflanzen), { $feeds ->
    [0] noch kein
   *[other] { $feeds }
} Dünger (schick: meine Dünger); und sieh nach: meine Erinnerungen.
settings-none = Zu Wasser und Ausrüstung ist nichts notiert. Schick es z. B. so: mein Leitungswasser hat 14 dH; meine Waage zeigt 0,1 g; meine Kanne fasst 5 l; ich wohne in Kassel.

# --- the log ---
share-full = voll
# Where a figure is from: what is no citation. Citations stay in their own language.
source-practice = gängige Praxis, keine Quelle
source-ours = von uns
source-told = deine Nachricht
source-direction = Richtung gängige Praxis, Faktor von uns
source-shelf = dein Regal
source-label = Massenbilanz des Etiketts
source-cited = engl.: { $source }
# How days are written: letters as in CLDR date patterns.
pattern-day = ccc d. LLL
pattern-date = d. LLL
pattern-date-year = d. LLL y
pattern-date-long = d. MMMM
day-today = heute
day-yesterday = gestern
day-tomorrow = morgen
logged-fed = Im Tagebuch: { $day } { $plants } gedüngt{ $facts ->
    [none] .
   *[other] {" "}({ $facts }).
}
logged-clear = Im Tagebuch: { $day } klares Wasser für { $plants }.
logged-flush = Im Tagebuch: { $day } { $plants } durchgespült.
logged-reading = Im Tagebuch: { $day } Ablaufwasser von { $plants }, EC { $ec } mS/cm.
reading-under = Das liegt unter der Grenze von { $limit } mS/cm.
reading-over = { $plants ->
    [none] Das liegt über der Grenze von { $limit } mS/cm: jetzt spülen, und kein Dünger, bis der Wert sinkt.
   *[other] Über ihrer Grenze (mS/cm): { $plants }. Jetzt spülen, und kein Dünger, bis der Wert sinkt.
}
reading-no-plant = EC { $ec } mS/cm aus einem Topf liegt { $over ->
    [yes] über der Grenze von { $limit } (von uns): gieß das Doppelte des Topfs an klarem Wasser durch, und kein Dünger, bis der Wert sinkt.
   *[no] unter der Grenze von { $limit } (von uns).
} Nicht notiert, denn ich kenne noch keine Pflanzen von dir. Schick sie so: neu: 3 Phals in Rinde, 12-cm-Töpfe.
logged-resting = In Ruhe: { $plants }. Nächstes Mal kein Dünger, nur klares Wasser.
amended = Berichtigt. { $entry } Davor: { $before }
amended-undone = Wie davor. { $entry }
amended-same = So steht es schon. { $entry }
ask-amend = Was war falsch? { $entry } Schick es etwa so: das war Ruby; oder: es war gestern; oder: rückgängig.
ask-amend-undo = Um das zu berichtigen, schick: rückgängig; und dann die Zeile neu.
ask-undo-last = Der letzte Eintrag ist ein anderer: { $what }{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}. „rückgängig“ nimmt ihn zurück, danach den davor.
ask-wrong = Was war falsch? Schick die Zeile, wie sie sein soll; „rückgängig“ nimmt den letzten Eintrag zurück.
ask-two-days = Zwei Tage auf einmal. Schick sie einzeln, etwa: Ruby gestern gedüngt.
ask-two-things = Das war zweierlei, und ich sehe nicht, welche Pflanzen was bekamen. Schick es einzeln, etwa: Phalaenopsis gedüngt.
not-changed = Dann bleibt alles, wie es ist. Was irrtümlich geändert wurde, nimmt „rückgängig“ zurück.
not-yours = Das klingt nach jemand anderem, deshalb wird nichts notiert. Geht es um deine Pflanzen, schreib es ohne die andere Person.
not-your-water = Das klingt nach dem Wasser von jemand anderem oder von früher: nichts notiert. Deins von heute, etwa: mein Leitungswasser hat 14 dH
not-used-now = Nichts geändert. Soll ein Dünger aus dem Regal, schick: lösche, und seinen Namen.
not-told-doubt = Solange es nicht sicher ist, wird nichts notiert. War es so, schick { $verb ->
    [clear] es so: Ruby gegossen
    [flush] es so: Ruby durchgespült
    [repot] es so: Ruby umgetopft
   *[fed] es so: Ruby gedüngt
}.
feed-pause = Eine Düngepause allein merke ich nicht. Schick „Ruby ruht“, dann gibt der Plan nur klares Wasser, bis du „Ruby hat neue Wurzeln“ oder „Ruby wächst“ schickst.
not-from-today = Nur heute: am Notierten ändert sich nichts. Für eine Menge mit diesem Wasser schreib es dazu, z. B.: 2 l mit Regenwasser.
not-told = Noch ist nichts notiert. Wenn es getan ist, schick { $verb ->
    [fed] es so: Ruby gedüngt
    [clear] es so: Ruby gegossen
    [flush] es so: Ruby durchgespült
    [repot] es so: Ruby umgetopft
    [move] es so: Ruby auf den Balkon gestellt
    [lose] es so: Ruby ist eingegangen; kränkelt sie nur, was du siehst
   *[other] es in einer Zeile
}.
logged-twice = Jetzt zweimal an diesem Tag: { $plants }. War es nur eine Düngung, zweimal erzählt? Schick: rückgängig.
not-given = Dann steht nichts im Tagebuch: ich notiere nur, was gegeben wurde. Was ich irrtümlich notiert habe, nimmt „rückgängig“ zurück.
ask-all-or-some = Alle außer { $names } oder nur { $names }? Noch ist nichts notiert; schick die Zeile noch einmal mit einem davon.
ask-runoff = Was hat das Messgerät gezeigt? Schick es z. B. so: Ablaufwasser von Ruby 1,6 mS.
undone = Zurückgenommen: { $what }{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}{ $whose ->
    [none] .
   *[other] , eingetragen von { $whose }.
}
undo-nothing = Nichts mehr da zum Zurücknehmen.
undo-nothing-own = Von dir ist nichts mehr da zum Zurücknehmen. Was andere eingetragen haben, nehmen sie selbst zurück oder ein Admin.
refuse-undo-others-since = Seitdem hat jemand anders dazu etwas eingetragen. Ein Admin kann die letzten Einträge einzeln zurücknehmen.
diary-you = du
diary-member = jemand anders
all-plants = alle Pflanzen
event-fed = gedüngt
event-clear = klares Wasser
event-flush = durchgespült
event-reading = Ablaufwasser gemessen
event-pause = die Düngepause
event-overfed = zu viel Dünger
event-rescue = Befund: { $cause ->
    [root-rot] Wurzelfäule
    [salt-burn] Salzschaden
    [thirst] Wassermangel
    [cold] Kälte
    [old-age] Alter
   *[unclear] Ursache unklar
}
event-added = eingetragen
event-repot = umgetopft
event-growth = Wachstum notiert
event-moved = umgestellt
event-renamed = umbenannt
event-water = Wasser festgelegt
event-corrected = korrigiert
event-lost = gestrichen
event-product = Regal geändert
event-water_source = Wasser geändert
event-settings = Einstellungen geändert
history-head = { $plants ->
    [none] Tagebuch:
   *[other] { $plants }:
}
history-none = { $plants ->
    [none] Aus dieser Zeit steht nichts im Tagebuch.
   *[other] { $plants }: aus dieser Zeit steht nichts im Tagebuch.
}
history-more = ({ $count } ältere stehen im Export.)

# --- the plan of a day ---
due-feed = düngen
due-clear = klares Wasser
due-flush = durchspülen
due-nothing = nichts
plan-head = Plan für { $day }: { $counts }.
plan-count-feed = { $count } × düngen
plan-count-clear = { $count } × klares Wasser
plan-count-flush = { $count } × durchspülen
plan-count-nothing = { $count } × nichts
plan-left-over = Übrig: { $volume }. Der Rest geht an andere Pflanzen, die Dünger bekommen dürfen.
plan-no-plants = Keine Pflanzen notiert, also noch kein Plan. Schick sie z. B. so: ich habe 3 Phals in Rinde, 12 cm Töpfe, Küche.
plan-no-product = Kein Dünger in deinem Regal, also keine Mengen. Schick ihn z. B. so: mein Pulver ist 20-20-20, Etikett 1 g pro Liter.
plan-can-assumed = Für eine Kanne mit { $volume }; { $who ->
    [member] ein Admin kann die der Gruppe schicken, z. B.: unsere Kanne fasst 8 l.
    [administrator] schick die der Gruppe, z. B.: unsere Kanne fasst 8 l.
   *[own] schick deine, z. B.: meine Kanne fasst 8 l.
}
plan-same-plants = dieselben Pflanzen
plan-wet-first = Vor dem Düngen die Wurzeln mit klarem Wasser anfeuchten.
plan-done-hint = Schick „erledigt“, wenn alles gegossen ist, oder „erledigt 1“ für einen Teil.
plan-flush = Durchspülen{ $water ->
    [none] {""}
   *[other] {" "}({ $water })
}, insgesamt { $volume } in zwei bis drei Durchgängen: { $plants }.
plan-clear = { $water ->
    [none] Klares Wasser
   *[other] Klares Wasser ({ $water })
}, { $volume }: { $plants }.
plan-feed = Gib { $volume } mit { $strength }: { $plants }{ $of ->
    [1] .
   *[other] , Kanne { $can } von { $of }.
}
plan-too-little = Klares Wasser, { $volume }: { $plants }. Der Dünger dafür wäre zu wenig zum Messen.
plan-feed-no-product = Düngen, { $volume }{ $water ->
    [none] {""}
   *[other] {" "}({ $water })
}: { $plants }.
plan-mix = { $amount } { $unit ->
    [tsp] TL
   *[other] { $unit }
} { $name }, auf { $to } auffüllen{ $water ->
    [none] {""}
   *[other] {" "}({ $water })
}.
plan-mix-stock = { $amount } ml von der Stammlösung ({ $holds } { $unit } { $name }), auf { $to } auffüllen{ $water ->
    [none] {""}
   *[other] {" "}({ $water })
}.
plan-stock = Zu wenig, um es direkt abzumessen: erst { $product } { $unit } { $name } auf { $bottle } ml auflösen.
plan-too-coarse = Deine Messschritte ({ $step } { $unit ->
    [tsp] TL
   *[other] { $unit }
}) sind für so wenig zu grob: die Stärken stimmen nur ungefähr.
plan-top-up = Auf { $to } auffüllen ({ $water ->
    [none] klares Wasser
   *[other] { $water }
}).
plan-pour-off = { $volume } an andere Pflanzen abgeben.
plan-again = Weiter geht es beim nächsten Gießen, wenn das Substrat fast trocken ist: frag dann wieder, oder schick: Plan für morgen.
plan-nothing = Nichts: { $plants }.
done-logged = Im Tagebuch: { $what }.
done-fed = { $plants } gedüngt
done-feed = { $plants } gedüngt
done-clear = klares Wasser für { $plants }
done-flush = { $plants } durchgespült
done-left = Noch offen im Plan: { $count } { $count ->
    [one] Eintrag
   *[other] Einträge
}.
done-nothing = Das steht schon im Tagebuch.
ask-no-plan = Es gibt keinen Plan zum Abhaken. Schick: was steht heute an.
ask-plan-old = Der letzte Plan war für { $day }. Schick: was steht heute an, oder sag, was du gegeben hast, z. B.: alle Phals gedüngt.
ask-plan-ahead = Dieser Plan ist für { $day }. Schick „erledigt“ am Tag selbst, oder: was steht heute an.
ask-plan-step = Der Plan hat { $count } Teile. Schick „erledigt“ oder „erledigt 1“.

# --- follow-ups and what is on record ---
on-record = { $whose ->
    [group] Aus den Notizen der Gruppe
   *[own] Aus deinen Notizen
}: { $items }.
on-record-asleep = Weggelassen, weil in Ruhe: { $plants }.
on-record-rate = Du hast { $rate } { $unit } pro Liter geschrieben; das Etikett in deinem Regal sagt weniger, daran habe ich mich gehalten. Ist das Etikett neu, schick: { $name } Etikett { $rate } { $unit } pro Liter.
on-record-volume = { $volume } ist ungefähr das, was diese Töpfe brauchen.
on-record-differ = Sie unterscheiden sich, darum gilt die schwächste Dosis; „Plan“ gibt jeder ihre eigene.
on-record-spoons = Du hast nur Löffel: Die sind dafür zu grob. Nimm eine kleine Spritze aus der Apotheke oder eine Waage, die Zehntelgramm zeigt; bis dahin lieber weniger als mehr.
on-record-plants = deine { $count } Pflanzen
on-record-deciding = { $plants } ({ $plant } verträgt am wenigsten und entscheidet)
follow-up-more = Das ist das { $times }-Fache der Menge davor. Für die Hälfte davon schick: halb so viel.
follow-up-strength-stays = Weiter { $share }, wie gewünscht. Für eine andere Stärke schick sie, etwa: halb.
ask-no-last = Es gibt noch keine Dosis, auf die sich das bezieht. Schick eine Zeile, z. B.: 5 Liter, 20-20-20 Pulver, viertel Stärke.
refuse-overtaken = Danach habe ich noch eine andere Dosis ausgerechnet, und weiter geht es nur von der neuesten. Schick eine ganze Zeile, z. B.: 5 Liter, 20-20-20 Pulver, viertel Stärke.
ask-follow-up = Was soll ich ändern? Schick es z. B. so: mach 3 Liter daraus; oder: und für die Masdevallien.
question-lapsed = Meine Frage ist verfallen, geändert wurde nichts. Schick die Zeile noch einmal, um die es ging.
question-left = Gut, wir lassen es dabei. Geändert wurde nichts.
nothing-asked = Ich hatte nichts gefragt. Schick eine Zeile, z. B.: 5 Liter, 20-20-20 Pulver, viertel Stärke.
help-lost = Das habe ich nicht verstanden: Nichts wurde geändert.
tell-water = Gieß, wenn das Substrat fast trocken ist: heb den Topf, leicht heißt trocken. In Rinde ist das im Sommer oft einmal die Woche, im Winter seltener; Moos bleibt länger nass. Ich plane Dünger und Salze, nicht den Durst (üblich, ohne Quelle).
tell-need = Sie leben lange ohne, wachsen und blühen mit wenig aber besser: ein Viertel der Etikettmenge bei jedem Gießen, solange sie wachsen. Zu viel schadet mehr als keiner (üblich, ohne Quelle).
tell-winter = Was im Winter weiterwächst, bekommt die Hälfte vom Üblichen, was ruht, nichts: klares Wasser, und weniger davon. Ab dem Frühjahr, wenn neue Triebe oder Wurzeln kommen, wie zuvor (üblich, ohne Quelle).
tell-winter-half = Ja: im Winter die Hälfte der üblichen Menge. In meinen Wintermengen steckt die Hälfte schon drin: nicht noch einmal halbieren. In der Ruhe nichts (üblich, ohne Quelle).
tell-which-water = Regen- oder Osmosewasser, oder Leitungswasser, das nicht hart ist; nie Wasser aus einem Salz-Enthärter. Regen- und Osmosewasser bringen weder Calcium noch Magnesium: das muss der Dünger. Schick deins, z. B.: mein Leitungswasser hat 14 dH (üblich, ohne Quelle).
tell-repot-when = Wenn das Substrat zerfällt oder die Wurzeln keinen Platz haben, etwa alle zwei Jahre, am besten zu Beginn neuer Wurzeln (üblich, ohne Quelle). Dann schick: Ruby in Rinde umgetopft; ich halte den Dünger zurück.
tell-bottle = Nicht in eine Flasche Konzentrat: sein Calcium fällt mit Sulfat und Phosphat des Düngers als weißer Schlamm aus. Jedem seine Flasche und Spritze; in der vollen Kanne dürfen sie sich treffen, eins nach dem anderen eingerührt (üblich, ohne Quelle).
tell-keiki = An der Mutter lebt es von ihrem Dünger. Mit drei Wurzeln von etwa 5 cm abtrennen, klein topfen, drei Wochen klares Wasser, dann die Hälfte von dem, was sie bekommt (üblich, ohne Quelle).
tell-dry = Nie auf trockene Wurzeln düngen: sie verbrennen. Erst mit klarem Wasser anfeuchten, eine Viertelstunde warten, dann düngen (üblich, ohne Quelle).
tell-first = Erst klares Wasser, dann Dünger, nie umgekehrt: auf trockenen Wurzeln brennt er. Nach richtigem Durchspülen erst beim nächsten Gießen düngen, nicht am selben Tag (üblich, ohne Quelle).
tell-spray = Dünge die Wurzeln, nicht die Blätter: Die nehmen wenig auf, und was in Herz oder Blattachsel stehen bleibt, schadet. Wenn du sprühst, dann klares Wasser am Morgen (üblich, ohne Quelle).
tell-heat = Über etwa 35 °C wachsen sie kaum: nur klares Wasser in der Kühle des Morgens, Dünger erst wieder, wenn es kühler ist (üblich, ohne Quelle).
tell-no-bloom = Mehr Dünger bringt keine Blüten, Licht schon: hell ohne Mittagssonne, und für eine Phalaenopsis ein paar Wochen Nächte unter etwa 18 °C. Ein Viertel der Etikettmenge, solange sie wächst, genügt (üblich, ohne Quelle).
tell-summer = Nicht stärker: die übliche Dosis. Im Sommer trinken sie öfter und bekommen so von selbst mehr; über etwa 35 °C nur klares Wasser (üblich, ohne Quelle).
tell-in-flower = Ja, die übliche Dosis oder die Hälfte, nie mehr der Blüten wegen. Vorher die Wurzeln anfeuchten, und kein Dünger auf die Blüten (üblich, ohne Quelle).
tell-repot-flower = Besser nicht: Sie kann die Blüten abwerfen. Warte, bis sie verblüht ist und neue Wurzeln kommen; nur faule Wurzeln oder nasses, zersetztes Substrat warten nicht (üblich, ohne Quelle).
tell-before-repot = Nein: am Tag davor klares Wasser, das macht die Wurzeln biegsam. Dünger erst wieder, wenn neue Wurzelspitzen kommen, oder nach { $weeks } Wochen (üblich, ohne Quelle).
tell-rest-feed = In der Ruhe kein Dünger: Sie nimmt nichts auf, und die Salze bleiben an den Wurzeln. Wenig klares Wasser, oder keins, wo sie trocken ruht, bis der Neutrieb kommt (üblich, ohne Quelle).
tell-rest-which = Das ist je Art verschieden. Schick den Namen mit, z. B.: wann ruht Dendrobium nobile?
tell-rest-none = { $plants } hat in meinem Almanach keine feste Ruhe: weiterdüngen, solange sie wächst, im Winter halb so viel.
tell-rest-span = { $plants } ruht nach dem Kalender von { $begin } bis { $end }: kein Dünger{ $dry ->
    [yes] , und trocken halten
   *[no] , wenig klares Wasser
}. Fang danach wieder an, mit Neutrieb oder neuen Wurzeln.
tell-water-amount = So viel, dass unten etwas abläuft, dann abtropfen lassen: nie im Wasser stehen lassen. Schick den Topf, z. B.: Phal steht in Rinde, 12 cm Topf; der Plan sagt dann, wie viele ml (üblich, ohne Quelle).
tell-soak = Beides geht: Gießen spült alte Salze aus, zehn Minuten Tauchen macht trockene Rinde besser nass. Für jeden Topf frisches Wasser, denn gemeinsames trägt Fäule und Schädlinge weiter (üblich, ohne Quelle).
tell-ice = Besser zimmerwarmes Wasser: Eis kühlt die Wurzeln aus, bringt keinen Dünger und spült keine Salze aus (üblich, ohne Quelle).
tell-boiled = Abkochen oder ein Filter nimmt nur einen Teil des Kalks; Abgekochtes abkühlen lassen. Bei hartem Wasser Regen- oder Osmosewasser zumischen; nie Wasser aus einer Salz-Enthärtung (üblich, ohne Quelle).
tell-lime = Hartes Wasser geht halb und halb mit Regen- oder Osmosewasser; weiße Krusten damit ausspülen. Schick den Wert, dann rechne ich damit, z. B.: mein Leitungswasser hat 18 dH (üblich, ohne Quelle).
tell-normal = Sehen kann ich nichts: Beschreib es mir, z. B.: meine Phal hat gelbe Blätter. Bis wir es wissen, klares Wasser und kein Dünger.
tell-often = Bei jedem Gießen ein Viertel der Etikettmenge und einmal im Monat nur klares Wasser; oder alle zwei Wochen die Hälfte. Im Winter halb so viel, in der Ruhe nichts (üblich, ohne Quelle).
tell-often-sensitive = Die vertragen wenig: bei jedem Gießen ein Achtel bis ein Viertel der Etikettmenge, nie mehr, und einmal im Monat nur klares Wasser. Im Winter halb so viel, in der Ruhe nichts (üblich, ohne Quelle).
tell-away = Spül die Töpfe vorher mit klarem Wasser. Zwei, drei Wochen ohne Dünger schaden nicht: Wer gießt, gibt nur klares Wasser, wenn ein Topf leicht ist, und lässt keinen im Wasser stehen. Danach wie sonst düngen, nie zum Ausgleich mehr (üblich, ohne Quelle).
tell-sticky = Klare Tropfen an Trieben und jungen Blättern sind oft nur Pflanzensaft. Klebrige Blätter mit braunen oder weißen Buckeln: vielleicht Schildläuse. Wisch sie ab und stell die Pflanze abseits (üblich, ohne Quelle).
tell-gnats = Kleine Fliegen um Töpfe sind meist Trauermücken: sie leben in nassem, altem Substrat und schaden großen Pflanzen kaum. Zwischen dem Gießen mehr abtrocknen lassen, Untersetzer leeren, Gelbtafeln aufhängen; frisches Substrat, wenn es zerfällt (üblich, ohne Quelle).
tell-dry-roots = Weiß oder silbrig und fest ist eine gesunde, trockene Wurzel: nass wird sie grün. Gießen, wenn die meisten silbrig sind; nichts abschneiden, nicht mehr düngen. Flach, hohl oder braun ist tot (üblich, ohne Quelle).
tell-sunburn = Aus der prallen Sonne stellen. Ein verbrannter Fleck, erst hell, dann braun und trocken, heilt nicht: das Blatt dranlassen. Nur abschneiden, wenn er weich wird und sich ausbreitet. Kein Extradünger, gießen wie sonst (üblich, ohne Quelle).
tell-heat-stress = Nur klares Wasser, kein Dünger, solange es heiß ist. An den kühlsten schattigen Platz mit bewegter Luft stellen, Wurzeln feucht halten, morgens sprühen. Kühle Arten wie Masdevallia werfen über etwa 25 °C Blätter ab. Weiche Wurzeln oder Triebe? Sag es mir (üblich, ohne Quelle).
tell-mould = Schimmel lebt von totem Substrat, nicht von der Pflanze: es ist zu nass, zu luftarm oder zu alt. Abkratzen, mehr abtrocknen lassen, mehr Luft; frisches Substrat, wenn es weich ist oder riecht. Kein Dünger, bis es trockener ist (üblich, ohne Quelle).
tell-algae = Der grüne Belag sind Algen: Licht und Dünger auf nassem Blähton, Moos oder Topf. Den Wurzeln schaden sie kaum. Den Topf abdunkeln, einmal im Monat mit klarem Wasser spülen, oben abtrocknen lassen (üblich, ohne Quelle).
tell-broken = Zerrissene Blätter und Wurzeln mit sauberer Klinge glatt schneiden, die Schnitte einige Tage trocken halten, aufrecht und fest in den Schatten stellen. Nur klares Wasser, kein Dünger bis zu neuen Wurzelspitzen (üblich, ohne Quelle).
tell-air-roots = Wurzeln außerhalb des Topfs sind normal: lass sie dran. Silbrig oder grün und fest ist gesund, braun und hohl ist tot (üblich, ohne Quelle).
tell-flowers-over = Blüten welken nach Wochen oder Monaten: Das ist normal. Dünge weiter wie bisher. Leiden auch Blätter oder Wurzeln, sag es mir, etwa: gelbe Blätter an meiner Phal.
tell-buds = Knospen fallen meist nach einem Wechsel: umgestellt, kalter oder heißer Zug, trockene Luft, trockene Wurzeln oder reifes Obst daneben. Lass die Pflanze stehen, halte die Wurzeln leicht feucht und gib keinen Dünger extra (üblich, ohne Quelle). Weiche Wurzeln oder Flecken? Schreib auch das.
tell-spike = Bei Phalaenopsis schneide einen braunen, trockenen Trieb unten ab; ein grüner darf bleiben, er kann wieder blühen (üblich, ohne Quelle).
tell-missed = Einmal nicht gedüngt schadet nicht: Hol es nie mit mehr nach. Erst klares Wasser, dann weiter mit der üblichen Menge (üblich, ohne Quelle).
tell-repotted = Nach dem Umtopfen nur klares Wasser, bis neue Wurzelspitzen da sind, oder { $weeks } Wochen lang; dann wie gewohnt. Sag „Ruby umgetopft“, dann zählt der Plan mit (üblich, ohne Quelle).
tell-keeps = Trocken und zu hält Pulver Jahre, ein Flüssigdünger bis zum Datum auf der Flasche. Nimm ihn nicht mehr, wenn er riecht, klumpt und sich nicht mehr löst oder Kristalle abgesetzt hat (üblich, ohne Quelle).
tell-ph = Üblich ist pH 5,5 bis 6,5 in der fertigen Lösung (übliche Praxis, ohne Quelle). Säuren, „pH minus“ und „pH plus“ rechne ich nicht: sie verätzen Haut und Wurzeln, also nur nach ihrem eigenen Etikett, mit Handschuhen und pH-Messgerät. Regen- oder Osmosewasser dazu senkt Härte und pH ohne Säure.
tell-ppm-scale = Welche Skala es ist, steht auf dem Messgerät oder in der Anleitung (500, 640 oder 700; auch 0,5, 0,64, 0,7). Oder miss dasselbe Wasser in mS/cm: ppm durch mS/cm ist die Skala.
thanked = Gern. Viel Freude mit den Pflanzen.
help-of-plant = { $name } kenne ich, aber nicht, was du willst. Schick eins davon:
help-of-plant-say = Plan für { $name } | Verlauf von { $name } | 2 l für { $name }
help-group = Ich rechne Dünger aus. Frag mich mit { "/dose" } und deiner Zeile, oder als Antwort auf mich: 5 l 20-20-20 Pulver, Phals, viertel.
    Was du hier einträgst, gehört der Gruppe: alle sehen es, du und die Admins können es zurücknehmen. Deine eigenen Pflanzen und Dünger merke ich mir privat.
help-group-short = Ich rechne Dünger aus. Frag in einer Zeile: { "/dose" } 5 l 20-20-20 Pulver, Phals, viertel. { "/help" } zeigt den Rest.
help-what = Ich rechne aus, wie viel Dünger in die Kanne kommt: nach Etikett, Pflanzen, Wasser und Jahreszeit.
    Ich plane deinen Gießtag: wer Dünger bekommt, klares Wasser, eine Spülung oder nichts.
    Ich merke mir, was gemacht wurde, erinnere dich und helfe, wenn Wurzeln oder Blätter leiden.
help-group-how = Hier antworte ich auf { "/dose" } und wenn du auf mich antwortest. Was du hier einträgst, gehört der Gruppe; deins merke ich mir privat.
help-next-first = Probier eine Zeile, Reihenfolge egal: „{ $example }“
help-next-group = Frag in einer Zeile: „{ $example }“
help-have = Notiert: { $plants ->
    [0] keine Pflanzen
    [one] eine Pflanze
   *[other] { $plants } Pflanzen
}, { $feeds ->
    [0] kein Dünger
    [one] ein Dünger
   *[other] { $feeds } Dünger
}, { $reminders ->
    [0] keine Erinnerung
    [one] eine Erinnerung
   *[other] { $reminders } Erinnerungen
}.
help-next-plants = Als Nächstes deine Pflanzen: „{ $example }“
help-next-feeds = Als Nächstes, womit du düngst: „{ $example }“
help-next-water = Als Nächstes dein Wasser, denn die Härte zählt: „{ $example }“
help-next-plan = Als Nächstes schau, wer was braucht: „{ $example }“
help-next-home = Als Nächstes eine Stadt in deiner Nähe, für Jahreszeit und Uhrzeit: „{ $example }“
help-next-can = Als Nächstes deine Kanne, damit die Mischung hineinpasst: „{ $example }“
help-next-reminders = Als Nächstes lass dich erinnern: „{ $example }“
help-next-today = Alles eingerichtet. „{ $example }“ plant den Tag.
help-example-first = 5 l 20-20-20 Pulver, Phals in Rinde, viertel
help-example-group = 5 l 20-20-20 Pulver, Phals, viertel
help-example-plants = ich habe 3 Phals in Rinde, 12 cm Töpfe, Küche
help-example-feeds = mein Pulver ist 20-20-20, 1 g pro Liter, nenn es blaue Dose
help-example-water = mein Leitungswasser hat 14 dH
help-example-plan = was steht heute an
help-example-home = ich wohne in Kassel
help-example-can = meine Kanne fasst 5 l
help-example-reminders = erinnere mich jeden ersten Sonntag um 9 ans Durchspülen
help-example-today = was steht heute an
help-topics = Für Beispiele schick „Hilfe“ und eins davon: { $topics }.
help-about = Hilfe { $topic }
help-word = Hilfe
# What is tapped below an answer, and read as if it had been typed.
tap-undo = rückgängig
tap-why = warum
tap-more = mehr
tap-done = erledigt
tap-yes = ja
tap-no = nein
tap-all = alle

# --- topics of help: a line, then examples to send, parted by | ---
topic-name-dose = Dosis
topic-name-plants = Pflanzen
topic-name-feeds = Dünger
topic-name-water = Wasser
topic-name-plan = Plan
topic-name-log = Tagebuch
topic-name-reminders = Erinnerungen
topic-name-trouble = Probleme
topic-name-salts = Salze
topic-name-bottles = Flaschen
topic-name-compare = Preise
topic-name-pictures = Bilder
topic-name-settings = Einstellungen
topic-name-group = Gruppe
topic-name-data = meine Daten
topic-dose = Eine Dosis in einer Zeile, Reihenfolge egal; danach mit ein paar Wörtern ändern:
topic-dose-say = 5 l 20-20-20 Pulver, Phals in Rinde, viertel | 3 l 15-5-15 Pulver, 80 ppm N | die Hälfte davon | und in Sphagnum? | warum
topic-plants = Pflanzen eintragen und ändern, was darüber notiert ist:
topic-plants-say = ich habe 3 Phals in Rinde, 12 cm Töpfe, Küche | meine Pflanzen | stell Ruby auf den Balkon | Ruby in Moos umgetopft | Ruby ruht
topic-feeds = Deine Dünger mit Etikett, und welcher passt:
topic-feeds-say = mein Pulver ist 20-20-20, 1 g pro Liter, nenn es blaue Dose | meine Dünger | was fehlt in blaue Dose | welcher Dünger für die Blüte
topic-water = Dein Wasser, ob es taugt, und was ihm hilft:
topic-water-say = mein Leitungswasser hat 14 dH | ist mein Wasser gut für Phals? | Leitungswasser und Regenwasser auf 6 dH mischen | brauche ich CalMag?
topic-plan = Ein Gießtag: wer Dünger bekommt, klares Wasser, eine Spülung oder nichts, aus einer Kanne:
topic-plan-say = was steht heute an | Plan für Samstag | erledigt | welcher Dünger für die Vandas
topic-log = Sag, was du gemacht hast; frag, was war; nimm Falsches zurück:
topic-log-say = alles in der Küche gedüngt, viertel | gestern alle Phals durchgespült | was hat Ruby seit Oktober bekommen | rückgängig
topic-reminders = Ich erinnere dich, wie du es sagst, zu deiner Stunde:
topic-reminders-say = erinnere mich jeden ersten Sonntag um 9 ans Durchspülen | die Vandas alle 10 Tage düngen von Mai bis September | meine Erinnerungen | Nachtruhe 22 bis 8 | Kalender
topic-trouble = Sag, was du siehst; ich frage nach, wo es darauf ankommt, und mache einen Plan:
topic-trouble-say = braune Wurzelspitzen und weiße Kruste bei Ruby | runzlige Blätter, Wurzeln sind fest | ist das zu viel?
topic-salts = Salze im Topf, und was das Messgerät zeigt:
topic-salts-say = wie salzig ist Ruby | wie spüle ich Ruby durch | Ablaufwasser von Ruby 1,6 | mein Messgerät zeigt 0,9
topic-bottles = Stammlösungen, und welche Dünger zusammen in eine Flasche dürfen:
topic-bottles-say = 500 ml Stammlösung von blaue Dose | Stammlösung 1:100 von 20-20-20 | dürfen blaue Dose und Kreide in eine Flasche | misch meine Dünger für die Blüte
topic-compare = Was Dünger kosten und bringen:
topic-compare-say = blaue Dose kostet 14 Euro für 500 g | vergleich meine Dünger | welcher ist billiger
topic-pictures = Zum Anschauen und Teilen:
topic-pictures-say = mein Jahr | Salze von Ruby als Bild | Dosiskarte
topic-settings = Wie ich rede und messe:
topic-settings-say = meine Waage zeigt 0,1 g | ich habe keine Waage, nur Löffel | US-Maße | meine Sprache ist Polnisch | meine Einstellungen
topic-group = Für Admins einer Gruppe:
topic-group-say = unser Leitungswasser hat 18 dH | unsere Sprache ist Deutsch | erinnere uns am Sonntag um 9 ans Durchspülen | sei still | Nachtruhe 22 bis 7 | vergiss die Gruppe
topic-data = Deine Daten gehören dir:
topic-data-say = exportiere meine Daten | importiere meine-daten.json | vergiss mich

# --- words of the trade, explained ---
explain-none = Wovon? Schick z. B.: was ist EC. Nach einer Dosis sagt dir „erklär mehr“, warum jeder Schritt da ist.
explain-ec = Der EC sagt, wie viel Salz gelöst ist, in mS/cm: Regen hat fast 0, Leitungswasser oft 0,3 bis 0,8, ein milder Dünger bringt 0,1 bis 0,4 dazu. Die Wurzeln spüren alles zusammen.
explain-ppm = ppm sind Milligramm im Liter (mg/l). 100 ppm N sind 0,1 g Stickstoff in jedem Liter; was der Dünger sonst enthält, zählt da nicht mit.
explain-npk = Die drei Zahlen sind Gewichtsprozent: Stickstoff N, Phosphat P2O5, Kali K2O. In 100 g 20-20-20 stecken 20 g Stickstoff. Die Dosis richtet sich nach dem Stickstoff.
explain-hardness = Härte ist Calcium und Magnesium im Wasser; 1 °dH sind 17,8 mg/l als CaCO3. Etwas davon ist Nahrung, viel davon sammelt sich im Topf und hebt den pH.
explain-strength = Volle Stärke ist die Aufwandmenge vom Etikett, oder 200 mg/l N, wenn keine dasteht. Orchideen wachsen langsam: ein Viertel bei jedem Gießen bringt im Monat so viel wie einmal volle Stärke und verbrennt weniger.
explain-flush = Durchspülen heißt klares Wasser, langsam, bis etwa das Doppelte vom Topf durchgelaufen ist: das nimmt die Salze mit, die Dünger und Wasser liegen lassen. Etwa einmal im Monat, solange du düngst.
explain-overfed = Zu viel Dünger zeigt sich zuerst an den Wurzeln: braune Spitzen, dann absterbende Blattspitzen und weiße Krusten auf Substrat oder Topf. Dann mehrmals klares Wasser durch den Topf, bis es frei abläuft, und nicht düngen, bis neue Wurzelspitzen kommen. Schick, was du siehst, z. B.: braune Wurzelspitzen bei Ruby.
explain-salts = Was die Wurzeln nicht aufnehmen, bleibt im Topf, und mit jedem Abtrocknen wird es stärker. Braune Wurzelspitzen, absterbende Blattspitzen und weiße Krusten sind die Zeichen.
explain-rest = Manche Orchideen machen im Winter Pause und nehmen nichts auf. Dünger versalzt dann nur den Topf, darum gibt es klares Wasser, wenig oder keins, bis Neutrieb oder neue Wurzeln kommen.
explain-winter = Im Winter ist wenig Licht und langsames Wachstum; die Wurzeln nehmen etwa die Hälfte auf, also wird die Dosis halbiert. Was unter Lampen wächst, verträgt mehr: schreib „wächst“ dazu.
explain-medium = Sphagnum und Blähton halten Salze fest, Rinde lässt sie durch. Darum ist derselbe Dünger in den ersten beiden schwächer.
explain-stock = Eine Stammlösung ist eine stärkere Lösung auf Vorrat: 2 g in 100 ml, davon enthalten 25 ml ein halbes Gramm. So werden kleine Dosen auch mit grober Waage genau. Kühl, dunkel, beschriftet, zwei Wochen.
explain-nitrogen = Nitrat wird sofort aufgenommen, Ammonium bei Kälte langsam, Harnstoff erst, wenn Mikroben ihn umgebaut haben, was in blanker Rinde und im Winter dauert. Mehr Nitrat ist das sicherere Etikett.
explain-calcium = Regen und Osmosewasser bringen weder Calcium noch Magnesium, und viele Dünger auch nicht. Nimm einen Dünger mit beidem, etwas Leitungswasser oder einen Zusatz; nie in ein Konzentrat mit Phosphat.
explain-pure_water = Osmose-, destilliertes und Regenwasser enthalten fast keine Salze: gut für empfindliche Wurzeln, aber ohne Calcium und Magnesium. Etwas Leitungswasser oder ein Dünger mit beidem gleicht das aus.
explain-softened = Ein Enthärter tauscht Calcium gegen Natrium. Mit Natrium können Orchideen nichts anfangen, und es bleibt im Topf: nimm das Wasser vor dem Enthärter oder Regen.
explain-sensitive = Masdevallia, Pleurothallis und Verwandte, Dracula, Disa, Miltoniopsis und Phragmipedium verbrennen zuerst: höchstens ein Viertel vom Etikett und 50 mg/l N, und reineres Wasser.
explain-ceiling = Keine Antwort geht über das Etikett oder über das, was die empfindlichste genannte Pflanze verträgt; daran ändert keine Formulierung etwas. Wo ein Schritt darüber ginge, wird gekürzt, und „warum“ zeigt es.

# --- is it too much, home remedies, pets ---
ask-judge-measure = Wie viel ist das? Miss es einmal in Milliliter oder Gramm und schick es so: 5 ml 7-5-6 auf 2 l, zu viel?
ask-judge-volume = Auf wie viele Liter? Schick es so: 5 ml 7-5-6 auf 2 l, zu viel?
ask-judge-volume-given = Auf wie viele Liter war das? Schick es so: 10 g in 8 l getan. Bis dahin kein Dünger, nur klares Wasser.
ask-judge-product = Von welchem Dünger? Schick ihn mit den drei Zahlen vom Etikett, z. B.: 5 ml 7-5-6 auf 2 l, zu viel?
judge-unknown-feed = Ob das zu stark war, sehe ich nur an den drei Zahlen auf dem Etikett. Schick es so: 5 ml 7-5-6 in 2 l, zu viel?
judge-over = Zu viel: { $times } × die Höchstmenge. Höchstens { $most } { $unit ->
    [tsp] TL
   *[other] { $unit }
} auf { $volume }; ich würde { $usual } { $unit ->
    [tsp] TL
   *[other] { $unit }
} geben.
judge-perhaps-over = Vielleicht zu viel: höchstens { $most } { $unit ->
    [tsp] TL
   *[other] { $unit }
} auf { $volume }. Ich würde { $usual } { $unit ->
    [tsp] TL
   *[other] { $unit }
} geben; wieg es ab.
judge-strong = Nicht über der Höchstmenge ({ $most } { $unit ->
    [tsp] TL
   *[other] { $unit }
} auf { $volume }), aber stärker, als ich es geben würde: { $usual } { $unit ->
    [tsp] TL
   *[other] { $unit }
}.
judge-fine = Passt: nicht zu viel. Ich würde { $usual } { $unit ->
    [tsp] TL
   *[other] { $unit }
} auf { $volume } geben; höchstens { $most } { $unit ->
    [tsp] TL
   *[other] { $unit }
}.
judge-weak = Nicht zu viel, eher schwach: ich würde { $usual } { $unit ->
    [tsp] TL
   *[other] { $unit }
} auf { $volume } geben.
judge-makes = { $about ->
    [yes] Deine Menge: etwa { $amount } { $unit ->
        [tsp] TL
       *[other] { $unit }
    }, { $percent } % der vollen Stärke
   *[no] Deine Menge: { $percent } % der vollen Stärke
}{ $n ->
    [none] .
   *[other] , N { $n } mg/l.
}
judge-rinse = Falls sie es schon bekommen haben: gleich mit viel klarem Wasser durchspülen und mit dem Dünger Pause machen.
judge-spoons = Ein gestrichener Teelöffel zählt als 6 g; Pulver wiegt verschieden, also einmal abwiegen.
judge-taken = Angenommen: { $what }.
last-most = Das Höchste auf { $volume } sind { $most } { $unit }; gegeben habe ich { $amount } { $unit }.
last-strong = { $amount } { $unit } sind { $percent } % der vollen Stärke{ $at_most ->
    [yes] , das Höchste, was ich auf { $volume } gebe.
   *[no] . Das Höchste auf { $volume } sind { $most } { $unit }.
}
last-spoon = { $spoons ->
    [none] Nein: es ist weniger, als sich mit einem Teelöffel treffen lässt.
    [many] Nein: bei so vielen Löffeln verzählt man sich. Wieg oder miss es.
   *[other] { $unit ->
        [ml] Etwa { $spoons } Teelöffel, wenn es ein Messlöffel ist.
       *[other] Grob { $spoons } gestrichener Teelöffel; Pulver sind verschieden, also wieg es.
    }
}
last-drops = Tropfen sind bei jeder Flasche anders, darum zähle ich keine. Miss { $amount } { $unit } ab.
refuse-remedy = Keine Dosis für { $what }: auf keinem Etikett steht, was drin ist, also kann ich es nicht ausrechnen, und { $kind ->
    [calcium] es löst sich kaum. Für Calcium nimm einen Dünger mit Calcium oder etwas Leitungswasser, und schick mir
   *[other] die Reste faulen im Topf. Schick mir
} einen Dünger mit Zahlen, z. B.: 2 l 20-20-20 Pulver, viertel.
pets-keep = Dünger, Stammlösung und volle Kanne weg von Haustieren und Kindern, nie in eine Getränkeflasche; Untersetzer ausleeren. Von keinem Dünger kann ich sagen, dass man ihn gefahrlos trinkt.
pets-call = { $who ->
    [told_child] Sofort beim Giftnotruf anrufen, das Etikett in der Hand.
    [told_pet] Sofort beim Tierarzt anrufen, beim Kind beim Giftnotruf, das Etikett in der Hand.
    [child] Hat ein Kind davon getrunken oder gegessen: sofort beim Giftnotruf anrufen, das Etikett in der Hand.
    [anyone] Hat jemand davon getrunken oder gegessen: sofort beim Giftnotruf anrufen, beim Tier beim Tierarzt, das Etikett in der Hand.
    [fish] Ist Dünger in Teich oder Aquarium geraten: sofort viel Wasser wechseln und beim Tierarzt anrufen (üblich, ohne Quelle).
   *[other] Hat ein Tier oder Kind davon getrunken oder gegessen: sofort beim Tierarzt anrufen, beim Kind beim Giftnotruf, das Etikett in der Hand.
}
argue-stays = Ich bleibe mit Absicht unter der vollen Stärke: zu viel verbrennt Wurzeln, zu wenig bremst nur das Wachstum (üblich, ohne Quelle). Wer es stärker will, schreibt es in die Zeile, z. B.: halbe Stärke. Über das Etikett gehe ich nie.
refuse-pests = Stell die Pflanze abseits und wisch ab, was du siehst, mit feuchtem Tuch oder Wattestäbchen, auch Blattachseln und Unterseiten; alle paar Tage nachsehen (üblich, ohne Quelle). Ich kenne Dünger und Wasser, nicht was Schädlinge oder Schimmel tötet, dafür gibt es von mir keine Dosis: halte dich ans Etikett des Mittels, halte Kinder und Tiere fern, und frag einen Orchideenverein oder eine Beratungsstelle.
refuse-food = { $how ->
    [eat] Nicht essen und nicht trinken, weder Dünger noch Orchidee. Hat es jemand getan: sofort beim Giftnotruf anrufen, beim Tier beim Tierarzt, das Etikett in der Hand.
   *[other] Nicht für Pflanzen, die du isst, auch nicht für ihre Schoten, Blätter oder Blüten: ich rechne nur für Orchideen zum Anschauen. Bei Gemüse und Kräutern gilt das Etikett eines Düngers, der dafür gemacht ist.
}
hurt-call = { $how ->
    [swallowed] Verschluckt: sofort Arzt oder Giftnotruf anrufen, das Etikett in der Hand. Im Auge oder auf der Haut: mit viel klarem Wasser spülen.
    [breathed] Sofort an die frische Luft. Hustest du weiter, ist dir schlecht oder bekommst du schwer Luft: Arzt oder Giftnotruf anrufen, das Etikett in der Hand. Im Auge oder auf der Haut: mit viel klarem Wasser spülen.
   *[other] Im Auge oder auf der Haut: sofort mit viel klarem Wasser spülen. Verschluckt, eingeatmet oder brennt es weiter: Arzt oder Giftnotruf anrufen, das Etikett in der Hand.
}
spill-wipe = Mit Papier und viel Wasser aufwischen, Hände waschen. Kinder und Tiere fernhalten, bis es sauber ist; nichts davon in Teich, Bach oder Gully. Hat eine Pflanze es unverdünnt abbekommen, gleich mit klarem Wasser durchspülen (üblich, ohne Quelle).
leftover-goes = Reste bekommen andere Pflanzen oder die Erde im Garten, nie Abfluss, Toilette, Teich oder Bach. Angemischtes höchstens bis zum nächsten Gießen aufheben, zu, dunkel und beschriftet, nie in einer Getränkeflasche; riecht es oder wird es trüb, kommt es auch auf die Erde (üblich, ohne Quelle).
alarm-what = Was ist passiert? Verschluckt: sofort Arzt oder Giftnotruf anrufen, beim Tier den Tierarzt. Im Auge oder auf der Haut: mit viel klarem Wasser spülen. Zu viel an einer Pflanze: mehrmals klares Wasser durch den Topf, bis es frei abläuft, und kein Dünger. Dann sag es mir in einer Zeile, etwa: der Hund hat aus der Kanne getrunken.

# --- the first meeting, groups and sharing ---
meet-hello = Ich rechne aus, wie viel Dünger in die Kanne kommt, und merke mir deine Pflanzen. Frag gleich los: 2 l 20-20-20 Pulver, Phals in Rinde.
meet-home = Wo wohnst du? Die Stadt reicht: daran sehe ich deine Jahreszeiten und deine Uhrzeit.
meet-product = Welchen Dünger hast du? Schick, was auf dem Etikett steht: 20-20-20 Pulver, 1 g pro Liter.
meet-add = Welche Pflanzen hast du? Eine Sorte reicht: 3 Phals in Rinde, 12 cm Töpfe.
meet-skip = Überspringen
meet-done = Mehr muss ich erst mal nicht wissen. Schick „2 l“ für eine Dosis oder „was steht heute an“; „Hilfe“ zeigt den Rest.
refuse-administrators-only = Das ändern nur Admins dieser Gruppe. Frag einen von ihnen, oder sag es mir privat für dich selbst.
refuse-administrators-quiet = Nur Admins dieser Gruppe stellen mich stumm oder wieder an: frag einen von ihnen.
refuse-administrators-remove = Nur Admins nehmen Pflanzen oder Dünger der Gruppe heraus: frag einen von ihnen.
refuse-administrators-all = Das machen nur Admins dieser Gruppe, weil es alle betrifft: frag einen von ihnen, oder sag es mir privat für dich selbst.
refuse-own-private = Das geht nur dich an, und hier lesen alle mit: schick es mir privat.
ask-language = Welche Sprache? Bisher kann ich { $known }. Schick es z. B. so: unsere Sprache ist Deutsch.
refuse-language-unknown = Eine Sprache „{ $text }“ kenne ich nicht. Bisher kann ich { $known }.
refuse-language-not-yet = { $language } kann ich noch nicht, bisher nur { $known }. Es ist nichts geändert.
language-set = Ab jetzt antworte ich auf { $language }.
language-line = Sprache: { $language }.
quiet-private = Das ist für Gruppen. Hier antworte ich nur, wenn du schreibst.
kept-group = Ich behalte, was hier eingetragen wurde: Pflanzen, Dünger, Wasser, Einstellungen, Erinnerungen und ein Tagebuch, in dem Mitglieder mit einem Zeichen stehen, nicht mit Namen.
    Von einer Frage bleibt der Text, bis sie beantwortet ist, von jedem Mitglied die letzte Anfrage für Rückfragen, und dreißig Tage lang, was „Einzelheiten“ zeigt. Was nicht an mich gerichtet ist, behalte ich nicht.
    Ein Admin bekommt mit „exportieren“ eine Kopie und löscht mit „vergiss die Gruppe“ alles.
kept-own = Ich behalte, was du eingetragen hast: Pflanzen, Dünger, Wasser, Einstellungen, Erinnerungen und das Tagebuch. Dazu deine letzte Anfrage für Rückfragen, einen Text, bis er beantwortet ist, und Einzelheiten und weitere Seiten dreißig Tage lang.
    „exportieren“ gibt dir eine Kopie, „vergiss mich“ löscht alles.
kept-no-questions = Wer was gefragt hat, schreibe ich nicht auf. Was eingetragen wurde, steht im Tagebuch: { "/diary" }.
remove-me = Ein Admin entfernt mich wie jedes Mitglied, dann schicke ich nichts mehr. Was eingetragen ist, bleibt, bis „vergiss die Gruppe“ es löscht: schick das vorher.
quiet-on = Ruhe: in dieser Gruppe antworte ich nur noch auf einen Befehl wie /dose. „/dose rede wieder“ beendet das.
quiet-off = Ich antworte wieder, wenn ihr auf mich antwortet oder mich erwähnt.
quiet-night = Ich antworte nur, wenn jemand fragt, bei Tag und bei Nacht. Für Erinnerungen schick: Nachtruhe 22 bis 7. Mit „sei still“ antworte ich in einer Gruppe nur auf Befehle.
quiet-line = Ruhe: in dieser Gruppe antworte ich nur auf einen Befehl wie { "/dose" }.
post-only-text = Ich lese Text, Standorte und Dateien aus meinem Export. Schreib es in eine Zeile, z. B.: 2 l 20-20-20 Pulver, Phals.
post-added = Ich rechne Dünger für Orchideen aus. Frag so: { "/dose" } 5 l 20-20-20 Pulver, Phals, viertel. Oder antworte auf eine Antwort von mir{ $mentions ->
    [yes] {" "}oder erwähne mich.
   *[no] .
}
    Sonst bin ich still und behalte nichts, was nicht an mich gerichtet ist.{ $known ->
    [yes] { " " }Was die Gruppe früher eingetragen hat, ist noch da.
   *[no] {""}
}
    Für Admins: { "/help" } Gruppe zeigt, wie man Leitungswasser, Sprache, Erinnerungen und Ruhe einstellt.
post-too-long = So viel lese ich nicht. Schick die Frage in einer Zeile.
post-slow-down = Bitte eins nach dem anderen: in { $seconds } Sekunden antworte ich wieder.
post-stale-button = Die Frage ist vorbei. Schick sie noch mal, wenn du es noch willst.
post-not-yours = Das wählt, wer gefragt hat.
post-for-administrators = Das wählen nur Admins der Gruppe.
post-done-already = Schon erledigt.
post-on-record = Diese Nachricht ist schon notiert, Bearbeiten ändert nichts. War es die letzte, schick { "/undo" } und dann die richtige Zeile.
post-interrupted = Bei uns ist etwas kaputtgegangen, ich konnte nicht antworten. Es ist nichts geändert; schick es bitte noch mal.
post-place = { $place }{ $country ->
    [none] {""}
   *[other] , { $country }
} als dein Zuhause eintragen?
post-place-says = ich wohne in { $place }{ $country ->
    [none] {""}
   *[other] , { $country }
}
post-import-says = importiere { $name }
post-no-place = Dort in der Nähe kenne ich keine Stadt. Schick die nächste größere: ich wohne in Kassel.
post-details = Einzelheiten
post-save = Diese Pflanzen eintragen
post-own-water = Mit meinem Wasser fragen
post-card-season = Keine Jahreszeit gesagt: das ist die vorsichtigere Antwort für beide Erdhälften.
post-card-gone = Diese Karte ist zu alt. Schick die Frage noch mal.
post-card-no-plants = Auf dieser Karte stehen keine Pflanzen. Schick mir deine: ich habe 3 Phals in Rinde.
post-saved-already = Sie stehen schon auf deiner Liste: meine Pflanzen.
post-card-ask = Tipp eine Frage: 5 l 20-20-20 Pulver, Phals, viertel
post-next = Mehr ({ $page }/{ $pages })
menu-dose = Wie viel Dünger auf wie viel Wasser
menu-plan = Was heute ansteht
menu-plan-says = was steht heute an
menu-plan-for-says = plan für
menu-plants = Deine notierten Pflanzen
menu-plants-says = meine Pflanzen
menu-shelf = Deine notierten Dünger
menu-shelf-says = mein Regal
menu-diary = Was zuletzt gemacht wurde
menu-diary-says = zeig das Tagebuch
menu-undo = Letzten Eintrag zurücknehmen
menu-undo-says = rückgängig
menu-help = Was du mir schreiben kannst
menu-help-says = Hilfe
menu-dose-says = wie viel Dünger

# --- reminders ---
reminder-and = und dazu außerdem noch
reminder-cue = erinnere mich an
reminder-own-words = „{ $text }“
reminder-what = { $plants ->
    [none] {""}
   *[other] { $plants }{" "}
}{ $kind ->
    [flush] durchspülen
    [feed] düngen
    [water] gießen
    [look] { $plants ->
        [none] nachsehen
       *[other] anschauen
    }
   *[other] { $plants ->
        [none] daran denken
       *[other] nicht vergessen
    }
}
task-flush = durchspülen
task-feed = düngen
task-water = gießen
reminder-every = { $unit ->
    [day] { $every ->
        [1] jeden Tag
        [2] jeden zweiten Tag
       *[other] alle { $every } Tage
    }
    [week] { $every ->
        [1] jede Woche
       *[other] alle { $every } Wochen
    }
   *[month] { $every ->
        [1] jeden Monat
       *[other] alle { $every } Monate
    }
}
reminder-weekdays = { $every ->
    [1] jeden { $days }
    [2] jeden zweiten { $days }
   *[other] alle { $every } Wochen am { $days }
}
reminder-workdays = { $every ->
    [1] Montag bis Freitag
   *[other] alle { $every } Wochen von Montag bis Freitag
}
reminder-nth = { $days } { $every ->
    [1] im Monat
   *[other] alle { $every } Monate
}
reminder-nth-day = am { $nth ->
    [first] ersten
    [second] zweiten
    [third] dritten
    [fourth] vierten
    [fifth] fünften
   *[last] letzten
} { $day }
reminder-month-days = { $days } { $every ->
    [1] jedes Monats
   *[other] alle { $every } Monate
}
reminder-day-of-month = am { $day }{ $rest ->
   *[other] .
}
reminder-last-day = am letzten Tag
reminder-yearly = { $every ->
    [1] jedes Jahr
   *[other] alle { $every } Jahre
} { $on }
reminder-nth-yearly = { $days } im { $months }
reminder-on = am { $days }
reminder-months = von { $first } bis { $last }
reminder-in-months = im { $months }
reminder-not-months = außer im { $months }
reminder-not-days = außer am { $days }
reminder-at = um { $time } Uhr
reminder-until = bis { $day }
reminder-times = ({ $times }-mal)
reminder-moment = { $day } um { $time } Uhr
reminder-line = { $what }{ $often ->
    [none] : { $next }
   *[other] , { $often }; nächstes Mal { $next }
}{ $state ->
    [paused] {" "}(angehalten: ich konnte dich nicht erreichen)
   *[other] {""}
}
reminder-set = Ich erinnere dich: { $line }.
reminder-already = Das ist schon eingestellt: { $line }.
reminder-next = Nächstes Mal { $what }: { $next }.
reminder-half = Als { $half ->
    [afternoon] Nachmittag verstanden; für morgens schick: um { $hour } morgens.
   *[morning] Morgen verstanden; für abends schick: um { $hour } abends.
}
reminder-guess-every-second = Als jedes zweite Mal verstanden; für den zweiten im Monat schick: jeden zweiten Sonntag im Monat.
reminder-guess-first-of-month = Als der Erste jedes Monats verstanden; sonst schick: am letzten Samstag im Monat.
reminder-utc = Ich weiß nicht, wo du wohnst, darum gilt hier UTC, vielleicht Stunden neben deiner Uhr. Schick z. B.: ich wohne in Kassel.
reminder-none-yet = Noch nicht notiert: { $plants }; zählt, sobald etwas davon da ist.
reminder-dropped = Gut, keine Erinnerung eingestellt.
reminder-not-now = Gut, jetzt nicht: Geändert wurde nichts. Ganz beenden: keine Erinnerungen mehr.
reminder-kept = Gut, alles bleibt, wie es ist.
reminder-gone = Die ist schon zu Ende.
reminders-moved-along = { $count ->
    [one] Deine Erinnerung läuft ab jetzt nach der Uhrzeit dort.
   *[other] Deine { $count } Erinnerungen laufen ab jetzt nach der Uhrzeit dort.
}
reminders-none = { $whose ->
    [group] Keine Erinnerungen hier. Ein Admin stellt eine ein, z. B.: erinnere uns jeden ersten Sonntag um 9 ans Durchspülen.
   *[own] Keine Erinnerungen. Stell eine ein, z. B.: erinnere mich jeden ersten Sonntag um 9 ans Durchspülen.
}
reminders-head = { $count ->
    [one] Eine Erinnerung:
   *[other] { $count } Erinnerungen:
}
reminders-hint = Ändern: „verschieb 1 auf Montag“, „überspring 1“, „stopp 1“ oder „Erinnerungen pausieren bis Juni“.
reminder-stopped = { $count ->
    [one] Gestoppt: { $what }.
   *[other] { $count } gestoppt: { $what }.
}
reminder-moved = Verschoben: { $what }, { $next }.{ $again ->
    [yes] {" "}Danach wie bisher.
   *[no] {""}
}
reminder-changed = Geändert: { $line }.
reminder-skipped = Übersprungen: { $what }. { $next ->
    [none] Das war das letzte Mal.
   *[other] Nächstes Mal { $next }.
}
reminder-not-due = Nichts zu überspringen: { $what } kommt ohnehin erst { $next }.
reminder-all = alle
reminders-paused = Ruhe bis { $day }. { $count ->
    [0] Vorher wäre nichts gekommen.
    [one] Eine Erinnerung wartet so lange.
   *[other] { $count } Erinnerungen warten so lange.
}
reminders-resumed = { $count ->
    [one] Eine Erinnerung kommt wieder wie bisher.
   *[other] { $count } Erinnerungen kommen wieder wie bisher.
}
reminders-not-paused = Es war nichts pausiert.
reminder-quiet-so = Nachtruhe von { $start } bis { $end } Uhr: dann kommt keine Erinnerung, außer du hast die Stunde selbst genannt. Wer fragt, bekommt Antwort.
reminder-quiet-none = Keine Nachtruhe: Erinnerungen kommen zu jeder Stunde.
rhythm-choice-1 = jede Woche
rhythm-choice-2 = alle zwei Wochen
rhythm-choice-3 = am ersten Sonntag im Monat
ask-remind-when = Wann oder wie oft soll ich dich daran erinnern? Schick es z. B. so: jeden ersten Sonntag um 9, alle 10 Tage, in 3 Wochen.
ask-remind-what = Woran soll ich dich erinnern? Schick es z. B. so: alle Phals durchspülen.
ask-remind-home = Wo wohnst du? Ich brauche deine Uhrzeit dafür; die Stadt reicht, z. B.: Kassel.
ask-remind-home-changed = Geändert. Und wo wohnst du? Ich brauche deine Uhrzeit; die Stadt reicht, z. B.: Kassel.
ask-remind-wish = Soll ich dich daran erinnern? Ja oder nein; ohne Erinnerung merke ich mir keinen Rhythmus.
ask-remind-home-first = Zuerst brauche ich deine Uhrzeit, dann lässt sich das ändern. Schick einen Ort, z. B.: Kassel.
ask-rhythm-which-days = An welchen Tagen? Schick sie z. B. so: Montag und Donnerstag.
ask-rhythm-two-meanings = Doppelt so oft oder halb so oft? Schick es so: alle zwei Wochen, oder: Montag und Donnerstag.
ask-rhythm-too-often = Öfter als einmal am Tag erinnere ich nicht. Schick es z. B. so: jeden Tag um 8.
ask-rhythm-range = Das lässt es offen. Schick eine Zahl, z. B.: alle 2 Wochen.
ask-rhythm-exception = Monate, Jahreszeiten und Wochentage kann ich auslassen, einzelne Tage nicht. Schick es z. B. so: alle 2 Wochen außer im Dezember; an dem Tag selbst: diesmal nicht.
ask-rhythm-vague = Wie oft ist das? Schick es z. B. so: alle 2 Wochen, oder: am ersten Sonntag im Monat.
ask-rhythm-number = Ich nehme 1 bis 999. Schick es z. B. so: alle 10 Tage.
ask-rhythm-clock = Die Uhrzeit gibt es nicht. Schick es z. B. so: um 9:30, oder: um 18:00.
ask-rhythm-two-times = Eine Uhrzeit je Erinnerung: welche? Schick es z. B. so: jeden Tag um 8.
ask-rhythm-two-days = Zwei Tage auf einmal: welcher? Schick es z. B. so: am 3. März.
ask-rhythm-two-rhythms = Zwei Rhythmen auf einmal: welcher? Schick es z. B. so: alle 2 Wochen.
ask-reminder-number = Es sind { $count }. Schick „meine Erinnerungen“, dann siehst du die Nummern.
ask-reminder-none-such = So eine Erinnerung habe ich nicht. Welche von diesen?
ask-reminder-which = Welche? Schick die Nummer.
ask-reminder-not-then = Schick die Tage, an denen sie kommen soll, etwa: verschieb sie auf jeden Dienstag und Donnerstag; oder, für dieses Mal: diesmal nicht.
ask-reminder-move = Auf wann? Schick es z. B. so: verschieb sie auf Montag, oder: verschieb sie auf jeden Freitag.
ask-reminder-until = Bis wann? Schick es z. B. so: bis 1. September, oder: für zwei Wochen.
refuse-reminder-past = Der Zeitpunkt ist vorbei oder kommt nie. Schick einen späteren, z. B.: morgen um 9.
refuse-rhythm = Den Rhythmus kann ich nicht. Schick es z. B. so: alle 10 Tage, jeden ersten Sonntag, am 3. März.
refuse-administrators-reminders = Nur Admins stellen Erinnerungen der Gruppe ein oder ändern sie. Deine eigenen sag mir privat.
event-reminder = Erinnerung
ping-done = erledigt
ping-later = später
ping-skip = überspringen
ping-head = Es ist so weit: { $what }.
ping-head-several = Es ist Zeit für { $count } Dinge:
ping-late = {" "}(war { $day } fällig{ $missed ->
    [0] {""}
    [one] , und seitdem noch einmal
   *[other] , und seitdem noch { $missed }-mal
})
ping-asleep = Jetzt nicht, in Ruhe: { $plants }.
ping-mounted = Aufgebunden, darum nur abbrausen: { $plants }.
ping-rest-begins = Die Ruhezeit beginnt: { $plants }. { $dry ->
    [yes] Trocken halten, kein Dünger
   *[no] Nur klares Wasser, und wenig
}, bis der Neutrieb kommt.
ping-rest-ends = Die Ruhezeit endet: { $plants }. Wieder gießen und düngen, anfangs schwach, sobald sich ein Neutrieb zeigt.
ping-hint = Schick „erledigt“, „später“ oder „überspringen“.
ping-noted = Notiert.
ping-again = Ich frage wieder { $next }.
ping-answered = Das ist schon beantwortet.
ping-repeat = (Vielleicht hattest du das schon einmal.)
offer = Soll ich dich erinnern? { $items }{ $more ->
    [0] {""}
   *[other] {" "}und noch { $more }
}. Verschieben oder stoppen kannst du jederzeit.
offer-flush = Klares Wasser durch alle Töpfe am ersten Sonntag im Monat (dazwischen viertel Stärke bei jedem Gießen)
offer-feed = einmal im Monat { $plants } düngen (salzempfindlich)
offer-look = wenn die Ruhezeit beginnt und endet: { $plants }
offer-yes = ja
offer-no = nein
offer-declined = Gut, ich frage nicht wieder. Später kannst du sagen: erinnere mich jeden ersten Sonntag um 9 ans Durchspülen.
offer-taken = Eingestellt, jeweils um { $time } Uhr:

# --- taking along and forgetting ---
count-plant = { $count } { $count ->
    [one] Pflanzeneintrag
   *[other] Pflanzeneinträge
}
count-product = { $count } Dünger
count-water = { $count } { $count ->
    [one] Wasser
   *[other] Wässer
}
count-place = { $count } { $count ->
    [one] Platz
   *[other] Plätze
}
count-reminder = { $count } { $count ->
    [one] Erinnerung
   *[other] Erinnerungen
}
count-event = { $count } { $count ->
    [one] Tagebucheintrag
   *[other] Tagebucheinträge
}
count-nothing = nichts außer deinen Einstellungen
export-done = Alles { $whose ->
    [group] von dieser Gruppe
   *[own] von dir
}: { $what }.
export-none = Von dir ist nichts notiert.
# the .ics file: titles and descriptions of its entries, and what is said beside it
calendar-title = { $plants ->
    [none] { $kind ->
        [flush] Durchspülen
        [feed] Düngen
        [water] Gießen
        [look] Nachsehen
       *[other] Daran denken
    }
   *[other] { $plants } { $kind ->
        [flush] durchspülen
        [feed] düngen
        [water] gießen
        [look] anschauen
       *[other] nicht vergessen
    }
}
calendar-often = Kommt { $often }.
calendar-plants = Pflanzen: { $plants }.
calendar-amounts = Die Mengen für den Tag bekommst du mit „Plan“ im Chat.
calendar-rest-begins = Ruhezeit beginnt: { $plants }
calendar-rest-ends = Ruhezeit endet: { $plants }
calendar-reminders = { $count } { $count ->
    [one] Erinnerung
   *[other] Erinnerungen
}
calendar-rests = { $count } { $count ->
    [one] Termin für eine Ruhezeit
   *[other] Termine für Ruhezeiten
}
calendar-done = Kalender bis { $until }: { $what }. Öffne die Datei, um ihn zu übernehmen.
calendar-copy = Das ist eine Kopie: wenn sich hier etwas ändert, schick wieder „Kalender“.
calendar-none = Noch nichts für einen Kalender: { $whose ->
    [group] die Gruppe hat
   *[own] du hast
} keine Erinnerung und keine Pflanze, deren Ruhezeit ich kenne.
calendar-flush = Durchspülen ist nicht eingestellt, darum fehlt es darin. Üblich ist einmal im Monat klares Wasser; das nächste Mal wäre { $day }. { $whose ->
    [group] Ein Admin stellt es ein mit: erinnere uns jeden ersten Sonntag um 9 ans Durchspülen.
   *[own] Zum Einstellen schick: erinnere mich jeden ersten Sonntag um 9 ans Durchspülen.
}
calendar-flush-choice = { $whose ->
    [group] erinnere uns jeden ersten Sonntag um 9 ans Durchspülen
   *[own] erinnere mich jeden ersten Sonntag um 9 ans Durchspülen
}
calendar-north = Ich weiß nicht, wo du wohnst, darum gelten die Ruhezeiten im Norden. Schick z. B.: ich wohne in Kassel, dann noch mal „Kalender“.
calendar-held = { $count ->
    [one] Eine Erinnerung fehlt
   *[other] { $count } Erinnerungen fehlen
} darin: angehalten, weil ich dich nicht erreichen konnte.
ask-calendar-home = Wo wohnst du? Ruhezeiten liegen im Norden und Süden ein halbes Jahr auseinander; die Stadt reicht, z. B.: Kassel.
ask-forget = Alles { $whose ->
    [group] von dieser Gruppe
   *[own] von dir
} endgültig löschen: { $what }? Schick „ja“ oder „nein“. Mit „Export“ bekommst du vorher eine Kopie.
forget-none = Von dir ist nichts notiert.
forget-cancelled = Nichts gelöscht.
forgotten = Gelöscht: { $what }. Hier ist nichts mehr { $whose ->
    [group] von dieser Gruppe
   *[own] von dir
}.
ask-import-file = { $name ->
    [none] Welche Datei? Schick es z. B. so: importiere sinkside-2026-03-01.json.
   *[other] „{ $name }“ kann ich nicht öffnen. Schick den Namen eines Exports, z. B.: importiere sinkside-2026-03-01.json.
}
ask-import-late = Die Datei kam nicht rechtzeitig an. Schick sie noch einmal.
ask-import = In der Datei: { $what }. Übernehmen? Schick „ja“ oder „nein“.
ask-import-replace = In der Datei: { $what }. Das ersetzt, was du hast: { $had }. Schick „ja“ oder „nein“.
import-cancelled = Nichts geändert.
imported = Übernommen: { $what }.
refuse-import-problem = Die Datei passt nicht: { $where } ({ $count } Fehler). Nichts geändert. Schick einen Export, der nicht bearbeitet wurde.
refuse-import-newer = Die Datei kommt aus einer neueren Version. Nichts geändert. Erst aktualisieren, dann noch mal schicken.
refuse-import-large = Die Datei ist zu groß (über { $most } MB). Nichts geändert. Schick einen Export von diesem Bot.
refuse-import-foreign = Das ist kein Export von diesem Bot. Nichts geändert. Schick die JSON-Datei aus dem „Export“.

# --- refusals of the records ---
name-is-number = eine Zahl
name-is-figure = eine Angabe
name-is-order = eine Anweisung oder ein Tag
name-is-slot = { $slot ->
    [medium] ein Substrat
    [genus] eine Orchideengattung
    [month] ein Monat
    [season] eine Jahreszeit
    [growth] ein Zustand der Pflanze
    [water] eine Art Wasser
    [form] eine Art Dünger
    [regime] ein Rhythmus
    [count] eine Zahl
   *[other] eine Angabe
}
refuse-name-means = „{ $name }“ ist für mich auch { $meaning }. Schick einen anderen Namen.
refuse-name-taken = Es gibt bei dir schon „{ $name }“. Schick einen anderen Namen, z. B. „{ $name } 2“.
refuse-count = Schick, wie viele es sind, von 1 bis { $most }.
refuse-too-many = Das wären mehr als { $most } Einträge. Nimm erst welche heraus, oder fass gleiche Pflanzen zusammen, z. B.: ich habe 40 Phals.
refuse-bad-value = Da ist ein Wert dabei, der nicht passt: zu lang, zu groß oder unter null. Nichts eingetragen. Schick es mit einem anderen noch mal.
refuse-records = Das passt nicht zu dem, was notiert ist. Nichts eingetragen. „meine Pflanzen“ zeigt, was da ist.
refuse-changed-since = Das hat gerade schon jemand geändert. Von dir wurde nichts eingetragen. „meine Pflanzen“ zeigt, was da ist.
refuse-future = Der Tag kommt erst noch. Schick einen, der schon war, z. B.: Ruby gestern gedüngt.
refuse-date-ahead = Dieser Tag kommt erst noch. Schick einen vergangenen Tag; oder, wenn er letztes Jahr war, mit Jahr, etwa: Ruby am 3. März 2025 gedüngt.
refuse-which-day = Welcher Tag? Schick einen, z. B.: Ruby gestern gedüngt; oder: am 3. März.
refuse-no-such-day = Den Tag gibt es nicht. Schick es z. B. so: 3. März.
refuse-nitrogen-over = Die Stickstoffformen geben zusammen { $forms } %, auf dem Etikett stehen aber { $n } % N. Schau noch mal aufs Etikett und schick beides.
file-saved = Hier gespeichert als { $names }.
picture-saved = [{ $alt }: hier gespeichert als { $name }]

# --- reasons of the plan ---
reason-given-today = schon bekommen
reason-rest-dry = Ruhezeit, trocken halten
reason-rest-genus = Ruhezeit
reason-rest-growth = in Ruhe
reason-repotted = { $weeks ->
    [0] frisch umgetopft
    [one] vor einer Woche umgetopft
   *[other] vor { $weeks } Wochen umgetopft
}
reason-flush-due = { $weeks ->
    [one] eine Woche ohne klares Wasser
   *[other] { $weeks } Wochen ohne klares Wasser
}
reason-flush-mounted = { $weeks ->
    [one] eine Woche ohne klares Wasser
   *[other] { $weeks } Wochen ohne klares Wasser
}
reason-flush-salts = laut Tagebuch zu viel Salz im Topf
reason-rescue = { $weeks ->
    [0] erholt sich, noch ein paar Tage kein Dünger
    [one] erholt sich, noch eine Woche kein Dünger
   *[other] erholt sich, noch { $weeks } Wochen kein Dünger
}
reason-rescue-resume = nach der Rettung schwächer, und nur wenn neue Spitzen da sind
reason-flush-overfed = zu viel Dünger: erst ausspülen
reason-types-rest = manche Arten ruhen jetzt: sag mir die Art
reason-not-yet = noch nicht dran
reason-plant-unknown = Art unbekannt, vorsichtig
reason-growth-growing = im Wachstum
reason-growth-new_roots = neue Wurzeln
reason-growth-new_leaves = neue Blätter
reason-growth-new_pseudobulbs = neue Bulben
reason-growth-flowering = Blütentrieb oder Blüte
reason-growth-slow = wächst langsam
reason-growth-seedling = Sämling
reason-season-winter = im Winter die Hälfte
reason-season-spring = Frühling
reason-season-summer = Sommer
reason-season-autumn = Herbst
reason-medium-sphagnum = Sphagnum hält Salze fest
reason-medium-clay_pellets = Blähton hält Salze fest
reason-seedling = Sämlinge bekommen die Hälfte
choice-calcium-for-pure-water = bringt Calcium und Magnesium, die in diesem Wasser fehlen
choice-growth-nitrogen = mehr Stickstoff als Phosphor, fürs Wachstum
choice-bloom-potassium = viel Kalium, für die Blüte
choice-balanced-in-doubt = ausgewogen, passt, wenn sonst nichts dagegen spricht
choice-nitrate = Stickstoff vor allem als Nitrat, das nehmen die Wurzeln sofort auf
choice-bark-nitrogen = Rinde nimmt sich selbst Stickstoff, und keine seiner Zahlen ist größer als die für Stickstoff
choice-complete = alle Haupt- und Spurennährstoffe stehen auf dem Etikett
choice-micro-elements = Spurenelemente stehen auf dem Etikett

# --- the salts in pots ---
salts-mounted = { $plants }: aufgebunden sammelt sich kaum Salz an. Einmal im Monat mit klarem Wasser abbrausen.
salts-one = { $plant }: etwa { $ec } mS/cm im nassen Topf ({ $low }–{ $high }), { $state ->
    [over] über der Grenze von { $limit }.
    [unsure] vielleicht über der Grenze von { $limit }: das Tagebuch ist noch zu kurz.
    [water] über der Grenze von { $limit }.
    [near] knapp unter der Grenze von { $limit }.
   *[fine] unter der Grenze von { $limit }.
}
salts-head = Die salzigsten zuerst, in mS/cm im nassen Topf:
salts-line = - { $plant }: { $ec } ({ $low }–{ $high }), Grenze { $limit }{ $state ->
    [over] : jetzt durchspülen
    [unsure] : vielleicht drüber, Tagebuch zu kurz
    [water] : schon das Wasser ist zu salzig
    [near] : bald durchspülen
   *[fine] { "" }
}
salts-more = Und { $count } weitere, weniger salzig.
salts-due-over = { $now ->
    [yes] Jetzt durchspülen.
   *[no] Wenn es so weitergeht, über der Grenze: { $day }. Bis dahin durchspülen.
}
salts-due-month = { $now ->
    [yes] Ein Monat ohne klares Wasser ist um, seit { $day }: jetzt durchspülen.
   *[no] Nächstes monatliches Durchspülen: { $day }.
}
salts-due-none = Einmal im Monat durchspülen, und immer, wenn das Ablaufwasser über dieser Grenze liegt.
salts-due-water = Dein Wasser mit { $water } mS/cm ist zum Durchspülen zu salzig: nimm Regen- oder Osmosewasser.
salts-flush = Durchspülen: { $first } klares Wasser durchgießen, { $rest } Minuten warten, dann noch { $others }. Danach sind es etwa { $after } mS/cm{ $reaches ->
    [yes] .
   *[no] ; mehr Wasser hilft kaum.
}
salts-flush-least = Das ist das Mindeste, das die Salze laut Tagebuch senkt. Bei kranken Wurzeln oder Kruste nimm { $usual }: zweimal den Topf.
salts-from = Berechnet aus { $entries ->
    [0] keinem Tagebucheintrag: das ist geraten.
    [one] einem Tagebucheintrag, mit Wasser von { $water } mS/cm.
   *[other] { $entries } Tagebucheinträgen, mit Wasser von { $water } mS/cm.
}
salts-measure = Rinde und Moos halten Salze fest: miss, was unten rausläuft, und sag es mir, z. B.: Ablaufwasser von Ruby 1,2.
why-salts-pot = das Wasser im Topf nimmt auf, was du gießt, verdunstet und gibt Salze an das ab, was durchläuft

# --- stock solutions and mixes ---
ask-stock-product = Stammlösung aus welchem Dünger? Trag ihn erst ein, z. B.: mein Pulver ist 20-20-20, Etikett 1 g pro Liter, nenn es blaue Dose.
refuse-stock-liquid = { $product } ist flüssig, also schon ein Konzentrat. Nimm eine Spritze.
refuse-stock-volume = Stammlösung geht von 10 ml bis { $most } l. Schick die Menge, z. B.: 500 ml Stammlösung von blaue Dose.
refuse-stock-ratio = Eine Stammlösung verdünnt man höchstens 1:{ $most }. Schick es z. B. so: Stammlösung 1:100 von blaue Dose.
refuse-stock-strong = So stark bleibt die Stammlösung nicht klar: nimm 1:{ $times }.
refuse-stock-clash = Zwei Flaschen reichen nicht für { $products }: lass einen weg und gib ihn einzeln in die Kanne.
stock-make = { $grams } g { $product } in Wasser, auf { $volume } auffüllen.
stock-use = Davon { $use } ml pro Liter { $how ->
    [n] für { $value } mg/l N
    [ec] für EC { $value } mS/cm
    [share] { $value ->
        [full] für volle Stärke
       *[other] für { $value } der vollen Stärke
    }
   *[quarter] für viertel Stärke
}; nie mehr als { $full } ml.
stock-of-last = So wie die letzte Dosis.
stock-held = { $n ->
    [none] Auf das Etikett begrenzt: nie mehr.
   *[other] Auf { $n } mg/l N begrenzt: mehr wäre über dem Etikett oder über dem, was deine Pflanzen vertragen.
}
stock-shares = Die { $count } Dünger teilen sich das: jeder mit { $percent } % seiner eigenen vollen Stärke.
stock-for-the-bottle = Für die Flasche: { $label }
stock-why = { $g_l } g pro Liter sind höchstens die Hälfte von dem, was bei { $cold } °C gelöst bleibt.
stock-cautions = Vor Gebrauch schütteln; wird sie trüb, weg damit.
stock-ratio = { $bottles ->
    [one] Eine Flasche, 1:{ $times } verdünnt,
   *[other] Zwei Flaschen, nie unverdünnt zusammen, jede 1:{ $times } verdünnt,
} { $how ->
    [n] für { $value } mg/l N:
    [ec] für EC { $value } mS/cm:
    [share] { $value ->
        [full] für volle Stärke:
       *[other] für { $value } der vollen Stärke:
    }
   *[quarter] für viertel Stärke:
}
stock-bottle = { $name }: { $what } in Wasser, auf { $volume } auffüllen; { $use } ml pro Liter.
stock-ratio-means = 1:{ $times } heißt hier ein Teil in { $times } Teilen fertiger Düngerlösung.
grams-of = { $grams } g { $name }
stock-label = NICHT TRINKEN. { $what } in { $volume }. Angesetzt { $made }, haltbar bis { $use_by }. Kühl, dunkel, weg von Kindern und Haustieren.
ask-together = Welche zwei? Schick die Zahlen von beiden Etiketten, z. B.: dürfen 20-20-20 und 15,5-0-0 + 19Ca in eine Flasche?
refuse-together-label = { $product } kann so nicht auf dem Etikett stehen. Schau noch mal nach und schick die Zahlen von beiden.
together-yes = { $products } dürfen in eine Flasche.
together-no = { $products } dürfen nicht in eine Flasche.
together-liquid = Ich weiß nicht, was in einem Flüssigdünger noch steckt, darum eigene Flasche und eigene Spritze für { $products }. In der vollen Kanne dürfen sie zusammen.
together-can = In der fertigen Düngerlösung, bis volle Stärke, bleiben sie gelöst: einen in die volle Kanne, umrühren, dann den anderen.
together-can-no = Nicht einmal in der fertigen Düngerlösung: an verschiedenen Tagen geben.
clash-calcium-sulphate = Calcium und Sulfat fallen als Gips aus{ $sure ->
    [yes] .
   *[no] , falls Sulfat drin ist: auf dem Etikett steht es nicht.
}
clash-calcium-phosphate = Calcium und Phosphat fallen als weißer Schlamm aus.
clash-magnesium-phosphate = Magnesium und Phosphat fallen zusammen aus.
clash-silicate = Silikate sind alkalisch: die passen zu nichts.
why-stock-limit = die Hälfte von dem, was sich kalt löst, beim Salz, das zuerst ausfällt
why-stock-apart = Calcium mit Sulfat oder Phosphat und Magnesium mit Phosphat fallen aus, wo beides konzentriert ist
ask-mix-products = Zum Mischen brauche ich mindestens zwei Pulver in deinem Regal. Schick die Etiketten, z. B.: mein Pulver ist 15,5-0-0 + 19Ca, nenn es Calciumdünger.
mix-amounts = { $what } auf { $volume }
mix-goal = Kommt dem am nächsten, was { $goal ->
    [bloom] blühende Pflanzen
   *[growth] wachsende Pflanzen
} wollen, bei N { $n } mg/l.
mix-held = Auf N { $n } statt { $wanted } mg/l begrenzt: mehr verträgt deine empfindlichste Pflanze nicht.
mix-meets = Stickstoff, Kalium, Calcium und Magnesium passen.
mix-short = Zu wenig: { $what }.
mix-short-one = { $nutrient ->
    [nitrate] Nitrat
   *[other] { $nutrient }
} { $brought } von { $wanted } mg/l
mix-capped = Begrenzt durch { $element }, das im Übermaß giftig ist.
mix-none = Nichts in deinem Regal bringt N { $n } mg/l. Schick das Etikett von einem Dünger mit Stickstoff.
mix-cautions = Nacheinander in der vollen Kanne auflösen, nie als Pulver zusammen. Calcium zuletzt.
why-blend = { $nutrient ->
    [nitrate] Nitrat
   *[other] { $nutrient }
} { $mg_l } mg/l als Ziel

# --- an ailing plant ---
rescue-answer-yes = ja
rescue-answer-no = nein
rescue-answer-unknown = weiß nicht
rescue-whom = { $named ->
   *[no] { $plant }
}
ask-rescue-mushy-roots = { $pot ->
    [no] Schau die Wurzeln an
   *[other] Nimm { $plant ->
        [none] sie
       *[other] { $plant }
    } aus { $pot ->
        [maybe] Topf oder Korb
       *[yes] { $n ->
            [many] den Töpfen
           *[one] dem Topf
        }
    }
}: sind Wurzeln weich, braun und hohl, wenn du draufdrückst?
ask-rescue-sudden-after-cold = Kam es ein paar Tage nach einer kalten Nacht, Zugluft oder einem Transport in der Kälte?
ask-rescue-one-old-leaf = Ist es nur das unterste, älteste Blatt?
ask-rescue-dry-light-pot = Ist der Topf oft ganz trocken und sehr leicht?
ask-rescue-white-crust = Ist eine weiße Kruste auf dem Substrat oder am Topfrand?
ask-rescue-brown-root-tips = Schau die Wurzeln an: sind die Spitzen braun oder schwarz?
ask-rescue-medium-stays-wet = Ist das Substrat eine Woche nach dem Gießen noch nass?
ask-rescue-new-growth-sound = Sehen das jüngste Blatt und die Wurzelspitzen gesund aus?
ask-rescue-many-plants = Haben andere Pflanzen bei dir dasselbe?
cause-root-rot = Wurzelfäule
cause-tissue-rot = Fäule an Herz oder Blatt
cause-salt-burn = Salzschaden
cause-thirst = Wassermangel
cause-cold = Kälte
cause-old-age = Alter
cause-rest = Blattfall vor der Ruhe
rescue-likely = { $likely ->
    [none] Sicher ist nichts. Möglich: { $possible }.
   *[other] Wahrscheinlich: { $likely }.{ $possible ->
        [none] {""}
       *[other] {" "}Möglich: { $possible }.
    }
}{ $unlikely ->
    [none] {""}
   *[other] {" "}Unwahrscheinlich: { $unlikely }.
}
rescue-unclear = Daraus kann ich nicht erkennen, was es ist.
rescue-do-flush = { $lead ->
    [no] Noch mal mit { $volume } klarem Wasser durchspülen, in { $passes } Portionen.
   *[yes] { $plant ->
        [none] { $n ->
            [many] Die Töpfe
           *[one] Den Topf
        }
       *[other] { $plant }
    } mit { $volume } klarem Wasser durchspülen: { $passes } Portionen zu { $part }, dazwischen { $rest } Minuten warten.
}
flush-now = { $plants } mit { $volume } klarem Wasser durchspülen: { $passes } Portionen zu { $part }, dazwischen { $rest } Minuten warten. Ablaufen lassen, an dem Tag nicht düngen.
rescue-do-soak = { $plant ->
    [none] { $n ->
        [many] Die Töpfe
       *[one] Den Topf
    }
   *[other] { $plant }
} mit { $volume } durchdringend gießen, bis es unten rausläuft.
rescue-do-rinse = Die Wurzeln mit { $volume } klarem Wasser abspülen.
rescue-do-unpot = { $plant ->
    [none] {""}
   *[other] { $plant }{" "}
}{ $pot ->
    [maybe] aus Topf oder Korb nehmen
   *[yes] { $n ->
        [many] aus den Töpfen nehmen
       *[one] austopfen
    }
} und das alte Substrat entfernen.
rescue-do-cut-dead-roots = Alles Weiche abschneiden; feste Wurzeln bleiben dran.
rescue-do-fresh-medium = In frisches Substrat und { $n ->
    [many] saubere Töpfe
   *[one] einen sauberen Topf
} setzen.
rescue-do-keep-apart = { $n ->
    [many] Die Pflanzen
   *[one] Die Pflanze
} weg von anderen stellen, und beim Gießen nicht spritzen.
rescue-do-humid-shade = Schattig und luftfeucht stellen.
rescue-do-water-when-nearly-dry = Wieder gießen, aber erst wenn das Substrat fast trocken ist.
rescue-do-remove-crust = Erst die Kruste abnehmen, höchstens 6 mm tief.
rescue-do-shade = { $n ->
    [many] Die Pflanzen
   *[one] Die Pflanze
} schattig halten.
rescue-do-clear-water-only = Nur klares Wasser.
rescue-do-water-more-often = Öfter gießen.
rescue-do-move-to-warmth = { $plant ->
    [none] { $n ->
        [many] Die Pflanzen
       *[one] Die Pflanze
    }
   *[other] { $plant }
} warm stellen, 10 bis 27 °C.
rescue-do-leave-leaf = Nichts tun: das Blatt{ $plant ->
    [none] {""}
   *[other] {" "}von { $plant }
} dranlassen, bis es von selbst abfällt.
rescue-do-dry-crown = Das Wasser aus dem Herz kippen und es trocken tupfen.
rescue-do-cut-to-sound = Weiches und Schwarzes mit sauberer Klinge bis ins gesunde Gewebe abschneiden und den Schnitt trocknen lassen.
rescue-do-keep-dry = Kein Wasser auf die Blätter oder ins Herz; Luft bewegen.
rescue-do-let-shed = Wahrscheinlich der normale Blattfall vor der Ruhe: nichts tun, nicht { $n ->
    [many] aus den Töpfen nehmen.
   *[one] aus dem Topf nehmen.
} Wenig klares Wasser, kein Dünger. Weiche Triebe, Bulben oder Wurzeln wären Fäulnis: dann sag es mir.
rescue-do-look-at-roots = { $pot ->
    [no] Die Wurzeln anschauen
   *[other] { $plant ->
        [none] {""}
       *[other] { $plant }{" "}
    }{ $pot ->
        [maybe] aus Topf oder Korb nehmen
       *[yes] { $n ->
            [many] aus den Töpfen nehmen
           *[one] austopfen
        }
    } und die Wurzeln anschauen
}: fest und prall ist gesund, weich ist Fäulnis, braune Spitzen sind Salze.
rescue-do-look-for-spreading = Breitet es sich aus?
rescue-do-look-for-new-root-tips = Gibt es neue Wurzelspitzen?
rescue-do-look-for-firmer-leaves = Sind die Blätter fester?
rescue-do-look-for-more-yellow = Ist mehr davon gelb?
rescue-do-look-again = Noch mal nachsehen und mir sagen, was du siehst.
rescue-later = - { $days }: { $condition ->
    [more-brown-roots] wenn mehr Wurzeln braun sind: { $what }
   *[other] { $what }
}
rescue-people = Das lässt sich nicht mehr mit Worten klären ({ $signs }): zeig sie im Orchideenverein oder bei der Gartenberatung.
rescue-resume = { $days ->
    [0] Normal weiterdüngen, mit { $strength } der vollen Stärke.
   *[other] { $days } Tage kein Dünger, bis { $day }. Dann { $when ->
        [tips] nur, wenn du neue Wurzelspitzen siehst,
        [rests] ist Ruhezeit: erst, wenn sie wieder wächst,
       *[day] {""}
    }{ $when ->
        [day] {""}
       *[other] {" "}
    }{ $strength } der vollen Stärke{ $share ->
        [full] {", "}wie üblich.
       *[other] {", "}{ $share } vom Üblichen.
    }
}
rescue-rests = Kein Dünger, bis neue Triebe oder Wurzeln kommen.
rescue-no-feed = Gar kein Dünger, bis neue Wurzeln da sind; wieder nachsehen: { $day }.
rescue-no-feed-yet = { $days } Tage kein Dünger, bis klar ist, was los ist.
rescue-assumed = Für die Wassermenge angenommen: { $what ->
    [pot_cm] { $pot }-cm-Topf.
    [medium] ein Topf mit Rinde.
   *[both] { $pot }-cm-Topf mit Rinde.
} Sag mir, was stimmt, und frag noch mal.
rescue-their-rate = { $rate } g pro Liter sind etwa das { $times }-Fache der vollen Dosis{ $known ->
    [yes] {""}
   *[no] , gerechnet als 20-20-20
}: zu viel. Kein Dünger, bis das geklärt ist; danach wöchentlich etwa { $part } g pro Liter.
rescue-logged = Notiert: im Plan gibt es bis { $day } keinen Dünger für diese { $n ->
    [many] Pflanzen.
   *[one] Pflanze.
}
overfed-logged = Im Plan: { $plants } zuerst durchspülen, dann bis { $day } kein Dünger.
overfed-still = Zu viel Dünger: { $plants }. Zuerst mit viel klarem Wasser durchspülen, bis { $day } kein Dünger.
overfed-told = Das war zu viel. Jetzt durchspülen: viel klares Wasser durch den Topf, nach einer halben Stunde noch einmal. Dann mit dem Dünger Pause machen und auf braune Spitzen achten.
overfed-undo = Noch nicht gegossen, oder andere Pflanzen? Schick „rückgängig“ und dann, welche.
reading-still = { $plants }: das letzte Ablaufwasser lag über der Grenze, also kein Dünger, bis der Wert sinkt. Erst mit klarem Wasser durchspülen.
repot-still = { $plants }: vor Kurzem umgetopft, also kein Dünger bis { $day } oder bis neue Wurzeln kommen. Gib so lange klares Wasser.
rescue-still = { $n ->
    [many] Sie erholen sich
   *[one] Sie erholt sich
}: { $plants }. Bis { $day } kein Dünger, stattdessen klares Wasser.
rescue-remind = erinnere mich am { $day }. { $month ->
    [m1] Januar
    [m2] Februar
    [m3] März
    [m4] April
    [m5] Mai
    [m6] Juni
    [m7] Juli
    [m8] August
    [m9] September
    [m10] Oktober
    [m11] November
   *[m12] Dezember
} nach { $plant } zu schauen
rescue-say-flushed = { $plant } durchgespült
cautions-none = Hier ist weiter nichts zu beachten.
caution-never-feed-burnt-roots = Geschädigte Wurzeln nie düngen: warte auf neue Spitzen.
caution-keep-apart = Fäulnis wandert mit Spritzwasser: stell sie für sich.
caution-clean-blade = Für jede Pflanze eine saubere Klinge.
caution-tepid-water = Handwarmes Wasser, nie eiskalt.
caution-not-seen = Ich urteile nur nach Worten: Ursachen ähneln sich und treffen zusammen.
sign-mushy-roots = weiche Wurzeln
sign-sudden-after-cold = plötzlich nach Kälte
sign-one-old-leaf = nur das älteste Blatt
sign-dry-light-pot = trockener, leichter Topf
sign-white-crust = weiße Kruste
sign-brown-root-tips = braune Wurzelspitzen
sign-medium-stays-wet = Substrat bleibt nass
sign-new-growth-sound = gesunder Neutrieb
sign-many-plants = viele Pflanzen auf einmal
sign-roots-gone = Wurzeln weg
sign-leaves-gone = abfallende Blätter
sign-black-spreading = Schwarzes, das sich ausbreitet
sign-rot = Fäule
sign-crown-rot = Herz- oder Stammfäule
sign-leaf-rot = ein nasser oder wachsender Fleck auf dem Blatt
sign-sour-smell = saurer Geruch
sign-firm-roots = feste Wurzeln
sign-watered-little = wenig Wasser
sign-watered-well = Wasser wie üblich
sign-sheds-in-rest = eine Art, die zur Ruhe Blätter abwirft
sign-leaf-tips-brown = braune Blattspitzen
sign-wilting-wet = schlapp im nassen Topf
sign-wilting-dry = schlapp im trockenen Topf
sign-pleated-leaves = runzlige Blätter
sign-yellow-old-leaf = gelbe untere Blätter
sign-sunken-patches = eingesunkene Stellen
sign-fed-strong = über dem Etikett gedüngt
sign-not-fed = lange nicht gedüngt
sign-flush-due = ein Monat ohne klares Wasser
sign-flush-overdue = ein halbes Jahr ohne klares Wasser
sign-high-ec = hoher EC im Topf
sign-low-ec = niedriger EC im Topf
sign-holds-salts = Substrat, das Salze festhält
sign-winter = Winter
sign-old-medium = altes Substrat
sign-young-plant = Jungpflanze
why-rescue-sign = { $answer ->
    [no] { $sign } (nein)
   *[other] { $sign }
}: { $points } { $side ->
    [for] für
   *[against] gegen
} { $cause }
why-rescue-flush = durchspülen mit { $volume }: { $passes }-mal das Volumen von einem { $pot }-cm-Topf{ $count ->
    [1] {""}
   *[other] , { $count } Pflanzen
}
why-rescue-pause = { $days } Tage kein Dünger{ $share ->
    [none] , und keiner vor neuen Wurzeln
    [full] , dann wie üblich
   *[other] , dann { $share } vom Üblichen ({ $usual } der vollen Stärke, abzüglich Jahreszeit und Substrat)
}

# --- comparing feeds ---
compare-none = Zum Vergleichen brauche ich Dünger in deinem Regal. Trag sie erst ein, z. B.: mein Pulver ist 20-20-20, Etikett 1 g pro Liter, nenn es blaue Dose.
compare-one = { $name } ist der einzige Dünger in deinem Regal. Nimm noch einen dazu, z. B.: mein Flüssigdünger ist 7-7-7, 4 ml pro Liter, nenn ihn grüne Flasche.
refuse-compare-n = Bei { $n } mg/l N kann ich nicht vergleichen. Schick höchstens { $most }, z. B.: vergleich bei 100 ppm N.
refuse-compare-volume = { $volume } l braucht man in keiner Wohnung. Schick es z. B. so: was kosten 100 Liter.
compare-cheapest = { $name } ist am billigsten: { $cost } für { $volume } l.
compare-cost-one = { $cost } für { $volume } l mit { $name }.
compare-not-ordered = Die Preise sind in verschiedenen Währungen, darum kann ich nicht sagen, was billiger ist.
compare-cannot = { $costs ->
    [0] Was sie kosten, kann ich noch nicht sagen.
    [1] Nur von einem habe ich die Zahlen, darum kann ich nicht sagen, was billiger ist.
    [2] Sie kosten gleich viel.
   *[other] Die zwei billigsten kosten gleich viel.
}
compare-all = Davon kenne ich nur { $name }, darum hier dein ganzes Regal.
compare-at = Auf { $volume } l bei { $n } mg/l N, { $strength } der vollen Stärke:
compare-line = - { $name }: { $cost ->
    [none] {""}
   *[other] { $cost }, {""}
}{ $amount ->
    [none] ohne Stickstoff, nicht vergleichbar
   *[other] { $amount }
}{ $lacks ->
    [none] {""}
   *[other] ; kein { $lacks } auf dem Etikett
}{ $micro ->
    [yes] ; Spurenelemente nicht alle angegeben
   *[no] {""}
}{ $forms ->
    [none] {""}
   *[other] ; { $forms }
}
compare-amount-both = { $ml } ml ({ $g } g)
compare-per-money = Für 1 { $currency } bringt { $name } { $elements }.
compare-currency-none = Geldeinheit
compare-form-nitrate = vor allem Nitrat, gut in Rinde
compare-form-much-urea = vor allem Harnstoff, in Rinde langsam
compare-salt = Salz bei gleich viel Stickstoff (Salzindex für 1 % N, niedriger verbrennt weniger): { $feeds }{ $least ->
    [none] { $count ->
        [1] .
       *[other] ; welcher niedriger liegt, verraten die Etiketten nicht.
    }
   *[other] ; am wenigsten mit { $least }.
}
compare-salt-one = { $name } { $index }
compare-salt-missing = Salzindex fehlt für { $names }: keine Salze, zu denen ich Zahlen habe, ergeben dieses Etikett.
why-compare-salt = Salzindex = die Indizes der Salze mal ihr Anteil; nennt das Etikett keine Salze, werden alle Mischungen durchprobiert, die es ergeben
compare-powder-liquid = Pulver und Flüssigdünger sind nach ihrem Stickstoff verglichen, nicht nach der Packungsgröße.
compare-missing-price = Der Preis von { $name } fehlt. Schick es so: { $name } kostet 12 € für 500 { $unit }
compare-missing-pack-size = Die Packungsgröße von { $name } fehlt. Schick es so: { $name } kostet { $price } für 500 { $unit }
compare-missing-currency = Die Währung bei { $name } fehlt. Schick es so: { $name } kostet { $price } €
compare-missing-density = Die Dichte von { $name } fehlt. Schick es so: Dichte von { $name } ist 1,2 kg/l
compare-missing-nitrogen-forms = Für Rinde: woraus der Stickstoff besteht, weiß ich nicht bei { $names }. Schick es so: { $first } hat 8 % Nitrat, 4 % Ammonium, 0 % Harnstoff
why-compare-product = Dünger = gewünschter Stickstoff × Liter ÷ (10 × % N auf dem Etikett)
why-compare-cost = Kosten = Preis × Dünger ÷ Packung
why-compare-form = { $name }: { $form }

# --- readings of the ready feed ---
choice-meter-us = mein Messgerät zeigt { $value } µS
choice-meter-ppm = mein Messgerät zeigt { $value } ppm
ask-meter-unit = { $value } was? Messgeräte zeigen mS/cm, µS/cm oder ppm.
ask-meter-feed = Das ist EC { $ec } mS/cm bei 25 °C. Welcher Dünger ist es? Schick die Zahlen, z. B.: 20-20-20.
# What dosing cannot work out; `refuse-` and the code of `Impossible`.
refuse-figures = Mit diesen Werten kann ich nicht rechnen. Schick sie noch mal, einen nach dem anderen.
refuse-solution-strong = Das ist zu stark zum Rechnen. Schick die fertige Düngerlösung, nicht die Stammlösung.
refuse-nutrients-many = { $mg_l } mg/l lösen sich in keinem Wasser. Schau noch mal aufs Etikett.
refuse-temperature = Wasser mit { $temp } °C kann nicht sein. Schick 0 bis 50 °C, z. B.: mein Messgerät zeigt 0,9 mS bei 18 °C.
refuse-reading-range = { $ec } mS/cm kann nicht sein: über { $most } ist mehr als Meerwasser. Zeigt dein Messgerät µS/cm, schick es so: mein Messgerät zeigt 900 µS.
refuse-reading-negative = { $value } zeigt kein Messgerät an. Spül es ab, miss noch mal und schick es so: mein Messgerät zeigt 0,9 mS.
refuse-meter-temperature = Ein Messgerät, das nicht auf 25 °C umrechnet, braucht die Temperatur. Schick es so: mein Messgerät zeigt 0,9 mS bei 18 °C.
refuse-meter-unit = Die Einheit { $unit } kenne ich nicht. Messgeräte zeigen mS/cm, µS/cm oder ppm: schick es so: mein Messgerät zeigt 0,9 mS.
refuse-hardly-conducts = Dieser Dünger leitet kaum, wie Harnstoff: das misst kein Messgerät. Wieg ihn ab.
refuse-feed-under-water = Die Düngerlösung hat { $reading } mS/cm, weniger als ihr Wasser mit { $water }. Miss beides noch mal, erst das Wasser allein.
refuse-thinning-water = Mit Wasser von { $water } mS/cm kommst du nicht auf { $wanted } herunter. Nimm Regen- oder Osmosewasser.
refuse-supplement-neither = Das bringt weder Calcium noch Magnesium. Nenn etwas, das es tut.
refuse-water-ion-amount = { $ion } { $mg_l } mg/l kann nicht sein. Schau noch mal in die Analyse.
refuse-sea-water = Natrium { $na } mg/l ist mehr als im Meerwasser ({ $most }). War es eine andere Einheit?
refuse-water-imbalance = Ein Wert dieser Analyse stimmt nicht: { $cations } meq/l Kationen gegen { $anions } Anionen, { $percent } % auseinander; bis 10 % ist normal. Es fehlen { $side ->
    [anions] Anionen
   *[cations] Kationen
}, etwa so viel wie { $mg_l } mg/l { $ion }. Prüf sie, oder nimm nur die Härte: mein Leitungswasser hat { $hardness } dH.
choice-water-nearest = mein Leitungswasser hat { $hardness } dH
refuse-water-too-salty = In diesem Wasser ist mehr Salz, als irgendeine Pflanze verträgt. Nimm Regen- oder Osmosewasser.
refuse-water-ions = Mit { $ions } kann ich nichts anfangen. Schick Ca, Mg, Na, K, HCO3, SO4, Cl und NO3.
refuse-water-nothing-known = Von diesem Wasser weiß ich zu wenig. Schick die Härte, den EC oder eine Analyse, z. B.: mein Leitungswasser hat 14 dH.
refuse-water-ec-range = { $ec } mS/cm hat kein Süßwasser (0 bis { $most }). Sind es µS/cm? Schick es z. B. so: mein Leitungswasser hat 400 µS.
refuse-water-hardness-range = { $what ->
    [alkalinity] Eine Alkalinität
   *[hardness] Eine Härte
} von { $mg_l } mg/l hat kein Süßwasser (0 bis { $most }). Schick es z. B. so: mein Leitungswasser hat 14 dH.
refuse-water-contradiction = EC { $ec } mS/cm passt nicht zu { $what ->
    [alkalinity] dieser Alkalinität: die Alkalinität
   *[hardness] dieser Härte: die Härte
} allein macht { $least }. Schick den Wert, dem du traust.
refuse-blend-target = { $target } ist nicht zu erreichen. Schick einen Wert ab 0, z. B.: Leitungswasser und Osmose auf 6 dH mischen.
refuse-blend-volume = { $volume } l kann man nicht mischen. Schick, wie viel du willst, z. B.: 5 l.
report-in-part = Benutzt, soweit es reicht: { $lacks ->
    [anions] die Anionen liegen { $percent } % unter den Kationen, es sind also nicht alle aufgeführt.
    [cations] die Kationen liegen { $percent } % unter den Anionen, es sind also nicht alle aufgeführt.
   *[ions] Calcium oder Hydrogencarbonat ist nicht aufgeführt.
}
meter-over = Zu stark{ $plants ->
    [none] {""}
   *[other] {" "}für { $plants }
}: { $factor } × die Höchstmenge.
meter-unsure = Vielleicht zu stark{ $plants ->
    [none] {""}
   *[other] {" "}für { $plants }
}: bis { $high } × die Höchstmenge.
meter-under = Nicht zu stark{ $plants ->
    [none] {""}
   *[other] {" "}für { $plants }
}.
meter-water-alone = Es liegt am Wasser, nicht am Dünger: mit EC { $own } ist es allein schon über den { $most } mS/cm, die diese Pflanzen vertragen.
meter-water-adds = Der Dünger ist wie gewollt; mit dem EC { $own } deines Wassers sind es mehr als die { $most } mS/cm, die diese Pflanzen vertragen.
up-to = bis { $high }
meter-anew = { $instead ->
    [yes] Neu ansetzen
   *[no] Oder neu ansetzen
}{ $water ->
    [pure] {" "}mit Regen- oder Osmosewasser
   *[own] {""}
}, mit höchstens { $grams } g Dünger pro Liter.
meter-add = { $sure ->
    [yes] Gib
   *[no] Gib sicherheitshalber
} { $litres } { $water ->
    [pure] Regen- oder Osmosewasser
   *[own] von deinem Wasser
} { $to ->
    [none] auf jeden Liter dazu
   *[other] zu diesen { $to } dazu
}: das bringt den EC auf { $ec } mS/cm.
meter-means = EC { $ec } mS/cm bei 25 °C{ $water ->
    [none] {""}
   *[other] , davon { $water } aus deinem Wasser
}: N { $n } mg/l, aus { $grams } g Dünger pro Liter.
meter-meant-less = Das sind { $share } % von dem, was { $whose ->
    [said] du auflösen wolltest
   *[given] ich als Dosis gesagt habe
}: schwächer als gewollt.
meter-meant-more = Das sind { $share } % von dem, was { $whose ->
    [said] du auflösen wolltest
   *[given] ich als Dosis gesagt habe
}: stärker als gewollt. Prüf Waage und Liter.
meter-meant-same = Das sind { $share } % von dem, was { $whose ->
    [said] du auflösen wolltest
   *[given] ich als Dosis gesagt habe
}: das kann gut stimmen.
meter-meant-fine = Das sind { $share } % von dem, was { $whose ->
    [said] du auflösen wolltest
   *[given] ich als Dosis gesagt habe
}: wie gewollt, soweit ein Messgerät das zeigt.
meter-scale-unknown = ppm heißt je nach Messgerät 500, 640 oder 700 für 1 mS/cm: sag dazu, welche, z. B. „auf der 500er Skala“.
meter-unit-taken = Als mS/cm gelesen.
meter-temperature = Die meisten Messgeräte rechnen auf 25 °C um; deins vielleicht nicht, darum zählt beides.
meter-water-unknown = Dein Wasser ist nicht notiert, darum ist das der Höchstwert. Schick es z. B. so: mein Leitungswasser hat 0,4 mS.
meter-water-estimated = Der EC deines Wassers ist aus der Härte geschätzt. Genauer wird es mit dem EC, z. B.: mein Leitungswasser hat 0,4 mS.
meter-forms-unknown = Eine Spanne, weil ich zu diesem Etikett keine Stickstoffformen kenne (Nitrat, Ammonium, Harnstoff).
convert-meter = { $value } { $unit } sind { $kind ->
    [ms] {""}
   *[other] { $ec } mS/cm;{" "}
}{ $ppm }{ $kind ->
    [cf] .
   *[other] ; CF { $cf }.
}
convert-on-scale = { $value } { $unit } auf der { $scale }er Skala
convert-ppm-unit = ppm auf der { $scale }er Skala
convert-ppm-open = { $value } ppm sind { $each }.
convert-oxide = { $value } { $unit } { $of } sind { $result } { $unit } { $to } ({ $oxide } × { $factor } = { $element }).
convert-oxide-none = { $of } und { $to } lassen sich nicht ineinander umrechnen. Ich rechne P2O5 in P, K2O in K, CaO in Ca, MgO in Mg um, und zurück.
pour-together = Zusammen { $volume } mit EC { $ec } mS/cm.
pour-thinned = { $add } dazu ({ $water }): das ergibt { $whole } mit EC { $ec } mS/cm.
most-ec = Höchstens EC { $most } mS/cm in der fertigen Lösung, dein Wasser mitgezählt{ $plants ->
    [none] : das gilt für die meisten Orchideen; nenn die Pflanze, dann sage ich ihren Wert.
   *[other] , für { $plants }. Weniger schadet nicht.
}
most-ec-source = Woher das ist: { $source }.
brings-over = { $sure ->
    [yes] Zu viel
   *[no] Vielleicht zu viel
}: höchstens { $most } { $unit } auf { $volume }.
nitrogen-over = Zu viel{ $plants ->
    [none] {""}
   *[other] {" "}für { $plants }
}: höchstens { $most } mg/l N{ $what ->
    [ammonium] {" "}davon als Ammonium
   *[all] {""}
}.
nitrogen-perhaps = Zu viel{ $plants ->
    [none] {""}
   *[other] {" "}für { $plants }
}, wenn dein Wert Stickstoff (N) zählt: höchstens { $most } mg/l N{ $what ->
    [ammonium] {" "}als Ammonium
   *[all] {""}
}.
nitrogen-under = Nicht zu viel{ $plants ->
    [none] {""}
   *[other] {" "}für { $plants }
}: höchstens { $most } mg/l N{ $what ->
    [ammonium] {" "}als Ammonium
   *[all] {""}
}.
nitrogen-as-ion = { $value } mg/l { $ion } sind { $n } mg/l N; als Stickstoff gezählt sind es { $value } mg/l N.
nitrogen-ammonium = Mindestens die Hälfte des Stickstoffs als Nitrat, besser drei Viertel (Wang, HortScience).
why-meter-difference = Dünger = Anzeige minus EC des Wassers, geteilt durch das, was ein Gramm pro Liter in diesem Wasser ausmacht
why-meter-temperature = auf 25 °C umgerechnet, etwa 2 % je Grad
why-meter-scale = ppm geteilt durch die Skala des Messgeräts sind mS/cm
why-meter-dilution = Wasser dazu = Menge × (gemessen − Ziel) / (Ziel − EC des Wassers)
why-meter-ceiling = das Höchste für die fertige Düngerlösung bei diesen Pflanzen

# --- reports, suitability, mixing waters, calcium and magnesium ---
choice-water-suits = ist mein Wasser gut für meine Pflanzen?
choice-water-hard = mein Leitungswasser hat 14 dH
choice-water-soft = mein Leitungswasser hat 5 dH
ask-reach-unit = Dieser Dünger wird in { $unit } gemessen: wie viele { $unit } hast du?
ask-how-hard = Wie hart? Schick es so: mein Leitungswasser hat 18 dH. Es steht auf der Seite des Versorgers, oder ein Teststreifen zeigt es.
ask-report-unit = Wasseranalysen lese ich in mg/l, mmol/l oder meq/l. Schick es z. B. so: Ca 80, Mg 12, HCO3 240, Na 20, Cl 35 mg/l.
report-ions = Aus der Analyse: { $ions } mg/l.
report-balance = Die Ladungen gehen auf { $percent } % genau auf.
why-water-report = Härte aus Calcium und Magnesium, Alkalinität aus Hydrogencarbonat, EC aus allen Ionen
ask-water-figures = Von deinem Wasser weiß ich zu wenig. Schick die Härte, den EC oder eine Analyse, z. B.: mein Leitungswasser hat 14 dH; mein Leitungswasser hat 0,5 mS; Ca 80, Mg 12, HCO3 240 mg/l.
suits-good = Gut{ $plants ->
    [none] {" "}für Orchideen
   *[other] {" "}für { $plants }
}.
suits-usable = Brauchbar{ $plants ->
    [none] {" "}für Orchideen
   *[other] {" "}für { $plants }
}, nicht ideal.
suits-poor = Nicht gut{ $plants ->
    [none] {" "}für Orchideen
   *[other] {" "}für { $plants }
}.
suits-good-usable = Gut bis brauchbar{ $plants ->
    [none] {" "}für Orchideen
   *[other] {" "}für { $plants }
}.
suits-good-poor = Kommt darauf an{ $plants ->
    [none] {""}
   *[other] {" "}bei { $plants }
}: ich weiß zu wenig von diesem Wasser.
suits-usable-poor = Höchstens brauchbar{ $plants ->
    [none] {" "}für Orchideen
   *[other] {" "}für { $plants }
}, vielleicht nicht gut.
suits-finding = { $quantity ->
    [ec_ms_cm] EC { $value } mS/cm
    [hardness_mg_l_caco3] Härte { $value } °dH ({ $caco3 } mg/l CaCO3)
    [alkalinity_mg_l_caco3] Alkalinität { $value } °dH ({ $caco3 } mg/l CaCO3)
    [na_mg_l] Natrium { $value } mg/l
    [cl_mg_l] Chlorid { $value } mg/l
    [sar] Natriumadsorptionsverhältnis (SAR) { $value }
    [cl_meq_l] Chlorid { $value } meq/l
    [hco3_meq_l] Hydrogencarbonat { $value } meq/l
   *[nitrate_n_mg_l] Nitratstickstoff { $value } mg/l
}{ $good ->
    [none] .
   *[other] : gut bis { $good }, erträglich bis { $most }.
}
suits-thin = Mit Regen- oder Osmosewasser verschnitten ist es gut: { $percent } % davon, der Rest rein.
suits-pure = Es bringt weder Calcium noch Magnesium: das muss vom Dünger kommen.
suits-range = Eine Spanne, weil nur einzelne Werte bekannt sind. Eine Wasseranalyse brächte Klarheit.
suits-limits = Grenzen für { $class_ ->
    [sensitive] empfindliche Wurzeln
    [hungry] Starkzehrer
   *[other] die meisten Orchideen
}: Werte aus der Praxis, kein Versuch belegt sie.
blend-taken = Mit { $percent } % { $water } in der Kanne sind es { $values }; die Düngermenge bleibt gleich.
blend-unknown = Der Dünger bleibt gleich. Was { $percent } % { $water } aus deinem Wasser machen, weiß ich nicht: schick seine Härte, z. B.: mein Leitungswasser hat 14 °dH.
mix-parts = { $first_percent } % { $first } mit { $second_percent } % { $second }: { $values }.
ask-mix-unit = In welcher Einheit? Schick es so: Leitungswasser und Osmose auf 6 dH mischen, oder: auf 0,3 mS.
ask-mix-figure = Wie ist dein Wasser ({ $water })? Schick { $quantity ->
    [ec_ms_cm] den EC, z. B.: mein Leitungswasser hat 0,5 mS
    [na_mg_l] die Analyse, z. B.: Ca 80, Mg 12, HCO3 240, Na 20, Cl 35 mg/l
   *[other] die Härte, z. B.: mein Leitungswasser hat 14 dH
}.
mix-waters = { $first ->
    [none] Nur { $second_water }, { $second }
   *[other] { $second ->
        [none] Nur { $first_water }, { $first }
       *[other] { $first } { $first_water } und { $second } { $second_water }
    }
}.
mix-reached = Das ergibt { $quantity ->
    [ec_ms_cm] EC { $value } mS/cm
    [hardness_mg_l_caco3] { $value } °dH
    [alkalinity_mg_l_caco3] eine Alkalinität von { $value } °dH
   *[na_mg_l] Natrium { $value } mg/l
}.
mix-nearest = Mit diesen zwei kommst du nicht auf { $quantity ->
    [ec_ms_cm] EC { $target } mS/cm: am nächsten ist { $value }.
    [hardness_mg_l_caco3] { $target } °dH: am nächsten ist { $value }.
    [alkalinity_mg_l_caco3] eine Alkalinität von { $target } °dH: am nächsten ist { $value }.
   *[na_mg_l] Natrium { $target } mg/l: am nächsten ist { $value }.
}
mix-no-calcium = Es bringt kaum Calcium oder Magnesium: das muss vom Dünger kommen.
mix-check = Prüf es mit dem Messgerät, bevor Dünger dazukommt.
why-water-blend = erster Anteil = (Ziel − zweites) / (erstes − zweites)
supplement-enough = Es fehlt nichts: Wasser und Dünger bringen genug Calcium und Magnesium für N { $n } mg/l.
supplement-short = { $sure ->
    [yes] Es fehlt
   *[no] Vielleicht fehlt
}: { $what } (Düngerlösung mit N { $n } mg/l).
supplement-gap = { $element ->
    [Ca] Calcium
   *[Mg] Magnesium
} { $mg_l } von { $target } mg/l
supplement-water-unknown = Dein Wasser ist nicht notiert, darum zählt daraus nichts. Schick es z. B. so: mein Leitungswasser hat 14 dH.
supplement-fed = Dein Dünger selbst bringt { $what } mg/l.
supplement-none = { $fed ->
    [yes] Den Rest bringt sonst nichts in deinem Regal.
   *[no] Nichts in deinem Regal bringt es.
} Nimm { $kind ->
    [Ca] Calciumnitrat oder einen Zusatz mit Calcium
    [Mg] Magnesiumsulfat (Bittersalz) oder einen Zusatz mit Magnesium
   *[both] einen Zusatz mit Calcium und Magnesium oder misch etwas Leitungswasser dazu
}. Schick mir das Etikett, dann rechne ich die Dosis aus.
supplement-dose = { $amount } { $unit } { $product } auf { $volume }: bringt { $brings } mg/l, EC insgesamt bis { $ec } mS/cm.
supplement-cut-ec-ceiling = Weniger, als eigentlich fehlt: mehr ginge über den EC, den deine Pflanzen vertragen.
supplement-cut-nitrogen-ceiling = Weniger, als eigentlich fehlt: sonst wäre es mehr Stickstoff, als deine Pflanzen vertragen.
supplement-no-room-ec-ceiling = Kein Spielraum für einen Zusatz: Wasser und Dünger allein erreichen schon den EC, den deine Pflanzen vertragen. Dünge schwächer oder nimm reineres Wasser.
supplement-no-room-nitrogen-ceiling = Kein Spielraum für einen Zusatz mit Stickstoff: der Dünger bringt schon alles, was deine Pflanzen vertragen. Dünge schwächer oder nimm einen ohne Stickstoff.
supplement-left = { $what } fehlt dann immer noch: nimm etwas, das auch das bringt.
supplement-how = Nach dem Dünger in die volle Kanne, nie als Konzentrate zusammen. Der Stickstoff darin zählt als Dünger.
why-supplement-target = { $element } { $mg_l } mg/l als Ziel bei diesem Stickstoff

# --- pictures ---
picture-missing = (Bilder gehen hier nicht: der Betreiber muss erst installieren, was sie zeichnet.)
picture-north = Ich weiß nicht, wo du wohnst, darum gelten die Jahreszeiten im Norden. Schick z. B.: ich wohne in Kassel.
picture-year-head = { $year }, { $count } { $count ->
    [one] Pflanze
   *[other] Pflanzen
}: bis heute, was war, danach, was kommt.
picture-year-line = - { $plants }: { $parts }.
picture-year-part = { $what } { $months }
picture-year-alt = Das Jahr { $year } als Tabelle: { $count } { $count ->
    [one] Zeile
   *[other] Zeilen
} mit Pflanzen nach Monaten, was jede bekam und bekommt
picture-cell = { $cell ->
    [fed] gedüngt
    [watered] klares Wasser bekommen
    [feed] zu düngen
    [less] schwächer zu düngen
    [clear] nur klares Wasser
    [rest] Ruhezeit
    [flushed] durchgespült
    [differ] verschieden
   *[blank] nichts notiert
}
picture-salts-unit = mS/cm im nassen Topf
picture-salts-between = { $low } bis { $high }
picture-salts-limit = Grenze { $limit }
picture-salts-lane = { $kind ->
    [fed] gedüngt
    [clear] klares Wasser
    [flush] durchgespült
   *[reading] Ablaufwasser, mS/cm
}
picture-salts-alt = Salze im Topf von { $plant }{ $first ->
    [none] {""}
   *[other] {" "}seit { $first }
}: jetzt etwa { $ec } mS/cm, Grenze { $limit }
picture-card-amount = { $amount } { $unit ->
    [tsp] TL
   *[other] { $unit }
}
picture-card-of = { $product } auf { $volume }
picture-card-heading = { $part ->
    [measure] Abmessen
    [why] Berechnet aus
   *[mind] Beachten
}
picture-card-sum = zusammen { $strength } der vollen Stärke
picture-card-alt = Eine Karte zum Teilen: { $amount } { $of }
