"""How knit and purl stitches look from outside, as patterns for drawings whose unit is the stitch."""

from __future__ import annotations

import svg

from grading_core.sentences import Saying
from service.representations.drawing import LEGEND_LINE, TEXT_COLOUR, rounded, text

PURL = Saying("picture.purl")


def knit_texture(name: str, width: float, height: float, phase: float = 0) -> svg.Pattern:
    """The legs of a stitch, which stand on their heads in a garment knitted from the top.

    name: the pattern's id. width, height: of a stitch in pixels. phase: where a stitch begins, in stitches.
    """
    w, h = width, height
    legs = f"M{0.06 * w:.3f} {h:.3f}L{0.5 * w:.3f} {0.12 * h:.3f}L{0.94 * w:.3f} {h:.3f}M{0.5 * w:.3f} 0V{0.12 * h:.3f}"
    drawn = svg.Path(
        extra={"d": legs}, fill="none", stroke=TEXT_COLOUR, stroke_width=round(w * 0.1, 3), stroke_opacity=0.3
    )
    return _pattern(name, width, height, phase, [drawn])


def purl_texture(name: str, width: float, height: float, phase: float = 0) -> svg.Pattern:
    """The bump of a purl stitch, edged in white so that it shows on dark stitches and on pale ones.

    name, width, height, phase: as for `knit_texture`.
    """
    w, h = width, height
    bump = f"M{0.12 * w:.3f} {0.68 * h:.3f}Q{0.5 * w:.3f} {0.1 * h:.3f} {0.88 * w:.3f} {0.68 * h:.3f}"
    strokes = (("#ffffff", 0.34, 0.8), (TEXT_COLOUR, 0.18, 0.9))
    drawn: list[svg.Element] = [
        svg.Path(
            extra={"d": bump},
            fill="none",
            stroke=paint,
            stroke_width=round(min(w, h) * thick, 3),
            stroke_opacity=opacity,
            stroke_linecap="round",
        )
        for paint, thick, opacity in strokes
    ]
    return _pattern(name, width, height, phase, drawn)


def purl_legend(line: int, size: tuple[float, float], key: str) -> svg.G:
    """Two purl stitches, and what they are.

    line: of the legend, from 0. size: of a stitch in pixels. key: the picture's.
    """
    width, height = size
    frame = {"width": 2, "height": 1, "stroke_width": 1, "vector_effect": "non-scaling-stroke"}
    return svg.G(
        transform=[svg.Translate(0, rounded(LEGEND_LINE * line))],
        elements=[
            svg.Defs(elements=[purl_texture(f"{key}-purl-sample", width, height)]),
            svg.G(
                transform=[svg.Translate(0, rounded(-height / 2)), svg.Scale(rounded(width), rounded(height))],
                elements=[svg.Rect(**frame, fill=f"url(#{key}-purl-sample)", stroke=TEXT_COLOUR)],  # type: ignore[arg-type]
            ),
            text(PURL(), 2 * width + 8, 4, 12),
        ],
    )


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
