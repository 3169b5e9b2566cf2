"""How a garment sits: published bands of ease at the bust, and the name for an ease.

The bands leave gaps (between -2 and 0 in, between 0 and 2 in) and share their borders (4 and 6 in),
and their centimetres are rounded inches. Resolved here: a band starts at its lower end, in
whichever column that comes first, so a published figure in either unit lies in its own band; a
shared border belongs to the looser band, as "6 in or more" says; a gap is divided halfway, a tie to
the looser; and less than the closest band's lower end is still that band's name.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from fractions import Fraction

from grading_core.standards.ranges import Range, figure
from grading_core.standards.sources import CYC_FIT, CYC_FIT_OLDER, Source


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


FIT_BANDS = (
    FitBand(
        fit="very close fitting",
        inch=Range(Fraction(-4), Fraction(-2)),
        cm=Range(Fraction(-10), Fraction(-5)),
        source=CYC_FIT,
        current=True,
    ),
    FitBand(fit="close fitting", inch=figure("0"), cm=figure("0"), source=CYC_FIT, current=True),
    FitBand(fit="classic fit", inch=figure("2-4"), cm=figure("5-10"), source=CYC_FIT, current=True),
    FitBand(fit="loose fit", inch=figure("4-6"), cm=figure("10-15"), source=CYC_FIT, current=True),
    FitBand(fit="oversized", inch=figure("6+"), cm=figure("15+"), source=CYC_FIT, current=True),
    FitBand(fit="very close fitting", inch=figure("0"), cm=figure("0"), source=CYC_FIT_OLDER, current=False),
    FitBand(fit="close fitting", inch=figure("1-2"), cm=figure("2.5-5"), source=CYC_FIT_OLDER, current=False),
    FitBand(fit="standard fit", inch=figure("2-4"), cm=figure("5-10"), source=CYC_FIT_OLDER, current=False),
    FitBand(fit="loose fit", inch=figure("4-6"), cm=figure("10-15"), source=CYC_FIT_OLDER, current=False),
    FitBand(fit="oversized", inch=figure("6+"), cm=figure("15+"), source=CYC_FIT_OLDER, current=False),
)

CLOSEST_PUBLISHED_CM = Fraction("-10.16")
"""The least ease that a band reaches: -4 in."""

FIT_NAMES = ("very close fitting", "close fitting", "classic fit", "loose fit", "oversized")
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
