"""The names that requests' enumerations have in the contract: whoever generates code from it gets a type of that name.

A `Choice` has its choices from the core's record; their name is here, one for each list of choices.
"""

from __future__ import annotations

from typing import Any, get_args

from grading_core.chart.grid import FirstRow, Repeat
from grading_core.chart.request import HalfStitch, PartialMotifs, SeamStitch
from grading_core.codes import ProofCode
from grading_core.parts.neckband import Construction
from grading_core.parts.neckline import Start
from grading_core.parts.short_rows import Way
from grading_core.printing import DecimalMark, FractionStyle
from grading_core.proof.garment import Counted
from grading_core.proof.request import RowUnit
from grading_core.pullover.pictures import Paper
from grading_core.pullover.proportions import SleeveStyle
from grading_core.pullover.request import AnswerPart, LevelMeasurement, LowerFront, Smoothing, SwatchFabric
from grading_core.pullover.size_run import GIRTHS
from grading_core.rounding import Rounding
from grading_core.shaping import Spacing, Where
from grading_core.shaping_plans import Change, Edge, Worked
from grading_core.standards import BODY_TABLES
from grading_core.standards.body import MEASUREMENTS, Within
from grading_core.units import InchConvention, Unit
from grading_core.yoke.request import DoubleBody
from service.errors import KINDS
from service.language import LANGUAGES
from service.printing import CsvLayout

ENUMERATIONS: dict[str, tuple[Any, ...]] = {
    "AnswerPart": get_args(AnswerPart),
    "BandConstruction": get_args(Construction),
    "BodyTableName": tuple(BODY_TABLES),
    "CastOnWay": get_args(Way),
    "CountedPart": get_args(Counted),
    "CsvLayout": get_args(CsvLayout),
    "DecimalMark": get_args(DecimalMark),
    "DoubleBody": get_args(DoubleBody),
    "EdgeGap": get_args(Edge),
    "FirstRow": get_args(FirstRow),
    "FractionStyle": get_args(FractionStyle),
    "HalfStitch": get_args(HalfStitch),
    "InchConvention": get_args(InchConvention),
    "Language": tuple(LANGUAGES),
    "LevelMeasurement": get_args(LevelMeasurement),
    "LowerFront": get_args(LowerFront),
    "Measurement": MEASUREMENTS,
    "Paper": get_args(Paper),
    "PartialMotifs": get_args(PartialMotifs),
    "ProblemName": tuple(kind.name for kind in KINDS),
    "PulloverMeasurement": GIRTHS,
    "Repeat": get_args(Repeat),
    "RoundStart": get_args(Start),
    "Rounding": get_args(Rounding),
    "RowUnit": get_args(RowUnit),
    "SeamStitch": get_args(SeamStitch),
    "ShapingChange": get_args(Change),
    "SkippedProof": tuple(ProofCode),
    "SleeveStyle": get_args(SleeveStyle),
    "Smoothing": get_args(Smoothing),
    "Spacing": get_args(Spacing),
    "SwatchFabric": get_args(SwatchFabric),
    "Unit": get_args(Unit),
    "Where": get_args(Where),
    "Within": get_args(Within),
    "Worked": get_args(Worked),
}
"""Each name's choices."""
