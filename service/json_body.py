"""The body of a request: JSON, read strictly and brought into a canonical form, or a file as it is."""

from __future__ import annotations

import json
import re
from collections import Counter
from collections.abc import Iterable
from itertools import accumulate, chain
from operator import sub
from typing import Any, NoReturn

import orjson
from flask import Request

from service.errors import NOT_JSON, UNPROCESSABLE_CONTENT, UNSUPPORTED_MEDIA_TYPE, Refusal, Wrong
from service.flaws import FormCode, shortened

MAX_BODY_BYTES = 1024 * 1024
MAX_DEPTH = 32
MAX_CONTAINERS = 100_000
"""Lists and objects in one body; the largest request within all other limits has fewer than half."""

_EXACT_AS_FLOAT = 2**53
_CONTAINERS = frozenset((dict, list))
_AS_THEY_ARE = frozenset((str, int, bool, type(None)))
_FLOATS = {float}
_SIDE_BY_SIDE = (b"},{", b"}, {", b"],[", b"], [")
_WHOLE_AS_FLOAT = re.compile(rb"\.0(?!\d)")
_STRING = re.compile(rb'"(?:[^"\\]|\\.)*"')


def read_json(request: Request, others: Iterable[str] = ()) -> dict[str, Any]:
    """The object that a request carries, in its canonical form: keys in their sorted order, whole numbers as integers.

    others: media types that the body might have had as well.

    Raises `Refusal`: 415 for another media type, 400 for what is not JSON, 422 for JSON that is not
    an object.
    """
    body = _read(request, "application/json", *others)
    containers = _containers(body)
    if containers > MAX_CONTAINERS and _containers(_STRING.sub(b"", body)) > MAX_CONTAINERS:
        raise Refusal(NOT_JSON, f"The body has more than {MAX_CONTAINERS} lists and objects.")
    try:
        value = orjson.loads(body)
    except orjson.JSONDecodeError as error:
        raise Refusal(NOT_JSON, f"The body is not JSON: {error}.") from None
    if not _is_flat(body, containers) and _is_deeper(value, MAX_DEPTH):
        raise Refusal(NOT_JSON, f"The body is nested deeper than {MAX_DEPTH} levels.")
    written = orjson.dumps(value, option=orjson.OPT_SORT_KEYS)
    # Outside strings a colon stands after every key, so that fewer colons than were sent mean a lost
    # key. A colon sent as an escape would blur that: such a body is counted slowly.
    if body.count(b":") != written.count(b":") or b"\\u003" in body:
        _refuse_duplicate_keys(body)
    if not isinstance(value, dict):
        wrong = Wrong(FormCode.WRONG_TYPE, "must be an object.")
        raise Refusal(UNPROCESSABLE_CONTENT, "The request is JSON, but not an object.", [wrong])
    # most bodies have no whole number that is written as 3.0, and sorting their keys was all there is to do
    canonical_form: dict[str, Any] = canonical(value) if _WHOLE_AS_FLOAT.search(written) else orjson.loads(written)
    return canonical_form


def read_file(request: Request, media_type: str) -> bytes:
    """The file of a media type that a request carries.

    Raises `Refusal` (415) for another media type.
    """
    return _read(request, media_type)


def canonical(value: Any) -> Any:
    """JSON, nested no deeper than a request may be, in the form in which a request is answered."""
    kind = type(value)
    if kind is dict:
        return {key: below if type(below := value[key]) in _AS_THEY_ARE else canonical(below) for key in sorted(value)}
    if kind is list:
        kinds = {*map(type, value)}
        if kinds <= _AS_THEY_ARE:
            return value
        return [*map(_whole if kinds == _FLOATS else canonical, value)]
    return _whole(value) if kind is float else value


def _whole(number: float) -> float:
    """The integer that a float is, where it is one of those that floats tell apart."""
    return int(number) if number.is_integer() and abs(number) < _EXACT_AS_FLOAT else number


def _is_flat(body: bytes, containers: int) -> bool:
    """Whether JSON is seen at once to have no more levels than it may.

    containers: its lists and objects, or more. Of one that follows another one's end the level is not a deeper one. A
    text that has such signs changes nothing: it opens as many as it ends.
    """
    return any(left <= MAX_DEPTH for left in accumulate(map(body.count, _SIDE_BY_SIDE), sub, initial=containers))


def _is_deeper(value: Any, levels: int) -> bool:
    """Whether JSON has more levels of lists and objects than so many."""
    level = [value] if type(value) in _CONTAINERS else []
    while level and levels:
        below = chain.from_iterable([each.values() if type(each) is dict else each for each in level])
        level = [each for each in below if type(each) in _CONTAINERS]
        levels -= 1
    return bool(level)


def _read(request: Request, *media_types: str) -> bytes:
    if request.mimetype not in media_types:
        sent = request.mimetype or "no media type"
        raise Refusal(
            UNSUPPORTED_MEDIA_TYPE,
            f"The body was sent as {sent}; it has to be {' or '.join(media_types)}.",
            headers={"Accept": ", ".join(media_types)},
        )
    if request.content_encoding:
        raise Refusal(
            UNSUPPORTED_MEDIA_TYPE,
            f"The body was sent compressed ({request.content_encoding}); send it as it is.",
            headers={"Accept-Encoding": "identity"},
        )
    return request.get_data(cache=False)


def _containers(body: bytes) -> int:
    return body.count(b"[") + body.count(b"{")


def _refuse_duplicate_keys(body: bytes) -> None:
    def check(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
        unique = dict(pairs)
        if len(unique) < len(pairs):
            refuse(Counter(key for key, _ in pairs).most_common(1)[0][0])
        return unique

    def refuse(key: str) -> NoReturn:
        raise Refusal(NOT_JSON, f'The key "{shortened(key)}" occurs twice in one object (RFC 7493, section 2.3).')

    json.loads(body, object_pairs_hook=check)
