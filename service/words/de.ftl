### Deutsch, wie gestrickt wird. `service/language.py` sagt, wie Meldungen ihre Werte bekommen.

## Around and inside other sentences

sizes =
    .only = { $sizes_number ->
        [one] Größe
       *[other] Größen
    } { $sizes }: { $sentence }
    .apart = Die Größen sind hier zu verschieden, um sie zusammen zu beschreiben: Jede hat ihre eigenen Zeilen.

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

ribbing =
    .knit_purl = Rippenmuster { $knit } rechts, { $purl } links
    .any = Rippenmuster

## Front matter

## Neck

neck =
    .cast_on_joined = { $stitches } Maschen anschlagen und zur Runde schließen, die Vorderseite außen, dabei die Maschen
        nicht verdrehen. Einen Maschenmarkierer für den Rundenbeginn einhängen.
    .cast_on_flat = { $stitches } Maschen anschlagen. Noch nicht zur Runde schließen: Die beiden Enden liegen in der
        vorderen Mitte.
    .place_markers = { $way ->
        [flat] Auf der Vorderseite der Arbeit Maschenmarkierer einhängen; dabei vom Anfang einer Hinreihe an zählen und
            dann von Maschenmarkierer zu Maschenmarkierer:
       *[joined] Vier weitere Maschenmarkierer einhängen; dabei vom Rundenbeginn an zählen und dann von
            Maschenmarkierer zu Maschenmarkierer:
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
    .short_rows = Das Rückenteil am Hals mit { $rows } verkürzten Reihen ohne Zunahmen erhöhen. { $begin ->
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
       *[joined] Letzte Reihe (Hinreihe): Bis zum Rundenbeginn stricken. In der nächsten Runde, das ist Runde 1 der
            Passe, auf jeder Seite die letzte Lücke schließen.
    }
    .raised = Durch die verkürzten Reihen liegt die Ausschnittkante hinten { measured.length } höher als vorn.
    .drop = Die { $rows_number ->
        [one] erste Runde
       *[other] ersten { $rows } Runden
    } der Passe mit ihren Zunahmen in Reihen hin und her stricken; { $side ->
        [wrong] Reihe 1 ist eine Rückreihe.
        [right] Reihe 1 ist eine Hinreihe.
       *[last] die letzte davon ist eine Hinreihe.
    }
    .drop_edges = In { $times_number ->
        [one] der letzten Hinreihe
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
    } { increases.where } zunehmen, zusammen { $more } Maschen. Es sind nun { $stitches } Maschen auf den Nadeln.

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
        Anfang eines Abschnitts, rechtsgeneigt an seinem Ende. Für eine Zunahme aus der Vorrunde
        die erste oder letzte Masche des Abschnitts nehmen, nie eine Raglanmasche.
    .doubled = Wo in einer Zunahmerunde an einer Kante 2 Maschen zugenommen werden, zwischen den beiden Zunahmen
        1 Masche stricken.
    .after_drop = Die Runden werden ab Reihe 1 der tiefer liegenden vorderen Mitte gezählt: Die { $rows } Reihen dort
        sind die ersten hier.
    .wrong_side = In Rückreihen die Zunahmen links stricken, und zwar so, dass sie sich, von der Vorderseite gesehen, wie
        in den Hinreihen neigen.
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
        [0] (in der nächsten Runde { increases.where } zunehmen, zusammen { $more } Maschen)
        [one] (1 Runde ohne Zunahmen stricken, in der nächsten Runde { increases.where } zunehmen, zusammen { $more } Maschen)
       *[other] ({ $rounds } Runden ohne Zunahmen stricken, in der nächsten Runde { increases.where } zunehmen, zusammen { $more } Maschen)
    }

## Split

split =
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
    .second_sleeve = Die nächsten { $held } Maschen für den zweiten Ärmel auf einem Hilfsfaden stilllegen{ split.underarm }
    .start_back = Zur Runde schließen und bis zum Rundenbeginn in der rückwärtigen Mitte weiterstricken. Dort beginnen
        auch die Runden des Rumpfes.
    .start_underarm = Zur Runde schließen. Einen Maschenmarkierer für den Rundenbeginn einhängen, und zwar
        { shape.start } der zweiten Achsel{ shape.seams }: Dort endet Runde 1, und dort beginnt und endet jede weitere
        Runde des Rumpfes.
    .body = Der Rumpf hat { $stitches } Maschen. Die anderen Maschenmarkierer werden nicht mehr gebraucht.
    .front_extra = Von Achsel zu Achsel hat das Vorderteil { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } mehr als das Rückenteil.
    .seam = { $seam_number ->
        [one] Die mittlere Masche jeder Achsel ist eine Nahtmasche: In jeder Runde rechts stricken; Zu- und Abnahmen
            liegen beiderseits davon.
       *[other] Die mittleren { $seam } Maschen jeder Achsel sind Nahtmaschen: In jeder Runde rechts stricken; Zu- und
            Abnahmen liegen beiderseits davon.
    }

## Shaping of body and sleeves

shape =
    .where = { $at ->
        [seam] beiderseits der Nahtmaschen
        [either] beiderseits der Nahtmaschen oder, in Größen ohne Nahtmaschen, des Maschenmarkierers
       *[marker] beiderseits des Maschenmarkierers
    }
    .start = nach { $before_number ->
        [0] keiner Masche, also am Anfang,
        [one] der ersten Masche
       *[other] den ersten { $before } Maschen
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
    .decreases = In einer Abnahmerunde 4 Maschen abnehmen, an jeder Seite des Rumpfes je 1 { shape.where }: davor
        2 Maschen einzeln wie zum Rechtsstricken abheben und rechts verschränkt zusammenstricken (linksgeneigt), danach
        2 Maschen rechts zusammenstricken (rechtsgeneigt).
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
    .return = Die { $held } stillgelegten Maschen eines Ärmels wieder auf die Nadeln nehmen. Auf der Vorderseite aus
        { $underarm_number ->
            [one] der an seiner Achsel angeschlagenen Masche
           *[other] jeder der { $underarm } an seiner Achsel angeschlagenen Maschen
        } 1 Masche auffassen: { $stitches } Maschen.
    .start = Die Runden eines Ärmels beginnen und enden an seiner Achsel, die auf die Maschen aus der Passe folgt, und zwar
        { shape.start }{ shape.seams }. Dort den Faden ansetzen und einen Maschenmarkierer für den Rundenbeginn
        einhängen.
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
    .decrease = 1 Runde rechts stricken und dabei { $many_number ->
        [one] { $many } Masche
       *[other] gleichmäßig verteilt { $many } Maschen
    } abnehmen. Es sind nun { $stitches } Maschen auf den Nadeln.
    .increase = 1 Runde rechts stricken und dabei { $many_number ->
        [one] { $many } Masche
       *[other] gleichmäßig verteilt { $many } Maschen
    } zunehmen. Es sind nun { $stitches } Maschen auf den Nadeln.
    .work = { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } im { $rib } stricken.
    .bind_off = Die Maschen locker im Rippenmuster abketten.

band =
    .pick_up = Auf der Vorderseite, beginnend am Rundenbeginn der Passe, aus jeder Anschlagmasche 1 Masche
        auffassen: { $stitches } Maschen.
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
    .block = Den Pullover auf die Fertigmaße spannen, { measured.length } Oberweite, und liegend trocknen lassen.
    .no_cords = Bei Babys und kleinen Kindern am Hals keine Kordeln, Bänder oder Zugbänder verwenden.

## Titles of parts and rows

## Warnings, reasons and causes

warning =
    .told_size_by_size = { $part }: Die Größen sind zu verschieden, um sie zusammen zu beschreiben; jede ist für sich
        beschrieben. Werden die Zu- und Abnahmen zuerst so dicht wie möglich statt gleichmäßig verteilt, stehen sie
        nebeneinander.
    .many_sentences = { $part }: { $sentences } Sätze sind schwer zu verfolgen. Weniger Größen oder einfachere Vorgaben
        brauchen weniger.

## Shaping plans

## Pictures and the workbook
