"""From what is asked to what every size should come to: bodies, ease, defaults, rules, and what contradicts itself."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from grading_core.chart.grid import Anchor, default_anchor, neck_parity
from grading_core.chart.request import ChartRequest, SeamStitches
from grading_core.counts.request import Rules, Targets
from grading_core.counts.solver import conflicts
from grading_core.errors import Path, Problem, Remark, raise_if_any
from grading_core.gauge import Gauge
from grading_core.limits import MAX_ROUNDS_IN_ALL, MAX_STITCHES
from grading_core.parts.body import Level, level_problems
from grading_core.parts.ribbing import Rib
from grading_core.pullover.problems import missing_measurements, varying_lengths, wish_problems
from grading_core.pullover.proportions import (
    CHILD_BUST_CM,
    Wanted,
    falls,
    stitch_targets,
    usual_back_share,
    usual_depth_cm,
    usual_ease,
    usual_neck_cm,
    usual_total_length_cm,
    usual_underarm_cm,
)
from grading_core.pullover.request import EdgeWishes, PulloverRequest
from grading_core.sizes.bodies import SizeBody, size_bodies
from grading_core.sizes.grading import estimate_remarks, spread_ease
from grading_core.sizes.request import BodiesRequest, PerSize
from grading_core.standards import Measurement
from grading_core.units import to_places
from grading_core.yoke.request import Options

FEWEST_NECK_STITCHES = 8
"""Between the raglan lines, two to a section."""

_INCH = Fraction(254, 100)

_RULES: Mapping[str, Path] = {
    "neck": ("neck", "count_rule"),
    "body": ("body", "count_rule"),
    "sleeve": ("sleeve", "count_rule"),
    "back_parity": ("chart", "anchor", "back"),
    "sleeve_parity": ("chart", "anchor", "sleeve"),
    "seam_stitches": ("yoke", "seam_stitches"),
}
"""Where the rules of the solver stand in the request."""

_CONFLICT = (
    "No size can obey this beside the rest: sections keep their parity from the neck on, back and front are alike, and "
    "the underarm counts once in each sleeve and twice in the body."
)

_PATHS: Mapping[str, Path] = {
    "bust": ("ease", "bust"),
    "upper_arm": ("ease", "upper_arm"),
    "neck": ("neck", "circumference"),
    "depth": ("yoke", "depth"),
    "underarm": ("yoke", "underarm"),
    "wrist": ("ease", "wrist"),
    "body_length": ("body", "length"),
    "sleeve_length": ("sleeve", "length"),
}
"""Where the finished measurements stand in the request."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SizePlan:
    """One size before its counts are chosen.

    body: its measurements in cm. wanted: finished measurements. levels: of the body's shaping. child: whether a child
    or a baby wears it. young: whether that is a baby or a young child.
    """

    body: Mapping[Measurement, Fraction]
    wanted: Wanted
    levels: tuple[Level, ...]
    child: bool
    young: bool

    @property
    def label(self) -> str:
        """The size's name."""
        return self.wanted.label


@dataclass(frozen=True, slots=True)
class Fabrics:
    """The gauge of each part: yoke, body and sleeves, ribs."""

    yoke: Gauge
    below: Gauge
    rib: Gauge


@dataclass(frozen=True, slots=True, kw_only=True)
class Plan:
    """All sizes before their counts are chosen.

    sizes: in the order asked. ascending: their indexes from the smallest to the largest. targets: in ascending order.
    chart: with its anchors and without sizes, None where there is none. remarks: words about the bodies.
    """

    request: PulloverRequest
    sizes: tuple[SizePlan, ...]
    ascending: tuple[int, ...]
    targets: tuple[Targets, ...]
    rules: Rules
    fabrics: Fabrics
    chart: ChartRequest | None
    remarks: tuple[Remark, ...]

    @property
    def band_height_cm(self) -> Fraction:
        """Height of the neckband as worn."""
        height = self.request.band.height
        return _INCH if height is None else height

    def rib(self, edge: EdgeWishes, size: SizePlan) -> Rib:
        """The rib of a hem or cuff."""
        usual = _INCH if size.young else 2 * _INCH
        return Rib(self.fabrics.rib, usual if edge.height is None else edge.height, edge.count_rule)


def plan_pullover(request: PulloverRequest) -> Plan:
    """What every size should come to.

    Raises ContradictionError for everything in the request that contradicts itself.

    >>> from grading_core.pullover.request import Gauges
    >>> gauge = Gauge.over(Fraction(22), Fraction(31), Fraction(10))
    >>> plan = plan_pullover(PulloverRequest(gauges=Gauges(gauge), labels=("M",)))
    >>> wanted = plan.sizes[0].wanted
    >>> [float(round(cm, 1)) for cm in (wanted.bust, wanted.upper_arm, wanted.neck, wanted.depth)]
    [103.4, 33.5, 46.0, 23.8]
    """
    table = request.body_table or ("women" if request.sizes is None else None)
    bodies = size_bodies(
        BodiesRequest(body_table=table, labels=request.labels, sizes=request.sizes, within=request.within)
    )
    raise_if_any([*wish_problems(request, len(bodies)), *missing_measurements(request, bodies)])
    fabrics = _fabrics(request)
    chart = _chart(request, fabrics.yoke)
    sizes = tuple(_size(request, body, index, table, len(bodies)) for index, body in enumerate(bodies))
    ascending = tuple(sorted(range(len(sizes)), key=lambda index: _rank(sizes[index])))
    rising = [sizes[index].wanted for index in ascending]
    rules = _rules(request, chart)
    raise_if_any(
        [
            *_size_problems(request, sizes, fabrics),
            *_fall_problems(request, rising),
            *(Problem(path, _CONFLICT) for path in _conflicting(request, rules)),
        ]
    )
    targets = stitch_targets(rising, fabrics.yoke, fabrics.below, request.yoke.line_stitches)
    remarks = tuple(_body_remarks(request, bodies))
    return Plan(
        request=request,
        sizes=sizes,
        ascending=ascending,
        targets=targets,
        rules=rules,
        fabrics=fabrics,
        chart=chart,
        remarks=remarks,
    )


def _body_remarks(request: PulloverRequest, bodies: Sequence[SizeBody]) -> Iterator[Remark]:
    """A word for each measurement of the bodies that the pullover uses and no published table reaches."""
    used: list[Measurement] = ["bust", "upper_arm", "wrist", "head"]
    if request.sleeve.length is None:
        used.append("arm_length")
    if request.body.length is None:
        hip = all("back_hip_length" in body.values for body in bodies)
        used.append("back_hip_length" if hip else "back_waist_length")
    used += [level.measurement for level in request.body.levels]
    path = ("body_table",) if request.body_table else None
    yield from estimate_remarks({body.label: body.values for body in bodies}, used, path)


def _fabrics(request: PulloverRequest) -> Fabrics:
    """A chart that repeats runs on below the yoke; one that is worked once leaves body and sleeves plain."""
    gauges, chart = request.gauges, request.chart
    stranded = gauges.stranded or gauges.plain
    return Fabrics(
        stranded if chart else gauges.plain,
        stranded if chart and chart.chart.repeat == "rows" else gauges.plain,
        gauges.rib or gauges.plain,
    )


def _chart(request: PulloverRequest, gauge: Gauge) -> ChartRequest | None:
    """The chart with its anchors and without sizes."""
    wishes, yoke = request.chart, request.yoke
    if wishes is None:
        return None
    anchor = wishes.anchor
    if anchor is None:
        centre = default_anchor(wishes.chart)
        anchor = Anchor(centre, centre, centre)
    return ChartRequest(
        chart=wishes.chart,
        anchor=anchor,
        gauge=gauge,
        sizes=(),
        first_round=wishes.first_round,
        minimum_width=wishes.minimum_width,
        plain_colour=wishes.plain_colour,
        line_stitches=yoke.line_stitches,
        line_to_body=yoke.line_to_body,
        line_colour=wishes.line_colour,
        seam_stitches=SeamStitches(yoke.seam_stitches, yoke.seam_stitches),
        seam_colour=wishes.seam_colour,
        float_limit=wishes.float_limit,
    )


def _rules(request: PulloverRequest, chart: ChartRequest | None) -> Rules:
    yoke, shares = request.yoke, request.neck.shares
    return Rules(
        neck=request.neck.count_rule,
        body=request.body.count_rule,
        sleeve=request.sleeve.count_rule,
        back_parity=neck_parity(chart.anchor.back) if chart else None,
        sleeve_parity=neck_parity(chart.anchor.sleeve) if chart else None,
        seam_stitches=yoke.seam_stitches,
        narrower_front=shares is not None and shares.front < shares.back,
        line_to_body=yoke.line_stitches // 2 if yoke.line_to_body is None else yoke.line_to_body,
        yoke=Options(
            line_stitches=yoke.line_stitches,
            step=yoke.step,
            first_increase_round=yoke.first_increase_round,
            plain_rounds_at_end=yoke.plain_rounds_at_end,
            spacing=yoke.spacing,
            fewer_edge=yoke.fewer_edge,
            double_body=yoke.double_body,
            double_where=yoke.double_where,
        ),
    )


def _rank(size: SizePlan) -> tuple[Fraction, Fraction, str]:
    return size.body["bust"], size.body["upper_arm"], size.label


def _size(request: PulloverRequest, size: SizeBody, index: int, table: str | None, sizes: int) -> SizePlan:
    body = {name: value.cm for name, value in size.values.items()}
    child = table in ("babies", "children") or body["bust"] < CHILD_BUST_CM

    def asked(length: PerSize | None, usual: Fraction) -> Fraction:
        return usual if length is None else spread_ease(length, sizes)[index]

    def around(name: Measurement) -> Fraction:
        return body[name] + asked(request.ease.get(name), usual_ease(name, body[name]))

    bust = around("bust")
    depth = asked(request.yoke.depth, usual_depth_cm(bust))
    total = usual_total_length_cm(body, child=child) or Fraction(0)
    back, front = _neck_shares(request, body["bust"])
    wanted = Wanted(
        label=size.label,
        bust=bust,
        upper_arm=around("upper_arm"),
        neck=asked(request.neck.circumference, usual_neck_cm(body["bust"])),
        depth=depth,
        underarm=asked(request.yoke.underarm, usual_underarm_cm(bust)),
        wrist=around("wrist"),
        body_length=asked(request.body.length, total - depth - request.neck.raise_cm),
        sleeve_length=asked(request.sleeve.length, body.get("arm_length", Fraction(0))),
        back=back,
        front=front,
    )
    levels = tuple(
        Level(level.measurement, around(level.measurement), asked(level.below, Fraction(0)))
        for level in request.body.levels
    )
    return SizePlan(body=body, wanted=wanted, levels=levels, child=child, young=body["bust"] < CHILD_BUST_CM)


def _neck_shares(request: PulloverRequest, bust: Fraction) -> tuple[Fraction, Fraction]:
    """The parts of back and front in the neck's stitches."""
    shares = request.neck.shares
    if shares is None:
        return usual_back_share(bust), usual_back_share(bust)
    in_all = shares.back + shares.front + 2 * shares.sleeve
    return shares.back / in_all, shares.front / in_all


def _conflicting(request: PulloverRequest, rules: Rules) -> Iterable[Path]:
    """Where the rules stand that contradict each other; an anchor that wasn't sent follows from the chart."""
    default = request.chart is not None and request.chart.anchor is None
    paths = (_RULES[field] for field in conflicts(rules))
    return dict.fromkeys(("chart",) if default and path[0] == "chart" else path for path in paths)


def _size_problems(
    request: PulloverRequest, sizes: Sequence[SizePlan], fabrics: Fabrics
) -> Iterator[Problem]:
    """Measurements that leave nothing to knit, or too much."""
    found: dict[Path, Problem] = {}
    too_large: dict[str, str] = {}
    rounds = Fraction(0)
    for size in sizes:
        wanted = size.wanted
        for name, path in _left_to_knit(request):
            if getattr(wanted, name) <= 0:
                what, cm = name.replace("_", " "), to_places(getattr(wanted, name))
                found.setdefault(path, Problem(path, f"leaves no {what} in size {size.label}: {cm} cm."))
        sections = wanted.neck * fabrics.yoke.stitches_per_cm - 4 * request.yoke.line_stitches
        if sections < FEWEST_NECK_STITCHES:
            path = (
                ("yoke", "line_stitches") if request.neck.circumference is None else ("neck", "circumference")
            )
            detail = (
                f"The neck of size {size.label} has room for {to_places(sections, 1)} stitches beside the raglan "
                f"lines, and needs {FEWEST_NECK_STITCHES}."
            )
            found.setdefault(path, Problem(path, detail))
        if wanted.bust * fabrics.below.stitches_per_cm > 2 * MAX_STITCHES:
            detail = (
                f"At this gauge half the body of size {size.label} has more than {MAX_STITCHES} stitches."
            )
            too_large.setdefault("stitches", detail)
        rounds += wanted.depth * fabrics.yoke.rows_per_cm
        rounds += (wanted.body_length + wanted.sleeve_length) * fabrics.below.rows_per_cm
        for problem in level_problems(size.levels):
            found.setdefault(problem.path, problem)
    if rounds > MAX_ROUNDS_IN_ALL:
        too_large["rounds"] = too_many_rounds(round(rounds))
    yield from found.values()
    yield from (Problem((), detail) for detail in too_large.values())


def too_many_rounds(rounds: int) -> str:
    """What is wrong with a request whose answer is too long.

    rounds: of yoke, body and sleeve in all sizes.
    """
    return f"The sizes have {rounds} rounds in all, and one answer holds at most {MAX_ROUNDS_IN_ALL}."


def _left_to_knit(request: PulloverRequest) -> Iterator[tuple[str, Path]]:
    """The measurements that may come to nothing, each with what is to blame."""
    for name, path in _PATHS.items():
        if name == "body_length" and request.body.length is None:
            raised = request.neck.raise_height is not None
            blamed = (
                ("yoke", "depth")
                if request.yoke.depth is not None
                else ("neck", "raise_height")
                if raised
                else path
            )
            yield name, blamed
        elif path[0] == "ease" or dict(varying_lengths(request))[path] is not None:
            yield name, path


def _fall_problems(request: PulloverRequest, rising: Sequence[Wanted]) -> Iterator[Problem]:
    sent = dict(varying_lengths(request))
    for name, smaller, larger in falls(rising):
        path = _PATHS[name]
        if sent.get(path) is not None:
            low, high = to_places(getattr(smaller, name)), to_places(getattr(larger, name))
            yield Problem(
                path,
                f"makes the {name} fall from {low} cm in {smaller.label} to {high} cm in {larger.label}.",
            )
