"""Even steps from size to size: published tables rise unevenly, and a garment need not.

What is minimised, over targets between their bounds: the sum of the squared second differences, that is, of how much
each step differs from the one before. Among equals the one that moves least is taken (the sum of squared movements),
so there is exactly one answer. It is found by an active set: bounds are taken up as the targets meet them on the way
to the least, and given up where the least lies inside them.

That steps should be even is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Sequence
from decimal import ROUND_HALF_UP, Decimal, localcontext
from functools import lru_cache
from itertools import accumulate, pairwise

from grading_core.fraction import Fraction

STEP_CM = Fraction(1, 1000)
"""To what a target that moves is rounded: a hundredth of a millimetre. What would move by less stays as it is."""

MOST_TURNS = 20
"""Steps of the search for each size: no case is known to take four."""

_DIGITS = 50
_MOVEMENT = Decimal("1e-12")
"""What a squared movement weighs beside a squared second difference: so little that it only decides among equals."""
_NOTHING = Decimal("1e-30")


def even_out(targets: Sequence[Fraction], least: Sequence[Fraction], most: Sequence[Fraction]) -> tuple[Fraction, ...]:
    """Targets of the most even steps, in cm.

    targets: of all sizes, smallest first. least, most: where each may lie, its target included.

    Two sizes, or steps that are even already, stay as they are. Targets that rise go on rising: where the most even
    steps would let one fall, it stays at the one before it.

    >>> targets = [Fraction(cm) for cm in (30, 32, 36, 38)]
    >>> made = even_out(targets, [cm - 1 for cm in targets], [cm + 1 for cm in targets])
    >>> [float(cm) for cm in made]
    [29.8, 32.6, 35.4, 38.2]
    """
    return _even_out(tuple(targets), tuple(least), tuple(most))


@lru_cache(maxsize=128)
def _even_out(
    targets: tuple[Fraction, ...], least: tuple[Fraction, ...], most: tuple[Fraction, ...]
) -> tuple[Fraction, ...]:
    """The same; a garment that is knitted again with one change has most of its girths as before."""
    with localcontext() as context:
        context.prec = _DIGITS
        moved = _Steps([_decimal(cm) for cm in targets]).least_uneven(
            [_decimal(low - cm) for low, cm in zip(least, targets, strict=True)],
            [_decimal(high - cm) for high, cm in zip(most, targets, strict=True)],
        )
        rounded = [_rounded(by, cm) for by, cm in zip(moved, targets, strict=True)]
    bounded = [max(low, min(cm, high)) for low, cm, high in zip(least, rounded, most, strict=True)]
    if all(before <= after for before, after in pairwise(targets)):
        return tuple(accumulate(bounded, max))
    return tuple(bounded)


class _Steps:
    """The movements that make targets' steps even.

    diagonal, beside, beyond: of the matrix of second differences, which has five diagonals and is symmetric.
    """

    def __init__(self, targets: Sequence[Decimal]) -> None:
        sizes = len(targets)
        self.diagonal = [_MOVEMENT] * sizes
        self.beside, self.beyond = [Decimal(0)] * sizes, [Decimal(0)] * sizes
        for place in range(sizes - 2):
            for offset, square in enumerate((1, 4, 1)):
                self.diagonal[place + offset] += square
            self.beside[place] -= 2
            self.beside[place + 1] -= 2
            self.beyond[place] += 1
        # without the weight of movements, which targets that don't move have none of
        self.uneven = self.times(targets, Decimal(0) - _MOVEMENT)

    def times(self, values: Sequence[Decimal], added: Decimal = Decimal(0)) -> list[Decimal]:
        """The matrix times values. added: to its diagonal."""
        made = [(here + added) * value for here, value in zip(self.diagonal, values, strict=True)]
        for apart, row in ((1, self.beside), (2, self.beyond)):
            for place in range(len(values) - apart):
                made[place] += row[place] * values[place + apart]
                made[place + apart] += row[place] * values[place]
        return made

    def least_uneven(self, low: Sequence[Decimal], high: Sequence[Decimal]) -> list[Decimal]:
        """The movements of the least unevenness between bounds, from none at all on."""
        moved = [Decimal(0)] * len(low)
        held: set[int] = set()
        # each bound is taken up and given up a few times at most; should rounding ever make them take turns for good,
        # what is reached lies within all bounds
        for _ in range(MOST_TURNS * len(low)):
            wanted = self.solve(moved, held)
            part, blocked = Decimal(1), None
            for place, (here, there) in enumerate(zip(moved, wanted, strict=True)):
                bound = low[place] if there < here else high[place]
                if place not in held and abs(there - here) > abs(bound - here):
                    reached = (bound - here) / (there - here)
                    if reached < part:
                        part, blocked = reached, place
            moved = [here + part * (there - here) for here, there in zip(moved, wanted, strict=True)]
            if blocked is not None:
                moved[blocked] = low[blocked] if wanted[blocked] < moved[blocked] else high[blocked]
                held.add(blocked)
                continue
            slope = [one + other for one, other in zip(self.times(moved), self.uneven, strict=True)]
            # at its upper bound a target is held rightly while moving down would cost; the first that isn't is given
            # up, and the first of those that block is taken up, which never comes back to where it was
            wrongly = (
                place
                for place in sorted(held)
                if low[place] < high[place]
                and (slope[place] if moved[place] == high[place] else -slope[place]) > _NOTHING
            )
            freed = next(wrongly, None)
            if freed is None:
                return moved
            held.remove(freed)
        return moved

    def solve(self, moved: Sequence[Decimal], held: set[int]) -> list[Decimal]:
        """The movements of the least unevenness where some are held: elimination along the five diagonals."""
        sizes = len(moved)
        diagonal, beside, beyond = [*self.diagonal], [*self.beside], [*self.beyond]
        known = [moved[place] if place in held else Decimal(0) for place in range(sizes)]
        right = [-(one + other) for one, other in zip(self.times(known), self.uneven, strict=True)]
        for place in held:
            diagonal[place], right[place] = Decimal(1), moved[place]
            beside[place] = beyond[place] = Decimal(0)
            for apart, row in ((1, beside), (2, beyond)):
                if place >= apart:
                    row[place - apart] = Decimal(0)
        for place in range(sizes - 1):
            share = beside[place] / diagonal[place]
            diagonal[place + 1] -= share * beside[place]
            right[place + 1] -= share * right[place]
            if place + 2 < sizes:
                beside[place + 1] -= share * beyond[place]
                share = beyond[place] / diagonal[place]
                diagonal[place + 2] -= share * beyond[place]
                right[place + 2] -= share * right[place]
        for place in reversed(range(sizes)):
            for apart, row in ((1, beside), (2, beyond)):
                if place + apart < sizes:
                    right[place] -= row[place] * right[place + apart]
            right[place] /= diagonal[place]
        return right


def _decimal(cm: Fraction) -> Decimal:
    return Decimal(cm.numerator) / Decimal(cm.denominator)


def _rounded(by: Decimal, target: Fraction) -> Fraction:
    """A target moved by so much, rounded."""
    steps = Fraction(by) / STEP_CM
    if abs(steps) < Fraction(1, 2):
        return target
    here = _decimal(target / STEP_CM + steps)
    return int(here.to_integral_value(ROUND_HALF_UP)) * STEP_CM
