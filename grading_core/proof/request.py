"""What is asked for when a pattern is proofread."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Literal, NamedTuple

from grading_core.chart.grid import Anchor, Chart
from grading_core.codes import ProofCode
from grading_core.fraction import Fraction
from grading_core.pullover.request import Gauges
from grading_core.rounding import CountRule

RowUnit = Literal["cm", "inch", "stitches", "rows", "rounds", "times", "balls", "grams", "metres", "yards"]


class PrintedRow(NamedTuple):
    """One row that a pattern prints, as a pullover's table has it.

    part, item: its key. unit: what its numbers count, that of a pullover's table unless given. values: one a size, None
    where a size has none; lengths in cm. run, run_inch: as printed. A row has at least one of the three.
    """

    part: str
    item: str
    unit: RowUnit | None = None
    values: tuple[int | float | Fraction | None, ...] | None = None
    run: str | None = None
    run_inch: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class ProofRequest:
    """The numbers of a pattern.

    labels: of the sizes, in the order of the runs. gauges: of the fabrics. line_stitches: of each raglan line; where
    nobody says it, what most sums agree on. step: rounds from one increase round to the next at the least.
    count_rules: by cast_on, body, sleeve, hem, cuff or band. chart, anchor: that sections are centred on. skip: codes
    of relations that are left out.
    """

    labels: tuple[str, ...]
    rows: tuple[PrintedRow, ...]
    gauges: Gauges | None = None
    line_stitches: int | None = None
    step: int = 1
    count_rules: Mapping[str, CountRule] = field(default_factory=lambda: MappingProxyType({}))
    chart: Chart | None = None
    anchor: Anchor | None = None
    skip: tuple[ProofCode, ...] = ()
