"""Answers about yarn."""

from __future__ import annotations

from typing import Any

from grading_core.units import to_places
from grading_core.wording import size_run
from grading_core.yarn.estimates import Need, YarnEstimates
from grading_core.yarn.strands import Combination, categories, tex
from service.lengths import LengthWriter
from service.representations.common import warnings
from service.representations.standards import sources
from service.schemas.yarn import Strand


def strand_combinations(result: tuple[tuple[Strand, ...], Combination], _: LengthWriter) -> dict[str, Any]:
    """The answer of `POST /v1/strand-combinations`."""
    strands, made = result
    matches = categories(made.metres_per_100g)
    return {
        "metres_per_100g": to_places(made.metres_per_100g),
        "tex": to_places(made.tex),
        "strands": [
            {
                **({} if strand.name is None else {"name": strand.name}),
                "metres_per_100g": to_places(strand.metres_per_100g),
                "tex": to_places(tex(strand.metres_per_100g)),
                "weight_share": to_places(share, 4),
            }
            for strand, share in zip(strands, made.weight_shares, strict=True)
        ],
        "categories": [
            {
                "source": match.source.key,
                "category": match.thickness.category,
                "standard_name": match.standard_name,
                "name": match.thickness.name,
                "between": match.between,
            }
            for match in matches
        ],
        "sources": sources(match.source for match in matches),
        "warnings": [],
    }


def yarn_estimates(result: YarnEstimates, _: LengthWriter) -> dict[str, Any]:
    """The answer of `POST /v1/yarn-estimates`."""
    balls = [{needed.yarn: needed.balls for needed in needs} for _label, needs in result.sizes]
    names = dict.fromkeys(needed.yarn for _label, needs in result.sizes for needed in needs)
    return {
        "sizes": [
            {"label": label, "yarns": [{"yarn": needed.yarn, **yarn_need(needed)} for needed in needs]}
            for label, needs in result.sizes
        ],
        "runs": {name: size_run([size.get(name) for size in balls]) for name in names},
        "contrasts": [
            {
                "yarns": list(contrast.yarns),
                "lightness": [to_places(value, 1) for value in contrast.lightness],
                "difference": to_places(contrast.difference, 1),
            }
            for contrast in result.contrasts
        ],
        "warnings": warnings(result.remarks),
    }


def yarn_need(needed: Need) -> dict[str, Any]:
    """How much of one yarn is needed."""
    amount = needed.amount
    return {
        "stitches": needed.stitches,
        "basis": amount.basis,
        "grams": {
            "low": to_places(amount.low_g, 1),
            "likely": to_places(amount.likely_g, 1),
            "high": to_places(amount.high_g, 1),
        },
        "metres": to_places(needed.metres, 1),
        "balls": needed.balls,
    }
