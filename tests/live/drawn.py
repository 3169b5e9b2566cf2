"""How a browser draws an SVG picture: where its texts lie, and the sheets that a printer gets."""

from __future__ import annotations

import io
from dataclasses import dataclass
from typing import Any

import pdfplumber
from playwright.sync_api import Browser

_SEEN = """() => {
  const view = document.documentElement.getBoundingClientRect();
  const texts = [...document.querySelectorAll('text')].map(text => {
    const box = text.getBoundingClientRect();
    return {text: text.textContent, left: box.left, top: box.top, right: box.right, bottom: box.bottom};
  });
  return {width: view.width, height: view.height, texts: texts.filter(one => one.text.trim())};
}"""

_HAIR = 1.5
"""Pixels by which boxes of text, which are higher than their letters, may touch."""


@dataclass(frozen=True)
class Text:
    """A text and its box, in pixels."""

    text: str
    left: float
    top: float
    right: float
    bottom: float

    def overlaps(self, other: Text) -> bool:
        wide = min(self.right, other.right) - max(self.left, other.left)
        high = min(self.bottom, other.bottom) - max(self.top, other.top)
        return wide > _HAIR and high > 2 * _HAIR


@dataclass(frozen=True)
class Drawn:
    """A picture as a browser lays it out."""

    width: float
    height: float
    texts: tuple[Text, ...]

    def outside(self) -> list[str]:
        """The texts that reach beyond the picture."""
        return [
            one.text
            for one in self.texts
            if one.left < -_HAIR
            or one.top < -_HAIR
            or one.right > self.width + _HAIR
            or one.bottom > self.height + _HAIR
        ]

    def overlapping(self) -> list[tuple[str, str]]:
        """The texts that lie upon one another."""
        return [
            (one.text, other.text)
            for place, one in enumerate(self.texts)
            for other in self.texts[place + 1 :]
            if one.overlaps(other)
        ]


def drawn(browser: Browser, svg: bytes) -> Drawn:
    """Opens a picture by itself."""
    page = browser.new_page(viewport={"width": 1000, "height": 1000})
    try:
        page.route("http://picture.test/*", lambda route: route.fulfill(body=svg, content_type="image/svg+xml"))
        page.goto("http://picture.test/picture.svg")
        seen: dict[str, Any] = page.evaluate(_SEEN)
    finally:
        page.close()
    return Drawn(seen["width"], seen["height"], tuple(Text(**one) for one in seen["texts"]))


def printed(browser: Browser, content: bytes, content_type: str) -> pdfplumber.PDF:
    """Prints a picture or a page as it asks to be, and opens the PDF."""
    page = browser.new_page()
    try:
        page.route("http://picture.test/*", lambda route: route.fulfill(body=content, content_type=content_type))
        page.goto("http://picture.test/picture")
        return pdfplumber.open(io.BytesIO(page.pdf(prefer_css_page_size=True, print_background=True)))
    finally:
        page.close()
