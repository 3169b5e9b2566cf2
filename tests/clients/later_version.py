"""The service as a later version may answer: every object has a field more, every open enumeration another member.

A proxy before the service that is there, which changes its answers by the contract.
"""

import json
from collections.abc import Iterator
from contextlib import contextmanager
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from threading import Thread
from typing import Any

import requests

from service.media import JSON

FIELD = "added_later"
MEMBER = "member_added_later"


class Later:
    """Changes answers by a contract."""

    def __init__(self, contract: dict[str, Any]) -> None:
        self.schemas = contract["components"]["schemas"]
        self.answers = {
            each["operationId"].replace("_", "-"): each["responses"]["200"]["content"][JSON]["schema"]
            for path in contract["paths"].values()
            for each in path.values()
            if JSON in each["responses"]["200"]["content"]
        }

    def answer(self, operation: str, value: Any) -> Any:
        """An operation's answer as a later version may give it."""
        return self._value(value, self.answers[operation])

    def _value(self, value: Any, schema: dict[str, Any]) -> Any:
        while "$ref" in schema:
            schema = self.schemas[schema["$ref"].rpartition("/")[2]]
        kinds = [each for each in (*schema.get("oneOf", ()), *schema.get("anyOf", ())) if "required" not in each]
        if kinds:
            [schema] = [each for each in kinds if _fits(value, each)] or [{}]
            return self._value(value, schema)
        if isinstance(value, list):
            return [self._value(each, schema["items"]) for each in value]
        if isinstance(value, dict):
            return self._object(value, schema)
        return MEMBER if "x-extensible-enum" in schema and value is not None else value

    def _object(self, value: dict[str, Any], schema: dict[str, Any]) -> dict[str, Any]:
        if "properties" in schema:
            changed = {name: self._value(below, schema["properties"][name]) for name, below in value.items()}
            return {**changed, FIELD: {"of": ["any", 1, None]}}
        if schema["additionalProperties"] is True:
            return value
        changed = {name: self._value(below, schema["additionalProperties"]) for name, below in value.items()}
        open_names = "x-extensible-enum" in schema.get("propertyNames", {})
        return {**changed, **({MEMBER: next(iter(changed.values()))} if open_names and changed else {})}


def _fits(value: Any, schema: dict[str, Any]) -> bool:
    """Whether a value is of a schema's JSON type; a reference's is an object."""
    kind = schema.get("type", "object")
    types = {"object": dict, "array": list, "string": str, "integer": int, "number": int | float, "null": type(None)}
    return isinstance(value, types[kind])


def without_added_fields(value: Any) -> Any:
    """An answer of a later version to a client that drops what it doesn't know."""
    if isinstance(value, dict):
        return {name: without_added_fields(below) for name, below in value.items() if name != FIELD}
    return [without_added_fields(below) for below in value] if isinstance(value, list) else value


@contextmanager
def later_version(server: str, contract_file: Path) -> Iterator[str]:
    """The address of a later version of the service at an address."""
    contract = json.loads(contract_file.read_bytes())
    later = Later(contract)
    operations = {path: next(iter(methods.values()))["operationId"] for path, methods in contract["paths"].items()}

    class Handler(BaseHTTPRequestHandler):
        def do_GET(self) -> None:
            self._pass_on()

        def do_POST(self) -> None:
            self._pass_on()

        def log_message(self, *_: Any) -> None:
            """Nothing."""

        def _pass_on(self) -> None:
            body = self.rfile.read(int(self.headers.get("Content-Length", 0)))
            sent = {name: self.headers[name] for name in ("Accept", "Content-Type") if name in self.headers}
            answer = requests.request(self.command, server + self.path, data=body, headers=sent, timeout=30)
            content = answer.content
            if answer.headers["Content-Type"] == JSON:
                content = json.dumps(later.answer(self._operation(), answer.json())).encode()
            self.send_response(answer.status_code)
            self.send_header("Content-Type", answer.headers["Content-Type"])
            self.send_header("Content-Length", str(len(content)))
            self.end_headers()
            self.wfile.write(content)

        def _operation(self) -> str:
            path = self.path.partition("?")[0]
            if path not in operations:
                [path] = [each for each in operations if "{" in each and path.startswith(each.partition("{")[0])]
            return operations[path].replace("_", "-")

    proxy = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
    Thread(target=proxy.serve_forever, daemon=True).start()
    try:
        yield f"http://127.0.0.1:{proxy.server_port}"
    finally:
        proxy.shutdown()
        proxy.server_close()
