"""The built-in published tables."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from grading_core.standards import BODY_TABLES, BodyTable, Measurement, body_table
from grading_core.standards.body import MEASUREMENTS
from grading_core.standards.fit import FITS
from grading_core.standards.heads import HEADS
from grading_core.standards.needles import NEEDLES
from grading_core.standards.yarn_weights import YARN_WEIGHTS
from service.caching import KEPT_LONGER
from service.media import PER_SIZE
from service.operation import Operation
from service.schemas import standards as schemas
from service.schemas.base import NothingSchema, StrictSchema

Whole = Operation[dict[str, Any], Any]
"""Answers a table that is there as a whole."""


@dataclass(frozen=True, slots=True)
class Catalogue:
    """What is built in. other_tables: the operations that answer them."""

    body_tables: tuple[BodyTable, ...]
    measurements: tuple[Measurement, ...]
    other_tables: tuple[Whole, ...]


def _whole(path: str, summary: str, description: str, answer: type[StrictSchema], table: object) -> Whole:
    return Operation(
        method="GET",
        path=path,
        name=path.removeprefix("/v1/").replace("/", "-"),
        tag="Standards",
        summary=summary,
        description=description,
        request=NothingSchema,
        answer=answer,
        call=lambda _: table,
        kept=KEPT_LONGER,
        english=True,
    )


BODY_TABLE: Operation[str, BodyTable] = Operation(
    method="GET",
    path=schemas.BODY_TABLE_PATH,
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
    call=body_table,
    media=PER_SIZE,
    kept=KEPT_LONGER,
    english=True,
)

FITS_TABLE = _whole(
    "/v1/standards/fits",
    "Bands of ease and their names",
    "How a garment sits by its ease at the bust or chest, in the current and an older edition.",
    schemas.FitsSchema,
    FITS,
)

HEADS_TABLE = _whole(
    "/v1/standards/heads",
    "Head girth by age group",
    "The head girths that a finished neck has to pass, as published for hats.",
    schemas.HeadsSchema,
    HEADS,
)

NEEDLES_TABLE = _whole(
    "/v1/standards/needles",
    "Needle sizes",
    "Millimetres, US numbers and the old UK and Canadian numbers, with notes where charts disagree.",
    schemas.NeedlesSchema,
    NEEDLES,
)

YARN_WEIGHTS_TABLE = _whole(
    "/v1/standards/yarn-weights",
    "Yarn weights",
    "The standard categories by gauge and needle, and the charts that add metres per 100 g and wraps per inch.",
    schemas.YarnWeightsSchema,
    YARN_WEIGHTS,
)

OTHER_TABLES = (FITS_TABLE, HEADS_TABLE, NEEDLES_TABLE, YARN_WEIGHTS_TABLE)

STANDARDS = _whole(
    "/v1/standards",
    "What is built in",
    "The built-in tables, and the measurements that tables and requests have.",
    schemas.StandardsSchema,
    Catalogue(tuple(BODY_TABLES.values()), MEASUREMENTS, OTHER_TABLES),
)

OPERATIONS = (STANDARDS, BODY_TABLE, *OTHER_TABLES)
