"""A pullover's worksheet as a page to print."""

from __future__ import annotations

from grading_core.pullover.pictures import PicturedPullover
from service.lengths import LengthWriter


def worksheet(view: PicturedPullover, length: LengthWriter) -> str:
    """The page.

    view: what is printed. length: writes lengths.
    """
    return "<!doctype html>"
