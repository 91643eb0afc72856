# What a person reads. Amount first, then how to measure, why, and what to mind.

# --- the dose ---
product = { $analysis }{ $form ->
    [powder] {" "}w proszku
    [liquid] {" "}w płynie
   *[other] {""}
}
dose-amount = { $amount } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
} na { $volume } wody: { $product }
volume-litres = { $litres } l
volume-millilitres = { $millilitres } ml
volume-own = { $amount } { $unit ->
    [us_gallon] gal US
    [us_quart] qt US
    [us_fluid_ounce] fl oz US
    [imperial_gallon] gal imp
    [imperial_pint] pt imp
   *[imperial_fluid_ounce] fl oz imp
} ({ $metric })

measure-weigh = Odważ na wadze { $step } g (±{ $error } %).
measure-syringe = Odmierz strzykawką co { $step } ml (±{ $error } %).
measure-stock = Rozpuść { $product } g w wodzie, dopełnij do { $bottle } ml i wlej z tego { $use } ml do konewki: waga { $step } g { $error ->
    [none] nie odważy tak mało.
   *[other] myli się tu nawet o { $error } %.
} Trzyma się { $days } { $days ->
    [one] dzień
   *[other] dni
}: w chłodzie, po ciemku, z opisem. Albo rozrób od razu { $batch } lub więcej.
measure-stock-liquid = Odmierz { $product } ml, dopełnij wodą do { $bottle } ml i wlej z tego { $use } ml do konewki: strzykawka co { $step } ml { $error ->
    [none] nie odmierzy tak mało.
   *[other] myli się tu nawet o { $error } %.
} Trzyma się { $days } { $days ->
    [one] dzień
   *[other] dni
}: w chłodzie, po ciemku, z opisem. Albo rozrób od razu { $batch } lub więcej.
measure-cross-check = { $many ->
    [yes] W płaskich łyżeczkach z grubsza
   *[no] W płaskich łyżeczkach z grubsza
} { $spoons }: tylko po to, żeby wyłapać zły przecinek.
measure-batch = Za mało na twój sprzęt{ $error ->
    [none] .
   *[other] {" "}(błąd do { $error } %).
} Rozrób co najmniej { $batch }, resztę trzymaj do następnego podlewania.
measure-spoon-stock = Rozpuść { $spoons } płaskiej łyżeczki w wodzie, dopełnij do { $bottle } ml i wlej z tego { $use } ml do konewki. Trzyma się { $days } dni: w chłodzie, po ciemku, z opisem. Lepiej: zważ jedną łyżeczkę i podaj dawkę z etykiety w gramach.
measure-spoon = Płaska łyżeczka to miara na oko. Lepiej zważ jedną łyżeczkę i podaj dawkę z etykiety w gramach.

makes = Daje { $elements } mg/l{ $ec ->
    [none] .
   *[other] ; podnosi EC twojej wody o { $ec } mS/cm.
}
chain-target = Skąd to: { $steps }.
chain = Skąd to: { $steps } = { $strength } pełnej dawki.

# --- the steps ---
why-full-assumed = pełna dawka przyjęta jako 200 mg/l N (bez dawki z etykiety)
why-full-product = pełna dawka według nawozu z twojej półki
why-full-target = stężenie, o które prosisz
why-form-weighed = na wagę, bo nie wiem, czy to proszek, czy płyn
why-density-assumed = dla płynu przyjęte 1,2 kg na litr
why-measure-us = przyjęte miary amerykańskie
why-measure-imperial = przyjęte miary brytyjskie
why-ec-water_unknown = policzone jako to, co wnosi nawóz, bo nie znam EC twojej wody
why-ec-water_known = od { $wanted } odjęte EC { $own } twojej wody
why-ec-water_hardness = twoja woda przyjęta jako { $middle } mS/cm ({ $low } do { $high } z jej twardości; podaj EC, będzie dokładniej)
why-strength-asked = { $factor ->
    [full] pełna dawka
   *[other] { $factor }
} na życzenie
why-strength-target = bez obniżki na porę roku czy podłoże
why-strength-default = { $factor }, bo nie podano dawki ani rytmu
why-strength-every_watering = { $factor } przy każdym podlewaniu
why-strength-weekly = { $factor } przy nawożeniu co tydzień
why-strength-fortnightly = { $factor } przy nawożeniu co dwa tygodnie
why-strength-monthly = { $factor } przy nawożeniu raz w miesiącu
why-season-winter = × { $factor } (zima)
why-medium-sphagnum = × { $factor } (sfagnum trzyma sole)
why-medium-clay_pellets = × { $factor } (keramzyt trzyma sole)
why-seedling = × { $factor } (siewki)
why-ceiling-label = przycięte do dawki z etykiety
why-ceiling-hungry = przycięte do 200 mg/l N, maksimum dla roślin żarłocznych
why-ceiling-moderate = przycięte do 125 mg/l N, maksimum dla takich roślin
why-ceiling-sensitive = przycięte do 1/4 etykiety i 50 mg/l N, maksimum dla wrażliwych korzeni
why-rest-genus = { $plants } ma teraz spoczynek
why-rest-growth = roślina w spoczynku nie bierze nawozu

# --- no feed ---
no-feed-genus = Bez nawozu: sama czysta woda, i to mało. { $plants } { $count ->
    [one] ma
   *[other] mają
} teraz spoczynek.
clear-only = Bez nawozu: { $volume } czystej wody{ $plants ->
    [none] .
   *[other] . Dla: { $plants }.
}
clear-how = Lej, aż wypłynie dołem i całe podłoże będzie mokre, potem daj odciec. Jednak z nawozem? Napisz „nawóz” z litrami.
clear-flush = { $enough ->
    [yes] Wystarczy też na comiesięczne płukanie (około { $volume }): przelewaj powoli, na dwa razy.
   *[no] Comiesięczne płukanie wymaga więcej: około { $volume }, dwa razy tyle co doniczki, przelane powoli.
}
no-feed-growth = Bez nawozu: sama czysta woda, i to mało. Roślina w spoczynku nic nie pobiera, a to, co zostanie, pali korzenie.
no-feed-until = Wróć do nawozu, gdy ruszą nowe przyrosty lub korzenie.
no-feed-months = Spoczynek według kalendarza: { $begin }–{ $end }. Potem wróć do nawozu, z nowym przyrostem albo korzeniami.
no-feed-others = Osobno dla { $plants }: { $amount } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
} na { $volume }.

# --- cautions ---
caution-plant-unknown = Nie znam rośliny: zacznij słabiej i napisz, co to jest.
caution-types-rest = Część gatunków tego rodzaju ma teraz spoczynek i nie bierze nawozu: podaj gatunek, np. Dendrobium nobile.
caution-ailing = Chora roślina nie dostaje nawozu, tylko czystą wodę. Napisz samo to, co widzisz, np. „zgnite korzenie u falka”, a ułożę plan.
caution-wet-roots-first = Najpierw zmocz korzenie czystą wodą.
caution-softened-water = Woda zmiękczona jest pełna sodu: nie dawaj jej storczykom. Bierz wodę sprzed zmiękczacza albo deszczówkę.
caution-water-over-limit = { $alone ->
    [yes] Nie na tej wodzie: sama ma EC { $own }, a te rośliny znoszą { $most } mS/cm.
   *[no] Nie na samej tej wodzie: z jej EC { $own } wyjdzie { $total }, a te rośliny znoszą { $most } mS/cm.
} { $litres ->
    [none] Weź deszczówkę albo wodę z RO.
   *[other] Weź deszczówkę albo wodę z RO, swojej najwyżej { $litres } na { $volume }.
}
caution-spoon-is-rough = Jedna łyżeczka bywa dwa razy cięższa od drugiej: zgarnij na płasko i daj raczej mniej.
caution-sensitive-roots = Te korzenie łatwo przypalić: lepiej słabiej niż mocniej.
caution-winter-half = Zimą daje się zwykle połowę tego, chyba że roślina rośnie.
caution-slow-growth = Rośnie powoli: dawaj mniej albo co drugi raz.
caution-hard-water = Twoja woda jest twarda i sama wnosi sole: częściej przepłukuj albo mieszaj z deszczówką.
caution-salty-water = Sama Twoja woda jest bardziej słona, niż te rośliny znoszą: mieszaj z deszczówką i częściej przepłukuj.
caution-no-calcium-in-water = Ta woda nie ma wapnia ani magnezu, na etykiecie też ich nie ma: weź nawóz z nimi albo dolej trochę kranówki.
caution-clear-water-monthly = Raz w miesiącu sama czysta woda, aż swobodnie przeleci.
caution-too-much-signs = Brązowe końcówki korzeni, schnące końcówki liści albo nalot na podłożu to za dużo soli: przepłucz czystą wodą i zrób przerwę.
caution-calcium-apart = Nawozu z wapniem nie trzymaj w jednym koncentracie z fosforanami ani siarczanami.
caution-no-dust = Załóż rękawiczki i nie wdychaj pyłu.
caution-no-splash = Załóż rękawiczki i chroń oczy.
caution-children-and-pets = Koncentraty trzymaj z dala od dzieci i zwierząt, nigdy w butelce po napoju.
caution-never-mix-concentrates = Nigdy nie zlewaj dwóch koncentratów razem.
caution-label-first = Etykieta i miejscowe przepisy są ważniejsze.
caution-not-for-food = Nie do roślin jadalnych.
caution-not-down-the-drain = Resztkę nawozu wylej innym roślinom, nie do zlewu ani do stawu.
caution-ask-a-society = Jeśli marnieje cała kolekcja, pokaż ją w klubie storczykowym albo doradcy ogrodniczemu.
caution-clear-water-only = Podlewaj dopiero, gdy się marszczy albo podłoże wyschnie na wylot.

# --- what was made of the words ---
read-as = Odczytane: { $pairs }.
meant-strength = dawka
read-as-pair = „{ $text }” jako { $meaning }
not-used = Nie rozumiem i pomijam: { $texts }.
not-used-one = „{ $text }”
not-used-maybe = „{ $text }” (może { $suggestions }?)

# --- questions ---
ask-volume = Ile litrów chcesz rozrobić?
ask-product = Co jest na etykiecie? Napisz trzy liczby, np. 20-20-20.
ask-product-with-rate = Jakie są trzy liczby na etykiecie (np. 20-20-20)? Bez nich nie wiem, czy dawka z etykiety nie jest dla rośliny za duża.
ask-volume-and-product = Ile litrów i jakie są trzy liczby na etykiecie? Np.: 5 litrów, 20-20-20 proszek.
ask-label-rate = Azotu prawie tu nie ma, więc potrzebuję dawki z etykiety. Napisz np.: etykieta 1 g na litr.
ask-element-none = Na tej etykiecie nie ma { $element }, więc nie policzę według niego. Podaj nawóz, który to ma, albo cel dla azotu, np. 50 ppm N.
ask-ec-perhaps = Sądząc po twardości, sama twoja woda może już mieć takie EC ({ $low } do { $high } mS/cm). Podaj jej EC, np.: moja kranówka 0,5 mS. Albo podaj wyższe, albo weź deszczówkę.
ask-ec-reached = Sama twoja woda ma już takie EC. Podaj wyższe EC albo weź deszczówkę.
ask-form-unit = Na etykiecie są mililitry, a tu jest proszek. Jak to jest? Podaj dawkę w gramach albo napisz: płyn.
ask-several-analysis = { $texts } to dwa nawozy, a liczę jeden naraz. Wyślij całość jeszcze raz, tylko z jednym.
ask-several = Widzę tu { $texts }. Co jest właściwe? Wyślij całość jeszcze raz, tylko z jednym.
ask-range = „{ $texts }” nie mówi, ile dokładnie. Podaj jedną liczbę.
ask-negation = Jest tu „{ $texts }”. Napisz, co jest, a nie czego nie ma.
ask-ambiguous_number = { $texts } to ułamek czy tysiące? Napisz jednoznacznie, np. 1500 ml albo 1,5 l.
ask-element = { $texts } czego? Napisz np. 100 ppm N, jeśli chodzi o azot; a o wodzie: twardość albo EC.
ask-ec_unit = „{ $texts }” to mało prawdopodobne EC. Podaj z jednostką, np. EC 0,8 mS/cm albo 800 µS/cm.
ask-hardness_unit = W jakiej jednostce jest „{ $texts }”? Napisz np. 12 °dH albo 200 mg/l CaCO3.
ask-lone_number = { $texts } czego? Podaj z jednostką.
ask-product_of_numbers = „{ $texts }” można rozumieć dwojako. Podaj razem, np. 6 litrów.
ask-loose_rate = Ile to jest „{ $texts }”? Zmierz raz i napisz tak: na etykiecie 2 ml na litr. Albo pomiń.

# --- refusals ---
refuse-negative = „{ $text }” to mniej niż nic. Podaj ilość większą od zera, np. 5 litrów.
refuse-division_by_zero = „{ $text }” dzieli przez zero. Podaj ułamek, np. 1/4.
refuse-not_a_number = Z „{ $text }” nic nie policzę. Napisz np. 5 litrów.
refuse-too_long = To bardzo długie. Napisz jedno podlewanie w jednej krótkiej linijce, np.: 5 litrów, 20-20-20 proszek, ćwierć dawki.
refuse-hidden_characters = W tej linijce są ukryte znaki, które mogą poprzestawiać liczby. Przepisz ją ręcznie.
refuse-volume-zero = Tyle wody to prawie nic. Napisz, ile chcesz rozrobić, np. 5 litrów.
refuse-volume-absurd = { $volume } to więcej, niż trzeba w jakimkolwiek domu. Podaj litry na jedno podlewanie, np. 5 litrów.
refuse-analysis-over = { $analysis } daje razem ponad 100 %. Zajrzyj na etykietę i podaj trzy liczby, np. 20-20-20.
refuse-analysis-zero = W 0-0-0 nie ma nic do nawożenia. Podaj trzy liczby z etykiety, np. 20-20-20.
refuse-strength-zero = Taka dawka to czysta woda. Napisz np. ćwierć dawki albo pomiń to.
refuse-target-zero = Przy takiej liczbie nie ma czego nawozić. Podaj większą od zera, np. 100 ppm N.
refuse-label-absurd = { $rate } { $unit ->
    [tsp] łyżecz.
   *[other] { $unit }
} na każdy litr to nie może być dawka. Zajrzyj na etykietę i napisz np.: etykieta 1 g na litr.
refuse-granules = Granulek i nawozów długo działających nie rozpuszcza się do podlewania: spalą korzenie. Połóż na podłożu tyle, ile każe etykieta, jeśli jest też do storczyków, albo podaj mi rozpuszczalny proszek lub płyn.

# --- help ---
help = Liczę, ile nawozu dać do wody. Napisz w jednej linijce, np.:
    5 litrów, 20-20-20 proszek, sfagnum, zima, ćwierć dawki
    Dopisz, co wiesz: roślinę, dawkę z etykiety, wodę. Kolejność dowolna.
    Można też: mój miernik pokazuje 0,9, 20-20-20 · czy 14 dH to za twarda woda dla falenopsisów? · zmieszaj kranówkę i RO do 6 dH · roztwór stężony 1:100 z 20-20-20 · brązowe końcówki korzeni i biały nalot
needs-chat = Do tego trzeba pamiętać twoje rośliny, nawozy i wodę, a tutaj nic nie pamiętam. Napisz na czacie.
needs-one-line = Tutaj nic nie pamiętam: napisz wszystko, co widzisz, w jednej linijce albo zapytaj na czacie.
apology = Przepraszam, to moja wina: coś się zepsuło i mam to zapisane. Wyślij za chwilę jeszcze raz.
missing-hint = Będzie dokładniej, gdy podasz: { $items }. „więcej” pokaże wszystkie uwagi, „dlaczego” rachunek.
hint-plant = roślinę
hint-medium = podłoże
hint-label = dawkę z etykiety
hint-water = wodę

# --- plants on record ---
plant-kind = { $traits } { $kind }
plant-label = { $count ->
    [1] { $kind ->
        [none] roślina bez nazwy
       *[other] { $kind }
    }
   *[other] { $count } { $kind ->
        [none] { $count ->
            [few] rośliny
           *[other] roślin
        }
       *[other] { $kind }
    }
}
plant-named-several = { $name } × { $count }
pot = doniczka { $cm } cm
pot-inch = doniczka { $inches }″ ({ $cm } cm)
medium-bark = kora
medium-sphagnum = sfagnum
medium-clay_pellets = keramzyt
medium-coconut = kokos
medium-rockwool = wełna mineralna
medium-perlite = perlit
medium-stone = kamień
medium-mounted = bez podłoża
medium-mixed = mieszanka
growth-growing = aktywny wzrost
growth-new_roots = nowe korzenie
growth-new_leaves = nowe liście
growth-new_pseudobulbs = nowe pseudobulwy
growth-flowering = pęd lub kwiaty
growth-slow = powolny wzrost
growth-resting = spoczynek
growth-seedling = siewka
plants-more = jeszcze { $count }
plants-added = Zapisane: { $plants }.
plants-unknown = Nie wiem jeszcze, { $items }. Dopisz, kiedy chcesz, np.: { $name } jest w korze, doniczka 12 cm.
unknown-genus = co to za storczyk
unknown-medium = jakie podłoże
unknown-pot = jaka doniczka
plants-first-hint = Dodaj teraz swój nawóz (mój proszek to 20-20-20, etykieta 1 g na litr) i zapytaj: co dziś do zrobienia.
plants-first-plan = Zapytaj: co dziś do zrobienia, albo napisz 2 l, a podam dawkę.
plants-corrected = { $plants }.
plants-water = { $plants }: { $volume } na podlewanie{ $count ->
    [1] .
   *[other] , każda.
}
plants-renamed = { $before }: teraz { $name }.
plants-moved = { $plants }: teraz { $place }.
plants-repotted = Przesadzone { $day }: { $plants }{ $facts ->
    [none] .
   *[other] , { $facts }.
}
plants-repotted-note = Bez nawozu przez trzy tygodnie albo do nowych korzeni.
plants-growth = { $plants }: { $growth }.
plants-growth-rest = W spoczynku bez nawozu: czysta woda, i to mało.
plants-fewer = Ubyło: { $gone }{ $kind ->
    [none] {""}
   *[other] {" "}({ $kind })
}, zostało { $left }.
plants-lost = Skreślone z listy: { $plants }. Co było podane, zostaje w dzienniku.
plants-meanwhile = Ktoś zmienił to chwilę wcześniej; w zapiskach było wtedy: { $held }.
who-rests = W spoczynku { $when ->
    [now] teraz
    [month] ({ $month })
    [day] { $month }
    [winter] zimą
    [spring] wiosną
    [summer] latem
    [autumn] jesienią
   *[then] wtedy
}: { $plants }. Tylko czysta woda, i mało.
who-rests-none = Żadna z twoich roślin nie jest w spoczynku { $when ->
    [now] teraz
    [month] ({ $month })
    [day] { $month }
    [winter] zimą
    [spring] wiosną
    [summer] latem
    [autumn] jesienią
   *[then] wtedy
}.
who-flush = Czas na płukanie: { $plants }. „jak płukać” z nazwą powie, ile wody.
who-flush-none = Dziś żadnej nie trzeba płukać.
ask-add-listed = Czy mam to zapisać: { $plants }? Jeśli chodzi o dawkę, napisz, ile litrów.
plants-not-added = Nic nie zapisano.
plants-none = Nie ma jeszcze żadnych roślin. Napisz np.: dodaj 3 falenopsisy w korze, doniczki 12 cm, kuchnia.
plants-none-group = Grupa nie ma zapisanych roślin. O własnych napisz mi prywatnie; rośliny grupy: { "/dose" } dodaj 3 falenopsisy w korze, doniczki 12 cm, szklarnia.
plants-count = { $count } { $count ->
    [one] roślina
    [few] rośliny
   *[other] roślin
}
plants-place = { $place ->
    [none] Nie wiem gdzie:
   *[other] { $place }:
}
ask-which-plant = Która z tych { $count }? Wyślij numer albo „wszystkie”.
ask-which-some = { $some ->
    [one] Która z tych { $count }? Wyślij numer.
   *[other] Które { $some } z tych { $count }? Wyślij numer albo nazwy, albo kilka numerów, na przykład: 1 i 2.
}
ask-which-plants = Które rośliny? Podaj nazwę, rodzaj albo miejsce, np.: przepłukane wszystkie falenopsisy.
ask-no-plants-yet = Nie ma jeszcze żadnych roślin. Napisz np.: dodaj 3 falenopsisy w korze, doniczki 12 cm, kuchnia.
ask-part-of = { $plants } to jeden wpis: nic nie zapisano. Bez liczby dotyczy to wszystkich; albo najpierw wydziel { $fewer }, na przykład: przenieś { $fewer } { $kind } na balkon.
ask-gone = { $plants }: { $count ->
    [one] tej rośliny
   *[other] tych roślin
} nie ma już na liście ({ $day }), nic nie zrobiono. Skreślone przed chwilą? Wyślij: cofnij. Inaczej dodaj jeszcze raz, na przykład: dodaj { $kind ->
    [none] roślinę
   *[other] { $kind }
} o nazwie { $name }.
ask-had = Nic nie zapisano. Jeśli nadal je masz, wyślij: dodaj { $plants }. Jeśli były na liście, na przykład: padły 2 vandy.
ask-names-count = { $count } { $count ->
    [one] roślina
    [few] rośliny
   *[other] roślin
}, a nazw więcej: { $names }. Nic nie zapisano; wyślij pasującą liczbę i nazwy, na przykład: dodaj 2 falenopsis: Ruby i Max.
ask-further-named = Już zapisane, bez imienia: { $known }. Jeśli „{ $name }” to ta sama, napisz: { $kind } nazywa się { $name }. Jeśli to kolejna, odpowiedz tak.
ask-further = Już zapisane: { $known }. Dodać { $plants } jako kolejne? Jeśli to już wszystkie, odpowiedz nie.
ask-fewer-than = Zapisane: { $plants }, o { $gone } więcej niż { $count }. Nic nie zmieniono; napisz, co z resztą, na przykład: padły { $gone } { $kind }.
plants-in-all = Razem: { $count } { $kind }.
ask-lost-apart = Nic nie zmieniono. Wyślij każdy rodzaj osobno, na przykład: padły 2 falenopsis.
ask-more-than = Zapisane: { $plants }, mniej niż { $count }. Nic nie zmieniono; jeśli nie ma już żadnej, wyślij: padły { $held } { $kind }.
plants-split = { $left ->
    [one] Pozostała { $kind } zostaje bez zmian.
    [many] Pozostałych { $left } { $kind } zostaje bez zmian.
   *[other] Pozostałe { $left } { $kind } zostają bez zmian.
}
ask-name-one = Bez imienia: { $known }. Nic nie zmieniono; nazwij je po kolei, na przykład: nazwij { $kind } na balkonie { $name }.
ask-them = Rośliny, o której była mowa, nie ma na liście. Napisz jej nazwę albo rodzaj, albo najpierw ją dodaj. Na liście: { $known }.
dose-for-nobody = Nie mam tu „{ $meant }”. Mam: { $known }. { $some ->
    [none] To jest dla dowolnego storczyka; jeśli znasz gatunek, najpierw go dodaj:
   *[other] Ta dawka jest tylko dla: { $some }.
}
ask-no-such = „{ $meant }” nie ma na twojej półce: nie podaję ilości. Na półce: { $feeds }. Wybierz z tego albo podaj etykietę: nawóz { $meant }: 20-20-20 proszek, 1 g na litr.
ask-not-on-record = Nie mam tu „{ $meant }”{ $known ->
    [none] .
   *[other] . Mam: { $known }.
} Wybierz z tego albo najpierw dodaj.

# --- products on record ---
n-nitrate = { $percent } % N azotanowego
n-ammonium = { $percent } % N amonowego
n-urea = { $percent } % N mocznikowego
label-rate = etykieta { $rate } { $unit ->
    [tsp] łyżecz.
   *[other] { $unit }
} na litr
density = { $density } kg/l
price = { $currency ->
    [none] { $price }
   *[other] { $price } { $currency }
}{ $pack ->
    [none] {""}
   *[other] {" "}za { $pack }
}
product-added = Na twojej półce: { $product }.
product-no-rate = Nie znam dawki z etykiety: za pełną przyjmuję 200 mg/l N. Lepiej ją podaj, np.: etykieta 1 g na litr.
product-use-it = Ma być domyślny? Napisz: od teraz { $name }.
product-name-it = Aby nadać mu nazwę, napisz: nazwij go Niebieski
ask-rate-or-mix = Tak mówi etykieta, czy tyle dodajesz? Napisz: { $name }, etykieta { $rate } { $unit } na litr; albo całą ilość i: za dużo?
ask-name-of-what = Co nazwać { $name }? Napisz tak: nazwij vandę { $name }
ask-which-feed = O którym nawozie to jest? Napisz po jednym, na przykład: { $name } kosztuje 12 € za 500 g.
ask-unshelved = Na półce nie ma: { $what }. Nie podam ilości i nic nie zapisuję. Dodaj z danymi z etykiety, np.: siarczan magnezu 9,8 % Mg proszek, etykieta 0,3 g na litr, nazwij to epsom
ask-ceased = { $name } zostaje na półce. Aby zdjąć, napisz: usuń { $name }. Aby używać innego: „od teraz NAZWA”.
says-remove = usuń { $name }
ask-which-product = { $several ->
    [yes] Który? Pasuje kilka: { $products }. Napisz jego liczby albo nazwę.
   *[no] Takiego nie masz. Na półce: { $products }.
}
newest-taken = „Nowy”: { $name }, zapisany jako ostatni.
can-taken = Na pełną konewkę: { $volume }.
ask-can = Ile się w niej mieści? Napisz np.: moja konewka ma 5 l, a zapamiętam.
one-feed = Policzone tylko { $name }, bez: { $others }. Oba w pełnej dawce to razem za dużo. Czy mogą się spotkać? Napisz: { $name } i { $others } w jednej butelce?
product-changed = Zmienione: { $product }.
product-removed = Zdjęte z półki: { $name }.
product-default = Od teraz domyślnie { $name }, chyba że podasz inny nawóz.
product-is-default = , domyślnie
products-none = Półka jeszcze pusta. Napisz np.: mój proszek to 20-20-20, etykieta 1 g na litr, nazwij go niebieska puszka.
products-head = Na twojej półce:
ask-product-numbers = Jakie trzy liczby są na etykiecie? Napisz całość razem z nimi, np.: mój proszek to 20-20-20, etykieta 1 g na litr.
lack-line = { $name }: { $macro ->
    [none] na etykiecie są wszystkie makroelementy
   *[other] na etykiecie brak { $macro }
}; { $micro ->
    [none] mikroelementy też wszystkie.
   *[other] z mikroelementów nie podano: { $micro }.
}
lack-line-traces = { $name }: { $macro ->
    [none] na etykiecie są wszystkie makroelementy
   *[other] na etykiecie brak { $macro }
}; mikroelementy są, ale bez liczb.
trace-elements = mikroelementy
lack-note = O etykiecie wiem tylko to, co od ciebie. Wapń i magnez może wnosić kranówka; deszczówka i woda z RO nie.
choice-none = Półka jeszcze pusta, nie ma z czego wybierać. Na większość wystarczy zrównoważony nawóz z makro- i mikroelementami.
choice-best = Najlepszy: { $name }.
choice-only = To jedyny na twojej półce.
choice-close = Pozostałe są prawie tak samo dobre.

# --- water, kit, home ---
water-tap = kranówka
water-rain = deszczówka
water-reverse_osmosis = woda z RO
water-distilled = woda destylowana
water-softened = woda zmiękczona
water-well = woda ze studni
hardness = { $german } °dH = { $caco3 } mg/l CaCO3
ec = EC { $ec } mS/cm
alkalinity = zasadowość { $caco3 } mg/l CaCO3
water-recorded = Zapisane: { $water }.
water-used-now = Od teraz liczę z nią, gdy nie podasz innej.
water-used-still = Do dawek liczę: { $used }. Aby to zmienić, napisz: używam: { $water }.
water-for = { $plants }: od teraz { $water }.
kit-scale = waga { $step } g
kit-syringe = strzykawka z podziałką { $step } ml
kit-can = konewka { $volume }
kit-units-us = miary amerykańskie
kit-units-imperial = miary brytyjskie
kit-units-metric = miary metryczne
kit-spoons = tylko łyżeczki
kit-recorded = Zapisane: { $kit }.
kit-line = Sprzęt: { $kit }.
refuse-step = Waga z dokładnością do { $step } g nic tu nie da. Napisz np.: moja waga pokazuje 0,1 g.
ask-syringe-step = Jaka jest jej najmniejsza kreska? Napisz np.: moja strzykawka pokazuje 0,1 ml.
ask-remains = Nie liczę, ile zostało. Po dawkę podaj litry, np.: 5 l; gdy się skończy, podaj nazwę, np.: niebieska puszka jest pusta.
refuse-can = Konewka ma od 0,1 do { $most } litrów. Napisz np.: moja konewka ma 5 l.
home-recorded = { $place }{ $country ->
    [none] {""}
   *[other] , { $country }
}: { $zone }, { $side ->
    [south] półkula południowa
   *[north] półkula północna
}.
home-others = A może { $others }? Wtedy podaj też kraj.
home-besides = Pominięte: { $texts }. Wyślij to w osobnej linii.
home-south = Półkula południowa: odwracam pory roku.
home-north = Półkula północna.
home-line = Dom: { $place ->
    [none] {""}
   *[other] { $place }, {""}
}{ $zone ->
    [none] {""}
   *[other] { $zone }, {""}
}{ $side ->
    [south] półkula południowa
   *[north] półkula północna
}.
ask-home = Nie znam „{ $text }”. Podaj większe miasto w pobliżu i kraj, np.: moje miasto to Gdynia, Polska.
settings-kept = Zapisane są też: { $plants ->
    [one] 1 roślina
    [few] { $plants } rośliny
   *[other] { $plants } roślin
} (wyślij: moje rośliny), { $feeds ->
    [0] żadnego nawozu
    [one] 1 nawóz
    [few] { $feeds } nawozy
   *[other] { $feeds } nawozów
} (wyślij: moje nawozy); i zobacz: moje przypomnienia.
settings-none = Nic nie wiem o twojej wodzie i sprzęcie. Napisz np.: moja kranówka ma 14 dH; moja waga pokazuje 0,1 g; moja konewka ma 5 l; moje miasto to Gdynia.

# --- the log ---
share-full = pełna dawka
# Where a figure is from: what is no citation. Citations stay in their own language.
source-practice = z praktyki, bez źródła
source-ours = nasze
source-told = twoja wiadomość
source-direction = kierunek to powszechna praktyka, współczynnik nasz
source-shelf = twoja półka
source-label = bilans z etykiety
source-cited = po ang.: { $source }
# How days are written: letters as in CLDR date patterns.
pattern-day = E d MMMM
pattern-date = d MMMM
pattern-date-year = d MMMM y
pattern-date-long = d MMMM
day-today = dziś
day-yesterday = wczoraj
day-tomorrow = jutro
logged-fed = Nawóz { $day }: { $plants }{ $facts ->
    [none] .
   *[other] {" "}({ $facts }).
}
logged-clear = Czysta woda { $day }: { $plants }.
logged-flush = Przepłukane { $day }: { $plants }.
logged-reading = Odciek { $day }: { $plants }, EC { $ec } mS/cm.
reading-under = To poniżej granicy { $limit } mS/cm.
reading-over = { $plants ->
    [none] To powyżej granicy { $limit } mS/cm: przepłucz teraz i bez nawozu, aż odczyt spadnie.
   *[other] Powyżej granicy (mS/cm): { $plants }. Przepłucz teraz i bez nawozu, aż odczyt spadnie.
}
reading-no-plant = EC { $ec } mS/cm z doniczki to { $over ->
    [yes] powyżej granicy { $limit } (nasza): przelej dwie objętości doniczki czystej wody i bez nawozu, aż odczyt spadnie.
   *[no] poniżej granicy { $limit } (nasza).
} Nie zapisuję, bo nie znam jeszcze twoich roślin. Wyślij je tak: dodaj 3 falenopsisy w korze, doniczki 12 cm.
logged-resting = { $plants }: spoczynek, następnym razem bez nawozu, sama czysta woda.
amended = Poprawione. { $entry } Przedtem: { $before }
amended-undone = Jak przedtem. { $entry }
amended-same = Tak już jest. { $entry }
ask-amend = Co było nie tak? { $entry } Napisz na przykład: to była Ruby; albo: to było wczoraj; albo: cofnij.
ask-amend-undo = Żeby to poprawić, napisz: cofnij; a potem to zdanie od nowa.
ask-undo-last = Ostatni wpis jest inny: { $what }{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}. „cofnij” usunie właśnie ten, a potem poprzedni.
ask-wrong = Co było nie tak? Napisz tę linijkę od nowa, jak ma być; „cofnij” usunie ostatni wpis.
ask-two-days = To dwa dni naraz. Napisz je osobno, na przykład: nawiozłam Ruby wczoraj.
ask-two-things = To dwie rzeczy naraz i nie wiem, które rośliny co dostały. Napisz je osobno, na przykład: nawiozłem falenopsisy.
not-changed = W takim razie niczego nie zmieniam. Pomyłkę usunie „cofnij”.
not-yours = To chyba cudze, więc nic nie zapisuję. Jeśli to twoje, napisz to bez tej drugiej osoby.
not-your-water = To chyba cudza woda albo sprzed lat: nic nie zapisuję. Swoją dzisiejszą podaj np.: moja kranówka ma 14 dH
not-used-now = Nic nie zmieniam. Aby zdjąć nawóz z półki, napisz: usuń, i jego nazwę.
not-told-doubt = Dopóki to nie jest pewne, nic nie zapisuję. Jeśli tak było, napisz { $verb ->
    [clear] tak: podlałam Ruby
    [flush] tak: przepłukałam Ruby
    [repot] tak: przesadziłam Ruby
   *[fed] tak: nawiozłam Ruby
}.
feed-pause = Samej przerwy w nawożeniu nie zapisuję. Napisz „Ruby odpoczywa”, a plan da tylko czystą wodę, aż napiszesz „Ruby ma nowe korzenie” albo „Ruby rośnie”.
not-from-today = Tylko dziś: w zapisach nic się nie zmienia. Do dawki z tą wodą dopisz ją w wierszu, np.: 2 l z deszczówką.
not-told = Na razie nic nie zapisuję. Gdy będzie zrobione, napisz { $verb ->
    [fed] tak: nawiozłam Ruby
    [clear] tak: podlałam Ruby
    [flush] tak: przepłukałam Ruby
    [repot] tak: przesadziłam Ruby
    [move] tak: przeniosłam Ruby na balkon
    [lose] tak: Ruby zginęła; jeśli tylko choruje, co widzisz
   *[other] to w jednej linii
}.
logged-twice = Już drugi raz tego dnia: { $plants }. To było jedno nawożenie, wpisane dwa razy? Napisz: cofnij.
not-given = W takim razie nic nie zapisuję: w dzienniku jest tylko to, co było podane. Błędny zapis usunie „cofnij”.
ask-all-or-some = Wszystkie oprócz { $names } czy tylko { $names }? Nic nie jest jeszcze zapisane; wyślij ten wiersz jeszcze raz z jednym z nich.
ask-runoff = Co pokazał miernik? Napisz np.: odciek z Ruby 1,6 mS.
undone = Cofnięte: { $what }{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}{ $whose ->
    [none] .
   *[other] , wpis od: { $whose }.
}
undo-nothing = Nie ma już czego cofnąć.
undo-nothing-own = Nie ma już twoich wpisów do cofnięcia. Cudze może cofnąć ten, kto je dodał, albo administrator.
refuse-undo-others-since = Ktoś inny dopisał już coś później o tym samym. Administrator może cofać ostatnie wpisy po jednym.
diary-you = ty
diary-member = ktoś z grupy
all-plants = wszystkie rośliny
event-fed = nawóz
event-clear = czysta woda
event-flush = płukanie
event-reading = pomiar odcieku
event-pause = przerwa w nawożeniu
event-overfed = za dużo nawozu
event-rescue = diagnoza ({ $cause ->
    [root-rot] gnicie korzeni
    [salt-burn] przypalenie solami
    [thirst] przesuszenie
    [cold] przemarznięcie
    [old-age] starość
   *[unclear] niejasna
})
event-added = nowa roślina
event-repot = przesadzanie
event-growth = zmiana wzrostu
event-moved = zmiana miejsca
event-renamed = zmiana nazwy
event-water = wybór wody
event-corrected = poprawka
event-lost = strata
event-product = zmiana na półce
event-water_source = zmiana wody
event-settings = zmiana ustawień
history-head = { $plants ->
    [none] Dziennik:
   *[other] { $plants }:
}
history-none = { $plants ->
    [none] W dzienniku nic z tego czasu.
   *[other] W dzienniku nic z tego czasu ({ $plants }).
}
history-more = ({ $count } { $count ->
    [one] starszy wpis jest
    [few] starsze wpisy są
   *[other] starszych wpisów jest
} w eksporcie.)

# --- the plan of a day ---
due-feed = nawóz
due-clear = czysta woda
due-flush = płukanie
due-nothing = nic
plan-head = Plan na { $day }: { $counts }.
plan-count-feed = { $count } do nawożenia
plan-count-clear = { $count } na samą wodę
plan-count-flush = { $count } do płukania
plan-count-nothing = { $count } bez podlewania
plan-left-over = Zostaje { $volume }: wylej innym roślinom, które mogą dostać nawóz.
plan-no-plants = Nie ma jeszcze roślin, więc i planu. Napisz np.: dodaj 3 falenopsisy w korze, doniczki 12 cm, kuchnia.
plan-no-product = Na półce nie ma nawozu, więc bez ilości. Napisz np.: mój proszek to 20-20-20, etykieta 1 g na litr.
plan-can-assumed = Na konewkę { $volume }; { $who ->
    [member] administrator może podać konewkę grupy, np.: nasza konewka ma 8 l.
    [administrator] podaj konewkę grupy, np.: nasza konewka ma 8 l.
   *[own] podaj swoją, np.: moja konewka ma 8 l.
}
plan-same-plants = te same rośliny
plan-wet-first = Przed nawozem zmocz korzenie czystą wodą.
plan-done-hint = Napisz „zrobione”, gdy wszystko podlane, albo „zrobione 1” za część.
plan-flush = Przepłucz{ $water ->
    [none] {""}
   *[other] {" "}({ $water })
} w dwóch-trzech turach, aż przeleci { $volume }: { $plants }.
plan-clear = { $water ->
    [none] Czysta woda
   *[other] Sama { $water }
}, { $volume }: { $plants }.
plan-feed = Podlej { $volume }, { $strength } pełnej dawki: { $plants }{ $of ->
    [1] .
   *[other] , konewka { $can } z { $of }.
}
plan-too-little = Czysta woda, { $volume }: { $plants }. Nawozu wyszłoby za mało, żeby odmierzyć.
plan-feed-no-product = Nawóz, { $volume }{ $water ->
    [none] {""}
   *[other] {" "}({ $water })
}: { $plants }.
plan-mix = { $amount } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
} ({ $name }), dopełnij do { $to }{ $water ->
    [none] {""}
   *[other] {" "}({ $water })
}.
plan-mix-stock = { $amount } ml tego roztworu ({ $name }, { $holds } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
}), dopełnij do { $to }{ $water ->
    [none] {""}
   *[other] {" "}({ $water })
}.
plan-stock = Za mało, żeby odmierzyć wprost: najpierw rozpuść { $product } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
} ({ $name }) w wodzie, do { $bottle } ml.
plan-too-coarse = Twoja miarka (co { $step } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
}) jest na tak mało za gruba: dawki są z grubsza.
plan-top-up = Dolej do { $to } ({ $water ->
    [none] czysta woda
   *[other] { $water }
}).
plan-pour-off = Odlej { $volume } innym roślinom.
plan-again = Dalej przy następnym podlewaniu, gdy podłoże prawie wyschnie: zapytaj wtedy albo wyślij: plan na jutro.
plan-nothing = Nic: { $plants }.
done-logged = W dzienniku: { $what }.
done-fed = nawóz ({ $plants })
done-feed = nawóz ({ $plants })
done-clear = czysta woda ({ $plants })
done-flush = przepłukane ({ $plants })
done-left = Z planu { $count ->
    [one] została jeszcze { $count } pozycja
    [few] zostały jeszcze { $count } pozycje
   *[other] zostało jeszcze { $count } pozycji
}.
done-nothing = To już jest w dzienniku.
ask-no-plan = Nie ma planu do odhaczenia. Napisz: co dziś do zrobienia.
ask-plan-old = Ostatni plan był na { $day }. Napisz: co dziś do zrobienia, albo co było podane, np.: nawożone wszystkie falenopsisy.
ask-plan-ahead = Ten plan jest na { $day }. Napisz „zrobione” tego dnia albo: co dziś do zrobienia.
ask-plan-step = Części w planie: { $count }. Napisz „zrobione” albo „zrobione 1”.

# --- follow-ups and what is on record ---
on-record = { $whose ->
    [group] Z zapisków grupy
   *[own] Z twoich zapisków
}: { $items }.
on-record-asleep = Pominięte, w spoczynku: { $plants }.
on-record-rate = Piszesz { $rate } { $unit } na litr; etykieta na twojej półce mówi mniej, więc trzymam się jej. Jeśli etykieta jest nowa, napisz: { $name } etykieta { $rate } { $unit } na litr.
on-record-volume = Na te doniczki trzeba mniej więcej { $volume }.
on-record-differ = Różnią się, więc biorę najsłabszą dawkę; „plan” da każdej własną.
on-record-spoons = Masz tylko łyżki: są na to za grube. Weź małą strzykawkę z apteki albo wagę co dziesiątą grama; do tego czasu raczej mniej niż więcej.
on-record-plants = twoje rośliny, razem { $count }
on-record-deciding = { $plants } (najmniej znosi { $plant } i decyduje)
follow-up-more = To { $times } razy tyle co poprzednio. Jeśli chodzi o połowę tamtego, napisz: połowa tego.
follow-up-strength-stays = Nadal { $share }, jak w prośbie. Inną moc podaj na przykład tak: połowa.
ask-no-last = Nie ma dawki, od której można wyjść. Napisz jedną linijkę, np.: 5 litrów, 20-20-20 proszek, ćwierć dawki.
refuse-overtaken = Potem była jeszcze inna dawka, a wychodzę tylko od najnowszej. Napisz całą linijkę, np.: 5 litrów, 20-20-20 proszek, ćwierć dawki.
ask-follow-up = Co zmienić? Napisz np.: zrób z tego 3 litry; albo: a dla paphiopedilum.
question-lapsed = Moje pytanie już wygasło, nic nie zmieniono. Wyślij jeszcze raz wiersz, o który chodziło.
question-left = Dobrze, zostawiamy to. Nic nie zmieniono.
nothing-asked = Nie było żadnego pytania. Napisz jedną linijkę, np.: 5 litrów, 20-20-20 proszek, ćwierć dawki.
help-lost = Tego nie rozumiem: nic nie zmieniono.
tell-water = Podlewaj, gdy podłoże jest prawie suche: podnieś doniczkę, lekka znaczy sucha. W korze to latem często raz w tygodniu, zimą rzadziej; mech schnie dłużej. Planuję nawóz i sole, nie pragnienie (powszechna praktyka, bez źródła).
tell-need = Długo żyją bez nawozu, ale z odrobiną rosną i kwitną lepiej: ćwierć dawki z etykiety przy każdym podlewaniu, dopóki rosną. Za dużo szkodzi bardziej niż nic (powszechna praktyka, bez źródła).
tell-winter = Co zimą dalej rośnie, dostaje połowę zwykłej dawki, co odpoczywa, nic: czystą wodę, i mniej. Od wiosny, gdy pojawią się nowe przyrosty albo korzenie, jak przedtem (powszechna praktyka, bez źródła).
tell-winter-half = Tak: zimą połowa zwykłej dawki. Moje zimowe dawki mają już tę połowę: nie dziel jeszcze raz. W spoczynku nic (powszechna praktyka, bez źródła).
tell-which-water = Deszczówka albo woda z odwróconej osmozy, albo kranówka, która nie jest twarda; nigdy woda ze zmiękczacza na sól. Deszczówka i osmoza nie wnoszą wapnia ani magnezu: musi je dać nawóz. Podaj swoją, np.: moja kranówka ma 14 dH (powszechna praktyka, bez źródła).
tell-repot-when = Gdy podłoże się rozpada albo korzenie nie mają miejsca, mniej więcej co dwa lata, najlepiej na początku nowych korzeni (powszechna praktyka, bez źródła). Potem napisz: przesadziłam Ruby w korę; wstrzymam nawóz.
tell-bottle = Nie w jednej butelce koncentratu: wapń strąca się z siarczanem i fosforanem nawozu jako biały osad. Każdemu osobna butelka i strzykawka; w pełnej konewce mogą się spotkać, jedno wmieszane po drugim (powszechna praktyka, bez źródła).
tell-keiki = Przy matce żyje z jej nawozu. Oddziel je, gdy ma trzy korzenie po około 5 cm, posadź w małej doniczce, trzy tygodnie sama woda, potem połowa tego, co ona dostaje (powszechna praktyka, bez źródła).
tell-dry = Nigdy nie nawoź suchych korzeni: parzy je. Najpierw zwilż je czystą wodą, odczekaj kwadrans, potem nawoź (powszechna praktyka, bez źródła).
tell-first = Najpierw czysta woda, potem nawóz, nigdy odwrotnie: suche korzenie parzy. Po porządnym płukaniu nawieź dopiero przy następnym podlewaniu, nie tego samego dnia (powszechna praktyka, bez źródła).
tell-spray = Nawoź korzenie, nie liście: pobierają mało, a to, co zostanie w stożku lub kącie liścia, szkodzi. Jeśli zraszasz, to czystą wodą, rano (powszechna praktyka, bez źródła).
tell-heat = Powyżej około 35 °C prawie nie rosną: sama woda, w chłodzie poranka, a nawóz znowu, gdy się ochłodzi (powszechna praktyka, bez źródła).
tell-no-bloom = Więcej nawozu nie da kwiatów, daje je światło: jasno, bez południowego słońca, a dla falenopsisa kilka tygodni nocy poniżej około 18 °C. Ćwierć dawki z etykiety w czasie wzrostu wystarczy (powszechna praktyka, bez źródła).
tell-summer = Nie mocniej: zwykła dawka. Latem piją częściej i same dostają więcej; powyżej około 35 °C tylko czysta woda (powszechna praktyka, bez źródła).
tell-in-flower = Tak, zwykła dawka albo połowa, nigdy więcej z powodu kwiatów. Najpierw zwilż korzenie i nie lej nawozu na kwiaty (powszechna praktyka, bez źródła).
tell-repot-flower = Lepiej nie: może zrzucić kwiaty. Poczekaj, aż przekwitnie i ruszą nowe korzenie; nie czekają tylko zgniłe korzenie i mokre, rozłożone podłoże (powszechna praktyka, bez źródła).
tell-before-repot = Nie: dzień wcześniej czysta woda, korzenie będą giętkie. Nawóz dopiero z nowymi końcówkami korzeni albo po { $weeks } tygodniach (powszechna praktyka, bez źródła).
tell-rest-feed = W spoczynku bez nawozu: nic nie pobiera, a sole zostają przy korzeniach. Mało czystej wody, albo wcale, gdy spoczywa na sucho, aż ruszy nowy przyrost (powszechna praktyka, bez źródła).
tell-rest-which = To zależy od gatunku. Napisz z nazwą, np.: kiedy spoczywa Dendrobium nobile?
tell-rest-none = { $plants } nie ma w moim almanachu stałego spoczynku: nawoź, dopóki rośnie, zimą o połowę mniej.
tell-rest-span = { $plants } ma spoczynek według kalendarza: { $begin }–{ $end }; bez nawozu{ $dry ->
    [yes] {" "}i na sucho
   *[no] , mało czystej wody
}. Potem wróć do nawozu, z nowym przyrostem albo korzeniami.
tell-water-amount = Tyle, żeby trochę wyciekło dołem, potem odsącz: nigdy nie zostawiaj w wodzie. Podaj doniczkę, np.: falek stoi w korze, doniczka 12 cm; plan poda, ile ml (powszechna praktyka, bez źródła).
tell-soak = Można jedno i drugie: podlewanie wypłukuje stare sole, dziesięć minut moczenia lepiej nawilża suchą korę. Dla każdej doniczki świeża woda, bo wspólna przenosi zgniliznę i szkodniki (powszechna praktyka, bez źródła).
tell-ice = Lepiej woda o temperaturze pokojowej: lód wychładza korzenie, nie niesie nawozu i nie wypłukuje soli (powszechna praktyka, bez źródła).
tell-boiled = Gotowanie i filtr usuwają tylko część kamienia; przegotowaną wodę ostudź. Do twardej dolej deszczówki albo wody z osmozy; nigdy woda ze zmiękczacza solnego (powszechna praktyka, bez źródła).
tell-lime = Twarda woda może być pół na pół z deszczówką albo wodą z osmozy; białe naloty wypłucz taką mieszanką. Podaj jej wynik, a uwzględnię go, np.: moja kranówka ma 18 dH (powszechna praktyka, bez źródła).
tell-normal = Nie widzę tego: opisz, jak wygląda, np.: mój falek ma żółte liście. Dopóki nie wiadomo, czysta woda i bez nawozu.
tell-often = Przy każdym podlewaniu ćwierć dawki z etykiety, a raz w miesiącu sama woda; albo co dwa tygodnie połowa. Zimą połowa tego, w spoczynku nic (powszechna praktyka, bez źródła).
tell-often-sensitive = Te znoszą mało: przy każdym podlewaniu od jednej ósmej do ćwierci dawki z etykiety, nigdy więcej, a raz w miesiącu sama woda. Zimą połowa tego, w spoczynku nic (powszechna praktyka, bez źródła).
tell-away = Przed wyjazdem przepłucz doniczki czystą wodą. Dwa, trzy tygodnie bez nawozu nie szkodzą: kto podlewa, niech daje samą wodę, gdy doniczka jest lekka, i niech żadna nie stoi w wodzie. Po powrocie nawoź jak zwykle, nigdy więcej na zapas (powszechna praktyka, bez źródła).
tell-sticky = Przejrzyste krople na pędach i młodych liściach to często tylko sok. Lepkie liście z brązowymi albo białymi guzkami to mogą być tarczniki: zetrzyj je i odstaw roślinę (powszechna praktyka, bez źródła).
tell-gnats = Małe muszki przy doniczkach to zwykle ziemiórki: żyją w mokrym, starym podłożu i dorosłym roślinom prawie nie szkodzą. Daj mu mocniej przesychać, wylewaj wodę z podstawek, zawieś żółte lepy; świeże podłoże, gdy się rozpada (powszechna praktyka, bez źródła).
tell-dry-roots = Biały lub srebrny i jędrny to zdrowy, suchy korzeń: mokry zielenieje. Podlej, gdy większość jest srebrna; nic nie wycinaj, nie nawoź więcej. Płaski, pusty lub brązowy jest martwy (powszechna praktyka, bez źródła).
tell-sunburn = Zabierz roślinę z pełnego słońca. Spalona plama, jasna, potem brązowa i sucha, się nie zagoi: zostaw liść. Wytnij tylko, gdy mięknie i się powiększa. Bez dodatkowego nawozu, podlewaj jak zwykle (powszechna praktyka, bez źródła).
tell-heat-stress = Sama czysta woda, bez nawozu, póki upał. Przenieś roślinę w najchłodniejsze zacienione miejsce z ruchem powietrza, korzenie wilgotne, rano zraszaj. Chłodnolubne, jak Masdevallia, gubią liście powyżej około 25 °C. Miękkie korzenie lub pędy? Napisz (powszechna praktyka, bez źródła).
tell-mould = Pleśń żyje na martwym podłożu, nie na roślinie: jest za mokro, za mało powietrza albo podłoże stare. Zdejmij ją, daj mocniej przeschnąć, więcej powietrza; świeże podłoże, gdy miękkie lub pachnie. Bez nawozu, aż przeschnie (powszechna praktyka, bez źródła).
tell-algae = Zielony nalot to glony: światło i nawóz na mokrym keramzycie, mchu lub doniczce. Korzeniom prawie nie szkodzą. Osłoń doniczkę od światła, raz w miesiącu przepłucz czystą wodą, daj górze przeschnąć (powszechna praktyka, bez źródła).
tell-broken = Poszarpane liście i korzenie przytnij gładko czystym ostrzem, rany kilka dni trzymaj sucho, ustaw roślinę prosto i stabilnie w cieniu. Sama czysta woda, bez nawozu do nowych końcówek korzeni (powszechna praktyka, bez źródła).
tell-air-roots = Korzenie poza doniczką to nic złego: zostaw je. Srebrne albo zielone i jędrne są zdrowe, brązowe i puste martwe (powszechna praktyka, bez źródła).
tell-flowers-over = Kwiaty więdną po tygodniach albo miesiącach: to normalne. Nawoź dalej jak dotąd. Jeśli cierpią też liście albo korzenie, napisz, na przykład: żółte liście u mojego falka.
tell-buds = Pąki opadają zwykle po zmianie: nowe miejsce, zimny lub gorący przeciąg, suche powietrze, suche korzenie albo dojrzałe owoce obok. Nie ruszaj rośliny, trzymaj korzenie lekko wilgotne i nie dawaj więcej nawozu (powszechna praktyka, bez źródła). Miękkie korzenie albo plamy na liściach? Napisz i to.
tell-spike = U falenopsisa brązowy, suchy pęd utnij przy nasadzie; zielony może zostać, bo może znów zakwitnąć (powszechna praktyka, bez źródła).
tell-missed = Pominięte nawożenie nie szkodzi: nigdy nie nadrabiaj go większą dawką. Najpierw czysta woda, potem dalej zwykła ilość (powszechna praktyka, bez źródła).
tell-repotted = Po przesadzeniu sama czysta woda, aż pokażą się nowe końcówki korzeni, albo tyle tygodni: { $weeks }; potem jak zwykle. Napisz „przesadziłam Ruby”, a plan policzy dni (powszechna praktyka, bez źródła).
tell-keeps = Suchy i zamknięty proszek trzyma się latami, płyn do daty na butelce. Nie używaj, gdy pachnie, ma grudki, które się nie rozpuszczają, albo wytrącił kryształy (powszechna praktyka, bez źródła).
tell-ph = Zwykle pH 5,5 do 6,5 w gotowym roztworze (ogólna praktyka, bez źródła). Kwasów ani „pH minus” i „pH plus” nie liczę: parzą skórę i korzenie, więc tylko według ich etykiety, w rękawicach i z pehametrem. Domieszka deszczówki albo wody z RO obniża twardość i pH bez kwasu.
tell-ppm-scale = Skala jest na mierniku albo w instrukcji (500, 640 lub 700; także 0,5, 0,64, 0,7). Albo zmierz tę samą wodę w mS/cm: ppm podzielone przez mS/cm to skala.
thanked = Proszę bardzo. Niech rosną.
help-of-plant = Znam { $name }, ale nie wiem, czego chcesz. Napisz jedno z tych:
help-of-plant-say = plan dla { $name } | historia { $name } | 2 l dla { $name }
help-group = Liczę nawóz. Pytaj przez { "/dose" } i swoją linijkę albo w odpowiedzi na moją wiadomość: 5 l 20-20-20 proszek, falenopsisy, ćwierć dawki.
    Co tu zapiszesz, jest grupy: wszyscy to widzą, cofnąć możesz ty i administratorzy. Twoje rośliny i nawozy trzymam prywatnie.
help-group-short = Liczę nawóz. Pytaj w jednej linijce: { "/dose" } 5 l 20-20-20 proszek, falenopsisy, ćwierć dawki. { "/help" } pokaże resztę.
help-what = Liczę, ile nawozu dać do konewki: do twojej etykiety, roślin, wody i pory roku.
    Planuję dzień podlewania: kto dostaje nawóz, czystą wodę, płukanie albo nic.
    Pamiętam, co było robione, przypominam i pomagam, gdy cierpią korzenie lub liście.
help-group-how = Tutaj odpowiadam na { "/dose" } i na odpowiedź do mnie. Co tu zapiszesz, jest grupy; twoje własne trzymam prywatnie.
help-next-first = Spróbuj w jednej linijce, kolejność dowolna: „{ $example }”
help-next-group = Zapytaj w jednej linijce: „{ $example }”
help-have = Zapisane: { $plants ->
    [0] bez roślin
    [one] jedna roślina
    [few] { $plants } rośliny
   *[other] { $plants } roślin
}, { $feeds ->
    [0] bez nawozu
    [one] jeden nawóz
    [few] { $feeds } nawozy
   *[other] { $feeds } nawozów
}, { $reminders ->
    [0] bez przypomnień
    [one] jedno przypomnienie
    [few] { $reminders } przypomnienia
   *[other] { $reminders } przypomnień
}.
help-next-plants = Teraz dodaj swoje rośliny: „{ $example }”
help-next-feeds = Teraz podaj swój nawóz: „{ $example }”
help-next-water = Teraz podaj swoją wodę, bo twardość się liczy: „{ $example }”
help-next-plan = Teraz zobacz, kto czego potrzebuje: „{ $example }”
help-next-home = Teraz podaj miasto w pobliżu, od niego zależą pory roku i godzina: „{ $example }”
help-next-can = Teraz podaj swoją konewkę, żeby mieszanka się zmieściła: „{ $example }”
help-next-reminders = Teraz daj sobie przypominać: „{ $example }”
help-next-today = Wszystko gotowe. „{ $example }” układa plan dnia.
help-example-first = 5 l 20-20-20 proszek, falenopsisy w korze, ćwierć dawki
help-example-group = 5 l 20-20-20 proszek, falenopsisy, ćwierć dawki
help-example-plants = dodaj 3 falenopsisy w korze, doniczki 12 cm, kuchnia
help-example-feeds = mój proszek to 20-20-20, 1 g na litr, nazwij go niebieska puszka
help-example-water = moja kranówka ma 14 dH
help-example-plan = co dziś do zrobienia
help-example-home = moje miasto to Gdynia
help-example-can = moja konewka ma 5 l
help-example-reminders = przypomnij mi płukać w każdą pierwszą niedzielę miesiąca o 9
help-example-today = co dziś do zrobienia
help-topics = Po przykłady wyślij „pomoc” i jedno z tych: { $topics }.
help-about = pomoc { $topic }
help-word = pomoc
# What is tapped below an answer, and read as if it had been typed.
tap-undo = cofnij
tap-why = dlaczego
tap-more = więcej
tap-done = zrobione
tap-yes = tak
tap-no = nie
tap-all = wszystkie

# --- topics of help: a line, then examples to send, parted by | ---
topic-name-dose = dawka
topic-name-plants = rośliny
topic-name-feeds = nawozy
topic-name-water = woda
topic-name-plan = plan
topic-name-log = dziennik
topic-name-reminders = przypomnienia
topic-name-trouble = kłopoty
topic-name-salts = sole
topic-name-bottles = koncentraty
topic-name-compare = ceny
topic-name-pictures = obrazki
topic-name-settings = ustawienia
topic-name-group = grupa
topic-name-data = moje dane
topic-dose = Dawka w jednej linijce, kolejność dowolna; potem zmień ją w kilku słowach:
topic-dose-say = 5 l 20-20-20 proszek, falenopsisy w korze, ćwierć dawki | 3 l 15-5-15 proszek, 80 ppm N | połowa tego | a w sfagnum? | dlaczego
topic-plants = Zapisz rośliny i zmieniaj, co o nich wiadomo:
topic-plants-say = dodaj 3 falenopsisy w korze, doniczki 12 cm, kuchnia | moje rośliny | przenieś Ruby na balkon | Ruby przesadzona do sfagnum | Ruby ma spoczynek
topic-feeds = Twoje nawozy z etykietami i który pasuje:
topic-feeds-say = mój proszek to 20-20-20, 1 g na litr, nazwij go niebieska puszka | moje nawozy | czego brakuje w niebieska puszka | jaki nawóz na kwitnienie
topic-water = Twoja woda, czy pasuje i jak ją poprawić:
topic-water-say = moja kranówka ma 14 dH | czy moja woda jest dobra dla falenopsisów? | zmieszaj kranówkę i deszczówkę do 6 dH | czy potrzebuję cal mag?
topic-plan = Dzień podlewania: kto dostaje nawóz, czystą wodę, płukanie albo nic, z jednej konewki:
topic-plan-say = co dziś do zrobienia | plan na sobotę | zrobione | jaki nawóz dla vandy
topic-log = Napisz, co zrobione; zapytaj, co było; cofnij, co błędne:
topic-log-say = nawożone wszystko w kuchni, ćwierć dawki | przepłukane wczoraj wszystkie falenopsisy | co dostała Ruby od października | cofnij
topic-reminders = Przypominam zwykłymi słowami, o twojej godzinie:
topic-reminders-say = przypomnij mi płukać w każdą pierwszą niedzielę miesiąca o 9 | przypomnij mi nawozić vandy co 10 dni od maja do września | moje przypomnienia | cisza od 22 do 8 | kalendarz
topic-trouble = Napisz, co widać; w razie czego dopytam i ułożę plan:
topic-trouble-say = Ruby ma brązowe końcówki korzeni i biały nalot | pomarszczone liście, korzenie jędrne | czy to za dużo?
topic-salts = Sole w doniczkach i co mówi miernik:
topic-salts-say = jak zasolona jest Ruby | jak przepłukać Ruby | odciek 1,6 z Ruby | mój miernik pokazuje 0,9
topic-bottles = Koncentraty i które nawozy mogą być w jednej butelce:
topic-bottles-say = 500 ml roztworu stężonego niebieska puszka | roztwór stężony 1:100 z 20-20-20 | czy niebieska puszka i kreda mogą być w jednej butelce | zmieszaj moje nawozy na kwitnienie
topic-compare = Co nawozy kosztują i dają:
topic-compare-say = niebieska puszka kosztuje 45 zł za 500 g | porównaj moje nawozy | co jest tańsze
topic-pictures = Do obejrzenia i do wysłania:
topic-pictures-say = mój rok | sole Ruby na obrazku | karta dawki
topic-settings = Jak mówię i czym mierzę:
topic-settings-say = moja waga pokazuje 0,1 g | nie mam wagi, tylko łyżeczki | miary amerykańskie | mój język to polski | moje ustawienia
topic-group = Dla administratorów grupy:
topic-group-say = nasza kranówka ma 18 dH | nasz język to niemiecki | przypomnij nam płukać w niedzielę o 9 | bądź cicho | cisza od 22 do 7 | zapomnij grupę
topic-data = Twoje zapiski są twoje:
topic-data-say = wyeksportuj moje dane | importuj dane.json | zapomnij mnie

# --- words of the trade, explained ---
explain-none = Co wyjaśnić? Napisz np.: co to jest EC. Po dawce „wyjaśnij dokładniej” mówi, skąd każdy krok.
explain-ec = EC mówi, ile soli jest rozpuszczone, w mS/cm: deszczówka ma prawie 0, kranówka często 0,3 do 0,8, łagodna dawka nawozu dodaje 0,1 do 0,4. Korzenie czują to razem.
explain-ppm = ppm to miligramy na litr (mg/l). 100 ppm N to 0,1 g azotu w każdym litrze; reszta tego, co jest w nawozie, się w to nie wlicza.
explain-npk = Te trzy liczby to procenty wagi: azot N, fosfor jako P2O5, potas jako K2O. 100 g nawozu 20-20-20 ma 20 g azotu. Dawkę liczę z azotu.
explain-hardness = Twardość to wapń i magnez w wodzie; 1 °dH to 17,8 mg/l jako CaCO3. Trochę z tego to pokarm, dużo odkłada się w doniczce i podnosi pH.
explain-strength = Pełna dawka to dawka z etykiety, a bez niej 200 mg/l N. Storczyki rosną powoli: ćwierć przy każdym podlewaniu karmi przez miesiąc tak samo jak raz pełna, a mniej pali.
explain-flush = Płukanie to czysta woda, powoli, aż przeleci jej około dwóch doniczek: wynosi sole po nawozie i wodzie. Mniej więcej raz w miesiącu, póki nawozisz.
explain-overfed = Nadmiar nawozu widać najpierw na korzeniach: brązowe końcówki, potem schnące końcówki liści i biały nalot na podłożu albo doniczce. Wtedy kilka razy przelej doniczkę czystą wodą, aż swobodnie wypłynie, i nie nawoź, aż pojawią się nowe końcówki korzeni. Napisz, co widzisz, np.: brązowe końcówki korzeni u Ruby.
explain-salts = Czego korzenie nie pobiorą, zostaje w doniczce, a przy każdym przesychaniu robi się mocniejsze. Objawy: brązowe końcówki korzeni, schnące końcówki liści, biały nalot.
explain-rest = Niektóre storczyki zimą stają i nic nie pobierają. Nawóz tylko zasala wtedy doniczkę, więc dostają czystą wodę, mało albo wcale, aż ruszą nowe przyrosty lub korzenie.
explain-winter = Zimą dni są krótkie, a wzrost powolny; korzenie pobierają mniej więcej połowę, więc i dawka jest o połowę mniejsza. Roślina, która rośnie pod lampami, może dostać więcej: napisz „rośnie”.
explain-medium = Sfagnum i keramzyt zatrzymują sole, kora je przepuszcza. Dlatego w tych dwóch ten sam nawóz daję słabiej.
explain-stock = Koncentrat to mocniejszy roztwór zrobiony na zapas: 2 g w 100 ml, z czego 25 ml to pół grama. Z nim małe dawki są dokładne nawet na zgrubnej wadze. W chłodzie, po ciemku, z opisem, dwa tygodnie.
explain-nitrogen = Azotany korzenie biorą od razu, amon na zimno powoli, a mocznik dopiero gdy przerobią go mikroby, co sama kora i zima spowalniają. Bezpieczniejsza jest etykieta z przewagą azotanów.
explain-calcium = Deszczówka i woda z RO nie mają wapnia ani magnezu, wiele nawozów też nie. Weź nawóz, który ma oba, trochę kranówki albo dodatek; nigdy w jednym koncentracie z fosforanami.
explain-pure_water = Woda z RO, destylowana i deszczówka prawie nie mają soli: dobre dla wrażliwych korzeni, ale bez wapnia i magnezu. Pomoże trochę kranówki albo nawóz, który ma oba.
explain-softened = Zmiękczacz zamienia wapń na sód. Storczykom sód na nic, a zostaje w doniczce: bierz wodę sprzed zmiękczacza albo deszczówkę.
explain-sensitive = Masdevallia, Pleurothallis i krewne, Dracula, Disa, Miltoniopsis i Phragmipedium przypalają się pierwsze: najwyżej ćwierć dawki z etykiety i 50 mg/l N, i czystsza woda.
explain-ceiling = Żadna odpowiedź nie przekracza etykiety ani tego, co zniesie najwrażliwsza z podanych roślin; żadne słowa tego nie zmienią. Gdy krok by przekroczył, przycinam, a „dlaczego” to pokaże.

# --- is it too much, home remedies, pets ---
ask-judge-measure = Ile to jest? Zmierz raz w mililitrach albo gramach i napisz np.: 5 ml 7-5-6 na 2 l, za dużo?
ask-judge-volume = Na ile litrów? Napisz np.: 5 ml 7-5-6 na 2 l, za dużo?
ask-judge-volume-given = Na ile litrów to było? Napisz tak: wsypałam 10 g do 8 l. Do tego czasu bez nawozu, sama czysta woda.
ask-judge-product = Jakiego nawozu? Podaj trzy liczby z etykiety, np.: 5 ml 7-5-6 na 2 l, za dużo?
judge-unknown-feed = Czy to było za mocne, powiem tylko z trzema liczbami z etykiety. Napisz tak: 5 ml 7-5-6 na 2 l, za dużo?
judge-over = Za dużo: { $times } × maksimum. Najwyżej { $most } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
} na { $volume }; moja rada: { $usual } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
}.
judge-perhaps-over = Może za dużo: maksimum to { $most } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
} na { $volume }. Moja rada: { $usual } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
}; zważ to.
judge-strong = Nie ponad maksimum ({ $most } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
} na { $volume }), ale mocniej, niż radzę: { $usual } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
}.
judge-fine = W porządku, nie za dużo. Moja rada: { $usual } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
} na { $volume }; maksimum to { $most } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
}.
judge-weak = Nie za dużo, raczej słabo: moja rada to { $usual } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
} na { $volume }.
judge-makes = { $about ->
    [yes] U ciebie to ok. { $amount } { $unit ->
        [tsp] łyżeczki
       *[other] { $unit }
    }: { $percent } % pełnej dawki
   *[no] U ciebie to { $percent } % pełnej dawki
}{ $n ->
    [none] .
   *[other] , N { $n } mg/l.
}
judge-rinse = Jeśli już to dostały: przepłucz teraz dużą ilością czystej wody i zrób przerwę w nawożeniu.
judge-spoons = Płaska łyżeczka liczona jako 6 g; proszki różnie ważą, więc zważ jedną.
judge-taken = Założenia: { $what }.
last-most = Najwięcej na { $volume } to { $most } { $unit }; moja dawka: { $amount } { $unit }.
last-strong = { $amount } { $unit } to { $percent } % pełnej dawki{ $at_most ->
    [yes] , najwięcej, ile daję na { $volume }.
   *[no] . Najwięcej na { $volume } to { $most } { $unit }.
}
last-spoon = { $spoons ->
    [none] Nie: to mniej, niż da się odmierzyć łyżeczką.
    [many] Nie: przy tylu łyżeczkach łatwo się pomylić. Zważ albo odmierz.
   *[other] { $unit ->
        [ml] Mniej więcej { $spoons } łyżeczki, jeśli to miarka.
       *[other] Z grubsza { $spoons } płaskiej łyżeczki; proszki są różne, więc zważ.
    }
}
last-drops = Krople przy każdej butelce są inne, więc ich nie liczę. Odmierz { $amount } { $unit }.
refuse-remedy = Nie podam dawki na „{ $what }”: bez etykiety nie wiadomo, co w tym jest, więc nie policzę, a { $kind ->
    [calcium] to prawie się nie rozpuszcza. Po wapń weź nawóz z wapniem albo trochę kranówki i podaj mi
   *[other] resztki gniją w doniczce. Podaj mi
} nawóz z jego liczbami, np.: 2 l 20-20-20 proszek, ćwierć dawki.
pets-keep = Nawóz, butelki z koncentratem i pełną konewkę trzymaj z dala od zwierząt i dzieci, nigdy w butelce po napoju; wylewaj wodę z podstawek. O żadnym nawozie nie powiem, że można go bezpiecznie wypić.
pets-call = { $who ->
    [told_child] Od razu dzwoń do ośrodka toksykologicznego, z etykietą w ręku.
    [told_pet] Od razu dzwoń do weterynarza, przy dziecku do ośrodka toksykologicznego, z etykietą w ręku.
    [child] Jeśli dziecko to wypiło lub zjadło: od razu dzwoń do ośrodka toksykologicznego, z etykietą w ręku.
    [anyone] Jeśli ktoś to wypił lub zjadł: od razu dzwoń do ośrodka toksykologicznego, przy zwierzęciu do weterynarza, z etykietą w ręku.
    [fish] Jeśli nawóz dostał się do stawu albo akwarium: od razu wymień dużą część wody i dzwoń do weterynarza (powszechna praktyka, bez źródła).
   *[other] Jeśli ktoś to wypił lub zjadł: od razu dzwoń do weterynarza, przy dziecku do ośrodka toksykologicznego, z etykietą w ręku.
}
argue-stays = Celowo zostaję poniżej pełnej dawki: za dużo pali korzenie, za mało tylko spowalnia wzrost (praktyka, bez źródła). Kto chce mocniej, pisze to w linijce, np.: pół dawki. Ponad etykietę nigdy nie wychodzę.
refuse-pests = Odstaw roślinę osobno i zetrzyj, co widać, wilgotną szmatką lub patyczkiem, też w kątach i od spodu liści; zaglądaj co kilka dni (powszechna praktyka, bez źródła). Znam nawóz i wodę, nie to, co zabija szkodniki lub pleśń, więc na to dawki nie podam: trzymaj się etykiety środka, z dala od dzieci i zwierząt, i zapytaj miejscowe towarzystwo storczykowe albo ośrodek doradztwa.
refuse-food = { $how ->
    [eat] Nie jedz i nie pij tego, ani nawozu, ani storczyka. Jeśli ktoś to zrobił: od razu dzwoń do ośrodka toksykologicznego, przy zwierzęciu do weterynarza, z etykietą w ręku.
   *[other] Nie do roślin, które się je, ani do ich strąków, liści czy kwiatów: liczę tylko dla storczyków do oglądania. Przy warzywach i ziołach trzymaj się etykiety nawozu do nich przeznaczonego.
}
hurt-call = { $how ->
    [swallowed] Po połknięciu: od razu dzwoń do lekarza lub ośrodka toksykologicznego, z etykietą w ręku. W oku lub na skórze: płucz dużą ilością czystej wody.
    [breathed] Od razu wyjdź na świeże powietrze. Jeśli dalej kaszlesz, źle się czujesz albo ciężko ci oddychać: dzwoń do lekarza lub ośrodka toksykologicznego, z etykietą w ręku. W oku lub na skórze: płucz dużą ilością czystej wody.
   *[other] W oku lub na skórze: od razu płucz dużą ilością czystej wody. Po połknięciu lub wdychaniu, albo gdy dalej piecze: dzwoń do lekarza lub ośrodka toksykologicznego, z etykietą w ręku.
}
spill-wipe = Zetrzyj papierem i dużą ilością wody, umyj ręce. Dzieci i zwierzęta z daleka, aż będzie czysto; nic do stawu, strumienia ani studzienki. Jeśli roślina dostała to bez rozcieńczenia, od razu przepłucz ją czystą wodą (powszechna praktyka, bez źródła).
leftover-goes = Resztkę dostają inne rośliny albo ziemia w ogrodzie, nigdy zlew, toaleta, staw ani strumień. Rozrobiony nawóz trzymaj najwyżej do następnego podlewania, zamknięty, w ciemności i podpisany, nigdy w butelce po napoju; jeśli pachnie albo mętnieje, też wylej go na ziemię (powszechna praktyka, bez źródła).
alarm-what = Co się stało? Po połknięciu: od razu dzwoń do lekarza lub ośrodka toksykologicznego, przy zwierzęciu do weterynarza. W oku lub na skórze: płucz dużą ilością czystej wody. Za dużo dla rośliny: kilka razy czysta woda przez doniczkę, aż swobodnie wypłynie, i żadnego nawozu. Potem napisz jedną linijkę, np.: pies wypił wodę z konewki.

# --- the first meeting, groups and sharing ---
meet-hello = Liczę, ile nawozu dać do konewki, i pamiętam twoje rośliny. Zapytaj od razu: 2 l 20-20-20 proszek, falenopsisy w korze.
meet-home = Gdzie mieszkasz? Wystarczy miasto: z niego wiem, jaka u ciebie pora roku i godzina.
meet-product = Jaki masz nawóz? Napisz, co jest na etykiecie: 20-20-20 proszek, 1 g na litr.
meet-add = Jakie masz rośliny? Wystarczy jeden rodzaj: 3 falenopsisy w korze, doniczki 12 cm.
meet-skip = Pomiń
meet-done = Na razie to wszystko. Napisz „2 l”, podam dawkę, albo „co dziś do zrobienia”; „pomoc” pokaże resztę.
refuse-administrators-only = To zmieniają tylko administratorzy grupy. Poproś któregoś albo napisz mi prywatnie, dla siebie.
refuse-administrators-quiet = Tylko administratorzy grupy mogą mnie uciszyć albo znów dopuścić do głosu: poproś któregoś.
refuse-administrators-remove = Tylko administratorzy usuwają rośliny i nawozy grupy: poproś któregoś.
refuse-administrators-all = To dotyczy całej grupy, więc robią to tylko administratorzy: poproś któregoś albo napisz mi prywatnie, dla siebie.
refuse-own-private = To dotyczy tylko ciebie, a tu czytają wszyscy: napisz mi to prywatnie.
ask-language = Jaki język? Na razie znam: { $known }. Napisz np.: nasz język to polski.
refuse-language-unknown = Nie znam języka „{ $text }”. Na razie są: { $known }.
refuse-language-not-yet = Tego języka jeszcze nie ma ({ $language }). Na razie są tylko: { $known }. Nic się nie zmieniło.
language-set = Od teraz odpowiadam w tym języku: { $language }.
language-line = Język: { $language }.
quiet-private = To jest dla grup. Tutaj i tak odpowiadam tylko, gdy piszesz.
kept-group = Przechowuję to, co tu zapisano: rośliny, nawozy, wodę, ustawienia, przypomnienia i dziennik, w którym członkowie stoją pod znakiem, nie z imienia.
    Z pytania zostaje tekst, póki nie ma odpowiedzi, ostatnia prośba każdego do dopytywania, a przez trzydzieści dni to, co pokazują „Szczegóły”. Tego, co nie jest do mnie, nie przechowuję.
    Administrator dostanie kopię przez „eksport”, a wszystko skasuje przez „zapomnij grupę”.
kept-own = Przechowuję to, co zapisano u ciebie: rośliny, nawozy, wodę, ustawienia, przypomnienia i dziennik. Do tego twoją ostatnią prośbę do dopytywania, tekst, póki nie ma odpowiedzi, a szczegóły i dalsze strony przez trzydzieści dni.
    „eksport” daje kopię, „zapomnij mnie” kasuje wszystko.
kept-no-questions = Nie prowadzę listy, kto o co pytał. Co zapisano, stoi w dzienniku: { "/diary" }.
remove-me = Administrator usuwa mnie jak każdego członka, potem już nic nie wysyłam. Zapiski zostają, póki nie skasuje ich „zapomnij grupę”: wyślij to najpierw.
quiet-on = Cisza: w tej grupie odpowiadam tylko na komendy, np. /dose. Kończy ją „/dose możesz mówić”.
quiet-off = Znów odpowiadam, gdy piszesz w odpowiedzi do mnie albo mnie oznaczysz.
quiet-night = Odpowiadam tylko temu, kto pyta, w dzień i w nocy. Dla przypomnień napisz: cisza od 22 do 7. Po „bądź cicho” odpowiadam w grupie tylko na komendy.
quiet-line = Cisza: w tej grupie odpowiadam tylko na komendy, np. { "/dose" }.
post-only-text = Czytam tekst, lokalizacje i pliki z mojego eksportu. Napisz w jednej linijce, np.: 2 l 20-20-20 proszek, falenopsisy.
post-added = Liczę nawóz dla storczyków. Pytaj tak: { "/dose" } 5 l 20-20-20 proszek, falenopsisy, ćwierć dawki. Albo odpowiedz na moją wiadomość{ $mentions ->
    [yes] {" "}lub mnie oznacz.
   *[no] .
}
    Poza tym milczę i nie przechowuję niczego, co nie jest do mnie.{ $known ->
    [yes] { " " }Dawne zapiski tej grupy nadal tu są.
   *[no] {""}
}
    Dla administratorów: { "/help" } grupa pokaże, jak ustawić kranówkę, język, przypomnienia i ciszę.
post-too-long = Tak długich nie czytam. Napisz pytanie w jednej linijce.
post-slow-down = Po kolei, proszę: odpowiem znowu za { $seconds } s.
post-stale-button = To pytanie już nieaktualne. Wyślij je jeszcze raz, jeśli trzeba.
post-not-yours = Wybiera ten, kto pytał.
post-for-administrators = To wybierają tylko administratorzy grupy.
post-done-already = Już zrobione.
post-on-record = Ta wiadomość jest już zapisana, edycja nic nie zmieni. Jeśli była ostatnia, wyślij { "/undo" } i potem właściwą linijkę.
post-interrupted = Coś się u nas zepsuło i nie ma odpowiedzi. Nic się nie zmieniło; wyślij, proszę, jeszcze raz.
post-place = Ustawić jako dom: { $place }, { $country }?
post-place-says = moje miasto to { $place }, { $country }
post-import-says = importuj { $name }
post-no-place = Nie znam tam żadnego miasta. Podaj najbliższe większe: moje miasto to Gdynia.
post-details = Szczegóły
post-save = Zapisz te rośliny
post-own-water = Policz z moją wodą
post-card-season = Nie podano pory roku: to ostrożniejsza odpowiedź dla obu półkul.
post-card-gone = Ta karta jest za stara. Zadaj pytanie jeszcze raz.
post-card-no-plants = Na tej karcie nie ma roślin. Podaj swoje: dodaj 3 falenopsisy w korze.
post-saved-already = Są już na twojej liście: moje rośliny.
post-card-ask = Wpisz pytanie: 5 l 20-20-20 proszek, falenopsisy, ćwierć dawki
post-next = Dalej ({ $page }/{ $pages })
menu-dose = Ile nawozu na ile wody
menu-plan = Co dziś do zrobienia
menu-plan-says = co dziś do zrobienia
menu-plan-for-says = plan na
menu-plants = Zapisane rośliny
menu-plants-says = moje rośliny
menu-shelf = Zapisane nawozy
menu-shelf-says = moje nawozy
menu-diary = Co było ostatnio robione
menu-diary-says = pokaż dziennik
menu-undo = Cofnij ostatni wpis
menu-undo-says = cofnij
menu-help = Co można napisać
menu-help-says = pomoc
menu-dose-says = ile nawozu

# --- reminders ---
reminder-and = i oraz a
reminder-cue = przypomnij mi
reminder-own-words = „{ $text }”
reminder-what = { $kind ->
    [flush] płukanie
    [feed] nawożenie
    [water] podlewanie
    [look] { $plants ->
        [none] przegląd roślin
       *[other] przegląd
    }
   *[other] sprawa
}{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}
task-flush = płukać
task-feed = nawozić
task-water = podlewać
reminder-every = { $unit ->
    [day] { $every ->
        [1] codziennie
        [2] co drugi dzień
       *[other] co { $every } dni
    }
    [week] { $every ->
        [1] co tydzień
        [few] co { $every } tygodnie
       *[other] co { $every } tygodni
    }
   *[month] { $every ->
        [1] co miesiąc
        [few] co { $every } miesiące
       *[other] co { $every } miesięcy
    }
}
reminder-weekdays = { $every ->
    [1] co tydzień: { $days }
    [2] co drugi tydzień: { $days }
    [few] co { $every } tygodnie: { $days }
   *[other] co { $every } tygodni: { $days }
}
reminder-workdays = { $every ->
    [1] od poniedziałku do piątku
    [few] co { $every } tygodnie, od poniedziałku do piątku
   *[other] co { $every } tygodni, od poniedziałku do piątku
}
reminder-nth = { $every ->
    [1] { $days } miesiąca
    [few] { $days }, co { $every } miesiące
   *[other] { $days }, co { $every } miesięcy
}
reminder-nth-day = { $nth ->
    [first] 1.
    [second] 2.
    [third] 3.
    [fourth] 4.
    [fifth] 5.
   *[last] ost.
} { $day }
reminder-month-days = { $days } dnia { $every ->
    [1] miesiąca
    [few] co { $every } miesiące
   *[other] co { $every } miesięcy
}
reminder-day-of-month = { $day }{ $rest ->
    [1] .
    [2] .
    [3] .
   *[other] .
}
reminder-last-day = ostatniego
reminder-yearly = { $every ->
    [1] co roku
    [few] co { $every } lata,
   *[other] co { $every } lat,
} { $on }
reminder-nth-yearly = { $days }, { $months }
reminder-on = { $days }
reminder-months = od { $first } do { $last }
reminder-in-months = w ciągu { $months }
reminder-not-months = oprócz { $months }
reminder-not-days = oprócz: { $days }
reminder-at = o { $time }
reminder-until = do { $day }
reminder-times = ({ $times } { $times ->
    [one] raz
   *[other] razy
})
reminder-moment = { $day } o { $time }
reminder-line = { $what }{ $often ->
    [none] : { $next }
   *[other] , { $often }; najbliżej { $next }
}{ $state ->
    [paused] {" "}(wstrzymane: moja wiadomość nie doszła)
   *[other] {""}
}
reminder-set = Przypomnę: { $line }.
reminder-already = To już ustawione: { $line }.
reminder-next = Następnym razem { $what }: { $next }.
reminder-half = { $half ->
    [afternoon] Przyjmuję popołudnie; jeśli rano, napisz: o { $hour } rano.
   *[morning] Przyjmuję rano; jeśli później, napisz: o { $hour } { $hour ->
        [7] wieczorem
        [8] wieczorem
        [9] wieczorem
        [10] wieczorem
        [11] wieczorem
       *[other] po południu
    }.
}
reminder-guess-every-second = Przyjmuję: co drugi raz; jeśli drugi w miesiącu, napisz: w każdą drugą niedzielę miesiąca.
reminder-guess-first-of-month = Przyjmuję pierwszy w miesiącu; jeśli nie, napisz: w ostatnią sobotę miesiąca.
reminder-utc = Nie wiem, gdzie mieszkasz, więc to czas UTC, może się różnić od twojego o godziny. Napisz np.: moje miasto to Gdynia.
reminder-none-yet = Nie ma jeszcze takich roślin ({ $plants }); zadziała, gdy się pojawią.
reminder-dropped = Dobrze, bez przypomnienia.
reminder-not-now = Dobrze, teraz nie: nic nie zmieniono. Na dobre zakończy je: koniec przypomnień.
reminder-kept = Dobrze, wszystko zostaje, jak jest.
reminder-gone = To już się skończyło.
reminders-moved-along = { $count ->
    [one] Twoje przypomnienie idzie teraz według tamtego czasu.
    [few] Twoje { $count } przypomnienia idą teraz według tamtego czasu.
   *[other] Twoje { $count } przypomnień idzie teraz według tamtego czasu.
}
reminders-none = { $whose ->
    [group] Nie ma tu przypomnień. Ustawia je administrator, np.: przypomnij nam płukać w każdą pierwszą niedzielę miesiąca o 9.
   *[own] Nie masz przypomnień. Ustaw np.: przypomnij mi płukać w każdą pierwszą niedzielę miesiąca o 9.
}
reminders-head = { $count ->
    [one] Jedno przypomnienie:
    [few] { $count } przypomnienia:
   *[other] { $count } przypomnień:
}
reminders-hint = Zmienisz je tak: „przenieś 1 na poniedziałek”, „pomiń 1”, „zatrzymaj 1” albo „wstrzymaj przypomnienia do czerwca”.
reminder-stopped = { $count ->
    [one] Zatrzymane: { $what }.
   *[other] Zatrzymane, razem { $count }: { $what }.
}
reminder-moved = Przeniesione: { $what }, { $next }.{ $again ->
    [yes] {" "}Potem jak dotąd.
   *[no] {""}
}
reminder-changed = Zmienione: { $line }.
reminder-skipped = Pominięte: { $what }. { $next ->
    [none] To był ostatni raz.
   *[other] Następny raz: { $next }.
}
reminder-not-due = Nie ma czego pomijać: { $what } i tak dopiero { $next }.
reminder-all = wszystkie
reminders-paused = Cisza, wracam { $day }. { $count ->
    [0] Wcześniej i tak nic nie było w planie.
    [one] Jedno przypomnienie czeka do tego czasu.
    [few] { $count } przypomnienia czekają do tego czasu.
   *[other] { $count } przypomnień czeka do tego czasu.
}
reminders-resumed = { $count ->
    [one] Jedno przypomnienie wraca jak dawniej.
    [few] { $count } przypomnienia wracają jak dawniej.
   *[other] { $count } przypomnień wraca jak dawniej.
}
reminders-not-paused = Nic nie było wstrzymane.
reminder-quiet-so = Cisza od { $start } do { $end }: wtedy nie przypominam, chyba że ta godzina jest od ciebie. Kto pyta, dostanie odpowiedź.
reminder-quiet-none = Bez godzin ciszy: przypominam o każdej porze.
rhythm-choice-1 = co tydzień
rhythm-choice-2 = co dwa tygodnie
rhythm-choice-3 = w każdą pierwszą niedzielę miesiąca
ask-remind-when = Kiedy albo jak często przypominać? Napisz np.: w każdą pierwszą niedzielę miesiąca o 9, co 10 dni, za 3 tygodnie.
ask-remind-what = O czym przypomnieć? Napisz np.: przepłukać wszystkie falenopsisy.
ask-remind-home = Gdzie mieszkasz? Potrzebuję twojej godziny; wystarczy miasto, np.: Gdynia.
ask-remind-home-changed = Zmienione. A gdzie mieszkasz? Potrzebuję twojej godziny; wystarczy miasto, np.: Gdynia.
ask-remind-wish = Mam o tym przypominać? Tak albo nie; bez przypomnienia nie pamiętam rytmu.
ask-remind-home-first = Najpierw potrzebuję twojego czasu, potem da się to zmienić. Napisz miejscowość, np.: Gdynia.
ask-rhythm-which-days = W które dni? Napisz np.: poniedziałek i czwartek.
ask-rhythm-two-meanings = Dwa razy częściej czy dwa razy rzadziej? Napisz np.: co dwa tygodnie, albo: poniedziałek i czwartek.
ask-rhythm-too-often = Przypominam najwyżej raz dziennie. Napisz np.: codziennie o 8.
ask-rhythm-range = To nie mówi, ile dokładnie. Podaj jedną liczbę, np.: co 2 tygodnie.
ask-rhythm-exception = Mogę pominąć miesiące, pory roku i dni tygodnia, pojedynczych dni nie. Napisz np.: co 2 tygodnie oprócz grudnia; a tego dnia: nie tym razem.
ask-rhythm-vague = Czyli jak często? Napisz np.: co 2 tygodnie, albo: w każdą pierwszą niedzielę miesiąca.
ask-rhythm-number = Przyjmuję od 1 do 999. Napisz np.: co 10 dni.
ask-rhythm-clock = Nie ma takiej godziny. Napisz np.: o 9:30, albo: o 18.
ask-rhythm-two-times = Jedno przypomnienie ma jedną godzinę: którą? Napisz np.: codziennie o 8.
ask-rhythm-two-days = Dwa dni naraz: który? Napisz np.: 3 marca.
ask-rhythm-two-rhythms = Dwa rytmy naraz: który? Napisz np.: co 2 tygodnie.
ask-reminder-number = Masz ich { $count }. Napisz „moje przypomnienia”, zobaczysz numery.
ask-reminder-none-such = Nie ma takiego przypomnienia. Które z tych?
ask-reminder-which = Które? Wyślij numer.
ask-reminder-not-then = Napisz dni, w które ma przychodzić, na przykład: zmień na każdy wtorek i czwartek; albo, ten jeden raz: tym razem nie.
ask-reminder-move = Na kiedy? Napisz np.: przenieś na poniedziałek, albo: przenieś na co 3 tygodnie.
ask-reminder-until = Do kiedy? Napisz np.: do 1 września, albo: na dwa tygodnie.
refuse-reminder-past = Ta chwila już minęła albo nigdy nie przyjdzie. Podaj późniejszą, np.: jutro o 9.
refuse-rhythm = Takiego rytmu nie utrzymam. Napisz np.: co 10 dni, w każdą pierwszą niedzielę miesiąca, 3 marca.
refuse-administrators-reminders = Przypomnienia grupy ustawiają i zmieniają tylko administratorzy. Własne ustaw u mnie prywatnie.
event-reminder = przypomnienie
ping-done = zrobione
ping-later = później
ping-skip = pomiń
ping-head = Przypominam: { $what }.
ping-head-several = Przypominam o { $count } sprawach:
ping-late = {" "}(termin: { $day }{ $missed ->
    [0] {""}
    [one] , potem jeszcze raz
   *[other] , potem jeszcze { $missed } razy
})
ping-asleep = Teraz nie, w spoczynku: { $plants }.
ping-mounted = Na podkładkach, więc tylko opłukać: { $plants }.
ping-rest-begins = { $plants } zaczyna spoczynek: { $dry ->
    [yes] trzymaj sucho, bez nawozu
   *[no] sama czysta woda, i to mało
}, aż ruszą nowe przyrosty.
ping-rest-ends = { $plants } kończy spoczynek: znów woda i nawóz, na początek słabo, jak tylko ruszy.
ping-hint = Napisz „zrobione”, „później” albo „pomiń”.
ping-noted = Zapisane.
ping-again = Zapytam znowu { $next }.
ping-answered = Na to już jest odpowiedź.
ping-repeat = (Możliwe, że to już raz przyszło.)
offer = Przypominać? { $items }{ $more ->
    [0] {""}
   *[other] {" "}i jeszcze { $more }
}. Zawsze możesz to przenieść albo wyłączyć.
offer-flush = Czysta woda przez wszystkie doniczki w pierwszą niedzielę miesiąca (poza tym 1/4 dawki przy każdym podlewaniu)
offer-feed = nawóz raz w miesiącu dla { $plants }, bo mało znoszą
offer-look = kiedy { $plants } zaczyna i kończy spoczynek
offer-yes = tak
offer-no = nie
offer-declined = Dobrze, więcej nie pytam. W razie czego napisz: przypomnij mi płukać w każdą pierwszą niedzielę miesiąca o 9.
offer-taken = Ustawione, każde o { $time }:

# --- taking along and forgetting ---
count-plant = { $count } { $count ->
    [one] wpis z roślinami
    [few] wpisy z roślinami
   *[other] wpisów z roślinami
}
count-product = { $count } { $count ->
    [one] nawóz
    [few] nawozy
   *[other] nawozów
}
count-water = { $count } { $count ->
    [one] rodzaj wody
    [few] rodzaje wody
   *[other] rodzajów wody
}
count-place = { $count } { $count ->
    [one] miejsce
    [few] miejsca
   *[other] miejsc
}
count-reminder = { $count } { $count ->
    [one] przypomnienie
    [few] przypomnienia
   *[other] przypomnień
}
count-event = { $count } { $count ->
    [one] wpis w dzienniku
    [few] wpisy w dzienniku
   *[other] wpisów w dzienniku
}
count-nothing = tylko ustawienia
export-done = Wszystkie { $whose ->
    [group] dane tej grupy
   *[own] twoje dane
}: { $what }.
export-none = Nie ma tu żadnych twoich danych.
# the .ics file: titles and descriptions of its entries, and what is said beside it
calendar-title = { $kind ->
    [flush] Płukanie
    [feed] Nawożenie
    [water] Podlewanie
    [look] { $plants ->
        [none] Przegląd roślin
       *[other] Przegląd
    }
   *[other] Przypomnienie
}{ $plants ->
    [none] {""}
   *[other] : { $plants }
}
calendar-often = Kiedy: { $often }.
calendar-plants = Rośliny: { $plants }.
calendar-amounts = Ilości na ten dzień: napisz „plan” na czacie.
calendar-rest-begins = Początek spoczynku: { $plants }
calendar-rest-ends = Koniec spoczynku: { $plants }
calendar-reminders = { $count } { $count ->
    [one] przypomnienie
    [few] przypomnienia
   *[other] przypomnień
}
calendar-rests = { $count } { $count ->
    [one] termin spoczynku
    [few] terminy spoczynku
   *[other] terminów spoczynku
}
calendar-done = Kalendarz do { $until }: { $what }. Otwórz plik, żeby go dodać.
calendar-copy = To kopia: po zmianach tutaj napisz znowu „kalendarz”.
calendar-none = Do kalendarza nie ma jeszcze nic: { $whose ->
    [group] grupa nie ma
   *[own] nie masz
} przypomnień ani roślin ze znanym mi spoczynkiem.
calendar-flush = Płukanie nie jest ustawione, więc go nie ma. Zwykle raz w miesiącu czysta woda; najbliższe byłoby { $day }. { $whose ->
    [group] Administrator ustawi je tak: przypomnij nam płukać w każdą pierwszą niedzielę miesiąca o 9.
   *[own] Ustaw je tak: przypomnij mi płukać w każdą pierwszą niedzielę miesiąca o 9.
}
calendar-flush-choice = { $whose ->
    [group] przypomnij nam płukać w każdą pierwszą niedzielę miesiąca o 9
   *[own] przypomnij mi płukać w każdą pierwszą niedzielę miesiąca o 9
}
calendar-north = Nie wiem, gdzie mieszkasz, więc spoczynki są jak na północy. Napisz np.: moje miasto to Gdynia, a potem znowu „kalendarz”.
calendar-held = { $count ->
    [one] Pominięte jedno przypomnienie
    [few] Pominięte { $count } przypomnienia
   *[other] Pominiętych { $count } przypomnień
}: wstrzymane, bo moja wiadomość nie doszła.
ask-calendar-home = Gdzie mieszkasz? Na północy i południu spoczynki wypadają pół roku od siebie; wystarczy miasto, np.: Gdynia.
ask-forget = Skasować na dobre wszystkie { $whose ->
    [group] dane tej grupy
   *[own] twoje dane
}: { $what }? Napisz „tak” albo „nie”. Wcześniej „eksport” da ci kopię.
forget-none = Nie ma tu żadnych twoich danych.
forget-cancelled = Nic nie skasowane.
forgotten = Skasowane: { $what }. Nie ma tu już { $whose ->
    [group] danych tej grupy
   *[own] twoich danych
}.
ask-import-file = { $name ->
    [none] Który plik? Napisz np.: importuj sinkside-2026-03-01.json.
   *[other] Nie mogę otworzyć „{ $name }”. Podaj nazwę pliku z eksportu, np.: importuj sinkside-2026-03-01.json.
}
ask-import-late = Plik nie dotarł na czas. Wyślij go jeszcze raz.
ask-import = W pliku: { $what }. Wczytać? Napisz „tak” albo „nie”.
ask-import-replace = W pliku: { $what }. Zastąpi to, co masz: { $had }. Napisz „tak” albo „nie”.
import-cancelled = Nic się nie zmieniło.
imported = Wczytane: { $what }.
refuse-import-problem = Ten plik nie pasuje: { $where } ({ $count } { $count ->
    [one] błąd
    [few] błędy
   *[other] błędów
}). Nic się nie zmieniło. Wyślij eksport bez poprawek.
refuse-import-newer = Ten plik jest z nowszej wersji. Nic się nie zmieniło. Najpierw zaktualizuj, potem wyślij znowu.
refuse-import-large = Ten plik jest za duży (ponad { $most } MB). Nic się nie zmieniło. Wyślij eksport z tego bota.
refuse-import-foreign = To nie jest eksport z tego bota. Nic się nie zmieniło. Wyślij plik JSON, który dał „eksport”.

# --- refusals of the records ---
name-is-number = liczbę
name-is-figure = wielkość
name-is-order = czynność albo dzień
name-is-slot = { $slot ->
    [medium] podłoże
    [genus] rodzaj storczyka
    [month] miesiąc
    [season] porę roku
    [growth] stan wzrostu
    [water] rodzaj wody
    [form] postać nawozu
    [regime] rytm
    [count] liczbę
   *[other] wielkość
}
refuse-name-means = „{ $name }” oznacza też { $meaning }. Wybierz inną nazwę.
refuse-name-taken = „{ $name }” już jest. Wybierz inną nazwę, np. „{ $name } 2”.
refuse-count = Podaj, ile ich jest, od 1 do { $most }.
refuse-too-many = Byłoby ponad { $most } wpisów. Najpierw coś skreśl albo wpisz takie same razem, np.: dodaj 40 falenopsisów.
refuse-bad-value = Jest tam wartość, która nie pasuje: za długa, za duża albo poniżej zera. Nic nie zapisane. Wyślij jeszcze raz z inną.
refuse-records = To nie pasuje do zapisków. Nic nie zapisane. Napisz „moje rośliny”, zobaczysz, co jest.
refuse-changed-since = Ktoś zmienił to chwilę wcześniej. Od ciebie nic nie zapisano. Napisz „moje rośliny”, zobaczysz, co jest.
refuse-future = Ten dzień dopiero będzie. Podaj taki, który już był, np.: wczoraj nawożona Ruby.
refuse-date-ahead = Ten dzień dopiero będzie. Podaj dzień, który już był; a jeśli to było w zeszłym roku, także rok, na przykład: nawiozłam Ruby 3 marca 2025.
refuse-which-day = Którego dnia? Podaj jeden, np.: wczoraj nawożona Ruby; albo: 3 marca.
refuse-no-such-day = Nie ma takiego dnia. Napisz np.: 3 marca.
refuse-nitrogen-over = Formy azotu dają razem { $forms } %, a na etykiecie jest { $n } % N. Zajrzyj na etykietę i podaj jedno i drugie.
file-saved = Zapisane tutaj jako { $names }.
picture-saved = [{ $alt }: zapisane tutaj jako { $name }]

# --- reasons of the plan ---
reason-given-today = dziś już podane
reason-rest-dry = spoczynek, trzymaj sucho
reason-rest-genus = teraz spoczynek
reason-rest-growth = spoczynek
reason-repotted = { $weeks ->
    [0] świeżo po przesadzeniu
    [one] tydzień po przesadzeniu
    [few] { $weeks } tygodnie po przesadzeniu
   *[other] { $weeks } tygodni po przesadzeniu
}
reason-flush-due = { $weeks ->
    [one] tydzień bez czystej wody
    [few] { $weeks } tygodnie bez czystej wody
   *[other] { $weeks } tygodni bez czystej wody
}
reason-flush-mounted = { $weeks ->
    [one] tydzień bez czystej wody
    [few] { $weeks } tygodnie bez czystej wody
   *[other] { $weeks } tygodni bez czystej wody
}
reason-flush-salts = zasolenie ponad limit wg dziennika
reason-rescue = { $weeks ->
    [0] po ratowaniu, jeszcze kilka dni bez nawozu
    [one] po ratowaniu, jeszcze tydzień bez nawozu
    [few] po ratowaniu, jeszcze { $weeks } tygodnie bez nawozu
   *[other] po ratowaniu, jeszcze { $weeks } tygodni bez nawozu
}
reason-rescue-resume = po ratowaniu słabiej, i tylko gdy widać nowe końcówki korzeni
reason-flush-overfed = za dużo nawozu: najpierw wypłukać
reason-types-rest = część gatunków ma teraz spoczynek: podaj gatunek
reason-not-yet = jeszcze nie pora
reason-plant-unknown = nieznany rodzaj, ostrożnie
reason-growth-growing = aktywny wzrost
reason-growth-new_roots = nowe korzenie
reason-growth-new_leaves = nowe liście
reason-growth-new_pseudobulbs = nowe pseudobulwy
reason-growth-flowering = pęd lub kwiaty
reason-growth-slow = powolny wzrost
reason-growth-seedling = siewka
reason-season-winter = zimą połowa
reason-season-spring = wiosna
reason-season-summer = lato
reason-season-autumn = jesień
reason-medium-sphagnum = sfagnum trzyma sole
reason-medium-clay_pellets = keramzyt trzyma sole
reason-seedling = siewki dostają połowę
choice-calcium-for-pure-water = ma wapń i magnez, których brak w tej wodzie
choice-growth-nitrogen = więcej azotu niż fosforu, na wzrost
choice-bloom-potassium = dużo potasu, na kwiaty
choice-balanced-in-doubt = zrównoważony, dobry, gdy nic innego nie przeważa
choice-nitrate = azot głównie azotanowy, korzenie biorą go od razu
choice-bark-nitrogen = kora zabiera azot dla siebie, a tu żadna z liczb nie jest większa od azotu
choice-complete = na etykiecie są wszystkie makro- i mikroelementy
choice-micro-elements = na etykiecie są mikroelementy

# --- the salts in pots ---
salts-mounted = { $plants }: podkładka prawie nie trzyma soli. Raz w miesiącu opłucz czystą wodą.
salts-one = { $plant }: około { $ec } mS/cm w mokrej doniczce ({ $low }–{ $high }), { $state ->
    [over] ponad limit { $limit }.
    [unsure] może ponad limit { $limit }: za krótki dziennik, żeby mieć pewność.
    [water] ponad limit { $limit }.
    [near] blisko limitu { $limit }.
   *[fine] poniżej limitu { $limit }.
}
salts-head = Od najbardziej zasolonej, w mS/cm w mokrej doniczce:
salts-line = - { $plant }: { $ec } ({ $low }–{ $high }), limit { $limit }{ $state ->
    [over] : przepłucz teraz
    [unsure] : może ponad, za krótki dziennik
    [water] : za słona jest już sama woda
    [near] : przepłucz niedługo
   *[fine] { "" }
}
salts-more = I jeszcze { $count }, mniej zasolone.
salts-due-over = { $now ->
    [yes] Przepłucz teraz.
   *[no] W tym tempie przekroczy limit { $day }: przepłucz do tego dnia.
}
salts-due-month = { $now ->
    [yes] Miesiąc bez czystej wody minął { $day }: przepłucz teraz.
   *[no] Comiesięczne płukanie wypada { $day }.
}
salts-due-none = Przepłukuj raz w miesiącu i zawsze, gdy odciek przekroczy ten limit.
salts-due-water = Twoja woda, { $water } mS/cm, jest za słona do płukania: weź deszczówkę albo wodę z RO.
salts-flush = Płukanie: przelej { $first } czystej wody, odczekaj { $rest } min, potem jeszcze { $others }. Zostanie około { $after } mS/cm{ $reaches ->
    [yes] .
   *[no] ; więcej wody niewiele da.
}
salts-flush-least = To najmniej, co według dziennika obniży sole. Przy chorych korzeniach albo nalocie przelej { $usual }: dwie objętości doniczki.
salts-from = Policzone { $entries ->
    [0] bez wpisów w dzienniku: to zgadywanie.
    [one] z jednego wpisu w dzienniku, woda { $water } mS/cm.
   *[other] z { $entries } wpisów w dzienniku, woda { $water } mS/cm.
}
salts-measure = Kora i mech zatrzymują sole: zmierz, co wypływa, i napisz mi, np.: odciek 1,2 z Ruby.
why-salts-pot = woda w doniczce zbiera to, co wlane, wodę oddaje powietrzu, a sole temu, co przeleci

# --- stock solutions and mixes ---
ask-stock-product = Koncentrat z jakiego nawozu? Najpierw postaw go na półce, np.: mój proszek to 20-20-20, etykieta 1 g na litr, nazwij go niebieska puszka.
refuse-stock-liquid = { $product } to płyn, czyli już koncentrat. Odmierzaj strzykawką.
refuse-stock-volume = Koncentratu robi się od 10 ml do { $most } l. Napisz ile, np.: 500 ml roztworu stężonego niebieska puszka.
refuse-stock-ratio = Koncentrat rozcieńcza się najwyżej 1:{ $most }. Napisz np.: roztwór stężony 1:100 niebieska puszka.
refuse-stock-strong = Tak mocny koncentrat się zmąci: zrób 1:{ $times }.
refuse-stock-clash = Dwie butelki nie wystarczą ({ $products }): jeden nawóz odstaw i wlewaj do konewki osobno.
stock-make = { $grams } g { $product }, dopełnij wodą do { $volume }.
stock-use = Na litr { $use } ml, to { $how ->
    [n] { $value } mg/l N
    [ec] EC { $value } mS/cm
    [share] { $value ->
        [full] pełna dawka
       *[other] { $value } pełnej dawki
    }
   *[quarter] ćwierć dawki
}; nigdy więcej niż { $full } ml.
stock-of-last = Tak jak ostatnia dawka.
stock-held = { $n ->
    [none] Przycięte do dawki z etykiety: nigdy więcej.
   *[other] Przycięte do { $n } mg/l N: więcej przekroczyłoby etykietę albo to, co znoszą twoje rośliny.
}
stock-shares = Nawozy ({ $count }) dzielą to między siebie: każdy po { $percent } % własnej pełnej dawki.
stock-for-the-bottle = Na butelkę: { $label }
stock-why = { $g_l } g na litr to najwyżej połowa tego, co zostaje rozpuszczone w { $cold } °C.
stock-cautions = Przed użyciem wstrząśnij; gdy zmętnieje, wylej.
stock-ratio = { $bottles ->
    [one] Jedna butelka, rozcieńczana 1:{ $times },
   *[other] Dwie butelki, nigdy razem bez wody, każda rozcieńczana 1:{ $times },
} { $how ->
    [n] na { $value } mg/l N:
    [ec] na EC { $value } mS/cm:
    [share] { $value ->
        [full] na pełną dawkę:
       *[other] na { $value } pełnej dawki:
    }
   *[quarter] na ćwierć dawki:
}
stock-bottle = { $name }: { $what }, dopełnij wodą do { $volume }; { $use } ml na litr.
stock-ratio-means = 1:{ $times } to jedna część na { $times } części gotowego roztworu.
grams-of = { $grams } g ({ $name })
stock-label = NIE DO PICIA. { $what } w { $volume }. Zrobione { $made }, zużyj do { $use_by }. W chłodzie, po ciemku, z dala od dzieci i zwierząt.
ask-together = Które dwa? Podaj liczby z obu etykiet, np.: czy 20-20-20 i 15,5-0-0 + 19Ca mogą być w jednej butelce?
refuse-together-label = Etykieta nie może się zgadzać: { $product }. Sprawdź ją i podaj liczby obu nawozów.
together-yes = { $products }: mogą być w jednej butelce.
together-no = { $products }: nie w jednej butelce.
together-liquid = Nie wiem, co jeszcze jest w płynie, więc osobne butelki i strzykawki: { $products }. W pełnej konewce mogą się spotkać.
together-can = W gotowym roztworze, do pełnej dawki, nic się nie wytrąci: jeden do pełnej konewki, zamieszaj, potem drugi.
together-can-no = Nawet w gotowym roztworze nie: dawaj w różne dni.
clash-calcium-sulphate = Wapń z siarczanem wytrąca gips{ $sure ->
    [yes] .
   *[no] , o ile jest tam siarczan: etykieta tego nie mówi.
}
clash-calcium-phosphate = Wapń z fosforanem wytrąca biały osad.
clash-magnesium-phosphate = Magnez z fosforanem razem się wytrącają.
clash-silicate = Krzemiany są zasadowe: nie łączą się z niczym.
why-stock-limit = połowa tego, co rozpuści się na zimno, z soli, która wytrąci się pierwsza
why-stock-apart = wapń z siarczanem lub fosforanem i magnez z fosforanem wytrącają się, gdy obu jest dużo
ask-mix-products = Do mieszanki trzeba co najmniej dwóch proszków na półce. Podaj etykiety, np.: mój proszek to 15,5-0-0 + 19Ca, nazwij go wapniowy.
mix-amounts = { $what } na { $volume }
mix-goal = Najbliżej potrzeb roślin { $goal ->
    [bloom] kwitnących
   *[growth] rosnących
}, przy N { $n } mg/l.
mix-held = Ograniczone do N { $n } mg/l zamiast { $wanted }: twoje najwrażliwsze rośliny więcej nie zniosą.
mix-meets = Azot, potas, wapń i magnez się zgadzają.
mix-short = Brakuje: { $what }.
mix-short-one = { $nutrient ->
    [nitrate] azotany
   *[other] { $nutrient }
} { $brought } z { $wanted } mg/l
mix-capped = Ograniczone przez { $element }: w nadmiarze truje.
mix-none = Na półce nic nie da N { $n } mg/l. Podaj etykietę nawozu z azotem.
mix-cautions = Rozpuszczaj po kolei w pełnej konewce, nigdy nie mieszaj samych proszków. Wapń na końcu.
why-blend = { $nutrient }: potrzeba { $mg_l } mg/l

# --- an ailing plant ---
rescue-answer-yes = tak
rescue-answer-no = nie
rescue-answer-unknown = nie wiem
rescue-whom = { $named ->
   *[no] { $plant }
}
ask-rescue-mushy-roots = { $pot ->
    [no] Obejrzyj korzenie
   *[other] Wyjmij { $plant ->
        [none] { $n ->
            [many] rośliny
           *[one] roślinę
        }
       *[other] { $n ->
            [many] rośliny
           *[one] roślinę
        } ({ $plant })
    } z { $pot ->
        [maybe] doniczki lub koszyka
       *[yes] { $n ->
            [many] doniczek
           *[one] doniczki
        }
    }
}: czy korzenie są miękkie, brązowe i puste, gdy je ściśniesz?
ask-rescue-sudden-after-cold = Czy stało się to w kilka dni po zimnej nocy, przeciągu albo transporcie na mrozie?
ask-rescue-one-old-leaf = Czy to tylko najniższy, najstarszy liść?
ask-rescue-dry-light-pot = Czy doniczka często przesycha na wylot i jest bardzo lekka?
ask-rescue-white-crust = Czy na podłożu albo brzegu doniczki jest biały nalot?
ask-rescue-brown-root-tips = Obejrzyj korzenie: czy końcówki są brązowe albo czarne?
ask-rescue-medium-stays-wet = Czy tydzień po podlaniu podłoże jest jeszcze mokre?
ask-rescue-new-growth-sound = Czy najmłodszy liść i końcówki korzeni wyglądają zdrowo?
ask-rescue-many-plants = Czy inne twoje rośliny mają to samo?
cause-root-rot = gnicie korzeni
cause-tissue-rot = zgnilizna stożka lub liścia
cause-salt-burn = przypalenie solami
cause-thirst = przesuszenie
cause-cold = przemarznięcie
cause-old-age = starość liścia
cause-rest = opad liści przed spoczynkiem
rescue-likely = { $likely ->
    [none] Nic pewnego. Możliwe: { $possible }.
   *[other] Prawdopodobnie: { $likely }.{ $possible ->
        [none] {""}
       *[other] {" "}Możliwe: { $possible }.
    }
}{ $unlikely ->
    [none] {""}
   *[other] {" "}Raczej nie: { $unlikely }.
}
rescue-unclear = Z tego nie da się powiedzieć, co to jest.
rescue-do-flush = { $lead ->
    [no] Znowu przepłucz, { $volume } czystej wody w { $passes } porcjach.
   *[yes] Przepłucz { $plant ->
        [none] { $n ->
            [many] rośliny
           *[one] roślinę
        }
       *[other] { $n ->
            [many] rośliny
           *[one] roślinę
        } ({ $plant })
    }, { $volume } czystej wody: { $passes } × { $part }, co { $rest } min.
}
flush-now = Przepłucz: { $plants }, { $volume } czystej wody, { $passes } × { $part }, co { $rest } min. Niech odcieknie; tego dnia bez nawozu.
rescue-do-soak = Podlej na wylot { $plant ->
    [none] { $n ->
        [many] rośliny
       *[one] roślinę
    }
   *[other] { $n ->
        [many] rośliny
       *[one] roślinę
    } ({ $plant })
}, { $volume }, aż wypłynie dołem.
rescue-do-rinse = Opłucz korzenie, { $volume } czystej wody.
rescue-do-unpot = Wyjmij { $plant ->
    [none] { $n ->
        [many] rośliny
       *[one] roślinę
    }
   *[other] { $n ->
        [many] rośliny
       *[one] roślinę
    } ({ $plant })
} z { $pot ->
    [maybe] doniczki lub koszyka
   *[yes] { $n ->
        [many] doniczek
       *[one] doniczki
    }
} i starego podłoża.
rescue-do-cut-dead-roots = Wytnij, co miękkie; jędrne korzenie zostaw.
rescue-do-fresh-medium = Posadź w świeżym podłożu i { $n ->
    [many] czystych doniczkach.
   *[one] czystej doniczce.
}
rescue-do-keep-apart = Odstaw { $n ->
    [many] rośliny
   *[one] roślinę
} z dala od innych i nie rozchlapuj wody.
rescue-do-humid-shade = Cień i wilgotne powietrze.
rescue-do-water-when-nearly-dry = Podlej znowu, ale dopiero gdy prawie wyschnie.
rescue-do-remove-crust = Najpierw zdejmij nalot, nie głębiej niż 6 mm.
rescue-do-shade = Trzymaj { $n ->
    [many] rośliny
   *[one] roślinę
} w cieniu.
rescue-do-clear-water-only = Sama czysta woda.
rescue-do-water-more-often = Podlewaj częściej.
rescue-do-move-to-warmth = Przenieś { $plant ->
    [none] { $n ->
        [many] rośliny
       *[one] roślinę
    }
   *[other] { $n ->
        [many] rośliny
       *[one] roślinę
    } ({ $plant })
} w ciepłe miejsce, 10 do 27 °C.
rescue-do-leave-leaf = Nic nie rób: zostaw liść{ $plant ->
    [none] {""}
   *[other] {" "}({ $plant })
}, aż sam odpadnie.
rescue-do-dry-crown = Wylej wodę ze stożka wzrostu i osusz go.
rescue-do-cut-to-sound = Wytnij miękkie lub czarne do zdrowej tkanki czystym ostrzem i daj ranie wyschnąć.
rescue-do-keep-dry = Bez wody na liściach i w stożku; ruch powietrza.
rescue-do-let-shed = Pewnie to zwykły opad liści przed spoczynkiem: nic nie rób i nie wyjmuj z { $n ->
    [many] doniczek.
   *[one] doniczki.
} Mało czystej wody, bez nawozu. Miękkie pędy, bulwy lub korzenie to zgnilizna: wtedy napisz.
rescue-do-look-at-roots = { $pot ->
    [no] Obejrzyj korzenie
   *[other] Wyjmij { $plant ->
        [none] { $n ->
            [many] rośliny
           *[one] roślinę
        }
       *[other] { $n ->
            [many] rośliny
           *[one] roślinę
        } ({ $plant })
    } z { $pot ->
        [maybe] doniczki lub koszyka
       *[yes] { $n ->
            [many] doniczek
           *[one] doniczki
        }
    } i obejrzyj korzenie
}: jędrne i pełne są zdrowe, miękkie to zgnilizna, brązowe końcówki to sole.
rescue-do-look-for-spreading = Czy się rozszerza?
rescue-do-look-for-new-root-tips = Czy są nowe końcówki korzeni?
rescue-do-look-for-firmer-leaves = Czy liście są jędrniejsze?
rescue-do-look-for-more-yellow = Czy żółknie dalej?
rescue-do-look-again = Obejrzyj jeszcze raz i napisz, co widać.
rescue-later = - { $days }: { $condition ->
    [more-brown-roots] jeśli zbrązowiało więcej korzeni: { $what }
   *[other] { $what }
}
rescue-people = Tu słowa nie wystarczą ({ $signs }): pokaż to w klubie storczykowym albo doradcy ogrodniczemu.
rescue-resume = { $days ->
    [0] Nawoź dalej jak zwykle, { $strength } pełnej dawki.
   *[other] Bez nawozu { $days } { $days ->
        [one] dzień
       *[other] dni
    }, do { $day }. Potem { $when ->
        [tips] tylko gdy widać nowe końcówki korzeni,
        [rests] jest spoczynek: dopiero gdy znów ruszy,
       *[day] {""}
    }{ $when ->
        [day] {""}
       *[other] {" "}
    }{ $strength } pełnej dawki{ $share ->
        [full] {", "}jak zwykle.
       *[other] {", "}czyli { $share } zwykłej.
    }
}
rescue-rests = Bez nawozu, aż ruszą nowe przyrosty lub korzenie.
rescue-no-feed = Żadnego nawozu, aż puści nowe korzenie; obejrzyj znowu { $day }.
rescue-no-feed-yet = Bez nawozu { $days } { $days ->
    [one] dzień
   *[other] dni
}, aż będzie wiadomo, co to jest.
rescue-assumed = Woda policzona na: { $what ->
    [pot_cm] doniczka { $pot } cm.
    [medium] doniczka z korą.
   *[both] doniczka { $pot } cm z korą.
} Popraw mnie i zapytaj jeszcze raz.
rescue-their-rate = { $rate } g na litr to około { $times } × pełna dawka{ $known ->
    [yes] {""}
   *[no] , licząc jak 20-20-20
}: za dużo. Bez nawozu, dopóki to się nie wyjaśni; potem co tydzień około { $part } g na litr.
rescue-logged = Zapisane: w planie { $n ->
    [many] te rośliny są
   *[one] ta roślina jest
} bez nawozu do { $day }.
overfed-logged = W planie: { $plants } – najpierw płukanie, potem bez nawozu do { $day }.
overfed-still = Za dużo nawozu: { $plants }. Najpierw przepłucz dużą ilością czystej wody; bez nawozu do { $day }.
overfed-told = To było za dużo. Przepłucz teraz: dużo czystej wody przez doniczkę i jeszcze raz po pół godzinie. Potem przerwa w nawożeniu; patrz, czy nie brązowieją końcówki.
overfed-undo = Jeszcze nie wylane albo to inne rośliny? Napisz „cofnij”, a potem które.
reading-still = { $plants }: ostatni odciek przekroczył granicę, więc bez nawozu, póki nie spadnie. Najpierw przepłucz czystą wodą.
repot-still = { $plants }: niedawno po przesadzeniu, więc bez nawozu do { $day } albo do nowych korzeni. Do tego czasu czysta woda.
rescue-still = { $n ->
    [many] Dochodzą
   *[one] Dochodzi
} do siebie: { $plants }. Bez nawozu do { $day }, daj za to czystą wodę.
rescue-remind = przypomnij mi obejrzeć { $plant } { $day } { $month ->
    [m1] stycznia
    [m2] lutego
    [m3] marca
    [m4] kwietnia
    [m5] maja
    [m6] czerwca
    [m7] lipca
    [m8] sierpnia
    [m9] września
    [m10] października
    [m11] listopada
   *[m12] grudnia
}
rescue-say-flushed = przepłukane { $plant }
cautions-none = Tu nie ma już na co uważać.
caution-never-feed-burnt-roots = Nigdy nie nawoź uszkodzonych korzeni: czekaj na nowe końcówki.
caution-keep-apart = Zgnilizna przenosi się z rozchlapaną wodą: odstaw roślinę osobno.
caution-clean-blade = Do każdej rośliny czyste ostrze.
caution-tepid-water = Woda letnia, nigdy lodowata.
caution-not-seen = Oceniam z samych słów: przyczyny bywają podobne i chodzą parami.
sign-mushy-roots = miękkie korzenie
sign-sudden-after-cold = nagle po zimnie
sign-one-old-leaf = tylko najstarszy liść
sign-dry-light-pot = sucha, lekka doniczka
sign-white-crust = biały nalot
sign-brown-root-tips = brązowe końcówki korzeni
sign-medium-stays-wet = podłoże długo mokre
sign-new-growth-sound = zdrowe nowe przyrosty
sign-many-plants = wiele roślin naraz
sign-roots-gone = brak korzeni
sign-leaves-gone = opadające liście
sign-black-spreading = rozszerzająca się czerń
sign-rot = zgnilizna
sign-crown-rot = zgnilizna stożka lub łodygi
sign-leaf-rot = mokra lub rosnąca plama na liściu
sign-sour-smell = kwaśny zapach
sign-firm-roots = jędrne korzenie
sign-watered-little = mało wody
sign-watered-well = zwykłe podlewanie
sign-sheds-in-rest = gatunek, który w spoczynku gubi liście
sign-leaf-tips-brown = brązowe końcówki liści
sign-wilting-wet = więdnie w mokrym
sign-wilting-dry = więdnie w suchym
sign-pleated-leaves = pomarszczone liście
sign-yellow-old-leaf = żółte dolne liście
sign-sunken-patches = zapadnięte plamy
sign-fed-strong = nawóz ponad etykietę
sign-not-fed = dawno bez nawozu
sign-flush-due = miesiąc bez czystej wody
sign-flush-overdue = pół roku bez czystej wody
sign-high-ec = wysokie EC w doniczce
sign-low-ec = niskie EC w doniczce
sign-holds-salts = podłoże trzyma sole
sign-winter = zima
sign-old-medium = stare podłoże
sign-young-plant = młoda roślina
why-rescue-sign = { $answer ->
    [no] nie ma: { $sign }
   *[other] { $sign }
}: { $side ->
    [against] −
   *[for] +
}{ $points } ({ $cause })
why-rescue-flush = płukanie { $volume }: { $passes } × objętość doniczki { $pot } cm{ $count ->
    [1] {""}
    [few] , { $count } rośliny
   *[other] , { $count } roślin
}
why-rescue-pause = { $days } { $days ->
    [one] dzień
   *[other] dni
} bez nawozu{ $share ->
    [none] , i nic przed nowymi korzeniami
    [full] , potem jak zwykle
   *[other] , potem { $share } zwykłej dawki ({ $usual } pełnej, minus to, co ujmuje pora roku i podłoże)
}

# --- comparing feeds ---
compare-none = Do porównania trzeba nawozów na półce. Najpierw je dodaj, np.: mój proszek to 20-20-20, etykieta 1 g na litr, nazwij go niebieska puszka.
compare-one = { $name } to jedyny nawóz na twojej półce. Dodaj drugi, np.: mój płyn to 7-7-7, 4 ml na litr, nazwij go zielona butelka.
refuse-compare-n = { $n } mg/l N nie da się porównać. Podaj najwyżej { $most }, np.: porównaj przy 100 ppm N.
refuse-compare-volume = { $volume } l to więcej, niż trzeba w jakimkolwiek domu. Napisz np.: ile kosztuje 100 litrów.
compare-cheapest = Najtaniej wychodzi { $name }: { $cost } za { $volume } l.
compare-cost-one = { $cost } za { $volume } l: { $name }.
compare-not-ordered = Ceny są w różnych walutach, więc nie powiem, co tańsze.
compare-cannot = { $costs ->
    [0] Nie powiem jeszcze, ile kosztują.
    [1] Tylko jeden ma komplet liczb, więc nie powiem, co tańsze.
    [2] Kosztują tyle samo.
   *[other] Dwa najtańsze kosztują tyle samo.
}
compare-all = Z nich znam tylko jeden: { $name }, więc oto cała półka.
compare-at = Na { $volume } l przy { $n } mg/l N, { $strength } pełnej dawki:
compare-line = - { $name }: { $cost ->
    [none] {""}
   *[other] { $cost }, {""}
}{ $amount ->
    [none] bez azotu, nie da się porównać
   *[other] { $amount }
}{ $lacks ->
    [none] {""}
   *[other] ; na etykiecie brak { $lacks }
}{ $micro ->
    [yes] ; mikroelementy niepełne
   *[no] {""}
}{ $forms ->
    [none] {""}
   *[other] ; { $forms }
}
compare-amount-both = { $ml } ml ({ $g } g)
compare-per-money = Za 1 { $currency } { $name } daje { $elements }.
compare-currency-none = jednostkę pieniędzy
compare-form-nitrate = głównie azotany, dobre do kory
compare-form-much-urea = głównie mocznik, w korze powolny
compare-salt = Sole przy tym samym azocie (indeks solny na 1 % N, niższy mniej pali): { $feeds }{ $least ->
    [none] { $count ->
        [1] .
       *[other] ; z etykiet nie wynika, który niższy.
    }
   *[other] ; najmniej ma { $least }.
}
compare-salt-one = { $name } { $index }
compare-salt-missing = Bez indeksu solnego: { $names }. Żadne sole, które mam w tabelach, nie dają takiej etykiety.
why-compare-salt = indeks solny = indeksy soli razy ich udziały; gdy etykieta nie podaje soli, liczę wszystkie mieszanki, które ją dają
compare-powder-liquid = Proszek i płyn porównuję po azocie, nie po wielkości opakowania.
compare-missing-price = Brak ceny: { $name }. Napisz np.: { $name } kosztuje 45 zł za 500 { $unit }
compare-missing-pack-size = Brak wielkości opakowania: { $name }. Napisz np.: { $name } kosztuje { $price } za 500 { $unit }
compare-missing-currency = Brak waluty: { $name }. Napisz np.: { $name } kosztuje { $price } zł
compare-missing-density = Brak gęstości: { $name }. Napisz np.: gęstość { $name } 1,2 kg/l
compare-missing-nitrogen-forms = Do kory: nie wiem, z czego jest azot ({ $names }). Napisz np.: { $first } ma 8 % azotanowego, 4 % amonowego, 0 % mocznika
why-compare-product = nawóz = potrzebny azot × litry ÷ (10 × % N z etykiety)
why-compare-cost = koszt = cena × nawóz ÷ opakowanie
why-compare-form = { $name }: { $form }

# --- readings of the ready feed ---
choice-meter-us = mój miernik pokazuje { $value } µS
choice-meter-ppm = mój miernik pokazuje { $value } ppm
ask-meter-unit = { $value } czego? Mierniki pokazują mS/cm, µS/cm albo ppm.
ask-meter-feed = To EC { $ec } mS/cm w 25 °C. Jaki to nawóz? Podaj jego liczby, np.: 20-20-20.
# What dosing cannot work out; `refuse-` and the code of `Impossible`.
refuse-figures = Z tych liczb nic nie policzę. Podaj je jeszcze raz, po kolei.
refuse-solution-strong = Za mocne, żeby policzyć. Podaj gotowy roztwór, nie koncentrat.
refuse-nutrients-many = { $mg_l } mg/l to więcej, niż zmieści woda. Zajrzyj jeszcze raz na etykietę.
refuse-temperature = Woda nie może mieć { $temp } °C. Podaj od 0 do 50 °C, np.: mój miernik pokazuje 0,9 mS przy 18 °C.
refuse-reading-range = { $ec } mS/cm to niemożliwe: już { $most } to więcej niż w morzu. Jeśli miernik pokazuje µS/cm, napisz np.: mój miernik pokazuje 900 µS.
refuse-reading-negative = Żaden miernik nie pokazuje { $value }. Opłucz go, zmierz jeszcze raz i napisz np.: mój miernik pokazuje 0,9 mS.
refuse-meter-temperature = Miernik bez korekty do 25 °C wymaga temperatury. Napisz np.: mój miernik pokazuje 0,9 mS przy 18 °C.
refuse-meter-unit = Nie znam jednostki { $unit }. Mierniki pokazują mS/cm, µS/cm albo ppm: napisz np.: mój miernik pokazuje 0,9 mS.
refuse-hardly-conducts = Ten nawóz prawie nie przewodzi, jak mocznik: żaden miernik nie pokaże jego stężenia. Zważ go.
refuse-feed-under-water = Roztwór ma { $reading } mS/cm, mniej niż sama woda: { $water }. Zmierz oba jeszcze raz, najpierw samą wodę.
refuse-thinning-water = Wodą { $water } mS/cm nie zejdziesz do { $wanted }. Weź deszczówkę albo wodę z RO.
refuse-supplement-neither = To nie ma ani wapnia, ani magnezu. Podaj coś, co ma.
refuse-water-ion-amount = { $ion } { $mg_l } mg/l to niemożliwe. Zajrzyj jeszcze raz do analizy.
refuse-sea-water = Sód { $na } mg/l to więcej niż w morzu ({ $most }). Może inna jednostka?
refuse-water-imbalance = Jedna liczba w tej analizie jest zła: { $cations } meq/l kationów, a { $anions } anionów, różnica { $percent } %; zwykle bywa do 10 %. Brakuje { $side ->
    [anions] anionów
   *[cations] kationów
}, tyle co { $mg_l } mg/l { $ion }. Sprawdź albo licz dalej z samej twardości: moja kranówka ma { $hardness } dH.
choice-water-nearest = moja kranówka ma { $hardness } dH
refuse-water-too-salty = Ta woda ma więcej soli, niż zniesie jakakolwiek roślina. Weź deszczówkę albo wodę z RO.
refuse-water-ions = Tego nie użyję: { $ions }. Podaj Ca, Mg, Na, K, HCO3, SO4, Cl i NO3.
refuse-water-nothing-known = Za mało wiem o tej wodzie. Podaj twardość, EC albo analizę, np.: moja kranówka ma 14 dH.
refuse-water-ec-range = { $ec } mS/cm to już nie słodka woda (0 do { $most }). Może to µS/cm? Napisz np.: moja kranówka ma 400 µS.
refuse-water-hardness-range = { $what ->
    [alkalinity] Zasadowość
   *[hardness] Twardość
} { $mg_l } mg/l to już nie słodka woda (0 do { $most }). Napisz np.: moja kranówka ma 14 dH.
refuse-water-contradiction = EC { $ec } mS/cm nie pasuje do tej liczby ({ $what ->
    [alkalinity] zasadowość
   *[hardness] twardość
}): sama { $what ->
    [alkalinity] zasadowość
   *[hardness] twardość
} daje już { $least }. Podaj tę, której ufasz.
refuse-blend-target = { $target } nie da się uzyskać. Podaj 0 albo więcej, np.: zmieszaj kranówkę i RO do 6 dH.
refuse-blend-volume = { $volume } l nie da się zmieszać. Napisz, ile chcesz, np.: 5 l.
report-in-part = Wykorzystane, na ile się da: { $lacks ->
    [anions] anionów jest o { $percent } % mniej niż kationów, więc części brakuje.
    [cations] kationów jest o { $percent } % mniej niż anionów, więc części brakuje.
   *[ions] brakuje wapnia albo wodorowęglanów.
}
meter-over = Za mocne{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}: { $factor } × maksimum.
meter-unsure = Może za mocne{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}: nawet { $high } × maksimum.
meter-under = Nie za mocne{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}.
meter-water-alone = To woda, nie nawóz: ma EC { $own }, a te rośliny znoszą { $most } mS/cm.
meter-water-adds = Nawozu jest tyle, ile miało być; razem z EC { $own } twojej wody to więcej niż { $most } mS/cm, które te rośliny znoszą.
up-to = do { $high }
meter-anew = { $instead ->
    [yes] Rozrób
   *[no] Albo rozrób
} od nowa{ $water ->
    [pure] {" "}na deszczówce lub wodzie z RO
   *[own] {""}
}, najwyżej { $grams } g nawozu na litr.
meter-add = { $sure ->
    [yes] Dolej
   *[no] Na wszelki wypadek dolej
} { $litres } { $water ->
    [pure] deszczówki albo wody z RO
   *[own] swojej wody
} na { $to ->
    [none] każdy litr
   *[other] te { $to }
}: wyjdzie EC { $ec } mS/cm.
meter-means = EC { $ec } mS/cm w 25 °C{ $water ->
    [none] {""}
   *[other] , w tym { $water } z twojej wody
}: N { $n } mg/l, nawozu { $grams } g na litr.
meter-meant-less = To { $share } % { $whose ->
    [said] tego, co miało się rozpuścić
   *[given] dawki ode mnie
}: słabiej, niż miało być.
meter-meant-more = To { $share } % { $whose ->
    [said] tego, co miało się rozpuścić
   *[given] dawki ode mnie
}: mocniej, niż miało być. Sprawdź wagę i litry.
meter-meant-same = To { $share } % { $whose ->
    [said] tego, co miało się rozpuścić
   *[given] dawki ode mnie
}: może się zgadzać.
meter-meant-fine = To { $share } % { $whose ->
    [said] tego, co miało się rozpuścić
   *[given] dawki ode mnie
}: zgadza się, na ile miernik to pokaże.
meter-scale-unknown = ppm to 500, 640 albo 700 na 1 mS/cm, zależnie od miernika: podaj skalę, np. „skala 500”.
meter-unit-taken = Przyjęte jako mS/cm.
meter-temperature = Większość mierników przelicza na 25 °C; twój może nie, więc liczę na oba sposoby.
meter-water-unknown = Nie znam twojej wody, więc to górna granica. Napisz np.: moja kranówka ma 0,4 mS.
meter-water-estimated = EC twojej wody szacuję z twardości. Podaj EC, będzie dokładniej, np.: moja kranówka ma 0,4 mS.
meter-forms-unknown = Od–do, bo na znanej mi etykiecie nie ma form azotu (azotanowy, amonowy, mocznik).
convert-meter = { $value } { $unit } to { $kind ->
    [ms] {""}
   *[other] { $ec } mS/cm;{" "}
}{ $ppm }{ $kind ->
    [cf] .
   *[other] ; CF { $cf }.
}
convert-on-scale = { $value } { $unit } w skali { $scale }
convert-ppm-unit = ppm w skali { $scale }
convert-ppm-open = { $value } ppm to { $each }.
convert-oxide = { $value } { $unit } { $of } to { $result } { $unit } { $to } ({ $oxide } × { $factor } = { $element }).
convert-oxide-none = { $of } i { $to } nie da się przeliczyć jedno na drugie. Przeliczam P2O5 na P, K2O na K, CaO na Ca, MgO na Mg i z powrotem.
pour-together = Razem { $volume } o EC { $ec } mS/cm.
pour-thinned = Dolej { $add } ({ $water }): wyjdzie { $whole } o EC { $ec } mS/cm.
most-ec = Najwyżej EC { $most } mS/cm w gotowym roztworze, razem z wodą{ $plants ->
    [none] : tyle znosi większość storczyków; podaj roślinę, powiem dokładniej.
   *[other] {" "}({ $plants }). Mniej nie szkodzi.
}
most-ec-source = Skąd to: { $source }.
brings-over = { $sure ->
    [yes] Za dużo
   *[no] Może za dużo
}: najwyżej { $most } { $unit } na { $volume }.
nitrogen-over = Za dużo{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}: najwyżej { $most } mg/l N{ $what ->
    [ammonium] {" "}jako amon
   *[all] {""}
}.
nitrogen-perhaps = Za dużo{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}, jeśli to liczba dla azotu (N): najwyżej { $most } mg/l N{ $what ->
    [ammonium] {" "}jako amon
   *[all] {""}
}.
nitrogen-under = Nie za dużo{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}: najwyżej { $most } mg/l N{ $what ->
    [ammonium] {" "}jako amon
   *[all] {""}
}.
nitrogen-as-ion = { $value } mg/l { $ion } to { $n } mg/l N; liczone jako azot to { $value } mg/l N.
nitrogen-ammonium = Co najmniej połowa azotu jako azotan, lepiej trzy czwarte (Wang, HortScience).
why-meter-difference = nawóz = wskazanie miernika minus EC wody, przez to, co dodaje gram na litr w tej wodzie
why-meter-temperature = przeliczone na 25 °C, około 2 % na stopień
why-meter-scale = ppm przez skalę miernika to mS/cm
why-meter-dilution = woda do dolania = objętość × (wskazane − docelowe) / (docelowe − sama woda)
why-meter-ceiling = maksimum gotowego roztworu dla tych roślin

# --- reports, suitability, mixing waters, calcium and magnesium ---
choice-water-suits = czy moja woda jest dobra dla moich roślin?
choice-water-hard = moja kranówka ma 14 dH
choice-water-soft = moja kranówka ma 5 dH
ask-reach-unit = Ten nawóz mierzy się w { $unit }: ile { $unit } masz?
ask-how-hard = Jak twarda? Napisz np.: moja kranówka ma 18 dH. Jest to na stronie wodociągów albo na pasku testowym.
ask-report-unit = Czytam analizy w mg/l, mmol/l albo meq/l. Napisz np.: Ca 80, Mg 12, HCO3 240, Na 20, Cl 35 mg/l.
report-ions = Z analizy: { $ions } mg/l.
report-balance = Ładunki zgadzają się z dokładnością do { $percent } %.
why-water-report = twardość z wapnia i magnezu, zasadowość z wodorowęglanów, EC ze wszystkich jonów
ask-water-figures = Za mało wiem o twojej wodzie. Podaj twardość, EC albo analizę, np.: moja kranówka ma 14 dH; moja kranówka ma 0,5 mS; Ca 80, Mg 12, HCO3 240 mg/l.
suits-good = Dobra woda{ $plants ->
    [none] {" "}dla storczyków
   *[other] {" "}({ $plants })
}.
suits-usable = Ujdzie{ $plants ->
    [none] {" "}dla storczyków
   *[other] {" "}({ $plants })
}, nie ideał.
suits-poor = Niedobra woda{ $plants ->
    [none] {" "}dla storczyków
   *[other] {" "}({ $plants })
}.
suits-good-usable = Dobra albo znośna{ $plants ->
    [none] {" "}dla storczyków
   *[other] {" "}({ $plants })
}.
suits-good-poor = To zależy{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}: za mało wiem o tej wodzie.
suits-usable-poor = Najwyżej znośna{ $plants ->
    [none] {" "}dla storczyków
   *[other] {" "}({ $plants })
}, a może niedobra.
suits-finding = { $quantity ->
    [ec_ms_cm] EC { $value } mS/cm
    [hardness_mg_l_caco3] Twardość { $value } °dH ({ $caco3 } mg/l CaCO3)
    [alkalinity_mg_l_caco3] Zasadowość { $value } °dH ({ $caco3 } mg/l CaCO3)
    [na_mg_l] Sód { $value } mg/l
    [cl_mg_l] Chlorki { $value } mg/l
    [sar] Wskaźnik SAR (sód) { $value }
    [cl_meq_l] Chlorki { $value } meq/l
    [hco3_meq_l] Wodorowęglany { $value } meq/l
   *[nitrate_n_mg_l] Azot azotanowy { $value } mg/l
}{ $good ->
    [none] .
   *[other] : dobrze do { $good }, znośnie do { $most }.
}
suits-thin = Po zmieszaniu z deszczówką albo wodą z RO dobra: { $percent } % tej, reszta czystej.
suits-pure = Nie ma wapnia ani magnezu: musi je dać nawóz.
suits-range = Od–do, bo znam tylko część liczb. Pewność da analiza wody.
suits-limits = Granice dla { $class_ ->
    [sensitive] wrażliwych korzeni
    [hungry] żarłocznych roślin
   *[other] większości storczyków
}: z praktyki hodowców, badań na to nie ma.
blend-taken = { $percent } % w konewce to { $water }: razem { $values }; nawozu daje się tyle samo.
blend-unknown = Nawozu tyle samo. Co da { $percent } % ({ $water }) z twoją wodą, nie wiem: podaj jej twardość, np.: moja kranówka ma 14 °dH.
mix-parts = { $first_percent } % { $first } i { $second_percent } % { $second }: { $values }.
ask-mix-unit = W jakiej jednostce? Napisz np.: zmieszaj kranówkę i RO do 6 dH, albo: do 0,3 mS.
ask-mix-figure = Jaka jest ta woda ({ $water })? Podaj { $quantity ->
    [ec_ms_cm] jej EC, np.: moja kranówka ma 0,5 mS
    [na_mg_l] jej analizę, np.: Ca 80, Mg 12, HCO3 240, Na 20, Cl 35 mg/l
   *[other] jej twardość, np.: moja kranówka ma 14 dH
}.
mix-waters = { $first ->
    [none] Sama { $second_water }, { $second }
   *[other] { $second ->
        [none] Sama { $first_water }, { $first }
       *[other] { $first } ({ $first_water }) i { $second } ({ $second_water })
    }
}.
mix-reached = Wyjdzie { $quantity ->
    [ec_ms_cm] EC { $value } mS/cm
    [hardness_mg_l_caco3] { $value } °dH
    [alkalinity_mg_l_caco3] zasadowość { $value } °dH
   *[na_mg_l] sód { $value } mg/l
}.
mix-nearest = Z tych dwóch nie wyjdzie { $quantity ->
    [ec_ms_cm] EC { $target } mS/cm: najbliżej jest { $value }.
    [hardness_mg_l_caco3] { $target } °dH: najbliżej jest { $value }.
    [alkalinity_mg_l_caco3] zasadowość { $target } °dH: najbliżej jest { $value }.
   *[na_mg_l] sód { $target } mg/l: najbliżej jest { $value }.
}
mix-no-calcium = Prawie nie ma wapnia ani magnezu: musi je dać nawóz.
mix-check = Zanim dodasz nawóz, sprawdź miernikiem.
why-water-blend = pierwsza część = (docelowe − druga) / (pierwsza − druga)
supplement-enough = Niczego nie brakuje: woda i nawóz dają dość wapnia i magnezu na N { $n } mg/l.
supplement-short = { $sure ->
    [yes] Brakuje
   *[no] Może brakować
}: { $what } (nawóz N { $n } mg/l).
supplement-gap = { $element ->
    [Ca] wapń
   *[Mg] magnez
} { $mg_l } z { $target } mg/l
supplement-water-unknown = Nie znam twojej wody, więc nic z niej nie liczę. Napisz np.: moja kranówka ma 14 dH.
supplement-fed = Sam nawóz daje { $what } mg/l.
supplement-none = { $fed ->
    [yes] Reszty nie daje nic innego na półce.
   *[no] Nic na półce tego nie daje.
} Trzeba { $kind ->
    [Ca] saletry wapniowej albo dodatku z wapniem
    [Mg] siarczanu magnezu (sól gorzka) albo dodatku z magnezem
   *[both] dodatku z wapniem i magnezem albo trochę kranówki w mieszance
}. Podaj jego etykietę, a policzę dawkę.
supplement-dose = { $amount } { $unit } { $product } na { $volume }: daje { $brings } mg/l, razem EC do { $ec } mS/cm.
supplement-cut-ec-ceiling = Mniej, niż trzeba: więcej przekroczyłoby EC, które znoszą twoje rośliny.
supplement-cut-nitrogen-ceiling = Mniej, niż trzeba: azotu byłoby więcej, niż znoszą twoje rośliny.
supplement-no-room-ec-ceiling = Nie ma miejsca na dodatek: woda z nawozem już sięga EC, które znoszą twoje rośliny. Nawoź słabiej albo weź czystszą wodę.
supplement-no-room-nitrogen-ceiling = Nie ma miejsca na dodatek z azotem: nawóz daje już wszystko, co znoszą twoje rośliny. Nawoź słabiej albo weź dodatek bez azotu.
supplement-left = Dalej brakuje { $what }: weź taki, który też to ma.
supplement-how = Dodaj do pełnej konewki po nawozie, nigdy razem jako koncentraty. Jego azot liczy się jak nawóz.
why-supplement-target = { $element }: przy tym azocie potrzeba { $mg_l } mg/l

# --- pictures ---
picture-missing = (Obrazka tu nie narysuję: prowadzący bota musi doinstalować rysowanie.)
picture-north = Nie wiem, gdzie mieszkasz, więc pory roku są jak na północy. Napisz np.: moje miasto to Gdynia.
picture-year-head = { $year }, { $count } { $count ->
    [one] roślina
    [few] rośliny
   *[other] roślin
}: do dziś co było, dalej co będzie.
picture-year-line = - { $plants }: { $parts }.
picture-year-part = { $what } ({ $months })
picture-year-alt = Rok { $year } w tabeli: { $count } { $count ->
    [one] wiersz
    [few] wiersze
   *[other] wierszy
} roślin po miesiącach, co każda dostała i dostanie
picture-cell = { $cell ->
    [fed] był nawóz
    [watered] była czysta woda
    [feed] nawozić
    [less] nawozić mniej
    [clear] tylko czysta woda
    [rest] spoczynek
    [flushed] przepłukane
    [differ] różnie
   *[blank] nic zapisanego
}
picture-salts-unit = mS/cm w mokrej doniczce
picture-salts-between = { $low } do { $high }
picture-salts-limit = limit { $limit }
picture-salts-lane = { $kind ->
    [fed] nawóz
    [clear] czysta woda
    [flush] płukanie
   *[reading] odciek, mS/cm
}
picture-salts-alt = Sole w doniczce: { $plant }{ $first ->
    [none] {""}
   *[other] , od { $first }
}: teraz około { $ec } mS/cm, limit { $limit }
picture-card-amount = { $amount } { $unit ->
    [tsp] łyżeczki
   *[other] { $unit }
}
picture-card-of = na { $volume }: { $product }
picture-card-heading = { $part ->
    [measure] Odmierz
    [why] Skąd to
   *[mind] Uważaj
}
picture-card-sum = razem { $strength } pełnej dawki
picture-card-alt = Karta do wysłania: { $amount } { $of }
