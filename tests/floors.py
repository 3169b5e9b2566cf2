"""Floors of generated tests: how many of the cases drawn must be cases of the fact that a test states.

A case that is none, such as a sleeve that can't be knitted in a test about its decreases, is passed over by
`hypothesis.assume`. Were every case passed over, or nearly, the test would prove nothing and still be green.
"""

from collections.abc import Callable
from functools import wraps
from typing import Any


def in_a_hundred_cases(least: int) -> Callable[[Callable[..., None]], Callable[..., None]]:
    """Above `given`: of a hundred cases drawn at least so many must pass through the whole test.

    Under the floor the code under test refuses too much, or the strategies draw the wrong cases.
    """

    def floored(test: Any) -> Callable[..., None]:
        inner = test.hypothesis.inner_test
        drawn = met = 0

        @wraps(inner)
        def counted(*arguments: Any, **named: Any) -> None:
            nonlocal drawn, met
            drawn += 1
            inner(*arguments, **named)
            met += 1

        test.hypothesis.inner_test = counted

        @wraps(test)
        def checked(*arguments: Any, **named: Any) -> None:
            nonlocal drawn, met
            drawn = met = 0
            test(*arguments, **named)
            assert 100 * met >= least * drawn, f"only {met} of {drawn} cases drawn are cases of this test"

        return checked

    return floored
