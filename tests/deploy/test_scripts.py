"""The shell scripts, and the demo as a newcomer runs it."""

import re
import shutil
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent
SCRIPTS = [*sorted((ROOT / "deploy").glob("*.sh")), ROOT / ".ci" / "run"]


@pytest.mark.parametrize("script", SCRIPTS, ids=lambda script: script.name)
def test_a_script_parses_and_may_be_run(script: Path) -> None:
    shell = "bash" if script.name == "run" else "sh"
    subprocess.run([shell, "-n", script], check=True)
    assert script.stat().st_mode & 0o111 == 0o111


@pytest.mark.skipif(shutil.which("shellcheck") is None, reason="ShellCheck is not installed")
def test_shellcheck_finds_nothing() -> None:
    found = subprocess.run(["shellcheck", *SCRIPTS], stdout=subprocess.PIPE, text=True, check=False)
    assert found.stdout == ""


def test_the_demo_prints_tables_that_fit_a_terminal_and_stops_the_service() -> None:
    ran = subprocess.run(
        [ROOT / "deploy" / "demo.sh", "--once"],
        cwd="/",
        stdout=subprocess.PIPE,
        stdin=subprocess.DEVNULL,
        text=True,
        check=True,
        timeout=120,
    )
    assert max(map(len, ran.stdout.splitlines())) <= 100
    # Bust stitches: (body + ease) x 2.1 to the next multiple of 4. Body: the middle of the published inches of XS
    # and 5X, 29 and 61 (Craft Yarn Council, standard body measurements), ease 14 and 10.
    (stitches,) = re.findall(r"^bust.*\n.*\n  stitches +(.*)$", ran.stdout, re.MULTILINE)
    assert (stitches.split()[0], stitches.split()[-1]) == ("184", "348")
    assert "Recommended: double body" in ran.stdout
