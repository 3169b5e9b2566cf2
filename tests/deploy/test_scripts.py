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
        timeout=600,
    )
    assert max(map(len, ran.stdout.splitlines())) <= 100
    # Body stitches: (body + ease) x 2.1 to a multiple of 4 next to it. Body: the middle of the published inches of XS
    # and 5X, 29 and 61 (Craft Yarn Council, standard body measurements), ease 14 and 10: 184.1 and 346.4. The 9 sizes
    # step by 20.3, which is 20 on the multiple, and an even run ends with 344.
    (body,) = re.findall(r"^body, stitches +(.*)$", ran.stdout, re.MULTILINE)
    assert body.split()[0] == "184"
    assert body.split()[-1] == "344"
    # the yoke that is adjusted by itself is that of the whole pullover
    (rounds,) = re.findall(r"^yoke, rounds +(\d.*)$", ran.stdout, re.MULTILINE)
    assert f"yoke of size M by itself, as written with {rounds.split()[2]} rounds" in " ".join(ran.stdout.split())
    assert "Recommended: double body" in ran.stdout
    assert "rounds with long floats" in ran.stdout
