### Deutsch, wie gestrickt wird. `service/language.py` sagt, wie Meldungen ihre Werte bekommen.

## Around and inside other sentences

sizes =
    .only = { $sizes_number ->
        [one] Size
       *[other] Sizes
    } { $sizes }: { $sentence }
    .apart = Die Größen sind hier zu verschieden, um sie zusammen zu beschreiben: Jede hat ihre eigenen Zeilen.
    .labels = { $many_number ->
        [one] Größe
       *[other] Größen
    }: { $sizes }.
    .to_fit = Passend für { measure.bust } { measured.length }.
    .ease = { $kind ->
        [less] Der Pullover ist { measured.length } enger als der Körper ({ measure.bust }) und dehnt sich beim Tragen.
        [either] Der Pullover ist { measured.length } weiter als der Körper ({ measure.bust }), oder enger, wo die Zahl
            kleiner als 0 ist.
       *[more] Mehrweite ({ measure.bust }): { measured.length }. Um so viel ist der Pullover weiter als der Körper.
    }
    .run = Wo sich die Größen unterscheiden, gilt die erste Zahl für Größe { $first }, { $others_number ->
        [one] die Zahl in Klammern für Größe { $others }.
       *[other] die Zahlen in Klammern gelten der Reihe nach für { $others }.
    } Eine einzelne Zahl gilt für alle Größen.
    .dash = „{ $dash }“ anstelle einer Zahl heißt: Die eigene Größe hat nicht, was dort steht. Den Satz, oder diesen
        Teil von ihm, auslassen.
    .impossible = { $sizes_number ->
        [one] Größe { $sizes } lässt
       *[other] Die Größen { $sizes } lassen
    } sich so nicht stricken.

span =
    .rounds = { $last ->
       *[other] Rounds { $first } to { $last }
    }

edges =
    .back = back
    .front = front
    .sleeve = sleeves

section =
    .back = back
    .front = front
    .first_sleeve = first sleeve
    .second_sleeve = second sleeve
    .line = raglan line

times =
    .all = { $times } { $times_number ->
        [one] time
       *[other] times
    }

ribbing =
    .knit_purl = k{ $knit }, p{ $purl } rib
    .any = rib

## Front matter

measured =
    .length = { $length_cm } cm

finished_measurements =
    .bust = { title.finished_bust }: { measured.length }.
    .upper_arm = { title.finished_upper_arm }: { measured.length }.
    .neck = { title.finished_neck }: { measured.length }.
    .depth = { title.finished_depth }: { measured.length }.
    .underarm = { title.finished_underarm }: { measured.length }.
    .hem = { title.finished_hem }: { measured.length }.
    .wrist = { title.finished_wrist }: { measured.length }.
    .body_length = { title.finished_body_length }: { measured.length }.
    .front_length = { title.finished_front_length }: { measured.length }.
    .front_extra = { title.finished_front_extra }: { measured.length }.
    .sleeve_length = { title.finished_sleeve_length }: { measured.length }.
    .total_length = { title.finished_total_length }: { measured.length }.
    .reach = { title.finished_reach }: { measured.length }.
    .band = { title.finished_band }: { measured.length }.

gauge =
    .counts = { $stitches } Maschen und { $rounds } Runden = 10 cm
    .plain = Glatt rechts, in Runden gestrickt und gespannt: { gauge.counts }.
    .stranded = Nach der Strickschrift, in Runden gestrickt und gespannt: { gauge.counts }.
    .rib = Im Rippenmuster, in Runden gestrickt und gespannt: { gauge.counts }.

needles =
    .range = Mit Nadelstärke { $thinnest } bis { $thickest } mm beginnen und die Stärke nehmen, mit der die Maschenprobe
        stimmt, welche Zahl sie auch hat.
    .thick = Mit Nadelstärke { $thinnest } mm oder dicker beginnen und die Stärke nehmen, mit der die Maschenprobe
        stimmt, welche Zahl sie auch hat.
    .stranded = Für die Runden der Strickschrift die Nadeln nehmen, mit denen deren Maschenprobe stimmt.
    .rib = { $kind ->
        [gauge] Für Bund, Ärmelbündchen und Halsbündchen die Nadeln nehmen, mit denen die Maschenprobe des Rippenmusters
            stimmt.
       *[thinner] Für Bund, Ärmelbündchen und Halsbündchen Nadeln nehmen, die eine oder zwei Stärken dünner sind.
    }
    .circular = Rundstricknadeln für Passe, Rumpf, Bund und Halsbündchen, jede etwas kürzer als die Runden, die auf ihr
        liegen.
    .double_pointed = Nadelspiele in denselben Stärken für Ärmel und Ärmelbündchen und überall, wo eine Runde für eine
        Rundstricknadel zu klein ist.

yarn =
    .whose = { $colours ->
        [one] Garn
       *[several] Garn in { $colour }
    }
    .amount = { yarn.whose }: etwa { $grams } g, das sind { $metres } m.
    .balls = { yarn.whose }, Einkauf mit { $margin } % Reserve: { $balls } Knäuel zu { $ball_grams } g.
    .basis = { $basis ->
        [measured] Die Mengen sind nach einem gewogenen Probestück berechnet. Anschlag, Abketten und Fadenenden brauchen
            mehr: Dafür ist die Reserve.
       *[estimated] Die Mengen sind nach der Breite einer Masche geschätzt. Rippenmuster, Spannfäden, Anschlag, Abketten
            und Fadenenden brauchen mehr: Dafür ist die Reserve.
    }

notions =
    .markers = { $markers } Maschenmarkierer, einer davon anders als die übrigen, für den Rundenbeginn.
    .waste_yarn = Hilfsfaden oder 2 Maschenhalter für die Maschen der beiden Ärmel.
    .tapestry_needle = Eine Wollnadel für die Fadenenden.

terms =
    .stockinette = Glatt rechts: in Runden alle Maschen rechts stricken{ $rows ->
        [some] ; in Hinreihen rechts, in Rückreihen links stricken
       *[none] { "" }
    }. Alles wird glatt rechts gestrickt, wenn kein anderes Muster genannt ist.
    .rib = { ribbing.knit_purl }: bis zum Rundenende immer abwechselnd { $knit } { $knit_number ->
        [one] Masche
       *[other] Maschen
    } rechts und { $purl } { $purl_number ->
        [one] Masche
       *[other] Maschen
    } links stricken.
    .every = „In jeder { $every }. Runde“: { $plain } { $plain_number ->
        [one] Runde
       *[other] Runden
    } ohne Zu- und Abnahmen stricken, danach die Zunahme- oder Abnahmerunde.
    .cycle = „Abwechselnd im Abstand von { $cycle } Runden“: Jeder Abstand endet mit einer Zunahme- oder Abnahmerunde,
        die Runden davor werden ohne Zu- und Abnahmen gestrickt. Alle Abstände nacheinander zählen 1-mal.
    .right_side = Vorderseite: die Seite des Gestricks, die beim Tragen außen liegt.
    .wrong_side = Rückseite: die Seite des Gestricks, die beim Tragen innen liegt. In einer Hinreihe zeigt beim Stricken
        die Vorderseite nach vorn, in einer Rückreihe die Rückseite.
    .slip_marker = Einen Maschenmarkierer abheben: von der linken auf die rechte Nadel heben.
    .make_one_left = Linksgeneigte Zunahme aus dem Querfaden: den Querfaden zwischen zwei Maschen von vorn nach hinten
        auf die linke Nadel heben und rechts verschränkt stricken.
    .make_one_right = Rechtsgeneigte Zunahme aus dem Querfaden: den Querfaden zwischen zwei Maschen von hinten nach vorn
        auf die linke Nadel heben und rechts stricken.
    .lifted_left = Linksgeneigte Zunahme aus der Masche der Vorrunde: das linke Maschenglied der Masche, die zwei Runden
        unter der letzten Masche auf der rechten Nadel liegt, auf die linke Nadel heben und rechts verschränkt stricken.
    .lifted_right = Rechtsgeneigte Zunahme aus der Masche der Vorrunde: das rechte Maschenglied der Masche, die unter
        der nächsten liegt, auf die linke Nadel heben und rechts stricken, danach die nächste Masche selbst.
    .slip_slip_knit = Linksgeneigte Abnahme: 2 Maschen einzeln wie zum Rechtsstricken abheben, mit der linken Nadel von
        vorn in beide einstechen und sie rechts verschränkt zusammenstricken.
    .knit_together = Rechtsgeneigte Abnahme: 2 Maschen rechts zusammenstricken.
    .short_row = Verkürzte Reihe: eine Reihe, bei der vor dem Ende gewendet wird. Verkürzte Reihen machen einen Teil des
        Gestricks höher als den Rest.
    .double_stitch = So lässt sich wenden: wenden, den Faden nach vorn legen, 1 Masche wie zum Linksstricken abheben und
        den Faden über die Nadel nach hinten ziehen, bis zwei Maschenglieder auf der Nadel liegen (Doppelmasche). Um die
        Lücke zu schließen, beide Maschenglieder zusammen als 1 Masche abstricken.
    .hold = Stilllegen: die Maschen ungestrickt auf einen Hilfsfaden oder Maschenhalter nehmen. Dort bleiben sie, bis
        sie wieder auf die Nadeln genommen werden.
    .pick_up = Auffassen: bei vorn liegender Vorderseite von vorn nach hinten in den Rand einstechen und den Faden als
        neue Masche durchholen.
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
       *[sleeve] Für die Ärmellänge des Entwurfs an jedem Ärmel vor dem Bündchen { own_gauge.rounds } mehr stricken.
    }
    .leave_out = { $part ->
        [yoke] Für die Passenhöhe des Entwurfs in der Passe gleichmäßig verteilt { own_gauge.rounds } weglassen.
        [body] Für die Rumpflänge des Entwurfs im Rumpf gleichmäßig verteilt { own_gauge.rounds } weglassen.
       *[sleeve] Für die Ärmellänge des Entwurfs in jedem Ärmel gleichmäßig verteilt { own_gauge.rounds } weglassen.
    }
    .wider = Dafür in der Passe die Zunahmen in größeren Abständen gleichmäßig auf alle Runden verteilen.
    .closer = Dafür in der Passe die Zunahmen in kleineren Abständen arbeiten, in jeder Runde, wo es nötig ist.
    .double_body = Dafür in der Passe an jedem Rand von Rücken- und Vorderteil in so vielen Zunahmerunden wie nötig 2
        Maschen statt 1 zunehmen, in den angegebenen Abständen.
    .nearest = Für die fertige { measure.bust } der Größe { $sizes } mit der eigenen Maschenprobe Größe { $nearest }
        stricken.

## Neck

neck =
    .cast_on_joined = Cast on { $stitches } stitches and join in the round, right side outside, taking care not to
        twist them. Place a marker for the start of the round.
    .cast_on_flat = Cast on { $stitches } stitches. Don't join them yet: the two ends lie at the center front.
    .place_markers = { $way ->
        [flat] With the right side facing, place markers, counting from the end where a right-side row begins:
       *[joined] Place four more markers, counting from the start of the round:
    }
    .marker = Count { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } ({ $parts }) and place marker { $marker }.
    .marker_here = Place marker { $marker } there as well.
    .start_marker = Count { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } ({ $parts }) and place the marker for the start of the round.
    .start_here = Place the marker for the start of the round there as well.
    .rest = The other { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } ({ $parts }) lead to the { $way ->
        [flat] other end.
       *[joined] start of the round.
    }
    .short_rows = Raise the back of the neck with { $rows } short rows, without increases. { $begin ->
        [right] Row 1 begins at the center front with the right side facing.
        [wrong] Row 1 begins at the center front with the wrong side facing.
       *[start] Row 1 begins at the start of the round with the right side facing, and the rows go back and forth across
            it.
    }
    .short_row_method = Turn in the way you know best, and when you come to a turn in a later row, close its gap. Stitches
        past a marker are counted from the marker in the direction you are working.
    .turn = Row { $row } ({ $side ->
        [wrong] wrong side
       *[right] right side
    }): work to { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } past marker { $marker }, turn.
    .last_row = { $kind ->
        [flat] Last row (right side): work to the end of the row. Join in the round at the center front, right side
            outside, and work on to the start of the round. The last row and these stitches are worked without
            increases and are no round of the yoke.
        [right] Last row (right side): work to the end of the row without increases. It is no round of the yoke.
        [wrong] Last row (wrong side): work to the end of the row without increases. It is no round of the yoke.
       *[joined] Last row (right side): work to the start of the round. In the next round, which is round 1 of the yoke,
            close the last gap at each side.
    }
    .raised = The short rows make the back { $height_cm } cm ({ $height_inch } in) higher than the front.
    .drop = Work the first { $rows } rounds of the yoke, with its increases, back and forth as rows; { $side ->
        [wrong] row 1 is a wrong-side row.
        [right] row 1 is a right-side row.
       *[last] the last of them is a right-side row.
    }
    .drop_edges = In each of the last { $times } right-side rows among them increase 1 stitch more after the first stitch
        of the row, left-leaning, and 1 before the last, right-leaning.
    .drop_join = At the end of the last of these rows cast on { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } for the center front and join in the round, right side outside. Work on to the start of the round without
        increases, and go on with round { $round }.
    .sections = You have { $stitches } stitches: { $back } for the back, { $front } for the front, { $sleeve } for each
        sleeve{ $line_number ->
            [0] .
           *[other] , { $line } for each raglan line.
        }
    .edge = The edge of the neck measures { $edge_cm } cm ({ $edge_inch } in) around, not stretched.

## Chart

chart_section =
    .back = das Rückenteil
    .front = das Vorderteil
    .sleeve = jeder Ärmel

chart =
    .rows = Von der ersten Runde der Passe an gezählt in Runde { $round } Reihe 1 der Strickschrift stricken und in
        jeder weiteren Runde die nächste Reihe, auch in Rumpf und Ärmeln.
    .again = Nach Reihe { $height } wieder mit Reihe 1 beginnen.
    .once = Nach Reihe { $height } ist die Strickschrift beendet.
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
    .body = Runde 1 des Rumpfes ist Reihe { $row } der Strickschrift. Die Spalten laufen aus der Passe über die unter
        den Armen angeschlagenen Maschen weiter.
    .body_back = Nach { $before_number ->
        [one] der ersten Masche
       *[other] den ersten { $before } Maschen
    } der zweiten Achsel beginnt dann das Rückenteil mit Spalte { $column }.
    .body_front = Nach { $before_number ->
        [one] der ersten Masche
       *[other] den ersten { $before } Maschen
    } der ersten Achsel beginnt dann das Vorderteil mit Spalte { $column }.
    .sleeve = Runde 1 jedes Ärmels ist Reihe { $row } der Strickschrift. Die Spalten laufen aus der Passe über die
        Maschen der Achsel weiter.
    .sleeve_start = Nach { $before_number ->
        [one] der ersten Masche
       *[other] den ersten { $before } Maschen
    } seiner Achsel, wo seine Runden beginnen, beginnt dann jeder Ärmel mit Spalte { $column }.
    .narrow_body = Rücken- und Vorderteil nur in { $colour } stricken, solange sie weniger als { $stitches } Maschen
        haben.
    .narrow_sleeve = Jeden Ärmel nur in { $colour } stricken, solange er weniger als { $stitches } Maschen hat.
    .plain = Was nicht in der Strickschrift steht, wird in { $colour } gestrickt: { $rounds ->
        [before] die Runden vor der Strickschrift, verkürzte Reihen, Bund, Ärmelbündchen und Halsbündchen.
        [after] die Runden nach der Strickschrift, verkürzte Reihen, Bund, Ärmelbündchen und Halsbündchen.
        [both] die Runden vor und nach der Strickschrift, verkürzte Reihen, Bund, Ärmelbündchen und Halsbündchen.
       *[none] verkürzte Reihen, Bund, Ärmelbündchen und Halsbündchen.
    }
    .lines = Die Raglanmaschen in { $colour } stricken.
    .seams = Die Nahtmaschen der Achseln in { $colour } stricken.
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
        [twice] 2 stitches at each edge of { $twice }
        [both] 2 stitches at each edge of { $twice } and 1 at each edge of { $once }
       *[once] 1 stitch at each edge of { $once }
    }

yoke =
    .lines = The { $line } { $line_number ->
        [one] stitch that follows
       *[other] stitches that follow
    } each of the markers 1 to 4 are a raglan line. Back, sleeves and front each begin after a raglan line and end
        before a marker: these are their edges. Slip the markers as you come to them.
    .no_lines = The raglan lines run at markers 1 to 4. Back, sleeves and front each begin after a marker and end before
        the next: these are their edges. Slip the markers as you come to them.
    .leaning = Work increases as lifted or as make-one increases, as you prefer: left-leaning ones where a section begins,
        right-leaning ones where it ends, each with none of the raglan stitches.
    .doubled = Where there are 2 at one edge, work 1 stitch between them.
    .increase = { $every_number ->
        [1] Work an increase round { times.all }, one right after the other
       *[other] Work an increase round every { $every } rounds, { times.all }
    }: { increases.where }, { $more } more in each round. There are now { $stitches } stitches on the needles.
    .cycle = Work increase rounds at intervals of { $cycle } rounds in turn, { times.all } over: { increases.where },
        { $more } more in each round. There are now { $stitches } stitches on the needles.
    .plain = Work { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } without increases.
    .rounds_increase = { span.rounds }: { $every_number ->
        [1] work an increase round { times.all }, one right after the other
       *[other] work an increase round every { $every } rounds, { times.all }
    }: { increases.where }, { $more } more in each round. There are now { $stitches } stitches on the needles.
    .rounds_cycle = { span.rounds }: work increase rounds at intervals of { $cycle } rounds in turn, { times.all } over:
        { increases.where }, { $more } more in each round. There are now { $stitches } stitches on the needles.
    .rounds_steps = { span.rounds }: work these steps { times.all }: { $steps }. There are now { $stitches } stitches on
        the needles.
    .rounds_listed = In Runde { $rounds } zunehmen: { increases.where }, in jeder dieser Runden { $more } mehr.
    .rounds_other = In allen anderen Runden nicht zunehmen. Nach Runde { $last } sind { $stitches } Maschen auf den
        Nadeln.
    .rounds_plain = { span.rounds }: work without increases.
    .depth = The yoke has { $rounds } rounds. It measures { $depth_cm } cm ({ $depth_inch } in) from the cast-on edge, short
        rows not counted.

step =
    .increase = { $rounds_number ->
        [0] in the next round increase { increases.where }
        [one] work 1 round without increases, then increase { increases.where }
       *[other] work { $rounds } rounds without increases, then increase { increases.where }
    }

## Split

split =
    .begin = Divide the { $stitches } stitches in the next round, which is round 1 of the body:
    .first_sleeve = Work to marker 1{ $past_number ->
        [0] { "" }
        [one] {" "}and 1 stitch past it
       *[other] {" "}and { $past } stitches past it
    }. Place the next { $held } stitches on hold on waste yarn for the first sleeve, and cast on { $underarm }
        { $underarm_number ->
            [one] stitch
           *[other] stitches
        } for its underarm.
    .front = Work the next { $stitches } stitches for the front.
    .second_sleeve = Place the next { $held } stitches on hold on waste yarn for the second sleeve, and cast on { $underarm }
        { $underarm_number ->
            [one] stitch
           *[other] stitches
        } for its underarm.
    .start_back = Join in the round and work on to the start of the round at the center back. The rounds of the body start
        there, too.
    .start_underarm = Join in the round. Place a marker for the start of the round after the first { $before } stitches of
        the second underarm{ $seams ->
            [none] { "" }
           *[all] , which is after its { $seam } seam stitches
        }: round 1 ends there, and every later round of the body starts and ends there.
    .body = The body has { $stitches } stitches. The other markers are no longer needed.
    .front_extra = From underarm to underarm the front has { $stitches } stitches more than the back.
    .seam = The middle { $seam } { $seam_number ->
        [one] stitch
       *[other] stitches
    } of each underarm are seam stitches; shaping is worked on either side of them.

## Shaping of body and sleeves

shape =
    .where = { $at ->
        [seam] on either side of the seam stitches
        [either] on either side of the seam stitches, or of the marker where your size has none
       *[marker] on either side of the marker
    }

body =
    .side_markers = Place a marker at each side: after the first { $before } stitches of each underarm{ $seams ->
        [none] { "" }
       *[all] , which is after its { $seam } seam stitches
    }. Where the round starts there, its marker is one of the two.
    .decreases = A decrease round takes 4 stitches, 1 { shape.where } at each side: before it slip, slip, knit
        (left-leaning), after it knit 2 together (right-leaning).
    .increases = An increase round adds 4 stitches, 1 { shape.where } at each side: a right-leaning increase before it,
        a left-leaning one after it.
    .plain = Work { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } without shaping.
    .decrease = { $every_number ->
        [1] Work a decrease round { times.all }, one right after the other
       *[other] Work a decrease round every { $every } rounds, { times.all }
    }, { $change } fewer in each. There are now { $stitches } stitches on the needles.
    .decrease_cycle = Work decrease rounds at intervals of { $cycle } rounds in turn, { times.all } over, { $change }
        fewer in each. There are now { $stitches } stitches on the needles.
    .increase = { $every_number ->
        [1] Work an increase round { times.all }, one right after the other
       *[other] Work an increase round every { $every } rounds, { times.all }
    }, { $change } more in each. There are now { $stitches } stitches on the needles.
    .increase_cycle = Work increase rounds at intervals of { $cycle } rounds in turn, { times.all } over, { $change }
        more in each. There are now { $stitches } stitches on the needles.
    .darts = In round { $round } lengthen the front over the bust with { $rows } short rows, without increases or decreases:
        work over the back to the first side marker, then back and forth over the front.
    .dart_turns = Short rows { $row } (right side) and { $next } (wrong side): work to { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } before the middle of the underarm ahead, turn. A stitch in the very middle of an underarm is not counted.
    .darts_end = After the last short row work, with the right side facing, to the end of the round. Close the gaps at the
        beginning of the front in the round after it.
    .rounds = The body now has { $rounds } rounds and measures { $length_cm } cm ({ $length_inch } in) from the underarm.
    .length = With its hem the body measures { $length_cm } cm ({ $length_inch } in) from the underarm.

sleeve =
    .return = Return the { $held } held stitches of a sleeve to the needles, and pick up and knit 1 stitch in each of the
        { $underarm } stitches cast on at its underarm: { $stitches } stitches.
    .start = The underarm follows the stitches from the yoke. Place a marker for the start of the round after its first
        { $before } stitches{ $seams ->
            [none] { "" }
           *[all] , which is after its { $seam } seam stitches
        }.
    .decreases = A decrease round takes 2 stitches, 1 { shape.where }: before it slip, slip, knit (left-leaning), after it
        knit 2 together (right-leaning).
    .plain = Work { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } without shaping.
    .decrease = { $every_number ->
        [1] Work a decrease round { times.all }, one right after the other
       *[other] Work a decrease round every { $every } rounds, { times.all }
    }, { $change } fewer in each. There are now { $stitches } stitches on the needles.
    .decrease_cycle = Work decrease rounds at intervals of { $cycle } rounds in turn, { times.all } over, { $change }
        fewer in each. There are now { $stitches } stitches on the needles.
    .rounds = The sleeve now has { $rounds } rounds and measures { $length_cm } cm ({ $length_inch } in) from the underarm.
    .length = With its cuff the sleeve measures { $length_cm } cm ({ $length_inch } in) from the underarm.
    .second = Work the second sleeve in the same way.

## Hem, cuffs and neckband

rib =
    .decrease = Knit 1 round and decrease { $many } { $many_number ->
        [one] stitch in it
       *[other] stitches evenly in it
    }. There are now { $stitches } stitches on the needles.
    .increase = Knit 1 round and increase { $many } { $many_number ->
        [one] stitch in it
       *[other] stitches evenly in it
    }. There are now { $stitches } stitches on the needles.
    .work = Work { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } in { $rib }.
    .bind_off = Bind off loosely in rib.

band =
    .pick_up = With the right side facing, from the start of the round pick up and knit 1 stitch in each cast-on stitch:
        { $stitches } stitches.
    .pick_up_drop = With the right side facing, from the start of the round pick up and knit 1 stitch in each cast-on stitch
        and { $side } stitches along the { $rows } row ends at each side of the front, that is about { $rate } for every
        { $per } rows: { $stitches } stitches.
    .fold = Purl 1 round for the fold.
    .inner = Work { $rounds } more { $rounds_number ->
        [one] round
       *[other] rounds
    } in the same rib for the inner layer.
    .join = Fold the band to the inside and join each stitch loosely to the first round of the band, so that the neck still
        stretches over the head.
    .height = The neckband is { $height_cm } cm ({ $height_inch } in) high.

## Finishing

finishing =
    .underarms = Close the gaps at the ends of both underarms with the tails of the yarn.
    .ends = Weave in all ends.
    .block = Block the pullover to the finished measurements, { $bust_cm } cm ({ $bust_inch } in) around the bust, and let
        it dry flat.
    .no_cords = For a baby or a young child use no cord, ribbon or drawstring at the neck.

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
    .part_finishing = Fertigstellen
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
    .yoke_back_increases = Passe, Zunahmen an jedem Rand des Rückenteils
    .yoke_front_increases = Passe, Zunahmen an jedem Rand des Vorderteils
    .yoke_sleeve_increases = Passe, Zunahmen an jedem Rand eines Ärmels
    .yoke_doubled_rounds = Passe, Zunahmerunden mit 2 Maschen an einem Rand
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
    .sleeve_rounds = Ärmel, Runden vor dem Bündchen
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
    .yarn_balls = { yarn.whose }, Knäuel

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
    .body = des Rumpfs
    .sleeve = der Ärmel
    .hem = des Bunds
    .cuff = der Ärmelbündchen
    .neckband = des Halsbündchens

cause =
    .alone = { $causes_number ->
        [one] Grund: { $causes }.
       *[other] Gründe: { $causes }; auf einen einzigen davon zu verzichten genügt.
    }
    .together = Gründe, die zusammenwirken: { $causes }; erst auf alle zu verzichten genügt.
    .not_sought = Der Grund liegt in einer der anderen Vorgaben; bei weniger Größen auf einmal nennt die Antwort sie.
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
    }, der eine { $parity ->
        [odd] ungerade
       *[even] gerade
    } Maschenzahl verlangt
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
       *[hem] des Bunds
    }
    .neck_shares = die Anteile von Rückenteil, Vorderteil und Ärmeln am Hals
    .yoke_change = die geänderte Passenhöhe
    .own_gauge = die eigene Maschenprobe, bei der Maschen und Runden bleiben, wie sie angegeben sind
    .chart = die Strickschrift, deren letzter Rapport zu Ende gestrickt wird
    .other_sizes = die anderen Größen (keine Maschenzahl darf kleiner sein als in der Größe davor, und jedes Teil hat in
        allen Größen eine gerade oder in allen eine ungerade Maschenzahl)
    .increases_need_rounds = Die Zunahmen vom Hals bis zur Aufteilung brauchen { $rounds_number ->
        [one] die eine Runde
       *[other] alle { $rounds } Runden
    } der Passe.
    .whole_rounds = Ganze Runden in Passe, Rumpf und Bündchen kommen nicht näher heran.
    .whole_stitches = Eine Masche ist { $stitch } cm breit, und Maschenzahlen, die an Hals, Passe und Aufteilung
        zusammenpassen, kommen nicht näher heran.
    .shaped_by = Der Rumpf wird um je { $stitches } Maschen von { $stitch } cm Breite geformt, und keine Größe hat
        weniger
        Maschen als die davor.
    .negative_ease = Die gewünschte Mehrweite beträgt dort { $ease } cm.
    .little_ease = Die gewünschte Mehrweite beträgt dort { $ease } cm, und das Runden auf ganze Maschen kann mehr als
        das
        wegnehmen.
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
    .wider = Mit zusätzlichen Runden nur nach der letzten Zunahme wären vor der Aufteilung { $plain } von { $rounds }
        Runden
        ohne Zunahmen; mit größeren Abständen bleiben die Raglanlinien gleichmäßig.
    .closer = Mit kleineren Abständen passen alle Zunahmen hinein, ohne 2 an einer Kante in einer Runde.
    .closer_than_doubled = Mit 2 Rumpfzunahmen an einer Kante würden { $streak } Zunahmerunden aufeinanderfolgen; mit
        kleineren Abständen liegen Runden dazwischen.
    .closer_alone = In den angegebenen Abständen reichen die Runden auch mit 2 Rumpfzunahmen an einer Kante nicht,
        deshalb
        werden die Abstände kleiner.
    .together = In denselben Runden gearbeitet, passen die Zunahmen von Rumpf und Ärmeln in den angegebenen Abständen
        hinein, ohne 2 an einer Kante in einer Runde.
    .double_body = Mit 2 Rumpfzunahmen an einer Kante in { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } bleiben die Zunahmen in den angegebenen Abständen, die Ärmel bei einzelnen Zunahmen und die Maschenzahlen bei der
        Aufteilung gleich.
    .no_way = Auf keine Weise wird die Passe { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } hoch; die niedrigste mögliche hat { $shallowest }.

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
    .too_few_rounds_above_level = { $measure }: Darüber werden { $needed } { $needed_number ->
        [one] Runde
       *[other] Runden
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
    }, und frei sind { $room }: { $missing } zu wenig.
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
        [flat] , bei denen an jedem Rand eine Masche bleibt
       *[round] { "" }
    }, und gewünscht sind { $asked }.
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
    .neck_too_narrow = Der Hals hat neben den Raglanlinien { $stitches } Maschen und braucht { $fewest }.
    .no_permitted_cast_on = Kein Vielfaches von { $multiple } liegt nah genug bei einem Anschlag von { $stitches }
        Maschen,
        von dem jedes Teil bis zu { $reach } Maschen mehr oder weniger haben darf.
    .neck_too_wide_body = Der Rumpf soll { $stitches } Maschen haben, und Rücken- und Vorderteil am Hals haben mit ihrem
        Anteil der Raglanlinien und den Achseln schon { $least }.
    .neck_too_wide_body_extra = Der Rumpf soll { $stitches } Maschen haben, und Rücken- und Vorderteil am Hals haben mit
        ihrem Anteil der Raglanlinien, der größeren Weite des Vorderteils und den Achseln schon { $least }.
    .neck_too_wide_sleeve = Der Ärmel soll { $stitches } Maschen haben, und am Hals hat er mit seinem Anteil der
        Raglanlinien und der Achsel schon { $least }.
    .no_permitted_counts = Es gibt keine erlaubten Maschenzahlen von Rumpf, Ärmel und Achsel, die zusammenpassen.
    .front_extra_grows_too_fast = Die größere Weite des Vorderteils nimmt so schnell zu, dass das Rückenteil weniger
        Maschen
        hätte als in der Größe davor.
    .underarm_grows_too_fast = Höchstens { $reach } Maschen neben dem, was diese Größe haben soll, gibt es keine
        Maschenzahlen, die so groß sind wie in der Größe davor: Die Achsel wächst schneller als Rumpf oder Ärmel.
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
    } mit { $middle } in der Mitte lässt { $sides } für seine beiden Seiten übrig, die gleich sein und je eine Masche
        haben
        müssen.
    .back_too_high = { $pairs } { $pairs_number ->
        [one] Paar verkürzter Reihen braucht
       *[other] Paare verkürzter Reihen brauchen
    } auf jeder Seite ebenso viele Maschen für die Wendestellen, und es gibt { $stitches }.
    .back_too_high_front = Die letzten Wendestellen liegen { $reach } { $reach_number ->
        [one] Masche
       *[other] Maschen
    } weit in einem Vorderteil von { $front } und dürfen höchstens { $most } weit darin liegen.
    .darts_without_round = Die verkürzten Reihen über der Brust werden in einer Runde ohne Strickschrift und ohne Zu-
        oder
        Abnahmen gestrickt, höchstens { $deepest } cm unter der Achsel, und die Runden { $first } bis { $last } des
        Rumpfs
        haben alle das eine oder das andere.
    .darts_too_deep = { $pairs } { $pairs_number ->
        [one] Paar verkürzter Reihen
       *[other] Paare verkürzter Reihen
    } über der Brust { $pairs_number ->
        [one] braucht
       *[other] brauchen
    } auf jeder Seite ebenso viele Maschen für die Wendestellen, und ein Drittel des Vorderteils hat { $stitches }.
    .body_too_short = { $measure }: Diese Höhe liegt in Runde { $round }, und der Rumpf hat vor dem Bund { $rounds }
        { $rounds_number ->
        [one] Runde
       *[other] Runden
    }.
    .body_too_short_for_darts = Die verkürzten Reihen über der Brust werden in Runde { $round } gestrickt, und der Rumpf
        hat
        vor dem Bund { $rounds } { $rounds_number ->
            [one] Runde
           *[other] Runden
        }.
    .back_too_narrow = Die größere Weite des Vorderteils lässt dem Rückenteil an der schmalsten Stelle des Rumpfs
        { $stitches } { $stitches_number ->
            [one] Masche
           *[other] Maschen
        } zu wenig.
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
    .ease_below_published_fits = Die Mehrweite der Oberweite ist kleiner als bei der engsten veröffentlichten
        Passform, { $ease_cm } cm.
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
            [wider] die Abstände der Zunahmen vergrößern.
           *[with_sleeves] die Zunahmen auf die Runden verteilen, in denen die Ärmel zunehmen.
        }
    .many_increase_rounds_in_a_row = { $streak } Zunahmerunden folgen ohne Zwischenrunde aufeinander, was die
        Raglanlinien
        zusammenzieht; mehr als { $most } sind viel. Eine höhere Passe{ $room ->
            [here] {" "}oder über diese Passe gleichmäßig verteilte Zunahmen hätten
           *[deeper] {" "}hätte
        } Runden dazwischen.
    .double_body_equals_closer = An keiner Kante werden 2 Rumpfzunahmen in einer Runde gebraucht, deshalb
        ergibt `double_body` denselben Verlauf wie `closer`.
    .yoke_deeper_than_usual = Die Passe ist { $depth } cm hoch, viel für diese Größe; üblich sind { $usual } cm.
        { $total }
    .yoke_shallower_than_usual = Die Passe ist { $depth } cm hoch, wenig für diese Größe; üblich sind { $usual } cm.
        { $total }
    .total = Das ergibt eine Gesamtlänge von { $total } cm.
    .total_kept = Die Gesamtlänge von { $total } cm bleibt die übliche, da der Rumpf von { $body } cm es ausgleicht.
    .total_restored = Das ergibt eine Gesamtlänge von { $total } cm; eine Rumpflänge von { $restored } cm
        statt { $body } cm ergibt wieder die üblichen { $usual } cm.
    .total_length_falls = Die Gesamtlänge sinkt von { $before } cm in Größe { $smaller } auf { $after } cm in
        Größe { $larger } ({ $steps }). { $because }
    .total_length_jumps = Die Gesamtlänge springt von { $before } cm in Größe { $smaller } auf { $after } cm in
        Größe { $larger } ({ $steps }). { $because }
    .length_steps = Passenhöhe: { $yoke } cm, Rumpflänge: { $body } cm
    .length_steps_and_back = Passenhöhe: { $yoke } cm, Rumpflänge: { $body } cm, Rückenlänge des Körpers: { $back } cm
    .half_stitch_off_centre = { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } des { $section ->
        [back] Rückenteils
        [front] Vorderteils
       *[sleeve] Ärmels
    } lassen sich nicht auf Spalte { $column } der Strickschrift zentrieren, die eine { $fitting ->
        [odd] ungerade
       *[even] gerade
    } Zahl verlangt, und liegen eine halbe Masche daneben; zu dieser Zahl passen die Spalten { $below } und { $above }.
    .half_stitch_off_centre_underarm = { $underarm } { $underarm_number ->
        [one] Achselmasche
       *[other] Achselmaschen
    } ohne { $seam } { $seam_number ->
        [one] Nahtmasche
       *[other] Nahtmaschen
    } lassen sich nicht auf beide Seiten gleich verteilen: { $part ->
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
    } und endet bei Reihe { $row } der { $rows } Reihen der Strickschrift; mit { $finishing } Runden wäre sie fertig.
    .sleeve_cuts_chart = Der Ärmel hat vor dem Ärmelbündchen { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } und endet bei Reihe { $row } der { $rows } Reihen der Strickschrift; mit { $finishing } Runden wäre sie fertig.
    .body_cuts_chart_unbegun = Der Rumpf hat vor dem Bund { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } und endet, bevor die Strickschrift beginnt; mit { $finishing } Runden wäre sie fertig.
    .sleeve_cuts_chart_unbegun = Der Ärmel hat vor dem Ärmelbündchen { $rounds } { $rounds_number ->
        [one] Runde
       *[other] Runden
    } und endet, bevor die Strickschrift beginnt; mit { $finishing } Runden wäre sie fertig.
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
    .sleeve_plain_again = Ab Runde { $round } des Ärmels ist er schmaler als die Mindestbreite für die Strickschrift und
        hat
        kein Muster mehr.
    .more_than_two_colours = { $rounds } { $rounds_number ->
        [one] Runde in Passe, Rumpf und Ärmel hat
       *[other] Runden in Passe, Rumpf und Ärmel haben
    } mehr als zwei Farben zugleich.
    .long_float = Der längste Spannfaden geht über { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } ({ $length } cm): { $colour } in Runde { $round } { $part ->
        [yoke] der Passe
        [body] des Rumpfs
       *[sleeve] des Ärmels
    }. Lange Spannfäden auf der Rückseite mitfassen, in aufeinanderfolgenden Runden nicht an derselben Stelle.
    .float_can_catch_fingers = Ein Spannfaden über { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } ({ $length } cm) innen in einem Kleidungsstück für Babys oder kleine Kinder kann sich um Finger und Zehen legen.
        Jeden
        langen Spannfaden auf der Rückseite mitfassen, eine Strickschrift mit kürzeren nehmen oder das Kleidungsstück
        füttern.
    .chart_starts_before_back = Die Spannfäden der Strickschrift sind in Runden gemessen, die vor dem Rückenteil
        beginnen.
        Diese Runden beginnen in der rückwärtigen Mitte, deshalb können Spannfäden über ihren Anfang kürzer oder länger
        sein.
    .far_from_wanted = { $measure }: { $finished } cm statt { $wanted } cm. { $because }
    .far_from_wanted_straight = { warning.far_from_wanted } Der Bund hat dieselben Maschen.
    .far_from_wanted_total = { warning.far_from_wanted } Mit einer Rumpflänge von { $body } cm käme sie heraus.
    .girth_below_body = { $measure }: Der Pullover misst { $finished } cm und der Körper { $body } cm; er wird dort
        gedehnt
        getragen. { $because }
    .armhole_below_body = Der Armausschnitt ist { $armhole } cm tief (die Passe von { $yoke } cm und die halbe Breite
        des
        Ärmels am Hals), der des Körpers { $body } cm. { $because } Eine Passe von { $needed } cm wäre hoch genug.
    .cuff_too_tight_for_hand = Das Ärmelbündchen von { $cuff } cm dehnt sich auf { $stretched } cm, und die Hand misst
        nach
        dem Handgelenk etwa { $hand } cm. { $because }
    .cuff_too_tight_for_hand_child = { warning.cuff_too_tight_for_hand } Hand und Handgelenk sind im Verhältnis von
        Erwachsenen gerechnet: die Hand des Kindes nachmessen.
    .cuff_binds = Das Ärmelbündchen hat { $cuff } cm Umfang, und der bloße Arm hat etwa { $arm } cm, wo ein Ärmel
        von { $sleeve } cm endet: Es sitzt eng oder rutscht hinunter. { $because }
    .neck_wider_than_shoulders = Der Halsausschnitt von { $neck } cm ist { $width } cm breit, und die halbe Rückenbreite
        beträgt { $held } cm: Er kann von den Schultern rutschen. Weniger Maschen dehnbarer anschlagen und abketten oder
        eine Öffnung an der Schulter oder vorn vorsehen.
    .neck_does_not_pass_head = { $edge ->
        [bind_off] Die Abkettkante des Halsbündchens
        [join] Die Verbindung des umgeschlagenen Halsbündchens
       *[cast_on] Die Anschlagkante
    } von { $around } cm dehnt sich auf { $stretched } cm, und der Kopf misst { $head } cm: den Halsausschnitt weiter
        oder
        tiefer machen oder dehnbarer anschlagen und abketten.
    .neck_does_not_pass_head_own_gauge = Bei der eigenen Maschenprobe: { warning.neck_does_not_pass_head }
    .young_child_neck = Bei Babys und kleinen Kindern muss der Hals ohne Kraft über den Kopf gleiten, und nichts darf
        sich um
        den Hals zusammenziehen: keine Kordel, kein Band und keinen Tunnelzug verwenden.
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
    .estimated_yarn = Das Garn ist für glatt rechts geschätzt: Jede Masche braucht das { $least }- bis { $most }-Fache
        ihrer
        Breite an Garn. Rippen, Spannfäden, Anschlag und Fadenenden brauchen mehr. Genauer wird es mit einem gewogenen
        Probestück.
    .yarn_leaves_out = Das Garn ist nach der Maschenzahl berechnet, überall wie für glattes Gestrick, obwohl { $ribs }
        Maschen
        davon Rippen sind, die eine andere Menge brauchen. Nicht mitgerechnet sind { $chart ->
            [floats] die Spannfäden der Strickschrift,
           *[none] { "" }
        } Anschlag, Abketten, Fadenwechsel und Fadenenden; die Zugabe von { $margin } % muss für all das reichen. Ein
        Probestück wiegen, das { $chart ->
            [floats] Rippen und Strickschrift
           *[none] Rippen
        } enthält, oder eine größere Zugabe nehmen.
    .colours_alike = { $first } und { $second } sind etwa gleich hell: Ein Motiv in der einen Farbe hebt sich von der
        anderen
        kaum ab. Beide zusammen in Graustufen ansehen oder ein Probestück stricken.
    .told_size_by_size = { $part }: Die Größen sind zu verschieden, um sie zusammen zu beschreiben; jede ist für sich
        beschrieben. Werden die Zu- und Abnahmen zuerst so dicht wie möglich statt gleichmäßig verteilt, stehen sie
        nebeneinander.
    .many_sentences = { $part }: { $sentences } Sätze sind schwer zu verfolgen. Weniger Größen oder einfachere Vorgaben
        brauchen weniger.

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
            [1] in jeder { shaping.row }, { times.all }
           *[other] in jeder { $every }. { shaping.row }, { times.all }
        }
    }
    .in_turn = abwechselnd in Abständen von { $cycle } { shaping.rows }, den ganzen Wechsel { times.all }
    .each = { $change } { $change_number ->
        [one] Masche
       *[other] Maschen
    }
    .in_each = { $times_number ->
        [1] { "" }
       *[other] je{" "}
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
    .increase = { shaping.span }: { shaping.when } { shaping.in_each }{ shaping.each } zunehmen. { shaping.now }
    .decrease = { shaping.span }: { shaping.when } { shaping.in_each }{ shaping.each } abnehmen. { shaping.now }
    .increase_cycle = { shaping.span }: { shaping.in_turn }, je { shaping.each } zunehmen. { shaping.now }
    .decrease_cycle = { shaping.span }: { shaping.in_turn }, je { shaping.each } abnehmen. { shaping.now }

across =
    .row = Über die { shaping.row }: { $steps }. { shaping.now }
    .worked = { $gap_number ->
        [0] { "" }
        [one] 1 Masche stricken,{" "}
       *[other] { $gap } Maschen stricken,{" "}
    }
    .increase = { $times_number ->
        [1] { across.worked }1 Masche zunehmen
       *[other] ({ across.worked }1 Masche zunehmen) { times.all }
    }
    .decrease = { $times_number ->
        [1] { across.worked }2 Maschen zusammenstricken
       *[other] ({ across.worked }2 Maschen zusammenstricken) { times.all }
    }
    .work = { $stitches } { $stitches_number ->
        [one] Masche
       *[other] Maschen
    } stricken

## Pictures and the workbook
