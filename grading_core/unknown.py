"""What stands in a request for a value that isn't known, since what was sent there is wrong."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from typing import Any, NoReturn, ParamSpec, TypeVar

Asked = ParamSpec("Asked")
Value = TypeVar("Value")


class UnknownError(Exception):
    """Something was to be told from a value that isn't known."""


@cache
def unknown() -> Any:
    """The unknown value. Its type is Any: it stands in place of a value of any type.

    >>> unknown().chart.rows is unknown()
    True
    >>> unknown() > 3
    Traceback (most recent call last):
    grading_core.unknown.UnknownError
    """

    class Unknown:
        """The unknown value: its parts are unknown, and whatever would be told from it raises `UnknownError`.

        So what is found out beside it can't follow from it. It can be passed on, and be compared by `is`.
        """

        __slots__ = ()

        def __getattr__(self, name: str) -> Any:
            if name.startswith("__"):
                raise AttributeError(name)
            return self

        def __getitem__(self, place: object) -> Any:
            return self

        def _refuse(self, *_: object, **__: object) -> NoReturn:
            raise UnknownError

        __class__ = __dataclass_fields__ = property(_refuse)

        __bool__ = __len__ = __iter__ = __next__ = __contains__ = __call__ = _refuse
        __hash__ = __eq__ = __ne__ = __lt__ = __le__ = __gt__ = __ge__ = _refuse
        __str__ = __repr__ = __format__ = __bytes__ = _refuse
        __int__ = __float__ = __index__ = __complex__ = __round__ = __trunc__ = __floor__ = __ceil__ = _refuse
        __neg__ = __pos__ = __abs__ = __invert__ = _refuse
        __add__ = __radd__ = __sub__ = __rsub__ = __mul__ = __rmul__ = __pow__ = __rpow__ = _refuse
        __truediv__ = __rtruediv__ = __floordiv__ = __rfloordiv__ = __mod__ = __rmod__ = __divmod__ = __rdivmod__ = (
            _refuse
        )
        __or__ = __ror__ = __and__ = __rand__ = __xor__ = __rxor__ = _refuse

    return Unknown()


def is_unknown(value: object) -> bool:
    """Whether a value is the unknown one.

    >>> is_unknown("S")
    False
    """
    return value is unknown()


def told(tell: Callable[Asked, Value], *args: Asked.args, **named: Asked.kwargs) -> Value:
    """What a function tells; unknown where it would tell that from an unknown value.

    >>> is_unknown(told(max, 3, unknown()))
    True
    """
    try:
        return tell(*args, **named)
    except UnknownError:
        value: Value = unknown()
        return value


def shown(label: str) -> str:
    """A size's label for a sentence; a question mark where it isn't known.

    >>> shown("S"), shown(unknown())
    ('S', '?')
    """
    return "?" if is_unknown(label) else label


def known(value: Value) -> Value:
    """A value that isn't the unknown one.

    Raises UnknownError for that.

    >>> known("S")
    'S'
    """
    if is_unknown(value):
        raise UnknownError
    return value
