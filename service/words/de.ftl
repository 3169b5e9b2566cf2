### Deutsch, wie gestrickt wird. `service/language.py` sagt, wie Meldungen ihre Werte bekommen.

## Around and inside other sentences

sizes =
    .only = { $sizes_number ->
        [one] Size
       *[other] Sizes
    } { $sizes }: { $sentence }
    .apart = Die Größen sind hier zu verschieden, um sie zusammen zu beschreiben: Jede hat ihre eigenen Zeilen.

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

## Warnings, reasons and causes

measure =
    .bust = Oberweite
    .waist = Taille
    .hip = Hüfte
    .upper_arm = Oberarm
    .wrist = Handgelenk
    .neck = Halsweite
    .head = Kopfumfang
    .cross_back = Rückenbreite
    .back_waist_length = Rückenlänge bis zur Taille
    .back_hip_length = Rückenlänge bis zur Hüfte
    .back_neck_to_wrist = Länge vom Nacken bis zum Handgelenk
    .arm_length = Armlänge
    .armhole_depth = Tiefe des Armausschnitts
    .depth = Passenhöhe
    .underarm = Breite der Achsel
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
