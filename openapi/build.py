"""Writes the recorded answers of all examples and the contract, `openapi.yaml`.

Run it after every change of an operation: `python -m openapi.build`.
"""

from __future__ import annotations

from base64 import b64decode
from dataclasses import replace
from math import ceil
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

import orjson
import yaml
from flask.testing import FlaskClient

from service.app import create_app
from service.config import Config
from service.example_answers import answers_of
from service.examples import Example, Seen, examples_of
from service.media import BINARY, JSON, SVG
from service.operation import Operation
from service.routes import operations

HERE = Path(__file__).parent
CONTRACT = HERE / "openapi.yaml"

_SVG = "http://www.w3.org/2000/svg"


def main() -> None:
    """Bring examples and contract up to date."""
    client = create_app(Config()).test_client()
    for operation in operations(Config()):
        for number, example in enumerate(examples_of(operation.name)):
            content: dict[str, Any] = {"summary": example.summary}
            if example.place is not None:
                content["place"] = example.place
            content["request"] = example.request
            if operation.media[0] not in BINARY:
                content["answer"] = answer_of(client, operation, example.request)
            others = operation.media[1:] if number == 0 else ()
            if others:
                content["tables"] = {media: answer_of(client, operation, example.request, media) for media in others}
            pictures = pictures_of(client, operation, replace(example, answer=content.get("answer")))
            if pictures:
                content["pictures"] = pictures
            path = HERE / "examples" / operation.name / f"{example.name}.json"
            path.write_bytes(orjson.dumps(content, option=orjson.OPT_INDENT_2 | orjson.OPT_APPEND_NEWLINE))
    CONTRACT.write_text(contract_text(), encoding="utf-8")


def pictures_of(client: FlaskClient, operation: Operation[Any, Any], example: Example) -> dict[str, Seen]:
    """What is to be known of the pictures that an example is answered with at addresses of their own, by these."""
    return {
        answer.address: seen(answer_of(client, answer.operation, answer.request))
        for answer in answers_of(operation, example, operations(Config()))
        if answer.operation.media[0] == SVG
    }


def seen(picture: str) -> Seen:
    """What is to be known of a picture in SVG by a page that shows it."""
    root = ElementTree.fromstring(picture)
    title, about = (root.findtext(f"{{{_SVG}}}{name}", "") for name in ("title", "desc"))
    width, height = (ceil(float(side)) for side in root.attrib["viewBox"].split()[2:])
    return Seen(title, about, width, height)


def contract_text() -> str:
    """The contract as it should stand in `openapi.yaml`, with the examples as they are recorded."""
    document = create_app(Config()).test_client().get("/openapi.json").get_data()
    return to_yaml(orjson.loads(document))


def to_yaml(document: dict[str, Any]) -> str:
    """A contract as YAML, in the order in which it was written."""
    written: str = yaml.dump(
        document, Dumper=_Dumper, sort_keys=False, allow_unicode=True, width=110, default_flow_style=None
    )
    return written


class _Dumper(yaml.CSafeDumper):
    """Writes every occurrence in full, without anchors."""

    def ignore_aliases(self, data: Any) -> bool:
        return True


def answer_of(client: FlaskClient, operation: Operation[Any, Any], request: dict[str, Any], media: str = "*/*") -> Any:
    """What an operation answers to an example's request: the JSON value, or the text or bytes of another media type.

    Raises RuntimeError where it answers anything but 200.
    """
    headers = {"Accept": media}
    if operation.takes != JSON:
        file = b64decode(request["file"])
        response = client.post(operation.path, data=file, content_type=operation.takes, headers=headers)
    elif operation.method == "POST":
        response = client.post(operation.path, json=request, headers=headers)
    else:
        in_path = {name: value for name, value in request.items() if "{" + name + "}" in operation.path}
        query = {name: value for name, value in request.items() if name not in in_path}
        response = client.get(operation.path.format(**in_path), query_string=query, headers=headers)
    if response.status_code != 200:
        raise RuntimeError(f"{operation.name}: {response.status} {response.get_data(as_text=True)}")
    if response.mimetype in BINARY:
        return response.get_data()
    return response.json if response.is_json else response.get_data(as_text=True)


if __name__ == "__main__":
    main()
