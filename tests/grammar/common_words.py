"""Everyday words of each language, the most frequent as we know them: from memory, no count."""

from __future__ import annotations

_WORDS = {
    "en": """
        the be to of and a in that have it for not on with he as you do at this but his by
        from they we say her she or an will my one all would there their what so up out if
        about who get which go me when make can like time no just him know take people
        into year your good some could them see other than then now look only come its
        over think also back after use two how our work first well way even new want
        because any these give day most us was is are been had were said did many more
        very where much before too same right mean old great still such those every last
        long little own while never home hand high large must big group begin life always
        both mark often until next hard near seem together white children side feet car
        mile night walk sea river carry state once book hear stop without second late miss
        idea enough eat face watch far real almost let above girl sometimes mountain cut
        young talk soon list song leave family body music color stand sun question fish
        area problem complete room knew since ever piece told usually friend easy heard
        order red door sure become top ship across today during short better best however
        low hours black product happened whole measure early wind rock space covered fast
        several hold himself toward five step morning passed true hundred against pattern
        table north slowly money map farm pulled draw voice seen cold cried plan notice
        south sing war ground fall king town unit figure certain field travel wood fire
        upon done english road half ten fly gave box finally wait correct quickly person
        became shown minutes strong verb stars front feel fact inches street decided
        contain course surface produce building ocean class note nothing rest carefully
        scientists inside wheels stay green known island week less machine base ago stood
        plane system behind ran round boat game force brought understand warm common bring
        explain dry though language shape deep thousands yes clear equation yet government
        filled heat full hot check object am rule among noun power cannot able size dark
        ball material special heavy fine pair circle include built matter square syllables
        perhaps bill felt suddenly test direction center farmers ready anything divided
        general energy subject europe moon region return believe dance members picked
        simple cells paint mind love cause rain exercise eggs train blue wish drop
        developed window difference distance heart site sum summer wall forest probably
        permanent shade stuck florida portion wand juno tapas siesta prise litter moose
        lava mate pole pale gala rate mine sane fort
    """,
    "de": """
        der die und in den von zu das mit sich des auf für ist im dem nicht ein eine als
        auch es an werden aus er hat dass sie nach wird bei einer um am sind noch wie
        einem über einen so zum war haben nur oder aber vor zur bis mehr durch man sein
        wurde sei prozent hatte kann gegen vom können schon wenn habe seine ihre dann
        unter wir soll ich eines jahr zwei jahren diese dieser wieder keine uhr seiner
        worden will zwischen immer was sagte gibt alle seit muss wurden beim doch jetzt
        drei damit ja sehr ohne hier ihr ihn neue drauf anderen ihm jedoch weil etwa gut
        heute nun rund ob denn dort weiter ihren zeit viel mich da kein menschen sollte
        würde ganz jeder mann frau kind haus hand land leben welt tag stadt weg teil
        arbeit frage geld fall grund name seite ende wand tür fenster tisch stuhl bett
        auto straße platz wald berg fluss meer himmel sonne mond stern luft feuer erde
        stein baum blume gras tier hund katze vogel fisch pferd brot milch ei fleisch obst
        apfel birne wein bier kaffee tee zucker salz kopf auge ohr nase mund herz bein fuß
        finger haar blut freund mutter vater bruder schwester sohn tochter schule buch
        wort satz zahl brief bild lied spiel sport film musik farbe rot blau grün gelb
        schwarz weiß groß klein alt jung neu lang kurz hoch tief breit schmal dick dünn
        stark schwach schnell langsam warm kalt heiß nass trocken hell dunkel laut leise
        leicht schwer hart weich voll leer sauber schmutzig offen richtig falsch einfach
        schwierig wichtig möglich nötig gehen kommen stehen sitzen liegen laufen fahren
        fliegen schwimmen essen trinken schlafen lesen schreiben sprechen hören sehen
        fühlen denken wissen glauben hoffen lieben hassen kaufen bauen helfen suchen
        finden nehmen geben bringen holen zeigen fragen antworten warten bleiben öffnen
        schließen anfangen aufhören dürfen mögen müssen wollen rat rate plant pack bote
        boote tacho mayo florida norma juno siesta deko plaque pinte pole lava gala note
        posten mate regal sage fort
    """,
    "es": """
        de la que el en y a los se del las un por con no una su para es al lo como más o
        pero sus le ha me si sin sobre este ya entre cuando todo esta ser son dos también
        fue había era muy años hasta desde está mi porque qué sólo han yo hay vez puede
        todos así nos ni parte tiene él uno donde bien tiempo mismo ese ahora cada e vida
        otro después te otros aunque esa eso hace otra gobierno tan durante siempre día
        tanto ella tres sí dijo sido gran país según menos mundo año antes estado contra
        sino forma caso nada hacer general estaba poco estos presidente mayor ante unos
        les algo hacia casa ellos ayer hecho primera mucho mientras además quien momento
        millones esto españa hombre están pues hoy lugar madrid nacional trabajo otras
        mejor nuevo decir algunos entonces todas días debe política cómo casi toda tal
        luego pasado primer medio va estas sea tenía nunca poder aquí ver veces embargo
        partido personas grupo cuenta pueden tienen misma nueva cual fueron mujer frente
        josé tras cosas fin ciudad he social manera tener sistema será historia muchos
        juan tipo cuatro dentro nuestro punto dice ello cualquier noche aún agua parece
        haber situación fuera bajo grandes nuestra ejemplo acuerdo habían usted estados
        hizo nadie países horas posible tarde ley importante guerra desarrollo proceso
        realidad sentido lado mí tu cambio allí mano eran estar san número sociedad unas
        centro padre gente final relación cuerpo obra incluso través último madre mis modo
        problema cinco carlos hombres información ojos muerte nombre algunas público
        mujeres siglo todavía meses mañana esos nosotros hora muchas pueblo alguna dar don
        da tú derecho verdad maría unidos podría sería junto cabeza aquel luis cuanto
        tierra equipo segundo director dicho cierto casos manos nivel podía familia largo
        partir falta llegar propio ministro cosa primero seguridad hemos mal trata algún
        tuvo respecto semana varios real sé voz paso señor mil quienes proyecto mercado
        mayoría luz claro iba éste pesetas orden español buena quiere aquella programa
        palabras internacional esas segunda empresa puesto ahí propia libro igual político
        persona últimos ellas total creo tengo dios española condiciones méxico fuerza
        solo único acción amor policía puerta pesar zona sabe calle interior tampoco
        música ningún vista campo buen hubiera saber obras razón niños presencia tema
        dinero comisión servicio hijo última ciencia late lava norma bulbo permanente
        pinto julia juno wanda nota mate pala gala pole plaza fort sale
    """,
    "pl": """
        i w nie na się z do to że jest o jak a co ale po tak za od już jego jej czy był
        dla ma tylko przez go było być może ten jeszcze tego są mnie ja ich ze sobie który
        tym mi pan przy kiedy nic gdy bardzo te czas teraz tu jako bo pod ta bez nawet
        wszystko nim on więc tam tej także ani coś lat jednak dobrze sam nad by ona kto ty
        my wy oni jestem masz mam mamy mają miał miała będzie będę trzeba można nigdy
        zawsze często czasem potem przed między gdzie dlaczego ile jaki jaka jakie która
        które kilka wiele mało dużo dwa trzy cztery pięć sześć siedem osiem dziewięć
        dziesięć sto pierwszy drugi trzeci nowy stary dobry zły duży mały wielki długi
        krótki wysoki niski szybki wolny łatwy trudny piękny brzydki młody biały czarny
        czerwony zielony niebieski żółty ciepły zimny gorący mokry suchy jasny ciemny
        ciężki lekki człowiek ludzie kobieta mężczyzna dziecko dzieci rodzina matka ojciec
        brat siostra syn córka przyjaciel dom mieszkanie pokój okno drzwi stół krzesło
        łóżko szafa lampa ściana podłoga ulica miasto wieś kraj świat ziemia niebo słońce
        księżyc gwiazda powietrze ogień woda morze rzeka jezioro góra las drzewo kwiat
        trawa zwierzę pies kot ptak ryba koń chleb mleko ser jajko mięso owoc jabłko
        warzywo kawa herbata cukier sól głowa oko ucho nos usta ręka noga serce krew włosy
        dzień noc rano wieczór godzina minuta tydzień miesiąc rok praca szkoła książka
        słowo słów list obraz muzyka film gra pieniądze sklep samochód pociąg droga most
        plac życie śmierć miłość wojna prawda historia sprawa pytanie odpowiedź problem
        pomoc siła prawo część koniec początek miejsce strona sposób iść jechać biec stać
        siedzieć leżeć spać jeść pić czytać pisać mówić słuchać widzieć patrzeć myśleć
        wiedzieć wierzyć lubić kochać chcieć móc musieć robić dać wziąć kupić szukać
        znaleźć czekać pytać pomagać otworzyć zamknąć zacząć skończyć fale mata slab snów
        sen rata ratę raty płaca siesta florida permanent puder reszta parada pole rola
        lawa mole gala note pala
    """,
}

COMMON: dict[str, tuple[str, ...]] = {code: tuple(text.split()) for code, text in _WORDS.items()}
