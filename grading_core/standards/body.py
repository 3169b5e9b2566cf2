"""Body tables: what a row and a table are, and which of its figures counts.

The size charts print inches and centimetres side by side. The centimetres are the inches turned
into half centimetres, loosely (up to 0.5 cm off) and with slips (a column copied, a figure from
another size). So where a row has inches, the inches count and a centimetre is the inch times 2.54;
the published centimetres are kept beside them, for reading only. Rows that were measured in
centimetres count in centimetres.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal, get_args

from grading_core.fraction import Fraction
from grading_core.standards.ranges import Range, figure
from grading_core.standards.sources import Source
from grading_core.units import CM_PER_INCH

AcrossMeasurement = Literal["bust", "waist", "hip", "upper_arm", "wrist", "neck", "head", "cross_back"]
AlongMeasurement = Literal["back_waist_length", "armhole_depth", "arm_length", "back_neck_to_wrist", "back_hip_length"]
Measurement = AcrossMeasurement | AlongMeasurement
Origin = Literal["published", "derived", "estimated"]
Within = Literal["low", "middle", "high"]
CountUnit = Literal["stitches", "rows"]

ACROSS: tuple[Measurement, ...] = get_args(AcrossMeasurement)
"""Measured along a row of stitches."""
ALONG: tuple[Measurement, ...] = get_args(AlongMeasurement)
"""Measured along the rows."""
MEASUREMENTS = ACROSS + ALONG

MEANINGS: Mapping[Measurement, str] = MappingProxyType(
    {
        "bust": "bust or chest girth, at its fullest (ISO 8559-1, 5.3.4)",
        "waist": "waist girth (ISO 8559-1, 5.3.10)",
        "hip": "hip girth, at its fullest (ISO 8559-1, 5.3.13)",
        "upper_arm": "upper-arm girth, at its widest above the elbow (nearest to ISO 8559-1, 5.3.16)",
        "wrist": "wrist girth (ISO 8559-1, 5.3.19)",
        "neck": "neck base girth, where a round neckline lies (ISO 8559-1, 5.3.3)",
        "head": "head girth, which the finished neck must pass",
        "cross_back": "across the back from shoulder to shoulder (nearest to ISO 8559-1, 5.4.3)",
        "back_waist_length": "from the prominent neck bone to the waist (ISO 8559-1, 5.4.5)",
        "armhole_depth": "from the top of the shoulder to the armpit",
        "arm_length": "from the armpit to the wrist, arm slightly bent",
        "back_neck_to_wrist": "from the back of the neck over the shoulder to the wrist (ISO 8559-1, 5.4.17)",
        "back_hip_length": "from the prominent neck bone to the hip",
    }
)


@dataclass(frozen=True, slots=True, kw_only=True)
class BodyRow:
    """One measurement of one size.

    size: the size's label. measurement: its name. inch, cm: the figures as published; a column
    that the publication lacks, or that was not seen, is None. origin: "published"; "derived" from
    another publication than the size chart's; or "estimated", where no publication reaches.
    source: the publication. note: a contradiction inside the publication and how it was resolved,
    or how a derived or estimated figure was made.
    """

    size: str
    measurement: Measurement
    inch: Range | None
    cm: Range | None
    origin: Origin
    source: Source
    note: str | None

    def value_cm(self, within: Within = "middle") -> Fraction:
        """The measurement in cm, exactly; the inches count where there are any.

        within: which part of a published range, "low", "middle" or "high".
        """
        counted = self.inch or self.cm
        assert counted is not None, "a row has at least one column"
        value: Fraction | None = getattr(counted, within)
        assert value is not None, "a body measurement has no open end"
        return value * CM_PER_INCH if self.inch else value

    def ends_cm(self) -> tuple[Fraction, Fraction]:
        """From where to where the row reaches in cm, by the column that reaches further."""
        ends = [(self.value_cm("low"), self.value_cm("high"))]
        if self.cm and self.cm.low is not None and self.cm.high is not None:
            ends.append((self.cm.low, self.cm.high))
        return min(low for low, _ in ends), max(high for _, high in ends)


@dataclass(frozen=True, slots=True)
class BodySize:
    """One size of a body table."""

    label: str
    measurements: Mapping[Measurement, BodyRow]


@dataclass(frozen=True, slots=True, kw_only=True)
class BodyTable:
    """A body table: per measurement one row per size.

    name: as requests name it. title: in words. labels: of the sizes, smallest first. rows: per
    measurement the rows in the order of the sizes. notes: what holds for the table as a whole.
    """

    name: str
    title: str
    labels: tuple[str, ...]
    rows: Mapping[Measurement, tuple[BodyRow, ...]]
    notes: tuple[str, ...]

    @property
    def sizes(self) -> tuple[BodySize, ...]:
        """The table by size."""
        return tuple(
            BodySize(label, {name: rows[place] for name, rows in self.rows.items()})
            for place, label in enumerate(self.labels)
        )

    @property
    def sources(self) -> tuple[Source, ...]:
        """The publications that rows name, each once."""
        return tuple(dict.fromkeys(row.source for rows in self.rows.values() for row in rows))


def line(
    measurement: Measurement,
    sizes: Sequence[str],
    source: Source,
    *,
    inch: str | None = None,
    cm: str | None = None,
    origin: Origin = "published",
    estimated: Collection[str] = (),
    note: str | None = None,
    notes: Mapping[str, str] = MappingProxyType({}),
) -> tuple[BodyRow, ...]:
    """One line of a table, a figure per size.

    measurement, source, origin: of the whole line. sizes: the labels. inch, cm: the figures,
    separated by spaces. estimated: the labels whose figure is an estimate instead. note: for
    every row. notes: by label, in place of `note`.

    Raises ValueError where a column has not one figure per size.

    >>> from grading_core.standards.sources import CYC_WOMEN
    >>> rows = line("bust", ("XS", "S"), CYC_WOMEN, inch="28-30 32-34", cm="71-76 81-86")
    >>> float(rows[1].value_cm()), float(rows[1].value_cm("low"))
    (83.82, 81.28)
    """
    blank = [None] * len(sizes)
    inches = [figure(text) for text in inch.split()] if inch else blank
    centimetres = [figure(text) for text in cm.split()] if cm else blank
    return tuple(
        BodyRow(
            size=size,
            measurement=measurement,
            inch=in_inches,
            cm=in_cm,
            origin="estimated" if size in estimated else origin,
            source=source,
            note=notes.get(size, note),
        )
        for size, in_inches, in_cm in zip(sizes, inches, centimetres, strict=True)
    )


def chest_line_notes(rule: str, sizes: Sequence[str], outside: Collection[str], measured: str) -> dict[str, str]:
    """Notes by label for figures that follow a straight line against the chest girth.

    rule: the line in words. outside: the labels beyond the chest girths that were measured.
    measured: those girths in words.
    """
    beyond = (
        f"{rule}; outside the chest girths that were measured ({measured}), so the line is carried on "
        "as an estimate (common practice, no source): measure the wearer"
    )
    return {size: beyond if size in outside else rule for size in sizes}


def count_unit(measurement: Measurement) -> CountUnit:
    """What a measurement is counted in: stitches across, rows along.

    >>> count_unit("bust"), count_unit("armhole_depth")
    ('stitches', 'rows')
    """
    return "stitches" if measurement in ACROSS else "rows"


def build_table(name: str, title: str, lines: Sequence[tuple[BodyRow, ...]], notes: Sequence[str]) -> BodyTable:
    """A table from its lines, which all have the same sizes in the same order."""
    labels = tuple(row.size for row in lines[0])
    by_measurement = {line[0].measurement: line for line in lines}
    rows = {known: by_measurement[known] for known in MEASUREMENTS if known in by_measurement}
    return BodyTable(name=name, title=title, labels=labels, rows=MappingProxyType(rows), notes=tuple(notes))
