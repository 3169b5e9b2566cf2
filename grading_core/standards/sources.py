"""Where the published figures come from, and a table whose every row says it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, Protocol, TypeVar

CYC_CREDIT = "Source: Craft Yarn Council's www.YarnStandards.com"


@dataclass(frozen=True, slots=True)
class Source:
    """A publication.

    key: a short name for it, unique among the sources. name: the publication. edition: which
    edition, and how it was read. credit: the credit line that the publisher asks for, where it does.
    """

    key: str
    name: str
    edition: str
    credit: str | None = None


class Sourced(Protocol):
    """What names its publication."""

    @property
    def source(self) -> Source:
        """The publication."""


Row = TypeVar("Row", bound=Sourced)


@dataclass(frozen=True, slots=True)
class Table(Generic[Row]):
    """A table that is there as a whole. notes: what holds for all of it."""

    rows: tuple[Row, ...]
    notes: tuple[str, ...] = ()

    @property
    def sources(self) -> tuple[Source, ...]:
        """The publications that rows name, each once."""
        return tuple(dict.fromkeys(row.source for row in self.rows))


CYC_WOMEN = Source(
    "cyc_women",
    "Craft Yarn Council, Standards & Guidelines: woman size chart",
    "web edition in inches and centimetres, read in public transcriptions; the inches compared with "
    "the booklet of 2018",
    CYC_CREDIT,
)
CYC_MEN = Source(
    "cyc_men",
    "Craft Yarn Council, Standards & Guidelines: man size chart",
    "web edition in inches and centimetres, read in public transcriptions; the inches compared with "
    "the booklet of 2018",
    CYC_CREDIT,
)
CYC_CHILDREN = Source(
    "cyc_children",
    "Craft Yarn Council, Standards & Guidelines: child and youth size charts",
    "web edition in inches and centimetres, read in public transcriptions; the inches compared with "
    "the booklet of 2018",
    CYC_CREDIT,
)
CYC_BABIES = Source(
    "cyc_babies",
    "Craft Yarn Council, Standards & Guidelines: baby size chart",
    "web edition in inches and centimetres, read in public transcriptions; the inches compared with "
    "the booklet of 2018",
    CYC_CREDIT,
)
CYC_HEADS = Source(
    "cyc_heads",
    "Craft Yarn Council, Standards & Guidelines: head circumference chart",
    "booklet of 2018, inches, read in a public transcription",
    CYC_CREDIT,
)
CYC_FIT = Source(
    "cyc_fit",
    "Craft Yarn Council, Standards & Guidelines: bust and chest fit and ease chart",
    "current web edition, read in two public transcriptions",
    CYC_CREDIT,
)
CYC_FIT_OLDER = Source(
    "cyc_fit_older",
    "Craft Yarn Council, Standards & Guidelines: fit and ease chart, older edition",
    "before negative ease was added; read as a yarn company's guideline quoted in 2011; that it is the "
    "council's, and the centimetres, are from memory",
    CYC_CREDIT,
)
CYC_YARN = Source(
    "cyc_yarn",
    "Craft Yarn Council, Standard Yarn Weight System",
    "edition with category 7 (added in 2015), read in the council's own guide and two reprints",
    CYC_CREDIT,
)
ANSUR = Source(
    "ansur",
    "2012 Anthropometric Survey of U.S. Army Personnel (Gordon et al., NATICK/TR-15/007, 2014)",
    "public data file of 1986 women and 4082 men aged 17 to 58; straight lines against chest girth "
    "fitted to the raw records",
)
WHO_HEADS = Source(
    "who_heads",
    "WHO Child Growth Standards: head circumference-for-age (2007)",
    "medians of girls and of boys, read in the LMS tables by day (91, 183, 365, 548, 731, 1461)",
)
PERCENTAGES = Source(
    "percentages",
    "The percentage system of Elizabeth Zimmermann",
    "neck by age as reported by C. Krisniski, Wee Aran project, part 7: adults 40 to 45, children 50, "
    "infants up to 60 per cent of the girth",
)
NO_SOURCE = Source("no_source", "Common practice, no source", "an estimate of this table's own")
