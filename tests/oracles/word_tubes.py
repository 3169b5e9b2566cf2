"""Body, sleeves and neckband by their sentences."""

from __future__ import annotations

from collections.abc import Iterable

from tests.oracles.word_needle import Piece, Said, Tube, demand, expect, says
from tests.oracles.word_yoke import underarm_marker

SIGNS = {"decrease": -1, "increase": 1}


@says("split.body")
def body_stitches(piece: Piece, said: Said) -> None:
    """What is on the needles for the body."""
    expect(piece.tubes["body"].stitches, said.count("stitches"), "stitches of the body")


@says("split.front_extra")
def front_extra(piece: Piece, said: Said) -> None:
    """By how much the front is the wider half."""
    expect(piece.split["front"] - piece.split["back"], said.count("stitches"), "stitches of the front beyond the back")


@says("split.seam")
def seam(piece: Piece, said: Said) -> None:
    """The middle of each underarm."""
    told = said.count("seam")
    demand((piece.underarms[0] - told) % 2 == 0, f"{told} seam stitches are not the middle of {piece.underarms[0]}")
    if piece.seam is not None:
        expect(piece.seam, told, "seam stitches")
    piece.seam = told


@says("split.seam_purl")
def purled_at_sides(piece: Piece, said: Said) -> None:
    """The middle of each underarm, purled in the body."""
    seam(piece, said)
    piece.purled.add("body")


# rounds with and without shaping


@says("body.side_markers")
def side_markers(piece: Piece, said: Said) -> None:
    """Markers at both sides."""
    underarm_marker(piece, said)
    piece.sides = True


@says("body.decreases", "body.increases", "sleeve.decreases")
def stated(piece: Piece, said: Said) -> None:
    """How a shaping round is worked: around the seam stitches, or a marker."""
    at, of_sleeve = said.word("at"), piece.part == "sleeve"
    demand(of_sleeve or piece.sides, "sides are shaped that are not marked")
    demand(at in (("seam", "either") if piece.seam else ("marker", "either")), f"{piece.seam} seam stitches, {at}")
    piece.tube.stated.add(SIGNS[said.id.rpartition(".")[2].removesuffix("s")] * (2 if of_sleeve else 4))


@says("body.plain", "sleeve.plain")
def plain(piece: Piece, said: Said) -> None:
    """Rounds without shaping."""
    _rounds(piece, [said.count("rounds")], 0)


@says("body.decrease", "sleeve.decrease", "body.increase")
def shape_every(piece: Piece, said: Said) -> None:
    """Shaping rounds at one interval: the last of so many rounds is one."""
    _shape(piece, said, [said.count("every")])


@says("body.decrease_cycle", "sleeve.decrease_cycle", "body.increase_cycle")
def shape_in_turn(piece: Piece, said: Said) -> None:
    """Shaping rounds at several intervals in turn."""
    _shape(piece, said, [int(each) for each in said.listed("cycle")])


def _shape(piece: Piece, said: Said, intervals: list[int]) -> None:
    kind = said.id.rpartition(".")[2].removesuffix("_cycle")
    change = SIGNS[kind] * said.count("change")
    demand(change in piece.tube.stated, f"how a {kind} round changes {change} stitches is never explained")
    for _ in range(said.count("times")):
        _rounds(piece, intervals, change)
    expect(piece.tube.stitches, said.count("stitches"), f"stitches after round {piece.tube.rounds}")


def _rounds(piece: Piece, intervals: Iterable[int], change: int) -> None:
    tube = piece.tube
    demand(not tube.ribbed, "rounds after the rib")
    for interval in intervals:
        for left in range(interval - 1, -1, -1):
            tube.rounds += 1
            if change and not left:
                if tube.rounds == 1 and piece.part == "body":
                    piece.doubts.append("the body is shaped in round 1, in which it was divided")
                demand(tube.rounds != piece.dart_round or piece.part != "body", "shaping in the round of short rows")
                tube.shaped[tube.rounds] = change
                tube.stitches += change
            if piece.part == "body" and tube.rounds == piece.dart_round:
                _work_darts(piece)


@says("body.rounds", "sleeve.rounds")
def rounds(piece: Piece, said: Said) -> None:
    """How far the part has come."""
    expect(piece.tube.rounds, said.count("rounds"), f"rounds of the {piece.part}")
    demand(piece.dart_round <= piece.tube.rounds or piece.part != "body", "the round of the short rows never came")


# short rows over the front


@says("body.darts")
def darts(piece: Piece, said: Said) -> None:
    """In which round they will be."""
    demand(piece.sides, "no side is marked for the short rows to begin at")
    piece.dart_round, piece.dart_rows = said.count("round"), said.count("rows")


@says("body.dart_turns")
def dart_turns(piece: Piece, said: Said) -> None:
    """One row each way, counted to the middle of the underarm ahead."""
    expect(len(piece.darts) + 1, said.count("row"), "short row")
    expect(len(piece.darts) + 2, said.count("next"), "short row")
    piece.darts += [said.count("stitches")] * 2


def _work_darts(piece: Piece) -> None:
    """From the middle of one underarm to that of the other, a stitch in the very middle left out."""
    front, at_sides = _front(piece), sum(piece.tube.shaped.values()) // 2
    heights = [0] * (front + at_sides)
    expect(len(piece.darts), piece.dart_rows, "short rows of the front")
    here, reached = 0, [len(heights), -1]
    for number, stitches in enumerate(piece.darts):
        there = stitches if number % 2 else len(heights) - stitches
        demand(0 <= there <= len(heights), f"{stitches} stitches before the middle of an underarm")
        demand(there > reached[1] if number % 2 else there < reached[0], "a turn that lies beyond the one before")
        demand(there < here if number % 2 else there > here, "a short row that leads the wrong way")
        reached[number % 2] = there
        for stitch in range(min(here, there), max(here, there)):
            heights[stitch] += 1
        here = there
    for stitch in range(here, len(heights)):
        heights[stitch] += 1
    demand(heights[0] == heights[-1] == 1, "the front is longer at its sides, too")
    expect(max(heights) - 1, piece.dart_rows, "rows over the middle of the front")


def _front(piece: Piece) -> int:
    """Stitches of the front and its halves of the underarms at the split."""
    body = [stretch for where, stretches in piece.walked if where == "body" for stretch in stretches]
    first, second = (place for place, stretch in enumerate(body) if stretch.name == "underarm")
    return sum(stretch.stitches for stretch in body[first + 1 : second]) + 2 * (piece.underarms[0] // 2)


# sleeves


@says("sleeve.return")
def take_back(piece: Piece, said: Said) -> None:
    """The held stitches and those of the underarm."""
    expect(piece.held, [said.count("held")] * 2, "stitches held of both sleeves")
    expect(piece.underarms, [said.count("underarm")] * 2, "stitches cast on at both underarms")
    piece.tubes["sleeve"] = Tube(piece.held[0] + piece.underarms[0])
    expect(piece.tube.stitches, said.count("stitches"), "stitches of the sleeve")


@says("sleeve.start")
def sleeve_start(piece: Piece, said: Said) -> None:
    """Where its rounds start."""
    underarm_marker(piece, said)


@says("sleeve.seam_purl")
def purled_under_sleeve(piece: Piece, said: Said) -> None:
    """The same stitches in the sleeve."""
    expect(piece.seam, said.count("seam"), "seam stitches of the sleeve")
    demand(not piece.tube.rounds, "seams that are purled in the middle of a sleeve")
    piece.purled.add("sleeve")


# ribs


@says("rib.colour")
def edge_colour(piece: Piece, said: Said) -> None:
    """What hem or cuff is worked in from its first round on."""
    edge = said.word("edge")
    expect({"body": "hem", "sleeve": "cuff"}.get(piece.part), edge, "edge of the part")
    demand(not piece.tube.ribbed, f"a color for a {edge} that is begun already")
    piece.colours[edge] = said.colour


@says("rib.decrease", "rib.increase")
def adjust(piece: Piece, said: Said) -> None:
    """One round that brings the stitches to the rib's multiple."""
    tube = piece.tube
    demand(not tube.ribbed, "two rounds to adjust a rib")
    tube.adjusted = SIGNS[said.id.rpartition(".")[2]] * said.count("many")
    tube.stitches += tube.adjusted
    tube.ribbed = 1
    expect(tube.stitches, said.count("stitches"), f"stitches of the rib of the {piece.part}")


@says("rib.spread")
def spread(piece: Piece, said: Said) -> None:
    """Where the stitches of the round before are gained or lost: it has to use up all of them."""
    tube = piece.tube
    used = gained = 0
    for step in said.nested("steps"):
        if step.id == "across.work":
            used += step.count("stitches")
            continue
        decrease = step.id == "across.decrease"
        used += step.count("times") * (step.count("gap") + 2 * decrease)
        gained += step.count("times") * (-1 if decrease else 1)
    expect(gained, tube.adjusted, f"stitches gained or lost in the {piece.part}")
    expect(used, tube.stitches - tube.adjusted, f"stitches of the round that adjusts the {piece.part}")


@says("rib.work")
def rib(piece: Piece, said: Said) -> None:
    """Rounds of rib, whose repeat goes up into the stitches."""
    piece.tube.ribbed += said.count("rounds")
    piece.tube.ribs += 1
    (kind,) = said.nested("rib")
    if kind.id == "ribbing.knit_purl":
        piece.tube.rib = (kind.count("knit"), kind.count("purl"))
        piece.tube.rest = piece.tube.stitches % sum(piece.tube.rib)


@says("rib.bind_off")
def bind_off(piece: Piece, said: Said) -> None:
    """The end of a part."""
    demand(not piece.tube.done, f"the {piece.part} is bound off twice")
    piece.tube.done = True


# the neckband


@says("band.colour")
def band_colour(piece: Piece, said: Said) -> None:
    """What the band is picked up and worked in."""
    demand("band" not in piece.tubes, "a color for a band that is picked up already")
    piece.colours["band"] = said.colour


@says("band.pick_up", "band.pick_up_drop")
def pick_up(piece: Piece, said: Said) -> None:
    """A stitch for each cast on, at the centre front of a drop too, and those along its rows."""
    stitches = piece.cast_on + piece.drop_centre
    if said.id == "band.pick_up_drop":
        stitches += 2 * said.count("side")
        expect(piece.drop_rows, said.count("rows"), "row ends at each side of the front")
        exact = piece.drop_rows * said.count("rate") / said.count("per")
        demand(abs(exact - said.count("side")) <= 1, f"{said.count('side')} of {piece.drop_rows} row ends")
    else:
        expect(piece.drop_rows, 0, "row ends that no stitch is picked up along")
    piece.tubes["band"] = Tube(stitches)
    expect(stitches, said.count("stitches"), "stitches picked up")


@says("band.fold")
def fold(piece: Piece, said: Said) -> None:
    """A round to fold at."""
    piece.tube.ribbed += 1


@says("band.inner")
def inner(piece: Piece, said: Said) -> None:
    """The layer inside."""
    outer = piece.tube.ribbed - piece.done["band.fold"]
    piece.tube.ribbed += said.count("rounds")
    expect(said.count("rounds"), outer, "rounds of the inner layer")


@says("band.join")
def join(piece: Piece, said: Said) -> None:
    """The end of a band of two layers."""
    demand(bool(piece.done["band.inner"]) and not piece.tube.done, "a fold of one layer")
    piece.tube.done = True
