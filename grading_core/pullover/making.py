"""The making of one version of a garment: all that its counts and parts follow from."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace

from grading_core.counts.request import Rules, Targets
from grading_core.counts.solver import Solved
from grading_core.errors import Impossible
from grading_core.pullover.bodies import Wearer
from grading_core.pullover.changes import Version
from grading_core.pullover.colours import GarmentColours, garment_colours
from grading_core.pullover.levels import level_stitches
from grading_core.pullover.measurements import TargetMeasurements, target_measurements
from grading_core.pullover.parts import knit_size
from grading_core.pullover.request import (
    BodyWishes,
    ChartWishes,
    Fabrics,
    NeckWishes,
    PulloverRequest,
    SleeveWishes,
    YokeWishes,
)
from grading_core.pullover.result import KnittedSize
from grading_core.pullover.size_run import evened_girths, smallest_first
from grading_core.pullover.targets import SolvedTargets, solve_targets, stitch_targets
from grading_core.unknown import told

_FOLLOWING: Mapping[str, tuple[str, ...]] = {"depth": ("body_length",), "sleeve_length": ("wrist",)}
"""What another length leaves: it follows where it isn't asked for itself."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Making:
    """What one version is made from.

    wearers, measurements: of all sizes, in the same order. order: their places from the smallest to the largest.
    labels: of the sizes that are made. version: as designed, or as a maker changes it. fabrics: the gauges. rules: of
    the counts. neck, yoke, body, sleeve, chart: the wishes for each part. colours: of the parts. smooths: which girths
    go in even steps, as `PulloverRequest` has it.
    """

    wearers: tuple[Wearer, ...]
    measurements: tuple[TargetMeasurements, ...]
    order: tuple[int, ...]
    labels: frozenset[str]
    version: Version
    fabrics: Fabrics
    rules: Rules
    neck: NeckWishes
    yoke: YokeWishes
    body: BodyWishes
    sleeve: SleeveWishes
    chart: ChartWishes | None
    colours: GarmentColours
    smooths: tuple[bool, bool]

    @classmethod
    def of(cls, request: PulloverRequest, wearers: tuple[Wearer, ...], version: Version, rules: Rules) -> Making:
        """The making of all sizes.

        request: what is asked. wearers: of all sizes. version: as designed or as changed. rules: of the counts.
        """
        unmeasured = cls(
            wearers=wearers,
            measurements=(),
            order=told(smallest_first, wearers),
            labels=told(lambda: frozenset(wearer.label for wearer in wearers)),
            version=version,
            fabrics=told(version.gauges.fabrics, request.chart),
            rules=rules,
            neck=request.neck,
            yoke=request.yoke,
            body=request.body,
            sleeve=request.sleeve,
            chart=request.chart,
            colours=told(garment_colours, request, changed=version.changed),
            smooths=told(lambda: request.smooths),
        )
        return replace(unmeasured, measurements=told(unmeasured.usual))

    @property
    def rising(self) -> tuple[TargetMeasurements, ...]:
        """The measurements of the sizes that are made, from the smallest to the largest."""
        rising = (self.measurements[place] for place in self.order)
        return tuple(target for target in rising if target.label in self.labels)

    @property
    def targets(self) -> tuple[Targets, ...]:
        """The measurements in stitches and rounds, from the smallest size to the largest."""
        return stitch_targets(self.rising, self.fabrics, self.rules.yoke.line_stitches)

    def solve(self, known: SolvedTargets | None = None, targets: Sequence[Targets] | None = None) -> SolvedTargets:
        """The counts of the sizes that are made.

        known: of another version, None where there is none. targets: as `targets` has them, where they are at hand.
        """
        expected = self.targets if targets is None else tuple(targets)
        return solve_targets(self.rising, expected, self.fabrics, self.rules, known)

    def level_stitches(self, counts: Mapping[str, Solved | Impossible]) -> Mapping[str, tuple[int, ...]]:
        """The stitches at every level of the body, by label.

        counts: from `solve`.
        """
        return level_stitches(self.rising, counts, self.version.adjustment, self.fabrics.rounds)

    def knit(
        self, counts: Mapping[str, Solved | Impossible], levels: Mapping[str, tuple[int, ...]], label: str
    ) -> KnittedSize | Impossible:
        """One size, or why it can't be knitted.

        counts: from `solve`. levels: from `level_stitches`. label: of the size.
        """
        place = next(place for place, wearer in enumerate(self.wearers) if wearer.label == label)
        return knit_size(
            counts[label],
            self.measurements[place],
            self.wearers[place],
            self.version,
            self.fabrics,
            neck=self.neck,
            yoke=self.yoke,
            body=self.body,
            sleeve=self.sleeve,
            chart=self.chart,
            colours=self.colours,
            level_stitches=levels.get(label, ()),
        )

    def usual(self, *names: str) -> tuple[TargetMeasurements, ...]:
        """The measurements of all sizes, were some of the lengths not asked for.

        names: of these, as `lengths.PLACES` has them; none for the measurements as asked.
        """
        lengths = {name: asked for name, asked in self.version.lengths.items() if name not in names}
        return target_measurements(
            self.wearers,
            lengths,
            self.neck,
            self.body.levels,
            style=self.version.sleeve_style,
            lines_cm=told(lambda: self.fabrics.rounds.at(1).width_cm(4 * self.yoke.options.line_stitches)),
            evened=told(evened_girths, lengths, self.smooths),
        )

    def with_length(self, name: str, others: Sequence[TargetMeasurements]) -> Making:
        """The making with one length of other measurements, and with what that length leaves there.

        name: as `lengths.PLACES` has it. others: of all sizes; all else stays, even what is usually a part of that
        length.
        """
        names = (name, *_FOLLOWING.get(name, ()))
        measurements = tuple(
            replace(target, **{each: getattr(other, each) for each in names})
            for target, other in zip(self.measurements, others, strict=True)
        )
        return replace(self, measurements=measurements)
