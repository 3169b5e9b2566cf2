"""The built-in published tables."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from grading_core.standards import BodyTable
from grading_core.standards import body_table as built_in
from service.lengths import LengthWriter
from service.media import PER_SIZE
from service.operation import Operation
from service.representations import standards as representations
from service.schemas import standards as schemas
from service.schemas.base import NothingSchema, StrictSchema

Nothing = dict[str, Any]


def _table(
    path: str,
    summary: str,
    description: str,
    answer: type[StrictSchema],
    represent: Callable[[Any, LengthWriter], dict[str, Any]],
) -> Operation[Nothing, Nothing]:
    """A table that is there as a whole."""
    return Operation(
        method="GET",
        path=path,
        name=path.removeprefix("/v1/").replace("/", "-"),
        tag="Standards",
        summary=summary,
        description=description,
        request=NothingSchema,
        answer=answer,
        call=lambda nothing: nothing,
        represent=represent,
    )


STANDARDS = _table(
    "/v1/standards",
    "What is built in",
    "The built-in tables, and the measurements that tables and requests have.",
    schemas.StandardsSchema,
    representations.standards,
)

BODY_TABLE: Operation[dict[str, str], BodyTable] = Operation(
    method="GET",
    path="/v1/standards/body-tables/{name}",
    name="standards-body-table",
    tag="Standards",
    summary="A body table",
    description="""\
A body table as it was published, in inches and centimetres, each row with its source and, where the publication
contradicts itself, a note on how that was resolved. Where a row has inches they count, and a centimetre is the inch
times 2.54: the published centimetres are the inches, loosely rounded.

Measurements that the size charts lack (wrist, neck, men's back waist length) come from other publications and say
so in `origin`, or are estimates and say that.""",
    request=schemas.BodyTableParametersSchema,
    answer=schemas.BodyTableSchema,
    call=lambda parameters: built_in(parameters["name"]),
    represent=representations.body_table,
    media=PER_SIZE,
)

FITS = _table(
    "/v1/standards/fits",
    "Bands of ease and their names",
    "How a garment sits by its ease at the bust or chest, in the current and an older edition.",
    schemas.FitsSchema,
    representations.fits,
)

HEADS = _table(
    "/v1/standards/heads",
    "Head girth by age group",
    "The head girths that a finished neck has to pass, as published for hats.",
    schemas.HeadsSchema,
    representations.heads,
)

NEEDLES = _table(
    "/v1/standards/needles",
    "Needle sizes",
    "Millimetres, US numbers and the old UK and Canadian numbers, with notes where charts disagree.",
    schemas.NeedlesSchema,
    representations.needles,
)

YARN_WEIGHTS = _table(
    "/v1/standards/yarn-weights",
    "Yarn weights",
    "The standard categories by gauge and needle, and the charts that add metres per 100 g and wraps per inch.",
    schemas.YarnWeightsSchema,
    representations.yarn_weights,
)

OPERATIONS = (STANDARDS, BODY_TABLE, FITS, HEADS, NEEDLES, YARN_WEIGHTS)
