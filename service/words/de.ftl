### Deutsch, wie gestrickt wird. `service/language.py` sagt, wie Meldungen ihre Werte bekommen.

## Around and inside other sentences

sizes =
    .only = { $sizes_number ->
        [one] Größe
       *[other] Größen
    } { $sizes }: { $sentence }
    .apart = Die Größen sind hier zu verschieden, um sie zusammen zu beschreiben: Jede ist für sich beschrieben.
    .labels = { $sizes_number ->
        [one] Größe
       *[other] Größen
    }: { $sizes }.
    .to_fit = Passend für { measure.bust } { measured.length }.
    .ease = { $kind ->
        [less] Der Pullover ist { measured.length } enger als der Körper ({ measure.bust }) und dehnt sich beim Tragen.
        [either] Der Pullover ist { measured.length } weiter als der Körper ({ measure.bust }); bei Zahlen unter 0 ist
            er um so viel enger.
       *[more] Mehrweite ({ measure.bust }): { measured.length }. Um so viel ist der Pullover weiter als der Körper.
    }
    .run = Wo sich die Größen unterscheiden, gilt die erste Zahl für Größe { $first }, { $others_number ->
        [one] die Zahl in Klammern für Größe { $others }.
       *[other] die Zahlen in Klammern gelten der Reihe nach für { $others }.
    } Eine einzelne Zahl gilt für alle Größen.
    .dash = „{ $dash }“ anstelle einer Zahl heißt: Das gibt es in dieser Größe nicht. Den Satz oder diesen Teil davon
        auslassen.
    .impossible = { $sizes_number ->
        [one] Größe { $sizes } lässt
       *[other] Die Größen { $sizes } lassen
    } sich so nicht stricken.

span =
    .rounds = { $rounds_number ->
        [one] Runde { $last }
        [2] Runden { $first } und { $last }
       *[other] Runden { $first } bis { $last }
    }

edges =
    .back = des Rückenteils
    .front = des Vorderteils
    .sleeve = der Ärmel

section =
    .back = Rückenteil
    .front = Vorderteil
    .half_back = halbes Rückenteil
    .half_front = halbes Vorderteil
    .first_sleeve = erster Ärmel
    .second_sleeve = zweiter Ärmel
    .line = Raglanlinie

measured =
    .length = { $length_cm } cm / { $length_inch } Zoll

times =
    .all = { $times_number ->
        [one] einmal
       *[other] insgesamt { $times }-mal
    }

ribbed =
    .hem = Bund
    .cuff = Ärmelbündchen
    .band = Halsbündchen

ribbing =
    .knit_purl = Rippenmuster { $knit } rechts, { $purl } links
    .any = Rippenmuster

## Front matter

finished_measurements =
    .bust = { title.finished_bust }: { measured.length }.
    .upper_arm = { title.finished_upper_arm }: { measured.length }.
    .neck = { title.finished_neck }: { measured.length }.
    .depth = { title.finished_depth }: { measured.length }.
    .hem = { title.finished_hem }: { measured.length }.
    .wrist = { title.finished_wrist }: { measured.length }.
    .body_length = { title.finished_body_length }: { measured.length }.
    .front_length = { title.finished_front_length }: { measured.length }.
    .front_extra = { title.finished_front_extra }: { measured.length }.
    .sleeve_length = { title.finished_sleeve_length }: { measured.length }.
    .total_length = { title.finished_total_length }: { measured.length }.
    .reach = { title.finished_reach }: { measured.length }.

gauge =
    .counts = { $stitches } Maschen und { $rounds } Runden auf 10 × 10 cm (10 cm = 4 Zoll)
    .plain = Glatt rechts, in Runden gestrickt und gespannt: { gauge.counts }.
    .stranded = Nach der Strickschrift, in Runden gestrickt und gespannt: { gauge.counts }.
    .rib = Im Rippenmuster, in Runden gestrickt und gespannt: { gauge.counts }.

needles =
    .range = Mit Nadelstärke { $thinnest } bis { $thickest } mm (US { $thinnest_us } bis { $thickest_us }) beginnen und
        die Stärke nehmen, mit der die Maschenprobe stimmt, gleich welche es ist.
    .thick = Mit Nadelstärke { $thinnest } mm (US { $thinnest_us }) oder dicker beginnen und die Stärke nehmen, mit der
        die Maschenprobe stimmt, gleich welche es ist.
    .stranded = Für die Strickschrift die Nadeln nehmen, mit denen deren Maschenprobe stimmt.
    .rib = { $kind ->
        [gauge] Für Bund, Ärmelbündchen und Halsbündchen die Nadeln nehmen, mit denen die Maschenprobe des Rippenmusters
            stimmt.
       *[thinner] Für Bund, Ärmelbündchen und Halsbündchen Nadeln nehmen, die eine oder zwei Stärken dünner sind.
    }
    .circular = Rundstricknadeln für Passe, Rumpf, Bund und Halsbündchen, jede etwas kürzer als der Umfang des Gestricks
        auf ihr.
    .double_pointed = Nadelspiele in denselben Stärken für Ärmel und Ärmelbündchen und überall, wo eine Runde für eine
        Rundstricknadel zu klein ist.

yarn =
    .whose = { $colours ->
        [one] Garn
       *[several] Garn in { $colour }
    }
    .amount = { yarn.whose }: etwa { $grams } g, das sind { $metres } m / { $yards } Yards.
    .strand = { $strands ->
        [one] { "" }
        [named] , { $name }
       *[numbered] , Faden { $strand }
    }
    .balls = { yarn.whose }{ yarn.strand }, Einkauf mit { $margin } % Reserve: { $balls } Knäuel zu { $ball_grams } g.
    .basis = { $basis ->
        [measured] Die Mengen der Maschen sind nach einem gewogenen Probestück berechnet, Anschlag, Abketten und
            Fadenenden nach üblichen Werten.
       *[estimated] Die Mengen sind nach der Breite einer Masche und üblichen Werten für Rippenmuster, Spannfäden,
            Anschlag, Abketten und Fadenenden geschätzt.
    }

notions =
    .markers = { $markers } Maschenmarkierer, einer davon anders als die übrigen, für den Rundenbeginn.
    .waste_yarn = Hilfsfaden oder 2 Maschenhalter für die Maschen der Ärmel.
    .tapestry_needle = Eine Wollnadel für die Fadenenden.

terms =
    .stockinette = Glatt rechts: in Runden alle Maschen rechts stricken{ $rows ->
        [some] ; in Hinreihen rechts, in Rückreihen links stricken
       *[none] { "" }
    }. So wird gestrickt, wo kein anderes Muster genannt ist.
    .rib = { ribbing.knit_purl }: { $knit } { $knit_number ->
        [one] Masche
       *[other] Maschen
    } rechts und { $purl } { $purl_number ->
        [one] Masche
       *[other] Maschen
    } links im Wechsel stricken.
    .every = „Jeweils die letzte von { $every } Runden“: { $plain } { $plain_number ->
        [one] Runde
       *[other] Runden
    } ohne Zu- und Abnahmen stricken, dann die Zunahme- oder Abnahmerunde.
    .cycle = „Im Wechsel { $cycle } Runden“: jeweils die letzte davon als Zunahme- oder Abnahmerunde, die anderen ohne
        Zu- und Abnahmen stricken. Die ganze Folge ist jede dieser Rundenzahlen einmal.
    .right_side = Vorderseite: die Seite, die beim Tragen außen liegt.
    .wrong_side = Rückseite: die andere Seite. In einer Hinreihe zeigt beim Stricken die Vorderseite nach vorn, in einer
        Rückreihe die Rückseite.
    .make_one = Zunahme aus dem Querfaden zwischen zwei Maschen: linksgeneigt den Querfaden von vorn nach hinten auf die
        linke Nadel heben und rechts verschränkt stricken; rechtsgeneigt von hinten nach vorn heben und rechts stricken.
    .lifted = Zunahme aus der Masche der Vorrunde: linksgeneigt das linke Maschenglied der Masche, die zwei Runden unter
        der letzten Masche auf der rechten Nadel liegt, auf die linke Nadel heben und rechts verschränkt stricken;
        rechtsgeneigt das rechte Maschenglied der Masche unter der nächsten auf die linke Nadel heben und rechts
        stricken, danach die nächste Masche.
    .slip_slip_knit = Linksgeneigte Abnahme: 2 Maschen einzeln wie zum Rechtsstricken abheben, mit der linken Nadel von
        vorn in beide einstechen und sie rechts verschränkt zusammenstricken.
    .knit_together = Rechtsgeneigte Abnahme: 2 Maschen rechts zusammenstricken.
    .short_row = Verkürzte Reihe: eine Reihe, bei der vor dem Ende gewendet wird, sodass ein Teil des Gestricks höher
        wird als der Rest.
    .double_stitch = So lässt sich wenden: wenden, den Faden nach vorn legen, 1 Masche wie zum Linksstricken abheben und
        den Faden über die Nadel nach hinten ziehen, bis zwei Maschenglieder auf der Nadel liegen (Doppelmasche); danach
        den Faden dorthin legen, wo die nächste Masche ihn braucht. Um die Lücke zu schließen, beide Maschenglieder
        zusammen als 1 Masche abstricken.
    .pick_up = Auffassen: auf der Vorderseite von vorn nach hinten in die Kante einstechen und den Faden als neue Masche
        durchholen.
    .float = Spannfaden: der Faden einer Farbe, der locker über die Rückseite läuft, während eine andere Farbe gestrickt
        wird.

own_gauge =
    .gauge = Mit der eigenen Maschenprobe, { gauge.counts }, hat der Pullover bei den angegebenen Maschen und Runden
        diese Maße.
    .bust = { finished_measurements.bust }
    .depth = { finished_measurements.depth }
    .body_length = { finished_measurements.body_length }
    .sleeve_length = { finished_measurements.sleeve_length }
    .same = Die Längen des Entwurfs ergeben sich auf die Runde genau: keine Runden ändern.
    .rounds = { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } ohne Zu- und Abnahmen
    .add = { $part ->
        [yoke] Für die Passenhöhe des Entwurfs nach der letzten Zunahmerunde der Passe { own_gauge.rounds } mehr
            stricken.
        [body] Für die Rumpflänge des Entwurfs vor dem Bund { own_gauge.rounds } mehr stricken.
       *[sleeve] Für die Ärmellänge des Entwurfs an jedem Ärmel vor dem Ärmelbündchen { own_gauge.rounds } mehr
            stricken.
    }
    .leave_out = { $part ->
        [yoke] Für die Passenhöhe des Entwurfs in der Passe gleichmäßig verteilt { own_gauge.rounds } weglassen.
        [body] Für die Rumpflänge des Entwurfs im Rumpf gleichmäßig verteilt { own_gauge.rounds } weglassen.
       *[sleeve] Für die Ärmellänge des Entwurfs in jedem Ärmel gleichmäßig verteilt { own_gauge.rounds } weglassen.
    }
    .wider = Dafür in der Passe die Zunahmen in größeren Abständen gleichmäßig auf alle Runden verteilen.
    .closer = Dafür in der Passe die Zunahmen in kleineren Abständen arbeiten, in jeder Runde, wo es nötig ist.
    .double_body = Dafür in der Passe an jeder Kante von Rücken- und Vorderteil in so vielen Zunahmerunden wie nötig 2
        Maschen statt 1 zunehmen, in den angegebenen Abständen.
    .nearest = Für die fertige { measure.bust } der Größe { $sizes } mit der eigenen Maschenprobe Größe { $nearest }
        stricken.

## Neck

neck =
    .colour = In { $colour } anschlagen. Auch alles, wofür keine andere Farbe genannt ist, wird darin gestrickt.
    .cast_on_joined = { $stitches } Maschen anschlagen und zur Runde schließen, die Vorderseite außen, dabei die Maschen
        nicht verdrehen. Einen Maschenmarkierer für den Rundenbeginn einhängen.
    .cast_on_flat = { $stitches } Maschen anschlagen. Noch nicht zur Runde schließen: Die beiden Enden liegen in der
        vorderen Mitte.
    .place_markers = { $way ->
        [flat] Auf der Vorderseite der Arbeit Maschenmarkierer einhängen; dabei vom Anfang einer Hinreihe an zählen und
            dann von Maschenmarkierer zu Maschenmarkierer:
       *[joined] Vier weitere Maschenmarkierer einhängen; dabei vom Rundenbeginn an zählen und dann von Maschenmarkierer
            zu Maschenmarkierer:
    }
    .marker = { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } ({ $parts }) abzählen und Maschenmarkierer { $marker } einhängen.
    .marker_here = Maschenmarkierer { $marker } an derselben Stelle einhängen.
    .start_marker = { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } ({ $parts }) abzählen und den Maschenmarkierer für den Rundenbeginn einhängen.
    .start_here = Den Maschenmarkierer für den Rundenbeginn an derselben Stelle einhängen.
    .rest = Bis { $way ->
        [flat] zum anderen Ende
       *[joined] zum Rundenbeginn
    } { $stitches_number ->
        [one] bleibt { $stitches } Masche
       *[other] bleiben { $stitches } Maschen
    } ({ $parts }).
    .short_rows = Das Rückenteil am Halsausschnitt mit { $rows } verkürzten Reihen ohne Zunahmen erhöhen. { $begin ->
        [right] Reihe 1 ist eine Hinreihe und beginnt in der vorderen Mitte.
        [wrong] Reihe 1 ist eine Rückreihe und beginnt in der vorderen Mitte.
       *[start] Reihe 1 ist eine Hinreihe und beginnt am Rundenbeginn; die Reihen gehen über ihn hin und her.
    }
    .short_row_method = In einer vertrauten Technik für verkürzte Reihen wenden und die Lücke an jeder Wendestelle
        schließen, sobald eine spätere Reihe oder Runde sie erreicht. Maschen nach einem Maschenmarkierer werden von ihm
        aus in Strickrichtung gezählt.
    .turn = Reihe { $row } ({ $side ->
        [wrong] Rückreihe
       *[right] Hinreihe
    }): Bis { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } nach Maschenmarkierer { $marker } stricken, wenden.
    .last_row = { $kind ->
        [flat] Letzte Reihe (Hinreihe): Bis zum Ende der Reihe stricken. In der vorderen Mitte zur Runde schließen, die
            Vorderseite außen, und bis zum Rundenbeginn weiterstricken. Die letzte Reihe und diese Maschen werden ohne
            Zunahmen gestrickt und zählen nicht als Runde der Passe.
        [right] Letzte Reihe (Hinreihe): Ohne Zunahmen bis zum Ende der Reihe stricken. Sie zählt nicht als Runde der
            Passe.
        [wrong] Letzte Reihe (Rückreihe): Ohne Zunahmen bis zum Ende der Reihe stricken. Sie zählt nicht als Runde der
            Passe.
       *[joined] Letzte Reihe (Hinreihe): Bis zum Rundenbeginn stricken. In Runde 1 der Passe auf jeder Seite die letzte
            Lücke schließen.
    }
    .raised = Durch die verkürzten Reihen liegt die Ausschnittkante hinten { measured.length } höher als vorn.
    .drop = Die { $rows_number ->
        [one] erste
       *[other] ersten
    } { $rows } { $rows_number ->
        [one] Runde
       *[other] Runden
    } der Passe mit ihren Zunahmen in Reihen hin und her stricken; { $side ->
        [wrong] Reihe 1 ist eine Rückreihe.
        [right] Reihe 1 ist eine Hinreihe.
       *[last] die letzte davon ist eine Hinreihe.
    }
    .drop_edges = In { $times_number ->
        [one] der letzten { $times } Hinreihe
       *[other] jeder der letzten { $times } Hinreihen
    } davon 2 weitere Maschen zunehmen: 1 nach der ersten Masche der Reihe (linksgeneigt) und 1 vor ihrer letzten Masche
        (rechtsgeneigt).
    .drop_join = Am Ende der letzten dieser Reihen { $stitches_number ->
        [0] zur Runde schließen,
        [one] { $stitches } Masche für die vordere Mitte neu anschlagen und zur Runde schließen,
       *[other] { $stitches } Maschen für die vordere Mitte neu anschlagen und zur Runde schließen,
    } die Vorderseite außen. Ohne Zunahmen bis zum Rundenbeginn weiterstricken und mit Runde { $round } fortfahren.
    .sections = Es sind nun { $stitches } Maschen auf den Nadeln: { $back } für das Rückenteil, { $front } für das
        Vorderteil, { $sleeve } für jeden Ärmel{ $line_number ->
            [0] .
           *[other] , { $line } für jede Raglanlinie.
        }
    .edge = Die Ausschnittkante misst ungedehnt rundherum { measured.length }.

## Chart

chart_section =
    .back = das Rückenteil
    .front = das Vorderteil
    .sleeve = jeder Ärmel

plain_place =
    .before = die Runden vor der Strickschrift
    .after = die Runden nach der Strickschrift
    .short_rows = die verkürzten Reihen am Halsausschnitt

chart =
    .rows = In Runde { $round }, von der ersten Runde der Passe an gezählt, Reihe 1 der Strickschrift stricken und in
        jeder weiteren Runde die nächste Reihe, auch in Rumpf und Ärmeln.
    .again = Nach Reihe { $height } wieder mit Reihe 1 beginnen.
    .once = Nach Reihe { $height } ist die Strickschrift zu Ende gestrickt.
    .read = Jede Reihe von rechts nach links lesen. In jedem Abschnitt mit der unten genannten Spalte beginnen, bis
        Spalte { $width } stricken und die Spalten 1 bis { $width } bis zum Ende des Abschnitts wiederholen.
    .center = Auf Spalte { $column } { $sections_number ->
        [one] hat { $sections } seine
       *[other] haben { $sections } ihre
    } Mitte.
    .center_between = Zwischen Spalte { $column } und Spalte { $next } { $sections_number ->
        [one] hat { $sections } seine
       *[other] haben { $sections } ihre
    } Mitte.
    .start = In Runde { $round } { $sections_number ->
        [one] beginnt
       *[other] beginnen
    } { $sections } mit Spalte { $column }.
    .moves_back = Mit jeder Zunahme am Anfang eines Abschnitts rückt seine erste Spalte um 1 zurück: von Spalte 2 auf
        Spalte 1 und von Spalte 1 auf Spalte { $width }.
    .moves_on = Mit jeder Abnahme am Anfang eines Abschnitts rückt seine erste Spalte um 1 weiter: von Spalte 1 auf
        Spalte 2 und von Spalte { $width } auf Spalte 1.
    .flat = Solange die Passe in Reihen gestrickt wird, die Strickschrift in Rückreihen von links nach rechts lesen.
    .parted = Bis seine Mitte angeschlagen ist, besteht das Vorderteil aus zwei Teilen. In Hinreihen beginnt der Teil
        nach dem ersten Ärmel mit der ersten Spalte des Vorderteils. Der Teil vor dem zweiten Ärmel endet mit der
        letzten Spalte des Vorderteils: In Reihe { $round } ist das Spalte { $column }, und mit jeder Zunahme am Ende
        des Vorderteils rückt sie um 1 weiter.
    .body = Runde 1 des Rumpfes ist Reihe { $row } der Strickschrift. Die Spalten laufen aus der Passe über die Maschen
        der Achseln weiter.
    .body_back = Von Runde 1 an beginnt das Rückenteil { shape.start } der zweiten Achsel, mit Spalte { $column }.
    .body_front = Von Runde 1 an beginnt das Vorderteil { shape.start } der ersten Achsel, mit Spalte { $column }.
    .sleeve = Runde 1 jedes Ärmels ist Reihe { $row } der Strickschrift. Die Spalten laufen aus der Passe über die
        Maschen der Achsel weiter.
    .sleeve_start = Von Runde 1 an beginnt jeder Ärmel { shape.start } seiner Achsel, wo seine Runden beginnen, mit
        Spalte { $column }.
    .whole_motifs = Von Spalte 1 an sind je { $columns } Spalten ein Motiv. Nur ganze Motive stricken: Wo ein Abschnitt
        innerhalb eines Motivs beginnt oder endet, die Maschen dieses Motivs in { $colour } stricken, bis es ganz
        Platz hat.
    .whole_chart = Die Spalten 1 bis { $columns } sind ein Motiv. Nur ganze Motive stricken: Wo ein Abschnitt innerhalb
        eines Motivs beginnt oder endet, die Maschen dieses Motivs in { $colour } stricken, bis es ganz Platz hat.
    .motifs = Von Runde { $round } an { $sections_number ->
        [one] hat { $sections }
       *[other] haben { $sections }
    } Platz für { $motifs } { $motifs_number ->
        [one] ganzes Motiv
       *[other] ganze Motive
    }.
    .body_motifs = In Runde 1 des Rumpfes { $sections_number ->
        [one] hat { $sections }
       *[other] haben { $sections }
    } Platz für { $motifs } { $motifs_number ->
        [one] ganzes Motiv
       *[other] ganze Motive
    }.
    .sleeve_motifs = In seiner Runde 1 unter der Achsel hat jeder Ärmel Platz für { $motifs } { $motifs_number ->
        [one] ganzes Motiv
       *[other] ganze Motive
    }.
    .narrow_body = Rücken- und Vorderteil nur in { $colour } stricken, solange sie weniger als { $stitches } Maschen
        haben.
    .narrow_sleeve = Jeden Ärmel nur in { $colour } stricken, solange er weniger als { $stitches } Maschen hat.
    .plain = In { $colour } stricken: { $places }.
    .lines = Die Raglanmaschen { $rounds ->
        [last_row] bis zur letzten Reihe der Strickschrift in { $colour } stricken.
       *[all] in { $colour } stricken.
    }
    .seams = Die Nahtmaschen der Achseln { $rounds ->
        [last_row] bis zur letzten Reihe der Strickschrift in { $colour } stricken.
       *[all] in { $colour } stricken.
    }{ $seam ->
        [purl] {" "}Sie in jeder Runde links stricken.
       *[knit] { "" }
    }
    .floats = Spannfäden über mehr als { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } auf der Rückseite verkreuzen, in aufeinanderfolgenden Runden nicht an derselben Stelle.
    .floats_young = In Kleidung für Babys und kleine Kinder können Finger und Zehen an Spannfäden hängen bleiben: jeden
        Spannfaden über mehr als { $stitches } { $stitches_number ->
            [one] Masche
           *[other] Maschen
        } oder { measured.length } verkreuzen oder das Kleidungsstück füttern.

## Yoke

increases =
    .where = { $kind ->
        [twice] je 2 Maschen an jeder Kante { $twice }
        [both] je 2 Maschen an jeder Kante { $twice } und je 1 Masche an jeder Kante { $once }
       *[once] je 1 Masche an jeder Kante { $once }
    }
    .rounds = { $every_number ->
        [1] { $times_number ->
            [one] Eine Zunahmerunde stricken.
           *[other] { $times } Zunahmerunden direkt nacheinander stricken.
        }
       *[other] { $times_number ->
            [one] { $every } Runden stricken, die letzte davon als Zunahmerunde.
           *[other] Jeweils die letzte von { $every } Runden als Zunahmerunde stricken, insgesamt { $times }-mal.
        }
    }
    .cycle = Im Wechsel { $cycle } Runden stricken, jeweils die letzte davon als Zunahmerunde; diese ganze Folge
        { times.all } stricken.
    .each = In { $times_number ->
        [one] dieser Zunahmerunde
       *[other] jeder dieser Zunahmerunden
    } { increases.where } zunehmen, zusammen { $more }. Es sind nun { $stitches } Maschen auf den Nadeln.

yoke =
    .lines = { $line_number ->
        [one] Die Masche nach jedem der Maschenmarkierer 1 bis 4 ist eine Raglanlinie.
       *[other] Die { $line } Maschen nach jedem der Maschenmarkierer 1 bis 4 sind eine Raglanlinie.
    } Rückenteil, Ärmel und Vorderteil beginnen jeweils nach einer Raglanlinie und enden vor einem Maschenmarkierer: Das
        sind ihre Kanten. Die Maschenmarkierer jeweils abheben.
    .no_lines = Die Raglanlinien verlaufen an den Maschenmarkierern 1 bis 4. Rückenteil, Ärmel und Vorderteil beginnen
        jeweils nach einem Maschenmarkierer und enden vor dem nächsten: Das sind ihre Kanten. Die Maschenmarkierer
        jeweils abheben.
    .leaning = Die Zunahmen nach Belieben aus der Masche der Vorrunde oder aus dem Querfaden arbeiten: linksgeneigt am
        Anfang eines Abschnitts, rechtsgeneigt an seinem Ende. Für eine Zunahme aus der Vorrunde die erste oder letzte
        Masche des Abschnitts nehmen, nie eine Raglanmasche.
    .doubled = Wo in einer Zunahmerunde an einer Kante 2 Maschen zugenommen werden, zwischen den beiden Zunahmen 1
        Masche stricken.
    .after_drop = Die ersten { $rows } dieser Runden sind die Reihen, die am Halsausschnitt hin und her gestrickt
        werden.
    .wrong_side = In Rückreihen die Zunahmen links stricken, und zwar so, dass sie sich, von der Vorderseite gesehen,
        wie in den Hinreihen neigen.
    .increase = { increases.rounds } { increases.each }
    .cycle = { increases.cycle } { increases.each }
    .plain = { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } ohne Zunahmen stricken.
    .rounds_increase = { span.rounds }: { increases.rounds } { increases.each }
    .rounds_cycle = { span.rounds }: { increases.cycle } { increases.each }
    .rounds_steps = { span.rounds }: Diese Schritte { times.all } arbeiten: { $steps }. Es sind nun { $stitches }
        Maschen auf den Nadeln.
    .rounds_listed = In { $rounds_number ->
        [one] Runde
       *[other] den Runden
    } { $rounds } { increases.where } zunehmen, in jeder dieser Runden zusammen { $more } Maschen.
    .rounds_other = Alle anderen Runden ohne Zunahmen stricken. Nach Runde { $last } sind { $stitches } Maschen auf den
        Nadeln.
    .rounds_plain = { span.rounds }: Ohne Zunahmen stricken.
    .depth = Die Passe hat { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    }. Sie misst ab der Anschlagkante { measured.length }, verkürzte Reihen nicht mitgerechnet.

step =
    .increase = { $rounds_number ->
        [0] (in der nächsten Runde { increases.where } zunehmen, zusammen { $more })
        [one] (1 Runde ohne Zunahmen stricken, in der nächsten Runde { increases.where } zunehmen, zusammen { $more })
       *[other] ({ $rounds } Runden ohne Zunahmen stricken, in der nächsten Runde { increases.where } zunehmen, zusammen
            { $more })
    }

## Split

split =
    .colour = Die neuen Maschen an beiden Achseln werden in { $colour } angeschlagen.
    .begin = In der nächsten Runde, das ist Runde 1 des Rumpfes, die { $stitches } Maschen aufteilen:
    .first_sleeve = Bis Maschenmarkierer 1 { $past_number ->
        [0] { "" }
        [one] und 1 Masche darüber hinaus{" "}
       *[other] und { $past } Maschen darüber hinaus{" "}
    }stricken. Die nächsten { $held } Maschen für den ersten Ärmel auf einem Hilfsfaden stilllegen{ split.underarm }
    .underarm = { $underarm_number ->
        [0] .
        [one] {" "}und für seine Achsel 1 Masche neu anschlagen.
       *[other] {" "}und für seine Achsel { $underarm } Maschen neu anschlagen.
    }
    .front = Die nächsten { $stitches } Maschen für das Vorderteil stricken.
    .second_sleeve = Die nächsten { $held } Maschen für den zweiten Ärmel auf einem Hilfsfaden
        stilllegen{ split.underarm }
    .start_back = Zur Runde schließen und bis zum Rundenbeginn in der rückwärtigen Mitte weiterstricken. Dort beginnen
        auch die Runden des Rumpfes.
    .start_underarm = Zur Runde schließen. Einen Maschenmarkierer für den Rundenbeginn einhängen, und zwar
        { shape.start } der zweiten Achsel{ shape.seams }: Dort endet Runde 1, und dort beginnt und endet jede weitere
        Runde des Rumpfes.
    .body = Der Rumpf hat { $stitches } Maschen, und diese Runde ist die erste, die unten gezählt wird. Die anderen
        Maschenmarkierer werden nicht mehr gebraucht.
    .front_extra = Von Achsel zu Achsel hat das Vorderteil { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } mehr als das Rückenteil.
    .seam = Jede Achsel hat in der Mitte { $seam } { $seam_number ->
        [one] Nahtmasche
       *[other] Nahtmaschen
    }: in jeder Runde rechts stricken; Zu- und Abnahmen liegen beiderseits davon.
    .seam_purl = Jede Achsel hat in der Mitte { $seam } { $seam_number ->
        [one] Nahtmasche: bis zum Bund in jeder Runde links stricken; Zu- und Abnahmen liegen beiderseits davon. Im Bund
            gehört sie zum Rippenmuster.
       *[other] Nahtmaschen: bis zum Bund in jeder Runde links stricken; Zu- und Abnahmen liegen beiderseits davon. Im
            Bund gehören sie zum Rippenmuster.
    }

## Shaping of body and sleeves

shape =
    .where = { $at ->
        [seam] beiderseits der Nahtmaschen
        [either] beiderseits der Nahtmaschen oder, in Größen ohne Nahtmaschen, des Maschenmarkierers
       *[marker] beiderseits des Maschenmarkierers
    }
    .start = { $before_number ->
        [0] am Anfang
        [one] nach der ersten Masche
       *[other] nach den ersten { $before } Maschen
    }
    .seams = { $seams ->
        [none] { "" }
       *[all] , also nach { $seam_number ->
            [one] ihrer Nahtmasche
           *[other] ihren { $seam } Nahtmaschen
        }
    }
    .decrease = { $every_number ->
        [1] { $times_number ->
            [one] Eine Abnahmerunde stricken ({ $change } Maschen weniger).
           *[other] { $times } Abnahmerunden direkt nacheinander stricken (jeweils { $change } Maschen weniger).
        }
       *[other] { $times_number ->
            [one] { $every } Runden stricken, die letzte davon als Abnahmerunde ({ $change } Maschen weniger).
           *[other] Jeweils die letzte von { $every } Runden als Abnahmerunde stricken ({ $change } Maschen weniger),
                insgesamt { $times }-mal.
        }
    }
    .decrease_cycle = Im Wechsel { $cycle } Runden stricken, jeweils die letzte davon als Abnahmerunde ({ $change }
        Maschen weniger); diese ganze Folge { times.all } stricken.

body =
    .side_markers = An jeder Seite einen Maschenmarkierer einhängen, und zwar { shape.start } jeder
        Achsel{ shape.seams }. Wo an einer Seite die Runde beginnt, gilt ihr Maschenmarkierer als einer der beiden.
    .decreases = In einer Abnahmerunde 4 Maschen abnehmen, an jeder Seite des Rumpfes je 1 { shape.where }: davor 2
        Maschen einzeln wie zum Rechtsstricken abheben und rechts verschränkt zusammenstricken (linksgeneigt), danach 2
        Maschen rechts zusammenstricken (rechtsgeneigt).
    .increases = In einer Zunahmerunde 4 Maschen zunehmen, an jeder Seite des Rumpfes je 1 { shape.where }: davor
        rechtsgeneigt, danach linksgeneigt.
    .plain = { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } ohne Zu- und Abnahmen stricken.
    .decrease = { shape.decrease } Der Rumpf hat nun { $stitches } Maschen.
    .decrease_cycle = { shape.decrease_cycle } Der Rumpf hat nun { $stitches } Maschen.
    .increase = { $every_number ->
        [1] { $times_number ->
            [one] Eine Zunahmerunde stricken ({ $change } Maschen mehr).
           *[other] { $times } Zunahmerunden direkt nacheinander stricken (jeweils { $change } Maschen mehr).
        }
       *[other] { $times_number ->
            [one] { $every } Runden stricken, die letzte davon als Zunahmerunde ({ $change } Maschen mehr).
           *[other] Jeweils die letzte von { $every } Runden als Zunahmerunde stricken ({ $change } Maschen mehr),
                insgesamt { $times }-mal.
        }
    } Der Rumpf hat nun { $stitches } Maschen.
    .increase_cycle = Im Wechsel { $cycle } Runden stricken, jeweils die letzte davon als Zunahmerunde ({ $change }
        Maschen mehr); diese ganze Folge { times.all } stricken. Der Rumpf hat nun { $stitches } Maschen.
    .darts = In Runde { $round } das Vorderteil über der Brust mit { $rows } verkürzten Reihen ohne Zu- und Abnahmen
        verlängern: Über das Rückenteil bis zum ersten seitlichen Maschenmarkierer stricken, dann hin und her über das
        Vorderteil. In einer vertrauten Technik für verkürzte Reihen wenden.
    .dart_turns = Verkürzte Reihen { $row } (Hinreihe) und { $next } (Rückreihe): Bis { $stitches }
        { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } vor der Mitte der nächsten Achsel stricken, wenden. Eine Masche genau in der Mitte einer Achsel zählt nicht mit.
    .darts_end = Nach der letzten verkürzten Reihe als Hinreihe bis zum Rundenende stricken und die Lücken auf dem Weg
        schließen. Die Lücken am Anfang des Vorderteils in der nächsten Runde schließen.
    .rounds = Der Rumpf hat nun { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } und misst ab der Achsel { measured.length }.
    .length = Mit dem Bund misst der Rumpf ab der Achsel { measured.length }.

sleeve =
    .start = Die Maschen der Achsel folgen auf die stillgelegten Maschen eines Ärmels. Die Runden beginnen und enden
        { shape.start } der Achsel{ shape.seams }: Dort den Faden ansetzen und einen Maschenmarkierer für den
        Rundenbeginn einhängen.
    .seam_purl = { $seam_number ->
        [one] Nach der ersten Runde die Nahtmasche bis zum Ärmelbündchen in jeder Runde links stricken; dort gehört sie
            zum Rippenmuster.
       *[other] Nach der ersten Runde die { $seam } Nahtmaschen bis zum Ärmelbündchen in jeder Runde links stricken;
            dort gehören sie zum Rippenmuster.
    }
    .return = Die { $held } stillgelegten Maschen des Ärmels wieder auf die Nadeln nehmen. In der ersten Runde aus
        { $underarm_number ->
            [one] der an der Achsel angeschlagenen Masche
           *[other] jeder der { $underarm } an der Achsel angeschlagenen Maschen
        } 1 Masche auffassen und die stillgelegten Maschen stricken: { $stitches } Maschen. Diese Runde ist die erste,
        die unten gezählt wird.
    .decreases = In einer Abnahmerunde 2 Maschen abnehmen, je 1 { shape.where }: davor 2 Maschen einzeln wie zum
        Rechtsstricken abheben und rechts verschränkt zusammenstricken (linksgeneigt), danach 2 Maschen rechts
        zusammenstricken (rechtsgeneigt).
    .plain = { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } ohne Abnahmen stricken.
    .decrease = { shape.decrease } Der Ärmel hat nun { $stitches } Maschen.
    .decrease_cycle = { shape.decrease_cycle } Der Ärmel hat nun { $stitches } Maschen.
    .rounds = Der Ärmel hat nun { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } und misst ab der Achsel { measured.length }.
    .length = Mit dem Ärmelbündchen misst der Ärmel ab der Achsel { measured.length }.
    .second = Den zweiten Ärmel ebenso stricken.

## Hem, cuffs and neckband

rib =
    .colour = { $edge ->
        [cuff] Das Ärmelbündchen
       *[hem] Den Bund
    } von der ersten Runde bis zum Abketten in { $colour } stricken.
    .decrease = 1 Runde rechts stricken und dabei { $many_number ->
        [one] { $many } Masche
       *[other] gleichmäßig verteilt { $many } Maschen
    } abnehmen. Es sind nun { $stitches } Maschen auf den Nadeln.
    .increase = 1 Runde rechts stricken und dabei { $many_number ->
        [one] { $many } Masche
       *[other] gleichmäßig verteilt { $many } Maschen
    } zunehmen. Es sind nun { $stitches } Maschen auf den Nadeln.
    .spread = In dieser Runde: { $steps }.
    .work = { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } im { $rib } stricken.
    .bind_off = Die Maschen locker im Rippenmuster abketten.

band =
    .colour = Die Maschen des Halsbündchens in { $colour } auffassen und das ganze Halsbündchen darin stricken.
    .pick_up = Auf der Vorderseite, beginnend am Rundenbeginn der Passe, aus jeder Anschlagmasche 1 Masche auffassen:
        { $stitches } Maschen.
    .pick_up_drop = Auf der Vorderseite, beginnend am Rundenbeginn der Passe, aus jeder Anschlagmasche 1 Masche
        auffassen und auf jeder Seite des Vorderteils aus den { $rows } Reihenenden { $side } { $side_number ->
            [one] Masche
           *[other] Maschen
        }, das sind etwa { $rate } auf je { $per } Reihen: { $stitches } Maschen.
    .fold = Für den Umbruch 1 Runde links stricken.
    .inner = Für die innere Lage noch { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } im selben Rippenmuster stricken.
    .join = Nicht abketten. Das Halsbündchen nach innen umschlagen und jede Masche locker an die erste Runde des
        Halsbündchens nähen, damit sich der Ausschnitt noch über den Kopf dehnen lässt.
    .height = Das Halsbündchen ist { measured.length } hoch.

## Finishing

finishing =
    .underarms = Die Lücken an den Enden beider Achseln mit den Fadenenden schließen.
    .ends = Alle Fäden vernähen.
    .block = Den Pullover auf die Fertigmaße spannen und liegend trocknen lassen.
    .no_cords = Bei Babys und kleinen Kindern am Hals keine Kordeln, Bänder oder Zugbänder verwenden.

## Titles of parts and rows

title =
    .part_sizes = Größen
    .part_finished_measurements = Fertigmaße
    .part_gauge = Maschenprobe
    .part_needles = Nadeln
    .part_yarn = Garn
    .part_notions = Zubehör
    .part_terms = Begriffe und Techniken
    .part_neck = Halsausschnitt
    .part_chart = Strickschrift
    .part_yoke = Passe
    .part_split = Aufteilung in Rumpf und Ärmel
    .part_body = Rumpf
    .part_sleeve = Ärmel
    .part_band = Halsbündchen
    .part_finishing = Fertigstellung
    .part_own_gauge = Mit der eigenen Maschenprobe
    .part_to_fit = Passend für
    .part_hem = Bund
    .part_cuff = Ärmelbündchen
    .part_finished = Fertigmaße
    .to_fit_bust = Passend für { measure.bust }
    .to_fit_ease = Mehrweite, { measure.bust }
    .neck_cast_on = Halsausschnitt, zuerst angeschlagene Maschen
    .neck_stitches = Halsausschnitt, Maschen insgesamt
    .neck_back = Halsausschnitt, Maschen des Rückenteils
    .neck_front = Halsausschnitt, Maschen des Vorderteils
    .neck_sleeve = Halsausschnitt, Maschen jedes Ärmels
    .neck_short_rows = Halsausschnitt, verkürzte Reihen
    .neck_front_drop = Halsausschnitt, Reihen bis zum Schließen der vorderen Mitte
    .yoke_rounds = Passe, Runden
    .yoke_increase_rounds = Passe, Zunahmerunden
    .yoke_back_increases = Passe, Zunahmen an jeder Kante des Rückenteils
    .yoke_front_increases = Passe, Zunahmen an jeder Kante des Vorderteils
    .yoke_sleeve_increases = Passe, Zunahmen an jeder Kante eines Ärmels
    .yoke_doubled_rounds = Passe, Zunahmerunden mit 2 Maschen an einer Kante
    .split_back = Aufteilung, Maschen des Rückenteils
    .split_front = Aufteilung, Maschen des Vorderteils
    .split_sleeve = Aufteilung, Maschen jedes Ärmels
    .split_yoke_total = Aufteilung, Maschen auf den Nadeln
    .split_underarm = Aufteilung, neu angeschlagene Maschen jeder Achsel
    .split_line_to_body = Aufteilung, Maschen jeder Raglanlinie für den Rumpf
    .body_stitches = Rumpf, Maschen
    .body_rounds = Rumpf, Runden vor dem Bund
    .body_bust_dart_rows = Rumpf, verkürzte Reihen über der Brust
    .hem_stitches = Bund, Maschen
    .hem_rounds = Bund, Runden
    .sleeve_stitches = Ärmel, Maschen
    .sleeve_rounds = Ärmel, Runden vor dem Ärmelbündchen
    .sleeve_decrease_rounds = Ärmel, Abnahmerunden
    .cuff_stitches = Ärmelbündchen, Maschen
    .cuff_rounds = Ärmelbündchen, Runden
    .band_stitches = Halsbündchen, Maschen
    .band_rounds = Halsbündchen, Runden
    .finished_bust = Fertigmaß { measure.bust }
    .finished_upper_arm = Fertigmaß { measure.upper_arm }
    .finished_neck = Fertigmaß { measure.neck }, Umfang
    .finished_depth = Fertigmaß { measure.depth }
    .finished_underarm = Fertigmaß { measure.underarm }, Breite
    .finished_hem = Fertigmaß { measure.hem }, Umfang
    .finished_wrist = Fertigmaß { measure.cuff }, Umfang
    .finished_body_length = Fertigmaß { measure.body_length }
    .finished_front_length = Fertigmaß { measure.body_length } über der Brust
    .finished_front_extra = Vorderteil breiter als das Rückenteil um
    .finished_sleeve_length = Fertigmaß { measure.sleeve_length }
    .finished_total_length = Fertigmaß { measure.total_length } in der rückwärtigen Mitte
    .finished_reach = Fertigmaß von der rückwärtigen Mitte des Halsausschnitts bis zum Ende eines Ärmels
    .finished_band = Fertigmaß { measure.neckband }, Umfang
    .yarn_grams = { yarn.whose }, Gramm
    .yarn_metres = { yarn.whose }, Meter
    .yarn_yards = { yarn.whose }, Yards
    .yarn_balls = { yarn.whose }{ yarn.strand }, Knäuel

## Warnings, reasons and causes

measure =
    .bust = Oberweite
    .waist = Taille
    .hip = Hüfte
    .upper_arm = Oberarm
    .wrist = Handgelenk
    .neck = Halsausschnitt
    .head = Kopfumfang
    .cross_back = Rückenbreite
    .back_waist_length = Rückenlänge bis zur Taille
    .back_hip_length = Rückenlänge bis zur Hüfte
    .back_neck_to_wrist = Länge vom Nacken bis zum Handgelenk
    .arm_length = Armlänge
    .armhole_depth = Tiefe des Armausschnitts
    .depth = Passenhöhe
    .underarm = Achsel
    .hem = Bund
    .cuff = Ärmelbündchen
    .neckband = Halsbündchen
    .body_length = Rumpflänge
    .sleeve_length = Ärmellänge
    .total_length = Gesamtlänge

counted =
    .neck = des Anschlags
    .body = des Rumpfes
    .sleeve = der Ärmel
    .hem = des Bundes
    .cuff = der Ärmelbündchen
    .neckband = des Halsbündchens

cause =
    .alone = { $causes_number ->
        [one] Grund: { $causes }.
       *[other] Gründe: { $causes }; es genügt, auf einen davon zu verzichten.
    }
    .together = Gründe, die zusammenwirken: { $causes }; nur der Verzicht auf alle genügt.
    .not_sought = Der Grund ist eine andere der Vorgaben; bei weniger Größen auf einmal nennt ihn die Antwort.
    .multiple = das Vielfache von { $multiple } für die Maschen { $of }{ $rounding ->
        [up] , aufgerundet
        [down] , abgerundet
       *[nearest] { "" }
    } (ein kleineres Vielfaches käme näher heran)
    .rounding = das { $rounding ->
        [up] Aufrunden
        [down] Abrunden
       *[nearest] Runden
    } der Maschen { $of }
    .ease = die gewünschte Mehrweite ({ $measure })
    .length = das gewünschte Maß ({ $measure })
    .anchor = der Anker der Strickschrift am { $section ->
        [sleeve] Ärmel
       *[back] Rückenteil
    } (er verlangt eine { $parity ->
        [odd] ungerade
       *[even] gerade
    } Maschenzahl)
    .seam_stitches = { $stitches_number ->
        [0] der Wunsch nach Achseln ohne Nahtmaschen
        [one] die Nahtmasche in jeder Achsel
       *[other] die { $stitches } Nahtmaschen in jeder Achsel
    }
    .step = der Wunsch nach Zunahmen nur in jeder 2. Runde
    .first_increase_round = die erste Zunahme in Runde { $round }
    .plain_rounds_at_end = { $rounds_number ->
        [one] die Runde ohne Zunahmen vor der Aufteilung
       *[other] die { $rounds } Runden ohne Zunahmen vor der Aufteilung
    }
    .double_body = der Wunsch, am Rumpf nie 2 Zunahmen an einer Kante zu arbeiten
    .edge_height = die Höhe { $edge ->
        [cuff] der Ärmelbündchen
       *[hem] des Bundes
    }
    .neck_shares = die Anteile von Rückenteil, Vorderteil und Ärmeln am Halsausschnitt
    .yoke_change = die geänderte Passenhöhe
    .own_gauge = die eigene Maschenprobe (Maschen und Runden bleiben, wie sie angegeben sind)
    .chart = die Strickschrift (ihr letzter Rapport wird zu Ende gestrickt)
    .other_sizes = die anderen Größen (keine Maschenzahl darf kleiner sein als in der Größe davor, und jeder Abschnitt
        hat in allen Größen eine gerade oder in allen eine ungerade Maschenzahl)
    .increases_need_rounds = Die Zunahmen vom Halsausschnitt bis zur Aufteilung brauchen { $rounds_number ->
        [one] die eine Runde
       *[other] alle { $rounds } Runden
    } der Passe.
    .whole_rounds = Ganze Runden in Passe, Rumpf und Bündchen kommen nicht näher heran.
    .whole_stitches = Eine Masche ist { $stitch } cm breit, und Maschenzahlen, die an Halsausschnitt, Passe und
        Aufteilung zusammenpassen, kommen nicht näher heran.
    .shaped_by = Der Rumpf wird um je { $stitches } Maschen von { $stitch } cm Breite geformt, und keine Größe hat
        weniger Maschen als die davor.
    .negative_ease = Die gewünschte Mehrweite beträgt dort { $ease } cm.
    .little_ease = Die gewünschte Mehrweite beträgt dort { $ease } cm, und das Runden auf ganze Maschen kann mehr als
        das wegnehmen.
    .stitch_width = Grund: das Runden auf ganze Maschen.
    .usual_depth = Die übliche Passenhöhe reicht für diesen Körper nicht.
    .narrow_cuff = Grund: Die Hand ist im Verhältnis zum Ärmelbündchen breit.
    .cuff_of_wrist = Grund: Das Ärmelbündchen ist für das Handgelenk bemessen.
    .usual_lengths = Die üblichen Längen folgen den Körpermaßen.

why =
    .as_written = Die Rundenzahl bleibt gleich: Die Passe wie angegeben stricken.
    .fewer_plain_rounds = Nach der letzten Zunahme Runden wegzulassen ändert sonst nichts.
    .more_plain_rounds = Runden nach der letzten Zunahme verschieben keine Zunahme, und eine Strickschrift kann in ihnen
        weiterlaufen.
    .wider = Mit zusätzlichen Runden nur nach der letzten Zunahme wären die letzten { $plain } von { $rounds } Runden
        ohne Zunahmen; mit größeren Abständen bleiben die Raglanlinien gleichmäßig.
    .closer = Mit kleineren Abständen passen alle Zunahmen hinein, ohne 2 an einer Kante in einer Runde.
    .closer_than_doubled = Mit 2 Rumpfzunahmen an einer Kante würden { $streak } Zunahmerunden aufeinanderfolgen; mit
        kleineren Abständen liegen Runden dazwischen.
    .closer_alone = In den angegebenen Abständen reichen die Runden auch mit 2 Rumpfzunahmen an einer Kante nicht,
        deshalb werden die Abstände kleiner.
    .together = In denselben Runden gearbeitet, passen die Zunahmen von Rumpf und Ärmeln in den angegebenen Abständen
        hinein, ohne 2 an einer Kante in einer Runde.
    .double_body = Mit 2 Rumpfzunahmen an einer Kante in { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } bleiben die Zunahmen in den angegebenen Abständen, die Ärmel bei einzelnen Zunahmen und die Maschenzahlen bei der
        Aufteilung gleich.
    .no_way = Eine Passe von { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } ist auf keine Weise möglich; die niedrigste mögliche hat { $shallowest }.

reason =
    .too_few_rounds = Die Zunahmen brauchen { $needed } { $needed_number ->
        [one] Zunahmerunde
       *[other] Zunahmerunden
    }{ $body ->
        [doubled] , auch mit 2 Rumpfzunahmen an einer Kante
       *[single] { "" }
    }, und die { $rounds_number ->
        [one] eine Runde
       *[other] { $rounds } Runden
    } der Passe { $rounds_number ->
        [one] bietet
       *[other] bieten
    } Platz für { $available }: { $missing } zu wenig.
    .too_few_rounds_in_sleeve = Der Ärmel braucht über dem Ärmelbündchen { $needed } { $needed_number ->
        [one] Abnahmerunde
       *[other] Abnahmerunden
    } und hat Platz für { $room }.
    .too_few_rounds_above_level = { $measure }: Darüber { $needed_number ->
        [one] wird 1 Runde
       *[other] werden { $needed } Runden
    } mit Zu- oder Abnahmen gebraucht, und Platz ist für { $room }.
    .too_few_rounds_for_shaping = { $worked ->
        [flat] { $needed } { $needed_number ->
            [one] Reihe mit Zu- oder Abnahmen braucht
           *[other] Reihen mit Zu- oder Abnahmen brauchen
        } { $rows } { $rows_number ->
            [one] Reihe
           *[other] Reihen
        }
       *[round] { $needed } { $needed_number ->
            [one] Runde mit Zu- oder Abnahmen braucht
           *[other] Runden mit Zu- oder Abnahmen brauchen
        } { $rows } { $rows_number ->
            [one] Runde
           *[other] Runden
        }
    }, und frei { $room_number ->
        [one] ist
       *[other] sind
    } { $room }: { $missing } zu wenig.
    .too_few_stitches = { $stitches } { $stitches_number ->
        [one] Masche bietet
       *[other] Maschen bieten
    } Platz für { $most } { $change ->
        [increase] { $most_number ->
            [one] Zunahme
           *[other] Zunahmen
        }
       *[decrease] { $most_number ->
            [one] Abnahme
           *[other] Abnahmen
        }
    }{ $worked ->
        [flat] , bei denen an jeder Kante eine Masche bleibt
       *[round] { "" }
    }, und gewünscht { $asked_number ->
        [one] ist
       *[other] sind
    } { $asked }.
    .written_yoke_impossible = Schon die angegebene Passe lässt sich nicht stricken. { $reason }
    .for_deeper_yokes = Größere Abstände der Zunahmen sind für eine höhere Passe.
    .for_shallower_yokes = { $method ->
        [double_body] 2 Rumpfzunahmen an einer Kante
       *[closer] Kleinere Abstände der Zunahmen
    } sind für eine niedrigere Passe.
    .yoke_too_shallow = { $limit } Die niedrigste Passe, die so möglich ist, hat { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } ({ $depth } cm), und gewünscht { $asked_number ->
        [one] ist
       *[other] sind
    } { $asked }.
    .yoke_too_shallow_plain_rounds = { $spare_number ->
        [0] Nach der letzten Zunahme kann keine Runde wegfallen.
        [one] Nach der letzten Zunahme kann nur 1 Runde wegfallen.
       *[other] Nach der letzten Zunahme können nur { $spare } Runden wegfallen.
    }
    .yoke_too_shallow_wider = Die gewünschten Runden ohne Zunahmen vor der Aufteilung lassen zu wenige andere übrig.
    .yoke_too_shallow_closer = Für { $needed } { $needed_number ->
        [one] Zunahmerunde
       *[other] Zunahmerunden
    } ist kein Platz, auch nicht in aufeinanderfolgenden Runden.
    .yoke_too_shallow_double_body = In den angegebenen Abständen brauchen { $limit ->
        [sleeve] die Ärmelzunahmen, immer 1 an einer Kante,
       *[body] die Rumpfzunahmen, 2 an einer Kante in jeder Zunahmerunde,
    } { $needed } { $needed_number ->
        [one] Zunahmerunde
       *[other] Zunahmerunden
    }.
    .nothing_left = { $measure }: Bei diesen Vorgaben bleibt davon nichts übrig ({ $length } cm).
    .neck_too_narrow = Der Halsausschnitt hat ohne die Raglanlinien { $stitches } Maschen und braucht { $fewest }.
    .no_permitted_cast_on = Kein Vielfaches von { $multiple } liegt nah genug bei einem Anschlag von { $stitches }
        Maschen, in dem jeder Abschnitt bis zu { $reach } Maschen mehr oder weniger haben darf.
    .neck_too_wide_body = Der Rumpf soll { $stitches } Maschen haben, doch die Achseln und, am Halsausschnitt, Rücken-
        und Vorderteil mit ihrem Anteil der Raglanlinien haben schon { $least }.
    .neck_too_wide_body_extra = Der Rumpf soll { $stitches } Maschen haben, doch die Achseln, die größere Weite des
        Vorderteils und, am Halsausschnitt, Rücken- und Vorderteil mit ihrem Anteil der Raglanlinien haben schon
        { $least }.
    .neck_too_wide_sleeve = Der Ärmel soll { $stitches } Maschen haben, doch die Achsel und, am Halsausschnitt, der
        Ärmel mit seinem Anteil der Raglanlinien haben schon { $least }.
    .no_permitted_counts = Es gibt keine erlaubten Maschenzahlen von Rumpf, Ärmel und Achsel, die zusammenpassen.
    .front_extra_grows_too_fast = Die größere Weite des Vorderteils nimmt so schnell zu, dass das Rückenteil weniger
        Maschen hätte als in der Größe davor.
    .underarm_grows_too_fast = Im Abstand von höchstens { $reach } Maschen von dem, was diese Größe haben soll, gibt es
        keine Maschenzahlen, die mindestens so groß sind wie in der Größe davor: Die Achsel wächst schneller als Rumpf
        oder Ärmel.
    .front_drop_too_deep = Ein um { $rows } { $rows_number ->
        [one] Reihe
       *[other] Reihen
    } tieferer vorderer Halsausschnitt passt nicht in eine Passe von { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    }.
    .front_too_narrow = Ein Vorderteil von { $front } { $front_number ->
        [one] Masche
       *[other] Maschen
    } mit { $middle } in der Mitte lässt { $sides } für seine beiden Seiten übrig, die gleich breit sein und je
        mindestens 1 Masche haben müssen.
    .back_too_high = { $pairs } { $pairs_number ->
        [one] Paar verkürzter Reihen braucht auf jeder Seite 1 Masche
       *[other] Paare verkürzter Reihen brauchen auf jeder Seite ebenso viele Maschen
    } für die Wendestellen, und es gibt { $stitches }.
    .back_too_high_front = Die letzten Wendestellen reichen { $reach } { $reach_number ->
        [one] Masche
       *[other] Maschen
    } weit in ein Vorderteil von { $front } Maschen hinein; höchstens { $most } sind möglich.
    .darts_without_round = Die verkürzten Reihen über der Brust werden in einer Runde ohne Strickschrift und ohne Zu-
        oder Abnahmen gestrickt, höchstens { $deepest } cm unter der Achsel, und die Runden { $first } bis { $last } des
        Rumpfes haben alle das eine oder das andere.
    .darts_too_deep = { $pairs } { $pairs_number ->
        [one] Paar verkürzter Reihen über der Brust braucht auf jeder Seite 1 Masche
       *[other] Paare verkürzter Reihen über der Brust brauchen auf jeder Seite ebenso viele Maschen
    } für die Wendestellen, und ein Drittel des Vorderteils hat { $stitches }.
    .body_too_short = { $measure }: Diese Höhe liegt in Runde { $round }, und der Rumpf hat vor dem Bund { $rounds }
        { $rounds_number ->
        [one] Runde
       *[other] Runden
    }.
    .body_too_short_for_darts = Die verkürzten Reihen über der Brust werden in Runde { $round } gestrickt, und der Rumpf
        hat vor dem Bund { $rounds } { $rounds_number ->
            [one] Runde
           *[other] Runden
        }.
    .back_too_narrow = Die größere Weite des Vorderteils lässt dem Rückenteil an der schmalsten Stelle des Rumpfes
        { $stitches } { $stitches_number ->
            [one] Masche
           *[other] Maschen
        } zu wenig.
    .seams_beyond_underarm = { $seam } Nahtmaschen sind mehr als die { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } der Achsel, in deren Mitte sie liegen.
    .seams_too_wide = { $seam } { $seam_number ->
        [one] Nahtmasche lässt
       *[other] Nahtmaschen lassen
    } von einem Teil mit { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } nichts übrig.

warning =
    .gauge_far_from_pattern = Die eigene Maschenprobe hat { $percent } % { $fabric ->
        [tighter] mehr
       *[looser] weniger
    } Maschen als die der Anleitung, und eine oder zwei Nadelstärken ändern etwa ein Zehntel: ein anderes Garn oder eine
        andere Größe der Anleitung nehmen.
    .count_off_rule = Die angegebene Zahl, { $count }, ist kein Vielfaches von { $multiple }{ $plus_number ->
        [0] { "" }
       *[other] {" "}plus { $plus }
    }.
    .rounded_to_nothing = Die Länge ist so klein, dass gerundet keine { $kind ->
        [along] Reihe
       *[across] Masche
    } bleibt.
    .nothing_to_knit = { $measure }: Gerundet bleibt keine { $unit ->
        [rows] Reihe
       *[stitches] Masche
    }; ein kleineres Vielfaches nehmen.
    .estimated_body = { $measure }: In { $sizes_number ->
        [one] Größe
       *[other] den Größen
    } { $sizes } geschätzt, da keine veröffentlichte Tabelle das Maß enthält. Zur Sicherheit nachmessen.
    .ease_below_published_fits = Die Mehrweite der Oberweite ist kleiner als bei der engsten veröffentlichten Passform,
        { $ease_cm } cm / { $ease_inch } Zoll.
    .below_every_size = Bei der { $gauge ->
        [own] eigenen
       *[written] angegebenen
    } Maschenprobe ist auch die kleinste Größe größer als gewünscht.
    .above_every_size = Bei der { $gauge ->
        [own] eigenen
       *[written] angegebenen
    } Maschenprobe ist auch die größte Größe kleiner als gewünscht.
    .increases_end_early = Die letzte Rumpfzunahme liegt { $straight } { $straight_number ->
        [one] Runde
       *[other] Runden
    } ({ $length } cm) vor der Aufteilung in einer Passe von { $rounds } Runden, sodass der Rumpf gerade bis zur Achsel
        verläuft: { $mend ->
            [wider] die Abstände der Rumpfzunahmen vergrößern.
           *[with_sleeves] die Rumpfzunahmen auf die Runden verteilen, in denen die Ärmel zunehmen.
        }
    .many_increase_rounds_in_a_row = { $streak } Zunahmerunden folgen ohne Zwischenrunde aufeinander, was die
        Raglanlinien zusammenzieht; mehr als { $most } sind viel. Eine höhere Passe{ $room ->
            [here] {" "}oder über diese Passe gleichmäßig verteilte Zunahmen hätten
           *[deeper] {" "}hätte
        } Runden dazwischen.
    .double_body_equals_closer = An keiner Kante werden 2 Rumpfzunahmen in einer Runde gebraucht, deshalb ergibt
        `double_body` denselben Verlauf wie `closer`.
    .yoke_deeper_than_usual = Die Passe ist { $depth } cm hoch, viel mehr als üblich; üblich sind in dieser Größe
        { $usual } cm. { $total }
    .yoke_shallower_than_usual = Die Passe ist { $depth } cm hoch, viel weniger als üblich; üblich sind in dieser Größe
        { $usual } cm. { $total }
    .total = Das ergibt eine Gesamtlänge von { $total } cm.
    .total_kept = Die Gesamtlänge von { $total } cm bleibt die übliche, da der Rumpf von { $body } cm es ausgleicht.
    .total_restored = Das ergibt eine Gesamtlänge von { $total } cm; eine Rumpflänge von { $restored } cm statt
        { $body } cm ergibt wieder die üblichen { $usual } cm.
    .total_length_falls = Die Gesamtlänge sinkt von { $before } cm in Größe { $smaller } auf { $after } cm in Größe
        { $larger } ({ $steps }). { $because }
    .total_length_jumps = Die Gesamtlänge springt von { $before } cm in Größe { $smaller } auf { $after } cm in Größe
        { $larger } ({ $steps }). { $because }
    .length_steps = Änderung der Passenhöhe: { $yoke } cm, der Rumpflänge: { $body } cm
    .length_steps_and_back = Änderung der Passenhöhe: { $yoke } cm, der Rumpflänge: { $body } cm, der Rückenlänge des
        Körpers: { $back } cm
    .half_stitch_off_centre = Spalte { $column } der Strickschrift verlangt eine { $fitting ->
        [odd] ungerade
       *[even] gerade
    } Maschenzahl, und das Teil hat { $stitches }: Die Mitte des { $section ->
        [back] Rückenteils
        [front] Vorderteils
       *[sleeve] Ärmels
    } liegt eine halbe Masche daneben; zu dieser Zahl passen die Spalten { $below } und { $above }.
    .half_stitch_off_centre_underarm = Eine Achsel von { $underarm } { $underarm_number ->
        [one] Masche
       *[other] Maschen
    }{ $seam_number ->
        [0] { "" }
        [one] , davon 1 Nahtmasche,
       *[other] , davon { $seam } Nahtmaschen,
    } lässt sich nicht auf beide Seiten gleich verteilen: { $part ->
        [sleeve] Der Ärmel
       *[body] Der Rumpf
    } liegt eine halbe Masche neben seiner Mitte.
    .anchor_off_mirror_axis = Die Strickschrift ist an { $axes_number ->
        [one] Spalte
       *[other] den Spalten
    } { $axes }{ $more_number ->
        [0] { "" }
       *[other] {" "}(und { $more } weiteren)
    } gespiegelt, und die Mitte des { $section ->
        [back] Rückenteils
        [front] Vorderteils
       *[sleeve] Ärmels
    } liegt auf Spalte { $column }, sodass seine beiden Seiten verschieden sind.
    .body_cuts_chart = Der Rumpf hat vor dem Bund { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } und endet bei Reihe { $row } von { $rows } der Strickschrift; ein Rumpf von { $finishing } Runden würde sie
        beenden.
    .sleeve_cuts_chart = Der Ärmel hat vor dem Ärmelbündchen { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } und endet bei Reihe { $row } von { $rows } der Strickschrift; ein Ärmel von { $finishing } Runden würde sie
        beenden.
    .body_cuts_chart_unbegun = Der Rumpf hat vor dem Bund { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } und endet, bevor die Strickschrift beginnt; ein Rumpf von { $finishing } Runden würde sie beenden.
    .sleeve_cuts_chart_unbegun = Der Ärmel hat vor dem Ärmelbündchen { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } und endet, bevor die Strickschrift beginnt; ein Ärmel von { $finishing } Runden würde sie beenden.
    .body_longer_for_chart = Der Rumpf hätte vor dem Bund { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    }, und seine Strickschrift braucht { $needed }: Er wird { $more } { $more_number ->
        [one] Runde
       *[other] Runden
    } länger. Für einen kürzeren Rumpf eine Rumpflänge angeben.
    .sleeve_longer_for_chart = Der Ärmel hätte vor dem Ärmelbündchen { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    }, und seine Strickschrift braucht { $needed }: Er wird { $more } { $more_number ->
        [one] Runde
       *[other] Runden
    } länger. Für einen kürzeren Ärmel eine Ärmellänge angeben.
    .sleeve_plain_again = Ab seiner Runde { $round } { $lacks ->
        [motif] hat der Ärmel keinen Platz für ein ganzes Motiv
       *[width] ist der Ärmel schmaler als die Mindestbreite für die Strickschrift
    } und wird ohne Strickschrift gestrickt.
    .more_than_two_colours = { $rounds } { $rounds_number ->
        [one] Runde in Passe, Rumpf und Ärmel hat
       *[other] Runden in Passe, Rumpf und Ärmel haben
    } mehr als zwei Farben zugleich.
    .long_float = Der längste Spannfaden geht über { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } ({ $length } cm) in „{ $colour }“, in Runde { $round } { $part ->
        [yoke] der Passe
        [body] des Rumpfes
       *[sleeve] des Ärmels
    }. Lange Spannfäden auf der Rückseite verkreuzen, in aufeinanderfolgenden Runden nicht an derselben Stelle.
    .float_can_catch_fingers = Ein Spannfaden über { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } ({ $length } cm) innen in einem Kleidungsstück für Babys oder kleine Kinder kann an Fingern und Zehen hängen
        bleiben. Jeden langen Spannfaden auf der Rückseite verkreuzen, eine Strickschrift mit kürzeren wählen oder das
        Kleidungsstück füttern.
    .chart_starts_before_back = Die Spannfäden der Strickschrift sind in Runden gemessen, die vor dem Rückenteil
        beginnen. Diese Runden beginnen in der rückwärtigen Mitte, deshalb können Spannfäden über ihren Anfang kürzer
        oder länger sein.
    .far_from_wanted = { $measure }: { $finished } cm statt { $wanted } cm. { $because }
    .far_from_wanted_straight = { warning.far_from_wanted } Der Bund hat dieselben Maschen.
    .far_from_wanted_total = { warning.far_from_wanted } Mit einer Rumpflänge von { $body } cm würde sie erreicht.
    .girth_below_body = { $measure }: Der Pullover misst { $finished } cm und der Körper { $body } cm; er dehnt sich
        dort beim Tragen. { $because }
    .armhole_below_body = Der Armausschnitt ist { $armhole } cm tief (die Passe von { $yoke } cm und die halbe Breite
        des Ärmels am Halsausschnitt), der des Körpers { $body } cm. { $because } Eine Passe von { $needed } cm wäre
        hoch genug.
    .cuff_too_tight_for_hand = Das Ärmelbündchen von { $cuff } cm dehnt sich auf { $stretched } cm, und die Hand misst,
        nach dem Handgelenk geschätzt, etwa { $hand } cm. { $because }
    .cuff_too_tight_for_hand_child = { warning.cuff_too_tight_for_hand } Hand und Handgelenk sind im Verhältnis von
        Erwachsenen gerechnet: die Hand des Kindes nachmessen.
    .cuff_binds = Das Ärmelbündchen hat { $cuff } cm Umfang, und der bloße Arm hat etwa { $arm } cm, wo ein Ärmel von
        { $sleeve } cm endet: Es sitzt eng oder rutscht hinunter. { $because }
    .neck_wider_than_shoulders = Der Halsausschnitt von { $neck } cm ist { $width } cm breit, und die halbe Rückenbreite
        beträgt { $held } cm: Er kann von den Schultern rutschen. Weniger Maschen anschlagen, dehnbarer anschlagen und
        abketten oder eine Öffnung an der Schulter oder vorn vorsehen.
    .neck_does_not_pass_head = { $edge ->
        [bind_off] Die Abkettkante des Halsbündchens
        [join] Die Verbindung des umgeschlagenen Halsbündchens
       *[cast_on] Die Anschlagkante
    } von { $around } cm dehnt sich auf { $stretched } cm, und der Kopf misst { $head } cm: den Halsausschnitt weiter
        oder tiefer machen oder dehnbarer anschlagen und abketten.
    .neck_does_not_pass_head_own_gauge = Bei der eigenen Maschenprobe: { warning.neck_does_not_pass_head }
    .young_child_neck = Bei Babys und kleinen Kindern muss sich der Halsausschnitt ohne Kraft über den Kopf ziehen
        lassen, und nichts darf sich um den Hals zusammenziehen: keine Kordeln, Bänder oder Zugbänder verwenden.
    .yoke_too_deep_at_own_gauge = Bei der eigenen Maschenprobe wäre die Passe mit { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } weniger so hoch wie im Entwurf, doch { $spare_number ->
        [0] keine kann
        [one] nur 1 kann
       *[other] nur { $spare } können
    } wegfallen: Sie bleibt { $excess } cm zu hoch.
    .body_too_long_at_own_gauge = Bei der eigenen Maschenprobe wäre der Rumpf mit { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } weniger so lang wie im Entwurf, doch { $spare_number ->
        [0] keine kann
        [one] nur 1 kann
       *[other] nur { $spare } können
    } wegfallen: Er bleibt { $excess } cm zu lang.
    .sleeve_too_long_at_own_gauge = Bei der eigenen Maschenprobe wäre der Ärmel mit { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } weniger so lang wie im Entwurf, doch { $spare_number ->
        [0] keine kann
        [one] nur 1 kann
       *[other] nur { $spare } können
    } wegfallen: Er bleibt { $excess } cm zu lang.
    .swatch_decides = Ob das Garn das der Anleitung ersetzt, entscheidet nur ein Probestück: Gleich viele Meter braucht
        es nur, wenn die Maschenprobe der Anleitung stimmt und das Gestrick gefällt. Vor dem Einkauf der ganzen Menge
        eines stricken.
    .other_yarn_category = Nach jeder eingebauten Tabelle gehört das Garn zu einer anderen Kategorie als das der
        Anleitung: Mit deren Maschenprobe würde das Gestrick viel fester oder viel lockerer. Ein ähnlicheres Garn
        wählen, mehr oder weniger Fäden zusammen stricken oder das Kleidungsstück mit der Maschenprobe berechnen, die zu
        diesem Garn passt.
    .category_not_charted = Keine der eingebauten Tabellen sagt, wie viele Meter 100 g der Kategorie { $category }
        haben; der Standard nennt nur ihre Maschenprobe und Nadeln.
    .estimated_yarn = Das Garn ist geschätzt: Jede Masche braucht glatt rechts das { $least }- bis { $most }-Fache ihrer
        Breite an Garn; Rippenmuster, Spannfäden, Anschlag, Abketten und Fadenenden sind nach üblichen Werten
        mitgerechnet. Zöpfe und andere Strukturmuster brauchen mehr. Genauer wird es mit einem gewogenen Probestück.
    .estimated_yarn_of_stitches = Das Garn ist geschätzt: Jede Masche braucht glatt rechts das { $least }- bis
        { $most }-Fache ihrer Breite an Garn, ein Spannfaden etwas mehr als die Breite, die er überspannt. Anschlag,
        Abketten und Fadenenden sind nicht mitgerechnet; Zöpfe und andere Strukturmuster brauchen mehr. Genauer wird es
        mit einem gewogenen Probestück.
    .low_contrast = „{ $first }“ und „{ $second }“ sind kaum auseinanderzuhalten: Auf einer Skala der Helligkeit von 0
        bis 100 liegen sie nur { $difference } auseinander. Wo sie sich treffen, hebt sich die eine Farbe von der
        anderen kaum ab. Beide zusammen in Graustufen ansehen oder ein Probestück stricken.
    .told_size_by_size = { $part }: Die Größen sind zu verschieden, um sie zusammen zu beschreiben; jede ist für sich
        beschrieben.
    .told_size_by_size_shaped = { warning.told_size_by_size } Zu- und Abnahmen, die zuerst so dicht wie möglich liegen,
        statt gleichmäßig verteilt zu sein, passen besser nebeneinander.
    .many_sentences = { $part }: { $sentences } Sätze sind schwer zu verfolgen. Weniger Größen oder einfachere Vorgaben
        brauchen weniger.
    .many_findings = Es gibt mehr als { $most } Widersprüche; die ersten { $most } sind genannt. Einige beheben und
        erneut prüfen.

## Shaping plans

shaping =
    .row = { $worked ->
        [flat] Reihe
       *[round] Runde
    }
    .rows = { $worked ->
        [flat] Reihen
       *[round] Runden
    }
    .span = { $worked ->
        [flat] { $rows_number ->
            [1] Reihe { $first }
           *[other] Reihen { $first } bis { $last }
        }
       *[round] { $rows_number ->
            [1] Runde { $first }
           *[other] Runden { $first } bis { $last }
        }
    }
    .when = { $times_number ->
        [1] { $every_number ->
            [1] in dieser { shaping.row }
           *[other] in der letzten davon
        }
       *[other] { $every_number ->
            [1] in jeder { shaping.row }
           *[other] jeweils in der letzten von { $every } { shaping.rows }
        }
    }
    .each = { $change } { $change_number ->
        [one] Masche
       *[other] Maschen
    }
    .often = { $times_number ->
        [1] { "" }
       *[other] , { times.all }
    }
    .now = Es { $stitches_number ->
        [one] ist nun 1 Masche
       *[other] sind nun { $stitches } Maschen
    } auf den Nadeln.
    .right_side = Reihe 1 ist eine { $side ->
        [right] Hinreihe
       *[wrong] Rückreihe
    }, sodass die Zu- oder Abnahmen in Hinreihen liegen.
    .plain = { shaping.span }: ohne Zu- und Abnahmen weiterstricken.
    .increase = { shaping.span }: { shaping.when } { shaping.each } zunehmen{ shaping.often }. { shaping.now }
    .decrease = { shaping.span }: { shaping.when } { shaping.each } abnehmen{ shaping.often }. { shaping.now }
    .increase_cycle = { shaping.span }: im Wechsel { $cycle } { shaping.rows } stricken und jeweils in der letzten davon
        { shaping.each } zunehmen; diese ganze Folge { times.all } stricken. { shaping.now }
    .decrease_cycle = { shaping.span }: im Wechsel { $cycle } { shaping.rows } stricken und jeweils in der letzten davon
        { shaping.each } abnehmen; diese ganze Folge { times.all } stricken. { shaping.now }

across =
    .row = Verteilt auf die { shaping.row }: { $steps }. { shaping.now }
    .worked = { $gap_number ->
        [0] { "" }
        [one] 1 Masche stricken,{" "}
       *[other] { $gap } Maschen stricken,{" "}
    }
    .increase = { $times_number ->
        [1] ({ across.worked }1 Masche zunehmen)
       *[other] ({ across.worked }1 Masche zunehmen) { times.all }
    }
    .decrease = { $times_number ->
        [1] ({ across.worked }2 Maschen zusammenstricken)
       *[other] ({ across.worked }2 Maschen zusammenstricken) { times.all }
    }
    .work = { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } stricken

## What a proof finds

proof =
    .run_length = Eine Zeile hat eine Zahl für jede Größe oder eine einzige für alle.
    .printed_differs = Die gedruckten Zahlen müssen die genauen sein, die mit ihnen gesendet wurden, höchstens gerundet.
    .below_one = Eine Anzahl ist nie kleiner als 0, und wo ein Pullover etwas haben muss, ist sie nie 0.
    .not_whole = Maschen, Reihen, Runden, Zunahmen und Knäuel werden in ganzen Zahlen gezählt.
    .falls = Von einer Größe zur nächstgrößeren sollte diese Zahl gleich bleiben oder steigen.
    .count_rule = Die Maschenzahl muss zu dem Vielfachen passen, das verlangt ist.
    .chart_parity = Damit die Strickschrift mittig liegt, braucht ein Abschnitt eine ungerade Maschenzahl, wo die Mitte
        auf einer Spalte liegt, und eine gerade, wo sie zwischen zwei Spalten liegt.
    .inches = Zentimeter und Zoll eines Maßes müssen dieselbe Länge sein.
    .cast_on = Alle Maschen des Halsausschnitts werden zuerst angeschlagen; nur wo die vordere Mitte erst später
        geschlossen wird, dürfen es weniger sein.
    .section_sum = Rückenteil, Vorderteil, beide Ärmel und die vier Raglanlinien ergeben zusammen die Maschen auf den
        Nadeln.
    .split_from_neck = Bis zur Aufteilung bekommt ein Abschnitt an jeder seiner beiden Kanten für jede Zunahme dort eine
        Masche.
    .body_from_split = Rückenteil, Vorderteil, die neu angeschlagenen Maschen beider Achseln und der Anteil der vier
        Raglanlinien am Rumpf ergeben zusammen den Rumpf.
    .sleeve_from_split = Die Maschen eines Ärmels bei der Aufteilung, die neu angeschlagenen einer Achsel und der Anteil
        von zwei Raglanlinien am Ärmel ergeben zusammen den Ärmel.
    .yoke_from_neck = Die Maschen des Halsausschnitts und je eine für jede Zunahme an den beiden Kanten von Rückenteil,
        Vorderteil und jedem Ärmel ergeben zusammen die Maschen auf den Nadeln bei der Aufteilung.
    .split_closes = Rumpf und beide Ärmel teilen die Maschen der Passe unter sich auf, und die neu angeschlagenen jeder
        Achsel zählen doppelt: einmal für den Rumpf und einmal für einen Ärmel.
    .decreases_to_cuff = Mit jeder Abnahmerunde werden es 2 Maschen weniger, vom Ärmel bis zum Ärmelbündchen; für das
        Rippenmuster dürfen es einige mehr oder weniger sein.
    .pick_up = Das Halsbündchen wird aus der Anschlagkante aufgefasst; für das Rippenmuster dürfen es einige Maschen
        mehr oder weniger sein, als angeschlagen wurden.
    .increase_rounds = Es gibt so viele Zunahmerunden, wie der Abschnitt mit den meisten Zunahmen braucht; bei Rücken-
        und Vorderteil zählt eine Runde mit 2 Maschen an einer Kante doppelt.
    .increases_exceed_rounds = Die Passe braucht genug Runden für alle ihre Zunahmerunden in ihren Abständen.
    .decreases_exceed_rounds = Der Ärmel braucht für jede seiner Abnahmerunden mindestens eine Runde.
    .width = Eine Breite oder Weite muss sich aus ihren Maschen und der Maschenprobe ergeben.
    .height = Eine Länge muss sich aus ihren Runden, mit denen von Bund oder Ärmelbündchen, und der Maschenprobe
        ergeben.
    .total_length = Eine Länge ist die Summe ihrer Teile samt verkürzten Reihen.
    .ease = Die fertige { measure.bust } ist die { measure.bust } des Körpers plus die Mehrweite.
    .reach = Von der rückwärtigen Mitte des Halsausschnitts bis zum Ende eines Ärmels sind es die halbe Breite des
        Halsausschnitts, die Passenhöhe und die Ärmellänge. Manche Anleitungen messen anders.
    .yards = Meter und Yards eines Garns müssen dieselbe Länge sein.
    .yarn_falls = Eine größere Größe braucht nicht weniger Garn, wenn sie nirgends weniger Maschen oder Runden hat.
    .row = { $part }: { $item }
    .yarn = Garn { $place }, { workbook.counted }
    .none = keine Zahl
    .number = { $value }
    .cm = { $value } cm
    .inch = { $value } Zoll
    .other = „{ $row }“ ({ $value })
    .corrected = „{ $row }“ ({ $value } statt gedruckt { $printed })
    .line_stitches = { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } je Raglanlinie
    .allowed = { $rounding ->
        [allowed] {" "}(Rundung berücksichtigt)
       *[none] { "" }
    }
    .is_printed = { $rule } Bei „{ $row }“ steht { $printed }.
    .told = { $rule } Bei „{ $row }“ steht { $printed }. Aus { $others } folgt { $side ->
        [least] aber: mindestens { $expected }{ proof.allowed }.
        [most] aber: höchstens { $expected }{ proof.allowed }.
       *[exactly] aber: { $expected }.
    }
    .between = { $rule } Bei „{ $row }“ steht { $printed }. Aus { $others } folgt aber: { $least } bis
        { $most }{ proof.allowed }.
    .off_multiple = { $rule } Bei „{ $row }“ steht { $printed }, kein Vielfaches von { $multiple }{ $plus_number ->
        [0] { "" }
       *[other] {" "}plus { $plus }
    }; am nächsten liegt { $expected }.
    .off_parity = { $rule } Bei „{ $row }“ steht { $printed }; diese Strickschrift braucht dort eine { $parity ->
        [odd] ungerade
       *[even] gerade
    } Zahl.
    .beside = { $rule } Bei „{ $row }“ steht { $printed }. Nach den genauen Zahlen gehört dorthin: { $expected }.
    .before = { $rule } Bei „{ $row }“ steht { $printed }, für die kleinere Größe { $size } aber { $before }.
    .lengths = { $rule } „{ $row }“ hat { $values } { $values_number ->
        [one] Zahl
       *[other] Zahlen
    } für { $sizes } { $sizes_number ->
        [one] Größe
       *[other] Größen
    }.

## Pictures and the workbook

picture =
    .sizes = { $sizes_number ->
        [one] Größe
       *[other] Größen
    } { $sizes }.
    .counts = Maschen: Anschlag { $cast_on }, Rumpf { $body }, jeder Ärmel { $sleeve }; Passe mit { $rounds } Runden.
    .not_knitted = Größe { $size } lässt sich so nicht stricken: { $reason }
    .imprint = Pullover grading { $version } · { $digest }
    .sheet = Blatt { $number } von { $sheets }
    .schematic = Maßskizze
    .whole_front = Vorderansicht
    .whole_chart = Strickschrift
    .yoke_plot = Maschen der Passe, Runde für Runde
    .chart = Wo die Strickschrift beginnt, Größe { $size }
    .reading = Jede Reihe von rechts nach links lesen; die Runden folgen von unten nach oben.
    .round = Runde
    .row = Reihe
    .column = Spalte
    .yoke = Passe
    .split = Aufteilung
    .below = Rumpf und Ärmel
    .first_stitch = erste Masche { $of ->
        [back] des Rückenteils
        [front] des Vorderteils
        [both] von Rücken- und Vorderteil
       *[sleeve] jedes Ärmels
    }
    .first_motif = erstes ganzes Motiv { $of ->
        [back] des Rückenteils
        [front] des Vorderteils
        [both] von Rücken- und Vorderteil
       *[sleeve] jedes Ärmels
    }
    .chart_described = Eine Strickschrift mit { $columns } { $columns_number ->
        [one] Spalte
       *[other] Spalten
    } und { $rows } { $rows_number ->
        [one] Reihe
       *[other] Reihen
    } in { $colours }.
    .trace = { $part ->
        [yoke] In der Passe
       *[below] Unter der Passe
    } { $of ->
        [back] beginnt das Rückenteil
        [front] beginnt das Vorderteil
        [both] beginnen Rücken- und Vorderteil
       *[sleeve] beginnt jeder Ärmel
    } in Runde { $first } mit Spalte { $start } und in Runde { $last } mit Spalte { $end }.
    .front = Das Vorderteil, Größe { $size }
    .without_bands = Ohne Halsbündchen, Bund und Ärmelbündchen.
    .edges = { $edges }{ $colours ->
        [named] : { $colour }
       *[nameless] , gerippt
    }
    .knit = rechte Maschen
    .inside = Innenseite des Rückenteils
    .scale = { $cm } cm ({ $inch } Zoll)
    .scale_cm = { $cm } cm
    .scale_inches = { $inches } Zoll
    .raised_described = Hinten liegt der Halsausschnitt { measured.length } höher als vorn; hinter dem Vorderteil ist
        die Innenseite des Rückenteils zu sehen.
    .dropped_described = In { $rows } { $rows_number ->
        [one] Reihe
       *[other] Reihen
    } am Hals fehlt die Mitte des Vorderteils.
    .edge_described = { $edge ->
        [hem] Bund
        [cuff] Jedes Ärmelbündchen
       *[band] Halsbündchen
    }: { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } Rippen über den { $stitches } { $stitches_number ->
        [one] Masche, die
       *[other] Maschen, die
    } zu sehen sind{ $colours ->
        [named] , in { $colour }
       *[nameless] { "" }
    }.
    .front_described = Das Vorderteil eines Pullovers{ $kind ->
        [named] {" "}in { $colours }
       *[nameless] { "" }
    }. In { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } der Passe wird es zwischen den Raglanlinien von { $narrow } auf { $wide } { $wide_number ->
        [one] Masche
       *[other] Maschen
    } breiter.
    .body_described = Der Rumpf darunter hat { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } und endet mit { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } im Vorderteil.
    .seams_described = Die Nahtmaschen an den Seiten des Rumpfes und unter den Ärmeln sind linke Maschen.
    .purl = Nahtmaschen, links gestrickt
    .contrast = Heben sich die Farben voneinander ab?
    .in_colours = In Farbe
    .in_greys = Dasselbe in Grau
    .lightness = { $colour }: Helligkeit { $lightness } von 100
    .hardly_apart = { $first } und { $second } sind kaum auseinanderzuhalten: Sie liegen { $difference } auseinander.
    .contrast_described = Eine Strickschrift mit { $columns } { $columns_number ->
        [one] Spalte
       *[other] Spalten
    } und { $rows } { $rows_number ->
        [one] Reihe
       *[other] Reihen
    }, einmal in ihren Farben und einmal in gleich hellen Grautönen.

drawn_section =
    .body = Rumpf
    .back = Rückenteil
    .front = Vorderteil
    .sleeve = Ärmel

chart_sheet =
    .dimensions = Strickschrift: { $columns } { $columns_number ->
        [one] Spalte
       *[other] Spalten
    } und { $rows } { $rows_number ->
        [one] Reihe
       *[other] Reihen
    }.
    .nothing_worked = Die Strickschrift kommt in keiner Runde dieser Größe vor.
    .starts_in = beginnt in Spalte
    .start = { $section } { $column }
    .start_after = { $section } { $column } ({ $before } einfarbig)
    .start_in_row = { $section } { $column } in Reihe { $row }
    .plain = { $section } einfarbig
    .after = (1 einfarbig): so viele einfarbige Maschen davor
    .centre = { $of ->
        [all] Mitte
       *[some] Mitte ({ $sections })
    }: { $where ->
        [on] Spalte { $column }
       *[between] zwischen Spalte { $column } und { $next }
    }
    .increase = Zunahmerunde
    .double = Runde mit doppelten Zunahmen
    .decrease = Abnahmerunde
    .rounds_described = Gezeichnet über { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    }.
    .flag = { $sizes }: { $section }
    .flag_in_row = { $sizes }: { $section }, Reihe { $row }
    .size = Größe
    .of_section = { $section }: Spalten
    .at_split = Reihe bei der Aufteilung
    .rows_left = restliche Reihen
    .span = { $first } bis { $last }
    .span_in_row = { $first } bis { $last }, Reihe { $row }
    .size_described = Größe { $size }: erste Maschen bei { $starts }.

schematic =
    .measurement = Maß
    .in_cm = cm
    .in_inches = Zoll
    .cm = { $number } cm
    .inches = { $number } Zoll
    .drawn = Kräftiger Umriss mit seinen Maßen: Größe { $size }. Gestrichelter Umriss: Größe { $smallest }.
    .flat = { $letters } liegen flach: Gezeichnet ist jeweils die Hälfte.
    .as_worn = { $letter } ist wie getragen über einen gerundeten Hals gemessen; die Linie ist nicht maßstäblich.
    .outline = { $sizes ->
        [one] Ein Pullover liegt flach und maßstäblich, von vorn gesehen, mit ausgebreiteten Ärmeln.
       *[several] Pullover aller Größen liegen flach und maßstäblich ineinander, von vorn gesehen, mit ausgebreiteten
            Ärmeln.
    } Raglanlinien führen vom Hals bis unter die Arme; Halsbündchen, Bund und Ärmelbündchen sind gerippt.
    .measured = { $letter }: { $title }: { measured.length }.
    .unlettered = { $title }: { measured.length }.

yoke_plot =
    .section = { $of ->
        [back] Rückenteil
        [front] Vorderteil
        [both] Rücken- und Vorderteil
       *[sleeve] jeder Ärmel
    }
    .axes = Nach rechts: die Runden der Passe, vom Anschlag bis zur letzten (fett) vor der Aufteilung in Rumpf und
        Ärmel. Nach oben: die Maschen nach jeder Runde.
    .doubled = zwei Zunahmen an einem Rand des Rumpfs
    .version = { $of ->
        [designed] wie entworfen
       *[changed] mit den Änderungen
    }
    .rounds = Die Passe hat { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    }.
    .grows = Ihre Maschen, { yoke_plot.section }: von { $start } auf { $end }.
    .designed_rounds = Vor den Änderungen hatte die Passe in { $sizes } { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    }.

## Runde für Runde

increased =
    .back = Rückenteil
    .front = Vorderteil
    .sleeve = Ärmel

rounds =
    .increase = { $edges ->
        [body] nur Rumpf
        [sleeves] nur Ärmel
        [body_twice] Rumpf doppelt
        [body_twice_and_sleeves] Rumpf doppelt, Ärmel
       *[all] Rumpf und Ärmel
    }
    .increase_edges = { $kind ->
        [twice] { $twice } doppelt
        [both] { $twice } doppelt, { $once }
       *[once] { $once }
    }
    .row = { $side ->
        [wrong] Rückreihe
       *[right] Hinreihe
    }
    .row_increase = { rounds.row }: { $work }
    .neck_edges = { $work }, an beiden Enden je 1
    .divide = teilen
    .pick_up = unter dem Arm auffassen
    .change = { $stitches } { $way ->
        [more] mehr
       *[fewer] weniger
    }
    .first_and = { $work }, { $change }
    .evenly = { $stitches } { $way ->
        [more] mehr
       *[fewer] weniger
    }, gleichmäßig verteilt

page =
    .gauge = { gauge.counts }{ $fabric ->
        [stranded] {" "}(Strickschrift)
        [rib] {" "}(Rippen)
       *[plain] { "" }
    }

worksheet =
    .title = Strickprotokoll, Größe { $size }
    .reading = Für jede fertige Runde und jeden fertigen Schritt ein Kästchen abhaken. Angegeben sind die Maschen nach
        der Runde.
    .chart_reading = Neben einer Runde stehen ihre Reihe der Strickschrift und die Spalte, mit der jeder Abschnitt
        beginnt; Runden in einer Zeile folgen den Reihen der Reihe nach.
    .after_reading = „7 nach 4“ bedeutet: 4 Maschen ohne Muster stricken, dann mit Spalte 7 beginnen.
    .after = { $column } nach { $plain }
    .done = Fertig
    .first_sleeve = Ärmel 1
    .second_sleeve = Ärmel 2
    .round = Runde
    .increase = Zunahme
    .work = Arbeit
    .back_and_front = Rücken, vorn
    .back = Rücken
    .front = Vorn
    .sleeve = Ärmel
    .total = Alle
    .row = Reihe
    .stitches = Maschen
    .chart = Strickschrift
    .body = Rumpf

## Die Anleitung als Seite

pattern =
    .title = Anleitung
    .name = Pullover
    .about = Raglanpullover, von oben nach unten in einem Stück gestrickt
    .measurement = Maß
    .unit = Einheit
    .caution = Vorsicht
    .of_sizes = { $sizes_number ->
        [one] Größe
       *[other] Größen
    } { $sizes }: { $note }
    .notes = Hinweise für den Entwurf
    .notes_about = Für alle, die diese Anleitung veröffentlichen; sie werden nicht gedruckt.

### Names of sheets are at most 31 characters long, without any of [ ] : * ? / \

workbook =
    .garment = Pullover
    .table = Tabelle
    .sizes = Größen
    .instructions = Anleitung
    .warnings = Hinweise
    .sources = Quellen
    .part = Teil
    .item = Zeile
    .row = Bezeichnung
    .unit = Einheit
    .run = Alle Größen
    .size = Größe
    .knittable = Strickbar
    .yes = ja
    .no = nein
    .why_not = Warum nicht
    .sentence = Satz
    .code = Kennung
    .message = Hinweis
    .place = Stelle in der Anfrage
    .what = Was
    .which = Welche
    .note = Anmerkung
    .version = Version
    .gauge = Maschenprobe
    .bodies = Körpermaße
    .as_sent = wie gesendet
    .body_table = Maßtabelle
    .publication = Veröffentlichung
    .credit = Quellenangabe
    .cm = cm
    .inch = Zoll
    .counted = { $unit ->
        [stitches] Maschen
        [rounds] Runden
        [rows] Reihen
        [times] Mal
        [inch] Zoll
        [grams] Gramm
        [metres] Meter
        [yards] Yards
        [balls] Knäuel
       *[cm] cm
    }

## A gauge compared with the pattern's

advice =
    .as_written = Die eigene Maschenprobe ist die der Anleitung: wie angegeben stricken.
    .rows_differ = Die Maschen stimmen mit denen der Anleitung überein, die Reihen nicht: die Nadeln behalten und die
        Längen neu berechnen, die in Reihen angegeben sind.
    .beyond_needles = Das Gestrick ist viel { $fabric ->
        [tighter] fester
       *[looser] lockerer
    } als das der Anleitung, mehr, als eine oder zwei Nadelstärken ausgleichen: ein anderes Garn nehmen oder die Größe
        stricken, deren Maschen bei der eigenen Maschenprobe die gewünschte Weite ergeben.
    .another_needle = { $fabric ->
        [tighter] Das Gestrick ist fester als das der Anleitung: Nadeln nehmen, die eine oder zwei Stärken dicker sind,
       *[looser] Das Gestrick ist lockerer als das der Anleitung: Nadeln nehmen, die eine oder zwei Stärken dünner sind,
    } und ein neues Probestück stricken und spannen, denn nur das zeigt, ob sie die richtigen sind.
