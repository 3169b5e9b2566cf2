"""A knitter who works one round as it is written, stitch by stitch."""

import re

REPEATED = re.compile(r"\(([^)]*)\) (once|twice|(\d+) times)")


def adjust(sentence: str) -> tuple[int, int]:
    """Stitches taken from the needle and stitches made, from "Work 1 round ...: <steps>. <count> stitches."."""
    _, steps = sentence.split(": ", 1)
    steps, count = steps.rsplit(". ", 1)
    written_out = REPEATED.sub(
        lambda found: ", ".join([found[1]] * {"once": 1, "twice": 2}.get(found[2], int(found[3] or 0))), steps
    )
    taken = made = 0
    for step in written_out.split(", "):
        if step == "work 2 together":
            taken, made = taken + 2, made + 1
        elif step == "increase 1":
            made += 1
        else:
            plain = re.fullmatch(r"work (\d+)", step)
            assert plain, step
            taken, made = taken + int(plain[1]), made + int(plain[1])
    assert re.fullmatch(rf"{made} stitch(es)?\.", count), sentence
    return taken, made
