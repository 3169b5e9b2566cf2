"""How a garment sits: published bands of ease at the bust, and the name for an ease.

The bands leave gaps (between -2 and 0 in, between 0 and 2 in) and share their borders (4 and 6 in),
and their centimetres are rounded inches. The notes of `FITS` say how that is resolved here; that a shared
border belongs to the looser band is what "6 in or more" says.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass

from grading_core.fraction import Fraction
from grading_core.standards.ranges import Range, figure
from grading_core.standards.sources import CYC_FIT, CYC_FIT_OLDER, Source, Table


@dataclass(frozen=True, slots=True, kw_only=True)
class FitBand:
    """A band of ease at the bust or chest.

    fit: its name. inch, cm: as published. source: with the edition. current: whether it is of the
    edition that names fits here.
    """

    fit: str
    inch: Range
    cm: Range
    source: Source
    current: bool


def _band(fit: str, inch: Range, cm: Range, source: Source = CYC_FIT) -> FitBand:
    return FitBand(fit=fit, inch=inch, cm=cm, source=source, current=source is CYC_FIT)


FITS = Table(
    rows=(
        _band("very close fitting", Range(Fraction(-4), Fraction(-2)), Range(Fraction(-10), Fraction(-5))),
        _band("close fitting", figure("0"), figure("0")),
        _band("classic fit", figure("2-4"), figure("5-10")),
        _band("loose fit", figure("4-6"), figure("10-15")),
        _band("oversized", figure("6+"), figure("15+")),
        _band("very close fitting", figure("0"), figure("0"), CYC_FIT_OLDER),
        _band("close fitting", figure("1-2"), figure("2.5-5"), CYC_FIT_OLDER),
        _band("standard fit", figure("2-4"), figure("5-10"), CYC_FIT_OLDER),
        _band("loose fit", figure("4-6"), figure("10-15"), CYC_FIT_OLDER),
        _band("oversized", figure("6+"), figure("15+"), CYC_FIT_OLDER),
    ),
    notes=(
        "A band starts at its lower end, in whichever column that comes first, so that a published figure in "
        "either unit lies in its own band.",
        "A border that two bands share belongs to the looser one; a gap between bands is divided halfway, a tie "
        "to the looser one.",
        "Less ease than the closest band has is still called by its name, with a warning.",
    ),
)
"""Per edition, closest first."""

CLOSEST_PUBLISHED_CM = Fraction("-10.16")
"""The least ease that a band reaches: -4 in."""

FIT_NAMES = tuple(band.fit for band in FITS.rows if band.current)
"""The names of the current edition, closest first."""

# Where each later band begins: halfway through the gaps of 5 cm, then the published lower ends.
_STARTS_CM = (Fraction("-2.5"), Fraction("2.5"), Fraction(10), Fraction(15))


def fit_name(ease_cm: Fraction) -> str:
    """The current published name for an ease at the bust or chest.

    ease_cm: garment minus body, in cm.

    >>> fit_name(Fraction(8)), fit_name(Fraction("15.24")), fit_name(Fraction(0))
    ('classic fit', 'oversized', 'close fitting')
    """
    return FIT_NAMES[bisect_right(_STARTS_CM, ease_cm)]
