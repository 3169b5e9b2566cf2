"""How a schema loads and writes a record, on records made up for the purpose."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

import pytest

from grading_core.codes import ReasonCode
from grading_core.errors import Impossible, Nearest
from grading_core.pullover.measurements import NECK_TOO_NARROW
from service.lengths import LengthWriter
from service.schemas.base import StrictSchema
from service.schemas.common import LengthSchema, NearestSchema
from service.schemas.containers import Items, Mapping, Nested
from service.schemas.fields import Choice, Flag, Length, Number, Prose, Spoken, Whole

WRITE = LengthWriter("exact")


@dataclass(frozen=True)
class Rule:
    multiple: int = 1
    plus: int = 0


@dataclass(frozen=True)
class Grid:
    step: int = 2
    order: Literal["early", "late"] = "early"


@dataclass(frozen=True)
class Asked:
    name: str
    depth_cm: Fraction | None = None
    rule: Rule = Rule(multiple=4)
    grid: Grid = Grid(step=1)


class RuleSchema(StrictSchema):
    """A rule."""

    record = Rule

    multiple = Whole(minimum=1)
    plus = Whole(minimum=0)


class AskedSchema(StrictSchema):
    """What is asked."""

    record = Asked
    inline = ("grid",)

    name = Prose(required=True)
    depth = Length(above=0)
    rule = Nested(RuleSchema)
    step = Whole(minimum=1)
    order = Choice()


@dataclass(frozen=True)
class Made:
    stitches: int
    ratio: Fraction
    note: str | None = None


@dataclass(frozen=True)
class Size:
    label: str
    depth_cm: Fraction
    fits: str | None
    outcome: Made | Impossible


class SizeSchema(StrictSchema):
    """One size."""

    record = Size
    outcome = "outcome"

    label = Prose(required=True)
    feasible = Flag(required=True)
    depth = Nested(LengthSchema, required=True)
    fits = Prose(required=True, nullable=True)
    reason = Spoken()
    nearest = Items(Nested(NearestSchema))
    stitches = Whole()
    ratio = Number(places=2)
    note = Prose()
    twice = Whole(source=lambda made: 2 * made.stitches)


class AllSchema(StrictSchema):
    """All sizes by name."""

    sizes = Mapping(Prose(), Nested(SizeSchema), required=True, most=9)


def test_what_is_not_sent_is_as_in_the_record_and_a_length_loses_its_unit():
    assert AskedSchema().load({"name": "a"}) == Asked("a")
    assert AskedSchema().load({"name": "a", "depth": 2.5}) == Asked("a", Fraction(5, 2))


def test_what_an_object_leaves_out_is_as_where_it_is_left_out_itself():
    assert AskedSchema().load({"name": "a", "rule": {}}).rule == Rule(4, 0)
    assert AskedSchema().load({"name": "a", "rule": {"plus": 2}}).rule == Rule(4, 2)


def test_fields_of_an_inline_record_stand_among_the_objects_own():
    assert AskedSchema().load({"name": "a", "order": "late"}).grid == Grid(1, "late")


def test_defaults_and_choices_are_the_records():
    fields = AskedSchema().fields
    assert fields["order"].choices == ("early", "late")
    assert (fields["step"].metadata["default"], fields["rule"].metadata["default"]) == (1, {"multiple": 4})


def test_what_was_made_is_written_where_it_was_made():
    made = Made(96, Fraction(1, 8))
    assert list(SizeSchema().write(Size("S", Fraction(10), "well", made), WRITE).items()) == [
        ("label", "S"),
        ("feasible", True),
        ("depth", {"cm": 10.0, "inch": 3.94}),
        ("fits", "well"),
        ("stitches", 96),
        ("ratio", 0.13),
        ("twice", 192),
    ]


def test_what_is_impossible_says_why_and_nothing_else():
    why = Impossible(
        ReasonCode.NOTHING_LEFT,
        NECK_TOO_NARROW(stitches=Fraction(7, 2), fewest=8),
        (Nearest(("sizes", 0, "rounds"), 62),),
    )
    assert list(SizeSchema().write(Size("S", Fraction(10), None, why), WRITE).items()) == [
        ("label", "S"),
        ("feasible", False),
        ("depth", {"cm": 10.0, "inch": 3.94}),
        ("fits", None),
        ("reason", "The neck has 3.5 stitches without the raglan lines, and needs 8."),
        ("nearest", [{"field": "sizes.0.rounds", "value": 62}]),
    ]


def test_a_mapping_is_written_value_by_value():
    @dataclass(frozen=True)
    class All:
        sizes: dict[str, Size]

    sizes = {"S": Size("S", Fraction(0), None, Made(1, Fraction(1)))}
    assert AllSchema().write(All(sizes), WRITE)["sizes"]["S"]["stitches"] == 1


def test_a_field_that_the_record_lacks_is_found_when_it_is_written():
    class WrongSchema(StrictSchema):
        """A slip of the pen."""

        record = Made

        stiches = Whole(required=True)

    with pytest.raises(AttributeError, match="stiches"):
        WrongSchema().write(Made(1, Fraction(1)), WRITE)
