"""The stitches of the body at its levels, chosen over all sizes, so that no hip or hem falls where none is asked to.

Shaping by fours keeps what a body's count leaves when divided by four. Where two sizes leave another remainder, the
counts nearest to one and the same hip can fall from the smaller to the larger.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction
from functools import partial
from itertools import groupby, islice, pairwise
from math import lcm

from grading_core.counts.size_chain import Candidate, Chain, cheapest_chain
from grading_core.counts.solver import Solved
from grading_core.errors import Impossible
from grading_core.fabric import Fabric
from grading_core.parts.body import STITCHES_PER_SHAPING, Level, gauge_at_level, nearest_at_level
from grading_core.pullover.measurements import TargetMeasurements
from grading_core.yoke.request import Adjustment

_NO_WEIGHTS = (0, 0, 0, 0)


def level_stitches(
    rising: Sequence[TargetMeasurements],
    solved: Mapping[str, Solved | Impossible],
    adjustment: Adjustment | None,
    rounds: Fabric,
) -> Mapping[str, tuple[int, ...]]:
    """The stitches at every level, by the label of each size that has counts.

    rising: from the smallest size to the largest. solved: by label, the counts or why there are none. adjustment: of
    the yoke, None for none. rounds: of the yoke, and on below it those of the body.

    Of all counts that shaping by fours reaches, and that fall from size to size only where what is wanted does, in
    stitches, those of the least summed squared distance from it.
    """
    sizes = []
    for target in rising:
        size = solved[target.label]
        if isinstance(size, Solved):
            written = size.counts.rounds
            yoke = adjustment.new_rounds(written, rounds) if adjustment else written
            sizes.append((target, size.counts.body, rounds.below(yoke)))
    per_level = (
        _rising_counts([(body, target.levels[place], fabric) for target, body, fabric in sizes])
        for place in range(len(rising[0].levels) if rising else 0)
    )
    counts = [*zip(*per_level, strict=True)] or [()] * len(sizes)
    return {target.label: found for (target, _, _), found in zip(sizes, counts, strict=True)}


def _rising_counts(sizes: Sequence[tuple[int, Level, Fabric]]) -> list[int]:
    """The counts at one level. sizes: the stitches from which it is reached, the level, and the body's rounds."""
    wanted = [level.circumference_cm * gauge_at_level(level, fabric).stitches_per_cm for _, level, fabric in sizes]
    # where what is wanted falls the count may too: from there on the sizes are a run of their own
    falls = [0]
    for before, after in pairwise(wanted):
        falls.append(falls[-1] + (after < before))
    counts: list[int] = []
    for _, places in groupby(range(len(sizes)), key=falls.__getitem__):
        run = [*places]
        unit = lcm(*(wanted[place].denominator for place in run))
        shelves = [partial(_nearest_counts, nearest_at_level(*sizes[place]), wanted[place], unit) for place in run]
        chain = cheapest_chain(shelves, _NO_WEIGHTS)
        assert isinstance(chain, Chain)  # a larger count is always there
        counts += [candidate.counts[0] for candidate in chain.candidates]
    return counts


def _nearest_counts(nearest: int, target: Fraction, unit: int, many: int) -> list[Candidate]:
    """So many counts, the nearest to a target first. unit: the cost is in squares of one part of so many."""
    reach = STITCHES_PER_SHAPING * many
    lowest = max(nearest % STITCHES_PER_SHAPING, nearest - reach)
    counts = range(lowest, nearest + reach + 1, STITCHES_PER_SHAPING)
    costs = sorted((int((count - target) * unit) ** 2, -count) for count in counts)
    return [Candidate(cost, (-count, 0, 0), _NO_WEIGHTS) for cost, count in islice(costs, many)]
