import ast
import re
from pathlib import Path

import pytest

import grading_core
import service
from grading_core.codes import ProblemCode, ReasonCode, WarningCode
from service.flaws import FormCode

FAMILIES = [ProblemCode, ReasonCode, WarningCode, FormCode]
SOURCES = [path for package in (grading_core, service) for path in Path(package.__path__[0]).rglob("*.py")]


def used():
    """Every attribute of a family of codes that the sources name."""
    names = {family.__name__ for family in FAMILIES}
    for path in SOURCES:
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name) and node.value.id in names:
                yield node.value.id, node.attr


@pytest.mark.parametrize("family", FAMILIES)
def test_every_code_is_used_and_every_one_that_is_used_is_there(family):
    assert {name for kind, name in used() if kind == family.__name__} == {code.name for code in family}


@pytest.mark.parametrize("family", FAMILIES)
def test_a_code_is_a_word_for_programs_with_a_meaning_in_one_sentence(family):
    assert len({code.meaning for code in family}) == len(family)
    for code in family:
        assert code.value == code.name.lower()
        assert re.fullmatch(r"[a-z]+(_[a-z]+)*", code.value)
        assert re.fullmatch(r"[A-Z][^.]*\.", code.meaning)


def test_what_is_wrong_by_its_form_and_what_contradicts_itself_share_no_code():
    # both stand in the same list of errors
    assert {code.value for code in FormCode} & {code.value for code in ProblemCode} == set()
