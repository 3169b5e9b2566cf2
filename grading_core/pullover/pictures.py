"""What is asked for when a pullover is drawn or printed, and the pullover that is."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

from grading_core.answer_sizes import answer_size_problems
from grading_core.chart.drawn_rounds import (
    RepeatView,
    SizeView,
    drawn_problems,
    repeat_problems,
    repeat_view,
    size_view,
)
from grading_core.codes import ProblemCode
from grading_core.errors import Check, Problem, check, made, placed, sound
from grading_core.pullover.chart import charted_sizes
from grading_core.pullover.garment import Prepared, garment_problems
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import PulloverRequest
from grading_core.pullover.result import KnittedSize, Pullover
from grading_core.sizes.bodies import body_problems
from grading_core.unknown import is_unknown, told

Paper = Literal["a4", "letter", "single"]
"""What a picture is laid out for: sheets of paper, or one sheet as large as it takes."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PictureWishes:
    """What of a pullover is drawn, and on what.

    size: the label of the size; None draws all of them in one. page: the paper. title: the design's name, for people.
    """

    size: str | None = None
    page: Paper = "single"
    title: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SizePictureWishes(PictureWishes):
    """The same where one size has to be drawn, and all of them can't be."""

    size: str


@dataclass(frozen=True, slots=True, kw_only=True)
class PictureRequest:
    """A pullover, and what of it is drawn or printed."""

    pullover: PulloverRequest
    picture: PictureWishes = PictureWishes()


@dataclass(frozen=True, slots=True, kw_only=True)
class SizePictureRequest(PictureRequest):
    """A pullover, and which size of it is drawn or printed."""

    picture: SizePictureWishes


@dataclass(frozen=True, slots=True, kw_only=True)
class PicturedPullover:
    """A pullover with the sizes that are drawn or printed, as it was asked for, and how it is to be drawn."""

    pullover: Pullover
    request: PulloverRequest
    picture: PictureWishes

    @property
    def knitted(self) -> dict[str, KnittedSize]:
        """The sizes that can be knitted, by label."""
        sizes = self.pullover.sizes
        return {size.label: size.outcome for size in sizes if isinstance(size.outcome, KnittedSize)}


def picture_pullover(request: PictureRequest) -> PicturedPullover:
    """The pullover as it is graded in all sizes, of which those that are drawn or printed are answered.

    request: what of it `include` names makes no difference.

    Raises ContradictionError as `grade_pullover` does, and for the label of a size that there isn't.
    """
    return _pictured(request, sound(picture_problems(request)))


def picture_chart(request: PictureRequest) -> PicturedPullover:
    """The pullover as `picture_pullover` has it, of which the chart is drawn.

    request: as for `picture_pullover`.

    Raises ContradictionError as `picture_pullover` does, for a pullover without a chart, and for more rounds or
    stitches than a picture holds.
    """
    return _with_drawable_chart(_pictured(request, sound(chart_picture_problems(request))))


def picture_pattern(request: PictureRequest) -> PicturedPullover:
    """The pullover as `picture_pullover` has it, with a chart to draw where it has one.

    request: as for `picture_pullover`.

    Raises ContradictionError as `picture_pullover` does, and for a chart of more rounds or stitches than a picture
    holds.
    """
    return _with_drawable_chart(_pictured(request, sound(pattern_problems(request))))


def drawn_chart(view: PicturedPullover) -> SizeView | RepeatView | None:
    """The chart as it is drawn: round by round in the size that is asked for, else one repeat with every size; None
    without a chart.

    view: of one size whose rounds are few enough, or of all.
    """
    plan, knitted = view.pullover.plan, view.knitted
    if plan is None:
        return None
    placed = {label: size.chart for label, size in knitted.items() if size.chart}
    if view.picture.size in placed:
        return size_view(plan, charted_sizes(knitted)[view.picture.size], placed[view.picture.size])
    return repeat_view(plan, [*placed.values()])


@check
def chart_picture_problems(request: PictureRequest) -> Check[Prepared]:
    """As `pattern_problems`, and a pullover without a chart.

    request: any.
    """
    prepared = yield from pattern_problems(request)
    if told(lambda: request.pullover.chart) is None:
        yield Problem(("chart",), ProblemCode.NO_CHART, "is missing: there is none to draw.")
    return prepared


@check
def pattern_problems(request: PictureRequest) -> Check[Prepared]:
    """As `picture_problems`, and a chart of too many stitches to draw in one repeat.

    request: any.
    """
    prepared, found = yield from placed(picture_problems(request))
    wishes = told(lambda: request.pullover.chart)
    if wishes is not None and request.picture.size is None and ("chart",) not in {place[:1] for place in found}:
        yield from repeat_problems(wishes.chart, ("chart", "chart"))
    return prepared


@check
def picture_problems(request: PictureRequest) -> Check[Prepared]:
    """As `garment_problems`, and a size that there isn't.

    request: any.
    """
    prepared = yield from garment_problems(request.pullover)
    size = told(lambda: request.picture.size)
    bodies = told(lambda: made(body_problems(request.pullover.bodies)) if is_unknown(prepared) else prepared.bodies)
    labels = told(lambda: [body.label for body in bodies])
    if size is not None:
        for problem in answer_size_problems((size,), labels):
            yield replace(problem, path=("picture", "size"))
    return prepared


def _with_drawable_chart(view: PicturedPullover) -> PicturedPullover:
    """The same, if its chart can be drawn round by round where one size is."""
    if view.picture.size is not None and view.pullover.plan:
        for size in charted_sizes(view.knitted).values():
            sound(drawn_problems(view.pullover.plan, size, ("chart",)))
    return view


def _pictured(request: PictureRequest, prepared: Prepared) -> PicturedPullover:
    size = request.picture.size
    answered = request.pullover.answer_sizes if size is None else (size,)
    asked = replace(request.pullover, answer_sizes=answered, include=("table", "instructions", "sizes"))
    return PicturedPullover(pullover=grade_pullover(asked, prepared), request=asked, picture=request.picture)
