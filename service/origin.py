"""What a picture or a page was made from, for its imprint: whoever holds it on paper can tell what made it."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar

_DIGEST: ContextVar[str] = ContextVar("input_digest", default="")


@contextmanager
def made_from(input_digest: str) -> Iterator[None]:
    """Answer a request while this lasts.

    input_digest: of what is asked, as `meta.input_digest` of the same numbers in JSON has it.
    """
    token = _DIGEST.set(input_digest)
    try:
        yield
    finally:
        _DIGEST.reset(token)


def input_digest() -> str:
    """The digest of what is being answered.

    >>> with made_from("sha256:0"):
    ...     input_digest()
    'sha256:0'
    """
    return _DIGEST.get()
