"""Every wrong place in a request: of its form, and beside it what contradicts itself in the rest."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from itertools import islice
from typing import Any

from grading_core.errors import Path, Problem
from grading_core.unknown import unknown
from service.errors import MAX_WRONG, Wrong
from service.flaws import MAX_SUGGESTIONS, Flaw, FormCode, FormError, near_word

_NOT_A_PARAMETER = "is not a parameter here."


def wrong_in_body(
    error: FormError,
    body: dict[str, Any],
    load: Callable[[dict[str, Any]], Any],
    check: Callable[[Any], Iterable[Problem]],
) -> Iterator[Wrong]:
    """Every wrong place in a body of a wrong form.

    error: what its schema says. body: as it was sent. load: loads it. check: what contradicts itself in what is loaded,
    unknown values being passed over.

    A field that a misspelt name may stand for counts as sent, with an unknown value: its place is marked in the body.
    """
    flaws = [*_suggested(error, body)]
    meant = [(*path[:-1], near) for path, flaw, near in flaws if near and flaw.code is FormCode.UNKNOWN_FIELD]
    if meant:
        for path in meant:
            _mark(body, path)
        try:
            load(body)
        except FormError as marked:
            error = marked
    left = {(path, flaw.code) for path, flaw in islice(error.flaws(), MAX_WRONG + 1)}
    for path, flaw, near in flaws:
        if (path, flaw.code) in left:
            yield Wrong(flaw.code, _suggesting(flaw.detail, near), path)
    yield from map(Wrong.of, check(error.known))


def wrong_parameters(error: FormError, sent: dict[str, Any]) -> Iterator[Wrong]:
    """Every wrong parameter of a GET.

    error: what the schema of the parameters says. sent: all of them.
    """
    for path, flaw, near in _suggested(error, sent):
        if flaw.code is FormCode.UNKNOWN_FIELD:
            flaw = flaw._replace(code=FormCode.UNKNOWN_PARAMETER, detail=_NOT_A_PARAMETER)
        yield Wrong(flaw.code, _suggesting(flaw.detail, near), parameter=str(path[0]) if path else "")


def unknown_parameters(names: Iterable[str]) -> list[Wrong]:
    """Query parameters beside a body, where there are none.

    names: of those that were sent.
    """
    detail = f"{_NOT_A_PARAMETER[:-1]}: all that is asked stands in the body."
    return [Wrong(FormCode.UNKNOWN_PARAMETER, detail, parameter=name) for name in islice(names, MAX_WRONG + 1)]


def _suggested(error: FormError, body: dict[str, Any]) -> Iterator[tuple[Path, Flaw, str | None]]:
    """Every flaw, and the word that a misspelt one may stand for: no field that was sent as well."""
    looked_for = 0
    for path, flaw in islice(error.flaws(), MAX_WRONG + 1):
        near = None
        if flaw.words and looked_for < MAX_SUGGESTIONS:
            looked_for += 1
            near = near_word(flaw.word, flaw.words)
            if flaw.code is FormCode.UNKNOWN_FIELD and near in _at(body, path[:-1]):
                near = None
        yield path, flaw, near


def _suggesting(detail: str, near: str | None) -> str:
    return detail if near is None else f"{detail.removesuffix('.')}; did you mean `{near}`?"


def _mark(body: Any, path: Path) -> None:
    _at(body, path[:-1])[path[-1]] = unknown()


def _at(body: Any, path: Path) -> Any:
    for step in path:
        body = body[step]
    return body
