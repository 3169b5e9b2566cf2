"""What a wrong number is likely to be: the slips that pattern writers know (common practice, no source)."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import pairwise

from grading_core.codes import CauseCode
from grading_core.proof.figures import GRAINS, Figures, Key, number


def likely_cause(
    key: Key, printed: int, expected: int, figures: Figures, *, line_stitches: int | None, neighbours: Sequence[int]
) -> CauseCode | None:
    """What a slip is likely to be, None where nothing speaks for any.

    key: of the row. printed, expected: its number, in grains. figures: the others of the size. line_stitches: of each
    raglan line. neighbours: the numbers of the row in the sizes beside it, if they differ at all: a number that all
    sizes have was taken from none.
    """
    if digits_swapped(printed, expected):
        return CauseCode.DIGITS_SWAPPED
    if key in _LEFT_OUT:
        for cause, missing in _left_out(key, figures, line_stitches).items():
            if missing and expected - printed == missing:
                return cause
    return CauseCode.NEIGHBOURING_SIZE if printed in neighbours else None


def digits_swapped(printed: int, expected: int) -> bool:
    """Whether two digits have changed places.

    printed, expected: in grains.

    >>> digits_swapped(168 * GRAINS, 186 * GRAINS), digits_swapped(168 * GRAINS, 618 * GRAINS)
    (True, True)
    """
    told, meant = (str(float(number(value))) for value in (printed, expected))
    if len(told) != len(meant):
        return False
    differ = [place for place, (one, other) in enumerate(zip(told, meant, strict=True)) if one != other]
    return len(differ) == 2 and [told[place] for place in differ] == [meant[place] for place in reversed(differ)]


def shifted(printed: Mapping[int, int], expected: Mapping[int, int]) -> bool:
    """Whether the numbers of a row stand one size too far to one side, in two sizes or more that follow one another.

    printed: in grains, by the places of all sizes. expected: by the places of those that are wrong.

    >>> shifted({0: 5, 1: 6, 2: 6, 3: 7}, {2: 7, 3: 8})
    True
    """
    wrong = sorted(expected)
    if len(wrong) < 2 or wrong[-1] - wrong[0] != len(wrong) - 1:
        return False
    pairs = list(pairwise(wrong))
    return all(printed[after] == expected[before] for before, after in pairs) or all(
        printed[before] == expected[after] for before, after in pairs
    )


_BODY, _SLEEVE = Key("body", "stitches"), Key("sleeve", "stitches")
_TOTALS = (Key("neck", "stitches"), Key("split", "yoke_total"))
_SECTIONS = {Key("split", section): Key("yoke", f"{section}_increases") for section in ("back", "front", "sleeve")}
_LEFT_OUT = frozenset((_BODY, _SLEEVE, *_TOTALS, *_SECTIONS))


def _left_out(key: Key, figures: Figures, line_stitches: int | None) -> Mapping[CauseCode, int]:
    """What may have been forgotten in a total, and how many stitches it is."""

    def count(other: Key) -> int:
        return figures[other].printed if other in figures else 0

    underarm, to_body = count(Key("split", "underarm")), count(Key("split", "line_to_body"))
    lines = (line_stitches or 0) * GRAINS
    if key in _SECTIONS:
        return {CauseCode.EDGES_COUNTED_ONCE: count(_SECTIONS[key])}
    if key in _TOTALS:
        return {CauseCode.RAGLAN_STITCHES_FORGOTTEN: 4 * lines}
    if key == _BODY:
        return {CauseCode.UNDERARM_FORGOTTEN: 2 * underarm, CauseCode.RAGLAN_STITCHES_FORGOTTEN: 4 * to_body}
    return {CauseCode.UNDERARM_FORGOTTEN: underarm, CauseCode.RAGLAN_STITCHES_FORGOTTEN: 2 * (lines - to_body)}
