"""The yoke by its sentences, round by round, and its division."""

from __future__ import annotations

from collections.abc import Iterable

from tests.oracles.word_neck import lay_out
from tests.oracles.word_needle import GAP, Piece, Said, Stretch, Tube, demand, expect, once, says

EDGES = ("back", "front", "sleeve")


@says("yoke.lines", "yoke.no_lines")
def raglan_lines(piece: Piece, said: Said) -> None:
    """How wide a raglan line is, so that the stitches between markers fall apart into sections."""
    line = said.count("line", 0)
    if piece.line is not None:
        expect(piece.line, line, "stitches of a raglan line")
    piece.line = line
    lay_out(piece)


def work_round(piece: Piece, increases: dict[str, int] | None = None) -> None:
    """One round of the yoke, or a row of it while the front is open."""
    once(piece, ["yoke.lines", "yoke.no_lines"], "where an edge is")
    piece.rounds += 1
    rows_left = piece.drop_rows - piece.rounds
    demand(piece.joined or rows_left >= 0, f"round {piece.rounds} of needles that are not joined")
    if increases:
        once(piece, ["yoke.leaning"], "how to increase")
        if max(increases.values()) > 1:
            once(piece, ["yoke.doubled"], "how 2 stitches are increased at one edge")
        _increase(piece, increases)
    # the last of the rows is a right-side row
    if piece.drop_rows and rows_left >= 0 and rows_left % 2 == 0 and rows_left // 2 < piece.drop_edges:
        gap = piece.needle.index(GAP)
        for beside in (piece.needle[gap - 1], piece.needle[gap + 1]):
            assert isinstance(beside, Stretch)
            beside.stitches += 1
    if piece.drop_rows and rows_left == 0:
        piece.needle[piece.needle.index(GAP)] = Stretch("front", piece.drop_centre)
        piece.join()


def _increase(piece: Piece, increases: dict[str, int]) -> None:
    """Each section ends before a marker and begins after a raglan line."""
    needle = piece.needle
    for place, item in enumerate(needle):
        if isinstance(item, str) and item != GAP:
            ends, begins = needle[place - 1], needle[(place + 2) % len(needle)]
            for edge in (ends, begins):
                assert isinstance(edge, Stretch)
                edge.stitches += increases.get(edge.name.rpartition("_")[2], 0)
    piece.increases.append(increases)


def increases_of(said: Said) -> dict[str, int]:
    """Stitches at each edge of each section in an increase round."""
    made = dict.fromkeys(said.listed("once"), 1)
    for name in said.listed("twice"):
        demand(name not in made, f"{name} has both 1 and 2 stitches more at an edge")
        made[name] = 2
    demand(set(made) <= set(EDGES) and bool(made), f"edges {[*made]}")
    return made


def _more(increases: dict[str, int]) -> int:
    return sum(many * (4 if name == "sleeve" else 2) for name, many in increases.items())


def _work_steps(piece: Piece, steps: Iterable[tuple[int, dict[str, int]]], times: int) -> None:
    for _ in range(times):
        for interval, increases in steps:
            for _ in range(interval - 1):
                work_round(piece)
            work_round(piece, increases)


def _begins(piece: Piece, said: Said) -> None:
    if "first" in said.figures:
        expect(piece.rounds + 1, said.count("first"), "first round of a sentence")


def _ends(piece: Piece, said: Said) -> None:
    if "last" in said.figures:
        expect(piece.rounds, said.count("last"), "last round of a sentence")
    if "stitches" in said.figures:
        expect(piece.stitches, said.count("stitches"), f"stitches after round {piece.rounds}")


@says("yoke.increase", "yoke.rounds_increase")
def increase_every(piece: Piece, said: Said) -> None:
    """Increase rounds at one interval: the last of so many rounds is one."""
    _begins(piece, said)
    increases = increases_of(said)
    expect(_more(increases), said.count("more"), "stitches more in each round")
    _work_steps(piece, [(said.count("every"), increases)], said.count("times"))
    _ends(piece, said)


@says("yoke.cycle", "yoke.rounds_cycle")
def increase_in_turn(piece: Piece, said: Said) -> None:
    """Increase rounds at several intervals in turn."""
    _begins(piece, said)
    increases = increases_of(said)
    expect(_more(increases), said.count("more"), "stitches more in each round")
    intervals = [int(each) for each in said.listed("cycle")]
    _work_steps(piece, [(interval, increases) for interval in intervals], said.count("times"))
    _ends(piece, said)


@says("yoke.rounds_steps")
def increase_in_steps(piece: Piece, said: Said) -> None:
    """Increase rounds of several kinds in turn."""
    _begins(piece, said)
    steps = [(step.count("rounds") + 1, increases_of(step)) for step in said.nested("steps")]
    _work_steps(piece, steps, said.count("times"))
    _ends(piece, said)


@says("yoke.after_drop")
def after_drop(piece: Piece, said: Said) -> None:
    """That rows are the first rounds."""
    expect(piece.drop_rows, said.count("rows"), "rows that are the first rounds of the yoke")


@says("yoke.plain")
def plain(piece: Piece, said: Said) -> None:
    """Rounds without increases."""
    for _ in range(said.count("rounds")):
        work_round(piece)


@says("yoke.rounds_plain")
def plain_to(piece: Piece, said: Said) -> None:
    """Rounds without increases, as far as the last that is named."""
    _begins(piece, said)
    for _ in range(piece.rounds, said.count("last")):
        work_round(piece)
    _ends(piece, said)


@says("yoke.rounds_listed")
def list_rounds(piece: Piece, said: Said) -> None:
    """Increase rounds by their numbers."""
    increases = increases_of(said)
    expect(_more(increases), said.count("more"), "stitches more in each round")
    for number in map(int, said.listed("rounds")):
        demand(number > piece.rounds and number not in piece.listed, f"round {number} is listed twice")
        piece.listed[number] = increases


@says("yoke.rounds_other")
def work_listed(piece: Piece, said: Said) -> None:
    """All rounds to the last, those that were listed with their increases."""
    for number in range(piece.rounds + 1, said.count("last") + 1):
        work_round(piece, piece.listed.pop(number, None))
    expect(piece.listed, {}, "rounds that are listed beyond the last")
    _ends(piece, said)


@says("yoke.depth")
def depth(piece: Piece, said: Said) -> None:
    """The yoke is done."""
    expect(piece.rounds, said.count("rounds"), "rounds of the yoke")


# its division


@says("split.colour")
def underarm_colour(piece: Piece, said: Said) -> None:
    """What the underarms are cast on in."""
    demand(not piece.underarms, "a color for underarms that are cast on already")
    piece.colours["underarm"] = said.colour


@says("split.begin")
def begin(piece: Piece, said: Said) -> None:
    """What is on the needles before the first sleeve is held."""
    demand(piece.joined and GAP not in piece.needle, "needles that are not joined are divided")
    expect(piece.stitches, said.count("stitches"), "stitches at the split")
    names = {item.name for item in piece.needle if isinstance(item, Stretch)}
    piece.split = {name: piece.total(name) for name in names}
    expect(piece.split["first_sleeve"], piece.split["second_sleeve"], "sleeves at the split")


@says("split.first_sleeve")
def first_sleeve(piece: Piece, said: Said) -> None:
    """Work to the sleeve, hold it, cast on its underarm."""
    marker = piece.needle.index("1")
    before = sum(item.stitches for item in piece.needle[:marker] if isinstance(item, Stretch))
    piece.past = said.count("past")
    _take(piece, before, "body")
    _take(piece, piece.past, "body")
    _hold(piece, said)


@says("split.front")
def front(piece: Piece, said: Said) -> None:
    """Work the front."""
    _take(piece, said.count("stitches"), "body")


@says("split.second_sleeve")
def second_sleeve(piece: Piece, said: Said) -> None:
    """Hold the other sleeve and cast on its underarm."""
    _hold(piece, said)


def _hold(piece: Piece, said: Said) -> None:
    piece.held.append(said.count("held"))
    _take(piece, said.count("held"), "held")
    piece.underarms.append(said.count("underarm"))
    piece.walked.append(("body", [Stretch("underarm", said.count("underarm"))]))


def _take(piece: Piece, stitches: int, where: str) -> None:
    """Work or hold the next stitches of the needles, whatever markers stand there."""
    taken: list[Stretch] = []
    left = stitches
    while left:
        demand(bool(piece.needle), f"{left} stitches of {stitches} are missing at the split")
        item = piece.needle[0]
        if isinstance(item, str):
            piece.needle.pop(0)
            continue
        if not item.stitches:
            piece.needle.pop(0)
            continue
        many = min(left, item.stitches)
        taken.append(Stretch(item.name, many))
        item.stitches -= many
        left -= many
    piece.walked.append((where, taken))


@says("split.start_back", "split.start_underarm")
def start_of_body(piece: Piece, said: Said) -> None:
    """Join, with what is left of the round before its start."""
    _take(piece, piece.stitches, "body")
    _look_at_the_division(piece)
    # the round of the division is the first of those that are told next
    piece.tubes["body"] = Tube(sum(each.stitches for each in _worked(piece, "body")))
    if said.id == "split.start_underarm":
        underarm_marker(piece, said)


def underarm_marker(piece: Piece, said: Said) -> None:
    """How many stitches of an underarm come before its marker; the last of them are its seam stitches."""
    before, seam = said.count("before"), said.count("seam", 0)
    underarm = piece.underarms[-1]
    demand(before <= underarm, f"a marker after {before} stitches of an underarm of {underarm}")
    middle = 2 * before - seam - underarm
    demand(middle in (0, 1), f"a marker after {before} of {underarm} stitches, {seam} of them seam stitches")
    demand(middle == 0 or seam == 0, f"{seam} seam stitches are not the middle ones of {underarm}")
    for known, told, what in ((piece.before, before, "before a marker"), (piece.seam, seam, "seam stitches")):
        if known is not None:
            expect(known, told, what)
    piece.before, piece.seam = before, seam


def _worked(piece: Piece, where: str) -> list[Stretch]:
    return [stretch for kind, stretches in piece.walked if kind == where for stretch in stretches]


def _look_at_the_division(piece: Piece) -> None:
    """Back and front get as much of each raglan line, and the sleeves what is left."""
    held = [stretches for kind, stretches in piece.walked if kind == "held"]
    expect(len(held), 2, "sleeves on hold")
    expect(len(set(piece.underarms)), 1, "kinds of underarms")
    assert piece.line is not None
    to_sleeve = piece.line - piece.past
    for name, stretches in zip(("first_sleeve", "second_sleeve"), held, strict=True):
        share = [Stretch("line", to_sleeve)] if to_sleeve else []
        sleeve = [Stretch(name, piece.split[name])] if piece.split[name] else []
        expect(stretches, [*share, *sleeve, *share], f"what is held of the {name}")
    for name in ("back", "front"):
        expect(sum(each.stitches for each in _worked(piece, "body") if each.name == name), piece.split[name], name)
