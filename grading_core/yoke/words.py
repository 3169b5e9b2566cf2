"""What there is to say of a yoke's increases: for all sizes together, and for one size by its rounds."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from grading_core.sections import Increases
from grading_core.sentences import COUNT, COUNTS, SENTENCES, TOKEN, Saying, Sentence, words
from grading_core.shaping import Phase
from grading_core.wording import Line, side_by_side

_EDGES = {"kind": TOKEN, "once": words("edges"), "twice": words("edges"), "more": COUNT}
"""Of an increase round. kind: whether an edge has 1 stitch more (once), 2 (twice), or some this and some that (both).
once, twice: which edges. more: stitches in all."""

LINES = Saying("yoke.lines", line=COUNT)
NO_LINES = Saying("yoke.no_lines")
LEANING = Saying("yoke.leaning")
DOUBLED = Saying("yoke.doubled")
AFTER_DROP = Saying("yoke.after_drop", rows=COUNT)
WRONG_SIDE = Saying("yoke.wrong_side")
INCREASE = Saying("yoke.increase", every=COUNT, times=COUNT, **_EDGES, stitches=COUNT)
CYCLE = Saying("yoke.cycle", cycle=COUNTS, times=COUNT, **_EDGES, stitches=COUNT)
PLAIN = Saying("yoke.plain", rounds=COUNT)

SPAN = {"first": COUNT, "last": COUNT, "rounds": COUNT}
ROUNDS_INCREASE = Saying("yoke.rounds_increase", **SPAN, every=COUNT, times=COUNT, **_EDGES, stitches=COUNT)
ROUNDS_CYCLE = Saying("yoke.rounds_cycle", **SPAN, cycle=COUNTS, times=COUNT, **_EDGES, stitches=COUNT)
ROUNDS_STEPS = Saying("yoke.rounds_steps", **SPAN, steps=SENTENCES, times=COUNT, stitches=COUNT)
ROUNDS_PLAIN = Saying("yoke.rounds_plain", **SPAN)
ROUNDS_LISTED = Saying("yoke.rounds_listed", rounds=COUNTS, **_EDGES)
ROUNDS_OTHER = Saying("yoke.rounds_other", last=COUNT, stitches=COUNT)
STEP = Saying("step.increase", rounds=COUNT, **_EDGES)

MOST_PHASES = 6
"""A schedule of more phases than this is clearer as a list of its increase rounds (a judgement, no source)."""


def explained(line_stitches: int, *, doubled: bool) -> Iterator[Sentence]:
    """Where the edges are, and how an increase is worked there.

    line_stitches: of each raglan line. doubled: whether an edge ever has two increases in a round.
    """
    yield LINES(line=line_stitches) if line_stitches else NO_LINES()
    yield LEANING()
    if doubled:
        yield DOUBLED()


@dataclass(frozen=True, slots=True)
class Told:
    """What is told of the yoke of one size.

    phases: its schedule. neck: stitches before the first round, all of the front among them. missing: after each round
    how many of these are not on the needles yet, as long as there are any.
    """

    phases: Sequence[Phase[Increases]]
    neck: int
    missing: Sequence[int] = ()

    def on_needles(self, round_number: int, gained: int) -> int:
        """Stitches on the needles after a round, with those that were gained up to it."""
        short = self.missing[round_number - 1] if 0 < round_number <= len(self.missing) else 0
        return self.neck + gained - short


def run_instructions(sizes: Sequence[Told | None]) -> tuple[Sentence, ...]:
    """The schedules of all sizes in sentences with size runs; none where the sizes are too unlike.

    sizes: None where one is impossible.
    """
    lines = side_by_side([size.phases if size else None for size in sizes])
    rounds, gained = [0] * len(sizes), [0] * len(sizes)
    sentences = []
    for line in lines:
        edges = _edges(line.cycle[0][1]) if line.cycle else {}
        reached: list[int | None] = [None] * len(sizes)
        for place, size in enumerate(sizes):
            amount = line.amounts[place] or 0
            rounds[place] += amount * (sum(interval for interval, _ in line.cycle) or 1)
            gained[place] += amount * len(line.cycle) * edges.get("more", 0)
            if size and amount:
                reached[place] = size.on_needles(rounds[place], gained[place])
        sentences.append(_increase(line, edges, tuple(reached)) if edges else PLAIN(rounds=line.amounts))
    return tuple(sentences)


def size_instructions(size: Told) -> Iterator[Sentence]:
    """The schedule of one size by its rounds.

    size: of whose phases one may repeat rounds of several kinds.
    """
    if len(size.phases) > MOST_PHASES:
        yield from _listed(size)
        return
    gained = 0
    for phase in size.phases:
        span = {"first": phase.from_row, "last": phase.to_row, "rounds": phase.to_row - phase.from_row + 1}
        if not phase.times:
            yield ROUNDS_PLAIN(**span)
            continue
        steps = [(interval, _edges(kind)) for interval, kind in phase.cycle]
        gained += phase.times * sum(edges["more"] for _, edges in steps)
        done = {"times": phase.times, "stitches": size.on_needles(phase.to_row, gained)}
        if len({kind for _, kind in phase.cycle}) > 1:
            yield ROUNDS_STEPS(**span, steps=tuple(STEP(rounds=every - 1, **edges) for every, edges in steps), **done)
        elif len(steps) > 1:
            yield ROUNDS_CYCLE(**span, cycle=phase.every, **steps[0][1], **done)
        else:
            yield ROUNDS_INCREASE(**span, every=phase.every[0], **steps[0][1], **done)


def _listed(size: Told) -> Iterator[Sentence]:
    """Every increase round by its number, one kind after another."""
    by_kind: dict[Increases, list[int]] = {}
    for phase in size.phases:
        number = phase.from_row - 1
        for interval, kind in phase.cycle * phase.times:
            number += interval
            by_kind.setdefault(kind, []).append(number)
    for kind, rounds in by_kind.items():
        yield ROUNDS_LISTED(rounds=tuple(rounds), **_edges(kind))
    gained = sum(_edges(kind)["more"] * len(rounds) for kind, rounds in by_kind.items())
    yield ROUNDS_OTHER(last=size.phases[-1].to_row, stitches=size.neck + gained)


def _increase(line: Line[Increases], edges: dict[str, Any], stitches: tuple[int | None, ...]) -> Sentence:
    every = tuple(interval for interval, _ in line.cycle)
    if len(every) > 1:
        return CYCLE(cycle=every, times=line.amounts, **edges, stitches=stitches)
    return INCREASE(every=every[0], times=line.amounts, **edges, stitches=stitches)


def _edges(increases: Increases) -> dict[str, Any]:
    """What an increase round does, as values of a sentence."""
    back, front, sleeve = increases
    by_edge = (("back", back), ("front", front), ("sleeve", sleeve))
    once = tuple(edge for edge, many in by_edge if many == 1)
    twice = tuple(edge for edge, many in by_edge if many == 2)
    kind = "both" if once and twice else "twice" if twice else "once"
    return {"kind": kind, "once": once, "twice": twice, "more": 2 * (back + front) + 4 * sleeve}
