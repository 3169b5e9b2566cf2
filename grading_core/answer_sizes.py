"""Which sizes of a request are answered: everything is chosen over all of them, and some may be enough to know."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from grading_core.errors import Problem

AnswerSizes = tuple[str, ...] | None
"""Labels of the sizes that are answered; None for all."""


def answer_size_problems(asked: AnswerSizes, labels: Sequence[str]) -> Iterator[Problem]:
    """A problem for each label that no size has, and for each that is asked for twice.

    asked: the sizes to answer. labels: of all sizes.

    >>> [problem.path for problem in answer_size_problems(("M", "Q", "M"), ["S", "M"])]
    [('answer_sizes', 1), ('answer_sizes', 2)]
    """
    for index, label in enumerate(asked or ()):
        if label not in labels:
            yield Problem(("answer_sizes", index), f"{label!r} is the label of no size; there are {', '.join(labels)}.")
        elif asked and label in asked[:index]:
            yield Problem(("answer_sizes", index), f"Size {label!r} is asked for twice.")


def is_answered(label: str, asked: AnswerSizes) -> bool:
    """Whether a size is answered.

    label: its own. asked: the sizes to answer.

    >>> is_answered("S", None), is_answered("S", ("M",))
    (True, False)
    """
    return asked is None or label in asked
