"""How knit and purl stitches look from outside, as patterns for drawings whose unit is the stitch.

Each is drawn pale and dark, so that it shows on dark yarn and on pale yarn alike.
"""

from __future__ import annotations

import svg

from service.representations.pictures.drawing import TEXT_COLOUR

_PALE = "#ffffff"


def knit_texture(name: str, width: float, height: float, phase: float = 0) -> svg.Pattern:
    """The legs of a stitch, which stand on their heads in a garment knitted from the top.

    name: the pattern's id. width, height: of a stitch in pixels. phase: where a stitch begins, in stitches.
    """
    w, h = width, height
    legs = f"M{0.06 * w:.3f} {h:.3f}L{0.5 * w:.3f} {0.12 * h:.3f}L{0.94 * w:.3f} {h:.3f}M{0.5 * w:.3f} 0V{0.12 * h:.3f}"
    return _pattern(
        name, width, height, phase, [_line(legs, _PALE, w * 0.2, 0.16), _line(legs, TEXT_COLOUR, w * 0.1, 0.3)]
    )


def purl_texture(name: str, width: float, height: float, phase: float = 0) -> svg.Pattern:
    """The bump of a purl stitch, in the shade of the knit ones beside it.

    name, width, height, phase: as for `knit_texture`.
    """
    w, h = width, height
    bump = f"M{0.05 * w:.3f} {0.72 * h:.3f}Q{0.5 * w:.3f} {0.1 * h:.3f} {0.95 * w:.3f} {0.72 * h:.3f}"
    lit = f"M{0.05 * w:.3f} {0.5 * h:.3f}Q{0.5 * w:.3f} {-0.1 * h:.3f} {0.95 * w:.3f} {0.5 * h:.3f}"
    shade = svg.Rect(width=round(w, 4), height=round(h, 4), fill=TEXT_COLOUR, fill_opacity=0.16)
    thick = min(w, h)
    return _pattern(
        name,
        width,
        height,
        phase,
        [shade, _line(lit, _PALE, thick * 0.2, 0.35), _line(bump, TEXT_COLOUR, thick * 0.2, 0.5)],
    )


def _line(shape: str, paint: str, width: float, opacity: float) -> svg.Path:
    return svg.Path(extra={"d": shape}, fill="none", stroke=paint, stroke_width=round(width, 3), stroke_opacity=opacity)


def _pattern(name: str, width: float, height: float, phase: float, drawn: list[svg.Element]) -> svg.Pattern:
    return svg.Pattern(
        id=name,
        patternUnits="userSpaceOnUse",
        x=round(phase * width, 4),
        width=round(width, 4),
        height=round(height, 4),
        patternTransform=[svg.Scale(round(1 / width, 6), round(1 / height, 6))],
        elements=drawn,
    )
