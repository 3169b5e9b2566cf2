"""The contract as JSON and YAML, and a page to read and try it.

The page is our own and takes only the script and style files of the installed Swagger UI, so that a
strict content security policy holds and nothing is fetched from outside.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache
from importlib.resources import files
from pathlib import Path
from typing import Any

import orjson
from flask import Flask, Response, send_from_directory

from service.contract import build_contract
from service.errors import NOT_FOUND, Refusal
from service.operation import Operation

_PAGE_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; "
    "connect-src 'self'; frame-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)

_OWN = Path(str(files("service") / "static"))
_SWAGGER_UI = Path(str(files("flask_swagger_ui") / "dist"))

_FILES = {
    **{file.name: _OWN for file in _OWN.iterdir() if file.suffix in (".css", ".js")},
    "swagger-ui-bundle.js": _SWAGGER_UI,
    "swagger-ui.css": _SWAGGER_UI,
}


def register_docs(app: Flask, operations: Sequence[Operation[Any, Any]]) -> None:
    """Serve the contract of some operations and the page that shows it.

    As YAML it is the committed file: to write that takes a second and a third of a worker's memory.
    """

    @cache
    def as_json() -> bytes:
        """Made when it is first asked for: it takes a third of a second, and most workers are never asked."""
        return orjson.dumps(build_contract(operations))

    as_yaml = (files("openapi") / "openapi.yaml").read_bytes()
    page = (_OWN / "docs.html").read_bytes()

    @app.get("/openapi.json")
    def contract_json() -> Response:
        return Response(as_json(), content_type="application/json")

    @app.get("/openapi.yaml")
    def contract_yaml() -> Response:
        return Response(as_yaml, content_type="application/yaml")

    @app.get("/docs")
    @app.get("/docs/")
    def docs() -> Response:
        return Response(
            page, content_type="text/html; charset=utf-8", headers={"Content-Security-Policy": _PAGE_POLICY}
        )

    @app.get("/docs/<name>")
    def docs_file(name: str) -> Response:
        if name not in _FILES:
            raise Refusal(NOT_FOUND, NOT_FOUND.explanation)
        return send_from_directory(_FILES[name], name, max_age=3600)
