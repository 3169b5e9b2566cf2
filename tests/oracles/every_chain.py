"""The counts of all sizes by trying every chain of counts there is.

The plainest statement of what `grading_core.counts.solver` finds: for each parity all necks, then all splits that they
leave, then all rounds with room for the increases, of every size with every one of the others, and nothing left out.
It takes a hundred times as long for each size more. Only for garments all of whose sizes are possible.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction
from itertools import product
from math import ceil, floor, inf, lcm

from grading_core.counts.request import Rules, Targets
from grading_core.rounding import NEAREST, CountRule

REACH = 6
PARITY = {None: (0, 1), "even": (0,), "odd": (1,)}

Part = tuple[float, tuple[int, ...], tuple[int, ...]]
"""A neck, a split or rounds of one size: twice its cost, counts that may not fall, differences from the targets."""


def least_cost(targets: Sequence[Targets], rules: Rules) -> Fraction | None:
    """The cost of the best counts of all sizes, None where some size has none."""
    costs = [
        _cost(targets, rules, back, sleeve)
        for back, sleeve in product(PARITY[rules.back_parity], PARITY[rules.sleeve_parity])
    ]
    least = min(costs)
    return None if least == inf else Fraction(int(least), 20_000)


def _cost(targets: Sequence[Targets], rules: Rules, back: int, sleeve: int) -> float:
    necks, chosen = _best([[*_necks(size, rules, back, sleeve)] for size in targets], (2, 1, 1, 2))
    splits, halves = _best(
        [[*_splits(size, rules, neck)] for size, neck in zip(targets, chosen, strict=False)], (1, 3, 1)
    )
    rounds, _ = _best([[*_rounds(*each, rules)] for each in zip(targets, chosen, halves, strict=False)], (2,))
    return necks + splits + rounds


def _best(sizes: Sequence[Sequence[Part]], weights: Sequence[int]) -> tuple[float, list[tuple[int, ...]]]:
    """The cost of the cheapest chain and its counts; infinite, and none, where there is no chain."""
    return min(_chains(sizes, weights), default=(inf, []))


def _chains(
    sizes: Sequence[Sequence[Part]], weights: Sequence[int], before: Part | None = None
) -> Iterator[tuple[float, list[tuple[int, ...]]]]:
    if not sizes:
        yield 0, []
        return
    for part in sizes[0]:
        cost, counts, differences = part
        if before is not None:
            if any(here < was for here, was in zip(counts, before[1], strict=True)):
                continue
            steps = zip(weights, differences, before[2], strict=True)
            cost += sum(weight * (here - was) ** 2 for weight, here, was in steps)
        for beyond, others in _chains(sizes[1:], weights, part):
            yield cost + beyond, [counts, *others]


def _near(target: Fraction, rule: CountRule = NEAREST) -> Iterable[int]:
    reach = max(REACH, lcm(rule.multiple, 4))
    least = target if rule.rounding == "up" else target - reach
    most = target if rule.rounding == "down" else target + reach
    return [count for count in range(max(0, ceil(least)), floor(most) + 1) if rule.accepts(count)]


def _part(counts: tuple[int, ...], *weighed: tuple[int, int, Fraction]) -> Part:
    """Of counts, each with its weight and target."""
    differences = tuple(100 * count - floor(100 * target + Fraction(1, 2)) for _, count, target in weighed)
    cost = sum(2 * weight * by**2 for (weight, _, _), by in zip(weighed, differences, strict=True))
    return cost, counts, differences


def _necks(size: Targets, rules: Rules, back_parity: int, sleeve_parity: int) -> Iterator[Part]:
    totals = {*_near(size.neck, rules.neck)}
    for back, front, sleeve in product(_near(size.neck_back), _near(size.neck_front), _near(size.neck_sleeve)):
        total = back + front + 2 * sleeve + 4 * rules.yoke.line_stitches
        alike = front == back or (rules.narrower_front and front < back)
        parities = (back % 2, front % 2, sleeve % 2) == (back_parity, back_parity, sleeve_parity)
        if alike and parities and total in totals and min(back, front, sleeve) > 0:
            yield _part(
                (back, front, sleeve),
                (2, total, size.neck),
                (1, back, size.neck_back),
                (1, front, size.neck_front),
                (2, sleeve, size.neck_sleeve),
            )


def _splits(size: Targets, rules: Rules, neck: tuple[int, ...]) -> Iterator[Part]:
    back_at_neck, front_at_neck, sleeve_at_neck = neck
    for body, sleeve, underarm in product(
        _near(size.body, rules.body), _near(size.sleeve, rules.sleeve), _near(size.underarm, rules.underarm)
    ):
        both = body - 4 * rules.line_to_body - 2 * underarm
        back, front = both // 2 - size.front_share, both // 2 + size.front_share
        at_split = sleeve - 2 * rules.line_to_sleeve - underarm
        gains = (back - back_at_neck, front - front_at_neck, at_split - sleeve_at_neck)
        even = both % 2 == 0 and all(gain >= 0 and gain % 2 == 0 for gain in gains)
        if even and _last_round(gains, rules) <= floor(size.rounds) + REACH:
            yield _part(
                (back, at_split, underarm), (1, body, size.body), (3, sleeve, size.sleeve), (1, underarm, size.underarm)
            )


def _rounds(size: Targets, neck: tuple[int, ...], split: tuple[int, ...], rules: Rules) -> Iterator[Part]:
    back, sleeve, _ = split
    gains = (back - neck[0], back + 2 * size.front_share - neck[1], sleeve - neck[2])
    for count in _near(size.rounds):
        if count and count >= _last_round(gains, rules):
            yield _part((count,), (2, count, size.rounds))


def _last_round(gains: tuple[int, ...], rules: Rules) -> int:
    """The fewest rounds of a yoke whose back, front and sleeve gain so many stitches, two in a round that has some."""
    back, front, sleeve = (gain // 2 for gain in gains)
    body = max(back, front)
    needed = max(ceil(body / 2) if rules.yoke.double_body == "if_needed" else body, sleeve)
    return rules.yoke.first + rules.yoke.step * (needed - 1) + rules.yoke.plain_rounds_at_end if needed else 0
