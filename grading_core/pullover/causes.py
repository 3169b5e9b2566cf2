"""Why a measurement is not what was wanted: found by giving up one rule or length at a time and solving again.

What alone brings the measurement where it should be is a cause. Where nothing alone does, what does together is looked
for: all is given up, and taken back one after the other where the measurement doesn't need it. The counts are solved
once for each rule, for all sizes together, and only where something is amiss.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache, cached_property
from types import MappingProxyType
from typing import NamedTuple

from grading_core.counts.request import Rules, Targets
from grading_core.counts.solver import Solved, conflicts
from grading_core.errors import Impossible, Path
from grading_core.pullover.lengths import place
from grading_core.pullover.making import Making
from grading_core.pullover.request import Ribbed, RuleChange
from grading_core.pullover.result import KnittedSize
from grading_core.rounding import NEAREST, CountRule
from grading_core.sentences import COUNT, SENTENCES, TOKEN, Saying, Sentence, word

ALONE = Saying("cause.alone", causes=SENTENCES)
TOGETHER = Saying("cause.together", causes=SENTENCES)
NOT_SOUGHT = Saying("cause.not_sought")

MULTIPLE = Saying("cause.multiple", multiple=COUNT, rounding=TOKEN, of=word("counted"))
ROUNDING = Saying("cause.rounding", rounding=TOKEN, of=word("counted"))
EASE = Saying("cause.ease", measure=word("measure"))
LENGTH_ASKED = Saying("cause.length", measure=word("measure"))
ANCHOR = Saying("cause.anchor", section=TOKEN, parity=TOKEN)
SEAM = Saying("cause.seam_stitches", stitches=COUNT)
STEP = Saying("cause.step")
FIRST_INCREASE = Saying("cause.first_increase_round", round=COUNT)
PLAIN_ROUNDS = Saying("cause.plain_rounds_at_end", rounds=COUNT)
SINGLE_BODY = Saying("cause.double_body")
EDGE_HEIGHT = Saying("cause.edge_height", edge=TOKEN)
NECK_SHARES = Saying("cause.neck_shares")
MAKERS_YOKE = Saying("cause.yoke_change")
OWN_GAUGE = Saying("cause.own_gauge")
CHART = Saying("cause.chart")
OTHER_SIZES = Saying("cause.other_sizes")

MOST_SIZES = 200
"""Sizes that are solved again for one answer, each as often as it is: 40 sizes without each of five rules or lengths, 9
sizes without each of a dozen and without many of them together. It keeps an answer below a second; what then still has
no cause is said to have none that was looked for."""

COUNTED = frozenset({"neck", "bust", "upper_arm", "underarm", "depth", "hem", "armhole", "total_length", "total_steps"})
"""What follows from the counts between cast-on and split."""

_LENGTHS: Mapping[str, tuple[Saying, frozenset[str]]] = {
    "bust": (EASE, COUNTED - {"bust", "hem"}),
    "upper_arm": (EASE, COUNTED - {"upper_arm"}),
    "neck": (LENGTH_ASKED, COUNTED - {"neck"}),
    "underarm": (LENGTH_ASKED, COUNTED - {"underarm"}),
    "depth": (LENGTH_ASKED, COUNTED - {"depth", "total_length"}),
    "body_length": (LENGTH_ASKED, frozenset({"total_steps"})),
    "sleeve_length": (LENGTH_ASKED, frozenset({"arm"})),
    "wrist": (EASE, frozenset({"hand", "arm"})),
}
"""How each length is asked for, and what else it may keep from being what is wanted."""

WIDTHS = frozenset({"bust", "upper_arm", "neck", "underarm", "hem", "wrist", "hand", "arm", "armhole"})
"""What is another at another gauge, whatever is added or left out in rounds."""

Fits = Callable[..., bool]
"""Whether one or more sizes are as wanted: called with each as it would be knitted."""


@dataclass(frozen=True, slots=True)
class Cause:
    """A rule or a length. name: as it is called. path: its place in the request, None where it has none."""

    name: Sentence
    path: Path | None


_OWN_GAUGE = Cause(OWN_GAUGE(), ("changes",))


@dataclass(frozen=True, slots=True)
class Causes:
    """What keeps a measurement from being what is wanted.

    found: none where nothing that is asked for does. together: whether only all of them do, not each alone. sought:
    whether all was given up that can be.
    """

    found: tuple[Cause, ...]
    together: bool = False
    sought: bool = True

    @property
    def path(self) -> Path | None:
        """The one place in the request that is to blame, None where it isn't one."""
        return self.found[0].path if len(self.found) == 1 else None

    def told(self, otherwise: Sentence) -> Sentence:
        """The causes in a sentence.

        otherwise: the reason where nothing that is asked for is the cause.

        >>> height, seam = Cause(EDGE_HEIGHT(edge="hem"), ("body", "hem", "height")), Cause(SEAM(stitches=3), None)
        >>> Causes((height, seam)).told(CHART()).id, Causes((height, seam), together=True).told(CHART()).id
        ('cause.alone', 'cause.together')
        >>> Causes(()).told(CHART()).id
        'cause.chart'
        """
        if not self.found:
            return otherwise if self.sought else NOT_SOUGHT()
        return (TOGETHER if self.together else ALONE)(causes=tuple(cause.name for cause in self.found))


@dataclass(frozen=True, slots=True)
class Relaxation:
    """Something given up. cause: what. touches: measurements that it may change. relax: the garment without it."""

    cause: Cause
    touches: frozenset[str]
    relax: Callable[[Making], Making]


class _Relaxed(NamedTuple):
    """A garment without what is given up, its counts, and the stitches at its body's levels."""

    making: Making
    counts: Mapping[str, Solved | Impossible]
    levels: Mapping[str, tuple[int, ...]]


class _Counted(NamedTuple):
    """The counts of targets that obey rules, by label."""

    targets: tuple[Targets, ...]
    rules: Rules
    counts: Mapping[str, Solved | Impossible]


class Inquiry:
    """Asks for the causes of what is amiss in one making.

    making: that is knitted. counts: its own, from `Making.solve`. designed: the sizes at the design's gauge where a
    maker keeps their counts at another one, by label.
    """

    def __init__(
        self,
        making: Making,
        counts: Mapping[str, Solved | Impossible],
        designed: Mapping[str, KnittedSize] = MappingProxyType({}),
    ) -> None:
        self.making = making
        self._designed = designed
        self._own = counts
        self._sizes_solved = 0
        self._known: dict[str, list[tuple[Relaxation, ...]]] = {}
        self._relaxed: dict[tuple[Cause, ...], _Relaxed] = {}
        self._unsolved: set[tuple[Cause, ...]] = set()
        self._knitted: dict[tuple[tuple[Cause, ...], str], KnittedSize | Impossible | None] = {}

    @cached_property
    def _relaxations(self) -> tuple[Relaxation, ...]:
        return tuple(relaxations(self.making))

    @cached_property
    def _counts(self) -> list[_Counted]:
        """All that was solved. It is sought by comparing: hashing a fraction costs more than most comparisons take."""
        return [_Counted(self.making.targets, self.making.rules, self._own)]

    def causes(self, measurement: str, labels: Sequence[str], fits: Fits) -> Causes:
        """What keeps one or more sizes from being as wanted.

        measurement: what is amiss, as relaxations name it. labels: of the sizes. fits: whether they are as wanted.
        """
        if not self._designed or measurement not in WIDTHS:
            return self._seek(measurement, labels, fits)
        if fits(*(self._designed[label] for label in labels)):
            return Causes((_OWN_GAUGE,))
        causes = self._seek(measurement, labels, fits)
        return replace(causes, found=(_OWN_GAUGE, *causes.found), together=bool(causes.found))

    def demands(self, part: str) -> bool:
        """Whether anything is asked of the counts of a part, or of the parity of all.

        part: of the request, as in "neck" or "body".
        """
        paths = [each.cause.path for each in self._relaxations if each.cause.path]
        return any(path == (part, "count_rule") or "chart" in path or "seam_stitches" in path for path in paths)

    def _seek(self, measurement: str, labels: Sequence[str], fits: Fits) -> Causes:
        """The causes at the design's gauge."""
        tried = [each for each in self._relaxations if measurement in each.touches]
        alone = tuple(each.cause for each in tried if self._fits([each], labels, fits))
        if alone:
            return Causes(alone)
        others = [_alone(labels[0])] if self._has_others(measurement, labels) else []
        if others and self._fits(others, labels, fits):
            return Causes((others[0].cause,))
        together = self._together(measurement, tried, labels, fits)
        if not together and others and tried and self._fits([*tried, *others], labels, fits):
            together = (*tried, *others)
        return Causes(
            tuple(each.cause for each in together), together=len(together) > 1, sought=self._sizes_solved <= MOST_SIZES
        )

    def _has_others(self, measurement: str, labels: Sequence[str]) -> bool:
        return measurement in COUNTED and len(labels) == 1 and len(self.making.labels) > 1

    def _together(
        self, measurement: str, tried: Sequence[Relaxation], labels: Sequence[str], fits: Fits
    ) -> tuple[Relaxation, ...]:
        """What has to be given up together, none where even all of it doesn't do; first what did in another size."""
        known = self._known.setdefault(measurement, [])
        for needed in known:
            if self._fits(needed, labels, fits):
                return needed
        if len(tried) < 2 or not self._fits(tried, labels, fits):
            return ()
        needed = tuple(tried)
        for each in tried:
            fewer = tuple(other for other in needed if other is not each)
            if self._fits(fewer, labels, fits):
                needed = fewer
        known.append(needed)
        return needed

    def _fits(self, given_up: Sequence[Relaxation], labels: Sequence[str], fits: Fits) -> bool:
        """Whether giving up so much makes the sizes as wanted; not where that would be one solution too many."""
        sizes = [self._knit(given_up, label) for label in labels]
        return all(isinstance(size, KnittedSize) for size in sizes) and fits(*sizes)

    def _knit(self, given_up: Sequence[Relaxation], label: str) -> KnittedSize | Impossible | None:
        key = tuple(each.cause for each in given_up)
        if (key, label) not in self._knitted:
            relaxed = self._make(key, given_up, label)
            self._knitted[key, label] = relaxed and relaxed.making.knit(relaxed.counts, relaxed.levels, label)
        return self._knitted[key, label]

    def _make(self, key: tuple[Cause, ...], given_up: Sequence[Relaxation], label: str) -> _Relaxed | None:
        """The garment without what is given up, and its counts: solved anew where they are others, None if too many."""
        relaxed = self._relaxed.get(key)
        if key in self._unsolved or (relaxed and label in relaxed.counts):
            return relaxed
        making = self.making
        for each in given_up:
            making = each.relax(making)
        # without one rule the others may contradict each other
        counts = None if conflicts(making.rules) else self._solve(making)
        if counts is None:
            if making.labels == self.making.labels:
                self._unsolved.add(key)
            return None
        self._relaxed[key] = _Relaxed(making, counts, making.level_stitches(counts))
        return self._relaxed[key]

    def _solve(self, making: Making) -> Mapping[str, Solved | Impossible] | None:
        """The counts of a making, None where they would be some too many: then there are no more for any."""
        targets = making.targets
        for known in self._counts:
            if known.rules == making.rules and known.targets == targets:
                return known.counts
        self._sizes_solved += len(making.labels)
        if self._sizes_solved > MOST_SIZES:
            return None
        counts = making.solve(targets=targets).by_label
        self._counts.append(_Counted(targets, making.rules, counts))
        return counts


def relaxations(making: Making) -> Iterator[Relaxation]:
    """All that can be given up in a garment: rules that demand something, and lengths that are asked for.

    making: any.
    """
    yield from _rule_relaxations(making)
    yield from _yoke_relaxations(making)
    yield from _edge_relaxations(making)
    version = making.version
    for name, (saying, touches) in _LENGTHS.items():
        if name in version.lengths:
            cause = Cause(saying(measure=name), place(version.lengths, name))
            yield Relaxation(cause, touches, _without_length(making, name))
    if making.neck.shares:
        yield Relaxation(Cause(NECK_SHARES(), ("neck", "shares")), frozenset({"armhole"}), _usual_shares)
    if version.adjustment:
        yield Relaxation(
            Cause(MAKERS_YOKE(), ("changes", "yoke")),
            frozenset({"armhole", "total_length", "total_steps"}),
            lambda making: replace(making, version=replace(making.version, adjustment=None)),
        )
    if making.chart:
        yield Relaxation(
            Cause(CHART(), ("chart",)),
            frozenset({"body_length", "sleeve_length", "total_length", "total_steps"}),
            lambda making: replace(making, chart=None),
        )


def rule_name(rule: CountRule, of: str) -> Sentence:
    """What a count rule that demands something is called: by its multiple, where it has one, else by its rounding.

    rule: any. of: what it counts.

    >>> rule_name(CountRule(40), "body").id, rule_name(CountRule(1, 0, "up"), "body").id
    ('cause.multiple', 'cause.rounding')
    """
    if rule.multiple == 1:
        return ROUNDING(rounding=rule.rounding, of=of)
    return MULTIPLE(multiple=rule.multiple, rounding=rule.rounding, of=of)


def _rule_relaxations(making: Making) -> Iterator[Relaxation]:
    rules = making.rules
    for name in ("neck", "body", "sleeve"):
        rule: CountRule = getattr(rules, name)
        if _demands(rule):
            cause = Cause(rule_name(rule, name), (name, "count_rule"))
            yield Relaxation(cause, COUNTED, _without_rule(**{name: NEAREST}))
    for name, section in (("back_parity", "back"), ("sleeve_parity", "sleeve")):
        parity = getattr(rules, name)
        if parity:
            path = ("chart", "anchor", section) if making.chart and making.chart.anchor else ("chart",)
            cause = Cause(ANCHOR(section=section, parity=parity), path)
            yield Relaxation(cause, COUNTED, _without_rule(**{name: None}))
    if rules.seam_stitches is not None:

        def no_seam(making: Making) -> Making:
            freed = replace(making.rules, seam_stitches=None)
            return replace(making, rules=freed, yoke=replace(making.yoke, seam_stitches=None))

        yield Relaxation(Cause(SEAM(stitches=rules.seam_stitches), ("yoke", "seam_stitches")), COUNTED, no_seam)


def _yoke_relaxations(making: Making) -> Iterator[Relaxation]:
    options = making.yoke.options
    late = options.first_increase_round is not None and options.first > 1
    plain = options.plain_rounds_at_end
    for name, freest, asks, called in (
        ("step", 1, options.step > 1, STEP()),
        ("first_increase_round", 1, late, FIRST_INCREASE(round=options.first)),
        ("plain_rounds_at_end", 0, plain > 0, PLAIN_ROUNDS(rounds=plain)),
        ("double_body", "if_needed", options.double_body == "never", SINGLE_BODY()),
    ):
        if asks:
            yield Relaxation(Cause(called, ("yoke", name)), COUNTED, _with_option(**{name: freest}))


def _edge_relaxations(making: Making) -> Iterator[Relaxation]:
    for part, edge, rule_touches, height_touches in (
        ("body", "hem", frozenset({"hem"}), frozenset({"body_length", "total_length", "total_steps"})),
        ("sleeve", "cuff", frozenset({"wrist", "hand", "arm"}), frozenset({"sleeve_length"})),
    ):
        ribbed: Ribbed = getattr(getattr(making, part), edge)
        if _demands(ribbed.rule):
            cause = Cause(rule_name(ribbed.rule, edge), (part, edge, ribbed.told_by))
            yield Relaxation(cause, rule_touches, _with_edge(part, edge, count_rule=_ANY_COUNT, rib=None))
        lowest = 1 / making.fabrics.rib.rows_per_cm
        cause = Cause(EDGE_HEIGHT(edge=edge), (part, edge, "height"))
        yield Relaxation(cause, height_touches, _with_edge(part, edge, height=lowest))
    rule = making.version.band.rule
    if _demands(rule):

        def plain_band(making: Making) -> Making:
            band = replace(making.version.band, count_rule=_ANY_COUNT, rib=None)
            return replace(making, version=replace(making.version, band=band))

        cause = Cause(rule_name(rule, "neckband"), making.version.band_rule)
        yield Relaxation(cause, frozenset({"neckband"}), plain_band)


_ANY_COUNT = RuleChange(NEAREST.multiple, NEAREST.plus, NEAREST.rounding)
"""Of an edge that may have any number of stitches."""


def _demands(rule: CountRule) -> bool:
    return rule.multiple > 1 or rule.rounding != "nearest"


def _without_rule(**freed: CountRule | None) -> Callable[[Making], Making]:
    return lambda making: replace(making, rules=replace(making.rules, **freed))  # type: ignore[arg-type]


def _without_length(making: Making, name: str) -> Callable[[Making], Making]:
    usual = cache(making.usual)
    return lambda making: making.with_length(name, usual(name))


def _with_option(**options: object) -> Callable[[Making], Making]:
    def relax(making: Making) -> Making:
        freed = replace(making.yoke.options, **options)  # type: ignore[arg-type]
        return replace(making, rules=replace(making.rules, yoke=freed), yoke=replace(making.yoke, options=freed))

    return relax


def _with_edge(part: str, edge: str, **wishes: object) -> Callable[[Making], Making]:
    def relax(making: Making) -> Making:
        of_part = getattr(making, part)
        return replace(making, **{part: replace(of_part, **{edge: replace(getattr(of_part, edge), **wishes)})})

    return relax


def _usual_shares(making: Making) -> Making:
    neck = replace(making.neck, shares=None)
    usual = replace(making, neck=neck).usual()
    measurements = tuple(
        replace(target, back_share=shared.back_share, front_share=shared.front_share)
        for target, shared in zip(making.measurements, usual, strict=True)
    )
    rules = replace(making.rules, narrower_front=False)
    return replace(making, neck=neck, measurements=measurements, rules=rules)


def _alone(label: str) -> Relaxation:
    """The size without the others."""
    return Relaxation(Cause(OTHER_SIZES(), None), COUNTED, lambda making: replace(making, labels=frozenset({label})))
