"""How an answer is printed, as its request asks."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

from grading_core.printing import DecimalMark, Printing
from service.language import Language

CsvLayout = Literal["wide", "long"]

_USUAL = Printing()


@dataclass(frozen=True, slots=True)
class PrintSettings:
    """How an answer is printed.

    printing: how numbers are. decimal_mark: where it isn't the language's. language: of text, None where the client's
    is chosen by `Accept-Language`. csv_layout: a column or a line for each size.
    """

    printing: Printing = _USUAL
    decimal_mark: DecimalMark | None = None
    language: str | None = None
    csv_layout: CsvLayout = "wide"

    def printed_in(self, language: Language) -> Printing:
        """How numbers are printed in a language."""
        mark: DecimalMark = self.decimal_mark or ("," if language.decimal_mark == "," else ".")
        return self.printing if mark == self.printing.decimal_mark else replace(self.printing, decimal_mark=mark)
