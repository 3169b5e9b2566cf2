"""What a row says by itself, over all sizes."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from itertools import pairwise
from typing import Any

from grading_core.codes import CauseCode, ProofCode
from grading_core.proof import words
from grading_core.proof.causes import digits_swapped
from grading_core.proof.figures import GRAINS, Key, Numbers, as_printed, grains, key_of, number
from grading_core.proof.result import Correction, Finding, RowKey
from grading_core.proof.table import COUNTING, Row, Steps
from grading_core.sentences import Sentence
from grading_core.sizes.labels import label_ranks

NEVER_FALLS = (
    key_of("to_fit", "bust"),
    key_of("neck", "stitches"),
    key_of("neck", "sleeve"),
    *(key_of("split", item) for item in ("back", "front", "sleeve", "yoke_total", "underarm")),
    key_of("yoke", "rounds"),
    key_of("body", "stitches"),
    key_of("sleeve", "stitches"),
    key_of("band", "stitches"),
    *(key_of("finished", item) for item in ("bust", "upper_arm", "neck", "depth", "underarm", "band")),
)
"""Rows in which no size has less than a smaller one.

Not back and front of the neck: in a published raglan, Vanille, whose neck grows from 58 to 68 stitches over nine sizes,
the sleeves take more of it and either has 23, then 24, then 22, then 20.
"""

AT_LEAST_ONE = frozenset(
    (
        *(key_of("neck", item) for item in ("cast_on", "stitches", "back", "front", "sleeve")),
        *(key_of("split", item) for item in ("back", "front", "sleeve", "yoke_total")),
        *(key_of(part, "stitches") for part in ("body", "hem", "sleeve", "cuff", "band")),
        *(key_of(part, "rounds") for part in ("yoke", "hem", "cuff", "band")),
    )
)
"""Rows that count what there has to be."""


_WORKED = (
    key_of("neck", "stitches"),
    key_of("split", "yoke_total"),
    key_of("yoke", "rounds"),
    *(key_of(part, item) for part in ("body", "hem", "sleeve", "cuff", "band") for item in ("stitches", "rounds")),
)
"""What yarn goes into."""

_SHORT_ROWS = (key_of("neck", "short_rows"), key_of("body", "bust_dart_rows"))
"""What it goes into where there are such, which tell nothing by themselves."""

_TUBES = tuple(
    (times, key_of(part, "rounds"), tuple([key_of(*each) for each in ends]))
    for times, part, ends in (
        (1, "yoke", [("neck", "stitches")]),
        (1, "body", [("body", "stitches"), ("hem", "stitches")]),
        (1, "hem", [("hem", "stitches")]),
        (2, "sleeve", [("sleeve", "stitches"), ("cuff", "stitches")]),
        (2, "cuff", [("cuff", "stitches")]),
        (1, "band", [("band", "stitches")]),
    )
)
"""How many of each part there are, its rounds, and the stitches of its ends, of which its rounds have no fewer."""

_YOKE_SHAPING = tuple(
    key_of("yoke", item)
    for item in ("rounds", "doubled_rounds", "back_increases", "front_increases", "sleeve_increases")
)
_SLEEVE_SHAPING = tuple(key_of("sleeve", item) for item in ("rounds", "decrease_rounds"))
"""What says in which rounds a part can get its stitches, or lose them."""

_GRAMS = key_of("yarn", "grams_1")


_BUSTS = (key_of("to_fit", "bust"), key_of("finished", "bust"), key_of("body", "stitches"))

_LABELS_COUNT = 3
"""As much as so many rows in telling which of two sizes is the larger."""


def times_of_rows(
    rows: Sequence[Row], columns: Mapping[Key, Numbers], rising: Sequence[int]
) -> Mapping[ProofCode, int]:
    """How often each thing was asked of rows by themselves.

    rows: as read. columns: the numbers of each row. rising: the places of the sizes from the smallest on.
    """
    counts = [numbers.values for numbers in columns.values() if numbers.unit in COUNTING]
    needed = [columns[key].values for key in AT_LEAST_ONE if key in columns]
    both = len([row for row in rows if row.values is not None and row.run is not None])
    of_sizes = [columns[key].values for key in NEVER_FALLS if key in columns]
    pairs = [pair for row in of_sizes if None in row for pair in pairwise([row[place] for place in rising])]
    full = sum([None not in row for row in of_sizes])
    return {
        ProofCode.RUN_LENGTH: len(rows),
        ProofCode.NOT_WHOLE: len(rising) * len(counts) - sum([row.count(None) for row in counts]),
        ProofCode.BELOW_ONE: len(rising) * len(needed) - sum([row.count(None) for row in needed]),
        ProofCode.PRINTED_DIFFERS: both * len(rising),
        ProofCode.FALLS: full * (len(rising) - 1) + sum([None not in pair for pair in pairs]),
        ProofCode.YARN_FALLS: len(rising) - 1 if _is_of_one_colour(columns) else 0,
    }


def length_findings(rows: Sequence[Row], sizes: int) -> Iterator[tuple[Key, Finding]]:
    """Runs of another length than there are sizes.

    rows: as read. sizes: how many there are.
    """
    right = (1, sizes)
    for row in rows:
        for values in (row.values, row.run):
            if values is not None and len(values) not in right:
                why = words.run_length(ProofCode.RUN_LENGTH, row.key, len(values), sizes)
                yield row.key, _finding(ProofCode.RUN_LENGTH, row.key, row.unit, None, None, why)
                break


def count_findings(rows: Sequence[Row], labels: Sequence[str], columns: Mapping[Key, Numbers]) -> Iterator[Finding]:
    """Counts that are none.

    rows: as read. labels: of the sizes. columns: the numbers of each row.
    """
    for row in rows:
        if row.unit not in COUNTING:
            continue
        counts, least = columns[row.key].values, GRAINS if row.key in AT_LEAST_ONE else 0
        for place, count in enumerate(counts):
            if count is None or (count % GRAINS == 0 and count >= least):
                continue
            code = ProofCode.NOT_WHOLE if count % GRAINS else ProofCode.BELOW_ONE
            yield _finding(code, row.key, row.unit, labels[place], count, words.is_printed(code, row.key, count))


def printing_findings(
    rows: Sequence[Row], labels: Sequence[str], steps: Steps, mended: Mapping[int, Mapping[Key, Correction]]
) -> Iterator[Finding]:
    """Runs that say something else than the exact values beside them.

    rows: whose runs are as long as they should be. labels: of the sizes. steps: of the rows' exact values and of runs.
    mended: the corrections of each place; a run that has what its value is to be is right.
    """
    for row in rows:
        if row.values is None or row.run is None or row.values == row.run:
            continue
        half = steps.get((row.unit, False), 0) // 2
        room = half + steps.get((row.unit, True), 0) // 2
        for place, label in enumerate(labels):
            value, seen = (told[place if len(told) == len(labels) else 0] for told in (row.values, row.run))
            if value is None or seen is None:
                if value is seen:
                    continue
            elif abs(value - seen) <= room or _is_meant(seen, room, mended.get(place, {}).get(row.key)):
                continue
            expected = None if value is None else as_printed(value, half)
            why = words.beside(ProofCode.PRINTED_DIFFERS, row.key, seen, expected)
            swapped = seen is not None and expected is not None and digits_swapped(seen, expected)
            cause = CauseCode.DIGITS_SWAPPED if swapped else None
            yield _finding(ProofCode.PRINTED_DIFFERS, row.key, row.unit, label, seen, why, expected, cause)


def _is_meant(seen: int, room: int, correction: Correction | None) -> bool:
    return correction is not None and abs(grains(correction.expected) - seen) <= room


def falling_findings(
    labels: Sequence[str],
    columns: Mapping[Key, Numbers],
    falling: Collection[Key],
    rising: Sequence[int],
    mended: Mapping[int, Mapping[Key, Correction]],
) -> Iterator[Finding]:
    """Numbers that fall from a size to a larger one.

    labels: of the sizes. columns: the numbers of each row. falling: the rows that fall as they are listed. rising: the
    places of the sizes from the smallest on. mended: what is to be corrected in sizes, by their places: where it is one
    of the two, that one is to blame.
    """
    as_listed = rising == range(len(labels))
    for key in falling if as_listed else [key for key in NEVER_FALLS if key in columns]:
        values, half, unit = columns[key]
        for smaller, larger in pairwise(rising):
            before, after = values[smaller], values[larger]
            if before is None or after is None or after + 2 * half >= before:
                continue
            why = words.falls(ProofCode.FALLS, key, after, labels[smaller], before)
            found = _finding(ProofCode.FALLS, key, unit, labels[larger], after, why)
            wrong = next((mended[place][key] for place in (larger, smaller) if key in mended.get(place, ())), None)
            yield (
                found
                if wrong is None
                else replace(found, size=wrong.size, printed=wrong.printed, expected=wrong.expected, cause=wrong.cause)
            )


def _is_of_one_colour(columns: Mapping[Key, Numbers]) -> bool:
    """Whether one yarn is told, and what goes into it."""
    return _GRAMS in columns and key_of("yarn", "grams_2") not in columns and not columns.keys().isdisjoint(_WORKED)


def yarn_findings(labels: Sequence[str], columns: Mapping[Key, Numbers], rising: Sequence[int]) -> Iterator[Finding]:
    """Larger sizes that take less yarn though none of their stitches and rounds are fewer.

    labels: of the sizes. columns: the numbers of each row. rising: the places of the sizes from the smallest on. With
    several colours nothing follows, since a chart that lies otherwise has other floats. A size with other increases
    than the one before may have them in later rounds, and be a little smaller for that: no table says where they lie.
    """
    if not _is_of_one_colour(columns):
        return
    key, worked = _GRAMS, [columns[each].values for each in (*_WORKED, *_SHORT_ROWS) if each in columns]
    values, half, unit = columns[key]
    for smaller, larger in pairwise(rising):
        before, after = values[smaller], values[larger]
        if before is not None and after is not None and after + 2 * half < before:
            counts = [(row[smaller], row[larger]) for row in worked]
            if not all(less is not None and more is not None and less <= more for less, more in counts):
                continue
            movable = _movable(columns, smaller, larger)
            if not movable or (before - after - 2 * half) * _fewest(columns, smaller) > (before + half) * movable:
                why = words.falls(ProofCode.YARN_FALLS, key, after, labels[smaller], before)
                yield _finding(ProofCode.YARN_FALLS, key, unit, labels[larger], after, why)


def _movable(columns: Mapping[Key, Numbers], smaller: int, larger: int) -> int:
    """The stitches of a size that are worked or not by where its increases and decreases lie.

    smaller, larger: its place and that of the one that it is compared with: where both have as many in as many rounds,
    they lie alike.
    """
    yoke, sleeve = (_counts(columns, keys, smaller) for keys in (_YOKE_SHAPING, _SLEEVE_SHAPING))
    movable = 0
    if yoke != _counts(columns, _YOKE_SHAPING, larger):
        rounds, doubled, back, front, of_sleeve = yoke
        # one stitch at either edge, from the earliest rounds to the latest
        movable += sum(2 * increases * max(0, rounds - increases + doubled) for increases in (back, front))
        movable += 4 * of_sleeve * max(0, rounds - of_sleeve)
    if sleeve != _counts(columns, _SLEEVE_SHAPING, larger):
        rounds, decreases = sleeve
        movable += 4 * decreases * max(0, rounds - decreases)
    return movable


def _fewest(columns: Mapping[Key, Numbers], place: int) -> int:
    """The stitches that a size has at least, as far as rows tell."""
    fewest = 0
    for times, rounds, ends in _TUBES:
        there = [key for key in ends if key in columns]
        fewest += times * _counts(columns, [rounds], place)[0] * min(_counts(columns, there, place), default=0)
    return fewest


def _counts(columns: Mapping[Key, Numbers], keys: Iterable[Key], place: int) -> list[int]:
    """A size's counts in rows; none where there is no such row or it has none there."""
    return [(columns[key].values[place] or 0) // GRAINS if key in columns else 0 for key in keys]


def falling_rows(columns: Mapping[Key, Numbers]) -> Collection[Key]:
    """Those that should never fall and do in the order in which the sizes are listed, or have no number in some.

    columns: the numbers of each row.
    """
    return [key for key in NEVER_FALLS if key in columns and not _rises(columns[key].values)]


def _rises(values: Sequence[Any]) -> bool:
    return None not in values and sorted(values) == list(values)


def rising_places(labels: Sequence[str], columns: Mapping[Key, Numbers], falling: Collection[Key]) -> Sequence[int]:
    """The places of the sizes from the smallest to the largest.

    labels: of the sizes. columns: the numbers of each row. falling: the rows that fall as they are listed. A pattern
    lists its sizes either way, which labels and most rows agree on whatever single number is wrong; where they are
    listed in no order they are sorted by bust.
    """
    places, ranks = range(len(labels)), label_ranks(tuple(labels))
    if not falling and (not ranks or _rises(ranks)):
        return places
    rows = [columns[key].values for key in NEVER_FALLS if key in columns]
    steps = [sum(_step(row[place], row[place + 1]) for row in rows) for place in places[:-1]]
    if ranks:
        steps = [step + _LABELS_COUNT * _step(*pair) for step, pair in zip(steps, pairwise(ranks), strict=True)]
    if min(steps, default=0) >= 0:
        return places
    if max(steps) <= 0:
        return places[::-1]
    busts = next((columns[key].values for key in _BUSTS if key in columns), ())
    return sorted(places, key=lambda place: busts[place] or 0) if busts and None not in busts else places


def _step(one: Any, next_one: Any) -> int:
    """1 where it rises to the next one, -1 where it falls."""
    return 0 if one is None or next_one is None else (one < next_one) - (one > next_one)


def _finding(
    code: ProofCode,
    key: Key,
    unit: str,
    size: str | None,
    printed: int | None,
    because: Sentence,
    expected: int | None = None,
    cause: CauseCode | None = None,
) -> Finding:
    return Finding(
        code=code,
        size=size,
        rows=(RowKey(key.part, key.item),),
        unit=unit,
        printed=None if printed is None else number(printed),
        expected=None if expected is None else number(expected),
        because=because,
        cause=cause,
    )
