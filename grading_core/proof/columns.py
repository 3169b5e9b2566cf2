"""The numbers of all rows of a pattern.

Each row is also one whole number, in which every size has bits of its own, so that a sum of rows is found in all sizes
by a few additions. Most relations of most patterns hold: only where one doesn't are its sizes looked at one by one.
"""

from __future__ import annotations

import struct
from collections.abc import Mapping
from functools import cached_property, lru_cache

from grading_core.proof.figures import Key, Numbers

_BITS = 128
"""Of a size."""

FACTOR_BITS = 60
"""How long all factors of a sum may be together: a number has 64, and a sum with its bounds leaves the last bit."""

BOUND_BITS = 120
"""How long a bound of a sum may be."""


class Columns(dict[Key, Numbers]):
    """The numbers of each row, one or more, of as many sizes each.

    >>> one, other = Key("a", "one"), Key("a", "other")
    >>> columns = Columns({one: Numbers((3, 5), 0, ""), other: Numbers((4, 6), 0, "")})
    >>> columns.lies_within({one: 1, other: -1}, -1, -1), columns.lies_within({one: 2, other: 1}, 10, 15)
    (True, False)
    """

    @cached_property
    def sizes(self) -> int:
        """How many there are."""
        return len(next(iter(self.values())).values)

    @cached_property
    def has_inches(self) -> bool:
        """Whether any row has inches beside the centimetres of another one, or alone."""
        return any(key.inches for key in self)

    def lies_within(self, times: Mapping[Key, int], least: int | None, most: int | None) -> bool:
        """Whether it is seen at once that a sum of rows can lie between two bounds in every size.

        It isn't where a row has no number in some size, or one below nothing.

        times: how often each row is added, all together `FACTOR_BITS` long at most. least, most: `BOUND_BITS` long at
        most; None where there is no bound.
        """
        packed, total, slack = self._packed, 0, 0
        for key, factor in times.items():
            row = packed.get(key)
            if row is None:
                return False
            number, half = row
            total += factor * number
            if half:
                slack += abs(factor) * half
        one, last = self._bits
        if least == most and least is not None and not slack:
            return total == least * one
        # what is not below nothing leaves the last bit of its size as it is
        if least is not None and (last + total - (least - slack) * one) & last != last:
            return False
        return most is None or (last - total + (most + slack) * one) & last == last

    @cached_property
    def _packed(self) -> Mapping[Key, tuple[int, int]]:
        """Rows as one whole number each, and half the step that their numbers were rounded to."""
        packing, found = struct.Struct(f"<{'Q8x' * self.sizes}").pack, {}
        for key, (values, half, _) in self.items():
            try:
                found[key] = int.from_bytes(packing(*values), "little"), half
            except struct.error:
                continue
        return found

    @cached_property
    def _bits(self) -> tuple[int, int]:
        """The first and the last bit of every size."""
        first = _first_bits(self.sizes)
        return first, first << (_BITS - 1)


@lru_cache(maxsize=64)
def _first_bits(sizes: int) -> int:
    return sum(1 << (_BITS * place) for place in range(sizes))
