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

warning =
    .told_size_by_size = { $part }: Die Größen sind zu verschieden, um sie zusammen zu beschreiben; jede ist für sich
        beschrieben. Werden die Zu- und Abnahmen zuerst so dicht wie möglich statt gleichmäßig verteilt, stehen sie
        nebeneinander.
    .many_sentences = { $part }: { $sentences } Sätze sind schwer zu verfolgen. Weniger Größen oder einfachere Vorgaben
        brauchen weniger.

## Shaping plans

## Pictures and the workbook
