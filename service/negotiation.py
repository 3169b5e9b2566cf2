"""Which representation and which language a client gets (RFC 9110, sections 12.5.1 and 12.5.4)."""

from __future__ import annotations

from collections.abc import Sequence

from flask import Request

from service.errors import NOT_ACCEPTABLE, PROBLEM_MEDIA_TYPE, Refusal
from service.language import LANGUAGES, USUAL_LANGUAGE, Language, lookup
from service.media import JSON


def negotiate(request: Request, offered: Sequence[str]) -> str:
    """The offered media type that a request prefers.

    offered: in the service's own order of preference, which decides between equals after a type that
    is named has gone before one that only a wildcard covers. Parameters other than q are ignored.

    An operation without JSON has one type, and whoever accepts JSON or problem documents gets it too: generated
    clients ask for nothing but those that a problem comes in.

    Raises `Refusal` (406) where none is acceptable.
    """
    accept = request.headers.get("Accept")
    if accept is None or accept == "*/*" or accept == offered[0]:
        return offered[0]
    ranges = [(value.partition(";")[0].strip().lower(), q) for value, q in request.accept_mimetypes]
    ranked = [(*_preference(media, ranges), -place) for place, media in enumerate(offered)]
    quality, specificity, place = max(ranked)
    if JSON not in offered and not specificity:
        quality, *_ = max(_preference(media, ranges) for media in (JSON, PROBLEM_MEDIA_TYPE))
    if quality <= 0:
        raise Refusal(NOT_ACCEPTABLE, f"This operation answers as {', '.join(offered)}.")
    return offered[-place]


def accepted_language(request: Request) -> Language:
    """The language that a request prefers of those that there are; the usual one where there is none of them.

    Refuses nothing: an answer in another language than asked is better than none.
    """
    accepted = request.headers.get("Accept-Language")
    if accepted is None:
        return LANGUAGES[USUAL_LANGUAGE]
    return lookup([value for value, quality in request.accept_languages if quality > 0])


def _preference(media: str, ranges: Sequence[tuple[str, float]]) -> tuple[float, int]:
    """The quality that the most specific matching range gives a type, and how specific it is."""
    specificity_of = {"*/*": 1, media.partition("/")[0] + "/*": 2, media: 3}
    matching = [(specificity_of[value], quality) for value, quality in ranges if value in specificity_of]
    specificity, quality = max(matching, default=(0, 0.0))
    return quality, specificity
