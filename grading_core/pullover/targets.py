"""From finished measurements to stitches: the targets of every size, and the rules that the counts of all obey."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from grading_core.chart.grid import Anchor, neck_parity
from grading_core.codes import ProblemCode
from grading_core.counts.request import Rules, Targets
from grading_core.counts.solver import Solution, Solved, conflicts, solve
from grading_core.errors import Check, Impossible, Nearest, Path, Problem, check
from grading_core.fabric import Fabric
from grading_core.fraction import Fraction
from grading_core.gauge import Gauge
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.lengths import Lengths, place
from grading_core.pullover.measurements import TargetMeasurements
from grading_core.pullover.request import BodyWishes, Fabrics, NeckWishes, SleeveWishes, YokeWishes
from grading_core.rounding import NEAREST

_RULES: Mapping[str, Path] = {
    "neck": ("neck", "count_rule"),
    "body": ("body", "count_rule"),
    "sleeve": ("sleeve", "count_rule"),
    "back_parity": ("chart", "anchor", "back"),
    "sleeve_parity": ("chart", "anchor", "sleeve"),
    "seam_stitches": ("yoke", "seam_stitches"),
}
"""Where the rules of the solver stand in the request."""

_NONE = Fraction(0)

_CONFLICT = (
    "No size can obey this beside the rest: sections keep their parity from the neck on, back and front are alike, and "
    "the underarm counts once in each sleeve and twice in the body."
)


def count_rules(
    neck: NeckWishes, yoke: YokeWishes, body: BodyWishes, sleeve: SleeveWishes, anchor: Anchor | None
) -> Rules:
    """What the counts of every size must obey.

    neck, yoke, body, sleeve: the wishes for each part. anchor: of a chart, None without one.
    """
    shares, lines = neck.shares, yoke.options.line_stitches
    return Rules(
        neck=neck.count_rule,
        body=body.count_rule,
        sleeve=sleeve.count_rule,
        back_parity=neck_parity(anchor.back) if anchor else None,
        sleeve_parity=neck_parity(anchor.sleeve) if anchor else None,
        seam_stitches=yoke.seam_stitches,
        narrower_front=shares is not None and shares.front < shares.back,
        line_to_body=lines // 2 if yoke.line_to_body is None else yoke.line_to_body,
        yoke=yoke.options,
    )


@check
def rule_problems(rules: Rules, *, anchor_asked: bool) -> Check[None]:
    """Rules that contradict each other, each told where it stands in the request.

    rules: of all sizes. anchor_asked: whether the chart's anchor was sent; else it follows from the chart.

    >>> from grading_core.rounding import CountRule
    >>> [problem.path for problem in rule_problems(Rules(body=CountRule(4, 1)), anchor_asked=False)]
    [('body', 'count_rule')]
    """
    paths = (_RULES[field] for field in conflicts(rules))
    if not anchor_asked:
        paths = (("chart",) if path[0] == "chart" else path for path in paths)
    yield from (Problem(path, ProblemCode.CONFLICTING_RULES, _CONFLICT) for path in dict.fromkeys(paths))


@dataclass(frozen=True, slots=True)
class SolvedTargets:
    """Targets, and the counts chosen for them. expected: the targets before the rounds of the yokes were known."""

    expected: tuple[Targets, ...]
    solution: Solution

    @property
    def by_label(self) -> dict[str, Solved | Impossible]:
        """The counts of each size, or why it has none."""
        return {target.label: size for target, size in zip(self.expected, self.solution.sizes, strict=True)}


def solve_targets(
    rising: Sequence[TargetMeasurements],
    expected: tuple[Targets, ...],
    fabrics: Fabrics,
    rules: Rules,
    known: SolvedTargets | None,
) -> SolvedTargets:
    """The counts of all sizes, chosen anew where their targets aren't those of another version.

    rising, fabrics: as for `stitch_targets`. expected: what it makes of them. rules: of all sizes. known:
    the other version, None where there is none.
    """
    if known and known.expected == expected:
        return known
    solution = solve(expected, rules)
    if fabrics.rounds == fabrics.plain:
        return SolvedTargets(expected, solution)
    rounds = {
        target.label: size.counts.rounds
        for target, size in zip(expected, solution.sizes, strict=True)
        if isinstance(size, Solved)
    }
    # a yoke with other rounds than its depth comes to may be split in another fabric
    settled = stitch_targets(rising, fabrics, rules.yoke.line_stitches, rounds)
    return SolvedTargets(expected, solution if settled == expected else solve(settled, rules))


def stitch_targets(
    rising: Sequence[TargetMeasurements],
    fabrics: Fabrics,
    line_stitches: int,
    yoke_rounds: Mapping[str, int] = MappingProxyType({}),
) -> tuple[Targets, ...]:
    """Finished measurements in exact stitches and rounds.

    rising: from the smallest size to the largest, free of `fall_problems`. fabrics: the gauges. line_stitches: of each
    raglan line. yoke_rounds: by label, where they are known; else what the depth comes to.

    The neck is measured in round 1, body, sleeves and underarms in their first round below the split, each at the gauge
    of its round. None of them falls from size to size, though one size's split may lie in a chart's rounds and the
    next one's in plain ones. No section of the neck falls either: where a share falls faster than the neck grows, the
    section stays.
    """
    targets: list[Targets] = []
    for size in rising:
        rounds = fabrics.rounds.exact_rows(size.depth)
        split = yoke_rounds.get(size.label, NEAREST.round(rounds))
        below = fabrics.rounds.at(split + 1)
        neck = size.neck * fabrics.rounds.at(1).stitches_per_cm
        sections = neck - 4 * line_stitches
        back, front = sections * size.back_share, sections * size.front_share
        before = targets[-1] if targets else None
        if before:
            each_half = (neck - before.neck) / 2
            back = min(max(back, before.neck_back), before.neck_back + each_half)
            front = min(max(front, before.neck_front), before.neck_front + each_half)
        targets.append(
            Targets(
                label=size.label,
                neck=neck,
                neck_back=back,
                neck_front=front,
                neck_sleeve=(sections - back - front) / 2,
                body=max(size.bust * below.stitches_per_cm, before.body if before else _NONE),
                sleeve=max(size.upper_arm * below.stitches_per_cm, before.sleeve if before else _NONE),
                underarm=max(size.underarm * below.stitches_per_cm, before.underarm if before else _NONE),
                rounds=rounds,
                front_extra=max(size.front_extra * below.stitches_per_cm, before.front_extra if before else _NONE),
            )
        )
    return tuple(targets)


def without_counts(
    impossible: Impossible, wearer: Wearer, depth_cm: Fraction, lengths: Lengths, fabrics: Fabrics
) -> Impossible:
    """Why a size has no counts, its nearest changes as lengths and where these are asked for.

    impossible: from `solver.solve`. wearer: of the size. depth_cm: of the yoke, as it should be. lengths: as asked.
    fabrics: the gauges.
    """
    below = fabrics.rounds.at(fabrics.rounds.rows(depth_cm) + 1)
    nearest = (_nearest_length(each, wearer, lengths, fabrics.rounds, below) for each in impossible.nearest)
    return Impossible(impossible.code, impossible.reason, tuple(nearest))


def _nearest_length(nearest: Nearest, wearer: Wearer, lengths: Lengths, yoke: Fabric, below: Gauge) -> Nearest:
    """A target's nearest count as a length, an option of the yoke at the yoke; a count rule is told as it is."""
    match nearest.path:
        case ("rounds",):
            return Nearest(place(lengths, "depth"), yoke.height_cm(int(nearest.value)))
        case ("underarm",):
            return Nearest(place(lengths, "underarm"), below.width_cm(int(nearest.value)))
        case ("front_extra",):
            return Nearest(place(lengths, "front_extra"), below.width_cm(int(nearest.value)))
        case ("body",):
            return Nearest(place(lengths, "bust"), _wide_enough_cm(nearest.value, below) - wearer.body["bust"])
        case ("sleeve",):
            return Nearest(
                place(lengths, "upper_arm"), _wide_enough_cm(nearest.value, below) - wearer.body["upper_arm"]
            )
        case (_,):
            return nearest.under("yoke")
    return nearest


def _wide_enough_cm(stitches: int | str | Fraction, gauge: Gauge) -> Fraction:
    """A width that suffices for a count even when it is written with two decimals: a quarter of a stitch more."""
    return (Fraction(stitches) + Fraction(1, 4)) / gauge.stitches_per_cm
