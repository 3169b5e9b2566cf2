### English as knitters in Britain write it. `service/language.py` says how messages are given their values.

## Around and inside other sentences

sizes =
    .only = { $sizes_number ->
        [one] Size
       *[other] Sizes
    } { $sizes }: { $sentence }
    .apart = The sizes differ too much to be told together here: each is told by itself.
    .labels = { $sizes_number ->
        [one] Size
       *[other] Sizes
    }: { $sizes }.
    .to_fit = To fit a { measure.bust } of { measured.length }.
    .ease = { $kind ->
        [less] The jumper is { measured.length } narrower at the { measure.bust } than the body, and stretches when
            worn.
        [either] The jumper is { measured.length } wider at the { measure.bust } than the body, or narrower where the
            number is below 0.
       *[more] Ease at the { measure.bust }: { measured.length }. The jumper is that much wider than the body.
    }
    .run = Where sizes differ, the first number is for size { $first }, { $others_number ->
        [one] the one in round brackets for size { $others }.
       *[other] those in round brackets for { $others }, in that order.
    } A single number is for all sizes.
    .dash = “{ $dash }” in place of a number means that your size has none: skip the sentence, or that part of it.
    .impossible = { $sizes_number ->
        [one] Size { $sizes } cannot
       *[other] Sizes { $sizes } cannot
    } be knitted as asked.

span =
    .rounds = { $rounds_number ->
        [one] Round { $last }
        [2] Rounds { $first } and { $last }
       *[other] Rounds { $first } to { $last }
    }

edges =
    .back = back
    .front = front
    .sleeve = sleeves

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

ribbed =
    .hem = hem
    .cuff = cuffs
    .band = neckband

ribbing =
    .knit_purl = k{ $knit }, p{ $purl } rib
    .any = rib

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
    .counts = { $stitches } stitches and { $rounds } rounds to 10 cm = 4 in
    .plain = In stocking stitch, worked in the round and blocked: { gauge.counts }.
    .stranded = In the chart pattern, worked in the round and blocked: { gauge.counts }.
    .rib = In the rib, worked in the round and blocked: { gauge.counts }.

needles =
    .range = Start with needles of { $thinnest } to { $thickest } mm (US { $thinnest_us } to { $thickest_us }), and use
        whatever size gives you the tension.
    .thick = Start with needles of { $thinnest } mm (US { $thinnest_us }) or thicker, and use whatever size gives you
        the tension.
    .stranded = For the chart, use the needles that give you its tension.
    .rib = { $kind ->
        [gauge] For hem, cuffs and neckband use the needles that give you the tension of the rib.
       *[thinner] For hem, cuffs and neckband use needles one or two sizes thinner.
    }
    .circular = Circular needles for yoke, body, hem and neckband, each a little shorter than the circumference of the
        knitting.
    .double_pointed = Double-pointed needles in the same sizes for sleeves, cuffs and other rounds too small for a
        circular needle.

yarn =
    .whose = { $colours ->
        [one] Yarn
       *[several] Yarn in { $colour }
    }
    .amount = { yarn.whose }: about { $grams } g, which is { $metres } m / { $yards } yd.
    .strand = { $strands ->
        [one] { "" }
        [named] , { $name }
       *[numbered] , strand { $strand }
    }
    .balls = { yarn.whose }{ yarn.strand }, to buy with { $margin }% to spare: { $balls } { $balls_number ->
        [one] ball
       *[other] balls
    } of { $ball_grams } g.
    .basis = { $basis ->
        [measured] What the stitches take is worked out from a weighed swatch, and cast-on, cast-off and ends by the
            usual allowances.
       *[estimated] The amounts are estimated from the width of a stitch, and by the usual allowances for ribs, floats,
            cast-on, cast-off and ends.
    }

notions =
    .markers = { $markers } stitch markers, one of them different for the start of the round.
    .waste_yarn = Waste yarn or 2 stitch holders for the sleeve stitches.
    .tapestry_needle = A tapestry needle for the ends.

terms =
    .stockinette = Stocking stitch: knit every round{ $rows ->
        [some] ; in rows, knit on the right side and purl on the wrong side
       *[none] { "" }
    }. It is used where no other stitch is named.
    .rib = { ribbing.knit_purl }: repeat knit (k) { $knit }, purl (p) { $purl } to the end of the round.
    .every = “The last of every { $every } rounds”: work { $plain } { $plain_number ->
        [one] round
       *[other] rounds
    } without shaping, then the increase or decrease round.
    .cycle = “Groups of { $cycle } rounds in turn”: the last round of each group is the increase or decrease round, the
        others are worked without shaping. The whole sequence is each group once.
    .right_side = Right side: the side that is outside when the jumper is worn.
    .wrong_side = Wrong side: the other side. In a right-side row the right side faces you, in a wrong-side row the
        wrong side.
    .make_one = Make-one increase: left-leaning, lift the strand between two stitches onto the left needle from front to
        back, and knit it through the back loop; right-leaning, from back to front, and through the front loop.
    .lifted = Lifted increase: left-leaning, lift the left leg of the stitch two rounds below the last stitch on the
        right needle onto the left needle, and knit it through the back loop; right-leaning, lift the right leg of the
        stitch below the next one onto the left needle, and knit it, then the next stitch.
    .slip_slip_knit = Slip, slip, knit (left-leaning): slip 2 stitches one at a time as if to knit, put the left needle
        through the front of both, and knit them together.
    .knit_together = Knit 2 together (right-leaning): knit 2 stitches as one.
    .short_row = Short row: a row turned before its end, so that part of the fabric grows higher than the rest.
    .double_stitch = One way to turn: turn, bring the yarn to the front, slip 1 stitch as if to purl, and pull the yarn
        over the needle to the back until the stitch shows two legs; then bring the yarn to where the next stitch needs
        it. To close the gap, work both legs as 1 stitch.
    .pick_up = Pick up and knit: with the right side facing, put the needle through the edge from front to back, and
        draw a new stitch through.
    .float = Float: the strand of a colour that runs loosely across the wrong side while another colour is knitted.

own_gauge =
    .gauge = At your tension, { gauge.counts }, the jumper as written has these measurements.
    .bust = { finished_measurements.bust }
    .depth = { finished_measurements.depth }
    .body_length = { finished_measurements.body_length }
    .sleeve_length = { finished_measurements.sleeve_length }
    .same = The lengths of the design come out to the nearest round: change no rounds.
    .rounds = { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } without shaping
    .add = { $part ->
        [yoke] For the yoke depth of the design add { own_gauge.rounds } to the yoke, after the last increase round.
        [body] For the body length of the design add { own_gauge.rounds } to the body, above the hem.
       *[sleeve] For the sleeve length of the design add { own_gauge.rounds } to each sleeve, above the cuff.
    }
    .leave_out = { $part ->
        [yoke] For the yoke depth of the design leave out { own_gauge.rounds }, spread evenly over the yoke.
        [body] For the body length of the design leave out { own_gauge.rounds }, spread evenly over the body.
       *[sleeve] For the sleeve length of the design leave out { own_gauge.rounds }, spread evenly over each sleeve.
    }
    .wider = In the yoke space the increases wider instead, evenly over all of its rounds.
    .closer = In the yoke leave them out by spacing the increases closer, in every round where they need it.
    .double_body = In the yoke leave them out by working 2 increases instead of 1 at each edge of back and front, in as
        many increase rounds as it needs, spaced as written.
    .nearest = For the finished { measure.bust } of size { $sizes } work size { $nearest } at your tension.

## Neck

neck =
    .colour = Cast on in { $colour }. Everything that no other colour is named for is worked in it, too.
    .cast_on_joined = Cast on { $stitches } stitches and join in the round without twisting, right side outside. Place a
        marker for the start of the round.
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
    .short_row_method = Turn by the short-row method you know best, and close the gap at each turn when you reach it in
        a later row or round. Count stitches past a marker from it, in the direction you are working.
    .turn = Row { $row } ({ $side ->
        [wrong] wrong side
       *[right] right side
    }): Work to { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } past marker { $marker }, turn.
    .last_row = { $kind ->
        [flat] Last row (right side): Work to the end of the row. Join in the round at the centre front, right side
            outside, and work on to the start of the round. The last row and these stitches are worked without increases
            and are not counted as a round of the yoke.
        [right] Last row (right side): Work to the end of the row without increases. It is not counted as a round of the
            yoke.
        [wrong] Last row (wrong side): Work to the end of the row without increases. It is not counted as a round of the
            yoke.
       *[joined] Last row (right side): Work to the start of the round. In round 1 of the yoke close the last gap at
            each side.
    }
    .raised = The short rows make the back { measured.length } higher than the front.
    .drop = Work the first { $rows } { $rows_number ->
        [one] round
       *[other] rounds
    } of the yoke, with its increases, back and forth as rows; { $side ->
        [wrong] row 1 is a wrong-side row.
        [right] row 1 is a right-side row.
       *[last] the last of them is a right-side row.
    }
    .drop_edges = In { $times_number ->
        [one] the last { $times } right-side row
       *[other] each of the last { $times } right-side rows
    } of these increase 2 more stitches: 1 after the first stitch of the row (left-leaning) and 1 before its last stitch
        (right-leaning).
    .drop_join = At the end of the last of these rows { $stitches_number ->
        [0] join
        [one] cast on { $stitches } stitch for the centre front and join
       *[other] cast on { $stitches } stitches for the centre front and join
    } in the round, right side outside. Work on to the start of the round without increases, and go on with round
        { $round }.
    .sections = There are now { $stitches } stitches on the needles: { $back } for the back, { $front } for the front,
        { $sleeve } for each sleeve{ $line_number ->
            [0] .
           *[other] , { $line } for each raglan line.
        }
    .edge = The neck edge measures { measured.length } around, unstretched.

## Chart

chart_section =
    .back = the back
    .front = the front
    .sleeve = each sleeve

plain_place =
    .before = the rounds before the chart
    .after = the rounds after the chart
    .short_rows = the short rows at the neck

chart =
    .rows = In round { $round }, counted from the first round of the yoke, work row 1 of the chart, and in every round
        after it the next row, on through body and sleeves.
    .again = After row { $height } begin again with row 1.
    .once = After row { $height } the chart is finished.
    .read = Read each row from right to left. In every section begin with the column named below, work on to column
        { $width }, and repeat columns 1 to { $width } to the end of the section.
    .center = Column { $column } is at the centre of { $sections }.
    .center_between = The centre of { $sections } lies between column { $column } and column { $next }.
    .start = In round { $round } { $sections } { $sections_number ->
        [one] begins
       *[other] begin
    } with column { $column }.
    .moves_back = Each increase at the beginning of a section moves its first column back by 1: from column 2 to column
        1, and from column 1 to column { $width }.
    .moves_on = Each decrease at the beginning of a section moves its first column on by 1: from column 1 to column 2,
        and from column { $width } to column 1.
    .flat = As long as the yoke is worked back and forth, read the chart from left to right in wrong-side rows.
    .parted = Until its middle is cast on, the front is in two parts. In right-side rows the part after the first sleeve
        begins with the first column of the front. The part before the second sleeve ends with the last column of the
        front: in row { $round } this is column { $column }, and each increase at the end of the front moves it on by 1.
    .body = Round 1 of the body is row { $row } of the chart. Its columns run on from the yoke over the stitches cast on
        at the underarms.
    .body_back = From round 1 on the back begins { shape.start } of the second underarm, with column { $column }.
    .body_front = From round 1 on the front begins { shape.start } of the first underarm, with column { $column }.
    .sleeve = Round 1 of each sleeve is row { $row } of the chart. Its columns run on from the yoke over the stitches of
        the underarm.
    .sleeve_start = From round 1 on each sleeve begins { shape.start } of its underarm, where its rounds start, with
        column { $column }.
    .whole_motifs = From column 1 on, every { $columns } columns are one motif. Work only whole motifs: where a section
        begins or ends within a motif, work the stitches of that motif in { $colour } until it has room for the whole.
    .whole_chart = Columns 1 to { $columns } are one motif. Work only whole motifs: where a section begins or ends
        within a motif, work the stitches of that motif in { $colour } until it has room for the whole.
    .motifs = From round { $round } on { $sections } { $sections_number ->
        [one] has
       *[other] have
    } room for { $motifs } whole { $motifs_number ->
        [one] motif
       *[other] motifs
    }.
    .body_motifs = In round 1 of the body { $sections } { $sections_number ->
        [one] has
       *[other] have
    } room for { $motifs } whole { $motifs_number ->
        [one] motif
       *[other] motifs
    }.
    .sleeve_motifs = In its round 1 below the underarm each sleeve has room for { $motifs } whole { $motifs_number ->
        [one] motif
       *[other] motifs
    }.
    .narrow_body = Work back and front in { $colour } alone as long as they have fewer than { $stitches } stitches.
    .narrow_sleeve = Work each sleeve in { $colour } alone as long as it has fewer than { $stitches } stitches.
    .plain = Work { $places } in { $colour }.
    .lines = Work the raglan stitches in { $colour }{ $rounds ->
        [last_row] {" "}up to the last row of the chart.
       *[all] .
    }
    .seams = Work the seam stitches of the underarms in { $colour }{ $rounds ->
        [last_row] {" "}up to the last row of the chart.
       *[all] .
    }{ $seam ->
        [purl] {" "}Purl them in every round.
       *[knit] { "" }
    }
    .floats = Where a float passes over more than { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    }, catch it at the back, but not at the same place in consecutive rounds.
    .floats_young = Inside a garment for a baby or a young child a float can catch fingers and toes: catch every float
        that passes over more than { $stitches } { $stitches_number ->
            [one] stitch
           *[other] stitches
        } or { measured.length }, or line the garment.

## Yoke

increases =
    .where = { $kind ->
        [twice] 2 stitches at each edge of the { $twice }
        [both] 2 stitches at each edge of the { $twice } and 1 at each edge of the { $once }
       *[once] 1 stitch at each edge of the { $once }
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
        [one] The increase round adds
       *[other] Each increase round adds
    } { increases.where }, { $more } in all. There are now { $stitches } stitches.

yoke =
    .lines = { $line_number ->
        [one] The stitch that follows each of the markers 1 to 4 is a raglan line.
       *[other] The { $line } stitches that follow each of the markers 1 to 4 are a raglan line.
    } Back, sleeves and front each begin after a raglan line and end before a marker: these are their edges. Slip the
        markers as you come to them.
    .no_lines = The raglan lines run at markers 1 to 4. Back, sleeves and front each begin after a marker and end before
        the next: these are their edges. Slip the markers as you come to them.
    .leaning = Work lifted or make-one increases, as you prefer: left-leaning where a section begins, right-leaning
        where it ends. A lifted increase uses the first or the last stitch of the section, never a raglan stitch.
    .doubled = Where an increase round adds 2 stitches at one edge, work 1 stitch between them.
    .after_drop = The first { $rows } of these rounds are the rows worked back and forth at the neck.
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
        } and measures { measured.length } from the cast-on edge, short rows not counted.

step =
    .increase = { $rounds_number ->
        [0] (in the next round increase { increases.where }, { $more } in all)
        [one] (work 1 round without increases, and in the next round increase { increases.where }, { $more } in all)
       *[other] (work { $rounds } rounds without increases, and in the next round increase { increases.where },
            { $more } in all)
    }

## Split

split =
    .colour = The new stitches at both underarms are cast on in { $colour }.
    .begin = In the next round, round 1 of the body, divide the { $stitches } stitches:
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
        underarm{ shape.seams }: round 1 ends there, and all later rounds of the body start and end there.
    .body = The body has { $stitches } stitches, and this round is the first counted below. The other markers are no
        longer needed.
    .front_extra = From underarm to underarm the front has { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } more than the back.
    .seam = In its middle each underarm has { $seam } seam { $seam_number ->
        [one] stitch: knit it in every round, and shape on either side of it.
       *[other] stitches: knit them in every round, and shape on either side of them.
    }
    .seam_purl = In its middle each underarm has { $seam } seam { $seam_number ->
        [one] stitch: purl it in every round down to the hem, and shape on either side of it. In the hem it is
            part of the rib.
       *[other] stitches: purl them in every round down to the hem, and shape on either side of them. In the hem they
            are part of the rib.
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
        with the 2 stitches before, knit 2 together with the 2 stitches after.
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
    .start = The underarm stitches follow the held stitches of a sleeve. The rounds start and end { shape.start } of the
        underarm{ shape.seams }: join the yarn there, and place a marker for the start of the round.
    .seam_purl = { $seam_number ->
        [one] After the first round purl the seam stitch in every round down to the cuff, where it is part of the rib.
       *[other] After the first round purl the { $seam } seam stitches in every round down to the cuff, where they are
            part of the rib.
    }
    .return = Return the { $held } held stitches of the sleeve to the needles. In the first round pick up and knit 1
        stitch in { $underarm_number ->
            [one] the stitch
           *[other] each of the { $underarm } stitches
        } cast on at the underarm, and work the held stitches: { $stitches } stitches. This is the first round counted
        below.
    .decreases = A decrease round takes away 2 stitches, 1 { shape.where }: slip, slip, knit with the 2 stitches before,
        knit 2 together with the 2 stitches after.
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
    .colour = Work the { $edge ->
        [cuff] cuff
       *[hem] hem
    } in { $colour }, from its first round to the cast-off.
    .decrease = Knit 1 round, decreasing { $many } { $many_number ->
        [one] stitch
       *[other] stitches evenly
    }. There are now { $stitches } stitches on the needles.
    .increase = Knit 1 round, increasing { $many } { $many_number ->
        [one] stitch
       *[other] stitches evenly
    }. There are now { $stitches } stitches on the needles.
    .spread = In this round: { $steps }.
    .work = Work { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } in { $rib }.
    .bind_off = Cast off loosely in rib.

band =
    .colour = Pick up the stitches of the neckband in { $colour }, and work all of it in this colour.
    .pick_up = With the right side facing, beginning where the rounds of the yoke start, pick up and knit 1 stitch in
        each cast-on stitch: { $stitches } stitches.
    .pick_up_drop = With the right side facing, beginning where the rounds of the yoke start, pick up and knit 1 stitch
        in each cast-on stitch and { $side } { $side_number ->
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
    .underarms = Close the gaps at the ends of both underarms with the yarn tails.
    .ends = Weave in all ends.
    .block = Block the jumper to the finished measurements and let it dry flat.
    .no_cords = For a baby or a young child use no cord, ribbon or drawstring at the neck.

## Titles of parts and rows

title =
    .part_sizes = Sizes
    .part_finished_measurements = Finished measurements
    .part_gauge = Tension
    .part_needles = Needles
    .part_yarn = Yarn
    .part_notions = Notions
    .part_terms = Terms and techniques
    .part_neck = Neck
    .part_chart = Chart
    .part_yoke = Yoke
    .part_split = Dividing for body and sleeves
    .part_body = Body
    .part_sleeve = Sleeves
    .part_band = Neckband
    .part_finishing = Finishing
    .part_own_gauge = At your tension
    .part_to_fit = To fit
    .part_hem = Hem
    .part_cuff = Cuffs
    .part_finished = Finished measurements
    .to_fit_bust = To fit { measure.bust }
    .to_fit_ease = Ease at the { measure.bust }
    .neck_cast_on = Neck, stitches cast on at first
    .neck_stitches = Neck, stitches in all
    .neck_back = Neck, stitches of the back
    .neck_front = Neck, stitches of the front
    .neck_sleeve = Neck, stitches of each sleeve
    .neck_short_rows = Neck, short rows
    .neck_front_drop = Neck, rows before the front is joined
    .yoke_rounds = Yoke, rounds
    .yoke_increase_rounds = Yoke, increase rounds
    .yoke_back_increases = Yoke, increases at each edge of the back
    .yoke_front_increases = Yoke, increases at each edge of the front
    .yoke_sleeve_increases = Yoke, increases at each edge of a sleeve
    .yoke_doubled_rounds = Yoke, increase rounds with 2 at an edge
    .split_back = Dividing, stitches of the back
    .split_front = Dividing, stitches of the front
    .split_sleeve = Dividing, stitches of each sleeve
    .split_yoke_total = Dividing, stitches on the needles
    .split_underarm = Dividing, stitches cast on at each underarm
    .split_line_to_body = Dividing, stitches of each raglan line for the body
    .body_stitches = Body, stitches
    .body_rounds = Body, rounds before the hem
    .body_bust_dart_rows = Body, short rows over the bust
    .hem_stitches = Hem, stitches
    .hem_rounds = Hem, rounds
    .sleeve_stitches = Sleeve, stitches
    .sleeve_rounds = Sleeve, rounds before the cuff
    .sleeve_decrease_rounds = Sleeve, decrease rounds
    .cuff_stitches = Cuff, stitches
    .cuff_rounds = Cuff, rounds
    .band_stitches = Neckband, stitches
    .band_rounds = Neckband, rounds
    .finished_bust = Finished { measure.bust }
    .finished_upper_arm = Finished { measure.upper_arm }
    .finished_neck = Finished { measure.neck }, around
    .finished_depth = Finished { measure.depth }
    .finished_underarm = Finished { measure.underarm }, across
    .finished_hem = Finished { measure.hem }, around
    .finished_wrist = Finished { measure.cuff }, around
    .finished_body_length = Finished { measure.body_length }
    .finished_front_length = Finished { measure.body_length } over the bust
    .finished_front_extra = Front wider than the back by
    .finished_sleeve_length = Finished { measure.sleeve_length }
    .finished_total_length = Finished { measure.total_length } at centre back
    .finished_reach = Finished length from centre back neck to cuff edge
    .finished_band = Finished { measure.neckband }, around
    .yarn_grams = { yarn.whose }, grams
    .yarn_metres = { yarn.whose }, metres
    .yarn_yards = { yarn.whose }, yards
    .yarn_balls = { yarn.whose }{ yarn.strand }, balls

## Warnings, reasons and causes

measure =
    .bust = bust
    .waist = waist
    .hip = hip
    .upper_arm = upper arm
    .wrist = wrist
    .neck = neck
    .head = head
    .cross_back = cross back
    .back_waist_length = back length to the waist
    .back_hip_length = back length to the hip
    .back_neck_to_wrist = length from back neck to wrist
    .arm_length = arm length
    .armhole_depth = armhole depth
    .depth = yoke depth
    .underarm = underarm
    .hem = hem
    .cuff = cuff
    .neckband = neckband
    .body_length = body length
    .sleeve_length = sleeve length
    .total_length = total length

counted =
    .neck = the cast-on
    .body = the body
    .sleeve = the sleeves
    .hem = the hem
    .cuff = the cuffs
    .neckband = the neckband

cause =
    .alone = { $causes_number ->
        [one] The cause is { $causes }.
       *[other] The causes are { $causes }; giving up any one of them would be enough.
    }
    .together = The causes are { $causes } together; only giving all of them up would be enough.
    .not_sought = The cause is something else that is asked for; with fewer sizes at a time the answer names it.
    .multiple = the multiple of { $multiple } for the stitches of { $of }{ $rounding ->
        [up] , rounded up
        [down] , rounded down
       *[nearest] { "" }
    } (a smaller multiple would come nearer)
    .rounding = { $rounding ->
        [up] rounding up
        [down] rounding down
       *[nearest] rounding
    } the stitches of { $of }
    .ease = the ease asked for ({ $measure })
    .length = the measurement asked for ({ $measure })
    .anchor = the chart's anchor at the { $section ->
        [sleeve] sleeve
       *[back] back
    } (it needs an { $parity ->
        [odd] odd
       *[even] even
    } number of stitches)
    .seam_stitches = { $stitches_number ->
        [0] the wish for no seam stitches
        [one] the seam stitch at each underarm
       *[other] the { $stitches } seam stitches at each underarm
    }
    .step = the wish for increases only in every 2nd round
    .first_increase_round = the first increase in round { $round }
    .plain_rounds_at_end = { $rounds_number ->
        [one] the round without increases before the split
       *[other] the { $rounds } rounds without increases before the split
    }
    .double_body = the wish never to work two body increases at one edge
    .edge_height = the height of the { $edge ->
        [cuff] cuff
       *[hem] hem
    }
    .neck_shares = the shares of back, front and sleeves in the neck
    .yoke_change = the yoke depth as changed
    .own_gauge = your tension (stitches and rounds stay as written)
    .chart = the chart (its last repeat is finished)
    .other_sizes = the other sizes (no number of stitches may be less than in the size before, and each section has an
        odd or an even number in all sizes alike)
    .increases_need_rounds = The increases between neck and split need { $rounds_number ->
        [one] the only round
       *[other] all { $rounds } rounds
    } of the yoke.
    .whole_rounds = Whole rounds of yoke, body and ribs come no nearer.
    .whole_stitches = A stitch is { $stitch } cm wide, and no stitch counts that fit together in neck, yoke and split
        come nearer.
    .shaped_by = The body is shaped by { $stitches } stitches at a time, each { $stitch } cm wide, and no size has fewer
        stitches than the one before it.
    .negative_ease = The ease asked for there is { $ease } cm.
    .little_ease = The ease asked for there is { $ease } cm, and rounding to whole stitches can take away more than
        that.
    .stitch_width = The cause is rounding to whole stitches.
    .usual_depth = The usual yoke depth is not enough for this body.
    .narrow_cuff = The cause is that the hand is wide in proportion to the cuff.
    .cuff_of_wrist = The cause is that the cuff is made for the wrist.
    .usual_lengths = The usual lengths follow the measurements of the bodies.

why =
    .as_written = The number of rounds stays the same: work the yoke as written.
    .fewer_plain_rounds = Leaving out rounds after the last increase changes nothing else.
    .more_plain_rounds = Adding rounds after the last increase moves no increase, and a chart can go on in them.
    .wider = With rounds added only after the last increase, the last { $plain } of { $rounds } rounds would have no
        increases; spaced wider, the increases keep the raglan lines even.
    .closer = Spaced closer, all increases still fit, without two at one edge in a round.
    .closer_than_doubled = With two body increases at an edge, { $streak } increase rounds would follow one right after
        the other; spaced closer, the increases have rounds between them.
    .closer_alone = At the written spacing there are too few rounds even with two body increases at an edge, so the
        increases are spaced closer.
    .together = Worked in the same rounds, the increases of body and sleeves fit at the written spacing, without two at
        one edge in a round.
    .double_body = With two body increases at an edge in { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    }, the increases keep their written spacing, the sleeves have one at a time, and the stitches at the split stay the
        same.
    .no_way = There is no way to make a yoke of { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    }; the shallowest yoke possible has { $shallowest }.

reason =
    .too_few_rounds = The increases need { $needed } increase { $needed_number ->
        [one] round
       *[other] rounds
    }{ $body ->
        [doubled] {" "}even with two body increases at an edge
       *[single] { "" }
    }, and in the { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } of the yoke there { $available_number ->
        [one] is
       *[other] are
    } { $available } where increases may be worked: { $missing } too few.
    .too_few_rounds_in_sleeve = The sleeve needs { $needed } decrease { $needed_number ->
        [one] round
       *[other] rounds
    } above the cuff, and has room for { $room }.
    .too_few_rounds_above_level = The { $measure } needs { $needed } { $needed_number ->
        [one] shaping round
       *[other] shaping rounds
    } above it, and there is room for { $room }.
    .too_few_rounds_for_shaping = { $worked ->
        [flat] { $needed_number ->
            [one] One shaping row needs
           *[other] { $needed } shaping rows need
        } { $rows } { $rows_number ->
            [one] row
           *[other] rows
        }
       *[round] { $needed_number ->
            [one] One shaping round needs
           *[other] { $needed } shaping rounds need
        } { $rows } { $rows_number ->
            [one] round
           *[other] rounds
        }
    }, and there { $room_number ->
        [one] is
       *[other] are
    } { $room }: { $missing } too few.
    .too_few_stitches = { $stitches } { $stitches_number ->
        [one] stitch has
       *[other] stitches have
    } room for { $most } { $change ->
        [increase] { $most_number ->
            [one] increase
           *[other] increases
        }
       *[decrease] { $most_number ->
            [one] decrease
           *[other] decreases
        }
    }{ $worked ->
        [flat] {" "}that leave a stitch at each edge
       *[round] { "" }
    }, and { $asked } { $asked_number ->
        [one] is
       *[other] are
    } asked for.
    .written_yoke_impossible = The yoke cannot be worked even as written. { $reason }
    .for_deeper_yokes = Spacing the increases wider is for a deeper yoke.
    .for_shallower_yokes = { $method ->
        [double_body] Working two body increases at an edge
       *[closer] Spacing the increases closer
    } is for a shallower yoke.
    .yoke_too_shallow = { $limit } The shallowest yoke that can be made in this way has { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } ({ $depth } cm), and { $asked } { $asked_number ->
        [one] is
       *[other] are
    } asked for.
    .yoke_too_shallow_plain_rounds = { $spare_number ->
        [0] No round can be left out after the last increase.
        [one] Only 1 round can be left out after the last increase.
       *[other] Only { $spare } rounds can be left out after the last increase.
    }
    .yoke_too_shallow_wider = The rounds without increases that are asked for before the split leave too few others.
    .yoke_too_shallow_closer = There is no room for { $needed } increase { $needed_number ->
        [one] round
       *[other] rounds
    }, not even one right after the other.
    .yoke_too_shallow_double_body = At the written spacing { $limit ->
        [sleeve] the sleeve increases, of which there is one at a time,
       *[body] the body increases, two at an edge in every increase round,
    } need { $needed } increase { $needed_number ->
        [one] round
       *[other] rounds
    }.
    .nothing_left = What is asked for leaves nothing of the { $measure }: { $length } cm.
    .neck_too_narrow = The neck has { $stitches } stitches without the raglan lines, and needs { $fewest }.
    .no_permitted_cast_on = No multiple of { $multiple } is near enough to a cast-on of { $stitches } stitches, in which
        each section may have up to { $reach } more or fewer.
    .neck_too_wide_body = The body should have { $stitches } stitches, but the underarms and, at the neck, back and
        front with their share of the raglan lines have { $least } already.
    .neck_too_wide_body_extra = The body should have { $stitches } stitches, but the underarms, the extra width of the
        front and, at the neck, back and front with their share of the raglan lines have { $least } already.
    .neck_too_wide_sleeve = The sleeve should have { $stitches } stitches, but the underarm and, at the neck, the sleeve
        with its share of the raglan lines have { $least } already.
    .no_permitted_counts = No stitch counts that are allowed for body, sleeve and underarm fit together.
    .front_extra_grows_too_fast = The extra width of the front grows so fast that the back would have fewer stitches
        than in the size before.
    .underarm_grows_too_fast = Within { $reach } stitches of what this size should have, no stitch counts are at least
        as large as in the size before: the underarm grows faster than body or sleeve.
    .front_drop_too_deep = A front drop of { $rows } { $rows_number ->
        [one] row
       *[other] rows
    } is too deep for a yoke of { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    }.
    .front_too_narrow = A front of { $front } { $front_number ->
        [one] stitch
       *[other] stitches
    } with { $middle } in the middle leaves { $sides } for its two sides, which must be alike and have at least 1 stitch
        each.
    .back_too_high = { $pairs } { $pairs_number ->
        [one] pair of short rows needs 1 stitch
       *[other] pairs of short rows need as many stitches
    } at each side for turning, and there { $stitches_number ->
        [one] is
       *[other] are
    } { $stitches }.
    .back_too_high_front = The last turns reach { $reach } { $reach_number ->
        [one] stitch
       *[other] stitches
    } into a front of { $front }; at most { $most } are possible.
    .darts_without_round = The short rows over the bust are worked in a round without chart and shaping, at most
        { $deepest } cm below the underarm, and rounds { $first } to { $last } of the body all have one or the other.
    .darts_too_deep = { $pairs } { $pairs_number ->
        [one] pair of short rows over the bust needs 1 stitch
       *[other] pairs of short rows over the bust need as many stitches
    } at each side for turning, and a third of the front has { $stitches }.
    .body_too_short = The { $measure } is reached in round { $round }, and the body has { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } before the hem.
    .body_too_short_for_darts = The short rows over the bust are worked in round { $round }, and the body has
        { $rounds } { $rounds_number ->
            [one] round
           *[other] rounds
        } before the hem.
    .back_too_narrow = The extra width of the front leaves the back { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } too few where the body is narrowest.
    .seams_beyond_underarm = { $seam } seam stitches are more than the { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } of the underarm in whose middle they lie.
    .seams_too_wide = { $seam } seam { $seam_number ->
        [one] stitch leaves
       *[other] stitches leave
    } nothing of a part that has { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    }.

warning =
    .gauge_far_from_pattern = Your tension has { $percent }% { $fabric ->
        [tighter] more
       *[looser] fewer
    } stitches than that of the pattern, and one or two needle sizes change it by about a tenth: take another yarn or
        another size of the pattern.
    .count_off_rule = The written number, { $count }, is not a multiple of { $multiple }{ $plus_number ->
        [0] { "" }
       *[other] {" "}plus { $plus }
    }.
    .rounded_to_nothing = The length is so short that it rounds to no { $kind ->
        [along] row
       *[across] stitch
    } at all.
    .nothing_to_knit = The { $measure } rounds to no { $unit ->
        [rows] rows
       *[stitches] stitches
    } at all: take a smaller multiple.
    .estimated_body = The { $measure } of { $sizes_number ->
        [one] size
       *[other] sizes
    } { $sizes } is an estimate, since no published table has it. Measure the wearer.
    .ease_below_published_fits = The ease at the bust is less than that of the tightest published fit, { $ease_cm } cm /
        { $ease_inch } in.
    .below_every_size = At { $gauge ->
        [own] your tension
       *[written] the written tension
    } the smallest size is still larger than wanted.
    .above_every_size = At { $gauge ->
        [own] your tension
       *[written] the written tension
    } the largest size is still smaller than wanted.
    .increases_end_early = The last body increase lies { $straight } { $straight_number ->
        [one] round
       *[other] rounds
    } ({ $length } cm) before the split in a yoke of { $rounds } rounds, so the body runs straight down to the underarm:
        { $mend ->
            [wider] space the body increases wider.
           *[with_sleeves] spread the body increases over the rounds in which the sleeves are increased.
        }
    .many_increase_rounds_in_a_row = { $streak } increase rounds follow one another with no round between them, which
        draws the raglan lines together; more than { $most } is a lot. A deeper yoke{ $room ->
            [here] , or increases spaced evenly over this one, would have
           *[deeper] {" "}would have
        } rounds between them.
    .double_body_equals_closer = No edge needs two body increases in a round, so `double_body` gives the same schedule
        as `closer`.
    .yoke_deeper_than_usual = The yoke is { $depth } cm deep, much deeper than the usual { $usual } cm for this size.
        { $total }
    .yoke_shallower_than_usual = The yoke is { $depth } cm deep, much shallower than the usual { $usual } cm for this
        size. { $total }
    .total = That makes a total length of { $total } cm.
    .total_kept = The total length of { $total } cm is still the usual one, since the body of { $body } cm makes up for
        it.
    .total_restored = That makes a total length of { $total } cm; a body length of { $restored } cm instead of { $body }
        cm would make it the usual { $usual } cm.
    .total_length_falls = The total length falls from { $before } cm in size { $smaller } to { $after } cm in size
        { $larger } ({ $steps }). { $because }
    .total_length_jumps = The total length jumps from { $before } cm in size { $smaller } to { $after } cm in size
        { $larger } ({ $steps }). { $because }
    .length_steps = change in yoke depth: { $yoke } cm, in body length: { $body } cm
    .length_steps_and_back = change in yoke depth: { $yoke } cm, in body length: { $body } cm, in the back of the body:
        { $back } cm
    .half_stitch_off_centre = Column { $column } of the chart takes an { $fitting ->
        [odd] odd
       *[even] even
    } number of stitches, and the { $section ->
        [back] back
        [front] front
       *[sleeve] sleeve
    } has { $stitches }: it is centred half a stitch off. Columns { $below } and { $above } would fit this number.
    .half_stitch_off_centre_underarm = An underarm of { $underarm } { $underarm_number ->
        [one] stitch
       *[other] stitches
    }{ $seam_number ->
        [0] { "" }
        [one] , 1 of them a seam stitch,
       *[other] , { $seam } of them seam stitches,
    } cannot be divided evenly between its two sides: the { $part ->
        [sleeve] sleeve
       *[body] body
    } lies half a stitch off its centre.
    .anchor_off_mirror_axis = The chart is a mirror image about { $axes_number ->
        [one] column
       *[other] columns
    } { $axes }{ $more_number ->
        [0] { "" }
       *[other] {" "}(and { $more } more)
    }, and the { $section ->
        [back] back
        [front] front
       *[sleeve] sleeve
    } is centred on column { $column }, so its two sides differ.
    .body_cuts_chart = The body has { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } before the hem and ends at row { $row } of { $rows } of the chart; a body of { $finishing } rounds would finish
        it.
    .sleeve_cuts_chart = The sleeve has { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } before the cuff and ends at row { $row } of { $rows } of the chart; a sleeve of { $finishing } rounds would finish
        it.
    .body_cuts_chart_unbegun = The body has { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } before the hem and ends before the chart begins; a body of { $finishing } rounds would finish it.
    .sleeve_cuts_chart_unbegun = The sleeve has { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } before the cuff and ends before the chart begins; a sleeve of { $finishing } rounds would finish it.
    .body_longer_for_chart = The body would have { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } before the hem, and its chart needs { $needed }: it is made { $more } { $more_number ->
        [one] round
       *[other] rounds
    } longer. Ask for a body length to have it shorter.
    .sleeve_longer_for_chart = The sleeve would have { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } before the cuff, and its chart needs { $needed }: it is made { $more } { $more_number ->
        [one] round
       *[other] rounds
    } longer. Ask for a sleeve length to have it shorter.
    .sleeve_plain_again = From its round { $round } on, the sleeve { $lacks ->
        [motif] has no room for a whole motif
       *[width] is narrower than the least width for the chart
    } and is worked without the chart.
    .more_than_two_colours = { $rounds } { $rounds_number ->
        [one] round of yoke, body and sleeve uses
       *[other] rounds of yoke, body and sleeve use
    } more than two colours at once.
    .long_float = The longest float is { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } ({ $length } cm) of "{ $colour }", in round { $round } of the { $part ->
        [yoke] yoke
        [body] body
       *[sleeve] sleeve
    }. Catch long floats at the back, but not at the same place in consecutive rounds.
    .float_can_catch_fingers = A float of { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } ({ $length } cm) inside a garment for a baby or a young child can catch fingers and toes. Catch every long float
        at the back, choose a chart with shorter ones, or line the garment.
    .chart_starts_before_back = The floats of the chart are measured in rounds that start before the back. These rounds
        start at the centre back, so floats across their start may be shorter or longer.
    .far_from_wanted = The { $measure } comes to { $finished } cm instead of the { $wanted } cm wanted. { $because }
    .far_from_wanted_straight = { warning.far_from_wanted } The hem has the same stitches.
    .far_from_wanted_total = { warning.far_from_wanted } With a body length of { $body } cm it would be as wanted.
    .girth_below_body = The { $measure } of the jumper measures { $finished } cm and that of the body { $body } cm: it
        is stretched there when worn. { $because }
    .armhole_below_body = The armhole is { $armhole } cm deep (a yoke of { $yoke } cm and half the width of the sleeve
        at the neck), and that of the body is { $body } cm. { $because } A yoke of { $needed } cm would be deep enough.
    .cuff_too_tight_for_hand = The cuff of { $cuff } cm stretches to { $stretched } cm, and the hand measures about
        { $hand } cm, judging by the wrist. { $because }
    .cuff_too_tight_for_hand_child = { warning.cuff_too_tight_for_hand } Hand and wrist are taken to be in proportion as
        in adults: measure the child's hand.
    .cuff_binds = The cuff is { $cuff } cm around, and the bare arm about { $arm } cm where a sleeve of { $sleeve } cm
        ends: it will be tight, or slide down. { $because }
    .neck_wider_than_shoulders = The neck of { $neck } cm is { $width } cm wide, and half of the cross back is { $held }
        cm: it may slip off the shoulders. Cast on fewer stitches, with a cast-on and a cast-off that stretch more, or
        plan an opening at a shoulder or a placket.
    .neck_does_not_pass_head = The { $edge ->
        [bind_off] cast-off of the neckband
        [join] join of the folded neckband
       *[cast_on] cast-on edge
    } of { $around } cm stretches to { $stretched } cm, and the head measures { $head } cm: make the neck wider or
        lower, or use a stretchier cast-on and cast-off.
    .neck_does_not_pass_head_own_gauge = At your tension: { warning.neck_does_not_pass_head }
    .young_child_neck = For a baby or a young child the neck must slip over the head without force, and nothing may
        tighten around the neck: use no cord, ribbon or drawstring.
    .yoke_too_deep_at_own_gauge = At your tension the yoke would be as deep as designed with { $rounds }
        { $rounds_number ->
        [one] round
       *[other] rounds
    } left out, but { $spare_number ->
        [0] none
       *[other] only { $spare }
    } can be: it stays { $excess } cm too deep.
    .body_too_long_at_own_gauge = At your tension the body would be as long as designed with { $rounds }
        { $rounds_number ->
        [one] round
       *[other] rounds
    } left out, but { $spare_number ->
        [0] none
       *[other] only { $spare }
    } can be: it stays { $excess } cm too long.
    .sleeve_too_long_at_own_gauge = At your tension the sleeve would be as long as designed with { $rounds }
        { $rounds_number ->
            [one] round
           *[other] rounds
        } left out, but { $spare_number ->
            [0] none
           *[other] only { $spare }
        } can be: it stays { $excess } cm too long.
    .swatch_decides = Only a swatch decides whether the yarn takes the place of the pattern's: it needs the same length
        only where it is knitted at the pattern's tension and makes a fabric you like. Knit one before you buy it all.
    .other_yarn_category = By every built-in chart the yarn is of another category than the pattern's: at the pattern's
        tension the fabric would be much firmer or much looser. Choose a yarn nearer to it, hold more or fewer strands
        together, or grade the garment for the tension that suits this yarn.
    .category_not_charted = No built-in chart says how many metres 100 g of category { $category } have; the standard
        tells its tension and needles only.
    .estimated_yarn = The yarn is estimated: in stocking stitch, each stitch takes { $least } to { $most } times its
        width in yarn; ribs, floats, cast-on, cast-off and ends are reckoned by the usual allowances. Cables and other
        textures take more. A weighed swatch tells more exactly.
    .estimated_yarn_of_stitches = The yarn is estimated: in stocking stitch, each stitch takes { $least } to
        { $most } times its width in yarn, and a float a little more than the width it passes over. Casting on,
        casting off and ends are not reckoned; cables and other textures take more. A weighed swatch tells more exactly.
    .low_contrast = "{ $first }" and "{ $second }" hardly read apart: on a scale of lightness from 0 to 100 they differ
        by { $difference }. Where they meet, one hardly shows on the other. Look at them together in a grey picture, or
        knit a swatch.
    .told_size_by_size = { $part }: The sizes differ too much to be told together, so each is told by itself.
    .told_size_by_size_shaped = { warning.told_size_by_size } Shaping that is as close as possible first, instead of
        spread evenly, lets them stand side by side.
    .many_sentences = { $part }: { $sentences } sentences are hard to follow. Fewer sizes, or simpler choices, need
        fewer.
    .many_findings = More than { $most } contradictions were found; the first { $most } are named. Mend some of them,
        and proofread again.

## Shaping plans

shaping =
    .row = { $worked ->
        [flat] row
       *[round] round
    }
    .rows = { $worked ->
        [flat] rows
       *[round] rounds
    }
    .span = { $worked ->
        [flat] { $rows_number ->
            [1] Row { $first }
           *[other] Rows { $first } to { $last }
        }
       *[round] { $rows_number ->
            [1] Round { $first }
           *[other] Rounds { $first } to { $last }
        }
    }
    .when = { $times_number ->
        [1] { $every_number ->
            [1] { "" }
           *[other] {" "}as the last of them
        }
       *[other] { $every_number ->
            [1] {" "}{ times.all }, one right after the other
           *[other] {" "}as the last of every { $every } { shaping.rows }, { times.all }
        }
    }
    .each = { $change } { $change_number ->
        [one] stitch
       *[other] stitches
    }
    .in_each = { $times_number ->
        [1] { "" }
       *[other] {" "}in each
    }
    .now = There { $stitches_number ->
        [one] is now 1 stitch
       *[other] are now { $stitches } stitches
    } on the needles.
    .right_side = Row 1 is a { $side ->
        [right] right-side
       *[wrong] wrong-side
    } row, so that the shaping falls on right-side rows.
    .plain = { shaping.span }: work without shaping.
    .increase = { shaping.span }: work an increase { shaping.row }{ shaping.when }, { shaping.each }
        more{ shaping.in_each }. { shaping.now }
    .decrease = { shaping.span }: work a decrease { shaping.row }{ shaping.when }, { shaping.each }
        fewer{ shaping.in_each }. { shaping.now }
    .increase_cycle = { shaping.span }: work groups of { $cycle } { shaping.rows } in turn, the last { shaping.row } of
        each group as an increase { shaping.row }, { shaping.each } more in each; work the whole sequence { times.all }.
        { shaping.now }
    .decrease_cycle = { shaping.span }: work groups of { $cycle } { shaping.rows } in turn, the last { shaping.row } of
        each group as a decrease { shaping.row }, { shaping.each } fewer in each; work the whole sequence { times.all }.
        { shaping.now }

across =
    .row = Across the { shaping.row }: { $steps }. { shaping.now }
    .worked = { $gap_number ->
        [0] { "" }
        [one] work 1 stitch,{" "}
       *[other] work { $gap } stitches,{" "}
    }
    .increase = { $times_number ->
        [1] ({ across.worked }increase 1 stitch)
       *[other] ({ across.worked }increase 1 stitch) { times.all }
    }
    .decrease = { $times_number ->
        [1] ({ across.worked }work 2 stitches together)
       *[other] ({ across.worked }work 2 stitches together) { times.all }
    }
    .work = work { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    }

## What a proof finds

proof =
    .run_length = A row has one number for each size, or a single one for all of them.
    .printed_differs = The printed numbers have to be the exact ones that were sent beside them, rounded at most.
    .below_one = A count is never below 0, and never 0 where a jumper has to have something.
    .not_whole = Stitches, rows, rounds, increases and balls are counted in whole numbers.
    .falls = From one size to the next larger one this number should stay the same or rise.
    .count_rule = The number of stitches has to fit the multiple that was asked for.
    .chart_parity = To be centred under the chart, a section needs an odd number of stitches where the centre is a
        column, and an even number where it lies between two columns.
    .inches = Centimetres and inches of a measurement have to be the same length.
    .cast_on = All stitches of the neck are cast on at first; only where the front is joined later may it be fewer.
    .section_sum = Back, front, both sleeves and the four raglan lines make up the stitches on the needles.
    .split_from_neck = From the neck to the dividing, a section gains one stitch at each of its two edges for every
        increase there.
    .body_from_split = Back, front, both underarms and what the four raglan lines give to the body make up the body.
    .sleeve_from_split = A sleeve section, one underarm and what two raglan lines give to the sleeve make up the sleeve.
    .yoke_from_neck = The stitches of the neck, and one for every increase at the two edges of back, front and each
        sleeve, make up the stitches on the needles when body and sleeves are divided.
    .split_closes = Body and both sleeves share out the stitches of the yoke, and each underarm counts twice: once for
        the body and once for a sleeve.
    .decreases_to_cuff = Each decrease round takes 2 stitches, which leads from the sleeve to the cuff; the rib may need
        a few more or fewer.
    .pick_up = The neckband is picked up from the cast-on edge; its rib may need a few stitches more or fewer than were
        cast on.
    .increase_rounds = There are as many increase rounds as the section with the most increases takes; on back and front
        a round with 2 at an edge counts as two.
    .increases_exceed_rounds = The yoke needs enough rounds for all of its increase rounds, spaced as they are.
    .decreases_exceed_rounds = The sleeve needs at least one round for each of its decrease rounds.
    .width = A width has to be what its stitches come to at the tension.
    .height = A length has to be what its rounds, with those of hem or cuff, come to at the tension.
    .total_length = A length is the sum of its parts, short rows included.
    .ease = The finished bust is the bust to fit plus the ease.
    .reach = From the centre back neck to the cuff edge it is half the width of the neck, the yoke depth and the sleeve
        length. Some patterns measure it another way.
    .yards = Metres and yards of a yarn have to be the same length.
    .yarn_falls = A larger size with no fewer stitches and rounds takes no less yarn.
    .row = { $part }: { $item }
    .yarn = Yarn { $place }, { workbook.counted }
    .none = no number
    .number = { $value }
    .cm = { $value } cm
    .inch = { $value } in
    .other = “{ $row }” ({ $value })
    .corrected = “{ $row }” ({ $value } instead of the printed { $printed })
    .line_stitches = { $stitches_number ->
        [one] { $stitches } stitch
       *[other] { $stitches } stitches
    } in each raglan line
    .allowed = { $rounding ->
        [allowed] , rounding allowed for
       *[none] { "" }
    }
    .is_printed = { $rule } “{ $row }” is printed as { $printed }.
    .told = { $rule } “{ $row }” is printed as { $printed }. Going by { $others }, it should be { $side ->
        [least] at least { $expected }{ proof.allowed }.
        [most] at most { $expected }{ proof.allowed }.
       *[exactly] { $expected }.
    }
    .between = { $rule } “{ $row }” is printed as { $printed }. Going by { $others }, it should be from { $least } to
        { $most }{ proof.allowed }.
    .off_multiple = { $rule } “{ $row }” is printed as { $printed }, which is not a multiple of
        { $multiple }{ $plus_number ->
            [0] { "" }
           *[other] {" "}plus { $plus }
        }; the nearest is { $expected }.
    .off_parity = { $rule } “{ $row }” is printed as { $printed }, and this chart needs an { $parity ->
        [odd] odd
       *[even] even
    } number there.
    .beside = { $rule } “{ $row }” is printed as { $printed }. By the exact numbers there should be { $expected }.
    .before = { $rule } “{ $row }” is printed as { $printed }, and for the smaller size { $size } as { $before }.
    .lengths = { $rule } “{ $row }” has { $values } { $values_number ->
        [one] number
       *[other] numbers
    }, and there { $sizes_number ->
        [one] is { $sizes } size
       *[other] are { $sizes } sizes
    }.

## Pictures and the workbook

picture =
    .sizes = { $sizes_number ->
        [one] Size
       *[other] Sizes
    } { $sizes }.
    .counts = Stitches: cast on { $cast_on }, body { $body }, each sleeve { $sleeve }; yoke of { $rounds } rounds.
    .not_knitted = Size { $size } cannot be knitted as asked: { $reason }
    .imprint = Pullover grading { $version } · { $digest }
    .sheet = Sheet { $number } of { $sheets }
    .schematic = Schematic
    .whole_front = Front
    .whole_chart = Chart
    .yoke_plot = Stitches of the yoke, round by round
    .chart = Where the chart starts, size { $size }
    .reading = Read every row from right to left; rounds go upwards.
    .round = round
    .row = chart row
    .column = column
    .yoke = yoke
    .split = divide
    .below = body and sleeves
    .section = { $of ->
        [back] back
        [front] front
        [both] back and front
       *[sleeve] each sleeve
    }
    .first_stitch = first stitch of { picture.section }
    .first_motif = first whole motif of { picture.section }
    .chart_described = A chart of { $columns } { $columns_number ->
        [one] column
       *[other] columns
    } and { $rows } { $rows_number ->
        [one] row
       *[other] rows
    } in { $colours }.
    .trace = { $part ->
        [yoke] In the yoke
       *[below] Below the yoke
    }, the first column of { picture.section } is { $start } in round { $first } and { $end } in round { $last }.
    .front = The front, size { $size }
    .without_bands = Without neckband, hem and cuffs.
    .edges = { $edges }{ $colours ->
        [named] : { $colour }
       *[nameless] , ribbed
    }
    .knit = knit stitches
    .inside = inside of the back
    .scale = { $cm } cm ({ $inch } in)
    .scale_cm = { $cm } cm
    .scale_inches = { $inches } in
    .raised_described = The back of the neck is { measured.length } higher than the front; its inside is seen behind the
        front.
    .dropped_described = In { $rows } { $rows_number ->
        [one] row
       *[other] rows
    } at the neck the middle of the front is missing.
    .edge_described = { $edge ->
        [hem] Hem
        [cuff] Each cuff
       *[band] Neckband
    }: { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } of rib over the { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } that are seen{ $colours ->
        [named] , in { $colour }
       *[nameless] { "" }
    }.
    .front_described = A jumper's front{ $kind ->
        [named] {" "}in { $colours }
       *[nameless] { "" }
    }. Over { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } of yoke the front widens from { $narrow } to { $wide } { $wide_number ->
        [one] stitch
       *[other] stitches
    } between the raglan lines.
    .body_described = The body below has { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    } and ends with { $stitches } { $stitches_number ->
        [one] stitch
       *[other] stitches
    } across the front.
    .seams_described = The seam stitches at the sides of the body and under the sleeves are purl stitches.
    .purl = seam stitches, purled
    .contrast = Do the colours read apart?
    .in_colours = In colour
    .in_greys = The same in greys
    .lightness = { $colour }: lightness { $lightness } of 100
    .hardly_apart = { $first } and { $second } hardly read apart: they differ by { $difference }.
    .contrast_described = A chart of { $columns } { $columns_number ->
        [one] column
       *[other] columns
    } and { $rows } { $rows_number ->
        [one] row
       *[other] rows
    }, once in its colours and once in greys of the same lightness.

drawn_section =
    .body = body
    .back = back
    .front = front
    .sleeve = sleeve

chart_sheet =
    .dimensions = Chart: { $columns } { $columns_number ->
        [one] column
       *[other] columns
    } and { $rows } { $rows_number ->
        [one] row
       *[other] rows
    }.
    .nothing_worked = No round of this size works the chart.
    .starts_in = starts in column
    .start = { $section } { $column }
    .start_after = { $section } { $column } ({ $before } plain)
    .start_in_row = { $section } { $column } in row { $row }
    .plain = { $section } plain
    .after = (1 plain): so many stitches in the plain colour before it
    .centre = { $of ->
        [all] centre
       *[some] centre of { $sections }
    }: { $where ->
        [on] column { $column }
       *[between] between columns { $column } and { $next }
    }
    .increase = increase round
    .double = round with double increases
    .decrease = decrease round
    .rounds_described = Drawn over { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    }.
    .flag = { $sizes }: { $section }
    .flag_in_row = { $sizes }: { $section }, row { $row }
    .size = size
    .of_section = { $section }: columns
    .at_split = chart row at divide
    .rows_left = rows left
    .span = { $first } to { $last }
    .span_in_row = { $first } to { $last }, row { $row }
    .size_described = Size { $size }: first stitches in { $starts }.

schematic =
    .measurement = Measurement
    .in_cm = cm
    .in_inches = in
    .cm = { $number } cm
    .inches = { $number } in
    .drawn = Bold outline, with its measurements: size { $size }. Dashed outline: size { $smallest }.
    .flat = { $letters } lie flat: the drawing shows half of each.
    .as_worn = { $letter } is measured as worn, over a rounded neck: its line is not to scale.
    .outline = { $sizes ->
        [one] A jumper lies flat, true to scale, seen from the front, with its sleeves spread.
       *[several] Jumpers of all sizes lie flat one inside the other, true to scale, seen from the front, with their
            sleeves spread.
    } Raglan lines run from the neck to the underarms; neckband, hem and cuffs are ribbed.
    .measured = { $letter }: { $title }: { measured.length }.
    .unlettered = { $title }: { measured.length }.

yoke_plot =
    .section = { $of ->
        [back] back
        [front] front
        [both] back and front
       *[sleeve] each sleeve
    }
    .axes = To the right: the rounds of the yoke, from the cast-on to the last before body and sleeves divide, in bold.
        Upwards: the stitches after each round.
    .doubled = two increases at an edge of the body
    .version = { $of ->
        [designed] as designed
       *[changed] with the changes
    }
    .rounds = The yoke has { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    }.
    .grows = Its stitches, { yoke_plot.section }: from { $start } to { $end }.
    .designed_rounds = Before the changes the yoke of { $sizes } had { $rounds } { $rounds_number ->
        [one] round
       *[other] rounds
    }.

## Round by round

increased =
    .back = back
    .front = front
    .sleeve = sleeves

rounds =
    .increase = { $edges ->
        [body] body only
        [sleeves] sleeves only
        [body_twice] body twice
        [body_twice_and_sleeves] body twice, sleeves
       *[all] body and sleeves
    }
    .increase_edges = { $kind ->
        [twice] { $twice } twice
        [both] { $twice } twice, { $once }
       *[once] { $once }
    }
    .row = { $side ->
        [wrong] wrong-side row
       *[right] right-side row
    }
    .row_increase = { rounds.row }: { $work }
    .neck_edges = { $work }, 1 at each end
    .divide = divide
    .pick_up = pick up the underarm
    .change = { $stitches } { $way ->
        [more] more
       *[fewer] fewer
    }
    .first_and = { $work }, { $change }
    .evenly = { $stitches } { $way ->
        [more] more
       *[fewer] fewer
    }, spaced evenly

page =
    .gauge = { gauge.counts }{ $fabric ->
        [stranded] {" "}(chart)
        [rib] {" "}(rib)
       *[plain] { "" }
    }

worksheet =
    .title = Worksheet, size { $size }
    .reading = Tick a box for every round, or step, when it is done. Stitches are those on the needles after the round.
    .chart_reading = Beside a round stand its row of the chart and the column in which each section begins; rounds in
        one line take the rows one after the other.
    .after_reading = “7 after 4” means: leave 4 stitches plain, then begin with column 7.
    .after = { $column } after { $plain }
    .done = Done
    .first_sleeve = Sleeve 1
    .second_sleeve = Sleeve 2
    .round = Round
    .increase = Increase
    .work = Work
    .back_and_front = Back, front
    .back = Back
    .front = Front
    .sleeve = Sleeve
    .total = Total
    .row = Row
    .stitches = Stitches
    .chart = Chart
    .body = Body

## The pattern as a page

pattern =
    .title = Pattern
    .name = Jumper
    .about = Raglan jumper, knitted in one piece from the top down
    .measurement = Measurement
    .unit = Unit
    .caution = Caution
    .of_sizes = { $sizes_number ->
        [one] Size
       *[other] Sizes
    } { $sizes }: { $note }
    .notes = Notes for the designer
    .notes_about = For whoever publishes this pattern; they are not printed.

### Names of sheets are at most 31 characters long, without any of [ ] : * ? / \

workbook =
    .garment = Jumper
    .table = Table
    .sizes = Sizes
    .instructions = Instructions
    .warnings = Warnings
    .sources = Sources
    .part = Part
    .item = Item
    .row = Title
    .unit = Unit
    .run = Run
    .size = Size
    .knittable = Can be knitted
    .yes = yes
    .no = no
    .why_not = Why not
    .sentence = Sentence
    .code = Code
    .message = Message
    .place = Place in the request
    .what = What
    .which = Which
    .note = Note
    .version = Version
    .gauge = Tension
    .bodies = Bodies
    .as_sent = as sent
    .body_table = Body table
    .publication = Publication
    .credit = Credit
    .cm = cm
    .inch = in
    .counted = { $unit ->
        [stitches] stitches
        [rounds] rounds
        [rows] rows
        [times] times
        [inch] inches
        [grams] grams
        [metres] metres
        [yards] yards
        [balls] balls
       *[cm] cm
    }

## A gauge compared with the pattern's

advice =
    .as_written = Your tension is the pattern's: knit as written.
    .rows_differ = Your stitches match the pattern's and your rows don't: keep the needle and recompute the lengths
        given in rows.
    .beyond_needles = Your fabric is much { $fabric ->
        [tighter] tighter
       *[looser] looser
    } than the pattern's, more than a needle one or two sizes away mends: take another yarn, or knit the size whose
        stitches give the width that you want at your tension.
    .another_needle = { $fabric ->
        [tighter] Your fabric is tighter than the pattern's: try a needle one or two sizes larger,
       *[looser] Your fabric is looser than the pattern's: try a needle one or two sizes smaller,
    } and knit and block a new tension swatch, which alone can tell.
