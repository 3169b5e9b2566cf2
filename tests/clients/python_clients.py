"""Two generated Python clients: attrs classes by openapi-python-client, pydantic models by openapi-generator."""

import importlib
import inspect
import json
import subprocess
import sys
from base64 import b64decode
from collections.abc import Callable, Iterable
from io import BytesIO
from pathlib import Path
from typing import Any, get_type_hints

import yaml

from tests.clients.exchanges import EXCHANGES, Exchange

BIN = Path(sys.executable).parent
NOT_PARAMETERS = ("x_request_id", "accept_language", "client", "body")


def run(*command: str | Path, directory: Path) -> str:
    """What a generator prints; where it fails, so does the test."""
    done = subprocess.run(command, cwd=directory, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout + done.stderr


class AttrsClient:
    """By openapi-python-client."""

    name = "openapi-python-client"
    keeps_unknown_fields = True

    def generate(self, contract: Path, directory: Path, *, told_of_files: bool = True) -> str:
        """Write the client into a directory. told_of_files: whether its settings say which media types are files."""
        files = {each.operation.media[0] for each in EXCHANGES if each.answers_file}
        files |= {each.operation.takes for each in EXCHANGES if each.sends_file}
        overrides = dict.fromkeys(sorted(files), "application/octet-stream") if told_of_files else {}
        settings = directory / "settings.yaml"
        settings.write_text(yaml.safe_dump({"content_type_overrides": overrides, "post_hooks": []}))
        generate = (BIN / "openapi-python-client", "generate", "--path", contract, "--config", settings)
        return run(*generate, "--output-path", directory / "attrs_client", "--meta", "none", directory=directory)

    def answers(self, directory: Path, address: str, exchanges: Iterable[Exchange]) -> dict[str, Any]:
        """What the client gives for each exchange."""
        _import_from(directory)
        client = importlib.import_module("attrs_client.client").Client(base_url=address)
        return {each.name: _or_fault(self._answer, client, each) for each in exchanges}

    def _answer(self, client: Any, exchange: Exchange) -> Any:
        package = f"attrs_client.api.{exchange.operation.tag.lower()}.{exchange.identifier}"
        call = importlib.import_module(package).sync_detailed
        sent = exchange.example.request
        if exchange.sends_file:
            file = importlib.import_module("attrs_client.types").File(payload=BytesIO(b64decode(sent["file"])))
            parsed = call(client=client, body=file).parsed
        elif exchange.operation.method == "POST":
            parsed = call(client=client, body=get_type_hints(call)["body"].from_dict(sent)).parsed
        else:
            parameters = set(inspect.signature(call).parameters) - set(NOT_PARAMETERS)
            assert parameters == set(exchange.operation.schema.fields)
            parsed = call(client=client, **sent).parsed
        if exchange.answers_file:
            return parsed.payload.read()
        return parsed if isinstance(parsed, str) else parsed.to_dict()


class PydanticClient:
    """By openapi-generator."""

    name = "openapi-generator"
    # Its models drop fields that they don't know: a defect of its own, and no harm.
    keeps_unknown_fields = False

    def generate(self, contract: Path, directory: Path) -> str:
        """Write the client into a directory."""
        options = "--global-property=apiTests=false,modelTests=false,apiDocs=false,modelDocs=false"
        generate = (BIN / "openapi-generator-cli", "generate", "-g", "python", "-i", contract, options)
        return run(*generate, "-o", directory, "--package-name", "pydantic_client", directory=directory)

    def answers(self, directory: Path, address: str, exchanges: Iterable[Exchange]) -> dict[str, Any]:
        """What the client gives for each exchange."""
        _import_from(directory)
        package = importlib.import_module("pydantic_client")
        client = package.ApiClient(package.Configuration(host=address))
        return {each.name: _or_fault(self._answer, package, client, each) for each in exchanges}

    def _answer(self, package: Any, client: Any, exchange: Exchange) -> Any:
        call = getattr(getattr(package, f"{exchange.operation.tag}Api")(client), exchange.identifier)
        names = [n for n in inspect.signature(call).parameters if not n.startswith("_") and n not in NOT_PARAMETERS]
        sent = exchange.example.request
        try:
            if exchange.sends_file:
                answer = call(b64decode(sent["file"]))
            elif exchange.operation.method == "POST":
                [body] = names
                answer = call(get_type_hints(call)[body].from_dict(sent))
            else:
                assert set(names) == set(exchange.operation.schema.fields)
                answer = call(**sent)
        except package.ApiException as refusal:
            answer = refusal.data
        return answer if isinstance(answer, str | bytes | bytearray) else json.loads(answer.to_json())


def _or_fault(answer: Callable[..., Any], *arguments: Any) -> Any:
    """An answer, or in words what the client raised instead: a client breaks on one example and holds the rest."""
    try:
        return answer(*arguments)
    except Exception as fault:
        return f"{type(fault).__name__}: {fault}"


def _import_from(directory: Path) -> None:
    if str(directory) not in sys.path:
        sys.path.insert(0, str(directory))
