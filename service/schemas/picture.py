"""Requests for pictures and pages of a pullover."""

from __future__ import annotations

from typing import Any, ClassVar

from grading_core.pullover.pictures import PictureRequest, PictureWishes, SizePictureRequest, SizePictureWishes
from service.schemas.base import StrictSchema
from service.schemas.common import MAX_LABEL
from service.schemas.containers import Nested
from service.schemas.fields import Choice, Text
from service.schemas.pullover_request import PulloversRequestSchema


class PictureWishesSchema(StrictSchema):
    """What of the pullover is drawn, and on what."""

    example = '{"size": "M", "page": "a4"}'

    record: ClassVar[type[Any] | None] = PictureWishes

    size = Text("The label of the size to draw; all in one unless sent.", most=MAX_LABEL)
    page = Choice(
        description="The paper it is laid out for: `a4` and `letter` break it into sheets, none of which cuts a row; "
        "`single` is one sheet, as large as it takes."
    )
    title = Text("The design's name, for people: it heads every sheet.", least=1, most=80)


class SizePictureWishesSchema(PictureWishesSchema):
    """Which size of the pullover is drawn, and on what."""

    record: ClassVar[type[Any] | None] = SizePictureWishes

    size = Text("The label of the size to draw.", most=MAX_LABEL, required=True)


class PulloverPicturesRequestSchema(PulloversRequestSchema):
    """A request as for `POST /v1/pullovers`, and what of it is drawn. What it says in `include` makes no difference."""

    record: ClassVar[type[Any] | None] = PictureRequest
    inline = ("pullover",)

    picture = Nested(PictureWishesSchema)


class PulloverSizePicturesRequestSchema(PulloverPicturesRequestSchema):
    """A request as for `POST /v1/pullovers`, and which size of it is drawn."""

    record = SizePictureRequest

    picture = Nested(SizePictureWishesSchema, required=True)
