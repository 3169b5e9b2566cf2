"""What requests ask of the ribbed edges of a pullover: hem, cuffs and neckband."""

from __future__ import annotations

from typing import Any, ClassVar

from grading_core.parts.ribbing import RibRepeat
from grading_core.pullover.request import BandChange, BandWishes, EdgeWishes, RuleChange
from service.schemas.base import StrictSchema
from service.schemas.common import MAX_LENGTH, CountRuleSchema
from service.schemas.containers import Nested
from service.schemas.fields import Choice, Length, Text, Whole


def _height(description: str) -> Length:
    return Length(description, above=0, maximum=MAX_LENGTH)


def _rib_field(description: str) -> Whole:
    return Whole(description, required=True, minimum=1, maximum=100, unit="stitches")


def _edge_colour(usual: str) -> Text:
    return Text(f"Its colour, by a symbol of the chart or of `yarn.colours`; {usual} unless sent.", least=1, most=1)


class RibRepeatSchema(StrictSchema):
    """What a rib repeats in the round: so many knit stitches, then so many purl stitches."""

    example = '{"knit": 2, "purl": 2}'

    record = RibRepeat

    knit = _rib_field("Knit stitches.")
    purl = _rib_field("Purl stitches after them.")


class RibCountRuleSchema(CountRuleSchema):
    """Which counts are permitted for a rib: a multiple, plus a remainder.

    What isn't sent is as usual, and in a maker's neckband as designed.
    """

    record = RuleChange


def _ribbed_fields() -> tuple[Nested, Nested]:
    """The fields that say how a rib repeats."""
    counts = "Which counts are permitted; multiples of what `rib` repeats, or else of 2, where no multiple is sent."
    return Nested(RibCountRuleSchema, counts), Nested(
        RibRepeatSchema,
        "What the rib repeats. Both kinds together are the count rule's multiple, which needs not be sent beside it; "
        "`plus` leaves no stitch over. Unless sent, multiples of 2, 4 and 6 are k1 p1, k2 p2 and k3 p3, and others 1 "
        "purl stitch after knit ones.",
    )


class RibbedEdgeWishesSchema(StrictSchema):
    """A ribbed hem or cuff."""

    example = '{"height": 5}'

    record = EdgeWishes

    height = _height("2 in, for a young child 1 in, unless sent.")
    count_rule, rib = _ribbed_fields()
    colour = _edge_colour("that of the fabric above")


class BandWishesSchema(StrictSchema):
    """The neckband."""

    example = '{"height": 2.5}'

    record: ClassVar[type[Any] | None] = BandWishes

    height = _height("As worn; 1 in unless sent.")
    count_rule, rib = _ribbed_fields()
    colour = _edge_colour("that of what is plain")
    construction = Choice(
        description="Single, or worked to twice its height, folded and joined to its base, with or without a "
        "fold round."
    )


class BandChangeSchema(BandWishesSchema):
    """Another neckband; what isn't sent stays as designed."""

    record = BandChange

    height = _height("As worn.")
    count_rule = Nested(
        RibCountRuleSchema,
        "Which counts are permitted for the rib. Its multiple takes the place of the design's `rib`.",
    )
    rib = Nested(RibRepeatSchema, "What the rib repeats, in place of the design's rib and multiple.")
