"""Which sizes of a request are answered: everything is chosen over all of them, and some may be enough to know."""

from __future__ import annotations

from collections.abc import Sequence

from grading_core.codes import ProblemCode
from grading_core.errors import Check, Problem, check, duplicate_labels
from grading_core.unknown import is_unknown, known, told

AnswerSizes = tuple[str, ...] | None
"""Labels of the sizes that are answered; None for all."""


@check
def answer_size_problems(asked: AnswerSizes, labels: Sequence[str]) -> Check[None]:
    """A problem for each label that no size has, and for each that is asked for twice.

    asked: the sizes to answer. labels: of all sizes.

    >>> [problem.path for problem in answer_size_problems(("M", "Q", "M"), ["S", "M"])]
    [('answer_sizes', 1), ('answer_sizes', 2)]
    """
    seen: set[str] = set()
    for index, label in enumerate(asked or ()):
        if is_unknown(label):
            continue
        if told(_lacks, labels, label) is True:
            detail = f"{label!r} is the label of no size; there are {', '.join(labels)}."
            yield Problem(("answer_sizes", index), ProblemCode.UNKNOWN_SIZE, detail)
        elif label in seen:
            detail = f"Size {label!r} is asked for twice."
            yield Problem(("answer_sizes", index), ProblemCode.DUPLICATE_LABEL, detail)
        seen.add(label)


def label_problems(asked: AnswerSizes, labels: Sequence[str]) -> Check[None]:
    """What is wrong with the labels of sizes that are sent, and with those of them that are to be answered.

    asked, labels: as for `answer_size_problems`.

    >>> [problem.path for problem in label_problems(("Q",), ["S", "S"])]
    [('sizes', 1, 'label'), ('answer_sizes', 0)]
    """
    yield from duplicate_labels(labels)
    yield from answer_size_problems(asked, labels)


def _lacks(labels: Sequence[str], label: str) -> bool:
    """Whether no size has a label, where all of them are known."""
    return label not in [known(each) for each in labels]


def is_answered(label: str, asked: AnswerSizes) -> bool:
    """Whether a size is answered.

    label: its own. asked: the sizes to answer.

    >>> is_answered("S", None), is_answered("S", ("M",))
    (True, False)
    """
    return asked is None or label in asked
