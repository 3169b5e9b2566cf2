"""What one size may be: every permitted neck, split and number of rounds, cheapest first.

The shelves that `solver` chooses from. The cost of a candidate is the sum of weight x difference
squared, doubled, in squared hundredths of a stitch.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from itertools import chain, product
from math import ceil, floor, lcm
from typing import NamedTuple

from grading_core.counts.request import Rules, Targets
from grading_core.counts.size_chain import Candidate, Shelf, Weights, shelf_of
from grading_core.rounding import NEAREST, CountRule
from grading_core.sections import Increases, Sections
from grading_core.yoke.schedule import grid_rounds, needed_rounds

REACH = 6
"""Stitches, or rounds, within which a count must lie of its target; one step of its rule where that is more.

The parity of the sections leaves a total one remainder modulo 4, so that permitted totals are as far apart as the least
common multiple of 4 and their rule's.
"""

NECK_WEIGHTS: Weights = (2, 1, 1, 2)
"""Cast-on, back, front and sleeve sections; the two sleeves count once each."""

SPLIT_WEIGHTS: Weights = (1, 3, 1, 0)
"""Body, sleeve and underarm. A stitch is felt sooner the narrower the part, so the sleeve outweighs the body
(a judgement of the craft, no source)."""

ROUNDS_WEIGHTS: Weights = (2, 0, 0, 0)
"""Rounds of the yoke, one counting as a stitch."""

SCALE = 100
"""Parts of a stitch to which targets are taken."""

UNIT = 2 * SCALE * SCALE
"""One squared stitch as costs have it: they are doubled, so that half the weight of the steps is whole too."""


class Option(NamedTuple):
    """One permitted amount of one quantity, its cost and its difference in hundredths."""

    cost: int
    amount: int
    difference: int


def options(target: Fraction, rule: CountRule, weight: int) -> list[Option]:
    """The counts that a rule permits within reach of a target, nearest first.

    target: in exact stitches or rounds. rule: its rounding is binding: up means no less than the target. weight: of a
    squared stitch.

    >>> [(option.amount, option.difference) for option in options(Fraction("50.4"), CountRule(8, 2), 1)]
    [(50, -40), (58, 760)]
    """
    reach = max(REACH, lcm(rule.multiple, 4))
    nearest_above, nearest_below = ceil(target), floor(target)
    first = max(nearest_above if rule.rounding == "up" else nearest_above - reach, 0)
    last = nearest_below if rule.rounding == "down" else nearest_below + reach
    first += (rule.plus - first) % rule.multiple
    exact = (2 * SCALE * target.numerator + target.denominator) // (2 * target.denominator)
    found = []
    for count in range(first, last + 1, rule.multiple):
        difference = count * SCALE - exact
        found.append(Option(2 * weight * difference * difference, count, difference))
    return sorted(found)


def necks(targets: Targets, rules: Rules, back_parity: int, sleeve_parity: int) -> Shelf:
    """Every cast-on: counts of back, front and sleeve.

    targets: of the size. rules: of all sizes. back_parity, sleeve_parity: 0 for even sections, 1 for odd ones.
    """
    total_weight, back_weight, front_weight, sleeve_weight = NECK_WEIGHTS
    totals = {option.amount: option for option in options(targets.neck, rules.neck, total_weight)}
    # a section has a stitch at least: increases at its two edges have something between them
    backs, fronts, sleeves = (
        [option for option in options(target, CountRule(2, parity), weight) if option.amount]
        for target, parity, weight in (
            (targets.neck_back, back_parity, back_weight),
            (targets.neck_front, back_parity, front_weight),
            (targets.neck_sleeve, sleeve_parity, sleeve_weight),
        )
    )
    found = []
    for back, front in product(backs, fronts):
        if front.amount > back.amount or (front.amount < back.amount and not rules.narrower_front):
            continue
        for sleeve in sleeves:
            sections = Sections(back.amount, front.amount, sleeve.amount)
            total = totals.get(sections.total(rules.yoke.line_stitches))
            if total:
                cost = total.cost + back.cost + front.cost + sleeve.cost
                differences = (total.difference, back.difference, front.difference, sleeve.difference)
                found.append(Candidate(cost, (back.amount, front.amount, sleeve.amount), differences))
    found.sort()
    return shelf_of(found)


class Splits:
    """Every split of one size that follows on its neck: counts of the back, sleeve and underarm.

    The front has what the targets' `front_share` says more than half of both, and the back as many fewer.

    targets: of the size. rules: of all sizes. neck: from `necks`. most_rounds: in which the increases must fit.
    """

    def __init__(self, targets: Targets, rules: Rules, neck: Candidate, most_rounds: int) -> None:
        body_weight, sleeve_weight, underarm_weight, _ = SPLIT_WEIGHTS
        bodies = options(targets.body, rules.body, body_weight)
        sleeves = options(targets.sleeve, rules.sleeve, sleeve_weight)
        self._underarms = options(targets.underarm, rules.underarm, underarm_weight)
        # by the parity of half the body, and of the sleeve
        self._bodies = [[body for body in bodies if body.amount % 4 == 2 * parity] for parity in (0, 1)]
        self._sleeves = [[sleeve for sleeve in sleeves if sleeve.amount % 2 == parity] for parity in (0, 1)]
        self._back, self._front, self._neck_sleeve = neck.counts
        self._front_share = targets.front_share
        self._line_to_body, self._line_to_sleeve = rules.line_to_body, rules.line_to_sleeve
        room = len(grid_rounds(most_rounds, rules.yoke))
        self._widest_front = self._front + 2 * room * (2 if rules.yoke.double_body == "if_needed" else 1)
        self._widest_sleeve = self._neck_sleeve + 2 * room
        # what was found within which budget: more are asked for again and again
        self._found: list[Candidate] = []
        self._allowance = 2 * UNIT
        self._budget = -1

    def __call__(self, count: int) -> Sequence[Candidate]:
        """So many, cheapest first, or all where there are fewer."""
        choices = (self._underarms, [*chain(*self._bodies)], [*chain(*self._sleeves)])
        if not all(choices):
            return ()
        least = sum(min(options).cost for options in choices)
        most = sum(max(options).cost for options in choices)
        while len(self._found) < count and self._budget < most:
            self._allowance *= 2
            self._budget = least + self._allowance
            self._found = sorted(self._within(self._budget))
        return self._found[:count]

    def _within(self, budget: int) -> list[Candidate]:
        """Every split that costs no more than the budget."""
        back, share, neck_sleeve = self._back, self._front_share, self._neck_sleeve
        lines_to_body, lines_to_sleeve = 2 * self._line_to_body, 2 * self._line_to_sleeve
        found = []
        for underarm_cost, underarm, underarm_difference in self._underarms:
            sleeves = self._sleeves[(neck_sleeve + underarm) % 2]
            for body_cost, body, body_difference in self._bodies[(back + underarm) % 2]:
                left = budget - underarm_cost - body_cost
                if left < 0:
                    break
                half = body // 2 - lines_to_body - underarm
                # at the neck the back has no fewer stitches than the front, so that the front has its own and more
                if not (back <= half - share and half + share <= self._widest_front):
                    continue
                for sleeve_cost, sleeve, sleeve_difference in sleeves:
                    if sleeve_cost > left:
                        break
                    at_split = sleeve - lines_to_sleeve - underarm
                    if neck_sleeve <= at_split <= self._widest_sleeve:
                        cost = underarm_cost + body_cost + sleeve_cost
                        differences = (body_difference, sleeve_difference, underarm_difference, 0)
                        found.append(Candidate(cost, (half - share, at_split, underarm), differences))
        return found


def rounds(targets: Targets, rules: Rules, increases: Increases) -> Shelf:
    """Every number of rounds that has room for the increases: a single count.

    targets: of the size. rules: of all sizes. increases: at each back, front and sleeve edge.
    """
    needed = needed_rounds(increases, rules.yoke.double_body == "if_needed")
    found = [
        Candidate(option.cost, (option.amount, 0, 0), (option.difference, 0, 0, 0))
        for option in options(targets.rounds, NEAREST, ROUNDS_WEIGHTS[0])
        if option.amount and len(grid_rounds(option.amount, rules.yoke)) >= needed
    ]
    return shelf_of(found)
