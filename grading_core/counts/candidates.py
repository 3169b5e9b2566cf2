"""What one size may be: every permitted neck, split and number of rounds, cheapest first.

The shelves that `solver` chooses from. The cost of a candidate is the sum of weight x difference
squared, doubled, in squared hundredths of a stitch.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import lcm
from typing import NamedTuple

from grading_core.counts.request import Rules, Targets
from grading_core.counts.size_chain import ALL, Counts, Listed, Shelf, Weights, shelf_of
from grading_core.fraction import Fraction
from grading_core.rounding import NEAREST, CountRule
from grading_core.sections import Increases
from grading_core.yoke.schedule import grid_rounds, least_rounds, needed_rounds

REACH = 6
"""Stitches, or rounds, within which a count must lie of its target; one step of its rule where that is more.

The parity of the sections leaves a total one remainder modulo 4, so that permitted totals are as far apart as the least
common multiple of 4 and their rule's.
"""

NECK_WEIGHTS: Weights = (2, 1, 1, 2)
"""Cast-on, back, front and sleeve sections; the two sleeves count once amounts."""

SPLIT_WEIGHTS: Weights = (1, 3, 1, 0)
"""Body, sleeve and underarm. A stitch is felt sooner the narrower the part, so the sleeve outweighs the body
(a judgement of the craft, no source)."""

ROUNDS_WEIGHTS: Weights = (2, 0, 0, 0)
"""Rounds of the yoke, one counting as a stitch."""

SCALE = 100
"""Parts of a stitch to which targets are taken."""

UNIT = 2 * SCALE * SCALE
"""One squared stitch as costs have it: they are doubled, so that half the weight of the steps is whole too."""


FIRST_ALLOWANCE = 8 * UNIT
"""Within which of the cheapest split others are looked for first: mostly about as many as are asked for first."""

Option = tuple[int, int, int]
"""One permitted amount of one quantity: its cost, itself, and its difference in hundredths."""

ByParity = tuple[list[Option], list[Option]]
"""Even amounts, and odd ones."""


def options(target: Fraction, rule: CountRule, weight: int, least: int = 0) -> list[Option]:
    """The counts that a rule permits within reach of a target, nearest first.

    target: in exact stitches or rounds. rule: its rounding is binding: up means no less than the target. weight: of a
    squared stitch. least: the smallest count that there may be.

    >>> [(amount, difference) for _, amount, difference in options(Fraction("50.4"), CountRule(8, 2), 1)]
    [(50, -40), (58, 760)]
    """
    numerator, denominator = target.as_integer_ratio()
    reach = max(REACH, lcm(rule.multiple, 4))
    nearest_above, nearest_below = -(-numerator // denominator), numerator // denominator
    first = max(nearest_above if rule.rounding == "up" else nearest_above - reach, least)
    last = nearest_below if rule.rounding == "down" else nearest_below + reach
    first += (rule.plus - first) % rule.multiple
    exact = (2 * SCALE * numerator + denominator) // (2 * denominator)
    found = [
        (2 * weight * (difference := count * SCALE - exact) * difference, count, difference)
        for count in range(first, last + 1, rule.multiple)
    ]
    found.sort()
    return found


class Permitted(NamedTuple):
    """The permitted amounts of every quantity of one size, nearest first.

    necks: of the cast-on. backs, fronts, neck_sleeves: its sections, each of a stitch at least. bodies: even ones, by
    the parity of their half. sleeves, underarms: below the split. rounds: of the yoke, 1 or more. front_share: as the
    targets have it.
    """

    necks: list[Option]
    backs: ByParity
    fronts: ByParity
    neck_sleeves: ByParity
    bodies: ByParity
    sleeves: ByParity
    underarms: ByParity
    rounds: list[Option]
    front_share: int


def permitted(targets: Targets, rules: Rules) -> Permitted:
    """What each quantity may be by itself.

    targets: of the size. rules: of all sizes.
    """
    total_weight, back_weight, front_weight, neck_sleeve_weight = NECK_WEIGHTS
    body_weight, sleeve_weight, underarm_weight, _ = SPLIT_WEIGHTS
    # a section has a stitch at least: increases at its two edges have something between them
    backs = _by_parity(options(targets.neck_back, NEAREST, back_weight, least=1))
    alike = targets.neck_front == targets.neck_back and front_weight == back_weight
    bodies = options(targets.body, rules.body, body_weight)
    return Permitted(
        necks=options(targets.neck, rules.neck, total_weight),
        backs=backs,
        fronts=backs if alike else _by_parity(options(targets.neck_front, NEAREST, front_weight, least=1)),
        neck_sleeves=_by_parity(options(targets.neck_sleeve, NEAREST, neck_sleeve_weight, least=1)),
        bodies=([body for body in bodies if body[1] % 4 == 0], [body for body in bodies if body[1] % 4 == 2]),
        sleeves=_by_parity(options(targets.sleeve, rules.sleeve, sleeve_weight)),
        underarms=_by_parity(options(targets.underarm, rules.underarm, underarm_weight)),
        rounds=options(targets.rounds, NEAREST, ROUNDS_WEIGHTS[0], least=1),
        front_share=targets.front_share,
    )


def _by_parity(found: list[Option]) -> ByParity:
    return [option for option in found if not option[1] & 1], [option for option in found if option[1] & 1]


def necks(amounts: Permitted, rules: Rules, back_parity: int, sleeve_parity: int) -> Shelf:
    """Every cast-on: counts of back, front and sleeve.

    amounts: what each quantity may be. rules: of all sizes. back_parity, sleeve_parity: 0 for even sections, 1 for odd
    ones.
    """
    lines = 4 * rules.yoke.line_stitches
    totals = {total: (cost, difference) for cost, total, difference in amounts.necks}
    sleeves = amounts.neck_sleeves[sleeve_parity]
    fronts = {front[1]: front for front in amounts.fronts[back_parity]}
    found = []
    for back_cost, back, back_difference in amounts.backs[back_parity]:
        narrower = range(back_parity, back, 2) if rules.narrower_front else ()
        for front_cost, front, front_difference in [fronts[width] for width in (*narrower, back) if width in fronts]:
            pair_cost, others = back_cost + front_cost, back + front + lines
            found += [
                (
                    total[0] + pair_cost + sleeve_cost,
                    (back, front, sleeve),
                    (total[1], back_difference, front_difference, sleeve_difference),
                )
                for sleeve_cost, sleeve, sleeve_difference in sleeves
                if (total := totals.get(others + 2 * sleeve))
            ]
    found.sort()
    return shelf_of(found)


def least_neck(amounts: Permitted, rules: Rules, back_parity: int, sleeve_parity: int) -> int | None:
    """What no cast-on of sections with these parities costs less than; None where some quantity has no such amount.

    amounts: what each quantity may be. rules: of all sizes. back_parity, sleeve_parity: as for `necks`.
    """
    # the raglan lines come in fours
    remainders = [
        (2 * back_parity + 2 * sleeve_parity + less) % 4 for less in ((0, 2) if rules.narrower_front else (0,))
    ]
    total = next((cost for cost, total, _ in amounts.necks if total % 4 in remainders), None)
    backs, fronts = amounts.backs[back_parity], amounts.fronts[back_parity]
    sleeves = amounts.neck_sleeves[sleeve_parity]
    if total is None or not (backs and fronts and sleeves):
        return None
    return total + backs[0][0] + fronts[0][0] + sleeves[0][0]


def least_split(amounts: Permitted, back_parity: int, sleeve_parity: int) -> int | None:
    """What no split of sections with these parities costs less than, whatever the neck; None where there is none.

    amounts: what each quantity may be. back_parity, sleeve_parity: as for `necks`.
    """
    least = [
        underarms[0][0] + bodies[0][0] + sleeves[0][0]
        for parity, underarms in enumerate(amounts.underarms)
        for bodies in [amounts.bodies[(back_parity + parity) % 2]]
        for sleeves in [amounts.sleeves[(sleeve_parity + parity) % 2]]
        if underarms and bodies and sleeves
    ]
    return min(least, default=None)


class Splits:
    """Every split of one size that follows on its neck: counts of the back, sleeve and underarm.

    The front has what `front_share` says more than half of both, and the back as many fewer.

    amounts: what each quantity may be. rules: of all sizes. neck: the counts of its sections. most_rounds: in which the
    increases must fit.
    """

    def __init__(self, amounts: Permitted, rules: Rules, neck: Counts, most_rounds: int) -> None:
        self._amounts, self._neck = amounts, neck
        back, front, sleeve = neck
        self._lines_to_body, self._lines_to_sleeve = 2 * rules.line_to_body, 2 * rules.line_to_sleeve
        room = len(grid_rounds(most_rounds, rules.yoke))
        self._widest_front = front + 2 * room * (2 if rules.yoke.double_body == "if_needed" else 1)
        self._widest_sleeve = sleeve + 2 * room
        self._least = least_split(amounts, back % 2, sleeve % 2)
        # what was found within the last budget: more are asked for again and again
        self._found: list[Listed] = []
        self._all_found = False
        self._allowance = FIRST_ALLOWANCE

    def __call__(self, count: int) -> Sequence[Listed]:
        """So many, cheapest first, or all where there are fewer."""
        if self._least is None:
            return ()
        while len(self._found) < count and not self._all_found:
            most = self._most()
            budget = most if count >= ALL else self._least + self._allowance
            self._found = self._within(budget)
            self._all_found = budget >= most
            self._allowance *= 2
        return self._found[:count]

    def _most(self) -> int:
        """What no split costs more than."""
        quantities = self._amounts.underarms, self._amounts.bodies, self._amounts.sleeves
        return sum(max(options[-1][0] for options in by_parity if options) for by_parity in quantities)

    def _within(self, budget: int) -> list[Listed]:
        """Every split that costs no more than the budget, cheapest first."""
        back, _, neck_sleeve = self._neck
        share, lines_to_body, lines_to_sleeve = self._amounts.front_share, self._lines_to_body, self._lines_to_sleeve
        widest_front, widest_sleeve = self._widest_front, self._widest_sleeve
        found = []
        for parity, underarms in enumerate(self._amounts.underarms):
            bodies = self._amounts.bodies[(back + parity) % 2]
            sleeves = self._amounts.sleeves[(neck_sleeve + parity) % 2]
            if not bodies or not sleeves:
                continue
            least_body, least_sleeve = bodies[0][0], sleeves[0][0]
            for underarm_cost, underarm, underarm_difference in underarms:
                if underarm_cost + least_body + least_sleeve > budget:
                    break
                off_body, off_sleeve = lines_to_body + underarm, lines_to_sleeve + underarm
                for body_cost, body, body_difference in bodies:
                    spent = underarm_cost + body_cost
                    left = budget - spent
                    if left < least_sleeve:
                        break
                    half = body // 2 - off_body
                    # at the neck the back has no fewer stitches than the front: the front has its own and more
                    if half - share < back or half + share > widest_front:
                        continue
                    for sleeve_cost, sleeve, sleeve_difference in sleeves:
                        if sleeve_cost > left:
                            break
                        at_split = sleeve - off_sleeve
                        if neck_sleeve <= at_split <= widest_sleeve:
                            differences = (body_difference, sleeve_difference, underarm_difference, 0)
                            found.append((spent + sleeve_cost, (half - share, at_split, underarm), differences))
        found.sort()
        return found


def rounds(amounts: Permitted, rules: Rules, increases: Increases) -> Shelf:
    """Every number of rounds that has room for the increases: a single count.

    amounts: what each quantity may be. rules: of all sizes. increases: at each back, front and sleeve edge.
    """
    least = least_rounds(needed_rounds(increases, rules.yoke.double_body == "if_needed"), rules.yoke)
    return shelf_of(
        [
            (cost, (amount, 0, 0), (difference, 0, 0, 0))
            for cost, amount, difference in amounts.rounds
            if amount >= least
        ]
    )
