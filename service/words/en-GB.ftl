### English as knitters in Britain write it. `service/language.py` says how messages are given their values.

## Around and inside other sentences

sizes =
    .only = { $sizes_number ->
        [one] Size
       *[other] Sizes
    } { $sizes }: { $sentence }
    .apart = The sizes differ too much to be told together here: each has its own lines.

span =
    .rounds = { $rounds_number ->
        [one] Round { $last }
        [2] Rounds { $first } and { $last }
       *[other] Rounds { $first } to { $last }
    }

edges =
    .back = the back
    .front = the front
    .sleeve = the sleeves

section =
    .back = back
    .front = front
    .half_back = half of the back
    .half_front = half of the front
    .first_sleeve = first sleeve
    .second_sleeve = second sleeve
    .line = raglan line

measured =
    .length = { $length_cm } cm / { $length_inch } in

times =
    .all = { $times_number ->
        [one] once
       *[other] { $times } times
    }

ribbing =
    .knit_purl = k{ $knit }, p{ $purl } rib
    .any = rib

## Front matter

## Neck

neck =
    .cast_on_joined = Cast on { $stitches } stitches and join in the round, right side outside, taking care not to
        twist them. Place a marker for the start of the round.
    .cast_on_flat = Cast on { $stitches } stitches. Don't join them yet: the two ends lie at the centre front.
    .place_markers = { $way ->
        [flat] With the right side facing, place markers; count from the end where a right-side row begins, and then
            from each marker to the next:
       *[joined] Place four more markers; count from the start of the round, and then from each marker to the next:
    }
    .marker = Count { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } ({ $parts }) and place marker { $marker }.
    .marker_here = Place marker { $marker } in the same place.
    .start_marker = Count { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } ({ $parts }) and place the marker for the start of the round.
    .start_here = Place the marker for the start of the round in the same place.
    .rest = This leaves { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } ({ $parts }) before the { $way ->
        [flat] other end.
       *[joined] start of the round.
    }
    .short_rows = Raise the back of the neck with { $rows } short rows, without increases. { $begin ->
        [right] Row 1 begins at the centre front with the right side facing.
        [wrong] Row 1 begins at the centre front with the wrong side facing.
       *[start] Row 1 begins at the start of the round with the right side facing, and the rows go back and forth across
            it.
    }
    .short_row_method = Turn by the short-row method you know best, and close the gap at each turn when you come to it
        in a later row or round. Stitches past a marker are counted from the marker in the direction you are working.
    .turn = Row { $row } ({ $side ->
        [wrong] wrong side
       *[right] right side
    }): Work to { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } past marker { $marker }, turn.
    .last_row = { $kind ->
        [flat] Last row (right side): Work to the end of the row. Join in the round at the centre front, right side
            outside, and work on to the start of the round. The last row and these stitches are worked without
            increases and are not counted as a round of the yoke.
        [right] Last row (right side): Work to the end of the row without increases. It is not counted as a round of
            the yoke.
        [wrong] Last row (wrong side): Work to the end of the row without increases. It is not counted as a round of
            the yoke.
       *[joined] Last row (right side): Work to the start of the round. In the next round, which is round 1 of the yoke,
            close the last gap at each side.
    }
    .raised = The short rows make the back { measured.length } higher than the front.
    .drop = Work the first { $rows_number ->
        [one] round
       *[other] { $rows } rounds
    } of the yoke, with its increases, back and forth as rows; { $side ->
        [wrong] row 1 is a wrong-side row.
        [right] row 1 is a right-side row.
       *[last] the last of them is a right-side row.
    }
    .drop_edges = In { $times_number ->
        [one] the last right-side row
       *[other] each of the last { $times } right-side rows
    } among these increase 2 stitches more: 1 after the first stitch of the row (left-leaning) and 1 before its last
        stitch (right-leaning).
    .drop_join = At the end of the last of these rows { $stitches_number ->
        [0] join
        [one] cast on { $stitches } stitch for the centre front and join
       *[other] cast on { $stitches } stitches for the centre front and join
    } in the round, right side outside. Work on to the start of the round without increases, and go on with
        round { $round }.
    .sections = There are now { $stitches } stitches on the needles: { $back } for the back, { $front } for the front,
        { $sleeve } for each sleeve{ $line_number ->
            [0] .
           *[other] , { $line } for each raglan line.
        }
    .edge = The edge of the neck measures { measured.length } around, not stretched.

## Chart

## Yoke

increases =
    .where = { $kind ->
        [twice] 2 stitches at each edge of { $twice }
        [both] 2 stitches at each edge of { $twice } and 1 at each edge of { $once }
       *[once] 1 stitch at each edge of { $once }
    }
    .rounds = { $every_number ->
        [1] { $times_number ->
            [one] Work an increase round.
           *[other] Work { $times } increase rounds, one right after the other.
        }
       *[other] { $times_number ->
            [one] Work { $every } rounds, the last of them as an increase round.
           *[other] Work an increase round as the last of every { $every } rounds, { $times } times.
        }
    }
    .cycle = Work groups of { $cycle } rounds in turn, the last round of each group as an increase round; work the whole
        sequence { times.all }.
    .each = { $times_number ->
        [one] This increase round adds
       *[other] Each of these increase rounds adds
    } { increases.where }, { $more } stitches in all. There are now { $stitches } stitches on the needles.

yoke =
    .lines = { $line_number ->
        [one] The stitch that follows each of the markers 1 to 4 is a raglan line.
       *[other] The { $line } stitches that follow each of the markers 1 to 4 are a raglan line.
    } Back, sleeves and front each begin after a raglan line and end before a marker: these are their edges. Slip the
        markers as you come to them.
    .no_lines = The raglan lines run at markers 1 to 4. Back, sleeves and front each begin after a marker and end before
        the next: these are their edges. Slip the markers as you come to them.
    .leaning = Work increases as lifted or as make-one increases, as you prefer: left-leaning where a section begins,
        right-leaning where it ends. A lifted increase uses the first or the last stitch of the section, never a raglan
        stitch.
    .doubled = Where an increase round adds 2 stitches at one edge, work 1 stitch between the two increases.
    .after_drop = Rounds are counted from row 1 of the front drop: the { $rows } rows worked there are the first here.
    .wrong_side = In wrong-side rows work the increases purlwise, so that seen from the right side they lean as in
        right-side rows.
    .increase = { increases.rounds } { increases.each }
    .cycle = { increases.cycle } { increases.each }
    .plain = Work { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } without increases.
    .rounds_increase = { span.rounds }: { increases.rounds } { increases.each }
    .rounds_cycle = { span.rounds }: { increases.cycle } { increases.each }
    .rounds_steps = { span.rounds }: Work these steps { times.all }: { $steps }. There are now { $stitches } stitches on
        the needles.
    .rounds_listed = In { $rounds_number ->
        [one] round
       *[other] rounds
    } { $rounds } increase { increases.where }, { $more } stitches in each of these rounds.
    .rounds_other = Work all other rounds without increases. After round { $last } there are { $stitches } stitches on
        the needles.
    .rounds_plain = { span.rounds }: Work without increases.
    .depth = The yoke has { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    }. It measures { measured.length } from the cast-on edge, short rows not counted.

step =
    .increase = { $rounds_number ->
        [0] (in the next round increase { increases.where }, { $more } stitches in all)
        [one] (work 1 round without increases, and in the next round increase { increases.where }, { $more } stitches in all)
       *[other] (work { $rounds } rounds without increases, and in the next round increase { increases.where }, { $more } stitches in all)
    }

## Split

split =
    .begin = Divide the { $stitches } stitches in the next round, which is round 1 of the body:
    .first_sleeve = Work to marker 1{ $past_number ->
        [0] { "" }
        [one] {" "}and 1 stitch past it
       *[other] {" "}and { $past } stitches past it
    }. Place the next { $held } stitches on hold on waste yarn for the first sleeve{ split.underarm }
    .underarm = { $underarm_number ->
        [0] .
        [one] , and cast on 1 stitch for its underarm.
       *[other] , and cast on { $underarm } stitches for its underarm.
    }
    .front = Work the next { $stitches } stitches for the front.
    .second_sleeve = Place the next { $held } stitches on hold on waste yarn for the second sleeve{ split.underarm }
    .start_back = Join in the round and work on to the start of the round at the centre back. The rounds of the body
        start there, too.
    .start_underarm = Join in the round. Place a marker for the start of the round { shape.start } of the second
        underarm{ shape.seams }: round 1 ends there, and every later round of the body starts and ends there.
    .body = The body has { $stitches } stitches. The other markers are no longer needed.
    .front_extra = From underarm to underarm the front has { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } more than the back.
    .seam = { $seam_number ->
        [one] The middle stitch of each underarm is a seam stitch: knit it in every round, and shape on either side of it.
       *[other] The middle { $seam } stitches of each underarm are seam stitches: knit them in every round, and shape on
            either side of them.
    }

## Shaping of body and sleeves

shape =
    .where = { $at ->
        [seam] on either side of the seam stitches
        [either] on either side of the seam stitches, or of the marker where your size has none
       *[marker] on either side of the marker
    }
    .start = { $before_number ->
        [0] at the beginning
        [one] after the first stitch
       *[other] after the first { $before } stitches
    }
    .seams = { $seams ->
        [none] { "" }
       *[all] , which is after its { $seam_number ->
            [one] seam stitch
           *[other] { $seam } seam stitches
        }
    }
    .decrease = { $every_number ->
        [1] { $times_number ->
            [one] Work a decrease round ({ $change } stitches fewer).
           *[other] Work { $times } decrease rounds ({ $change } stitches fewer in each), one right after the other.
        }
       *[other] { $times_number ->
            [one] Work { $every } rounds, the last of them as a decrease round ({ $change } stitches fewer).
           *[other] Work a decrease round as the last of every { $every } rounds ({ $change } stitches fewer),
                { $times } times.
        }
    }
    .decrease_cycle = Work groups of { $cycle } rounds in turn, the last round of each group as a decrease round
        ({ $change } stitches fewer); work the whole sequence { times.all }.

body =
    .side_markers = Place a marker at each side: { shape.start } of each underarm{ shape.seams }. Where the round starts
        there, its marker is one of the two.
    .decreases = A decrease round takes away 4 stitches, at each side of the body 1 { shape.where }: slip, slip, knit
        with the 2 stitches before (left-leaning), knit 2 together with the 2 stitches after (right-leaning).
    .increases = An increase round adds 4 stitches, at each side of the body 1 { shape.where }: a right-leaning increase
        before, a left-leaning one after.
    .plain = Work { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } without shaping.
    .decrease = { shape.decrease } The body now has { $stitches } stitches.
    .decrease_cycle = { shape.decrease_cycle } The body now has { $stitches } stitches.
    .increase = { $every_number ->
        [1] { $times_number ->
            [one] Work an increase round ({ $change } stitches more).
           *[other] Work { $times } increase rounds ({ $change } stitches more in each), one right after the other.
        }
       *[other] { $times_number ->
            [one] Work { $every } rounds, the last of them as an increase round ({ $change } stitches more).
           *[other] Work an increase round as the last of every { $every } rounds ({ $change } stitches more),
                { $times } times.
        }
    } The body now has { $stitches } stitches.
    .increase_cycle = Work groups of { $cycle } rounds in turn, the last round of each group as an increase round
        ({ $change } stitches more); work the whole sequence { times.all }. The body now has { $stitches } stitches.
    .darts = In round { $round } lengthen the front over the bust with { $rows } short rows, without increases or
        decreases: work over the back to the first side marker, then back and forth over the front. Turn by the
        short-row method you know best.
    .dart_turns = Short rows { $row } (right side) and { $next } (wrong side): Work to { $stitches }
        { $stitches_number ->
        [one] stitch
       *[other] stitches
    } before the middle of the underarm ahead, turn. A stitch in the very middle of an underarm is not counted.
    .darts_end = After the last short row work, with the right side facing, to the end of the round and close the gaps
        that you come to. Close the gaps at the beginning of the front in the next round.
    .rounds = The body now has { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } and measures { measured.length } from the underarm.
    .length = With its hem the body measures { measured.length } from the underarm.

sleeve =
    .return = Return the { $held } held stitches of a sleeve to the needles. With the right side facing, pick up and
        knit 1 stitch in { $underarm_number ->
            [one] the stitch
           *[other] each of the { $underarm } stitches
        } cast on at its underarm: { $stitches } stitches.
    .start = The rounds of a sleeve start and end at its underarm, which follows the stitches from the yoke, and there
        { shape.start }{ shape.seams }. Join the yarn there, and place a marker for the start of the round.
    .decreases = A decrease round takes away 2 stitches, 1 { shape.where }: slip, slip, knit with the 2 stitches before
        (left-leaning), knit 2 together with the 2 stitches after (right-leaning).
    .plain = Work { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } without decreases.
    .decrease = { shape.decrease } The sleeve now has { $stitches } stitches.
    .decrease_cycle = { shape.decrease_cycle } The sleeve now has { $stitches } stitches.
    .rounds = The sleeve now has { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } and measures { measured.length } from the underarm.
    .length = With its cuff the sleeve measures { measured.length } from the underarm.
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
    .bind_off = Cast off loosely in rib.

band =
    .pick_up = With the right side facing, and beginning where the rounds of the yoke start, pick up and knit 1 stitch
        in each cast-on stitch: { $stitches } stitches.
    .pick_up_drop = With the right side facing, and beginning where the rounds of the yoke start, pick up and knit 1
        stitch in each cast-on stitch and { $side } { $side_number ->
            [one] stitch
           *[other] stitches
        } along the { $rows } row ends at each side of the front, that is about { $rate } for every { $per } rows:
        { $stitches } stitches.
    .fold = Purl 1 round for the fold.
    .inner = Work { $rounds } more { $rounds_number ->
        [one] round
       *[other] rounds
    } in the same rib for the inner layer.
    .join = Don't cast off. Fold the neckband to the inside and sew each stitch loosely to the first round of the
        neckband, so that the neck still stretches over the head.
    .height = The neckband is { measured.length } high.

## Finishing

finishing =
    .underarms = Close the gaps at the ends of both underarms with the tails of the yarn.
    .ends = Weave in all ends.
    .block = Block the jumper to the finished measurements, { measured.length } around the bust, and
        let it dry flat.
    .no_cords = For a baby or a young child use no cord, ribbon or drawstring at the neck.

## Titles of parts and rows

## Warnings, reasons and causes

warning =
    .told_size_by_size = { $part }: the sizes differ too much to be told together, so each is told by itself. Shaping as
        close as possible first, instead of evenly, lets them stand side by side.
    .many_sentences = { $part }: { $sentences } sentences are hard to follow. Fewer sizes, or plainer choices, take fewer.

## Shaping plans

## Pictures and the workbook
