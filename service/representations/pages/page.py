"""Pages of HTML to print, made from the templates in `templates`.

A page brings everything along: its style stands in it, and nothing is loaded. What stands in the margin of every
printed sheet is content of the style, so that browsers repeat it.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup

from grading_core.pullover.front_matter import swatch
from grading_core.pullover.pictures import PicturedPullover
from grading_core.pullover.request import Gauges
from grading_core.sentences import NUMBER, TOKEN, Saying
from service import VERSION
from service.language import language
from service.language import text as said
from service.origin import input_digest
from service.representations.pictures.sheets import IMPRINT

_FRACTION = re.compile(r"(?<=\d) (?=\d+/\d)")

GAUGE = Saying("page.gauge", fabric=TOKEN, stitches=NUMBER, rounds=NUMBER)


@dataclass(frozen=True, slots=True)
class Running:
    """What every printed sheet says: what it is a sheet of, the gauge, and what made it."""

    title: str
    gauge: str
    imprint: str


def css_string(text: str) -> Markup:
    """Text as a string of CSS in a style element: whatever is no letter or digit of ASCII is written as its number.

    >>> str(css_string("S</style>"))
    '"S\\\\00003c\\\\00002fstyle\\\\00003e"'
    """
    written = (each if each.isascii() and each.isalnum() else f"\\{ord(each):06x}" for each in text)
    return Markup(f'"{"".join(written)}"')


def unbroken(text: str) -> str:
    """Text of which no line ends between inches and their fraction.

    >>> unbroken("3 1/2 (4, 4 1/4) in") == "3\\N{NO-BREAK SPACE}1/2 (4, 4\\N{NO-BREAK SPACE}1/4) in"
    True
    """
    return _FRACTION.sub("\N{NO-BREAK SPACE}", text)


def page(template: str, view: PicturedPullover, title: str, *, margin: int, **values: Any) -> str:
    """A page.

    template: its name. view: what is printed. title: of the page, and of its sheets. margin: at the sides of its
    sheets, in millimetres. values: of the template.
    """
    paper = view.picture.page
    gauges, imprint = _gauges(view.pullover.gauges), IMPRINT(version=VERSION, digest=input_digest())
    return _TEMPLATES.get_template(template).render(
        lang=language().tag,
        title=title,
        paper=None if paper == "single" else paper,
        margin=margin,
        running=Running(title, " · ".join(gauges), said(imprint)),
        **values,
    )


def _gauges(gauges: Gauges) -> list[str]:
    fabrics = (("plain", gauges.plain), ("stranded", gauges.stranded), ("rib", gauges.rib))
    return [said(GAUGE(fabric=fabric, **swatch(gauge))) for fabric, gauge in fabrics if gauge]


def _environment() -> Environment:
    made = Environment(
        loader=PackageLoader("service"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    made.filters["css_string"] = css_string
    made.filters["unbroken"] = unbroken
    return made


_TEMPLATES = _environment()
