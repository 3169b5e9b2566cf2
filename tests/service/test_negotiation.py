"""Which representation a client gets. RFC 9110, section 12.5.1."""

import pytest
from flask import Flask, request

from service.errors import Refusal
from service.media import CSV, JSON, MARKDOWN, SVG
from service.negotiation import negotiate

OFFERED = (JSON, CSV, MARKDOWN)


def chosen(accept, offered=OFFERED):
    headers = {} if accept is None else {"Accept": accept}
    with Flask("any").test_request_context(headers=headers):
        return negotiate(request, offered)


@pytest.mark.parametrize(
    ("accept", "media"),
    [
        (None, JSON),
        ("*/*", JSON),
        ("application/json", JSON),
        ("text/csv", CSV),
        ("text/markdown", MARKDOWN),
        ("Text/CSV", CSV),
        ("text/*", CSV),
        ("text/*;q=0.5, text/markdown", MARKDOWN),
        ("text/csv;q=0.5, text/markdown;q=0.6", MARKDOWN),
        ("application/json;q=0, */*", CSV),
        ("text/*;q=0, */*;q=0.1", JSON),
        ("text/html, application/xhtml+xml, */*;q=0.8", JSON),
        ("text/csv, */*", CSV),
        ("text/csv;q=0.9, */*", JSON),
        ("application/json; charset=utf-8", JSON),
        ("text/csv; header=present; q=1", CSV),
        ("image/png, text/csv;q=0.001", CSV),
        # both named and equally welcome: the service's own order decides
        ("text/csv, application/json", JSON),
    ],
)
def test_the_best_acceptable_representation_is_chosen(accept, media):
    assert chosen(accept) == media


@pytest.mark.parametrize(
    "accept", ["image/png", "*/*;q=0", "application/json;q=0", "text/html, application/xml", "text"]
)
def test_nothing_acceptable_is_refused_with_what_is_offered(accept):
    offered = (JSON,) if "json" in accept else OFFERED
    with pytest.raises(Refusal) as refusal:
        chosen(accept, offered)
    assert refusal.value.kind.status == 406
    assert all(media in refusal.value.detail for media in offered)


@pytest.mark.parametrize(
    "accept",
    [
        None,
        "*/*",
        "image/*",
        "image/svg+xml",
        "application/json",
        "application/problem+json",
        "application/json, application/problem+json;q=0.5",
        "text/html, application/json;q=0.1",
    ],
)
def test_a_picture_is_answered_to_any_accept_that_does_not_forbid_it(accept):
    """A generated client asks for the types that its contract names with a schema of JSON: those of the problems."""
    assert chosen(accept, (SVG,)) == SVG


@pytest.mark.parametrize(
    "accept",
    [
        "text/html",
        "image/png",
        "image/svg+xml;q=0",
        "image/svg+xml;q=0, application/json",
        "image/*;q=0, application/json",
        "application/json;q=0",
    ],
)
def test_a_picture_is_refused_to_an_accept_that_forbids_it(accept):
    with pytest.raises(Refusal) as refusal:
        chosen(accept, (SVG,))
    assert refusal.value.kind.status == 406
