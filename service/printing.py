"""How an answer is printed, as its request asks."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from grading_core.printing import Printing

CsvLayout = Literal["wide", "long"]

_USUAL = Printing()


@dataclass(frozen=True, slots=True)
class PrintSettings:
    """How numbers are printed, and how CSV is laid out: a column or a line for each size."""

    printing: Printing = _USUAL
    csv_layout: CsvLayout = "wide"
