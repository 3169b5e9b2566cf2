"""The craft of grading hand-knitted pullovers: pure computation, standard library only.

Conventions: a length is a `fractions.Fraction` of centimetres, a count an int, a gauge exact stitches and rows
per cm (`Gauge`). An operation takes one record and answers one: frozen dataclasses whose field names are those of the
HTTP contract, a length with or without its unit (`depth_cm`). What contradicts itself raises `ContradictionError`,
every wrong place at once; what cannot be knitted is answered with an `Impossible`, and the other sizes are computed.
Numbers are printed as `Printing` has it, another way within `printed_as`.

The functions below are the operations, the records beside them what they take; the rest of a record's parts lie in the
`request` module of its family.
"""

from grading_core.chart.grid import Anchor, Chart, Colour
from grading_core.chart.placement import place_charts
from grading_core.chart.request import ChartRequest, ChartSize
from grading_core.codes import ProblemCode, ReasonCode, WarningCode
from grading_core.conversions import ConversionRequest, Item, convert
from grading_core.errors import ContradictionError, GradingError, Impossible, Nearest, Problem, Remark
from grading_core.gauge import Gauge
from grading_core.printing import Printing, printed_as
from grading_core.pullover.grade import grade_pullover
from grading_core.pullover.request import Gauges, PulloverRequest
from grading_core.rounding import CountRule
from grading_core.sections import IncreaseRound, Sections
from grading_core.shaping_plans import AcrossPlan, RowPlan, ShapingRequest, shaping_schedules
from grading_core.sizes.choice import match_sizes
from grading_core.sizes.grading import grade_sizes
from grading_core.sizes.request import EvenSteps, SentSize, SizeGradingRequest, SizeMatchRequest
from grading_core.standards import BODY_TABLES, body_table
from grading_core.yarn.estimates import yarn_estimates
from grading_core.yarn.request import SizeAmount, Strand, StrandRequest, SubstitutionRequest, Yarn, YarnEstimateRequest
from grading_core.yarn.strands import hold_together
from grading_core.yarn.substitution import substitute_yarn
from grading_core.yoke.all_sizes import raglan_schedules, yoke_adjustments
from grading_core.yoke.request import Adjustment, Options, RaglanRequest, YokeAdjustmentRequest, YokeRequest

__all__ = [
    "BODY_TABLES",
    "AcrossPlan",
    "Adjustment",
    "Anchor",
    "Chart",
    "ChartRequest",
    "ChartSize",
    "Colour",
    "ContradictionError",
    "ConversionRequest",
    "CountRule",
    "EvenSteps",
    "Gauge",
    "Gauges",
    "GradingError",
    "Impossible",
    "IncreaseRound",
    "Item",
    "Nearest",
    "Options",
    "Printing",
    "Problem",
    "ProblemCode",
    "PulloverRequest",
    "RaglanRequest",
    "ReasonCode",
    "Remark",
    "RowPlan",
    "Sections",
    "SentSize",
    "ShapingRequest",
    "SizeAmount",
    "SizeGradingRequest",
    "SizeMatchRequest",
    "Strand",
    "StrandRequest",
    "SubstitutionRequest",
    "WarningCode",
    "Yarn",
    "YarnEstimateRequest",
    "YokeAdjustmentRequest",
    "YokeRequest",
    "body_table",
    "convert",
    "grade_pullover",
    "grade_sizes",
    "hold_together",
    "match_sizes",
    "place_charts",
    "printed_as",
    "raglan_schedules",
    "shaping_schedules",
    "substitute_yarn",
    "yarn_estimates",
    "yoke_adjustments",
]
