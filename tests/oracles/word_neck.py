"""The neck by its sentences: cast-on, markers, short rows that raise the back, a front that is cast on later.

Places on the needles are counted in working order from the start of the round; those before it are negative.
"""

from __future__ import annotations

from tests.oracles.word_needle import GAP, START, Gap, Piece, Said, Stretch, demand, expect, says

AFTER_LINE = {"1": "first_sleeve", "2": "front", "3": "second_sleeve", "4": "back"}
"""The section that follows the raglan line of each marker."""


@says("neck.colour")
def colour(piece: Piece, said: Said) -> None:
    """What is cast on in, and worked where nothing else is told."""
    demand(not piece.cast_on, "a color for stitches that are cast on already")
    piece.colours["plain"] = said.colour


@says("neck.cast_on_joined")
def cast_on_joined(piece: Piece, said: Said) -> None:
    """Cast on; the round starts where the cast-on does."""
    piece.cast_on, piece.joined = said.count("stitches"), True
    piece.order.append(START)


@says("neck.cast_on_flat")
def cast_on_flat(piece: Piece, said: Said) -> None:
    """Cast on, both ends at the centre front."""
    piece.cast_on, piece.flat = said.count("stitches"), True


@says("neck.place_markers")
def place_markers(piece: Piece, said: Said) -> None:
    """Begin to count."""
    expect("flat" if piece.flat else "joined", said.word("way"), "way to begin")


@says("neck.marker", "neck.start_marker", "neck.rest")
def count_stitches(piece: Piece, said: Said) -> None:
    """Count on from the last marker; after the rest comes no marker, but the end of the cast-on."""
    parts = tuple(part.removeprefix("half_") for part in said.listed("parts"))
    piece.order.append(Gap(said.count("stitches"), parts))
    counted = piece.counted
    demand(counted <= piece.cast_on, f"{counted} stitches counted of the {piece.cast_on} cast on")
    if said.id == "neck.rest":
        expect("flat" if piece.flat else "joined", said.word("way"), "where the rest leads")
    else:
        mark_here(piece, said)


@says("neck.marker_here", "neck.start_here")
def mark_here(piece: Piece, said: Said) -> None:
    """Place a marker where the counting has come."""
    name = START if said.id in ("neck.start_marker", "neck.start_here") else str(said.count("marker"))
    demand(name not in piece.order, f"marker {name} stands already")
    piece.order.append(name)


@says("neck.sections")
def sections(piece: Piece, said: Said) -> None:
    """What the stitches are, which the markers have said as well."""
    piece.line = said.count("line", 0)
    lay_out(piece)
    expect(piece.stitches, said.count("stitches"), "stitches of the neck")
    for section in ("back", "front", "first_sleeve", "second_sleeve"):
        expect(piece.total(section), said.count(section.rpartition("_")[2]), f"{section} at the neck")


def lay_out(piece: Piece) -> None:
    """The needles from the start of the round on.

    Of the stitches after a marker the first are the raglan line's, the others those of the section that is named.
    """
    if piece.needle:
        return
    assert piece.line is not None
    expect(piece.counted, piece.cast_on, "stitches counted between the markers")
    expect(sorted(name for name in piece.order if isinstance(name, str)), ["1", "2", "3", "4", START], "markers")
    begin = piece.order.index(START) + 1
    around = [*piece.order[begin:], *([] if piece.joined else [GAP]), *piece.order[: begin - 1]]
    needle: list[Stretch | str] = []
    for place, item in enumerate(around):
        if isinstance(item, str):
            needle.append(item)
            if item == GAP:
                continue
            following = around[place + 1] if place + 1 < len(around) else None
            named = following.parts if isinstance(following, Gap) else ()
            needle.append(Stretch("line", piece.line if "line" in named else 0))
            expect(needle[-1].stitches, piece.line, f"stitches of the raglan line after marker {item}")
            if AFTER_LINE[item].endswith("sleeve") and AFTER_LINE[item] not in named:
                needle.append(Stretch(AFTER_LINE[item], 0))
        else:
            needle += _unravelled(item, piece.line, needle)
    if piece.joined and piece.flat:
        _close(needle)
    piece.needle = needle
    expect(piece.stitches, piece.cast_on, "stitches of all sections")
    piece.neck = {name: piece.total(name) for name in ("back", "front", "first_sleeve", "second_sleeve")}
    piece.neck["front"] += piece.drop_centre + 2 * piece.drop_edges
    expect(piece.neck["first_sleeve"], piece.neck["second_sleeve"], "sleeves at the neck")
    piece.neck["sleeve"] = piece.neck["first_sleeve"]
    _look_at_the_turns(piece, piece.line)


def _close(needle: list[Stretch | str]) -> None:
    """Both halves of a front that is joined become one."""
    first, second = (item for item in needle if isinstance(item, Stretch) and item.name == "front")
    first.stitches += second.stitches
    needle.remove(second)


def _unravelled(gap: Gap, line: int, needle: list[Stretch | str]) -> list[Stretch]:
    """The stitches between two markers, but for the line that is on the needles already."""
    rest, others = gap.stitches, [part for part in gap.parts if part != "line"]
    if "line" in gap.parts:
        expect(gap.parts[0], "line", "what comes first after a marker")
        demand(bool(needle) and isinstance(needle[-1], Stretch) and needle[-1].name == "line", "a line without marker")
        rest -= line
    demand(len(others) <= 1, f"how many of {gap.stitches} stitches are {' and '.join(others)} is not told")
    if not others:
        expect(rest, 0, "stitches that belong to no section")
        return []
    demand(rest >= 0, f"{gap.stitches} stitches do not hold a raglan line of {line}")
    return [Stretch(others[0], rest)]


# short rows


@says("neck.short_rows")
def short_rows(piece: Piece, said: Said) -> None:
    """Begin to work back and forth."""
    piece.short_rows, begin = said.count("rows"), said.word("begin")
    piece.raised = dict.fromkeys(range(-piece.cast_on, piece.cast_on), 0)
    expect("start" if begin == "start" else "front", "front" if piece.flat else "start", "where the rows begin")
    piece.side = "wrong" if begin == "wrong" else "right"
    back, ahead = piece.ends
    piece.here = 0 if begin == "start" else ahead if begin == "wrong" else back


@says("neck.turn")
def turn(piece: Piece, said: Said) -> None:
    """One short row."""
    expect(len(piece.turns) + 1, said.count("row"), "row")
    expect(piece.side, said.word("side"), f"side of row {said.count('row')}")
    marker, past = str(said.count("marker")), said.count("stitches")
    forward = piece.side == "right"
    at = piece.forward(marker) if forward else piece.forward(marker) - piece.cast_on
    there = at + past if forward else at - past
    behind, ahead = piece.ends
    demand(behind <= there <= ahead, f"row {said.count('row')} turns where no stitches are")
    reached = [place for side, place in piece.turns if side == piece.side]
    demand(all(abs(there) > abs(place) for place in reached), f"row {said.count('row')} turns before an earlier turn")
    between = [
        name
        for name in piece.markers
        if (at < piece.forward(name) < there if forward else there < piece.forward(name) - piece.cast_on < at)
    ]
    demand(not between, f"row {said.count('row')} passes marker {between} on its {past} stitches past marker {marker}")
    _row(piece, there)
    piece.turns.append((piece.side, there))
    piece.side = "wrong" if forward else "right"


@says("neck.last_row")
def last_row(piece: Piece, said: Said) -> None:
    """Back to the start of the round, or to the end of the row and there perhaps into the round."""
    kind = said.word("kind")
    expect(len(piece.turns), piece.short_rows, "short rows")
    demand(kind != "joined" or not piece.flat, "the last row leads to the start of a round that is not joined")
    demand(kind == "joined" or piece.flat, "the last row leads to the end of a row, and there is none")
    expect(piece.side, "wrong" if kind == "wrong" else "right", "side of the last row")
    behind, ahead = piece.ends
    _row(piece, 0 if kind == "joined" else behind if kind == "wrong" else ahead)
    piece.side = "wrong" if piece.side == "right" else "right"
    if kind == "flat":
        piece.join()
    _look_at_the_raise(piece)


def _row(piece: Piece, there: int) -> None:
    demand((there > piece.here) == (piece.side == "right") and there != piece.here, "a row that leads the wrong way")
    for stitch in range(min(piece.here, there), max(piece.here, there)):
        piece.raised[stitch] += 1
    piece.here = there


def _look_at_the_raise(piece: Piece) -> None:
    """The back is raised by all rows, and the front less and less towards its centre."""
    around, (behind, ahead) = piece.cast_on, piece.ends
    first, last = piece.forward("4") - around, piece.forward("1")
    heights = [piece.raised[stitch] for stitch in range(behind, ahead)]
    # where rows turn about the start of a round, both ends meet at one stitch
    lowest = min(heights) if piece.flat else 0
    middle = heights[first - behind : last - behind]
    demand(len(set(middle)) == 1, "the back is not raised evenly")
    reach = [place for _, place in piece.turns]
    demand(max(reach) - min(reach) <= around, "short rows from both sides meet")
    expect(middle[0] - lowest, piece.short_rows, "rows by which the back is raised")
    right = [piece.raised[stitch] for stitch in range(last, ahead)]
    left = [piece.raised[stitch] for stitch in range(first - 1, behind - 1, -1)]
    for steps in (right, left):
        demand(steps == sorted(steps, reverse=True), "the raise does not fall towards the front")


def _look_at_the_turns(piece: Piece, line: int) -> None:
    """Of each two turns one lies as far beyond the back as the other."""
    first, last = piece.forward("4") - piece.cast_on + line, piece.forward("1")
    beyond = [there - last if side == "right" else first - there for side, there in piece.turns]
    for number, (one, other) in enumerate(zip(beyond[::2], beyond[1::2], strict=True)):
        expect(one, other, f"stitches beyond the back where rows {2 * number + 1} and {2 * number + 2} turn")
    demand(all(each >= line for each in beyond), "short rows turn before the raglan lines of the back end")


# a front that is cast on in part


@says("neck.drop")
def drop(piece: Piece, said: Said) -> None:
    """The first rounds of the yoke become rows; of which sides they are follows from the last."""
    piece.drop_rows = said.count("rows")
    demand(piece.flat and not piece.joined, "rows back and forth on needles that are joined")
    first = "right" if piece.drop_rows % 2 else "wrong"
    demand(said.word("side") in (first, "last"), f"{piece.drop_rows} rows begin with a {said.word('side')}-side row")
    if piece.side:
        expect(first, piece.side, "side of the row after the short rows")


@says("neck.drop_edges")
def drop_edges(piece: Piece, said: Said) -> None:
    """In which rows the front grows at its ends."""
    piece.drop_edges = said.count("times")
    demand(piece.drop_edges <= (piece.drop_rows + 1) // 2, f"{piece.drop_edges} right-side rows of {piece.drop_rows}")


@says("neck.drop_join")
def drop_join(piece: Piece, said: Said) -> None:
    """What is to be cast on at the end of the last row."""
    piece.drop_centre = said.count("stitches")
    expect(piece.drop_rows + 1, said.count("round"), "round after the rows")
