"""What proofreading finds."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, NamedTuple

from grading_core.codes import CauseCode, ProofCode
from grading_core.errors import Remark
from grading_core.fraction import Fraction
from grading_core.sentences import Sentence

Severity = Literal["wrong", "doubtful", "note"]

DOUBTFUL = frozenset(
    (ProofCode.FALLS, ProofCode.CAST_ON, ProofCode.DECREASES_TO_CUFF, ProofCode.PICK_UP, ProofCode.YARN_FALLS)
)
"""What a pattern may have meant, and say in its words."""

NOTES = frozenset((ProofCode.REACH,))
"""What other publishers may measure otherwise."""

RequestField = Literal["gauge", "line_stitches", "count_rules", "chart"]


class RowKey(NamedTuple):
    """A row of the table, by part and item."""

    part: str
    item: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Correction:
    """A number whose change, with those of its size beside it, makes all relations of the size hold.

    size: the label. row: of the table. unit: of the two numbers. printed, expected: what stands there, and what would
    do. others: how many other sets of as many numbers would do as well. cause: what the slip is likely to
    be, None where that isn't known.
    """

    size: str
    row: RowKey
    unit: str
    printed: Fraction
    expected: Fraction
    others: int
    cause: CauseCode | None


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """One relation that doesn't hold.

    size: the label, None where it is about a whole row. rows: that it is between. unit: of the two numbers. printed,
    expected: of the row that is to blame, or else of the first; None where it is no single number. because: the
    reasoning. cause: what the slip is likely to be.
    """

    code: ProofCode
    size: str | None
    rows: tuple[RowKey, ...]
    unit: str
    printed: Fraction | None
    expected: Fraction | None
    because: Sentence
    cause: CauseCode | None = None

    @property
    def severity(self) -> Severity:
        """How sure it is that something is wrong."""
        return "note" if self.code in NOTES else "doubtful" if self.code in DOUBTFUL else "wrong"


class Checked(NamedTuple):
    """How often a relation was computed."""

    code: ProofCode
    times: int


class Unchecked(NamedTuple):
    """A relation that could not be computed in any size.

    rows: that are missing for it. fields: of the request that are.
    """

    code: ProofCode
    rows: tuple[RowKey, ...]
    fields: tuple[RequestField, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Proof:
    """What was found.

    labels: of the sizes. corrections: the smallest set of numbers whose change would mend all that more than one row is
    needed for. most_wanted: the missing row that alone would allow most relations, None where none would.
    """

    labels: tuple[str, ...]
    corrections: tuple[Correction, ...]
    findings: tuple[Finding, ...]
    checked: tuple[Checked, ...]
    unchecked: tuple[Unchecked, ...]
    most_wanted: RowKey | None
    remarks: tuple[Remark, ...] = ()
