"""The core as a package of its own: its public names, its types, and nothing but the standard library beneath."""

import subprocess
import sys
from pathlib import Path

import grading_core
from tests.grading_core import library_use

ROOT = Path(__file__).parents[2]


def test_a_program_that_uses_the_core_is_type_checked_strictly():
    checked = subprocess.run(
        [sys.executable, "-m", "mypy", "--strict", library_use.__file__], cwd=ROOT, capture_output=True, text=True
    )
    assert checked.returncode == 0, checked.stdout


def test_a_program_that_uses_the_core_gets_its_numbers():
    # 19 full and 5 body-only rounds on every second and then every fourth of 60 rounds (the contract's example)
    assert library_use.increase_rounds(60) == [*range(2, 39, 2), *range(42, 59, 4)]
    # in 40 rounds, the last one without increases, 19 can be increased
    assert library_use.increase_rounds(40).values["missing"] == 24 - 19
    assert set(library_use.body_stitches(("S", "M"))) == {"S", "M"}
    assert [problem.path for problem in library_use.wrong_places(("S", "S"))] == [("labels", 1)]


def test_every_public_name_is_there_and_says_what_it_is():
    assert len(grading_core.__all__) == len(set(grading_core.__all__)) > 40
    for name in set(grading_core.__all__) - {"BODY_TABLES"}:
        assert getattr(grading_core, name).__doc__, name


def test_the_core_says_that_it_is_typed():
    assert (ROOT / "grading_core" / "py.typed").is_file()


def test_the_core_needs_nothing_but_the_standard_library():
    # -S leaves out what is installed; -I the environment and this directory
    code = f"import sys; sys.path.insert(0, {str(ROOT)!r}); import grading_core"
    assert subprocess.run([sys.executable, "-I", "-S", "-c", code], check=False).returncode == 0
