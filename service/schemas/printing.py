"""What a request says of how its answer is printed."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from grading_core.units import USUAL_INCH_CONVENTION
from service.language import LANGUAGES, USUAL_LANGUAGE
from service.printing import PrintSettings
from service.schemas.base import StrictSchema
from service.schemas.common import RequestSchema
from service.schemas.containers import Nested
from service.schemas.fields import Choice, Number, Text

FINEST_STEP = 0.01
"""What is finer than answers write lengths makes no difference in print."""

_IN_A_QUERY = re.compile(r"[0-9]+(\.[0-9]+)?")


class PrintSettingsSchema(StrictSchema):
    """How an answer is printed: its language, and numbers in runs, sentences and tables. No value depends on it."""

    record = PrintSettings
    inline = ("printing",)
    example = '{"decimal_mark": ","}'

    cm_step = Number("To what centimetres are rounded; a tie goes up.", minimum=FINEST_STEP, maximum=10, unit="cm")
    inch_step = Number(
        "To what inches are rounded; a tie goes up. Halves, quarters and so on down to 1/64 are printed as fractions, "
        "another step as a decimal.",
        minimum=FINEST_STEP,
        maximum=5,
        unit="in",
    )
    decimal_mark = Choice(description="Before decimals; the language's unless sent.")
    fractions = Choice(description="Fractions of inches: as `15 3/4`, or with one character.")
    missing = Text("What stands where a size can't be knitted or has no such number.", most=10)
    language = Choice(
        *LANGUAGES,
        description="Of all words for people. Unless sent it is looked up in `Accept-Language` (RFC 4647, section "
        f"3.4); `{USUAL_LANGUAGE}` where none fits.",
    )
    csv_layout = Choice(description="CSV with a column for each size, or with a line for each size and number.")


class PrintedRequestSchema(RequestSchema):
    """Base of every request that is answered per size."""

    print = Nested(PrintSettingsSchema, "How the answer is printed.")

    def build(self, loaded: dict[str, Any]) -> Any:
        """What a valid request becomes: nothing that is computed depends on how it is printed."""
        loaded.pop("print", None)
        return super().build(loaded)

    def print_settings(self, data: Mapping[str, Any]) -> PrintSettings:
        """How the answer is printed.

        data: a valid request.
        """
        settings: PrintSettings = _SETTINGS.load(data["print"]) if data.get("print") else _USUAL
        return _by(settings, data)


class PrintParametersSchema(PrintSettingsSchema):
    """Base of the parameters of a GET that is answered per size; what it answers is English."""

    class Meta:
        """Marshmallow's options."""

        exclude = ("language",)

    def load(self, data: Any, **options: Any) -> Any:
        """What the parameters become; their steps are numbers, which in a query are written as text."""
        return super().load({name: _read(name, value) for name, value in data.items()}, **options)

    def print_settings(self, data: Mapping[str, Any]) -> PrintSettings:
        """How the answer is printed.

        data: valid parameters.
        """
        sent = {name: _read(name, value) for name, value in data.items() if name in _SETTINGS.fields}
        settings: PrintSettings = _SETTINGS.load(sent)
        return settings


_SETTINGS = PrintSettingsSchema()
_USUAL = PrintSettings()


def _read(name: str, value: Any) -> Any:
    field = _SETTINGS.fields.get(name)
    return float(value) if isinstance(field, Number) and _IN_A_QUERY.fullmatch(value) else value


def _by(settings: PrintSettings, data: Mapping[str, Any]) -> PrintSettings:
    convention = data.get("inch_convention", USUAL_INCH_CONVENTION)
    if convention == settings.printing.inch_convention:
        return settings
    return replace(settings, printing=replace(settings.printing, inch_convention=convention))
