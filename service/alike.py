"""Lists in which one object stands again and again: it is written once."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TypeVar

Value = TypeVar("Value")
Written = TypeVar("Written")


def each_once(write: Callable[[Value], Written], values: Sequence[Value]) -> list[Written]:
    """What is written of each value; values that are one object share it.

    write: makes it. values: in order.

    >>> told = ["a", "b"]
    >>> each_once(lambda value: [value], [told[0], told[1], told[0]])
    [['a'], ['b'], ['a']]
    """
    written = {place: write(value) for place, value in {id(value): value for value in values}.items()}
    return [written[id(value)] for value in values]
