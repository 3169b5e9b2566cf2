"""The increases of a yoke in words."""

from __future__ import annotations

from collections.abc import Sequence

from grading_core.sections import Increases
from grading_core.shaping import Phase
from grading_core.wording import counted, listed, run_sentences

HOW_TO_COUNT = (
    "Count each interval with the increase round that ends it: "
    "where an increase is worked every 2nd round, the first round is plain."
)
"""The first sentence where a schedule is told without the numbers of its rounds."""


def increase_words(increases: Increases) -> str:
    """What is done in an increase round, in words.

    increases: at each back, front and sleeve edge.

    >>> increase_words((1, 1, 0))
    'increase 1 stitch at each body edge (4 more)'
    >>> increase_words((2, 2, 1))
    'increase 2 stitches at each body edge and 1 at each sleeve edge (12 more)'
    """
    back, front, sleeve = increases
    edges = [("body", back)] if back == front else [("back", back), ("front", front)]
    edges.append(("sleeve", sleeve))
    groups: dict[int, list[str]] = {}
    for name, many in edges:
        if many:
            groups.setdefault(many, []).append(f"each {name} edge")
    parts = [f"{many} at {listed(names)}" for many, names in sorted(groups.items(), reverse=True)]
    first = parts[0].split(" ", 1)
    parts[0] = f"{counted(int(first[0]), 'stitch')} {first[1]}"
    return f"increase {' and '.join(parts)} ({2 * (back + front) + 4 * sleeve} more)"


def run_instructions(sizes: Sequence[Sequence[Phase[Increases]] | None]) -> tuple[str, ...]:
    """The schedules of all sizes in sentences with size runs; none where the sizes are too unlike.

    sizes: the phases of each; a size that is impossible has none and shows a dash. The first sentence says how to
    count.
    """
    sentences = run_sentences(sizes, increase_words)
    return (HOW_TO_COUNT, *sentences) if sentences else ()
