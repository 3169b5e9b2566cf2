"""What holds for every module and record of the code."""

import ast
import dataclasses
import importlib
import inspect
import re
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
MODULES = sorted(
    path.relative_to(ROOT)
    for package in ("grading_core", "service")
    for path in (ROOT / package).rglob("*.py")
    if path.name not in ("__init__.py", "wsgi.py")
)

DATA_ALONE = {"chart/result.py", "limits.py"}
"""Records and constants without a computation of their own; tables of the standards are compared with publications."""


ENGLISH = {
    # what a value of a sentence is, for the contract
    "sentences.py",
    # what each code means
    "codes.py",
}
"""Modules of the core that are in English for those who write programs. What is published has sources and notes."""

PROBLEMS = re.compile(r"detail|.*_problems|too_many_rounds|_CONFLICT")
"""What texts about a wrong request are assigned to, or returned by."""

WORDS = re.compile(r"[A-Za-z]{2,},? [a-z]{2,}|[a-z] .*\.$")
"""Two words or more, or the end of a sentence."""


def records():
    for path in MODULES:
        module = importlib.import_module(".".join(path.with_suffix("").parts))
        for value in vars(module).values():
            if inspect.isclass(value) and value.__module__ == module.__name__ and dataclasses.is_dataclass(value):
                yield value


def test_records_are_frozen():
    found = list(records())
    assert len(found) > 100
    for record in found:
        assert record.__dataclass_params__.frozen, record


def test_records_of_more_than_four_fields_are_made_by_keyword():
    for record in records():
        fields = dataclasses.fields(record)
        assert len(fields) <= 4 or all(field.kw_only for field in fields), record


@pytest.mark.parametrize("path", [path for path in MODULES if path.parts[0] == "grading_core"], ids=str)
def test_a_module_of_the_core_has_its_test_beside_the_same_name(path):
    within = path.relative_to("grading_core")
    if within.as_posix() in DATA_ALONE or within.parts[0] == "standards":
        return
    beside = ROOT / "tests" / "grading_core" / within.parent / f"test_{within.name}"
    published = ROOT / "tests" / "published" / f"test_{within.parent.name}_{within.name}"
    assert beside.is_file() or published.is_file()


@pytest.mark.parametrize("path", MODULES, ids=str)
def test_a_module_is_one_topic_that_fits_on_a_few_pages(path):
    assert len((ROOT / path).read_text(encoding="utf-8").splitlines()) <= 460


def test_a_class_or_function_is_imported_from_where_it_is_defined():
    wrong = []
    for path in [*MODULES, *(path.relative_to(ROOT) for path in (ROOT / "tests").rglob("*.py"))]:
        for node in ast.walk(ast.parse((ROOT / path).read_text(encoding="utf-8"))):
            if not isinstance(node, ast.ImportFrom) or not re.match(r"(grading_core|service)\.", node.module or ""):
                continue
            module = importlib.import_module(node.module or "")
            if str(module.__file__).endswith("__init__.py"):
                continue
            for name in node.names:
                value = getattr(module, name.name)
                if (inspect.isclass(value) or inspect.isfunction(value)) and value.__module__ != node.module:
                    wrong.append((str(path), node.module, name.name))
    assert wrong == []


def test_the_core_computes_with_its_own_fractions():
    core = [path for path in MODULES if path.parts[0] == "grading_core"]
    standard = [
        path for path in core if re.search(r"^from fractions ", (ROOT / path).read_text(encoding="utf-8"), re.M)
    ]
    assert standard == []


@pytest.mark.parametrize("path", [path for path in MODULES if path.parts[0] == "grading_core"], ids=str)
def test_the_core_says_nothing_in_english_but_what_is_wrong_with_a_request(path):
    if path.name in ENGLISH or path.parts[1] == "standards":
        return
    assert list(texts(ast.parse((ROOT / path).read_text(encoding="utf-8")))) == []


def texts(node):
    """The texts that are for people, with their lines; docstrings and what is said of faults are not."""
    if isinstance(node, ast.Raise | ast.Assert) or is_docstring(node) or is_about_a_problem(node):
        return
    text = None
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        text = node.value
    elif isinstance(node, ast.JoinedStr):
        text = "".join(part.value if isinstance(part, ast.Constant) else "0" for part in node.values)
    if text and WORDS.search(text):
        yield node.lineno, text
        return
    for below in ast.iter_child_nodes(node):
        yield from texts(below)


def is_docstring(node):
    return isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant)


def is_about_a_problem(node):
    """Whether it is the detail of a `Problem`, or of a function whose whole work is to find them."""
    if isinstance(node, ast.FunctionDef):
        return PROBLEMS.fullmatch(node.name) or any(ast.unparse(each) == "check" for each in node.decorator_list)
    if isinstance(node, ast.Assign):
        return any(PROBLEMS.fullmatch(ast.unparse(each)) for each in node.targets)
    return isinstance(node, ast.Call) and ast.unparse(node.func) == "Problem"
